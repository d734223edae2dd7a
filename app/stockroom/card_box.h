#pragma once

#include <QComboBox>
#include <vector>

#include "fit/card.h"

namespace creasewright {

/// The colours of a picked card: its own, or, where it tells none, those that there are now.
CardColours coloursOf(const Card& picked, const CardColours& now);

/// Cards to choose from: ours, then the person's own from their list of sheets, read again whenever
/// the window comes back to the front.
class CardBox : public QComboBox {
  Q_OBJECT

 public:
  explicit CardBox(QWidget* parent = nullptr);

  /// One more to choose, at the end.
  void offer(const Card& card);
  /// Shows `card`; one that is on no list stands last, called `unlisted`.
  void setCard(const Card& card, const QString& unlisted);

 signals:
  void cardPicked(const Card& card);

 protected:
  void changeEvent(QEvent* event) override;

 private:
  void readOwn();
  void fill();

  std::vector<Card> own_;
  std::vector<Card> offered_;
  std::vector<Card> listed_;  ///< as shown
  Card shown_;
  QString unlisted_;
};

}  // namespace creasewright
