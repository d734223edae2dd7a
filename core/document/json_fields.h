#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json.hpp>

#include "base/result.h"
#include "units/length.h"

namespace creasewright {

/// JSON from outside: `discarded` when it is not JSON or one object has more fields than any of
/// ours, no exceptions; what is nested deeper than any file of ours is dropped.
nlohmann::ordered_json parseJson(std::string_view text);

/// What a file of ours says of itself.
struct FileKind {
  std::string_view format;
  int version = 1;           ///< the newest that is understood
  std::int64_t largest = 0;  ///< bytes
  ProblemCode other{};       ///< when it is something else, where = file
};

/// The JSON object of a file and the version it was written in. Errors: FileTooLarge, `kind.other`,
/// FieldMissing or FieldUnreadable (`version`), NewerVersion.
struct OwnFile {
  nlohmann::ordered_json json;
  std::int64_t version = 1;
};
Result<OwnFile> openOwnFile(std::string_view text, std::string_view where, const FileKind& kind);

/// Reads the fields of one JSON object. Every getter fails with FieldMissing or FieldUnreadable
/// that names the field by its path from the root, such as `card/caliper`.
class Fields {
 public:
  /// `object` must be an object and outlive this.
  Fields(const nlohmann::ordered_json& object, std::string path)
      : object_(&object), path_(std::move(path)) {}

  [[nodiscard]] bool has(std::string_view key) const { return find(key) != nullptr; }
  [[nodiscard]] std::vector<std::string> keys() const;
  [[nodiscard]] std::string path(std::string_view key) const;
  /// The whole object as JSON text.
  [[nodiscard]] std::string asText() const;

  [[nodiscard]] Result<std::string> text(std::string_view key) const;
  [[nodiscard]] Result<std::int64_t> whole(std::string_view key) const;
  [[nodiscard]] Result<double> number(std::string_view key) const;
  /// true, false, 1 or 0.
  [[nodiscard]] Result<bool> flag(std::string_view key) const;
  /// Text that parseLength knows, or a whole number of nanometres.
  [[nodiscard]] Result<Length> length(std::string_view key) const;
  /// Text that parseRoll knows, or a whole number of nanometres.
  [[nodiscard]] Result<Length> roll(std::string_view key) const;
  [[nodiscard]] Result<Fields> object(std::string_view key) const;
  /// An array of at most `most` texts. Error besides: TooMany.
  [[nodiscard]] Result<std::vector<std::string>> texts(std::string_view key,
                                                       std::size_t most) const;
  /// An array of at most `most` objects; their paths carry their place, counted from 1: `extras/1`.
  /// Error besides: TooMany.
  [[nodiscard]] Result<std::vector<Fields>> objects(std::string_view key, std::size_t most) const;

  /// The problem with a field that is there and makes no sense; FieldMissing when it is not there.
  [[nodiscard]] Problem unreadable(std::string_view key) const;

 private:
  [[nodiscard]] const nlohmann::ordered_json* find(std::string_view key) const;

  const nlohmann::ordered_json* object_;
  std::string path_;
};

}  // namespace creasewright
