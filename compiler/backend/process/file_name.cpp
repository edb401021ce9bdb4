#include "backend/process/file_name.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// Longest name of one file that every usual file system takes, with room for what is added while it is
/// being written.
constexpr std::size_t longest_part = 200;

std::string fault_of_part(std::string_view part) {
  if (part.empty())
    return "has a part without a name";
  if (part == "..")
    return "leads out of the folder";
  if (part.front() == '.')
    return "has a part that begins with a dot";
  if (part.size() > longest_part)
    return "is too long";
  return {};
}

char small(char letter) {
  return letter >= 'A' && letter <= 'Z' ? static_cast<char>(letter - 'A' + 'a') : letter;
}

} // namespace

std::string fault_of_file_name(std::string_view name) {
  if (name.empty())
    return "is empty";
  if (name.front() == '/')
    return "does not begin in the folder";
  for (const char c : name)
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f || c == '\\' || c == ':')
      return "holds a sign that is no part of a file name";
  if (name.ends_with(".being-written"))
    return "is a name of files that are being written";
  for (std::string_view rest = name;;) {
    const std::size_t end = std::min(rest.find('/'), rest.size());
    if (std::string fault = fault_of_part(rest.substr(0, end)); !fault.empty())
      return fault;
    if (end == rest.size())
      return {};
    rest.remove_prefix(end + 1);
  }
}

bool file_names_clash(std::string_view one, std::string_view other) {
  if (one.size() > other.size())
    std::swap(one, other);
  const auto alike = [](char a, char b) { return small(a) == small(b); };
  return std::equal(one.begin(), one.end(), other.begin(), alike) &&
         (one.size() == other.size() || other[one.size()] == '/');
}

} // namespace sheerpole
