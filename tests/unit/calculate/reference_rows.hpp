#pragma once

#include <algorithm>
#include <cstddef>
#include <fstream>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

/// The rows of tests/reference/NAME.tsv, each with at least `columns` cells; comments and empty lines are
/// left out.
inline std::vector<std::vector<std::string>> reference_rows(const std::string& name, std::size_t columns) {
  std::ifstream file(std::string(SHEERPOLE_REFERENCE_DIR) + "/" + name + ".tsv");
  std::vector<std::vector<std::string>> rows;
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line.front() == '#')
      continue;
    std::vector<std::string> cells(1);
    for (const char character : line)
      if (character == '\t')
        cells.emplace_back();
      else
        cells.back() += character;
    cells.resize(std::max(cells.size(), columns));
    rows.push_back(std::move(cells));
  }
  return rows;
}

} // namespace sheerpole
