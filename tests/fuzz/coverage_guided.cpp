// One target for libFuzzer, by the preset `fuzz`: SHEERPOLE_FUZZ_TARGET is its name.

#include "fuzz/mutate.hpp"
#include "fuzz/targets.hpp"

#include <algorithm>
#include <cstring>

extern "C" size_t LLVMFuzzerMutate(uint8_t* data, size_t size, size_t most);

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size);

namespace {

const sheerpole::fuzz::Target& target() {
  static const sheerpole::fuzz::Target& one =
      *std::find_if(sheerpole::fuzz::targets().begin(), sheerpole::fuzz::targets().end(),
                    [](const auto& each) { return each.name == SHEERPOLE_FUZZ_TARGET; });
  return one;
}

/// Puts the changed text where libFuzzer wants it.
std::size_t put_changed(std::string_view text, std::string_view other, sheerpole::fuzz::Dice& dice,
                        std::uint8_t* into, std::size_t most) {
  const std::string changed = sheerpole::fuzz::mutated(text, other, target().material, dice, most);
  std::memcpy(into, changed.data(), changed.size());
  return changed.size();
}

std::string_view as_text(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size) {
  return target().run(data, size);
}

/// By words and blocks most of the time, and as libFuzzer does it by itself else. Now and then a text of
/// the target is begun with anew.
extern "C" size_t LLVMFuzzerCustomMutator(uint8_t* data, size_t size, size_t most, unsigned seed) {
  sheerpole::fuzz::Dice dice(seed);
  const std::vector<std::string>& texts = target().material.texts;
  if (dice.below(4) == 0)
    return LLVMFuzzerMutate(data, size, most);
  const std::string text(as_text(data, size)); // what is changed is written over it
  if (texts.empty())
    return put_changed(text, text, dice, data, most);
  const bool anew = dice.below(16) == 0;
  const std::string& one = texts[dice.below(texts.size())];
  return put_changed(anew ? one : text, one, dice, data, most);
}

extern "C" size_t LLVMFuzzerCustomCrossOver(const uint8_t* one, size_t size_of_one, const uint8_t* other,
                                            size_t size_of_other, uint8_t* out, size_t most,
                                            unsigned seed) {
  sheerpole::fuzz::Dice dice(seed);
  return put_changed(as_text(one, size_of_one), as_text(other, size_of_other), dice, out, most);
}
