#include "service/text_places.hpp"

#include <algorithm>

namespace sheerpole::service {

namespace {

struct Sign {
  std::uint32_t bytes;
  std::uint32_t units;
};

/// By its first byte; one that is no UTF-8 is one sign.
Sign sign_at(std::string_view bytes, std::size_t at) {
  const auto lead = static_cast<unsigned char>(bytes[at]);
  std::uint32_t length = 1;
  if (lead >= 0xF0)
    length = 4;
  else if (lead >= 0xE0)
    length = 3;
  else if (lead >= 0xC0)
    length = 2;
  length = std::min<std::uint32_t>(length, static_cast<std::uint32_t>(bytes.size() - at));
  return {length, length == 4 ? 2U : 1U};
}

/// Bytes of the line end that begins here; 0 when none does.
std::size_t line_end_at(std::string_view bytes, std::size_t at) {
  if (bytes[at] == '\n')
    return 1;
  if (bytes[at] == '\r')
    return at + 1 < bytes.size() && bytes[at + 1] == '\n' ? 2 : 1;
  return 0;
}

} // namespace

TextPlaces::TextPlaces(std::string_view bytes) : bytes_(bytes) {
  lines_.push_back({0, 0});
  std::uint32_t unit = 0;
  for (std::size_t at = 0; at < bytes.size();) {
    if (const std::size_t end = line_end_at(bytes, at)) {
      at += end;
      unit += static_cast<std::uint32_t>(end);
      lines_.push_back({static_cast<std::uint32_t>(at), unit});
      continue;
    }
    const Sign sign = sign_at(bytes, at);
    at += sign.bytes;
    unit += sign.units;
  }
}

template <class There>
TextPlace TextPlaces::walk(std::size_t line, const There& there) const {
  const std::size_t number = std::min(line, lines_.size() - 1);
  TextPlace place{static_cast<std::uint32_t>(number), 0, lines_[number].byte, lines_[number].unit};
  std::uint32_t signs = 0;
  while (place.byte < bytes_.size() && line_end_at(bytes_, place.byte) == 0) {
    const Sign sign = sign_at(bytes_, place.byte);
    TextPlace next = place;
    next.byte += sign.bytes;
    next.unit += sign.units;
    next.character += sign.units;
    if (!there(next, ++signs))
      break;
    place = next;
  }
  return place;
}

TextPlace TextPlaces::at_byte(std::size_t byte) const {
  const auto after =
      std::upper_bound(lines_.begin(), lines_.end(), byte,
                       [](std::size_t wanted, const Line& line) { return wanted < line.byte; });
  return walk(static_cast<std::size_t>(after - lines_.begin()) - 1,
              [&](const TextPlace& next, std::uint32_t) { return next.byte <= byte; });
}

TextPlace TextPlaces::at_unit(std::size_t unit) const {
  const auto after =
      std::upper_bound(lines_.begin(), lines_.end(), unit,
                       [](std::size_t wanted, const Line& line) { return wanted < line.unit; });
  return walk(static_cast<std::size_t>(after - lines_.begin()) - 1,
              [&](const TextPlace& next, std::uint32_t) { return next.unit <= unit; });
}

TextPlace TextPlaces::at_line(std::size_t line, std::size_t character, Counted counted) const {
  // Beyond the last line is the end of the text.
  if (line >= lines_.size())
    return at_byte(bytes_.size());
  const std::uint32_t first = lines_[line].byte;
  return walk(line, [&](const TextPlace& next, std::uint32_t signs) {
    switch (counted) {
    case Counted::utf8:
      return next.byte - first <= character;
    case Counted::utf32:
      return signs <= character;
    case Counted::utf16:
      break;
    }
    return next.character <= character;
  });
}

std::uint32_t TextPlaces::character(const TextPlace& place, Counted counted) const {
  const std::uint32_t first = lines_[place.line].byte;
  if (counted == Counted::utf16)
    return place.character;
  if (counted == Counted::utf8)
    return place.byte - first;
  std::uint32_t signs = 0;
  for (std::uint32_t at = first; at < place.byte; ++signs)
    at += sign_at(bytes_, at).bytes;
  return signs;
}

} // namespace sheerpole::service
