#include "calculate/tune/tune_model.hpp"

#include "calculate/facts.hpp"
#include "calculate/length/body.hpp"
#include "calculate/tune/tune_frame.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

using statics::Vector;

/// Against other readings one without a bound weighs as one of this share. A choice of the project.
constexpr double weighs_as = 0.05;

bool may_be_let_go(const Stay& stay) {
  return std::ranges::any_of(stay.duties, [](const std::string& duty) {
    return duty == "running" || duty == "removable" || duty == "temporary";
  });
}

bool is_seized_under_tension(const Stay& stay) {
  return fact_text(stay.particulars, fact_names.seized) == "under-tension";
}

/// The day of the last dated reading of a stay; empty without one. ISO 8601 days are in order.
std::string latest_reading(const DerivedStay& derived) {
  std::string latest;
  for (const TensionEstimate& estimate : derived.tensions)
    if (estimate.tension)
      latest = std::max(latest, estimate.date);
  return latest;
}

constexpr std::size_t most_tuned_stays = 96;

class Maker {
public:
  Maker(const Rig& rig, const Derived& derived, const MovedBounds& moved, bool tips_free)
      : rig_(rig), derived_(derived), inputs_(rig, moved), tips_free_(tips_free) {}

  TuneModel make() {
    std::vector<StayId> taken;
    for (const DerivedStay& stay : derived_.stays)
      if (takes_part(stay))
        taken.push_back(stay.stay);
    if (taken.size() > most_tuned_stays)
      // A rig has a third of that; what is solved grows with a high power of it.
      inputs_.lacks({TunePhrase::too_many_stays,
                     {Count{static_cast<std::int64_t>(taken.size())},
                      Count{static_cast<std::int64_t>(most_tuned_stays)}}});
    else
      add_all(taken);
    inputs_.note(TunePhrase::hardware_is_rigid);
    add_draft();
    model_.inputs = std::move(inputs_.inputs);
    model_.lacking = std::move(inputs_.lacking);
    model_.notes = std::move(inputs_.notes);
    model_.bounds.assign(inputs_.bounds.begin(), inputs_.bounds.end());
    return std::move(model_);
  }

private:
  void add_all(const std::vector<StayId>& taken) {
    TuneFrame frame(rig_, inputs_, model_);
    for (const StayId id : taken)
      for (const PathStop& stop : rig_[id].path)
        frame.add(stop.point);
    frame.make();
    for (const StayId id : taken)
      add_stay(derived_.stays[id.index()], frame);
    note_days();
    if (!inputs_.incomplete())
      add_faults();
  }

  /// Stays that were read on several days may have been turned between them.
  void note_days() {
    std::string first, last;
    for (const DerivedStay& stay : derived_.stays)
      if (const std::string day = latest_reading(stay); !day.empty()) {
        first = first.empty() ? day : std::min(first, day);
        last = std::max(last, day);
      }
    if (first != last)
      inputs_.note({TunePhrase::readings_of_several_days, {Words{first}, Words{last}}});
  }

  /// Whether the stay is set up at the dock.
  bool takes_part(const DerivedStay& derived) {
    const Stay& stay = rig_[derived.stay];
    const bool known = find_fact(stay.particulars, fact_names.taken_up) != nullptr ||
                       find_fact(stay.particulars, fact_names.dock_tension) != nullptr ||
                       !derived.tensions.empty();
    if (!known && may_be_let_go(stay)) {
      inputs_.note({TunePhrase::left_out, {derived.stay}});
      return false;
    }
    if (stay.path.size() < 2) {
      inputs_.lacks({TunePhrase::no_path, {derived.stay}});
      return false;
    }
    return true;
  }

  void add_stay(const DerivedStay& derived, const TuneFrame& frame) {
    const Stay& stay = rig_[derived.stay];
    TuneStay made;
    made.stay = derived.stay;
    if (rig_[stay.material].break_load)
      made.break_newtons = rig_[stay.material].break_load->value.newtons();
    add_adjuster(derived, made);
    read_tension(derived, made);
    const bool clamped = std::ranges::any_of(
        stay.path, [](const PathStop& stop) { return stop.passage == Passage::clamped; });
    if (clamped || find_fact(stay.particulars, fact_names.seized) != nullptr)
      inputs_.needed_word({TunePhrase::stay, {derived.stay}}, stay.particulars, fact_names.seized);
    made.seized_under_tension = clamped && is_seized_under_tension(stay);
    std::vector<statics::NodeId> path;
    for (const PathStop& stop : stay.path) {
      const auto node = frame.node_of(stop.point);
      if (!node)
        return; // what it is made fast to is lacking, and said
      if (!path.empty() && path.back() == *node) {
        inputs_.lacks({TunePhrase::places_are_one, {derived.stay}});
        return;
      }
      path.push_back(*node);
    }
    add_legs(derived, path, made);
    model_.stays.push_back(std::move(made));
  }

  void add_adjuster(const DerivedStay& derived, TuneStay& made) {
    if (derived.adjusters.empty())
      return;
    made.adjuster = derived.adjusters.size() - 1;
    const TakeUp& adjuster = derived.adjusters.back();
    made.by_turns = adjuster.travel_per_turn.has_value();
    made.step_mm = made.by_turns              ? adjuster.travel_per_turn->millimetres()
                   : rig_[adjuster.part].step ? rig_[adjuster.part].step->value.millimetres()
                                              : 1.0;
    made.to_tighten_mm = std::max(adjuster.to_tighten.millimetres(), 0.0);
    made.to_slacken_mm = std::max(adjuster.to_slacken.millimetres(), 0.0);
  }

  void read_tension(const DerivedStay& derived, TuneStay& made) {
    const Stay& stay = rig_[derived.stay];
    const Remark of{TunePhrase::stay, {derived.stay}};
    const std::string latest = latest_reading(derived);
    for (const TensionEstimate& estimate : derived.tensions) {
      if (!estimate.tension)
        continue;
      // What was read before the last turns is of another state.
      if (!estimate.date.empty() && estimate.date < latest) {
        inputs_.note({TunePhrase::earlier_reading, {derived.stay, Words{estimate.date}, Words{latest}}});
        continue;
      }
      const double bound = estimate.tolerance ? estimate.tolerance->newtons() : 0.0;
      if (!(bound > 0.0))
        inputs_.note({TunePhrase::reading_without_bound, {derived.stay}});
      const double newtons = estimate.tension->newtons();
      made.readings.push_back({inputs_.moved(newtons, estimate.influences),
                               bound > 0.0 ? bound : std::max(weighs_as * newtons, 1.0), bound > 0.0});
    }
    if (const auto dock = inputs_.if_stated(of, stay.particulars, fact_names.dock_tension))
      made.dock_newtons = *dock;
    const auto taken = fact_number(stay.particulars, fact_names.taken_up);
    if (taken) {
      double mm = *inputs_.needed(of, stay.particulars, fact_names.taken_up);
      double unit = mm_per_m;
      if (find_fact(stay.particulars, fact_names.taken_up)->value.value.dimension == dimension::turns) {
        unit = made.by_turns ? made.step_mm : 0.0;
        if (!made.by_turns)
          inputs_.lacks({TunePhrase::turns_without_screw, {derived.stay}});
      }
      made.taken_mm = unit * mm;
      if (taken->tolerance)
        made.taken_bound_mm = unit * *taken->tolerance;
    }
    made.known_by = !made.readings.empty() ? LengthKnownBy::reading
                    : taken                ? LengthKnownBy::taken_up
                    : made.dock_newtons    ? LengthKnownBy::dock_tension
                                           : LengthKnownBy::nothing;
    if (made.known_by == LengthKnownBy::reading || made.known_by == LengthKnownBy::dock_tension)
      inputs_.note(TunePhrase::rake_not_read);
    if (made.known_by == LengthKnownBy::nothing)
      inputs_.lacks({TunePhrase::no_tension_known, {derived.stay}});
    if (made.known_by == LengthKnownBy::dock_tension)
      inputs_.note({TunePhrase::by_dock_tension, {derived.stay}});
  }

  /// Lines with a length of their own and hardware of a leg, in mm and mm/N.
  struct Fixed {
    double hard_mm = 0.0, line_mm = 0.0, mm_per_newton = 0.0;
  };

  /// What stands above the line that takes the rest, and what below it.
  std::optional<std::array<Fixed, 2>> fixed_lengths(const DerivedStay& derived) {
    const Stay& stay = rig_[derived.stay];
    std::array<Fixed, 2> result;
    std::size_t side = 0;
    for (const StackItem& item : stay.stack) {
      if (item.kind == StackItem::Kind::line) {
        if (!item.line_length) {
          side = 1;
          continue;
        }
        const auto stiffness = inputs_.axial_stiffness(item.material.value_or(stay.material));
        const double mm = item.line_length->value.millimetres();
        result[side].line_mm += mm;
        if (stiffness)
          result[side].mm_per_newton += mm / *stiffness;
        continue;
      }
      if (rig_[item.part].role == Part::Role::boat_fitting)
        continue;
      const auto taken = taken_length(rig_, item);
      if (!taken) {
        inputs_.lacks({TunePhrase::length_of_part_missing, {derived.stay, item.part}});
        return std::nullopt;
      }
      result[side].hard_mm += taken->millimetres();
    }
    return result;
  }

  MaterialId line_of_rest(const Stay& stay) const {
    for (const StackItem& item : stay.stack)
      if (item.kind == StackItem::Kind::line && !item.line_length)
        return item.material.value_or(stay.material);
    return stay.material;
  }

  bool adjuster_is_above(const DerivedStay& derived) const {
    if (derived.adjusters.empty())
      return false;
    const Stay& stay = rig_[derived.stay];
    for (std::size_t i = 0; i < derived.adjusters.back().item; ++i)
      if (stay.stack[i].kind == StackItem::Kind::line && !stay.stack[i].line_length)
        return false;
    return true;
  }

  void add_legs(const DerivedStay& derived, const std::vector<statics::NodeId>& path, TuneStay& made) {
    const Stay& stay = rig_[derived.stay];
    const auto fixed = fixed_lengths(derived);
    const auto stiffness = inputs_.axial_stiffness(line_of_rest(stay));
    const auto gives =
        inputs_.if_stated({TunePhrase::stay, {derived.stay}}, stay.particulars, fact_names.gives);
    if (!fixed)
      return;
    std::vector<std::vector<statics::NodeId>> legs{{path.front()}};
    for (std::size_t i = 1; i < path.size(); ++i) {
      legs.back().push_back(path[i]);
      const bool ends_leg =
          stay.path[i].passage == Passage::clamped && !(tips_free_ && made.seized_under_tension);
      if (ends_leg && i + 1 < path.size())
        legs.push_back({path[i]});
    }
    made.screwed = adjuster_is_above(derived) ? 0 : legs.size() - 1;
    double stretch_per_newton = 0.0;
    for (std::size_t i = 0; i < legs.size(); ++i) {
      statics::Stay line{legs[i], 0.0, 0.0};
      const double drawn = statics::drawn_length_mm(model_.structure, line);
      double rest = drawn, compliance = 0.0;
      const auto take = [&](const Fixed& part) {
        rest -= part.hard_mm + part.line_mm;
        compliance += part.mm_per_newton;
      };
      if (i == 0)
        take((*fixed)[0]);
      if (i + 1 == legs.size()) {
        take((*fixed)[1]);
        compliance += gives.value_or(0.0) * mm_per_m;
      }
      if (!(rest > 0.0)) {
        inputs_.lacks({TunePhrase::no_line_left, {derived.stay}});
        return;
      }
      if (stiffness) {
        compliance += rest / *stiffness;
        line.axial_stiffness_newtons = drawn / compliance;
        stretch_per_newton += compliance;
      }
      line.unstressed_mm = drawn;
      made.legs.push_back(statics::StayId{static_cast<std::uint32_t>(model_.structure.stays.size())});
      model_.structure.stays.push_back(std::move(line));
    }
    double taken = made.taken_mm;
    if (made.known_by == LengthKnownBy::reading &&
        find_fact(stay.particulars, fact_names.taken_up) == nullptr)
      taken = made.readings.front().newtons * stretch_per_newton;
    else if (made.known_by == LengthKnownBy::dock_tension)
      taken = *made.dock_newtons * stretch_per_newton;
    model_.structure.stays[made.legs[made.screwed].index()].unstressed_mm -= taken;
  }

  void add_faults() {
    for (const statics::Fault& fault : statics::faults_of(model_.structure))
      switch (fault.kind) {
      case statics::FaultKind::stay_stiffness:
      case statics::FaultKind::stay_length:
        for (const TuneStay& stay : model_.stays)
          for (const statics::StayId leg : stay.legs)
            if (leg.index() == fault.index)
              inputs_.lacks({fault.kind == statics::FaultKind::stay_length
                                 ? TunePhrase::length_out_of_range
                                 : TunePhrase::stiffness_out_of_range,
                             {Words{rig_[stay.stay].name}}});
        break;
      case statics::FaultKind::spar_axial_stiffness:
      case statics::FaultKind::spar_bending:
      case statics::FaultKind::spar_torsion:
        inputs_.lacks({TunePhrase::stiffness_out_of_range, {Words{name_of_spar(fault.index)}}});
        break;
      case statics::FaultKind::not_a_number:
        inputs_.lacks(TunePhrase::place_out_of_range);
        break;
      default:
        inputs_.lacks(TunePhrase::cannot_be_worked);
        break;
      }
  }

  /// The spar, or the spreader, that an element of the structure is of.
  std::string name_of_spar(std::size_t element) const {
    std::string name;
    for (const TuneSpar& spar : model_.spars)
      if (spar.element.index() <= element)
        name = rig_.spars[spar.spar].name;
    const statics::NodeId last = model_.structure.spars[element].nodes.back();
    for (const Spreader& spreader : rig_.spreaders)
      if (model_.structure.nodes[last.index()].place_mm == millimetres_of(rig_[spreader.tip].position))
        name = spreader.name;
    return name;
  }

  void add_draft() {
    for (const TuneInput& input : inputs_.inputs)
      if (!input.provenance.assumptions.empty())
        model_.draft.push_back(
            {TunePhrase::rests_on_assumed, {Words{input.property}, Remarks{{input.of}}}});
    for (const TuneStay& stay : model_.stays)
      if (stay.known_by == LengthKnownBy::dock_tension)
        model_.draft.push_back({TunePhrase::by_dock_tension, {stay.stay}});
  }

  const Rig& rig_;
  const Derived& derived_;
  TuneInputs inputs_;
  TuneModel model_;
  bool tips_free_;
};

} // namespace

bool TuneModel::complete() const {
  return lacking.empty() &&
         std::ranges::none_of(inputs, [](const TuneInput& input) { return input.value.empty(); });
}

TuneModel tune_model(const Rig& rig, const Derived& derived, const MovedBounds& moved) {
  return Maker(rig, derived, moved, false).make();
}

TuneModel tune_model_before_seizing(const Rig& rig, const Derived& derived, const MovedBounds& moved) {
  return Maker(rig, derived, moved, true).make();
}

} // namespace sheerpole
