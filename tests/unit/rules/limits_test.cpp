#include "diagnostics/catalogue.hpp"
#include "kinds/kind_row.hpp"
#include "model/limits.hpp"
#include "rules/check_table.hpp"
#include "units/parse_quantity.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <sstream>
#include <string>

namespace sheerpole::limits_test {
namespace {

TEST(LimitKinds, HaveARowForEveryThresholdAndNoOther) {
  const KindRow* kind = find_kind("limits");
  ASSERT_NE(kind, nullptr);
  ASSERT_EQ(kind->properties.size(), all_limits().size());
  for (std::size_t i = 0; i < all_limits().size(); ++i) {
    EXPECT_EQ(kind->properties[i].name, all_limits()[i].name);
    EXPECT_EQ(kind->properties[i].dimension, all_limits()[i].dimension) << all_limits()[i].name;
    EXPECT_EQ(kind->properties[i].help, all_limits()[i].meaning);
    EXPECT_TRUE(kind->properties[i].or_off);
  }
}

TEST(Limits, AreWrittenAsTheyAreUsed) {
  for (const LimitRow& row : all_limits()) {
    if (!row.value) {
      EXPECT_EQ(row.limit_class, LimitClass::owner) << row.name;
      EXPECT_TRUE(row.written.empty());
      continue;
    }
    const auto read = parse_quantity(row.written);
    ASSERT_TRUE(read.ok()) << row.name << ": " << row.written;
    EXPECT_NEAR(read.value().si, *row.value, 1e-5 * *row.value) << row.name;
    EXPECT_EQ(read.value().dimension, row.dimension) << row.name;
  }
}

TEST(Limits, NameChecksThatThereAreAndEveryNameOnce) {
  std::set<std::string_view> names;
  for (const LimitRow& row : all_limits()) {
    EXPECT_TRUE(names.insert(row.name).second) << row.name;
    std::istringstream checks{std::string(row.checks)};
    std::string slug;
    int count = 0;
    while (checks >> slug) {
      ++count;
      const auto all = all_checks();
      EXPECT_TRUE(
          std::any_of(all.begin(), all.end(), [&](const CheckRow& one) { return one.slug == slug; }))
          << row.name << " names " << slug;
    }
    EXPECT_GT(count, 0) << row.name;
  }
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
