#pragma once

#include "backend/backend.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// A blank form for the boat: what to measure of each stay, where its bearings are, two readings of each.
/// The table beside it has the same blanks; `sheerpole enter` puts what was filled in into the rig file.
struct MeasuringSheet final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

/// The pages of the form.
std::vector<Drawing> measuring_pages(const CheckedRig& checked, const std::string& boat, PaperSize size);

/// The table to fill in, RFC 4180: a row for each stay and side, of which stay, side and title are filled
/// in. Its headings are those that `begin --lengths` and `enter` read.
std::string measuring_table(const Rig& rig);

} // namespace sheerpole
