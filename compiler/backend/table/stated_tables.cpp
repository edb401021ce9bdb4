#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "calculate/adjust/state_lengths.hpp"
#include "calculate/length/body.hpp"
#include "units/format_length.hpp"
#include "units/si_factors.hpp"
#include "wording/model_words.hpp"

#include <fmt/format.h>

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

namespace {

/// A distance from the upper pin as far as it is known.
struct Distance {
  Tenths known;
  bool with_x = false;
  std::string x = {};
  bool lost = false; ///< behind something without a length

  std::string text() const { return lost ? "?" : format_total(with_x, known, x); }
};

std::string degrees_words(double radians) {
  return format_fixed(radians / degree, 0) + " deg";
}

/// "too short by 14.2 at 12 deg; slack from 31 deg".
std::string lowering_words(const LoweredStay& lowered) {
  std::string words;
  if (lowered.tightest > Length{})
    words = "too short by " + format_tenths(lowered.tightest) + " at " + degrees_words(lowered.tightest_at);
  if (lowered.slack > Length{})
    add_words(words, "; ", "slack from " + degrees_words(lowered.slack_from));
  return words;
}

} // namespace

std::vector<std::vector<std::string>> stack_rows(const CheckedRig& checked, const DerivedStay& derived,
                                                 std::string x) {
  const Rig& rig = checked.rig();
  const Stay& stay = rig[derived.stay];
  std::vector<std::vector<std::string>> rows;
  Distance distance;
  distance.x = std::move(x);
  std::size_t line = 0;
  int number = 0;
  for (const StackItem& item : stay.stack) {
    std::vector<std::string> row{std::to_string(++number)};
    if (item.kind == StackItem::Kind::line) {
      row.insert(row.end(), {"line", rig[stay.material].name, "1"});
      if (line >= derived.pieces.size()) {
        distance.lost = true;
        row.push_back("?");
      } else {
        const PieceSum sum = piece_sum(rig, derived, derived.pieces[line++]);
        distance.known += sum.body();
        distance.with_x = distance.with_x || sum.unknown;
        distance.lost = distance.lost || !sum.body_complete;
        row.push_back(sum.body_complete ? format_total(sum.unknown, sum.body(), distance.x) : "?");
      }
    } else {
      const Part& part = rig[item.part];
      row.insert(row.end(), {std::string(name_of(part.kind)), part.name, std::to_string(item.count)});
      if (part.role == Part::Role::boat_fitting) {
        row.push_back("");
      } else if (const std::optional<Length> taken = taken_length(rig, item)) {
        distance.known += Tenths::of(*taken);
        row.push_back(format_tenths(*taken));
      } else {
        distance.lost = true;
        row.push_back("?");
      }
    }
    row.push_back(distance.text());
    rows.push_back(std::move(row));
  }
  return rows;
}

Table points_table(const CheckedRig& checked) {
  Table table{
      .title = "Points, boat axes from the waterline under the mast",
      .columns = {
          {"point"}, {"x forward mm", true}, {"y to starboard mm", true}, {"z up mm", true}, {"source"}}};
  for (const Point& point : checked.rig().points)
    table.rows.push_back({point.name, format_tenths(point.position.x), format_tenths(point.position.y),
                          format_tenths(point.position.z), source_words(point.provenance)});
  return table;
}

Table parts_table(const CheckedRig& checked) {
  Table table{.title = "Parts",
              .columns = {{"kind"},
                          {"part"},
                          {"length or range mm", true},
                          {"upper end"},
                          {"lower end"},
                          {"source of the length"}}};
  for (const Part& part : checked.rig().parts)
    table.rows.push_back({std::string(name_of(part.kind)), part.name, length_or_range(part),
                          end_words(part.upper), end_words(part.lower), length_source(part)});
  return table;
}

Table stack_table(const CheckedRig& checked) {
  Table table{.title = "Stacks, from aloft to deck",
              .columns = {{"stay"},
                          {"no.", true},
                          {"kind"},
                          {"item"},
                          {"times", true},
                          {"length mm", true, "", true},
                          {"from upper pin mm", true, "", true}},
              .notes = {"Fittings of the boat take no length: pin-to-pin begins and ends at their pins."}};
  for (const DerivedStay& derived : checked.derived().stays) {
    const Stay& stay = checked.rig()[derived.stay];
    for (std::vector<std::string>& row : stack_rows(checked, derived, x_on_sheet(checked.rig(), stay))) {
      row.insert(row.begin(), stay.name);
      table.rows.push_back(std::move(row));
    }
  }
  return table;
}

Table states_table(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  Table table{
      .title =
          "States of the rig: adjusters that move, stays that are made off elsewhere or lowered, in mm",
      .columns = {{"state"},
                  {"stay"},
                  {"adjuster"},
                  {"set", true, "mm"},
                  {"longer by", true, "mm"},
                  {"to tighten", true, "mm"},
                  {"to slacken", true, "mm"},
                  {"stowed at"},
                  {"needs", true, "mm"},
                  {"slack", true, "mm"},
                  {"on the way"}},
      .notes = {}};
  const std::vector<StowedStay> stowed = stowed_stays(rig, checked.derived());
  for (const DerivedPosition& derived : checked.derived().positions) {
    const State& state = rig.states[derived.state];
    const StatePosition& position = state.positions[derived.position];
    std::vector<std::string> made_off(4);
    if (position.stowed_at)
      made_off[0] = rig[*position.stowed_at].name;
    if (position.stowed_at && !state.lowers.empty())
      made_off[3] = "let go";
    for (const StowedStay& one : stowed)
      if (one.state == derived.state && one.position == derived.position)
        made_off = {made_off[0], format_tenths(one.needs),
                    one.left() ? format_signed(*one.left()) : x_on_sheet(rig, rig[one.stay]), ""};
    const auto add = [&](std::vector<std::string> row) {
      row.insert(row.end(), made_off.begin(), made_off.end());
      table.rows.push_back(std::move(row));
    };
    if (derived.adjusters.empty())
      add({state.name, rig[derived.stay].name, "", "", "", "", ""});
    for (const TakeUp& adjuster : derived.adjusters)
      add({state.name, rig[derived.stay].name, rig[adjuster.part].name, format_tenths(adjuster.set.value),
           format_tenths(derived.change), format_tenths(adjuster.to_tighten),
           format_tenths(adjuster.to_slacken)});
  }
  for (const LoweredStay& lowered : lowered_stays(rig, checked.derived()))
    table.rows.push_back({rig.states[lowered.state].name, rig[lowered.stay].name, "", "", "", "", "", "",
                          "", format_signed(lowered.slack), lowering_words(lowered)});
  if (table.rows.empty())
    table.notes.push_back("No state moves anything.");
  else
    table.notes.push_back(
        "Needs: straight from its upper pin to where it is made off. Slack: what hangs loose, with a "
        "lowered spar at the end of its way; a minus says that it is too short.");
  return table;
}

Table inspections_table(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  Table table{.title = "Inspection log, in the order of the files",
              .columns = {{"date"}, {"stay"}, {"where"}, {"condition"}, {"by"}, {"note"}}};
  for (const Inspection& inspection : rig.inspections) {
    const std::string where = joined(inspection.between, ", ", [&](PartId part) { return rig[part].name; });
    for (const StayId stay : inspection.stays)
      table.rows.push_back({inspection.date, rig[stay].name, where.empty() ? "whole stay" : where,
                            std::string(name_of(inspection.condition)), inspection.by, inspection.note});
  }
  if (table.rows.empty())
    table.notes.push_back("Nothing has been written down.");
  return table;
}

Table differences_table(const CheckedRig& checked) {
  Table table{.title = "Values stated over others, in the order in which they take effect",
              .columns = {{"by"}, {"of"}, {"what"}, {"was"}, {"is"}, {"place"}}};
  for (const Difference& difference : checked.rig().differences) {
    const SourceText& text = checked.sources()[difference.place.source];
    const DifferenceWords words = words_of(difference);
    table.rows.push_back({words.by, words.of, words.what, words.was.empty() ? "not stated" : words.was,
                          words.is,
                          fmt::format("{}:{}", text.name(), text.position(difference.place.begin).line)});
  }
  for (const Record& layer : checked.rig().records)
    if (layer.kind == RecordKind::layer)
      if (const std::string words =
              joined(layer.facts, ", ", [](const Particular& fact) { return fact.name + " " + fact.text; });
          !words.empty())
        table.notes.push_back("layer " + layer.name + ": " + words);
  if (!checked.rig().boat.sister_of.empty())
    table.notes.push_back("sister ship of " + checked.rig().boat.sister_of);
  if (table.rows.empty())
    table.notes.push_back("Nothing is stated over anything else.");
  return table;
}

} // namespace sheerpole
