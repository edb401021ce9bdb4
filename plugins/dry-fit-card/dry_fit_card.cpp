#include "plugins/dry-fit-card/dry_fit_card.hpp"

#include "backend/card/card_in_hand.hpp"
#include "backend/card/card_piece.hpp"
#include "backend/card/card_release.hpp"
#include "backend/paper_words.hpp"
#include "calculate/facts.hpp"
#include "calculate/joints/articulation.hpp"
#include "model/fact_name.hpp"
#include "wording/model_words.hpp"

#include <fmt/format.h>

namespace sheerpole {

namespace {

/// Where an adjuster stands: as set, and at the ends of its range.
enum class Position { set, closed, open };

std::string position_words(const StayFit& fit, const TakeUp& adjuster, Position position) {
  const CardPiece& card = fit.free();
  const Length length = position == Position::closed ? adjuster.set.value - adjuster.to_tighten
                        : position == Position::open ? adjuster.set.value + adjuster.to_slacken
                                                     : adjuster.set.value;
  std::string words = card.amount(length);
  if (fit.of_stay->adjusters.size() > 1)
    words = (*fit.rig)[adjuster.part].name + " " + words;
  if (position == Position::set)
    return words;
  const bool closed = position == Position::closed;
  const Length travel = closed ? adjuster.to_tighten : adjuster.to_slacken;
  if (const std::string turns = format_turns(travel, adjuster.travel_per_turn); !turns.empty())
    words += fmt::format(", {} turns {}", turns, closed ? "in" : "out");
  return words;
}

FitRow fit_row(const StayFit& fit, Position position) {
  FitRow row;
  row.position = position == Position::set ? "as set" : position == Position::closed ? "closed" : "open";
  row.adjusters = joined(fit.of_stay->adjusters, "; ",
                         [&](const TakeUp& adjuster) { return position_words(fit, adjuster, position); });
  const CardPiece& card = fit.free();
  if (!card.has_dry_fit)
    return row;
  row.of_bearings = position == Position::closed ? card.dry_fit + fit.to_tighten
                    : position == Position::open ? card.dry_fit - fit.to_slacken
                                                 : card.dry_fit;
  return row;
}

void finish(StayFit& fit) {
  for (std::size_t i = 0; i < fit.pieces.size(); ++i) {
    if (!fit.stay->stack[fit.pieces[i].item].line_length)
      fit.free_piece = i;
    const auto& reasons = fit.pieces[i].draft_reasons;
    fit.draft_reasons.insert(fit.draft_reasons.end(), reasons.begin(), reasons.end());
  }
  Length tighten;
  Length slacken;
  for (const TakeUp& adjuster : fit.of_stay->adjusters) {
    tighten += adjuster.to_tighten;
    slacken += adjuster.to_slacken;
  }
  fit.to_tighten = fit.free().unit.round(tighten);
  fit.to_slacken = fit.free().unit.round(slacken);
  fit.rows.push_back(fit_row(fit, Position::set));
  if (fit.of_stay->adjusters.empty())
    return;
  fit.rows.push_back(fit_row(fit, Position::closed));
  fit.rows.push_back(fit_row(fit, Position::open));
}

constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};
constexpr TextLook plain{.size = 3.2, .bold = false, .indent = 0.0};

/// Whether the file says that it is put on while the mast lies.
bool rigged_lying(const Stay& stay) {
  return fact_text(stay.particulars, fact_names.rigged) == "mast-down";
}

void add_head(const StayFit& fit, PageFlow& page) {
  const CardPiece& card = fit.free();
  page.text("DRY FIT   " + fit.stay->name, {.size = 6.5, .bold = true, .indent = 0.0});
  page.text(fmt::format("{}{}: {}", fit.stay->title.empty() ? "" : fit.stay->title + ", ",
                        side_words(fit.stay->side), card.stamp),
            {.size = 4.2, .bold = true, .indent = 0.0});
  if (fit.draft())
    add_not_yet("HANG", fit.draft_reasons, page, 9.0);
  page.text(fmt::format("{} Lengths in {}.{}{}",
                        card.state == PieceState::on_record ? card.state_line + "."
                                                            : "Nothing is cut, pressed or buried yet.",
                        unit_words(card.unit), card.unit.remark.empty() ? "" : " ", card.unit.remark),
            plain);
  if (rigged_lying(*fit.stay)) {
    page.notice(
        "Made with the mast down: lay the mast on trestles, hang the stay on it there and set it up before "
        "the mast goes up. Nobody goes aloft for it.",
        {.size = 3.0, .bold = true, .indent = 0.0});
    return;
  }
  page.notice(
      "Aloft: two lines, a harness, a second person on deck, nobody below. One stay at a time, and only "
      "when something else holds the mast. No pin of a loaded stay is drawn.",
      {.size = 3.0, .bold = true, .indent = 0.0});
}

std::string line_words(const CardPiece& card) {
  return fmt::format("{}: {}, {}; {}{}", card.piece->name, card.line->construction.text,
                     card.line->size.name,
                     card.rope() ? "eyes formed at their marks and seized, tails outside"
                                 : "terminals laid beside it at their marks, nothing pressed",
                     led_by(": ", tails_words(card)));
}

/// What the end of a stay is called in the middle of a sentence.
std::string end_of(const StayFit& fit, WhichEnd where) {
  return where_words(*fit.rig, *fit.stay, where);
}

void add_stack(const StayFit& fit, PageFlow& page) {
  page.heading(fit.stay->path.size() < 2
                   ? std::string("Hang, from aloft to deck")
                   : fmt::format("Hang, from the {} to the {}",
                                 place_words(*fit.rig, (*fit.rig)[fit.stay->path.front().point]),
                                 place_words(*fit.rig, (*fit.rig)[fit.stay->path.back().point])),
               4.0);
  FlowTable table{.columns = {{"what", 6.0}, {"set to", 1.7}, {"in", 0.6}, {"fast", 0.9}},
                  .size = 3.0,
                  .gutter = card_gutter};
  std::size_t piece = 0;
  for (const StackItem& item : fit.stay->stack) {
    const FlowCell tick{.text = "", .bold = false, .tick = true, .rule = false};
    if (item.kind == StackItem::Kind::line) {
      const std::string words = piece < fit.pieces.size() ? line_words(fit.pieces[piece]) : "line";
      ++piece;
      table.rows.push_back({{.text = words, .bold = true}, {.text = ""}, tick, {.text = ""}});
      continue;
    }
    const Part& part = (*fit.rig)[item.part];
    const std::string count = item.count > 1 ? std::to_string(item.count) + " x " : "";
    table.rows.push_back({{.text = count + shown(part.name, part.title)},
                          {.text = item.set_length ? fit.free().amount(item.set_length->value) : ""},
                          tick,
                          tick});
  }
  page.table(table);
}

void add_bearings(const StayFit& fit, PageFlow& page) {
  const CardUnit& unit = fit.free().unit;
  page.heading("From bearing to bearing of the line, hand-tight", 4.0);
  FlowTable table{.columns = {{"adjuster", 1.2}, {"its length", 3.2}, {"line", 2.0, true}, {"found", 2.2}},
                  .size = 3.4,
                  .gutter = card_gutter};
  const FlowCell rule{.text = "", .bold = false, .tick = false, .rule = true};
  for (const FitRow& row : fit.rows)
    table.rows.push_back(
        {{.text = fit.of_stay->adjusters.empty() ? "none" : row.position},
         {.text = row.adjusters},
         {.text = row.of_bearings ? card_amount(unit, *row.of_bearings) : "not known", .bold = true},
         rule});
  for (const CardPiece& card : fit.pieces)
    if (&card != &fit.free())
      table.rows.push_back({{.text = fmt::format("piece {} of {}", card.piece->number, card.piece->of)},
                            {.text = "has a length of its own"},
                            {.text = card.has_dry_fit ? card.amount(card.dry_fit) : "not known"},
                            rule});
  page.table(table);
  if (!fit.of_stay->adjusters.empty())
    page.text(
        "Each row: the line that just hangs with the adjuster so. Longer than \"closed\" it cannot be made "
        "tight; under \"open\" it does not reach.",
        small);
  if (fit.free().cut.unknown)
    page.text(joined(x_words(fit.free()), " "), small);
  if (const auto& first = fit.of_stay->first_fit; first && first->short_by)
    page.text(
        fmt::format("Spliced: {} at first fit, {} after setting; the splices give {} back as they set, "
                    "and until then the adjuster gives it out.",
                    card_amount(unit, fit.free().body - unit.round(*first->short_by)),
                    card_amount(unit, fit.free().body), card_amount(unit, unit.round(*first->short_by))),
        small);
  if (!fit.free().has_dry_fit)
    page.text("The lengths wait for what is missing above; hang it all the same and write down what you "
              "find.",
              small);
}

/// What the stay holds, and what can fall while it is off.
void add_parting(const StayFit& fit, PageFlow& page) {
  const std::vector<std::string> words = parting_words(*fit.rig, fit.of_stay->stay);
  if (words.empty())
    return;
  page.text("While it is off, or if it parts: " + joined(words, " "), plain);
  page.to_write("Held meanwhile by:", plain);
}

/// What swings at one end: "toggle-12 swings free both ways, fore and aft and athwart."
std::string swing_words(const StayFit& fit, WhichEnd where) {
  const auto found = articulation(*fit.rig, *fit.stay, where);
  if (found && found->swings)
    return *found->swings + " swings free both ways, fore and aft and athwart.";
  if (found)
    return "nothing is stated that swings both ways: move it fore and aft and athwart, and see what "
           "binds.";
  return "the hardware follows the line both ways, fore and aft and athwart, and nothing binds.";
}

/// To look at what swings at each end, in one sentence where the same is said of both.
void add_swings(const StayFit& fit, PageFlow& page) {
  const auto tick = [&](std::string ends, const std::string& words) {
    ends.front() = static_cast<char>(ends.front() - 'a' + 'A');
    page.tick(ends + ": " + words, plain);
  };
  const std::string upper = swing_words(fit, WhichEnd::upper);
  const std::string lower = swing_words(fit, WhichEnd::lower);
  if (upper == lower)
    return tick("at both ends", upper);
  tick(end_of(fit, WhichEnd::upper), upper);
  tick(end_of(fit, WhichEnd::lower), lower);
}

std::string screw_words(const StayFit& fit, const TakeUp& adjuster) {
  const CardPiece& card = fit.free();
  const std::string& name = (*fit.rig)[adjuster.part].name;
  if (!adjuster.engaged)
    return name + ", thread left in the body, each stud (not stated); found:";
  std::string words =
      fmt::format("{}, thread left in the body, each stud: {}", name, card.amount(*adjuster.engaged));
  if (adjuster.least_engagement)
    words += fmt::format(", at least {}", card.amount(*adjuster.least_engagement));
  return words + "; found:";
}

void add_looks(const StayFit& fit, PageFlow& page) {
  page.heading("Look at", 4.0);
  page.tick("Every pin goes in by hand to its head, and its split pin or ring through it.", plain);
  page.tick(
      fmt::format(
          "Look along the stay {} and {}, from ahead and from the side: it pulls in line with what it "
          "is pinned to, and bends neither.",
          end_of(fit, WhichEnd::upper), end_of(fit, WhichEnd::lower)),
      plain);
  add_swings(fit, page);
  if (fit.stay->path.size() > 2)
    page.tick("At each tip it lies where it will lie, with nothing under it and nothing sharp beside it.",
              plain);
  if (fit.free().rope())
    page.tick("Each eye lies in its seat all round, and its throat is clear of the edge.", plain);
  for (const TakeUp& adjuster : fit.of_stay->adjusters)
    if (adjuster.travel_per_turn)
      page.to_write(screw_words(fit, adjuster), plain);
}

void add_found(PageFlow& page) {
  page.to_write("Adjuster when hand-tight: length, or turns from closed:", plain);
  page.to_write("Pull, temperature, afloat or ashore, wind:", plain);
  page.to_write("Hung by; looked at a second time by; day:", plain);
}

void add_last_words(PageFlow& page) {
  page.text("This card follows from the rig file and nothing else. Local rules and a licensed professional "
            "rigger come before it.",
            {.size = 2.8, .bold = false, .indent = 0.0});
}

void add_mends(const StayFit& fit, PageFlow& page) {
  const CardPiece& card = fit.free();
  page.heading("When it does not come where it should", 4.0);
  constexpr TextLook look{.size = 2.8, .bold = false, .indent = 0.0};
  page.text(std::string(
                card.state == PieceState::on_record ? "" : "Nothing is cut, so all can still be mended. ") +
                "Look for the cause before you move a mark: a part that was left out or put in twice, an "
                "adjuster "
                "set otherwise, another hole, the reading. Put the number right in the rig file and print "
                "the cards "
                "again.",
            look);
  const std::string left = fit.of_stay->adjusters.empty()
                               ? "The stay has no adjuster."
                               : fmt::format("From its setting the adjuster takes up {} and gives out {}.",
                                             card.amount(fit.to_tighten), card.amount(fit.to_slacken));
  page.text(
      fmt::format("After cutting. {} Too long beyond that: one end is made again{}. Too short beyond "
                  "that: a toggle or a link may fill the gap if it is strong enough and its pins fit; "
                  "else a new piece. Nothing is spliced or joined in.",
                  left,
                  card.rope() ? ", with the whole bury"
                              : "; a pressed terminal is cut off and not used again"),
      look);
  add_last_words(page);
}

} // namespace

std::vector<StayFit> stay_fits(const CheckedRig& checked) {
  std::vector<StayFit> fits;
  for (CardPiece& card : card_pieces(checked)) {
    if (fits.empty() || fits.back().of_stay != card.of_stay)
      fits.push_back({.rig = card.rig,
                      .of_stay = card.of_stay,
                      .stay = card.stay,
                      .pieces = {},
                      .to_tighten = {},
                      .to_slacken = {},
                      .draft_reasons = {}});
    fits.back().pieces.push_back(std::move(card));
  }
  for (StayFit& fit : fits)
    finish(fit);
  return fits;
}

std::vector<Drawing> fit_pages(const StayFit& fit, const std::string& boat, PaperSize size) {
  PageFlow page(size, {.name = "Dry fit " + fit.stay->name,
                       .about = boat,
                       .draft = draft_lines(fit.draft_reasons),
                       .hatched = fit.draft()});
  add_head(fit, page);
  if (fit.draft()) {
    add_release(
        fit.draft_reasons,
        "There is nothing to hang yet: the eyes are seized, or the terminals laid, at marks that may "
        "still move. Look at tang, chainplate and pins, and read the stay in place. When all of the "
        "above is in the rig file, print this card again.",
        page);
    add_parting(fit, page);
    add_last_words(page);
  } else {
    add_stack(fit, page);
    add_bearings(fit, page);
    add_looks(fit, page);
    add_parting(fit, page);
    add_found(page);
    add_mends(fit, page);
  }
  return page.pages(
      "Dry fit of " + fit.stay->name,
      "What to hang before anything is cut, where its bearings should come, what to look at.");
}

DryFitCard::DryFitCard()
    : PagesBackend(
          {"dry-fit-card", "dry-fit-cards", "Dry-fit cards",
           "a page for each stay: what to hang before cutting, where it should come, what to see"}) {}

std::vector<Drawing> DryFitCard::pages(const BackendRequest& request, const std::string&) const {
  const std::string boat = identity_words(request.checked);
  return pages_of_each(stay_fits(request.checked), [&](const StayFit& fit) {
    std::vector<Drawing> pages = fit_pages(fit, boat, request.paper);
    // Lying there is no halyard to hoist it by; of a draft there is nothing to hoist, but what was hoisted
    // is to be read.
    if (!rigged_lying(*fit.stay) && (!fit.draft() || fit.hung()))
      for (Drawing& page : hoisted_pages(fit, boat, request.paper))
        pages.push_back(std::move(page));
    return pages;
  });
}

} // namespace sheerpole
