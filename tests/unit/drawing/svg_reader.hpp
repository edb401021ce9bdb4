#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

namespace sheerpole {

/// What a reader of an SVG file sees, read back with an XML parser and nothing of the writer.
struct ReadSvg {
  struct Text {
    std::string words;
    double left, top, right, bottom; ///< from x, y, font-size, text-anchor and textLength
    double size;
  };
  struct Circle {
    double x, y;
  };
  double width = 0.0;
  double height = 0.0;
  std::vector<Text> texts;
  std::map<std::string, Circle> circles;           ///< by id
  std::map<std::string, std::string> descriptions; ///< of groups with an id
  std::vector<std::string> ids;
  std::set<std::string> elements;
  std::set<std::string> colours;
};

/// Throws when the text is no well-formed XML.
ReadSvg read_svg(const std::string& svg);

/// Pairs of texts that share room on the sheet, as "one / other".
std::vector<std::string> overlapping(const ReadSvg& svg);

} // namespace sheerpole
