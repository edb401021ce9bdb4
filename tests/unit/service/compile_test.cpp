#include "service/compile.hpp"

#include "driver/built_in_backends.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <string>

namespace sheerpole::compile_test {
namespace {

class Texts final : public FileReader {
public:
  explicit Texts(std::initializer_list<std::pair<const std::string, std::string>> texts) : texts_(texts) {}
  Result<std::string, Failure> read(const std::string& path, std::size_t) override {
    const auto found = texts_.find(path);
    if (found == texts_.end())
      return Failure::not_found;
    return found->second;
  }

private:
  std::map<std::string, std::string> texts_;
};

const std::string parts = "language 1\n"
                          "rope hmpe-9 { \n construction: \"12-strand\"\n size: \"9 mm\"\n}\n"
                          "splice eye {\n bury: 25.5 in\n eye-allowance: 6.25 in\n contraction: 0 %\n}\n"
                          "link hardware { length: 12 in }\n";
const std::string boat = "language 1\nuse \"lib/parts.rig\"\n"
                         "stay backstay {\n line: hmpe-9\n stack {\n hardware (splice: eye)\n line\n"
                         " hardware (splice: eye)\n }\n}\n";

TEST(Compile, HandsOnEveryPhase) {
  Texts reader{{"boat/a.rig", boat}, {"boat/lib/parts.rig", parts}};
  const Compilation result = compile("boat/a.rig", reader);
  ASSERT_TRUE(result.findings.empty()) << result.findings.front().message;
  EXPECT_EQ(result.trees.size(), 2u);
  ASSERT_TRUE(result.names && result.rig && result.derived && result.checked);
  EXPECT_FALSE(result.has_errors);
}

/// What a check command prints is the same whether words of what passed are made or not: findings, and how
/// many results of each outcome.
TEST(Compile, CountsAreThoseOfTheWords) {
  for (const char* name : {"grisolde", "pellimoor", "sallow", "tansyholm", "skirlpool"}) {
    const std::string path = std::string(SHEERPOLE_EXAMPLES_DIR) + "/" + name + ".rig";
    DiskFileReader reader;
    const Compilation words = compile(path, reader);
    const Compilation counts =
        compile(path, reader, {.settings = {}, .folders = {}, .wanted = Wanted::counts});
    ASSERT_TRUE(words.checked && counts.checked) << name;
    ASSERT_EQ(words.findings.size(), counts.findings.size()) << name;
    for (std::size_t i = 0; i < words.findings.size(); ++i) {
      EXPECT_EQ(words.findings[i].slug, counts.findings[i].slug) << name;
      EXPECT_EQ(words.findings[i].message, counts.findings[i].message) << name;
      EXPECT_EQ(words.findings[i].waived, counts.findings[i].waived) << name;
    }
    const CheckTotals made = count_results(*words.results);
    const CheckTotals counted = count_results(*counts.results);
    EXPECT_GT(counted.passed, 0u) << name;
    EXPECT_EQ(made.passed, counted.passed) << name;
    EXPECT_EQ(made.found, counted.found) << name;
    EXPECT_EQ(made.not_checked, counted.not_checked) << name;
    EXPECT_EQ(made.waived, counted.waived) << name;
    EXPECT_EQ(words.checked->draft_reasons().size(), counts.checked->draft_reasons().size()) << name;
  }
}

/// Common practice, no source: two burys of 25 1/2 in and two wraps of 6 1/4 in, less 24 in of screw and
/// toggles, make the least cut X + 39 1/2 in, and the rope section X - 24 in.
TEST(Compile, AnUnknownLengthBecomesXAndWhatIsAdded) {
  Texts reader{{"a.rig", boat}, {"lib/parts.rig", parts}};
  const Compilation result = compile("a.rig", reader);
  ASSERT_TRUE(result.derived);
  const DerivedStay& stay = result.derived->stays.front();
  EXPECT_EQ(stay.route, LengthRoute::unknown);
  EXPECT_TRUE(stay.body.unknown);
  EXPECT_NEAR(stay.body.known().inches(), -24.0, 1e-9);
  ASSERT_EQ(stay.pieces.size(), 1u);
  EXPECT_TRUE(stay.pieces.front().cut.unknown);
  EXPECT_NEAR(stay.pieces.front().cut.known().inches(), 39.5, 1e-9);
}

TEST(Compile, AFileThatIsNotThereIsAFindingWithoutAPlace) {
  Texts reader{};
  const Compilation result = compile("a.rig", reader);
  ASSERT_EQ(result.findings.size(), 1u);
  EXPECT_EQ(result.findings.front().slug, "file-not-found");
  EXPECT_FALSE(result.findings.front().primary);
  EXPECT_TRUE(result.has_errors);
  EXPECT_FALSE(result.checked);
}

TEST(Compile, AnErrorStopsBeforeTheCheckedRig) {
  Texts reader{{"a.rig", "language 1\nlink l { length: 12 }\n"}};
  const Compilation result = compile("a.rig", reader);
  EXPECT_TRUE(result.has_errors);
  EXPECT_TRUE(result.names);
  EXPECT_FALSE(result.rig);
  EXPECT_FALSE(result.checked);
}

/// What is written into documents must not depend on where the command was typed.
TEST(Compile, DocumentsNameFilesFromTheRigsFolder) {
  Texts near{{"a.rig", boat}, {"lib/parts.rig", parts}};
  Texts far{{"/yard/boats/a.rig", boat}, {"/yard/boats/lib/parts.rig", parts}};
  const Compilation here = compile("a.rig", near);
  const Compilation there = compile("/yard/boats/a.rig", far);
  ASSERT_TRUE(here.checked && there.checked);
  EXPECT_EQ(there.checked->sources()[SourceId{0}].name(), "a.rig");
  EXPECT_EQ(there.checked->sources()[SourceId{1}].name(), "lib/parts.rig");
  for (const auto& backend : built_in_backends()) {
    const OutputBundle first = backend->generate({*here.checked});
    const OutputBundle second = backend->generate({*there.checked});
    ASSERT_EQ(first.files.size(), second.files.size());
    for (std::size_t i = 0; i < first.files.size(); ++i)
      EXPECT_EQ(first.files[i].bytes, second.files[i].bytes) << first.files[i].name;
  }
}

/// Every output that a back end announces is made, and none besides.
TEST(Compile, BackEndsMakeWhatTheyAnnounce) {
  Texts reader{{"a.rig", boat}, {"lib/parts.rig", parts}};
  const Compilation result = compile("a.rig", reader);
  ASSERT_TRUE(result.checked);
  for (const auto& backend : built_in_backends()) {
    std::vector<std::string> made;
    for (const OutputFile& file : backend->generate({*result.checked}).files)
      made.push_back(file.name);
    const BackendDescription said = backend->describe();
    std::erase_if(made, [&](const std::string& name) {
      return std::find(said.sometimes.begin(), said.sometimes.end(), name) != said.sometimes.end();
    });
    EXPECT_EQ(made, said.outputs) << said.name;
  }
}

} // namespace
} // namespace sheerpole::compile_test
