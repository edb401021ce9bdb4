#pragma once

#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Reads CSV by the grammar of RFC 4180, section 2, and nothing more: CRLF ends a record, a field may stand
/// in double quotes, a double quote in such a field is written twice. Throws on anything else.
inline std::vector<std::vector<std::string>> read_csv(std::string_view text) {
  std::vector<std::vector<std::string>> records;
  std::size_t i = 0;
  while (i < text.size()) {
    std::vector<std::string> record;
    for (bool more = true; more;) {
      std::string field;
      if (i < text.size() && text[i] == '"') {
        ++i;
        while (true) {
          if (i >= text.size())
            throw std::runtime_error("a quoted field that does not end");
          if (text[i] != '"') {
            field += text[i++];
          } else if (i + 1 < text.size() && text[i + 1] == '"') {
            field += '"';
            i += 2;
          } else {
            ++i;
            break;
          }
        }
      } else {
        while (i < text.size() && text[i] != ',' && text[i] != '\r' && text[i] != '\n' && text[i] != '"')
          field += text[i++];
      }
      record.push_back(std::move(field));
      more = i < text.size() && text[i] == ',';
      if (more)
        ++i;
    }
    if (text.substr(i, 2) != "\r\n")
      throw std::runtime_error("a record that does not end with CRLF");
    i += 2;
    records.push_back(std::move(record));
  }
  return records;
}

} // namespace sheerpole
