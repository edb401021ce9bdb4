#include "diagnostics/excerpt.hpp"
#include "driver/page/page_file.hpp"
#include "driver/terminal.hpp"
#include "driver/verbs/options.hpp"
#include "driver/watch/local_server.hpp"

#include <cstdio>
#include <filesystem>
#include <system_error>

namespace sheerpole::watch_verb {

namespace {

namespace fs = std::filesystem;

struct Options {
  std::string place = "."; ///< a folder, or a rig file in it
  std::uint16_t port = 0;  ///< 0: one that is free
  std::string page;
};

int refused(const std::string& words) {
  print_error("sheerpole: " + words + "\n");
  return exit_usage;
}

int run(const Options& options) {
  std::error_code ignored;
  const fs::path place(options.place);
  const bool is_folder = fs::is_directory(place, ignored);
  if (!is_folder && !fs::is_regular_file(place, ignored))
    return refused("there is no file or folder " + printable(options.place));
  if (!is_folder && !is_served_name(place.filename().string()))
    return refused(printable(options.place) +
                   " is no rig file: the name of one ends in .rig, and begins with no dot");
  const fs::path parent = is_folder ? place : place.parent_path();
  const std::string folder = parent.empty() ? "." : parent.string();
  const ServedFolder served(folder);
  if (served.is_too_large())
    return refused(printable(folder) + " holds too many files to look through; name a folder of rigs");
  const ServedFolder::Content content = served.read();
  const std::string boat = is_folder ? "" : place.filename().string();
  if (content.files.empty())
    return refused("there is no rig file in " + printable(folder) + "; sheerpole begin makes a first one");
  if (!boat.empty() && !content.files.contains(boat))
    return refused(printable(boat) + " cannot be shown as text, or is a link that leads out of the folder");
  auto page = read_page(options.page);
  if (!page.ok()) {
    print_error(page.error().words);
    return exit_usage;
  }
  const std::string token = fresh_token();
  if (token.empty())
    return refused("the system gives no chance to make an address of");
  const auto server = LocalServer::listen(options.port);
  if (!server.ok())
    return refused("cannot listen on port " + std::to_string(options.port) +
                   " of this machine: " + server.error());
  if (!has_compiler(page.value()))
    print_error("sheerpole: this page was built without a compiler inside, and will say so\n");
  WatchRequests requests(served, boat, token);
  requests.serve(std::move(page.value()), server.value()->port());
  print_out(requests.address() +
            "\n\nOpen this address in a browser of this machine. It shows the rig files of " +
            printable(folder) +
            "\nas they are saved; what is changed in the page is written to them. Whoever has the address "
            "can do\n"
            "the same, so keep it. Ctrl-C ends it.\n");
  std::fflush(stdout); // somebody waits for the address
  server.value()->run(requests);
  return exit_clean;
}

} // namespace

void add_to(CLI::App& app, AskedFor& asked) {
  CLI::App& verb = *app.add_subcommand(
      "watch", "show the rig files of a folder in a browser of this machine, as they are saved");
  Options& options = options_of(verb, asked, run);
  verb.add_option("PLACE", options.place,
                  "the rig file, or a folder of them; not given: the folder where we are");
  verb.add_option("--port", options.port, "the port of the address; not given: one that is free")
      ->check(CLI::Range(1, 65535).description(""))
      ->type_name("NUMBER");
  add_page_file(verb, options.page);
}

} // namespace sheerpole::watch_verb
