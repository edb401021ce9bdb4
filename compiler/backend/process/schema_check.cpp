#include "backend/process/schema_check.hpp"

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

namespace sheerpole {

namespace {

/// The library says `<root>`, `["files"]`, `[0]`.
std::string place_of(const std::vector<std::string>& steps) {
  std::string place;
  for (const std::string& step : steps) {
    if (step == "<root>")
      continue;
    if (step.size() > 4 && step.starts_with("[\""))
      place += (place.empty() ? "" : ".") + step.substr(2, step.size() - 4);
    else
      place += step;
  }
  return place.empty() ? "the whole" : place;
}

} // namespace

std::optional<SchemaFault> schema_fault(const nlohmann::json& document, std::string_view schema) {
  using valijson::adapters::NlohmannJsonAdapter;
  const nlohmann::json schema_document = nlohmann::json::parse(schema);
  valijson::Schema rules;
  valijson::SchemaParser(valijson::SchemaParser::kDraft7)
      .populateSchema(NlohmannJsonAdapter(schema_document), rules);
  valijson::ValidationResults results;
  valijson::Validator validator(valijson::Validator::kStrongTypes);
  if (validator.validate(rules, NlohmannJsonAdapter(document), &results))
    return std::nullopt;
  valijson::ValidationResults::Error first; // the innermost; those around it say only that it is there
  results.popError(first);
  while (first.description.ends_with('.'))
    first.description.pop_back();
  return SchemaFault{place_of(first.context), first.description};
}

} // namespace sheerpole
