#include "gallery/gallery_filter.h"

#include "bridge/style_text.h"
#include "gallery/gallery_model.h"

namespace creasewright {

void GalleryFilter::setWish(const Wish& wish) {
  wish_ = wish;
  invalidateFilter();
}

void GalleryFilter::setWords(const QString& words) {
  words_ = words.trimmed();
  invalidateFilter();
}

bool GalleryFilter::filterAcceptsRow(int row, const QModelIndex&) const {
  const Suggestion& suggestion = static_cast<const GalleryModel*>(sourceModel())->at(row);
  const Style& style = *suggestion.style;
  const auto has = [this](const QString& where) {
    return where.contains(words_, Qt::CaseInsensitive);
  };
  return wish_.meets(suggestion) && (words_.isEmpty() || has(styleTitle(suggestion.built.design)) ||
                                     has(styleSummary(suggestion.built.design)) ||
                                     has(styleTitle(style)) || has(styleText(style.traits.suits)));
}

}  // namespace creasewright
