#include "core/sheets/care_sheet.h"

#include "core/sheets/care_writer.h"

namespace core::sheets {

CareSheet careSheet(CareFor kind, const CareInput& input) {
  const CareWriter write(input);
  CareSheet sheet;
  sheet.kind = kind;
  if (kind == CareFor::Client) {
    sheet.title = base::Message("care.title-client");
    sheet.sections = clientSections(write);
  } else {
    sheet.title = base::Message("care.title-conservator");
    sheet.sections = conservatorSections(write);
  }
  return sheet;
}

std::string_view name(CareFor kind) { return kind == CareFor::Client ? "client" : "conservator"; }

std::string_view name(CareKnown known) {
  switch (known) {
    case CareKnown::Entered: return "entered";
    case CareKnown::Default: return "default";
    case CareKnown::Computed: return "computed";
    case CareKnown::Observed: return "observed";
    case CareKnown::Stated: return "stated";
    case CareKnown::Unknown: return "unknown";
  }
  return "";
}

}  // namespace core::sheets
