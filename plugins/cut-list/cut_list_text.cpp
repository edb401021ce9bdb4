#include "backend/accuracy_words.hpp"
#include "backend/card/card_piece.hpp"
#include "backend/page/paper_files.hpp"
#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "backend/text_page.hpp"
#include "plugins/cut-list/cut_list.hpp"
#include "wording/length_words.hpp"
#include "wording/papers/chain_words.hpp"
#include "wording/papers/cut_list_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t mark_width = 38;
constexpr std::size_t place_width = 15;

std::string place(const PrintedPlace& printed) {
  return format_total(printed.unknown, printed.tenths);
}

void print_marks(const Rig& rig, const ListedPiece& listed, TextPage& page) {
  const BenchMarks& bench = listed.piece->bench;
  if (bench.marks.size() <= 2 && bench.not_known.empty())
    return; // a bare piece has its two ends and nothing to mark
  page.line("   " +
            padded(listed.sum.unknown ? say(CutListPhrase::marks_where_x_is) : say(CutListPhrase::marks),
                   mark_width) +
            padded_left(say(CutListPhrase::from_aloft_mm), place_width) +
            padded_left(say(CutListPhrase::from_below_mm), place_width));
  if (listed.sum.unknown) // two columns of its whole name would be too wide
    page.line("   " + listed.x());
  for (const BenchMark& mark : bench.marks) {
    const PrintedMark printed = printed_mark(mark, listed.sum.cut());
    page.line("   " + padded(mark_name(mark), mark_width) +
              padded_left(place(printed.from_upper), place_width) +
              padded_left(place(printed.from_lower), place_width));
  }
  for (const std::string& unknown : say_each(rig, bench.not_known))
    page.wrapped(say(CutListPhrase::no_mark), unknown);
}

void print_check_row(std::string_view name, const std::string& amount, TextPage& page) {
  page.line("   " + name_and_amount(name, amount, mark_width, place_width));
}

/// The cut in three numbers that can be added up by hand.
void print_hand_check(const ListedPiece& listed, TextPage& page) {
  const PieceSum& sum = listed.sum;
  Tenths line;
  bool any = false;
  for (const SumRow& row : sum.section(SumSection::Kind::cut).rows)
    if (row.term->of_standing_part()) {
      line += row.amount;
      any = true;
    }
  page.line(say(CutListPhrase::by_hand));
  print_check_row(say(CutListPhrase::body), format_total(sum.unknown, sum.body(), listed.x()), page);
  print_check_row(say(CutListPhrase::what_ends_use), format_signed(sum.cut() - sum.body() - line), page);
  if (any)
    print_check_row(say(CutListPhrase::what_line_does), format_signed(line), page);
  print_check_row(say(CutListPhrase::cut_capitals), format_total(sum.unknown, sum.cut(), listed.x()), page);
}

/// What has no tolerance is not in the range, so that comes first: a stay of which little is stated would
/// look the best known of all.
void print_range(const CheckedRig& checked, const Uncertainty& found, TextPage& page) {
  const std::string range =
      say(CutListPhrase::to_mm_of_draws_at_worst, range_words(found.drawn_low, found.drawn_high),
          range_words(found.worst_low, found.worst_high));
  const std::string open =
      without_tolerance(found, [&](const Remark& what) { return say(checked.rig(), what); });
  if (open.empty())
    page.wrapped(say(CutListPhrase::known_to), range);
  else
    page.wrapped(say(CutListPhrase::accuracy), say(CutListPhrase::unknown_no_tolerance_for, open, range));
  if (found.reaches)
    page.wrapped("              ", say(CutListPhrase::adjuster_reaches_in_before_creep,
                                       trials_words(*found.reaches, checked.derived().draws)));
}

void print_draft(const CheckedRig& checked, TextPage& page) {
  if (checked.draft_reasons().empty())
    return;
  page.rule('*');
  page.line(say(CutListPhrase::draft_nothing_that_waits_here, reasons_counted(checked.draft_reasons())));
  for (const Awaited& one : awaited(checked.draft_reasons())) {
    page.wrapped("  * ", one.reason);
    page.wrapped(say(CutListPhrase::holds_back), joined(one.pieces, ", "));
    if (!one.mend.empty())
      page.wrapped(say(CutListPhrase::to_do), one.mend);
  }
  page.rule('*');
  page.blank();
}

void print_cautions(TextPage& page) {
  page.line(say(CutListPhrase::before_you_begin));
  for (const std::string_view caution :
       {say(CutListPhrase::these_lengths_follow_from_rig), say(CutListPhrase::work_aloft_and_work_on),
        say(CutListPhrase::replace_one_stay_at_time), say(CutListPhrase::dry_fit_every_piece_on),
        say(CutListPhrase::local_codes_and_licensed_professional)})
    page.wrapped("  - ", caution);
  page.blank();
}

bool any_x(const std::vector<CutListBlock>& blocks) {
  return std::any_of(blocks.begin(), blocks.end(),
                     [](const CutListBlock& block) { return block.pieces.front().sum.unknown; });
}

void print_rules(const std::vector<CutListBlock>& blocks, TextPage& page) {
  page.line(say(CutListPhrase::how_to_read_it));
  page.wrapped("  - ", say(CutListPhrase::pin_to_pin_runs_from));
  page.wrapped("  - ", say(CutListPhrase::each_row_is_rounded_to));
  if (any_x(blocks))
    page.wrapped("  - ", say(CutListPhrase::x_stay_is_length_that));
  page.blank();
}

void print_summary_row(const Rig& rig, int number, std::string_view off, const ListedPiece& listed,
                       const std::string& names, bool draft, TextPage& page) {
  const LineMaterial& line = rig[listed.piece->material];
  const PieceSum& sum = listed.sum;
  // A summary is what is carried to the spool: no number of a draft stands in it.
  const bool shown = listed.may_be_cut();
  std::string what = fmt::format("{}; {}, {}", names, line.name, kept_together(line.size.name));
  if (const auto links = shown ? links_of(rig, listed) : std::nullopt)
    what += "; " + kept_together(links_words(*links, format_tenths(Tenths::of(links->length)) + " mm"));
  if (shown && sum.unknown) {
    // With the name of its X a length takes the place of both columns, one below the other.
    const std::string begin = padded_left(std::to_string(number), 3) + padded_left(off, 8) + "  ";
    page.line(begin + format_total(true, sum.cut(), listed.x()) + " mm");
    page.wrapped(std::string(begin.size(), ' ') +
                     padded(format_total_feet_inches(true, sum.cut(), listed.x()), 41),
                 what);
    return;
  }
  page.wrapped(padded_left(std::to_string(number), 3) + padded_left(off, 8) +
                   padded_left(shown ? format_total(sum.unknown, sum.cut()) : not_yet(), 14) + "  " +
                   padded(shown ? format_total_feet_inches(sum.unknown, sum.cut()) : "", 20) +
                   padded(draft ? say(CutListPhrase::draft) : "", 7),
               what);
}

void print_summary(const CheckedRig& checked, const std::vector<CutListBlock>& blocks, TextPage& page) {
  page.line(say(CutListPhrase::summary));
  page.line(say(CutListPhrase::no_off_cut_mm_cut));
  page.line("---  ------  ------------  ------------------  -----  " + std::string(46, '-'));
  int number = 0;
  for (const CutListBlock& block : blocks) {
    ++number;
    if (block.pieces.size() == 2 && block.same_rows) {
      print_summary_row(checked.rig(), number, "2", block.pieces.front(),
                        block.pieces[0].piece->name + ", " + block.pieces[1].piece->name, block.draft(),
                        page);
      continue;
    }
    for (const ListedPiece& listed : block.pieces)
      print_summary_row(checked.rig(), number, block.pieces.size() == 2 ? say(CutListPhrase::of) : "1",
                        listed, listed.piece->name, listed.draft(), page);
  }
  page.blank();
}

void print_totals(const CheckedRig& checked, const std::vector<CutListBlock>& blocks, TextPage& page) {
  page.rule('=');
  page.line(say(CutListPhrase::lines_before_spare));
  for (const LineTotal& total : line_totals(checked, blocks)) {
    const std::string line = fmt::format("{} {}, {}", name_of(total.line->kind), total.line->name,
                                         kept_together(total.line->size.name));
    if (total.pieces > 0 && total.held > 0) // some of it is not to be cut to, so all is to order by
      page.wrapped(fmt::format("  {}     ", padded_left(about_metres(total.length.length()), 14)),
                   say(CutListPhrase::them_draft_to_order_by, line, total.pieces,
                       total.pieces == 1 ? say(CutListPhrase::piece) : say(CutListPhrase::pieces),
                       total.held, total.held == total.drafts ? say(CutListPhrase::draft) : not_yet()));
    else if (total.pieces == 0)
      page.wrapped(std::string(18, ' '), say(CutListPhrase::no_piece_known_length, line));
    else
      page.wrapped(fmt::format("  {}  ", padded_left(format_tenths(total.length) + " mm", 14)),
                   fmt::format("{} m, {}: {}, {} {}", format_fixed(total.length.length().metres(), 2),
                               format_feet_inches(total.length.length()), line, total.pieces,
                               total.pieces == 1 ? say(CutListPhrase::piece) : say(CutListPhrase::pieces)));
    for (const ListedPiece* listed : total.not_summed)
      page.wrapped("                  ",
                   say(CutListPhrase::not_in_it_whose_length, listed->piece->name,
                       listed->sum.unknown ? listed->x() : say(CutListPhrase::incomplete)));
  }
  page.wrapped("  ", say(CutListPhrase::each_is_sum_printed_cut));
}

} // namespace

void print_bench(const CheckedRig& checked, const ListedPiece& listed, bool of_several, TextPage& page) {
  const Piece& piece = *listed.piece;
  page.blank();
  if (of_several)
    page.line("   " + piece.name);
  // Marks are what a knife goes by: there are none while the piece is a draft.
  if (!listed.may_be_cut())
    page.wrapped(say(CutListPhrase::marks_behind), listed.draft() || !listed.complete()
                                                       ? say(CutListPhrase::none_while_it_is_draft)
                                                       : say(CutListPhrase::none_until_it_is_settled));
  else
    print_marks(checked.rig(), listed, page);
  if (piece.bench.dry_fit && listed.may_be_cut()) {
    const bool spliced = piece.upper.splice || piece.lower.splice;
    const bool chain = checked.rig()[piece.material].kind == LineMaterial::Kind::chain;
    page.wrapped(
        say(CutListPhrase::dry_fit),
        say(mouth_to_mouth(piece) ? CutListPhrase::mm_mouth_to_mouth : CutListPhrase::mm_bearing_to_bearing,
            format_total(piece.bench.dry_fit->unknown, printed_dry_fit(listed.sum), listed.x()),
            (spliced ? say(CutListPhrase::eyes_formed_and_nothing_buried)
             : chain ? say(ChainPhrase::nothing_cut)
                     : say(CutListPhrase::ends_laid_beside_line_at))));
  }
  if (listed.may_be_cut())
    print_hand_check(listed, page);
  if (const Uncertainty* found = range_of(listed))
    print_range(checked, *found, page);
  else if (listed.may_be_cut() && !has_own_length(listed))
    page.wrapped(say(CutListPhrase::accuracy), say(CutListPhrase::unknown_no_tolerances));
  if (piece.not_counted.empty())
    return;
  page.wrapped(say(CutListPhrase::not_in_it),
               joined(say_each(checked.rig(), piece.not_counted), Join::semicolon));
}

std::string cut_list_text(const CheckedRig& checked, const std::vector<CutListBlock>& blocks) {
  TextPage page;
  begin_text(say(CutListPhrase::cut_list_capitals), checked, page);
  print_draft(checked, page);
  print_cautions(page);
  if (blocks.empty()) {
    page.line(say(CutListPhrase::there_is_nothing_to_cut));
    return page.text();
  }
  print_rules(blocks, page);
  print_summary(checked, blocks, page);
  int number = 0;
  for (const CutListBlock& block : blocks)
    print_block(checked, block, ++number, page);
  print_totals(checked, blocks, page);
  return page.text();
}

} // namespace sheerpole
