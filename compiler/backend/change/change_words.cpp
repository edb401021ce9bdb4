#include "backend/change/change_words.hpp"

#include "backend/diagram/stay_strips.hpp"
#include "backend/not_yet.hpp"
#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "calculate/change/stay_inputs.hpp"
#include "units/format_length.hpp"
#include "wording/length_words.hpp"
#include "wording/papers/change_sheet_words.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <set>
#include <tuple>

namespace sheerpole {

namespace {

/// What the cut list and the cards print of a length before and after, where there was and is one.
struct PrintedBoth {
  std::optional<Tenths> was;
  std::optional<Tenths> is;
};

LengthRow row_of(std::string name, const ChangedLength& length, const PrintedBoth& printed,
                 StayChange::Kind kind) {
  const Tenths was = printed.was.value_or(Tenths::of(length.was));
  const Tenths is = printed.is.value_or(Tenths::of(length.is));
  LengthRow row{std::move(name), format_total(length.unknown_was, was), format_total(length.unknown_is, is),
                ""};
  if (kind == StayChange::Kind::added)
    row.was.clear();
  if (kind == StayChange::Kind::removed)
    row.is.clear();
  // The change is that of the two printed numbers, so that a reader who subtracts finds it.
  if (kind == StayChange::Kind::changed && length.comparable)
    row.change = is == was ? "0.0" : format_signed(is - was);
  return row;
}

/// In place of a sum that lacks an input.

std::string tenths(Length length) {
  return format_tenths(length);
}

LengthRow range_row(std::string name, const std::optional<AdjusterRange>& was,
                    const std::optional<AdjusterRange>& is, Length AdjusterRange::*which) {
  LengthRow row{std::move(name), was ? tenths((*was).*which) : "", is ? tenths((*is).*which) : "", ""};
  if (was && is)
    row.change =
        row.was == row.is ? "0.0" : format_signed(Tenths::of((*is).*which) - Tenths::of((*was).*which));
  return row;
}

/// Whether a piece of the new rig waits for something: its cut is no number then.
bool waits(const CheckedRig& is, const std::string& name) {
  for (const DerivedStay& stay : is.derived().stays)
    for (const Piece& piece : stay.pieces)
      if (piece.name == name)
        return !is.held_by(piece).empty();
  return false;
}

bool any_waits(const CheckedRig& is, const std::string& line) {
  for (const DerivedStay& stay : is.derived().stays)
    for (const Piece& piece : stay.pieces)
      if (is.rig()[piece.material].name == line && waits(is, piece.name))
        return true;
  return false;
}

const DerivedStay* derived_of(const CheckedRig& checked, const std::string& stay) {
  const auto& stays = checked.derived().stays;
  const auto found = std::ranges::find(stays, stay, [&](const DerivedStay& one) -> const std::string& {
    return checked.rig()[one.stay].name;
  });
  return found == stays.end() ? nullptr : &*found;
}

std::optional<Tenths> printed_pin_to_pin(const CheckedRig& checked, const std::string& stay) {
  const DerivedStay* derived = derived_of(checked, stay);
  return derived == nullptr ? std::nullopt : std::optional(printed_total(derived->pin_to_pin));
}

std::optional<PieceSum> printed_piece(const CheckedRig& checked, const std::string& stay,
                                      const std::string& piece) {
  if (const DerivedStay* derived = derived_of(checked, stay))
    for (const Piece& one : derived->pieces)
      if (one.name == piece)
        return piece_sum(checked.rig(), *derived, one);
  return std::nullopt;
}

std::optional<Tenths> total_of(const std::optional<PieceSum>& sum, SumSection::Kind kind) {
  return sum ? std::optional(sum->section(kind).total) : std::nullopt;
}

StayWords words_of(const CheckedRig& was, const CheckedRig& is, const StayChange& change) {
  StayWords words{
      .name = change.stay,
      .title = change.title,
      .side = {},
      .kind = change.kind == StayChange::Kind::added     ? say(ChangeSheetPhrase::is_new)
              : change.kind == StayChange::Kind::removed ? say(ChangeSheetPhrase::is_gone)
                                                         : "",
      .why = {},
      .lengths = {row_of(say(ChangeSheetPhrase::pin_to_pin), change.pin_to_pin,
                         {printed_pin_to_pin(was, change.stay), printed_pin_to_pin(is, change.stay)},
                         change.kind)},
      .lines = {},
      .change = change};
  for (const ChangedInput& input : change.why)
    words.why.push_back(input_words(input));
  for (const PieceChange& piece : change.pieces) {
    const std::string of = change.pieces.size() > 1 ? say(ChangeSheetPhrase::of, piece.name) : "";
    const StayChange::Kind kind = piece.line_was.empty()  ? StayChange::Kind::added
                                  : piece.line_is.empty() ? StayChange::Kind::removed
                                                          : StayChange::Kind::changed;
    const auto before = printed_piece(was, change.stay, piece.name);
    const auto now = printed_piece(is, change.stay, piece.name);
    const PrintedBoth body{piece.as_made ? std::nullopt : total_of(before, SumSection::Kind::body),
                           total_of(now, SumSection::Kind::body)};
    const PrintedBoth cut_totals{total_of(before, SumSection::Kind::cut),
                                 total_of(now, SumSection::Kind::cut)};
    words.lengths.push_back(row_of(
        say(ChangeSheetPhrase::body, of, (piece.as_made ? say(ChangeSheetPhrase::was_as_it_came_out) : "")),
        piece.body, body, kind));
    words.lengths.push_back(row_of(say(ChangeSheetPhrase::cut, of), piece.cut, cut_totals, kind));
    LengthRow& cut = words.lengths.back();
    if (piece.incomplete_was && !cut.was.empty()) {
      cut.was = say(ChangeSheetPhrase::not_complete);
      cut.change.clear();
    }
    if (!cut.is.empty() && waits(is, piece.name)) {
      cut.is = not_yet();
      cut.change.clear();
    }
    const std::string& line = piece.line_is.empty() ? piece.line_was : piece.line_is;
    std::string said = line + of + " " + std::string(name_of(piece.fate));
    if (piece.fate != LineFate::stays)
      said += ": " + say(is.rig(), piece.why);
    words.lines.push_back(std::move(said));
  }
  if (change.range_was || change.range_is) {
    words.lengths.push_back(range_row(say(ChangeSheetPhrase::to_tighten), change.range_was, change.range_is,
                                      &AdjusterRange::to_tighten));
    words.lengths.push_back(range_row(say(ChangeSheetPhrase::to_slacken), change.range_was, change.range_is,
                                      &AdjusterRange::to_slacken));
  }
  return words;
}

std::string base_of(const std::string& name) {
  const std::size_t dot = name.find('.');
  return dot == std::string::npos ? name : name.substr(0, dot);
}

/// The text with the sides of names left out, so that what is said of both sides reads alike.
std::string without_sides(std::string text) {
  for (const std::string_view side : {".port", ".starboard"})
    for (std::size_t at = text.find(side); at != std::string::npos; at = text.find(side, at))
      text.erase(at, side.size());
  return text;
}

/// Everything printed of a stay but its side. A point to port has the other sign across.
std::vector<std::string> print_of(const StayWords& words) {
  std::vector<std::string> print{words.title, words.kind};
  for (const ChangedInput& input : words.change.why) {
    ChangedInput mirrored = input;
    for (std::string* place : {&mirrored.was, &mirrored.is})
      if (mirrored.property == input_name("y") && place->starts_with('-'))
        place->erase(0, 1);
    print.push_back(without_sides(input_words(mirrored)));
  }
  for (const LengthRow& row : words.lengths)
    for (const std::string& text : {row.name, row.was, row.is, row.change})
      print.push_back(without_sides(text));
  for (const std::string& line : words.lines)
    print.push_back(without_sides(line));
  return print;
}

using FindingKey = std::tuple<std::string, std::string, std::string>;

FindingKey key_of(const Diagnostic& finding) {
  return {finding.slug, finding.subject, finding.message};
}

constexpr double strip_width = 180.0;

const Stay* find_stay(const CheckedRig& checked, const std::string& name) {
  const auto& stays = checked.rig().stays;
  const auto found =
      std::find_if(stays.begin(), stays.end(), [&](const Stay& stay) { return stay.name == name; });
  return found == stays.end() ? nullptr : &*found;
}

const Strip* strip_of(const CheckedRig& checked, const std::vector<Strip>& strips,
                      const std::string& name) {
  const Stay* stay = find_stay(checked, name);
  return stay == nullptr ? nullptr : find_strip(strips, *stay);
}

void add_stay(const StayWords& words, Document& document) {
  DocumentTable why{.caption = say(ChangeSheetPhrase::because),
                    .columns = {{say(ChangeSheetPhrase::what_is_stated_otherwise), 1.0}}};
  for (const std::string& one : words.why)
    why.rows.push_back({one});
  if (!why.rows.empty())
    document.blocks.emplace_back(std::move(why));
  DocumentTable lengths{.caption = say(ChangeSheetPhrase::lengths_mm),
                        .columns = {{say(ChangeSheetPhrase::length), 2.0},
                                    {say(ChangeSheetPhrase::was), 1.0, true},
                                    {say(ChangeSheetPhrase::is), 1.0, true},
                                    {say(ChangeSheetPhrase::change), 1.0, true}}};
  for (const LengthRow& row : words.lengths)
    lengths.rows.push_back({row.name, row.was, row.is, row.change});
  document.blocks.emplace_back(std::move(lengths));
  for (const std::string& line : words.lines)
    document.blocks.emplace_back(DocumentText{line + "."});
}

void add_list(const std::string& caption, const std::string& heading, const std::vector<std::string>& lines,
              Document& document) {
  if (lines.empty())
    return;
  DocumentTable table{.caption = caption, .columns = {{heading, 1.0}}};
  for (const std::string& line : lines)
    table.rows.push_back({line});
  document.blocks.emplace_back(std::move(table));
}

std::vector<std::string> messages(const std::vector<const Diagnostic*>& findings) {
  std::vector<std::string> lines;
  for (const Diagnostic* finding : findings)
    lines.push_back(finding->message + " (" + finding->slug + ")");
  return lines;
}

} // namespace

std::string input_words(const ChangedInput& input) {
  const std::string what = say(input.subject) + ", " + say(input.property) + ": ";
  if (input.was.empty())
    return say(ChangeSheetPhrase::is_added, what, input.is);
  if (input.is.empty())
    return say(ChangeSheetPhrase::is_left_out, what, input.was);
  return say(ChangeSheetPhrase::becomes, what, input.was, input.is);
}

RigChange change_of(const CheckedRig& was, const CheckedRig& is) {
  return compare_rigs(was.rig(), was.derived(), is.rig(), is.derived(),
                      [&was](const Piece& piece) { return !was.draft_reasons(piece).empty(); });
}

std::vector<StayWords> stay_words(const CheckedRig& was, const CheckedRig& is, const RigChange& change) {
  std::vector<StayWords> all;
  std::vector<std::vector<std::string>> prints;
  for (const StayChange& stay : change.stays) {
    StayWords words = words_of(was, is, stay);
    const std::vector<std::string> print = print_of(words);
    bool alike = false;
    for (std::size_t i = 0; i < all.size() && !alike; ++i)
      if (all[i].side.empty() && all[i].change.stay != stay.stay &&
          base_of(all[i].change.stay) == base_of(stay.stay) && prints[i] == print) {
        all[i].name = base_of(stay.stay);
        all[i].side = say(ChangeSheetPhrase::port_and_starboard_alike);
        for (std::vector<std::string>* texts : {&all[i].why, &all[i].lines})
          for (std::string& text : *texts)
            text = without_sides(std::move(text));
        alike = true;
      }
    if (alike)
      continue;
    all.push_back(std::move(words));
    prints.push_back(print);
  }
  return all;
}

std::vector<std::string> outdated_words(const RigChange& change) {
  std::vector<std::string> words;
  for (const OutdatedMeasurement& one : change.outdated) {
    const std::string what = one.stated             ? say(ChangeSheetPhrase::the_stated_length)
                             : one.measured.empty() ? say(ChangeSheetPhrase::the_reading)
                                                    : say(ChangeSheetPhrase::the_reading_of, one.measured);
    words.push_back(
        say(ChangeSheetPhrase::expect_mm_by_points_is, one.stay, format_signed(one.expected), what,
            led_by(say(ChangeSheetPhrase::because_behind), joined(one.why, "; ", input_words))));
  }
  return words;
}

namespace {

/// Whether no stay rests on what was set: a number, a point, a part, a line, a splice that none uses. Of
/// anything else that is not asked.
bool is_idle(const Rig& rig, const Difference& difference) {
  if (difference.idle)
    return true;
  const std::string base = base_of(difference.subject);
  const auto is_it = [&](const auto& all) {
    return std::any_of(all.begin(), all.end(), [&](const auto& one) {
      return one.name == difference.subject || base_of(one.name) == base;
    });
  };
  if (!is_it(rig.points) && !is_it(rig.parts) && !is_it(rig.materials) && !is_it(rig.splices))
    return false;
  return std::none_of(rig.stays.begin(), rig.stays.end(),
                      [&](const Stay& stay) { return rests_on(rig, stay, difference.subject); });
}

/// What was set on the command line and no stay rests on.
std::vector<std::string> idle_settings(const Rig& rig) {
  std::vector<std::string> names;
  for (const Difference& difference : rig.differences)
    if (difference.origin == Difference::Origin::command_line && is_idle(rig, difference))
      names.push_back(difference.subject);
  return names;
}

} // namespace

std::string no_stay_words(const CheckedRig& is, const RigChange& change) {
  if (const std::vector<std::string> idle = idle_settings(is.rig()); !idle.empty())
    return say(ChangeSheetPhrase::no_stay_rests_on_so, joined(idle, ", "));
  return change.outdated.empty() ? say(ChangeSheetPhrase::no_stay_has_to_be)
                                 : say(ChangeSheetPhrase::what_has_to_be_made);
}

std::vector<std::string> parts_words(const RigChange& change) {
  std::vector<std::string> words;
  for (const PartCount& part : change.parts) {
    const int more = part.is - part.was;
    const std::string name = part.part + led_by(", ", part.title);
    words.push_back(more > 0 ? say(ChangeSheetPhrase::more_of, more, name)
                             : say(ChangeSheetPhrase::left_over_of, -more, name));
  }
  return words;
}

std::vector<std::string> order_words(const CheckedRig& is, const RigChange& change) {
  std::vector<std::string> words;
  for (const LineToOrder& line : change.lines)
    words.push_back(
        line.line + led_by(", ", line.title) + ": " + std::to_string(line.pieces) +
        (line.pieces == 1 ? say(ChangeSheetPhrase::piece) : say(ChangeSheetPhrase::pieces_together)) +
        (any_waits(is, line.line) ? say(ChangeSheetPhrase::not_to_be_cut_to, about_metres(line.cut))
                                  : say(ChangeSheetPhrase::mm_to_cut, format_tenths(line.cut))) +
        (line.complete ? "" : say(ChangeSheetPhrase::as_far_as_it_is)));
  return words;
}

FindingsChange findings_change(const CheckedRig& was, const CheckedRig& is) {
  std::multiset<FindingKey> before;
  std::multiset<FindingKey> after;
  for (const Diagnostic& finding : was.findings())
    before.insert(key_of(finding));
  for (const Diagnostic& finding : is.findings())
    after.insert(key_of(finding));
  FindingsChange change;
  for (const Diagnostic& finding : is.findings())
    if (const auto found = before.find(key_of(finding)); found != before.end())
      before.erase(found);
    else
      change.appeared.push_back(&finding);
  for (const Diagnostic& finding : was.findings())
    if (const auto found = after.find(key_of(finding)); found != after.end())
      after.erase(found);
    else
      change.gone.push_back(&finding);
  std::erase_if(change.gone, [&](const Diagnostic* was_said) {
    const auto now =
        std::find_if(change.appeared.begin(), change.appeared.end(), [&](const Diagnostic* one) {
          return one->slug == was_said->slug && one->subject == was_said->subject;
        });
    if (now == change.appeared.end() || was_said->subject.empty())
      return false;
    change.changed.push_back({was_said, *now});
    change.appeared.erase(now);
    return true;
  });
  return change;
}

std::vector<std::string> changed_messages(const FindingsChange& findings) {
  std::vector<std::string> lines;
  for (const FindingsChange::Changed& one : findings.changed)
    lines.push_back(say(ChangeSheetPhrase::it_was, one.is->message, one.was->message, one.is->slug));
  return lines;
}

void add_change(const CheckedRig& was, const CheckedRig& is, Document& document) {
  const RigChange change = change_of(was, is);
  const FindingsChange findings = findings_change(was, is);
  const std::vector<Strip> old_strips = strip_contents(was);
  const std::vector<Strip> new_strips = strip_contents(is);
  if (change.stays.empty())
    document.blocks.emplace_back(DocumentText{no_stay_words(is, change)});
  for (const StayWords& words : stay_words(was, is, change)) {
    document.blocks.emplace_back(DocumentHeading{words.name + led_by(": ", words.title) +
                                                     led_by(", ", words.side) + led_by(", ", words.kind),
                                                 3, "change-" + words.name});
    add_stay(words, document);
    for (const auto& [strip, word] :
         {std::pair(strip_of(was, old_strips, words.change.stay), say(ChangeSheetPhrase::was_capitals)),
          std::pair(strip_of(is, new_strips, words.change.stay), say(ChangeSheetPhrase::is_capitals))})
      if (strip != nullptr)
        document.blocks.emplace_back(DocumentFigure{strip_drawing(*strip, strip_width, word), ""});
  }
  add_list(say(ChangeSheetPhrase::measure_again), say(ChangeSheetPhrase::place_moved_under_stay_that),
           outdated_words(change), document);
  std::vector<std::string> unmoved;
  for (const ChangedInput& input : change.without_move)
    unmoved.push_back(input_words(input));
  add_list(say(ChangeSheetPhrase::stated_otherwise_and_moves_no), say(ChangeSheetPhrase::what), unmoved,
           document);
  add_list(say(ChangeSheetPhrase::parts), say(ChangeSheetPhrase::more_or_fewer), parts_words(change),
           document);
  add_list(say(ChangeSheetPhrase::line_to_order), say(ChangeSheetPhrase::line), order_words(is, change),
           document);
  add_list(say(ChangeSheetPhrase::findings_that_say_something_else), say(ChangeSheetPhrase::finding),
           changed_messages(findings), document);
  add_list(say(ChangeSheetPhrase::findings_that_are_new), say(ChangeSheetPhrase::finding),
           messages(findings.appeared), document);
  add_list(say(ChangeSheetPhrase::findings_that_are_gone), say(ChangeSheetPhrase::finding),
           messages(findings.gone), document);
}

} // namespace sheerpole
