#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/stack_parts.hpp"
#include "wording/checks/any_check_phrases.hpp"

/// What meets at a joint, compared: one check for each kind of comparison.
namespace sheerpole::joint_comparisons {

namespace {

using Common = AnyCheckPhrase;

void add_finding(const Rig& rig, const Stay& stay, const Joint& joint, const JointCheck& check,
                 const std::string& name, StayReport& report) {
  find_once(report,
            diagnose(slug_of(check.finding),
                     {{"stay", name}, {"joint", say(rig, joint.name)}, {"words", say(rig, check.words)}})
                .at(stay.stack[joint.lower].place, said(Common::this_one))
                .and_at(stay.stack[joint.upper].place, said(Common::under_this_one))
                .about(name));
}

/// Reports what the comparison of this name came to at every joint; a finding stands at the lower of the
/// two things. Two things that meet in several joints of a stay are named once.
void report_comparison(const Rig& rig, const Derived& derived, std::string_view slug, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const Joint& joint : stay.joints)
          for (const JointCheck& check : joint.checks) {
            if (slug_of(check.finding) != slug)
              continue;
            if (check.result == JointResult::finding)
              add_finding(rig, rig[stay.stay], joint, check, name, of_stay);
            else if (check.result == JointResult::pass)
              of_stay.pass({Common::of_something, {Remarks{{joint.name}}, Remarks{{check.words}}}});
            else
              of_stay.not_checked({Common::of_something, {Remarks{{joint.name}}, Remarks{{check.words}}}});
          }
      });
}

/// The comparison that bears the check's own name.
void check_comparison(const Rig& rig, const Derived& derived, CheckReport& report) {
  report_comparison(rig, derived, report.check(), report);
}

void check_ends(const Rig& rig, const Derived& derived, CheckReport& report) {
  check_comparison(rig, derived, report);
  // Ends that are not stated, or that may be joined some way: not checked.
  report_comparison(rig, derived, "ends", report);
}

} // namespace

const CheckTable checks{
    CheckRow{"ends-do-not-join", check_ends},
    CheckRow{"jaws-meet", check_comparison},
    CheckRow{"pin-too-big", check_comparison},
    CheckRow{"pin-loose", check_comparison, {Limit::pin_play, Limit::pin_play_share}},
    CheckRow{"pin-too-short", check_comparison},
    CheckRow{"split-pin-small", check_comparison},
    CheckRow{"jaw-too-narrow", check_comparison},
    CheckRow{"jaw-too-wide", check_comparison, {Limit::side_play, Limit::side_play_share}},
    CheckRow{"jaw-too-shallow", check_comparison},
    CheckRow{"hole-near-edge", check_comparison, {Limit::edge_usual, Limit::edge_least}},
    CheckRow{"thread-differs", check_comparison},
    CheckRow{"hand-differs", check_comparison},
    CheckRow{"stud-engaged-short",
             check_comparison,
             {Limit::thread_engaged, Limit::thread_engaged_stainless, Limit::thread_engaged_aluminium}},
    CheckRow{"stud-too-long", check_comparison},
    CheckRow{"hook-too-small", check_comparison},
    CheckRow{"tee-too-big", check_comparison},
    CheckRow{"tee-pulls-through", check_comparison},
    CheckRow{"wire-size-differs", check_comparison},
    CheckRow{"wire-construction-differs", check_comparison},
    CheckRow{"seat-too-narrow", check_comparison},
    CheckRow{"seat-too-wide", check_comparison, {Limit::seat_width}},
    CheckRow{"seat-too-small", check_comparison, {Limit::seat_usual, Limit::seat_least}},
};

} // namespace sheerpole::joint_comparisons
