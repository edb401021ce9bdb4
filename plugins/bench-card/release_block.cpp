#include "backend/drawing/label_text.hpp"
#include "calculate/cut/line_ends.hpp"
#include "plugins/bench-card/card_blocks.hpp"
#include "plugins/bench-card/card_ink.hpp"
#include "wording/length_phrases.hpp"
#include "wording/papers/bench_card_words.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace sheerpole {

namespace {

/// White on black, larger than a box to tick.
constexpr double letter_side = 6.4;

/// "A" to "Z", then "27" and on.
std::string letter_of(std::size_t number) {
  return number < 26 ? std::string(1, static_cast<char>('A' + number)) : std::to_string(number + 1);
}

void add_reason(const Awaited& one, std::size_t number, PageFlow& page) {
  constexpr double indent = 10.0;
  const double room = page.width() - indent;
  const SetLines reason = set_lines(one.reason, room, true, {3.9, 3.4});
  const SetLines mend = set_lines(one.mend, room, false, {3.4});
  const double height =
      std::max(letter_side, reason.height() + (one.mend.empty() ? 0.0 : mend.height())) + 2.2;
  std::vector<ReflowBlock> narrow;
  narrow.emplace_back(ReflowText{ReflowText::Kind::text, letter_of(number) + "  " + one.reason, true});
  if (!one.mend.empty())
    narrow.emplace_back(ReflowText{ReflowText::Kind::text, one.mend, false});
  page.drawing(
      height,
      [&](ShapeGroup& into, PaperPoint at) {
        black_box(into, {at.x, at.y + 0.6, at.x + letter_side, at.y + 0.6 + letter_side});
        const std::string letter = letter_of(number);
        write_white(into, {at.x + letter_side / 2.0, at.y + 5.2}, letter, 3.9, true, TextAnchor::middle);
        const double y = write_lines(into, reason, {at.x + indent, at.y}, true);
        if (!one.mend.empty())
          write_lines(into, mend, {at.x + indent, y}, false);
        into.add(LineShape{
            {at.x, at.y + height - 0.6}, {at.x + page.width(), at.y + height - 0.6}, ink(0.18), ""});
      },
      std::move(narrow));
}

/// Whether an eye is made that a test splice can be made of.
bool has_a_bury(const CardPiece& card) {
  return std::any_of(card.piece->bench.marks.begin(), card.piece->bench.marks.end(),
                     [](const BenchMark& mark) { return mark.kind == MarkKind::throat_on_tail; });
}

bool is_guessed(const std::optional<Sourced<double>>& value) {
  return !value || value->provenance.source_class == SourceClass::assumed;
}

/// Whether what is missing is what a test splice tells: the contraction, or what an eye takes.
bool a_test_splice_tells(const CardPiece& card) {
  if (!card.rope() || !has_a_bury(card))
    return false;
  for (const PieceEnd* end : {&card.piece->upper, &card.piece->lower}) {
    if (!end->splice)
      continue;
    const Splice& splice = (*card.rig)[*end->splice];
    const bool eye_guessed =
        splice.eye_allowance && splice.eye_allowance->provenance.source_class == SourceClass::assumed;
    if (is_guessed(splice.contraction) || eye_guessed)
      return true;
  }
  return false;
}

void draw_letter(ShapeGroup& into, const char* letter, double x, double y) {
  into.add(RectangleShape{{x - 1.8, y - 7.4, x + 1.8, y - 3.2}, ink(0.35), ""});
  write(into, {x, y - 4.2}, letter, 3.2, true, TextAnchor::middle);
  into.add(LineShape{{x, y - 3.2}, {x, y + 2.2}, ink(0.5), ""});
}

void draw_band(ShapeGroup& into, double left, double right, double y) {
  into.add(RectangleShape{{left, y - 1.3, right, y + 1.3}, ink(0.35), ""});
  for (double x = left + 1.6; x + 1.6 < right; x += 3.2)
    into.add(LineShape{{x, y + 0.5}, {x + 1.4, y - 0.5}, ink(0.18), ""});
}

void draw_way(ShapeGroup& into, double left, double right, double y, PhraseText words) {
  into.add(LineShape{{left, y}, {right, y}, ink(0.25), ""});
  for (const double x : {left, right})
    into.add(LineShape{{x, y - 1.5}, {x, y + 1.5}, ink(0.25), ""});
  write(into, {(left + right) / 2.0, y - 1.0}, words, 3.2, true, TextAnchor::middle);
}

void draw_test_splice(double width, PaperPoint at, ShapeGroup& into) {
  const double straight = at.y + 9.0;
  draw_band(into, at.x + 3.0, at.x + width - 3.0, straight);
  draw_letter(into, "p", at.x + 0.25 * width, straight);
  draw_letter(into, "q", at.x + 0.70 * width, straight);
  draw_way(into, at.x + 0.25 * width, at.x + 0.70 * width, straight + 6.0, say(BenchCardPhrase::before));
  write(into, {at.x + 3.0, straight + 5.4}, say(BenchCardPhrase::rope_end), 2.7);
  const double made = at.y + 28.0;
  const double p = at.x + 0.25 * width;
  const double comes_out = at.x + 0.50 * width;
  std::vector<PaperPoint> loop{{p, made}};
  constexpr int steps = 24;
  for (int i = 0; i <= steps; ++i) {
    const double angle = std::numbers::pi * (0.40 + 1.20 * i / steps);
    loop.push_back({at.x + 18.0 + 5.4 * std::cos(angle), made - 5.4 * std::sin(angle)});
  }
  into.add(PolygonShape{std::move(loop), ink(0.35), ""});
  into.add(CircleShape{{at.x + 18.0, made}, 2.4, ink(0.35), ""});
  into.add(RectangleShape{{p, made - 2.2, comes_out, made + 2.2}, ink(0.35), ""});
  for (const double side : {-0.8, 0.8})
    into.add(LineShape{{p, made + side}, {comes_out, made + side}, ink(0.25, {1.2, 0.8}), ""});
  draw_band(into, comes_out, at.x + width - 3.0, made);
  draw_letter(into, "p", p, made);
  draw_letter(into, "q", at.x + 0.66 * width, made);
  draw_way(into, p, at.x + 0.66 * width, made + 6.6, say(BenchCardPhrase::after));
}

void add_test_splice(PageFlow& page) {
  page.heading(say(BenchCardPhrase::test_splice_same_rope_same), 3.8, 60.0);
  page.drawing(38.0, [&](ShapeGroup& into, PaperPoint at) { draw_test_splice(page.width(), at, into); });
  const TextLook look{.size = 3.3, .bold = false, .indent = 0.0};
  page.text(say(BenchCardPhrase::lay_rope_straight_mark_p), look);
  page.text(say(BenchCardPhrase::wrap_eye_measure_how_much), look);
  page.text(say(BenchCardPhrase::splice_as_stay_will_be), look);
  for (const PhraseText words : {say(BenchCardPhrase::eye_takes), say(BenchCardPhrase::p_to_q_before),
                                 say(BenchCardPhrase::p_to_q_after), say(BenchCardPhrase::pull_by_day)})
    page.to_write(words, {.size = 3.2, .bold = false, .indent = 0.0});
}

} // namespace

void add_second_measure(const CardPiece& card, PageFlow& page) {
  page.heading(say(BenchCardPhrase::what_releases_the_cut), 4.2);
  std::size_t number = 0;
  for (const DraftReason& one : card.held_by)
    add_reason({one.reason, one.mend, {}}, number++, page);
  page.text(say(BenchCardPhrase::cut_nothing_and_open_or_close,
                card.rope() ? say(BenchCardPhrase::open_word) : say(BenchCardPhrase::close_word),
                // A wire whose end aloft would be closed first cannot be hung with nothing closed.
                card.cord && card.closed_aloft() ? say(BenchCardPhrase::hoisted_again_will_do)
                                                 : say(BenchCardPhrase::hoisted_again_or_dry_fit)),
            {.size = 3.4, .bold = false, .indent = 0.0});
}

void add_what_releases(const CardPiece& card, PageFlow& page) {
  page.heading(say(BenchCardPhrase::what_releases_this_card), 4.2);
  std::size_t number = 0;
  for (const Awaited& one : awaited(card.draft_reasons))
    add_reason(one, number++, page);
  if (a_test_splice_tells(card))
    add_test_splice(page);
  page.heading(say(BenchCardPhrase::meanwhile), 4.2);
  const TextLook look{.size = 3.4, .bold = false, .indent = 0.0};
  page.text(say(BenchCardPhrase::you_may_measure_stay_in), look);
  page.text(say(BenchCardPhrase::leave_knife_and_fid_alone), look);
}

} // namespace sheerpole
