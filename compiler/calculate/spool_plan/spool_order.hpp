#pragma once

#include "calculate/cut/order_length.hpp"
#include "calculate/cutting/plan_cutting.hpp"
#include "model/remark.hpp"
#include "model/rig.hpp"
#include "units/length.hpp"

#include <cmath>
#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace sheerpole {

/// What the plan of stock has to say of a piece; in English in wording/stock_words.cpp.
enum class StockPhrase : std::uint16_t {
  links,
  ways_differ,
  not_complete,
  missing,
  no_length_yet,
  no_estimate,
  nothing_left,
  too_long,
  plan_full,
  in_hand,
  on_record,
  taken_before
};

constexpr PhraseSubject subject_of(StockPhrase) {
  return PhraseSubject::stock;
}

struct Derived;
struct Piece;

/// What the checked rig and the cut list say of a piece.
struct PieceNote {
  std::string piece;
  std::vector<std::string> draft_reasons; ///< not empty: the piece is a DRAFT
  bool complete = true;                   ///< false: the cut list gives no length for it
  /// As the cut list prints it; of this and the exact sum the longer counts.
  std::optional<Length> listed_cut;
  bool ways_differ = false; ///< its length is measured twice, and a drawing says another one
};

/// One boat whose pieces are planned. Rig and lengths must outlive the plan.
struct SpoolBoat {
  std::string title; ///< unlike that of any other boat of the plan
  const Rig* rig = nullptr;
  const Derived* derived = nullptr;
  std::vector<std::string> source_keys;  ///< by SourceId; files with equal keys are one file; never shown
  std::vector<std::string> source_names; ///< by SourceId, as they are shown
  std::vector<PieceNote> notes;          ///< a piece without a note is complete and no DRAFT
};

/// A rope, wire, rod or chain as one boat names it.
struct NamedLine {
  std::string name;
  std::vector<std::string> boats; ///< titles
};

/// A number of `cutting of MATERIAL`.
template <class Value>
struct CuttingSetting {
  Value value{};
  bool stated = false;
  bool differs = false; ///< files state it differently: the greatest counts
};

/// A piece to be cut from stock.
struct WantedPiece {
  const Rig* rig = nullptr; ///< of its boat
  std::string boat;         ///< title
  std::string stay;         ///< without its side
  Side side = Side::centre;
  int number = 1; ///< of `of` pieces of its stay, from aloft
  int of = 1;
  std::string name;           ///< `cap-shroud.port`; `backstay-upper 2 of 3`
  Length cut;                 ///< before spare; with an estimate for X
  std::int64_t length_mm = 0; ///< with spare, rounded up
  bool estimated = false;     ///< the cut is X and more, planned by what `ordered` takes X for
  std::string stay_of_x;      ///< the stay whose X it is, with its side
  OrderLength ordered;        ///< as the order list has it
  std::vector<std::string> draft_reasons;
  Remark note; ///< whole links of a chain; that its ways differ

  /// Not to be cut yet, so it has no place on the stock that could be cut to.
  bool draft() const { return estimated || !draft_reasons.empty(); }
};

/// A piece for which no length can be asked.
struct UnplannedPiece {
  const Rig* rig = nullptr; ///< of its boat
  std::string boat;
  std::string name;
  Remark reason;
};

/// A `stock` record.
struct StockInHand {
  const Record* record = nullptr;
  std::size_t boat = 0; ///< the first whose files state it
  std::size_t file = 0; ///< in SpoolOrder::files
  std::string name;
  std::string of; ///< name of the line there
  StockForm sort = StockForm::spool;
  std::string batch;
  std::int64_t length_mm = 0; ///< rounded down
  std::int64_t pieces = 1;
  std::int64_t kept_back_mm = 0; ///< of each; its `spare`, rounded up
};

/// Everything that is cut from one kind of line.
struct LineOrder {
  LineMaterial::Kind kind = LineMaterial::Kind::rope;
  std::string construction;
  std::string grade;
  NamedSize size;
  std::vector<NamedLine> names; ///< in the order of the boats
  CuttingSetting<std::int64_t> kerf_mm;
  bool loses_a_link =
      false; ///< a chain whose kerf is not stated: each cut takes a link, and `kerf_mm` is one
  CuttingSetting<std::int64_t> least_offcut_mm;
  CuttingSetting<double> spare;
  CuttingSetting<std::int64_t> sold_in_mm;
  std::vector<std::string> taken;  ///< marks of pieces that earlier plans have taken; `taken-for`
  std::vector<WantedPiece> pieces; ///< in the order of the boats, of their stays and down each stay
  std::vector<UnplannedPiece> unplanned;
  std::vector<StockInHand> stocks; ///< in the order in which they are stated
};

/// A file that states stock.
struct StockFile {
  std::string key;
  std::string name; ///< as it is shown
};

struct SpoolOrder {
  std::vector<LineOrder> lines; ///< that have a piece or a stock
  std::vector<StockFile> files;
};

/// What the boats need and what is in hand.
///
/// Lines of several boats are one when kind, construction, grade and named size are equal, whatever they
/// are called. A record of one name in one file is counted once, however many boats use the file. Of kerf,
/// least offcut and spare that are stated differently for one line the greatest counts. A piece is its cut
/// length and the share `spare`, rounded up to whole millimetres; a chain goes by whole links. A length X
/// is taken as the order list takes it (order_length()); where nobody says about how long it is, and where
/// the cut length is not complete, the piece is not planned. Nor is one that an earlier plan has taken from
/// this stock already, which `cutting` of the line says. Lengths in hand are rounded down.
SpoolOrder spool_order(const std::vector<SpoolBoat>& boats);

/// A nanometre: what a sum of a few lengths may be off by as floating-point numbers.
inline constexpr double millimetre_noise = 1e-6;

inline std::int64_t up_to_millimetres(Length length) {
  return static_cast<std::int64_t>(std::ceil(length.millimetres() - millimetre_noise));
}

inline std::int64_t down_to_millimetres(Length length) {
  return static_cast<std::int64_t>(std::floor(length.millimetres() + millimetre_noise));
}

/// What is kept of a piece in the stock that it was taken from, so that it is not taken twice: the first 12
/// digits of the SHA-256 of boat, piece and length. A piece that becomes longer or shorter is another.
std::string piece_mark(const WantedPiece& piece);

/// One piece with the share `spare` added, or why it can not be planned.
std::variant<WantedPiece, UnplannedPiece> wanted_piece(const SpoolBoat& boat, const Piece& piece,
                                                       double spare);

/// How many pieces a record of stock states; not stated: one.
std::int64_t pieces_stated(const Record& stock);

/// How many pieces of a stock are made up as they are into stays that name it. Nothing is cut from those,
/// and the record goes on counting them: the stays name it still.
std::int64_t pieces_made_up(const Derived& derived, const std::string& stock);

} // namespace sheerpole
