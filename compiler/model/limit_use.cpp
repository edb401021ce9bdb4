#include "model/limit_use.hpp"

#include <string>

namespace sheerpole {

bool uses(const LimitRow& row, std::string_view check) {
  const std::string all = " " + std::string(row.checks) + " ";
  return all.find(" " + std::string(check) + " ") != std::string::npos;
}

} // namespace sheerpole
