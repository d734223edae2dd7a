#include "document/json_fields.h"

#include <cstdlib>
#include <limits>

#include "base/excerpt.h"
#include "base/file_limits.h"
#include "document/limit_problems.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

constexpr int kDeepest = 16;
constexpr std::int64_t kFarthest = 100'000'000'000;  // nm, the range of parseLength

/// What a message can show of a value: texts and numbers as they are, the rest by its kind.
std::string shown(const Json& value) {
  if (value.is_string()) return excerpt(value.get_ref<const std::string&>());
  if (value.is_array()) return "[...]";
  if (value.is_object()) return "{...}";
  return value.dump();
}

/// Reads along and stops at an object of too many fields: ordered_json looks each new one up among
/// all before it.
class Shape : public Json::json_sax_t {
 public:
  bool key(string_t&) override { return ++keys_.back() <= kMostKeys; }
  bool start_object(std::size_t) override { return keys_.push_back(0), true; }
  bool end_object() override { return keys_.pop_back(), true; }
  bool start_array(std::size_t) override { return true; }
  bool end_array() override { return true; }
  bool null() override { return true; }
  bool boolean(bool) override { return true; }
  bool number_integer(number_integer_t) override { return true; }
  bool number_unsigned(number_unsigned_t) override { return true; }
  bool number_float(number_float_t, const string_t&) override { return true; }
  bool string(string_t&) override { return true; }
  bool binary(binary_t&) override { return true; }
  bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception&) override {
    return false;
  }

 private:
  std::vector<std::size_t> keys_;  // of the open objects
};

}  // namespace

Json parseJson(std::string_view text) {
  Shape shape;
  if (!Json::sax_parse(text.begin(), text.end(), &shape)) return {Json::value_t::discarded};
  const auto keep = [](int depth, Json::parse_event_t, const Json&) { return depth <= kDeepest; };
  return Json::parse(text.begin(), text.end(), keep, false);
}

const Json* Fields::find(std::string_view key) const {
  const auto found = object_->find(std::string(key));
  return found == object_->end() ? nullptr : &*found;
}

std::vector<std::string> Fields::keys() const {
  std::vector<std::string> keys;
  for (const auto& [name, value] : object_->items()) keys.push_back(name);
  return keys;
}

std::string Fields::path(std::string_view key) const {
  return path_.empty() ? std::string(key) : path_ + "/" + std::string(key);
}

std::string Fields::asText() const {
  return object_->dump(-1, ' ', false, Json::error_handler_t::replace);
}

Problem Fields::unreadable(std::string_view key) const {
  const Json* value = find(key);
  if (value == nullptr) return {ProblemCode::FieldMissing, path(key), {}};
  return {ProblemCode::FieldUnreadable, path(key), {shown(*value)}};
}

Result<std::string> Fields::text(std::string_view key) const {
  const Json* value = find(key);
  if (value == nullptr || !value->is_string()) return unreadable(key);
  return value->get<std::string>();
}

Result<std::int64_t> Fields::whole(std::string_view key) const {
  const Json* value = find(key);
  if (value == nullptr || !value->is_number_integer()) return unreadable(key);
  constexpr auto kMost = static_cast<std::uint64_t>(std::numeric_limits<std::int64_t>::max());
  if (value->is_number_unsigned() && value->get<std::uint64_t>() > kMost) return unreadable(key);
  return value->get<std::int64_t>();
}

Result<double> Fields::number(std::string_view key) const {
  const Json* value = find(key);
  if (value == nullptr || !value->is_number()) return unreadable(key);
  return value->get<double>();
}

Result<bool> Fields::flag(std::string_view key) const {
  const Json* value = find(key);
  if (value != nullptr && value->is_boolean()) return value->get<bool>();
  const Result<std::int64_t> number = whole(key);
  if (!number || (*number != 0 && *number != 1)) return unreadable(key);
  return *number == 1;
}

Result<Length> Fields::length(std::string_view key) const {
  if (const Result<std::int64_t> nanometres = whole(key)) {
    if (*nanometres < -kFarthest || *nanometres > kFarthest) return unreadable(key);
    return Length::nanometres(*nanometres);
  }
  const Result<std::string> written = text(key);
  if (!written) return written.problem();
  const Result<Length> read = parseLength(*written, Unit::Millimetre);
  if (!read) return unreadable(key);
  return *read;
}

Result<Length> Fields::roll(std::string_view key) const {
  const Result<std::string> written = text(key);
  if (!written) return length(key);
  const Result<Length> read = parseRoll(*written, Unit::Millimetre);
  if (!read) return unreadable(key);
  return *read;
}

Result<Fields> Fields::object(std::string_view key) const {
  const Json* value = find(key);
  if (value == nullptr || !value->is_object()) return unreadable(key);
  return Fields(*value, path(key));
}

Result<std::vector<std::string>> Fields::texts(std::string_view key, std::size_t most) const {
  const Json* value = find(key);
  if (value == nullptr || !value->is_array()) return unreadable(key);
  if (auto problem = mostOf(path(key), value->size(), most)) return *problem;
  std::vector<std::string> list;
  for (const Json& item : *value) {
    if (!item.is_string()) return unreadable(key);
    list.push_back(item.get<std::string>());
  }
  return list;
}

Result<std::vector<Fields>> Fields::objects(std::string_view key, std::size_t most) const {
  const Json* value = find(key);
  if (value == nullptr || !value->is_array()) return unreadable(key);
  if (auto problem = mostOf(path(key), value->size(), most)) return *problem;
  std::vector<Fields> list;
  for (const Json& item : *value) {
    if (!item.is_object()) return unreadable(key);
    list.emplace_back(item, path(key) + "/" + std::to_string(list.size() + 1));
  }
  return list;
}

Result<OwnFile> openOwnFile(std::string_view text, std::string_view where, const FileKind& kind) {
  const std::string file(where);
  if (const auto problem = largestOf(where, text.size(), kind.largest)) return *problem;
  OwnFile own{parseJson(text)};
  if (!own.json.is_object()) return Problem{kind.other, file, {}};
  const Fields fields(own.json, "");
  const Result<std::string> format = fields.text("format");
  if (!format || *format != kind.format) return Problem{kind.other, file, {}};
  const Result<std::int64_t> version = fields.whole("version");
  if (!version) return version.problem();
  if (*version < 1) return fields.unreadable("version");
  if (*version > kind.version)
    return Problem{ProblemCode::NewerVersion, file, {*version, std::int64_t{kind.version}}};
  own.version = *version;
  return own;
}

}  // namespace creasewright
