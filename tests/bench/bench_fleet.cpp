// A thousand boats in one call: each checked and her cut list written, and all of them looked through.

#include "backend/backend.hpp"
#include "bench/generated_boat.hpp"
#include "driver/find/find_in_rig.hpp"
#include "driver/fleet/fleet_boat.hpp"
#include "driver/fleet/in_order.hpp"

#include <benchmark/benchmark.h>

#include <sys/resource.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

namespace sheerpole::bench {
namespace {

constexpr std::size_t boats = 1000;
constexpr std::size_t stays = 14;

/// Rig files on the disk, and room for what is made of them; all of it is removed at the end.
class Loft {
public:
  Loft() {
    folder_ = std::filesystem::temp_directory_path() / ("sheerpole-bench-" + std::to_string(getpid()));
    std::filesystem::create_directories(folder_);
    const std::string text = generated_boat(stays);
    for (std::size_t i = 0; i < boats; ++i) {
      files.push_back(folder_ / ("boat-" + std::to_string(i) + ".rig"));
      std::ofstream(files.back(), std::ios::binary) << text;
      folders.push_back(folder_ / ("boat-" + std::to_string(i)));
    }
  }
  Loft(const Loft&) = delete;
  Loft& operator=(const Loft&) = delete;
  ~Loft() {
    std::error_code ignored;
    std::filesystem::remove_all(folder_, ignored);
  }
  std::vector<std::string> files;
  std::vector<std::string> folders;

private:
  std::filesystem::path folder_;
};

/// The most memory that this process has had, in bytes.
double most_memory() {
  rusage usage{};
  getrusage(RUSAGE_SELF, &usage);
  return static_cast<double>(usage.ru_maxrss) * 1024.0;
}

void count(benchmark::State& state) {
  state.counters["most memory"] =
      benchmark::Counter(most_memory(), benchmark::Counter::kDefaults, benchmark::Counter::kIs1024);
  state.counters["boats"] = benchmark::Counter(boats, benchmark::Counter::kIsRate);
}

/// By number of workers.
void check_and_cut_lists(benchmark::State& state) {
  const Loft loft;
  const ChosenBackends chosen = choose_backends({"cut-list"}, {}, false);
  const FleetWork work{
      .rig = {.settings = {}, .folders = {}, .threads = 1}, .write = true, .backends = &chosen.backends};
  keep_memory();
  for (auto _ : state)
    in_order<FleetOutcome>(
        boats, static_cast<unsigned>(state.range(0)),
        {.work = [&](std::size_t i) { return do_boat(loft.files[i], loft.folders[i], work); },
         .deliver =
             [&](std::size_t, const FleetOutcome& outcome) {
               if (outcome.code != exit_clean || outcome.files == 0)
                 state.SkipWithError("a boat was not made");
             },
         .progress = [](std::size_t) {}});
  count(state);
}
BENCHMARK(check_and_cut_lists)->Arg(1)->Arg(2)->Iterations(1)->UseRealTime()->Unit(benchmark::kSecond);

void find_in_all(benchmark::State& state) {
  const Loft loft;
  const auto sought = read_sought("10 mm");
  for (auto _ : state)
    in_order<std::size_t>(
        boats, static_cast<unsigned>(state.range(0)),
        {.work =
             [&](std::size_t i) {
               DiskFileReader reader;
               const Compilation compilation =
                   compile(loft.files[i], reader, {.settings = {}, .folders = {}, .rig_only = true});
               return find_in_rig(sought.value(), *compilation.rig, *compilation.sources).rows.size();
             },
         .deliver =
             [&](std::size_t, std::size_t rows) {
               if (rows != stays)
                 state.SkipWithError("a pin was not found");
             },
         .progress = [](std::size_t) {}});
  count(state);
}
BENCHMARK(find_in_all)->Arg(1)->Arg(2)->Iterations(1)->UseRealTime()->Unit(benchmark::kSecond);

} // namespace
} // namespace sheerpole::bench
