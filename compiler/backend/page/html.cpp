#include "backend/page/html.hpp"

#include "backend/drawing/markup_buffer.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "backend/page/reflow.hpp"
#include "base/byte_text.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/papers/papers_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>
#include <variant>

namespace sheerpole {

namespace {

constexpr std::string_view style_rules =
    "body { margin: 0 auto; padding: 0 8px; max-width: 190mm; background: #ffffff; color: #000000;\n"
    "  font: 11pt/1.4 'Liberation Sans', sans-serif; overflow-wrap: anywhere; }\n"
    "h1 { font-size: 20pt; margin: 0.6em 0 0.2em; }\n"
    "h2 { font-size: 15pt; margin: 1.4em 0 0.3em; border-bottom: 2px solid #000000; }\n"
    "h3 { font-size: 12pt; margin: 1em 0 0.2em; }\n"
    "h2, h3, caption { break-after: avoid; }\n"
    "p { margin: 0.3em 0; }\n"
    ".small { font-size: 9pt; }\n"
    ".notice { border: 3px solid #000000; padding: 0.4em 0.6em; font-weight: bold; margin: 0.6em 0; }\n"
    "table { border-collapse: collapse; table-layout: fixed; width: 100%; margin: 0.5em 0; font-size: "
    "9.5pt; }\n"
    "caption { text-align: left; font-weight: bold; padding: 0.2em 0; }\n"
    "th, td { border: 1px solid #707070; padding: 2px 4px; text-align: left; vertical-align: top;\n"
    "  font-weight: normal; }\n"
    "thead th { font-weight: bold; border-bottom-width: 2px; }\n"
    "thead { display: table-header-group; }\n"
    "tr { break-inside: avoid; }\n"
    ".number { text-align: right; overflow-wrap: normal; font-variant-numeric: tabular-nums; }\n"
    ".whole { white-space: nowrap; overflow-wrap: normal; }\n"
    "dl { display: grid; grid-template-columns: 30% 1fr; margin: 0.5em 0; }\n"
    "dt, dd { margin: 0; padding: 2px 4px; border-top: 1px solid #c0c0c0; }\n"
    "dt { font-weight: bold; }\n"
    ".line { display: block; border-bottom: 1px solid #000000; min-height: 1.9em; }\n"
    "figure { margin: 0.6em 0; break-inside: avoid; }\n"
    "figcaption { font-size: 9pt; }\n"
    "svg { display: block; max-width: 100%; height: auto; }\n"
    "img { display: block; max-width: 100%; max-height: 98mm; width: auto; height: auto; "
    "image-orientation: none; }\n"
    "svg a:hover, svg a:focus { text-decoration: underline; outline: 2px solid #000000; }\n"
    "a { color: #000000; }\n"
    "nav ul { columns: 2; padding-left: 1.2em; margin: 0.3em 0; }\n"
    "nav .deeper { margin-left: 1em; list-style: circle; }\n"
    "@media print { #narrow { display: none; } body { max-width: none; padding: 0; } }\n"
    "@media screen and (max-width: 599px) {\n"
    "  body { font-size: 16px; padding: 0 12px; }\n"
    "  .small, figcaption, table { font-size: 16px; }\n"
    "  footer .small { font-size: 14px; }\n"
    "  nav ul { columns: 1; } nav a { display: inline-block; padding: 10px 0; }\n"
    "  table, caption, tbody, tr, tbody th, tbody td { display: block; width: auto; }\n"
    "  colgroup, thead { display: none; }\n"
    "  tr { border-top: 2px solid #000000; padding: 8px 0; }\n"
    "  tbody th, tbody td { border: 0; padding: 3px 0; min-height: 12px; text-align: left; }\n"
    "  tbody th { font-weight: bold; }\n"
    "  tbody td::before { content: attr(data-head) ': '; font-weight: bold; }\n"
    "  dl { display: block; } dd { border: 0; }\n"
    "  input { width: 100%; box-sizing: border-box; font-size: 16px; }\n"
    "}\n";

/// Offers a field that leaves in the tables only rows that hold its words. Nothing is lost without it. The
/// words before the field stand between both parts.
constexpr std::string_view narrowing_script_begins = "(function () {\n"
                                                     "  'use strict';\n"
                                                     "  var place = document.getElementById('narrow');\n"
                                                     "  var label = document.createElement('label');\n"
                                                     "  var field = document.createElement('input');\n"
                                                     "  field.type = 'search';\n"
                                                     "  label.append('";
constexpr std::string_view narrowing_script_ends =
    "', field);\n"
    "  place.append(label);\n"
    "  field.addEventListener('input', function () {\n"
    "    var words = field.value.toLowerCase();\n"
    "    document.querySelectorAll('tbody tr').forEach(function (row) {\n"
    "      row.hidden = words !== '' && row.textContent.toLowerCase().indexOf(words) < 0;\n"
    "    });\n"
    "  });\n"
    "}());\n";

void add_html_text(MarkupBuffer& html, std::string_view text) {
  std::size_t written = 0; // what stays as it is is written in one go
  const auto put = [&](std::size_t at, std::string_view instead) {
    html.put(text.substr(written, at - written));
    html.put(instead);
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
      put(at, "&quot;");
      break;
    default:
      if (static_cast<unsigned char>(text[at]) < 0x20)
        put(at, " ");
    }
  html.put(text.substr(written));
}

/// A text in which no quantity is broken over two lines. Blanks stay blanks, so that it is found by its
/// words.
void add_html_words(MarkupBuffer& html, std::string_view text) {
  std::size_t written = 0;
  for (std::size_t word = 0; word < text.size();) {
    const std::size_t first = std::min(text.find(' ', word), text.size());
    std::size_t end = first;
    while (end < text.size() && blank_in_quantity(text, end))
      end = std::min(text.find(' ', end + 1), text.size());
    if (end != first) { // what stands before goes in one piece
      add_html_text(html, text.substr(written, word - written));
      html.put("<span class=\"whole\">");
      add_html_text(html, text.substr(word, end - word));
      html.put("</span>");
      written = end;
    }
    word = end + 1;
  }
  add_html_text(html, text.substr(written));
}

std::string html_words(std::string_view text) {
  MarkupBuffer html;
  add_html_words(html, text);
  return html.take();
}

class HtmlWriter {
public:
  MarkupBuffer html;
  std::set<int> widths; ///< of columns, percent

  void operator()(const DocumentHeading& heading) {
    html.put(fmt::format("<h{0}{1}>{2}</h{0}>\n", heading.level,
                         heading.id.empty() ? "" : fmt::format(" id=\"{}\"", html_text(heading.id)),
                         html_words(heading.text)));
  }
  void operator()(const DocumentText& text) {
    html.put(fmt::format("<p{}>{}</p>\n", text.small ? " class=\"small\"" : "", html_words(text.text)));
  }
  void operator()(const DocumentNotice& notice) {
    html.put(fmt::format("<p class=\"notice\">{}</p>\n", html_words(notice.text)));
  }
  void operator()(const DocumentFacts& facts) {
    html.put("<dl>\n");
    for (const auto& [words, value] : facts.rows) {
      html.put("<dt>");
      add_html_words(html, words);
      html.put("</dt>\n<dd>");
      if (value.empty())
        html.put("<span class=\"line\">&nbsp;</span>");
      else
        add_html_words(html, value);
      html.put("</dd>\n");
    }
    html.put("</dl>\n");
  }
  void operator()(const DocumentTable& table) {
    if (table.rows.empty()) {
      html.put(fmt::format("<p><strong>{}</strong></p>\n", html_words(table.caption)));
    } else {
      html.put(fmt::format("<table>\n<caption>{}</caption>\n{}<thead>\n<tr>", html_words(table.caption),
                           column_group(table)));
      for (const DocumentColumn& column : table.columns)
        html.put(
            fmt::format("<th scope=\"col\"{}>{}</th>", number_class(column), html_words(column.heading)));
      html.put("</tr>\n</thead>\n<tbody>\n");
      std::vector<std::string> begins; // of a cell, by column
      for (const DocumentColumn& column : table.columns)
        begins.push_back((begins.empty() ? std::string("<th scope=\"row\"")
                                         : "<td data-head=\"" + html_text(column.heading) + "\"") +
                         std::string(number_class(column)) + ">");
      for (const std::vector<std::string>& row : table.rows) {
        html.put("<tr>");
        for (std::size_t i = 0; i < row.size(); ++i) {
          html.put(begins[i]);
          add_html_words(html, row[i]);
          html.put(i == 0 ? "</th>" : "</td>");
        }
        html.put("</tr>\n");
      }
      html.put("</tbody>\n</table>\n");
    }
    for (const std::string& note : table.notes)
      html.put(fmt::format("<p class=\"small\">{}</p>\n", html_words(note)));
  }
  void operator()(const DocumentFigure& figure) {
    html.put("<figure>\n");
    add_svg_element(figure.drawing, fmt::format("figure-{}-", ++figures_), html);
    if (!figure.caption.empty())
      html.put(fmt::format("<figcaption>{}</figcaption>\n", html_words(figure.caption)));
    html.put("</figure>\n");
  }
  void operator()(const DocumentPicture& picture) {
    html.put(fmt::format(
        "<figure{}>\n<img width=\"{}\" height=\"{}\" alt=\"{}\" src=\"data:image/{};base64,",
        picture.id.empty() ? "" : fmt::format(" id=\"{}\"", html_text(picture.id)), picture.width,
        picture.height, html_text(picture.words), picture.jpeg ? "jpeg" : "png"));
    html.put(to_base64(*picture.bytes));
    html.put("\">\n" +
             fmt::format("<figcaption>{}</figcaption>\n</figure>\n", html_words(picture.caption)));
  }
  void operator()(const DocumentToWrite& lines) {
    for (const std::string& words : lines.words)
      html.put(fmt::format("<p>{}<span class=\"line\">&nbsp;</span></p>\n", html_words(words)));
  }

private:
  int figures_ = 0;

  /// Shares of the width by classes, as a page may forbid styles at elements.
  std::string column_group(const DocumentTable& table) {
    double all = 0.0;
    for (const DocumentColumn& column : table.columns)
      all += column.share;
    std::string group = "<colgroup>";
    for (const DocumentColumn& column : table.columns) {
      const int percent = static_cast<int>(std::lround(100.0 * column.share / all));
      widths.insert(percent);
      group += fmt::format("<col class=\"w{}\">", percent);
    }
    return group + "</colgroup>\n";
  }

  static std::string_view number_class(const DocumentColumn& column) {
    return column.right ? " class=\"number\"" : "";
  }
};

std::string contents(const Document& document) {
  std::string list;
  for (const DocumentBlock& block : document.blocks)
    if (const auto* heading = std::get_if<DocumentHeading>(&block); heading && !heading->id.empty())
      list +=
          fmt::format("<li{}><a href=\"#{}\">{}</a></li>\n", heading->level == 2 ? "" : " class=\"deeper\"",
                      html_text(heading->id), html_text(heading->text));
  return list.empty() ? list
                      : "<nav aria-label=\"" + html_text(say(PapersPhrase::contents)) + "\">\n<ul>\n" +
                            list + "</ul>\n</nav>\n";
}

/// What a policy calls a text that stands in the file: CSP level 3, 2.3.1 (from memory).
std::string source_hash(std::string_view text) {
  const std::string digits = sha256(text);
  std::string bytes;
  for (std::size_t i = 0; i + 1 < digits.size(); i += 2)
    bytes += static_cast<char>(std::stoi(digits.substr(i, 2), nullptr, 16));
  return "'sha256-" + to_base64(bytes) + "'";
}

/// The head, with its style. The page may run and load nothing but what stands in it.
std::string html_head(const std::string& title, const std::string& style, std::string_view script = {},
                      bool pictures = false) {
  const std::string scripts = (script.empty() ? "" : " script-src " + source_hash(script) + ";") +
                              (pictures ? std::string(" img-src data:;") : std::string());
  return "<!DOCTYPE html>\n"
         "<html lang=\"" +
         say(PapersPhrase::language_tag) +
         "\">\n"
         "<head>\n"
         "<meta charset=\"utf-8\">\n"
         "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src " +
         source_hash(style) + ";" + scripts +
         " base-uri 'none'; form-action 'none'\">\n"
         "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
         "<title>" +
         html_text(title) +
         "</title>\n"
         "<style>" +
         style + "</style>\n</head>\n";
}

constexpr std::string_view reflow_rules =
    ".narrow { display: none; }\n"
    "@media screen and (max-width: 599px) {\n"
    "  .sheet { display: none; }\n"
    "  h1 { position: static; font: bold 22px 'Liberation Sans', sans-serif; margin: 12px; }\n"
    "  .narrow { display: block; border: 0; margin: 0; width: auto; max-width: none; padding: 0 12px "
    "24px;\n"
    "    font: 16px/1.45 'Liberation Sans', sans-serif; overflow-wrap: anywhere; }\n"
    "  .narrow h2 { font-size: 20px; margin: 18px 0 6px; }\n"
    "  .narrow p { margin: 8px 0; }\n"
    "  .strong { font-weight: bold; }\n"
    "  .narrow a { color: #000000; display: inline-block; padding: 11px 0; }\n"
    "  .whole { white-space: nowrap; }\n"
    "  .notice { border: 3px solid #000000; padding: 8px; font-weight: bold; }\n"
    "  .box { display: inline-block; width: 22px; height: 22px; border: 2px solid #000000; margin: 2px "
    "10px 2px 0;\n"
    "    vertical-align: middle; }\n"
    "  .line { display: block; border-bottom: 1px solid #000000; min-height: 45px; }\n"
    "  .row { border-top: 2px solid #000000; padding: 8px 0; margin: 0; min-height: 45px; }\n"
    "  .row dt { float: left; clear: left; padding-right: 8px; } .row dt::after { content: ':'; }\n"
    "  .row .unnamed::after { content: none; }\n"
    "  .row dd { margin: 0; padding: 2px 0; }\n"
    "  .foot { font-size: 14px; border-top: 1px solid #000000; padding-top: 8px; }\n"
    "}\n";

/// A paper as it is on a narrow screen: one text below the other, cells of a table too.
class ReflowWriter {
public:
  ReflowWriter(std::string prefix, MarkupBuffer& into) : html(into), prefix_(std::move(prefix)) {}
  MarkupBuffer& html; ///< what is written stands at its end

  void operator()(const ReflowText& text) {
    switch (text.kind) {
    case ReflowText::Kind::heading:
      return element("<h2>", text, "</h2>\n");
    case ReflowText::Kind::notice:
      return element("<p class=\"notice\">", text, "</p>\n");
    case ReflowText::Kind::tick:
      return element("<p><span class=\"box\"></span>", text, "</p>\n");
    case ReflowText::Kind::to_write:
      return element("<p>", text, "<span class=\"line\">&nbsp;</span></p>\n");
    case ReflowText::Kind::text:
      return element(text.bold ? "<p class=\"strong\">" : "<p>", text, "</p>\n");
    }
  }
  void operator()(const FlowTable& table) {
    for (const std::vector<FlowCell>& row : table.rows) {
      bool empty = true;
      for (std::size_t i = 0; i < row.size(); ++i) {
        if (is_blank(row[i]))
          continue;
        if (empty)
          html.put("<dl class=\"row\">");
        empty = false;
        const std::string& heading = table.columns[i].heading;
        if (!heading.empty()) {
          html.put("<dt>");
          add_html_words(html, heading);
          html.put("</dt>");
        } else if (i + 1 < row.size() && table.columns[i + 1].heading.empty() && !is_blank(row[i + 1])) {
          // Where columns have no headings the first of two cells says what the second is.
          const bool named = !row[i].tick && !row[i].rule;
          html.put(named ? "<dt>" : "<dt class=\"unnamed\">");
          add_cell(row[i]);
          html.put("</dt>");
          ++i;
        } else {
          html.put("<dt class=\"unnamed\">&nbsp;</dt>");
        }
        html.put("<dd>");
        add_cell(row[i]);
        html.put("</dd>");
      }
      if (!empty)
        html.put("</dl>\n");
    }
  }
  void operator()(const ReflowDrawing& one) {
    add_svg_element(one.drawing, fmt::format("{}{}-", prefix_, ++drawings_), html);
  }
  void operator()(const ReflowRule&) { html.put("<hr>\n"); }

private:
  static bool is_blank(const FlowCell& cell) { return cell.text.empty() && !cell.tick && !cell.rule; }

  void add_cell(const FlowCell& cell) {
    html.put(cell.tick ? "<span class=\"box\"></span>" : "");
    html.put(cell.rule ? "<span class=\"line\">&nbsp;</span>" : "");
    html.put(cell.bold ? "<strong>" : "");
    if (!cell.link.empty()) {
      html.put("<a href=\"");
      add_html_text(html, cell.link);
      html.put("\">");
    }
    add_html_words(html, cell.text);
    html.put(cell.link.empty() ? "" : "</a>");
    html.put(cell.bold ? "</strong>" : "");
  }

  std::string prefix_;
  int drawings_ = 0;

  void element(std::string_view begins, const ReflowText& text, std::string_view ends) {
    html.put(begins);
    add_html_words(html, text.text);
    html.put(ends);
  }
};

void add_narrow_section(MarkupBuffer& html, const Drawing& page, std::size_t number) {
  html.put("<section class=\"narrow\">\n");
  ReflowWriter writer(fmt::format("narrow-{}-", number), html);
  for (const ReflowBlock& block : page.reflow->blocks)
    std::visit(writer, block);
  html.put("<p class=\"foot\">");
  add_html_words(html, page.reflow->foot);
  html.put("</p>\n</section>\n");
}

} // namespace

std::string html_text(std::string_view text) {
  MarkupBuffer result;
  add_html_text(result, text);
  return result.take();
}

std::string html_of_pages(const std::string& title, const std::vector<Drawing>& pages) {
  const double width = pages.empty() ? 210.0 : pages.front().width;
  const double height = pages.empty() ? 297.0 : pages.front().height;
  const bool reflows =
      std::any_of(pages.begin(), pages.end(), [](const Drawing& page) { return page.reflow != nullptr; });
  const std::string style =
      fmt::format("@page {{ size: {1}mm {2}mm; margin: 0; }}\n"
                  "body {{ margin: 0; background: #ffffff; color: #000000; font-family: sans-serif; }}\n"
                  "h1 {{ position: absolute; left: -100vw; }}\n"
                  "section {{ width: {1}mm; margin: 0 auto; break-after: page; }}\n"
                  "section:last-child {{ break-after: auto; }}\n"
                  "svg {{ display: block; max-width: 100%; height: auto; }}\n"
                  "@media screen {{ section {{ border: 1px solid #707070; margin: 8px auto; max-width: "
                  "98vw; }} }}\n",
                  html_text(title), format_number(width), format_number(height)) +
      std::string(reflows ? reflow_rules : "");
  MarkupBuffer html;
  html.put(html_head(title, style) + "<body>\n<main>\n<h1>" + html_text(title) + "</h1>\n");
  for (std::size_t i = 0; i < pages.size(); ++i) {
    html.put(reflows ? "<section class=\"sheet\" aria-label=\"" : "<section aria-label=\"");
    html.put(html_text(pages[i].title) + "\">\n");
    add_svg_element(pages[i], fmt::format("page-{}-", i + 1), html);
    html.put("</section>\n");
  }
  for (std::size_t i = 0; i < pages.size(); ++i)
    if (pages[i].reflow != nullptr)
      add_narrow_section(html, pages[i], i + 1);
  html.put("</main>\n</body>\n</html>\n");
  return html.take();
}

std::string html_of_document(const Document& document, PaperSize paper) {
  const PaperExtent extent = paper_of(paper);
  HtmlWriter body;
  if (!document.draft.empty()) {
    std::string words = say(PapersPhrase::draft_do_not_cut_to);
    for (const std::string& reason : document.draft)
      words += " " + reason;
    body(DocumentNotice{words});
  }
  body.html.put(contents(document) + "<div id=\"narrow\"></div>\n");
  for (const DocumentBlock& block : document.blocks)
    std::visit(body, block);
  std::string widths;
  for (const int percent : body.widths)
    widths += fmt::format(".w{0} {{ width: {0}%; }}\n", percent);
  const std::string style =
      fmt::format("@page {{ size: {}mm {}mm; margin: {}mm; }}\n", format_number(extent.width),
                  format_number(extent.height), format_number(page_margin)) +
      std::string(style_rules) + widths;
  std::string script = "\n";
  script += narrowing_script_begins;
  script += say(PapersPhrase::show_only_rows);
  script += narrowing_script_ends;
  const bool pictures =
      std::any_of(document.blocks.begin(), document.blocks.end(), [](const DocumentBlock& block) {
        return std::holds_alternative<DocumentPicture>(block);
      });
  MarkupBuffer html;
  html.put(html_head(document.title, style, script, pictures));
  html.put("<body>\n<main>\n<h1>" + html_text(document.title) + "</h1>\n<p>" + html_text(document.about));
  html.put("</p>\n");
  html.put(std::move(body.html));
  html.put("</main>\n<footer>\n<p class=\"small\">" + html_words(document.foot));
  html.put("</p>\n</footer>\n<script>");
  html.put(script);
  html.put("</script>\n</body>\n</html>\n");
  return html.take();
}

} // namespace sheerpole
