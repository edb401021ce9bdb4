#include "unit/calculate/compiled_rig.hpp"
#include "unit/elaborate/understood.hpp"
#include "wording/length_words.hpp"
#include "wording/model_words.hpp"
#include "wording/say.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

// Readings by messenger: what of a knot reaches X, what reaches its doubt, and which knots may be one.

namespace sheerpole::cord_test {
namespace {

std::string rig_with(const std::string& readings, const std::string& cord = "cord orange { }\n") {
  return "language 1\nrope rope-9 {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n}\n" + cord +
         "stay cap {\n  sides: port, starboard\n  line: rope-9\n  estimate: 10 m\n  stack {\n    line\n  "
         "}\n}\n"
         "stay fore {\n  line: rope-9\n  estimate: 12 m\n  stack {\n    line\n  }\n}\n" +
         readings;
}

std::string reading_of(const std::string& stay, const std::string& more) {
  return "reading of " + stay + " {\n  method: messenger\n  cord: orange\n" + more + "}\n";
}

const DerivedStay& stay_of(const Compilation& boat, std::string_view name) {
  for (const DerivedStay& stay : boat.derived->stays)
    if ((*boat.rig)[stay.stay].name == name)
      return stay;
  ADD_FAILURE() << name;
  return boat.derived->stays.front();
}

TEST(Cord, WhatTheReadingStatesBesideTheKnotActs) {
  const Compilation boat = test::compiled(rig_with(
      reading_of("cap.port", "  knots: 4\n  offset: 40 mm\n  hoist-offset: 15 mm\n  below-knot: 3 mm\n")));
  const DerivedStay& stay = stay_of(boat, "cap.port");
  EXPECT_EQ(note_words(stay.pin_to_pin.unknown_source), "cord orange, 4 knots");
  EXPECT_EQ(sum_text(*boat.rig, stay.pin_to_pin), "X - 22 mm"); // - 40 + 15 + 3
}

TEST(Cord, OneKnotStandsForBothSidesWhereItIsStatedOfThePair) {
  const Compilation boat = test::compiled(rig_with(reading_of("cap", "  knots: 4\n")));
  for (const char* side : {"cap.port", "cap.starboard"})
    EXPECT_EQ(note_words(stay_of(boat, side).pin_to_pin.unknown_source), "cord orange, 4 knots");
  EXPECT_FALSE(test::found(boat, "cord-clash"));
}

// The pair was kept by one knot; hoisting one side again to the same knot clashes with nothing.
TEST(Cord, OneKnotOfAPairStaysOneWhenASideIsHoistedAgain) {
  const std::string pair = reading_of("cap", "  knots: 4\n  date: 2026-05-02\n");
  const std::string again = "  knots: 4\n  date: 2026-05-09\n";
  for (const char* side : {"cap.port", "cap.starboard"}) {
    const Compilation boat = test::compiled(rig_with(pair + reading_of(side, again)));
    EXPECT_FALSE(test::found(boat, "cord-clash")) << side;
    EXPECT_TRUE(stay_of(boat, side).measurement.confirmed) << side;
  }
  EXPECT_TRUE(test::found(test::tried(rig_with(pair + reading_of("fore", again))), "cord-clash"));
}

// One knot is one X, so two hoists to it whose offsets lie 80 mm apart say two lengths.
TEST(Cord, HoistedAgainWithAnotherOffsetConfirmsNothing) {
  const auto again = [](const std::string& offset, const std::string& date) {
    return test::compiled(
        rig_with(reading_of("fore", "  knots: 2\n  offset: 40 mm\n  date: 2026-05-02\n") +
                 reading_of("fore", "  knots: 2\n  offset: " + offset + "\n  date: " + date + "\n")));
  };
  EXPECT_TRUE(stay_of(again("40 mm", "2026-05-09"), "fore").measurement.confirmed);
  const Compilation other = again("-40 mm", "2026-05-09");
  EXPECT_FALSE(stay_of(other, "fore").measurement.confirmed);
  EXPECT_TRUE(test::found(other, "measured-once"));
  EXPECT_TRUE(test::found(again("-40 mm", "2026-05-02"), "readings-contradict"));
}

TEST(Cord, TwoStaysOnOneTallyClash) {
  const auto clashes = [](const std::string& readings) {
    return test::found(test::tried(rig_with(readings)), "cord-clash");
  };
  EXPECT_TRUE(clashes(reading_of("cap.port", "  knots: 4\n") + reading_of("fore", "  knots: 4\n")));
  EXPECT_TRUE(
      clashes(reading_of("cap.port", "  knots: 4\n") + reading_of("cap.starboard", "  knots: 4\n")));
  EXPECT_TRUE(clashes(reading_of("cap.port", "  knots: 4\n") +
                      reading_of("fore", "  knots: 4\n  below-knot: 3 mm\n")));
  EXPECT_FALSE(clashes(reading_of("cap.port", "  knots: 4\n") +
                       reading_of("cap.starboard", "  knots: 4\n  below-knot: 3 mm\n")));
  EXPECT_FALSE(clashes(reading_of("cap.port", "  knots: 4\n") + reading_of("fore", "  knots: 3\n")));
}

/// What the edit of the clash writes, and where: the text before it and behind it.
std::string mended(const std::string& text) {
  for (const Diagnostic& finding : test::tried(text).findings)
    if (finding.slug == "cord-clash") {
      if (!finding.edit)
        return "no edit";
      return text.substr(0, finding.edit->span.begin) + finding.edit->replacement +
             text.substr(finding.edit->span.end);
    }
  return "no clash";
}

TEST(Cord, AClashIsMendedByTheNextTallyThatIsFree) {
  const std::string two = reading_of("cap", "  knots: 4\n") + reading_of("fore", "  knots: 4\n");
  EXPECT_EQ(mended(rig_with(two)),
            rig_with(reading_of("cap", "  knots: 4\n") + reading_of("fore", "  knots: 5\n")));
  const std::string back = "stay back {\n  line: rope-9\n  estimate: 12 m\n  stack {\n    line\n  }\n}\n";
  EXPECT_EQ(mended(rig_with(reading_of("cap", "  knots: 4\n") + reading_of("fore", "  knots: 5\n") + back +
                            reading_of("back", "  knots: 4\n"))),
            rig_with(reading_of("cap", "  knots: 4\n") + reading_of("fore", "  knots: 5\n") + back +
                     reading_of("back", "  knots: 6\n")));
}

TEST(Cord, AClashOfTwoSidesIsMendedAsOneKnotForBoth) {
  const std::string text = mended(
      rig_with(reading_of("cap.port", "  knots: 4\n") + reading_of("cap.starboard", "  knots: 4\n")));
  EXPECT_THAT(text, testing::HasSubstr("  knots: 4\n  below-knot: 0 mm\n"));
  const Compilation boat = test::compiled(text);
  EXPECT_FALSE(test::found(boat, "cord-clash"));
  EXPECT_EQ(sum_text(*boat.rig, stay_of(boat, "cap.starboard").pin_to_pin), "X");
}

TEST(Cord, OneThatNoReadingIsKeptOnIsFoundAndOneOfALibraryIsNot) {
  const std::string cords = "cord orange { }\ncord white { }\n";
  const auto unused = [&](const std::string& readings) {
    std::vector<std::string> names;
    for (const Diagnostic& finding : test::compiled(rig_with(readings, cords)).findings)
      if (finding.slug == "cord-not-used")
        names.push_back(finding.subject + (finding.others.empty() ? "" : ", a reading names none"));
    return names;
  };
  EXPECT_THAT(unused(reading_of("fore", "  knots: 3\n")), testing::ElementsAre("white"));
  EXPECT_THAT(unused(reading_of("cap", "  knots: 3\n") +
                     "reading of fore {\n  method: messenger\n  mark: \"two knots\"\n}\n"),
              testing::ElementsAre("white, a reading names none"));
  EXPECT_THAT(unused(""), testing::ElementsAre("orange", "white"));

  const std::string boat = rig_with(reading_of("fore", "  knots: 3\n"), "use \"cords.rig\"\n");
  rig_test::TextFiles files({{"boat.rig", boat}, {"cords.rig", "language 1\n" + cords}});
  EXPECT_FALSE(test::found(compile("boat.rig", files), "cord-not-used"));
}

TEST(Cord, ItsPullCountsTogetherWithItsStretch) {
  const auto lost = [](const std::string& cord, const std::string& reading) {
    return test::found(test::compiled(rig_with(reading_of("fore", "  knots: 3\n" + reading),
                                               "cord orange {\n" + cord + "}\n")),
                       "cord-pull-lost");
  };
  const std::string stretch = "  stretch: 1.2 % ± 0.1 %\n";
  EXPECT_TRUE(lost("", "  pull: 60 N\n"));
  EXPECT_TRUE(lost(stretch, ""));
  EXPECT_FALSE(lost(stretch, "  pull: 60 N\n"));
  EXPECT_FALSE(lost("", ""));
  // Once the cord has been measured it is what a tape read off, with the pull of the tape.
  EXPECT_FALSE(lost("", "  cord-length: 12 m\n  pull: 60 N\n"));
}

TEST(Cord, ATallyIsAskedForOnlyWhereACordKeepsSeveralStays) {
  EXPECT_FALSE(test::found(test::compiled(rig_with(reading_of("fore", ""))), "cord-tally-missing"));
  EXPECT_TRUE(
      test::found(test::compiled(rig_with(reading_of("cap.port", "  knots: 4\n") + reading_of("fore", ""))),
                  "cord-tally-missing"));
}

// By hand: half of a knot of 6 mm either way, and 0.4 % of the 12 m that are expected: 3 + 48 mm at worst.
TEST(Cord, TheKnotAndTheBoundOfTheStretchAreInTheDoubtOfTheLength) {
  const Compilation boat =
      test::compiled(rig_with(reading_of("fore", "  knots: 3\n"),
                              "cord orange {\n  stretch: 1.2 % ± 0.4 %\n  knot-width: 6 mm\n}\n"));
  const DerivedStay& stay = stay_of(boat, "fore");
  ASSERT_TRUE(stay.uncertainty);
  EXPECT_NEAR(stay.uncertainty->worst_high.millimetres(), 51.0, 1e-6);
  EXPECT_NEAR(stay.uncertainty->worst_low.millimetres(), -51.0, 1e-6);
  EXPECT_TRUE(stay.not_corrected.empty());
}

TEST(Cord, WhatIsNotStatedOfItIsToldAsNotCounted) {
  const Compilation boat = test::compiled(rig_with(reading_of("fore", "  knots: 3\n")));
  EXPECT_THAT(say_each(*boat.rig, stay_of(boat, "fore").not_corrected),
              testing::ElementsAre("stretch of the cord: stretch of orange is not stated",
                                   "the mark of its knot: knot-width of orange is not stated"));
}

TEST(Cord, AnOffsetAsLongAsAPersonIsDoubted) {
  const auto doubted = [](const std::string& more) {
    return test::found(test::compiled(rig_with(reading_of("fore", "  knots: 3\n" + more))),
                       "reading-offset-far");
  };
  EXPECT_TRUE(doubted("  offset: 3 m\n"));
  EXPECT_TRUE(doubted("  hoist-offset: -1001 mm\n"));
  EXPECT_TRUE(doubted("  below-knot: -101 mm\n"));
  EXPECT_TRUE(doubted("  offset: 301 mm\n"));
  EXPECT_FALSE(doubted("  offset: 300 mm\n  hoist-offset: 1 m\n  below-knot: 100 mm\n"));
}

TEST(Cord, AReadingOfADayThatHasNotComeIsDoubted) {
  const auto doubted = [](const std::string& boat, const std::string& date) {
    return test::found(test::compiled(rig_with(reading_of("fore", "  knots: 3\n  date: " + date + "\n"),
                                               "cord orange { }\n" + boat)),
                       "reading-later");
  };
  const std::string reported = "boat \"A boat\" {\n  report-date: 2026-05-20\n}\n";
  EXPECT_TRUE(doubted(reported, "2036-05-03"));
  EXPECT_TRUE(doubted(reported, "2026-05-21"));
  EXPECT_FALSE(doubted(reported, "2026-05-20"));
  EXPECT_FALSE(doubted("", "2036-05-03")); // nobody says what day it is
}

} // namespace
} // namespace sheerpole::cord_test
