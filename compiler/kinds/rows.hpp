#pragma once

#include "kinds/kind_row.hpp"

#include <array>
#include <cstddef>

/// How the tables of kinds are written. For the files of this room only.
namespace sheerpole::rows {

/// Lengths on a boat end at 200 m; the bound catches slips of a unit, not big boats.
inline constexpr double longest = 200.0;

inline constexpr std::string_view sides[] = {"port", "starboard"};

/// An optional quantity of any dimension.
constexpr PropertyRow quantity_row(std::string_view name, Dimension dimension, double least,
                                   std::string_view example, std::string_view help) {
  return {.name = name,
          .type = ValueType::quantity,
          .dimension = dimension,
          .least = least,
          .example = example,
          .help = help};
}

constexpr PropertyRow length_row(std::string_view name, Need need, double least, double most,
                                 std::string_view example, std::string_view help) {
  PropertyRow row = quantity_row(name, dimension::length, least, example, help);
  row.need = need;
  row.most = most;
  return row;
}

constexpr PropertyRow text_row(std::string_view name, Need need, std::string_view example,
                               std::string_view help) {
  return {.name = name, .type = ValueType::text, .need = need, .example = example, .help = help};
}

constexpr PropertyRow end_row(std::string_view name, std::string_view example, std::string_view help) {
  return {.name = name, .type = ValueType::end, .example = example, .help = help};
}

constexpr PropertyRow ratio_row(std::string_view name, double least, double most, std::string_view example,
                                std::string_view help) {
  PropertyRow row = quantity_row(name, dimension::number, least, example, help);
  row.most = most;
  return row;
}

constexpr PropertyRow choice_row(std::string_view name, Need need,
                                 std::span<const std::string_view> choices, std::string_view example,
                                 std::string_view help) {
  return {.name = name,
          .type = ValueType::choice,
          .need = need,
          .choices = choices,
          .example = example,
          .help = help};
}

constexpr PropertyRow reference_row(std::string_view name, Need need, Category category,
                                    std::string_view example, std::string_view help) {
  return {.name = name,
          .type = ValueType::reference,
          .need = need,
          .refers_to = category,
          .example = example,
          .help = help};
}

constexpr PropertyRow list_row(std::string_view name, Need need, Category category,
                               std::string_view example, std::string_view help) {
  PropertyRow row = reference_row(name, need, category, example, help);
  row.type = ValueType::reference_list;
  return row;
}

constexpr PropertyRow date_row(std::string_view name, Need need, std::string_view help) {
  return {.name = name, .type = ValueType::date, .need = need, .example = "2026-05-02", .help = help};
}

constexpr PropertyRow force_row(std::string_view name, std::string_view example, std::string_view help) {
  return quantity_row(name, dimension::force, 1.0, example, help);
}

/// Leave to cut to what nobody has read in place. Of the boat or of one stay.
inline constexpr std::string_view cut_sources[] = {"drawing"};
inline constexpr PropertyRow cut_from_row =
    choice_row("cut-from", Need::optional, cut_sources, "drawing",
               "that lines are cut to what is drawn where nothing was read in place; every card says so");
inline constexpr PropertyRow cut_from_reason_row =
    text_row("cut-from-reason", Need::optional, "\"new mast, built to the drawing\"",
             "why it is cut from the drawing; needed with cut-from");

/// A row that is stated for the record alone.
constexpr PropertyRow recorded(PropertyRow row) {
  row.for_record = true;
  return row;
}

/// What a person has to say that fits no other row.
constexpr PropertyRow note_row(std::string_view example, std::string_view help) {
  return recorded(text_row("note", Need::optional, example, help));
}

template <typename Rows>
inline constexpr std::size_t rows_in = std::tuple_size<Rows>::value;
template <std::size_t count>
inline constexpr std::size_t rows_in<PropertyRow[count]> = count;

/// Tables one behind the other, each an array of either sort.
template <typename... Tables>
constexpr std::array<PropertyRow, (rows_in<Tables> + ...)> joined(const Tables&... tables) {
  std::array<PropertyRow, (rows_in<Tables> + ...)> result{};
  std::size_t at = 0;
  const auto add = [&](const auto& table) {
    for (const PropertyRow& row : table)
      result[at++] = row;
  };
  (add(tables), ...);
  return result;
}

} // namespace sheerpole::rows

/// The tables, each in a file of its own.
namespace sheerpole {
std::span<const KindRow> boat_kinds();
std::span<const KindRow> line_kinds();
std::span<const KindRow> part_kinds();
std::span<const KindRow> stay_kinds();
std::span<const KindRow> number_kinds();
std::span<const KindRow> limit_kinds();
std::span<const KindRow> record_kinds();
} // namespace sheerpole
