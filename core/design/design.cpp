#include "core/design/design.h"

#include "core/base/text.h"
#include "core/design/job_reader.h"

namespace core::design {

void settle(base::Problem& problem, const base::Value& root) {
  const base::Value* value = &root;
  std::string pointer;
  const auto parts = base::split(problem.pointer, '/');
  for (std::size_t i = 1; i < parts.size(); ++i) {
    const base::Value* next = nullptr;
    if (value->kind() == base::Value::Kind::Object) {
      next = value->find(parts[i]);
    } else if (value->kind() == base::Value::Kind::Array) {
      const auto index = base::parseDecimal(parts[i]);
      if (index && *index < static_cast<double>(value->items().size())) {
        next = &value->items()[static_cast<std::size_t>(*index)];
      }
    }
    if (next == nullptr) break;
    value = next;
    pointer += '/' + parts[i];
  }
  problem.pointer = pointer;
  problem.order = value->order();
}

ReadDesign readDesign(std::string_view text, base::Source source) {
  ReadDesign read;
  const base::ParsedJson json = base::parseJson(text);
  read.problems = base::Problems(source);
  read.problems.append(json.problems);
  if (!json.readable) return read;
  ReadJob job = readJob(json, read.problems);
  if (!job.canLayOut) return read;
  base::Problems conflicts;
  Layout layout = layOut(job.job, conflicts);
  conflicts.changeEach([&](base::Problem& problem) { settle(problem, json.root); });
  read.problems.append(conflicts);
  if (read.problems.hasErrors()) return read;
  Figures figures(job.job, layout, job.job.units);
  read.design = Design{std::move(job.job), std::move(layout), std::move(figures), AsMade()};
  return read;
}

ReadDesign remeasured(const Design& planned, AsMade made) {
  ReadDesign read;
  Layout layout = layOut(planned.job, made, read.problems);
  if (read.problems.hasErrors()) return read;
  Figures figures(planned.job, layout, planned.job.units, made);
  read.design = Design{planned.job, std::move(layout), std::move(figures), std::move(made)};
  return read;
}

}  // namespace core::design
