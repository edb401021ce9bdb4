#include "calculate/joints/compare_joint.hpp"

#include "calculate/length_text.hpp"
#include "units/format_length.hpp"
#include "units/named_size.hpp"

#include <algorithm>
#include <cmath>
#include <span>
#include <string>
#include <utility>

namespace sheerpole {

namespace {

/// What an end says of one of its dimensions; null when it says nothing.
const EndDimension* stated(const End& end, std::string_view name) {
  return end.find(name);
}

class Comparison {
public:
  Comparison(const Rig& rig, Joint& joint) : rig_(rig), stay_(rig[joint.stay]), joint_(joint) {}

  void run() {
    const End* above = upper_end(rig_, joint_);
    const End* below = lower_end(rig_, joint_);
    if (above != nullptr && below != nullptr)
      compare_parts(*above, *below);
    else if (const End* only = above != nullptr ? above : below)
      compare_with_line(*only);
  }

private:
  void add(std::string slug, JointResult result, std::string words,
           std::optional<Length> play = std::nullopt) {
    joint_.checks.push_back({std::move(slug), result, std::move(words), play});
  }
  void missing(std::string slug, const std::string& what) {
    add(std::move(slug), JointResult::not_checked, what + " is not stated");
  }
  void switched_off(std::string slug, Limit limit) {
    add(std::move(slug), JointResult::not_checked,
        std::string(row_of(limit).name) + " is switched off in `limits`");
  }
  /// Found below the usual; the least in use is said with it.
  void add_ratio(std::string slug, double ratio, Limit usual_limit, Limit least_limit, std::string words) {
    const auto usual = rig_.limits.value(usual_limit);
    const auto least = rig_.limits.value(least_limit);
    if (!usual && !least) {
      switched_off(std::move(slug), usual_limit);
      return;
    }
    words += "; ";
    if (usual)
      words += trimmed(*usual) + " are usual" + (least ? ", " : "");
    if (least)
      words += trimmed(*least) + " the least";
    add(std::move(slug), result(ratio >= usual.value_or(*least)), std::move(words));
  }
  /// A threshold as a plain number, two decimals at most: "1.5".
  static std::string trimmed(double value) { return format_number(std::round(value * 100.0) / 100.0); }
  static JointResult result(bool good) { return good ? JointResult::pass : JointResult::finding; }

  void compare_parts(const End& above, const End& below) {
    if (!above.stated() || !below.stated()) {
      add("ends", JointResult::not_checked,
          std::string(!above.stated() ? "the lower end of the upper part"
                                      : "the upper end of the lower part") +
              " is not stated");
      return;
    }
    const auto pair = [&](std::string_view one, std::string_view other) {
      return above.type == one && below.type == other   ? 1
             : above.type == other && below.type == one ? 2
                                                        : 0;
    };
    if (const int way = pair("jaw", "eye"))
      compare_jaw(way == 1 ? above : below, way == 1 ? below : above);
    else if (const int screw = pair("stud", "socket"))
      compare_thread(screw == 1 ? above : below, screw == 1 ? below : above);
    else
      add("ends", JointResult::not_checked, "a " + above.type + " against a " + below.type);
  }

  /// A bush in the joint that fits the hole; null when there is none.
  const Part* bush() const {
    for (std::size_t i = joint_.upper + 1; i < joint_.lower; ++i)
      if (stay_.stack[i].kind == StackItem::Kind::part && rig_[stay_.stack[i].part].kind == "bush")
        return &rig_[stay_.stack[i].part];
    return nullptr;
  }

  void compare_jaw(const End& jaw, const End& eye) {
    compare_pin(jaw, eye);
    compare_width(jaw, eye);
    compare_depth(jaw, eye);
    compare_edge(eye);
  }

  void compare_pin(const End& jaw, const End& eye) {
    const EndDimension* pin = stated(jaw, "pin");
    const EndDimension* eye_hole = stated(eye, "hole");
    if (pin == nullptr || eye_hole == nullptr) {
      missing("pin-too-big", pin == nullptr ? "the pin of the jaw" : "the hole of the eye");
      missing("pin-loose", pin == nullptr ? "the pin of the jaw" : "the hole of the eye");
      return;
    }
    Length hole = eye_hole->length.value;
    std::string words = "pin " + pin->text + " in a hole of " + length_text(hole);
    if (const Part* sleeve = bush()) {
      const End* inside = sleeve->upper.find("hole") != nullptr ? &sleeve->upper : &sleeve->lower;
      if (const EndDimension* bore = inside->find("hole")) {
        hole = bore->length.value;
        words = "pin " + pin->text + " in " + sleeve->name + " of " + length_text(hole);
      }
    }
    const Length diameter = pin->length.value;
    const Length play = hole - diameter;
    add("pin-too-big", result(play >= Length{}), words, play);
    if (play < Length{})
      return; // that it is not loose either is no news
    const auto length = rig_.limits.length(Limit::pin_play);
    const auto share = rig_.limits.value(Limit::pin_play_share);
    if (!length && !share) {
      switched_off("pin-loose", Limit::pin_play);
      return;
    }
    const Length allowed = std::max(length.value_or(Length{}), diameter * share.value_or(0.0));
    if (play <= allowed) {
      add("pin-loose", JointResult::pass, words + ", play " + length_text(play), play);
      return;
    }
    add("pin-loose", JointResult::finding,
        words + ": play " + length_text(play) + ", at most " + length_text(allowed) + "; a bush of " +
            length_text(hole) + " outside and " + pin->text + " inside fills it" + other_pin(*pin, hole),
        play);
  }

  /// The pin that the hole was likely made for: of the system of this pin, else of the other.
  static std::string other_pin(const EndDimension& pin, Length hole) {
    struct Size {
      const char* name;
      double millimetres;
    };
    static constexpr Size inch[] = {{"3/16 in", 4.7625}, {"1/4 in", 6.35},     {"5/16 in", 7.9375},
                                    {"3/8 in", 9.525},   {"7/16 in", 11.1125}, {"1/2 in", 12.7},
                                    {"5/8 in", 15.875},  {"3/4 in", 19.05}};
    static constexpr Size metric[] = {{"5 mm", 5.0},   {"6 mm", 6.0},   {"8 mm", 8.0},   {"10 mm", 10.0},
                                      {"12 mm", 12.0}, {"14 mm", 14.0}, {"16 mm", 16.0}, {"20 mm", 20.0}};
    const auto fitting = [&](std::span<const Size> sizes) -> const Size* {
      for (const Size& size : sizes)
        if (const double play = hole.millimetres() - size.millimetres; play >= 0.0 && play <= 0.5)
          return &size;
      return nullptr;
    };
    const auto size = parse_named_size(pin.text);
    const bool in_inches = size.ok() && size.value().system == NamedSize::System::inch;
    const Size* own = in_inches ? fitting(inch) : fitting(metric);
    const Size* found = own != nullptr ? own : in_inches ? fitting(metric) : fitting(inch);
    return found == nullptr ? "" : std::string("; the hole is that of a pin of ") + found->name;
  }

  void compare_width(const End& jaw, const End& eye) {
    const EndDimension* gap = stated(jaw, "gap");
    const EndDimension* thickness = stated(eye, "thickness");
    if (gap == nullptr || thickness == nullptr) {
      const std::string what = gap == nullptr ? "the gap of the jaw" : "the thickness of the eye";
      missing("jaw-too-narrow", what);
      missing("jaw-too-wide", what);
      return;
    }
    const Length play = gap->length.value - thickness->length.value;
    const std::string words =
        length_text(thickness->length.value) + " in a jaw of " + length_text(gap->length.value);
    add("jaw-too-narrow", result(play >= Length{}), words, play);
    if (play < Length{})
      return;
    if (const auto most = rig_.limits.length(Limit::side_play))
      add("jaw-too-wide", result(play <= *most),
          words + ": play " + length_text(play) + ", at most " + length_text(*most), play);
    else
      switched_off("jaw-too-wide", Limit::side_play);
  }

  void compare_depth(const End& jaw, const End& eye) {
    const EndDimension* depth = stated(jaw, "depth");
    const EndDimension* edge = stated(eye, "edge");
    if (depth == nullptr || edge == nullptr) {
      missing("jaw-too-shallow", depth == nullptr ? "the depth of the jaw" : "the edge of the eye");
      return;
    }
    const Length room = depth->length.value - edge->length.value;
    add("jaw-too-shallow", result(room >= Length{}),
        length_text(edge->length.value) + " from the hole to the end of the plate in a jaw " +
            length_text(depth->length.value) + " deep",
        room);
  }

  void compare_edge(const End& eye) {
    const EndDimension* edge = stated(eye, "edge");
    const EndDimension* hole = stated(eye, "hole");
    if (edge == nullptr || hole == nullptr) {
      missing("hole-near-edge", edge == nullptr ? "the edge of the eye" : "the hole of the eye");
      return;
    }
    const double ratio = edge->length.value / hole->length.value;
    add_ratio("hole-near-edge", ratio, Limit::edge_usual, Limit::edge_least,
              "edge " + length_text(edge->length.value) + " from a hole of " +
                  length_text(hole->length.value) + ", " + format_fixed(ratio, 2) + " diameters");
  }

  void compare_thread(const End& stud, const End& socket) {
    const EndDimension* outside = stated(stud, "thread");
    const EndDimension* inside = stated(socket, "thread");
    if (outside == nullptr || inside == nullptr)
      missing("thread-differs", outside == nullptr ? "the thread of the stud" : "the thread of the socket");
    else
      add("thread-differs", result(outside->text == inside->text), outside->text + " in " + inside->text);
    const EndDimension* one = stated(stud, "hand");
    const EndDimension* other = stated(socket, "hand");
    if (one == nullptr || other == nullptr)
      missing("hand-differs", one == nullptr ? "the hand of the stud" : "the hand of the socket");
    else
      add("hand-differs", result(one->text == other->text),
          "a " + one->text + "-handed stud in a " + other->text + "-handed socket");
  }

  const LineMaterial& line() const {
    const StackItem& item = stay_.stack[upper_end(rig_, joint_) == nullptr ? joint_.upper : joint_.lower];
    return rig_[item.material.value_or(stay_.material)];
  }

  void compare_with_line(const End& end) {
    const LineMaterial& material = line();
    if (!end.stated()) {
      add("ends", JointResult::not_checked, "the end that takes the line is not stated");
      return;
    }
    const bool chain = material.kind == LineMaterial::Kind::chain;
    if (end.type == "wire-socket" && material.kind != LineMaterial::Kind::rope && !chain)
      compare_socket(end, material);
    else if (end.type == "rope-seat" && material.kind == LineMaterial::Kind::rope)
      compare_seat(end, material);
    else
      add("ends", JointResult::not_checked,
          "a " + std::string(name_of(material.kind)) + " at a " + end.type);
  }

  void compare_socket(const End& socket, const LineMaterial& material) {
    const EndDimension* size = stated(socket, "size");
    const auto made_for = size == nullptr ? std::nullopt : named(size->text);
    if (!made_for)
      missing("wire-size-differs", "the size of the wire-socket");
    else
      add("wire-size-differs", result(same_size(*made_for, material.size)),
          "wire " + material.size.name + " in a terminal for " + made_for->name,
          material.size.diameter - made_for->diameter);
    const EndDimension* construction = stated(socket, "construction");
    if (construction == nullptr)
      missing("wire-construction-differs", "the construction of the wire-socket");
    else
      add("wire-construction-differs", result(construction->text == material.construction),
          material.name + ", " + material.construction + ", in a terminal for " + construction->text);
  }

  static std::optional<NamedSize> named(const std::string& text) {
    auto size = parse_named_size(text);
    return size.ok() ? std::optional(size.value()) : std::nullopt;
  }

  void compare_seat(const End& seat, const LineMaterial& material) {
    const Length rope = material.diameter.value;
    const EndDimension* width = stated(seat, "width");
    if (width == nullptr)
      missing("seat-too-narrow", "the width of the rope-seat");
    else
      add("seat-too-narrow", result(width->length.value >= rope),
          "rope of " + length_text(rope) + " in a groove of " + length_text(width->length.value),
          width->length.value - rope);
    const EndDimension* diameter = stated(seat, "diameter");
    if (diameter == nullptr) {
      missing("seat-too-small", "the diameter of the rope-seat");
      return;
    }
    const double ratio = diameter->length.value / rope;
    add_ratio("seat-too-small", ratio, Limit::seat_usual, Limit::seat_least,
              "seat of " + length_text(diameter->length.value) + ", " + format_fixed(ratio, 2) +
                  " times the rope");
  }

  const Rig& rig_;
  const Stay& stay_;
  Joint& joint_;
};

} // namespace

void compare_joint(const Rig& rig, Joint& joint) {
  Comparison(rig, joint).run();
}

} // namespace sheerpole
