#include "panels/style_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "bridge/design_pixmap.h"
#include "bridge/style_text.h"

namespace creasewright {

namespace {

constexpr QSize kPictureSize{96, 72};

}  // namespace

StylePanel::StylePanel(DesignSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      picture_(new QLabel(this)),
      title_(new QLabel(this)),
      summary_(new QLabel(this)) {
  title_->setWordWrap(true);
  QFont bold = title_->font();
  bold.setBold(true);
  title_->setFont(bold);
  summary_->setProperty("quiet", true);
  summary_->setWordWrap(true);
  picture_->setFixedSize(kPictureSize);
  auto* change = new QPushButton(tr("Change style"), this);
  change->setObjectName(QStringLiteral("change-style"));
  auto* words = new QVBoxLayout;
  words->addWidget(title_);
  words->addWidget(change);
  words->addStretch(1);
  auto* row = new QHBoxLayout;
  row->setSpacing(12);
  row->addWidget(picture_, 0, Qt::AlignTop);
  row->addLayout(words, 1);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  layout->addLayout(row);
  layout->addWidget(summary_);
  rest_.setSingleShot(true);
  rest_.setInterval(200);
  connect(&rest_, &QTimer::timeout, this, &StylePanel::showPicture);
  connect(change, &QPushButton::clicked, this, &StylePanel::galleryAsked);
  connect(&session_, &DesignSession::changed, this, &StylePanel::showDesign);
  showDesign();
}

void StylePanel::showDesign() {
  const BuiltDesign& built = session_.built();
  if (built.style == nullptr) return;
  title_->setText(styleTitle(built.design));
  QString summary = styleSummary(built.design);
  if (const auto& own = built.design.ownStyle) {
    summary += QLatin1Char('\n') + tr("Your own, made from %1 with %n change(s) by hand.", nullptr,
                                      static_cast<int>(own->edits.size()))
                                       .arg(styleTitle(*built.style));
  }
  summary_->setText(summary);
  // While a line is pulled the small picture waits until the hand rests.
  const QString now = title_->text();
  if (now == pictured_) return rest_.start();
  pictured_ = now;
  showPicture();
}

void StylePanel::showPicture() {
  picture_->setPixmap(
      designPixmap(session_.built(), DesignView::Ajar, kPictureSize, devicePixelRatioF()));
}

}  // namespace creasewright
