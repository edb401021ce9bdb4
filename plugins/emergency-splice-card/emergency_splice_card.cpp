#include "plugins/emergency-splice-card/emergency_splice_card.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/card/card_piece.hpp"
#include "backend/card/card_release.hpp"
#include "backend/paper_words.hpp"
#include "backend/tenths.hpp"
#include "calculate/adjust/piece_history.hpp"
#include "wording/papers/emergency_card_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

namespace sheerpole {

namespace {

/// How much room a card takes: the larger is used where it keeps to as few pages.
struct SpareLook {
  double table = 2.7;
  TextLook small{.size = 2.7, .bold = false, .indent = 0.0};
  TextLook plain{.size = 2.8, .bold = false, .indent = 0.0};
};
constexpr SpareLook large{};
constexpr SpareLook low{.table = 2.5,
                        .small = {.size = 2.5, .bold = false, .indent = 0.0},
                        .plain = {.size = 2.6, .bold = false, .indent = 0.0}};

/// What may be longer than what is carried.
void add_not_compared(const SpareLine& spare, PageFlow& page) {
  if (spare.not_compared.empty() || spare.pieces.size() == 1)
    return;
  const std::string names = joined(spare.not_compared, ", ");
  page.notice(spare.none_compared()
                  ? say(EmergencyCardPhrase::which_is_longest_is_not, names)
                  : say(EmergencyCardPhrase::not_compared_each_is_x, names, spare.longest.piece->name),
              {.size = 3.1, .bold = true, .indent = 0.0});
}

/// Other pieces that may not be cut yet: what is carried may be too short for them.
void add_others_waiting(const SpareLine& spare, PageFlow& page) {
  const std::string names = joined(spare.pieces, ", ", [&](const CardPiece& card) {
    return !card.may_be_cut() && card.piece != spare.longest.piece ? card.piece->name : std::string();
  });
  if (!names.empty())
    page.notice(say(EmergencyCardPhrase::to_be_cut_and_not, not_yet(), names),
                {.size = 3.1, .bold = true, .indent = 0.0});
}

void add_head(const SpareLine& spare, const SpareLook& look, PageFlow& page) {
  const CardPiece& card = spare.longest;
  page.text(say(EmergencyCardPhrase::emergency, card.line->name),
            {.size = 6.5, .bold = true, .indent = 0.0});
  const std::string& aloft = card.piece->upper.part_name(*card.rig);
  const std::string others = joined(spare.pieces, ", ", [&](const CardPiece& one) {
    return one.piece->upper.part_name(*one.rig) == aloft ? std::string() : one.piece->name;
  });
  page.text(say(EmergencyCardPhrase::for_any_stay_it_made, card.line->construction.text,
                card.line->size.name,
                spare.none_compared()        ? say(EmergencyCardPhrase::one_of_them)
                : spare.not_compared.empty() ? say(EmergencyCardPhrase::the_longest)
                                             : say(EmergencyCardPhrase::longest_that_is_known),
                card.piece->name),
            {.size = 3.8, .bold = true, .indent = 0.0});
  if (!others.empty())
    page.text(say(EmergencyCardPhrase::its_end_aloft_does_not_fit, aloft, others), look.plain);
  if (!card.may_be_cut()) {
    add_not_yet(say(EmergencyCardPhrase::carry), card.waits_for(), page, 7.5);
  } else {
    page.text(say(EmergencyCardPhrase::carry_capitals, card.amount_of_stay(spare.to_carry)),
              {.size = 7.5, .bold = true, .indent = 0.0});
    page.text(say(EmergencyCardPhrase::for_and_to_make_one, card.amount_of_stay(card.cut), card.piece->name,
                  card.amount(spare.end_again), unit_words(card.unit), card.unit.remark.empty() ? "" : " ",
                  card.unit.remark),
              look.plain);
  }
  add_not_compared(spare, page);
  add_others_waiting(spare, page);
  page.notice(say(EmergencyCardPhrase::first_mast_halyards_to_rail),
              {.size = 3.1, .bold = true, .indent = 0.0});
}

/// What hangs there is as long as it came out; a spare is made to the body in the table.
std::string on_record_words(const CardPiece& card) {
  std::string words = fmt::format("{}: {}.", card.piece->name, card.state_line);
  if (const auto out = came_out(*card.rig, *card.of_stay))
    words +=
        say(EmergencyCardPhrase::it_came_out_than_this, card.amount(magnitude(out->longer)),
            out->longer > Length{} ? say(EmergencyCardPhrase::longer) : say(EmergencyCardPhrase::shorter),
            (*card.rig)[card.of_stay->adjusters.front().part].name,
            out->longer > Length{} ? say(EmergencyCardPhrase::shorter) : say(EmergencyCardPhrase::longer));
  return words;
}

void add_pieces(const SpareLine& spare, const SpareLook& look, PageFlow& page) {
  page.heading(say(EmergencyCardPhrase::bodies_bearing_to_bearing_stays), 3.8);
  FlowTable table{.columns = {{say(EmergencyCardPhrase::stay), 2.4},
                              {say(EmergencyCardPhrase::body), 3.2, true},
                              {say(EmergencyCardPhrase::set_at), 1.5, true},
                              {say(EmergencyCardPhrase::aloft), 1.9},
                              {say(EmergencyCardPhrase::below), 1.9}},
                  .size = look.table,
                  .gutter = card_gutter};
  for (const CardPiece& card : spare.pieces)
    table.rows.push_back({{.text = card.piece->name, .bold = card.piece == spare.longest.piece},
                          {.text = card.may_be_cut() ? card.amount_of_stay(card.body) : not_yet()},
                          {.text = set_words(card)},
                          {.text = card.piece->upper.part_name(*card.rig)},
                          {.text = card.piece->lower.part_name(*card.rig)}});
  page.table(table);
  for (const CardPiece& card : spare.pieces)
    if (card.state == PieceState::on_record)
      page.text(on_record_words(card), look.small);
  const std::string kept = joined(spare.pieces, "; ", [](const CardPiece& card) -> std::string {
    if (!card.cut.unknown)
      return {};
    return x_of_stay(card.stay->name) + " = " +
           (card.cord && reading_of_x(*card.stay, *card.of_stay) != nullptr
                ? card.cord->where
                : say(EmergencyCardPhrase::pin_to_pin_no_reading));
  });
  if (!kept.empty())
    page.text(say(EmergencyCardPhrase::from_upper_end_u_cord, kept), look.small);
}

void add_second_end(const SpareLine& spare, FlowTable& table) {
  for (const SpareMark& mark : spare.second)
    table.rows.push_back({{.text = mark.name},
                          {.text = ""},
                          {.text = of_body(spare.longest.unit, mark.beyond_body), .bold = true},
                          cell_to_tick});
}

/// Whose marks below the table has, where others have others.
std::string marks_are_of(const SpareLine& spare) {
  if (spare.others.empty())
    return {};
  return " " + say(EmergencyCardPhrase::marks_below_are_of, joined(spare.as_second, ", "));
}

/// Those of the same marks in one table, a column for each mark.
void add_other_ends(const SpareLine& spare, const SpareLook& look, PageFlow& page) {
  if (spare.others.empty())
    return;
  page.heading(say(EmergencyCardPhrase::marks_of_other_stays), 3.8);
  std::vector<std::string> head;
  FlowTable table{.columns = {}, .size = look.table, .gutter = card_gutter};
  for (const OtherEnd& other : spare.others) {
    std::vector<std::string> marks;
    for (const SpareMark& mark : other.marks)
      marks.push_back(mark.name);
    if (marks != head) {
      if (!table.rows.empty())
        page.table(table);
      table.rows.clear();
      table.columns = {{say(EmergencyCardPhrase::stays), 4.4}};
      for (const std::string& mark : marks)
        table.columns.push_back({mark, 2.0, true});
      head = std::move(marks);
    }
    std::vector<FlowCell> row{{.text = joined(other.pieces, ", ")}};
    for (const SpareMark& mark : other.marks)
      row.push_back({.text = of_body(spare.longest.unit, mark.beyond_body), .bold = true});
    table.rows.push_back(std::move(row));
  }
  page.table(table);
}

void add_marks(const SpareLine& spare, const SpareLook& look, PageFlow& page) {
  const CardPiece& card = spare.longest;
  page.heading(say(EmergencyCardPhrase::marks_aloft_made_at_home), 3.8);
  FlowTable table{.columns = {{say(EmergencyCardPhrase::mark), 4.0},
                              {say(EmergencyCardPhrase::from_cut_end), 2.2, true},
                              {say(EmergencyCardPhrase::from_the_bearing), 2.2, true},
                              {say(EmergencyCardPhrase::done), 0.9}},
                  .size = look.table,
                  .gutter = card_gutter};
  for (const CardMark& mark : spare.first)
    table.rows.push_back({{.text = mark.name},
                          {.text = card_text(card.unit, mark.from_upper), .bold = true},
                          {.text = ""},
                          cell_to_tick});
  add_second_end(spare, table);
  page.table(table);
  page.text(say(EmergencyCardPhrase::body_is_length_from_bearing) + marks_are_of(spare), look.small);
  add_other_ends(spare, look, page);
  for (const std::string& unknown : say_each(*card.rig, card.piece->bench.not_known))
    page.text(say(EmergencyCardPhrase::no_mark, unknown), look.small);
  if (const std::string tails = tails_words(card); !tails.empty())
    page.text(say(EmergencyCardPhrase::buried, tails), look.small);
  if (cut_nothing(card))
    page.text(say(EmergencyCardPhrase::stay_itself_is_made_all), look.small);
}

/// A wire that is closed at one end already is measured from that mouth.
void add_wire_marks(const SpareLine& spare, const SpareLook& look, PageFlow& page) {
  if (spare.second.empty())
    return;
  page.heading(say(EmergencyCardPhrase::marks_end_below_from_mouth), 3.8);
  FlowTable table{.columns = {{say(EmergencyCardPhrase::mark), 4.0},
                              {"", 0.2},
                              {say(EmergencyCardPhrase::from_mouth_aloft), 3.0, true},
                              {say(EmergencyCardPhrase::done), 0.9}},
                  .size = look.table,
                  .gutter = card_gutter};
  add_second_end(spare, table);
  page.table(table);
  add_other_ends(spare, look, page);
}

void add_steps(PhraseText heading, const std::vector<std::string>& steps, const SpareLook& look,
               PageFlow& page) {
  page.heading(heading, 3.8);
  for (const std::string& step : steps)
    page.tick(step, look.plain);
}

void add_terminals(const SpareLine& spare, const SpareLook& look, PageFlow& page) {
  page.heading(say(EmergencyCardPhrase::terminals_this_file_that_take), 3.8);
  FlowTable table{.columns = {{say(EmergencyCardPhrase::part), 4.4},
                              {say(EmergencyCardPhrase::wire), 1.6},
                              {say(EmergencyCardPhrase::goes_in), 1.3, true},
                              {say(EmergencyCardPhrase::thread), 1.7},
                              {say(EmergencyCardPhrase::in_hand), 0.9, true},
                              {say(EmergencyCardPhrase::closed_by_hand), 1.5}},
                  .size = look.table,
                  .gutter = card_gutter};
  for (const SpareTerminal& terminal : spare_terminals(spare))
    table.rows.push_back({{.text = terminal.name},
                          {.text = terminal.wire},
                          {.text = terminal.inserted},
                          {.text = terminal.thread},
                          {.text = terminal.in_hand},
                          cell_to_tick});
  if (table.rows.empty())
    page.text(say(EmergencyCardPhrase::file_states_none), look.small);
  else
    page.table(table);
  page.text(say(EmergencyCardPhrase::terminal_that_needs_press_cannot), look.small);
}

void add_last_words(const SpareLook& look, PageFlow& page) {
  page.text(say(EmergencyCardPhrase::where_nothing_can_be_spliced) + " " +
                say(EmergencyCardPhrase::this_card_follows_from_rig),
            look.small);
}

/// Of a spare length that nobody may cut yet: what may be bought and carried meanwhile.
void add_waiting(const SpareLine& spare, PageFlow& page) {
  const std::optional<Length> about = spare.about_to_carry;
  add_release(spare.longest.waits_for(),
              say(EmergencyCardPhrase::cut_nothing_to_it_carry,
                  about ? say(EmergencyCardPhrase::order_this_line, about_metres(*about))
                        : say(EmergencyCardPhrase::no_estimate_its_length_is)),
              page);
}

std::vector<Drawing> pages_in(const SpareLine& spare, const SpareLook& look, const std::string& boat,
                              PaperSize size) {
  const std::string& line = spare.longest.line->name;
  PageFlow page(size, {.name = say(EmergencyCardPhrase::emergency_splice_card, line),
                       .about = boat,
                       .draft = draft_lines(spare.longest.draft_reasons),
                       .hatched = !spare.longest.may_be_cut()});
  add_head(spare, look, page);
  add_pieces(spare, look, page);
  if (!spare.longest.may_be_cut()) {
    add_waiting(spare, page);
  } else if (spare.longest.rope()) {
    add_marks(spare, look, page);
    add_steps(say(EmergencyCardPhrase::at_home), rope_at_home(spare), look, page);
    if (!spare.others.empty()) // what is followed aboard is not torn over two sheets
      page.room_for(23.0 * look.plain.size);
    add_steps(say(EmergencyCardPhrase::aboard_when_stay_is_gone), rope_aboard(spare), look, page);
  } else {
    add_wire_marks(spare, look, page);
    add_terminals(spare, look, page);
    add_steps(say(EmergencyCardPhrase::at_home), wire_at_home(spare), look, page);
    if (!spare.others.empty())
      page.room_for(17.0 * look.plain.size);
    add_steps(say(EmergencyCardPhrase::aboard_when_stay_is_gone), wire_aboard(spare), look, page);
  }
  add_last_words(look, page);
  return page.pages(say(EmergencyCardPhrase::emergency_splice_card_begins, line),
                    say(EmergencyCardPhrase::spare_length_to_carry_and));
}

} // namespace

std::vector<Drawing> spare_pages(const SpareLine& spare, const std::string& boat, PaperSize size) {
  std::vector<Drawing> pages = pages_in(spare, large, boat, size);
  if (pages.size() == 1)
    return pages;
  std::vector<Drawing> fewer = pages_in(spare, low, boat, size);
  return fewer.size() < pages.size() ? fewer : pages;
}

std::vector<Drawing> nothing_to_carry(const std::string& boat, PaperSize size) {
  PageFlow page(size,
                {.name = say(EmergencyCardPhrase::emergency_splice_card_word), .about = boat, .draft = {}});
  page.text(say(EmergencyCardPhrase::emergency, boat), {.size = 6.5, .bold = true, .indent = 0.0});
  page.text(say(EmergencyCardPhrase::rig_file_states_no_stay));
  return page.pages(say(EmergencyCardPhrase::emergency_splice_card_begins, boat),
                    say(EmergencyCardPhrase::there_is_nothing_rope_or));
}

EmergencySpliceCard::EmergencySpliceCard()
    : PagesBackend({"emergency-splice-card", "emergency-splice-cards",
                    say(EmergencyCardPhrase::emergency_splice_cards),
                    say(EmergencyCardPhrase::for_each_rope_and_wire)}) {}

std::vector<Drawing> EmergencySpliceCard::pages(const BackendRequest& request,
                                                const std::string& boat) const {
  std::vector<Drawing> drawn = pages_of_each(spare_lines(request.checked), [&](const SpareLine& spare) {
    return spare_pages(spare, identity_words(request.checked), request.paper);
  });
  return drawn.empty() ? nothing_to_carry(boat, request.paper) : drawn;
}

} // namespace sheerpole
