#include "names/read_files.hpp"

#include "diagnostics/load_failure_slug.hpp"
#include "kinds/kind_row.hpp"
#include "syntax/parse.hpp"

#include <algorithm>
#include <filesystem>
#include <optional>
#include <set>
#include <type_traits>
#include <variant>

namespace sheerpole {

namespace {

/// Goes through all that a file states until it comes to the first thing beyond `left`, which it returns.
class DeclarationCount {
public:
  explicit DeclarationCount(std::size_t left) : left_(left) {}

  void count(const SyntaxTree& tree) {
    for (const Statement& statement : tree.statements)
      std::visit([this](const auto& each) { count_one(each); }, statement);
  }
  std::size_t left() const { return left_; }
  std::optional<Span> too_many() const { return too_many_; }

private:
  template <class Stated>
  void count_one(const Stated& stated) {
    if (left_ == 0) {
      if (!too_many_)
        too_many_ = stated.span;
      return;
    }
    --left_;
    if constexpr (std::is_same_v<Stated, Declaration>)
      for (const Entry& entry : stated.block.entries)
        std::visit([this](const auto& each) { count_one(each); }, entry);
  }

  std::size_t left_;
  std::optional<Span> too_many_;
};

/// Whether a text is something else altogether: nothing of it is a statement of the language, and more than
/// a slip or two is found. Hundreds of findings of a table or a page would not say so.
bool is_no_rig_file(const ParsedText& parsed, std::string_view text) {
  // Of a text with very many slips no statement is kept.
  if (text.starts_with("language ") || text.find("\nlanguage ") != std::string_view::npos)
    return false;
  constexpr std::size_t slips = 2; // somebody who has just begun to type
  const auto is_of_the_language = [](const Statement& statement) {
    if (const auto* declaration = std::get_if<Declaration>(&statement))
      return find_kind(declaration->kind.text) != nullptr;
    return !std::holds_alternative<ErrorEntry>(statement);
  };
  return parsed.findings.size() > slips &&
         std::ranges::none_of(parsed.tree->statements, is_of_the_language);
}

/// Where the first of the findings is.
Span first_place(const ParsedText& parsed) {
  Span first{parsed.tree->source};
  bool any = false;
  for (const Diagnostic& finding : parsed.findings)
    if (finding.primary && (!any || finding.primary->span < first)) {
      first = finding.primary->span;
      any = true;
    }
  return first;
}

class FileWalk {
public:
  FileWalk(const std::string& root, FileReader& reader, const std::vector<std::string>& more_folders,
           SourceSet& sources, DiagnosticSink& sink, KeptTrees* kept)
      : reader_(reader), sources_(sources), sink_(sink), kept_(kept) {
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
    if (full_ || done_.contains(name))
      return;
    if (depth > deepest_use || done_.size() + open_.size() >= most_files) {
      full_ = done_.size() + open_.size() >= most_files; // it would be said again of each file to come
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
      done_.insert(name);
      return;
    }
    const SourceText& source = sources_.add(std::move(loaded.value()));
    bytes_ += source.bytes().size();
    if (bytes_ > most_rig_bytes) {
      full_ = true;
      sink_.report(
          diagnose("rig-too-large", {{"file", name}, {"limit", std::to_string(most_rig_bytes >> 20)}})
              .at(*asked_at));
      return;
    }
    const ParsedText parsed = read_text(source);
    const auto& tree = parsed.tree;
    words_left_ -= tree->words;
    if (report_other_version(*tree)) {
      done_.insert(name);
      return;
    }
    if (is_no_rig_file(parsed, source.bytes())) {
      sink_.report(diagnose("no-rig-file", {{"file", name}}).at(first_place(parsed)));
      done_.insert(name);
      return;
    }
    for (const Diagnostic& finding : parsed.findings) {
      full_ = full_ || finding.slug == "too-many-words";
      sink_.report(finding);
    }
    count_declarations(*tree);
    open_.push_back(name);
    for (const Statement& statement : tree->statements)
      if (const Use* use = std::get_if<Use>(&statement))
        follow(*use, path, depth);
    open_.pop_back();
    done_.insert(name);
    trees_.push_back(tree);
  }

  std::vector<std::shared_ptr<const SyntaxTree>> take() { return std::move(trees_); }

private:
  ParsedText read_text(const SourceText& source) const {
    if (kept_ != nullptr)
      return kept_->parsed(source, words_left_);
    DiagnosticSink of_text;
    auto tree = std::make_shared<const SyntaxTree>(parse(source, of_text, words_left_));
    return {std::move(tree), of_text.all()};
  }

  void count_declarations(const SyntaxTree& tree) {
    DeclarationCount counted(declarations_left_);
    counted.count(tree);
    declarations_left_ = counted.left();
    if (counted.too_many() && !full_)
      sink_.report(diagnose("too-many-declarations", {{"limit", std::to_string(most_declarations)}})
                       .at(*counted.too_many()));
    full_ = full_ || counted.too_many();
  }

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

  /// A file of another language version: nothing else that this version makes of it can be trusted, so this
  /// finding comes alone.
  bool report_other_version(const SyntaxTree& tree) {
    for (const Statement& statement : tree.statements)
      if (const auto* line = std::get_if<LanguageLine>(&statement);
          line != nullptr && line->version != "1" && !line->version.empty()) {
        sink_.report(diagnose("language-version", {{"version", line->version}})
                         .at(line->span)
                         .edit(line->span, "language 1", "write `language 1`"));
        return true;
      }
    return false;
  }

  bool has_finding_inside(Span span) const {
    for (const Diagnostic& finding : sink_.all())
      if (finding.primary && finding.primary->span.source == span.source &&
          finding.primary->span.begin >= span.begin && finding.primary->span.end <= span.end)
        return true;
    return false;
  }

  void follow(const Use& use, const std::filesystem::path& from, int depth) {
    if (full_ || has_finding_inside(use.span))
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
  KeptTrees* kept_; ///< may be null
  std::vector<std::string> open_;
  std::set<std::string> done_;
  std::size_t bytes_ = 0;
  std::size_t words_left_ = most_words;
  std::size_t declarations_left_ = most_declarations;
  bool full_ = false; ///< a bound is reached and reported; nothing more is read
  std::vector<std::shared_ptr<const SyntaxTree>> trees_;
};

} // namespace

std::vector<std::shared_ptr<const SyntaxTree>> read_files(const std::string& root_path, FileReader& reader,
                                                          const std::vector<std::string>& more_folders,
                                                          SourceSet& sources, DiagnosticSink& sink,
                                                          KeptTrees* kept) {
  FileWalk walk(root_path, reader, more_folders, sources, sink, kept);
  walk.visit(std::filesystem::path(root_path).lexically_normal(), std::nullopt, 0);
  return walk.take();
}

} // namespace sheerpole
