#include "stockroom/card_box.h"

#include <QEvent>
#include <algorithm>

#include "bridge/stock_words.h"
#include "bridge/text.h"
#include "own_stock/stock_store.h"
#include "stock/own_cards.h"

namespace creasewright {

namespace {

constexpr int kFewestLetters = 12;

/// The row of a card that is listed in its colours, or under its id, or that weighs and measures
/// the same.
std::size_t rowOf(const Card& card, const std::vector<Card>& listed) {
  auto found = std::ranges::find(listed, card);
  if (found == listed.end()) found = std::ranges::find(listed, card.id, &Card::id);
  if (card.id.empty() || found == listed.end()) {
    found = std::ranges::find_if(
        listed,
        [&card](const Card& other) {
          return card.grammage > 0 && other.grammage == card.grammage &&
                 other.caliper == card.caliper;
        });
  }
  return static_cast<std::size_t>(found - listed.begin());
}

}  // namespace

CardColours coloursOf(const Card& picked, const CardColours& now) {
  return picked.colours == CardColours() ? now : picked.colours;
}

CardBox::CardBox(QWidget* parent) : QComboBox(parent) {
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  setMinimumContentsLength(kFewestLetters);
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
  if (shown_ == card && unlisted_ == unlisted) return;
  shown_ = card;
  unlisted_ = unlisted;
  fill();
}

void CardBox::changeEvent(QEvent* event) {
  QComboBox::changeEvent(event);
  if (event->type() == QEvent::ActivationChange && isActiveWindow()) readOwn();
}

void CardBox::readOwn() {
  std::vector<Card> own = ownCards(ownStock());
  if (own != own_ || listed_.empty()) {
    own_ = std::move(own);
    fill();
  }
}

void CardBox::fill() {
  listed_.assign(cards().begin(), cards().end());
  for (const std::vector<Card>& more : {own_, offered_})
    listed_.insert(listed_.end(), more.begin(), more.end());
  clear();
  for (const Card& card : listed_) addItem(cardName(card), text(card.id));
  const std::size_t row = rowOf(shown_, listed_);
  if (row == listed_.size() && !unlisted_.isEmpty()) addItem(unlisted_, QString());
  setCurrentIndex(std::min(static_cast<int>(row), count() - 1));
}

}  // namespace creasewright
