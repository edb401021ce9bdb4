#pragma once

#include "results/checked_rig.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// Builds a rig from short statements, for tests that need a whole boat and no rig file.
class RigBuilder {
public:
  explicit RigBuilder(std::string title) { rig_.boat.title = std::move(title); }

  /// Metres in boat axes. With `mirrored` the point is the starboard one and its port twin comes before it.
  void point(const std::string& name, double x, double y, double z, bool mirrored = false);
  void spreader(const std::string& name, const std::string& root, const std::string& tip);
  void material(const std::string& name, LineMaterial::Kind kind, const std::string& construction,
                const std::string& size, double millimetres);
  /// A fixed part, millimetres.
  void part(const std::string& kind, const std::string& name, const std::string& title, double length);
  /// An adjuster, millimetres.
  void adjuster(const std::string& kind, const std::string& name, const std::string& title, double shortest,
                double longest);
  void boat_fitting(const std::string& kind, const std::string& name, const std::string& title);

  /// `stack` lists names of parts from aloft to deck; "line" is the line, "line 455" one of 455 mm,
  /// "lashing 160" an adjuster set to 160 mm. With `mirrored` both sides are made.
  void stay(const std::string& name, const std::string& title, const std::string& material,
            const std::vector<std::string>& path, const std::vector<std::string>& stack,
            bool mirrored = false);
  /// Takes the path of the last stay away again and states its pin-to-pin instead; 0 leaves it unknown.
  void without_path(double stated_millimetres);

  CheckedRig checked() const;
  const Rig& rig() const { return rig_; }

private:
  Rig rig_;
  PointId find_point(const std::string& name) const;
  PartId find_part(const std::string& name) const;
};

/// Fractional sloop with two swept spreader pairs and rope shrouds. Invented boat.
CheckedRig pellimoor();
/// Masthead cutter in wire with a bridle and insulators. Invented boat.
CheckedRig grisolde();

} // namespace sheerpole
