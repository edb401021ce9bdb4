#pragma once

#include "units/length.hpp"
#include "units/scan_number.hpp"

#include <optional>
#include <string>

namespace sheerpole {

/// Rounds half away from zero to this many decimals of a millimetre and writes it without unit: "11642",
/// "-4.5". Never "-0". The decimal sign is a point in every locale.
std::string format_millimetres(Length length, int decimals = 0);

/// Feet, inches and a fraction rounded to 1/denominator (16, 32 or 64), lowest terms: `38' 7 3/8"`, `7
/// 3/8"`, `0"`. Below one foot the feet are left out. A negative length begins with a minus.
std::string format_feet_inches(Length length, int denominator = 16);

/// Inches and a fraction only: `463 3/8"`.
std::string format_inches(Length length, int denominator = 16);

/// Shortest decimal text that reads back as the same double, for JSON-like outputs: "0.65", "11642".
std::string format_number(double value);

/// Fixed decimals, half away from zero on the decimal value, never "-0".
std::string format_fixed(double value, int decimals);

/// How the feet before the inches were marked.
enum class FeetMark { sign, word };

/// Reads what may follow the feet, up to the end of the text: nothing, or inches with their mark. `feet` is
/// the number before the mark just taken. `inches` becomes the whole length in inches, also for `38' 14"`,
/// which is refused. Returns why not, or nothing when the length is good; on a refusal the cursor is where
/// it was noticed.
std::optional<QuantityError::Kind> scan_inches_after_feet(TextCursor& cursor, const ScannedNumber& feet,
                                                          FeetMark mark, double& inches);

} // namespace sheerpole
