#include "syntax/antlr/lexer_engine.hpp"

#include "base/internal_error.hpp"

#include <RigLexer.h>
#include <antlr4-runtime/atn/ATN.h>
#include <antlr4-runtime/atn/ATNConfigSet.h>
#include <antlr4-runtime/atn/ATNState.h>
#include <antlr4-runtime/atn/TokensStartState.h>
#include <antlr4-runtime/atn/Transition.h>
#include <antlr4-runtime/dfa/DFAState.h>

#include <algorithm>
#include <limits>

namespace sheerpole {

namespace {

const antlr4::atn::ATN& network_of_grammar() {
  // The network belongs to the class, but only an instance hands it out.
  return sheerpole_antlr::RigLexer(nullptr).getATN();
}

/// The code point at `i` of valid UTF-8; moves `i` behind it.
char32_t take_code_point(std::string_view bytes, std::size_t& i) {
  const auto lead = static_cast<unsigned char>(bytes[i++]);
  if (lead < 0x80)
    return lead;
  const int more = lead >= 0xF0 ? 3 : lead >= 0xE0 ? 2 : 1;
  char32_t code = lead & (0x3F >> more);
  for (int k = 0; k < more && i < bytes.size(); ++k)
    code = (code << 6) | (static_cast<unsigned char>(bytes[i++]) & 0x3F);
  return code;
}

} // namespace

antlr4::dfa::DFAState* LexerEngine::Automaton::start() {
  return addDFAState(computeStartState(nullptr, atn.modeToStartState.front()).release());
}

antlr4::dfa::DFAState* LexerEngine::Automaton::step(antlr4::dfa::DFAState* from, char32_t character) {
  antlr4::dfa::DFAState* to = computeTargetState(nullptr, from, character);
  return to == ERROR.get() ? nullptr : to;
}

LexerEngine::LexerEngine() : network_(network_of_grammar()), automaton_(network_, decisions_, cache_) {
  decisions_.emplace_back(network_.getDecisionState(0), 0);
  classify_characters();
  number_of(automaton_.start());
}

void LexerEngine::classify_characters() {
  for (const antlr4::atn::ATNState* state : network_.states) {
    if (state == nullptr)
      continue;
    for (const antlr4::atn::Transition* transition : state->transitions) {
      const antlr4::misc::IntervalSet label = transition->label();
      for (const antlr4::misc::Interval& interval : label.getIntervals()) {
        class_ends_.push_back(static_cast<char32_t>(std::max<ssize_t>(interval.a, 0)));
        class_ends_.push_back(static_cast<char32_t>(interval.b + 1));
      }
    }
  }
  std::sort(class_ends_.begin(), class_ends_.end());
  class_ends_.erase(std::unique(class_ends_.begin(), class_ends_.end()), class_ends_.end());
  if (class_ends_.size() >= std::numeric_limits<std::uint8_t>::max())
    internal_error("the lexer grammar tells more characters apart than the table has room for");
  for (char32_t character = 0; character < ascii_classes_.size(); ++character)
    ascii_classes_[character] = static_cast<std::uint8_t>(
        std::upper_bound(class_ends_.begin(), class_ends_.end(), character) - class_ends_.begin());
}

std::size_t LexerEngine::class_of(char32_t character) const {
  if (character < ascii_classes_.size())
    return ascii_classes_[character];
  return static_cast<std::size_t>(std::upper_bound(class_ends_.begin(), class_ends_.end(), character) -
                                  class_ends_.begin());
}

LexerEngine::StateNumber LexerEngine::number_of(antlr4::dfa::DFAState* state) {
  const auto known = std::find(states_.begin(), states_.end(), state);
  if (known != states_.end())
    return static_cast<StateNumber>(known - states_.begin());
  if (states_.size() >= static_cast<std::size_t>(std::numeric_limits<StateNumber>::max()))
    internal_error("the lexer grammar needs more states than the table has room for");
  states_.push_back(state);
  accepted_.push_back(state->isAcceptState ? static_cast<std::uint16_t>(state->prediction) : 0);
  steps_.resize(steps_.size() + class_ends_.size() + 1, unknown);
  return static_cast<StateNumber>(states_.size() - 1);
}

LexerEngine::StateNumber LexerEngine::compute(StateNumber from, char32_t character) {
  antlr4::dfa::DFAState* state = automaton_.step(states_[static_cast<std::size_t>(from)], character);
  const StateNumber to = state == nullptr ? dead : number_of(state);
  steps_[static_cast<std::size_t>(from) * (class_ends_.size() + 1) + class_of(character)] = to;
  return to;
}

LexerEngine::Match LexerEngine::match(std::u32string_view text, std::size_t begin) {
  const std::size_t classes = class_ends_.size() + 1;
  Match result;
  StateNumber state = 0;
  for (std::size_t i = begin; i < text.size(); ++i) {
    StateNumber next = steps_[static_cast<std::size_t>(state) * classes + class_of(text[i])];
    if (next == unknown)
      next = compute(state, text[i]);
    if (next == dead)
      break;
    state = next;
    if (const std::uint16_t type = accepted_[static_cast<std::size_t>(state)]; type != 0)
      result = {type, i + 1};
  }
  return result;
}

CodePoints::CodePoints(const SourceText& source) {
  const std::string_view bytes = source.bytes();
  const bool ascii =
      std::all_of(bytes.begin(), bytes.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
  if (ascii) {
    characters_.assign(bytes.begin(), bytes.end());
    return;
  }
  characters_.reserve(bytes.size());
  offsets_.reserve(bytes.size() + 1);
  for (std::size_t i = 0; i < bytes.size();) {
    offsets_.push_back(static_cast<std::uint32_t>(i));
    characters_.push_back(take_code_point(bytes, i));
  }
  offsets_.push_back(static_cast<std::uint32_t>(bytes.size()));
}

} // namespace sheerpole
