#include "model/kind_words.hpp"
#include "rules/adjusters/adjuster_setting.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/stack_parts.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/adjuster_phrases.hpp"
#include "wording/checks/any_check_phrases.hpp"

/// How a screw is made and how far it is closed.
namespace sheerpole::screws {

namespace {

using Common = AnyCheckPhrase;

using P = AdjusterCheckPhrase;

bool is_threaded(const End& end) {
  return end.type == EndType::stud || end.type == EndType::socket;
}

void look_at_hands(const Rig& rig, const Stay& stay, const std::string& name, const StackPart& one,
                   StayReport& report) {
  const Part& part = *one.part;
  if (!part.screw || !part.screw->pair || (!is_threaded(part.upper) && !is_threaded(part.lower)))
    return;
  const EndDimension* upper = part.upper.find(EndDimensionName::hand);
  const EndDimension* lower = part.lower.find(EndDimensionName::hand);
  if (upper == nullptr || lower == nullptr) {
    report.not_checked({upper == nullptr ? P::hand_of_upper : P::hand_of_lower, {Words{part.name}}});
    return;
  }
  if (upper->text != lower->text) {
    report.pass({P::two_hands, {Words{part.name}, Words{upper->text}, Words{lower->text}}});
    return;
  }
  auto finding =
      diagnose("screw-same-hand",
               {{"stay", name}, {"part", part.name}, {"hand", say(rig, {P::handed, {Words{upper->text}}})}})
          .at(stay.stack[one.item].place, said(Common::this_one))
          .about(name);
  if (part.lower.place)
    finding =
        std::move(finding).and_at(*part.lower.place, say(rig, {P::like_the_other, {Words{upper->text}}}));
  report.find(std::move(finding));
}

void check_screw_same_hand(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const StackPart& one : parts_of(rig, rig[stay.stay]))
                    look_at_hands(rig, rig[stay.stay], name, one, of_stay);
                });
}

void check_adjuster_mostly_closed(const Rig& rig, const Derived& derived, CheckReport& report) {
  const double most = rig.limits.value(Limit::first_fit_closed).value_or(1.0);
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const TakeUp& adjuster : stay.adjusters) {
          const Part& part = rig[adjuster.part];
          if (part.kind != PartKind::turnbuckle || !in_range(adjuster) || near_an_end(rig, adjuster))
            continue;
          const std::string closed = percent_text(closed_share(adjuster));
          if (!mostly_closed(rig, adjuster)) {
            of_stay.pass({P::closed_share, {adjuster.part, Words{closed}}});
            continue;
          }
          const Span item = rig[stay.stay].stack[adjuster.item].place;
          of_stay.find(diagnose("adjuster-mostly-closed",
                                {{"stay", name},
                                 {"part", part.name},
                                 {"closed", closed},
                                 {"left", length_text(adjuster.to_tighten)},
                                 {"range", length_text(adjuster.to_tighten + adjuster.to_slacken)},
                                 {"most", percent_text(most)}})
                           .at(adjuster.set.provenance.place.value_or(item),
                               say(rig, {Common::to_tighten, {adjuster.to_tighten}}))
                           .about(name));
        }
      });
}

} // namespace

const CheckTable checks{
    CheckRow{"screw-same-hand", check_screw_same_hand},
    CheckRow{"adjuster-mostly-closed", check_adjuster_mostly_closed, {Limit::first_fit_closed}}};

} // namespace sheerpole::screws
