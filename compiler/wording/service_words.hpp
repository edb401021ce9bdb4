#pragma once

#include <string>
#include <string_view>
#include <vector>

// What a program that edits rig files is told, in English.
namespace sheerpole {

std::string nothing_to_rename();
std::string no_name_of_the_language(std::string_view name);
std::string name_is_taken(std::string_view name);
std::string would_mean_something_else(std::string_view name);

/// The title of all certain edits together.
std::string mend_all_that_is_certain();

/// The adjuster of a stay as it is set: "tightens 35 mm, slackens 40 mm".
std::string take_up_words(std::string_view to_tighten, std::string_view to_slacken);

/// How a stay stands by its file: "4.78 kN at the dock".
std::string pulls_at_dock(std::string_view tension);
std::string slack_at_dock(std::string_view slack);

/// Why turns are not written down as what an adjuster has taken.
std::string tension_is_to_be_read_again();
std::string taken_up_is_not_stated();

/// Why a request was not answered.
std::string request_is_no_object();
std::string version_not_known(std::string_view version);
std::string nothing_of_this_name_is_asked(std::string_view what);
std::string field_is_missing(std::string_view field);
std::string file_is_not_of_the_boat(std::string_view file);

/// Why there is no first file.
std::string word_is_none_of(std::string_view field, std::string_view word,
                            const std::vector<std::string>& known);
std::string name_does_not_show(std::string_view name);
std::string rig_has_no_such_number(std::string_view rig, std::string_view number);
std::string number_is_no_length(std::string_view number, std::string_view written);
/// `error`: what the compiler says of the file.
std::string numbers_make_no_rig(std::string_view error);

/// Why a picture is not shown; behind "cannot be shown:".
enum class PhotoFault { outside, not_found, not_readable, too_large, no_picture, too_many, too_much };
std::string_view service_words(PhotoFault fault);

} // namespace sheerpole
