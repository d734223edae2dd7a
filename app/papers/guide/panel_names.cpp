#include "papers/guide/panel_names.h"

#include <QStringList>
#include <algorithm>

#include "bridge/style_text.h"
#include "guide/panel_groups.h"
#include "net/whole_panels.h"
#include "papers/guide/guide_words.h"

namespace creasewright {

QString PanelNames::of(int panel) const {
  const int whole = wholePanels(piece_.net).at(static_cast<std::size_t>(panel));
  const auto letter = std::ranges::find(letters_, whole, &PanelLetter::panel);
  if (letter != letters_.end()) return QChar::fromLatin1(letter->letter);
  return panelTitle(piece_.net.panels.at(static_cast<std::size_t>(panel)).id);
}

QString PanelNames::list(const std::vector<int>& panels) const {
  QStringList names;
  for (const PanelGroup& group : panelGroups(piece_.net, panels)) {
    const QString name =
        group.kind.empty() ? GuideTr::tr("“%1”", "name of a panel").arg(of(group.panels.front()))
                           : GuideTr::tr("“%1” (all %n)", "", static_cast<int>(group.panels.size()))
                                 .arg(panelTitle(group.kind));
    if (!names.contains(name)) names.append(name);
  }
  return names.join(QStringLiteral(", "));
}

}  // namespace creasewright
