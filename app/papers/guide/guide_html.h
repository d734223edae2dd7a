#pragma once

#include <QByteArray>

#include "papers/guide/guide_form.h"
#include "papers/guide/guide_words.h"

namespace creasewright {

/// The guide as one HTML 5 file that needs nothing else: figures are inline SVG, no script. UTF-8.
/// `language` is the code of the words' language, such as `en`.
QByteArray guideHtml(const BuiltDesign& built, GuideUnits units, const QString& language,
                     const GuideForm& form = {}, const GuideNote& note = {});

}  // namespace creasewright
