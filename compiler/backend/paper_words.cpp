#include "backend/paper_words.hpp"

#include "backend/tenths.hpp"
#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "units/format_length.hpp"
#include "wording/model_words.hpp"
#include "wording/papers/chain_words.hpp"
#include "wording/papers/papers_words.hpp"
#include "wording/papers/rig_words.hpp"
#include "wording/say.hpp"
#include "wording/state_words.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

namespace sheerpole {

std::string boat_title(const CheckedRig& checked) {
  const std::string& title = checked.rig().boat.title;
  return title.empty() ? say(PapersPhrase::boat_without_name) : title;
}

std::string boat_and_revision(const CheckedRig& checked) {
  return boat_title(checked) + led_by(say(PapersPhrase::revision),
                                      fact_text(checked.rig().boat.particulars, fact_names.revision));
}

void add_words(std::string& text, std::string_view between, std::string_view more) {
  if (!text.empty() && !more.empty())
    text += between;
  text += more;
}

std::string joined(const std::vector<std::string>& texts, std::string_view between) {
  return joined(texts, between, [](const std::string& text) { return std::string_view(text); });
}

std::string led_by(std::string_view lead, std::string_view text) {
  return text.empty() ? std::string() : std::string(lead) + std::string(text);
}

std::string who_and_when(const TensionEstimate& estimate) {
  return joined({estimate.by, estimate.date}, ", ");
}

namespace {

/// A state within a sentence.
PhraseText name_in_words(PieceState state) {
  switch (state) {
  case PieceState::not_measured:
    return say(RigPhrase::state_not_measured);
  case PieceState::not_yet:
    return say(RigPhrase::state_not_yet);
  case PieceState::measured_once:
    return say(RigPhrase::state_measured_once);
  case PieceState::ways_differ:
    return say(RigPhrase::state_ways_differ);
  case PieceState::ready:
    return say(RigPhrase::state_ready);
  case PieceState::on_record:
    break;
  }
  return say(RigPhrase::state_on_record);
}

/// A state in a box of its own.
PhraseText stamp_of(PieceState state) {
  switch (state) {
  case PieceState::not_measured:
    return say(RigPhrase::stamp_not_measured);
  case PieceState::not_yet:
    return say(PapersPhrase::not_yet);
  case PieceState::measured_once:
    return say(RigPhrase::stamp_measured_once);
  case PieceState::ways_differ:
    return say(RigPhrase::stamp_ways_differ);
  case PieceState::ready:
    return say(RigPhrase::stamp_ready);
  case PieceState::on_record:
    break;
  }
  return say(RigPhrase::on_record);
}

bool own_length(const CheckedRig& checked, const Piece& piece) {
  const Stay& stay = checked.rig()[piece.stay];
  const std::vector<std::size_t> lines = lines_of(stay);
  const auto at = static_cast<std::size_t>(piece.number - 1);
  return at < lines.size() && stay.stack[lines[at]].line_length.has_value();
}

} // namespace

bool is_disputed(const CheckedRig& checked, const Piece& piece) {
  const PieceState state = checked.state(piece);
  return state == PieceState::ways_differ ||
         (state == PieceState::measured_once && !own_length(checked, piece) &&
          checked.derived().stays[piece.stay.index()].measurement.ways_differ());
}

bool is_settled(const CheckedRig& checked, const Piece& piece) {
  return checked.state(piece) == PieceState::ready;
}

std::string state_line(const CheckedRig& checked, const Piece& piece,
                       const std::function<std::string(Length)>& length_words) {
  if (checked.state(piece) == PieceState::on_record)
    return record_words(checked.rig(), checked.derived().stays[piece.stay.index()],
                        static_cast<std::size_t>(piece.number - 1), length_words);
  return state_words(checked.rig(), checked.derived().stays[piece.stay.index()], checked.state(piece),
                     own_length(checked, piece), length_words);
}

std::string state_stamp(const CheckedRig& checked, const Piece& piece) {
  const PieceState state = checked.state(piece);
  if (state == PieceState::not_measured && checked.from_drawing(piece))
    return say(PapersPhrase::from_drawing);
  if (is_disputed(checked, piece))
    return say(RigPhrase::stamp_ways_differ);
  return stamp_of(state);
}

std::string states_of_pieces(const CheckedRig& checked) {
  std::array<std::size_t, piece_state_names.size()> counts{};
  std::size_t drawn = 0;
  std::size_t disputed = 0;
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Piece& piece : stay.pieces) {
      const PieceState state = checked.state(piece);
      if (state == PieceState::not_measured && checked.from_drawing(piece))
        ++drawn;
      else if (is_disputed(checked, piece))
        ++disputed;
      else
        ++counts[static_cast<std::size_t>(state)];
    }
  std::string words;
  const auto add = [&](std::size_t count, std::string_view word) {
    if (count > 0)
      add_words(words, ", ", std::to_string(count) + " " + std::string(word));
  };
  for (const PieceState state :
       {PieceState::on_record, PieceState::ready, PieceState::measured_once, PieceState::not_yet})
    add(counts[static_cast<std::size_t>(state)], name_in_words(state));
  add(disputed, say(RigPhrase::state_ways_differ));
  add(drawn, say(PapersPhrase::not_measured_cut_from_drawing));
  add(counts[static_cast<std::size_t>(PieceState::not_measured)], name_in_words(PieceState::not_measured));
  return words;
}

std::string source_words(const Provenance& provenance) {
  std::string words(name_of(provenance.source_class));
  words += led_by(", ", note_words(provenance));
  if (!provenance.written.empty() && !provenance.written.ends_with("mm"))
    words += say(PapersPhrase::written, provenance.written);
  // For an assumed number the class says it all.
  if (provenance.source_class == SourceClass::assumed || provenance.assumptions.empty())
    return words;
  return say(PapersPhrase::rests_on_assumed, words, joined(provenance.assumptions, ", "));
}

std::string_view route_words(LengthRoute route) {
  switch (route) {
  case LengthRoute::reading:
    return say(PapersPhrase::a_reading);
  case LengthRoute::stated:
    return say(PapersPhrase::the_stated_length);
  case LengthRoute::path:
    return say(PapersPhrase::points_its_path);
  case LengthRoute::unknown:
    break;
  }
  return say(PapersPhrase::not_known_as_number);
}

std::string length_or_range(const Part& part) {
  if (part.length)
    return format_tenths(part.length->value);
  if (part.shortest && part.longest)
    return say(PapersPhrase::to_of, format_tenths(part.shortest->value),
               format_tenths(part.longest->value));
  return {};
}

std::string end_words(const End& end) {
  if (end.dimensions.empty())
    return std::string(name_of(end.type));
  return std::string(name_of(end.type)) + " (" +
         joined(end.dimensions, ", ",
                [](const EndDimension& dimension) {
                  return std::string(name_of(dimension.name)) + " " +
                         (dimension.text.empty() ? format_tenths(dimension.length.value) + " mm"
                                                 : dimension.text);
                }) +
         ")";
}

std::string length_source(const Part& part) {
  if (part.length)
    return source_words(part.length->provenance);
  if (!part.shortest || !part.longest)
    return {};
  const std::string shortest = source_words(part.shortest->provenance);
  const std::string longest = source_words(part.longest->provenance);
  return shortest == longest ? shortest : shortest + " / " + longest;
}

std::string grouped(std::size_t number) {
  std::string digits = std::to_string(number);
  for (std::size_t at = digits.size(); at > 3;) {
    at -= 3;
    digits.insert(at, " ");
  }
  return digits;
}

std::string trials_words(double share, std::size_t draws) {
  const auto count = static_cast<std::size_t>(std::llround(share * static_cast<double>(draws)));
  const std::string of = say(PapersPhrase::of_draws, grouped(draws));
  return count == draws ? say(PapersPhrase::all, of)
         : count == 0   ? say(PapersPhrase::none, of)
                        : grouped(count) + of;
}

std::string variance_words(double share) {
  if (share < 0.0005)
    return say(PapersPhrase::under);
  return share >= 0.9995 ? say(PapersPhrase::all_of_it) : format_fixed(share * 100.0, 1) + " %";
}

std::string links_words(const WholeLinks& links, const std::string& length) {
  return links.count == 1 ? say(ChainPhrase::one_link, links.pitch, length)
                          : say(ChainPhrase::links, links.count, links.pitch, length);
}

std::string links_taken_up(const Rig& rig, const DerivedStay& stay, Length longer) {
  const bool is_shorter = longer < Length{};
  if (stay.adjusters.empty())
    return say(is_shorter ? ChainPhrase::stay_comes_out_shorter : ChainPhrase::stay_comes_out_longer);
  Length room;
  std::vector<std::string> names;
  for (const TakeUp& adjuster : stay.adjusters) {
    room += is_shorter ? adjuster.to_slacken : adjuster.to_tighten;
    names.push_back(rig[adjuster.part].name);
  }
  const std::string which = joined(names, Join::and_word);
  if (magnitude(longer) > room)
    return say(is_shorter ? ChainPhrase::cannot_be_set_longer : ChainPhrase::cannot_be_set_shorter, which);
  if (names.size() > 1)
    return say(is_shorter ? ChainPhrase::are_set_longer : ChainPhrase::are_set_shorter, which);
  return say(is_shorter ? ChainPhrase::is_set_longer : ChainPhrase::is_set_shorter, which);
}

std::string links_off_words(const Rig& rig, const DerivedStay& stay, const WholeLinks& links, bool even,
                            const std::string& off, const std::string& worked_out) {
  if (even)
    return say(ChainPhrase::as_worked_out);
  return say(links.longer < Length{} ? ChainPhrase::shorter_than_worked_out
                                     : ChainPhrase::longer_than_worked_out,
             off, worked_out, links_taken_up(rig, stay, links.longer));
}

} // namespace sheerpole
