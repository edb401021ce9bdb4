#include "names/nearest_edit.hpp"

#include "base/edit_distance.hpp"

#include <utility>

namespace sheerpole {

std::string listed(const std::vector<std::string>& names) {
  std::string result;
  for (const std::string& name : names) {
    result += result.empty() ? "" : ", ";
    result += name;
  }
  return result.empty() ? "nothing" : result;
}

DiagnosticBuilder with_nearest(DiagnosticBuilder builder, std::string_view written, Span span,
                               const std::vector<std::string>& candidates) {
  if (const auto near = nearest_name(written, candidates))
    return std::move(builder).edit(span, *near, "write `" + *near + "`");
  return builder;
}

} // namespace sheerpole
