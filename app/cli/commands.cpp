#include "cli/commands.h"

#include "cli/cards_command.h"
#include "cli/check_command.h"
#include "cli/edits_command.h"
#include "cli/export_command.h"
#include "cli/guide_command.h"
#include "cli/kit_command.h"
#include "cli/new_command.h"
#include "cli/patterns_command.h"
#include "cli/photos_command.h"
#include "cli/style_command.h"
#include "cli/styles_command.h"

namespace creasewright {

const std::vector<Command>& commands() {
  static const std::vector<Command> all{stylesCommand(), extrasCommand(),   editsCommand(),
                                        cardsCommand(),  patternsCommand(), newCommand(),
                                        checkCommand(),  exportCommand(),   guideCommand(),
                                        photosCommand(), kitCommand(),      styleCommand()};
  return all;
}

}  // namespace creasewright
