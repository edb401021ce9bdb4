#pragma once

#include "diagnostics/diagnostic.hpp"
#include "source/source_set.hpp"

#include <stdexcept>
#include <string>
#include <utility>

namespace sheerpole {

/// A file in a set of its own, with spans found by their text.
class OneFile {
public:
  explicit OneFile(std::string bytes, std::string name = "pellimoor.rig") {
    sources.add(SourceText(SourceId{0}, std::move(name), std::move(bytes)));
  }

  /// The bytes of the first place where `text` stands.
  Span span(std::string_view text) const {
    const std::size_t begin = sources[SourceId{0}].bytes().find(text);
    if (begin == std::string_view::npos)
      throw std::runtime_error("the test's file does not hold " + std::string(text));
    return {SourceId{0}, static_cast<std::uint32_t>(begin),
            static_cast<std::uint32_t>(begin + text.size())};
  }

  SourceSet sources;
};

inline Diagnostic finding(Severity severity, std::string slug, std::string message) {
  Diagnostic result;
  result.severity = severity;
  result.slug = std::move(slug);
  result.message = std::move(message);
  return result;
}

} // namespace sheerpole
