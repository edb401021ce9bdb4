#include "driver/seal/make_seal.hpp"

#include "calculate/facts.hpp"
#include "driver/built_in_backends.hpp"
#include "driver/make_pdfs.hpp"
#include "driver/seal/sealed_folder.hpp"
#include "driver/terminal.hpp"
#include "model/fact_name.hpp"

#include <iterator>

namespace sheerpole {

namespace {

/// The words that make the same papers again.
std::vector<std::string> words_for_again(const SealRequest& request) {
  std::vector<std::string> words;
  for (const std::string& name : request.only)
    words.push_back("--only=" + name);
  if (request.pdf)
    words.emplace_back("--pdf");
  words.push_back("--paper=" + request.paper);
  if (!request.rig.shop.empty())
    words.push_back("--shop=" + request.rig.shop);
  return words;
}

std::vector<SealedSource> sources_of(const SourceSet& texts) {
  std::vector<SealedSource> sources;
  for (std::uint32_t i = 0; i < texts.size(); ++i)
    sources.push_back({texts[SourceId{i}].name(), texts[SourceId{i}].file_bytes()});
  return sources;
}

} // namespace

Result<OutputBundle, SealFailure> make_seal(const SealRequest& request) {
  const ChosenBackends chosen = choose_backends(request.only, {}, false);
  if (!chosen.unknown.empty()) {
    print_error(chosen.unknown);
    return SealFailure{exit_usage};
  }
  print_progress("reading " + request.file + "\n");
  DiskFileReader reader;
  Compilation compilation = compile(request.file, reader, request.rig);
  if (!compilation.checked) {
    print_error(show_findings(compilation, "text", error_has_colour()));
    print_error("nothing was sealed: an error stands\n");
    return SealFailure{exit_errors};
  }
  OutputBundle papers;
  FileClaims claims;
  const BackendRequest of_papers{.checked = *compilation.checked,
                                 .fleet = {},
                                 .paper = request.paper == "letter" ? PaperSize::letter : PaperSize::a4,
                                 .printed = request.pdf};
  const std::string faults = make_papers(chosen.backends, of_papers, claims, papers, [](const auto&) {});
  const Boat& boat = compilation.checked->rig().boat;
  PdfReport pdfs;
  if (request.pdf && faults.empty())
    pdfs = add_pdfs(papers, boat.report_date, *compilation.sources);
  std::move(pdfs.findings.begin(), pdfs.findings.end(), std::back_inserter(compilation.findings));
  if (!compilation.findings.empty())
    print_error(show_findings(compilation, "text", error_has_colour()));
  print_error(faults + pdfs.fault);
  if (!faults.empty() || !pdfs.fault.empty())
    return SealFailure{exit_fault};
  return sealed_folder({.root = (*compilation.sources)[compilation.names->root].name(),
                        .sources = sources_of(*compilation.sources),
                        .outputs = std::move(papers.files),
                        .boat = boat.title,
                        .revision = fact_text(boat.particulars, fact_names.revision),
                        .report_date = boat.report_date,
                        .version = SHEERPOLE_VERSION,
                        .made = words_for_again(request)});
}

} // namespace sheerpole
