#pragma once

#include <string>

namespace sheerpole {

/// A temperature inside a sentence, whole degrees: "-10 degC".
std::string temperature_text(double kelvin);

} // namespace sheerpole
