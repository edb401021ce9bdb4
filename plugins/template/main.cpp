#include "driver/outside/plugin_main.hpp"
#include "plugins/template/template.hpp"

int main() {
  return sheerpole::plugin_main(sheerpole::Template());
}
