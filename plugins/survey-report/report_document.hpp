#pragma once

#include "backend/backend.hpp"
#include "backend/page/document.hpp"

namespace sheerpole {

/// The report from its head to its signatures.
Document report_document(const BackendRequest& request);

/// Where the section of a stay is: "stay-cap-shroud.port".
std::string section_of(const Stay& stay);

/// A fact as written with how it is known; a text alone.
std::string shown_fact(const Particular& fact);

// Its sections, each added to the end of the document.
void add_identity(const CheckedRig& checked, Document& document);
void add_scope(const CheckedRig& checked, Document& document);
void add_views(const CheckedRig& checked, Document& document);
void add_findings(const CheckedRig& checked, Document& document);
void add_stays(const CheckedRig& checked, Document& document);
void add_assumptions(const CheckedRig& checked, Document& document);
void add_checks(const CheckedRig& checked, Document& document);
void add_sources(const CheckedRig& checked, Document& document);
void add_signatures(const CheckedRig& checked, Document& document);

} // namespace sheerpole
