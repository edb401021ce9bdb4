#pragma once

#include "kinds/property_row.hpp"

#include <span>
#include <string_view>

namespace sheerpole {

/// Whether a declaration has a name, and what the name may be.
enum class Naming {
  must,   ///< a name of its own
  may,    ///< with or without one
  none,   ///< without
  choice, ///< one of `name_choices`; declares nothing
  finding ///< the name of a finding; declares nothing
};

/// One kind of declaration, as data.
struct KindRow {
  std::string_view name;
  Category category = Category::none;
  std::string_view group; ///< heading on the reference page: "Hardware"
  Naming naming = Naming::must;
  std::span<const std::string_view> name_choices = {};
  bool inside = false;          ///< stands in another declaration only
  Category of = Category::none; ///< what may stand after `of`
  bool of_optional = false;
  bool on_spar = false;         ///< `points on mast`
  bool one_side = false;        ///< `stay cap-shroud.port` states one side apart
  bool free_properties = false; ///< `points`: property names are the user's own
  bool holds_items = false;     ///< `stack`
  bool holds_overlays = false;  ///< `layer`: holds declarations that differ from those outside
  bool adjuster = false;        ///< part with a range that a stack must set
  bool boat_fitting = false;    ///< part that belongs to the boat; adds no length
  bool worn = false;            ///< part that sits on the line or in a joint; adds no length
  std::span<const PropertyRow> properties = {};
  std::span<const PropertyRow> settings = {};    ///< part: what its item in a stack may state
  std::span<const std::string_view> blocks = {}; ///< kinds of the blocks inside
  std::string_view help;

  bool declares() const { return naming == Naming::must || naming == Naming::may; }
};

/// All kinds, in the order of the reference page.
std::span<const KindRow> all_kinds();

const KindRow* find_kind(std::string_view name);

const PropertyRow* find_property(std::span<const PropertyRow> rows, std::string_view name);

/// What can be asked of a stay by an `expect` or a `rule`: pin-to-pin, body, cut and so on.
std::span<const std::string_view> stay_quantities();

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
