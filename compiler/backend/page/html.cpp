#include "backend/page/html.hpp"

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

void add_html_text(std::string& html, std::string_view text) {
  std::size_t written = 0; // what stays as it is is written in one go
  const auto put = [&](std::size_t at, std::string_view instead) {
    html.append(text, written, at - written);
    html += instead;
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
  html.append(text, written);
}

/// A text in which no quantity is broken over two lines. Blanks stay blanks, so that it is found by its
/// words.
void add_html_words(std::string& html, std::string_view text) {
  std::size_t written = 0;
  for (std::size_t word = 0; word < text.size();) {
    const std::size_t first = std::min(text.find(' ', word), text.size());
    std::size_t end = first;
    while (end < text.size() && blank_in_quantity(text, end))
      end = std::min(text.find(' ', end + 1), text.size());
    if (end != first) { // what stands before goes in one piece
      add_html_text(html, text.substr(written, word - written));
      html += "<span class=\"whole\">";
      add_html_text(html, text.substr(word, end - word));
      html += "</span>";
      written = end;
    }
    word = end + 1;
  }
  add_html_text(html, text.substr(written));
}

std::string html_words(std::string_view text) {
  std::string html;
  html.reserve(text.size());
  add_html_words(html, text);
  return html;
}

class HtmlWriter {
public:
  std::string html;
  std::set<int> widths; ///< of columns, percent

  void operator()(const DocumentHeading& heading) {
    html += fmt::format("<h{0}{1}>{2}</h{0}>\n", heading.level,
                        heading.id.empty() ? "" : fmt::format(" id=\"{}\"", html_text(heading.id)),
                        html_words(heading.text));
  }
  void operator()(const DocumentText& text) {
    html += fmt::format("<p{}>{}</p>\n", text.small ? " class=\"small\"" : "", html_words(text.text));
  }
  void operator()(const DocumentNotice& notice) {
    html += fmt::format("<p class=\"notice\">{}</p>\n", html_words(notice.text));
  }
  void operator()(const DocumentFacts& facts) {
    html += "<dl>\n";
    for (const auto& [words, value] : facts.rows)
      html += fmt::format("<dt>{}</dt>\n<dd>{}</dd>\n", html_words(words),
                          value.empty() ? "<span class=\"line\">&nbsp;</span>" : html_words(value));
    html += "</dl>\n";
  }
  void operator()(const DocumentTable& table) {
    if (table.rows.empty()) {
      html += fmt::format("<p><strong>{}</strong></p>\n", html_words(table.caption));
    } else {
      html += fmt::format("<table>\n<caption>{}</caption>\n{}<thead>\n<tr>", html_words(table.caption),
                          column_group(table));
      for (const DocumentColumn& column : table.columns)
        html +=
            fmt::format("<th scope=\"col\"{}>{}</th>", number_class(column), html_words(column.heading));
      html += "</tr>\n</thead>\n<tbody>\n";
      std::vector<std::string> begins; // of a cell, by column
      for (const DocumentColumn& column : table.columns)
        begins.push_back((begins.empty() ? std::string("<th scope=\"row\"")
                                         : "<td data-head=\"" + html_text(column.heading) + "\"") +
                         std::string(number_class(column)) + ">");
      for (const std::vector<std::string>& row : table.rows) {
        html += "<tr>";
        for (std::size_t i = 0; i < row.size(); ++i) {
          html += begins[i];
          add_html_words(html, row[i]);
          html += i == 0 ? "</th>" : "</td>";
        }
        html += "</tr>\n";
      }
      html += "</tbody>\n</table>\n";
    }
    for (const std::string& note : table.notes)
      html += fmt::format("<p class=\"small\">{}</p>\n", html_words(note));
  }
  void operator()(const DocumentFigure& figure) {
    html += "<figure>\n";
    html += write_svg_element(figure.drawing, fmt::format("figure-{}-", ++figures_));
    if (!figure.caption.empty())
      html += fmt::format("<figcaption>{}</figcaption>\n", html_words(figure.caption));
    html += "</figure>\n";
  }
  void operator()(const DocumentPicture& picture) {
    html +=
        fmt::format("<figure{}>\n<img width=\"{}\" height=\"{}\" alt=\"{}\" src=\"data:image/{};base64,",
                    picture.id.empty() ? "" : fmt::format(" id=\"{}\"", html_text(picture.id)),
                    picture.width, picture.height, html_text(picture.words), picture.jpeg ? "jpeg" : "png");
    html += to_base64(*picture.bytes);
    html += "\">\n" + fmt::format("<figcaption>{}</figcaption>\n</figure>\n", html_words(picture.caption));
  }
  void operator()(const DocumentToWrite& lines) {
    for (const std::string& words : lines.words)
      html += fmt::format("<p>{}<span class=\"line\">&nbsp;</span></p>\n", html_words(words));
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
  ReflowWriter(std::string prefix, std::string& into) : html(into), prefix_(std::move(prefix)) {}
  std::string& html; ///< what is written stands at its end

  void operator()(const ReflowText& text) {
    const std::string words = html_words(text.text);
    switch (text.kind) {
    case ReflowText::Kind::heading:
      html += "<h2>" + words + "</h2>\n";
      return;
    case ReflowText::Kind::notice:
      html += "<p class=\"notice\">" + words + "</p>\n";
      return;
    case ReflowText::Kind::tick:
      html += "<p><span class=\"box\"></span>" + words + "</p>\n";
      return;
    case ReflowText::Kind::to_write:
      html += "<p>" + words + "<span class=\"line\">&nbsp;</span></p>\n";
      return;
    case ReflowText::Kind::text:
      html += fmt::format("<p{}>{}</p>\n", text.bold ? " class=\"strong\"" : "", words);
    }
  }
  void operator()(const FlowTable& table) {
    for (const std::vector<FlowCell>& row : table.rows) {
      const std::size_t before = html.size();
      html += "<dl class=\"row\">";
      bool empty = true;
      for (std::size_t i = 0; i < row.size(); ++i) {
        if (is_blank(row[i]))
          continue;
        empty = false;
        const std::string& heading = table.columns[i].heading;
        if (!heading.empty()) {
          html += "<dt>";
          add_html_words(html, heading);
          html += "</dt>";
        } else if (i + 1 < row.size() && table.columns[i + 1].heading.empty() && !is_blank(row[i + 1])) {
          // Where columns have no headings the first of two cells says what the second is.
          const bool named = !row[i].tick && !row[i].rule;
          html += named ? "<dt>" : "<dt class=\"unnamed\">";
          add_cell(row[i]);
          html += "</dt>";
          ++i;
        } else {
          html += "<dt class=\"unnamed\">&nbsp;</dt>";
        }
        html += "<dd>";
        add_cell(row[i]);
        html += "</dd>";
      }
      if (empty)
        html.resize(before);
      else
        html += "</dl>\n";
    }
  }
  void operator()(const ReflowDrawing& one) {
    html += write_svg_element(one.drawing, fmt::format("{}{}-", prefix_, ++drawings_));
  }
  void operator()(const ReflowRule&) { html += "<hr>\n"; }

private:
  static bool is_blank(const FlowCell& cell) { return cell.text.empty() && !cell.tick && !cell.rule; }

  void add_cell(const FlowCell& cell) {
    html += cell.tick ? "<span class=\"box\"></span>" : "";
    html += cell.rule ? "<span class=\"line\">&nbsp;</span>" : "";
    html += cell.bold ? "<strong>" : "";
    if (!cell.link.empty()) {
      html += "<a href=\"";
      add_html_text(html, cell.link);
      html += "\">";
    }
    add_html_words(html, cell.text);
    html += cell.link.empty() ? "" : "</a>";
    html += cell.bold ? "</strong>" : "";
  }

  std::string prefix_;
  int drawings_ = 0;
};

void add_narrow_section(std::string& html, const Drawing& page, std::size_t number) {
  html += "<section class=\"narrow\">\n";
  ReflowWriter writer(fmt::format("narrow-{}-", number), html);
  for (const ReflowBlock& block : page.reflow->blocks)
    std::visit(writer, block);
  html += "<p class=\"foot\">";
  add_html_words(html, page.reflow->foot);
  html += "</p>\n</section>\n";
}

} // namespace

std::string html_text(std::string_view text) {
  std::string result;
  add_html_text(result, text);
  return result;
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
  std::string html = html_head(title, style) + "<body>\n<main>\n<h1>" + html_text(title) + "</h1>\n";
  for (std::size_t i = 0; i < pages.size(); ++i) {
    html += reflows ? "<section class=\"sheet\" aria-label=\"" : "<section aria-label=\"";
    html += html_text(pages[i].title) + "\">\n";
    html += write_svg_element(pages[i], fmt::format("page-{}-", i + 1));
    html += "</section>\n";
  }
  for (std::size_t i = 0; i < pages.size(); ++i)
    if (pages[i].reflow != nullptr)
      add_narrow_section(html, pages[i], i + 1);
  html += "</main>\n</body>\n</html>\n";
  return html;
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
  body.html += contents(document) + "<div id=\"narrow\"></div>\n";
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
  std::string html = html_head(document.title, style, script, pictures);
  html += "<body>\n<main>\n<h1>" + html_text(document.title) + "</h1>\n<p>" + html_text(document.about);
  html += "</p>\n";
  html += body.html;
  html += "</main>\n<footer>\n<p class=\"small\">" + html_words(document.foot);
  html += "</p>\n</footer>\n<script>";
  html += script;
  html += "</script>\n</body>\n</html>\n";
  return html;
}

} // namespace sheerpole
