#pragma once

#include "results/checked_rig.hpp"
#include "wording/papers/papers_words.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

// What papers say of a piece that is a DRAFT. None of them shows its cut as a number: what stands there is
// NOT YET, and why, in the same words and the same count on all of them.

/// In place of a number that nobody may cut to.
inline PhraseText not_yet() {
  return say(PapersPhrase::not_yet);
}

/// One thing that has to be known before anything is cut, and the pieces that wait for it.
struct Awaited {
  std::string reason;              ///< "contraction of splice eye is missing"
  std::string mend;                ///< what to do about it; may be empty
  std::vector<std::string> pieces; ///< in the order of the rig
};

/// Each reason once, in the order in which they were found. How many there are is the count that every
/// paper gives.
std::vector<Awaited> awaited(const std::vector<DraftReason>& reasons);

/// "1 reason", "3 reasons".
std::string reasons_counted(const std::vector<DraftReason>& reasons);

/// Why what is printed may not be cut to: the reasons, those with the same mend together, each once.
std::vector<std::string> draft_lines(const std::vector<DraftReason>& reasons);

/// For a paper of the whole rig: "2 pieces wait, for 1 reason; the cut list names it". Empty when nothing
/// is a draft.
std::string waiting_words(const CheckedRig& checked);

/// A length to order by, in whole tenths of a metre and upwards, so that nobody cuts to it: "about 12.9 m".
std::string about_metres(Length length);

} // namespace sheerpole
