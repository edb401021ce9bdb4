#include "driver/fleet/in_order.hpp"

#include <gtest/gtest.h>

#include <chrono>
#include <stdexcept>
#include <string>

namespace sheerpole::in_order_test {
namespace {

/// What is delivered of `count` pieces of work, of which the first takes longest.
std::string delivered(std::size_t count, unsigned workers) {
  std::string order;
  std::size_t most_done = 0;
  const auto here = std::this_thread::get_id();
  in_order<std::string>(count, workers,
                        {.work =
                             [](std::size_t i) {
                               if (i == 0)
                                 std::this_thread::sleep_for(std::chrono::milliseconds(20));
                               return std::to_string(i) + " ";
                             },
                         .deliver =
                             [&](std::size_t i, const std::string& text) {
                               EXPECT_EQ(std::this_thread::get_id(), here);
                               EXPECT_EQ(text, std::to_string(i) + " ");
                               order += text;
                             },
                         .progress =
                             [&](std::size_t done) {
                               EXPECT_GT(done, most_done);
                               most_done = done;
                             }});
  EXPECT_EQ(most_done, count);
  return order;
}

TEST(InOrder, DeliversInOrderWhateverTheWorkers) {
  const std::string expected = "0 1 2 3 4 5 6 7 8 9 10 11 ";
  EXPECT_EQ(delivered(12, 1), expected);
  EXPECT_EQ(delivered(12, 2), expected);
  EXPECT_EQ(delivered(12, 5), expected);
  EXPECT_EQ(delivered(12, 200), expected);
  EXPECT_EQ(delivered(12, 0), expected);
}

TEST(InOrder, NothingToDo) {
  EXPECT_EQ(delivered(0, 3), "");
}

TEST(InOrder, AnExceptionIsThrownOnWhenAllHaveEnded) {
  std::atomic<int> under_way = 0;
  EXPECT_THROW(in_order<int>(50, 4,
                             {.work =
                                  [&](std::size_t i) {
                                    ++under_way;
                                    std::this_thread::sleep_for(std::chrono::milliseconds(1));
                                    --under_way;
                                    if (i == 7)
                                      throw std::runtime_error("seven");
                                    return 0;
                                  },
                              .deliver = [](std::size_t i, int) { EXPECT_LT(i, 7U); },
                              .progress = [](std::size_t) {}}),
               std::runtime_error);
  EXPECT_EQ(under_way, 0);
}

} // namespace
} // namespace sheerpole::in_order_test
