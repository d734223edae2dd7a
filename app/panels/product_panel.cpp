#include "panels/product_panel.h"

#include <QLabel>
#include <QVBoxLayout>

#include "bridge/problem_text.h"
#include "commands/edits.h"
#include "units/millimetres.h"
#include "widgets/choice_row.h"
#include "widgets/colour_button.h"
#include "widgets/icon.h"
#include "widgets/labelled_field.h"

namespace creasewright {

namespace {

constexpr int kNoProduct = -1000;
constexpr ProductShape kShapes[] = {ProductShape::Box, ProductShape::Cylinder, ProductShape::Sphere,
                                    ProductShape::Tube, ProductShape::Card};

const Length smallest = mm(0.1);  // 0.1 mm, as parseProduct
const Length largest = mm(1000);  // 1 m

/// Empty when a side of this length may be used.
QString complaintAbout(Length value, Unit unit) {
  if (value < smallest)
    return problemSentence({ProblemCode::ProductTooSmall, {}, {value, smallest}}, unit);
  if (value > largest)
    return problemSentence({ProblemCode::ProductTooLarge, {}, {value, largest}}, unit);
  return {};
}

}  // namespace

ProductPanel::ProductPanel(DesignSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      shapes_(new ChoiceRow(3, this)),
      ease_(new ChoiceRow(3, this)),
      easeBox_(new QWidget(this)),
      colour_(new ColourButton(tr("Pale green"), this)),
      rowsLayout_(new QVBoxLayout),
      last_{ProductShape::Box, Length::mm(60), Length::mm(40), Length::mm(25)} {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(8);
  addShapes(layout);
  rowsLayout_->setSpacing(4);
  layout->addLayout(rowsLayout_);
  addEase(layout);
  connect(&session_, &DesignSession::changed, this, &ProductPanel::showDesign);
  connect(&session_, &DesignSession::unitChanged, this, [this](Unit unit) {
    for (LengthRow* row : rows_) row->field().setUnit(unit);
  });
  showDesign();
}

void ProductPanel::addShapes(QVBoxLayout* layout) {
  for (const ProductShape shape : kShapes)
    shapes_->add(static_cast<int>(shape), shapeTitle(shape), lineIcon(shapeIcon(shape)));
  shapes_->add(kNoProduct, tr("None"), lineIcon(QStringLiteral("none")),
               tr("Give the measures of the piece yourself."));
  shapes_->setAccessibleName(tr("Shape of the product"));
  connect(shapes_, &ChoiceRow::picked, this, &ProductPanel::pickShape);
  layout->addWidget(shapes_);
}

void ProductPanel::addEase(QVBoxLayout* layout) {
  ease_->add(static_cast<int>(Ease::Snug), tr("Snug"), {}, tr("The product just slips in."));
  ease_->add(static_cast<int>(Ease::Easy), tr("Easy"), {},
             tr("The product goes in and out easily."));
  ease_->add(static_cast<int>(Ease::Loose), tr("Loose"), {},
             tr("Leaves room for tissue or little fingers."));
  ease_->setAccessibleName(tr("Ease"));
  connect(ease_, &ChoiceRow::picked, this,
          [this](int id) { changeEase(session_, static_cast<Ease>(id)); });
  auto* box = new QVBoxLayout(easeBox_);
  box->setContentsMargins(0, 0, 0, 0);
  box->setSpacing(4);
  box->addWidget(new QLabel(tr("Ease"), this));
  box->addWidget(ease_);
  box->addSpacing(4);
  addLabelledField(box, tr("Colour of the product"), colour_);
  connect(colour_, &ColourButton::colourPicked, this, [this](const std::optional<Colour>& colour) {
    Product product = last_;
    product.colour = colour;
    changeProduct(session_, product);
  });
  layout->addWidget(easeBox_);
}

void ProductPanel::showDesign() {
  const auto& product = session_.design().product;
  shapes_->choose(product ? static_cast<int>(product->shape) : kNoProduct);
  ease_->choose(static_cast<int>(session_.design().ease));
  easeBox_->setVisible(product.has_value());
  if (!product) {
    for (LengthRow* row : rows_) row->hide();
    return;
  }
  last_ = *product;
  colour_->setColour(product->colour);
  makeRows(product->shape);
  for (std::size_t i = 0; i < rows_.size(); ++i) {
    rows_[i]->show();
    rows_[i]->field().setLength((*product).*fields_[i].members.front());
    rows_[i]->setComplaint({});
  }
}

void ProductPanel::makeRows(ProductShape shape) {
  if (shown_ == shape) return;
  shown_ = shape;
  qDeleteAll(rows_);
  rows_.clear();
  fields_ = productFields(shape);
  for (std::size_t i = 0; i < fields_.size(); ++i) {
    auto* row = new LengthRow(fields_[i].label, this);
    row->field().setUnit(session_.unit());
    connect(&row->field(), &LengthEdit::lengthEdited, this,
            [this, i](Length value) { setMeasure(i, value); });
    rowsLayout_->addWidget(row);
    rows_.push_back(row);
  }
}

void ProductPanel::pickShape(int id) {
  if (id == kNoProduct) {
    changeProduct(session_, std::nullopt);
    return;
  }
  changeProduct(session_, reshaped(last_, static_cast<ProductShape>(id)));
}

void ProductPanel::setMeasure(std::size_t field, Length value) {
  const QString complaint = complaintAbout(value, session_.unit());
  rows_[field]->setComplaint(complaint);
  if (!complaint.isEmpty()) return;
  Product product = last_;
  for (const auto member : fields_[field].members) product.*member = value;
  changeProduct(session_, product, QStringLiteral("product-%1").arg(field));
}

}  // namespace creasewright
