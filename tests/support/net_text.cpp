#include "support/net_text.h"

#include <array>
#include <charconv>
#include <cmath>
#include <sstream>

namespace creasewright {
namespace {

constexpr std::array<std::string_view, 4> kMethods{"glue", "tuck", "lock", "rest"};
constexpr std::array<std::string_view, 3> kKinds{"score", "perforated", "flat"};

template <std::size_t N>
std::optional<int> indexIn(const std::array<std::string_view, N>& names, std::string_view name) {
  for (std::size_t i = 0; i < N; ++i)
    if (names.at(i) == name) return static_cast<int>(i);
  return std::nullopt;
}

std::string number(double value) {
  const double rounded = std::round(value * 1e6) / 1e6;
  std::array<char, 40> text{};
  const auto end =
      std::to_chars(text.data(), text.data() + text.size(), rounded + 0.0, std::chars_format::fixed)
          .ptr;
  return {text.data(), end};
}

std::string points(const Polyline& line) {
  std::string text;
  for (const Point& p : line) text += " " + number(p.x) + "," + number(p.y);
  return text;
}

std::optional<double> toNumber(std::string_view text) {
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(value))
    return std::nullopt;
  return value;
}

std::optional<Point> toPoint(std::string_view text) {
  const auto comma = text.find(',');
  if (comma == std::string_view::npos) return std::nullopt;
  const auto x = toNumber(text.substr(0, comma));
  const auto y = toNumber(text.substr(comma + 1));
  if (!x || !y) return std::nullopt;
  return Point{*x, *y};
}

std::vector<std::string> words(const std::string& line) {
  std::istringstream stream(line);
  std::vector<std::string> found;
  for (std::string word; stream >> word;) found.push_back(word);
  return found;
}

/// Reads line by line into a net; each item returns whether it could be read.
class Reader {
 public:
  bool read(const std::vector<std::string>& w) {
    if (w[0] == "stage") return readStage(w);
    if (w[0] == "panel") return readPanel(w);
    if (w[0] == "opening") return readOpening(w);
    if (w[0] == "crease") return readCrease(w);
    if (w[0] == "mate") return readMate(w);
    if (w[0] == "slit") return readSlit(w);
    return false;
  }
  Net net;

 private:
  static std::optional<Polyline> readPoints(const std::vector<std::string>& w, std::size_t from) {
    Polyline line;
    for (std::size_t i = from; i < w.size(); ++i) {
      const auto p = toPoint(w[i]);
      if (!p) return std::nullopt;
      line.push_back(*p);
    }
    return line;
  }

  bool readStage(const std::vector<std::string>& w) {
    if (w.size() != 2) return false;
    net.stages.push_back(w[1]);
    return true;
  }

  bool readPanel(const std::vector<std::string>& w) {
    const auto outline = readPoints(w, 2);
    if (!outline || outline->size() < 3) return false;
    Panel panel{w[1], *outline, {}, {}};
    for (std::size_t i = 0; i < outline->size(); ++i)
      panel.edges.push_back("e" + std::to_string(i));
    net.panels.push_back(std::move(panel));
    return true;
  }

  bool readOpening(const std::vector<std::string>& w) {
    const auto panel = w.size() > 4 ? net.find(w[1]) : std::nullopt;
    const auto ring = readPoints(w, 2);
    if (!panel || !ring) return false;
    net.panels[static_cast<std::size_t>(*panel)].openings.push_back(*ring);
    return true;
  }

  bool readCrease(const std::vector<std::string>& w) {
    if (w.size() < 8) return false;
    Crease crease;
    std::size_t next = 8;
    const auto says = [&](std::string_view word) {
      if (next >= w.size() || w[next] != word) return false;
      ++next;
      return true;
    };
    crease.loop = says("loop");
    crease.driven = !crease.loop && !says("follows");
    if (says("mountain")) crease.sense = Sense::Mountain;
    if (says("way"))
      for (; next < w.size(); ++next) {
        const auto point = toPoint(w[next]);
        if (!point) return false;
        crease.way.push_back({point->x, Angle::degrees(point->y)});
      }
    if (next != w.size()) return false;
    const auto parent = net.find(w[1]);
    const auto child = net.find(w[2]);
    const auto line = readPoints({w[3], w[4]}, 0);
    const auto angle = toNumber(w[5]);
    const auto stage = toNumber(w[6]);
    const auto kind = indexIn(kKinds, w[7]);
    if (!parent || !child || !line || !angle || !stage || !kind ||
        (*parent >= *child && !crease.loop))
      return false;
    crease.parent = *parent;
    crease.child = *child;
    crease.onParent = {(*line)[0], (*line)[1]};
    crease.angle = Angle::degrees(*angle);
    crease.stage = static_cast<int>(*stage);
    crease.kind = static_cast<CreaseKind>(*kind);
    net.creases.push_back(std::move(crease));
    return true;
  }

  bool readMate(const std::vector<std::string>& w) {
    if (w.size() < 6) return false;
    const bool staged = w.size() > 7 && w[6] == "stage";
    const auto stage = staged ? toNumber(w[7]) : std::optional<double>(0);
    const auto patch = readPoints(w, staged ? 8 : 6);
    const auto panel = net.find(w[1]);
    const auto onto = net.find(w[2]);
    const auto method = indexIn(kMethods, w[4]);
    const bool inside = w[3] == "inside";
    const bool rim = w[5] == "rim";
    if (!panel || !onto || !method || !patch || !stage || (!inside && w[3] != "outside") ||
        (!rim && w[5] != "inner"))
      return false;
    net.mates.push_back({*panel, *onto, inside ? Face::Inside : Face::Outside,
                         static_cast<Method>(*method), rim, *patch, static_cast<int>(*stage)});
    return true;
  }

  bool readSlit(const std::vector<std::string>& w) {
    const auto panel = w.size() > 3 ? net.find(w[1]) : std::nullopt;
    const auto line = readPoints(w, 2);
    if (!panel || !line) return false;
    net.slits.push_back({*panel, *line});
    return true;
  }
};

/// What a crease has besides its final angle.
std::string wayText(const Crease& crease) {
  std::string text;
  if (crease.angle.degrees() == 0 && !crease.isValley()) text += " mountain";
  if (crease.way.empty()) return text;
  text += " way";
  for (const Waypoint& point : crease.way)
    text += " " + number(point.after) + "," + number(point.angle.degrees());
  return text;
}

}  // namespace

std::string toText(const Net& net) {
  const auto name = [&net](int panel) { return net.panels[static_cast<std::size_t>(panel)].id; };
  std::string text;
  for (const std::string& stage : net.stages) text += "stage " + stage + "\n";
  for (const Panel& panel : net.panels) {
    text += "panel " + panel.id + points(panel.outline) + "\n";
    for (const Polygon& opening : panel.openings)
      text += "opening " + panel.id + points(opening) + "\n";
  }
  for (const Crease& c : net.creases)
    text += "crease " + name(c.parent) + " " + name(c.child) +
            points({c.onParent.a, c.onParent.b}) + " " + number(c.angle.degrees()) + " " +
            std::to_string(c.stage) + " " +
            std::string(kKinds.at(static_cast<std::size_t>(c.kind))) +
            (c.loop     ? " loop"
             : c.driven ? ""
                        : " follows") +
            wayText(c) + "\n";
  for (const Mate& m : net.mates)
    text += "mate " + name(m.panel) + " " + name(m.onto) +
            (m.face == Face::Inside ? " inside " : " outside ") +
            std::string(kMethods.at(static_cast<std::size_t>(m.method))) +
            (m.rim ? " rim" : " inner") +
            (m.stage > 0 ? " stage " + std::to_string(m.stage) : std::string()) + points(m.patch) +
            "\n";
  for (const Slit& slit : net.slits) text += "slit " + name(slit.panel) + points(slit.line) + "\n";
  return text;
}

Result<Net> netFromText(std::string_view text) {
  Reader reader;
  std::istringstream stream{std::string(text)};
  int number = 0;
  for (std::string line; std::getline(stream, line);) {
    ++number;
    const std::vector<std::string> w = words(line);
    if (w.empty() || w[0].starts_with('#')) continue;
    if (w.size() < 2 || !reader.read(w))
      return Problem{ProblemCode::FieldUnreadable, "line " + std::to_string(number), {line}};
  }
  return std::move(reader.net);
}

}  // namespace creasewright
