#include "base/in_threads.hpp"
#include "calculate/uncertainty/random_numbers.hpp"
#include "calculate/uncertainty/response.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <memory>
#include <span>
#include <tuple>

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

/// Which requests are alike but for their limits.
struct Alike {
  std::vector<const Response*> responses; ///< each once, in the order of the requests
  std::vector<std::size_t> of_request;    ///< its place among them, by request
};

Alike alike(std::span<const DrawRequest> requests) {
  const auto less = [](const Response* a, const Response* b) {
    return std::tie(a->linear, a->products) < std::tie(b->linear, b->products);
  };
  std::map<const Response*, std::size_t, decltype(less)> places(less);
  Alike found;
  for (const DrawRequest& request : requests) {
    const auto [place, fresh] = places.try_emplace(request.response, found.responses.size());
    if (fresh)
      found.responses.push_back(request.response);
    found.of_request.push_back(place->second);
  }
  return found;
}

/// Of a list of values those before and behind which `n` others come in ascending order.
struct Tails {
  double low = 0.0;
  double high = 0.0;
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
  return {lows[n], highs[highs.size() - 1 - n]};
}

class Trial {
public:
  Trial(std::span<const DrawRequest> requests, std::span<const UncertainInput> inputs, std::size_t draws,
        std::uint64_t seed)
      : requests_(requests), inputs_(inputs), draws_(draws), seed_(seed), used_(inputs.size(), false),
        alike_(alike(requests)) {
    for (const Response* response : alike_.responses) {
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

  std::vector<Drawn> spread(unsigned threads) {
    // The limits may differ where the responses do not; mostly those of all are the same.
    std::vector<const DrawRequest*> first(alike_.responses.size(), nullptr);
    for (std::size_t i = 0; i < requests_.size(); ++i)
      if (first[alike_.of_request[i]] == nullptr)
        first[alike_.of_request[i]] = &requests_[i];
    std::vector<Drawn> of_response(first.size());
    in_turn(threads, first.size(), [&](std::size_t begin, std::size_t step, std::size_t count) {
      for (std::size_t i = begin; i < count; i += step)
        of_response[i] = spread_of(values(i), *first[i]);
    });
    std::vector<Drawn> result;
    result.reserve(requests_.size());
    for (std::size_t i = 0; i < requests_.size(); ++i) {
      const std::size_t response = alike_.of_request[i];
      result.push_back(of_response[response]);
      if (requests_[i].least != first[response]->least || requests_[i].most != first[response]->most)
        result.back().within = share_within(values(response), requests_[i]);
    }
    return result;
  }

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
    for (std::size_t r = 0; r < alike_.responses.size(); ++r) {
      Block sum{};
      for (const Response::Linear& term : alike_.responses[r]->linear) {
        const Block& z = drawn[term.input];
        for (std::size_t k = 0; k < block_size; ++k)
          sum[k] += term.amount * z[k];
      }
      for (const Response::Product& term : alike_.responses[r]->products) {
        const Block& a = drawn[term.first];
        const Block& b = drawn[term.second];
        for (std::size_t k = 0; k < block_size; ++k)
          sum[k] += term.amount * a[k] * b[k];
      }
      std::copy_n(sum.begin(), count, results_[r].get() + from);
    }
  }

  std::span<const double> values(std::size_t response) const { return {results_[response].get(), draws_}; }

  /// 1 or 0.
  static std::size_t is_within(double value, const DrawRequest& request) {
    return static_cast<std::size_t>(value >= request.least) &
           static_cast<std::size_t>(value <= request.most);
  }

  static double share_within(std::span<const double> values, const DrawRequest& request) {
    std::size_t within = 0;
    for (const double value : values)
      within += is_within(value, request);
    return static_cast<double>(within) / static_cast<double>(values.size());
  }

  static Drawn spread_of(std::span<const double> values, const DrawRequest& request) {
    Drawn result;
    const auto count = static_cast<double>(values.size());
    FourSums sums{};
    in_lanes(values, [&](std::size_t lane, double value) { sums[lane] += value; });
    const double mean = whole(sums) / count;
    FourSums squares{};
    std::size_t within = 0;
    in_lanes(values, [&](std::size_t lane, double value) {
      squares[lane] += (value - mean) * (value - mean);
      within += is_within(value, request);
    });
    result.mean = mean;
    result.standard = std::sqrt(whole(squares) / (count - 1.0));
    result.within = static_cast<double>(within) / count;
    const auto below = static_cast<std::size_t>(std::floor(0.025 * count));
    const Tails found = tails(values, below);
    result.low = found.low;
    result.high = found.high;
    return result;
  }

  std::span<const DrawRequest> requests_;
  std::span<const UncertainInput> inputs_;
  std::size_t draws_;
  std::uint64_t seed_;
  std::vector<char> used_;
  Alike alike_;
  std::vector<std::unique_ptr<double[]>> results_; ///< by response of alike_: of each draw
};

} // namespace

std::vector<Drawn> monte_carlo(std::span<const DrawRequest> requests,
                               std::span<const UncertainInput> inputs, std::size_t draws,
                               std::uint64_t seed, unsigned threads) {
  if (requests.empty())
    return {};
  Trial trial(requests, inputs, std::max<std::size_t>(draws, 40), seed);
  trial.run(threads);
  return trial.spread(threads);
}

} // namespace sheerpole
