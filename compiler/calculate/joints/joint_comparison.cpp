#include "calculate/joints/joint_comparison.hpp"

#include "units/format_length.hpp"

#include <cmath>
#include <utility>

namespace sheerpole {

void JointComparison::add(std::string slug, JointResult result, std::string words,
                          std::optional<Length> play) {
  joint_.checks.push_back({std::move(slug), result, std::move(words), play});
}

void JointComparison::missing(std::string slug, const std::string& what) {
  add(std::move(slug), JointResult::not_checked, what + " is not stated");
}

void JointComparison::switched_off(std::string slug, Limit limit) {
  add(std::move(slug), JointResult::not_checked,
      std::string(row_of(limit).name) + " is switched off in `limits`");
}

void JointComparison::add_ratio(std::string slug, double ratio, Limit usual_limit, Limit least_limit,
                                std::string words) {
  const auto usual = rig_.limits.value(usual_limit);
  const auto least = rig_.limits.value(least_limit);
  if (!usual && !least) {
    switched_off(std::move(slug), usual_limit);
    return;
  }
  words += "; ";
  if (usual)
    words += trimmed(*usual) + " are usual" + (least ? ", " : "");
  if (least)
    words += trimmed(*least) + " the least";
  add(std::move(slug), result(ratio >= usual.value_or(*least)), std::move(words));
}

std::string JointComparison::trimmed(double value) {
  return format_number(std::round(value * 100.0) / 100.0);
}

} // namespace sheerpole
