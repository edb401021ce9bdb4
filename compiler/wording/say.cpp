#include "wording/say.hpp"

#include "base/internal_error.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/papers/rig_words.hpp"
#include "wording/phrase_table.hpp"

#include <algorithm>
#include <cstddef>
#include <variant>

namespace sheerpole {

namespace {

std::string filled(const Rig* rig, const Remark& remark,
                   const std::function<std::string(Length)>& length_words);

/// The words of each kind of argument: one function for each, so that a kind without words does not
/// compile.
class ArgumentWords {
public:
  ArgumentWords(const Rig* rig, const std::function<std::string(Length)>& length_words)
      : rig_(rig), length_words_(length_words) {}

  std::string operator()(Length length) const {
    return length_words_ ? length_words_(length) : length_text(length);
  }
  std::string operator()(Force force) const { return force_text(force); }
  std::string operator()(Share share) const { return percent_text(share.value); }
  std::string operator()(Number number) const { return format_number(number.value); }
  std::string operator()(Decimal number) const { return trimmed_number(number.value, number.decimals); }
  std::string operator()(Fixed number) const { return format_fixed(number.value, number.decimals); }
  std::string operator()(WhichEnd end) const { return std::string(word_of(end)); }
  std::string operator()(Count count) const { return std::to_string(count.value); }
  std::string operator()(Angle angle) const { return angle_text(angle.radians); }
  std::string operator()(Temperature temperature) const { return temperature_text(temperature.kelvin); }
  std::string operator()(const Words& words) const { return words.text; }
  std::string operator()(const OneOf& one) const {
    return one.kind.find_first_of("aeiou") == 0 ? say(RigPhrase::an, one.kind)
                                                : say(RigPhrase::a_thing, one.kind);
  }
  template <class Thing>
  std::string operator()(Id<Thing> id) const {
    if (rig_ == nullptr)
      internal_error("a remark without its rig names a thing of it");
    return (*rig_)[id].name;
  }
  std::string operator()(const Remarks& remarks) const {
    std::vector<std::string> texts;
    for (const Remark& remark : remarks.all)
      texts.push_back(filled(rig_, remark, length_words_));
    return joined(texts, remarks.join);
  }

private:
  const Rig* rig_;                                         ///< null: of no rig
  const std::function<std::string(Length)>& length_words_; ///< empty: as in any sentence
};

/// The phrase with its arguments.
std::string filled(const Rig* rig, const Remark& remark,
                   const std::function<std::string(Length)>& length_words) {
  const std::string_view phrase = phrase_of(remark);
  std::string text;
  text.reserve(phrase.size() + 16 * remark.arguments().size());
  std::size_t next = 0;
  for (std::size_t at = 0; at < phrase.size(); ++at) {
    const std::size_t brace = std::min(phrase.find('{', at), phrase.size());
    text += phrase.substr(at, brace - at);
    at = brace;
    if (at == phrase.size())
      break;
    std::size_t place = next;
    if (phrase[++at] == '}')
      ++next;
    else {
      place = static_cast<std::size_t>(phrase[at] - '0');
      ++at;
    }
    if (at >= phrase.size() || phrase[at] != '}' || place >= remark.arguments().size())
      internal_error("a phrase and its arguments do not fit each other");
    text += std::visit(ArgumentWords(rig, length_words), remark.arguments()[place]);
  }
  return text;
}

} // namespace

std::string say(const Rig& rig, const Remark& remark) {
  return filled(&rig, remark, {});
}

std::string say(const Remark& remark) {
  return filled(nullptr, remark, {});
}

std::string say(const Rig& rig, const Remark& remark,
                const std::function<std::string(Length)>& length_words) {
  return filled(&rig, remark, length_words);
}

std::string say(const Rig& rig, const Remarks& remarks) {
  return joined(say_each(rig, remarks.all), remarks.join);
}

std::vector<std::string> say_each(const Rig& rig, const std::vector<Remark>& remarks) {
  std::vector<std::string> texts;
  texts.reserve(remarks.size());
  for (const Remark& remark : remarks)
    texts.push_back(say(rig, remark));
  return texts;
}

std::string_view word_of(WhichEnd end) {
  return end == WhichEnd::upper ? say(RigPhrase::aloft) : say(RigPhrase::below);
}

std::string joined(const std::vector<std::string>& texts, Join join) {
  std::vector<const std::string*> said;
  for (const std::string& text : texts)
    if (!text.empty())
      said.push_back(&text);
  std::string result;
  for (std::size_t i = 0; i < said.size(); ++i) {
    const bool last = i + 1 == said.size();
    if (i > 0)
      result += join == Join::semicolon          ? "; "
                : join == Join::plus             ? " + "
                : last && join == Join::and_word ? say(RigPhrase::and_word)
                : last && join == Join::or_word  ? say(RigPhrase::or_word)
                                                 : ", ";
    result += *said[i];
  }
  return result;
}

} // namespace sheerpole
