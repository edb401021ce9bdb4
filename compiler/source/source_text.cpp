#include "source/source_text.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

SourceText::SourceText(SourceId id, std::string name, std::string bytes, bool marked)
    : id_(id), name_(std::move(name)), bytes_(std::move(bytes)), marked_(marked) {
  line_starts_.push_back(0);
  for (std::uint32_t i = 0; i < bytes_.size(); ++i)
    if (bytes_[i] == '\n')
      line_starts_.push_back(i + 1);
}

std::string_view SourceText::text(Span span) const {
  const std::size_t begin = std::min<std::size_t>(span.begin, bytes_.size());
  const std::size_t end = std::min<std::size_t>(std::max(span.begin, span.end), bytes_.size());
  return std::string_view(bytes_).substr(begin, end - begin);
}

Position SourceText::position(std::uint32_t offset) const {
  const auto after = std::upper_bound(line_starts_.begin(), line_starts_.end(), offset);
  const auto line = static_cast<std::uint32_t>(after - line_starts_.begin());
  Position result{line, 1};
  const std::size_t end = std::min<std::size_t>(offset, bytes_.size());
  for (std::size_t i = line_starts_[line - 1]; i < end; ++i)
    if ((static_cast<unsigned char>(bytes_[i]) & 0xC0) != 0x80) // continuation bytes are not code points
      ++result.column;
  return result;
}

std::uint32_t SourceText::line_start(std::uint32_t number) const {
  if (number == 0 || number > line_starts_.size())
    return static_cast<std::uint32_t>(bytes_.size());
  return line_starts_[number - 1];
}

std::string_view SourceText::line(std::uint32_t number) const {
  if (number == 0 || number > line_starts_.size())
    return {};
  const std::size_t begin = line_starts_[number - 1];
  std::size_t end = number < line_starts_.size() ? line_starts_[number] : bytes_.size();
  while (end > begin && (bytes_[end - 1] == '\n' || bytes_[end - 1] == '\r'))
    --end;
  return std::string_view(bytes_).substr(begin, end - begin);
}

} // namespace sheerpole
