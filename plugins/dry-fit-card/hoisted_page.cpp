#include "plugins/dry-fit-card/dry_fit_card.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/paper_words.hpp"
#include "wording/model_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace sheerpole {

namespace {

constexpr TextLook note_look{.size = 3.0, .bold = false, .indent = 0.0};
constexpr TextLook line_look{.size = 3.2, .bold = false, .indent = 0.0};
constexpr std::size_t most_slips = 6;
/// Of the tables beside the sketch.
constexpr double column_width = 110.0;

ShapeStyle line_of(double width) {
  return {.stroke_width = width, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
}

TextShape text_at(PaperPoint at, std::string text, double size, bool bold = false,
                  TextAnchor anchor = TextAnchor::start) {
  return {at, std::move(text), size, anchor, bold, ""};
}

/// A length on this card, rounded to its step.
std::string on_card(const StayFit& fit, Length length) {
  return fit.free().amount(length);
}

/// The height as the sum of its printed terms, so that figure, sum and table agree. Nothing without a gap.
std::optional<CardLength> printed_height(const StayFit& fit, const HoistedFit& hang) {
  if (!hang.hangs_at())
    return std::nullopt;
  CardLength total;
  for (const HangTerm& term : hang.terms)
    total = total + fit.free().unit.round(term.amount);
  return total;
}

/// "Toggle-57 left out …" begins a sentence or a cell.
std::string capital(std::string text) {
  if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
    text.front() = static_cast<char>(text.front() - 'a' + 'A');
  return text;
}

/// A table in a part of the page, set from its corner (0, 0) down, to be placed where there is room.
class SideTable {
public:
  explicit SideTable(std::vector<double> widths) : widths_(std::move(widths)) {
    for (const double width : widths_)
      whole_ += width;
  }

  void heading(const std::vector<std::string>& cells) { row(cells, true, 0.5); }
  void row(const std::vector<std::string>& cells, bool bold = false, double rule = 0.15) {
    constexpr double size = 3.1;
    std::size_t lines = 1;
    double left = 0.0;
    const double top = y_;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const auto broken = wrap_label(cells[i], size, (widths_[i] - 2.0) * wide_face_allowance, bold);
      for (std::size_t n = 0; n < broken.size(); ++n)
        if (!broken[n].empty())
          group_.add(text_at({left, y_ + size * (1.1 + line_spacing * static_cast<double>(n))}, broken[n],
                             size, bold));
      lines = std::max(lines, broken.size());
      left += widths_[i];
    }
    y_ += size * line_spacing * static_cast<double>(lines) + 1.4;
    group_.add(LineShape{{0.0, y_}, {whole_, y_}, line_of(rule), ""});
    if (bold && rule < 0.5) // the row that is right
      group_.add(RectangleShape{{-1.0, top + 0.1, whole_, y_}, line_of(0.6), ""});
    y_ += 0.4;
  }
  void space(double millimetres) { y_ += millimetres; }
  double height() const { return y_; }
  const ShapeGroup& shapes() const { return group_; }

private:
  std::vector<double> widths_;
  double whole_ = 0.0;
  double y_ = 0.0;
  ShapeGroup group_;
};

/// "over 572 mm", "514 mm to 572 mm"; without a gap by how much higher or lower than the sum: "6 mm to 64
/// mm higher".
std::string where_words(const StayFit& fit, const HoistedFit& hang, const HangBand& band) {
  const CardPiece& card = fit.free();
  if (const auto at = printed_height(fit, hang)) {
    const auto height = [&](Length high) { return card.amount(*at + card.unit.round(high)); };
    return !band.from ? "under " + height(*band.to)
           : !band.to ? "over " + height(*band.from)
                      : height(*band.from) + " to " + height(*band.to);
  }
  if (band.mend == HangMend::right)
    return "within " + card.amount(*band.to);
  const bool lower = !band.from || *band.from < Length{};
  const auto& nearer = lower ? band.to : band.from;
  const auto& farther = lower ? band.from : band.to;
  return (farther ? card.amount(magnitude(*nearer)) + " to " + card.amount(magnitude(*farther))
                  : "over " + card.amount(magnitude(*nearer))) +
         (lower ? " lower" : " higher");
}

std::string off_words(const StayFit& fit, const HangBand& band) {
  if (band.mend == HangMend::right)
    return "RIGHT";
  if (!band.from)
    return "over " + on_card(fit, magnitude(*band.to)) + " long";
  if (!band.to)
    return "over " + on_card(fit, *band.from) + " short";
  const bool is_short = *band.from >= Length{};
  return "up to " + on_card(fit, is_short ? *band.to : magnitude(*band.from)) +
         (is_short ? " short" : " long");
}

SideTable answers(const StayFit& fit, const HoistedFit& hang) {
  SideTable table({31.0, 27.0, column_width - 58.0});
  table.heading({hang.hangs_at() ? "IT HANGS AT" : "IT HANGS", "SO IT IS", "DO"});
  for (const HangBand& band : hang.bands)
    table.row({where_words(fit, hang, band), off_words(fit, band),
               band.mend == HangMend::right ? "Sign below." : capital(say(*fit.rig, words_of(band))) + "."},
              band.mend == HangMend::right);
  return table;
}

SideTable likely_slips(const StayFit& fit, const HoistedFit& hang) {
  SideTable table({20.0, column_width - 20.0});
  table.heading({"OFF BY", "LIKELY SLIP"});
  for (std::size_t i = 0; i < hang.slips.size() && i < most_slips; ++i)
    table.row({on_card(fit, hang.slips[i].off), capital(say(*fit.rig, hang.slips[i].words))});
  table.row({"any other", capital(say(*fit.rig, HangPhrase::other_knot)) + ", or another stay's"});
  return table;
}

/// What hangs where, not to scale: the pins at the left, the piece on its halyard, hardware below as it
/// will be.
ShapeGroup sketch(const StayFit& fit, const HoistedFit& hang, double width, double height) {
  constexpr double size = 3.0;
  const ShapeStyle heavy = line_of(0.9);
  const ShapeStyle thin = line_of(0.3);
  const ShapeStyle later{.stroke_width = 0.4, .stroke_grey = 0.0, .dashes = {2.0, 1.0}, .fill_grey = {}};
  ShapeGroup group{.id = "",
                   .title = "The hoisted dry fit",
                   .description =
                       "The piece on its halyard beside the pin aloft, its lower bearing above the "
                       "pin below. Not to scale.",
                   .children = {}};
  const double pins = 6.0;
  const double rope = width * 0.45;
  const double pin_aloft = 14.0;
  const double hook = 24.0;
  const double bearing = height - 44.0;
  const double pin_below = height - 10.0;
  const auto pin = [&](double x, double y) {
    group.add(CircleShape{
        {x, y}, 1.2, {.stroke_width = 0.3, .stroke_grey = 0.0, .dashes = {}, .fill_grey = 0.0}, ""});
  };
  const auto eye = [&](double y, double to) {
    group.add(CircleShape{{rope, y}, 3.4, thin, ""});
    group.add(
        LineShape{{rope - 3.2, y + (to > y ? 1.4 : -1.4)}, {rope, y + (to > y ? 9.0 : -9.0)}, thin, ""});
    group.add(
        LineShape{{rope + 3.2, y + (to > y ? 1.4 : -1.4)}, {rope, y + (to > y ? 9.0 : -9.0)}, thin, ""});
  };
  // The mast side with the pin aloft, the deck with its pin.
  group.add(LineShape{{pins, 4.0}, {pins, pin_below + 4.0}, thin, ""});
  pin(pins + 8.0, pin_aloft);
  group.add(LineShape{{pins, pin_aloft}, {pins + 8.0, pin_aloft}, heavy, ""});
  group.add(text_at({pins + 2.0, pin_aloft - 3.0}, "pin aloft", size));
  group.add(LineShape{{pins + 10.0, pin_aloft}, {rope + 16.0, pin_aloft}, thin, ""});
  group.add(LineShape{{rope, 2.0}, {rope, hook}, heavy, ""});
  group.add(text_at({rope + 2.0, 5.0}, "halyard", size));
  pin(rope, hook);
  eye(hook, bearing);
  group.add(LineShape{{rope - 3.0, hook + 10.0}, {rope + 3.0, hook + 10.0}, heavy, ""});
  group.add(text_at({rope + 6.0, hook + 11.0}, "seizing", size));
  group.add(LineShape{{rope, hook + 9.0}, {rope, bearing - 9.0}, heavy, ""});
  group.add(
      LineShape{{rope + 4.0, hook + 11.0}, {rope + 4.0, std::min(hook + 30.0, bearing - 13.0)}, later, ""});
  group.add(
      text_at({rope + 6.0, std::min(hook + 24.0, (hook + bearing) / 2.0 + 1.0)}, "tail, outside", size));
  group.add(LineShape{{rope - 3.0, bearing - 10.0}, {rope + 3.0, bearing - 10.0}, heavy, ""});
  group.add(text_at({rope + 6.0, bearing - 9.0}, "seizing", size));
  eye(bearing, hook);
  pin(rope, bearing);
  // The two amounts.
  const double measure = rope + 12.0;
  group.add(LineShape{{measure, pin_aloft}, {measure, hook}, thin, ""});
  group.add(LineShape{{rope + 5.0, hook}, {rope + 16.0, hook}, thin, ""});
  group.add(
      text_at({measure + 2.0, hook - 5.5}, hang.gap ? on_card(fit, hang.gap->value) : "____", 4.0, true));
  group.add(text_at({measure + 2.0, hook - 1.2}, "hoist gap", size));
  group.add(LineShape{{rope + 5.0, bearing}, {rope + 16.0, bearing}, thin, ""});
  group.add(LineShape{{measure, bearing}, {measure, pin_below}, thin, ""});
  group.add(LineShape{{pins + 10.0, pin_below}, {rope + 16.0, pin_below}, thin, ""});
  const auto at = printed_height(fit, hang);
  group.add(text_at({measure + 2.0, (bearing + pin_below) / 2.0}, at ? fit.free().amount(*at) : "____", 5.0,
                    true));
  group.add(text_at({measure + 2.0, (bearing + pin_below) / 2.0 + 4.6}, "hangs at", size));
  // Where the hardware will stand, and the deck.
  group.add(RectangleShape{{pins + 12.0, bearing - 10.0, pins + 17.0, pin_below}, later, ""});
  group.add(text_at({pins + 1.0, bearing - 13.0}, "hardware below", size));
  pin(rope, pin_below);
  group.add(LineShape{{0.0, pin_below + 4.0}, {width, pin_below + 4.0}, later, ""});
  group.add(text_at({pins + 2.0, pin_below + 8.6}, "pin below; not to scale", size));
  return group;
}

/// The height in large figures, how it comes about, and where to write what was found.
void add_height(const StayFit& fit, const HoistedFit& hang, PageFlow& page) {
  const double sum_size = 3.3;
  const double height =
      std::max(24.0, 5.0 + sum_size * 1.5 * static_cast<double>(hang.terms.size() + (hang.gap ? 1 : 2)));
  page.drawing(height + 3.0, [&](ShapeGroup& into, PaperPoint at) {
    ShapeGroup box;
    const double width = page.width();
    const double second = width * 0.44;
    const double third = width * 0.78;
    const auto hangs = printed_height(fit, hang);
    box.add(RectangleShape{{0.0, 0.0, width, height}, line_of(0.9), ""});
    box.add(LineShape{{second - 3.0, 0.0}, {second - 3.0, height}, line_of(0.4), ""});
    box.add(LineShape{{third - 3.0, 0.0}, {third - 3.0, height}, line_of(0.4), ""});
    box.add(text_at({3.0, 6.0}, "LOWER BEARING HANGS AT", 3.2, true));
    box.add(text_at({3.0, 16.0},
                    hangs              ? fit.free().amount(*hangs)
                    : hang.without_gap ? "see the sum"
                                       : "not known",
                    8.0, true));
    box.add(text_at({3.0, 21.5}, "from the pin below up to where the rope bears", 3.0));
    double y = 6.0;
    const auto sum_row = [&](const std::string& name, const std::string& amount, bool bold) {
      box.add(text_at({second, y}, name, sum_size, bold));
      box.add(text_at({third - 6.0, y}, amount, sum_size, bold, TextAnchor::end));
      y += sum_size * 1.5;
    };
    const CardUnit& unit = fit.free().unit;
    bool first = true;
    for (const HangTerm& term : hang.terms) {
      const CardLength amount = unit.round(term.amount);
      const bool less = amount.parts < 0;
      sum_row(say(*fit.rig, term.name),
              (less                         ? "- "
               : first || amount.parts == 0 ? ""
                                            : "+ ") +
                  card_amount(unit, CardLength{false, less ? -amount.parts : amount.parts}),
              false);
      first = false;
    }
    if (!hang.gap)
      sum_row("less the hoist gap", "____", false);
    box.add(LineShape{{second, y - sum_size * 1.1}, {third - 6.0, y - sum_size * 1.1}, line_of(0.3), ""});
    y += 0.8;
    sum_row("hangs at", hangs ? card_amount(unit, *hangs) : "____", true);
    box.add(text_at({third, 6.0}, "Found", 3.2, true));
    for (const double line : {13.0, 20.0}) {
      box.add(text_at({third, line}, line < 14.0 ? "hoist gap" : "hangs at", 3.0));
      box.add(LineShape{{third + 15.0, line + 0.5}, {width - 2.0, line + 0.5}, line_of(0.2), ""});
    }
    into.add(placed(box, at, 1.0));
  });
}

void add_two_columns(const StayFit& fit, const HoistedFit& hang, PageFlow& page) {
  const SideTable what_to_do = answers(fit, hang);
  const SideTable slips = likely_slips(fit, hang);
  const double height = std::max(104.0, what_to_do.height() + 4.0 + slips.height());
  const double sketch_width = page.width() - column_width - 4.0;
  page.drawing(height + 2.0, [&](ShapeGroup& into, PaperPoint at) {
    into.add(placed(sketch(fit, hang, sketch_width, std::min(height, 130.0)), at, 1.0));
    const double left = at.x + page.width() - column_width;
    into.add(placed(what_to_do.shapes(), {left, at.y}, 1.0));
    into.add(placed(slips.shapes(), {left, at.y + what_to_do.height() + 4.0}, 1.0));
  });
}

/// What else the number rests on.
void add_notes(const StayFit& fit, const HoistedFit& hang, PageFlow& page) {
  const CardPiece& card = fit.free();
  if (card.cut.unknown)
    page.text("X has no number, and this card needs none: both ends hang by the boat's own pins.",
              note_look);
  if (!hang.not_known.empty())
    page.text("Not known: " + card.spoken(hang.not_known) + ".", note_look);
  if (!hang.gap)
    page.text(
        "Measure the hoist gap as it hangs, from the pin aloft down to the halyard's hold, and take it "
        "off.",
        note_look);
  page.text(
      fmt::format("Hung with all its hardware aloft. Within {} it is right{}. From its setting the "
                  "adjuster takes up {} and gives out {}; what the dry fit uses of it is gone for later.",
                  on_card(fit, hang.right),
                  hang.gap && hang.gap->tolerance ? ", since the gap itself is known to no better" : "",
                  card.amount(fit.to_tighten), card.amount(fit.to_slacken)),
      note_look);
  if (const auto& first = fit.of_stay->first_fit)
    page.text(
        first->short_by
            ? fmt::format("Spliced, the stay has two lengths: at first fit {} short, after setting as "
                          "worked out. The adjuster gives out {}.",
                          on_card(fit, *first->short_by), on_card(fit, first->to_slacken))
            : "Spliced, the stay is short at first fit until its splices have set; no test splice says "
              "by how much.",
        note_look);
}

void add_release(const StayFit& fit, const HoistedFit& hang, PageFlow& page) {
  constexpr TextLook loud{.size = 3.8, .bold = true, .indent = 0.0};
  if (const FoundHang* found = hang.latest())
    page.notice(fmt::format("Dry fit{}{}: hung at {}, {} worked out. {}. {}",
                            found->date.empty() ? "" : " of " + found->date,
                            found->by.empty() ? "" : " by " + found->by, on_card(fit, found->hung),
                            on_card(fit, found->should_hang), capital(say(*fit.rig, words_of(found->band))),
                            !found->releases() ? std::string("NOT RELEASED: do not open the weave.")
                            : fit.draft()
                                ? fmt::format("NOT RELEASED: it waits, for {}: do not open the weave.",
                                              reasons_counted(fit.draft_reasons))
                                : std::string("RELEASED.")),
                loud);
  else
    page.notice("STOP. Open the weave only when it hangs right.", loud);
  page.table({.columns = {{"hoisted by, day", 1.0},
                          {"seen by a second person, day", 1.0},
                          {"pull, temperature, wind", 1.0}},
              .rows = {{cell_to_write, cell_to_write, cell_to_write}},
              .size = 3.2,
              .gutter = card_gutter});
  page.text(
      "Before this: mark the piece by its bench card. After this: cut and splice by it. This card says "
      "nothing of whether the rig is strong enough. Local rules and a licensed professional rigger come "
      "before it.",
      {.size = 2.8, .bold = false, .indent = 0.0});
}

} // namespace

std::vector<Drawing> hoisted_pages(const StayFit& fit, const std::string& boat, PaperSize size) {
  if (!fit.of_stay->hoisted_fit || !fit.free().rope())
    return {};
  const HoistedFit& hang = *fit.of_stay->hoisted_fit;
  PageFlow page(size, {.name = "Dry fit, hoisted " + fit.stay->name,
                       .about = boat,
                       .draft = draft_lines(fit.draft_reasons),
                       .hatched = fit.draft()});
  page.text("DRY FIT, HOISTED   " + fit.stay->name, {.size = 6.0, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}{}", fit.stay->title.empty() ? "" : fit.stay->title + ", ",
                        side_words(fit.stay->side)),
            {.size = 4.2, .bold = true, .indent = 0.0});
  if (fit.stay->path.size() >= 2)
    page.text(fmt::format("The pin aloft is {}, the pin below {}.",
                          where_words(*fit.rig, *fit.stay, WhichEnd::upper),
                          where_words(*fit.rig, *fit.stay, WhichEnd::lower)),
              line_look);
  page.text(fmt::format(
                "Eyes seized with their hardware in them. Nothing is cut, opened or buried. Lengths in {}.",
                unit_words(fit.free().unit)),
            line_look);
  page.space(1.0);
  add_height(fit, hang, page);
  add_notes(fit, hang, page);
  page.space(2.0);
  add_two_columns(fit, hang, page);
  page.notice(
      "While it hangs: the old stay holds the mast and stays until the new one is loaded. One stay at a "
      "time. Nobody below the piece: a seizing that slips drops all of it. Aloft: two lines, a harness, "
      "a second person on deck.",
      {.size = 3.0, .bold = true, .indent = 0.0});
  add_release(fit, hang, page);
  return page.pages(
      "Hoisted dry fit of " + fit.stay->name,
      "How high the lower bearing should hang before the line is opened, and what it means when "
      "it does not.");
}

} // namespace sheerpole
