#include "widgets/colour_button.h"

#include <QColorDialog>
#include <QMenu>

#include "bridge/paint_drawing.h"
#include "bridge/stock_words.h"
#include "fit/card_colours.h"
#include "widgets/swatch.h"

namespace creasewright {

namespace {

constexpr int kSwatch = 16;

QIcon swatch(const std::optional<Colour>& colour, double devicePixelRatio, int gap = 0) {
  return swatchIcon(kSwatch, devicePixelRatio,
                    colour ? std::optional(QBrush(toColor(*colour))) : std::nullopt, gap);
}

}  // namespace

ColourButton::ColourButton(const QString& none, QWidget* parent)
    : QToolButton(parent), none_(none) {
  setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  setProperty("choice", true);
  setPopupMode(QToolButton::InstantPopup);
  setIconSize({kSwatch + kSwatchGap, kSwatch});
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  auto* menu = new QMenu(this);
  setMenu(menu);
  connect(menu, &QMenu::aboutToShow, this, &ColourButton::fillMenu);
  setColour(std::nullopt);
}

void ColourButton::setColour(const std::optional<Colour>& colour) {
  colour_ = colour;
  setText(colour ? colourName(*colour) : none_);
  setIcon(swatch(colour, devicePixelRatioF(), kSwatchGap));
}

void ColourButton::fillMenu() {
  menu()->clear();
  const auto offer = [this](const QString& name, const std::optional<Colour>& colour) {
    QAction* action = menu()->addAction(swatch(colour, devicePixelRatioF()), name);
    connect(action, &QAction::triggered, this, [this, colour] { pick(colour); });
  };
  offer(none_, std::nullopt);
  menu()->addSeparator();
  for (const NamedColour& named : namedColours()) offer(colourName(named.colour), named.colour);
  menu()->addSeparator();
  QAction* other = menu()->addAction(tr("Other colour…"));
  connect(other, &QAction::triggered, this, &ColourButton::askForOther);
}

void ColourButton::pick(const std::optional<Colour>& colour) {
  if (colour == colour_) return;
  setColour(colour);
  emit colourPicked(colour);
}

void ColourButton::askForOther() {
  const QColor start = colour_ ? toColor(*colour_) : QColor(Qt::white);
  const QColor chosen = QColorDialog::getColor(start, window(), accessibleName());
  if (!chosen.isValid()) return;
  pick(Colour{static_cast<std::uint8_t>(chosen.red()), static_cast<std::uint8_t>(chosen.green()),
              static_cast<std::uint8_t>(chosen.blue())});
}

}  // namespace creasewright
