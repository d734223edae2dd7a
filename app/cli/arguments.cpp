#include "cli/arguments.h"

#include <algorithm>
#include <string>

#include <CLI/CLI.hpp>

#include "bridge/text.h"
#include "cli/cards_command.h"
#include "cli/check_command.h"
#include "cli/export_command.h"
#include "cli/guide_command.h"
#include "cli/kit_command.h"
#include "cli/new_command.h"
#include "cli/output.h"
#include "cli/styles_command.h"
#include "cli/suggest_command.h"

namespace creasewright {

namespace {

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
  void addExtras();
  void addCards();
  void addNew();
  void addCheck();
  void addExport();
  void addGuide();
  void addKit();
  void translateHelp();
  int parse(int argc, char** argv);
  int refuseExtras();
  int refuseEmpty();
  int dispatch();

  CLI::App app_;
  CLI::App* styles_ = nullptr;
  CLI::App* extras_ = nullptr;
  CLI::App* cards_ = nullptr;
  CLI::App* new_ = nullptr;
  CLI::App* check_ = nullptr;
  CLI::App* export_ = nullptr;
  CLI::App* guide_ = nullptr;
  CLI::App* kit_ = nullptr;

  std::vector<std::string> windowFiles_;
  bool stylesJson_ = false;
  bool extrasJson_ = false;
  bool cardsJson_ = false;
  SuggestOptions suggestOptions_;
  bool checkJson_ = false;
  std::string checkFile_;
  NewOptions newOptions_;
  ExportOptions exportOptions_;
  GuideOptions guideOptions_;
  KitOptions kitOptions_;
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

Arguments::Arguments() {
  app_.name("creasewright");
  app_.description(
      words(Cli::tr("Design small gift packaging from folded card. Without a command the window "
                    "opens.")));
  app_.allow_extras();
  app_.add_option("FILE", windowFiles_,
                  words(Cli::tr("designs to open, each in a window of its own")))
      ->type_name("");
  app_.set_version_flag("--version", CREASEWRIGHT_VERSION,
                        words(Cli::tr("print the program's version")));
  addStyles();
  addExtras();
  addCards();
  addNew();
  addCheck();
  addExport();
  addGuide();
  addKit();
  translateHelp();
}

void Arguments::addStyles() {
  SuggestOptions& o = suggestOptions_;
  styles_ = app_.add_subcommand(
      "styles", words(Cli::tr("list every style and its measures, or rank them for a product")));
  addProduct(*styles_, "--for", o.choices);
  addMaterial(*styles_, o.choices);
  styles_->add_option("--sheet", o.sheets, words(Cli::tr("a sheet at hand; may be repeated")))
      ->type_name("NAME")
      ->allow_extra_args(false);
  styles_->add_flag("--json", stylesJson_, words(Cli::tr("for other programs")));
}

void Arguments::addExtras() {
  extras_ = app_.add_subcommand(
      "extras", words(Cli::tr("list what can go with a box: bands, mats, labels, windows")));
  extras_->add_flag("--json", extrasJson_, words(Cli::tr("for other programs")));
}

void Arguments::addCards() {
  cards_ = app_.add_subcommand(
      "cards", words(Cli::tr("list the cards that can be named, with thickness and weight")));
  cards_->add_flag("--json", cardsJson_, words(Cli::tr("for other programs")));
}

void Arguments::addProduct(CLI::App& command, const char* name, ChoiceOptions& choices) {
  command
      .add_option(name, choices.product,
                  words(Cli::tr("what goes in, such as box:60x35x120mm or cylinder:40x120mm")))
      ->type_name("SHAPE");
}

void Arguments::addMaterial(CLI::App& command, ChoiceOptions& choices) {
  command
      .add_option(
          "--card", choices.card,
          words(Cli::tr("card by id (the command cards lists them), or by measure: 0.3mm, 300gsm")))
      ->type_name("ID");
  command.add_option("--ease", choices.ease, words(Cli::tr("room around the product")))
      ->type_name("snug|easy|loose");
  command.add_option("--grid", choices.grid, words(Cli::tr("what your ruler or board can hit")))
      ->type_name("1/16in|1/8in|1mm|none");
}

void Arguments::addNew() {
  NewOptions& o = newOptions_;
  new_ = app_.add_subcommand("new", words(Cli::tr("write a new design")));
  new_->add_option("--style", o.style, words(Cli::tr("id of a style, such as framed-tray")))
      ->type_name("ID");
  addProduct(*new_, "--product", o.choices);
  new_->add_option("--set", o.settings, words(Cli::tr("one measure of the style; may be repeated")))
      ->type_name("KEY=VALUE")
      ->allow_extra_args(false);
  new_->add_option("--extra", o.extras,
                   words(Cli::tr("what goes with the box, such as label:shape=oval,text=Plum jam; "
                                 "may be repeated")))
      ->type_name("KIND[:KEY=VALUE,...]")
      ->allow_extra_args(false);
  addMaterial(*new_, o.choices);
  new_->add_option("--board", o.choices.board,
                   words(Cli::tr("how wide the scoring board is, such as 12in or 30cm")))
      ->type_name("WIDTH");
  new_->add_option("--title", o.title, words(Cli::tr("title on the printed pages")))
      ->type_name("TEXT");
  new_->add_option("-o,--output", o.output, words(Cli::tr("file to write")))
      ->type_name("FILE.cwdesign");
}

void Arguments::addCheck() {
  check_ = app_.add_subcommand(
      "check", words(Cli::tr("run every check: 0 all hold, 1 some fail, 2 unreadable")));
  check_->add_option("FILE", checkFile_, words(Cli::tr("design to check")))->type_name("");
  check_->add_flag("--json", checkJson_, words(Cli::tr("for other programs")));
}

void Arguments::addExport() {
  ExportOptions& o = exportOptions_;
  export_ = app_.add_subcommand("export", words(Cli::tr("write the template or the net")));
  export_->add_option("FILE", o.file, words(Cli::tr("design to export")))->type_name("");
  export_->add_option("-o,--output", o.output, words(Cli::tr("file to write")))
      ->type_name("OUT.(svg|dxf|pdf|png|json)");
  export_->add_option("--piece", o.piece, words(Cli::tr("only this piece")))->type_name("NAME");
  export_->add_option("--paper", o.paper, words(Cli::tr("paper of a PDF: a4, letter ...")))
      ->type_name("NAME");
  export_->add_option("--units", o.units, words(Cli::tr("units of printed measures")))
      ->type_name("in|mm");
  export_->add_flag("--folded", o.folded,
                    words(Cli::tr("draw the folded box, not the net (PNG, SVG)")));
}

void Arguments::addGuide() {
  GuideOptions& o = guideOptions_;
  guide_ = app_.add_subcommand("guide", words(Cli::tr("write the illustrated guide")));
  guide_->add_option("FILE", o.file, words(Cli::tr("design to explain")))->type_name("");
  guide_
      ->add_option("-o,--output", o.output,
                   words(Cli::tr("file to write, or a folder for pictures and text")))
      ->type_name("OUT.(pdf|html)|FOLDER/");
  guide_->add_option("--units", o.units, words(Cli::tr("units of all measures")))
      ->type_name("in|mm|both");
  guide_->add_option("--paper", o.paper, words(Cli::tr("paper of a PDF: a4, letter ...")))
      ->type_name("NAME");
  guide_->add_option("--language", o.language, words(Cli::tr("language of the guide")))
      ->type_name("en|de");
}

void Arguments::addKit() {
  KitOptions& o = kitOptions_;
  kit_ = app_.add_subcommand("kit", words(Cli::tr("plan the sheets of a class")));
  kit_->add_option("FILE", o.files, words(Cli::tr("a kit, or the designs everybody makes")))
      ->type_name("");
  kit_->add_option("-o,--output", o.output, words(Cli::tr("file to write")))
      ->type_name("OUT.(pdf|json|csv|cwkit) | FOLDER/");
  kit_->add_option("--count", o.counts,
                   words(Cli::tr("how many of a design each person makes; may be repeated")))
      ->type_name("FILE=NUMBER")
      ->allow_extra_args(false);
  kit_->add_option("--only", o.only,
                   words(Cli::tr("cut only one piece of a design; may be repeated")))
      ->type_name("FILE=PIECE")
      ->allow_extra_args(false);
  kit_->add_option("--blank", o.blanks,
                   words(Cli::tr("a rectangle for every bag, such as 4x6in:count=2,card=300gsm,"
                                 "name=Panel; may be repeated")))
      ->type_name("SIZE[:KEY=VALUE,...]")
      ->allow_extra_args(false);
  kit_->add_option("--title", o.title, words(Cli::tr("what the class is called")))
      ->type_name("TEXT");
  kit_->add_option("--takers", o.takers, words(Cli::tr("how many people")))->type_name("NUMBER");
  kit_->add_option("--spares", o.spares, words(Cli::tr("sets more than people")))
      ->type_name("NUMBER");
  kit_->add_option("--sheet", o.sheets,
                   words(Cli::tr("a sheet at hand by name or size; may be repeated")))
      ->type_name("NAME|SIZE")
      ->allow_extra_args(false);
  kit_->add_option("--stock", o.stock, words(Cli::tr("table of sheets with prices, as CSV")))
      ->type_name("FILE.csv");
  kit_->add_option("--supplies", o.supplies,
                   words(Cli::tr("table of tape, ribbon and glue, as CSV")))
      ->type_name("FILE.csv");
  kit_->add_option("--names", o.names, words(Cli::tr("names for the bags, one a line")))
      ->type_name("FILE");
  kit_->add_option("--label", o.label, words(Cli::tr("size of a bag's label, such as 90x50mm")))
      ->type_name("WIDTHxHEIGHT");
  kit_->add_option(
          "--machine", o.machine,
          words(Cli::tr("size of a cutting machine's carrier sheet, such as 12x12in: writes its "
                        "layouts into a folder")))
      ->type_name("WIDTHxHEIGHT");
  kit_->add_flag("--keep-grain", o.keepGrain,
                 words(Cli::tr("turn no blank against the grain of its sheet")));
  kit_->add_flag("--no-extras", o.noExtras,
                 words(Cli::tr("cut no blank that nobody needs: the last sheets only in part")));
  kit_->add_option("--plan", o.plan,
                   words(Cli::tr("what the sheets are planned for: easy (to cut; for a class) or "
                                 "fewest (sheets)")))
      ->type_name("easy|fewest");
  kit_->add_option("--paper", o.paper, words(Cli::tr("paper of a PDF: a4, letter ...")))
      ->type_name("NAME");
  kit_->add_option("--units", o.units, words(Cli::tr("units of printed measures")))
      ->type_name("in|mm");
}

void Arguments::translateHelp() {
  for (CLI::App* app : {&app_, styles_, extras_, cards_, new_, check_, export_, guide_, kit_}) {
    app->set_help_flag("-h,--help", words(Cli::tr("print this help")));
    const auto formatter = app->get_formatter();
    formatter->label("Usage", words(Cli::tr("Usage")));
    formatter->label("OPTIONS", words(Cli::tr("OPTIONS")));
    formatter->label("SUBCOMMAND", words(Cli::tr("COMMAND")));
    formatter->label("Positionals", words(Cli::tr("Files")));
    formatter->label("Options", words(Cli::tr("Options")));
    if (app != &app_) {
      app->group(words(Cli::tr("Commands")));
      app->allow_extras();
    }
  }
}

int Arguments::run(int argc, char** argv) {
  if (const int code = parse(argc, argv); code != kParsed) {
    return code;
  }
  if (const int code = refuseExtras(); code != kParsed) {
    return code;
  }
  if (const int code = refuseEmpty(); code != kParsed) {
    return code;
  }
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
    if (const auto mark = std::ranges::find(extras, "--"); mark != extras.end()) {
      extras.erase(mark);
    }
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
        Cli::tr("%1: There is no such command. The commands are styles, extras, cards, new, "
                "check, export, guide and kit.")
            .arg(shown(extras.empty() ? std::string("--") : extras.front())));
  }
  return kParsed;
}

/// An argument with nothing after it is no argument left out. Only a title may be empty.
int Arguments::refuseEmpty() {
  for (const CLI::App* command : app_.get_subcommands()) {
    for (const CLI::Option* option : command->get_options()) {
      if (option->get_positional() || option->check_lname("title") ||
          std::ranges::count(option->results(), std::string()) == 0) {
        continue;
      }
      return fail(Cli::tr("%1: This argument is empty. Write a value after it or leave it out.")
                      .arg(text(option->check_sname("o") ? "-o" : option->get_name())));
    }
  }
  return kParsed;
}

int Arguments::dispatch() {
  if (styles_->parsed()) {
    return suggestOptions_.choices.product.empty() ? runStyles(stylesJson_)
                                                   : runSuggest(suggestOptions_, stylesJson_);
  }
  if (extras_->parsed()) {
    return runExtras(extrasJson_);
  }
  if (cards_->parsed()) {
    return runCards(cardsJson_);
  }
  if (new_->parsed()) {
    return runNew(newOptions_);
  }
  if (check_->parsed()) {
    return runCheck(checkFile_, checkJson_);
  }
  if (kit_->parsed()) {
    return runKit(kitOptions_);
  }
  if (guide_->parsed()) {
    return runGuide(guideOptions_);
  }
  return runExport(exportOptions_);
}

}  // namespace

int runArguments(int argc, char** argv) { return afterOutput(Arguments().run(argc, argv)); }

}  // namespace creasewright
