#include "driver/seal/verify_seal.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t digits = 64;

bool is_digit(char c) {
  return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
}

bool leads_out(const std::string& name) {
  if (name.empty() || name.front() == '/' || name.find('\\') != std::string::npos)
    return true;
  for (std::size_t at = 0; at <= name.size();) {
    const std::size_t end = std::min(name.find('/', at), name.size());
    const std::string part = name.substr(at, end - at);
    if (part.empty() || part == "." || part == "..")
      return true;
    at = end + 1;
  }
  return false;
}

} // namespace

SealSums read_sums(const std::string& list, std::vector<std::string>& bad_lines) {
  SealSums sums;
  for (std::size_t at = 0; at < list.size();) {
    const std::size_t end = std::min(list.find('\n', at), list.size());
    const std::string line = list.substr(at, end - at);
    at = end + 1;
    const bool shaped = line.size() > digits + 2 && line.compare(digits, 2, "  ") == 0 &&
                        std::all_of(line.begin(), line.begin() + digits, is_digit);
    const std::string name = shaped ? line.substr(digits + 2) : "";
    if (!shaped || leads_out(name) || !sums.emplace(name, line.substr(0, digits)).second)
      bad_lines.push_back(line);
  }
  return sums;
}

SealFaults compare_with_sums(const SealSums& sums, const SealSums& found) {
  SealFaults faults;
  for (const auto& [name, sum] : sums) {
    const auto file = found.find(name);
    if (file == found.end())
      faults.missing.push_back(name);
    else if (file->second != sum)
      faults.altered.push_back(name);
  }
  for (const auto& [name, sum] : found)
    if (!sums.contains(name))
      faults.extra.push_back(name);
  return faults;
}

} // namespace sheerpole
