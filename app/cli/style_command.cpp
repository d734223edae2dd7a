#include "cli/style_command.h"

#include <memory>

#include "cli/output.h"
#include "cli/style_options.h"

namespace creasewright {

namespace {

int runStyle(const StyleOptions& options) {
  const std::string todo = options.words.empty() ? std::string() : options.words.front();
  if (todo == "keep") return keepStyles(options);
  if (todo == "list") return listStyles(options);
  if (todo == "check") return checkStyle(options);
  if (todo == "open") return openStyle(options);
  if (todo.empty())
    return fail(Cli::tr("style: Say what to do: keep, list, check or open, and then the file."));
  return fail(Cli::tr("style: “%1” is none of keep, list, check and open. Write one of them first, "
                      "then the file.")
                  .arg(shown(todo)));
}

QString styleHelp() { return Cli::tr("keep, list, check and open styles of your own"); }

std::function<int()> prepareStyle(Grammar& grammar) {
  const auto o = std::make_shared<StyleOptions>();
  grammar.files(o->words,
                Cli::tr("keep DESIGN, list [FOLDER|FILE...], check STYLE, or open STYLE (write a "
                        "design in which what the style brought can be changed)"));
  grammar.value("--name", "TEXT", o->name, Cli::tr("keep: what the style is called"));
  grammar.value("--note", "TEXT", o->note, Cli::tr("keep: what it suits, in your words"));
  grammar.value("--suits", "AxBxC..DxExF", o->suits,
                Cli::tr("keep: smallest and largest product, such as 30x20x40..90x60x160mm"));
  grammar.value("--see", "KEY,...", o->see,
                Cli::tr("keep: measures that a later user sees; all or none"));
  grammar.values("--rule", "KEY=FORMULA", o->rules,
                 Cli::tr("keep: what a measure that is not seen follows, such as tuck=width/2; may "
                         "be repeated"));
  grammar.value("--again", "FILE.cwstyle", o->again,
                Cli::tr("keep: the style that is changed; its id stays"));
  grammar.values("--for", "SHAPE", o->products,
                 Cli::tr("check: a product to try it on; may be repeated. open: what goes in"));
  addMaterial(grammar, o->choices);
  grammar.flag("--json", o->json, Cli::tr("list, check: for other programs"));
  grammar.value("-o,--output", "FILE", o->output, Cli::tr("keep, open: file to write"));
  return [o] { return runStyle(*o); };
}

}  // namespace

Command styleCommand() { return {"style", styleHelp, prepareStyle}; }

}  // namespace creasewright
