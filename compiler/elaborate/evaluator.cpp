#include "elaborate/evaluator.hpp"

#include "elaborate/arithmetic.hpp"
#include "elaborate/value_findings.hpp"
#include "units/parse_quantity.hpp"
#include "units/unit.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

constexpr const char* trial_note = "set on the command line";
constexpr const char* trial_mark = " (set on the command line)";

SourceClass class_of(const std::string& word) {
  for (const SourceClass candidate :
       {SourceClass::measured, SourceClass::drawn, SourceClass::maker, SourceClass::standard,
        SourceClass::practice, SourceClass::assumed, SourceClass::computed})
    if (word_of(candidate) == word)
      return candidate;
  return SourceClass::unstated;
}

bool is_place(const Evaluated& value) {
  return value.is_vector && value.vector[0].dimension == dimension::length &&
         value.vector[1].dimension == dimension::length && value.vector[2].dimension == dimension::length;
}

/// A point that is used in the place of another one on a spar is seen from that spar.
void into_frame(const SparFrame* frame, Evaluated& value) {
  if (frame == nullptr || !is_place(value))
    return;
  const auto place = frame->from_boat({value.vector[0].si, value.vector[1].si, value.vector[2].si});
  for (std::size_t i = 0; i < 3; ++i)
    value.vector[i].si = place[i];
  value.influences = frame->turned_from_boat(value.influences);
}

void out_of_frame(const SparFrame* frame, Evaluated& value) {
  if (frame == nullptr || !is_place(value))
    return;
  const auto place = frame->to_boat({value.vector[0].si, value.vector[1].si, value.vector[2].si});
  for (std::size_t i = 0; i < 3; ++i)
    value.vector[i].si = place[i];
  value.influences = frame->turned_to_boat(value.influences);
}

} // namespace

Evaluator::Evaluator(const ResolvedTree& tree, const SourceSet& sources, DiagnosticSink& sink)
    : tree_(tree), sources_(sources), sink_(sink), memo_(tree.symbols.size()) {}

std::string Evaluator::written(const Value& value) const {
  const Span span = cover(value.stops.front().expression.span, value.stops.back().expression.span);
  std::string result(sources_[span.source].text(span));
  if (value.tolerance) {
    result += " ";
    result += sources_[span.source].text(value.tolerance->span);
  }
  return result;
}

void Evaluator::apply_source(const Value& value, const std::string& owner, Provenance& provenance) const {
  const bool trial = is_trial(value.span);
  if (value.source) {
    provenance.source_class = class_of(value.source->word);
    provenance.note = value.source->note ? value.source->note->text : "";
    // The file vouches for the number itself, but not for what is only tried out.
    if (provenance.source_class != SourceClass::computed)
      std::erase_if(provenance.assumptions,
                    [](const std::string& assumption) { return !assumption.ends_with(trial_mark); });
    if (provenance.source_class == SourceClass::assumed && !trial)
      provenance.assumptions.insert(provenance.assumptions.begin(), owner);
  } else if (trial) {
    // What is only tried out must not look like a fact of the boat.
    provenance.source_class = SourceClass::assumed;
    provenance.note = trial_note;
    provenance.assumptions.clear();
  }
  if (trial)
    provenance.assumptions.push_back(owner + trial_mark);
}

std::optional<Evaluated> Evaluator::evaluate(const Value& value, const std::string& owner) {
  std::optional<Evaluated> result = evaluate(value.expression());
  if (!result)
    return result;
  if (value.tolerance)
    add_tolerance(value, owner, *result);
  Provenance& provenance = result->provenance;
  provenance.written = written(value);
  provenance.place = value.expression().span;
  if (value.source || is_trial(value.span)) {
    apply_source(value, owner, provenance);
  } else if (provenance.source_class == SourceClass::computed)
    provenance.note = "from " + std::string(sources_[value.span.source].text(value.expression().span));
  return result;
}

BoundId Evaluator::bound_at(Span place, std::size_t component, const std::string& name,
                            const Quantity& bound) {
  const auto [found, fresh] = bound_at_.try_emplace({place, component});
  if (fresh) {
    found->second = BoundId{static_cast<std::uint32_t>(bounds_.size())};
    bounds_.push_back({name, bound.si, bound.dimension, place});
  }
  return found->second;
}

void Evaluator::add_tolerance(const Value& value, const std::string& owner, Evaluated& result) {
  result.tolerance = std::nullopt;
  result.influences = {};
  const auto amount = evaluate(value.tolerance->amount);
  if (!amount)
    return;
  // A temperature is a point on a scale; how far it may be off is a step.
  const Dimension found = result.is_vector ? result.vector[0].dimension : result.scalar.dimension;
  const Dimension wanted =
      found == dimension::temperature_point ? dimension::temperature_difference : found;
  if (amount->is_vector || amount->scalar.dimension != wanted) {
    report_wrong_tolerance("the tolerance of the " + owner, value, wanted,
                           amount->is_vector ? Dimension{} : amount->scalar.dimension, sink_);
    return;
  }
  if (amount->scalar.si < 0.0) {
    sink_.report(diagnose("tolerance-negative", {{"what", owner}}).at(value.tolerance->span));
    return;
  }
  result.tolerance = amount->scalar;
  const Span place = value.tolerance->span;
  if (!result.is_vector) {
    result.influences[0] = {{bound_at(place, 0, owner, amount->scalar), amount->scalar.si}};
    return;
  }
  // What the bound of a place says holds of each of its coordinates, and they are off each in its own way.
  constexpr std::array<const char*, 3> coordinates{"x of the ", "y of the ", "z of the "};
  for (std::size_t i = 0; i < 3; ++i)
    result.influences[i] = {
        {bound_at(place, i, coordinates[i] + owner, amount->scalar), amount->scalar.si}};
}

void Evaluator::report_too_long(const Expression& expression) {
  if (!too_long_)
    sink_.report(diagnose("value-chain-too-long", {{"limit", std::to_string(longest_value_chain)}})
                     .at(expression.span));
  too_long_ = true;
}

std::optional<Evaluated> Evaluator::evaluate(const Expression& expression) {
  if (level_ >= longest_value_chain) {
    report_too_long(expression);
    return std::nullopt;
  }
  ++level_;
  deepest_ = std::max(deepest_, level_);
  std::optional<Evaluated> result = step(expression);
  --level_;
  return result;
}

std::optional<Evaluated> Evaluator::step(const Expression& expression) {
  switch (expression.kind) {
  case ExpressionKind::number:
  case ExpressionKind::length:
    return literal(expression);
  case ExpressionKind::name:
    return name(expression);
  case ExpressionKind::vector:
    return vector(expression);
  case ExpressionKind::negate:
    return negated(expression);
  case ExpressionKind::add:
  case ExpressionKind::subtract:
  case ExpressionKind::multiply:
  case ExpressionKind::divide:
    return finite(two_operands(expression), expression);
  case ExpressionKind::text:
  case ExpressionKind::construct:
  case ExpressionKind::date:
    report_no_number(expression, sink_);
    return std::nullopt;
  case ExpressionKind::error:
    return std::nullopt;
  }
  return std::nullopt;
}

std::optional<Evaluated> Evaluator::finite(std::optional<Evaluated> value, const Expression& expression) {
  if (!value)
    return value;
  bool good = std::isfinite(value->scalar.si);
  for (const Quantity& component : value->vector)
    good = good && std::isfinite(component.si);
  good = good && (!value->tolerance || std::isfinite(value->tolerance->si));
  if (good)
    return value;
  sink_.report(diagnose("number-too-large").at(expression.span));
  return std::nullopt;
}

std::optional<Evaluated> Evaluator::literal(const Expression& expression) {
  Evaluated result;
  result.provenance.place = expression.span;
  if (expression.kind == ExpressionKind::number && expression.unit.missing()) {
    const auto number = parse_number(expression.text);
    if (!number.ok()) {
      report_unreadable(expression, number.error(), sink_);
      return std::nullopt;
    }
    result.scalar.si = number.value();
    return result;
  }
  const std::string text = expression.kind == ExpressionKind::length
                               ? expression.text
                               : expression.text + " " + expression.unit.text;
  const auto quantity = parse_quantity(text);
  if (!quantity.ok()) {
    report_unreadable(expression, quantity.error(), sink_);
    return std::nullopt;
  }
  result.scalar = quantity.value();
  if (told_.insert(expression.span).second) // a value may be worked out more than once
    report_feet_as_written(expression, text, result.scalar, sink_);
  result.provenance.written_in = length_unit_of(text);
  return result;
}

std::optional<Evaluated> Evaluator::name(const Expression& expression) {
  const SymbolId id = tree_.symbol_at(expression.span);
  if (tree_[id].poison())
    return std::nullopt;
  return symbol(id, expression);
}

std::optional<Evaluated> Evaluator::symbol(SymbolId id, const Expression& use) {
  const Symbol& target = tree_[id];
  std::optional<Evaluated> result;
  if (!use.side.missing()) {
    result = point_side(id, use);
  } else if (target.kind == Symbol::Kind::point && !target.point->side.missing()) {
    sink_.report(diagnose("side-needed", {{"point", target.name}, {"owner", "this value"}})
                     .at(use.span)
                     .and_at(target.span, "declared here, each side apart"));
    return std::nullopt;
  } else if (target.kind == Symbol::Kind::let) {
    result = opened(id, 0, target.let->value, nullptr, "value of " + target.name, use);
  } else {
    result = opened(id, 0, target.point->value, target.point, "place of " + target.name, use);
  }
  if (result && target.kind == Symbol::Kind::point)
    into_frame(current_, *result);
  // A number that the file gives without a source stays without one under a name, but is told by the name.
  if (result && result->provenance.source_class == SourceClass::unstated)
    result->provenance.note = "from " + target.name;
  return result;
}

/// `plate-a.port` in an expression: as stated apart, else the mirror image on that side.
std::optional<Evaluated> Evaluator::point_side(SymbolId id, const Expression& use) {
  const Symbol& target = tree_[id];
  const bool port = use.side.text == "port";
  const Property* apart = port ? target.port : target.starboard;
  const std::string owner = "place of " + target.name + "." + use.side.text;
  if (target.kind == Symbol::Kind::point && apart != nullptr)
    return opened(id, port ? 1 : 2, apart->value, apart, owner, use);
  if (target.kind != Symbol::Kind::point || !target.point->value.mirrored) {
    sink_.report(diagnose("point-not-mirrored", {{"point", target.name}, {"side", use.side.text}})
                     .at(use.span)
                     .and_at(target.span, "declared here"));
    return std::nullopt;
  }
  auto result = opened(id, 0, target.point->value, target.point, "place of " + target.name, use);
  if (result && result->is_vector)
    put_on_side(*target.point, port, *result);
  return result;
}

void Evaluator::put_on_side(const Property& point, bool port, Evaluated& place) {
  const SparFrame* spar = frame_of(point);
  into_frame(spar, place);
  const double was = place.vector[1].si;
  place.vector[1].si = port ? -std::fabs(was) : std::fabs(was);
  if (place.vector[1].si * was < 0.0)
    for (Influence& influence : place.influences[1])
      influence.amount = -influence.amount;
  out_of_frame(spar, place);
}

double Evaluator::to_starboard(const Property& point, Evaluated place) {
  into_frame(frame_of(point), place);
  return place.vector[1].si;
}

const SparFrame* Evaluator::frame_of(const Property& point) {
  if (const auto spar = tree_.frames.find(&point); spar != tree_.frames.end())
    return spar->second == poison_symbol ? nullptr : frame(spar->second);
  const auto carrier = tree_.carried.find(&point);
  return carrier == tree_.carried.end() ? nullptr : moved(carrier->second);
}

const SparFrame* Evaluator::first_frame(SymbolId spar) {
  if (tree_.first == nullptr)
    return nullptr;
  if (first_ == nullptr)
    first_ = std::make_unique<Evaluator>(*tree_.first, sources_, silent_);
  return first_->frame(spar);
}

const SparFrame* Evaluator::moved(SymbolId spar) {
  const auto [found, fresh] = moved_.try_emplace(spar.value);
  if (fresh) {
    const SparFrame* before = first_frame(spar);
    const SparFrame* now = before == nullptr ? nullptr : frame(spar);
    if (now != nullptr)
      found->second = movement(*before, *now);
  }
  return found->second ? &*found->second : nullptr;
}

std::optional<Evaluated> Evaluator::opened(SymbolId id, std::size_t slot, const Value& value,
                                           const Property* point, const std::string& owner,
                                           const Expression& use) {
  Memo& memo = memo_[id.index()][slot];
  if (memo.state != State::open)
    return remembered(id, slot, value, point, owner).result;
  sink_.report(diagnose("circular-value", {{"name", tree_[id].name}})
                   .at(use.span, "the chain comes back here")
                   .and_at(tree_[id].span, "declared here"));
  return std::nullopt;
}

Evaluator::Memo& Evaluator::remembered(SymbolId id, std::size_t slot, const Value& value,
                                       const Property* point, const std::string& owner) {
  Memo& memo = memo_[id.index()][slot];
  if (memo.state == State::fresh) {
    memo.state = State::open;
    const std::size_t outer = std::exchange(deepest_, level_);
    level_ += steps_of_a_name;
    memo.result = evaluate_in_frame(value, point, owner);
    level_ -= steps_of_a_name;
    memo.steps = deepest_ - level_;
    deepest_ = std::max(outer, deepest_);
    memo.state = State::done;
  }
  // The chain is as long whether the values on which it rests were worked out before or on the way here.
  deepest_ = std::max(deepest_, level_ + memo.steps);
  if (memo.result && level_ + memo.steps > longest_value_chain) {
    report_too_long(value.expression());
    memo.result = std::nullopt;
  }
  return memo;
}

std::optional<Evaluated> Evaluator::evaluate_point(const Property& property, const std::string& owner) {
  return evaluate_in_frame(property.value, &property, owner);
}

const SparFrame* Evaluator::frame(SymbolId spar) {
  return frames_.find(spar, *this, tree_, sink_);
}

/// Other values may be asked for on the way; each is worked out in its own frame.
std::optional<Evaluated> Evaluator::evaluate_in_frame(const Value& value, const Property* point,
                                                      const std::string& owner) {
  const SparFrame* outer = current_;
  const auto spar = point == nullptr ? tree_.frames.end() : tree_.frames.find(point);
  current_ = nullptr;
  std::optional<Evaluated> result;
  const bool on_spar = spar != tree_.frames.end() && spar->second != poison_symbol;
  if (point != nullptr)
    current_ = frame_of(*point);
  if (!on_spar || current_ != nullptr)
    result = evaluate(value, owner);
  if (result && current_ != nullptr && is_place(*result)) {
    out_of_frame(current_, *result);
    auto& known = result->provenance.assumptions;
    for (const auto& assumed : current_->provenance.assumptions)
      if (std::find(known.begin(), known.end(), assumed) == known.end())
        known.push_back(assumed);
  }
  current_ = outer;
  return result;
}

void Evaluator::evaluate_let(const Let& let) {
  const SymbolId id = tree_.symbol_at(let.name.span);
  if (tree_[id].let != &let)
    return;
  const std::string owner = "value of " + let.name.text;
  if (let.value.mirrored)
    sink_.report(diagnose("mirrored-not-here", {{"what", owner}}).at(*let.value.mirrored));
  else if (one_value(let.value, owner, sink_))
    remembered(id, 0, let.value, nullptr, owner);
}

std::optional<Evaluated> Evaluator::vector(const Expression& expression) {
  Evaluated result;
  result.is_vector = true;
  const Unit* unit = expression.unit.missing() ? nullptr : find_unit(expression.unit.text);
  if (!expression.unit.missing() && unit == nullptr) {
    report_unknown_unit(expression.unit, sink_);
    return std::nullopt;
  }
  bool good = true;
  for (std::size_t i = 0; i < 3; ++i) {
    const Expression& operand = expression.operands[i];
    const auto component = evaluate(operand);
    if (!component || component->is_vector) {
      if (component)
        sink_.report(diagnose("number-wanted").at(operand.span));
      good = false;
      continue;
    }
    result.vector[i] = component->scalar;
    result.influences[i] = component->influences[0];
    if (unit != nullptr && component->scalar.dimension.is_plain_number())
      result.vector[i] = {component->scalar.si * unit->factor, unit->dimension};
    result.provenance = i == 0 ? component->provenance : combined(result.provenance, component->provenance);
  }
  if (!good)
    return std::nullopt;
  return result;
}

std::optional<Evaluated> Evaluator::negated(const Expression& expression) {
  const Expression& operand = expression.operands.front();
  auto result = evaluate(operand);
  if (!result)
    return result;
  if (result->scalar.dimension == dimension::temperature_point) {
    // The minus of -5 degC belongs to the number: five degrees below the zero of that scale.
    const Unit* unit = operand.kind == ExpressionKind::number ? find_unit(operand.unit.text) : nullptr;
    if (unit == nullptr) {
      sink_.report(diagnose("temperature-multiplied").at(expression.span));
      return std::nullopt;
    }
    result->scalar.si = 2.0 * unit->offset - result->scalar.si;
    return result;
  }
  result->scalar.si = -result->scalar.si;
  for (Quantity& component : result->vector)
    component.si = -component.si;
  for (Influences& component : result->influences)
    for (Influence& influence : component)
      influence.amount = -influence.amount;
  return result;
}

std::optional<Evaluated> Evaluator::two_operands(const Expression& expression) {
  const auto a = evaluate(expression.operands[0]);
  const auto b = evaluate(expression.operands[1]);
  if (!a || !b)
    return std::nullopt;
  const bool sum = expression.kind == ExpressionKind::add || expression.kind == ExpressionKind::subtract;
  return sum ? add(expression, *a, *b, sink_) : multiply(expression, *a, *b, sink_);
}

} // namespace sheerpole
