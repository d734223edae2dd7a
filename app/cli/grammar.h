#pragma once

#include <QString>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace creasewright {

/// What may be written after a command, and where it ends up. Texts stay empty and flags false
/// where nothing is written. `help` is one line, translated; `value` says in the help what goes
/// after an argument. The targets must outlive the parsing.
class Grammar {
 public:
  explicit Grammar(CLI::App& command) : command_(command) {}

  /// The one file that the command reads, written without a name.
  void file(std::string& into, const QString& help);
  void files(std::vector<std::string>& into, const QString& help);
  /// An argument with a value; `names` as `--card` or `-o,--output`.
  void value(const char* names, const char* value, std::string& into, const QString& help);
  /// One that may be repeated, each time with one value.
  void values(const char* names, const char* value, std::vector<std::string>& into,
              const QString& help);
  void flag(const char* names, bool& into, const QString& help);

 private:
  CLI::App& command_;
};

}  // namespace creasewright
