#include "cutting/fewer_settings.h"

#include <algorithm>
#include <array>
#include <bit>
#include <deque>
#include <map>
#include <set>

#include "cutting/cut_tree.h"
#include "cutting/trim_steps.h"

namespace creasewright {
namespace {

constexpr Length kLeastKept = Length::nanometres(30'000'000);  // a side of an offcut
constexpr std::array<int, 3> kSummed{1, 2, 4};                 // blanks across a strip
constexpr std::size_t kMostPartKinds = 12;
constexpr std::size_t kMostBlankSets = 3'000;      // of blanks
constexpr double kRestTry = 30;                    // steps
constexpr std::array<bool, 2> kWays{true, false};  // upright cuts, level ones

/// A blank or the offcut that is kept, in nanometres.
struct PartKind {
  int demand = -1;  ///< -1 = the offcut: whatever is as large will do
  std::int64_t width = 0;
  std::int64_t height = 0;
  bool mayTurn = false;
  int count = 0;
};

/// Some of the blanks, as counts by kind in one number.
using Set = int;

/// What is left of a part that is being cut: `length` in the direction in which strips come off it.
struct Rest {
  std::int64_t length = 0;
  std::int64_t across = 0;
  std::int64_t before = 0;  ///< what the strip before measures; 0 = nothing is cut off yet
  Set set = 0;
  bool upright = false;
  bool strips = false;  ///< what came off before is cut further
  bool operator==(const Rest&) const = default;
};

struct RestHash {
  std::size_t operator()(const Rest& rest) const {
    std::size_t hash =
        static_cast<std::size_t>(rest.set) * 4 + (rest.upright ? 2 : 0) + (rest.strips ? 1 : 0);
    for (const std::int64_t value : {rest.length, rest.across, rest.before})
      hash = (hash ^ static_cast<std::size_t>(value)) * 0x9E3779B97F4A7C15U;
    return hash;
  }
};

/// What is cut off a rest next: `times` strips of `width`, each with the blanks of `set`. No times:
/// the rest itself is what is left over, a blank, or cut the other way.
struct Move {
  std::int64_t width = 0;
  Set set = 0;
  int times = 0;
};

/// The least effort for a rest, or what is known not to do.
struct Known {
  std::optional<TrimEffort> least;
  int tooFew = -1;  ///< settings
  Move move;
};

/// What is known of each rest. Half of the search is looking it up: the places are small, and tell
/// most rests apart by themselves.
class KnownRests {
 public:
  /// nullptr where nothing is known.
  [[nodiscard]] const Known* find(const Rest& rest) const {
    const Place& place = places_[placeOf(rest, RestHash{}(rest))];
    return place.entry == kNone ? nullptr : &entries_[place.entry].second;
  }

  void put(const Rest& rest, const Known& known) {
    const std::size_t hash = RestHash{}(rest);
    Place& place = places_[placeOf(rest, hash)];
    if (place.entry != kNone) {
      entries_[place.entry].second = known;
      return;
    }
    place = {tagOf(hash), static_cast<std::uint32_t>(entries_.size())};
    entries_.emplace_back(rest, known);
    if (entries_.size() * 2 > places_.size()) grow();
  }

 private:
  static constexpr std::uint32_t kNone = 0xFFFFFFFFU;
  struct Place {
    std::uint32_t tag = 0;
    std::uint32_t entry = kNone;
  };

  static std::uint32_t tagOf(std::size_t hash) { return static_cast<std::uint32_t>(hash); }

  /// Where a rest is, or where it would be put. The upper bits of the hash are the better ones.
  [[nodiscard]] std::size_t placeOf(const Rest& rest, std::size_t hash) const {
    const std::size_t last = places_.size() - 1;
    std::size_t at = (hash >> 32U) & last;
    while (places_[at].entry != kNone &&
           (places_[at].tag != tagOf(hash) || entries_[places_[at].entry].first != rest))
      at = (at + 1) & last;
    return at;
  }

  void grow() {
    places_.assign(places_.size() * 2, {});
    for (std::size_t i = 0; i < entries_.size(); ++i) {
      const std::size_t hash = RestHash{}(entries_[i].first);
      places_[placeOf(entries_[i].first, hash)] = {tagOf(hash), static_cast<std::uint32_t>(i)};
    }
  }

  std::vector<Place> places_ = std::vector<Place>(1024);  // as many as a power of two
  std::deque<std::pair<Rest, Known>> entries_;
};

class SettingsSearch {
 public:
  SettingsSearch(const CutNode& sheet, std::vector<PartKind> kinds, int summed, Work& work)
      : sheet_(sheet), kinds_(std::move(kinds)), summed_(summed), work_(work) {}

  /// False: too many sets of blanks.
  bool number() {
    std::size_t sets = 1;
    for (const PartKind& kind : kinds_) {
      places_.push_back(static_cast<int>(sets));
      sets *= static_cast<std::size_t>(kind.count) + 1;
      if (sets > kMostBlankSets) return false;
    }
    std::vector<int> counts(kinds_.size(), 0);
    for (std::size_t i = 0; i < sets; ++i) {
      addSet(counts);
      for (std::size_t k = 0; k < counts.size() && ++counts[k] > kinds_[k].count; ++k)
        counts[k] = 0;
    }
    return true;
  }

  std::optional<CutNode> run(int mostSettings) {
    const Set all = static_cast<Set>(sets_.size()) - 1;
    const std::int64_t width = sheet_.width.nm();
    const std::int64_t height = sheet_.height.nm();
    for (int settings = 1; settings <= mostSettings && !over_; ++settings) {
      std::optional<TrimEffort> least;
      bool way = false;
      for (const bool upright : kWays) {
        const auto found = solve(whole(width, height, all, upright), settings);
        if (!found || (least && *least <= *found)) continue;
        least = found;
        way = upright;
      }
      if (!over_ && least) return build(whole(width, height, all, way), sheet_);
    }
    return std::nullopt;
  }

 private:
  struct SetFacts {
    std::vector<int> counts;  // by kind
    int blanks = 0;           // without the offcut
    int fewestSettings = 0;
    std::uint32_t kinds = 0;  // bits, without the offcut
    double area = 0;
    // What a part must measure at least: for those that may not be turned, and for the others.
    std::int64_t width = 0;
    std::int64_t height = 0;
    std::int64_t shorter = 0;
    std::int64_t longer = 0;
    std::array<const std::vector<std::int64_t>*, 2> sums{};  // level, upright; once they are asked
  };

  /// A setting parts one kind off, and the last is left over; strips that come off with one setting
  /// take one each at least, which parts two.
  static int fewestFor(std::uint32_t kinds) {
    const int count = std::popcount(kinds);
    return count < 4 ? std::max(0, count - 1) : (count + 2) / 2;
  }

  void addSet(const std::vector<int>& counts) {
    SetFacts facts;
    facts.counts = counts;
    for (std::size_t k = 0; k < counts.size(); ++k) {
      const PartKind& kind = kinds_[k];
      facts.area += static_cast<double>(kind.width) * static_cast<double>(kind.height) * counts[k];
      if (counts[k] == 0) continue;
      if (kind.mayTurn) {
        facts.shorter = std::max(facts.shorter, std::min(kind.width, kind.height));
        facts.longer = std::max(facts.longer, std::max(kind.width, kind.height));
      } else {
        facts.width = std::max(facts.width, kind.width);
        facts.height = std::max(facts.height, kind.height);
      }
      if (kind.demand < 0) continue;
      facts.blanks += counts[k];
      facts.kinds |= 1U << k;
    }
    facts.fewestSettings = facts.blanks < 2 ? 0 : std::max(1, fewestFor(facts.kinds));
    sets_.push_back(std::move(facts));
  }

  /// What a part may measure that holds a set.
  const std::vector<std::int64_t>& sumsFor(Set set, bool upright) {
    SetFacts& facts = sets_[static_cast<std::size_t>(set)];
    const std::vector<std::int64_t>*& sums = facts.sums[upright ? 1 : 0];
    if (sums != nullptr) return *sums;
    std::uint64_t which = upright ? 1 : 0;
    int all = 0;
    for (std::size_t k = 0; k < facts.counts.size(); ++k) {
      if (facts.counts[k] > 0) which |= std::uint64_t{2} << k;
      all += facts.counts[k];
    }
    const int terms = std::min(all, summed_);
    const auto [known, added] = sums_.try_emplace({which, terms});
    if (added) known->second = sumsOf(facts.counts, upright, terms);
    sums = &known->second;
    return *sums;
  }

  [[nodiscard]] std::vector<std::int64_t> sumsOf(const std::vector<int>& counts, bool upright,
                                                 int terms) const {
    const std::int64_t most = (upright ? sheet_.width : sheet_.height).nm();
    std::set<std::int64_t> sums{0};
    for (int n = 0; n < terms; ++n) {
      const std::set<std::int64_t> before = sums;
      for (std::size_t k = 0; k < counts.size(); ++k) {
        if (counts[k] == 0) continue;
        const PartKind& kind = kinds_[k];
        for (const std::int64_t sum : before) {
          sums.insert(std::min(most, sum + (upright ? kind.width : kind.height)));
          if (kind.mayTurn) sums.insert(std::min(most, sum + (upright ? kind.height : kind.width)));
        }
      }
    }
    return {std::next(sums.begin()), sums.end()};
  }

  [[nodiscard]] const SetFacts& of(Set set) const { return sets_[static_cast<std::size_t>(set)]; }

  static Rest whole(std::int64_t width, std::int64_t height, Set set, bool upright) {
    return {upright ? width : height, upright ? height : width, 0, set, upright, false};
  }

  /// Whether each of a set fits a part by itself, and all of them by their area.
  [[nodiscard]] bool mayHold(std::int64_t width, std::int64_t height, Set set) const {
    const SetFacts& facts = of(set);
    if (facts.area > static_cast<double>(width) * static_cast<double>(height)) return false;
    return facts.width <= width && facts.height <= height &&
           facts.shorter <= std::min(width, height) && facts.longer <= std::max(width, height);
  }

  /// The kind of a set of one blank that is just as large as a part; -1 where it is not.
  [[nodiscard]] int blankOf(std::int64_t width, std::int64_t height, Set set) const {
    const SetFacts& facts = of(set);
    if (facts.blanks != 1) return -1;
    for (std::size_t k = 0; k < kinds_.size(); ++k) {
      const PartKind& kind = kinds_[k];
      if (facts.counts[k] == 0) continue;
      if (kind.demand < 0) return -1;
      if ((kind.width == width && kind.height == height) ||
          (kind.mayTurn && kind.height == width && kind.width == height))
        return static_cast<int>(k);
    }
    return -1;
  }

  static std::int64_t widthOf(const Rest& rest) { return rest.upright ? rest.length : rest.across; }
  static std::int64_t heightOf(const Rest& rest) {
    return rest.upright ? rest.across : rest.length;
  }

  /// What it takes to make a strip into its blanks.
  std::optional<TrimEffort> inside(std::int64_t width, std::int64_t across, Set set, bool upright,
                                   int settings) {
    const Rest strip{across, width, 0, set, !upright, false};
    if (blankOf(widthOf(strip), heightOf(strip), set) >= 0) return TrimEffort{};
    return solve(strip, settings);
  }

  /// The least effort with at most so many settings.
  std::optional<TrimEffort> solve(const Rest& rest, int settings) {
    if (over_ || !mayHold(widthOf(rest), heightOf(rest), rest.set)) return std::nullopt;
    if (of(rest.set).blanks == 0) return TrimEffort{};
    if (settings < of(rest.set).fewestSettings) return std::nullopt;
    if (const Known* known = known_.find(rest); known != nullptr) {
      if (known->least) return known->least->settings <= settings ? known->least : std::nullopt;
      if (settings <= known->tooFew) return std::nullopt;
    }
    Known found;
    tryAll(rest, settings, found);
    if (over_) return std::nullopt;
    if (!found.least) found.tooFew = settings;
    known_.put(rest, found);
    return found.least;
  }

  void tryAll(const Rest& rest, int settings, Known& found) {
    if (rest.before > 0)
      take(inside(rest.length, rest.across, rest.set, rest.upright, settings), {}, settings, found);
    if (settings == 0 && !rest.strips) return;
    const SetFacts& all = of(rest.set);
    std::vector<int> counts(kinds_.size(), 0);
    while (nextWithin(all.counts, counts)) {
      Set set = 0;
      for (std::size_t k = 0; k < counts.size(); ++k) set += counts[k] * places_[k];
      const SetFacts& facts = of(set);
      if (facts.blanks == 0) continue;
      const std::int64_t most =
          rest.before > 0 ? std::min(rest.before, rest.length) : rest.length - 1;
      for (const std::int64_t width : sumsFor(set, rest.upright)) {
        if (width > most) break;
        if (width != rest.before) tryStrips(rest, {width, set, 0}, settings, found);
      }
      if (rest.before > 0 && rest.before <= most)
        tryStrips(rest, {rest.before, set, 0}, settings, found);
      if (over_) return;
    }
  }

  static bool nextWithin(const std::vector<int>& limit, std::vector<int>& counts) {
    for (std::size_t k = 0; k < counts.size(); ++k) {
      if (++counts[k] <= limit[k]) return true;
      counts[k] = 0;
    }
    return false;
  }

  void tryStrips(const Rest& rest, Move move, int settings, Known& found) {
    over_ = !work_.add(kRestTry) || over_;
    const std::int64_t width = rest.upright ? move.width : rest.across;
    const std::int64_t height = rest.upright ? rest.across : move.width;
    if (over_ || !mayHold(width, height, move.set)) return;
    const bool blank = blankOf(width, height, move.set) >= 0;
    const bool again = rest.strips && !blank && move.width == rest.before;
    const int own = again ? 0 : 1;
    const std::uint32_t others = of(rest.set).kinds & ~of(move.set).kinds;
    if (own + of(move.set).fewestSettings + fewestFor(others) > settings) return;
    const auto each = inside(move.width, rest.across, move.set, rest.upright, settings - own);
    if (!each) return;
    Rest left = rest;
    left.before = move.width;
    left.strips = !blank;
    Set part = move.set;
    for (int times = 1; left.length >= move.width && isPart(part, left.set); ++times) {
      left.length -= move.width;
      left.set -= part;
      part = blanksOnly(move.set);
      move.times = times;
      TrimEffort effort{own + each->settings, times + times * each->cuts};
      if (left.length == 0) {
        // The last one needs no cut; a single one is what is left, and was tried as that.
        if (left.set == 0 && (times > 1 || again)) {
          --effort.cuts;
          take(effort, move, settings, found);
        }
        return;
      }
      const auto further = solve(left, settings - effort.settings);
      if (!further) continue;
      take(TrimEffort{effort.settings + further->settings, effort.cuts + further->cuts}, move,
           settings, found);
    }
  }

  /// Of strips that are cut alike each has room for the offcut, if one has.
  [[nodiscard]] Set blanksOnly(Set set) const {
    const bool hasOffcut = kinds_.back().demand < 0 && of(set).counts.back() > 0;
    return hasOffcut ? set - places_.back() : set;
  }

  [[nodiscard]] bool isPart(Set part, Set whole) const {
    const std::vector<int>& counts = of(part).counts;
    const std::vector<int>& all = of(whole).counts;
    for (std::size_t k = 0; k < counts.size(); ++k)
      if (counts[k] > all[k]) return false;
    return true;
  }

  static void take(const std::optional<TrimEffort>& effort, const Move& move, int settings,
                   Known& found) {
    if (!effort || effort->settings > settings || (found.least && *found.least <= *effort)) return;
    found.least = effort;
    found.move = move;
  }

  /// The part of `frame` that a rest is, cut as it was found.
  [[nodiscard]] CutNode build(const Rest& rest, const CutNode& frame) const {
    if (of(rest.set).blanks == 0) return frame;
    const Move& move = known_.find(rest)->move;
    if (move.times == 0) return buildInside(rest, rest.length, rest.set, frame);
    CutNode node = frame;
    CutNode* part = &node;
    Rest left = rest;
    left.before = move.width;
    left.strips = false;
    for (int i = 0; i < move.times; ++i) {
      left.length -= move.width;
      left.set -= i == 0 ? move.set : blanksOnly(move.set);
      if (left.length == 0) {
        *part = buildInside(rest, move.width, move.set, *part);
        return node;
      }
      *part = cutAt(*part, rest.upright, Length::nanometres(move.width));
      part->parts[0] = buildInside(rest, move.width, move.set, part->parts[0]);
      part = &part->parts[1];
    }
    left.strips = frameIsCut(rest, move);
    *part = build(left, *part);
    return node;
  }

  [[nodiscard]] bool frameIsCut(const Rest& rest, const Move& move) const {
    const std::int64_t width = rest.upright ? move.width : rest.across;
    const std::int64_t height = rest.upright ? rest.across : move.width;
    return blankOf(width, height, move.set) < 0;
  }

  [[nodiscard]] CutNode buildInside(const Rest& rest, std::int64_t width, Set set,
                                    const CutNode& frame) const {
    const int kind = blankOf(frame.width.nm(), frame.height.nm(), set);
    if (kind < 0) return build({rest.across, width, 0, set, !rest.upright, false}, frame);
    const PartKind& blank = kinds_[static_cast<std::size_t>(kind)];
    return blankIn(frame, frame.width, frame.height, blank.demand,
                   blank.width != frame.width.nm() || blank.height != frame.height.nm());
  }

  const CutNode sheet_;  // uncut
  std::vector<PartKind> kinds_;
  int summed_;  // blanks across a strip at most
  Work& work_;
  std::vector<int> places_;  // by how much a set's number grows with one more of a kind
  std::vector<SetFacts> sets_;
  std::map<std::pair<std::uint64_t, int>, std::vector<std::int64_t>> sums_;  // by kinds and terms
  KnownRests known_;
  bool over_ = false;
};

/// The blanks of a sheet, and its largest offcut.
std::vector<PartKind> kindsOf(const CutNode& sheet, const std::vector<BlankDemand>& demands,
                              bool turnOffcut) {
  std::vector<PartKind> kinds;
  const std::vector<int> counts = blanksOf({0, 1, sheet}, demands.size());
  for (std::size_t d = 0; d < demands.size(); ++d)
    if (counts[d] > 0)
      kinds.push_back({static_cast<int>(d), demands[d].width.nm(), demands[d].height.nm(),
                       demands[d].mayTurn, counts[d]});
  const std::vector<Offcut> offcuts = offcutsOf({0, 1, sheet}, kLeastKept);
  if (!offcuts.empty())
    kinds.push_back({-1, offcuts.front().width.nm(), offcuts.front().height.nm(), turnOffcut, 1});
  return kinds;
}

}  // namespace

TrimEffort trimEffort(const CutNode& sheet) {
  TrimEffort effort;
  for (const TrimStep& step : trimSteps({0, 1, sheet})) {
    ++effort.settings;
    effort.cuts += static_cast<int>(step.lines.size());
  }
  return effort;
}

std::optional<CutNode> fewerSettings(const CutNode& sheet, const std::vector<BlankDemand>& demands,
                                     bool turnOffcut, Work& work) {
  std::optional<CutNode> best;
  TrimEffort least = trimEffort(sheet);
  CutNode uncut;
  uncut.width = sheet.width;
  uncut.height = sheet.height;
  const std::vector<PartKind> kinds = kindsOf(sheet, demands, turnOffcut);
  if (kinds.size() > kMostPartKinds) return std::nullopt;
  auto left = static_cast<double>(kSummed.size());
  for (const int summed : kSummed) {
    const WorkShare share(work, work.left() / left--);
    SettingsSearch search(uncut, kinds, summed, work);
    if (least.settings < 2 || !search.number()) break;
    std::optional<CutNode> found = search.run(least.settings);
    if (!found || trimEffort(*found) >= least) continue;
    least = trimEffort(*found);
    best = std::move(found);
  }
  return best;
}

}  // namespace creasewright
