#pragma once

#include "model/field.hpp"
#include "model/kind_words.hpp"
#include "model/line_material.hpp"
#include "model/particular.hpp"
#include "model/sourced.hpp"
#include "source/span.hpp"
#include "units/length.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// A raw measurement of one stay in place. A messenger cord may carry a knot or a mark and no number.
struct Reading {
  ReadingMethod method = ReadingMethod::unstated;
  std::vector<Sourced<Length>> runs;
  std::optional<Sourced<Length>> offset;            ///< hook offset, taken off each run
  std::optional<Sourced<Length>> hoist_offset = {}; ///< added to each run
  std::string tape = {};                            ///< name of the record of the tape; may be empty
  std::optional<MaterialId> old_line = {};          ///< what an old stay is made of
  std::vector<Particular> particulars = {};         ///< pull, temperature, spans, slope
  std::string cord = {};                            ///< name of the record of the cord; may be empty
  std::optional<int> knots = {};                    ///< the tally in the tail of its knot
  std::optional<Sourced<Length>> below_knot = {};   ///< the bearing at the deck from the knot, down
  Length shift = {}; ///< taken to be off by this; nothing but in trials of the uncertainty
  std::string mark;  ///< what marks the length on the cord; may be empty
  std::string date;  ///< ISO 8601; may be empty
  std::string by;    ///< may be empty
  std::string note;  ///< may be empty
  Span place;
  std::vector<Sourced<Length>> cord_lengths = {}; ///< of a cord, as measured on the bench later
  bool counts = false; ///< stated to be the one that counts where readings contradict each other

  /// Whether a cord keeps the length: a knot on a cord that is declared, or a mark in words.
  bool on_cord() const { return !cord.empty() || !mark.empty(); }
  /// The lengths as read, in place or of the cord on the bench; none of a cord that is a mark alone.
  const std::vector<Sourced<Length>>& lengths() const { return runs.empty() ? cord_lengths : runs; }
  /// A cord that carries the length and no number.
  bool is_mark_alone() const { return lengths().empty() && on_cord(); }
  bool says_a_length() const { return !lengths().empty() || on_cord(); }
  /// Whether a second hoist came to the same knot or mark.
  bool same_mark(const Reading& other) const {
    return cord == other.cord && knots == other.knots && mark == other.mark;
  }
};

constexpr auto fields_of(const Reading*) {
  using enum FieldRole;
  return std::tuple(
      field("method", "method", &Reading::method, geometry),
      field("runs", "runs", &Reading::runs, geometry),
      field("offset", "offset", &Reading::offset, geometry),
      field("hoist_offset", "hoist-offset", &Reading::hoist_offset, geometry),
      field("tape", "with", &Reading::tape, geometry),
      field("old_line", "old-line", &Reading::old_line, geometry),
      field("particulars", "", &Reading::particulars, geometry),
      field("cord", "cord", &Reading::cord, geometry), field("knots", "knots", &Reading::knots, geometry),
      field("below_knot", "below-knot", &Reading::below_knot, geometry),
      field("shift", "", &Reading::shift, identity), field("mark", "mark", &Reading::mark, geometry),
      field("cord_lengths", "cord-length", &Reading::cord_lengths, geometry),
      field("counts", "counts", &Reading::counts, geometry),
      field("date", "date", &Reading::date, evidence), field("by", "by", &Reading::by, evidence),
      field("note", "note", &Reading::note, for_record), field("place", "", &Reading::place, identity));
}
static_assert(all_members_are_listed<Reading>());

} // namespace sheerpole
