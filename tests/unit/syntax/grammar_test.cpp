#include "syntax/antlr/prediction_reports.hpp"
#include "unit/syntax/parsed_text.hpp"

#include <gmock/gmock.h>

using namespace sheerpole;
using ::testing::IsEmpty;
using ::testing::Not;

TEST(Grammar, EveryChoiceIsMadeOnTheNextToken) {
  // Words with a meaning in every place where they are names.
  const std::string words_as_names = R"(boat b "B" from c of d.port { }
stay measured { stack { x
2 x x (drawn: drawn drawn)
of
from from of of of.of { } } }
let let = free measured
let a = [b free, c ends] mirrored +- 2 mm standard
let d = (1, 2, 3) m + (a - b) * -c / 2 kg/m
let e = jaw (a: (b), c: eye ())
points { from: x
x.x "X": drawn
}
)";
  for (const std::string& text :
       {syntax_test::sample, words_as_names, std::string("points { }"), std::string()})
    EXPECT_THAT(prediction_reports(SourceText(SourceId{0}, "sample", text)), IsEmpty());
}

TEST(Grammar, TheReportsAreAbleToSaySomething) {
  EXPECT_THAT(prediction_reports(SourceText(SourceId{0}, "bad", "boat { = }")), Not(IsEmpty()));
  EXPECT_THAT(prediction_reports(SourceText(SourceId{0}, "bad", "boat {")), Not(IsEmpty()));
}
