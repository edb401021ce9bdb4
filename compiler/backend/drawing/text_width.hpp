#pragma once

#include <string_view>

namespace sheerpole {

/// Advance width of a text in ems, for a generic sans-serif face: the widths of the Helvetica metrics (from
/// memory of the Adobe Core 14 AFM files, which the metric-compatible faces share), each rounded up to
/// 1/100 em. A character that is not in the table counts as wide as the widest one that is. Text is UTF-8.
double text_width_in_ems(std::string_view text, bool bold = false);

/// Width of one screen column in ems of a face of fixed pitch: Liberation Mono, as all that follow the
/// metrics of Courier, has 1229/2048 (the `hmtx` table of the font), rounded up. Wide signs take two.
inline constexpr double fixed_pitch_in_ems = 0.601;

/// How much wider than the estimate a common sans-serif face may run. Viewers that do not fit a text to its
/// stated length draw it about this wide at most, so every label keeps that much room.
inline constexpr double wide_face_allowance = 1.25;

} // namespace sheerpole
