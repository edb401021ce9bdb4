#include "driver/pdf/finish_pdf.hpp"

#include "base/code_point.hpp"

#include <algorithm>
#include <charconv>
#include <cstddef>
#include <cstdint>
#include <map>
#include <utility>

namespace sheerpole {

namespace {

constexpr std::size_t entry_size = 20; // of the table of objects, ISO 32000-1, 7.5.4

std::optional<std::size_t> number_at(std::string_view text, std::size_t at) {
  while (at < text.size() && text[at] == ' ')
    ++at;
  std::size_t value = 0;
  const auto [end, error] = std::from_chars(text.data() + at, text.data() + text.size(), value);
  return error == std::errc{} ? std::optional(value) : std::nullopt;
}

/// Where things are in a PDF of one table of objects.
struct Objects {
  std::size_t table = 0; ///< where it begins
  std::size_t count = 0;
  std::size_t first = 0; ///< its first entry
  std::size_t root = 0;  ///< number of the catalogue
  std::size_t info = 0;
};

std::optional<Objects> objects_of(std::string_view pdf) {
  Objects all;
  const std::size_t last = pdf.rfind("startxref\n");
  const auto table = last == std::string_view::npos ? std::nullopt : number_at(pdf, last + 10);
  constexpr std::string_view begin = "xref\n0 ";
  if (!table || *table >= pdf.size() || !pdf.substr(*table).starts_with(begin))
    return std::nullopt;
  const auto count = number_at(pdf, *table + begin.size());
  const std::size_t trailer = pdf.find("trailer", *table);
  const std::size_t root = pdf.find("/Root ", trailer);
  const std::size_t info = pdf.find("/Info ", trailer);
  if (!count || root == std::string_view::npos || info == std::string_view::npos)
    return std::nullopt;
  const auto root_number = number_at(pdf, root + 6);
  const auto info_number = number_at(pdf, info + 6);
  all.table = *table;
  all.count = *count;
  all.first = pdf.find('\n', *table + begin.size()) + 1;
  if (!root_number || !info_number || all.first + entry_size * all.count > trailer)
    return std::nullopt;
  all.root = *root_number;
  all.info = *info_number;
  return all;
}

/// The object of this number from its number on, up to and with its end; empty when it is none.
std::string_view object(std::string_view pdf, const Objects& all, std::size_t number) {
  const auto offset =
      number_at(pdf.substr(0, all.first + entry_size * all.count), all.first + entry_size * number);
  constexpr std::string_view end = "endobj\n";
  if (!offset || *offset >= pdf.size())
    return {};
  const std::size_t ends = pdf.find(end, *offset);
  return ends == std::string_view::npos ? std::string_view()
                                        : pdf.substr(*offset, ends + end.size() - *offset);
}

/// A text as a string of a PDF: UTF-16 behind its mark, in hexadecimal digits (7.9.2.2).
std::string pdf_text(std::string_view text) {
  constexpr std::string_view digits = "0123456789ABCDEF";
  std::string result = "<FEFF";
  const auto put = [&](std::uint32_t unit) {
    for (const unsigned shift : {12U, 8U, 4U, 0U})
      result += digits[(unit >> shift) & 0x0fU];
  };
  while (!text.empty()) {
    const CodePoint sign = first_code_point(text);
    const auto value = static_cast<std::uint32_t>(sign.value);
    if (value >= 0x10000) {
      put(0xd800U + ((value - 0x10000U) >> 10U));
      put(0xdc00U + ((value - 0x10000U) & 0x3ffU));
    } else {
      put(value);
    }
    text.remove_prefix(sign.bytes);
  }
  return result + ">";
}

/// The object with more in its dictionary, which begins as is said; nothing when it does not.
std::optional<std::string> with_more(std::string_view object, std::string_view begins,
                                     std::string_view more) {
  const std::size_t at = object.find("obj\n");
  if (at == std::string_view::npos || !object.substr(at + 4).starts_with(begins))
    return std::nullopt;
  std::string result(object);
  result.insert(at + 4 + begins.size(), more);
  return result;
}

void add_padded(std::string& out, std::size_t value, std::size_t width) {
  const std::string digits = std::to_string(value);
  out.append(width - std::min(width, digits.size()), '0');
  out += digits;
}

} // namespace

std::optional<std::string> finish_pdf(std::string& pdf, std::string_view language,
                                      const std::vector<std::string>& figures) {
  const auto all = objects_of(pdf);
  if (!all)
    return "the PDF has no table of its objects where one is looked for";
  std::map<std::size_t, std::string> changed;
  const auto catalogue = with_more(object(pdf, *all, all->root), "<< /Type /Catalog\n",
                                   "   /Lang (" + std::string(language) +
                                       ")\n   /ViewerPreferences << /DisplayDocTitle true >>\n");
  if (!catalogue)
    return "the PDF has no catalogue where one is looked for";
  changed[all->root] = *catalogue;
  std::size_t figure = 0;
  // Elements are numbered as they are begun.
  for (std::size_t i = 1; i < all->count; ++i) {
    constexpr std::string_view begins = "<< /Type /StructElem\n   /S /Figure\n";
    const auto with_words =
        with_more(object(pdf, *all, i), begins,
                  figure < figures.size() ? "   /Alt " + pdf_text(figures[figure]) + "\n" : std::string());
    if (!with_words)
      continue;
    ++figure;
    changed[i] = *with_words;
  }
  if (figure != figures.size())
    return "the PDF has other figures than were drawn";
  std::string table = "xref\n";
  for (auto& [number, bytes] : changed) {
    table += std::to_string(number) + " 1\n";
    add_padded(table, pdf.size(), 10);
    table += " 00000 n \n";
    pdf += bytes;
  }
  const std::size_t begins = pdf.size();
  pdf += table + "trailer\n<< /Size " + std::to_string(all->count) + "\n   /Root " +
         std::to_string(all->root) + " 0 R\n   /Info " + std::to_string(all->info) + " 0 R\n   /Prev " +
         std::to_string(all->table) + "\n>>\nstartxref\n" + std::to_string(begins) + "\n%%EOF\n";
  return std::nullopt;
}

} // namespace sheerpole
