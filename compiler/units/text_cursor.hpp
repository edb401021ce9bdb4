#pragma once

#include <cstddef>
#include <string_view>

namespace sheerpole {

/// Walks over the UTF-8 text of one number or quantity. Knows the characters that stand for a blank, for
/// feet, for inches and for the common fractions; nothing else. Any bytes may follow, well-formed or not.
class TextCursor {
public:
  explicit constexpr TextCursor(std::string_view text, std::size_t at = 0) : text_(text), at_(at) {}

  constexpr bool at_end() const { return at_ >= text_.size(); }
  constexpr std::size_t position() const { return at_; }
  constexpr void move_to(std::size_t position) { at_ = position; }
  constexpr std::string_view rest() const { return text_.substr(at_); }
  constexpr std::string_view since(std::size_t start) const { return text_.substr(start, at_ - start); }
  /// The byte `ahead` of here; NUL beyond the end.
  constexpr char peek(std::size_t ahead = 0) const {
    return at_ + ahead < text_.size() ? text_[at_ + ahead] : '\0';
  }
  constexpr bool at_digit(std::size_t ahead = 0) const { return is_digit(peek(ahead)); }

  constexpr bool take(std::string_view token) {
    if (!rest().starts_with(token))
      return false;
    at_ += token.size();
    return true;
  }
  constexpr bool take(char token) {
    if (at_end() || text_[at_] != token)
      return false;
    ++at_;
    return true;
  }

  /// Passes over spaces, tabs, U+00A0, U+202F and U+2009; true when there was at least one.
  constexpr bool skip_blanks() {
    const std::size_t start = at_;
    while (const std::size_t size = blank_size(rest()))
      at_ += size;
    return at_ != start;
  }

  /// `"`, U+2033, U+201D, U+201C, or one of the marks for feet written twice.
  constexpr bool take_inch_mark() {
    if (take('"') || take("\u2033") || take("\u201D") || take("\u201C"))
      return true;
    const std::size_t size = foot_mark_size(rest());
    if (size == 0 || !text_.substr(at_ + size).starts_with(rest().substr(0, size)))
      return false;
    at_ += 2 * size;
    return true;
  }

  /// `'`, U+2032, U+2019, U+2018. Ask for an inch mark first: two of these are one.
  constexpr bool take_foot_mark() {
    const std::size_t size = foot_mark_size(rest());
    at_ += size;
    return size != 0;
  }

  /// One of the seven fraction characters of halves, quarters and eighths; 0 when there is none.
  constexpr double take_fraction_character() {
    const char first = peek();
    if (first != '\xC2' && first != '\xE2')
      return 0.0;
    if (take("\u00BD"))
      return 0.5;
    if (take("\u00BC"))
      return 0.25;
    if (take("\u00BE"))
      return 0.75;
    if (take("\u215B"))
      return 0.125;
    if (take("\u215C"))
      return 0.375;
    if (take("\u215D"))
      return 0.625;
    if (take("\u215E"))
      return 0.875;
    return 0.0;
  }

  static constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
  static constexpr bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }

  /// Bytes of the blank that begins the text; 0 when none does.
  static constexpr std::size_t blank_size(std::string_view text) {
    if (text.empty())
      return 0;
    switch (text.front()) {
    case ' ':
    case '\t':
      return 1;
    case '\xC2':
      return text.starts_with("\u00A0") ? 2 : 0;
    case '\xE2':
      return text.starts_with("\u202F") || text.starts_with("\u2009") ? 3 : 0;
    default:
      return 0;
    }
  }

  /// Bytes of the blank that ends the text; 0 when none does.
  static constexpr std::size_t last_blank_size(std::string_view text) {
    if (text.ends_with(' ') || text.ends_with('\t'))
      return 1;
    if (text.ends_with("\u00A0"))
      return 2;
    return text.ends_with("\u202F") || text.ends_with("\u2009") ? 3 : 0;
  }

private:
  static constexpr std::size_t foot_mark_size(std::string_view text) {
    if (text.starts_with('\''))
      return 1;
    return text.starts_with("\u2032") || text.starts_with("\u2019") || text.starts_with("\u2018") ? 3 : 0;
  }

  std::string_view text_;
  std::size_t at_ = 0;
};

/// The text without the blanks round it.
constexpr std::string_view trim_blanks(std::string_view text) {
  while (const std::size_t size = TextCursor::blank_size(text))
    text.remove_prefix(size);
  while (const std::size_t size = TextCursor::last_blank_size(text))
    text.remove_suffix(size);
  return text;
}

} // namespace sheerpole
