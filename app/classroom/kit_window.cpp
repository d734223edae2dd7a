#include "classroom/kit_window.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSpinBox>
#include <QToolButton>
#include <QVBoxLayout>

#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "classroom/blank_dialog.h"
#include "classroom/kit_contents.h"
#include "classroom/kit_preview.h"
#include "classroom/names_dialog.h"
#include "classroom/offcut_dialog.h"
#include "classroom/price_dialog.h"
#include "classroom/sheet_choice.h"
#include "commands/kit_edits.h"
#include "document/design_file.h"
#include "own_stock/stock_store.h"
#include "papers/kit/kit_words.h"
#include "shelf/shelf_window.h"
#include "stockroom/stock_window.h"
#include "widgets/history_actions.h"
#include "widgets/icon.h"
#include "widgets/labelled_field.h"
#include "widgets/window_size.h"

namespace creasewright {

namespace {

constexpr int kLeastSettings = 264;  // pixels

QHBoxLayout* addRow(QVBoxLayout* column) {
  auto* row = new QHBoxLayout;
  column->addLayout(row);
  return row;
}

}  // namespace

KitWindow::KitWindow(DesignSession& session, QWidget* parent)
    : QDialog(parent),
      session_(session),
      saving_(session, this),
      title_(new QLineEdit(this)),
      takers_(new QSpinBox(this)),
      spares_(new QSpinBox(this)),
      sheets_(new SheetChoice(session.unit(), this)),
      goal_(new QComboBox(this)),
      goalCost_(new QLabel(this)),
      grain_(new QCheckBox(tr("Keep to the grain"), this)),
      extras_(new QCheckBox(tr("Cut no extra blanks"), this)),
      contents_(new KitContents(kit_, this)),
      preview_(new KitPreview(kit_, saving_, this)) {
  setWindowTitle(tr("Class kit"));
  resize(fittingScreen(*this, {980, 720}));
  auto* layout = new QHBoxLayout(this);
  layout->addWidget(settings());
  layout->addWidget(preview_, 1);
  connect(&kit_, &KitSession::changed, this, &KitWindow::showKit);
  connect(preview_, &KitPreview::planChanged, this, &KitWindow::showWhatCanBeDone);
  startKit();
}

/// What the class is, which scrolls on a low screen, and under it what can be done with the plan.
QWidget* KitWindow::settings() {
  auto* fields = new QWidget(this);
  auto* column = new QVBoxLayout(fields);
  column->setSpacing(4);
  addControls(column);
  addListButtons(column);
  column->addStretch(1);
  fitToWords(*fields, kLeastSettings);
  auto* scroll = new QScrollArea(this);
  scroll->setWidget(fields);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setMinimumWidth(fields->minimumWidth() + scroll->verticalScrollBar()->sizeHint().width());
  auto* left = new QWidget(this);
  left->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
  auto* rows = new QVBoxLayout(left);
  rows->setContentsMargins(0, 0, 0, 0);
  rows->setSpacing(4);
  rows->addWidget(scroll, 1);
  auto* below = new QVBoxLayout;
  below->setSpacing(4);
  // In line with the fields, and free of their scroll bar.
  const QMargins beside = column->contentsMargins();
  below->setContentsMargins(beside.left(), 0,
                            beside.right() + scroll->verticalScrollBar()->sizeHint().width(), 0);
  addPlanButtons(below);
  rows->addLayout(below);
  return left;
}

/// The open design, from a sheet that holds it.
void KitWindow::startKit() {
  sheets_->readList();
  ClassKit kit;
  kit.goal = kClassGoal;
  kit.items = {{session_.built().design, 1}};
  kit.supplies = ownSupplies();
  const Result<BuiltKit> built = buildKit(kit);
  kit.stock = sheets_->firstFor(built ? &built.value() : nullptr);
  kit_.start(kit);
}

void KitWindow::addControls(QVBoxLayout* column) {
  title_->setMaxLength(120);
  title_->setPlaceholderText(tr("What the class is called"));
  addLabelledField(column, tr("Title"), title_);
  takers_->setRange(1, kMostTakers);
  spares_->setRange(0, 50);
  grain_->setToolTip(tr("No blank is turned against the grain of its sheet."));
  extras_->setToolTip(tr("The last sheets are cut only in part, so that no blank is left over."));
  auto* people = new QHBoxLayout;
  for (const auto& [label, field] :
       {std::pair{tr("People"), takers_}, {tr("Spare sets"), spares_}}) {
    auto* half = new QVBoxLayout;
    half->setSpacing(4);
    addLabelledField(half, label, field);
    people->addLayout(half, 1);
  }
  column->addLayout(people);
  column->addWidget(sheets_);
  addGoal(column);
  column->addWidget(grain_);
  column->addWidget(extras_);
  column->addWidget(contents_);
  connect(title_, &QLineEdit::editingFinished, this, &KitWindow::takeTitle);
  connect(
      takers_, &QSpinBox::valueChanged, this, [this](int n) { changeTakers(kit_, n); });
  connect(
      spares_, &QSpinBox::valueChanged, this, [this](int n) { changeSpares(kit_, n); });
  connect(
      grain_, &QCheckBox::toggled, this, [this](bool keep) { changeKeepGrain(kit_, keep); });
  connect(
      extras_, &QCheckBox::toggled, this, [this](bool none) { changeNoExtras(kit_, none); });
  connect(sheets_, &SheetChoice::changed, this, [this] { changeSheets(kit_, sheets_->sheets()); });
}

/// The two plans to choose from, and below them what the easy one costs.
void KitWindow::addGoal(QVBoxLayout* column) {
  goal_->addItem(tr("Easy to cut"), static_cast<int>(PlanGoal::Easy));
  goal_->addItem(tr("Fewest sheets"), static_cast<int>(PlanGoal::Fewest));
  goal_->setToolTip(
      tr("Easy to cut: few layouts of straight strips, settings on the trimmer’s "
         "marks, nothing narrow at the trimmer."));
  goalCost_->setWordWrap(true);
  goalCost_->setProperty("quiet", true);
  addLabelledField(column, tr("Plan"), goal_);
  column->addWidget(goalCost_);
  connect(goal_, &QComboBox::currentIndexChanged, this,
          [this] { changeGoal(kit_, static_cast<PlanGoal>(goal_->currentData().toInt())); });
}

/// What was typed is one step of the kit's history; from then on the field has nothing of its own
/// to undo.
void KitWindow::takeTitle() {
  if (title_->isModified()) {
    changeKitTitle(kit_, title_->text().trimmed());
    title_->setModified(false);
  }
}

/// All fields say what the kit says.
void KitWindow::showKit() {
  const ClassKit& kit = kit_.kit();
  const QSignalBlocker quietTakers(takers_);
  const QSignalBlocker quietSpares(spares_);
  const QSignalBlocker quietGrain(grain_);
  const QSignalBlocker quietExtras(extras_);
  const QSignalBlocker quietGoal(goal_);
  const QString title = text(kit.title);
  if (title != title_->text().trimmed()) title_->setText(title);
  takers_->setValue(kit.takers);
  spares_->setMaximum(std::max(spares_->maximum(), kit.spares));
  spares_->setValue(kit.spares);
  grain_->setChecked(kit.keepGrain);
  extras_->setChecked(kit.noExtras);
  goal_->setCurrentIndex(goal_->findData(static_cast<int>(kit.goal)));
  sheets_->choose(kit.stock);
}

void KitWindow::showWhatCanBeDone() {
  const KitPlan* plan = preview_->plan();
  for (QAction* action : ofPlan_) action->setEnabled(plan != nullptr);
  goalCost_->setText(plan != nullptr ? easyCostSentence(*plan) : QString());
  offcuts_->setEnabled(plan != nullptr && plan->findings.has_value());
}

void KitWindow::editStock() {
  StockWindow window(session_.unit(), this);
  if (window.exec() == QDialog::Accepted) {
    sheets_->readList();
    changeStock(kit_, sheets_->firstFor(kit_.built()), ownSupplies());
    sheets_->choose(kit_.kit().stock);
  }
}

void KitWindow::editPrices() {
  PriceDialog dialog(kit_.kit().pricing, this);
  if (dialog.exec() == QDialog::Accepted) changePricing(kit_, dialog.pricing());
}

void KitWindow::editNames() {
  NamesDialog dialog(kit_.kit(), session_.unit(), this);
  if (dialog.exec() == QDialog::Accepted)
    changeNames(kit_, {dialog.names(), dialog.labelWidth(), dialog.labelHeight()});
}

/// A button in a row.
QPushButton* KitWindow::addButton(QHBoxLayout* row, const QString& words,
                                  std::function<void()> action) {
  auto* button = new QPushButton(words, this);
  button->setAutoDefault(false);
  if (action) connect(button, &QPushButton::clicked, this, std::move(action));
  row->addWidget(button, 1);
  return button;
}

/// A button that opens a menu.
QPushButton* KitWindow::addMenu(QHBoxLayout* row, const QString& words,
                                const std::vector<MenuLine>& lines) {
  QPushButton* button = addButton(row, words, {});
  auto* menu = new QMenu(button);
  for (const MenuLine& line : lines) {
    QAction* action = menu->addAction(line.words, this, line.action);
    if (line.ofPlan) ofPlan_.push_back(action);
  }
  button->setMenu(menu);
  return button;
}

void KitWindow::addListButtons(QVBoxLayout* column) {
  auto* contents = addRow(column);
  addMenu(contents, tr("Add"),
          {{tr("Designs…"), [this] { addDesigns(); }},
           {tr("From the shelf…"), [this] { addFromShelf(); }},
           {tr("A plain blank…"), [this] { addBlank(); }}});
  addButton(contents, tr("Remove"), [this] { removeCurrent(); });
  addHistory(contents);
  auto* lists = addRow(column);
  addButton(
      lists, tr("Names…"), [this] { editNames(); });
  offcuts_ = addButton(lists, tr("Offcuts…"), [this] { showOffcuts(); });
  auto* money = addRow(column);
  addButton(
      money, tr("Stock and supplies…"), [this] { editStock(); });
  addButton(money, tr("Prices…"), [this] { editPrices(); });
}

void KitWindow::addPlanButtons(QVBoxLayout* column) {
  addMenu(addRow(column), tr("Save"),
          {{tr("Plan as PDF…"), [this] { save("pdf", tr("PDF (*.pdf)")); }, true},
           {tr("Plan as a table…"), [this] { save("csv", tr("Table (*.csv)")); }, true},
           {tr("All papers of the class…"), [this] { saveFolder(); }, true},
           {tr("Machine layouts…"), [this] { saveMats(); }},
           {tr("Kit…"), [this] { saveKit(); }}})
      ->setProperty("primary", true);
  auto* last = addRow(column);
  addButton(
      last, tr("Open kit…"), [this] { openKit(); });
  addButton(last, tr("Close"), [this] { reject(); });
}

/// Undo and redo beside what changes the kit, with the keys of the main window.
void KitWindow::addHistory(QHBoxLayout* row) {
  QAction* undo = undoAction(kit_.history(), this);
  undo->setIcon(lineIcon(QStringLiteral("undo")));
  undo->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_Z));
  QAction* redo = redoAction(kit_.history(), this);
  redo->setIcon(lineIcon(QStringLiteral("redo")));
  redo->setShortcuts(
      {QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
  for (QAction* action : {undo, redo}) {
    addAction(action);
    auto* button = new QToolButton(this);
    button->setDefaultAction(action);
    button->setAutoRaise(true);
    row->addWidget(button);
  }
}

void KitWindow::addDesigns() {
  const QStringList files = QFileDialog::getOpenFileNames(
      this, QString(), QFileInfo(session_.path()).path(), tr("Designs (*.cwdesign)"));
  for (const QString& file : files) addDesign(file);
}

void KitWindow::addFromShelf() {
  ShelfWindow shelf(session_, ShelfFolder::ofUser(), this);
  if (shelf.exec() != QDialog::Accepted) return;
  if (!shelf.chosen().isEmpty())
    addDesign(shelf.chosen());
  else if (shelf.copied())
    contents_->addItem({*shelf.copied(), 1});
}

void KitWindow::addDesign(const QString& file) {
  Result<Design> design = readDesignFile(QFile::encodeName(file).toStdString());
  if (!design) {
    QMessageBox::warning(this, tr("Creasewright"),
                         problemSentence(design.problem(), session_.unit()));
    return;
  }
  contents_->addItem({std::move(design).value(), 1});
}

void KitWindow::addBlank() {
  const std::vector<KitItem>& items = kit_.kit().items;
  const Card card = items.empty() ? cards().front() : items.front().design.card;
  BlankDialog dialog(card, session_.unit(), this);
  if (dialog.exec() == QDialog::Accepted) contents_->addBlank(dialog.blank());
}

/// Ticked uses become extras of the kit's copies of the designs.
void KitWindow::showOffcuts() {
  if (preview_->plan() == nullptr) return;
  OffcutDialog dialog(KitPlan(*preview_->plan()), session_.unit(), this);
  if (dialog.exec() == QDialog::Accepted) addOffcutUses(kit_, dialog.chosen());
}

void KitWindow::openKit() {
  const QString file = QFileDialog::getOpenFileName(
      this, QString(), QFileInfo(session_.path()).path(), tr("Kit (*.cwkit)"));
  if (file.isEmpty()) return;
  Result<ClassKit> kit = readKitFile(QFile::encodeName(file).toStdString());
  if (!kit) {
    QMessageBox::warning(this, tr("Creasewright"), problemSentence(kit.problem(), session_.unit()));
    return;
  }
  ClassKit opened = std::move(kit).value();
  sheets_->offerSaved(opened.stock);
  if (opened.stock.empty()) {
    const Result<BuiltKit> built = buildKit(opened, kit_.built());
    opened.stock = sheets_->firstFor(built ? &built.value() : nullptr);
  }
  if (opened.supplies.empty()) opened.supplies = kit_.kit().supplies;
  changeKit(kit_, std::move(opened));
  sheets_->choose(kit_.kit().stock);
}

void KitWindow::removeCurrent() {
  if (!contents_->removeCurrent()) preview_->tell(tr("Choose one of several first."));
}

/// The plan that is shown when the person has said where it goes: while they choose, a better one
/// may come.
void KitWindow::save(const char* ending, const QString& filter) {
  const QString path = saving_.askFile(kit_.kit(), QLatin1String(ending), filter);
  tell(preview_->plan() != nullptr && saving_.savePlan(*preview_->plan(), path));
}

void KitWindow::saveFolder() {
  const QString folder = saving_.askFolder(KitTr::tr("Folder for the papers"));
  tell(preview_->plan() != nullptr && saving_.saveFolder(*preview_->plan(), folder));
}

void KitWindow::saveMats() {
  if (!kit_.isCurrent()) return;
  const QString folder = saving_.askFolder(KitTr::tr("Folder for the layouts"));
  tell(saving_.saveMats(*kit_.built(), folder));
}

void KitWindow::saveKit() {
  const QString ending = QStringLiteral("cwkit");
  const QString path = saving_.askFile(kit_.kit(), ending, tr("Kit (*.cwkit)"));
  tell(saving_.saveKit(kit_.kit(), path));
}

void KitWindow::tell(bool written) {
  if (written) preview_->tell(tr("Saved."));
}

}  // namespace creasewright
