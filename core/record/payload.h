#pragma once
// Payloads of events, written and read member by member in the order in which a type's `fields` names them. Only
// happening.cpp includes this.
//
// Reading is lenient: a member that is not a text is read as "", one that is not a number as 0 or nothing, and members
// that `fields` does not name stay in the event's own payload.
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/base/json.h"
#include "core/design/as_made.h"
#include "core/intents/intent.h"
#include "core/record/appearance_payload.h"
#include "core/record/event.h"
#include "core/record/job_events.h"
#include "core/record/stock_payload.h"

namespace core::record {

class PayloadWriter {
 public:
  explicit PayloadWriter(base::Value& payload) : m_payload(payload) {}

  template <typename Member>
  void operator()(const char* key, const Member& member) {
    put(key, member);
  }
  void unlessEmpty(const char* key, const std::string& text) {
    if (!text.empty()) put(key, text);
  }
  void unlessEmpty(const char* key, const std::vector<std::string>& texts) {
    if (!texts.empty()) put(key, texts);
  }
  void unlessEmpty(const char* key, std::int64_t number) {
    if (number != 0) put(key, number);
  }
  void unlessEmpty(const char* key, bool holds) {
    if (holds) m_payload.set(key, base::Value::boolean(true));
  }
  // Writes the entry's members as members of the payload itself.
  template <typename Entry>
  void flat(const std::optional<Entry>& entry) {
    if (entry) write(m_payload, *entry);
  }

 private:
  void put(const char* key, const std::string& text) { m_payload.set(key, base::Value::text(text)); }
  void put(const char* key, std::int64_t number) { m_payload.set(key, base::Value::integer(number)); }
  void put(const char* key, bool holds) { m_payload.set(key, base::Value::boolean(holds)); }
  void put(const char* key, const base::Value& value) { m_payload.set(key, value); }
  void put(const char* key, const std::vector<std::string>& texts) { m_payload.set(key, base::Value::texts(texts)); }
  void put(const char* key, intents::Verdict verdict) { m_payload.set(key, base::Value::text(name(verdict))); }
  void put(const char* key, intents::AlertClass alert) { m_payload.set(key, base::Value::text(name(alert))); }
  void put(const char* key, design::Follow follow) {
    m_payload.set(key, base::Value::text(follow == design::Follow::Reveal ? "reveal" : "cover"));
  }
  void put(const char* key, const TechniqueHashes& techniques) {
    base::Value hashes = base::Value::object();
    for (const auto& technique : techniques) hashes.set(technique.id, base::Value::text(technique.hash));
    m_payload.set(key, std::move(hashes));
  }
  template <typename Item>
  void put(const char* key, const std::vector<Item>& items) {
    base::Value list = base::Value::array();
    for (const Item& item : items) {
      base::Value below = base::Value::object();
      PayloadWriter writer(below);
      Item::fields(item, writer);
      list.append(std::move(below));
    }
    m_payload.set(key, std::move(list));
  }
  template <typename Member>
  void put(const char* key, const std::optional<Member>& member) {
    if (member) put(key, *member);
  }

  base::Value& m_payload;
};

class PayloadReader {
 public:
  explicit PayloadReader(const base::Value& payload) : m_payload(payload) {}

  template <typename Member>
  void operator()(const char* key, Member& member) {
    if (const base::Value* value = m_payload.find(key)) take(*value, member);
  }
  template <typename Member>
  void unlessEmpty(const char* key, Member& member) {
    (*this)(key, member);
  }
  void flat(std::optional<intents::StockEntry>& entry) { entry = readStock(m_payload); }
  void flat(std::optional<intents::BatchEntry>& entry) { entry = readBatch(m_payload); }
  void flat(std::optional<intents::Offcut>& piece) { piece = readOffcut(m_payload); }
  void flat(std::optional<intents::Appearance>& appearance) { appearance = readAppearance(m_payload); }

 private:
  using Kind = base::Value::Kind;

  static void take(const base::Value& value, std::string& text) {
    if (value.kind() == Kind::Text) text = value.asText();
  }
  static void take(const base::Value& value, std::int64_t& number) {
    if (value.isInteger()) number = value.asInteger();
  }
  static void take(const base::Value& value, std::optional<std::int64_t>& number) {
    if (value.isInteger()) number = value.asInteger();
  }
  static void take(const base::Value& value, bool& holds) {
    if (value.kind() == Kind::Boolean) holds = value.asBoolean();
  }
  static void take(const base::Value& value, std::optional<bool>& holds) {
    if (value.kind() == Kind::Boolean) holds = value.asBoolean();
  }
  static void take(const base::Value& value, std::optional<base::Value>& whole) { whole = value; }
  static void take(const base::Value& value, std::vector<std::string>& texts) {
    std::optional<std::vector<std::string>> read;
    take(value, read);
    if (read) texts = *std::move(read);
  }
  static void take(const base::Value& value, std::optional<std::vector<std::string>>& texts) {
    if (value.kind() != Kind::Array) return;
    std::vector<std::string> read;
    for (const base::Value& item : value.items()) {
      if (item.kind() != Kind::Text) return;
      read.push_back(item.asText());
    }
    texts = std::move(read);
  }
  static void take(const base::Value& value, intents::Verdict& verdict) {
    std::string text;
    take(value, text);
    for (const intents::Verdict one : intents::kVerdicts) {
      if (name(one) == text) verdict = one;
    }
  }
  static void take(const base::Value& value, std::optional<intents::AlertClass>& alert) {
    std::string text;
    take(value, text);
    for (const intents::AlertClass one : intents::kAlertClasses) {
      if (name(one) == text) alert = one;
    }
  }
  static void take(const base::Value& value, std::optional<design::Follow>& follow) {
    std::string text;
    take(value, text);
    if (text == "reveal") follow = design::Follow::Reveal;
    if (text == "cover") follow = design::Follow::Cover;
  }
  static void take(const base::Value& value, std::optional<TechniqueHashes>& techniques) {
    if (value.kind() != Kind::Object) return;
    TechniqueHashes read;
    for (const auto& [id, hash] : value.members()) {
      if (hash.kind() != Kind::Text) return;
      read.push_back({id, hash.asText()});
    }
    techniques = std::move(read);
  }
  template <typename Item>
  static void take(const base::Value& value, std::vector<Item>& items) {
    if (value.kind() != Kind::Array) return;
    for (const base::Value& below : value.items()) {
      PayloadReader reader(below);
      Item::fields(items.emplace_back(), reader);
    }
  }

  const base::Value& m_payload;
};

}  // namespace core::record
