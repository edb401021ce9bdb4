#include "diagnostics/catalogue.hpp"
#include "diagnostics/diagnostic.hpp"

#include <gmock/gmock.h>

namespace sheerpole::source_findings_test {
namespace {

TEST(SourceFindings, CoverEveryWayInWhichAFileCanFail) {
  std::vector<std::string_view> slugs;
  for (const CatalogueEntry& entry : source_findings())
    slugs.push_back(entry.slug);
  EXPECT_THAT(slugs,
              testing::ElementsAre("file-not-found", "file-not-readable", "file-is-folder",
                                   "file-too-large", "file-not-utf8", "line-too-long", "too-many-words"));
}

TEST(SourceFindings, AreErrorsWithAWholePage) {
  for (const CatalogueEntry& entry : source_findings()) {
    EXPECT_EQ(entry.severity, Severity::error) << entry.slug;
    for (const std::string_view text : {entry.message, entry.why, entry.cause, entry.example, entry.mend})
      EXPECT_FALSE(text.empty()) << entry.slug;
    // Only message and why are filled in.
    for (const std::string_view text : {entry.cause, entry.mend})
      EXPECT_EQ(text.find('{'), std::string_view::npos) << entry.slug;
  }
}

TEST(SourceFindings, SayFileAndLine) {
  EXPECT_EQ(diagnose("file-not-found", {{"file", "a.rig"}}).build().message, "there is no file a.rig");
  EXPECT_EQ(diagnose("file-not-utf8", {{"file", "a.rig"}, {"line", "7"}}).build().message,
            "the file a.rig is not UTF-8 text; the first wrong byte is in line 7");
}

} // namespace
} // namespace sheerpole::source_findings_test
