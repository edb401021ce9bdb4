#include "plugins/cut-list/bench_text.hpp"

#include "backend/trials.hpp"

namespace sheerpole {

namespace {

constexpr std::size_t name_width = 38;
constexpr std::size_t amount_width = 15;

std::string place(const MarkPlace& mark) {
  return format_total(mark.unknown, Tenths::of(mark.known));
}

void print_marks(const BenchMarks& bench, bool incomplete, TextPage& page) {
  if (bench.marks.size() <= 2 && bench.not_known.empty())
    return; // a bare piece has its two ends and nothing to mark
  page.line("   " + padded("marks", name_width) + padded_left("from aloft mm", amount_width) +
            padded_left("from below mm", amount_width));
  for (const BenchMark& mark : bench.marks)
    page.line("   " + padded(mark.name, name_width) + padded_left(place(mark.from_aloft), amount_width) +
              padded_left(place(mark.from_below), amount_width));
  if (incomplete)
    page.wrapped("   ", "The marks stand for the cut so far; it is incomplete.");
  for (const std::string& unknown : bench.not_known)
    page.wrapped("   no mark: ", unknown);
}

/// The cut in three numbers that can be added up by hand.
void print_hand_check(const ListedPiece& listed, TextPage& page) {
  Tenths line;
  bool any = false;
  for (const SumRow& row : listed.sum.section("cut").rows)
    if (row.term->of_standing_part) {
      line += row.amount;
      any = true;
    }
  const Tenths ends = listed.sum.cut() - listed.sum.body() - line;
  std::string words = "body " + format_total(listed.sum.unknown, listed.sum.body());
  if (any)
    words += ", the line " + format_signed(line);
  words += ", the ends " + format_signed(ends) + ": " + format_total(listed.sum.unknown, listed.sum.cut());
  page.wrapped("   by hand    ", words);
}

} // namespace

void print_bench(const CheckedRig& checked, const ListedPiece& listed, bool of_several, TextPage& page) {
  const Piece& piece = *listed.piece;
  page.blank();
  if (of_several)
    page.line("   " + piece.name);
  print_marks(piece.bench, !listed.complete(), page);
  if (piece.bench.dry_fit)
    page.wrapped("   dry fit    ", place(*piece.bench.dry_fit) +
                                       " mm bearing to bearing, both ends formed and nothing buried");
  print_hand_check(listed, page);
  if (const auto& found = listed.derived->uncertainty;
      found && !listed.stay->stack.empty() && piece.of == 1) {
    page.wrapped("   known to   ", "+-" + format_tenths(Tenths::of(found->expanded)) +
                                       " mm (95 %, law of propagation); at worst " +
                                       format_signed(Tenths::of(found->worst_low)) + " to " +
                                       format_signed(Tenths::of(found->worst_high)) +
                                       " mm; the proof sheet says of what");
    if (found->reaches)
      page.wrapped("              ", "the adjuster reaches in " +
                                         trials_words(*found->reaches, checked.derived().draws) +
                                         ", before creep and cold");
  }
  for (const std::string& left_out : piece.not_counted)
    page.wrapped("   not in it  ", left_out);
}

} // namespace sheerpole
