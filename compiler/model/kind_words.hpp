#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace sheerpole {

/// The kinds of hardware; a test ties them to the table of kinds.
enum class PartKind : std::uint8_t {
  tang,
  chainplate,
  toggle,
  terminal,
  thimble,
  soft_eye,
  deadeye,
  link,
  shackle,
  hook,
  insulator,
  junction,
  turnbuckle,
  lashing,
  tackle,
  lever,
  cylinder,
  hole_adjuster,
  foil,
  cover,
  bush,
  pin
};

/// Their words in the language, by the enumeration.
inline constexpr std::array<std::string_view, 22> part_kind_names{
    "tang",     "chainplate",    "toggle",    "terminal", "thimble",    "soft-eye", "deadeye", "link",
    "shackle",  "hook",          "insulator", "junction", "turnbuckle", "lashing",  "tackle",  "lever",
    "cylinder", "hole-adjuster", "foil",      "cover",    "bush",       "pin"};
static_assert(part_kind_names.size() == static_cast<std::size_t>(PartKind::pin) + 1);

constexpr const auto& names_of(const PartKind*) {
  return part_kind_names;
}

/// The types of ends; a test ties them to the table of kinds.
enum class EndType : std::uint8_t {
  unstated,
  jaw,
  eye,
  stud,
  socket,
  rope_seat,
  hook,
  wire_socket,
  tee,
  slot,
  holes
};

/// Their words in the language, by the enumeration; the first is empty.
inline constexpr std::array<std::string_view, 11> end_type_names{
    "", "jaw", "eye", "stud", "socket", "rope-seat", "hook", "wire-socket", "tee", "slot", "holes"};
static_assert(end_type_names.size() == static_cast<std::size_t>(EndType::holes) + 1);

constexpr const auto& names_of(const EndType*) {
  return end_type_names;
}

/// The kinds of records; the same.
enum class RecordKind : std::uint8_t {
  shop,
  stock,
  survey,
  tape,
  test_splice,
  creep_rate,
  tension_reading,
  take_up,
  uncertainty,
  cutting,
  fit,
  load_screening,
  in_hand,
  cord,
  dry_fit,
  tension_wish,
  mast_wish,
  layer, ///< what a layer states of itself
  spar_station
};

inline constexpr std::array<std::string_view, 19> record_kind_names{
    "shop",    "stock",        "survey",    "tape",  "test-splice",    "creep-rate", "tension-reading",
    "take-up", "uncertainty",  "cutting",   "fit",   "load-screening", "in-hand",    "cord",
    "dry-fit", "tension-wish", "mast-wish", "layer", "spar-station"};
static_assert(record_kind_names.size() == static_cast<std::size_t>(RecordKind::spar_station) + 1);

constexpr const auto& names_of(const RecordKind*) {
  return record_kind_names;
}

/// How a stay was measured.
enum class ReadingMethod : std::uint8_t { unstated, tape, messenger, old_stay, laser };

inline constexpr std::array<std::string_view, 5> reading_method_names{"", "tape", "messenger", "old-stay",
                                                                      "laser"};
static_assert(reading_method_names.size() == static_cast<std::size_t>(ReadingMethod::laser) + 1);

constexpr const auto& names_of(const ReadingMethod*) {
  return reading_method_names;
}

/// What a spar is.
enum class SparSort : std::uint8_t { unstated, mast, mizzen, topmast, bowsprit, boomkin, gaff, boom };

inline constexpr std::array<std::string_view, 8> spar_sort_names{"",         "mast",    "mizzen", "topmast",
                                                                 "bowsprit", "boomkin", "gaff",   "boom"};
static_assert(spar_sort_names.size() == static_cast<std::size_t>(SparSort::boom) + 1);

/// Whether it stands: a mast, a mizzen or a topmast.
constexpr bool is_standing(SparSort sort) {
  return sort == SparSort::mast || sort == SparSort::mizzen || sort == SparSort::topmast;
}

constexpr const auto& names_of(const SparSort*) {
  return spar_sort_names;
}

/// What a dimension of an end is; one name may stand in ends of several types. A test ties them to the
/// table of ends.
enum class EndDimensionName : std::uint8_t {
  gap,
  depth,
  pin,
  outside,
  grip,
  split_pin,
  hole,
  thickness,
  width,
  edge,
  thread,
  hand,
  engaged,
  diameter,
  throat,
  edge_radius,
  opening,
  construction,
  size,
  inserted,
  neck,
  head,
  length,
  count
};

inline constexpr std::array<std::string_view, 24> end_dimension_names{
    "gap",     "depth",        "pin",    "outside",  "grip",    "split-pin", "hole",   "thickness",
    "width",   "edge",         "thread", "hand",     "engaged", "diameter",  "throat", "edge-radius",
    "opening", "construction", "size",   "inserted", "neck",    "head",      "length", "count"};
static_assert(end_dimension_names.size() == static_cast<std::size_t>(EndDimensionName::count) + 1);

constexpr const auto& names_of(const EndDimensionName*) {
  return end_dimension_names;
}

/// What an entry of the inspection log marks a thing as.
enum class InspectionCondition : std::uint8_t { unstated, good, watch, renew, not_accessible };

inline constexpr std::array<std::string_view, 5> inspection_condition_names{"", "good", "watch", "renew",
                                                                            "not-accessible"};
static_assert(inspection_condition_names.size() ==
              static_cast<std::size_t>(InspectionCondition::not_accessible) + 1);

constexpr const auto& names_of(const InspectionCondition*) {
  return inspection_condition_names;
}

/// Which way a spar is lowered.
enum class LoweredTowards : std::uint8_t { unstated, aft, forward };

inline constexpr std::array<std::string_view, 3> lowered_towards_names{"", "aft", "forward"};
static_assert(lowered_towards_names.size() == static_cast<std::size_t>(LoweredTowards::forward) + 1);

constexpr const auto& names_of(const LoweredTowards*) {
  return lowered_towards_names;
}

/// How far a piece is, in the order in which it comes about.
enum class PieceStage : std::uint8_t { unstated, cut, made, fitted, settled };

inline constexpr std::array<std::string_view, 5> piece_stage_names{"", "cut", "made", "fitted", "settled"};
static_assert(piece_stage_names.size() == static_cast<std::size_t>(PieceStage::settled) + 1);

constexpr const auto& names_of(const PieceStage*) {
  return piece_stage_names;
}

/// An enumeration whose enumerators stand for words of the language. The word of what is not stated is
/// empty.
template <class Word>
concept NamedWord = requires {
  names_of(static_cast<const Word*>(nullptr));
};

template <NamedWord Word>
constexpr std::string_view name_of(Word word) {
  return names_of(static_cast<const Word*>(nullptr))[static_cast<std::size_t>(word)];
}

/// What a word of the language stands for; nothing when it is none of them.
template <NamedWord Word>
constexpr std::optional<Word> find_word(std::string_view name) {
  const auto& names = names_of(static_cast<const Word*>(nullptr));
  for (std::size_t i = 0; i < names.size(); ++i)
    if (names[i] == name)
      return static_cast<Word>(i);
  return std::nullopt;
}

} // namespace sheerpole
