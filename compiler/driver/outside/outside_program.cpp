#include "driver/outside/outside_program.hpp"

#include "backend/process/protocol.hpp"
#include "driver/process/temporary_folder.hpp"

#include <signal.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <system_error>
#include <utility>

namespace sheerpole {

namespace {

namespace fs = std::filesystem;

/// What a program gets to know of where it runs: the same everywhere, but for where its interpreter is.
std::vector<std::string> environment() {
  const char* path = std::getenv("PATH");
  const std::string usual = "/usr/local/bin:/usr/bin:/bin";
  return {"PATH=" + (path != nullptr ? std::string(path) : usual), "LC_ALL=C.UTF-8", "TZ=UTC"};
}

/// Why the system did not start it, in words.
std::string reason_of(const std::string& path, int code) {
  std::error_code ignored;
  if (!fs::exists(path, ignored))
    return "there is no such file";
  if (!fs::is_regular_file(path, ignored))
    return "it is no file";
  if (code == EACCES)
    return "it may not be executed";
  if (code == ENOEXEC)
    return "it is no program, and no first line says what reads it";
  if (code == ENOENT)
    return "what its first line asks for to read it is not there";
  return std::generic_category().message(code);
}

std::string seconds_of(std::chrono::milliseconds time) {
  return std::to_string(std::chrono::duration_cast<std::chrono::seconds>(time).count());
}

std::string signal_words(int number) {
  const char* words = sigdescr_np(number);
  return "signal " + std::to_string(number) +
         (words != nullptr ? " (" + std::string(words) + ")" : std::string());
}

/// What the program wrote for people, on one line; its end when it is long.
std::string words_of(std::string_view errors) {
  constexpr std::size_t most = 1000;
  std::string words;
  for (std::string_view rest = errors; !rest.empty();) {
    const std::size_t end = std::min(rest.find('\n'), rest.size());
    std::string_view line = rest.substr(0, end);
    rest.remove_prefix(std::min(end + 1, rest.size()));
    line.remove_prefix(std::min(line.find_first_not_of(" \t\r"), line.size()));
    line = line.substr(0, line.find_last_not_of(" \t\r") + 1);
    if (!line.empty())
      words += (words.empty() ? "" : " / ") + std::string(line);
  }
  if (words.size() <= most)
    return words;
  std::size_t from = words.size() - most;
  while (from < words.size() && (static_cast<unsigned char>(words[from]) & 0xC0U) == 0x80U)
    ++from; // not into the middle of a sign
  return "... " + words.substr(from);
}

Diagnostic finding(std::string_view slug, const std::string& name, std::vector<Argument> arguments) {
  arguments.push_back({"name", name});
  return diagnose(slug, std::move(arguments)).about(name).build();
}

Diagnostic finding_of(const ReplyFault& fault, const std::string& name) {
  switch (fault.kind) {
  case ReplyFault::Kind::not_json:
    return finding("outside-not-json", name, {{"fault", fault.what}});
  case ReplyFault::Kind::other_version:
    return finding("outside-other-version", name,
                   {{"version", fault.what}, {"ours", std::to_string(protocol_version)}});
  case ReplyFault::Kind::file_name:
    return finding("outside-file-name", name, {{"file", fault.where}, {"fault", fault.what}});
  case ReplyFault::Kind::not_as_agreed:
    break;
  }
  return finding("outside-answer-odd", name, {{"where", fault.where}, {"fault", fault.what}});
}

/// Nothing when the program has ended as it should.
std::optional<Diagnostic> fault_of(const ProgramEnd& end, const std::string& path, const std::string& name,
                                   const ProgramLimits& limits) {
  switch (end.how) {
  case ProgramEnd::How::not_started:
    return finding("outside-not-started", name, {{"reason", reason_of(path, end.code)}});
  case ProgramEnd::How::late:
    return finding("outside-late", name, {{"seconds", seconds_of(limits.time)}});
  case ProgramEnd::How::too_much_output:
    return finding("outside-answer-large", name, {{"limit", std::to_string(limits.output_bytes >> 20U)}});
  case ProgramEnd::How::by_signal:
    return finding("outside-failed", name, {{"how", signal_words(end.code)}});
  case ProgramEnd::How::exited:
    break;
  }
  if (end.code != 0)
    return finding("outside-failed", name, {{"how", "exit code " + std::to_string(end.code)}});
  return std::nullopt;
}

/// Asks once and reads the answer.
template <class Value>
OutsideAnswer<Value> ask(const std::string& path, const std::string& name, const ProgramLimits& limits,
                         const std::string& request, Result<Value, ReplyFault> (*read)(std::string_view)) {
  OutsideAnswer<Value> answer;
  const TemporaryFolder folder;
  if (folder.path().empty()) {
    answer.findings.push_back(
        finding("outside-not-started", name, {{"reason", "no temporary folder can be made for it"}}));
    return answer;
  }
  const ProgramEnd end = run_program(
      {.path = path, .environment = environment(), .folder = folder.path(), .limits = limits}, request);
  if (std::string words = words_of(end.errors); !words.empty())
    answer.findings.push_back(finding("outside-says", name, {{"words", std::move(words)}}));
  if (auto fault = fault_of(end, path, name, limits)) {
    answer.findings.push_back(std::move(*fault));
    return answer;
  }
  auto reply = read(end.output);
  if (reply.ok())
    answer.value = std::move(reply.value());
  else
    answer.findings.push_back(finding_of(reply.error(), name));
  return answer;
}

} // namespace

OutsideProgram::OutsideProgram(std::string path, ProgramLimits limits)
    : path_(fs::absolute(path).lexically_normal().string()), name_(std::move(path)), limits_(limits) {}

OutsideAnswer<BackendDescription> OutsideProgram::describe() {
  auto answer = ask<BackendDescription>(path_, name_, limits_, describe_request(SHEERPOLE_VERSION),
                                        read_describe_reply);
  if (answer.value)
    name_ = answer.value->name;
  return answer;
}

OutsideAnswer<OutputBundle> OutsideProgram::generate(const std::string& request) const {
  return ask<OutputBundle>(path_, name_, limits_, request, read_generate_reply);
}

} // namespace sheerpole
