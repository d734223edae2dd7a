#pragma once

#include <string>

#include <CLI/CLI.hpp>

#include "cli/export_command.h"
#include "cli/guide_command.h"
#include "cli/kit_command.h"
#include "cli/new_command.h"
#include "cli/suggest_command.h"

namespace creasewright {

/// The grammar of the command line: what may be written, and where it ends up.
class Arguments {
 public:
  Arguments();
  Arguments(const Arguments&) = delete;
  Arguments& operator=(const Arguments&) = delete;

  /// Parses and runs the command that was asked for; returns the exit code.
  int run(int argc, char** argv);

 private:
  static void addProduct(CLI::App& command, const char* name, ChoiceOptions& choices);
  static void addMaterial(CLI::App& command, ChoiceOptions& choices);
  void addStyles();
  void addNew();
  void addCheck();
  void addExport();
  void addGuide();
  void addKit();
  void translateHelp();
  int parse(int argc, char** argv);
  int refuseExtras();
  int dispatch();

  CLI::App app_;
  CLI::App* styles_ = nullptr;
  CLI::App* new_ = nullptr;
  CLI::App* check_ = nullptr;
  CLI::App* export_ = nullptr;
  CLI::App* guide_ = nullptr;
  CLI::App* kit_ = nullptr;

  std::string windowFile_;
  bool stylesJson_ = false;
  SuggestOptions suggestOptions_;
  bool checkJson_ = false;
  std::string checkFile_;
  NewOptions newOptions_;
  ExportOptions exportOptions_;
  GuideOptions guideOptions_;
  KitOptions kitOptions_;
};

}  // namespace creasewright
