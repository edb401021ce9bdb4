#include "diagnostics/sink.hpp"
#include "fuzz/targets.hpp"
#include "source/file_reader.hpp"
#include "syntax/parse.hpp"
#include "syntax/tidy.hpp"

#include <cstdio>
#include <cstdlib>
#include <string>

namespace sheerpole::fuzz {

void promise(bool holds, std::string_view words) {
  if (holds)
    return;
  std::fprintf(stderr, "broken promise: %.*s\n", static_cast<int>(words.size()), words.data());
  std::abort();
}

/// What is tidy stays as it is.
void look_at_layout(const SourceText& source) {
  DiagnosticSink sink;
  const auto once = tidy(source, sink);
  if (!once)
    return;
  const SourceText tidied(SourceId{0}, "boat.rig", *once);
  const auto twice = tidy(tidied, sink);
  promise(twice && *twice == *once, "a tidy text is tidied again");
}

int try_parse(const std::uint8_t* data, std::size_t size) {
  std::string text(reinterpret_cast<const char*>(data), size);
  if (first_invalid_utf8(text) != std::string_view::npos)
    return 0; // refused before it is parsed
  const SourceText source(SourceId{0}, "boat.rig", std::move(text));
  DiagnosticSink sink;
  parse(source, sink);
  if (!sink.has_errors())
    look_at_layout(source);
  return 0;
}

} // namespace sheerpole::fuzz
