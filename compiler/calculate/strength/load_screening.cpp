#include "calculate/strength/load_screening.hpp"

namespace sheerpole {

std::vector<LoadScreening> load_screenings(const Rig& /*rig*/) {
  return {};
}

} // namespace sheerpole
