#pragma once

#include <array>
#include <bit>
#include <cstddef>
#include <string_view>

namespace sheerpole {

/// The name of a fact: what a declaration states beyond the fields of its type, kept as written. The words
/// are those of the table of kinds; a test ties both.
struct FactName {
  std::string_view text;
  constexpr operator std::string_view() const { return text; }
};

/// All names of facts, each once; what is asked for under another name does not compile.
struct FactNames {
  FactName accessible{"accessible"};
  FactName after{"after"};
  FactName at{"at"};
  FactName axial_stiffness{"axial-stiffness"};
  FactName ballast{"ballast"};
  FactName barrier{"barrier"};
  FactName batch{"batch"};
  FactName beam{"beam"};
  FactName bearing_stress{"bearing-stress"};
  FactName bedding{"bedding"};
  FactName bedding_from{"bedding-from"};
  FactName before{"before"};
  FactName bench_tension{"bench-tension"};
  FactName bend{"bend"};
  FactName bending_stiffness{"bending-stiffness"};
  FactName bending_stiffness_across{"bending-stiffness-across"};
  FactName bending_stiffness_upright{"bending-stiffness-upright"};
  FactName body{"body"};
  FactName break_factor{"break-factor"};
  FactName break_load{"break-load"};
  FactName builder{"builder"};
  FactName bury{"bury"};
  FactName by{"by"};
  FactName chafe_gear{"chafe-gear"};
  FactName coldest{"coldest"};
  FactName contraction_rule{"contraction-rule"};
  FactName cord{"cord"};
  FactName covers{"covers"};
  FactName creep{"creep"};
  FactName creep_energy{"creep-energy"};
  FactName creep_temperature{"creep-temperature"};
  FactName creep_volume{"creep-volume"};
  FactName cut_from{"cut-from"};
  FactName cut_from_reason{"cut-from-reason"};
  FactName date{"date"};
  FactName deck_edge{"deck-edge"};
  FactName delivered_open{"delivered-open"};
  FactName displacement{"displacement"};
  FactName distribution{"distribution"};
  FactName dock_tension{"dock-tension"};
  FactName draws{"draws"};
  FactName droop{"droop"};
  FactName edge_radius{"edge-radius"};
  FactName efficiency{"efficiency"};
  FactName error{"error"};
  FactName estimate{"estimate"};
  FactName evidence{"evidence"};
  FactName fibre_section{"fibre-section"};
  FactName flag{"flag"};
  FactName for_whom{"for"};
  FactName foretriangle_base{"foretriangle-base"};
  FactName foretriangle_height{"foretriangle-height"};
  FactName frequency{"frequency"};
  FactName girth{"girth"};
  FactName gives{"gives"};
  FactName half_beam{"half-beam"};
  FactName head_aft{"head-aft"};
  FactName head_to_starboard{"head-to-starboard"};
  FactName hoist_gap{"hoist-gap"};
  FactName hold{"hold"};
  FactName home_port{"home-port"};
  FactName hottest{"hottest"};
  FactName hull_number{"hull-number"};
  FactName hung_at{"hung-at"};
  FactName installed{"installed"};
  FactName job{"job"};
  FactName kerf{"kerf"};
  FactName knot_factor{"knot-factor"};
  FactName knot_width{"knot-width"};
  FactName launched{"launched"};
  FactName least_offcut{"least-offcut"};
  FactName length{"length"};
  FactName length_overall{"length-overall"};
  FactName line_length{"line-length"};
  FactName linear_mass{"linear-mass"};
  FactName load{"load"};
  FactName load_factor{"load-factor"};
  FactName locked{"locked"};
  FactName locking{"locking"};
  FactName made{"made"};
  FactName made_by{"made-by"};
  FactName made_for{"made-for"};
  FactName mainsail_foot{"mainsail-foot"};
  FactName mainsail_hoist{"mainsail-hoist"};
  FactName mass{"mass"};
  FactName mast{"mast"};
  FactName material{"material"};
  FactName measured_where{"measured-where"};
  FactName metal{"metal"};
  FactName metallic_area{"metallic-area"};
  FactName method{"method"};
  FactName mizzen_foot{"mizzen-foot"};
  FactName mizzen_hoist{"mizzen-hoist"};
  FactName modulus{"modulus"};
  FactName nominal_length{"nominal-length"};
  FactName not_seen{"not-seen"};
  FactName note{"note"};
  FactName open_from{"open-from"};
  FactName open_to{"open-to"};
  FactName order_margin{"order-margin"};
  FactName over{"over"};
  FactName owner{"owner"};
  FactName pair_tolerance{"pair-tolerance"};
  FactName partners{"partners"};
  FactName partners_play{"partners-play"};
  FactName parts{"parts"};
  FactName pieces{"pieces"};
  FactName pin_break_load{"pin-break-load"};
  FactName pin_stress{"pin-stress"};
  FactName pins{"pins"};
  FactName pitch{"pitch"};
  FactName plane{"plane"};
  FactName plane_lean{"plane-lean"};
  FactName pull{"pull"};
  FactName pulse{"pulse"};
  FactName qualification{"qualification"};
  FactName rake{"rake"};
  FactName reference_temperature{"reference-temperature"};
  FactName remake_tolerance{"remake-tolerance"};
  FactName replaces{"replaces"};
  FactName report_date{"report-date"};
  FactName resolution{"resolution"};
  FactName revision{"revision"};
  FactName rigged{"rigged"};
  FactName righting_angle{"righting-angle"};
  FactName righting_moment{"righting-moment"};
  FactName round_to{"round-to"};
  FactName section{"section"};
  FactName secured{"secured"};
  FactName seed{"seed"};
  FactName seized{"seized"};
  FactName serving{"serving"};
  FactName set{"set"};
  FactName setting_load{"setting-load"};
  FactName shape{"shape"};
  FactName share{"share"};
  FactName sheer_at_mast{"sheer-at-mast"};
  FactName side_force{"side-force"};
  FactName size{"size"};
  FactName slope{"slope"};
  FactName sold_in{"sold-in"};
  FactName sort{"sort"};
  FactName spans{"spans"};
  FactName spare{"spare"};
  FactName spare_parts{"spare-parts"};
  FactName splice{"splice"};
  FactName standard_pull{"standard-pull"};
  FactName standard_temperature{"standard-temperature"};
  FactName steeve{"steeve"};
  FactName step{"step"};
  FactName stiffness{"stiffness"};
  FactName stretch{"stretch"};
  FactName stretch_share{"stretch-share"};
  FactName supplier{"supplier"};
  FactName taken_for{"taken-for"};
  FactName taken_up{"taken-up"};
  FactName taper_over{"taper-over"};
  FactName temperature{"temperature"};
  FactName tension{"tension"};
  FactName thermal{"thermal"};
  FactName throat{"throat"};
  FactName toggle{"toggle"};
  FactName true_length{"true-length"};
  FactName twisting_stiffness{"twisting-stiffness"};
  FactName unit{"unit"};
  FactName warmest{"warmest"};
  FactName waterline_length{"waterline-length"};
  FactName weak_link{"weak-link"};
  FactName weather{"weather"};
  FactName went{"went"};
  FactName where{"where"};
  FactName witness_hole{"witness-hole"};
  FactName from_heel{"from-heel"};
};
inline constexpr FactNames fact_names;

/// The same as a list.
inline std::array<FactName, sizeof(FactNames) / sizeof(FactName)> all_fact_names() {
  return std::bit_cast<std::array<FactName, sizeof(FactNames) / sizeof(FactName)>>(fact_names);
}

} // namespace sheerpole
