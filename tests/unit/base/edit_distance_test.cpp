#include "base/edit_distance.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <string>

namespace sheerpole::edit_distance_test {
namespace {

/// The worked examples of the optimal string alignment distance: kitten and sitting are the textbook pair
/// of Wagner and Fischer (1974); "ca" and "abc" tell it from the unrestricted Damerau distance, which is 2
/// there.
TEST(EditDistance, TextbookPairs) {
  EXPECT_EQ(edit_distance("kitten", "sitting"), 3u);
  EXPECT_EQ(edit_distance("ca", "abc"), 3u);
  EXPECT_EQ(edit_distance("", "abc"), 3u);
  EXPECT_EQ(edit_distance("shroud", "shruod"), 1u); // a swap counts once
  EXPECT_EQ(edit_distance("stay", "stay"), 0u);
}

RC_GTEST_PROP(EditDistance, IsSymmetricAndBoundedByTheLongerWord,
              (const std::string& a, const std::string& b)) {
  const std::size_t distance = edit_distance(a, b);
  RC_ASSERT(distance == edit_distance(b, a));
  RC_ASSERT(distance <= std::max(a.size(), b.size()));
  RC_ASSERT((distance == 0) == (a == b));
}

TEST(NearestName, OffersALikelySlipAndNothingFarFetched) {
  const std::vector<std::string> names{"cap-shroud", "lower-shroud", "backstay"};
  EXPECT_EQ(nearest_name("cap-shruod", names), "cap-shroud");
  EXPECT_EQ(nearest_name("bakstay", names), "backstay");
  EXPECT_EQ(nearest_name("forestay", names), std::nullopt); // four letters away
  EXPECT_EQ(nearest_name("x", names), std::nullopt);
  EXPECT_EQ(nearest_name("", names), std::nullopt);
}

TEST(NearestName, TheFirstOfEquallyNearOnesIsOffered) {
  EXPECT_EQ(nearest_name("tip-3", {"tip-1", "tip-2"}), "tip-1");
}

} // namespace
} // namespace sheerpole::edit_distance_test
