#include "rules/length_checks.hpp"

#include <array>

namespace sheerpole {

namespace {

constexpr std::array rows{
    CheckRow{"negative-body", check_negative_body},
    CheckRow{"splice-on-wire", check_splice_on_wire},
    CheckRow{"path-runs-upwards", check_path_runs_upwards},
    CheckRow{"routes-differ", check_routes_differ},
    CheckRow{"pair-differs", check_pair_differs},
    CheckRow{"cut-is-draft", check_cut_is_draft},
    CheckRow{"assumed-input", check_assumed_input},
    CheckRow{"expectation-missed", check_expectation_missed},
    CheckRow{"test-splice-reversed", check_test_splice_reversed},
};

} // namespace

std::span<const CheckRow> length_checks() {
  return rows;
}

} // namespace sheerpole
