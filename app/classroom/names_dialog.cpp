#include "classroom/names_dialog.h"

#include <QHBoxLayout>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "bridge/text.h"
#include "widgets/answer_row.h"
#include "widgets/labelled_field.h"

namespace creasewright {

NamesDialog::NamesDialog(const ClassKit& kit, Unit unit, QWidget* parent)
    : QDialog(parent),
      unit_(unit),
      names_(new QPlainTextEdit(this)),
      width_(new LengthEdit(this)),
      height_(new LengthEdit(this)) {
  setWindowTitle(tr("Names and labels"));
  QStringList names;
  for (const std::string& name : kit.names) names.append(text(name));
  names_->setPlainText(names.join(QLatin1Char('\n')));
  names_->setTabChangesFocus(true);
  auto* layout = new QVBoxLayout(this);
  addLabelledField(layout, tr("The takers' names for the bags, one a line:"), names_);
  auto* sizes = new QHBoxLayout;
  for (const auto& [label, field, length] :
       {std::tuple{tr("Width of a label"), width_, kit.labelWidth},
        std::tuple{tr("Height of a label"), height_, kit.labelHeight}}) {
    field->setUnit(unit);
    field->setLength(length);
    auto* half = new QVBoxLayout;
    addLabelledField(half, label, field);
    sizes->addLayout(half);
  }
  layout->addLayout(sizes);
  connect(addAnswerRow(layout, this, tr("Keep")), &QPushButton::clicked, this, &NamesDialog::take);
}

std::vector<std::string> NamesDialog::names() const {
  std::vector<std::string> names;
  for (const QString& name : names_->toPlainText().split(QLatin1Char('\n')))
    if (!name.trimmed().isEmpty()) names.push_back(name.trimmed().toStdString());
  return names;
}

/// A size that cannot be printed is told at its field, and the dialog stays.
void NamesDialog::take() {
  for (LengthEdit* field : {width_, height_})
    if (!field->requireWithin(
            kSmallestLabel, kLargestLabel,
            tr("A label measures from %1 to %2 a side.")
                .arg(lengthText(kSmallestLabel, unit_), lengthText(kLargestLabel, unit_))))
      return;
  accept();
}

}  // namespace creasewright
