#pragma once

#include <cstddef>

namespace sheerpole::test {

/// Of the cases of the longest tests so many are one that a build under the sanitizers tries: it takes four
/// times as long for each, and the everyday build tries all.
inline constexpr std::size_t one_case_in =
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
    6;
#else
    1;
#endif

/// Whether this build tries the case of this number.
constexpr bool is_tried(std::size_t number) {
  return number % one_case_in == 0;
}

} // namespace sheerpole::test
