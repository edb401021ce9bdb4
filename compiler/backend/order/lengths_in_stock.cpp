#include "backend/order/lengths_in_stock.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

long tenths_up_mm(std::int64_t mm) {
  return static_cast<long>((std::max<std::int64_t>(0, mm) + 99) / 100);
}

void LengthsInStock::add(std::int64_t mm, std::int64_t count) {
  if (mm > 0 && count > 0)
    lengths_.push_back({mm, count});
}

bool LengthsInStock::take_one(std::int64_t mm, std::int64_t kerf_mm) {
  auto best = lengths_.end();
  for (auto one = lengths_.begin(); one != lengths_.end(); ++one)
    if (one->mm >= mm && (best == lengths_.end() || one->mm < best->mm))
      best = one;
  if (best == lengths_.end())
    return false;
  const std::int64_t left = best->mm - mm - kerf_mm;
  if (--best->count == 0)
    lengths_.erase(best);
  add(left);
  return true;
}

std::vector<WholeLength> LengthsInStock::take(std::vector<WholeLength> wanted, std::int64_t kerf_mm) {
  std::stable_sort(wanted.begin(), wanted.end(),
                   [](const WholeLength& a, const WholeLength& b) { return a.mm > b.mm; });
  std::vector<WholeLength> without;
  for (WholeLength& one : wanted)
    if (!take_one(one.mm, kerf_mm))
      without.push_back(std::move(one));
  return without;
}

} // namespace sheerpole
