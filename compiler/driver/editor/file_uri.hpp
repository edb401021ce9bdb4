#pragma once

#include <string>
#include <string_view>

namespace sheerpole::editor {

/// The path of a `file:` URI (RFC 8089), its escapes resolved and without `.` and `..`. Any other URI, of a
/// text that was never saved, goes under its own name.
std::string path_of_uri(std::string_view uri);

/// The `file:` URI of a path; what is none, an absolute path of a file, is taken for a URI as it stands.
std::string uri_of_path(std::string_view path);

} // namespace sheerpole::editor
