#include "calculate/joints/joint_comparison.hpp"
#include "units/format_length.hpp"
#include "units/named_size.hpp"
#include "units/quantity_text.hpp"

#include <optional>
#include <string>

namespace sheerpole {

namespace {

const LineMaterial& line_of(const JointComparison& to) {
  const StackItem& item =
      to.stay().stack[upper_end(to.rig(), to.joint()) == nullptr ? to.joint().upper : to.joint().lower];
  return to.rig()[item.material.value_or(to.stay().material)];
}

std::optional<NamedSize> named(const std::string& text) {
  auto size = parse_named_size(text);
  return size.ok() ? std::optional(size.value()) : std::nullopt;
}

void compare_socket(JointComparison& to, const End& socket, const LineMaterial& material) {
  const EndDimension* size = stated(socket, "size");
  const auto made_for = size == nullptr ? std::nullopt : named(size->text);
  if (!made_for)
    to.missing("wire-size-differs", "the size of the wire-socket");
  else
    to.add("wire-size-differs", JointComparison::result(same_size(*made_for, material.size)),
           "wire " + material.size.name + " in a terminal for " + made_for->name,
           material.size.diameter - made_for->diameter);
  const EndDimension* construction = stated(socket, "construction");
  if (construction == nullptr)
    to.missing("wire-construction-differs", "the construction of the wire-socket");
  else
    to.add("wire-construction-differs",
           JointComparison::result(construction->text == material.construction),
           material.name + ", " + material.construction + ", in a terminal for " + construction->text);
}

/// A rope lies in the groove when that is neither narrower than the rope nor much wider.
void compare_groove(JointComparison& to, const End& seat, Length rope) {
  const EndDimension* width = stated(seat, "width");
  if (width == nullptr) {
    to.missing("seat-too-narrow", "the width of the rope-seat");
    to.missing("seat-too-wide", "the width of the rope-seat");
    return;
  }
  const Length room = width->length.value - rope;
  const std::string words =
      "rope of " + length_text(rope) + " in a groove of " + length_text(width->length.value);
  to.add("seat-too-narrow", JointComparison::result(room >= -a_hair), words, room);
  if (room < -a_hair)
    return;
  const auto most = to.rig().limits.value(Limit::seat_width);
  if (!most) {
    to.switched_off("seat-too-wide", Limit::seat_width);
    return;
  }
  const Length widest = rope * *most;
  // Rounding in the product is no difference.
  to.add("seat-too-wide", JointComparison::result(width->length.value <= widest + a_hair),
         words + ", at most " + length_text(widest), room);
}

void compare_seat(JointComparison& to, const End& seat, const LineMaterial& material) {
  const Length rope = material.diameter.value;
  compare_groove(to, seat, rope);
  const EndDimension* diameter = stated(seat, "diameter");
  if (diameter == nullptr) {
    to.missing("seat-too-small", "the diameter of the rope-seat");
    return;
  }
  const double ratio = diameter->length.value / rope;
  to.add_ratio("seat-too-small", ratio, Limit::seat_usual, Limit::seat_least,
               "seat of " + length_text(diameter->length.value) + ", " + format_fixed(ratio, 2) +
                   " times the rope");
}

} // namespace

void compare_line(JointComparison& to, const End& end) {
  const LineMaterial& material = line_of(to);
  if (!end.stated()) {
    to.add("ends", JointResult::not_checked, "the end that takes the line is not stated");
    return;
  }
  const bool chain = material.kind == LineMaterial::Kind::chain;
  if (end.type == "wire-socket" && material.kind != LineMaterial::Kind::rope && !chain)
    compare_socket(to, end, material);
  else if (end.type == "rope-seat" && material.kind == LineMaterial::Kind::rope)
    compare_seat(to, end, material);
  else
    to.add("ends", JointResult::not_checked,
           "a " + std::string(name_of(material.kind)) + " at a " + end.type);
}

} // namespace sheerpole
