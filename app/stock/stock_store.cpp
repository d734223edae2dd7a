#include "stock/stock_store.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

#include "output/write_bytes.h"

namespace creasewright {

namespace {

const QString sheetsName = QStringLiteral("sheets.csv");
const QString suppliesName = QStringLiteral("supplies.csv");

QString ownPath(const QString& name) {
  const QString base = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
  return QDir(base).filePath(QStringLiteral("stock/") + name);
}

QByteArray tableCalled(const QString& name) {
  for (const QString& path : {ownPath(name), QStringLiteral(":/stock/") + name}) {
    QFile file(path);
    if (file.open(QIODevice::ReadOnly)) {
      return file.readAll();
    }
  }
  return {};
}

std::optional<Problem> save(const QString& name, const QByteArray& csv) {
  const QString path = ownPath(name);
  QDir().mkpath(QFileInfo(path).path());
  return writeBytes(path, csv);
}

std::string_view view(const QByteArray& bytes) {
  return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

}  // namespace

QByteArray stockCsv() { return tableCalled(sheetsName); }
QByteArray supplyCsv() { return tableCalled(suppliesName); }

std::optional<Problem> saveStockCsv(const QByteArray& csv) {
  const auto read = readStockTable(view(csv), sheetsName.toStdString());
  return read ? save(sheetsName, csv) : read.problem();
}

std::optional<Problem> saveSupplyCsv(const QByteArray& csv) {
  const auto read = readSupplyTable(view(csv), suppliesName.toStdString());
  return read ? save(suppliesName, csv) : read.problem();
}

std::optional<Problem> addToOwnLists(const std::vector<StockSheet>& stock,
                                     const std::vector<SupplyItem>& supplies) {
  const QByteArray sheets = stockCsv();
  const QByteArray items = supplyCsv();
  auto ownSheets = readStockTable(view(sheets), sheetsName.toStdString());
  auto ownItems = readSupplyTable(view(items), suppliesName.toStdString());
  if (!ownSheets || !ownItems) {
    return ownSheets ? ownItems.problem() : ownSheets.problem();
  }
  std::vector<StockSheet> allSheets = std::move(ownSheets).value();
  std::vector<SupplyItem> allItems = std::move(ownItems).value();
  if (addMissing(stock, allSheets) > 0) {
    if (auto problem = save(sheetsName, QByteArray::fromStdString(writeStockTable(allSheets)))) {
      return problem;
    }
  }
  return addMissing(supplies, allItems) > 0
             ? save(suppliesName, QByteArray::fromStdString(writeSupplyTable(allItems)))
             : std::nullopt;
}

std::vector<StockSheet> ownStock() {
  const auto read = readStockTable(view(stockCsv()), "");
  return read ? *read : std::vector<StockSheet>{};
}

std::vector<SupplyItem> ownSupplies() {
  const auto read = readSupplyTable(view(supplyCsv()), "");
  return read ? *read : std::vector<SupplyItem>{};
}

}  // namespace creasewright
