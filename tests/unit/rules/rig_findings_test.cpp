#include "diagnostics/catalogue.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <set>
#include <string>

namespace sheerpole::rig_findings_test {
namespace {

TEST(RigFindings, EveryEntryIsCompleteAndNamedOnce) {
  std::set<std::string_view> slugs;
  for (const CatalogueEntry& entry : rig_findings()) {
    EXPECT_TRUE(slugs.insert(entry.slug).second) << entry.slug;
    for (const std::string_view text : {entry.message, entry.why, entry.cause, entry.example, entry.mend})
      EXPECT_FALSE(text.empty()) << entry.slug;
  }
  EXPECT_EQ(slugs.size(), 13u);
}

TEST(RigFindings, NothingIsCalledSafe) {
  for (const CatalogueEntry& entry : rig_findings()) {
    std::string all;
    for (const std::string_view text : {entry.message, entry.why, entry.cause, entry.mend})
      all += text;
    std::transform(all.begin(), all.end(), all.begin(), [](unsigned char c) { return std::tolower(c); });
    for (const char* word : {"safe", "approved", "certified"})
      EXPECT_EQ(all.find(word), std::string::npos) << entry.slug << ": " << word;
  }
}

} // namespace
} // namespace sheerpole::rig_findings_test
