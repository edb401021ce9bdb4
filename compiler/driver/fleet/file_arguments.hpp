#pragma once

#include "base/result.hpp"
#include "source/file_reader.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// The files that are meant: in the place of `@list.txt` stand the files that list.txt names, one a line;
/// empty lines are passed over. The error is what to say of a list that can not be read, or when no file is
/// left.
Result<std::vector<std::string>, std::string> file_arguments(const std::vector<std::string>& words,
                                                             FileReader& reader);

} // namespace sheerpole
