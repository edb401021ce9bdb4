// One target for libFuzzer, by the preset `fuzz`: SHEERPOLE_FUZZ_TARGET is its name.

#include "fuzz/mutate.hpp"
#include "fuzz/targets.hpp"

#include <algorithm>
#include <cstring>

namespace {

const sheerpole::fuzz::Target& target() {
  static const sheerpole::fuzz::Target& one =
      *std::find_if(sheerpole::fuzz::targets().begin(), sheerpole::fuzz::targets().end(),
                    [](const auto& each) { return each.name == SHEERPOLE_FUZZ_TARGET; });
  return one;
}

} // namespace

extern "C" size_t LLVMFuzzerMutate(uint8_t* data, size_t size, size_t most);

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size) {
  return target().run(data, size);
}

/// By words and blocks most of the time, and as libFuzzer does it by itself else.
extern "C" size_t LLVMFuzzerCustomMutator(uint8_t* data, size_t size, size_t most, unsigned seed) {
  sheerpole::fuzz::Dice dice(seed);
  if (dice.below(4) == 0)
    return LLVMFuzzerMutate(data, size, most);
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const std::string changed = sheerpole::fuzz::mutated(text, text, target().words, dice, most);
  std::memcpy(data, changed.data(), changed.size());
  return changed.size();
}
