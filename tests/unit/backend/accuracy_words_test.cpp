#include "backend/accuracy_words.hpp"

#include "unit/backend/sample_rig.hpp"

#include <gtest/gtest.h>

namespace sheerpole::accuracy_words_test {
namespace {

TEST(AccuracyWords, ARangeThatIsTheSameBothWaysIsSaidOnce) {
  const auto range = [](double low, double high) {
    return range_words(Length::millimetres(low), Length::millimetres(high));
  };
  EXPECT_EQ(range(-2.4, 2.4), "± 2.4");
  EXPECT_EQ(range(-2.44, 2.36), "± 2.4") << "as printed";
  EXPECT_EQ(range(-6.9, 6.8), "-6.9 / +6.8");
  EXPECT_EQ(range(0.0, 0.0), "± 0.0");
  EXPECT_EQ(range(0.0, 3.0), "+0.0 / +3.0");
}

TEST(AccuracyWords, WhatHasNoToleranceIsNamedFirstAndTheRestIsCounted) {
  const auto words = [](std::size_t count) {
    Uncertainty found;
    for (std::size_t i = 0; i < count; ++i)
      found.without_bound.push_back(SampleRig::saying("something"));
    return without_tolerance(found, [](const Remark&) { return std::string("length of toggle-12"); });
  };
  EXPECT_EQ(words(0), "");
  EXPECT_EQ(words(1), "length of toggle-12");
  EXPECT_EQ(words(2), "length of toggle-12 and one more");
  EXPECT_EQ(words(4), "length of toggle-12 and 3 more");
}

} // namespace
} // namespace sheerpole::accuracy_words_test
