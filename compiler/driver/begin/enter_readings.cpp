#include "driver/begin/enter_readings.hpp"

#include "driver/begin/lengths_rig.hpp"
#include "service/compile.hpp"
#include "service/texts.hpp"

#include <algorithm>
#include <iterator>
#include <map>
#include <utility>

namespace sheerpole {

namespace {

std::size_t line_ends_in(std::string_view text) {
  return static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
}

bool says_the_same(const Reading& a, const Reading& b) {
  return a.method == b.method && a.date == b.date && a.same_mark(b) &&
         a.lengths().size() == b.lengths().size() &&
         std::equal(a.lengths().begin(), a.lengths().end(), b.lengths().begin(),
                    [](const auto& one, const auto& other) { return one.value == other.value; });
}

const CsvCell& cell_of(const std::map<std::size_t, CsvCell>& origins, std::size_t line) {
  static const CsvCell begin{"", 1, 1};
  const auto next = origins.upper_bound(line);
  return next == origins.begin() ? begin : std::prev(next)->second;
}

} // namespace

Result<EnteredReadings, std::vector<TableFailure>> enter_readings(const std::string& path,
                                                                  FileReader& reader,
                                                                  std::string_view table,
                                                                  const std::string& name) {
  const auto failed = [](std::string words) { return std::vector<TableFailure>{{1, 1, std::move(words)}}; };
  const auto before = reader.read(path, largest_source_bytes);
  if (!before.ok())
    return failed("the rig file cannot be read");
  const Compilation was = compile(path, reader, {.settings = {}, .folders = {}, .rig_only = true});
  if (was.has_errors || was.rig == nullptr)
    return failed("the rig file has errors; `sheerpole check` shows them. Nothing is entered before they "
                  "are put right");
  auto read = sheet_readings(table, name, *was.rig);
  if (!read.ok())
    return read.error();
  EnteredReadings result{before.value(), read.value().readings, read.value().empty_rows};
  if (result.readings == 0)
    return result;
  if (!result.text.empty() && result.text.back() != '\n')
    result.text += '\n';
  const std::size_t first = line_ends_in(result.text);
  result.text += read.value().text;

  service::Texts other(&reader);
  other.put(path, result.text);
  const Compilation now = compile(path, other, {.settings = {}, .folders = {}, .rig_only = true});
  std::vector<TableFailure> failures;
  const auto tell = [&](std::size_t line, std::string words) {
    const CsvCell& cell = cell_of(read.value().origins, line > first ? line - first : 0);
    failures.push_back({cell.line, cell.column, std::move(words)});
  };
  for (const Diagnostic& finding : now.findings)
    if (finding.severity == Severity::error)
      tell(finding.primary
               ? (*now.sources)[finding.primary->span.source].position(finding.primary->span.begin).line
               : 0,
           finding.message);
  if (failures.empty() && now.rig != nullptr)
    for (const Stay& stay : now.rig->stays)
      for (std::size_t i = 0; i < stay.readings.size(); ++i)
        for (std::size_t k = 0; k < i; ++k)
          if (says_the_same(stay.readings[i], stay.readings[k])) {
            const std::size_t line =
                (*now.sources)[stay.readings[i].place.source].position(stay.readings[i].place.begin).line;
            if (line > first)
              tell(line, "this reading of " + stay.name + " stands in the rig file already");
          }
  if (!failures.empty())
    return failures;
  return result;
}

} // namespace sheerpole
