#include "backend/paper_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "model/remark.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/tables_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <concepts>
#include <type_traits>

namespace sheerpole {

namespace source_rows {

/// What is said before the name of a thing, where the name of its member does not say it.
struct Lead {
  std::string_view member;
  TablesPhrase words; ///< with the thing it is of
};
constexpr std::array leads{Lead{"engaged_at_longest", TablesPhrase::thread_engaged_at_longest_of},
                           Lead{"recovered", TablesPhrase::contraction_given_back_of},
                           Lead{"stated_pin_to_pin", TablesPhrase::pin_to_pin_of},
                           Lead{"screw", TablesPhrase::thread_of},
                           Lead{"open", TablesPhrase::opening_of},
                           Lead{"set_length", TablesPhrase::setting_of},
                           Lead{"line_length", TablesPhrase::length_of},
                           Lead{"spare_bury", TablesPhrase::spare_bury_at},
                           Lead{"in_hand", TablesPhrase::rope_in_hand_for},
                           Lead{"in_hand_over", TablesPhrase::rope_in_hand_beyond_the_cut_of}};

/// What stands in a thing and is no number of the rig files with a source of its own.
template <class Member>
concept WithoutNumber = std::is_enum_v<Member> || std::is_arithmetic_v<Member> ||
    requires(const Member& id) {
  id.index();
} || std::same_as<Member, std::string> || std::same_as<Member, Span> || std::same_as<Member, Provenance> ||
    std::same_as<Member, Vector3> || std::same_as<Member, Length> || std::same_as<Member, Construction> ||
    std::same_as<Member, NamedSize> || std::same_as<Member, Influences>;

/// Meets every member of every thing of a rig by the tables of their fields, so that no number is left out.
/// A type of member that is not known here does not compile.
class Rows {
public:
  Rows(const CheckedRig& checked, Table& table) : checked_(checked), rig_(checked.rig()), table_(table) {}

  void run() {
    visit_fields(rig_, [this](const auto&, const auto& member) { thing(member); });
  }

private:
  template <class Thing>
  void thing(const std::vector<Thing>& all) {
    for (const Thing& one : all)
      thing(one);
  }
  template <HasFields Thing>
  void thing(const Thing& one) {
    members(one, one.name);
  }
  void thing(const Boat& boat) { members(boat, say(TablesPhrase::the_boat)); }
  void thing(const Point& point) {
    add(say(TablesPhrase::point, point.name),
        fmt::format("({}, {}, {}) mm", format_tenths(point.position.x), format_tenths(point.position.y),
                    format_tenths(point.position.z)),
        point.provenance);
    members(point, point.name);
  }
  void thing(const Record& record) {
    members(record, std::string(name_of(record.kind)) + led_by(" ", record.name));
  }
  void thing(const UserRule& rule) { members(rule, say(TablesPhrase::rule, rule.name)); }
  void thing(const Limits& limits) {
    for (const StatedLimit& limit : limits.stated())
      add(say(TablesPhrase::limit, row_of(limit.limit).name), limit_text(limits, limit.limit),
          limit.provenance);
    if (const auto& second = limits.stated_second_measure())
      add("limit second-measure", second->provenance.written, second->provenance);
  }
  void thing(const Expectation& expected) {
    for (const StayId stay : expected.stays)
      members(expected, say(TablesPhrase::the_expected_of, expected.quantity, rig_[stay].name));
  }
  void thing(const Waiver& waiver) { members(waiver, waiver.slug); }
  void thing(const Inspection& inspection) {
    members(inspection, say(TablesPhrase::finding_of_of, inspection.date));
  }
  void thing(const PieceRecord& piece) {
    members(piece, say(TablesPhrase::piece_of_as, rig_[piece.stay].name, name_of(piece.stage)));
  }
  void thing(const Edition&) {}     // what layers there are, not what they state
  void thing(const Difference&) {}  // stands in the files as what it is, and as what it was no more
  void thing(const StatedBound&) {} // a part of the number that it bounds

  template <HasFields Thing>
  void members(const Thing& one, const std::string& of) {
    visit_fields(one, [&](const auto& field, const auto& member) {
      recorded(field, of, member);
      number(field.name, of, member);
    });
  }

  /// A text that is read by people alone is no number, but what is stated shall be found here.
  template <class FieldOf, class Member>
  void recorded(const FieldOf& field, const std::string& of, const Member& member) {
    if constexpr (std::same_as<Member, std::string>)
      if (field.role == FieldRole::for_record && !member.empty())
        add(say(TablesPhrase::of_of, field.property, of), member, {});
  }

  template <WithoutNumber Member>
  void number(std::string_view, const std::string&, const Member&) {}
  template <class Value, std::size_t count>
  void number(std::string_view, const std::string&, const std::array<Value, count>&) {}
  template <class Value>
  void number(std::string_view member, const std::string& of, const std::optional<Value>& value) {
    if (value)
      number(member, of, *value);
  }
  template <class Value>
  void number(std::string_view member, const std::string& of, const std::vector<Value>& values) {
    for (const Value& value : values)
      number(member, of, value);
  }
  void number(std::string_view member, const std::string& of, const Sourced<Length>& length) {
    add(called(member, of), format_tenths(length.value) + " mm", length.provenance);
  }
  void number(std::string_view member, const std::string& of, const Sourced<Force>& force) {
    add(called(member, of), format_fixed(force.value.kilonewtons(), 2) + " kN", force.provenance);
  }
  void number(std::string_view member, const std::string& of, const Sourced<Angle>& angle) {
    add(called(member, of), angle_text(angle.value.radians), angle.provenance);
  }
  void number(std::string_view member, const std::string& of, const Sourced<double>& share) {
    add(called(member, of), format_fixed(share.value * 100.0, 1) + " %", share.provenance);
  }
  void number(std::string_view member, const std::string& of, const Sourced<RopeMeasure>& measure) {
    add(called(member, of),
        measure.value.in_diameters ? format_number(measure.value.amount) + " d"
                                   : format_tenths(Length::metres(measure.value.amount)) + " mm",
        measure.provenance);
  }
  void number(std::string_view member, const std::string& of, const Sourced<Quantity>& quantity) {
    add(called(member, of), quantity.provenance.written, quantity.provenance);
  }
  void number(std::string_view, const std::string& of, const Particular& fact) {
    add(say(TablesPhrase::of_of, fact.name, of), fact.text, fact.value.provenance);
  }
  void number(std::string_view member, const std::string& of, const Screw& screw) {
    add(called(member, of), screw.thread.designation, screw.provenance);
  }
  void number(std::string_view which, const std::string& of, const End& end) {
    for (const EndDimension& dimension : end.dimensions) {
      const std::string what = say(TablesPhrase::of_end_of, name_of(dimension.name), which, of);
      add(what, dimension.text.empty() ? format_tenths(dimension.length.value) + " mm" : dimension.text,
          dimension.length.provenance);
    }
  }
  void number(std::string_view, const std::string&, const PathStop&) {}
  void number(std::string_view, const std::string& of, const Reading& reading) {
    const std::string what = say(TablesPhrase::reading_of, of);
    for (std::size_t i = 0; i < reading.runs.size(); ++i)
      add(say(TablesPhrase::run, what, i + 1), format_tenths(reading.runs[i].value) + " mm",
          reading.runs[i].provenance);
    for (std::size_t i = 0; i < reading.cord_lengths.size(); ++i)
      add(say(TablesPhrase::cord_on_bench, what, i + 1),
          format_tenths(reading.cord_lengths[i].value) + " mm", reading.cord_lengths[i].provenance);
    visit_fields(reading, [&](const auto& field, const auto& member) {
      if constexpr (std::same_as<decltype(member), const std::optional<Sourced<Length>>&>) {
        if (member)
          add(what + ", " + in_words(field.name), format_tenths(member->value) + " mm", member->provenance);
      } else if constexpr (!std::same_as<decltype(member), const std::vector<Sourced<Length>>&>) {
        recorded(field, what, member);
        number(field.name, what, member);
      }
    });
  }
  void number(std::string_view, const std::string& of, const StackItem& item) {
    const std::string what =
        say(TablesPhrase::in,
            item.kind == StackItem::Kind::line ? say(TablesPhrase::line) : rig_[item.part].name, of);
    visit_fields(item, [&](const auto& field, const auto& member) {
      if (field.name != "set_length" || !item.open) // it was written as an opening
        number(field.name, what, member);
    });
  }
  void number(std::string_view, const std::string& of, const StatePosition& position) {
    members(position, say(TablesPhrase::as, rig_[position.stay].name, of));
  }

  /// "eye allowance of long-bury".
  static std::string called(std::string_view member, const std::string& of) {
    for (const Lead& lead : leads)
      if (lead.member == member)
        return say(lead.words, of);
    return say(TablesPhrase::of_of, in_words(member), of);
  }
  static std::string in_words(std::string_view member) {
    std::string words(member);
    std::replace(words.begin(), words.end(), '_', ' ');
    return words;
  }

  void add(const std::string& what, const std::string& value, const Provenance& provenance) {
    table_.rows.push_back({what, value, provenance.written, std::string(name_of(provenance.source_class)),
                           note_words(provenance), place(provenance)});
  }
  std::string place(const Provenance& provenance) const {
    if (!provenance.place)
      return {};
    const SourceText& text = checked_.sources()[provenance.place->source];
    return fmt::format("{}:{}", text.name(), text.position(provenance.place->begin).line);
  }

  const CheckedRig& checked_;
  const Rig& rig_;
  Table& table_;
};

} // namespace source_rows

Table sources_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::every_number_rig_files_and),
              .columns = {{"number"}, {"value", true}, {"as written"}, {"source"}, {"note"}, {"place"}}};
  source_rows::Rows(checked, table).run();
  return table;
}

} // namespace sheerpole
