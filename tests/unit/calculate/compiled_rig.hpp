#pragma once

#include "diagnostics/render.hpp"
#include "service/compile.hpp"
#include "source/file_reader.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::test {

/// A text in which two blanks stand for the end of a line, so that a test can say a rig in a few lines.
inline std::string unfolded(std::string text) {
  for (std::size_t at = text.find("  "); at != std::string::npos; at = text.find("  ", at))
    text.replace(at, 2, "\n");
  return text;
}

/// Takes one text through all phases, as far as it comes.
inline Compilation tried(const std::string& text) {
  class OneText final : public FileReader {
  public:
    explicit OneText(const std::string& text) : text_(text) {}
    Result<std::string, Failure> read(const std::string& /*path*/, std::size_t /*limit*/) override {
      return text_;
    }

  private:
    const std::string& text_;
  };
  OneText reader(text);
  return compile("test.rig", reader);
}

/// The same of a text without an error. The test fails when an error stands.
inline Compilation compiled(const std::string& text) {
  Compilation result = tried(text);
  for (const Diagnostic& finding : result.findings)
    EXPECT_NE(finding.severity, Severity::error) << finding.slug << ": " << finding.message;
  return result;
}

/// Whether a finding of this name was reported.
inline bool found(const Compilation& compilation, std::string_view slug) {
  for (const Diagnostic& finding : compilation.findings)
    if (finding.slug == slug)
      return true;
  return false;
}

/// The amount of the term of this kind, at this end when it is of one, mm; the test fails when there is
/// none.
inline double term_mm(const LengthSum& sum, TermKind kind, std::optional<WhichEnd> end = std::nullopt) {
  for (const Term& term : sum.terms)
    if (term.kind == kind && (!end || term.is_of(*end)))
      return term.amount.millimetres();
  ADD_FAILURE() << "no term of kind " << static_cast<int>(kind);
  return 0.0;
}

} // namespace sheerpole::test
