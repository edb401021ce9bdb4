#pragma once

#include "backend/backend.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace sheerpole::rig_drawing {

/// One row of the table of stays: both sides of a stay together.
struct StayRow {
  std::size_t number = 0; ///< of its balloon
  std::string base;       ///< name without side
  std::string title;      ///< "Cap shroud, P and S"
  std::string line;       ///< "hmpe-9, 9 mm"
  std::string pin_to_pin; ///< millimetres; of sides that differ a line each; "X"
  std::string cut;        ///< or NOT YET
  std::string adjuster;   ///< "lashing-260 (60 to 260)"
};

/// In the order of the rig.
std::vector<StayRow> stay_rows(const CheckedRig& checked);

/// What is stated of the whole boat, and what the points give: name and value.
struct Measure {
  std::string name, value;
};
std::vector<Measure> measures(const CheckedRig& checked);

} // namespace sheerpole::rig_drawing
