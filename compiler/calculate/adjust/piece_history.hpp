#pragma once

#include "calculate/adjust/account.hpp"
#include "calculate/cut/piece.hpp"
#include "model/rig.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace sheerpole {

struct DerivedStay;

/// One entry of the record of a piece, held against what the piece was to be.
struct PieceEntry {
  const PieceRecord* record = nullptr;
  /// Bearing to bearing, brought from the pull at which it was measured to the tension that `wanted` is
  /// of; nothing when the record states no length.
  std::optional<Length> body;
  /// What it was to be at that stage: on the bench less what the line does between bench and boat, before
  /// it has settled less what its splices give back then; nothing for a length that is X or incomplete.
  std::optional<Length> wanted;
  /// The record states a pull, and the stiffness of the line or the tension to come to is not known.
  bool pull_not_counted = false;

  /// How much longer than wanted it came out; below nothing it is shorter.
  std::optional<Length> longer() const {
    return body && wanted ? std::optional(*body - *wanted) : std::nullopt;
  }
};

/// The records of a stay, of all its pieces. Source: they stand in the order of the stays.
std::span<const PieceRecord> piece_records_of(const Rig& rig, StayId stay);

/// What became of one piece: from when it was cut to when it has settled.
struct PieceHistory {
  std::vector<PieceEntry> entries; ///< in the order of the stages, those of one stage by day, then file

  /// The last one that says how long the piece is; null when none does.
  const PieceEntry* last_measured() const;
  /// The last one of a stage; null when there is none.
  const PieceEntry* last(PieceStage stage) const;
};

/// The history of piece `i` of the stay. Source: differences of sums; the pull by Hooke's law with the
/// line's EA, as in line_stretch().
PieceHistory piece_history(const Rig& rig, const DerivedStay& stay, std::size_t i);

/// Whether the piece is on record at all: cut, or further. No line is planned or ordered for it.
bool is_on_record(const Rig& rig, const Piece& piece);

/// How the stay's one adjuster has to be set with the piece as it came out; nothing when there is no one
/// adjuster, several pieces, or no length to go by. It may lie outside the range of the adjuster.
std::optional<Length> adjuster_with(const DerivedStay& stay, const PieceEntry& entry);

/// How the one piece of a stay with one adjuster came out, by the last record that says how long it is;
/// nothing when none does or it came out as it was to be.
std::optional<CameOut> came_out(const Rig& rig, const DerivedStay& stay);

/// The batch that a piece is of: what its record says, else that of the stock that its record or its stack
/// names, else that of its line. Empty when nobody says.
std::string batch_of(const Rig& rig, const DerivedStay& stay, std::size_t i);

/// The stock that a piece is cut from, by its record, else by its stack; empty when nobody says.
std::string stock_of(const Rig& rig, const DerivedStay& stay, std::size_t i);

} // namespace sheerpole
