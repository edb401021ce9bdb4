#include "driver/pdf/text_painter.hpp"

#include <pugixml.hpp>

#include <array>
#include <charconv>
#include <cmath>
#include <numbers>
#include <vector>

namespace sheerpole {

namespace {

/// Reads numbers that stand apart by blanks or commas.
class Numbers {
public:
  explicit Numbers(std::string_view text) : at_(text.data()), end_(text.data() + text.size()) {}
  std::optional<double> next() {
    while (at_ != end_ && (*at_ == ' ' || *at_ == ','))
      ++at_;
    double value = 0.0;
    const auto [next, error] = std::from_chars(at_, end_, value);
    if (error != std::errc{})
      return std::nullopt;
    at_ = next;
    return value;
  }

private:
  const char* at_;
  const char* end_;
};

double number(const pugi::xml_node& node, const char* name) {
  return Numbers(node.attribute(name).value()).next().value_or(0.0);
}

/// "#rrggbb" as parts of one; nothing for "none" and for what is not stated.
std::optional<std::array<double, 3>> colour(const pugi::xml_node& node, const char* name) {
  const std::string_view text = node.attribute(name).value();
  if (text.size() != 7 || text.front() != '#')
    return std::nullopt;
  std::array<double, 3> parts{};
  for (std::size_t i = 0; i < parts.size(); ++i) {
    unsigned value = 0;
    const char* from = text.data() + 1 + 2 * i;
    std::from_chars(from, from + 2, value, 16);
    parts[i] = value / 255.0;
  }
  return parts;
}

/// Fills and strokes the path that lies ready, as the node's attributes say.
void paint_path(cairo_t* context, const pugi::xml_node& node) {
  if (const auto fill = colour(node, "fill")) {
    cairo_set_source_rgb(context, (*fill)[0], (*fill)[1], (*fill)[2]);
    cairo_fill_preserve(context);
  }
  if (const auto stroke = colour(node, "stroke")) {
    cairo_set_source_rgb(context, (*stroke)[0], (*stroke)[1], (*stroke)[2]);
    cairo_set_line_width(context, number(node, "stroke-width"));
    std::vector<double> dashes;
    Numbers list(node.attribute("stroke-dasharray").value());
    while (const auto dash = list.next())
      dashes.push_back(*dash);
    cairo_set_dash(context, dashes.data(), static_cast<int>(dashes.size()), 0.0);
    cairo_stroke_preserve(context);
  }
  cairo_new_path(context);
}

void paint_points(cairo_t* context, const pugi::xml_node& node, bool closed) {
  Numbers list(node.attribute("points").value());
  while (const auto x = list.next()) {
    const auto y = list.next();
    if (!y)
      break;
    cairo_line_to(context, *x, *y);
  }
  if (closed)
    cairo_close_path(context);
  paint_path(context, node);
}

/// The number behind these words in a text, and in `rest` what stands behind it.
std::optional<double> number_behind(std::string_view& rest, std::string_view words) {
  if (!rest.starts_with(words))
    return std::nullopt;
  rest.remove_prefix(words.size());
  double value = 0.0;
  const auto [next, error] = std::from_chars(rest.data(), rest.data() + rest.size(), value);
  if (error != std::errc{})
    return std::nullopt;
  rest.remove_prefix(static_cast<std::size_t>(next - rest.data()));
  return value;
}

/// The squares of a code, as the drawing writes them: `M3 0h7v1h-7z` for each run, on a grid that is moved
/// and scaled. False for any other path.
bool paint_modules(cairo_t* context, const pugi::xml_node& node) {
  std::string_view place = node.attribute("transform").value();
  const auto x = number_behind(place, "translate(");
  const auto y = number_behind(place, " ");
  const auto module = number_behind(place, ") scale(");
  if (!x || !y || !module || place != ")")
    return false;
  std::string_view runs = node.attribute("d").value();
  while (!runs.empty()) {
    const auto column = number_behind(runs, "M");
    const auto row = number_behind(runs, " ");
    const auto wide = number_behind(runs, "h");
    if (!column || !row || !wide || !number_behind(runs, "v1h-") || !runs.starts_with("z"))
      return false;
    runs.remove_prefix(1);
    cairo_rectangle(context, *x + *module * *column, *y + *module * *row, *module * *wide, *module);
  }
  paint_path(context, node);
  return true;
}

/// The face that a text names first, as in 'Liberation Mono', monospace; the first of all where it names
/// none; nothing where it names one that is not there.
std::optional<std::size_t> face_of(const pugi::xml_node& node, const TextPainter& texts) {
  std::string_view names = node.attribute("font-family").value();
  if (names.empty())
    return 0;
  names = names.substr(0, names.find(','));
  while (!names.empty() && (names.front() == '\'' || names.front() == ' '))
    names.remove_prefix(1);
  while (!names.empty() && (names.back() == '\'' || names.back() == ' '))
    names.remove_suffix(1);
  return texts.face(names);
}

using Fault = std::optional<std::string>; ///< what went wrong, or nothing

/// The words of a text, and those of its spans, each in its size and moved by all that moved before it.
std::vector<PaintedRun> runs_of(const pugi::xml_node& text) {
  std::vector<PaintedRun> runs;
  const double size = number(text, "font-size");
  double moved = 0.0;
  for (const pugi::xml_node& child : text.children()) {
    if (child.type() == pugi::node_pcdata) {
      runs.push_back({child.value(), size, moved});
      continue;
    }
    moved += number(child, "dy");
    runs.push_back({child.child_value(),
                    child.attribute("font-size").empty() ? size : number(child, "font-size"), moved});
  }
  return runs;
}

Fault paint_text(cairo_t* context, const pugi::xml_node& node, TextPainter& texts) {
  const auto face = face_of(node, texts);
  if (!face)
    return "a page has a text in " + std::string(node.attribute("font-family").value()) +
           ", which is none of its faces";
  const std::string_view anchor = node.attribute("text-anchor").value();
  const auto ink = colour(node, "fill");
  const auto [red, green, blue] = ink.value_or(std::array{0.0, 0.0, 0.0});
  cairo_set_source_rgb(context, red, green, blue);
  return texts.paint(context, {.runs = runs_of(node),
                               .x = number(node, "x"),
                               .y = number(node, "y"),
                               .size = number(node, "font-size"),
                               .bold = std::string_view(node.attribute("font-weight").value()) == "bold",
                               .face = *face,
                               .width = number(node, "textLength"),
                               .before = anchor == "middle" ? 0.5
                                         : anchor == "end"  ? 1.0
                                                            : 0.0});
}

Fault paint_node(cairo_t* context, const pugi::xml_node& node, TextPainter& texts) {
  const std::string_view name = node.name();
  if (name == "g") {
    for (const pugi::xml_node& child : node.children())
      if (auto fault = paint_node(context, child, texts))
        return fault;
  } else if (name == "line") {
    cairo_move_to(context, number(node, "x1"), number(node, "y1"));
    cairo_line_to(context, number(node, "x2"), number(node, "y2"));
    paint_path(context, node);
  } else if (name == "rect") {
    cairo_rectangle(context, number(node, "x"), number(node, "y"), number(node, "width"),
                    number(node, "height"));
    paint_path(context, node);
  } else if (name == "circle") {
    cairo_new_sub_path(context);
    cairo_arc(context, number(node, "cx"), number(node, "cy"), number(node, "r"), 0.0,
              2.0 * std::numbers::pi);
    cairo_close_path(context);
    paint_path(context, node);
  } else if (name == "path") {
    if (!paint_modules(context, node))
      return "a page has a path that is no code";
  } else if (name == "polyline" || name == "polygon") {
    paint_points(context, node, name == "polygon");
  } else if (name == "text") {
    return paint_text(context, node, texts);
  } else if (name != "title" && name != "desc") { // those are words for whoever cannot see the drawing
    return "a page holds a `" + std::string(name) + "`, which cannot be drawn";
  }
  return std::nullopt;
}

} // namespace

std::optional<std::string> paint_page(cairo_t* context, std::string_view svg, TextPainter& texts) {
  pugi::xml_document document;
  const pugi::xml_parse_result read = document.load_buffer(
      svg.data(), svg.size(), pugi::parse_default | pugi::parse_ws_pcdata_single, pugi::encoding_utf8);
  const pugi::xml_node page = document.child("svg");
  if (!read || !page)
    return "a page is not SVG";
  cairo_set_line_join(context, CAIRO_LINE_JOIN_ROUND);
  for (const pugi::xml_node& node : page.children())
    if (auto fault = paint_node(context, node, texts))
      return fault;
  return std::nullopt;
}

} // namespace sheerpole
