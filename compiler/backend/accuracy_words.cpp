#include "backend/accuracy_words.hpp"

#include "backend/tenths.hpp"
#include "wording/papers/papers_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

namespace sheerpole {

std::string range_words(Length low, Length high) {
  const Tenths below = Tenths::of(low);
  const Tenths above = Tenths::of(high);
  if (below + above == Tenths{})
    return fmt::format("± {}", format_tenths(above));
  return fmt::format("{} / {}", format_signed(below), format_signed(above));
}

std::string without_tolerance(const Uncertainty& found,
                              const std::function<std::string(const Remark&)>& spoken) {
  if (found.without_bound.empty())
    return {};
  const std::string first = spoken(found.without_bound.front());
  const std::size_t others = found.without_bound.size() - 1;
  return others == 0   ? first
         : others == 1 ? say(PapersPhrase::and_one_more, first)
                       : say(PapersPhrase::and_more, first, others);
}

} // namespace sheerpole
