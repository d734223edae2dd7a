#include "output/pdf_layers.h"

#include <cstddef>
#include <map>
#include <stdexcept>
#include <string_view>

#include <qpdf/Pl_Flate.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFPageObjectHelper.hh>
#include <qpdf/QPDFWriter.hh>

#include "drawing/number_text.h"

namespace creasewright {

namespace {

constexpr double kPointsPerMm = 72 / 25.4;
constexpr int kQuick = 1;  // of zlib: pages of lines hardly shrink with more

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
    QPDFObjectHandle painted = painted_.at(next_++).getObjectHandle();
    QPDFObjectHandle form = painted.getKey("/Contents");
    QPDFObjectHandle paper = painted.getKey("/MediaBox");
    // The one stream of a painted page becomes a form as it is: to take it apart and compress it
    // anew would take as long as painting it. Only the layers of a template are worth that.
    QPDFObjectHandle made = form.getDict();
    made.replaceKey("/Type", name("XObject"));
    made.replaceKey("/Subtype", name("Form"));
    made.replaceKey("/BBox", paper);
    made.replaceKey("/Resources", painted.getKey("/Resources"));
    if (!page.layers.empty()) markLayers(form, page.layers);
    forms.replaceKey("/Page", form);
    // Qt rounds its page to whole points and measures from its top; ours is exact.
    const double above = page.height * kPointsPerMm - paper.getArrayItem(3).getNumericValue();
    QPDFObjectHandle resources = QPDFObjectHandle::newDictionary();
    resources.replaceKey("/XObject", forms);
    QPDFObjectHandle out = QPDFObjectHandle::newDictionary();
    out.replaceKey("/Type", name("Page"));
    out.replaceKey("/MediaBox", box(page));
    out.replaceKey("/Resources", resources);
    out.replaceKey("/Contents",
                   QPDFObjectHandle::newStream(
                       &pdf_, "q 1 0 0 1 0 " + numberText(above, 6) + " cm /Page Do Q\n"));
    return pdf_.makeIndirectObject(out);
  }

  /// Puts what is painted between two marks into a layer (ISO 32000-2, 8.11.3.2).
  void markLayers(QPDFObjectHandle& form, const std::vector<PdfLayer>& layers) {
    const auto data = form.getStreamData(qpdf_dl_generalized);
    const std::string_view painted(reinterpret_cast<const char*>(data->getBuffer()),
                                   data->getSize());
    QPDFObjectHandle properties = QPDFObjectHandle::newDictionary();
    std::string content;
    std::size_t at = 0;
    for (std::size_t k = 0; k < layers.size(); ++k) {
      const std::string begins =
          "\n" + std::to_string(kLayerMark) + " " + std::to_string(k) + " m\n";
      const std::size_t mark = painted.find(begins, at);
      const std::size_t ends = painted.find("\nf", mark);
      if (mark == std::string_view::npos || ends == std::string_view::npos)
        throw std::runtime_error("a layer of the page is not where it begins");
      content += painted.substr(at, mark + 1 - at);
      content += (k == 0 ? "/OC /" : "EMC\n/OC /") + layers[k].id + " BDC";
      properties.replaceKey("/" + layers[k].id, group(layers[k]));
      at = painted.find('\n', ends + 1);
    }
    content += painted.substr(at);
    content += "\nEMC\n";
    form.replaceStreamData(content, QPDFObjectHandle::newNull(), QPDFObjectHandle::newNull());
    QPDFObjectHandle resources = form.getDict().getKey("/Resources").shallowCopy();
    resources.replaceKey("/Properties", properties);
    form.getDict().replaceKey("/Resources", resources);
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
  Pl_Flate::setCompressionLevel(kQuick);
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
