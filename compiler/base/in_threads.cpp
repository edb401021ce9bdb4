#include "base/in_threads.hpp"

#if !defined(__EMSCRIPTEN__)
#include <algorithm>
#include <thread>
#include <vector>
#endif

namespace sheerpole {

#if defined(__EMSCRIPTEN__)

unsigned threads_of_use() {
  return 1;
}

void in_threads(unsigned parts, const std::function<void(unsigned)>& work) {
  for (unsigned part = 0; part < parts; ++part)
    work(part);
}

#else

unsigned threads_of_use() {
  return std::max(std::thread::hardware_concurrency(), 1U);
}

void in_threads(unsigned parts, const std::function<void(unsigned)>& work) {
  std::vector<std::jthread> others;
  for (unsigned part = 1; part < parts; ++part)
    others.emplace_back([&work, part] { work(part); });
  if (parts > 0)
    work(0);
}

#endif

} // namespace sheerpole
