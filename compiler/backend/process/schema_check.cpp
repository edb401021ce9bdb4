#include "backend/process/schema_check.hpp"

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

namespace sheerpole {

namespace {

/// The library says `<root>`, `[files]`, `[0]`, `[name]`.
std::string place_of(const std::vector<std::string>& steps) {
  std::string place;
  for (const std::string& step : steps) {
    const bool in_brackets = step.size() > 2 && step.starts_with('[');
    const bool number = in_brackets && step.find_first_not_of("0123456789", 1) == step.size() - 1;
    if (number)
      place += step;
    else if (in_brackets)
      place += (place.empty() ? "" : ".") + step.substr(1, step.size() - 2);
  }
  return place.empty() ? "the whole" : place;
}

/// What the library says most often, in plain words; the rest as it says it.
std::string words_of(std::string description) {
  constexpr std::string_view missing = "Missing required property ";
  if (description.starts_with(missing))
    return description.substr(missing.size(), description.find('.') - missing.size()) + " is missing";
  if (description.find("'type' constraint") != std::string::npos)
    return "it is of another kind, as a number for a text";
  if (description.find("'pattern' constraint") != std::string::npos)
    return "it holds other signs than agreed";
  if (description.find("exactly one") != std::string::npos)
    return "it says one thing in two ways";
  while (description.ends_with('.'))
    description.pop_back();
  return description;
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
  return SchemaFault{place_of(first.context), words_of(first.description)};
}

} // namespace sheerpole
