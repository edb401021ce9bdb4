#pragma once

#include "calculate/cut/whole_links.hpp"
#include "calculate/derived.hpp"
#include "model/part.hpp"
#include "model/provenance.hpp"
#include "results/checked_rig.hpp"
#include "wording/length_words.hpp"

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// The boat's name as every document prints it: "Boat without a name" when she has none.
std::string boat_title(const CheckedRig& checked);

/// The boat's name with the revision of her files, for the foot of a paper: "Tern, revision C".
std::string boat_and_revision(const CheckedRig& checked);

/// Puts `more` behind the text, with `between` between the two when there are two.
void add_words(std::string& text, std::string_view between, std::string_view more);

/// What `words` says of each, with `between` between them; what says nothing is left out.
template <class Range, class Words>
std::string joined(const Range& all, std::string_view between, const Words& words) {
  std::string text;
  for (const auto& one : all)
    add_words(text, between, words(one));
  return text;
}
std::string joined(const std::vector<std::string>& texts, std::string_view between);

/// `lead` and the text; nothing when there is no text.
std::string led_by(std::string_view lead, std::string_view text);

/// "K. Rasmussen, 2026-04-18", as far as they are stated.
std::string who_and_when(const TensionEstimate& estimate);

/// The line that says the state of a piece: "MEASURED ONCE: by tape, 2026-05-02; measure again before you
/// cut". `length_words` as in state_words().
std::string state_line(const CheckedRig& checked, const Piece& piece,
                       const std::function<std::string(Length)>& length_words = {});

/// The same in two words, for a label: "MEASURED ONCE", "FROM DRAWING", "NOT YET", "WAYS DIFFER".
std::string state_stamp(const CheckedRig& checked, const Piece& piece);

/// Whether another way to the length of a piece that was measured gives something else.
bool is_disputed(const CheckedRig& checked, const Piece& piece);

/// Whether a piece is READY and nothing about its length is open: neither a second measuring nor another
/// way that gives something else.
bool is_settled(const CheckedRig& checked, const Piece& piece);

/// How many pieces are in which state: "1 ready, 2 measured once, 2 not measured (from drawing)". Empty
/// when there is no piece.
std::string states_of_pieces(const CheckedRig& checked);

/// How a number is known, in words: "maker, certificate 1142", "computed, from points; rests on assumed
/// cap-tang". A value that was written in another unit than mm is echoed: "maker, written 7 3/8 in".
std::string source_words(const Provenance& provenance);

/// The way that a pin-to-pin length was found: "a reading", "the stated length", "the points of its path",
/// "not known as a number".
std::string_view route_words(LengthRoute route);

/// "82.0", of an adjuster "216.0 to 300.0"; millimetres. Empty when it is not stated.
std::string length_or_range(const Part& part);

/// "jaw (gap 12.0 mm, pin 1/2 in)".
std::string end_words(const End& end);

/// How the length or the range is known; empty when it is not stated.
std::string length_source(const Part& part);

/// A whole number with a blank before each three digits: "100 000".
std::string grouped(std::size_t number);

/// A share of random draws in words that promise nothing: "99 812 of 100 000 draws", "all of 100 000
/// draws", "none of 100 000 draws".
std::string trials_words(double share, std::size_t draws);

/// A share of a variance, 0 to 1: "86.4 %", "all of it", "under 0.1 %".
std::string variance_words(double share);

/// "70 links of 28 mm, 1960 mm"; `length` is that of all of them as the paper prints it.
std::string links_words(const WholeLinks& links, const std::string& length);

/// By how much the links of a piece are off what was worked out, and what takes that up: "8 mm shorter than
/// worked out, 1968 mm: bottle-14 is set longer by as much". `off` and `worked_out` are as the paper prints
/// them, `off` without a sign; `even`: nothing of it is left as printed.
std::string links_off_words(const Rig& rig, const DerivedStay& stay, const WholeLinks& links, bool even,
                            const std::string& off, const std::string& worked_out);

/// What takes up links that are longer or shorter: "bottle-14 is set longer by as much". Where the
/// adjusters do not reach so far, and where there is none, it says that.
std::string links_taken_up(const Rig& rig, const DerivedStay& stay, Length longer);

} // namespace sheerpole
