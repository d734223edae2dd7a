#include <gtest/gtest.h>

#include "bridge/label_text.h"
#include "core/laws/random_design.h"
#include "drawing/svg_writer.h"
#include "papers/template/template_print.h"
#include "support/accepted.h"

namespace creasewright {
namespace {

// Templates of all styles, every kind and on two papers, as they were when somebody last looked at
// them.
TEST(AcceptedTemplates, PagesAreAsBefore) {
  testing::Accepted accepted("templates");
  std::size_t number = 0;
  for (const Style& style : styles()) {
    const auto built = build(testing::withItsExtras(style));
    ASSERT_TRUE(built) << style.id;
    for (const TemplateKind kind :
         {TemplateKind::CutAndScore, TemplateKind::Tracing, TemplateKind::Mirrored,
          TemplateKind::InkSaving, TemplateKind::ScoreStrips}) {
      TemplateOptions options;
      options.setup.paper = *findPaper(++number % 2 == 0 ? "a4" : "letter");
      options.unit = number % 3 == 0 ? Unit::Inch : Unit::Millimetre;
      options.kind = kind;
      const auto pages = templatePages(*built, options);
      ASSERT_TRUE(pages) << style.id;
      int page = 0;
      for (const Drawing& drawing : *pages)
        accepted.add(std::string(style.id) + '-' + std::to_string(static_cast<int>(kind)) + '-' +
                         std::to_string(++page) + ".svg",
                     writeSvg(drawing, "page", wordingIn(options.unit)));
    }
  }
  const auto built = build(testing::asItComes(styles().front()));
  for (const Paper& paper : papers()) {
    TemplateOptions calibration;
    calibration.kind = TemplateKind::Calibration;
    calibration.setup.paper = paper;
    calibration.unit = ++number % 2 == 0 ? Unit::Inch : Unit::Millimetre;
    const auto pages = templatePages(*built, calibration);
    ASSERT_TRUE(pages) << paper.id;
    for (const Drawing& drawing : *pages)
      accepted.add("calibration-" + std::string(paper.id) + ".svg",
                   writeSvg(drawing, "page", wordingIn(calibration.unit)));
  }
  accepted.expectAsBefore();
}

}  // namespace
}  // namespace creasewright
