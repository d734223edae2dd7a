#include "widgets/answer_row.h"

#include <QCoreApplication>
#include <QDialog>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace creasewright {

QPushButton* addAnswerRow(QVBoxLayout* column, QDialog* dialog, const QString& answer) {
  auto* row = new QHBoxLayout;
  auto* cancel = new QPushButton(QCoreApplication::translate("answers", "Cancel"), dialog);
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
