#include "kits/kit_saving.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QStandardPaths>

#include "bridge/problem_text.h"
#include "kits/class_folder.h"
#include "kits/kit_words.h"
#include "kits/machine_files.h"
#include "session/preferences.h"

namespace creasewright {

KitChoices KitSaving::choices() const {
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

bool KitSaving::written(const std::optional<Problem>& problem) const {
  if (problem) {
    QMessageBox::warning(window_, KitTr::tr("Creasewright"),
                         problemSentence(*problem, session_.unit()));
  }
  return !problem;
}

bool KitSaving::asFile(const ClassKit& kit, const KitPlan* plan, const QString& ending,
                       const QString& filter) const {
  const QString folder = session_.path().isEmpty()
                             ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                             : QFileInfo(session_.path()).path();
  const QString dotted = QLatin1Char('.') + ending;
  QString path = QFileDialog::getSaveFileName(
      window_, QString(), QDir(folder).filePath(kitTitle(kit) + dotted), filter);
  if (path.isEmpty()) {
    return false;
  }
  if (!path.endsWith(dotted, Qt::CaseInsensitive)) {
    path += dotted;
  }
  return written(writeKitPlan(kit, path, choices(), plan));
}

bool KitSaving::asFolder(const ClassKit& kit, const KitPlan* plan) const {
  const QString folder =
      QFileDialog::getExistingDirectory(window_, KitTr::tr("Folder for the papers"));
  return !folder.isEmpty() && written(writeClassFolder(kit, folder, choices(), plan));
}

bool KitSaving::asMats(const ClassKit& kit) const {
  if (kit.stock.empty()) {
    return written(Problem{ProblemCode::NoDemand, {}, {}});
  }
  const QString folder =
      QFileDialog::getExistingDirectory(window_, KitTr::tr("Folder for the layouts"));
  if (folder.isEmpty()) {
    return false;
  }
  const KitChoices now = choices();
  MachineChoices mats;
  mats.width = kit.stock.front().width;
  mats.height = kit.stock.front().height;
  mats.paper = now.paper;
  mats.unit = now.unit;
  mats.now = now.now;
  return written(writeMachineFolder(kit, folder, mats));
}

}  // namespace creasewright
