#include "backend/json/json.hpp"
#include "backend/process/file_name.hpp"
#include "backend/process/protocol.hpp"
#include "driver/begin/lengths_rig.hpp"
#include "driver/compile.hpp"
#include "driver/reference/pages.hpp"
#include "driver/seal/sealed_folder.hpp"
#include "fuzz/targets.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>

namespace sheerpole::fuzz {

namespace {

std::string_view text_of(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

void collect_words(const Json& json, std::vector<std::string>& words) {
  if (json.is_string())
    words.push_back(json.get<std::string>());
  else if (json.is_structured())
    for (auto each = json.begin(); each != json.end(); ++each)
      // Help is for people; a sentence is no word.
      if (!json.is_object() || each.key() != "help")
        collect_words(*each, words);
}

/// Every word that the language has.
std::vector<std::string> language_words() {
  std::vector<std::string> words;
  collect_words(Json::parse(completion_json()), words);
  for (const char* more :
       {"{",       "}",    "(",       ")",        ":",           ",",     ">",          "=",
        "±",       "x",    "from",    "mirrored", "\"",          "#",     "X",          "-1 mm",
        "1e308 m", "0 mm", "1_000 m", "7/0 in",   "38' 7 3/8\"", "100 %", "9999-12-31", "language 1"})
    words.emplace_back(more);
  std::sort(words.begin(), words.end());
  words.erase(std::unique(words.begin(), words.end()), words.end());
  return words;
}

} // namespace

void promise(bool holds, std::string_view words) {
  if (holds)
    return;
  std::fprintf(stderr, "broken promise: %.*s\n", static_cast<int>(words.size()), words.data());
  std::abort();
}

int try_table(const std::uint8_t* data, std::size_t size) {
  const auto rig = lengths_rig(text_of(data, size), "lengths.csv", "Demo");
  if (!rig.ok()) {
    promise(!rig.error().empty(), "refused without a reason");
    for (const LengthsFailure& failure : rig.error())
      promise(failure.line > 0 && failure.column > 0 && !failure.words.empty(),
              "a failure without a place");
    return 0;
  }
  OneTextReader reader("boat.rig", rig.value());
  const Compilation made = compile("boat.rig", reader, {.settings = {}, .folders = {}, .threads = 1});
  // The hardware of a first rig is assumed, and may be longer than a short stay.
  promise(std::all_of(made.findings.begin(), made.findings.end(),
                      [](const Diagnostic& finding) {
                        return finding.severity != Severity::error || finding.slug == "negative-body";
                      }),
          "a table that was taken makes a rig with an error");
  return 0;
}

int try_reply(const std::uint8_t* data, std::size_t size) {
  const std::string_view text = text_of(data, size);
  if (const auto described = read_describe_reply(text); described.ok()) {
    const auto again = read_describe_reply(write_describe_reply(described.value()));
    promise(again.ok() && again.value().name == described.value().name, "who it is does not come back");
  }
  const auto answer = read_generate_reply(text);
  if (!answer.ok())
    return 0;
  for (const OutputFile& file : answer.value().files)
    promise(fault_of_file_name(file.name).empty(), "a file that may not be written was taken");
  const auto again = read_generate_reply(write_generate_reply(answer.value()));
  promise(again.ok() && std::equal(answer.value().files.begin(), answer.value().files.end(),
                                   again.value().files.begin(), again.value().files.end(),
                                   [](const OutputFile& a, const OutputFile& b) {
                                     return a.name == b.name && a.bytes == b.bytes;
                                   }),
          "files do not come back as they were");
  return 0;
}

int try_seal(const std::uint8_t* data, std::size_t size) {
  const std::string text(text_of(data, size));
  const SealSums sums{{"rig/boat.rig", std::string(64, '0')}};
  if (const auto request = request_in(text, sums, "folder"))
    promise(request->file == "folder/rig/boat.rig", "a rig that is not on the list was taken");
  std::vector<std::string> bad_lines;
  for (const auto& [name, sum] : read_sums(text, bad_lines))
    promise(digest(sum) == sum && !name.starts_with('/') && name != ".." && !name.starts_with("../"),
            "a sum that is none was taken");
  return 0;
}

const std::vector<Target>& targets() {
  static const std::vector<Target> all{
      {"rig", try_rig, ".rig", {"tests/fuzz/corpus/rig", "tests/golden/inputs"}, language_words()},
      {"table",
       try_table,
       ".csv",
       {"tests/fuzz/corpus/table"},
       {"stay",  "length", "side",         "title",    ",",          ";",         "\"",
        "\"\"",  "\n",     "\r\n",         "port",     "starboard",  "11_815 mm", "38' 2 3/8\"",
        "1e9 m", "0 mm",   "\xEF\xBB\xBF", "\x1b[31m", "first-tang", "line",      "stack"}},
      {"reply",
       try_reply,
       ".json",
       {"tests/fuzz/corpus/reply"},
       {"\"format\"",  "\"version\"", "\"name\"",   "\"summary\"", "\"outputs\"", "\"sometimes\"",
        "\"files\"",   "\"text\"",    "\"base64\"", "1",           "2",           "1e400",
        "-1",          "null",        "true",       "[",           "]",           "{",
        "}",           ":",           ",",          "\"../a\"",    "\"con\"",     "\"a.\"",
        "\"\\u202e\"", "\"\\ud800\"", "\"AAAA\"",   "\"A===\""}},
      {"seal",
       try_seal,
       ".json",
       {"tests/fuzz/corpus/seal"},
       {"\"rig\"", "\"made\"", "\"version\"", "\"files\"", "\"--pdf\"", "\"--only=cut-list\"",
        "\"--paper=a4\"", "\"--shop=loft\"", "\"rig/boat.rig\"", "\"../boat.rig\"", "null", "7", "[", "]",
        "{", "}", "1e400", "  "}}};
  return all;
}

} // namespace sheerpole::fuzz
