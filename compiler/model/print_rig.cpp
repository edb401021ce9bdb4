#include "model/print_rig.hpp"

#include "model/print_records.hpp"
#include "model/print_sourced.hpp"
#include "units/format_length.hpp"

#include <optional>

namespace sheerpole {

namespace {

class RigPrinter {
public:
  explicit RigPrinter(const Rig& rig) : rig_(rig) {}

  std::string run() {
    boat();
    for (const Spar& one : rig_.spars)
      spar(one);
    for (const Point& one : rig_.points)
      point(one);
    for (const Spreader& one : rig_.spreaders)
      head("spreader " + titled(one.name, one.title),
           rig_[one.root].name + " to " + rig_[one.tip].name + (one.hold.empty() ? "" : ", " + one.hold));
    for (const LineMaterial& one : rig_.materials)
      material(one);
    for (const Splice& one : rig_.splices)
      splice(one);
    for (const Part& one : rig_.parts)
      part(one);
    for (const Stay& one : rig_.stays)
      stay(one);
    text_ += print_records(rig_);
    return std::move(text_);
  }

private:
  void head(const std::string& name, const std::string& rest = "") {
    text_ += name + (rest.empty() ? "" : ": " + rest) + "\n";
  }
  void fact(std::string_view indent, std::string_view name, const std::string& value) {
    if (value.empty())
      return;
    text_ += indent;
    text_ += name;
    text_ += ": " + value + "\n";
  }
  template <class Value>
  void number(std::string_view indent, std::string_view name, const std::optional<Sourced<Value>>& value) {
    if (value)
      text_ += print_line(indent, name, *value);
  }
  void measure(std::string_view name, const std::optional<Sourced<RopeMeasure>>& value) {
    if (!value)
      return;
    const auto show = [](const RopeMeasure& measure) {
      return measure.in_diameters ? format_number(measure.amount) + " d"
                                  : print_millimetres(Length::metres(measure.amount));
    };
    fact("  ", name,
         show(value->value) + (value->tolerance ? " +- " + show(*value->tolerance) : "") + " " +
             print_provenance(value->provenance));
  }

  void boat() {
    head("boat", rig_.boat.title);
    if (!rig_.boat.sister_of.empty())
      fact("  ", "sister ship of", rig_.boat.sister_of);
    particulars(rig_.boat.particulars);
  }

  void particulars(const std::vector<Particular>& all) {
    for (const Particular& particular : all)
      fact("  ", particular.name, particular.text + " " + print_provenance(particular.value.provenance));
  }

  void spar(const Spar& spar) {
    head("spar " + titled(spar.name, spar.title), spar.sort);
    fact("  ", "heel",
         "(" + print_millimetres(spar.heel.x) + ", " + print_millimetres(spar.heel.y) + ", " +
             print_millimetres(spar.heel.z) + ") " + print_provenance(spar.provenance));
    constexpr std::string_view names[] = {"forward", "starboard", "along"};
    for (std::size_t i = 0; i < 3; ++i)
      fact("  ", names[i],
           "(" + format_fixed(spar.axes[i][0], 6) + ", " + format_fixed(spar.axes[i][1], 6) + ", " +
               format_fixed(spar.axes[i][2], 6) + ")");
    particulars(spar.particulars);
  }

  void point(const Point& point) {
    const auto& [x, y, z] = point.position;
    head("point " + titled(point.name, point.title),
         "(" + print_millimetres(x) + ", " + print_millimetres(y) + ", " + print_millimetres(z) + ") " +
             print_provenance(point.provenance));
    if (point.twin)
      fact("  ", "twin", rig_[*point.twin].name);
    if (!point.spar.empty())
      fact("  ", "on", point.spar);
    if (point.overridden)
      fact("  ", "this side", "stated apart");
  }

  void material(const LineMaterial& material) {
    head(std::string(name_of(material.kind)) + " " + titled(material.name, material.title));
    fact("  ", "construction", material.construction);
    fact("  ", "grade", material.grade);
    fact("  ", "size", material.size.name);
    text_ += print_line("  ", "diameter", material.diameter);
    number("  ", "break-load", material.break_load);
    particulars(material.particulars);
  }

  void splice(const Splice& splice) {
    head("splice " + titled(splice.name, splice.title));
    measure("bury", splice.bury);
    measure("eye-allowance", splice.eye_allowance);
    measure("tail-to-trim", splice.tail_to_trim);
    number("  ", "contraction", splice.contraction);
    number("  ", "recovered", splice.recovered);
    fact("  ", "taper", splice.taper);
    particulars(splice.particulars);
  }

  void part(const Part& part) {
    head(part.kind + " " + titled(part.name, part.title));
    number("  ", "length", part.length);
    number("  ", "shortest", part.shortest);
    number("  ", "longest", part.longest);
    number("  ", "step", part.step);
    if (part.screw)
      fact("  ", "screw",
           std::string(part.screw->pair ? "pair" : "single") + " " + part.screw->thread.designation +
               ", diameter " + print_millimetres(part.screw->thread.diameter) + ", pitch " +
               print_millimetres(part.screw->thread.pitch) + " " +
               print_provenance(part.screw->provenance));
    number("  ", "engaged-at-longest", part.engaged_at_longest);
    number("  ", "wrap", part.wrap);
    end("upper", part.upper);
    end("lower", part.lower);
    particulars(part.particulars);
  }

  void end(std::string_view name, const End& end) {
    fact("  ", name, end.type);
    for (const EndDimension& dimension : end.dimensions) {
      // A word or a count has no length of its own.
      if (dimension.length.value.si() == 0.0 && dimension.length.provenance.written.empty())
        fact("    ", dimension.name, dimension.text);
      else
        text_ += print_line("    ", dimension.name, dimension.length);
    }
  }

  void stay(const Stay& stay) {
    head("stay " + titled(stay.name, stay.title));
    fact("  ", "side", std::string(name_of(stay.side)));
    fact("  ", "line", rig_[stay.material].name);
    if (stay.apart)
      fact("  ", "this side", "stated apart");
    for (const std::string& duty : stay.duties)
      fact("  ", "duty", duty);
    particulars(stay.particulars);
    std::string path;
    for (const PathStop& stop : stay.path) {
      path += (path.empty() ? "" : " > ") + rig_[stop.point].name;
      path += stop.passage == Passage::free ? " free" : stop.passage == Passage::clamped ? " clamped" : "";
    }
    fact("  ", "path", path);
    number("  ", "pin-to-pin", stay.stated_pin_to_pin);
    for (const Reading& one : stay.readings)
      reading(one);
    fact("  ", "stack", "from aloft to deck");
    for (const StackItem& one : stay.stack)
      item(one);
  }

  void reading(const Reading& reading) {
    fact("  ", "reading", reading.method.empty() ? "method not stated" : reading.method);
    for (const Sourced<Length>& run : reading.runs)
      text_ += print_line("    ", "run", run);
    number("    ", "offset", reading.offset);
    fact("    ", "mark", reading.mark);
    fact("    ", "date", reading.date);
    fact("    ", "by", reading.by);
    fact("    ", "note", reading.note);
  }

  void item(const StackItem& item) {
    std::string name = item.kind == StackItem::Kind::line ? "line" : rig_[item.part].name;
    if (item.count != 1)
      name = std::to_string(item.count) + " x " + name;
    text_ += "    " + name + "\n";
    number("      ", "length", item.line_length);
    number("      ", "set", item.set_length);
    number("      ", "open", item.open);
    if (item.material)
      fact("      ", "material", rig_[*item.material].name);
    if (item.hole)
      fact("      ", "hole", std::to_string(*item.hole));
    if (item.passes)
      fact("      ", "passes", std::to_string(*item.passes));
    if (item.splice)
      fact("      ", "splice", rig_[*item.splice].name);
    number("      ", "spare-bury", item.spare_bury);
  }

  const Rig& rig_;
  std::string text_;
};

} // namespace

std::string print_rig(const Rig& rig) {
  return RigPrinter(rig).run();
}

} // namespace sheerpole
