#include "backend/printed_mark.hpp"

namespace sheerpole {

PrintedMark printed_mark(const BenchMark& mark, Tenths cut) {
  PrintedMark printed{{mark.from_aloft.unknown, Tenths::of(mark.from_aloft.known)},
                      {mark.from_below.unknown, Tenths::of(mark.from_below.known)}};
  const bool nearer_aloft = mark.from_aloft.unknown == mark.from_below.unknown
                                ? mark.from_aloft.known <= mark.from_below.known
                                : mark.from_below.unknown;
  if (nearer_aloft)
    printed.from_below.tenths = cut - printed.from_aloft.tenths;
  else
    printed.from_aloft.tenths = cut - printed.from_below.tenths;
  return printed;
}

} // namespace sheerpole
