#pragma once

#include <cstdint>
#include <string_view>

namespace sheerpole {

/// Another language: a second table of phrases beside the English one. The program has none; tests have one
/// that marks every phrase, so that a text that comes from no table is seen.
class Translator {
public:
  virtual ~Translator() = default;
  /// The phrase of this language, with the same `{}`, `{0}` or `{name}` as the English one. `table` is the
  /// name of the table, "bench-card", and `number` that of the phrase in it. What is returned lives as long
  /// as the translator.
  virtual std::string_view phrase(std::string_view table, std::uint16_t number,
                                  std::string_view english) const = 0;
};

/// As long as it lives, phrases of this thread are those of the translator.
class Speaking {
public:
  explicit Speaking(const Translator& translator);
  ~Speaking();
  Speaking(const Speaking&) = delete;
  Speaking& operator=(const Speaking&) = delete;

private:
  const Translator* before_;
};

/// The translator of this thread; null: English.
const Translator* spoken_language();

} // namespace sheerpole
