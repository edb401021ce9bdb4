#pragma once

#include "model/field.hpp"
#include "model/ids.hpp"
#include "model/line_material.hpp"
#include "model/part.hpp"
#include "model/particular.hpp"
#include "model/point.hpp"
#include "model/reading.hpp"
#include "model/splice.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// How the line goes through a point of its path.
enum class Passage { end, free, clamped };

constexpr std::string_view name_of(Passage passage) {
  switch (passage) {
  case Passage::end:
    return "end";
  case Passage::free:
    return "free";
  case Passage::clamped:
    return "clamped";
  }
  return "end";
}

struct PathStop {
  PointId point;
  Passage passage = Passage::end; ///< `end` at the first and last stop
  Span place;
};

constexpr auto fields_of(const PathStop*) {
  using enum FieldRole;
  return std::tuple(field("point", "", &PathStop::point, geometry),
                    field("passage", "", &PathStop::passage, geometry),
                    field("place", "", &PathStop::place, identity));
}
static_assert(all_members_are_listed<PathStop>());

/// One line of the stack, from aloft to deck.
struct StackItem {
  enum class Kind { part, line };
  Kind kind = Kind::part;
  PartId part;                               ///< for a part
  int count = 1;                             ///< for a part: that many in a row
  std::optional<Sourced<Length>> set_length; ///< adjuster: its length as set
  std::optional<Sourced<double>> open; ///< adjuster: when the setting was written as a share of the range
  std::optional<int> passes;           ///< lashing
  std::optional<SpliceId> splice;      ///< part that takes a rope
  std::optional<Sourced<Length>> spare_bury;         ///< rope kept in the splice for a later length
  std::optional<Sourced<Length>> line_length;        ///< line item with a length of its own
  std::optional<MaterialId> material = std::nullopt; ///< line item of another material than the stay's
  std::optional<int> hole = std::nullopt;            ///< hole-adjuster: the hole it is pinned in, from 1
  /// Line item: what there is to make this piece of, from end to end.
  std::optional<Sourced<Length>> in_hand = std::nullopt;
  /// Line item: the same, stated as what is left beyond the least cut; for a cut that is X.
  std::optional<Sourced<Length>> in_hand_over = std::nullopt;
  std::string stock = {};    ///< line item: the record of stock that this piece is made of
  bool removable = false;    ///< part: may be left out to make the stay shorter
  Span removable_place = {}; ///< part: where that is stated
  Span stock_place = {};     ///< line item: where its stock is named
  Span place;
};

constexpr auto fields_of(const StackItem*) {
  using enum FieldRole;
  return std::tuple(field("kind", "", &StackItem::kind, identity),
                    field("part", "", &StackItem::part, geometry),
                    field("count", "", &StackItem::count, geometry),
                    field("line_length", "length", &StackItem::line_length, geometry),
                    field("set_length", "length", &StackItem::set_length, geometry),
                    field("open", "open", &StackItem::open, geometry),
                    field("material", "material", &StackItem::material, geometry),
                    field("hole", "hole", &StackItem::hole, geometry),
                    field("passes", "passes", &StackItem::passes, geometry),
                    field("splice", "splice", &StackItem::splice, geometry),
                    field("spare_bury", "spare-bury", &StackItem::spare_bury, geometry),
                    field("in_hand", "in-hand", &StackItem::in_hand, geometry),
                    field("in_hand_over", "in-hand-over", &StackItem::in_hand_over, geometry),
                    field("stock", "stock", &StackItem::stock, geometry),
                    field("removable", "removable", &StackItem::removable, geometry),
                    field("removable_place", "", &StackItem::removable_place, identity),
                    field("stock_place", "", &StackItem::stock_place, identity),
                    field("place", "", &StackItem::place, identity));
}
static_assert(all_members_are_listed<StackItem>());

/// One line of load from end to end, on one side of the boat.
struct Stay {
  std::string name; ///< `cap-shroud.port`; a centre-line stay has no suffix
  std::string base; ///< `cap-shroud`
  std::string title;
  Side side = Side::centre;
  std::vector<PathStop> path; ///< empty when the file gives none
  std::optional<Sourced<Length>> stated_pin_to_pin;
  std::vector<Reading> readings;
  MaterialId material;
  std::vector<StackItem> stack;
  std::vector<std::string> duties = {};     ///< words of the table of kinds
  std::vector<Particular> particulars = {}; ///< the rest of what is stated
  std::vector<std::string> trials = {};     ///< what of it is set on the command line: `line of forestay`
  std::optional<MaterialId> replaces = std::nullopt; ///< the line that hung here before
  bool apart = false;                                ///< this side was stated apart from the other
  Span place;                                        ///< its name in the declaration
  Span stack_place;                                  ///< the word `stack`
};

constexpr auto fields_of(const Stay*) {
  using enum FieldRole;
  return std::tuple(
      field("name", "", &Stay::name, identity), field("title", "", &Stay::title, identity),
      field("base", "", &Stay::base, identity), field("side", "sides", &Stay::side, identity),
      field("material", "line", &Stay::material, geometry),
      field("replaces", "", &Stay::replaces, evidence), field("apart", "", &Stay::apart, identity),
      field("duties", "duty", &Stay::duties, evidence),
      field("particulars", "", &Stay::particulars, geometry), field("path", "path", &Stay::path, geometry),
      field("stated_pin_to_pin", "pin-to-pin", &Stay::stated_pin_to_pin, geometry),
      field("readings", "", &Stay::readings, geometry), field("stack", "", &Stay::stack, geometry),
      field("trials", "", &Stay::trials, identity), field("place", "", &Stay::place, identity),
      field("stack_place", "", &Stay::stack_place, identity));
}
static_assert(all_members_are_listed<Stay>());

} // namespace sheerpole
