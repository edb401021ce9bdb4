#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/evidence/dated_facts.hpp"
#include "wording/checks/evidence_phrases.hpp"

/// How long things have been in service.
namespace sheerpole::ages {

namespace {

using P = EvidenceCheckPhrase;

/// Since when the line of a stay is in service, or when it was made.
struct LineDay {
  std::string date;
  std::string_view what = fact_names.installed;
};

LineDay line_day(const Rig& rig, const Stay& stay) {
  if (const std::string installed = fact_text(stay.particulars, fact_names.installed); !installed.empty())
    return {installed, fact_names.installed};
  return {fact_text(rig[stay.material].particulars, fact_names.made), fact_names.made};
}

void check_line_old(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto today = report_day(rig);
  look_at_stays(
      rig, derived, report,
      [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
        const Stay& stay = rig[derived_stay.stay];
        const bool rope = rig[stay.material].kind == LineMaterial::Kind::rope;
        const auto most = rig.limits.value(rope ? Limit::rope_age : Limit::wire_age);
        if (!most) {
          of_stay.not_checked({P::no_limit, {Words{rope ? "rope-age" : "wire-age"}}});
          return;
        }
        const LineDay since = line_day(rig, stay);
        const auto day = parse_day(since.date);
        if (!today || !day)
          of_stay.not_checked({today ? P::installed_not_stated : P::report_date_not_stated});
        else if (older_than(*day, *today, *most))
          of_stay.find(diagnose("line-old", {{"stay", name},
                                             {"line", rig[stay.material].name},
                                             {"what", std::string(since.what)},
                                             {"date", since.date},
                                             {"age", say(rig, age_words(*day, *today))},
                                             {"most", say(rig, years_words(*most))}})
                           .at(stay.place)
                           .about(name));
        else
          of_stay.pass({P::since, {Words{std::string(since.what)}, Remarks{{age_words(*day, *today)}}}});
      });
}

void check_hardware_old(const Rig& rig, const Derived& /*derived*/, CheckReport& report) {
  const double most = *rig.limits.value(Limit::hardware_age);
  const auto today = report_day(rig);
  for (const Part& part : rig.parts) {
    const std::string installed = fact_text(part.particulars, fact_names.installed);
    const auto day = parse_day(installed);
    if (!today || !day)
      report.not_checked(part.name, {today ? P::installed_not_stated : P::report_date_not_stated});
    else if (older_than(*day, *today, most))
      report.find(diagnose("hardware-old", {{"part", part.name},
                                            {"date", installed},
                                            {"age", say(rig, age_words(*day, *today))},
                                            {"most", say(rig, years_words(most))}})
                      .at(part.place)
                      .about(part.name));
    else
      report.pass(part.name, {P::installed_before, {Remarks{{age_words(*day, *today)}}}});
  }
}

} // namespace

const CheckTable checks{CheckRow{"line-old", check_line_old, {Limit::wire_age, Limit::rope_age}},
                        CheckRow{"hardware-old", check_hardware_old, {Limit::hardware_age}}};

} // namespace sheerpole::ages
