#include "backend/diagram/strips/strip_content.hpp"

#include "backend/printed_sums.hpp"
#include "backend/tenths.hpp"
#include "calculate/length/body.hpp"
#include "model/kind_words.hpp"
#include "units/format_length.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/diagram_words.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

/// A distance along the stay that may hold the unknown X, or be lost because a part has no length.
struct RunningDistance {
  bool unknown = false;
  bool lost = false;
  Length known;

  std::string text() const { return lost ? "?" : printed_distance(unknown, known); }
};

std::string turns_text(Length travel, const std::optional<Length>& per_turn) {
  if (!per_turn || per_turn->si() <= 0.0)
    return "";
  return say(DiagramPhrase::turns, format_fixed(travel / *per_turn, 1));
}

std::string tighten_left(Length travel, const std::optional<Length>& per_turn) {
  if (travel.si() < 0.0)
    return say(DiagramPhrase::cannot_tighten, format_millimetres(-travel));
  return say(DiagramPhrase::tighten_mm, format_millimetres(travel), turns_text(travel, per_turn));
}

std::string slacken_left(Length travel, const std::optional<Length>& per_turn) {
  if (travel.si() < 0.0)
    return say(DiagramPhrase::cannot_slacken, format_millimetres(-travel));
  return say(DiagramPhrase::slacken_mm, format_millimetres(travel), turns_text(travel, per_turn));
}

StripAdjuster adjuster_of(const TakeUp& take_up) {
  const Length range = take_up.to_tighten + take_up.to_slacken;
  StripAdjuster adjuster;
  adjuster.share = range.si() > 0.0 ? std::clamp(take_up.to_tighten / range, 0.0, 1.0) : 0.0;
  adjuster.shortest = format_millimetres(take_up.set.value - take_up.to_tighten);
  adjuster.longest = format_millimetres(take_up.set.value + take_up.to_slacken);
  adjuster.tighten = tighten_left(take_up.to_tighten, take_up.travel_per_turn);
  adjuster.slacken = slacken_left(take_up.to_slacken, take_up.travel_per_turn);
  return adjuster;
}

/// A line and a lashing are not joined by a pin, nor is a bar with the plate that it hangs behind, nor a
/// rope that lies round a spar.
bool are_pinned(const StripCell& above, const StripCell& below) {
  if (above.look.tee || below.look.tee || above.kind == PartKind::soft_eye ||
      below.kind == PartKind::soft_eye)
    return false;
  return !above.line && !below.line && above.kind != PartKind::lashing && below.kind != PartKind::lashing;
}

class StripReader {
public:
  StripReader(const CheckedRig& checked, const DerivedStay& derived)
      : checked_(checked), rig_(checked.rig()), derived_(derived), stay_(rig_[derived.stay]) {}

  /// Without its side, so that both sides of a pair read alike.
  std::string end_of_path(const PathStop& stop) const {
    Point point = rig_[stop.point];
    point.side = Side::centre;
    return place_words(rig_, point);
  }

  Strip read() {
    strip_.name = stay_.name;
    strip_.title = titled(rig_, stay_);
    if (stay_.side != Side::centre)
      strip_.sides = name_of(stay_.side);
    strip_.pin_to_pin = printed_sum(derived_.pin_to_pin);
    const LineMaterial& material = rig_[stay_.material];
    strip_.summary = say(DiagramPhrase::body_mm, printed_sum(derived_.body), material.construction.text,
                         material.size.name);
    if (derived_.pin_to_pin.unknown)
      strip_.summary += say(DiagramPhrase::x_stay, note_words(derived_.pin_to_pin.unknown_source).empty()
                                                       ? say(DiagramPhrase::length_not_known_yet)
                                                       : note_words(derived_.pin_to_pin.unknown_source));
    strip_.upper_end = end_word(rig_, stay_, WhichEnd::upper);
    strip_.lower_end = end_word(rig_, stay_, WhichEnd::lower);
    if (stay_.path.size() >= 2)
      strip_.summary +=
          say(DiagramPhrase::from, end_of_path(stay_.path.front()), end_of_path(stay_.path.back()));
    for (const Piece& piece : derived_.pieces)
      strip_.draft = strip_.draft || !checked_.draft_reasons(piece).empty();
    for (std::size_t i = 0; i < stay_.stack.size(); ++i)
      read_item(i);
    // Boat fittings lie outside the pins; the outer side of one has no distance.
    strip_.distances.push_back(
        !strip_.cells.empty() && strip_.cells.back().boat_fitting ? "" : distance_.text());
    return std::move(strip_);
  }

private:
  const CheckedRig& checked_;
  const Rig& rig_;
  const DerivedStay& derived_;
  const Stay& stay_;
  Strip strip_;
  RunningDistance distance_;
  std::size_t pieces_ = 0;

  void read_item(std::size_t index) {
    const StackItem& item = stay_.stack[index];
    StripCell cell = item.kind == StackItem::Kind::line ? line_cell() : part_cell(item, index);
    cell.pinned_above = index > 0 && are_pinned(strip_.cells.back(), cell);
    const bool before_upper_pin = cell.boat_fitting && index == 0;
    strip_.distances.push_back(before_upper_pin ? "" : distance_before_);
    strip_.cells.push_back(std::move(cell));
    distance_before_ = distance_.text();
  }

  std::string distance_before_ = "0";

  StripCell line_cell() {
    StripCell cell;
    cell.line = true;
    cell.line_kind =
        rig_[pieces_ < derived_.pieces.size() ? derived_.pieces[pieces_].material : stay_.material].kind;
    if (pieces_ >= derived_.pieces.size()) {
      cell.length = say(DiagramPhrase::length_not_known);
      distance_.lost = true;
      return cell;
    }
    const Piece& piece = derived_.pieces[pieces_++];
    cell.title =
        piece.of > 1 ? say(DiagramPhrase::body_of, piece.number, piece.of) : say(DiagramPhrase::body);
    cell.length = printed_sum(piece.body) + " mm";
    distance_.unknown = distance_.unknown || piece.body.unknown;
    distance_.known += printed_total(piece.body).length();
    return cell;
  }

  StripCell part_cell(const StackItem& item, std::size_t index) {
    const Part& part = rig_[item.part];
    StripCell cell;
    cell.kind = part.kind;
    cell.look = look_of(part, item);
    cell.count = std::max(item.count, 1);
    cell.title = part.title.empty() ? part.name : part.title;
    if (part.role == Part::Role::boat_fitting) {
      cell.boat_fitting = true;
      return cell;
    }
    if (part.role == Part::Role::worn) {
      cell.length = say(DiagramPhrase::adds_no_length);
      return cell;
    }
    for (const TakeUp& take_up : derived_.adjusters)
      if (take_up.item == index)
        cell.adjuster = adjuster_of(take_up);
    const std::optional<Length> taken = taken_length(rig_, item);
    if (!taken) {
      cell.length = say(DiagramPhrase::length_not_stated);
      distance_.lost = true;
      return cell;
    }
    const Length whole = *taken;
    const Length one = whole / static_cast<double>(cell.count);
    cell.length = cell.count == 1
                      ? printed_part(whole) + " mm"
                      : say(DiagramPhrase::x_mm, cell.count, printed_part(one), printed_part(whole));
    if (part.role == Part::Role::adjuster)
      cell.length = say(DiagramPhrase::set_to, cell.length);
    distance_.known += Tenths::of(whole).length();
    return cell;
  }
};

bool print_the_same(const Strip& a, const Strip& b) {
  return a.title == b.title && a.summary == b.summary && a.pin_to_pin == b.pin_to_pin &&
         a.draft == b.draft && a.cells == b.cells && a.distances == b.distances;
}

} // namespace

std::string printed_distance(bool unknown, Length known) {
  const std::string number = format_millimetres(known);
  const bool negative = number.front() == '-';
  return with_x(unknown,
                negative        ? -1
                : number == "0" ? 0
                                : 1,
                in_threes(negative ? number.substr(1) : number));
}

std::string printed_sum(const LengthSum& sum) {
  return printed_distance(sum.unknown, printed_total(sum).length());
}

std::string printed_part(Length length) {
  const double millimetres = length.millimetres();
  const bool whole = std::abs(millimetres - std::round(millimetres)) < 0.05;
  return in_threes(format_millimetres(length, whole ? 0 : 1));
}

std::vector<Strip> strip_contents(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  std::vector<Strip> strips;
  std::vector<const Stay*> of; // the stay of each strip
  for (const DerivedStay& derived : checked.derived().stays) {
    const Stay& stay = rig[derived.stay];
    Strip strip = StripReader(checked, derived).read();
    bool alike = false;
    for (std::size_t i = 0; i < strips.size() && !alike; ++i)
      if (of[i]->base == stay.base && of[i]->side != stay.side && print_the_same(strips[i], strip)) {
        strips[i].name = stay.base;
        strips[i].sides = say(DiagramPhrase::port_starboard_alike);
        alike = true;
      }
    if (alike)
      continue;
    strips.push_back(std::move(strip));
    of.push_back(&stay);
  }
  return strips;
}

} // namespace sheerpole
