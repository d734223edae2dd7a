#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>
#include <vector>

#include <gtest/gtest.h>

// The German texts keep to one word for each thing, to the trade's words and to one form of
// address: infinitives, neither Sie nor du.
namespace creasewright {
namespace {

struct Message {
  QString context;
  QString source;
  QStringList texts;  ///< one, or one for each number
};

std::vector<Message> germanMessages() {
  QFile ts(CREASEWRIGHT_SOURCE_DIR "/translations/creasewright_de.ts");
  EXPECT_TRUE(ts.open(QIODevice::ReadOnly));
  std::vector<Message> messages;
  QXmlStreamReader xml(&ts);
  QString context;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) {
      continue;
    }
    if (xml.name() == QLatin1String("name")) {
      context = xml.readElementText();
    } else if (xml.name() == QLatin1String("message")) {
      messages.push_back({context, {}, {}});
    } else if (xml.name() == QLatin1String("source")) {
      messages.back().source = xml.readElementText();
    } else if (xml.name() == QLatin1String("translation")) {
      const QString text = xml.readElementText(QXmlStreamReader::IncludeChildElements);
      if (!text.trimmed().isEmpty()) {
        messages.back().texts.append(text);
      }
    }
  }
  EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
  return messages;
}

struct Forbidden {
  const char* pattern;
  const char* reason;
  const char* except = nullptr;  ///< a context where the word is right
};

constexpr Forbidden kForbidden[] = {
    {"\\b(Sie|Ihnen|Ihre?[mnrs]?)\\b", "addresses the reader: infinitive"},
    {"\\b([Dd]u|[Dd]ir|[Dd]ich|[Dd]eine?[mnrs]?|euch|euer|eure[mnrs]?)\\b",
     "addresses the reader: infinitive"},
    {"\\b[Bb]itte\\b", "addresses the reader: infinitive"},
    {"abdecken|Abdeckung", "means cover, the opposite of peeling off: Schutzfolie abziehen"},
    {"Klebestreifen", "sticky tape: Kleberand for the strip of a net"},
    {"\\bKleber\\b", "one word: Klebstoff"},
    {"Kugelstift", "no such word: Prägestift"},
    {"Schablone", "a stencil: Vorlage"},
    {"Kachel", "bathrooms: Blatt"},
    {"Bauart|\\bStils?\\b", "one word: Modell"},
    {"Produkt", "shop goods: Inhalt"},
    {"\\b(Doppel)?[Rr]illung|\\bRille\\b", "one word: Rilllinie"},
    {"\\bSteck(klappe|lasche)|Einsteckklappe", "one word: Einstecklasche"},
    {"Daumenmulde", "one word: Griffmulde"},
    {"Zugabe|\\bSpiel\\b", "one word: Luft"},
    {"[Kk]artonstärke", "one word: Kartondicke"},
    {"Gebäck", "one word: Kekse"},
    {"Trüffel", "one word: Pralinen"},
    {"[Aa]ufrichten", "one word: aufstellen"},
    {"\\bAuflagen?\\b", "a print run: Zierpapier"},
    {"\\bUnterlage\\b", "a pad: Rahmenpapier (Unterlagen are papers)"},
    {"Beigabe", "a free gift: Extra"},
    {"Briefchen", "a drug packet in slang: Streichholzheft-Hülle"},
    {"\\bFaser", "a thread: Laufrichtung"},
    {"Schlüsselweite", "the size of a spanner: Weite von Seite zu Seite"},
    {"Ablesung", "Maß"},
    {"[Aa]usklinken", "metalwork: Ecken abschneiden"},
    {"Stichw(o|ö)rt", "one word: Schlagwörter"},
    {"Bündel", "Sammlung"},
    {"Anordnung", "Aufteilung"},
    {"Zurücknehmen|Zurücklassen|Hierbleiben|Wiederholen",
     "Rückgängig, Nicht speichern, Abbrechen, Wiederherstellen"},
    {"%n Mal\\b|%L Mal\\b", "%n-mal"},
    {"\\bbewiesen", "nachgewiesen"},
    {"\\b(kostete|bräuchte)\\b.*(Person|Bögen|Bogen)", "no conditional"},
    {"\\b([Dd]ie|[Kk]eine|[Ee]ine|[Ee]iner|[Dd]ieser) Falz\\b", "der Falz"},
    {"wahre[rnm]? Größe", "Originalgröße"},
    {"\\bKarte\\b", "a greeting card: Karton", "products"},
    {"\\bSchneider\\b", "a tailor: Papierschneider"},
    {"Schneidemaschine|\\bMatte\\b", "Schneideplotter and Trägermatte, Schneidematte"},
    {"\\bZettel|Grußzettel", "Grußkärtchen"},
    {"Gefache|Schütte|Naschschütte", "makers say Fächereinsatz, Pommestüte"},
    {"[Ll]eicht\\)|^Leicht$", "not difficult: the ease is normal"},
    {"[Gg]lattstreichen", "mit dem Falzbein nachziehen"},
    {"Ersatzs(a|ä)tz", "Reservesatz"},
    {"\\S…", "a space stands before the three dots"},
};

std::string shown(const Message& message, const QString& text) {
  return (message.context + QLatin1String(": ") + message.source + QLatin1String(" -> ") + text)
      .toStdString();
}

TEST(GermanWords, NoForbiddenWordOccurs) {
  const std::vector<Message> messages = germanMessages();
  ASSERT_GT(messages.size(), 1000U);
  for (const Forbidden& word : kForbidden) {
    const QRegularExpression pattern(QString::fromUtf8(word.pattern),
                                     QRegularExpression::UseUnicodePropertiesOption);
    ASSERT_TRUE(pattern.isValid()) << word.pattern;
    for (const Message& message : messages) {
      if (word.except != nullptr && message.context == QLatin1String(word.except)) {
        continue;
      }
      for (const QString& text : message.texts) {
        EXPECT_FALSE(pattern.match(text).hasMatch())
            << shown(message, text) << "\n  " << word.reason;
      }
    }
  }
}

/// The pattern of each rule finds the text it was made for.
TEST(GermanWords, TheRulesFindWhatTheyForbid) {
  const auto found = [](const char* text) {
    for (const Forbidden& word : kForbidden) {
      const QRegularExpression pattern(QString::fromUtf8(word.pattern),
                                       QRegularExpression::UseUnicodePropertiesOption);
      if (pattern.match(QString::fromUtf8(text)).hasMatch()) {
        return true;
      }
    }
    return false;
  };
  for (const char* wrong :
       {"Unmittelbar davor das Klebeband abdecken.", "Kleben Sie das Etikett auf",
        "rillen, zu dir falten", "Mindestens der kleinste Klebestreifen.", "Namen…", "Karte",
        "Rillungen", "eine Stufe der Auflagen", "nahe einer Falz hinten"}) {
    EXPECT_TRUE(found(wrong)) << wrong;
  }
  for (const char* right :
       {"Die Schutzfolie abziehen.", "Das Etikett aufkleben", "rillen, zu sich hin falten",
        "Namen …", "Der Falz der Einstecklasche"}) {
    EXPECT_FALSE(found(right)) << right;
  }
}

/// A sheet is a Bogen, and two are Bögen; a curve is a Rundung.
TEST(GermanWords, SheetsHaveAPluralAndCurvesAreNoSheets) {
  for (const Message& message : germanMessages()) {
    if (message.texts.size() == 1 && message.source.contains(QLatin1String("%n sheet(s)"))) {
      EXPECT_TRUE(message.texts.front().contains(QString::fromUtf8("%n Bögen")))
          << shown(message, message.texts.front());
    }
    if (message.source.contains(QLatin1String("curve"))) {
      for (const QString& text : message.texts) {
        EXPECT_FALSE(text.contains(QString::fromUtf8("Bogen")) ||
                     text.contains(QString::fromUtf8("Bögen")))
            << shown(message, text);
      }
    }
  }
}

}  // namespace
}  // namespace creasewright
