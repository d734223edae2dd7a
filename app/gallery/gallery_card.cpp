#include "gallery/gallery_card.h"

#include <QPainter>

#include "gallery/gallery_model.h"
#include "widgets/theme.h"

namespace creasewright {

namespace {

constexpr int kCardEdge = 8;
constexpr int kBetweenLines = 8;
constexpr int kLines = 4;  // of the text's height: name, blank (two lines at most), sheet

QRect cardRect(const QRect& cell) {
  return cell.adjusted(kBetweenLines / 2, kBetweenLines / 2, -kBetweenLines / 2,
                       -kBetweenLines / 2);
}

void paintGround(QPainter& painter, const QRect& card, const QStyleOptionViewItem& option,
                 bool chosen) {
  const Theme& t = theme();
  const bool hovered = (option.state & QStyle::State_MouseOver) != 0;
  const bool focused = (option.state & QStyle::State_HasFocus) != 0;
  painter.setBrush(hovered ? t.raised : t.surface);
  painter.setPen(chosen || focused ? QPen(focused ? t.accent : t.halo, 2) : QPen(t.hairline, 1));
  painter.drawRoundedRect(QRectF(card).adjusted(0.5, 0.5, -0.5, -0.5), 6, 6);
}

/// Paper stays white in both palettes, so the pictures stand on a light ground of their own.
void paintPictures(QPainter& painter, const QRect& card, const QModelIndex& index) {
  const QRect ground(card.left() + kCardEdge, card.top() + kCardEdge, card.width() - 2 * kCardEdge,
                     GalleryModel::kFoldedSize.height() + kCardEdge);
  painter.setPen(Qt::NoPen);
  painter.setBrush(lightTheme().bench);
  painter.drawRoundedRect(ground, 4, 4);
  const auto folded = index.data(GalleryModel::FoldedRole).value<QImage>();
  painter.drawImage(ground.left() + kCardEdge / 2, ground.top() + kCardEdge / 2, folded);
  const auto net = index.data(GalleryModel::NetRole).value<QImage>();
  const QRect netGround(ground.right() - GalleryModel::kNetSize.width() - kCardEdge,
                        ground.bottom() - GalleryModel::kNetSize.height() - kCardEdge,
                        GalleryModel::kNetSize.width() + kCardEdge,
                        GalleryModel::kNetSize.height() + kCardEdge);
  painter.setBrush(Qt::white);
  painter.drawRoundedRect(netGround, 4, 4);
  painter.drawImage(netGround.left() + kCardEdge / 2, netGround.top() + kCardEdge / 2, net);
}

/// "Mine" at the right of a card's name; how wide it is.
int paintOwnMark(QPainter& painter, const QRect& line, const QStyleOptionViewItem& option) {
  const QString words = GalleryCard::tr("mine");
  const int width = option.fontMetrics.horizontalAdvance(words) + kCardEdge;
  painter.setFont(option.font);
  painter.setPen(theme().accent);
  painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, words);
  return width;
}

void paintWords(QPainter& painter, const QRect& card, const QStyleOptionViewItem& option,
                const QModelIndex& index) {
  const Theme& t = theme();
  QFont bold = option.font;
  bold.setBold(true);
  painter.setFont(bold);
  painter.setPen(t.ink);
  const int height = option.fontMetrics.lineSpacing();
  QRect line(card.left() + kCardEdge + 2,
             card.top() + GalleryModel::kFoldedSize.height() + 2 * kCardEdge + kCardEdge / 2 + 2,
             card.width() - 2 * kCardEdge - 4, height);
  QRect nameLine = line;
  if (index.data(GalleryModel::OwnRole).toBool())
    nameLine.setRight(nameLine.right() - paintOwnMark(painter, line, option));
  painter.setFont(bold);
  painter.setPen(t.ink);
  painter.drawText(
      nameLine, Qt::AlignLeft | Qt::AlignVCenter,
      QFontMetrics(bold).elidedText(index.data().toString(), Qt::ElideRight, nameLine.width()));
  painter.setFont(option.font);
  const QStringList details =
      index.data(GalleryModel::DetailRole).toString().split(QLatin1Char('\n'));
  painter.setPen(t.quietInk);
  line.translate(0, height);
  painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                   option.fontMetrics.elidedText(details.value(0), Qt::ElideRight, line.width()));
  line.translate(0, height);
  const bool fits = index.data(GalleryModel::FitsRole).toBool();
  painter.setPen(fits ? t.fine : t.quietInk);
  const QString mark = fits ? QStringLiteral("✓ ") : QStringLiteral("– ");
  painter.drawText(
      line, Qt::AlignLeft | Qt::AlignVCenter,
      option.fontMetrics.elidedText(mark + details.value(1), Qt::ElideRight, line.width()));
}

}  // namespace

void GalleryCard::paint(QPainter* painter, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const {
  painter->save();
  painter->setRenderHint(QPainter::Antialiasing);
  const QRect card = cardRect(option.rect);
  paintGround(*painter, card, option, index.data(GalleryModel::ChosenRole).toBool());
  paintPictures(*painter, card, index);
  paintWords(*painter, card, option, index);
  painter->restore();
}

QSize GalleryCard::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
  return {GalleryModel::kFoldedSize.width() + GalleryModel::kNetSize.width() + 5 * kCardEdge +
              kBetweenLines,
          GalleryModel::kFoldedSize.height() + kLines * option.fontMetrics.lineSpacing() +
              3 * kCardEdge + kBetweenLines};
}

}  // namespace creasewright
