#pragma once
// Techniques made up for tests, written as files are.
#include <string>
#include <vector>

namespace tests {

struct MadeUpStep {
  std::string id;
  std::string minutes;  // working time
  std::string more;     // further members, each starting with a comma: needs, makes, waits
};

inline std::string stepText(const MadeUpStep& step) {
  const std::string time = step.minutes + " min";
  return "{\"id\": \"" + step.id + "\", \"title\": \"Do the " + step.id +
         "\", \"do\": [\"Do it.\"], \"good\": \"It lies well.\", " +
         "\"trap\": \"It slips.\", \"tools\": [\"bench knife\"], \"hands\": \"clean\", \"work\": {\"early\": \"" +
         time + "\", \"likely\": \"" + time + "\", \"late\": \"" + time + "\", \"source\": \"common practice\"}" +
         step.more + "}";
}

// `when` as the file writes it.
inline std::string techniqueText(const std::string& id, int rank, const std::string& when,
                                 const std::vector<MadeUpStep>& steps) {
  std::string text = "{\"format\": \"mountwright-technique/1\", \"id\": \"" + id +
                     "\", \"title\": \"Made up\", \"rank\": " + std::to_string(rank) + ", \"when\": " + when +
                     ", \"steps\": [";
  for (std::size_t i = 0; i < steps.size(); ++i) text += (i == 0 ? "" : ", ") + stepText(steps[i]);
  return text + "]}";
}

}  // namespace tests
