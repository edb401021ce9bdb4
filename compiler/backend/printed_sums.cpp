#include "backend/printed_sums.hpp"

#include "backend/paper_words.hpp"
#include "backend/tenths.hpp"
#include "base/internal_error.hpp"
#include "calculate/length/body.hpp"
#include "units/format_length.hpp"
#include "wording/length_words.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <cstdlib>

namespace sheerpole {

namespace {

/// The rows of `sum` behind a first term that stands for the whole sum before it.
SumSection section_of(SumSection::Kind kind, const LengthSum& sum, std::size_t first, Tenths before) {
  SumSection section{kind, {}, before, sum.known()};
  for (std::size_t i = first; i < sum.terms.size(); ++i) {
    section.rows.push_back({&sum.terms[i], Tenths::of(sum.terms[i].amount)});
    section.total += section.rows.back().amount;
  }
  return section;
}

/// A piece that is cut from a length in hand, and what is cut away, come to that length as it is printed.
/// The rows do so but for what each was rounded by; that is a row of its own.
void close_on_what_is_in_hand(const Piece& piece, SumSection& cut) {
  static const Term rounding = [] {
    Term term;
    term.kind = TermKind::rounding;
    term.provenance.source_class = SourceClass::computed;
    return term;
  }();
  const auto& there = piece.in_hand;
  if (!there || !there->worked_out() || there->too_short() || there->beyond)
    return;
  const Tenths difference = Tenths::of(there->stated.value) - Tenths::of(there->cut_away) - cut.total;
  if (difference == Tenths{})
    return;
  cut.rows.push_back({&rounding, difference});
  cut.total += difference;
}

bool every_part_has_a_length(const Rig& rig, const Stay& stay) {
  return std::all_of(stay.stack.begin(), stay.stack.end(), [&](const StackItem& item) {
    return item.kind == StackItem::Kind::line || rig[item.part].role == Part::Role::boat_fitting ||
           taken_length(rig, item);
  });
}

} // namespace

std::string_view name_of(SumSection::Kind kind) {
  switch (kind) {
  case SumSection::Kind::pin_to_pin:
    return "pin-to-pin";
  case SumSection::Kind::body:
    return "body";
  case SumSection::Kind::cut:
    break;
  }
  return "cut";
}

const SumSection& PieceSum::section(SumSection::Kind kind) const {
  for (const SumSection& section : sections)
    if (section.kind == kind)
      return section;
  internal_error("a piece without a section of its sum");
}

PieceSum piece_sum(const Rig& rig, const DerivedStay& stay, const Piece& piece) {
  using enum SumSection::Kind;
  PieceSum result;
  result.unknown = piece.cut.unknown;
  result.unknown_source = piece.cut.unknown_source;
  const bool from_pins = piece.body.unknown || piece.body.begins_with(TermKind::pin_to_pin);
  Tenths total;
  if (from_pins) {
    result.sections.push_back(section_of(pin_to_pin, stay.pin_to_pin, 0, total));
    total = result.sections.back().total;
    result.body_complete = every_part_has_a_length(rig, rig[stay.stay]);
  }
  // The first term of the body is the whole pin-to-pin length, that of the cut the whole body; their rows
  // have been given already.
  result.sections.push_back(
      section_of(body, piece.body, piece.body.begins_with(TermKind::pin_to_pin) ? 1 : 0, total));
  total = result.sections.back().total;
  result.sections.push_back(
      section_of(cut, piece.cut, piece.cut.begins_with(TermKind::body) ? 1 : 0, total));
  close_on_what_is_in_hand(piece, result.sections.back());
  result.cut_complete = piece.missing.empty();
  for (SumSection& section : result.sections)
    section.complete =
        section.kind == pin_to_pin || (section.kind == body ? result.body_complete : result.complete());
  return result;
}

std::string how_known(const Rig& rig, const Term& term) {
  const std::string how = say(rig, term.how);
  Provenance provenance = term.provenance;
  if (provenance.written == stated_in(term.how)) // "72 d x 9 mm" gives the 72 d already
    provenance.written.clear();
  return how.empty() ? source_words(provenance) : how + "; " + source_words(provenance);
}

Tenths printed_total(const LengthSum& sum) {
  Tenths total;
  for (const Term& term : sum.terms)
    total += Tenths::of(term.amount);
  return total;
}

Tenths printed_dry_fit(const PieceSum& sum) {
  // By the rows that stand above it, so that who adds them up finds it.
  Tenths more;
  for (const auto& row : sum.section(SumSection::Kind::cut).rows)
    if (row.term->of_standing_part() || row.term->of_contraction())
      more += row.amount;
  return sum.body() + more;
}

std::string x_on_sheet(const Rig& rig, const Stay& stay) {
  return rig.stays.size() == 1 ? "X" : x_of_stay(stay.name);
}

std::string format_total_feet_inches(bool unknown, Tenths total, std::string_view x) {
  return with_x(unknown, total.count, format_feet_inches(Tenths{std::abs(total.count)}.length()), x);
}

PrintedMark printed_mark(const BenchMark& mark, Tenths cut) {
  PrintedMark printed{{mark.from_upper.unknown, Tenths::of(mark.from_upper.known)},
                      {mark.from_lower.unknown, Tenths::of(mark.from_lower.known)}};
  const bool nearer_aloft = mark.from_upper.unknown == mark.from_lower.unknown
                                ? mark.from_upper.known <= mark.from_lower.known
                                : mark.from_lower.unknown;
  if (nearer_aloft)
    printed.from_lower.tenths = cut - printed.from_upper.tenths;
  else
    printed.from_upper.tenths = cut - printed.from_lower.tenths;
  return printed;
}

PrintedLeft printed_left(const Account& account, std::size_t date) {
  PrintedLeft left{Tenths::of(account.to_tighten), Tenths::of(account.to_slacken)};
  Tenths tightest;
  Tenths slackest;
  std::size_t dated = 0;
  for (const AccountEntry& entry : account.entries) {
    const Tenths tightens = Tenths::of(entry.tightens);
    const Tenths slackens = Tenths::of(entry.slackens);
    if (entry.of_temperature) {
      tightest = std::max(tightest, tightens);
      slackest = std::max(slackest, slackens);
    } else if (!entry.until_set && (!entry.dated || dated++ == date)) {
      left.to_tighten = left.to_tighten - tightens;
      left.to_slacken = left.to_slacken - slackens;
    }
  }
  left.to_tighten = left.to_tighten - tightest;
  left.to_slacken = left.to_slacken - slackest;
  return left;
}

PrintedLeft printed_at_first_fit(const Account& account) {
  PrintedLeft left{Tenths::of(account.to_tighten), Tenths::of(account.to_slacken)};
  Tenths slackest;
  for (const AccountEntry& entry : account.entries) {
    if (entry.of_temperature)
      slackest = std::max(slackest, Tenths::of(entry.slackens));
    else if (!entry.dated)
      left.to_slacken = left.to_slacken - Tenths::of(entry.slackens);
    if (entry.of_record)
      left.to_tighten = left.to_tighten - Tenths::of(entry.tightens);
  }
  left.to_slacken = left.to_slacken - slackest;
  return left;
}

std::string account_turns(const DerivedStay& stay, Length travel) {
  return stay.adjusters.size() == 1 ? format_turns(travel, stay.adjusters.front().travel_per_turn) : "";
}

std::string format_drawn(Length length) {
  if (length == Length{})
    return {};
  const Tenths rounded = Tenths::of(-length);
  return rounded == Tenths{} ? "0.0" : format_signed(rounded);
}

} // namespace sheerpole
