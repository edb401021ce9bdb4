#include "driver/process/run_program.hpp"

#include <gtest/gtest.h>

#include <cerrno>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <thread>

namespace sheerpole::run_program_test {
namespace {

using How = ProgramEnd::How;

/// A shell script in a folder of its own.
class Script {
public:
  explicit Script(const std::string& text) : path_(folder_.path() + "/script") {
    std::ofstream(path_) << "#!/bin/sh\n" << text;
    std::filesystem::permissions(path_, std::filesystem::perms::owner_all);
  }
  ProgramEnd run(const std::string& input = "", const ProgramLimits& limits = {}) const {
    return run_program({.path = path_,
                        .environment = std::vector<std::string>{"PATH=/usr/bin:/bin"},
                        .folder = folder_.path(),
                        .limits = limits},
                       input);
  }
  const std::string& folder() const { return folder_.path(); }

private:
  TemporaryFolder folder_;
  std::string path_;
};

TEST(RunProgram, HandsInputOnAndOutputBack) {
  const std::string input(3'000'000, 'x'); // far more than a pipe holds at one time
  const ProgramEnd end = Script("cat; echo done >&2").run(input);
  EXPECT_TRUE(end.well());
  EXPECT_EQ(end.output, input);
  EXPECT_EQ(end.errors, "done\n");
}

TEST(RunProgram, InputThatIsNotReadIsNoFault) {
  const std::string input(3'000'000, 'x');
  EXPECT_TRUE(Script("exit 0").run(input).well());
  EXPECT_TRUE(Script("exec 0<&-; sleep 0.1; echo a").run(input).well());
  const ProgramEnd end = Script("head -c 5").run(input);
  EXPECT_TRUE(end.well());
  EXPECT_EQ(end.output, "xxxxx");
}

TEST(RunProgram, HowItEnded) {
  ProgramEnd end = Script("exit 7").run();
  EXPECT_EQ(end.how, How::exited);
  EXPECT_EQ(end.code, 7);
  EXPECT_FALSE(end.well());
  end = Script("kill -TERM $$").run();
  EXPECT_EQ(end.how, How::by_signal);
  EXPECT_EQ(end.code, SIGTERM);
  end = run_program({.path = "/there/is/no/such/program", .limits = ProgramLimits{}}, "");
  EXPECT_EQ(end.how, How::not_started);
  EXPECT_EQ(end.code, ENOENT);
}

TEST(RunProgram, TimeAndOutputAreLimited) {
  ProgramLimits limits;
  limits.time = std::chrono::milliseconds(300);
  EXPECT_EQ(Script("sleep 60").run("", limits).how, How::late);
  EXPECT_EQ(Script("exec 1<&- 2<&-; sleep 60").run("", limits).how, How::late);
  limits = {};
  limits.output_bytes = 1000;
  EXPECT_TRUE(Script("head -c 1000 /dev/zero").run("", limits).well());
  EXPECT_EQ(Script("head -c 1001 /dev/zero").run("", limits).how, How::too_much_output);
  EXPECT_EQ(Script("cat /dev/zero").run("", limits).how, How::too_much_output);
}

TEST(RunProgram, LastWordsOfTheErrorsAreKept) {
  const ProgramEnd end = Script("head -c 1000000 /dev/zero >&2; echo last >&2").run();
  EXPECT_TRUE(end.well());
  EXPECT_EQ(end.errors.size(), kept_error_bytes);
  EXPECT_TRUE(end.errors.ends_with("last\n"));
}

/// Whether the process is gone, or waits for nothing but its parent's last look.
bool has_ended(const std::string& number) {
  std::ifstream status("/proc/" + number + "/status");
  for (std::string line; std::getline(status, line);)
    if (line.starts_with("State:"))
      return line.find('Z') != std::string::npos;
  return true;
}

TEST(RunProgram, WhatItLeavesBehindIsEnded) {
  const ProgramEnd end = Script("sleep 60 & echo $!").run(); // which holds the output open
  ASSERT_TRUE(end.well());
  const std::string number = end.output.substr(0, end.output.size() - 1);
  for (int turn = 0; turn < 500 && !has_ended(number); ++turn) // it has been told, and takes a moment
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  EXPECT_TRUE(has_ended(number));
}

TEST(RunProgram, SessionsOfTheirOwnAreEndedToo) {
  ProgramEnd end = Script("setsid sh -c 'sleep 60 & echo $!; exit' >out & wait; cat out").run();
  ASSERT_TRUE(end.well()) << end.errors;
  EXPECT_TRUE(has_ended(end.output.substr(0, end.output.size() - 1))) << end.output;
  ProgramLimits limits;
  limits.time = std::chrono::milliseconds(500);
  end = Script("setsid sleep 60 & echo $!; wait").run("", limits);
  EXPECT_EQ(end.how, How::late);
  EXPECT_TRUE(has_ended(end.output.substr(0, end.output.size() - 1))) << end.output;
}

TEST(RunProgram, HandsArgumentsOn) {
  const TemporaryFolder folder;
  const ProgramEnd end = run_program({.path = "/bin/echo", .arguments = {"one two", "", "*"}}, "");
  EXPECT_EQ(end.output, "one two  *\n");
}

TEST(RunProgram, LimitsOfTheSystem) {
  ProgramLimits limits;
  limits.open_files = 50;
  limits.file_bytes = 1'048'576;
  limits.memory_bytes = 268'435'456;
  const ProgramEnd end =
      Script("ulimit -n; ulimit -c; ulimit -d; env | sort | grep -v '^PWD\\|^_\\|^SHLVL\\|^OLDPWD'")
          .run("", limits);
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
  EXPECT_TRUE(end.output.starts_with("50\n0\n")) << end.output; // memory is not limited then
#else
  EXPECT_EQ(end.output, "50\n0\n262144\nPATH=/usr/bin:/bin\n");
#endif
  EXPECT_NE(Script("head -c 2000000 /dev/zero > large").run("", limits).code, 0);
}

TEST(RunProgram, OurOwnSignalsStayAsTheyWere) {
  struct sigaction before {};
  sigaction(SIGPIPE, nullptr, &before);
  Script("exit 0").run(std::string(1'000'000, 'x'));
  struct sigaction after {};
  sigaction(SIGPIPE, nullptr, &after);
  EXPECT_EQ(before.sa_handler, after.sa_handler);
}

TEST(TemporaryFolder, GoesWithAllThatIsInIt) {
  std::string path;
  const Script outside("mkdir -p a/b && echo x > a/b/c && ln -s / d && chmod 000 a/b");
  {
    const Script script("mkdir -p a/b && echo x > a/b/c && ln -s / d && chmod 000 a/b");
    path = script.folder();
    ASSERT_TRUE(script.run().well());
    EXPECT_TRUE(std::filesystem::exists(path + "/a"));
  }
  EXPECT_FALSE(std::filesystem::exists(path));
  EXPECT_TRUE(std::filesystem::exists(outside.folder()));
}

} // namespace
} // namespace sheerpole::run_program_test
