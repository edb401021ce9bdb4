#include "plugins/cut-list/bench_text.hpp"

#include "backend/printed_mark.hpp"
#include "backend/trials.hpp"

namespace sheerpole {

namespace {

constexpr std::size_t mark_width = 38;
constexpr std::size_t place_width = 15;

std::string place(const PrintedPlace& printed) {
  return format_total(printed.unknown, printed.tenths);
}

void print_marks(const BenchMarks& bench, Tenths cut, bool incomplete, TextPage& page) {
  if (bench.marks.size() <= 2 && bench.not_known.empty())
    return; // a bare piece has its two ends and nothing to mark
  page.line("   " + padded("marks", mark_width) + padded_left("from aloft mm", place_width) +
            padded_left("from below mm", place_width));
  for (const BenchMark& mark : bench.marks) {
    const PrintedMark printed = printed_mark(mark, cut);
    page.line("   " + padded(mark.name, mark_width) + padded_left(place(printed.from_upper), place_width) +
              padded_left(place(printed.from_lower), place_width));
  }
  if (incomplete)
    page.wrapped("   ", "The marks stand for the cut so far; it is incomplete.");
  for (const std::string& unknown : bench.not_known)
    page.wrapped("   no mark: ", unknown);
}

void print_check_row(std::string_view name, const std::string& amount, TextPage& page) {
  page.line("   " + padded(name, mark_width) + padded_left(amount, place_width));
}

/// The cut in three numbers that can be added up by hand.
void print_hand_check(const PieceSum& sum, TextPage& page) {
  Tenths line;
  bool any = false;
  for (const SumRow& row : sum.section("cut").rows)
    if (row.term->of_standing_part) {
      line += row.amount;
      any = true;
    }
  page.line("   by hand");
  print_check_row("body", format_total(sum.unknown, sum.body()), page);
  print_check_row("what the ends use", format_signed(sum.cut() - sum.body() - line), page);
  if (any)
    print_check_row("what the line does", format_signed(line), page);
  print_check_row(sum.cut_complete && sum.body_complete ? "= CUT" : "= CUT so far, INCOMPLETE",
                  format_total(sum.unknown, sum.cut()), page);
}

void print_range(const Derived& derived, const Uncertainty& found, TextPage& page) {
  page.wrapped("   known to   ",
               "+-" + format_tenths(Tenths::of(found.expanded)) + " mm (95 %, law of propagation), " +
                   format_signed(Tenths::of(found.drawn_low)) + " to " +
                   format_signed(Tenths::of(found.drawn_high)) + " mm (95 % of the draws), at worst " +
                   format_signed(Tenths::of(found.worst_low)) + " to " +
                   format_signed(Tenths::of(found.worst_high)) + " mm; the proof sheet says of what");
  if (found.reaches)
    page.wrapped("              ", "the adjuster reaches in " +
                                       trials_words(*found.reaches, derived.draws) +
                                       ", before creep and cold");
}

} // namespace

void print_bench(const CheckedRig& checked, const ListedPiece& listed, bool of_several, TextPage& page) {
  const Piece& piece = *listed.piece;
  page.blank();
  if (of_several)
    page.line("   " + piece.name);
  print_marks(piece.bench, listed.sum.cut(), !listed.complete(), page);
  if (piece.bench.dry_fit) {
    const bool spliced = !piece.upper.splice.empty() || !piece.lower.splice.empty();
    page.wrapped(
        "   dry fit    ",
        format_total(piece.bench.dry_fit->unknown, Tenths::of(piece.bench.dry_fit->known)) +
            " mm bearing to bearing, " +
            (spliced ? "eyes formed and nothing buried" : "the ends laid beside the line at their marks"));
  }
  print_hand_check(listed.sum, page);
  if (const Uncertainty* found = range_of(listed))
    print_range(checked.derived(), *found, page);
  if (piece.not_counted.empty())
    return;
  std::string left_out;
  for (const std::string& words : piece.not_counted)
    left_out += (left_out.empty() ? "" : "; ") + words;
  page.wrapped("   not in it  ", left_out);
}

} // namespace sheerpole
