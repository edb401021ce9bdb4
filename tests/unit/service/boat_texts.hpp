#pragma once

#include "service/open_boat.hpp"

#include <gtest/gtest.h>

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole::test {

/// Texts in memory, and the boat `boat.rig` among them.
class BoatTexts {
public:
  BoatTexts() = default;
  explicit BoatTexts(std::string text) { put("boat.rig", std::move(text)); }

  void put(const std::string& path, std::string text) { texts.put(path, std::move(text)); }
  service::OpenBoat read() { return service::read_boat("boat.rig", texts); }

  service::Texts texts;
};

/// Where `|` stands in a text, and the text without it.
struct Marked {
  std::string text;
  std::uint32_t offset = 0;
};

inline Marked marked(std::string text) {
  const std::size_t at = text.find('|');
  if (at == std::string::npos) {
    ADD_FAILURE() << "no | in " << text;
    return {std::move(text), 0};
  }
  text.erase(at, 1);
  return {std::move(text), static_cast<std::uint32_t>(at)};
}

/// A line that can be read and rests on two parts.
inline const std::string small_boat = R"(language 1

points {
  cap-tang "Cap tang": (0.0, 0.1, 10.0) m mirrored drawn
  plate-a "Plate": (0.0, 1.4, 1.0) m mirrored drawn
}

rope hmpe-9 "HMPE" {
  construction: "12-strand HMPE"
  size: "9 mm"
  diameter: 9 mm
}

toggle toggle-12 "Toggle" {
  length: 82 mm
}

turnbuckle screw-12 {
  shortest: 300 mm
  longest: 400 mm
}

stay cap-shroud "Cap shroud" {
  sides: port, starboard
  path: cap-tang > plate-a
  line: hmpe-9
  stack {
    toggle-12
    line
    screw-12 (length: 350 mm)
    toggle-12
  }
}
)";

} // namespace sheerpole::test
