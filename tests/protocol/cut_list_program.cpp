#include "driver/outside/plugin_main.hpp"
#include "plugins/cut-list/cut_list.hpp"

namespace {

/// The cut list as a program outside, under a name of its own: it must make the bytes of the one that is
/// built in.
struct OutsideCutList final : sheerpole::Backend {
  sheerpole::BackendDescription describe() const override {
    sheerpole::BackendDescription description = sheerpole::CutList().describe();
    description.name = "outside-cut-list";
    return description;
  }
  sheerpole::OutputBundle generate(const sheerpole::BackendRequest& request) const override {
    return sheerpole::CutList().generate(request);
  }
};

} // namespace

int main() {
  return sheerpole::plugin_main(OutsideCutList());
}
