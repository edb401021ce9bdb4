#include "diagnostics/catalogue.hpp"
#include "diagnostics/diagnostic.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <cctype>
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
    for (const std::string_view text : {entry->message, entry->cause, entry->mend})
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
    ASSERT_FALSE(entry->example.parts.empty()) << entry->slug;
  }
}

TEST(Catalogue, CallsNothingSafe) {
  for (const CatalogueEntry* entry : all_entries()) {
    std::string all;
    for (const std::string_view text : {entry->message, entry->why, entry->cause, entry->mend, entry->says})
      all += text;
    std::transform(all.begin(), all.end(), all.begin(), [](unsigned char c) { return std::tolower(c); });
    for (const char* word : {"safe", "approved", "certified"})
      EXPECT_EQ(all.find(word), std::string::npos) << entry->slug << ": " << word;
  }
}

TEST(Catalogue, KeepsTheSubjectsInTheOrderOfThePhases) {
  for (const FindingTable& table : finding_tables())
    EXPECT_FALSE(table.entries.empty()) << table.subject;
  EXPECT_EQ(finding_tables().front().subject, "The file itself");
  EXPECT_EQ(finding_tables().back().subject, "Programs outside that make papers");
}

TEST(Catalogue, IsFilledIn) {
  EXPECT_EQ(diagnose("file-not-found", {{"file", "a.rig"}}).build().message, "there is no file a.rig");
  EXPECT_EQ(diagnose("file-not-utf8", {{"file", "a.rig"}, {"line", "7"}}).build().message,
            "the file a.rig is not UTF-8 text; the first wrong byte is in line 7");
}

} // namespace
} // namespace sheerpole::catalogue_test
