#pragma once

#include "source/source_text.hpp"

#include <antlr4-runtime/CharStream.h>

#include <cstdint>
#include <string>
#include <vector>

namespace sheerpole {

/// The characters of one file for the generated lexer, which counts code points, and the way back to the
/// bytes of the file. The SourceText must outlive it.
class CodePoints final : public antlr4::CharStream {
public:
  explicit CodePoints(const SourceText& source);

  /// Byte offset at which a code point begins; for the place behind the last one, the size of the file.
  std::uint32_t byte_offset(std::size_t code_point) const {
    return offsets_.empty() ? static_cast<std::uint32_t>(code_point) : offsets_[code_point];
  }

  void consume() override;
  std::size_t LA(ssize_t i) override;
  ssize_t mark() override { return -1; }
  void release(ssize_t) override {}
  std::size_t index() override { return next_; }
  void seek(std::size_t index) override { next_ = std::min(index, characters_.size()); }
  std::size_t size() override { return characters_.size(); }
  std::string getSourceName() const override { return source_.name(); }
  std::string getText(const antlr4::misc::Interval& interval) override;
  std::string toString() const override { return std::string(source_.bytes()); }

private:
  const SourceText& source_;
  std::u32string characters_;
  std::vector<std::uint32_t> offsets_; ///< empty when every character is one byte
  std::size_t next_ = 0;
};

} // namespace sheerpole
