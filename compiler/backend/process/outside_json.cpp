#include "backend/process/outside_json.hpp"

#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

#include <algorithm>
#include <vector>

namespace sheerpole {

namespace {

/// The deepest nesting that the brackets can come to. Looked at before anything is kept, since a level
/// takes one byte to write and many to hold.
int depth_of(std::string_view text) {
  int depth = 0;
  int deepest = 0;
  bool in_string = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const char c = text[i];
    if (in_string) {
      if (c == '\\')
        ++i;
      in_string = c != '"';
    } else if (c == '"') {
      in_string = true;
    } else if (c == '[' || c == '{') {
      deepest = std::max(deepest, ++depth);
    } else if (c == ']' || c == '}') {
      --depth;
    }
  }
  return deepest;
}

/// `line 3, column 7`
std::string place_of(std::string_view text, std::size_t byte) {
  const std::string_view before = text.substr(0, std::min(text.size(), byte > 0 ? byte - 1 : 0));
  const auto line = std::count(before.begin(), before.end(), '\n') + 1;
  const std::size_t start = before.rfind('\n') + 1; // npos + 1 is 0
  return "line " + std::to_string(line) + ", column " + std::to_string(before.size() - start + 1);
}

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

Result<nlohmann::json, std::string> read_json(std::string_view text) {
  if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
    return std::string("it is empty");
  if (depth_of(text) > deepest_json)
    return "it is nested more than " + std::to_string(deepest_json) + " deep";
  try {
    return nlohmann::json::parse(text);
  } catch (const nlohmann::json::parse_error& error) {
    return "it breaks off or goes astray at " + place_of(text, error.byte);
  } catch (const nlohmann::json::out_of_range&) {
    return std::string("it holds a number beyond all that a computer counts with");
  }
}

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
