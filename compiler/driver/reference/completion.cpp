#include "driver/reference/pages.hpp"

#include "kinds/example_unit.hpp"
#include "kinds/kind_row.hpp"
#include "units/thread.hpp"
#include "units/unit.hpp"
#include "wording/language_words.hpp"

#include <nlohmann/json.hpp>

#include <cmath>

namespace sheerpole {

namespace {

using Json = nlohmann::ordered_json;

Json property_json(const PropertyRow& row) {
  Json json;
  json["name"] = row.name;
  json["type"] = type_word(row.type);
  json["value"] = value_words(row);
  json["required"] = row.need == Need::required;
  json["for_record"] = row.for_record;
  json["dimensions"] = Json::array();
  if (row.type == ValueType::quantity || row.type == ValueType::quantity_list) {
    json["dimensions"].push_back(describe(row.dimension));
    if (!row.other_dimension.is_plain_number())
      json["dimensions"].push_back(describe(row.other_dimension));
  }
  json["unit"] = example_unit(row);
  json["least"] = std::isfinite(row.least) ? shown_like_example(row.least, row) : std::string();
  json["most"] = std::isfinite(row.most) ? shown_like_example(row.most, row) : std::string();
  json["choices"] = Json::array();
  for (const std::string_view choice : row.choices)
    json["choices"].push_back(choice);
  json["names"] = row.refers_to == Category::none ? std::string_view() : describe(row.refers_to);
  json["example"] = row.example;
  json["help"] = row.help;
  return json;
}

Json properties_json(std::span<const PropertyRow> rows) {
  Json json = Json::array();
  for (const PropertyRow& row : rows)
    json.push_back(property_json(row));
  return json;
}

Json kind_json(const KindRow& kind) {
  Json json;
  json["name"] = kind.name;
  json["group"] = kind.group;
  json["help"] = kind.help;
  json["is"] = describe(kind.category);
  json["of"] = kind.of == Category::none ? std::string_view() : describe(kind.of);
  json["blocks"] = Json::array();
  for (const std::string_view block : kind.blocks)
    json["blocks"].push_back(block);
  json["properties"] = properties_json(kind.properties);
  json["settings"] = properties_json(kind.settings);
  return json;
}

} // namespace

std::string completion_json() {
  Json json{{"format", "sheerpole-completion"}, {"version", 1}};
  json["language"] = 1;
  json["keywords"] = Json::array();
  for (const Keyword& keyword : keywords())
    json["keywords"].push_back({{"word", keyword.word}, {"help", keyword.help}});
  json["kinds"] = Json::array();
  for (const KindRow& kind : all_kinds())
    json["kinds"].push_back(kind_json(kind));
  json["line_settings"] = properties_json(line_settings());
  json["ends"] = Json::array();
  for (const EndRow& end : all_ends())
    json["ends"].push_back(
        {{"name", end.name}, {"help", end.help}, {"dimensions", properties_json(end.dimensions)}});
  json["units"] = Json::array();
  for (const Unit& unit : all_units())
    json["units"].push_back(
        {{"name", unit.name}, {"dimension", describe(unit.dimension)}, {"help", unit.meaning}});
  json["threads"] = Json::array();
  for (const ThreadRow& thread : known_threads())
    json["threads"].push_back({{"name", thread.designation}, {"help", thread.standard}});
  return json.dump(1) + "\n";
}

} // namespace sheerpole
