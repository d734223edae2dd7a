#include "tools/dimension_entry.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <algorithm>

#include "scene/sheet_view.h"
#include "widgets/length_edit.h"

namespace creasewright {

DimensionEntry::DimensionEntry(SheetView& sheet, Length now, NetPull pull)
    : QFrame(&sheet, Qt::Popup),
      sheet_(sheet),
      now_(now),
      pull_(std::move(pull)),
      field_(new LengthEdit(this)),
      measure_(new QComboBox(this)),
      sentence_(new QLabel(this)) {
  setAttribute(Qt::WA_DeleteOnClose);
  setFrameShape(QFrame::StyledPanel);
  field_->setUnit(sheet.session().unit());
  field_->setLength(now);
  field_->setAccessibleName(tr("Distance"));
  measure_->addItems(pull_.measures());
  if (pull_.canPullWithAll()) measure_->addItem(tr("all together, each a little"));
  measure_->setAccessibleName(tr("Measure to change"));
  measure_->setToolTip(tr("Measure to change"));
  sentence_->setWordWrap(true);
  sentence_->hide();
  auto* row = new QHBoxLayout;
  row->addWidget(field_);
  row->addWidget(new QLabel(tr("by"), this));
  row->addWidget(measure_);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(8, 6, 8, 6);
  layout->addLayout(row);
  layout->addWidget(sentence_);
  connect(field_, &LengthEdit::lengthEdited, this, &DimensionEntry::take);
  connect(field_, &QLineEdit::returnPressed, this, [this] {
    if (!field_->isWrong() && sentence_->isHidden()) close();
  });
  connect(measure_, &QComboBox::activated, this, &DimensionEntry::chooseMeasure);
}

void DimensionEntry::showAt(QPointF middle) {
  adjustSize();
  QRect place(QPoint(), size());
  place.moveCenter(middle.toPoint());
  const QRect bench = sheet_.bench().toAlignedRect();
  place.moveLeft(
      std::clamp(place.left(), bench.left(), std::max(bench.left(), bench.right() - width())));
  place.moveTop(
      std::clamp(place.top(), bench.top(), std::max(bench.top(), bench.bottom() - height())));
  move(sheet_.mapToGlobal(place.topLeft()));
  show();
  field_->setFocus();
  field_->selectAll();
}

void DimensionEntry::take(Length length) {
  change([&] { pull_.growBy((length - now_).mm(), {.offGrid = true}); });
}

void DimensionEntry::chooseMeasure(int index) {
  const bool all = index == pull_.measures().size();
  change([&] { all ? pull_.chooseAll() : pull_.choose(index); });
}

void DimensionEntry::change(const std::function<void()>& how) {
  const bool whole = sheet_.isWholeShown();
  sheet_.keepInPlace(how);
  if (whole) sheet_.fit();
  const QStringList limits = pull_.limits();
  sentence_->setText(limits.join(QLatin1Char(' ')));
  sentence_->setVisible(!limits.isEmpty());
  adjustSize();
}

}  // namespace creasewright
