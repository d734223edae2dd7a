#include "stock/card_box.h"

#include <QEvent>
#include <algorithm>

#include "bridge/text.h"
#include "kits/own_cards.h"
#include "stock/stock_store.h"

namespace creasewright {

namespace {

constexpr int fewestLetters = 12;

}  // namespace

CardBox::CardBox(QWidget* parent) : QComboBox(parent) {
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  setMinimumContentsLength(fewestLetters);
  connect(this, &QComboBox::activated, this, [this](int row) {
    if (row >= 0 && row < static_cast<int>(listed_.size())) {
      const Card picked = listed_[static_cast<std::size_t>(row)];
      emit cardPicked(picked);
    }
  });
  readOwn();
}

void CardBox::offer(const Card& card) {
  offered_.push_back(card);
  fill();
}

void CardBox::setCard(const Card& card, const QString& unlisted) {
  if (shown_ == card && unlisted_ == unlisted) {
    return;
  }
  shown_ = card;
  unlisted_ = unlisted;
  fill();
}

void CardBox::changeEvent(QEvent* event) {
  QComboBox::changeEvent(event);
  if (event->type() == QEvent::ActivationChange && isActiveWindow()) {
    readOwn();
  }
}

void CardBox::readOwn() {
  std::vector<Card> own = ownCards(ownStock());
  if (own != own_ || listed_.empty()) {
    own_ = std::move(own);
    fill();
  }
}

/// A card without an id, or changed since it was chosen, is on no list.
void CardBox::fill() {
  listed_.assign(cards().begin(), cards().end());
  for (const std::vector<Card>& more : {own_, offered_}) {
    listed_.insert(listed_.end(), more.begin(), more.end());
  }
  clear();
  for (const Card& card : listed_) {
    addItem(text(card.name), text(card.id));
  }
  const auto found = std::ranges::find(listed_, shown_.id, &Card::id);
  const bool known = found != listed_.end() && !shown_.id.empty();
  if (!known && !unlisted_.isEmpty()) {
    addItem(unlisted_, QString());
  }
  setCurrentIndex(known ? static_cast<int>(found - listed_.begin()) : count() - 1);
}

}  // namespace creasewright
