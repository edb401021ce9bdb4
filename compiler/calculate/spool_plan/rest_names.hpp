#pragma once

#include "model/rig.hpp"

#include <set>
#include <string>

namespace sheerpole {

/// Gives names to what is left of stocks, unlike any name of the boats.
class RestNames {
public:
  /// No rest is called like a thing of this rig.
  void avoid(const Rig& rig);
  /// `spool-9-rest`, or with a number behind it when that is taken; of a rest of `spool-9-rest` likewise.
  std::string next(const std::string& stock);

private:
  std::set<std::string> taken_;
};

} // namespace sheerpole
