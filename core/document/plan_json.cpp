#include "document/plan_json.h"

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
  for (const auto& openings : piece.flat.openings)
    for (const Polygon& opening : openings)
      plan.push_back({{"kind", "opening"}, {"outline", pointsJson(opening)}});
  for (const Segment& parting : piece.flat.partings)
    plan.push_back({{"kind", "slit"}, {"line", pointsJson({parting.a, parting.b})}});
  for (const Polyline& slit : piece.flat.slits)
    plan.push_back({{"kind", "slit"}, {"line", pointsJson(slit)}});
  return plan;
}

Json gluePlanJson(const BuiltPiece& piece) {
  const Net& net = piece.piece.net;
  Json plan = Json::array();
  for (const GlueArea& area : piece.gluePlan) {
    plan.push_back({{"panel", net.panels[static_cast<std::size_t>(area.panel)].id},
                    {"onto", net.panels[static_cast<std::size_t>(area.onto)].id},
                    {"face", faceText(area.face)},
                    {"flap_face", faceText(area.flapFace)},
                    {"area", pointsJson(area.area)}});
  }
  return plan;
}

}  // namespace creasewright
