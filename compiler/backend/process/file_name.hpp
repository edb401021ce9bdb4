#pragma once

#include <string>
#include <string_view>

namespace sheerpole {

/// What is wrong with a file name that a program outside wants written below the folder for documents, in
/// words that go on from "which": "which leads out of the folder"; empty when nothing is. A name is parts
/// with `/` between them; no part is empty, begins with a dot, ends with one or a blank, is a device of
/// Windows, or holds a sign that a disk does not take or that does not show.
std::string fault_of_file_name(std::string_view name);

/// Whether one of two names stands in the way of the other on some disk: they are equal without regard to
/// capitals and to how a letter with an accent is written, or one is a folder of the other.
bool file_names_clash(std::string_view one, std::string_view other);

} // namespace sheerpole
