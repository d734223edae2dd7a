#pragma once

#include <QDialog>
#include <functional>

#include "classroom/kit_saving.h"
#include "session/design_session.h"
#include "session/kit_session.h"

class QAction;
class QCheckBox;
class QComboBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QVBoxLayout;

namespace creasewright {

class KitContents;
class KitPreview;
class SheetChoice;

/// Plans a class: the open design and others, how many people, from which sheets. The pages follow
/// every change, and every change can be undone.
class KitWindow : public QDialog {
  Q_OBJECT

 public:
  explicit KitWindow(DesignSession& session, QWidget* parent = nullptr);

  [[nodiscard]] KitSession& kit() { return kit_; }
  [[nodiscard]] const KitPreview& preview() const { return *preview_; }

 private:
  /// A line of a button's menu.
  struct MenuLine {
    QString words;
    std::function<void()> action;
    bool ofPlan = false;  ///< only while a plan is shown
  };

  void startKit();
  QWidget* settings();
  void addControls(QVBoxLayout* column);
  void addGoal(QVBoxLayout* column);
  QPushButton* addButton(QHBoxLayout* row, const QString& words, std::function<void()> action);
  QPushButton* addMenu(QHBoxLayout* row, const QString& words, const std::vector<MenuLine>& lines);
  void addListButtons(QVBoxLayout* column);
  void addPlanButtons(QVBoxLayout* column);
  void addHistory(QHBoxLayout* row);
  void addDesigns();
  void addFromShelf();
  void addDesign(const QString& file);
  void addBlank();
  void openKit();
  void removeCurrent();
  void showOffcuts();
  void editStock();
  void editNames();
  void editPrices();
  void tell(bool written);
  void takeTitle();
  void showKit();
  void showWhatCanBeDone();
  void save(const char* ending, const QString& filter);
  void saveFolder();
  void saveMats();
  void saveKit();

  DesignSession& session_;
  KitSession kit_;
  KitSaving saving_;
  QLineEdit* title_;
  QSpinBox* takers_;
  QSpinBox* spares_;
  SheetChoice* sheets_;
  QComboBox* goal_;
  QLabel* goalCost_;  ///< of an easy plan, beside the choice
  QCheckBox* grain_;
  QCheckBox* extras_;
  KitContents* contents_;
  KitPreview* preview_;
  QPushButton* offcuts_ = nullptr;
  std::vector<QAction*> ofPlan_;  ///< what needs a plan
};

}  // namespace creasewright
