#pragma once

#include <string>

namespace sheerpole {

/// A new empty folder for one run of a program; gone with all that is in it when this goes out of scope.
class TemporaryFolder {
public:
  TemporaryFolder();
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;
  ~TemporaryFolder();

  /// Empty when none could be made.
  const std::string& path() const { return path_; }

private:
  std::string path_;
};

} // namespace sheerpole
