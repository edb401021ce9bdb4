#include "calculate/joints/jaw_comparison.hpp"

#include "calculate/joints/joint_comparison.hpp"
#include "units/format_length.hpp"
#include "units/named_size.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <cmath>
#include <span>
#include <string>

namespace sheerpole {

namespace {

constexpr double micrometre = 0.001; // in millimetres

struct MetricRow {
  double over; ///< clevis pin, mm
  double to;
  double split_pin;
};

constexpr MetricRow metric[] = {
    {2, 3, 0.8},  {3, 4, 1.0},   {4, 5, 1.2},   {5, 6, 1.6},   {6, 8, 2.0},   {8, 9, 2.5},
    {9, 12, 3.2}, {12, 17, 4.0}, {17, 23, 5.0}, {23, 29, 6.3}, {29, 44, 8.0},
};

struct InchRow {
  double clevis_pin; ///< sixteenths of an inch
  int thirty_seconds;
  const char* name;
};

constexpr InchRow inch[] = {
    {3, 2, "1/16 in"}, {4, 2, "1/16 in"}, {5, 3, "3/32 in"},  {6, 3, "3/32 in"},  {7, 3, "3/32 in"},
    {8, 4, "1/8 in"},  {10, 4, "1/8 in"}, {12, 5, "5/32 in"}, {14, 5, "5/32 in"}, {16, 5, "5/32 in"},
};

} // namespace

std::optional<SplitPin> split_pin_for(const NamedSize& clevis_pin) {
  const double pin = clevis_pin.diameter.millimetres();
  if (clevis_pin.system == NamedSize::System::metric) {
    for (const MetricRow& row : metric)
      if (pin > row.over + micrometre && pin <= row.to + micrometre)
        return SplitPin{Length::millimetres(row.split_pin), format_number(row.split_pin) + " mm",
                        "ISO 1234"};
    return std::nullopt;
  }
  for (const InchRow& row : inch)
    if (std::abs(pin - Length::inches(row.clevis_pin / 16.0).millimetres()) < micrometre)
      return SplitPin{Length::inches(row.thirty_seconds / 32.0), row.name, "ASME B18.8.1"};
  return std::nullopt;
}

namespace {

/// A bush in the joint that fits the hole; null when there is none.
const Part* bush(const JointComparison& to) {
  for (std::size_t i = to.joint().upper + 1; i < to.joint().lower; ++i)
    if (to.stay().stack[i].kind == StackItem::Kind::part &&
        to.rig()[to.stay().stack[i].part].kind == "bush")
      return &to.rig()[to.stay().stack[i].part];
  return nullptr;
}

/// The pin that the hole was likely made for: of the system of this pin, else of the other.
std::string other_pin(const EndDimension& pin, Length hole) {
  struct Size {
    const char* name;
    double millimetres;
  };
  static constexpr Size inch_pins[] = {{"3/16 in", 4.7625}, {"1/4 in", 6.35},     {"5/16 in", 7.9375},
                                       {"3/8 in", 9.525},   {"7/16 in", 11.1125}, {"1/2 in", 12.7},
                                       {"5/8 in", 15.875},  {"3/4 in", 19.05}};
  static constexpr Size metric_pins[] = {{"5 mm", 5.0},   {"6 mm", 6.0},   {"8 mm", 8.0},
                                         {"10 mm", 10.0}, {"12 mm", 12.0}, {"14 mm", 14.0},
                                         {"16 mm", 16.0}, {"20 mm", 20.0}};
  const auto fitting = [&](std::span<const Size> sizes) -> const Size* {
    for (const Size& size : sizes)
      if (const double play = hole.millimetres() - size.millimetres; play >= 0.0 && play <= 0.5)
        return &size;
    return nullptr;
  };
  const auto size = parse_named_size(pin.text);
  const bool in_inches = size.ok() && size.value().system == NamedSize::System::inch;
  const Size* own = in_inches ? fitting(inch_pins) : fitting(metric_pins);
  const Size* found = own != nullptr ? own : in_inches ? fitting(metric_pins) : fitting(inch_pins);
  return found == nullptr ? "" : std::string("; the hole is that of a pin of ") + found->name;
}

void compare_pin(JointComparison& to, const End& jaw, const End& eye) {
  const EndDimension* pin = stated(jaw, "pin");
  const EndDimension* eye_hole = stated(eye, "hole");
  if (pin == nullptr || eye_hole == nullptr) {
    to.missing("pin-too-big", pin == nullptr ? "the pin of the jaw" : "the hole of the eye");
    to.missing("pin-loose", pin == nullptr ? "the pin of the jaw" : "the hole of the eye");
    return;
  }
  Length hole = eye_hole->length.value;
  std::string words = "pin " + pin->text + " in a hole of " + length_text(hole);
  if (const Part* sleeve = bush(to)) {
    const End* inside = sleeve->upper.find("hole") != nullptr ? &sleeve->upper : &sleeve->lower;
    if (const EndDimension* bore = inside->find("hole")) {
      hole = bore->length.value;
      words = "pin " + pin->text + " in " + sleeve->name + " of " + length_text(hole);
    }
  }
  const Length diameter = pin->length.value;
  const Length play = hole - diameter;
  to.add("pin-too-big", JointComparison::result(play >= -a_hair), words, play);
  if (play < -a_hair)
    return; // that it is not loose either is no news
  const auto length = to.rig().limits.length(Limit::pin_play);
  const auto share = to.rig().limits.value(Limit::pin_play_share);
  if (!length && !share) {
    to.switched_off("pin-loose", Limit::pin_play);
    return;
  }
  const Length allowed = std::max(length.value_or(Length{}), diameter * share.value_or(0.0));
  if (play <= allowed) {
    to.add("pin-loose", JointResult::pass, words + ", play " + length_text(play), play);
    return;
  }
  to.add("pin-loose", JointResult::finding,
         words + ": play " + length_text(play) + ", at most " + length_text(allowed) + "; a bush of " +
             length_text(hole) + " outside and " + pin->text + " inside fills it" + other_pin(*pin, hole),
         play);
}

void compare_width(JointComparison& to, const End& jaw, const End& eye) {
  const EndDimension* gap = stated(jaw, "gap");
  const EndDimension* thickness = stated(eye, "thickness");
  if (gap == nullptr || thickness == nullptr) {
    const std::string what = gap == nullptr ? "the gap of the jaw" : "the thickness of the eye";
    to.missing("jaw-too-narrow", what);
    to.missing("jaw-too-wide", what);
    return;
  }
  const Length play = gap->length.value - thickness->length.value;
  const std::string words =
      length_text(thickness->length.value) + " in a jaw of " + length_text(gap->length.value);
  to.add("jaw-too-narrow", JointComparison::result(play >= -a_hair), words, play);
  if (play < -a_hair)
    return;
  if (const auto most = to.rig().limits.length(Limit::side_play))
    to.add("jaw-too-wide", JointComparison::result(play <= *most + a_hair),
           words + ": play " + length_text(play) + ", at most " + length_text(*most), play);
  else
    to.switched_off("jaw-too-wide", Limit::side_play);
}

void compare_depth(JointComparison& to, const End& jaw, const End& eye) {
  const EndDimension* depth = stated(jaw, "depth");
  const EndDimension* edge = stated(eye, "edge");
  if (depth == nullptr || edge == nullptr) {
    to.missing("jaw-too-shallow", depth == nullptr ? "the depth of the jaw" : "the edge of the eye");
    return;
  }
  const Length room = depth->length.value - edge->length.value;
  to.add("jaw-too-shallow", JointComparison::result(room >= -a_hair),
         length_text(edge->length.value) + " from the hole to the end of the plate in a jaw " +
             length_text(depth->length.value) + " deep",
         room);
}

void compare_edge(JointComparison& to, const End& eye) {
  const EndDimension* edge = stated(eye, "edge");
  const EndDimension* hole = stated(eye, "hole");
  if (edge == nullptr || hole == nullptr) {
    to.missing("hole-near-edge", edge == nullptr ? "the edge of the eye" : "the hole of the eye");
    return;
  }
  const double ratio = edge->length.value / hole->length.value;
  to.add_ratio("hole-near-edge", ratio, Limit::edge_usual, Limit::edge_least,
               "edge " + length_text(edge->length.value) + " from a hole of " +
                   length_text(hole->length.value) + ", " + format_fixed(ratio, 2) + " diameters");
}

/// Whether its pin is long enough to be secured outside the cheeks.
void compare_grip(JointComparison& to, const End& jaw) {
  const EndDimension* grip = stated(jaw, "grip");
  const EndDimension* outside = stated(jaw, "outside");
  if (grip == nullptr || outside == nullptr) {
    to.missing("pin-too-short", grip == nullptr ? "the grip of the pin" : "the outside of the jaw");
    return;
  }
  const Length room = grip->length.value - outside->length.value;
  to.add("pin-too-short", JointComparison::result(room >= -a_hair),
         "pin of " + length_text(grip->length.value) + " from head to hole in a jaw " +
             length_text(outside->length.value) + " over its cheeks",
         room);
}

std::optional<NamedSize> named(const EndDimension& dimension) {
  auto size = parse_named_size(dimension.text);
  return size.ok() ? std::optional(size.value()) : std::nullopt;
}

void compare_split_pin(JointComparison& to, const End& jaw) {
  const EndDimension* pin = stated(jaw, "pin");
  const EndDimension* split_pin = stated(jaw, "split-pin");
  if (pin == nullptr || split_pin == nullptr) {
    to.missing("split-pin-small", pin == nullptr ? "the pin of the jaw" : "the split-pin of the jaw");
    return;
  }
  const auto size = named(*pin);
  const auto wanted = size ? split_pin_for(*size) : std::nullopt;
  if (!wanted) {
    to.add("split-pin-small", JointResult::not_checked, "no table has a pin of " + pin->text);
    return;
  }
  // Sizes are names: what is left of turning inches to millimetres is no difference.
  const Length lacking = wanted->diameter - split_pin->length.value;
  to.add("split-pin-small", JointComparison::result(lacking < a_hair),
         "split pin " + split_pin->text + " through a pin of " + pin->text + "; " + wanted->standard +
             " has " + wanted->name);
}

} // namespace

void compare_jaw(JointComparison& to, const End& jaw, const End& eye) {
  compare_pin(to, jaw, eye);
  compare_grip(to, jaw);
  compare_split_pin(to, jaw);
  compare_width(to, jaw, eye);
  compare_depth(to, jaw, eye);
  compare_edge(to, eye);
}

} // namespace sheerpole
