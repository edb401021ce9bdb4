#include "calculate/change/rig_change.hpp"

#include "calculate/adjust/piece_history.hpp"
#include "calculate/change/stay_inputs.hpp"
#include "calculate/length/path_length.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <map>

namespace sheerpole {

namespace {

std::map<std::string, StayView> views_of(const Rig& rig, const Derived& derived) {
  std::map<std::string, StayView> views;
  for (const DerivedStay& stay : derived.stays)
    views[rig[stay.stay].name] = {&rig, &rig[stay.stay], &stay, &derived};
  return views;
}

/// The names of a stack from aloft to deck; the line as "line".
std::vector<std::string> stack_names(const Rig& rig, const Stay& stay) {
  std::vector<std::string> names;
  for (const StackItem& item : stay.stack)
    names.push_back(item.kind == StackItem::Kind::line ? "line" : rig[item.part].name);
  return names;
}

std::string joined(std::vector<std::string>::const_iterator from,
                   std::vector<std::string>::const_iterator to) {
  std::string words;
  for (; from != to; ++from)
    words += (words.empty() ? "" : ", ") + *from;
  return words;
}

/// What is on record of the pieces of a stay: "made 2026-05-02".
std::vector<std::string> record_names(const StayView& view) {
  std::vector<std::string> names;
  for (const PieceRecord& record : piece_records_of(*view.rig, view.derived->stay))
    names.push_back(std::string(name_of(record.stage)) + (record.date.empty() ? "" : " " + record.date));
  return names;
}

/// What of a row of names differs: without what is alike at its beginning and its end.
void add_row_change(const std::string& subject, const std::string& property,
                    const std::vector<std::string>& was, const std::vector<std::string>& is,
                    std::vector<ChangedInput>& changes) {
  if (was == is)
    return;
  const auto [was_from, is_from] = std::mismatch(was.begin(), was.end(), is.begin(), is.end());
  auto was_to = was.end();
  auto is_to = is.end();
  while (was_to != was_from && is_to != is_from && *(was_to - 1) == *(is_to - 1)) {
    --was_to;
    --is_to;
  }
  changes.push_back(
      {input_name(subject), input_name(property), joined(was_from, was_to), joined(is_from, is_to)});
}

std::vector<std::string> path_names(const Rig& rig, const Stay& stay) {
  std::vector<std::string> names;
  for (const PathStop& stop : stay.path)
    names.push_back(rig[stop.point].name);
  return names;
}

/// The one of them that is this property of this thing; null when there is none. They are few.
template <class Input>
const Input* find_input(const std::vector<Input>& inputs, const Remark& subject, const Remark& property) {
  const auto found = std::find_if(inputs.begin(), inputs.end(), [&](const Input& one) {
    return one.property == property && one.subject == subject;
  });
  return found == inputs.end() ? nullptr : &*found;
}

bool any_of(const std::vector<StayInput>& inputs, const Remark& subject) {
  return std::any_of(inputs.begin(), inputs.end(),
                     [&](const StayInput& one) { return one.subject == subject; });
}

/// Whether a stack holds this part.
bool holds(const std::vector<std::string>& stack, const std::string& part) {
  return std::find(stack.begin(), stack.end(), part) != stack.end();
}

/// What is stated otherwise of all on which a stay rests.
std::vector<ChangedInput> changed_inputs(const StayView& was, const StayView& is) {
  std::vector<ChangedInput> changes;
  add_row_change(is.stay->name, "path", path_names(*was.rig, *was.stay), path_names(*is.rig, *is.stay),
                 changes);
  const std::vector<std::string> old_stack = stack_names(*was.rig, *was.stay);
  const std::vector<std::string> new_stack = stack_names(*is.rig, *is.stay);
  add_row_change(is.stay->name, "stack", old_stack, new_stack, changes);
  add_row_change(is.stay->name, "piece", record_names(was), record_names(is), changes);
  // How a part is set says nothing new where the part itself is new or gone.
  const auto of_one_stack = [&](const StayInput& input) {
    return !input.setting_of.empty() &&
           !(holds(old_stack, input.setting_of) && holds(new_stack, input.setting_of));
  };
  const std::vector<StayInput> before = stay_inputs(*was.rig, *was.stay);
  const std::vector<StayInput> after = stay_inputs(*is.rig, *is.stay);
  for (const StayInput& input : after) {
    // A part or a point that is new there is told by the row in which it stands.
    if (!any_of(before, input.subject) || of_one_stack(input))
      continue;
    const StayInput* earlier = find_input(before, input.subject, input.property);
    const std::string old_value = earlier == nullptr ? "" : earlier->value;
    if (old_value != input.value)
      changes.push_back({input.subject, input.property, old_value, input.value});
  }
  for (const StayInput& input : before)
    if (any_of(after, input.subject) && find_input(after, input.subject, input.property) == nullptr &&
        !of_one_stack(input))
      changes.push_back({input.subject, input.property, input.value, ""});
  return changes;
}

std::optional<AdjusterRange> range_of(const DerivedStay& stay) {
  if (stay.adjusters.empty())
    return std::nullopt;
  AdjusterRange range;
  for (const TakeUp& adjuster : stay.adjusters) {
    range.to_tighten += adjuster.to_tighten;
    range.to_slacken += adjuster.to_slacken;
  }
  return range;
}

bool moved(const ChangedLength& length) {
  return !length.comparable || length.difference() >= least_change || length.difference() <= -least_change;
}

bool moved(const std::optional<AdjusterRange>& was, const std::optional<AdjusterRange>& is) {
  if (was.has_value() != is.has_value())
    return true;
  const auto apart = [](Length a, Length b) { return a - b >= least_change || b - a >= least_change; };
  return was && (apart(was->to_tighten, is->to_tighten) || apart(was->to_slacken, is->to_slacken));
}

/// Whether anything of the stay has to be made or set otherwise.
bool moved(const StayChange& change) {
  return moved(change.pin_to_pin) || moved(change.body) || moved(change.range_was, change.range_is) ||
         std::any_of(change.pieces.begin(), change.pieces.end(), [](const PieceChange& piece) {
           return piece.fate != LineFate::stays || moved(piece.body) || moved(piece.cut);
         });
}

StayChange compare_stays(const StayView& was, const StayView& is) {
  StayChange change{.stay = is.stay->name,
                    .title = is.stay->title,
                    .why = changed_inputs(was, is),
                    .pin_to_pin = changed_length(was.derived->pin_to_pin, is.derived->pin_to_pin),
                    .body = changed_length(was.derived->body, is.derived->body),
                    .pieces = {},
                    .range_was = range_of(*was.derived),
                    .range_is = range_of(*is.derived)};
  const std::size_t both = std::min(was.derived->pieces.size(), is.derived->pieces.size());
  for (std::size_t i = 0; i < both; ++i)
    change.pieces.push_back(compare_piece(was, is, i));
  for (std::size_t i = both; i < is.derived->pieces.size(); ++i)
    change.pieces.push_back(new_piece(is, i));
  for (std::size_t i = both; i < was.derived->pieces.size(); ++i)
    change.pieces.push_back(gone_piece(was, i));
  return change;
}

StayChange added_stay(const StayView& is) {
  StayChange change{.kind = StayChange::Kind::added,
                    .stay = is.stay->name,
                    .title = is.stay->title,
                    .why = {},
                    .pin_to_pin = changed_length(is.derived->pin_to_pin, is.derived->pin_to_pin),
                    .body = changed_length(is.derived->body, is.derived->body),
                    .pieces = {},
                    .range_was = {},
                    .range_is = range_of(*is.derived)};
  for (std::size_t i = 0; i < is.derived->pieces.size(); ++i)
    change.pieces.push_back(new_piece(is, i));
  return change;
}

StayChange removed_stay(const StayView& was) {
  StayChange change{.kind = StayChange::Kind::removed,
                    .stay = was.stay->name,
                    .title = was.stay->title,
                    .why = {},
                    .pin_to_pin = changed_length(was.derived->pin_to_pin, was.derived->pin_to_pin),
                    .body = changed_length(was.derived->body, was.derived->body),
                    .pieces = {},
                    .range_was = range_of(*was.derived),
                    .range_is = {}};
  for (std::size_t i = 0; i < was.derived->pieces.size(); ++i)
    change.pieces.push_back(gone_piece(was, i));
  return change;
}

/// The reading that makes the length; null when none does.
const Reading* taken_reading(const StayView& view) {
  const auto& taken = view.derived->readings.taken;
  return taken ? &view.stay->readings[*taken] : nullptr;
}

bool same_reading(const Reading& was, const Reading& is) {
  const auto same_length = [](const Sourced<Length>& a, const Sourced<Length>& b) {
    return magnitude(a.value - b.value) < least_change;
  };
  return was.date == is.date && was.mark == is.mark &&
         std::equal(was.lengths().begin(), was.lengths().end(), is.lengths().begin(), is.lengths().end(),
                    same_length);
}

/// Nothing where the path is as it was, where it makes the length itself, or where the stay was measured
/// again since.
std::optional<OutdatedMeasurement> outdated(const StayView& was, const StayView& is) {
  const auto old_path = path_length(*was.rig, *was.stay);
  const auto new_path = path_length(*is.rig, *is.stay);
  if (!old_path || !new_path || is.derived->route == LengthRoute::path)
    return std::nullopt;
  const Length longer = new_path->known() - old_path->known();
  if (magnitude(longer) < least_change)
    return std::nullopt;
  OutdatedMeasurement result{is.stay->name, {}, false, longer, {}};
  const Reading* before = taken_reading(was);
  const Reading* now = taken_reading(is);
  if (now != nullptr) {
    if (before == nullptr || !same_reading(*before, *now))
      return std::nullopt;
    result.measured = now->date;
    return result;
  }
  result.stated = true;
  const bool kept = was.derived->route == LengthRoute::stated && is.derived->route == LengthRoute::stated &&
                    !moved(changed_length(was.derived->pin_to_pin, is.derived->pin_to_pin));
  return kept ? std::optional(result) : std::nullopt;
}

/// Parts by name with how many there are in all stacks. Fittings of the boat hold several stays.
void count_parts(const Rig& rig, int PartCount::*count, std::map<std::string, PartCount>& parts) {
  for (const Stay& stay : rig.stays)
    for (const StackItem& item : stay.stack) {
      if (item.kind != StackItem::Kind::part || rig[item.part].role == Part::Role::boat_fitting)
        continue;
      PartCount& one = parts[rig[item.part].name];
      one.part = rig[item.part].name;
      one.title = rig[item.part].title;
      one.*count += item.count;
    }
}

std::vector<LineToOrder> lines_to_order(const Rig& is, const Derived& derived,
                                        const std::vector<StayChange>& stays) {
  std::map<std::string, const Piece*> pieces;
  for (const DerivedStay& stay : derived.stays)
    for (const Piece& piece : stay.pieces)
      pieces[piece.name] = &piece;
  std::map<std::string, LineToOrder> lines;
  for (const StayChange& stay : stays)
    for (const PieceChange& change : stay.pieces) {
      if (change.fate != LineFate::replaced && change.fate != LineFate::new_piece)
        continue;
      const Piece& piece = *pieces.at(change.name);
      LineToOrder& line = lines[change.line_is];
      line.line = change.line_is;
      line.title = is[piece.material].title;
      ++line.pieces;
      line.cut += piece.cut.known();
      line.complete = line.complete && !piece.cut.unknown && piece.missing.empty();
    }
  std::vector<LineToOrder> result;
  for (auto& [name, line] : lines)
    result.push_back(std::move(line));
  return result;
}

} // namespace

RigChange compare_rigs(const Rig& was, const Derived& was_derived, const Rig& is, const Derived& is_derived,
                       const IsDraft& was_draft) {
  RigChange change;
  auto old_stays = views_of(was, was_derived);
  if (was_draft)
    for (auto& [name, view] : old_stays)
      view.is_draft = &was_draft;
  const auto new_stays = views_of(is, is_derived);
  for (const DerivedStay& derived : is_derived.stays) {
    const std::string& name = is[derived.stay].name;
    const auto found = old_stays.find(name);
    if (found == old_stays.end()) {
      change.stays.push_back(added_stay(new_stays.at(name)));
      continue;
    }
    StayChange stay = compare_stays(found->second, new_stays.at(name));
    auto older = outdated(found->second, new_stays.at(name));
    if (older) {
      older->why = stay.why;
      change.outdated.push_back(std::move(*older));
    }
    if (moved(stay)) {
      change.stays.push_back(std::move(stay));
      continue;
    }
    if (older) // what it rests on does move a length: the one to be measured again
      continue;
    for (ChangedInput& input : stay.why)
      if (find_input(change.without_move, input.subject, input.property) == nullptr)
        change.without_move.push_back(std::move(input));
  }
  for (const DerivedStay& derived : was_derived.stays)
    if (const std::string& name = was[derived.stay].name; !new_stays.contains(name))
      change.stays.push_back(removed_stay(old_stays.at(name)));
  std::map<std::string, PartCount> parts;
  count_parts(was, &PartCount::was, parts);
  count_parts(is, &PartCount::is, parts);
  for (auto& [name, part] : parts)
    if (part.was != part.is)
      change.parts.push_back(std::move(part));
  change.lines = lines_to_order(is, is_derived, change.stays);
  return change;
}

} // namespace sheerpole
