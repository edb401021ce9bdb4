#pragma once

#include "elaborate/elaborate.hpp"
#include "names/read_files.hpp"
#include "names/resolve.hpp"

#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole::rig_test {

/// Files that exist in memory only.
class TextFiles final : public FileReader {
public:
  explicit TextFiles(std::map<std::string, std::string> files) : files_(std::move(files)) {}
  Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
    const auto found = files_.find(path);
    if (found == files_.end())
      return Failure::not_found;
    if (found->second.size() > limit)
      return Failure::too_large;
    return found->second;
  }

private:
  std::map<std::string, std::string> files_;
};

/// A rig taken through reading, parsing, binding of names and elaboration, with what was found on the way.
struct Understood {
  SourceSet sources;
  DiagnosticSink sink;
  ResolvedTree tree;
  Rig rig;

  /// Reads `boat.rig` out of the files.
  explicit Understood(std::map<std::string, std::string> files) {
    TextFiles reader(std::move(files));
    auto trees = read_files("boat.rig", reader, sources, sink);
    tree = resolve(std::move(trees), sink);
    rig = elaborate(tree, sources, sink);
  }
  explicit Understood(const std::string& text)
      : Understood(std::map<std::string, std::string>{{"boat.rig", text}}) {}

  /// "3:11"; with the file's name before it when it is not boat.rig.
  std::string place(Span span) const {
    const SourceText& source = sources[span.source];
    const Position position = source.position(span.begin);
    return (source.name() == "boat.rig" ? "" : source.name() + ":") + std::to_string(position.line) + ":" +
           std::to_string(position.column);
  }

  /// The line in which an edit begins, as it reads afterwards.
  std::string mended_line(const Edit& edit) const {
    const SourceText& source = sources[edit.span.source];
    std::string text(source.bytes());
    text.replace(edit.span.begin, edit.span.end - edit.span.begin, edit.replacement);
    const std::size_t begin = source.line_start(source.position(edit.span.begin).line);
    return text.substr(begin, text.find('\n', begin) - begin);
  }

  /// One finding with all that it says: severity when it is no error, place and marked text, slug, message,
  /// labels, second places, and the line that the edit makes.
  std::string whole(const Diagnostic& finding) const {
    std::string result =
        finding.severity == Severity::error ? "" : std::string(name_of(finding.severity)) + " ";
    if (finding.primary) {
      result += place(finding.primary->span) + " `" +
                std::string(sources[finding.primary->span.source].text(finding.primary->span)) + "` ";
    }
    result += finding.slug + ": " + finding.message;
    if (finding.primary && !finding.primary->text.empty())
      result += "\n  here: " + finding.primary->text;
    for (const Label& other : finding.others)
      result += "\n  " + place(other.span) + ": " + other.text;
    if (finding.edit)
      result += "\n  " + finding.edit->title + " -> " + mended_line(*finding.edit);
    return result;
  }

  std::vector<std::string> findings() const {
    std::vector<std::string> result;
    for (const Diagnostic& finding : sink.sorted())
      result.push_back(whole(finding));
    return result;
  }

  /// The slugs alone.
  std::vector<std::string> slugs() const {
    std::vector<std::string> result;
    for (const Diagnostic& finding : sink.sorted())
      result.push_back(finding.slug);
    return result;
  }
};

} // namespace sheerpole::rig_test
