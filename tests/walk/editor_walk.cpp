#include "walk/editor_walk.h"

#include <QUndoStack>
#include <algorithm>
#include <functional>

#include "bridge/problem_text.h"
#include "commands/edits.h"
#include "document/design_file.h"
#include "scene/net_pull.h"
#include "session/design_session.h"
#include "styles/registry.h"
#include "support/random_edit.h"

namespace creasewright::testing {
namespace {

constexpr std::size_t kMostEdits = 12;  // more make every step slow and find no more
constexpr std::size_t kMostFaults = 20;
constexpr const char* kProducts[] = {"box:60x35x120mm", "box:90x50x70mm", "box:40x40x40mm",
                                     "cylinder:60x80mm", "box:120x80x20mm"};

class Walk {
 public:
  Walk(Random& random, std::string folder) : random_(random), folder_(std::move(folder)) {
    remember();
  }

  void step(int number) {
    number_ = number;
    struct Action {
      const char* name;
      int weight;
      std::function<void()> act;
    };
    const std::vector<Action> actions{
        {"drag", 10, [this] { drag(); }},      {"type", 10, [this] { type(); }},
        {"add", 20, [this] { add(); }},        {"change", 10, [this] { change(); }},
        {"reorder", 6, [this] { reorder(); }}, {"switch off", 6, [this] { switchOff(); }},
        {"delete", 12, [this] { remove(); }},  {"undo", 12, [this] { go(-1); }},
        {"redo", 8, [this] { go(1); }},        {"save", 3, [this] { save(); }},
        {"load", 2, [this] { load(); }},       {"product", 3, [this] { product(); }},
        {"style", 2, [this] { style(); }}};
    int all = 0;
    for (const Action& action : actions) all += action.weight;
    int draw = random_.whole(0, all - 1);
    for (const Action& action : actions) {
      draw -= action.weight;
      if (draw >= 0) continue;
      name_ = action.name;
      action.act();
      ++report_.actions[name_];
      break;
    }
    check();
  }

  /// All of the history back and forth.
  void finish() {
    name_ = "all undone";
    QUndoStack& history = session_.history();
    while (history.canRedo()) history.redo();
    const std::string last = bytes();
    while (history.canUndo()) history.undo();
    expect(bytes() == states_.at(0), "undoing all gives other bytes");
    while (history.canRedo()) history.redo();
    expect(bytes() == last, "redoing all gives other bytes");
  }

  WalkReport report() { return std::move(report_); }

 private:
  const Design& design() const { return session_.design(); }
  std::string bytes() const { return writeDesign(design()); }
  std::size_t pick(std::size_t count) {
    return static_cast<std::size_t>(random_.whole(0, static_cast<int>(count) - 1));
  }

  void expect(bool holds, const std::string& what) {
    if (holds || report_.faults.size() >= kMostFaults) return;
    report_.faults.push_back(std::to_string(number_) + " " + name_ + ": " + what);
  }

  /// What undoing must come back to.
  void remember() {
    const int now = session_.history().index();
    states_[now] = bytes();
    // A change that changes nothing leaves what can be done again.
    states_.erase(states_.upper_bound(session_.history().count()), states_.end());
  }

  void check() {
    const Result<Design> read = readDesign(bytes(), "walk");
    expect(read.ok(), "the file cannot be read");
    if (read) expect(*read == design(), "the file gives another design");
    for (const Problem& problem : session_.problems())
      expect(!problemSentence(problem, Unit::Millimetre).isEmpty(),
             "no words for " + std::string(codeName(problem.code)));
    if (!session_.isCurrent()) {
      expect(!session_.problems().empty(), "not built, and nothing says why");
      return;
    }
    for (const auto& [index, problem] : session_.built().brokenEdits)
      expect(static_cast<std::size_t>(index) < design().edits.size(), "a broken edit that is none");
  }

  /// Puts other edits in place, and finds them there.
  void setEdits(std::vector<Edit> edits) {
    const std::vector<Edit> wanted = edits;
    changeEdits(session_, std::move(edits), QStringLiteral("walk"));
    expect(design().edits == wanted, "an edit is lost");
    remember();
  }

  void drag() {
    if (!session_.isCurrent()) return;
    const BuiltPiece& piece = session_.built().pieces.front();
    const Panel& panel = piece.net.panels[pick(piece.net.panels.size())];
    const auto corners = static_cast<int>(panel.outline.size());
    const auto edge = static_cast<int>(pick(panel.outline.size()));
    std::vector<Movable> things{Handle{0, panel.id, edge, corners}};
    if (random_.whole(0, 1) == 1)  // by the corner at its end
      things.push_back(Handle{0, panel.id, (edge + 1) % corners, corners});
    auto pull = NetPull::take(session_, things);
    if (!pull) return;
    const std::vector<Edit> edits = design().edits;
    const Point way{random_.between(-15, 15), random_.between(-15, 15)};
    for (const double share : {0.5, 1.0})
      pull->moveTo(way * share, {random_.whole(0, 4) == 0, random_.whole(0, 4) == 0});
    if (random_.whole(0, 3) == 0) pull->chooseAll();
    expect(design().edits == edits, "a pull changed the edits");
    remember();
  }

  void type() {
    const std::vector<ParameterSpec>& specs = (*findStyle(design().styleId))->parameters;
    const ParameterSpec& spec = specs[pick(specs.size())];
    std::int64_t raw = random_.whole(0, 3);
    if (spec.kind == ParameterKind::Length)  // now and then beyond what can be
      raw = Length::mm(random_.whole(0, 9) == 0
                           ? random_.between(0, 900)
                           : design().parameters.mm(spec.key) * random_.between(0.8, 1.3))
                .nm();
    if (spec.kind == ParameterKind::Flag) raw = random_.whole(0, 1);
    changeParameter(session_, spec.key, raw);
    remember();
  }

  /// Tries a few edits until one can be made; now and then a broken one stays.
  void add() {
    for (int tries = 0; tries < 5; ++tries) {
      if (!session_.isCurrent() || design().edits.size() >= kMostEdits) return;
      std::vector<Edit> edits = design().edits;
      edits.push_back(randomEdit(random_, session_.built()));
      const std::string kind = edits.back().kind;
      const int index = static_cast<int>(edits.size()) - 1;
      setEdits(std::move(edits));
      const bool broken = session_.built().brokenEdits.contains(index);
      ++(broken ? report_.told : report_.made)[kind];
      if (!broken || random_.whole(0, 9) == 0) return;
      session_.history().undo();
      expect(bytes() == states_.at(session_.history().index()), "undo gives other bytes");
    }
  }

  void change() {
    std::vector<Edit> edits = design().edits;
    if (edits.empty()) return;
    Edit& edit = edits[pick(edits.size())];
    const EditKind& kind = **findEditKind(edit.kind);
    if (kind.measures.empty()) return;
    const EditMeasure& measure = kind.measures[pick(kind.measures.size())];
    static const std::vector<std::string> kTexts{"3 mm",  "panel-width / 5", "2",     "brim",
                                                 "1 / 0", "this-width / 2",  "Heart", "0.5 in"};
    edit.measures[std::string(measure.key)] = kTexts[pick(kTexts.size())];
    setEdits(std::move(edits));
  }

  void reorder() {
    std::vector<Edit> edits = design().edits;
    if (edits.size() < 2) return;
    std::swap(edits[pick(edits.size())], edits[pick(edits.size())]);
    setEdits(std::move(edits));
  }

  void switchOff() {
    std::vector<Edit> edits = design().edits;
    if (edits.empty()) return;
    Edit& edit = edits[pick(edits.size())];
    edit.on = !edit.on;
    setEdits(std::move(edits));
  }

  void remove() {
    std::vector<Edit> edits = design().edits;
    if (edits.empty()) return;
    edits.erase(edits.begin() + static_cast<std::ptrdiff_t>(pick(edits.size())));
    setEdits(std::move(edits));
  }

  void go(int way) {
    QUndoStack& history = session_.history();
    for (int times = random_.whole(1, 4); times > 0; --times) {
      way < 0 ? history.undo() : history.redo();
      const auto state = states_.find(history.index());
      expect(state != states_.end() && bytes() == state->second,
             "the history gives other bytes at " + std::to_string(history.index()));
    }
  }

  [[nodiscard]] QString path() const { return QString::fromStdString(folder_ + "/walk.cwdesign"); }

  void save() {
    expect(!session_.saveAs(path()), "cannot be saved");
    saved_ = design();
  }

  void load() {
    if (!saved_) return;
    expect(!session_.open(path()), "cannot be opened");
    expect(design() == *saved_, "what was saved is not what is read");
    states_.clear();
    remember();
  }

  void product() {
    const std::vector<Edit> edits = design().edits;
    changeProduct(session_, *parseProduct(kProducts[pick(std::size(kProducts))]));
    expect(design().edits == edits, "another product lost an edit");
    remember();
  }

  void style() {
    const std::vector<Edit> edits = design().edits;
    changeStyle(session_, styles()[pick(styles().size())].id);
    expect(design().edits == edits, "another style lost an edit");
    remember();
  }

  Random& random_;
  std::string folder_;
  DesignSession session_;
  std::map<int, std::string> states_;  ///< by the history's index: the bytes there
  std::optional<Design> saved_;
  WalkReport report_;
  std::string name_ = "start";
  int number_ = 0;
};

}  // namespace

WalkReport walkEditor(int actions, Random& random, const std::string& folder) {
  Walk walk(random, folder);
  for (int i = 1; i <= actions; ++i) walk.step(i);
  walk.finish();
  return walk.report();
}

}  // namespace creasewright::testing
