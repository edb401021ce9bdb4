#include "driver/phases.hpp"

#include "driver/built_in_backends.hpp"
#include "names/resolve.hpp"
#include "syntax/syntax_tree.hpp"
#include "wording/print_phases.hpp"

#include <array>

namespace sheerpole {

namespace {

namespace print {

std::string source(const Compilation& compilation) {
  std::string result;
  for (std::uint32_t i = 0; i < compilation.sources->size(); ++i) {
    const SourceText& text = (*compilation.sources)[SourceId{i}];
    result += text.name() + ": " + std::to_string(text.bytes().size()) + " bytes, " +
              std::to_string(text.line_count()) + " lines\n";
  }
  return result;
}

std::string syntax(const Compilation& compilation) {
  std::string result;
  for (const auto& tree : compilation.trees)
    result += (*compilation.sources)[tree->source].name() + "\n" + print_tree(*tree);
  return result;
}

std::string names(const Compilation& compilation) {
  return compilation.names ? print_names(*compilation.names, *compilation.sources) : std::string();
}

std::string rig(const Compilation& compilation) {
  return compilation.rig ? print_rig(*compilation.rig) : std::string();
}

std::string lengths(const Compilation& compilation) {
  return compilation.derived ? print_derived(*compilation.rig, *compilation.derived) : std::string();
}

/// The back end `echo` hands its request back, which is what the others get too.
std::string checked(const Compilation& compilation) {
  if (!compilation.checked)
    return {};
  return built_in_backend("echo")->generate({*compilation.checked}).files.front().bytes;
}

} // namespace print

constexpr std::array all_phases{
    Phase{"source", "the files read, with their sizes", print::source},
    Phase{"syntax", "the text of each file as a tree", print::syntax},
    Phase{"names", "every name and what it stands for", print::names},
    Phase{"rig", "the rig as understood: points, parts, stays, with the source of each number", print::rig},
    Phase{"lengths", "every calculated length as the sum of its terms", print::lengths},
    Phase{"checked", "the checked rig as a back end gets it, in JSON", print::checked},
};

} // namespace

std::span<const Phase> phases() {
  return all_phases;
}

std::string print_phase(const Compilation& compilation, std::string_view name) {
  for (const Phase& phase : all_phases)
    if (phase.name == name)
      return phase.print(compilation);
  return {};
}

} // namespace sheerpole
