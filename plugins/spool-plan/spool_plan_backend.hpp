#pragma once

#include "backend/backend.hpp"
#include "backend/drawing/drawing.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace sheerpole {

/// The boats of a request. Points into it.
struct FleetBoats {
  std::vector<SpoolBoat> boats;
  std::string titles;        ///< "Pellimoor, Grisolde"
  std::string identity = {}; ///< of all of them, for the foot of each page
  std::string edition = {};  ///< the same without their names
};

/// Two boats of one name are told apart by their files, then by a number.
FleetBoats fleet_boats(const BackendRequest& request);

/// "rope hmpe-9, 9 mm"; with several names of one line "rope hmpe-9 (Pellimoor), spool-line (Sallow), 9
/// mm".
std::string line_words(const LineOrder& line);

/// "12-strand HMPE heat-set, 316 stainless"
std::string made_of(const LineOrder& line);

/// "spool-9, spool of 100000 mm, batch lot 12", "spool-9 no. 2 of 3, …".
std::string stock_words(const LineOrder& line, const SpoolUse& use);

/// "34312 mm stay on it", "1689 mm are kept as offcut-7-rest", "380 mm are waste", "nothing".
std::string rest_words(const LineOrder& line, const SpoolUse& use);

/// "Pellimoor: cap-shroud.port"
std::string piece_words(const WantedPiece& piece);

/// Millimetres of a sum in which a piece that is a DRAFT has its share, or of such a piece: "about 12.9 m",
/// so that nobody cuts to it; of others "12817 mm".
std::string planned_words(std::int64_t mm, bool draft);

/// Whether any piece of the line is a DRAFT.
bool any_draft(const LineOrder& line);

/// "proven" or "not proven" with the bound, as a sentence.
std::string proof_words(const LinePlan& plan);

/// What is stated of the cutting: kerf, rests, spare.
std::string cutting_words(const LineOrder& line);

/// "at least 23456 mm (23.46 m): 2 pieces with a kerf of 2 mm each. …". Empty when nothing has to be
/// bought.
std::string to_buy_words(const LinePlan& plan);

/// Pieces that rest on an assumed or estimated number.
bool any_draft(const SpoolPlan& plan);

std::string counted(std::int64_t count, PhraseText one, PhraseText several);

/// For people, at most 100 columns wide as long as no single name is wider.
std::string plan_text(const FleetBoats& fleet, const SpoolPlan& plan);

/// One flat table, one row a cut; the columns are described in docs/backends/spool-plan.md.
std::string plan_csv(const SpoolPlan& plan);

/// The records of one file of stock when the plan has been carried out, as a file to be used in its place;
/// what the boats state of cutting these lines goes with them.
std::string new_stock_text(const FleetBoats& fleet, const SpoolPlan& plan, std::size_t file);

/// The pieces of one boat that the plan cuts, as records to be taken into her file: which stock and batch
/// each is of. Empty when it cuts none of hers.
std::string cut_pieces_text(const FleetBoats& fleet, const SpoolPlan& plan, std::size_t boat);

/// Sheets on which every stock that is begun lies as a bar, all to one scale.
std::vector<Drawing> plan_drawing(const FleetBoats& fleet, const SpoolPlan& plan);

/// Which piece is cut from which spool, coil or offcut, for one boat or a fleet: as text and drawing for
/// the bench, as a flat table, and as the records of what is then in stock.
struct SpoolPlanBackend final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
