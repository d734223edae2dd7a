#include "shell/run_window.h"

#include <QApplication>
#include <clocale>

#include "bridge/language.h"
#include "session/preferences.h"
#include "shell/main_window.h"
#include "widgets/icon.h"

namespace creasewright {

int runWindow(int argc, char** argv, const QStringList& files) {
  QApplication app(argc, argv);
  // Qt sets the user's locale; core and C libraries must keep writing numbers the same way.
  std::setlocale(LC_NUMERIC, "C");
  loadResources();
  useLanguage(preferredLanguage());
  applyTheme(app, preferredTheme());
  QApplication::setWindowIcon(lineIcon(QStringLiteral("creasewright")));
  MainWindow* first = openWindow(files.value(0));
  for (const QString& file : files.mid(1)) openWindow(file);
  first->offer(findRecovery(recoveryFolder()));
  if (files.isEmpty()) first->welcome();
  return QApplication::exec();
}

}  // namespace creasewright
