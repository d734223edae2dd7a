#include "panels/glue_list.h"

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "panels/keeps_up.h"
#include "session/places.h"

namespace creasewright {

GlueList::GlueList(DesignSession& session, QWidget* parent)
    : QListWidget(parent), session_(session) {
  setAccessibleName(tr("Glue plan"));
  setWordWrap(true);
  new KeepsUp(session_, *this, [this] { showDesign(); });
}

void GlueList::showDesign() {
  const QSignalBlocker quiet(this);
  clear();
  const BuiltDesign& built = session_.built();
  for (std::size_t i = 0; i < built.pieces.size(); ++i) {
    const BuiltPiece& piece = built.pieces[i];
    const auto& panels = piece.net.panels;
    for (const GlueArea& glue : piece.gluePlan) {
      const std::string& flap = panels[static_cast<std::size_t>(glue.panel)].id;
      const std::string& target =
          glue.onto < 0 ? glue.pieceOnto : panels[static_cast<std::size_t>(glue.onto)].id;
      const QString face = glue.flapFace == Face::Inside ? tr("inside") : tr("outside");
      const QString words =
          glue.onto < 0
              ? tr("%1, on its %2: stick to %3 of the piece “%4”")
                    .arg(panelTitle(flap), face, panelTitle(target), pieceTitle(glue.piece))
              : tr("%1, on its %2: stick to %3").arg(panelTitle(flap), face, panelTitle(target));
      auto* item = new QListWidgetItem(words, this);
      item->setData(kPlaceRole, rowPlace(placeOfGlue(built, static_cast<int>(i), glue)));
    }
  }
  if (count() == 0) addItem(tr("This piece needs no adhesive."));
  lights_.tint();
}

}  // namespace creasewright
