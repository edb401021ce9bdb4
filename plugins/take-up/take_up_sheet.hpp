#pragma once

#include "backend/backend.hpp"
#include "backend/text_page.hpp"

namespace sheerpole {

/// The account of a stay's adjusters: as set, each draw, what is left at each date. For a stay that has an
/// adjuster.
void print_account(const CheckedRig& checked, const DerivedStay& stay, TextPage& page);

/// What a line in hand needs so that it fits, or by how much it does not. Nothing when nobody asks.
void print_fits(const CheckedRig& checked, const DerivedStay& stay, TextPage& page);

/// Back end `take-up`: what every adjuster has, what will be drawn from it and what is left.
struct TakeUpSheet final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
