#include "spelling_corpus.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace sheerpole {

namespace {

void append_code_point(std::string& text, unsigned code_point) {
  if (code_point < 0x80) {
    text += static_cast<char>(code_point);
  } else if (code_point < 0x800) {
    text += static_cast<char>(0xC0 | code_point >> 6);
    text += static_cast<char>(0x80 | (code_point & 0x3F));
  } else {
    text += static_cast<char>(0xE0 | code_point >> 12);
    text += static_cast<char>(0x80 | (code_point >> 6 & 0x3F));
    text += static_cast<char>(0x80 | (code_point & 0x3F));
  }
}

std::string unescaped(const std::string& field) {
  std::string text;
  for (std::size_t i = 0; i < field.size(); ++i) {
    if (field.compare(i, 2, "\\u") != 0) {
      text += field[i];
      continue;
    }
    append_code_point(text, static_cast<unsigned>(std::stoul(field.substr(i + 2, 4), nullptr, 16)));
    i += 5;
  }
  return text;
}

} // namespace

std::vector<Spelling> read_spellings() {
  std::ifstream file(SHEERPOLE_REFERENCE_DIR "/length_spellings.tsv");
  std::vector<Spelling> spellings;
  std::string line;
  for (int number = 1; std::getline(file, line); ++number) {
    if (line.starts_with('#'))
      continue;
    std::vector<std::string> fields;
    std::stringstream stream(line);
    for (std::string field; std::getline(stream, field, '\t');)
      fields.push_back(field);
    if (fields.size() < 3 || (fields[1] != "accept" && fields[1] != "refuse")) {
      ADD_FAILURE() << "length_spellings.tsv:" << number << ": not a row: " << line;
      continue;
    }
    spellings.push_back({number, unescaped(fields[0]), fields[1] == "accept", fields[2],
                         fields.size() > 3 ? unescaped(fields[3]) : std::string()});
  }
  return spellings;
}

} // namespace sheerpole
