#include "driver/fleet/fleet_boat.hpp"

#include "backend/table/table.hpp"
#include "diagnostics/excerpt.hpp"
#include "driver/depends_file.hpp"
#include "driver/make_pdfs.hpp"
#include "driver/rig_argument.hpp"
#include "driver/terminal.hpp"
#include "driver/writing/write_bundle.hpp"

#include <nlohmann/json.hpp>

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
  std::vector<std::string> read;
  add_files(read, *compilation.sources);
  const auto written = write_bundle(bundle, folder, read);
  if (written.ok()) {
    outcome.files = written.value().size();
    return;
  }
  outcome.errors +=
      "sheerpole: " + describe(written.error()) +
      (written.error().kind == WriteFailure::Kind::mixed ? "\n" : "; nothing of this boat was written\n");
  worsen(outcome, is_fault(written.error()) ? exit_fault : exit_usage);
}

using Json = nlohmann::ordered_json;

std::string dump(const Json& json) {
  return json.dump(2, ' ', false, Json::error_handler_t::replace);
}

/// The same further to the right, without the blanks before its first line.
std::string indented(const std::string& text, std::size_t by) {
  std::string result;
  for (const char c : text) {
    result += c;
    if (c == '\n')
      result.append(by, ' ');
  }
  return result;
}

std::string amount(std::size_t count, const std::string& one, const std::string& several) {
  return std::to_string(count) + " " + (count == 1 ? one : several);
}

} // namespace

FleetOutcome do_boat(const std::string& file, const std::string& folder, const FleetWork& work) {
  FleetOutcome outcome;
  const auto fault_of_ours = [&outcome](const std::exception& error) {
    outcome.errors += "sheerpole: fault of the compiler itself: " + std::string(error.what()) + "\n";
    worsen(outcome, exit_fault);
  };
  try {
    const auto argument = rig_argument(file);
    if (!argument.ok()) {
      outcome.errors += argument.error();
      worsen(outcome, exit_usage);
      return outcome;
    }
    CompileOptions rig = work.rig;
    if (!work.write && work.form != "junit")
      rig.wanted = Wanted::counts;
    rig.rig_alone = true;
    Compilation compilation = compile(argument.value().path, *argument.value().reader, rig);
    if (compilation.has_errors)
      worsen(outcome, exit_errors);
    if (compilation.checked) {
      outcome.drafts = awaited(compilation.checked->draft_reasons()).size();
      try {
        if (work.write)
          build(file, folder, work, compilation, outcome);
      } catch (const std::exception& error) { // what was found of the rig is said all the same
        fault_of_ours(error);
      }
    }
    outcome.findings =
        show_findings(compilation, work.form, work.colour, argument.value().path, work.fail_on);
    outcome.counts = count_severities(compilation.findings);
  } catch (const std::exception& error) {
    fault_of_ours(error);
  }
  return outcome;
}

std::string FleetLog::begin() const {
  if (form_ == "junit")
    return std::string(junit_begins);
  if (form_ == "code-quality")
    return "[";
  if (form_ == "json")
    return "{\n  \"format\": \"sheerpole-fleet\",\n  \"version\": 1,\n  \"boats\": [";
  if (form_ == "sarif")
    return "{\n  \"$schema\": \"https://json.schemastore.org/sarif-2.1.0.json\",\n  \"version\": "
           "\"2.1.0\",\n"
           "  \"runs\": [\n    {\n      \"columnKind\": \"unicodeCodePoints\",\n      \"results\": [";
  return {};
}

std::string FleetLog::add(const std::string& file, const FleetOutcome& outcome) {
  std::string text;
  if (form_ == "json")
    text = add_json(file, outcome);
  else if (form_ == "sarif")
    text = add_sarif(outcome);
  else if (form_ == "code-quality")
    text = add_list(outcome);
  else if (form_ == "junit" && !outcome.findings.empty())
    text = outcome.findings.substr(junit_begins.size(),
                                   outcome.findings.size() - junit_begins.size() - junit_ends.size());
  else if (form_ == "lines")
    text = outcome.findings;
  else if (!outcome.findings.empty())
    text = (lines_.empty() ? "== " : "\n== ") + printable(file) + "\n" + outcome.findings;
  lines_.push_back({file, outcome.counts, outcome.drafts, outcome.files});
  total_.counts.errors += outcome.counts.errors;
  total_.counts.warnings += outcome.counts.warnings;
  total_.counts.notes += outcome.counts.notes;
  total_.counts.waived += outcome.counts.waived;
  total_.drafts += outcome.drafts;
  total_.files += outcome.files;
  return text;
}

std::string FleetLog::add_json(const std::string& file, const FleetOutcome& outcome) const {
  Json boat{{"file", file}, {"drafts", outcome.drafts}, {"files_written", outcome.files}};
  if (!outcome.findings.empty()) {
    Json found = Json::parse(outcome.findings);
    found.erase("format"); // those of the whole
    found.erase("version");
    boat.update(found);
  }
  return (lines_.empty() ? "\n    " : ",\n    ") + indented(dump(boat), 4);
}

std::string FleetLog::add_sarif(const FleetOutcome& outcome) {
  std::string text;
  if (outcome.findings.empty())
    return text;
  Json run = std::move(Json::parse(outcome.findings).at("runs").at(0));
  for (Json& result : run.at("results")) {
    result.erase("ruleIndex"); // the rules have another order here; ruleId names them
    text += (any_result_ ? ",\n        " : "\n        ") + indented(dump(result), 8);
    any_result_ = true;
  }
  for (const Json& rule : run.at("tool").at("driver").at("rules"))
    if (rules_known_.insert(rule.at("id").get<std::string>()).second)
      rules_ += (rules_.empty() ? "\n            " : ",\n            ") + indented(dump(rule), 12);
  return text;
}

std::string FleetLog::add_list(const FleetOutcome& outcome) {
  std::string text;
  if (outcome.findings.empty())
    return text;
  for (const Json& finding : Json::parse(outcome.findings)) {
    text += (any_result_ ? ",\n  " : "\n  ") + indented(dump(finding), 2);
    any_result_ = true;
  }
  return text;
}

std::string FleetLog::end() const {
  if (form_ == "junit")
    return std::string(junit_ends);
  if (form_ == "code-quality")
    return any_result_ ? "\n]\n" : "]\n";
  if (form_ == "json") {
    const Json total{{"boats", lines_.size()},
                     {"errors", total_.counts.errors},
                     {"warnings", total_.counts.warnings},
                     {"notes", total_.counts.notes},
                     {"waived", total_.counts.waived},
                     {"drafts", total_.drafts},
                     {"files_written", total_.files}};
    return "\n  ],\n  \"total\": " + indented(dump(total), 2) + "\n}\n";
  }
  if (form_ == "sarif")
    return std::string(any_result_ ? "\n      ]" : "]") +
           ",\n      \"tool\": {\n        \"driver\": {\n          \"name\": \"Sheerpole\",\n          "
           "\"rules\": [" +
           rules_ + (rules_.empty() ? "]" : "\n          ]") + "\n        }\n      }\n    }\n  ]\n}\n";
  return {};
}

std::string FleetLog::table() const {
  Table table;
  table.columns = {{"file"}, {"errors", true}, {"warnings", true}, {"notes", true}, {"drafts", true}};
  if (writes_)
    table.columns.push_back({"files", true});
  const auto add = [&](const std::string& name, const Line& line) {
    table.rows.push_back({name, std::to_string(line.counts.errors), std::to_string(line.counts.warnings),
                          std::to_string(line.counts.notes), std::to_string(line.drafts)});
    if (writes_)
      table.rows.back().push_back(std::to_string(line.files));
  };
  for (const Line& line : lines_)
    add(printable(line.file), line);
  add(amount(lines_.size(), "boat", "boats"), total_);
  return render_text(table);
}

} // namespace sheerpole
