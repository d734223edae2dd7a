#include "cli/command_line.h"

#include <QFile>
#include <QGuiApplication>
#include <algorithm>
#include <array>
#include <clocale>
#include <memory>
#include <string_view>

#include "bridge/language.h"
#include "cli/arguments.h"
#include "cli/commands.h"
#include "cli/output.h"
#include "shell/run_window.h"

namespace creasewright {

namespace {

/// The command that `word` names, or nullptr.
const Command* commandCalled(std::string_view word) {
  const auto found = std::ranges::find(commands(), word, &Command::name);
  return found == commands().end() ? nullptr : &*found;
}

bool looksLikeAFile(const char* argument) {
  return std::string_view(argument).ends_with(".cwdesign") ||
         QFile::exists(QFile::decodeName(argument));
}

/// The window opens when nothing is asked, for one word that is no command or option, and for
/// several files. Of several words that are no files the first is a command not written right.
bool opensWindow(int argc, char** argv) {
  if (argc <= 1) return true;
  const std::string_view first = argv[1];
  if (first == "--") return argc > 2;
  if (commandCalled(first) != nullptr) return false;
  return argc == 2 ? !first.starts_with('-') : std::all_of(argv + 1, argv + argc, looksLikeAFile);
}

bool hasDisplay() {
  constexpr std::array kNames{"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"};
  return std::ranges::any_of(kNames,
                             [](const char* name) { return !qEnvironmentVariableIsEmpty(name); });
}

/// Only PDF and PNG are painted by Qt; the other commands start quicker without its painting.
bool paints(int argc, char** argv) {
  const Command* command = argc > 2 ? commandCalled(argv[1]) : nullptr;
  return command != nullptr && command->paints != nullptr &&
         command->paints({argv + 2, argv + argc});
}

/// Standard error is for our one sentence: Qt's own remarks about the machine stay unsaid.
void onlyFatal(QtMsgType type, const QMessageLogContext&, const QString& message) {
  if (type == QtFatalMsg) fail(message);
}

std::unique_ptr<QCoreApplication> startQt(int& argc, char** argv) {
  if (!paints(argc, argv)) return std::make_unique<QCoreApplication>(argc, argv);
  qputenv("QT_QPA_PLATFORM", "offscreen");
  static int nameAlone = 1;  // Qt takes arguments such as --style for its own
  return std::make_unique<QGuiApplication>(nameAlone, argv);
}

int openWindow(int argc, char** argv) {
  if (!hasDisplay()) {
    return fail(
        Cli::tr("There is no display to open a window on. Run creasewright --help for the "
                "commands that need none."));
  }
  QStringList files;
  const bool marked = argc > 1 && std::string_view(argv[1]) == "--";
  for (int i = marked ? 2 : 1; i < argc; ++i) files += QFile::decodeName(argv[i]);
  return runWindow(argc, argv, files);
}

}  // namespace

int runCommandLine(int argc, char** argv) {
  guardOutput();
  // Where a person's own lists and styles are: the same for the window and for every command.
  QCoreApplication::setOrganizationName(QStringLiteral("Creasewright"));
  QCoreApplication::setApplicationName(QStringLiteral("Creasewright"));
  if (opensWindow(argc, argv)) return openWindow(argc, argv);
  qInstallMessageHandler(onlyFatal);
  const auto application = startQt(argc, argv);
  loadResources();
  useLanguage({});
  std::setlocale(LC_NUMERIC, "C");  // Qt set the user's; numbers in files are the same everywhere
  return runArguments(argc, argv);
}

}  // namespace creasewright
