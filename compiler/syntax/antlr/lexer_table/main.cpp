// Works out the table by which files are taken apart into words, from the lexer that ANTLR has made of the
// grammar, and prints it as C++. Started by the build: the runtime would work out the same anew at each
// start of the compiler, which took a quarter of the time of a check.

#include <RigLexer.h>
#include <antlr4-runtime/atn/ATN.h>
#include <antlr4-runtime/atn/ATNConfigSet.h>
#include <antlr4-runtime/atn/ATNState.h>
#include <antlr4-runtime/atn/LexerATNSimulator.h>
#include <antlr4-runtime/atn/PredictionContext.h>
#include <antlr4-runtime/atn/TokensStartState.h>
#include <antlr4-runtime/atn/Transition.h>
#include <antlr4-runtime/dfa/DFA.h>
#include <antlr4-runtime/dfa/DFAState.h>

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <limits>
#include <string>
#include <vector>

namespace {

constexpr std::int16_t dead = -1; // as in lexer_engine.cpp
constexpr char32_t last_character = 0x10FFFF;

/// Opens what the runtime keeps for subclasses.
class Automaton final : public antlr4::atn::LexerATNSimulator {
public:
  using LexerATNSimulator::LexerATNSimulator;
  antlr4::dfa::DFAState* start() {
    return addDFAState(computeStartState(nullptr, atn.modeToStartState.front()).release());
  }
  /// Where a character leads from a state, or nullptr.
  antlr4::dfa::DFAState* step(antlr4::dfa::DFAState* from, char32_t character) {
    antlr4::dfa::DFAState* to = computeTargetState(nullptr, from, character);
    return to == ERROR.get() ? nullptr : to;
  }
};

/// The characters at which a class of characters begins that the grammar tells from those before.
std::vector<char32_t> class_borders(const antlr4::atn::ATN& network) {
  std::vector<char32_t> borders;
  for (const antlr4::atn::ATNState* state : network.states) {
    if (state == nullptr)
      continue;
    for (const antlr4::atn::Transition* transition : state->transitions) {
      const antlr4::misc::IntervalSet label = transition->label();
      for (const antlr4::misc::Interval& interval : label.getIntervals()) {
        borders.push_back(static_cast<char32_t>(std::max<ssize_t>(interval.a, 0)));
        borders.push_back(static_cast<char32_t>(interval.b + 1));
      }
    }
  }
  std::sort(borders.begin(), borders.end());
  borders.erase(std::unique(borders.begin(), borders.end()), borders.end());
  std::erase_if(borders, [](char32_t border) { return border == 0 || border > last_character; });
  return borders;
}

template <typename Number>
std::string table(const std::string& type, const std::string& name, const std::vector<Number>& numbers) {
  std::string text = "inline constexpr " + type + " " + name + "[] = {";
  for (std::size_t i = 0; i < numbers.size(); ++i)
    text += (i % 24 == 0 ? "\n" : "") + std::to_string(static_cast<std::int32_t>(numbers[i])) + ",";
  return text + "};\n";
}

} // namespace

int main() {
  const antlr4::atn::ATN& network = sheerpole_antlr::RigLexer(nullptr).getATN();
  std::vector<antlr4::dfa::DFA> decisions;
  decisions.emplace_back(network.getDecisionState(0), 0);
  antlr4::atn::PredictionContextCache cache;
  Automaton automaton(network, decisions, cache);
  const std::vector<char32_t> borders = class_borders(network);

  std::vector<antlr4::dfa::DFAState*> states{automaton.start()};
  std::vector<std::int16_t> steps; // by state and class
  for (std::size_t state = 0; state < states.size(); ++state)
    for (std::size_t number = 0; number <= borders.size(); ++number) {
      antlr4::dfa::DFAState* to = automaton.step(states[state], number == 0 ? 0 : borders[number - 1]);
      if (to == nullptr) {
        steps.push_back(dead);
        continue;
      }
      const auto known = std::find(states.begin(), states.end(), to);
      steps.push_back(static_cast<std::int16_t>(known - states.begin()));
      if (known == states.end())
        states.push_back(to);
    }
  std::vector<std::size_t> accepted; // by state: the token that is complete there, or 0
  for (const antlr4::dfa::DFAState* state : states)
    accepted.push_back(state->isAcceptState ? state->prediction : 0);
  std::vector<std::size_t> ascii_classes;
  for (char32_t character = 0; character < 128; ++character)
    ascii_classes.push_back(static_cast<std::size_t>(
        std::upper_bound(borders.begin(), borders.end(), character) - borders.begin()));
  if (borders.size() > std::numeric_limits<std::uint8_t>::max() ||
      states.size() > static_cast<std::size_t>(std::numeric_limits<std::int16_t>::max())) {
    std::fputs("the grammar of the lexer needs more room than its table has\n", stderr);
    return EXIT_FAILURE;
  }

  const std::string text =
      "// The table of the lexer, worked out from its grammar by syntax/antlr/lexer_table.\n"
      "#pragma once\n#include <cstddef>\n#include <cstdint>\n"
      "namespace sheerpole::lexer_table {\n"
      "inline constexpr std::size_t classes = " +
      std::to_string(borders.size() + 1) + ";\n" + table("char32_t", "borders", borders) +
      table("std::uint8_t", "ascii_classes", ascii_classes) + table("std::uint8_t", "accepted", accepted) +
      table("std::int16_t", "steps", steps) + "}\n";
  return std::fwrite(text.data(), 1, text.size(), stdout) == text.size() ? EXIT_SUCCESS : EXIT_FAILURE;
}
