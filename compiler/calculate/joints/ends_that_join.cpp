#include "calculate/joints/ends_that_join.hpp"

#include <string_view>

namespace sheerpole {

namespace {

struct Pair {
  std::string_view one;
  std::string_view other;
};

constexpr Pair mates[] = {
    {"jaw", "eye"}, {"stud", "socket"}, {"hook", "eye"}, {"holes", "holes"}, {"tee", "slot"},
};

constexpr Pair apart[] = {
    {"jaw", "jaw"},    {"eye", "eye"},     {"stud", "stud"},  {"socket", "socket"}, {"stud", "jaw"},
    {"stud", "eye"},   {"stud", "hook"},   {"stud", "tee"},   {"stud", "slot"},     {"socket", "jaw"},
    {"socket", "eye"}, {"socket", "hook"}, {"socket", "tee"}, {"socket", "slot"},   {"tee", "jaw"},
    {"tee", "eye"},    {"tee", "tee"},
};

template <std::size_t count>
bool among(const Pair (&pairs)[count], const End& a, const End& b) {
  for (const Pair& pair : pairs)
    if ((a.type == pair.one && b.type == pair.other) || (a.type == pair.other && b.type == pair.one))
      return true;
  return false;
}

} // namespace

bool ends_mate(const End& a, const End& b) {
  return among(mates, a, b);
}

bool ends_never_join(const End& a, const End& b) {
  return among(apart, a, b);
}

} // namespace sheerpole
