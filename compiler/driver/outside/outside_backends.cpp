#include "driver/outside/outside_backends.hpp"

#include "backend/process/protocol.hpp"
#include "driver/process/run_program.hpp"
#include "driver/terminal.hpp"

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <iterator>
#include <signal.h>
#include <system_error>
#include <utility>

namespace sheerpole {

namespace {

ProgramLimits limits_of(const OutsideOptions& options) {
  ProgramLimits limits;
  limits.time = std::chrono::seconds(options.seconds);
  limits.processor_time = std::chrono::seconds(options.seconds + 1);
  return limits;
}

RigOrigin origin_of(const SourceSet& sources, const CompileOptions& options) {
  RigOrigin origin{.rig = {}, .files = {}, .settings = options.settings, .shop = options.shop};
  for (std::uint32_t i = 0; i < sources.size(); ++i) {
    const SourceText& text = sources[SourceId{i}];
    if (text.name() != "command line") // that is in the settings
      origin.files.push_back({text.name(), std::string(text.bytes())});
  }
  if (!origin.files.empty())
    origin.rig = origin.files.front().name; // the rig file is the first that is read
  return origin;
}

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
std::string said_in(std::string_view errors) {
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
  if (std::string words = said_in(end.errors); !words.empty())
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

namespace {

/// Whether a back end that `build` runs by itself has this name.
bool is_taken(const std::string& name) {
  const Backends usual = usual_backends();
  return std::any_of(usual.begin(), usual.end(),
                     [&](const auto& backend) { return backend->describe().name == name; });
}

} // namespace

OutsideBackends::OutsideBackends(const OutsideOptions& options) {
  for (const std::string& path : options.programs) {
    print_progress("asking " + path + "\n");
    OutsideProgram program(path, limits_of(options));
    auto answer = program.describe();
    if (answer.value && is_taken(answer.value->name)) {
      answer.findings.push_back(finding("outside-name-taken", path, {{"own", answer.value->name}}));
      answer.value.reset();
    }
    say(std::move(answer.findings));
    fault_ = fault_ || !answer.value;
    if (answer.value)
      described_.push_back({std::move(program), std::move(*answer.value)});
  }
}

std::vector<BackendDescription> OutsideBackends::descriptions() const {
  std::vector<BackendDescription> result;
  for (const Described& each : described_)
    result.push_back(each.description);
  return result;
}

void OutsideBackends::generate(const CheckedRig& checked, const CompileOptions& options, PaperSize paper,
                               FileClaims& claims, OutputBundle& bundle) {
  if (described_.empty())
    return;
  const std::string request = generate_request({.checked = checked, .fleet = {}, .paper = paper},
                                               origin_of(checked.sources(), options), SHEERPOLE_VERSION);
  for (const Described& each : described_) {
    print_progress("making " + each.program.name() + "\n");
    auto answer = each.program.generate(request);
    say(std::move(answer.findings));
    fault_ = fault_ || !answer.value;
    if (answer.value)
      take(each, std::move(*answer.value), claims, bundle);
  }
}

void OutsideBackends::take(const Described& from, OutputBundle made, FileClaims& claims,
                           OutputBundle& bundle) {
  const std::string& name = from.program.name();
  FileClaims with_these = claims;
  for (const OutputFile& file : made.files) {
    if (auto clash = with_these.clash(file.name, name)) {
      findings_.push_back(
          diagnose("outside-file-twice", {{"name", name}, {"file", file.name}, {"other", *clash}})
              .about(name)
              .build());
      fault_ = true;
      return;
    }
    with_these.add(file.name, name);
  }
  claims = std::move(with_these);
  std::move(made.files.begin(), made.files.end(), std::back_inserter(bundle.files));
}

void OutsideBackends::say(std::vector<Diagnostic> findings) {
  for (Diagnostic& finding : findings)
    // A program says the same when it is asked twice.
    if (std::none_of(findings_.begin(), findings_.end(), [&](const Diagnostic& earlier) {
          return earlier.slug == finding.slug && earlier.message == finding.message;
        }))
      findings_.push_back(std::move(finding));
}

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
