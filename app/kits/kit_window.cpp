#include "kits/kit_window.h"

#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QSpinBox>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "bridge/problem_text.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "document/design_file.h"
#include "kits/kit_pages.h"
#include "kits/kit_words.h"
#include "output/page_preview.h"
#include "session/preferences.h"
#include "styles/registry.h"
#include "widgets/labelled_field.h"

namespace creasewright {

namespace {

constexpr int settingsWidth = 240;
constexpr int pageWidth = 560;
constexpr double secondsToPlan = 1;  // while numbers change

QString designTitle(const Design& design) {
  if (!design.title.empty()) {
    return text(design.title);
  }
  const Result<const Style*> style = findStyle(design.styleId);
  return style ? styleTitle(**style) : text(design.styleId);
}

StockSheet stockOf(const Paper& paper) {
  return {std::string(paper.name), paper.width, paper.height, 0, -1};
}

}  // namespace

KitWindow::KitWindow(DesignSession& session, QWidget* parent)
    : QDialog(parent),
      session_(session),
      takers_(new QSpinBox(this)),
      spares_(new QSpinBox(this)),
      sheet_(new QComboBox(this)),
      second_(new QComboBox(this)),
      designs_(new QListWidget(this)),
      status_(new QLabel(this)),
      preview_(new PagePreview(this)) {
  setWindowTitle(tr("Class kit"));
  resize(940, 680);
  kit_.items.push_back({session.built().design, 1});
  auto* column = new QVBoxLayout;
  column->setSpacing(4);
  addControls(column);
  addButtons(column);
  auto* left = new QWidget(this);
  left->setLayout(column);
  left->setFixedWidth(settingsWidth);
  auto* scroll = new QScrollArea(this);
  scroll->setWidget(preview_);
  scroll->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
  auto* layout = new QHBoxLayout(this);
  layout->addWidget(left);
  layout->addWidget(scroll, 1);
  preview_->setPageWidth(pageWidth);
  showDesigns();
  refresh();
}

void KitWindow::addControls(QVBoxLayout* column) {
  takers_->setRange(1, kMostTakers);
  takers_->setValue(12);
  spares_->setRange(0, 50);
  for (const Paper& paper : papers()) {
    sheet_->addItem(text(paper.name), text(paper.id));
    second_->addItem(text(paper.name), text(paper.id));
  }
  second_->insertItem(0, tr("No other"));
  second_->setCurrentIndex(0);
  const bool inches = session_.unit() == Unit::Inch;
  sheet_->setCurrentIndex(
      std::max(0, sheet_->findData(inches ? QStringLiteral("12x12") : QStringLiteral("a4"))));
  designs_->setMaximumHeight(120);
  addLabelledField(column, tr("People"), takers_);
  addLabelledField(column, tr("Spare sets"), spares_);
  addLabelledField(column, tr("Sheets"), sheet_);
  addLabelledField(column, tr("Other sheets"), second_);
  addLabelledField(column, tr("Everybody makes"), designs_);
  connect(takers_, &QSpinBox::valueChanged, this, &KitWindow::refresh);
  connect(spares_, &QSpinBox::valueChanged, this, &KitWindow::refresh);
  connect(sheet_, &QComboBox::currentIndexChanged, this, &KitWindow::refresh);
  connect(second_, &QComboBox::currentIndexChanged, this, &KitWindow::refresh);
}

void KitWindow::addButtons(QVBoxLayout* column) {
  const auto button = [&](const QString& words, auto action) {
    auto* made = new QPushButton(words, this);
    made->setAutoDefault(false);
    connect(made, &QPushButton::clicked, this, action);
    column->addWidget(made);
    return made;
  };
  button(tr("Add designs…"), [this] { addDesigns(); });
  button(tr("Remove design"), [this] { removeDesign(); });
  status_->setWordWrap(true);
  status_->setProperty("quiet", true);
  column->addWidget(status_);
  column->addStretch(1);
  button(tr("Save as PDF…"), [this] {
    save(QStringLiteral("pdf"), tr("PDF (*.pdf)"));
  })->setProperty("primary", true);
  button(tr("Save as a table…"), [this] { save(QStringLiteral("csv"), tr("Table (*.csv)")); });
  button(tr("Open kit…"), [this] { openKit(); });
  button(tr("Save kit…"), [this] { save(QStringLiteral("cwkit"), tr("Kit (*.cwkit)")); });
  button(tr("Close"), [this] { reject(); });
}

void KitWindow::addDesigns() {
  const QStringList files = QFileDialog::getOpenFileNames(
      this, QString(), QFileInfo(session_.path()).path(), tr("Designs (*.cwdesign)"));
  for (const QString& file : files) {
    Result<Design> design = readDesignFile(QFile::encodeName(file).toStdString());
    if (!design) {
      QMessageBox::warning(this, tr("Creasewright"),
                           problemSentence(design.problem(), session_.unit()));
      continue;
    }
    kit_.items.push_back({std::move(design).value(), 1});
  }
  showDesigns();
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
  const QSignalBlocker quietTakers(takers_);
  const QSignalBlocker quietSpares(spares_);
  takers_->setValue(kit_.takers);
  spares_->setValue(kit_.spares);
  showDesigns();
  refresh();
}

void KitWindow::removeDesign() {
  const int row = designs_->currentRow();
  if (row < 0 || kit_.items.size() < 2) {
    status_->setText(tr("Choose one of several designs first."));
    return;
  }
  kit_.items.erase(kit_.items.begin() + row);
  showDesigns();
  refresh();
}

void KitWindow::showDesigns() {
  designs_->clear();
  for (const KitItem& item : kit_.items) {
    designs_->addItem(designTitle(item.design));
  }
}

KitChoices KitWindow::choices() const {
  KitChoices out;
  out.unit = session_.unit();
  if (const auto paper = findPaper(preferredPaper().toStdString())) {
    out.paper = *paper;
  } else {
    out.paper = papers().front();
  }
  out.now = QDateTime::currentDateTime();
  return out;
}

void KitWindow::refresh() {
  kit_.takers = takers_->value();
  kit_.spares = spares_->value();
  kit_.stock.clear();
  for (const QComboBox* box : {sheet_, second_}) {
    const auto paper = findPaper(box->currentData().toString().toStdString());
    if (paper && (kit_.stock.empty() || kit_.stock.front().name != paper->name)) {
      kit_.stock.push_back(stockOf(*paper));
    }
  }
  const Result<KitPlan> plan = planKit(kit_, {.seconds = secondsToPlan});
  if (!plan) {
    status_->setText(problemSentence(plan.problem(), session_.unit()));
    preview_->showPages({}, session_.unit());
    return;
  }
  status_->setText(sheetsSentence(*plan));
  const KitChoices now = choices();
  preview_->showPages(kitPages(kit_, *plan, std::nullopt, now.unit, now.paper), now.unit);
}

void KitWindow::save(const QString& ending, const QString& filter) {
  const QString folder = session_.path().isEmpty()
                             ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                             : QFileInfo(session_.path()).path();
  const QString dotted = QLatin1Char('.') + ending;
  QString path = QFileDialog::getSaveFileName(
      this, QString(), QDir(folder).filePath(kitTitle(kit_) + dotted), filter);
  if (path.isEmpty()) {
    return;
  }
  if (!path.endsWith(dotted, Qt::CaseInsensitive)) {
    path += dotted;
  }
  if (const auto problem = writeKitPlan(kit_, path, choices())) {
    QMessageBox::warning(this, tr("Creasewright"), problemSentence(*problem, session_.unit()));
  } else {
    status_->setText(tr("Saved."));
  }
}

}  // namespace creasewright
