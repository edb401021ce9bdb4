#pragma once

#include <string>
#include <string_view>

namespace sheerpole {

/// The commit that this program was built from, 40 digits, with "-changed" behind it when files differed
/// from it; "unknown" where the build did not ask git, as the everyday one does not (docs/decisions/0025).
std::string_view built_from_commit();

/// What `--version` prints: the versions of program, language and JSON, each by itself, and the commit.
/// That of the JSON is the one that programs outside are spoken to in; what else is written as JSON goes
/// with it.
std::string version_words();

} // namespace sheerpole
