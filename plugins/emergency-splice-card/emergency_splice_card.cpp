#include "plugins/emergency-splice-card/emergency_splice_card.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/card/card_piece.hpp"
#include "backend/card/card_release.hpp"
#include "backend/paper_words.hpp"
#include "backend/tenths.hpp"
#include "calculate/adjust/piece_history.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

namespace sheerpole {

namespace {

constexpr TextLook small{.size = 2.7, .bold = false, .indent = 0.0};
constexpr TextLook plain{.size = 2.9, .bold = false, .indent = 0.0};

/// What may be longer than what is carried.
void add_not_compared(const SpareLine& spare, PageFlow& page) {
  if (spare.not_compared.empty() || spare.pieces.size() == 1)
    return;
  const std::string names = joined(spare.not_compared, ", ");
  page.notice(
      spare.none_compared()
          ? fmt::format("Which is the longest is not known: {} are each X, without an estimate. Lay the "
                        "cords side by side and carry for the longest X.",
                        names)
          : fmt::format("Not compared: {}. Each is X, without an estimate: lay its cord beside that of "
                        "{} and carry for the longer.",
                        names, spare.longest.piece->name),
      {.size = 3.1, .bold = true, .indent = 0.0});
}

/// Other pieces that are drafts: what is carried may be too short for them.
void add_others_waiting(const SpareLine& spare, PageFlow& page) {
  const std::string names = joined(spare.pieces, ", ", [&](const CardPiece& card) {
    return card.draft() && card.piece != spare.longest.piece ? card.piece->name : std::string();
  });
  if (!names.empty())
    page.notice(fmt::format("{} to be cut, and not compared: {}. See the bench cards.", not_yet, names),
                {.size = 3.1, .bold = true, .indent = 0.0});
}

void add_head(const SpareLine& spare, PageFlow& page) {
  const CardPiece& card = spare.longest;
  page.text("EMERGENCY   " + card.line->name, {.size = 6.5, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}, {}, for any stay of it; made for {}, {}", card.line->construction.text,
                        card.line->size.name,
                        spare.none_compared()        ? "one of them"
                        : spare.not_compared.empty() ? "the longest"
                                                     : "the longest that is known",
                        card.piece->name),
            {.size = 3.8, .bold = true, .indent = 0.0});
  if (card.draft()) {
    add_not_yet("CARRY", card.draft_reasons, page, 7.5);
  } else {
    page.text(fmt::format("CARRY  {}", card.amount_of_stay(spare.to_carry)),
              {.size = 7.5, .bold = true, .indent = 0.0});
    page.text(fmt::format("{} for {} and {} to make one end twice. Lengths in {}.{}{}",
                          card.amount_of_stay(card.cut), card.piece->name, card.amount(spare.end_again),
                          unit_words(card.unit), card.unit.remark.empty() ? "" : " ", card.unit.remark),
              plain);
  }
  add_not_compared(spare, page);
  add_others_waiting(spare, page);
  page.notice(
      "First the mast: halyards to the rail or the plates, sheets eased, nobody under it. A stay that "
      "carries load is not opened. Going aloft at sea can kill; whether anyone goes is the skipper's "
      "to decide.",
      {.size = 3.1, .bold = true, .indent = 0.0});
}

/// What hangs there is as long as it came out; a spare is made to the body in the table.
std::string on_record_words(const CardPiece& card) {
  std::string words = fmt::format("{}: {}.", card.piece->name, card.state_line);
  if (const auto out = came_out(*card.rig, *card.of_stay))
    words +=
        fmt::format(" It came out {} {} than this body, so it hangs with {} set {} than stated; take the "
                    "body with it set as stated.",
                    card.amount(magnitude(out->longer)), out->longer > Length{} ? "longer" : "shorter",
                    (*card.rig)[card.of_stay->adjusters.front().part].name,
                    out->longer > Length{} ? "shorter" : "longer");
  return words;
}

void add_pieces(const SpareLine& spare, PageFlow& page) {
  page.heading("Bodies, bearing to bearing, of the stays of this line", 3.8);
  FlowTable table{.columns = {{"stay", 2.4}, {"body", 3.2, true}, {"aloft", 2.0}, {"below", 2.0}},
                  .size = 2.7,
                  .gutter = card_gutter};
  for (const CardPiece& card : spare.pieces)
    table.rows.push_back({{.text = card.piece->name, .bold = card.piece == spare.longest.piece},
                          {.text = card.draft() ? std::string(not_yet) : card.amount_of_stay(card.body)},
                          {.text = card.piece->upper.part_name(*card.rig)},
                          {.text = card.piece->lower.part_name(*card.rig)}});
  page.table(table);
  for (const CardPiece& card : spare.pieces)
    if (card.state == PieceState::on_record)
      page.text(on_record_words(card), small);
  const std::string kept = joined(spare.pieces, "; ", [](const CardPiece& card) -> std::string {
    if (!card.cut.unknown)
      return {};
    return x_of_stay(card.stay->name) + " = " +
           (card.cord && reading_of_x(*card.stay, *card.of_stay) != nullptr
                ? card.cord->where
                : "pin to pin, no reading states it yet");
  });
  if (!kept.empty())
    page.text("From the upper end U of a cord to its knot L: " + kept + ".", small);
}

void add_second_end(const SpareLine& spare, FlowTable& table) {
  for (const SpareMark& mark : spare.second)
    table.rows.push_back({{.text = mark.name},
                          {.text = ""},
                          {.text = of_body(spare.longest.unit, mark.beyond_body), .bold = true},
                          cell_to_tick});
}

void add_marks(const SpareLine& spare, PageFlow& page) {
  const CardPiece& card = spare.longest;
  page.heading("Marks: aloft, made at home, from its cut end; below, aboard, from the first bearing", 3.8);
  FlowTable table{.columns = {{"mark", 4.0},
                              {"from the cut end", 2.2, true},
                              {"from the bearing", 2.2, true},
                              {"done", 0.9}},
                  .size = 3.0,
                  .gutter = card_gutter};
  for (const CardMark& mark : spare.first)
    table.rows.push_back({{.text = mark.name},
                          {.text = card_text(card.unit, mark.from_upper), .bold = true},
                          {.text = ""},
                          cell_to_tick});
  add_second_end(spare, table);
  page.table(table);
  page.text("The body is the length from bearing to bearing by the messenger cord, with the adjuster as "
            "stated. The "
            "marks of the end below are for the parts of the longest stay; other parts have other marks.",
            small);
  for (const std::string& unknown : say_each(*card.rig, card.piece->bench.not_known))
    page.text("No mark: " + unknown, small);
  if (const std::string tails = tails_words(card); !tails.empty())
    page.text("Buried: " + tails + ".", small);
  if (cut_nothing(card))
    page.text("The stay itself is made of all that was in hand, and nothing was cut off. The spare has the "
              "same burys.",
              small);
}

/// A wire that is closed at one end already is measured from that mouth.
void add_wire_marks(const SpareLine& spare, PageFlow& page) {
  if (spare.second.empty())
    return;
  page.heading("Marks of the end below, from the mouth of the closed end", 3.8);
  FlowTable table{.columns = {{"mark", 4.0}, {"", 0.2}, {"from the mouth aloft", 3.0, true}, {"done", 0.9}},
                  .size = 3.0,
                  .gutter = card_gutter};
  add_second_end(spare, table);
  page.table(table);
}

void add_steps(const char* heading, const std::vector<std::string>& steps, PageFlow& page) {
  page.heading(heading, 3.8);
  for (const std::string& step : steps)
    page.tick(step, plain);
}

void add_terminals(const SpareLine& spare, PageFlow& page) {
  page.heading("Terminals of this file that take this wire", 3.8);
  FlowTable table{.columns = {{"part", 4.4},
                              {"wire", 1.6},
                              {"goes in", 1.3, true},
                              {"thread", 1.7},
                              {"in hand", 0.9, true},
                              {"closed by hand", 1.5}},
                  .size = 2.7,
                  .gutter = card_gutter};
  for (const SpareTerminal& terminal : spare_terminals(spare))
    table.rows.push_back({{.text = terminal.name},
                          {.text = terminal.wire},
                          {.text = terminal.inserted},
                          {.text = terminal.thread},
                          {.text = terminal.in_hand},
                          cell_to_tick});
  if (table.rows.empty())
    page.text("The file states none.", small);
  else
    page.table(table);
  page.text(
      "A terminal that needs a press cannot be closed aboard. Tick those that close by hand, and carry "
      "two of them with what their maker says they need: cones, sealing, spanners. The file does not "
      "say it.",
      small);
}

void add_last_words(PageFlow& page) {
  page.text(
      "Where nothing can be spliced or closed: what is tied, lashed or clamped then is the judgement of "
      "who is there, and of a rigger ashore. The file says nothing of what it would hold. Sail as little "
      "as you can, on the other side, to the nearest shelter.",
      small);
  page.text("This card follows from the rig file and nothing else. A stay made aboard is looked over by a "
            "licensed professional rigger before it is sailed on again; local rules come before this card.",
            {.size = 2.7, .bold = false, .indent = 0.0});
}

/// Of a spare length that nobody may cut yet: what may be bought and carried meanwhile.
void add_waiting(const SpareLine& spare, PageFlow& page) {
  const std::optional<Length> about = spare.about_to_carry;
  add_release(spare.longest.draft_reasons,
              fmt::format("{} Cut nothing to it. Carry the spare in one length with fid or terminals and "
                          "their tools. When all of the above is in the rig file, print this card again.",
                          about ? fmt::format("Order {} of this line.", about_metres(*about))
                                : std::string("No estimate of its length is stated.")),
              page);
}

} // namespace

std::vector<Drawing> spare_pages(const SpareLine& spare, const std::string& boat, PaperSize size) {
  const std::string& line = spare.longest.line->name;
  PageFlow page(size, {.name = "Emergency splice card " + line,
                       .about = boat,
                       .draft = draft_lines(spare.longest.draft_reasons),
                       .hatched = spare.longest.draft()});
  add_head(spare, page);
  add_pieces(spare, page);
  if (spare.longest.draft()) {
    add_waiting(spare, page);
  } else if (spare.longest.rope()) {
    add_marks(spare, page);
    add_steps("At home", rope_at_home(spare), page);
    add_steps("Aboard, when a stay is gone", rope_aboard(spare), page);
  } else {
    add_wire_marks(spare, page);
    add_terminals(spare, page);
    add_steps("At home", wire_at_home(spare), page);
    add_steps("Aboard, when a stay is gone", wire_aboard(spare), page);
  }
  add_last_words(page);
  return page.pages("Emergency splice card of " + line,
                    "The spare length to carry, and how a stay is made of it aboard.");
}

std::vector<Drawing> nothing_to_carry(const std::string& boat, PaperSize size) {
  PageFlow page(size, {.name = "Emergency splice card", .about = boat, .draft = {}});
  page.text("EMERGENCY   " + boat, {.size = 6.5, .bold = true, .indent = 0.0});
  page.text(
      "The rig file states no stay of rope or wire. Rod and chain are not made up aboard: ask a rigger "
      "what to carry.");
  return page.pages("Emergency splice card of " + boat, "There is nothing of rope or wire.");
}

EmergencySpliceCard::EmergencySpliceCard()
    : PagesBackend(
          {"emergency-splice-card", "emergency-splice-cards", "Emergency splice cards",
           "for each rope and wire: the spare length to carry, and how a stay is made of it aboard"}) {}

std::vector<Drawing> EmergencySpliceCard::pages(const BackendRequest& request,
                                                const std::string& boat) const {
  std::vector<Drawing> drawn = pages_of_each(spare_lines(request.checked), [&](const SpareLine& spare) {
    return spare_pages(spare, identity_words(request.checked), request.paper);
  });
  return drawn.empty() ? nothing_to_carry(boat, request.paper) : drawn;
}

} // namespace sheerpole
