#include "panels/punch_box.h"

#include <algorithm>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "own_stock/stock_store.h"

namespace creasewright {

namespace {

QString punchTitle(const Punch& punch, Unit unit) {
  const QString shape = styleText(shapeWords().at(static_cast<std::size_t>(punch.shape)));
  const QString width = lengthText(punch.width, unit);
  return punch.width == punch.height
             ? PunchBox::tr("%1, %2").arg(shape, width)
             : PunchBox::tr("%1, %2 × %3").arg(shape, width, lengthText(punch.height, unit));
}

}  // namespace

PunchBox::PunchBox(QWidget* parent) : QComboBox(parent) {
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  setMinimumContentsLength(12);
  const Result<std::vector<Punch>> own = ownPunches();
  if (own) punches_ = *own;
  connect(this, &QComboBox::activated, this, [this](int row) {
    const auto punch = static_cast<std::size_t>(row - 1);
    const Punch* picked = punch < punches_.size() ? &punches_[punch] : &made_;
    emit punchPicked(row == 0 ? nullptr : picked);
  });
}

void PunchBox::setPunched(bool punched, const Punch& made, Unit unit) {
  punched_ = punched;
  made_ = made;
  unit_ = unit;
  offer();
}

void PunchBox::offer() {
  clear();
  addItem(tr("None: it is cut"));
  for (const Punch& punch : punches_) addItem(punchTitle(punch, unit_));
  addItem(tr("A punch of its size"));
  if (!punched_) return;
  const auto own = std::ranges::find(punches_, made_);
  setCurrentIndex(static_cast<int>(own - punches_.begin()) + 1);
}

void PunchBox::showPopup() {
  if (const Result<std::vector<Punch>> own = ownPunches(); own && *own != punches_) {
    punches_ = *own;
    offer();
  }
  QComboBox::showPopup();
}

Punch punchOf(const Parameters& parameters) {
  return {static_cast<LabelShape>(parameters.count("shape")), parameters.length("width"),
          parameters.length("height")};
}

void takePunch(Parameters& parameters, const Punch* punch) {
  parameters.setCount("punched", punch == nullptr ? 0 : 1);
  if (punch == nullptr) return;
  parameters.setCount("shape", static_cast<std::int64_t>(punch->shape));
  parameters.set("width", punch->width);
  parameters.set("height", punch->height);
}

}  // namespace creasewright
