#include "plugins/bench-card/bench_card.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/card/card_piece.hpp"
#include "backend/card/card_release.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "plugins/bench-card/from_the_cord.hpp"
#include "units/format_length.hpp"
#include "wording/model_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <utility>

namespace sheerpole {

namespace {

/// "Splice the end aloft round thimble-16: long-bury, bury 648 mm (72 d), taper last third, lock stitch".
CardStep splice_step(const CardPiece& card, const PieceEnd& end, std::string_view where) {
  std::string text = fmt::format("Splice the end {}", where);
  if (!end.bare())
    text += " round " + shown(end.part_name(*card.rig), end.part_title(*card.rig));
  if (const std::string words = splice_words(card, end); !words.empty())
    text += ": " + words;
  return {text + ".", false};
}

CardStep terminal_step(const CardPiece& card, const PieceEnd& end, std::string_view where) {
  return {fmt::format("Make the end {}: {}. Hold the wire at its mark while the terminal is closed.", where,
                      end.bare() ? "bare" : shown(end.part_name(*card.rig), end.part_title(*card.rig))),
          false};
}

std::string bench_tension(const CardPiece& card) {
  const auto tension = fact_force(card.stay->particulars, fact_names.bench_tension);
  return tension ? fmt::format("under {} N", format_fixed(tension->value.newtons(), 0))
                 : std::string("straight and hand-tight");
}

/// How the splices are loaded before the piece is measured again: of the last test splice on this rope that
/// states it.
std::string setting(const CardPiece& card) {
  std::optional<std::pair<std::string, Force>> latest; // the order in the file says nothing
  for (const Record& record : card.rig->records) {
    if (record.kind != RecordKind::test_splice || record.of != card.line->name)
      continue;
    if (const auto stated = fact_force(record.facts, fact_names.setting_load))
      if (std::pair one(fact_text(record.facts, fact_names.date), stated->value); !latest || *latest < one)
        latest = std::move(one);
  }
  if (latest)
    return fmt::format("Set the splices at {} kN, as the test splice was, and note time and load.",
                       format_fixed(latest->second.kilonewtons(), 1));
  return "Set the splices: load them as the test splice was loaded, and note load and time. No setting "
         "load is stated.";
}

/// How well the length is known, by the worst case; or that nobody has said.
std::string known_to(const CardPiece& card) {
  const auto& found = card.of_stay->uncertainty;
  if (!found || card.stay->stack[card.item].line_length)
    return "Accuracy unknown: no bound is stated for what it rests on.";
  const std::string worst =
      fmt::format("{} / +{} at worst", card_text(card.unit, card.unit.round_outwards(found->worst_low)),
                  card.amount(card.unit.round_outwards(found->worst_high)));
  if (found->without_bound.empty())
    return "Known to " + worst + ".";
  const std::size_t others = found->without_bound.size() - 1;
  return fmt::format("Accuracy unknown: no bound for {}{}. The rest is known to {}.",
                     card.spoken(found->without_bound.front()),
                     others == 0   ? std::string()
                     : others == 1 ? " and one more"
                                   : fmt::format(" and {} more", others),
                     worst);
}

/// Test eyes that the shape of their seat contradicts, each in a box, both ends alike in one.
void add_boxed(const CardPiece& card, PageFlow& page) {
  for (const PieceEnd* end : {&card.piece->upper, &card.piece->lower})
    if (!end->boxed.empty() && (end == &card.piece->upper || !(end->boxed == card.piece->upper.boxed)))
      page.notice(card.spoken(end->boxed), {.size = 3.6, .bold = true, .indent = 0.0});
}

void add_head(const CardPiece& card, PageFlow& page) {
  const std::string& title = card.stay->title;
  page.text("BENCH CARD   " + card.piece->name, {.size = 7.0, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}{}{}", title.empty() ? "" : title + ", ", side_words(card.stay->side),
                        card.piece->of > 1
                            ? fmt::format(", piece {} of {} from aloft", card.piece->number, card.piece->of)
                            : ""),
            {.size = 4.5, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}{}: {}, {}", card.line->name,
                        card.line->title.empty() ? "" : " \"" + card.line->title + "\"",
                        card.line->construction.text, card.line->size.name),
            {.size = 4.0, .bold = false, .indent = 0.0});
  if (card.draft())
    add_not_yet("CUT", card.draft_reasons, page, 9.0);
  else if (card.state == PieceState::on_record)
    page.text("ALREADY CUT", {.size = 9.0, .bold = true, .indent = 0.0});
  else
    page.text(fmt::format("{}  {}", cut_nothing(card) ? "CUT NOTHING, USE" : "CUT", card.amount(card.cut)),
              {.size = 9.0, .bold = true, .indent = 0.0});
  // What stays true until somebody acts stands in a box.
  const bool boxed = card.state != PieceState::ready;
  if (boxed)
    page.notice(card.state_line, {.size = 3.6, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}{} Lengths in {}; zero at the cut end aloft.{}{}",
                        boxed ? "" : card.state_line + ". ", known_to(card), unit_words(card.unit),
                        card.unit.remark.empty() ? "" : " ", card.unit.remark),
            {.size = 3.2, .bold = false, .indent = 0.0});
}

/// "From aloft, at the main masthead, to below, at the stem".
std::string from_where(const CardPiece& card) {
  if (card.stay->path.size() < 2)
    return "From aloft";
  return fmt::format("From aloft, {}, to below, {}", where_words(*card.rig, *card.stay, WhichEnd::upper),
                     where_words(*card.rig, *card.stay, WhichEnd::lower));
}

/// The piece lying on the bench, its marks with their numbers. Not to scale: marks stand at equal
/// distances.
void draw_piece(const CardPiece& card, double width, PaperPoint at, ShapeGroup& into) {
  const ShapeStyle heavy{.stroke_width = 1.1, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
  const ShapeStyle thin{.stroke_width = 0.35, .stroke_grey = 0.0, .dashes = {}, .fill_grey = {}};
  constexpr double label_room = 18.0;
  const double y = at.y + 7.4;
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
  into.add(TextShape{{at.x + width / 2.0, y + 6.2},
                     "not to scale; the numbers are those of the table",
                     2.6,
                     TextAnchor::middle,
                     false,
                     ""});
}

/// What else there is to know of an end, in the unit of the card.
std::string notes_words(const CardPiece& card, const PieceEnd& end) {
  return joined(card.spoken(end.notes), Join::semicolon);
}

/// What the cut leaves out because the file says nothing of it, and what would move it if it were known.
std::vector<std::string> left_out(const CardPiece& card) {
  std::vector<std::string> words;
  if (!card.piece->not_counted.empty())
    words.push_back("Not in the cut: " + joined(card.spoken(card.piece->not_counted), Join::semicolon) +
                    ".");
  if (!card.of_stay->not_corrected.empty())
    words.push_back(
        (card.cord ? "Not counted in how well X is known: " : "The reading is not corrected for: ") +
        joined(card.spoken(card.of_stay->not_corrected), Join::semicolon) + ".");
  std::vector<std::string> eyes;
  const std::string aloft = notes_words(card, card.piece->upper);
  const std::string below = notes_words(card, card.piece->lower);
  if (!aloft.empty())
    eyes.push_back((aloft == below ? "both, " : "aloft, ") + aloft);
  if (!below.empty() && aloft != below)
    eyes.push_back("below, " + below);
  if (!eyes.empty())
    words.push_back("Eyes: " + joined(eyes, "; ") + ".");
  return words;
}

/// "+ 1720 mm", "- 12 mm": with its sign, to be read in a sum.
std::string added(const CardPiece& card, CardLength length) {
  const bool negative = length.parts < 0;
  return (negative ? "- " : "+ ") + card.amount(CardLength{false, negative ? -length.parts : length.parts});
}

/// The cut in three numbers that can be added up by hand.
void add_sum(const CardPiece& card, PageFlow& page) {
  page.text(fmt::format("By hand: body {} {} for the ends{} = {}.", card.amount(card.body),
                        added(card, card.ends),
                        card.behaves.parts == 0 ? "" : " " + added(card, card.behaves) + " for the line",
                        card.amount(card.cut)),
            {.size = 3.6, .bold = true, .indent = 0.0});
}

void add_not_known(const CardPiece& card, PageFlow& page) {
  for (const std::string& unknown : card.spoken(card.piece->bench.not_known))
    page.text("No mark: " + unknown, {.size = 3.0, .bold = false, .indent = 0.0});
  for (const std::string& words : left_out(card))
    page.text(words, {.size = 2.6, .bold = false, .indent = 0.0});
}

void add_marks(const CardPiece& card, PageFlow& page) {
  page.drawing(14.5, [&](ShapeGroup& group, PaperPoint at) { draw_piece(card, page.width(), at, group); });
  FlowTable table{.columns = {{"no.", 0.6},
                              {"mark", 3.3},
                              {"from aloft", 1.8, true},
                              {"from below", 1.8, true},
                              {"done", 0.9},
                              {"as made", 1.4}},
                  .size = 3.6,
                  .gutter = card_gutter};
  for (std::size_t i = 0; i < card.marks.size(); ++i)
    table.rows.push_back({{.text = std::to_string(i + 1)},
                          {.text = card.marks[i].name},
                          {.text = card_text(card.unit, card.marks[i].from_upper), .bold = true},
                          {.text = card_text(card.unit, card.marks[i].from_lower)},
                          {.text = "", .tick = true},
                          {.text = "", .rule = true}});
  page.table(table);
  add_not_known(card, page);
  for (const std::string& line : in_hand_lines(card))
    page.text(line, {.size = 3.0, .bold = false, .indent = 0.0});
  add_sum(card, page);
}

void add_work(const CardPiece& card, const CordLook& look, PageFlow& page) {
  // A card from the cord has more rows and keeps to its page.
  const double size = card.cord ? look.text : 3.4;
  if (card.cord)
    page.space(1.0);
  else
    page.heading("In this order", 4.2);
  for (const CardStep& step : card_steps(card)) {
    if (!step.stop) {
      page.tick(step.text, {.size = size, .bold = false, .indent = 0.0});
      continue;
    }
    if (card.cord) {
      add_cord_stop(step.text, page);
      continue;
    }
    page.notice(step.text, {.size = 3.8, .bold = true, .indent = 0.0});
    page.to_write("Marked and dry-fitted by, day:", {.size = 3.2, .bold = false, .indent = 0.0});
    page.to_write("Measured a second time by, day:", {.size = 3.2, .bold = false, .indent = 0.0});
    page.space(0.5);
  }
  page.to_write("As made, bearing to bearing; load; temperature; day:",
                {.size = card.cord ? 2.8 : 3.2, .bold = false, .indent = 0.0});
}

void add_cautions(const CardPiece& card, PageFlow& page) {
  page.text(
      "A loaded line and a loaded terminal can maim. One stay at a time, and hold the mast by something "
      "else meanwhile. This card follows from the rig file and nothing else: nobody has judged whether "
      "the rig is strong enough. Local codes and a licensed professional rigger come before it.",
      {.size = card.cord ? 2.4 : 2.6, .bold = false, .indent = 0.0});
}

} // namespace

std::vector<std::string> threaded_first(const CardPiece& card) {
  std::vector<std::string> names;
  const std::vector<StackItem>& stack = card.stay->stack;
  const auto is_worn = [&](std::size_t i) {
    return stack[i].kind == StackItem::Kind::part && (*card.rig)[stack[i].part].role == Part::Role::worn;
  };
  // A pin and a bush are worn by a joint, not by the line.
  const auto add = [&](std::size_t i) {
    const Part& part = (*card.rig)[stack[i].part];
    if (part.kind != PartKind::pin && part.kind != PartKind::bush)
      names.push_back(shown(part.name, part.title));
  };
  // Worn parts stand beside the line, on either side of it.
  for (std::size_t i = card.item; i-- > 0 && is_worn(i);)
    add(i);
  for (std::size_t i = card.item + 1; i < stack.size() && is_worn(i); ++i)
    add(i);
  return names;
}

std::vector<CardStep> card_steps(const CardPiece& card) {
  std::vector<CardStep> steps;
  const auto add = [&](std::string text) { steps.push_back({std::move(text), false}); };
  add(fmt::format("Read the label of the line: {}, {}. Lay it out {}.", card.line->construction.text,
                  card.line->size.name, bench_tension(card)));
  if (card.cord)
    for (std::string& step : cord_steps(card))
      add(std::move(step));
  else
    add("Make every mark of the table from the one zero, the cut end aloft. Then check each from the other "
        "end.");
  const std::vector<std::string> first = threaded_first(card);
  if (!first.empty())
    add("Goes on before the second end is closed: " + joined(first, ", ") + ".");
  const std::string eyes = card.cord && card.rope() ? cord_eyes_step(card) + " " : "";
  if (card.has_dry_fit)
    add(eyes + fmt::format("Dry fit, {}: {} from bearing to bearing. Hang it in its place and "
                           "look at the adjuster.",
                           card.rope()                        ? "nothing cut or buried"
                           : card.cord && card.closed_aloft() ? "nothing cut, the end below not closed"
                                                              : "nothing cut or pressed",
                           card.amount(card.dry_fit)));
  else
    add(eyes + "Dry fit, nothing cut: hang it in its place and look at the adjuster.");
  steps.push_back({cut_nothing(card) ? "STOP. Sign before you bury; nothing is cut off this piece."
                                     : "STOP. Sign before you cut; what is cut off cannot be put back.",
                   true});
  if (card.cord && card.closed_aloft())
    add(fmt::format("Cut at mark {}, {} from the mouth of the closed end.", card.marks.size(),
                    card.amount(card.cut - card.marks[1].from_upper)));
  else if (card.cord && !cut_nothing(card))
    add(fmt::format("Cut at the outer marks: {}.", card.amount(card.cut)));
  else
    add(cut_step_words(card));
  if (card.rope()) {
    if (card.cord) {
      for (std::string& step : cord_splice_steps(card))
        add(std::move(step));
    } else {
      steps.push_back(splice_step(card, card.piece->upper, "aloft"));
      steps.push_back(splice_step(card, card.piece->lower, "below"));
    }
    add(setting(card));
  } else {
    if (!card.cord || !card.closed_aloft()) // closed already, to lay the cord along it
      steps.push_back(terminal_step(card, card.piece->upper, "aloft"));
    steps.push_back(terminal_step(card, card.piece->lower, "below"));
  }
  add(fmt::format("Measure again, bearing to bearing: {} wanted{}.", card.amount(card.body),
                  card.rope() && card.behaves.parts != 0 ? " at the dock tension" : ""));
  return steps;
}

namespace {

std::vector<Drawing> pages_at(const CardPiece& card, const std::string& boat, PaperSize size,
                              const CordLook& look) {
  PageFlow page(
      size,
      {.name = "Bench card " + card.piece->name, .about = boat, .draft = draft_lines(card.draft_reasons)});
  const bool from_cord = card.cord && !card.draft();
  if (from_cord)
    add_cord_head(card, known_to(card), page);
  else
    add_head(card, page);
  add_boxed(card, page);
  if (card.draft()) {
    add_release(
        card.draft_reasons,
        "Measure the stay in place, order line and parts, make tang and chainplate ready. Leave knife "
        "and fid alone: every mark may still move. When all of the above is in the rig file, print "
        "this card again.",
        page);
  } else if (from_cord) {
    add_cord_marks(card, look, page);
    for (const std::string& unknown : card.spoken(card.piece->bench.not_known))
      page.text("No mark: " + unknown, {.size = 2.6, .bold = false, .indent = 0.0});
    for (const std::string& line : in_hand_lines(card))
      page.text(line, {.size = 2.6, .bold = false, .indent = 0.0});
    if (const std::string words = joined(left_out(card), " "); !words.empty())
      page.text(words, {.size = 2.4, .bold = false, .indent = 0.0});
  } else {
    add_marks(card, page);
  }
  page.text(from_where(card) + ": " + stack_words(card),
            {.size = card.draft() ? 3.0 : 2.6, .bold = false, .indent = 0.0});
  if (!card.draft() && card.state != PieceState::on_record)
    add_work(card, look, page);
  add_cautions(card, page);
  return page.pages("Bench card of " + card.piece->name,
                    "What to mark on this piece, in which order to make it, and where to sign.");
}

} // namespace

std::vector<Drawing> card_pages(const CardPiece& card, const std::string& boat, PaperSize size) {
  const CordLook usual;
  std::vector<Drawing> pages = pages_at(card, boat, size, usual);
  if (!card.cord || card.draft())
    return pages;
  for (const CordLook& look :
       {CordLook{4.15, 2.8, true}, CordLook{4.0, 2.6, true}, CordLook{4.5, 2.8, false},
        CordLook{4.15, 2.8, false}, CordLook{4.0, 2.6, false}}) {
    if (pages.size() == 1)
      break;
    pages = pages_at(card, boat, size, look);
  }
  return pages;
}

BenchCard::BenchCard()
    : PagesBackend({"bench-card", "bench-cards", "Bench cards",
                    "a page for each piece: marks from one zero, the order of work, where to sign"}) {}

std::vector<Drawing> BenchCard::pages(const BackendRequest& request, const std::string&) const {
  const std::string boat = identity_words(request.checked);
  return pages_of_each(card_pieces(request.checked),
                       [&](const CardPiece& card) { return card_pages(card, boat, request.paper); });
}

} // namespace sheerpole
