#pragma once

#include "syntax/antlr/slip_findings.hpp"
#include "syntax/antlr/token_list.hpp"
#include "syntax/syntax_tree.hpp"

#include <RigParser.h>

namespace sheerpole {

/// Makes the syntax tree from what the generated parser has read: one function for each rule of the
/// grammar.
class TreeBuilder {
public:
  TreeBuilder(const TokenList& tokens, SyntaxReport& report) : tokens_(tokens), report_(report) {}

  std::vector<Statement> file(const sheerpole_antlr::RigParser::FileContext& context);
  Statement statement(const sheerpole_antlr::RigParser::StatementContext& context);

private:
  using Rule = sheerpole_antlr::RigParser;

  Expect expect(const Rule::StatementContext& context);
  /// A declaration, of a file or of a block, whose rest has been read.
  template <class Context>
  Declaration declaration(Name kind, const Context& context);
  Block block(const Rule::BlockContext* context, Span fallback);
  Entry entry(const Rule::EntryContext& context);
  std::vector<Setting> settings(const Rule::SettingsContext* context);
  Setting setting(const Rule::SettingContext& context);
  Value value(const Rule::ValueContext* context, Span fallback);
  Stop stop(const Rule::StopContext& context);
  std::optional<Tolerance> tolerance(const Rule::ToleranceContext* context);
  std::optional<SourceNote> source(const Rule::SourceContext* context);
  Expression expression(const Rule::ExpressionContext* context, Span fallback);
  Expression product(const Rule::ProductContext& context);
  Expression operand(const Rule::OperandContext* context, Span fallback);
  Expression parentheses(const Rule::OperandContext& context);

  /// A sum or product from its parts, leftmost first.
  template <class Part, class Read>
  Expression chain(const std::vector<Part*>& parts, const std::vector<antlr4::Token*>& signs, Span span,
                   Read read);

  Span span(const antlr4::ParserRuleContext& context) const;
  Span span_or(const antlr4::ParserRuleContext* context, Span fallback) const {
    return context == nullptr ? fallback : span(*context);
  }
  Name name(const antlr4::Token* token) const;
  Name name(const antlr4::ParserRuleContext* word) const {
    return word == nullptr || word->exception ? Name{} : name(word->start);
  }
  std::optional<Text> text(const antlr4::Token* token);

  const TokenList& tokens_;
  SyntaxReport& report_;
};

} // namespace sheerpole
