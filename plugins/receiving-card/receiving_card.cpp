#include "plugins/receiving-card/receiving_card.hpp"

#include "backend/order/order_items.hpp"
#include "backend/paper_words.hpp"
#include "calculate/cut/end_use.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "wording/papers/receiving_card_words.hpp"

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
      goods.notes = {say(ReceivingCardPhrase::what_length_is_made_up)};
    add(goods, say(ReceivingCardPhrase::label_construction), line.construction.text);
    add(goods, say(ReceivingCardPhrase::label_size), line.size.name);
    if (line.kind != LineMaterial::Kind::rope)
      add(goods, say(ReceivingCardPhrase::label_grade), line.grade);
    add(goods,
        line.kind == LineMaterial::Kind::rope ? say(ReceivingCardPhrase::label_break_load_spliced)
                                              : say(ReceivingCardPhrase::label_break_load),
        line.break_load ? format_fixed(line.break_load->value.kilonewtons(), 1) + " kN" : "");
    add(goods, say(ReceivingCardPhrase::label_batch), fact_text(line.particulars, fact_names.batch));
    for (const PhraseText place : {say(ReceivingCardPhrase::first), say(ReceivingCardPhrase::second),
                                   say(ReceivingCardPhrase::third)})
      add(goods, say(ReceivingCardPhrase::diameter_place_pulled_by_hand, place),
          gauge_text(unit_, line.diameter.value));
    add(goods, say(ReceivingCardPhrase::length_on_spool_or_coil),
        say(ReceivingCardPhrase::at_least, length_in_metres_or_feet(item)));
    return goods;
  }

  Goods part(const OrderItem& item) const {
    Goods goods{.name = item.name, .what = item.what, .line = false, .notes = item.notes};
    add(goods, say(ReceivingCardPhrase::count),
        std::to_string(item.to_order()) +
            (item.in_hand > 0 ? say(ReceivingCardPhrase::needed_in_hand, item.needed, item.in_hand) : ""));
    for (const PartId id : item.parts)
      add_part(goods, rig_[id], item.parts.size() == 1 ? "" : rig_[id].name + ", ");
    return goods;
  }

private:
  /// `of` leads each row where one plate is several parts of the file.
  void add_part(Goods& goods, const Part& part, const std::string& of) const {
    add_sizes(goods, part, of);
    add_end(goods, say(ReceivingCardPhrase::upper_end, of), part, part.upper);
    add_end(goods, say(ReceivingCardPhrase::lower_end, of), part, part.lower);
    if (part.role != Part::Role::worn && !part.upper.stated() && !part.lower.stated())
      add(goods, say(ReceivingCardPhrase::its_ends_pin_gap_hole, of), "");
    if (part.screw) {
      goods.turns = true;
      add(goods, say(ReceivingCardPhrase::thread_of, of), part.screw->thread.designation);
      add(goods, say(ReceivingCardPhrase::hands_thread, of),
          part.screw->pair ? say(ReceivingCardPhrase::right_and_left) : say(ReceivingCardPhrase::one));
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
      add(goods, say(ReceivingCardPhrase::length_bearing_to_bearing, of),
          gauge_text(unit_, part.length->value));
    if (part.shortest)
      add(goods,
          say(part.kind == PartKind::lashing ? ReceivingCardPhrase::shortest_hauled_up
                                             : ReceivingCardPhrase::shortest_closed,
              of),
          gauge_text(unit_, part.shortest->value));
    if (part.longest)
      add(goods,
          say(part.kind == PartKind::lashing ? ReceivingCardPhrase::longest_let_out
                                             : ReceivingCardPhrase::longest_at_last_thread_or,
              of),
          gauge_text(unit_, part.longest->value));
  }

  void add_end(Goods& goods, const std::string& where, const Part& part, const End& end) const {
    if (!end.stated())
      return;
    const std::string lead = fmt::format("{}, {}: ", where, name_of(end.type));
    const Names always = always_compared(end.type);
    for (const EndDimensionName name : always) {
      // What an eye uses is of the wire that is laid round it, and cannot be measured on the part.
      if (name == EndDimensionName::inserted && wire_end(part.kind) != WireEnd::terminal)
        continue;
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
    return say(ReceivingCardPhrase::ft, format_fixed(std::ceil(length.inches() / 12.0 - 1e-6), 0));
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
  page.text(say(ReceivingCardPhrase::receiving_card, boat), {.size = 6.5, .bold = true, .indent = 0.0});
  page.text(say(ReceivingCardPhrase::measure_what_came_in_before), plain);
  const bool metric = unit.kind == CardUnit::Kind::millimetres;
  page.text(say(ReceivingCardPhrase::as_callipers_read_them_sizes,
                metric ? say(ReceivingCardPhrase::lengths_are_in_millimetres)
                       : say(ReceivingCardPhrase::lengths_are_in_inches_and)),
            small);
  page.notice(say(ReceivingCardPhrase::coil_wire_springs_open_when),
              {.size = 3.2, .bold = true, .indent = 0.0});
  page.to_write(say(ReceivingCardPhrase::from_invoice_day), plain);
}

void add_goods(const Goods& one, PageFlow& page) {
  // What belongs together stays on one sheet where it can: about so much a row, and the lines around them.
  page.room_for(std::min(170.0, 26.0 + 6.5 * static_cast<double>(one.rows.size())));
  page.heading(one.name + led_by(": ", one.what), 3.8);
  FlowTable table{.columns = {{say(ReceivingCardPhrase::what), 4.4},
                              {say(ReceivingCardPhrase::wanted), 2.9},
                              {say(ReceivingCardPhrase::found), 2.6},
                              {say(ReceivingCardPhrase::ok), 0.6},
                              {say(ReceivingCardPhrase::not_ok), 0.9}},
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
  page.tick(one.line    ? say(ReceivingCardPhrase::looked_over_from_end_to)
            : one.turns ? say(ReceivingCardPhrase::looked_over_screw_turns)
                        : say(ReceivingCardPhrase::looked_over_no_crack_no),
            small);
  page.to_write(say(ReceivingCardPhrase::batch_number_on_it_invoice), small);
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
  PageFlow page(size, {.name = say(ReceivingCardPhrase::receiving_card_begins),
                       .about = identity_words(checked),
                       .draft = draft_lines_of(checked, all)});
  add_head(boat, card_unit(checked.rig()), page);
  for (const Goods& one : all)
    add_goods(one, page);
  if (all.empty())
    page.text(say(ReceivingCardPhrase::rig_file_states_nothing_that));
  page.space(2.0);
  page.to_write(say(ReceivingCardPhrase::received_by_day), plain);
  page.to_write(say(ReceivingCardPhrase::measured_second_time_by_day), plain);
  page.text(say(ReceivingCardPhrase::this_card_follows_from_rig),
            {.size = 2.8, .bold = false, .indent = 0.0});
  return page.pages(say(ReceivingCardPhrase::receiving_card_of, boat),
                    say(ReceivingCardPhrase::what_comes_in_for_rig));
}

ReceivingCard::ReceivingCard()
    : PagesBackend({"receiving-card", "receiving-card", say(ReceivingCardPhrase::receiving_card_begins),
                    say(ReceivingCardPhrase::what_comes_in_against_what)}) {}

std::vector<Drawing> ReceivingCard::pages(const BackendRequest& request, const std::string& boat) const {
  return goods_pages(request.checked, boat, request.paper);
}

} // namespace sheerpole
