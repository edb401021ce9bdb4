#pragma once

#include <string>
#include <vector>

namespace sheerpole {

/// One row of tests/reference/length_spellings.tsv.
struct Spelling {
  int line = 0;
  std::string text;
  bool accepted = false;
  std::string value; ///< an expression of GNU units, or the kind of error
  std::string suggestion;
};

/// All rows; a line that is none fails the running test.
std::vector<Spelling> read_spellings();

} // namespace sheerpole
