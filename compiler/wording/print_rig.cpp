#include "wording/print_phases.hpp"

#include "model/provenance.hpp"
#include "model/remark.hpp"
#include "model/sourced.hpp"
#include "model/splice.hpp"
#include "units/dimension.hpp"
#include "units/force.hpp"
#include "units/format_length.hpp"
#include "units/length.hpp"
#include "units/quantity_text.hpp"
#include "wording/model_words.hpp"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

namespace sheerpole {

namespace {

/// `cap-shroud "Cap shroud"`; the name alone where there is no title.
std::string titled(const std::string& name, const std::string& title) {
  return title.empty() ? name : name + " \"" + title + "\"";
}

/// Millimetres with three decimals: finer than anything that is cut, coarse enough to be the same
/// everywhere.
std::string print_millimetres(Length length) {
  return format_millimetres(length, 3) + " mm";
}

std::string print_kilonewtons(Force force) {
  return format_fixed(force.kilonewtons(), 3) + " kN";
}

/// `(written 7 3/8 in; maker, certificate 1142; assumes contraction of long-bury)`.
std::string print_provenance(const Provenance& provenance) {
  std::string result = "(";
  if (!provenance.written.empty())
    result += "written " + provenance.written + "; ";
  result += name_of(provenance.source_class);
  if (const std::string note = note_words(provenance); !note.empty())
    result += ", " + note;
  for (std::size_t i = 0; i < provenance.assumptions.size(); ++i)
    result += (i == 0 ? "; assumes " : ", ") + provenance.assumptions[i];
  return result + ")";
}

std::string line(std::string_view indent, std::string_view name, const std::string& value,
                 const std::string& tolerance, const Provenance& provenance) {
  std::string result(indent);
  result += name;
  result += ": " + value;
  if (!tolerance.empty())
    result += " +- " + tolerance;
  return result + " " + print_provenance(provenance) + "\n";
}

/// One line: `  length: 82.000 mm +- 2.000 mm (written 82 mm +- 2 mm; measured)`.
std::string print_line(std::string_view indent, std::string_view name, const Sourced<Length>& length) {
  return line(indent, name, print_millimetres(length.value),
              length.tolerance ? print_millimetres(*length.tolerance) : "", length.provenance);
}

/// One line, in kN.
std::string print_line(std::string_view indent, std::string_view name, const Sourced<Force>& force) {
  return line(indent, name, print_kilonewtons(force.value),
              force.tolerance ? print_kilonewtons(*force.tolerance) : "", force.provenance);
}

/// One line, a plain number: `0.08`.
std::string print_line(std::string_view indent, std::string_view name, const Sourced<double>& number) {
  return line(indent, name, format_number(number.value),
              number.tolerance ? format_number(*number.tolerance) : "", number.provenance);
}

/// One line, a length or diameters of the rope: `72 d`.
std::string print_line(std::string_view indent, std::string_view name,
                       const Sourced<RopeMeasure>& measure) {
  const auto show = [](const RopeMeasure& one) {
    return one.in_diameters ? format_number(one.amount) + " d"
                            : print_millimetres(Length::metres(one.amount));
  };
  return line(indent, name, show(measure.value), measure.tolerance ? show(*measure.tolerance) : "",
              measure.provenance);
}

/// One line, in degrees.
std::string print_line(std::string_view indent, std::string_view name, const Sourced<Angle>& angle) {
  return line(indent, name, angle_text(angle.value.radians),
              angle.tolerance ? angle_text(angle.tolerance->radians) : "", angle.provenance);
}

/// One line, millimetres for a length, else the coherent SI unit.
std::string print_line(std::string_view indent, std::string_view name, const Sourced<Quantity>& quantity) {
  if (quantity.value.dimension == dimension::length) {
    Sourced<Length> length{Length::from_si(quantity.value.si), quantity.provenance, std::nullopt};
    if (quantity.tolerance)
      length.tolerance = Length::from_si(quantity.tolerance->si);
    return print_line(indent, name, length);
  }
  Sourced<double> number{quantity.value.si, quantity.provenance, std::nullopt};
  if (quantity.tolerance)
    number.tolerance = quantity.tolerance->si;
  return print_line(indent, name, number);
}

} // namespace

namespace rig_printing {

/// Meets every field of every thing of a rig, by their tables: what is stated is printed, whatever it is. A
/// type of member that is not known here does not compile.
class RigPrinter {
public:
  explicit RigPrinter(const Rig& rig) : rig_(rig) {}

  std::string run() {
    visit_fields(rig_, [this](const auto& field, const auto& member) { things(field.name, member); });
    return std::move(text_);
  }

private:
  // What a thing is called in its first line.
  std::string head(const Boat& boat) const { return "boat: " + boat.title; }
  std::string head(const Spar& spar) const { return "spar " + titled(spar.name, spar.title); }
  std::string head(const Point& point) const { return "point " + titled(point.name, point.title); }
  std::string head(const Spreader& one) const { return "spreader " + titled(one.name, one.title); }
  std::string head(const LineMaterial& line) const {
    return std::string(name_of(line.kind)) + " " + titled(line.name, line.title);
  }
  std::string head(const Splice& splice) const { return "splice " + titled(splice.name, splice.title); }
  std::string head(const Part& part) const {
    return std::string(name_of(part.kind)) + " " + titled(part.name, part.title);
  }
  std::string head(const Stay& stay) const { return "stay " + titled(stay.name, stay.title); }
  std::string head(const State& state) const { return "state " + titled(state.name, state.title); }
  std::string head(const Record& record) const {
    return std::string(name_of(record.kind)) + " " + titled(record.name, record.title) +
           (record.of.empty() ? "" : " of " + record.of);
  }
  std::string head(const UserRule& rule) const { return "rule " + titled(rule.name, rule.title); }
  std::string head(const Waiver& waiver) const {
    return (waiver.accepts ? "accept " : "waive ") + waiver.slug +
           (waiver.stay.empty() ? "" : " of " + waiver.stay);
  }
  std::string head(const Expectation& one) const {
    return "expect " + names(one.stays) + " " + one.quantity;
  }
  std::string head(const Inspection& one) const { return "finding of " + names(one.stays); }
  std::string head(const PieceRecord& one) const {
    return "piece of " + rig_[one.stay].name + ", " + std::string(name_of(one.stage));
  }
  std::string head(const StatedBound& bound) const { return "bound of " + bound.name; }

  // The members of the rig.
  template <class Thing>
  void things(std::string_view, const std::vector<Thing>& all) {
    for (const Thing& one : all)
      things({}, one);
  }
  template <HasFields Thing>
  void things(std::string_view, const Thing& thing) {
    text_ += head(thing) + "\n";
    fields(thing, 1);
  }
  void things(std::string_view, const Difference& difference) {
    const DifferenceWords words = words_of(difference);
    text_ += "difference by " + words.by + ": " + words.what + " of " + words.of + "\n";
    line(1, "origin", words.by);
    line(1, "subject", words.of);
    line(1, "property", words.what);
    line(1, "was", words.was);
    line(1, "is", words.is);
  }
  void things(std::string_view, const Edition& edition) {
    if (edition.layer.empty())
      return;
    text_ += "as " + edition.layer + (edition.held ? ", later layers left out" : "") + "\n";
    line(1, "date", edition.date);
  }
  void things(std::string_view, const Limits& limits) {
    for (const StatedLimit& limit : limits.stated())
      text_ += "limit " + std::string(row_of(limit.limit).name) + ": " + limit_text(limits, limit.limit) +
               " " + print_provenance(limit.provenance) + "\n";
    if (const auto& second = limits.stated_second_measure())
      text_ += "limit second-measure: " + second->provenance.written + " " +
               print_provenance(second->provenance) + "\n";
  }

  template <HasFields Thing>
  void fields(const Thing& thing, int depth) {
    visit_fields(thing, [this, depth](const auto& field, const auto& member) {
      if (field.name == "name" || field.name == "title") // stands in the head
        return;
      std::string label(field.property.empty() ? field.name : field.property);
      for (char& c : label)
        if (c == '_')
          c = '-';
      print(depth, label, member);
    });
  }

  void line(int depth, std::string_view label, const std::string& value) {
    if (value.empty())
      return;
    text_.append(2 * static_cast<std::size_t>(depth), ' ');
    text_ += label;
    text_ += ": " + value + "\n";
  }

  // Each type of member.
  void print(int depth, std::string_view label, const std::string& text) { line(depth, label, text); }
  void print(int depth, std::string_view label, std::string_view text) {
    line(depth, label, std::string(text));
  }
  void print(int depth, std::string_view label, bool yes) { line(depth, label, yes ? "yes" : ""); }
  void print(int depth, std::string_view label, int count) { line(depth, label, std::to_string(count)); }
  void print(int depth, std::string_view label, double number) {
    line(depth, label, format_number(number));
  }
  void print(int depth, std::string_view label, Length length) {
    line(depth, label, print_millimetres(length));
  }
  void print(int depth, std::string_view label, const Vector3& place) {
    line(depth, label,
         "(" + print_millimetres(place.x) + ", " + print_millimetres(place.y) + ", " +
             print_millimetres(place.z) + ")");
  }
  void print(int depth, std::string_view label, const Provenance& provenance) {
    line(depth, label, print_provenance(provenance));
  }
  void print(int depth, std::string_view label, const NamedSize& size) { line(depth, label, size.name); }
  void print(int depth, std::string_view label, const Construction& made) { line(depth, label, made.text); }
  void print(int depth, std::string_view label, const Thread& thread) {
    line(depth, label,
         thread.designation + ", diameter " + print_millimetres(thread.diameter) + ", pitch " +
             print_millimetres(thread.pitch));
  }
  template <class Value>
  void print(int depth, std::string_view label, const Sourced<Value>& value) {
    text_ += print_line(std::string(2 * static_cast<std::size_t>(depth), ' '), label, value);
  }
  void print(int depth, std::string_view label, Side side) {
    line(depth, label, std::string(name_of(side)));
  }
  template <NamedWord Word>
  void print(int depth, std::string_view label, Word word) {
    line(depth, label, std::string(name_of(word)));
  }
  void print(int depth, std::string_view label, LineMaterial::Kind kind) {
    line(depth, label, std::string(name_of(kind)));
  }
  void print(int depth, std::string_view label, Part::Role role) {
    line(depth, label, std::string(name_of(role)));
  }
  void print(int depth, std::string_view label, Passage passage) {
    line(depth, label, std::string(name_of(passage)));
  }
  void print(int depth, std::string_view label, StackItem::Kind kind) {
    line(depth, label, kind == StackItem::Kind::line ? "line" : "part");
  }
  void print(int depth, std::string_view label, PointId id) { line(depth, label, rig_[id].name); }
  void print(int depth, std::string_view label, MaterialId id) { line(depth, label, rig_[id].name); }
  void print(int depth, std::string_view label, SpliceId id) { line(depth, label, rig_[id].name); }
  void print(int depth, std::string_view label, PartId id) { line(depth, label, rig_[id].name); }
  void print(int depth, std::string_view label, StayId id) { line(depth, label, rig_[id].name); }
  void print(int, std::string_view, const Span&) {}       // where it stands is for messages
  void print(int, std::string_view, const Influences&) {} // the bounds themselves are printed
  void print(int, std::string_view, const std::array<Influences, 3>&) {}
  void print(int, std::string_view, Dimension) {}
  void print(int depth, std::string_view label, const std::array<std::array<double, 3>, 3>& axes) {
    for (const auto& axis : axes)
      line(depth, label,
           "(" + format_fixed(axis[0], 6) + ", " + format_fixed(axis[1], 6) + ", " +
               format_fixed(axis[2], 6) + ")");
  }
  template <class Value>
  void print(int depth, std::string_view label, const std::optional<Value>& value) {
    if (value)
      print(depth, label, *value);
  }
  void print(int depth, std::string_view, const std::vector<Particular>& facts) {
    for (const Particular& fact : facts)
      line(depth, fact.name, fact.text + " " + print_provenance(fact.value.provenance));
  }
  void print(int depth, std::string_view, const std::vector<EndDimension>& dimensions) {
    for (const EndDimension& dimension : dimensions) {
      // A word or a count has no length of its own.
      if (dimension.length.value.si() == 0.0 && dimension.length.provenance.written.empty())
        line(depth, name_of(dimension.name), dimension.text);
      else
        print(depth, name_of(dimension.name), dimension.length);
    }
  }
  template <class Value>
  void print(int depth, std::string_view label, const std::vector<Value>& values) {
    for (const Value& value : values)
      print(depth, label, value);
  }
  void print(int depth, std::string_view label, const std::vector<std::size_t>& places) {
    for (const std::size_t place : places)
      line(depth, label, std::to_string(place));
  }
  void print(int depth, std::string_view label, const Screw& screw) {
    line(depth, label, screw.thread.designation + " " + print_provenance(screw.provenance));
    fields(screw, depth + 1);
  }
  void print(int depth, std::string_view label, const End& end) {
    if (!end.stated())
      return;
    line(depth, label, std::string(name_of(end.type)));
    print(depth + 1, {}, end.dimensions);
  }
  void print(int depth, std::string_view label, const PathStop& stop) {
    line(depth, label,
         rig_[stop.point].name +
             (stop.passage == Passage::end ? "" : " " + std::string(name_of(stop.passage))));
  }
  void print(int depth, std::string_view label, const StackItem& item) {
    const bool is_line = item.kind == StackItem::Kind::line;
    line(depth, label, is_line ? "line" : rig_[item.part].name);
    visit_fields(item, [&](const auto& field, const auto& member) {
      // What stands in the line above; of a line the part has no meaning, and one of a kind needs no count.
      if (field.name == "kind" || field.name == "part" || (field.name == "count" && item.count == 1))
        return;
      print(depth + 1, field.property.empty() ? field.name : field.property, member);
    });
  }
  void print(int depth, std::string_view label, const Reading& reading) {
    line(depth, label,
         reading.method == ReadingMethod::unstated ? "method not stated"
                                                   : std::string(name_of(reading.method)));
    fields(reading, depth + 1);
  }
  void print(int depth, std::string_view label, const StatePosition& position) {
    line(depth, label, rig_[position.stay].name);
    fields(position, depth + 1);
  }

  std::string names(const std::vector<StayId>& ids) const {
    std::string result;
    for (const StayId id : ids)
      result += (result.empty() ? "" : ", ") + rig_[id].name;
    return result;
  }

  const Rig& rig_;
  std::string text_;
};

} // namespace rig_printing

std::string print_rig(const Rig& rig) {
  return rig_printing::RigPrinter(rig).run();
}

} // namespace sheerpole
