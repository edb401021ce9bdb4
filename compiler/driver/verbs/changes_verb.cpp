#include "driver/built_in_backends.hpp"
#include "driver/depends_file.hpp"
#include "driver/make_pdfs.hpp"
#include "driver/rig_argument.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/writing/write_bundle.hpp"
#include "kinds/kind_row.hpp"
#include "service/compile.hpp"

#include <algorithm>
#include <exception>
#include <utility>

namespace sheerpole::changes_verb {

namespace {

struct Options {
  std::string from;
  std::string to;            ///< empty: the same file, with what `rig` sets
  std::string from_as_of;    ///< a layer: the first file without what later layers state
  CompileOptions rig;        ///< of the second
  std::string folder;        ///< empty: the sheet goes to the terminal
  std::string form = "text"; ///< text, json; on the terminal
  PaperOptions papers;
};

/// The rig, or nothing when it has an error, which has been shown.
std::optional<Compilation> read(const RigArgument& file, const CompileOptions& rig) {
  print_progress("reading " + file.path + "\n");
  Compilation compilation = compile(file.path, *file.reader, rig);
  if (compilation.checked)
    return compilation;
  print_error(show_findings(compilation, "text", error_has_colour()));
  return std::nullopt;
}

int write(OutputBundle bundle, const Compilation& was, const Compilation& now, const Options& options) {
  PdfReport pdfs;
  if (options.papers.pdf)
    pdfs = add_pdfs(bundle, now.checked->rig().boat.report_date, *now.sources);
  if (!pdfs.findings.empty()) {
    Compilation of_pdfs;
    of_pdfs.sources = now.sources;
    of_pdfs.findings = pdfs.findings;
    print_error(show_findings(of_pdfs, "text", error_has_colour()));
  }
  print_error(pdfs.fault);
  std::vector<std::string> read;
  add_files(read, *was.sources);
  add_files(read, *now.sources);
  const int code = write_and_tell(bundle, options.folder, read);
  return code != exit_clean ? code : pdfs.fault.empty() ? exit_clean : exit_fault;
}

int run(const Options& options) {
  const std::string& to = options.to.empty() ? options.from : options.to;
  CompileOptions before = {.settings = {}, .folders = options.rig.folders, .as_of = options.from_as_of};
  if (options.to.empty() && options.rig.settings.empty() && options.rig.as_of == before.as_of) {
    print_error("sheerpole: there is nothing to compare: give a second file, or --set, or the layers with "
                "--from-as-of and --as-of\nsheerpole changes --help shows how it is used.\n");
    return exit_usage;
  }
  const auto file_before = rig_argument(options.from);
  const auto file_now = rig_argument(to);
  for (const auto* file : {&file_before, &file_now})
    if (!file->ok()) {
      print_error(file->error());
      return exit_usage;
    }
  const auto was = read(file_before.value(), before);
  // Standard input can be read once, so the same word is the same reader.
  const auto is =
      was ? read(to == options.from ? file_before.value() : file_now.value(), options.rig) : std::nullopt;
  if (!was || !is)
    return exit_errors;
  OutputBundle bundle;
  try {
    bundle = built_in_backend("change-sheet")
                 ->generate({.checked = *is->checked,
                             .fleet = {},
                             .paper = options.papers.size(),
                             .previous = &*was->checked,
                             .name = called(to, options.rig),
                             .previous_name = called(options.from, before)});
  } catch (const std::exception& error) {
    print_error("sheerpole: fault of the back end change-sheet: " + std::string(error.what()) + "\n");
    return exit_fault;
  }
  if (!options.folder.empty())
    return write(std::move(bundle), *was, *is, options);
  const auto found = std::find_if(bundle.files.begin(), bundle.files.end(), [&](const OutputFile& file) {
    return file.name == (options.form == "json" ? "change-sheet.json" : "change-sheet.txt");
  });
  print_out(found->bytes);
  return exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("changes", "say what differs between two rig files, or with other values");
  Options& options = options_of(verb, asked, run);
  verb.add_option(
          "FILE", options.from,
          "the rig file as it was; REVISION:FILE is a file as git has it in that revision, :FILE as it is "
          "staged")
      ->required();
  verb.add_option("FILE-NOW", options.to, "the rig file as it is; not given: the same one");
  add_as_of(verb, options.from_as_of, "--from-as-of", "the first one without the layers after this one");
  verb.add_option("--into", options.folder, "folder to write the sheet to, in all its forms")
      ->type_name("FOLDER");
  add_papers(verb, options.papers, "as PDF as well, into the folder");
  verb.add_option("--form", options.form, "on the terminal: text or json")
      ->check(CLI::IsMember({"text", "json"}))
      ->type_name("FORM");
  add_rig_options(verb, options.rig);
}

} // namespace sheerpole::changes_verb
