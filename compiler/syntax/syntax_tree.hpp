#pragma once

#include "source/span.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace sheerpole {

/// A name as written. An empty text marks a name that is missing; the finding has been reported.
struct Name {
  std::string text;
  Span span;
  bool missing() const { return text.empty(); }
};

/// A string literal without its quotes, escapes resolved.
struct Text {
  std::string text;
  Span span;
};

struct Setting;

enum class ExpressionKind {
  number, ///< `12`, `12 mm`: `text` holds the number, `unit` the unit or nothing
  length, ///< a length in one token: `38' 7 3/8"`
  date,   ///< a day, `2026-05-02`: `text`
  text,   ///< a string: `text`
  name,   ///< `cap-tang`, `plate-a.port`: `text`, `side`
  negate, ///< operands[0]
  add,    ///< operands[0] + operands[1], and so on
  subtract,
  multiply,
  divide,
  vector,    ///< `(x, y, z) m`: three operands; `unit` applies to components without one
  construct, ///< `jaw (gap: 17 mm, pin: "5/8 in")`: `text` the word, `settings`
  error      ///< could not be read; reported, stays silent from here on
};

/// One expression. Which members count depends on the kind.
struct Expression {
  ExpressionKind kind = ExpressionKind::error;
  Span span;
  std::string text;
  Name side; ///< for a name: what follows the point; missing when there is none
  Name unit; ///< for number and vector; missing when there is none
  std::vector<Expression> operands;
  std::vector<Setting> settings; ///< for construct
};

/// `± 2 mm` behind a value.
struct Tolerance {
  Expression amount;
  Span span;
};

/// `measured`, `maker "test certificate 1142"`: where a value is from.
struct SourceNote {
  std::string word;
  std::optional<Text> note;
  Span span;
};

/// One element of a value: an expression, and for a path how the line passes there (`free`, `clamped`,
/// `ends`).
struct Stop {
  Expression expression;
  Name passage; ///< missing when there is none
};

enum class ValueShape { single, list, path };

/// What stands right of a colon or an equals sign.
struct Value {
  ValueShape shape = ValueShape::single;
  std::vector<Stop> stops; ///< at least one
  std::optional<Span> mirrored;
  std::optional<Tolerance> tolerance;
  std::optional<SourceNote> source;
  Span span;
  const Expression& expression() const { return stops.front().expression; }
};

/// `splice: long-bury` inside parentheses.
struct Setting {
  Name name;
  Value value;
  Span span;
};

/// `path: …`, `plate-a.port: …`, `cap-tang "Cap tang": …`
struct Property {
  Name name;
  Name side; ///< missing when there is none
  std::optional<Text> title;
  Value value;
  Span span;
};

/// One line of a stack: `2 x toggle-12`, `thimble-9 (splice: long-bury)`.
struct Item {
  std::optional<Expression> count; ///< a number
  Name name;
  std::vector<Setting> settings;
  Span span;
};

struct Declaration;

/// Something that could not be read; reported, stays silent from here on.
struct ErrorEntry {
  Span span;
};

using Entry = std::variant<Property, Item, Declaration, ErrorEntry>;

struct Block {
  std::vector<Entry> entries;
  Span span;
};

/// `kind name "Title" from base of target on spar { … }`
struct Declaration {
  Name kind;
  Name name; ///< missing when there is none
  std::optional<Text> title;
  Name from;    ///< missing when there is none
  Name of;      ///< missing when there is none
  Name of_side; ///< `of cap-shroud.port`
  Name on;      ///< `points on mast`
  Name side;    ///< `stay cap-shroud.port`: one side stated apart
  Block block;
  Span span;
};

/// `language 1`
struct LanguageLine {
  std::string version;
  Span span;
};

/// `use "parts.rig"`
struct Use {
  Text path;
  Span span;
};

/// `let sheer = 1.120 m drawn`
struct Let {
  Name name;
  Value value;
  Span span;
};

/// `expect cap-shroud.port.body = 11_382 mm ± 1 mm`: what a calculated value should come out as.
struct Expect {
  Name stay;
  Name side;     ///< missing when there is none
  Name quantity; ///< missing when it is not said; reported where names are bound
  Value value;
  Span span;
};

using Statement = std::variant<LanguageLine, Use, Let, Expect, Declaration, ErrorEntry>;

/// A comment with its number sign.
struct Comment {
  Span span;
};

/// A whole file as written. It always exists: what could not be read is an ErrorEntry or an error
/// expression.
struct SyntaxTree {
  SourceId source;
  std::vector<Statement> statements;
  std::vector<Comment> comments;
  std::size_t words = 0; ///< words, signs and comments of the file, line ends among them
};

/// The tree as indented text, one node a line, with the names and values as written. For `--print syntax`.
std::string print_tree(const SyntaxTree& tree);

} // namespace sheerpole
