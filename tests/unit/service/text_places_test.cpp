#include "service/text_places.hpp"

#include "service/texts.hpp"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <string>

namespace sheerpole::text_places_test {
namespace {

using namespace service;

/// Signs of one to four bytes, one of two units, and every kind of line end.
const std::string many = "a\u00e9\u20ac\U0001F6A2b\r\nx\ry\n\nend";

TEST(TextPlaces, CountBytesUnitsAndLines) {
  const TextPlaces places(many);
  const TextPlace behind_ship = places.at_byte(10);
  EXPECT_EQ(behind_ship.line, 0u);
  EXPECT_EQ(behind_ship.byte, 10u);
  EXPECT_EQ(behind_ship.character, 5u); // the ship is two units
  EXPECT_EQ(behind_ship.unit, 5u);
  EXPECT_EQ(places.character(behind_ship, Counted::utf8), 10u);
  EXPECT_EQ(places.character(behind_ship, Counted::utf32), 4u);
  EXPECT_EQ(places.line_count(), 5u);
  EXPECT_EQ(places.at_line(4, 0).byte, many.size() - 3);
}

TEST(TextPlaces, BeyondAnEndIsThatEnd) {
  const TextPlaces places(many);
  EXPECT_EQ(places.at_line(0, 99).byte, 11u);
  EXPECT_EQ(places.at_line(1, 99).byte, 14u);
  EXPECT_EQ(places.at_line(99, 0).byte, many.size());
  EXPECT_EQ(places.at_byte(9999).byte, many.size());
  EXPECT_EQ(places.at_unit(9999).byte, many.size());
}

TEST(TextPlaces, InsideASignIsItsBeginning) {
  const TextPlaces places(many);
  EXPECT_EQ(places.at_byte(8).byte, 6u);
  EXPECT_EQ(places.at_line(0, 4).byte, 6u);
  EXPECT_EQ(places.at_line(0, 8, Counted::utf8).byte, 6u);
}

RC_GTEST_PROP(TextPlaces, EveryWayOfCountingLeadsBack, (const std::vector<int>& picks)) {
  const std::string signs[] = {"a", "\u00e9", "\u20ac", "\U0001F6A2", "\n", "\r\n", "\r", "b"};
  std::string text;
  for (const int pick : picks)
    text += signs[static_cast<unsigned>(pick) % 8U];
  const TextPlaces places(text);
  for (std::size_t byte = 0; byte <= text.size(); ++byte) {
    const TextPlace place = places.at_byte(byte);
    RC_ASSERT(place.byte <= byte);
    RC_ASSERT(places.at_unit(place.unit).byte == place.byte);
    for (const Counted counted : {Counted::utf16, Counted::utf8, Counted::utf32})
      RC_ASSERT(places.at_line(place.line, places.character(place, counted), counted).byte == place.byte);
  }
}

RC_GTEST_PROP(Texts, DifferenceTurnsOneTextIntoTheOther,
              (const std::vector<int>& was, const std::vector<int>& is)) {
  const std::string signs[] = {"a", "\u00e9", "\U0001F6A2", "\n"};
  const auto text = [&](const std::vector<int>& picks) {
    std::string result;
    for (const int pick : picks)
      result += signs[static_cast<unsigned>(pick) % 4U];
    return result;
  };
  const std::string before = text(was);
  const std::string after = text(is);
  const TextEdit edit = difference("a.rig", before, after);
  RC_ASSERT(with_edits("a.rig", before, {edit}) == after);
  RC_ASSERT(first_invalid_utf8(edit.replacement) == std::string::npos);
}

TEST(Texts, StandInFrontOfOthers) {
  Texts behind;
  behind.put("a.rig", "disk");
  behind.put("b.rig", "disk");
  Texts front(&behind);
  front.put("a.rig", "open");
  EXPECT_EQ(front.read("a.rig", 100).value(), "open");
  EXPECT_EQ(front.read("b.rig", 100).value(), "disk");
  EXPECT_EQ(front.read("a.rig", 3).error(), FileReader::Failure::too_large);
  front.drop("a.rig");
  EXPECT_EQ(front.read("a.rig", 100).value(), "disk");
  EXPECT_EQ(front.read("c.rig", 100).error(), FileReader::Failure::not_found);
}

} // namespace
} // namespace sheerpole::text_places_test
