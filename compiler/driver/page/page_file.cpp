#include "driver/page/page_file.hpp"

#include "diagnostics/excerpt.hpp"
#include "source/file_reader.hpp"

#include <array>
#include <filesystem>
#include <optional>
#include <system_error>
#include <unistd.h>
#include <vector>

namespace sheerpole {

namespace {

namespace fs = std::filesystem;

/// Largest page that is read; one with its compiler is some megabytes.
constexpr std::size_t largest_page_bytes = 64 * 1024 * 1024;
/// Where the page has a place for what is given to it, and its policy.
constexpr std::string_view nothing_given = R"(<script type="application/json" id="given">null</script>)";
constexpr std::string_view begin_of_given = R"(<script type="application/json" id="given">)";
constexpr std::string_view end_of_given = "</script>";
constexpr std::string_view policy = R"(content="default-src 'none';)";
constexpr std::string_view policy_that_asks = R"(content="default-src 'none'; connect-src 'self';)";
constexpr std::string_view compiler_inside = R"(id="core-)";

/// Where the page may lie, the first that is there being taken.
std::vector<fs::path> usual_places() {
  std::array<char, 4096> path{};
  const ssize_t length = readlink("/proc/self/exe", path.data(), path.size());
  if (length <= 0 || static_cast<std::size_t>(length) == path.size())
    return {};
  const fs::path here = fs::path(std::string(path.data(), static_cast<std::size_t>(length))).parent_path();
  return {here / "sheerpole.html", here.parent_path() / "share/sheerpole/sheerpole.html"};
}

/// What no text of ours holds by itself: the ends of elements and comments begin with it.
std::string without_markup(std::string json) {
  std::string result;
  result.reserve(json.size());
  for (const char c : json) {
    if (c == '<')
      result += "\\u003c";
    else
      result += c;
  }
  return result;
}

} // namespace

Result<std::string, NoPage> read_page(const std::string& named) {
  std::vector<fs::path> places = {named};
  if (named.empty()) {
    places.clear();
    std::error_code ignored;
    for (const fs::path& place : usual_places())
      if (fs::is_regular_file(place, ignored))
        places.push_back(place);
  }
  if (places.empty())
    return NoPage{"sheerpole: the offline page, sheerpole.html, is neither beside this program nor in "
                  "share/sheerpole; name it with --page FILE\n"};
  DiskFileReader disk;
  const std::string path = places.front().string();
  auto page = disk.read(path, largest_page_bytes);
  if (!page.ok())
    return NoPage{"sheerpole: cannot read the page " + printable(path) +
                  "; name another with --page FILE\n"};
  const std::string& text = page.value();
  if (text.find(nothing_given) == std::string::npos || text.find(policy) == std::string::npos)
    return NoPage{
        "sheerpole: " + printable(path) +
        " is not the offline page, sheerpole.html, as it is built; name another with --page FILE\n"};
  return std::move(page.value());
}

std::string page_given(std::string page, const Json& given) {
  const std::string json =
      without_markup(given.dump(-1, ' ', true, Json::error_handler_t::replace)); // all signs in ASCII
  const std::size_t at = page.find(nothing_given);
  page.replace(at, nothing_given.size(), std::string(begin_of_given) + json + std::string(end_of_given));
  return page;
}

std::string page_that_asks_its_server(std::string page) {
  return page.replace(page.find(policy), policy.size(), policy_that_asks);
}

bool has_compiler(std::string_view page) {
  return page.find(compiler_inside) != std::string_view::npos;
}

} // namespace sheerpole
