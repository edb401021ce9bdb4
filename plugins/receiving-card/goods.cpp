#include "plugins/receiving-card/goods.hpp"

#include "backend/order/order_items.hpp"
#include "calculate/facts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace sheerpole {

namespace {

using Names = std::span<const std::string_view>;

/// What is compared of an end whether the file states it or not: what decides if it fits.
Names always_compared(const std::string& end) {
  static constexpr std::array<std::string_view, 2> jaw{"pin", "gap"};
  static constexpr std::array<std::string_view, 2> eye{"hole", "thickness"};
  static constexpr std::array<std::string_view, 2> thread{"thread", "hand"};
  static constexpr std::array<std::string_view, 2> seat{"diameter", "width"};
  static constexpr std::array<std::string_view, 2> socket{"size", "inserted"};
  static constexpr std::array<std::string_view, 1> hook{"opening"};
  if (end == "jaw")
    return jaw;
  if (end == "eye")
    return eye;
  if (end == "stud" || end == "socket")
    return thread;
  if (end == "rope-seat")
    return seat;
  if (end == "wire-socket")
    return socket;
  return end == "hook" ? Names(hook) : Names();
}

class Describing {
public:
  explicit Describing(const CheckedRig& checked) : rig_(checked.rig()), unit_(card_unit(rig_)) {}

  Goods line(const OrderItem& item) const {
    const LineMaterial& line = named_line(item.name);
    Goods goods{
        .name = item.name, .what = line.construction.text, .line = true, .rows = {}, .notes = item.notes};
    add(goods, "label: construction", line.construction.text);
    add(goods, "label: size", line.size.name);
    if (line.kind != LineMaterial::Kind::rope)
      add(goods, "label: grade", line.grade);
    add(goods, line.kind == LineMaterial::Kind::rope ? "label: break load, spliced" : "label: break load",
        line.break_load ? format_fixed(line.break_load->value.kilonewtons(), 1) + " kN" : "");
    add(goods, "label: batch", fact_text(line.particulars, "batch"));
    for (const char* place : {"first", "second", "third"})
      add(goods, fmt::format("diameter, {} place, pulled by hand", place),
          gauge_text(unit_, line.diameter.value));
    add(goods, "length on the spool or coil", "at least " + length_in_metres_or_feet(item));
    return goods;
  }

  Goods part(const OrderItem& item) const {
    const Part& part = named_part(item.name);
    Goods goods{.name = item.name,
                .what = part.title.empty() ? part.kind : part.title,
                .line = false,
                .rows = {},
                .notes = item.notes};
    add(goods, "count",
        std::to_string(item.to_order()) +
            (item.in_hand > 0 ? fmt::format(" ({} needed, {} in hand)", item.needed, item.in_hand) : ""));
    add_sizes(goods, part);
    add_end(goods, "upper end", part.upper);
    add_end(goods, "lower end", part.lower);
    if (part.role != Part::Role::worn && !part.upper.stated() && !part.lower.stated())
      add(goods, "its ends: pin, gap, hole", "");
    if (part.screw) {
      add(goods, "thread", part.screw->thread.designation);
      add(goods, "hands of the thread", part.screw->pair ? "right and left" : "one");
    }
    for (const char* text : {"size", "metal", "batch"})
      if (const std::string stated = fact_text(part.particulars, text);
          !stated.empty() || std::string_view(text) == "batch")
        add(goods, text, stated);
    return goods;
  }

private:
  static void add(Goods& goods, std::string what, std::string wanted) {
    goods.rows.push_back({std::move(what), std::move(wanted)});
  }

  void add_sizes(Goods& goods, const Part& part) const {
    if (part.length && part.kind != "bush" && part.kind != "pin")
      add(goods, "length, bearing to bearing", gauge_text(unit_, part.length->value));
    if (part.shortest)
      add(goods, "shortest, closed", gauge_text(unit_, part.shortest->value));
    if (part.longest)
      add(goods, "longest, at the last thread or hole", gauge_text(unit_, part.longest->value));
  }

  void add_end(Goods& goods, const char* where, const End& end) const {
    if (!end.stated())
      return;
    const std::string lead = fmt::format("{}, {}: ", where, end.type);
    const Names always = always_compared(end.type);
    for (const std::string_view name : always) {
      const EndDimension* dimension = end.find(name);
      add(goods, lead + std::string(name), dimension == nullptr ? "" : dimension_text(*dimension));
    }
    for (const EndDimension& dimension : end.dimensions)
      if (std::find(always.begin(), always.end(), dimension.name) == always.end())
        add(goods, lead + dimension.name, dimension_text(dimension));
  }

  std::string dimension_text(const EndDimension& dimension) const {
    return dimension.text.empty() ? gauge_text(unit_, dimension.length.value) : dimension.text;
  }

  /// To the next tenth of a metre, or foot: less would be short.
  std::string length_in_metres_or_feet(const OrderItem& item) const {
    if (unit_.kind == CardUnit::Kind::millimetres)
      return amount_text(item, item.to_order());
    const Length length = Length::millimetres(100.0 * static_cast<double>(item.to_order()));
    return format_fixed(std::ceil(length.inches() / 12.0 - 1e-6), 0) + " ft";
  }

  const LineMaterial& named_line(const std::string& name) const {
    return *std::find_if(rig_.materials.begin(), rig_.materials.end(),
                         [&](const LineMaterial& one) { return one.name == name; });
  }
  const Part& named_part(const std::string& name) const {
    return *std::find_if(rig_.parts.begin(), rig_.parts.end(),
                         [&](const Part& one) { return one.name == name; });
  }

  const Rig& rig_;
  CardUnit unit_;
};

std::string without_idle_zeros(std::string text) {
  text.erase(text.find_last_not_of('0') + 1);
  if (text.ends_with('.'))
    text.pop_back();
  return text;
}

} // namespace

std::string gauge_text(const CardUnit& unit, Length length) {
  if (unit.kind == CardUnit::Kind::millimetres)
    return without_idle_zeros(format_millimetres(length, 2)) + " mm";
  return format_fixed(length.inches(), 3) + '"';
}

std::vector<Goods> goods(const CheckedRig& checked) {
  const Describing describing(checked);
  std::vector<Goods> lines;
  std::vector<Goods> parts;
  for (const OrderItem& item : order_items(checked)) {
    // What is X has no amount yet and comes in all the same.
    if (item.to_order() == 0 && item.needed > 0)
      continue;
    if (item.in_metres)
      lines.push_back(describing.line(item));
    else if (item.group == "Hardware")
      parts.push_back(describing.part(item));
  }
  lines.insert(lines.end(), std::make_move_iterator(parts.begin()), std::make_move_iterator(parts.end()));
  return lines;
}

} // namespace sheerpole
