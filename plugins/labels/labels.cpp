#include "plugins/labels/labels.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/card/card_piece.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/paper_identity.hpp"
#include "backend/paper_words.hpp"
#include "calculate/adjust/piece_history.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "wording/model_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <initializer_list>

namespace sheerpole {

namespace {

std::string_view side_word(Side side) {
  return side == Side::port ? " PORT" : side == Side::starboard ? " STARBOARD" : "";
}

/// Which end it is and where on the boat; within a stay of several pieces an end is nowhere.
std::string end_words(const char* end, const CardPiece& card, WhichEnd which) {
  const PieceEnd& made = which == WhichEnd::upper ? card.piece->upper : card.piece->lower;
  const bool of_stay =
      which == WhichEnd::upper ? card.piece->number == 1 : card.piece->number == card.piece->of;
  const std::string where =
      of_stay && card.stay->path.size() > 1 ? ", " + where_words(*card.rig, *card.stay, which) : "";
  return fmt::format("END {}{}{}{}", end, where, made.bare() ? "" : ": ", made.part_name(*card.rig));
}

/// What the record of a piece says of how it was made, not of what came later.
std::string said_of(const PieceHistory& history, std::string PieceRecord::*what) {
  const PieceEntry* made = history.last(PieceStage::made);
  return made == nullptr ? "" : made->record->*what;
}

std::string first_stated(std::initializer_list<std::string> texts) {
  for (const std::string& text : texts)
    if (!text.empty())
      return text;
  return {};
}

PieceLabel label_of(const CardPiece& card, const std::string& boat, bool aloft) {
  const std::vector<Particular>& of_stay = card.stay->particulars;
  PieceLabel label;
  label.stay = fmt::format(
      "{}{}{}", card.stay->base, side_word(card.stay->side),
      card.piece->of > 1 ? fmt::format(", piece {} of {}", card.piece->number, card.piece->of) : "");
  label.end = aloft ? end_words("ALOFT", card, WhichEnd::upper) : end_words("BELOW", card, WhichEnd::lower);
  if (const CardBury bury = card_bury(card, aloft ? WhichEnd::upper : WhichEnd::lower);
      bury.spare.parts != 0)
    label.end += ", spare bury " + card.amount(bury.spare);
  label.boat = boat;
  label.line =
      fmt::format("{}: {}, {}", card.line->name, card.line->construction.text, card.line->size.name);
  label.state = card.stamp;
  const std::size_t number = static_cast<std::size_t>(card.piece->number - 1);
  const PieceHistory history = piece_history(*card.rig, *card.of_stay, number);
  label.made = first_stated({said_of(history, &PieceRecord::date), fact_text(of_stay, fact_names.made)});
  label.job = first_stated({said_of(history, &PieceRecord::job), fact_text(of_stay, fact_names.job)});
  label.made_by =
      first_stated({said_of(history, &PieceRecord::by), fact_text(of_stay, fact_names.made_by)});
  label.batch = batch_of(*card.rig, *card.of_stay, number);
  // What was measured of the piece itself is its length, whatever it was to be; the state says how well
  // that is known which it was to be.
  if (const PieceEntry* measured = history.last_measured()) {
    label.length = fmt::format("bearing to bearing {}, {}{}", card.amount(measured->record->body->value),
                               name_of(measured->record->stage), led_by(" ", measured->record->date));
    label.state.clear();
  } else if (const std::string later =
                 label.made.empty() ? "" : layer_after(*card.rig, *card.stay, label.made);
             !later.empty())
    label.waits = fmt::format("length as made not on record; the file is {}", later);
  // A draft may still change, so its number is no record of what was made.
  else if (card.draft())
    label.waits =
        fmt::format("{}: cut nothing; {}, on its bench card", not_yet, reasons_counted(card.draft_reasons));
  else
    label.length = fmt::format("cut {}, bearing to bearing {}", card.amount_of_stay(card.cut),
                               card.amount_of_stay(card.body));
  return label;
}

constexpr double padding = 3.0;
constexpr double inside = label_width - 2.0 * padding;
/// The two rows at the foot of a label with what is written by hand.
constexpr double foot_row = 5.5;
constexpr double room_for_text = label_height_on_sheet - 2.0 * padding - 2.0 * foot_row;
/// Below this nobody reads it; what is still too long is broken off with dots.
constexpr double smallest = 0.5;

struct Lines {
  std::vector<std::string> lines;
  double size = 3.0; ///< em, millimetres
  bool bold = false;
};

std::vector<std::string> wrapped(const std::string& text, double size, double width, bool bold) {
  return wrap_label(text, size, width * wide_face_allowance, bold);
}

std::string broken_off(std::string line) {
  // Whole characters: what follows the first byte of one goes with it.
  for (int i = 0; i < 2 && !line.empty(); ++i) {
    while (!line.empty() && (static_cast<unsigned char>(line.back()) & 0xC0) == 0x80)
      line.pop_back();
    if (!line.empty())
      line.pop_back();
  }
  return line + "…";
}

double height_of(const std::vector<Lines>& texts) {
  double height = 0.0;
  for (const Lines& text : texts)
    height += text.size * line_spacing * static_cast<double>(text.lines.size());
  return height;
}

/// The texts of a label at one scale; with `most` no text has more lines than that.
std::vector<Lines> set_texts(const PieceLabel& label, double scale, std::size_t most) {
  std::vector<Lines> result;
  const auto add = [&](const std::string& text, double size, bool bold) {
    Lines set{wrapped(text, size * scale, inside, bold), size * scale, bold};
    if (set.lines.size() > most) {
      set.lines.resize(most);
      set.lines.back() = broken_off(set.lines.back());
    }
    result.push_back(std::move(set));
  };
  add(label.stay, 5.0, true);
  add(label.end, 3.2, true);
  add(label.boat, 3.2, false);
  add(label.line, 2.8, false);
  if (label.length.empty())
    add(label.waits, 2.8, true);
  else
    add(label.length + led_by("; ", label.state), 2.8, false);
  return result;
}

/// As large as they can be so that all fit.
std::vector<Lines> fitted_texts(const PieceLabel& label) {
  constexpr std::size_t any_number = 1000;
  for (double scale = 1.0; scale >= smallest; scale -= 0.05)
    if (auto texts = set_texts(label, scale, any_number); height_of(texts) <= room_for_text)
      return texts;
  for (std::size_t most = 3; most > 1; --most)
    if (auto texts = set_texts(label, smallest, most); height_of(texts) <= room_for_text)
      return texts;
  return set_texts(label, smallest, 1);
}

/// What is written by hand where the file does not say it: words, and a line to write on or the value.
void draw_entry(const char* words, const std::string& value, PaperPoint at, double width,
                ShapeGroup& into) {
  TextShape text{at, words, 2.6, TextAnchor::start, false, ""};
  if (value.empty()) {
    const double from = label_box(text).right + 0.5;
    into.add(text);
    into.add(LineShape{{from, at.y + 0.4},
                       {at.x + width - 1.5, at.y + 0.4},
                       {.stroke_width = 0.2, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}},
                       ""});
    return;
  }
  text.text += " " + value;
  auto lines = wrapped(text.text, text.size, width - 1.5, false);
  for (; lines.size() > 1 && text.size > 1.6; text.size -= 0.1)
    lines = wrapped(text.text, text.size, width - 1.5, false);
  text.text = lines.size() > 1 ? broken_off(lines.front()) : lines.front();
  into.add(std::move(text));
}

void draw_label(const PieceLabel& label, PaperPoint corner, ShapeGroup& into) {
  const double left = corner.x + padding;
  double y = corner.y + padding;
  for (const Lines& text : fitted_texts(label))
    for (const std::string& line : text.lines) {
      into.add(TextShape{{left, y + text.size}, line, text.size, TextAnchor::start, text.bold, ""});
      y += text.size * line_spacing;
    }
  const double half = inside / 2.0;
  const double lower = corner.y + label_height_on_sheet - padding - 0.8;
  const double upper = lower - foot_row;
  draw_entry("made:", label.made, {left, upper}, half, into);
  draw_entry("by:", label.made_by, {left + half, upper}, half, into);
  draw_entry("job:", label.job, {left, lower}, half, into);
  draw_entry("batch:", label.batch, {left + half, lower}, half, into);
}

void draw_cut_lines(PaperPoint corner, int rows, ShapeGroup& into) {
  const ShapeStyle dashed{.stroke_width = 0.15, .stroke_grey = 0.4, .dashes = {2.0, 1.5}, .fill_grey = {}};
  const double right = corner.x + labels_beside * label_width;
  const double bottom = corner.y + rows * label_height_on_sheet;
  for (int row = 0; row <= rows; ++row) {
    const double y = corner.y + row * label_height_on_sheet;
    into.add(LineShape{{corner.x, y}, {right, y}, dashed, ""});
  }
  for (int column = 0; column <= labels_beside; ++column) {
    const double x = corner.x + column * label_width;
    into.add(LineShape{{x, corner.y}, {x, bottom}, dashed, ""});
  }
}

} // namespace

std::vector<PieceLabel> piece_labels(const CheckedRig& checked) {
  const std::string boat = boat_title(checked);
  std::vector<PieceLabel> labels;
  for (const CardPiece& card : card_pieces(checked)) {
    labels.push_back(label_of(card, boat, true));
    labels.push_back(label_of(card, boat, false));
  }
  return labels;
}

std::vector<Drawing> label_pages(const std::vector<PieceLabel>& labels, const std::string& boat,
                                 const std::string& identity, PaperSize size) {
  PageFlow page(size, {.name = "Labels of 90 x 40 mm, print at full size", .about = identity, .draft = {}});
  // A long name of the boat takes more lines of the foot, and a row of labels from the sheet.
  const auto below = std::min<std::size_t>(
      labels_below, static_cast<std::size_t>((page.height() + 0.01) / label_height_on_sheet));
  const std::size_t on_a_sheet = labels_beside * below;
  for (std::size_t first = 0; first < labels.size(); first += on_a_sheet) {
    if (first > 0)
      page.new_page();
    const std::size_t count = std::min(on_a_sheet, labels.size() - first);
    const int rows = static_cast<int>((count + labels_beside - 1) / labels_beside);
    page.drawing(rows * label_height_on_sheet, [&](ShapeGroup& group, PaperPoint corner) {
      draw_cut_lines(corner, rows, group);
      for (std::size_t i = 0; i < count; ++i)
        draw_label(labels[first + i],
                   {corner.x + static_cast<double>(i % labels_beside) * label_width,
                    corner.y + static_cast<double>(i / labels_beside) * label_height_on_sheet},
                   group);
    });
  }
  if (labels.empty())
    page.text("The rig file states no line to put a label on.");
  return page.pages("Labels of " + boat, "Labels to cut apart, one for each end of each piece of line.");
}

Labels::Labels()
    : PagesBackend(
          {"labels", "labels", "Labels",
           "labels to cut apart, one for each end of each piece: what it is, when and by whom made"}) {}

std::vector<Drawing> Labels::pages(const BackendRequest& request, const std::string& boat) const {
  return label_pages(piece_labels(request.checked), boat, identity_words(request.checked), request.paper);
}

} // namespace sheerpole
