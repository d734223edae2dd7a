#pragma once

#include <QByteArray>
#include <QString>
#include <span>

#include "bridge/paint_drawing.h"
#include "making/score_hand.h"
#include "units/paper.h"

namespace creasewright {

/// For eyes that read with ease, for those that want it clear, and large print (18 pt and more;
/// sizes after the practice of large-print publishers, common practice, no published source).
enum class GuideSize { Standard, Clear, Large };

/// How a hand-out is set, whatever it says.
struct GuideForm {
  GuideSize size = GuideSize::Standard;
  bool black = false;       ///< for printers without colours
  Hand hand = Hand::Right;  ///< hands, fence and reading edge; never the net or the print
};

/// As the command line and files name it: `standard`, `clear`, `large`.
struct GuideSizeName {
  QByteArray name;
  GuideSize size;
};
std::span<const GuideSizeName> guideSizes();

/// As the command line and files name it: `right`, `left`.
struct HandName {
  QByteArray name;
  Hand hand;
};
std::span<const HandName> handNames();

/// How much larger than standard everything is drawn.
double enlargement(GuideSize size);

/// The page that is filled, and enlarged to the paper when all is on it.
Paper smaller(Paper paper, double enlarged);

/// Type of a page that is then enlarged, mm.
struct GuideType {
  double step = 3.7;     ///< sentences: 10.5 pt as standard, 14 as clear, 18 as large print
  double detail = 2.9;   ///< what is looked up: 8.2, 12.1, 18 pt
  double title = 4.2;    ///< of a step: 11.9, 15.9, 22 pt
  double heading = 4.4;  ///< 12.5, 16.6, 22 pt
  double small = 3.0;    ///< cautions: 8.5, 12.1, 18 pt
  double lead = 1.24;    ///< line pitch by type size
};
GuideType typeOf(GuideSize size);

PaintLook lookOf(const GuideForm& form);

}  // namespace creasewright
