#include "driver/outside/outside_backends.hpp"

#include "backend/process/protocol.hpp"
#include "driver/terminal.hpp"

#include <algorithm>
#include <iterator>
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

} // namespace

OutsideBackends::OutsideBackends(const OutsideOptions& options) {
  for (const std::string& path : options.programs) {
    print_progress("asking " + path + "\n");
    OutsideProgram program(path, limits_of(options));
    auto answer = program.describe();
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

} // namespace sheerpole
