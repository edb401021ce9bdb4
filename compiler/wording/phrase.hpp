#pragma once

#include "base/translator.hpp"

#include <array>
#include <concepts>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <type_traits>

namespace sheerpole {

/// A phrase as it is said. It is a view, and becomes a string where one is kept.
class PhraseText : public std::string_view {
public:
  constexpr PhraseText() = default;
  /// Of a sign or a blank beside phrases, such as the "" of a choice between words and none.
  constexpr PhraseText(const char* text) : std::string_view(text) {}
  constexpr explicit PhraseText(std::string_view text) : std::string_view(text) {}
  operator std::string() const { return std::string(data(), size()); }
};

inline std::string operator+(PhraseText a, std::string b) {
  return b.insert(0, a.data(), a.size());
}
inline std::string operator+(std::string a, PhraseText b) {
  return a.append(b.data(), b.size());
}

/// The enumerations of the papers' words. Beside each stands the name of its table,
/// `constexpr std::string_view table_of(E) { return "bench-card"; }`, and `words(E)`, its English: a switch
/// without a default, so that a phrase without words does not compile.
template <class Phrase>
concept PaperPhrase = std::is_enum_v<Phrase> && requires(Phrase phrase) {
  { table_of(phrase) } -> std::convertible_to<std::string_view>;
  { words(phrase) } -> std::convertible_to<std::string_view>;
};

/// What a phrase is filled in with: words, or a whole number.
class PhraseArgument {
public:
  PhraseArgument(std::string_view words) : words_(words) {}
  PhraseArgument(const std::string& words) : words_(words) {}
  PhraseArgument(const char* words) : words_(words) {}
  template <std::integral Whole>
  requires(!std::same_as<Whole, bool> && !std::same_as<Whole, char>) PhraseArgument(Whole number) {
    set_digits(number < 0,
               number < 0 ? 0 - static_cast<std::uint64_t>(number) : static_cast<std::uint64_t>(number));
  }
  std::string_view words() const {
    return length_ == 0 ? words_ : std::string_view(digits_.data() + digits_.size() - length_, length_);
  }

private:
  void set_digits(bool negative, std::uint64_t amount);

  std::string_view words_;
  std::array<char, 21> digits_{}; ///< right-aligned
  std::size_t length_ = 0;        ///< of the digits; 0: words
};

/// The phrase with each `{}` replaced by the next argument and `{0}` by the one of its place. One that asks
/// for an argument that is not there is a fault of the compiler.
std::string filled_in(std::string_view phrase, std::span<const PhraseArgument> arguments);

/// What a paper says, by its phrase.
template <PaperPhrase Phrase>
PhraseText say(Phrase phrase) {
  const std::string_view english = words(phrase);
  const Translator* other = spoken_language();
  return PhraseText(other == nullptr
                        ? english
                        : other->phrase(table_of(phrase), static_cast<std::uint16_t>(phrase), english));
}

/// The same with what fills it in.
template <PaperPhrase Phrase, class... Arguments>
requires(sizeof...(Arguments) > 0) std::string say(Phrase phrase, const Arguments&... arguments) {
  const PhraseArgument all[] = {PhraseArgument(arguments)...};
  return filled_in(say(phrase), all);
}

} // namespace sheerpole
