#pragma once

#include <algorithm>
#include <atomic>
#include <condition_variable>
#include <cstddef>
#include <exception>
#include <functional>
#include <malloc.h>
#include <mutex>
#include <optional>
#include <system_error>
#include <thread>
#include <utility>
#include <vector>

namespace sheerpole {

/// The work of in_order(), and what is done with its results; that on the thread that calls.
template <class Outcome>
struct InOrder {
  std::function<Outcome(std::size_t)> work;          ///< on one of the workers
  std::function<void(std::size_t, Outcome)> deliver; ///< in the order of the index, as soon as can be
  std::function<void(std::size_t)> progress;         ///< how many are done
};

/// Does the work for 0 to `count` - 1 on so many threads at once, at least one. What is delivered, and in
/// which order, does not depend on how many. A thread that the system does not give is done without. An
/// exception of the work is thrown on once all threads have ended.
template <class Outcome>
void in_order(std::size_t count, unsigned workers, const InOrder<Outcome>& what) {
  std::vector<std::optional<Outcome>> outcomes(count);
  std::mutex mutex;
  std::condition_variable news;
  std::atomic<std::size_t> next = 0;
  std::size_t done = 0;
  std::exception_ptr failure;
  const auto take_turns = [&] {
    for (std::size_t i = next++; i < count; i = next++) {
      std::optional<Outcome> outcome;
      std::exception_ptr thrown;
      try {
        outcome = what.work(i);
      } catch (...) {
        thrown = std::current_exception();
        next = count; // nothing new is begun
      }
      const std::lock_guard lock(mutex);
      outcomes[i] = std::move(outcome);
      if (!failure)
        failure = thrown;
      ++done;
      news.notify_one();
    }
  };
  {
    std::vector<std::jthread> threads;
    const std::size_t most = std::clamp<std::size_t>(workers, 1, std::max<std::size_t>(count, 1));
    try {
      while (threads.size() < most)
        threads.emplace_back(take_turns);
    } catch (const std::system_error&) {
      if (threads.empty())
        take_turns();
    }
    std::size_t delivered = 0;
    std::size_t told = 0;
    std::unique_lock lock(mutex);
    while (delivered < count && !failure) {
      news.wait(lock, [&] { return failure || outcomes[delivered] || done > told; });
      const std::size_t so_far = done;
      std::vector<Outcome> ready;
      const std::size_t first = delivered;
      for (; delivered < count && outcomes[delivered]; ++delivered) {
        ready.push_back(*std::move(outcomes[delivered]));
        outcomes[delivered].reset();
      }
      lock.unlock();
      for (std::size_t i = 0; i < ready.size(); ++i)
        what.deliver(first + i, std::move(ready[i]));
      if (so_far > told)
        what.progress(told = so_far);
      lock.lock();
    }
  }
  if (failure)
    std::rethrow_exception(failure);
}

/// Most workers that can be asked for.
inline constexpr unsigned most_workers = 256;

/// How many work at once: as asked, and for 0 as many as there are processors for us.
inline unsigned workers_for(unsigned asked) {
  return asked != 0 ? asked : std::max(1U, std::thread::hardware_concurrency());
}

/// What is given back from one boat is kept for the next: to ask the system for it again each time would
/// take a fifth of the whole.
inline void keep_memory() {
#ifdef __GLIBC__
  mallopt(M_MMAP_THRESHOLD, 16 << 20);
  mallopt(M_TRIM_THRESHOLD, 64 << 20);
#endif
}

/// "23 of 1000" on the last line of the error stream, over and over; only when that is a terminal.
class ProgressLine {
public:
  explicit ProgressLine(std::size_t count) : count_(count) {}
  void show(std::size_t done);
  /// Makes room for something else to be printed.
  void clear();

private:
  std::size_t count_;
  bool shown_ = false;
};

} // namespace sheerpole
