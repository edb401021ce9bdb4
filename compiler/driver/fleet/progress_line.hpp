#pragma once

#include <cstddef>

namespace sheerpole {

/// "23 of 1000" on the last line of the error stream, over and over; only when that is a terminal.
class ProgressLine {
public:
  explicit ProgressLine(std::size_t count) : count_(count) {}
  void show(std::size_t done);
  /// Makes room for something else to be printed.
  void clear();

private:
  std::size_t count_;
  bool shown_ = false;
};

} // namespace sheerpole
