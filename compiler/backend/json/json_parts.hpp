#pragma once

#include "backend/json/json.hpp"
#include "backend/printed_sums.hpp"

#include <vector>

namespace sheerpole {

/// `[{name, text, provenance, si, tolerance_si, values_si, names}]`: numbers in the coherent SI unit of the
/// fact (m, N, K, a share of one); si is zero for a text, a word, a date or a name.
Json particulars_json(const std::vector<Particular>& particulars, const SourceSet& sources);

/// How well a cut is known, with the share of each input.
Json uncertainty_json(const Rig& rig, const Uncertainty& found, const Derived& derived);

/// Every input with a bound or a scatter: `{name, bound, distribution, degrees_of_freedom, place}`; the
/// bound is in the coherent SI unit of the input.
Json inputs_json(const Rig& rig, const Derived& derived, const SourceSet& sources);

/// The slips that would explain a difference: `[{words, unexplained_mm}]`
Json slips_json(const Rig& rig, const RouteComparison& other);

/// The marks of a piece and what its cut leaves out.
Json bench_json(const Rig& rig, const Piece& piece);

/// A length as papers print it: `{length_mm, unknown, known_mm, plus_x, complete, text_mm, text_ft_in}`, in
/// whole tenths of a millimetre. `length_mm` is a number only when it can be used as one; `known_mm` is
/// null when something that it is made of is not known yet. `plus_x` is the older name of `unknown`.
Json printed_json(bool unknown, bool complete, Tenths total);

/// A piece as papers print it: `{body, cut, dry_fit, marks, sum}`. The rows of `sum` are rounded one by one
/// and its totals are the sums of those rows, so they may differ from the exact lengths by some tenths.
Json printed_piece_json(const Rig& rig, const DerivedStay& stay, const Piece& piece);

/// What is in hand for a piece and what becomes of it: null when nothing is stated.
Json in_hand_json(const Piece& piece, const SourceSet& sources);

/// What is buried at an end: `{bury_mm, spare_mm, total_mm}`.
Json buried_json(const Piece& piece, WhichEnd end);

/// Why a length is a draft: `[{subject, reason, mend}]`.
Json reasons_json(const std::vector<DraftReason>& reasons);

/// What is made at an end: `{part, title, splice, buried, note}`.
Json end_json(const Rig& rig, const Piece& piece, WhichEnd which);

/// Adds to a stay's object what follows from its lengths: slips, uncertainty, account, temperature,
/// tension, sag, the line before, fits, joints. Lengths in mm, unrounded.
void add_behaviour_json(const DerivedStay& stay, const Derived& derived, const Rig& rig, Json& json);

/// Adds to a stay's object `first_fit` and `hoisted_fit`, null where there is none. Lengths in mm,
/// unrounded; the bands by how much higher than it should the lower bearing hangs, null where they have no
/// end.
void add_fitting_json(const DerivedStay& stay, const Rig& rig, Json& json);

/// The chain of break loads of a stay: `{links, line, weakest, unknown}`; the last three are places in
/// `links`, null where there is none. Forces in newtons, unrounded.
Json chain_json(const Rig& rig, const StayChain& chain, const SourceSet& sources);

/// Every load-screening: `[{method, publication, of, inputs, results, not_checked, notes, panels}]`. Values
/// in the coherent SI unit.
Json screenings_json(const Rig& rig, const Derived& derived, const SourceSet& sources);

} // namespace sheerpole
