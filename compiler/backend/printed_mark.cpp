#include "backend/printed_mark.hpp"

namespace sheerpole {

PrintedMark printed_mark(const BenchMark& mark, Tenths cut) {
  PrintedMark printed{{mark.from_upper.unknown, Tenths::of(mark.from_upper.known)},
                      {mark.from_lower.unknown, Tenths::of(mark.from_lower.known)}};
  const bool nearer_aloft = mark.from_upper.unknown == mark.from_lower.unknown
                                ? mark.from_upper.known <= mark.from_lower.known
                                : mark.from_lower.unknown;
  if (nearer_aloft)
    printed.from_lower.tenths = cut - printed.from_upper.tenths;
  else
    printed.from_upper.tenths = cut - printed.from_lower.tenths;
  return printed;
}

} // namespace sheerpole
