#include "papers/template/template_print.h"

#include <QLocale>

#include "bridge/design_words.h"
#include "bridge/label_text.h"
#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
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

std::string cardWords(const Card& card) {
  return labelText({"card",
                    {card.name.empty() ? card.id : cardName(card).toStdString(), card.caliper},
                    {}},
                   Unit::Millimetre)
      .toStdString();
}

TemplateText templateText(const BuiltDesign& design, const TemplateOptions& options) {
  TemplateText out;
  out.title = designTitle(design).toStdString();
  if (options.date.isValid())
    out.date = QLocale().toString(options.date, QLocale::ShortFormat).toStdString();
  if (design.style == nullptr) return out;
  for (const ParameterSpec& spec : design.style->parameters) {
    out.measures.emplace_back(parameterTitle(spec).toStdString(),
                              parameterValue(spec, design.design.parameters, options.unit));
  }
  return out;
}

}  // namespace

Result<std::vector<Drawing>> templatePages(const BuiltDesign& design,
                                           const TemplateOptions& options) {
  std::vector<TemplatePiece> pieces;
  for (const BuiltPiece& built : design.pieces) {
    if (options.piece.isEmpty() || text(built.name) == options.piece) {
      pieces.push_back({pieceTitle(built.name).toStdString(), &built.net, &built.flat,
                        &built.scorePlan, &built.gluePlan, cardWords(built.card),
                        built.role.has_value(), built.count});
    }
  }
  return drawTemplate(pieces, options.setup, templateText(design, options),
                      wordingIn(options.unit));
}

}  // namespace creasewright
