#include "plugins/spool-plan/plan_csv.hpp"

namespace sheerpole {

namespace {

std::string joined(const std::vector<std::string>& words) {
  std::string text;
  for (const std::string& word : words)
    text += (text.empty() ? "" : "; ") + word;
  return text;
}

std::string all_names(const LineOrder& line) {
  std::string text;
  for (const NamedLine& name : line.names)
    text += (text.empty() ? "" : " + ") + name.name;
  return text;
}

std::string fate_word(RestFate fate) {
  switch (fate) {
  case RestFate::nothing:
    return "none";
  case RestFate::stays:
    return "stays";
  case RestFate::offcut:
    return "offcut";
  case RestFate::waste:
    return "waste";
  }
  return "none";
}

} // namespace

std::string plan_csv(const SpoolPlan& plan) {
  Table table{.title = "",
              .columns = {{"line"},           {"kind"},
                          {"construction"},   {"grade"},
                          {"size"},           {"stock"},
                          {"stock_no", true}, {"sort"},
                          {"batch"},          {"stock_length_mm", true},
                          {"cut_no", true},   {"from_mm", true},
                          {"to_mm", true},    {"length_mm", true},
                          {"kerf_mm", true},  {"boat"},
                          {"stay"},           {"side"},
                          {"piece"},          {"listed_cut_mm", true},
                          {"estimate"},       {"draft"},
                          {"draft_reasons"},  {"rest_mm", true},
                          {"rest"},           {"rest_name"}},
              .rows = {},
              .notes = {}};
  for (const LinePlan& line : plan.lines) {
    std::size_t number = 0;
    for (const SpoolUse& use : line.uses) {
      const StockInHand& stock = line.order.stocks[use.stock];
      for (const SpoolCut& cut : use.cuts) {
        const WantedPiece& piece = line.order.pieces[cut.piece];
        const bool last = &cut == &use.cuts.back();
        table.rows.push_back({all_names(line.order),
                              std::string(name_of(line.order.kind)),
                              line.order.construction,
                              line.order.grade,
                              line.order.size.name,
                              stock.name,
                              std::to_string(use.ordinal),
                              stock.sort,
                              stock.batch,
                              std::to_string(stock.length_mm),
                              std::to_string(++number),
                              std::to_string(cut.start_mm),
                              std::to_string(cut.end_mm),
                              std::to_string(piece.length_mm),
                              std::to_string(cut.kerf_mm),
                              piece.boat,
                              piece.stay,
                              std::string(name_of(piece.side)),
                              piece.name,
                              format_tenths(Tenths::of(piece.cut)),
                              piece.estimated ? "yes" : "no",
                              piece.draft_reasons.empty() ? "no" : "yes",
                              joined(piece.draft_reasons),
                              last ? std::to_string(use.rest_mm) : "",
                              last ? fate_word(use.fate) : "",
                              last ? use.rest_name : ""});
      }
    }
  }
  return render_csv(table);
}

} // namespace sheerpole
