#include "drawing/xml_text.h"

#include <gtest/gtest.h>

namespace creasewright {
namespace {

TEST(XmlText, EscapesWhatMarksUp) {
  EXPECT_EQ(xmlText("a<b> & \"c\" 2\u215C\u2033 \U0001F381"),
            "a&lt;b&gt; &amp; &quot;c&quot; 2\u215C\u2033 \U0001F381");
}

/// XML 1.0 (W3C, fifth edition, 2008), production 2: the characters that may stand in a document;
/// beyond it no control characters, which HTML forbids (WHATWG HTML, "Text").
TEST(XmlText, HoldsNoCharacterThatXmlDoesNotKnow) {
  EXPECT_EQ(xmlText(std::string_view("a\0b\x1B\x7F\n", 6)), "a b   ");
  EXPECT_EQ(xmlText("\u0085\u009F"), "  ");
  EXPECT_EQ(xmlText("\uFFFE|\uFFFF|\U0001FFFE"), "\uFFFD|\uFFFD|\uFFFD");
  EXPECT_EQ(xmlText("\xED\xA0\x80"), "\uFFFD");  // half of a pair
  EXPECT_EQ(xmlText("\xC0\xAF|\xE2\x82|\xFF"), "\uFFFD\uFFFD|\uFFFD\uFFFD|\uFFFD");  // no UTF-8
}

}  // namespace
}  // namespace creasewright
