#pragma once

#include "units/format_length.hpp"
#include "units/write_fixed.hpp"

#include <algorithm>
#include <cstddef>
#include <cstring>
#include <iterator>
#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole {

/// A text that grows at its end by many small pieces. A sheet has a hundred thousand of them: what is
/// written in the source goes in without a call, and numbers without a text of their own. It lies in blocks
/// until it is taken, so that it is not copied as it grows.
class MarkupBuffer {
public:
  MarkupBuffer() = default;
  MarkupBuffer(const MarkupBuffer&) = delete;
  MarkupBuffer& operator=(const MarkupBuffer&) = delete;

  void put(char sign) {
    *room(1) = sign;
    ++at_;
  }
  void put(std::string_view piece) {
    if (piece.empty())
      return; // it may point nowhere
    std::memcpy(room(piece.size()), piece.data(), piece.size());
    at_ += piece.size();
  }
  template <std::size_t Size>
  void put(const char (&literal)[Size]) {
    std::memcpy(room(Size - 1), literal, Size - 1);
    at_ += Size - 1;
  }
  /// All of another one, which is empty then.
  void put(MarkupBuffer&& other) {
    close_block();
    other.close_block();
    std::move(other.full_.begin(), other.full_.end(), std::back_inserter(full_));
    other.full_.clear();
  }
  /// So many blanks.
  void indent(std::size_t blanks) {
    std::memset(room(blanks), ' ', blanks);
    at_ += blanks;
  }
  /// As format_fixed().
  void put_fixed(double value, int decimals) {
    char* const at = room(most_fixed_signs);
    if (char* const end = write_fixed(at, value, decimals))
      at_ = end;
    else
      put(std::string_view(format_fixed(value, decimals)));
  }
  /// ` x="12.500"`, of which `name` is ` x="`.
  template <std::size_t Size>
  void put_attribute(const char (&name)[Size], double value, int decimals) {
    char* const at = room(Size + most_fixed_signs);
    std::memcpy(at, name, Size - 1);
    at_ = at + (Size - 1);
    if (char* const end = write_fixed(at_, value, decimals)) {
      *end = '"';
      at_ = end + 1;
      return;
    }
    put(std::string_view(format_fixed(value, decimals)));
    put('"');
  }
  /// The whole text; the buffer is empty then.
  std::string take() {
    close_block();
    std::string text;
    std::size_t bytes = 0;
    for (const Block& block : full_)
      bytes += block.used;
    text.reserve(bytes);
    for (const Block& block : full_)
      text.append(block.bytes.get(), block.used);
    full_.clear();
    return text;
  }

private:
  struct Block {
    std::unique_ptr<char[]> bytes; ///< not filled with anything
    std::size_t used = 0;
  };
  static constexpr std::size_t first_size = std::size_t{1} << 12U;
  static constexpr std::size_t usual_size = std::size_t{1} << 16U;

  std::vector<Block> full_;
  std::unique_ptr<char[]> bytes_; ///< the block that is written to; null: none
  char* at_ = nullptr;
  char* end_ = nullptr;

  char* room(std::size_t more) {
    if (more > static_cast<std::size_t>(end_ - at_))
      new_block(more);
    return at_;
  }
  [[gnu::noinline]] void new_block(std::size_t more) {
    close_block();
    const std::size_t size = std::max(more, full_.empty() ? first_size : usual_size);
    bytes_.reset(new char[size]);
    at_ = bytes_.get();
    end_ = at_ + size;
  }
  void close_block() {
    if (bytes_ == nullptr)
      return;
    const auto used = static_cast<std::size_t>(at_ - bytes_.get());
    full_.push_back({std::move(bytes_), used});
    at_ = end_ = nullptr;
  }
};

} // namespace sheerpole
