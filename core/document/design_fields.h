#pragma once

#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json.hpp>

#include "document/json_fields.h"
#include "edits/kinds/edit.h"
#include "styles/parameter_spec.h"

namespace creasewright {

// What files of designs and of own styles write alike.

/// Lengths as exact text; a key that has no row in `specs` as it is.
nlohmann::ordered_json parametersJson(const Parameters& parameters,
                                      const std::vector<ParameterSpec>& specs);

/// The field `parameters`: every row of `specs`, and nothing else. `ownerId` names whose they are
/// in problems. Errors: FieldMissing, FieldUnreadable, UnknownParameter.
Result<Parameters> readParameters(const Fields& owner, std::string_view ownerId,
                                  const std::vector<ParameterSpec>& specs);

nlohmann::ordered_json editsJson(const std::vector<Edit>& edits);

/// The field `edits`. Errors: TooMany, FieldMissing, FieldUnreadable, EditUnknown,
/// UnknownParameter.
Result<std::vector<Edit>> readEdits(const Fields& owner);

/// A field that `parse` reads from its text; its problem then names the field.
template <class T>
Result<T> readParsed(const Fields& fields, std::string_view key,
                     Result<T> (*parse)(std::string_view)) {
  const Result<std::string> text = fields.text(key);
  if (!text) return text.problem();
  Result<T> parsed = parse(*text);
  if (parsed) return parsed;
  Problem problem = parsed.problem();
  problem.where = fields.path(key);
  return problem;
}

}  // namespace creasewright
