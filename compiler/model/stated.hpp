#pragma once

#include <string>
#include <string_view>

namespace sheerpole {

/// What a text says that tells how something is held, locked or kept apart: a way, or that there is none.
/// It is read once, when the rig is put together; nobody compares the text again.
enum class Answer {
  unstated, ///< nothing is stated, or nothing that says anything: "unknown", "?"
  nothing,  ///< it is stated that there is none: "none", "no"
  stated    ///< a way is stated: "split pin"
};

struct Stated {
  Answer answer = Answer::unstated;
  std::string text; ///< as written; also of a text that says nothing
};

/// Whether a text is a word that answers no question of how: "yes", "ok", "?", "unknown". Blanks around it
/// and the size of its letters do not count.
bool says_nothing(std::string_view text);

/// "none", "no", "nothing" and their like are `nothing`; an empty text and one that says nothing are
/// `unstated`.
Stated read_stated(std::string_view text);

} // namespace sheerpole
