#include "calculate/strength/force_text.hpp"

namespace sheerpole {

std::string force_text(const Sourced<Force>& force) {
  const Provenance& provenance = force.provenance;
  std::string source(name_of(provenance.source_class));
  if (!provenance.note.empty())
    source += ", " + provenance.note;
  return force_text(force.value) + " (" + source + ")";
}

} // namespace sheerpole
