#pragma once

#include "base/calendar_day.hpp"
#include "base/result.hpp"
#include "model/rig.hpp"
#include "source/source_set.hpp"
#include "units/named_size.hpp"
#include "units/thread.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// What is looked for, in each way in which the words can be read.
struct Sought {
  std::string text;                  ///< as asked
  std::vector<std::string> words;    ///< of it, in small letters
  std::optional<NamedSize> size;     ///< "1/2 in": of a pin, a line, a socket, a thread
  std::optional<Thread> thread;      ///< "M12", "1/2-20 UNF"
  std::optional<CalendarDay> before; ///< "before 2016-05-01"; then nothing else is looked for
};

/// The error is what to say of words that can not be looked for.
Result<Sought, std::string> read_sought(const std::string& text);

/// The words of a text in small letters (ASCII), without the signs between them.
std::vector<std::string> words_of(std::string_view text);

/// Whether the text is the one that is sought, whatever the size of its letters (ASCII).
bool is_sought(const Sought& sought, std::string_view text);

/// Whether the text has all words that are sought, in any order. A size is no words: a title that has "9
/// mm" in it may speak of anything.
bool has_sought_words(const Sought& sought, std::string_view text);

/// A size is of its system and a thread of its standard: 1/2 in is no 12.7 mm, and no M12.
bool is_sought_size(const Sought& sought, const NamedSize& size);
/// The thread itself, or any thread of the size that is sought.
bool is_sought_thread(const Sought& sought, const Thread& thread);

/// One thing that was found, as text.
struct FoundRow {
  std::string boat; ///< her title; may be empty
  std::string stay; ///< without its side
  std::string side;
  std::string item;    ///< name of the part, line or splice; of the stay itself: empty
  int count = 1;       ///< so many of it one behind the other
  std::string matched; ///< what of it: "name", "pin of its lower end", "installed"
  std::string value;   ///< what is stated there
  std::string source;  ///< how the value is known; empty where only a name is meant
  std::string place;   ///< "parts/hardware.rig:12"
};

struct FoundInRig {
  std::vector<FoundRow> rows; ///< in the order of the stays, of each from aloft to deck
  std::size_t stays = 0;
  /// Stays of which nothing says how old they are: neither made nor installed, and of their line neither.
  std::size_t undated = 0;
};

/// Looks through every stay: at the stay itself, its line, and the parts and splices in its stack. What is
/// declared and hangs in no stay is not on the boat and not found.
FoundInRig find_in_rig(const Sought& sought, const Rig& rig, const SourceSet& sources);

} // namespace sheerpole
