#include "diagnostics/excerpt.hpp"
#include "diagnostics/load_failure_slug.hpp"
#include "driver/rig_argument.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/writing/replace_file.hpp"
#include "service/compile.hpp"
#include "syntax/tidy.hpp"

#include <algorithm>
#include <optional>
#include <string_view>

namespace sheerpole::tidy_verb {

namespace {

struct Options {
  std::vector<std::string> files;
  bool look = false;         ///< say which files are not tidy, write nothing
  bool print = false;        ///< write to the terminal, not to the file
  std::string form = "text"; ///< of the findings
};

/// Keeps the bytes as another reader gives them.
class KeepingReader final : public FileReader {
public:
  explicit KeepingReader(FileReader& reader) : reader_(reader) {}
  Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
    auto result = reader_.read(path, limit);
    bytes = result.ok() ? result.value() : std::string();
    return result;
  }
  std::string bytes;

private:
  FileReader& reader_;
};

/// A file as it is on the disk and as it would be tidied.
struct TidiedFile {
  std::string before;
  std::string after;
  bool changes() const { return before != after; }
};

/// Nothing when the file can not be read as a rig; the sink then knows why.
std::optional<TidiedFile> tidied(const std::string& path, FileReader& from, SourceSet& sources,
                                 DiagnosticSink& sink) {
  KeepingReader reader(from);
  auto loaded = load(path, sources.next_id(), reader);
  if (!loaded.ok()) {
    sink.report(diagnose(slug_of(loaded.error().kind),
                         {{"file", path}, {"line", std::to_string(loaded.error().line)}}));
    return std::nullopt;
  }
  const SourceText& source = sources.add(std::move(loaded.value()));
  std::optional<std::string> text = tidy(source, sink);
  if (!text)
    return std::nullopt;
  // Loading drops a byte order mark. It is in front of what was loaded, and stays.
  const std::string mark = reader.bytes.substr(0, reader.bytes.size() - source.bytes().size());
  return TidiedFile{std::move(reader.bytes), mark + *text};
}

int run(const Options& options) {
  if (options.print && options.files.size() > 1) {
    print_error("sheerpole: --print takes one file\nsheerpole tidy --help shows how it is used.\n");
    return exit_usage;
  }
  Compilation compilation;
  compilation.sources = std::make_shared<SourceSet>();
  DiagnosticSink sink;
  bool untidy = false;
  bool refused = false;
  for (const std::string& path : options.files) {
    const RigArgument argument = file_or_standard_input(path);
    const std::optional<TidiedFile> file = tidied(path, *argument.reader, *compilation.sources, sink);
    if (!file)
      continue;
    if (options.print || (!argument.on_disk && !options.look)) {
      print_out(file->after);
    } else if (file->changes() && options.look) {
      print_out("not tidy: " + printable(path) + "\n");
      untidy = true;
    } else if (file->changes() && replace_file(path, file->after)) {
      print_out("tidied " + printable(path) + "\n");
    } else if (file->changes()) {
      print_error("sheerpole: cannot write " + printable(path) + "; it is as it was\n");
      refused = true;
    }
  }
  compilation.findings = sink.sorted();
  compilation.has_errors = sink.has_errors();
  if (!compilation.findings.empty())
    print_error(show_findings(compilation, options.form, error_has_colour(), options.files.front()));
  if (refused)
    return exit_usage;
  return untidy || compilation.has_errors ? exit_errors : exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb = *app.add_subcommand("tidy", "lay the text of rig files out in one way");
  Options& options = options_of(verb, asked, run);
  verb.add_option("FILE", options.files,
                  "the rig files; those they use are not touched; - is standard input, and its tidy text "
                  "goes to the "
                  "terminal")
      ->required();
  CLI::Option* look = verb.add_flag("--look", options.look, "write nothing; say which files are not tidy");
  verb.add_flag("--print", options.print, "write nothing; show the tidy text of one file")->excludes(look);
  add_findings_form(verb, options.form);
}

} // namespace sheerpole::tidy_verb
