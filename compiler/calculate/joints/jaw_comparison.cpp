#include "calculate/joints/joint_comparison.hpp"

#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "units/format_length.hpp"
#include "units/named_size.hpp"

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

/// A bush in the joint that fits the hole; nothing when there is none.
std::optional<PartId> bush(const JointComparison& to) {
  for (std::size_t i = to.joint().upper + 1; i < to.joint().lower; ++i)
    if (to.stay().stack[i].kind == StackItem::Kind::part &&
        to.rig()[to.stay().stack[i].part].kind == PartKind::bush)
      return to.stay().stack[i].part;
  return std::nullopt;
}

/// The pin that the hole was likely made for: of the system of this pin, else of the other.
Remark hole_of_other_pin(const EndDimension& pin, Length hole) {
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
  const auto size = named_size(pin);
  const bool in_inches = size && size->system == NamedSize::System::inch;
  const Size* own = in_inches ? fitting(inch_pins) : fitting(metric_pins);
  const Size* found = own != nullptr ? own : in_inches ? fitting(metric_pins) : fitting(inch_pins);
  return found == nullptr ? Remark() : Remark(JointPhrase::hole_of_other_pin, {Words{found->name}});
}

/// The pin of the joint in the hole of this eye. A pin that lies in the joint in its own right goes before
/// the one that the jaw states.
void compare_pin(JointComparison& to, const End* jaw, const End& eye) {
  const auto joint_pin = pin_of(to.rig(), to.joint());
  const EndDimension* stated = joint_pin && joint_pin->size ? &*joint_pin->size : nullptr;
  const EndDimension* bored = eye.find(EndDimensionName::hole);
  if (stated == nullptr || bored == nullptr) {
    for (const JointFinding finding : {JointFinding::pin_too_big, JointFinding::pin_loose})
      if (stated != nullptr)
        to.missing(finding, eye, EndDimensionName::hole);
      else if (jaw != nullptr)
        to.missing(finding, *jaw, EndDimensionName::pin);
      else
        to.add(finding, JointResult::not_checked, JointPhrase::size_of_pin_not_stated);
    return;
  }
  const EndDimension& pin = *stated;
  Length hole = bored->length.value;
  Remark words(JointPhrase::pin_in_hole, {Words{pin.text}, hole});
  if (const auto sleeve = bush(to)) {
    const Part& part = to.rig()[*sleeve];
    const End& inside = part.upper.find(EndDimensionName::hole) != nullptr ? part.upper : part.lower;
    if (const EndDimension* bore = inside.find(EndDimensionName::hole)) {
      hole = bore->length.value;
      words = Remark(JointPhrase::pin_in_bush, {Words{pin.text}, *sleeve, hole});
    }
  }
  const Length diameter = pin.length.value;
  const Length play = hole - diameter;
  to.add(JointFinding::pin_too_big, play >= -a_hair, words, play);
  if (play < -a_hair)
    return; // that it is not loose either is no news
  const auto length = to.rig().limits.length(Limit::pin_play);
  const auto share = to.rig().limits.value(Limit::pin_play_share);
  if (!length && !share) {
    to.switched_off(JointFinding::pin_loose, Limit::pin_play);
    return;
  }
  const Length allowed = std::max(length.value_or(Length{}), diameter * share.value_or(0.0));
  if (play <= allowed) {
    to.add(JointFinding::pin_loose, JointResult::pass,
           Remark(JointPhrase::pin_has_play, {Remarks{{words}}, play}), play);
    return;
  }
  Remark loose(JointPhrase::pin_plays_too_much, {Remarks{{words}}, play, allowed, hole, Words{pin.text}});
  to.add(JointFinding::pin_loose, JointResult::finding,
         Remark(JointPhrase::together,
                {Remarks{{std::move(loose), hole_of_other_pin(pin, hole)}, Join::semicolon}}),
         play);
}

void compare_width(JointComparison& to, const End& jaw, const End& eye) {
  const TwoDimensions found = to.both({JointFinding::jaw_too_narrow, JointFinding::jaw_too_wide}, jaw,
                                      EndDimensionName::gap, eye, EndDimensionName::thickness);
  if (!found)
    return;
  const Length play = found.first() - found.second();
  const Remark words(JointPhrase::plate_in_jaw, {found.second(), found.first()});
  to.add(JointFinding::jaw_too_narrow, play >= -a_hair, words, play);
  if (play < -a_hair)
    return;
  const auto length = to.rig().limits.length(Limit::side_play);
  if (!length) {
    to.switched_off(JointFinding::jaw_too_wide, Limit::side_play);
    return;
  }
  // A thin plate is pulled askew by less play than a thick one. Choice of the project, no source.
  constexpr Length thin_plate = Length::millimetres(5.0);
  Length most = *length;
  if (const auto share = to.rig().limits.value(Limit::side_play_share);
      share && found.second() < thin_plate)
    most = std::min(most, found.second() * *share);
  to.add(JointFinding::jaw_too_wide, play <= most + a_hair,
         Remark(JointPhrase::plate_plays_too_much, {Remarks{{words}}, play, most}), play);
}

void compare_depth(JointComparison& to, const End& jaw, const End& eye) {
  const TwoDimensions found =
      to.both({JointFinding::jaw_too_shallow}, jaw, EndDimensionName::depth, eye, EndDimensionName::edge);
  if (!found)
    return;
  const Length room = found.first() - found.second();
  to.add(JointFinding::jaw_too_shallow, room >= -a_hair,
         Remark(JointPhrase::edge_in_depth, {found.second(), found.first()}), room);
}

void compare_edge(JointComparison& to, const End& eye) {
  const TwoDimensions found =
      to.both({JointFinding::hole_near_edge}, eye, EndDimensionName::edge, eye, EndDimensionName::hole);
  if (!found)
    return;
  const double ratio = found.first() / found.second();
  to.add_ratio(JointFinding::hole_near_edge, ratio, Limit::edge_usual, Limit::edge_least,
               Remark(JointPhrase::edge_from_hole, {found.first(), found.second(), Fixed{ratio, 2}}));
}

/// Whether its pin is long enough to be secured outside the cheeks.
void compare_grip(JointComparison& to, const End& jaw) {
  const TwoDimensions found =
      to.both({JointFinding::pin_too_short}, jaw, EndDimensionName::grip, jaw, EndDimensionName::outside);
  if (!found)
    return;
  const Length room = found.first() - found.second();
  to.add(JointFinding::pin_too_short, room >= -a_hair,
         Remark(JointPhrase::pin_over_cheeks, {found.first(), found.second()}), room);
}

void compare_split_pin(JointComparison& to, const End& jaw) {
  const auto joint_pin = pin_of(to.rig(), to.joint());
  const EndDimension* stated = joint_pin && joint_pin->size ? &*joint_pin->size : nullptr;
  const EndDimension* through = jaw.find(EndDimensionName::split_pin);
  if (stated == nullptr || through == nullptr) {
    to.missing(JointFinding::split_pin_small, jaw,
               stated == nullptr ? EndDimensionName::pin : EndDimensionName::split_pin);
    return;
  }
  const EndDimension& pin = *stated;
  const EndDimension& split_pin = *through;
  const auto size = named_size(pin);
  const auto wanted = size ? split_pin_for(*size) : std::nullopt;
  if (!wanted) {
    to.add(JointFinding::split_pin_small, JointResult::not_checked,
           Remark(JointPhrase::split_pin_in_no_table, {Words{pin.text}}));
    return;
  }
  // Sizes are names: what is left of turning inches to millimetres is no difference.
  const Length lacking = wanted->diameter - split_pin.length.value;
  to.add(JointFinding::split_pin_small, lacking < a_hair,
         Remark(JointPhrase::split_pin_through,
                {Words{split_pin.text}, Words{pin.text}, Words{wanted->standard}, Words{wanted->name}}));
}

} // namespace

void compare_own_pin(JointComparison& to, const End& eye) {
  compare_pin(to, nullptr, eye);
  compare_edge(to, eye);
}

void compare_pin_in_jaw(JointComparison& to, const JointPin& pin) {
  const EndDimension* made_for = pin.jaw == nullptr ? nullptr : pin.jaw->find(EndDimensionName::pin);
  if (made_for == nullptr || !pin.size || find_fact(pin.part->particulars, fact_names.size) == nullptr)
    return;
  const Length play = made_for->length.value - pin.size->length.value;
  const Remark words(JointPhrase::pin_in_jaw, {Words{pin.size->text}, Words{made_for->text}});
  to.add(JointFinding::pin_too_big, play >= -a_hair, words, play);
  if (play > a_hair)
    to.add(JointFinding::pin_loose, JointResult::finding, words, play);
}

void compare_jaw(JointComparison& to, const End& jaw, const End& eye) {
  compare_pin(to, &jaw, eye);
  compare_grip(to, jaw);
  compare_split_pin(to, jaw);
  compare_width(to, jaw, eye);
  compare_depth(to, jaw, eye);
  compare_edge(to, eye);
}

} // namespace sheerpole
