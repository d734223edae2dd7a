#pragma once

#include <QString>

namespace creasewright {

/// Makes icons, style sheet and translations that are linked into the program known to Qt.
void loadResources();

/// Speaks `language` (`de`, `en`); empty follows the system. Texts of Qt's own follow along.
void useLanguage(const QString& language);

}  // namespace creasewright
