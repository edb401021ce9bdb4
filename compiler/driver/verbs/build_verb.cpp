#include "base/edit_distance.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/compile.hpp"
#include "driver/exit_code.hpp"
#include "driver/make_pdfs.hpp"
#include "driver/outside/file_claims.hpp"
#include "driver/outside/outside_backends.hpp"
#include "driver/show_findings.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/called_rig.hpp"
#include "driver/verbs/verbs.hpp"
#include "driver/verbs/write_and_tell.hpp"

#include <algorithm>
#include <exception>
#include <iterator>

namespace sheerpole {

namespace {

using Backends = std::vector<std::unique_ptr<Backend>>;

/// Takes the built-in back ends that are asked for; false when a name is not known, which has been said.
/// Those outside are made without being asked for, and may be named as well.
bool choose(const std::vector<std::string>& only, const OutsideBackends& outside, Backends& result) {
  if (only.empty()) {
    result = usual_backends();
    return true;
  }
  std::vector<std::string> outside_names;
  for (const BackendDescription& description : outside.descriptions())
    outside_names.push_back(description.name);
  std::vector<std::string> names = outside_names;
  for (const auto& backend : built_in_backends())
    names.push_back(backend->describe().name);
  for (const std::string& name : only) {
    if (std::find(outside_names.begin(), outside_names.end(), name) != outside_names.end())
      continue;
    Backends all = built_in_backends();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const auto& backend) { return backend->describe().name == name; });
    if (found != all.end()) {
      result.push_back(std::move(*found));
    } else if (!outside.fault()) { // else it may be the name that could not be said
      std::string message = "sheerpole: there is no back end `" + name + "`";
      if (const auto near = nearest_name(name, names))
        message += "; did you mean `" + *near + "`?";
      print_error(message + "\n`sheerpole list back-ends` shows all.\n");
      return false;
    }
  }
  return true;
}

/// Lets the built-in ones make their papers; false when one has a fault, which has been said.
bool make(const Backends& backends, const BackendRequest& request, FileClaims& claims,
          OutputBundle& bundle) {
  bool well = true;
  for (const auto& backend : backends) {
    const std::string name = backend->describe().name;
    print_progress("making " + name + "\n");
    try {
      OutputBundle made = backend->generate(request);
      for (const OutputFile& file : made.files)
        claims.add(file.name, name);
      for (const PagedFile& file : made.papers)
        claims.add(file.name, name);
      std::move(made.files.begin(), made.files.end(), std::back_inserter(bundle.files));
      std::move(made.papers.begin(), made.papers.end(), std::back_inserter(bundle.papers));
    } catch (const std::exception& error) {
      print_error("sheerpole: fault of the back end " + name + ": " + error.what() + "\n");
      well = false;
    }
  }
  return well;
}

/// Those about the rig, then those about the programs outside.
void show_all_findings(Compilation compilation, const OutsideBackends& outside, const FindingsForm& form) {
  compilation.findings.insert(compilation.findings.end(), outside.findings().begin(),
                              outside.findings().end());
  if (!compilation.findings.empty())
    print_error(show_findings(compilation, form.form, error_has_colour()));
}

} // namespace

int build_verb(const BuildOptions& options) {
  OutsideBackends outside(options.outside);
  Backends backends;
  if (!choose(options.only, outside, backends))
    return exit_usage;
  print_progress("reading " + options.file + "\n");
  DiskFileReader reader;
  const Compilation compilation = compile(options.file, reader, options.rig);
  if (!compilation.checked) {
    show_all_findings(compilation, outside, options.findings);
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
                               .previous = previous.checked ? &*previous.checked : nullptr,
                               .name = called(options.file, options.rig),
                               .previous_name = called(options.since, of_previous)};
  bool fault = !make(backends, request, claims, bundle);
  outside.generate(*compilation.checked, options.rig, paper, claims, bundle);
  fault = fault || outside.fault();
  show_all_findings(compilation, outside, options.findings);
  if (options.pdf) {
    print_progress("drawing PDFs\n");
    auto pdfs = make_pdfs(bundle.papers, compilation.checked->rig().boat.report_date);
    if (pdfs.ok())
      std::move(pdfs.value().begin(), pdfs.value().end(), std::back_inserter(bundle.files));
    else
      print_error("sheerpole: no PDF: " + pdfs.error().what + "\n");
    fault = fault || !pdfs.ok();
  }
  if (const int code = write_and_tell(bundle, options.folder); code != exit_clean)
    return code;
  if (const std::size_t drafts = compilation.checked->draft_reasons().size(); drafts > 0)
    print_out("DRAFT: " + std::to_string(drafts) + (drafts == 1 ? " reason" : " reasons") +
              " not to cut yet; the cut list names them\n");
  return fault ? exit_fault : exit_clean;
}

} // namespace sheerpole
