#include "driver/editor/message_stream.hpp"

#include <algorithm>
#include <charconv>

namespace sheerpole::editor {

namespace {

/// A line of a header is longer than this only when it is none.
constexpr std::size_t longest_header_line = 4096;

std::string_view trimmed(std::string_view text) {
  const std::size_t begin = text.find_first_not_of(" \t\r");
  if (begin == std::string_view::npos)
    return {};
  return text.substr(begin, text.find_last_not_of(" \t\r") - begin + 1);
}

bool is_word_in_any_case(std::string_view text, std::string_view small) {
  return std::equal(text.begin(), text.end(), small.begin(), small.end(), [](char a, char b) {
    return (a >= 'A' && a <= 'Z' ? static_cast<char>(a - 'A' + 'a') : a) == b;
  });
}

} // namespace

bool MessageStream::take_field(std::string_view line) {
  const std::size_t colon = line.find(':');
  if (colon == std::string_view::npos)
    return false;
  const std::string_view name = trimmed(line.substr(0, colon));
  const std::string_view value = trimmed(line.substr(colon + 1));
  if (is_word_in_any_case(name, "content-type"))
    return true;
  if (!is_word_in_any_case(name, "content-length"))
    return false;
  std::size_t length = 0;
  const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), length);
  if (error != std::errc() || end != value.data() + value.size())
    return false;
  length_ = length;
  return true;
}

std::optional<Arrived> MessageStream::header_line() {
  while (true) {
    const std::size_t end = waiting_.find('\n');
    if (end == std::string::npos) {
      if (waiting_.size() > longest_header_line) {
        waiting_.clear();
        return Arrived{{}, "no header"};
      }
      return std::nullopt;
    }
    const std::string line(trimmed(std::string_view(waiting_).substr(0, end)));
    waiting_.erase(0, end + 1);
    if (line.empty()) {
      const bool began = in_header_;
      in_header_ = false;
      if (!length_ && began)
        return Arrived{{}, "a header without Content-Length"};
      if (!length_)
        continue; // an empty line between two messages
      if (*length_ > largest_message_bytes) {
        passing_over_ = *length_;
        length_.reset();
        return Arrived{{}, "a message that is too large"};
      }
      in_content_ = true;
      return std::nullopt;
    }
    if (!take_field(line)) {
      return Arrived{{}, "a line of a header that is none"};
    }
    in_header_ = true;
  }
}

std::optional<Arrived> MessageStream::next() {
  if (passing_over_ > 0) {
    const std::size_t over = std::min(passing_over_, waiting_.size());
    waiting_.erase(0, over);
    passing_over_ -= over;
    if (passing_over_ > 0)
      return std::nullopt;
  }
  if (!in_content_)
    if (auto fault = header_line())
      return fault;
  if (!in_content_ || waiting_.size() < *length_)
    return std::nullopt;
  Arrived arrived{waiting_.substr(0, *length_), {}};
  waiting_.erase(0, *length_);
  length_.reset();
  in_content_ = false;
  return arrived;
}

std::string framed(std::string_view content) {
  return "Content-Length: " + std::to_string(content.size()) + "\r\n\r\n" + std::string(content);
}

} // namespace sheerpole::editor
