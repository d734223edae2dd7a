#include "shell/run_window.h"

#include <QApplication>
#include <clocale>

#include "session/preferences.h"
#include "shell/language.h"
#include "shell/main_window.h"
#include "widgets/icon.h"

namespace creasewright {

int runWindow(const QString& file, const QString& language) {
  // Qt sets the user's locale; core and C libraries must keep writing numbers the same way.
  std::setlocale(LC_NUMERIC, "C");
  auto* app = qobject_cast<QApplication*>(QCoreApplication::instance());
  if (app == nullptr) {
    return 1;
  }
  QCoreApplication::setOrganizationName(QStringLiteral("Creasewright"));
  QCoreApplication::setApplicationName(QStringLiteral("Creasewright"));
  loadResources();
  useLanguage(language.isEmpty() ? preferredLanguage() : language);
  applyTheme(*app, preferredTheme());
  QApplication::setWindowIcon(lineIcon(QStringLiteral("creasewright")));
  MainWindow window;
  window.show();
  window.begin(file);
  return QApplication::exec();
}

}  // namespace creasewright
