#include "widgets/labelled_field.h"

#include <QLabel>
#include <QVBoxLayout>

namespace creasewright {

void addLabelledField(QVBoxLayout* column, const QString& label, QWidget* field) {
  auto* title = new QLabel(label);
  title->setBuddy(field);
  field->setAccessibleName(label);
  column->addWidget(title);
  column->addWidget(field);
  column->addSpacing(4);
}

}  // namespace creasewright
