#include "session/preferences.h"

#include <QFileInfo>
#include <QLocale>
#include <QSettings>

#include "styles/parameter_text.h"

namespace creasewright {

namespace {

constexpr int kRecentLimit = 8;

QVariant setting(const char* key) { return QSettings().value(QLatin1String(key)); }

void keep(const char* key, const QVariant& value) {
  QSettings().setValue(QLatin1String(key), value);
}

QString useKey(const QString& path) {
  return QStringLiteral("shelf/used/") + QFileInfo(path).completeBaseName();
}

}  // namespace

Unit preferredUnit() {
  const QString kept = setting("unit").toString();
  if (kept.isEmpty()) {
    return QLocale::system().measurementSystem() == QLocale::MetricSystem ? Unit::Millimetre
                                                                          : Unit::Inch;
  }
  return kept == QLatin1String("in") ? Unit::Inch : Unit::Millimetre;
}

void setPreferredUnit(Unit unit) {
  keep("unit", unit == Unit::Inch ? QStringLiteral("in") : QStringLiteral("mm"));
}

Unit unitShown(ToolGrid grid) {
  const bool chosen = !setting("unit").toString().isEmpty();
  return chosen || grid.isNone() ? preferredUnit() : unitOf(grid);
}

ThemeChoice preferredTheme() {
  const QString kept = setting("theme").toString();
  if (kept == QLatin1String("light")) return ThemeChoice::Light;
  return kept == QLatin1String("dark") ? ThemeChoice::Dark : ThemeChoice::System;
}

void setPreferredTheme(ThemeChoice choice) {
  switch (choice) {
    case ThemeChoice::System:
      return keep("theme", QStringLiteral("system"));
    case ThemeChoice::Light:
      return keep("theme", QStringLiteral("light"));
    case ThemeChoice::Dark:
      return keep("theme", QStringLiteral("dark"));
  }
}

QString preferredLanguage() { return setting("language").toString(); }

void setPreferredLanguage(const QString& language) { keep("language", language); }

QString preferredPaper() {
  const QString kept = setting("paper").toString();
  if (!kept.isEmpty()) return kept;
  return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem
             ? QStringLiteral("letter")
             : QStringLiteral("a4");
}

void setPreferredPaper(const QString& id) { keep("paper", id); }

GuideForm preferredGuideForm() {
  GuideForm form;
  for (const GuideSizeName& each : guideSizes())
    if (each.name == setting("guide/type").toByteArray()) form.size = each.size;
  for (const HandName& each : handNames())
    if (each.name == setting("guide/hand").toByteArray()) form.hand = each.hand;
  form.black = setting("guide/black").toBool();
  return form;
}

void setPreferredGuideForm(const GuideForm& form) {
  for (const GuideSizeName& each : guideSizes())
    if (each.size == form.size) keep("guide/type", QString::fromLatin1(each.name));
  for (const HandName& each : handNames())
    if (each.hand == form.hand) keep("guide/hand", QString::fromLatin1(each.name));
  keep("guide/black", form.black);
}

QDateTime lastUse(const QString& path) { return QSettings().value(useKey(path)).toDateTime(); }

void rememberUse(const QString& path) {
  QSettings().setValue(useKey(path), QDateTime::currentDateTime());
}

bool isFirstStart() { return !setting("started").toBool(); }

void rememberStart() { keep("started", true); }

QStringList recentFiles() {
  QStringList files;
  for (const QString& path : setting("recent").toStringList())
    if (QFileInfo::exists(path)) files += path;
  return files;
}

void rememberFile(const QString& path) {
  QStringList files = recentFiles();
  const QString full = QFileInfo(path).absoluteFilePath();
  files.removeAll(full);
  files.prepend(full);
  keep("recent", files.mid(0, kRecentLimit));
}

}  // namespace creasewright
