#include <QApplication>
#include <QLocale>
#include <QStandardPaths>
#include <clocale>

#include <gtest/gtest.h>

#include "shell/language.h"
#include "widgets/theme.h"

int main(int argc, char** argv) {
  ::testing::InitGoogleTest(&argc, argv);
  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  // Settings and recovery copies of the tests stay away from the user's own.
  QStandardPaths::setTestModeEnabled(true);
  QCoreApplication::setOrganizationName("Creasewright tests");
  QCoreApplication::setApplicationName("Creasewright tests");
  creasewright::loadResources();
  creasewright::useLanguage("en");
  creasewright::applyTheme(app, creasewright::ThemeChoice::Light);
  return RUN_ALL_TESTS();
}
