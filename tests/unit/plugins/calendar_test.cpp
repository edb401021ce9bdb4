#include "plugins/calendar/calendar.hpp"

#include "service/compile.hpp"
#include "source/file_reader.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace sheerpole::calendar_test {
namespace {

// RFC 5545, 3.1 (lines longer than 75 octets are folded; a fold is CRLF and one blank) and 3.3.11 (TEXT).
TEST(IcalLine, IsFoldedAt75Octets) {
  EXPECT_EQ(ical_line(std::string(75, 'a')), std::string(75, 'a') + "\r\n");
  EXPECT_EQ(ical_line(std::string(76, 'a')), std::string(75, 'a') + "\r\n a\r\n");
  EXPECT_EQ(ical_line(std::string(150, 'a')),
            std::string(75, 'a') + "\r\n " + std::string(74, 'a') + "\r\n a\r\n");
}

TEST(IcalLine, TearsNoCharacter) {
  const std::string line = std::string(74, 'a') + "\xc3\xa6" + "b"; // æ begins at the 75th octet
  EXPECT_EQ(ical_line(line), std::string(74, 'a') + "\r\n \xc3\xa6" + "b\r\n");
}

TEST(IcalText, WritesWhatSeparatesWithABackslash) {
  EXPECT_EQ(ical_text("a,b;c\\d\ne\tf"), "a\\,b\\;c\\\\d\\ne f");
}

RC_GTEST_PROP(IcalLine, UnfoldsToWhatItWas, (const std::string& any)) {
  const std::string line = ical_text(any);
  std::string folded = ical_line(line);
  for (std::size_t at = 0; (at = folded.find("\r\n ", at)) != std::string::npos;)
    folded.erase(at, 3);
  RC_ASSERT(folded == line + "\r\n");
}

TEST(DueDays, AreCountedFromWhatTheFileSays) {
  DiskFileReader reader;
  const Compilation sallow = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/sallow.rig", reader);
  ASSERT_TRUE(sallow.checked);
  const auto days = due_days(*sallow.checked);
  ASSERT_FALSE(days.empty());
  for (std::size_t i = 1; i < days.size(); ++i)
    EXPECT_LE(days[i - 1].day.count, days[i].day.count);
  // Fitted on 2026-05-20; 30 days later is 2026-06-19 (counted on a calendar).
  EXPECT_EQ(format_day(days.front().day), "2026-06-19");
  EXPECT_EQ(days.front().id, "retune-30-days-shroud"); // of both sides, on one day
  EXPECT_EQ(days.front().summary, "Retune shroud, port and starboard, 30 days after it was fitted");
  for (std::size_t i = 1; i < days.size(); ++i)
    EXPECT_FALSE(days[i].day.count == days[i - 1].day.count && days[i].summary == days[i - 1].summary);
}

// RFC 5545, 3.6: at least one component, so that there is no calendar where no day is due.
TEST(Calendar, IsThereJustWhereADayIsDue) {
  DiskFileReader reader;
  for (const auto& [name, due] : {std::pair{"quillwort", false}, {"sallow", true}}) {
    const Compilation boat = compile(std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig", reader);
    ASSERT_TRUE(boat.checked);
    const std::vector<OutputFile> files = Calendar().generate({*boat.checked}).files;
    ASSERT_EQ(files.size(), due ? 1u : 0u) << name;
    if (!due)
      continue;
    EXPECT_NE(files.front().bytes.find("BEGIN:VEVENT\r\n"), std::string::npos);
    // A reminder on a telephone stands among those of other things.
    for (std::size_t at = files.front().bytes.find("SUMMARY:"); at != std::string::npos;
         at = files.front().bytes.find("SUMMARY:", at + 1))
      EXPECT_EQ(files.front().bytes.compare(at, 16, "SUMMARY:Sallow: "), 0);
  }
}

} // namespace
} // namespace sheerpole::calendar_test
