#pragma once

#include "driver/compile.hpp"

#include <string>

namespace sheerpole {

/// What papers that compare call a rig: "boat.rig", "boat.rig as designed", "boat.rig with step=25 mm".
std::string called(const std::string& file, const CompileOptions& rig);

} // namespace sheerpole
