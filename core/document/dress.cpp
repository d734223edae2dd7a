#include "document/dress.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <optional>
#include <utility>

#include "extras/hanging.h"
#include "extras/hosting.h"
#include "extras/place_measures.h"
#include "extras/ribbon_way.h"
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

bool isCovered(const Problems& problems) {
  return std::ranges::any_of(
      problems, [](const Problem& p) { return p.code == ProblemCode::ExtraCovered; });
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
  double height = 0;  ///< mm over the box, where it stands out from it
  bool foam = false;
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
    bool again = false;
    for (std::size_t i = 0; i < extras().size(); ++i) {
      if (!hidden(i)) continue;
      hosts_[i] = kOnBox;
      again = true;
    }
    if (again) makeAll();
    addAll();
  }

 private:
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
    if (hostAt(i) >= 0) {
      const Turn host = turnOf(static_cast<std::size_t>(hostAt(i)));
      return host == Turn::OnBox ? host : Turn::Outermost;
    }
    const bool onBox = hostAt(i) == kOnBox || kind->carriers == std::vector{Carrier::Box};
    return onBox || kind->onEveryFace ? Turn::OnBox : Turn::Outermost;
  }

  void makeAll() {
    made_.assign(extras().size(), {});
    taken_.assign(extras().size(), {});
    takenOnBox_.clear();
    raised_.clear();
    for (const Turn turn : {Turn::OnBox, Turn::Wrap, Turn::Ribbon, Turn::Outermost})
      for (std::size_t i = 0; i < extras().size(); ++i)
        if (turnOf(i) == turn) makeWithHost(i);
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

  void makeOne(std::size_t i, int host) {
    const auto window = windows_.find(static_cast<int>(i));
    if (window != windows_.end()) return keep(i, kOnBox, window->second);
    if (host != kOutermost) return keep(i, host, partsOn(i, host));
    if (kindAt(i)->runs) {
      const int under = outermostWrap();
      return keep(i, under, partsOn(i, under));
    }
    // The outermost that has a good place for it.
    for (const int each : outermostFirst(i)) {
      Result<ExtraParts> parts = partsOn(i, each);
      if (each == kOnBox || (parts && !isCovered(parts->warnings))) {
        const int on = onLabels(i, each, parts);
        return keep(i, on, std::move(parts));
      }
    }
    keep(i, kOnBox, Problem{ProblemCode::ExtraNoPlace, extras()[i].kind, {}});
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
    for (const bool ofCard : {false, true})
      for (std::size_t k = extras().size(); k-- > 0;) {
        const ExtraKind* host = kindAt(k);
        if (k == i || host == nullptr || !host->runs || !made_[k].there) continue;
        if (host->ofCard == ofCard && mayCarry(*host, kind)) hosts.push_back(static_cast<int>(k));
      }
    if (mayLieOnBox(kind)) hosts.push_back(kOnBox);
    return hosts;
  }

  /// What goes round the box as the last so far, of card.
  [[nodiscard]] int outermostWrap() const {
    int last = kOnBox;
    for (std::size_t k = 0; k < made_.size(); ++k)
      if (made_[k].there && made_[k].body) last = static_cast<int>(k);
    return last;
  }

  [[nodiscard]] Result<ExtraParts> partsOn(std::size_t i, int host) const {
    Extra extra = extras()[i];
    const ExtraKind& kind = *kindAt(i);
    if (kind.runs && !kind.ofCard && carriesBow(i)) extra.parameters.set("bow", Length::mm(20));
    if (kind.runs) return partsOf(extra, wrapHost(host));
    if (host == kOnBox) return partsOf(extra, boxHost());
    return partsOf(extra, guestHost(extra, static_cast<std::size_t>(host)));
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
    const bool round = kindAt(h)->runs != nullptr;
    for (const WrapRound& wrap : box_.wraps)
      if (!round || isAbove(wrap.kind, h)) host.wraps.push_back(wrap);
    if (!made_[h].pieces.empty()) {
      const BuiltPiece& top = made_[h].pieces[carrying(h)];
      host.pieces.push_back({&top, &top.folded, {}, placeOf(h, top)});
    }
    if (const auto side = sideOf(guest.face)) host.side = *side;
    return host;
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
    const FacePlace& face = role.faces.front();
    const int host = made_[extra].host;
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
      made.problems = {{ProblemCode::ExtraNoPlace, extras()[i].kind, {}}};
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

  /// What stands out from the box itself, through all that it lies on.
  void raise(std::size_t i, Raised raised) {
    const int host = made_[i].host;
    if (host >= 0) {
      const auto h = static_cast<std::size_t>(host);
      const std::optional<Transform> place = placeOf(h, made_[h].pieces[carrying(h)]);
      if (made_[h].body || !place) return;
      raised.out = place->turn(raised.out);
      for (Point3& corner : raised.corners) corner = place->apply(corner);
      raised.height += made_[h].height;
      raised.foam = raised.foam || made_[h].foam;
    }
    made_[i].height = raised.height;
    made_[i].foam = raised.foam;
    raised_.push_back(std::move(raised));
  }

  void makePiece(std::size_t i, ExtraPiece added) {
    Made& made = made_[i];
    BuiltPiece piece = buildPiece(std::move(added.part), added.card.value_or(extras()[i].card),
                                  built_.design, made.problems);
    piece.role = ExtraRole{static_cast<int>(i), added.placing, std::move(added.faces),
                           added.around,        made.host,     added.layer};
    made.pieces.push_back(std::move(piece));
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

  /// What hangs on a ribbon, where that leaves it room.
  void hangTags() {
    for (const RibbonNeed& ribbon : built_.ribbons)
      for (int extra = 0; extra < static_cast<int>(made_.size()); ++extra) {
        std::vector<BuiltPiece*> pieces;
        std::vector<const Panel*> layers;
        for (BuiltPiece& piece : built_.pieces) {
          const auto& role = piece.role;
          if (!role || role->extra != extra || role->host != ribbon.extra) continue;
          if (role->placing != Placing::Hanging) continue;
          pieces.push_back(&piece);
          layers.push_back(&piece.net.panels.front());
        }
        const std::vector<Transform> places = hangingOn(ribbon, layers);
        for (std::size_t i = 0; i < places.size(); ++i) pieces[i]->role->around = places[i];
      }
  }

  /// Bows where ribbons cross.
  void placeBows() {
    for (RibbonNeed& bow : built_.ribbons) {
      if (!bow.shape || bow.shape->face) continue;
      const int host = made_[static_cast<std::size_t>(bow.extra)].host;
      for (const RibbonNeed& ribbon : built_.ribbons)
        if (ribbon.extra == host) bow.shape->crossing = crossingOf(ribbon);
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
  std::vector<Raised> raised_;
};

}  // namespace

Result<ExtraParts> partsOf(const Extra& extra, const Host& host) {
  const Result<const ExtraKind*> kind = findExtraKind(extra.kind);
  if (!kind) return kind.problem();
  const Problems limits =
      checkLimits(extra.kind, (*kind)->parameters, extra.parameters, host.benchOf(extra));
  if (!limits.empty()) return limits.front();
  return (*kind)->build(extra, host);
}

void dress(const CutWindows& windows, const Host& box, bool inHalves, BuiltDesign& built) {
  Dresser(windows, box, inHalves, built).make();
}

}  // namespace creasewright
