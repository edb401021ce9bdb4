#pragma once

#include "elaborate/evaluator.hpp"
#include "kinds/property_row.hpp"
#include "model/particular.hpp"
#include "model/sourced.hpp"
#include "model/splice.hpp"
#include "units/force.hpp"
#include "units/length.hpp"
#include "units/named_size.hpp"
#include "units/thread.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// Reads values against their row of the table of kinds: shape, dimension, range. An empty result has been
/// reported. `owner` is the thing that the property belongs to, for messages and lists of assumptions:
/// "long-bury".
class ValueReader {
public:
  ValueReader(Evaluator& evaluator, DiagnosticSink& sink) : evaluator_(evaluator), sink_(sink) {}

  std::optional<Sourced<Quantity>> quantity(const Value& value, const PropertyRow& row,
                                            const std::string& owner);
  std::optional<Sourced<Length>> length(const Value& value, const PropertyRow& row,
                                        const std::string& owner);
  std::optional<Sourced<Force>> force(const Value& value, const PropertyRow& row, const std::string& owner);
  std::optional<Sourced<double>> ratio(const Value& value, const PropertyRow& row,
                                       const std::string& owner);
  std::optional<Sourced<RopeMeasure>> rope_measure(const Value& value, const PropertyRow& row,
                                                   const std::string& owner);
  /// The word `off` where the row takes it in place of a value.
  static bool is_off(const Value& value, const PropertyRow& row);
  /// Each of a list of quantities.
  std::vector<Sourced<Quantity>> quantities(const Value& value, const PropertyRow& row,
                                            const std::string& owner);
  std::vector<Sourced<Length>> lengths(const Value& value, const PropertyRow& row,
                                       const std::string& owner);
  std::optional<Sourced<int>> count(const Value& value, const PropertyRow& row, const std::string& owner);
  std::optional<std::string> text(const Value& value, const PropertyRow& row, const std::string& owner);
  /// One word as it stands, a text, or a date: not the name of anything in the files.
  std::optional<std::string> bare_word(const Value& value, const PropertyRow& row,
                                       const std::string& owner);
  std::optional<std::string> date(const Value& value, const PropertyRow& row, const std::string& owner);
  std::optional<NamedSize> size(const Value& value, const PropertyRow& row, const std::string& owner);
  std::optional<Thread> thread(const Value& value, const PropertyRow& row, const std::string& owner);
  /// The word of a choice that resolve() has found good.
  std::optional<std::string> word(const Value& value, const PropertyRow& row, const std::string& owner);
  std::vector<std::string> words(const Value& value);
  /// Each of a list of texts.
  std::vector<std::string> texts(const Value& value, const PropertyRow& row, const std::string& owner);

  /// The place in boat axes that a property of a block of points states for the point `name`.
  std::optional<Evaluated> position(const Property& property, const std::string& name);
  /// Three numbers: a place, or a direction.
  std::optional<Evaluated> vector(const Value& value, const PropertyRow& row, const std::string& owner);
  /// Any value that is kept as written: of a quantity, text, word, date, size, count, or name.
  std::optional<Particular> particular(const Value& value, const PropertyRow& row,
                                       const std::string& owner);
  void apply_source(const Value& value, const std::string& owner, Provenance& provenance) const {
    evaluator_.apply_source(value, owner, provenance);
  }
  void put_on_side(const Property& point, bool port, Evaluated& place) {
    evaluator_.put_on_side(point, port, place);
  }
  const SparFrame* first_frame(SymbolId spar) { return evaluator_.first_frame(spar); }
  double to_starboard(const Property& point, const Evaluated& place) {
    return evaluator_.to_starboard(point, place);
  }
  bool is_trial(Span span) const { return evaluator_.is_trial(span); }
  const SparFrame* frame(SymbolId spar) { return evaluator_.frame(spar); }

  std::string written(const Value& value) const { return evaluator_.written(value); }

private:
  std::optional<std::string> text_of(const Expression& expression, const PropertyRow& row,
                                     const std::string& owner);
  /// Reports what does not belong behind this kind of value: a list, `mirrored`, `free`.
  bool single(const Value& value, const PropertyRow& row, const std::string& owner);
  /// The one expression of a value; nothing when there are several or it could not be read, which has been
  /// reported.
  const Expression* one_expression(const Value& value, const PropertyRow& row, const std::string& owner);
  /// Reports a component that is no length.
  std::optional<Evaluated> in_lengths(const Value& value, const std::string& name, Evaluated found);
  std::optional<Sourced<Quantity>> checked(const Value& value, const PropertyRow& row,
                                           const std::string& owner);

  Evaluator& evaluator_;
  DiagnosticSink& sink_;
};

/// "bury of long-bury": how a property is named in a message.
std::string property_of(const PropertyRow& row, const std::string& owner);

} // namespace sheerpole
