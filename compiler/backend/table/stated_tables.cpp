#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "calculate/adjust/state_lengths.hpp"
#include "calculate/length/body.hpp"
#include "units/format_length.hpp"
#include "units/si_factors.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/tables_words.hpp"

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
    words = say(TablesPhrase::too_short_by_at, format_tenths(lowered.tightest),
                degrees_words(lowered.tightest_at));
  if (lowered.slack > Length{})
    add_words(words, "; ", say(TablesPhrase::slack_from, degrees_words(lowered.slack_from)));
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
      row.insert(row.end(), {say(TablesPhrase::line), rig[stay.material].name, "1"});
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
      .title = say(TablesPhrase::points_boat_axes_from_waterline),
      .columns = {
          {"point"}, {"x forward mm", true}, {"y to starboard mm", true}, {"z up mm", true}, {"source"}}};
  for (const Point& point : checked.rig().points)
    table.rows.push_back({point.name, format_tenths(point.position.x), format_tenths(point.position.y),
                          format_tenths(point.position.z), source_words(point.provenance)});
  return table;
}

Table parts_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::parts),
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
  Table table{.title = say(TablesPhrase::stacks_from_aloft_to_deck),
              .columns = {{"stay"},
                          {"no.", true},
                          {"kind"},
                          {"item"},
                          {"times", true},
                          {"length mm", true, "", true},
                          {"from upper pin mm", true, "", true}},
              .notes = {say(TablesPhrase::fittings_boat_take_no_length)}};
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
  Table table{.title = say(TablesPhrase::states_rig_adjusters_that_move),
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
      made_off[3] = say(TablesPhrase::let_go);
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
    table.notes.push_back(say(TablesPhrase::no_state_moves_anything));
  else
    table.notes.push_back(say(TablesPhrase::needs_straight_from_its_upper));
  return table;
}

Table inspections_table(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  Table table{.title = say(TablesPhrase::inspection_log_in_order_files),
              .columns = {{"date"}, {"stay"}, {"where"}, {"condition"}, {"by"}, {"note"}}};
  for (const Inspection& inspection : rig.inspections) {
    const std::string where = joined(inspection.between, ", ", [&](PartId part) { return rig[part].name; });
    for (const StayId stay : inspection.stays)
      table.rows.push_back({inspection.date, rig[stay].name,
                            where.empty() ? say(TablesPhrase::whole_stay) : where,
                            std::string(name_of(inspection.condition)), inspection.by, inspection.note});
  }
  if (table.rows.empty())
    table.notes.push_back(say(TablesPhrase::nothing_has_been_written_down_begins));
  return table;
}

Table differences_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::values_stated_over_others_in),
              .columns = {{"by"}, {"of"}, {"what"}, {"was"}, {"is"}, {"place"}}};
  for (const Difference& difference : checked.rig().differences) {
    const SourceText& text = checked.sources()[difference.place.source];
    const DifferenceWords words = words_of(difference);
    table.rows.push_back({words.by, words.of, words.what,
                          words.was.empty() ? say(TablesPhrase::not_stated) : words.was, words.is,
                          fmt::format("{}:{}", text.name(), text.position(difference.place.begin).line)});
  }
  for (const Record& layer : checked.rig().records)
    if (layer.kind == RecordKind::layer)
      if (const std::string words =
              joined(layer.facts, ", ", [](const Particular& fact) { return fact.name + " " + fact.text; });
          !words.empty())
        table.notes.push_back(say(TablesPhrase::layer, layer.name, words));
  if (!checked.rig().boat.sister_of.empty())
    table.notes.push_back(say(TablesPhrase::sister_ship_of, checked.rig().boat.sister_of));
  if (table.rows.empty())
    table.notes.push_back(say(TablesPhrase::nothing_is_stated_over_anything));
  return table;
}

} // namespace sheerpole
