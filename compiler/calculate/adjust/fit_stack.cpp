#include "calculate/adjust/fit_stack.hpp"

#include "calculate/adjust/account.hpp"
#include "calculate/facts.hpp"
#include "calculate/length/body.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

constexpr int most_added = 12;
constexpr std::size_t most_tried = 1'000'000;
constexpr Length negligible = Length::millimetres(1e-6);

class Filler {
public:
  Filler(Length gap, Length shortest, Length longest, const std::vector<SparePart>& spares)
      : gap_(gap), shortest_(shortest), longest_(longest), spares_(spares), counts_(spares.size()) {}

  Fillings fill(std::size_t most) {
    for (int parts = 0; parts <= most_added && result_.ways.size() < most; ++parts) {
      found_.clear();
      add_parts(0, parts, gap_);
      std::stable_sort(found_.begin(), found_.end(), [&](const Filling& a, const Filling& b) {
        return off_middle(a) < off_middle(b) - negligible;
      });
      for (Filling& way : found_)
        if (result_.ways.size() < most)
          result_.ways.push_back(std::move(way));
    }
    if (!result_.ways.empty())
      result_.short_by = Length{};
    return std::move(result_);
  }

private:
  Length off_middle(const Filling& way) const {
    return magnitude(way.adjuster - (shortest_ + longest_) / 2.0);
  }
  void add_parts(std::size_t spare, int left, Length gap) {
    if (++tried_ > most_tried)
      return;
    if (left == 0) {
      settle(gap);
      return;
    }
    if (spare == spares_.size())
      return;
    for (int count = std::min(left, spares_[spare].in_hand); count >= 0; --count) {
      counts_[spare] = count;
      add_parts(spare + 1, left - count, gap - spares_[spare].length * count);
    }
    counts_[spare] = 0;
  }
  /// Whether it takes out a part and adds another of the kind.
  bool goes_round() const {
    for (std::size_t i = 0; i < spares_.size(); ++i)
      for (std::size_t j = 0; j < i; ++j)
        if (counts_[i] > 0 && counts_[j] > 0 && spares_[i].kind >= 0 && spares_[i].kind == spares_[j].kind)
          return true;
    return false;
  }
  void settle(Length rest) {
    if (goes_round())
      return;
    if (rest >= shortest_ - negligible && rest <= longest_ + negligible) {
      found_.push_back({counts_, rest});
      return;
    }
    const Length off = rest > longest_ ? rest - longest_ : rest - shortest_;
    if (!near_ || magnitude(off) < magnitude(result_.short_by)) {
      near_ = true;
      result_.short_by = off;
    }
  }

  Length gap_, shortest_, longest_;
  const std::vector<SparePart>& spares_;
  std::vector<int> counts_;
  std::vector<Filling> found_;
  Fillings result_;
  std::size_t tried_ = 0;
  bool near_ = false;
};

std::optional<PartId> part_named(const Rig& rig, const std::string& name) {
  for (std::size_t i = 0; i < rig.parts.size(); ++i)
    if (rig.parts[i].name == name)
      return PartId{static_cast<std::uint32_t>(i)};
  return std::nullopt;
}

/// What may be added to a stack and taken out of it.
class Movable {
public:
  Movable(const Rig& rig, const Stay& stay, const Record& asked, const LooseParts& loose) {
    const PartCounts own = spare_parts(rig, stay, loose);
    for (const auto& [part, pieces] : own)
      add(rig, part, pieces);
    if (const Particular* parts = find_fact(asked.facts, fact_names.parts))
      for (const std::string& name : parts->names)
        if (const auto spare = part_named(rig, name);
            spare &&
            std::none_of(own.begin(), own.end(), [&](const auto& one) { return one.first == *spare; }))
          add(rig, *spare, loose.left(*spare));
    added_ = kinds_.size();
    for (const std::size_t item : removable_items(rig, stay)) {
      const StackItem& removable = stay.stack[item];
      const auto known =
          std::find(kinds_.begin() + static_cast<std::ptrdiff_t>(added_), kinds_.end(), removable.part);
      if (known != kinds_.end())
        spares_[static_cast<std::size_t>(known - kinds_.begin())].in_hand += removable.count;
      else {
        spares_.push_back({-rig[removable.part].length->value, removable.count, kind(removable.part)});
        kinds_.push_back(removable.part);
      }
    }
  }

  const std::vector<SparePart>& spares() const { return spares_; }
  FitWay way(const Filling& filling) const {
    FitWay result;
    result.adjuster = filling.adjuster;
    for (std::size_t i = 0; i < kinds_.size(); ++i)
      if (filling.counts[i] > 0)
        (i < added_ ? result.parts : result.out).emplace_back(kinds_[i], filling.counts[i]);
    return result;
  }

private:
  static int kind(PartId part) { return static_cast<int>(part.index()); }
  void add(const Rig& rig, PartId part, int pieces) {
    if (!rig[part].length)
      return;
    spares_.push_back({rig[part].length->value, pieces, kind(part)});
    kinds_.push_back(part);
  }

  std::vector<SparePart> spares_;
  std::vector<PartId> kinds_;
  std::size_t added_ = 0; ///< of them may be added, the others taken out
};

Fit answer(const Rig& rig, StayId id, const LengthSum& pin_to_pin, const Record& asked,
           const LooseParts& loose) {
  const Stay& stay = rig[id];
  Fit fit;
  fit.place = asked.place;
  fit.line = fact_length(asked.facts, fact_names.line_length)->value;
  const StackItem* adjuster = nullptr;
  Length fixed;
  for (const StackItem& item : stay.stack) {
    if (item.kind != StackItem::Kind::part)
      continue;
    const Part& part = rig[item.part];
    if (part.role == Part::Role::adjuster && item.count == 1 && part.shortest && part.longest &&
        adjuster == nullptr)
      adjuster = &item;
    else if (const auto length = taken_length(rig, item); length && part.role != Part::Role::boat_fitting)
      fixed += *length;
  }
  if (pin_to_pin.unknown || adjuster == nullptr) {
    fit.not_checked = adjuster == nullptr ? AdjusterPhrase::no_adjuster : AdjusterPhrase::length_unknown;
    return fit;
  }
  for (const StackItem& item : stay.stack)
    if (item.kind == StackItem::Kind::line && item.line_length)
      fixed += item.line_length->value; // insulated bodies with lengths of their own
  const Part& part = rig[adjuster->part];
  fit.adjuster = adjuster->part;
  const Length range = part.longest->value - part.shortest->value;
  const auto from = fact_number(asked.facts, fact_names.open_from);
  const auto to = fact_number(asked.facts, fact_names.open_to);
  fit.shortest = part.shortest->value + range * (from ? from->value : 0.0);
  fit.longest = part.shortest->value + range * (to ? to->value : 1.0);
  const Movable movable(rig, stay, asked, loose);
  const Length gap = pin_to_pin.known() - fixed - fit.line;
  constexpr std::size_t looked_at = 8;
  constexpr std::size_t told = 3;
  const Fillings found = fill_gap(gap, fit.shortest, fit.longest, movable.spares(), looked_at);
  fit.gap = gap;
  fit.short_by = found.short_by;
  for (const Filling& way : found.ways) {
    FitWay proposed = movable.way(way);
    proposed.open = range > Length{} ? (way.adjuster - part.shortest->value) / range : 0.0;
    proposed.stack = change_stack(rig, id, proposed.out, proposed.parts);
    fit.ways.push_back(std::move(proposed));
  }
  std::stable_partition(fit.ways.begin(), fit.ways.end(),
                        [](const FitWay& way) { return way.stack.can_be_made(); });
  if (fit.ways.size() > told)
    fit.ways.resize(told);
  return fit;
}

} // namespace

Fillings fill_gap(Length gap, Length shortest, Length longest, const std::vector<SparePart>& spares,
                  std::size_t most) {
  return Filler(gap, shortest, longest, spares).fill(most);
}

std::vector<Fit> fit_stack(const Rig& rig, StayId stay, const LengthSum& pin_to_pin, LooseParts& loose) {
  std::vector<Fit> result;
  for (const Record& record : rig.records)
    if (record.kind == RecordKind::fit && find_fact(record.facts, fact_names.line_length) != nullptr &&
        std::find(record.stays.begin(), record.stays.end(), stay) != record.stays.end())
      result.push_back(answer(rig, stay, pin_to_pin, record, loose));
  for (const Fit& fit : result)
    if (!fit.ways.empty()) {
      loose.spend(fit.ways.front().parts);
      break;
    }
  return result;
}

} // namespace sheerpole
