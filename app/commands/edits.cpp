#include "commands/edits.h"

#include <QCoreApplication>
#include <algorithm>

#include "bridge/style_text.h"
#include "bridge/text.h"
#include "commands/value_change.h"
#include "own_styles/keep_style.h"

namespace creasewright {

namespace {

struct Say {
  Q_DECLARE_TR_FUNCTIONS(edits)
};

void push(DesignSession& session, Design design, const QString& words, const QString& field) {
  pushChange(session, session.design(), std::move(design), words, field);
}

/// A design of another style in place of the one in hand.
void startFrom(DesignSession& session, Result<Design> fresh) {
  const Design& now = session.design();
  if (!fresh) return;
  Design design = std::move(fresh).value();
  design.title = now.title;
  design.notes = now.notes;
  design.tags = now.tags;
  design.board = now.board;
  design.photos = now.photos;
  design.extras = now.extras;
  // Those whose place the other style has not are told; they come back with the old one.
  design.edits = now.edits;
  if (design.ownStyle)  // kept from this very design, it brings them itself
    std::erase_if(design.edits, [&style = *design.ownStyle](const Edit& edit) {
      return std::ranges::find(style.edits, edit) != style.edits.end();
    });
  // Another style has other faces; each extra finds its own again.
  for (Extra& extra : design.extras) extra.face.clear();
  push(session, std::move(design), Say::tr("style"), {});
}

}  // namespace

void changeWords(DesignSession& session, const DesignWords& words) {
  push(session, withWords(session.design(), words), Say::tr("title, tags and notes"), {});
}

void changeStyle(DesignSession& session, std::string_view styleId) {
  const Design& now = session.design();
  if (styleId == styleIdOf(now)) return;
  startFrom(session, newDesign(styleId, now.product, now.card, now.ease, now.grid));
}

void changeStyle(DesignSession& session, const OwnStyle& style) {
  const Design& now = session.design();
  if (now.ownStyle == style) return;
  startFrom(session, newDesign(style, now.product, now.card, now.ease, now.grid));
}

void openStyleIn(DesignSession& session, const OwnStyle& style) {
  const Design& now = session.design();
  Result<Design> fresh = newDesign(style, now.product, now.card, now.ease, now.grid);
  if (!fresh) return;
  Design design = freedFromStyle(std::move(fresh).value());
  design.title = style.title;
  design.board = now.board;
  push(session, std::move(design), Say::tr("style"), {});
}

void freeFromStyle(DesignSession& session) {
  push(session, freedFromStyle(session.design()), Say::tr("the style’s changes"), {});
}

void changeProduct(DesignSession& session, const std::optional<Product>& product,
                   const QString& field) {
  Design design = session.design();
  design.product = product;
  push(session, refitted(design), Say::tr("product"), field);
}

void changeEase(DesignSession& session, Ease ease) {
  Design design = session.design();
  design.ease = ease;
  push(session, refitted(design), Say::tr("ease"), {});
}

void changeGrid(DesignSession& session, ToolGrid grid) {
  push(session, ontoGrid(session.design(), grid), Say::tr("tool grid"), {});
}

void changeBoard(DesignSession& session, Length board) {
  Design design = session.design();
  design.board = board;
  push(session, std::move(design), Say::tr("scoring board"), {});
}

void changeCard(DesignSession& session, const Card& card, const QString& field) {
  Design design = session.design();
  design.card = card;
  push(session, refitted(design), Say::tr("card"), field);
}

void changeExtras(DesignSession& session, std::vector<Extra> extras, const QString& words,
                  const QString& field) {
  Design design = session.design();
  design.extras = std::move(extras);
  push(session, std::move(design), words, field);
}

void changeEdits(DesignSession& session, std::vector<Edit> edits, const QString& words) {
  Design design = session.design();
  design.edits = std::move(edits);
  push(session, std::move(design), words, {});
}

void changePhotos(DesignSession& session, std::vector<Photo> photos, const QString& words,
                  const QString& field) {
  Design design = session.design();
  design.photos = std::move(photos);
  push(session, std::move(design), words, field);
}

void changeParameter(DesignSession& session, std::string_view key, std::int64_t raw) {
  push(session, withValue(session.design(), key, raw), parameterTitle(key), text(key));
}

void changeMeasures(DesignSession& session, const Parameters& parameters, const QString& words,
                    const QString& field) {
  Design design = session.design();
  design.parameters = parameters;
  push(session, followingRules(std::move(design)), words, field);
}

}  // namespace creasewright
