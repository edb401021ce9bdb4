#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Readings of a text in which digits are grouped or the decimals are set off by a comma: `11,815 m`
/// is 11.815 m or 11_815 m, `1.234,5 m` is 1_234.5 m, `11 642 mm` and `11'642 mm` are 11_642 mm. Likeliest
/// first; empty when the groups make no number. The rest of the text is kept.
std::vector<std::string> readings_of_digit_groups(std::string_view text);

} // namespace sheerpole
