// sheerpole-fuzz PROJECT [--seconds N] [--executions N] [--seed N] [--keep FOLDER] [TARGET...]
//
// Tries the corpus of each target and then changes of it, the same ones for the same seed, in a process of
// its own. What ends that process, or takes longer than a minute, is written to FOLDER (fuzz-found when not
// given). The last line is "N passed, N failed": one for each input of a corpus, and one for the changes of
// each target.

#include "fuzz/mutate.hpp"
#include "fuzz/targets.hpp"

#include <sys/mman.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

namespace sheerpole::fuzz {
namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

constexpr std::size_t longest_input = 32U << 10U;
constexpr unsigned longest_seconds = 60; ///< for one input

struct Options {
  fs::path project;
  double seconds = 5;
  std::uint64_t executions = 0; ///< 0: as many as the seconds allow
  std::uint64_t seed = 1;
  fs::path keep = "fuzz-found";
  std::vector<std::string> targets;
};

/// What the process that tries tells the one that waits for it.
struct Shared {
  std::uint64_t executions;
  std::size_t size;
  char input[longest_input];
};

struct Input {
  std::string name;
  std::string bytes;
};

std::vector<Input> corpus_of(const Target& target, const fs::path& project) {
  std::vector<Input> inputs;
  for (const std::string_view folder : target.folders)
    for (const auto& entry : fs::directory_iterator(project / folder)) {
      if (!entry.is_regular_file() || !entry.path().filename().string().ends_with(target.ending))
        continue;
      std::ifstream stream(entry.path(), std::ios::binary);
      std::string bytes{std::istreambuf_iterator<char>(stream), {}};
      if (bytes.size() <= longest_input)
        inputs.push_back({entry.path().lexically_relative(project).string(), std::move(bytes)});
    }
  std::sort(inputs.begin(), inputs.end(), [](const Input& a, const Input& b) { return a.name < b.name; });
  return inputs;
}

void run_one(const Target& target, std::string_view bytes, Shared& shared) {
  shared.size = bytes.size();
  std::memcpy(shared.input, bytes.data(), bytes.size());
  alarm(longest_seconds);
  target.run(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
  alarm(0);
  ++shared.executions;
}

/// Runs `work` in a process of its own. Empty when it ended well, else how it ended.
template <class Work>
std::string apart(Work work) {
  std::fflush(stdout);
  const pid_t number = fork();
  if (number == 0) {
    work();
    std::fflush(stdout);
    _exit(0);
  }
  int status = 0;
  if (number < 0 || waitpid(number, &status, 0) < 0)
    return "no process";
  if (WIFSIGNALED(status))
    return WTERMSIG(status) == SIGALRM ? "it takes longer than a minute" : strsignal(WTERMSIG(status));
  return WEXITSTATUS(status) == 0 ? "" : "exit code " + std::to_string(WEXITSTATUS(status));
}

void keep(const Options& options, const Target& target, const Shared& shared, const std::string& how) {
  fs::create_directories(options.keep);
  const fs::path path = options.keep / (std::string(target.name) + "-" + std::to_string(shared.executions) +
                                        std::string(target.ending));
  std::ofstream(path, std::ios::binary).write(shared.input, static_cast<std::streamsize>(shared.size));
  std::printf("FAILED %s: %s; the input is kept as %s\n", std::string(target.name).c_str(), how.c_str(),
              path.c_str());
}

/// One of the corpus, or as often one of those that lie in no folder.
const std::string& text_of(const Target& target, const std::vector<Input>& corpus, Dice& dice) {
  const std::vector<std::string>& texts = target.material.texts;
  return texts.empty() || dice.below(2) == 0 ? corpus[dice.below(corpus.size())].bytes
                                             : texts[dice.below(texts.size())];
}

void change_and_try(const Options& options, const Target& target, const std::vector<Input>& corpus,
                    Shared& shared) {
  Dice dice(options.seed);
  const auto begun = Clock::now();
  for (std::uint64_t done = 0; options.executions == 0 || done < options.executions; ++done) {
    if (options.executions == 0 &&
        std::chrono::duration<double>(Clock::now() - begun).count() >= options.seconds)
      break;
    // Two texts are taken before the change, so that the dice fall alike whatever the change does.
    const std::string& one = text_of(target, corpus, dice);
    const std::string& other = text_of(target, corpus, dice);
    run_one(target, mutated(one, other, target.material, dice, longest_input), shared);
  }
}

/// How many passed and failed.
std::pair<int, int> try_target(const Options& options, const Target& target, Shared& shared) {
  const std::vector<Input> corpus = corpus_of(target, options.project);
  shared.executions = 0;
  const auto begun = Clock::now();
  int failed = 0;
  for (const Input& input : corpus)
    if (const std::string how = apart([&] { run_one(target, input.bytes, shared); }); !how.empty()) {
      std::printf("FAILED %s\n", input.name.c_str());
      keep(options, target, shared, how);
      ++failed;
    }
  if (corpus.empty()) {
    std::printf("FAILED %s: there is no corpus\n", std::string(target.name).c_str());
    return {0, 1};
  }
  const int passed = static_cast<int>(corpus.size()) - failed;
  const std::string how = apart([&] { change_and_try(options, target, corpus, shared); });
  if (!how.empty())
    keep(options, target, shared, how);
  std::printf("%s: %zu inputs in the corpus, %llu executions in %.0f s\n", std::string(target.name).c_str(),
              corpus.size(), static_cast<unsigned long long>(shared.executions),
              std::chrono::duration<double>(Clock::now() - begun).count());
  return {passed + (how.empty() ? 1 : 0), failed + (how.empty() ? 0 : 1)};
}

int run(const Options& options) {
  void* const memory =
      mmap(nullptr, sizeof(Shared), PROT_READ | PROT_WRITE, MAP_SHARED | MAP_ANONYMOUS, -1, 0);
  if (memory == MAP_FAILED)
    return 2;
  Shared& shared = *static_cast<Shared*>(memory);
  int passed = 0;
  int failed = 0;
  for (const Target& target : targets()) {
    if (!options.targets.empty() &&
        std::find(options.targets.begin(), options.targets.end(), target.name) == options.targets.end())
      continue;
    const auto [well, badly] = try_target(options, target, shared);
    passed += well;
    failed += badly;
  }
  std::printf("%d passed, %d failed\n", passed, failed);
  return failed == 0 && passed > 0 ? 0 : 1;
}

} // namespace
} // namespace sheerpole::fuzz

int main(int count, char** words) {
  sheerpole::fuzz::Options options;
  for (int i = 1; i < count; ++i) {
    const std::string word = words[i];
    const auto value = [&] { return i + 1 < count ? std::string(words[++i]) : std::string("0"); };
    if (word == "--seconds")
      options.seconds = std::strtod(value().c_str(), nullptr);
    else if (word == "--executions")
      options.executions = std::strtoull(value().c_str(), nullptr, 10);
    else if (word == "--seed")
      options.seed = std::strtoull(value().c_str(), nullptr, 10);
    else if (word == "--keep")
      options.keep = value();
    else if (options.project.empty())
      options.project = word;
    else
      options.targets.push_back(word);
  }
  if (options.project.empty()) {
    std::fputs(
        "sheerpole-fuzz PROJECT [--seconds N] [--executions N] [--seed N] [--keep FOLDER] [TARGET...]\n",
        stderr);
    return 2;
  }
  return sheerpole::fuzz::run(options);
}
