#include "calculate/rope_measure_term.hpp"

#include "calculate/computed_provenance.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

namespace sheerpole {

Term rope_measure_term(std::string name, const Sourced<RopeMeasure>& measure,
                       const LineMaterial& material) {
  Term term{std::move(name), measure.value.at(material.diameter.value), "", measure.provenance};
  if (measure.value.in_diameters) {
    term.how = format_number(measure.value.amount) + " d x " + length_text(material.diameter.value);
    add_assumptions(term.provenance.assumptions, material.diameter.provenance.assumptions);
  }
  return term;
}

} // namespace sheerpole
