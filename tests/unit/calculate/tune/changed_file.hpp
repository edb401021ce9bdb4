#pragma once

#include "service/compile.hpp"
#include "source/file_reader.hpp"

#include <gtest/gtest.h>

#include <string>
#include <utility>
#include <vector>

namespace sheerpole::test {

/// Texts of a file put in the place of others, each wherever it stands; the files that it uses are read as
/// they are.
using Replacements = std::vector<std::pair<std::string, std::string>>;

class ChangedFile final : public FileReader {
public:
  ChangedFile(std::string path, Replacements changes)
      : path_(std::move(path)), changes_(std::move(changes)) {}

  Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
    Result<std::string, Failure> text = disk_.read(path, limit);
    if (!text || !path.ends_with(path_.substr(path_.rfind('/') + 1)))
      return text;
    std::string changed = text.value();
    for (const auto& [from, to] : changes_) {
      EXPECT_NE(changed.find(from), std::string::npos) << from;
      for (std::size_t at = changed.find(from); at != std::string::npos;
           at = changed.find(from, at + to.size()))
        changed.replace(at, from.size(), to);
    }
    return changed;
  }

private:
  DiskFileReader disk_;
  std::string path_;
  Replacements changes_;
};

/// The rig file with these changes, through all phases.
inline Compilation with_changes(const std::string& path, Replacements changes) {
  ChangedFile reader(path, std::move(changes));
  return compile(path, reader);
}

} // namespace sheerpole::test
