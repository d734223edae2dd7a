#include "shell/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>
#include <memory>
#include <vector>

static void initResources() { Q_INIT_RESOURCE(resources); }

namespace creasewright {

namespace {

std::vector<std::unique_ptr<QTranslator>>& installed() {
  static std::vector<std::unique_ptr<QTranslator>> all;
  return all;
}

void install(const QLocale& locale, const QString& name, const QString& folder) {
  auto translator = std::make_unique<QTranslator>();
  if (translator->load(locale, name, QStringLiteral("_"), folder)) {
    QCoreApplication::installTranslator(translator.get());
    installed().push_back(std::move(translator));
  }
}

}  // namespace

void loadResources() { initResources(); }

void useLanguage(const QString& language) {
  for (const auto& translator : installed()) {
    QCoreApplication::removeTranslator(translator.get());
  }
  installed().clear();
  const QLocale chosen = language.isEmpty() ? QLocale::system() : QLocale(language);
  QLocale::setDefault(chosen);
  // With no language set the words are English, and need English plurals.
  const QLocale locale = chosen.language() == QLocale::C ? QLocale(QLocale::English) : chosen;
  install(locale, QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  install(locale, QStringLiteral("creasewright"), QStringLiteral(":/translations"));
}

}  // namespace creasewright
