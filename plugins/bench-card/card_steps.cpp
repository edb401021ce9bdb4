#include "backend/card/card_in_hand.hpp"
#include "backend/paper_words.hpp"
#include "calculate/cut/line_ends.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/stated.hpp"
#include "plugins/bench-card/bench_card.hpp"
#include "plugins/bench-card/mark_rows.hpp"
#include "units/format_length.hpp"
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
  return tension ? fmt::format("under {} N", format_fixed(tension->value.newtons(), 0))
                 : std::string("straight and hand-tight");
}

/// How the splices are loaded before the piece is measured again: of the last test splice on this rope that
/// states it.
std::string setting(const CardPiece& card) {
  std::optional<std::pair<std::string, Force>> latest; // the order in the file says nothing
  for (const Record& record : card.rig->records) {
    if (record.kind != RecordKind::test_splice || record.of != card.line->name)
      continue;
    if (const auto stated = fact_force(record.facts, fact_names.setting_load))
      if (std::pair one(fact_text(record.facts, fact_names.date), stated->value); !latest || *latest < one)
        latest = std::move(one);
  }
  if (latest)
    return fmt::format("Set the splices at {} kN, as the test splice was. Load and time:",
                       format_fixed(latest->second.kilonewtons(), 1));
  return "Load the splices as the test splice was loaded: no setting load is given. Load and time:";
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

std::vector<std::string> numbered_marks(const CardPiece& card, const Rows& rows) {
  const std::string& last = last_mark(rows).sign;
  return {fmt::format("Make marks 1 to {} with one tape, zero at mark 1, the cut end aloft.", last),
          card.measure_again()
              ? fmt::format("Check every mark from mark {}: its two columns add up to the same everywhere.",
                            last)
              : fmt::format("Check every mark from mark {}. The two columns add up to {}.", last,
                            card.amount(card.cut))};
}

std::string pulled(const CardPiece& card) {
  return card.cord->pull
             ? fmt::format("pulled with {} N, as it was aloft", format_fixed(card.cord->pull->newtons(), 0))
             : std::string("pulled as hard as it was aloft");
}

/// Where L is on the line: "mark 10 is 197 mm past it". The lowest mark has its pin from the first pass.
std::string lowest_mark(const CardPiece& card, const Rows& rows) {
  const MarkRow& lowest = last_mark(rows);
  const auto parts = lowest.from_l.parts;
  if (parts == 0)
    return fmt::format("at mark {}", lowest.sign);
  return fmt::format("mark {} is {} {} it", lowest.sign, card.amount(CardLength{false, std::abs(parts)}),
                     parts < 0 ? "past" : "inside");
}

std::vector<std::string> cord_steps(const CardPiece& card, const Rows& rows) {
  std::vector<std::string> steps;
  const bool closed = card.closed_aloft();
  if (closed && card.measure_again())
    return {"Close no terminal yet. The cord is laid along the wire when its end aloft is closed."};
  if (closed)
    steps.push_back(fmt::format(
        "Close the end aloft first: mark {} on the wire from its end, put it in {} as deep as the mark, "
        "close it, and see that the mark has gone in. From now on its mouth counts, mark 2.",
        card.amount(card.marks[1].from_upper),
        card.piece->upper.bare() ? "its terminal" : part_words(card, card.piece->upper)));
  const CardLength first = card.marks[closed ? 1 : 0].from_u;
  const std::string where =
      first.parts == 0 ? "at U"
                       : fmt::format("{} {} U", card.amount(CardLength{false, std::abs(first.parts)}),
                                     first.parts < 0 ? "past" : "inside");
  steps.push_back(fmt::format("Lay the cord along it, {}. Pin {} {}.", pulled(card),
                              closed ? "the mouth of the closed terminal" : "mark 1, the cut end aloft,",
                              where));
  steps.push_back("Pass 1: every mark from the bold column, from U or from L. A pin in each.");
  steps.push_back(
      fmt::format("Pass 2: take the cord up, pin L first ({}), lay out again. More than {} apart: a third "
                  "pass, the middle one counts.",
                  lowest_mark(card, rows), card.amount(apart_at_most(card))));
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
      eyes.push_back(fmt::format("{} to {}", on_tail->sign, standing->sign));
  }
  const std::string check = card.cord ? "Check the halves. " : "";
  if (eyes.empty())
    return check + "Seize the eyes.";
  return fmt::format("{}Bring {}, seize {}.", check, joined(eyes, Join::and_word),
                     eyes.size() == 2 ? "both eyes" : "the eyes");
}

std::string dry_fit_step(const CardPiece& card, const Rows& rows) {
  const std::string eyes = card.rope() ? seizing(card, rows) + " " : "";
  const char* nothing = card.rope()                        ? "nothing cut or buried"
                        : card.cord && card.closed_aloft() ? "nothing cut, the end below not closed"
                                                           : "nothing cut or closed";
  if (!card.has_dry_fit)
    return eyes + fmt::format("Dry fit, {}. Hang it: dry-fit card.", nothing);
  return eyes + fmt::format("Dry fit, {}: {} from bearing to bearing. Hang it: dry-fit "
                            "card.",
                            nothing, card.amount(card.dry_fit));
}

std::string stop_words(const CardPiece& card) {
  if (cut_nothing(card))
    return "Open nothing until all three are signed.";
  if (card.cord && card.closed_aloft())
    return "Cut nothing and close nothing more until all three are signed.";
  return card.rope() ? "Cut nothing and open nothing until all three are signed."
                     : "Cut nothing and close nothing until all three are signed.";
}

// ---- Made ----

std::string cut_step(const CardPiece& card, const Rows& rows) {
  if (card.cord && card.closed_aloft())
    return fmt::format("Cut at mark {}, {} from the mouth of the closed end.", last_mark(rows).sign,
                       card.amount(card.cut - (card.marks[1].from_u - card.marks[0].from_u)));
  if (cut_nothing(card))
    return cut_step_words(card);
  return fmt::format("Cut at {} and at {}: {}.{}", first_mark(rows).sign, last_mark(rows).sign,
                     card.amount(card.cut), card.rope() ? " Take off the seizings." : "");
}

std::string taper_sentence(const Splice& splice, const MarkRow* begins) {
  if (!holds_by_bury(splice))
    return splice.taper.empty() ? "" : " Taper: " + splice.taper + ".";
  if (begins != nullptr)
    return fmt::format(" Taper from {}{}.", begins->sign, led_by(": ", splice.taper));
  return splice.taper.empty() ? " Taper not given: follow the rope maker."
                              : " Taper: " + splice.taper + ".";
}

/// "Aloft: long-bury round thimble-16. Bring 3 to 4. Bury from 4, out at 5. Taper from 2: last third."
std::string splice_step(const CardPiece& card, const Rows& rows, WhichEnd where) {
  const PieceEnd& end = end_of(card, where);
  const bool upper = where == WhichEnd::upper;
  const Splice* splice = splice_of_end(card, where);
  std::string text = upper ? "Aloft:" : "Below:";
  if (splice != nullptr)
    text += " " + splice->name;
  if (!end.bare())
    text += " round " + part_words(card, end);
  text += ".";
  if (splice == nullptr)
    return text;
  const MarkRow* on_tail = row_of(rows, MarkKind::throat_on_tail, upper);
  const MarkRow* standing = row_of(rows, MarkKind::throat_on_standing_part, upper);
  const MarkRow* out = row_of(rows, MarkKind::tail_comes_out, upper);
  if (on_tail != nullptr && standing != nullptr)
    text += fmt::format(" Bring {} to {}.", on_tail->sign, standing->sign);
  if (standing != nullptr && out != nullptr)
    text += fmt::format(" Bury from {}, out at {}.", standing->sign, out->sign);
  else if (on_tail != nullptr)
    text += fmt::format(" Throat at {}, then {}.", on_tail->sign, bury_words(card, where));
  text += taper_sentence(*splice, row_of(rows, MarkKind::taper_begins, upper));
  if (const std::string throat = fact_text(splice->particulars, fact_names.throat); !throat.empty())
    text += " Throat: " + throat + ".";
  if (const MarkRow* trim = row_of(rows, MarkKind::trim_of_tail, upper))
    text += fmt::format(" Trim the tail at {}.", trim->sign);
  return text;
}

constexpr std::string_view nothing_locks = "nothing locks it";
constexpr std::string_view no_lock = "No method is given: follow the rope maker";

/// What locks the throat of one end; nothing for a splice that does not hold by its bury and states none.
std::optional<std::string> lock_of(const CardPiece& card, WhichEnd where) {
  const Splice* splice = splice_of_end(card, where);
  if (splice == nullptr)
    return std::nullopt;
  const std::string locking = fact_text(splice->particulars, fact_names.locking);
  if (locking.empty())
    return holds_by_bury(*splice) ? std::optional<std::string>(no_lock) : std::nullopt;
  return read_stated(locking).answer == Answer::nothing ? std::string(nothing_locks) : locking;
}

std::string lock_step(std::string_view which, const std::string& how) {
  return fmt::format("{} {}{} {}.", how == nothing_locks ? "At" : "Lock", which, how == no_lock ? "." : ":",
                     how);
}

std::vector<std::string> lock_steps(const CardPiece& card) {
  const auto aloft = lock_of(card, WhichEnd::upper);
  const auto below = lock_of(card, WhichEnd::lower);
  if (aloft && below && *aloft == *below)
    return {lock_step("both throats", *aloft)};
  std::vector<std::string> steps;
  if (aloft)
    steps.push_back(lock_step("the throat aloft", *aloft));
  if (below)
    steps.push_back(lock_step("the throat below", *below));
  return steps;
}

std::string terminal_step(const CardPiece& card, const Rows& rows, WhichEnd where) {
  const bool upper = where == WhichEnd::upper;
  const PieceEnd& end = end_of(card, where);
  const char* word = upper ? "Aloft" : "Below";
  if (end.bare())
    return fmt::format("{}: no part is named, the end stays bare.", word);
  const MarkRow* mouth = row_of(rows, MarkKind::mouth_of_terminal, upper);
  if (mouth == nullptr)
    return fmt::format("{}: close {} on it.", word, part_words(card, end));
  const CardMark& mark = upper ? card.marks[1] : card.marks[card.marks.size() - 2];
  return fmt::format(
      "{}: put the wire into {} to mark {}, {} deep. Hold it at the mark while the terminal is "
      "closed.",
      word, part_words(card, end), mouth->sign, card.amount(upper ? mark.from_upper : mark.from_lower));
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
  add(fmt::format("Read the label of the line: {}, {}. Fill in spool and batch. Lay it out {}.",
                  card.line->construction.text, card.line->size.name, bench_tension(card)));
  if (!eyes_that_disagree(card).empty())
    add("Wrap the eyes again. Another length than the box says: put it in the rig file and print this card "
        "again.");
  add_all(card.cord ? cord_steps(card, rows) : numbered_marks(card, rows));
  const std::vector<std::string> first = threaded_first(card);
  if (!first.empty())
    add("Goes on before the second end is closed: " + joined(first, ", ") + ".");
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
  add_to_write(fmt::format("Measure again{}: {} from bearing to bearing{}. As made, temperature, day:",
                           card.rope() ? " under the pull that set the splices" : "",
                           card.amount(card.body),
                           card.rope() && card.behaves.parts != 0 ? ", at the dock tension" : ""));
  return steps;
}

} // namespace sheerpole
