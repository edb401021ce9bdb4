#pragma once

#include "diagnostics/sink.hpp"
#include "syntax/antlr/token_list.hpp"

#include <cstddef>
#include <string>
#include <string_view>
#include <utility>

namespace sheerpole {

/// Hands the findings of one file on and stops when there are so many that the file is hardly a rig file.
class SyntaxReport {
public:
  static constexpr int most_findings = 100;

  explicit SyntaxReport(DiagnosticSink& sink) : sink_(sink) {}

  void add(DiagnosticBuilder&& finding) {
    if (count_ < most_findings) {
      sink_.report(std::move(finding));
    } else if (count_ == most_findings) {
      const Diagnostic last = std::move(finding).build();
      sink_.report(diagnose("too-many-findings", {{"count", std::to_string(most_findings)}})
                       .at(last.primary ? last.primary->span : Span{}));
    }
    ++count_;
  }
  /// Whether nothing that is added is still shown.
  bool full() const { return count_ > most_findings; }

private:
  DiagnosticSink& sink_;
  int count_ = 0;
};

/// The words for lines that do not go on as they should. Tokens are named by their place in the list.
class SlipFindings {
public:
  SlipFindings(const TokenList& tokens, SyntaxReport& report) : tokens_(tokens), report_(report) {}

  /// A name and its value without a colon; `value` is where the value begins.
  void missing_colon(std::size_t name, std::size_t value);
  void equals_for_colon(std::size_t name, std::size_t equals);
  void colon_for_equals(std::size_t name, std::size_t colon);
  void missing_equals(std::size_t name);
  void missing_times(std::size_t count);
  void missing_let(std::size_t name);
  void missing_comma(std::size_t next);
  /// `(long-bury)`: a setting that is only a value.
  void setting_without_name(std::size_t value);
  void comma_too_many(std::size_t comma);
  /// No value where one has to stand; what is found there does not begin one.
  void missing_value(std::size_t found);
  void division_without_blanks(std::size_t quotient);
  void left_over(std::size_t found);
  /// `5 in 1/2` for `5 1/2 in`: told when that is what stands there.
  bool fraction_behind_unit(std::size_t found);
  void path_and_list(std::size_t sign);
  void quotes_missing(std::size_t begin, std::size_t end);
  void language_number(std::size_t found);
  void line_start(std::size_t found, bool in_block);
  void property_outside_block(std::size_t name);
  void missing_block(std::size_t begin, std::size_t end);
  void heading_unreadable(std::size_t found);
  void blank_in_name(std::size_t first, std::size_t second);
  /// `wanted` says what: "the name of the part".
  void missing_name(std::string_view wanted, std::size_t found);

  bool full() const { return report_.full(); }

private:
  Span span(std::size_t index) const { return tokens_.span(tokens_.at(index)); }
  std::string text(std::size_t index) const { return std::string(tokens_.text(tokens_.at(index))); }
  std::string description(std::size_t index) const;
  bool is_line_end(std::size_t index) const;
  /// Just behind a token, and where a token is; for the end of a line or of the file, behind the token
  /// before it.
  Span behind(std::size_t index) const;
  Span place_of(std::size_t index) const;

  const TokenList& tokens_;
  SyntaxReport& report_;
};

} // namespace sheerpole
