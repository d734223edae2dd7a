#pragma once

#include <QString>

class QVBoxLayout;
class QWidget;

namespace creasewright {

/// A field in a column with its label above it, which also names it for screen readers.
void addLabelledField(QVBoxLayout* column, const QString& label, QWidget* field);

}  // namespace creasewright
