#pragma once

#include <QWidget>

#include "classroom/kit_saving.h"
#include "classroom/plan_worker.h"
#include "session/kit_session.h"

class QLabel;
class QPushButton;

namespace creasewright {

class PagePreview;

/// The plan of a class on its pages. It is planned anew, beside the window, whenever the kit
/// changes, and a plan that is not proven is improved on for a while.
class KitPreview : public QWidget {
  Q_OBJECT

 public:
  /// Pages are those that `saving` would write.
  KitPreview(KitSession& session, const KitSaving& saving, QWidget* parent = nullptr);

  /// The plan that is shown, while it is that of the kit as it is; else nullptr.
  [[nodiscard]] const KitPlan* plan() const;
  void tell(const QString& words);

 signals:
  void planChanged();

 private:
  /// Its marks, as the person measures.
  [[nodiscard]] ToolGrid trimmer() const;
  void planAnew();
  void showPlan(const PlanWorker::Plan& result);
  void showFindings(const PlanWorker::Plan& plan, const PlanWorker::Plan& withFindings);
  void showProblem(const Problem& problem);
  void showPages(const PlanWorker::Plan& plan);
  void showProgress(qint64 cost, qint64 bound);

  KitSession& session_;
  const KitSaving& saving_;
  QLabel* status_;
  QPushButton* stop_;
  PagePreview* pages_;
  PlanWorker* worker_;
  PlanWorker::Plan shown_;  ///< nothing while the kit has changed
  bool looking_ = false;    ///< for a better one than the plan shown
};

}  // namespace creasewright
