#include "backend/not_yet.hpp"
#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "units/format_length.hpp"
#include "wording/length_words.hpp"
#include "wording/papers/tables_words.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

/// What the hardware takes from pin-to-pin, as a positive amount: all of the body's rows but pin-to-pin
/// itself.
Tenths hardware_of(const DerivedStay& stay) {
  Tenths hardware;
  for (const Term& term : stay.body.terms)
    if (term.kind != TermKind::pin_to_pin)
      hardware += Tenths::of(-term.amount);
  return hardware;
}

std::string state_of(const CheckedRig& checked, const Piece& piece, const PieceSum& sum) {
  if (checked.draft_reasons(piece).empty())
    return "";
  return sum.complete() ? say(TablesPhrase::draft) : say(TablesPhrase::draft_incomplete);
}

/// Whether people see its cut as a number, as on the cards. What is only tried out on the command line is a
/// DRAFT too, but who tries it out asks for the number; no card has it.
bool shows_cut(const CheckedRig& checked, const Piece& piece) {
  const SourceSet& sources = checked.sources();
  for (std::uint32_t i = 0; i < sources.size(); ++i)
    if (sources[SourceId{i}].name() == "command line") // what was set there, as a text
      return true;
  return checked.held_by(piece).empty();
}

std::string place(const PrintedPlace& printed, const std::string& x) {
  return format_total(printed.unknown, printed.tenths, x);
}

std::string ratio(const std::optional<double>& value) {
  return value ? format_fixed(*value, 2) : "";
}

std::string kilograms(const std::optional<double>& value) {
  return value ? format_fixed(*value, 2) : "";
}

} // namespace

Table lengths_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::lengths_stays_by_each_way),
              .columns = {{"stay"},
                          {"way"},
                          {"used"},
                          {"pin-to-pin mm", true, "", true},
                          {"hardware mm", true},
                          {"body mm", true, "", true},
                          {"used less this mm", true},
                          {"source"}},
              .notes = {say(TablesPhrase::each_row_sum_is_rounded)}};
  for (const DerivedStay& stay : checked.derived().stays) {
    const std::string& name = checked.rig()[stay.stay].name;
    const bool unknown = stay.pin_to_pin.unknown;
    const Tenths pins = printed_total(stay.pin_to_pin);
    const Tenths hardware = hardware_of(stay);
    const Provenance source = unknown                         ? stay.pin_to_pin.unknown_source
                              : stay.pin_to_pin.terms.empty() ? Provenance{}
                                                              : stay.pin_to_pin.terms.front().provenance;
    table.rows.push_back(
        {name, std::string(name_of(stay.route)), "yes",
         format_total(unknown, pins, x_on_sheet(checked.rig(), checked.rig()[stay.stay])),
         format_tenths(hardware),
         format_total(unknown, pins - hardware, x_on_sheet(checked.rig(), checked.rig()[stay.stay])), "",
         source_words(source)});
    for (const RouteComparison& other : stay.other_routes)
      table.rows.push_back({name, std::string(name_of(other.other)), "no", format_tenths(other.length), "",
                            "", other.expected_x ? "" : format_tenths(other.difference),
                            source_words(other.provenance)});
  }
  return table;
}

Table pieces_table(const CheckedRig& checked) {
  constexpr std::size_t cut_column = 4; // in millimetres; behind it in feet and inches
  Table table{.title = say(TablesPhrase::pieces_to_cut),
              .columns = {{"piece"},
                          {"line"},
                          {"size"},
                          {"body mm", true, "", true},
                          {"cut mm", true, "", true},
                          {"cut ft in", true},
                          {"draft"},
                          {"state"}},
              .notes = {say(TablesPhrase::each_row_sum_is_rounded)}};
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Piece& piece : stay.pieces) {
      const LineMaterial& line = checked.rig()[piece.material];
      const PieceSum sum = piece_sum(checked.rig(), stay, piece);
      const std::string x = x_on_sheet(checked.rig(), checked.rig()[stay.stay]);
      if (!shows_cut(checked, piece)) {
        table.held.push_back({table.rows.size(), cut_column, not_yet()});
        table.held.push_back({table.rows.size(), cut_column + 1, ""});
      }
      table.rows.push_back({piece.name, line.name, line.size.name, format_total(sum.unknown, sum.body(), x),
                            format_total(sum.unknown, sum.cut(), x),
                            format_total_feet_inches(sum.unknown, sum.cut(), x),
                            state_of(checked, piece, sum),
                            std::string(name_of(checked.state(piece))) +
                                (checked.from_drawing(piece) ? say(TablesPhrase::from_drawing) : "")});
    }
  return table;
}

Table marks_table(const CheckedRig& checked) {
  constexpr std::size_t from_aloft_column = 2; // from below behind it
  Table table{.title = say(TablesPhrase::marks_on_bench_from_one),
              .columns = {{"piece"},
                          {"mark"},
                          {"from aloft mm", true, "", true},
                          {"from below mm", true, "", true},
                          {"note"}},
              .notes = {say(TablesPhrase::line_lies_straight_under_its),
                        say(TablesPhrase::dry_fit_bearing_to_bearing)}};
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Piece& piece : stay.pieces) {
      const bool is_draft = !checked.draft_reasons(piece).empty();
      const bool hidden = is_draft && !shows_cut(checked, piece);
      const std::string note =
          !is_draft && checked.measure_again(piece) ? say(TablesPhrase::measure_again_not_to_be_cut)
          : !is_draft                               ? ""
          : piece.missing.empty()                   ? say(TablesPhrase::draft_not_to_be_cut)
                                                    : say(TablesPhrase::draft_incomplete_cut_lacks_input);
      const PieceSum sum = piece_sum(checked.rig(), stay, piece);
      const Tenths cut = sum.cut();
      const std::string x = x_on_sheet(checked.rig(), checked.rig()[stay.stay]);
      for (const BenchMark& mark : piece.bench.marks) {
        const PrintedMark printed = printed_mark(mark, cut);
        for (const std::size_t column : {from_aloft_column, from_aloft_column + 1})
          if (hidden)
            table.held.push_back({table.rows.size(), column, not_yet()});
        table.rows.push_back({piece.name, mark_name(mark), place(printed.from_upper, x),
                              place(printed.from_lower, x), note});
      }
      if (const auto& dry = piece.bench.dry_fit) {
        if (hidden)
          table.held.push_back({table.rows.size(), from_aloft_column, not_yet()});
        table.rows.push_back({piece.name, say(TablesPhrase::dry_fit),
                              format_total(dry->unknown, printed_dry_fit(sum), x), "", ""});
      }
      for (const std::string& unknown : say_each(checked.rig(), piece.bench.not_known))
        table.rows.push_back({piece.name, say(TablesPhrase::not_known), "", "", unknown});
    }
  return table;
}

Table readings_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::readings_what_became_what_was),
              .columns = {{"stay"}, {"term"}, {"mm", true}, {"how"}, {"source"}},
              .notes = {say(TablesPhrase::total_is_sum_its_rows)}};
  for (const DerivedStay& stay : checked.derived().stays) {
    if (stay.route != LengthRoute::reading)
      continue;
    const std::string& name = checked.rig()[stay.stay].name;
    Tenths total;
    for (const Term& term : stay.pin_to_pin.terms) {
      const Tenths amount = Tenths::of(term.amount);
      total += amount;
      table.rows.push_back({name, term_name(checked.rig(), term), format_signed(amount),
                            say(checked.rig(), term.how), source_words(term.provenance)});
    }
    table.rows.push_back({name, say(TablesPhrase::pin_to_pin), format_tenths(total), "", ""});
    for (const std::string& missing : say_each(checked.rig(), stay.not_corrected))
      table.rows.push_back({name, say(TablesPhrase::not_corrected), "", missing, ""});
    for (const RouteComparison& other : stay.other_routes)
      for (const LikelySlip& slip : other.slips)
        table.rows.push_back({name, say(TablesPhrase::likely_slip), format_signed(other.difference),
                              say(checked.rig(), slip.words),
                              say(TablesPhrase::leaves_mm, format_tenths(slip.unexplained))});
  }
  return table;
}

Table replaced_table(const CheckedRig& checked) {
  Table table{.title = say(TablesPhrase::line_each_stay_against_one),
              .columns = {{"stay"},
                          {"line"},
                          {"before"},
                          {"stiffness", true},
                          {"strength", true},
                          {"mass", true},
                          {"kg", true},
                          {"kg before", true},
                          {"kg m less", true},
                          {"not checked"}},
              .notes = {say(TablesPhrase::ratios_new_over_old_kg)}};
  for (const DerivedStay& stay : checked.derived().stays) {
    if (!stay.replacement)
      continue;
    const Replacement& found = *stay.replacement;
    const Rig& rig = checked.rig();
    const bool moment = found.new_kilograms && found.old_kilograms && found.centre_height;
    table.rows.push_back(
        {rig[stay.stay].name, rig[rig[stay.stay].material].name, rig[found.old_line].name,
         ratio(found.stiffness), ratio(found.strength), ratio(found.mass), kilograms(found.new_kilograms),
         kilograms(found.old_kilograms),
         moment ? format_fixed(
                      (*found.old_kilograms - *found.new_kilograms) * found.centre_height->metres(), 1)
                : "",
         joined(say_each(rig, found.not_checked), Join::semicolon)});
  }
  return table;
}

} // namespace sheerpole
