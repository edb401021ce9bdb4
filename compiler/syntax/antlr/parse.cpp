#include "syntax/parse.hpp"

#include "syntax/antlr/generated_parser.hpp"
#include "syntax/antlr/lex.hpp"
#include "syntax/antlr/mend_tokens.hpp"
#include "syntax/antlr/slip_strategy.hpp"
#include "syntax/antlr/tree_builder.hpp"

#include <antlr4-runtime/BailErrorStrategy.h>
#include <antlr4-runtime/Exceptions.h>

#include <algorithm>
#include <memory>
#include <optional>
#include <string_view>

namespace sheerpole {

namespace {

using sheerpole_antlr::RigParser;

/// A file without a slip: nothing is looked for twice, the first thing that is wrong ends the attempt. Goes
/// through the rule `file` statement by statement, so that what was read of one makes room for the next.
std::optional<std::vector<Statement>> read_sound_file(TokenList& tokens, SyntaxReport& report) {
  GeneratedParser parser(tokens, std::make_shared<antlr4::BailErrorStrategy>());
  TreeBuilder builder(tokens, report);
  std::vector<Statement> statements;
  try {
    while (tokens.LA(1) != antlr4::Token::EOF) {
      statements.push_back(builder.statement(*parser.statement()));
      parser.forget();
      if (tokens.LA(1) == RigParser::NEWLINE)
        tokens.consume();
      else if (tokens.LA(1) != antlr4::Token::EOF)
        return std::nullopt;
    }
  } catch (const antlr4::ParseCancellationException&) {
    return std::nullopt;
  }
  return statements;
}

/// A file with slips, from the list of all its tokens.
std::optional<std::vector<Statement>> read_faulty_file(TokenList& tokens, SyntaxReport& report) {
  mend_spellings(tokens, report);
  if (report.full())
    return std::nullopt;
  mend_brackets(tokens, report);
  if (report.full())
    return std::nullopt;
  keep_separating_line_ends(tokens);
  SlipFindings findings(tokens, report);
  GeneratedParser parser(tokens, std::make_shared<SlipStrategy>(tokens, findings));
  try {
    return TreeBuilder(tokens, report).file(*parser.file());
  } catch (const antlr4::ParseCancellationException&) { // too many findings
    return std::nullopt;
  }
}

/// What is seen of a file before it is taken for a rig.
struct LineLook {
  std::optional<Span> overlong; ///< the beginning of the first line that is longer than is read
  std::vector<Span> markers;    ///< that a merge of two versions left
};

/// How long the marker is with which the line begins, which diff3 and git write with seven signs; 0 when it
/// begins with none. No line of a rig file begins so.
std::size_t marker_length(std::string_view line) {
  constexpr std::size_t signs = 7;
  if (line.size() < signs || std::string_view("<=>|").find(line.front()) == std::string_view::npos)
    return 0;
  const std::size_t same = std::min(line.find_first_not_of(line.front()), line.size());
  return same == signs && (line.size() == signs || line[signs] == ' ') ? signs : 0;
}

LineLook look_at_lines(const SourceText& source) {
  const std::string_view bytes = source.bytes();
  LineLook look;
  for (std::size_t begin = 0; begin < bytes.size();) {
    const std::size_t end = std::min(bytes.find_first_of("\r\n", begin), bytes.size());
    const auto at = static_cast<std::uint32_t>(begin);
    if (end - begin > longest_line_bytes) {
      look.overlong = Span{source.id(), at, at};
      return look;
    }
    if (const std::size_t length = marker_length(bytes.substr(begin, end - begin)))
      look.markers.push_back({source.id(), at, at + static_cast<std::uint32_t>(length)});
    begin = end + 1;
  }
  return look;
}

/// One finding for each place where two versions were merged: where it begins, where the second one stands,
/// where it ends.
void report_merges(const SourceText& source, const std::vector<Span>& markers, SyntaxReport& report) {
  for (std::size_t i = 0; i < markers.size() && !report.full();) {
    auto finding = diagnose("merge-not-finished").at(markers[i], "left by a merge");
    for (++i; i < markers.size() && source.text(markers[i]).front() != '<'; ++i)
      finding = std::move(finding).and_at(markers[i], source.text(markers[i]).front() == '>'
                                                          ? "it ends here"
                                                          : "the other version begins here");
    report.add(std::move(finding));
  }
}

/// Stands for a file of which nothing could be read.
ErrorEntry whole_file(const SourceText& source) {
  return {{source.id(), 0, static_cast<std::uint32_t>(source.bytes().size())}};
}

} // namespace

SyntaxTree parse(const SourceText& source, DiagnosticSink& sink, std::size_t words_left) {
  SyntaxTree tree;
  tree.source = source.id();
  SyntaxReport report(sink);
  if (const LineLook look = look_at_lines(source); look.overlong || !look.markers.empty()) {
    if (look.overlong)
      report.add(
          diagnose("line-too-long", {{"limit", std::to_string(longest_line_bytes)}}).at(*look.overlong));
    else
      report_merges(source, look.markers, report);
    tree.statements.push_back(whole_file(source));
    return tree;
  }
  const CodePoints characters(source);
  LexedFile lexed(source, characters, words_left);
  tree.comments = std::move(lexed.comments);
  tree.words = lexed.words;
  std::optional<std::vector<Statement>> statements;
  if (lexed.too_many) {
    report.add(diagnose("too-many-words", {{"limit", std::to_string(most_words)}}).at(*lexed.too_many));
  } else if (lexed.too_deep) {
    report.add(diagnose("too-deep", {{"limit", std::to_string(deepest_nesting)}}).at(*lexed.too_deep));
  } else {
    if (lexed.balanced && !lexed.refused_spelling) {
      keep_separating_line_ends(lexed.tokens);
      statements = read_sound_file(lexed.tokens, report);
    }
    if (!statements) {
      LexedFile again(source, characters, words_left);
      statements = read_faulty_file(again.tokens, report);
    }
  }
  if (statements)
    tree.statements = std::move(*statements);
  else
    tree.statements.push_back(whole_file(source));
  return tree;
}

} // namespace sheerpole
