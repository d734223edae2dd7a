#pragma once

#include <QDialog>
#include <functional>
#include <optional>

#include "base/problem.h"
#include "units/length.h"

class QLabel;
class QTabWidget;
class QTableWidget;

namespace creasewright {

/// The person's own sheets, supplies and punches as tables to edit, with tables read from and
/// written to CSV files.
class StockWindow : public QDialog {
  Q_OBJECT

 public:
  explicit StockWindow(Unit unit, QWidget* parent = nullptr);

  /// Saves all tables; false, with a sentence shown, when one cannot be read.
  bool saveAll();

 private:
  QTableWidget* addTable(const QString& title, const std::string& csv);
  void addButtons();
  void addRow();
  void removeRow();
  void importTable();
  void exportTable();
  [[nodiscard]] QTableWidget* current() const;
  /// What is written in the table that is shown.
  void showHint();
  bool told(const std::optional<Problem>& problem);

  Unit unit_;
  QTabWidget* tabs_;
  QTableWidget* sheets_;
  QTableWidget* supplies_;
  QTableWidget* punches_;
  QLabel* status_;
};

}  // namespace creasewright
