#include "model/limit_use.hpp"

namespace sheerpole {

bool uses(const LimitRow& row, std::string_view check) {
  // Asked for every limit of every check of every boat: without a copy.
  const std::string_view all = row.checks;
  for (std::size_t at = all.find(check); at != std::string_view::npos; at = all.find(check, at + 1)) {
    const std::size_t end = at + check.size();
    if ((at == 0 || all[at - 1] == ' ') && (end == all.size() || all[end] == ' '))
      return true;
  }
  return false;
}

} // namespace sheerpole
