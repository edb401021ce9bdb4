// The table of kinds is data that other rooms trust: names that can be written, examples that can be read,
// help for every row.

#include "kinds/kind_row.hpp"
#include "units/named_size.hpp"
#include "units/parse_quantity.hpp"
#include "units/thread.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace sheerpole::kinds_test {
namespace {

struct Owned {
  std::string owner;
  const PropertyRow* row;
};

std::vector<Owned> all_rows() {
  std::vector<Owned> rows;
  for (const KindRow& kind : all_kinds()) {
    for (const PropertyRow& row : kind.properties)
      rows.push_back({std::string(kind.name), &row});
    for (const PropertyRow& row : kind.settings)
      rows.push_back({std::string(kind.name) + " in a stack", &row});
  }
  for (const EndRow& end : all_ends())
    for (const PropertyRow& row : end.dimensions)
      rows.push_back({std::string(end.name), &row});
  for (const PropertyRow& row : line_settings())
    rows.push_back({"line", &row});
  return rows;
}

bool is_name(std::string_view text) {
  return !text.empty() && text.front() != '-' && text.back() != '-' &&
         std::all_of(text.begin(), text.end(), [](char c) { return (c >= 'a' && c <= 'z') || c == '-'; });
}

std::string unquoted(std::string_view text) {
  EXPECT_TRUE(text.size() >= 2 && text.front() == '"' && text.back() == '"') << text;
  return std::string(text.substr(1, text.size() - 2));
}

TEST(Kinds, NamesAreWordsAndNoneStandsTwice) {
  std::set<std::string_view> names;
  for (const KindRow& kind : all_kinds()) {
    EXPECT_TRUE(is_name(kind.name)) << kind.name;
    EXPECT_TRUE(names.insert(kind.name).second) << kind.name;
    EXPECT_FALSE(kind.help.empty()) << kind.name;
    EXPECT_FALSE(kind.group.empty()) << kind.name;
    EXPECT_EQ(find_kind(kind.name), &kind);
    std::set<std::string_view> properties;
    for (const PropertyRow& row : kind.properties)
      EXPECT_TRUE(properties.insert(row.name).second) << kind.name << ": " << row.name;
  }
  for (const EndRow& end : all_ends()) {
    EXPECT_TRUE(is_name(end.name)) << end.name;
    EXPECT_FALSE(end.help.empty()) << end.name;
    EXPECT_EQ(find_end(end.name), &end);
  }
}

TEST(Kinds, EveryRowHasAnExampleThatCanBeReadAndHelp) {
  for (const auto& [owner, row] : all_rows()) {
    SCOPED_TRACE(owner + ": " + std::string(row->name));
    EXPECT_TRUE(is_name(row->name));
    EXPECT_FALSE(row->help.empty());
    ASSERT_FALSE(row->example.empty());
    switch (row->type) {
    case ValueType::quantity: {
      // What is known to a bound only shows one; it is a quantity as well.
      const std::string_view bound = " ± ";
      const std::size_t at = row->example.find(bound);
      if (at != std::string_view::npos) {
        EXPECT_TRUE(parse_quantity(row->example.substr(at + bound.size())).ok());
      }
      const auto quantity = parse_quantity(row->example.substr(0, at));
      ASSERT_TRUE(quantity.ok());
      EXPECT_TRUE(quantity.value().dimension == row->dimension ||
                  quantity.value().dimension == row->other_dimension);
      EXPECT_GE(quantity.value().si, row->least);
      EXPECT_LE(quantity.value().si, row->most);
      break;
    }
    case ValueType::size:
      EXPECT_TRUE(parse_named_size(unquoted(row->example)).ok());
      break;
    case ValueType::thread:
      EXPECT_TRUE(parse_thread(unquoted(row->example)).ok());
      break;
    case ValueType::count:
      EXPECT_TRUE(parse_number(row->example).ok());
      break;
    case ValueType::choice:
      EXPECT_NE(std::find(row->choices.begin(), row->choices.end(), row->example), row->choices.end());
      break;
    case ValueType::text:
      unquoted(row->example);
      break;
    case ValueType::word:
      EXPECT_TRUE(is_name(row->example) || !unquoted(row->example).empty());
      break;
    case ValueType::end:
      EXPECT_NE(find_end(row->example.substr(0, row->example.find(' '))), nullptr);
      break;
    default:
      break;
    }
    if (row->type == ValueType::choice || row->type == ValueType::choice_list) {
      EXPECT_FALSE(row->choices.empty());
    }
    if (row->type == ValueType::reference) {
      EXPECT_NE(row->refers_to, Category::none);
    }
  }
}

TEST(Kinds, APartIsOfTheBoatOrFixedOrAnAdjuster) {
  for (const KindRow& kind : all_kinds()) {
    if (kind.category != Category::part)
      continue;
    SCOPED_TRACE(std::string(kind.name));
    EXPECT_FALSE(kind.adjuster && kind.boat_fitting);
    const bool fixed = !kind.adjuster && !kind.boat_fitting;
    EXPECT_EQ(find_property(kind.properties, "length") != nullptr, fixed);
    EXPECT_EQ(find_property(kind.properties, "shortest") != nullptr, kind.adjuster);
    EXPECT_EQ(find_property(kind.properties, "longest") != nullptr, kind.adjuster);
    if (kind.adjuster) {
      EXPECT_TRUE(find_property(kind.settings, "length") || find_property(kind.settings, "gap"))
          << "a stack could not set it";
    }
  }
}

TEST(Kinds, BlocksInsideAreKinds) {
  for (const KindRow& kind : all_kinds())
    for (const std::string_view block : kind.blocks)
      EXPECT_NE(find_kind(block), nullptr) << block;
}

} // namespace
} // namespace sheerpole::kinds_test
