#include "wording/model_words.hpp"

#include "calculate/cut/cut_phrase.hpp"
#include "calculate/length/length_sum.hpp"
#include "wording/length_words.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::model_words_test {
namespace {

TEST(NoteWords, AreThoseOfTheFileOrWhatACalculationMadeTheNumberOf) {
  Provenance provenance;
  EXPECT_EQ(note_words(provenance), "");
  provenance.note = "certificate 1142";
  EXPECT_EQ(note_words(provenance), "certificate 1142");
  provenance.derivation = {Derivation::mark_on, {Words{"messenger"}, Words{"red whipping"}}};
  EXPECT_EQ(note_words(provenance), "mark on the messenger: red whipping");
}

TEST(NoteWords, TellATestSpliceByWhatIsKnownOfIt) {
  const auto shortened = [](Remark told) {
    Provenance provenance;
    provenance.derivation = {Derivation::shortened_over,
                             {Remarks{{std::move(told)}}, Length::millimetres(1000.0),
                              Length::millimetres(944.0), Length::millimetres(700.0)}};
    return note_words(provenance);
  };
  EXPECT_EQ(shortened(Derivation::test_splice), "test splice: 1000 mm to 944 mm over a bury of 700 mm");
  EXPECT_EQ(shortened({Derivation::test_splice_on_by, {Words{"2026-04-11"}, Words{"the owner"}}}),
            "test splice of 2026-04-11 by the owner: 1000 mm to 944 mm over a bury of 700 mm");
}

// X is the same length only where it is the same mark: what a mark is told by can be compared.
TEST(NoteWords, OfTwoMarksDiffer) {
  const Remark red(Derivation::mark_on, {Words{"messenger"}, Words{"red whipping"}});
  const Remark blue(Derivation::mark_on, {Words{"messenger"}, Words{"blue whipping"}});
  EXPECT_EQ(red, red);
  EXPECT_NE(red, blue);
  EXPECT_NE(red, Remark(Derivation::no_number_yet));
}

TEST(StatedIn, IsTheNumberWithWhichAnAccountBegins) {
  EXPECT_EQ(stated_in({LengthPhrase::diameters, {Number{72.0}, Length::millimetres(9.0)}}), "72 d");
  EXPECT_EQ(stated_in({CutPhrase::share_of, {Share{0.08}, Length::millimetres(648.0)}}), "8 %");
  EXPECT_EQ(stated_in(CutPhrase::by_test_wrap), "");
  EXPECT_EQ(stated_in({}), "");
}

TEST(SayWithoutARig, IsAFaultOfTheCompilerForWhatNamesAThingOfOne) {
  EXPECT_EQ(say(Remark(Derivation::as_shop_delivers, {Words{"loft"}})), "as the shop loft delivers it");
  EXPECT_EXIT(say(Remark(LengthPhrase::setting_missing, {PartId{0}})), testing::ExitedWithCode(3),
              "names a thing");
}

TEST(DifferenceWords, OfAShopsCardsNameTheUnit) {
  Difference difference;
  difference.origin = Difference::Origin::shop;
  difference.origin_name = "loft";
  difference.property = "unit";
  EXPECT_EQ(words_of(difference).by, "shop loft");
  EXPECT_EQ(words_of(difference).of, "bench cards");
  EXPECT_EQ(words_of(difference).is, "millimetres");
  difference.is = "inches";
  difference.rounded_to = "1/32 in";
  EXPECT_EQ(words_of(difference).is, "inches, rounded to 1/32 in");
}

TEST(LimitText, SaysWhenALimitIsTheOwnersOwnAndNotStated) {
  EXPECT_EQ(limit_text({}, Limit::inspection_age), "none stated");
  Limits limits;
  limits.state({Limit::inspection_age, std::nullopt, {}, {}});
  EXPECT_EQ(limit_text(limits, Limit::inspection_age), "off");
}

} // namespace
} // namespace sheerpole::model_words_test
