#include "rules/evidence/dated_facts.hpp"

#include "units/format_length.hpp"
#include "wording/checks/evidence_phrases.hpp"

#include <cmath>

namespace sheerpole {

namespace {

constexpr double seconds_of_day = 86400.0;
constexpr double days_of_year = 365.25;

} // namespace

std::optional<CalendarDay> report_day(const Rig& rig) {
  return parse_day(rig.boat.report_date);
}

double years_between(CalendarDay from, CalendarDay to) {
  return static_cast<double>(to.count - from.count) / days_of_year;
}

Remark age_words(CalendarDay from, CalendarDay to) {
  const double years = years_between(from, to);
  if (years < 1.0)
    return {EvidenceCheckPhrase::days, {Count{to.count - from.count}}};
  return {EvidenceCheckPhrase::years, {Decimal{years, 1}}};
}

Remark years_words(double seconds) {
  const double years = seconds / (seconds_of_day * days_of_year);
  if (years < 1.0)
    return {EvidenceCheckPhrase::days, {Decimal{seconds / seconds_of_day, 1}}};
  return {years == 1.0 ? EvidenceCheckPhrase::one_year : EvidenceCheckPhrase::years, {Decimal{years, 1}}};
}

bool older_than(CalendarDay from, CalendarDay to, double seconds) {
  return static_cast<double>(to.count - from.count) * seconds_of_day > seconds;
}

} // namespace sheerpole
