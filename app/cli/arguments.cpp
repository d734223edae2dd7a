#include "cli/arguments.h"

#include <algorithm>
#include <string>

#include <CLI/CLI.hpp>

#include "bridge/text.h"
#include "cli/commands.h"
#include "cli/output.h"

namespace creasewright {

namespace {

/// The command line: what may be written, and what it starts.
class Arguments {
 public:
  Arguments();
  Arguments(const Arguments&) = delete;
  Arguments& operator=(const Arguments&) = delete;

  /// Parses and runs the command that was asked for; returns the exit code.
  int run(int argc, char** argv);

 private:
  struct Added {
    CLI::App* app;
    std::function<int()> run;
  };

  void translateHelp(CLI::App& app);
  int parse(int argc, char** argv);
  int refuseExtras();
  int refuseEmpty();
  int dispatch();

  CLI::App app_;
  std::vector<std::string> windowFiles_;
  std::vector<Added> commands_;
};

constexpr int kParsed = -1;

std::string words(const QString& line) { return line.toStdString(); }

/// CLI11 words its errors in English only; all we need from it is the argument they are about.
QString usageSentence(const CLI::ParseError& error) {
  const std::string message = error.what();
  const QString argument = shown(message.substr(0, message.find_first_of(": ")));
  if (dynamic_cast<const CLI::ArgumentMismatch*>(&error) != nullptr) {
    return Cli::tr("%1: This argument takes one value. Write it once, with its value after it.")
        .arg(argument);
  }
  return Cli::tr("%1: This cannot be read. Run creasewright --help to see what can be written.")
      .arg(argument);
}

/// `styles, new and check`.
QString commandNames() {
  QStringList names;
  for (const Command& command : commands()) names += QLatin1String(command.name);
  const QString last = names.takeLast();
  return Cli::tr("%1 and %2", "a list and its last").arg(names.join(QStringLiteral(", ")), last);
}

Arguments::Arguments() {
  app_.name("creasewright");
  app_.description(
      words(Cli::tr("Design small gift packaging from folded card. Without a command the window "
                    "opens.")));
  app_.allow_extras();
  app_.require_subcommand(0, 1);  // what follows a command is its own, whatever it is called
  app_.add_option("FILE", windowFiles_,
                  words(Cli::tr("designs to open, each in a window of its own")))
      ->type_name("");
  app_.set_version_flag("--version", CREASEWRIGHT_VERSION,
                        words(Cli::tr("print the program's version")));
  translateHelp(app_);
  for (const Command& command : commands()) {
    CLI::App* added = app_.add_subcommand(command.name, words(command.help()));
    added->group(words(Cli::tr("Commands")));
    added->allow_extras();
    translateHelp(*added);
    Grammar grammar(*added);
    commands_.push_back({added, command.prepare(grammar)});
  }
}

void Arguments::translateHelp(CLI::App& app) {
  app.set_help_flag("-h,--help", words(Cli::tr("print this help")));
  const auto formatter = app.get_formatter();
  formatter->label("Usage", words(Cli::tr("Usage")));
  formatter->label("OPTIONS", words(Cli::tr("OPTIONS")));
  formatter->label("SUBCOMMAND", words(Cli::tr("COMMAND")));
  formatter->label("Positionals", words(Cli::tr("Files")));
  formatter->label("Options", words(Cli::tr("Options")));
}

int Arguments::run(int argc, char** argv) {
  if (const int code = parse(argc, argv); code != kParsed) return code;
  if (const int code = refuseExtras(); code != kParsed) return code;
  if (const int code = refuseEmpty(); code != kParsed) return code;
  return dispatch();
}

int Arguments::parse(int argc, char** argv) {
  try {
    app_.parse(argc, argv);
  } catch (const CLI::Success& asked) {  // --help, --version
    const bool help = dynamic_cast<const CLI::CallForHelp*>(&asked) != nullptr;
    printLine(text(help ? app_.help() : asked.what()).trimmed());
    return ExitHolds;
  } catch (const CLI::ParseError& error) {
    return fail(usageSentence(error));
  }
  return kParsed;
}

int Arguments::refuseExtras() {
  for (const CLI::App* command : app_.get_subcommands()) {
    auto extras = command->remaining();
    // What stands after the first `--` is no option, whatever it begins with.
    if (const auto mark = std::ranges::find(extras, "--"); mark != extras.end()) extras.erase(mark);
    if (!extras.empty()) {
      return fail(
          Cli::tr("%1: The command %2 does not know this. Run creasewright %2 --help to see what "
                  "it knows.")
              .arg(shown(extras.front()), text(command->get_name())));
    }
  }
  // What follows `--` when the command takes no more files comes back to us.
  if (!app_.get_subcommands().empty() && !windowFiles_.empty()) {
    return fail(
        Cli::tr("%1: The command %2 does not know this. Run creasewright %2 --help to see "
                "what it knows.")
            .arg(shown(windowFiles_.front()), text(app_.get_subcommands().front()->get_name())));
  }
  if (app_.get_subcommands().empty()) {
    auto extras = app_.remaining();
    extras.insert(extras.end(), windowFiles_.begin(), windowFiles_.end());
    return fail(
        Cli::tr("%1: There is no such command. The commands are %2.")
            .arg(shown(extras.empty() ? std::string("--") : extras.front()), commandNames()));
  }
  return kParsed;
}

/// An argument with nothing after it is no argument left out. Only a title may be empty.
int Arguments::refuseEmpty() {
  for (const CLI::App* command : app_.get_subcommands()) {
    for (const CLI::Option* option : command->get_options()) {
      if (option->get_positional() || option->check_lname("title") ||
          std::ranges::count(option->results(), std::string()) == 0)
        continue;
      return fail(Cli::tr("%1: This argument is empty. Write a value after it or leave it out.")
                      .arg(text(option->check_sname("o") ? "-o" : option->get_name())));
    }
  }
  return kParsed;
}

int Arguments::dispatch() {
  const auto asked =
      std::ranges::find_if(commands_, [](const Added& command) { return command.app->parsed(); });
  return asked->run();
}

}  // namespace

int runArguments(int argc, char** argv) { return afterOutput(Arguments().run(argc, argv)); }

}  // namespace creasewright
