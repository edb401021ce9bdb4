#include "backend/part_words.hpp"

#include "backend/source_words.hpp"
#include "backend/tenths.hpp"

namespace sheerpole {

std::string length_or_range(const Part& part) {
  if (part.length)
    return format_tenths(Tenths::of(part.length->value));
  if (part.shortest && part.longest)
    return format_tenths(Tenths::of(part.shortest->value)) + " to " +
           format_tenths(Tenths::of(part.longest->value));
  return {};
}

std::string end_words(const End& end) {
  std::string words = end.type;
  for (std::size_t i = 0; i < end.dimensions.size(); ++i) {
    const EndDimension& dimension = end.dimensions[i];
    words += i == 0 ? " (" : ", ";
    words += dimension.name + " " +
             (dimension.text.empty() ? format_tenths(Tenths::of(dimension.length.value)) + " mm"
                                     : dimension.text);
  }
  return end.dimensions.empty() ? words : words + ")";
}

std::string length_source(const Part& part) {
  if (part.length)
    return source_words(part.length->provenance);
  if (!part.shortest || !part.longest)
    return {};
  const std::string shortest = source_words(part.shortest->provenance);
  const std::string longest = source_words(part.longest->provenance);
  return shortest == longest ? shortest : shortest + " / " + longest;
}

} // namespace sheerpole
