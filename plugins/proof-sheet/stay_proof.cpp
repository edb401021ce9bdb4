#include "plugins/proof-sheet/stay_proof.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t name_width = 34;
constexpr std::size_t amount_width = 12;

void row(const std::string& name, const std::string& amount, const std::string& text, TextPage& page) {
  const std::vector<std::string> names = wrap_text(name, name_width - 1);
  for (std::size_t i = 0; i + 1 < names.size(); ++i)
    page.line("  " + names[i]);
  page.wrapped("  " + padded(names.empty() ? "" : names.back(), name_width) +
                   padded_left(amount, amount_width) + "   ",
               text);
}

void heading(std::string_view text, TextPage& page) {
  page.blank();
  page.line(text);
}

std::string known(const CheckedRig& checked, const Term& term) {
  std::string words = term.how;
  Provenance provenance = term.provenance;
  if (!provenance.written.empty() && words.find(provenance.written) != std::string::npos)
    provenance.written.clear();
  const std::string source = source_words(provenance);
  words += (words.empty() ? "" : "; ") + source;
  const std::string place = place_words(checked, term.provenance.place);
  return place.empty() ? words : words + "; " + place;
}

void print_rows(const CheckedRig& checked, const std::vector<SumRow>& rows, TextPage& page) {
  for (const SumRow& one : rows)
    row(one.term->name, format_signed(one.amount), known(checked, *one.term), page);
}

/// The ways to the pin-to-pin length side by side, and what is not in the one that was used.
void print_ways(const DerivedStay& stay, TextPage& page) {
  const LengthSum& pins = stay.pin_to_pin;
  heading("The ways to pin-to-pin", page);
  const Tenths used = printed_total(pins);
  row((stay.route == LengthRoute::unknown ? "" : "by ") + std::string(route_words(stay.route)),
      format_total(pins.unknown, used), stay.other_routes.empty() ? "used; there is no other" : "used",
      page);
  for (const RouteComparison& other : stay.other_routes) {
    const Tenths length = Tenths::of(other.length);
    row("by " + std::string(route_words(other.other)), format_tenths(length),
        "not used; the one used differs by " + format_signed(used - length) + " mm; " +
            source_words(other.provenance),
        page);
    for (const LikelySlip& slip : other.slips)
      row("  likely slip", "",
          slip.words + ": explains it to " + format_tenths(Tenths::of(slip.unexplained)) + " mm", page);
  }
  for (const std::string& missing : stay.not_corrected)
    row("  not corrected", "", missing, page);
}

void print_piece(const CheckedRig& checked, const DerivedStay& stay, const Piece& piece, TextPage& page) {
  const PieceSum sum = piece_sum(checked.rig(), stay, piece);
  heading("The sum" + (piece.of > 1 ? ", " + piece.name : std::string()), page);
  if (sum.unknown)
    row("X", "X", source_words(sum.unknown_source), page);
  for (const SumSection& section : sum.sections) {
    print_rows(checked, section.rows, page);
    const bool cut = section.name == "cut";
    const bool complete = section.name == "pin-to-pin" || (sum.body_complete && (!cut || sum.cut_complete));
    row("= " + (cut ? std::string("CUT") : section.name), format_total(sum.unknown, section.total),
        "= " + format_total_feet_inches(sum.unknown, section.total) + (complete ? "" : ", INCOMPLETE"),
        page);
  }
  for (const MissingInput& missing : piece.missing)
    row("missing", "", missing.what + ": " + missing.mend, page);
  for (const std::string& left_out : piece.not_counted)
    row("not counted", "", left_out, page);
}

void print_tensions(const DerivedStay& stay, TextPage& page) {
  if (stay.tensions.empty() && !stay.sag)
    return;
  heading("Tension", page);
  for (const TensionEstimate& estimate : stay.tensions) {
    const std::string who =
        estimate.by + (estimate.by.empty() || estimate.date.empty() ? "" : ", ") + estimate.date;
    if (!estimate.tension) {
      row("by a " + estimate.method, "not checked", estimate.not_checked, page);
      continue;
    }
    std::string words = estimate.how;
    if (estimate.share_of_break)
      words += "; " + format_fixed(*estimate.share_of_break * 100.0, 1) + " % of the break load";
    row("by a " + estimate.method, format_fixed(estimate.tension->kilonewtons(), 2) + " kN",
        words + (who.empty() ? "" : "; " + who), page);
  }
  if (stay.sag) {
    const std::string extra = format_fixed(stay.sag->extra_length.millimetres(), 2);
    row("sag of the longest run", format_fixed(stay.sag->depth.millimetres(), 2) + " mm",
        "over " + format_tenths(Tenths::of(stay.sag->span)) + " mm at " +
            format_fixed(stay.sag->tension.kilonewtons(), 2) + " kN; the line is " +
            (extra == "0.00" ? "less than 0.01" : extra) + " mm longer than its chord",
        page);
  }
}

void print_replacement(const CheckedRig& checked, const DerivedStay& stay, TextPage& page) {
  if (!stay.replacement)
    return;
  const Replacement& found = *stay.replacement;
  const Rig& rig = checked.rig();
  heading(rig[rig[stay.stay].material].name + " in place of " + rig[found.old_line].name, page);
  const auto times = [&](const char* what, const std::optional<double>& ratio) {
    if (ratio)
      row(what, format_fixed(*ratio, 2), "times that of the old line", page);
  };
  times("stiffness", found.stiffness);
  times("break load", found.strength);
  times("mass", found.mass);
  if (found.new_kilograms && found.old_kilograms)
    row("mass of the stay", format_fixed(*found.new_kilograms, 2) + " kg",
        "was " + format_fixed(*found.old_kilograms, 2) + " kg" +
            (found.centre_height ? ", its middle " + format_fixed(found.centre_height->metres(), 2) +
                                       " m above the lowest point of the path"
                                 : ""),
        page);
  for (const std::string& missing : found.not_checked)
    row("not checked", "", missing, page);
}

} // namespace

std::string place_words(const CheckedRig& checked, const std::optional<Span>& place) {
  if (!place)
    return {};
  const SourceText& text = checked.sources()[place->source];
  return text.name() + ":" + std::to_string(text.position(place->begin).line);
}

void print_stay_proof(const CheckedRig& checked, const DerivedStay& stay, TextPage& page) {
  const Stay& stated = checked.rig()[stay.stay];
  page.rule('=');
  bool draft = false;
  for (const Piece& piece : stay.pieces)
    draft = draft || !checked.draft_reasons(piece).empty();
  page.ends(stated.name + (stated.title.empty() ? "" : "   " + stated.title), draft ? "DRAFT" : "");
  print_ways(stay, page);
  for (const Piece& piece : stay.pieces)
    print_piece(checked, stay, piece, page);
  print_uncertainty(checked, stay, page);
  print_tensions(stay, page);
  print_replacement(checked, stay, page);
  page.blank();
}

} // namespace sheerpole
