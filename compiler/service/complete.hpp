#pragma once

#include "service/open_boat.hpp"

#include <string>
#include <vector>

namespace sheerpole::service {

/// What a proposal is, for the sign that an editor puts before it.
enum class ProposalSort { keyword, kind, property, block, name, choice, end, unit, source, file };

/// The word by which answers name it: "keyword".
std::string_view name_of(ProposalSort sort);

/// One thing that may be written at a place.
struct Proposal {
  std::string word; ///< what is shown and looked for
  ProposalSort sort = ProposalSort::keyword;
  std::string detail; ///< in a few words: what it is, what it takes
  std::string help;   ///< a sentence or more; may be empty
  std::string insert; ///< what is put into the text
  /// The same with places to fill in, `${1:…}` and `$0`; empty: there are none.
  std::string snippet = {};
  bool preselect = false; ///< must be stated here and is not yet
};

struct Proposals {
  Span span; ///< what of the text makes way: the word that has been typed so far
  std::vector<Proposal> all;
};

/// What may be written at the byte `offset` of a file, in the order of the language. Words that have been
/// begun are not looked at: the editor picks.
Proposals complete(const OpenBoat& boat, SourceId source, std::uint32_t offset);

} // namespace sheerpole::service
