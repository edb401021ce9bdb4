#include "wording/length_words.hpp"

#include "calculate/adjust/take_up.hpp"
#include "model/kind_words.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/length_phrases.hpp"
#include "wording/papers/rig_words.hpp"
#include "wording/say.hpp"

#include <variant>

namespace sheerpole {

namespace {

std::string runs_name(const Term& term) {
  const std::size_t count = std::get<Runs>(term.of).count;
  return count == 1 ? say(RigPhrase::one_run) : say(RigPhrase::mean_of_runs, count);
}

std::string leg_name(const Rig& rig, const Term& term) {
  const PathLeg& leg = std::get<PathLeg>(term.of);
  return say(RigPhrase::to, rig[leg.from].base, rig[leg.to].base);
}

std::string part_name(const Rig& rig, const TakenPart& taken) {
  return (taken.count == 1 ? "" : std::to_string(taken.count) + " x ") + rig[taken.part].name;
}

std::string setting_name(const Rig& rig, const Term& term) {
  const TakenPart& taken = std::get<TakenPart>(term.of);
  const std::string name = part_name(rig, taken);
  if (taken.open)
    return say(RigPhrase::open, name, percent_text(*taken.open));
  const std::string& written = term.provenance.written;
  const std::string amount =
      written.empty() ? length_text(magnitude(term.amount) / static_cast<double>(taken.count)) : written;
  return name + (rig[taken.part].kind == PartKind::lashing ? say(RigPhrase::gap) : say(RigPhrase::set_to)) +
         amount;
}

std::string line_name(const Term& term) {
  const LineOfStack& line = std::get<LineOfStack>(term.of);
  return say(RigPhrase::line_of, line.number, line.of);
}

std::string at_end(std::string_view what, const Term& term) {
  return std::string(what) + " " + std::string(word_of(std::get<WhichEnd>(term.of)));
}

} // namespace

std::string term_name(const Rig& rig, const Term& term) {
  switch (term.kind) {
  case TermKind::runs:
    return runs_name(term);
  case TermKind::tape_standard:
    return say(RigPhrase::tape_standard);
  case TermKind::tape_temperature:
    return say(RigPhrase::tape_temperature);
  case TermKind::tape_pull:
    return say(RigPhrase::tape_pull);
  case TermKind::tape_sag:
    return say(RigPhrase::tape_sag);
  case TermKind::hook_offset:
    return say(RigPhrase::hook_offset);
  case TermKind::cord_offset:
    return say(RigPhrase::cord_offset);
  case TermKind::hoist_offset:
    return say(RigPhrase::hoist_offset);
  case TermKind::old_stretch:
    return say(RigPhrase::stretch_old_stay);
  case TermKind::knot:
    return say(RigPhrase::mark_knot);
  case TermKind::below_knot:
    return say(RigPhrase::below_the_knot);
  case TermKind::pins_as_stated:
    return say(RigPhrase::pin_to_pin_as_stated);
  case TermKind::leg:
    return leg_name(rig, term);
  case TermKind::pin_to_pin:
    return "pin-to-pin";
  case TermKind::part:
    return part_name(rig, std::get<TakenPart>(term.of));
  case TermKind::setting:
    return setting_name(rig, term);
  case TermKind::line_as_stated:
    return say(RigPhrase::length_as_stated);
  case TermKind::other_line:
    return line_name(term);
  case TermKind::body:
    return say(RigPhrase::body);
  case TermKind::stretch:
    return say(RigPhrase::stretch_from_bench_to_dock);
  case TermKind::stretch_spliced:
    return say(RigPhrase::less_stretch_where_it_is);
  case TermKind::bedding:
    return say(RigPhrase::bedding_to_come);
  case TermKind::eye_allowance:
    return at_end(say(RigPhrase::eye_allowance), term);
  case TermKind::bury:
    return at_end(say(RigPhrase::bury), term);
  case TermKind::spare_bury:
    return at_end(say(RigPhrase::spare_bury), term);
  case TermKind::tail_to_trim:
    return at_end(say(RigPhrase::tail_to_trim), term);
  case TermKind::contraction:
    return at_end(say(RigPhrase::contraction), term);
  case TermKind::contraction_of_spare:
    return at_end(say(RigPhrase::contraction_over_spare_bury), term);
  case TermKind::contraction_given_back:
    return at_end(say(RigPhrase::contraction_given_back), term);
  case TermKind::inserted:
    return at_end(say(RigPhrase::inserted), term);
  case TermKind::rounding:
    return say(RigPhrase::rounding_rows);
  }
  return {};
}

std::string stated_in(const Remark& how) {
  if (how.is(LengthPhrase::diameters))
    return format_number(std::get<Number>(how.arguments().front()).value) + " d";
  if (how.is(CutPhrase::share_of))
    return percent_text(std::get<Share>(how.arguments().front()).value);
  if (how.is(CutPhrase::bedding_of_cut))
    return format_number(std::get<Number>(how.arguments().front()).value) + " %";
  return {};
}

std::string_view name_of(SumKind kind) {
  switch (kind) {
  case SumKind::pin_to_pin:
    return "pin-to-pin";
  case SumKind::body:
    return "body";
  case SumKind::cut:
    return "cut";
  }
  return {};
}

std::string_view name_of(LengthRoute route) {
  switch (route) {
  case LengthRoute::reading:
    return "reading";
  case LengthRoute::stated:
    return "stated";
  case LengthRoute::path:
    return "path";
  case LengthRoute::unknown:
    break;
  }
  return "unknown";
}

std::string sum_text(const Rig& rig, const LengthSum& sum) {
  return sum.unknown ? say(rig, with_unknown(sum)) : length_text(sum.known());
}

std::string mark_name(const BenchMark& mark) {
  const std::string end(word_of(mark.end));
  switch (mark.kind) {
  case MarkKind::cut_end:
    return say(RigPhrase::cut_end, end);
  case MarkKind::mouth_of_terminal:
    return say(RigPhrase::mouth_terminal, end);
  case MarkKind::crown_of_loop:
    return say(RigPhrase::crown_of_loop, end);
  case MarkKind::trim_of_tail:
    return say(RigPhrase::trim_the_tail, end);
  case MarkKind::taper_begins:
    return say(RigPhrase::taper_begins, end);
  case MarkKind::throat_on_tail:
    return say(RigPhrase::throat_on_tail, end);
  case MarkKind::throat_on_standing_part:
    return say(RigPhrase::throat_on_standing_part, end);
  case MarkKind::tail_comes_out:
    return say(RigPhrase::tail_comes_out, end);
  }
  return {};
}

std::string_view name_of(TensionMethod method) {
  switch (method) {
  case TensionMethod::swing:
    return "swing";
  case TensionMethod::pulse:
    return "pulse";
  case TensionMethod::stretch:
    return "stretch";
  case TensionMethod::gauge:
    return "gauge";
  }
  return {};
}

std::string_view name_of(LineFate fate) {
  switch (fate) {
  case LineFate::stays:
    return say(RigPhrase::stays_as_it_is);
  case LineFate::hangs:
    return say(RigPhrase::hangs_as_it_is);
  case LineFate::remade:
    return say(RigPhrase::can_be_remade);
  case LineFate::replaced:
    return say(RigPhrase::is_to_be_replaced);
  case LineFate::new_piece:
    return say(RigPhrase::is_new);
  case LineFate::taken_off:
    return say(RigPhrase::comes_off);
  case LineFate::not_checked:
    return say(RigPhrase::not_checked);
  }
  return {};
}

std::string_view name_of(SmallChange change) {
  switch (change) {
  case SmallChange::forward:
    return say(RigPhrase::mm_forward);
  case SmallChange::to_starboard:
    return say(RigPhrase::mm_to_starboard);
  case SmallChange::up:
    return say(RigPhrase::mm_up);
  case SmallChange::further_aft:
    return say(RigPhrase::deg_further_aft);
  case SmallChange::further_up:
    return say(RigPhrase::deg_further_up);
  case SmallChange::longer:
    return say(RigPhrase::mm_longer);
  case SmallChange::set_longer:
    return say(RigPhrase::set_mm_longer);
  }
  return {};
}

std::string least_engagement_words(const Rig& rig, const Part& part) {
  const Limit limit = engagement_limit(part);
  const StatedLimit* stated = rig.limits.find(limit);
  if (stated == nullptr)
    return limit == Limit::thread_engaged ? say(RigPhrase::one_diameter)
                                          : say(RigPhrase::diameters, format_number(*row_of(limit).value));
  return stated->value ? say(RigPhrase::of_the_diameter, percent_text(*stated->value))
                       : say(RigPhrase::no_least_engagement);
}

std::string_view words(LengthPhrase phrase) {
  switch (phrase) {
  case LengthPhrase::x:
    return "X";
  case LengthPhrase::x_plus:
    return "X + {}";
  case LengthPhrase::x_less:
    return "X - {}";
  case LengthPhrase::diameters:
    return "{} d x {}";
  case LengthPhrase::times:
    return "{} x {}";
  case LengthPhrase::setting_missing:
    return "setting of {}";
  case LengthPhrase::setting_mend:
    return "state how far it is open, or its length as set";
  case LengthPhrase::length_missing:
    return "length of {}";
  case LengthPhrase::length_mend:
    return "measure it from bearing to bearing and state length";
  }
  return {};
}

std::string_view words(BenchPhrase phrase) {
  switch (phrase) {
  case BenchPhrase::throat_not_stated:
    return "throat {} on the standing part: the throat of the rope-seat of {} is not stated";
  }
  return {};
}

std::string_view words(DraftPhrase phrase) {
  using enum DraftPhrase;
  switch (phrase) {
  case is_assumed:
    return "{} is assumed";
  case measure_it:
    return "measure it, or name who gave the number";
  case measure_or_rule:
    return "make a test splice on this rope; or, as it is heat-set, state contraction-rule: "
           "equals-first-creep";
  case is_missing:
    return "{} is missing";
  case the_length_x:
    return "the length X";
  case set_on_command_line:
    return "{} is set on the command line";
  case write_it_down:
    return "write it into the file when it is to stay";
  case nothing_read_in_place:
    return "nothing was read in place";
  case read_it_in_place:
    return "measure the stay in place; who cuts from plans states cut-from: drawing with the reason";
  case readings_contradict:
    return "two readings contradict each other";
  case say_which:
    return "measure again, or state counts: yes in the one that counts";
  case measured_once:
    return "it was measured once";
  case measure_again:
    return "measure it a second time, or by a second way";
  case ways_differ:
    return "two ways to its length differ";
  case find_out_which:
    return "measure it again, and correct the one that is wrong";
  case in_hand_short:
    return "the line in hand is {} too short";
  case take_another_piece:
    return "give up spare bury or take another piece";
  }
  return {};
}

} // namespace sheerpole
