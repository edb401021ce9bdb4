#include "diagnostics/catalogue.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array entries{
    CatalogueEntry{
        .slug = "spreader-off-bisector",
        .severity = Severity::note,
        .message = "{stay}: {spreader} {rise}, one that {halving} would halve the angle of the line: "
                   "{off} too {way}, about {lift} at the tip",
        .why = "the line pushes the tip along itself, and the spreader has to stand that at its root",
        .cause =
            "Seen across the boat the line leans out by some degrees above the tip and by fewer below it. "
            "A "
            "spreader that rises by half of both together halves the angle, and is only pressed. This one "
            "is more than 2 degrees off (common practice, no source). Of two lines over one tip the one "
            "that is clamped to it counts, and of several the one that is halved best.",
        .example = "spreader upper-spreader {\n"
                   "  root: upper-root\n"
                   "  tip: upper-tip\n"
                   "}\n"
                   "points {\n"
                   "  cap-tang:   (0.000, 0.000, 11.400) m drawn\n"
                   "  upper-root: (0.000, 0.060, 5.450) m mirrored drawn\n"
                   "  upper-tip:  (0.000, 1.000, 5.500) m mirrored drawn\n"
                   "  plate:      (0.000, 1.250, 0.000) m mirrored drawn\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: cap-tang > upper-tip clamped > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Look at the place of the tip again. Where it is so on the boat, move the clamp at the tip "
                "and lift or lower the spreader before the stays are set up.",
    },
    CatalogueEntry{
        .slug = "spreader-far-off-bisector",
        .severity = Severity::warning,
        .message = "{stay}: {spreader} {rise}, one that {halving} would halve the angle of the line: "
                   "{off} too {way}, about {lift} at the tip",
        .why = "the line pushes the tip along itself: a spreader that slips lets the mast go",
        .cause = "As with spreader-off-bisector, and by more than 5 degrees (common practice, no source).",
        .example = "spreader upper-spreader {\n"
                   "  root: upper-root\n"
                   "  tip: upper-tip\n"
                   "}\n"
                   "points {\n"
                   "  cap-tang:   (0.000, 0.000, 11.400) m drawn\n"
                   "  upper-root: (0.000, 0.060, 5.600) m mirrored drawn\n"
                   "  upper-tip:  (0.000, 1.000, 5.500) m mirrored drawn\n"
                   "  plate:      (0.000, 1.250, 0.000) m mirrored drawn\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: cap-tang > upper-tip clamped > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Look at the places of root and tip again. Where it is so on the boat, lift or lower the "
                "tip and clamp it before she sails.",
    },
    CatalogueEntry{
        .slug = "tip-pulled-out",
        .severity = Severity::warning,
        .message = "{stay}: at {spreader} it {words}",
        .why = "a spreader holds the line out by being pressed: here it holds nothing, and falls off its "
               "root or off the line",
        .cause = "The tip lies inside the straight line from the place above it to the place below, or on "
                 "it: the spreader is too short for its chainplate, or a sign of y is wrong.",
        .example = "spreader upper-spreader {\n"
                   "  root: upper-root\n"
                   "  tip: upper-tip\n"
                   "}\n"
                   "points {\n"
                   "  cap-tang:   (0.000, 0.000, 11.400) m drawn\n"
                   "  upper-root: (0.000, 0.060, 5.400) m mirrored drawn\n"
                   "  upper-tip:  (0.000, 0.600, 5.500) m mirrored drawn\n"
                   "  plate:      (0.000, 1.650, 0.000) m mirrored drawn\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: cap-tang > upper-tip clamped > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Look at the places of the tip, of the tang and of the chainplate again; measure the "
                "spreader.",
    },
    CatalogueEntry{
        .slug = "tip-not-held",
        .severity = Severity::warning,
        .message = "{spreader}: it swings at its root and no line is clamped to its tip: {words}",
        .why = "the tip is free to wander along the line, and the spreader falls when the line goes slack",
        .cause = "A swinging spreader is held by the line that is clamped to its tip, or that ends there. "
                 "All lines over this one run free.",
        .example = "spreader upper-spreader {\n"
                   "  root: upper-root\n"
                   "  tip: upper-tip\n"
                   "  hold: swinging\n"
                   "}\n"
                   "points {\n"
                   "  cap-tang:   (0.000, 0.000, 11.400) m drawn\n"
                   "  upper-root: (0.000, 0.060, 5.400) m mirrored drawn\n"
                   "  upper-tip:  (0.000, 1.000, 5.500) m mirrored drawn\n"
                   "  plate:      (0.000, 1.250, 0.000) m mirrored drawn\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: cap-tang > upper-tip free > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend =
            "Clamp or seize one line to the tip, and write `clamped` in its path; or say `hold: fixed`.",
    },
    CatalogueEntry{
        .slug = "tip-held-twice",
        .severity = Severity::note,
        .message = "{spreader}: {words}",
        .why = "the spreader can halve the angle of one line only; the other one pulls it up or down, and "
               "each stretches against the other",
        .cause =
            "Two lines go over one tip and both are clamped to it. It is usual to clamp one and to let "
            "the other run.",
        .example = "spreader lower-spreader {\n"
                   "  root: lower-root\n"
                   "  tip: lower-tip\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  path: cap-tang > lower-tip clamped > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n"
                   "stay intermediate {\n"
                   "  path: tang > lower-tip clamped > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Write `free` for the line that runs through. Where both are clamped on the boat, set up "
                "the one that the spreader halves first.",
    },
    CatalogueEntry{
        .slug = "stay-angle-small",
        .severity = Severity::warning,
        .message = "{stay}: it comes off the mast at {angle} ({against}), {bound} is asked for at least: "
                   "it pulls {pull} times the side force that it holds",
        .why = "the nearer a shroud lies to the mast, the harder it pulls and presses the mast down for "
               "the same side force",
        .cause =
            "The first part of the shroud runs down nearly along the mast: a short spreader or a narrow "
            "base for the height of the mast. Ten degrees is the least in use (common practice, no "
            "source).",
        .example = "points {\n"
                   "  cap-tang: (0.000, 0.060, 11.400) m mirrored drawn\n"
                   "  plate:    (0.000, 1.250, 1.000) m mirrored drawn\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: cap-tang > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Look at the places again. Where the boat is built so, the sizes of wire and mast have to "
                "answer for it; ask who designed her.",
    },
    CatalogueEntry{
        .slug = "stay-angle-below-usual",
        .severity = Severity::note,
        .message = "{stay}: it comes off the mast at {angle} ({against}), {bound} is usual: it pulls "
                   "{pull} times the side force that it holds",
        .why = "the nearer a shroud lies to the mast, the harder it pulls and presses the mast down for "
               "the same side force",
        .cause = "As with stay-angle-small, between the least and the usual angle of 12 degrees (common "
                 "practice, no source).",
        .example = "points {\n"
                   "  cap-tang: (0.000, 0.060, 11.400) m mirrored drawn\n"
                   "  plate:    (0.000, 2.050, 1.000) m mirrored drawn\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: cap-tang > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Nothing, when the boat is like that. Compare it with the drawing when it surprises.",
    },
    CatalogueEntry{
        .slug = "plate-off-lead",
        .severity = Severity::note,
        .message = "{stay}: it pulls {off} out of the plane of {plate}, {plane}: {share} of its tension "
                   "bends the plate sideways",
        .why = "a plate that is bent sideways at every wave tires",
        .cause =
            "The plate should lie in line with its stay. Its plane runs fore and aft and leans inboard "
            "by `plane-lean`; the last part of the stay is more than 2 degrees out of it (common "
            "practice, no source).",
        .example = "points {\n"
                   "  cap-tang: (0.000, 0.060, 11.400) m mirrored drawn\n"
                   "  plate:    (0.000, 2.250, 1.000) m mirrored drawn\n"
                   "}\n"
                   "chainplate plate-12 {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 10 mm)\n"
                   "  plane-lean: 9 deg\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: cap-tang > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    plate-12\n"
                   "  }\n"
                   "}\n",
        .mend = "Measure how far the plate leans. A toggle lets the stay find its lead at the pin; the "
                "plate still bends.",
    },
    CatalogueEntry{
        .slug = "plate-far-off-lead",
        .severity = Severity::warning,
        .message = "{stay}: it pulls {off} out of the plane of {plate}, {plane}: {share} of its tension "
                   "bends the plate sideways",
        .why = "a plate that is bent sideways at every wave breaks at the deck",
        .cause = "As with plate-off-lead, and by more than 5 degrees (common practice, no source).",
        .example = "points {\n"
                   "  cap-tang: (0.000, 0.060, 11.400) m mirrored drawn\n"
                   "  plate:    (0.000, 2.250, 1.000) m mirrored drawn\n"
                   "}\n"
                   "chainplate plate-12 {\n"
                   "  upper: eye (hole: 12.3 mm, thickness: 10 mm)\n"
                   "  plane-lean: 0 deg\n"
                   "}\n"
                   "stay cap-shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: cap-tang > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    plate-12\n"
                   "  }\n"
                   "}\n",
        .mend = "Measure how far the plate leans. A plate that is so far out wants bending by who made it, "
                "or another plate, and a look at the deck for cracks.",
    },
    CatalogueEntry{
        .slug = "junction-off-line",
        .severity = Severity::warning,
        .message = "{stay} at {point}: {words}",
        .why =
            "under load the plate goes to where its stays pull straight: lengths that are cut to another "
            "place leave one of them slack",
        .cause =
            "Where a stay goes over into two legs the three find their own line. For two legs alike it "
            "is the straight line from the far end of the stay to the middle between those of the legs; "
            "for others the plane through the three ends. The point in the file is more than 10 mm off "
            "it (exact statics; the 10 mm are a choice of the project).",
        .example = "points {\n"
                   "  masthead: (-0.200, 0.000, 13.000) m drawn\n"
                   "  plate:    (-4.000, 0.000, 4.400) m drawn\n"
                   "  quarter:  (-5.200, 1.000, 1.100) m mirrored drawn\n"
                   "}\n"
                   "junction bridle-arm {\n"
                   "  length: 30 mm\n"
                   "}\n"
                   "stay backstay {\n"
                   "  path: masthead > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "    bridle-arm\n"
                   "  }\n"
                   "}\n"
                   "stay backstay-leg {\n"
                   "  sides: port, starboard\n"
                   "  path: plate > quarter\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    bridle-arm\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend =
            "Put the point on the line: choose its height and work out the rest, or measure it with all "
            "three stays set up.",
    },
    CatalogueEntry{
        .slug = "stays-cross",
        .severity = Severity::warning,
        .message = "{stay}: it passes {other} at {distance}, {height}; {least} is asked for at least, "
                   "measured between the middles of the two",
        .why = "two stays that touch saw through each other, and neither pulls straight",
        .cause =
            "The straight lines of two stays that meet nowhere come nearer than 10 mm, or than they are "
            "thick (exact geometry). Mostly two ends are interchanged: forward and aft, or port and "
            "starboard.",
        .example = "points {\n"
                   "  tang-fore:  (0.050, 0.085, 6.250) m mirrored drawn\n"
                   "  tang-aft:   (-0.050, 0.085, 6.250) m mirrored drawn\n"
                   "  plate-fore: (0.850, 1.660, 1.300) m mirrored drawn\n"
                   "  plate-aft:  (-0.850, 1.660, 1.300) m mirrored drawn\n"
                   "}\n"
                   "stay forward-lower {\n"
                   "  sides: port, starboard\n"
                   "  path: tang-aft > plate-fore\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n"
                   "stay aft-lower {\n"
                   "  sides: port, starboard\n"
                   "  path: tang-fore > plate-aft\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Look at the paths of both. Where they do pass so near on the boat, lead one of them "
                "elsewhere or put something between.",
    },
    CatalogueEntry{
        .slug = "stay-through-spar",
        .severity = Severity::warning,
        .message = "{stay}: it {words}, {height}",
        .why = "it chafes there, or can not go there at all, and its length is that of another way",
        .cause =
            "The straight line of the stay runs into a spar whose girth and length are stated, or comes "
            "nearer to a spreader than 10 mm without going over its tip (exact geometry). Mostly a point "
            "of its path is missing or on the wrong side.",
        .example = "spar mast {\n"
                   "  sort: mast\n"
                   "  heel: (0.000, 0.000, 1.000) m\n"
                   "  length: 12 m\n"
                   "  girth: 565 mm\n"
                   "}\n"
                   "points {\n"
                   "  tang:  (0.090, 0.000, 9.400) m drawn\n"
                   "  plate: (-5.000, 0.000, 1.300) m drawn\n"
                   "}\n"
                   "stay backstay {\n"
                   "  path: tang > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Put in the point over which it goes, or put its end on the side that it leads to.",
    },
    CatalogueEntry{
        .slug = "stay-through-deck",
        .severity = Severity::warning,
        .message =
            "{stay}: on its way it goes through the deck, {depth} below the edge of the deck where it "
            "is deepest",
        .why = "it can not be led like that without a hole that takes water, and its length is that of "
               "another way",
        .cause =
            "Part of the stay lies above the edge of the deck and part below it, inside the outline that "
            "`deck-edge` gives, and more than 0.2 m from its ends. The deck is taken for as high across "
            "as its edge. A stay that is led through the deck on purpose has a point where it does so.",
        .example = "boat \"Example\" {\n"
                   "  deck-edge: stem, waist, quarter\n"
                   "}\n"
                   "points {\n"
                   "  stem:    (3.500, 0.000, 1.400) m drawn\n"
                   "  waist:   (0.000, 1.600, 1.200) m mirrored drawn\n"
                   "  quarter: (-4.500, 1.300, 1.100) m mirrored drawn\n"
                   "  tang:    (0.000, 0.060, 9.000) m mirrored drawn\n"
                   "  plate:   (-0.300, 1.400, 0.300) m mirrored drawn\n"
                   "}\n"
                   "stay shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: tang > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend =
            "Look at the height of its lower end. Where it goes through the deck, put the point where it "
            "does so into its path.",
    },
    CatalogueEntry{
        .slug = "direction-not-held",
        .severity = Severity::error,
        .message = "{spar}: nothing holds it {missing} above half of its height ({height} from its heel)",
        .why = "a mast that nothing holds to one side falls to the other",
        .cause =
            "The boat says that all of her stays are in these files (`covers: whole-rig`). Of those that "
            "end on this mast above half of its height none pulls that way. A swept shroud pulls aft as "
            "well as to its side.",
        .example = "boat \"Example\" {\n"
                   "  covers: whole-rig\n"
                   "}\n"
                   "spar mast {\n"
                   "  sort: mast\n"
                   "  heel: (0.000, 0.000, 1.000) m\n"
                   "}\n"
                   "points on mast {\n"
                   "  tang: (0.000, 0.060, 8.400) m mirrored drawn\n"
                   "}\n"
                   "points {\n"
                   "  plate: (-0.500, 1.950, 1.000) m mirrored drawn\n"
                   "}\n"
                   "stay shroud {\n"
                   "  sides: port, starboard\n"
                   "  path: tang > plate\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Put the missing stay into the file, or write `covers: part-of-rig`.",
    },
    CatalogueEntry{
        .slug = "foretriangle-differs",
        .severity = Severity::warning,
        .message = "the {what} is stated as {stated} and comes to {points} by the points of {stay}: "
                   "{difference} apart",
        .why = "sails are made by the one and the stay is cut by the other",
        .cause =
            "The height runs from the sheer abreast of the mast to the upper pin of the forestay, the "
            "base from the fore side of the mast to the foot of it. The forestay is the stay on the "
            "centreline that carries a sail (`duty`) and has the foremost foot. More than 20 mm apart is "
            "said (choice of the project, no source).",
        .example = "boat \"Example\" {\n"
                   "  foretriangle-height: 11.58 m drawn\n"
                   "  sheer-at-mast: 1.12 m drawn\n"
                   "}\n"
                   "points {\n"
                   "  tang: (0.090, 0.000, 12.800) m drawn\n"
                   "  stem: (3.540, 0.000, 1.400) m drawn\n"
                   "}\n"
                   "stay forestay {\n"
                   "  path: tang > stem\n"
                   "  duty: carries-sail\n"
                   "  line: wire-6\n"
                   "  stack {\n"
                   "    line\n"
                   "  }\n"
                   "}\n",
        .mend = "Find out which of the two was measured, and put the other right.",
    },
};

} // namespace

std::span<const CatalogueEntry> geometry_findings() {
  return entries;
}

} // namespace sheerpole
