#pragma once

#include "base/result.hpp"
#include "units/length.hpp"

#include <span>
#include <string>
#include <string_view>

namespace sheerpole {

/// A screw thread by its designation.
struct Thread {
  std::string designation; ///< as in the standard: "1/2-20 UNF", "M12", "M12 x 1.25"
  Length diameter;         ///< nominal
  Length pitch;
  std::string standard; ///< "ASME B1.1" or "ISO 261"
};

struct ThreadRow {
  std::string_view designation;
  double diameter_mm;
  double pitch_mm;
  std::string_view standard;
};

/// The threads known by name: UNF and UNC of ASME B1.1 from 1/4 to 1 in, coarse and fine of ISO 261 from M5
/// to M30.
std::span<const ThreadRow> known_threads();

/// Reads "1/2-20 UNF", "1/2-20", "M12", "M12x1.25", "M12 x 1.25". M without a pitch is the coarse one. The
/// error is the list of near designations, which may be empty.
Result<Thread, std::string> parse_thread(std::string_view designation);

} // namespace sheerpole
