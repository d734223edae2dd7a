#include "base/near_texts.h"

#include <algorithm>
#include <utility>

#include "base/digit.h"
#include "base/excerpt.h"

namespace creasewright {
namespace {

constexpr double kLikeEnough = 0.3;    // of 1; below it the likeness is chance
constexpr std::size_t kLongest = 100;  // letters that are compared

bool isLetter(char c) { return c >= 'a' && c <= 'z'; }

/// Neighbouring characters of each word, with a blank before it so that its start counts; a number
/// and the unit behind it are two words.
std::vector<std::string> pairsOf(std::string_view text) {
  std::vector<std::string> pairs;
  char last = ' ';
  for (char c : text.substr(0, kLongest)) {
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    if (!isDigit(c) && !isLetter(c)) c = ' ';
    if (isDigit(c) != isDigit(last)) last = ' ';
    if (c != ' ') pairs.push_back({last, c});
    last = c;
  }
  std::ranges::sort(pairs);
  return pairs;
}

double likeness(const std::vector<std::string>& a, const std::vector<std::string>& b) {
  if (a.empty() || b.empty()) return 0;
  std::vector<std::string> both;
  std::ranges::set_intersection(a, b, std::back_inserter(both));
  return 2.0 * static_cast<double>(both.size()) / static_cast<double>(a.size() + b.size());
}

}  // namespace

std::vector<std::string> nearTexts(std::string_view written, std::span<const Spelled> known,
                                   std::size_t count) {
  struct Candidate {
    double like;
    std::string_view id;
  };
  const std::vector<std::string> pairs = pairsOf(written);
  std::vector<Candidate> near;
  for (const Spelled& each : known) {
    const double like =
        std::max(likeness(pairs, pairsOf(each.id)), likeness(pairs, pairsOf(each.name)));
    if (like >= kLikeEnough) near.push_back({like, each.id});
  }
  std::ranges::stable_sort(near,
                           [](const Candidate& a, const Candidate& b) { return a.like > b.like; });
  std::vector<std::string> ids;
  for (const Candidate& each : near)
    if (ids.size() < count) ids.emplace_back(each.id);
  return ids;
}

Problem unknownAmong(ProblemCode code, std::string_view written, std::span<const Spelled> known) {
  constexpr std::size_t kNamed = 3;
  Problem problem{code, {}, {excerpt(written)}};
  for (std::string& id : nearTexts(written, known, kNamed))
    problem.values.emplace_back(std::move(id));
  return problem;
}

}  // namespace creasewright
