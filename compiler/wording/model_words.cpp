#include "wording/model_words.hpp"

#include "units/quantity_text.hpp"
#include "wording/length_phrases.hpp"
#include "wording/say.hpp"

namespace sheerpole {

std::string_view name_of(SourceClass source_class) {
  return source_class == SourceClass::unstated ? "no source given" : word_of(source_class);
}

std::string_view name_of(Part::Role role) {
  switch (role) {
  case Part::Role::boat_fitting:
    return "boat fitting";
  case Part::Role::fixed:
    return "fixed";
  case Part::Role::worn:
    return "worn";
  case Part::Role::adjuster:
    return "adjuster";
  }
  return {};
}

std::string_view words(Derivation derivation) {
  switch (derivation) {
  case Derivation::from_points:
    return "from points";
  case Derivation::no_number_yet:
    return "no number yet";
  case Derivation::mark_on:
    return "mark on the {}: {}";
  case Derivation::on_cord:
    return "cord {}";
  case Derivation::on_cord_at_one_knot:
    return "cord {}, 1 knot";
  case Derivation::on_cord_at_knots:
    return "cord {}, {} knots";
  case Derivation::with_mark:
    return "{}, {}";
  case Derivation::each:
    return "{}";
  case Derivation::from_seat:
    return "from the geometry of the seat";
  case Derivation::hookes_law:
    return "Hooke's law";
  case Derivation::modulus_times_area:
    return "modulus times metallic area";
  case Derivation::of_method_with_headsails:
    return "of the method, for a mast that carries the headsails";
  case Derivation::as_shop_delivers:
    return "as the shop {} delivers it";
  case Derivation::test_splice:
    return "test splice";
  case Derivation::test_splice_on:
    return "test splice of {}";
  case Derivation::test_splice_by:
    return "test splice by {}";
  case Derivation::test_splice_on_by:
    return "test splice of {} by {}";
  case Derivation::shortened_over:
    return "{}: {} to {} over a bury of {}";
  case Derivation::set_to:
    return "{}: {} set to {}";
  }
  return {};
}

std::string note_words(const Provenance& provenance) {
  return provenance.derivation.empty() ? provenance.note : say(provenance.derivation);
}

std::string force_text(const Sourced<Force>& force) {
  std::string source(name_of(force.provenance.source_class));
  if (const std::string note = note_words(force.provenance); !note.empty())
    source += ", " + note;
  return force_text(force.value) + " (" + source + ")";
}

std::string limit_text(const Limits& limits, Limit limit) {
  const StatedLimit* stated = limits.find(limit);
  if (stated != nullptr)
    return stated->value ? stated->provenance.written : "off";
  return row_of(limit).value ? std::string(row_of(limit).written()) : "none stated";
}

DifferenceWords words_of(const Difference& difference) {
  DifferenceWords words{.by = {},
                        .of = difference.subject,
                        .what = difference.property,
                        .was = difference.was,
                        .is = difference.is};
  switch (difference.origin) {
  case Difference::Origin::layer:
    words.by = "layer " + difference.origin_name;
    break;
  case Difference::Origin::sister_ship:
    words.by = "sister ship";
    break;
  case Difference::Origin::command_line:
    words.by = "command line";
    break;
  case Difference::Origin::shop:
    words.by = "shop " + difference.origin_name;
    break;
  }
  if (difference.of_bench_cards()) {
    words.of = "bench cards";
    if (words.is.empty())
      words.is = "millimetres";
    if (!difference.rounded_to.empty())
      words.is += ", rounded to " + difference.rounded_to;
  }
  return words;
}

} // namespace sheerpole
