#include "tools/edit_tool.h"

#include "bridge/problem_text.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "commands/edits.h"
#include "scene/sheet_view.h"
#include "session/places.h"
#include "widgets/theme.h"

namespace creasewright {

namespace {

constexpr double kNearEdge = 8;  // pixels

const EditKind* kindCalled(std::string_view id) {
  const Result<const EditKind*> kind = findEditKind(id);
  return kind ? *kind : &editKinds().front();
}

}  // namespace

EditTool::EditTool(const std::vector<std::string_view>& kinds) {
  for (const std::string_view id : kinds) kinds_.push_back(kindCalled(id));
}

QString EditTool::hint() const {
  const QString what = styleText(kind().title);
  QString words;
  switch (kind().place) {
    case EditPlace::Panel:
      words = tr("%1: click the panel where it goes.").arg(what);
      break;
    case EditPlace::Edge:
      words = tr("%1: click the cut edge where it goes.").arg(what);
      break;
    case EditPlace::Crease:
      words = tr("%1: click the fold.").arg(what);
      break;
  }
  if (kinds_.size() < 2) return words;
  QStringList others;
  for (std::size_t i = 0; i < kinds_.size(); ++i)
    others += tr("%1 %2", "number key, kind").arg(i + 1).arg(styleText(kinds_[i]->title));
  return words + QStringLiteral("  ·  ") + others.join(QStringLiteral(", "));
}

void EditTool::activate(SheetView& sheet) { sheet.setCursor(Qt::CrossCursor); }

void EditTool::deactivate(SheetView& sheet) { leave(sheet); }

std::optional<EditTarget> EditTool::targetAt(const SheetView& sheet, QPointF at) const {
  const BuiltPiece* piece = sheet.piece();
  if (piece == nullptr || piece->role || !sheet.session().isCurrent() ||
      !sheet.bench().contains(at))
    return std::nullopt;
  return editTargetAt(*piece, kind().place, sheet.camera().toSheet(at),
                      kNearEdge / sheet.camera().scale());
}

void EditTool::move(SheetView& sheet, const QMouseEvent& event, bool) {
  sheet.setCursor(Qt::CrossCursor);
  pointed_ = targetAt(sheet, event.position());
  Place place;
  if (pointed_) place = placeOfPanel(sheet.session().built(), sheet.shownPiece(), pointed_->panel);
  sheet.session().selection().hover(place);
  sheet.say(hint());
}

void EditTool::click(SheetView& sheet, const QMouseEvent& event) {
  const auto target = targetAt(sheet, event.position());
  if (!target) {
    sheet.say(hint());
    return;
  }
  const Point at = sheet.camera().toSheet(event.position());
  add(sheet, editAt(kind(), *sheet.piece(), *target, at, sheet.session().design().grid));
}

void EditTool::add(SheetView& sheet, Edit edit) {
  DesignSession& session = sheet.session();
  const QString what = styleText(kind().title);
  const QString where = panelTitle(edit.panel);
  std::vector<Edit> edits = session.design().edits;
  edits.push_back(std::move(edit));
  const int index = static_cast<int>(edits.size()) - 1;
  changeEdits(session, std::move(edits), what);
  const auto& broken = session.built().brokenEdits;
  const auto found = broken.find(index);
  sheet.say(found == broken.end()
                ? tr("Added to %1: %2. Its measures stand under “Changes”.").arg(where, what)
                : problemSentence(found->second, session.unit()));
}

void EditTool::leave(SheetView& sheet) {
  pointed_.reset();
  sheet.session().selection().hover({});
}

bool EditTool::keyPress(SheetView& sheet, const QKeyEvent& event) {
  const int number = event.key() - Qt::Key_1;
  if (number < 0 || number >= static_cast<int>(kinds_.size())) return false;
  chosen_ = static_cast<std::size_t>(number);
  pointed_.reset();
  sheet.say(hint());
  sheet.update();
  return true;
}

void EditTool::sheetChanged(SheetView&) { pointed_.reset(); }

void EditTool::paint(SheetView& sheet, QPainter& painter) {
  if (!pointed_ || !pointed_->line) return;
  painter.setPen(QPen(theme().accent, 3, Qt::SolidLine, Qt::RoundCap));
  painter.drawLine(sheet.camera().toScreen(pointed_->line->a),
                   sheet.camera().toScreen(pointed_->line->b));
}

}  // namespace creasewright
