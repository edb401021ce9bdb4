#include "service/findings.hpp"
#include "unit/diagnostics/words_of_command.hpp"

#include "diagnostics/catalogue.hpp"
#include "unit/service/boat_texts.hpp"

#include <gmock/gmock.h>

#include <algorithm>
#include <string>
#include <vector>

namespace sheerpole::suggested_edits_test {
namespace {

using namespace service;

/// The file that an example is about, and what is set for it; empty for a command that reads no rig.
struct Command {
  std::string file;
  CompileOptions options;
};

Command command_of(const CatalogueEntry& entry) {
  Command result;
  const std::vector<std::string> words = test::words_of_command(entry.example.command);
  for (std::size_t i = 1; i < words.size(); ++i) {
    if (words[i] == "--set" && i + 1 < words.size())
      result.options.settings.push_back(words[++i]);
    else if (words[i] == "--as-of" && i + 1 < words.size())
      result.options.as_of = words[++i];
    else if (words[i] == "--shop" && i + 1 < words.size())
      result.options.shop = words[++i];
    else if (words[i].ends_with(".rig") && result.file.empty())
      result.file = words[i];
  }
  return result;
}

/// How many findings say just this.
std::size_t count(const OpenBoat& boat, const Diagnostic& finding) {
  const std::vector<Diagnostic>& all = boat.compiled.findings;
  return static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [&](const Diagnostic& other) {
    return other.slug == finding.slug && other.message == finding.message &&
           other.subject == finding.subject;
  }));
}

/// Every finding of every example that comes with an edit: the edit, offered where the finding stands,
/// takes it away.
TEST(SuggestedEdits, TakeTheirFindingsAway) {
  std::size_t tried = 0;
  for (const CatalogueEntry* entry : all_entries()) {
    test::BoatTexts texts;
    for (const ExamplePart& part : entry->example.parts) {
      const std::string file(part.file);
      const std::string* before = texts.texts.find(file);
      if (part.manner == ExampleManner::plain && part.times == 1)
        texts.put(file, (before != nullptr ? *before : "") + std::string(part.text));
    }
    const Command command = command_of(*entry);
    if (command.file.empty())
      continue;
    const OpenBoat boat = read_boat(command.file, texts.texts, command.options);
    for (const Diagnostic& finding : boat.compiled.findings) {
      if (!finding.edit || boat.tree(finding.edit->span.source) == nullptr)
        continue;
      SCOPED_TRACE(std::string(entry->slug) + ": " + finding.slug + ": " + finding.message + " / " +
                   finding.edit->title);
      const std::vector<Action> offered = actions(boat, finding.edit->span);
      const auto mine = std::find_if(offered.begin(), offered.end(),
                                     [&](const Action& action) { return action.finding == &finding; });
      ASSERT_NE(mine, offered.end());
      ++tried;
      Texts edited(&texts.texts);
      for (const TextEdit& edit : mine->edits)
        edited.put(edit.file, with_edits(edit.file, *texts.texts.find(edit.file), mine->edits));
      const OpenBoat after = read_boat(command.file, edited, command.options);
      EXPECT_LT(count(after, finding), count(boat, finding));
    }
  }
  EXPECT_GT(tried, 60u);
}

} // namespace
} // namespace sheerpole::suggested_edits_test
