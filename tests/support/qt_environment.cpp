#include <QApplication>
#include <QTemporaryDir>
#include <clocale>
#include <memory>

#include <gtest/gtest.h>

#include "bridge/language.h"
#include "widgets/theme.h"

namespace {

/// One QApplication for all app tests, in English and the light palette; settings, lists and
/// recovery copies of each process lie in a folder of its own that goes with it.
class QtEnvironment : public ::testing::Environment {
 public:
  void SetUp() override {
    if (QCoreApplication::instance() != nullptr) {
      return;
    }
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
      qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    for (const char* place : {"XDG_DATA_HOME", "XDG_CONFIG_HOME", "XDG_CACHE_HOME"}) {
      qputenv(place, folder_.filePath(QLatin1String(place)).toLocal8Bit());
    }
    application_ = std::make_unique<QApplication>(argc_, argv_);
    std::setlocale(LC_NUMERIC, "C");
    QCoreApplication::setOrganizationName("Creasewright tests");
    QCoreApplication::setApplicationName("Creasewright tests");
    creasewright::loadResources();
    creasewright::useLanguage("en");
    creasewright::applyTheme(*application_, creasewright::ThemeChoice::Light);
  }
  void TearDown() override { application_.reset(); }

 private:
  QTemporaryDir folder_;
  int argc_ = 1;
  char name_[10] = "app_tests";
  char* argv_[2] = {name_, nullptr};
  std::unique_ptr<QApplication> application_;
};

[[maybe_unused]] const auto* const kEnvironment =
    ::testing::AddGlobalTestEnvironment(new QtEnvironment);

}  // namespace
