#include "driver/print_phase.hpp"

#include "base/internal_error.hpp"
#include "calculate/print_derived.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/verbs/verbs.hpp"
#include "model/print_rig.hpp"
#include "names/resolve.hpp"
#include "syntax/print_tree.hpp"

namespace sheerpole {

namespace {

std::string print_sources(const Compilation& compilation) {
  std::string result;
  for (std::uint32_t i = 0; i < compilation.sources->size(); ++i) {
    const SourceText& text = (*compilation.sources)[SourceId{i}];
    result += text.name() + ": " + std::to_string(text.bytes().size()) + " bytes, " +
              std::to_string(text.line_count()) + " lines\n";
  }
  return result;
}

/// The back end `echo` hands its request back, which is what the others get too.
std::string request_as_json(const CheckedRig& checked) {
  for (const auto& backend : built_in_backends())
    if (backend->describe().name == "echo")
      return backend->generate({checked}).files.front().bytes;
  internal_error("the back end echo is not linked in");
}

} // namespace

const std::vector<Listing>& phases() {
  static const std::vector<Listing> all = {
      {"source", "the files read, with their sizes"},
      {"syntax", "the text of each file as a tree"},
      {"names", "every name and what it stands for"},
      {"rig", "the rig as understood: points, parts, stays, with the source of each number"},
      {"lengths", "every calculated length as the sum of its terms"},
      {"checked", "the checked rig as a back end gets it, in JSON"},
  };
  return all;
}

std::string print_phase(const Compilation& compilation, const std::string& phase) {
  if (phase == "source")
    return print_sources(compilation);
  if (phase == "syntax") {
    std::string result;
    for (const auto& tree : compilation.trees)
      result += (*compilation.sources)[tree->source].name() + "\n" + print_tree(*tree);
    return result;
  }
  if (phase == "names" && compilation.names)
    return print_names(*compilation.names, *compilation.sources);
  if (phase == "rig" && compilation.rig)
    return print_rig(*compilation.rig);
  if (phase == "lengths" && compilation.derived)
    return print_derived(*compilation.rig, *compilation.derived);
  if (phase == "checked" && compilation.checked)
    return request_as_json(*compilation.checked);
  return {};
}

} // namespace sheerpole
