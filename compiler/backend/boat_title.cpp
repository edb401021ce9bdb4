#include "backend/boat_title.hpp"

namespace sheerpole {

std::string boat_title(const CheckedRig& checked) {
  const std::string& title = checked.rig().boat.title;
  return title.empty() ? "Boat without a name" : title;
}

} // namespace sheerpole
