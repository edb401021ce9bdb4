#pragma once

#include <string_view>

namespace sheerpole {

// The files of docs/backends of these names, put into the program when it is built: what is promised there
// is what is looked at here.
extern const std::string_view describe_reply_schema;
extern const std::string_view generate_reply_schema;

} // namespace sheerpole
