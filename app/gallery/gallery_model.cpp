#include "gallery/gallery_model.h"

#include "base/in_parallel.h"
#include "bridge/design_pixmap.h"
#include "bridge/design_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"

namespace creasewright {

namespace {

QString blankWords(const BuiltPiece& piece, Unit unit) {
  const QString size =
      GalleryModel::tr("%1 x %2").arg(lengthText(Length::mm(piece.flat.width), unit, false),
                                      lengthText(Length::mm(piece.flat.height), unit));
  return piece.count > 1 ? GalleryModel::tr("%1 times %2").arg(piece.count).arg(size) : size;
}

QString sheetWords(const Suggestion& suggestion) {
  QStringList names;
  for (const SheetFit& fit : suggestion.sheets) {
    if (fit.fits) {
      names << (fit.turned ? GalleryModel::tr("%1 turned").arg(text(fit.sheet.name))
                           : text(fit.sheet.name));
    }
  }
  return names.isEmpty() ? GalleryModel::tr("too large for the sheet")
                         : GalleryModel::tr("fits %1").arg(names.join(QStringLiteral(", ")));
}

}  // namespace

void GalleryModel::show(std::vector<Suggestion> suggestions, std::string_view chosenStyle,
                        Unit unit, double devicePixelRatio) {
  beginResetModel();
  entries_.clear();
  for (Suggestion& suggestion : suggestions) entries_.push_back({std::move(suggestion), {}, {}});
  inParallel(entries_.size(), [&](std::size_t i) {
    Entry& entry = entries_[i];
    const BuiltDesign& built = entry.suggestion.built;
    entry.folded = designImage(built, DesignView::Ajar, kFoldedSize, devicePixelRatio);
    entry.net = designImage(built, DesignView::Net, kNetSize, devicePixelRatio);
  });
  chosen_ = chosenStyle;
  unit_ = unit;
  devicePixelRatio_ = devicePixelRatio;
  endResetModel();
}

int GalleryModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(entries_.size());
}

QString GalleryModel::detail(const Suggestion& suggestion) const {
  QStringList blanks;
  for (const BuiltPiece& piece : suggestion.built.pieces) blanks << blankWords(piece, unit_);
  return blanks.join(QStringLiteral(" + ")) + QLatin1Char('\n') + sheetWords(suggestion);
}

QVariant GalleryModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const Entry& entry = entries_[static_cast<std::size_t>(index.row())];
  const Suggestion& suggestion = entry.suggestion;
  switch (role) {
    case Qt::DisplayRole:
      return styleTitle(suggestion.built.design);
    case Qt::ToolTipRole:
      return styleSummary(suggestion.built.design);
    case Qt::AccessibleTextRole:
      return styleTitle(suggestion.built.design) + QStringLiteral(". ") +
             styleSummary(suggestion.built.design);
    case OwnRole:
      return suggestion.built.design.ownStyle.has_value();
    case Qt::AccessibleDescriptionRole:
    case DetailRole:
      return detail(suggestion);
    case FoldedRole:
      return entry.folded;
    case NetRole:
      return entry.net;
    case FitsRole:
      return suggestion.fitsAnySheet();
    case ChosenRole:
      return styleIdOf(suggestion.built.design) == chosen_;
    default:
      return {};
  }
}

}  // namespace creasewright
