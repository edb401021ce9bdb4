#include "backend/order/order_items.hpp"

#include "backend/order/lengths_in_stock.hpp"
#include "backend/order/order_plan.hpp"
#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "calculate/adjust/piece_history.hpp"
#include "calculate/cut/order_length.hpp"
#include "calculate/facts.hpp"
#include "calculate/geometry/junctions.hpp"
#include "calculate/joints/joint.hpp"
#include "calculate/length/pin_to_pin.hpp"
#include "calculate/spool_plan/spool_order.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "model/trade_words.hpp"
#include "units/format_length.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/order_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <map>
#include <optional>
#include <utility>

namespace sheerpole {

namespace {

/// Tenths of a metre, rounded up: an order that is short by a hair is short.
long tenths_up(Length length) {
  return static_cast<long>(std::ceil(length.metres() * 10.0 - 1e-6));
}

class Collecting {
public:
  Collecting(const CheckedRig& checked, bool ask_stock)
      : checked_(checked), rig_(checked.rig()), ask_stock_(ask_stock), plan_(checked, ask_stock) {}

  std::vector<OrderItem> run() {
    for (const DerivedStay& stay : checked_.derived().stays)
      add_lines(stay);
    for (OrderItem& line : items_)
      add_margin(line);
    add_junctions();
    for (const DerivedStay& stay : checked_.derived().stays) {
      add_hardware(stay);
      add_fit(stay);
    }
    for (const DerivedStay& stay : checked_.derived().stays) {
      add_split_pins(stay);
      add_cord(rig_[stay.stay]);
    }
    for (auto& [name, lashings] : lashings_)
      take_off_stock(item("Small parts", name), std::move(lashings));
    return std::move(items_);
  }

private:
  /// Of one line: the lengths of its pieces, and those of them that no stock holds.
  struct LineNeed {
    std::vector<WholeLength> pieces;
    std::vector<WholeLength> to_buy;
  };

  OrderItem& item(const std::string& group, const std::string& name) {
    const auto found = std::find_if(items_.begin(), items_.end(), [&](const OrderItem& one) {
      return one.group == group && one.name == name;
    });
    if (found != items_.end())
      return *found;
    items_.push_back({.group = group, .name = name, .what = {}, .size = {}, .stays = {}});
    return items_.back();
  }

  static void need(OrderItem& item, const std::string& stay, long amount) {
    item.needed += amount;
    if (!item.stays.empty() && item.stays.back().first == stay)
      item.stays.back().second += amount;
    else
      item.stays.emplace_back(stay, amount);
  }

  static void note(OrderItem& item, std::string words) {
    if (std::find(item.notes.begin(), item.notes.end(), words) == item.notes.end())
      item.notes.push_back(std::move(words));
  }

  /// Tenths of a metre in hand by the records of stock.
  long in_stock(const LineMaterial& line) const {
    long tenths = 0;
    for (const Record& stock : rig_.records)
      if (stock.kind == RecordKind::stock && stock.of == line.name)
        if (const auto length = fact_length(stock.facts, fact_names.length)) {
          const auto loose =
              static_cast<long>(pieces_stated(stock) - pieces_made_up(checked_.derived(), stock.name));
          tenths +=
              static_cast<long>(std::floor(length->value.metres() * 10.0 + 1e-6)) * std::max(0L, loose);
        }
    return tenths;
  }

  OrderItem& line_item(const LineMaterial& line) {
    OrderItem& found = item("Lines", line.name);
    if (found.what.empty()) {
      found.what = line.construction.text + led_by(", ", line.grade);
      found.size = line.size.name;
      found.in_metres = true;
      found.in_hand = in_stock(line);
      found.supplier = fact_text(line.particulars, fact_names.supplier);
      if (found.in_hand > 0)
        note(found, say(OrderPhrase::in_hand_by_stock_file));
    }
    return found;
  }

  /// What is added to each piece to be trimmed, by the `cutting` record of its line.
  double spare_share(const LineMaterial& line) const {
    const Record* cutting = last_record_of(rig_, RecordKind::cutting, line.name);
    const auto spare = cutting == nullptr ? std::nullopt : fact_number(cutting->facts, fact_names.spare);
    return spare ? spare->value : 0.0;
  }

  void add_lines(const DerivedStay& stay) {
    for (const Piece& piece : stay.pieces) {
      const LineMaterial& line = rig_[piece.material];
      OrderItem& ordered = line_item(line);
      const PieceSum sum = piece_sum(rig_, stay, piece);
      if (!sum.body_complete || !sum.cut_complete)
        note(ordered, say(OrderPhrase::cut_lacks_input, piece.name));
      if (is_on_record(rig_, piece)) {
        note(ordered, say(OrderPhrase::is_on_record_as_cut, piece.name,
                          led_by(say(OrderPhrase::from_behind),
                                 stock_of(rig_, stay, static_cast<std::size_t>(piece.number - 1)))));
        continue;
      }
      if (ask_stock_ && plan_.taken_before(piece.name)) {
        note(ordered, say(OrderPhrase::taken_by_earlier_plan, piece.name));
        continue;
      }
      if (made_of_what_is_there(piece)) {
        note(ordered, say(OrderPhrase::is_made_what_is_in, piece.name));
        continue;
      }
      if (piece.in_hand && piece.in_hand->too_short())
        note(ordered, say(OrderPhrase::what_is_in_hand_for, piece.name));
      const double spare = spare_share(line);
      if (spare > 0.0)
        note(ordered, say(OrderPhrase::with_spare_on_each_piece, format_number(spare * 100.0)));
      const OrderLength length = order_length(rig_, stay, piece);
      const auto whole = length.whole();
      if (!whole) {
        add_open(ordered, rig_[stay.stay], length.plus);
        continue;
      }
      if (length.unknown)
        note_estimate(ordered, rig_[stay.stay], length);
      const Length printed = sum.unknown ? *whole : std::max(*whole, sum.cut().length());
      WholeLength length_of_piece{piece.name, up_to_millimetres(printed * (1.0 + spare)), 0};
      length_of_piece.mm = std::max({length_of_piece.mm, plan_.length_mm(piece.name), std::int64_t{0}});
      length_of_piece.tenths = tenths_up_mm(length_of_piece.mm + plan_.kerf_mm(line.name));
      need(ordered, rig_[stay.stay].name, length_of_piece.tenths);
      LineNeed& of_line = needs_[line.name];
      if (!plan_.in_stock(piece.name))
        of_line.to_buy.push_back(length_of_piece);
      of_line.pieces.push_back(std::move(length_of_piece));
    }
  }

  /// What has to be bought of a line or cord: lengths that no stock holds.
  void order_lengths(OrderItem& ordered, const std::vector<WholeLength>& to_buy) {
    long tenths = ordered.not_in_stock.value_or(0);
    std::vector<std::string> names;
    long longest = 0;
    for (const WholeLength& one : to_buy) {
      tenths += one.tenths;
      longest = std::max(longest, one.tenths);
      if (std::find(names.begin(), names.end(), one.of) == names.end())
        names.push_back(one.of);
    }
    ordered.not_in_stock = tenths;
    if (ordered.in_hand == 0 || to_buy.empty())
      return;
    constexpr std::size_t most_names = 6;
    const std::string of =
        names.size() <= most_names ? joined(names, ", ") : say(OrderPhrase::so_many_pieces, to_buy.size());
    note(ordered, say(OrderPhrase::no_length_left, of, amount_text(ordered, longest)));
  }

  /// Cord of lashings, each in one length: what the stock of it does not hold is to be bought.
  void take_off_stock(OrderItem& ordered, std::vector<WholeLength> lashings) {
    if (ask_stock_ && ordered.in_hand > 0)
      order_lengths(ordered,
                    plan_.left_of(ordered.name).take(std::move(lashings), plan_.kerf_mm(ordered.name)));
  }

  /// What is ordered besides the pieces comes off what the plan leaves in stock, each in one length: the
  /// test splice, and by the margin every piece once more or so many metres.
  void order_line(OrderItem& ordered, const LineNeed& of_line, std::int64_t test_splice_mm) {
    order_lengths(ordered, of_line.to_buy);
    // Stock of the same line under another name may hold them.
    if (of_line.to_buy.size() < of_line.pieces.size())
      note(ordered, say(OrderPhrase::in_hand_by_stock_file));
    const std::int64_t kerf_mm = plan_.kerf_mm(ordered.name);
    std::vector<WholeLength> besides;
    if (ordered.margin_share == 1.0)
      besides = of_line.pieces;
    else if (ordered.margin > 0)
      besides.push_back({say(OrderPhrase::margin), std::int64_t{100} * ordered.margin, ordered.margin});
    if (test_splice_mm > 0)
      besides.push_back({say(OrderPhrase::test_splice), test_splice_mm, ordered.test_splice});
    const std::vector<WholeLength> to_buy = plan_.left_of(ordered.name).take(std::move(besides), kerf_mm);
    order_lengths(ordered, to_buy);
    const bool buys_test_splice = std::any_of(to_buy.begin(), to_buy.end(), [](const WholeLength& one) {
      return one.of == say(OrderPhrase::test_splice);
    });
    if (test_splice_mm > 0 && !buys_test_splice)
      note(ordered, say(OrderPhrase::test_splice_from_stock));
    if (!ordered.open.empty() && ordered.in_hand > 0)
      note(ordered, say(OrderPhrase::x_may_lie_in_stock));
  }

  /// Both sides alike stand in one row.
  static void add_open(OrderItem& ordered, const Stay& stay, Length plus) {
    const auto plus_mm = static_cast<long>(std::ceil(plus.millimetres() - 1e-6));
    for (OpenLength& open : ordered.open)
      if (open.plus_mm == plus_mm && (open.of == stay.base || open.of.starts_with(stay.base + "."))) {
        open.of = stay.base;
        ++open.times;
        return;
      }
    ordered.open.push_back({stay.name, 1, plus_mm});
    note(ordered, say(OrderPhrase::is_cord_stay_and_has, x_of_stay(stay.base)));
  }

  static void note_estimate(OrderItem& ordered, const Stay& stay, const OrderLength& length) {
    note(ordered, say(OrderPhrase::to_order_by_nothing_is, x_taken_words(stay.name, length)));
  }

  /// What is ordered on top of what the pieces of a line need.
  void add_margin(OrderItem& ordered) {
    const auto line = std::find_if(rig_.materials.begin(), rig_.materials.end(),
                                   [&](const LineMaterial& one) { return one.name == ordered.name; });
    if (line == rig_.materials.end() || (ordered.needed == 0 && ordered.open.empty()))
      return;
    const auto trial =
        rope_for_test_splice(rig_, MaterialId{static_cast<std::uint32_t>(line - rig_.materials.begin())});
    const std::int64_t trial_mm = trial ? up_to_millimetres(*trial) : 0;
    if (trial) {
      ordered.test_splice = tenths_up_mm(trial_mm + plan_.kerf_mm(ordered.name));
      note(ordered,
           say(OrderPhrase::with_for_test_splice_since, amount_text(ordered, ordered.test_splice)));
    }
    const Record* cutting = last_record_of(rig_, RecordKind::cutting, line->name);
    const Particular* stated =
        cutting == nullptr ? nullptr : find_fact(cutting->facts, fact_names.order_margin);
    if (stated != nullptr)
      add_stated_margin(ordered, *stated);
    if (ask_stock_)
      order_line(ordered, needs_[ordered.name], trial_mm);
  }

  static void add_stated_margin(OrderItem& ordered, const Particular& stated) {
    const bool twice = !stated.names.empty();
    ordered.margin_share = twice ? 1.0 : stated.value.value.si;
    ordered.margin =
        static_cast<long>(std::ceil(static_cast<double>(ordered.needed) * ordered.margin_share - 1e-6));
    if (ordered.margin_share > 0.0)
      note(ordered, twice ? say(OrderPhrase::ordered_twice_by_order_margin)
                          : say(OrderPhrase::with_more_by_order_margin,
                                format_number(ordered.margin_share * 100.0)));
  }

  /// Whether the lines of this size that the file has are rods.
  bool takes_rod(const std::string& size) const {
    const auto is = [&](LineMaterial::Kind kind) {
      return std::any_of(rig_.materials.begin(), rig_.materials.end(), [&](const LineMaterial& line) {
        return line.kind == kind && line.size.name == size;
      });
    };
    return is(LineMaterial::Kind::rod) && !is(LineMaterial::Kind::wire);
  }

  std::string sizes_of(const Part& part) const {
    std::vector<std::string> sizes;
    const auto add = [&](const std::string& size) {
      if (!size.empty() && std::find(sizes.begin(), sizes.end(), size) == sizes.end())
        sizes.push_back(size);
    };
    for (const End* end : {&part.upper, &part.lower}) {
      if (const EndDimension* pin = end->find(EndDimensionName::pin))
        add(say(OrderPhrase::pin, pin->text));
      if (const EndDimension* size = end->find(EndDimensionName::size))
        add(say(takes_rod(size->text) ? OrderPhrase::rod : OrderPhrase::wire, size->text));
      if (const EndDimension* thread = end->find(EndDimensionName::thread)) {
        const EndDimension* hand = end->find(EndDimensionName::hand);
        add(thread->text +
            (hand == nullptr ? say(OrderPhrase::hand_not_stated) : say(OrderPhrase::hand, hand->text)));
      }
    }
    if (part.screw)
      add(part.screw->thread.designation + (part.screw->pair ? say(OrderPhrase::right_and_left_hand) : ""));
    add(fact_text(part.particulars, fact_names.size));
    return joined(sizes, "; ");
  }

  /// Where stays meet there is one plate, whatever parts their stacks name for its holes.
  void add_junctions() {
    for (const JunctionBalance& junction : junction_balances(rig_)) {
      std::vector<std::string> names;
      for (const PartId part : junction.parts)
        names.push_back(rig_[part].name);
      OrderItem& ordered = hardware_item(junction.parts, joined(names, say(OrderPhrase::with)));
      need(ordered, rig_[junction.single].name, 1);
      note(ordered,
           say(OrderPhrase::one_plate_at_for_and, place_words(rig_, rig_[junction.at]),
               rig_[junction.single].name, junction.legs.size(),
               junction.legs.size() == 1 ? say(OrderPhrase::other_stay) : say(OrderPhrase::other_stays)));
      if (names.size() > 1)
        note(ordered, say(OrderPhrase::parts_are_holes_same_plate, joined(names, ", ")));
    }
  }

  /// Whether it is the plate at an end of the path, which is ordered for all that meet there.
  bool is_plate_of_junction(const Stay& stay, const StackItem& entry) const {
    return rig_[entry.part].kind == PartKind::junction && stay.path.size() >= 2 &&
           (&entry == &stay.stack.front() || &entry == &stay.stack.back());
  }

  /// Whether the part is on a piece that is made up already: pressed on, or spliced in.
  bool is_on_a_made_piece(const DerivedStay& derived, std::size_t at) const {
    const Stay& stay = rig_[derived.stay];
    const std::vector<std::size_t> lines = lines_of(stay);
    for (std::size_t i = 0; i < derived.pieces.size() && i < lines.size(); ++i) {
      const PieceHistory history = piece_history(rig_, derived, i);
      if (history.entries.empty() || history.entries.back().record->stage == PieceStage::cut)
        continue;
      if (at + 1 == lines[i] || at == lines[i] + 1)
        return true;
    }
    return false;
  }

  /// Whether the whole stay hangs, by the records of its pieces: what is in it was bought.
  bool hangs(const DerivedStay& derived) const {
    if (rig_.piece_records.empty() || derived.pieces.empty())
      return false;
    for (std::size_t i = 0; i < derived.pieces.size(); ++i) {
      const PieceHistory history = piece_history(rig_, derived, i);
      if (history.last(PieceStage::fitted) == nullptr && history.last(PieceStage::settled) == nullptr)
        return false;
    }
    return true;
  }

  void add_hardware(const DerivedStay& derived) {
    const Stay& stay = rig_[derived.stay];
    const bool there = hangs(derived);
    for (std::size_t i = 0; i < stay.stack.size(); ++i) {
      const StackItem& entry = stay.stack[i];
      if (entry.kind == StackItem::Kind::part && is_plate_of_junction(stay, entry))
        continue;
      if (entry.kind != StackItem::Kind::part || rig_[entry.part].role == Part::Role::boat_fitting)
        continue;
      const Part& part = rig_[entry.part];
      if (part.kind == PartKind::soft_eye)
        continue; // is made of the rope itself
      if (is_all_cord(entry))
        continue; // its cord is a small part
      if (there) {
        note(hardware_item(entry.part), say(OrderPhrase::that_hangs_by_its_record, stay.name));
        continue;
      }
      // Of several in a row the one beside the line is on it.
      const int on_it = !rig_.piece_records.empty() && is_on_a_made_piece(derived, i) ? 1 : 0;
      if (on_it != 0)
        note(hardware_item(entry.part), say(OrderPhrase::that_on_made_piece_is, stay.name));
      if (entry.count > on_it)
        need(hardware_item(entry.part), stay.name, entry.count - on_it);
    }
  }

  /// A lashing is nothing but its cord, and that is ordered by the metre where its passes are stated.
  bool is_all_cord(const StackItem& entry) const {
    const Part& part = rig_[entry.part];
    const Particular* cord = find_fact(part.particulars, fact_names.cord);
    return part.kind == PartKind::lashing && entry.set_length && entry.passes && cord != nullptr &&
           !cord->names.empty() && !part.upper.stated() && !part.lower.stated();
  }

  OrderItem& hardware_item(PartId id) { return hardware_item({id}, rig_[id].name); }

  OrderItem& hardware_item(const std::vector<PartId>& parts, const std::string& name) {
    OrderItem& ordered = item("Hardware", name);
    if (!ordered.what.empty())
      return ordered;
    ordered.parts = parts;
    std::vector<std::string> titles;
    std::vector<std::string> sizes;
    std::vector<std::string> suppliers;
    for (const PartId id : parts) {
      const Part& part = rig_[id];
      add_other(titles, part.title.empty() ? std::string(name_of(part.kind)) : part.title);
      add_other(sizes, sizes_of(part));
      add_other(suppliers, fact_text(part.particulars, fact_names.supplier));
      // It is one thing, by whichever of its names it was counted.
      ordered.in_hand = std::max(ordered.in_hand, counted_in_hand(part) + spares_named(part));
    }
    ordered.what = joined(titles, say(OrderPhrase::with));
    ordered.size = joined(sizes, "; ");
    ordered.supplier = joined(suppliers, say(OrderPhrase::or_word));
    return ordered;
  }

  static void add_other(std::vector<std::string>& texts, std::string text) {
    if (!text.empty() && std::find(texts.begin(), texts.end(), text) == texts.end())
      texts.push_back(std::move(text));
  }

  long counted_in_hand(const Part& part) const {
    const Record* in_hand = last_record_of(rig_, RecordKind::in_hand, part.name);
    const Particular* pieces = in_hand == nullptr ? nullptr : find_fact(in_hand->facts, fact_names.pieces);
    return pieces == nullptr ? 0 : std::stol(pieces->text);
  }

  /// Spare parts that only the stays name, of which the file counts none.
  long spares_named(const Part& part) const {
    if (last_record_of(rig_, RecordKind::in_hand, part.name) != nullptr)
      return 0;
    long named = 0;
    for (const Stay& stay : rig_.stays)
      if (const Particular* spares = find_fact(stay.particulars, fact_names.spare_parts))
        named += std::count(spares->names.begin(), spares->names.end(), part.name);
    return named;
  }

  /// Parts that a line in hand is made to fit by are used like those of the stack.
  void add_fit(const DerivedStay& derived) {
    for (const Fit& fit : derived.fits) {
      if (fit.ways.empty())
        continue;
      const FitWay& way = fit.ways.front();
      const std::string& stay = rig_[derived.stay].name;
      for (const auto& [id, count] : way.parts) {
        OrderItem& ordered = hardware_item(id);
        need(ordered, stay, count);
        note(ordered, say(OrderPhrase::them_to_make_line_in, count, stay));
      }
      for (const auto& [id, count] : way.out)
        note(hardware_item(id), say(OrderPhrase::them_comes_out_where_line, count, stay));
      return;
    }
  }

  /// One for every pin that is known of: a ring where the file says that a ring secures it.
  void add_split_pins(const DerivedStay& derived) {
    const Stay& stay = rig_[derived.stay];
    if (hangs(derived))
      return; // its pins are secured
    for (const Joint& joint : derived.joints)
      if (const auto pin = pin_of(rig_, joint))
        for (int i = 0; i < joint.times; ++i)
          add_split_pin(stay, *pin);
    if (derived.joints.empty())
      return;
    // Where the file does not say what the stay hangs on, its outermost pins are in no joint.
    for (const WhichEnd where : {WhichEnd::upper, WhichEnd::lower})
      if (const auto outer = outer_end(rig_, stay, derived.joints, where); outer && outer->pin)
        add_split_pin(stay, *outer->pin);
  }

  void add_split_pin(const Stay& stay, const JointPin& pin) {
    if (pin.jaw == nullptr && !pin.own)
      return; // that of a shackle comes with it
    const EndDimension* size = pin.jaw == nullptr ? nullptr : pin.jaw->find(EndDimensionName::split_pin);
    const std::string secured = fact_text(pin.part->particulars, fact_names.secured);
    const std::vector<std::string> words = words_in_text(secured); // a spring clip is no ring
    const bool ring = std::find(words.begin(), words.end(), "ring") != words.end();
    const std::string what = ring ? say(OrderPhrase::ring) : say(OrderPhrase::split_pin);
    const std::string name = size != nullptr ? what + " " + size->text
                             : pin.size      ? say(OrderPhrase::for_pin, what, pin.size->text)
                                             : say(OrderPhrase::for_pin_no_stated_size, what);
    OrderItem& ordered = item("Small parts", name);
    ordered.size = size != nullptr ? size->text : say(OrderPhrase::not_stated);
    need(ordered, stay.name, 1);
  }

  /// Of hardware that is to be ordered; what hangs already says so itself.
  void note_where_needed(const std::string& name, std::string words) {
    for (OrderItem& one : items_)
      if (one.group == "Hardware" && one.name == name && !one.nothing_to_order())
        note(one, std::move(words));
  }

  /// Passes there and back over the gap; the turns round the seats and the tails come on top.
  void add_cord(const Stay& stay) {
    for (const StackItem& entry : stay.stack) {
      if (entry.kind != StackItem::Kind::part || rig_[entry.part].kind != PartKind::lashing ||
          !entry.set_length)
        continue;
      const Particular* cord = find_fact(rig_[entry.part].particulars, fact_names.cord);
      const bool names_cord = cord != nullptr && !cord->names.empty();
      if (!entry.passes || !names_cord) {
        note_where_needed(rig_[entry.part].name,
                          say(names_cord     ? OrderPhrase::no_cord_without_passes
                              : entry.passes ? OrderPhrase::no_cord_named
                                             : OrderPhrase::no_cord_named_and_no_passes));
        continue;
      }
      const auto line =
          std::find_if(rig_.materials.begin(), rig_.materials.end(),
                       [&](const LineMaterial& one) { return one.name == cord->names.front(); });
      if (line == rig_.materials.end())
        continue;
      OrderItem& ordered = item("Small parts", line->name);
      ordered.what = say(OrderPhrase::cord_of_lashings, line->construction.text);
      ordered.size = line->size.name;
      ordered.in_metres = true;
      ordered.supplier = fact_text(line->particulars, fact_names.supplier);
      // Stock of a cord of which stays are made as well is taken off there.
      const bool of_stays = std::any_of(items_.begin(), items_.end(), [&](const OrderItem& one) {
        return one.group == "Lines" && one.name == line->name;
      });
      if (!of_stays)
        ordered.in_hand = in_stock(*line);
      note(ordered, say(OrderPhrase::gap_x_passes_x_turns));
      const Length of_one = entry.set_length->value * (2.0 * *entry.passes);
      need(ordered, stay.name, tenths_up(of_one * static_cast<double>(entry.count)));
      for (int i = 0; i < entry.count; ++i)
        lashings_[line->name].push_back({stay.name, up_to_millimetres(of_one), tenths_up(of_one)});
    }
  }

  const CheckedRig& checked_;
  const Rig& rig_;
  bool ask_stock_;
  OrderPlan plan_;
  std::map<std::string, LineNeed> needs_;                    ///< by the name of the line
  std::map<std::string, std::vector<WholeLength>> lashings_; ///< by the name of the cord
  std::vector<OrderItem> items_;
};

} // namespace

std::vector<OrderItem> order_items(const CheckedRig& checked) {
  return Collecting(checked, true).run();
}

std::vector<OrderItem> needed_items(const CheckedRig& checked) {
  return Collecting(checked, false).run();
}

std::vector<std::string> suppliers_of(const std::vector<OrderItem>& items) {
  std::vector<std::string> names;
  bool any_without = false;
  for (const OrderItem& item : items) {
    any_without = any_without || item.supplier.empty();
    if (!item.supplier.empty() && std::find(names.begin(), names.end(), item.supplier) == names.end())
      names.push_back(item.supplier);
  }
  if (any_without)
    names.emplace_back();
  return names;
}

} // namespace sheerpole
