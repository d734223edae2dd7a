#include "papers/guide/strip_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "bridge/style_text.h"
#include "guide/extra_steps.h"
#include "guide/piece_steps.h"
#include "papers/guide/step_words.h"

namespace creasewright {

namespace {

struct StripTr {
  Q_DECLARE_TR_FUNCTIONS(strip)
};

/// Which piece is folded is told where several are.
QString foldWords(const BuiltDesign& built, const StripStop& stop) {
  const BuiltPiece& piece = built.pieces[static_cast<std::size_t>(stop.piece)];
  const QString stage = stageTitle(piece.net.stages[static_cast<std::size_t>(stop.stage) - 1]);
  const QString number = QString::number(stop.stage);
  const QString count = QString::number(piece.net.stageCount());
  const auto folds = [](const BuiltPiece& each) { return each.net.stageCount() > 0; };
  if (std::ranges::count_if(built.pieces, folds) < 2)
    return StripTr::tr("Stage %1 of %2: %3").arg(number, count, stage);
  return StripTr::tr("%1, stage %2 of %3: %4").arg(pieceTitle(piece.name), number, count, stage);
}

QString gluingWords(const BuiltDesign& built, int upper) {
  const auto lower = gluedOnto(built, upper);
  return GuideTr::tr("Glue the piece “%1” onto the piece “%2”")
      .arg(pieceTitle(built.pieces[static_cast<std::size_t>(upper)].name),
           lower ? pieceTitle(built.pieces[static_cast<std::size_t>(*lower)].name) : QString());
}

}  // namespace

QString stopWords(const BuiltDesign& built, const StripStop& stop) {
  switch (stop.code) {
    case StopCode::Fold:
      return foldWords(built, stop);
    case StopCode::GluePieces:
      return gluingWords(built, stop.piece);
    case StopCode::PutIn:
      return GuideTr::tr("Put the product in");
    case StopCode::Close:
      return GuideTr::tr("Put the pieces together");
    case StopCode::GlueOn:
    case StopCode::LayInside:
    case StopCode::AddExtra:
      return titleOf(kindOf(built, stop.extra).act);
  }
  return {};
}

QString stripFlatWords() { return StripTr::tr("Flat"); }

}  // namespace creasewright
