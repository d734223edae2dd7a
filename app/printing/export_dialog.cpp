#include "printing/export_dialog.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QRadioButton>
#include <QVBoxLayout>
#include <vector>

#include "bridge/problem_text.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "papers/template/export.h"
#include "printing/ask_path.h"
#include "printing/machine_fields.h"
#include "session/preferences.h"
#include "widgets/answer_row.h"

namespace creasewright {

namespace {

struct Kind {
  QString ending;
  QString title;
  QString hint;
};

std::vector<Kind> kinds() {
  return {
      {"pdf", ExportDialog::tr("Template as PDF"),
       ExportDialog::tr("Pages in true size with score settings, to print anywhere.")},
      {"svg", ExportDialog::tr("Net as SVG"),
       ExportDialog::tr("For cutting machines and drawing programs, one group for each kind of "
                        "line.")},
      {"dxf", ExportDialog::tr("Net as DXF"),
       ExportDialog::tr("For cutting machines and plotters, one layer for each kind of line.")},
      {"png", ExportDialog::tr("Picture of the net as PNG"),
       ExportDialog::tr("To look at, not to measure.")},
      {"json", ExportDialog::tr("Everything as JSON"),
       ExportDialog::tr("Panels, scores and plans for other programs.")},
  };
}

}  // namespace

ExportDialog::ExportDialog(DesignSession& session, QWidget* parent)
    : QDialog(parent),
      session_(session),
      kinds_(new QButtonGroup(this)),
      piece_(new QComboBox(this)),
      names_(new QLineEdit(this)),
      machine_(new MachineFields(this)) {
  setWindowTitle(tr("Save as a file"));
  auto* layout = new QVBoxLayout(this);
  layout->setSpacing(2);
  int id = 0;
  for (const Kind& kind : kinds()) {
    auto* choice = new QRadioButton(kind.title, this);
    auto* hint = new QLabel(kind.hint, this);
    hint->setProperty("quiet", true);
    hint->setContentsMargins(24, 0, 0, 6);
    choice->setAccessibleDescription(kind.hint);
    choice->setChecked(id == 0);
    kinds_->addButton(choice, id++);
    layout->addWidget(choice);
    layout->addWidget(hint);
  }
  piece_->addItem(tr("All pieces"), QString());
  for (const BuiltPiece& piece : session_.built().pieces)
    piece_->addItem(pieceTitle(piece.name), text(piece.name));
  piece_->setVisible(session_.built().pieces.size() > 1);
  layout->addWidget(piece_);
  names_->setPlaceholderText(tr("Names of takers, with commas: a set of pages for each"));
  names_->setAccessibleName(tr("Names of takers"));
  layout->addWidget(names_);
  layout->addWidget(machine_);
  connect(kinds_, &QButtonGroup::idToggled, this, &ExportDialog::showFields);
  showFields();
  layout->addSpacing(8);
  connect(addAnswerRow(layout, this, tr("Save…"), tr("Close")), &QPushButton::clicked, this,
          &ExportDialog::exportFile);
}

/// Only what the chosen kind of file takes.
void ExportDialog::showFields() {
  const Kind kind = kinds()[static_cast<std::size_t>(kinds_->checkedId())];
  names_->setVisible(kind.ending == QLatin1String("pdf"));
  machine_->setVisible(kind.ending == QLatin1String("svg") || kind.ending == QLatin1String("dxf"));
  adjustSize();
}

void ExportDialog::exportFile() {
  const Kind kind = kinds()[static_cast<std::size_t>(kinds_->checkedId())];
  const QString path = askPath(this, session_, kind.ending,
                               QStringLiteral("%1 (*.%2)").arg(kind.title, kind.ending));
  if (path.isEmpty()) return;
  ExportChoices choices;
  choices.piece = piece_->currentData().toString();
  if (!machine_->isHidden()) choices.machine = machine_->chosen();
  if (!names_->isHidden())
    for (const QString& name : names_->text().split(QLatin1Char(','), Qt::SkipEmptyParts))
      if (!name.simplified().isEmpty()) choices.names.append(name.simplified());
  choices.unit = session_.unit();
  choices.now = QDateTime::currentDateTime();
  if (const auto paper = findPaper(preferredPaper().toStdString())) choices.setup.paper = *paper;
  if (const auto problem = exportDesign(session_.built(), path, choices)) {
    QMessageBox::warning(this, windowTitle(), problemSentence(*problem, session_.unit()));
    return;
  }
  accept();
}

}  // namespace creasewright
