#include "driver/depends_file.hpp"

#include <gtest/gtest.h>

namespace sheerpole::depends_file_test {
namespace {

/// How the name of one input is written.
std::string written(const std::string& name) {
  const auto text = write_dependencies({{"out"}, {name}});
  if (!text)
    return "cannot be said";
  const std::string head = "out: \\\n ";
  EXPECT_TRUE(text->starts_with(head));
  return text->substr(head.size(), text->size() - head.size() - 1);
}

// The escapes are those of the GNU compilers' -MD, which GNU Make 4.3 and ninja 1.11 both read; that they
// do is tested with both in golden/verbs/depends.test.
TEST(DependsFile, SignsThatMeanSomethingToMakeAreEscaped) {
  EXPECT_EQ(written("a.rig"), "a.rig");
  EXPECT_EQ(written("a b.rig"), "a\\ b.rig");
  EXPECT_EQ(written("a\\ b.rig"), "a\\\\\\ b.rig");
  EXPECT_EQ(written("a\\b.rig"), "a\\b.rig");
  EXPECT_EQ(written("$(x)#1:2"), "$$(x)\\#1\\:2");
  EXPECT_EQ(written("bœuf.rig"), "bœuf.rig");
}

TEST(DependsFile, WhatTheFormHasNoWayToSay) {
  EXPECT_EQ(written("a\nb"), "cannot be said");
  EXPECT_EQ(written("a\rb"), "cannot be said");
  EXPECT_EQ(written("a\tb"), "cannot be said");
  EXPECT_EQ(written("a\\"), "cannot be said");
  EXPECT_FALSE(write_dependencies({{"a\nb"}, {"c"}}));
}

TEST(DependsFile, SeveralOutputsAndAnEmptyRuleForEachLibrary) {
  EXPECT_EQ(*write_dependencies({{"x", "y"}, {"a", "b"}}), "x \\\n y: \\\n a \\\n b\n\nb:\n");
}

TEST(DependsFile, EachFileOnceAndNotTheCommandLine) {
  SourceSet sources;
  sources.add(SourceText(sources.next_id(), "a.rig", "language 1\n"));
  sources.add(SourceText(sources.next_id(), "command line", "beam = 3 m\n"));
  Dependencies made;
  add_files(made.inputs, sources);
  add_files(made.inputs, sources);
  EXPECT_EQ(made.inputs, std::vector<std::string>{"a.rig"});
}

} // namespace
} // namespace sheerpole::depends_file_test
