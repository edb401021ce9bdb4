#include "wording/phrase.hpp"

#include "base/internal_error.hpp"

namespace sheerpole {

void PhraseArgument::set_digits(bool negative, std::uint64_t amount) {
  std::size_t at = digits_.size();
  do
    digits_[--at] = static_cast<char>('0' + amount % 10);
  while ((amount /= 10) > 0);
  if (negative)
    digits_[--at] = '-';
  length_ = digits_.size() - at;
}

std::string filled_in(std::string_view phrase, std::span<const PhraseArgument> arguments) {
  std::size_t size = phrase.size();
  for (const PhraseArgument& argument : arguments)
    size += argument.words().size();
  std::string text;
  text.reserve(size);
  std::size_t next = 0;
  std::size_t at = 0;
  for (std::size_t brace = phrase.find('{'); brace != std::string_view::npos;
       brace = phrase.find('{', at)) {
    text.append(phrase, at, brace - at);
    at = brace + 1;
    std::size_t place = next;
    if (at < phrase.size() && phrase[at] == '}')
      ++next;
    else if (at < phrase.size())
      place = static_cast<std::size_t>(phrase[at++] - '0');
    if (at >= phrase.size() || phrase[at] != '}' || place >= arguments.size())
      internal_error("a phrase and its arguments do not fit each other");
    ++at;
    text.append(arguments[place].words());
  }
  text.append(phrase, at);
  return text;
}

} // namespace sheerpole
