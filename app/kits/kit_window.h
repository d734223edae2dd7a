#pragma once

#include <QDialog>
#include <functional>

#include "kits/kit_saving.h"
#include "kits/plan_worker.h"
#include "session/design_session.h"

class QCheckBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QVBoxLayout;

namespace creasewright {

class KitContents;
class PagePreview;
class SheetChoice;

/// Plans a class: the open design and others, how many people, from which sheets. The pages follow
/// every change.
class KitWindow : public QDialog {
  Q_OBJECT

 public:
  explicit KitWindow(DesignSession& session, QWidget* parent = nullptr);

 private:
  /// A line of a button's menu.
  struct MenuLine {
    QString words;
    std::function<void()> action;
  };

  void addControls(QVBoxLayout* column);
  QPushButton* addButton(QHBoxLayout* row, const QString& words, std::function<void()> action);
  QPushButton* addMenu(QHBoxLayout* row, const QString& words, const std::vector<MenuLine>& lines);
  void addButtons(QVBoxLayout* column);
  void addDesigns();
  void addFromShelf();
  void addDesign(const QString& file);
  void addBlank();
  void openKit();
  void removeCurrent();
  void showOffcuts();
  void editStock();
  void editNames();
  void tell(bool written);
  void refresh();
  void showPlan(const PlanWorker::Plan& plan);
  void showFindings(const PlanWorker::Plan& plan, const KitFindings& findings);
  void showPages(const KitPlan& plan, const KitFindings& findings);
  void showProgress(qint64 cost, qint64 bound);
  void save(const char* ending, const QString& filter);
  [[nodiscard]] const KitPlan* shownPlan() const;

  DesignSession& session_;
  KitSaving saving_;
  ClassKit kit_;
  ClassKit opened_;                   ///< the saved kit that was opened last; empty when none
  std::vector<SupplyItem> supplies_;  ///< what the person has of tape and the like
  QLineEdit* title_;
  QSpinBox* takers_;
  QSpinBox* spares_;
  SheetChoice* sheets_;
  QCheckBox* grain_;
  QCheckBox* extras_;
  KitContents* contents_;
  QLabel* status_;
  PagePreview* preview_;
  QPushButton* stop_;
  PlanWorker* worker_;
  PlanWorker::Plan shown_;            ///< nothing while the kit has changed
  std::optional<KitFindings> found_;  ///< about that plan, once they are known
  bool looking_ = false;              ///< for a better one than the plan shown
};

}  // namespace creasewright
