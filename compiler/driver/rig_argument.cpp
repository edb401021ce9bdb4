#include "driver/rig_argument.hpp"

#include "diagnostics/excerpt.hpp"
#include "driver/process/run_program.hpp"

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole {

namespace {

constexpr std::string_view standard_input = "-";

/// Takes the one text from standard input; its libraries are on the disk.
class StandardInputReader final : public FileReader {
public:
  Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
    if (path != standard_input)
      return disk_.read(path, limit);
    if (!typed_)
      typed_ = read_all(limit);
    return *typed_;
  }
  std::string real_path(const std::string& path) override { return disk_.real_path(path); }

private:
  static Result<std::string, Failure> read_all(std::size_t limit) {
    std::string bytes;
    char piece[65536];
    // Who types waits for nobody, so this does wait.
    while (const ssize_t got = ::read(STDIN_FILENO, piece, sizeof piece)) {
      if (got < 0 && errno == EINTR)
        continue;
      if (got < 0)
        return Failure::not_readable;
      bytes.append(piece, static_cast<std::size_t>(got));
      if (bytes.size() > limit)
        return Failure::too_large;
    }
    return bytes;
  }

  DiskFileReader disk_;
  std::optional<Result<std::string, Failure>> typed_; ///< it can be read once
};

/// The program of that name in the folders of PATH; empty when there is none.
std::string program_in_path(std::string_view name) {
  const char* const stated = std::getenv("PATH");
  std::string_view folders = stated != nullptr ? stated : "/usr/local/bin:/usr/bin:/bin";
  while (!folders.empty()) {
    const std::size_t end = std::min(folders.find(':'), folders.size());
    const std::filesystem::path candidate = std::filesystem::path(folders.substr(0, end)) / name;
    if (candidate.is_absolute() && ::access(candidate.c_str(), X_OK) == 0)
      return candidate.string();
    folders.remove_prefix(std::min(end + 1, folders.size()));
  }
  return {};
}

ProgramEnd run_git(const std::string& git, std::vector<std::string> arguments, std::size_t most_bytes) {
  ProgramLimits limits;
  limits.output_bytes = most_bytes;
  return run_program({.path = git, .arguments = std::move(arguments), .limits = limits}, {});
}

/// Reads files as they are in one revision; an empty one is what is staged. A path is one from here, and
/// there are no links to follow: one that git keeps is a text with the name of another file.
class RevisionReader final : public FileReader {
public:
  RevisionReader(std::string git, std::string revision)
      : git_(std::move(git)), revision_(std::move(revision)) {}

  Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
    ProgramEnd end =
        run_git(git_, {"cat-file", "blob", "--end-of-options", revision_ + ":./" + path}, limit);
    if (end.how == ProgramEnd::How::too_much_output)
      return Failure::too_large;
    if (end.well())
      return std::move(end.output);
    return end.how == ProgramEnd::How::exited ? Failure::not_found : Failure::not_readable;
  }

private:
  std::string git_;
  std::string revision_;
};

Result<RigArgument, std::string> in_revision(const std::string& word, std::size_t colon) {
  const std::string revision = word.substr(0, colon);
  const std::string git = program_in_path("git");
  if (git.empty())
    return "sheerpole: " + printable(word) +
           " is a file of a revision, and there is no git here to read it\n";
  // Whether there is such a revision is told apart from whether it has the file.
  const ProgramEnd found =
      revision.empty()
          ? run_git(git, {"rev-parse", "--git-dir"}, 4096)
          : run_git(git, {"rev-parse", "--verify", "--quiet", "--end-of-options", revision + "^{commit}"},
                    4096);
  if (!found.well()) {
    const std::string said = found.errors.substr(0, found.errors.find('\n'));
    return "sheerpole: git knows no revision `" + printable(revision) + "` in this folder" +
           (said.empty() ? "" : "; it says: " + printable(said)) + "\n";
  }
  // Git takes paths from here only where they are relative and have no detour.
  std::filesystem::path path = std::filesystem::path(word.substr(colon + 1)).lexically_normal();
  if (path.is_absolute())
    path = path.lexically_relative(std::filesystem::current_path());
  return RigArgument{path.generic_string(), std::make_unique<RevisionReader>(git, revision), false};
}

} // namespace

RigArgument file_or_standard_input(const std::string& word) {
  if (word == standard_input)
    return {word, std::make_unique<StandardInputReader>(), false};
  return {word, std::make_unique<DiskFileReader>(), true};
}

Result<RigArgument, std::string> rig_argument(const std::string& word) {
  const std::size_t colon = word.find(':');
  std::error_code ignored;
  if (colon != std::string::npos && colon + 1 < word.size() && !std::filesystem::exists(word, ignored))
    return in_revision(word, colon);
  return file_or_standard_input(word);
}

} // namespace sheerpole
