#include "driver/make_pdfs.hpp"

#include "backend/drawing/svg_writer.hpp"
#include "units/format_length.hpp"

#include <fcntl.h>
#include <signal.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <charconv>
#include <optional>
#include <string_view>
#include <thread>
#include <utility>

namespace sheerpole {

namespace {

/// A face whose metrics are those by which pages are measured (backend/drawing/text_width.hpp).
constexpr std::string_view face = "Liberation Sans";

/// The title on one line.
std::string one_line(std::string text) {
  for (char& c : text)
    if (static_cast<unsigned char>(c) < 0x20)
      c = ' ';
  return text;
}

std::string input_of(const std::vector<PagedFile>& papers, const std::string& date) {
  std::string input = "sheerpole-pdf 1\nface " + std::string(face) + "\n";
  for (const PagedFile& paper : papers) {
    input += "document " + one_line(paper.title) + "\ndate" +
             (date.empty() ? "" : " " + date + "T00:00:00Z") + "\n";
    for (const Drawing& page : paper.pages) {
      const std::string svg = write_svg(page);
      input += "page " + format_number(page.width) + " " + format_number(page.height) + " " +
               std::to_string(svg.size()) + "\n" + svg + "\n";
    }
  }
  return input;
}

/// The program beside this one; empty when the system does not say where this one is.
std::string program() {
  std::array<char, 4096> path{};
  const ssize_t length = readlink("/proc/self/exe", path.data(), path.size());
  if (length <= 0 || static_cast<std::size_t>(length) == path.size())
    return {};
  const std::string here(path.data(), static_cast<std::size_t>(length));
  return here.substr(0, here.rfind('/') + 1) + "sheerpole-pdf";
}

std::string read_all(int from) {
  std::string text;
  std::array<char, 65536> buffer{};
  for (;;) {
    const ssize_t got = read(from, buffer.data(), buffer.size());
    if (got > 0)
      text.append(buffer.data(), static_cast<std::size_t>(got));
    else if (got == 0 || errno != EINTR)
      return text;
  }
}

void write_all(int to, std::string_view text) {
  while (!text.empty()) {
    const ssize_t put = write(to, text.data(), text.size());
    if (put > 0)
      text.remove_prefix(static_cast<std::size_t>(put));
    else if (put == 0 || errno != EINTR)
      return; // the program has ended; how it ended says why
  }
}

struct Ended {
  std::string output;
  std::string errors;
  bool well = false;
};

/// Runs the program with this input; nothing when it can not be begun.
std::optional<Ended> run(const std::string& path, const std::string& input) {
  int in[2];
  int out[2];
  int errors[2];
  if (pipe2(in, O_CLOEXEC) != 0 || pipe2(out, O_CLOEXEC) != 0 || pipe2(errors, O_CLOEXEC) != 0)
    return std::nullopt;
  posix_spawn_file_actions_t actions;
  posix_spawn_file_actions_init(&actions);
  posix_spawn_file_actions_adddup2(&actions, in[0], STDIN_FILENO);
  posix_spawn_file_actions_adddup2(&actions, out[1], STDOUT_FILENO);
  posix_spawn_file_actions_adddup2(&actions, errors[1], STDERR_FILENO);
  std::string name = path;
  char* const arguments[] = {name.data(), nullptr};
  // fontconfig looks for its cache in the home folder.
  pid_t child = 0;
  const int begun = posix_spawn(&child, path.c_str(), &actions, nullptr, arguments, environ);
  posix_spawn_file_actions_destroy(&actions);
  close(in[0]);
  close(out[1]);
  close(errors[1]);
  std::optional<Ended> ended;
  if (begun == 0) {
    signal(SIGPIPE, SIG_IGN); // a program that ends early is told by its status
    ended.emplace();
    std::thread of_errors([&] { ended->errors = read_all(errors[0]); });
    std::thread of_output([&] { ended->output = read_all(out[0]); });
    write_all(in[1], input);
    close(in[1]);
    of_output.join();
    of_errors.join();
    int status = 0;
    while (waitpid(child, &status, 0) < 0 && errno == EINTR) {
    }
    ended->well = WIFEXITED(status) && WEXITSTATUS(status) == 0;
  } else {
    close(in[1]);
  }
  close(out[0]);
  close(errors[0]);
  return ended;
}

/// The next of the PDFs in what the program wrote.
std::optional<std::string> next_pdf(std::string_view& rest) {
  constexpr std::string_view head = "pdf ";
  if (!rest.starts_with(head))
    return std::nullopt;
  std::size_t size = 0;
  const char* const end = rest.data() + rest.size();
  const auto [next, error] = std::from_chars(rest.data() + head.size(), end, size);
  if (error != std::errc{} || next == end || *next != '\n')
    return std::nullopt;
  rest.remove_prefix(static_cast<std::size_t>(next - rest.data()) + 1);
  if (rest.size() <= size)
    return std::nullopt;
  std::string pdf(rest.substr(0, size));
  rest.remove_prefix(size + 1);
  return pdf;
}

} // namespace

Result<std::vector<OutputFile>, PdfFailure> make_pdfs(const std::vector<PagedFile>& papers,
                                                      const std::string& date) {
  std::vector<OutputFile> files;
  if (papers.empty())
    return files;
  const std::string path = program();
  const auto ended = path.empty() ? std::nullopt : run(path, input_of(papers, date));
  if (!ended)
    return PdfFailure{"the program sheerpole-pdf, which draws PDFs, is not beside sheerpole"};
  std::string_view rest = ended->output;
  for (const PagedFile& paper : papers) {
    auto pdf = ended->well ? next_pdf(rest) : std::nullopt;
    if (!pdf)
      return PdfFailure{ended->errors.empty() ? "sheerpole-pdf ended without a word" : ended->errors};
    files.push_back({paper.name, std::move(*pdf)});
  }
  return files;
}

} // namespace sheerpole
