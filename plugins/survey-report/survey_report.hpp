#pragma once

#include "backend/backend.hpp"
#include "backend/page/document.hpp"

#include <array>
#include <string_view>

namespace sheerpole {

/// The four classes in which surveyors write down what they find (common practice, no source).
enum class FindingClass { now, before_sailing, within_a_year, note };

inline constexpr std::array<FindingClass, 4> finding_classes{
    FindingClass::now, FindingClass::before_sailing, FindingClass::within_a_year, FindingClass::note};

/// "Now", "Before sailing", "Within a year", "To be noted".
std::string_view name_of(FindingClass finding_class);

/// Where a finding is put before a person has looked: a note is noted; a warning is for before sailing, but
/// for those that the table here puts elsewhere. Whoever signs the report puts it where it belongs.
FindingClass class_of(const Diagnostic& finding);

/// The slugs that the table moves, each with its class.
struct ClassRow {
  std::string_view slug;
  FindingClass finding_class;
};
const std::vector<ClassRow>& class_rows();

/// The report from its head to its signatures.
Document report_document(const BackendRequest& request);

/// Where the section of a stay is: "stay-cap-shroud.port".
std::string section_of(const Stay& stay);

/// What of a stay was looked at: "toggle-12 to chainplate-8", "the whole stay".
std::string where_looked(const Rig& rig, const Inspection& inspection);
/// The numbers of the pictures of an entry of the log: "1, 2"; of one that is not shown "forestay.jpg not
/// shown". Empty when it names none.
std::string photograph_numbers(const CheckedRig& checked, const Inspection& inspection);
/// A fact as written with how it is known; a text alone.
std::string shown_fact(const Particular& fact);

// Its sections, each added to the end of the document.
void add_identity(const CheckedRig& checked, Document& document);
void add_scope(const CheckedRig& checked, Document& document);
void add_views(const CheckedRig& checked, Document& document);
void add_findings(const CheckedRig& checked, Document& document);
void add_photographs(const CheckedRig& checked, Document& document);
void add_stays(const CheckedRig& checked, Document& document);
void add_assumptions(const CheckedRig& checked, Document& document);
void add_checks(const CheckedRig& checked, Document& document);
void add_record(const CheckedRig& checked, Document& document);
void add_sources(const CheckedRig& checked, Document& document);
void add_signatures(const CheckedRig& checked, Document& document);

/// Back end `survey-report`: the whole rig for a surveyor or an insurer, as one HTML file and as a PDF:
/// what is up there, how each number is known, what was not seen, what was found.
struct SurveyReport final : Backend {
  BackendDescription describe() const override;
  OutputBundle generate(const BackendRequest& request) const override;
};

} // namespace sheerpole
