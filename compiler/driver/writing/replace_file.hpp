#pragma once

#include <string>
#include <string_view>

namespace sheerpole {

/// Puts a new text in the place of a file that is there. The text is written to a file beside it first,
/// which then takes the name, the owner and the permissions of the old one: whoever reads finds the one or
/// the other and never half of it. A link is followed. False when the folder or the disk does not allow it;
/// the file is then as it was.
bool replace_file(const std::string& path, std::string_view bytes);

} // namespace sheerpole
