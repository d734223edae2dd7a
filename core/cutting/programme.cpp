#include "cutting/programme.h"

#include <algorithm>
#include <array>
#include <string>

#include <coin/CbcEventHandler.hpp>
#include <coin/CbcModel.hpp>
#include <coin/CbcSolver.hpp>
#include <coin/ClpEventHandler.hpp>
#include <coin/ClpSimplex.hpp>
#include <coin/OsiClpSolverInterface.hpp>

namespace creasewright {
namespace {

// Measured on programmes of 5 to 250 rows.
constexpr double kPivot = 2'000;
constexpr double kPivotPerRow = 60;
constexpr double kPivotPerColumn = 12;
constexpr double kCbcNode = 100'000;
constexpr double kWholePivot = 3;  // with the cuts and heuristics that Cbc does between pivots

/// Counts every pivot of a solver and of its copies, and ends them.
class PivotCounter : public ClpEventHandler {
 public:
  explicit PivotCounter(Work* work, double weight = 1) : work_(work), weight_(weight) {}
  int event(Event which) override {
    if (which != endOfIteration || work_ == nullptr) return -1;
    return work_->add(weight_ * (kPivot + kPivotPerRow * model_->numberRows() +
                                 kPivotPerColumn * model_->numberColumns()))
               ? -1
               : 0;
  }
  [[nodiscard]] ClpEventHandler* clone() const override { return new PivotCounter(*this); }

 private:
  Work* work_;
  double weight_;
};

class NodeCounter : public CbcEventHandler {
 public:
  explicit NodeCounter(Work* work) : work_(work) {}
  CbcAction event(CbcEvent which) override {
    return work_->add(which == CbcEventHandler::node ? kCbcNode : 0) ? noAction : stop;
  }
  CbcAction event(CbcEvent which, void* /*data*/) override { return event(which); }
  [[nodiscard]] CbcEventHandler* clone() const override { return new NodeCounter(*this); }

 private:
  Work* work_;
};

int callBack(CbcModel* /*model*/, int /*whereFrom*/) { return 0; }

}  // namespace

struct LinearSolver::Model {
  ClpSimplex clp;
  bool solved = false;  // so that its basis is a start
  bool bent = false;    // limits have changed since: the dual goes on from there
};

LinearSolver::LinearSolver(const Programme& p) : model_(std::make_unique<Model>()) {
  model_->clp.setLogLevel(0);
  model_->clp.loadProblem(p.columns(), p.rowCount(), p.starts.data(), p.rows.data(),
                          p.values.data(), p.low.data(), p.high.data(), p.cost.data(),
                          p.rowLow.data(), p.rowHigh.data());
}

LinearSolver::LinearSolver(LinearSolver&&) noexcept = default;
LinearSolver& LinearSolver::operator=(LinearSolver&&) noexcept = default;
LinearSolver::~LinearSolver() = default;

void LinearSolver::addColumns(const Programme& more) {
  model_->clp.addColumns(more.columns(), more.low.data(), more.high.data(), more.cost.data(),
                         more.starts.data(), more.rows.data(), more.values.data());
}

void LinearSolver::setRowHigh(int row, double most) { model_->clp.setRowUpper(row, most); }
void LinearSolver::setRowLow(int row, double least) { model_->clp.setRowLower(row, least); }
void LinearSolver::setColumn(int column, double least, double most) {
  model_->clp.setColumnBounds(column, least, most);
  model_->bent = true;
}

bool LinearSolver::solve(Work& work) {
  PivotCounter counter(&work);
  model_->clp.passInEventHandler(&counter);
  if (!work.mayGoOn()) return false;
  if (model_->solved && !model_->bent)
    model_->clp.primal(1);
  else
    model_->clp.dual();
  model_->bent = false;
  PivotCounter none(nullptr);
  model_->clp.passInEventHandler(&none);
  model_->solved = model_->clp.status() == 0;
  return model_->solved;
}

double LinearSolver::cost() const { return model_->clp.objectiveValue(); }

std::vector<double> LinearSolver::times() const {
  const double* values = model_->clp.primalColumnSolution();
  return {values, values + model_->clp.numberColumns()};
}

std::vector<double> LinearSolver::prices() const {
  const double* values = model_->clp.dualRowSolution();
  return {values, values + model_->clp.numberRows()};
}

WholeSolution solveInWholes(const Programme& p, Work& work, double steps) {
  if (!work.mayGoOn()) return {};
  const WorkShare share(work, steps);
  OsiClpSolverInterface solver;
  solver.setHintParam(OsiDoReducePrint, true, OsiHintTry);
  solver.messageHandler()->setLogLevel(0);
  solver.loadProblem(p.columns(), p.rowCount(), p.starts.data(), p.rows.data(), p.values.data(),
                     p.low.data(), p.high.data(), p.cost.data(), p.rowLow.data(), p.rowHigh.data());
  for (int i = 0; i < p.columns(); ++i) solver.setInteger(i);
  const PivotCounter pivots(&work, kWholePivot);
  solver.getModelPtr()->passInEventHandler(&pivots);
  CbcModel model(solver);
  model.setLogLevel(0);
  const NodeCounter nodes(&work);
  model.passInEventHandler(&nodes);
  CbcSolverUsefulData data;
  data.noPrinting_ = true;
  data.useSignalHandler_ = false;
  CbcMain0(model, data);
  const std::array<const char*, 5> words{"cbc", "-log", "0", "-solve", "-quit"};
  CbcMain1(static_cast<int>(words.size()), const_cast<const char**>(words.data()), model, callBack,
           data);
  const double* found = model.bestSolution();
  if (found == nullptr || model.getObjValue() > 1e29)
    return {{}, false, work.mayGoOn() && model.isProvenInfeasible()};
  return {{found, found + p.columns()}, work.mayGoOn() && model.isProvenOptimal(), false};
}

}  // namespace creasewright
