#include "plugins/proof-sheet/proof_sheet.hpp"
#include "wording/phrase_table.hpp"
#include "wording/say.hpp"

#include "backend/page/paper_files.hpp"
#include "backend/paper_words.hpp"
#include "model/fact_name.hpp"
#include "wording/length_words.hpp"
#include "wording/papers/proof_sheet_words.hpp"
#include "wording/say.hpp"
#include "wording/state_words.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// By what a tension was read.
PhraseText by_method(TensionMethod method) {
  switch (method) {
  case TensionMethod::swing:
    return say(ProofSheetPhrase::by_a_swing);
  case TensionMethod::pulse:
    return say(ProofSheetPhrase::by_a_pulse);
  case TensionMethod::stretch:
    return say(ProofSheetPhrase::by_a_stretch);
  case TensionMethod::gauge:
    break;
  }
  return say(ProofSheetPhrase::by_a_gauge);
}

constexpr std::size_t bound_name_width = 29;
constexpr std::size_t bound_width = 10;
constexpr std::size_t shown_shares = 5;

void range_row(std::string_view name, Length low, Length high, const std::string& how, TextPage& page) {
  page.wrapped("  " + padded(name, bound_name_width) + padded_left(format_signed(low), bound_width) +
                   padded_left(format_signed(high), bound_width) + "   ",
               how);
}

std::string propagation_words(const Uncertainty& found) {
  std::string words =
      say(ProofSheetPhrase::times_standard_uncertainty_mm, format_fixed(found.coverage_factor, 2),
          format_fixed(found.standard.millimetres(), 2));
  if (found.freedom > 0.0) {
    const std::string freedom = format_fixed(found.freedom, 0);
    words += say(ProofSheetPhrase::of_freedom, freedom,
                 (freedom == "1" ? say(ProofSheetPhrase::degree) : say(ProofSheetPhrase::degrees)));
  }
  return say(ProofSheetPhrase::jcgm, words);
}

void print_shares(const CheckedRig& checked, const Uncertainty& found, TextPage& page) {
  const Derived& derived = checked.derived();
  page.blank();
  page.line(say(ProofSheetPhrase::what_to_measure_next_inputs));
  const std::size_t shown = std::min(found.shares.size(), shown_shares);
  for (std::size_t i = 0; i < shown; ++i) {
    const UncertaintyShare& share = found.shares[i];
    const UncertainInput& input = derived.inputs[share.input];
    page.wrapped(
        "  " + padded_left(std::to_string(i + 1) + ".", 3) + " " +
            padded_left(variance_words(share.share), 11) + "   ",
        say(ProofSheetPhrase::which_moves_it_by, say(checked.rig(), input.name),
            format_signed(share.per_bound),
            (input.distribution == Distribution::student ? say(ProofSheetPhrase::mm_by_scatter_its_mean)
                                                         : say(ProofSheetPhrase::mm_at_its_bound)),
            words(input.distribution), led_by("; ", place_words(checked, input.place))));
  }
  if (shown < found.shares.size())
    page.line(say(ProofSheetPhrase::and_more_smaller_share, found.shares.size() - shown));
  if (found.without_bound.empty())
    return;
  page.blank();
  page.line(say(ProofSheetPhrase::no_bound_is_stated_for));
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
    return stay.other_routes.empty() ? say(ProofSheetPhrase::used_there_is_no_other)
                                     : say(ProofSheetPhrase::used_there_is_no_reading);
  const Stay& stated = rig[stay.stay];
  const Reading& reading = stated.readings[*stay.readings.taken];
  std::string words = say(ProofSheetPhrase::used, reading_name(reading));
  if (stay.readings.contradiction() != nullptr)
    return say(ProofSheetPhrase::not_settled_see_reading_that, words);
  if (stay.readings.others.empty())
    words += stay.other_routes.empty() ? say(ProofSheetPhrase::there_is_no_other)
                                       : say(ProofSheetPhrase::what_was_read_in_place);
  else if (reading.counts)
    words += say(ProofSheetPhrase::stated_to_be_one_that);
  else
    words += reading.date.empty() ? say(ProofSheetPhrase::as_good_as_any_other)
                                  : say(ProofSheetPhrase::latest_date_counts);
  return words;
}

/// How a way that is not used stands to the one that is.
std::string against_used(const RouteComparison& other, Tenths used) {
  if (other.expected_x)
    return say(ProofSheetPhrase::not_used_x_is_expected, format_tenths(*other.expected_x));
  return say(ProofSheetPhrase::not_used_one_used_differs, format_signed(used - Tenths::of(other.length)));
}

/// Readings that are not used, each with the reason.
void print_passed_over(const Rig& rig, const DerivedStay& stay, TextPage& page) {
  for (const OtherReading& other : stay.readings.others) {
    const Reading& reading = rig[stay.stay].readings[other.reading];
    std::string words = reading_name(reading) + ": " + passed_over_words(rig, stay, other);
    if (other.apart && other.why == PassedOver::contradicts)
      words += say(ProofSheetPhrase::they_differ_by_mm_where, format_tenths(magnitude(*other.apart)),
                   format_tenths(other.allowed));
    row(say(ProofSheetPhrase::reading_not_used), reading.is_mark_alone() ? "X" : "", words, page);
  }
}

/// The ways to the pin-to-pin length side by side, and what is not in the one that was used.
void print_ways(const Rig& rig, const DerivedStay& stay, TextPage& page) {
  const LengthSum& pins = stay.pin_to_pin;
  heading(say(ProofSheetPhrase::ways_to_pin_to_pin), page);
  const Tenths used = printed_total(pins);
  row((stay.route == LengthRoute::unknown ? "" : say(ProofSheetPhrase::by)) +
          std::string(route_words(stay.route)),
      format_total(pins.unknown, used, x_of_stay(rig[stay.stay].name)), why_used(rig, stay), page);
  print_passed_over(rig, stay, page);
  for (const RouteComparison& other : stay.other_routes) {
    row(say(ProofSheetPhrase::by_of, route_words(other.other)), format_tenths(Tenths::of(other.length)),
        against_used(other, used) + source_words(other.provenance), page);
    for (const LikelySlip& slip : other.slips)
      row(say(ProofSheetPhrase::likely_slip), "",
          say(ProofSheetPhrase::explains_it_to_mm, say(rig, slip.words), format_tenths(slip.unexplained)),
          page);
  }
  for (const std::string& missing : say_each(rig, stay.not_corrected))
    row(say(ProofSheetPhrase::not_corrected), "", missing, page);
}

void print_piece(const CheckedRig& checked, const DerivedStay& stay, const Piece& piece, TextPage& page) {
  const PieceSum sum = piece_sum(checked.rig(), stay, piece);
  const std::string x = x_of_stay(checked.rig()[stay.stay].name);
  heading(say(ProofSheetPhrase::the_sum, (piece.of > 1 ? ", " + piece.name : std::string())), page);
  if (sum.unknown)
    row(x, "", source_words(sum.unknown_source), page);
  const std::vector<DraftReason> waiting = checked.held_by(piece);
  for (const SumSection& section : sum.sections) {
    print_rows(checked, section.rows, page);
    if (section.kind == SumSection::Kind::cut && !waiting.empty()) {
      row(say(ProofSheetPhrase::cut), not_yet(),
          say(ProofSheetPhrase::see_cut_list, reasons_counted(waiting),
              (section.complete ? "" : say(ProofSheetPhrase::incomplete))),
          page);
      continue;
    }
    row("= " + std::string(section.kind == SumSection::Kind::cut ? say(ProofSheetPhrase::cut_capitals)
                                                                 : name_of(section.kind)),
        format_total(sum.unknown, section.total, x),
        "= " + format_total_feet_inches(sum.unknown, section.total, x) +
            (section.complete ? "" : say(ProofSheetPhrase::incomplete_capitals)),
        page);
  }
  for (const MissingInput& missing : piece.missing)
    row(say(ProofSheetPhrase::missing), "",
        say(checked.rig(), missing.what) + ": " + say(checked.rig(), missing.mend), page);
  for (const std::string& left_out : say_each(checked.rig(), piece.not_counted))
    row(say(ProofSheetPhrase::not_counted), "", left_out, page);
}

void print_tensions(const Rig& rig, const DerivedStay& stay, TextPage& page) {
  if (stay.tensions.empty() && !stay.sag)
    return;
  heading(say(ProofSheetPhrase::tension), page);
  for (const TensionEstimate& estimate : stay.tensions) {
    if (!estimate.tension) {
      row(by_method(estimate.method), say(ProofSheetPhrase::not_checked), say(rig, estimate.not_checked),
          page);
      continue;
    }
    std::string words = say(rig, estimate.how);
    if (estimate.share_of_break)
      words += say(ProofSheetPhrase::break_load, format_fixed(*estimate.share_of_break * 100.0, 1));
    row(by_method(estimate.method), format_fixed(estimate.tension->kilonewtons(), 2) + " kN",
        words + led_by("; ", who_and_when(estimate)), page);
  }
  if (stay.sag) {
    const std::string extra = format_fixed(stay.sag->extra_length.millimetres(), 2);
    row(say(ProofSheetPhrase::sag_longest_run), format_fixed(stay.sag->depth.millimetres(), 2) + " mm",
        say(ProofSheetPhrase::over_mm_at_kn_line, format_tenths(stay.sag->span),
            format_fixed(stay.sag->tension.kilonewtons(), 2),
            (extra == "0.00" ? say(ProofSheetPhrase::less_than) : extra)),
        page);
  }
}

void print_replacement(const CheckedRig& checked, const DerivedStay& stay, TextPage& page) {
  if (!stay.replacement)
    return;
  const Replacement& found = *stay.replacement;
  const Rig& rig = checked.rig();
  heading(say(ProofSheetPhrase::in_place_of, rig[rig[stay.stay].material].name, rig[found.old_line].name),
          page);
  const auto times = [&](PhraseText what, const std::optional<double>& ratio) {
    if (ratio)
      row(what, format_fixed(*ratio, 2), say(ProofSheetPhrase::times_that_old_line), page);
  };
  times(say(ProofSheetPhrase::stiffness), found.stiffness);
  times(say(ProofSheetPhrase::break_load_word), found.strength);
  times(say(ProofSheetPhrase::mass), found.mass);
  if (found.new_kilograms && found.old_kilograms)
    row(say(ProofSheetPhrase::mass_stay), format_fixed(*found.new_kilograms, 2) + " kg",
        say(ProofSheetPhrase::was_kg, format_fixed(*found.old_kilograms, 2),
            (found.centre_height ? say(ProofSheetPhrase::its_middle_m_above_lowest,
                                       format_fixed(found.centre_height->metres(), 2))
                                 : "")),
        page);
  for (const std::string& missing : say_each(rig, found.not_checked))
    row(say(ProofSheetPhrase::not_checked), "", missing, page);
}

} // namespace

void print_uncertainty(const CheckedRig& checked, const DerivedStay& stay, TextPage& page) {
  page.blank();
  if (!stay.uncertainty) {
    page.line(say(ProofSheetPhrase::how_well_it_is_known));
    page.wrapped(say(ProofSheetPhrase::not_checked_behind),
                 say(ProofSheetPhrase::no_bound_is_stated_for_anything));
    return;
  }
  const Derived& derived = checked.derived();
  const Uncertainty& found = *stay.uncertainty;
  page.line(say(ProofSheetPhrase::how_well_it_is_known_cut));
  page.line("  " + padded(say(ProofSheetPhrase::by_how_much_it_may), bound_name_width) +
            padded_left(say(ProofSheetPhrase::from_mm), bound_width) +
            padded_left(say(ProofSheetPhrase::to_mm), bound_width));
  range_row(say(ProofSheetPhrase::at_worst), found.worst_low, found.worst_high,
            say(ProofSheetPhrase::every_input_at_its_bound), page);
  range_row(say(ProofSheetPhrase::law_of_propagation), -found.expanded, found.expanded,
            propagation_words(found), page);
  range_row(say(ProofSheetPhrase::monte_carlo), found.drawn_low, found.drawn_high,
            say(ProofSheetPhrase::draws_seed_jcgm, grouped(derived.draws), derived.seed), page);
  if (found.reaches)
    page.wrapped("  ", say(ProofSheetPhrase::adjuster_reaches_in_as_set,
                           trials_words(*found.reaches, derived.draws)));
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
  page.ends(stated.name + led_by("   ", stated.title), draft ? say(ProofSheetPhrase::draft) : "");
  for (const Piece& piece : stay.pieces)
    page.wrapped("  ", (stay.pieces.size() > 1 ? piece.name + ": " : "") + state_line(checked, piece));
  if (stay.measurement.in_place() && find_fact(stated.particulars, fact_names.cut_from) != nullptr)
    page.wrapped("  ", say(ProofSheetPhrase::cut_from_drawing_is_stated));
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
          .summary = say(ProofSheetPhrase::each_length_as_its_sum),
          .outputs = {"proof-sheet.txt"},
          .papers = {"proof-sheet.pdf"}};
}

OutputBundle ProofSheet::generate(const BackendRequest& request) const {
  const CheckedRig& checked = request.checked;
  TextPage page;
  begin_text(say(ProofSheetPhrase::proof_sheet), checked, page);
  page.wrapped("", say(ProofSheetPhrase::how_every_length_came_about));
  page.blank();
  if (checked.derived().stays.empty())
    page.line(say(ProofSheetPhrase::there_is_nothing_to_prove));
  for (const DerivedStay& stay : checked.derived().stays)
    print_stay_proof(checked, stay, page);
  OutputBundle bundle;
  bundle.files.push_back(
      {"proof-sheet.txt",
       with_foot(page.text(), say(ProofSheetPhrase::proof_sheet_begins, identity_words(checked)))});
  if (request.printed)
    bundle.papers.push_back(text_paper_of_lengths({.file = "proof-sheet.pdf",
                                                   .name = say(ProofSheetPhrase::proof_sheet_word),
                                                   .boat = boat_title(checked),
                                                   .about = identity_words(checked)},
                                                  page.text(), request));
  return bundle;
}

} // namespace sheerpole
