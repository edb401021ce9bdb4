#pragma once

#include <string>
#include <string_view>

namespace sheerpole {

/// Of the form in which outputs are written as JSON and programs outside are spoken to.
inline constexpr int json_version = 1;

/// The commit that this program was built from, 40 digits, with "-changed" behind it when files differed
/// from it; "unknown" where the build did not ask git, as the everyday one does not (docs/decisions/0025).
std::string_view built_from_commit();

/// What `--version` prints: the versions of program, language and JSON, each by itself, and the commit.
std::string version_words();

} // namespace sheerpole
