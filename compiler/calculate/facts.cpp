#include "calculate/facts.hpp"

#include "calculate/length/length_sum.hpp"
#include "model/fact_name.hpp"

namespace sheerpole {

namespace {

template <class Kind>
std::optional<Sourced<Kind>> as(const std::optional<Sourced<double>>& number) {
  if (!number)
    return std::nullopt;
  Sourced<Kind> result;
  result.value = Kind::from_si(number->value);
  result.provenance = number->provenance;
  if (number->tolerance)
    result.tolerance = Kind::from_si(*number->tolerance);
  result.influences = number->influences;
  return result;
}

} // namespace

std::optional<Sourced<double>> fact_number(const std::vector<Particular>& facts, std::string_view name) {
  const Particular* fact = find_fact(facts, name);
  if (fact == nullptr)
    return std::nullopt;
  Sourced<double> result;
  result.value = fact->value.value.si;
  result.provenance = fact->value.provenance;
  if (fact->value.tolerance)
    result.tolerance = fact->value.tolerance->si;
  result.influences = fact->value.influences;
  return result;
}

std::optional<Sourced<Length>> fact_length(const std::vector<Particular>& facts, std::string_view name) {
  return as<Length>(fact_number(facts, name));
}

std::optional<Sourced<Force>> fact_force(const std::vector<Particular>& facts, std::string_view name) {
  return as<Force>(fact_number(facts, name));
}

std::string fact_text(const std::vector<Particular>& facts, std::string_view name) {
  const Particular* fact = find_fact(facts, name);
  return fact == nullptr ? "" : fact->text;
}

const Record* find_record(const Rig& rig, RecordKind kind, std::string_view name) {
  for (const Record& record : rig.records)
    if (record.kind == kind && record.name == name)
      return &record;
  return nullptr;
}

const Record* last_record_of(const Rig& rig, RecordKind kind, std::string_view of) {
  const Record* result = nullptr;
  for (const Record& record : rig.records)
    if (record.kind == kind && record.of == of)
      result = &record;
  return result;
}

std::optional<Sourced<Force>> line_stiffness(const LineMaterial& material) {
  if (auto stated = fact_force(material.particulars, fact_names.stiffness))
    return stated;
  const auto modulus = fact_number(material.particulars, fact_names.modulus);
  const auto area = fact_number(material.particulars, fact_names.metallic_area);
  if (!modulus || !area)
    return std::nullopt;
  Sourced<Force> result;
  result.value = Force::newtons(modulus->value * area->value);
  result.provenance = combine({&modulus->provenance, &area->provenance}, Derivation::modulus_times_area);
  result.provenance.source_class = SourceClass::computed;
  return result;
}

} // namespace sheerpole
