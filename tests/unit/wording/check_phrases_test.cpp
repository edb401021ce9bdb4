#include "wording/checks/adjuster_phrases.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/evidence_phrases.hpp"
#include "wording/checks/geometry_phrases.hpp"
#include "wording/checks/length_phrases.hpp"
#include "wording/checks/securing_phrases.hpp"
#include "wording/checks/splice_phrases.hpp"
#include "wording/checks/strength_phrases.hpp"
#include "wording/say.hpp"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace sheerpole::check_phrases_test {
namespace {

template <class Phrase>
class CheckPhrases : public testing::Test {};

using Subjects = testing::Types<AnyCheckPhrase, LengthCheckPhrase, SecuringCheckPhrase, AdjusterCheckPhrase,
                                SpliceCheckPhrase, GeometryCheckPhrase, StrengthCheckPhrase,
                                EvidenceCheckPhrase, OwnRulePhrase>;
TYPED_TEST_SUITE(CheckPhrases, Subjects);

// Beyond the last phrase there are no words.
TYPED_TEST(CheckPhrases, HaveWordsThatDifferAndPlacesThatAreFilledInOneByOne) {
  std::set<std::string_view> seen;
  for (std::uint16_t number = 0;; ++number) {
    const std::string_view phrase = words(static_cast<TypeParam>(number));
    if (phrase.empty())
      break;
    EXPECT_TRUE(seen.insert(phrase).second) << phrase;
    EXPECT_EQ(phrase.find("  "), std::string_view::npos) << phrase;
    for (std::size_t at = 0; at < phrase.size(); ++at)
      if (phrase[at] == '{') {
        ASSERT_LT(at + 1, phrase.size()) << phrase;
        EXPECT_EQ(phrase[at + 1], '}') << phrase;
      }
  }
  EXPECT_GE(seen.size(), 10u);
}

TEST(CheckPhraseWords, AreFilledInWithWhatTheCheckSaw) {
  const Rig rig;
  EXPECT_EQ(
      say(rig, {AnyCheckPhrase::sides_of_adjuster, {Length::millimetres(24), Length::millimetres(0.5)}}),
      "24 mm to tighten, 0.5 mm to slacken");
  const Remark seen(StrengthCheckPhrase::gets_to, {Words{"hmpe-9"}, Temperature{323.15}});
  EXPECT_EQ(say(rig, {StrengthCheckPhrase::at_most_two, {Remarks{{seen}}, Share{0.15}, Share{0.2}}}),
            "hmpe-9 gets to 50 degC; at most 15 %, the very most 20 %");
}

} // namespace
} // namespace sheerpole::check_phrases_test
