#include "names/read_files.hpp"

#include "source/load.hpp"
#include "syntax/parse.hpp"

#include <algorithm>
#include <filesystem>
#include <optional>

namespace sheerpole {

namespace {

std::string_view slug_of(LoadFailure::Kind kind) {
  switch (kind) {
  case LoadFailure::Kind::not_found:
    return "file-not-found";
  case LoadFailure::Kind::not_readable:
    return "file-not-readable";
  case LoadFailure::Kind::is_folder:
    return "file-is-folder";
  case LoadFailure::Kind::too_large:
    return "file-too-large";
  case LoadFailure::Kind::not_utf8:
    return "file-not-utf8";
  }
  return "file-not-readable";
}

class FileWalk {
public:
  FileWalk(const std::string& root, FileReader& reader, const std::vector<std::string>& more_folders,
           SourceSet& sources, DiagnosticSink& sink)
      : reader_(reader), sources_(sources), sink_(sink) {
    folders_.push_back(real(std::filesystem::path(root).parent_path()));
    for (const std::string& folder : more_folders)
      folders_.push_back(real(folder));
  }

  void visit(const std::filesystem::path& path, std::optional<Span> asked_at, int depth) {
    const std::string name = path.generic_string();
    if (std::find(open_.begin(), open_.end(), name) != open_.end()) {
      sink_.report(
          diagnose("use-cycle", {{"file", name}}).at(*asked_at, "this file is being read already"));
      return;
    }
    if (std::find(done_.begin(), done_.end(), name) != done_.end())
      return;
    if (depth > deepest_use || sources_.size() >= most_files) {
      sink_.report(diagnose("too-many-files",
                            {{"files", std::to_string(most_files)}, {"depth", std::to_string(deepest_use)}})
                       .at(*asked_at));
      return;
    }
    auto loaded = load(name, sources_.next_id(), reader_);
    if (!loaded.ok()) {
      auto builder = diagnose(slug_of(loaded.error().kind),
                              {{"file", name}, {"line", std::to_string(loaded.error().line)}});
      if (asked_at)
        sink_.report(std::move(builder).at(*asked_at, "asked for here"));
      else
        sink_.report(std::move(builder));
      done_.push_back(name);
      return;
    }
    const SourceText& source = sources_.add(std::move(loaded.value()));
    auto tree = std::make_shared<SyntaxTree>(parse(source, sink_));
    open_.push_back(name);
    for (const Statement& statement : tree->statements)
      if (const Use* use = std::get_if<Use>(&statement))
        follow(*use, path, depth);
    open_.pop_back();
    done_.push_back(name);
    trees_.push_back(std::move(tree));
  }

  std::vector<std::shared_ptr<const SyntaxTree>> take() { return std::move(trees_); }

private:
  /// The place on the disk, with links followed; the same whatever folder the command was typed in.
  std::filesystem::path real(const std::filesystem::path& path) const {
    return reader_.real_path(path.empty() ? "." : path.generic_string());
  }

  bool is_allowed(const std::filesystem::path& target) const {
    return std::any_of(folders_.begin(), folders_.end(), [&](const std::filesystem::path& folder) {
      const std::filesystem::path inside = target.lexically_relative(folder);
      return !inside.empty() && *inside.begin() != "..";
    });
  }

  bool has_finding_inside(Span span) const {
    for (const Diagnostic& finding : sink_.all())
      if (finding.primary && finding.primary->span.source == span.source &&
          finding.primary->span.begin >= span.begin && finding.primary->span.end <= span.end)
        return true;
    return false;
  }

  void follow(const Use& use, const std::filesystem::path& from, int depth) {
    if (has_finding_inside(use.span))
      return; // the path itself is in doubt
    const std::filesystem::path asked(use.path.text);
    const std::filesystem::path target = (from.parent_path() / asked).lexically_normal();
    if (use.path.text.empty() || asked.is_absolute() || !is_allowed(real(target))) {
      sink_.report(diagnose("use-outside-folder",
                            {{"file", use.path.text.empty() ? "an empty path" : use.path.text}})
                       .at(use.path.span));
      return;
    }
    visit(target, use.path.span, depth + 1);
  }

  std::vector<std::filesystem::path> folders_; ///< from which may be read, links followed
  FileReader& reader_;
  SourceSet& sources_;
  DiagnosticSink& sink_;
  std::vector<std::string> open_;
  std::vector<std::string> done_;
  std::vector<std::shared_ptr<const SyntaxTree>> trees_;
};

} // namespace

std::vector<std::shared_ptr<const SyntaxTree>> read_files(const std::string& root_path, FileReader& reader,
                                                          const std::vector<std::string>& more_folders,
                                                          SourceSet& sources, DiagnosticSink& sink) {
  FileWalk walk(root_path, reader, more_folders, sources, sink);
  walk.visit(std::filesystem::path(root_path).lexically_normal(), std::nullopt, 0);
  return walk.take();
}

} // namespace sheerpole
