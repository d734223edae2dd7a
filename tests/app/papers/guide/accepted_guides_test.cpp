#include <gtest/gtest.h>

#include "bridge/label_text.h"
#include "core/laws/random_design.h"
#include "drawing/svg_writer.h"
#include "papers/guide/guide_html.h"
#include "papers/guide/write_guide.h"
#include "support/accepted.h"

namespace creasewright {
namespace {

// Hand-outs of all styles, measurement cards and talk sheets, in the three sizes by turns, for both
// hands, and as HTML, as they were when somebody last looked at them.
TEST(AcceptedGuides, PagesAreAsBefore) {
  testing::Accepted accepted("guides");
  int number = 0;
  for (const Style& style : styles()) {
    const std::string id(style.id);
    const auto built = build(testing::withItsExtras(style));
    ASSERT_TRUE(built) << id;
    ++number;
    GuideChoices choices;
    choices.paper = *findPaper(number % 2 == 0 ? "a4" : "letter");
    choices.units = static_cast<GuideUnits>(number % 3);
    choices.form.size = static_cast<GuideSize>(number % 3);
    choices.form.hand = number % 5 == 0 ? Hand::Left : Hand::Right;
    for (const GuideKind kind : {GuideKind::Steps, GuideKind::Measures, GuideKind::Talk}) {
      choices.kind = kind;
      int page = 0;
      for (const Drawing& drawing : guideSheets(*built, choices))
        accepted.add(id + '-' + std::to_string(static_cast<int>(kind)) + '-' +
                         std::to_string(++page) + ".svg",
                     writeSvg(drawing, "page", wordingIn(Unit::Millimetre)));
    }
    accepted.add(id + ".html",
                 guideHtml(*built, choices.units, QStringLiteral("en")).toStdString());
  }
  accepted.expectAsBefore();
}

}  // namespace
}  // namespace creasewright
