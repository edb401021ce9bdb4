#pragma once

#include "calculate/tune/tune_model.hpp"

#include <map>
#include <optional>
#include <vector>

namespace sheerpole {

/// A place of the boat as the statics have it: mm in boat axes.
statics::Vector millimetres_of(const Vector3& place);

/// What stands and what holds it: the spars that stays and spreaders are on, spreaders, the hull. First
/// every point that something is made fast to is named, then all is made.
class TuneFrame {
public:
  TuneFrame(const Rig& rig, TuneInputs& inputs, TuneModel& model);

  void add(PointId point);
  void make();
  /// Of a point that was added. Nothing when what it stands on could not be made.
  std::optional<statics::NodeId> node_of(PointId point) const;

private:
  struct OnSpar {
    PointId point;
    double along_mm = 0.0;
  };

  std::optional<std::size_t> spar_of(PointId point) const;
  std::optional<std::size_t> spreader_with_tip(PointId point) const;
  void make_spar(std::size_t spar, std::vector<OnSpar>& fittings);
  void hold_heel(const Spar& spar, const Remark& of, statics::NodeId heel, statics::Vector along);
  std::optional<double> partners_mm(const Spar& spar, const Remark& of, statics::Vector along,
                                    double head_mm);
  void make_spreader(const Spreader& spreader);
  statics::NodeId new_node(statics::Vector place);
  bool carries_fixed_spreader(std::size_t spar) const;
  bool is_junction(PointId point) const;

  const Rig& rig_;
  TuneInputs& inputs_;
  TuneModel& model_;
  std::map<PointId, std::optional<statics::NodeId>> nodes_;
  std::vector<PointId> hull_;
  std::vector<std::size_t> spreaders_;
  std::map<std::size_t, std::vector<OnSpar>> on_spars_;
};

} // namespace sheerpole
