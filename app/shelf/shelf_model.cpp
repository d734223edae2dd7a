#include "shelf/shelf_model.h"

#include <QFileInfo>
#include <QLocale>
#include <QPainter>
#include <algorithm>
#include <numeric>

#include "bridge/design_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "session/preferences.h"
#include "widgets/icon.h"

namespace creasewright {

namespace {

constexpr std::chrono::milliseconds kFirstPatience{150};  // what is read by then shows at once
constexpr std::chrono::milliseconds kLookEvery{60};

QString titleOf(const ShelfEntry& entry) {
  if (!entry.design) return QFileInfo(entry.path).completeBaseName();
  return entry.design->title.empty() ? styleTitle(*entry.design) : text(entry.design->title);
}

QString productOf(const Design& design) {
  return design.product ? text(productText(*design.product)) : QString();
}

/// The product's sizes to read: `60 × 40 × 25 mm`.
QString sizesOf(const Design& design) {
  QString sizes = productOf(design).section(QLatin1Char(':'), 1);
  sizes.replace(QLatin1Char('x'), QStringLiteral(" × "));
  for (const QString& unit : {QStringLiteral("mm"), QStringLiteral("in")})
    if (sizes.endsWith(unit)) sizes.insert(sizes.size() - unit.size(), QLatin1Char(' '));
  return sizes;
}

QString tagsOf(const Design& design) { return wordsOf(design).tags.join(QStringLiteral(", ")); }

}  // namespace

ShelfModel::ShelfModel(ShelfFolder folder, QObject* parent)
    : QAbstractListModel(parent), folder_(std::move(folder)) {
  timer_.setInterval(kLookEvery);
  connect(&timer_, &QTimer::timeout, this, [this] { take({}); });
  timer_.start();
  reload();
}

QString ShelfModel::searchTextOf(const ShelfEntry& entry) const {
  QStringList parts{titleOf(entry)};
  if (entry.design) {
    parts << styleTitle(*entry.design) << productOf(*entry.design) << tagsOf(*entry.design)
          << text(entry.design->notes);
  }
  return parts.join(QLatin1Char('\n')).toLower();
}

void ShelfModel::reload() {
  entries_ = folder_.files();
  unread_ = entries_.size();
  searched_.clear();
  std::vector<QString> paths;
  for (const ShelfEntry& entry : entries_) {
    searched_.push_back(searchTextOf(entry));
    paths.push_back(entry.path);
  }
  pictures_.clear();
  drawing_.clear();
  reader_.read(std::move(paths));
  filter();
  take(kFirstPatience);
}

bool ShelfModel::isReading(std::chrono::milliseconds patience) {
  take(patience);
  return unread_ > 0;
}

void ShelfModel::take(std::chrono::milliseconds patience) {
  auto fresh = reader_.takeEntries(patience);
  for (ShelfReader::Entry& each : fresh) {
    ShelfEntry& entry = entries_.at(each.number);
    entry.design = std::move(each.design);
    entry.read = true;
    searched_[each.number] = searchTextOf(entry);
    --unread_;
  }
  const bool sorted = order_ == Order::Title || order_ == Order::Style;
  if (!fresh.empty() && (sorted || !words_.isEmpty()))
    filter();
  else if (!fresh.empty())  // a chosen design stays chosen
    emit dataChanged(index(0), index(rowCount() - 1));
  const auto drawn = reader_.takePictures();
  for (const ShelfReader::Picture& picture : drawn)
    pictures_.insert(picture.path, QPixmap::fromImage(picture.image));
  if (!drawn.empty() && rowCount() > 0)
    emit dataChanged(index(0), index(rowCount() - 1), {Qt::DecorationRole});
}

void ShelfModel::setWords(const QString& words) {
  words_ = words.toLower();
  filter();
}

void ShelfModel::setOrder(Order order) {
  order_ = order;
  filter();
}

void ShelfModel::filter() {
  beginResetModel();
  shown_.clear();
  const QStringList words = words_.split(QLatin1Char(' '), Qt::SkipEmptyParts);
  for (std::size_t i = 0; i < entries_.size(); ++i)
    if (std::ranges::all_of(words, [&](const QString& w) { return searched_[i].contains(w); }))
      shown_.push_back(i);
  const auto byWords = [&](auto words_of) {
    std::ranges::stable_sort(shown_, [&](std::size_t a, std::size_t b) {
      return QString::localeAwareCompare(words_of(entries_[a]), words_of(entries_[b])) < 0;
    });
  };
  if (order_ == Order::Title)
    byWords(titleOf);
  else if (order_ == Order::Style)
    byWords([](const ShelfEntry& e) { return e.design ? styleTitle(*e.design) : QString(); });
  if (order_ == Order::LastUse) {
    std::ranges::stable_sort(
        shown_,
        [&](std::size_t a, std::size_t b) {
          return lastUse(entries_[a].path) > lastUse(entries_[b].path);
        });
  }
  endResetModel();
}

const ShelfEntry& ShelfModel::entry(const QModelIndex& index) const {
  return entries_.at(shown_.at(static_cast<std::size_t>(index.row())));
}

QString ShelfModel::title(const QModelIndex& index) const { return titleOf(entry(index)); }

int ShelfModel::unreadable() const {
  return static_cast<int>(std::ranges::count_if(
      shown_, [&](std::size_t i) { return entries_[i].read && !entries_[i].design; }));
}

std::vector<Design> ShelfModel::designs() const {
  std::vector<Design> all;
  for (const ShelfEntry& entry : entries_)
    if (entry.design) all.push_back(*entry.design);
  return all;
}

int ShelfModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

QPixmap ShelfModel::picture(const ShelfEntry& entry) const {
  const auto known = pictures_.constFind(entry.path);
  if (known != pictures_.constEnd()) return *known;
  QPixmap made(kPictureSize);
  made.fill(Qt::transparent);
  if (entry.design) {
    if (!drawing_.contains(entry.path)) {
      drawing_.insert(entry.path);
      reader_.draw(entry.path, *entry.design, kPictureSize);
    }
    return made;  // until it comes
  }
  if (!entry.read) return made;
  {
    QPainter painter(&made);
    constexpr int kSide = 48;
    const QPixmap sign = lineIcon(QStringLiteral("problem")).pixmap(kSide, kSide);
    painter.drawPixmap((made.width() - kSide) / 2, (made.height() - kSide) / 2, sign);
  }
  pictures_.insert(entry.path, made);
  return made;
}

QVariant ShelfModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid() || index.row() >= rowCount()) return {};
  const ShelfEntry& item = entry(index);
  switch (role) {
    case Qt::DisplayRole: {
      const QString second = item.design ? sizesOf(*item.design)
                             : item.read ? tr("cannot be read")
                                         : tr("being read…");
      return second.isEmpty() ? titleOf(item) : titleOf(item) + QLatin1Char('\n') + second;
    }
    case Qt::DecorationRole:
      return picture(item);
    case Qt::ToolTipRole:
    case Qt::AccessibleDescriptionRole: {
      if (!item.read) return tr("This file is still being read: %1").arg(item.path);
      if (!item.design) return tr("This file cannot be read: %1").arg(item.path);
      const QString product = productOf(*item.design);
      QStringList lines{product.isEmpty() ? styleTitle(*item.design)
                                          : tr("%1 for %2").arg(styleTitle(*item.design), product)};
      if (const QString tags = tagsOf(*item.design); !tags.isEmpty()) lines.append(tags);
      if (const QDateTime used = lastUse(item.path); used.isValid())
        lines.append(tr("Last used %1").arg(QLocale().toString(used.date(), QLocale::ShortFormat)));
      return lines.join(QLatin1Char('\n'));
    }
    case Qt::SizeHintRole:
      return QSize(kPictureSize.width() + 16, kPictureSize.height() + 50);
    default:
      return {};
  }
}

}  // namespace creasewright
