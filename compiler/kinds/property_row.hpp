#pragma once

#include "units/dimension.hpp"

#include <limits>
#include <span>
#include <string_view>

namespace sheerpole {

/// What a property's value may be.
enum class ValueType {
  quantity,       ///< a number with a unit of `dimension`, or of `other_dimension` when there is one
  quantity_list,  ///< one or several of these, with commas
  number,         ///< a plain number without unit
  count,          ///< a whole number, at least 1
  text,           ///< a string
  text_list,      ///< one or several of these, with commas
  word,           ///< one word, or a string: what a rule holds against what is stated elsewhere
  size,           ///< a named size: "5/16 in"
  thread,         ///< a thread designation: "1/2-20 UNF"
  choice,         ///< one of the words in `choices`
  choice_list,    ///< one or several of them, with commas
  reference,      ///< the name of a declaration of category `refers_to`
  reference_list, ///< one or several of these, with commas; a stay's name may be followed by its side
  path,           ///< points joined by >
  end,            ///< one end of a part: jaw (gap: 17 mm)
  vector,         ///< (x, y, z) of lengths
  date,           ///< an ISO 8601 date: 2026-05-02
  any             ///< a quantity of any dimension, or a text: the boat's particulars
};

/// What a declaration is to the rest of the compiler.
enum class Category {
  none,
  boat,
  spar,
  points,
  spreader,
  eye_stack,
  material,
  splice,
  part,
  stay,
  stack,
  changes,
  reading,
  state,
  position,
  layer,
  tape,   ///< kept as written, as a record is
  cord,   ///< the same: a messenger cord
  record, ///< shop, stock: kept as written
  limits,
  rule,
  waiver,
  inspection,
  piece, ///< what became of a piece that was made
  point
};

/// The words for a category in a message: "a part", "a splice".
std::string_view describe(Category category);

enum class Need { optional, required };

/// One property of a kind, of an end, or one setting of an item in a stack.
struct PropertyRow {
  std::string_view name;
  ValueType type = ValueType::text;
  Need need = Need::optional;
  Dimension dimension = {};
  Dimension other_dimension = {}; ///< a second dimension that is also taken; a plain number means none
  std::span<const std::string_view> choices = {};
  Category refers_to = Category::none;
  double least = -std::numeric_limits<double>::infinity(); ///< inclusive, coherent SI units
  double most = std::numeric_limits<double>::infinity();   ///< inclusive, coherent SI units
  bool or_off = false; ///< the word `off` is taken in place of the value
  /// Nothing is worked out from it, checked or made by it: it stands among the sources and in the survey
  /// report, for whoever reads these.
  bool for_record = false;
  std::string_view example = {};
  std::string_view help = {};
  std::string_view or_word = {}; ///< a word that is taken in place of the value
};

} // namespace sheerpole
