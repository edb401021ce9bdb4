#include "backend/json/json.hpp"
#include "backend/json/json_parts.hpp"

namespace sheerpole {

namespace {

Json boat_json(const Boat& boat, const SourceSet& sources) {
  return {{"title", boat.title},
          {"sister_of", boat.sister_of},
          {"particulars", particulars_json(boat.particulars, sources)},
          {"pair_tolerance", sourced_json(boat.pair_tolerance, sources)},
          {"report_date", boat.report_date}};
}

Json spar_json(const Spar& spar, const SourceSet& sources) {
  return {{"name", spar.name},
          {"title", spar.title},
          {"sort", spar.sort},
          {"heel_mm",
           {json_millimetres(spar.heel.x), json_millimetres(spar.heel.y), json_millimetres(spar.heel.z)}},
          {"axes", spar.axes},
          {"provenance", provenance_json(spar.provenance, sources)},
          {"particulars", particulars_json(spar.particulars, sources)}};
}

Json point_json(const Point& point, const Rig& rig, const SourceSet& sources) {
  return {{"name", point.name},
          {"title", point.title},
          {"side", name_of(point.side)},
          {"x_mm", json_millimetres(point.position.x)},
          {"y_mm", json_millimetres(point.position.y)},
          {"z_mm", json_millimetres(point.position.z)},
          {"twin", point.twin ? Json(rig[*point.twin].name) : Json()},
          {"overridden", point.overridden},
          {"spar", point.spar},
          {"provenance", provenance_json(point.provenance, sources)},
          {"tolerance_mm", json_millimetres(point.tolerance)}};
}

Json spreader_json(const Spreader& spreader, const Rig& rig, const SourceSet& sources) {
  return {{"name", spreader.name},
          {"title", spreader.title},
          {"side", name_of(spreader.side)},
          {"hold", spreader.hold},
          {"root", rig[spreader.root].name},
          {"tip", rig[spreader.tip].name},
          {"particulars", particulars_json(spreader.particulars, sources)}};
}

Json material_json(const LineMaterial& material, const SourceSet& sources) {
  return {{"name", material.name},
          {"title", material.title},
          {"kind", name_of(material.kind)},
          {"construction", material.construction.text},
          {"grade", material.grade},
          {"size", material.size.name},
          {"diameter", sourced_json(material.diameter, sources)},
          {"break_load", sourced_json(material.break_load, sources)},
          {"particulars", particulars_json(material.particulars, sources)}};
}

Json splice_json(const Splice& splice, const SourceSet& sources) {
  return {{"name", splice.name},
          {"title", splice.title},
          {"bury", sourced_json(splice.bury, sources)},
          {"eye_allowance", sourced_json(splice.eye_allowance, sources)},
          {"tail_to_trim", sourced_json(splice.tail_to_trim, sources)},
          {"contraction", sourced_json(splice.contraction, sources)},
          {"recovered", sourced_json(splice.recovered, sources)},
          {"taper", splice.taper},
          {"particulars", particulars_json(splice.particulars, sources)}};
}

Json end_json(const End& end, const SourceSet& sources) {
  Json dimensions = Json::array();
  for (const EndDimension& dimension : end.dimensions)
    dimensions.push_back({{"name", dimension.name},
                          {"text", dimension.text},
                          {"length", sourced_json(dimension.length, sources)}});
  return {{"type", end.type}, {"dimensions", std::move(dimensions)}};
}

Json part_json(const Part& part, const SourceSet& sources) {
  Json screw;
  if (part.screw)
    screw = {{"thread", part.screw->thread.designation},
             {"diameter_mm", json_millimetres(part.screw->thread.diameter)},
             {"pitch_mm", json_millimetres(part.screw->thread.pitch)},
             {"pair", part.screw->pair},
             {"provenance", provenance_json(part.screw->provenance, sources)}};
  return {{"kind", part.kind},
          {"name", part.name},
          {"title", part.title},
          {"role", name_of(part.role)},
          {"length", sourced_json(part.length, sources)},
          {"shortest", sourced_json(part.shortest, sources)},
          {"longest", sourced_json(part.longest, sources)},
          {"screw", std::move(screw)},
          {"engaged_at_longest", sourced_json(part.engaged_at_longest, sources)},
          {"upper", end_json(part.upper, sources)},
          {"lower", end_json(part.lower, sources)},
          {"wrap", sourced_json(part.wrap, sources)},
          {"step", sourced_json(part.step, sources)},
          {"particulars", particulars_json(part.particulars, sources)}};
}

Json reading_json(const Reading& reading, const Rig& rig, const SourceSet& sources) {
  Json runs = Json::array();
  for (const Sourced<Length>& run : reading.runs)
    runs.push_back(sourced_json(run, sources));
  return {{"method", reading.method},
          {"runs", std::move(runs)},
          {"offset", sourced_json(reading.offset, sources)},
          {"mark", reading.mark},
          {"date", reading.date},
          {"by", reading.by},
          {"note", reading.note},
          {"hoist_offset", sourced_json(reading.hoist_offset, sources)},
          {"tape", reading.tape},
          {"old_line", reading.old_line ? Json(rig[*reading.old_line].name) : Json()},
          {"particulars", particulars_json(reading.particulars, sources)}};
}

Json item_json(const StackItem& item, const Rig& rig, const SourceSet& sources) {
  if (item.kind == StackItem::Kind::line)
    return {{"item", "line"},
            {"length", sourced_json(item.line_length, sources)},
            {"material", item.material ? Json(rig[*item.material].name) : Json()},
            {"in_hand", sourced_json(item.in_hand, sources)},
            {"in_hand_over", sourced_json(item.in_hand_over, sources)},
            {"stock", item.stock.empty() ? Json() : Json(item.stock)}};
  return {{"item", "part"},
          {"part", rig[item.part].name},
          {"count", item.count},
          {"set_length", sourced_json(item.set_length, sources)},
          {"open", sourced_json(item.open, sources)},
          {"hole", item.hole ? Json(*item.hole) : Json()},
          {"passes", item.passes ? Json(*item.passes) : Json()},
          {"splice", item.splice ? Json(rig[*item.splice].name) : Json()},
          {"spare_bury", sourced_json(item.spare_bury, sources)},
          {"removable", item.removable}};
}

Json stay_json(const Stay& stay, const Rig& rig, const SourceSet& sources) {
  Json path = Json::array();
  for (const PathStop& stop : stay.path)
    path.push_back({{"point", rig[stop.point].name}, {"passage", name_of(stop.passage)}});
  Json readings = Json::array();
  for (const Reading& reading : stay.readings)
    readings.push_back(reading_json(reading, rig, sources));
  Json stack = Json::array();
  for (const StackItem& item : stay.stack)
    stack.push_back(item_json(item, rig, sources));
  return {{"name", stay.name},
          {"title", stay.title},
          {"side", name_of(stay.side)},
          {"path", std::move(path)},
          {"stated_pin_to_pin", sourced_json(stay.stated_pin_to_pin, sources)},
          {"readings", std::move(readings)},
          {"material", rig[stay.material].name},
          {"duties", stay.duties},
          {"apart", stay.apart},
          {"particulars", particulars_json(stay.particulars, sources)},
          {"stack", std::move(stack)},
          {"replaces", stay.replaces ? Json(rig[*stay.replaces].name) : Json()}};
}

} // namespace

Json rig_json(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  const SourceSet& sources = checked.sources();
  Json json{{"boat", boat_json(rig.boat, sources)}};
  const auto fill = [&json](const char* key, const auto& things, auto&& as_json) {
    json[key] = Json::array();
    for (const auto& thing : things)
      json[key].push_back(as_json(thing));
  };
  fill("spars", rig.spars, [&](const Spar& spar) { return spar_json(spar, sources); });
  fill("points", rig.points, [&](const Point& point) { return point_json(point, rig, sources); });
  fill("spreaders", rig.spreaders,
       [&](const Spreader& spreader) { return spreader_json(spreader, rig, sources); });
  fill("materials", rig.materials, [&](const LineMaterial& line) { return material_json(line, sources); });
  fill("splices", rig.splices, [&](const Splice& splice) { return splice_json(splice, sources); });
  fill("parts", rig.parts, [&](const Part& part) { return part_json(part, sources); });
  fill("stays", rig.stays, [&](const Stay& stay) { return stay_json(stay, rig, sources); });
  add_records_json(checked, json);
  return json;
}

} // namespace sheerpole
