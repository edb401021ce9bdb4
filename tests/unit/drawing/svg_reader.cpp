#include "unit/drawing/svg_reader.hpp"

#include <pugixml.hpp>

#include <stdexcept>
#include <string_view>

namespace sheerpole {

namespace {

void read(pugi::xml_node node, ReadSvg& svg) {
  const std::string name = node.name();
  svg.elements.insert(name);
  const std::string id = node.attribute("id").value();
  if (!id.empty())
    svg.ids.push_back(id);
  for (const char* colour : {"fill", "stroke"})
    if (pugi::xml_attribute attribute = node.attribute(colour))
      svg.colours.insert(attribute.value());
  if (name == "circle")
    svg.circles[id] = {node.attribute("cx").as_double(), node.attribute("cy").as_double()};
  if (pugi::xml_node description = node.child("desc"); description && !id.empty())
    svg.descriptions[id] = description.child_value();
  if (name == "text") {
    const double size = node.attribute("font-size").as_double();
    const double length = node.attribute("textLength").as_double();
    const std::string anchor = node.attribute("text-anchor").as_string("start");
    const double x = node.attribute("x").as_double();
    const double y = node.attribute("y").as_double();
    const double left = anchor == "start" ? x : anchor == "middle" ? x - length / 2 : x - length;
    // Ascent and descent of usual sans-serif faces, capitals with accents included.
    std::string words;
    for (const pugi::xml_node child : node.children()) // its own, and those of the spans in it
      words += child.type() == pugi::node_element ? child.child_value() : child.value();
    svg.texts.push_back({words, left, y - 0.9 * size, left + length, y + 0.22 * size, size});
  }
  for (pugi::xml_node child : node.children())
    if (child.type() == pugi::node_element && std::string_view(child.name()) != "tspan")
      read(child, svg);
}

} // namespace

ReadSvg read_svg(const std::string& text) {
  pugi::xml_document document;
  if (const pugi::xml_parse_result result = document.load_string(text.c_str()); !result)
    throw std::runtime_error(result.description());
  ReadSvg svg;
  const pugi::xml_node root = document.child("svg");
  svg.width = root.attribute("width").as_double();
  svg.height = root.attribute("height").as_double();
  read(root, svg);
  return svg;
}

std::vector<std::string> overlapping(const ReadSvg& svg) {
  std::vector<std::string> found;
  for (std::size_t i = 0; i < svg.texts.size(); ++i)
    for (std::size_t j = i + 1; j < svg.texts.size(); ++j) {
      const ReadSvg::Text& a = svg.texts[i];
      const ReadSvg::Text& b = svg.texts[j];
      if (a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom)
        found.push_back(a.words + " / " + b.words);
    }
  return found;
}

} // namespace sheerpole
