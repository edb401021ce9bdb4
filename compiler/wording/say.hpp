#pragma once

#include "model/remark.hpp"
#include "model/rig.hpp"
#include "wording/phrase_table.hpp"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What a calculation has to say, in English: the phrase of its table, filled in. A remark that says
/// nothing gives an empty text.
std::string say(const Rig& rig, const Remark& remark);

/// The same of a remark that names nothing of a rig by an id. One that does is a fault of the compiler.
std::string say(const Remark& remark);

/// The word for an end of a line: "aloft", "below".
std::string_view word_of(WhichEnd end);

/// The same with each length as `length_words` writes it.
std::string say(const Rig& rig, const Remark& remark,
                const std::function<std::string(Length)>& length_words);

/// Several as one, joined as they ask to be; those that say nothing are left out.
std::string say(const Rig& rig, const Remarks& remarks);

/// Several, each said; those that say nothing are left out.
std::vector<std::string> say_each(const Rig& rig, const std::vector<Remark>& remarks);

/// The words of a phrase that nothing fills in.
template <class Phrase>
requires std::is_enum_v<Phrase> std::string said(Phrase phrase) {
  return std::string(phrase_of(Remark(phrase)));
}

/// "a, b and c", as `join` says; empty texts are left out.
std::string joined(const std::vector<std::string>& texts, Join join);

} // namespace sheerpole
