#include "base/translator.hpp"

namespace sheerpole {

namespace {

thread_local const Translator* spoken = nullptr;

} // namespace

Speaking::Speaking(const Translator& translator) : before_(spoken) {
  spoken = &translator;
}

Speaking::~Speaking() {
  spoken = before_;
}

const Translator* spoken_language() {
  return spoken;
}

} // namespace sheerpole
