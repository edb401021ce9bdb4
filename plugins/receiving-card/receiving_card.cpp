#include "plugins/receiving-card/receiving_card.hpp"

#include "backend/order/order_items.hpp"
#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace sheerpole {

namespace {

using Names = std::span<const EndDimensionName>;

/// What is compared of an end whether the file states it or not: what decides if it fits.
Names always_compared(EndType end) {
  using enum EndDimensionName;
  static constexpr std::array of_jaw{pin, gap};
  static constexpr std::array of_eye{hole, thickness};
  static constexpr std::array of_thread{thread, hand};
  static constexpr std::array of_seat{diameter, width};
  static constexpr std::array of_wire_socket{size, inserted};
  static constexpr std::array of_hook{opening};
  if (end == EndType::jaw)
    return of_jaw;
  if (end == EndType::eye)
    return of_eye;
  if (end == EndType::stud || end == EndType::socket)
    return of_thread;
  if (end == EndType::rope_seat)
    return of_seat;
  if (end == EndType::wire_socket)
    return of_wire_socket;
  return end == EndType::hook ? Names(of_hook) : Names();
}

class Describing {
public:
  explicit Describing(const CheckedRig& checked) : rig_(checked.rig()), unit_(card_unit(rig_)) {}

  Goods line(const OrderItem& item) const {
    const LineMaterial& line = named_line(item.name);
    Goods goods{.name = item.name, .what = line.construction.text, .line = true, .notes = item.notes};
    // One unit on a card: how much of it is for what is an order's, in metres.
    if (unit_.kind != CardUnit::Kind::millimetres && !goods.notes.empty())
      goods.notes = {"What the length is made up of stands on the order list"};
    add(goods, "label: construction", line.construction.text);
    add(goods, "label: size", line.size.name);
    if (line.kind != LineMaterial::Kind::rope)
      add(goods, "label: grade", line.grade);
    add(goods, line.kind == LineMaterial::Kind::rope ? "label: break load, spliced" : "label: break load",
        line.break_load ? format_fixed(line.break_load->value.kilonewtons(), 1) + " kN" : "");
    add(goods, "label: batch", fact_text(line.particulars, fact_names.batch));
    for (const char* place : {"first", "second", "third"})
      add(goods, fmt::format("diameter, {} place, pulled by hand", place),
          gauge_text(unit_, line.diameter.value));
    add(goods, "length on the spool or coil", "at least " + length_in_metres_or_feet(item));
    return goods;
  }

  Goods part(const OrderItem& item) const {
    Goods goods{.name = item.name, .what = item.what, .line = false, .notes = item.notes};
    add(goods, "count",
        std::to_string(item.to_order()) +
            (item.in_hand > 0 ? fmt::format(" ({} needed, {} in hand)", item.needed, item.in_hand) : ""));
    for (const PartId id : item.parts)
      add_part(goods, rig_[id], item.parts.size() == 1 ? "" : rig_[id].name + ", ");
    return goods;
  }

private:
  /// `of` leads each row where one plate is several parts of the file.
  void add_part(Goods& goods, const Part& part, const std::string& of) const {
    add_sizes(goods, part, of);
    add_end(goods, of + "upper end", part.upper);
    add_end(goods, of + "lower end", part.lower);
    if (part.role != Part::Role::worn && !part.upper.stated() && !part.lower.stated())
      add(goods, of + "its ends: pin, gap, hole", "");
    if (part.screw) {
      add(goods, of + "thread", part.screw->thread.designation);
      add(goods, of + "hands of the thread", part.screw->pair ? "right and left" : "one");
    }
    for (const char* text : {"size", "metal", "batch"})
      if (const std::string stated = fact_text(part.particulars, text);
          !stated.empty() || std::string_view(text) == "batch")
        add(goods, of + text, stated);
  }

  static void add(Goods& goods, std::string what, std::string wanted) {
    goods.rows.push_back({std::move(what), std::move(wanted)});
  }

  void add_sizes(Goods& goods, const Part& part, const std::string& of) const {
    if (part.length && part.kind != PartKind::bush && part.kind != PartKind::pin)
      add(goods, of + "length, bearing to bearing", gauge_text(unit_, part.length->value));
    if (part.shortest)
      add(goods, of + "shortest, closed", gauge_text(unit_, part.shortest->value));
    if (part.longest)
      add(goods, of + "longest, at the last thread or hole", gauge_text(unit_, part.longest->value));
  }

  void add_end(Goods& goods, const std::string& where, const End& end) const {
    if (!end.stated())
      return;
    const std::string lead = fmt::format("{}, {}: ", where, name_of(end.type));
    const Names always = always_compared(end.type);
    for (const EndDimensionName name : always) {
      const EndDimension* dimension = end.find(name);
      add(goods, lead + std::string(name_of(name)), dimension == nullptr ? "" : dimension_text(*dimension));
    }
    for (const EndDimension& dimension : end.dimensions)
      if (std::find(always.begin(), always.end(), dimension.name) == always.end())
        add(goods, lead + std::string(name_of(dimension.name)), dimension_text(dimension));
  }

  std::string dimension_text(const EndDimension& dimension) const {
    return dimension.text.empty() ? gauge_text(unit_, dimension.length.value) : dimension.text;
  }

  /// To the next tenth of a metre, or foot: less would be short.
  std::string length_in_metres_or_feet(const OrderItem& item) const {
    if (unit_.kind == CardUnit::Kind::millimetres || !item.open.empty())
      return to_order_text(item);
    const Length length = Length::millimetres(100.0 * static_cast<double>(item.to_order()));
    return format_fixed(std::ceil(length.inches() / 12.0 - 1e-6), 0) + " ft";
  }

  const LineMaterial& named_line(const std::string& name) const {
    return *std::find_if(rig_.materials.begin(), rig_.materials.end(),
                         [&](const LineMaterial& one) { return one.name == name; });
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

constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};
constexpr TextLook plain{.size = 3.2, .bold = false, .indent = 0.0};

void add_head(const std::string& boat, const CardUnit& unit, PageFlow& page) {
  page.text("RECEIVING CARD   " + boat, {.size = 6.5, .bold = true, .indent = 0.0});
  page.text("Measure what came in before it is paid for, cut into or fitted. A dash stands where the rig "
            "file does "
            "not say what is wanted: write down what you find, and put it into the file.",
            plain);
  const bool metric = unit.kind == CardUnit::Kind::millimetres;
  page.text(
      std::string(metric ? "Lengths are in millimetres" : "Lengths are in inches and decimals") +
          ", as callipers read them; sizes are the names by which things are sold. An inch size and a "
          "metric size that look alike are two things.",
      small);
  page.notice(
      "A coil of wire springs open when its bands are cut, and its ends cut hands: gloves, goggles, "
      "one band at a time, and hold both ends.",
      {.size = 3.2, .bold = true, .indent = 0.0});
  page.to_write("From, invoice, day:", plain);
}

void add_goods(const Goods& one, PageFlow& page) {
  // What belongs together stays on one sheet where it can: about so much a row, and the lines around them.
  page.room_for(std::min(170.0, 26.0 + 6.5 * static_cast<double>(one.rows.size())));
  page.heading(one.name + led_by(": ", one.what), 3.8);
  FlowTable table{.columns = {{"what", 4.4}, {"wanted", 2.9}, {"found", 2.6}, {"ok", 0.6}, {"not ok", 0.9}},
                  .size = 3.0,
                  .gutter = card_gutter};
  for (const GoodsRow& row : one.rows)
    table.rows.push_back({{.text = row.what},
                          {.text = row.wanted.empty() ? "-" : row.wanted, .bold = true},
                          cell_to_write,
                          cell_to_tick,
                          cell_to_tick});
  page.table(table);
  for (const std::string& note : one.notes)
    page.text(note + ".", small);
  page.tick(one.line
                ? "Looked over from end to end: no kink, no broken wire or strand, no rust, no chafe."
                : "Looked over: no crack, no dent, no burr in holes and threads; a screw turns by hand "
                  "over all its length.",
            small);
  page.to_write("Batch, number on it, invoice:", small);
}

std::vector<std::string> draft_lines_of(const CheckedRig& checked, const std::vector<Goods>& all) {
  bool any_line = false;
  for (const Goods& one : all)
    any_line = any_line || one.line;
  if (!any_line || checked.draft_reasons().empty())
    return {};
  return {waiting_words(checked)};
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
    if (item.nothing_to_order())
      continue;
    if (item.in_metres)
      lines.push_back(describing.line(item));
    else if (item.group == "Hardware")
      parts.push_back(describing.part(item));
  }
  lines.insert(lines.end(), std::make_move_iterator(parts.begin()), std::make_move_iterator(parts.end()));
  return lines;
}

std::vector<Drawing> goods_pages(const CheckedRig& checked, const std::string& boat, PaperSize size) {
  const std::vector<Goods> all = goods(checked);
  PageFlow page(
      size,
      {.name = "Receiving card", .about = identity_words(checked), .draft = draft_lines_of(checked, all)});
  add_head(boat, card_unit(checked.rig()), page);
  for (const Goods& one : all)
    add_goods(one, page);
  if (all.empty())
    page.text("The rig file states nothing that is to come in.");
  page.space(2.0);
  page.to_write("Received by, day:", plain);
  page.to_write("Measured a second time by, day:", plain);
  page.text(
      "This card follows from the rig file and nothing else. Nobody has judged whether what was ordered "
      "is strong enough: local rules and a licensed professional rigger come before it. What is not ok "
      "is not fitted.",
      {.size = 2.8, .bold = false, .indent = 0.0});
  return page.pages("Receiving card of " + boat,
                    "What comes in for the rig, held against what the rig file asks for.");
}

ReceivingCard::ReceivingCard()
    : PagesBackend(
          {"receiving-card", "receiving-card", "Receiving card",
           "what comes in against what the file asks for: sizes, threads, counts, boxes to tick"}) {}

std::vector<Drawing> ReceivingCard::pages(const BackendRequest& request, const std::string& boat) const {
  return goods_pages(request.checked, boat, request.paper);
}

} // namespace sheerpole
