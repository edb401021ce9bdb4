#include "rules/check.hpp"

#include "rules/checks.hpp"

namespace sheerpole {

void check(const Rig& rig, const Derived& derived, DiagnosticSink& sink) {
  check_negative_body(rig, derived, sink);
  check_splice_on_wire(rig, derived, sink);
  check_path_runs_upwards(rig, derived, sink);
  check_pin_too_big(rig, derived, sink);
  check_pin_loose(rig, derived, sink);
  check_jaw_too_narrow(rig, derived, sink);
  check_jaw_too_wide(rig, derived, sink);
  check_jaw_too_shallow(rig, derived, sink);
  check_hole_near_edge(rig, derived, sink);
  check_thread_differs(rig, derived, sink);
  check_hand_differs(rig, derived, sink);
  check_wire_size_differs(rig, derived, sink);
  check_wire_construction_differs(rig, derived, sink);
  check_seat_too_narrow(rig, derived, sink);
  check_seat_too_small(rig, derived, sink);
  check_adjuster_out_of_range(rig, derived, sink);
  check_thread_engagement_low(rig, derived, sink);
  check_adjuster_near_end(rig, derived, sink);
  check_adjuster_between_holes(rig, derived, sink);
  check_state_out_of_range(rig, derived, sink);
  check_take_up_spent(rig, derived, sink);
  check_no_fit(rig, derived, sink);
  check_test_splice_reversed(rig, derived, sink);
  check_routes_differ(rig, derived, sink);
  check_pair_differs(rig, derived, sink);
  check_cut_is_draft(rig, derived, sink);
  check_assumed_input(rig, derived, sink);
  check_expectation_missed(rig, derived, sink);
  check_user_rules(rig, derived, sink);
  apply_waivers(rig, sink);
}

} // namespace sheerpole
