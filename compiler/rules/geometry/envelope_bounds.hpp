#pragma once

namespace sheerpole::boat_envelope {

/// One bound: beyond `unlikely` is a warning, beyond `outside` an error. Of a least one, below.
struct Bound {
  double unlikely = 0.0;
  double outside = 0.0;
};

// Shares of what is stated. Common practice, no source, and wide: a sound boat is well inside.
inline constexpr Bound over_half_beam{1.15, 1.3}; // channels stand out a little
inline constexpr Bound pair_forward{0.55, 0.6};   // of length overall, before the nearest mast
inline constexpr Bound pair_aft{0.7, 0.75};       // the same, behind it
inline constexpr Bound centre_from_mast{
    0.85, 1.0}; // of length overall; a bowsprit's end may be stated without a spar
inline constexpr Bound over_sheer{1.6, 3.0};          // height above the waterline
inline constexpr double over_sheer_metres = 0.25;     // and so much more, for a low boat
inline constexpr double least_sheer_metres = 0.2;     // below it no share of it says anything
inline constexpr Bound under_sheer{0.5, 0.2};         // the least height, of a stay from aloft
inline constexpr Bound over_sail_plan{1.15, 1.4};     // top of the sail plan as stated, above the waterline
inline constexpr Bound over_length_overall{1.9, 2.2}; // height aloft, where no sail plan is stated
inline constexpr Bound over_spar{1.03, 1.1};          // along a spar, of its length
inline constexpr Bound drop_to_deck{0.2, 0.1};        // of length overall, the least from aloft to deck
inline constexpr Bound off_mast{0.025, 0.06};         // of the height of the mast, fore and aft or across
inline constexpr Bound above_heel{0.03, -1.0};        // of the height of the mast, the least along it
inline constexpr double off_mast_metres = 0.15;       // and not less than this
inline constexpr Bound off_sprit{0.18, 0.4};          // of the length of the bowsprit
inline constexpr Bound inboard_on_sprit{0.2, 0.11};   // the least along it
inline constexpr Bound under_bowsprit{1.9, 4.0}; // a bobstay or whisker stay, of the length of the bowsprit
inline constexpr Bound spreader_share{0.1, 0.06};    // the least length of a spreader, of half the beam
inline constexpr Bound spreader_rise{0.5, 0.7};      // over its length outwards
inline constexpr Bound swept_aft{42.0, 68.0};        // degrees from athwartships
inline constexpr Bound swept_forward{55.0, 68.0};    // the same; jumpers look well ahead
inline constexpr double sweeps_apart_degrees = 15.0; // of two spreaders of one mast
inline constexpr Bound along_mast_degrees{4.0, 0.3}; // the least angle of a stay from mast to deck
inline constexpr Bound off_mast_degrees{45.0, 70.0}; // the most
inline constexpr Bound pair_apart{0.1, 0.01};        // least distance from the centreline, of half the beam
inline constexpr Bound pair_on_hulls{0.12, 0.02};    // the same, ahead on a boat of several hulls
inline constexpr double pair_amidships = 0.3;        // the same near the mast
inline constexpr double one_height_metres = 0.25;    // of fittings that sit together
inline constexpr double upright =
    0.5; // a mast that leans by more than 60 degrees is being raised or lowered
inline constexpr double face_metres = 0.02,
                        face_lead = 0.04; // how far off the mast's line, and how steep, says which face

} // namespace sheerpole::boat_envelope
