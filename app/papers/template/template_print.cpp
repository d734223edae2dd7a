#include "papers/template/template_print.h"

#include <QLocale>
#include <cmath>

#include "bridge/design_words.h"
#include "bridge/label_text.h"
#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "document/paper_way.h"
#include "fit/basis.h"
#include "pages/pale_paper.h"
#include "pages/template_pages.h"

namespace creasewright {

namespace {

std::string parameterValue(const ParameterSpec& spec, const Parameters& parameters, Unit unit) {
  switch (spec.kind) {
    case ParameterKind::Length:
      return lengthText(parameters.length(spec.key), unit).toStdString();
    case ParameterKind::Count:
      return QLocale().toString(static_cast<qlonglong>(parameters.count(spec.key))).toStdString();
    case ParameterKind::Flag:
      return labelText({parameters.flag(spec.key) ? "yes" : "no", {}, {}}, unit).toStdString();
  }
  return {};
}

/// Name, weight in both systems, thickness.
std::string cardWords(const Card& card) {
  const std::string name = card.name.empty() ? card.id : cardName(card).toStdString();
  if (card.grammage <= 0)
    return labelText({"card", {name, card.caliper}, {}}, Unit::Millimetre).toStdString();
  const auto grams = static_cast<std::int64_t>(std::lround(card.grammage));
  const auto pounds = static_cast<std::int64_t>(std::lround(coverPounds(card.grammage)));
  // A name that tells a weight tells it once.
  const auto named = [&card](const char* unit) {
    return card.name.find(unit) != std::string::npos;
  };
  Label words{"card-weight", {name, grams, pounds, card.caliper}, {}};
  if (named("g/m"))
    words = {"card-pounds", {name, pounds, card.caliper}, {}};
  else if (named(" lb"))
    words = {"card-grams", {name, grams, card.caliper}, {}};
  return labelText(words, Unit::Millimetre).toStdString();
}

std::vector<std::string> panelNames(const Net& net) {
  std::vector<std::string> names;
  if (net.panels.size() < 2) return names;
  for (const Panel& panel : net.panels) names.push_back(panelTitle(panel.id).toStdString());
  return names;
}

bool isStamped(const BuiltPiece& piece) {
  return piece.role && piece.role->layer && piece.role->layer->stamped;
}

TemplateText templateText(const BuiltDesign& design, const TemplateOptions& options) {
  TemplateText out;
  QString title = designTitle(design);
  if (!options.taker.isEmpty()) title = options.taker + QStringLiteral(" · ") + title;
  out.title = title.toStdString();
  out.readings =
      labelText({options.unit == Unit::Inch ? "readings-in" : "readings-mm", {}, {}}, options.unit)
          .toStdString();
  if (options.date.isValid())
    out.date = QLocale().toString(options.date, QLocale::ShortFormat).toStdString();
  out.corrected = correctionWords(options.setup.correction).toStdString();
  out.unit = options.unit;
  if (design.style == nullptr) return out;
  for (const ParameterSpec& spec : design.style->parameters) {
    out.measures.emplace_back(parameterTitle(spec).toStdString(),
                              parameterValue(spec, design.design.parameters, options.unit));
  }
  return out;
}

}  // namespace

QString correctionWords(const PrintCorrection& correction) {
  if (correction == PrintCorrection{}) return {};
  const auto percent = [](double factor) {
    const double share = (factor - 1) * 100;
    const QString digits = QLocale().toString(std::abs(share), 'f', 2);
    return (share < 0 ? QChar(0x2212) : QChar('+')) + digits + QStringLiteral(" %");
  };
  return labelText(
      {"corrected",
       {percent(correction.across).toStdString(), percent(correction.down).toStdString()},
       {}},
      Unit::Millimetre);
}

Result<std::vector<Drawing>> templatePages(const BuiltDesign& design,
                                           const TemplateOptions& options) {
  std::vector<TemplatePiece> pieces;
  const bool coloured = options.kind == TemplateKind::Coloured;
  for (const BuiltPiece& built : design.pieces) {
    if (options.piece.isEmpty() || text(built.name) == options.piece) {
      pieces.push_back({pieceTitle(built.name).toStdString(), &built.net, &built.flat,
                        &built.scorePlan, &built.gluePlan, cardWords(built.card),
                        built.role.has_value(), built.count, panelNames(built.net),
                        &built.card.colours, paperUp(design, built), isStamped(built),
                        coloured ? palePrint(design, built) : std::vector<PathItem>()});
    }
  }
  return drawTemplate(pieces, options.setup, templateText(design, options), wordingIn(options.unit),
                      options.kind, options.printed);
}

}  // namespace creasewright
