#include "backend/drawing/svg_writer.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/drawing/markup_buffer.hpp"
#include "backend/drawing/text_runs.hpp"
#include "base/byte_text.hpp"
#include "base/code_point.hpp"
#include "units/format_length.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>
#include <set>
#include <utility>

namespace sheerpole {

namespace {

constexpr int figures = 3;       ///< behind the point
constexpr int scale_figures = 5; // of a hundred modules these make a hundredth of a millimetre

std::string number(double value) {
  return format_fixed(value, figures);
}

bool is_plain_ascii(char c) {
  return c >= 0x20 && c <= 0x7e;
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

/// A character inside an attribute or a text as XML has it.
void add_escaped(MarkupBuffer& out, std::string_view text, bool attribute) {
  std::size_t written = 0; // what needs no escape is written in one go
  const auto put = [&](std::size_t at, std::string_view instead) {
    out.put(text.substr(written, at - written));
    out.put(instead);
    written = at + 1;
  };
  for (std::size_t at = 0; at < text.size(); ++at)
    switch (text[at]) {
    case '&':
      put(at, "&amp;");
      break;
    case '<':
      put(at, "&lt;");
      break;
    case '>':
      put(at, "&gt;");
      break;
    case '"':
      if (attribute)
        put(at, "&quot;");
      break;
    case '\t':
      if (attribute)
        put(at, "&#09;");
      break;
    case '\n':
      if (attribute)
        put(at, "&#10;");
      break;
    default:
      break;
    }
  out.put(text.substr(written));
}

/// The text of an element.
void add_xml_text(MarkupBuffer& out, std::string_view text) {
  // Most texts of a drawing are plain, and need not be looked at by code point.
  if (std::all_of(text.begin(), text.end(), is_plain_ascii))
    add_escaped(out, text, false);
  else
    add_escaped(out, xml_text(text), false);
}

/// Writes forward, element by element: most of a paper is drawn, so no tree of it is kept beside.
class SvgWriter {
public:
  explicit SvgWriter(MarkupBuffer& into, std::string_view prefix = "", bool with_links = false)
      : out(into), prefix_(prefix), with_links_(with_links) {}
  /// For a PDF beside these others.
  SvgWriter(MarkupBuffer& into, const std::set<std::string>& papers)
      : out(into), with_links_(true), papers_(&papers) {}

  MarkupBuffer& out; ///< what is written stands at its end

  void operator()(const LineShape& line) {
    begin("line", line.id);
    set(" x1=\"", line.from.x);
    set(" y1=\"", line.from.y);
    set(" x2=\"", line.to.x);
    set(" y2=\"", line.to.y);
    style(line.style);
    end_empty();
  }

  void operator()(const PolylineShape& polyline) { outline("polyline", polyline); }
  void operator()(const PolygonShape& polygon) { outline("polygon", polygon); }

  void operator()(const CircleShape& circle) {
    begin("circle", circle.id);
    set(" cx=\"", circle.centre.x);
    set(" cy=\"", circle.centre.y);
    set(" r=\"", circle.radius);
    style(circle.style);
    end_empty();
  }

  void operator()(const RectangleShape& rectangle) {
    begin("rect", rectangle.id);
    set(" x=\"", rectangle.box.left);
    set(" y=\"", rectangle.box.top);
    set(" width=\"", rectangle.box.width());
    set(" height=\"", rectangle.box.height());
    style(rectangle.style);
    end_empty();
  }

  /// Runs of black squares, a unit each, moved and scaled to their place: whole numbers are short.
  void operator()(const ModulesShape& modules) {
    begin("path", {});
    out.put(" transform=\"translate(");
    out.put_fixed(modules.corner.x, figures);
    out.put(' ');
    out.put_fixed(modules.corner.y, figures);
    out.put(") scale(");
    out.put_fixed(modules.module, scale_figures);
    out.put(")\" d=\"");
    for (int row = 0; row < modules.across; ++row)
      for (int from = 0; from < modules.across; ++from) {
        int to = from;
        while (to < modules.across && modules.is_black(row, to))
          ++to;
        if (to == from)
          continue;
        put_run(row, from, to - from);
        from = to;
      }
    out.put("\" fill=\"#000000\"");
    end_empty();
  }

  /// Its bytes are in the drawing: nothing is loaded from elsewhere. SVG 1.1 calls what leads to them
  /// xlink:href; browsers and sheerpole-pdf read href, and no drawing with a picture is a file of its own.
  void operator()(const PictureShape& picture) {
    begin("image", {});
    set(" x=\"", picture.box.left);
    set(" y=\"", picture.box.top);
    set(" width=\"", picture.box.width());
    set(" height=\"", picture.box.height());
    out.put(std::string_view(picture.jpeg ? " href=\"data:image/jpeg;base64,"
                                          : " href=\"data:image/png;base64,"));
    out.put(std::string_view(to_base64(*picture.bytes)));
    out.put('"');
    end_empty();
  }

  void operator()(const TextShape& text) {
    begin("text", text.id);
    set(" x=\"", text.at.x);
    set(" y=\"", text.at.y);
    set(" font-size=\"", text.size);
    if (text.fixed_pitch)
      out.put(" font-family=\"'Liberation Mono', monospace\"");
    if (text.grey > 0.0)
      put_grey(" fill=\"", text.grey, out);
    if (text.bold)
      out.put(" font-weight=\"bold\"");
    if (text.anchor == TextAnchor::middle)
      out.put(" text-anchor=\"middle\"");
    else if (text.anchor == TextAnchor::end)
      out.put(" text-anchor=\"end\"");
    if (!text.text.empty()) {
      set(" textLength=\"", set_width(text));
      out.put(" lengthAdjust=\"spacingAndGlyphs\"");
    }
    std::vector<TextRun> parts; // empty: one, as for nearly all
    if (!text.fixed_pitch && text.text.find('/') != std::string::npos)
      parts = runs_of(text.text);
    // Else a blank beside a span is left out by some.
    if (parts.size() > 1)
      out.put(" xml:space=\"preserve\"");
    out.put('>');
    if (parts.size() > 1)
      runs(parts, text.size);
    else
      add_xml_text(out, text.text);
    out.put("</text>\n");
  }

  void operator()(const ShapeGroup& group) {
    const std::string link = with_links_ ? link_of(group) : std::string();
    const bool tagged = papers_ != nullptr && !group.tag.empty();
    // A group that is only there for its tag is none where there are no tags.
    const bool plain = group.id.empty() && group.title.empty() && group.description.empty() && link.empty();
    if (plain && !tagged && !group.tag.empty()) {
      for (const DrawnNode& child : group.children)
        std::visit(*this, child.content());
      return;
    }
    const std::string_view name = link.empty() ? "g" : "a";
    begin(name, group.id);
    if (!link.empty())
      set(" href=\"", link);
    if (tagged)
      set(" class=\"", group.tag);
    if (group.title.empty() && group.description.empty() && group.children.empty()) {
      end_empty();
      return;
    }
    open();
    words(group.title, group.description);
    for (const DrawnNode& child : group.children)
      std::visit(*this, child.content());
    close(name);
  }

  void words(const std::string& title, const std::string& description) {
    if (!title.empty())
      element_with_text("title", title);
    if (!description.empty())
      element_with_text("desc", description);
  }

  /// The element that holds the drawing, open.
  void open_svg(const Drawing& drawing) {
    begin("svg", "");
    // The metrics by which texts are measured are those of the face.
    out.put(" xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"" + number(drawing.width) +
            "mm\" height=\"" + number(drawing.height) + "mm\" viewBox=\"0 0 " + number(drawing.width) +
            " " + number(drawing.height) +
            "\" font-family=\"'Liberation Sans', sans-serif\" stroke-linejoin=\"round\"");
    open();
    words(drawing.title, drawing.description);
  }
  void close_svg() { close("svg"); }

private:
  /// Where a group leads to. In a PDF that is a place in it or another PDF beside it: the file of the same
  /// name, whatever its ending is on a screen. One that is not made beside it is no link.
  std::string link_of(const ShapeGroup& group) const {
    if (papers_ == nullptr || group.link.empty() || group.link.starts_with('#'))
      return group.link;
    const std::string paper = group.link.substr(0, group.link.rfind('.')) + ".pdf";
    return papers_->contains(paper) ? paper : std::string();
  }

  /// Fractions of an inch in small figures, above and below the line.
  void runs(const std::vector<TextRun>& parts, double size) {
    double moved = 0.0; // from the base line, downwards
    for (const TextRun& run : parts) {
      const bool small = run.place != TextRun::Place::on_line;
      const double place = size * (run.place == TextRun::Place::above   ? -raised_by
                                   : run.place == TextRun::Place::below ? lowered_by
                                                                        : 0.0);
      if (!small && place == moved) {
        add_xml_text(out, run.text);
        continue;
      }
      out.put("<tspan");
      set(" dy=\"", place - moved);
      if (small)
        set(" font-size=\"", size * small_figures);
      out.put('>');
      add_xml_text(out, run.text);
      out.put("</tspan>");
      moved = place;
    }
  }

  std::string_view prefix_; ///< of every id
  bool with_links_ = false;
  const std::set<std::string>* papers_ = nullptr; ///< null: no PDF
  std::size_t depth_ = 0;

  void begin(std::string_view name, std::string_view id) {
    out.indent(2 * depth_);
    out.put('<');
    out.put(name);
    if (!id.empty()) {
      out.put(" id=\"");
      add_escaped(out, prefix_, true);
      add_escaped(out, id, true);
      out.put('"');
    }
  }
  void open() {
    out.put(">\n");
    ++depth_;
  }
  void end_empty() { out.put(" />\n"); }
  void close(std::string_view name) {
    --depth_;
    out.indent(2 * depth_);
    out.put("</");
    out.put(name);
    out.put(">\n");
  }
  void element_with_text(std::string_view name, const std::string& text) {
    begin(name, "");
    out.put('>');
    add_xml_text(out, text);
    out.put("</");
    out.put(name);
    out.put(">\n");
  }

  /// An attribute whose value may be any text; its name with the blank before it and with `="`.
  template <std::size_t Size>
  void set(const char (&name)[Size], const std::string& value) {
    out.put(name);
    add_escaped(out, value, true);
    out.put('"');
  }
  template <std::size_t Size>
  void set(const char (&name)[Size], double value) {
    out.put_attribute(name, value, figures);
  }
  /// "#808080" of a level from 0 to 1.
  template <std::size_t Size>
  static void put_grey(const char (&name)[Size], double value, MarkupBuffer& into) {
    constexpr std::string_view digits = "0123456789abcdef";
    const auto level = static_cast<unsigned>(std::lround(value * 255.0));
    const char high = digits[(level >> 4U) & 0x0fU];
    const char low = digits[level & 0x0fU];
    const char signs[] = {'#', high, low, high, low, high, low, '"', '\0'};
    into.put(name);
    into.put(signs);
  }

  /// Black squares side by side. No count has more than three digits, and there are thousands on a sheet.
  void put_run(int row, int from, int length) {
    std::array<char, 24> run;
    char* at = run.data();
    const auto count = [&](int number) {
      if (number >= 100)
        *at++ = static_cast<char>('0' + number / 100);
      if (number >= 10)
        *at++ = static_cast<char>('0' + number / 10 % 10);
      *at++ = static_cast<char>('0' + number % 10);
    };
    *at++ = 'M';
    count(from);
    *at++ = ' ';
    count(row);
    *at++ = 'h';
    count(length);
    std::memcpy(at, "v1h-", 4);
    at += 4;
    count(length);
    *at++ = 'z';
    out.put(std::string_view(run.data(), static_cast<std::size_t>(at - run.data())));
  }

  void put_points(const std::vector<PaperPoint>& points) {
    bool first = true;
    for (const PaperPoint& point : points) {
      if (!first)
        out.put(' ');
      first = false;
      out.put_fixed(point.x, figures);
      out.put(',');
      out.put_fixed(point.y, figures);
    }
  }

  template <class Shape>
  void outline(std::string_view name, const Shape& shape) {
    begin(name, shape.id);
    out.put(" points=\"");
    put_points(shape.points);
    out.put('"');
    style(shape.style);
    end_empty();
  }

  void style(const ShapeStyle& style) {
    // Shapes one behind the other mostly have one style.
    if (style_words_.empty() || style != style_) {
      style_ = style;
      MarkupBuffer words;
      write_style(style, words);
      style_words_ = words.take();
    }
    out.put(std::string_view(style_words_));
  }

  ShapeStyle style_;        ///< the one written last
  std::string style_words_; ///< its attributes; empty: none was written

  static void write_style(const ShapeStyle& style, MarkupBuffer& into) {
    if (style.fill_grey)
      put_grey(" fill=\"", *style.fill_grey, into);
    else
      into.put(" fill=\"none\"");
    if (style.stroke_width <= 0.0)
      return;
    put_grey(" stroke=\"", style.stroke_grey, into);
    into.put_attribute(" stroke-width=\"", style.stroke_width, figures);
    if (style.dashes.empty())
      return;
    into.put(" stroke-dasharray=\"");
    for (std::size_t i = 0; i < style.dashes.size(); ++i) {
      if (i > 0)
        into.put(' ');
      into.put_fixed(style.dashes[i], figures);
    }
    into.put('"');
  }
};

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

namespace {

void write_file(SvgWriter& writer, const Drawing& drawing) {
  writer.out.put("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                 "<!DOCTYPE svg PUBLIC \"-//W3C//DTD SVG 1.1//EN\" "
                 "\"http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd\">\n");
  writer.open_svg(drawing);
  ShapeStyle paper{.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 1.0};
  writer(RectangleShape{{0.0, 0.0, drawing.width, drawing.height}, std::move(paper), ""});
  writer(drawing.content);
  writer.close_svg();
}

} // namespace

std::string write_svg(const Drawing& drawing) {
  MarkupBuffer buffer;
  SvgWriter writer(buffer);
  write_file(writer, drawing);
  return buffer.take();
}

std::string write_tagged_svg(const Drawing& drawing, const std::set<std::string>& papers) {
  MarkupBuffer buffer;
  SvgWriter writer(buffer, papers);
  write_file(writer, drawing);
  return buffer.take();
}

void add_svg_element(const Drawing& drawing, const std::string& prefix, MarkupBuffer& into) {
  SvgWriter writer(into, prefix, true);
  writer.open_svg(drawing);
  writer(drawing.content);
  writer.close_svg();
}

std::string write_svg_element(const Drawing& drawing, const std::string& prefix) {
  MarkupBuffer buffer;
  add_svg_element(drawing, prefix, buffer);
  return buffer.take();
}

} // namespace sheerpole
