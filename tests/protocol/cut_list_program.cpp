#include "driver/outside/plugin_main.hpp"
#include "plugins/cut-list/cut_list.hpp"

/// The cut list as a program outside: it must make the bytes of the one that is built in.
int main() {
  return sheerpole::plugin_main(sheerpole::CutList());
}
