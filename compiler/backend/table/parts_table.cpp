#include "backend/source_words.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"

namespace sheerpole {

namespace {

std::string length_or_range(const Part& part) {
  if (part.length)
    return format_tenths(Tenths::of(part.length->value));
  if (part.shortest && part.longest)
    return format_tenths(Tenths::of(part.shortest->value)) + " to " +
           format_tenths(Tenths::of(part.longest->value));
  return {};
}

/// "jaw (gap 12.0 mm, pin 1/2 in)"
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

std::string source_of(const Part& part) {
  if (part.length)
    return source_words(part.length->provenance);
  if (!part.shortest || !part.longest)
    return {};
  const std::string shortest = source_words(part.shortest->provenance);
  const std::string longest = source_words(part.longest->provenance);
  return shortest == longest ? shortest : shortest + " / " + longest;
}

} // namespace

Table parts_table(const CheckedRig& checked) {
  Table table{.title = "Parts",
              .columns = {{"kind"},
                          {"part"},
                          {"length or range mm", true},
                          {"upper end"},
                          {"lower end"},
                          {"source of the length"}},
              .rows = {},
              .notes = {}};
  for (const Part& part : checked.rig().parts)
    table.rows.push_back({part.kind, part.name, length_or_range(part), end_words(part.upper),
                          end_words(part.lower), source_of(part)});
  return table;
}

} // namespace sheerpole
