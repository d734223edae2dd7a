#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <array>
#include <vector>

#include "papers/guide/step_words.h"

namespace creasewright {

namespace {

struct JoinWords {
  Method method;
  Face face;
  const char* one;   ///< flap and target
  const char* many;  ///< a list of flaps and targets
};

constexpr std::array kJoins{
    JoinWords{Method::Glue, Face::Inside,
              QT_TRANSLATE_NOOP("guide", "Press “%1” onto the inside of “%2”."),
              QT_TRANSLATE_NOOP("guide", "Press each onto the inside of its panel: %1.")},
    JoinWords{Method::Glue, Face::Outside,
              QT_TRANSLATE_NOOP("guide", "Press “%1” onto the outside of “%2”."),
              QT_TRANSLATE_NOOP("guide", "Press each onto the outside of its panel: %1.")},
    JoinWords{Method::Tuck, Face::Inside, QT_TRANSLATE_NOOP("guide", "Tuck “%1” in behind “%2”."),
              QT_TRANSLATE_NOOP("guide", "Tuck each in behind its panel: %1.")},
    JoinWords{Method::Tuck, Face::Outside,
              QT_TRANSLATE_NOOP("guide", "Slide “%1” over the outside of “%2”."),
              QT_TRANSLATE_NOOP("guide", "Slide each over the outside of its panel: %1.")},
    JoinWords{Method::Lock, Face::Inside, QT_TRANSLATE_NOOP("guide", "Lock “%1” into “%2”."),
              QT_TRANSLATE_NOOP("guide", "Lock each into its panel: %1.")},
    JoinWords{Method::Lock, Face::Outside, QT_TRANSLATE_NOOP("guide", "Lock “%1” into “%2”."),
              QT_TRANSLATE_NOOP("guide", "Lock each into its panel: %1.")},
    JoinWords{Method::Rest, Face::Inside,
              QT_TRANSLATE_NOOP("guide", "“%1” comes to lie inside “%2”."),
              QT_TRANSLATE_NOOP("guide", "Each comes to lie inside its panel: %1.")},
    JoinWords{Method::Rest, Face::Outside,
              QT_TRANSLATE_NOOP("guide", "“%1” comes to lie on the outside of “%2”."),
              QT_TRANSLATE_NOOP("guide", "Each comes to lie on the outside of its panel: %1.")},
};

/// Flaps by their target, in the order of the plan.
using ByTarget = std::vector<std::pair<int, std::vector<int>>>;

bool isOf(const Join& join, const JoinWords& words) {
  return join.method == words.method && join.face == words.face;
}

ByTarget byTarget(const std::vector<Join>& joins, const JoinWords& words) {
  ByTarget groups;
  for (const Join& join : joins) {
    if (!isOf(join, words)) continue;
    auto group = std::ranges::find(groups, join.onto, &ByTarget::value_type::first);
    if (group == groups.end()) group = groups.insert(groups.end(), {join.onto, {}});
    group->second.push_back(join.panel);
  }
  return groups;
}

/// Those the step has, in the order of its joins.
std::vector<JoinWords> kindsOf(const std::vector<Join>& joins) {
  std::vector<JoinWords> kinds;
  for (const Join& join : joins) {
    const auto same = [&join](const JoinWords& words) { return isOf(join, words); };
    if (std::ranges::none_of(kinds, same)) kinds.push_back(*std::ranges::find_if(kJoins, same));
  }
  return kinds;
}

}  // namespace

void addJoinWords(const Step& step, const PanelNames& names, QStringList& words) {
  for (const JoinWords& kind : kindsOf(step.joins)) {
    const ByTarget groups = byTarget(step.joins, kind);
    if (groups.size() == 1 && groups.front().second.size() == 1) {
      words.append(
          QCoreApplication::translate("guide", kind.one)
              .arg(names.of(groups.front().second.front()), names.of(groups.front().first)));
      continue;
    }
    QStringList pairs;
    for (const auto& [target, flaps] : groups) {
      pairs.append(
          GuideTr::tr("%1 → “%2”", "flaps, target").arg(names.list(flaps), names.of(target)));
    }
    words.append(
        QCoreApplication::translate("guide", kind.many).arg(pairs.join(QStringLiteral("; "))));
  }
}

}  // namespace creasewright
