#include "model/part.hpp"
#include "model/splice.hpp"

#include <gtest/gtest.h>

#include <set>
#include <string_view>

namespace sheerpole::model_test {
namespace {

/// 72 diameters of a 9 mm rope are 648 mm, about 25 1/2 in (common practice, no source).
TEST(RopeMeasure, IsALengthOrDiametersOfTheRopeAtHand) {
  EXPECT_NEAR((RopeMeasure{72.0, true}.at(Length::millimetres(9.0)).millimetres()), 648.0, 1e-9);
  EXPECT_NEAR((RopeMeasure{0.6477, false}.at(Length::millimetres(9.0)).inches()), 25.5, 1e-9);
}

TEST(Part, TheEndThatTakesTheLineIsFoundEitherWayRound) {
  Part part;
  part.upper.type = EndType::eye;
  part.lower.type = EndType::wire_socket;
  EXPECT_EQ(part.line_end(EndType::wire_socket), &part.lower);
  EXPECT_EQ(part.line_end(EndType::rope_seat), nullptr);
  std::swap(part.upper, part.lower);
  EXPECT_EQ(part.line_end(EndType::wire_socket), &part.upper);
}

TEST(End, AnUnstatedDimensionIsNotThere) {
  End end;
  EXPECT_FALSE(end.stated());
  EXPECT_EQ(end.find(EndDimensionName::pin), nullptr);
  end.type = EndType::jaw;
  end.dimensions.push_back({EndDimensionName::pin, {Length::inches(0.625), {}, {}}, "5/8 in"});
  ASSERT_NE(end.find(EndDimensionName::pin), nullptr);
  EXPECT_NEAR(end.find(EndDimensionName::pin)->length.value.millimetres(), 15.875, 1e-9);
  EXPECT_EQ(end.find(EndDimensionName::gap), nullptr);
}

TEST(SourceClass, EveryClassHasAWordOfItsOwn) {
  std::set<std::string_view> words;
  for (const SourceClass source_class :
       {SourceClass::measured, SourceClass::drawn, SourceClass::maker, SourceClass::standard,
        SourceClass::practice, SourceClass::assumed, SourceClass::computed, SourceClass::unstated})
    EXPECT_TRUE(words.insert(word_of(source_class)).second);
  EXPECT_EQ(words.size(), 8u);
}

} // namespace
} // namespace sheerpole::model_test
