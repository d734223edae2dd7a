#include "classroom/sheet_choice.h"

#include <QComboBox>
#include <QVBoxLayout>
#include <algorithm>

#include "bridge/stock_words.h"
#include "bridge/text.h"
#include "kits/first_sheet.h"
#include "own_stock/stock_store.h"
#include "widgets/labelled_field.h"

namespace creasewright {

namespace {

// What a row stands for that is no sheet of the list.
constexpr int noSheet = -1;
constexpr int everySheet = -2;
constexpr int savedSheets = -3;

/// The sheet that people of a unit take: 12 in wide, or A4.
int usualSheet(const std::vector<StockSheet>& stock, Unit unit) {
  const Length wanted = unit == Unit::Inch ? Length::inches(12) : Length::nanometres(210'000'000);
  for (std::size_t i = 0; i < stock.size(); ++i)
    if (stock[i].width == wanted && stock[i].card.empty()) return static_cast<int>(i);
  return 0;
}

}  // namespace

SheetChoice::SheetChoice(Unit unit, QWidget* parent)
    : QWidget(parent), unit_(unit), first_(new QComboBox(this)), second_(new QComboBox(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  addLabelledField(column, tr("Sheets"), first_);
  addLabelledField(column, tr("Other sheets"), second_);
  connect(first_, &QComboBox::currentIndexChanged, this, &SheetChoice::changed);
  connect(second_, &QComboBox::currentIndexChanged, this, &SheetChoice::changed);
}

void SheetChoice::readList() {
  stock_ = ownStock();
  fill();
}

void SheetChoice::offerSaved(std::vector<StockSheet> saved) {
  saved_ = std::move(saved);
  fill();
}

std::vector<StockSheet> SheetChoice::firstFor(const BuiltKit* kit) const {
  if (!saved_.empty() || stock_.empty()) return saved_;
  const int usual = usualSheet(stock_, unit_);
  const int first = kit == nullptr ? usual : firstSheetFor(*kit, stock_, usual);
  return {stock_.at(static_cast<std::size_t>(first))};
}

void SheetChoice::fill() {
  const QSignalBlocker quiet(this);
  first_->clear();
  second_->clear();
  second_->addItem(tr("No other"), noSheet);
  for (int i = 0; i < static_cast<int>(stock_.size()); ++i) {
    const QString name = stockName(stock_[static_cast<std::size_t>(i)].name);
    first_->addItem(name, i);
    second_->addItem(name, i);
  }
  first_->addItem(tr("All on the list"), everySheet);
  if (!saved_.empty()) first_->addItem(tr("As saved in the kit"), savedSheets);
}

/// Its place in the person's list, or noSheet.
int SheetChoice::listed(const StockSheet& sheet) const {
  const auto found = std::ranges::find(stock_, sheet);
  return found == stock_.end() ? noSheet : static_cast<int>(found - stock_.begin());
}

void SheetChoice::chooseRows(int first, int second) {
  const QSignalBlocker quiet(this);
  first_->setCurrentIndex(first_->findData(first));
  second_->setCurrentIndex(second_->findData(second));
}

void SheetChoice::choose(const std::vector<StockSheet>& sheets) {
  if (sheets.empty() || sheets == this->sheets()) return;
  const int last = listed(sheets.back());
  const std::vector<StockSheet> before(sheets.begin(), sheets.end() - 1);
  if (sheets == saved_) {
    chooseRows(savedSheets, noSheet);
  } else if (sheets.size() == 1 && last >= 0) {
    chooseRows(last, noSheet);
  } else if (sheets.size() == 2 && last >= 0 && listed(sheets.front()) >= 0) {
    chooseRows(listed(sheets.front()), last);
  } else if (sheets == stock_) {
    chooseRows(everySheet, noSheet);
  } else if (last >= 0 && before == saved_) {
    chooseRows(savedSheets, last);
  } else {
    offerSaved(sheets);
    chooseRows(savedSheets, noSheet);
  }
}

std::vector<StockSheet> SheetChoice::sheets() const {
  const int first = first_->currentData().toInt();
  const int second = second_->currentData().toInt();
  if (first == everySheet) return stock_;
  std::vector<StockSheet> sheets = first == savedSheets ? saved_ : std::vector<StockSheet>();
  for (const int index : {first, second}) {
    const bool again = index == second && first == second && !sheets.empty();
    if (index >= 0 && index < static_cast<int>(stock_.size()) && !again)
      sheets.push_back(stock_[static_cast<std::size_t>(index)]);
  }
  return sheets;
}

}  // namespace creasewright
