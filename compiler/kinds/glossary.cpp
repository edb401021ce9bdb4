#include "kinds/glossary.hpp"

#include "kinds/kind_row.hpp"

#include <algorithm>
#include <string>

namespace sheerpole {

namespace {

// Words of the trade as riggers use them; common practice, no source.
constexpr GlossaryRow rows[] = {
    {"adjuster", "",
     "what a stay is set and tensioned with: a screw, a lashing, a tackle, a lever, a row of "
     "holes, a cylinder",
     "turnbuckle, lashing, tackle, lever, cylinder, hole-adjuster"},
    {"apex", "", "where the legs of a bridle and the stay above it meet", "junction"},
    {"baby stay", "", "a short stay from the lower mast to the foredeck", "stay"},
    {"backstay", "", "the stay from the masthead aft", "stay"},
    {"bearing", "",
     "where a line lies in its thimble or comes out of its terminal: the body is measured from "
     "bearing to bearing",
     ""},
    {"bedding-in", "bedding, set-in",
     "the lasting stretch that a new line gives once, under its first loads", "bedding"},
    {"bench tension", "", "the pull under which a line is laid out and marked on the bench",
     "bench-tension"},
    {"bobstay", "", "the stay that holds the end of a bowsprit down to the stem", "stay"},
    {"body", "", "a piece from bearing to bearing, as it hangs: pin-to-pin less the hardware at both ends",
     ""},
    {"boomkin", "bumpkin", "a spar that runs out aft and carries the backstay", "spar, with sort: boomkin"},
    {"bridle", "",
     "two legs that meet in one point and carry one stay: the forestay of a catamaran, a split "
     "backstay",
     "stays that end in one junction"},
    {"bury", "",
     "the length of tail that lies inside the rope in a splice, and holds by being squeezed; "
     "stated in rope diameters, 72 d",
     "bury of a splice"},
    {"cap shroud", "", "the shroud from the masthead or the hounds over the spreader tips to the deck",
     "stay"},
    {"chainplate", "", "the plate on the hull that a stay ends at", "chainplate"},
    {"check stay", "checkstay", "a running stay from half way up that keeps the mast from bending",
     "stay, with duty: running"},
    {"clevis pin", "pin", "the plain pin through a jaw and an eye, held by a split pin or a ring",
     "pin of an end, secured of a part"},
    {"contraction", "", "what a rope gets shorter by where its tail is buried in it; in shares of the bury",
     "contraction of a splice, test-splice"},
    {"cord", "messenger, messenger cord",
     "a thin line run from pin to pin in place of the stay; a knot on it "
     "keeps the length without a number",
     "cord, reading"},
    {"creep", "", "the slow stretch of a rope under a steady load that does not come back", "creep-rate"},
    {"cut", "", "the length that is cut off the spool: the body and all that the ends use", ""},
    {"dead-eye", "deadeye, deadeyes, dead-eyes", "a block of wood or metal with holes for a lanyard",
     "deadeye"},
    {"diamond", "diamonds",
     "stays that run from the mast over short spreaders back to the mast and stiffen it", "stay"},
    {"digest", "",
     "eight signs at the foot of each paper, worked out of the text of the rig: papers with the same "
     "digest "
     "were made of the same text",
     ""},
    {"discontinuous", "", "of shrouds that end at each spreader tip, panel by panel",
     "stays that end at a link"},
    {"dock tension", "", "the tension at the dock, for which the pin-to-pin length holds", "dock-tension"},
    {"dolphin striker", "", "a short strut below the bowsprit that gives its stay an angle", "spreader"},
    {"DRAFT", "",
     "a piece that waits for something: a number assumed, a length not measured. Nothing is cut to it", ""},
    {"dry fit", "", "the piece hung in place, or beside what it was measured by, before anything is cut",
     "dry-fit"},
    {"eye", "", "the closed loop at the end of a line, or a plate with one hole", "eye, soft-eye"},
    {"eye allowance", "",
     "rope that an eye takes beyond the crown of its seat: once round the thimble from throat to throat, "
     "less the way from crown to throat",
     ""},
    {"first fit", "", "the first time that a new stay hangs, before it has settled", ""},
    {"forestay", "headstay", "the stay from the masthead or the hounds to the stem", "stay"},
    {"fork", "", "the end of a part with two cheeks, between which an eye stands", "jaw"},
    {"gaff", "",
     "the spar along the head of a four-sided sail; a gaff rig has it, and often soft eyes and dead-eyes",
     "spar, with sort: gaff"},
    {"gang", "gang of rigging", "all the stays of one mast, or of one boat, made and fitted as one job",
     ""},
    {"halves check", "",
     "at the bench: what is left of the line beyond the bearings is laid side by side, half to half; they "
     "differ by what the ends differ, else the line lies too far to one side",
     ""},
    {"hand-tight", "", "an adjuster turned by hand until the slack is out, with no tool", ""},
    {"hoist gap", "", "at a hoisted dry fit: from the pin aloft down to where the halyard holds the stay",
     "hoist-gap of a stay"},
    {"hounds", "", "where stays meet the mast below its head", "points"},
    {"in hand", "", "rope or wire that is there already, from which a piece is made without being cut",
     "in-hand"},
    {"inner stay", "inner forestay, cutter stay", "a stay before the mast and behind the forestay", "stay"},
    {"insulator", "", "a part that keeps the two halves of a stay apart, so that one serves as an aerial",
     "insulator"},
    {"jaw", "", "two cheeks with a hole through both, between which an eye or a tang stands", "jaw"},
    {"jumper", "jumpers",
     "a stay over a strut on the fore side of the mast that keeps its head from bending aft", "stay"},
    {"lanyard", "", "the line that is rove several times between two dead-eyes or thimbles and tensioned",
     "lashing"},
    {"lashing", "", "several passes of thin line in place of a screw", "lashing"},
    {"lower shroud", "lowers", "the shroud from under the spreaders to the deck", "stay"},
    {"masthead", "", "the head of the mast, and what is fitted there", "points"},
    {"mizzen", "", "the mast abaft the main mast", "spar, with sort: mizzen"},
    {"mouth", "", "of a terminal: where the wire goes in", "wire-socket"},
    {"mousing", "", "a seizing of wire that keeps a shackle pin or a hook from opening", "secured"},
    {"old stay", "old-stay",
     "a reading taken off the stay that comes down, from bearing to bearing; an old wire has stretched",
     "method: old-stay"},
    {"pair", "", "the same stay to port and to starboard", "sides: port, starboard"},
    {"partners", "", "where a mast goes through the deck and is held", "partners of a spar"},
    {"path", "", "the points that a stay runs through, from aloft to deck", "path"},
    {"pin-to-pin", "pin to pin",
     "from the centre of the pin aloft to the centre of the pin at the deck, along "
     "the stay as it hangs",
     "pin-to-pin, or a reading, or a path"},
    {"play", "", "what toggles and spare parts that may be put in or left out add to the screw",
     "removable"},
    {"proof sheet", "proof-sheet",
     "the paper that shows each length as its sum: every term with who read it, when, how and from what",
     ""},
    {"rake", "", "how far a mast leans aft", "rake of a spar"},
    {"reading", "", "what was measured in place, run by run, with tape, cord or laser", "reading"},
    {"READY", "",
     "the mark on a piece of which every number is stated and nothing in the file says to wait; it says "
     "nothing about strength, and the dry fit comes first all the same",
     ""},
    {"reserve", "", "what is left of an adjuster before its end, either way", "limits"},
    {"rigging screw", "bottlescrew, bottle screw, bottle-screw",
     "a turnbuckle with a closed or open body and threads at one or "
     "both ends",
     "turnbuckle"},
    {"runner", "running backstay, runners", "a backstay that is let go on the lee side",
     "stay, with duty: running"},
    {"seizing", "", "turns of thin line or wire that bind two parts together", "lashing, secured"},
    {"serving", "service",
     "turns of thin line round a rope that keep it from chafe, and make an eye larger",
     "serving of a soft-eye or a splice"},
    {"setting", "", "how an adjuster stands in the stack as the lengths were worked out",
     "open, length, gap, hole"},
    {"settled", "",
     "a stay after its first loads, when splices and line have given what they give once; a stage of its "
     "record",
     "piece, with stage: settled"},
    {"sheer", "", "the line of the deck at the side, seen from abeam", "deck-edge"},
    {"shoulder", "",
     "the face of a terminal that the wire goes in at: how far it goes in counts from there",
     "wire-socket"},
    {"shroud", "shrouds", "a stay that holds the mast athwartships", "stay"},
    {"soft eye", "soft-eye", "an eye of rope without a thimble, round a spar or a hull's bollard",
     "soft-eye"},
    {"solent stay", "", "a second forestay close behind the first", "stay"},
    {"spare bury", "", "rope kept in a splice beyond its bury, so that the piece can be made longer later",
     "spare-bury"},
    {"splice", "", "how the end of a rope is made", "splice"},
    {"spreader", "", "the strut on the mast that holds a shroud out", "spreader"},
    {"spring stay", "", "the stay between two masts below their heads", "stay"},
    {"stack", "", "all that a stay is made of, part by part from aloft to deck", "stack"},
    {"standing part", "", "the rope between its ends that carries the pull; the tail is buried in it", ""},
    {"stay", "", "one line of load from end to end, whatever its name: forestay, shroud, bobstay", "stay"},
    {"step", "", "what the foot of the mast stands on", "heel of a spar"},
    {"swage", "swaged terminal", "a terminal that is pressed onto the wire for good", "terminal"},
    {"tack", "", "which side the wind comes from; a state of the rig where runners are set and let go",
     "state"},
    {"tail", "", "the end of the rope beyond the splice; buried, or cut off", "tail of a splice"},
    {"tally", "",
     "the little knots in the tail of a cord that tell which stay its mark belongs to; never under the "
     "mark "
     "itself",
     "knots of a reading"},
    {"tang", "", "the plate on a mast that a stay ends at", "tang"},
    {"taper", "", "the end of a buried tail, thinned so that it ends without a lump", "taper-over"},
    {"tabernacle", "", "a step with a pin that a mast is lowered about", "heel of a spar, state"},
    {"thimble", "", "a round or pear-shaped seat for a rope's eye", "thimble"},
    {"throat", "", "where the two parts of an eye come together", "throat"},
    {"tip", "", "the outer end of a spreader", "tip of a spreader"},
    {"toggle", "", "a joint that lets a stay swing both ways, so that its screw and terminal are not bent",
     "toggle"},
    {"topmast", "", "the mast above the lower mast", "spar, with sort: topmast"},
    {"triatic", "triatic stay", "the stay between two mastheads", "stay"},
    {"waterstay", "", "a stay from an ama or a bowsprit down to the hull near the water", "stay"},
    {"weak link", "", "a part that is meant to break first", "weak-link"},
    {"X", "",
     "a length that stands on a cord and has no number: every length of its stay reads X and so much",
     "reading with a cord"},
};

constexpr char small(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool same_word(std::string_view a, std::string_view b) {
  return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                    [](char one, char other) { return small(one) == small(other); });
}

bool is_one_of(std::string_view list, std::string_view word) {
  while (!list.empty()) {
    const std::size_t end = std::min(list.find(", "), list.size());
    if (same_word(list.substr(0, end), word))
      return true;
    list.remove_prefix(std::min(end + 2, list.size()));
  }
  return false;
}

/// A blank may be written as a hyphen, as names of a rig file are.
bool names(const GlossaryRow& row, std::string_view word) {
  return same_word(row.word, word) || is_one_of(row.also, word);
}

} // namespace

std::span<const GlossaryRow> glossary() {
  return rows;
}

const GlossaryRow* find_glossary_row(std::string_view word) {
  std::string with_blanks(word);
  std::replace(with_blanks.begin(), with_blanks.end(), '-', ' ');
  for (const GlossaryRow& row : rows)
    if (names(row, word) || names(row, with_blanks))
      return &row;
  return nullptr;
}

std::string_view kind_for_trade_word(std::string_view word) {
  const GlossaryRow* row = find_glossary_row(word);
  if (row == nullptr)
    return {};
  const std::string_view first = row->in_file.substr(0, row->in_file.find(','));
  return find_kind(first) == nullptr ? std::string_view{} : first;
}

} // namespace sheerpole
