#include "driver/editor/language_server.hpp"
#include "driver/editor/message_stream.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"

#include <cerrno>
#include <deque>
#include <poll.h>
#include <unistd.h>
#include <utility>

namespace sheerpole::editor_verb {

namespace {

struct Options {
  CompileOptions rig; ///< of which the folders alone are asked for
  bool stdio = false; ///< said by some editors; nothing else is spoken over
};

/// So many messages are taken in before one is worked on.
constexpr std::size_t most_waiting = 256;

/// Whether more has come already.
bool more_waits() {
  pollfd watched{STDIN_FILENO, POLLIN, 0};
  return poll(&watched, 1, 0) > 0 && (watched.revents & POLLIN) != 0;
}

/// Reads what has come, waiting for it; false at the end of the input.
bool read_into(editor::MessageStream& stream) {
  char piece[65536];
  while (true) {
    const ssize_t got = read(STDIN_FILENO, piece, sizeof piece);
    if (got > 0) {
      stream.feed({piece, static_cast<std::size_t>(got)});
      return true;
    }
    if (got == 0 || errno != EINTR)
      return false;
  }
}

void write_all(std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t put = write(STDOUT_FILENO, bytes.data(), bytes.size());
    if (put < 0 && errno == EINTR)
      continue;
    if (put <= 0)
      return; // nobody listens; the end of the input comes next
    bytes.remove_prefix(static_cast<std::size_t>(put));
  }
}

int run(const Options& options) {
  editor::MessageStream stream;
  editor::LanguageServer server(options.rig.folders, [](const editor::Json& message) {
    write_all(editor::framed(message.dump(-1, ' ', false, editor::Json::error_handler_t::replace)));
  });
  std::deque<editor::Arrived> waiting;
  bool is_there = true;
  while (!server.exit_code()) {
    // All that has come, before the first of it is worked on: something behind may cancel it.
    while (is_there && waiting.size() < most_waiting && more_waits())
      is_there = read_into(stream);
    while (auto arrived = stream.next()) {
      server.hear(arrived->content);
      waiting.push_back(std::move(*arrived));
    }
    if (!waiting.empty()) {
      const editor::Arrived arrived = std::move(waiting.front());
      waiting.pop_front();
      if (arrived.fault.empty())
        server.take(arrived.content);
      else
        server.take_fault(arrived.fault);
      continue;
    }
    if (server.has_to_publish() && !more_waits())
      server.publish();
    if (!is_there || !read_into(stream))
      return exit_errors; // the editor is gone without a word
  }
  return *server.exit_code();
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb = *app.add_subcommand("editor", "speak with an editor that shows findings while you type");
  Options& options = options_of(verb, asked, run);
  add_allowed_folders(verb, options.rig);
  verb.add_flag("--stdio", options.stdio, "said by some editors; nothing else is spoken over");
}

} // namespace sheerpole::editor_verb
