#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace sheerpole::editor {

/// Largest message that is taken; what is larger is passed over.
inline constexpr std::size_t largest_message_bytes = 64 * 1024 * 1024;

/// What came: the content of a message, or what was wrong with the bytes that came instead.
struct Arrived {
  std::string content;
  std::string fault; ///< empty: `content` is a message
};

/// Takes the bytes of a connection apart into messages: `Content-Length: N`, other header fields, an empty
/// line, N bytes (Language Server Protocol 3.17, base protocol). Header fields are told in any case and
/// with any blanks, and lines may end without a carriage return. What is no header is passed over up to the
/// next line, so that one bad message does not take the others with it.
class MessageStream {
public:
  void feed(std::string_view bytes) { waiting_.append(bytes); }
  /// The next message or fault; nothing until more bytes are there.
  std::optional<Arrived> next();
  /// Whether all that came was taken.
  bool empty() const { return waiting_.empty(); }

private:
  std::optional<Arrived> header_line();
  /// False when it is a header field that is not known or not understood.
  bool take_field(std::string_view line);

  std::string waiting_;
  std::optional<std::size_t> length_; ///< stated by the header that is being read
  bool in_header_ = false;            ///< a field has come
  bool in_content_ = false;
  std::size_t passing_over_ = 0; ///< bytes of a message that is too large
};

/// The message as it is sent.
std::string framed(std::string_view content);

} // namespace sheerpole::editor
