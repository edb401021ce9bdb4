#include "calculate/strength/force_text.hpp"

#include "units/format_length.hpp"

namespace sheerpole {

std::string force_text(Force force) {
  if (force < Force::kilonewtons(1.0) && force > Force::kilonewtons(-1.0))
    return format_fixed(force.newtons(), 0) + " N";
  std::string text = format_fixed(force.kilonewtons(), 2);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.')
    text.pop_back();
  return text + " kN";
}

std::string force_text(const Sourced<Force>& force) {
  const Provenance& provenance = force.provenance;
  std::string source(name_of(provenance.source_class));
  if (!provenance.note.empty())
    source += ", " + provenance.note;
  return force_text(force.value) + " (" + source + ")";
}

std::string times_text(double ratio) {
  return format_fixed(ratio, 2);
}

} // namespace sheerpole
