#include "plugins/proof-sheet/proof_sheet.hpp"
#include "wording/phrase_table.hpp"
#include "wording/say.hpp"

#include "backend/page/paper_files.hpp"
#include "backend/paper_words.hpp"
#include "model/fact_name.hpp"
#include "wording/length_words.hpp"
#include "wording/say.hpp"
#include "wording/state_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t bound_name_width = 29;
constexpr std::size_t bound_width = 10;
constexpr std::size_t shown_shares = 5;

void range_row(std::string_view name, Length low, Length high, const std::string& how, TextPage& page) {
  page.wrapped("  " + padded(name, bound_name_width) + padded_left(format_signed(low), bound_width) +
                   padded_left(format_signed(high), bound_width) + "   ",
               how);
}

std::string propagation_words(const Uncertainty& found) {
  std::string words = format_fixed(found.coverage_factor, 2) + " times a standard uncertainty of " +
                      format_fixed(found.standard.millimetres(), 2) + " mm";
  if (found.freedom > 0.0) {
    const std::string freedom = format_fixed(found.freedom, 0);
    words += ", " + freedom + (freedom == "1" ? " degree" : " degrees") + " of freedom";
  }
  return words + "; JCGM 100:2008";
}

void print_shares(const CheckedRig& checked, const Uncertainty& found, TextPage& page) {
  const Derived& derived = checked.derived();
  page.blank();
  page.line("What to measure next: the inputs by their share of the doubt");
  const std::size_t shown = std::min(found.shares.size(), shown_shares);
  for (std::size_t i = 0; i < shown; ++i) {
    const UncertaintyShare& share = found.shares[i];
    const UncertainInput& input = derived.inputs[share.input];
    page.wrapped("  " + padded_left(std::to_string(i + 1) + ".", 3) + " " +
                     padded_left(variance_words(share.share), 11) + "   ",
                 say(checked.rig(), input.name) + ", which moves it by " + format_signed(share.per_bound) +
                     (input.distribution == Distribution::student ? " mm by the scatter of its mean"
                                                                  : " mm at its bound") +
                     " (" + std::string(words(input.distribution)) + ")" +
                     led_by("; ", place_words(checked, input.place)));
  }
  if (shown < found.shares.size())
    page.line("      and " + std::to_string(found.shares.size() - shown) + " more of smaller share");
  if (found.without_bound.empty())
    return;
  page.blank();
  page.line("No bound is stated for these; the ranges above take them as exact");
  page.wrapped("  ", joined(say_each(checked.rig(), found.without_bound), "; "));
}

constexpr std::size_t name_width = 34;
constexpr std::size_t amount_width = 12;

void row(const std::string& name, const std::string& amount, const std::string& text, TextPage& page) {
  const std::vector<std::string> names = wrap_text(name, name_width - 1);
  for (std::size_t i = 0; i + 1 < names.size(); ++i)
    page.line("  " + names[i]);
  page.wrapped("  " + name_and_amount(names.empty() ? "" : names.back(), amount, name_width, amount_width) +
                   "   ",
               text);
}

void heading(std::string_view text, TextPage& page) {
  page.blank();
  page.line(text);
}

std::string known(const CheckedRig& checked, const Term& term) {
  std::string words = how_known(checked.rig(), term);
  add_words(words, "; ", place_words(checked, term.provenance.place));
  return words;
}

void print_rows(const CheckedRig& checked, const std::vector<SumRow>& rows, TextPage& page) {
  for (const SumRow& one : rows)
    row(term_name(checked.rig(), *one.term), format_signed(one.amount), known(checked, *one.term), page);
}

/// Why the way that makes the length does.
std::string why_used(const Rig& rig, const DerivedStay& stay) {
  if (!stay.readings.taken)
    return stay.other_routes.empty() ? "used; there is no other"
                                     : "used: there is no reading; what is stated counts before the points";
  const Stay& stated = rig[stay.stay];
  const Reading& reading = stated.readings[*stay.readings.taken];
  std::string words = "used: " + reading_name(reading);
  if (stay.readings.contradiction() != nullptr)
    return words + "; NOT SETTLED, see the reading that is as good";
  if (stay.readings.others.empty())
    words += stay.other_routes.empty() ? "; there is no other"
                                       : "; what was read in place counts before what is stated or drawn";
  else if (reading.counts)
    words += "; stated to be the one that counts";
  else
    words += reading.date.empty() ? "; as good as any other" : "; the latest date counts";
  return words;
}

/// How a way that is not used stands to the one that is.
std::string against_used(const RouteComparison& other, Tenths used) {
  if (other.expected_x)
    return "not used; X is expected at " + format_tenths(*other.expected_x) +
           " mm, for ordering and never for the cut; ";
  return "not used; the one used differs by " + format_signed(used - Tenths::of(other.length)) + " mm; ";
}

/// Readings that are not used, each with the reason.
void print_passed_over(const Rig& rig, const DerivedStay& stay, TextPage& page) {
  for (const OtherReading& other : stay.readings.others) {
    const Reading& reading = rig[stay.stay].readings[other.reading];
    std::string words = reading_name(reading) + ": " + passed_over_words(rig, stay, other);
    if (other.apart && other.why == PassedOver::contradicts)
      words += "; they differ by " + format_tenths(magnitude(*other.apart)) + " mm where " +
               format_tenths(other.allowed) + " mm is allowed";
    row("  a reading not used", reading.is_mark_alone() ? "X" : "", words, page);
  }
}

/// The ways to the pin-to-pin length side by side, and what is not in the one that was used.
void print_ways(const Rig& rig, const DerivedStay& stay, TextPage& page) {
  const LengthSum& pins = stay.pin_to_pin;
  heading("The ways to pin-to-pin", page);
  const Tenths used = printed_total(pins);
  row((stay.route == LengthRoute::unknown ? "" : "by ") + std::string(route_words(stay.route)),
      format_total(pins.unknown, used, x_of_stay(rig[stay.stay].name)), why_used(rig, stay), page);
  print_passed_over(rig, stay, page);
  for (const RouteComparison& other : stay.other_routes) {
    row("by " + std::string(route_words(other.other)), format_tenths(Tenths::of(other.length)),
        against_used(other, used) + source_words(other.provenance), page);
    for (const LikelySlip& slip : other.slips)
      row("  likely slip", "",
          say(rig, slip.words) + ": explains it to " + format_tenths(slip.unexplained) + " mm", page);
  }
  for (const std::string& missing : say_each(rig, stay.not_corrected))
    row("  not corrected", "", missing, page);
}

void print_piece(const CheckedRig& checked, const DerivedStay& stay, const Piece& piece, TextPage& page) {
  const PieceSum sum = piece_sum(checked.rig(), stay, piece);
  const std::string x = x_of_stay(checked.rig()[stay.stay].name);
  heading("The sum" + (piece.of > 1 ? ", " + piece.name : std::string()), page);
  if (sum.unknown)
    row(x, "", source_words(sum.unknown_source), page);
  const std::vector<DraftReason> waiting = checked.draft_reasons(piece);
  for (const SumSection& section : sum.sections) {
    print_rows(checked, section.rows, page);
    if (section.kind == SumSection::Kind::cut && !waiting.empty()) {
      row("= CUT", std::string(not_yet),
          reasons_counted(waiting) + ", see the cut list" + (section.complete ? "" : "; INCOMPLETE"), page);
      continue;
    }
    row("= " + std::string(section.kind == SumSection::Kind::cut ? "CUT" : name_of(section.kind)),
        format_total(sum.unknown, section.total, x),
        "= " + format_total_feet_inches(sum.unknown, section.total, x) +
            (section.complete ? "" : ", INCOMPLETE"),
        page);
  }
  for (const MissingInput& missing : piece.missing)
    row("missing", "", say(checked.rig(), missing.what) + ": " + say(checked.rig(), missing.mend), page);
  for (const std::string& left_out : say_each(checked.rig(), piece.not_counted))
    row("not counted", "", left_out, page);
}

void print_tensions(const Rig& rig, const DerivedStay& stay, TextPage& page) {
  if (stay.tensions.empty() && !stay.sag)
    return;
  heading("Tension", page);
  for (const TensionEstimate& estimate : stay.tensions) {
    if (!estimate.tension) {
      row("by a " + std::string(name_of(estimate.method)), "not checked", say(rig, estimate.not_checked),
          page);
      continue;
    }
    std::string words = say(rig, estimate.how);
    if (estimate.share_of_break)
      words += "; " + format_fixed(*estimate.share_of_break * 100.0, 1) + " % of the break load";
    row("by a " + std::string(name_of(estimate.method)),
        format_fixed(estimate.tension->kilonewtons(), 2) + " kN",
        words + led_by("; ", who_and_when(estimate)), page);
  }
  if (stay.sag) {
    const std::string extra = format_fixed(stay.sag->extra_length.millimetres(), 2);
    row("sag of the longest run", format_fixed(stay.sag->depth.millimetres(), 2) + " mm",
        "over " + format_tenths(stay.sag->span) + " mm at " +
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
  for (const std::string& missing : say_each(rig, found.not_checked))
    row("not checked", "", missing, page);
}

} // namespace

void print_uncertainty(const CheckedRig& checked, const DerivedStay& stay, TextPage& page) {
  page.blank();
  if (!stay.uncertainty) {
    page.line("How well it is known");
    page.wrapped("  not checked: ", "no bound is stated for anything that it follows");
    return;
  }
  const Derived& derived = checked.derived();
  const Uncertainty& found = *stay.uncertainty;
  page.line("How well it is known: the cut without burys and tails, which move no bearing");
  page.line("  " + padded("by how much it may be off", bound_name_width) +
            padded_left("from mm", bound_width) + padded_left("to mm", bound_width));
  range_row("at worst", found.worst_low, found.worst_high, "every input at its bound", page);
  range_row("law of propagation, 95 %", -found.expanded, found.expanded, propagation_words(found), page);
  range_row("Monte Carlo, 95 %", found.drawn_low, found.drawn_high,
            "of " + grouped(derived.draws) + " draws, seed " + std::to_string(derived.seed) +
                "; JCGM 101:2008",
            page);
  if (found.reaches)
    page.wrapped("  ", "the adjuster reaches in " + trials_words(*found.reaches, derived.draws) +
                           ", as set up and before any creep or cold: a count of draws, no promise");
  print_shares(checked, found, page);
}

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
  page.ends(stated.name + led_by("   ", stated.title), draft ? "DRAFT" : "");
  for (const Piece& piece : stay.pieces)
    page.wrapped("  ", (stay.pieces.size() > 1 ? piece.name + ": " : "") + state_line(checked, piece));
  if (stay.measurement.in_place() && find_fact(stated.particulars, fact_names.cut_from) != nullptr)
    page.wrapped("  ", "cut-from: drawing is stated and does not count: the stay was read in place");
  print_ways(checked.rig(), stay, page);
  for (const Piece& piece : stay.pieces)
    print_piece(checked, stay, piece, page);
  print_uncertainty(checked, stay, page);
  print_tensions(checked.rig(), stay, page);
  print_replacement(checked, stay, page);
  page.blank();
}

BackendDescription ProofSheet::describe() const {
  return {.name = "proof-sheet",
          .summary =
              "each length as its sum with reading, person, conditions and source; how well it is known",
          .outputs = {"proof-sheet.txt"},
          .papers = {"proof-sheet.pdf"}};
}

OutputBundle ProofSheet::generate(const BackendRequest& request) const {
  const CheckedRig& checked = request.checked;
  TextPage page;
  begin_text("PROOF SHEET", checked, page);
  page.wrapped("",
               "How every length came about, so that it can be checked with a pencil. Each row is rounded "
               "to 0.1 mm; each total is the sum of its rows as printed. Sheerpole works out and reports; "
               "it does not judge a rig.");
  page.blank();
  if (checked.derived().stays.empty())
    page.line("There is nothing to prove: the rig has no stays.");
  for (const DerivedStay& stay : checked.derived().stays)
    print_stay_proof(checked, stay, page);
  OutputBundle bundle;
  bundle.files.push_back(
      {"proof-sheet.txt", with_foot(page.text(), "Proof sheet, " + identity_words(checked))});
  if (request.printed)
    bundle.papers.push_back(text_paper_of_lengths({.file = "proof-sheet.pdf",
                                                   .name = "Proof sheet",
                                                   .boat = boat_title(checked),
                                                   .about = identity_words(checked)},
                                                  page.text(), request));
  return bundle;
}

} // namespace sheerpole
