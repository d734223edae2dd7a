#include "cli/styles_command.h"

#include <nlohmann/json.hpp>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "cli/output.h"
#include "document/design.h"
#include "styles/registry.h"
#include "units/length_text.h"

namespace creasewright {

namespace {

using Json = nlohmann::ordered_json;

/// A style with the values its limits are read at: the defaults, on the program's default card.
struct Defaults {
  const Style& style;
  Parameters parameters;
  Making making;
};

Defaults defaultsOf(const Style& style) {
  const Design design;
  return {style, standardParameters(style), {design.card.caliper, design.grid}};
}

const char* unitName(ParameterKind kind) {
  switch (kind) {
    case ParameterKind::Length:
      return "mm";
    case ParameterKind::Count:
      return "count";
    case ParameterKind::Flag:
      return "flag";
  }
  return "";
}

/// Lengths in millimetres, counts and flags as whole numbers.
Json valueJson(ParameterKind kind, std::int64_t raw) {
  if (kind == ParameterKind::Length) {
    return Length::nanometres(raw).mm();
  }
  return raw;
}

Json parameterJson(const ParameterSpec& spec, const Defaults& defaults) {
  return {{"key", spec.key},
          {"title", parameterTitle(spec).toStdString()},
          {"hint", parameterHint(spec).toStdString()},
          {"unit", unitName(spec.kind)},
          {"default", valueJson(spec.kind, spec.standard)},
          {"minimum", valueJson(spec.kind, spec.minimum(defaults.parameters, defaults.making))},
          {"maximum", valueJson(spec.kind, spec.maximum(defaults.parameters, defaults.making))}};
}

Json styleJson(const Style& style) {
  const Defaults defaults = defaultsOf(style);
  Json parameters = Json::array();
  for (const ParameterSpec& spec : style.parameters) {
    parameters.push_back(parameterJson(spec, defaults));
  }
  return {{"id", style.id},
          {"title", styleTitle(style).toStdString()},
          {"summary", styleSummary(style).toStdString()},
          {"parameters", std::move(parameters)}};
}

void printJson() {
  Json list = Json::array();
  for (const Style& style : styles()) {
    list.push_back(styleJson(style));
  }
  const Json page{{"format", "creasewright-styles"}, {"version", 1}, {"styles", std::move(list)}};
  printLine(QString::fromStdString(page.dump(2)));
}

QString valueWords(ParameterKind kind, std::int64_t raw) {
  switch (kind) {
    case ParameterKind::Length:
      return text(exactText(Length::nanometres(raw)));
    case ParameterKind::Count:
      return QString::number(raw);
    case ParameterKind::Flag:
      return raw != 0 ? Cli::tr("yes (1)") : Cli::tr("no (0)");
  }
  return {};
}

QString parameterLine(const ParameterSpec& spec, const Defaults& defaults) {
  const QString start =
      QStringLiteral("    %1 %2")
          .arg(text(spec.key).leftJustified(16), valueWords(spec.kind, spec.standard));
  if (spec.kind == ParameterKind::Flag) {
    return QStringLiteral("%1  %2").arg(start.leftJustified(34), parameterTitle(spec));
  }
  const QString range =
      Cli::tr("%1 to %2")
          .arg(valueWords(spec.kind, spec.minimum(defaults.parameters, defaults.making)),
               valueWords(spec.kind, spec.maximum(defaults.parameters, defaults.making)));
  return QStringLiteral("%1  %2 (%3)").arg(start.leftJustified(34), parameterTitle(spec), range);
}

void printText() {
  for (const Style& style : styles()) {
    const Defaults defaults = defaultsOf(style);
    printLine(QStringLiteral("%1  %2").arg(text(style.id), styleTitle(style)));
    printLine(QStringLiteral("    %1").arg(styleSummary(style)));
    for (const ParameterSpec& spec : style.parameters) {
      printLine(parameterLine(spec, defaults));
    }
  }
}

}  // namespace

int runStyles(bool json) {
  json ? printJson() : printText();
  return ExitHolds;
}

}  // namespace creasewright
