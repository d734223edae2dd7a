#include "bridge/style_text.h"

#include <QCoreApplication>
#include <QStringList>
#include <string>

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
  QStringList words;
  for (qsizetype i = parts.size() > 1 ? 1 : 0; i < parts.size(); ++i) {
    words += translated("panels", parts[i].toStdString());
  }
  return words.join(QLatin1Char(' '));
}

QString stageTitle(std::string_view code) { return translated("stages", code); }
QString pieceTitle(std::string_view name) { return translated("pieces", name); }

}  // namespace creasewright
