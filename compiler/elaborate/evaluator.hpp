#pragma once

#include "diagnostics/sink.hpp"
#include "model/influence.hpp"
#include "model/provenance.hpp"
#include "names/resolved_tree.hpp"
#include "source/source_set.hpp"
#include "units/dimension.hpp"

#include <array>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

/// What an expression is worth: one quantity or three, and how it is known.
struct Evaluated {
  bool is_vector = false;
  Quantity scalar;
  std::array<Quantity, 3> vector;
  /// How far it may be off, of a vector each component: bounds add up, they are no deviations.
  std::optional<Quantity> tolerance;
  std::array<Influences, 3> influences; ///< of each component; of a scalar the first
  Provenance provenance;
};

class Evaluator;

/// The frame of a spar: boat axes moved to its heel and turned with it.
struct SparFrame {
  std::array<double, 3> heel{};                ///< metres, in boat axes
  std::array<std::array<double, 3>, 3> axes{}; ///< unit vectors of x, y, z in boat axes
  Provenance provenance;                       ///< of heel and lean together

  std::array<double, 3> to_boat(const std::array<double, 3>& place) const;
  std::array<double, 3> from_boat(const std::array<double, 3>& place) const;
  /// The same turn for what moves a place: without the heel.
  std::array<Influences, 3> turned_to_boat(const std::array<Influences, 3>& moves) const;
  std::array<Influences, 3> turned_from_boat(const std::array<Influences, 3>& moves) const;
};

/// The movement that takes a spar from one place to another, as a frame: a place in boat axes where the
/// spar stood `before` goes to where the spar has taken it. Empty when it did not move.
std::optional<SparFrame> movement(const SparFrame& before, const SparFrame& now);

/// Works out the frames of spars, each once.
class SparFrames {
public:
  /// Null when the spar can not be worked out, which has been reported.
  const SparFrame* find(SymbolId spar, Evaluator& evaluator, const ResolvedTree& tree,
                        DiagnosticSink& sink);

private:
  struct Memo {
    bool open = false;
    std::optional<SparFrame> frame;
  };
  std::map<std::uint32_t, Memo> memo_; // by symbol; references into it must stay good
};

/// Longest chain of names, sums and signs on which a value may rest. Each is a calculation within another,
/// and they may only be nested so deep; to follow a name takes as much room as several sums.
inline constexpr std::size_t longest_value_chain = 500;
inline constexpr std::size_t steps_of_a_name = 5;

/// Works out expressions. Each `let` and each point is worked out once; an empty result has been reported.
class Evaluator {
public:
  Evaluator(const ResolvedTree& tree, const SourceSet& sources, DiagnosticSink& sink);

  /// `owner` names the value in the list of assumptions: "contraction of long-bury". A tolerance behind the
  /// value takes the place of the one that it is worked out to have.
  std::optional<Evaluated> evaluate(const Value& value, const std::string& owner);
  std::optional<Evaluated> evaluate(const Expression& expression);
  /// The place of a point in boat axes. One on a spar is stated in the spar's frame.
  std::optional<Evaluated> evaluate_point(const Property& property, const std::string& owner);
  /// Moves a place that `point` states to the port or the starboard side: of the boat, or of the spar that
  /// it stands on.
  void put_on_side(const Property& point, bool port, Evaluated& place);
  /// How far to starboard of the centreline, or of the line of its spar, metres.
  double to_starboard(const Property& point, Evaluated place);
  /// Where a spar stands; empty when it can not be worked out, which has been reported.
  const SparFrame* frame(SymbolId spar);
  /// How a spar that carries points has been moved by what is stated over the file; null when it was not,
  /// or when the file did not say where it stood.
  const SparFrame* moved(SymbolId spar);
  /// Where a spar stood before anything was stated over the file; null when the file did not say.
  const SparFrame* first_frame(SymbolId spar);
  /// Every bound that was met so far, by its id.
  const std::vector<StatedBound>& bounds() const { return bounds_; }
  void evaluate_let(const Let& let);

  /// The text of a value as written, without its source.
  std::string written(const Value& value) const;
  std::string written(Span span) const { return std::string(sources_[span.source].text(span)); }

  /// Puts the source that stands behind a value over the one that it is worked out to have. What was set on
  /// the command line stays an assumption whatever source stands behind a value that rests on it.
  void apply_source(const Value& value, const std::string& owner, Provenance& provenance) const;
  /// Whether the value stands on the command line and not in a file.
  bool is_trial(Span span) const {
    return tree_.what_if != nullptr && span.source == tree_.what_if->source;
  }

private:
  enum class State { fresh, open, done };
  struct Memo {
    State state = State::fresh;
    std::size_t steps = 0; ///< longest chain of steps on which the value rests
    std::optional<Evaluated> result;
  };

  /// The frame in which a point is stated; null for boat axes.
  const SparFrame* frame_of(const Property& point);
  std::optional<Evaluated> step(const Expression& expression);
  /// Reports, once in a rig, that a value rests on too long a chain.
  void report_too_long(const Expression& expression);
  std::optional<Evaluated> literal(const Expression& expression);
  std::optional<Evaluated> name(const Expression& expression);
  std::optional<Evaluated> vector(const Expression& expression);
  std::optional<Evaluated> two_operands(const Expression& expression);
  std::optional<Evaluated> negated(const Expression& expression);
  std::optional<Evaluated> symbol(SymbolId id, const Expression& use);
  std::optional<Evaluated> point_side(SymbolId id, const Expression& use);
  /// The value of a symbol, worked out once. `slot` 0 is the symbol itself, 1 its port side, 2 its
  /// starboard side.
  Memo& remembered(SymbolId id, std::size_t slot, const Value& value, const Property* point,
                   const std::string& owner);
  std::optional<Evaluated> opened(SymbolId id, std::size_t slot, const Value& value, const Property* point,
                                  const std::string& owner, const Expression& use);
  std::optional<Evaluated> evaluate_in_frame(const Value& value, const Property* point,
                                             const std::string& owner);
  void add_tolerance(const Value& value, const std::string& owner, Evaluated& result);
  /// The input that `place` states; what stands once in the file is one input.
  BoundId bound_at(Span place, std::size_t component, const std::string& name, const Quantity& bound);
  std::optional<Evaluated> finite(std::optional<Evaluated> value, const Expression& expression);

  const ResolvedTree& tree_;
  const SourceSet& sources_;
  DiagnosticSink& sink_;
  std::vector<std::array<Memo, 3>> memo_; // by symbol and slot
  std::set<Span> told_;                   ///< literals whose spelling has been looked at
  SparFrames frames_;
  DiagnosticSink silent_; ///< what is wrong with the file as it was first is not wrong with it as it is now
  std::unique_ptr<Evaluator> first_;
  std::map<std::uint32_t, std::optional<SparFrame>> moved_; // by symbol; references must stay good
  std::vector<StatedBound> bounds_;
  std::map<std::pair<Span, std::size_t>, BoundId> bound_at_;
  const SparFrame* current_ = nullptr; ///< of the point that is being worked out
  std::size_t level_ = 0;              ///< steps that are open: expressions within expressions and names
  std::size_t deepest_ = 0;            ///< deepest level so far in what is being worked out
  bool too_long_ = false;              ///< reported
};

} // namespace sheerpole
