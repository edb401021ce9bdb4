#include "driver/built_in_backends.hpp"
#include "driver/compile.hpp"
#include "driver/exit_code.hpp"
#include "driver/make_pdfs.hpp"
#include "driver/show_findings.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/called_rig.hpp"
#include "driver/verbs/verbs.hpp"
#include "driver/verbs/write_and_tell.hpp"

#include "base/internal_error.hpp"

#include <algorithm>
#include <exception>
#include <utility>

namespace sheerpole {

namespace {

std::unique_ptr<Backend> change_sheet() {
  for (auto& backend : built_in_backends())
    if (backend->describe().name == "change-sheet")
      return std::move(backend);
  internal_error("the back end change-sheet is not linked in");
}

/// The rig, or nothing when it has an error, which has been shown.
std::optional<Compilation> read(const std::string& file, const CompileOptions& rig,
                                const FindingsForm& form) {
  print_progress("reading " + file + "\n");
  DiskFileReader reader;
  Compilation compilation = compile(file, reader, rig);
  if (compilation.checked)
    return compilation;
  print_error(show_findings(compilation, form.form, error_has_colour()));
  return std::nullopt;
}

int write(OutputBundle bundle, const Compilation& now, const ChangesOptions& options) {
  PdfReport pdfs;
  if (options.pdf)
    pdfs = add_pdfs(bundle, now.checked->rig().boat.report_date, *now.sources);
  if (!pdfs.findings.empty()) {
    Compilation of_pdfs;
    of_pdfs.sources = now.sources;
    of_pdfs.findings = pdfs.findings;
    print_error(show_findings(of_pdfs, options.findings.form, error_has_colour()));
  }
  print_error(pdfs.fault);
  const int code = write_and_tell(bundle, options.folder);
  return code != exit_clean ? code : pdfs.fault.empty() ? exit_clean : exit_fault;
}

} // namespace

int changes_verb(const ChangesOptions& options) {
  const std::string& to = options.to.empty() ? options.from : options.to;
  CompileOptions before = {.settings = {}, .folders = options.rig.folders, .as_of = options.from_as_of};
  if (options.to.empty() && options.rig.settings.empty() && options.rig.as_of == before.as_of) {
    print_error("sheerpole: there is nothing to compare: give a second file, or --set, or the layers with "
                "--from-as-of and --as-of\nsheerpole changes --help shows how it is used.\n");
    return exit_usage;
  }
  const auto was = read(options.from, before, options.findings);
  const auto is = was ? read(to, options.rig, options.findings) : std::nullopt;
  if (!was || !is)
    return exit_errors;
  const PaperSize paper = options.paper == "letter" ? PaperSize::letter : PaperSize::a4;
  OutputBundle bundle;
  try {
    bundle = change_sheet()->generate({.checked = *is->checked,
                                       .fleet = {},
                                       .paper = paper,
                                       .previous = &*was->checked,
                                       .name = called(to, options.rig),
                                       .previous_name = called(options.from, before)});
  } catch (const std::exception& error) {
    print_error("sheerpole: fault of the back end change-sheet: " + std::string(error.what()) + "\n");
    return exit_fault;
  }
  if (!options.folder.empty())
    return write(std::move(bundle), *is, options);
  const auto found = std::find_if(bundle.files.begin(), bundle.files.end(), [&](const OutputFile& file) {
    return file.name == (options.form == "json" ? "change-sheet.json" : "change-sheet.txt");
  });
  print_out(found->bytes);
  return exit_clean;
}

} // namespace sheerpole
