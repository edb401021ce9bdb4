#include "elaborate/arithmetic.hpp"
#include "elaborate/evaluator.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

const ResolvedDeclaration* declaration_of(const ResolvedTree& tree, SymbolId spar) {
  for (const ResolvedDeclaration& declaration : tree.declarations)
    if (declaration.symbol == spar)
      return &declaration;
  return nullptr;
}

using Axes = std::array<std::array<double, 3>, 3>;

/// Boat axes turned about y: bow up for a positive angle, which is a mast leaning aft or a bowsprit rising.
Axes turned(double angle) {
  const double c = std::cos(angle);
  const double s = std::sin(angle);
  return {{{c, 0.0, s}, {0.0, 1.0, 0.0}, {-s, 0.0, c}}};
}

/// z along `direction`, x square to it in the plane that holds the boat's x, y square to both.
Axes along(const std::array<double, 3>& direction) {
  const double length = std::hypot(direction[0], direction[1], direction[2]);
  const std::array<double, 3> z{direction[0] / length, direction[1] / length, direction[2] / length};
  std::array<double, 3> x{1.0 - z[0] * z[0], -z[0] * z[1], -z[0] * z[2]};
  const double across = std::hypot(x[0], x[1], x[2]);
  for (double& component : x)
    component /= across;
  const std::array<double, 3> y{z[1] * x[2] - z[2] * x[1], z[2] * x[0] - z[0] * x[2],
                                z[0] * x[1] - z[1] * x[0]};
  return {x, y, z};
}

/// Adds what moves a place along one axis to what moves it along another, which makes that angle with it.
void add_scaled(Influences& to, const Influences& from, double cosine) {
  for (const Influence& more : from) {
    const auto same = std::find_if(to.begin(), to.end(),
                                   [&](const Influence& other) { return other.bound == more.bound; });
    if (same != to.end())
      same->amount += cosine * more.amount;
    else if (cosine != 0.0)
      to.push_back({more.bound, cosine * more.amount});
  }
}

} // namespace

std::array<double, 3> SparFrame::to_boat(const std::array<double, 3>& place) const {
  std::array<double, 3> result = heel;
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t k = 0; k < 3; ++k)
      result[k] += place[i] * axes[i][k];
  return result;
}

std::array<double, 3> SparFrame::from_boat(const std::array<double, 3>& place) const {
  std::array<double, 3> result{};
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t k = 0; k < 3; ++k)
      result[i] += (place[k] - heel[k]) * axes[i][k];
  return result;
}

std::array<Influences, 3> SparFrame::turned_to_boat(const std::array<Influences, 3>& moves) const {
  std::array<Influences, 3> result;
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t k = 0; k < 3; ++k)
      add_scaled(result[k], moves[i], axes[i][k]);
  return result;
}

std::array<Influences, 3> SparFrame::turned_from_boat(const std::array<Influences, 3>& moves) const {
  std::array<Influences, 3> result;
  for (std::size_t i = 0; i < 3; ++i)
    for (std::size_t k = 0; k < 3; ++k)
      add_scaled(result[i], moves[k], axes[i][k]);
  return result;
}

std::optional<SparFrame> movement(const SparFrame& before, const SparFrame& now) {
  if (before.heel == now.heel && before.axes == now.axes)
    return std::nullopt;
  SparFrame result;
  result.provenance = now.provenance;
  result.heel = now.to_boat(before.from_boat({0.0, 0.0, 0.0}));
  for (std::size_t i = 0; i < 3; ++i) {
    std::array<double, 3> along_axis{};
    along_axis[i] = 1.0;
    const auto end = now.to_boat(before.from_boat(along_axis));
    for (std::size_t k = 0; k < 3; ++k)
      result.axes[i][k] = end[k] - result.heel[k];
  }
  return result;
}

const SparFrame* SparFrames::find(SymbolId spar, Evaluator& evaluator, const ResolvedTree& tree,
                                  DiagnosticSink& sink) {
  const auto [found, fresh] = memo_.try_emplace(spar.value);
  Memo& memo = found->second;
  if (!fresh) {
    if (memo.open)
      sink.report(diagnose("circular-value", {{"name", tree[spar].name}})
                      .at(tree[spar].span, "a point on this spar decides where the spar stands"));
    return memo.frame ? &*memo.frame : nullptr;
  }
  const ResolvedDeclaration* declaration = declaration_of(tree, spar);
  if (declaration == nullptr)
    return nullptr;
  memo.open = true;
  SparFrame frame;
  bool good = true;
  bool first = true;
  const auto read = [&](std::string_view name, bool vector, Dimension wanted) -> std::optional<Evaluated> {
    const ResolvedProperty* property = declaration->find(name);
    if (property == nullptr)
      return std::nullopt;
    auto value = evaluator.evaluate(property->syntax->value, std::string(name) + " of " + tree[spar].name);
    const bool fits = value && value->is_vector == vector &&
                      (vector ? value->vector[0].dimension == wanted : value->scalar.dimension == wanted);
    good = good && fits;
    if (!fits)
      return std::nullopt; // reported here or where the spar itself is read
    frame.provenance = first ? value->provenance : combined(frame.provenance, value->provenance);
    first = false;
    return value;
  };
  const auto heel = read("heel", true, dimension::length);
  const auto rake = read("rake", false, dimension::angle);
  const auto steeve = read("steeve", false, dimension::angle);
  const ResolvedProperty* axis_property = declaration->find("axis");
  const auto axis = axis_property == nullptr
                        ? std::nullopt
                        : evaluator.evaluate(axis_property->syntax->value, "axis of " + tree[spar].name);
  good = good && heel.has_value() && (axis_property == nullptr || (axis && axis->is_vector));
  if (good) {
    for (std::size_t i = 0; i < 3; ++i)
      frame.heel[i] = heel->vector[i].si;
    const ResolvedProperty* sort = declaration->find("sort");
    if (sort != nullptr && evaluator.is_trial(sort->syntax->span))
      evaluator.apply_source(sort->syntax->value, "sort of " + tree[spar].name, frame.provenance);
    const bool aft = sort != nullptr && sort->syntax->value.expression().text == "boomkin";
    double angle = rake ? rake->scalar.si : 0.0;
    if (steeve)
      angle += aft ? -steeve->scalar.si : steeve->scalar.si;
    frame.axes = turned(angle);
    if (axis) {
      const std::array<double, 3> direction{axis->vector[0].si, axis->vector[1].si, axis->vector[2].si};
      if (std::hypot(direction[1], direction[2]) < 1e-9) {
        sink.report(diagnose("axis-along-boat", {{"spar", tree[spar].name}})
                        .at(axis_property->syntax->value.expression().span));
        good = false;
      } else {
        frame.axes = along(direction);
      }
    }
  }
  memo.open = false;
  if (!good)
    return nullptr;
  memo.frame = std::move(frame);
  return &*memo.frame;
}

} // namespace sheerpole
