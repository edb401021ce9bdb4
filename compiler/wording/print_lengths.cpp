#include "wording/print_phases.hpp"

#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/length_words.hpp"
#include "wording/model_words.hpp"
#include "wording/say.hpp"

#include <fmt/format.h>

#include <iterator>
#include <string_view>

namespace sheerpole {

namespace {

class Printer {
public:
  explicit Printer(const Rig& rig) : rig_(rig) {}

  void stay(const DerivedStay& stay) {
    line(0, fmt::format("stay {}, pin-to-pin by {}", rig_[stay.stay].name, name_of(stay.route)));
    sum(1, stay.pin_to_pin);
    for (const RouteComparison& other : stay.other_routes)
      if (other.expected_x)
        line(2, fmt::format("by {}: {}, so X is expected at {}", name_of(other.other),
                            length_text(other.length), length_text(*other.expected_x)));
      else
        line(2, fmt::format("by {}: {}, the way taken is {} off", name_of(other.other),
                            length_text(other.length), length_text(other.difference)));
    sum(1, stay.body);
    for (const Piece& one : stay.pieces)
      piece(one);
    for (const TakeUp& one : stay.adjusters)
      adjuster(one);
  }

  std::string text() && { return std::move(text_); }

private:
  void piece(const Piece& piece) {
    line(1, fmt::format("piece {} of {}", piece.name, rig_[piece.material].name));
    if (piece.of > 1)
      sum(2, piece.body);
    sum(2, piece.cut);
    end("above", piece.upper);
    end("below", piece.lower);
    for (const MissingInput& input : piece.missing)
      line(2, "missing: " + say(rig_, input.what) + "; " + say(rig_, input.mend));
    for (const MissingInput& input : piece.blocked)
      line(2, "blocked: " + say(rig_, input.what) + "; " + say(rig_, input.mend));
  }

  void end(std::string_view where, const PieceEnd& end) {
    if (end.bare())
      return;
    std::string text = fmt::format("end {}: {}", where, end.part_name(rig_));
    if (end.splice)
      text += ", splice " + end.splice_name(rig_);
    for (const std::string& note : say_each(rig_, end.notes))
      text += "; " + note;
    line(2, text);
  }

  void adjuster(const TakeUp& adjuster) {
    std::string text = fmt::format("adjuster {} set to {}: {} to tighten, {} to slacken",
                                   rig_[adjuster.part].name, length_text(adjuster.set.value),
                                   length_text(adjuster.to_tighten), length_text(adjuster.to_slacken));
    if (adjuster.travel_per_turn)
      text += fmt::format("; {} a turn, {} and {} turns", length_text(*adjuster.travel_per_turn),
                          format_fixed(turns(adjuster.to_tighten, *adjuster.travel_per_turn), 1),
                          format_fixed(turns(adjuster.to_slacken, *adjuster.travel_per_turn), 1));
    if (adjuster.engaged)
      text += fmt::format("; {} of thread engaged, at least {}", length_text(*adjuster.engaged),
                          length_text(*adjuster.least_engagement));
    line(1, text);
  }

  void sum(int depth, const LengthSum& sum) {
    line(depth, std::string(sheerpole::name_of(sum.kind)) + " = " + sum_text(rig_, sum));
    for (const Term& term : sum.terms) {
      std::string text =
          fmt::format("{:>12}  {}", format_millimetres(term.amount, 2), term_name(rig_, term));
      if (!term.how.empty())
        text += " = " + say(rig_, term.how);
      text += fmt::format("  [{}", sheerpole::name_of(term.provenance.source_class));
      if (const std::string note = note_words(term.provenance); !note.empty())
        text += ": " + note;
      for (const std::string& assumption : term.provenance.assumptions)
        text += ", rests on " + assumption;
      line(depth + 1, text + "]");
    }
    if (sum.unknown)
      line(depth + 1, fmt::format("{:>12}  {}", "X", note_words(sum.unknown_source)));
  }

  void line(int depth, std::string_view text) {
    fmt::format_to(std::back_inserter(text_), "{:{}}{}\n", "", depth * 2, text);
  }

  const Rig& rig_;
  std::string text_;
};

} // namespace

std::string print_derived(const Rig& rig, const Derived& derived) {
  Printer printer(rig);
  for (const DerivedStay& stay : derived.stays)
    printer.stay(stay);
  return std::move(printer).text();
}

} // namespace sheerpole
