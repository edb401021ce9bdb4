#include "diagnostics/catalogue.hpp"
#include "driver/command_line.hpp"
#include "rules/check_table.hpp"
#include "unit/diagnostics/words_of_command.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>
#include <string>
#include <utility>

namespace sheerpole::finding_examples_test {
namespace {

namespace fs = std::filesystem;

/// `{n}` and `{n + 1}` filled in.
std::string counted(std::string_view text, std::uint32_t number) {
  std::string result(text);
  for (const auto& [sign, value] : {std::pair{std::string_view("{n}"), number}, {"{n + 1}", number + 1}})
    for (std::size_t at = result.find(sign); at != std::string::npos; at = result.find(sign, at))
      result.replace(at, sign.size(), std::to_string(value));
  return result;
}

/// The bytes of a text whose signs are all below U+0100, one for each sign.
std::string in_older_encoding(std::string_view text) {
  std::string result;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const auto byte = static_cast<unsigned char>(text[at]);
    if (byte < 0x80)
      result += text[at];
    else if (++at < text.size())
      result += static_cast<char>((byte & 3U) << 6U | (static_cast<unsigned char>(text[at]) & 0x3FU));
  }
  return result;
}

void append(const fs::path& path, const std::string& bytes) {
  fs::create_directories(fs::absolute(path).parent_path());
  std::ofstream file(path, std::ios::binary | std::ios::app);
  file << bytes;
  ASSERT_TRUE(file) << path;
}

/// Writes the part below the folder in which this runs.
void write(const ExamplePart& part) {
  const fs::path path(part.file);
  switch (part.manner) {
  case ExampleManner::folder:
    fs::create_directories(path);
    return;
  case ExampleManner::not_readable:
    // The tests may run as root, whom no file refuses; this one refuses everybody.
    fs::create_symlink("/proc/self/mem", path);
    return;
  case ExampleManner::older_encoding:
    append(path, in_older_encoding(part.text));
    return;
  case ExampleManner::in_one_line: {
    std::string line;
    for (std::uint32_t number = 1; number <= part.times; ++number)
      line += part.text.substr(0, part.text.size() - 1);
    append(path, line + "\n");
    return;
  }
  case ExampleManner::program:
  case ExampleManner::plain:
    break;
  }
  if (part.file.find("{n}") != std::string_view::npos) {
    for (std::uint32_t number = 1; number <= part.times; ++number)
      append(counted(part.file, number), counted(part.text, number));
    return;
  }
  std::string bytes;
  for (std::uint32_t number = 1; number <= part.times; ++number)
    bytes += part.times == 1 ? std::string(part.text) : counted(part.text, number);
  append(path, bytes);
  if (part.manner == ExampleManner::program)
    fs::permissions(path, fs::perms::owner_all);
}

struct Outcome {
  int exit_code = 0;
  std::string output;
  std::string errors;
};

/// Writes the files of the example into a folder of their own and runs its command there.
Outcome run(const FindingExample& example, std::string_view slug) {
  const fs::path before = fs::current_path();
  fs::path folder = fs::path(testing::TempDir()) / ("finding-" + std::string(slug) + "-XXXXXX");
  std::string name = folder.string();
  if (mkdtemp(name.data()) == nullptr) {
    ADD_FAILURE() << "no folder " << name;
    return {};
  }
  fs::current_path(name);
  for (const ExamplePart& part : example.parts)
    write(part);
  std::vector<std::string> words = test::words_of_command(example.command);
  std::vector<char*> arguments;
  for (std::string& word : words)
    arguments.push_back(word.data());
  testing::internal::CaptureStdout();
  testing::internal::CaptureStderr();
  Outcome outcome;
  outcome.exit_code = run_command_line(static_cast<int>(arguments.size()), arguments.data());
  outcome.errors = testing::internal::GetCapturedStderr();
  outcome.output = testing::internal::GetCapturedStdout();
  fs::current_path(before);
  fs::remove_all(name);
  return outcome;
}

/// The findings alone that a command told: what comes before the line "1 error, 0 warnings, 0 notes".
/// `check` prints them; verbs that make something else tell them on the error stream.
std::string said(const Outcome& outcome) {
  const std::string& printed = outcome.errors.empty() ? outcome.output : outcome.errors;
  std::size_t begin = 0;
  for (std::size_t at = 0; at < printed.size();) {
    const std::size_t end = std::min(printed.find('\n', at), printed.size());
    const std::string_view line = std::string_view(printed).substr(at, end - at);
    const std::size_t digits = std::min(line.find_first_not_of("0123456789"), line.size());
    if (digits > 0 && line.substr(digits).starts_with(" error"))
      break;
    begin = at = end + 1;
  }
  std::string result = printed.substr(0, std::min(begin, printed.size()));
  while (result.ends_with("\n\n"))
    result.pop_back();
  return result;
}

using Finding = std::pair<std::string, std::string>; // severity and slug

/// "warning at boat.rig:26:5 (pin-loose)" in each line that begins so.
std::set<Finding> findings_of(const std::string& said) {
  std::set<Finding> result;
  for (std::size_t at = 0; at < said.size();) {
    const std::size_t end = std::min(said.find('\n', at), said.size());
    const std::string_view line = std::string_view(said).substr(at, end - at);
    for (const std::string_view severity : {"error", "warning", "note"}) {
      const std::size_t open = line.find('(');
      const std::size_t close = line.find(')', open);
      if (line.starts_with(std::string(severity) + " ") && close != std::string_view::npos)
        result.emplace(severity, line.substr(open + 1, close - open - 1));
    }
    at = end + 1;
  }
  return result;
}

bool has_error(const std::set<Finding>& findings) {
  return std::any_of(findings.begin(), findings.end(),
                     [](const Finding& each) { return each.first == "error"; });
}

/// What is stated, in which a line "..." stands for any lines.
bool is_as_stated(std::string said, std::string stated) {
  constexpr std::string_view any = "\n...\n";
  said.insert(0, "\n");
  stated.insert(0, "\n");
  const std::size_t at = stated.find(any);
  if (at == std::string::npos)
    return said == stated;
  const std::string head = stated.substr(0, at + 1);
  const std::string tail = stated.substr(at + any.size() - 1);
  return said.size() >= head.size() + tail.size() - 1 && said.starts_with(head) && said.ends_with(tail);
}

class FindingExamples : public testing::TestWithParam<const CatalogueEntry*> {};
class CheckExamples : public testing::TestWithParam<const CatalogueEntry*> {};

/// The entries that a check may report.
std::vector<const CatalogueEntry*> entries_of_checks() {
  std::vector<const CatalogueEntry*> result;
  for (const CheckRow& row : all_checks())
    result.push_back(find_entry(row.slug));
  return result;
}

std::string test_name(const testing::TestParamInfo<const CatalogueEntry*>& each) {
  std::string name(each.param->slug);
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
}

TEST_P(FindingExamples, ProvokeTheirFindingAndAreRidOfItWhenMended) {
  const CatalogueEntry& entry = *GetParam();
  const std::string slug(entry.slug);
  const Finding own(name_of(entry.severity), slug);

  const Outcome example = run(entry.example, slug);
  const std::string told = said(example);
  EXPECT_TRUE(is_as_stated(told, std::string(entry.says))) << "it says\n"
                                                           << told << "and not\n"
                                                           << entry.says;
  const std::set<Finding> found = findings_of(told);
  EXPECT_TRUE(found.contains(own)) << own.first << " " << slug << " is not among\n" << told;
  EXPECT_EQ(example.exit_code != 0, has_error(found));

  const Outcome mended = run(entry.mended, slug);
  const std::set<Finding> left = findings_of(said(mended));
  EXPECT_EQ(mended.exit_code != 0, has_error(left)) << said(mended);
  for (const Finding& each : left) {
    EXPECT_NE(each.second, slug) << "still there when mended:\n" << said(mended);
    EXPECT_TRUE(each.first == "note" || found.contains(each)) << "new when mended:\n" << said(mended);
  }
}

// A mend that only takes away what a check looks at would leave it not checked.
TEST_P(CheckExamples, PassWhenMended) {
  const CatalogueEntry& entry = *GetParam();
  const Outcome shown = run({"sheerpole show results boat.rig --form csv", entry.mended.parts}, entry.slug);
  const std::string rows = "\n" + shown.output;
  const std::string begin = "\n" + std::string(entry.slug) + ",";
  bool passes = false;
  for (std::size_t at = rows.find(begin); at != std::string::npos; at = rows.find(begin, at + 1)) {
    const std::string row = rows.substr(at + 1, rows.find('\n', at + 1) - at - 1);
    passes = passes || row.find(",pass,") != std::string::npos;
    EXPECT_EQ(row.find(",finding,"), std::string::npos) << row;
  }
  EXPECT_TRUE(passes) << entry.slug << " does not pass when mended\n" << shown.output << shown.errors;
}

INSTANTIATE_TEST_SUITE_P(All, FindingExamples, testing::ValuesIn(all_entries()), test_name);
INSTANTIATE_TEST_SUITE_P(All, CheckExamples, testing::ValuesIn(entries_of_checks()), test_name);

} // namespace
} // namespace sheerpole::finding_examples_test
