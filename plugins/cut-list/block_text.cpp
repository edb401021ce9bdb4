#include "plugins/cut-list/cut_list.hpp"

#include "wording/length_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t label_width = 14;
constexpr std::size_t name_width = 38;
constexpr std::size_t amount_width = 13;

std::string_view side_words(Side side) {
  if (side == Side::centre)
    return "on the centreline";
  return side == Side::port ? "port side (left when looking forward)"
                            : "starboard side (right when looking forward)";
}

void field(std::string_view label, const std::string& text, TextPage& page) {
  page.wrapped("   " + padded(label, label_width), text);
}

std::string quoted_title(const std::string& name, const std::string& title) {
  return title.empty() ? name : fmt::format("{} \"{}\"", name, title);
}

std::string line_words(const LineMaterial& line) {
  std::string words = quoted_title(line.name, line.title) + ": ";
  for (const std::string* part : {&line.construction.text, &line.grade})
    if (!part->empty())
      words += *part + ", ";
  return words + std::string(name_of(line.kind));
}

std::string path_words(const Rig& rig, const Stay& stay) {
  if (stay.path.empty())
    return "not given";
  std::string words;
  for (const PathStop& stop : stay.path) {
    words += (words.empty() ? "" : " > ") + rig[stop.point].base;
    if (stop.passage != Passage::end)
      words += stop.passage == Passage::free ? " (runs free)" : " (clamped)";
  }
  return words;
}

std::string end_words(const Rig& rig, const PieceEnd& end) {
  if (end.bare())
    return "bare end";
  std::string words = quoted_title(end.part_name(rig), end.part_title(rig));
  if (end.splice)
    words += ", splice " + end.splice_name(rig);
  for (const std::string& note : say_each(rig, end.notes))
    words += "; " + note;
  return words;
}

std::string travel_words(Length travel, const TakeUp& adjuster) {
  const std::string turns = format_turns(travel, adjuster.travel_per_turn);
  return format_tenths(travel) + " mm" + (turns.empty() ? "" : " = " + turns + " turns");
}

std::vector<std::string> take_up_lines(const Rig& rig, const DerivedStay& stay) {
  std::vector<std::string> lines;
  for (const TakeUp& adjuster : stay.adjusters) {
    lines.push_back(
        fmt::format("{} set to {} mm", rig[adjuster.part].name, format_tenths(adjuster.set.value)));
    lines.push_back(fmt::format("to tighten {}, to slacken {}", travel_words(adjuster.to_tighten, adjuster),
                                travel_words(adjuster.to_slacken, adjuster)));
    if (!adjuster.engaged)
      continue;
    std::string thread = fmt::format("thread engaged {} mm each stud", format_tenths(*adjuster.engaged));
    if (adjuster.least_engagement)
      thread += fmt::format(" ({} is {} mm)", least_engagement_words(rig, rig[adjuster.part]),
                            format_tenths(*adjuster.least_engagement));
    lines.push_back(std::move(thread));
  }
  return lines;
}

/// The label at the first line only.
void fields(std::string_view label, const std::vector<std::string>& lines, TextPage& page) {
  for (std::size_t i = 0; i < lines.size(); ++i)
    field(i == 0 ? label : "", lines[i], page);
}

/// Lines of a stay; for a pair with the side in front, and once when both sides say the same.
template <class Lines>
void both_sides(const CutListBlock& block, std::string_view label, Lines&& lines, TextPage& page) {
  const std::vector<std::string> first = lines(block.pieces.front());
  if (first == lines(block.pieces.back())) {
    fields(label, first, page);
    return;
  }
  std::vector<std::string> all;
  for (const ListedPiece& listed : block.pieces)
    for (const std::string& line : lines(listed))
      all.push_back(fmt::format("{}: {}", name_of(listed.stay->side), line));
  fields(label, all, page);
}

/// "aloft 648.0 + spare 300.0 = 948.0 mm"
std::vector<std::string> bury_lines(const ListedPiece& listed) {
  std::vector<std::string> lines;
  for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower}) {
    const Buried found = buried(*listed.piece, end);
    const Tenths bury = Tenths::of(found.bury);
    const Tenths spare = Tenths::of(found.spare);
    if (spare != Tenths{})
      lines.push_back(fmt::format("{} {} mm + spare {} mm = {} mm", word_of(end), format_tenths(bury),
                                  format_tenths(spare), format_tenths(bury + spare)));
  }
  return lines;
}

std::vector<std::string> in_hand_lines(const ListedPiece& listed) {
  if (!listed.piece->in_hand)
    return {};
  const InHand& there = *listed.piece->in_hand;
  const std::string have = format_tenths(there.stated.value) + " mm";
  if (there.incomplete)
    return {have + "; the cut lacks an input, so nothing is shared out yet"};
  if (listed.draft() && !there.too_short())
    return {have + "; nothing is shared out while it is a DRAFT"};
  if (there.longest_x)
    return {fmt::format("{}; enough while X is no more than {} mm", have, format_tenths(*there.longest_x))};
  if (there.too_short())
    return {fmt::format("{}, TOO SHORT by {} mm", have, format_tenths(-there.over))};
  return {fmt::format("{}{}",
                      there.beyond ? have + " over the least cut"
                                   : have + ", " + format_tenths(there.over) + " mm over the least cut",
                      there.cut_nothing() ? "; CUT NOTHING, all of it goes into the piece"
                                          : "; " + format_tenths(there.cut_away) + " mm is cut away")};
}

std::vector<std::string> route_lines(const Rig& rig, const ListedPiece& listed) {
  // A line with a length of its own does not come from the pins.
  if (listed.sum.sections.front().kind != SumSection::Kind::pin_to_pin)
    return {"the length that the stack states for this line"};
  std::vector<std::string> lines{std::string(route_words(listed.derived->route))};
  for (const RouteComparison& other : listed.derived->other_routes)
    lines.push_back(
        other.expected_x
            ? fmt::format("{} gives {} mm, so X is expected at {} mm; for ordering, not to cut by ({})",
                          route_words(other.other), format_tenths(other.length),
                          format_tenths(*other.expected_x), source_words(other.provenance))
            : fmt::format("{}, not used, gives {} mm; the one used differs by {} mm ({})",
                          route_words(other.other), format_tenths(other.length),
                          format_signed(other.difference), source_words(other.provenance)));
  for (const std::string& missing : say_each(rig, listed.derived->not_corrected))
    lines.push_back("not corrected: " + missing);
  return lines;
}

void print_row(const std::string& name, const std::string& amount, const std::string& known,
               TextPage& page) {
  const std::vector<std::string> names = wrap_text(name, name_width);
  for (std::size_t i = 0; i + 1 < names.size(); ++i)
    page.line("   " + names[i]);
  page.wrapped("   " + name_and_amount(names.back(), amount, name_width, amount_width) + "   ", known);
}

void print_sum(const Rig& rig, const ListedPiece& listed, bool draft, TextPage& page) {
  const PieceSum& sum = listed.sum;
  const std::string x = listed.x();
  if (sum.unknown)
    print_row(x, "", source_words(sum.unknown_source), page);
  for (const SumSection& section : sum.sections) {
    for (const SumRow& row : section.rows)
      print_row(term_name(rig, *row.term), format_signed(row.amount), how_known(rig, *row.term), page);
    const bool is_cut = section.kind == SumSection::Kind::cut;
    std::string name = "= " + std::string(is_cut ? "CUT" : name_of(section.kind));
    if (is_cut && draft) {
      print_row(name, std::string(not_yet),
                section.complete ? "the sum of the rows above; not to be cut to"
                                 : "the rows above are INCOMPLETE",
                page);
      continue;
    }
    if (!section.complete)
      name += " so far, INCOMPLETE";
    print_row(name, format_total(sum.unknown, section.total, x),
              "= " + format_total_feet_inches(sum.unknown, section.total, x), page);
  }
}

void print_sum_heading(std::string_view what, TextPage& page) {
  page.blank();
  page.line("   " + padded(what, name_width) + padded_left("mm", amount_width) + "   how it is known");
  page.line("   " + std::string(name_width, '-') + "  " + std::string(amount_width - 2, '-') + "   " +
            std::string(TextPage::width - 3 - name_width - amount_width - 3, '-'));
}

std::string cut_words(const ListedPiece& listed) {
  if (!listed.may_be_cut())
    return fmt::format("{}, {}; see DRAFT below", not_yet, reasons_counted(listed.draft_reasons));
  return fmt::format("{} mm = {}", format_total(listed.sum.unknown, listed.sum.cut(), listed.x()),
                     format_total_feet_inches(listed.sum.unknown, listed.sum.cut(), listed.x()));
}

void print_identity(const CheckedRig& checked, const CutListBlock& block, TextPage& page) {
  const ListedPiece& first = block.pieces.front();
  if (block.pieces.size() == 1) {
    field("number off", "1: " + first.piece->name, page);
    field("CUT", cut_words(first), page);
    return;
  }
  const ListedPiece& second = block.pieces.back();
  field("number off",
        fmt::format("2 off: {}, {} (equal within the stated {})", first.piece->name, second.piece->name,
                    length_text(checked.rig().boat.pair_tolerance->value)),
        page);
  if (block.same_rows) {
    field("CUT", cut_words(first) + " (each)", page);
    return;
  }
  std::vector<std::string> lines;
  for (const ListedPiece& listed : block.pieces)
    lines.push_back(fmt::format("{}: {}", name_of(listed.stay->side), cut_words(listed)));
  fields("CUT", lines, page);
}

} // namespace

void print_block(const CheckedRig& checked, const CutListBlock& block, int number, TextPage& page) {
  const Rig& rig = checked.rig();
  const ListedPiece& first = block.pieces.front();
  const LineMaterial& line = rig[first.piece->material];
  std::string heading = first.stay->title.empty() ? first.stay->base : first.stay->title;
  if (first.piece->of > 1)
    heading += fmt::format(", piece {} of {} from aloft", first.piece->number, first.piece->of);
  heading += ", ";
  heading += block.pieces.size() == 2 ? "one for each side" : side_words(first.stay->side);

  page.rule('=');
  page.ends(fmt::format("{}.  {}", number, heading), block.draft() ? "DRAFT" : "");
  page.blank();
  print_identity(checked, block, page);
  both_sides(
      block, "state", [](const ListedPiece& listed) { return std::vector<std::string>{listed.state}; },
      page);
  field("line", line_words(line), page);
  field("size", line.size.name, page);
  field("path", path_words(rig, *first.stay), page);
  both_sides(
      block, "length from", [&](const ListedPiece& listed) { return route_lines(rig, listed); }, page);
  field("upper end", end_words(rig, first.piece->upper), page);
  field("lower end", end_words(rig, first.piece->lower), page);
  both_sides(block, "buried", bury_lines, page);
  both_sides(block, "in hand", in_hand_lines, page);
  both_sides(
      block, "take-up", [&](const ListedPiece& listed) { return take_up_lines(rig, *listed.derived); },
      page);
  both_sides(
      block, "DRAFT since",
      [](const ListedPiece& listed) {
        std::vector<std::string> lines;
        for (const DraftReason& reason : listed.draft_reasons)
          lines.push_back(reason.reason);
        return lines;
      },
      page);
  if (block.same_rows) {
    print_sum_heading("the sum", page);
    print_sum(rig, first, block.draft() || !first.complete(), page);
    print_bench(checked, first, false, page);
  } else {
    for (const ListedPiece& listed : block.pieces) {
      print_sum_heading(fmt::format("the sum, {}", name_of(listed.stay->side)), page);
      print_sum(rig, listed, !listed.may_be_cut(), page);
      print_bench(checked, listed, block.pieces.size() > 1, page);
    }
  }
  page.blank();
}

} // namespace sheerpole
