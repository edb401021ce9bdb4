#pragma once

#include "model/provenance.hpp"
#include "model/sourced.hpp"
#include "model/splice.hpp"
#include "units/dimension.hpp"
#include "units/force.hpp"
#include "units/length.hpp"

#include <string>
#include <string_view>

namespace sheerpole {

/// `cap-shroud "Cap shroud"`; the name alone where there is no title.
std::string titled(const std::string& name, const std::string& title);

/// `(written 7 3/8 in; maker, certificate 1142; assumes contraction of long-bury)`.
std::string print_provenance(const Provenance& provenance);

/// One line: `  length: 82.000 mm +- 2.000 mm (written 82 mm +- 2 mm; measured)`.
std::string print_line(std::string_view indent, std::string_view name, const Sourced<Length>& length);
/// One line, in kN.
std::string print_line(std::string_view indent, std::string_view name, const Sourced<Force>& force);
/// One line, a plain number: `0.08`.
std::string print_line(std::string_view indent, std::string_view name, const Sourced<double>& number);

/// One line, a length or diameters of the rope: `72 d`.
std::string print_line(std::string_view indent, std::string_view name, const Sourced<RopeMeasure>& measure);
/// One line, millimetres for a length, else the coherent SI unit.
std::string print_line(std::string_view indent, std::string_view name, const Sourced<Quantity>& quantity);

/// Millimetres with three decimals: finer than anything that is cut, coarse enough to be the same
/// everywhere.
std::string print_millimetres(Length length);

} // namespace sheerpole
