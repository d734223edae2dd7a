#include "output/pdf_layers.h"

#include <cstddef>
#include <map>

#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include "drawing/number_text.h"

namespace creasewright {

namespace {

constexpr double kPointsPerMm = 72 / 25.4;

QPDFObjectHandle name(std::string_view text) {
  return QPDFObjectHandle::newName("/" + std::string(text));
}

/// Collects pages of one document and the groups they use.
class LayeredDocument {
 public:
  explicit LayeredDocument(QPDF& pdf)
      : pdf_(pdf), painted_(QPDFPageDocumentHelper(pdf).getAllPages()) {}

  void assemble(const std::vector<LayeredPage>& pages) {
    std::vector<QPDFObjectHandle> made;
    for (const LayeredPage& page : pages) made.push_back(assemblePage(page));
    QPDFPageDocumentHelper document(pdf_);
    for (QPDFPageObjectHelper& old : painted_) document.removePage(old);
    for (const QPDFObjectHandle& page : made) document.addPage(QPDFPageObjectHelper(page), false);
    finishRoot();
  }

 private:
  QPDFObjectHandle assemblePage(const LayeredPage& page) {
    QPDFObjectHandle forms = QPDFObjectHandle::newDictionary();
    QPDFObjectHandle properties = QPDFObjectHandle::newDictionary();
    std::string content;
    if (page.layers.empty()) content = placed("Page", page, forms) + "\n";
    for (const PdfLayer& layer : page.layers) {
      properties.replaceKey("/" + layer.id, group(layer));
      content += "/OC /" + layer.id + " BDC " + placed(layer.id, page, forms) + " EMC\n";
    }
    QPDFObjectHandle resources = QPDFObjectHandle::newDictionary();
    resources.replaceKey("/XObject", forms);
    resources.replaceKey("/Properties", properties);
    QPDFObjectHandle made = QPDFObjectHandle::newDictionary();
    made.replaceKey("/Type", name("Page"));
    made.replaceKey("/MediaBox", box(page));
    made.replaceKey("/Resources", resources);
    made.replaceKey("/Contents", QPDFObjectHandle::newStream(&pdf_, content));
    return pdf_.makeIndirectObject(made);
  }

  /// The next painted page under a name; returns what draws it.
  std::string placed(const std::string& id, const LayeredPage& page, QPDFObjectHandle& forms) {
    QPDFPageObjectHelper& layer = painted_.at(next_++);
    QPDFObjectHandle form = layer.getFormXObjectForPage();
    // Qt rounds its page to whole points and measures from its top; ours is exact.
    const double painted = layer.getMediaBox().getArrayItem(3).getNumericValue();
    forms.replaceKey("/" + id, form);
    return "q 1 0 0 1 0 " + numberText(page.height * kPointsPerMm - painted, 6) + " cm /" + id +
           " Do Q";
  }

  static QPDFObjectHandle box(const LayeredPage& page) {
    QPDFObjectHandle array = QPDFObjectHandle::newArray();
    for (const double value : {0.0, 0.0, page.width * kPointsPerMm, page.height * kPointsPerMm})
      array.appendItem(QPDFObjectHandle::newReal(numberText(value, 4)));
    return array;
  }

  QPDFObjectHandle group(const PdfLayer& layer) {
    const auto found = groups_.find(layer.id);
    if (found != groups_.end()) return found->second;
    QPDFObjectHandle made = QPDFObjectHandle::newDictionary();
    made.replaceKey("/Type", name("OCG"));
    made.replaceKey("/Name", QPDFObjectHandle::newUnicodeString(layer.id));
    if (!layer.group.empty()) {
      // Keys as in the PDF Association's Arlington model.
      QPDFObjectHandle step = QPDFObjectHandle::newDictionary();
      step.replaceKey("/GTS_ProcStepsGroup", name(layer.group));
      if (layer.group == "Structural") step.replaceKey("/GTS_ProcStepsType", name(layer.id));
      made.replaceKey("/GTS_Metadata", step);
    }
    made = pdf_.makeIndirectObject(made);
    groups_.emplace(layer.id, made);
    order_.push_back(made);
    return made;
  }

  void finishRoot() {
    QPDFObjectHandle viewer = QPDFObjectHandle::newDictionary();
    viewer.replaceKey("/PrintScaling", name("None"));
    viewer.replaceKey("/DisplayDocTitle", QPDFObjectHandle::newBool(true));
    pdf_.getRoot().replaceKey("/ViewerPreferences", viewer);
    if (order_.empty()) return;
    QPDFObjectHandle shown = QPDFObjectHandle::newDictionary();
    shown.replaceKey("/Order", QPDFObjectHandle::newArray(order_));
    shown.replaceKey("/ON", QPDFObjectHandle::newArray(order_));
    QPDFObjectHandle optional = QPDFObjectHandle::newDictionary();
    optional.replaceKey("/OCGs", QPDFObjectHandle::newArray(order_));
    optional.replaceKey("/D", shown);
    pdf_.getRoot().replaceKey("/OCProperties", optional);
  }

  QPDF& pdf_;
  std::vector<QPDFPageObjectHelper> painted_;
  std::size_t next_ = 0;
  std::map<std::string, QPDFObjectHandle> groups_;
  std::vector<QPDFObjectHandle> order_;
};

void setInfo(QPDF& pdf, const LayeredInfo& info) {
  QPDFObjectHandle made = QPDFObjectHandle::newDictionary();
  made.replaceKey("/Title", QPDFObjectHandle::newUnicodeString(info.title));
  made.replaceKey("/Creator", QPDFObjectHandle::newString("Creasewright"));
  if (!info.created.empty())
    made.replaceKey("/CreationDate", QPDFObjectHandle::newString(info.created));
  pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(made));
}

}  // namespace

QByteArray assembleLayers(const QByteArray& painted, const std::vector<LayeredPage>& pages,
                          const LayeredInfo& info) {
  QPDF pdf;
  pdf.processMemoryFile("template", painted.constData(), static_cast<std::size_t>(painted.size()));
  LayeredDocument(pdf).assemble(pages);
  if (!info.language.empty())
    pdf.getRoot().replaceKey("/Lang", QPDFObjectHandle::newUnicodeString(info.language));
  setInfo(pdf, info);
  QPDFWriter writer(pdf);
  writer.setOutputMemory();
  writer.setMinimumPDFVersion("1.6");  // PrintScaling
  writer.setDeterministicID(true);
  writer.write();
  const auto buffer = writer.getBufferSharedPointer();
  return {reinterpret_cast<const char*>(buffer->getBuffer()),
          static_cast<qsizetype>(buffer->getSize())};
}

}  // namespace creasewright
