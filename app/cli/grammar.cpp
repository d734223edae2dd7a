#include "cli/grammar.h"

#include <CLI/CLI.hpp>

namespace creasewright {

void Grammar::file(std::string& into, const QString& help) {
  command_.add_option("FILE", into, help.toStdString())->type_name("");
}

void Grammar::files(std::vector<std::string>& into, const QString& help) {
  command_.add_option("FILE", into, help.toStdString())->type_name("");
}

void Grammar::value(const char* names, const char* value, std::string& into, const QString& help) {
  command_.add_option(names, into, help.toStdString())->type_name(value);
}

void Grammar::values(const char* names, const char* value, std::vector<std::string>& into,
                     const QString& help) {
  command_.add_option(names, into, help.toStdString())->type_name(value)->allow_extra_args(false);
}

void Grammar::flag(const char* names, bool& into, const QString& help) {
  command_.add_flag(names, into, help.toStdString());
}

}  // namespace creasewright
