#include "wording/service_words.hpp"

namespace sheerpole {

namespace {

std::string quoted(std::string_view word) {
  return "`" + std::string(word) + "`";
}

} // namespace

std::string nothing_to_rename() {
  return "there is no name of a rig file here";
}

std::string no_name_of_the_language(std::string_view name) {
  return quoted(name) +
         " is no name: a name begins with a letter and has letters, digits and single hyphens";
}

std::string name_is_taken(std::string_view name) {
  return quoted(name) + " is declared already";
}

std::string would_mean_something_else(std::string_view name) {
  return quoted(name) + " would be read as something else where the name is now";
}

std::string mend_all_that_is_certain() {
  return "put right all that can be read in one way only";
}

std::string take_up_words(std::string_view to_tighten, std::string_view to_slacken) {
  return "tightens " + std::string(to_tighten) + ", slackens " + std::string(to_slacken);
}

std::string pulls_at_dock(std::string_view tension) {
  return std::string(tension) + " at the dock";
}

std::string slack_at_dock(std::string_view slack) {
  return "slack by " + std::string(slack) + " at the dock";
}

std::string tension_is_to_be_read_again() {
  return "its tension was read before these turns: make them, then read it again";
}

std::string taken_up_is_not_stated() {
  return "what its adjuster has taken is not stated";
}

std::string request_is_no_object() {
  return "a request is a JSON object";
}

std::string version_not_known(std::string_view version) {
  return "version " + std::string(version) + " is not known; this is version 1";
}

std::string nothing_of_this_name_is_asked(std::string_view what) {
  return "nothing of the name " + quoted(what) + " can be asked";
}

std::string field_is_missing(std::string_view field) {
  return quoted(field) + " is missing or is another kind of value";
}

std::string file_is_not_of_the_boat(std::string_view file) {
  return quoted(file) + " is no file of this boat";
}

std::string word_is_none_of(std::string_view field, std::string_view word,
                            const std::vector<std::string>& known) {
  std::string all;
  for (const std::string& each : known)
    all += (all.empty() ? "" : each == known.back() ? " or " : ", ") + each;
  return quoted(field) + " is " + all + ", not " + quoted(word);
}

std::string name_does_not_show(std::string_view name) {
  return name.empty() ? "the boat has no name"
                      : "the name of the boat holds a sign that does not show: " + quoted(name);
}

std::string rig_has_no_such_number(std::string_view rig, std::string_view number) {
  return "a " + std::string(rig) + " has no place for " + quoted(number);
}

std::string number_is_no_length(std::string_view number, std::string_view written) {
  return quoted(number) + " is a length with its unit, such as 12.5 m or 41' 6\", not " + quoted(written);
}

std::string numbers_make_no_rig(std::string_view error) {
  return "these numbers make no rig: " + std::string(error);
}

std::string_view service_words(PhotoFault fault) {
  switch (fault) {
  case PhotoFault::outside:
    return "it is not in the folder of the rig file or below it";
  case PhotoFault::not_found:
    return "there is no such file";
  case PhotoFault::not_readable:
    return "it cannot be read";
  case PhotoFault::too_large:
    return "it has more than 8 MB";
  case PhotoFault::no_picture:
    return "it is no JPEG and no PNG of at most 64 million pixels";
  case PhotoFault::too_many:
    return "60 pictures are shown already, and no more are";
  case PhotoFault::too_much:
    return "the pictures have more than 64 MB together";
  }
  return {};
}

} // namespace sheerpole
