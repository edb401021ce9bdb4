#pragma once

#include "source/source_text.hpp"

#include <antlr4-runtime/atn/LexerATNSimulator.h>
#include <antlr4-runtime/atn/PredictionContext.h>
#include <antlr4-runtime/dfa/DFA.h>

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Runs the automaton of the generated lexer. The runtime's own stepper takes a lock and a hash look-up for
/// each character, computes every character beyond ASCII anew, and meets each letter of the alphabet one by
/// one; this one steps through a table of states and classes of characters that the grammar does not tell
/// apart. The states are the runtime's, made when they are first met. Not to be shared between threads.
class LexerEngine {
public:
  struct Match {
    std::size_t type = 0; ///< token type; 0 when nothing fits
    std::size_t end = 0;  ///< behind its last character
  };

  LexerEngine();
  LexerEngine(const LexerEngine&) = delete;
  LexerEngine& operator=(const LexerEngine&) = delete;

  /// The longest token that begins at `begin`, and of two of one length the one that is first in the
  /// grammar.
  Match match(std::u32string_view text, std::size_t begin);

private:
  using StateNumber = std::int16_t;
  static constexpr StateNumber unknown = -1; ///< not computed yet
  static constexpr StateNumber dead = -2;    ///< no token goes on like this

  /// Opens what the runtime keeps for subclasses.
  class Automaton final : public antlr4::atn::LexerATNSimulator {
  public:
    using LexerATNSimulator::LexerATNSimulator;
    antlr4::dfa::DFAState* start();
    /// Where a character leads from a state, or nullptr.
    antlr4::dfa::DFAState* step(antlr4::dfa::DFAState* from, char32_t character);
  };

  void classify_characters();
  std::size_t class_of(char32_t character) const;
  StateNumber number_of(antlr4::dfa::DFAState* state);
  StateNumber compute(StateNumber from, char32_t character);

  std::vector<antlr4::dfa::DFA> decisions_;
  antlr4::atn::PredictionContextCache cache_;
  const antlr4::atn::ATN& network_;
  Automaton automaton_;

  std::vector<char32_t> class_ends_; ///< ascending; a class ends before each of these characters
  std::array<std::uint8_t, 128> ascii_classes_{};
  std::vector<antlr4::dfa::DFAState*> states_;
  std::vector<std::uint16_t> accepted_; ///< by state: the token type that is complete there, or 0
  std::vector<StateNumber> steps_;      ///< by state and class
};

/// The characters of one file, which the lexer counts, and the way back to the bytes of the file.
class CodePoints {
public:
  explicit CodePoints(const SourceText& source);

  std::u32string_view characters() const { return characters_; }
  /// Byte offset at which a character begins; for the place behind the last one, the size of the file.
  std::uint32_t byte_offset(std::size_t character) const {
    return offsets_.empty() ? static_cast<std::uint32_t>(character) : offsets_[character];
  }

private:
  std::u32string characters_;
  std::vector<std::uint32_t> offsets_; ///< empty when every character is one byte
};

} // namespace sheerpole
