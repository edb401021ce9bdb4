#include "kinds/kind_row.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "model/rig.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <initializer_list>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace sheerpole::fields_test {

// The words of the language that become fields of a type of the model.
template <HasFields... Types>
std::set<std::string> properties_of() {
  std::set<std::string> result;
  const auto collect = [&]<class Type>(const Type*) {
    std::apply(
        [&](const auto&... fields) {
          ((fields.property.empty() ? void() : void(result.emplace(fields.property))), ...);
        },
        fields_of(static_cast<const Type*>(nullptr)));
  };
  (collect(static_cast<const Types*>(nullptr)), ...);
  return result;
}

std::map<Category, std::set<std::string>> fields_by_category() {
  return {
      {Category::boat, properties_of<Boat>()},
      {Category::spar, properties_of<Spar, Point>()}, // `carries` is kept at each point
      {Category::spreader, properties_of<Spreader>()},
      {Category::material, properties_of<LineMaterial>()},
      {Category::splice, properties_of<Splice>()},
      {Category::part, properties_of<Part, Screw>()},
      {Category::stay, properties_of<Stay>()},
      {Category::reading, properties_of<Reading>()},
      {Category::state, properties_of<State>()},
      {Category::position, properties_of<StatePosition>()},
      {Category::tape, {}},
      {Category::cord, {}},
      {Category::record, {}},
      {Category::rule, properties_of<UserRule>()},
      {Category::waiver, properties_of<Waiver>()},
      {Category::inspection, properties_of<Inspection>()},
      {Category::piece, properties_of<PieceRecord>()},
  };
}

std::set<std::string> facts() {
  std::set<std::string> result;
  for (const FactName& name : all_fact_names())
    result.emplace(name.text);
  return result;
}

TEST(KindsAndFields, EveryPropertyOfAKindIsOneFieldOrOneFact) {
  const auto fields = fields_by_category();
  const auto all_facts = facts();
  std::size_t tried = 0;
  for (const KindRow& kind : all_kinds()) {
    const auto of_kind = fields.find(kind.category);
    if (of_kind ==
        fields.end()) // its properties become limits, layers or items of a stack, with tests of their own
      continue;
    for (const PropertyRow& row : kind.properties) {
      const std::string name(row.name);
      const bool as_field = of_kind->second.contains(name);
      EXPECT_TRUE(as_field || all_facts.contains(name)) << kind.name << ": " << name << " comes to nothing";
      ++tried;
    }
  }
  EXPECT_GT(tried, 300u);
}

TEST(KindsAndFields, EveryFieldAndEveryFactIsAPropertyOfAKind) {
  std::set<std::string> stated;
  for (const KindRow& kind : all_kinds())
    for (const PropertyRow& row : kind.properties)
      stated.emplace(row.name);
  for (const std::string& fact : facts())
    EXPECT_TRUE(stated.contains(fact)) << fact;
  for (const auto& [category, fields] : fields_by_category())
    for (const std::string& field : fields) {
      bool found = false;
      for (const KindRow& kind : all_kinds())
        found = found || ((kind.category == category || (category == Category::spar)) &&
                          find_property(kind.properties, field) != nullptr);
      EXPECT_TRUE(found) << describe(category) << ": " << field;
    }
}

TEST(KindsAndFields, EverySettingOfAnItemIsAField) {
  std::set<std::string> fields = properties_of<StackItem>();
  fields.insert("gap"); // of a lashing: its length as set
  const auto look = [&](std::span<const PropertyRow> settings) {
    for (const PropertyRow& row : settings)
      EXPECT_TRUE(fields.contains(std::string(row.name))) << row.name;
  };
  look(line_settings());
  for (const KindRow& kind : all_kinds())
    look(kind.settings);
}

TEST(KindsAndFields, VisitingMeetsEveryMemberOnceInTheOrderOfTheTable) {
  std::vector<std::string> met;
  Reading reading;
  visit_fields(reading, [&](const auto& field, auto&) { met.emplace_back(field.name); });
  EXPECT_EQ(met.size(), 18u);
  EXPECT_EQ(met.front(), "method");
  EXPECT_NE(std::find(met.begin(), met.end(), "hoist_offset"), met.end());
}

// The words of an enumeration of the model, without the empty one of what is not stated.
template <std::size_t count>
std::set<std::string> words_of(const std::array<std::string_view, count>& names) {
  std::set<std::string> result(names.begin(), names.end());
  result.erase("");
  return result;
}

std::set<std::string> kinds_of(std::initializer_list<Category> categories) {
  std::set<std::string> result;
  for (const KindRow& kind : all_kinds())
    if (std::find(categories.begin(), categories.end(), kind.category) != categories.end())
      result.emplace(kind.name);
  return result;
}

std::set<std::string> choices_of(std::string_view kind, std::string_view property) {
  const auto choices = find_property(find_kind(kind)->properties, property)->choices;
  return {choices.begin(), choices.end()};
}

TEST(KindsAndFields, TheEnumerationsOfTheModelHaveTheWordsOfTheTable) {
  EXPECT_EQ(words_of(part_kind_names), kinds_of({Category::part}));
  EXPECT_EQ(words_of(record_kind_names),
            kinds_of({Category::record, Category::tape, Category::cord, Category::layer}));
  EXPECT_EQ(words_of(reading_method_names), choices_of("reading", "method"));
  EXPECT_EQ(words_of(spar_sort_names), choices_of("spar", "sort"));
  EXPECT_EQ(words_of(second_measure_names), choices_of("limits", "second-measure"));
  std::set<std::string> ends;
  for (const EndRow& row : all_ends())
    ends.emplace(row.name);
  EXPECT_EQ(words_of(end_type_names), ends);
  std::set<std::string> dimensions;
  for (const EndRow& row : all_ends())
    for (const PropertyRow& dimension : row.dimensions)
      dimensions.emplace(dimension.name);
  EXPECT_EQ(words_of(end_dimension_names), dimensions);
  EXPECT_EQ(words_of(inspection_condition_names), choices_of("finding", "condition"));
  // An enumerator and its word stand at one place of the two lists.
  EXPECT_EQ(name_of(PartKind::soft_eye), "soft-eye");
  EXPECT_EQ(name_of(PartKind::hole_adjuster), "hole-adjuster");
  EXPECT_EQ(name_of(EndType::wire_socket), "wire-socket");
  EXPECT_EQ(name_of(RecordKind::load_screening), "load-screening");
  EXPECT_EQ(name_of(RecordKind::cord), "cord");
  EXPECT_EQ(name_of(ReadingMethod::old_stay), "old-stay");
  EXPECT_EQ(name_of(EndDimensionName::split_pin), "split-pin");
  EXPECT_EQ(name_of(EndDimensionName::edge_radius), "edge-radius");
  EXPECT_EQ(name_of(EndDimensionName::inserted), "inserted");
  EXPECT_EQ(name_of(InspectionCondition::not_accessible), "not-accessible");
}

TEST(KindsAndFields, AWordIsFoundByItsNameAndNoOtherIs) {
  for (const std::string_view name : part_kind_names)
    EXPECT_EQ(name_of(find_word<PartKind>(name).value()), name);
  EXPECT_EQ(find_word<EndType>(""), EndType::unstated);
  EXPECT_EQ(find_word<PartKind>(""), std::nullopt);
  EXPECT_EQ(find_word<PartKind>("Toggle"), std::nullopt);
}

} // namespace sheerpole::fields_test
