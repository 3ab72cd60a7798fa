#include "app/workbench/job_summary.h"

#include <QLocale>
#include <algorithm>
#include <charconv>
#include <iterator>

#include "app/convert/text.h"
#include "core/base/text.h"

namespace app::workbench {
namespace {

using core::jobs::BenchPlace;
using core::jobs::Lesson;
using Lessons = std::map<core::waits::Kind, std::vector<Lesson>>;

// Raise this number whenever folding, composing or the summary gives a different result.
constexpr const char* kForm = "5";

// No piece is larger, in mm.
constexpr double kLargest = 1e6;

constexpr BenchPlace::Kind kPlaces[] = {BenchPlace::Kind::Step, BenchPlace::Kind::Waiting, BenchPlace::Kind::Missed,
                                        BenchPlace::Kind::Finished, BenchPlace::Kind::Stuck};

// Five hundred of these are read when the program opens: fields parted by tabs, a line for the job and one for each
// kind of lesson.
std::string escaped(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c == '\t') {
      out += "\\t";
    } else if (c == '\n') {
      out += "\\n";
    } else if (c == '\\') {
      out += "\\\\";
    } else {
      out += c;
    }
  }
  return out;
}

std::string unescaped(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] != '\\' || i + 1 == text.size()) {
      out += text[i];
    } else {
      const char c = text[++i];
      out += c == 't' ? '\t' : c == 'n' ? '\n' : c;
    }
  }
  return out;
}

constexpr std::size_t kPlaceCount = std::size(kPlaces);

void put(std::string& line, const std::string& text) { line += escaped(text) + '\t'; }

// Shortest text that reads back the same; infinity too.
template <typename Number>
void putNumber(std::string& line, Number number) {
  char buffer[40];
  line.append(buffer, std::to_chars(buffer, buffer + sizeof buffer, number).ptr);
  line += '\t';
}

void putLessons(std::string& text, char part, const Lessons& lessons) {
  for (const auto& [kind, all] : lessons) {
    text += std::string{'\n', part, '\t'};
    put(text, kind.name);
    putNumber(text, kind.cause == core::waits::Cause::Film ? 1 : 0);
    for (const Lesson& lesson : all) {
      putNumber(text, lesson.started.utcMilliseconds);
      putNumber(text, lesson.started.boottimeNanoseconds);
      putNumber(text, lesson.started.synced ? 1 : 0);
      put(text, lesson.started.bootId);
      putNumber(text, lesson.lower);
      putNumber(text, lesson.upper);
    }
  }
}

// Reads fields from the left; it holds the unread rest of a line or of the whole text.
class Fields {
 public:
  explicit Fields(std::string_view text) : m_left(text) {}

  bool done() const { return m_left.empty(); }
  bool failed() const { return m_failed; }
  std::string_view next(char end = '\t') {
    const std::size_t at = m_left.find(end);
    m_failed = m_failed || (at == std::string_view::npos && end == '\t');
    const std::string_view field = m_left.substr(0, at);
    m_left.remove_prefix(at == std::string_view::npos ? m_left.size() : at + 1);
    return field;
  }
  std::string text() { return unescaped(next()); }
  template <typename Number>
  Number number() {
    const std::string_view field = next();
    Number number{};
    const auto [end, error] = std::from_chars(field.data(), field.data() + field.size(), number);
    m_failed = m_failed || error != std::errc() || end != field.data() + field.size();
    return number;
  }
  template <typename Number>
  Number number(Number least, Number most) {
    const auto value = number<Number>();
    // What is no number is neither less nor more.
    m_failed = m_failed || !(value >= least && value <= most);
    return value;
  }

 private:
  std::string_view m_left;
  bool m_failed = false;
};

bool readKind(std::string_view line, core::jobs::Observed& lessons) {
  Fields fields(line);
  const std::string_view part = fields.next();
  if (part != "o" && part != "w") return false;
  core::waits::Kind kind;
  kind.name = fields.text();
  kind.cause = fields.number<int>(0, 1) == 1 ? core::waits::Cause::Film : core::waits::Cause::Own;
  std::vector<Lesson>& all = (part == "o" ? lessons.opening : lessons.width)[kind];
  while (!fields.done() && !fields.failed()) {
    Lesson& lesson = all.emplace_back();
    lesson.started.utcMilliseconds = fields.number<std::int64_t>();
    lesson.started.boottimeNanoseconds = fields.number<std::int64_t>();
    lesson.started.synced = fields.number<int>(0, 1) == 1;
    lesson.started.bootId = fields.text();
    lesson.lower = fields.number<double>();
    lesson.upper = fields.number<double>();
  }
  return !fields.failed();
}

}  // namespace

std::string summaryText(const JobSummary& summary) {
  const JobEntry& entry = summary.entry;
  std::string text;
  for (const std::string* one :
       {&entry.title, &entry.reference, &entry.client, &entry.due, &entry.jobHash, &entry.step}) {
    put(text, *one);
  }
  putNumber(text, entry.width);
  putNumber(text, entry.height);
  putNumber(text, entry.archived ? 1 : 0);
  putNumber(text, entry.changedUtc);
  putNumber(text, static_cast<int>(entry.place));
  putNumber(text, entry.done);
  putNumber(text, entry.all);
  putNumber(text, entry.rests ? 1 : 0);
  putNumber(text, summary.settled ? 1 : 0);
  putNumber(text, summary.newest.milliseconds);
  putNumber(text, summary.newest.counter);
  for (const std::string& step : summary.sharedSteps) put(text, step);
  return text;
}

std::optional<JobSummary> readSummary(const std::string& jobId, const std::string& text) {
  Fields fields(text);
  JobSummary summary;
  JobEntry& entry = summary.entry;
  entry.id = jobId;
  for (std::string* one : {&entry.title, &entry.reference, &entry.client, &entry.due, &entry.jobHash, &entry.step}) {
    *one = fields.text();
  }
  entry.width = fields.number<double>(0, kLargest);
  entry.height = fields.number<double>(0, kLargest);
  entry.archived = fields.number<int>(0, 1) == 1;
  entry.changedUtc = fields.number<std::int64_t>();
  const auto place = fields.number<std::size_t>(0, kPlaceCount - 1);
  entry.place = kPlaces[std::min(place, kPlaceCount - 1)];
  entry.done = fields.number<std::size_t>();
  entry.all = fields.number<std::size_t>();
  entry.rests = fields.number<int>(0, 1) == 1;
  summary.settled = fields.number<int>(0, 1) == 1;
  summary.newest.milliseconds = fields.number<std::int64_t>();
  summary.newest.counter = fields.number<std::int64_t>();
  while (!fields.done() && !fields.failed()) summary.sharedSteps.insert(fields.text());
  if (fields.failed() || entry.done > entry.all) return std::nullopt;
  return summary;
}

std::string lessonsText(const core::jobs::Observed& lessons, const std::string& stamp) {
  std::string text = stamp;
  putLessons(text, 'o', lessons.opening);
  putLessons(text, 'w', lessons.width);
  return text + "\n.";
}

std::optional<core::jobs::Observed> readLessons(const std::string& text, const std::string& stamp) {
  // Cut short anywhere it has no such end.
  if (!core::base::startsWith(text, stamp + '\n') || !core::base::endsWith(text, "\n.")) return std::nullopt;
  Fields lines(std::string_view(text).substr(0, text.size() - 2));
  lines.next('\n');
  core::jobs::Observed lessons;
  while (!lines.done()) {
    if (!readKind(lines.next('\n'), lessons)) return std::nullopt;
  }
  return lessons;
}

std::string summaryStamp(const std::string& arrived, const std::string& shop) {
  static const std::string kProgram = std::string(MOUNTWRIGHT_VERSION "/") + kForm + '/';
  return kProgram + convert::fromQt(QLocale().name()) + ' ' + arrived + ' ' + shop;
}

}  // namespace app::workbench
