#pragma once

#include "calculate/derived.hpp"
#include "model/rig.hpp"

namespace sheerpole {

/// The account of a stay's adjusters: what they can still take up and give out after bedding-in, creep by
/// date, the coldest and the warmest day and the uncertainty of the length. Dates and temperatures are
/// those of the take-up record; without it one year, -10 degC and +40 degC. All adjusters of the stay count
/// together. What can not be known is listed as not checked and counts as nothing, and the account says so.
/// Source: arithmetic.
Account account(const Rig& rig, const DerivedStay& stay);

} // namespace sheerpole
