#include "document/design_fields.h"

#include <algorithm>

#include "base/excerpt.h"
#include "base/file_limits.h"
#include "edits/kinds/edit_kind.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

const ParameterSpec* findSpec(const std::vector<ParameterSpec>& specs, std::string_view key) {
  const auto found = std::ranges::find(specs, key, &ParameterSpec::key);
  return found == specs.end() ? nullptr : &*found;
}

Json parameterJson(ParameterKind kind, std::int64_t raw) {
  switch (kind) {
    case ParameterKind::Length:
      return exactText(Length::nanometres(raw));
    case ParameterKind::Count:
      return raw;
    case ParameterKind::Flag:
      return raw != 0;
  }
  return raw;
}

Result<std::int64_t> readParameter(const Fields& fields, const ParameterSpec& spec) {
  switch (spec.kind) {
    case ParameterKind::Length: {
      const Result<Length> length = fields.length(spec.key);
      if (!length) return length.problem();
      return length->nm();
    }
    case ParameterKind::Count:
      return fields.whole(spec.key);
    case ParameterKind::Flag: {
      const Result<bool> flag = fields.flag(spec.key);
      if (!flag) return flag.problem();
      return *flag ? 1 : 0;
    }
  }
  return fields.unreadable(spec.key);
}

Result<Edit> readEdit(const Fields& fields) {
  Edit edit;
  const Result<const EditKind*> kind = readParsed(fields, "kind", findEditKind);
  if (!kind) return kind.problem();
  edit.kind = (*kind)->id;
  struct Text {
    std::string_view key;
    std::string* into;
  };
  for (const Text& part :
       {Text{"piece", &edit.piece}, {"panel", &edit.panel}, {"edge", &edit.edge}}) {
    Result<std::string> text = fields.text(part.key);
    if (!text) return text.problem();
    *part.into = std::move(text).value();
  }
  const Result<bool> on = fields.flag("on");
  if (!on) return on.problem();
  edit.on = *on;
  const Result<Fields> measures = fields.object("measures");
  if (!measures) return measures.problem();
  for (const std::string& key : measures->keys()) {
    const auto known = std::ranges::find((*kind)->measures, key, &EditMeasure::key);
    if (known == (*kind)->measures.end())
      return Problem{ProblemCode::UnknownParameter, edit.kind, {excerpt(key)}};
    Result<std::string> formula = measures->text(key);
    if (!formula) return formula.problem();
    edit.measures[key] = std::move(formula).value();
  }
  return edit;
}

Json editJson(const Edit& edit) {
  Json measures = Json::object();
  for (const auto& [key, formula] : edit.measures) measures[key] = formula;
  return {{"kind", edit.kind}, {"piece", edit.piece}, {"panel", edit.panel},
          {"edge", edit.edge}, {"on", edit.on},       {"measures", std::move(measures)}};
}

}  // namespace

Json parametersJson(const Parameters& parameters, const std::vector<ParameterSpec>& specs) {
  Json json = Json::object();
  for (const auto& [key, raw] : parameters) {
    const ParameterSpec* spec = findSpec(specs, key);
    json[key] = spec == nullptr ? Json(raw) : parameterJson(spec->kind, raw);
  }
  return json;
}

Result<Parameters> readParameters(const Fields& owner, std::string_view ownerId,
                                  const std::vector<ParameterSpec>& specs) {
  const Result<Fields> fields = owner.object("parameters");
  if (!fields) return fields.problem();
  for (const std::string& key : fields->keys())
    if (findSpec(specs, key) == nullptr)
      return Problem{ProblemCode::UnknownParameter, std::string(ownerId), {excerpt(key)}};
  Parameters parameters;
  for (const ParameterSpec& spec : specs) {
    const Result<std::int64_t> raw = readParameter(*fields, spec);
    if (!raw) return raw.problem();
    parameters.setCount(spec.key, *raw);
  }
  return parameters;
}

Json editsJson(const std::vector<Edit>& edits) {
  Json list = Json::array();
  for (const Edit& edit : edits) list.push_back(editJson(edit));
  return list;
}

Result<std::vector<Edit>> readEdits(const Fields& design) {
  const Result<std::vector<Fields>> list = design.objects("edits", kMostEdits);
  if (!list) return list.problem();
  std::vector<Edit> edits;
  for (const Fields& fields : *list) {
    Result<Edit> edit = readEdit(fields);
    if (!edit) return edit.problem();
    edits.push_back(std::move(edit).value());
  }
  return edits;
}

}  // namespace creasewright
