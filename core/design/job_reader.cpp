#include "core/design/job_reader.h"

#include <algorithm>

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

// Ids the file names in a list but that could not be read: elements that follow them are not reported a second time.
template <typename Item>
void addLeftOut(const Node& list, const std::vector<Item>& read, std::set<std::string>& leftOut) {
  if (!list || list.value->kind() != base::Value::Kind::Array) return;
  for (const base::Value& item : list.value->items()) {
    if (item.kind() != base::Value::Kind::Object) continue;
    const base::Value* id = item.find("id");
    if (id == nullptr || id->kind() != base::Value::Kind::Text) continue;
    const bool known = std::any_of(read.begin(), read.end(), [&](const Item& one) { return one.id == id->asText(); });
    if (!known) leftOut.insert(id->asText());
  }
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
  std::set<std::string> leftOut;
  addLeftOut(root.optional("bands"), read.job.bands, leftOut);
  detail::readLines(root, read.job, ids, leftOut, problems);
  addLeftOut(root.optional("lines"), read.job.lines, leftOut);
  detail::readSpandrels(root, read.job, ids, leftOut, problems);
  addLeftOut(root.optional("spandrels"), read.job.spandrels, leftOut);
  detail::readWashes(root, read.job, ids, leftOut, problems);
  detail::readLeaf(root, read.job, ids, leftOut, problems);
  detail::readPackage(root, read.job, problems);
  detail::readMaterials(root, read.job, problems);
  detail::readTechniques(root, read.job, problems);
  detail::readDelivery(root, read.job, problems);
  detail::readRoom(root, read.job, problems);
  root.finish();
  read.canLayOut = artwork && mount;
  return read;
}

}  // namespace core::design
