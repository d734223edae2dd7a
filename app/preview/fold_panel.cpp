#include "preview/fold_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QSlider>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "papers/guide/strip_words.h"
#include "preview/fold_view.h"
#include "widgets/icon.h"

namespace creasewright {

namespace {

constexpr int kStepsPerStage = 100;
constexpr int kTick = 25;         // ms
constexpr int kStepsPerTick = 2;  // a stage takes a second and a quarter

QToolButton* stepButton(const QString& icon, const QString& words, QWidget* parent) {
  auto* button = new QToolButton(parent);
  button->setIcon(lineIcon(icon));
  button->setAutoRaise(true);
  button->setToolTip(words);
  button->setAccessibleName(words);
  return button;
}

/// Offers how far the finished gift is open.
QToolButton* openingButton(const FoldView& view, QWidget* parent) {
  auto* button =
      stepButton(QStringLiteral("open"), FoldPanel::tr("Close or open the finished box"), parent);
  auto* menu = new QMenu(button);
  menu->addActions(view.openings());
  button->setMenu(menu);
  button->setPopupMode(QToolButton::InstantPopup);
  return button;
}

}  // namespace

FoldPanel::FoldPanel(DesignSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      view_(new FoldView(session, this)),
      slider_(new QSlider(Qt::Horizontal, this)),
      stage_(new QLabel(this)) {
  auto* back = stepButton(QStringLiteral("back"), tr("One stage back"), this);
  auto* forward = stepButton(QStringLiteral("closed"), tr("One stage forward"), this);
  slider_->setAccessibleName(tr("Fold stage"));
  stage_->setProperty("quiet", true);
  stage_->setAlignment(Qt::AlignCenter);
  stage_->setWordWrap(true);

  play_ = stepButton(QStringLiteral("play"), tr("Fold it before my eyes"), this);
  play_->setCheckable(true);
  tick_.setInterval(kTick);

  auto* strip = new QHBoxLayout;
  strip->setContentsMargins(12, 0, 12, 0);
  strip->addWidget(back);
  strip->addWidget(slider_, 1);
  strip->addWidget(forward);
  strip->addWidget(play_);
  strip->addWidget(openingButton(*view_, this));
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 8);
  layout->setSpacing(4);
  layout->addWidget(view_, 1);
  layout->addLayout(strip);
  layout->addWidget(stage_);

  connect(slider_, &QSlider::valueChanged, this, &FoldPanel::sliderMoved);
  connect(
      back, &QToolButton::clicked, this, [this] { stepStage(-1); });
  connect(forward, &QToolButton::clicked, this, [this] { stepStage(1); });
  connect(play_, &QToolButton::toggled, this, &FoldPanel::play);
  connect(&tick_, &QTimer::timeout, this, &FoldPanel::playOn);
  // A hand on the strip has it.
  connect(slider_, &QSlider::sliderPressed, this, [this] { play_->setChecked(false); });
  for (QAction* opening : view_->openings())
    connect(opening, &QAction::triggered, this, [this] { slider_->setValue(slider_->maximum()); });
  connect(&session_, &DesignSession::changed, this, &FoldPanel::designChanged);
  connect(&session_.selection(), &Selection::chosen, this, &FoldPanel::goTo);
  designChanged();
}

/// To the moment at which what was chosen is done.
void FoldPanel::goTo(const Place& place) {
  if (place.progress >= 0 && (place.piece < 0 || place.piece == piece_))
    slider_->setValue(static_cast<int>(
        std::lround(view_->strip().doneWhenFolded(place.progress) * kStepsPerStage)));
}

void FoldPanel::showPiece(int index) {
  piece_ = index;
  view_->showPiece(index);
  designChanged();
}

void FoldPanel::designChanged() {
  const bool shown = static_cast<std::size_t>(piece_) < session_.built().pieces.size();
  const int last = shown ? static_cast<int>(view_->strip().end()) * kStepsPerStage : 0;
  const std::string& style = styleIdOf(session_.design());
  if (slider_->maximum() != last || style_ != style) {
    style_ = style;
    slider_->setRange(0, last);
    slider_->setSingleStep(kStepsPerStage / 10);
    slider_->setPageStep(kStepsPerStage);
    slider_->setValue(last);
  }
  sliderMoved(slider_->value());
}

void FoldPanel::sliderMoved(int value) {
  // At the end it is the finished gift, which may be opened.
  view_->setDone(value == slider_->maximum() ? kFinished
                                             : static_cast<double>(value) / kStepsPerStage);
  stage_->setText(stageWords(value));
}

void FoldPanel::play(bool on) {
  if (!on) return tick_.stop();
  if (slider_->value() == slider_->maximum()) slider_->setValue(0);
  tick_.start();
}

void FoldPanel::playOn() {
  slider_->setValue(slider_->value() + kStepsPerTick);
  if (slider_->value() == slider_->maximum()) play_->setChecked(false);
}

void FoldPanel::stepStage(int by) {
  play_->setChecked(false);
  const double at = static_cast<double>(slider_->value()) / kStepsPerStage;
  const int next =
      by > 0 ? static_cast<int>(std::floor(at)) + 1 : static_cast<int>(std::ceil(at)) - 1;
  slider_->setValue(next * kStepsPerStage);
}

QString FoldPanel::stageWords(int value) const {
  if (value == 0 || slider_->maximum() == 0) return stripFlatWords();
  const auto stop = static_cast<std::size_t>((value - 1) / kStepsPerStage);
  return stopWords(session_.built(), view_->strip().stops()[stop]);
}

}  // namespace creasewright
