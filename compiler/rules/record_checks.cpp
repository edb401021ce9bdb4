#include "rules/record_checks.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array rows{
    CheckRow{"reading-bare", check_reading_bare},
    CheckRow{"tape-sags", check_tape_sags},
    CheckRow{"reading-old", check_reading_old},
    CheckRow{"made-differs", check_made_differs},
    CheckRow{"number-without-source", check_number_without_source},
    CheckRow{"installed-without-evidence", check_installed_without_evidence},
    CheckRow{"line-old", check_line_old},
    CheckRow{"hardware-old", check_hardware_old},
    CheckRow{"marked-renew", check_marked_renew},
    CheckRow{"marked-watch", check_marked_watch},
    CheckRow{"inspection-old", check_inspection_old},
};

} // namespace

std::span<const CheckRow> record_checks() {
  return rows;
}

} // namespace sheerpole
