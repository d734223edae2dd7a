#include "document/dress.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <optional>
#include <set>
#include <utility>

#include "base/problem_extra.h"
#include "document/laid_pieces.h"
#include "extras/flat_piece.h"
#include "extras/for_show.h"
#include "extras/hanging.h"
#include "extras/hosting.h"
#include "extras/outline_round.h"
#include "extras/place_measures.h"
#include "extras/ribbon_picture.h"
#include "extras/ribbon_way.h"
#include "extras/tied_bow.h"
#include "extras/wrap_round.h"

namespace creasewright {
namespace {

/// What goes round a box is measured on one piece, which half of a box is not.
bool goesRound(const ExtraParts& parts) {
  const auto isRound = [](const ExtraPiece& piece) { return piece.placing == Placing::Round; };
  return (parts.ribbon && !parts.ribbon->ways.empty()) ||
         std::ranges::any_of(parts.pieces, isRound);
}

/// Two of a name are told apart by a number.
std::string freeName(const std::string& wanted, const BuiltDesign& built) {
  const auto taken = [&](const std::string& name) {
    return std::ranges::any_of(built.pieces, [&](const BuiltPiece& p) { return p.name == name; });
  };
  std::string name = wanted;
  for (int i = 2; taken(name); ++i) name = wanted + "-" + std::to_string(i);
  return name;
}

bool isAmong(const std::vector<int>& all, int one) {
  return std::ranges::find(all, one) != all.end();
}

/// Whether it stands in the box from wall to wall: two have no room.
bool fillsRoom(const ExtraKind& kind) {
  return kind.act == ExtraAct::SetInsertIn || kind.act == ExtraAct::SetPartitionIn;
}

/// Whether it lies on one face of the box or of another extra.
bool choosesFace(const ExtraKind& kind) {
  const auto& carriers = kind.carriers;
  return kind.onFace && !kind.onEveryFace &&
         std::ranges::find(carriers, Carrier::Face) != carriers.end();
}

bool isCovered(const Problems& problems) {
  return std::ranges::any_of(
      problems, [](const Problem& p) { return p.code == ProblemCode::ExtraCovered; });
}

/// How much a reason why there is no place helps: what is wrong with the extra itself most, then a
/// size that fits.
int helps(const Problem& problem) {
  const auto is = [&](ProblemCode code) { return problem.code == code; };
  if (is(ProblemCode::ExtraNoPlace)) return 0;
  if (is(ProblemCode::ExtraOffFace) || is(ProblemCode::ExtraMiddleOff) ||
      is(ProblemCode::ExtraFaceUnknown))
    return 1;
  return is(ProblemCode::ExtraTooLarge) ? 2 : 3;
}

/// The one of two that helps more: of two sizes the larger one, else the first.
Problem better(const Problem& a, const Problem& b) {
  if (helps(a) != helps(b)) return helps(a) > helps(b) ? a : b;
  if (a.code != ProblemCode::ExtraTooLarge) return a;
  return std::get<Length>(b.values.at(1)) > std::get<Length>(a.values.at(1)) ? b : a;
}

/// How far the box reaches across and up where a ribbon crosses, mm.
Point sizesAtCrossing(const RibbonNeed& ribbon) {
  const Transform there = crossingOf(ribbon);
  const auto along = [&](Point3 way) {
    double size = 0;
    for (std::size_t k = 0; k < 3; ++k)
      size += std::abs(dot(there.turn(way), ribbon.round.axes.at(k))) * ribbon.round.sizes.at(k);
    return size;
  };
  return {along({1, 0, 0}), along({0, 1, 0})};
}

/// A measure outside its limits is told as one of this extra.
Problem ofExtra(Problem problem, const ExtraKind& kind) {
  if (!isLimit(problem)) return problem;
  if (problem.values.size() == 2) {
    const auto spec = std::ranges::find(kind.parameters, problem.where, &ParameterSpec::key);
    problem.values.emplace_back(
        std::string(spec == kind.parameters.end() ? Worded() : spec->title));
  }
  problem.values.emplace_back(std::string(kind.id));
  return problem;
}

/// One extra once it is made.
struct Made {
  std::vector<BuiltPiece> pieces;  ///< their faces' pieces count among those of the host
  std::optional<RibbonNeed> ribbon;
  std::optional<ProductCells> cells;
  std::optional<WrapBody> body;
  std::vector<int> wraps;  ///< what goes round below it, itself the last
  Problems problems;
  int host = kOnBox;
  std::optional<Raised> raised;  ///< from the box, or from the wrap that it lies on
  bool there = false;
};

/// When an extra is made: what stands out from the box before what goes round it, ribbons over
/// card, and what lies on the outermost last.
enum class Turn { OnBox, Wrap, Ribbon, Outermost };

class Dresser {
 public:
  Dresser(const CutWindows& windows, const Host& box, bool inHalves, BuiltDesign& built)
      : windows_(windows),
        inHalves_(inHalves),
        built_(built),
        box_(box),
        hosts_(hostsOf(built.design.extras)) {
    box_.wraps = wrapsOf(extras(), box_);
    outside_ = outsideOf(box_);
  }

  void make() {
    makeAll();
    // What found its place on the box alone, under a band, stands out there: the band is made anew.
    const auto hidden = [&](std::size_t i) {
      return made_[i].there && made_[i].host == kOnBox && extras()[i].host == kOutermost &&
             isCovered(made_[i].problems) && turnOf(i) == Turn::Outermost;
    };
    bool again = learnRaisedOnWraps();
    for (std::size_t i = 0; i < extras().size(); ++i) {
      if (!hidden(i)) continue;
      hosts_[i] = kOnBox;
      again = true;
    }
    if (again) makeAll();
    tellHiddenWraps();
    for (std::size_t i = 0; i < made_.size(); ++i)
      if (made_[i].ribbon) tie(i, *made_[i].ribbon);
    addAll();
  }

 private:
  /// Keeps what was put onto a wrap by name, for those that go over that wrap; whether any does.
  bool learnRaisedOnWraps() {
    bool any = false;
    for (std::size_t i = 0; i < extras().size(); ++i) {
      const int base = made_[i].raised ? baseOf(i) : kOnBox;
      if (base < 0 || extras()[i].host < 0) continue;
      knownOnWraps_.emplace_back(base, *made_[i].raised);
      for (const Made& other : made_) any = any || isAmong(belowOf(other), base);
    }
    return any;
  }

  /// What goes round the box: round which axes, and how wide.
  [[nodiscard]] static std::vector<std::pair<std::size_t, double>> runsOf(const Made& made) {
    if (made.body) return {{made.body->axis, made.body->sizes.at(made.body->axis)}};
    std::vector<std::pair<std::size_t, double>> runs;
    if (made.ribbon)
      for (const RibbonWay& way : made.ribbon->ways)
        runs.emplace_back(way.axis, made.ribbon->width.mm());
    return runs;
  }

  /// What another one, put on later, goes over and hides but for a hair.
  void tellHiddenWraps() {
    constexpr double kShows = 2;  // mm in all
    const auto hides = [](const Made& over, const std::pair<std::size_t, double>& run) {
      return std::ranges::any_of(runsOf(over), [&](const auto& other) {
        return other.first == run.first && other.second > run.second - kShows;
      });
    };
    for (std::size_t i = 0; i < made_.size(); ++i)
      for (std::size_t k = 0; k < made_.size(); ++k) {
        const auto runs = runsOf(made_[i]);
        if (k == i || runs.empty() || !kindAt(i)->runs || !kindAt(k)->runs) continue;
        if (!goesOver(k, i)) continue;
        if (!std::ranges::all_of(runs, [&](const auto& run) { return hides(made_[k], run); }))
          continue;
        made_[i].problems.push_back({ProblemCode::ExtraUnderRound,
                                     extras()[i].kind,
                                     {extras()[k].kind},
                                     Severity::Warning});
        break;
      }
  }

  /// Whether of two that go round one lies over the other: ribbons over card, and over those before
  /// them.
  [[nodiscard]] bool goesOver(std::size_t upper, std::size_t lower) const {
    if (!made_[upper].body) return made_[lower].body || lower < upper;
    return isAmong(belowOf(made_[upper]), static_cast<int>(lower));
  }

  /// The wraps under one of them, or under a ribbon.
  [[nodiscard]] std::vector<int> belowOf(const Made& made) const {
    if (made.host < 0 || (!made.body && !(made.ribbon && !made.ribbon->ways.empty()))) return {};
    return made_[static_cast<std::size_t>(made.host)].wraps;
  }

  [[nodiscard]] const std::vector<Extra>& extras() const { return built_.design.extras; }
  [[nodiscard]] const ExtraKind* kindAt(std::size_t i) const {
    const Result<const ExtraKind*> kind = findExtraKind(extras()[i].kind);
    return kind ? *kind : nullptr;
  }
  [[nodiscard]] int hostAt(std::size_t i) const { return hosts_[i] ? *hosts_[i] : kOnBox; }

  [[nodiscard]] Turn turnOf(std::size_t i) const {
    const ExtraKind* kind = kindAt(i);
    if (kind == nullptr) return Turn::OnBox;
    if (kind->runs) return kind->ofCard ? Turn::Wrap : Turn::Ribbon;
    if (kind->act == ExtraAct::TieTagOn) return Turn::Outermost;
    if (hostAt(i) >= 0) {
      const Turn host = turnOf(static_cast<std::size_t>(hostAt(i)));
      return host == Turn::OnBox ? host : Turn::Outermost;
    }
    const bool onBox = hostAt(i) == kOnBox || kind->carriers == std::vector{Carrier::Box};
    return onBox || kind->onEveryFace ? Turn::OnBox : Turn::Outermost;
  }

  [[nodiscard]] bool isBow(std::size_t i) const {
    return kindAt(i) != nullptr && kindAt(i)->act == ExtraAct::GlueBowOn;
  }

  void makeAll() {
    laid_.clear();
    made_.assign(extras().size(), {});
    taken_.assign(extras().size(), {});
    takenOnBox_.clear();
    raised_.clear();
    for (const Turn turn : {Turn::OnBox, Turn::Wrap, Turn::Ribbon, Turn::Outermost})
      for (const bool bows : {false, true})  // which lie on what is there
        for (std::size_t i = 0; i < extras().size(); ++i)
          if (turnOf(i) == turn && isBow(i) == bows) makeWithHost(i);
  }

  /// Hosts are no circle: those that are have been refused.
  void makeWithHost(std::size_t i) {
    if (done(i)) return;
    if (!hosts_[i]) {
      made_[i].problems = {hosts_[i].problem()};
      return;
    }
    const int host = *hosts_[i];
    if (host >= 0) makeWithHost(static_cast<std::size_t>(host));
    if (host >= 0 && !made_[static_cast<std::size_t>(host)].there) {
      made_[i].problems = {{ProblemCode::ExtraNoPlace, extras()[i].kind, {}}};
      return;
    }
    makeOne(i, host);
  }

  [[nodiscard]] bool done(std::size_t i) const {
    return made_[i].there || !made_[i].problems.empty();
  }

  /// The kind of what fills the box inside already, where this would fill it too.
  [[nodiscard]] std::optional<std::string> fillsBefore(std::size_t i) const {
    if (!fillsRoom(*kindAt(i))) return std::nullopt;
    for (std::size_t k = 0; k < extras().size(); ++k)
      if (k != i && made_[k].there && fillsRoom(*kindAt(k))) return extras()[k].kind;
    return std::nullopt;
  }

  void makeOne(std::size_t i, int host) {
    if (const auto other = fillsBefore(i))
      return keep(i, kOnBox, Problem{ProblemCode::ExtraRoomTaken, extras()[i].kind, {*other}});
    const auto window = windows_.find(static_cast<int>(i));
    if (window != windows_.end()) return keep(i, kOnBox, window->second);
    if (host != kOutermost) return keep(i, host, partsOn(i, host));
    if (kindAt(i)->runs) {
      const int under = outermostWrap();
      return keep(i, under, partsOn(i, under));
    }
    keepOutermost(i);
  }

  /// On the outermost of the best side that has a good place for it: seen, and upright for who
  /// looks. What finds none says why; what was told its place stays there, covered.
  void keepOutermost(std::size_t i) {
    const std::vector<int> hosts = outermostFirst(i);
    std::optional<std::pair<int, ExtraParts>> covered;
    std::optional<Problem> why;
    const auto keepsOn = [&](int host, std::optional<Point3> side) {
      Result<ExtraParts> parts = partsOn(i, host, side);
      if (!parts) {
        why = why ? better(*why, parts.problem()) : parts.problem();
        return false;
      }
      if (isCovered(parts->warnings)) {
        if (!covered) covered.emplace(host, std::move(parts).value());
        return false;
      }
      const int on = onLabels(i, host, parts);
      keep(i, on, std::move(parts));
      return true;
    };
    const bool faced = choosesFace(*kindAt(i)) && extras()[i].face.empty();
    for (const int host : hosts)
      if ((!faced || !hasFaces(host)) && keepsOn(host, std::nullopt)) return;
    if (faced)
      for (const Point3& side : sidesOf(extras()[i], hosts))
        for (const int host : hosts)
          if (hasFaces(host) && keepsOn(host, side)) return;
    if (covered) return keep(i, covered->first, std::move(covered->second));
    keep(i, kOnBox, why.value_or(Problem{ProblemCode::ExtraNoPlace, extras()[i].kind, {}}));
  }

  [[nodiscard]] bool hasFaces(int host) const {
    return host == kOnBox || kindAt(static_cast<std::size_t>(host))->hasFaces;
  }

  [[nodiscard]] std::vector<Point3> sidesOf(const Extra& extra,
                                            const std::vector<int>& among) const {
    std::vector<Host> hosts;
    for (const int host : among)
      if (hasFaces(host))
        hosts.push_back(host == kOnBox ? boxHost()
                                       : guestHost(extra, static_cast<std::size_t>(host)));
    return sidesForShow(hosts);
  }

  /// A bow in the middle of a label lies on the label: its host, and what it is there.
  int onLabels(std::size_t i, int host, Result<ExtraParts>& parts) const {
    for (std::optional<int> label; (label = labelUnder(i, host, parts)); host = *label) {
      Result<ExtraParts> above = partsOn(i, *label);
      if (!above || !above->warnings.empty()) break;
      parts = std::move(above);
    }
    return host;
  }

  /// What was glued onto the host in the very place of a bow that is not moved.
  [[nodiscard]] std::optional<int> labelUnder(std::size_t i, int host,
                                              const Result<ExtraParts>& parts) const {
    constexpr double kSamePlace = 0.5;  // mm
    if (!parts || !parts->ribbon || !parts->ribbon->shape || !parts->ribbon->shape->face)
      return std::nullopt;
    if (isShifted(extras()[i].parameters) || extras()[i].parameters.count("anchor") > 1)
      return std::nullopt;
    const FacePlace& face = *parts->ribbon->shape->face;
    const int top = host >= 0 ? static_cast<int>(carrying(static_cast<std::size_t>(host))) : 0;
    for (std::size_t k = 0; k < extras().size(); ++k) {
      const ExtraKind* kind = kindAt(k);
      if (k == i || kind == nullptr || !kind->hasFaces || kind->onEveryFace) continue;
      if (!made_[k].there || made_[k].host != host || made_[k].pieces.empty()) continue;
      const BuiltPiece& lowest = made_[k].pieces.front();
      const Bounds box = bounds(lowest.net.panels.front().outline);
      for (const FacePlace& under : lowest.role->faces) {
        const Point3 middle = under.place.apply((box.low + box.high) / 2);
        const Point3 bow = face.place.apply(Point{});
        if (under.piece == face.piece + top && under.panel == face.panel &&
            std::hypot(middle.x - bow.x, middle.y - bow.y) < kSamePlace)
          return static_cast<int>(k);
      }
    }
    return std::nullopt;
  }

  /// What an extra that chooses for itself is tried on.
  [[nodiscard]] std::vector<int> outermostFirst(std::size_t i) const {
    const ExtraKind& kind = *kindAt(i);
    if (kind.onEveryFace || kind.carriers == std::vector{Carrier::Box}) return {kOnBox};
    std::vector<int> hosts;
    for (std::size_t k = extras().size(); k-- > 0;) {
      const ExtraKind* host = kindAt(k);
      if (k == i || host == nullptr || !host->runs || !made_[k].there) continue;
      if (mayCarry(*host, kind)) hosts.push_back(static_cast<int>(k));
    }
    // Ribbons lie over all card.
    std::ranges::stable_sort(hosts, [&](int a, int b) { return heightOf(a) > heightOf(b); });
    if (mayLieOnBox(kind)) hosts.push_back(kOnBox);
    return hosts;
  }

  [[nodiscard]] std::size_t heightOf(int wrap) const {
    const auto k = static_cast<std::size_t>(wrap);
    return kindAt(k)->ofCard ? made_[k].wraps.size() : extras().size() + 1;
  }

  /// What goes round the box as the last so far, of card.
  [[nodiscard]] int outermostWrap() const {
    int last = kOnBox;
    for (std::size_t k = 0; k < made_.size(); ++k)
      if (made_[k].there && made_[k].body) last = static_cast<int>(k);
    return last;
  }

  /// On a host, or on one side of it where it is seen.
  [[nodiscard]] Result<ExtraParts> partsOn(std::size_t i, int host,
                                           std::optional<Point3> side = std::nullopt) const {
    Extra extra = extras()[i];
    const ExtraKind& kind = *kindAt(i);
    if (kind.runs && !kind.ofCard && carriesBow(i)) extra.parameters.set("bow", Length::mm(20));
    if (kind.runs) return partsOf(extra, wrapHost(host));
    if (kind.act == ExtraAct::TieTagOn && host == kOnBox)
      return partsOf(extra, wrapHost(outermostWrap()));
    Host on = host == kOnBox ? boxHost() : guestHost(extra, static_cast<std::size_t>(host));
    if (side) on.side = *side;
    on.seenOnly = side.has_value();
    return partsOf(extra, on);
  }

  /// Whether a bow made for itself is glued where a ribbon crosses: its own ends only lap.
  [[nodiscard]] bool carriesBow(std::size_t ribbon) const {
    for (std::size_t i = 0; i < extras().size(); ++i) {
      const ExtraKind* kind = kindAt(i);
      if (kind == nullptr || kind->ofCard || !mayCarry(*kindAt(ribbon), *kind)) continue;
      if (hostAt(i) == static_cast<int>(ribbon)) return true;
      if (hostAt(i) == kOutermost && lastRibbon() == static_cast<int>(ribbon)) return true;
    }
    return false;
  }
  [[nodiscard]] int lastRibbon() const {
    int last = kOnBox;
    for (std::size_t i = 0; i < extras().size(); ++i)
      if (const ExtraKind* kind = kindAt(i); kind != nullptr && kind->runs && !kind->ofCard)
        last = static_cast<int>(i);
    return last;
  }

  [[nodiscard]] Host boxHost() const {
    Host host = box_;
    host.taken = takenOnBox_;
    return host;
  }

  /// The box with what goes round it already: all of it, or what the host goes over.
  [[nodiscard]] Host wrapHost(int host) const {
    Host round = boxHost();
    round.raised = raised_;
    if (host < 0) return round;
    for (const int k : made_[static_cast<std::size_t>(host)].wraps)
      round.under.push_back(*made_[static_cast<std::size_t>(k)].body);
    for (const auto& [wrap, raised] : knownOnWraps_)
      if (isAmong(made_[static_cast<std::size_t>(host)].wraps, wrap))
        round.raised.push_back(raised);
    return round;
  }

  /// The pieces of an extra as a host: what is on top of them.
  [[nodiscard]] Host guestHost(const Extra& guest, std::size_t h) const {
    Host host;
    host.product = box_.product;
    host.ease = box_.ease;
    host.bench = {extras()[h].card.caliper, box_.bench.grid};
    host.box = outside_;
    host.taken = taken_[h];
    const int base = baseOf(h);
    for (const WrapRound& wrap : box_.wraps)
      if (base < 0 || isAbove(wrap.kind, static_cast<std::size_t>(base)))
        host.wraps.push_back(wrap);
    if (!made_[h].pieces.empty()) {
      const BuiltPiece& top = made_[h].pieces[carrying(h)];
      host.pieces.push_back({&top, &top.folded, {}, placeOf(h, top)});
    }
    if (const auto side = sideOf(guest.face)) host.side = *side;
    if (made_[h].ribbon && !made_[h].ribbon->ways.empty())
      host.crossing = sizesAtCrossing(*made_[h].ribbon);
    return host;
  }

  /// What an extra lies on in the end: itself where it goes round, another that does, or the box.
  [[nodiscard]] int baseOf(std::size_t extra) const {
    auto at = static_cast<int>(extra);
    while (at >= 0 && kindAt(static_cast<std::size_t>(at))->runs == nullptr)
      at = made_[static_cast<std::size_t>(at)].host;
    return at;
  }

  /// Which piece of an extra others lie on: of a stack the topmost layer.
  [[nodiscard]] std::size_t carrying(std::size_t h) const { return made_[h].pieces.size() - 1; }

  /// Whether a wrap of a kind goes over the one of an index.
  [[nodiscard]] bool isAbove(const std::string& kind, std::size_t h) const {
    for (std::size_t k = 0; k < extras().size(); ++k) {
      if (extras()[k].kind != kind || k == h || made_[k].host < 0) continue;
      const std::vector<int>& below = made_[static_cast<std::size_t>(made_[k].host)].wraps;
      if (std::ranges::find(below, static_cast<int>(h)) != below.end()) return true;
    }
    return false;
  }

  /// Panel 0 of a piece in the frame of the box's first piece, where it has its place there.
  [[nodiscard]] std::optional<Transform> placeOf(std::size_t extra, const BuiltPiece& piece) const {
    const ExtraRole& role = *piece.role;
    if (role.around) return role.around;
    if (role.faces.empty()) return std::nullopt;
    return placeOf(made_[extra].host, role.faces.front());
  }
  /// The same of a place on a face of a host.
  [[nodiscard]] std::optional<Transform> placeOf(int host, const FacePlace& face) const {
    if (host == kOnBox) {
      const HostPiece& on = box_.pieces[static_cast<std::size_t>(face.piece)];
      if (!on.place) return std::nullopt;
      return on.place->after((*on.folded)[static_cast<std::size_t>(face.panel)]).after(face.place);
    }
    const auto h = static_cast<std::size_t>(host);
    const BuiltPiece& on = made_[h].pieces[static_cast<std::size_t>(face.piece)];
    const std::optional<Transform> below = placeOf(h, on);
    if (!below) return std::nullopt;
    return below->after(on.folded[static_cast<std::size_t>(face.panel)]).after(face.place);
  }

  /// Out of the face of the box of a name.
  [[nodiscard]] std::optional<Point3> sideOf(const std::string& name) const {
    for (const HostFace& face : facesOf(box_)) {
      const HostPiece& on = box_.pieces[static_cast<std::size_t>(face.piece)];
      if (!on.place || faceName(box_, face) != name) continue;
      return on.place->turn((*on.folded)[static_cast<std::size_t>(face.panel)].normal() * -1);
    }
    return std::nullopt;
  }

  void keep(std::size_t i, int host, Result<ExtraParts> result) {
    Made& made = made_[i];
    made.host = host;
    if (!result) {
      made.problems = {result.problem()};
      return;
    }
    ExtraParts parts = std::move(result).value();
    if (inHalves_ && goesRound(parts)) {
      const bool hangs = kindAt(i)->act == ExtraAct::TieTagOn;
      made.problems = {
          {hangs ? ProblemCode::ExtraUnhung : ProblemCode::ExtraNoPlace, extras()[i].kind, {}}};
      return;
    }
    made.there = true;
    made.problems = parts.warnings;
    auto& taken = host >= 0 ? taken_[static_cast<std::size_t>(host)] : takenOnBox_;
    std::ranges::copy(parts.taken, std::back_inserter(taken));
    if (host >= 0) countFromTop(static_cast<std::size_t>(host), parts);
    if (parts.raised) raise(i, *parts.raised);
    made.body = parts.body;
    if (made.body) {
      if (host >= 0) made.wraps = made_[static_cast<std::size_t>(host)].wraps;
      made.wraps.push_back(static_cast<int>(i));
    }
    made.ribbon = std::move(parts.ribbon);
    if (made.ribbon && made.ribbon->shape && made.ribbon->shape->face)
      liftBow(host, made.ribbon->width.mm(), *made.ribbon->shape);
    made.cells = std::move(parts.cells);
    for (ExtraPiece& added : parts.pieces) makePiece(i, std::move(added));
  }

  /// A host is asked for the piece that carries alone; its faces are counted among all of them.
  void countFromTop(std::size_t host, ExtraParts& parts) const {
    if (made_[host].pieces.empty()) return;
    const int top = static_cast<int>(carrying(host));
    for (ExtraPiece& piece : parts.pieces)
      for (FacePlace& face : piece.faces) face.piece += top;
    if (parts.ribbon && parts.ribbon->shape && parts.ribbon->shape->face)
      parts.ribbon->shape->face->piece += top;
  }

  /// What stands out from the box itself or from a wrap, through all that it lies on.
  void raise(std::size_t i, Raised raised) {
    const int host = made_[i].host;
    if (host >= 0) {
      const auto h = static_cast<std::size_t>(host);
      if (made_[h].pieces.empty()) return;
      const std::optional<Transform> place = placeOf(h, made_[h].pieces[carrying(h)]);
      if (!place) return;
      raised.out = place->turn(raised.out);
      for (Point3& corner : raised.corners) corner = place->apply(corner);
      if (const std::optional<Raised>& below = made_[h].raised) {
        raised.height += below->height;
        raised.foam = raised.foam || below->foam;
      }
    }
    raised.onWrap = baseOf(i) >= 0;
    if (!raised.onWrap) raised_.push_back(raised);
    made_[i].raised = std::move(raised);
  }

  /// A bow on a face lies on all that it crosses.
  void liftBow(int host, double width, BowShape& bow) const {
    const std::optional<Transform> place = placeOf(host, *bow.face);
    if (!place) return;
    const double lift = liftOver(laid_, bowOutline(bow, width), *place);
    bow.face->place = bow.face->place.after(Transform::translation({0, 0, -lift}));
  }

  /// The bow of a ribbon lies on all that is there, its tails too.
  void tie(std::size_t i, RibbonNeed& ribbon) const {
    ribbon.tied = tiedBow(ribbon);
    if (!ribbon.tied) return;
    const bool ownString = kindAt(i)->act == ExtraAct::TieTagOn;
    const Host round = wrapHost(ownString ? outermostWrap() : made_[i].host);
    std::vector<std::vector<Point3>> tops;
    for (const LaidPiece& piece : laid_) tops.push_back(topOf(piece));
    const Polygon under = outlineRound(round, ribbon.round, acrossOf(*ribbon.tied, ribbon),
                                       spreadOf(*ribbon.tied, ribbon.width), tops);
    const Polygon loops = tiedOutline(*ribbon.tied, ribbon.width.mm());
    layTails(*ribbon.tied, ribbon, under, liftOver(laid_, loops, ribbon.tied->knot));
  }

  void makePiece(std::size_t i, ExtraPiece added) {
    Made& made = made_[i];
    BuiltPiece piece = buildPiece(std::move(added.part), added.card.value_or(extras()[i].card),
                                  built_.design, made.problems);
    piece.role = ExtraRole{static_cast<int>(i), added.placing, std::move(added.faces),
                           added.around,        made.host,     added.layer};
    const bool flat = piece.role->placing == Placing::OnFace;
    made.pieces.push_back(std::move(piece));
    if (!flat) return;
    const BuiltPiece& laid = made.pieces.back();
    for (const FacePlace& face : laid.role->faces)
      if (const auto place = placeOf(made.host, face))
        laid_.push_back({laid.net.panels.front().outline, *place, laid.card.caliper.mm()});
  }

  /// In the order of the design; faces count the design's pieces then.
  void addAll() {
    std::vector<int> first;
    int next = static_cast<int>(built_.pieces.size());
    for (const Made& made : made_) {
      first.push_back(next);
      next += static_cast<int>(made.pieces.size());
    }
    for (std::size_t i = 0; i < made_.size(); ++i) {
      Made& made = made_[i];
      const int offset = made.host >= 0 ? first[static_cast<std::size_t>(made.host)] : 0;
      for (Problem& problem : made.problems) {
        const bool told = problem.code == ProblemCode::ExtraHostCircle &&
                          std::ranges::find(built_.problems, problem) != built_.problems.end();
        if (!told) built_.problems.push_back(std::move(problem));
      }
      std::map<std::string, std::string> named;
      for (BuiltPiece& piece : made.pieces) {
        for (FacePlace& face : piece.role->faces) face.piece += offset;
        std::string name = freeName(piece.name, built_);
        named.emplace(std::exchange(piece.name, name), name);
        if (piece.held && named.contains(piece.held->to)) piece.held->to = named[piece.held->to];
        built_.pieces.push_back(std::move(piece));
      }
      if (made.cells) built_.cells = std::move(made.cells);
      if (!made.ribbon) continue;
      made.ribbon->extra = static_cast<int>(i);
      made.ribbon->host = made.host;
      if (made.ribbon->shape && made.ribbon->shape->face) made.ribbon->shape->face->piece += offset;
      built_.ribbons.push_back(std::move(*made.ribbon));
    }
    placeBows();
    hangTags();
  }

  /// A tag that is too high to hang on its ribbon, and how high it may be.
  void tellLoose(int extra, const RibbonNeed& ribbon, const std::vector<const Panel*>& layers) {
    const std::string& kind = extras()[static_cast<std::size_t>(extra)].kind;
    std::vector<double> highs;
    for (const Panel* layer : layers) highs.push_back(bounds(layer->outline).height());
    const auto [own, mat] = std::ranges::minmax(highs);
    if (const std::optional<double> most = tallestOn(ribbon, layers))
      built_.problems.push_back(
          {ProblemCode::ExtraTooLarge,
           kind,
           {Length::mm(own), onGridBelow(*most - (mat - own), box_.bench.grid),
            std::string("height")}});
    else
      built_.problems.push_back({ProblemCode::ExtraUnhung, kind, {}});
  }

  /// What hangs on a ribbon, where that leaves it room.
  void hangTags() {
    std::set<int> loose;
    for (const RibbonNeed& ribbon : built_.ribbons)
      for (int extra = 0; extra < static_cast<int>(made_.size()); ++extra) {
        std::vector<BuiltPiece*> pieces;
        std::vector<const Panel*> layers;
        for (BuiltPiece& piece : built_.pieces) {
          const auto& role = piece.role;
          if (!role || role->extra != extra) continue;
          if (role->host != ribbon.extra && ribbon.extra != extra) continue;  // or its own string
          if (role->placing != Placing::Hanging) continue;
          pieces.push_back(&piece);
          layers.push_back(&piece.net.panels.front());
        }
        const std::vector<Transform> places = hangingOn(ribbon, layers);
        if (places.empty() && !layers.empty()) {
          tellLoose(extra, ribbon, layers);
          loose.insert(extra);
        }
        for (std::size_t i = 0; i < places.size(); ++i) pieces[i]->role->around = places[i];
      }
    // Nothing is left for their own strings to hold.
    std::erase_if(built_.ribbons,
                  [&](const RibbonNeed& ribbon) { return loose.contains(ribbon.extra); });
  }

  /// Bows where ribbons cross.
  void placeBows() {
    for (RibbonNeed& bow : built_.ribbons) {
      if (!bow.shape || bow.shape->face) continue;
      const int host = made_[static_cast<std::size_t>(bow.extra)].host;
      for (const RibbonNeed& ribbon : built_.ribbons)
        if (ribbon.extra == host) {
          const Transform there = crossingOf(ribbon);
          const double lift = liftOver(laid_, bowOutline(*bow.shape, bow.width.mm()), there);
          bow.shape->crossing = there.after(Transform::translation({0, 0, -lift}));
        }
    }
  }

  const CutWindows& windows_;
  bool inHalves_;
  BuiltDesign& built_;
  Host box_;
  std::vector<Result<int>> hosts_;
  std::optional<OutsideBox> outside_;
  std::vector<Made> made_;
  std::vector<std::vector<TakenPlace>> taken_;  ///< by host
  std::vector<TakenPlace> takenOnBox_;
  std::vector<LaidPiece> laid_;
  std::vector<Raised> raised_;
  std::vector<std::pair<int, Raised>> knownOnWraps_;  ///< and the wrap it lies on, by its index
};

}  // namespace

Result<ExtraParts> partsOf(const Extra& extra, const Host& host) {
  const Result<const ExtraKind*> kind = findExtraKind(extra.kind);
  if (!kind) return kind.problem();
  const Problems limits =
      checkLimits(extra.kind, (*kind)->parameters, extra.parameters, host.benchOf(extra));
  if (!limits.empty()) return ofExtra(limits.front(), **kind);
  Result<ExtraParts> parts = (*kind)->build(extra, host);
  if (!parts) return ofExtra(parts.problem(), **kind);
  return parts;
}

void dress(const CutWindows& windows, const Host& box, bool inHalves, BuiltDesign& built) {
  Dresser(windows, box, inHalves, built).make();
}

}  // namespace creasewright
