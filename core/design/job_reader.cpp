#include "core/design/job_reader.h"

#include "core/base/text.h"
#include "core/design/job_reader_internal.h"

namespace core::design {
namespace {

using base::Message;

void readHeading(ObjectReader& root, Job& job, Problems& problems) {
  const auto into = [&](std::string_view key, std::string& target) {
    if (const auto text = base::readText(root.optional(key), problems)) target = *text;
  };
  into("title", job.title);
  into("reference", job.reference);
  into("client", job.client);
  const Node due = root.optional("due");
  into("due", job.due);
  if (!job.due.empty() && !base::isCalendarDate(job.due)) {
    base::report(problems, due, Message("job.bad-date").with("text", job.due));
    job.due.clear();
  }
}

// Ids of bands the file names but that could not be read: what follows them is not told a second time.
std::set<std::string> idsLeftOut(const Node& bands, const Job& job) {
  std::set<std::string> ids;
  if (!bands || bands.value->kind() != base::Value::Kind::Array) return ids;
  for (const base::Value& band : bands.value->items()) {
    if (band.kind() != base::Value::Kind::Object) continue;
    const base::Value* id = band.find("id");
    if (id != nullptr && id->kind() == base::Value::Kind::Text) ids.insert(id->asText());
  }
  for (const Band& band : job.bands) ids.erase(band.id);
  return ids;
}

}  // namespace

ReadJob readJob(const base::ParsedJson& json, Problems& problems) {
  ReadJob read;
  ObjectReader root({&json.root, ""}, problems);
  if (!root.valid()) return read;
  const Node format = root.required("format");
  if (format) {
    if (format.value->kind() != base::Value::Kind::Text || format.value->asText() != "mountwright-job/1") {
      base::report(problems, format, Message("job.wrong-format"));
      // Another format's keys would all be unknown: one problem says it.
      return read;
    }
  }
  readHeading(root, read.job, problems);
  std::set<std::string> ids;
  const bool artwork = detail::readArtwork(root, read.job, problems);
  const bool mount = detail::readMount(root, read.job, ids, problems);
  detail::readBands(root, read.job, ids, problems);
  const std::set<std::string> leftOut = idsLeftOut(root.optional("bands"), read.job);
  detail::readLines(root, read.job, ids, leftOut, problems);
  detail::readSpandrels(root, ids, problems);
  detail::readWashes(root, ids, problems);
  detail::readLeaf(root, read.job, ids, leftOut, problems);
  detail::readPackage(root, read.job, problems);
  detail::readStock(root, problems);
  detail::readTechniques(root, read.job, problems);
  detail::readRoom(root, read.job, problems);
  root.finish();
  read.canLayOut = artwork && mount;
  return read;
}

}  // namespace core::design
