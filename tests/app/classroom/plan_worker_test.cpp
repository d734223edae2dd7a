#include "classroom/plan_worker.h"

#include <QTest>

#include <gtest/gtest.h>

#include "core/kits/plan_of.h"

namespace creasewright {
namespace {

ClassKit kitFor(int takers) {
  ClassKit kit;
  kit.takers = takers;
  kit.stock = {{"12 x 12 in", Length::inches(12), Length::inches(12), 0}};
  kit.items.push_back({*newDesign("two-piece-box", *parseProduct("box:60x35x50mm"), cards()[0],
                                  Ease::Easy, ToolGrid::millimetre()),
                       1});
  return kit;
}

TEST(PlanWorker, SendsThePlanOfTheLastStart) {
  PlanWorker worker;
  std::vector<PlanWorker::Plan> plans;
  QObject::connect(&worker, &PlanWorker::done,
                   [&](const PlanWorker::Plan& plan) { plans.push_back(plan); });
  worker.start(buildKit(kitFor(40)).value(), 5);
  worker.start(buildKit(kitFor(7)).value(), 5);
  ASSERT_TRUE(QTest::qWaitFor([&] { return !plans.empty(); }, 20'000));
  QTest::qWait(100);
  ASSERT_EQ(plans.size(), 1U);  // the first one was given up
  ASSERT_TRUE(plans[0]->ok());
  EXPECT_EQ((*plans[0])->sheets, testing::planOf(kitFor(7)).value().sheets);
  EXPECT_FALSE(worker.isRunning());
}

TEST(PlanWorker, TellsWhatOneMoreTakesAfterThePlan) {
  PlanWorker worker;
  bool planned = false;
  std::optional<int> more;
  QObject::connect(&worker, &PlanWorker::done, [&] { planned = true; });
  QObject::connect(&worker, &PlanWorker::found,
                   [&](const PlanWorker::Plan&, const PlanWorker::Plan& withFindings) {
                     EXPECT_TRUE(planned);
                     more = (*withFindings)->findings->oneMore->sheets;
                   });
  worker.start(buildKit(kitFor(7)).value(), 5);
  ASSERT_TRUE(QTest::qWaitFor([&] { return more.has_value(); }, 20'000));
  EXPECT_EQ(*more,
            testing::planOf(kitFor(8)).value().sheets - testing::planOf(kitFor(7)).value().sheets);
}

TEST(PlanWorker, StoppedItComesBackWithAPlan) {
  PlanWorker worker;
  PlanWorker::Plan plan;
  QObject::connect(&worker, &PlanWorker::done, [&](const PlanWorker::Plan& got) { plan = got; });
  ClassKit kit = kitFor(40);
  for (int i = 0; i < 12; ++i) {
    Design design = *newDesign("straight-tuck-box",
                               *parseProduct("box:" + std::to_string(31 + 7 * i) + "x23x" +
                                             std::to_string(40 + 3 * i) + "mm"),
                               cards()[0], Ease::Easy, ToolGrid::none());
    kit.items.push_back({design, 1});
  }
  worker.start(buildKit(kit).value(), 60);
  worker.stop();
  ASSERT_TRUE(QTest::qWaitFor([&] { return plan != nullptr; }, 40'000));
  ASSERT_TRUE(plan->ok());
  EXPECT_GT((*plan)->sheets, 0);
}

/// Whoever stops the search still gets all papers of the plan at hand.
TEST(PlanWorker, StoppedItStillTellsWhatIsFoundOut) {
  PlanWorker worker;
  PlanWorker::Plan more;
  QObject::connect(&worker, &PlanWorker::found,
                   [&](const PlanWorker::Plan&, const PlanWorker::Plan& found) { more = found; });
  worker.start(buildKit(kitFor(7)).value(), 60);
  worker.stop();
  ASSERT_TRUE(QTest::qWaitFor([&] { return more != nullptr; }, 20'000));
  EXPECT_TRUE((*more)->findings.has_value());
}

TEST(PlanWorker, AKnownPlanComesBackWhenNoneIsBetter) {
  KitPlan plan = testing::planOf(kitFor(7)).value();
  for (const std::int64_t less : {std::int64_t{1}, std::int64_t{-1}}) {
    KitPlan other = plan;
    other.cards[0].plan.cost -= less;
    const auto known = std::make_shared<const Result<KitPlan>>(other);
    PlanWorker worker;
    PlanWorker::Plan got;
    QObject::connect(&worker, &PlanWorker::done, [&](const PlanWorker::Plan& done) { got = done; });
    worker.start(*plan.built, 5, known);
    ASSERT_TRUE(QTest::qWaitFor([&] { return got != nullptr; }, 20'000));
    EXPECT_EQ(got == known, less > 0);
  }
}

/// A search that is stopped before its easy plan is made must not put the plan of fewest sheets in
/// the place of the easy one that is shown.
TEST(PlanWorker, AnEasyPlanStaysEasyWhenTheSearchIsStopped) {
  ClassKit kit = kitFor(7);
  kit.goal = PlanGoal::Easy;
  const auto known = std::make_shared<const Result<KitPlan>>(testing::planOf(kit));
  ASSERT_TRUE(known->ok() && (*known)->isEasy());
  PlanWorker worker;
  PlanWorker::Plan got;
  QObject::connect(&worker, &PlanWorker::done, [&](const PlanWorker::Plan& done) { got = done; });
  worker.start(buildKit(kit).value(), 60, known);
  worker.stop();
  ASSERT_TRUE(QTest::qWaitFor([&] { return got != nullptr; }, 40'000));
  ASSERT_TRUE(got->ok());
  EXPECT_TRUE((*got)->isEasy());
}

TEST(PlanWorker, NothingIsHeardOfWhatIsGivenUp) {
  PlanWorker worker;
  int heard = 0;
  QObject::connect(&worker, &PlanWorker::done, [&](const PlanWorker::Plan&) { ++heard; });
  worker.start(buildKit(kitFor(7)).value(), 5);
  worker.giveUp();
  EXPECT_FALSE(worker.isRunning());
  QTest::qWait(500);
  EXPECT_EQ(heard, 0);
}

TEST(PlanWorker, MayBeTakenAwayWhileItWorks) {
  int heard = 0;
  {
    PlanWorker worker;
    QObject::connect(&worker, &PlanWorker::done, [&](const PlanWorker::Plan&) { ++heard; });
    worker.start(buildKit(kitFor(40)).value(), 5);
  }
  QTest::qWait(50);
  EXPECT_EQ(heard, 0);
}

}  // namespace
}  // namespace creasewright
