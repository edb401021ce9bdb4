#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace sheerpole {

/// A page of plain text, at most 100 columns wide unless a single word is wider.
class TextPage {
public:
  static constexpr std::size_t width = 100;

  void blank() { text_ += '\n'; }
  void line(std::string_view text);
  void rule(char sign);
  /// `left` at the margin and `right` at the other one.
  void ends(std::string_view left, std::string_view right);
  /// `lead` once, then the text wrapped beside it; no trailing blanks.
  void wrapped(std::string_view lead, std::string_view text);
  const std::string& text() const { return text_; }

private:
  std::string text_;
};

/// The text with blanks at which wrapped() does not break, so that a number and its unit stay on one line.
std::string kept_together(std::string_view text);

/// The text with blanks up to `columns` screen columns, on the right or (numbers) on the left.
std::string padded(std::string_view text, std::size_t columns);
std::string padded_left(std::string_view text, std::size_t columns);

/// A name and an amount to its right, each in its column. An amount that is wider than its column, as one
/// with the name of its X, reaches to the left into what the name leaves free.
std::string name_and_amount(std::string_view name, std::string_view amount, std::size_t name_columns,
                            std::size_t amount_columns);

} // namespace sheerpole
