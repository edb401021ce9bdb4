#pragma once

#include "diagnostics/diagnostic.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// The names of rows of a table, in its order.
template <class Row>
std::vector<std::string> row_names(std::span<const Row> rows) {
  std::vector<std::string> result;
  for (const Row& row : rows)
    result.emplace_back(row.name);
  return result;
}

/// "a, b, c"; "nothing" for none.
std::string listed(const std::vector<std::string>& names);

/// Adds the edit "write `near`" when one of the candidates is near to what was written.
DiagnosticBuilder with_nearest(DiagnosticBuilder builder, std::string_view written, Span span,
                               const std::vector<std::string>& candidates);

} // namespace sheerpole
