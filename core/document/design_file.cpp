#include "document/design_file.h"

#include <algorithm>
#include <cmath>

#include <nlohmann/json.hpp>

#include "base/excerpt.h"
#include "document/file_io.h"
#include "document/json_fields.h"
#include "styles/registry.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::int64_t kLargestFile = 4 << 20;  // bytes; a design takes about one thousand
constexpr std::string_view kFormat = "creasewright-design";
constexpr Length kThickestCard = Length::nanometres(3'000'000);
constexpr double kHeaviestCard = 10'000;  // g/m2

const ParameterSpec* findSpec(const Style* style, std::string_view key) {
  if (style == nullptr) return nullptr;
  const auto found = std::ranges::find(style->parameters, key, &ParameterSpec::key);
  return found == style->parameters.end() ? nullptr : &*found;
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

Json parametersJson(const Design& design) {
  const Result<const Style*> style = findStyle(design.styleId);
  Json json = Json::object();
  for (const auto& [key, raw] : design.parameters) {
    const ParameterSpec* spec = findSpec(style ? *style : nullptr, key);
    json[key] = spec == nullptr ? Json(raw) : parameterJson(spec->kind, raw);
  }
  return json;
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

Result<Parameters> readParameters(const Fields& design, const Style& style) {
  const Result<Fields> fields = design.object("parameters");
  if (!fields) return fields.problem();
  for (const std::string& key : fields->keys())
    if (findSpec(&style, key) == nullptr)
      return Problem{ProblemCode::UnknownParameter, std::string(style.id), {excerpt(key)}};
  Parameters parameters;
  for (const ParameterSpec& spec : style.parameters) {
    const Result<std::int64_t> raw = readParameter(*fields, spec);
    if (!raw) return raw.problem();
    parameters.setCount(spec.key, *raw);
  }
  return parameters;
}

Result<Card> readCard(const Fields& design) {
  const Result<Fields> fields = design.object("card");
  if (!fields) return fields.problem();
  const Result<std::string> id = fields->text("id");
  if (!id) return id.problem();
  const Result<std::string> name = fields->text("name");
  if (!name) return name.problem();
  const Result<Length> caliper = fields->length("caliper");
  if (!caliper) return caliper.problem();
  if (*caliper <= Length()) return fields->unreadable("caliper");
  if (*caliper > kThickestCard)
    return Problem{ProblemCode::CardTooThick, fields->path("caliper"), {*caliper, kThickestCard}};
  const Result<double> grammage = fields->number("grammage");
  if (!grammage) return grammage.problem();
  if (!(*grammage >= 0 && *grammage <= kHeaviestCard)) return fields->unreadable("grammage");
  return Card{*id, *name, *caliper, *grammage};
}

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

Result<Design> readCurrent(const Fields& fields) {
  Design design;
  const Result<const Style*> style = readParsed(fields, "style", findStyle);
  if (!style) return style.problem();
  design.styleId = (*style)->id;
  const Result<std::string> title = fields.text("title");
  if (!title) return title.problem();
  design.title = *title;
  const Result<std::string> notes = fields.text("notes");
  if (!notes) return notes.problem();
  design.notes = *notes;
  if (fields.has("product")) {
    const Result<Product> product = readParsed(fields, "product", parseProduct);
    if (!product) return product.problem();
    design.product = *product;
  }
  const Result<Parameters> parameters = readParameters(fields, **style);
  if (!parameters) return parameters.problem();
  design.parameters = *parameters;
  const Result<Card> card = readCard(fields);
  if (!card) return card.problem();
  design.card = *card;
  const Result<Ease> ease = readParsed(fields, "ease", parseEase);
  if (!ease) return ease.problem();
  design.ease = *ease;
  const Result<ToolGrid> grid = readParsed(fields, "grid", parseToolGrid);
  if (!grid) return grid.problem();
  design.grid = *grid;
  return design;
}

/// Turns the fields of an older version into those of the newest, one version at a time. Version 1
/// is the first, so there is nothing to turn yet; each later version adds its step here.
void migrate([[maybe_unused]] Json& json, std::int64_t version) {
  for (; version < kDesignVersion; ++version) {
    switch (version) {
      default:
        break;
    }
  }
}

}  // namespace

std::string writeDesign(const Design& design) {
  Json json;
  json["format"] = kFormat;
  json["version"] = kDesignVersion;
  json["title"] = design.title;
  json["style"] = design.styleId;
  if (design.product) json["product"] = productText(*design.product);
  json["parameters"] = parametersJson(design);
  json["card"] = {{"id", design.card.id},
                  {"name", design.card.name},
                  {"caliper", exactText(design.card.caliper)},
                  {"grammage", design.card.grammage}};
  json["ease"] = easeText(design.ease);
  json["grid"] = toolGridText(design.grid);
  json["notes"] = design.notes;
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<Design> readDesign(std::string_view text, std::string_view where) {
  Result<OwnFile> own =
      openOwnFile(text, where, {kFormat, kDesignVersion, kLargestFile, ProblemCode::NotADesign});
  if (!own) return own.problem();
  OwnFile file = std::move(own).value();
  migrate(file.json, file.version);
  return readCurrent(Fields(file.json, ""));
}

Result<Design> readDesignFile(const std::string& path) {
  const Result<std::string> text = readFile(path, kLargestFile);
  if (!text) return text.problem();
  return readDesign(*text, path);
}

std::optional<Problem> writeDesignFile(const Design& design, const std::string& path) {
  return writeFileAtomically(path, writeDesign(design));
}

}  // namespace creasewright
