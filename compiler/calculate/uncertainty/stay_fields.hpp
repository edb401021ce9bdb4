#pragma once

#include "model/remark.hpp"
#include "model/rig.hpp"

#include <functional>
#include <vector>

namespace sheerpole {

/// One number on which the lengths of a stay may rest, in a rig that may be changed for a trial.
struct StayField {
  Remark name;                     ///< "length of toggle-12"
  const Influences* influences;    ///< of the rig that the field belongs to
  bool bounded = false;            ///< a bound is stated, be it nothing
  double value = 0.0;              ///< as stated; coherent SI unit
  double step = 0.0;               ///< a small change of it, to see whether a length follows
  std::function<void(double)> set; ///< puts another value in its place
};

/// Every number from which pin-to-pin, body and cut of a stay are worked out, each once however often it is
/// used. The rig must outlive the fields and keep its vectors as they are.
std::vector<StayField> stay_fields(Rig& rig, StayId stay);

} // namespace sheerpole
