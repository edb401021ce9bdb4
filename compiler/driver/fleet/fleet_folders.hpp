#pragma once

#include "base/result.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// The folder of each boat: the name of her file without `.rig`; where files in several folders have one
/// name, that of the folder comes before it: `north-sallow` for north/sallow.rig. It depends on the names
/// as they were given and on nothing else. The error is what to say when two boats would have one folder.
Result<std::vector<std::string>, std::string> fleet_folders(const std::vector<std::string>& files);

} // namespace sheerpole
