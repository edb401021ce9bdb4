#include "driver/fleet/fleet_boat.hpp"

#include "diagnostics/excerpt.hpp"
#include "driver/make_pdfs.hpp"
#include "driver/show_findings.hpp"
#include "driver/verbs/called_rig.hpp"
#include "driver/write_bundle.hpp"

#include <algorithm>
#include <exception>
#include <iterator>

namespace sheerpole {

namespace {

/// The outcome is at least as bad as this.
void worsen(FleetOutcome& outcome, ExitCode code) {
  outcome.code = std::max(outcome.code, code);
}

/// Adds what is found of her papers.
void build(const std::string& file, const std::string& folder, const FleetWork& work,
           Compilation& compilation, FleetOutcome& outcome) {
  const CheckedRig& checked = *compilation.checked;
  OutputBundle bundle;
  FileClaims claims;
  const BackendRequest request{.checked = checked,
                               .fleet = {},
                               .paper = work.paper,
                               .printed = work.pdf,
                               .previous = nullptr,
                               .name = called(file, work.rig)};
  outcome.errors = make_papers(*work.backends, request, claims, bundle, [](const std::string&) {});
  if (work.pdf) {
    PdfReport pdfs = add_pdfs(bundle, checked.rig().boat.report_date, *compilation.sources);
    std::move(pdfs.findings.begin(), pdfs.findings.end(), std::back_inserter(compilation.findings));
    outcome.errors += pdfs.fault;
  }
  if (!outcome.errors.empty())
    worsen(outcome, exit_fault);
  const auto written = write_bundle(bundle, folder);
  if (written.ok()) {
    outcome.files = written.value().size();
    return;
  }
  outcome.errors += "sheerpole: " + describe(written.error()) + "; nothing of this boat was written\n";
  worsen(outcome, is_fault(written.error()) ? exit_fault : exit_usage);
}

} // namespace

FleetOutcome do_boat(const std::string& file, const std::string& folder, const FleetWork& work) {
  FleetOutcome outcome;
  const auto fault_of_ours = [&outcome](const std::exception& error) {
    outcome.errors += "sheerpole: fault of the compiler itself: " + std::string(error.what()) + "\n";
    worsen(outcome, exit_fault);
  };
  try {
    DiskFileReader reader;
    Compilation compilation = compile(file, reader, work.rig);
    if (compilation.has_errors)
      worsen(outcome, exit_errors);
    if (compilation.checked) {
      outcome.drafts = compilation.checked->draft_reasons().size();
      try {
        if (work.write)
          build(file, folder, work, compilation, outcome);
      } catch (const std::exception& error) { // what was found of the rig is said all the same
        fault_of_ours(error);
      }
    }
    outcome.findings = show_findings(compilation, work.form, work.colour);
    outcome.counts = count_severities(compilation.findings);
  } catch (const std::exception& error) {
    fault_of_ours(error);
  }
  return outcome;
}

} // namespace sheerpole
