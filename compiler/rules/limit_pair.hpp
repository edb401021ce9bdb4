#pragma once

#include <algorithm>
#include <optional>
#include <string>

namespace sheerpole {

/// A threshold with a second one that is said along with it. One of them may be switched off.
struct LimitPair {
  std::optional<double> usual;
  std::optional<double> most;

  bool is_off() const { return !usual && !most; }
  /// Where a finding begins. Not to be asked when both are off.
  double bound() const { return usual && most ? std::min(*usual, *most) : usual ? *usual : *most; }
  /// "; at most 15 %, the very most 20 %"
  template <class Written>
  std::string words(Written written) const {
    if (!usual)
      return "; at most " + written(*most);
    return "; at most " + written(*usual) + (most ? ", the very most " + written(*most) : "");
  }
};

} // namespace sheerpole
