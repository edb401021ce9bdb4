#include "calculate/least_engagement_words.hpp"

#include "units/quantity_text.hpp"

namespace sheerpole {

std::string least_engagement_words(const Rig& rig) {
  const StatedLimit* stated = rig.limits.find(Limit::thread_engaged);
  if (stated == nullptr)
    return "one diameter";
  return stated->value ? percent_text(*stated->value) + " of the diameter" : "no least engagement";
}

} // namespace sheerpole
