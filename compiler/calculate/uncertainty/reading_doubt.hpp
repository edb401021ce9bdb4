#pragma once

#include "model/reading.hpp"

#include <optional>

namespace sheerpole {

/// Standard uncertainty of the mean of the runs by their scatter, s / sqrt(n), metres; nothing of one run.
/// Source: JCGM 100:2008, 4.2.3.
double standard_of_mean(const Reading& reading);

/// What a reading may be off by because its scale is read no finer, to either side.
struct Resolution {
  Length half;
  bool by_practice = false; ///< not stated
};

/// As stated, else half the smallest division that the runs are written in, unless they state what they are
/// off by. A mean of equal runs is no better. Nothing of a reading without a number. Source: JCGM 100:2008,
/// F.2.2.1, rectangular; that one reads to half a division is common practice, no source.
std::optional<Resolution> resolution_of(const Reading& reading);

} // namespace sheerpole
