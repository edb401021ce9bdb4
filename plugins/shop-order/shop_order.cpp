#include "plugins/shop-order/shop_order.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/card/card_piece.hpp"
#include "backend/page/page_flow.hpp"
#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/order_words.hpp"

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
  page.text(say(OrderPhrase::work_order, boat_title(checked)), {.size = 6.5, .bold = true, .indent = 0.0});
  page.text(say(OrderPhrase::piece_to_make_every_length, wanted.size(), wanted.size() == 1 ? "" : "s"),
            plain);
  FlowTable about = pairs();
  const auto row = [&](PhraseText first, const std::string& left, PhraseText second,
                       const std::string& right) {
    about.rows.push_back(
        {{.text = first}, stated_or_blank(left), {.text = second}, stated_or_blank(right)});
  };
  const CardUnit unit = card_unit(rig);
  const auto tolerance = [&](const auto& stated) {
    return stated ? "± " + card_amount(unit, stated->value) : std::string();
  };
  const std::string owner = fact_text(rig.boat.particulars, fact_names.owner);
  row(say(OrderPhrase::customer), owner, say(OrderPhrase::shop), "");
  row(say(OrderPhrase::job_number), "", say(OrderPhrase::wanted_by_day), "");
  row(say(OrderPhrase::length_within), tolerance(rig.boat.remake_tolerance),
      say(OrderPhrase::port_and_starboard_alike_within), tolerance(rig.boat.pair_tolerance));
  row(say(OrderPhrase::how_they_go_bag_coil), "", say(OrderPhrase::to), "");
  page.table(about);
  page.space(2.0);
}

/// What goes round or into which part at one end, and how.
std::string end_words_of(const CardPiece& card, WhichEnd where) {
  const PieceEnd& end = where == WhichEnd::upper ? card.piece->upper : card.piece->lower;
  std::string text =
      end.bare() ? say(OrderPhrase::bare_end) : shown(end.part_name(*card.rig), end.part_title(*card.rig));
  text += led_by("; ", splice_words(card, end));
  // What may not be cut yet may rest on the very allowance of its eyes.
  if (const auto eye = card.may_be_cut() ? throat_to_throat(card, where) : std::nullopt)
    text += say(OrderPhrase::eye_throat_to_throat, card.amount(*eye));
  return text;
}

/// How the splices of a rope are loaded before it is measured as made.
std::string set_words_of(const CardPiece& card) {
  if (!card.rope() || (!card.piece->upper.splice && !card.piece->lower.splice))
    return {};
  const auto load = setting_load(card);
  return load ? say(OrderPhrase::splices_set_at, format_fixed(load->kilonewtons(), 1))
              : say(OrderPhrase::setting_load_to_agree);
}

std::string under_what(const CardPiece& card) {
  if (const auto pull = fact_force(card.stay->particulars, fact_names.bench_tension))
    return say(OrderPhrase::under_n, format_fixed(pull->value.newtons(), 0));
  return say(OrderPhrase::pull_not_given_hand_tight);
}

void add_piece(const CardPiece& card, std::size_t number, PageFlow& page) {
  page.room_for(64.0);
  page.heading(fmt::format("{}.  {}{}", number, card.piece->name,
                           led_by(": ", card.stay->title.empty() ? "" : titled(*card.rig, *card.stay))),
               3.8, 40.0);
  FlowTable table{.columns = {{"", 1.5}, {"", 6.1}}, .size = 3.2, .gutter = card_gutter};
  const auto row = [&](PhraseText what, const std::string& text, bool bold = false) {
    table.rows.push_back({{.text = what}, {.text = text, .bold = bold}});
  };
  row(say(OrderPhrase::of), shown(card.line->name, card.line->title) +
                                led_by(", ", card.line->construction.text) +
                                led_by(", ", card.line->size.name));
  if (card.draft()) {
    row(say(OrderPhrase::length),
        say(OrderPhrase::for_do_not_make_it, not_yet(), reasons_counted(card.draft_reasons)), true);
  } else if (card.measure_again()) {
    row(say(OrderPhrase::length), say(OrderPhrase::measured_once_do_not_make_it, not_yet()), true);
  } else {
    // What the line gives on the way from the bench to the boat is not in it yet when the shop measures.
    const CardLength laid{card.body.unknown, card.body.parts + card.behaves.parts};
    row(say(OrderPhrase::length),
        say(card.mouth_to_mouth() ? OrderPhrase::mouth_to_mouth : OrderPhrase::bearing_to_bearing,
            card.cut_words(card.amount_of_stay(laid)), under_what(card)),
        true);
    if (card.behaves.parts != 0)
      row(say(OrderPhrase::on_the_boat), card.amount_of_stay(card.body));
  }
  if (card.cord)
    row("X", say(OrderPhrase::cord_goes_with_this_order, card.cord->where), true);
  row(say(OrderPhrase::aloft), end_words_of(card, WhichEnd::upper));
  row(say(OrderPhrase::below), end_words_of(card, WhichEnd::lower));
  if (const std::string set = set_words_of(card); !set.empty())
    row(say(OrderPhrase::splices), set);
  if (!card.draft() && !card.settled)
    row(say(OrderPhrase::known), card.state_line);
  page.table(table);
  FlowTable blanks = pairs();
  const std::string batch = fact_text(card.line->particulars, fact_names.batch);
  blanks.rows.push_back({{.text = say(OrderPhrase::colour)},
                         cell_to_write,
                         {.text = say(OrderPhrase::batch)},
                         stated_or_blank(batch)});
  blanks.rows.push_back({{.text = say(OrderPhrase::length_as_made_pull)},
                         cell_to_write,
                         {.text = say(OrderPhrase::by_day)},
                         cell_to_write});
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
    : PagesBackend({"shop-order", "shop-order", say(OrderPhrase::work_order_begins),
                    say(OrderPhrase::for_shop_that_makes_pieces)}) {}

std::vector<Drawing> ShopOrder::pages(const BackendRequest& request, const std::string& boat) const {
  const CheckedRig& checked = request.checked;
  const std::vector<CardPiece> cards = card_pieces(checked);
  std::vector<const CardPiece*> wanted, made;
  for (const CardPiece& card : cards)
    (card.state == PieceState::on_record ? made : wanted).push_back(&card);
  PageFlow page(request.paper, {.name = say(OrderPhrase::work_order_begins),
                                .about = identity_words(checked),
                                .draft = draft_of(checked, wanted)});
  add_head(checked, wanted, page);
  for (std::size_t i = 0; i < wanted.size(); ++i)
    add_piece(*wanted[i], i + 1, page);
  if (wanted.empty())
    page.text(say(OrderPhrase::no_piece_has_to_be));
  if (!made.empty())
    page.text(say(OrderPhrase::made_already_and_not_part, line_words(made)), small);
  page.room_for(46.0);
  page.space(2.0);
  page.notice(say(OrderPhrase::nothing_is_cut_before_shop), {.size = 3.2, .bold = true, .indent = 0.0});
  page.to_write(say(OrderPhrase::price_and_what_it_holds), plain);
  page.to_write(say(OrderPhrase::agreed_before_work_begins_customer), plain);
  page.to_write(say(OrderPhrase::agreed_before_work_begins_shop), plain);
  page.to_write(say(OrderPhrase::handed_over_with_lengths_as), plain);
  page.text(say(OrderPhrase::this_order_follows_from_rig), {.size = 2.8, .bold = false, .indent = 0.0});
  return page.pages(say(OrderPhrase::work_order_of, boat), say(OrderPhrase::what_shop_has_to_know));
}

} // namespace sheerpole
