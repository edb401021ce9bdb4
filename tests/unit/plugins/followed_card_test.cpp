// A bench card followed by whoever stands at the bench: of pieces at random the texts of the drawn page
// (SVG) are read, the printed steps are done one after the other with the printed numbers, and what comes
// out is held against the body and the cut as they are worked here from the numbers that were put into the
// rig.
#include "backend/card/card_in_hand.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "backend/not_yet.hpp"
#include "plugins/bench-card/bench_card.hpp"
#include "unit/calculate/compiled_rig.hpp"
#include "unit/page/page_boxes.hpp"
#include "units/quantity_text.hpp"

#include <fmt/format.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>
#include <regex>
#include <string>
#include <vector>

namespace sheerpole::followed_card_test {
namespace {

constexpr double inch = 25.4; // mm; ISO 80000-3, annex

// ---- What is read from the page ----

struct Printed {
  double x = 0.0, y = 0.0, size = 0.0;
  std::string anchor; ///< empty: start
  std::string text;
};

double attribute(const std::string& element, const std::string& name) {
  const std::size_t at = element.find(" " + name + "=\"");
  return at == std::string::npos ? 0.0 : std::stod(element.substr(at + name.size() + 3));
}

std::string plain(std::string text) {
  for (const auto& [code, sign] : {std::pair{"&quot;", "\""}, {"&lt;", "<"}, {"&gt;", ">"}, {"&amp;", "&"}})
    for (std::size_t at = text.find(code); at != std::string::npos; at = text.find(code, at + 1))
      text.replace(at, std::char_traits<char>::length(code), sign);
  return text;
}

/// The texts of an SVG, in the order in which they are drawn.
std::vector<Printed> texts_of(const std::string& svg) {
  std::vector<Printed> texts;
  for (std::size_t at = svg.find("<text "); at != std::string::npos; at = svg.find("<text ", at + 1)) {
    const std::size_t end = svg.find('>', at);
    const std::string element = svg.substr(at, end - at);
    Printed one{attribute(element, "x"), attribute(element, "y"), attribute(element, "font-size"), "", ""};
    for (const char* anchor : {"middle", "end"})
      if (element.find(std::string("text-anchor=\"") + anchor) != std::string::npos)
        one.anchor = anchor;
    std::string words = svg.substr(end + 1, svg.find("</text>", end) - end - 1);
    for (std::size_t span = words.find('<'); span != std::string::npos; span = words.find('<'))
      words.erase(span, words.find('>', span) + 1 - span);
    one.text = without_thin_blanks(plain(std::move(words)));
    texts.push_back(std::move(one));
  }
  return texts;
}

/// One row of the table of marks.
struct Row {
  std::string name;
  std::string first;
  std::string second;
};

struct Card {
  std::map<int, Row> marks;       ///< by their numbers
  std::vector<std::string> steps; ///< whole, without their numbers; STOP among them
  std::string words;              ///< all of it
};

bool goes_on(const Printed& above, const Printed& below) {
  return above.anchor == below.anchor && above.size == below.size && std::abs(above.x - below.x) < 0.01 &&
         std::abs(below.y - above.y - above.size * line_spacing) < 0.02;
}

void read_page(const std::vector<Printed>& texts, Card& card) {
  const std::regex number("[0-9]+");
  for (std::size_t i = 0; i < texts.size(); ++i) {
    const Printed& one = texts[i];
    card.words += one.text + " ";
    if (one.anchor == "middle" && std::abs(one.x - page_margin - 3.0) < 0.01 &&
        std::regex_match(one.text, number) && i + 3 < texts.size() && texts[i + 2].anchor == "end" &&
        texts[i + 3].anchor == "end")
      card.marks[std::stoi(one.text)] = {texts[i + 1].text, texts[i + 2].text, texts[i + 3].text};
    if (one.text == "STOP")
      card.steps.emplace_back("STOP");
    // Its number in the margin, its words beside it.
    const bool begins = one.anchor == "end" && one.x < page_margin + 10.0 &&
                        std::regex_match(one.text, number) && i + 1 < texts.size() &&
                        texts[i + 1].anchor.empty() && texts[i + 1].y == one.y;
    if (!begins)
      continue;
    std::string whole = texts[i + 1].text;
    for (std::size_t next = i + 2; next < texts.size() && goes_on(texts[next - 1], texts[next]); ++next)
      whole += " " + texts[next].text;
    card.steps.push_back(std::move(whole));
  }
}

Card read_card(const std::vector<Drawing>& pages) {
  Card card;
  for (const Drawing& page : pages)
    read_page(texts_of(write_svg(page)), card);
  return card;
}

/// `42' 7 11/16"`, `25 1/2"`, "648": mm.
double printed_mm(std::string text, bool metric) {
  if (metric)
    return std::stod(text);
  double sum = 0.0;
  if (const std::size_t feet = text.find('\''); feet != std::string::npos) {
    sum = 12.0 * std::stod(text.substr(0, feet));
    text.erase(0, feet + 1);
  }
  text.erase(std::remove(text.begin(), text.end(), '"'), text.end());
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    const std::string word = text.substr(at, end - at);
    if (const std::size_t slash = word.find('/'); slash != std::string::npos)
      sum += std::stod(word.substr(0, slash)) / std::stod(word.substr(slash + 1));
    else if (!word.empty())
      sum += std::stod(word);
    at = end + 1;
  }
  return sum * inch;
}

/// A cell or an amount with X in it, X taken as `x`: "X - 24", "648 past" is 648 outside, "35 inside".
double place_mm(std::string text, double x, bool metric) {
  double sign = 1.0;
  double sum = 0.0;
  const auto ends = [&](const std::string& word) {
    if (!text.ends_with(word))
      return false;
    text.erase(text.size() - word.size());
    return true;
  };
  ends(" mm");
  if (ends(" past"))
    sign = -1.0;
  else
    ends(" inside");
  if (text.starts_with("X")) {
    sum = x;
    text.erase(0, 1);
    if (text.starts_with(" - "))
      sign = -1.0;
    text.erase(0, std::min<std::size_t>(3, text.size()));
  }
  return text.empty() ? sum : sum + sign * printed_mm(text, metric);
}

// ---- What is put into the rig ----

enum class Sort { rope, wire, rope_by_cord, wire_by_cord, draft };

struct Chosen {
  Sort sort = Sort::rope;
  std::string unit = "millimetres";
  double length = 0.0; ///< between the pins, mm; of a cord from U to L
  double upper_part = 0.0, lower_part = 0.0;
  std::array<double, 2> bury{}, spare{}, taper{}, inserted{};
  double wrap = 0.0;
  double contraction = 0.0; ///< share
  std::string title;        ///< of the stay and of the parts

  bool wire() const { return sort == Sort::wire || sort == Sort::wire_by_cord; }
  bool by_cord() const { return sort == Sort::rope_by_cord || sort == Sort::wire_by_cord; }
  bool metric() const { return unit == "millimetres"; }
  double step() const { return metric() ? 1.0 : inch / 32.0; }
  double body() const { return length - upper_part - lower_part; }
  double drawn_in() const { return contraction * (bury[0] + spare[0] + bury[1] + spare[1]); }
  double cut() const {
    if (wire())
      return body() + inserted[0] + inserted[1];
    return body() + drawn_in() + 2.0 * wrap + bury[0] + spare[0] + bury[1] + spare[1];
  }
};

constexpr double seat = 28.0;        ///< its diameter
constexpr double seat_throat = 38.0; ///< from its middle to its throat
constexpr double crown_to_throat = seat / 2.0 + seat_throat;

std::string mm(double value) {
  return fmt::format("{:.1f} mm", value);
}

std::string rig_of(const Chosen& chosen) {
  // Parts of any size: what is usual is not asked for.
  std::string text = "language 1\nboat \"Ray\" { }\nlimits {\n  second-measure: off\n  size-off: off\n  "
                     "size-far-off: off\n}\n";
  if (chosen.by_cord())
    text += "cord red { }\n";
  text += "shop own {\n  unit: " + chosen.unit + (chosen.metric() ? "\n}\n" : "\n  round-to: 1/32 in\n}\n");
  const std::string title = " \"" + chosen.title + "\"";
  for (const auto& [name, length] :
       {std::pair{"upper-link", chosen.upper_part}, {"lower-link", chosen.lower_part}})
    text += fmt::format("link {}{} {{\n  length: {}\n}}\n", name, title, mm(length));
  if (chosen.wire()) {
    text += "wire line-1 {\n  construction: \"1x19\"\n  size: \"6 mm\"\n}\n";
    for (std::size_t end = 0; end < 2; ++end)
      text += fmt::format("terminal {}-end{} {{\n  length: 0 mm\n  lower: wire-socket (inserted: {})\n}}\n",
                          end == 0 ? "aloft" : "below", title, mm(chosen.inserted[end]));
  } else {
    text += "rope line-1 {\n  construction: \"12-strand HMPE\"\n  size: \"9 mm\"\n}\n";
    for (std::size_t end = 0; end < 2; ++end)
      text += fmt::format("splice {}-splice {{\n  bury: {}\n  taper-over: {}\n  eye-allowance: {}\n{}}}\n",
                          end == 0 ? "aloft" : "below", mm(chosen.bury[end]), mm(chosen.taper[end]),
                          mm(chosen.wrap),
                          chosen.sort == Sort::draft
                              ? ""
                              : fmt::format("  contraction: {:.1f} %\n", chosen.contraction * 100.0));
    text +=
        fmt::format("thimble eye{} {{\n  length: 0 mm\n  lower: rope-seat (diameter: {}, throat: {})\n}}\n",
                    title, mm(seat), mm(seat_throat));
  }
  text += "stay stay-1" + title + " {\n  line: line-1\n";
  if (!chosen.by_cord())
    text += "  pin-to-pin: " + mm(chosen.length) + " measured\n";
  text +=
      chosen.wire()
          ? "  stack {\n    upper-link\n    aloft-end\n    line\n    below-end\n    lower-link\n  }\n}\n"
          : fmt::format("  stack {{\n    upper-link\n    eye (splice: aloft-splice, spare-bury: {})\n    "
                        "line\n    eye (splice: below-splice, spare-bury: {})\n    lower-link\n  }}\n}}\n",
                        mm(chosen.spare[0]), mm(chosen.spare[1]));
  if (chosen.by_cord())
    text += "reading of stay-1 {\n  method: messenger\n  cord: red\n  knots: 2\n}\n";
  return text;
}

/// A number of tenths of a millimetre.
double tenths(int least, int most) {
  return *rc::gen::inRange(least, most + 1) / 10.0;
}

Chosen any_chosen() {
  Chosen chosen;
  chosen.sort = *rc::gen::element(Sort::rope, Sort::rope, Sort::wire, Sort::rope_by_cord,
                                  Sort::wire_by_cord, Sort::draft);
  chosen.unit = *rc::gen::element<std::string>("millimetres", "inches", "feet-and-inches");
  chosen.length = tenths(60'000, 180'000);
  chosen.upper_part = tenths(0, 2500);
  chosen.lower_part = tenths(0, 6500);
  for (std::size_t end = 0; end < 2; ++end) {
    chosen.bury[end] = tenths(4'600, 8'000);
    chosen.spare[end] = tenths(1, 9'000);
    chosen.taper[end] = tenths(500, 2'000);
    chosen.inserted[end] = tenths(300, 700);
  }
  // No more than three diameters of the rope from the shape of the seat, 87.4 mm: beyond it is a DRAFT.
  chosen.wrap = tenths(900, 1'144);
  chosen.contraction = *rc::gen::inRange(0, 120) / 1000.0;
  chosen.title = *rc::gen::element<std::string>(
      "Cap", "Upper shroud, continuous over both tips of both spreaders, aft of the lowers",
      "Fockstagwirbelschaekelbolzensicherungsring am Vorschiff, \xC3\x9C"
      "bergr\xC3\xB6\xC3\x9F"
      "e",
      "W W W W W W W W W W W W W W W W W W W W W W W W W W W W W W W W W W W W");
  return chosen;
}

// ---- What is done with it ----

std::string step_with(const Card& card, const std::string& words) {
  for (const std::string& step : card.steps)
    if (step.find(words) != std::string::npos)
      return step;
  return {};
}

std::size_t place_of(const Card& card, const std::string& words) {
  std::size_t i = 0;
  while (i < card.steps.size() && card.steps[i].find(words) == std::string::npos)
    ++i;
  return i;
}

std::smatch matched(const std::string& text, const std::string& pattern) {
  static std::string kept; // what the match points into
  kept = text;
  std::smatch found;
  RC_LOG() << "looked for " << pattern << " in:\n" << text << "\n";
  RC_ASSERT(std::regex_search(kept, found, std::regex(pattern)));
  return found;
}

/// Two numbers of a step, as in "Bring 3 to 4".
std::pair<int, int> two_marks(const std::string& step, const std::string& pattern) {
  const std::smatch found = matched(step, pattern);
  return {std::stoi(found[1]), std::stoi(found[2])};
}

/// Where each mark is made, mm from the end aloft of the card: by the nearer column, and the other agrees.
std::map<int, double> marks_made(const Card& card, const Chosen& chosen) {
  std::map<int, double> made;
  double whole = chosen.length;
  if (!chosen.by_cord()) {
    const std::string checked = step_with(card, "The two columns add up to ");
    whole = place_mm(matched(checked, "add up to (.*?)\\.(?: |$)")[1], 0.0, chosen.metric());
  }
  for (const auto& [number, row] : card.marks) {
    const double from_aloft = place_mm(row.first, chosen.length, chosen.metric());
    const double from_below = whole - place_mm(row.second, chosen.length, chosen.metric());
    RC_ASSERT(std::abs(from_aloft - from_below) < 1e-6);
    made[number] = from_aloft;
  }
  return made;
}

struct Made {
  double cut = 0.0;
  double body = 0.0;
};

double drawn_in_by(const Chosen& chosen, std::size_t end) {
  return chosen.contraction * (chosen.bury[end] + chosen.spare[end]);
}

/// One eye as its step says; returns where its crown lies on the line.
double crown_of(const Card& card, const std::map<int, double>& marks, const Chosen& chosen, bool aloft) {
  const double way = aloft ? 1.0 : -1.0;
  const std::size_t end = aloft ? 0 : 1;
  const std::string step = step_with(card, aloft ? "Aloft: " : "Below: ");
  const auto [on_tail, standing] = two_marks(step, "Bring ([0-9]+) to ([0-9]+)\\.");
  const auto [in, out] = two_marks(step, "Bury from ([0-9]+), out at ([0-9]+)\\.");
  const int taper = std::stoi(matched(step, "Taper from ([0-9]+)")[1]);
  const int cut_end = aloft ? marks.begin()->first : marks.rbegin()->first;
  const double slack = chosen.step() + 1e-6; // each mark is rounded, and the last one closes the sum
  RC_ASSERT(in == standing);
  const double tail = way * (marks.at(on_tail) - marks.at(cut_end));
  RC_ASSERT(std::abs(tail - chosen.bury[end] - chosen.spare[end]) <= 2.0 * slack);
  // On the unopened line it comes out as far inside as it is long.
  RC_ASSERT(std::abs(way * (marks.at(out) - marks.at(in)) - tail) <= 2.0 * slack);
  RC_ASSERT(std::abs(way * (marks.at(taper) - marks.at(cut_end)) - chosen.taper[end]) <= 2.0 * slack);
  const double crown = marks.at(standing) - way * crown_to_throat;
  RC_ASSERT(std::abs(way * (crown - marks.at(on_tail)) - chosen.wrap) <= 2.0 * slack);
  return crown + way * drawn_in_by(chosen, end);
}

Made follow_rope(const Card& card, const Chosen& chosen) {
  const auto marks = marks_made(card, chosen);
  // Seized, hung, and only then cut and opened.
  const std::size_t stop = place_of(card, "STOP");
  RC_ASSERT(place_of(card, "seize both eyes") < stop && stop < place_of(card, "Cut at "));
  RC_ASSERT(place_of(card, "Bury from") > stop && place_of(card, "Lock ") > place_of(card, "Below: "));
  Made made;
  const auto [first, last] = two_marks(step_with(card, "Cut at "), "Cut at ([0-9]+) and at ([0-9]+):");
  made.cut = marks.at(last) - marks.at(first);
  made.body = crown_of(card, marks, chosen, false) - crown_of(card, marks, chosen, true);
  return made;
}

Made follow_wire(const Card& card, const Chosen& chosen) {
  const auto marks = marks_made(card, chosen);
  RC_ASSERT(marks.size() == 4u);
  const std::size_t stop = place_of(card, "STOP");
  RC_ASSERT(stop < place_of(card, "Cut at ") && place_of(card, "Cut at ") < place_of(card, "Below: put"));
  int aloft = 2;
  if (chosen.by_cord()) {
    // The end aloft is closed before the wire is laid out, and the cut counts from its mouth.
    RC_ASSERT(place_of(card, "Close the end aloft first") < place_of(card, "Lay the cord along it"));
    const std::smatch cut =
        matched(step_with(card, "Cut at "), "Cut at mark ([0-9]+), (.*) from the mouth");
    const double from_mouth = place_mm(cut[2], chosen.length, chosen.metric());
    RC_ASSERT(std::abs(from_mouth - (marks.at(std::stoi(cut[1])) - marks.at(2))) < 1e-6);
  } else {
    const std::smatch put = matched(step_with(card, "Aloft: put"), "to mark ([0-9]+), (.*) deep\\.");
    aloft = std::stoi(put[1]);
    RC_ASSERT(std::abs(place_mm(put[2], 0.0, chosen.metric()) - chosen.inserted[0]) <= chosen.step());
  }
  const std::smatch put = matched(step_with(card, "Below: put"), "to mark ([0-9]+), (.*) deep\\.");
  // Of a wire by a cord the cut end below closes the sum of the card.
  RC_ASSERT(std::abs(place_mm(put[2], 0.0, chosen.metric()) - chosen.inserted[1]) <= 2.0 * chosen.step());
  return {marks.at(4) - marks.at(1), marks.at(std::stoi(put[1])) - marks.at(aloft)};
}

void expect_draft(const Card& card) {
  RC_ASSERT(card.words.find("DRAFT, NOT FOR CUTTING") != std::string::npos);
  RC_ASSERT(card.words.find(not_yet()) != std::string::npos);
  RC_ASSERT(card.words.find("contraction of splice") != std::string::npos); // what would release it
  RC_ASSERT(card.marks.empty());
  for (const char* step : {"STOP", "Cut at ", "Bury from", "Make marks"})
    RC_ASSERT(step_with(card, step).empty());
}

/// No text on another or beyond the margins, no length broken over two lines.
void expect_set(const std::vector<Drawing>& pages) {
  expect_well_set(pages);
  RC_ASSERT(!testing::Test::HasFailure());
  for (const Drawing& page : pages) {
    const std::vector<Printed> texts = texts_of(write_svg(page));
    for (std::size_t i = 0; i + 1 < texts.size(); ++i)
      if (goes_on(texts[i], texts[i + 1])) {
        const std::string whole = texts[i].text + " " + texts[i + 1].text;
        if (blank_in_quantity(whole, texts[i].text.size()))
          RC_FAIL("broken: " + texts[i].text + " | " + texts[i + 1].text);
      }
  }
}

void follow_one() {
  const Chosen chosen = any_chosen();
  const Compilation boat = test::compiled(rig_of(chosen));
  RC_ASSERT(boat.checked.has_value());
  const auto cards = card_pieces(*boat.checked);
  RC_ASSERT(cards.size() == 1u);
  expect_set(card_pages(cards.front(), "A boat", PaperSize::letter));
  const auto pages = card_pages(cards.front(), "A boat", PaperSize::a4);
  expect_set(pages);
  RC_ASSERT(pages.size() <= 2u);
  const Card card = read_card(pages);
  if (chosen.sort == Sort::draft) {
    expect_draft(card);
    return;
  }
  const Made made = chosen.wire() ? follow_wire(card, chosen) : follow_rope(card, chosen);
  // The cut is the sum of rows of 0.1 mm, which every paper has, and is rounded to the step of the card; a
  // mark near the end below by itself and with the cut.
  constexpr double of_rows = 14.0 * 0.05;
  RC_ASSERT(std::abs(made.cut - chosen.cut()) <= 0.5 * chosen.step() + of_rows + 1e-6);
  RC_ASSERT(std::abs(made.body - chosen.body()) <= 1.5 * chosen.step() + of_rows + 1e-6);
  // What the card says it should come out at, in words.
  const std::string again = step_with(card, "Measure again");
  const double wanted = place_mm(matched(again, ": (.*) from (?:bearing to bearing|mouth to mouth)")[1],
                                 chosen.length, chosen.metric());
  if (chosen.wire()) // what the card says is what its marks make
    RC_ASSERT(std::abs(wanted - made.body) <= 1e-6);
  else
    RC_ASSERT(std::abs(wanted - chosen.body()) <= 0.5 * chosen.step() + of_rows + 1e-6);
}

// Two pieces each time: 200 in all.
RC_GTEST_PROP(FollowedCard, ArrivesAtTheBodyAndTheCut, ()) {
  follow_one();
  follow_one();
}

} // namespace
} // namespace sheerpole::followed_card_test
