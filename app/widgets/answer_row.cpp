#include "widgets/answer_row.h"

#include <QCoreApplication>
#include <QDialog>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace creasewright {

QPushButton* addAnswerRow(QVBoxLayout* column, QDialog* dialog, const QString& answer,
                          const QString& leave) {
  auto* row = new QHBoxLayout;
  auto* cancel = new QPushButton(
      leave.isEmpty() ? QCoreApplication::translate("answers", "Cancel") : leave, dialog);
  auto* wanted = new QPushButton(answer, dialog);
  cancel->setAutoDefault(false);
  wanted->setDefault(true);
  wanted->setProperty("primary", true);
  row->addStretch(1);
  row->addWidget(cancel);
  row->addWidget(wanted);
  column->addLayout(row);
  QObject::connect(cancel, &QPushButton::clicked, dialog, &QDialog::reject);
  return wanted;
}

}  // namespace creasewright
