#include "plugins/receiving-card/goods_pages.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};
constexpr TextLook plain{.size = 3.2, .bold = false, .indent = 0.0};

void add_head(const std::string& boat, const CardUnit& unit, PageFlow& page) {
  page.text("RECEIVING CARD   " + boat, {.size = 6.5, .bold = true, .indent = 0.0});
  page.text("Measure what came in before it is paid for, cut into or fitted. A dash stands where the rig "
            "file does "
            "not say what is wanted: write down what you find, and put it into the file.",
            plain);
  const bool metric = unit.kind == CardUnit::Kind::millimetres;
  page.text(
      std::string(metric ? "Lengths are in millimetres" : "Lengths are in inches and decimals") +
          ", as callipers read them; sizes are the names by which things are sold. An inch size and a "
          "metric size that look alike are two things.",
      small);
  page.notice(
      "A coil of wire springs open when its bands are cut, and its ends cut hands: gloves, goggles, "
      "one band at a time, and hold both ends.",
      {.size = 3.2, .bold = true, .indent = 0.0});
  page.to_write("From, invoice, day:", plain);
}

void add_goods(const Goods& one, PageFlow& page) {
  // What belongs together stays on one sheet where it can: about so much a row, and the lines around them.
  page.room_for(std::min(170.0, 26.0 + 6.5 * static_cast<double>(one.rows.size())));
  page.heading(one.name + (one.what.empty() ? "" : ": " + one.what), 3.8);
  FlowTable table{.columns = {{"what", 4.4}, {"wanted", 2.9}, {"found", 2.6}, {"ok", 0.6}, {"not ok", 0.9}},
                  .rows = {},
                  .size = 3.0};
  const FlowCell line{.text = "", .bold = false, .tick = false, .rule = true};
  const FlowCell tick{.text = "", .bold = false, .tick = true, .rule = false};
  for (const GoodsRow& row : one.rows)
    table.rows.push_back({{.text = row.what},
                          {.text = row.wanted.empty() ? "-" : row.wanted, .bold = true},
                          line,
                          tick,
                          tick});
  page.table(table);
  for (const std::string& note : one.notes)
    page.text(note + ".", small);
  page.tick(one.line
                ? "Looked over from end to end: no kink, no broken wire or strand, no rust, no chafe."
                : "Looked over: no crack, no dent, no burr in holes and threads; a screw turns by hand "
                  "over all its length.",
            small);
  page.to_write("Batch, number on it, invoice:", small);
}

std::vector<std::string> draft_lines_of(const CheckedRig& checked, const std::vector<Goods>& all) {
  bool any_line = false;
  for (const Goods& one : all)
    any_line = any_line || one.line;
  if (!any_line || checked.draft_reasons().empty())
    return {};
  return {
      "The lengths of line wanted rest on numbers that are assumed or missing; the cut list names them"};
}

} // namespace

std::vector<Drawing> goods_pages(const CheckedRig& checked, const std::string& boat, PaperSize size) {
  const std::vector<Goods> all = goods(checked);
  PageFlow page(size, {.name = "Receiving card", .about = boat, .draft = draft_lines_of(checked, all)});
  add_head(boat, card_unit(checked.rig()), page);
  for (const Goods& one : all)
    add_goods(one, page);
  if (all.empty())
    page.text("The rig file states nothing that is to come in.");
  page.space(2.0);
  page.to_write("Received by, day:", plain);
  page.to_write("Measured a second time by, day:", plain);
  page.text(
      "This card follows from the rig file and nothing else. Nobody has judged whether what was ordered "
      "is strong enough: local rules and a licensed professional rigger come before it. What is not ok "
      "is not fitted.",
      {.size = 2.8, .bold = false, .indent = 0.0});
  return page.pages("Receiving card of " + boat,
                    "What comes in for the rig, held against what the rig file asks for.");
}

} // namespace sheerpole
