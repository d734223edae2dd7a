#include "bridge/design_words.h"

#include "bridge/style_text.h"
#include "bridge/text.h"

namespace creasewright {

DesignWords wordsOf(const Design& design) {
  DesignWords words{text(design.title), {}, text(design.notes)};
  for (const std::string& tag : design.tags) words.tags.append(text(tag));
  return words;
}

QString designTitle(const BuiltDesign& built) {
  const QString title = text(built.design.title).trimmed();
  return title.isEmpty() && built.style != nullptr ? styleTitle(built.design) : title;
}

Design withWords(Design design, const DesignWords& words) {
  design.title = words.title.trimmed().toStdString();
  design.notes = words.notes.trimmed().toStdString();
  design.tags.clear();
  for (const QString& tag : words.tags)
    if (!tag.trimmed().isEmpty()) design.tags.push_back(tag.trimmed().toStdString());
  return design;
}

}  // namespace creasewright
