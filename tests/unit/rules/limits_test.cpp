#include "diagnostics/catalogue.hpp"
#include "kinds/kind_row.hpp"
#include "limits/limit.hpp"
#include "rules/check_table.hpp"
#include "units/parse_quantity.hpp"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace sheerpole::limits_test {
namespace {

TEST(LimitKinds, ReadEveryThresholdByItsOwnUnitOrAsOff) {
  const KindRow* kind = find_kind("limits");
  ASSERT_NE(kind, nullptr);
  ASSERT_EQ(kind->properties.size(), all_limits().size() + 1);
  for (const PropertyRow& property : kind->properties) {
    if (property.name == "second-measure") // a word and no threshold
      continue;
    const LimitRow* row = find_limit(property.name);
    ASSERT_NE(row, nullptr) << property.name;
    EXPECT_EQ(property.type, row->is_count ? ValueType::number : ValueType::quantity) << property.name;
    EXPECT_EQ(property.dimension, row->dimension) << property.name;
    EXPECT_EQ(property.least, 0.0) << property.name;
    EXPECT_TRUE(property.or_off) << property.name;
    const auto example = parse_quantity(property.example);
    ASSERT_TRUE(example.ok() || row->is_count) << property.name << ": " << property.example;
    if (example.ok()) {
      EXPECT_EQ(example.value().dimension, property.dimension) << property.name;
    }
  }
}

TEST(Limits, AreWrittenAsTheyAreUsed) {
  for (const LimitRow& row : all_limits()) {
    if (!row.value) {
      EXPECT_EQ(row.limit_class, LimitClass::owner) << row.name;
      EXPECT_TRUE(row.written().empty());
      continue;
    }
    const auto read = parse_quantity(row.example);
    ASSERT_TRUE(read.ok()) << row.name << ": " << row.example;
    EXPECT_NEAR(read.value().si, *row.value, 1e-5 * *row.value) << row.name;
    EXPECT_EQ(read.value().dimension, row.dimension) << row.name;
  }
}

TEST(Limits, HaveEachNameOnceAndACheckThatGoesByThem) {
  std::set<std::string_view> names;
  for (const LimitRow& row : all_limits()) {
    EXPECT_TRUE(names.insert(row.name).second) << row.name;
    EXPECT_FALSE(checks_of(row.limit).empty()) << row.name;
  }
  EXPECT_EQ(checks_of(Limit::pin_play), "pin-loose");
  EXPECT_EQ(checks_of(Limit::break_factor), "factor-low shared-pin-weak");
}

TEST(Limits, AreToldWithTheCheckThatGoesByThem) {
  std::size_t told = 0;
  for (const LimitUse& use : limit_uses()) {
    const CheckRow* check = find_check(use.check);
    ASSERT_NE(check, nullptr) << use.check;
    EXPECT_TRUE(check->limits.contains(use.limit)) << use.check;
    ++told;
  }
  EXPECT_GT(told, limit_count);
}

TEST(Limits, SayWhatDisagreesAndWhoReadIt) {
  for (const LimitRow& row : all_limits()) {
    if (row.limit_class == LimitClass::published || row.limit_class == LimitClass::from_memory) {
      EXPECT_FALSE(row.source.empty()) << row.name;
    }
  }
}

TEST(CheckTable, HasACatalogueEntryForEachCheckAndEachOnce) {
  std::set<std::string_view> slugs;
  for (const CheckRow& row : all_checks()) {
    EXPECT_NE(find_entry(row.slug), nullptr) << row.slug;
    EXPECT_TRUE(slugs.insert(row.slug).second) << row.slug;
    EXPECT_NE(row.run, nullptr) << row.slug;
  }
}

TEST(CheckTable, HoldsTheFiftyWaysOfTheTradeToLoseARig) {
  EXPECT_GE(all_checks().size(), 50u);
}

} // namespace
} // namespace sheerpole::limits_test
