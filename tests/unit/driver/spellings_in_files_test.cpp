// The corpus of spellings once more, this time inside rig files: the lexer of the language must take and
// refuse the same texts as the reader of quantities, and give the same lengths.

#include "diagnostics/sink.hpp"
#include "driver/compile.hpp"
#include "units/parse_quantity.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <string>
#include <vector>

namespace sheerpole {
namespace {

class OneText final : public FileReader {
public:
  explicit OneText(std::string text) : text_(std::move(text)) {}
  Result<std::string, Failure> read(const std::string&, std::size_t) override { return text_; }

private:
  std::string text_;
};

struct Row {
  std::string text;
  bool accepted = false;
};

/// \uXXXX stands for that character.
std::string unescaped(const std::string& text) {
  std::string result;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text.compare(i, 2, "\\u") != 0 || i + 6 > text.size()) {
      result += text[i];
      continue;
    }
    const unsigned code = static_cast<unsigned>(std::stoul(text.substr(i + 2, 4), nullptr, 16));
    if (code < 0x80) {
      result += static_cast<char>(code);
    } else if (code < 0x800) {
      result += static_cast<char>(0xC0 | (code >> 6));
      result += static_cast<char>(0x80 | (code & 0x3F));
    } else {
      result += static_cast<char>(0xE0 | (code >> 12));
      result += static_cast<char>(0x80 | ((code >> 6) & 0x3F));
      result += static_cast<char>(0x80 | (code & 0x3F));
    }
    i += 5;
  }
  return result;
}

std::vector<Row> rows() {
  std::vector<Row> result;
  std::ifstream file(SHEERPOLE_REFERENCE_DIR "/length_spellings.tsv");
  for (std::string line; std::getline(file, line);) {
    if (line.empty() || line.front() == '#')
      continue;
    const auto tab = line.find('\t');
    result.push_back({unescaped(line.substr(0, tab)), line.compare(tab + 1, 6, "accept") == 0});
  }
  return result;
}

Compilation compiled(const std::string& text) {
  OneText reader(text);
  return compile("spelling.rig", reader);
}

std::string first_finding(const Compilation& compilation) {
  return compilation.findings.empty() ? "" : compilation.findings.front().slug;
}

TEST(SpellingsInFiles, TheCorpusIsThere) {
  EXPECT_GE(rows().size(), 200u);
}

TEST(SpellingsInFiles, WhatIsAcceptedIsAcceptedInAFile) {
  int lengths = 0;
  for (const Row& row : rows()) {
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
  for (const Row& row : rows()) {
    if (row.accepted)
      continue;
    const Compilation part = compiled("language 1\nlink l { length: " + row.text + " }\n");
    EXPECT_TRUE(part.has_errors) << row.text;
  }
}

} // namespace
} // namespace sheerpole
