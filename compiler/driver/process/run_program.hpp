#pragma once

#include <unistd.h>

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole {

/// How far a program may go that is not ours.
struct ProgramLimits {
  std::chrono::milliseconds time{10'000};
  std::size_t output_bytes = 64U << 20U;
  std::uint64_t memory_bytes = 2ULL << 30U;    ///< of data, for each of its processes
  std::uint64_t file_bytes = 256ULL << 20U;    ///< of each file that it writes
  std::uint64_t open_files = 256;              ///< at one time
  std::chrono::seconds processor_time{10 + 1}; ///< beyond `time`: one that is stopped by it was late
};

/// A program to run. Nothing is looked for: `path` is the file that is started.
struct ProgramStart {
  std::string path;
  std::vector<std::string> arguments = {};
  /// `NAME=value`; without it the program gets our own environment.
  std::optional<std::vector<std::string>> environment = {};
  std::string folder = {}; ///< in which it runs; empty: ours
  /// Without them it may take what it needs, and is waited for until it ends.
  std::optional<ProgramLimits> limits = {};
};

/// How a program ended, and what it wrote until then.
struct ProgramEnd {
  enum class How {
    exited,          ///< by itself, with `code`
    by_signal,       ///< `code` is the signal
    late,            ///< it was stopped when its time was over, or when we are to end
    too_much_output, ///< it was stopped when it had written more than it may
    not_started      ///< `code` is the error number of the system
  };
  How how = How::not_started;
  int code = 0;
  std::string output;
  std::string errors; ///< the end of what it wrote to its error stream, `kept_error_bytes` at most

  bool well() const { return how == How::exited && code == 0; }
};

inline constexpr std::size_t kept_error_bytes = 64U << 10U;

/// Starts the program, writes `input` to it, closes its input and reads what it writes until it ends. A
/// program that does not read its input, or closes its output early, is no reason to hang. With limits
/// whatever it has started is ended when it has ended, also what went into a session of its own, and when
/// we are ended ourselves.
ProgramEnd run_program(const ProgramStart& start, std::string_view input);

/// Closes an open file of the system when it goes out of scope.
class FileDescriptor {
public:
  explicit FileDescriptor(int number = -1) : number_(number) {}
  FileDescriptor(FileDescriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
  FileDescriptor& operator=(FileDescriptor&& other) noexcept {
    std::swap(number_, other.number_);
    return *this;
  }
  ~FileDescriptor() { shut(); }

  int number() const { return number_; }
  bool is_open() const { return number_ >= 0; }
  void shut() {
    if (is_open())
      close(std::exchange(number_, -1));
  }

private:
  int number_;
};

/// A new empty folder for one run of a program; gone with all that is in it when this goes out of scope. A
/// signal that asks us to end (SIGINT, SIGTERM, SIGHUP) is held back until then: run_program() ends early,
/// the folder goes, and so do we.
class TemporaryFolder {
public:
  TemporaryFolder();
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  ~TemporaryFolder();

  /// Empty when none could be made.
  const std::string& path() const { return path_; }

private:
  std::string path_;
};

} // namespace sheerpole
