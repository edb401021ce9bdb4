#include "wording/print_sourced.hpp"

#include "units/format_length.hpp"
#include "wording/model_words.hpp"

namespace sheerpole {

namespace {

std::string line(std::string_view indent, std::string_view name, const std::string& value,
                 const std::string& tolerance, const Provenance& provenance) {
  std::string result(indent);
  result += name;
  result += ": " + value;
  if (!tolerance.empty())
    result += " +- " + tolerance;
  return result + " " + print_provenance(provenance) + "\n";
}

std::string print_kilonewtons(Force force) {
  return format_fixed(force.kilonewtons(), 3) + " kN";
}

} // namespace

std::string print_millimetres(Length length) {
  return format_millimetres(length, 3) + " mm";
}

std::string titled(const std::string& name, const std::string& title) {
  return title.empty() ? name : name + " \"" + title + "\"";
}

std::string print_provenance(const Provenance& provenance) {
  std::string result = "(";
  if (!provenance.written.empty())
    result += "written " + provenance.written + "; ";
  result += name_of(provenance.source_class);
  if (const std::string note = note_words(provenance); !note.empty())
    result += ", " + note;
  for (std::size_t i = 0; i < provenance.assumptions.size(); ++i)
    result += (i == 0 ? "; assumes " : ", ") + provenance.assumptions[i];
  return result + ")";
}

std::string print_line(std::string_view indent, std::string_view name, const Sourced<Length>& length) {
  return line(indent, name, print_millimetres(length.value),
              length.tolerance ? print_millimetres(*length.tolerance) : "", length.provenance);
}

std::string print_line(std::string_view indent, std::string_view name, const Sourced<Force>& force) {
  return line(indent, name, print_kilonewtons(force.value),
              force.tolerance ? print_kilonewtons(*force.tolerance) : "", force.provenance);
}

std::string print_line(std::string_view indent, std::string_view name, const Sourced<double>& number) {
  return line(indent, name, format_number(number.value),
              number.tolerance ? format_number(*number.tolerance) : "", number.provenance);
}

std::string print_line(std::string_view indent, std::string_view name,
                       const Sourced<RopeMeasure>& measure) {
  const auto show = [](const RopeMeasure& one) {
    return one.in_diameters ? format_number(one.amount) + " d"
                            : print_millimetres(Length::metres(one.amount));
  };
  return line(indent, name, show(measure.value), measure.tolerance ? show(*measure.tolerance) : "",
              measure.provenance);
}

std::string print_line(std::string_view indent, std::string_view name, const Sourced<Quantity>& quantity) {
  if (quantity.value.dimension == dimension::length) {
    Sourced<Length> length{Length::from_si(quantity.value.si), quantity.provenance, std::nullopt};
    if (quantity.tolerance)
      length.tolerance = Length::from_si(quantity.tolerance->si);
    return print_line(indent, name, length);
  }
  Sourced<double> number{quantity.value.si, quantity.provenance, std::nullopt};
  if (quantity.tolerance)
    number.tolerance = quantity.tolerance->si;
  return print_line(indent, name, number);
}

} // namespace sheerpole
