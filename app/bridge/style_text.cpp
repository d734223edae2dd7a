#include "bridge/style_text.h"

#include <QCoreApplication>
#include <QStringList>
#include <string>

#include "bridge/core_words.h"
#include "bridge/text.h"
#include "styles/registry.h"

namespace creasewright {

namespace {

QString translated(const char* context, std::string_view source) {
  return QCoreApplication::translate(context, std::string(source).c_str());
}

}  // namespace

QString styleText(std::string_view source) { return translated("styles", source); }
QString styleTitle(const Style& style) { return styleText(style.title); }
QString styleSummary(const Style& style) { return styleText(style.summary); }
QString parameterTitle(const ParameterSpec& spec) { return styleText(spec.title); }
QString parameterHint(const ParameterSpec& spec) { return styleText(spec.hint); }

QString parameterTitle(std::string_view key) {
  for (const Style& style : styles()) {
    for (const ParameterSpec& spec : style.parameters) {
      if (spec.key == key) {
        return parameterTitle(spec);
      }
    }
  }
  return text(key);
}

QString panelTitle(std::string_view id) {
  const QStringList parts = text(id).split(QLatin1Char('/'));
  const auto words = [](const QString& part) {
    return panelWords(part.toStdString()).value_or(part);
  };
  // The last two names tell a panel from all others of its net and stay short; a side of the first
  // panel needs only its own.
  static const QStringList sides{"front", "back", "left", "right", "top-lid", "bottom-lid"};
  if (parts.size() < 2 || (parts.size() == 2 && sides.contains(parts.back()))) {
    return words(parts.back());
  }
  return QCoreApplication::translate("panels", "%1 %2", "place, part")
      .arg(words(parts[parts.size() - 2]), words(parts.back()));
}

QString stageTitle(std::string_view code) { return stageWords(code).value_or(text(code)); }
QString pieceTitle(std::string_view name) { return pieceWords(name).value_or(text(name)); }

}  // namespace creasewright
