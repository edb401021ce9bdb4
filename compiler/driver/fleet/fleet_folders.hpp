#pragma once

#include "base/result.hpp"
#include "source/file_reader.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// The folder of each boat: the name of her file without `.rig`; where files in several folders have one
/// name, that of the folder comes before it: `north-sallow` for north/sallow.rig. It depends on the names
/// as they were given and on nothing else. The error is what to say when two boats would have one folder.
Result<std::vector<std::string>, std::string> fleet_folders(const std::vector<std::string>& files);

/// The files that are meant: in the place of `@list.txt` stand the files that list.txt names, one a line;
/// empty lines are passed over. The error is what to say of a list that can not be read, or when no file is
/// left.
Result<std::vector<std::string>, std::string> file_arguments(const std::vector<std::string>& words,
                                                             FileReader& reader);

} // namespace sheerpole
