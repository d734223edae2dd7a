#include "classroom/kit_saving.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QStandardPaths>

#include "bridge/problem_text.h"
#include "papers/kit/class_folder.h"
#include "papers/kit/kit_words.h"
#include "papers/kit/machine_files.h"
#include "session/preferences.h"

namespace creasewright {

KitChoices KitSaving::choices() const {
  KitChoices out;
  out.unit = session_.unit();
  if (const auto paper = findPaper(preferredPaper().toStdString()))
    out.paper = *paper;
  else
    out.paper = papers().front();
  out.now = QDateTime::currentDateTime();
  return out;
}

bool KitSaving::written(const std::optional<Problem>& problem) const {
  if (problem) {
    QMessageBox::warning(window_, KitTr::tr("Creasewright"),
                         problemSentence(*problem, session_.unit()));
  }
  return !problem;
}

QString KitSaving::askFile(const ClassKit& kit, const QString& ending,
                           const QString& filter) const {
  const QString folder = session_.path().isEmpty()
                             ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                             : QFileInfo(session_.path()).path();
  const QString dotted = QLatin1Char('.') + ending;
  const QString path = QFileDialog::getSaveFileName(
      window_, QString(), QDir(folder).filePath(kitTitle(kit) + dotted), filter);
  return path.isEmpty() || path.endsWith(dotted, Qt::CaseInsensitive) ? path : path + dotted;
}

QString KitSaving::askFolder(const QString& title) const {
  return QFileDialog::getExistingDirectory(window_, title);
}

bool KitSaving::savePlan(const KitPlan& plan, const QString& path) const {
  return !path.isEmpty() && written(writeKitPlan(plan, path, choices()));
}

bool KitSaving::saveFolder(const KitPlan& plan, const QString& folder) const {
  return !folder.isEmpty() && written(writeClassFolder(plan, folder, choices()));
}

bool KitSaving::saveKit(const ClassKit& kit, const QString& path) const {
  return !path.isEmpty() && written(writeKitFile(kit, path));
}

bool KitSaving::saveMats(const BuiltKit& kit, const QString& folder) const {
  if (folder.isEmpty()) return false;
  const std::vector<StockSheet>& stock = kit.kit.stock;
  if (stock.empty()) return written(Problem{ProblemCode::NoDemand, {}, {}});
  const KitChoices now = choices();
  MachineChoices mats;
  mats.width = stock.front().width;
  mats.height = stock.front().height;
  mats.paper = now.paper;
  mats.unit = now.unit;
  mats.now = now.now;
  return written(writeMachineFolder(kit, folder, mats));
}

}  // namespace creasewright
