#include "names/kept_trees.hpp"

#include "diagnostics/sink.hpp"
#include "syntax/parse.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// Beyond this all is let go: a tree takes some ten times the bytes of its text, and reading a text again
/// takes a thousandth of a second.
constexpr std::size_t most_kept_bytes = 2 * 1024 * 1024;

} // namespace

ParsedText KeptTrees::parsed(const SourceText& source, std::size_t words_left) {
  const std::pair<std::string, SourceId> key{source.name(), source.id()};
  const auto found = kept_.find(key);
  if (found != kept_.end() && found->second.bytes == source.bytes() &&
      found->second.parsed.tree->words <= words_left) {
    ++taken_again_;
    return found->second.parsed;
  }
  ++read_;
  DiagnosticSink sink;
  ParsedText parsed{std::make_shared<const SyntaxTree>(parse(source, sink, words_left)), {}};
  parsed.findings = sink.all();
  // A text that was read in part is read again: how far one comes depends on the files before it.
  const bool in_part =
      std::any_of(parsed.findings.begin(), parsed.findings.end(),
                  [](const Diagnostic& finding) { return finding.slug == "too-many-words"; });
  if (found != kept_.end()) {
    bytes_ -= found->second.bytes.size();
    kept_.erase(found);
  }
  if (in_part || source.bytes().size() > most_kept_bytes)
    return parsed;
  if (bytes_ + source.bytes().size() > most_kept_bytes) {
    kept_.clear();
    bytes_ = 0;
  }
  bytes_ += source.bytes().size();
  kept_.emplace(key, Kept{std::string(source.bytes()), parsed});
  return parsed;
}

} // namespace sheerpole
