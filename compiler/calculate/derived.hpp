#pragma once

#include "calculate/joints/joint.hpp"
#include "calculate/length_sum.hpp"
#include "calculate/strength/load_screening.hpp"
#include "calculate/strength/stay_chain.hpp"
#include "calculate/uncertainty/uncertainty.hpp"
#include "model/rig.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

/// A number without which a length can not be final, or can not be had at all.
struct MissingInput {
  std::string what; ///< "contraction of splice long-bury"
  std::string mend; ///< "make a test splice on this rope and state contraction"
  Span place;
};

/// How one end of a piece is made.
struct PieceEnd {
  std::string part; ///< name of the part there; empty when the line ends bare
  std::string title;
  std::string splice; ///< name of the splice; empty for wire
  std::string
      note; ///< what else to know: two ways to the eye allowance that disagree, whole links of a chain
};

/// A place along a piece, measured from one of its ends. With `unknown` the length X lies between.
struct MarkPlace {
  bool unknown = false;
  Length known;
};

/// One mark to be made on the bench, from either end of the piece as it is cut.
struct BenchMark {
  std::string name; ///< "throat aloft, on the tail"
  MarkPlace from_aloft;
  MarkPlace from_below;
};

/// How a piece is marked and looked at before the line is opened.
struct BenchMarks {
  std::vector<BenchMark> marks; ///< from aloft to deck; the first and the last are the cut ends
  /// Bearing to bearing with both eyes formed and nothing buried: where the ends should hang at the
  /// dry fit. Of a wire with its terminals laid beside it. Nothing when something of it is missing.
  std::optional<MarkPlace> dry_fit;
  /// Why there is no mark at a throat: "seat of thimble-16: throat not stated".
  std::vector<std::string> not_known;
};

/// One piece to cut: a rope or wire in one length between two ends.
struct Piece {
  std::string name; ///< `cap-shroud.port`; `backstay-upper 2 of 3`
  StayId stay;
  int number = 1; ///< of `of`, from aloft to deck
  int of = 1;
  MaterialId material;
  LengthSum body; ///< bearing to bearing
  LengthSum cut;  ///< body plus what the ends use
  PieceEnd above;
  PieceEnd below;
  std::vector<MissingInput> missing; ///< not empty: the cut is a draft
  std::vector<std::string> not_counted =
      {}; ///< what the cut leaves out because the file says nothing of it
  BenchMarks bench = {};
};

/// How far one adjuster can go from where it is set.
struct TakeUp {
  StayId stay;
  std::size_t item = 0; ///< in the stack
  PartId part;
  Sourced<Length> set;
  Length to_tighten; ///< set - shortest; negative when set beyond the range
  Length to_slacken; ///< longest - set; negative when set beyond the range
  std::optional<Length> travel_per_turn;
  std::optional<Length> engaged; ///< thread in the body, each stud, as set
  std::optional<Length>
      least_engagement; ///< diameters of thread by the rig's limits; nothing when that is switched off
};

/// Which of the ways to the pin-to-pin length was taken.
enum class LengthRoute { reading, stated, path, unknown };

/// A slip of measuring that would explain a difference.
struct LikelySlip {
  std::string words;  ///< "toggle-12, 82 mm, was left out"
  Length unexplained; ///< what it leaves of the difference
};

/// Two ways to one length, side by side.
struct RouteComparison {
  LengthRoute other = LengthRoute::path;
  Length length;     ///< by the other way
  Length difference; ///< the way taken minus the other way
  Provenance provenance;
  std::vector<LikelySlip> slips = {}; ///< the likeliest first
};

/// How a stay and its path change with temperature.
struct ThermalRow {
  double kelvin = 0.0;
  Length line; ///< how much longer the bodies get
  Length path; ///< how much longer the way gets that they are to span
  /// What the stay gains: more than nothing is slack, less is tighter.
  Length slack() const { return line - path; }
};
struct ThermalTable {
  std::vector<ThermalRow> rows;         ///< empty when it is not checked
  std::vector<std::string> not_checked; ///< why there are no rows
};

/// Lasting stretch by creep in some time.
struct CreepAmount {
  std::optional<Length> amount; ///< nothing: not checked
  std::string how;
  std::string not_checked;
};

/// One draw on the account of a stay's adjusters.
struct AccountEntry {
  std::string name;            ///< "bedding-in", "creep in 1 year", "coldest day, -10 degC"
  Length tightens = {};        ///< the adjuster has to take up so much
  Length slackens = {};        ///< or has to give out so much
  bool dated = false;          ///< creep: of several dates one counts
  bool of_temperature = false; ///< of several the worse counts
  std::string how = {};
  std::string not_checked = {}; ///< not empty: why it is not known; it counts as nothing
};
/// What is left at a date.
struct AccountLeft {
  std::string after; ///< "1 year"
  Length to_tighten; ///< less than nothing: the adjuster is not long enough
  Length to_slacken;
  bool complete = true; ///< every entry is known
};
struct Account {
  Length to_tighten; ///< of all adjusters together, as set
  Length to_slacken;
  std::vector<AccountEntry> entries; ///< empty when the stay has no adjuster
  std::vector<AccountLeft> left;     ///< one a date
};

/// The tension of a stay as one reading gives it.
struct TensionEstimate {
  std::string method; ///< swing, pulse, stretch
  std::optional<Force> tension;
  std::optional<double> share_of_break;
  std::string how;
  std::string not_checked; ///< why there is no tension
  std::string date;
  std::string by;
  Span place;
};

/// How deep the longest straight run of a stay hangs.
struct Sag {
  Length span;
  Force tension;
  Length depth;        ///< square to the chord
  Length extra_length; ///< of the line over the chord
};

/// A stay's line against the one before.
struct Replacement {
  MaterialId old_line;
  std::optional<double> stiffness; ///< new over old; likewise the others
  std::optional<double> strength;
  std::optional<double> mass;
  std::optional<double> new_kilograms;
  std::optional<double> old_kilograms;
  std::optional<Length> centre_height; ///< of the mass above the lowest point of the path
  std::vector<std::string> not_checked;
};

/// One way to make a line in hand fit.
struct FitWay {
  std::vector<std::pair<std::string, int>> parts; ///< name and how many are added
  Length adjuster;                                ///< as it is then set
  double open = 0.0;                              ///< the same as a share of its range
};
/// The answer to one `fit`.
struct Fit {
  Length line; ///< body of the line in hand
  Length gap;  ///< pin-to-pin less the line and the fixed hardware
  PartId adjuster;
  Length shortest; ///< of the wanted band
  Length longest;
  std::vector<FitWay> ways; ///< fewest parts first
  Length short_by;          ///< without a way: how far the nearest is off the band
  std::string not_checked;
  Span place;
};

/// Everything calculated for one stay.
struct DerivedStay {
  StayId stay;
  LengthRoute route = LengthRoute::unknown;
  LengthSum pin_to_pin;
  std::vector<RouteComparison> other_routes;
  std::vector<std::string> not_corrected = {}; ///< corrections that the reading taken could not be given
  LengthSum body;                 ///< pin-to-pin less the hardware; all bodies of the stay together
  std::vector<Piece> pieces;      ///< from aloft to deck
  std::vector<TakeUp> adjusters;  ///< from aloft to deck
  std::vector<Joint> joints = {}; ///< from aloft to deck, each with what was compared
  ThermalTable thermal = {};      ///< at the usual temperatures
  std::vector<TensionEstimate> tensions = {};
  std::optional<Sag> sag = {};
  std::optional<Replacement> replacement = {};
  std::vector<Fit> fits = {};
  std::optional<Uncertainty> uncertainty = {}; ///< of the cut; nothing when no bound is stated
  Account account = {};
  StayChain chain = {}; ///< what each link holds
};

/// One stay in one state of the rig.
struct DerivedPosition {
  std::size_t state = 0;    ///< in Rig::states
  std::size_t position = 0; ///< in its positions
  StayId stay;
  std::vector<TakeUp> adjusters; ///< as set in this state
  Length change;                 ///< how much longer the stay's hardware is than in its usual state
};

/// Everything calculated for the rig, in the order of its stays.
struct Derived {
  std::vector<DerivedStay> stays;
  std::vector<UncertainInput> inputs = {};         ///< every input with a bound or a scatter
  std::size_t draws = 100'000;                     ///< of the Monte Carlo method
  std::uint64_t seed = 1;                          ///< of its random numbers
  std::vector<DerivedPosition> positions;          ///< in the order of states and their positions
  std::vector<LoadScreening> load_screenings = {}; ///< in the order of the file
};

} // namespace sheerpole
