#pragma once

#include <string>

namespace sheerpole {

/// An angle inside a sentence: degrees with one decimal at most, "9.7 deg", "12 deg".
std::string angle_text(double radians);

/// A share of a tension inside a sentence, three decimals: "0.080".
std::string share_text(double share);

} // namespace sheerpole
