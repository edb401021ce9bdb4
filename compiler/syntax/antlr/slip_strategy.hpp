#pragma once

#include "syntax/antlr/slip_findings.hpp"
#include "syntax/antlr/token_list.hpp"

#include <RigParser.h>
#include <antlr4-runtime/ANTLRErrorStrategy.h>

#include <cstddef>

namespace sheerpole {

/// What the generated parser does where a line does not go on as the grammar has it: a likely slip is
/// reported and mended in the token list, anything else is reported once and the rest of its line or
/// parenthesis is passed over. Braces, parentheses and brackets must pair off.
class SlipStrategy final : public antlr4::ANTLRErrorStrategy {
public:
  SlipStrategy(TokenList& tokens, SlipFindings& findings) : tokens_(tokens), findings_(findings) {}

  void reset(antlr4::Parser*) override {}
  void reportMatch(antlr4::Parser*) override {}
  bool inErrorRecoveryMode(antlr4::Parser*) override { return false; }

  /// Before each choice: likely slips are mended, so that the choice goes right.
  void sync(antlr4::Parser* parser) override;
  /// A certain sign was due and is not here: it is taken as given when that is a likely slip.
  antlr4::Token* recoverInline(antlr4::Parser* parser) override;
  /// The rule that can not go on says so, unless that was said before.
  void reportError(antlr4::Parser* parser, const antlr4::RecognitionException&) override;
  /// Passes over what can not be read.
  void recover(antlr4::Parser* parser, std::exception_ptr) override;

private:
  using Rule = sheerpole_antlr::RigParser;

  std::size_t here() const { return tokens_.index(); }
  std::size_t type(std::size_t ahead = 0) const { return tokens_.type_at(here() + ahead); }

  void sync_file(const Rule::FileContext& file);
  void sync_statement(const Rule::StatementContext& statement);
  void sync_block(const Rule::BlockContext& block);
  void sync_entry(antlr4::Parser* parser, const Rule::EntryContext& entry);
  void sync_settings(const Rule::SettingsContext& settings);
  void put_in_colon(std::size_t name, std::size_t at);

  void report_in_statement(const Rule::StatementContext& statement);
  void report_in_block(const Rule::BlockContext& block);
  void report_in_entry(const Rule::EntryContext& entry);
  void report_missing_name();

  /// False when what is here was spoken of or passed over before.
  bool is_news();
  /// Moves on to the end of the line or of what is in parentheses; with `commas`, to the next comma in it
  /// at most.
  void pass_over(bool commas);
  bool line_has_brace() const;
  /// The first token of the line in which `index` stands.
  std::size_t line_begin(std::size_t index) const;

  TokenList& tokens_;
  SlipFindings& findings_;
  std::size_t quiet_until_ = 0; ///< index of the first token that may be spoken of
};

} // namespace sheerpole
