#include "calculate/computed_provenance.hpp"

#include <algorithm>

namespace sheerpole {

void add_assumptions(std::vector<std::string>& assumptions, const std::vector<std::string>& more) {
  for (const std::string& name : more)
    if (std::find(assumptions.begin(), assumptions.end(), name) == assumptions.end())
      assumptions.push_back(name);
}

Provenance combine(const std::vector<const Provenance*>& parts, std::string note) {
  Provenance result;
  result.source_class = parts.front()->source_class;
  result.note = std::move(note);
  for (const Provenance* part : parts) {
    if (part->source_class != result.source_class)
      result.source_class = SourceClass::computed;
    if (!result.place)
      result.place = part->place;
    add_assumptions(result.assumptions, part->assumptions);
  }
  return result;
}

} // namespace sheerpole
