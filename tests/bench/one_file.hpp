#pragma once

#include "source/file_reader.hpp"

#include <string>
#include <utility>

namespace sheerpole::bench {

/// Gives one text for every name.
class OneFile final : public FileReader {
public:
  explicit OneFile(std::string text) : text_(std::move(text)) {}
  Result<std::string, Failure> read(const std::string& /*path*/, std::size_t /*most*/) override {
    return text_;
  }

private:
  std::string text_;
};

} // namespace sheerpole::bench
