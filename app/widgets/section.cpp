#include "widgets/section.h"

#include <QToolButton>
#include <QVBoxLayout>

#include "widgets/icon.h"

namespace creasewright {

Section::Section(const QString& title, QWidget* content, QWidget* parent)
    : QWidget(parent), heading_(new QToolButton(this)), content_(content) {
  heading_->setText(title);
  heading_->setProperty("heading", true);
  heading_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  heading_->setIconSize({16, 16});
  heading_->setCheckable(true);
  heading_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(4);
  layout->addWidget(heading_);
  layout->addWidget(content_);
  connect(heading_, &QToolButton::toggled, this, [this](bool open) {
    content_->setVisible(open);
    heading_->setIcon(lineIcon(open ? QStringLiteral("open") : QStringLiteral("closed")));
    emit toggled(open);
  });
  setOpen(true);
}

void Section::setOpen(bool open) { heading_->setChecked(open); }

bool Section::isOpen() const { return heading_->isChecked(); }

}  // namespace creasewright
