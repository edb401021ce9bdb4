#pragma once

#include "model/field.hpp"
#include "model/ids.hpp"
#include "model/particular.hpp"
#include "model/sourced.hpp"
#include "units/length.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// A length that is stated either as such or in diameters of the rope at hand.
struct RopeMeasure {
  double amount = 0.0; ///< metres, or diameters
  bool in_diameters = false;
  Length at(Length rope_diameter) const {
    return in_diameters ? rope_diameter * amount : Length::metres(amount);
  }
};

constexpr auto fields_of(const RopeMeasure*) {
  using enum FieldRole;
  return std::tuple(field("amount", "", &RopeMeasure::amount, geometry),
                    field("in_diameters", "", &RopeMeasure::in_diameters, geometry));
}
static_assert(all_members_are_listed<RopeMeasure>());

/// How an end of a rope is made. What is not stated stays empty and makes the cut a draft.
struct Splice {
  std::string name;
  std::string title;
  Sourced<RopeMeasure> bury;
  std::optional<Sourced<RopeMeasure>>
      eye_allowance; ///< rope used beyond the bearing; else wrap or geometry
  std::optional<Sourced<RopeMeasure>> tail_to_trim;
  std::optional<Sourced<double>> contraction; ///< as a fraction of the bury
  std::optional<Sourced<double>> recovered;   ///< fraction of the contraction given back by pre-tensioning
  std::string taper;                          ///< free text for the bench
  std::vector<Particular> particulars = {};   ///< the rest of what is stated
  Span place;
};

constexpr auto fields_of(const Splice*) {
  using enum FieldRole;
  return std::tuple(field("name", "", &Splice::name, identity),
                    field("title", "", &Splice::title, identity),
                    field("bury", "bury", &Splice::bury, geometry),
                    field("eye_allowance", "eye-allowance", &Splice::eye_allowance, geometry),
                    field("tail_to_trim", "tail-to-trim", &Splice::tail_to_trim, geometry),
                    field("contraction", "contraction", &Splice::contraction, geometry),
                    field("recovered", "recovered", &Splice::recovered, geometry),
                    field("taper", "taper", &Splice::taper, evidence),
                    field("particulars", "", &Splice::particulars, geometry),
                    field("place", "", &Splice::place, identity));
}
static_assert(all_members_are_listed<Splice>());

} // namespace sheerpole
