#pragma once

#include "source/file_reader.hpp"

#include <cstddef>
#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole::service {

/// Texts in memory, by their paths, in front of another reader or of none: what somebody has open and not
/// yet saved, or what was changed for a trial.
class Texts final : public FileReader {
public:
  explicit Texts(FileReader* behind = nullptr) : behind_(behind) {}

  Result<std::string, Failure> read(const std::string& path, std::size_t limit) override;
  std::string real_path(const std::string& path) override;

  void put(const std::string& path, std::string bytes);
  void drop(const std::string& path);
  /// The text of this path, or of another path that leads to the same file; null when it is not here.
  const std::string* find(const std::string& path) const;
  const std::map<std::string, std::string>& all() const { return texts_; }

private:
  FileReader* behind_; ///< may be null
  std::map<std::string, std::string> texts_;
  std::map<std::string, std::string> by_real_path_; ///< to the path under which a text is here
};

/// A change of one text: the bytes [begin, end) of the file, a byte order mark counted, become others.
struct TextEdit {
  std::string file;
  std::uint32_t begin = 0;
  std::uint32_t end = 0;
  std::string replacement;
};

/// The text with its edits made. They may not overlap, and come in any order; those of other files are left
/// out.
std::string with_edits(std::string_view file, std::string bytes, std::vector<TextEdit> edits);

/// The one edit that turns a text into another: what both begin and end with is left as it is.
TextEdit difference(const std::string& file, std::string_view was, std::string_view is);

} // namespace sheerpole::service
