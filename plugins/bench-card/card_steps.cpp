#include "backend/card/card_in_hand.hpp"
#include "backend/paper_words.hpp"
#include "calculate/cut/line_ends.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/stated.hpp"
#include "plugins/bench-card/bench_card.hpp"
#include "plugins/bench-card/mark_rows.hpp"
#include "units/format_length.hpp"
#include "wording/papers/bench_card_words.hpp"
#include "wording/papers/chain_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <optional>
#include <string_view>
#include <utility>

namespace sheerpole {

namespace {

using Rows = std::vector<MarkRow>;

std::string bench_tension(const CardPiece& card) {
  const auto tension = fact_force(card.stay->particulars, fact_names.bench_tension);
  return tension ? say(BenchCardPhrase::under_n, format_fixed(tension->value.newtons(), 0))
                 : say(BenchCardPhrase::straight_and_hand_tight);
}

/// How the splices are loaded before the piece is measured again.
std::string setting(const CardPiece& card) {
  if (const auto load = setting_load(card))
    return say(BenchCardPhrase::set_splices_at_kn_as, format_fixed(load->kilonewtons(), 1));
  return say(BenchCardPhrase::load_splices_as_test_splice);
}

const MarkRow& first_mark(const Rows& rows) {
  return *std::find_if(rows.begin(), rows.end(), [](const MarkRow& row) { return row.is_mark(); });
}
const MarkRow& last_mark(const Rows& rows) {
  return *std::find_if(rows.rbegin(), rows.rend(), [](const MarkRow& row) { return row.is_mark(); });
}

const PieceEnd& end_of(const CardPiece& card, WhichEnd where) {
  return where == WhichEnd::upper ? card.piece->upper : card.piece->lower;
}

const Splice* splice_of_end(const CardPiece& card, WhichEnd where) {
  const PieceEnd& end = end_of(card, where);
  return end.splice ? &(*card.rig)[*end.splice] : nullptr;
}

std::string part_words(const CardPiece& card, const PieceEnd& end) {
  return shown(end.part_name(*card.rig), end.part_title(*card.rig));
}

// ---- Laid out ----

/// A line that is hung before it is cut must come off its spool all the same; what goes into the piece
/// whole is off it already.
std::string off_the_spool(const CardPiece& card, const Rows& rows) {
  return cut_nothing(card) || card.state == PieceState::on_record || card.piece->in_hand
             ? std::string()
             : say(card.measure_again() ? BenchCardPhrase::part_it_well_beyond
                                        : BenchCardPhrase::part_it_from_its_spool,
                   last_mark(rows).sign);
}

std::vector<std::string> numbered_marks(const CardPiece& card, const Rows& rows) {
  const std::string& last = last_mark(rows).sign;
  return {say(BenchCardPhrase::make_marks_to_with_one, last),
          (card.measure_again()
               ? say(BenchCardPhrase::check_every_mark_alike, last)
               : say(BenchCardPhrase::check_every_mark_from_mark, last, card.amount(card.cut))) +
              led_by(" ", off_the_spool(card, rows))};
}

/// A chain is counted, not measured: nobody finds a mark between two links.
std::vector<std::string> counted_links(const CardPiece& card) {
  const std::int64_t last = card.links->count;
  std::vector<std::string> steps{say(ChainPhrase::count_links, last, last)};
  if (card.measure_again()) {
    steps.push_back(say(ChainPhrase::part_it_well_past_link, last));
    return steps;
  }
  steps.push_back(say(ChainPhrase::count_again, last, card.amount(card.cut)));
  if (card.state != PieceState::on_record && !card.piece->in_hand)
    steps.back() += " " + say(ChainPhrase::part_it_past_link, last);
  return steps;
}

std::string pulled(const CardPiece& card) {
  return card.cord->pull
             ? say(BenchCardPhrase::pulled_with_n_as_it, format_fixed(card.cord->pull->newtons(), 0))
             : say(BenchCardPhrase::pulled_as_hard_as_it);
}

/// The body is as long as it says at the dock where the cut has left room for the stretch until there; else
/// as it was laid out, and under the pull that set its splices it reads longer.
std::string under_which_pull(const CardPiece& card) {
  if (card.behaves.parts == 0)
    return card.rope() ? say(BenchCardPhrase::with_the_pull_let_off, bench_tension(card)) : std::string();
  const auto dock = fact_force(card.stay->particulars, fact_names.dock_tension);
  return dock ? say(BenchCardPhrase::at_dock_tension_of, format_fixed(dock->value.newtons(), 0))
              : std::string(say(BenchCardPhrase::at_dock_tension));
}

/// Where L is on the line: "mark 10 is 197 mm past it". The lowest mark has its pin from the first pass.
std::string lowest_mark(const CardPiece& card, const Rows& rows) {
  const MarkRow& lowest = last_mark(rows);
  const auto parts = lowest.from_l.parts;
  if (parts == 0)
    return say(BenchCardPhrase::at_mark, lowest.sign);
  return say(BenchCardPhrase::mark_is_it, lowest.sign, card.amount(CardLength{false, std::abs(parts)}),
             parts < 0 ? say(BenchCardPhrase::past) : say(BenchCardPhrase::inside));
}

std::vector<std::string> cord_steps(const CardPiece& card, const Rows& rows) {
  std::vector<std::string> steps;
  const bool closed = card.closed_aloft();
  if (closed && card.measure_again())
    return {say(BenchCardPhrase::close_no_terminal_yet, name_of(card.line->kind))};
  if (closed)
    steps.push_back(say(BenchCardPhrase::close_end_aloft_first_mark, card.amount(card.marks[1].from_upper),
                        name_of(card.line->kind),
                        card.piece->upper.bare() ? say(BenchCardPhrase::its_terminal)
                                                 : part_words(card, card.piece->upper)));
  const CardLength first = card.marks[closed ? 1 : 0].from_u;
  const std::string where =
      first.parts == 0
          ? say(BenchCardPhrase::at_u)
          : fmt::format("{} {} U", card.amount(CardLength{false, std::abs(first.parts)}),
                        first.parts < 0 ? say(BenchCardPhrase::past) : say(BenchCardPhrase::inside));
  steps.push_back(
      say(BenchCardPhrase::lay_cord_along_it_pin, pulled(card),
          closed ? say(BenchCardPhrase::mouth_closed_terminal) : say(BenchCardPhrase::mark_cut_end_aloft),
          where));
  steps.push_back(say(BenchCardPhrase::pass_every_mark_from_bold) + led_by(" ", off_the_spool(card, rows)));
  steps.push_back(say(BenchCardPhrase::pass_take_cord_up_pin, lowest_mark(card, rows),
                      card.amount(apart_at_most(card))));
  return steps;
}

// ---- Hung, nothing opened ----

/// "Bring 3 to 4 and 8 to 7 and seize both eyes."
std::string seizing(const CardPiece& card, const Rows& rows) {
  std::vector<std::string> eyes;
  for (const bool by_upper : {true, false}) {
    const MarkRow* on_tail = row_of(rows, MarkKind::throat_on_tail, by_upper);
    const MarkRow* standing = row_of(rows, MarkKind::throat_on_standing_part, by_upper);
    if (on_tail != nullptr && standing != nullptr)
      eyes.push_back(say(BenchCardPhrase::to, on_tail->sign, standing->sign));
  }
  const std::string check = card.cord ? say(BenchCardPhrase::check_the_halves) : "";
  if (eyes.empty())
    return say(BenchCardPhrase::seize_the_eyes, check);
  return say(BenchCardPhrase::bring_seize, check, joined(eyes, Join::and_word),
             eyes.size() == 2 ? say(BenchCardPhrase::both_eyes) : say(BenchCardPhrase::the_eyes));
}

/// From where to where the body and the dry fit are measured.
PhraseText between(const CardPiece& card) {
  return say(card.mouth_to_mouth() ? BenchCardPhrase::from_mouth_to_mouth
                                   : BenchCardPhrase::from_bearing_to_bearing);
}

std::string dry_fit_step(const CardPiece& card, const Rows& rows) {
  const std::string eyes = card.rope() ? seizing(card, rows) + " " : "";
  const PhraseText nothing = card.rope() ? say(BenchCardPhrase::nothing_cut_or_buried)
                             : card.cord && card.closed_aloft() && !card.measure_again()
                                 ? say(BenchCardPhrase::nothing_cut_end_below_not)
                                 : say(BenchCardPhrase::nothing_cut_or_closed);
  const PhraseText hang = say(rigged_lying(*card.stay) ? BenchCardPhrase::hang_it_on_mast_as_it_lies
                              : card.from_drawing()    ? BenchCardPhrase::hang_it_once_mast_is_up
                                                       : BenchCardPhrase::hang_it_dry_fit_card);
  if (card.links)
    return say(ChainPhrase::dry_fit_by_links, card.links->count, hang);
  if (!card.has_dry_fit)
    return say(BenchCardPhrase::dry_fit_hang_it_dry, eyes, nothing, hang);
  return say(BenchCardPhrase::dry_fit_from_bearing_to, eyes, nothing, card.amount(card.dry_fit),
             between(card), hang);
}

std::string stop_words(const CardPiece& card) {
  if (cut_nothing(card))
    return say(BenchCardPhrase::open_nothing_until_all_three);
  if (card.cord && card.closed_aloft())
    return say(BenchCardPhrase::cut_nothing_and_close_nothing);
  return card.rope() ? say(BenchCardPhrase::cut_nothing_and_open_nothing)
                     : say(BenchCardPhrase::cut_nothing_and_close_nothing_until);
}

// ---- Made ----

std::string cut_step(const CardPiece& card, const Rows& rows) {
  if (card.cord && card.closed_aloft())
    return say(BenchCardPhrase::cut_at_mark_from_mouth, last_mark(rows).sign,
               card.amount(card.cut - (card.marks[1].from_u - card.marks[0].from_u)));
  if (cut_nothing(card))
    return cut_step_words(card);
  if (card.links)
    return say(ChainPhrase::cut_past_link, card.links->count, card.cut_words(card.amount(card.cut)));
  if (card.chain())
    return say(ChainPhrase::cut_at_link_nearest_to_mark, last_mark(rows).sign);
  return say(BenchCardPhrase::cut_at_and_at, first_mark(rows).sign, last_mark(rows).sign,
             card.amount(card.cut), card.rope() ? say(BenchCardPhrase::take_off_seizings) : "");
}

std::string taper_sentence(const Splice& splice, const MarkRow* begins) {
  if (!holds_by_bury(splice))
    return splice.taper.empty() ? "" : say(BenchCardPhrase::taper, splice.taper);
  if (begins != nullptr)
    return say(BenchCardPhrase::taper_from, begins->sign, led_by(": ", splice.taper));
  return splice.taper.empty() ? say(BenchCardPhrase::taper_not_given_follow_rope)
                              : say(BenchCardPhrase::taper, splice.taper);
}

/// "Aloft: long-bury round thimble-16. Bring 3 to 4. Bury from 4, out at 5. Taper from 2: last third."
std::string splice_step(const CardPiece& card, const Rows& rows, WhichEnd where) {
  const PieceEnd& end = end_of(card, where);
  const bool upper = where == WhichEnd::upper;
  const Splice* splice = splice_of_end(card, where);
  std::string text = upper ? say(BenchCardPhrase::aloft_colon) : say(BenchCardPhrase::below_colon);
  if (splice != nullptr)
    text += " " + splice->name;
  if (!end.bare())
    text += say(BenchCardPhrase::round, part_words(card, end));
  text += ".";
  if (splice == nullptr)
    return text;
  const MarkRow* on_tail = row_of(rows, MarkKind::throat_on_tail, upper);
  const MarkRow* standing = row_of(rows, MarkKind::throat_on_standing_part, upper);
  const MarkRow* out = row_of(rows, MarkKind::tail_comes_out, upper);
  if (on_tail != nullptr && standing != nullptr)
    text += say(BenchCardPhrase::bring_to, on_tail->sign, standing->sign);
  if (standing != nullptr && out != nullptr)
    text += say(BenchCardPhrase::bury_from_out_at, standing->sign, out->sign);
  else if (on_tail != nullptr)
    text += say(BenchCardPhrase::throat_at_then, on_tail->sign, bury_words(card, where));
  text += taper_sentence(*splice, row_of(rows, MarkKind::taper_begins, upper));
  if (const std::string throat = fact_text(splice->particulars, fact_names.throat); !throat.empty())
    text += say(BenchCardPhrase::throat, throat);
  if (const MarkRow* trim = row_of(rows, MarkKind::trim_of_tail, upper))
    text += say(BenchCardPhrase::trim_tail_at, trim->sign);
  return text;
}

/// What locks the throat of one end; nothing for a splice that does not hold by its bury and states none.
std::optional<std::string> lock_of(const CardPiece& card, WhichEnd where) {
  const Splice* splice = splice_of_end(card, where);
  if (splice == nullptr)
    return std::nullopt;
  const std::string locking = fact_text(splice->particulars, fact_names.locking);
  if (locking.empty())
    return holds_by_bury(*splice)
               ? std::optional<std::string>(say(BenchCardPhrase::no_method_is_given_follow))
               : std::nullopt;
  return read_stated(locking).answer == Answer::nothing
             ? std::string(say(BenchCardPhrase::nothing_locks_it))
             : locking;
}

std::string lock_step(std::string_view which, const std::string& how) {
  return fmt::format("{} {}{} {}.",
                     how == say(BenchCardPhrase::nothing_locks_it) ? say(BenchCardPhrase::at)
                                                                   : say(BenchCardPhrase::lock),
                     which, how == say(BenchCardPhrase::no_method_is_given_follow) ? "." : ":", how);
}

std::vector<std::string> lock_steps(const CardPiece& card) {
  const auto aloft = lock_of(card, WhichEnd::upper);
  const auto below = lock_of(card, WhichEnd::lower);
  if (aloft && below && *aloft == *below)
    return {lock_step(say(BenchCardPhrase::both_throats), *aloft)};
  std::vector<std::string> steps;
  if (aloft)
    steps.push_back(lock_step(say(BenchCardPhrase::the_throat_aloft), *aloft));
  if (below)
    steps.push_back(lock_step(say(BenchCardPhrase::the_throat_below), *below));
  return steps;
}

/// What the crown of an eye of wire is set off from: the end aloft is closed first, from the mark below.
std::string other_bearing(const Rows& rows, WhichEnd where) {
  if (where == WhichEnd::lower)
    return std::string(say(BenchCardPhrase::bearing_made_aloft));
  for (const MarkKind kind : {MarkKind::mouth_of_terminal, MarkKind::crown_of_loop, MarkKind::cut_end})
    if (const MarkRow* row = row_of(rows, kind, false))
      return say(BenchCardPhrase::mark_of_other_end, row->sign);
  return std::string(say(BenchCardPhrase::bearing_made_aloft));
}

std::string terminal_step(const CardPiece& card, const Rows& rows, WhichEnd where) {
  const bool upper = where == WhichEnd::upper;
  const PieceEnd& end = end_of(card, where);
  const PhraseText word = upper ? say(BenchCardPhrase::aloft_begins) : say(BenchCardPhrase::below_begins);
  if (end.bare())
    return say(BenchCardPhrase::no_part_is_named_end, word);
  if (card.links)
    return say(ChainPhrase::make_fast_to_link, word, part_words(card, end),
               upper ? std::int64_t{1} : card.links->count);
  if (card.chain())
    return say(ChainPhrase::make_fast_to_end_link, word, part_words(card, end));
  const MarkRow* mouth = row_of(rows, MarkKind::mouth_of_terminal, upper);
  const MarkRow* crown = row_of(rows, MarkKind::crown_of_loop, upper);
  if (mouth == nullptr && crown == nullptr)
    return say(BenchCardPhrase::close_on_it, word, part_words(card, end));
  const CardMark& mark = upper ? card.marks[1] : card.marks[card.marks.size() - 2];
  const std::string beyond = card.amount(upper ? mark.from_upper : mark.from_lower);
  if (crown == nullptr)
    return say(BenchCardPhrase::put_wire_into_to_mark, word, name_of(card.line->kind),
               part_words(card, end), mouth->sign, beyond);
  // The legs round a seat are longer than the way straight through it, so no mark can be laid at the crown:
  // what is set is the length of the stay.
  return say(wire_goes_into_sleeve(card, end) ? BenchCardPhrase::lay_wire_round_with_mark
                                              : BenchCardPhrase::lay_wire_round_back_along_itself,
             word, part_words(card, end), card.amount(card.has_dry_fit ? card.dry_fit : card.body),
             other_bearing(rows, where), beyond, crown->sign);
}

/// How much rope lies round each eye from throat to throat as the card has it, to hold a test wrap against.
std::string round_the_eyes(const CardPiece& card, const Rows& rows) {
  std::vector<std::string> eyes;
  for (const bool upper : {true, false}) {
    const MarkRow* tail = row_of(rows, MarkKind::throat_on_tail, upper);
    const MarkRow* standing = row_of(rows, MarkKind::throat_on_standing_part, upper);
    if (tail == nullptr || standing == nullptr || !tail->is_mark() || !standing->is_mark())
      continue;
    const CardLength round = upper ? standing->from_u - tail->from_u : standing->from_l - tail->from_l;
    eyes.push_back(say(upper ? BenchCardPhrase::round_eye_aloft : BenchCardPhrase::round_eye_below,
                       card.amount({false, std::abs(round.parts)}), upper ? tail->sign : standing->sign,
                       upper ? standing->sign : tail->sign,
                       eye_taken(card, end_of(card, upper ? WhichEnd::upper : WhichEnd::lower))));
  }
  return eyes.empty() ? std::string() : say(BenchCardPhrase::card_has_round, joined(eyes, ", "));
}

} // namespace

std::vector<std::string> threaded_first(const CardPiece& card) {
  std::vector<std::string> names;
  const std::vector<StackItem>& stack = card.stay->stack;
  const auto is_worn = [&](std::size_t i) {
    return stack[i].kind == StackItem::Kind::part && (*card.rig)[stack[i].part].role == Part::Role::worn;
  };
  // A pin and a bush are worn by a joint, not by the line.
  const auto add = [&](std::size_t i) {
    const Part& part = (*card.rig)[stack[i].part];
    if (part.kind != PartKind::pin && part.kind != PartKind::bush)
      names.push_back(shown(part.name, part.title));
  };
  // Worn parts stand beside the line, on either side of it.
  for (std::size_t i = card.item; i-- > 0 && is_worn(i);)
    add(i);
  for (std::size_t i = card.item + 1; i < stack.size() && is_worn(i); ++i)
    add(i);
  return names;
}

std::vector<CardStep> card_steps(const CardPiece& card) {
  const Rows rows = mark_rows(card);
  std::vector<CardStep> steps;
  const auto add = [&](std::string text) { steps.push_back({std::move(text)}); };
  const auto add_to_write = [&](std::string text) { steps.push_back({std::move(text), false, true}); };
  const auto add_all = [&](std::vector<std::string> texts) {
    for (std::string& text : texts)
      add(std::move(text));
  };
  add(say(BenchCardPhrase::read_label_line_fill_in, card.line->construction.text, card.line->size.name,
          bench_tension(card)));
  if (!eyes_that_disagree(card).empty())
    add(say(BenchCardPhrase::wrap_eyes_again_another_length, round_the_eyes(card, rows)));
  add_all(card.cord    ? cord_steps(card, rows)
          : card.links ? counted_links(card)
                       : numbered_marks(card, rows));
  const std::vector<std::string> first = threaded_first(card);
  if (!first.empty())
    add(say(BenchCardPhrase::goes_on_before_second_end, joined(first, ", ")));
  const bool closes_first = card.cord && card.closed_aloft();
  if (!card.measure_again() || !closes_first)
    add(dry_fit_step(card, rows));
  if (card.measure_again())
    return steps;
  steps.push_back({stop_words(card), true});
  add(cut_step(card, rows));
  if (card.rope()) {
    add(splice_step(card, rows, WhichEnd::upper));
    add(splice_step(card, rows, WhichEnd::lower));
    add_all(lock_steps(card));
    add_to_write(setting(card));
  } else {
    if (!card.cord || !card.closed_aloft()) // closed already, to lay the cord along it
      add(terminal_step(card, rows, WhichEnd::upper));
    add(terminal_step(card, rows, WhichEnd::lower));
  }
  add_to_write(say(BenchCardPhrase::measure_again_as_made, under_which_pull(card), card.amount(card.body),
                   between(card)));
  return steps;
}

} // namespace sheerpole
