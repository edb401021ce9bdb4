#pragma once

#include "diagnostics/sink.hpp"
#include "elaborate/evaluator.hpp"
#include "syntax/syntax_tree.hpp"

#include <optional>

namespace sheerpole {

/// a + b or a - b, whichever the expression is. Dimensions must agree; a step may be added to a
/// temperature, and two temperatures make a step. An empty result has been reported.
std::optional<Evaluated> add(const Expression& expression, const Evaluated& a, const Evaluated& b,
                             DiagnosticSink& sink);

/// a * b or a / b. A place may be multiplied or divided by one quantity. An empty result has been reported.
std::optional<Evaluated> multiply(const Expression& expression, const Evaluated& a, const Evaluated& b,
                                  DiagnosticSink& sink);

/// The provenance of something worked out from two values. A plain literal beside a named value is no
/// source.
Provenance combined(const Provenance& a, const Provenance& b);

/// The bounds on which a result rests: those of both operands, each times how much the result follows it.
/// What both rest on counts once, with its sign: a value less itself is exactly nothing.
Influences merged(const Influences& a, double follows_a, const Influences& b, double follows_b);

} // namespace sheerpole
