#include "backend/paper_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "units/format_length.hpp"

#include <fmt/format.h>

#include <utility>

namespace sheerpole {

namespace {

class SourceRows {
public:
  SourceRows(const CheckedRig& checked, Table& table) : checked_(checked), table_(table) {}

  void add(const std::string& what, const std::string& value, const Provenance& provenance) {
    table_.rows.push_back({what, value, provenance.written, std::string(name_of(provenance.source_class)),
                           provenance.note, place(provenance)});
  }
  void add(const std::string& of, const std::vector<Particular>& particulars) {
    for (const Particular& one : particulars)
      add(one.name + " of " + of, one.text, one.value.provenance);
  }
  void add(const std::string& what, const Sourced<Length>& length) {
    add(what, format_tenths(length.value) + " mm", length.provenance);
  }
  void add(const std::string& what, const std::optional<Sourced<Length>>& length) {
    if (length)
      add(what, *length);
  }
  void add(const std::string& what, const Sourced<RopeMeasure>& measure) {
    add(what,
        measure.value.in_diameters ? format_number(measure.value.amount) + " d"
                                   : format_tenths(Length::metres(measure.value.amount)) + " mm",
        measure.provenance);
  }
  void add(const std::string& what, const std::optional<Sourced<RopeMeasure>>& measure) {
    if (measure)
      add(what, *measure);
  }
  void add_share(const std::string& what, const std::optional<Sourced<double>>& share) {
    if (share)
      add(what, format_fixed(share->value * 100.0, 1) + " %", share->provenance);
  }
  void add_end(const std::string& part, std::string_view which, const End& end) {
    for (const EndDimension& dimension : end.dimensions) {
      const std::string what = fmt::format("{} of {} end of {}", dimension.name, which, part);
      if (dimension.text.empty())
        add(what, dimension.length);
      else
        add(what, dimension.text, dimension.length.provenance);
    }
  }

private:
  std::string place(const Provenance& provenance) const {
    if (!provenance.place)
      return {};
    const SourceText& text = checked_.sources()[provenance.place->source];
    return fmt::format("{}:{}", text.name(), text.position(provenance.place->begin).line);
  }

  const CheckedRig& checked_;
  Table& table_;
};

void add_boat(const Rig& rig, SourceRows& rows) {
  for (const Particular& particular : rig.boat.particulars)
    rows.add(particular.name + " of the boat", particular.text, particular.value.provenance);
  rows.add("pair tolerance of the boat", rig.boat.pair_tolerance);
  for (const Spar& spar : rig.spars)
    rows.add(spar.name, spar.particulars);
  for (const Spreader& spreader : rig.spreaders)
    rows.add(spreader.name, spreader.particulars);
  for (const Point& point : rig.points)
    rows.add("point " + point.name,
             fmt::format("({}, {}, {}) mm", format_tenths(point.position.x),
                         format_tenths(point.position.y), format_tenths(point.position.z)),
             point.provenance);
}

void add_lines(const Rig& rig, SourceRows& rows) {
  for (const LineMaterial& line : rig.materials) {
    rows.add("diameter of " + line.name, line.diameter);
    if (line.break_load)
      rows.add("break load of " + line.name, format_fixed(line.break_load->value.kilonewtons(), 2) + " kN",
               line.break_load->provenance);
    rows.add(line.name, line.particulars);
  }
  for (const Splice& splice : rig.splices) {
    rows.add("bury of " + splice.name, splice.bury);
    rows.add("eye allowance of " + splice.name, splice.eye_allowance);
    rows.add("tail to trim of " + splice.name, splice.tail_to_trim);
    rows.add_share("contraction of " + splice.name, splice.contraction);
    rows.add_share("contraction given back of " + splice.name, splice.recovered);
    rows.add(splice.name, splice.particulars);
  }
}

void add_part(const Part& part, SourceRows& rows) {
  rows.add("length of " + part.name, part.length);
  rows.add("shortest of " + part.name, part.shortest);
  rows.add("longest of " + part.name, part.longest);
  if (part.screw)
    rows.add("thread of " + part.name, part.screw->thread.designation, part.screw->provenance);
  rows.add("thread engaged at longest of " + part.name, part.engaged_at_longest);
  rows.add("wrap of " + part.name, part.wrap);
  rows.add_end(part.name, "upper", part.upper);
  rows.add_end(part.name, "lower", part.lower);
  rows.add("step of " + part.name, part.step);
  rows.add(part.name, part.particulars);
}

void add_item(const Rig& rig, const StackItem& item, const std::string& in, SourceRows& rows) {
  const std::string what =
      fmt::format("{} in {}", item.kind == StackItem::Kind::line ? "line" : rig[item.part].name, in);
  if (item.open)
    rows.add_share("opening of " + what, item.open);
  else
    rows.add("setting of " + what, item.set_length);
  rows.add("spare bury at " + what, item.spare_bury);
  rows.add("length of " + what, item.line_length);
}

void add_stay(const Rig& rig, const Stay& stay, SourceRows& rows) {
  rows.add("pin-to-pin of " + stay.name, stay.stated_pin_to_pin);
  rows.add(stay.name, stay.particulars);
  for (const Reading& reading : stay.readings) {
    for (std::size_t i = 0; i < reading.runs.size(); ++i)
      rows.add(fmt::format("reading of {}, run {}", stay.name, i + 1), reading.runs[i]);
    rows.add(fmt::format("reading of {}, offset", stay.name), reading.offset);
    rows.add(fmt::format("reading of {}, hoist offset", stay.name), reading.hoist_offset);
    rows.add("reading of " + stay.name, reading.particulars);
  }
  for (const StackItem& item : stay.stack)
    add_item(rig, item, stay.name, rows);
}

/// What is kept as written, and what the boat or her owner is held to.
void add_records(const Rig& rig, SourceRows& rows) {
  for (const State& state : rig.states)
    for (const StatePosition& position : state.positions)
      for (const StackItem& item : position.as_set)
        add_item(rig, item, rig[position.stay].name + " as " + state.name, rows);
  for (const Record& record : rig.records)
    rows.add(record.kind + led_by(" ", record.name), record.facts);
  for (const StatedLimit& limit : rig.limits.stated())
    rows.add("limit " + std::string(row_of(limit.limit).name), rig.limits.text(limit.limit),
             limit.provenance);
  for (const Expectation& expected : rig.expectations)
    for (const StayId stay : expected.stays)
      rows.add("expected " + expected.quantity + " of " + rig[stay].name, expected.value);
  for (const UserRule& rule : rig.rules)
    for (const auto& [name, bound] :
         {std::pair("at-least", &rule.at_least), std::pair("at-most", &rule.at_most)})
      if (*bound)
        rows.add(fmt::format("{} of rule {}", name, rule.name), (*bound)->provenance.written,
                 (*bound)->provenance);
}

} // namespace

Table sources_table(const CheckedRig& checked) {
  Table table{.title = "Every number of the rig files and where it is from",
              .columns = {{"number"}, {"value", true}, {"as written"}, {"source"}, {"note"}, {"place"}}};
  SourceRows rows(checked, table);
  const Rig& rig = checked.rig();
  add_boat(rig, rows);
  add_lines(rig, rows);
  for (const Part& part : rig.parts)
    add_part(part, rows);
  for (const Stay& stay : rig.stays)
    add_stay(rig, stay, rows);
  add_records(rig, rows);
  return table;
}

} // namespace sheerpole
