#include "calculate/adjust/removable_parts.hpp"

#include "calculate/facts.hpp"
#include "calculate/joints/articulation.hpp"
#include "calculate/joints/joint_comparison.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <optional>
#include <set>

namespace sheerpole {

namespace {

int pieces_in_hand(const Rig& rig, const std::string& part) {
  const Record* record = last_record_of(rig, RecordKind::in_hand, part);
  const std::string pieces = record == nullptr ? "" : fact_text(record->facts, fact_names.pieces);
  return pieces.empty() ? 0 : std::stoi(pieces);
}

void count(PartCounts& counts, PartId part, int more) {
  const auto found =
      std::find_if(counts.begin(), counts.end(), [&](const auto& one) { return one.first == part; });
  if (found == counts.end())
    counts.emplace_back(part, more);
  else
    found->second += more;
}

} // namespace

LooseParts::LooseParts(const Rig& rig) {
  for (std::size_t i = 0; i < rig.parts.size(); ++i)
    if (const int pieces = pieces_in_hand(rig, rig.parts[i].name); pieces > 0)
      left_[i] = pieces;
  for (const Stay& stay : rig.stays)
    for (const StackItem& item : stay.stack)
      if (item.kind == StackItem::Kind::part)
        if (const auto found = left_.find(item.part.index()); found != left_.end())
          found->second = std::max(0, found->second - item.count);
}

int LooseParts::left(PartId part) const {
  const auto found = left_.find(part.index());
  return found == left_.end() ? 0 : found->second;
}

bool LooseParts::counted(PartId part) const {
  return left_.contains(part.index());
}

void LooseParts::spend(const PartCounts& parts) {
  for (const auto& [part, pieces] : parts)
    if (const auto found = left_.find(part.index()); found != left_.end())
      found->second = std::max(0, found->second - pieces);
}

PartCounts spare_parts(const Rig& rig, const Stay& stay, const LooseParts& loose) {
  PartCounts result;
  std::set<std::size_t> named_and_counted; ///< the file says how many there are: the name adds none
  if (const Particular* named = find_fact(stay.particulars, fact_names.spare_parts))
    for (const std::string& name : named->names)
      for (std::size_t i = 0; i < rig.parts.size(); ++i) {
        const PartId part{static_cast<std::uint32_t>(i)};
        if (rig[part].name != name || rig[part].role != Part::Role::fixed)
          continue;
        if (loose.counted(part))
          named_and_counted.insert(i);
        else
          count(result, part, 1);
      }
  for (const StackItem& item : stay.stack)
    if (item.kind == StackItem::Kind::part && item.removable)
      named_and_counted.insert(item.part.index());
  for (const std::size_t i : named_and_counted)
    if (const PartId part{static_cast<std::uint32_t>(i)}; loose.left(part) > 0)
      count(result, part, loose.left(part));
  return result;
}

std::vector<std::size_t> removable_items(const Rig& rig, const Stay& stay) {
  std::vector<std::size_t> items;
  for (std::size_t i = 0; i < stay.stack.size(); ++i) {
    const StackItem& item = stay.stack[i];
    if (item.kind == StackItem::Kind::part && item.removable && !item.splice &&
        rig[item.part].role == Part::Role::fixed && rig[item.part].length)
      items.push_back(i);
  }
  return items;
}

namespace {

/// A stack item and where it stood before; nothing for what is put in.
struct Standing {
  StackItem item;
  std::optional<std::size_t> was;
};

void take_out(const Rig& rig, const Stay& stay, const PartCounts& out, std::vector<Standing>& stack) {
  const std::vector<std::size_t> removable = removable_items(rig, stay);
  for (const auto& [part, pieces] : out) {
    int left = pieces;
    for (std::size_t i = stack.size(); i-- > 0 && left > 0;) {
      const bool may =
          stack[i].was && std::find(removable.begin(), removable.end(), *stack[i].was) != removable.end();
      if (!may || stack[i].item.part != part)
        continue;
      const int taken = std::min(left, stack[i].item.count);
      left -= taken;
      stack[i].item.count -= taken;
      if (stack[i].item.count == 0)
        stack.erase(stack.begin() + static_cast<std::ptrdiff_t>(i));
    }
  }
}

Rig with_stack(const Rig& rig, StayId stay, const std::vector<Standing>& stack) {
  Rig result = rig;
  std::vector<StackItem>& items = result.stays[stay.index()].stack;
  items.clear();
  for (const Standing& one : stack)
    items.push_back(one.item);
  return result;
}

/// Whether a joint of the changed stack was there before: the same two things, one below the other.
bool was_there(const std::vector<Joint>& before, const std::vector<Standing>& stack, const Joint& joint) {
  const auto& upper = stack[joint.upper].was;
  const auto& lower = stack[joint.lower].was;
  return upper && lower && std::any_of(before.begin(), before.end(), [&](const Joint& one) {
           return one.upper == *upper && one.lower == *lower;
         });
}

NewJoint judged(const Rig& rig, Joint joint) {
  NewJoint result;
  result.name = joint.name;
  const End* above = upper_end(rig, joint);
  const End* below = lower_end(rig, joint);
  result.without_pin =
      above != nullptr && below != nullptr && above->type == EndType::eye && below->type == EndType::eye;
  compare_joint(rig, joint);
  const auto first = [&](auto&& wanted) {
    return std::find_if(joint.checks.begin(), joint.checks.end(), wanted);
  };
  const auto unknown =
      first([](const JointCheck& check) { return check.result == JointResult::not_checked; });
  if (unknown != joint.checks.end())
    result.not_checked = unknown->words;
  if (const auto found =
          first([](const JointCheck& check) { return check.result == JointResult::finding; });
      found != joint.checks.end()) {
    result.result = JointResult::finding;
    result.words = found->words;
  } else if (const auto pin = first([](const JointCheck& check) {
               return check.result == JointResult::pass && (check.finding == JointFinding::pin_loose ||
                                                            check.finding == JointFinding::thread_differs);
             });
             pin != joint.checks.end())
    result.words = pin->words;
  else if (unknown != joint.checks.end())
    result.result = JointResult::not_checked;
  return result;
}

std::vector<NewJoint> new_joints(const Rig& rig, StayId stay, const std::vector<Standing>& stack) {
  const std::vector<Joint> before = joints_of(rig, stay);
  const Rig changed = with_stack(rig, stay, stack);
  std::vector<NewJoint> result;
  for (Joint& joint : joints_of(changed, stay))
    if (!was_there(before, stack, joint))
      result.push_back(judged(changed, std::move(joint)));
  return result;
}

std::size_t faults(const std::vector<NewJoint>& joints) {
  return static_cast<std::size_t>(std::count_if(joints.begin(), joints.end(), [](const NewJoint& joint) {
    return joint.result == JointResult::finding;
  }));
}

void put_in(const Rig& rig, StayId stay, PartId part, int pieces, std::vector<Standing>& stack) {
  const auto is_part = [&](const Standing& one) {
    return one.item.kind == StackItem::Kind::part && one.item.part == part;
  };
  if (const auto like = std::find_if(stack.rbegin(), stack.rend(), is_part); like != stack.rend()) {
    like->item.count += pieces;
    return;
  }
  Standing added;
  added.item.part = part;
  added.item.count = pieces;
  const auto adjuster = std::find_if(stack.begin(), stack.end(), [&](const Standing& one) {
    return one.item.kind == StackItem::Kind::part && rig[one.item.part].role == Part::Role::adjuster;
  });
  const auto at =
      adjuster == stack.end() ? static_cast<std::ptrdiff_t>(stack.size()) : adjuster - stack.begin() + 1;
  std::vector<Standing> below = stack;
  below.insert(below.begin() + at, added);
  if (adjuster != stack.end()) {
    std::vector<Standing> above = stack;
    above.insert(above.begin() + at - 1, added);
    if (faults(new_joints(rig, stay, above)) < faults(new_joints(rig, stay, below))) {
      stack = std::move(above);
      return;
    }
  }
  stack = std::move(below);
}

bool swings(const Rig& rig, const Stay& stay, WhichEnd where) {
  const auto found = articulation(rig, stay, where);
  return !found || found->swings;
}

} // namespace

bool ChangedStack::can_be_made() const {
  return faults(joints) == 0;
}

ChangedStack change_stack(const Rig& rig, StayId id, const PartCounts& out, const PartCounts& in) {
  const Stay& stay = rig[id];
  std::vector<Standing> stack;
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    stack.push_back({stay.stack[i], i});
  take_out(rig, stay, out, stack);
  for (const auto& [part, pieces] : in)
    put_in(rig, id, part, pieces, stack);
  ChangedStack result{out, in, new_joints(rig, id, stack), {}};
  const Rig changed = with_stack(rig, id, stack);
  for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower})
    if (swings(rig, stay, end) && !swings(changed, changed[id], end))
      result.stiff.push_back(end);
  return result;
}

namespace {

constexpr std::size_t most_combined = 4;

/// What may be taken out, piece by piece, from the deck upwards.
std::vector<PartId> removable_pieces(const Rig& rig, const Stay& stay) {
  std::vector<PartId> pieces;
  const std::vector<std::size_t> items = removable_items(rig, stay);
  for (auto item = items.rbegin(); item != items.rend(); ++item)
    for (int i = 0; i < stay.stack[*item].count; ++i)
      pieces.push_back(stay.stack[*item].part);
  return pieces;
}

/// Each way to take some of the pieces out, fewest first; like pieces are not told apart.
std::vector<PartCounts> ways_out(const std::vector<PartId>& pieces) {
  std::vector<PartCounts> ways;
  const auto add = [&](const PartCounts& way) {
    if (std::find(ways.begin(), ways.end(), way) == ways.end())
      ways.push_back(way);
  };
  if (pieces.size() > most_combined) {
    PartCounts all;
    for (const PartId piece : pieces) {
      add({{piece, 1}});
      count(all, piece, 1);
    }
    add(all);
    return ways;
  }
  for (std::size_t taken = 1; taken <= pieces.size(); ++taken)
    for (std::size_t chosen = 0; chosen < (std::size_t{1} << pieces.size()); ++chosen) {
      PartCounts way;
      std::size_t number = 0;
      for (std::size_t i = 0; i < pieces.size(); ++i)
        if ((chosen >> i & 1U) != 0) {
          count(way, pieces[i], 1);
          ++number;
        }
      if (number == taken) {
        std::sort(way.begin(), way.end(),
                  [](const auto& a, const auto& b) { return a.first.index() < b.first.index(); });
        add(way);
      }
    }
  return ways;
}

Length length_of(const Rig& rig, const PartCounts& parts) {
  Length sum;
  for (const auto& [part, pieces] : parts)
    if (rig[part].length)
      sum += rig[part].length->value * pieces;
  return sum;
}

} // namespace

Play play_of(const Rig& rig, StayId id, const std::vector<TakeUp>& adjusters, const LooseParts& loose) {
  const Stay& stay = rig[id];
  Play play;
  const std::vector<PartId> pieces = removable_pieces(rig, stay);
  const PartCounts spares = spare_parts(rig, stay, loose);
  if (pieces.empty() && spares.empty())
    return play;
  PlayRow alone;
  for (const TakeUp& adjuster : adjusters) {
    alone.to_tighten += adjuster.to_tighten * stay.stack[adjuster.item].count;
    alone.to_slacken += adjuster.to_slacken * stay.stack[adjuster.item].count;
  }
  play.by_adjusters = alone.to_tighten + alone.to_slacken;
  play.rows.push_back(alone);
  Length tightest = alone.to_tighten;
  Length slackest = alone.to_slacken;
  const auto add = [&](const PartCounts& out, const PartCounts& in) {
    PlayRow row;
    row.stack = change_stack(rig, id, out, in);
    const Length shorter = length_of(rig, out) - length_of(rig, in);
    row.to_tighten = alone.to_tighten + shorter;
    row.to_slacken = alone.to_slacken - shorter;
    if (row.stack.can_be_made()) {
      tightest = std::max(tightest, row.to_tighten);
      slackest = std::max(slackest, row.to_slacken);
    }
    play.rows.push_back(std::move(row));
  };
  for (const PartCounts& way : ways_out(pieces))
    add(way, {});
  for (const auto& [part, there] : spares)
    add({}, {{part, 1}});
  play.in_all = tightest + slackest;
  return play;
}

} // namespace sheerpole
