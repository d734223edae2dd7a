#pragma once

#include <cmath>
#include <vector>

namespace creasewright {

/// A point or vector in the plane, in millimetres.
struct Point {
  double x = 0;
  double y = 0;

  friend constexpr Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
  friend constexpr Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
  friend constexpr Point operator*(Point a, double k) { return {a.x * k, a.y * k}; }
  friend constexpr Point operator/(Point a, double k) { return {a.x / k, a.y / k}; }
  constexpr bool operator==(const Point&) const = default;
};

constexpr double dot(Point a, Point b) { return a.x * b.x + a.y * b.y; }
/// Twice the signed area of the triangle (0, a, b); positive when b lies to the left of a.
constexpr double cross(Point a, Point b) { return a.x * b.y - a.y * b.x; }
inline double norm(Point a) { return std::sqrt(dot(a, a)); }
inline double distance(Point a, Point b) { return norm(b - a); }
/// Unit vector; `a` must not be zero.
inline Point unit(Point a) { return a / norm(a); }
/// `a` turned left by 90 degrees.
constexpr Point turnLeft(Point a) { return {-a.y, a.x}; }

struct Segment {
  Point a;
  Point b;
  constexpr bool operator==(const Segment&) const = default;
};

inline double length(const Segment& s) { return distance(s.a, s.b); }

/// A point or vector in space, in millimetres.
struct Point3 {
  double x = 0;
  double y = 0;
  double z = 0;

  friend constexpr Point3 operator+(Point3 a, Point3 b) {
    return {a.x + b.x, a.y + b.y, a.z + b.z};
  }
  friend constexpr Point3 operator-(Point3 a, Point3 b) {
    return {a.x - b.x, a.y - b.y, a.z - b.z};
  }
  friend constexpr Point3 operator*(Point3 a, double k) { return {a.x * k, a.y * k, a.z * k}; }
  friend constexpr Point3 operator/(Point3 a, double k) { return {a.x / k, a.y / k, a.z / k}; }
  constexpr bool operator==(const Point3&) const = default;
};

constexpr double dot(Point3 a, Point3 b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
constexpr Point3 cross(Point3 a, Point3 b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double norm(Point3 a) { return std::sqrt(dot(a, a)); }
inline double distance(Point3 a, Point3 b) { return norm(b - a); }
inline Point3 unit(Point3 a) { return a / norm(a); }

}  // namespace creasewright
