#include "base/calendar_day.hpp"
#include "elaborate/elaboration.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace sheerpole {

namespace {

/// One knot of a cord: which stay it keeps, and by which reading.
struct Knot {
  const Stay* stay = nullptr;
  const Reading* reading = nullptr;
};

std::string of_tally(int knots) {
  return knots == 1 ? "1 knot" : std::to_string(knots) + " knots";
}

/// Whether the file says that one knot keeps both: it is stated of the pair, or of one side by its distance
/// from the knot of the other.
bool is_shared(const Knot& one, const Knot& other) {
  return one.stay == other.stay || one.reading->place == other.reading->place ||
         (one.stay->base == other.stay->base && (one.reading->below_knot || other.reading->below_knot));
}

std::vector<Knot> knots_on(const Rig& rig, const std::string& cord) {
  std::vector<Knot> knots;
  for (const Stay& stay : rig.stays)
    for (const Reading& reading : stay.readings)
      if (reading.cord == cord)
        knots.push_back({&stay, &reading});
  return knots;
}

void report_clashes(Elaboration& elaboration, const std::string& cord, const std::vector<Knot>& knots) {
  for (std::size_t later = 1; later < knots.size(); ++later) {
    const Knot& one = knots[later];
    if (!one.reading->knots)
      continue;
    const auto clash = std::find_if(
        knots.begin(), knots.begin() + static_cast<std::ptrdiff_t>(later), [&](const Knot& other) {
          return other.reading->knots == one.reading->knots && !is_shared(other, one);
        });
    if (clash == knots.begin() + static_cast<std::ptrdiff_t>(later))
      continue;
    elaboration.sink.report(diagnose("cord-clash", {{"stay", one.stay->name},
                                                    {"other", clash->stay->name},
                                                    {"cord", cord},
                                                    {"tally", of_tally(*one.reading->knots)}})
                                .at(one.reading->place)
                                .and_at(clash->reading->place, clash->stay->name)
                                .about(one.stay->name));
  }
}

void report_without_tally(Elaboration& elaboration, const std::string& cord,
                          const std::vector<Knot>& knots) {
  std::set<const Stay*> stays;
  for (const Knot& knot : knots)
    stays.insert(knot.stay);
  if (stays.size() < 2)
    return;
  for (const Knot& knot : knots)
    if (!knot.reading->knots)
      elaboration.sink.report(
          diagnose("cord-tally-missing",
                   {{"stay", knot.stay->name}, {"cord", cord}, {"count", std::to_string(stays.size())}})
              .at(knot.reading->place)
              .about(knot.stay->name));
}

/// Up to where an offset is taken as meant: a hook and its shackles, or a halyard let down by an arm's
/// length. Choice of the project, no source.
constexpr Length usual_offset = Length::millimetres(1000.0);
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
                               Stated{"hoist-offset", reading.hoist_offset, usual_offset},
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

void check_knots(Elaboration& elaboration) {
  std::vector<std::string> cords;
  for (const Stay& stay : elaboration.rig.stays)
    for (const Reading& reading : stay.readings)
      if (!reading.cord.empty() && std::find(cords.begin(), cords.end(), reading.cord) == cords.end())
        cords.push_back(reading.cord);
  for (const std::string& cord : cords) {
    const std::vector<Knot> knots = knots_on(elaboration.rig, cord);
    report_clashes(elaboration, cord, knots);
    report_without_tally(elaboration, cord, knots);
  }
}

} // namespace sheerpole
