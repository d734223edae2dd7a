#include "keeping/seen_measures.h"

#include <QCheckBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <algorithm>

#include "base/file_limits.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "fit/fit.h"
#include "styles/registry.h"

namespace creasewright {

namespace {

/// What a measure does that nobody sees and no rule governs.
QString standstill(const Design& design, const Style& base, const ParameterSpec& spec, Unit unit) {
  const Product some{ProductShape::Box, Length::mm(50), Length::mm(40), Length::mm(30)};
  const Fitted fitted =
      fit(base, design.product.value_or(some), design.ease, benchOf(design), design.parameters);
  const bool follows = std::ranges::any_of(
      fitted.reasons, [&](const FitReason& reason) { return reason.key == spec.key; });
  if (follows) return SeenMeasures::tr("follows the product");
  if (spec.kind == ParameterKind::Length)
    return SeenMeasures::tr("stays %1").arg(lengthText(design.parameters.length(spec.key), unit));
  return SeenMeasures::tr("stays as it is");
}

}  // namespace

SeenMeasures::SeenMeasures(const Design& design, const StyleWords& words, Unit unit,
                           QWidget* parent)
    : QWidget(parent) {
  const Result<const Style*> base = findStyle(design.styleId);
  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setColumnStretch(1, 1);
  if (!base) return;
  for (const ParameterSpec& spec : (*base)->parameters) {
    Row row{std::string(spec.key)};
    row.seen = new QCheckBox(parameterTitle(spec), this);
    row.seen->setToolTip(tr("In sums: %1").arg(text(spec.key)));
    const int line = static_cast<int>(rows_.size());
    grid->addWidget(row.seen, line, 0);
    const QString still = standstill(design, **base, spec, unit);
    QWidget* hidden = nullptr;
    if (spec.kind == ParameterKind::Length) {
      row.rule = new QLineEdit(this);
      row.rule->setMaxLength(static_cast<int>(kLongestTitle));
      row.rule->setPlaceholderText(tr("%1, or a rule such as width / 2").arg(still));
      row.rule->setAccessibleName(tr("Rule of %1").arg(parameterTitle(spec)));
      const auto rule = words.rules.find(spec.key);
      if (rule != words.rules.end()) row.rule->setText(text(rule->second));
      hidden = row.rule;
    } else {
      auto* stays = new QLabel(still, this);
      stays->setProperty("quiet", true);
      hidden = stays;
    }
    grid->addWidget(hidden, line, 1);
    const bool seen = std::ranges::find(words.seen, row.key) != words.seen.end();
    row.seen->setChecked(seen);
    hidden->setVisible(!seen);
    connect(row.seen, &QCheckBox::toggled, hidden, &QWidget::setHidden);
    rows_.push_back(std::move(row));
  }
}

std::vector<std::string> SeenMeasures::seen() const {
  std::vector<std::string> keys;
  for (const Row& row : rows_)
    if (row.seen->isChecked()) keys.push_back(row.key);
  return keys;
}

std::map<std::string, std::string, std::less<>> SeenMeasures::rules() const {
  std::map<std::string, std::string, std::less<>> rules;
  for (const Row& row : rows_) {
    if (row.seen->isChecked() || row.rule == nullptr) continue;
    const QString rule = row.rule->text().trimmed();
    if (!rule.isEmpty()) rules[row.key] = rule.toStdString();
  }
  return rules;
}

void SeenMeasures::focusRule(const std::string& key) {
  for (const Row& row : rows_)
    if (row.key == key && row.rule != nullptr && row.rule->isVisible()) row.rule->setFocus();
}

}  // namespace creasewright
