#include "pages/gift.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "document/halves.h"
#include "folding/surfaces/upright.h"
#include "guide/extra_steps.h"
#include "net/standing.h"
#include "pages/coming_off.h"
#include "pages/reach.h"

namespace creasewright {
namespace {

constexpr double kClear = 3;      // mm between a lid and what it was on, once it is lifted off
constexpr double kSlidApart = 8;  // mm between what was slid off and what it was on
constexpr double kAbove = 60;     // mm over its place from where an insert comes
constexpr double kLifted = 0.25;  // of the way of a lid: straight up; then it tilts
constexpr double kTilt = 70;      // degrees

/// The outermost point of a piece in a direction.
Point3 farthest(const BuiltPiece& piece, const Transform& place, Point3 along) {
  Point3 found;
  double most = -1e9;
  for (std::size_t i = 0; i < piece.net.panels.size(); ++i)
    for (const Point& corner : piece.net.panels[i].outline) {
      const Point3 p = place.after(piece.folded[i]).apply(corner);
      if (dot(p, along) <= most) continue;
      most = dot(p, along);
      found = p;
    }
  return found;
}

bool stands(const BuiltPiece& piece, const std::vector<const Piece*>& own, const Piece* root) {
  const auto standing = standingOf(piece, own);
  return standing && standing->root == root;
}

/// Turns a direction upwards: over, or a quarter about the length.
Transform upTurn(Point3 up) {
  if (std::abs(up.z) > 0.5)
    return up.z < 0 ? Transform::rotationX(Angle::degrees(180)) : Transform();
  return Transform::rotationX(Angle::degrees(up.y < 0 ? -90 : 90));
}

/// Whether a ray from a point meets a panel.
bool meetsRay(const Net& net, const Pose& pose, const Transform& place, Point3 from, Point3 along) {
  for (std::size_t i = 0; i < net.panels.size(); ++i) {
    const Transform into = place.after(pose[i]).inverse();
    const Point3 p = into.apply(from);
    const Point3 d = into.turn(along);
    if (std::abs(d.z) < 1e-9 || p.z / d.z >= 0) continue;
    const double t = -p.z / d.z;
    if (locate({p.x + t * d.x, p.y + t * d.y}, net.panels[i].outline) == Side::Inside) return true;
  }
  return false;
}

/// Places about the middle of a solid, at its upper end.
std::vector<Point3> placesOnTop(const Solid& solid, Point3 up) {
  constexpr double kInwards = 0.6;
  double top = -1e9;
  for (const auto& face : solid.faces)
    for (const Point3& p : face) top = std::max(top, dot(p, up));
  std::vector<Point3> places;
  Point3 middle;
  for (const auto& face : solid.faces)
    for (const Point3& p : face)
      if (dot(p, up) > top - 0.1) places.push_back(p);
  for (const Point3& p : places) middle = middle + p * (1.0 / static_cast<double>(places.size()));
  for (Point3& p : places) p = middle + (p - middle) * kInwards;
  places.push_back(middle);
  return places;
}

/// What goes round comes off first, then the box is opened.
struct Shares {
  double wraps = 0;
  double box = 0;
};

Shares sharesOf(double opening, bool wrapped) {
  if (!wrapped) return {0, opening};
  constexpr double kOff = 0.75;
  const double wraps = opening <= kAjar ? opening : kAjar + 2 * (opening - kAjar);
  return {std::min(1.0, wraps), std::max(0.0, (opening - kOff) / (kOpen - kOff))};
}

}  // namespace

Gift::Gift(const BuiltDesign& built) : built_(built) {
  std::vector<const Piece*> parts;
  const BuiltPiece* root = nullptr;
  for (const BuiltPiece& piece : built.pieces) {
    if (piece.role) continue;
    parts.push_back(&piece);
    if (root == nullptr && !piece.held) root = &piece;
  }
  if (root == nullptr) return;
  own_.push_back(root);
  for (const BuiltPiece& piece : built.pieces)
    if (!piece.role && &piece != root && stands(piece, parts, root)) own_.push_back(&piece);
  if (const BuiltPiece& first = built.pieces.front(); holds(first))
    up_ = standing(first, 0).turn(uprightOf(first));
  for (const BuiltPiece& piece : built.pieces)
    if (piece.role && piece.role->placing == Placing::Round && piece.role->around &&
        holds(built.pieces.front()))
      wraps_.push_back(&piece);
  std::ranges::stable_sort(wraps_, std::ranges::greater(), [&](const BuiltPiece* wrap) {
    return extrasUnder(built, wrap->role->extra);
  });
  product_ = productInFinished(built);
}

const BuiltPiece* Gift::ownCalled(const std::string& name) const {
  const auto found =
      std::ranges::find_if(own_, [&](const BuiltPiece* piece) { return piece->name == name; });
  return found == own_.end() ? nullptr : *found;
}

bool Gift::holds(const BuiltPiece& piece) const {
  if (!piece.role) return std::ranges::find(own_, &piece) != own_.end();
  switch (piece.role->placing) {
    case Placing::Round:
      return std::ranges::find(wraps_, &piece) != wraps_.end();
    case Placing::OnFace:
    case Placing::InFace:
    case Placing::OnInside:
      return true;
    case Placing::Inside:
      return product_.has_value();
    case Placing::Hanging:
      return piece.role->around && holds(built_.pieces.front());
  }
  return false;
}

const std::optional<PuttingIn>& Gift::putting() const {
  return putting_.get([&]() -> std::optional<PuttingIn> {
    const auto holder = productHolder(built_);
    return holder ? std::optional(holder->putting) : std::nullopt;
  });
}

bool Gift::isLoose() const {
  return std::ranges::any_of(
      own_, [](const BuiltPiece* piece) { return piece->held && piece->held->by == Hold::Loose; });
}

/// A tube of card out of which the product slides.
bool Gift::slidesThrough() const {
  const BuiltPiece& tube = *own_.front();
  return own_.size() == 1 && tube.cavity && tube.cavity->through.empty() && putting() &&
         putting()->through && closingStages(tube, putting()).after >= tube.net.stageCount();
}

bool Gift::isTied() const {
  return std::ranges::any_of(
      built_.ribbons, [](const RibbonNeed& ribbon) { return !ribbon.ways.empty(); });
}

/// Closed, or with what comes off off by a share.
Transform Gift::standing(const BuiltPiece& piece, double lifted) const {
  const BuiltPiece* other = piece.held ? ownCalled(piece.held->to) : nullptr;
  if (other == nullptr) return {};
  Transform place = *piece.held->place;
  if (lifted > 0 && piece.held->by != Hold::Glue) place = offBy(piece, *other, lifted).after(place);
  return standing(*other, lifted).after(place);
}

/// The way in which a piece comes off the one it goes with, in the frame of that one: a drawer
/// comes out where it is pulled.
Point3 Gift::wayBy(const BuiltPiece& piece, const BuiltPiece& other) const {
  constexpr double kAlong = 0.95;  // cosine
  const Point3 up = standing(other, 0).inverse().turn(up_);
  const Point3 way = wayOff(piece, other, up);
  for (const RibbonNeed& ribbon : built_.ribbons) {
    if (!ribbon.pull || &built_.pieces[static_cast<std::size_t>(ribbon.pull->face.piece)] != &other)
      continue;
    const auto panel = static_cast<std::size_t>(ribbon.pull->face.panel);
    const Point3 pulled = other.folded[panel].normal() * -1;
    if (dot(pulled, way) > kAlong && comesOffAlong(piece, other, way * -1)) return way * -1;
  }
  return way;
}

/// How a loose or slotted piece has moved in the frame of the one it goes with: a lid up and tilted
/// back about its rim, all else along its way.
Transform Gift::offBy(const BuiltPiece& piece, const BuiltPiece& other, double share) const {
  constexpr double kUpwards = 0.9;
  const Transform frame = standing(other, 0);
  const Point3 off = wayBy(piece, other);
  Reach below;
  Reach above;
  below.take(other.net, other.folded, {}, off);
  above.take(piece.net, piece.folded, *piece.held->place, off);
  if (piece.held->by == Hold::Slot || dot(frame.turn(off), up_) < kUpwards)
    return Transform::translation(off * (share * (below.high - above.low + kSlidApart)));
  const double lift = below.high - above.low + kClear;
  const Transform up = Transform::translation(off * (lift * std::min(1.0, share / kLifted)));
  const double tilt = kTilt * std::max(0.0, (share - kLifted) / (1 - kLifted));
  if (tilt <= 0) return up;
  const Sides sides = sidesOf(up_);
  const Transform into = frame.inverse();
  const Point3 away = into.turn(sides.away);
  Point3 pivot = farthest(piece, up.after(*piece.held->place), away);
  pivot = pivot + off * (above.low + lift - dot(pivot, off));
  const Transform rim = Transform::frame(pivot, into.turn(sides.right), away);
  return rim.after(Transform::rotationX(Angle::degrees(-tilt))).after(rim.inverse()).after(up);
}

/// As far as nothing comes into the room of the product.
Pose Gift::openedBy(const BuiltPiece& piece, double share, bool bottom, bool turned) const {
  if (share <= 0 || wholeOf(built_, piece)) return piece.folded;
  const int holder = product_ ? product_->piece : productPiece(built_).value_or(-1);
  const bool holds = holder >= 0 && &piece == &built_.pieces[static_cast<std::size_t>(holder)];
  const ClosingStages closing = closingStages(piece, holds ? putting() : std::nullopt);
  const Transform into = standing(piece, 0).inverse();
  const Upright stands{into.turn(up_), into.turn(sidesOf(up_).away * (turned ? 1 : -1))};
  for (const double part : {1.0, 0.6, 0.3}) {
    Pose pose = bottom ? withOpenBottom(piece, closing, part * share, stands)
                       : openedPose(piece, closing, part * share, stands);
    if (!holds || roomStaysFree(piece, pose)) return pose;
  }
  return piece.folded;
}

std::vector<Gift::Stood> Gift::stoodAt(double opening, bool bottom, bool turned) const {
  std::vector<Stood> stood;
  // Walls that a lid holds up fall once it is lifted.
  const double share = isLoose() ? std::max(0.0, (opening - kLifted) / (1 - kLifted)) : opening;
  for (const BuiltPiece* piece : own_)
    stood.push_back({piece, standing(*piece, opening), openedBy(*piece, share, bottom, turned)});
  return stood;
}

/// Whether the eye looks at the top of the product in the open box, from the front or the back.
bool Gift::isSeenWithin(bool turned) const {
  const std::vector<Stood> stood = stoodAt(kOpen, false, turned);
  const Camera eye = camera(frontView(standardView(), up_), up_);
  const Point3 level = eye.towardsEye - up_ * dot(eye.towardsEye, up_);
  const Point3 towardsEye = turned ? eye.towardsEye - level * 2 : eye.towardsEye;
  const auto holder = std::ranges::find_if(stood, [&](const Stood& each) {
    return each.piece == &built_.pieces[static_cast<std::size_t>(product_->piece)];
  });
  if (holder == stood.end()) return false;
  const auto isHidden = [&](Point3 from) {
    return std::ranges::any_of(
        stood,
        [&](const Stood& each) {
          return meetsRay(each.piece->net, each.pose, each.place, from, towardsEye);
        });
  };
  return std::ranges::any_of(productIn(*holder, {}, 0, 0), [&](const Solid& solid) {
    return std::ranges::any_of(placesOnTop(solid, up_), [&](Point3 p) { return !isHidden(p); });
  });
}

/// A box of one piece that shows its product from behind alone, as a house whose rear roof opens.
bool Gift::opensAtTheBack() const {
  return atTheBack_.get([&] {
    return product_.has_value() && own_.size() == 1 && wraps_.empty() && !slidesThrough() &&
           closingStages(*own_.front(), putting()).after < own_.front()->net.stageCount() &&
           !closingStages(*own_.front(), putting()).ends && !isSeenWithin(false) &&
           isSeenWithin(true);
  });
}

/// How what goes round has slid along the box, towards the right, the back or upwards.
Transform Gift::slidOff(const BuiltPiece& wrap, double share,
                        const std::vector<Stood>& stood) const {
  if (share <= 0) return {};
  const Transform place = standing(built_.pieces.front(), 0).after(*wrap.role->around);
  const Cavity& cavity = *wrap.cavity;
  const auto panel = static_cast<std::size_t>(wrap.net.find(cavity.panel).value_or(0));
  Point3 along = place.turn(wrap.folded[panel].turn(unitAlong(cavity.axes[0])));
  const Sides sides = sidesOf(up_);
  if (dot(along, sides.right + sides.away + up_) < 0) along = along * -1;
  Reach box;
  for (const Stood& each : stood) box.take(each.piece->net, each.pose, each.place, along);
  Reach own;
  own.take(wrap.net, wrap.folded, place, along);
  return Transform::translation(along * (share * (box.high - own.low + kSlidApart)));
}

void Gift::addWraps(double opening, const std::vector<Stood>& stood, Dressing& out) const {
  for (std::size_t k = 0; k < wraps_.size(); ++k) {
    const BuiltPiece& wrap = *wraps_[k];
    const double there = out.onWay(wrap.role->extra);
    if (there <= 0) continue;
    const auto count = static_cast<double>(wraps_.size());
    const double off = std::clamp(opening * count - static_cast<double>(k), 0.0, 1.0);
    const Transform place = slidOff(wrap, std::max(off, 1 - there), stood)
                                .after(standing(built_.pieces.front(), 0))
                                .after(*wrap.role->around);
    out.add(wrap, place, wrap.folded);
    out.addOnFaces(wrap, place, wrap.folded);
  }
}

/// What is laid or set into the box under the product, on its floor and on one another; returns by
/// how much that raises the product, mm.
double Gift::addInside(const Stood& holder, Dressing& out) const {
  const BuiltPiece& box = *holder.piece;
  const auto panel = static_cast<std::size_t>(product_->panel);
  const Transform floor = box.folded[panel].inverse().after(
      restingPlace(box.net, box.folded, *box.cavity, box.cavityBox, {}, uprightOf(box)));
  double height = 0;
  for (const bool carrying : {false, true})
    for (const BuiltPiece& part : built_.pieces) {
      if (!part.role || part.role->placing != Placing::Inside || part.held) continue;
      const double there = out.onWay(part.role->extra);
      if (there <= 0 || part.cavity.has_value() != carrying) continue;
      const std::vector<Stood> group = slottedTo(part);
      const Transform turned = upTurn(uprightOf(part));
      std::array<Reach, 3> spans;
      for (std::size_t k = 0; k < 3; ++k)
        for (const Stood& each : group)
          spans.at(k).take(each.piece->net, each.pose, turned.after(each.place),
                           unitAlong(static_cast<int>(k)));
      const double caliper = part.card.caliper.mm();
      const bool edgeDown = std::abs(uprightOf(part).z) < 0.5;  // it stands on cut edges
      const Point3 to{-(spans[0].low + spans[0].high) / 2, -(spans[1].low + spans[1].high) / 2,
                      height + (edgeDown ? 0 : caliper / 2) - spans[2].low + kAbove * (1 - there)};
      const Transform place = holder.place.after(holder.pose[panel])
                                  .after(floor)
                                  .after(Transform::translation(to))
                                  .after(turned);
      for (const Stood& each : group) {
        out.add(*each.piece, place.after(each.place), each.pose);
        out.addOnFaces(*each.piece, place.after(each.place), each.pose);
      }
      if (!carrying) height += caliper;
    }
  return height;
}

/// A piece that is set into the box and those of its extra that are slotted into it, each as often
/// as it is made, in the frame of the piece.
std::vector<Gift::Stood> Gift::slottedTo(const BuiltPiece& part) const {
  std::vector<const BuiltPiece*> group;
  for (const BuiltPiece& each : built_.pieces)
    if (each.role && each.role->extra == part.role->extra) group.push_back(&each);
  std::vector<Stood> stood;
  for (const BuiltPiece* each : group) {
    const bool slotted = each->held && each->held->to == part.name && each->held->place;
    if (each != &part && !slotted) continue;
    const Transform place = slotted ? *each->held->place : Transform();
    stood.push_back({each, place, each->folded});
    for (const Transform& copy : copiesOf(*each, group))
      stood.push_back({each, place.after(copy), each->folded});
  }
  return stood;
}

/// What hangs on ribbons round the closed box.
void Gift::addHanging(const Transform& first, Dressing& out) const {
  constexpr double kFrom = 50;  // mm before its place, from where it comes
  for (const BuiltPiece& piece : built_.pieces) {
    if (!piece.role || piece.role->placing != Placing::Hanging || !piece.role->around) continue;
    const double there = out.onWay(piece.role->extra);
    if (there <= 0) continue;
    const Transform place = first.after(*piece.role->around)
                                .after(Transform::translation({0, 0, -kFrom * (1 - there)}));
    out.add(piece, place, piece.folded);
    out.addOnFaces(piece, place, piece.folded);
  }
}

/// How far the product has come out of an end that is bent open, once it is: it would hide in it.
Point3 Gift::outOfEnd(const Stood& holder, double opening) const {
  constexpr double kOut = 0.45;  // of its length
  if (opening <= kAjar || !closingStages(*holder.piece, putting()).ends) return {};
  const Point3 front = sidesOf(up_).away * -1;
  Reach card;
  card.take(holder.piece->net, holder.piece->folded, holder.place, front);
  Reach own;
  for (const Solid& solid : productAt(product_, product_->piece, holder.piece->folded, 1))
    for (const auto& face : solid.faces)
      for (const Point3& p : face) own.take(dot(holder.place.apply(p), front));
  const double far = card.high - own.high + kOut * (own.high - own.low);
  return front * (far * (opening - kAjar) / (kOpen - kAjar));
}

std::vector<Solid> Gift::productIn(const Stood& holder, const GiftState& state, double opening,
                                   double raised) const {
  if (!product_ || state.product < 0) return {};
  double out = 1 - state.product;
  if (opening > 0 && slidesThrough()) out = std::max(out, opening);
  Transform place =
      Transform::translation(up_ * raised + outOfEnd(holder, opening)).after(holder.place);
  if (out > 0 && putting())
    place = place.after(Transform::translation((putting()->from - putting()->to) * out));
  std::vector<Solid> solids;
  for (const Solid& solid : productAt(product_, product_->piece, holder.pose, 1))
    solids.push_back(placed(solid, place));
  return solids;
}

GiftScene Gift::at(const GiftState& state) const {
  if (own_.empty()) return {};
  Dressing out(built_, state.extras);
  const bool wrapped = std::ranges::any_of(
      wraps_, [&](const BuiltPiece* wrap) { return out.onWay(wrap->role->extra) > 0; });
  const Shares shares = sharesOf(state.opening, wrapped);
  GiftScene scene;
  scene.turned = shares.box > 0 && opensAtTheBack();
  const std::vector<Stood> stood = stoodAt(shares.box, state.bottom, scene.turned);
  for (const Stood& each : stood) {
    out.add(*each.piece, each.place, each.pose);
    out.addOnFaces(*each.piece, each.place, each.pose);
    for (const Transform& copy : copiesOf(*each.piece, own_))
      out.add(*each.piece, each.place.after(copy), each.pose);
  }
  out.addMatesOfHalves();
  const auto holder = std::ranges::find_if(stood, [&](const Stood& each) {
    return product_ && each.piece == &built_.pieces[static_cast<std::size_t>(product_->piece)];
  });
  if (holder != stood.end()) {
    const double raised = addInside(*holder, out);
    scene.solids = productIn(*holder, state, shares.box, raised);
  }
  addWraps(shares.wraps, stood, out);
  if (state.opening <= 0) {
    out.addRibbons(standing(built_.pieces.front(), 0));
    addHanging(standing(built_.pieces.front(), 0), out);
  }
  scene.shown = out.take();
  scene.up = up_;
  return scene;
}

bool Gift::opens() const {
  if (own_.size() > 1 && own_.back()->held->by != Hold::Glue) return true;
  if (own_.empty()) return false;
  if (!wraps_.empty() || isTied() || isLoose()) return true;
  return slidesThrough() || std::ranges::any_of(own_, [&](const BuiltPiece* piece) {
           return closingStages(*piece, putting()).after < piece->net.stageCount();
         });
}

double Gift::telling() const {
  if (wraps_.empty() && !isTied()) return isLoose() ? kAjar : kClosed;
  const bool open =
      product_ && !isLoose() && putting() && putting()->after >= own_.front()->net.stageCount();
  if (!open || wraps_.empty()) return kClosed;
  return productShows(pictureOf(at({}), standardView())) ? kClosed : kAjar;
}

View viewOf(const GiftScene& scene, const View& view) {
  const View seen = frontView(view, scene.up);
  return {Angle::degrees(seen.turn.degrees() + (scene.turned ? 180 : 0)), seen.tilt};
}

FoldPicture pictureOf(const GiftScene& scene, const View& view) {
  return drawFolded(scene.shown.net, scene.shown.pose, viewOf(scene, view), scene.up, scene.solids);
}

GroundShadow shadowOf(const GiftScene& scene, const View& view) {
  return groundShadow(scene.shown.net, scene.shown.pose, viewOf(scene, view), scene.up,
                      scene.solids);
}

bool productShows(const FoldPicture& picture) {
  constexpr int kCells = 40;
  const Bounds& extent = picture.extent;
  int shown = 0;
  for (int i = 0; i < kCells * kCells; ++i) {
    const Point at = extent.low + Point{extent.width() * (i % kCells + 0.5) / kCells,
                                        extent.height() * (i / kCells + 0.5) / kCells};
    const auto top = std::find_if(
        picture.facets.rbegin(), picture.facets.rend(),
        [&](const Facet& facet) { return locate(at, facet.outline) != Side::Outside; });
    shown += top != picture.facets.rend() && top->panel < 0;
  }
  constexpr int kFew = 8;
  return shown >= kFew;
}

}  // namespace creasewright
