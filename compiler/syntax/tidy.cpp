#include "syntax/tidy.hpp"

#include "base/code_point.hpp"
#include "base/internal_error.hpp"
#include "syntax/parse.hpp"
#include "syntax/written_words.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

namespace sheerpole {

namespace {

constexpr std::size_t indentation = 2;
constexpr std::size_t gap_before_comment = 2;

struct Line {
  std::string text;         ///< with its indentation, without a comment behind it
  std::string_view comment; ///< what stands behind the text; a comment on a line of its own is its text
  bool blank_above = false;
};

/// Puts words into lines.
class LineWriter {
public:
  explicit LineWriter(const SourceText& source) : source_(source), words_(written_words(source)) {}

  std::vector<Line> write() {
    const std::vector<LineBreak> breaks = line_breaks(words_);
    const std::vector<bool> gaps = word_gaps(words_);
    for (std::size_t i = 0; i < words_.size(); ++i) {
      const WrittenWord& word = words_[i];
      if (i == 0 || breaks[i].line_ends > 0)
        begin_line(word.kind, breaks[i]);
      else if (word.kind != WordKind::comment && gaps[i])
        lines_.back().text += ' ';
      if (word.kind == WordKind::comment && i > 0 && breaks[i].line_ends == 0)
        lines_.back().comment = source_.text(word.span);
      else
        add(word, i + 1 < words_.size() && breaks[i + 1].line_ends == 0 &&
                      words_[i + 1].kind != WordKind::comment);
    }
    return std::move(lines_);
  }

private:
  /// A ( or [ whose other half has not come yet.
  struct Bracket {
    std::size_t inside; ///< column at which a line inside it begins
    std::size_t end;    ///< column of a line that begins with its other half
  };

  void begin_line(WordKind first, const LineBreak& at) {
    line_begin_ = at.depth * indentation;
    if (!brackets_.empty())
      line_begin_ = first == WordKind::closes_bracket ? brackets_.back().end : brackets_.back().inside;
    lines_.push_back({std::string(line_begin_, ' '), {}, at.line_ends > 1});
  }

  /// `goes_on`: the next word stands on the same line.
  void add(const WrittenWord& word, bool goes_on) {
    std::string& text = lines_.back().text;
    if (word.kind == WordKind::opens_bracket) {
      const std::size_t column = screen_columns(text);
      if (goes_on)
        brackets_.push_back({column + 1, column});
      else
        brackets_.push_back({line_begin_ + indentation, line_begin_});
    } else if (word.kind == WordKind::closes_bracket && !brackets_.empty()) {
      brackets_.pop_back();
    }
    text += source_.text(word.span);
  }

  const SourceText& source_;
  std::vector<WrittenWord> words_;
  std::vector<Line> lines_;
  std::vector<Bracket> brackets_;
  std::size_t line_begin_ = 0; ///< column of the first word of the last line
};

/// Comments behind adjacent lines begin in one column.
void align_comments(std::vector<Line>& lines) {
  for (std::size_t begin = 0; begin < lines.size();) {
    std::size_t end = begin;
    std::size_t widest = 0;
    while (end < lines.size() && !lines[end].comment.empty() && (end == begin || !lines[end].blank_above))
      widest = std::max(widest, screen_columns(lines[end++].text));
    for (std::size_t i = begin; i < end; ++i) {
      std::string& text = lines[i].text;
      text.append(widest + gap_before_comment - screen_columns(text), ' ');
      text += lines[i].comment;
    }
    begin = std::max(end, begin + 1);
  }
}

/// The line end of the file: that of its first line.
std::string_view line_end(std::string_view bytes) {
  const std::size_t at = bytes.find_first_of("\r\n");
  if (at == std::string_view::npos || bytes[at] == '\n')
    return "\n";
  return bytes.substr(at).starts_with("\r\n") ? "\r\n" : "\r";
}

bool same_words(const SourceText& one, const SourceText& other) {
  const std::vector<WrittenWord> words = written_words(one);
  const std::vector<WrittenWord> others = written_words(other);
  return std::equal(words.begin(), words.end(), others.begin(), others.end(),
                    [&](const WrittenWord& a, const WrittenWord& b) {
                      return a.kind == b.kind && one.text(a.span) == other.text(b.span);
                    });
}

/// For each opening and closing brace, whether its block is spread over more than one line; false for other
/// words.
std::vector<bool> spread_blocks(const std::vector<WrittenWord>& words) {
  std::vector<bool> spread(words.size(), false);
  std::vector<std::size_t> open;
  std::size_t lines_before = 0;
  std::vector<std::size_t> lines_at_open;
  for (std::size_t i = 0; i < words.size(); ++i) {
    lines_before += words[i].line_ends;
    if (words[i].kind == WordKind::opens_block) {
      open.push_back(i);
      lines_at_open.push_back(lines_before);
    } else if (words[i].kind == WordKind::closes_block && !open.empty()) {
      spread[i] = spread[open.back()] = lines_before > lines_at_open.back();
      open.pop_back();
      lines_at_open.pop_back();
    }
  }
  return spread;
}

/// Whether a minus behind this one belongs to the number, name or bracket that follows: nothing has come
/// that it could be taken from.
bool value_begins_behind(WordKind before) {
  switch (before) {
  case WordKind::opens_block:
  case WordKind::opens_bracket:
  case WordKind::comma:
  case WordKind::colon:
  case WordKind::minus:
  case WordKind::sign:
    return true;
  default:
    return false;
  }
}

} // namespace

std::optional<std::string> tidy(const SourceText& source, DiagnosticSink& sink) {
  DiagnosticSink found;
  parse(source, found);
  for (const Diagnostic& each : found.all())
    sink.report(each);
  if (found.has_errors())
    return std::nullopt;

  std::vector<Line> lines = LineWriter(source).write();
  align_comments(lines);
  const std::string_view end = line_end(source.bytes());
  std::string result;
  result.reserve(source.bytes().size());
  for (const Line& line : lines) {
    if (line.blank_above)
      result += end;
    result += line.text;
    result += end;
  }
  // A blank at the wrong place can make two words of a number. Better no tidy file than another rig.
  if (!same_words(source, SourceText(source.id(), source.name(), result)))
    internal_error("tidying would change the words of " + source.name());
  return result;
}

std::vector<LineBreak> line_breaks(const std::vector<WrittenWord>& words) {
  const std::vector<bool> spread = spread_blocks(words);
  std::vector<LineBreak> breaks(words.size());
  std::size_t depth = 0;
  bool behind_opening =
      true; // of the file, a block or a bracket, with a remark behind it on its line or none
  for (std::size_t i = 0; i < words.size(); ++i) {
    const WordKind kind = words[i].kind;
    const bool trailing_comment = kind == WordKind::comment && words[i].line_ends == 0;
    const bool closes = kind == WordKind::closes_block || kind == WordKind::closes_bracket;
    if (kind == WordKind::closes_block && spread[i])
      --depth;

    std::size_t line_ends = std::min<std::size_t>(words[i].line_ends, behind_opening || closes ? 1 : 2);
    if (kind == WordKind::opens_block) // a remark before it ends its line all the same
      line_ends = i > 0 && words[i - 1].kind == WordKind::comment ? 1 : 0;
    else if (kind == WordKind::closes_block && spread[i])
      line_ends = 1;
    else if (i > 0 && words[i - 1].kind == WordKind::opens_block && spread[i - 1] && !trailing_comment)
      line_ends = 1;
    breaks[i] = {i == 0 ? 0 : line_ends, depth};

    if (kind == WordKind::opens_block && spread[i])
      ++depth;
    behind_opening = kind == WordKind::opens_block || kind == WordKind::opens_bracket ||
                     (behind_opening && trailing_comment && i > 0);
  }
  return breaks;
}

std::vector<bool> word_gaps(const std::vector<WrittenWord>& words) {
  std::vector<bool> gaps(words.size(), true);
  WordKind before = WordKind::opens_block; // comments do not count
  bool of_what_follows = false;            // the word before is a minus that belongs to this one
  for (std::size_t i = 0; i < words.size(); ++i) {
    const WordKind kind = words[i].kind;
    if (kind == WordKind::comment)
      continue;
    switch (kind) {
    case WordKind::comma:
    case WordKind::colon:
    case WordKind::point:
    case WordKind::closes_bracket:
      gaps[i] = false;
      break;
    case WordKind::name_or_unit:
      // `12mm` and `12 mm` are both the author's: a quantity is not touched.
      if (before == WordKind::number)
        gaps[i] = words[i].blank_before;
      break;
    default:
      break;
    }
    if (before == WordKind::point || before == WordKind::opens_bracket || of_what_follows)
      gaps[i] = false;
    of_what_follows = kind == WordKind::minus && value_begins_behind(before);
    before = kind;
  }
  return gaps;
}

} // namespace sheerpole
