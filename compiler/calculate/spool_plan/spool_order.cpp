#include "calculate/spool_plan/spool_order.hpp"

#include "base/byte_text.hpp"
#include "base/internal_error.hpp"
#include "calculate/adjust/piece_history.hpp"
#include "calculate/cut/whole_links.hpp"
#include "calculate/cutting/plan_cutting.hpp"
#include "calculate/derived.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <charconv>
#include <utility>

namespace sheerpole {

namespace {

/// What the length of a piece lacks.
Remarks missing_from(const Piece& piece) {
  if (piece.missing.empty())
    return {{StockPhrase::no_length_yet}};
  Remarks result{{}, Join::semicolon};
  for (const MissingInput& missing : piece.missing)
    result.all.push_back({StockPhrase::missing, {Remarks{{missing.what}}}});
  return result;
}

/// Whole links as every paper has them; with spare the links up to it.
void to_whole_links(WantedPiece& wanted, const WholeLinks& links, double spare) {
  const auto count = static_cast<double>(links.count);
  const double with_spare = std::max(count, std::ceil(count * (1.0 + spare) - millimetre_noise));
  wanted.length_mm = up_to_millimetres(links.length * (with_spare / count));
  wanted.note = {StockPhrase::links, {Count{static_cast<std::int64_t>(with_spare)}, Words{links.pitch}}};
}

} // namespace

std::string piece_mark(const WantedPiece& piece) {
  constexpr std::size_t digits = 12;
  return sha256(piece.boat + "\n" + piece.name + "\n" + std::to_string(piece.length_mm)).substr(0, digits);
}

std::variant<WantedPiece, UnplannedPiece> wanted_piece(const SpoolBoat& boat, const Piece& piece,
                                                       double spare) {
  const Stay& stay = (*boat.rig)[piece.stay];
  const auto not_planned = [&](Remark reason) {
    return UnplannedPiece{boat.rig, boat.title, piece.name, std::move(reason)};
  };
  if (is_on_record(*boat.rig, piece))
    return not_planned(StockPhrase::on_record);
  const auto note = std::find_if(boat.notes.begin(), boat.notes.end(),
                                 [&](const PieceNote& one) { return one.piece == piece.name; });
  const bool noted = note != boat.notes.end();
  if (!piece.missing.empty() || (noted && !note->complete))
    return not_planned({StockPhrase::not_complete, {missing_from(piece)}});
  if (made_of_what_is_there(piece))
    return not_planned({StockPhrase::in_hand, {piece.in_hand->stated.value}});

  WantedPiece wanted;
  wanted.rig = boat.rig;
  wanted.boat = boat.title;
  wanted.stay = stay.base;
  wanted.side = stay.side;
  wanted.number = piece.number;
  wanted.of = piece.of;
  wanted.name = piece.name;
  wanted.cut = piece.cut.known();
  if (noted) {
    wanted.draft_reasons = note->draft_reasons;
    if (note->listed_cut && *note->listed_cut > wanted.cut)
      wanted.cut = *note->listed_cut;
  }
  if (piece.cut.unknown) {
    wanted.ordered = order_length(*boat.rig, boat.derived->stays[piece.stay.index()], piece);
    if (wanted.ordered.by == EstimateBy::nothing)
      return not_planned(StockPhrase::no_estimate);
    wanted.estimated = true;
    wanted.stay_of_x = stay.name;
    wanted.cut += wanted.ordered.x;
  }
  if (wanted.cut <= Length{})
    return not_planned(StockPhrase::nothing_left);

  const LineMaterial& line = (*boat.rig)[piece.material];
  // Of the exact length where there is one: what is printed of it may lie on the other side of half a link.
  if (const auto links = whole_links(line, piece.cut.unknown ? wanted.cut : piece.cut.known()))
    to_whole_links(wanted, *links, spare);
  else
    wanted.length_mm = up_to_millimetres(wanted.cut * (1.0 + spare));
  wanted.length_mm = std::max<std::int64_t>(wanted.length_mm, 1);
  if (noted && note->ways_differ && wanted.note.empty())
    wanted.note = StockPhrase::ways_differ;
  if (wanted.length_mm > longest_cutting_mm)
    return not_planned(StockPhrase::too_long);
  return wanted;
}

namespace {

/// The lines of all boats, by what they are, with every boat's own.
struct Group {
  LineOrder order;
  std::vector<std::pair<std::size_t, const LineMaterial*>> lines; ///< (boat, line)
};

bool same_line(const LineOrder& order, const LineMaterial& line) {
  return order.kind == line.kind && order.construction == line.construction.text &&
         order.grade == line.grade && same_size(order.size, line.size);
}

void add_name(LineOrder& order, const std::string& name, const std::string& boat) {
  const auto known = std::find_if(order.names.begin(), order.names.end(),
                                  [&](const NamedLine& one) { return one.name == name; });
  NamedLine& line = known == order.names.end() ? order.names.emplace_back(NamedLine{name, {}}) : *known;
  line.boats.push_back(boat);
}

std::vector<Group> groups_of(const std::vector<SpoolBoat>& boats) {
  std::vector<Group> groups;
  for (std::size_t boat = 0; boat < boats.size(); ++boat)
    for (const LineMaterial& line : boats[boat].rig->materials) {
      auto group = std::find_if(groups.begin(), groups.end(),
                                [&](const Group& one) { return same_line(one.order, line); });
      if (group == groups.end()) {
        group = groups.insert(groups.end(), Group{});
        group->order.kind = line.kind;
        group->order.construction = line.construction.text;
        group->order.grade = line.grade;
        group->order.size = line.size;
      }
      add_name(group->order, line.name, boats[boat].title);
      group->lines.emplace_back(boat, &line);
    }
  return groups;
}

Group& group_of(std::vector<Group>& groups, const LineMaterial& line) {
  for (Group& group : groups)
    if (same_line(group.order, line))
      return group;
  internal_error("a line that is of no boat");
}

template <class Value>
void state(CuttingSetting<Value>& setting, Value value) {
  setting.differs = setting.differs || (setting.stated && setting.value != value);
  setting.value = setting.stated ? std::max(setting.value, value) : value;
  setting.stated = true;
}

/// The words of a text, each once.
void read_marks(std::string_view text, std::vector<std::string>& marks) {
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    if (std::string mark(text.substr(0, end));
        !mark.empty() && std::find(marks.begin(), marks.end(), mark) == marks.end())
      marks.push_back(std::move(mark));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
}

void read_settings(const std::vector<SpoolBoat>& boats, Group& group) {
  for (const auto& [boat, line] : group.lines) {
    // A later record may state other numbers; it does not put back what was taken.
    for (const Record& record : boats[boat].rig->records)
      if (record.kind == RecordKind::cutting && record.of == line->name)
        read_marks(fact_text(record.facts, fact_names.taken_for), group.order.taken);
    const Record* cutting = last_record_of(*boats[boat].rig, RecordKind::cutting, line->name);
    if (cutting == nullptr)
      continue;
    if (const auto kerf = fact_length(cutting->facts, fact_names.kerf))
      state(group.order.kerf_mm, up_to_millimetres(kerf->value));
    if (const auto least = fact_length(cutting->facts, fact_names.least_offcut))
      state(group.order.least_offcut_mm, up_to_millimetres(least->value));
    if (const auto spare = fact_number(cutting->facts, fact_names.spare))
      state(group.order.spare, spare->value);
    if (const auto sold_in = fact_length(cutting->facts, fact_names.sold_in))
      state(group.order.sold_in_mm, down_to_millimetres(sold_in->value));
  }
  if (group.order.kerf_mm.stated)
    return;
  for (const auto& [boat, line] : group.lines)
    if (const auto pitch = pitch_of(*line)) {
      group.order.loses_a_link = true;
      group.order.kerf_mm.value = std::max(group.order.kerf_mm.value, up_to_millimetres(*pitch));
    }
}

const std::string& source_word(const std::vector<std::string>& words, Span place) {
  static const std::string none;
  return place.source.index() < words.size() ? words[place.source.index()] : none;
}

/// The place of the file in the list, put there when it is new.
std::size_t file_of(std::vector<StockFile>& files, const SpoolBoat& boat, std::size_t number,
                    const Record& record) {
  std::string key = source_word(boat.source_keys, record.place);
  if (key.empty())
    key = std::to_string(number) + " " + std::to_string(record.place.source.index());
  for (std::size_t i = 0; i < files.size(); ++i)
    if (files[i].key == key)
      return i;
  files.push_back({key, source_word(boat.source_names, record.place)});
  return files.size() - 1;
}

StockInHand stock_of(const Record& record) {
  StockInHand stock;
  stock.record = &record;
  stock.name = record.name;
  stock.of = record.of;
  const std::string sort = fact_text(record.facts, fact_names.sort);
  for (const StockForm form : {StockForm::coil, StockForm::offcut})
    if (sort == name_of(form))
      stock.sort = form;
  stock.batch = fact_text(record.facts, fact_names.batch);
  const Length length = fact_length(record.facts, fact_names.length).value_or(Sourced<Length>{}).value;
  stock.length_mm = down_to_millimetres(length);
  stock.pieces = pieces_stated(record);
  if (const auto spare = fact_number(record.facts, fact_names.spare))
    stock.kept_back_mm = std::min(stock.length_mm, up_to_millimetres(length * spare->value));
  return stock;
}

/// What stays of this boat are made of as it is may not be cut. A stock of which nothing may be cut stays
/// in the list: its record outlives the plan.
void set_aside(const SpoolBoat& boat, StockInHand& stock) {
  stock.pieces = std::max<std::int64_t>(0, stock.pieces - pieces_made_up(*boat.derived, stock.name));
}

void read_stocks(const std::vector<SpoolBoat>& boats, std::vector<StockFile>& files,
                 std::vector<Group>& groups) {
  std::vector<std::pair<std::size_t, std::string>> counted; // (file, name)
  for (std::size_t number = 0; number < boats.size(); ++number) {
    const Rig& rig = *boats[number].rig;
    for (const Record& record : rig.records) {
      if (record.kind != RecordKind::stock)
        continue;
      const auto line = std::find_if(rig.materials.begin(), rig.materials.end(),
                                     [&](const LineMaterial& one) { return one.name == record.of; });
      if (line == rig.materials.end())
        continue;
      const std::pair<std::size_t, std::string> key{file_of(files, boats[number], number, record),
                                                    record.name};
      std::vector<StockInHand>& stocks = group_of(groups, *line).order.stocks;
      if (std::find(counted.begin(), counted.end(), key) != counted.end()) {
        for (StockInHand& shared : stocks)
          if (shared.file == key.first && shared.name == key.second)
            set_aside(boats[number], shared);
        continue;
      }
      counted.push_back(key);
      StockInHand& stock = stocks.emplace_back(stock_of(record));
      stock.boat = number;
      stock.file = key.first;
      set_aside(boats[number], stock);
    }
  }
}

} // namespace

SpoolOrder spool_order(const std::vector<SpoolBoat>& boats) {
  SpoolOrder order;
  std::vector<Group> groups = groups_of(boats);
  for (Group& group : groups)
    read_settings(boats, group);
  for (const SpoolBoat& boat : boats)
    for (const DerivedStay& stay : boat.derived->stays)
      for (const Piece& piece : stay.pieces) {
        LineOrder& line = group_of(groups, (*boat.rig)[piece.material]).order;
        auto wanted = wanted_piece(boat, piece, line.spare.value);
        if (line.pieces.size() >= static_cast<std::size_t>(most_cutting_pieces))
          wanted = UnplannedPiece{boat.rig, boat.title, piece.name, StockPhrase::plan_full};
        if (const auto* one = std::get_if<WantedPiece>(&wanted);
            one != nullptr &&
            std::find(line.taken.begin(), line.taken.end(), piece_mark(*one)) != line.taken.end())
          wanted = UnplannedPiece{boat.rig, boat.title, piece.name, StockPhrase::taken_before};
        if (auto* planned = std::get_if<WantedPiece>(&wanted))
          line.pieces.push_back(std::move(*planned));
        else
          line.unplanned.push_back(std::get<UnplannedPiece>(std::move(wanted)));
      }
  read_stocks(boats, order.files, groups);
  for (Group& group : groups)
    if (!group.order.pieces.empty() || !group.order.unplanned.empty() || !group.order.stocks.empty())
      order.lines.push_back(std::move(group.order));
  return order;
}

std::int64_t pieces_stated(const Record& stock) {
  std::int64_t count = 1;
  // A count is kept as text.
  const std::string pieces = fact_text(stock.facts, fact_names.pieces);
  std::from_chars(pieces.data(), pieces.data() + pieces.size(), count);
  return count;
}

std::int64_t pieces_made_up(const Derived& derived, const std::string& stock) {
  std::int64_t made = 0;
  for (const DerivedStay& stay : derived.stays)
    for (const Piece& piece : stay.pieces)
      if (made_of_what_is_there(piece) && piece.in_hand->stock == stock)
        ++made;
  return made;
}

} // namespace sheerpole
