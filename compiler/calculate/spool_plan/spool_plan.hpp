#pragma once

#include "calculate/cutting/plan_cutting.hpp"
#include "calculate/spool_plan/spool_order.hpp"
#include "model/rig.hpp"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace sheerpole {

/// One cut: the piece lies from `start_mm` to `end_mm`, and the cut is made behind it.
struct SpoolCut {
  std::size_t piece = 0;     ///< in LineOrder::pieces
  std::int64_t start_mm = 0; ///< from the free end of the stock
  std::int64_t end_mm = 0;
  std::int64_t kerf_mm = 0; ///< what the cut behind it takes; less than a kerf at the end of the stock
};

/// What becomes of what is left of a stock.
enum class RestFate {
  nothing, ///< nothing is left
  stays,   ///< on its spool or coil; one of several of a record gets a name of its own
  offcut,  ///< an offcut with a name of its own
  waste,
};

/// One spool, coil or offcut from which pieces are cut.
struct SpoolUse {
  std::size_t stock = 0;    ///< in LineOrder::stocks
  std::int64_t ordinal = 1; ///< which of those of its record
  std::vector<SpoolCut> cuts;
  std::int64_t pieces_mm = 0;
  std::int64_t kerf_mm = 0;
  std::int64_t rest_mm = 0; ///< with what is kept back of it
  RestFate fate = RestFate::nothing;
  std::string rest_name; ///< of a rest that stays or becomes an offcut
};

/// A piece for which the stock does not suffice.
struct ShortPiece {
  std::size_t piece = 0; ///< in LineOrder::pieces
  UncutReason reason = UncutReason::not_enough_stock;
};

struct SpoolTotals {
  std::int64_t stock_mm = 0; ///< whole lengths of what is begun: pieces + kerf + kept + waste
  std::int64_t pieces_mm = 0;
  std::int64_t kerf_mm = 0;
  std::int64_t kept_mm = 0; ///< rests that stay and offcuts
  std::int64_t waste_mm = 0;
};

/// What a plan has as little of as can be; of the pieces that are no longer than every stock.
enum class SpoolMeasure {
  uncut,         ///< length of pieces for which the stock does not suffice
  cut_off,       ///< pieces with their kerfs that come from spools and coils
  offcuts_begun, ///< length of the offcuts that are begun, where there is neither spool nor coil
};

/// The plan of one kind of line.
struct LinePlan {
  LineOrder order;
  std::vector<SpoolUse> uses;
  SpoolTotals totals;
  std::vector<ShortPiece> short_pieces;
  std::int64_t to_buy_mm = 0; ///< short pieces with a kerf each
  bool searched = false;      ///< there were pieces and stocks to search a plan for
  SpoolMeasure measure = SpoolMeasure::cut_off;
  std::int64_t counted_mm = 0; ///< by this measure
  std::int64_t bound_mm = 0;   ///< no plan counts less
  bool proven = false;         ///< the two are equal
};

/// How many whole spools hold the pieces for which the stock does not suffice, the longest laid out first,
/// each on the first spool that still has room. Nothing when the file does not say what spools are sold in,
/// or a piece is longer.
std::optional<std::int64_t> spools_to_buy(const LinePlan& plan);

/// The two pieces of a pair that come from two stocks.
struct SplitPair {
  std::size_t port = 0; ///< in LineOrder::pieces
  std::size_t starboard = 0;
  std::size_t stock_of_port = 0; ///< in LineOrder::stocks
  std::size_t stock_of_starboard = 0;
};
std::vector<SplitPair> split_pairs(const LinePlan& plan);

/// One record of stock when the plan has been carried out.
struct NewStock {
  std::size_t line = 0;  ///< in SpoolPlan::lines
  std::size_t stock = 0; ///< in LineOrder::stocks: what it comes from
  std::size_t file = 0;  ///< in SpoolPlan::files
  std::string name;
  StockForm sort = StockForm::spool;
  std::int64_t length_mm = 0;
  std::int64_t pieces = 1;
  bool changed = false; ///< false: it stands as it stood, but perhaps for their number
};

struct SpoolPlan {
  std::vector<LinePlan> lines;
  std::vector<StockFile> files;
  std::vector<NewStock> new_stock; ///< line by line, in the order of the records
};

/// How far a plan is searched for, all lines together: some seconds. Beyond it the plan is the best found
/// so far and says that it is not proven.
inline constexpr CuttingLimits plan_limits{.steps = 200'000'000};

/// Which piece is cut from which stock, line by line.
///
/// Pieces longer than every stock are set aside. Of the others as little as can be is left uncut. Of spools
/// and coils as little as can be is cut off: offcuts go first and are filled as far as they can be. Of
/// plans alike in that the one begins the shorter offcuts, together, and then the fewest stocks; and of
/// spools and coils that hold the same cuts the shortest is taken whose rest is not waste. What is kept
/// back of a stock is not cut into, but by a kerf. A rest that is too short to be kept is waste and is not
/// counted: the file says that it is worth nothing.
///
/// The first two are exact where the plan is proven, the others a best effort.
SpoolPlan plan_spools(const std::vector<SpoolBoat>& boats, const CuttingLimits& limits = plan_limits);

/// Gives names to what is left of stocks, unlike any name of the boats.
class RestNames {
public:
  /// No rest is called like a thing of this rig.
  void avoid(const Rig& rig);
  /// `spool-9-rest`, or with a number behind it when that is taken; of a rest of `spool-9-rest` likewise.
  std::string next(const std::string& stock);

private:
  std::set<std::string> taken_;
};

/// The plan of one line, without names for the rests.
LinePlan plan_line(LineOrder order, const std::vector<StockFile>& files, const CuttingLimits& limits);

} // namespace sheerpole
