#include "panels/style_panel.h"

#include <QAbstractButton>
#include <QButtonGroup>
#include <QGridLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include "bridge/style_text.h"
#include "commands/edits.h"
#include "panels/style_picture.h"
#include "styles/registry.h"

namespace creasewright {

namespace {

constexpr int columns = 3;
constexpr QSize pictureSize{76, 56};

/// A tile is narrow: its words go over two lines rather than lose their middle.
QString inTwoLines(QString title) {
  const qsizetype space = title.indexOf(QLatin1Char(' '));
  return space < 0 ? title : title.replace(space, 1, QLatin1Char('\n'));
}

}  // namespace

StylePanel::StylePanel(DesignSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      group_(new QButtonGroup(this)),
      summary_(new QLabel(this)) {
  auto* grid = new QGridLayout;
  grid->setSpacing(4);
  int index = 0;
  for (const Style& style : styles()) {
    auto* tile = new QToolButton(this);
    tile->setText(inTwoLines(styleTitle(style)));
    tile->setToolTip(styleTitle(style) + QLatin1Char('\n') + styleSummary(style));
    tile->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    tile->setIconSize(pictureSize);
    tile->setCheckable(true);
    tile->setProperty("segment", true);
    tile->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    group_->addButton(tile, index);
    grid->addWidget(tile, index / columns, index % columns);
    ++index;
  }
  summary_->setProperty("quiet", true);
  summary_->setWordWrap(true);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  layout->addLayout(grid);
  layout->addWidget(summary_);
  connect(group_, &QButtonGroup::idClicked, this,
          [this](int id) { changeStyle(session_, styles()[static_cast<std::size_t>(id)].id); });
  connect(&session_, &DesignSession::changed, this, &StylePanel::showDesign);
  showDesign();
}

void StylePanel::showDesign() {
  for (std::size_t i = 0; i < styles().size(); ++i) {
    if (styles()[i].id == session_.design().styleId) {
      group_->button(static_cast<int>(i))->setChecked(true);
      summary_->setText(styleSummary(styles()[i]));
    }
  }
  drawPictures();
}

/// The chosen style shows the design itself; the others what they would make of the product.
void StylePanel::drawPictures() {
  const Design& now = session_.design();
  const bool materialChanged = drawn_.product != now.product || drawn_.card != now.card ||
                               drawn_.ease != now.ease || drawn_.grid != now.grid ||
                               drawn_.styleId != now.styleId;
  for (std::size_t i = 0; i < styles().size(); ++i) {
    const bool chosen = styles()[i].id == now.styleId;
    if (!chosen && !materialChanged) {
      continue;
    }
    const auto other = newDesign(styles()[i].id, now.product, now.card, now.ease, now.grid);
    const Design shown = chosen || !other ? now : *other;
    const QPixmap picture = foldedPicture(shown, pictureSize, devicePixelRatioF());
    group_->button(static_cast<int>(i))->setIcon(QIcon(picture));
  }
  drawn_ = now;
}

}  // namespace creasewright
