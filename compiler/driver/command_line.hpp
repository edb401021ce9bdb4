#pragma once

#include <functional>

namespace CLI {
class App;
}

namespace sheerpole {

/// What the words of the command line ask for; it returns an ExitCode.
using AskedFor = std::function<int()>;

// Each verb adds itself: its word, its help, its options and, when it is the one that stands on the command
// line, what is asked for. All that it has besides stays in its own file.
namespace begin_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace check_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace build_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace changes_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace fleet_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace find_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace plan_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace seal_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace verify_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace enter_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace mend_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace show_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace tidy_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace editor_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace watch_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace page_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace list_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace explain_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace help_verb {
void add_to(CLI::App& app, AskedFor& asked);
}
namespace version_verb {
void add_to(CLI::App& app, AskedFor& asked);
}

/// The whole command line with every verb, for whoever walks it: pages, completions.
void describe_command_line(CLI::App& app, AskedFor& asked);

/// Reads the command line and does what it asks for.
int run_command_line(int argument_count, char** arguments);

} // namespace sheerpole
