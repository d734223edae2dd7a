<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>creasewright::CardPanel</name>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Card stock</source>
        <translation>Karton</translation>
    </message>
    <message>
        <source>Measured by you</source>
        <translation>Selbst gemessen</translation>
    </message>
    <message>
        <source>%1 g/m²</source>
        <translation>%1 g/m²</translation>
    </message>
    <message>
        <source>Card is at least %1 thick.</source>
        <translation>Karton ist mindestens %1 dick.</translation>
    </message>
    <message>
        <source>card of %1</source>
        <translation>Karton von %1</translation>
    </message>
</context>
<context>
    <name>creasewright::ChecksPanel</name>
    <message>
        <source>All checks hold.</source>
        <translation>Alles stimmt.</translation>
    </message>
    <message>
        <source>Checks that do not hold</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>Click to see the place.</source>
        <translation>Klicken zeigt die Stelle.</translation>
    </message>
</context>
<context>
    <name>creasewright::Columns</name>
    <message>
        <source>Product</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Style</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karton</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Rillen</translation>
    </message>
    <message>
        <source>Glue</source>
        <translation>Kleben</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Flächen</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Folded</source>
        <translation>Gefaltet</translation>
    </message>
    <message>
        <source>Checks (%1)</source>
        <translation>Prüfung (%1)</translation>
    </message>
</context>
<context>
    <name>creasewright::DesignSession</name>
    <message>
        <source>Untitled</source>
        <translation>Ohne Titel</translation>
    </message>
</context>
<context>
    <name>creasewright::ExportDialog</name>
    <message>
        <source>Template as PDF</source>
        <translation>Vorlage als PDF</translation>
    </message>
    <message>
        <source>Pages in true size with score settings, to print anywhere.</source>
        <translation>Seiten in wahrer Größe mit Rillmaßen, überall zu drucken.</translation>
    </message>
    <message>
        <source>Net as SVG</source>
        <translation>Netz als SVG</translation>
    </message>
    <message>
        <source>For cutting machines and drawing programs, one group for each kind of line.</source>
        <translation>Für Schneidemaschinen und Zeichenprogramme, eine Gruppe für jede Linienart.</translation>
    </message>
    <message>
        <source>Net as DXF</source>
        <translation>Netz als DXF</translation>
    </message>
    <message>
        <source>For cutting machines and plotters, one layer for each kind of line.</source>
        <translation>Für Schneidemaschinen und Plotter, eine Ebene für jede Linienart.</translation>
    </message>
    <message>
        <source>Picture of the net as PNG</source>
        <translation>Bild des Netzes als PNG</translation>
    </message>
    <message>
        <source>To look at, not to measure.</source>
        <translation>Zum Ansehen, nicht zum Messen.</translation>
    </message>
    <message>
        <source>Picture of the folded piece as PNG</source>
        <translation>Bild des gefalteten Stücks als PNG</translation>
    </message>
    <message>
        <source>For a notice or a hand-out.</source>
        <translation>Für einen Aushang oder ein Arbeitsblatt.</translation>
    </message>
    <message>
        <source>Picture of the folded piece as SVG</source>
        <translation>Bild des gefalteten Stücks als SVG</translation>
    </message>
    <message>
        <source>The same as lines and areas, sharp at any size.</source>
        <translation>Dasselbe als Linien und Flächen, in jeder Größe scharf.</translation>
    </message>
    <message>
        <source>Everything as JSON</source>
        <translation>Alles als JSON</translation>
    </message>
    <message>
        <source>Panels, scores and plans for other programs.</source>
        <translation>Flächen, Rillen und Pläne für andere Programme.</translation>
    </message>
    <message>
        <source>Save as a file</source>
        <translation>Als Datei speichern</translation>
    </message>
    <message>
        <source>All pieces</source>
        <translation>Alle Teile</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Speichern …</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>creasewright::FileActions</name>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen …</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter …</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt benutzt</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Nicht gespeichert</translation>
    </message>
    <message>
        <source>“%1” has changes that are not saved.</source>
        <translation>„%1“ hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Save them now, or leave them behind.</source>
        <translation>Jetzt speichern oder zurücklassen.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Leave them</source>
        <translation>Zurücklassen</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Hierbleiben</translation>
    </message>
    <message>
        <source>Save the design</source>
        <translation>Entwurf speichern</translation>
    </message>
    <message>
        <source>Designs (*.cwdesign)</source>
        <translation>Entwürfe (*.cwdesign)</translation>
    </message>
    <message>
        <source>Open a design</source>
        <translation>Entwurf öffnen</translation>
    </message>
    <message>
        <source>Designs (*.cwdesign);;All files (*)</source>
        <translation>Entwürfe (*.cwdesign);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Creasewright</source>
        <translation>Creasewright</translation>
    </message>
</context>
<context>
    <name>creasewright::FoldPanel</name>
    <message>
        <source>One stage back</source>
        <translation>Eine Stufe zurück</translation>
    </message>
    <message>
        <source>One stage forward</source>
        <translation>Eine Stufe weiter</translation>
    </message>
    <message>
        <source>Fold stage</source>
        <translation>Faltstufe</translation>
    </message>
    <message>
        <source>Flat</source>
        <translation>Flach</translation>
    </message>
    <message>
        <source>Stage %1 of %2: %3</source>
        <translation>Stufe %1 von %2: %3</translation>
    </message>
</context>
<context>
    <name>creasewright::FoldView</name>
    <message>
        <source>Folded piece</source>
        <translation>Gefaltetes Stück</translation>
    </message>
    <message>
        <source>Drag to turn it. Arrow keys turn by 5 degrees, Home shows the standard view.</source>
        <translation>Ziehen dreht das Stück. Pfeiltasten drehen um 5 Grad, Pos1 zeigt die Standardansicht.</translation>
    </message>
</context>
<context>
    <name>creasewright::GlueList</name>
    <message>
        <source>Glue plan</source>
        <translation>Klebeplan</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>Innenseite</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>Außenseite</translation>
    </message>
    <message>
        <source>%1, on its %2: stick to %3</source>
        <translation>%1, auf der %2: an %3 kleben</translation>
    </message>
    <message>
        <source>This piece needs no adhesive.</source>
        <translation>Dieses Stück braucht keinen Kleber.</translation>
    </message>
</context>
<context>
    <name>creasewright::MainWindow</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Zoom in</source>
        <translation>Vergrößern</translation>
    </message>
    <message>
        <source>Zoom out</source>
        <translation>Verkleinern</translation>
    </message>
    <message>
        <source>Show the whole sheet</source>
        <translation>Ganzen Bogen zeigen</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Hell</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>The language changes when you start the program again.</source>
        <translation>Die Sprache wechselt, wenn das Programm neu startet.</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>About Creasewright</source>
        <translation>Über Creasewright</translation>
    </message>
    <message>
        <source>Creasewright designs small gift packaging out of card: from the product on the table to a true-size template on paper.

Free under the MIT licence.</source>
        <translation>Creasewright entwirft kleine Geschenkverpackungen aus Karton: vom Inhalt auf dem Tisch bis zur Vorlage in wahrer Größe auf Papier.

Frei unter der MIT-Lizenz.</translation>
    </message>
    <message>
        <source>%1[*] – Creasewright</source>
        <translation>%1[*] – Creasewright</translation>
    </message>
    <message>
        <source>Work found</source>
        <translation>Arbeit gefunden</translation>
    </message>
    <message>
        <source>The program ended last time before your work was saved.</source>
        <translation>Das Programm endete beim letzten Mal, bevor die Arbeit gespeichert war.</translation>
    </message>
    <message>
        <source>Take it up again, or throw it away.</source>
        <translation>Wieder aufnehmen oder wegwerfen.</translation>
    </message>
    <message>
        <source>Take it up</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Wegwerfen</translation>
    </message>
</context>
<context>
    <name>creasewright::MeasuresPanel</name>
    <message>
        <source>Set by hand. The product asks for %1.</source>
        <translation>Von Hand gesetzt. Der Inhalt verlangt %1.</translation>
    </message>
    <message>
        <source>Product %1, with ease %2, with card %3, on the tool grid %4.</source>
        <translation>Inhalt %1, mit Luft %2, mit Karton %3, auf dem Werkzeugraster %4.</translation>
    </message>
</context>
<context>
    <name>creasewright::OutlineTree</name>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>stays put</source>
        <translation>bleibt liegen</translation>
    </message>
    <message>
        <source>no fold</source>
        <translation>kein Falz</translation>
    </message>
    <message>
        <source>mountain, %1°</source>
        <translation>Berg, %1°</translation>
    </message>
    <message>
        <source>valley, %1°</source>
        <translation>Tal, %1°</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>Width × height</source>
        <translation>Breite × Höhe</translation>
    </message>
    <message>
        <source>Fold</source>
        <translation>Falz</translation>
    </message>
    <message>
        <source>Panels of the net</source>
        <translation>Flächen des Netzes</translation>
    </message>
</context>
<context>
    <name>creasewright::PagePreview</name>
    <message>
        <source>Preview of the pages</source>
        <translation>Vorschau der Seiten</translation>
    </message>
</context>
<context>
    <name>creasewright::PrintDialog</name>
    <message>
        <source>%1 (%2 × %3)</source>
        <translation>%1 (%2 × %3)</translation>
    </message>
    <message>
        <source>Print the template</source>
        <translation>Vorlage drucken</translation>
    </message>
    <message>
        <source>What takes fewest pages</source>
        <translation>Was am wenigsten Seiten braucht</translation>
    </message>
    <message>
        <source>Upright</source>
        <translation>Hochformat</translation>
    </message>
    <message>
        <source>Sideways</source>
        <translation>Querformat</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>Margin your printer leaves</source>
        <translation>Rand, den der Drucker lässt</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Drucker</translation>
    </message>
    <message>
        <source>No printer found</source>
        <translation>Kein Drucker gefunden</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern …</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) in true size. Print without scaling, then measure the check bars.</source>
        <translation>
            <numerusform>%n Seite in wahrer Größe. Ohne Skalierung drucken, dann die Prüfstrecken nachmessen.</numerusform>
            <numerusform>%n Seiten in wahrer Größe. Ohne Skalierung drucken, dann die Prüfstrecken nachmessen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The printer “%1” does not take the pages. Check that it is on, or save them as PDF.</source>
        <translation>Der Drucker „%1“ nimmt die Seiten nicht an. Prüfen, ob er eingeschaltet ist, oder als PDF speichern.</translation>
    </message>
    <message>
        <source>PDF documents (*.pdf)</source>
        <translation>PDF-Dokumente (*.pdf)</translation>
    </message>
</context>
<context>
    <name>creasewright::ProductPanel</name>
    <message>
        <source>None</source>
        <translation>Ohne</translation>
    </message>
    <message>
        <source>Give the measures of the piece yourself.</source>
        <translation>Die Maße des Stücks selbst angeben.</translation>
    </message>
    <message>
        <source>Shape of the product</source>
        <translation>Form des Inhalts</translation>
    </message>
    <message>
        <source>Snug</source>
        <translation>Knapp</translation>
    </message>
    <message>
        <source>The product just slips in.</source>
        <translation>Der Inhalt gleitet gerade hinein.</translation>
    </message>
    <message>
        <source>Easy</source>
        <translation>Leicht</translation>
    </message>
    <message>
        <source>The product goes in and out easily.</source>
        <translation>Der Inhalt geht leicht hinein und heraus.</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Locker</translation>
    </message>
    <message>
        <source>Leaves room for tissue or little fingers.</source>
        <translation>Lässt Platz für Seidenpapier oder kleine Finger.</translation>
    </message>
    <message>
        <source>Ease</source>
        <translation>Luft</translation>
    </message>
</context>
<context>
    <name>creasewright::ScoreList</name>
    <message>
        <source>Score plan</source>
        <translation>Rillplan</translation>
    </message>
    <message>
        <source>Measured from %1</source>
        <translation>Gemessen von %1</translation>
    </message>
    <message>
        <source>Slanting or inner scores, by their ends</source>
        <translation>Schräge oder innere Rillen, nach ihren Enden</translation>
    </message>
</context>
<context>
    <name>creasewright::SheetView</name>
    <message>
        <source>Sheet with the net</source>
        <translation>Bogen mit dem Netz</translation>
    </message>
    <message>
        <source>The panels are listed as text under “Panels”.</source>
        <translation>Die Flächen stehen als Text unter „Flächen“.</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>%1   %2 × %3</source>
        <translation>%1   %2 × %3</translation>
    </message>
</context>
<context>
    <name>creasewright::ToolBar</name>
    <message>
        <source>Grid: none</source>
        <translation>Raster: keins</translation>
    </message>
    <message>
        <source>Grid: %1</source>
        <translation>Raster: %1</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Units shown and typed</source>
        <translation>Einheit für Anzeige und Eingabe</translation>
    </message>
    <message>
        <source>Tool grid</source>
        <translation>Werkzeugraster</translation>
    </message>
    <message>
        <source>What your board, trimmer or ruler can hit. Fitted measures snap to it.</source>
        <translation>Was Rillbrett, Schneider oder Lineal treffen. Angepasste Maße rasten darauf ein.</translation>
    </message>
    <message>
        <source>Zoom out</source>
        <translation>Verkleinern</translation>
    </message>
    <message>
        <source>Zoom in</source>
        <translation>Vergrößern</translation>
    </message>
    <message>
        <source>Show the whole sheet</source>
        <translation>Ganzen Bogen zeigen</translation>
    </message>
    <message>
        <source>Make</source>
        <translation>Herstellen</translation>
    </message>
    <message>
        <source>Print the template or save it as a file</source>
        <translation>Vorlage drucken oder als Datei speichern</translation>
    </message>
</context>
<context>
    <name>edits</name>
    <message>
        <source>the title</source>
        <translation>den Titel</translation>
    </message>
    <message>
        <source>the notes</source>
        <translation>die Notizen</translation>
    </message>
    <message>
        <source>the style</source>
        <translation>die Form</translation>
    </message>
    <message>
        <source>the product</source>
        <translation>den Inhalt</translation>
    </message>
    <message>
        <source>the ease</source>
        <translation>die Luft</translation>
    </message>
    <message>
        <source>the tool grid</source>
        <translation>das Werkzeugraster</translation>
    </message>
    <message>
        <source>the card</source>
        <translation>den Karton</translation>
    </message>
</context>
<context>
    <name>labels</name>
    <message>
        <source>%1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>tile %1</source>
        <translation>Kachel %1</translation>
    </message>
    <message>
        <source>blank %1 × %2</source>
        <translation>Zuschnitt %1 × %2</translation>
    </message>
    <message>
        <source>The printed face becomes the inside.</source>
        <translation>Die bedruckte Seite wird innen.</translation>
    </message>
    <message>
        <source>Measure the bars before you cut: 100 mm and 4 in, both ways.</source>
        <translation>Vor dem Schneiden die Strecken messen: 100 mm und 4 in, in beiden Richtungen.</translation>
    </message>
    <message>
        <source>joins %1</source>
        <translation>an %1</translation>
    </message>
    <message>
        <source>Cut along the thin frame and butt the tiles; the circles close.</source>
        <translation>Am dünnen Rahmen schneiden und die Kacheln aneinanderstoßen; die Kreise schließen sich.</translation>
    </message>
    <message>
        <source>Lines</source>
        <translation>Linien</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>schneiden</translation>
    </message>
    <message>
        <source>score, fold towards you</source>
        <translation>rillen, zu dir falten</translation>
    </message>
    <message>
        <source>score, fold away from you</source>
        <translation>rillen, von dir weg falten</translation>
    </message>
    <message>
        <source>perforate</source>
        <translation>perforieren</translation>
    </message>
    <message>
        <source>mark only, guides a cut</source>
        <translation>nur anzeichnen, führt einen Schnitt</translation>
    </message>
    <message>
        <source>glue here</source>
        <translation>hier kleben</translation>
    </message>
    <message>
        <source>cut away</source>
        <translation>wegschneiden</translation>
    </message>
    <message>
        <source>Score settings</source>
        <translation>Rillmaße</translation>
    </message>
    <message>
        <source>All four sides:</source>
        <translation>Alle vier Seiten:</translation>
    </message>
    <message>
        <source>Both short sides:</source>
        <translation>Beide kurzen Seiten:</translation>
    </message>
    <message>
        <source>Both long sides:</source>
        <translation>Beide langen Seiten:</translation>
    </message>
    <message>
        <source>Left and right side:</source>
        <translation>Linke und rechte Seite:</translation>
    </message>
    <message>
        <source>Bottom and top side:</source>
        <translation>Untere und obere Seite:</translation>
    </message>
    <message>
        <source>Left side:</source>
        <translation>Linke Seite:</translation>
    </message>
    <message>
        <source>Right side:</source>
        <translation>Rechte Seite:</translation>
    </message>
    <message>
        <source>Bottom side:</source>
        <translation>Untere Seite:</translation>
    </message>
    <message>
        <source>Top side:</source>
        <translation>Obere Seite:</translation>
    </message>
    <message>
        <source>Score all the way across at %L.</source>
        <translation>Über die ganze Breite rillen bei %L.</translation>
    </message>
    <message>
        <source>Mark all the way across at %L, only to guide a cut.</source>
        <translation>Über die ganze Breite anzeichnen bei %L, nur als Hilfe zum Schneiden.</translation>
    </message>
    <message>
        <source>Score at %L from the %1 corner, from the edge down to line %2.</source>
        <translation>Bei %L von der Ecke %1 rillen, vom Rand bis zur Linie %2.</translation>
    </message>
    <message>
        <source>Mark at %L from the %1 corner, from the edge down to line %2, only to guide a cut.</source>
        <translation>Bei %L von der Ecke %1 anzeichnen, vom Rand bis zur Linie %2, nur als Hilfe zum Schneiden.</translation>
    </message>
    <message>
        <source>Score at %L from the %1 corner, down to a depth of %2.</source>
        <translation>Bei %L von der Ecke %1 rillen, %2 tief.</translation>
    </message>
    <message>
        <source>Mark at %L from the %1 corner, down to a depth of %2, only to guide a cut.</source>
        <translation>Bei %L von der Ecke %1 anzeichnen, %2 tief, nur als Hilfe zum Schneiden.</translation>
    </message>
    <message>
        <source>Score from (%1, %2) to (%3, %4), counted from the lower left corner.</source>
        <translation>Von (%1, %2) nach (%3, %4) rillen, gezählt von der Ecke unten links.</translation>
    </message>
    <message>
        <source>This piece needs no score.</source>
        <translation>Dieses Stück braucht keine Rille.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>panels</name>
    <message>
        <source>base</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>frame</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>inner wall</source>
        <translation>Innenwand</translation>
    </message>
    <message>
        <source>glue strip</source>
        <translation>Klebestreifen</translation>
    </message>
    <message>
        <source>front tab</source>
        <translation>Lasche vorn</translation>
    </message>
    <message>
        <source>back tab</source>
        <translation>Lasche hinten</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>lap</source>
        <translation>Überlappung</translation>
    </message>
    <message>
        <source>seam</source>
        <translation>Klebenaht</translation>
    </message>
    <message>
        <source>tuck flap</source>
        <translation>Einstecklasche</translation>
    </message>
    <message>
        <source>top lid</source>
        <translation>Deckel oben</translation>
    </message>
    <message>
        <source>bottom lid</source>
        <translation>Deckel unten</translation>
    </message>
    <message>
        <source>top dust flap</source>
        <translation>Staublasche oben</translation>
    </message>
    <message>
        <source>bottom dust flap</source>
        <translation>Staublasche unten</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>place, part</comment>
        <translation>%2, %1</translation>
    </message>
</context>
<context>
    <name>pieces</name>
    <message>
        <source>tray</source>
        <translation>Schale</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Banderole</translation>
    </message>
    <message>
        <source>box</source>
        <translation>Schachtel</translation>
    </message>
</context>
<context>
    <name>problems</name>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>along its length</source>
        <translation>in der Länge</translation>
    </message>
    <message>
        <source>across its width</source>
        <translation>in der Breite</translation>
    </message>
    <message>
        <source>in its height</source>
        <translation>in der Höhe</translation>
    </message>
    <message>
        <source>The folded piece leaves %1 for the product %2, and %3 is needed. Make that side larger or choose a snugger ease.</source>
        <translation>Das gefaltete Stück lässt dem Inhalt %2 %1, nötig sind %3. Diese Seite größer machen oder weniger Luft wählen.</translation>
    </message>
    <message>
        <source>“%1” is not a length. Type something like 2 5/16 in, 58.7 mm or 5,87 cm.</source>
        <translation>„%1“ ist keine Länge. Zum Beispiel 2 5/16 in, 58,7 mm oder 5,87 cm eingeben.</translation>
    </message>
    <message>
        <source>“%1” is too large for a length. Stay below 100 m.</source>
        <translation>„%1“ ist als Länge zu groß. Unter 100 m bleiben.</translation>
    </message>
    <message>
        <source>“%1” divides by zero. Type a fraction such as 5/16.</source>
        <translation>„%1“ teilt durch null. Einen Bruch wie 5/16 eingeben.</translation>
    </message>
    <message>
        <source>Two panels are called %1. Give one of them another name.</source>
        <translation>Zwei Flächen heißen %1. Einer davon einen anderen Namen geben.</translation>
    </message>
    <message>
        <source>The outline of %1 crosses itself. Change the measures beside it.</source>
        <translation>Der Umriss von %1 kreuzt sich selbst. Die Maße daneben ändern.</translation>
    </message>
    <message>
        <source>The panel %1 has only %2 mm² left. Make the measures beside it larger.</source>
        <translation>Von der Fläche %1 bleiben nur %2 mm². Die Maße daneben größer machen.</translation>
    </message>
    <message>
        <source>The panels %1 and %2 overlap on the sheet by %3 mm². Make one of them shorter or narrower.</source>
        <translation>Die Flächen %1 und %2 überdecken sich auf dem Bogen um %3 mm². Eine davon kürzer oder schmaler machen.</translation>
    </message>
    <message>
        <source>The score between %1 and %2 leaves the edge they share. Make the flap no longer than that edge.</source>
        <translation>Die Rille zwischen %1 und %2 verlässt ihre gemeinsame Kante. Die Lasche nicht länger als diese Kante machen.</translation>
    </message>
    <message>
        <source>The score of %1 is only %2 long. Make the flap wider at its score.</source>
        <translation>Die Rille von %1 ist nur %2 lang. Die Lasche an der Rille breiter machen.</translation>
    </message>
    <message>
        <source>The flap %1 is %2 wide; adhesive needs %3. Make the flap wider or choose thinner card.</source>
        <translation>Die Lasche %1 ist %2 breit; Kleber braucht %3. Die Lasche breiter machen oder dünneren Karton wählen.</translation>
    </message>
    <message>
        <source>An opening reaches over the edge of %1. Make it smaller or move it inwards.</source>
        <translation>Eine Öffnung reicht über den Rand von %1. Kleiner machen oder nach innen rücken.</translation>
    </message>
    <message>
        <source>%1 is to be joined to a panel that does not exist. Name a panel of this net.</source>
        <translation>%1 soll an eine Fläche, die es nicht gibt. Eine Fläche dieses Netzes nennen.</translation>
    </message>
    <message>
        <source>The net falls into %1 pieces. Every panel must hang on the others by a score.</source>
        <translation>Das Netz zerfällt in %1 Stücke. Jede Fläche muss mit einer Rille an den anderen hängen.</translation>
    </message>
    <message>
        <source>Folded, %1 stands %3 away from %2. Change the measures between them so that they meet.</source>
        <translation>Gefaltet steht %1 um %3 von %2 ab. Die Maße dazwischen so ändern, dass sie sich treffen.</translation>
    </message>
    <message>
        <source>Folded, %3 percent of %1 reaches past %2. Make the flap smaller.</source>
        <translation>Gefaltet ragen %3 Prozent von %1 über %2 hinaus. Die Lasche kleiner machen.</translation>
    </message>
    <message>
        <source>Folded, the score of %1 lies %3 away from the edge of %2. Change the measures between them so that they meet.</source>
        <translation>Gefaltet liegt die Rille von %1 um %3 neben der Kante von %2. Die Maße dazwischen so ändern, dass sie sich treffen.</translation>
    </message>
    <message>
        <source>There is no style “%1”. Choose one that “creasewright styles” lists.</source>
        <translation>Es gibt keine Form „%1“. Eine wählen, die „creasewright styles“ aufzählt.</translation>
    </message>
    <message>
        <source>The style %1 has no measure “%2”. “creasewright styles” lists the ones it has.</source>
        <translation>Die Form %1 hat kein Maß „%2“. „creasewright styles“ zählt die vorhandenen auf.</translation>
    </message>
    <message>
        <source>“%2” cannot be read as %1. Type a length such as 2 5/16 in or 58.7 mm, or a whole number where pieces are counted.</source>
        <translation>„%2“ ist nicht als %1 zu lesen. Eine Länge wie 2 5/16 in oder 58,7 mm eingeben, oder eine ganze Zahl, wo gezählt wird.</translation>
    </message>
    <message>
        <source>%1 is %2, and %3 is the least that works here. Make it %3 or more.</source>
        <translation>%1 ist %2, und %3 ist das Mindeste, das hier geht. %3 oder mehr daraus machen.</translation>
    </message>
    <message>
        <source>%1 is %2, and %3 is the most that fits here. Make it %3 or less.</source>
        <translation>%1 ist %2, und %3 ist das Höchste, das hier passt. %3 oder weniger daraus machen.</translation>
    </message>
    <message>
        <source>“%1” is not a product. Type something like box:60x35x120mm, cylinder:40x120mm, sphere:42.7mm, tube:35x20x110mm or card:85.6x54x0.76mm.</source>
        <translation>„%1“ ist kein Inhalt. Zum Beispiel box:60x35x120mm, cylinder:40x120mm, sphere:42.7mm, tube:35x20x110mm oder card:85.6x54x0.76mm eingeben.</translation>
    </message>
    <message>
        <source>A side of the product is %1. Stay at %2 or below.</source>
        <translation>Eine Seite des Inhalts ist %1. Höchstens %2 nehmen.</translation>
    </message>
    <message>
        <source>A side of the product is %1. Make it at least %2.</source>
        <translation>Eine Seite des Inhalts ist %1. Mindestens %2 nehmen.</translation>
    </message>
    <message>
        <source>There is no card “%1”. Choose a listed card or give its thickness, such as 0.3mm, 12pt or 300gsm.</source>
        <translation>Es gibt keinen Karton „%1“. Einen aus der Liste wählen oder die Dicke angeben, etwa 0.3mm, 12pt oder 300gsm.</translation>
    </message>
    <message>
        <source>The card is %1 thick. Choose one of %2 or less.</source>
        <translation>Der Karton ist %1 dick. Einen von höchstens %2 wählen.</translation>
    </message>
    <message>
        <source>There is no ease “%1”. Choose snug, easy or loose.</source>
        <translation>Es gibt keine Luft „%1“. snug (knapp), easy (leicht) oder loose (locker) wählen.</translation>
    </message>
    <message>
        <source>There is no tool grid “%1”. Choose 1/8in, 1/16in, 1mm or none.</source>
        <translation>Es gibt kein Werkzeugraster „%1“. 1/8in, 1/16in, 1mm oder none (keins) wählen.</translation>
    </message>
    <message>
        <source>Two scores on %1 are only %2 apart; below %3 the card may tear or not fold clean. Make the strip wider or choose thinner card.</source>
        <translation>Zwei Rillen an %1 liegen nur %2 auseinander; unter %3 kann der Karton reißen oder unsauber falten. Den Streifen breiter machen oder dünneren Karton wählen.</translation>
    </message>
    <message>
        <source>There is no paper “%1”. Choose one such as a4 or letter.</source>
        <translation>Es gibt kein Papier „%1“. Eines wie a4 oder letter wählen.</translation>
    </message>
    <message>
        <source>A margin of %1 leaves no room on %2. Choose a smaller margin or larger paper.</source>
        <translation>Ein Rand von %1 lässt auf %2 keinen Platz. Einen kleineren Rand oder größeres Papier wählen.</translation>
    </message>
    <message>
        <source>The template would take %1 pages, more than %2. Choose larger paper or a smaller design.</source>
        <translation>Die Vorlage bräuchte %1 Seiten, mehr als %2. Größeres Papier oder einen kleineren Entwurf wählen.</translation>
    </message>
    <message>
        <source>“%1” cannot be read (%2). Check the name and that you may open it.</source>
        <translation>„%1“ lässt sich nicht lesen (%2). Den Namen prüfen und ob die Datei geöffnet werden darf.</translation>
    </message>
    <message>
        <source>“%1” cannot be written (%2). Choose a folder you may write to, with room left.</source>
        <translation>„%1“ lässt sich nicht schreiben (%2). Einen Ordner wählen, in den geschrieben werden darf und der Platz hat.</translation>
    </message>
    <message>
        <source>“%1” has %2 bytes, more than the %3 a design may have. Choose a design saved by this program.</source>
        <translation>„%1“ hat %2 Bytes, mehr als die %3, die ein Entwurf haben darf. Einen Entwurf wählen, den dieses Programm gespeichert hat.</translation>
    </message>
    <message>
        <source>“%1” is not a Creasewright design. Choose a .cwdesign file.</source>
        <translation>„%1“ ist kein Creasewright-Entwurf. Eine .cwdesign-Datei wählen.</translation>
    </message>
    <message>
        <source>“%1” was saved by a newer Creasewright (format %2; this one reads up to %3). Open it with the newer program.</source>
        <translation>„%1“ wurde mit einem neueren Creasewright gespeichert (Format %2; dieses liest bis %3). Mit dem neueren Programm öffnen.</translation>
    </message>
    <message>
        <source>The design has no field “%1”. Add it or open another copy.</source>
        <translation>Dem Entwurf fehlt das Feld „%1“. Ergänzen oder eine andere Kopie öffnen.</translation>
    </message>
    <message>
        <source>“%2” is not a value for the field “%1”. Correct it or open another copy.</source>
        <translation>„%2“ ist kein Wert für das Feld „%1“. Berichtigen oder eine andere Kopie öffnen.</translation>
    </message>
</context>
<context>
    <name>products</name>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Crimp width</source>
        <translation>Breite der Naht</translation>
    </message>
    <message>
        <source>Body thickness</source>
        <translation>Dicke des Körpers</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Box</source>
        <translation>Quader</translation>
    </message>
    <message>
        <source>Cylinder</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>Ball</source>
        <translation>Kugel</translation>
    </message>
    <message>
        <source>Tube</source>
        <translation>Tube</translation>
    </message>
    <message>
        <source>Flat card</source>
        <translation>Karte</translation>
    </message>
</context>
<context>
    <name>stages</name>
    <message>
        <source>roll the long sides</source>
        <translation>die langen Seiten einrollen</translation>
    </message>
    <message>
        <source>raise the long sides</source>
        <translation>die langen Seiten aufstellen</translation>
    </message>
    <message>
        <source>fold the tabs</source>
        <translation>die Laschen falten</translation>
    </message>
    <message>
        <source>roll the short sides</source>
        <translation>die kurzen Seiten einrollen</translation>
    </message>
    <message>
        <source>raise the short sides</source>
        <translation>die kurzen Seiten aufstellen</translation>
    </message>
    <message>
        <source>wrap the narrow part round</source>
        <translation>den schmalen Teil herumlegen</translation>
    </message>
    <message>
        <source>wrap the wide part round and glue</source>
        <translation>den breiten Teil herumlegen und kleben</translation>
    </message>
    <message>
        <source>fold the walls and glue the seam</source>
        <translation>die Wände falten und die Naht kleben</translation>
    </message>
    <message>
        <source>fold in the bottom dust flaps</source>
        <translation>die unteren Staublaschen einfalten</translation>
    </message>
    <message>
        <source>fold the bottom tuck flap</source>
        <translation>die untere Einstecklasche falten</translation>
    </message>
    <message>
        <source>close the bottom lid</source>
        <translation>den unteren Deckel schließen</translation>
    </message>
    <message>
        <source>fold in the top dust flaps</source>
        <translation>die oberen Staublaschen einfalten</translation>
    </message>
    <message>
        <source>fold the top tuck flap</source>
        <translation>die obere Einstecklasche falten</translation>
    </message>
    <message>
        <source>close the top lid</source>
        <translation>den oberen Deckel schließen</translation>
    </message>
</context>
<context>
    <name>styles</name>
    <message>
        <source>Framed tray</source>
        <translation>Rahmenschale</translation>
    </message>
    <message>
        <source>The product lies in a recess with a mitred rim around it.</source>
        <translation>Der Inhalt liegt in einer Mulde mit Rahmen auf Gehrung.</translation>
    </message>
    <message>
        <source>Opening length</source>
        <translation>Länge der Öffnung</translation>
    </message>
    <message>
        <source>Between the inner walls of the short sides.</source>
        <translation>Zwischen den Innenwänden der kurzen Seiten.</translation>
    </message>
    <message>
        <source>Opening width</source>
        <translation>Breite der Öffnung</translation>
    </message>
    <message>
        <source>Between the inner walls of the long sides.</source>
        <translation>Zwischen den Innenwänden der langen Seiten.</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>From the base to the frame. At least the smallest tab.</source>
        <translation>Vom Boden bis zum Rahmen. Mindestens die kleinste Lasche.</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>Width of the rim. At least the smallest glue strip.</source>
        <translation>Breite des Randes. Mindestens der kleinste Klebestreifen.</translation>
    </message>
    <message>
        <source>Glue strip</source>
        <translation>Klebestreifen</translation>
    </message>
    <message>
        <source>Turned back under the frame, so no wider than the frame.</source>
        <translation>Unter den Rahmen zurückgelegt, also nicht breiter als der Rahmen.</translation>
    </message>
    <message>
        <source>Tab width</source>
        <translation>Laschenbreite</translation>
    </message>
    <message>
        <source>Measured up the wall from the base line, so no wider than the depth.</source>
        <translation>An der Wand hoch gemessen, also nicht breiter als die Tiefe.</translation>
    </message>
    <message>
        <source>Belly band</source>
        <translation>Banderole</translation>
    </message>
    <message>
        <source>A band that slides round a box and closes at the back.</source>
        <translation>Ein Band, das sich um eine Schachtel schiebt und hinten schließt.</translation>
    </message>
    <message>
        <source>Box length</source>
        <translation>Länge der Schachtel</translation>
    </message>
    <message>
        <source>Outside length of the box, along the band&apos;s edges.</source>
        <translation>Außenlänge der Schachtel, entlang der Kanten des Bandes.</translation>
    </message>
    <message>
        <source>Box width</source>
        <translation>Breite der Schachtel</translation>
    </message>
    <message>
        <source>Outside width of the box.</source>
        <translation>Außenbreite der Schachtel.</translation>
    </message>
    <message>
        <source>Box depth</source>
        <translation>Tiefe der Schachtel</translation>
    </message>
    <message>
        <source>Outside depth of the box.</source>
        <translation>Außentiefe der Schachtel.</translation>
    </message>
    <message>
        <source>Ease on the width</source>
        <translation>Luft in der Breite</translation>
    </message>
    <message>
        <source>Room to slide, on the width.</source>
        <translation>Platz zum Schieben, in der Breite.</translation>
    </message>
    <message>
        <source>Ease on the length</source>
        <translation>Luft in der Länge</translation>
    </message>
    <message>
        <source>How much longer than the box the band is.</source>
        <translation>Wie viel länger als die Schachtel das Band ist.</translation>
    </message>
    <message>
        <source>Overlap</source>
        <translation>Überlappung</translation>
    </message>
    <message>
        <source>Glued lap at the back, narrower than the wide part.</source>
        <translation>Geklebte Überlappung hinten, schmaler als der breite Teil.</translation>
    </message>
    <message>
        <source>Wide part</source>
        <translation>Breiter Teil</translation>
    </message>
    <message>
        <source>The part of the back that lies on top, lap counted.</source>
        <translation>Der Teil der Rückseite, der oben liegt, mit Überlappung.</translation>
    </message>
    <message>
        <source>Straight tuck box</source>
        <translation>Einsteckschachtel</translation>
    </message>
    <message>
        <source>Four walls with a glued seam; both lids tuck in at the front.</source>
        <translation>Vier Wände mit geklebter Naht; beide Deckel stecken vorn ein.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>The longer side of the opening.</source>
        <translation>Die längere Seite der Öffnung.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>The shorter side of the opening. At least the tuck flap and 3 mm.</source>
        <translation>Die kürzere Seite der Öffnung. Mindestens die Einstecklasche und 3 mm.</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>From lid to lid. The two tuck flaps must not meet.</source>
        <translation>Von Deckel zu Deckel. Die Einstecklaschen dürfen sich nicht treffen.</translation>
    </message>
    <message>
        <source>Tuck flap</source>
        <translation>Einstecklasche</translation>
    </message>
    <message>
        <source>Goes in behind the front, at most 3 mm less than the width.</source>
        <translation>Steckt hinter der Vorderseite, höchstens die Breite weniger 3 mm.</translation>
    </message>
    <message>
        <source>Glue seam</source>
        <translation>Klebenaht</translation>
    </message>
    <message>
        <source>Joins the back to the right wall, narrower than the width.</source>
        <translation>Verbindet Rückseite und rechte Wand, schmaler als die Breite.</translation>
    </message>
    <message>
        <source>Thumb notch</source>
        <translation>Daumenmulde</translation>
    </message>
    <message>
        <source>A half-round notch in the front for opening the lids.</source>
        <translation>Eine halbrunde Mulde vorn zum Öffnen der Deckel.</translation>
    </message>
</context>
</TS>
