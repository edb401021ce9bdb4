#include "diagnostics/catalogue.hpp"

#include "unit/elaborate/understood.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <iterator>
#include <set>

namespace sheerpole::catalogue_test {
namespace {

bool has_placeholder(std::string_view text) {
  for (std::size_t open = text.find('{'); open != std::string_view::npos; open = text.find('{', open + 1)) {
    const std::size_t close = text.find_first_not_of("abcdefghijklmnopqrstuvwxyz-", open + 1);
    if (close != std::string_view::npos && close > open + 1 && text[close] == '}')
      return true;
  }
  return false;
}

TEST(Catalogue, HasNoSlugTwice) {
  std::set<std::string_view> slugs;
  for (const CatalogueEntry* entry : all_entries()) {
    EXPECT_TRUE(slugs.insert(entry->slug).second) << entry->slug;
    EXPECT_EQ(find_entry(entry->slug), entry);
  }
  EXPECT_GT(slugs.size(), 100u);
  EXPECT_EQ(find_entry("no-such-finding"), nullptr);
}

TEST(Catalogue, HasAWholePageForEachFinding) {
  for (const CatalogueEntry* entry : all_entries()) {
    EXPECT_THAT(std::string(entry->slug), testing::MatchesRegex("[a-z0-9]+(-[a-z0-9]+)*"));
    for (const std::string_view text : {entry->message, entry->cause, entry->example, entry->mend})
      EXPECT_FALSE(text.empty()) << entry->slug;
    // Message and why are clauses that a line of output goes on from.
    for (const std::string_view text : {entry->message, entry->why})
      if (!text.empty()) {
        EXPECT_NE(text.back(), '.') << entry->slug;
        EXPECT_FALSE(text.front() >= 'A' && text.front() <= 'Z') << entry->slug;
      }
    // Only message and why are filled in; a brace elsewhere is one of the language.
    for (const std::string_view text : {entry->cause, entry->mend})
      EXPECT_FALSE(has_placeholder(text)) << entry->slug;
    EXPECT_EQ(entry->example.back(), '\n') << entry->slug;
  }
}

TEST(Catalogue, TheExampleOfAPageProvokesItsFindingAlone) {
  for (const auto table : {file_findings(), name_findings(), value_findings(), structure_findings(),
                           stack_findings(), path_findings()}) {
    for (const CatalogueEntry& entry : table) {
      // Limits take as much as they say; tests/golden/limits goes beyond them.
      const std::string_view limits[] = {"too-many-files", "rig-too-large", "too-many-declarations",
                                         "copies-too-large", "value-chain-too-long"};
      if (std::find(std::begin(limits), std::end(limits), entry.slug) != std::end(limits))
        continue;
      std::map<std::string, std::string> files{{"boat.rig", std::string(entry.example)}};
      if (entry.slug == "use-cycle")
        files = {{"boat.rig", "language 1\nuse \"cycle.rig\"\n"},
                 {"cycle.rig", std::string(entry.example)}};
      const rig_test::Understood rig(files);
      EXPECT_THAT(rig.slugs(), testing::ElementsAre(std::string(entry.slug))) << entry.slug;
    }
  }
}

} // namespace
} // namespace sheerpole::catalogue_test
