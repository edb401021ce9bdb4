#include "driver/pdf/page_painter.hpp"

#include "base/byte_text.hpp"
#include "source/photograph.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <numbers>
#include <utility>
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

/// Elements of the structure that a group may be, and how deep the headings are.
constexpr std::array<std::string_view, 8> known_tags{"H1", "H2", "H3", "P", "Table", "TR", "TH", "TD"};

int level_of_heading(std::string_view tag) {
  return tag == "H2" ? 1 : tag == "H3" ? 2 : 0;
}

/// As a value in the attributes of a tag: between quotes.
std::string tag_value(std::string_view text) {
  std::string result = "'";
  for (const char c : text) {
    if (c == '\'' || c == '\\')
      result += '\\';
    result += c;
  }
  return result + "'";
}

void collect_places(const pugi::xml_node& node, std::set<std::string>& places) {
  for (const pugi::xml_node& child : node.children("g")) {
    if (!child.attribute("class").empty() && !child.attribute("id").empty())
      places.insert(child.attribute("id").value());
    collect_places(child, places);
  }
}

bool any_tag(const pugi::xml_node& node) {
  for (const pugi::xml_node& child : node.children())
    if (!child.attribute("class").empty() || any_tag(child))
      return true;
  return false;
}

void collect_words(const pugi::xml_node& node, const char* of, std::string_view between,
                   std::string& words) {
  for (const pugi::xml_node& child : node.children()) {
    if (std::string_view(child.name()) == of) {
      std::string text;
      for (const pugi::xml_node& part : child.children())
        text += part.type() == pugi::node_element ? part.child_value() : part.value();
      if (!text.empty())
        words += (words.empty() ? "" : std::string(between)) + text;
      continue;
    }
    collect_words(child, of, between, words);
  }
}

/// Bytes that are read from the front.
struct Unread {
  std::string_view rest;
  static cairo_status_t next(void* closure, unsigned char* data, unsigned int length) {
    auto& self = *static_cast<Unread*>(closure);
    if (self.rest.size() < length)
      return CAIRO_STATUS_READ_ERROR;
    std::copy_n(self.rest.begin(), length, data);
    self.rest.remove_prefix(length);
    return CAIRO_STATUS_SUCCESS;
  }
};

/// A JPEG goes into the PDF as it is, so its points need not be there; a PNG is read. What cannot be read
/// is none.
cairo_surface_t* picture_of(std::string_view href) {
  constexpr std::string_view jpeg = "data:image/jpeg;base64,";
  constexpr std::string_view png = "data:image/png;base64,";
  const bool is_jpeg = href.starts_with(jpeg);
  if (!is_jpeg && !href.starts_with(png))
    return nullptr;
  const auto bytes = from_base64(href.substr(is_jpeg ? jpeg.size() : png.size()));
  const auto head = bytes ? picture_head(*bytes) : std::nullopt;
  if (!head)
    return nullptr;
  cairo_surface_t* surface = nullptr;
  if (is_jpeg) {
    surface = cairo_image_surface_create(CAIRO_FORMAT_RGB24, head->width, head->height);
    auto* kept = new std::string(*bytes);
    const cairo_status_t status = cairo_surface_set_mime_data(
        surface, CAIRO_MIME_TYPE_JPEG, reinterpret_cast<const unsigned char*>(kept->data()), kept->size(),
        [](void* data) { delete static_cast<std::string*>(data); }, kept);
    if (status != CAIRO_STATUS_SUCCESS)
      delete kept;
  } else {
    Unread unread{*bytes};
    surface = cairo_image_surface_create_from_png_stream(Unread::next, &unread);
  }
  if (cairo_surface_status(surface) == CAIRO_STATUS_SUCCESS)
    return surface;
  cairo_surface_destroy(surface);
  return nullptr;
}

/// As large as its box; a crossed box where it cannot be read, so that nobody takes it for left out.
void paint_picture(cairo_t* context, const pugi::xml_node& node) {
  const double x = number(node, "x");
  const double y = number(node, "y");
  const double width = number(node, "width");
  const double height = number(node, "height");
  cairo_surface_t* picture = picture_of(node.attribute("href").value());
  if (picture == nullptr) {
    cairo_set_source_rgb(context, 0.0, 0.0, 0.0);
    cairo_set_line_width(context, 0.35);
    cairo_set_dash(context, nullptr, 0, 0.0);
    cairo_rectangle(context, x, y, width, height);
    cairo_move_to(context, x, y);
    cairo_line_to(context, x + width, y + height);
    cairo_move_to(context, x + width, y);
    cairo_line_to(context, x, y + height);
    cairo_stroke(context);
    return;
  }
  cairo_save(context);
  cairo_translate(context, x, y);
  cairo_scale(context, width / cairo_image_surface_get_width(picture),
              height / cairo_image_surface_get_height(picture));
  cairo_set_source_surface(context, picture, 0.0, 0.0);
  cairo_paint(context);
  cairo_restore(context);
  cairo_surface_destroy(picture);
}

/// "Bench card of forestay" of "Bench card of forestay, page 1 of 2".
std::string without_number(std::string title) {
  if (const std::size_t at = title.rfind(", page "); at != std::string::npos)
    title.erase(at);
  return title;
}

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

} // namespace

PagePainter::Fault PagePainter::take(std::string_view svg) {
  auto page = std::make_unique<pugi::xml_document>();
  const pugi::xml_parse_result read = page->load_buffer(
      svg.data(), svg.size(), pugi::parse_default | pugi::parse_ws_pcdata_single, pugi::encoding_utf8);
  if (!read || !page->child("svg"))
    return "a page is not SVG";
  collect_places(page->child("svg"), places_);
  pages_.push_back(std::move(page));
  return std::nullopt;
}

PagePainter::Fault PagePainter::paint(cairo_t* context, std::size_t number) {
  const pugi::xml_node page = pages_[number - 1]->child("svg");
  page_ = number;
  std::string title = without_number(page.child("title").child_value());
  if (!title.empty() && (titles_.empty() || titles_.back().words != title))
    titles_.push_back({0, std::move(title), number, 0.0});
  cairo_set_line_join(context, CAIRO_LINE_JOIN_ROUND);
  const bool one_figure = !any_tag(page);
  if (one_figure) {
    figures_.push_back(words_of_figure(page));
    cairo_tag_begin(context, "Figure", nullptr);
    in_figure_ = true;
  }
  Fault fault = children(context, page);
  if (one_figure) {
    cairo_tag_end(context, "Figure");
    in_figure_ = false;
  }
  return fault;
}

std::vector<Bookmark> PagePainter::bookmarks() const {
  // A document of one title has it already; its headings are its bookmarks.
  std::vector<Bookmark> all = titles_.size() > 1 ? titles_ : std::vector<Bookmark>{};
  for (Bookmark heading : headings_) {
    if (titles_.size() < 2)
      --heading.level;
    all.push_back(std::move(heading));
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const Bookmark& a, const Bookmark& b) { return a.page < b.page; });
  return all;
}

void PagePainter::note_heading(const pugi::xml_node& heading, int level) {
  std::string words;
  collect_words(heading, "text", " ", words);
  pugi::xml_node first = heading.child("text");
  if (!words.empty())
    headings_.push_back({level, std::move(words), page_, number(first, "y") - number(first, "font-size")});
}

/// Its own title and description; else the titles of what is in it; else what the page is.
std::string PagePainter::words_of_figure(const pugi::xml_node& figure) const {
  std::string words = figure.child("title").child_value();
  if (const char* more = figure.child("desc").child_value(); *more != '\0')
    words += (words.empty() ? "" : ". ") + std::string(more);
  if (words.empty())
    collect_words(figure, "title", "; ", words);
  if (words.empty())
    words = std::string("Drawing: ") + pages_[page_ - 1]->child("svg").child("title").child_value();
  constexpr std::size_t most = 600;
  if (words.size() > most) {
    words.resize(most);
    while (!words.empty() && words.back() != ' ')
      words.pop_back();
    words += "...";
  }
  return words;
}

PagePainter::Fault PagePainter::children(cairo_t* context, const pugi::xml_node& parent) {
  for (const pugi::xml_node& child : parent.children())
    if (Fault fault = node(context, child))
      return fault;
  return std::nullopt;
}

/// What the group is in the structure is said round it; within a figure nothing is, its words are one.
PagePainter::Fault PagePainter::group(cairo_t* context, const pugi::xml_node& node) {
  const std::string tag = node.attribute("class").value();
  const std::string id = node.attribute("id").value();
  std::string link = std::string_view(node.name()) == "a" ? node.attribute("href").value() : "";
  if (!link.empty() && link.front() == '#')
    link = places_.contains(link.substr(1)) ? "dest=" + tag_value(link.substr(1)) : std::string();
  else if (!link.empty())
    link = "uri=" + tag_value(link);
  const bool figure = tag == "Figure";
  const bool tagged = !tag.empty() && !in_figure_;
  if (!tag.empty() && !figure && std::find(known_tags.begin(), known_tags.end(), tag) == known_tags.end())
    return "a page has a group that is a `" + tag + "`, which is no element of its structure";
  const bool place = tagged && !id.empty();
  if (place)
    cairo_tag_begin(context, CAIRO_TAG_DEST, ("name=" + tag_value(id)).c_str());
  if (tagged) {
    cairo_tag_begin(context, tag.c_str(), nullptr);
    if (figure)
      figures_.push_back(words_of_figure(node));
    if (const int level = level_of_heading(tag); level > 0)
      note_heading(node, level);
  }
  if (!link.empty())
    cairo_tag_begin(context, CAIRO_TAG_LINK, link.c_str());
  const bool was_in_figure = in_figure_;
  in_figure_ = in_figure_ || (tagged && figure);
  Fault fault = children(context, node);
  in_figure_ = was_in_figure;
  if (!link.empty())
    cairo_tag_end(context, CAIRO_TAG_LINK);
  if (tagged)
    cairo_tag_end(context, tag.c_str());
  if (place)
    cairo_tag_end(context, CAIRO_TAG_DEST);
  return fault;
}

PagePainter::Fault PagePainter::text(cairo_t* context, const pugi::xml_node& node) {
  const auto face = face_of(node, texts_);
  if (!face)
    return "a page has a text in " + std::string(node.attribute("font-family").value()) +
           ", which is none of its faces";
  const std::string_view anchor = node.attribute("text-anchor").value();
  const auto ink = colour(node, "fill");
  const auto [red, green, blue] = ink.value_or(std::array{0.0, 0.0, 0.0});
  cairo_set_source_rgb(context, red, green, blue);
  return texts_.paint(context, {.runs = runs_of(node),
                                .x = number(node, "x"),
                                .y = number(node, "y"),
                                .size = number(node, "font-size"),
                                .bold = std::string_view(node.attribute("font-weight").value()) == "bold",
                                .face = *face,
                                .width = number(node, "textLength"),
                                .before = anchor == "middle" ? 0.5
                                          : anchor == "end"  ? 1.0
                                                             : 0.0,
                                .goes_on = true});
}

PagePainter::Fault PagePainter::node(cairo_t* context, const pugi::xml_node& node) {
  const std::string_view name = node.name();
  if (name == "g" || name == "a")
    return group(context, node);
  if (name == "line") {
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
  } else if (name == "image") {
    paint_picture(context, node);
  } else if (name == "path") {
    if (!paint_modules(context, node))
      return "a page has a path that is no code";
  } else if (name == "polyline" || name == "polygon") {
    paint_points(context, node, name == "polygon");
  } else if (name == "text") {
    return text(context, node);
  } else if (name != "title" && name != "desc") { // those are words for whoever cannot see the drawing
    return "a page holds a `" + std::string(name) + "`, which cannot be drawn";
  }
  return std::nullopt;
}

} // namespace sheerpole
