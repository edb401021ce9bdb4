#pragma once

#include "backend/tenths.hpp"
#include "calculate/derived.hpp"
#include "results/checked_rig.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// One row of a worked sum.
struct SumRow {
  const Term* term = nullptr;
  Tenths amount;
};

/// A part of a worked sum: its rows and the running total behind them.
struct SumSection {
  enum class Kind { pin_to_pin, body, cut };
  Kind kind = Kind::cut;
  std::vector<SumRow> rows; ///< what this section adds to the total of the section before it
  Tenths total;             ///< of all rows down to here; with an unknown length what is to be added to X
  Length exact;             ///< the same without rounding
  bool complete = true;     ///< false: something that it is made of is not known yet, so the total lacks it
};

/// "pin-to-pin", "body", "cut".
std::string_view name_of(SumSection::Kind kind);

/// The whole sum of one piece, from the pins to the cut, as every document prints it: each row is rounded
/// to 0.1 mm and a total is the sum of the rows above it. Where the piece is made of a length in hand a
/// last row takes what the rows were rounded by, so that no paper has a cut that is longer than what there
/// is.
struct PieceSum {
  bool unknown = false;      ///< every total is X + c
  Provenance unknown_source; ///< with `unknown`: where X exists
  bool body_complete = true; ///< false: a part of the stack has no length yet, so the totals lack it
  bool cut_complete = true;  ///< false: something that the ends use is not known yet, so the cut lacks it
  std::vector<SumSection> sections; ///< without pin-to-pin for a line that has a length of its own

  const SumSection& section(SumSection::Kind kind) const;
  Tenths body() const { return section(SumSection::Kind::body).total; }
  Tenths cut() const { return section(SumSection::Kind::cut).total; }
  /// False: nobody can cut to it yet.
  bool complete() const { return body_complete && cut_complete; }
};

/// `piece` must be one of `stay`. The rows point into both.
PieceSum piece_sum(const Rig& rig, const DerivedStay& stay, const Piece& piece);

/// How a term came about and how it is known: "72 d x 9 mm; maker". What was written is not said twice.
std::string how_known(const Rig& rig, const Term& term);

/// Sum of the rounded terms: a total of its printed rows.
Tenths printed_total(const LengthSum& sum);

/// How far apart the bearings hang at the dry fit, of a piece that has one: the printed body and what the
/// line and its ends will still do to it.
Tenths printed_dry_fit(const PieceSum& sum);

/// The same in feet, inches and sixteenths: `38' 2 5/16"`, `X + 3' 3 1/2"`.
std::string format_total_feet_inches(bool unknown, Tenths total, std::string_view x = "X");

/// A place along a piece as documents print it.
struct PrintedPlace {
  bool unknown = false; ///< X + tenths
  Tenths tenths;
};

/// One mark from both ends. The two add up to the printed cut: the distance to the nearer end is rounded,
/// the other is what the cut leaves.
struct PrintedMark {
  PrintedPlace from_upper;
  PrintedPlace from_lower;
};

/// `cut` is the printed total of the piece; with an unknown length what is added to X.
PrintedMark printed_mark(const BenchMark& mark, Tenths cut);

/// How a sheet that has all stays of the boat calls the X of one: by the stay where several stand together,
/// "X" alone where there is one stay.
std::string x_on_sheet(const Rig& rig, const Stay& stay);

/// What is left of an account at one date, as the sum of the rows that documents print of it.
struct PrintedLeft {
  Tenths to_tighten;
  Tenths to_slacken;
};

/// `date` is a place in Account::left. Of the entries that are not dated the worse temperature counts.
PrintedLeft printed_left(const Account& account, std::size_t date);

/// What is left at the first fit, before anything has bedded in, crept or set.
PrintedLeft printed_at_first_fit(const Account& account);

/// Turns of the one screw of a stay for this travel; empty when there is none or there are several.
std::string account_turns(const DerivedStay& stay, Length travel);

/// What an entry takes away, with its sign; empty for nothing, so that the column shows which way it draws.
std::string format_drawn(Length length);

} // namespace sheerpole
