#include "calculate/cut/in_hand.hpp"

#include "calculate/cut/piece.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/splice_phrases.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <set>
#include <string>

/// Whether what is in hand is enough for the piece that is to be made of it.
namespace sheerpole::in_hand_checks {

namespace {

using P = SpliceCheckPhrase;

constexpr WhichEnd both_ends[] = {WhichEnd::upper, WhichEnd::lower};

std::string millimetres_down(Length length) {
  return std::to_string(static_cast<long>(std::floor(length.millimetres() + 1e-6))) + " mm";
}

std::string millimetres_up(Length length) {
  return std::to_string(static_cast<long>(std::ceil(length.millimetres() - 1e-6))) + " mm";
}

std::string cut_text(const Rig& rig, const Piece& piece) {
  return piece.cut.unknown ? say(rig, with_unknown(piece.cut)) : length_text(piece.cut.known());
}

/// Which end can give up what, and what is still lacking then.
Remarks ways_out(const InHand& there) {
  Remarks words{{}, Join::semicolon};
  for (const WhichEnd end : both_ends) {
    const EndInHand& one = there.at(end);
    if (one.spare_given_up > threshold::negligible)
      words.all.push_back({P::gives_up_spare, {end, one.spare_given_up}});
    if (one.tail_given_up > threshold::negligible)
      words.all.push_back({P::gives_up_tail, {end, one.tail_given_up}});
  }
  if (words.all.empty())
    words.all.push_back(P::no_end_gives_up);
  if (there.lacking > threshold::negligible)
    words.all.push_back({P::not_enough_by, {there.lacking}});
  return words;
}

/// The stock that pieces of the rig are to be made of.
std::set<std::string> stock_in_use(const Rig& rig) {
  std::set<std::string> names;
  for (const Stay& stay : rig.stays)
    for (const StackItem& item : stay.stack)
      if (!item.stock.empty())
        names.insert(item.stock);
  return names;
}

/// A piece of stock that is long enough where the one named is not, and that nothing is made of; null when
/// there is none.
const Record* longer_stock(const Rig& rig, const Stay& stay, const StackItem& line, Length cut,
                           const std::set<std::string>& in_use) {
  for (const Record& record : rig.records) {
    if (record.kind != RecordKind::stock || record.of != rig[line.material.value_or(stay.material)].name)
      continue;
    const auto length = fact_length(record.facts, fact_names.length);
    if (length && length->value >= cut && !in_use.contains(record.name))
      return &record;
  }
  return nullptr;
}

/// The one spare bury that makes up for all that is short, when there is one.
const Provenance* spare_to_shorten(const Rig& rig, const Stay& stay, std::size_t line, const InHand& there,
                                   Length& left) {
  if (there.lacking > threshold::negligible)
    return nullptr;
  for (const WhichEnd end : both_ends) {
    const EndInHand& one = there.at(end);
    const LineEnd at = line_end(rig, stay, line, end);
    if (one.spare_given_up * one.rope_per_spare < -there.over - threshold::negligible || at.bare() ||
        !at.item->spare_bury || !at.item->spare_bury->provenance.place)
      continue;
    left = one.spare_there - one.spare_given_up;
    return &at.item->spare_bury->provenance;
  }
  return nullptr;
}

void find_short(const Rig& rig, const Stay& stay, const std::string& name, const Piece& piece,
                std::size_t line, const std::set<std::string>& in_use, StayReport& report) {
  const InHand& there = *piece.in_hand;
  auto finding = diagnose("in-hand-short", {{"stay", name},
                                            {"have", length_text(there.stated.value)},
                                            {"cut", cut_text(rig, piece)},
                                            {"short", length_text(-there.over)},
                                            {"words", say(rig, ways_out(there))}})
                     .at(stay.stack[line].place)
                     .about(name);
  if (there.stated.provenance.place)
    finding = std::move(finding).and_at(*there.stated.provenance.place, said(P::stated_in_hand));
  Length left;
  if (const Provenance* spare = spare_to_shorten(rig, stay, line, there, left)) {
    const std::string text = millimetres_down(left);
    finding = std::move(finding).edit(*spare->place, text, say(rig, {P::write_less_spare, {Words{text}}}));
  } else if (there.stated.provenance.place && there.stock.empty()) {
    const std::string text = millimetres_up(there.stated.value - there.over);
    finding = std::move(finding).edit(*there.stated.provenance.place, text,
                                      say(rig, {P::longer_piece_takes, {Words{text}}}));
  } else if (const Record* other =
                 longer_stock(rig, stay, stay.stack[line], there.stated.value - there.over, in_use)) {
    finding = std::move(finding).edit(stay.stack[line].stock_place, other->name,
                                      say(rig, {P::other_stock_is_longer, {Words{other->name}}}));
  }
  report.find(std::move(finding));
}

void look_at_piece(const Rig& rig, const Stay& stay, const std::string& name, const Piece& piece,
                   std::size_t line, const std::set<std::string>& in_use, StayReport& report) {
  const InHand& there = *piece.in_hand;
  const Words of{rig[piece.material].name};
  if (there.incomplete)
    report.not_checked({P::lacks_an_input, {there.stated.value}});
  else if (there.longest_x)
    report.not_checked({P::enough_up_to_x, {there.stated.value, *there.longest_x}});
  else if (there.too_short())
    find_short(rig, stay, name, piece, line, in_use, report);
  else if (there.cut_nothing())
    report.pass({P::all_in_hand_used, {there.stated.value, of, there.over}});
  else
    report.pass({P::some_cut_away, {there.stated.value, of, there.over, there.cut_away}});
}

void check_in_hand_short(const Rig& rig, const Derived& derived, CheckReport& report) {
  const std::set<std::string> in_use = stock_in_use(rig);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  const std::vector<std::size_t> lines = lines_of(rig[stay.stay]);
                  for (std::size_t i = 0; i < stay.pieces.size(); ++i)
                    if (stay.pieces[i].in_hand)
                      look_at_piece(rig, rig[stay.stay], name, stay.pieces[i], lines[i], in_use, of_stay);
                });
}

/// How many pieces of the rig are to be made of a piece of stock.
std::int64_t uses_of(const Rig& rig, const std::string& stock) {
  std::int64_t uses = 0;
  for (const Stay& stay : rig.stays)
    uses += std::count_if(stay.stack.begin(), stay.stack.end(),
                          [&](const StackItem& item) { return item.stock == stock; });
  return uses;
}

void look_at_stock(const Rig& rig, const Stay& stay, const StackItem& item, const std::string& name,
                   StayReport& report) {
  const MaterialId line = item.material.value_or(stay.material);
  const auto find = [&](const Remark& words) {
    report.find(
        diagnose("stock-not-usable", {{"stay", name}, {"stock", item.stock}, {"words", say(rig, words)}})
            .at(item.place)
            .about(name));
  };
  const Record* stock = stock_of_line(rig, stay, item);
  if (stock == nullptr) {
    find({P::no_stock_of, {line}});
    return;
  }
  const std::string counted = fact_text(stock->facts, fact_names.pieces);
  const std::int64_t pieces = counted.empty() ? 1 : std::stoll(counted);
  const std::int64_t uses = uses_of(rig, item.stock);
  if (uses > pieces)
    find({P::stock_used_twice, {Count{pieces}, Count{uses}}});
  else
    report.pass({P::stock_is_of, {Words{item.stock}, line}});
}

void check_stock_not_usable(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const StackItem& item : rig[stay.stay].stack)
                    if (!item.stock.empty())
                      look_at_stock(rig, rig[stay.stay], item, name, of_stay);
                });
}

} // namespace

const CheckTable checks{CheckRow{"in-hand-short", check_in_hand_short},
                        CheckRow{"stock-not-usable", check_stock_not_usable}};

} // namespace sheerpole::in_hand_checks
