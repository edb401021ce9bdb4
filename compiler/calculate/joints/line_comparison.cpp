#include "calculate/joints/joint_comparison.hpp"
#include "model/kind_words.hpp"
#include "units/named_size.hpp"

#include <optional>
#include <string>

namespace sheerpole {

namespace {

/// The line of the joint: that of the thing that has no end.
const LineMaterial& line_of(const JointComparison& to) {
  const StackItem& item =
      to.stay().stack[upper_end(to.rig(), to.joint()) == nullptr ? to.joint().upper : to.joint().lower];
  return to.rig()[item.material.value_or(to.stay().material)];
}

void compare_socket(JointComparison& to, const End& socket, const LineMaterial& material) {
  const EndDimension* size = socket.find(EndDimensionName::size);
  const auto made_for = size == nullptr ? std::nullopt : named_size(*size);
  if (!made_for)
    to.missing(JointFinding::wire_size_differs, socket, EndDimensionName::size);
  else
    to.add(JointFinding::wire_size_differs, same_size(*made_for, material.size),
           Remark(JointPhrase::wire_in_terminal, {Words{material.size.name}, Words{made_for->name}}),
           material.size.diameter - made_for->diameter);
  const EndDimension* construction = socket.find(EndDimensionName::construction);
  if (construction == nullptr)
    to.missing(JointFinding::wire_construction_differs, socket, EndDimensionName::construction);
  else
    to.add(JointFinding::wire_construction_differs, construction->text == material.construction.text,
           Remark(JointPhrase::construction_in_terminal,
                  {Words{material.name}, Words{material.construction.text}, Words{construction->text}}));
}

/// A rope lies in the groove when that is neither narrower than the rope nor much wider.
void compare_groove(JointComparison& to, const End& seat, Length rope) {
  const EndDimension* width = seat.find(EndDimensionName::width);
  if (width == nullptr) {
    to.missing(JointFinding::seat_too_narrow, seat, EndDimensionName::width);
    to.missing(JointFinding::seat_too_wide, seat, EndDimensionName::width);
    return;
  }
  const Length room = width->length.value - rope;
  const Remark words(JointPhrase::rope_in_groove, {rope, width->length.value});
  to.add(JointFinding::seat_too_narrow, room >= -a_hair, words, room);
  if (room < -a_hair)
    return;
  const auto most = to.rig().limits.value(Limit::seat_width);
  if (!most) {
    to.switched_off(JointFinding::seat_too_wide, Limit::seat_width);
    return;
  }
  const Length widest = rope * *most;
  // Rounding in the product is no difference.
  to.add(JointFinding::seat_too_wide, width->length.value <= widest + a_hair,
         Remark(JointPhrase::groove_at_most, {Remarks{{words}}, widest}), room);
}

void compare_seat(JointComparison& to, const End& seat, const LineMaterial& material) {
  const Length rope = material.diameter.value;
  compare_groove(to, seat, rope);
  const EndDimension* diameter = seat.find(EndDimensionName::diameter);
  if (diameter == nullptr) {
    to.missing(JointFinding::seat_too_small, seat, EndDimensionName::diameter);
    return;
  }
  const double ratio = diameter->length.value / rope;
  to.add_ratio(JointFinding::seat_too_small, ratio, Limit::seat_usual, Limit::seat_least,
               Remark(JointPhrase::seat_over_rope, {diameter->length.value, Fixed{ratio, 2}}));
}

} // namespace

void compare_line(JointComparison& to, const End& end) {
  const LineMaterial& material = line_of(to);
  if (!end.stated()) {
    to.add(JointFinding::ends, JointResult::not_checked, JointPhrase::line_end_not_stated);
    return;
  }
  const bool chain = material.kind == LineMaterial::Kind::chain;
  if (end.type == EndType::wire_socket && material.kind != LineMaterial::Kind::rope && !chain)
    compare_socket(to, end, material);
  else if (end.type == EndType::rope_seat && material.kind == LineMaterial::Kind::rope)
    compare_seat(to, end, material);
  else
    to.add(
        JointFinding::ends, JointResult::not_checked,
        Remark(JointPhrase::line_at_end, {OneOf{std::string(name_of(material.kind))}, one_of(end.type)}));
}

} // namespace sheerpole
