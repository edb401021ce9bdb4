#pragma once

#include "service/compile.hpp"
#include "source/file_reader.hpp"

#include <string>
#include <utility>
#include <vector>

namespace sheerpole::test {

/// Takes one of the example boats through all phases, with values set from outside.
inline Compilation compiled_example(const std::string& boat, std::vector<std::string> settings = {}) {
  DiskFileReader reader;
  return compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + boat + ".rig", reader,
                 {.settings = std::move(settings), .folders = {}});
}

} // namespace sheerpole::test
