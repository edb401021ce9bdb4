#include "service/cursor.hpp"

#include "syntax/written_words.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole::service {

namespace {

/// A word or sign before the cursor.
struct Seen {
  WordKind kind;
  std::string_view text;
  std::uint32_t begin;
};

using EntryWords = std::vector<Seen>;

/// A block or a bracket that is open.
struct Frame {
  bool block = true;
  EntryWords head; ///< the words of the entry before it
  std::uint32_t begin = 0;
  std::vector<std::string> stated; ///< of a bracket: names of settings
};

bool is_name_sign(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_';
}

bool is_letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// All that is open at a place, and the entry that it stands in.
class Walk {
public:
  explicit Walk(const SourceText& text) : text_(text) {}

  void see(const WrittenWord& word) {
    if (word.line_ends > 0)
      end_line(word.kind == WordKind::opens_block);
    const Seen seen{word.kind, text_.text(word.span), word.span.begin};
    switch (word.kind) {
    case WordKind::comment:
      return;
    case WordKind::opens_block:
      open(true, seen.begin);
      return;
    case WordKind::opens_bracket:
      open(false, seen.begin);
      return;
    case WordKind::closes_block:
      close_block();
      return;
    case WordKind::closes_bracket:
      close_bracket(seen);
      return;
    case WordKind::comma:
      if (!frames_.empty() && !frames_.back().block && !holds_elements(frames_.back())) {
        note_setting();
        entry_.clear();
        return;
      }
      break;
    default:
      break;
    }
    entry_.push_back(seen);
  }
  /// The cursor stands on a line below the last word.
  void end_line(bool brace_follows = false) {
    if (!frames_.empty() && !frames_.back().block)
      return;
    if (!brace_follows)
      entry_.clear();
  }

  /// `(1, 2, 3)`: a place or a sum, not settings.
  static bool holds_elements(const Frame& bracket) {
    return bracket.head.empty() || (bracket.head.back().kind != WordKind::name_or_unit &&
                                    bracket.head.back().kind != WordKind::other);
  }

  const std::vector<Frame>& frames() const { return frames_; }
  const EntryWords& entry() const { return entry_; }

private:
  void open(bool block, std::uint32_t begin) {
    frames_.push_back({block, std::move(entry_), begin, {}});
    entry_.clear();
  }
  void close_block() {
    while (!frames_.empty() && !frames_.back().block)
      frames_.pop_back();
    if (!frames_.empty())
      frames_.pop_back();
    entry_.clear();
  }
  void close_bracket(const Seen& sign) {
    if (frames_.empty() || frames_.back().block)
      return;
    entry_ = std::move(frames_.back().head);
    frames_.pop_back();
    entry_.push_back(sign);
  }
  void note_setting() {
    if (!entry_.empty())
      frames_.back().stated.emplace_back(entry_.front().text);
  }

  const SourceText& text_;
  std::vector<Frame> frames_;
  EntryWords entry_;
};

bool begins_value(const Seen& last) {
  return last.kind == WordKind::colon || last.kind == WordKind::sign || last.kind == WordKind::comma ||
         last.kind == WordKind::minus || last.kind == WordKind::opens_bracket;
}

/// Where the value of an entry begins: behind its colon or, of a `let` or `expect`, its equals sign.
std::size_t value_begin(const EntryWords& entry) {
  for (std::size_t i = 0; i < entry.size(); ++i)
    if (entry[i].kind == WordKind::colon || entry[i].text == "=")
      return i + 1;
  return 0;
}

/// A number in a value may be followed by its unit.
Slot slot_in_value(const EntryWords& entry, std::size_t begin) {
  if (entry.size() == begin)
    return Slot::value;
  const Seen& last = entry.back();
  if (last.kind == WordKind::number)
    return Slot::unit;
  return begins_value(last) ? Slot::value : Slot::after;
}

/// What may stand behind the words of a head: `stay a from`, `reading of`, `points on`.
bool set_in_head(const EntryWords& entry, Cursor& cursor) {
  if (entry.empty())
    return false;
  const std::string_view last = entry.back().text;
  cursor.head = entry.front().text;
  if (last == "from")
    cursor.slot = Slot::base;
  else if (last == "of")
    cursor.slot = Slot::target;
  else if (last == "on")
    cursor.slot = Slot::spar;
  else
    return false;
  return true;
}

/// Rows of the settings that the part or end before a bracket takes.
void set_settings(const Frame& bracket, const KindRow* block, const ResolvedTree* names, Cursor& cursor) {
  const std::string owner(bracket.head.back().text);
  cursor.owner = owner;
  cursor.stated = bracket.stated;
  if (value_begin(bracket.head) > 0) {
    if (const EndRow* end = find_end(owner))
      cursor.rows = end->dimensions;
    return;
  }
  if (block == nullptr || !block->holds_items)
    return;
  if (owner == "line")
    cursor.rows = line_settings();
  else if (const Symbol* part = find_symbol(names, owner); part != nullptr && part->row != nullptr)
    cursor.rows = part->row->settings;
}

void set_in_bracket(const Walk& walk, const ResolvedTree* names, Cursor& cursor) {
  const Frame& bracket = walk.frames().back();
  if (Walk::holds_elements(bracket)) {
    if (const std::size_t begin = value_begin(bracket.head)) {
      cursor.slot = walk.entry().empty() ? Slot::value : slot_in_value(walk.entry(), 0);
      if (cursor.kind != nullptr && begin >= 2)
        cursor.row = find_property(cursor.kind->properties, bracket.head.front().text);
    }
    return;
  }
  set_settings(bracket, cursor.kind, names, cursor);
  if (walk.entry().empty()) {
    cursor.slot = Slot::setting;
    return;
  }
  if (const std::size_t begin = value_begin(walk.entry())) {
    cursor.slot = slot_in_value(walk.entry(), begin);
    cursor.row = find_property(cursor.rows, walk.entry().front().text);
  }
}

void set_in_block(const EntryWords& entry, Cursor& cursor) {
  if (entry.empty()) {
    cursor.slot = Slot::entry;
  } else if (const std::size_t begin = value_begin(entry)) {
    cursor.slot = slot_in_value(entry, begin);
    if (cursor.kind != nullptr && !cursor.kind->free_properties)
      cursor.row = find_property(cursor.kind->properties, entry.front().text);
  } else if (entry.size() == 2 && entry[0].kind == WordKind::number && entry[1].text == "x") {
    cursor.slot = Slot::part;
  } else {
    set_in_head(entry, cursor);
  }
}

void set_at_top(const EntryWords& entry, Cursor& cursor) {
  if (entry.empty()) {
    cursor.slot = Slot::statement;
  } else if (const std::size_t begin = value_begin(entry)) {
    cursor.slot = slot_in_value(entry, begin);
  } else if (entry.front().text == "expect") {
    cursor.slot = entry.size() == 1 ? Slot::target : Slot::nothing;
    cursor.head = "expect";
  } else {
    set_in_head(entry, cursor);
  }
}

/// Behind a point stands a side, or what is expected of a stay.
bool set_behind_point(const EntryWords& entry, Cursor& cursor) {
  if (entry.empty() || entry.back().kind != WordKind::point)
    return false;
  cursor.slot = entry.front().text == "expect" ? Slot::quantity : Slot::side;
  return true;
}

} // namespace

const Symbol* find_symbol(const ResolvedTree* names, std::string_view name) {
  if (names == nullptr)
    return nullptr;
  for (const Symbol& symbol : names->symbols)
    if (!symbol.poison() && symbol.name == name)
      return &symbol;
  return nullptr;
}

Span word_at(const SourceText& text, std::uint32_t offset) {
  const std::string_view bytes = text.bytes();
  std::uint32_t begin = std::min<std::uint32_t>(offset, static_cast<std::uint32_t>(bytes.size()));
  std::uint32_t end = begin;
  while (begin > 0 && is_name_sign(bytes[begin - 1]))
    --begin;
  while (end < bytes.size() && is_name_sign(bytes[end]))
    ++end;
  // Digits and signs before the first letter belong to a number.
  if (begin < end && !is_letter(bytes[begin]))
    return {text.id(), offset, offset};
  return {text.id(), begin, end};
}

Cursor cursor_at(const SourceText& text, std::uint32_t offset, const ResolvedTree* names) {
  Cursor cursor;
  cursor.word = word_at(text, offset);
  const std::uint32_t begin = cursor.word.begin;
  Walk walk(text);
  std::uint32_t end_of_last = 0;
  for (const WrittenWord& word : written_words(text)) {
    if (word.span.begin >= begin)
      break;
    if (word.span.end > begin || (word.kind == WordKind::comment && word.span.end >= begin)) {
      // Inside a text or a comment; of these only the path of a library can be gone on with.
      const EntryWords& entry = walk.entry();
      if (word.kind != WordKind::comment && entry.size() == 1 && entry.front().text == "use")
        cursor.slot = Slot::path;
      return cursor;
    }
    walk.see(word);
    end_of_last = word.span.end;
  }
  const std::string_view between = text.text({text.id(), end_of_last, begin});
  if (between.find_first_of("\r\n") != std::string_view::npos)
    walk.end_line();

  for (const Frame& frame : walk.frames())
    if (frame.block) {
      cursor.kind = frame.head.empty() ? nullptr : find_kind(frame.head.front().text);
      cursor.kinds.push_back(cursor.kind);
      cursor.block_begin = frame.begin;
    }
  // A number right before the cursor is being typed.
  if (cursor.word.begin == cursor.word.end && between.empty() && !walk.entry().empty() &&
      walk.entry().back().kind == WordKind::number)
    return cursor;
  if (set_behind_point(walk.entry(), cursor))
    return cursor;
  if (walk.frames().empty())
    set_at_top(walk.entry(), cursor);
  else if (walk.frames().back().block)
    set_in_block(walk.entry(), cursor);
  else
    set_in_bracket(walk, names, cursor);
  return cursor;
}

} // namespace sheerpole::service
