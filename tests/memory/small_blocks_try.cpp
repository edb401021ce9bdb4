// Threads that take blocks of all sizes, fill them, hand some to each other and give them back, with their
// size and without it, behind their end too: no block may be given out twice, and each is aligned. By hand,
// since it replaces the memory of the whole program:
//   ninja -C build/dev small-blocks-try && build/dev/bin/small-blocks-try

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <map>
#include <mutex>
#include <new>
#include <string>
#include <thread>
#include <vector>

namespace {

struct Block {
  unsigned char* bytes = nullptr;
  std::size_t size = 0;
  unsigned char filled_with = 0;
};

std::mutex common;
std::vector<Block> handed_on;
thread_local std::map<int, std::string> let_go_last;

void look(const Block& block) {
  for (std::size_t i = 0; i < block.size; ++i)
    if (block.bytes[i] != block.filled_with) {
      std::puts("a block was given out twice");
      std::abort();
    }
}

void give_back(const Block& block, bool with_size) {
  look(block);
  if (with_size)
    ::operator delete(block.bytes, block.size);
  else
    ::operator delete(block.bytes);
}

void work(std::uint64_t state) {
  const auto below = [&state](unsigned sides) {
    state = state * 6364136223846793005U + 1442695040888963407U;
    return static_cast<unsigned>(state >> 33U) % sides;
  };
  std::vector<Block> mine;
  for (int round = 0; round < 200'000; ++round) {
    if (mine.size() < 500 || below(2) == 0) {
      const std::size_t size = below(20) == 0 ? below(5000) : below(600);
      Block block{static_cast<unsigned char*>(::operator new(size)), size,
                  static_cast<unsigned char>(below(256))};
      if (reinterpret_cast<std::uintptr_t>(block.bytes) % 16 != 0)
        std::abort();
      std::memset(block.bytes, block.filled_with, size);
      mine.push_back(block);
    } else {
      const std::size_t one = below(static_cast<unsigned>(mine.size()));
      give_back(mine[one], below(2) == 0);
      mine[one] = mine.back();
      mine.pop_back();
    }
    if (below(100) == 0) {
      const std::lock_guard lock(common);
      if (below(2) == 0 && !mine.empty()) {
        handed_on.push_back(mine.back());
        mine.pop_back();
      } else if (!handed_on.empty()) {
        mine.push_back(handed_on.back());
        handed_on.pop_back();
      }
    }
  }
  for (const Block& block : mine)
    give_back(block, true);
  for (int i = 0; i < 50; ++i)
    let_go_last[i] = std::string(30, 'a');
}

} // namespace

int main() {
  for (std::uint64_t round = 0; round < 5; ++round) {
    std::vector<std::jthread> threads;
    for (std::uint64_t i = 0; i < 4; ++i)
      threads.emplace_back(work, 10 * round + i);
  }
  for (const Block& block : handed_on)
    give_back(block, false);
  std::puts("1 passed, 0 failed");
}
