#pragma once

#include "model/limits.hpp"
#include "model/part.hpp"
#include "model/provenance.hpp"
#include "model/records.hpp"
#include "model/rig.hpp"
#include "model/side.hpp"
#include "units/force.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// "measured"; "no source given" for unstated.
std::string_view name_of(SourceClass source_class);

/// "boat fitting", "fixed", "worn", "adjuster".
std::string_view name_of(Part::Role role);

/// What is said of a number beside its class: the note of the file, `certificate 1142`, or what a
/// calculation made it of, "from points". May be empty.
std::string note_words(const Provenance& provenance);

/// What a spar is called in a sentence, without an article: its title, "mizzen mast", else its name in
/// words.
std::string spar_words(const Spar& spar);

/// What a stay is called: its title, else its name without side. A title that stays of several masts share
/// is said with the mast: "Cap shroud, mizzen".
std::string titled(const Rig& rig, const Stay& stay);

/// What a place is called in a sentence, without an article: its title or its name in words, with its side,
/// and with its mast where there are several: "masthead of the mizzen", "cap chainplate, port".
std::string place_words(const Rig& rig, const Point& point);

/// Where an end of a stay is: "at the main masthead", "at the stem"; without a path "aloft" or "below".
std::string where_words(const Rig& rig, const Stay& stay, WhichEnd where);

/// What a tape or a cord goes between: "from the middle of one pin to the middle of the other", "from where
/// the eye bears on the mast to the middle of the pin".
std::string measured_between(const Rig& rig, const Stay& stay);

/// The end of a stay in one word, for a drawing: "aloft", "deck", "plate" at a junction, "spar".
std::string_view end_word(const Rig& rig, const Stay& stay, WhichEnd where);

/// The legs of each junction that is balanced, a sentence each: "At the plate: bridle-leg.port at 42 deg
/// from the line of forestay carries 0.71 of its tension, …".
std::vector<std::string> junction_sentences(const Rig& rig);

/// What becomes of each mast that a stay holds when it parts, a sentence each: "The mizzen is held aft by
/// nothing else above half of its height and falls forward." Nothing without a path or a mast.
std::vector<std::string> parting_words(const Rig& rig, StayId stay);

/// A force with where it is from: "18 kN (assumed, from the designer's sheet)".
std::string force_text(const Sourced<Force>& force);

/// A threshold as written in the file or in the table: "0.5 mm"; "off"; "none stated".
std::string limit_text(const Limits& limits, Limit limit);

/// A value stated over another, as every table has it.
struct DifferenceWords {
  std::string by;   ///< "layer fitted", "sister ship", "command line", "shop loft"
  std::string of;   ///< "plate-a.port"; "bench cards" for what a shop says of its papers
  std::string what; ///< "place"
  std::string was;  ///< as written; empty when nothing was stated
  std::string is;   ///< as written; of bench cards "inches, rounded to 1/32 in"
};
DifferenceWords words_of(const Difference& difference);

} // namespace sheerpole
