#include "shell/columns.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "bridge/style_text.h"
#include "gallery/gallery_view.h"
#include "panels/card_panel.h"
#include "panels/changes_panel.h"
#include "panels/checks_panel.h"
#include "panels/extras_panel.h"
#include "panels/glue_list.h"
#include "panels/measures_panel.h"
#include "panels/outline_tree.h"
#include "panels/product_panel.h"
#include "panels/score_list.h"
#include "panels/step_list.h"
#include "panels/style_panel.h"
#include "preview/fold_panel.h"
#include "scene/sheet_view.h"
#include "tools/tool_strip.h"
#include "widgets/section.h"

namespace creasewright {

namespace {

constexpr int kLeftWidth = 300;
constexpr int kRightWidth = 420;
constexpr int kNarrowRightWidth = 300;
constexpr int kLeastSheetWidth = 320;
constexpr int kBetween = 32;      // margins and handles
constexpr int kStepsAt = 2;       // of the tabs of the drawer
constexpr int kArrowsWidth = 48;  // of a bar with more tabs than it has room for

QFrame* card(QWidget* content, QWidget* parent) {
  auto* frame = new QFrame(parent);
  frame->setProperty("card", true);
  auto* layout = new QVBoxLayout(frame);
  layout->setContentsMargins(12, 8, 12, 12);
  layout->addWidget(content);
  return frame;
}

}  // namespace

Columns::Columns(DesignSession& session, QWidget* parent)
    : QWidget(parent), session_(session), across_(new QSplitter(Qt::Horizontal, this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 8, 8, 8);
  layout->addWidget(across_);
  across_->setHandleWidth(8);
  across_->setChildrenCollapsible(false);
  makeLeft();
  makeMiddle();
  makeRight();
  across_->addWidget(left_);
  across_->addWidget(pages_);
  across_->addWidget(right_);
  across_->setStretchFactor(1, 1);
  connect(checks_, &ChecksPanel::parameterAsked, this, &Columns::askForParameter);
  connect(checks_, &ChecksPanel::countChanged, this, &Columns::showCheckCount);
  connect(&session_, &DesignSession::changed, this, &Columns::showPieces);
  showPieces();
}

void Columns::makeLeft() {
  left_ = new QScrollArea(this);
  left_->setWidgetResizable(true);
  left_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  left_->setFixedWidth(kLeftWidth);
  leftContent_ = new QWidget(left_);
  auto* layout = new QVBoxLayout(leftContent_);
  layout->setContentsMargins(0, 0, 4, 0);
  layout->setSpacing(8);
  measures_ = new MeasuresPanel(session_, this);
  addSection(tr("Product"), new ProductPanel(session_, this));
  auto* style = new StylePanel(session_, this);
  connect(style, &StylePanel::galleryAsked, this, [this] { showGallery(true); });
  addSection(tr("Style"), style);
  addSection(tr("Measures"), measures_);
  addSection(tr("Card"), new CardPanel(session_, this));
  addSection(tr("Extras"), new ExtrasPanel(session_, this));
  addSection(tr("Changes"), new ChangesPanel(session_, this));
  layout->addStretch(1);
  left_->setWidget(leftContent_);
}

void Columns::addSection(const QString& title, QWidget* content) {
  auto* section = new Section(title, content, this);
  sections_.push_back(section);
  leftContent_->layout()->addWidget(card(section, leftContent_));
  connect(section, &Section::toggled, this, [this, section](bool open) {
    if (open && narrow_) openOnly(section);
  });
}

void Columns::makeMiddle() {
  middle_ = new QWidget(this);
  sheet_ = new SheetView(session_, this);
  connect(sheet_, &SheetView::hovered, this, &Columns::hovered);
  connect(&session_.selection(), &Selection::chosen, this, [this](const Place& place) {
    if (place.piece >= 0 && place.piece < pieces_->count()) pieces_->setCurrentIndex(place.piece);
  });
  pieces_ = new QTabBar(this);
  pieces_->setDrawBase(false);
  pieces_->setExpanding(false);
  connect(pieces_, &QTabBar::currentChanged, this, [this](int index) {
    sheet_->showPiece(std::max(0, index));
    fold_->showPiece(std::max(0, index));
  });
  drawer_ = new QTabWidget(this);
  drawer_->setDocumentMode(true);
  drawer_->tabBar()->setDrawBase(false);
  drawer_->addTab(new ScoreList(session_, this), tr("Score"));
  drawer_->addTab(new GlueList(session_, this), tr("Glue"));
  steps_ = new StepList(session_, this);
  drawer_->addTab(steps_, tr("Steps"));
  drawer_->addTab(new OutlineTree(session_, this), tr("Panels"));
  drawer_->setMinimumSize(220, 120);
  middleSplit_ = new QSplitter(Qt::Vertical, middle_);
  middleSplit_->setHandleWidth(8);
  middleSplit_->setChildrenCollapsible(false);
  auto* bench = new QWidget(this);
  auto* row = new QHBoxLayout(bench);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  row->addWidget(new ToolStrip(*sheet_, bench));
  row->addWidget(sheet_, 1);
  middleSplit_->addWidget(bench);
  middleSplit_->setStretchFactor(0, 1);
  auto* layout = new QVBoxLayout(middle_);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addWidget(pieces_);
  layout->addWidget(middleSplit_, 1);
  gallery_ = new GalleryView(session_, this);
  connect(gallery_, &GalleryView::done, this, [this] { showGallery(false); });
  pages_ = new QStackedWidget(this);
  pages_->addWidget(middle_);
  pages_->addWidget(gallery_);
  showPage(middle_);
}

/// The page that is not shown must not ask for room.
void Columns::showPage(QWidget* page) {
  for (QWidget* each : {middle_, static_cast<QWidget*>(gallery_)}) {
    const auto policy = each == page ? QSizePolicy::Preferred : QSizePolicy::Ignored;
    each->setSizePolicy(policy, policy);
  }
  pages_->setCurrentWidget(page);
}

void Columns::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Escape) return session_.selection().clear();
  QWidget::keyPressEvent(event);
}

void Columns::showGallery(bool shown) {
  right_->setVisible(!shown);
  showPage(shown ? static_cast<QWidget*>(gallery_) : middle_);
}

void Columns::makeRight() {
  right_ = new QSplitter(Qt::Vertical, this);
  right_->setHandleWidth(8);
  right_->setChildrenCollapsible(false);
  fold_ = new FoldPanel(session_, this);
  checks_ = new ChecksPanel(session_, this);
  auto* content = new QWidget(this);
  auto* heading = new QLabel(tr("Checks"), content);
  heading->setProperty("title", true);
  checksBody_ = new QVBoxLayout(content);
  checksBody_->setContentsMargins(0, 0, 0, 0);
  checksBody_->setSpacing(0);
  checksBody_->addWidget(heading);
  checksCard_ = card(content, this);
}

void Columns::arrangeFor(int windowWidth) {
  const bool narrow = windowWidth < kWideFrom;
  if (arranged_ && narrow == narrow_) return;
  arranged_ = true;
  narrow_ = narrow;
  narrow ? arrangeNarrow() : arrangeWide();
}

void Columns::arrangeWide() {
  for (QWidget* tab : {static_cast<QWidget*>(fold_), static_cast<QWidget*>(checks_)}) {
    const int index = drawer_->indexOf(tab);
    if (index >= 0) drawer_->removeTab(index);
  }
  drawer_->tabBar()->moveTab(drawer_->indexOf(steps_), kStepsAt);
  drawer_->setUsesScrollButtons(false);
  middleSplit_->addWidget(drawer_);
  middleSplit_->setSizes({600, 230});
  right_->insertWidget(0, fold_);
  checksBody_->addWidget(checks_, 1);
  right_->addWidget(checksCard_);
  right_->setSizes({480, 260});
  fold_->show();
  checks_->show();
  checksCard_->show();
  right_->setMinimumWidth(0);
  right_->setMaximumWidth(QWIDGETSIZE_MAX);
  across_->setSizes({kLeftWidth, width() - kLeftWidth - kRightWidth, kRightWidth});
  for (Section* section : sections_) section->setOpen(true);
}

void Columns::arrangeNarrow() {
  checksCard_->hide();
  drawer_->insertTab(0, fold_, tr("Folded"));
  drawer_->addTab(checks_, tr("Checks", "tab"));
  // Where there is no room for all tabs, the last one is reached by the arrows beside them.
  QTabBar& bar = *drawer_->tabBar();
  bar.moveTab(drawer_->indexOf(steps_), drawer_->count() - 1);
  right_->addWidget(drawer_);
  drawer_->setCurrentIndex(0);
  showCheckCount(88);  // the longest words: all tabs are to be read in any language
  const int all = bar.sizeHint().width() + 4;
  const int left = width() - kLeftWidth - kLeastSheetWidth - kBetween;
  const bool room = left >= all;
  const int fewer = all - bar.tabRect(drawer_->count() - 1).width() + kArrowsWidth;
  const int tabs = std::max(kNarrowRightWidth, room ? all : std::min(fewer, left));
  drawer_->setUsesScrollButtons(!room);
  showCheckCount(static_cast<int>(session_.problems().size()));
  right_->setMinimumWidth(tabs);
  across_->setSizes({kLeftWidth, width() - kLeftWidth - tabs, tabs});
  openOnly(sections_.front());
}

void Columns::openOnly(Section* section) {
  for (Section* other : sections_) other->setOpen(other == section);
}

void Columns::askForParameter(const QString& key) {
  sections_[2]->setOpen(true);
  if (measures_->focusParameter(key.toStdString()))
    left_->ensureWidgetVisible(measures_->lengthField(key.toStdString()));
}

void Columns::showPieces() {
  const auto& pieces = session_.built().pieces;
  const QSignalBlocker quiet(pieces_);
  while (pieces_->count() > static_cast<int>(pieces.size()))
    pieces_->removeTab(pieces_->count() - 1);
  for (int i = 0; i < static_cast<int>(pieces.size()); ++i) {
    const QString title = pieceTitle(pieces[static_cast<std::size_t>(i)].name);
    if (i < pieces_->count())
      pieces_->setTabText(i, title);
    else
      pieces_->addTab(title);
  }
  pieces_->setVisible(pieces.size() > 1);
}

void Columns::showCheckCount(int count) {
  const int index = drawer_->indexOf(checks_);
  if (index >= 0)
    drawer_->setTabText(index, count == 0 ? tr("Checks") : tr("Checks (%1)").arg(count));
}

}  // namespace creasewright
