#pragma once

#include <unistd.h>

#include <utility>

namespace sheerpole {

/// Closes an open file of the system when it goes out of scope.
class FileDescriptor {
public:
  explicit FileDescriptor(int number = -1) : number_(number) {}
  FileDescriptor(FileDescriptor&& other) noexcept : number_(std::exchange(other.number_, -1)) {}
  FileDescriptor& operator=(FileDescriptor&& other) noexcept {
    std::swap(number_, other.number_);
    return *this;
  }
  ~FileDescriptor() { shut(); }

  int number() const { return number_; }
  bool is_open() const { return number_ >= 0; }
  void shut() {
    if (is_open())
      close(std::exchange(number_, -1));
  }

private:
  int number_;
};

} // namespace sheerpole
