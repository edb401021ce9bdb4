#pragma once

#include "units/scan_number.hpp"

#include <optional>

namespace sheerpole {

/// How the feet before the inches were marked.
enum class FeetMark { sign, word };

/// Reads what may follow the feet, up to the end of the text: nothing, or inches with their mark. `feet` is
/// the number before the mark just taken. `inches` becomes the whole length in inches, also for `38' 14"`,
/// which is refused. Returns why not, or nothing when the length is good; on a refusal the cursor is where
/// it was noticed.
std::optional<QuantityError::Kind> scan_inches_after_feet(TextCursor& cursor, const ScannedNumber& feet,
                                                          FeetMark mark, double& inches);

} // namespace sheerpole
