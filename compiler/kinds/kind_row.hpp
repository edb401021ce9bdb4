#pragma once

#include "kinds/property_row.hpp"

#include <span>
#include <string_view>

namespace sheerpole {

/// One kind of declaration, as data.
struct KindRow {
  std::string_view name;
  Category category = Category::none;
  std::string_view group;       ///< heading on the reference page: "Hardware"
  bool named = true;            ///< must have a name
  Category of = Category::none; ///< what may stand after `of`
  bool free_properties = false; ///< `points`: property names are the user's own
  bool holds_items = false;     ///< `stack`
  bool adjuster = false;        ///< part with a range that a stack must set
  bool boat_fitting = false;    ///< part that belongs to the boat; adds no length
  std::span<const PropertyRow> properties = {};
  std::span<const PropertyRow> settings = {};    ///< part: what its item in a stack may state
  std::span<const std::string_view> blocks = {}; ///< kinds of the blocks inside
  std::string_view help;
};

/// All kinds, in the order of the reference page.
std::span<const KindRow> all_kinds();

const KindRow* find_kind(std::string_view name);

const PropertyRow* find_property(std::span<const PropertyRow> rows, std::string_view name);

/// One type of end, with the dimensions it may have.
struct EndRow {
  std::string_view name;
  std::span<const PropertyRow> dimensions;
  std::string_view help;
};

std::span<const EndRow> all_ends();

const EndRow* find_end(std::string_view name);

/// The settings of the word `line` in a stack.
std::span<const PropertyRow> line_settings();

} // namespace sheerpole
