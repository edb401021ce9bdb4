#include "backend/json/json.hpp"
#include "backend/process/file_name.hpp"
#include "backend/process/protocol.hpp"
#include "driver/begin/lengths_rig.hpp"
#include "driver/seal/sealed_folder.hpp"
#include "fuzz/targets.hpp"
#include "service/compile.hpp"

#include <algorithm>
#include <iterator>

namespace sheerpole::fuzz {

namespace {

std::string_view text_of(const std::uint8_t* data, std::size_t size) {
  return {reinterpret_cast<const char*>(data), size};
}

/// A value of JSON, as deep as the dice want.
std::string json_piece(Dice& dice, int depth) {
  constexpr std::string_view leaves[] = {"null",  "true",        "-0", "1e999", "\"\"",
                                         "\"a\"", "\"\\u0000\"", "[]", "{}"};
  constexpr std::string_view keys[] = {"format", "version", "name",   "summary", "outputs", "sometimes",
                                       "files",  "text",    "base64", "rig",     "made",    "path"};
  if (depth == 0 || dice.below(3) == 0)
    return std::string(leaves[dice.below(std::size(leaves))]);
  const bool object = dice.below(2) == 0;
  std::string piece(object ? "{" : "[");
  for (std::size_t i = dice.below(4); i > 0; --i) {
    if (object)
      piece += "\"" + std::string(keys[dice.below(std::size(keys))]) + "\":";
    piece += json_piece(dice, depth - 1);
    piece += i > 1 ? "," : "";
  }
  return piece + (object ? "}" : "]");
}

std::string any_json(Dice& dice) {
  return json_piece(dice, 5) + (dice.below(2) == 0 ? "," : "") + "\n";
}

/// A row of a table of lengths.
std::string any_row(Dice& dice) {
  constexpr std::string_view stays[] = {"forestay", "Cap Shroud", "\"lower, fore\"", "7", "", "étai"};
  constexpr std::string_view sides[] = {"", "port", "Starboard", "aft"};
  constexpr std::string_view lengths[] = {
      "11_815 mm", "38' 2 3/8\"", "\"38' 2 3/8\"\"\"", "9.2 m", "12", "-1 m", "1e6 m", "3 mm", "\"7,5 m\""};
  constexpr char separators[] = {',', ',', ';', '\t'};
  const char separator = separators[dice.below(std::size(separators))];
  std::string row(stays[dice.below(std::size(stays))]);
  row += separator;
  row += sides[dice.below(std::size(sides))];
  row += separator;
  row += lengths[dice.below(std::size(lengths))];
  return row + (dice.below(2) == 0 ? "\r\n" : "\n");
}

} // namespace

int try_table(const std::uint8_t* data, std::size_t size) {
  const auto rig = lengths_rig(text_of(data, size), "lengths.csv", "Demo", FirstLine::rope);
  if (!rig.ok()) {
    promise(!rig.error().empty(), "refused without a reason");
    for (const TableFailure& failure : rig.error())
      promise(failure.line > 0 && failure.column > 0 && !failure.words.empty(),
              "a failure without a place");
    return 0;
  }
  OneTextReader reader("boat.rig", rig.value());
  const Compilation made = compile("boat.rig", reader, {.settings = {}, .folders = {}, .threads = 1});
  promise(made.checked.has_value(), "a table that was taken makes a rig with an error");
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
      {"parse", try_parse, ".rig", {"tests/fuzz/corpus/rig", "tests/golden/inputs"}, rig_material()},
      {"text", try_text, ".rig", {"tests/fuzz/corpus/rig", "tests/golden/inputs"}, rig_material()},
      {"rig", try_rig, ".rig", {"tests/fuzz/corpus/rig", "tests/golden/inputs"}, rig_material()},
      {"service", try_service, ".rig", {"tests/fuzz/corpus/rig", "tests/golden/inputs"}, rig_material()},
      {"editor",
       try_editor,
       ".messages",
       {"tests/fuzz/corpus/editor"},
       {{"Content-Length: ",
         "\r\n\r\n",
         "\"method\"",
         "\"params\"",
         "\"id\"",
         "null",
         "-1",
         "4000000000",
         "\"textDocument/hover\"",
         "\"textDocument/rename\"",
         "\"textDocument/didChange\"",
         "\"textDocument/codeAction\"",
         "\"position\"",
         "\"range\"",
         "\"line\"",
         "\"character\"",
         "{",
         "}",
         "[",
         "]",
         ",",
         "\\n",
         "stay a {",
         "}",
         "\xC3\xA9",
         "\xF0\x9F\x9A\xA2"},
        {},
        any_json}},
      {"table",
       try_table,
       ".csv",
       {"tests/fuzz/corpus/table"},
       {{"stay",  "length", "side",         "title",    ",",          ";",         "\"",
         "\"\"",  "\n",     "\r\n",         "port",     "starboard",  "11_815 mm", "38' 2 3/8\"",
         "1e9 m", "0 mm",   "\xEF\xBB\xBF", "\x1b[31m", "first-tang", "line",      "stack",
         "cord",  "knots",  "mark",         "method",   "offset",     "X",         "messenger"},
        {},
        any_row}},
      {"reply",
       try_reply,
       ".json",
       {"tests/fuzz/corpus/reply"},
       {{"\"format\"",  "\"version\"", "\"name\"",   "\"summary\"", "\"outputs\"", "\"sometimes\"",
         "\"files\"",   "\"text\"",    "\"base64\"", "1",           "2",           "1e400",
         "-1",          "null",        "true",       "[",           "]",           "{",
         "}",           ":",           ",",          "\"../a\"",    "\"con\"",     "\"a.\"",
         "\"\\u202e\"", "\"\\ud800\"", "\"AAAA\"",   "\"A===\""},
        {},
        any_json}},
      {"seal",
       try_seal,
       ".json",
       {"tests/fuzz/corpus/seal"},
       {{"\"rig\"", "\"made\"", "\"version\"", "\"files\"", "\"--pdf\"", "\"--only=cut-list\"",
         "\"--paper=a4\"", "\"--shop=loft\"", "\"rig/boat.rig\"", "\"../boat.rig\"", "null", "7", "[", "]",
         "{", "}", "1e400", "  "},
        {},
        any_json}}};
  return all;
}

} // namespace sheerpole::fuzz
