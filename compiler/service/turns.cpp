#include "service/turns.hpp"

#include "calculate/facts.hpp"
#include "calculate/tune/standing_at_dock.hpp"
#include "model/fact_name.hpp"
#include "units/format_length.hpp"
#include "units/unit.hpp"
#include "wording/service_words.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace sheerpole::service {

namespace {

/// Thread that is used up to the last digit is not overdrawn.
constexpr double rounding_turns = 1e-6;

/// "26.54", without zeros that say nothing.
std::string shortest_fixed(double value) {
  std::string text = format_fixed(value, 4);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.ends_with('.'))
    text.pop_back();
  return text;
}

/// What is stated of `taken-up`, as it stands in the text.
struct StatedTakenUp {
  const Expression* expression = nullptr;
  Span value;
};

class SettingEdits {
public:
  SettingEdits(const OpenBoat& boat, const TunedRig& tuned, TurnTrial& trial)
      : boat_(boat), rig_(*boat.compiled.rig), tuned_(tuned), trial_(trial) {}

  void write() {
    for (const TurnedAdjuster& adjuster : trial_.adjusters)
      if (adjuster.turns != 0.0)
        write(adjuster);
    for (auto& [source, blocks] : sides_) {
      const SourceText& file = boat_.text(source);
      const auto end = static_cast<std::uint32_t>(file.bytes().size());
      trial_.edits.push_back(
          edit_of(file, {source, end, end}, (file.bytes().ends_with('\n') ? "" : "\n") + blocks));
    }
  }

private:
  const TuneStay& stay_of(const TurnedAdjuster& adjuster) const {
    return tuned_.model.stays[adjuster.stay];
  }
  const Particular* fact_of(const TurnedAdjuster& adjuster) const {
    return find_fact(rig_[stay_of(adjuster).stay].particulars, fact_names.taken_up);
  }

  void write(const TurnedAdjuster& adjuster) {
    const TuneStay& stay = stay_of(adjuster);
    const Particular* fact = fact_of(adjuster);
    if (stay.known_by == LengthKnownBy::reading) {
      trial_.not_written.push_back({adjuster.stay, tension_is_to_be_read_again()});
      return;
    }
    const auto stated = fact != nullptr ? find_stated(*fact) : std::nullopt;
    if (!stated) {
      trial_.not_written.push_back({adjuster.stay, taken_up_is_not_stated()});
      return;
    }
    const std::string now = with_turns(*stated->expression, stay, adjuster.turns,
                                       fact->value.value.dimension == dimension::turns);
    if (is_alike_wherever_it_counts(adjuster, *fact)) {
      // Both sides have one statement, which is written once.
      if (written_.insert(stated->value).second)
        trial_.edits.push_back(edit_of(boat_.text(stated->value.source), stated->expression->span, now));
      return;
    }
    const SourceText& file = boat_.text(stated->value.source);
    const std::string_view behind =
        file.text({stated->value.source, stated->expression->span.end, stated->value.end});
    sides_[stated->value.source] += "\nstay " + rig_[stay.stay].name + " {\n  " +
                                    std::string(fact_names.taken_up.text) + ": " + now +
                                    std::string(behind) + "\n}\n";
  }

  /// Whether each stay of which this one statement is has the same turns.
  bool is_alike_wherever_it_counts(const TurnedAdjuster& adjuster, const Particular& fact) const {
    return std::ranges::all_of(trial_.adjusters, [&](const TurnedAdjuster& other) {
      const Particular* its = fact_of(other);
      return its == nullptr || its->value.provenance.place != fact.value.provenance.place ||
             other.turns == adjuster.turns;
    });
  }

  std::optional<StatedTakenUp> find_stated(const Particular& fact) const {
    if (!fact.value.provenance.place)
      return std::nullopt;
    const Span place = *fact.value.provenance.place;
    const SyntaxTree* tree = boat_.tree(place.source);
    if (tree == nullptr)
      return std::nullopt;
    for (const Statement& statement : tree->statements)
      if (const auto* declaration = std::get_if<Declaration>(&statement))
        if (const Value* value = find_value(*declaration, place))
          return StatedTakenUp{&value->expression(), value->span};
    return std::nullopt;
  }
  static const Value* find_value(const Declaration& declaration, Span place) {
    for (const Entry& entry : declaration.block.entries) {
      if (const auto* inner = std::get_if<Declaration>(&entry))
        if (const Value* found = find_value(*inner, place))
          return found;
      if (const auto* property = std::get_if<Property>(&entry);
          property != nullptr && property->name.text == fact_names.taken_up.text &&
          property->value.span.source == place.source && property->value.span.begin <= place.begin &&
          place.end <= property->value.span.end && !property->value.stops.empty())
        return &property->value;
    }
    return nullptr;
  }

  /// What is written with so many turns more, in the unit that stands there; of what is worked out in the
  /// text a term is added.
  std::string with_turns(const Expression& expression, const TuneStay& stay, double turns,
                         bool in_turns) const {
    const std::string_view text = boat_.text(expression.span.source).text(expression.span);
    const double more_mm = turns * stay.step_mm;
    const Unit* unit =
        expression.kind == ExpressionKind::number ? find_unit(expression.unit.text) : nullptr;
    if (unit != nullptr) {
      const double more = in_turns ? turns : more_mm / mm_per_m;
      const auto stated = fact_number(rig_[stay.stay].particulars, fact_names.taken_up);
      return shortest_fixed((stated->value + more) / unit->factor) + " " + expression.unit.text;
    }
    const double more = in_turns ? turns : more_mm;
    return std::string(text) + (more < 0.0 ? " - " : " + ") + shortest_fixed(std::abs(more)) +
           (in_turns ? " turns" : " mm");
  }

  const OpenBoat& boat_;
  const Rig& rig_;
  const TunedRig& tuned_;
  TurnTrial& trial_;
  std::set<Span> written_;
  std::map<SourceId, std::string> sides_; ///< blocks of one side each, to stand behind all else
};

} // namespace

std::map<StayId, std::string> pull_words(const OpenBoat& boat) {
  std::map<StayId, std::string> words;
  if (!boat.compiled.derived)
    return words;
  if (const auto standing = standing_at_dock(*boat.compiled.rig, *boat.compiled.derived))
    for (const StandingAtDock::Stay& one : standing->stays)
      words[one.stay] = one.newtons > 0.0 ? pulls_at_dock(format_fixed(one.newtons / 1000.0, 2) + " kN")
                                          : slack_at_dock(format_fixed(one.slack_mm, 1) + " mm");
  return words;
}

TurnTrial try_turns(const OpenBoat& boat, const TunedRig& tuned, const TurnsByStay& turns) {
  const Rig& rig = *boat.compiled.rig;
  TurnTrial trial;
  std::vector<double> lengths = tuned.state.unstressed_mm;
  std::set<std::string> known;
  for (std::size_t i = 0; i < tuned.model.stays.size(); ++i) {
    const TuneStay& stay = tuned.model.stays[i];
    if (!stay.adjuster)
      continue;
    TurnedAdjuster adjuster{.stay = i,
                            .least_turns = -stay.to_slacken_mm / stay.step_mm,
                            .most_turns = stay.to_tighten_mm / stay.step_mm};
    if (const auto asked = turns.find(rig[stay.stay].name); asked != turns.end())
      adjuster.turns = asked->second;
    known.insert(rig[stay.stay].name);
    adjuster.beyond_thread = adjuster.turns > adjuster.most_turns + rounding_turns ||
                             adjuster.turns < adjuster.least_turns - rounding_turns;
    lengths[stay.legs[stay.screwed].index()] -= adjuster.turns * stay.step_mm;
    trial.adjusters.push_back(adjuster);
  }
  for (const auto& [name, asked] : turns)
    if (!known.contains(name))
      trial.unknown.push_back(name);
  trial.now = tuned.values(tuned.state);
  trial.state = tuned.solver->settle(lengths, {}, &tuned.state.configuration);
  if (Remark trouble = trouble_of(rig, tuned.model, trial.state); !trouble.empty())
    trial.trouble.push_back(std::move(trouble));
  else
    trial.with = tuned.values(trial.state);
  for (std::size_t q = 0; q < trial.with.size(); ++q)
    if (tuned.quantities[q].kind == TuneQuantity::Kind::tension && trial.now[q] > 0.0 &&
        !(trial.with[q] > 0.0))
      trial.went_slack.push_back(tuned.quantities[q].number);
  SettingEdits(boat, tuned, trial).write();
  return trial;
}

} // namespace sheerpole::service
