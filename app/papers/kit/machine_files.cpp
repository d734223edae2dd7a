#include "papers/kit/machine_files.h"

#include "bridge/label_text.h"
#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "drawing/svg_writer.h"
#include "kits/machine_layouts.h"
#include "output/page_flow.h"
#include "output/pdf_export.h"
#include "output/write_folder.h"
#include "pages/figure_room.h"
#include "papers/kit/kit_words.h"

namespace creasewright {

namespace {

constexpr FigureRoom kCarrierPicture{80, 80};

QString carrierTitle(const MachineCard& plan, std::size_t layout) {
  return KitTr::tr("%1, carrier %2: cut %n sheet(s)", "", plan.layouts[layout].count)
      .arg(cardName(plan.card))
      .arg(layout + 1);
}

/// What the files of each card begin with: its id, colours and pattern; cards that are called alike
/// are numbered.
std::vector<QString> fileStarts(const MachinePlan& plan) {
  std::set<QString> taken;
  std::vector<QString> starts;
  for (const MachineCard& each : plan.cards) {
    const Card& card = each.card;
    QString start = text(card.id.empty() ? card.name : card.id);
    if (card.colours.face || card.colours.back)
      start += QLatin1Char('-') + text(cardColourText(card.colours));
    if (card.colours.pattern) start += QLatin1Char('-') + text(card.colours.pattern->id);
    start.replace(QLatin1Char('/'), QLatin1Char('-'));
    start.remove(QLatin1Char('#'));
    starts.push_back(freeNamePart(start, taken));
  }
  return starts;
}

QString carrierFile(const QString& start, const MachineCard& plan, std::size_t layout) {
  return QStringLiteral("%1-carrier-%2-x%3.svg")
      .arg(start)
      .arg(layout + 1)
      .arg(plan.layouts[layout].count);
}

/// How many of each part lie on a carrier.
QStringList partLines(const MachineCard& plan, const MatLayout& layout) {
  std::vector<int> counts(plan.parts.size());
  for (const NestedPart& part : layout.parts) ++counts[static_cast<std::size_t>(part.part)];
  QStringList lines;
  for (std::size_t p = 0; p < counts.size(); ++p)
    if (counts[p] > 0)
      lines.append(QStringLiteral("%1 × %2").arg(counts[p]).arg(pieceTitle(plan.parts[p].name)));
  return lines;
}

Drawing carrierBlock(const MachineCard& plan, std::size_t layout, const QString& file,
                     double width) {
  TextBlock block(width - kCarrierPicture.width - kBlockGap);
  block.add(carrierTitle(plan, layout), kHeadingStyle);
  block.space(1);
  block.addList(partLines(plan, plan.layouts[layout]), QStringLiteral("•"), kBodyType);
  block.space(1);
  block.add(file, kBodyType);
  Drawing carrier = plan.drawings[layout];
  carrier.texts.clear();  // too small to read here
  carrier.paths.push_back(
      {.role = Role::Positions,
       .rings =
           {{{0, 0}, {carrier.width, 0}, {carrier.width, carrier.height}, {0, carrier.height}}},
       .closed = true});
  return ruledAbove(beside(fittedInto(std::move(carrier), kCarrierPicture), block.take(),
                           kCarrierPicture.width + kBlockGap),
                    width);
}

}  // namespace

std::vector<Drawing> machinePages(const MachinePlan& plan, const MachineChoices& choices) {
  const ClassKit& kit = plan.built->kit;
  PageFlow flow(choices.paper);
  const double width = flow.columnWidth();
  TextBlock head(width);
  head.add(kitTitle(kit), kTitleStyle);
  head.space(2);
  head.add(peopleSentence(kit), kBodyType * 1.1);
  head.add(
      KitTr::tr("Carrier sheets of %1 × %2. Test-cut one net of each card before the class; keep "
                "hands off a running machine and follow its maker’s safety notes.")
          .arg(lengthText(choices.width, choices.unit, false),
               lengthText(choices.height, choices.unit)),
      kBodyType);
  for (const MachineCard& card : plan.cards) {
    head.add(KitTr::tr("%1: %n carrier sheet(s); by their area the parts take at least %2.", "",
                       card.mats)
                 .arg(cardName(card.card))
                 .arg(card.least),
             kBodyType);
  }
  flow.put(head.take());
  const std::vector<QString> starts = fileStarts(plan);
  for (std::size_t c = 0; c < plan.cards.size(); ++c) {
    const MachineCard& card = plan.cards[c];
    for (std::size_t i = 0; i < card.layouts.size(); ++i)
      flow.put(carrierBlock(card, i, carrierFile(starts[c], card, i), width));
  }
  return flow.take(kitTitle(kit));
}

std::optional<Problem> writeMachineFolder(const BuiltKit& kit, const QString& folder,
                                          const MachineChoices& choices) {
  const Result<MachinePlan> plan = planMachine(kit, choices.width, choices.height, choices.nesting);
  if (!plan) return plan.problem();
  FolderFiles files;
  const std::vector<QString> starts = fileStarts(*plan);
  for (std::size_t c = 0; c < plan->cards.size(); ++c) {
    const MachineCard& card = plan->cards[c];
    for (std::size_t i = 0; i < card.layouts.size(); ++i) {
      const QByteArray svg = QByteArray::fromStdString(writeSvg(
          card.drawings[i], carrierTitle(card, i).toStdString(), wordingIn(Unit::Millimetre)));
      files.emplace_back(carrierFile(starts[c], card, i), svg);
    }
  }
  const Result<QByteArray> pdf = renderPdf(machinePages(*plan, choices), wordingIn(choices.unit),
                                           {kitTitle(kit.kit), choices.now});
  if (!pdf) return pdf.problem();
  files.emplace_back(QStringLiteral("carriers.pdf"), *pdf);
  return writeFolder(folder, files);
}

}  // namespace creasewright
