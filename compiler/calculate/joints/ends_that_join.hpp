#pragma once

#include "model/end.hpp"

namespace sheerpole {

/// Whether two ends are made for each other.
bool ends_mate(const End& a, const End& b);

/// Whether two ends are not to be joined, whatever their dimensions: two eyes, two jaws, a stud and an eye.
/// Of these two jaws alone may go together, the small one inside the large one. An
/// end that is not stated may be anything. The two halves of a thread, or a tee and its slot, join each
/// other and nothing else; a jaw takes an eye or a plate. Of what may be joined some way (a hook over the
/// pin of a jaw) it says no. Source: geometry.
bool ends_never_join(const End& a, const End& b);

} // namespace sheerpole
