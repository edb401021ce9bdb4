#include "calculate/tune/turn_planning.hpp"

#include "calculate/facts.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

namespace sheerpole {

namespace {

/// A tension is wished for within this share, and a place within so many mm, when no bound is stated.
constexpr double tension_within = 0.02;
constexpr double place_within_mm = 1.0;
/// Sides whose tensions differ by less than this share are alike.
constexpr double alike_within = 0.05;
/// The body of a turnbuckle is locked at half turns as well. Common practice, no source.
constexpr double half_turn = 0.5;

class Planning {
public:
  Planning(const Rig& rig, const TunedRig& tuned) : rig_(rig), tuned_(tuned) {
    result_.now = tuned.values(tuned.state);
  }

  TurnPlanning plan() {
    for (const Record& record : rig_.records) {
      if (record.kind == RecordKind::tension_wish)
        add_tension(record);
      if (record.kind == RecordKind::mast_wish)
        add_mast(record);
    }
    if (result_.wishes.empty())
      return std::move(result_);
    choose_screws();
    std::vector<statics::Wish> wishes;
    for (const TuneWish& wish : result_.wishes) {
      const double within = std::max(wish.within, 1e-6);
      wishes.push_back(
          {tuned_.quantities[wish.quantity].what, wish.value - within, wish.value + within, within});
    }
    std::vector<statics::Screw> screws;
    for (const TurnedStays& turned : result_.screws)
      screws.push_back(screw_of(turned));
    result_.plan = statics::plan_turns(*tuned_.solver, tuned_.state, screws, wishes);
    if (result_.plan.outcome == statics::PlanOutcome::no_state)
      return std::move(result_);
    result_.after = tuned_.values(result_.plan.state);
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t q = 0; q < result_.now.size(); ++q)
      if (tuned_.quantities[q].kind == TuneQuantity::Kind::tension && result_.now[q] > 0.0 &&
          result_.after[q] > 0.0)
        least = std::min({least, result_.now[q], result_.after[q]});
    result_.least_newtons = std::isfinite(least) ? 0.5 * least : 0.0;
    result_.steps =
        statics::order_turns(*tuned_.solver, tuned_.state, screws, result_.plan, result_.least_newtons);
    return std::move(result_);
  }

private:
  using Kind = TuneQuantity::Kind;

  std::optional<std::size_t> quantity(Kind kind, std::size_t number, std::size_t place = 0) const {
    for (std::size_t q = 0; q < tuned_.quantities.size(); ++q)
      if (tuned_.quantities[q].kind == kind && tuned_.quantities[q].number == number &&
          tuned_.quantities[q].place == place)
        return q;
    return std::nullopt;
  }

  /// The later of two wishes for one quantity counts, as one on the command line does over the file's;
  /// a plan between both would be neither.
  void add_wish(const TuneWish& wish, FactName name) {
    const auto same = std::ranges::find(result_.wishes, wish.quantity, &TuneWish::quantity);
    if (same == result_.wishes.end()) {
      result_.wishes.push_back(wish);
      return;
    }
    *same = wish;
    if (wished_twice_.emplace(wish.record, name.text).second) // both sides are told as one
      result_.not_understood.push_back(
          {TunePhrase::wished_twice, {Words{wish.record->of}, Words{std::string(name.text)}}});
  }

  void add_tension(const Record& record) {
    const auto wished = fact_number(record.facts, fact_names.tension);
    for (const StayId id : record.stays) {
      const auto stay = std::ranges::find(tuned_.model.stays, id, &TuneStay::stay);
      if (stay == tuned_.model.stays.end() || !wished) {
        result_.not_understood.push_back({TunePhrase::wish_of_no_stay, {id}});
        continue;
      }
      const bool share =
          find_fact(record.facts, fact_names.tension)->value.value.dimension == dimension::number;
      if (share && !stay->break_newtons) {
        result_.not_understood.push_back({TunePhrase::wish_without_break_load, {id}});
        continue;
      }
      const double unit = share ? *stay->break_newtons : 1.0;
      const auto number = static_cast<std::size_t>(stay - tuned_.model.stays.begin());
      const TuneWish wish{&record, *quantity(Kind::tension, number), unit * wished->value,
                          wished->tolerance ? unit * *wished->tolerance
                                            : tension_within * unit * wished->value};
      add_wish(wish, fact_names.tension);
      if (record.stays.size() < 2 && rig_[id].side != Side::centre)
        one_sided_ = true;
    }
  }

  void add_place(const Record& record, FactName name, std::optional<std::size_t> at, bool from_now) {
    const auto wished = fact_length(record.facts, name);
    if (!wished)
      return;
    if (!at) {
      result_.not_understood.push_back(
          {TunePhrase::wish_of_no_place, {Words{record.of}, Words{std::string(name.text)}}});
      return;
    }
    const TuneWish wish{&record, *at, wished->value.millimetres() + (from_now ? result_.now[*at] : 0.0),
                        wished->tolerance ? wished->tolerance->millimetres() : place_within_mm};
    add_wish(wish, name);
  }

  void add_mast(const Record& record) {
    std::optional<std::size_t> mast;
    for (std::size_t i = 0; i < tuned_.model.spars.size(); ++i)
      if (rig_.spars[tuned_.model.spars[i].spar].name == record.of)
        mast = i;
    if (!mast) {
      result_.not_understood.push_back({TunePhrase::wish_of_no_mast, {Words{record.of}}});
      return;
    }
    add_place(record, fact_names.head_aft, quantity(Kind::head_aft, *mast), true);
    add_place(record, fact_names.head_to_starboard, quantity(Kind::head_starboard, *mast), true);
    one_sided_ |= find_fact(record.facts, fact_names.head_to_starboard) != nullptr;
    add_place(record, fact_names.bend, quantity(Kind::bend_forward, *mast, place_of_bend(record, *mast)),
              false);
  }

  /// Which spreader is meant: beyond the last when none is.
  std::size_t place_of_bend(const Record& record, std::size_t mast) const {
    const TuneSpar& spar = tuned_.model.spars[mast];
    const Particular* at = find_fact(record.facts, fact_names.at);
    if (at == nullptr || at->names.empty())
      return 0;
    for (const auto& [point, node] : spar.fittings) {
      if (rig_[point].name != at->names.front() && rig_[point].base != at->names.front())
        continue;
      for (std::size_t k = 0; k < spar.spreaders.size(); ++k)
        if (spar.spreaders[k].node == node)
          return k;
    }
    return spar.spreaders.size();
  }

  bool sides_are_alike(const TurnedStays& pair) const {
    const double one = result_.now[pair.stays[0]], other = result_.now[pair.stays[1]];
    return std::abs(one - other) <= alike_within * std::max(one, other);
  }

  void choose_screws() {
    const std::vector<TurnedStays> all = turned_stays(rig_, tuned_.model);
    std::set<std::size_t> paired;
    const bool by_pairs = !one_sided_ && std::ranges::all_of(all, [&](const TurnedStays& turned) {
      return turned.stays.size() < 2 || sides_are_alike(turned);
    });
    for (const TurnedStays& turned : all) {
      if (turned.stays.size() > 1 ? !by_pairs : paired.contains(turned.stays.front()))
        continue;
      result_.screws.push_back(turned);
      if (turned.stays.size() > 1)
        paired.insert(turned.stays.begin(), turned.stays.end());
    }
  }

  statics::Screw screw_of(const TurnedStays& turned) const {
    statics::Screw screw;
    screw.least_turns = -std::numeric_limits<double>::max();
    screw.most_turns = std::numeric_limits<double>::max();
    for (const std::size_t i : turned.stays) {
      const TuneStay& stay = tuned_.model.stays[i];
      screw.pulls.push_back({stay.legs[stay.screwed], stay.step_mm});
      screw.least_turns = std::max(screw.least_turns, -stay.to_slacken_mm / stay.step_mm);
      screw.most_turns = std::min(screw.most_turns, stay.to_tighten_mm / stay.step_mm);
      screw.step_turns = stay.by_turns ? half_turn : 1.0;
    }
    return screw;
  }

  const Rig& rig_;
  const TunedRig& tuned_;
  TurnPlanning result_;
  bool one_sided_ = false;
  std::set<std::pair<const Record*, std::string_view>> wished_twice_; ///< and what of it
};

} // namespace

TurnPlanning turn_planning(const Rig& rig, const TunedRig& tuned) {
  return Planning(rig, tuned).plan();
}

} // namespace sheerpole
