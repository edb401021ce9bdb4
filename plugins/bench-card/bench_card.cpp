#include "plugins/bench-card/bench_card.hpp"

#include "backend/accuracy_words.hpp"
#include "backend/card/card_in_hand.hpp"
#include "backend/paper_identity.hpp"
#include "backend/paper_words.hpp"
#include "plugins/bench-card/card_blocks.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/bench_card_words.hpp"
#include "wording/papers/chain_words.hpp"
#include "wording/say.hpp"

#include <array>
#include <cstdlib>
#include <utility>

namespace sheerpole {

namespace {

/// How well the length is known, by the worst case; or that nobody has said.
std::string known_to(const CardPiece& card) {
  const auto& found = card.of_stay->uncertainty;
  if (!found || card.stay->stack[card.item].line_length)
    return say(BenchCardPhrase::accuracy_unknown_no_bound_is);
  const std::string worst =
      say(BenchCardPhrase::at_worst, card_text(card.unit, card.unit.round_outwards(found->worst_low)),
          card.amount(card.unit.round_outwards(found->worst_high)));
  if (found->without_bound.empty())
    return say(BenchCardPhrase::known_to, worst);
  return say(BenchCardPhrase::accuracy_unknown_no_bound_for,
             without_tolerance(*found, [&](const Remark& what) { return card.spoken(what); }), worst);
}

/// "From aloft, at the main masthead, to below, at the stem".
std::string from_where(const CardPiece& card) {
  if (card.stay->path.size() < 2)
    return say(BenchCardPhrase::from_aloft);
  return say(BenchCardPhrase::from_aloft_to_below, where_words(*card.rig, *card.stay, WhichEnd::upper),
             where_words(*card.rig, *card.stay, WhichEnd::lower));
}

/// What else there is to know of an end, in the unit of the card; what stands in a box is left out. Of a
/// chain the card has it in words of its own (links_sentence()).
std::string notes_words(const CardPiece& card, const PieceEnd& end) {
  if (card.chain())
    return {};
  std::vector<std::string> words;
  for (const Remark& note : end.notes)
    if (!eye_disagrees(card, end, note))
      words.push_back(card.spoken(note));
  return joined(words, Join::semicolon);
}

/// What the cut leaves out because the file says nothing of it, and what would move it if it were known.
std::vector<std::string> left_out(const CardPiece& card) {
  std::vector<std::string> words;
  if (!card.piece->not_counted.empty())
    words.push_back(
        say(BenchCardPhrase::not_in_cut, joined(card.spoken(card.piece->not_counted), Join::semicolon)));
  if (!card.of_stay->not_corrected.empty())
    words.push_back((card.cord ? say(BenchCardPhrase::not_counted_in_how_well)
                               : say(BenchCardPhrase::reading_is_not_corrected_for)) +
                    joined(card.spoken(card.of_stay->not_corrected), Join::semicolon) + ".");
  std::vector<std::string> eyes;
  const std::string aloft = notes_words(card, card.piece->upper);
  const std::string below = notes_words(card, card.piece->lower);
  if (!aloft.empty())
    eyes.push_back((aloft == below ? say(BenchCardPhrase::both) : say(BenchCardPhrase::aloft)) + aloft);
  if (!below.empty() && aloft != below)
    eyes.push_back(say(BenchCardPhrase::below, below));
  if (!eyes.empty())
    words.push_back(say(BenchCardPhrase::eyes, joined(eyes, "; ")));
  return words;
}

/// "+ 1720 mm", "- 12 mm": with its sign, to be read in a sum.
std::string added_words(const CardPiece& card, CardLength length) {
  return (length.parts < 0 ? "- " : "+ ") + card.amount(CardLength{false, std::abs(length.parts)});
}

/// The cut in three numbers that can be added up by hand.
std::string sum_by_hand(const CardPiece& card) {
  return say(BenchCardPhrase::by_hand_body_for_ends, card.amount(card.body), added_words(card, card.ends),
             card.behaves.parts == 0 ? ""
                                     : say(BenchCardPhrase::for_the_line, added_words(card, card.behaves)),
             card.amount(card.cut));
}

/// A chain is cut by counting: how many of its links, and what is off what was worked out.
std::string links_sentence(const CardPiece& card) {
  if (card.links)
    return say(ChainPhrase::goes_by_links, card.cut_words(card.amount(card.cut)), card.links_off());
  const std::string pitch = pitch_words(*card.line);
  return pitch.empty() ? std::string(say(ChainPhrase::pitch_not_given))
                       : say(ChainPhrase::every_link, pitch);
}

/// In which unit the lengths are, and where the columns begin.
std::string unit_sentence(const CardPiece& card) {
  return say(BenchCardPhrase::lengths_in, unit_words(card.unit),
             card.cord || card.links ? "" : say(BenchCardPhrase::zero_at_cut_end_aloft),
             card.unit.remark.empty() ? "" : " ", card.unit.remark);
}

/// What a bearing is on this card; nothing where no length of it is measured from one.
std::string bearing_sentence(const CardPiece& card) {
  return card.rope()             ? say(BenchCardPhrase::bearing_of_rope)
         : card.chain()          ? say(ChainPhrase::bearing_of_chain)
         : card.mouth_to_mouth() ? std::string()
                                 : say(BenchCardPhrase::bearing_of_wire);
}

void add_known(const CardPiece& card, const CardLook& look, PageFlow& page) {
  page.text(card.state_line, {.size = look.small + 0.4, .bold = !card.settled, .indent = 0.0});
  if (card.draft())
    return;
  page.text(known_to(card) + " " + unit_sentence(card) + led_by(" ", bearing_sentence(card)),
            {.size = look.small, .bold = false, .indent = 0.0});
}

void add_notes(const CardPiece& card, const CardLook& look, PageFlow& page) {
  const TextLook small{.size = look.small, .bold = false, .indent = 0.0};
  for (const std::string& unknown : card.spoken(card.piece->bench.not_known))
    page.text(say(BenchCardPhrase::no_mark, unknown), {.size = look.small, .bold = true, .indent = 0.0});
  for (const std::string& line : in_hand_lines(card))
    page.text(line, small);
  if (card.chain() && !card.measure_again())
    page.text(links_sentence(card), {.size = look.small + 0.2, .bold = true, .indent = 0.0});
  else if (!card.cord && !card.measure_again())
    page.text(sum_by_hand(card), {.size = look.small + 0.2, .bold = true, .indent = 0.0});
  if (const std::string words = joined(left_out(card), " "); !words.empty())
    page.text(words, small);
}

void add_work(const CardPiece& card, const CardLook& look, PageFlow& page) {
  const std::vector<CardStep> steps = card_steps(card);
  page.space(0.8);
  page.text(card.measure_again() ? say(BenchCardPhrase::what_may_be_done_now)
            : cut_nothing(card)  ? say(BenchCardPhrase::before_anything_is_opened)
                                 : say(BenchCardPhrase::before_the_cut),
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
  page.text(say(BenchCardPhrase::loaded_line_and_loaded_terminal),
            {.size = look.small - 0.1, .bold = false, .indent = 0.0});
}

std::vector<Drawing> pages_at(const CardPiece& card, const std::string& boat, PaperSize size,
                              const CardLook& look) {
  PageFlow page(size, {.name = say(BenchCardPhrase::bench_card, card.piece->name,
                                   (card.draft()           ? say(BenchCardPhrase::draft)
                                    : card.measure_again() ? say(BenchCardPhrase::measure_again)
                                                           : "")),
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
  return page.pages(say(BenchCardPhrase::bench_card_of, card.piece->name),
                    say(BenchCardPhrase::what_to_mark_on_this));
}

} // namespace

std::vector<Drawing> card_pages(const CardPiece& card, const std::string& boat, PaperSize size) {
  using enum CardLook::Finished;
  static constexpr std::array looks{CardLook{5.4, 3.4, 2.8, drawn_with_words},
                                    CardLook{5.0, 3.2, 2.7, drawn_with_words},
                                    CardLook{4.7, 3.1, 2.6, drawn_with_words},
                                    CardLook{4.5, 3.0, 2.6, drawn_with_words},
                                    CardLook{4.4, 3.0, 2.5, drawn},
                                    CardLook{4.2, 2.8, 2.5, drawn},
                                    CardLook{4.0, 2.6, 2.4, drawn},
                                    CardLook{4.2, 2.8, 2.5, in_words},
                                    CardLook{4.0, 2.6, 2.4, in_words}};
  std::vector<Drawing> pages = pages_at(card, boat, size, looks.front());
  if (pages.size() == 1)
    return pages;
  // Each takes less room than the one before, so the first that fits is between one that does not and one
  // that does: a card of a rope would be set six times one by one.
  std::size_t least = 1;
  std::size_t most = looks.size() - 1;
  std::size_t set_at = 0; // of `pages`
  while (least < most) {
    const std::size_t middle = (least + most) / 2;
    std::vector<Drawing> at_middle = pages_at(card, boat, size, looks[middle]);
    if (at_middle.size() == 1) {
      pages = std::move(at_middle);
      set_at = most = middle;
    } else {
      least = middle + 1;
    }
  }
  return set_at == least ? pages : pages_at(card, boat, size, looks[least]);
}

BenchCard::BenchCard()
    : PagesBackend({"bench-card", "bench-cards", say(BenchCardPhrase::bench_cards),
                    say(BenchCardPhrase::page_for_each_piece_marks)}) {}

std::vector<Drawing> BenchCard::pages(const BackendRequest& request, const std::string&) const {
  const std::string boat = identity_words(request.checked);
  return pages_of_each(card_pieces(request.checked),
                       [&](const CardPiece& card) { return card_pages(card, boat, request.paper); });
}

} // namespace sheerpole
