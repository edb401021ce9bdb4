#pragma once

#include "calculate/derived.hpp"
#include "diagnostics/sink.hpp"

/// Every check, each in the file of its slug. Each reads the rig and what was calculated and reports what
/// it finds.
namespace sheerpole {

/// Error: the hardware is longer than the pin-to-pin length, so that nothing is left for the line.
void check_negative_body(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Error: an adjuster is set shorter than its shortest or longer than its longest.
void check_adjuster_out_of_range(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Warning: less thread in the body than one diameter (common practice, no source).
void check_thread_engagement_low(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Warning: an adjuster has little of its range left one way.
void check_adjuster_near_end(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Errors and warnings about the two ends of a joint: pin and hole, jaw and plate, thread and hand, wire
/// and terminal, rope and seat. A dimension that is not stated makes the comparison not checked, and no
/// finding.
void check_pin_too_big(const Rig& rig, const Derived& derived, DiagnosticSink& sink);
void check_pin_loose(const Rig& rig, const Derived& derived, DiagnosticSink& sink);
void check_jaw_too_narrow(const Rig& rig, const Derived& derived, DiagnosticSink& sink);
void check_jaw_too_wide(const Rig& rig, const Derived& derived, DiagnosticSink& sink);
void check_jaw_too_shallow(const Rig& rig, const Derived& derived, DiagnosticSink& sink);
void check_hole_near_edge(const Rig& rig, const Derived& derived, DiagnosticSink& sink);
void check_thread_differs(const Rig& rig, const Derived& derived, DiagnosticSink& sink);
void check_hand_differs(const Rig& rig, const Derived& derived, DiagnosticSink& sink);
void check_wire_size_differs(const Rig& rig, const Derived& derived, DiagnosticSink& sink);
void check_wire_construction_differs(const Rig& rig, const Derived& derived, DiagnosticSink& sink);
void check_seat_too_narrow(const Rig& rig, const Derived& derived, DiagnosticSink& sink);
void check_seat_too_small(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Warning: what is drawn from an adjuster's account is more than it has.
void check_take_up_spent(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Warning: a `fit` was asked for and no parts in hand make it.
void check_no_fit(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Error: a test splice is longer after splicing than before, or set to more than it was.
void check_test_splice_reversed(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Warning: two ways to one pin-to-pin length disagree.
void check_routes_differ(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Note: port and starboard of one stay differ by more than the boat's pair tolerance.
void check_pair_differs(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Error: a splice is stated where the line is no rope.
void check_splice_on_wire(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Warning: a path ends higher than it begins.
void check_path_runs_upwards(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Warning: a hole-adjuster is set to a length between two of its holes.
void check_adjuster_between_holes(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Error: an adjuster is set beyond its range in a state of the rig.
void check_state_out_of_range(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Error: a calculated value is not what the file expects. Note: it can not be compared.
void check_expectation_missed(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// The rules that the files state, each under its own name and severity.
void check_user_rules(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Marks the findings that are waived. Errors are not waived; a waiver that is over by the boat's report
/// date, or that speaks of no finding, is said. Comes last.
void apply_waivers(const Rig& rig, DiagnosticSink& sink);

/// Note: a cut length lacks an input.
void check_cut_is_draft(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

/// Note: an assumed value reaches a cut length.
void check_assumed_input(const Rig& rig, const Derived& derived, DiagnosticSink& sink);

} // namespace sheerpole
