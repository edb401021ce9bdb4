#include "plugins/cut-list/cut_list.hpp"

#include "backend/paper_words.hpp"
#include "wording/length_words.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/chain_words.hpp"
#include "wording/papers/cut_list_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace sheerpole {

namespace {

constexpr std::size_t label_width = 14;
constexpr std::size_t name_width = 38;
constexpr std::size_t amount_width = 13;

std::string_view side_words(Side side) {
  if (side == Side::centre)
    return say(CutListPhrase::on_the_centreline);
  return side == Side::port ? say(CutListPhrase::port_side_left_when_looking)
                            : say(CutListPhrase::starboard_side_right_when_looking);
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
    return say(CutListPhrase::not_given);
  std::string words;
  for (const PathStop& stop : stay.path) {
    words += (words.empty() ? "" : " > ") + rig[stop.point].base;
    if (stop.passage != Passage::end)
      words += stop.passage == Passage::free ? say(CutListPhrase::runs_free) : say(CutListPhrase::clamped);
  }
  return words;
}

std::string end_words(const Rig& rig, const ListedPiece& listed, const PieceEnd& end) {
  if (end.bare())
    return say(CutListPhrase::bare_end);
  std::string words = quoted_title(end.part_name(rig), end.part_title(rig));
  if (end.splice)
    words += say(CutListPhrase::splice, end.splice_name(rig));
  if (listed.may_be_cut() && links_of(rig, listed))
    return words; // its cut says it
  for (const std::string& note : say_each(rig, end.notes))
    words += "; " + note;
  return words;
}

std::string travel_words(Length travel, const TakeUp& adjuster) {
  const std::string turns = format_turns(travel, adjuster.travel_per_turn);
  return format_tenths(travel) + " mm" + (turns.empty() ? "" : say(CutListPhrase::turns, turns));
}

std::vector<std::string> take_up_lines(const Rig& rig, const DerivedStay& stay) {
  std::vector<std::string> lines;
  for (const TakeUp& adjuster : stay.adjusters) {
    lines.push_back(
        say(CutListPhrase::set_to_mm, rig[adjuster.part].name, format_tenths(adjuster.set.value)));
    lines.push_back(say(CutListPhrase::to_tighten_to_slacken, travel_words(adjuster.to_tighten, adjuster),
                        travel_words(adjuster.to_slacken, adjuster)));
    if (!adjuster.engaged)
      continue;
    std::string thread = say(CutListPhrase::thread_engaged_mm_each_stud, format_tenths(*adjuster.engaged));
    if (adjuster.least_engagement)
      thread += say(CutListPhrase::is_mm, least_engagement_words(rig, rig[adjuster.part]),
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
      lines.push_back(say(CutListPhrase::mm_spare_mm_mm, word_of(end), format_tenths(bury),
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
    return {say(CutListPhrase::cut_lacks_input_so_nothing, have)};
  if (listed.draft() && !there.too_short())
    return {say(CutListPhrase::nothing_is_shared_out_while, have)};
  if (there.longest_x)
    return {say(CutListPhrase::enough_while_x_is_no, have, format_tenths(*there.longest_x))};
  if (there.too_short())
    return {say(CutListPhrase::too_short_by_mm, have, format_tenths(-there.over))};
  return {fmt::format("{}{}",
                      there.beyond ? say(CutListPhrase::over_least_cut, have)
                                   : say(CutListPhrase::mm_over_least_cut, have, format_tenths(there.over)),
                      there.cut_nothing()
                          ? say(CutListPhrase::cut_nothing_all_it_goes)
                          : say(CutListPhrase::mm_is_cut_away, format_tenths(there.cut_away)))};
}

std::vector<std::string> route_lines(const Rig& rig, const ListedPiece& listed) {
  // A line with a length of its own does not come from the pins.
  if (listed.sum.sections.front().kind != SumSection::Kind::pin_to_pin)
    return {say(CutListPhrase::length_that_stack_states_for)};
  std::vector<std::string> lines{std::string(route_words(listed.derived->route))};
  for (const RouteComparison& other : listed.derived->other_routes)
    lines.push_back(other.expected_x ? say(CutListPhrase::gives_mm_so_x_is, route_words(other.other),
                                           format_tenths(other.length), format_tenths(*other.expected_x),
                                           source_words(other.provenance))
                                     : say(CutListPhrase::not_used_gives_mm_one, route_words(other.other),
                                           format_tenths(other.length), format_signed(other.difference),
                                           source_words(other.provenance)));
  for (const std::string& missing : say_each(rig, listed.derived->not_corrected))
    lines.push_back(say(CutListPhrase::not_corrected, missing));
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
    std::string name = "= " + std::string(is_cut ? say(CutListPhrase::cut) : name_of(section.kind));
    if (is_cut && draft) {
      print_row(name, not_yet(),
                section.complete ? say(CutListPhrase::sum_rows_above_not_to)
                                 : say(CutListPhrase::rows_above_are_incomplete),
                page);
      continue;
    }
    if (!section.complete)
      name += say(CutListPhrase::so_far_incomplete);
    print_row(name, format_total(sum.unknown, section.total, x),
              "= " + format_total_feet_inches(sum.unknown, section.total, x), page);
  }
}

void print_sum_heading(std::string_view what, TextPage& page) {
  page.blank();
  page.line(say(CutListPhrase::how_it_is_known, padded(what, name_width),
                padded_left(say(CutListPhrase::mm), amount_width)));
  page.line("   " + std::string(name_width, '-') + "  " + std::string(amount_width - 2, '-') + "   " +
            std::string(TextPage::width - 3 - name_width - amount_width - 3, '-'));
}

/// What is cut: of a chain its whole links, with what was worked out behind them.
std::string cut_words(const Rig& rig, const ListedPiece& listed) {
  if (!listed.may_be_cut())
    return listed.draft() || !listed.complete()
               ? say(CutListPhrase::see_draft_below, not_yet(), reasons_counted(listed.draft_reasons))
               : fmt::format("{}: {}; {}", not_yet(), listed.held_by.front().reason,
                             listed.held_by.front().mend);
  const std::string cut =
      say(CutListPhrase::mm_of, format_total(listed.sum.unknown, listed.sum.cut(), listed.x()),
          format_total_feet_inches(listed.sum.unknown, listed.sum.cut(), listed.x()));
  if (rig[listed.piece->material].kind != LineMaterial::Kind::chain)
    return cut;
  const auto links = links_of(rig, listed);
  if (!links)
    return say(ChainPhrase::nearest_whole_link, cut);
  const Tenths whole = Tenths::of(links->length);
  const std::int64_t off = std::abs((whole - listed.sum.cut()).count);
  return links_words(*links, say(CutListPhrase::mm_of, format_tenths(whole),
                                 format_total_feet_inches(false, whole))) +
         "; " +
         links_off_words(rig, *listed.derived, *links, off == 0, format_tenths(Tenths{off}) + " mm", cut);
}

void print_identity(const CheckedRig& checked, const CutListBlock& block, TextPage& page) {
  const Rig& rig = checked.rig();
  const ListedPiece& first = block.pieces.front();
  if (block.pieces.size() == 1) {
    field(say(CutListPhrase::number_off), "1: " + first.piece->name, page);
    field(say(CutListPhrase::cut), cut_words(rig, first), page);
    return;
  }
  const ListedPiece& second = block.pieces.back();
  field(say(CutListPhrase::number_off),
        say(CutListPhrase::off_equal_within_stated, first.piece->name, second.piece->name,
            length_text(checked.rig().boat.pair_tolerance->value)),
        page);
  if (block.same_rows) {
    field(say(CutListPhrase::cut), say(CutListPhrase::each, cut_words(rig, first)), page);
    return;
  }
  std::vector<std::string> lines;
  for (const ListedPiece& listed : block.pieces)
    lines.push_back(fmt::format("{}: {}", name_of(listed.stay->side), cut_words(rig, listed)));
  fields(say(CutListPhrase::cut), lines, page);
}

} // namespace

void print_block(const CheckedRig& checked, const CutListBlock& block, int number, TextPage& page) {
  const Rig& rig = checked.rig();
  const ListedPiece& first = block.pieces.front();
  const LineMaterial& line = rig[first.piece->material];
  std::string heading = titled(checked.rig(), *first.stay);
  if (first.piece->of > 1)
    heading += say(CutListPhrase::piece_from_aloft, first.piece->number, first.piece->of);
  heading += ", ";
  heading +=
      block.pieces.size() == 2 ? say(CutListPhrase::one_for_each_side) : side_words(first.stay->side);

  page.rule('=');
  page.ends(fmt::format("{}.  {}", number, heading), block.draft() ? say(CutListPhrase::draft) : "");
  page.blank();
  print_identity(checked, block, page);
  both_sides(
      block, say(CutListPhrase::state),
      [](const ListedPiece& listed) { return std::vector<std::string>{listed.state}; }, page);
  field(say(CutListPhrase::line), line_words(line), page);
  field(say(CutListPhrase::size), line.size.name, page);
  field(say(CutListPhrase::path), path_words(rig, *first.stay), page);
  both_sides(
      block, say(CutListPhrase::length_from),
      [&](const ListedPiece& listed) { return route_lines(rig, listed); }, page);
  field(say(CutListPhrase::upper_end), end_words(rig, first, first.piece->upper), page);
  field(say(CutListPhrase::lower_end), end_words(rig, first, first.piece->lower), page);
  both_sides(block, say(CutListPhrase::buried), bury_lines, page);
  both_sides(block, say(CutListPhrase::in_hand), in_hand_lines, page);
  both_sides(
      block, say(CutListPhrase::take_up),
      [&](const ListedPiece& listed) { return take_up_lines(rig, *listed.derived); }, page);
  both_sides(
      block, say(CutListPhrase::draft_since),
      [](const ListedPiece& listed) {
        std::vector<std::string> lines;
        for (const DraftReason& reason : listed.draft_reasons)
          lines.push_back(reason.reason);
        return lines;
      },
      page);
  if (block.same_rows) {
    print_sum_heading(say(CutListPhrase::the_sum), page);
    print_sum(rig, first, !block.may_be_cut(), page);
    print_bench(checked, first, false, page);
  } else {
    for (const ListedPiece& listed : block.pieces) {
      print_sum_heading(say(CutListPhrase::the_sum_of, name_of(listed.stay->side)), page);
      print_sum(rig, listed, !listed.may_be_cut(), page);
      print_bench(checked, listed, block.pieces.size() > 1, page);
    }
  }
  page.blank();
}

} // namespace sheerpole
