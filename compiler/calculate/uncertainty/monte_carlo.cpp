#include "base/in_threads.hpp"
#include "calculate/uncertainty/random_numbers.hpp"
#include "calculate/uncertainty/response.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <utility>

namespace sheerpole {

namespace {

constexpr std::size_t block_size = 512; // the draws of all inputs of a boat stay in the nearest cache
using Block = std::array<double, block_size>;

double student(RandomStream& stream, std::size_t freedom) {
  const double normal = normal_quantile(stream.uniform());
  double sum = 0.0;
  for (std::size_t i = 0; i < freedom; ++i) {
    const double other = normal_quantile(stream.uniform());
    sum += other * other;
  }
  return normal / std::sqrt(sum / static_cast<double>(freedom));
}

/// Fills one block with draws of an input, in bounds.
void draw(const UncertainInput& input, RandomStream stream, Block& block) {
  switch (input.distribution) {
  case Distribution::rectangular:
    for (double& z : block)
      z = 2.0 * stream.uniform() - 1.0;
    return;
  case Distribution::triangular:
    for (double& z : block)
      z = stream.uniform() + stream.uniform() - 1.0;
    return;
  case Distribution::normal_at_two:
    for (double& z : block)
      z = 0.5 * normal_quantile(stream.uniform());
    return;
  case Distribution::student:
    for (double& z : block)
      z = student(stream, std::max<std::size_t>(input.freedom, 1));
    return;
  }
}

/// Four sums side by side, since one would have to wait for itself at each step; the order of the additions
/// is fixed, so that the whole is the same everywhere.
using FourSums = std::array<double, 4>;

double whole(const FourSums& sums) {
  return (sums[0] + sums[1]) + (sums[2] + sums[3]);
}

/// Calls `add(lane, value)` with each value; what it adds to a sum is to go to that of its lane.
template <class Add>
void in_lanes(std::span<const double> values, const Add& add) {
  std::size_t i = 0;
  for (; i + 4 <= values.size(); i += 4) {
    add(0, values[i]);
    add(1, values[i + 1]);
    add(2, values[i + 2]);
    add(3, values[i + 3]);
  }
  for (; i < values.size(); ++i)
    add(0, values[i]);
}

/// Of a list of values those before and behind which `n` others come in ascending order.
struct Tails {
  double low = 0.0;
  double high = 0.0;
  double least = 0.0; ///< of all
  double most = 0.0;
};

std::ptrdiff_t step_to(std::size_t place) {
  return static_cast<std::ptrdiff_t>(place);
}

/// Puts the value before which `n` smaller ones come in its place, and the greater ones behind it.
void place_low(std::vector<double>& values, std::size_t n) {
  std::nth_element(values.begin(), values.begin() + step_to(n), values.end());
}

/// Likewise from the other end.
void place_high(std::vector<double>& values, std::size_t n) {
  std::nth_element(values.begin(), values.end() - step_to(n + 1), values.end());
}

/// `n` is to be a small part of them. A sample says beyond which values the two must be looked for, so that
/// a few of the values are sorted and not all of them.
Tails tails(std::span<const double> values, std::size_t n) {
  constexpr std::size_t sample_size = 1000;
  std::vector<double> lows;
  std::vector<double> highs;
  if (values.size() > 10 * sample_size) {
    const std::size_t step = values.size() / sample_size;
    std::vector<double> sample;
    for (std::size_t i = 0; i < values.size(); i += step)
      sample.push_back(values[i]);
    // Further from the end than in all of the values, so that it is rare that they are too few.
    const std::size_t share = n / step;
    const std::size_t place = std::min(sample.size() - 1, share + share / 2 + 10);
    place_low(sample, place);
    const double low_bound = sample[place];
    place_high(sample, place);
    const double high_bound = sample[sample.size() - 1 - place];
    Block low{};
    Block high{};
    for (std::size_t from = 0; from < values.size(); from += block_size) {
      std::size_t low_count = 0;
      std::size_t high_count = 0;
      // Without a branch: which way it goes would be guessed wrong too often.
      for (std::size_t i = from; i < std::min(from + block_size, values.size()); ++i) {
        const double value = values[i];
        low[low_count] = value;
        low_count += value <= low_bound ? 1U : 0U;
        high[high_count] = value;
        high_count += value >= high_bound ? 1U : 0U;
      }
      lows.insert(lows.end(), low.begin(), low.begin() + step_to(low_count));
      highs.insert(highs.end(), high.begin(), high.begin() + step_to(high_count));
    }
  }
  if (lows.size() <= n)
    lows.assign(values.begin(), values.end());
  if (highs.size() <= n)
    highs.assign(values.begin(), values.end());
  place_low(lows, n);
  place_high(highs, n);
  const auto from_high = highs.end() - step_to(n + 1);
  return {lows[n], *from_high, *std::min_element(lows.begin(), lows.begin() + step_to(n + 1)),
          *std::max_element(from_high, highs.end())};
}

/// How the draws of a response lie, whatever the limits of the request.
struct Spread {
  double mean = 0.0;
  double standard = 0.0;
  double low = 0.0;
  double high = 0.0;
  double least = 0.0; ///< of all draws
  double most = 0.0;
};

class Trial {
public:
  Trial(std::span<const Response* const> responses, std::span<const UncertainInput> inputs,
        std::size_t draws, std::uint64_t seed)
      : responses_(responses), inputs_(inputs), draws_(draws), seed_(seed), used_(inputs.size(), false) {
    for (const Response* response : responses_) {
      // Not filled with anything: each is written before it is read.
      results_.push_back(std::unique_ptr<double[]>(new double[draws]));
      for (const Response::Linear& term : response->linear)
        used_[term.input] = true;
      for (const Response::Product& term : response->products)
        used_[term.first] = used_[term.second] = true;
    }
  }

  void run(unsigned threads) {
    const std::size_t blocks = (draws_ + block_size - 1) / block_size;
    in_turn(threads, blocks, [this](std::size_t first, std::size_t step, std::size_t count) {
      std::vector<Block> drawn(inputs_.size());
      for (std::size_t block = first; block < count; block += step)
        run_block(block, drawn);
    });
  }

  std::vector<Spread> spread(unsigned threads) const {
    std::vector<Spread> result(responses_.size());
    in_turn(threads, result.size(), [&](std::size_t begin, std::size_t step, std::size_t count) {
      for (std::size_t i = begin; i < count; i += step)
        result[i] = spread_of(values(i));
    });
    return result;
  }

  std::span<const double> values(std::size_t response) const { return {results_[response].get(), draws_}; }

private:
  /// Calls `work(first, step, count)` once a thread, so that thread t does t, t + step and so on.
  template <class Work>
  static void in_turn(unsigned threads, std::size_t count, const Work& work) {
    const unsigned step = std::clamp(threads, 1U, 64U);
    in_threads(step, [&](unsigned t) { work(t, step, count); });
  }

  void run_block(std::size_t block, std::vector<Block>& drawn) {
    for (std::size_t i = 0; i < inputs_.size(); ++i)
      if (used_[i])
        draw(inputs_[i], RandomStream(seed_, i, block), drawn[i]);
    const std::size_t from = block * block_size;
    const std::size_t count = std::min(block_size, draws_ - from);
    for (std::size_t r = 0; r < responses_.size(); ++r) {
      Block sum{};
      for (const Response::Linear& term : responses_[r]->linear) {
        const Block& z = drawn[term.input];
        for (std::size_t k = 0; k < block_size; ++k)
          sum[k] += term.amount * z[k];
      }
      for (const Response::Product& term : responses_[r]->products) {
        const Block& a = drawn[term.first];
        const Block& b = drawn[term.second];
        for (std::size_t k = 0; k < block_size; ++k)
          sum[k] += term.amount * a[k] * b[k];
      }
      std::copy_n(sum.begin(), count, results_[r].get() + from);
    }
  }

  static Spread spread_of(std::span<const double> values) {
    Spread result;
    const auto count = static_cast<double>(values.size());
    FourSums sums{};
    in_lanes(values, [&](std::size_t lane, double value) { sums[lane] += value; });
    result.mean = whole(sums) / count;
    FourSums squares{};
    in_lanes(values, [&](std::size_t lane, double value) {
      squares[lane] += (value - result.mean) * (value - result.mean);
    });
    result.standard = std::sqrt(whole(squares) / (count - 1.0));
    const Tails found = tails(values, static_cast<std::size_t>(std::floor(0.025 * count)));
    result.low = found.low;
    result.high = found.high;
    result.least = found.least;
    result.most = found.most;
    return result;
  }

  std::span<const Response* const> responses_;
  std::span<const UncertainInput> inputs_;
  std::size_t draws_;
  std::uint64_t seed_;
  std::vector<char> used_;
  std::vector<std::unique_ptr<double[]>> results_; ///< by response: of each draw
};

/// A response of one input is drawn for one bound, and goes with its amount: multiplying keeps the order.
bool is_of_one_input(const Response& response) {
  return response.linear.size() == 1 && response.products.empty();
}

Spread times(const Spread& one, double amount) {
  Spread result{amount * one.mean,  std::fabs(amount) * one.standard,
                amount * one.low,   amount * one.high,
                amount * one.least, amount * one.most};
  if (amount < 0.0) {
    std::swap(result.low, result.high);
    std::swap(result.least, result.most);
  }
  return result;
}

/// What the draws of a response follow from, and nothing else: two boats that are alike in it share them.
using DrawKey = std::vector<std::uint64_t>;

DrawKey key_of(const Response& response, std::span<const UncertainInput> inputs, std::size_t draws,
               std::uint64_t seed) {
  DrawKey key{draws, seed};
  const auto add = [&](std::size_t input) {
    key.push_back(input); // which stream of random numbers it is
    key.push_back(static_cast<std::uint64_t>(inputs[input].distribution));
    key.push_back(inputs[input].freedom);
  };
  for (const Response::Linear& term : response.linear) {
    add(term.input);
    key.push_back(std::bit_cast<std::uint64_t>(term.amount));
  }
  for (const Response::Product& term : response.products) {
    add(term.first);
    add(term.second);
    key.push_back(std::bit_cast<std::uint64_t>(term.amount));
  }
  key.push_back(response.linear.size());
  return key;
}

/// Spreads that this thread has drawn, for the next boat of a fleet and for the next key of an editor.
constexpr std::size_t most_kept = 4096;
thread_local std::map<DrawKey, Spread> kept_spreads;

/// The share of draws that lie between the limits of a request.
double share_within(std::span<const double> values, double amount, const DrawRequest& request) {
  std::size_t count = 0; // without a branch
  for (const double value : values)
    count += static_cast<std::size_t>(amount * value >= request.least) &
             static_cast<std::size_t>(amount * value <= request.most);
  return static_cast<double>(count) / static_cast<double>(values.size());
}

/// A request with what is drawn for it: its response, or, of a single input, that for one bound, and by
/// what to multiply.
struct DrawTask {
  Response response;
  double amount = 1.0;
  DrawKey key;
};

DrawTask task_of(const DrawRequest& request, std::span<const UncertainInput> inputs, std::size_t draws,
                 std::uint64_t seed) {
  DrawTask result{*request.response, 1.0, {}};
  if (is_of_one_input(result.response))
    result.amount = std::exchange(result.response.linear.front().amount, 1.0);
  result.key = key_of(result.response, inputs, draws, seed);
  return result;
}

/// Those that have not been drawn before, each once.
class FreshDraws {
public:
  FreshDraws(const std::vector<DrawTask>& all, std::span<const UncertainInput> inputs, std::size_t draws,
             std::uint64_t seed, unsigned threads) {
    for (const DrawTask& one : all)
      if (!kept_spreads.contains(one.key) && places_.try_emplace(one.key, responses_.size()).second)
        responses_.push_back(&one.response);
    if (responses_.empty())
      return;
    trial_.emplace(responses_, inputs, draws, seed);
    trial_->run(threads);
    const std::vector<Spread> spreads = trial_->spread(threads);
    for (const auto& [key, place] : places_)
      kept_spreads.emplace(key, spreads[place]);
  }

  /// Its draws; nothing when they were drawn before and are not there any more.
  std::optional<std::span<const double>> values(const DrawTask& one) const {
    const auto found = places_.find(one.key);
    return found == places_.end() ? std::nullopt : std::optional(trial_->values(found->second));
  }

private:
  std::map<DrawKey, std::size_t> places_; ///< in responses_
  std::vector<const Response*> responses_;
  std::optional<Trial> trial_;
};

} // namespace

std::vector<Drawn> monte_carlo(std::span<const DrawRequest> requests,
                               std::span<const UncertainInput> inputs, std::size_t draws,
                               std::uint64_t seed, unsigned threads) {
  draws = std::max<std::size_t>(draws, 40);
  if (kept_spreads.size() > most_kept)
    kept_spreads.clear();
  std::vector<DrawTask> all;
  all.reserve(requests.size());
  for (const DrawRequest& request : requests)
    all.push_back(task_of(request, inputs, draws, seed));
  const FreshDraws fresh(all, inputs, draws, seed, threads);
  std::vector<Drawn> result;
  result.reserve(requests.size());
  for (std::size_t i = 0; i < requests.size(); ++i) {
    const Spread spread = times(kept_spreads.at(all[i].key), all[i].amount);
    Drawn drawn{spread.mean, spread.standard, spread.low, spread.high, 0.0};
    if (spread.least >= requests[i].least && spread.most <= requests[i].most) {
      drawn.within = 1.0;
    } else if (const auto values = fresh.values(all[i])) {
      drawn.within = share_within(*values, all[i].amount, requests[i]);
    } else if (spread.most >= requests[i].least && spread.least <= requests[i].most) {
      const Response* const response = &all[i].response;
      Trial again({&response, 1}, inputs, draws, seed);
      again.run(threads);
      drawn.within = share_within(again.values(0), all[i].amount, requests[i]);
    }
    result.push_back(drawn);
  }
  return result;
}

} // namespace sheerpole
