#include "stockroom/stock_window.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QFile>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTabWidget>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "bridge/problem_text.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "output/write_bytes.h"
#include "own_stock/stock_store.h"
#include "stock/csv.h"
#include "widgets/window_size.h"

namespace creasewright {

namespace {

/// Titles of the columns that tables have; others show as they are.
QString columnTitle(const std::string& name) {
  constexpr std::pair<std::string_view, const char*> kTitles[] = {
      {"code", QT_TRANSLATE_NOOP("stock", "Own code")},
      {"name", QT_TRANSLATE_NOOP("stock", "Name")},
      {"card", QT_TRANSLATE_NOOP("stock", "Card")},
      {"grammage", QT_TRANSLATE_NOOP("stock", "g/m²")},
      {"basis", QT_TRANSLATE_NOOP("stock", "Sold as (65 lb cover)")},
      {"caliper", QT_TRANSLATE_NOOP("stock", "Thickness")},
      {"sides", QT_TRANSLATE_NOOP("stock", "Good faces (1, 2)")},
      {"kind", QT_TRANSLATE_NOOP("stock", "Kind")},
      {"width", QT_TRANSLATE_NOOP("stock", "Width")},
      {"height", QT_TRANSLATE_NOOP("stock", "Height")},
      {"length", QT_TRANSLATE_NOOP("stock", "Length")},
      {"pieces", QT_TRANSLATE_NOOP("stock", "Pieces in a pack")},
      {"price", QT_TRANSLATE_NOOP("stock", "Price")},
      {"grain", QT_TRANSLATE_NOOP("stock", "Grain (long, short)")},
      {"pattern", QT_TRANSLATE_NOOP("stock", "Pattern upright (1)")},
      {"at_hand", QT_TRANSLATE_NOOP("stock", "At hand")},
      {"limit", QT_TRANSLATE_NOOP("stock", "No more (1)")},
      {"colour", QT_TRANSLATE_NOOP("stock", "Colour (sage/cream)")},
      {"shape", QT_TRANSLATE_NOOP("stock", "Shape")}};
  for (const auto& [code, title] : kTitles)
    if (code == name) return QCoreApplication::translate("stock", title);
  return text(name);
}

void widen(QTableWidget* table, int column, int least) {
  table->setColumnWidth(column, std::max(table->columnWidth(column), least));
}

/// A shape is chosen by its name in the reader's language; files hold the English one.
void addShapeBox(QTableWidget* table, int row, int column, const std::string& written) {
  auto* box = new QComboBox(table);
  const std::vector<Worded> words = shapeWords();
  for (std::size_t i = 0; i < words.size(); ++i)
    box->addItem(styleText(words[i]), text(punchShapeName(static_cast<LabelShape>(i))));
  const int known = box->findData(text(written), Qt::UserRole, Qt::MatchFixedString);
  if (known < 0 && !written.empty()) box->addItem(text(written), text(written));
  box->setCurrentIndex(
      known < 0 ? (written.empty() ? static_cast<int>(LabelShape::Circle) : box->count() - 1)
                : known);
  table->setCellWidget(row, column, box);
  widen(table, column, box->sizeHint().width());
}

bool isShape(const QTableWidget* table, int column) {
  return table->horizontalHeaderItem(column)->data(Qt::UserRole) == QStringLiteral("shape");
}

/// What stands in a cell.
std::string cellText(const QTableWidget* table, int row, int column) {
  if (const auto* box = qobject_cast<QComboBox*>(table->cellWidget(row, column)))
    return box->currentData().toString().toStdString();
  const QTableWidgetItem* item = table->item(row, column);
  return item == nullptr ? std::string() : item->text().trimmed().toStdString();
}

void fill(QTableWidget* table, const CsvTable& content) {
  table->clear();
  table->setColumnCount(static_cast<int>(content.columns.size()));
  table->setRowCount(static_cast<int>(content.rows.size()));
  for (int c = 0; c < table->columnCount(); ++c) {
    const std::string& name = content.columns[static_cast<std::size_t>(c)];
    auto* heading = new QTableWidgetItem(columnTitle(name));
    heading->setData(Qt::UserRole, text(name));
    table->setHorizontalHeaderItem(c, heading);
    for (int r = 0; r < table->rowCount(); ++r) {
      const auto& row = content.rows[static_cast<std::size_t>(r)];
      const std::string& written = row[static_cast<std::size_t>(c)];
      if (isShape(table, c))
        addShapeBox(table, r, c, written);
      else
        table->setItem(r, c, new QTableWidgetItem(text(written)));
    }
  }
  table->resizeColumnsToContents();
  // Few columns have room for what will be written.
  constexpr int kFew = 5;
  constexpr int kRoom = 140;
  for (int c = 0; c < table->columnCount() && table->columnCount() <= kFew; ++c)
    widen(table, c, kRoom);
  for (int r = 0; r < table->rowCount(); ++r)
    for (int c = 0; c < table->columnCount(); ++c)
      if (const QWidget* box = table->cellWidget(r, c)) widen(table, c, box->sizeHint().width());
}

QByteArray csvOf(const QTableWidget* table) {
  CsvTable content;
  for (int c = 0; c < table->columnCount(); ++c) {
    content.columns.push_back(
        table->horizontalHeaderItem(c)->data(Qt::UserRole).toString().toStdString());
  }
  for (int r = 0; r < table->rowCount(); ++r) {
    std::vector<std::string> row;
    bool empty = true;
    for (int c = 0; c < table->columnCount(); ++c) {
      row.push_back(cellText(table, r, c));
      empty = empty && (row.back().empty() || isShape(table, c));
    }
    if (!empty) content.rows.push_back(std::move(row));
  }
  return QByteArray::fromStdString(writeCsv(content));
}

/// A table with all columns that its kind has; one that cannot be read stays as it is.
template <class Item>
std::string everyColumn(const std::string& csv,
                        Result<std::vector<Item>> (*read)(std::string_view, std::string_view),
                        std::string (*write)(const std::vector<Item>&)) {
  const Result<std::vector<Item>> items = read(csv, "");
  return items ? write(*items) : csv;
}

template <class Value>
std::optional<Problem> problemOf(const Result<Value>& result) {
  return result ? std::nullopt : std::optional(result.problem());
}

}  // namespace

StockWindow::StockWindow(Unit unit, QWidget* parent)
    : QDialog(parent), unit_(unit), tabs_(new QTabWidget(this)), status_(new QLabel(this)) {
  setWindowTitle(tr("Stock and supplies"));
  resize(fittingScreen(*this, {1120, 560}));
  sheets_ = addTable(tr("Sheets"),
                     everyColumn(stockCsv().toStdString(), readStockTable, writeStockTable));
  supplies_ = addTable(tr("Supplies"),
                       everyColumn(supplyCsv().toStdString(), readSupplyTable, writeSupplyTable));
  punches_ = addTable(tr("Punches"),
                      everyColumn(punchCsv().toStdString(), readPunchTable, writePunchTable));
  status_->setWordWrap(true);
  status_->setProperty("quiet", true);
  connect(tabs_, &QTabWidget::currentChanged, this, &StockWindow::showHint);
  showHint();
  if (const auto problem = ownListProblem()) {
    status_->setText(tr("%1 When you save, the old list is kept beside the new one.")
                         .arg(problemSentence(*problem, unit_)));
  }
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(tabs_, 1);
  layout->addWidget(status_);
  addButtons();
}

void StockWindow::showHint() {
  status_->setText(
      current() == punches_
          ? tr("A row for each punch that you own. Lengths carry a unit, such as 1 in or 25 mm; "
               "one "
               "without a height is as high as wide.")
          : tr("Lengths carry a unit, such as 12 in, 297 mm or 25 m. What is at hand need not be "
               "bought."));
}

QTableWidget* StockWindow::addTable(const QString& title, const std::string& csv) {
  auto* table = new QTableWidget(tabs_);
  table->verticalHeader()->hide();
  table->setAlternatingRowColors(true);
  table->setAccessibleName(title);
  if (const auto content = readCsv(csv, "")) fill(table, *content);
  tabs_->addTab(table, title);
  return table;
}

void StockWindow::addButtons() {
  auto* line = new QHBoxLayout;
  const auto button = [&](const QString& words, auto action) {
    auto* made = new QPushButton(words, this);
    made->setAutoDefault(false);
    connect(made, &QPushButton::clicked, this, action);
    line->addWidget(made);
    return made;
  };
  button(
      tr("Add row"), [this] { addRow(); });
  button(
      tr("Remove row"), [this] { removeRow(); });
  button(
      tr("Read table…"), [this] { importTable(); });
  button(tr("Write table…"), [this] { exportTable(); });
  line->addStretch(1);
  button(
      tr("Cancel"), [this] { reject(); });
  button(tr("Save"), [this] {
    if (saveAll()) accept();
  })->setProperty("primary", true);
  static_cast<QVBoxLayout*>(layout())->addLayout(line);
}

QTableWidget* StockWindow::current() const {
  return static_cast<QTableWidget*>(tabs_->currentWidget());
}

void StockWindow::addRow() {
  QTableWidget* table = current();
  table->insertRow(table->rowCount());
  const int row = table->rowCount() - 1;
  for (int c = 0; c < table->columnCount(); ++c)
    if (isShape(table, c)) addShapeBox(table, row, c, {});
  table->setCurrentCell(row, 0);
}

void StockWindow::removeRow() {
  if (current()->currentRow() >= 0) current()->removeRow(current()->currentRow());
}

void StockWindow::importTable() {
  const QString path =
      QFileDialog::getOpenFileName(this, QString(), QString(), tr("Table (*.csv)"));
  QFile file(path);
  if (path.isEmpty() || !file.open(QIODevice::ReadOnly)) return;
  const std::string csv = file.readAll().toStdString();
  std::optional<Problem> problem;
  std::string whole;
  if (current() == sheets_) {
    problem = problemOf(readStockTable(csv, path.toStdString()));
    whole = everyColumn(csv, readStockTable, writeStockTable);
  } else if (current() == punches_) {
    problem = problemOf(readPunchTable(csv, path.toStdString()));
    whole = everyColumn(csv, readPunchTable, writePunchTable);
  } else {
    problem = problemOf(readSupplyTable(csv, path.toStdString()));
    whole = everyColumn(csv, readSupplyTable, writeSupplyTable);
  }
  if (const auto content = readCsv(whole, path.toStdString()); told(problem) && content)
    fill(current(), *content);
}

void StockWindow::exportTable() {
  const QString path =
      QFileDialog::getSaveFileName(this, QString(), QString(), tr("Table (*.csv)"));
  if (!path.isEmpty()) told(writeBytes(path, csvOf(current())));
}

bool StockWindow::told(const std::optional<Problem>& problem) {
  if (problem) status_->setText(problemSentence(*problem, unit_));
  return !problem;
}

bool StockWindow::saveAll() {
  return told(saveStockCsv(csvOf(sheets_))) && told(saveSupplyCsv(csvOf(supplies_))) &&
         told(savePunchCsv(csvOf(punches_)));
}

}  // namespace creasewright
