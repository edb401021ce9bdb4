#pragma once

#include "model/line_material.hpp"
#include "units/length.hpp"

#include <cstdint>
#include <optional>
#include <string>

namespace sheerpole {

/// What a length of chain comes to when it is cut: it parts between two links and nowhere else.
struct WholeLinks {
  std::int64_t count = 1;
  std::string pitch; ///< as the file writes it, so that so many links of it are what is printed: "28 mm"
  Length length;     ///< of all of them
  Length longer;     ///< than what was asked for; less than nothing: shorter
};

/// Inside length of one link of a chain; nothing for any other line, and where it is not stated.
std::optional<Length> pitch_of(const LineMaterial& line);

/// Inside length of one link of a chain as the file writes it; empty for any other line, and where it is
/// not stated.
std::string pitch_words(const LineMaterial& line);

/// The links whose length is nearest to `wanted`, one at least. Nothing for a line that is no chain or
/// states no pitch. Common practice, no source. Check: 1968.46 mm are 70.30 links of 28 mm, so 70 of them,
/// 1960 mm, are 8.46 mm shorter.
std::optional<WholeLinks> whole_links(const LineMaterial& line, Length wanted);

} // namespace sheerpole
