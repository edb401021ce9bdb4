#pragma once

#include "diagnostics/sink.hpp"
#include "model/provenance.hpp"
#include "names/resolved_tree.hpp"
#include "source/source_set.hpp"
#include "units/quantity.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// What an expression is worth: one quantity or three, and how it is known.
struct Evaluated {
  bool is_vector = false;
  Quantity scalar;
  std::array<Quantity, 3> vector;
  Provenance provenance;
};

/// Works out expressions. Each `let` and each point is worked out once; an empty result has been reported.
class Evaluator {
public:
  Evaluator(const ResolvedTree& tree, const SourceSet& sources, DiagnosticSink& sink);

  /// `owner` names the value in the list of assumptions: "contraction of long-bury".
  std::optional<Evaluated> evaluate(const Value& value, const std::string& owner);
  std::optional<Evaluated> evaluate(const Expression& expression);
  void evaluate_let(const Let& let);

  /// The text of a value as written, without its source.
  std::string written(const Value& value) const;

private:
  enum class State { fresh, open, done };
  struct Memo {
    State state = State::fresh;
    std::optional<Evaluated> result;
  };

  std::optional<Evaluated> literal(const Expression& expression);
  std::optional<Evaluated> name(const Expression& expression);
  std::optional<Evaluated> vector(const Expression& expression);
  std::optional<Evaluated> sum(const Expression& expression, double sign);
  std::optional<Evaluated> product(const Expression& expression);
  std::optional<Evaluated> negated(const Expression& expression);
  std::optional<Evaluated> symbol(SymbolId id, const Expression& use);
  Memo& remembered(SymbolId id);
  std::optional<Evaluated> finite(std::optional<Evaluated> value, const Expression& expression);

  const ResolvedTree& tree_;
  const SourceSet& sources_;
  DiagnosticSink& sink_;
  std::vector<Memo> memo_; // by symbol
};

} // namespace sheerpole
