#include "document/plan_json.h"

#include "making/cut_plan.h"
#include "making/glue_tape.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

std::string_view sideText(SheetSide side) {
  switch (side) {
    case SheetSide::Left:
      return "left";
    case SheetSide::Right:
      return "right";
    case SheetSide::Bottom:
      return "bottom";
    case SheetSide::Top:
      return "top";
  }
  return "";
}

std::string_view foldText(bool valley) { return valley ? "valley" : "mountain"; }

/// Fractions without a unit for grids in parts of an inch, else millimetres.
std::string readingText(Length at, ToolGrid grid) {
  LengthFormat format;
  if (!grid.isNone() && Length::inches(1).nm() % grid.step().nm() == 0) {
    format.unit = Unit::Inch;
    format.withUnit = false;
  }
  return formatLength(at, format);
}

Json readingJson(const ScoreReading& reading, SheetSide from, ToolGrid grid) {
  Json json{{"at_mm", numberJson(reading.at.mm())}, {"text", readingText(reading.at, grid)}};
  const bool isShort = reading.run == ScoreRun::Short;
  json["run"] = isShort ? "short" : "full";
  if (isShort) {
    json["from"] = sideText(from);
    json["measured_from"] = sideText(reading.measuredFrom);
    json["to_mm"] = numberJson(reading.to.mm());
    json["to_line"] = reading.toLine;
  }
  const bool folds = reading.purpose == ScorePurpose::Fold;
  json["for"] = folds ? "score" : "cut";
  if (folds) json["fold"] = foldText(reading.valley);
  return json;
}

Json setupJson(const ScoreSetup& setup, ToolGrid grid) {
  Json sides = Json::array();
  for (const SheetSide side : setup.sides) sides.push_back(sideText(side));
  Json readings = Json::array();
  for (const ScoreReading& reading : setup.readings)
    readings.push_back(readingJson(reading, setup.sides.front(), grid));
  return {{"sides", std::move(sides)}, {"readings", std::move(readings)}};
}

std::string_view cutText(CutKind kind) {
  switch (kind) {
    case CutKind::Opening:
      return "opening";
    case CutKind::Slit:
      return "slit";
    case CutKind::Straight:
      return "straight";
    case CutKind::Mitre:
      return "mitre";
    case CutKind::Taper:
      return "taper";
    case CutKind::Notch:
      return "notch";
    case CutKind::Curve:
      return "curve";
  }
  return "";
}

std::string_view repeatText(CutRepeat repeat) {
  switch (repeat) {
    case CutRepeat::LeftRight:
      return "left-right";
    case CutRepeat::BottomTop:
      return "bottom-top";
    case CutRepeat::HalfTurn:
      return "half-turn";
  }
  return "";
}

Json strokeJson(const Cut& cut) {
  Json repeats = Json::array();
  for (const CutRepeat repeat : cut.repeats) repeats.push_back(repeatText(repeat));
  Json json{{"kind", "cut"},
            {"what", cutText(cut.kind)},
            {"line", pointsJson(cut.line)},
            {"repeats", std::move(repeats)}};
  if (cut.fromEdge) json["from"] = sideText(cut.edge);
  if (cut.toLine > 0) json["to_line"] = cut.toLine;
  if (cut.alongScore) json["along_score"] = true;
  return json;
}

/// An opening by its outline, a slit by its line.
Json holeJson(CutKind kind, Polyline line) {
  if (kind == CutKind::Slit) return {{"kind", "slit"}, {"line", pointsJson(line)}};
  line.pop_back();  // closed: the first point repeated
  return {{"kind", "opening"}, {"outline", pointsJson(line)}};
}

const std::string& panelId(const Net& net, int panel) {
  return net.panels[static_cast<std::size_t>(panel)].id;
}

Json foldJson(const Net& net, const Fold& fold) {
  return {{"a", panelId(net, fold.parent)},
          {"b", panelId(net, fold.child)},
          {"p", pointJson(fold.line.a)},
          {"q", pointJson(fold.line.b)},
          {"angle_deg", numberJson(fold.angle.degrees())},
          {"fold", foldText(fold.valley)}};
}

}  // namespace

Json scorePlanJson(const ScorePlan& plan, ToolGrid grid) {
  Json setups = Json::array();
  for (const ScoreSetup& setup : plan.setups) setups.push_back(setupJson(setup, grid));
  Json lines = Json::array();
  for (const FreeScore& score : plan.freeScores)
    lines.push_back({{"p", pointJson(score.line.a)},
                     {"q", pointJson(score.line.b)},
                     {"fold", foldText(score.valley)}});
  return {{"setups", std::move(setups)}, {"lines", std::move(lines)}};
}

Json cutPlanJson(const BuiltPiece& piece) {
  Json plan = Json::array();
  plan.push_back({{"kind", "trim"},
                  {"width_mm", numberJson(piece.flat.width)},
                  {"height_mm", numberJson(piece.flat.height)}});
  for (const WastePiece& waste : piece.waste)
    plan.push_back(
        {{"kind", "remove"}, {"letter", waste.letter}, {"outline", pointsJson(waste.area.outer)}});
  for (const Cut& cut : planCuts(piece.net, piece.flat, piece.waste).cuts) {
    if (cut.kind != CutKind::Opening && cut.kind != CutKind::Slit) {
      plan.push_back(strokeJson(cut));
      continue;
    }
    plan.push_back(holeJson(cut.kind, cut.line));
    for (const CutRepeat repeat : cut.repeats)
      plan.push_back(
          holeJson(cut.kind, repeated(cut.line, repeat, piece.flat.width, piece.flat.height)));
  }
  return plan;
}

Json gluePlanJson(const BuiltPiece& piece, ToolGrid grid) {
  const Net& net = piece.net;
  const AdhesivePlan adhesive = planAdhesive(net, piece.gluePlan, foldPlan(piece), grid);
  Json plan = Json::array();
  for (const GlueArea& area : piece.gluePlan) {
    Json place{{"panel", panelId(net, area.panel)},
               {"onto", area.onto < 0 ? area.pieceOnto : panelId(net, area.onto)},
               {"face", faceText(area.face)},
               {"flap_face", faceText(area.flapFace)},
               {"area", pointsJson(area.area)}};
    if (area.onto < 0) place["piece"] = area.piece;
    plan.push_back(std::move(place));
  }
  for (const GlueStrip& strip : adhesive.strips) {
    Json& place = plan[static_cast<std::size_t>(strip.area)];
    if (!strip.liquid()) place["tape_mm"] = numberJson(strip.width.mm());
    place["line"] = pointsJson({strip.middle.a, strip.middle.b});
    place["stage"] = strip.stage;
  }
  return plan;
}

Json foldPlanJson(const BuiltPiece& piece) {
  const Net& net = piece.net;
  const FoldPlan& folds = foldPlan(piece);
  Json burnish = Json::array();
  for (const Fold& fold : folds.burnish) burnish.push_back(foldJson(net, fold));
  Json stages = Json::array();
  for (const FoldStage& stage : folds.stages) {
    Json moves = Json::array();
    for (const Fold& fold : stage.folds) moves.push_back(foldJson(net, fold));
    Json joins = Json::array();
    for (const int index : stage.mates) {
      const Mate& mate = net.mates[static_cast<std::size_t>(index)];
      joins.push_back({{"panel", panelId(net, mate.panel)},
                       {"onto", panelId(net, mate.onto)},
                       {"method", methodText(mate.method)}});
    }
    Json bends = Json::array();
    for (const BendCode code : stage.bends) bends.push_back(bendName(code));
    stages.push_back({{"stage", stage.code},
                      {"folds", std::move(moves)},
                      {"joins", std::move(joins)},
                      {"bends", std::move(bends)}});
  }
  return {{"burnish", std::move(burnish)}, {"stages", std::move(stages)}};
}

}  // namespace creasewright
