#include <QSettings>

#include <gtest/gtest.h>

#include "commands/edits.h"
#include "extras/extra_kind.h"
#include "session/design_session.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

TEST(ToolGridChoice, MovesAllMeasuresInOneUndoStep) {
  DesignSession session;
  changeGrid(session, ToolGrid::millimetre());
  changeParameter(session, "frame", Length::mm(13).nm());
  std::vector<Extra> extras;
  extras.push_back(standardExtra(**findExtraKind("mats"), session.design().card));
  changeExtras(session, extras, QStringLiteral("mats"));
  const Design before = session.design();
  const int steps = session.history().count();
  changeGrid(session, ToolGrid::eighthInch());
  EXPECT_EQ(session.history().count(), steps + 1);
  const auto onGrid = [](const Parameters& parameters, const std::vector<ParameterSpec>& specs) {
    for (const ParameterSpec& spec : specs) {
      if (spec.kind == ParameterKind::Length) {
        EXPECT_TRUE(ToolGrid::eighthInch().holds(parameters.length(spec.key), {})) << spec.key;
      }
    }
  };
  onGrid(session.design().parameters, (**findStyle("framed-tray")).parameters);
  onGrid(session.design().extras[0].parameters, (**findExtraKind("mats")).parameters);
  EXPECT_TRUE(session.isCurrent());
  session.history().undo();
  EXPECT_EQ(session.design(), before);
}

/// The design's own grid says how it is shown, until the person chooses.
TEST(ToolGridChoice, UnitsFollowTheDesignUntilChosen) {
  QSettings().remove(QStringLiteral("unit"));
  DesignSession session;
  changeGrid(session, ToolGrid::eighthInch());
  EXPECT_EQ(session.unit(), Unit::Inch);
  changeGrid(session, ToolGrid::millimetre());
  EXPECT_EQ(session.unit(), Unit::Millimetre);
  session.setUnit(Unit::Inch);
  changeGrid(session, ToolGrid::eighthInch());
  changeGrid(session, ToolGrid::millimetre());
  EXPECT_EQ(session.unit(), Unit::Inch);
}

}  // namespace
}  // namespace creasewright
