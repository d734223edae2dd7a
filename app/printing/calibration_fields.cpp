#include "printing/calibration_fields.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QStyle>
#include <QVBoxLayout>

#include "bridge/problem_text.h"
#include "pages/print_correction.h"
#include "papers/template/template_print.h"
#include "widgets/labelled_field.h"
#include "widgets/length_edit.h"

namespace creasewright {

CalibrationFields::CalibrationFields(Unit unit, QWidget* parent)
    : QWidget(parent),
      unit_(unit),
      across_(new LengthEdit(this)),
      down_(new LengthEdit(this)),
      said_(new QLabel(this)) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  auto* fields = new QHBoxLayout;
  for (const auto& [title, bar] :
       {std::pair{tr("Bar across, printed"), across_}, {tr("Bar down, printed"), down_}}) {
    auto* half = new QVBoxLayout;
    half->setSpacing(4);
    addLabelledField(half, title, bar);
    fields->addLayout(half, 1);
    bar->setUnit(unit);
    bar->setStep(Length::nanometres(100'000));
    connect(bar, &LengthEdit::lengthEdited, this, [this] {
      if (const auto correction = read()) emit corrected(*correction);
    });
  }
  column->addLayout(fields);
  said_->setWordWrap(true);
  column->addWidget(said_);
}

void CalibrationFields::show(Length across, Length down, const PrintCorrection& kept) {
  constexpr double kReadable = 0.01;  // mm
  const ToolGrid readable(Length::mm(kReadable));
  drawnAcross_ = across;
  drawnDown_ = down;
  const auto printed = [&](Length drawn, double factor) {
    return factor == 1 ? drawn
                       : readable.roundDown(Length::mm(drawn.mm() / factor + kReadable / 2));
  };
  across_->setLength(printed(across, kept.across));
  down_->setLength(printed(down, kept.down));
  read();
}

/// What the numbers mean, in words beside them; nothing where they make no sense.
std::optional<PrintCorrection> CalibrationFields::read() {
  const auto correction =
      correctionFor({drawnAcross_, across_->length()}, {drawnDown_, down_->length()});
  if (correction) {
    const QString words = correctionWords(*correction);
    said_->setText(words.isEmpty()
                       ? tr("Print the page, measure both bars and type what you read here.")
                       : tr("Kept: %1.").arg(words));
  } else {
    said_->setText(problemSentence(correction.problem(), unit_));
  }
  said_->setProperty("quiet", correction.ok());
  said_->setProperty("problem", !correction.ok());
  said_->style()->unpolish(said_);
  said_->style()->polish(said_);
  return correction ? std::optional(*correction) : std::nullopt;
}

}  // namespace creasewright
