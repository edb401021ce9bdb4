#include "backend/drawing/svg_writer.hpp"

#include "backend/drawing/label_text.hpp"
#include "base/code_point.hpp"
#include "units/format_length.hpp"

#include <fmt/format.h>
#include <pugixml.hpp>

#include <cmath>

namespace sheerpole {

namespace {

std::string number(double value) {
  return format_fixed(value, 3);
}

std::string grey(double value) {
  const int level = static_cast<int>(std::lround(value * 255.0));
  return fmt::format("#{0:02x}{0:02x}{0:02x}", level);
}

/// Characters that XML 1.0 forbids (section 2.2) become U+FFFD.
std::string xml_text(std::string_view text) {
  std::string allowed;
  while (!text.empty()) {
    const CodePoint next = first_code_point(text);
    const char32_t c = next.value;
    const bool forbidden = (c < 0x20 && c != '\t' && c != '\n') || (c >= 0xd800 && c <= 0xdfff) ||
                           c == 0xfffe || c == 0xffff || c == 0xfffd || c > 0x10ffff;
    if (forbidden)
      allowed += "\xef\xbf\xbd";
    else
      allowed += text.substr(0, next.bytes);
    text.remove_prefix(next.bytes);
  }
  return allowed;
}

class SvgBuilder {
public:
  explicit SvgBuilder(pugi::xml_node parent, std::string_view prefix = "", bool with_links = false)
      : parent_(parent), prefix_(prefix), with_links_(with_links) {}

  void operator()(const LineShape& line) const {
    pugi::xml_node node = element("line", line.id);
    set(node, "x1", number(line.from.x));
    set(node, "y1", number(line.from.y));
    set(node, "x2", number(line.to.x));
    set(node, "y2", number(line.to.y));
    style(node, line.style);
  }

  void operator()(const PolylineShape& polyline) const {
    pugi::xml_node node = element("polyline", polyline.id);
    set(node, "points", points(polyline.points));
    style(node, polyline.style);
  }

  void operator()(const PolygonShape& polygon) const {
    pugi::xml_node node = element("polygon", polygon.id);
    set(node, "points", points(polygon.points));
    style(node, polygon.style);
  }

  void operator()(const CircleShape& circle) const {
    pugi::xml_node node = element("circle", circle.id);
    set(node, "cx", number(circle.centre.x));
    set(node, "cy", number(circle.centre.y));
    set(node, "r", number(circle.radius));
    style(node, circle.style);
  }

  void operator()(const RectangleShape& rectangle) const {
    pugi::xml_node node = element("rect", rectangle.id);
    set(node, "x", number(rectangle.box.left));
    set(node, "y", number(rectangle.box.top));
    set(node, "width", number(rectangle.box.width()));
    set(node, "height", number(rectangle.box.height()));
    style(node, rectangle.style);
  }

  void operator()(const TextShape& text) const {
    pugi::xml_node node = element("text", text.id);
    set(node, "x", number(text.at.x));
    set(node, "y", number(text.at.y));
    set(node, "font-size", number(text.size));
    if (text.fixed_pitch)
      set(node, "font-family", "'Liberation Mono', monospace");
    if (text.bold)
      set(node, "font-weight", "bold");
    if (text.anchor != TextAnchor::start)
      set(node, "text-anchor", text.anchor == TextAnchor::middle ? "middle" : "end");
    if (!text.text.empty()) {
      set(node, "textLength", number(set_width(text)));
      set(node, "lengthAdjust", "spacingAndGlyphs");
    }
    node.append_child(pugi::node_pcdata).set_value(xml_text(text.text).c_str());
  }

  void operator()(const ShapeGroup& group) const {
    const bool follows = with_links_ && !group.link.empty();
    pugi::xml_node node = element(follows ? "a" : "g", group.id);
    if (follows)
      set(node, "href", group.link);
    words(node, group.title, group.description);
    for (const DrawnNode& child : group.children)
      std::visit(SvgBuilder(node, prefix_, with_links_), child.content);
  }

  static void words(pugi::xml_node node, const std::string& title, const std::string& description) {
    if (!title.empty())
      node.append_child("title").append_child(pugi::node_pcdata).set_value(xml_text(title).c_str());
    if (!description.empty())
      node.append_child("desc").append_child(pugi::node_pcdata).set_value(xml_text(description).c_str());
  }

  static void set(pugi::xml_node node, const char* name, const std::string& value) {
    node.append_attribute(name).set_value(value.c_str());
  }

private:
  pugi::xml_node parent_;
  std::string_view prefix_; ///< of every id
  bool with_links_ = false;

  pugi::xml_node element(const char* name, const std::string& id) const {
    pugi::xml_node parent = parent_;
    pugi::xml_node node = parent.append_child(name);
    if (!id.empty())
      set(node, "id", std::string(prefix_) + id);
    return node;
  }

  static std::string points(const std::vector<PaperPoint>& points) {
    std::string list;
    for (const PaperPoint& point : points) {
      if (!list.empty())
        list += ' ';
      list += number(point.x) + "," + number(point.y);
    }
    return list;
  }

  static void style(pugi::xml_node node, const ShapeStyle& style) {
    set(node, "fill", style.fill_grey ? grey(*style.fill_grey) : "none");
    if (style.stroke_width <= 0.0)
      return;
    set(node, "stroke", grey(style.stroke_grey));
    set(node, "stroke-width", number(style.stroke_width));
    if (style.dashes.empty())
      return;
    std::string list;
    for (const double dash : style.dashes) {
      if (!list.empty())
        list += ' ';
      list += number(dash);
    }
    set(node, "stroke-dasharray", list);
  }
};

struct StringWriter : pugi::xml_writer {
  std::string text;
  void write(const void* data, std::size_t size) override {
    text.append(static_cast<const char*>(data), size);
  }
};

pugi::xml_node add_svg(pugi::xml_node parent, const Drawing& drawing) {
  pugi::xml_node svg = parent.append_child("svg");
  SvgBuilder::set(svg, "xmlns", "http://www.w3.org/2000/svg");
  SvgBuilder::set(svg, "version", "1.1");
  SvgBuilder::set(svg, "width", number(drawing.width) + "mm");
  SvgBuilder::set(svg, "height", number(drawing.height) + "mm");
  SvgBuilder::set(svg, "viewBox", "0 0 " + number(drawing.width) + " " + number(drawing.height));
  // The metrics by which texts are measured are those of this face.
  SvgBuilder::set(svg, "font-family", "'Liberation Sans', sans-serif");
  SvgBuilder::set(svg, "stroke-linejoin", "round");
  return svg;
}

std::string text_of(const pugi::xml_document& document) {
  StringWriter writer;
  document.save(writer, "  ", pugi::format_indent | pugi::format_no_declaration, pugi::encoding_utf8);
  return std::move(writer.text);
}

} // namespace

std::string element_id(std::string_view name) {
  constexpr std::string_view digits = "0123456789abcdef";
  std::string id;
  for (const char c : name) {
    const bool plain =
        (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '.' || c == '-';
    const auto byte = static_cast<unsigned char>(c);
    if (plain)
      id += c;
    else if (c == '_')
      id += "__";
    else
      (id += '_') += {digits[byte >> 4], digits[byte & 0x0fU]};
  }
  return id;
}

std::string write_svg(const Drawing& drawing) {
  pugi::xml_document document;
  pugi::xml_node declaration = document.append_child(pugi::node_declaration);
  declaration.append_attribute("version").set_value("1.0");
  declaration.append_attribute("encoding").set_value("UTF-8");
  document.append_child(pugi::node_doctype)
      .set_value(
          "svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" \"http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd\"");
  pugi::xml_node svg = add_svg(document, drawing);
  SvgBuilder::words(svg, drawing.title, drawing.description);

  pugi::xml_node paper = svg.append_child("rect");
  SvgBuilder::set(paper, "x", number(0));
  SvgBuilder::set(paper, "y", number(0));
  SvgBuilder::set(paper, "width", number(drawing.width));
  SvgBuilder::set(paper, "height", number(drawing.height));
  SvgBuilder::set(paper, "fill", grey(1.0));
  std::visit(SvgBuilder(svg), DrawnNode{drawing.content}.content);
  return text_of(document);
}

std::string write_svg_element(const Drawing& drawing, const std::string& prefix) {
  pugi::xml_document document;
  pugi::xml_node svg = add_svg(document, drawing);
  SvgBuilder::words(svg, drawing.title, drawing.description);
  std::visit(SvgBuilder(svg, prefix, true), DrawnNode{drawing.content}.content);
  return text_of(document);
}

} // namespace sheerpole
