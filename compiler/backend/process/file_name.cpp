#include "backend/process/file_name.hpp"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <memory>
#include <utf8proc.h>

namespace sheerpole {

namespace {

/// Longest name of one file that every usual file system takes, with room for what is added while it is
/// being written.
constexpr std::size_t longest_part = 200;

/// Deepest folder in a folder, and longest name with all its folders: room below most paths of most
/// systems.
constexpr std::size_t most_parts = 16;
constexpr std::size_t longest_name = 400;

struct Free {
  void operator()(utf8proc_uint8_t* text) const { std::free(text); }
};

/// The name as a disk may see it that knows neither capitals nor two ways to write one letter: NFC with the
/// case folded (Unicode Standard, sections 3.11 and 3.13). What is not UTF-8 stays as it is.
std::string as_disks_see_it(std::string_view name) {
  const auto options =
      static_cast<utf8proc_option_t>(UTF8PROC_STABLE | UTF8PROC_COMPOSE | UTF8PROC_CASEFOLD);
  utf8proc_uint8_t* folded = nullptr;
  const utf8proc_ssize_t size = utf8proc_map(reinterpret_cast<const utf8proc_uint8_t*>(name.data()),
                                             static_cast<utf8proc_ssize_t>(name.size()), &folded, options);
  const std::unique_ptr<utf8proc_uint8_t, Free> owner(folded);
  return size < 0 ? std::string(name)
                  : std::string(reinterpret_cast<const char*>(folded), static_cast<std::size_t>(size));
}

/// Whether the name holds a sign that does not show or turns the direction of writing: controls, formats
/// (bidirectional controls among them), line and paragraph separators, private and unassigned ones.
bool holds_unseen(std::string_view name) {
  const auto* at = reinterpret_cast<const utf8proc_uint8_t*>(name.data());
  auto left = static_cast<utf8proc_ssize_t>(name.size());
  while (left > 0) {
    utf8proc_int32_t sign = -1;
    const utf8proc_ssize_t taken = utf8proc_iterate(at, left, &sign);
    if (taken <= 0)
      return true;
    switch (utf8proc_category(sign)) {
    case UTF8PROC_CATEGORY_CC:
    case UTF8PROC_CATEGORY_CF:
    case UTF8PROC_CATEGORY_CS:
    case UTF8PROC_CATEGORY_CO:
    case UTF8PROC_CATEGORY_CN:
    case UTF8PROC_CATEGORY_ZL:
    case UTF8PROC_CATEGORY_ZP:
      return true;
    default:
      break;
    }
    at += taken;
    left -= taken;
  }
  return false;
}

/// Whether the part is a device of Windows, whatever stands behind its first point.
bool is_device(std::string_view part) {
  std::string name(part.substr(0, part.find('.')));
  while (name.ends_with(' '))
    name.pop_back();
  std::transform(name.begin(), name.end(), name.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  constexpr std::array devices{"con", "prn", "aux", "nul", "conin$", "conout$"};
  if (std::find(devices.begin(), devices.end(), name) != devices.end())
    return true;
  // com1 to com9 and lpt1 to lpt9; the superscripts of Latin-1 count as the digits there.
  if (!name.starts_with("com") && !name.starts_with("lpt"))
    return false;
  const std::string number = name.substr(3);
  return (number.size() == 1 && number[0] >= '0' && number[0] <= '9') || number == "\u00b9" ||
         number == "\u00b2" || number == "\u00b3";
}

std::string fault_of_part(std::string_view part) {
  if (part.empty())
    return "has a part without a name";
  if (part == "..")
    return "leads out of the folder";
  if (part.front() == '.')
    return "has a part that begins with a dot";
  if (part.back() == '.' || part.back() == ' ')
    return "has a part that ends with a dot or a blank, which some disks drop";
  if (is_device(part))
    return "has a part that is a device on some systems";
  if (part.size() > longest_part)
    return "is too long";
  return {};
}

} // namespace

std::string fault_of_file_name(std::string_view name) {
  if (name.empty())
    return "is empty";
  if (name.front() == '/')
    return "does not begin in the folder";
  for (const char c : name)
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f ||
        std::string_view("\\:*?\"<>|").find(c) != std::string_view::npos)
      return "holds a sign that is no part of a file name";
  if (holds_unseen(name))
    return "holds a sign that does not show";
  if (name.size() > longest_name)
    return "is too long";
  if (std::count(name.begin(), name.end(), '/') >= static_cast<std::ptrdiff_t>(most_parts))
    return "lies too deep";
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
  const std::string a = as_disks_see_it(one);
  const std::string b = as_disks_see_it(other);
  const std::string& shorter = a.size() <= b.size() ? a : b;
  const std::string& longer = a.size() <= b.size() ? b : a;
  return longer.starts_with(shorter) && (longer.size() == shorter.size() || longer[shorter.size()] == '/');
}

} // namespace sheerpole
