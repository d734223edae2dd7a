#include "document/own_style_file.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "base/excerpt.h"
#include "base/file_limits.h"
#include "document/design_fields.h"
#include "document/file_io.h"
#include "document/limit_problems.h"
#include "styles/registry.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

using StyleJson = nlohmann::ordered_json;

constexpr std::string_view kStyleFormat = "creasewright-style";
constexpr std::array<std::string_view, 3> kSizeNames{"length", "width", "height"};

bool hasMeasure(const Style& base, std::string_view key) {
  return std::ranges::find(base.parameters, key, &ParameterSpec::key) != base.parameters.end();
}

StyleJson sizesJson(const std::array<Length, 3>& sizes) {
  StyleJson json = StyleJson::object();
  for (std::size_t i = 0; i < sizes.size(); ++i)
    json[std::string(kSizeNames.at(i))] = exactText(sizes.at(i));
  return json;
}

Result<std::array<Length, 3>> readSizes(const Fields& suits, std::string_view key) {
  const Result<Fields> fields = suits.object(key);
  if (!fields) return fields.problem();
  std::array<Length, 3> sizes;
  for (std::size_t i = 0; i < sizes.size(); ++i) {
    const Result<Length> size = fields->length(kSizeNames.at(i));
    if (!size) return size.problem();
    if (*size <= Length()) return fields->unreadable(kSizeNames.at(i));
    sizes.at(i) = *size;
  }
  return sizes;
}

Result<SuitedSizes> readSuited(const Fields& style) {
  const Result<Fields> fields = style.object("suits");
  if (!fields) return fields.problem();
  const Result<std::array<Length, 3>> least = readSizes(*fields, "least");
  if (!least) return least.problem();
  const Result<std::array<Length, 3>> most = readSizes(*fields, "most");
  if (!most) return most.problem();
  for (std::size_t i = 0; i < 3; ++i)
    if (least->at(i) > most->at(i)) return fields->object("most")->unreadable(kSizeNames.at(i));
  return SuitedSizes{*least, *most};
}

std::optional<Problem> readSeen(const Fields& fields, const Style& base, OwnStyle& style) {
  Result<std::vector<std::string>> seen = fields.texts("seen", kMostKeys);
  if (!seen) return seen.problem();
  for (const std::string& key : *seen)
    if (!hasMeasure(base, key))
      return Problem{ProblemCode::UnknownParameter, style.base, {excerpt(key)}};
  style.seen = std::move(seen).value();
  return std::nullopt;
}

std::optional<Problem> readRules(const Fields& fields, const Style& base, OwnStyle& style) {
  const Result<Fields> rules = fields.object("rules");
  if (!rules) return rules.problem();
  for (const std::string& key : rules->keys()) {
    if (!hasMeasure(base, key))
      return Problem{ProblemCode::UnknownParameter, style.base, {excerpt(key)}};
    Result<std::string> rule = rules->text(key);
    if (!rule) return rule.problem();
    style.rules[key] = std::move(rule).value();
  }
  return std::nullopt;
}

/// The texts of a style, each into its place.
std::optional<Problem> readTexts(const Fields& fields, OwnStyle& style) {
  struct Text {
    std::string_view key;
    std::string* into;
  };
  for (const Text& part : {Text{"id", &style.id},
                           {"title", &style.title},
                           {"summary", &style.summary},
                           {"base", &style.base}}) {
    Result<std::string> text = fields.text(part.key);
    if (!text) return text.problem();
    *part.into = std::move(text).value();
  }
  if (!isOwnStyleId(style.id)) return fields.unreadable("id");
  if (!fields.has("picture")) return std::nullopt;
  Result<std::string> picture = fields.text("picture");
  if (!picture) return picture.problem();
  style.picture = std::move(picture).value();
  return std::nullopt;
}

Result<OwnStyle> readStyleFields(const Fields& fields) {
  OwnStyle style;
  if (const auto problem = readTexts(fields, style)) return *problem;
  const Result<std::int64_t> change = fields.whole("change");
  if (!change) return change.problem();
  if (*change < 1) return fields.unreadable("change");
  style.change = *change;
  const Result<const Style*> base = findStyle(style.base);
  if (!base) return Problem{ProblemCode::UnknownStyle, "base", {excerpt(style.base)}};
  if (fields.has("suits")) {
    const Result<SuitedSizes> suits = readSuited(fields);
    if (!suits) return suits.problem();
    style.suits = *suits;
  }
  const Result<Parameters> parameters = readParameters(fields, style.base, (*base)->parameters);
  if (!parameters) return parameters.problem();
  style.parameters = *parameters;
  if (const auto problem = readSeen(fields, **base, style)) return *problem;
  if (const auto problem = readRules(fields, **base, style)) return *problem;
  Result<std::vector<Edit>> edits = readEdits(fields);
  if (!edits) return edits.problem();
  style.edits = std::move(edits).value();
  return style;
}

}  // namespace

std::string writeOwnStyle(const OwnStyle& style) {
  StyleJson json;
  json["format"] = kStyleFormat;
  json["version"] = kOwnStyleVersion;
  json["id"] = style.id;
  json["change"] = style.change;
  json["title"] = style.title;
  json["summary"] = style.summary;
  if (style.suits) {
    json["suits"] = {{"least", sizesJson(style.suits->least)},
                     {"most", sizesJson(style.suits->most)}};
  }
  json["base"] = style.base;
  const Result<const Style*> base = findStyle(style.base);
  json["parameters"] =
      parametersJson(style.parameters, base ? (*base)->parameters : std::vector<ParameterSpec>{});
  json["seen"] = style.seen;
  json["rules"] = StyleJson::object();
  for (const auto& [key, rule] : style.rules) json["rules"][key] = rule;
  json["edits"] = editsJson(style.edits);
  if (!style.picture.empty()) json["picture"] = style.picture;
  return json.dump(2, ' ', false, StyleJson::error_handler_t::replace) + "\n";
}

Result<OwnStyle> readOwnStyle(std::string_view text, std::string_view where) {
  const Result<OwnFile> own = openOwnFile(
      text, where, {kStyleFormat, kOwnStyleVersion, kLargestStyleFile, ProblemCode::NotAStyle});
  if (!own) return own.problem();
  Result<OwnStyle> style = readStyleFields(Fields(own->json, ""));
  if (!style) return style;
  if (const auto problem = fileLimitProblem(*style)) return *problem;
  return style;
}

Result<OwnStyle> readOwnStyleFile(const std::string& path) {
  const Result<std::string> text = readFile(path, kLargestStyleFile);
  if (!text) return text.problem();
  return readOwnStyle(*text, path);
}

Result<std::string> ownStyleFileText(const OwnStyle& style, std::string_view where) {
  if (const auto problem = fileLimitProblem(style)) return *problem;
  std::string text = writeOwnStyle(style);
  if (const auto problem = largestOf(where, text.size(), kLargestStyleFile)) return *problem;
  return text;
}

std::optional<Problem> writeOwnStyleFile(const OwnStyle& style, const std::string& path) {
  const Result<std::string> text = ownStyleFileText(style, path);
  return text ? writeFileAtomically(path, *text) : std::optional(text.problem());
}

std::optional<Problem> fileLimitProblem(const OwnStyle& style) {
  if (auto problem = longestOf("title", style.title, kLongestTitle)) return problem;
  if (auto problem = longestOf("summary", style.summary, kLongestNotes)) return problem;
  if (auto problem = longestOf("picture", style.picture, kLongestPicture)) return problem;
  for (const auto& [key, rule] : style.rules)
    if (auto problem = longestOf("rules/" + key, rule, kLongestTitle)) return problem;
  return editLimitProblem(style.edits);
}

}  // namespace creasewright
