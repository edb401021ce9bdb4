#include "calculate/change/stay_inputs.hpp"

#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <set>
#include <utility>

namespace sheerpole {

namespace {

std::string measure_text(const RopeMeasure& measure) {
  return measure.in_diameters ? format_number(measure.amount) + " d"
                              : length_text(Length::metres(measure.amount));
}

class Inputs {
public:
  Inputs(const Rig& rig, const Stay& stay) : rig_(rig), stay_(stay) {}

  std::vector<StayInput> all() {
    if (stay_.stated_pin_to_pin)
      add(stay_.name, "pin-to-pin", length_text(stay_.stated_pin_to_pin->value));
    for (const PathStop& stop : stay_.path)
      of_stop(stop);
    of_line(rig_[stay_.material]);
    for (const StackItem& item : stay_.stack)
      of_item(item);
    for (const Reading& reading : stay_.readings)
      of_reading(reading);
    for (const Particular& fact : stay_.particulars)
      add(stay_.name, fact.name, fact.text);
    return std::move(inputs_);
  }

private:
  const Rig& rig_;
  const Stay& stay_;
  std::vector<StayInput> inputs_;
  std::set<std::pair<std::string, std::string>> seen_;

  void add(const std::string& subject, const std::string& property, std::string value) {
    if (seen_.emplace(subject, property).second)
      inputs_.push_back({subject, property, std::move(value)});
  }
  void add(const std::string& subject, const std::string& property,
           const std::optional<Sourced<Length>>& length) {
    if (length)
      add(subject, property, length_text(length->value));
  }

  void of_stop(const PathStop& stop) {
    const Point& point = rig_[stop.point];
    for (const auto& [axis, length] : {std::pair("x", point.position.x), std::pair("y", point.position.y),
                                       std::pair("z", point.position.z)})
      add(point.name, axis, format_millimetres(length, 1) + " mm");
    if (stop.passage != Passage::end)
      add(stay_.name, "passage at " + point.name, stop.passage == Passage::free ? "free" : "clamped");
  }

  void of_line(const LineMaterial& line) {
    add(stay_.name, "line", line.name);
    add(line.name, "size", line.size.name);
    add(line.name, "diameter", length_text(line.diameter.value));
    if (line.break_load)
      add(line.name, "break-load", format_number(line.break_load->value.kilonewtons()) + " kN");
    for (const Particular& fact : line.particulars)
      add(line.name, fact.name, fact.text);
  }

  void of_item(const StackItem& item) {
    if (item.material)
      of_line(rig_[*item.material]);
    if (item.splice)
      of_splice(rig_[*item.splice]);
    if (item.kind == StackItem::Kind::line) {
      add(stay_.name, "length of a line in the stack", item.line_length);
      return;
    }
    const Part& part = rig_[item.part];
    of_part(part);
    const auto set = [&](const std::string& property, const std::string& value) {
      if (!value.empty() && seen_.emplace(stay_.name, property + " of " + part.name).second)
        inputs_.push_back({stay_.name, property + " of " + part.name, value, part.name});
    };
    set("count", item.count > 1 ? std::to_string(item.count) : "");
    set("setting", item.set_length ? length_text(item.set_length->value) : "");
    set("passes", item.passes ? std::to_string(*item.passes) : "");
    set("spare bury", item.spare_bury ? length_text(item.spare_bury->value) : "");
    set("splice", item.splice ? rig_[*item.splice].name : "");
  }

  void of_part(const Part& part) {
    add(part.name, "length", part.length);
    add(part.name, "shortest", part.shortest);
    add(part.name, "longest", part.longest);
    add(part.name, "wrap", part.wrap);
    add(part.name, "step", part.step);
    if (part.screw)
      add(part.name, "thread", part.screw->thread.designation);
    of_end(part.name, "upper end", part.upper);
    of_end(part.name, "lower end", part.lower);
    for (const Particular& fact : part.particulars)
      add(part.name, fact.name, fact.text);
  }

  void of_end(const std::string& part, const std::string& which, const End& end) {
    if (end.stated())
      add(part, which, end.type);
    for (const EndDimension& dimension : end.dimensions)
      add(part, dimension.name + " of the " + which,
          dimension.text.empty() ? length_text(dimension.length.value) : dimension.text);
  }

  void of_splice(const Splice& splice) {
    add(splice.name, "bury", measure_text(splice.bury.value));
    if (splice.eye_allowance)
      add(splice.name, "eye-allowance", measure_text(splice.eye_allowance->value));
    if (splice.tail_to_trim)
      add(splice.name, "tail-to-trim", measure_text(splice.tail_to_trim->value));
    if (splice.contraction)
      add(splice.name, "contraction", percent_text(splice.contraction->value));
    if (splice.recovered)
      add(splice.name, "recovered", percent_text(splice.recovered->value));
    if (!splice.taper.empty())
      add(splice.name, "taper", splice.taper);
    for (const Particular& fact : splice.particulars)
      add(splice.name, fact.name, fact.text);
  }

  void of_reading(const Reading& reading) {
    const std::string subject =
        stay_.name + ", reading by " + reading.method + (reading.date.empty() ? "" : " of " + reading.date);
    std::string runs;
    for (const Sourced<Length>& run : reading.runs)
      runs += (runs.empty() ? "" : ", ") + length_text(run.value);
    add(subject, "runs", runs);
    add(subject, "offset", reading.offset);
    add(subject, "hoist-offset", reading.hoist_offset);
    if (!reading.mark.empty())
      add(subject, "mark", reading.mark);
    for (const Particular& fact : reading.particulars)
      add(subject, fact.name, fact.text);
  }
};

} // namespace

std::vector<StayInput> stay_inputs(const Rig& rig, const Stay& stay) {
  return Inputs(rig, stay).all();
}

} // namespace sheerpole
