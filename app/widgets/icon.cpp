#include "widgets/icon.h"

#include <QFile>
#include <QIconEngine>
#include <QPainter>
#include <QPixmap>
#include <QSvgRenderer>

#include "widgets/theme.h"

namespace creasewright {

namespace {

class LineIconEngine : public QIconEngine {
 public:
  explicit LineIconEngine(const QString& name) {
    QFile file(QStringLiteral(":/icons/") + name + QStringLiteral(".svg"));
    if (file.open(QIODevice::ReadOnly)) source_ = file.readAll();
  }

  void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
    QColor colour = theme().ink;
    if (mode == QIcon::Disabled) {
      colour = theme().quietInk;
      painter->setOpacity(0.45);
    }
    QByteArray svg = source_;
    svg.replace("currentColor", colour.name().toLatin1());
    QSvgRenderer(svg).render(painter, rect);
    painter->setOpacity(1);
  }

  QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
    QPixmap pixmap(size);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    paint(&painter, QRect(QPoint(), size), mode, state);
    return pixmap;
  }

  [[nodiscard]] QIconEngine* clone() const override { return new LineIconEngine(*this); }

 private:
  QByteArray source_;
};

}  // namespace

QIcon lineIcon(const QString& name) { return QIcon(new LineIconEngine(name)); }

}  // namespace creasewright
