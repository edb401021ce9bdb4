#pragma once

#include "base/internal_error.hpp"
#include "elaborate/value_reader.hpp"
#include "model/kind_words.hpp"
#include "model/rig.hpp"
#include "names/resolved_tree.hpp"

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace sheerpole {

/// The points that one name stands for: either one, or one a side.
struct PointFamily {
  std::optional<PointId> only;
  std::optional<PointId> port;
  std::optional<PointId> starboard;
  bool bad = false; ///< could not be worked out; reported, stays silent
};

/// What the files of this room share while a rig is put together.
struct Elaboration {
  const ResolvedTree& tree;
  const SourceSet& sources;
  DiagnosticSink& sink;
  ValueReader read;
  Rig rig;
  // By the value of the symbol's id; looked up only. A symbol without an entry could not be elaborated.
  std::unordered_map<std::uint32_t, PointFamily> points;
  std::unordered_map<std::uint32_t, MaterialId> materials;
  std::unordered_map<std::uint32_t, SpliceId> splices;
  std::unordered_map<std::uint32_t, PartId> parts;
  std::unordered_map<std::uint32_t, std::vector<StayId>> stays;
  std::size_t stacked = 0; ///< items of all stacks so far, counted ones with their number
  std::size_t looks = 0;   ///< of the rules so far: each thing that a rule looks at is one

  /// Reports the required properties that the declaration lacks; false when there is one.
  bool has_required(const ResolvedDeclaration& declaration);
  /// What is stated and is none of these properties: kept as written.
  std::vector<Particular> particulars(const ResolvedDeclaration& declaration,
                                      std::span<const std::string_view> read_elsewhere,
                                      const std::string& owner);
  /// The stays that a name with or without a side stands for; reports a side that the stay does not have.
  std::vector<StayId> stays_named(const Name& name, const Name& side, Span whole);
  std::optional<Sourced<Length>> length(const ResolvedDeclaration& declaration, std::string_view name);
  std::string text(const ResolvedDeclaration& declaration, std::string_view name);
  std::string name_of(const ResolvedDeclaration& declaration) const;
  Span place_of(const ResolvedDeclaration& declaration) const;

  /// The point that a name with or without a side stands for on this side of the boat; empty when there is
  /// none, which has been reported.
  /// `shared`: a place where both sides meet, as legs do at a junction, may lie off the middle.
  std::optional<PointId> point_on(const Expression& expression, Side side, const std::string& owner,
                                  bool shared = false);
};

/// What the files of a rig may come to in all, where few words make much work.
inline constexpr std::size_t most_stacked = 200'000;
inline constexpr std::size_t most_looks = 1'000'000;

/// The title behind its name; empty when it has none.
std::string title_of(const ResolvedDeclaration& declaration);

/// What a word of the table of kinds stands for. One that its enumeration lacks is a fault of the compiler.
template <NamedWord Word>
Word enumerated(std::string_view word) {
  const std::optional<Word> found = find_word<Word>(word);
  if (!found)
    internal_error("the table of kinds has a word that its enumeration lacks");
  return *found;
}

/// The word of a property that is a choice. What is none of its choices has been reported where names are
/// bound, and counts as unstated.
template <NamedWord Word>
Word read_choice(Elaboration& elaboration, const ResolvedProperty& property, const std::string& owner) {
  const auto word = elaboration.read.word(property.syntax->value, *property.row, owner);
  const auto& choices = property.row->choices;
  if (!word || std::find(choices.begin(), choices.end(), *word) == choices.end())
    return Word::unstated;
  return enumerated<Word>(*word);
}

void elaborate_boat(Elaboration& elaboration);
void elaborate_spars(Elaboration& elaboration);
void elaborate_points(Elaboration& elaboration);
void elaborate_spreaders(Elaboration& elaboration);
void elaborate_lines(Elaboration& elaboration);
void elaborate_parts(Elaboration& elaboration);
void elaborate_stays(Elaboration& elaboration);
void elaborate_readings(Elaboration& elaboration);
/// Reports what a reading states that can be read and is hardly meant: an offset as long as a person, a day
/// that has not come yet.
void doubt_reading(Elaboration& elaboration, const ResolvedDeclaration& declaration,
                   const Reading& reading);
/// Reports knots of the cords that cannot be told apart.
void check_knots(Elaboration& elaboration);
/// Lifts the upper ends of stays whose soft eyes sit one above the other.
void elaborate_eye_stacks(Elaboration& elaboration);
void elaborate_states(Elaboration& elaboration);
/// Shops, stock, limits, rules, waivers, expectations, the inspection log, differences.
void elaborate_records(Elaboration& elaboration);
/// What the stations of tapered spars say against each other, against their order or against their spar.
void elaborate_spar_stations(Elaboration& elaboration);
/// One rule of the file's own.
void elaborate_rule(Elaboration& elaboration, const ResolvedDeclaration& declaration);

/// The stack of a stay with the changes to it; of the stay its name, for messages, and its path are read.
std::vector<StackItem> elaborate_stack(Elaboration& elaboration, const Stay& stay,
                                       const ResolvedDeclaration& stack,
                                       const std::vector<const ResolvedDeclaration*>& changes);

/// The stack with the settings of `changes` in the place of its own. An item that is not in the stack, or
/// in it more than once, is reported.
void change_items(Elaboration& elaboration, const std::string& stay, const ResolvedDeclaration& changes,
                  ResolvedDeclaration& stack);

/// Whether a boat or a stay states `cut-from` without `cut-from-reason`, or the other way round; it is
/// reported.
bool refuse_unexplained_cut(Elaboration& elaboration, const ResolvedDeclaration& declaration);

/// The sides that a declaration names; `fallback` when it names none.
std::vector<Side> sides_of(Elaboration& elaboration, const ResolvedDeclaration& declaration,
                           std::vector<Side> fallback);

} // namespace sheerpole
