#include "plugins/dry-fit-card/dry_fit_card.hpp"

#include "backend/drawing/label_text.hpp"
#include "backend/paper_words.hpp"
#include "calculate/geometry/spar_lines.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/dry_fit_card_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
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

/// A term as the card prints it. What has still to shrink is what the dry fit has more than the body, as
/// the cards print the two: rounded by itself it would be another number there.
CardLength printed_term(const StayFit& fit, const HoistedFit& hang, const HangTerm& of) {
  const CardPiece& card = fit.free();
  if (of.name != HangPhrase::still_to_shrink || fit.pieces.size() > 1 || !card.has_dry_fit)
    return card.unit.round(of.amount);
  CardLength left = card.body - card.dry_fit;
  for (const HangTerm& other : hang.terms)
    if (other.name == HangPhrase::stretch_to_come)
      left = left - card.unit.round(other.amount);
  return left;
}

/// The printed terms added up, so that figure, sum and table agree: without a stated gap all but the gap.
/// Nothing where one of them is not known.
std::optional<CardLength> printed_sum(const StayFit& fit, const HoistedFit& hang) {
  if (!hang.without_gap)
    return std::nullopt;
  CardLength total;
  for (const HangTerm& term : hang.terms)
    total = total + printed_term(fit, hang, term);
  return total;
}

/// How high the lower bearing hangs. Nothing without a gap.
std::optional<CardLength> printed_height(const StayFit& fit, const HoistedFit& hang) {
  return hang.hangs_at() ? printed_sum(fit, hang) : std::nullopt;
}

/// How far off a slip is. What the splices take together is the term of the sum.
std::string slip_amount(const StayFit& fit, const HoistedFit& hang, const HangSlip& slip) {
  if (slip.words == Remark(HangPhrase::contractions_slip))
    for (const HangTerm& one : hang.terms)
      if (one.name == HangPhrase::still_to_shrink)
        return fit.free().amount(CardLength{false, std::abs(printed_term(fit, hang, one).parts)});
  return on_card(fit, slip.off);
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
    return !band.from ? say(DryFitCardPhrase::under, height(*band.to))
           : !band.to ? say(DryFitCardPhrase::over, height(*band.from))
                      : say(DryFitCardPhrase::to, height(*band.from), height(*band.to));
  }
  if (band.mend == HangMend::right)
    return say(DryFitCardPhrase::within, card.amount(*band.to));
  const bool lower = !band.from || *band.from < Length{};
  const auto& nearer = lower ? band.to : band.from;
  const auto& farther = lower ? band.from : band.to;
  return (farther
              ? say(DryFitCardPhrase::to, card.amount(magnitude(*nearer)), card.amount(magnitude(*farther)))
              : say(DryFitCardPhrase::over, card.amount(magnitude(*nearer)))) +
         (lower ? say(DryFitCardPhrase::lower) : say(DryFitCardPhrase::higher));
}

std::string off_words(const StayFit& fit, const HangBand& band) {
  if (band.mend == HangMend::right)
    return say(DryFitCardPhrase::right);
  if (!band.from)
    return say(DryFitCardPhrase::over_long, on_card(fit, magnitude(*band.to)));
  if (!band.to)
    return say(DryFitCardPhrase::over_short, on_card(fit, *band.from));
  const bool is_short = *band.from >= Length{};
  return say(DryFitCardPhrase::up_to, on_card(fit, is_short ? *band.to : magnitude(*band.from)),
             (is_short ? say(DryFitCardPhrase::short_word) : say(DryFitCardPhrase::long_word)));
}

/// Whether an adjuster would hide a slip that the card names: where it hangs so, the slip is looked for
/// first.
bool slip_within(const HoistedFit& hang, const HangBand& band) {
  if (band.mend != HangMend::take_up && band.mend != HangMend::give_out)
    return false;
  const Length most = band.mend == HangMend::give_out ? *band.to : magnitude(*band.from);
  return std::any_of(hang.slips.begin(),
                     hang.slips.begin() +
                         static_cast<std::ptrdiff_t>(std::min(hang.slips.size(), most_slips)),
                     [&](const HangSlip& slip) { return slip.off <= most; });
}

SideTable answers(const StayFit& fit, const HoistedFit& hang) {
  SideTable table({31.0, 27.0, column_width - 58.0});
  table.heading({hang.hangs_at() ? say(DryFitCardPhrase::it_hangs_at) : say(DryFitCardPhrase::it_hangs),
                 say(DryFitCardPhrase::so_it_is), say(DryFitCardPhrase::do_word)});
  for (const HangBand& band : hang.bands)
    table.row({where_words(fit, hang, band), off_words(fit, band),
               band.mend == HangMend::right ? std::string(say(DryFitCardPhrase::sign_below))
               : slip_within(hang, band)
                   ? say(DryFitCardPhrase::look_for_slip_first, say(*fit.rig, words_of(band)))
                   : capital(say(*fit.rig, words_of(band))) + "."},
              band.mend == HangMend::right);
  return table;
}

bool has_cord(const StayFit& fit) {
  return std::any_of(fit.stay->readings.begin(), fit.stay->readings.end(),
                     [](const Reading& reading) { return reading.method == ReadingMethod::messenger; });
}

SideTable likely_slips(const StayFit& fit, const HoistedFit& hang) {
  SideTable table({20.0, column_width - 20.0});
  table.heading({say(DryFitCardPhrase::off_by), say(DryFitCardPhrase::likely_slip)});
  for (std::size_t i = 0; i < hang.slips.size() && i < most_slips; ++i)
    table.row({slip_amount(fit, hang, hang.slips[i]), capital(say(*fit.rig, hang.slips[i].words))});
  table.row({say(DryFitCardPhrase::any_other),
             has_cord(fit)
                 ? say(DryFitCardPhrase::or_another_stays, capital(say(*fit.rig, HangPhrase::other_knot)))
                 : std::string(say(DryFitCardPhrase::any_other_slip))});
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
                   .title = say(DryFitCardPhrase::hoisted_dry_fit),
                   .description = say(DryFitCardPhrase::piece_on_its_halyard_beside),
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
  group.add(text_at({pins + 2.0, pin_aloft - 3.0}, say(DryFitCardPhrase::pin_aloft), size));
  group.add(LineShape{{pins + 10.0, pin_aloft}, {rope + 16.0, pin_aloft}, thin, ""});
  group.add(LineShape{{rope, 2.0}, {rope, hook}, heavy, ""});
  group.add(text_at({rope + 2.0, 5.0}, say(DryFitCardPhrase::halyard), size));
  pin(rope, hook);
  eye(hook, bearing);
  group.add(LineShape{{rope - 3.0, hook + 10.0}, {rope + 3.0, hook + 10.0}, heavy, ""});
  group.add(text_at({rope + 6.0, hook + 11.0}, say(DryFitCardPhrase::seizing), size));
  group.add(LineShape{{rope, hook + 9.0}, {rope, bearing - 9.0}, heavy, ""});
  group.add(
      LineShape{{rope + 4.0, hook + 11.0}, {rope + 4.0, std::min(hook + 30.0, bearing - 13.0)}, later, ""});
  group.add(text_at({rope + 6.0, std::min(hook + 24.0, (hook + bearing) / 2.0 + 1.0)},
                    say(DryFitCardPhrase::tail_outside), size));
  group.add(LineShape{{rope - 3.0, bearing - 10.0}, {rope + 3.0, bearing - 10.0}, heavy, ""});
  group.add(text_at({rope + 6.0, bearing - 9.0}, say(DryFitCardPhrase::seizing), size));
  eye(bearing, hook);
  // The rope bears in the crown of its eye, not in the middle of what lies in it.
  const double crown = bearing + 3.4;
  group.add(CircleShape{{rope, bearing}, 2.2, thin, ""});
  // The two amounts.
  const double measure = rope + 12.0;
  group.add(LineShape{{measure, pin_aloft}, {measure, hook}, thin, ""});
  group.add(LineShape{{rope + 5.0, hook}, {rope + 16.0, hook}, thin, ""});
  group.add(
      text_at({measure + 2.0, hook - 5.5}, hang.gap ? on_card(fit, hang.gap->value) : "____", 4.0, true));
  group.add(text_at({measure + 2.0, hook - 1.2}, say(DryFitCardPhrase::hoist_gap), size));
  group.add(LineShape{{rope + 1.0, crown}, {rope + 16.0, crown}, thin, ""});
  group.add(LineShape{{measure, crown}, {measure, pin_below}, thin, ""});
  group.add(LineShape{{pins + 10.0, pin_below}, {rope + 16.0, pin_below}, thin, ""});
  const auto at = printed_height(fit, hang);
  group.add(text_at({measure + 2.0, (bearing + pin_below) / 2.0}, at ? fit.free().amount(*at) : "____", 5.0,
                    true));
  group.add(
      text_at({measure + 2.0, (bearing + pin_below) / 2.0 + 4.6}, say(DryFitCardPhrase::hangs_at), size));
  // Where the hardware will stand, and the deck.
  group.add(RectangleShape{{pins + 12.0, bearing - 10.0, pins + 17.0, pin_below}, later, ""});
  group.add(text_at({pins + 1.0, bearing - 13.0}, say(DryFitCardPhrase::hardware_below), size));
  pin(rope, pin_below);
  group.add(LineShape{{0.0, pin_below + 4.0}, {width, pin_below + 4.0}, later, ""});
  group.add(text_at({pins + 2.0, pin_below + 8.6}, say(DryFitCardPhrase::pin_below_not_to_scale), size));
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
    box.add(text_at({3.0, 6.0}, say(DryFitCardPhrase::lower_bearing_hangs_at), 3.2, true));
    const auto sum = printed_sum(fit, hang);
    const std::string figure = hangs ? fit.free().amount(*hangs)
                               : sum ? say(DryFitCardPhrase::less_the_gap, fit.free().amount(*sum))
                                     : std::string(say(DryFitCardPhrase::not_known));
    box.add(text_at({3.0, 16.0}, figure, fitted(figure, 8.0, true, second - 9.0), true));
    box.add(text_at({3.0, 21.5}, say(DryFitCardPhrase::from_pin_below_up_to), 3.0));
    double y = 6.0;
    const auto sum_row = [&](const std::string& name, const std::string& amount, bool bold) {
      box.add(text_at({second, y}, name, sum_size, bold));
      box.add(text_at({third - 6.0, y}, amount, sum_size, bold, TextAnchor::end));
      y += sum_size * 1.5;
    };
    const CardUnit& unit = fit.free().unit;
    bool first = true;
    for (const HangTerm& term : hang.terms) {
      const CardLength amount = printed_term(fit, hang, term);
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
      sum_row(say(DryFitCardPhrase::less_hoist_gap), "____", false);
    box.add(LineShape{{second, y - sum_size * 1.1}, {third - 6.0, y - sum_size * 1.1}, line_of(0.3), ""});
    y += 0.8;
    sum_row(say(DryFitCardPhrase::hangs_at), hangs ? card_amount(unit, *hangs) : "____", true);
    box.add(text_at({third, 6.0}, say(DryFitCardPhrase::found_begins), 3.2, true));
    for (const double line : {13.0, 20.0}) {
      box.add(text_at({third, line},
                      line < 14.0 ? say(DryFitCardPhrase::hoist_gap) : say(DryFitCardPhrase::hangs_at),
                      3.0));
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
    page.text(say(DryFitCardPhrase::x_has_no_number_and), note_look);
  if (!hang.not_known.empty())
    page.text(say(DryFitCardPhrase::not_known_begins, card.spoken(hang.not_known)), note_look);
  if (!hang.gap)
    page.text(say(DryFitCardPhrase::measure_hoist_gap_as_it), note_look);
  const std::string since =
      hang.gap && hang.gap->tolerance ? say(DryFitCardPhrase::since_gap_itself_is_known) : "";
  page.text(fit.adjusters.empty()
                ? say(DryFitCardPhrase::hung_with_hardware_no_adjuster, on_card(fit, hang.right), since)
                : say(DryFitCardPhrase::hung_with_all_its_hardware, on_card(fit, hang.right), since,
                      card.amount(fit.to_tighten), card.amount(fit.to_slacken)),
            note_look);
  if (const auto& first = fit.of_stay->first_fit)
    page.text(first->short_by ? say(DryFitCardPhrase::spliced_stay_has_two_lengths,
                                    on_card(fit, *first->short_by), on_card(fit, first->to_slacken))
                              : say(DryFitCardPhrase::spliced_stay_is_short_at),
              note_look);
}

void add_release(const StayFit& fit, const HoistedFit& hang, PageFlow& page) {
  constexpr TextLook loud{.size = 3.8, .bold = true, .indent = 0.0};
  if (const FoundHang* found = hang.latest())
    page.notice(
        say(DryFitCardPhrase::dry_fit_hung_at_worked,
            found->date.empty() ? "" : say(DryFitCardPhrase::of, found->date),
            found->by.empty() ? "" : say(DryFitCardPhrase::by, found->by), on_card(fit, found->hung),
            on_card(fit, found->should_hang), capital(say(*fit.rig, words_of(found->band))),
            !found->releases() ? say(DryFitCardPhrase::not_released_do_not_open)
            : fit.draft()
                ? say(DryFitCardPhrase::not_released_it_waits_for, reasons_counted(fit.draft_reasons))
                : say(DryFitCardPhrase::released)),
        loud);
  else
    page.notice(say(DryFitCardPhrase::stop_open_weave_only_when), loud);
  page.table({.columns = {{say(DryFitCardPhrase::hoisted_by_day), 1.0},
                          {say(DryFitCardPhrase::seen_by_second_person_day), 1.0},
                          {say(DryFitCardPhrase::pull_temperature_wind), 1.0}},
              .rows = {{cell_to_write, cell_to_write, cell_to_write}},
              .size = 3.2,
              .gutter = card_gutter});
  page.text(say(DryFitCardPhrase::before_this_mark_piece_by), {.size = 2.8, .bold = false, .indent = 0.0});
}

/// What the stay passes between its ends, in the order of its path.
std::string tips_of(const StayFit& fit) {
  std::vector<std::string> names;
  for (std::size_t i = 1; i + 1 < fit.stay->path.size(); ++i)
    names.push_back((*fit.rig)[fit.stay->path[i].point].name);
  return joined(names, Join::and_word);
}

} // namespace

std::vector<Drawing> hoisted_pages(const StayFit& fit, const std::string& boat, PaperSize size) {
  if (!fit.of_stay->hoisted_fit || !fit.free().rope())
    return {};
  // Below a bowsprit or between two spars nothing hangs beside its place from a halyard. A file that states
  // no mast says nothing of that.
  if (fit.stay->path.size() >= 2 && !masts_of(*fit.rig).empty() &&
      mast_at(*fit.rig, *fit.stay, WhichEnd::upper) == nullptr)
    return {};
  // A plate where stays meet is held up by them alone: without them there is no place to hang beside.
  if (ends_in_plate(*fit.rig, *fit.stay, WhichEnd::upper) ||
      ends_in_plate(*fit.rig, *fit.stay, WhichEnd::lower))
    return {};
  const HoistedFit& hang = *fit.of_stay->hoisted_fit;
  // The hold of a halyard is lower than the pin: less hardware than this below the line, and its bearing
  // would hang below the pin at the deck, where nothing can be read. Choice of the project, no source.
  constexpr Length least_height = Length::millimetres(30.0);
  if (hang.without_gap && !hang.gap && hang.found.empty() && *hang.without_gap < least_height)
    return {};
  PageFlow page(size, {.name = say(DryFitCardPhrase::dry_fit_hoisted, fit.stay->name),
                       .about = boat,
                       .draft = draft_lines(fit.draft_reasons),
                       .hatched = fit.draft()});
  page.text(say(DryFitCardPhrase::dry_fit_hoisted_capitals, fit.stay->name),
            {.size = 6.0, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}{}", fit.stay->title.empty() ? "" : titled(*fit.rig, *fit.stay) + ", ",
                        side_words(fit.stay->side)),
            {.size = 4.2, .bold = true, .indent = 0.0});
  if (fit.stay->path.size() >= 2)
    page.text(say(DryFitCardPhrase::pin_aloft_is_pin_below,
                  where_words(*fit.rig, *fit.stay, WhichEnd::upper),
                  where_words(*fit.rig, *fit.stay, WhichEnd::lower)),
              line_look);
  const std::string tips = tips_of(fit);
  page.text((tips.empty() ? std::string() : say(DryFitCardPhrase::lead_it_over_tips, tips) + " ") +
                say(DryFitCardPhrase::eyes_seized_with_their_hardware, unit_words(fit.free().unit)),
            line_look);
  page.space(1.0);
  add_height(fit, hang, page);
  add_notes(fit, hang, page);
  page.space(tips.empty() ? 2.0 : 0.6);
  add_two_columns(fit, hang, page);
  page.notice(say(fit.free().from_drawing() ? DryFitCardPhrase::while_it_hangs_mast_is_held
                                            : DryFitCardPhrase::while_it_hangs_old_stay),
              {.size = 3.0, .bold = true, .indent = 0.0});
  add_release(fit, hang, page);
  return page.pages(say(DryFitCardPhrase::hoisted_dry_fit_begins, fit.stay->name),
                    say(DryFitCardPhrase::how_high_lower_bearing_should));
}

} // namespace sheerpole
