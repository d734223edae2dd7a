#include "own_stock/stock_store.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

#include "base/file_limits.h"
#include "output/write_bytes.h"

namespace creasewright {

namespace {

const QString sheetsName = QStringLiteral("sheets.csv");
const QString punchesName = QStringLiteral("punches.csv");
const QString suppliesName = QStringLiteral("supplies.csv");

template <class Item>
using ReadTable = Result<std::vector<Item>> (*)(std::string_view, std::string_view);

QString ownPath(const QString& name) {
  const QString base = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
  return QDir(base).filePath(QStringLiteral("stock/") + name);
}

QByteArray tableCalled(const QString& name) {
  for (const QString& path : {ownPath(name), QStringLiteral(":/stock/") + name}) {
    QFile file(path);
    if (file.open(QIODevice::ReadOnly)) return file.readAll();
  }
  return {};
}

std::string_view view(const QByteArray& bytes) {
  return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

/// Gives the person's list another name when it cannot be read, so that saving does not replace it.
template <class Item>
std::optional<Problem> keepAside(const QString& name, ReadTable<Item> read) {
  QFile own(ownPath(name));
  if (!own.exists()) return std::nullopt;
  if (own.open(QIODevice::ReadOnly)) {
    const auto table = read(view(own.readAll()), name.toStdString());
    own.close();
    if (table) return std::nullopt;
  }
  const QString part = QFileInfo(own).completeBaseName();
  const QDir folder = QFileInfo(own).dir();
  for (int number = 1;; ++number) {
    const QString aside =
        folder.filePath(QStringLiteral("%1-unreadable-%2.csv").arg(part).arg(number));
    if (QFile::exists(aside)) continue;
    if (own.rename(aside)) return std::nullopt;
    return Problem{
        ProblemCode::FileNotWritten, aside.toStdString(), {own.errorString().toStdString()}};
  }
}

/// Saves what can be read back.
template <class Item>
std::optional<Problem> save(const QString& name, const QByteArray& csv, ReadTable<Item> read) {
  const auto table = read(view(csv), name.toStdString());
  if (!table) return table.problem();
  const QString path = ownPath(name);
  QDir().mkpath(QFileInfo(path).path());
  if (auto problem = keepAside(name, read)) return problem;
  return writeBytes(path, csv);
}

}  // namespace

QByteArray stockCsv() { return tableCalled(sheetsName); }
QByteArray supplyCsv() { return tableCalled(suppliesName); }
QByteArray punchCsv() {
  const QByteArray own = tableCalled(punchesName);
  return own.isEmpty() ? QByteArray::fromStdString(writePunchTable({})) : own;
}

std::optional<Problem> saveStockCsv(const QByteArray& csv) {
  return save(sheetsName, csv, readStockTable);
}

std::optional<Problem> saveSupplyCsv(const QByteArray& csv) {
  return save(suppliesName, csv, readSupplyTable);
}

std::optional<Problem> savePunchCsv(const QByteArray& csv) {
  return save(punchesName, csv, readPunchTable);
}

std::optional<Problem> addToOwnLists(const std::vector<StockSheet>& stock,
                                     const std::vector<SupplyItem>& supplies) {
  const QByteArray sheets = stockCsv();
  const QByteArray items = supplyCsv();
  auto ownSheets = readStockTable(view(sheets), sheetsName.toStdString());
  auto ownItems = readSupplyTable(view(items), suppliesName.toStdString());
  if (!ownSheets || !ownItems) return ownSheets ? ownItems.problem() : ownSheets.problem();
  std::vector<StockSheet> allSheets = std::move(ownSheets).value();
  std::vector<SupplyItem> allItems = std::move(ownItems).value();
  if (addMissing(stock, allSheets) > 0) {
    if (auto problem =
            save(sheetsName, QByteArray::fromStdString(writeStockTable(allSheets)), readStockTable))
      return problem;
  }
  return addMissing(supplies, allItems) > 0
             ? save(suppliesName, QByteArray::fromStdString(writeSupplyTable(allItems)),
                    readSupplyTable)
             : std::nullopt;
}

std::optional<Problem> ownListProblem() {
  const auto sheets = readStockTable(view(stockCsv()), sheetsName.toStdString());
  const auto supplies = readSupplyTable(view(supplyCsv()), suppliesName.toStdString());
  const auto punches = ownPunches();
  return !sheets     ? std::optional(sheets.problem())
         : !supplies ? std::optional(supplies.problem())
         : !punches  ? std::optional(punches.problem())
                     : std::nullopt;
}

Result<std::vector<Punch>> ownPunches() {
  QFile file(ownPath(punchesName));
  if (!file.open(QIODevice::ReadOnly)) return std::vector<Punch>();
  return readPunchTable(view(file.read(kLargestTable + 1)), file.fileName().toStdString());
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
