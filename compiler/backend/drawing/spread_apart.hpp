#pragma once

#include <vector>

namespace sheerpole {

/// Middles of bands of the given heights that lie one below the other without overlap between `top` and
/// `bottom`, each as near as can be to the wanted middle (least squares), in their order.
std::vector<double> spread_apart(const std::vector<double>& wanted, const std::vector<double>& heights,
                                 double top, double bottom);

} // namespace sheerpole
