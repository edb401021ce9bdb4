#include "backend/order/order_items.hpp"

#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "calculate/facts.hpp"
#include "calculate/joints/joint.hpp"
#include "calculate/length/pin_to_pin.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "units/format_length.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace sheerpole {

namespace {

/// Tenths of a metre, rounded up: an order that is short by a hair is short.
long tenths_up(Length length) {
  return static_cast<long>(std::ceil(length.metres() * 10.0 - 1e-6));
}

class Collecting {
public:
  explicit Collecting(const CheckedRig& checked) : checked_(checked), rig_(checked.rig()) {}

  std::vector<OrderItem> run() {
    for (const DerivedStay& stay : checked_.derived().stays)
      add_lines(stay);
    for (const DerivedStay& stay : checked_.derived().stays)
      add_hardware(rig_[stay.stay]);
    for (const DerivedStay& stay : checked_.derived().stays) {
      add_split_pins(stay);
      add_cord(rig_[stay.stay]);
    }
    return std::move(items_);
  }

private:
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
          const Particular* pieces = find_fact(stock.facts, fact_names.pieces);
          tenths += static_cast<long>(std::floor(length->value.metres() * 10.0 + 1e-6)) *
                    (pieces == nullptr ? 1 : std::stol(pieces->text));
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
        note(found, "in hand by the stock of the file; the spool plan says whether the pieces fit on it");
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
      const auto estimate = expected_pin_to_pin(rig_, rig_[stay.stay]);
      if (!sum.body_complete || !sum.cut_complete)
        note(ordered, "the cut of " + piece.name + " lacks an input");
      if (sum.unknown && !estimate) {
        note(ordered, "not in it: " + piece.name + ", whose length is X; state `estimate` in the stay");
        continue;
      }
      Length length = sum.cut().length();
      if (sum.unknown) {
        length += estimate->value;
        note(ordered, "rests on the estimate of " + piece.name + ", to which nothing is cut");
      }
      const double spare = spare_share(line);
      if (spare > 0.0)
        note(ordered, fmt::format("with {} % spare on each piece", format_number(spare * 100.0)));
      need(ordered, rig_[stay.stay].name, tenths_up(length * (1.0 + spare)));
    }
  }

  std::string sizes_of(const Part& part) const {
    std::vector<std::string> sizes;
    const auto add = [&](const std::string& size) {
      if (!size.empty() && std::find(sizes.begin(), sizes.end(), size) == sizes.end())
        sizes.push_back(size);
    };
    for (const End* end : {&part.upper, &part.lower}) {
      if (const EndDimension* pin = end->find(EndDimensionName::pin))
        add("pin " + pin->text);
      if (const EndDimension* size = end->find(EndDimensionName::size))
        add("wire " + size->text);
      if (const EndDimension* thread = end->find(EndDimensionName::thread)) {
        const EndDimension* hand = end->find(EndDimensionName::hand);
        add(thread->text + (hand == nullptr ? ", hand not stated" : ", " + hand->text + " hand"));
      }
    }
    if (part.screw)
      add(part.screw->thread.designation + (part.screw->pair ? ", right and left hand" : ""));
    add(fact_text(part.particulars, fact_names.size));
    return joined(sizes, "; ");
  }

  void add_hardware(const Stay& stay) {
    for (const StackItem& entry : stay.stack) {
      if (entry.kind != StackItem::Kind::part || rig_[entry.part].role == Part::Role::boat_fitting)
        continue;
      const Part& part = rig_[entry.part];
      if (part.kind == PartKind::soft_eye)
        continue; // is made of the rope itself
      OrderItem& ordered = item("Hardware", part.name);
      if (ordered.stays.empty()) {
        ordered.what = part.title.empty() ? std::string(name_of(part.kind)) : part.title;
        ordered.size = sizes_of(part);
        ordered.supplier = fact_text(part.particulars, fact_names.supplier);
        if (const Record* in_hand = last_record_of(rig_, RecordKind::in_hand, part.name))
          if (const Particular* pieces = find_fact(in_hand->facts, fact_names.pieces))
            ordered.in_hand = std::stol(pieces->text);
      }
      need(ordered, stay.name, entry.count);
    }
  }

  /// One for the pin of every jaw: a ring where the file says that a ring secures it.
  void add_split_pins(const DerivedStay& derived) {
    const Stay& stay = rig_[derived.stay];
    for (const Joint& joint : derived.joints)
      if (!add_split_pin(stay, upper_end(rig_, joint), joint.upper))
        add_split_pin(stay, lower_end(rig_, joint), joint.lower);
    if (derived.joints.empty())
      return;
    // Where the file does not say what the stay hangs on, its outermost jaws are in no joint.
    const Joint& first = derived.joints.front();
    const Joint& last = derived.joints.back();
    add_split_pin(stay, outer_end(stay, first.upper, !first.upper_turned), first.upper);
    add_split_pin(stay, outer_end(stay, last.lower, last.lower_turned), last.lower);
  }

  /// The upper or the lower end of a part of the stack as its library has it; null for a line.
  const End* outer_end(const Stay& stay, std::size_t entry, bool upper) const {
    const StackItem& item = stay.stack[entry];
    if (item.kind != StackItem::Kind::part)
      return nullptr;
    return upper ? &rig_[item.part].upper : &rig_[item.part].lower;
  }

  /// False when this end brings no pin.
  bool add_split_pin(const Stay& stay, const End* end, std::size_t entry) {
    if (end == nullptr || end->type != EndType::jaw)
      return false;
    const EndDimension* size = end->find(EndDimensionName::split_pin);
    const EndDimension* pin = end->find(EndDimensionName::pin);
    const std::string secured = fact_text(rig_[stay.stack[entry].part].particulars, fact_names.secured);
    const std::string what = secured.find("ring") == std::string::npos ? "split pin" : "ring";
    const std::string name = size != nullptr  ? what + " " + size->text
                             : pin != nullptr ? what + " for a pin of " + pin->text
                                              : what + " for a pin of no stated size";
    OrderItem& ordered = item("Small parts", name);
    ordered.size = size != nullptr ? size->text : "not stated";
    need(ordered, stay.name, 1);
    return true;
  }

  /// Passes there and back over the gap; the turns round the seats and the tails come on top.
  void add_cord(const Stay& stay) {
    for (const StackItem& entry : stay.stack) {
      if (entry.kind != StackItem::Kind::part || rig_[entry.part].kind != PartKind::lashing ||
          !entry.passes || !entry.set_length)
        continue;
      const Particular* cord = find_fact(rig_[entry.part].particulars, fact_names.cord);
      if (cord == nullptr || cord->names.empty())
        continue;
      const auto line =
          std::find_if(rig_.materials.begin(), rig_.materials.end(),
                       [&](const LineMaterial& one) { return one.name == cord->names.front(); });
      if (line == rig_.materials.end())
        continue;
      OrderItem& ordered = item("Small parts", line->name);
      ordered.what = line->construction.text + ", cord of lashings";
      ordered.size = line->size.name;
      ordered.in_metres = true;
      ordered.supplier = fact_text(line->particulars, fact_names.supplier);
      // Stock of a cord of which stays are made as well is taken off there.
      const bool of_stays = std::any_of(items_.begin(), items_.end(), [&](const OrderItem& one) {
        return one.group == "Lines" && one.name == line->name;
      });
      if (!of_stays)
        ordered.in_hand = in_stock(*line);
      note(ordered, "gap x passes x 2; turns round the seats and tails are not in it");
      need(ordered, stay.name, tenths_up(entry.set_length->value * (2.0 * *entry.passes * entry.count)));
    }
  }

  const CheckedRig& checked_;
  const Rig& rig_;
  std::vector<OrderItem> items_;
};

} // namespace

std::vector<OrderItem> order_items(const CheckedRig& checked) {
  return Collecting(checked).run();
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

std::string amount_text(const OrderItem& item, long amount) {
  return item.in_metres ? fmt::format("{}.{} m", amount / 10, amount % 10) : std::to_string(amount);
}

} // namespace sheerpole
