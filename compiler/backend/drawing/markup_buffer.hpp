#pragma once

#include "units/format_length.hpp"
#include "units/write_fixed.hpp"

#include <algorithm>
#include <cstddef>
#include <cstring>
#include <memory>
#include <string>
#include <string_view>
#include <utility>

namespace sheerpole {

/// A text that grows at its end by many small pieces. A sheet has a hundred thousand of them: what is
/// written in the source goes in without a call, and numbers without a text of their own.
class MarkupBuffer {
public:
  void put(char sign) {
    *room(1) = sign;
    ++used_;
  }
  void put(std::string_view piece) {
    if (piece.empty())
      return; // it may point nowhere
    std::memcpy(room(piece.size()), piece.data(), piece.size());
    used_ += piece.size();
  }
  template <std::size_t Size>
  void put(const char (&literal)[Size]) {
    std::memcpy(room(Size - 1), literal, Size - 1);
    used_ += Size - 1;
  }
  /// So many blanks.
  void indent(std::size_t blanks) {
    std::memset(room(blanks), ' ', blanks);
    used_ += blanks;
  }
  /// As format_fixed().
  void put_fixed(double value, int decimals) {
    char* const at = room(most_fixed_signs);
    if (const char* const end = write_fixed(at, value, decimals))
      used_ += static_cast<std::size_t>(end - at);
    else
      put(std::string_view(format_fixed(value, decimals)));
  }
  /// The whole text; the buffer is empty then.
  std::string take() { return {bytes_.get(), std::exchange(used_, 0)}; }

private:
  static constexpr std::size_t first_size = std::size_t{1} << 14U;
  std::unique_ptr<char[]> bytes_{new char[first_size]}; ///< not filled with anything, and never null
  std::size_t size_ = first_size;
  std::size_t used_ = 0;

  char* room(std::size_t more) {
    if (more > size_ - used_)
      grow(more);
    return bytes_.get() + used_;
  }
  [[gnu::noinline]] void grow(std::size_t more) {
    size_ = std::max(2 * size_, used_ + more);
    std::unique_ptr<char[]> larger(new char[size_]);
    std::memcpy(larger.get(), bytes_.get(), used_);
    bytes_ = std::move(larger);
  }
};

} // namespace sheerpole
