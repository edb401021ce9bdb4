#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
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

constexpr std::string_view name_of(PartKind kind) {
  return part_kind_names[static_cast<std::size_t>(kind)];
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

constexpr std::string_view name_of(EndType type) {
  return end_type_names[static_cast<std::size_t>(type)];
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
  dry_fit
};

inline constexpr std::array<std::string_view, 14> record_kind_names{
    "shop",    "stock",       "survey",  "tape", "test-splice",    "creep-rate", "tension-reading",
    "take-up", "uncertainty", "cutting", "fit",  "load-screening", "in-hand",    "dry-fit"};
static_assert(record_kind_names.size() == static_cast<std::size_t>(RecordKind::dry_fit) + 1);

constexpr std::string_view name_of(RecordKind kind) {
  return record_kind_names[static_cast<std::size_t>(kind)];
}

/// How a stay was measured.
enum class ReadingMethod : std::uint8_t { unstated, tape, messenger, old_stay, laser };

inline constexpr std::array<std::string_view, 5> reading_method_names{"", "tape", "messenger", "old-stay",
                                                                      "laser"};
static_assert(reading_method_names.size() == static_cast<std::size_t>(ReadingMethod::laser) + 1);

constexpr std::string_view name_of(ReadingMethod method) {
  return reading_method_names[static_cast<std::size_t>(method)];
}

/// What a spar is.
enum class SparSort : std::uint8_t { unstated, mast, mizzen, topmast, bowsprit, boomkin, gaff, boom };

inline constexpr std::array<std::string_view, 8> spar_sort_names{"",         "mast",    "mizzen", "topmast",
                                                                 "bowsprit", "boomkin", "gaff",   "boom"};
static_assert(spar_sort_names.size() == static_cast<std::size_t>(SparSort::boom) + 1);

constexpr std::string_view name_of(SparSort sort) {
  return spar_sort_names[static_cast<std::size_t>(sort)];
}

} // namespace sheerpole
