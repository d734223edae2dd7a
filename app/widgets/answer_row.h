#pragma once

#include <QString>

class QDialog;
class QPushButton;
class QVBoxLayout;

namespace creasewright {

/// The row at a dialog's foot: what leaves it (Cancel, where it has no other words), and the answer
/// that is asked for. What the answer does is for the dialog to connect.
QPushButton* addAnswerRow(QVBoxLayout* column, QDialog* dialog, const QString& answer,
                          const QString& leave = {});

}  // namespace creasewright
