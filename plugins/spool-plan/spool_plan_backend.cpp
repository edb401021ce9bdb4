#include "plugins/spool-plan/spool_plan_backend.hpp"

#include "backend/drawing/svg_writer.hpp"
#include "backend/order/order_plan.hpp"
#include "backend/page/foot.hpp"
#include "backend/page/paper_files.hpp"
#include "wording/papers/spool_plan_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
#include <utility>

namespace sheerpole {

namespace {

/// How many boats before this one have its title.
std::size_t earlier(const std::vector<SpoolBoat>& boats, std::size_t number) {
  return static_cast<std::size_t>(
      std::count_if(boats.begin(), boats.begin() + static_cast<std::ptrdiff_t>(number),
                    [&](const SpoolBoat& boat) { return boat.title == boats[number].title; }));
}

bool shared(const std::vector<SpoolBoat>& boats, const std::string& title) {
  return std::count_if(boats.begin(), boats.end(),
                       [&](const SpoolBoat& boat) { return boat.title == title; }) > 1;
}

} // namespace

FleetBoats fleet_boats(const BackendRequest& request) {
  std::vector<FleetRig> rigs = request.fleet;
  if (rigs.empty())
    rigs.push_back({&request.checked, "", {}});
  FleetBoats fleet;
  for (const FleetRig& rig : rigs) {
    fleet.boats.push_back(spool_boat(*rig.checked));
    fleet.boats.back().source_keys = rig.source_keys;
    if (fleet.boats.back().title.empty())
      fleet.boats.back().title = rig.file.empty() ? say(SpoolPlanPhrase::boat_without_name) : rig.file;
  }
  std::vector<SpoolBoat> as_titled = fleet.boats;
  for (std::size_t i = 0; i < rigs.size(); ++i)
    if (shared(as_titled, as_titled[i].title) && !rigs[i].file.empty())
      fleet.boats[i].title += " (" + rigs[i].file + ")";
  as_titled = fleet.boats;
  for (std::size_t i = 0; i < rigs.size(); ++i)
    if (const std::size_t before = earlier(as_titled, i); before > 0)
      fleet.boats[i].title += " " + std::to_string(before + 1);
  fleet.titles = joined(fleet.boats, ", ", [](const SpoolBoat& boat) { return boat.title; });
  fleet.identity = joined(rigs, "; ", [](const FleetRig& rig) { return identity_words(*rig.checked); });
  fleet.edition = joined(rigs, "; ", [](const FleetRig& rig) { return edition_words(*rig.checked); });
  return fleet;
}

std::string counted(std::int64_t count, PhraseText one, PhraseText several) {
  return std::to_string(count) + " " + (count == 1 ? one : several);
}

std::string line_words(const LineOrder& line) {
  std::string words(name_of(line.kind));
  for (std::size_t i = 0; i < line.names.size(); ++i) {
    words += (i == 0 ? " " : ", ") + line.names[i].name;
    if (line.names.size() > 1) {
      words += " (" + joined(line.names[i].boats, ", ") + ")";
    }
  }
  return words + ", " + line.size.name;
}

std::string made_of(const LineOrder& line) {
  return line.construction + led_by(", ", line.grade);
}

std::string stock_words(const LineOrder& line, const SpoolUse& use) {
  const StockInHand& stock = line.stocks[use.stock];
  std::string words = stock.name;
  if (stock.pieces > 1)
    words += say(SpoolPlanPhrase::no_of, use.ordinal, stock.pieces);
  words += say(SpoolPlanPhrase::of_mm, name_of(stock.sort), stock.length_mm);
  if (!stock.batch.empty())
    words += say(SpoolPlanPhrase::batch, stock.batch);
  return words;
}

std::string rest_words(const LineOrder& line, const SpoolUse& use) {
  const StockInHand& stock = line.stocks[use.stock];
  switch (use.fate) {
  case RestFate::nothing:
    return say(SpoolPlanPhrase::nothing);
  case RestFate::waste:
    return say(SpoolPlanPhrase::mm_are_waste, use.rest_mm);
  case RestFate::stays:
  case RestFate::offcut:
    break;
  }
  std::string words = fmt::format("{} mm ", use.rest_mm);
  if (use.fate == RestFate::offcut)
    words += say(SpoolPlanPhrase::are_kept_as_offcut, use.rest_name);
  else
    words += say(
        SpoolPlanPhrase::stay_on_the, name_of(stock.sort),
        (use.rest_name == stock.name ? "" : say(SpoolPlanPhrase::which_is_from_then_on, use.rest_name)));
  if (stock.kept_back_mm > 0)
    words += say(SpoolPlanPhrase::mm_them_spare_that_is, std::min(stock.kept_back_mm, use.rest_mm));
  return words;
}

std::string piece_words(const WantedPiece& piece) {
  return piece.boat + ": " + piece.name;
}

std::string planned_words(std::int64_t mm, bool draft) {
  return draft ? about_metres(Length::millimetres(static_cast<double>(mm))) : fmt::format("{} mm", mm);
}

std::string proof_words(const LinePlan& plan) {
  const bool draft = any_draft(plan.order);
  PhraseText what = "";
  PhraseText less = "";
  switch (plan.measure) {
  case SpoolMeasure::uncut:
    what = say(SpoolPlanPhrase::pieces_find_no_place_in);
    less = say(SpoolPlanPhrase::leaves);
    break;
  case SpoolMeasure::cut_off:
    what = say(SpoolPlanPhrase::are_cut_off_spools_and);
    less = say(SpoolPlanPhrase::cuts_off);
    break;
  case SpoolMeasure::offcuts_begun:
    what = say(SpoolPlanPhrase::offcuts_are_begun);
    less = say(SpoolPlanPhrase::begins);
    break;
  }
  std::string words =
      plan.proven
          ? say(SpoolPlanPhrase::and_no_plan_less_proven, planned_words(plan.counted_mm, draft), what, less)
          : say(SpoolPlanPhrase::no_plan_less_than_not, planned_words(plan.counted_mm, draft), what, less,
                planned_words(plan.bound_mm, draft));
  const bool too_long =
      std::any_of(plan.short_pieces.begin(), plan.short_pieces.end(), [](const ShortPiece& piece) {
        return piece.reason == UncutReason::longer_than_every_stock;
      });
  return too_long ? say(SpoolPlanPhrase::it_speaks_pieces_that_are, words) : words;
}

std::string cutting_words(const LineOrder& line) {
  std::vector<std::string> greatest;
  std::string words = say(SpoolPlanPhrase::kerf_mm, line.kerf_mm.value);
  if (line.loses_a_link)
    words += say(SpoolPlanPhrase::loses_a_link);
  else if (!line.kerf_mm.stated)
    words += say(SpoolPlanPhrase::not_stated);
  if (line.least_offcut_mm.stated)
    words += say(SpoolPlanPhrase::rest_mm_or_more_is, line.least_offcut_mm.value);
  else
    words += say(SpoolPlanPhrase::every_rest_is_kept_no);
  if (line.spare.stated)
    words += say(SpoolPlanPhrase::spare_on_each_piece, percent_text(line.spare.value));
  else
    words += say(SpoolPlanPhrase::no_spare_on_pieces);
  if (line.sold_in_mm.stated)
    words += say(SpoolPlanPhrase::sold_in_spools_mm, line.sold_in_mm.value);
  if (line.kerf_mm.differs)
    greatest.emplace_back(say(SpoolPlanPhrase::kerf_word));
  if (line.least_offcut_mm.differs)
    greatest.emplace_back(say(SpoolPlanPhrase::least_offcut));
  if (line.spare.differs)
    greatest.emplace_back(say(SpoolPlanPhrase::spare));
  if (line.sold_in_mm.differs)
    greatest.emplace_back(say(SpoolPlanPhrase::spool_as_it_is_sold));
  for (std::size_t i = 0; i < greatest.size(); ++i)
    words += (i == 0 ? say(SpoolPlanPhrase::files_state_differently_and_greatest) : ", ") + greatest[i];
  return words;
}

std::string to_buy_words(const LinePlan& plan) {
  if (plan.short_pieces.empty())
    return "";
  std::int64_t longest = 0;
  bool draft = false;
  for (const ShortPiece& missing : plan.short_pieces) {
    const WantedPiece& piece = plan.order.pieces[missing.piece];
    longest = std::max(longest, piece.length_mm);
    draft = draft || piece.draft();
  }
  const auto count = static_cast<std::int64_t>(plan.short_pieces.size());
  std::string words =
      (draft ? say(SpoolPlanPhrase::at_the_least,
                   about_metres(Length::millimetres(static_cast<double>(plan.to_buy_mm))))
             : say(SpoolPlanPhrase::at_least_mm_m, plan.to_buy_mm,
                   format_fixed(Length::millimetres(static_cast<double>(plan.to_buy_mm)).metres(), 2))) +
      ": " + counted(count, say(SpoolPlanPhrase::piece), say(SpoolPlanPhrase::pieces));
  if (plan.order.kerf_mm.value > 0)
    words += say(SpoolPlanPhrase::with_kerf_mm, plan.order.kerf_mm.value,
                 count == 1 ? "" : say(SpoolPlanPhrase::each));
  words += count == 1 ? say(SpoolPlanPhrase::in_one_length)
                      : say(SpoolPlanPhrase::longest_is_no_piece_can, planned_words(longest, draft));
  if (!plan.order.sold_in_mm.stated)
    return words;
  const auto spools = spools_to_buy(plan);
  return words + (spools ? say(SpoolPlanPhrase::that_is, counted(*spools, say(SpoolPlanPhrase::whole_spool),
                                                                 say(SpoolPlanPhrase::whole_spools)))
                         : say(SpoolPlanPhrase::piece_is_longer_than_whole));
}

bool any_draft(const LineOrder& line) {
  return std::any_of(line.pieces.begin(), line.pieces.end(),
                     [](const WantedPiece& piece) { return piece.draft(); });
}

bool any_draft(const SpoolPlan& plan) {
  return std::any_of(plan.lines.begin(), plan.lines.end(),
                     [](const LinePlan& line) { return any_draft(line.order); });
}

BackendDescription SpoolPlanBackend::describe() const {
  return {.name = "spool-plan",
          .summary = say(SpoolPlanPhrase::what_to_cut_from_which),
          .outputs = {"spool-plan.txt", "spool-plan.csv", "spool-plan.svg"},
          .sometimes = {"new-stock.rig", "cut-pieces.rig"},
          .papers = {"spool-plan.pdf"}};
}

OutputBundle SpoolPlanBackend::generate(const BackendRequest& request) const {
  const FleetBoats fleet = fleet_boats(request);
  const SpoolPlan plan = plan_spools(fleet.boats);
  OutputBundle bundle;
  const std::string text = plan_text(fleet, plan);
  bundle.files.push_back(
      {"spool-plan.txt", with_foot(text, say(SpoolPlanPhrase::spool_plan_begins, fleet.identity))});
  bundle.files.push_back({"spool-plan.csv", plan_csv(plan)});
  std::vector<Drawing> sheets = plan_drawing(fleet, plan);
  for (std::size_t i = 0; i < sheets.size(); ++i)
    bundle.files.push_back(
        {i == 0 ? "spool-plan.svg" : fmt::format("spool-plan-{}.svg", i + 1), write_svg(sheets[i])});
  if (request.printed) {
    PagedFile paper = text_paper_of_lengths({.file = "spool-plan.pdf",
                                             .name = say(SpoolPlanPhrase::spool_plan),
                                             .boat = fleet.titles,
                                             .about = fleet.identity},
                                            text, request);
    std::move(sheets.begin(), sheets.end(), std::back_inserter(paper.pages));
    number_pages(paper.pages);
    bundle.papers.push_back(std::move(paper));
  }
  for (std::size_t i = 0; i < plan.files.size(); ++i)
    bundle.files.push_back({i == 0 ? "new-stock.rig" : fmt::format("new-stock-{}.rig", i + 1),
                            new_stock_text(fleet, plan, i)});
  for (std::size_t i = 0; i < fleet.boats.size(); ++i)
    if (std::string pieces = cut_pieces_text(fleet, plan, i); !pieces.empty())
      bundle.files.push_back(
          {i == 0 ? "cut-pieces.rig" : fmt::format("cut-pieces-{}.rig", i + 1), std::move(pieces)});
  return bundle;
}

} // namespace sheerpole
