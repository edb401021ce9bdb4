#pragma once

#include <string_view>

namespace sheerpole {

/// How much a finding matters. Only an error stops the outputs.
enum class Severity { error, warning, note };

constexpr std::string_view name_of(Severity severity) {
  switch (severity) {
  case Severity::error:
    return "error";
  case Severity::warning:
    return "warning";
  case Severity::note:
    return "note";
  }
  return "note";
}

} // namespace sheerpole
