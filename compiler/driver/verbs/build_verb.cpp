#include "driver/built_in_backends.hpp"
#include "driver/depends_file.hpp"
#include "driver/make_pdfs.hpp"
#include "driver/outside/outside_backends.hpp"
#include "driver/rig_argument.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/writing/write_bundle.hpp"
#include "service/compile.hpp"

namespace sheerpole::build_verb {

namespace {

struct Options {
  std::string file;
  CompileOptions rig;
  std::string folder;
  std::vector<std::string> only; ///< back ends; empty: the usual ones
  std::string form = "text";     ///< of the findings
  std::string since;             ///< rig file of the version before; empty: there is none to compare with
  std::string depends;           ///< file for what was made from what; empty: none
  PaperOptions papers;
  OutsideOptions outside; ///< programs that make papers as well
};

/// Those about the rig, then those about the programs outside and the PDFs.
void show_all_findings(Compilation compilation, const OutsideBackends& outside, const PdfReport& pdfs,
                       const Options& options) {
  for (const auto* more : {&outside.findings(), &pdfs.findings})
    compilation.findings.insert(compilation.findings.end(), more->begin(), more->end());
  if (!compilation.findings.empty())
    print_error(show_findings(compilation, options.form, error_has_colour(), options.file));
}

int run(const Options& options) {
  OutsideBackends outside(options.outside);
  std::vector<std::string> outside_names;
  for (const BackendDescription& description : outside.descriptions())
    outside_names.push_back(description.name);
  const ChosenBackends chosen = choose_backends(options.only, outside_names, outside.fault());
  if (!chosen.unknown.empty()) {
    print_error(chosen.unknown);
    return exit_usage;
  }
  const auto file = rig_argument(options.file);
  const auto since = rig_argument(options.since);
  for (const auto* argument : {&file, &since})
    if (!argument->ok()) {
      print_error(argument->error());
      return exit_usage;
    }
  if (!options.depends.empty() && !(file.value().on_disk && since.value().on_disk)) {
    print_error("sheerpole: --depends needs files on the disk, which make and ninja can look at\n");
    return exit_usage;
  }
  print_progress("reading " + options.file + "\n");
  const Compilation& compilation =
      until_the_end(compile(file.value().path, *file.value().reader, options.rig));
  if (!compilation.checked) {
    show_all_findings(compilation, outside, {}, options);
    print_error("nothing was written: an error stands\n");
    return outside.fault() ? exit_fault : exit_errors;
  }
  const CompileOptions of_previous = {.settings = {}, .folders = options.rig.folders};
  Compilation previous;
  if (!options.since.empty()) {
    print_progress("reading " + options.since + "\n");
    previous = compile(since.value().path, *since.value().reader, of_previous);
    if (!previous.checked) {
      print_error(show_findings(previous, options.form, error_has_colour(), options.since));
      print_error("nothing was written: an error stands in the version before\n");
      return exit_errors;
    }
  }
  OutputBundle bundle;
  FileClaims claims;
  const BackendRequest request{.checked = *compilation.checked,
                               .fleet = {},
                               .paper = options.papers.size(),
                               .printed = options.papers.pdf,
                               .previous = previous.checked ? &*previous.checked : nullptr,
                               .name = called(options.file, options.rig),
                               .previous_name = called(options.since, of_previous)};
  const std::string faults =
      make_papers(chosen.backends, request, claims, bundle,
                  [](const std::string& name) { print_progress("making " + name + "\n"); });
  print_error(faults);
  bool fault = !faults.empty();
  outside.generate(*compilation.checked, options.rig, options.papers.size(), claims, bundle);
  fault = fault || outside.fault();
  PdfReport pdfs;
  if (options.papers.pdf) {
    print_progress("drawing PDFs\n");
    pdfs = add_pdfs(bundle, compilation.checked->rig().boat.report_date, *compilation.sources);
  }
  show_all_findings(compilation, outside, pdfs, options);
  print_error(pdfs.fault);
  fault = fault || !pdfs.fault.empty();
  Dependencies made;
  add_files(made.inputs, compilation);
  if (previous.sources)
    add_files(made.inputs, *previous.sources);
  made.inputs.insert(made.inputs.end(), options.outside.programs.begin(), options.outside.programs.end());
  if (const int code = write_and_tell(bundle, options.folder, made.inputs, &made.outputs);
      code != exit_clean)
    return code;
  if (!options.depends.empty())
    if (const int code = write_depends(made, options.depends); code != exit_clean)
      return code;
  if (const std::string waiting = waiting_words(*compilation.checked); !waiting.empty())
    print_out("DRAFT: " + waiting + "\n");
  return fault ? exit_fault : exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb =
      *app.add_subcommand("build", "check a rig file and write cut lists, findings and drawings");
  Options& options = options_of(verb, asked, run);
  verb.add_option("FILE", options.file,
                  "the rig file; - is standard input, REVISION:FILE a file as git has it in that revision")
      ->required();
  verb.add_option("--into", options.folder, "folder to write to; it is made if it is not there")
      ->required()
      ->type_name("FOLDER");
  add_only(verb, options.only, "cut-list,diagram");
  verb.add_option("--since", options.since,
                  "rig file of the version before: papers say what has changed since")
      ->type_name("FILE");
  add_papers(verb, options.papers);
  verb.add_option("--depends", options.depends,
                  "file to write for make or ninja: it names the files that were made and those that were "
                  "read for them")
      ->type_name("FILE");
  add_outside(verb, options.outside);
  add_findings_form(verb, options.form);
  add_rig_options(verb, options.rig);
}

} // namespace sheerpole::build_verb
