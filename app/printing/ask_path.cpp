#include "printing/ask_path.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QStandardPaths>

namespace creasewright {

QString askPath(QWidget* parent, const DesignSession& session, const QString& ending,
                const QString& filter) {
  const QString folder = session.path().isEmpty()
                             ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                             : QFileInfo(session.path()).path();
  QString name = session.displayName();
  name.replace(QLatin1Char('/'), QLatin1Char('-'));
  const QString dotted = QLatin1Char('.') + ending;
  QFileDialog dialog(parent, QString(), folder, filter);
  dialog.setAcceptMode(QFileDialog::AcceptSave);
  dialog.setDefaultSuffix(ending);
  dialog.selectFile(QDir(folder).filePath(name + dotted));
  if (dialog.exec() != QDialog::Accepted) return {};
  const QString path = dialog.selectedFiles().value(0);
  return path.endsWith(dotted, Qt::CaseInsensitive) ? path : path + dotted;
}

}  // namespace creasewright
