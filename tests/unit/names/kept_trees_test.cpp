#include "names/kept_trees.hpp"

#include "names/read_files.hpp"
#include "service/texts.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::kept_trees_test {
namespace {

/// Reads boat.rig and what it uses; how many findings the texts have.
std::size_t read(service::Texts& texts, KeptTrees& kept) {
  SourceSet sources;
  DiagnosticSink sink;
  read_files("boat.rig", texts, {}, sources, sink, &kept);
  return sink.all().size();
}

TEST(KeptTrees, OnlyWhatHasChangedIsReadAgain) {
  service::Texts texts;
  texts.put("boat.rig", "language 1\nuse \"parts.rig\"\n");
  texts.put("parts.rig", "language 1\nlet a = 1 mm;\n");
  KeptTrees kept;
  EXPECT_EQ(read(texts, kept), 1u);
  EXPECT_EQ(kept.read(), 2u);
  texts.put("boat.rig", "language 1\nuse \"parts.rig\"\nlet b = 1 mm;\n");
  EXPECT_EQ(read(texts, kept), 2u); // the finding of the library that was kept among them
  EXPECT_EQ(kept.read(), 3u);
  EXPECT_EQ(kept.taken_again(), 1u);
  texts.put("parts.rig", "language 1\nlet a = 1 mm\n");
  EXPECT_EQ(read(texts, kept), 1u);
  EXPECT_EQ(kept.read(), 4u);
}

TEST(KeptTrees, AnotherPlaceAmongTheFilesIsAnotherTree) {
  service::Texts texts;
  texts.put("boat.rig", "language 1\nuse \"a.rig\"\n");
  texts.put("a.rig", "language 1\nlet a = 1 mm;\n");
  texts.put("b.rig", "language 1\n");
  KeptTrees kept;
  read(texts, kept);
  texts.put("boat.rig", "language 1\nuse \"b.rig\"\nuse \"a.rig\"\n");
  SourceSet sources;
  DiagnosticSink sink;
  read_files("boat.rig", texts, {}, sources, sink, &kept);
  ASSERT_EQ(sink.all().size(), 1u);
  EXPECT_EQ(sources[sink.all()[0].primary->span.source].name(), "a.rig");
}

TEST(KeptTrees, ManyLargeTextsDoNotPileUp) {
  service::Texts texts;
  KeptTrees kept;
  for (int i = 0; i < 40; ++i) {
    texts.put("boat.rig", "language 1\n# " + std::to_string(i) + "\n" + std::string(100'000, '\n'));
    read(texts, kept);
  }
  EXPECT_EQ(kept.read(), 40u);
}

} // namespace
} // namespace sheerpole::kept_trees_test
