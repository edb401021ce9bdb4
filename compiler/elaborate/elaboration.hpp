#pragma once

#include "elaborate/value_reader.hpp"
#include "model/rig.hpp"
#include "names/resolved_tree.hpp"

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace sheerpole {

/// The points that one name stands for: either one, or one a side.
struct PointFamily {
  std::optional<PointId> only;
  std::optional<PointId> port;
  std::optional<PointId> starboard;
  const Property* port_apart = nullptr;      ///< `plate-a.port: …`
  const Property* starboard_apart = nullptr; ///< `plate-a.starboard: …`
  bool bad = false;                          ///< could not be worked out; reported, stays silent
};

/// What the files of this room share while a rig is put together.
struct Elaboration {
  const ResolvedTree& tree;
  DiagnosticSink& sink;
  ValueReader read;
  Rig rig;
  // By the value of the symbol's id; looked up only. A symbol without an entry could not be elaborated.
  std::unordered_map<std::uint32_t, PointFamily> points;
  std::unordered_map<std::uint32_t, MaterialId> materials;
  std::unordered_map<std::uint32_t, SpliceId> splices;
  std::unordered_map<std::uint32_t, PartId> parts;
  std::unordered_map<std::uint32_t, std::vector<StayId>> stays;

  /// Reports the required properties that the declaration lacks; false when there is one.
  bool has_required(const ResolvedDeclaration& declaration);
  std::optional<Sourced<Length>> length(const ResolvedDeclaration& declaration, std::string_view name);
  std::string text(const ResolvedDeclaration& declaration, std::string_view name);
  std::string name_of(const ResolvedDeclaration& declaration) const;
  Span place_of(const ResolvedDeclaration& declaration) const;

  /// The point that a name with or without a side stands for on this side of the boat; empty when there is
  /// none, which has been reported.
  std::optional<PointId> point_on(const Expression& expression, Side side, const std::string& owner);
};

void elaborate_boat(Elaboration& elaboration);
void elaborate_points(Elaboration& elaboration);
void elaborate_spreaders(Elaboration& elaboration);
void elaborate_lines(Elaboration& elaboration);
void elaborate_parts(Elaboration& elaboration);
void elaborate_stays(Elaboration& elaboration);
void elaborate_readings(Elaboration& elaboration);

/// The stack of a stay; the same for both sides.
std::vector<StackItem> elaborate_stack(Elaboration& elaboration, const ResolvedDeclaration& stay,
                                       const ResolvedDeclaration& stack);

/// The sides that a declaration names; `fallback` when it names none.
std::vector<Side> sides_of(Elaboration& elaboration, const ResolvedDeclaration& declaration,
                           std::vector<Side> fallback);

} // namespace sheerpole
