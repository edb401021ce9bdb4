#include "driver/outside/plugin_main.hpp"
#include "plugins/echo/echo.hpp"

/// echo as a program of its own: sheerpole build boat.rig --into out --outside .../sheerpole-echo
int main() {
  return sheerpole::plugin_main(sheerpole::Echo());
}
