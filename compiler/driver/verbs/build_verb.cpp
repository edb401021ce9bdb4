#include "driver/compile.hpp"
#include "driver/exit_code.hpp"
#include "driver/make_papers.hpp"
#include "driver/make_pdfs.hpp"
#include "driver/outside/file_claims.hpp"
#include "driver/outside/outside_backends.hpp"
#include "driver/show_findings.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/called_rig.hpp"
#include "driver/verbs/verbs.hpp"
#include "driver/verbs/write_and_tell.hpp"
#include "driver/verbs/write_depends.hpp"

namespace sheerpole {

namespace {

/// Those about the rig, then those about the programs outside and the PDFs.
void show_all_findings(Compilation compilation, const OutsideBackends& outside, const PdfReport& pdfs,
                       const FindingsForm& form) {
  for (const auto* more : {&outside.findings(), &pdfs.findings})
    compilation.findings.insert(compilation.findings.end(), more->begin(), more->end());
  if (!compilation.findings.empty())
    print_error(show_findings(compilation, form.form, error_has_colour()));
}

} // namespace

int build_verb(const BuildOptions& options) {
  OutsideBackends outside(options.outside);
  std::vector<std::string> outside_names;
  for (const BackendDescription& description : outside.descriptions())
    outside_names.push_back(description.name);
  const ChosenBackends chosen = choose_backends(options.only, outside_names, outside.fault());
  if (!chosen.unknown.empty()) {
    print_error(chosen.unknown);
    return exit_usage;
  }
  print_progress("reading " + options.file + "\n");
  DiskFileReader reader;
  const Compilation compilation = compile(options.file, reader, options.rig);
  if (!compilation.checked) {
    show_all_findings(compilation, outside, {}, options.findings);
    print_error("nothing was written: an error stands\n");
    return outside.fault() ? exit_fault : exit_errors;
  }
  const CompileOptions of_previous = {.settings = {}, .folders = options.rig.folders};
  Compilation previous;
  if (!options.since.empty()) {
    print_progress("reading " + options.since + "\n");
    previous = compile(options.since, reader, of_previous);
    if (!previous.checked) {
      print_error(show_findings(previous, options.findings.form, error_has_colour()));
      print_error("nothing was written: an error stands in the version before\n");
      return exit_errors;
    }
  }
  OutputBundle bundle;
  FileClaims claims;
  const PaperSize paper = options.paper == "letter" ? PaperSize::letter : PaperSize::a4;
  const BackendRequest request{.checked = *compilation.checked,
                               .fleet = {},
                               .paper = paper,
                               .printed = options.pdf,
                               .previous = previous.checked ? &*previous.checked : nullptr,
                               .name = called(options.file, options.rig),
                               .previous_name = called(options.since, of_previous)};
  const std::string faults =
      make_papers(chosen.backends, request, claims, bundle,
                  [](const std::string& name) { print_progress("making " + name + "\n"); });
  print_error(faults);
  bool fault = !faults.empty();
  outside.generate(*compilation.checked, options.rig, paper, claims, bundle);
  fault = fault || outside.fault();
  PdfReport pdfs;
  if (options.pdf) {
    print_progress("drawing PDFs\n");
    pdfs = add_pdfs(bundle, compilation.checked->rig().boat.report_date, *compilation.sources);
  }
  show_all_findings(compilation, outside, pdfs, options.findings);
  print_error(pdfs.fault);
  fault = fault || !pdfs.fault.empty();
  Dependencies made;
  if (const int code = write_and_tell(bundle, options.folder, &made.outputs); code != exit_clean)
    return code;
  if (!options.depends.empty()) {
    made.add(*compilation.sources);
    if (previous.sources)
      made.add(*previous.sources);
    made.inputs.insert(made.inputs.end(), options.outside.programs.begin(), options.outside.programs.end());
    if (const int code = write_depends(made, options.depends); code != exit_clean)
      return code;
  }
  if (const std::size_t drafts = compilation.checked->draft_reasons().size(); drafts > 0)
    print_out("DRAFT: " + std::to_string(drafts) + (drafts == 1 ? " reason" : " reasons") +
              " not to cut yet; the cut list names them\n");
  return fault ? exit_fault : exit_clean;
}

} // namespace sheerpole
