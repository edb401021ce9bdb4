#include "plugins/spool-plan/spool_plan_backend.hpp"

#include "kinds/kind_row.hpp"
#include "model/kind_words.hpp"
#include "units/dimension.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/spool_plan_words.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

std::string in_quotes(std::string_view text) {
  std::string result = "\"";
  for (const char sign : text) {
    if (sign == '"' || sign == '\\')
      result += '\\';
    result += sign;
  }
  return result + "\"";
}

/// 12345.6 as 12_345.6, as the examples write it.
std::string grouped(const std::string& number) {
  const std::size_t whole = std::min(number.find('.'), number.size());
  std::string result = number;
  for (std::size_t at = whole; at > 3; at -= 3)
    result.insert(at - 3, "_");
  return result;
}

/// A ten-thousandth of a millimetre is far below what a tape shows and above the noise of the arithmetic.
std::string millimetres_text(double metres) {
  return grouped(format_number(std::round(metres * 1e7) / 1e4)) + " mm";
}

std::string share_text(double share) {
  return format_number(std::round(share * 1e8) / 1e6) + " %";
}

std::string source_text(const Provenance& provenance) {
  if (provenance.source_class == SourceClass::unstated)
    return "";
  std::string text = " " + std::string(name_of(provenance.source_class));
  if (const std::string note = note_words(provenance); !note.empty())
    text += " " + in_quotes(note);
  return text;
}

/// One property of a record as it stood.
std::string property_text(const Particular& fact) {
  const std::string name = "  " + fact.name + ": ";
  if (fact.name == "length" || fact.name == "kerf" || fact.name == "least-offcut" ||
      fact.name == "sold-in") {
    std::string text = name + millimetres_text(fact.value.value.si);
    if (fact.value.tolerance)
      text += " ± " + millimetres_text(fact.value.tolerance->si);
    return text + source_text(fact.value.provenance) + "\n";
  }
  if (fact.name == "order-margin" && !fact.names.empty())
    return name + joined(fact.names, " ") + "\n";
  if (fact.name == "spare" || fact.name == "order-margin")
    return name + share_text(fact.value.value.si) + source_text(fact.value.provenance) + "\n";
  return name + in_quotes(fact.text) + "\n";
}

const Record* cutting_of(const FleetBoats& fleet, const StockInHand& stock) {
  const Record* cutting = nullptr;
  for (const Record& record : fleet.boats[stock.boat].rig->records)
    if (record.kind == RecordKind::cutting && record.of == stock.of)
      cutting = &record; // what a file says later counts
  return cutting;
}

/// What is stated of the cutting of a line, and the marks of what has been taken of it, now or before.
std::string cutting_text(const std::string& of, const Record* cutting, const LinePlan& plan) {
  std::string text;
  if (cutting != nullptr)
    for (const Particular& fact : cutting->facts)
      if (fact.name != "taken-for")
        text += property_text(fact);
  std::vector<std::string> marks = plan.order.taken;
  for (const SpoolUse& use : plan.uses)
    for (const SpoolCut& cut : use.cuts)
      marks.push_back(piece_mark(plan.order.pieces[cut.piece]));
  if (!marks.empty())
    text += "  taken-for: " + in_quotes(joined(marks, " ")) + "\n";
  return text.empty() ? text : "\ncutting of " + of + " {\n" + text + "}\n";
}

bool is_of_file(const SpoolBoat& boat, const Record& record, const StockFile& file) {
  return record.place.source.index() < boat.source_keys.size() &&
         boat.source_keys[record.place.source.index()] == file.key;
}

/// What the file states of cutting lines of which it has no stock, as it stood: it is not lost either.
std::string other_cutting_text(const FleetBoats& fleet, const StockFile& file,
                               const std::vector<std::string>& written) {
  std::string text;
  std::vector<std::string> done = written;
  for (const SpoolBoat& boat : fleet.boats)
    for (auto record = boat.rig->records.rbegin(); record != boat.rig->records.rend(); ++record) {
      if (record->kind != RecordKind::cutting || record->facts.empty() ||
          !is_of_file(boat, *record, file) || std::find(done.begin(), done.end(), record->of) != done.end())
        continue;
      done.push_back(record->of);
      std::string facts;
      for (const Particular& fact : record->facts)
        facts += property_text(fact);
      text.insert(0, "\ncutting of " + record->of + " {\n" + facts + "}\n");
    }
  return text;
}

/// A shop of the file, as it stood.
std::string shop_text(const Record& shop) {
  std::string text =
      "\nshop " + shop.name + led_by(" ", shop.title.empty() ? "" : in_quotes(shop.title)) + " {\n";
  const KindRow* kind = find_kind(name_of(RecordKind::shop));
  for (const Particular& fact : shop.facts) {
    const PropertyRow* row = kind == nullptr ? nullptr : find_property(kind->properties, fact.name);
    const std::string name = "  " + fact.name + ": ";
    if (row != nullptr && row->type == ValueType::choice)
      text += name + fact.text + "\n";
    else if (row != nullptr && row->type == ValueType::quantity)
      text += name +
              (row->dimension == dimension::length ? millimetres_text(fact.value.value.si)
                                                   : share_text(fact.value.value.si)) +
              source_text(fact.value.provenance) + "\n";
    else
      text += name + in_quotes(fact.text) + "\n";
  }
  return text + "}\n";
}

/// The shops that a file of stock states: it is used in the place of that file, so they are not lost.
std::string shops_text(const FleetBoats& fleet, const StockFile& file) {
  std::string text;
  std::vector<std::string> written;
  for (const SpoolBoat& boat : fleet.boats)
    for (const Record& record : boat.rig->records)
      if (record.kind == RecordKind::shop && is_of_file(boat, record, file) &&
          std::find(written.begin(), written.end(), record.name) == written.end()) {
        written.push_back(record.name);
        text += shop_text(record);
      }
  return text;
}

std::string stock_text(const StockInHand& was, const NewStock& now) {
  std::string text = "\nstock " + now.name;
  if (!was.record->title.empty())
    text += " " + in_quotes(was.record->title);
  text += " of " + was.of + " {\n  sort: " + std::string(name_of(now.sort)) + "\n";
  for (const Particular& fact : was.record->facts) {
    if (fact.name == "length" && now.changed)
      text += "  length: " + grouped(std::to_string(now.length_mm)) + " mm computed \"left of " + was.name +
              " by the spool plan\"\n";
    else if (fact.name == "spare" && now.changed && now.sort != was.sort)
      continue; // is what was kept back of the whole
    else if (fact.name != "sort" && fact.name != "pieces")
      text += property_text(fact);
  }
  if (now.pieces > 1)
    text += "  pieces: " + std::to_string(now.pieces) + "\n";
  return text + "}\n";
}

std::string all_names(const LineOrder& line) {
  return joined(line.names, " + ", [](const NamedLine& name) { return name.name; });
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

std::string new_stock_text(const FleetBoats& fleet, const SpoolPlan& plan, std::size_t file) {
  std::string text = "language 1\n\n";
  const std::string what = say(SpoolPlanPhrase::stock_as_it_is_when, fleet.titles, plan.files[file].name);
  for (const std::string& line : wrap_text(what, 98))
    text += "# " + line + "\n";
  text += shops_text(fleet, plan.files[file]);
  std::vector<std::string> written;
  for (const LinePlan& line : plan.lines)
    for (const StockInHand& stock : line.order.stocks) {
      if (stock.file != file || std::find(written.begin(), written.end(), stock.of) != written.end())
        continue;
      written.push_back(stock.of);
      text += cutting_text(stock.of, cutting_of(fleet, stock), line);
    }
  text += other_cutting_text(fleet, plan.files[file], written);
  for (const NewStock& stock : plan.new_stock)
    if (stock.file == file)
      text += stock_text(plan.lines[stock.line].order.stocks[stock.stock], stock);
  return text;
}

namespace {

std::string piece_record_text(const WantedPiece& piece, const StockInHand& stock) {
  std::string text = say(SpoolPlanPhrase::piece_of, piece.stay);
  if (piece.side != Side::centre)
    text += "." + std::string(name_of(piece.side));
  text += " {\n  stage: cut\n";
  if (piece.of > 1)
    text += say(SpoolPlanPhrase::number, piece.number);
  text += say(SpoolPlanPhrase::stock, in_quotes(stock.name));
  if (!stock.batch.empty())
    text += say(SpoolPlanPhrase::batch_behind, in_quotes(stock.batch));
  return text + "}\n";
}

} // namespace

std::string cut_pieces_text(const FleetBoats& fleet, const SpoolPlan& plan, std::size_t boat) {
  std::string records;
  for (const LinePlan& line : plan.lines)
    for (const SpoolUse& use : line.uses)
      for (const SpoolCut& cut : use.cuts)
        if (const WantedPiece& piece = line.order.pieces[cut.piece];
            piece.rig == fleet.boats[boat].rig && !piece.draft())
          records += piece_record_text(piece, line.order.stocks[use.stock]);
  if (records.empty())
    return {};
  std::string text = "language 1\n\n";
  const std::string what = say(SpoolPlanPhrase::pieces_that_spool_plan_cuts, fleet.boats[boat].title);
  for (const std::string& line : wrap_text(what, 98))
    text += "# " + line + "\n";
  return text + records;
}

std::string plan_csv(const SpoolPlan& plan) {
  Table table{.title = "", .columns = {{"line"},           {"kind"},
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
                                       {"rest"},           {"rest_name"}}};
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
                              std::string(name_of(stock.sort)),
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
                              format_tenths(piece.cut),
                              piece.estimated ? "yes" : "no",
                              piece.draft() ? "yes" : "no",
                              joined(piece.draft_reasons, "; "),
                              last ? std::to_string(use.rest_mm) : "",
                              last ? fate_word(use.fate) : "",
                              last ? use.rest_name : ""});
      }
    }
  }
  return render_csv(table);
}

} // namespace sheerpole
