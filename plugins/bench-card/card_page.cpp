#include "plugins/bench-card/card_page.hpp"

#include "backend/drawing/label_box.hpp"
#include "backend/drawing/wrap_label.hpp"
#include "calculate/length_text.hpp"
#include "plugins/bench-card/card_steps.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

std::string side_words(const Stay& stay) {
  switch (stay.side) {
  case Side::port:
    return "PORT side";
  case Side::starboard:
    return "STARBOARD side";
  case Side::centre:
    break;
  }
  return "centreline";
}

/// The reasons, those with the same mend together.
std::vector<std::string> draft_lines(const CardPiece& card) {
  std::vector<std::string> lines;
  std::vector<std::string> mends;
  for (const DraftReason& reason : card.draft_reasons) {
    const auto same = std::find(mends.begin(), mends.end(), reason.mend);
    if (same == mends.end()) {
      mends.push_back(reason.mend);
      lines.push_back(reason.reason);
    } else {
      lines[static_cast<std::size_t>(same - mends.begin())] += "; " + reason.reason;
    }
  }
  for (std::size_t i = 0; i < lines.size(); ++i)
    if (!mends[i].empty())
      lines[i] += ": " + mends[i];
  return lines;
}

/// How well the length is known, by the worst case; or that nobody has said.
std::string known_to(const CardPiece& card) {
  const auto& found = card.of_stay->uncertainty;
  if (!found || card.stay->stack[card.item].line_length)
    return "Known to: no bound is stated for what it rests on.";
  return fmt::format("Known to {} / +{} mm at worst.", format_millimetres(found->worst_low),
                     format_millimetres(found->worst_high));
}

void add_head(const CardPiece& card, PageFlow& page) {
  const std::string& title = card.stay->title;
  page.text("BENCH CARD   " + card.piece->name, {.size = 7.0, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}{}{}", title.empty() ? "" : title + ", ", side_words(*card.stay),
                        card.piece->of > 1
                            ? fmt::format(", piece {} of {} from aloft", card.piece->number, card.piece->of)
                            : ""),
            {.size = 4.5, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}{}: {}, {}", card.line->name,
                        card.line->title.empty() ? "" : " \"" + card.line->title + "\"",
                        card.line->construction, card.line->size.name),
            {.size = 4.0, .bold = false, .indent = 0.0});
  page.space(1.5);
  page.text(fmt::format("CUT  {} mm{}", card_text(card.cut), card.complete ? "" : "   INCOMPLETE"),
            {.size = 9.0, .bold = true, .indent = 0.0});
  page.text(known_to(card) + " All lengths on this card are in millimetres, zero at the cut end aloft.",
            {.size = 3.2, .bold = false, .indent = 0.0});
  page.space(2.0);
}

/// The piece lying on the bench, its marks with their numbers. Not to scale: marks stand at equal
/// distances.
void draw_piece(const CardPiece& card, double width, PaperPoint at, ShapeGroup& into) {
  const ShapeStyle heavy{.stroke_width = 1.1, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
  const ShapeStyle thin{.stroke_width = 0.35, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
  constexpr double label_room = 18.0;
  const double y = at.y + 8.0;
  const double left = at.x + label_room;
  const double right = at.x + width - label_room;
  into.add(TextShape{{at.x, y + 1.2}, "ALOFT", 3.4, TextAnchor::start, true, ""});
  into.add(TextShape{{at.x + width, y + 1.2}, "BELOW", 3.4, TextAnchor::end, true, ""});
  into.add(LineShape{{left, y}, {right, y}, heavy, ""});
  const std::size_t count = std::max<std::size_t>(card.marks.size(), 2);
  for (std::size_t i = 0; i < card.marks.size(); ++i) {
    const double x = left + (right - left) * static_cast<double>(i) / static_cast<double>(count - 1);
    const bool end = i == 0 || i + 1 == card.marks.size();
    into.add(LineShape{{x, y - (end ? 3.5 : 2.2)}, {x, y + (end ? 3.5 : 2.2)}, thin, ""});
    into.add(TextShape{{x, y - 4.0}, std::to_string(i + 1), 3.2, TextAnchor::middle, true, ""});
  }
  into.add(TextShape{{at.x + width / 2.0, y + 7.0},
                     "not to scale; the numbers are those of the table",
                     2.6,
                     TextAnchor::middle,
                     false,
                     ""});
}

std::string joined(const std::vector<std::string>& words) {
  std::string text;
  for (const std::string& one : words)
    text += (text.empty() ? "" : "; ") + one;
  return text;
}

/// What the cut leaves out because the file says nothing of it, and what would move it if it were known.
void add_left_out(const CardPiece& card, PageFlow& page) {
  constexpr TextLook look{.size = 2.8, .bold = false, .indent = 0.0};
  if (!card.piece->not_counted.empty())
    page.text("Not in the cut: " + joined(card.piece->not_counted) + ".", look);
  if (!card.of_stay->not_corrected.empty())
    page.text("The reading is not corrected for: " + joined(card.of_stay->not_corrected) + ".", look);
  std::vector<std::string> eyes;
  if (!card.piece->above.note.empty())
    eyes.push_back("aloft, " + card.piece->above.note);
  if (!card.piece->below.note.empty())
    eyes.push_back("below, " + card.piece->below.note);
  if (!eyes.empty())
    page.text("Eyes: " + joined(eyes) + ".", look);
}

void add_marks(const CardPiece& card, PageFlow& page) {
  page.drawing(17.0, [&](ShapeGroup& group, PaperPoint at) { draw_piece(card, page.width(), at, group); });
  FlowTable table{.columns = {{"no.", 0.6},
                              {"mark", 3.9},
                              {"from aloft", 1.5, true},
                              {"from below", 1.5, true},
                              {"done", 0.9},
                              {"as made", 1.4}},
                  .rows = {},
                  .size = 3.6};
  for (std::size_t i = 0; i < card.marks.size(); ++i)
    table.rows.push_back({{.text = std::to_string(i + 1)},
                          {.text = card.marks[i].name},
                          {.text = card_text(card.marks[i].from_aloft), .bold = true},
                          {.text = card_text(card.marks[i].from_below)},
                          {.text = "", .tick = true},
                          {.text = "", .rule = true}});
  page.table(table);
  for (const std::string& unknown : card.piece->bench.not_known)
    page.text("No mark: " + unknown, {.size = 3.0, .bold = false, .indent = 0.0});
  add_left_out(card, page);
  page.text(fmt::format("By hand: body {} {} {} for the ends{} = {} mm.", card_text(card.body),
                        card.ends < 0 ? "-" : "+", card.ends < 0 ? -card.ends : card.ends,
                        card.behaves == 0 ? ""
                                          : fmt::format(" {} {} for the line", card.behaves < 0 ? "-" : "+",
                                                        card.behaves < 0 ? -card.behaves : card.behaves),
                        card_text(card.cut)),
            {.size = 3.6, .bold = true, .indent = 0.0});
}

/// "thimble-16 > LINE > deadeye-38 > lashing-260 set to 160 mm".
std::string stack_words(const CardPiece& card) {
  std::string words;
  for (std::size_t i = 0; i < card.stay->stack.size(); ++i) {
    const StackItem& item = card.stay->stack[i];
    words += words.empty() ? "" : "  >  ";
    if (item.kind == StackItem::Kind::line) {
      words += i == card.item ? "THIS PIECE" : "line";
      continue;
    }
    words += (item.count > 1 ? std::to_string(item.count) + " x " : "") + (*card.rig)[item.part].name;
    if (item.set_length)
      words += " set to " + length_text(item.set_length->value);
  }
  return words;
}

void add_work(const CardPiece& card, PageFlow& page) {
  page.heading("In this order", 4.2);
  for (const CardStep& step : card_steps(card)) {
    if (!step.stop) {
      page.tick(step.text, {.size = 3.4, .bold = false, .indent = 0.0});
      continue;
    }
    page.notice(step.text, {.size = 3.8, .bold = true, .indent = 0.0});
    page.to_write("Marked and dry-fitted by, day:", {.size = 3.2, .bold = false, .indent = 0.0});
    page.to_write("Measured a second time by, day:", {.size = 3.2, .bold = false, .indent = 0.0});
    page.space(1.5);
  }
  page.to_write("As made, bearing to bearing, mm; load; temperature; day:",
                {.size = 3.2, .bold = false, .indent = 0.0});
}

void add_cautions(PageFlow& page) {
  page.space(2.0);
  page.text(
      "A loaded line and a loaded terminal can maim. One stay at a time, and hold the mast by something "
      "else meanwhile. This card follows from the rig file and nothing else: nobody has judged whether "
      "the rig is strong enough. Local codes and a licensed professional rigger come before it.",
      {.size = 2.8, .bold = false, .indent = 0.0});
}

} // namespace

std::vector<Drawing> card_pages(const CardPiece& card, const std::string& boat, PaperSize size) {
  PageFlow page(size,
                {.name = "Bench card " + card.piece->name, .about = boat, .draft = draft_lines(card)});
  add_head(card, page);
  add_marks(card, page);
  page.text("From aloft: " + stack_words(card), {.size = 3.0, .bold = false, .indent = 0.0});
  add_work(card, page);
  add_cautions(page);
  return page.pages("Bench card of " + card.piece->name,
                    "What to mark on this piece, in which order to make it, and where to sign.");
}

} // namespace sheerpole
