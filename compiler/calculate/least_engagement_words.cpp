#include "calculate/least_engagement_words.hpp"

#include "calculate/length_text.hpp"

namespace sheerpole {

std::string least_engagement_words(const Rig& rig) {
  const auto& limit = rig.limits.thread_engaged;
  return limit ? percent_text(limit->value) + " of the diameter" : "one diameter";
}

} // namespace sheerpole
