#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace sheerpole {

/// How the two numbers of a fraction of an inch are set, as shares of the size of the text: smaller, the
/// upper one raised, the lower one let down a little. So the figures of table rows keep 2 mm. No face of
/// the papers has figures of its own for sixteenths.
inline constexpr double small_figures = 0.74;
inline constexpr double raised_by = 0.27;
inline constexpr double lowered_by = 0.08;

/// A stretch of one line that is set alike.
struct TextRun {
  enum class Place { on_line, above, below };
  std::string_view text;
  Place place = Place::on_line;
};

/// The runs of a text, together all of it: `4 15/16"` is "4 ", 15 above, "/", 16 below, `"`. A fraction is
/// less than one, of halves to sixty-fourths, and inches stand behind it (`"` or ` in`): a name such as
/// "5/8-18 UNF" or a day such as 1/2 is none.
std::vector<TextRun> runs_of(std::string_view text);

/// How many figures of a text are set small.
std::size_t small_figures_in(std::string_view text);

} // namespace sheerpole
