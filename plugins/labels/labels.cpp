#include "plugins/labels/labels.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/card/card_piece.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/drawing/qr_code.hpp"
#include "backend/paper_identity.hpp"
#include "backend/paper_words.hpp"
#include "calculate/adjust/piece_history.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/labels_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <initializer_list>
#include <map>
#include <optional>
#include <tuple>
#include <utility>

namespace sheerpole {

namespace {

std::string_view side_word(Side side) {
  return side == Side::port        ? say(LabelsPhrase::port)
         : side == Side::starboard ? say(LabelsPhrase::starboard)
                                   : say(LabelsPhrase::centreline);
}

/// What lies beyond the part of an end: "to the cap tang, port", "to lashing-260", "to piece 2". Empty
/// where the file names nothing there.
std::string neighbour_words(const CardPiece& card, WhichEnd which) {
  const bool upper = which == WhichEnd::upper;
  const bool of_stay = upper ? card.piece->number == 1 : card.piece->number == card.piece->of;
  if (of_stay && card.stay->path.size() > 1) {
    const PathStop& stop = upper ? card.stay->path.front() : card.stay->path.back();
    return say(LabelsPhrase::to_the, place_words(*card.rig, (*card.rig)[stop.point]));
  }
  const std::vector<StackItem>& stack = card.stay->stack;
  const PieceEnd& made = upper ? card.piece->upper : card.piece->lower;
  // Past the part of the end, if it has one.
  const std::size_t past = made.bare() ? 1 : 2;
  if (upper ? card.item < past : card.item + past >= stack.size())
    return {};
  const StackItem& next = stack[upper ? card.item - past : card.item + past];
  if (next.kind == StackItem::Kind::line)
    return say(LabelsPhrase::to_piece, upper ? card.piece->number - 1 : card.piece->number + 1);
  return say(LabelsPhrase::to, (*card.rig)[next.part].name);
}

/// Where an end goes, its part, and the spare bury that is kept in it.
std::string end_words(const CardPiece& card, WhichEnd which) {
  const PieceEnd& made = which == WhichEnd::upper ? card.piece->upper : card.piece->lower;
  std::string words = neighbour_words(card, which);
  add_words(words, ": ", made.part_name(*card.rig));
  if (const CardBury bury = card_bury(card, which); bury.spare.parts != 0)
    add_words(words, ", ", say(LabelsPhrase::spare_bury, card.amount(bury.spare)));
  return words;
}

/// "rev B, rig c86b17f0"
std::string state_of_rig(const CheckedRig& checked) {
  const std::string revision = fact_text(checked.rig().boat.particulars, fact_names.revision);
  return say(LabelsPhrase::rev_rig, revision.empty() ? say(LabelsPhrase::not_stated) : revision,
             checked.digest());
}

constexpr std::size_t most_in_code = 110; ///< bytes that a code of this size has room for

/// The first bytes of a text, whole characters, with dots where there is more.
std::string shortened(const std::string& text, std::size_t most) {
  if (text.size() <= most)
    return text;
  std::size_t end = most - 3;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
    --end;
  return text.substr(0, end) + "...";
}

std::string cut_amount(const CardPiece& card) {
  return card.cut_words(card.amount_of_stay(card.cut));
}

/// "Pellimoor, cap-shroud.port, cut 12997 mm, rev B, rig c86b17f0": plain words, so that it is read without
/// a network. What says which piece of which state of the rig it is stays whole as long as it can.
std::string code_words(const PieceLabel& label, const CardPiece& card) {
  const bool waits = !card.may_be_cut() && (card.draft() || label.made.empty());
  const std::string cut =
      say(LabelsPhrase::cut, (waits                  ? not_yet()
                              : label.length.empty() ? say(LabelsPhrase::not_on_record)
                                                     : without_thin_blanks(cut_amount(card))));
  const std::string behind = ", " + shortened(cut, 40) + ", " + shortened(label.state_of_rig, 34);
  const std::string piece = shortened(card.piece->name, 40);
  const std::size_t left = most_in_code - std::min(most_in_code - 12, behind.size() + piece.size() + 2);
  return shortened(label.boat, left) + ", " + piece + behind;
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

PieceLabel label_of(const CheckedRig& checked, const CardPiece& card, bool aloft) {
  const std::vector<Particular>& of_stay = card.stay->particulars;
  PieceLabel label;
  label.stay = card.stay->base +
               (card.piece->of > 1 ? say(LabelsPhrase::piece_of, card.piece->number, card.piece->of) : "");
  label.side = card.stay->side;
  label.end = aloft ? say(LabelsPhrase::aloft) : say(LabelsPhrase::below);
  label.to = end_words(card, aloft ? WhichEnd::upper : WhichEnd::lower);
  label.boat = boat_title(checked);
  label.state_of_rig = state_of_rig(checked);
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
    label.length = say(LabelsPhrase::body, card.amount(measured->record->body->value),
                       name_of(measured->record->stage), led_by(" ", measured->record->date));
    label.state.clear();
  } else if (const std::string later =
                 label.made.empty() ? "" : layer_after(*card.rig, *card.stay, label.made);
             !later.empty())
    label.waits = say(LabelsPhrase::length_as_made_not_on, later);
  // What may still change is no record of what was made. A piece that is said to be made was cut to it.
  else if (!card.may_be_cut() && (card.draft() || label.made.empty()))
    label.waits = say(LabelsPhrase::cut_nothing_on_its_bench, not_yet(), reasons_counted(card.held_by));
  else if (card.chain()) // its body is its cut
    label.length = say(LabelsPhrase::cut, cut_amount(card));
  else
    label.length = say(LabelsPhrase::cut_body, cut_amount(card), card.amount_of_stay(card.body));
  label.code = code_words(label, card);
  return label;
}

constexpr double padding = 3.0;
constexpr double top_padding = 2.0;
constexpr double inside = label_width - 2.0 * padding;
/// The code with its quiet zone, in the upper corner on the right.
constexpr double code_side = 23.0;
constexpr double least_module = 0.4; ///< what a telephone reads from the hand; common practice, no source
constexpr double beside_code = label_width - padding - code_side - 1.0;
/// The bar with side and end across the top, beside the code.
constexpr double bar_height = 5.6;
/// The two rows at the foot of a label with what is written by hand.
constexpr double foot_row = 4.9;
constexpr double room_for_text =
    label_height_on_sheet - top_padding - padding - 2.0 * foot_row - bar_height - 0.6;
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
    Lines set{wrapped(text, size * scale, beside_code, bold), size * scale, bold};
    if (set.lines.size() > most) {
      set.lines.resize(most);
      set.lines.back() = broken_off(set.lines.back());
    }
    result.push_back(std::move(set));
  };
  add(label.stay, 4.8, true);
  if (!label.to.empty())
    add(label.to, 2.8, false);
  if (label.length.empty())
    add(label.waits, 2.8, true);
  else
    add(label.length, 2.9, true);
  add(label.line, 2.6, false);
  add(label.boat + led_by(", ", label.state_of_rig), 2.6, false);
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
void draw_entry(PhraseText words, const std::string& value, PaperPoint at, double width, ShapeGroup& into) {
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

/// Port is white on black, starboard black in a heavy frame.
void draw_bar(const PieceLabel& label, PaperPoint at, ShapeGroup& into) {
  const PaperBox box{at.x, at.y, at.x + beside_code, at.y + bar_height};
  const bool port = label.side == Side::port;
  const ShapeStyle black{.stroke_width = 0.0, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 0.0};
  const ShapeStyle frame{.stroke_width = label.side == Side::starboard ? 0.7 : 0.3,
                         .stroke_grey = 0.0,
                         .dashes = {},
                         .fill_grey = {}};
  into.add(RectangleShape{box, port ? black : frame, ""});
  constexpr double size = 3.8;
  for (const auto& [words, x, anchor] :
       {std::tuple{std::string(side_word(label.side)), box.left + 1.6, TextAnchor::start},
        std::tuple{label.end, box.right - 1.6, TextAnchor::end}}) {
    if (words.empty())
      continue;
    TextShape text{{x, box.top + 4.1}, words, size, anchor, true, ""};
    text.grey = port ? 1.0 : 0.0;
    into.add(std::move(text));
  }
}

/// `drawn_code` has its corner at none; nothing where it would be too fine to read.
void draw_label(const PieceLabel& label, const std::optional<ModulesShape>& drawn_code, PaperPoint corner,
                ShapeGroup& into) {
  const double left = corner.x + padding;
  draw_bar(label, {left, corner.y + top_padding}, into);
  const PaperPoint code{corner.x + label_width - code_side - 1.2, corner.y + 1.2};
  if (drawn_code) {
    ShapeGroup group{"", label.code, "", {}};
    group.add(*drawn_code);
    into.add(placed(group, code, 1.0));
  }
  if (!label.length.empty() && !label.state.empty()) {
    const double width = text_width_in_ems(label.state, true);
    into.add(TextShape{{code.x + code_side / 2.0, code.y + code_side + 1.6},
                       label.state,
                       std::min(2.4, (code_side - 2.0) / width),
                       TextAnchor::middle,
                       true,
                       ""});
  }
  double y = corner.y + top_padding + bar_height + 0.6;
  for (const Lines& text : fitted_texts(label))
    for (const std::string& line : text.lines) {
      into.add(TextShape{{left, y + text.size}, line, text.size, TextAnchor::start, text.bold, ""});
      y += text.size * line_spacing;
    }
  const double half = inside / 2.0;
  const double lower = corner.y + label_height_on_sheet - padding - 0.8;
  const double upper = lower - foot_row;
  draw_entry(say(LabelsPhrase::made), label.made, {left, upper}, half, into);
  draw_entry(say(LabelsPhrase::by), label.made_by, {left + half, upper}, half, into);
  draw_entry(say(LabelsPhrase::job), label.job, {left, lower}, half, into);
  draw_entry(say(LabelsPhrase::batch), label.batch, {left + half, lower}, half, into);
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
  std::vector<PieceLabel> labels;
  for (const CardPiece& card : card_pieces(checked)) {
    labels.push_back(label_of(checked, card, true));
    labels.push_back(label_of(checked, card, false));
  }
  return labels;
}

std::vector<Drawing> label_pages(const std::vector<PieceLabel>& labels, const std::string& boat,
                                 const std::string& identity, PaperSize size) {
  PageFlow page(size, {.name = say(LabelsPhrase::labels_x_mm_print_at), .about = identity, .draft = {}});
  // A long name of the boat takes more lines of the foot, and a row of labels from the sheet.
  const auto below = std::min<std::size_t>(
      labels_below, static_cast<std::size_t>((page.height() + 0.01) / label_height_on_sheet));
  const std::size_t on_a_sheet = labels_beside * below;
  // Both ends of a piece have the same code.
  std::map<std::string, std::optional<ModulesShape>> codes;
  for (const PieceLabel& label : labels)
    if (const auto [code, is_new] = codes.try_emplace(label.code); is_new)
      code->second = qr_code(label.code, {}, code_side, least_module);
  for (std::size_t first = 0; first < labels.size(); first += on_a_sheet) {
    if (first > 0)
      page.new_page();
    const std::size_t count = std::min(on_a_sheet, labels.size() - first);
    const int rows = static_cast<int>((count + labels_beside - 1) / labels_beside);
    page.drawing(rows * label_height_on_sheet, [&](ShapeGroup& group, PaperPoint corner) {
      draw_cut_lines(corner, rows, group);
      for (std::size_t i = 0; i < count; ++i)
        draw_label(labels[first + i], codes.at(labels[first + i].code),
                   {corner.x + static_cast<double>(i % labels_beside) * label_width,
                    corner.y + static_cast<double>(i / labels_beside) * label_height_on_sheet},
                   group);
    });
  }
  if (labels.empty())
    page.text(say(LabelsPhrase::rig_file_states_no_line));
  return page.pages(say(LabelsPhrase::labels_of, boat), say(LabelsPhrase::labels_to_cut_apart_one));
}

Labels::Labels()
    : PagesBackend({"labels", "labels", say(LabelsPhrase::labels),
                    say(LabelsPhrase::labels_to_cut_apart_one_for)}) {}

std::vector<Drawing> Labels::pages(const BackendRequest& request, const std::string& boat) const {
  return label_pages(piece_labels(request.checked), boat, identity_words(request.checked), request.paper);
}

} // namespace sheerpole
