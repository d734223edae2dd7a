#include "papers/guide/refit_note.h"

#include <algorithm>

#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "document/design_units.h"
#include "extras/extra_kind.h"

namespace creasewright {

namespace {

GuideUnits ownUnits(const Design& design) {
  return measuresInInches(design) ? GuideUnits::Inch : GuideUnits::Millimetre;
}

QString gridWords(const Design& design) {
  if (design.grid.isNone()) return GuideTr::tr("none");
  return guideLength(design.grid.step(), ownUnits(design));
}

class NoteLines {
 public:
  NoteLines(const Design& before, const Design& now) : before_(before), now_(now) {}

  void add(const QString& name, const QString& was, const QString& is) {
    if (was != is) lines_.append(GuideTr::tr("%1: %2, before %3").arg(name, is, was));
  }
  void lengths(const std::vector<ParameterSpec>& specs, const Parameters& was, const Parameters& is,
               const QString& of = {}) {
    for (const ParameterSpec& spec : specs) {
      if (spec.kind != ParameterKind::Length) continue;
      const Length a = was.length(spec.key);
      const Length b = is.length(spec.key);
      if (a == b) continue;
      const QString title = parameterTitle(spec);
      add(of.isEmpty() ? title : QStringLiteral("%1, %2").arg(of, title),
          guideLength(a, ownUnits(before_)), guideLength(b, ownUnits(now_)));
    }
  }
  [[nodiscard]] QStringList take() { return std::move(lines_); }

 private:
  const Design& before_;
  const Design& now_;
  QStringList lines_;
};

void addSheets(const BuiltDesign& before, const BuiltDesign& now, NoteLines& lines) {
  const auto size = [](const BuiltPiece& piece, const Design& design) {
    return guideSize({Length::mm(piece.flat.width), Length::mm(piece.flat.height)},
                     ownUnits(design));
  };
  for (std::size_t i = 0; i < std::min(before.pieces.size(), now.pieces.size()); ++i) {
    const BuiltPiece& was = before.pieces[i];
    const BuiltPiece& is = now.pieces[i];
    if (was.name != is.name) continue;
    lines.add(GuideTr::tr("Sheet of the piece “%1”").arg(pieceTitle(is.name)),
              size(was, before.design), size(is, now.design));
    if (is.card != now.design.card || was.card != before.design.card)
      lines.add(GuideTr::tr("Card of the piece “%1”").arg(pieceTitle(is.name)), cardName(was.card),
                cardName(is.card));
  }
}

}  // namespace

GuideNote refitNote(const BuiltDesign& before, const BuiltDesign& now, Readers readers) {
  if (before.design == now.design) return {};
  NoteLines lines(before.design, now.design);
  lines.add(GuideTr::tr("Card"), cardName(before.design.card), cardName(now.design.card));
  lines.add(GuideTr::tr("Marks of rulers and boards"), gridWords(before.design),
            gridWords(now.design));
  if (now.style != nullptr)
    lines.lengths(now.style->parameters, before.design.parameters, now.design.parameters);
  for (std::size_t i = 0; i < now.design.extras.size(); ++i) {
    const Extra& was = before.design.extras[i];
    const Extra& is = now.design.extras[i];
    if (const Result<const ExtraKind*> kind = findExtraKind(is.kind))
      lines.lengths((*kind)->parameters, was.parameters, is.parameters, extraTitle(is.kind));
  }
  addSheets(before, now, lines);
  return {readers == Readers::Inch
              ? GuideTr::tr("Made anew for readers of inches: what is different")
              : GuideTr::tr("Made anew for readers of millimetres: what is different"),
          lines.take()};
}

Paper paperOf(Readers readers) { return *findPaper(readers == Readers::Inch ? "letter" : "a4"); }

GuideUnits unitsOf(Readers readers) {
  return readers == Readers::Inch ? GuideUnits::Inch : GuideUnits::Millimetre;
}

}  // namespace creasewright
