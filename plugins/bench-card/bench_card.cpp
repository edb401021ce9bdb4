#include "plugins/bench-card/bench_card.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/paper_identity.hpp"
#include "backend/paper_words.hpp"
#include "plugins/bench-card/card_blocks.hpp"
#include "wording/model_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <cstdlib>
#include <utility>

namespace sheerpole {

namespace {

/// How well the length is known, by the worst case; or that nobody has said.
std::string known_to(const CardPiece& card) {
  const auto& found = card.of_stay->uncertainty;
  if (!found || card.stay->stack[card.item].line_length)
    return "Accuracy unknown: no bound is stated for what it rests on.";
  const std::string worst =
      fmt::format("{} / +{} at worst", card_text(card.unit, card.unit.round_outwards(found->worst_low)),
                  card.amount(card.unit.round_outwards(found->worst_high)));
  if (found->without_bound.empty())
    return "Known to " + worst + ".";
  const std::size_t others = found->without_bound.size() - 1;
  return fmt::format("Accuracy unknown: no bound for {}{}. The rest is known to {}.",
                     card.spoken(found->without_bound.front()),
                     others == 0   ? std::string()
                     : others == 1 ? " and one more"
                                   : fmt::format(" and {} more", others),
                     worst);
}

/// "From aloft, at the main masthead, to below, at the stem".
std::string from_where(const CardPiece& card) {
  if (card.stay->path.size() < 2)
    return "From aloft";
  return fmt::format("From aloft, {}, to below, {}", where_words(*card.rig, *card.stay, WhichEnd::upper),
                     where_words(*card.rig, *card.stay, WhichEnd::lower));
}

/// What else there is to know of an end, in the unit of the card; what stands in a box is left out.
std::string notes_words(const CardPiece& card, const PieceEnd& end) {
  std::vector<std::string> words;
  for (const Remark& note : end.notes)
    if (!eye_disagrees(card, note))
      words.push_back(card.spoken(note));
  return joined(words, Join::semicolon);
}

/// What the cut leaves out because the file says nothing of it, and what would move it if it were known.
std::vector<std::string> left_out(const CardPiece& card) {
  std::vector<std::string> words;
  if (!card.piece->not_counted.empty())
    words.push_back("Not in the cut: " + joined(card.spoken(card.piece->not_counted), Join::semicolon) +
                    ".");
  if (!card.of_stay->not_corrected.empty())
    words.push_back(
        (card.cord ? "Not counted in how well X is known: " : "The reading is not corrected for: ") +
        joined(card.spoken(card.of_stay->not_corrected), Join::semicolon) + ".");
  std::vector<std::string> eyes;
  const std::string aloft = notes_words(card, card.piece->upper);
  const std::string below = notes_words(card, card.piece->lower);
  if (!aloft.empty())
    eyes.push_back((aloft == below ? "both, " : "aloft, ") + aloft);
  if (!below.empty() && aloft != below)
    eyes.push_back("below, " + below);
  if (!eyes.empty())
    words.push_back("Eyes: " + joined(eyes, "; ") + ".");
  return words;
}

/// "+ 1720 mm", "- 12 mm": with its sign, to be read in a sum.
std::string added_words(const CardPiece& card, CardLength length) {
  return (length.parts < 0 ? "- " : "+ ") + card.amount(CardLength{false, std::abs(length.parts)});
}

/// The cut in three numbers that can be added up by hand.
std::string sum_by_hand(const CardPiece& card) {
  return fmt::format("By hand: body {} {} for the ends{} = {}.", card.amount(card.body),
                     added_words(card, card.ends),
                     card.behaves.parts == 0 ? "" : " " + added_words(card, card.behaves) + " for the line",
                     card.amount(card.cut));
}

/// In which unit the lengths are, and where the columns begin.
std::string unit_sentence(const CardPiece& card) {
  return fmt::format("Lengths in {}{}.{}{}", unit_words(card.unit),
                     card.cord ? "" : "; zero at the cut end aloft", card.unit.remark.empty() ? "" : " ",
                     card.unit.remark);
}

void add_known(const CardPiece& card, const CardLook& look, PageFlow& page) {
  page.text(card.state_line,
            {.size = look.small + 0.4, .bold = card.state != PieceState::ready, .indent = 0.0});
  if (card.draft())
    return;
  page.text(known_to(card) + " " + unit_sentence(card), {.size = look.small, .bold = false, .indent = 0.0});
}

void add_notes(const CardPiece& card, const CardLook& look, PageFlow& page) {
  const TextLook small{.size = look.small, .bold = false, .indent = 0.0};
  for (const std::string& unknown : card.spoken(card.piece->bench.not_known))
    page.text("No mark: " + unknown, {.size = look.small, .bold = true, .indent = 0.0});
  for (const std::string& line : in_hand_lines(card))
    page.text(line, small);
  if (!card.cord && !card.measure_again())
    page.text(sum_by_hand(card), {.size = look.small + 0.2, .bold = true, .indent = 0.0});
  if (const std::string words = joined(left_out(card), " "); !words.empty())
    page.text(words, small);
}

void add_work(const CardPiece& card, const CardLook& look, PageFlow& page) {
  const std::vector<CardStep> steps = card_steps(card);
  page.space(0.8);
  page.text(card.measure_again() ? "What may be done now"
            : cut_nothing(card)  ? "Before anything is opened"
                                 : "Before the cut",
            {.size = look.text, .bold = true, .indent = 0.0});
  int number = 0;
  for (const CardStep& step : steps) {
    if (step.stop)
      add_stop(card, step.text, page);
    else
      add_step(++number, step.text, step.write, look.text, page);
  }
  if (card.measure_again())
    add_second_measure(card, page);
}

void add_cautions(const CardLook& look, PageFlow& page) {
  page.text(
      "A loaded line and a loaded terminal can maim. One stay at a time, and hold the mast by something "
      "else meanwhile. This card follows from the rig file and nothing else: nobody has judged whether "
      "the rig is strong enough. Local codes and a licensed professional rigger come before it.",
      {.size = look.small - 0.1, .bold = false, .indent = 0.0});
}

std::vector<Drawing> pages_at(const CardPiece& card, const std::string& boat, PaperSize size,
                              const CardLook& look) {
  PageFlow page(size, {.name = "Bench card " + card.piece->name +
                               (card.draft()           ? " DRAFT"
                                : card.measure_again() ? " MEASURE AGAIN"
                                                       : ""),
                       .about = boat,
                       .draft = {},
                       .hatched = card.draft() || card.measure_again()});
  add_card_head(card, look.row_height < 4.4, page);
  add_known(card, look, page);
  if (card.draft()) {
    add_what_releases(card, page);
  } else {
    page.space(1.2);
    add_piece_drawings(card, look, page);
    add_marks_block(card, look, page);
    add_notes(card, look, page);
  }
  page.text(from_where(card) + ": " + stack_words(card),
            {.size = card.draft() ? 3.0 : look.small, .bold = false, .indent = 0.0});
  if (!card.draft() && card.state != PieceState::on_record)
    add_work(card, look, page);
  add_cautions(look, page);
  return page.pages("Bench card of " + card.piece->name,
                    "What to mark on this piece, in which order to make it, and where to sign.");
}

} // namespace

std::vector<Drawing> card_pages(const CardPiece& card, const std::string& boat, PaperSize size) {
  std::vector<Drawing> pages;
  using enum CardLook::Finished;
  for (const CardLook& look :
       {CardLook{5.4, 3.4, 2.8, drawn_with_words}, CardLook{5.0, 3.2, 2.7, drawn_with_words},
        CardLook{4.7, 3.1, 2.6, drawn_with_words}, CardLook{4.5, 3.0, 2.6, drawn_with_words},
        CardLook{4.4, 3.0, 2.5, drawn}, CardLook{4.2, 2.8, 2.5, drawn}, CardLook{4.0, 2.6, 2.4, drawn},
        CardLook{4.2, 2.8, 2.5, in_words}, CardLook{4.0, 2.6, 2.4, in_words}}) {
    pages = pages_at(card, boat, size, look);
    if (pages.size() == 1)
      break;
  }
  return pages;
}

BenchCard::BenchCard()
    : PagesBackend({"bench-card", "bench-cards", "Bench cards",
                    "a page for each piece: marks from one zero, the order of work, where to sign"}) {}

std::vector<Drawing> BenchCard::pages(const BackendRequest& request, const std::string&) const {
  const std::string boat = identity_words(request.checked);
  return pages_of_each(card_pieces(request.checked),
                       [&](const CardPiece& card) { return card_pages(card, boat, request.paper); });
}

} // namespace sheerpole
