#include "plugins/shop-order/shop_order.hpp"

#include "backend/card/card_piece.hpp"
#include "backend/page/page_flow.hpp"
#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "wording/model_words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

constexpr TextLook plain{.size = 3.2, .bold = false, .indent = 0.0};
constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};

/// Words behind which there is a line to write on where nothing is stated.
FlowCell stated_or_blank(const std::string& text) {
  return text.empty() ? cell_to_write : FlowCell{.text = text, .bold = true};
}

FlowTable pairs() {
  return {.columns = {{"", 1.6}, {"", 2.2}, {"", 1.6}, {"", 2.2}}, .size = 3.2, .gutter = card_gutter};
}

void add_head(const CheckedRig& checked, const std::vector<const CardPiece*>& wanted, PageFlow& page) {
  const Rig& rig = checked.rig();
  page.text("WORK ORDER   " + boat_title(checked), {.size = 6.5, .bold = true, .indent = 0.0});
  page.text(fmt::format(
                "{} piece{} to make. Every length is from bearing to bearing, measured straight under the "
                "pull that is given with it.",
                wanted.size(), wanted.size() == 1 ? "" : "s"),
            plain);
  FlowTable about = pairs();
  const auto row = [&](const char* first, const std::string& left, const char* second,
                       const std::string& right) {
    about.rows.push_back(
        {{.text = first}, stated_or_blank(left), {.text = second}, stated_or_blank(right)});
  };
  const CardUnit unit = card_unit(rig);
  const auto tolerance = [&](const auto& stated) {
    return stated ? "± " + card_amount(unit, stated->value) : std::string();
  };
  const std::string owner = fact_text(rig.boat.particulars, fact_names.owner);
  row("customer", owner, "shop", "");
  row("job number", "", "wanted by, day", "");
  row("length within", tolerance(rig.boat.remake_tolerance), "port and starboard alike within",
      tolerance(rig.boat.pair_tolerance));
  row("how they go: bag, coil, bundle", "", "to", "");
  page.table(about);
  page.space(2.0);
}

/// What goes round or into which part at one end, and how.
std::string end_words_of(const CardPiece& card, WhichEnd where) {
  const PieceEnd& end = where == WhichEnd::upper ? card.piece->upper : card.piece->lower;
  std::string text = end.bare() ? "bare end" : shown(end.part_name(*card.rig), end.part_title(*card.rig));
  return text + led_by("; ", splice_words(card, end));
}

std::string under_what(const CardPiece& card) {
  if (const auto pull = fact_force(card.stay->particulars, fact_names.bench_tension))
    return "under " + format_fixed(pull->value.newtons(), 0) + " N";
  return "pull not given: hand-tight, and write it down";
}

void add_piece(const CardPiece& card, std::size_t number, PageFlow& page) {
  page.room_for(64.0);
  page.heading(fmt::format("{}.  {}{}", number, card.piece->name, led_by(": ", card.stay->title)), 3.8,
               40.0);
  FlowTable table{.columns = {{"", 1.5}, {"", 6.1}}, .size = 3.2, .gutter = card_gutter};
  const auto row = [&](const char* what, const std::string& text, bool bold = false) {
    table.rows.push_back({{.text = what}, {.text = text, .bold = bold}});
  };
  row("of", shown(card.line->name, card.line->title) + led_by(", ", card.line->construction.text) +
                led_by(", ", card.line->size.name));
  if (card.draft()) {
    row("length",
        fmt::format("{}, for {}: do not make it yet", not_yet, reasons_counted(card.draft_reasons)), true);
  } else if (card.measure_again()) {
    row("length", fmt::format("{}, measured once: do not make it yet", not_yet), true);
  } else {
    // What the line gives on the way from the bench to the boat is not in it yet when the shop measures.
    const CardLength laid{card.body.unknown, card.body.parts + card.behaves.parts};
    row("length", card.amount_of_stay(laid) + ", bearing to bearing, " + under_what(card), true);
    if (card.behaves.parts != 0)
      row("on the boat", card.amount_of_stay(card.body));
  }
  if (card.cord)
    row("X", "the cord goes with this order: " + card.cord->where, true);
  row("aloft", end_words_of(card, WhichEnd::upper));
  row("below", end_words_of(card, WhichEnd::lower));
  if (!card.draft() && card.state != PieceState::ready)
    row("known", card.state_line);
  page.table(table);
  FlowTable blanks = pairs();
  const std::string batch = fact_text(card.line->particulars, fact_names.batch);
  blanks.rows.push_back({{.text = "colour"}, cell_to_write, {.text = "batch"}, stated_or_blank(batch)});
  blanks.rows.push_back(
      {{.text = "length as made, pull"}, cell_to_write, {.text = "by, day"}, cell_to_write});
  page.table(blanks);
}

std::string line_words(const std::vector<const CardPiece*>& pieces) {
  return joined(pieces, ", ", [](const CardPiece* card) { return card->piece->name; });
}

std::vector<std::string> draft_of(const CheckedRig& checked, const std::vector<const CardPiece*>& wanted) {
  const bool any =
      std::any_of(wanted.begin(), wanted.end(), [](const CardPiece* card) { return card->draft(); });
  return any ? std::vector<std::string>{waiting_words(checked)} : std::vector<std::string>{};
}

} // namespace

ShopOrder::ShopOrder()
    : PagesBackend(
          {"shop-order", "shop-order", "Work order",
           "for a shop that makes the pieces: lengths, ends, pulls, and what the two have to agree on"}) {}

std::vector<Drawing> ShopOrder::pages(const BackendRequest& request, const std::string& boat) const {
  const CheckedRig& checked = request.checked;
  const std::vector<CardPiece> cards = card_pieces(checked);
  std::vector<const CardPiece*> wanted, made;
  for (const CardPiece& card : cards)
    (card.state == PieceState::on_record ? made : wanted).push_back(&card);
  PageFlow page(
      request.paper,
      {.name = "Work order", .about = identity_words(checked), .draft = draft_of(checked, wanted)});
  add_head(checked, wanted, page);
  for (std::size_t i = 0; i < wanted.size(); ++i)
    add_piece(*wanted[i], i + 1, page);
  if (wanted.empty())
    page.text("No piece has to be made.");
  if (!made.empty())
    page.text("Made already, and not part of this order: " + line_words(made) + ".", small);
  page.room_for(46.0);
  page.space(2.0);
  page.notice(
      "Nothing is cut before the shop has asked about what it does not understand, and has the answer in "
      "writing.",
      {.size = 3.2, .bold = true, .indent = 0.0});
  page.to_write("Price, and what it holds:", plain);
  page.to_write("Agreed before work begins, customer, day:", plain);
  page.to_write("Agreed before work begins, shop, day:", plain);
  page.to_write("Handed over with lengths as made, day:", plain);
  page.text("This order follows from the rig file and nothing else. Nobody has judged from it whether the "
            "rig is strong "
            "enough: local rules and a licensed professional rigger come before it.",
            {.size = 2.8, .bold = false, .indent = 0.0});
  return page.pages("Work order of " + boat,
                    "What a shop has to know to make the pieces, with blanks to agree on.");
}

} // namespace sheerpole
