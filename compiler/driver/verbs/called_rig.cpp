#include "driver/verbs/called_rig.hpp"

namespace sheerpole {

std::string called(const std::string& file, const CompileOptions& rig) {
  std::string name = file;
  if (!rig.as_of.empty())
    name += " as " + rig.as_of;
  for (std::size_t i = 0; i < rig.settings.size(); ++i)
    name += (i == 0 ? " with " : ", ") + rig.settings[i];
  return name;
}

} // namespace sheerpole
