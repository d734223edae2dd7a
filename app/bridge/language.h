#pragma once

#include <QString>
#include <vector>

namespace creasewright {

/// Makes icons, style sheet and translations that are linked into the program known to Qt.
void loadResources();

/// A language that the program speaks.
struct Language {
  QString code;     ///< `de`
  QString ownName;  ///< `Deutsch`
};

/// All of them: those translated in translations/ (app/CMakeLists.txt lists the files), English
/// first. Needs loadResources().
const std::vector<Language>& languages();

/// The code of the language that texts come in now, as files name it: `de`, `en`.
QString languageSpoken();

/// Speaks `language` (`de`, `en`); empty follows the system. Texts of Qt's own follow along.
void useLanguage(const QString& language);

}  // namespace creasewright
