#include "unit/drawing/boats_to_draw.hpp"

#include "calculate/calculate.hpp"

#include <algorithm>
#include <cstdlib>
#include <stdexcept>

namespace sheerpole {

namespace {

std::string on_side(const std::string& name, Side side) {
  return side == Side::centre ? name : name + "." + std::string(name_of(side));
}

Sourced<Length> stated(double millimetres) {
  return {Length::millimetres(millimetres), {}, {}};
}

} // namespace

void RigBuilder::point(const std::string& name, double x, double y, double z, bool mirrored) {
  const auto add = [&](Side side, double across) {
    Point point;
    point.base = name;
    point.name = on_side(name, side);
    point.side = side;
    point.position = {Length::metres(x), Length::metres(across), Length::metres(z)};
    rig_.points.push_back(point);
  };
  if (!mirrored)
    return add(Side::centre, y);
  const auto port = static_cast<std::uint32_t>(rig_.points.size());
  add(Side::port, -y);
  add(Side::starboard, y);
  rig_.points[port].twin = PointId{port + 1};
  rig_.points[port + 1].twin = PointId{port};
}

void RigBuilder::spreader(const std::string& name, const std::string& root, const std::string& tip) {
  for (const Side side : {Side::port, Side::starboard})
    rig_.spreaders.push_back({on_side(name, side),
                              "",
                              side,
                              find_point(on_side(root, side)),
                              find_point(on_side(tip, side)),
                              {}});
}

void RigBuilder::material(const std::string& name, LineMaterial::Kind kind, const std::string& construction,
                          const std::string& size, double millimetres) {
  LineMaterial material;
  material.kind = kind;
  material.name = name;
  material.construction = read_construction(construction);
  material.size = {size, NamedSize::System::metric, Length::millimetres(millimetres)};
  material.diameter = stated(millimetres);
  rig_.materials.push_back(material);
}

void RigBuilder::part(const std::string& kind, const std::string& name, const std::string& title,
                      double length) {
  Part part;
  part.kind = find_word<PartKind>(kind).value();
  part.name = name;
  part.title = title;
  part.length = stated(length);
  rig_.parts.push_back(part);
}

void RigBuilder::adjuster(const std::string& kind, const std::string& name, const std::string& title,
                          double shortest, double longest) {
  Part part;
  part.kind = find_word<PartKind>(kind).value();
  part.name = name;
  part.title = title;
  part.role = Part::Role::adjuster;
  part.shortest = stated(shortest);
  part.longest = stated(longest);
  rig_.parts.push_back(part);
}

void RigBuilder::boat_fitting(const std::string& kind, const std::string& name, const std::string& title) {
  Part part;
  part.kind = find_word<PartKind>(kind).value();
  part.name = name;
  part.title = title;
  part.role = Part::Role::boat_fitting;
  rig_.parts.push_back(part);
}

void RigBuilder::stay(const std::string& name, const std::string& title, const std::string& material,
                      const std::vector<std::string>& path, const std::vector<std::string>& stack,
                      bool mirrored) {
  const auto add = [&](Side side) {
    Stay stay;
    stay.base = name;
    stay.name = on_side(name, side);
    stay.title = title;
    stay.side = side;
    for (const std::string& stop : path) {
      const bool paired = std::any_of(rig_.points.begin(), rig_.points.end(),
                                      [&](const Point& point) { return point.base == stop && point.twin; });
      const Passage passage =
          &stop == &path.front() || &stop == &path.back() ? Passage::end : Passage::free;
      stay.path.push_back({find_point(paired ? on_side(stop, side) : stop), passage, {}});
    }
    const auto found = std::find_if(rig_.materials.begin(), rig_.materials.end(),
                                    [&](const LineMaterial& one) { return one.name == material; });
    if (found == rig_.materials.end())
      throw std::logic_error("no material " + material);
    stay.material = MaterialId{static_cast<std::uint32_t>(found - rig_.materials.begin())};
    for (const std::string& entry : stack) {
      const std::size_t blank = entry.find(' ');
      StackItem item;
      std::optional<Sourced<Length>> number;
      if (blank != std::string::npos)
        number = stated(std::stoi(entry.substr(blank + 1)));
      const std::string word = entry.substr(0, blank);
      if (word == "line") {
        item.kind = StackItem::Kind::line;
        item.line_length = number;
      } else {
        item.part = find_part(word);
        item.set_length = number;
      }
      stay.stack.push_back(item);
    }
    rig_.stays.push_back(stay);
  };
  if (!mirrored)
    return add(Side::centre);
  add(Side::port);
  add(Side::starboard);
}

void RigBuilder::without_path(double stated_millimetres) {
  rig_.stays.back().path.clear();
  if (stated_millimetres > 0)
    rig_.stays.back().stated_pin_to_pin = stated(stated_millimetres);
}

CheckedRig RigBuilder::checked() const {
  std::optional<CheckedRig> checked =
      CheckedRig::make(std::make_shared<SourceSet>(), std::make_shared<const Rig>(rig_),
                       std::make_shared<const Derived>(calculate(rig_)), {});
  return std::move(checked).value();
}

PointId RigBuilder::find_point(const std::string& name) const {
  for (std::size_t i = 0; i < rig_.points.size(); ++i)
    if (rig_.points[i].name == name)
      return PointId{static_cast<std::uint32_t>(i)};
  throw std::logic_error("no point " + name);
}

PartId RigBuilder::find_part(const std::string& name) const {
  for (std::size_t i = 0; i < rig_.parts.size(); ++i)
    if (rig_.parts[i].name == name)
      return PartId{static_cast<std::uint32_t>(i)};
  throw std::logic_error("no part " + name);
}

CheckedRig pellimoor() {
  using enum LineMaterial::Kind;
  RigBuilder b("Pellimoor");
  b.point("forestay-tang", 0.090, 0, 12.700);
  b.point("stem", 3.540, 0, 1.400);
  b.point("cap-tang", -0.050, 0.070, 12.620, true);
  b.point("root-2", -0.030, 0.055, 9.050, true);
  b.point("tip-2", -0.324, 0.820, 9.130, true);
  b.point("root-1", -0.030, 0.060, 5.450, true);
  b.point("tip-1", -0.468, 1.200, 5.540, true);
  b.point("intermediate-tang", -0.040, 0.060, 8.980, true);
  b.point("lower-tang", -0.040, 0.065, 5.380, true);
  b.point("plate-a", -0.620, 1.430, 1.100, true);
  b.point("plate-a-aft", -0.660, 1.430, 1.100, true);
  b.point("plate-b", -0.580, 1.280, 1.130, true);
  b.point("masthead-aft", -0.280, 0, 14.600);
  b.point("transom", -6.020, 0, 1.220);
  b.spreader("upper-spreader", "root-2", "tip-2");
  b.spreader("lower-spreader", "root-1", "tip-1");

  b.material("wire-6", wire, "1x19", "6 mm", 6);
  b.material("hmpe-9", rope, "12-strand HMPE heat-set", "9 mm", 9);
  b.material("hmpe-7", rope, "12-strand HMPE heat-set", "7 mm", 7);
  b.boat_fitting("tang", "tang", "tang on the mast");
  b.boat_fitting("chainplate", "chainplate-a", "chainplate");
  b.part("toggle", "jaw-toggle", "jaw toggle, pin to wire-terminal shoulder", 82);
  b.adjuster("turnbuckle", "drum-turnbuckle", "turnbuckle inside the drum", 225, 335);
  b.part("link", "long-links", "long-link plates to stem pin", 150);
  b.part("thimble", "thimble-9", "thimble, 10 mm pin", 16);
  b.part("thimble", "thimble-7", "thimble, 8 mm pin", 14);
  b.part("deadeye", "deadeye-9", "dead-eye", 38);
  b.part("deadeye", "deadeye-7", "dead-eye", 32);
  b.adjuster("lashing", "lashing-9", "lashing", 60, 260);
  b.adjuster("lashing", "lashing-7", "lashing", 60, 240);
  b.part("link", "lash-block", "lash block to 10 mm chainplate pin", 46);
  b.part("thimble", "thimble-below", "thimble at the adjuster", 30);
  b.adjuster("tackle", "backstay-tackle", "4:1 adjuster, eased", 350, 900);
  b.part("link", "lower-block", "lower block to transom pin", 55);

  b.stay("forestay", "Forestay (inside foil)", "wire-6", {"forestay-tang", "stem"},
         {"tang", "jaw-toggle", "line", "drum-turnbuckle 280", "long-links", "chainplate-a"});
  b.stay("cap-shroud", "Cap shroud", "hmpe-9", {"cap-tang", "tip-2", "tip-1", "plate-a"},
         {"tang", "thimble-9", "line", "deadeye-9", "lashing-9 160", "lash-block", "chainplate-a"}, true);
  b.stay("intermediate", "Intermediate", "hmpe-7", {"intermediate-tang", "tip-1", "plate-a-aft"},
         {"tang", "thimble-7", "line", "deadeye-7", "lashing-7 150", "lash-block", "chainplate-a"}, true);
  b.stay("lower-shroud", "Lower shroud", "hmpe-9", {"lower-tang", "plate-b"},
         {"tang", "thimble-9", "line", "deadeye-9", "lashing-9 160", "lash-block", "chainplate-a"}, true);
  b.stay(
      "backstay", "Backstay with 4:1 adjuster", "hmpe-7", {"masthead-aft", "transom"},
      {"tang", "thimble-7", "line", "thimble-below", "backstay-tackle 750", "lower-block", "chainplate-a"});
  return b.checked();
}

CheckedRig grisolde() {
  using enum LineMaterial::Kind;
  RigBuilder b("Grisolde");
  b.point("forestay-pin", 0.120, 0, 16.700);
  b.point("stem", 5.170, 0, 1.750);
  b.point("inner-tang", 0.100, 0, 12.400);
  b.point("inner-pad", 3.300, 0, 1.620);
  b.point("cap-tang", 0, 0.090, 16.660, true);
  b.point("root-2", 0, 0.085, 11.550, true);
  b.point("tip-2", -0.010, 0.950, 11.640, true);
  b.point("root-1", 0, 0.085, 6.350, true);
  b.point("tip-1", -0.010, 1.420, 6.430, true);
  b.point("intermediate-tang", 0, 0.085, 11.450, true);
  b.point("lower-tang-forward", 0.050, 0.085, 6.250, true);
  b.point("lower-tang-aft", -0.050, 0.085, 6.250, true);
  b.point("plate-cap", -0.030, 1.720, 1.320, true);
  b.point("plate-intermediate", 0.030, 1.700, 1.320, true);
  b.point("plate-forward", 0.850, 1.660, 1.340, true);
  b.point("plate-aft", -0.950, 1.680, 1.300, true);
  b.point("masthead-aft", -0.160, 0, 16.720);
  b.point("triangle-plate", -5.105, 0, 4.731);
  b.point("quarter", -6.500, 1.050, 1.350, true);
  b.point("runner-tang", -0.100, 0.060, 12.400, true);
  b.point("runner-block", -4.700, 1.350, 1.300, true);
  b.spreader("upper-spreader", "root-2", "tip-2");
  b.spreader("lower-spreader", "root-1", "tip-1");

  b.material("wire-38", wire, "1x19", "3/8 in", 9.525);
  b.material("wire-516", wire, "1x19", "5/16 in", 7.9375);
  b.material("hmpe-11", rope, "12-strand HMPE heat-set", "11 mm", 11);
  b.material("hmpe-9", rope, "12-strand HMPE heat-set", "9 mm", 9);
  b.boat_fitting("tang", "tang", "tang on the mast");
  b.boat_fitting("chainplate", "chainplate", "chainplate");
  b.boat_fitting("junction", "triangle", "triangle plate");
  b.part("toggle", "toggle-58", "toggle, 5/8 in pin to terminal shoulder", 95);
  b.adjuster("turnbuckle", "turnbuckle-58", "turnbuckle 5/8 in", 320, 470);
  b.adjuster("turnbuckle", "turnbuckle-12", "turnbuckle 1/2 in", 265, 395);
  b.part("link", "furler-links", "link plates under the furler", 180);
  b.part("thimble", "thimble-11", "thimble, 1/2 in pin", 20);
  b.part("thimble", "thimble-11-below", "thimble to lever jaw", 35);
  b.adjuster("lever", "lever", "quick-release lever, closed", 300, 410);
  b.part("toggle", "strap-toggle", "strap toggle to deck pad", 48);
  b.part("terminal", "eye-58", "marine eye, 5/8 in pin", 70);
  b.part("terminal", "eye-12", "marine eye, 1/2 in pin", 62);
  b.part("insulator", "insulator", "insulator", 150);
  b.part("link", "plate-pin", "pin to plate centre", 30);
  b.part("link", "plate-pin-below", "plate centre to pin", 35);
  b.part("thimble", "thimble-9", "thimble, 1/2 in pin", 18);
  b.part("thimble", "thimble-9-below", "thimble to upper block", 30);
  b.adjuster("tackle", "runner-tackle", "tackle, set up", 400, 1900);

  b.stay("forestay", "Forestay", "wire-38", {"forestay-pin", "stem"},
         {"tang", "toggle-58", "line", "turnbuckle-58 395", "furler-links", "chainplate"});
  b.stay("inner-stay", "Inner stay, removable", "hmpe-11", {"inner-tang", "inner-pad"},
         {"tang", "thimble-11", "line", "thimble-11-below", "lever 300", "strap-toggle", "chainplate"});
  b.stay("cap-shroud", "Cap shroud", "wire-38", {"cap-tang", "tip-2", "tip-1", "plate-cap"},
         {"tang", "eye-58", "line", "turnbuckle-58 395", "chainplate"}, true);
  b.stay("intermediate", "Intermediate", "wire-516", {"intermediate-tang", "tip-1", "plate-intermediate"},
         {"tang", "eye-12", "line", "turnbuckle-12 330", "chainplate"}, true);
  b.stay("lower-forward", "Forward lower", "wire-516", {"lower-tang-forward", "plate-forward"},
         {"tang", "eye-12", "line", "turnbuckle-12 330", "chainplate"}, true);
  b.stay("lower-aft", "Aft lower", "wire-516", {"lower-tang-aft", "plate-aft"},
         {"tang", "eye-12", "line", "turnbuckle-12 330", "chainplate"}, true);
  b.stay("backstay-upper", "Backstay, upper leg", "wire-38", {"masthead-aft", "triangle-plate"},
         {"tang", "eye-58", "line 455", "insulator", "line", "insulator", "line 1025", "eye-58",
          "plate-pin", "triangle"});
  b.stay("backstay-bridle", "Backstay, bridle leg", "wire-516", {"triangle-plate", "quarter"},
         {"triangle", "plate-pin-below", "eye-12", "line", "turnbuckle-12 330", "chainplate"}, true);
  b.stay("runner", "Running backstay", "hmpe-9", {"runner-tang", "runner-block"},
         {"tang", "thimble-9", "line", "thimble-9-below", "runner-tackle 600", "chainplate"}, true);
  return b.checked();
}

} // namespace sheerpole
