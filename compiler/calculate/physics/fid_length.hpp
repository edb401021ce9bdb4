#pragma once

#include "units/length.hpp"

#include <optional>

namespace sheerpole {

/// A full fid is 21 rope diameters: 7 circumferences, with the trade's circumference of 3 diameters.
/// Source: public table of fid sizes. Some tools have 22.
inline constexpr double diameters_in_a_fid = 21.0;

/// One full fid: n d. Nothing unless the diameter and n are more than zero.
std::optional<Length> fid_length(Length rope_diameter, double diameters_per_fid = diameters_in_a_fid);

/// A length counted in full fids of this rope. Nothing as above.
std::optional<double> length_in_fids(Length length, Length rope_diameter,
                                     double diameters_per_fid = diameters_in_a_fid);

/// Share of the full fid at which the short section is marked: 3/8 for ropes of 1/4 to 1/2 in, 0.30 for
/// 9/16 to 3/4 in, 1/4 for 7/8 in and more. Source: public table of fid sizes. A size in between takes the
/// share of the nearer one of the table. Nothing below the table, from 7/32 in down.
std::optional<double> short_section_share(Length rope_diameter);

/// Marks of a plain eye splice in single braid, from the mark at the throat.
struct PlainSpliceMarks {
  Length tail; ///< rope to be buried: 2 fids, 42 d
  Length exit; ///< where the tail comes out again, down the standing part: 3 fids, 63 d
};

/// The marks for this rope. Source: common practice, no source. Nothing unless both inputs are more than
/// zero.
std::optional<PlainSpliceMarks> plain_splice_marks(Length rope_diameter,
                                                   double diameters_per_fid = diameters_in_a_fid);

} // namespace sheerpole
