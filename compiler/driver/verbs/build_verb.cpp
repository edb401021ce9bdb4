#include "base/edit_distance.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/compile.hpp"
#include "driver/exit_code.hpp"
#include "driver/make_pdfs.hpp"
#include "driver/show_findings.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/verbs.hpp"
#include "driver/verbs/write_and_tell.hpp"

#include <algorithm>
#include <exception>
#include <iterator>

namespace sheerpole {

namespace {

using Backends = std::vector<std::unique_ptr<Backend>>;

/// The back ends asked for; empty when a name is not known, which has been said.
Backends chosen(const std::vector<std::string>& only) {
  if (only.empty())
    return usual_backends();
  Backends result;
  std::vector<std::string> names;
  for (const auto& backend : built_in_backends())
    names.push_back(backend->describe().name);
  for (const std::string& name : only) {
    Backends all = built_in_backends();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const auto& backend) { return backend->describe().name == name; });
    if (found == all.end()) {
      std::string message = "sheerpole: there is no back end `" + name + "`";
      if (const auto near = nearest_name(name, names))
        message += "; did you mean `" + *near + "`?";
      print_error(message + "\n`sheerpole list back-ends` shows all.\n");
      return {};
    }
    result.push_back(std::move(*found));
  }
  return result;
}

} // namespace

int build_verb(const BuildOptions& options) {
  const Backends backends = chosen(options.only);
  if (backends.empty())
    return exit_usage;
  print_progress("reading " + options.file + "\n");
  DiskFileReader reader;
  const Compilation compilation = compile(options.file, reader, options.rig);
  if (!compilation.findings.empty())
    print_error(show_findings(compilation, options.findings.form, error_has_colour()));
  if (!compilation.checked) {
    print_error("nothing was written: an error stands\n");
    return exit_errors;
  }
  OutputBundle bundle;
  const PaperSize paper = options.paper == "letter" ? PaperSize::letter : PaperSize::a4;
  bool fault = false;
  for (const auto& backend : backends) {
    const std::string name = backend->describe().name;
    print_progress("making " + name + "\n");
    try {
      OutputBundle made = backend->generate({.checked = *compilation.checked, .fleet = {}, .paper = paper});
      std::move(made.files.begin(), made.files.end(), std::back_inserter(bundle.files));
      std::move(made.papers.begin(), made.papers.end(), std::back_inserter(bundle.papers));
    } catch (const std::exception& error) {
      print_error("sheerpole: fault of the back end " + name + ": " + error.what() + "\n");
      fault = true;
    }
  }
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
