#include "backend/source_words.hpp"

namespace sheerpole {

std::string source_words(const Provenance& provenance) {
  std::string words(name_of(provenance.source_class));
  if (!provenance.note.empty())
    words += ", " + provenance.note;
  if (!provenance.written.empty() && !provenance.written.ends_with("mm"))
    words += ", written " + provenance.written;
  // For an assumed number the class says it all.
  if (provenance.source_class == SourceClass::assumed || provenance.assumptions.empty())
    return words;
  words += "; rests on assumed ";
  for (std::size_t i = 0; i < provenance.assumptions.size(); ++i)
    words += (i == 0 ? "" : ", ") + provenance.assumptions[i];
  return words;
}

std::string_view route_words(LengthRoute route) {
  switch (route) {
  case LengthRoute::reading:
    return "a reading";
  case LengthRoute::stated:
    return "the stated length";
  case LengthRoute::path:
    return "the points of its path";
  case LengthRoute::unknown:
    break;
  }
  return "not known as a number";
}

std::string_view name_of(LengthRoute route) {
  switch (route) {
  case LengthRoute::reading:
    return "reading";
  case LengthRoute::stated:
    return "stated";
  case LengthRoute::path:
    return "path";
  case LengthRoute::unknown:
    break;
  }
  return "unknown";
}

} // namespace sheerpole
