#include "backend/paper_words.hpp"
#include "plugins/survey-report/survey_report.hpp"
#include "wording/papers/survey_report_words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

constexpr std::size_t signs_of_digest = 8;

/// Which picture a path of an entry is; nothing when it could not be read.
const Photograph* picture(const CheckedRig& checked, const Inspection& inspection,
                          const std::string& stated) {
  for (const Photograph& one : checked.photographs())
    if (std::any_of(one.named.begin(), one.named.end(), [&](const Photograph::Named& named) {
          return named.stated == stated && named.at.source == inspection.place.source;
        }))
      return &one;
  return nullptr;
}

std::size_t number_of(const CheckedRig& checked, const Photograph& photograph) {
  return static_cast<std::size_t>(&photograph - checked.photographs().data()) + 1;
}

/// "Photograph 3", as every part of the report calls it.
std::string name_of_picture(std::size_t number) {
  return say(SurveyReportPhrase::photograph, number);
}

std::string stays_of(const Rig& rig, const Inspection& inspection) {
  return joined(inspection.stays, ", ", [&](StayId id) { return rig[id].name; });
}

/// "forestay, tang-10 to toggle-12: watch, 2026-05-02, owner; two broken strands"
std::string entry_words(const Rig& rig, const Inspection& inspection) {
  return fmt::format("{}, {}: {}, {}, {}{}", stays_of(rig, inspection), where_looked(rig, inspection),
                     name_of(inspection.condition), inspection.date, inspection.by,
                     led_by("; ", inspection.note));
}

bool shows(const CheckedRig& checked, const Inspection& inspection, const Photograph& photograph) {
  return std::any_of(inspection.photos.begin(), inspection.photos.end(), [&](const std::string& stated) {
    return picture(checked, inspection, stated) == &photograph;
  });
}

} // namespace

std::string photograph_numbers(const CheckedRig& checked, const Inspection& inspection) {
  return joined(inspection.photos, ", ", [&](const std::string& stated) {
    const Photograph* found = picture(checked, inspection, stated);
    return found == nullptr ? say(SurveyReportPhrase::not_shown, stated)
                            : std::to_string(number_of(checked, *found));
  });
}

void add_photographs(const CheckedRig& checked, Document& document) {
  const Rig& rig = checked.rig();
  const bool any = std::any_of(rig.inspections.begin(), rig.inspections.end(),
                               [](const Inspection& inspection) { return !inspection.photos.empty(); });
  if (!any)
    return;
  document.blocks.emplace_back(DocumentHeading{say(SurveyReportPhrase::photographs), 2, "photographs"});
  document.blocks.emplace_back(DocumentText{say(SurveyReportPhrase::pictures_inspection_log_names_as)});
  DocumentTable list{.caption = say(SurveyReportPhrase::list_photographs),
                     .columns = {{say(SurveyReportPhrase::no), 0.4, true},
                                 {say(SurveyReportPhrase::what), 3.2},
                                 {say(SurveyReportPhrase::file), 2.0},
                                 {say(SurveyReportPhrase::sha_256), 0.9}}};
  std::vector<DocumentPicture> pictures;
  for (const Photograph& photograph : checked.photographs()) {
    std::vector<std::string> entries;
    for (const Inspection& inspection : rig.inspections)
      if (shows(checked, inspection, photograph))
        entries.push_back(entry_words(rig, inspection));
    const std::size_t number = number_of(checked, photograph);
    const std::string what = joined(entries, ". ");
    const std::string digest = photograph.digest.substr(0, signs_of_digest);
    list.rows.push_back({std::to_string(number), what, photograph.name, digest});
    DocumentPicture shown;
    shown.bytes = photograph.bytes;
    shown.jpeg = photograph.head.kind == PictureKind::jpeg;
    shown.width = photograph.head.width;
    shown.height = photograph.head.height;
    shown.words = name_of_picture(number) + led_by(": ", what);
    shown.caption =
        say(SurveyReportPhrase::file_sha_256, name_of_picture(number), what, photograph.name, digest);
    shown.id = fmt::format("photograph-{}", number);
    pictures.push_back(std::move(shown));
  }
  std::string missing;
  for (const Inspection& inspection : rig.inspections)
    for (const std::string& stated : inspection.photos)
      if (picture(checked, inspection, stated) == nullptr)
        add_words(missing, ", ", stated);
  if (!missing.empty())
    list.notes.push_back(say(SurveyReportPhrase::named_not_shown_findings_say, missing));
  if (list.rows.empty())
    list.caption = say(SurveyReportPhrase::no_photograph_could_be_shown);
  document.blocks.emplace_back(std::move(list));
  for (DocumentPicture& shown : pictures)
    document.blocks.emplace_back(std::move(shown));
}

} // namespace sheerpole
