#include "classroom/price_dialog.h"

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>
#include <tuple>

#include "bridge/text.h"
#include "papers/kit/kit_words.h"
#include "stock/stock_list.h"
#include "widgets/answer_row.h"
#include "widgets/labelled_field.h"

namespace creasewright {

PriceDialog::PriceDialog(const std::optional<Pricing>& pricing, QWidget* parent)
    : QDialog(parent),
      pricing_(pricing),
      asked_(new QCheckBox(tr("Cost and price on the class’s papers"), this)),
      fields_(new QWidget(this)),
      currency_(new QLineEdit(this)),
      rate_(new QLineEdit(this)),
      classCosts_(new QLineEdit(this)),
      overhead_(new QSpinBox(this)),
      margin_(new QSpinBox(this)),
      fee_(new QSpinBox(this)),
      complaint_(new QLabel(this)) {
  setWindowTitle(tr("Prices"));
  const Pricing shown = pricing.value_or(Pricing{});
  asked_->setChecked(true);
  currency_->setMaxLength(static_cast<int>(kLongestCurrency));
  currency_->setText(text(shown.currency));
  rate_->setText(moneyText(shown.hourlyRate));
  classCosts_->setText(moneyText(shown.classCosts));
  for (const auto& [field, value, most] : {std::tuple{overhead_, shown.overhead, kMostOverhead},
                                           {margin_, shown.margin, kMostMargin},
                                           {fee_, shown.fee, kMostFee}}) {
    field->setRange(0, most);
    field->setSuffix(QStringLiteral(" %"));
    field->setValue(value);
  }
  auto* column = new QVBoxLayout(this);
  column->addWidget(asked_);
  auto* inner = new QVBoxLayout(fields_);
  inner->setContentsMargins(0, 0, 0, 0);
  addLabelledField(inner, tr("Currency, such as EUR"), currency_);
  addLabelledField(inner, tr("An hour of the maker’s work"), rate_);
  addLabelledField(inner, tr("Overhead on material and work: room, tools, waste"), overhead_);
  addLabelledField(inner, tr("Margin, a share of the price"), margin_);
  addLabelledField(inner, tr("Fee, a share of the price: market, card payment"), fee_);
  addLabelledField(inner, tr("Costs of a class, whoever comes: teacher, room, travel"),
                   classCosts_);
  column->addWidget(fields_);
  complaint_->setWordWrap(true);
  complaint_->setProperty("problem", true);
  column->addWidget(complaint_);
  connect(asked_, &QCheckBox::toggled, this, &PriceDialog::showAsked);
  connect(addAnswerRow(column, this, tr("Keep")), &QPushButton::clicked, this, &PriceDialog::take);
  showAsked();
}

QString PriceDialog::complaint() const { return complaint_->text(); }

void PriceDialog::showAsked() {
  fields_->setEnabled(asked_->isChecked());
  complaint_->setText({});
}

/// An amount that cannot be read is told, and the dialog stays.
void PriceDialog::take() {
  pricing_.reset();
  if (!asked_->isChecked()) return accept();
  Pricing read;
  for (const auto& [field, target] :
       {std::pair{rate_, &read.hourlyRate}, {classCosts_, &read.classCosts}}) {
    const QString typed = field->text().trimmed();
    const auto amount = readPrice(typed.isEmpty() ? "0" : typed.toStdString());
    if (!amount) {
      complaint_->setText(tr("“%1” is no amount of money. Type something like 12.50.").arg(typed));
      field->setFocus();
      return;
    }
    *target = *amount;
  }
  read.currency = currency_->text().trimmed().toStdString();
  read.overhead = overhead_->value();
  read.margin = margin_->value();
  read.fee = fee_->value();
  pricing_ = read;
  accept();
}

}  // namespace creasewright
