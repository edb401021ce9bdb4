#include "service/missing_values.hpp"

#include "calculate/tune/standing_at_dock.hpp"
#include "calculate/tune/tune_phrase.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace sheerpole {

namespace {

constexpr std::string_view slug = "tune-input-missing";

/// The block of the declaration whose name, or whose kind when it has none, stands there; null when none
/// does.
const Block* block_of(const Declaration& declaration, Span place) {
  if ((declaration.name.missing() ? declaration.kind : declaration.name).span == place)
    return &declaration.block;
  for (const Entry& entry : declaration.block.entries)
    if (const auto* inner = std::get_if<Declaration>(&entry))
      if (const Block* found = block_of(*inner, place))
        return found;
  return nullptr;
}

const Block* block_of(const std::vector<std::shared_ptr<const SyntaxTree>>& trees, Span place) {
  for (const auto& tree : trees)
    for (const Statement& statement : tree->statements)
      if (const auto* declaration = std::get_if<Declaration>(&statement))
        if (const Block* found = block_of(*declaration, place))
          return found;
  return nullptr;
}

/// The blanks and line ends between the brace and the first thing in a block.
std::optional<Span> behind_brace(const SourceSet& sources, const Block& block) {
  const std::string_view text = sources[block.span.source].text(block.span);
  const std::size_t brace = text.find('{');
  if (brace == std::string_view::npos)
    return std::nullopt;
  const std::size_t first = std::min(text.find_first_not_of(" \t\r\n", brace + 1), text.size());
  return Span{block.span.source, block.span.begin + static_cast<std::uint32_t>(brace + 1),
              block.span.begin + static_cast<std::uint32_t>(first)};
}

} // namespace

void suggest_missing_values(const Rig& rig, const Derived& derived,
                            const std::vector<std::shared_ptr<const SyntaxTree>>& trees,
                            const SourceSet& sources, std::vector<Diagnostic>& findings) {
  // Those of one place stand in the order in which they were found.
  std::map<Span, std::vector<Diagnostic*>> by_place;
  for (Diagnostic& finding : findings)
    if (finding.slug == slug && finding.primary)
      by_place[finding.primary->span].push_back(&finding);
  if (by_place.empty())
    return;
  const auto standing = standing_at_dock(rig, derived);
  if (!standing)
    return;
  std::map<Span, std::size_t> told;
  for (const StandingAtDock::Missing& missing : standing->missing) {
    const std::size_t number = told[missing.place]++;
    const auto& here = by_place[missing.place];
    if (missing.property.empty() || number >= here.size() || here[number]->edit)
      continue;
    const Block* block = block_of(trees, missing.place);
    const auto span = block == nullptr ? std::nullopt : behind_brace(sources, *block);
    if (span)
      here[number]->edit =
          Edit{*span, "\n  " + missing.property + ": \n  ",
               say(rig, {TunePhrase::put_in_with_value, {Words{missing.property}}}), false};
  }
}

} // namespace sheerpole
