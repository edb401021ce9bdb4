#pragma once

#include "calculate/cut/cut_phrase.hpp"
#include "calculate/derived.hpp"
#include "results/checked_rig.hpp"

#include <memory>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sheerpole {

/// A rig with what was calculated, put together by hand so that a test of an output rests on no other
/// room's work. The cap shroud is that of an invented 9.75 m sloop, worked on paper: pin-to-pin 11642,
/// hardware 16 above and 38 + 160 + 46 below, body 11382; each splice uses 72 d of bury (648), 12 d of eye
/// (108) and 8 % of the bury (51.84), so the cut is 11382 + 2 x 807.84 = 12997.68 mm.
class SampleRig {
public:
  Rig rig;
  Derived derived;
  std::vector<Diagnostic> findings;
  SourceSet sources;

  SampleRig() {
    rig.boat.title = "Pellimoor";
    sources.add(SourceText(SourceId{0}, "pellimoor.rig", "language 1\nstay cap-shroud {\n}\n"));
    rope_ = add_line(LineMaterial::Kind::rope, "hmpe-9", "12-strand HMPE heat-set", "", "9 mm", 9.0);
    wire_ = add_line(LineMaterial::Kind::wire, "wire-6", "1x19", "316 stainless", "6 mm", 6.0);
    rig.splices.push_back(
        {.name = "long-bury",
         .title = "",
         .bury = {{72.0, true}, known(SourceClass::practice, "", "72 d"), {}},
         .eye_allowance = {},
         .tail_to_trim = {},
         .contraction = Sourced<double>{0.08, known(SourceClass::measured, "", "8 %"), {}},
         .recovered = {},
         .taper = "",
         .place = {}});
    tang_ = add_part("tang", "tang-10", Part::Role::boat_fitting, 0.0);
    thimble_ = add_part("thimble", "thimble-9", Part::Role::fixed, 16.0);
    deadeye_ = add_part("deadeye", "deadeye-9", Part::Role::fixed, 38.0);
    lashing_ = add_part("lashing", "lashing-4", Part::Role::adjuster, 0.0);
    rig.parts[lashing_.index()].shortest = length(60.0, SourceClass::maker);
    rig.parts[lashing_.index()].longest = length(260.0, SourceClass::maker);
    block_ = add_part("link", "lash-block", Part::Role::fixed, 46.0);
    add_point("cap-tang", Side::port, -50.0, -70.0, 12620.0);
    add_point("cap-tang", Side::starboard, -50.0, 70.0, 12620.0);
    add_point("plate-a", Side::port, -620.0, -1430.0, 1100.0);
    add_point("plate-a", Side::starboard, -620.0, 1430.0, 1100.0);
  }

  static Provenance known(SourceClass source_class, std::string note = "", std::string written = "") {
    Provenance provenance;
    provenance.source_class = source_class;
    provenance.note = std::move(note);
    provenance.written = std::move(written);
    return provenance;
  }
  static Sourced<Length> length(double mm, SourceClass source_class, std::string note = "",
                                std::string written = "") {
    return {Length::millimetres(mm), known(source_class, std::move(note), std::move(written)), {}};
  }
  static Term term(TermKind kind, double mm, Provenance provenance, TermSubject of = {}, Remark how = {}) {
    return {kind, Length::millimetres(mm), std::move(provenance), std::move(of), std::move(how)};
  }
  static LengthSum sum(SumKind kind, std::vector<Term> terms) {
    return {.kind = kind, .unknown = false, .terms = std::move(terms), .unknown_source = {}};
  }
  /// A remark of these words, for a test of where it is printed.
  static Remark saying(std::string text) { return {AdjusterPhrase::as_written, {Words{std::move(text)}}}; }

  /// A draft is no concern of most tests: what was measured is beyond doubt.
  static void measured_twice(DerivedStay& stay) {
    stay.measurement.by = MeasuredBy::statement;
    stay.measurement.confirmed = Confirmation{ConfirmedBy::second_run, {}, Length{}};
  }

  /// Adds one cap shroud with what was calculated for it. `pin_to_pin_mm` is 11642 by the drawing.
  StayId add_cap_shroud(Side side, double pin_to_pin_mm = 11642.0) {
    const StayId id = add_stay("cap-shroud", "Cap shroud", side, rope_);
    Stay& stay = rig.stays[id.index()];
    const std::uint32_t first_point = side == Side::port ? 0 : 1;
    stay.path = {{PointId{first_point}, Passage::end, {}}, {PointId{first_point + 2}, Passage::end, {}}};
    stay.stated_pin_to_pin = length(pin_to_pin_mm, SourceClass::drawn, "sail plan 12");
    stay.stack = {part_item(tang_),    part_item(thimble_), line_item(),
                  part_item(deadeye_), part_item(lashing_), part_item(block_)};
    stay.stack[1].splice = SpliceId{0};
    stay.stack[3].splice = SpliceId{0};
    stay.stack[4].set_length = length(160.0, SourceClass::drawn);

    DerivedStay derived_stay;
    derived_stay.stay = id;
    derived_stay.route = LengthRoute::stated;
    measured_twice(derived_stay);
    derived_stay.pin_to_pin =
        sum(SumKind::pin_to_pin,
            {term(TermKind::pins_as_stated, pin_to_pin_mm, known(SourceClass::drawn, "sail plan 12"))});
    std::vector<Term> body{
        term(TermKind::pin_to_pin, pin_to_pin_mm, known(SourceClass::drawn, "sail plan 12")),
        term(TermKind::part, -16.0, known(SourceClass::maker, "sheet 4"), TakenPart{thimble_}),
        term(TermKind::part, -38.0, known(SourceClass::maker), TakenPart{deadeye_}),
        term(TermKind::setting, -160.0, known(SourceClass::drawn), TakenPart{lashing_}),
        term(TermKind::part, -46.0, known(SourceClass::measured, "", "1 13/16 in"), TakenPart{block_})};
    derived_stay.body = sum(SumKind::body, body);
    Piece piece = piece_of(id, rope_, sum(SumKind::body, std::move(body)));
    const Length rope = Length::millimetres(9.0);
    for (const WhichEnd end : {WhichEnd::upper, WhichEnd::lower}) {
      piece.cut.terms.push_back(term(TermKind::eye_allowance, 108.0,
                                     known(SourceClass::practice, "", "12 d"), end,
                                     {LengthPhrase::diameters, {Number{12.0}, rope}}));
      piece.cut.terms.push_back(term(TermKind::bury, 648.0, known(SourceClass::practice, "", "72 d"), end,
                                     {LengthPhrase::diameters, {Number{72.0}, rope}}));
      piece.cut.terms.push_back(term(TermKind::contraction, 51.84, known(SourceClass::measured, "", "8 %"),
                                     end,
                                     {CutPhrase::share_of, {Share{0.08}, Length::millimetres(648.0)}}));
    }
    piece.upper = {.part = thimble_, .splice = SpliceId{0}};
    piece.lower = {.part = deadeye_, .splice = SpliceId{0}};
    derived_stay.pieces.push_back(std::move(piece));
    TakeUp adjuster;
    adjuster.stay = id;
    adjuster.item = 4;
    adjuster.part = lashing_;
    adjuster.set = length(160.0, SourceClass::drawn);
    adjuster.to_tighten = Length::millimetres(100.0);
    adjuster.to_slacken = Length::millimetres(100.0);
    derived_stay.adjusters.push_back(adjuster);
    derived.stays.push_back(std::move(derived_stay));
    return id;
  }

  /// Adds a bare wire on the centreline whose length is only a mark on a cord; `offset_mm` is the hook's.
  StayId add_unknown_stay(double offset_mm) {
    const StayId id = add_stay("forestay", "Forestay", Side::centre, wire_);
    rig.stays[id.index()].stack = {part_item(tang_), line_item()};
    DerivedStay derived_stay;
    derived_stay.stay = id;
    derived_stay.route = LengthRoute::unknown;
    measured_twice(derived_stay);
    LengthSum pins = sum(SumKind::pin_to_pin, {});
    pins.unknown = true;
    pins.unknown_source = known(SourceClass::measured, "mark on the messenger: red whipping");
    if (offset_mm != 0.0)
      pins.terms.push_back(term(TermKind::hook_offset, -offset_mm, known(SourceClass::measured)));
    LengthSum body = sum(SumKind::body, {});
    body.unknown = true;
    body.unknown_source = pins.unknown_source;
    if (offset_mm != 0.0)
      body.terms.push_back(
          term(TermKind::pin_to_pin, -offset_mm, known(SourceClass::measured), {}, saying("X - offset")));
    derived_stay.pin_to_pin = pins;
    derived_stay.body = body;
    Piece piece = piece_of(id, wire_, body);
    piece.cut.unknown = true;
    piece.cut.unknown_source = pins.unknown_source;
    piece.cut.terms.push_back(term(TermKind::inserted, 52.0, known(SourceClass::maker), WhichEnd::lower));
    derived_stay.pieces.push_back(std::move(piece));
    derived.stays.push_back(std::move(derived_stay));
    return id;
  }

  Piece& piece(StayId stay) { return derived.stays[stay.index()].pieces.front(); }

  /// The rig is copied, so that a test can go on changing it.
  CheckedRig checked() const {
    return *CheckedRig::make(std::make_shared<SourceSet>(sources), std::make_shared<const Rig>(rig),
                             std::make_shared<const Derived>(derived), findings);
  }

  MaterialId add_line(LineMaterial::Kind kind, std::string name, std::string construction,
                      std::string grade, std::string size, double mm) {
    rig.materials.push_back({.kind = kind,
                             .name = std::move(name),
                             .title = "",
                             .construction = read_construction(construction),
                             .grade = std::move(grade),
                             .size = {std::move(size), NamedSize::System::metric, Length::millimetres(mm)},
                             .diameter = length(mm, SourceClass::maker),
                             .break_load = {},
                             .place = {}});
    return MaterialId{static_cast<std::uint32_t>(rig.materials.size() - 1)};
  }

  PartId add_part(std::string_view kind, std::string name, Part::Role role, double mm) {
    Part part;
    part.kind = find_word<PartKind>(kind).value();
    part.name = std::move(name);
    part.role = role;
    if (role == Part::Role::fixed)
      part.length = length(mm, SourceClass::maker);
    rig.parts.push_back(std::move(part));
    return PartId{static_cast<std::uint32_t>(rig.parts.size() - 1)};
  }

  void add_point(const std::string& base, Side side, double x, double y, double z) {
    Point point;
    point.base = base;
    point.name = side == Side::centre ? base : base + "." + std::string(name_of(side));
    point.side = side;
    point.position = {Length::millimetres(x), Length::millimetres(y), Length::millimetres(z)};
    point.provenance = known(SourceClass::drawn, "sail plan 12");
    rig.points.push_back(std::move(point));
  }

  StayId add_stay(const std::string& base, std::string title, Side side, MaterialId material) {
    Stay stay;
    stay.base = base;
    stay.name = side == Side::centre ? base : base + "." + std::string(name_of(side));
    stay.title = std::move(title);
    stay.side = side;
    stay.material = material;
    rig.stays.push_back(std::move(stay));
    return StayId{static_cast<std::uint32_t>(rig.stays.size() - 1)};
  }

  static StackItem part_item(PartId part) {
    StackItem item;
    item.part = part;
    return item;
  }
  static StackItem line_item() {
    StackItem item;
    item.kind = StackItem::Kind::line;
    return item;
  }

private:
  Piece piece_of(StayId id, MaterialId material, LengthSum body) const {
    Piece piece;
    piece.name = rig[id].name;
    piece.stay = id;
    piece.material = material;
    piece.cut = sum(SumKind::cut, {{TermKind::body, body.known(), known(SourceClass::computed)}});
    piece.body = std::move(body);
    return piece;
  }

  MaterialId rope_;
  MaterialId wire_;
  PartId tang_;
  PartId thimble_;
  PartId deadeye_;
  PartId lashing_;
  PartId block_;
};

} // namespace sheerpole
