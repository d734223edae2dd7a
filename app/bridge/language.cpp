#include "bridge/language.h"

#include <QCoreApplication>
#include <QDir>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>
#include <algorithm>
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

const QString translationsFolder = QStringLiteral(":/translations");

/// What a language calls itself, as its own file says.
QString ownName(const QString& code) {
  constexpr const char* kEnglish[] = QT_TRANSLATE_NOOP3("languages", "English", "its own name");
  QTranslator words;
  const QString own = words.load(QStringLiteral("creasewright_") + code, translationsFolder)
                          ? words.translate("languages", kEnglish[0], kEnglish[1])
                          : QString();
  return own.isEmpty() ? QLatin1String(kEnglish[0]) : own;
}

/// What the program was built with.
std::vector<Language> shipped() {
  std::vector<Language> all;
  for (const QString& file : QDir(translationsFolder).entryList({"creasewright_*.qm"})) {
    const QString code = file.section(QLatin1Char('_'), 1).section(QLatin1Char('.'), 0, 0);
    all.push_back({code, ownName(code)});
  }
  std::ranges::stable_partition(
      all, [](const Language& one) { return one.code == QLatin1String("en"); });
  return all;
}

}  // namespace

void loadResources() { initResources(); }

void useLanguage(const QString& language) {
  for (const auto& translator : installed()) QCoreApplication::removeTranslator(translator.get());
  installed().clear();
  const QLocale chosen = language.isEmpty() ? QLocale::system() : QLocale(language);
  QLocale::setDefault(chosen);
  // With no language set the words are English, and need English plurals.
  const QLocale locale = chosen.language() == QLocale::C ? QLocale(QLocale::English) : chosen;
  install(locale, QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
  install(locale, QStringLiteral("creasewright"), translationsFolder);
}

QString languageSpoken() {
  const QLocale locale;
  const auto known = [&locale](const Language& each) {
    return QLocale(each.code).language() == locale.language();
  };
  const std::vector<Language>& all = languages();
  const auto found = std::ranges::find_if(all, known);
  return found == all.end() ? QStringLiteral("en") : found->code;
}

const std::vector<Language>& languages() {
  static const std::vector<Language> all = shipped();
  return all;
}

}  // namespace creasewright
