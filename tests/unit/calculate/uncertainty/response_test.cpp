#include "calculate/uncertainty/random_numbers.hpp"
#include "calculate/uncertainty/response.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <thread>

namespace sheerpole::response_test {
namespace {

UncertainInput input(Distribution distribution, double standard, std::size_t freedom = 0) {
  UncertainInput result;
  result.distribution = distribution;
  result.freedom = freedom;
  result.bound = standard / result.standard_over_bound();
  return result;
}

/// The sum of all inputs, each as it is: the additive model of JCGM 101:2008, 9.2.1.
Response sum_of(const std::vector<UncertainInput>& inputs) {
  Response response;
  for (std::size_t i = 0; i < inputs.size(); ++i)
    response.linear.push_back({i, inputs[i].bound});
  return response;
}

Drawn drawn(const Response& response, const std::vector<UncertainInput>& inputs,
            std::size_t draws = 1'000'000, std::uint64_t seed = 1) {
  const DrawRequest request{&response, 0.0, 0.0};
  return monte_carlo(std::span(&request, 1), inputs, draws, seed, 2).front();
}

/// In a thread of its own, which has kept nothing from before.
std::vector<Drawn> drawn_afresh(std::span<const DrawRequest> requests,
                                const std::vector<UncertainInput>& inputs, std::size_t draws,
                                std::uint64_t seed, unsigned threads) {
  std::vector<Drawn> result;
  std::thread([&] { result = monte_carlo(requests, inputs, draws, seed, threads); }).join();
  return result;
}

void expect_same(const Drawn& a, const Drawn& b) {
  EXPECT_EQ(a.mean, b.mean);
  EXPECT_EQ(a.standard, b.standard);
  EXPECT_EQ(a.low, b.low);
  EXPECT_EQ(a.high, b.high);
  EXPECT_EQ(a.within, b.within);
}

// JCGM 101:2008, 9.2.2: four normal inputs of standard deviation 1: u = 2.0, 95 % interval +-3.92 (exactly
// 3.91993), by both methods. From memory of the publication; 3.91993 is 2 times the normal quantile.
TEST(AdditiveModel, FourNormalInputs) {
  const std::vector<UncertainInput> inputs(4, input(Distribution::normal_at_two, 1.0));
  const Propagated propagated = propagate(sum_of(inputs), inputs);
  EXPECT_NEAR(propagated.standard, 2.0, 1e-12);
  EXPECT_NEAR(propagated.expanded, 3.91993, 5e-6);
  const Drawn trial = drawn(sum_of(inputs), inputs);
  EXPECT_NEAR(trial.standard, 2.0, 0.01);
  EXPECT_NEAR(trial.high, 3.91993, 0.02);
  EXPECT_NEAR(trial.low, -3.91993, 0.02);
  // Both within 2 % of each other, as inputs are normal.
  EXPECT_NEAR(trial.high / propagated.expanded, 1.0, 0.02);
}

// JCGM 101:2008, 9.2.3: four rectangular inputs of standard deviation 1: +-3.92 by the law of propagation,
// +-3.88 by Monte Carlo; exactly 2 sqrt(3) (2 - (3/5)^(1/4)) = 3.87941.
TEST(AdditiveModel, FourRectangularInputs) {
  const std::vector<UncertainInput> inputs(4, input(Distribution::rectangular, 1.0));
  const Propagated propagated = propagate(sum_of(inputs), inputs);
  EXPECT_NEAR(propagated.standard, 2.0, 1e-12);
  EXPECT_NEAR(propagated.expanded, 3.92, 0.005);
  const double exact = 2.0 * std::sqrt(3.0) * (2.0 - std::pow(0.6, 0.25));
  ASSERT_NEAR(exact, 3.87941, 5e-6);
  const Drawn trial = drawn(sum_of(inputs), inputs);
  EXPECT_NEAR(trial.high, exact, 0.01);
  EXPECT_NEAR(trial.low, -exact, 0.01);
}

// JCGM 101:2008, 9.2.4: one of the four rectangular inputs of standard deviation 10: u = 10.1, +-19.9 by
// the law of propagation, +-17.0 by Monte Carlo; recomputed exactly 10.14889, 19.8915, 17.01581.
TEST(AdditiveModel, OneInputOfTenTimesTheWidth) {
  std::vector<UncertainInput> inputs(4, input(Distribution::rectangular, 1.0));
  inputs[3] = input(Distribution::rectangular, 10.0);
  const Propagated propagated = propagate(sum_of(inputs), inputs);
  EXPECT_NEAR(propagated.standard, 10.14889, 5e-6);
  EXPECT_NEAR(propagated.expanded, 19.8915, 5e-5);
  const Drawn trial = drawn(sum_of(inputs), inputs);
  EXPECT_NEAR(trial.high, 17.01581, 0.03);
  EXPECT_NEAR(trial.low, -17.01581, 0.03);
}

// JCGM 100:2008, table G.2, fraction 95 %.
TEST(StudentFactor, AgreesWithThePublishedTable) {
  const std::pair<std::size_t, double> table[] = {
      {1, 12.71}, {2, 4.30},  {3, 3.18},  {4, 2.78},  {5, 2.57},  {6, 2.45},  {7, 2.36},   {8, 2.31},
      {9, 2.26},  {10, 2.23}, {15, 2.13}, {20, 2.09}, {30, 2.04}, {50, 2.01}, {100, 1.984}};
  for (const auto& [freedom, factor] : table)
    EXPECT_NEAR(student_factor_95(freedom), factor, freedom == 100 ? 0.0005 : 0.005) << freedom;
  EXPECT_NEAR(student_factor_95(0), 1.960, 0.0005);
}

// Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.5 (from memory).
TEST(NormalQuantile, AgreesWithTheHandbook) {
  EXPECT_NEAR(normal_quantile(0.975), 1.95996398, 5e-9);
  EXPECT_NEAR(normal_quantile(0.5), 0.0, 1e-15);
  EXPECT_NEAR(normal_quantile(0.9), 1.28155157, 5e-9);
  EXPECT_NEAR(normal_quantile(0.999), 3.09023231, 5e-9);
  EXPECT_NEAR(normal_quantile(1e-9), -5.99780702, 5e-9);
}

// Welch-Satterthwaite, JCGM 100:2008, G.4.1: two means of five readings of equal weight have eight degrees
// together, and a bound beside them adds to the variance alone.
TEST(Propagation, DegreesOfFreedomAreCombined) {
  std::vector<UncertainInput> inputs(2, input(Distribution::student, 1.0, 4));
  EXPECT_DOUBLE_EQ(propagate(sum_of(inputs), inputs).freedom, 8.0);
  inputs.push_back(input(Distribution::rectangular, std::sqrt(2.0)));
  EXPECT_DOUBLE_EQ(propagate(sum_of(inputs), inputs).freedom, 32.0);
}

TEST(WorstCase, ContainsEveryDraw) {
  std::vector<UncertainInput> inputs{input(Distribution::rectangular, 1.0),
                                     input(Distribution::triangular, 2.0),
                                     input(Distribution::rectangular, 0.5)};
  Response response = sum_of(inputs);
  response.products.push_back({0, 1, 0.7});
  response.products.push_back({2, 2, -0.4});
  const WorstCase worst = worst_case(response, inputs);
  const DrawRequest request{&response, worst.low, worst.high};
  const Drawn trial = monte_carlo(std::span(&request, 1), inputs, 200'000, 7, 2).front();
  EXPECT_EQ(trial.within, 1.0);
  EXPECT_GT(trial.low, worst.low);
  EXPECT_LT(trial.high, worst.high);
}

// A product of two independent inputs of standard deviation u has standard deviation u^2: elementary.
TEST(MonteCarlo, ProductsOfInputs) {
  const std::vector<UncertainInput> inputs(2, input(Distribution::normal_at_two, 3.0));
  Response response;
  response.products.push_back({0, 1, inputs[0].bound * inputs[1].bound});
  const Drawn trial = drawn(response, inputs);
  EXPECT_NEAR(trial.standard, 9.0, 0.05);
  EXPECT_NEAR(trial.mean, 0.0, 0.05);
}

// JCGM 101:2008, 6.4.9.4: the standard deviation of a t distribution of 5 degrees is sqrt(5/3).
TEST(MonteCarlo, MeansOfReadingsHaveWideTails) {
  const std::vector<UncertainInput> inputs{input(Distribution::student, 1.0, 5)};
  const Drawn trial = drawn(sum_of(inputs), inputs);
  EXPECT_NEAR(trial.standard, std::sqrt(5.0 / 3.0), 0.01);
  EXPECT_NEAR(trial.high, 2.5706, 0.02); // JCGM 100:2008, table G.2: 2.57
}

TEST(MonteCarlo, IsTheSameOnOneThreadAndOnMany) {
  const std::vector<UncertainInput> inputs(5, input(Distribution::rectangular, 1.0));
  const Response response = sum_of(inputs);
  const DrawRequest requests[] = {{&response, -1.0, 1.0}, {&response, -2.0, 2.0}};
  const std::vector<Drawn> one = drawn_afresh(requests, inputs, 10'001, 42, 1);
  const std::vector<Drawn> many = drawn_afresh(requests, inputs, 10'001, 42, 5);
  ASSERT_EQ(one.size(), 2u);
  for (std::size_t i = 0; i < 2; ++i)
    expect_same(one[i], many[i]);
  EXPECT_NE(monte_carlo(requests, inputs, 10'001, 43, 1)[0].mean, one[0].mean);
}

// The next boat of a fleet is told what was drawn for the one before, where the two are alike: the same as
// if nothing had been kept, with other limits too, and the other way round for an amount below nothing.
TEST(MonteCarlo, WhatWasKeptIsAsIfDrawnAnew) {
  const std::vector<UncertainInput> inputs{input(Distribution::rectangular, 1.0),
                                           input(Distribution::student, 1.0, 3)};
  const Response both = sum_of(inputs);
  const Response one{{{1, 0.7}}, {}};
  const Response longer{{{1, 1.4}}, {}};
  const Response shorter{{{1, -0.7}}, {}};
  const DrawRequest first[] = {{&both, -1.0, 1.0}, {&one, -1.0, 1.5}};
  const DrawRequest second[] = {{&both, -0.5, 2.0},    {&one, -1.0, 0.5},  {&longer, -2.0, 1.0},
                                {&shorter, -1.0, 1.5}, {&both, -1e3, 1e3}, {&both, 1e3, 2e3}};
  std::vector<Drawn> kept;
  std::thread([&] {
    monte_carlo(first, inputs, 20'001, 9, 1);
    kept = monte_carlo(second, inputs, 20'001, 9, 1);
  }).join();
  const std::vector<Drawn> afresh = drawn_afresh(second, inputs, 20'001, 9, 1);
  for (std::size_t i = 0; i < kept.size(); ++i) {
    SCOPED_TRACE(i);
    expect_same(kept[i], afresh[i]);
  }
  EXPECT_DOUBLE_EQ(kept[2].high, 2.0 * kept[1].high);
  EXPECT_EQ(kept[3].high, -kept[1].low);
  EXPECT_EQ(kept[4].within, 1.0);
  EXPECT_EQ(kept[5].within, 0.0);
}

// Port and starboard mostly respond alike and are drawn once: each is to have what it would have alone.
TEST(MonteCarlo, WhatRespondsAlikeIsAsIfDrawnAlone) {
  const std::vector<UncertainInput> inputs(3, input(Distribution::rectangular, 1.0));
  const Response port = sum_of(inputs);
  const Response starboard = port;
  Response other = port;
  other.linear.pop_back();
  const DrawRequest requests[] = {
      {&port, -1.0, 1.0}, {&other, -1.0, 1.0}, {&starboard, -0.5, 2.0}, {&port, -1.0, 1.0}};
  const std::vector<Drawn> together = monte_carlo(requests, inputs, 10'001, 42, 2);
  for (std::size_t i = 0; i < together.size(); ++i) {
    SCOPED_TRACE(i);
    expect_same(together[i], drawn_afresh(std::span(&requests[i], 1), inputs, 10'001, 42, 1).front());
  }
  EXPECT_NE(together[0].within, together[2].within);
  EXPECT_NE(together[0].standard, together[1].standard);
}

} // namespace
} // namespace sheerpole::response_test
