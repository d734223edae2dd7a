#include "papers/guide/guide_form.h"

#include <array>

namespace creasewright {

std::span<const GuideSizeName> guideSizes() {
  static const std::array sizes{GuideSizeName{"standard", GuideSize::Standard},
                                GuideSizeName{"clear", GuideSize::Clear},
                                GuideSizeName{"large", GuideSize::Large}};
  return sizes;
}

std::span<const HandName> handNames() {
  static const std::array names{HandName{"right", Hand::Right}, HandName{"left", Hand::Left}};
  return names;
}

double enlargement(GuideSize size) {
  constexpr double kStandard = 10.5;  // pt
  switch (size) {
    case GuideSize::Standard:
      return 1;
    case GuideSize::Clear:
      return 14 / kStandard;
    case GuideSize::Large:
      return 18 / kStandard;
  }
  return 1;
}

Paper smaller(Paper paper, double enlarged) {
  paper.width = Length::mm(paper.width.mm() / enlarged);
  paper.height = Length::mm(paper.height.mm() / enlarged);
  return paper;
}

GuideType typeOf(GuideSize size) {
  constexpr double kOpenLead = 1.28;
  GuideType type;
  switch (size) {
    case GuideSize::Standard:
      break;
    case GuideSize::Clear:
      type.detail = type.small = 3.2;
      type.lead = kOpenLead;
      break;
    case GuideSize::Large:
      type.detail = type.small = type.step;
      type.title = type.heading = type.step * 22 / 18;
      type.lead = kOpenLead;
      break;
  }
  return type;
}

PaintLook lookOf(const GuideForm& form) {
  constexpr double kEnhanced = 7;  // WCAG 2.1, 1.4.6
  return {enlargement(form.size), form.black, form.size == GuideSize::Large ? kEnhanced : 1};
}

}  // namespace creasewright
