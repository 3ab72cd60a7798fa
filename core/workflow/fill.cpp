#include "core/workflow/fill.h"

#include <algorithm>
#include <vector>

#include "core/base/text.h"

namespace core::workflow {
namespace {

constexpr const char* kId = "{id}";

// A word of a template and the comma or stop that follows it.
struct Token {
  std::string word;
  std::string mark;
};

std::vector<Token> tokensOf(const std::string& text) {
  std::vector<Token> tokens;
  for (const std::string& piece : base::split(text, ' ')) {
    const auto end = piece.find_last_not_of(",.;:");
    const std::size_t length = end == std::string::npos ? 0 : end + 1;
    tokens.push_back({piece.substr(0, length), piece.substr(length)});
  }
  return tokens;
}

}  // namespace

std::string fill(const std::string& text, const std::map<std::string, std::string>& values) {
  std::string filled;
  for (std::size_t at = 0; at < text.size();) {
    const auto open = text.find('{', at);
    const auto close = open == std::string::npos ? open : text.find('}', open);
    if (close == std::string::npos) return filled + text.substr(at);
    filled += text.substr(at, open - at);
    const auto value = values.find(text.substr(open + 1, close - open - 1));
    filled += value == values.end() ? text.substr(open, close - open + 1) : value->second;
    at = close + 1;
  }
  return filled;
}

std::string sayingOnce(const std::string& text, const std::string& id) {
  std::vector<Token> tokens = tokensOf(text);
  const auto found = std::find_if(tokens.begin(), tokens.end(), [](const Token& token) { return token.word == kId; });
  if (found == tokens.end()) return text;
  const auto at = static_cast<std::size_t>(found - tokens.begin());
  const std::vector<std::string> own = base::split(id, '-');
  // The words after the first comma are about something else.
  const auto part = std::find_if(tokens.begin(), tokens.end(), [](const Token& token) { return !token.mark.empty(); });
  const auto end = part == tokens.end() ? part : part + 1;
  const auto is = [](const std::string& word) { return [&word](const Token& token) { return token.word == word; }; };
  // A dropped word leaves its mark to the word before it.
  const auto drop = [&](std::size_t gone) {
    if (gone > 0 && tokens[gone - 1].mark.empty()) tokens[gone - 1].mark = tokens[gone].mark;
    tokens.erase(tokens.begin() + static_cast<std::ptrdiff_t>(gone));
  };
  if (own.size() == 1 && std::any_of(tokens.begin(), end, is(id))) {
    drop(at);
  } else if (at + 1 < tokens.size() && tokens[at].mark.empty() && base::endsWith(own.back(), tokens[at + 1].word)) {
    drop(at + 1);
  } else if (at > 0 && std::count(own.begin(), own.end(), tokens[at - 1].word) > 0) {
    tokens.erase(tokens.begin() + static_cast<std::ptrdiff_t>(at) - 1);
  } else {
    return text;
  }
  std::string said;
  for (const Token& token : tokens) said += (said.empty() ? "" : " ") + token.word + token.mark;
  return said;
}

}  // namespace core::workflow
