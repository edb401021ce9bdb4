#pragma once

#include "backend/backend.hpp"

#include <string>

namespace sheerpole {

/// A derived length in whole millimetres: "11382"; with an unknown X: "X", "X + 12", "X - 260". Rounded
/// once, here.
std::string printed_distance(bool unknown, Length known);
std::string printed_sum(const LengthSum& sum);

/// Length of a part in millimetres: whole, or with one decimal where the stated length is not.
std::string printed_part(Length length);

} // namespace sheerpole
