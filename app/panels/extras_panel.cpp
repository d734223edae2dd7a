#include "panels/extras_panel.h"

#include "bridge/style_text.h"
#include "commands/edits.h"
#include "document/build_extras.h"
#include "panels/extra_row.h"

namespace creasewright {

ExtrasPanel::ExtrasPanel(DesignSession& session, QWidget* parent)
    : RowColumn(tr("Nothing goes with the box yet."), tr("Add an extra"), parent),
      session_(session) {
  for (const ExtraKind& kind : extraKinds())
    offer(styleText(kind.title), styleText(kind.summary), [this, id = kind.id] { addExtra(id); });
  connect(&session_, &DesignSession::changed, this, &ExtrasPanel::showDesign);
  connect(&session_, &DesignSession::unitChanged, this, &ExtrasPanel::showDesign);
  showDesign();
}

void ExtrasPanel::addExtra(std::string_view kind) {
  const Result<const ExtraKind*> known = findExtraKind(kind);
  if (!known) return;
  std::vector<Extra> extras = session_.design().extras;
  const Design& design = session_.design();
  extras.push_back(newExtra(**known, design));
  changeExtras(session_, std::move(extras), styleText((*known)->title));
}

void ExtrasPanel::showDesign() {
  std::vector<std::string> kinds;
  // A row shows its layers too: it is made anew where there are more or fewer.
  for (const Extra& extra : session_.design().extras)
    kinds.push_back(extra.kind + std::string(extra.layers.size(), '+'));
  showRows(kinds, [this](int index) { return new ExtraRow(session_, index, this); });
}

}  // namespace creasewright
