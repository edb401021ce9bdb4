// The corpus of spellings once more, this time inside rig files: the lexer of the language must take and
// refuse the same texts as the reader of quantities, and give the same lengths.

#include "diagnostics/sink.hpp"
#include "service/compile.hpp"
#include "unit/units/spelling_corpus.hpp"
#include "units/parse_quantity.hpp"

#include <gtest/gtest.h>

#include <string>

namespace sheerpole::spellings_in_files_test {
namespace {

class OneText final : public FileReader {
public:
  explicit OneText(std::string text) : text_(std::move(text)) {}
  Result<std::string, Failure> read(const std::string&, std::size_t) override { return text_; }

private:
  std::string text_;
};

Compilation compiled(const std::string& text) {
  OneText reader(text);
  return compile("spelling.rig", reader);
}

std::string first_finding(const Compilation& compilation) {
  return compilation.findings.empty() ? "" : compilation.findings.front().slug;
}

TEST(SpellingsInFiles, TheCorpusIsThere) {
  EXPECT_GE(read_spellings().size(), 200u);
}

TEST(SpellingsInFiles, WhatIsAcceptedIsAcceptedInAFile) {
  int lengths = 0;
  for (const Spelling& row : read_spellings()) {
    if (!row.accepted)
      continue;
    const Compilation named = compiled("language 1\nlet a = " + row.text + "\n");
    EXPECT_FALSE(named.has_errors) << row.text << ": " << first_finding(named);
    const auto quantity = parse_quantity(row.text);
    ASSERT_TRUE(quantity.ok()) << row.text;
    const double metres = quantity.value().si;
    if (quantity.value().dimension != dimension::length || metres < 0.0 || metres > 20.0)
      continue;
    const Compilation part = compiled("language 1\nlink l { length: " + row.text + " }\n");
    ASSERT_TRUE(!part.rig || part.rig->parts.size() == 1u);
    EXPECT_TRUE(part.rig) << row.text << ": " << first_finding(part);
    if (!part.rig)
      continue;
    EXPECT_NEAR(part.rig->parts.front().length->value.metres(), metres, 1e-12) << row.text;
    EXPECT_EQ(part.rig->parts.front().length->provenance.written, row.text);
    ++lengths;
  }
  EXPECT_GE(lengths, 50);
}

TEST(SpellingsInFiles, WhatIsRefusedIsRefusedInAFile) {
  for (const Spelling& row : read_spellings()) {
    if (row.accepted)
      continue;
    const Compilation part = compiled("language 1\nlink l { length: " + row.text + " }\n");
    EXPECT_TRUE(part.has_errors) << row.text;
  }
}

} // namespace
} // namespace sheerpole::spellings_in_files_test
