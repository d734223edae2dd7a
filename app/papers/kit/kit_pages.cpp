#include "papers/kit/kit_pages.h"

#include <algorithm>
#include <limits>

#include "bridge/label_text.h"
#include "bridge/text.h"
#include "kits/layout_drawing.h"
#include "output/page_flow.h"
#include "pages/figure_room.h"
#include "papers/kit/bag_labels.h"
#include "papers/kit/kit_words.h"

namespace creasewright {

namespace {

/// Of a layout's picture, where its blanks are large, and where its letters would be small.
constexpr FigureRoom kLayoutPicture{88, 105};
constexpr FigureRoom kSmallLayoutPicture{68, 68};
constexpr FigureRoom kLargeLayoutPicture{112, 150};
const QString kDot = QStringLiteral("•");

Drawing headBlock(const KitPlan& plan, double width) {
  TextBlock block(width);
  block.add(kitTitle(plan.kit()), kTitleStyle);
  block.space(2);
  block.add(peopleSentence(plan.kit()), kBodyType * 1.1);
  block.add(sheetsSentence(plan), kBodyType * 1.1);
  if (plan.findings && plan.findings->oneMore)
    block.add(oneMoreSentence(*plan.findings->oneMore), kBodyType * 1.1);
  return block.take();
}

Drawing listBlock(const QString& heading, const QStringList& lines, double width) {
  TextBlock block(width);
  block.add(heading, kHeadingStyle);
  block.addList(lines, kDot, kBodyType);
  return block.take();
}

Drawing cautionBlock(const KitPlan& plan, double width) {
  TextBlock block(width);
  block.add(KitTr::tr("Take care"), kHeadingStyle);
  QStringList cautions{
      KitTr::tr("Trimmer blades cut: keep fingers behind the guard, lock the blade "
                "after use, and let adults cut for children. Follow local rules.")};
  if (needsKnife(plan)) {
    cautions.append(
        KitTr::tr("What is narrower than %1 is cut with a knife, not at the trimmer: on "
                  "a mat, along a metal ruler, fingers behind its edge.")
            .arg(lengthText(kLeastStrip, Unit::Millimetre)));
  }
  block.addList(cautions, QStringLiteral("!"), kBodyType);
  return block.take();
}

/// A number as wide as the last one of its list.
QString numberMark(int number, std::size_t last) {
  constexpr char16_t figureSpace = 0x2007;
  return QStringLiteral("%1").arg(number, QString::number(last).size(), 10, QChar(figureSpace));
}

/// The least side of a layout's blanks in a picture, mm.
double leastBlank(const Layout& layout, const FigureRoom& room) {
  const double scale = scaleInto(layout.sheet.width.mm(), layout.sheet.height.mm(), room);
  double least = std::numeric_limits<double>::infinity();
  eachNode(layout.sheet, [&](const CutNode& node) {
    if (node.kind == CutNode::Kind::Blank)
      least = std::min(least, std::min(node.width, node.height).mm() * scale);
  });
  return least;
}

FigureRoom pictureRoom(const Layout& layout) {
  constexpr double kSmall = 6;   // mm on the picture: a blank with less has little room for words
  constexpr double kLarge = 15;  // mm: has room enough
  if (leastBlank(layout, kSmallLayoutPicture) >= kLarge) return kSmallLayoutPicture;
  return leastBlank(layout, kLayoutPicture) < kSmall ? kLargeLayoutPicture : kLayoutPicture;
}

Drawing layoutBlock(int number, const Layout& layout, const CardPlan& card, Unit unit,
                    const PageFlow& flow) {
  const LayoutWords words = wordLayout(number, layout, card, unit);
  const FigureRoom room = pictureRoom(layout);
  const double width = flow.columnWidth() - room.width - kBlockGap;
  TextBlock block(width);
  block.add(words.title, kHeadingStyle);
  block.add(words.card, TypeStyle{kBodyType, true});
  block.space(1);
  block.addList(words.notes, QStringLiteral("!"), kBodyType);
  block.addList(words.blanks, kDot, kBodyType);
  block.space(1.5);
  for (const LayoutWords::Cut& cut : words.cuts)
    block.addList({cut.sentence}, numberMark(cut.number, words.cuts.size()), kBodyType);
  if (!words.offcuts.isEmpty()) {
    block.space(1.5);
    block.addList(words.offcuts, kDot, kBodyType);
  }
  Drawing text = block.take();
  if (text.height > flow.columnHeight() - 4)
    text = fittedInto(std::move(text), {text.width, flow.columnHeight() - 4});
  return ruledAbove(beside(drawLayout(layout, room.width, room.height, card.firstLetter(),
                                      wordingIn(unit), lookOf(card.card().colours)),
                           text, room.width + kBlockGap),
                    flow.columnWidth());
}

}  // namespace

std::vector<Drawing> kitPages(const KitPlan& plan, Unit unit, const Paper& paper) {
  PageFlow flow(paper);
  const double width = flow.columnWidth();
  flow.put(headBlock(plan, width));
  flow.put(listBlock(KitTr::tr("Shopping list"), shoppingLines(plan, unit), width));
  if (const QStringList costs = costLines(plan); !costs.isEmpty())
    flow.put(listBlock(KitTr::tr("Cost and price"), costs, width));
  flow.put(listBlock(KitTr::tr("In each bag"), packingLines(plan, unit), width));
  if (const QStringList over = leftOverLines(plan); !over.isEmpty())
    flow.put(listBlock(KitTr::tr("Left over, cut beyond what is needed"), over, width));
  flow.put(listBlock(KitTr::tr("For the teacher"), teacherLines(plan, unit), width));
  if (const QStringList uses = offcutLines(plan); !uses.isEmpty())
    flow.put(listBlock(KitTr::tr("What the offcuts could give, one or the other"), uses, width));
  flow.put(cautionBlock(plan, width));
  int number = 0;
  for (const CardPlan& card : plan.cards)
    for (const Layout& layout : card.layoutsIn(unit))
      flow.put(layoutBlock(++number, layout, card, unit, flow));
  std::vector<Drawing> pages = flow.take(kitTitle(plan.kit()));
  for (Drawing& page : bagLabels(plan, unit, paper)) pages.push_back(std::move(page));
  return pages;
}

}  // namespace creasewright
