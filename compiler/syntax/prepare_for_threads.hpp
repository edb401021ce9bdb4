#pragma once

namespace sheerpole {

/// Fills in what all parsers share of the grammar and would otherwise fill in at their first need, without
/// a lock that covers it. To be called once before several threads read files at the same time.
void prepare_for_threads();

} // namespace sheerpole
