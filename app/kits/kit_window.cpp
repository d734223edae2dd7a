#include "kits/kit_window.h"

#include <QCheckBox>
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
#include <QSpinBox>
#include <QVBoxLayout>

#include "base/file_limits.h"
#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "document/design_file.h"
#include "kits/blank_dialog.h"
#include "kits/kit_contents.h"
#include "kits/kit_pages.h"
#include "kits/kit_words.h"
#include "kits/names_dialog.h"
#include "kits/offcut_dialog.h"
#include "kits/sheet_choice.h"
#include "output/page_preview.h"
#include "shelf/shelf_window.h"
#include "stock/stock_store.h"
#include "stock/stock_window.h"
#include "widgets/labelled_field.h"
#include "widgets/window_size.h"

namespace creasewright {

namespace {

constexpr int kitSettingsWidth = 264;
constexpr double secondsToPlan = 0.7;  // while numbers change
constexpr double secondsToLook = 10;   // for a better plan, when the first is not proven

}  // namespace

KitWindow::KitWindow(DesignSession& session, QWidget* parent)
    : QDialog(parent),
      session_(session),
      saving_(session, this),
      title_(new QLineEdit(this)),
      takers_(new QSpinBox(this)),
      spares_(new QSpinBox(this)),
      sheets_(new SheetChoice(session.unit(), this)),
      grain_(new QCheckBox(tr("Keep to the grain"), this)),
      extras_(new QCheckBox(tr("Cut no extra blanks"), this)),
      contents_(new KitContents(this)),
      status_(new QLabel(this)),
      preview_(new PagePreview(this)),
      stop_(new QPushButton(tr("Stop looking"), this)),
      worker_(new PlanWorker(this)) {
  title_->setMaxLength(static_cast<int>(kLongestTitle));
  setWindowTitle(tr("Class kit"));
  resize(fittingScreen(*this, {980, 720}));
  contents_->setContents({{session.built().design, 1}}, {});
  kit_.items = contents_->items();
  auto* column = new QVBoxLayout;
  column->setSpacing(4);
  addControls(column);
  addButtons(column);
  auto* left = new QWidget(this);
  left->setLayout(column);
  left->setFixedWidth(kitSettingsWidth);
  auto* scroll = new QScrollArea(this);
  scroll->setWidget(preview_);
  scroll->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
  auto* pages = new QVBoxLayout;
  status_->setWordWrap(true);
  status_->setProperty("quiet", true);
  auto* top = new QHBoxLayout;
  top->addWidget(status_, 1);
  top->addWidget(stop_);
  pages->addLayout(top);
  pages->addWidget(scroll, 1);
  stop_->setAutoDefault(false);
  stop_->hide();
  connect(stop_, &QPushButton::clicked, worker_, &PlanWorker::stop);
  connect(worker_, &PlanWorker::done, this, &KitWindow::showPlan);
  connect(worker_, &PlanWorker::found, this, &KitWindow::showFindings);
  connect(worker_, &PlanWorker::progressed, this, &KitWindow::showProgress);
  auto* layout = new QHBoxLayout(this);
  layout->addWidget(left);
  layout->addLayout(pages, 1);
  preview_->setPageWidth(previewWidth);
  refresh();
}

void KitWindow::addControls(QVBoxLayout* column) {
  title_->setMaxLength(120);
  title_->setPlaceholderText(tr("What the class is called"));
  addLabelledField(column, tr("Title"), title_);
  connect(title_, &QLineEdit::editingFinished, this, &KitWindow::refresh);
  takers_->setRange(1, kMostTakers);
  takers_->setValue(12);
  spares_->setRange(0, 50);
  grain_->setToolTip(tr("No blank is turned against the grain of its sheet."));
  extras_->setToolTip(tr("The last sheets are cut only in part, so that no blank is left over."));
  sheets_->offer(kit_);
  supplies_ = ownSupplies();
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
  column->addWidget(grain_);
  column->addWidget(extras_);
  column->addWidget(contents_);
  connect(contents_, &KitContents::changed, this, &KitWindow::refresh);
  connect(grain_, &QCheckBox::toggled, this, &KitWindow::refresh);
  connect(extras_, &QCheckBox::toggled, this, &KitWindow::refresh);
  connect(takers_, &QSpinBox::valueChanged, this, &KitWindow::refresh);
  connect(spares_, &QSpinBox::valueChanged, this, &KitWindow::refresh);
  connect(sheets_, &SheetChoice::changed, this, &KitWindow::refresh);
}

void KitWindow::editStock() {
  StockWindow window(session_.unit(), this);
  if (window.exec() == QDialog::Accepted) {
    ClassKit now = kit_;
    now.stock = opened_.stock;
    sheets_->offer(now);
    supplies_ = ownSupplies();
    refresh();
  }
}

void KitWindow::editNames() {
  NamesDialog dialog(kit_, session_.unit(), this);
  if (dialog.exec() == QDialog::Accepted) {
    kit_.names = dialog.names();
    kit_.labelWidth = dialog.labelWidth();
    kit_.labelHeight = dialog.labelHeight();
    refresh();
  }
}

/// A button in a row.
QPushButton* KitWindow::addButton(QHBoxLayout* row, const QString& words,
                                  std::function<void()> action) {
  auto* button = new QPushButton(words, this);
  button->setAutoDefault(false);
  if (action) {
    connect(button, &QPushButton::clicked, this, std::move(action));
  }
  row->addWidget(button, 1);
  return button;
}

/// A button that opens a menu.
QPushButton* KitWindow::addMenu(QHBoxLayout* row, const QString& words,
                                const std::vector<MenuLine>& lines) {
  QPushButton* button = addButton(row, words, {});
  auto* menu = new QMenu(button);
  for (const MenuLine& line : lines) {
    menu->addAction(line.words, this, line.action);
  }
  button->setMenu(menu);
  return button;
}

void KitWindow::addButtons(QVBoxLayout* column) {
  const auto row = [&] {
    auto* made = new QHBoxLayout;
    column->addLayout(made);
    return made;
  };
  auto* contents = row();
  addMenu(contents, tr("Add"),
          {{tr("Designs…"), [this] { addDesigns(); }},
           {tr("From the shelf…"), [this] { addFromShelf(); }},
           {tr("A plain blank…"), [this] { addBlank(); }}});
  addButton(contents, tr("Remove"), [this] { removeCurrent(); });
  auto* lists = row();
  addButton(lists, tr("Names…"), [this] { editNames(); });
  addButton(lists, tr("Offcuts…"), [this] { showOffcuts(); });
  addButton(row(), tr("Stock and supplies…"), [this] { editStock(); });
  column->addStretch(1);
  addMenu(row(), tr("Save"),
          {{tr("Plan as PDF…"), [this] { save("pdf", tr("PDF (*.pdf)")); }},
           {tr("Plan as a table…"), [this] { save("csv", tr("Table (*.csv)")); }},
           {tr("All papers of the class…"), [this] { tell(saving_.asFolder(kit_, shownPlan())); }},
           {tr("Machine layouts…"), [this] { tell(saving_.asMats(kit_)); }},
           {tr("Kit…"), [this] { save("cwkit", tr("Kit (*.cwkit)")); }}})
      ->setProperty("primary", true);
  auto* last = row();
  addButton(last, tr("Open kit…"), [this] { openKit(); });
  addButton(last, tr("Close"), [this] { reject(); });
}

void KitWindow::addDesigns() {
  const QStringList files = QFileDialog::getOpenFileNames(
      this, QString(), QFileInfo(session_.path()).path(), tr("Designs (*.cwdesign)"));
  for (const QString& file : files) {
    addDesign(file);
  }
}

void KitWindow::addFromShelf() {
  ShelfWindow shelf(session_, ShelfFolder::ofUser(), this);
  if (shelf.exec() != QDialog::Accepted) {
    return;
  }
  if (!shelf.chosen().isEmpty()) {
    addDesign(shelf.chosen());
  } else if (shelf.copied()) {
    contents_->addItem({*shelf.copied(), 1});
  }
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
  const Card card =
      contents_->items().empty() ? cards().front() : contents_->items().front().design.card;
  BlankDialog dialog(card, session_.unit(), this);
  if (dialog.exec() == QDialog::Accepted) {
    contents_->addBlank(dialog.blank());
  }
}

/// Ticked uses become extras of the kit's copies of the designs.
void KitWindow::showOffcuts() {
  const Result<KitPlan> plan =
      shown_ != nullptr ? *shown_ : planKit(kit_, {.seconds = secondsToPlan});
  if (!plan) {
    status_->setText(problemSentence(plan.problem(), session_.unit()));
    return;
  }
  const std::vector<OffcutUse> uses = found_ ? found_->offcuts : offcutUses(kit_, *plan);
  OffcutDialog dialog(kit_, *plan, uses, session_.unit(), this);
  if (dialog.exec() != QDialog::Accepted) {
    return;
  }
  std::vector<KitItem> items = kit_.items;
  for (const OffcutUse& use : dialog.chosen()) {
    items.at(static_cast<std::size_t>(use.item)).design.extras.push_back(use.extra);
  }
  contents_->setContents(std::move(items), kit_.blanks);
  refresh();
}

void KitWindow::openKit() {
  const QString file = QFileDialog::getOpenFileName(
      this, QString(), QFileInfo(session_.path()).path(), tr("Kit (*.cwkit)"));
  if (file.isEmpty()) {
    return;
  }
  Result<ClassKit> kit = readKitFile(QFile::encodeName(file).toStdString());
  if (!kit) {
    QMessageBox::warning(this, tr("Creasewright"), problemSentence(kit.problem(), session_.unit()));
    return;
  }
  kit_ = std::move(kit).value();
  opened_ = kit_;
  sheets_->offer(kit_);
  if (!kit_.supplies.empty()) {
    supplies_ = kit_.supplies;
  }
  const QSignalBlocker quietTakers(takers_);
  const QSignalBlocker quietSpares(spares_);
  title_->setText(text(kit_.title));
  takers_->setValue(kit_.takers);
  spares_->setValue(kit_.spares);
  const QSignalBlocker quietGrain(grain_);
  grain_->setChecked(kit_.keepGrain);
  const QSignalBlocker quietExtras(extras_);
  extras_->setChecked(kit_.noExtras);
  contents_->setContents(kit_.items, kit_.blanks);
  refresh();
}

void KitWindow::removeCurrent() {
  if (!contents_->removeCurrent()) {
    status_->setText(tr("Choose one of several first."));
  }
}

/// The plan that is shown, while it is that of the kit as it is.
const KitPlan* KitWindow::shownPlan() const {
  return shown_ != nullptr && shown_->ok() ? &shown_->value() : nullptr;
}

void KitWindow::save(const char* ending, const QString& filter) {
  tell(saving_.asFile(kit_, shownPlan(), QLatin1String(ending), filter));
}

void KitWindow::tell(bool written) {
  if (written) {
    status_->setText(tr("Saved."));
  }
}

void KitWindow::refresh() {
  kit_.title = title_->text().trimmed().toStdString();
  kit_.takers = takers_->value();
  kit_.spares = spares_->value();
  kit_.keepGrain = grain_->isChecked();
  kit_.noExtras = extras_->isChecked();
  kit_.supplies = supplies_;
  kit_.items = contents_->items();
  kit_.blanks = contents_->blanks();
  kit_.stock = sheets_->sheets();
  looking_ = false;
  shown_ = nullptr;
  found_.reset();
  worker_->start(kit_, secondsToPlan);
}

/// A plan that is not proven is shown, and a better one looked for meanwhile.
void KitWindow::showPlan(const PlanWorker::Plan& result) {
  const Result<KitPlan>& plan = *result;
  stop_->hide();
  if (!plan) {
    status_->setText(problemSentence(plan.problem(), session_.unit()));
    preview_->showPages({}, session_.unit());
    return;
  }
  status_->setText(sheetsSentence(*plan));
  if (shownPlan() == nullptr || plan->cost() <= shownPlan()->cost()) {
    shown_ = result;
    found_.reset();
    showPages(*plan, {});
  }
  if (plan->proven || looking_) {
    return;
  }
  looking_ = true;
  stop_->show();
  worker_->start(kit_, secondsToLook);
}

void KitWindow::showFindings(const PlanWorker::Plan& plan, const KitFindings& findings) {
  if (plan == shown_) {
    found_ = findings;
    showPages(plan->value(), findings);
  }
}

void KitWindow::showPages(const KitPlan& plan, const KitFindings& findings) {
  const KitChoices now = saving_.choices();
  preview_->showPages(kitPages(kit_, plan, findings, now.unit, now.paper), now.unit);
}

void KitWindow::showProgress(qint64 cost, qint64 bound) {
  if (looking_ && cost > bound && shownPlan() != nullptr) {
    status_->setText(tr("%n sheet(s); looking for a better plan …", nullptr, shownPlan()->sheets));
  }
}

}  // namespace creasewright
