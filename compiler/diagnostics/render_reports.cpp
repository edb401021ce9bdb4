#include "base/byte_text.hpp"
#include "diagnostics/excerpt.hpp"
#include "diagnostics/render.hpp"

#include <map>
#include <nlohmann/json.hpp>

namespace sheerpole {

namespace {

using Json = nlohmann::ordered_json;

/// As a text or an attribute of XML 1.0: signs that it cannot hold have gone with those that do not show.
std::string xml_text(std::string_view text) {
  std::string result;
  for (const char c : printable(text))
    switch (c) {
    case '&':
      result += "&amp;";
      break;
    case '<':
      result += "&lt;";
      break;
    case '>':
      result += "&gt;";
      break;
    case '"':
      result += "&quot;";
      break;
    default:
      result += c;
    }
  return result;
}

std::string attribute(std::string_view name, std::string_view value) {
  return " " + std::string(name) + "=\"" + xml_text(value) + "\"";
}

struct Spot {
  std::string file;
  std::size_t line = 1;
};

/// Where a finding is; one without a place is at the beginning of the rig file.
Spot spot_of(const Diagnostic& finding, const SourceSet& sources, const std::string& rig_file) {
  if (!finding.primary)
    return {plain_path(rig_file)};
  const SourceText& text = sources[finding.primary->span.source];
  return {plain_path(text.name()), text.position(finding.primary->span.begin).line};
}

bool fails(const Diagnostic& finding, Severity fail_from) {
  return finding.severity == Severity::error ||
         (finding.severity == Severity::warning && fail_from != Severity::error) ||
         fail_from == Severity::note;
}

/// The cases of a suite and how many of each sort.
struct Suite {
  std::string cases;
  std::size_t tests = 0;
  std::size_t failures = 0;
  std::size_t skipped = 0;

  void add(const std::string& name, const std::string& rig_file, const std::string& place,
           const std::string& inside) {
    ++tests;
    cases += "    <testcase" + attribute("classname", rig_file) + attribute("name", name) + place +
             (inside.empty() ? "/>\n" : ">\n      " + inside + "\n    </testcase>\n");
  }
};

std::string named(const std::string& slug, const std::string& subject) {
  return subject.empty() ? slug : slug + ": " + subject;
}

} // namespace

std::string plain_path(std::string_view name) {
  while (name.starts_with("./"))
    name.remove_prefix(2);
  return std::string(name);
}

std::string render_junit_suite(const std::vector<Diagnostic>& findings, const SourceSet& sources,
                               const std::vector<CheckResult>& results, const std::string& rig_file,
                               Severity fail_from) {
  Suite suite;
  for (const Diagnostic& finding : findings) {
    const Spot spot = spot_of(finding, sources, rig_file);
    const std::string message = attribute("message", finding.message);
    std::string inside = "<system-out>" + std::string(name_of(finding.severity)) + ": " +
                         xml_text(finding.message) + "</system-out>";
    if (!finding.waived.empty()) {
      ++suite.skipped;
      inside = "<skipped" + attribute("message", "waived: " + finding.waived) + "/>";
    } else if (fails(finding, fail_from)) {
      ++suite.failures;
      inside = "<failure" + attribute("type", finding.slug) + message + ">" +
               xml_text(spot.file + ":" + std::to_string(spot.line) + ": " + finding.message +
                        (finding.why.empty() ? "" : ". Why: " + finding.why)) +
               "</failure>";
    }
    suite.add(named(finding.slug, finding.subject), rig_file,
              attribute("file", spot.file) + attribute("line", std::to_string(spot.line)), inside);
  }
  // What a check found or what is waived has been said.
  for (const CheckResult& result : results) {
    const bool seen = result.outcome == CheckOutcome::pass;
    if (!seen && result.outcome != CheckOutcome::not_checked)
      continue;
    suite.skipped += seen ? 0 : 1;
    suite.add(named(result.check, result.subject), rig_file, "",
              seen ? "" : "<skipped" + attribute("message", "not checked: " + result.words) + "/>");
  }
  return "  <testsuite" + attribute("name", rig_file) + attribute("tests", std::to_string(suite.tests)) +
         attribute("failures", std::to_string(suite.failures)) + attribute("errors", "0") +
         attribute("skipped", std::to_string(suite.skipped)) + ">\n" + suite.cases + "  </testsuite>\n";
}

std::string render_code_quality(const std::vector<Diagnostic>& findings, const SourceSet& sources,
                                const std::string& rig_file) {
  Json list = Json::array();
  std::map<std::string, int> alike;
  for (const Diagnostic& finding : findings) {
    if (!finding.waived.empty())
      continue;
    const Spot spot = spot_of(finding, sources, rig_file);
    // Without the line: text that is added above does not make an old finding a new one.
    const std::string same =
        rig_file + '\n' + finding.slug + '\n' + spot.file + '\n' + finding.subject + '\n' + finding.message;
    list.push_back({{"description", finding.message},
                    {"check_name", finding.slug},
                    {"fingerprint", sha256(same + '\n' + std::to_string(alike[same]++))},
                    {"severity", finding.severity == Severity::error     ? "critical"
                                 : finding.severity == Severity::warning ? "major"
                                                                         : "info"},
                    {"location", {{"path", spot.file}, {"lines", {{"begin", spot.line}}}}}});
  }
  return list.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

} // namespace sheerpole
