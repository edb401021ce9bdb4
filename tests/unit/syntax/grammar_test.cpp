#include "source/file_reader.hpp"
#include "syntax/parse.hpp"
#include "unit/syntax/parsed_text.hpp"

#include <gmock/gmock.h>

#include <filesystem>
#include <vector>

namespace sheerpole::grammar_test {

using ::testing::IsEmpty;

// That each choice is made on the next token alone is held by the build (leave_out_network.cmake).

std::vector<std::string> slugs_of(const SourceText& source) {
  DiagnosticSink sink;
  parse(source, sink);
  std::vector<std::string> slugs;
  for (const Diagnostic& finding : sink.all())
    slugs.push_back(finding.slug);
  return slugs;
}

TEST(Grammar, WordsWithAMeaningAreNamesInEveryPlaceOfNames) {
  const std::string words_as_names = R"(boat b "B" from c of d.port { }
stay measured { stack { x
2 x x (drawn: drawn drawn)
of
from from of of of.of { } } }
let let = free measured
let a = [b free, c ends] mirrored +- 2 mm standard
let d = (1, 2, 3) m + (a - b) * -c / 2 kg/m
let e = jaw (a: (b), c: eye ())
points on mast { from: x
x.x "X": drawn
}
expect on.port.body = 3 mm +- 1 mm
stay expect.port "X" { on: on
changes { on (on: 3 mm) } }
position of on.port on on { }
)";
  for (const std::string& text :
       {syntax_test::sample, words_as_names, std::string("points { }"), std::string()})
    EXPECT_THAT(slugs_of(SourceText(SourceId{0}, "sample", text)), IsEmpty());
}

/// Every rig file of the examples, of the rigs of each kind, and of the frozen corpus.
std::vector<std::filesystem::path> corpus() {
  std::vector<std::filesystem::path> files;
  const std::filesystem::path golden(SHEERPOLE_GOLDEN_DIR);
  for (const std::filesystem::path& folder :
       {std::filesystem::path(SHEERPOLE_EXAMPLES_DIR), golden / "rigs", golden / "promise"})
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
      if (entry.path().extension() == ".rig")
        files.push_back(entry.path());
  return files;
}

TEST(Grammar, TheCorpusIsReadWithoutASlip) {
  const auto files = corpus();
  EXPECT_GE(files.size(), 40u);
  for (const std::filesystem::path& path : files) {
    DiskFileReader reader;
    auto loaded = load(path.generic_string(), SourceId{0}, reader);
    ASSERT_TRUE(loaded.ok()) << path;
    EXPECT_THAT(slugs_of(loaded.value()), IsEmpty()) << path;
  }
}

} // namespace sheerpole::grammar_test
