#include "panels/changes_panel.h"

#include "bridge/style_text.h"
#include "commands/edits.h"
#include "edits/kinds/crease_site.h"
#include "panels/change_row.h"
#include "panels/keeps_up.h"

namespace creasewright {

namespace {

/// The panel that is chosen in the views, else the first one.
Edit placedEdit(const EditKind& kind, const DesignSession& session) {
  const std::vector<BuiltPiece>& pieces = session.built().pieces;
  const BuiltPiece* piece = &pieces.front();
  std::size_t panel = 0;
  const Place& kept = session.selection().kept();
  for (const BuiltPiece& each : pieces) {
    const auto found = each.role || kept.panels.isEmpty()
                           ? std::nullopt
                           : each.net.find(kept.panels.front().toStdString());
    if (!found) continue;
    piece = &each;
    panel = static_cast<std::size_t>(*found);
    break;
  }
  const Panel& on = piece->net.panels.at(panel);
  Edit edit;
  edit.kind = kind.id;
  edit.piece = piece->name;
  edit.panel = on.id;
  const auto edges = edgesFor(kind.place, piece->net, static_cast<int>(panel));
  if (!edges.empty())
    edit.edge = edges.front();
  else if (kind.place != EditPlace::Panel)
    edit.edge = on.edges.front();
  return edit;
}

}  // namespace

ChangesPanel::ChangesPanel(DesignSession& session, QWidget* parent)
    : RowColumn(tr("Nothing is changed by hand yet. Click a panel, then add."), tr("Add a change"),
                parent),
      session_(session) {
  for (const EditKind& kind : editKinds())
    offer(
        styleText(kind.title), styleText(kind.summary), [this, &kind] { add(kind); });
  new KeepsUp(session_, *this, [this] { showDesign(); });
}

void ChangesPanel::add(const EditKind& kind) {
  if (session_.built().pieces.empty()) return;
  std::vector<Edit> edits = session_.design().edits;
  edits.push_back(placedEdit(kind, session_));
  changeEdits(session_, std::move(edits), styleText(kind.title));
}

void ChangesPanel::showDesign() {
  std::vector<std::string> kinds;
  for (const Edit& edit : session_.design().edits) kinds.push_back(edit.kind);
  showRows(kinds, [this](int index) { return new ChangeRow(session_, index, this); });
}

}  // namespace creasewright
