#include "bridge/style_text.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <cctype>
#include <optional>
#include <string>

#include "bridge/net_words.h"
#include "bridge/text.h"
#include "document/design.h"
#include "edits/kinds/edit_kind.h"
#include "extras/extra_kind.h"
#include "net/whole_panels.h"
#include "styles/registry.h"

namespace creasewright {

namespace {

QString translated(const char* context, std::string_view source) {
  return QCoreApplication::translate(context, std::string(source).c_str());
}

/// Words for a name, or for `name-2`: several of one kind are told apart by a number.
QString numbered(std::string_view name, std::optional<QString> (*words)(std::string_view)) {
  if (const auto whole = words(name)) return *whole;
  const std::size_t dash = name.rfind('-');
  const std::string_view number = dash == std::string_view::npos ? "" : name.substr(dash + 1);
  const bool digits = !number.empty() && std::ranges::all_of(number, [](unsigned char c) {
    return std::isdigit(c) != 0;
  });
  if (!digits) return text(name);
  return words(name.substr(0, dash)).value_or(text(name.substr(0, dash))) + QLatin1Char(' ') +
         text(number);
}

}  // namespace

QString styleText(std::string_view source) { return translated("styles", source); }
QString styleText(Worded text) { return translated(text.context(), text.source()); }
QString styleTitle(const Style& style) { return styleText(style.title); }
QString styleSummary(const Style& style) { return styleText(style.summary); }

QString styleTitle(const Design& design) {
  if (design.ownStyle) return text(design.ownStyle->title);
  const Result<const Style*> style = findStyle(design.styleId);
  return style ? styleTitle(**style) : text(design.styleId);
}

QString styleSummary(const Design& design) {
  if (design.ownStyle && !design.ownStyle->summary.empty()) return text(design.ownStyle->summary);
  const Result<const Style*> style = findStyle(design.styleId);
  return style ? styleSummary(**style) : QString();
}

QString parameterTitle(const ParameterSpec& spec) { return styleText(spec.title); }
QString parameterHint(const ParameterSpec& spec) {
  const QString hint = styleText(spec.hint);
  return spec.givesWay
             ? QCoreApplication::translate(
                   "styles", "%1 May give way a little so that the blank lies on the grid.")
                   .arg(hint)
             : hint;
}

QString extraTitle(std::string_view kind) {
  const Result<const ExtraKind*> known = findExtraKind(kind);
  return known ? styleText((*known)->title) : text(kind);
}

QString editTitle(std::string_view kind) {
  const Result<const EditKind*> known = findEditKind(kind);
  return known ? styleText((*known)->title) : text(kind);
}

QString faceTitle(std::string_view face) {
  const std::size_t colon = face.find(':');
  if (colon == std::string_view::npos) return text(face);
  const QString panel = panelTitle(face.substr(colon + 1));
  const QString piece = pieceTitle(face.substr(0, colon));
  if (panel == piece) return panel;  // of one panel: named once
  return QCoreApplication::translate("panels", "%1 (%2)", "face, piece").arg(panel, piece);
}

QString parameterTitle(std::string_view key) {
  for (const Style& style : styles()) {
    for (const ParameterSpec& spec : style.parameters)
      if (spec.key == key) return parameterTitle(spec);
  }
  for (const ExtraKind& kind : extraKinds()) {
    for (const ParameterSpec& spec : kind.parameters)
      if (spec.key == key) return parameterTitle(spec);
  }
  return text(key);
}

QString panelTitle(std::string_view id) {
  // The strips of a bent panel are told apart by a number after `#`; to the hand they are one.
  const QStringList parts = text(wholeId(id)).split(QLatin1Char('/'));
  const auto words = [](const QString& part) { return numbered(part.toStdString(), panelWords); };
  // The last two names tell a panel from all others of its net and stay short; a side of the first
  // panel needs only its own.
  static const QStringList sides{"front", "back", "left", "right", "top-lid", "bottom-lid"};
  if (parts.size() < 2 || (parts.size() == 2 && sides.contains(parts.back())))
    return words(parts.back());
  const QString& whose = parts[parts.size() - 2];
  if (const auto side = placeTitle(whose.toStdString())) {
    return QCoreApplication::translate("panels", "%1 %2", "side, part")
        .arg(*side, words(parts.back()));
  }
  return QCoreApplication::translate("panels", "%1 %2", "place, part")
      .arg(words(whose), words(parts.back()));
}

QString stageTitle(std::string_view code) { return stageWords(code).value_or(text(code)); }
QString pieceTitle(std::string_view name) { return numbered(name, pieceWords); }

}  // namespace creasewright
