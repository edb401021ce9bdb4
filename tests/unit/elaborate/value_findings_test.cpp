#include "unit/elaborate/understood.hpp"

#include <gmock/gmock.h>

namespace sheerpole::value_findings_test {
namespace {

using rig_test::Understood;
using testing::ElementsAre;
using testing::IsEmpty;

/// The findings about one property of a toggle: `length: 82 mm` and so on, in line 3.
std::vector<std::string> toggle(const std::string& property) {
  return Understood("language 1\ntoggle toggle-12 {\n" + property + "\n}\n").findings();
}

/// The findings about one named value, in line 2.
std::vector<std::string> let(const std::string& value) {
  return Understood("language 1\nlet drop = " + value + "\n").findings();
}

TEST(Units, ABareNumberIsRefusedWithTheLikelyUnit) {
  EXPECT_THAT(toggle("length: 12"),
              ElementsAre("3:9 `12` missing-unit: `12` has no unit; the length of toggle-12 needs one\n"
                          "  if mm is meant, write `12 mm` -> length: 12 mm"));
  EXPECT_THAT(toggle("length: 82 mm\nwrap: -3"),
              ElementsAre("4:7 `-3` missing-unit: `-3` has no unit; the wrap of toggle-12 needs one\n"
                          "  if mm is meant, write `-3 mm` -> wrap: -3 mm"));
  EXPECT_THAT(
      toggle("length: 82 mm\nupper: jaw (gap: 12)"),
      ElementsAre("4:18 `12` missing-unit: `12` has no unit; the gap of upper jaw of toggle-12 needs one\n"
                  "  if mm is meant, write `12 mm` -> upper: jaw (gap: 12 mm)"));
}

TEST(Units, ABareNumberBesideALengthIsAForgottenUnit) {
  EXPECT_THAT(let("12 mm + 3"), ElementsAre("2:20 `3` missing-unit: `3` has no unit; a length needs one\n"
                                            "  if mm is meant, write `3 mm` -> let drop = 12 mm + 3 mm"));
}

TEST(Units, AMassIsNoForce) {
  const std::string rope = "language 1\nrope cord {\n  construction: \"12-strand\"\n  size: \"9 mm\"\n";
  EXPECT_THAT(
      Understood(rope + "  break-load: 200 kg\n}\n").findings(),
      ElementsAre("5:15 `200 kg` mass-for-force: the break-load of cord is a force, and this is a mass; "
                  "the weight of a mass is written in kgf\n"
                  "  write `200 kgf` ->   break-load: 200 kgf"));
  EXPECT_THAT(
      Understood(rope + "  break-load: 20_000 lb\n}\n").findings(),
      ElementsAre("5:15 `20_000 lb` mass-for-force: the break-load of cord is a force, and this is a mass; "
                  "the weight of a mass is written in lbf\n"
                  "  write `20_000 lbf` ->   break-load: 20_000 lbf"));
}

TEST(Units, AnotherDimensionIsNamed) {
  EXPECT_THAT(toggle("length: 82 kN"),
              ElementsAre("3:9 `82 kN` wrong-dimension: the length of toggle-12 is a length, and this is a "
                          "force\n  here: for instance `82 mm`"));
  EXPECT_THAT(
      toggle("length: 2 m * 3 m"),
      ElementsAre("3:9 `2 m * 3 m` wrong-dimension: the length of toggle-12 is a length, and this is an "
                  "area\n  here: for instance `82 mm`"));
  EXPECT_THAT(
      Understood("language 1\nsplice long-bury {\n  bury: 72 deg\n}\n").findings(),
      ElementsAre("3:9 `72 deg` wrong-dimension: the bury of long-bury is a length or a number of rope "
                  "diameters, and this is an angle\n  here: for instance `72 d`"));
}

TEST(Units, AnUnknownUnitOffersTheNearest) {
  EXPECT_THAT(toggle("length: 82 mmm"),
              ElementsAre("3:12 `mmm` unknown-unit: `mmm` is not a unit that is known here\n"
                          "  write `mm` -> length: 82 mm"));
}

TEST(Numbers, ThatCanNotBeOneNumberAreRefused) {
  EXPECT_THAT(let("3/0 in"),
              ElementsAre("2:12 `3/0 in` zero-denominator: `3/0` is a fraction with zero below the line"));
  EXPECT_THAT(
      let("11_642_000_000_000_000 mm"),
      ElementsAre(
          "2:12 `11_642_000_000_000_000 mm` number-too-large: this number is too large to work with"));
  EXPECT_THAT(let("1e11 m * 1e300"),
              ElementsAre("2:21 `1e300` number-too-large: this number is too large to work with"));
  EXPECT_THAT(let("900 mm / (3 - 3)"),
              ElementsAre("2:21 `(3 - 3)` division-by-zero: something is divided by zero here"));
}

TEST(Numbers, InQuotesAreOfferedWithoutThem) {
  EXPECT_THAT(let("\"12 mm\""),
              ElementsAre("2:12 `\"12 mm\"` number-wanted: a number with its unit belongs here\n"
                          "  write `12 mm` -> let drop = 12 mm"));
  EXPECT_THAT(let("\"about a foot\" + 2 mm"),
              ElementsAre("2:12 `\"about a foot\"` number-wanted: a number with its unit belongs here"));
}

TEST(Numbers, OfDifferentSortsAreNotAdded) {
  EXPECT_THAT(let("12 mm + 3 kN"),
              ElementsAre("2:12 `12 mm + 3 kN` mixed-dimensions: a force cannot be added to a length"));
  EXPECT_THAT(let("12 mm - 3 kN"),
              ElementsAre("2:12 `12 mm - 3 kN` mixed-dimensions: a force cannot be taken from a length"));
  EXPECT_THAT(
      let("20 degC + 3 degC"),
      ElementsAre(
          "2:12 `20 degC + 3 degC` mixed-dimensions: a temperature cannot be added to a temperature"));
  EXPECT_THAT(let("20 degC * 2"),
              ElementsAre("2:12 `20 degC * 2` temperature-multiplied: a temperature is a point on "
                          "a scale and cannot be multiplied, divided or turned round"));
}

TEST(Numbers, OutOfBoundsShowTheBound) {
  EXPECT_THAT(
      Understood("language 1\nsplice long-bury {\n  bury: 72 d\n  contraction: 80 %\n}\n").findings(),
      ElementsAre("4:16 `80 %` value-out-of-range: the contraction of long-bury is 80 %; it can be 50 % at "
                  "most"));
  EXPECT_THAT(toggle("length: -82 mm"),
              ElementsAre("3:9 `-82 mm` value-out-of-range: the length of toggle-12 is -82 "
                          "mm; it can be 0 mm at least"));
}

// Three figures behind the point are metres, or a point where thousands are parted: the same length.
TEST(Numbers, MillimetresThatAreMetresAreToldSo) {
  const auto stay = [](const std::string& length) {
    return Understood("language 1\nwire w {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\nstay s {\n"
                      "  pin-to-pin: " +
                      length + "\n  line: w\n  stack {\n    line\n  }\n}\n")
        .findings();
  };
  EXPECT_THAT(
      stay("12.646 mm"),
      ElementsAre("7:15 `12.646 mm` value-out-of-range: the pin-to-pin of s is 12.646 mm; it can be "
                  "50 mm at least\n"
                  "  if metres are meant, write `12.646 m` ->   pin-to-pin: 12.646 m"));
  // Nothing tells what these are.
  for (const char* other : {"12.6 mm", "12 mm", "0.001 mm"})
    EXPECT_THAT(stay(other), ElementsAre(testing::Not(testing::HasSubstr("write")))) << other;
}

TEST(Circles, AreToldOnceWhereTheyClose) {
  EXPECT_THAT(Understood("language 1\n"
                         "let upper = total - lower\n"
                         "let total = upper + lower\n"
                         "let lower = 4_453 mm\n"
                         "let twice = total * 2\n")
                  .findings(),
              ElementsAre("3:13 `upper` circular-value: upper is worked out from itself\n"
                          "  here: the chain comes back here\n  2:5: declared here"));
  EXPECT_THAT(
      Understood("language 1\nlet a = a\n").findings(),
      ElementsAre("2:9 `a` circular-value: a is worked out from itself\n  here: the chain comes back here\n"
                  "  2:5: declared here"));
  EXPECT_THAT(
      Understood("language 1\npoints {\n  tip: up + (0, 0, 1) m\n  up: tip - (0, 0, 1) m\n}\n").findings(),
      ElementsAre("3:8 `up` circular-value: up is worked out from itself\n"
                  "  here: the chain comes back here\n  4:3: declared here"));
}

TEST(Shapes, AListOrAPathIsNoSingleValue) {
  EXPECT_THAT(
      toggle("length: 82 mm, 85 mm"),
      ElementsAre("3:16 `85 mm` one-value-wanted: the length of toggle-12 is one value, and these are "
                  "several\n  here: a second value"));
  EXPECT_THAT(let("12 mm, 13 mm"),
              ElementsAre("2:19 `13 mm` one-value-wanted: the value of drop is one value, and "
                          "these are several\n  here: a second value"));
  EXPECT_THAT(
      toggle("length: 82 mm free"),
      ElementsAre("3:15 `free` passage-not-here: `free` has no meaning in the length of toggle-12"));
  EXPECT_THAT(toggle("length: 82 mm mirrored"),
              ElementsAre("3:15 `mirrored` mirrored-not-here: the length of toggle-12 cannot be mirrored"));
  EXPECT_THAT(let("12 mm mirrored"),
              ElementsAre("2:18 `mirrored` mirrored-not-here: the value of drop cannot be mirrored"));
}

TEST(Shapes, PlacesAndNumbersAreNotMixed) {
  EXPECT_THAT(
      let("(1, 2, 3) m + 50 mm"),
      ElementsAre(
          "2:12 `(1, 2, 3) m + 50 mm` vector-with-number: a place and a single number cannot be put "
          "together like this"));
  EXPECT_THAT(let("5 m / (1, 2, 3)"),
              ElementsAre("2:12 `5 m / (1, 2, 3)` vector-with-number: a place and a single "
                          "number cannot be put together like this"));
  EXPECT_THAT(toggle("length: (1, 2, 3) m"), ElementsAre("3:9 `(1, 2, 3) m` vector-not-here: the length of "
                                                         "toggle-12 is one number, and this is a place (x, "
                                                         "y, z)"));
}

TEST(Tolerances, HaveTheUnitOfTheirValueAndNoSign) {
  EXPECT_THAT(
      toggle("length: 82 mm ± 2"),
      ElementsAre("3:17 `2` missing-unit: `2` has no unit; the tolerance of the length of toggle-12 needs "
                  "one\n  if mm is meant, write `2 mm` -> length: 82 mm ± 2 mm"));
  EXPECT_THAT(toggle("length: 82 mm ± 2 kN"),
              ElementsAre("3:17 `2 kN` wrong-dimension: the tolerance of the length of toggle-12 is a "
                          "length, and this is a "
                          "force"));
  EXPECT_THAT(
      toggle("length: 82 mm +- -2 mm"),
      ElementsAre(
          "3:15 `+- -2 mm` tolerance-negative: the tolerance of the length of toggle-12 is negative"));
  EXPECT_THAT(
      Understood("language 1\nboat \"Tern\" {\n  reference-temperature: 20 degC ± 2 degC\n}\n").findings(),
      ElementsAre(
          "3:36 `2 degC` wrong-dimension: the tolerance of the reference-temperature of the boat is a "
          "temperature difference, and this is a temperature"));
}

TEST(Tolerances, BelongToNumbersAndPlacesOnly) {
  EXPECT_THAT(Understood("language 1\npoints {\n  tip: (0, 1, 2) m ± 5 mm\n}\n").findings(), IsEmpty());
  EXPECT_THAT(
      Understood("language 1\nspar mast {\n  sort: mast\n  heel: (0, 0, 2) m ± 5 mm\n}\n").findings(),
      ElementsAre("4:21 `± 5 mm` tolerance-not-here: the heel of mast cannot carry a tolerance"));
}

TEST(Words, TextsSizesThreadsAndDays) {
  EXPECT_THAT(
      Understood("language 1\nrope cord {\n  construction: braided\n  size: \"9 mm\"\n}\n").findings(),
      ElementsAre("3:17 `braided` text-wanted: the construction of cord is a text in quotes, such as "
                  "\"12-strand HMPE heat-set\"\n  write `\"braided\"` ->   construction: \"braided\""));
  EXPECT_THAT(
      toggle("length: 82 mm\nupper: jaw (pin: 12 mm)"),
      ElementsAre("4:18 `12 mm` size-not-quoted: the pin of upper jaw of toggle-12 is a size by name, in "
                  "quotes, such as \"5/8 in\"\n  write `\"12 mm\"` -> upper: jaw (pin: \"12 mm\")"));
  EXPECT_THAT(
      toggle("length: 82 mm\nupper: jaw (pin: \"twelve\")"),
      ElementsAre("4:18 `\"twelve\"` size-unreadable: `twelve` is not a size that can be compared"));
  EXPECT_THAT(
      toggle("length: 82 mm\nupper: stud (thread: \"1/2-21 UNF\")"),
      ElementsAre("4:22 `\"1/2-21 UNF\"` thread-unknown: the thread `1/2-21 UNF` is not in the tables of "
                  "standard threads; near it: 1/2-20 UNF, 1/2-13 UNC"));
  EXPECT_THAT(
      toggle("length: 82 mm\nupper: holes (count: 2.5)"),
      ElementsAre("4:22 `2.5` whole-number-wanted: the count of upper holes of toggle-12 is a whole number "
                  "from 1 to 10000"));
  for (const std::string day : {"2026-02-29", "2026-13-01", "2100-02-29", "2026-04-31"})
    EXPECT_THAT(
        Understood("language 1\nrope cord { construction: \"12-strand\" \n size: \"9 mm\" }\n"
                   "stay forestay {\n  line: cord\n  stack { \n line \n }\n}\n"
                   "reading of forestay {\n  runs: 11_640 mm\n  date: " +
                   day + "\n}\n")
            .findings(),
        ElementsAre("12:9 `" + day +
                    "` date-unreadable: the date of the reading of forestay is not a day of the calendar"));
  // The year 2000 was a leap year, 1900 was none (Gregorian calendar, ISO 8601).
  EXPECT_THAT(Understood("language 1\nrope cord { construction: \"12-strand\" \n size: \"9 mm\" }\n"
                         "stay forestay {\n  line: cord\n  stack { \n line \n }\n}\n"
                         "reading of forestay {\n  runs: 11_640 mm\n  date: 2000-02-29\n}\n")
                  .findings(),
              IsEmpty());
}

TEST(Parts, LackWhatTheyMustState) {
  EXPECT_THAT(
      Understood("language 1\nturnbuckle bottle-12 {\n  shortest: 265 mm\n}\n").findings(),
      ElementsAre("2:12 `bottle-12` property-missing: the turnbuckle bottle-12 has no longest: open to the "
                  "last thread that may be used"));
  EXPECT_THAT(
      Understood("language 1\nturnbuckle bottle-12 {\n  shortest: 395 mm\n  longest: 265 mm\n}\n")
          .findings(),
      ElementsAre(
          "4:12 `265 mm` range-reversed: bottle-12 is 395 mm at its shortest and 265 mm at its longest\n"
          "  3:13: the shortest"));
  EXPECT_THAT(
      Understood("language 1\nturnbuckle bottle-12 {\n  shortest: 265 mm\n  longest: 395 mm\n"
                 "  thread: \"1/2-20 UNF\"\n}\n")
          .findings(),
      ElementsAre(
          "5:11 `\"1/2-20 UNF\"` screw-not-stated: bottle-12 has a thread and does not say whether it "
          "has one stud that turns or a pair"));
  EXPECT_THAT(toggle("length: 82 mm\nupper: jaw (gap: 12 mm, gap: 13 mm)"),
              ElementsAre("4:25 `gap` property-twice: gap is stated twice\n  here: stated again here\n"
                          "  4:13: stated here first"));
}

TEST(Boats, AreOneARig) {
  EXPECT_THAT(Understood("language 1\nboat \"Tern\" {\n}\nboat \"Petrel\" {\n}\n").findings(),
              ElementsAre("4:1 `boat` boat-twice: the boat is declared twice\n  here: a second boat\n"
                          "  2:1: the first one"));
}

} // namespace
} // namespace sheerpole::value_findings_test
