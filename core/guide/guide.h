#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/colour.h"
#include "making/cut_plan.h"
#include "making/fold_plan.h"
#include "making/glue_tape.h"
#include "making/score_hand.h"
#include "making/score_plan.h"

namespace creasewright {

enum class SupplyKind { Card, Tape, LiquidGlue, Ribbon, FoamDots };

/// Something to have at hand. Card: `quantity` blanks of width x height; tape: `quantity` strips of
/// `width`, `length` in all; liquid glue: `quantity` spots; ribbon: `length` of `width`, bow
/// counted, and its `colour` where it has one; foam dots: `quantity` of the thickness `width`.
struct Supply {
  SupplyKind kind = SupplyKind::Card;
  int quantity = 1;
  int piece = -1;  ///< of Guide::pieces; -1 = for all
  Length width;
  Length height;
  Length length;
  int extra = -1;  ///< Ribbon: of Design::extras
};

enum class ToolCode {
  Trimmer,
  ScoringBoard,
  Stylus,
  BoneFolder,
  Knife,
  CuttingMat,
  SafetyRuler,
  Punch
};

/// Cautions of the trade, in the order in which a guide gives them, each once.
enum class CautionCode { Trimmer, Knife, HotGlue, FoodContact, SmallParts, Flames };

enum class StepCode {
  TrimBlank,       ///< cut `width` x `height` from the stock sheet; or all of `pieces`, nothing but
                   ///< rectangles, of which `piece` is the first
  ScoreSides,      ///< full scores: `settings`
  ShortScores,     ///< `settings` with runs that stop at the n-th line
  ScoreFreely,     ///< `freeScores`, by end points from the left and bottom side
  FoldAndBurnish,  ///< `folds`
  CutOpenings,     ///< `cuts`, and so for every Cut.. step
  CutSlits,
  CutWaste,  ///< the straight cuts; `waste` falls off
  CutMitres,
  CutTapers,
  CutNotches,
  CutCurves,
  ApplyAdhesive,  ///< `adhesive`
  FoldStage,      ///< `folds`, `joins`, `bends` of all its `stages`; its name is `stage`, the last
  GluePieces,     ///< `piece` is glued onto the last of `pieces`, both flat
  PutTogether,    ///< `pieces` of the design meet
  PutIn,          ///< the product goes in: `through` an open end or from its open side
  AddExtra        ///< `extra` goes with the box, its cut or folded `pieces` at hand
};

enum class FigureKind {
  Sheet,    ///< the flat blank with what is done so far
  Folded,   ///< in perspective, `progressFrom` .. `progress`, arrows on `folds` of the step
  Finished  ///< all pieces folded
};

/// What the picture of a step shows. The step's own settings, cuts, waste and adhesive are the
/// things to highlight; the flags say which of them are drawn.
struct FigureSpec {
  FigureKind kind = FigureKind::Sheet;
  bool settings = false;        ///< rulers with the readings at the sides used
  bool cuts = false;            ///< the step's cuts, repeats included, drawn strongly
  bool wasteHatched = false;    ///< the waste lettered and hatched
  bool wasteGone = false;       ///< draw only the card
  bool scoresDone = false;      ///< scored lines of earlier steps are drawn lightly
  bool adhesive = false;        ///< tape strips and spots
  bool arrows = false;          ///< from `progressFrom` to `progress`
  double progressFrom = 0;      ///< of foldedPose: the state before the step
  double progress = 0;          ///< the state the step ends in
  std::vector<int> panels;      ///< highlighted panels of the piece
  std::vector<Polygon> behind;  ///< adhesive that is already on the other face
  bool turned = false;          ///< the sheet lies with its other face up: drawn as it is seen then
  std::vector<Polygon> put;     ///< mats, labels or film as they lie on the sheet
  std::vector<Point3> way;      ///< of the product's middle into the piece, frame of panel 0, mm
  std::vector<int> without;     ///< of Design::extras: not yet there
  Hand hand = Hand::Right;      ///< readings, fence and numbers stand where it works
};

enum class CheckCode {
  SheetMeasures,  ///< the sheet measures `a` x `b`
  CutMeetsScore,  ///< the cut's end meets full score number `number`
  WasteCount,     ///< `number` lettered pieces have come off
  FlapFaceDown,   ///< flap `panel` lies against `onto`, on its `face`
  CreaseOnRim,    ///< the flap's crease lies along the edge of `onto`
  RimAllRound,    ///< `onto` of the other piece shows `a` x `b` at left and right, front and back
  FinishedSize    ///< outside `a` x `b` x `c`
};

struct CheckLine {
  CheckCode code = CheckCode::SheetMeasures;
  int number = 0;
  int panel = -1;
  int onto = -1;
  Face face = Face::Inside;
  Length a;
  Length b;
  Length c;
};

/// A flap that meets its target in a step.
struct Join {
  int mate = 0;  ///< index into the piece's Net::mates
  int panel = 0;
  int onto = 0;
  Face face = Face::Inside;
  Method method = Method::Glue;
};

/// One fold stage of the net as a step tells it.
struct ToldStage {
  std::string code;  ///< as Net::stages
  std::vector<Fold> folds;
  double from = 0;  ///< of foldedPose, before and after it
  double to = 0;
};

/// Adhesive on one flap.
struct Adhesive {
  int panel = 0;
  Face flapFace = Face::Inside;  ///< Outside: turn the sheet over
  bool patch = false;            ///< only a part of the panel is held
  Polygon area;                  ///< blank coordinates, mm
  Length width;                  ///< tape; zero = liquid glue
  Segment middle;
  int stage = 0;  ///< bare it just before this fold stage (1 = first)
};

/// One numbered step. Only the fields its code speaks of are filled. Panels, creases and mates are
/// indices into the piece's net; coordinates are those of the piece's blank, mm.
struct Step {
  StepCode code = StepCode::TrimBlank;
  int piece = 0;
  Length width;
  Length height;
  std::vector<ScoreSetup> settings;
  std::vector<FreeScore> freeScores;
  std::vector<Fold> folds;
  std::vector<Cut> cuts;
  std::vector<std::string> waste;
  std::vector<Adhesive> adhesive;
  std::string stage;
  std::vector<ToldStage> stages;
  std::vector<Join> joins;
  std::vector<BendCode> bends;
  std::vector<int> pieces;
  bool turn = false;      ///< the sheet is turned over before this step
  bool through = false;   ///< PutIn: slides in from either open end
  bool putIn = false;     ///< FoldStage: the product goes in before its last panels close
  bool onInsert = false;  ///< PutIn: the product stands in the opening of an insert
  int extra = -1;         ///< of Design::extras
  FigureSpec figure;
  std::vector<CheckLine> checks;
};

struct GuidePiece {
  std::string name;
  int count = 1;
  Length width;  ///< of its blank
  Length height;
  Length outsideLength;  ///< folded, along the product's axes; zero when the piece has no cavity
  Length outsideWidth;
  Length outsideHeight;
};

/// How a design is made, as values: whoever writes it words the codes.
struct Guide {
  std::string title;
  std::string styleId;
  Hand hand = Hand::Right;  ///< whose settings and order of cuts are told
  int level = 1;            ///< 1 a first lesson .. 3 for practised hands
  Length finishedLength;    ///< outside, the largest of the pieces
  Length finishedWidth;
  Length finishedHeight;
  std::vector<GuidePiece> pieces;
  std::vector<Supply> supplies;
  std::vector<ToolCode> tools;
  std::vector<CautionCode> cautions;
  std::vector<Step> steps;
};

}  // namespace creasewright
