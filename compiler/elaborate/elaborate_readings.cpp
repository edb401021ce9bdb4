#include "base/calendar_day.hpp"
#include "elaborate/elaboration.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

// What is read in a reading and hardly meant.

namespace sheerpole {

namespace {

/// Up to where an offset is taken as meant: a hook with its shackles, and a halyard let down by an arm's
/// length. Choices of the project, no source.
constexpr Length usual_offset = Length::millimetres(300.0);
constexpr Length usual_hoist_offset = Length::millimetres(1000.0);
/// Up to where the twin of a knot lies: a hand's breadth. Choice of the project, no source.
constexpr Length usual_below_knot = Length::millimetres(100.0);

void doubt_offsets(Elaboration& elaboration, const ResolvedDeclaration& declaration,
                   const Reading& reading) {
  struct Stated {
    std::string_view property;
    const std::optional<Sourced<Length>>& value;
    Length usual;
  };
  for (const Stated& stated : {Stated{"offset", reading.offset, usual_offset},
                               Stated{"hoist-offset", reading.hoist_offset, usual_hoist_offset},
                               Stated{"below-knot", reading.below_knot, usual_below_knot}}) {
    const ResolvedProperty* property = declaration.find(stated.property);
    if (!stated.value || property == nullptr)
      continue;
    const Length amount = stated.value->value < Length{} ? -stated.value->value : stated.value->value;
    if (amount <= stated.usual)
      continue;
    elaboration.sink.report(diagnose("reading-offset-far", {{"stay", declaration.syntax->of.text},
                                                            {"property", std::string(stated.property)},
                                                            {"amount", length_text(amount)},
                                                            {"usual", length_text(stated.usual)}})
                                .at(property->syntax->value.expression().span)
                                .about(declaration.syntax->of.text));
  }
}

/// The same day in the year of the report, or in the year before where that has not come either.
std::string in_a_year_that_was(const std::string& date, const std::string& report) {
  std::string year = report.substr(0, 4);
  if (year + date.substr(4) > report)
    year = std::to_string(std::stoi(year) - 1);
  return std::string(4 - std::min<std::size_t>(4, year.size()), '0') + year + date.substr(4);
}

void doubt_date(Elaboration& elaboration, const ResolvedDeclaration& declaration, const Reading& reading) {
  const std::string& today = elaboration.rig.boat.report_date;
  const ResolvedProperty* property = declaration.find("date");
  const auto read = parse_day(reading.date);
  const auto report = parse_day(today);
  if (!read || !report || property == nullptr || read->count <= report->count)
    return;
  const Span span = property->syntax->value.expression().span;
  const std::string earlier = in_a_year_that_was(reading.date, today);
  auto finding =
      diagnose("reading-later",
               {{"stay", declaration.syntax->of.text}, {"date", reading.date}, {"report", today}})
          .at(span)
          .about(declaration.syntax->of.text);
  if (parse_day(earlier)) // 29 February is not in every year
    finding = std::move(finding).edit(span, earlier, "if the year was mistaken, write `" + earlier + "`");
  elaboration.sink.report(std::move(finding));
}

} // namespace

void doubt_reading(Elaboration& elaboration, const ResolvedDeclaration& declaration,
                   const Reading& reading) {
  doubt_offsets(elaboration, declaration, reading);
  doubt_date(elaboration, declaration, reading);
}

} // namespace sheerpole
