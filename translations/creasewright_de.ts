<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>EdgeTool</name>
    <message>
        <source>Shape an edge</source>
        <translation>Kante formen</translation>
    </message>
</context>
<context>
    <name>EditTool</name>
    <message>
        <source>%1: click the panel where it goes.</source>
        <translation>%1: auf die Fläche klicken, an die passende Stelle.</translation>
    </message>
    <message>
        <source>%1: click the cut edge where it goes.</source>
        <translation>%1: auf die Schnittkante klicken, an die passende Stelle.</translation>
    </message>
    <message>
        <source>%1: click the fold.</source>
        <translation>%1: auf den Falz klicken.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>number key, kind</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Added to %1: %2. Its measures stand under “Changes”.</source>
        <translation>Hinzugefügt (%1): %2. Die Maße stehen unter „Änderungen“.</translation>
    </message>
</context>
<context>
    <name>FlapTool</name>
    <message>
        <source>Add a flap</source>
        <translation>Klappe hinzufügen</translation>
    </message>
</context>
<context>
    <name>FoldTool</name>
    <message>
        <source>Change a fold</source>
        <translation>Falz ändern</translation>
    </message>
</context>
<context>
    <name>MeasureTool</name>
    <message>
        <source>Click the first place or line to measure from.</source>
        <translation>Erste Stelle oder Linie anklicken, von der gemessen wird.</translation>
    </message>
    <message>
        <source>Click the second place or line; Esc begins anew.</source>
        <translation>Zweite Stelle oder Linie anklicken; Esc beginnt von vorn.</translation>
    </message>
    <message>
        <source>Click to measure anew.</source>
        <translation>Für eine neue Messung klicken.</translation>
    </message>
    <message>
        <source>%1° between the lines</source>
        <translation>%1° zwischen den Linien</translation>
    </message>
    <message>
        <source>%1: %2 across, %3 up</source>
        <translation>%1: %2 quer, %3 hoch</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
</context>
<context>
    <name>NotchTool</name>
    <message>
        <source>Cut a notch</source>
        <translation>Kerbe schneiden</translation>
    </message>
</context>
<context>
    <name>OpeningTool</name>
    <message>
        <source>Cut an opening</source>
        <translation>Öffnung schneiden</translation>
    </message>
</context>
<context>
    <name>RemoveTool</name>
    <message>
        <source>Leave a panel out</source>
        <translation>Fläche weglassen</translation>
    </message>
</context>
<context>
    <name>SelectTool</name>
    <message>
        <source>Point at a panel or a line. Pull a line or a corner to change the box; click a dimension to type it.</source>
        <translation>Auf eine Fläche oder Linie zeigen. An Linie oder Ecke ziehen ändert die Schachtel; ein Maß anklicken, um es einzugeben.</translation>
    </message>
    <message>
        <source>This distance follows from no measure.</source>
        <translation>Dieser Abstand folgt aus keinem Maß.</translation>
    </message>
    <message>
        <source>Cut at %1</source>
        <translation>Schnitt an %1</translation>
    </message>
    <message numerus="yes">
        <source>%n fold(s) at one setting</source>
        <translation>
            <numerusform>%n Falz bei dieser Einstellung</numerusform>
            <numerusform>%n Falze bei dieser Einstellung</numerusform>
        </translation>
    </message>
    <message>
        <source>Fold between %1 and %2</source>
        <translation>Falz zwischen %1 und %2</translation>
    </message>
    <message>
        <source>follows from no measure</source>
        <translation>folgt aus keinem Maß</translation>
    </message>
    <message>
        <source>pull to change %1</source>
        <translation>ziehen ändert %1</translation>
    </message>
    <message>
        <source>%1   %2 × %3</source>
        <translation>%1   %2 × %3</translation>
    </message>
    <message>
        <source>Select and pull</source>
        <translation>Wählen und ziehen</translation>
    </message>
    <message>
        <source>Click to type another distance.</source>
        <translation>Zum Eingeben eines anderen Abstands klicken.</translation>
    </message>
</context>
<context>
    <name>SlitTool</name>
    <message>
        <source>Cut slits and holes</source>
        <translation>Schlitze und Löcher schneiden</translation>
    </message>
</context>
<context>
    <name>SplitTool</name>
    <message>
        <source>Click a panel for a level score, with Shift for an upright one, or pull from one of its edges to another.</source>
        <translation>Auf eine Fläche klicken: waagerechte Rilllinie, mit der Umschalttaste eine senkrechte. Oder von einer ihrer Kanten zu einer anderen ziehen.</translation>
    </message>
    <message>
        <source>Score across a panel</source>
        <translation>Fläche mit einer Rilllinie teilen</translation>
    </message>
</context>
<context>
    <name>TextTool</name>
    <message>
        <source>Write and mark</source>
        <translation>Beschriften und anzeichnen</translation>
    </message>
</context>
<context>
    <name>answers</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>cli</name>
    <message>
        <source>%1: This argument takes one value. Write it once, with its value after it.</source>
        <translation>%1: Dieses Argument nimmt einen Wert. Einmal schreiben, mit dem Wert dahinter.</translation>
    </message>
    <message>
        <source>%1: This cannot be read. Run creasewright --help to see what can be written.</source>
        <translation>%1: Das ist nicht lesbar. creasewright --help zeigt, was möglich ist.</translation>
    </message>
    <message>
        <source>Design small gift packaging from folded card. Without a command the window opens.</source>
        <translation>Kleine Geschenkverpackungen aus gefaltetem Karton entwerfen. Ohne Befehl öffnet sich das Fenster.</translation>
    </message>
    <message>
        <source>designs to open, each in a window of its own</source>
        <translation>Entwürfe, die geöffnet werden, jeder in einem eigenen Fenster</translation>
    </message>
    <message>
        <source>print the program&apos;s version</source>
        <translation>die Version des Programms ausgeben</translation>
    </message>
    <message>
        <source>list every style and its measures, or rank them for a product</source>
        <translation>alle Modelle mit ihren Maßen auflisten oder für einen Inhalt ordnen</translation>
    </message>
    <message>
        <source>a sheet at hand; may be repeated</source>
        <translation>ein vorhandener Bogen; mehrfach möglich</translation>
    </message>
    <message>
        <source>for other programs</source>
        <translation>für andere Programme</translation>
    </message>
    <message>
        <source>list what can go with a box: bands, mats, labels, windows</source>
        <translation>aufführen, welche Extras es gibt: Banderolen, Zierpapiere, Etiketten, Fenster</translation>
    </message>
    <message>
        <source>what goes in, such as box:60x35x120mm or cylinder:40x120mm</source>
        <translation>was hineinkommt, etwa box:60x35x120mm oder cylinder:40x120mm</translation>
    </message>
    <message>
        <source>room around the product</source>
        <translation>Luft um den Inhalt</translation>
    </message>
    <message>
        <source>what your ruler or board can hit</source>
        <translation>was sich an Lineal oder Rillbrett einstellen lässt</translation>
    </message>
    <message>
        <source>write a new design</source>
        <translation>einen neuen Entwurf schreiben</translation>
    </message>
    <message>
        <source>one measure of the style; may be repeated</source>
        <translation>ein Maß des Modells; mehrfach möglich</translation>
    </message>
    <message>
        <source>what goes with the box, such as label:shape=oval,text=Plum jam; may be repeated</source>
        <translation>ein Extra zur Schachtel, etwa label:shape=oval,text=Pflaumenmus; mehrfach möglich</translation>
    </message>
    <message>
        <source>how wide the scoring board is, such as 12in or 30cm</source>
        <translation>wie breit das Rillbrett ist, etwa 12in oder 30cm</translation>
    </message>
    <message>
        <source>title on the printed pages</source>
        <translation>Titel auf den gedruckten Seiten</translation>
    </message>
    <message>
        <source>file to write</source>
        <translation>Datei, die geschrieben wird</translation>
    </message>
    <message>
        <source>run every check: 0 all hold, 1 some fail, 2 unreadable</source>
        <translation>alles prüfen: 0 alles passt, 1 etwas passt nicht, 2 nicht lesbar</translation>
    </message>
    <message>
        <source>design to check</source>
        <translation>Entwurf, der geprüft wird</translation>
    </message>
    <message>
        <source>write the template or the net</source>
        <translation>die Vorlage oder das Netz schreiben</translation>
    </message>
    <message>
        <source>only this piece</source>
        <translation>nur dieses Teil</translation>
    </message>
    <message>
        <source>paper of a PDF: a4, letter ...</source>
        <translation>Papier eines PDF: a4, letter ...</translation>
    </message>
    <message>
        <source>units of printed measures</source>
        <translation>Einheit der gedruckten Maße</translation>
    </message>
    <message>
        <source>write the illustrated guide</source>
        <translation>die bebilderte Anleitung schreiben</translation>
    </message>
    <message>
        <source>file to write, or a folder for pictures and text</source>
        <translation>zu schreibende Datei, oder ein Ordner für Bilder und Text</translation>
    </message>
    <message>
        <source>units of all measures</source>
        <translation>Einheiten aller Maße</translation>
    </message>
    <message>
        <source>language of the guide</source>
        <translation>Sprache der Anleitung</translation>
    </message>
    <message>
        <source>plan the sheets of a class</source>
        <translation>die Bögen für einen Kurs planen</translation>
    </message>
    <message>
        <source>a kit, or the designs everybody makes</source>
        <translation>ein Kurspaket, oder die Entwürfe, die alle machen</translation>
    </message>
    <message>
        <source>how many of a design each person makes; may be repeated</source>
        <translation>wie viele von einem Entwurf jede Person macht; mehrfach möglich</translation>
    </message>
    <message>
        <source>cut only one piece of a design; may be repeated</source>
        <translation>nur ein Teil eines Entwurfs schneiden; mehrfach möglich</translation>
    </message>
    <message>
        <source>a rectangle for every bag, such as 4x6in:count=2,card=300gsm,name=Panel; may be repeated</source>
        <translation>ein Rechteck für jede Tüte, etwa 4x6in:count=2,card=300gsm,name=Panel; mehrfach möglich</translation>
    </message>
    <message>
        <source>what the class is called</source>
        <translation>wie der Kurs heißt</translation>
    </message>
    <message>
        <source>how many people</source>
        <translation>wie viele Personen</translation>
    </message>
    <message>
        <source>sets more than people</source>
        <translation>Sätze mehr als Personen</translation>
    </message>
    <message>
        <source>a sheet at hand by name or size; may be repeated</source>
        <translation>ein vorhandener Bogen mit Name oder Größe; mehrfach möglich</translation>
    </message>
    <message>
        <source>table of sheets with prices, as CSV</source>
        <translation>Tabelle der Bögen mit Preisen, als CSV</translation>
    </message>
    <message>
        <source>table of tape, ribbon and glue, as CSV</source>
        <translation>Tabelle von Klebeband, Schleifenband und Klebstoff, als CSV</translation>
    </message>
    <message>
        <source>names for the bags, one a line</source>
        <translation>Namen für die Tüten, einer je Zeile</translation>
    </message>
    <message>
        <source>size of a bag&apos;s label, such as 90x50mm</source>
        <translation>Größe eines Tütenetiketts, etwa 90x50mm</translation>
    </message>
    <message>
        <source>turn no blank against the grain of its sheet</source>
        <translation>keinen Zuschnitt quer zur Laufrichtung seines Bogens drehen</translation>
    </message>
    <message>
        <source>print this help</source>
        <translation>diese Hilfe ausgeben</translation>
    </message>
    <message>
        <source>Usage</source>
        <translation>Aufruf</translation>
    </message>
    <message>
        <source>OPTIONS</source>
        <translation>OPTIONEN</translation>
    </message>
    <message>
        <source>COMMAND</source>
        <translation>BEFEHL</translation>
    </message>
    <message>
        <source>Files</source>
        <translation>Dateien</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>Commands</source>
        <translation>Befehle</translation>
    </message>
    <message>
        <source>%1: The command %2 does not know this. Run creasewright %2 --help to see what it knows.</source>
        <translation>%1: Der Befehl %2 kennt das nicht. creasewright %2 --help zeigt, was er kennt.</translation>
    </message>
    <message>
        <source>All checks hold.</source>
        <translation>Alles passt.</translation>
    </message>
    <message>
        <source>There is no display to open a window on. Run creasewright --help for the commands that need none.</source>
        <translation>Es gibt keinen Bildschirm für ein Fenster. creasewright --help zeigt die Befehle, die keinen brauchen.</translation>
    </message>
    <message>
        <source>FILE: Name the design to read, such as tray.cwdesign.</source>
        <translation>FILE: Den Entwurf nennen, etwa tray.cwdesign.</translation>
    </message>
    <message>
        <source>-o: Say where to write, such as -o tray.pdf.</source>
        <translation>-o: Angeben, wohin geschrieben wird, etwa -o tray.pdf.</translation>
    </message>
    <message>
        <source>-o: “%1” names no kind of file. Let it end in .%2.</source>
        <translation>-o: „%1“ nennt keine Dateiart. Die Endung muss .%2 sein.</translation>
    </message>
    <message>
        <source> or .</source>
        <comment>between file endings</comment>
        <translation> oder .</translation>
    </message>
    <message>
        <source>--units: “%1” is no unit here. Write in or mm.</source>
        <translation>--units: „%1“ ist hier keine Einheit. Möglich sind in oder mm.</translation>
    </message>
    <message>
        <source>--piece: The design has no piece “%1”. Its pieces are: %2.</source>
        <translation>--piece: Der Entwurf hat kein Teil „%1“. Seine Teile sind: %2.</translation>
    </message>
    <message>
        <source>--set: “%1” has no equals sign. Write KEY=VALUE, such as --set depth=25mm.</source>
        <translation>--set: „%1“ hat kein Gleichheitszeichen. Möglich ist KEY=VALUE, etwa --set depth=25mm.</translation>
    </message>
    <message>
        <source>--style: Say which style, such as --style framed-tray. “creasewright styles” lists them.</source>
        <translation>--style: Ein Modell nennen, etwa --style framed-tray. „creasewright styles“ listet sie auf.</translation>
    </message>
    <message>
        <source>-o: Say where to write the design, such as -o tray.cwdesign.</source>
        <translation>-o: Angeben, wohin der Entwurf kommt, etwa -o tray.cwdesign.</translation>
    </message>
    <message>
        <source>-o: “%1” is no name for a design. Let it end in .cwdesign.</source>
        <translation>-o: „%1“ ist kein Name für einen Entwurf. Die Endung muss .cwdesign sein.</translation>
    </message>
    <message>
        <source>yes (1)</source>
        <translation>ja (1)</translation>
    </message>
    <message>
        <source>no (0)</source>
        <translation>nein (0)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 (turned)</source>
        <translation>%1 (gedreht)</translation>
    </message>
    <message>
        <source>fits none of the sheets</source>
        <translation>passt auf keinen der Bögen</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>passt auf %1</translation>
    </message>
    <message>
        <source>%1 x %2</source>
        <translation>%1 x %2</translation>
    </message>
    <message>
        <source>%1 (%2 times) %3</source>
        <translation>%1 (%2-mal) %3</translation>
    </message>
    <message>
        <source>    %1; scores: %2, cuts: %3, glue: %4, difficulty: %5 of 3</source>
        <translation>    %1; Rilllinien: %2, Schnitte: %3, Klebstoff: %4, Schwierigkeit: %5 von 3</translation>
    </message>
    <message>
        <source>    Some checks fail. “creasewright check” names them.</source>
        <translation>    Etwas passt nicht. „creasewright check“ nennt es.</translation>
    </message>
    <message>
        <source>-o: Say where to write, such as -o guide.pdf.</source>
        <translation>-o: Angeben, wohin geschrieben wird, etwa -o guide.pdf.</translation>
    </message>
    <message>
        <source>-o: “%1” names no kind of guide. Let it end in .pdf or .html, or in / for a folder of pictures.</source>
        <translation>-o: „%1“ nennt keine Art von Anleitung. Die Endung muss .pdf oder .html sein, oder / für einen Ordner mit Bildern.</translation>
    </message>
    <message>
        <source>--units: “%1” is no unit here. Write in, mm or both.</source>
        <translation>--units: „%1“ ist hier keine Einheit. Möglich sind in, mm oder both.</translation>
    </message>
    <message>
        <source>FILE: Name a kit or the designs everybody makes, such as tray.cwdesign.</source>
        <translation>FILE: Ein Kurspaket nennen oder die Entwürfe, die alle machen, etwa tray.cwdesign.</translation>
    </message>
    <message>
        <source>-o: Say where to write, such as -o class.pdf.</source>
        <translation>-o: Angeben, wohin geschrieben wird, etwa -o class.pdf.</translation>
    </message>
    <message>
        <source>-o: “%1” names no kind of plan. Let it end in .pdf, .json, .csv or .cwkit, or in / for a folder with all a class needs.</source>
        <translation>-o: „%1“ nennt keine Art von Plan. Die Endung muss .pdf, .json, .csv oder .cwkit sein, oder / für einen Ordner mit allem, was ein Kurs braucht.</translation>
    </message>
    <message>
        <source>%1: “%2” will not do. Write a whole number from %3 to %4.</source>
        <translation>%1: „%2“ geht nicht. Eine ganze Zahl von %3 bis %4 schreiben.</translation>
    </message>
    <message>
        <source>%1: “%2” will not do. Write one of the designs given, an equals sign and a value, such as tray.cwdesign=2.</source>
        <translation>%1: „%2“ geht nicht. Einen der genannten Entwürfe, ein Gleichheitszeichen und einen Wert schreiben, etwa tray.cwdesign=2.</translation>
    </message>
    <message>
        <source>--sheet: Say which sheets there are, such as --sheet 12x12.</source>
        <translation>--sheet: Angeben, welche Bögen es gibt, etwa --sheet 12x12.</translation>
    </message>
    <message>
        <source>--extra: “%1” has no equals sign. Write KIND:KEY=VALUE,KEY=VALUE, such as --extra label:shape=oval,text=Plum jam.</source>
        <translation>--extra: „%1“ hat kein Gleichheitszeichen. Möglich ist KIND:KEY=VALUE,KEY=VALUE, etwa --extra label:shape=oval,text=Pflaumenmus.</translation>
    </message>
    <message>
        <source>--blank: “%1” will not do. Write SIZE:KEY=VALUE,KEY=VALUE with count, card or name, such as --blank 4x6in:count=2,name=Panel.</source>
        <translation>--blank: „%1“ geht nicht. Möglich ist SIZE:KEY=VALUE,KEY=VALUE mit count, card oder name, etwa --blank 4x6in:count=2,name=Panel.</translation>
    </message>
    <message>
        <source>%1: “%2” is no size. Write something like 90x50mm, each side from %3 to %4.</source>
        <translation>%1: „%2“ ist keine Größe. Etwas wie 90x50mm schreiben, jede Seite von %3 bis %4.</translation>
    </message>
    <message>
        <source>size of a cutting machine&apos;s carrier sheet, such as 12x12in: writes its layouts into a folder</source>
        <translation>Größe der Trägermatte eines Schneideplotters, etwa 12x12in: schreibt ihre Aufteilungen in einen Ordner</translation>
    </message>
    <message>
        <source>-o: With --machine name a folder, such as -o machine/.</source>
        <translation>-o: Mit --machine einen Ordner nennen, etwa -o maschine/.</translation>
    </message>
    <message>
        <source>The output cannot be written (%1). Send it where there is room and somebody reads it.</source>
        <translation>Die Ausgabe lässt sich nicht schreiben (%1). Dorthin leiten, wo Platz ist und jemand liest.</translation>
    </message>
    <message>
        <source>-o: “%1” is no name in UTF-8. Choose another name.</source>
        <translation>-o: „%1“ ist kein Name in UTF-8. Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>-o: “%1” is read here and would be replaced. Choose another name.</source>
        <translation>-o: „%1“ wird hier gelesen und würde ersetzt. Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>%1: This argument is empty. Write a value after it or leave it out.</source>
        <translation>%1: Dieses Argument ist leer. Einen Wert dahinter schreiben oder es weglassen.</translation>
    </message>
    <message>
        <source>Planning for %1 s; Ctrl+C gives up.</source>
        <translation>Es wird seit %1 s geplant; Strg+C bricht ab.</translation>
    </message>
    <message>
        <source>The card in work is at most %1 % above the best.</source>
        <translation>Der Karton in Arbeit liegt höchstens %1 % über dem Besten.</translation>
    </message>
    <message>
        <source>Warning: %1</source>
        <translation>Hinweis: %1</translation>
    </message>
    <message>
        <source>card by id (the command cards lists them), or by measure: 0.3mm, 300gsm</source>
        <translation>Karton nach Kennung (der Befehl cards listet sie auf) oder Maß: 0.3mm, 300gsm</translation>
    </message>
    <message>
        <source>or up to %1</source>
        <translation>oder bis %1</translation>
    </message>
    <message>
        <source>automatic (0)</source>
        <translation>automatisch (0)</translation>
    </message>
    <message>
        <source>Any other card by its measure: 0.3mm, 12pt, 300gsm or 300gsm@1.3 (bulk).</source>
        <translation>Jeder andere Karton nach seinem Maß: 0.3mm, 12pt, 300gsm oder 300gsm@1.3 (Volumen).</translation>
    </message>
    <message>
        <source>weight not known</source>
        <translation>Gewicht unbekannt</translation>
    </message>
    <message>
        <source>%1 g/m²</source>
        <translation>%1 g/m²</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>list the cards that can be named, with thickness and weight</source>
        <translation>die Kartons auflisten, die sich nennen lassen, mit Dicke und Gewicht</translation>
    </message>
    <message>
        <source>cut no blank that nobody needs: the last sheets only in part</source>
        <translation>keinen Zuschnitt schneiden, den niemand braucht: die letzten Bögen nur zum Teil</translation>
    </message>
    <message>
        <source>what the sheets are planned for: easy (to cut; for a class) or fewest (sheets)</source>
        <translation>wofür die Bögen geplant werden: easy (leicht zu schneiden, für einen Kurs) oder fewest (wenigste Bögen)</translation>
    </message>
    <message>
        <source>--plan: “%1” is no plan here. Write easy or fewest.</source>
        <translation>--plan: „%1“ ist hier kein Plan. easy oder fewest schreiben.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>a list and its last</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1: There is no such command. The commands are %2.</source>
        <translation>%1: Diesen Befehl gibt es nicht. Die Befehle heißen %2.</translation>
    </message>
    <message>
        <source>--language: “%1” is no language here. Write %2.</source>
        <translation>--language: „%1“ ist hier keine Sprache. Möglich sind %2.</translation>
    </message>
    <message>
        <source> or </source>
        <comment>between choices</comment>
        <translation> oder </translation>
    </message>
    <message>
        <source>--kind: “%1” is no kind of template. Choose one of: %2.</source>
        <translation>--kind: „%1“ ist keine Art von Vorlage. Zur Wahl stehen: %2.</translation>
    </message>
    <message>
        <source>--kind: Only a template as PDF comes in kinds. Let -o end in .pdf.</source>
        <translation>--kind: Nur eine Vorlage als PDF gibt es in mehreren Arten. -o auf .pdf enden lassen.</translation>
    </message>
    <message>
        <source>paper of a PDF: a4, letter ..., or its sides, such as 200x250mm</source>
        <translation>Papier einer PDF-Datei: a4, letter ... oder seine Seiten, etwa 200x250mm</translation>
    </message>
    <message>
        <source>what the printer leaves white, 5mm</source>
        <translation>was der Drucker weiß lässt, 5mm</translation>
    </message>
    <message>
        <source>--edit: “%1” names no single panel of this style. Write on= and one of these: %2.</source>
        <translation>--edit: „%1“ nennt keine einzelne Fläche dieses Modells. on= und eine von diesen schreiben: %2.</translation>
    </message>
    <message>
        <source>--edit: %1 belongs to a panel and takes no edge. Leave edge= out.</source>
        <translation>--edit: %1 gehört zu einer Fläche und nimmt keine Kante. edge= weglassen.</translation>
    </message>
    <message>
        <source>--edit: “%1” is no edge of this panel. Write edge= and one of these: %2.</source>
        <translation>--edit: „%1“ ist keine Kante dieser Fläche. edge= und eine von diesen schreiben: %2.</translation>
    </message>
    <message>
        <source>--edit: “%1” has no equals sign. Write KIND:KEY=VALUE,KEY=VALUE, such as --edit opening:on=front,shape=heart.</source>
        <translation>--edit: „%1“ hat kein Gleichheitszeichen. ART:NAME=WERT,NAME=WERT schreiben, etwa --edit opening:on=front,shape=heart.</translation>
    </message>
    <message>
        <source>--edit: %1 has no measure “%2”. “creasewright edits” lists the ones it has.</source>
        <translation>--edit: %1 hat kein Maß „%2“. „creasewright edits“ nennt die vorhandenen.</translation>
    </message>
    <message>
        <source>A length may be arithmetic with the style&apos;s measures, panel-width, panel-height, edge-length, caliper, and the change&apos;s own measures as this-KEY.</source>
        <translation>Eine Länge kann eine Rechnung sein mit den Maßen des Modells, mit panel-width, panel-height, edge-length, caliper und mit den eigenen Maßen der Änderung als this-NAME.</translation>
    </message>
    <message>
        <source>list the changes by hand and their measures, or a style&apos;s panels and edges</source>
        <translation>die Änderungen von Hand und ihre Maße nennen, oder die Flächen und Kanten eines Modells</translation>
    </message>
    <message>
        <source>list the panels and edges of a style</source>
        <translation>die Flächen und Kanten eines Modells nennen</translation>
    </message>
    <message>
        <source>a change to the net, such as opening:on=front,shape=heart; may be repeated</source>
        <translation>eine Änderung am Netz, etwa opening:on=front,shape=heart; mehrfach möglich</translation>
    </message>
    <message>
        <source>--printed: Only a PDF is corrected for a printer. Let -o end in .pdf.</source>
        <translation>--printed: Nur ein PDF wird für einen Drucker korrigiert. -o auf .pdf enden lassen.</translation>
    </message>
    <message>
        <source>how the bars of the calibration page came out of the printer, such as 159.5x240.5mm: corrects a PDF for it</source>
        <translation>wie die Strecken der Kalibrierseite aus dem Drucker kamen, etwa 159.5x240.5mm: korrigiert ein PDF dafür</translation>
    </message>
    <message>
        <source>--type: “%1” is no size of type here. Write %2.</source>
        <translation>--type: „%1“ ist hier keine Schriftgröße. %2 schreiben.</translation>
    </message>
    <message>
        <source>size of the type: 10.5, 14 or 18 points</source>
        <translation>Schriftgröße: 10,5, 14 oder 18 Punkt</translation>
    </message>
    <message>
        <source>for a printer without colours</source>
        <translation>für einen Drucker ohne Farben</translation>
    </message>
    <message>
        <source>--kind: “%1” is no kind of guide. Write %2.</source>
        <translation>--kind: „%1“ ist keine Art von Anleitung. %2 schreiben.</translation>
    </message>
    <message>
        <source>--kind: Only a guide as PDF comes in kinds. Let -o end in .pdf.</source>
        <translation>--kind: Nur eine Anleitung als PDF gibt es in Arten. -o auf .pdf enden lassen.</translation>
    </message>
    <message>
        <source>all steps, a card of measures, or a talk sheet (PDF)</source>
        <translation>alle Schritte, eine Maßkarte oder ein Sprechzettel (PDF)</translation>
    </message>
    <message>
        <source>%1: “%2” is no amount of money. Write one such as 12.50.</source>
        <translation>%1: „%2“ ist kein Geldbetrag. Einen schreiben wie 12.50.</translation>
    </message>
    <message>
        <source>printed behind prices, such as EUR</source>
        <translation>steht hinter Preisen, etwa EUR</translation>
    </message>
    <message>
        <source>what an hour of the maker&apos;s work costs</source>
        <translation>was eine Arbeitsstunde kostet</translation>
    </message>
    <message>
        <source>on material and work: room, tools, waste; 10</source>
        <translation>auf Material und Arbeit: Raum, Werkzeug, Verschnitt; 10</translation>
    </message>
    <message>
        <source>of the price, not on top of the cost; 30</source>
        <translation>vom Preis, nicht auf die Kosten; 30</translation>
    </message>
    <message>
        <source>of the price, a market&apos;s; 0</source>
        <translation>vom Preis, die eines Marktes; 0</translation>
    </message>
    <message>
        <source>of one class, whoever comes: teacher, room, travel</source>
        <translation>eines Kurses, gleich wer kommt: Leitung, Raum, Fahrt</translation>
    </message>
    <message>
        <source>id of a style, such as framed-tray, or a .cwstyle file</source>
        <translation>Kennung eines Modells, etwa framed-tray, oder eine .cwstyle-Datei</translation>
    </message>
    <message>
        <source>%1: Name the style to read, such as heart-box.cwstyle.</source>
        <translation>%1: Das Modell nennen, das gelesen werden soll, etwa herz.cwstyle.</translation>
    </message>
    <message>
        <source>style: Say what to do: keep, list, check or open, and then the file.</source>
        <translation>style: Sagen, was zu tun ist: keep, list, check oder open, und dann die Datei.</translation>
    </message>
    <message>
        <source>style: “%1” is none of keep, list, check and open. Write one of them first, then the file.</source>
        <translation>style: „%1“ ist keines von keep, list, check und open. Zuerst eines davon schreiben, dann die Datei.</translation>
    </message>
    <message>
        <source>keep, list, check and open styles of your own</source>
        <translation>eigene Modelle behalten, auflisten, prüfen und öffnen</translation>
    </message>
    <message>
        <source>keep DESIGN, list [FOLDER|FILE...], check STYLE, or open STYLE (write a design in which what the style brought can be changed)</source>
        <translation>keep ENTWURF, list [ORDNER|DATEI...], check MODELL oder open MODELL (schreibt einen Entwurf, in dem sich ändern lässt, was das Modell mitbringt)</translation>
    </message>
    <message>
        <source>keep: what the style is called</source>
        <translation>keep: wie das Modell heißt</translation>
    </message>
    <message>
        <source>keep: what it suits, in your words</source>
        <translation>keep: wofür es taugt, in eigenen Worten</translation>
    </message>
    <message>
        <source>keep: smallest and largest product, such as 30x20x40..90x60x160mm</source>
        <translation>keep: kleinster und größter Inhalt, etwa 30x20x40..90x60x160mm</translation>
    </message>
    <message>
        <source>keep: measures that a later user sees; all or none</source>
        <translation>keep: Maße, die später zu sehen sind; all (alle) oder none (keines)</translation>
    </message>
    <message>
        <source>keep: what a measure that is not seen follows, such as tuck=width/2; may be repeated</source>
        <translation>keep: wonach sich ein Maß richtet, das nicht zu sehen ist, etwa tuck=width/2; darf sich wiederholen</translation>
    </message>
    <message>
        <source>keep: the style that is changed; its id stays</source>
        <translation>keep: das Modell, das geändert wird; seine Kennung bleibt</translation>
    </message>
    <message>
        <source>check: a product to try it on; may be repeated. open: what goes in</source>
        <translation>check: ein Inhalt, an dem es geprüft wird; darf sich wiederholen. open: was hineinkommt</translation>
    </message>
    <message>
        <source>list, check: for other programs</source>
        <translation>list, check: für andere Programme</translation>
    </message>
    <message>
        <source>keep, open: file to write</source>
        <translation>keep, open: Datei, die geschrieben wird</translation>
    </message>
    <message>
        <source>--suits: “%1” is no smallest and largest product. Write something like 30x20x40..90x60x160mm.</source>
        <translation>--suits: „%1“ ist kein kleinster und größter Inhalt. Etwas wie 30x20x40..90x60x160mm schreiben.</translation>
    </message>
    <message>
        <source>--rule: “%1” has no equals sign. Write KEY=FORMULA, such as --rule tuck=width/2.</source>
        <translation>--rule: „%1“ hat kein Gleichheitszeichen. KEY=FORMEL schreiben, etwa --rule tuck=width/2.</translation>
    </message>
    <message>
        <source>style keep: One design at a time, not %1.</source>
        <translation>style keep: Ein Entwurf auf einmal, nicht %1.</translation>
    </message>
    <message>
        <source>--name: Say what the style is called, such as --name &quot;Heart box&quot;.</source>
        <translation>--name: Sagen, wie das Modell heißt, etwa --name &quot;Herzschachtel&quot;.</translation>
    </message>
    <message>
        <source>-o: Say where to write the style, such as -o heart-box.cwstyle.</source>
        <translation>-o: Sagen, wohin das Modell geschrieben wird, etwa -o herz.cwstyle.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message numerus="yes">
        <source>kept %n time(s) from %1, with %2 changes by hand</source>
        <translation>
            <numerusform>einmal behalten aus %1, Änderungen von Hand: %2</numerusform>
            <numerusform>%n-mal behalten aus %1, Änderungen von Hand: %2</numerusform>
        </translation>
    </message>
    <message>
        <source>for products from %1 to %2 mm</source>
        <translation>für Inhalte von %1 bis %2 mm</translation>
    </message>
    <message>
        <source>measures: %1</source>
        <translation>Maße: %1</translation>
    </message>
    <message>
        <source>There is no style of your own here.</source>
        <translation>Hier ist kein eigenes Modell.</translation>
    </message>
    <message>
        <source>style check: One style at a time, not %1.</source>
        <translation>style check: Ein Modell auf einmal, nicht %1.</translation>
    </message>
    <message>
        <source>%1: Only a net as SVG or DXF is made for a machine.</source>
        <translation>%1: Nur ein Netz als SVG oder DXF ist für eine Maschine.</translation>
    </message>
    <message>
        <source>--scores: “%1” is no form of score. Choose one of: %2.</source>
        <translation>--scores: „%1“ ist keine Form von Rillen. Eine davon wählen: %2.</translation>
    </message>
    <message>
        <source>--names: Only a template as PDF is made for somebody. Let -o end in .pdf.</source>
        <translation>--names: Nur eine Vorlage als PDF gibt es mit Namen. -o auf .pdf enden lassen.</translation>
    </message>
    <message>
        <source>%1: “%2” is no width of a cut here. Write 0 to 5 mm.</source>
        <translation>%1: „%2“ ist hier keine Schnittbreite. 0 bis 5 mm schreiben.</translation>
    </message>
    <message>
        <source>designs to export; - is standard input</source>
        <translation>Entwürfe zum Exportieren; - ist die Standardeingabe</translation>
    </message>
    <message>
        <source>file to write, or a folder for a file of each design</source>
        <translation>Datei zum Schreiben oder ein Ordner für je eine Datei pro Entwurf</translation>
    </message>
    <message>
        <source>kind of the files in a folder, pdf</source>
        <translation>Art der Dateien in einem Ordner, pdf</translation>
    </message>
    <message>
        <source>a set of template pages for each taker, in one PDF</source>
        <translation>ein Satz Vorlagenseiten pro Teilnehmer, in einer PDF-Datei</translation>
    </message>
    <message>
        <source>what a machine makes of scores (SVG, DXF)</source>
        <translation>was eine Maschine aus Rillen macht (SVG, DXF)</translation>
    </message>
    <message>
        <source>how wide the machine cuts: outlines move by half of it (SVG, DXF)</source>
        <translation>wie breit die Maschine schneidet: Umrisse rücken um die Hälfte davon (SVG, DXF)</translation>
    </message>
    <message>
        <source>the same for openings, where it differs</source>
        <translation>dasselbe für Öffnungen, wenn es anders ist</translation>
    </message>
    <message>
        <source>all pieces, as often as they are made, on sheets of this size (SVG, DXF)</source>
        <translation>alle Teile, so oft wie nötig, auf Bögen dieser Größe (SVG, DXF)</translation>
    </message>
    <message>
        <source>words as outlines, not as type (SVG, DXF)</source>
        <translation>Wörter als Umrisse, nicht als Schrift (SVG, DXF)</translation>
    </message>
    <message>
        <source>--hand: “%1” is no hand. Write %2.</source>
        <translation>--hand: „%1“ ist keine Hand. %2 schreiben.</translation>
    </message>
    <message>
        <source>--for: “%1” are no readers here. Write %2.</source>
        <translation>--for: „%1“ sind hier keine Leser. %2 schreiben.</translation>
    </message>
    <message>
        <source>--units: The readers of --for have their own units. Leave one of the two out.</source>
        <translation>--units: Die Leser von --for haben ihre eigenen Einheiten. Eines von beiden weglassen.</translation>
    </message>
    <message>
        <source>--paper: The readers of --for have their own paper. Leave one of the two out.</source>
        <translation>--paper: Die Leser von --for haben ihr eigenes Papier. Eines von beiden weglassen.</translation>
    </message>
    <message>
        <source>designs to explain; - is standard input</source>
        <translation>Entwürfe zum Erklären; - ist die Standardeingabe</translation>
    </message>
    <message>
        <source>a file of this kind for each design in the folder, pdf for several</source>
        <translation>eine Datei dieser Art pro Entwurf im Ordner; pdf bei mehreren</translation>
    </message>
    <message>
        <source>make the design anew for the rulers, card and paper of these readers; both writes two files</source>
        <translation>den Entwurf neu anlegen für Lineale, Karton und Papier dieser Leser; both schreibt zwei Dateien</translation>
    </message>
    <message>
        <source>hand that holds the tool: the fence and the numbers stand on its other side</source>
        <translation>Hand, die das Werkzeug hält: Anschlag und Zahlen stehen auf ihrer anderen Seite</translation>
    </message>
    <message>
        <source>--names: “%1” holds no name. Write names with commas between them.</source>
        <translation>--names: „%1“ enthält keinen Namen. Namen mit Kommas dazwischen schreiben.</translation>
    </message>
    <message>
        <source>--names: %1 names are too many for one run, at most %2.</source>
        <translation>--names: %1 Namen sind zu viele für einen Lauf, höchstens %2.</translation>
    </message>
    <message>
        <source>--names: “%1” is too long for a name, at most %2 characters.</source>
        <translation>--names: „%1“ ist zu lang für einen Namen, höchstens %2 Zeichen.</translation>
    </message>
    <message>
        <source>-: Standard input can be read once only. Write - once.</source>
        <translation>-: Die Standardeingabe lässt sich nur einmal lesen. - nur einmal schreiben.</translation>
    </message>
    <message>
        <source>--as: “%1” names no kind of file. Choose one of: %2.</source>
        <translation>--as: „%1“ ist keine Art von Datei. Eine davon wählen: %2.</translation>
    </message>
    <message>
        <source>-o: Several designs go into a folder. Let “%1” end in /.</source>
        <translation>-o: Mehrere Entwürfe kommen in einen Ordner. „%1“ auf / enden lassen.</translation>
    </message>
    <message>
        <source>--as: Only files in a folder are named for you. Let -o end in /.</source>
        <translation>--as: Nur Dateien in einem Ordner bekommen ihre Namen von selbst. -o auf / enden lassen.</translation>
    </message>
    <message>
        <source>Colours for --colour: %1; any other as #9AAF90.</source>
        <translation>Farben für --colour: %1; jede andere als #9AAF90.</translation>
    </message>
    <message>
        <source>colours of the card, such as sage, sage/cream or #9AAF90</source>
        <translation>Farben des Kartons, etwa sage, sage/cream oder #9AAF90</translation>
    </message>
    <message>
        <source>turned at will</source>
        <translation>beliebig drehbar</translation>
    </message>
    <message>
        <source>turned by quarters</source>
        <translation>in Vierteln drehbar</translation>
    </message>
    <message>
        <source>turned upside down</source>
        <translation>kopfüber drehbar</translation>
    </message>
    <message>
        <source>has an up</source>
        <translation>hat ein Oben</translation>
    </message>
    <message numerus="yes">
        <source>%n colour(s)</source>
        <translation>
            <numerusform>%n Farbe</numerusform>
            <numerusform>%n Farben</numerusform>
        </translation>
    </message>
    <message>
        <source>Write --pattern ID:scale=12mm:turn=45:colours=sage,cream:side=back and leave out what is to stay as it is; the first colour is the ground. An extra takes pattern=ID:scale=12mm and so on.</source>
        <translation>--pattern ID:scale=12mm:turn=45:colours=sage,cream:side=back schreiben und weglassen, was bleiben soll; die erste Farbe ist der Grund. Ein Extra nimmt pattern=ID:scale=12mm und so weiter.</translation>
    </message>
    <message>
        <source>list the patterns that card and paper can be printed with</source>
        <translation>die Muster auflisten, mit denen Karton und Papier bedruckt sein können</translation>
    </message>
    <message>
        <source>--photo: Photos go into the guide of one design. Keep them in the designs with “creasewright photos”.</source>
        <translation>--photo: Fotos kommen in die Anleitung eines einzelnen Entwurfs. Mit „creasewright photos“ in den Entwürfen aufheben.</translation>
    </message>
    <message>
        <source>--step-photo: “%1” has no equals sign. Write N=PICTURE, such as --step-photo 4=folding.jpg.</source>
        <translation>--step-photo: „%1“ hat kein Gleichheitszeichen. N=PICTURE schreiben, etwa --step-photo 4=falten.jpg.</translation>
    </message>
    <message>
        <source>--caption: “%1” has no equals sign. Write box=WORDS or N=WORDS.</source>
        <translation>--caption: „%1“ hat kein Gleichheitszeichen. box=WORDS oder N=WORDS schreiben.</translation>
    </message>
    <message>
        <source>%1: “%2” is no place of a photo. Write box, or a step from 1 to %3.</source>
        <translation>%1: „%2“ ist kein Platz für ein Foto. box oder einen Schritt von 1 bis %3 schreiben.</translation>
    </message>
    <message>
        <source>%1: “%2” is no step of the guide. Write a number from 1 to %3.</source>
        <translation>%1: „%2“ ist kein Schritt der Anleitung. Eine Zahl von 1 bis %3 schreiben.</translation>
    </message>
    <message>
        <source>%1: There is no photo at “%2”. “creasewright photos FILE” lists them.</source>
        <translation>%1: Bei „%2“ ist kein Foto. „creasewright photos FILE“ zeigt alle.</translation>
    </message>
    <message>
        <source>photo of the finished box: a PNG or JPEG file</source>
        <translation>Foto der fertigen Schachtel: eine PNG- oder JPEG-Datei</translation>
    </message>
    <message>
        <source>photo of the step with this number; may be repeated</source>
        <translation>Foto des Schrittes mit dieser Nummer; mehrfach möglich</translation>
    </message>
    <message>
        <source>words under a photo; may be repeated</source>
        <translation>Worte unter einem Foto; mehrfach möglich</translation>
    </message>
    <message>
        <source>take a photo out of the design; may be repeated</source>
        <translation>ein Foto aus dem Entwurf nehmen; mehrfach möglich</translation>
    </message>
    <message>
        <source>photo, %1 kB</source>
        <translation>Foto, %1 kB</translation>
    </message>
    <message>
        <source>The finished box</source>
        <translation>Die fertige Schachtel</translation>
    </message>
    <message>
        <source>keep photos for the guide in a design, or list them</source>
        <translation>Fotos für die Anleitung im Entwurf aufheben oder auflisten</translation>
    </message>
    <message>
        <source>design whose photos these are</source>
        <translation>Entwurf, zu dem die Fotos gehören</translation>
    </message>
    <message>
        <source>what the card is printed with (the command patterns lists it), such as dots or stripes:scale=12mm:turn=45:colours=cream,sage:side=back, or a picture of your own: picture:leaves.png:tiled=no:right=5mm</source>
        <translation>womit der Karton bedruckt ist (der Befehl patterns listet es auf), etwa dots oder stripes:scale=12mm:turn=45:colours=cream,sage:side=back, oder ein eigenes Bild: picture:blatt.png:tiled=no:right=5mm</translation>
    </message>
    <message>
        <source>%1: Only printed papers have that. Add --kind printed.</source>
        <translation>%1: Das haben nur bedruckte Papiere. --kind printed dazuschreiben.</translation>
    </message>
    <message>
        <source>--side: “%1” is no side of a printed paper. Choose one of: %2.</source>
        <translation>--side: „%1“ ist keine Seite eines bedruckten Papiers. Eine davon wählen: %2.</translation>
    </message>
    <message>
        <source>--kind: Printed papers are pages. Let -o end in .pdf, .svg or .png.</source>
        <translation>--kind: Bedruckte Papiere sind Seiten. -o auf .pdf, .svg oder .png enden lassen.</translation>
    </message>
    <message>
        <source>how far printed papers run beyond the cuts, 3mm</source>
        <translation>wie weit bedruckte Papiere über die Schnitte hinausgehen, 3mm</translation>
    </message>
    <message>
        <source>side of printed papers; both: front and back in turn, to print on both sides of the card</source>
        <translation>Seite der bedruckten Papiere; both: vorn und hinten im Wechsel, um den Karton auf beiden Seiten zu bedrucken</translation>
    </message>
    <message>
        <source>printed papers without their cut lines</source>
        <translation>bedruckte Papiere ohne ihre Schnittlinien</translation>
    </message>
    <message>
        <source>what to remember of the design</source>
        <translation>was zum Entwurf zu merken ist</translation>
    </message>
    <message>
        <source>table of your punches: shape, width, height; punched layers take their sizes</source>
        <translation>Tabelle der eigenen Motivlocher: shape, width, height; gestanzte Lagen nehmen deren Größen an</translation>
    </message>
    <message>
        <source>--open: Only the folded box can be opened. Add --folded.</source>
        <translation>--open: Nur die gefaltete Schachtel lässt sich öffnen. --folded ergänzen.</translation>
    </message>
    <message>
        <source>--open: Only the whole box can be opened. Leave out --piece.</source>
        <translation>--open: Nur die ganze Schachtel lässt sich öffnen. --piece weglassen.</translation>
    </message>
    <message>
        <source>--open: “%1” is not how far a box is open. Write one of %2, or 0 to 100 per cent, such as 30%.</source>
        <translation>--open: „%1“ sagt nicht, wie weit eine Schachtel offen ist. Eines von %2 schreiben, oder 0 bis 100 Prozent, etwa 30%.</translation>
    </message>
    <message>
        <source>how far the folded box is open; as it tells most if left out</source>
        <translation>wie weit die gefaltete Schachtel offen ist; ohne Angabe so, dass am meisten zu sehen ist</translation>
    </message>
    <message>
        <source>A layer</source>
        <translation>Eine Lage</translation>
    </message>
    <message>
        <source>layer=SHAPE begins one on a label, a tag or a bow; keys behind it are the layer&apos;s.</source>
        <translation>layer=FORM beginnt eine auf Etikett, Anhänger oder Schleife; Schlüssel dahinter gehören zu ihr.</translation>
    </message>
    <message>
        <source>With every extra, where it applies</source>
        <translation>Bei jedem Extra, wo es passt</translation>
    </message>
    <message>
        <source>what it is cut from</source>
        <translation>woraus es geschnitten wird</translation>
    </message>
    <message>
        <source>its colours and pattern, as --colour and --pattern</source>
        <translation>seine Farben und sein Muster, wie bei --colour und --pattern</translation>
    </message>
    <message>
        <source>the face it belongs to, such as box:front</source>
        <translation>die Fläche, zu der es gehört, etwa box:front</translation>
    </message>
    <message>
        <source>what it lies on: the box, or another extra, such as band, or its place in the list</source>
        <translation>worauf es liegt: die Schachtel oder ein anderes Extra, etwa band, oder dessen Platz in der Liste</translation>
    </message>
    <message>
        <source>what is written on it</source>
        <translation>was darauf geschrieben steht</translation>
    </message>
    <message>
        <source>printed papers for a printer without colours</source>
        <translation>gedruckte Papiere für einen Drucker ohne Farben</translation>
    </message>
    <message>
        <source>--open: Only the finished box can be opened. Leave out --stage.</source>
        <translation>--open: Nur die fertige Schachtel lässt sich öffnen. --stage weglassen.</translation>
    </message>
    <message>
        <source>--pixels: A page has no pixels. Choose its size with --paper, such as a3.</source>
        <translation>--pixels: Eine Seite hat keine Pixel. Die Größe mit --paper wählen, etwa a3.</translation>
    </message>
    <message>
        <source>--pixels: “%1” is no size of a picture. Write its width and height, such as 1600x1200, or its longer side, each from %2 to %3.</source>
        <translation>--pixels: „%1“ ist keine Größe eines Bildes. Breite und Höhe angeben, etwa 1600x1200, oder die längere Seite, jede von %2 bis %3.</translation>
    </message>
    <message>
        <source>draw the folded box, not the net (PNG, SVG, PDF)</source>
        <translation>die gefaltete Schachtel zeichnen, nicht das Netz (PNG, SVG, PDF)</translation>
    </message>
    <message>
        <source>from where the folded box is seen; degrees, such as -30,35</source>
        <translation>von wo die gefaltete Schachtel zu sehen ist; Grad, etwa -30,35</translation>
    </message>
    <message>
        <source>the folded box after so many stages of the strip under it, 0 for flat</source>
        <translation>die gefaltete Schachtel nach so vielen Schritten der Leiste unter ihr, 0 für flach</translation>
    </message>
    <message>
        <source>size of the picture of the folded box (PNG, SVG)</source>
        <translation>Größe des Bildes der gefalteten Schachtel (PNG, SVG)</translation>
    </message>
    <message>
        <source>what the folded box stands on: nothing, or a colour as of card</source>
        <translation>worauf die gefaltete Schachtel steht: nichts, oder eine Farbe wie für Karton</translation>
    </message>
    <message>
        <source>--folded: Only a PNG, SVG or PDF can show the folded box. Choose such an ending.</source>
        <translation>--folded: Nur PNG, SVG oder PDF können die gefaltete Schachtel zeigen. Eine solche Endung wählen.</translation>
    </message>
    <message>
        <source>%1: Only a picture of the folded box has that. Add --folded.</source>
        <translation>%1: Nur ein Bild der gefalteten Schachtel hat das. --folded hinzufügen.</translation>
    </message>
    <message>
        <source>--view: “%1” is no view. Write one of %2, or the degrees of turn and tilt, such as -30,35, up to 360 and %3.</source>
        <translation>--view: „%1“ ist keine Ansicht. Eine von %2 angeben, oder Drehung und Neigung in Grad, etwa -30,35, bis 360 und %3.</translation>
    </message>
    <message>
        <source>--stage: “%1” is no stage here. Write 0 for flat to %2 for finished.</source>
        <translation>--stage: „%1“ ist hier kein Schritt. 0 für flach bis %2 für fertig angeben.</translation>
    </message>
    <message>
        <source>%1: A net in colours is not made for a machine. Leave out --kind coloured.</source>
        <translation>%1: Ein Netz in Farben ist nicht für eine Maschine. --kind coloured weglassen.</translation>
    </message>
    <message>
        <source>kind of template, score guide strips, the calibration page (PDF), or colours and patterns to print and cut (PDF, SVG, PNG); coloured: the template over the colours of its card (PDF), and so the net (SVG)</source>
        <translation>Art der Vorlage, Rillstreifen, die Prüfseite (PDF), oder Farben und Muster zum Drucken und Ausschneiden (PDF, SVG, PNG); coloured: die Vorlage über den Farben ihres Kartons (PDF) und so auch das Netz (SVG)</translation>
    </message>
</context>
<context>
    <name>colours</name>
    <message>
        <source>white</source>
        <translation>Weiß</translation>
    </message>
    <message>
        <source>cream</source>
        <translation>Creme</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>Sand</translation>
    </message>
    <message>
        <source>kraft</source>
        <translation>Kraftbraun</translation>
    </message>
    <message>
        <source>butter</source>
        <translation>Buttergelb</translation>
    </message>
    <message>
        <source>sunflower</source>
        <translation>Sonnengelb</translation>
    </message>
    <message>
        <source>apricot</source>
        <translation>Aprikose</translation>
    </message>
    <message>
        <source>terracotta</source>
        <translation>Terrakotta</translation>
    </message>
    <message>
        <source>coral</source>
        <translation>Koralle</translation>
    </message>
    <message>
        <source>poppy</source>
        <translation>Mohnrot</translation>
    </message>
    <message>
        <source>rose</source>
        <translation>Rosé</translation>
    </message>
    <message>
        <source>beetroot</source>
        <translation>Rote Bete</translation>
    </message>
    <message>
        <source>lavender</source>
        <translation>Lavendel</translation>
    </message>
    <message>
        <source>plum</source>
        <translation>Pflaume</translation>
    </message>
    <message>
        <source>sky</source>
        <translation>Himmelblau</translation>
    </message>
    <message>
        <source>cornflower</source>
        <translation>Kornblume</translation>
    </message>
    <message>
        <source>ink blue</source>
        <translation>Tintenblau</translation>
    </message>
    <message>
        <source>teal</source>
        <translation>Petrol</translation>
    </message>
    <message>
        <source>mint</source>
        <translation>Mint</translation>
    </message>
    <message>
        <source>sage</source>
        <translation>Salbei</translation>
    </message>
    <message>
        <source>leaf green</source>
        <translation>Blattgrün</translation>
    </message>
    <message>
        <source>fir green</source>
        <translation>Tannengrün</translation>
    </message>
    <message>
        <source>chocolate</source>
        <translation>Schokolade</translation>
    </message>
    <message>
        <source>pebble grey</source>
        <translation>Kieselgrau</translation>
    </message>
    <message>
        <source>slate</source>
        <translation>Schiefer</translation>
    </message>
    <message>
        <source>black</source>
        <translation>Schwarz</translation>
    </message>
    <message>
        <source>%1, %2, back %3</source>
        <translation>%1, %2, Rückseite %3</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, back %2</source>
        <translation>%1, Rückseite %2</translation>
    </message>
</context>
<context>
    <name>creasewright::BlankDialog</name>
    <message>
        <source>A plain blank</source>
        <translation>Ein einfacher Zuschnitt</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Zuschnitt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
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
        <source>Card</source>
        <translation>Karton</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>A blank measures from %1 to %2 a side.</source>
        <translation>Ein Zuschnitt misst %1 bis %2 je Seite.</translation>
    </message>
</context>
<context>
    <name>creasewright::CalibrationFields</name>
    <message>
        <source>Bar across, printed</source>
        <translation>Strecke quer, gedruckt</translation>
    </message>
    <message>
        <source>Bar down, printed</source>
        <translation>Strecke hoch, gedruckt</translation>
    </message>
    <message>
        <source>Print the page, measure both bars and type what you read here.</source>
        <translation>Die Seite drucken, beide Strecken messen und das Gemessene hier eintippen.</translation>
    </message>
    <message>
        <source>Kept: %1.</source>
        <translation>Gemerkt: %1.</translation>
    </message>
</context>
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
    <message>
        <source>Plain</source>
        <translation>Naturweiß</translation>
    </message>
    <message>
        <source>As outside</source>
        <translation>Wie außen</translation>
    </message>
    <message>
        <source>Colour outside</source>
        <translation>Farbe außen</translation>
    </message>
    <message>
        <source>Colour inside</source>
        <translation>Farbe innen</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Muster</translation>
    </message>
</context>
<context>
    <name>creasewright::ChangeRow</name>
    <message>
        <source>Make %1 earlier</source>
        <translation>%1 früher ausführen</translation>
    </message>
    <message>
        <source>Make %1 later</source>
        <translation>%1 später ausführen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Panel</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>A number, or a sum such as “panel-width / 2 - 3 mm”</source>
        <translation>Eine Zahl oder eine Rechnung wie „panel-width / 2 - 3 mm“</translation>
    </message>
    <message>
        <source>order of changes</source>
        <translation>Reihenfolge der Änderungen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>piece, panel</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Fold at the edge</source>
        <translation>Falz an der Kante</translation>
    </message>
</context>
<context>
    <name>creasewright::ChangesPanel</name>
    <message>
        <source>Nothing is changed by hand yet. Click a panel, then add.</source>
        <translation>Noch ist nichts von Hand geändert. Eine Fläche anklicken, dann hinzufügen.</translation>
    </message>
    <message>
        <source>Add a change</source>
        <translation>Änderung hinzufügen</translation>
    </message>
</context>
<context>
    <name>creasewright::ChecksPanel</name>
    <message>
        <source>All checks hold.</source>
        <translation>Alles passt.</translation>
    </message>
    <message>
        <source>Checks that do not hold</source>
        <translation>Was nicht passt</translation>
    </message>
    <message>
        <source>Click to see the place.</source>
        <translation>Klicken zeigt die Stelle.</translation>
    </message>
</context>
<context>
    <name>creasewright::ColourButton</name>
    <message>
        <source>Other colour…</source>
        <translation>Andere Farbe …</translation>
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
        <translation>Modell</translation>
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
        <source>Extras</source>
        <translation>Extras</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Rillen</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
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
    <message>
        <source>Checks</source>
        <comment>tab</comment>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
</context>
<context>
    <name>creasewright::DesignMenu</name>
    <message>
        <source>&amp;Design</source>
        <translation>En&amp;twurf</translation>
    </message>
    <message>
        <source>&amp;Keep as my style…</source>
        <translation>Als eigenes Modell &amp;behalten …</translation>
    </message>
    <message>
        <source>&amp;Take the style’s changes into the design</source>
        <translation>Änderungen des Modells in den Entwurf &amp;übernehmen</translation>
    </message>
    <message>
        <source>&amp;Open a style file…</source>
        <translation>&amp;Modelldatei öffnen …</translation>
    </message>
    <message>
        <source>“%1” is kept. It stands among the styles for your product.</source>
        <translation>„%1“ ist behalten. Es steht bei den Modellen für den Inhalt.</translation>
    </message>
    <message>
        <source>Open a style</source>
        <translation>Modell öffnen</translation>
    </message>
    <message>
        <source>Styles (*.cwstyle);;All files (*)</source>
        <translation>Modelle (*.cwstyle);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>“%1” is among your styles.</source>
        <translation>„%1“ ist bei den eigenen Modellen.</translation>
    </message>
    <message>
        <source>Style known</source>
        <translation>Modell bekannt</translation>
    </message>
    <message>
        <source>“%1” is among your styles already, kept %2 times; the file was kept %3 times.</source>
        <translation>„%1“ ist schon bei den eigenen Modellen, dort in Fassung %2; die Datei hat Fassung %3.</translation>
    </message>
    <message>
        <source>Designs made from it keep what they have.</source>
        <translation>Entwürfe daraus behalten, was sie haben.</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>So lassen</translation>
    </message>
    <message>
        <source>Change “%1”, then keep it again in the Design menu.</source>
        <translation>„%1“ ändern, dann im Menü Entwurf wieder behalten.</translation>
    </message>
    <message>
        <source>Save a copy of the style</source>
        <translation>Kopie des Modells speichern</translation>
    </message>
    <message>
        <source>Styles (*.cwstyle)</source>
        <translation>Modelle (*.cwstyle)</translation>
    </message>
    <message>
        <source>Remove a style</source>
        <translation>Modell entfernen</translation>
    </message>
    <message>
        <source>Remove “%1” from your styles?</source>
        <translation>„%1“ aus den eigenen Modellen entfernen?</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Creasewright</source>
        <translation>Creasewright</translation>
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
    <name>creasewright::DimensionEntry</name>
    <message>
        <source>Distance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Measure to change</source>
        <translation>Maß, das sich ändert</translation>
    </message>
    <message>
        <source>by</source>
        <translation>durch</translation>
    </message>
    <message>
        <source>all together, each a little</source>
        <translation>alle zusammen, jedes ein wenig</translation>
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
        <translation>Seiten in Originalgröße mit Rillmaßen, überall zu drucken.</translation>
    </message>
    <message>
        <source>Net as SVG</source>
        <translation>Netz als SVG</translation>
    </message>
    <message>
        <source>For cutting machines and drawing programs, one group for each kind of line.</source>
        <translation>Für Schneideplotter und Zeichenprogramme, eine Gruppe für jede Linienart.</translation>
    </message>
    <message>
        <source>Net as DXF</source>
        <translation>Netz als DXF</translation>
    </message>
    <message>
        <source>For cutting machines and plotters, one layer for each kind of line.</source>
        <translation>Für Schneideplotter und Zeichenplotter, eine Ebene für jede Linienart.</translation>
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
        <source>Everything as JSON</source>
        <translation>Alles als JSON</translation>
    </message>
    <message>
        <source>Panels, scores and plans for other programs.</source>
        <translation>Flächen, Rilllinien und Pläne für andere Programme.</translation>
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
    <message>
        <source>Names of takers, with commas: a set of pages for each</source>
        <translation>Namen mit Kommas: für jeden ein Satz Seiten</translation>
    </message>
    <message>
        <source>Names of takers</source>
        <translation>Namen der Teilnehmer</translation>
    </message>
</context>
<context>
    <name>creasewright::ExtraRow</name>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karton</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>Every face</source>
        <translation>Jede Fläche</translation>
    </message>
    <message>
        <source>The largest</source>
        <translation>Die größte</translation>
    </message>
    <message>
        <source>Plain</source>
        <translation>Naturweiß</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>Goes on</source>
        <translation>Gehört auf</translation>
    </message>
    <message>
        <source>Add a layer</source>
        <translation>Eine Lage hinzufügen</translation>
    </message>
    <message>
        <source>The outermost</source>
        <translation>Das Äußerste</translation>
    </message>
    <message>
        <source>The box</source>
        <translation>Die Schachtel</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>creasewright::ExtrasPanel</name>
    <message>
        <source>Nothing goes with the box yet.</source>
        <translation>Noch keine Extras.</translation>
    </message>
    <message>
        <source>Add an extra</source>
        <translation>Ein Extra hinzufügen</translation>
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
        <source>S&amp;helf…</source>
        <translation>&amp;Regal …</translation>
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
        <source>&amp;Title, tags, notes…</source>
        <translation>&amp;Titel, Schlagwörter, Notizen …</translation>
    </message>
    <message>
        <source>Stoc&amp;k and supplies…</source>
        <translation>&amp;Vorrat und Material …</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
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
        <translation>Änderungen speichern?</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Leave them</source>
        <translation>Nicht speichern</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Abbrechen</translation>
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
        <source>File changed</source>
        <translation>Datei geändert</translation>
    </message>
    <message>
        <source>“%1” was changed by another program.</source>
        <translation>„%1“ wurde von einem anderen Programm geändert.</translation>
    </message>
    <message>
        <source>Loading it takes away the changes you have made here.</source>
        <translation>Beim Laden gehen die hier gemachten Änderungen verloren.</translation>
    </message>
    <message>
        <source>Load it, or go on with the design as it is here.</source>
        <translation>Die Datei laden oder mit dem Entwurf von hier weiterarbeiten.</translation>
    </message>
    <message>
        <source>Load the file</source>
        <translation>Datei laden</translation>
    </message>
    <message>
        <source>Keep this design</source>
        <translation>Entwurf behalten</translation>
    </message>
    <message>
        <source>File gone</source>
        <translation>Datei fehlt</translation>
    </message>
    <message>
        <source>“%1” was removed or renamed by another program.</source>
        <translation>„%1“ wurde von einem anderen Programm gelöscht oder umbenannt.</translation>
    </message>
    <message>
        <source>The design is still here. Save it again to keep it.</source>
        <translation>Der Entwurf ist noch da. Zum Behalten wieder speichern.</translation>
    </message>
    <message>
        <source>Save again</source>
        <translation>Wieder speichern</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>Saving replaces what that program has written.</source>
        <translation>Speichern ersetzt, was dieses Programm geschrieben hat.</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Do not save</source>
        <translation>Nicht speichern</translation>
    </message>
    <message>
        <source>Creasewright</source>
        <translation>Creasewright</translation>
    </message>
    <message>
        <source>Designs and styles (*.cwdesign *.cwstyle);;All files (*)</source>
        <translation>Entwürfe und Modelle (*.cwdesign *.cwstyle);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Sample &amp;gifts…</source>
        <translation>&amp;Beispielgeschenke …</translation>
    </message>
</context>
<context>
    <name>creasewright::FoldPanel</name>
    <message>
        <source>One stage back</source>
        <translation>Eine Faltphase zurück</translation>
    </message>
    <message>
        <source>One stage forward</source>
        <translation>Eine Faltphase weiter</translation>
    </message>
    <message>
        <source>Fold stage</source>
        <translation>Faltphase</translation>
    </message>
    <message>
        <source>Fold it before my eyes</source>
        <translation>Vor den Augen falten</translation>
    </message>
    <message>
        <source>Close or open the finished box</source>
        <translation>Die fertige Schachtel schließen oder öffnen</translation>
    </message>
</context>
<context>
    <name>creasewright::FoldView</name>
    <message>
        <source>Folded piece</source>
        <translation>Gefaltetes Teil</translation>
    </message>
    <message>
        <source>From the front</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>Von oben</translation>
    </message>
    <message>
        <source>Three-quarter view</source>
        <translation>Schräg von vorn</translation>
    </message>
    <message>
        <source>Drag to turn it. Arrow keys turn by 5 degrees, Home shows the standard view, 1 to 3 the front, from above and three-quarter; 4 to 6 close and open the finished box.</source>
        <translation>Ziehen dreht das Teil. Pfeiltasten drehen um 5 Grad, Pos1 zeigt die Standardansicht, 1 bis 3 zeigen es von vorn, von oben und schräg; 4 bis 6 schließen und öffnen die fertige Schachtel.</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>Ajar</source>
        <translation>Ein wenig offen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
</context>
<context>
    <name>creasewright::GalleryCard</name>
    <message>
        <source>mine</source>
        <translation>eigenes</translation>
    </message>
</context>
<context>
    <name>creasewright::GalleryModel</name>
    <message>
        <source>%1 x %2</source>
        <translation>%1 x %2</translation>
    </message>
    <message>
        <source>%1 times %2</source>
        <translation>%1-mal %2</translation>
    </message>
    <message>
        <source>%1 turned</source>
        <translation>%1 gedreht</translation>
    </message>
    <message>
        <source>too large for the sheet</source>
        <translation>zu groß für den Bogen</translation>
    </message>
    <message>
        <source>fits %1</source>
        <translation>passt auf %1</translation>
    </message>
</context>
<context>
    <name>creasewright::GalleryView</name>
    <message>
        <source>Styles</source>
        <translation>Modelle</translation>
    </message>
    <message>
        <source>Styles for your product</source>
        <translation>Modelle für den Inhalt</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Back to the design</source>
        <translation>Zurück zum Entwurf</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>Fits on</source>
        <translation>Passt auf</translation>
    </message>
    <message>
        <source>No glue</source>
        <translation>Ohne Klebstoff</translation>
    </message>
    <message>
        <source>Shows the product</source>
        <translation>Zeigt den Inhalt</translation>
    </message>
    <message>
        <source>For round things</source>
        <translation>Für Rundes</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Change this style</source>
        <translation>Dieses Modell ändern</translation>
    </message>
    <message>
        <source>Save a copy as a file…</source>
        <translation>Kopie als Datei speichern …</translation>
    </message>
    <message>
        <source>Remove…</source>
        <translation>Entfernen …</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Öffnen …</translation>
    </message>
    <message>
        <source>A style that somebody gave you, as a .cwstyle file</source>
        <translation>Ein Modell von jemand anderem, als .cwstyle-Datei</translation>
    </message>
    <message numerus="yes">
        <source>The design keeps its %n photo(s), which may show the box before: look through them with “Photos…” in the guide.</source>
        <translation>
            <numerusform>Der Entwurf behält sein Foto, das vielleicht die vorige Schachtel zeigt: mit „Fotos …“ in der Anleitung durchsehen.</numerusform>
            <numerusform>Der Entwurf behält seine %n Fotos, die vielleicht die vorige Schachtel zeigen: mit „Fotos …“ in der Anleitung durchsehen.</numerusform>
        </translation>
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
        <translation>Dieses Teil braucht keinen Klebstoff.</translation>
    </message>
    <message>
        <source>%1, on its %2: stick to %3 of the piece “%4”</source>
        <translation>%1, auf der %2: an %3 des Teils „%4“ kleben</translation>
    </message>
</context>
<context>
    <name>creasewright::GuideWindow</name>
    <message>
        <source>Guide</source>
        <translation>Anleitung</translation>
    </message>
    <message>
        <source>Inches and millimetres</source>
        <translation>Zoll und Millimeter</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>Measures in</source>
        <translation>Maße in</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern …</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Save as a web page…</source>
        <translation>Als Webseite speichern …</translation>
    </message>
    <message>
        <source>Web page (*.html)</source>
        <translation>Webseite (*.html)</translation>
    </message>
    <message>
        <source>Save pictures and text…</source>
        <translation>Bilder und Text speichern …</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n Seite</numerusform>
            <numerusform>%n Seiten</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 guide</source>
        <comment>name of a file</comment>
        <translation>%1 Anleitung</translation>
    </message>
    <message>
        <source>Name of the folder</source>
        <translation>Name des Ordners</translation>
    </message>
    <message>
        <source>Creasewright</source>
        <translation>Creasewright</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>Gespeichert.</translation>
    </message>
    <message>
        <source>Black and white</source>
        <translation>Schwarz-weiß</translation>
    </message>
    <message>
        <source>Standard</source>
        <translation>Standard</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Deutlich</translation>
    </message>
    <message>
        <source>Large print</source>
        <translation>Großdruck</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Schrift</translation>
    </message>
    <message>
        <source>For a printer without colours.</source>
        <translation>Für einen Drucker ohne Farben.</translation>
    </message>
    <message>
        <source>Hand-out with all steps</source>
        <translation>Anleitung mit allen Schritten</translation>
    </message>
    <message>
        <source>Card of measures</source>
        <translation>Maßkarte</translation>
    </message>
    <message>
        <source>Talk sheet for a lesson</source>
        <translation>Sprechzettel für den Unterricht</translation>
    </message>
    <message>
        <source>What to print</source>
        <translation>Was gedruckt wird</translation>
    </message>
    <message>
        <source>As designed</source>
        <translation>Wie entworfen</translation>
    </message>
    <message>
        <source>Inches, letter paper</source>
        <translation>Zoll, Papier letter</translation>
    </message>
    <message>
        <source>Millimetres, A4 paper</source>
        <translation>Millimeter, Papier A4</translation>
    </message>
    <message>
        <source>Both, in two files</source>
        <translation>Beide, in zwei Dateien</translation>
    </message>
    <message>
        <source>The design is made anew for the rulers, card and paper of the readers; the guide says what is different.</source>
        <translation>Der Entwurf wird für Lineale, Karton und Papier der Leser neu angelegt; die Anleitung sagt, was anders ist.</translation>
    </message>
    <message>
        <source>Readers</source>
        <translation>Leser</translation>
    </message>
    <message>
        <source>Right hand</source>
        <translation>Rechte Hand</translation>
    </message>
    <message>
        <source>Left hand</source>
        <translation>Linke Hand</translation>
    </message>
    <message>
        <source>The hand that holds the tool: the fence and the numbers stand on its other side.</source>
        <translation>Die Hand, die das Werkzeug hält: Anschlag und Zahlen stehen auf ihrer anderen Seite.</translation>
    </message>
    <message>
        <source>Told for the</source>
        <translation>Erklärt für die</translation>
    </message>
    <message>
        <source>Shown for inches; the guide in millimetres is a file of its own.</source>
        <translation>Gezeigt in Zoll; die Anleitung in Millimetern ist eine eigene Datei.</translation>
    </message>
    <message>
        <source>Photos…</source>
        <translation>Fotos …</translation>
    </message>
    <message>
        <source>Photos of the finished box and of steps, kept in the design.</source>
        <translation>Fotos der fertigen Schachtel und einzelner Schritte, im Entwurf aufgehoben.</translation>
    </message>
</context>
<context>
    <name>creasewright::KeepDialog</name>
    <message>
        <source>Keep as my style</source>
        <translation>Als eigenes Modell behalten</translation>
    </message>
    <message>
        <source>A new style</source>
        <translation>Ein neues Modell</translation>
    </message>
    <message>
        <source>“%1”, kept again</source>
        <translation>„%1“, neu gefasst</translation>
    </message>
    <message>
        <source>What it suits, what to watch when making it</source>
        <translation>Wofür es taugt, worauf beim Machen zu achten ist</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Keep it as</source>
        <translation>Behalten als</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Measures that a later user sees</source>
        <translation>Maße, die später zu sehen sind</translation>
    </message>
    <message>
        <source>The changes made by hand go with the style. Product, card, extras and notes stay with this design.</source>
        <translation>Die Änderungen von Hand gehören zum Modell. Inhalt, Karton, Extras und Notizen bleiben bei diesem Entwurf.</translation>
    </message>
    <message>
        <source>Give the style a name.</source>
        <translation>Dem Modell einen Namen geben.</translation>
    </message>
</context>
<context>
    <name>creasewright::KitContents</name>
    <message>
        <source>Everybody makes</source>
        <translation>Jede Person macht</translation>
    </message>
    <message>
        <source>How many each person gets</source>
        <translation>Wie viele jede Person bekommt</translation>
    </message>
    <message>
        <source>What is cut of it</source>
        <translation>Was davon geschnitten wird</translation>
    </message>
    <message>
        <source>%1: only %2</source>
        <translation>%1: nur %2</translation>
    </message>
    <message>
        <source>plain blank</source>
        <translation>einfacher Zuschnitt</translation>
    </message>
    <message>
        <source>the whole design</source>
        <translation>der ganze Entwurf</translation>
    </message>
    <message>
        <source>only %1</source>
        <translation>nur %1</translation>
    </message>
</context>
<context>
    <name>creasewright::KitPreview</name>
    <message>
        <source>Stop looking</source>
        <translation>Suche beenden</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s); looking for a better plan …</source>
        <translation>
            <numerusform>%n Bogen; ein besserer Plan wird gesucht …</numerusform>
            <numerusform>%n Bögen; ein besserer Plan wird gesucht …</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creasewright::KitWindow</name>
    <message>
        <source>Class kit</source>
        <translation>Kurspaket</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Keep to the grain</source>
        <translation>Laufrichtung einhalten</translation>
    </message>
    <message>
        <source>What the class is called</source>
        <translation>Wie der Kurs heißt</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>No blank is turned against the grain of its sheet.</source>
        <translation>Kein Zuschnitt wird quer zur Laufrichtung seines Bogens gedreht.</translation>
    </message>
    <message>
        <source>Spare sets</source>
        <translation>Reservesätze</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Designs…</source>
        <translation>Entwürfe …</translation>
    </message>
    <message>
        <source>From the shelf…</source>
        <translation>Aus dem Regal …</translation>
    </message>
    <message>
        <source>A plain blank…</source>
        <translation>Ein einfacher Zuschnitt …</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Offcuts…</source>
        <translation>Reststücke …</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Plan as PDF…</source>
        <translation>Plan als PDF …</translation>
    </message>
    <message>
        <source>Choose one of several first.</source>
        <translation>Zuerst eines von mehreren wählen.</translation>
    </message>
    <message>
        <source>Names…</source>
        <translation>Namen …</translation>
    </message>
    <message>
        <source>Stock and supplies…</source>
        <translation>Vorrat und Material …</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <source>Plan as a table…</source>
        <translation>Plan als Tabelle …</translation>
    </message>
    <message>
        <source>All papers of the class…</source>
        <translation>Alle Unterlagen des Kurses …</translation>
    </message>
    <message>
        <source>Machine layouts…</source>
        <translation>Für den Schneideplotter …</translation>
    </message>
    <message>
        <source>Kit…</source>
        <translation>Kurspaket …</translation>
    </message>
    <message>
        <source>Open kit…</source>
        <translation>Kurspaket öffnen …</translation>
    </message>
    <message>
        <source>Kit (*.cwkit)</source>
        <translation>Kurspaket (*.cwkit)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Designs (*.cwdesign)</source>
        <translation>Entwürfe (*.cwdesign)</translation>
    </message>
    <message>
        <source>Creasewright</source>
        <translation>Creasewright</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>Gespeichert.</translation>
    </message>
    <message>
        <source>Cut no extra blanks</source>
        <translation>Keine überzähligen Zuschnitte schneiden</translation>
    </message>
    <message>
        <source>The last sheets are cut only in part, so that no blank is left over.</source>
        <translation>Die letzten Bögen werden nur zum Teil zerschnitten, sodass kein Zuschnitt übrig bleibt.</translation>
    </message>
    <message>
        <source>Easy to cut</source>
        <translation>Leicht zu schneiden</translation>
    </message>
    <message>
        <source>Fewest sheets</source>
        <translation>Wenigste Bögen</translation>
    </message>
    <message>
        <source>Easy to cut: few layouts of straight strips, settings on the trimmer’s marks, nothing narrow at the trimmer.</source>
        <translation>Leicht zu schneiden: wenige Aufteilungen aus geraden Streifen, Einstellungen auf den Marken des Papierschneiders, nichts Schmales am Papierschneider.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Prices…</source>
        <translation>Preise …</translation>
    </message>
</context>
<context>
    <name>creasewright::LabelFields</name>
    <message>
        <source>Punch</source>
        <translation>Motivlocher</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>as it fits</source>
        <translation>passend</translation>
    </message>
</context>
<context>
    <name>creasewright::LayerRow</name>
    <message>
        <source>Layer %1</source>
        <translation>Lage %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove layer %1</source>
        <translation>Lage %1 entfernen</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karton</translation>
    </message>
    <message>
        <source>Plain</source>
        <translation>Naturweiß</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Muster</translation>
    </message>
</context>
<context>
    <name>creasewright::MachineFields</name>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source>How wide the machine cuts. Outlines move by half of it into what falls away.</source>
        <translation>Wie breit die Maschine schneidet. Umrisse rücken um die Hälfte davon in das, was wegfällt.</translation>
    </message>
    <message>
        <source>Words as outlines</source>
        <translation>Wörter als Umrisse</translation>
    </message>
    <message>
        <source>Whole lines</source>
        <translation>Ganze Linien</translation>
    </message>
    <message>
        <source>Dashes</source>
        <translation>Striche</translation>
    </message>
    <message>
        <source>Perforation</source>
        <translation>Perforation</translation>
    </message>
    <message>
        <source>As large as the pieces</source>
        <translation>So groß wie die Teile</translation>
    </message>
    <message>
        <source>For programs that have no such type.</source>
        <translation>Für Programme ohne diese Schrift.</translation>
    </message>
    <message>
        <source>Scores as</source>
        <translation>Rillen als</translation>
    </message>
    <message>
        <source>Kerf outside</source>
        <translation>Schnittbreite außen</translation>
    </message>
    <message>
        <source>Kerf in openings</source>
        <translation>Schnittbreite in Öffnungen</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Bogen</translation>
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
        <source>Styles for your product</source>
        <translation>Modelle für den Inhalt</translation>
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
        <translation>Creasewright entwirft kleine Geschenkverpackungen aus Karton: vom Inhalt auf dem Tisch bis zur Vorlage in Originalgröße auf Papier.

Frei unter der MIT-Lizenz.</translation>
    </message>
    <message>
        <source>%1[*] – Creasewright</source>
        <translation>%1[*] – Creasewright</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Nicht gespeicherte Arbeit</translation>
    </message>
    <message>
        <source>“%1” was not saved when the program ended.</source>
        <translation>„%1“ war nicht gespeichert, als das Programm endete.</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Ohne Titel</translation>
    </message>
    <message>
        <source>It was kept on %1.</source>
        <translation>Zuletzt festgehalten: %1.</translation>
    </message>
    <message>
        <source>Restore</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Discard</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
</context>
<context>
    <name>creasewright::MeasuresPanel</name>
    <message>
        <source>Set by hand. The product asks for %1.</source>
        <translation>Selbst eingegeben. Der Inhalt braucht %1.</translation>
    </message>
    <message>
        <source>Set by hand. Ease and card ask for %1.</source>
        <translation>Von Hand gesetzt. Luft und Karton verlangen %1.</translation>
    </message>
</context>
<context>
    <name>creasewright::NamesDialog</name>
    <message>
        <source>Names and labels</source>
        <translation>Namen und Etiketten</translation>
    </message>
    <message>
        <source>The takers&apos; names for the bags, one a line:</source>
        <translation>Die Namen für die Tüten, einer je Zeile:</translation>
    </message>
    <message>
        <source>Width of a label</source>
        <translation>Breite eines Etiketts</translation>
    </message>
    <message>
        <source>Height of a label</source>
        <translation>Höhe eines Etiketts</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>A label measures from %1 to %2 a side.</source>
        <translation>Ein Etikett misst %1 bis %2 je Seite.</translation>
    </message>
</context>
<context>
    <name>creasewright::OffcutDialog</name>
    <message>
        <source>Offcuts</source>
        <translation>Reststücke</translation>
    </message>
    <message>
        <source>No offcut is wide enough to keep.</source>
        <translation>Kein Reststück ist breit genug, um es aufzuheben.</translation>
    </message>
    <message>
        <source>Left over in all:</source>
        <translation>Im Ganzen bleibt übrig:</translation>
    </message>
    <message>
        <source>They are not enough for mats or labels of every set.</source>
        <translation>Für Zierpapiere oder Etiketten aller Sätze reichen sie nicht.</translation>
    </message>
    <message>
        <source>They would be enough for one or the other of these. What you tick is added to the kit, and the sheets are planned anew:</source>
        <translation>Das eine oder andere davon ließe sich daraus schneiden. Angekreuztes kommt ins Kurspaket, und die Bögen werden neu geplant:</translation>
    </message>
    <message>
        <source>Add to the kit</source>
        <translation>Ins Kurspaket aufnehmen</translation>
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
    <name>creasewright::PapersMenu</name>
    <message>
        <source>&amp;Papers</source>
        <translation>&amp;Unterlagen</translation>
    </message>
    <message>
        <source>Print the template…</source>
        <translation>Vorlage drucken …</translation>
    </message>
    <message>
        <source>Guide…</source>
        <translation>Anleitung …</translation>
    </message>
    <message>
        <source>Class kit…</source>
        <translation>Kurspaket …</translation>
    </message>
    <message>
        <source>Save as a file…</source>
        <translation>Als Datei sichern …</translation>
    </message>
    <message>
        <source>Creasewright</source>
        <translation>Creasewright</translation>
    </message>
    <message>
        <source>Printed papers…</source>
        <translation>Bedruckte Papiere …</translation>
    </message>
    <message>
        <source>Save a picture…</source>
        <translation>Bild speichern …</translation>
    </message>
</context>
<context>
    <name>creasewright::ParameterRows</name>
    <message>
        <source>In sums: %1</source>
        <translation>In Rechnungen: %1</translation>
    </message>
</context>
<context>
    <name>creasewright::PatternPicker</name>
    <message>
        <source>Repeats every</source>
        <translation>Rapport</translation>
    </message>
    <message>
        <source>Turned by</source>
        <translation>Gedreht um</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>Außen</translation>
    </message>
    <message>
        <source>Inside</source>
        <translation>Innen</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>No pattern</source>
        <translation>Ohne Muster</translation>
    </message>
    <message>
        <source>As printed</source>
        <translation>Wie gedruckt</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Colour %1</source>
        <translation>Farbe %1</translation>
    </message>
    <message>
        <source>Words on a plain plate</source>
        <translation>Schrift auf weißer Fläche</translation>
    </message>
    <message>
        <source>Over and over</source>
        <translation>Immer wieder nebeneinander</translation>
    </message>
    <message>
        <source>To the right by</source>
        <translation>Nach rechts um</translation>
    </message>
    <message>
        <source>Upwards by</source>
        <translation>Nach oben um</translation>
    </message>
    <message>
        <source>Picture of your own</source>
        <translation>Eigenes Bild</translation>
    </message>
    <message>
        <source>Width in print</source>
        <translation>Breite im Druck</translation>
    </message>
    <message>
        <source>Picture for the paper</source>
        <translation>Bild für das Papier</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg *.svg)</source>
        <translation>Bilder (*.png *.jpg *.jpeg *.svg)</translation>
    </message>
    <message>
        <source>Picture file…</source>
        <translation>Bilddatei …</translation>
    </message>
</context>
<context>
    <name>creasewright::PhotosDialog</name>
    <message>
        <source>Take the photo out</source>
        <translation>Foto herausnehmen</translation>
    </message>
    <message>
        <source>Photos of the guide</source>
        <translation>Fotos der Anleitung</translation>
    </message>
    <message>
        <source>What a photo shows</source>
        <translation>Was ein Foto zeigt</translation>
    </message>
    <message>
        <source>Words under it</source>
        <translation>Worte darunter</translation>
    </message>
    <message>
        <source>The finished box</source>
        <translation>Die fertige Schachtel</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>number and title of a step</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>A step that the guide no longer has</source>
        <translation>Ein Schritt, den die Anleitung nicht mehr hat</translation>
    </message>
    <message>
        <source>%1 — photo</source>
        <translation>%1 – Foto</translation>
    </message>
    <message>
        <source>Add a photo…</source>
        <translation>Foto hinzufügen …</translation>
    </message>
    <message>
        <source>Another photo…</source>
        <translation>Anderes Foto …</translation>
    </message>
    <message>
        <source>No photo</source>
        <translation>Kein Foto</translation>
    </message>
    <message>
        <source>This photo cannot be shown.</source>
        <translation>Dieses Foto lässt sich nicht zeigen.</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Bilder (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>words of a photo</source>
        <translation>Worte zu einem Foto</translation>
    </message>
</context>
<context>
    <name>creasewright::PictureDialog</name>
    <message>
        <source>Width in pixels</source>
        <translation>Breite in Pixeln</translation>
    </message>
    <message>
        <source>Height in pixels</source>
        <translation>Höhe in Pixeln</translation>
    </message>
    <message>
        <source>Transparent</source>
        <translation>Durchsichtig</translation>
    </message>
    <message>
        <source>Save a picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>PNG, of pixels</source>
        <translation>PNG, aus Pixeln</translation>
    </message>
    <message>
        <source>SVG, sharp at any size</source>
        <translation>SVG, in jeder Größe scharf</translation>
    </message>
    <message>
        <source>PDF, a poster on one page</source>
        <translation>PDF, ein Plakat auf einer Seite</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Zu sehen</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Geöffnet</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Pixels</source>
        <translation>Pixel</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>The picture as it will be</source>
        <translation>Das Bild, wie es wird</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Speichern …</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>As seen now</source>
        <translation>Wie gerade zu sehen</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>From the front</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>Von oben</translation>
    </message>
    <message>
        <source>Three-quarter view</source>
        <translation>Schräg von vorn</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>Ajar</source>
        <translation>Ein wenig offen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
</context>
<context>
    <name>creasewright::PriceDialog</name>
    <message>
        <source>Cost and price on the class’s papers</source>
        <translation>Kosten und Preis auf den Kursunterlagen</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>Preise</translation>
    </message>
    <message>
        <source>Currency, such as EUR</source>
        <translation>Währung, etwa EUR</translation>
    </message>
    <message>
        <source>An hour of the maker’s work</source>
        <translation>Eine Arbeitsstunde</translation>
    </message>
    <message>
        <source>Overhead on material and work: room, tools, waste</source>
        <translation>Gemeinkosten auf Material und Arbeit: Raum, Werkzeug, Verschnitt</translation>
    </message>
    <message>
        <source>Margin, a share of the price</source>
        <translation>Gewinnspanne, ein Anteil am Preis</translation>
    </message>
    <message>
        <source>Fee, a share of the price: market, card payment</source>
        <translation>Gebühr, ein Anteil am Preis: Markt, Kartenzahlung</translation>
    </message>
    <message>
        <source>Costs of a class, whoever comes: teacher, room, travel</source>
        <translation>Kosten eines Kurses, gleich wer kommt: Leitung, Raum, Fahrt</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>“%1” is no amount of money. Type something like 12.50.</source>
        <translation>„%1“ ist kein Geldbetrag. Etwas wie 12,50 eintippen.</translation>
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
        <translation>Randbreite, die der Drucker frei lässt</translation>
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
            <numerusform>%n Seite in Originalgröße. Ohne Skalierung drucken, dann die Prüfstrecken nachmessen.</numerusform>
            <numerusform>%n Seiten in Originalgröße. Ohne Skalierung drucken, dann die Prüfstrecken nachmessen.</numerusform>
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
    <message>
        <source>Template to score and cut</source>
        <translation>Vorlage zum Rillen und Schneiden</translation>
    </message>
    <message>
        <source>Template to trace and prick</source>
        <translation>Vorlage zum Nachzeichnen und Durchstechen</translation>
    </message>
    <message>
        <source>Mirrored, for the outside</source>
        <translation>Gespiegelt, für die Außenseite</translation>
    </message>
    <message>
        <source>Template that saves ink</source>
        <translation>Vorlage, die Tinte spart</translation>
    </message>
    <message>
        <source>Score guide strips</source>
        <translation>Rillstreifen</translation>
    </message>
    <message>
        <source>What to print</source>
        <translation>Was gedruckt wird</translation>
    </message>
    <message>
        <source>A size of your own</source>
        <translation>Eigenes Format</translation>
    </message>
    <message>
        <source>Paper width</source>
        <translation>Breite des Papiers</translation>
    </message>
    <message>
        <source>Paper height</source>
        <translation>Höhe des Papiers</translation>
    </message>
    <message>
        <source>A side of the paper measures from %1 to %2.</source>
        <translation>Eine Seite des Papiers misst von %1 bis %2.</translation>
    </message>
    <message>
        <source>Calibration page for the printer</source>
        <translation>Kalibrierseite für den Drucker</translation>
    </message>
    <message>
        <source>PDF, to print elsewhere</source>
        <translation>PDF, um anderswo zu drucken</translation>
    </message>
    <message>
        <source>All are %1.</source>
        <translation>Alle sind %1.</translation>
    </message>
    <message>
        <source>Printed papers: colours and patterns</source>
        <translation>Bedruckte Papiere: Farben und Muster</translation>
    </message>
    <message>
        <source>Save as SVG…</source>
        <translation>Als SVG speichern …</translation>
    </message>
    <message>
        <source>SVG pictures (*.svg)</source>
        <translation>SVG-Bilder (*.svg)</translation>
    </message>
    <message>
        <source>The same in the colours of the card</source>
        <translation>Dieselbe in den Farben des Kartons</translation>
    </message>
</context>
<context>
    <name>creasewright::PrintedFields</name>
    <message>
        <source>Draw the cut lines</source>
        <translation>Schnittlinien zeichnen</translation>
    </message>
    <message>
        <source>Front of the card</source>
        <translation>Vorderseite des Kartons</translation>
    </message>
    <message>
        <source>Back of the card, mirrored places</source>
        <translation>Rückseite des Kartons, gespiegelte Plätze</translation>
    </message>
    <message>
        <source>Front and back in turn</source>
        <translation>Vorder- und Rückseite im Wechsel</translation>
    </message>
    <message>
        <source>Colour beyond the cuts</source>
        <translation>Farbe über die Schnitte hinaus</translation>
    </message>
    <message>
        <source>Which side</source>
        <translation>Welche Seite</translation>
    </message>
    <message>
        <source>Colour may run from 0 to %1 beyond the cuts.</source>
        <translation>Farbe darf 0 bis %1 über die Schnitte hinausgehen.</translation>
    </message>
    <message>
        <source>Black and white</source>
        <translation>Schwarz-weiß</translation>
    </message>
    <message>
        <source>For a printer without colours.</source>
        <translation>Für einen Drucker ohne Farben.</translation>
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
        <translation>Die Maße selbst angeben.</translation>
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
        <translation>Normal</translation>
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
    <message>
        <source>Pale green</source>
        <translation>Blassgrün</translation>
    </message>
    <message>
        <source>Colour of the product</source>
        <translation>Farbe des Inhalts</translation>
    </message>
</context>
<context>
    <name>creasewright::PunchBox</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 × %3</source>
        <translation>%1, %2 × %3</translation>
    </message>
    <message>
        <source>None: it is cut</source>
        <translation>Keiner: geschnitten</translation>
    </message>
    <message>
        <source>A punch of its size</source>
        <translation>Einer in dieser Größe</translation>
    </message>
</context>
<context>
    <name>creasewright::RowColumn</name>
    <message>
        <source>Add…</source>
        <translation>Hinzufügen …</translation>
    </message>
</context>
<context>
    <name>creasewright::SamplesWindow</name>
    <message>
        <source>Sample gifts</source>
        <translation>Beispielgeschenke</translation>
    </message>
    <message>
        <source>Begin with a finished gift and give it your product: the box follows its size.</source>
        <translation>Mit einem fertigen Geschenk beginnen und den eigenen Inhalt angeben: Die Schachtel richtet sich nach seiner Größe.</translation>
    </message>
    <message>
        <source>Begin with this gift</source>
        <translation>Mit diesem Geschenk beginnen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>creasewright::ScoreList</name>
    <message>
        <source>Score plan</source>
        <translation>Rillplan</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>creasewright::SeenMeasures</name>
    <message>
        <source>follows the product</source>
        <translation>richtet sich nach dem Inhalt</translation>
    </message>
    <message>
        <source>stays %1</source>
        <translation>bleibt %1</translation>
    </message>
    <message>
        <source>stays as it is</source>
        <translation>bleibt, wie es ist</translation>
    </message>
    <message>
        <source>In sums: %1</source>
        <translation>In Rechnungen: %1</translation>
    </message>
    <message>
        <source>%1, or a rule such as width / 2</source>
        <translation>%1, oder eine Regel wie width / 2</translation>
    </message>
    <message>
        <source>Rule of %1</source>
        <translation>Regel für %1</translation>
    </message>
</context>
<context>
    <name>creasewright::SheetChoice</name>
    <message>
        <source>Sheets</source>
        <translation>Bögen</translation>
    </message>
    <message>
        <source>Other sheets</source>
        <translation>Andere Bögen</translation>
    </message>
    <message>
        <source>No other</source>
        <translation>Keine anderen</translation>
    </message>
    <message>
        <source>All on the list</source>
        <translation>Alle der Liste</translation>
    </message>
    <message>
        <source>As saved in the kit</source>
        <translation>Wie im Kurspaket gespeichert</translation>
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
</context>
<context>
    <name>creasewright::ShelfModel</name>
    <message>
        <source>cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>This file cannot be read: %1</source>
        <translation>Diese Datei lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <translation>%1 für %2</translation>
    </message>
    <message>
        <source>Last used %1</source>
        <translation>Zuletzt benutzt am %1</translation>
    </message>
    <message>
        <source>being read…</source>
        <translation>wird gelesen …</translation>
    </message>
    <message>
        <source>This file is still being read: %1</source>
        <translation>Diese Datei wird noch gelesen: %1</translation>
    </message>
</context>
<context>
    <name>creasewright::ShelfWindow</name>
    <message>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Search title, style, product, tags, notes</source>
        <translation>Titel, Modell, Inhalt, Schlagwörter, Notizen suchen</translation>
    </message>
    <message>
        <source>Search the shelf</source>
        <translation>Das Regal durchsuchen</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <source>Newest first</source>
        <translation>Neueste zuerst</translation>
    </message>
    <message>
        <source>Last used first</source>
        <translation>Zuletzt benutzte zuerst</translation>
    </message>
    <message>
        <source>By title</source>
        <translation>Nach Titel</translation>
    </message>
    <message>
        <source>By style</source>
        <translation>Nach Modell</translation>
    </message>
    <message>
        <source>Saved designs</source>
        <translation>Gespeicherte Entwürfe</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Copy for the present product</source>
        <translation>Für den jetzigen Inhalt kopieren</translation>
    </message>
    <message>
        <source>Put the present design here</source>
        <translation>Jetzigen Entwurf hier ablegen</translation>
    </message>
    <message>
        <source>Title, tags, notes…</source>
        <translation>Titel, Schlagwörter, Notizen …</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Save all as a bundle…</source>
        <translation>Alle als Sammlung speichern …</translation>
    </message>
    <message>
        <source>Add a bundle…</source>
        <translation>Eine Sammlung hinzufügen …</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>The shelf is empty. Put designs here to find them again.</source>
        <translation>Das Regal ist leer. Hier abgelegte Entwürfe lassen sich wiederfinden.</translation>
    </message>
    <message numerus="yes">
        <source>%n design(s)</source>
        <translation>
            <numerusform>%n Entwurf</numerusform>
            <numerusform>%n Entwürfe</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) that cannot be read</source>
        <translation>
            <numerusform>%n Datei, die nicht lesbar ist</numerusform>
            <numerusform>%n Dateien, die nicht lesbar sind</numerusform>
        </translation>
    </message>
    <message>
        <source>Choose a design first.</source>
        <translation>Zuerst einen Entwurf wählen.</translation>
    </message>
    <message>
        <source>Move “%1” to the trash?</source>
        <translation>„%1“ in den Papierkorb verschieben?</translation>
    </message>
    <message>
        <source>Bundle (*.cwbundle)</source>
        <translation>Sammlung (*.cwbundle)</translation>
    </message>
    <message>
        <source>Creasewright</source>
        <translation>Creasewright</translation>
    </message>
    <message>
        <source>Some designs are still being read. Save the bundle when all are here.</source>
        <translation>Einige Entwürfe werden noch gelesen. Die Sammlung speichern, wenn alle da sind.</translation>
    </message>
</context>
<context>
    <name>creasewright::StepList</name>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>%1  %2: %3</source>
        <comment>number, title and text of a step</comment>
        <translation>%1  %2: %3</translation>
    </message>
</context>
<context>
    <name>creasewright::StockWindow</name>
    <message>
        <source>Stock and supplies</source>
        <translation>Vorrat und Material</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Bögen</translation>
    </message>
    <message>
        <source>Supplies</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Lengths carry a unit, such as 12 in, 297 mm or 25 m. What is at hand need not be bought.</source>
        <translation>Längen tragen eine Einheit, etwa 12 in, 297 mm oder 25 m. Was vorhanden ist, muss nicht gekauft werden.</translation>
    </message>
    <message>
        <source>Add row</source>
        <translation>Zeile hinzufügen</translation>
    </message>
    <message>
        <source>Remove row</source>
        <translation>Zeile entfernen</translation>
    </message>
    <message>
        <source>Read table…</source>
        <translation>Tabelle lesen …</translation>
    </message>
    <message>
        <source>Write table…</source>
        <translation>Tabelle schreiben …</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Table (*.csv)</source>
        <translation>Tabelle (*.csv)</translation>
    </message>
    <message>
        <source>%1 When you save, the old list is kept beside the new one.</source>
        <translation>%1 Beim Speichern bleibt die alte Liste neben der neuen erhalten.</translation>
    </message>
    <message>
        <source>Punches</source>
        <translation>Motivlocher</translation>
    </message>
    <message>
        <source>A row for each punch that you own. Lengths carry a unit, such as 1 in or 25 mm; one without a height is as high as wide.</source>
        <translation>Eine Zeile für jeden eigenen Motivlocher. Längen haben eine Einheit, etwa 1 in oder 25 mm; ohne Höhe ist er so hoch wie breit.</translation>
    </message>
</context>
<context>
    <name>creasewright::StylePanel</name>
    <message>
        <source>Change style</source>
        <translation>Modell wechseln</translation>
    </message>
    <message numerus="yes">
        <source>Your own, made from %1 with %n change(s) by hand.</source>
        <translation>
            <numerusform>Eigenes Modell aus %1 mit einer Änderung von Hand.</numerusform>
            <numerusform>Eigenes Modell aus %1 mit %n Änderungen von Hand.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creasewright::SuitedSizesFields</name>
    <message>
        <source>Only for products of these sizes</source>
        <translation>Nur für Inhalte dieser Größen</translation>
    </message>
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
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>%1, smallest</source>
        <translation>%1, kleinste</translation>
    </message>
    <message>
        <source>%1, largest</source>
        <translation>%1, größte</translation>
    </message>
    <message>
        <source>From 1 mm to 1 m.</source>
        <translation>Von 1 mm bis 1 m.</translation>
    </message>
    <message>
        <source>At least as much as the smallest.</source>
        <translation>Mindestens so viel wie die kleinste.</translation>
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
        <source>Board: any width</source>
        <translation>Brett: jede Breite</translation>
    </message>
    <message>
        <source>Board: %1</source>
        <translation>Brett: %1</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Unterlagen</translation>
    </message>
    <message>
        <source>Template, guide, class and files of this design</source>
        <translation>Vorlage, Anleitung, Kurs und Dateien zu diesem Entwurf</translation>
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
        <translation>Was sich an Rillbrett, Papierschneider oder Lineal einstellen lässt. Angepasste Maße rasten darauf ein.</translation>
    </message>
    <message>
        <source>Scoring board</source>
        <translation>Rillbrett</translation>
    </message>
    <message>
        <source>How wide your scoring board is: longer readings come from the other side.</source>
        <translation>Wie breit das Rillbrett ist: größere Maße werden von der anderen Seite gemessen.</translation>
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
</context>
<context>
    <name>creasewright::ToolStrip</name>
    <message>
        <source>%1 (%2)</source>
        <comment>a tool and its key</comment>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>creasewright::WordsDialog</name>
    <message>
        <source>Title, tags and notes</source>
        <translation>Titel, Schlagwörter und Notizen</translation>
    </message>
    <message>
        <source>Words to find it by, with commas between them</source>
        <translation>Wörter zum Wiederfinden, mit Kommas dazwischen</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Schlagwörter</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Übernehmen</translation>
    </message>
</context>
<context>
    <name>edits</name>
    <message>
        <source>title, tags and notes</source>
        <translation>Titel, Schlagwörter und Notizen</translation>
    </message>
    <message>
        <source>style</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>product</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>ease</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>tool grid</source>
        <translation>Werkzeugraster</translation>
    </message>
    <message>
        <source>scoring board</source>
        <translation>Rillbrett</translation>
    </message>
    <message>
        <source>card</source>
        <translation>Karton</translation>
    </message>
    <message>
        <source>another kit</source>
        <translation>anderes Kurspaket</translation>
    </message>
    <message>
        <source>title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>people</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>spare sets</source>
        <translation>Reservesätze</translation>
    </message>
    <message>
        <source>grain</source>
        <translation>Laufrichtung</translation>
    </message>
    <message>
        <source>sheets</source>
        <translation>Bögen</translation>
    </message>
    <message>
        <source>stock and supplies</source>
        <translation>Vorrat und Material</translation>
    </message>
    <message>
        <source>names and labels</source>
        <translation>Namen und Etiketten</translation>
    </message>
    <message>
        <source>add a design</source>
        <translation>Entwurf hinzufügen</translation>
    </message>
    <message>
        <source>add a plain blank</source>
        <translation>einfachen Zuschnitt hinzufügen</translation>
    </message>
    <message>
        <source>remove a row</source>
        <translation>Zeile entfernen</translation>
    </message>
    <message>
        <source>how many each gets</source>
        <translation>Anzahl je Person</translation>
    </message>
    <message>
        <source>what is cut</source>
        <translation>was geschnitten wird</translation>
    </message>
    <message>
        <source>offcuts</source>
        <translation>Reststücke</translation>
    </message>
    <message>
        <source>extra blanks</source>
        <translation>überzählige Zuschnitte</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>prices</source>
        <translation>Preise</translation>
    </message>
    <message>
        <source>the style’s changes</source>
        <translation>Änderungen des Modells</translation>
    </message>
</context>
<context>
    <name>export</name>
    <message>
        <source>the picture is too large</source>
        <translation>das Bild ist zu groß</translation>
    </message>
    <message>
        <source>the name must end in .pdf, .svg, .dxf, .png or .json</source>
        <translation>der Name muss auf .pdf, .svg, .dxf, .png oder .json enden</translation>
    </message>
    <message>
        <source>a piece is larger than the sheet</source>
        <translation>ein Teil ist größer als der Bogen</translation>
    </message>
    <message>
        <source>a cut-out is narrower than the kerf</source>
        <translation>eine Öffnung ist schmaler als die Schnittbreite</translation>
    </message>
</context>
<context>
    <name>fit</name>
    <message>
        <source>product %1</source>
        <translation>Inhalt %1</translation>
    </message>
    <message>
        <source>ease %1</source>
        <translation>Luft %1</translation>
    </message>
    <message>
        <source>shape %1</source>
        <translation>Form %1</translation>
    </message>
    <message>
        <source>card %1</source>
        <translation>Karton %1</translation>
    </message>
    <message>
        <source>%1 = %2; this style needs %3.</source>
        <translation>%1 = %2; diese Form braucht %3.</translation>
    </message>
    <message>
        <source>%1 = %2.</source>
        <translation>%1 = %2.</translation>
    </message>
    <message>
        <source>%1 = %2, rounded up to %3.</source>
        <translation>%1 = %2, aufgerundet auf %3.</translation>
    </message>
</context>
<context>
    <name>guide</name>
    <message>
        <source>Cut the openings</source>
        <translation>Die Öffnungen schneiden</translation>
    </message>
    <message>
        <source>Cut the slits</source>
        <translation>Die Einschnitte schneiden</translation>
    </message>
    <message>
        <source>Cut the mitres</source>
        <translation>Die Gehrungen schneiden</translation>
    </message>
    <message>
        <source>Taper the flaps</source>
        <translation>Die Laschen abschrägen</translation>
    </message>
    <message>
        <source>Notch the corners</source>
        <translation>Kleine Ecken abschneiden</translation>
    </message>
    <message>
        <source>Cut the curves</source>
        <translation>Die Rundungen schneiden</translation>
    </message>
    <message>
        <source>Cut away the corners</source>
        <translation>Die Ecken wegschneiden</translation>
    </message>
    <message numerus="yes">
        <source>Cut out %n opening(s) while the sheet is still whole and firm.</source>
        <translation>
            <numerusform>%n Öffnung ausschneiden, solange der Bogen noch ganz und fest ist.</numerusform>
            <numerusform>%n Öffnungen ausschneiden, solange der Bogen noch ganz und fest ist.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut %n slit(s); nothing falls out.</source>
        <translation>
            <numerusform>%n Einschnitt schneiden; nichts fällt heraus.</numerusform>
            <numerusform>%n Einschnitte schneiden; nichts fällt heraus.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Make %n slanting cut(s), each from the end of one score to the next.</source>
        <translation>
            <numerusform>%n schrägen Schnitt machen, vom Ende einer Rilllinie zur nächsten.</numerusform>
            <numerusform>%n schräge Schnitte machen, jeden vom Ende einer Rilllinie zur nächsten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Make %n slanting cut(s), so that the flaps go in easily.</source>
        <translation>
            <numerusform>%n schrägen Schnitt machen, damit die Laschen leicht hineingehen.</numerusform>
            <numerusform>%n schräge Schnitte machen, damit die Laschen leicht hineingehen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut off %n small corner(s).</source>
        <translation>
            <numerusform>%n kleine Ecke abschneiden.</numerusform>
            <numerusform>%n kleine Ecken abschneiden.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Make %n curved cut(s); trace them from the template.</source>
        <translation>
            <numerusform>%n Rundung schneiden, vorher von der Vorlage übertragen.</numerusform>
            <numerusform>%n Rundungen schneiden, vorher von der Vorlage übertragen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Make %n straight cut(s).</source>
        <translation>
            <numerusform>%n geraden Schnitt machen.</numerusform>
            <numerusform>%n gerade Schnitte machen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut in from the left edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Vom linken Rand bis zur Rilllinie %1 einschneiden, %n-mal.</numerusform>
            <numerusform>Vom linken Rand bis zur Rilllinie %1 einschneiden, %n-mal.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut in from the right edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Vom rechten Rand bis zur Rilllinie %1 einschneiden, %n-mal.</numerusform>
            <numerusform>Vom rechten Rand bis zur Rilllinie %1 einschneiden, %n-mal.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut in from the bottom edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Vom unteren Rand bis zur Rilllinie %1 einschneiden, %n-mal.</numerusform>
            <numerusform>Vom unteren Rand bis zur Rilllinie %1 einschneiden, %n-mal.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut in from the top edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Vom oberen Rand bis zur Rilllinie %1 einschneiden, %n-mal.</numerusform>
            <numerusform>Vom oberen Rand bis zur Rilllinie %1 einschneiden, %n-mal.</numerusform>
        </translation>
    </message>
    <message>
        <source>Take away the piece %1.</source>
        <translation>Das Eckstück %1 wegnehmen.</translation>
    </message>
    <message numerus="yes">
        <source>Take away the %n piece(s) %1 to %2.</source>
        <translation>
            <numerusform>Das %n Eckstück %1 bis %2 wegnehmen.</numerusform>
            <numerusform>Die %n Eckstücke %1 bis %2 wegnehmen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Press “%1” onto the inside of “%2”.</source>
        <translation>„%1“ innen auf „%2“ drücken.</translation>
    </message>
    <message>
        <source>Press “%1” onto the outside of “%2”.</source>
        <translation>„%1“ außen auf „%2“ drücken.</translation>
    </message>
    <message>
        <source>Tuck “%1” in behind “%2”.</source>
        <translation>„%1“ hinter „%2“ einstecken.</translation>
    </message>
    <message>
        <source>Slide “%1” over the outside of “%2”.</source>
        <translation>„%1“ außen über „%2“ schieben.</translation>
    </message>
    <message>
        <source>Lock “%1” into “%2”.</source>
        <translation>„%1“ in „%2“ einrasten lassen.</translation>
    </message>
    <message>
        <source>“%1” comes to lie inside “%2”.</source>
        <translation>„%1“ liegt dann innen an „%2“.</translation>
    </message>
    <message>
        <source>“%1” comes to lie on the outside of “%2”.</source>
        <translation>„%1“ liegt dann außen auf „%2“.</translation>
    </message>
    <message>
        <source>Let the flap bend a little while it slides in.</source>
        <translation>Die Lasche darf sich beim Hineingleiten ein wenig biegen.</translation>
    </message>
    <message>
        <source>Bend each petal a little and lay it over the next; the last goes under the first.</source>
        <translation>Jedes Blütenblatt etwas biegen und über das nächste legen; das letzte kommt unter das erste.</translation>
    </message>
    <message>
        <source>Roll the card into a tube and pinch its two ends flat, crosswise.</source>
        <translation>Den Karton zu einem Schlauch rollen und beide Enden über Kreuz flach drücken.</translation>
    </message>
    <message>
        <source>Press the curved scores in with your thumbs; the card bends by itself.</source>
        <translation>Die gebogenen Rilllinien mit den Daumen eindrücken; der Karton wölbt sich von selbst.</translation>
    </message>
    <message>
        <source>Put the pieces together</source>
        <translation>Die Teile zusammensetzen</translation>
    </message>
    <message>
        <source>The pieces go one into the other: %1.</source>
        <translation>Die Teile zusammensetzen: %1.</translation>
    </message>
    <message>
        <source>The finished piece</source>
        <translation>Das fertige Teil</translation>
    </message>
    <message>
        <source>Figure of step %1: %2</source>
        <translation>Bild zu Schritt %1: %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a size in inches and in millimetres</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of %1, %2, for the piece “%3”</source>
        <translation>
            <numerusform>%n Bogen %1, %2, für das Teil „%3“</numerusform>
            <numerusform>%n Bögen %1, %2, für das Teil „%3“</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of card, %1</source>
        <translation>
            <numerusform>%n Bogen Karton, %1</numerusform>
            <numerusform>%n Bögen Karton, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of card, %1, for the piece “%2”</source>
        <translation>
            <numerusform>%n Bogen Karton, %1, für das Teil „%2“</numerusform>
            <numerusform>%n Bögen Karton, %1, für das Teil „%2“</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Double-sided tape %1 wide: %n strip(s), %2 in all</source>
        <translation>
            <numerusform>Doppelseitiges Klebeband, %1 breit: %n Streifen, zusammen %2</numerusform>
            <numerusform>Doppelseitiges Klebeband, %1 breit: %n Streifen, zusammen %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Liquid glue for %n place(s)</source>
        <translation>
            <numerusform>Flüssigkleber für %n Stelle</numerusform>
            <numerusform>Flüssigkleber für %n Stellen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of ribbon, %2 wide</source>
        <translation>%1 Schleifenband, %2 breit</translation>
    </message>
    <message numerus="yes">
        <source>(a roll of 25 m does for %n)</source>
        <translation>
            <numerusform>(eine 25-m-Rolle reicht für %n Schachtel)</numerusform>
            <numerusform>(eine 25-m-Rolle reicht für %n Schachteln)</numerusform>
        </translation>
    </message>
    <message>
        <source>Paper trimmer</source>
        <translation>Papierschneider</translation>
    </message>
    <message>
        <source>Scoring board and scoring tool</source>
        <translation>Rillbrett und Rillwerkzeug</translation>
    </message>
    <message>
        <source>Ball stylus, 1 to 1.5 mm</source>
        <translation>Prägestift (Kugel 1 bis 1,5 mm)</translation>
    </message>
    <message>
        <source>Bone folder</source>
        <translation>Falzbein</translation>
    </message>
    <message>
        <source>Scissors, or a craft knife</source>
        <translation>Schere oder Bastelmesser</translation>
    </message>
    <message>
        <source>Cutting mat</source>
        <translation>Schneidematte</translation>
    </message>
    <message>
        <source>Safety ruler</source>
        <translation>Sicherheitslineal</translation>
    </message>
    <message>
        <source>A first lesson</source>
        <translation>Für den Anfang</translation>
    </message>
    <message>
        <source>With some practice</source>
        <translation>Mit etwas Übung</translation>
    </message>
    <message>
        <source>For practised hands</source>
        <translation>Für geübte Hände</translation>
    </message>
    <message numerus="yes">
        <source>about %n minute(s)</source>
        <translation>
            <numerusform>etwa %n Minute</numerusform>
            <numerusform>etwa %n Minuten</numerusform>
        </translation>
    </message>
    <message>
        <source>You need</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Cut the sheet</source>
        <translation>Den Bogen zuschneiden</translation>
    </message>
    <message numerus="yes">
        <source>Trim %n sheet(s) of card to %1.</source>
        <translation>
            <numerusform>%n Bogen Karton auf %1 zuschneiden.</numerusform>
            <numerusform>%n Bögen Karton auf %1 zuschneiden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Score from side to side</source>
        <translation>Von Rand zu Rand rillen</translation>
    </message>
    <message>
        <source>Score the short lines</source>
        <translation>Die kurzen Linien rillen</translation>
    </message>
    <message>
        <source>Score the slanting and curved lines</source>
        <translation>Die schrägen und gebogenen Linien rillen</translation>
    </message>
    <message>
        <source>Fold and burnish</source>
        <translation>Falten und mit dem Falzbein nachziehen</translation>
    </message>
    <message numerus="yes">
        <source>Fold %n line(s) towards you (dashed) and back again.</source>
        <translation>
            <numerusform>%n Linie zu sich hin falten (gestrichelt) und wieder zurück.</numerusform>
            <numerusform>%n Linien zu sich hin falten (gestrichelt) und wieder zurück.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Fold %n line(s) away from you (dashes and dots) and back again.</source>
        <translation>
            <numerusform>%n Linie von sich weg falten (Strich-Punkt) und wieder zurück.</numerusform>
            <numerusform>%n Linien von sich weg falten (Strich-Punkt) und wieder zurück.</numerusform>
        </translation>
    </message>
    <message>
        <source>Press each fold sharp with the bone folder.</source>
        <translation>Jeden Falz mit dem Falzbein kräftig nachziehen.</translation>
    </message>
    <message numerus="yes">
        <source>Trim %n sheet(s) of %1 to %2.</source>
        <translation>
            <numerusform>%n Bogen %1 auf %2 zuschneiden.</numerusform>
            <numerusform>%n Bögen %1 auf %2 zuschneiden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Write or print on it: “%1”.</source>
        <translation>Darauf schreiben oder drucken: „%1“.</translation>
    </message>
    <message>
        <source>Turn the sheet over.</source>
        <translation>Den Bogen wenden.</translation>
    </message>
    <message numerus="yes">
        <source>Keep liquid glue ready for %n place(s): %1.</source>
        <translation>
            <numerusform>Flüssigkleber für %n Stelle bereithalten: %1.</numerusform>
            <numerusform>Flüssigkleber für %n Stellen bereithalten: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stick %n strip(s) of %1 tape on: %2. Leave the liner on.</source>
        <translation>
            <numerusform>%n Streifen Klebeband, %1 breit, aufkleben auf: %2. Die Schutzfolie noch nicht abziehen.</numerusform>
            <numerusform>%n Streifen Klebeband, %1 breit, aufkleben auf: %2. Die Schutzfolie noch nicht abziehen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The cut edge meets score line %1.</source>
        <translation>Die Schnittkante trifft auf die Rilllinie %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) have come off.</source>
        <translation>
            <numerusform>%n Eckstück liegt auf dem Tisch.</numerusform>
            <numerusform>%n Eckstücke liegen auf dem Tisch.</numerusform>
        </translation>
    </message>
    <message>
        <source>The fold of “%1” lies along the edge of “%2”.</source>
        <translation>Der Falz von „%1“ liegt an der Kante von „%2“.</translation>
    </message>
    <message>
        <source>Outside it measures %1.</source>
        <translation>Außenmaß: %1.</translation>
    </message>
    <message>
        <source>the name must end in .pdf or .html</source>
        <translation>der Name muss auf .pdf oder .html enden</translation>
    </message>
    <message>
        <source>Glue on the mats</source>
        <translation>Die Zierpapiere aufkleben</translation>
    </message>
    <message numerus="yes">
        <source>“%1”: %n piece(s), onto %2.</source>
        <translation>
            <numerusform>„%1“: %n Stück, auf %2.</numerusform>
            <numerusform>„%1“: %n Stück, auf %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Lay each in the middle of its face, the pattern upright, and press it on.</source>
        <translation>Jedes in die Mitte seiner Fläche legen, das Muster aufrecht, und andrücken.</translation>
    </message>
    <message>
        <source>Glue on the label</source>
        <translation>Das Etikett aufkleben</translation>
    </message>
    <message>
        <source>Glue the label onto the middle of its mat layer.</source>
        <translation>Das Etikett auf die Mitte seines Rahmenpapiers kleben.</translation>
    </message>
    <message>
        <source>Glue in the film</source>
        <translation>Die Folie einkleben</translation>
    </message>
    <message>
        <source>Put narrow tape or glue round the opening of “%1”, on the inside.</source>
        <translation>Schmales Klebeband oder Klebstoff innen rund um die Öffnung von „%1“ anbringen.</translation>
    </message>
    <message>
        <source>Press the film on; it must not reach a fold.</source>
        <translation>Die Folie andrücken; sie darf nicht bis an einen Falz reichen.</translation>
    </message>
    <message>
        <source>Tie the ribbon</source>
        <translation>Das Schleifenband binden</translation>
    </message>
    <message>
        <source>Lay it under the box, cross it on top, and tie a bow.</source>
        <translation>Unter die Schachtel legen, oben kreuzen und eine Schleife binden.</translation>
    </message>
    <message>
        <source>Lay it once round the box and tie a bow.</source>
        <translation>Einmal um die Schachtel legen und eine Schleife binden.</translation>
    </message>
    <message>
        <source>Slide the band on</source>
        <translation>Die Banderole überschieben</translation>
    </message>
    <message>
        <source>Slide the band round the box, its seam at the back.</source>
        <translation>Die Banderole über die Schachtel schieben, die Naht nach hinten.</translation>
    </message>
    <message>
        <source>Slide the box into the sleeve</source>
        <translation>Die Schachtel in die Hülse schieben</translation>
    </message>
    <message>
        <source>Push it in from one end until both ends are flush.</source>
        <translation>Von einem Ende hineinschieben, bis beide Enden bündig sind.</translation>
    </message>
    <message>
        <source>Tie on the tag</source>
        <translation>Den Anhänger anbinden</translation>
    </message>
    <message>
        <source>Thread ribbon or string through the hole and tie the tag on.</source>
        <translation>Schleifenband oder Kordel durch das Loch fädeln und den Anhänger anbinden.</translation>
    </message>
    <message>
        <source>Set in the insert</source>
        <translation>Den Einsatz einsetzen</translation>
    </message>
    <message>
        <source>Lay in the greeting slip</source>
        <translation>Das Grußkärtchen einlegen</translation>
    </message>
    <message>
        <source>%1 → “%2”</source>
        <comment>flaps, target</comment>
        <translation>%1 → „%2“</translation>
    </message>
    <message>
        <source>“%1”</source>
        <comment>name of a panel</comment>
        <translation>„%1“</translation>
    </message>
    <message numerus="yes">
        <source>“%1” (all %n)</source>
        <translation>
            <numerusform>„%1“ (alle %n)</numerusform>
            <numerusform>„%1“ (alle %n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more line(s) fold along by themselves.</source>
        <translation>
            <numerusform>%n weitere Linie faltet sich von selbst mit.</numerusform>
            <numerusform>%n weitere Linien falten sich von selbst mit.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>(a roll of 25 yd does for %n)</source>
        <translation>
            <numerusform>(eine Rolle von 25 yd reicht für %n Schachtel)</numerusform>
            <numerusform>(eine Rolle von 25 yd reicht für %n Schachteln)</numerusform>
        </translation>
    </message>
    <message>
        <source>Ball stylus with a fine ball, about 1/16 in</source>
        <translation>Prägestift mit feiner Kugel, etwa 1/16 in</translation>
    </message>
    <message>
        <source>Blades are sharp: work on a cutting mat along a safety ruler, keep your hand behind the blade, and let adults cut for children.</source>
        <translation>Klingen sind scharf: auf einer Schneidematte am Sicherheitslineal arbeiten, die Hand hinter der Klinge halten, für Kinder schneiden Erwachsene.</translation>
    </message>
    <message>
        <source>Card, ink, glue and tape may touch food only if their maker says so: wrap food, or line the box.</source>
        <translation>Karton, Farbe, Klebstoff und Klebeband sind nur dann für Lebensmittel geeignet, wenn der Hersteller es angibt: Lebensmittel einwickeln oder die Schachtel auslegen.</translation>
    </message>
    <message>
        <source>Each comes to lie inside its panel: %1.</source>
        <translation>Jede liegt dann innen an ihrer Fläche: %1.</translation>
    </message>
    <message>
        <source>Each comes to lie on the outside of its panel: %1.</source>
        <translation>Jede liegt dann außen auf ihrer Fläche: %1.</translation>
    </message>
    <message numerus="yes">
        <source>Fold %n line(s) as the arrows show: %1.</source>
        <translation>
            <numerusform>%n Linie falten, wie die Pfeile zeigen: %1.</numerusform>
            <numerusform>%n Linien falten, wie die Pfeile zeigen: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Follow local rules.</source>
        <translation>Örtliche Vorschriften beachten.</translation>
    </message>
    <message>
        <source>Hot glue burns: if you use it in place of liquid glue, let adults do it and keep water at hand to cool skin.</source>
        <translation>Heißkleber verbrennt die Haut: wo er statt Flüssigkleber verwendet wird, kleben Erwachsene; Wasser zum Kühlen bereithalten.</translation>
    </message>
    <message>
        <source>It goes in from the open side, as the arrow shows.</source>
        <translation>Er kommt von der offenen Seite hinein, wie der Pfeil zeigt.</translation>
    </message>
    <message>
        <source>Lay it flat into the box; the product goes onto it.</source>
        <translation>Flach in die Schachtel legen; der Inhalt kommt darauf.</translation>
    </message>
    <message>
        <source>Lock each into its panel: %1.</source>
        <translation>Jede in ihrer Fläche einrasten lassen: %1.</translation>
    </message>
    <message>
        <source>No flames in or near card: use LED lights only, with the battery compartment secured.</source>
        <translation>Keine Flammen in oder nahe bei Karton: nur LED-Lichter mit gesichertem Batteriefach.</translation>
    </message>
    <message>
        <source>Press each onto the inside of its panel: %1.</source>
        <translation>Jede innen auf ihre Fläche drücken: %1.</translation>
    </message>
    <message>
        <source>Press each onto the outside of its panel: %1.</source>
        <translation>Jede außen auf ihre Fläche drücken: %1.</translation>
    </message>
    <message>
        <source>Put the adhesive on the inside</source>
        <translation>Klebstoff innen auftragen</translation>
    </message>
    <message>
        <source>Put the adhesive on the outside</source>
        <translation>Klebstoff außen auftragen</translation>
    </message>
    <message>
        <source>Put the product in</source>
        <translation>Den Inhalt hineinlegen</translation>
    </message>
    <message>
        <source>Put the product in before the last panels close.</source>
        <translation>Den Inhalt hineinlegen, bevor sich die letzten Flächen schließen.</translation>
    </message>
    <message>
        <source>Set the insert into the box, its opening up.</source>
        <translation>Den Einsatz in die Schachtel setzen, die Öffnung nach oben.</translation>
    </message>
    <message>
        <source>Slide each over the outside of its panel: %1.</source>
        <translation>Jede außen über ihre Fläche schieben: %1.</translation>
    </message>
    <message>
        <source>Slide it in from one open end, as the arrow shows.</source>
        <translation>Von einem offenen Ende hineinschieben, wie der Pfeil zeigt.</translation>
    </message>
    <message>
        <source>Small parts can be swallowed: not for children under three.</source>
        <translation>Kleinteile können verschluckt werden: nicht für Kinder unter drei Jahren.</translation>
    </message>
    <message>
        <source>Stand it in the opening of the insert.</source>
        <translation>In die Öffnung des Einsatzes stellen.</translation>
    </message>
    <message>
        <source>Stay %1 away from folds and edges.</source>
        <translation>%1 Abstand zu Falzen und Rändern halten.</translation>
    </message>
    <message numerus="yes">
        <source>The other %n cut(s) run as the figure shows.</source>
        <translation>
            <numerusform>Der andere %n Schnitt verläuft, wie das Bild zeigt.</numerusform>
            <numerusform>Die anderen %n Schnitte verlaufen, wie das Bild zeigt.</numerusform>
        </translation>
    </message>
    <message>
        <source>The trimmer’s blade is sharp: keep fingers behind the guard, lock the blade after use, and let adults cut for children.</source>
        <translation>Die Klinge am Papierschneider ist scharf: Finger hinter dem Fingerschutz halten, die Klinge danach sichern, für Kinder schneiden Erwachsene.</translation>
    </message>
    <message numerus="yes">
        <source>Trace %n curved line(s) from the template with a stylus.</source>
        <translation>
            <numerusform>%n gebogene Linie mit dem Prägestift von der Vorlage durchdrücken.</numerusform>
            <numerusform>%n gebogene Linien mit dem Prägestift von der Vorlage durchdrücken.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Trace %n slanting line(s) from the template with a stylus.</source>
        <translation>
            <numerusform>%n schräge Linie mit dem Prägestift von der Vorlage durchdrücken.</numerusform>
            <numerusform>%n schräge Linien mit dem Prägestift von der Vorlage durchdrücken.</numerusform>
        </translation>
    </message>
    <message>
        <source>Tuck each in behind its panel: %1.</source>
        <translation>Jede hinter ihrer Fläche einstecken: %1.</translation>
    </message>
    <message>
        <source>Before the side stands upright, curl each tab inwards and put its end into the open end of the long side; push it in as you raise the side.</source>
        <translation>Bevor die Seite aufrecht steht, jede Lasche nach innen rund biegen und ihr Ende in das offene Ende der langen Seite stecken; beim Aufstellen der Seite ganz hineinschieben.</translation>
    </message>
    <message>
        <source>These sides are deep: roll one after the other, and curl the inner wall in your hand so that it clears the side opposite.</source>
        <translation>Diese Seiten sind tief: eine nach der anderen einrollen und dabei die Innenwand in der Hand rund biegen, damit sie an der gegenüberliegenden Seite vorbeigeht.</translation>
    </message>
    <message>
        <source>1/32 in</source>
        <translation>1/32 in</translation>
    </message>
    <message>
        <source>1/32 in (1 mm)</source>
        <translation>1/32 in (1 mm)</translation>
    </message>
    <message>
        <source>1 mm</source>
        <translation>1 mm</translation>
    </message>
    <message>
        <source>Glue the piece “%1” onto the piece “%2”</source>
        <translation>Das Teil „%1“ auf das Teil „%2“ kleben</translation>
    </message>
    <message>
        <source>Press the piece “%1”, flat as it is, onto the inside of “%2” of the piece “%3”, in the middle.</source>
        <translation>Das Teil „%1“, flach wie es ist, mittig auf die Innenseite von „%2“ des Teils „%3“ drücken.</translation>
    </message>
    <message>
        <source>Press the piece “%1”, flat as it is, onto the outside of “%2” of the piece “%3”, in the middle.</source>
        <translation>Das Teil „%1“, flach wie es ist, mittig auf die Außenseite von „%2“ des Teils „%3“ drücken.</translation>
    </message>
    <message>
        <source>A rim of %1 shows all round.</source>
        <translation>Ringsum ist ein Rand von %1 zu sehen.</translation>
    </message>
    <message>
        <source>A rim of %1 shows at left and right, of %2 in front and behind.</source>
        <translation>Links und rechts ist ein Rand von %1 zu sehen, vorn und hinten von %2.</translation>
    </message>
    <message>
        <source>Press the two folded edges towards each other: the tube opens, the bottom swings down and its two long flaps hook into one another. Help with a finger from inside.</source>
        <translation>Die beiden gefalteten Kanten zueinander drücken: Die Hülle öffnet sich, der Boden klappt herunter, und seine beiden langen Laschen haken sich ineinander. Von innen mit einem Finger nachhelfen.</translation>
    </message>
    <message>
        <source>Push both sides in along their middle, swing the bottom up onto the outside of the back, and press all creases. So the bag is kept flat until it is filled.</source>
        <translation>Beide Seiten in ihrer Mitte eindrücken, den Boden außen an die Rückwand hochklappen und alle Falze andrücken. So bleibt die Tüte flach, bis sie gefüllt wird.</translation>
    </message>
    <message>
        <source>Pull the sides out and push the bottom down from inside.</source>
        <translation>Die Seiten auseinanderziehen und den Boden von innen herunterdrücken.</translation>
    </message>
    <message numerus="yes">
        <source>Open %n line(s) as the arrows show: %1.</source>
        <translation>
            <numerusform>%n Linie öffnen, wie die Pfeile zeigen: %1.</numerusform>
            <numerusform>%n Linien öffnen, wie die Pfeile zeigen: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Measure it exactly, %1: no mark of the trimmer stands there.</source>
        <translation>Genau messen, %1: Dort steht keine Marke des Papierschneiders.</translation>
    </message>
    <message>
        <source>Double-sided tape, %1: %2 in all</source>
        <translation>Doppelseitiges Klebeband, %1: insgesamt %2</translation>
    </message>
    <message>
        <source>Parts to cut</source>
        <translation>Zuschnitte</translation>
    </message>
    <message numerus="yes">
        <source>Open %n line(s): %1.</source>
        <translation>
            <numerusform>%n Linie öffnen: %1.</numerusform>
            <numerusform>%n Linien öffnen: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Fold %n line(s): %1.</source>
        <translation>
            <numerusform>%n Linie falten: %1.</numerusform>
            <numerusform>%n Linien falten: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Take the piece “%1” in hand.</source>
        <translation>Das Teil „%1“ zur Hand nehmen.</translation>
    </message>
    <message>
        <source>Show the finished piece</source>
        <translation>Das fertige Stück zeigen</translation>
    </message>
    <message>
        <source>Let it go round. Say what goes in, and for whom it is made.</source>
        <translation>Herumgeben. Sagen, was hineinkommt und für wen es gemacht ist.</translation>
    </message>
    <message>
        <source>Show how blades are handled before anybody takes one.</source>
        <translation>Zeigen, wie man mit Klingen umgeht, bevor jemand eine nimmt.</translation>
    </message>
    <message>
        <source>Tidy up</source>
        <translation>Aufräumen</translation>
    </message>
    <message>
        <source>Count the blades. Let everyone show what they made.</source>
        <translation>Die Klingen zählen. Alle zeigen, was sie gemacht haben.</translation>
    </message>
    <message>
        <source>%1: talk sheet</source>
        <translation>%1: Sprechzettel</translation>
    </message>
    <message>
        <source>%1 of talk and work</source>
        <translation>%1 Stunden zum Zeigen und Arbeiten</translation>
    </message>
    <message>
        <source>Have ready</source>
        <translation>Bereitlegen</translation>
    </message>
    <message>
        <source>One finished piece with its product.</source>
        <translation>Ein fertiges Stück mit seinem Inhalt.</translation>
    </message>
    <message>
        <source>One set cut and scored, not folded: to show the folds.</source>
        <translation>Ein Satz, geschnitten und gerillt, nicht gefaltet: um die Falze zu zeigen.</translation>
    </message>
    <message>
        <source>One set with its adhesive on, folded and opened again: to show how it closes.</source>
        <translation>Ein Satz mit Klebstoff, gefaltet und wieder geöffnet: um das Schließen zu zeigen.</translation>
    </message>
    <message>
        <source>Glue the two halves together</source>
        <translation>Die beiden Hälften zusammenkleben</translation>
    </message>
    <message>
        <source>Press the tab “%1” onto the inside of “%2” of the piece “%3”, the fold of the tab along the edge. All lies flat.</source>
        <translation>Die Lasche „%1“ auf die Innenseite von „%2“ am Teil „%3“ drücken, der Falz der Lasche liegt an der Kante. Alles bleibt flach.</translation>
    </message>
    <message>
        <source>Press the tab “%1” onto the outside of “%2” of the piece “%3”, the fold of the tab along the edge. All lies flat.</source>
        <translation>Die Lasche „%1“ auf die Außenseite von „%2“ am Teil „%3“ drücken, der Falz der Lasche liegt an der Kante. Alles bleibt flach.</translation>
    </message>
    <message>
        <source>Begin at the right.</source>
        <translation>Rechts beginnen.</translation>
    </message>
    <message>
        <source>Scoring board with its stop at your right, and scoring tool</source>
        <translation>Rillbrett mit dem Anschlag rechts und Rillwerkzeug</translation>
    </message>
    <message>
        <source>Left-handed scissors, or a craft knife</source>
        <translation>Linkshänderschere oder Bastelmesser</translation>
    </message>
    <message>
        <source>Safety ruler with numbers from the right</source>
        <translation>Sicherheitslineal mit Zahlen von rechts</translation>
    </message>
    <message>
        <source>For the left hand</source>
        <translation>Für die linke Hand</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1: %2, before %3</source>
        <translation>%1: %2, vorher %3</translation>
    </message>
    <message>
        <source>Sheet of the piece “%1”</source>
        <translation>Bogen des Teils „%1“</translation>
    </message>
    <message>
        <source>Card of the piece “%1”</source>
        <translation>Karton des Teils „%1“</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karton</translation>
    </message>
    <message>
        <source>Marks of rulers and boards</source>
        <translation>Teilung von Linealen und Brettern</translation>
    </message>
    <message>
        <source>Made anew for readers of inches: what is different</source>
        <translation>Neu angelegt für Leser in Zoll: was anders ist</translation>
    </message>
    <message>
        <source>Made anew for readers of millimetres: what is different</source>
        <translation>Neu angelegt für Leser in Millimetern: was anders ist</translation>
    </message>
    <message>
        <source>Lay the side named against the stop at your right; its numbers count from there.</source>
        <translation>Die genannte Seite rechts an den Anschlag legen; von dort zählen ihre Zahlen.</translation>
    </message>
    <message>
        <source>Photo of the finished piece</source>
        <translation>Foto des fertigen Stücks</translation>
    </message>
    <message>
        <source>Photo of step %1</source>
        <translation>Foto zu Schritt %1</translation>
    </message>
    <message>
        <source>photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>The photo “%1” belongs to a step that the guide does not have; it is kept in the design and not printed.</source>
        <translation>Das Foto „%1“ gehört zu einem Schritt, den die Anleitung nicht hat; es bleibt im Entwurf und wird nicht gedruckt.</translation>
    </message>
    <message>
        <source>Glue “%1” onto %2.</source>
        <translation>„%1“ auf %2 kleben.</translation>
    </message>
    <message>
        <source>Stick “%1” onto %2 with double-sided tape.</source>
        <translation>„%1“ mit doppelseitigem Klebeband auf %2 kleben.</translation>
    </message>
    <message numerus="yes">
        <source>Stick “%1” onto %2 with %n foam dot(s), %3 thick, 3 mm inside its edge.</source>
        <translation>
            <numerusform>„%1“ mit %n Schaumstoffpunkt, %3 dick, 3 mm innerhalb des Randes auf %2 kleben.</numerusform>
            <numerusform>„%1“ mit %n Schaumstoffpunkten, %3 dick, 3 mm innerhalb des Randes auf %2 kleben.</numerusform>
        </translation>
    </message>
    <message>
        <source>Stamp the words onto “%1” and let them dry.</source>
        <translation>Die Worte auf „%1“ stempeln und trocknen lassen.</translation>
    </message>
    <message>
        <source>“%1” of the piece “%2”</source>
        <translation>„%1“ des Teils „%2“</translation>
    </message>
    <message>
        <source>Glue it onto %1, where the picture shows it.</source>
        <translation>Auf %1 kleben, wo das Bild es zeigt.</translation>
    </message>
    <message>
        <source>Glue it onto the middle of %1.</source>
        <translation>Auf die Mitte von %1 kleben.</translation>
    </message>
    <message>
        <source>Tie two loops and leave two tails; cut their ends slanting.</source>
        <translation>Zwei Schlaufen binden und zwei Enden stehen lassen; die Enden schräg abschneiden.</translation>
    </message>
    <message>
        <source>Cut the ends and the middle band off, close the rest to a loop with glue, and press its middle flat.</source>
        <translation>Die Enden und das Mittelband abschneiden, den Rest mit Klebstoff zu einer Schlaufe schließen und ihre Mitte flach drücken.</translation>
    </message>
    <message>
        <source>Cut the ends and the middle band off, glue a closed loop for each layer, and lay them on one another, the largest below.</source>
        <translation>Die Enden und das Mittelband abschneiden, für jede Lage eine geschlossene Schlaufe kleben und sie aufeinanderlegen, die größte zuunterst.</translation>
    </message>
    <message>
        <source>Make the bow and glue it on</source>
        <translation>Die Schleife machen und aufkleben</translation>
    </message>
    <message>
        <source>Close the middle band round it, its seam behind.</source>
        <translation>Das Mittelband darum schließen, die Naht nach hinten.</translation>
    </message>
    <message>
        <source>Glue it on where the ribbon crosses.</source>
        <translation>Aufkleben, wo das Schleifenband sich kreuzt.</translation>
    </message>
    <message>
        <source>Lay it under the box, cross it on top, and glue its ends there.</source>
        <translation>Unter die Schachtel legen, oben kreuzen und die Enden dort kleben.</translation>
    </message>
    <message>
        <source>Lay it once round along the band and glue its ends on top.</source>
        <translation>Einmal herum entlang der Banderole legen und die Enden oben kleben.</translation>
    </message>
    <message>
        <source>Lay it once round along the band and tie a bow.</source>
        <translation>Einmal herum entlang der Banderole legen und eine Schleife binden.</translation>
    </message>
    <message>
        <source>Lay it once round the box and glue its ends on top.</source>
        <translation>Einmal um die Schachtel legen und die Enden oben kleben.</translation>
    </message>
    <message numerus="yes">
        <source>%n foam dot(s), %1 thick</source>
        <translation>
            <numerusform>%n Schaumstoffpunkt, %1 dick</numerusform>
            <numerusform>%n Schaumstoffpunkte, %1 dick</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1”</source>
        <comment>a name</comment>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>Cut the plain pieces</source>
        <translation>Die rechteckigen Teile zuschneiden</translation>
    </message>
    <message>
        <source>%1: “%2”, %3 of %4, %5.</source>
        <comment>letter, piece, count, size, card</comment>
        <translation>%1: „%2“, %3 Stück, %4, %5.</translation>
    </message>
    <message>
        <source>Set in the partition</source>
        <translation>Den Fächereinsatz einsetzen</translation>
    </message>
    <message>
        <source>Thread the ribbon pull</source>
        <translation>Das Zugband einfädeln</translation>
    </message>
    <message>
        <source>Stick both ends flat onto the inside with tape, as the figure shows.</source>
        <translation>Beide Enden innen mit Klebeband flach festkleben, wie das Bild zeigt.</translation>
    </message>
    <message>
        <source>Tie a knot in each end inside; it must not slip through the hole.</source>
        <translation>Innen in jedes Ende einen Knoten binden; er darf nicht durch das Loch rutschen.</translation>
    </message>
    <message>
        <source>Knot both ends together inside; the knot must not slip through.</source>
        <translation>Beide Enden innen miteinander verknoten; der Knoten darf nicht durchrutschen.</translation>
    </message>
    <message>
        <source>Thread one end through each hole of “%1” from outside, until the loop stands out %2.</source>
        <translation>Durch jedes Loch von „%1“ von außen ein Ende fädeln, bis die Schlaufe %2 vorsteht.</translation>
    </message>
    <message>
        <source>Lay it double and thread both ends through the hole of “%1” from outside, until the loop stands out %2.</source>
        <translation>Doppelt legen und beide Enden von außen durch das Loch von „%1“ fädeln, bis die Schlaufe %2 vorsteht.</translation>
    </message>
    <message>
        <source>Stand each “%1” with its slots up and push each “%2” down into them, slot into slot.</source>
        <translation>Jedes Teil „%1“ mit den Schlitzen nach oben aufstellen und jedes Teil „%2“ von oben hineinstecken, Schlitz in Schlitz.</translation>
    </message>
    <message>
        <source>Set it into the box and let it stand on the floor.</source>
        <translation>In die Schachtel setzen, bis es auf dem Boden steht.</translation>
    </message>
    <message>
        <source>Put one piece into each cell.</source>
        <translation>In jedes Fach ein Stück legen.</translation>
    </message>
    <message>
        <source>The upper edges are level and no divider bulges.</source>
        <translation>Die oberen Kanten sind bündig, und keine Trennwand wölbt sich.</translation>
    </message>
    <message>
        <source>Take the liner off, or put on the glue, just before.</source>
        <translation>Erst jetzt die Schutzfolie abziehen oder den Klebstoff auftragen.</translation>
    </message>
    <message>
        <source>about %1</source>
        <comment>a size</comment>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>Cut “%1”</source>
        <translation>„%1“ zuschneiden</translation>
    </message>
    <message>
        <source>Lay it inside up, as shown.</source>
        <translation>Mit der Innenseite nach oben hinlegen wie im Bild.</translation>
    </message>
    <message>
        <source>It measures %1.</source>
        <translation>Maß: %1.</translation>
    </message>
    <message numerus="yes">
        <source>All %n flap(s) lie flat.</source>
        <translation>
            <numerusform>Die %n Lasche liegt flach an.</numerusform>
            <numerusform>Alle %n Laschen liegen flach an.</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1” lies flat on “%2”.</source>
        <translation>„%1“ liegt flach auf „%2“.</translation>
    </message>
    <message>
        <source>Both flaps lie flat.</source>
        <translation>Beide Laschen liegen flach an.</translation>
    </message>
    <message>
        <source>Punch “%1” with your %2 punch.</source>
        <translation>„%1“ mit dem Motivlocher %2 stanzen.</translation>
    </message>
    <message>
        <source>Punches: %1 (they reach 30 to 40 mm in from an edge, through card of up to 250 g/m²)</source>
        <translation>Motivlocher: %1 (sie reichen 30 bis 40 mm vom Rand hinein und stanzen Karton bis 250 g/m²)</translation>
    </message>
    <message>
        <source>Glue in the photo mats</source>
        <translation>Die Fotopapiere einkleben</translation>
    </message>
    <message numerus="yes">
        <source>“%1”: %n piece(s), onto the inside of %2.</source>
        <translation>
            <numerusform>„%1“: %n Stück, innen auf %2.</numerusform>
            <numerusform>„%1“: %n Stück, innen auf %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Cut the slots</source>
        <translation>Die Schlitze schneiden</translation>
    </message>
    <message>
        <source>Cut the notches</source>
        <translation>Die Kerben schneiden</translation>
    </message>
    <message numerus="yes">
        <source>Make %n slanting cut(s); two meet in each notch.</source>
        <translation>
            <numerusform>%n schrägen Schnitt machen; je zwei treffen sich in einer Kerbe.</numerusform>
            <numerusform>%n schräge Schnitte machen; je zwei treffen sich in einer Kerbe.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Take away the %n piece(s).</source>
        <translation>
            <numerusform>Das %n Stück wegnehmen.</numerusform>
            <numerusform>Die %n Stücke wegnehmen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Lay each in the middle of its face and press it on.</source>
        <translation>Jedes in die Mitte seiner Fläche legen und andrücken.</translation>
    </message>
    <message>
        <source>“%1” on “%2”</source>
        <comment>a mat, a face</comment>
        <translation>„%1“ auf „%2“</translation>
    </message>
    <message>
        <source>Cut %1.</source>
        <comment>a length of ribbon</comment>
        <translation>%1 abschneiden.</translation>
    </message>
    <message>
        <source>Glue it onto %1.</source>
        <translation>Auf %1 kleben.</translation>
    </message>
    <message>
        <source>%1 of ribbon, %2 wide, %3</source>
        <comment>length, width, colour</comment>
        <translation>%1 Schleifenband, %2 breit, %3</translation>
    </message>
</context>
<context>
    <name>history</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederherstellen</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederherstellen: %1</translation>
    </message>
</context>
<context>
    <name>kits</name>
    <message>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Trimmer blades cut: keep fingers behind the guard, lock the blade after use, and let adults cut for children. Follow local rules.</source>
        <translation>Die Klinge am Papierschneider ist scharf: Finger hinter dem Fingerschutz halten, die Klinge danach sichern, für Kinder schneiden Erwachsene. Örtliche Vorschriften beachten.</translation>
    </message>
    <message>
        <source>Shopping list</source>
        <translation>Einkaufsliste</translation>
    </message>
    <message>
        <source>In each bag</source>
        <translation>In jede Tüte</translation>
    </message>
    <message>
        <source>For the teacher</source>
        <translation>Für die Kursleitung</translation>
    </message>
    <message>
        <source>What the offcuts could give, one or the other</source>
        <translation>Was die Reststücke hergeben könnten, das eine oder das andere</translation>
    </message>
    <message>
        <source>The sheet has one good face: trace and score on the other.</source>
        <translation>Der Bogen hat nur eine schöne Seite: auf der anderen anzeichnen und rillen.</translation>
    </message>
    <message>
        <source>Take what is left after cut %1, turn it.</source>
        <translation>Den Rest aus Schnitt %1 drehen und anlegen.</translation>
    </message>
    <message numerus="yes">
        <source>Take %n strip(s) from cut %1, turned.</source>
        <translation>
            <numerusform>%n Streifen aus Schnitt %1 um 90° gedreht anlegen.</numerusform>
            <numerusform>%n Streifen aus Schnitt %1 um 90° gedreht anlegen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Set %1, cut</source>
        <translation>%1 einstellen, schneiden</translation>
    </message>
    <message>
        <source>Set %1, cut each</source>
        <translation>%1 einstellen, jeden schneiden</translation>
    </message>
    <message numerus="yes">
        <source>Set %1, cut %n times</source>
        <translation>
            <numerusform>%1 einstellen, %n-mal schneiden</numerusform>
            <numerusform>%1 einstellen, %n-mal schneiden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Set %1, cut each %n times</source>
        <translation>
            <numerusform>%1 einstellen, jeden %n-mal schneiden</numerusform>
            <numerusform>%1 einstellen, jeden %n-mal schneiden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s)</source>
        <translation>
            <numerusform>%n Streifen</numerusform>
            <numerusform>%n Streifen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; what is left is %2</source>
        <translation>%1; der Rest ist %2</translation>
    </message>
    <message>
        <source>Class kit</source>
        <translation>Kurspaket</translation>
    </message>
    <message numerus="yes">
        <source>For %n people</source>
        <translation>
            <numerusform>Für %n Person</numerusform>
            <numerusform>Für %n Personen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, and %n spare set(s)</source>
        <translation>
            <numerusform>%1, und %n Reservesatz</numerusform>
            <numerusform>%1, und %n Reservesätze</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) at the least price, proven: cheaper cannot do.</source>
        <translation>
            <numerusform>%n Bogen zum kleinsten Preis, nachgewiesen: billiger geht es nicht.</numerusform>
            <numerusform>%n Bögen zum kleinsten Preis, nachgewiesen: billiger geht es nicht.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s); a cheaper choice is not ruled out.</source>
        <translation>
            <numerusform>%n Bogen; vielleicht geht es billiger.</numerusform>
            <numerusform>%n Bögen; vielleicht geht es billiger.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s), proven: fewer cannot do.</source>
        <translation>
            <numerusform>%n Bogen, nachgewiesen: mit weniger geht es nicht.</numerusform>
            <numerusform>%n Bögen, nachgewiesen: mit weniger geht es nicht.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s); at least %1 are needed.</source>
        <translation>
            <numerusform>%n Bogen; mindestens %1 sind nötig.</numerusform>
            <numerusform>%n Bögen; mindestens %1 sind nötig.</numerusform>
        </translation>
    </message>
    <message>
        <source>One more person would cost %1 in sheets.</source>
        <translation>Mit einer Person mehr kosten die Bögen %1 mehr.</translation>
    </message>
    <message>
        <source>One more person would take no further sheet.</source>
        <translation>Mit einer Person mehr wird kein weiterer Bogen gebraucht.</translation>
    </message>
    <message numerus="yes">
        <source>One more person would take %n sheet(s) more.</source>
        <translation>
            <numerusform>Mit einer Person mehr wird %n Bogen mehr gebraucht.</numerusform>
            <numerusform>Mit einer Person mehr werden %n Bögen mehr gebraucht.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n offcut(s) of %1</source>
        <translation>
            <numerusform>%n Reststück von %1</numerusform>
            <numerusform>%n Reststücke von %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 yd</source>
        <translation>%1 yd</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of %1, %2 (%3)</source>
        <translation>
            <numerusform>%n Bogen %1, %2 (%3)</numerusform>
            <numerusform>%n Bögen %1, %2 (%3)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Double-sided tape %1 wide: %2 in %n strip(s)</source>
        <translation>
            <numerusform>Doppelseitiges Klebeband, %1 breit: %2 in %n Streifen</numerusform>
            <numerusform>Doppelseitiges Klebeband, %1 breit: %2 in %n Streifen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Ribbon %1 wide: %2 in %n piece(s)</source>
        <translation>
            <numerusform>Schleifenband %1 breit: %2 in %n Stück</numerusform>
            <numerusform>Schleifenband %1 breit: %2 in %n Stücken</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Liquid glue for %n place(s)</source>
        <translation>
            <numerusform>Flüssigkleber für %n Stelle</numerusform>
            <numerusform>Flüssigkleber für %n Stellen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pack(s) of %1</source>
        <translation>
            <numerusform>%n Packung %1</numerusform>
            <numerusform>%n Packungen %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n at hand</source>
        <translation>
            <numerusform>%n vorhanden</numerusform>
            <numerusform>%n vorhanden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to buy</source>
        <translation>
            <numerusform>%n zu kaufen</numerusform>
            <numerusform>%n zu kaufen</numerusform>
        </translation>
    </message>
    <message>
        <source>costs %1</source>
        <translation>kostet %1</translation>
    </message>
    <message>
        <source>To buy in all: %1, which is %2 a set.</source>
        <translation>Insgesamt zu kaufen: %1, das sind %2 je Satz.</translation>
    </message>
    <message>
        <source>To buy in all: %1, which is %2 a set; some prices are not known.</source>
        <translation>Insgesamt zu kaufen: %1, das sind %2 je Satz; manche Preise sind nicht bekannt.</translation>
    </message>
    <message numerus="yes">
        <source>%n blank(s) %1: %2, %3</source>
        <translation>
            <numerusform>%n Zuschnitt %1: %2, %3</numerusform>
            <numerusform>%n Zuschnitte %1: %2, %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 for “%2”: all %n piece(s) come out of the offcuts of %3</source>
        <translation>
            <numerusform>%1 für „%2“: das eine Teil kommt aus den Reststücken von %3</numerusform>
            <numerusform>%1 für „%2“: alle %n Teile kommen aus den Reststücken von %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Layout %1: cut %n sheet(s) of %2 alike</source>
        <translation>
            <numerusform>Aufteilung %1: %n Bogen %2 so schneiden</numerusform>
            <numerusform>Aufteilung %1: %n Bögen %2 gleich schneiden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of %1: %2</source>
        <translation>
            <numerusform>%n-mal %1: %2</numerusform>
            <numerusform>%n-mal %1: %2</numerusform>
        </translation>
    </message>
    <message>
        <source>the name must end in .pdf, .json, .csv or .cwkit</source>
        <translation>der Name muss auf .pdf, .json, .csv oder .cwkit enden</translation>
    </message>
    <message>
        <source>Spare set</source>
        <translation>Reservesatz</translation>
    </message>
    <message>
        <source>Name:</source>
        <translation>Name:</translation>
    </message>
    <message numerus="yes">
        <source>%n blank(s), see the packing list</source>
        <translation>
            <numerusform>%n Zuschnitt, siehe Packliste</numerusform>
            <numerusform>%n Zuschnitte, siehe Packliste</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The day before: cut the sheets as the layouts show, about %n minute(s).</source>
        <translation>
            <numerusform>Am Tag davor: die Bögen schneiden, wie die Aufteilungen zeigen, etwa %n Minute.</numerusform>
            <numerusform>Am Tag davor: die Bögen schneiden, wie die Aufteilungen zeigen, etwa %n Minuten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Pack %n bag(s) by the list above and put a label on each.</source>
        <translation>
            <numerusform>%n Tüte nach der Liste oben packen und ein Etikett darauf kleben.</numerusform>
            <numerusform>%n Tüten nach der Liste oben packen und auf jede ein Etikett kleben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Print %n copy(ies) of the guide “%1”, one of the template.</source>
        <translation>
            <numerusform>Die Anleitung „%1“ %n-mal drucken, die Vorlage einmal.</numerusform>
            <numerusform>Die Anleitung „%1“ %n-mal drucken, die Vorlage einmal.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Welcome: show the finished pieces, and how blades are used safely.</source>
        <translation>%1 Begrüßung: die fertigen Schachteln zeigen, und wie man sicher mit Klingen umgeht.</translation>
    </message>
    <message numerus="yes">
        <source>%1 “%2”: %n minute(s), step by step from the guide.</source>
        <translation>
            <numerusform>%1 „%2“: %n Minute, Schritt für Schritt nach der Anleitung.</numerusform>
            <numerusform>%1 „%2“: %n Minuten, Schritt für Schritt nach der Anleitung.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Count the blades and tidy up.</source>
        <translation>%1 Klingen zählen und aufräumen.</translation>
    </message>
    <message>
        <source>%1 The end.</source>
        <translation>%1 Ende.</translation>
    </message>
    <message>
        <source>Creasewright</source>
        <translation>Creasewright</translation>
    </message>
    <message>
        <source>Folder for the papers</source>
        <translation>Ordner für die Unterlagen</translation>
    </message>
    <message>
        <source>Folder for the layouts</source>
        <translation>Ordner für die Aufteilungen</translation>
    </message>
    <message>
        <source>Left over, cut beyond what is needed</source>
        <translation>Übrig, über den Bedarf geschnitten</translation>
    </message>
    <message>
        <source>Lay the sheet upright as drawn: its grain runs up and down.</source>
        <translation>Den Bogen hochkant legen wie gezeichnet: Die Laufrichtung geht von unten nach oben.</translation>
    </message>
    <message>
        <source>Lay the sheet on its long side as drawn: its grain runs up and down.</source>
        <translation>Den Bogen quer legen wie gezeichnet: Die Laufrichtung geht von unten nach oben.</translation>
    </message>
    <message>
        <source>One more person would cost at most %1 in sheets.</source>
        <translation>Mit einer Person mehr kosten die Bögen höchstens %1 mehr.</translation>
    </message>
    <message numerus="yes">
        <source>One more person would take at most %n sheet(s) more.</source>
        <translation>
            <numerusform>Mit einer Person mehr wird höchstens %n Bogen mehr gebraucht.</numerusform>
            <numerusform>Mit einer Person mehr werden höchstens %n Bögen mehr gebraucht.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, carrier %2: cut %n sheet(s)</source>
        <translation>
            <numerusform>%1, Trägermatte %2: %n Bogen schneiden</numerusform>
            <numerusform>%1, Trägermatte %2: %n Bögen schneiden</numerusform>
        </translation>
    </message>
    <message>
        <source>Carrier sheets of %1 × %2. Test-cut one net of each card before the class; keep hands off a running machine and follow its maker’s safety notes.</source>
        <translation>Trägermatten von %1 × %2. Vor dem Kurs aus jedem Karton ein Netz zur Probe schneiden; nicht in die laufende Maschine greifen und die Sicherheitshinweise des Herstellers befolgen.</translation>
    </message>
    <message>
        <source>What is narrower than %1 is cut with a knife, not at the trimmer: on a mat, along a metal ruler, fingers behind its edge.</source>
        <translation>Was schmaler als %1 ist, mit dem Messer schneiden, nicht am Papierschneider: auf einer Schneidematte, am Metalllineal entlang, die Finger hinter dessen Kante.</translation>
    </message>
    <message>
        <source>With knife and ruler %1 wide, cut</source>
        <translation>Mit Messer und Lineal %1 breit schneiden</translation>
    </message>
    <message>
        <source>With knife and ruler %1 wide, cut each</source>
        <translation>Mit Messer und Lineal %1 breit jeden schneiden</translation>
    </message>
    <message numerus="yes">
        <source>With knife and ruler %1 wide, cut %n times</source>
        <translation>
            <numerusform>Mit Messer und Lineal %1 breit %n-mal schneiden</numerusform>
            <numerusform>Mit Messer und Lineal %1 breit %n-mal schneiden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With knife and ruler %1 wide, cut each %n times</source>
        <translation>
            <numerusform>Mit Messer und Lineal %1 breit jeden %n-mal schneiden</numerusform>
            <numerusform>Mit Messer und Lineal %1 breit jeden %n-mal schneiden</numerusform>
        </translation>
    </message>
    <message>
        <source>It costs %1 more in sheets than the cheapest plan.</source>
        <translation>Die Bögen kosten %1 mehr als beim günstigsten Plan.</translation>
    </message>
    <message>
        <source>Proven: cheaper cannot do.</source>
        <translation>Nachgewiesen: günstiger geht es nicht.</translation>
    </message>
    <message>
        <source>The cheapest plan costs no less.</source>
        <translation>Der günstigste Plan kostet nicht weniger.</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) more than the plan of fewest sheets.</source>
        <translation>
            <numerusform>%n Bogen mehr als beim sparsamsten Plan.</numerusform>
            <numerusform>%n Bögen mehr als beim sparsamsten Plan.</numerusform>
        </translation>
    </message>
    <message>
        <source>Proven: fewer cannot do.</source>
        <translation>Nachgewiesen: mit weniger geht es nicht.</translation>
    </message>
    <message>
        <source>The plan of fewest sheets takes no fewer.</source>
        <translation>Der sparsamste Plan braucht nicht weniger.</translation>
    </message>
    <message>
        <source>%1 in %2, easy to cut. %3</source>
        <translation>%1 in %2, leicht zu schneiden. %3</translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation>
            <numerusform>%n Bogen</numerusform>
            <numerusform>%n Bögen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n layout(s)</source>
        <translation>
            <numerusform>%n Aufteilung</numerusform>
            <numerusform>%n Aufteilungen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n carrier sheet(s); by their area the parts take at least %2.</source>
        <translation>
            <numerusform>%1: %n Trägermatte; der Fläche nach brauchen die Teile mindestens %2.</numerusform>
            <numerusform>%1: %n Trägermatten; der Fläche nach brauchen die Teile mindestens %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>card %1</source>
        <translation>Karton %1</translation>
    </message>
    <message>
        <source>tape and glue %1</source>
        <translation>Klebeband und Klebstoff %1</translation>
    </message>
    <message>
        <source>ribbon %1</source>
        <translation>Schleifenband %1</translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) of work %1</source>
        <translation>
            <numerusform>%n Minute Arbeit %1</numerusform>
            <numerusform>%n Minuten Arbeit %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 % overhead %2</source>
        <translation>%1 % Gemeinkosten %2</translation>
    </message>
    <message>
        <source>“%1”: %2; cost in all %3.</source>
        <translation>„%1“: %2; Kosten zusammen %3.</translation>
    </message>
    <message>
        <source>%1, of which %2 % is margin after a fee of %3 %</source>
        <translation>%1, davon %2 % Gewinnspanne nach %3 % Gebühr</translation>
    </message>
    <message>
        <source>%1, of which %2 % is margin</source>
        <translation>%1, davon %2 % Gewinnspanne</translation>
    </message>
    <message>
        <source>A seat: material %1, share of the class’s costs %2. Price: %3.</source>
        <translation>Ein Platz: Material %1, Anteil an den Kurskosten %2. Preis: %3.</translation>
    </message>
    <message>
        <source>A seat: material %1. Price: %2.</source>
        <translation>Ein Platz: Material %1. Preis: %2.</translation>
    </message>
    <message numerus="yes">
        <source>At that price the class pays for itself from %n person(s) on.</source>
        <translation>
            <numerusform>Zu diesem Preis trägt sich der Kurs ab %n Person.</numerusform>
            <numerusform>Zu diesem Preis trägt sich der Kurs ab %n Personen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Price of “%1”: %2.</source>
        <translation>Preis von „%1“: %2.</translation>
    </message>
    <message>
        <source>Some sheets or supplies have no price yet: what they cost is missing.</source>
        <translation>Manche Bögen oder Materialien haben noch keinen Preis; dieser Teil der Kosten fehlt.</translation>
    </message>
    <message>
        <source>Cost and price</source>
        <translation>Kosten und Preis</translation>
    </message>
    <message>
        <source>a paper trimmer for you</source>
        <translation>ein Papierschneider für die Leitung</translation>
    </message>
    <message numerus="yes">
        <source>%n scoring board(s) with their tools</source>
        <translation>
            <numerusform>%n Rillbrett mit Werkzeug</numerusform>
            <numerusform>%n Rillbretter mit Werkzeug</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stylus(es)</source>
        <translation>
            <numerusform>%n Prägestift</numerusform>
            <numerusform>%n Prägestifte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bone folder(s)</source>
        <translation>
            <numerusform>%n Falzbein</numerusform>
            <numerusform>%n Falzbeine</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) of scissors or craft knives</source>
        <translation>
            <numerusform>%n Schere oder Bastelmesser</numerusform>
            <numerusform>%n Scheren oder Bastelmesser</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cutting mat(s)</source>
        <translation>
            <numerusform>%n Schneidematte</numerusform>
            <numerusform>%n Schneidematten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n safety ruler(s)</source>
        <translation>
            <numerusform>%n Sicherheitslineal</numerusform>
            <numerusform>%n Sicherheitslineale</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bottle(s) of glue</source>
        <translation>
            <numerusform>%n Flasche Klebstoff</numerusform>
            <numerusform>%n Flaschen Klebstoff</numerusform>
        </translation>
    </message>
    <message>
        <source>On the tables: %1.</source>
        <translation>Auf den Tischen: %1.</translation>
    </message>
    <message numerus="yes">
        <source>To save paper: one guide for two people, %n copy(ies) of each, printed on both sides.</source>
        <translation>
            <numerusform>Um Papier zu sparen: eine Anleitung für zwei, je %n Exemplar, beidseitig gedruckt.</numerusform>
            <numerusform>Um Papier zu sparen: eine Anleitung für zwei, je %n Exemplare, beidseitig gedruckt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Double-sided tape %1 wide: %2</source>
        <translation>Doppelseitiges Klebeband, %1 breit: %2</translation>
    </message>
    <message>
        <source>Ribbon %1 wide: %2</source>
        <translation>Schleifenband, %1 breit: %2</translation>
    </message>
    <message>
        <source>For each bag cut off: %1.</source>
        <translation>Für jede Tüte abschneiden: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1 A break of %n minute(s).</source>
        <translation>
            <numerusform>%1 Pause, %n Minute.</numerusform>
            <numerusform>%1 Pause, %n Minuten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With a break of %n minute(s) in its middle.</source>
        <translation>
            <numerusform>In der Mitte %n Minute Pause.</numerusform>
            <numerusform>In der Mitte %n Minuten Pause.</numerusform>
        </translation>
    </message>
    <message>
        <source>Lay the sheet on its long side as drawn: its grain runs from left to right.</source>
        <translation>Den Bogen quer legen wie gezeichnet: Die Laufrichtung geht von links nach rechts.</translation>
    </message>
    <message>
        <source>Lay the sheet upright as drawn: its grain runs from left to right.</source>
        <translation>Den Bogen hochkant legen wie gezeichnet: Die Laufrichtung geht von links nach rechts.</translation>
    </message>
    <message>
        <source>Lay the sheet as drawn, a quarter turned.</source>
        <translation>Den Bogen wie gezeichnet legen, um eine Vierteldrehung gedreht.</translation>
    </message>
    <message numerus="yes">
        <source>%n foam dot(s), %1 thick</source>
        <translation>
            <numerusform>%n Schaumstoffpunkt, %1 dick</numerusform>
            <numerusform>%n Schaumstoffpunkte, %1 dick</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of %1, %2</source>
        <translation>
            <numerusform>%n Bogen %1, %2</numerusform>
            <numerusform>%n Bögen %1, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>As the sheet lies drawn, the pattern runs from left to right.</source>
        <translation>So wie der Bogen gezeichnet liegt, läuft das Muster von links nach rechts.</translation>
    </message>
    <message>
        <source>Lay the sheet as drawn: the pattern runs up and down.</source>
        <translation>Den Bogen wie gezeichnet legen: Das Muster läuft von oben nach unten.</translation>
    </message>
    <message>
        <source>As the sheet lies drawn, the pattern’s top is at the right.</source>
        <translation>So wie der Bogen gezeichnet liegt, zeigt die Oberkante des Musters nach rechts.</translation>
    </message>
    <message>
        <source>Lay the sheet as drawn: the pattern’s top is at the top.</source>
        <translation>Den Bogen wie gezeichnet legen: Das Muster steht aufrecht.</translation>
    </message>
    <message>
        <source>%1 Mark the edge that the arrow points to on the back of each blank.</source>
        <translation>%1 Auf der Rückseite jedes Zuschnitts die Kante anzeichnen, auf die der Pfeil zeigt.</translation>
    </message>
    <message>
        <source>%1, for the %2 punch</source>
        <translation>%1, für den Motivlocher %2</translation>
    </message>
    <message>
        <source>Blanks: %1</source>
        <translation>Zuschnitte: %1</translation>
    </message>
    <message>
        <source>Card: %1</source>
        <translation>Karton: %1</translation>
    </message>
    <message numerus="yes">
        <source>Ribbon %1 wide, %3: %2 in %n piece(s)</source>
        <translation>
            <numerusform>Schleifenband %1 breit, %3: %2 in %n Stück</numerusform>
            <numerusform>Schleifenband %1 breit, %3: %2 in %n Stücken</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n set(s) of punches (%1)</source>
        <translation>
            <numerusform>%n Satz Motivlocher (%1)</numerusform>
            <numerusform>%n Sätze Motivlocher (%1)</numerusform>
        </translation>
    </message>
    <message>
        <source>Ribbon %1 wide, %2: %3</source>
        <translation>Schleifenband, %1 breit, %2: %3</translation>
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
        <translation>Blatt %1</translation>
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
        <source>joins %1</source>
        <translation>hier %1 anlegen</translation>
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
        <translation>rillen, zu sich hin falten</translation>
    </message>
    <message>
        <source>score, fold away from you</source>
        <translation>rillen, von sich weg falten</translation>
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
        <translation>Dieses Teil braucht keine Rilllinie.</translation>
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
        <source>%1, %2 thick</source>
        <translation>%1, %2 dick</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>already on the other face</source>
        <translation>schon auf der anderen Seite</translation>
    </message>
    <message>
        <source>Left and bottom side:</source>
        <translation>Linke und untere Seite:</translation>
    </message>
    <message>
        <source>Left and top side:</source>
        <translation>Linke und obere Seite:</translation>
    </message>
    <message>
        <source>Right and bottom side:</source>
        <translation>Rechte und untere Seite:</translation>
    </message>
    <message>
        <source>Right and top side:</source>
        <translation>Rechte und obere Seite:</translation>
    </message>
    <message>
        <source>Left, right and bottom side:</source>
        <translation>Linke, rechte und untere Seite:</translation>
    </message>
    <message>
        <source>Left, right and top side:</source>
        <translation>Linke, rechte und obere Seite:</translation>
    </message>
    <message>
        <source>Left, bottom and top side:</source>
        <translation>Linke, untere und obere Seite:</translation>
    </message>
    <message>
        <source>Right, bottom and top side:</source>
        <translation>Rechte, untere und obere Seite:</translation>
    </message>
    <message>
        <source>Make %1 of these.</source>
        <translation>%1-mal anfertigen.</translation>
    </message>
    <message>
        <source>One drawing unit is 1 mm.</source>
        <translation>Eine Zeicheneinheit ist 1 mm.</translation>
    </message>
    <message>
        <source>glue on the other face</source>
        <translation>auf der anderen Seite kleben</translation>
    </message>
    <message>
        <source>Trace the %1 curves from the template with a stylus.</source>
        <translation>Die %1 gebogenen Linien mit dem Prägestift von der Vorlage durchzeichnen.</translation>
    </message>
    <message>
        <source>adhesive, inside up</source>
        <translation>Klebstoff, Innenseite oben</translation>
    </message>
    <message>
        <source>adhesive, outside up</source>
        <translation>Klebstoff, Außenseite oben</translation>
    </message>
    <message>
        <source>make %1</source>
        <translation>%1-mal anfertigen</translation>
    </message>
    <message>
        <source>The printed face becomes the outside.</source>
        <translation>Die bedruckte Seite wird außen.</translation>
    </message>
    <message>
        <source>inside up</source>
        <translation>Innenseite oben</translation>
    </message>
    <message>
        <source>outside up</source>
        <translation>Außenseite oben</translation>
    </message>
    <message>
        <source>Print at 100 %, not “fit to page”.</source>
        <translation>Mit 100 % drucken, nicht „an Seite anpassen“.</translation>
    </message>
    <message>
        <source>Measure the bars before you cut. 97.3 mm instead of 100: a letter page was shrunk onto A4; 94.1 mm: an A4 page onto letter. Choose your paper and 100 %, and print again.</source>
        <translation>Vor dem Schneiden die Prüfstrecken nachmessen. 97,3 mm statt 100: Letter wurde auf A4 verkleinert; 94,1 mm: A4 auf Letter. Das eigene Papier und 100 % wählen, neu drucken.</translation>
    </message>
    <message>
        <source>Numbers at the edges: score settings in mm.</source>
        <translation>Zahlen an den Kanten: Rillmaße in mm.</translation>
    </message>
    <message>
        <source>Numbers at the edges: score settings in inches.</source>
        <translation>Zahlen an den Kanten: Rillmaße in Zoll.</translation>
    </message>
    <message>
        <source>score guide strips</source>
        <translation>Rillstreifen</translation>
    </message>
    <message>
        <source>one strip for all four sides</source>
        <translation>ein Streifen für alle vier Seiten</translation>
    </message>
    <message>
        <source>part %1 of %2</source>
        <translation>Teil %1 von %2</translation>
    </message>
    <message>
        <source>lay this strip’s lower edge along the sheet</source>
        <translation>Unterkante an den Bogen legen</translation>
    </message>
    <message>
        <source>stop at line %1</source>
        <translation>bis Linie %1</translation>
    </message>
    <message>
        <source>stop at %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>Cut the strips out. Turn the sheet, inside up, so that the side named lies to you, and lay the strip along it from corner to corner: score from every tick. A tick with a bar is a short score. The small arrow shows the end its number counts from. Butt the parts of a long strip at the double lines.</source>
        <translation>Die Streifen ausschneiden. Den Bogen mit der Innenseite nach oben so drehen, dass die genannte Seite vorn liegt, und den Streifen von Ecke zu Ecke daran anlegen: von jedem Strich aus rillen. Ein Strich mit Querbalken ist eine kurze Rilllinie. Der kleine Pfeil zeigt zum Ende, von dem aus die Zahl gemessen ist. Teile eines langen Streifens an den Doppelstrichen aneinanderstoßen.</translation>
    </message>
    <message>
        <source>Slanting scores and curves are on the template only.</source>
        <translation>Schräge und gebogene Rilllinien stehen nur auf der Vorlage.</translation>
    </message>
    <message>
        <source>Trace the outline, prick through the points, and score from point to point.</source>
        <translation>Den Umriss nachzeichnen, die Punkte durchstechen und von Punkt zu Punkt rillen.</translation>
    </message>
    <message>
        <source>Cut along the thin frame, butt the tiles; the circles close.</source>
        <translation>Am dünnen Rahmen schneiden, Blätter aneinanderstoßen; die Kreise schließen sich.</translation>
    </message>
    <message>
        <source>prick through: end of a score</source>
        <translation>durchstechen: Ende einer Rilllinie</translation>
    </message>
    <message>
        <source>%1, %2 g/m² (%3 lb cover), %4 thick</source>
        <translation>%1, %2 g/m² (%3 lb cover), %4 dick</translation>
    </message>
    <message>
        <source>corrected for the printer: across %1, down %2</source>
        <translation>für den Drucker korrigiert: quer %1, hoch %2</translation>
    </message>
    <message>
        <source>Calibration page, %1</source>
        <translation>Kalibrierseite, %1</translation>
    </message>
    <message>
        <source>%1 across</source>
        <translation>%1 quer</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 hoch</translation>
    </message>
    <message>
        <source>1. Print this page at 100 %, not “fit to page”, on the paper and with the printer you use for templates.</source>
        <translation>1. Diese Seite mit 100 % drucken, nicht „an Seite anpassen“, auf dem Papier und mit dem Drucker, die für Vorlagen benutzt werden.</translation>
    </message>
    <message>
        <source>2. Measure both bars from end to end with a steel ruler, as exactly as you can read it.</source>
        <translation>2. Beide Strecken von Ende zu Ende mit einem Stahllineal messen, so genau es sich ablesen lässt.</translation>
    </message>
    <message>
        <source>3. Type both numbers where you chose this page. Templates printed on that paper with that printer then come out in true size; each says so.</source>
        <translation>3. Beide Zahlen dort eintippen, wo diese Seite gewählt wurde. Vorlagen auf diesem Papier mit diesem Drucker kommen dann in Originalgröße heraus; auf jeder steht es.</translation>
    </message>
    <message>
        <source>Score from (%1, %2) to (%3, %4), counted from the lower right corner.</source>
        <translation>Von (%1, %2) bis (%3, %4) rillen, gezählt von der unteren rechten Ecke.</translation>
    </message>
    <message>
        <source>fence</source>
        <translation>Anschlag</translation>
    </message>
    <message>
        <source>Colour runs %1 beyond every cut. Trim from the corner marks; short ticks show where folds end. Flaps that take glue stay plain.</source>
        <translation>Die Farbe geht %1 über jeden Schnitt hinaus. Nach den Eckmarken zuschneiden; kurze Striche zeigen, wo Falze enden. Klebelaschen bleiben unbedruckt.</translation>
    </message>
    <message>
        <source>A back page: turn the printed sheet over sideways, as one turns a page of a book, and cut from the front.</source>
        <translation>Eine Rückseite: den bedruckten Bogen seitlich wenden, wie man eine Buchseite umblättert, und von vorn ausschneiden.</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>Words are for the other face, the outside.</source>
        <translation>Worte gehören auf die andere Seite, die Außenseite.</translation>
    </message>
    <message>
        <source>Colour ends at the cuts. Trim from the corner marks; short ticks show where folds end. Flaps that take glue stay plain.</source>
        <translation>Die Farbe endet an den Schnitten. Nach den Eckmarken zuschneiden; kurze Striche zeigen, wo Falze enden. Klebelaschen bleiben unbedruckt.</translation>
    </message>
    <message>
        <source>%1 (%2 lb cover), %3 thick</source>
        <translation>%1 (%2 lb cover), %3 dick</translation>
    </message>
    <message>
        <source>%1 (%2 g/m²), %3 thick</source>
        <translation>%1 (%2 g/m²), %3 dick</translation>
    </message>
</context>
<context>
    <name>languages</name>
    <message>
        <source>English</source>
        <comment>its own name</comment>
        <translation>Deutsch</translation>
    </message>
</context>
<context>
    <name>panels</name>
    <message>
        <source>mat</source>
        <translation>Zierpapier</translation>
    </message>
    <message>
        <source>label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>mat layer</source>
        <translation>Rahmenpapier</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>mat layer of the tag</source>
        <translation>Rahmenpapier des Anhängers</translation>
    </message>
    <message>
        <source>film</source>
        <translation>Folie</translation>
    </message>
    <message>
        <source>greeting slip</source>
        <translation>Grußkärtchen</translation>
    </message>
    <message>
        <source>base</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>front</source>
        <translation>Vorderwand</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rückwand</translation>
    </message>
    <message>
        <source>left</source>
        <translation>linke Seitenwand</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechte Seitenwand</translation>
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
        <translation>Kleberand</translation>
    </message>
    <message>
        <source>front tab</source>
        <translation>vordere Lasche</translation>
    </message>
    <message>
        <source>back tab</source>
        <translation>hintere Lasche</translation>
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
        <translation>oberer Deckel</translation>
    </message>
    <message>
        <source>bottom lid</source>
        <translation>unterer Deckel</translation>
    </message>
    <message>
        <source>top dust flap</source>
        <translation>obere Staublasche</translation>
    </message>
    <message>
        <source>bottom dust flap</source>
        <translation>untere Staublasche</translation>
    </message>
    <message>
        <source>back corner</source>
        <translation>hintere Ecke</translation>
    </message>
    <message>
        <source>bottom</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>bottom flap</source>
        <translation>Bodenklappe</translation>
    </message>
    <message>
        <source>bottom glue tab</source>
        <translation>Boden-Klebelasche</translation>
    </message>
    <message>
        <source>bottom hook</source>
        <translation>Bodenhaken</translation>
    </message>
    <message>
        <source>bottom panel</source>
        <translation>Bodenteil</translation>
    </message>
    <message>
        <source>bottom shoulders</source>
        <translation>Bodenschultern</translation>
    </message>
    <message>
        <source>bottom side</source>
        <translation>Bodenseite</translation>
    </message>
    <message>
        <source>bottom tongue</source>
        <translation>Bodenzunge</translation>
    </message>
    <message>
        <source>doubling</source>
        <translation>Doppelung</translation>
    </message>
    <message>
        <source>face</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>foot</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>front corner</source>
        <translation>vordere Ecke</translation>
    </message>
    <message>
        <source>gap flap</source>
        <translation>Füllklappe</translation>
    </message>
    <message>
        <source>hang tab</source>
        <translation>Aufhänger</translation>
    </message>
    <message>
        <source>left ear</source>
        <translation>linkes Ohr</translation>
    </message>
    <message>
        <source>left tongue</source>
        <translation>linke Zunge</translation>
    </message>
    <message>
        <source>lid</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>petal</source>
        <translation>Blütenblatt</translation>
    </message>
    <message>
        <source>right ear</source>
        <translation>rechtes Ohr</translation>
    </message>
    <message>
        <source>right tongue</source>
        <translation>rechte Zunge</translation>
    </message>
    <message>
        <source>rim</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>roof</source>
        <translation>Dach</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Lasche</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Oberseite</translation>
    </message>
    <message>
        <source>left gable</source>
        <translation>linker Giebel</translation>
    </message>
    <message>
        <source>right gable</source>
        <translation>rechter Giebel</translation>
    </message>
    <message>
        <source>front handle</source>
        <translation>vorderer Griff</translation>
    </message>
    <message>
        <source>back handle</source>
        <translation>hinterer Griff</translation>
    </message>
    <message>
        <source>back fin</source>
        <translation>hinterer Steg</translation>
    </message>
    <message>
        <source>back flap</source>
        <translation>hintere Lasche</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>divider</source>
        <translation>Trennwand</translation>
    </message>
    <message>
        <source>far flap</source>
        <translation>ferne Endklappe</translation>
    </message>
    <message>
        <source>flap</source>
        <translation>Klappe</translation>
    </message>
    <message>
        <source>front fin</source>
        <translation>vorderer Steg</translation>
    </message>
    <message>
        <source>front flap</source>
        <translation>vordere Lasche</translation>
    </message>
    <message>
        <source>left back half</source>
        <translation>linke hintere Hälfte</translation>
    </message>
    <message>
        <source>left back fin</source>
        <translation>linker hinterer Steg</translation>
    </message>
    <message>
        <source>left fin</source>
        <translation>linker Steg</translation>
    </message>
    <message>
        <source>left flap</source>
        <translation>linke Lasche</translation>
    </message>
    <message>
        <source>left front half</source>
        <translation>linke vordere Hälfte</translation>
    </message>
    <message>
        <source>left front fin</source>
        <translation>linker vorderer Steg</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>linke Seite</translation>
    </message>
    <message>
        <source>left tab</source>
        <translation>linke Klebelasche</translation>
    </message>
    <message>
        <source>near flap</source>
        <translation>nahe Endklappe</translation>
    </message>
    <message>
        <source>pocket</source>
        <translation>Tasche</translation>
    </message>
    <message>
        <source>right back half</source>
        <translation>rechte hintere Hälfte</translation>
    </message>
    <message>
        <source>right back fin</source>
        <translation>rechter hinterer Steg</translation>
    </message>
    <message>
        <source>right fin</source>
        <translation>rechter Steg</translation>
    </message>
    <message>
        <source>right flap</source>
        <translation>rechte Lasche</translation>
    </message>
    <message>
        <source>right front half</source>
        <translation>rechte vordere Hälfte</translation>
    </message>
    <message>
        <source>right front fin</source>
        <translation>rechter vorderer Steg</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>rechte Seite</translation>
    </message>
    <message>
        <source>right tab</source>
        <translation>rechte Klebelasche</translation>
    </message>
    <message>
        <source>tip tab</source>
        <translation>Lasche an der Spitze</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>face, piece</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>place, part</comment>
        <translation>%2 (%1)</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>side, part</comment>
        <translation>%2 %1</translation>
    </message>
    <message>
        <source>roof seam</source>
        <translation>Dachnaht</translation>
    </message>
    <message>
        <source>hook</source>
        <translation>Haken</translation>
    </message>
    <message>
        <source>back foot</source>
        <translation>Fuß hinten</translation>
    </message>
    <message>
        <source>left foot</source>
        <translation>linker Fuß</translation>
    </message>
    <message>
        <source>left back foot</source>
        <translation>linker hinterer Fuß</translation>
    </message>
    <message>
        <source>right foot</source>
        <translation>rechter Fuß</translation>
    </message>
    <message>
        <source>right back foot</source>
        <translation>rechter hinterer Fuß</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>layer of the label</source>
        <translation>Lage des Etiketts</translation>
    </message>
    <message>
        <source>photo mat</source>
        <translation>Fotopapier</translation>
    </message>
</context>
<context>
    <name>patterns</name>
    <message>
        <source>Stripes</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Gingham</source>
        <translation>Vichykaro</translation>
    </message>
    <message>
        <source>Tartan</source>
        <translation>Schottenkaro</translation>
    </message>
    <message>
        <source>Chevron</source>
        <translation>Zickzack</translation>
    </message>
    <message>
        <source>Waves</source>
        <translation>Wellen</translation>
    </message>
    <message>
        <source>Pin dots</source>
        <translation>Pünktchen</translation>
    </message>
    <message>
        <source>Dots</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Leaves</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Sprigs</source>
        <translation>Zweige</translation>
    </message>
    <message>
        <source>Confetti</source>
        <translation>Konfetti</translation>
    </message>
    <message>
        <source>Stars</source>
        <translation>Sterne</translation>
    </message>
    <message>
        <source>Snow</source>
        <translation>Schneekristalle</translation>
    </message>
    <message>
        <source>Terrazzo</source>
        <translation>Terrazzo</translation>
    </message>
    <message>
        <source>Herringbone</source>
        <translation>Fischgrät</translation>
    </message>
    <message>
        <source>Lattice</source>
        <translation>Rautengitter</translation>
    </message>
    <message>
        <source>Scallops</source>
        <translation>Muschelbögen</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>own picture %1 wide</source>
        <translation>eigenes Bild %1 breit</translation>
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
    <message>
        <source>cup</source>
        <translation>Becher</translation>
    </message>
    <message>
        <source>lid</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>sleeve</source>
        <translation>Hülse</translation>
    </message>
    <message>
        <source>solid</source>
        <translation>Körper</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>Tüte</translation>
    </message>
    <message>
        <source>envelope</source>
        <translation>Umschlag</translation>
    </message>
    <message>
        <source>inner cross</source>
        <translation>inneres Kreuz</translation>
    </message>
    <message>
        <source>middle cross</source>
        <translation>mittleres Kreuz</translation>
    </message>
    <message>
        <source>insert</source>
        <translation>Einsatz</translation>
    </message>
    <message>
        <source>long divider</source>
        <translation>lange Trennwand</translation>
    </message>
    <message>
        <source>outer cross</source>
        <translation>äußeres Kreuz</translation>
    </message>
    <message>
        <source>pouch</source>
        <translation>Tüte</translation>
    </message>
    <message>
        <source>scoop</source>
        <translation>Pommestüte</translation>
    </message>
    <message>
        <source>short divider</source>
        <translation>kurze Trennwand</translation>
    </message>
    <message>
        <source>wallet</source>
        <translation>Mappe</translation>
    </message>
    <message>
        <source>wrap</source>
        <translation>Hülle</translation>
    </message>
    <message>
        <source>mat</source>
        <translation>Zierpapier</translation>
    </message>
    <message>
        <source>label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>mat layer</source>
        <translation>Rahmenpapier</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>mat layer of the tag</source>
        <translation>Rahmenpapier des Anhängers</translation>
    </message>
    <message>
        <source>film</source>
        <translation>Folie</translation>
    </message>
    <message>
        <source>greeting slip</source>
        <translation>Grußkärtchen</translation>
    </message>
    <message>
        <source>other half</source>
        <translation>andere Hälfte</translation>
    </message>
    <message>
        <source>layer of the label</source>
        <translation>Lage des Etiketts</translation>
    </message>
    <message>
        <source>photo mat</source>
        <translation>Fotopapier</translation>
    </message>
</context>
<context>
    <name>places</name>
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
        <source>left front</source>
        <translation>links vorn</translation>
    </message>
    <message>
        <source>left back</source>
        <translation>links hinten</translation>
    </message>
    <message>
        <source>right front</source>
        <translation>rechts vorn</translation>
    </message>
    <message>
        <source>right back</source>
        <translation>rechts hinten</translation>
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
        <translation>Die Rilllinie zwischen %1 und %2 verlässt ihre gemeinsame Kante. Die Lasche nicht länger als diese Kante machen.</translation>
    </message>
    <message>
        <source>The score of %1 is only %2 long. Make the flap wider at its score.</source>
        <translation>Die Rilllinie von %1 ist nur %2 lang. Die Lasche an der Rilllinie breiter machen.</translation>
    </message>
    <message>
        <source>The flap %1 is %2 wide; adhesive needs %3. Make the flap wider or choose thinner card.</source>
        <translation>Die Lasche %1 ist %2 breit; Klebstoff braucht %3. Die Lasche breiter machen oder dünneren Karton wählen.</translation>
    </message>
    <message>
        <source>An opening reaches over the edge of %1. Make it smaller or move it inwards.</source>
        <translation>Eine Öffnung reicht über den Rand von %1. Kleiner machen oder nach innen rücken.</translation>
    </message>
    <message>
        <source>%1 is to be joined to a panel that does not exist. Name a panel of this net.</source>
        <translation>%1 soll an einer Fläche hängen, die es nicht gibt. Eine Fläche dieses Netzes nennen.</translation>
    </message>
    <message>
        <source>The net falls into %1 pieces. Every panel must hang on the others by a score.</source>
        <translation>Das Netz zerfällt in %1 Teile. Jede Fläche muss mit einer Rilllinie an den anderen hängen.</translation>
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
        <translation>Gefaltet liegt die Rilllinie von %1 um %3 neben der Kante von %2. Die Maße dazwischen so ändern, dass sie sich treffen.</translation>
    </message>
    <message>
        <source>Folded, the creases round %1 leave a gap of %2. Change the measures beside it so that they meet.</source>
        <translation>Gefaltet lassen die Falze um %1 eine Lücke von %2. Die Maße daneben ändern, damit sie sich treffen.</translation>
    </message>
    <message>
        <source>On the way, in the step “%3”, %1 would pass through %2. Fold in another order or make one of them shorter.</source>
        <translation>Unterwegs, im Schritt „%3“, ginge %1 durch %2 hindurch. In anderer Reihenfolge falten oder eines davon kürzen.</translation>
    </message>
    <message>
        <source>There is no style “%1”. Choose one that “creasewright styles” lists.</source>
        <translation>Es gibt kein Modell „%1“. Eines wählen, das „creasewright styles“ aufzählt.</translation>
    </message>
    <message>
        <source>The style %1 has no measure “%2”. “creasewright styles” lists the ones it has.</source>
        <translation>Das Modell %1 hat kein Maß „%2“. „creasewright styles“ zählt die vorhandenen auf.</translation>
    </message>
    <message>
        <source>“%2” cannot be read as %1. Type a length such as 2 5/16 in or 58.7 mm, or a whole number where pieces are counted.</source>
        <translation>„%2“ ist nicht als %1 zu lesen. Eine Länge wie 2 5/16 in oder 58,7 mm eingeben, oder eine ganze Zahl, wo gezählt wird.</translation>
    </message>
    <message>
        <source>%1 is %2, and %3 is the least that works here. Make it %3 or more.</source>
        <translation>%1 ist %2, nötig sind mindestens %3. Auf %3 oder mehr ändern.</translation>
    </message>
    <message>
        <source>%1 is %2, and %3 is the most that fits here. Make it %3 or less.</source>
        <translation>%1 ist %2, möglich sind höchstens %3. Auf %3 oder weniger ändern.</translation>
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
        <source>The card is %1 thick. Choose one of %2 or less.</source>
        <translation>Der Karton ist %1 dick. Einen von höchstens %2 wählen.</translation>
    </message>
    <message>
        <source>There is no ease “%1”. Choose snug, easy or loose.</source>
        <translation>„%1“ ist keine Angabe für die Luft. snug (knapp), easy (normal) oder loose (locker) wählen.</translation>
    </message>
    <message>
        <source>There is no tool grid “%1”. Choose 1/8in, 1/16in, 1mm or none.</source>
        <translation>Es gibt kein Werkzeugraster „%1“. 1/8in, 1/16in, 1mm oder none (keins) wählen.</translation>
    </message>
    <message>
        <source>There is no extra “%1”. Choose one that “creasewright extras” lists.</source>
        <translation>Es gibt kein Extra „%1“. Eines wählen, das „creasewright extras“ aufführt.</translation>
    </message>
    <message>
        <source>The extra “%1” finds no place on this box. Leave it out or choose another style.</source>
        <translation>Das Extra „%1“ findet an dieser Schachtel keinen Platz. Weglassen oder ein anderes Modell wählen.</translation>
    </message>
    <message>
        <source>The extra “%1” belongs to a face “%2” that does not show. Choose another face.</source>
        <translation>Das Extra „%1“ gehört zu einer Fläche „%2“, die nicht zu sehen ist. Eine andere Fläche wählen.</translation>
    </message>
    <message>
        <source>Two scores on %1 are only %2 apart; below %3 the card may tear or not fold clean. Make the strip wider or choose thinner card.</source>
        <translation>Zwei Rilllinien an %1 liegen nur %2 auseinander; unter %3 kann der Karton reißen oder unsauber falten. Den Streifen breiter machen oder dünneren Karton wählen.</translation>
    </message>
    <message>
        <source>There is no paper “%1”. Choose one such as a4 or letter.</source>
        <translation>Es gibt kein Papier „%1“. Eines wie a4 oder letter wählen.</translation>
    </message>
    <message>
        <source>A margin of %1 leaves no room on %2. Choose a smaller margin or larger paper.</source>
        <translation>Eine Randbreite von %1 lässt auf %2 keinen Platz. Eine kleinere Randbreite oder größeres Papier wählen.</translation>
    </message>
    <message>
        <source>The template would take %1 pages, more than %2. Choose larger paper or a smaller design.</source>
        <translation>Die Vorlage bräuchte %1 Seiten, mehr als %2. Größeres Papier oder einen kleineren Entwurf wählen.</translation>
    </message>
    <message>
        <source>There is nothing to cut, or nothing to cut it from. Add a design and a sheet.</source>
        <translation>Es fehlt ein Entwurf oder ein Bogen dafür. Einen Entwurf und einen Bogen hinzufügen.</translation>
    </message>
    <message>
        <source>The blank of “%1”, %2 × %3, is larger than every sheet. Make the design smaller.</source>
        <translation>Der Zuschnitt von „%1“, %2 × %3, ist größer als jeder Bogen. Den Entwurf kleiner machen.</translation>
    </message>
    <message>
        <source>The blank of “%1”, %2 × %3, is larger than every sheet. Add a sheet such as %4, or make the design smaller.</source>
        <translation>Der Zuschnitt von „%1“, %2 × %3, ist größer als jeder Bogen. Einen Bogen wie %4 hinzufügen oder den Entwurf kleiner machen.</translation>
    </message>
    <message>
        <source>The sheets at hand do not suffice. Add sheets or take fewer sets.</source>
        <translation>Die vorhandenen Bögen reichen nicht. Bögen hinzufügen oder weniger Sätze nehmen.</translation>
    </message>
    <message>
        <source>%2 is no number for the field “%1”. Choose one from %3 to %4.</source>
        <translation>%2 ist keine Zahl für das Feld „%1“. Eine von %3 bis %4 wählen.</translation>
    </message>
    <message>
        <source>“%1” is not a Creasewright kit. Choose a .cwkit file.</source>
        <translation>„%1“ ist kein Creasewright-Kurspaket. Eine Datei .cwkit wählen.</translation>
    </message>
    <message>
        <source>Row %2 of “%1” cannot be read: “%3”. Correct it and read the table again.</source>
        <translation>Zeile %2 von „%1“ ist nicht lesbar: „%3“. Berichtigen und die Tabelle noch einmal lesen.</translation>
    </message>
    <message>
        <source>The blank of “%1”, %2 × %3, fits no sheet along the grain. Let it be turned, or add a sheet with the other grain.</source>
        <translation>Der Zuschnitt von „%1“, %2 × %3, passt in Laufrichtung auf keinen Bogen. Drehen lassen oder einen Bogen mit der anderen Laufrichtung hinzufügen.</translation>
    </message>
    <message>
        <source>“%1” has no piece “%2”. Its pieces are: %3.</source>
        <translation>„%1“ hat kein Teil „%2“. Seine Teile sind: %3.</translation>
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
        <source>“%1” is not a Creasewright design. Choose a .cwdesign file.</source>
        <translation>„%1“ ist kein Creasewright-Entwurf. Eine .cwdesign-Datei wählen.</translation>
    </message>
    <message>
        <source>“%1” was saved by a newer Creasewright (format %2; this one reads up to %3). Open it with the newer program.</source>
        <translation>„%1“ wurde mit einem neueren Creasewright gespeichert (Format %2; dieses liest bis %3). Mit dem neueren Programm öffnen.</translation>
    </message>
    <message>
        <source>“%2” is not a value for the field “%1”. Correct it or open another copy.</source>
        <translation>„%2“ ist kein Wert für das Feld „%1“. Berichtigen oder eine andere Kopie öffnen.</translation>
    </message>
    <message>
        <source>There are %1 names for %2 sets. Raise the number of people or leave names out.</source>
        <translation>%1 Namen für %2 Sätze. Die Zahl der Personen erhöhen oder Namen weglassen.</translation>
    </message>
    <message>
        <source>The cutting plan that was found is wrong (%2 “%1”) and is kept back: a fault of the program. Another number of people or another sheet may do.</source>
        <translation>Der gefundene Schneideplan ist falsch (%2 „%1“) und wird zurückgehalten: ein Fehler des Programms. Mit einer anderen Zahl von Personen oder einem anderen Bogen geht es vielleicht.</translation>
    </message>
    <message>
        <source>“%1” has %2 bytes, more than the %3 such a file may have. Choose one saved by this program.</source>
        <translation>„%1“ hat %2 Bytes, mehr als die %3, die eine solche Datei haben darf. Eine wählen, die dieses Programm gespeichert hat.</translation>
    </message>
    <message>
        <source>The file has no field “%1”. Add it or open another copy.</source>
        <translation>Der Datei fehlt das Feld „%1“. Es ergänzen oder eine andere Kopie öffnen.</translation>
    </message>
    <message>
        <source>“%1” is not a Creasewright bundle. Choose a .cwbundle file.</source>
        <translation>„%1“ ist keine Creasewright-Sammlung. Eine .cwbundle-Datei wählen.</translation>
    </message>
    <message>
        <source>The roll “%1” is %2 m long, more than the %3 m a roll may have. Shorten it.</source>
        <translation>Die Rolle „%1“ ist %2 m lang, mehr als die %3 m, die eine Rolle haben darf. Die Länge verringern.</translation>
    </message>
    <message>
        <source>The list “%1” has %2 entries, more than the %3 it may have. Take some away.</source>
        <translation>Die Liste „%1“ hat %2 Einträge, mehr als die %3, die sie haben darf. Einige wegnehmen.</translation>
    </message>
    <message>
        <source>The text of “%1” has %2 characters, more than the %3 it may have. Shorten it.</source>
        <translation>Der Text von „%1“ hat %2 Zeichen, mehr als die %3, die er haben darf. Den Text kürzen.</translation>
    </message>
    <message>
        <source>%1 %2 or more</source>
        <translation>%1 auf %2 oder mehr</translation>
    </message>
    <message>
        <source>The folded piece leaves %1 for the product %2, and %3 is needed. Make %4, or choose a snugger ease.</source>
        <translation>Gefaltet bleiben für den Inhalt %2 %1, nötig sind %3. %4 setzen oder weniger Luft wählen.</translation>
    </message>
    <message>
        <source>The folded piece leaves %1 for the product %2, and %3 is needed. This style does not suit the product: choose another style or a snugger ease.</source>
        <translation>Gefaltet bleiben für den Inhalt %2 %1, nötig sind %3. Diese Form passt nicht zum Inhalt: eine andere Form oder weniger Luft wählen.</translation>
    </message>
    <message>
        <source>This style cannot be made of this card: nothing is right for %1. Choose thinner card or another style.</source>
        <translation>Diese Form lässt sich aus diesem Karton nicht machen: Für %1 passt kein Maß. Dünneren Karton oder eine andere Form wählen.</translation>
    </message>
    <message>
        <source>This style does not suit the product: %1 would have to be %2, and %3 is the most it can be. Choose another style.</source>
        <translation>Diese Form passt nicht zum Inhalt: %1 müsste %2 sein, höchstens möglich sind %3. Eine andere Form wählen.</translation>
    </message>
    <message>
        <source>The card of %1 is %2 thick; above %3 a score alone may crack it. Cut half through on the outside of each fold, or choose thinner card.</source>
        <translation>Der Karton für %1 ist %2 dick; über %3 kann er an der Rilllinie brechen. Jede Linie außen halb durchschneiden oder dünneren Karton wählen.</translation>
    </message>
    <message>
        <source>The blank of %1, %2 × %3, is larger than the scoring board of %4. Let it hang over the edge, or choose a wider board.</source>
        <translation>Der Zuschnitt für %1, %2 × %3, ist größer als das Rillbrett von %4. Ihn über den Rand hängen lassen oder ein breiteres Brett wählen.</translation>
    </message>
    <message>
        <source>The blank of %1, %2 × %3, is larger than every sheet at hand. Get larger card or make the design smaller.</source>
        <translation>Der Zuschnitt für %1, %2 × %3, ist größer als jeder vorhandene Bogen. Größeren Karton besorgen oder den Entwurf kleiner machen.</translation>
    </message>
    <message>
        <source>The template takes %1 pages of %3, more than %2 to put together. Choose larger paper, or draw the blank by its measures.</source>
        <translation>Die Vorlage braucht %1 Seiten %3, mehr als %2 zum Zusammensetzen. Größeres Papier wählen oder den Zuschnitt nach Maß anzeichnen.</translation>
    </message>
    <message>
        <source>There is no card “%1”. Choose one that “creasewright cards” lists, or give its thickness, such as 0.3mm, 12pt or 300gsm.</source>
        <translation>Es gibt keinen Karton „%1“. Einen wählen, den „creasewright cards“ auflistet, oder die Dicke angeben, etwa 0.3mm, 12pt oder 300gsm.</translation>
    </message>
    <message>
        <source>There is no card “%1”. Like it are: %2. Choose one, or give a thickness, such as 0.3mm, 12pt or 300gsm.</source>
        <translation>Es gibt keinen Karton „%1“. Ähnlich heißen: %2. Einen davon wählen oder eine Dicke angeben, etwa 0.3mm, 12pt oder 300gsm.</translation>
    </message>
    <message>
        <source>The extra “%1” finds no room on %2 beside %3. Make it smaller or choose another face.</source>
        <translation>Das Extra „%1“ findet auf %2 neben %3 keinen Platz. Kleiner machen oder eine andere Fläche wählen.</translation>
    </message>
    <message>
        <source>The extra “%1” on %2 is covered, at least in part, by the extra “%3”. Make one of them smaller or choose another face.</source>
        <translation>Das Extra „%1“ auf %2 wird vom Extra „%3“ ganz oder teilweise verdeckt. Eines von beiden kleiner machen oder eine andere Fläche wählen.</translation>
    </message>
    <message>
        <source>No cutting plan was found. Plan again without stopping, or add sheets: those at hand may just not suffice.</source>
        <translation>Kein Schnittplan gefunden. Noch einmal planen, ohne anzuhalten, oder Bögen hinzufügen: Die vorhandenen reichen vielleicht knapp nicht.</translation>
    </message>
    <message>
        <source>There is no change “%1”. Choose one that “creasewright edits” lists.</source>
        <translation>Es gibt keine Änderung „%1“. Eine wählen, die „creasewright edits“ nennt.</translation>
    </message>
    <message>
        <source>Change %1, %2, belongs to %3, and this net has no such panel or edge. Give it another place or switch it off.</source>
        <translation>Änderung %1, %2, gehört zu %3, und dieses Netz hat keine solche Fläche oder Kante. Die Änderung anderswo ansetzen oder ausschalten.</translation>
    </message>
    <message>
        <source>Change %1, %2, does not fit on %3 as it is now. Make it smaller, move it away from edges, scores and other cuts, or switch it off.</source>
        <translation>Änderung %1, %2, passt so nicht auf %3. Die Änderung kleiner machen, von Kanten, Rilllinien und anderen Schnitten wegrücken oder ausschalten.</translation>
    </message>
    <message>
        <source>Change %1, %2, cuts nothing on %3. Make it larger or switch it off.</source>
        <translation>Änderung %1, %2, schneidet auf %3 nichts. Die Änderung größer machen oder ausschalten.</translation>
    </message>
    <message>
        <source>“%1” cannot be read for %2. Write lengths, numbers and names of measures with + - * / and brackets, such as depth / 2 - 3 mm.</source>
        <translation>„%1“ ist für %2 nicht lesbar. Längen, Zahlen und Namen von Maßen mit + - * / und Klammern schreiben, etwa depth / 2 - 3 mm.</translation>
    </message>
    <message>
        <source>%2 names “%1”, which is no measure here. Choose one of these: %3.</source>
        <translation>%2 nennt „%1“, und das ist hier kein Maß. Eines von diesen wählen: %3.</translation>
    </message>
    <message>
        <source>The units of “%1” for %2 do not go together. Add lengths to lengths only, with a unit beside each, such as 3 mm; a number of pieces is whole and has no unit.</source>
        <translation>Die Einheiten von „%1“ für %2 passen nicht zusammen. Längen nur zu Längen zählen, jede mit ihrer Einheit, etwa 3 mm; eine Anzahl ist ganz und hat keine Einheit.</translation>
    </message>
    <message>
        <source>“%1” for %2 divides by zero. Divide by another number.</source>
        <translation>„%1“ für %2 teilt durch null. Durch eine andere Zahl teilen.</translation>
    </message>
    <message>
        <source>“%1” for %2 depends on itself. Write one of the measures without naming the other.</source>
        <translation>„%1“ für %2 hängt von sich selbst ab. Eines der Maße schreiben, ohne das andere zu nennen.</translation>
    </message>
    <message>
        <source>“%1” is out of range for %2. Stay between %3 and %4.</source>
        <translation>„%1“ liegt für %2 außerhalb der Grenzen. Zwischen %3 und %4 bleiben.</translation>
    </message>
    <message>
        <source>The extra “%1” is %2 long, and %3 is the most that fits. Make it %3 or less.</source>
        <translation>Das Extra „%1“ ist %2 lang, und höchstens %3 passen. Auf %3 oder weniger verkleinern.</translation>
    </message>
    <message>
        <source>The bar of %2 cannot have come out as %1: from %3 to %4 can be corrected. Print the page again at 100 %, not “fit to page”, and measure from end to end.</source>
        <translation>Die Strecke von %2 ist mit %1 nicht zu korrigieren: möglich sind %3 bis %4. Die Seite noch einmal mit 100 % drucken, nicht „an Seite anpassen“, und von Ende zu Ende messen.</translation>
    </message>
    <message>
        <source>a part of it does not hold.</source>
        <translation>ein Teil davon hält nicht.</translation>
    </message>
    <message>
        <source>The style “%1”, which this is made from: %2</source>
        <translation>Das Modell „%1“, aus dem dies gemacht ist: %2</translation>
    </message>
    <message>
        <source>The product is %2 %1, and the style “%3” is kept for %4 to %5. Look whether its changes still suit.</source>
        <translation>Der Inhalt misst %1 %2, und das Modell „%3“ ist für %4 bis %5 behalten. Nachsehen, ob seine Änderungen noch passen.</translation>
    </message>
    <message>
        <source>Nothing is hinged to %1 yet. Add a flap to one of its edges: folded up by 90°, it is a wall.</source>
        <translation>An %1 hängt noch nichts. An einer seiner Kanten eine Lasche hinzufügen: um 90° hochgefaltet ist sie eine Wand.</translation>
    </message>
    <message>
        <source>%1 and %2 meet at an edge, and nothing holds them there. Add a flap to one of them, glued or tucked to the other.</source>
        <translation>%1 und %2 treffen sich an einer Kante, und nichts hält sie dort. An eine von beiden eine Lasche hinzufügen, an die andere geklebt oder eingesteckt.</translation>
    </message>
    <message>
        <source>“%1” is not a Creasewright style. Choose a .cwstyle file.</source>
        <translation>„%1“ ist kein Creasewright-Modell. Eine .cwstyle-Datei wählen.</translation>
    </message>
    <message>
        <source>There is no colour “%1”. Write one that “creasewright cards” lists, or its sRGB value, such as #9AAF90.</source>
        <translation>Es gibt keine Farbe „%1“. Eine schreiben, die „creasewright cards“ aufzählt, oder ihren sRGB-Wert, etwa #9AAF90.</translation>
    </message>
    <message>
        <source>There is no colour “%1”. Like it are: %2. An sRGB value will do too, such as #9AAF90.</source>
        <translation>Es gibt keine Farbe „%1“. Ähnlich sind: %2. Auch ein sRGB-Wert geht, etwa #9AAF90.</translation>
    </message>
    <message>
        <source>The extra “%1” would run through the air over the open box. Put a band or a sleeve round the box too, or choose a box with a lid.</source>
        <translation>Das Extra „%1“ liefe über der offenen Schachtel durch die Luft. Auch eine Banderole oder eine Hülse herumlegen oder eine Schachtel mit Deckel wählen.</translation>
    </message>
    <message>
        <source>There is no pattern “%1”. Choose one that “creasewright patterns” lists.</source>
        <translation>Ein Muster „%1“ gibt es nicht. Eines wählen, das „creasewright patterns“ auflistet.</translation>
    </message>
    <message>
        <source>There is no pattern “%1”. Like it are: %2.</source>
        <translation>Ein Muster „%1“ gibt es nicht. Ähnlich sind: %2.</translation>
    </message>
    <message>
        <source>“%1” is no turn of a pattern. Give whole degrees from 0 to 359.</source>
        <translation>„%1“ ist keine Drehung eines Musters. Ganze Grade von 0 bis 359 angeben.</translation>
    </message>
    <message>
        <source>“%1” is no side of a card. Write face or back.</source>
        <translation>„%1“ ist keine Seite des Kartons. face oder back schreiben.</translation>
    </message>
    <message>
        <source>“%1” says nothing about a pattern. Write ID:scale=12mm:turn=45:colours=sage,cream:side=face and leave out what you do not need.</source>
        <translation>„%1“ sagt nichts über ein Muster. ID:scale=12mm:turn=45:colours=sage,cream:side=face schreiben und weglassen, was nicht gebraucht wird.</translation>
    </message>
    <message>
        <source>A pattern cannot repeat every “%1”. Choose a scale from %2 to %3.</source>
        <translation>Ein Muster kann sich nicht alle „%1“ wiederholen. Einen Rapport von %2 bis %3 wählen.</translation>
    </message>
    <message>
        <source>The pattern %1 has %3 colours, not %2. Leave some out.</source>
        <translation>Das Muster %1 hat %3 Farben, nicht %2. Einige weglassen.</translation>
    </message>
    <message>
        <source>“%1” is no picture that can be read. Choose a PNG or JPEG file that opens in other programs.</source>
        <translation>„%1“ ist kein lesbares Bild. Eine PNG- oder JPEG-Datei wählen, die sich in anderen Programmen öffnen lässt.</translation>
    </message>
    <message>
        <source>“%1” is %2 × %3 pixels. A picture has at most %4 on a side and %5 in all: save it smaller.</source>
        <translation>„%1“ hat %2 × %3 Bildpunkte. Ein Bild hat höchstens %4 je Seite und %5 insgesamt: kleiner speichern.</translation>
    </message>
    <message>
        <source>The picture “%1” has %2 bytes, more than the %3 it may have: save it smaller.</source>
        <translation>Das Bild „%1“ hat %2 Byte, mehr als die erlaubten %3: kleiner speichern.</translation>
    </message>
    <message>
        <source>“%1” says neither yes nor no.</source>
        <translation>„%1“ heißt weder yes noch no.</translation>
    </message>
    <message>
        <source>“%1” is no shift of a picture. Give a length from −1 m to 1 m, such as -5mm.</source>
        <translation>Um „%1“ lässt sich kein Bild verschieben. Eine Länge von −1 m bis 1 m angeben, etwa -5mm.</translation>
    </message>
    <message>
        <source>No file of the picture is named. Write picture:FILE, such as picture:leaves.png.</source>
        <translation>Die Bilddatei fehlt. picture:DATEI schreiben, etwa picture:blatt.png.</translation>
    </message>
    <message>
        <source>The words “%2” on %1 are only %3 points high; below %4 few can read them. Write less, or make the piece larger.</source>
        <translation>Die Schrift „%2“ auf %1 ist nur %3 Punkt groß; unter %4 können sie wenige lesen. Weniger schreiben oder das Teil größer machen.</translation>
    </message>
    <message>
        <source>The words “%2” on %1 stand out from their paper by only %3 to 1; below %4 to 1 they are hard to read. Set them on a plain plate, or choose other colours.</source>
        <translation>Die Schrift „%2“ auf %1 hebt sich nur im Verhältnis %3 zu 1 von ihrem Papier ab; unter %4 zu 1 ist sie schwer zu lesen. Auf eine weiße Fläche setzen oder andere Farben wählen.</translation>
    </message>
    <message>
        <source>The words “%2” on %1 are %3 long where there are only %4. Write less, or make the type smaller.</source>
        <translation>Die Schrift „%2“ auf %1 ist %3 lang, Platz ist nur für %4. Weniger schreiben oder die Schrift kleiner machen.</translation>
    </message>
    <message>
        <source>The picture on %1 has only %2 dots to the inch in print; below %3 its edges show steps. Make it smaller on the paper, or choose a finer file.</source>
        <translation>Das Bild auf %1 hat im Druck nur %2 Punkte je Zoll; unter %3 werden seine Ränder stufig. Es auf dem Papier kleiner machen oder eine feinere Datei wählen.</translation>
    </message>
    <message>
        <source>Nothing here has a colour or a pattern to print. Give the card or an extra one.</source>
        <translation>Nichts hat hier eine Farbe oder ein Muster zum Drucken. Dem Karton oder einem Extra eines geben.</translation>
    </message>
    <message>
        <source>“%1” is no bleed. Print from 0 to %2 beyond the cuts.</source>
        <translation>Farbe kann nicht „%1“ über die Schnitte hinausgehen. 0 bis %2 angeben.</translation>
    </message>
    <message>
        <source>“%1” is no picture that can be printed on paper. Choose a PNG, JPEG or SVG file that opens in other programs.</source>
        <translation>„%1“ ist kein Bild, das sich auf Papier drucken lässt. Eine PNG-, JPEG- oder SVG-Datei wählen, die sich in anderen Programmen öffnen lässt.</translation>
    </message>
    <message>
        <source>The extra “%1” is to go on “%2”, and this design has no such extra. Write “box”, “outermost”, or the name or the number of an extra.</source>
        <translation>Das Extra „%1“ soll auf „%2“, und dieser Entwurf hat kein solches Extra. „box“, „outermost“ oder den Namen oder die Nummer eines Extras schreiben.</translation>
    </message>
    <message>
        <source>The extra “%1” cannot go on “%2”. Choose another place for it.</source>
        <translation>Das Extra „%1“ kann nicht auf „%2“. Einen anderen Platz dafür wählen.</translation>
    </message>
    <message>
        <source>These extras lie on one another in a circle, so that none lies on the box: %1. Let one of them lie on the box.</source>
        <translation>Diese Extras liegen im Kreis aufeinander, sodass keines auf der Schachtel liegt: %1. Eines davon auf die Schachtel legen.</translation>
    </message>
    <message>
        <source>The extra “%1” would stick out over the edge of %2 at its place. Move it inwards, make it smaller, or let it overhang.</source>
        <translation>Das Extra „%1“ stünde an seinem Platz über den Rand von %2 hinaus. Es nach innen rücken, kleiner machen oder überstehen lassen.</translation>
    </message>
    <message>
        <source>The extra “%1” cannot slide over the extra “%2”, which is held by foam. Glue that flat, or put it onto the band.</source>
        <translation>Das Extra „%1“ kann nicht über das Extra „%2“ gleiten, das mit Schaumstoff gehalten wird. Dieses flach kleben oder auf die Banderole setzen.</translation>
    </message>
    <message>
        <source>The extra “%1” would run through the air along the open box. Lay it once round, or make the band under it as wide as the box is long.</source>
        <translation>Das Extra „%1“ liefe entlang der offenen Schachtel durch die Luft. Es nur einmal herumlegen oder die Banderole darunter so breit machen, wie die Schachtel lang ist.</translation>
    </message>
    <message>
        <source>Layer %2 of the extra “%1” is %3 wide or high, and %4 is the most that stays on what is under it. Make it smaller, or let it overhang.</source>
        <translation>Lage %2 des Extras „%1“ ist %3 breit oder hoch, und höchstens %4 bleiben auf dem, was darunter liegt. Kleiner machen oder überstehen lassen.</translation>
    </message>
    <message>
        <source>The words “%2” on %1 lie under %3, at least in part. Move one of them, or make what covers them smaller.</source>
        <translation>Die Schrift „%2“ auf %1 liegt zumindest teilweise unter %3. Eins von beiden verschieben oder kleiner machen, was sie verdeckt.</translation>
    </message>
    <message>
        <source>A layer has no measure “%1”. “creasewright extras” lists the ones it has.</source>
        <translation>Eine Lage hat kein Maß „%1“. „creasewright extras“ zählt die vorhandenen auf.</translation>
    </message>
    <message>
        <source>The extra “%1” has no measure “%2”. “creasewright extras” lists the ones it has.</source>
        <translation>Das Extra „%1“ hat kein Maß „%2“. „creasewright extras“ zählt die vorhandenen auf.</translation>
    </message>
    <message>
        <source>The edit %1 has no measure “%2”. “creasewright edits” lists the ones it has.</source>
        <translation>Die Änderung %1 hat kein Maß „%2“. „creasewright edits“ zählt die vorhandenen auf.</translation>
    </message>
    <message>
        <source>“%2” is no choice for %1. Choose one of these: %3.</source>
        <translation>„%2“ steht bei %1 nicht zur Wahl. Eines davon wählen: %3.</translation>
    </message>
    <message>
        <source>Row %2 of “%1” has the colour “%3”, which is not known. Write one that “creasewright cards” lists, as in sage or sage/cream, or its sRGB value, such as #9AAF90.</source>
        <translation>Zeile %2 von „%1“ hat die unbekannte Farbe „%3“. Eine schreiben, die „creasewright cards“ auflistet, wie sage oder sage/cream, oder ihren sRGB-Wert, wie #9AAF90.</translation>
    </message>
    <message>
        <source>Row %2 of “%1” has the colour “%3”, which is not known. Like it are: %4. An sRGB value will do too, such as #9AAF90.</source>
        <translation>Zeile %2 von „%1“ hat die unbekannte Farbe „%3“. Ähnlich sind: %4. Ein sRGB-Wert geht auch, wie #9AAF90.</translation>
    </message>
    <message>
        <source>“%1” is no table: it holds bytes that no text has. Choose a table of comma-separated values, as a spreadsheet writes it.</source>
        <translation>„%1“ ist keine Tabelle: Die Datei enthält Bytes, die in keinem Text vorkommen. Eine Tabelle mit durch Komma getrennten Werten wählen, wie sie eine Tabellenkalkulation schreibt.</translation>
    </message>
    <message>
        <source>“%1” has a column “%2”, which is not known. Known are: %3. Rename it or take it out.</source>
        <translation>„%1“ hat eine unbekannte Spalte „%2“. Bekannt sind: %3. Die Spalte umbenennen oder herausnehmen.</translation>
    </message>
    <message>
        <source>No sheet serves “%1” in %2: the listed ones have other colours. Add a sheet of that colour, or one without a colour.</source>
        <translation>Kein Bogen passt zu „%1“ in %2: Die aufgelisteten haben andere Farben. Einen Bogen dieser Farbe hinzufügen oder einen ohne Farbe.</translation>
    </message>
    <message>
        <source>Row %2 of “%1” gives the shape “%3” two measures, %4 and %5, but it has one. Leave the height empty, or name another shape.</source>
        <translation>Zeile %2 von „%1“ nennt zur Form „%3“ zwei Maße, %4 und %5, sie hat aber nur eines. Die Höhe leer lassen oder eine andere Form nennen.</translation>
    </message>
    <message>
        <source>The picture on %1 cannot be shown: its file is broken or too large. One colour stands for it; choose the picture anew.</source>
        <translation>Das Bild auf %1 kann nicht gezeigt werden: Seine Datei ist beschädigt oder zu groß. Eine Farbe steht dafür; das Bild neu wählen.</translation>
    </message>
    <message>
        <source>The extra “%1” is %2 wide, and %3 is the most that fits. Make it %3 or less.</source>
        <translation>Das Extra „%1“ ist %2 breit, und höchstens %3 passen. Auf %3 oder weniger verkleinern.</translation>
    </message>
    <message>
        <source>The extra “%1” is %2 high, and %3 is the most that fits. Make it %3 or less.</source>
        <translation>Das Extra „%1“ ist %2 hoch, und höchstens %3 passen. Auf %3 oder weniger verkleinern.</translation>
    </message>
    <message>
        <source>The extra “%1” needs %2 across the inside of the box, and there is only %3. Make the box wider, or leave it out.</source>
        <translation>Das Extra „%1“ braucht innen quer zur Schachtel %2, und es gibt nur %3. Die Schachtel breiter machen oder es weglassen.</translation>
    </message>
    <message>
        <source>The extra “%1” needs %2 along the inside of the box, and there is only %3. Make the box longer, or leave it out.</source>
        <translation>Das Extra „%1“ braucht innen längs der Schachtel %2, und es gibt nur %3. Die Schachtel länger machen oder es weglassen.</translation>
    </message>
    <message>
        <source>The extra “%1” cannot slide over the extra “%2”. Glue the bow onto %1, or leave one of them out.</source>
        <translation>Das Extra „%1“ kann nicht über das Extra „%2“ gleiten. Die Schleife auf „%1“ kleben oder eines von beiden weglassen.</translation>
    </message>
    <message>
        <source>The middle of the extra “%1” lies beyond the edge of %2, where nothing holds it. Move it inwards.</source>
        <translation>Die Mitte des Extras „%1“ liegt jenseits des Randes von %2, wo nichts es hält. Es nach innen rücken.</translation>
    </message>
    <message>
        <source>The extra “%1” finds no room in the box, which the extra “%2” fills. Leave one of them out.</source>
        <translation>Das Extra „%1“ findet keinen Platz in der Schachtel, die das Extra „%2“ ausfüllt. Eines von beiden weglassen.</translation>
    </message>
    <message>
        <source>The extra “%1” needs upright sides and a flat front or back to lie on, and this box has none that are large enough. Choose a label, or another style.</source>
        <translation>Das Extra „%1“ braucht senkrechte Seiten und eine flache Vorder- oder Rückseite, und diese Schachtel hat keine, die groß genug sind. Ein Etikett oder ein anderes Modell wählen.</translation>
    </message>
    <message>
        <source>The extra “%1” has no ribbon to hang on, and a string of its own cannot go round this box. Put a band or a sleeve round the box too, or choose a label.</source>
        <translation>Das Extra „%1“ hat kein Band, an dem es hängt, und eine eigene Schnur kann nicht um diese Schachtel laufen. Auch eine Banderole oder eine Hülse herumlegen oder ein Etikett wählen.</translation>
    </message>
    <message>
        <source>The extra “%1” is hidden under the extra “%2”, which goes the same way round. Make it wider, or leave one of them out.</source>
        <translation>Das Extra „%1“ liegt verdeckt unter dem Extra „%2“, das denselben Weg herumläuft. Es breiter machen oder eines von beiden weglassen.</translation>
    </message>
    <message>
        <source>The extra “%1” is a full band, so that its width of %2 is not used. Set the width to 0, or let the band not be full.</source>
        <translation>Das Extra „%1“ ist eine volle Banderole, sodass seine Breite von %2 nicht gilt. Die Breite auf 0 setzen oder „Volle Banderole“ ausschalten.</translation>
    </message>
    <message>
        <source>Layer %2 of the extra “%1” is to leave %3 free all round, and %4 is the most that leaves enough of it. Make the inset smaller.</source>
        <translation>Lage %2 des Extras „%1“ soll ringsum %3 frei lassen, und höchstens %4 lassen genug von ihr übrig. Den Abstand zur Kante kleiner machen.</translation>
    </message>
    <message>
        <source>The words “%2” on %1 are %3 high where there are only %4. Write fewer lines, or make the type smaller.</source>
        <translation>Die Wörter „%2“ auf %1 sind %3 hoch, wo es nur %4 gibt. Weniger Zeilen schreiben oder die Schrift kleiner machen.</translation>
    </message>
    <message>
        <source>“%1” would have %2 bytes, more than the %3 a design may have. Use fewer or smaller pictures; nothing was written.</source>
        <translation>„%1“ hätte %2 Bytes, mehr als die %3, die ein Entwurf haben darf. Weniger oder kleinere Bilder nehmen; nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1 of the extra “%2”</source>
        <translation>%1 am Extra „%2“</translation>
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
        <translation>Breite des Tubenendes</translation>
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
    <name>pull</name>
    <message>
        <source>Only the product&apos;s own measures move this line.</source>
        <translation>Nur die Maße des Inhalts bewegen diese Linie.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>a key and the measure it chooses</comment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>The nearest to it is %1.</source>
        <translation>Am nächsten liegt %1.</translation>
    </message>
    <message>
        <source>%1 from the left, %2 from the right</source>
        <translation>%1 von links, %2 von rechts</translation>
    </message>
    <message>
        <source>%1 from below, %2 from above</source>
        <translation>%1 von unten, %2 von oben</translation>
    </message>
    <message>
        <source>all together, each a little</source>
        <translation>alle zusammen, jedes ein wenig</translation>
    </message>
</context>
<context>
    <name>samples</name>
    <message>
        <source>Lavender soap tray</source>
        <translation>Schale für Lavendelseife</translation>
    </message>
    <message>
        <source>A full band keeps the soap in its tray; it slides off at one end.</source>
        <translation>Eine breite Banderole hält die Seife in der Schale; sie lässt sich zu einer Seite abziehen.</translation>
    </message>
    <message>
        <source>House for bean seeds</source>
        <translation>Haus für Bohnensamen</translation>
    </message>
    <message>
        <source>Box for six truffles</source>
        <translation>Schachtel für sechs Pralinen</translation>
    </message>
    <message>
        <source>Line the tray with food-safe paper; the lid lifts off.</source>
        <translation>Das Unterteil mit lebensmittelechtem Papier auslegen; der Deckel ist abnehmbar.</translation>
    </message>
    <message>
        <source>Opening memory box</source>
        <translation>Aufklappende Erinnerungsschachtel</translation>
    </message>
    <message>
        <source>Carton for plum jam</source>
        <translation>Faltschachtel für Pflaumenmus</translation>
    </message>
    <message>
        <source>The bottom locks under the weight of the jar.</source>
        <translation>Der Boden verriegelt sich unter dem Gewicht des Glases.</translation>
    </message>
    <message>
        <source>Drawer for knitted baby shoes</source>
        <translation>Schiebeschachtel für gestrickte Babyschuhe</translation>
    </message>
    <message>
        <source>Pull the drawer by its ribbon; the slip lies under the shoes.</source>
        <translation>Die Schublade am Band herausziehen; das Kärtchen liegt unter den Schuhen.</translation>
    </message>
    <message>
        <source>Six-sided tea box</source>
        <translation>Sechseckige Teeschachtel</translation>
    </message>
    <message>
        <source>For a round tin, or for tea in a bag of its own.</source>
        <translation>Für eine runde Dose oder für Tee im eigenen Beutel.</translation>
    </message>
    <message>
        <source>Pillow with a tag</source>
        <translation>Kissenschachtel mit Anhänger</translation>
    </message>
    <message>
        <source>A first curved box: fold the ends over a spoon.</source>
        <translation>Eine erste gewölbte Schachtel: die Enden über einem Löffel falten.</translation>
    </message>
    <message>
        <source>Window box for a beeswax stub</source>
        <translation>Fensterschachtel für einen Bienenwachsstumpen</translation>
    </message>
    <message>
        <source>For show, unlit: keep card away from flames.</source>
        <translation>Nur zum Ansehen, nicht anzünden: Karton von Flammen fernhalten.</translation>
    </message>
    <message>
        <source>Envelope for bean seeds</source>
        <translation>Tütchen für Bohnensamen</translation>
    </message>
    <message>
        <source>The first lesson: four scores, one seam.</source>
        <translation>Die erste Stunde: vier Rilllinien, eine Klebenaht.</translation>
    </message>
    <message>
        <source>Six packets of seeds stand in it. The ribbon goes over the ridge and under the floor.</source>
        <translation>Sechs Samentütchen stehen darin. Das Band läuft über den First und unter dem Boden durch.</translation>
    </message>
    <message>
        <source>Photo mats on the inside of every wall: it opens when the lid is lifted.</source>
        <translation>Fotopapiere innen auf jeder Wand: Beim Abheben des Deckels klappt sie auf.</translation>
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
    <message>
        <source>close the bottom</source>
        <translation>den Boden schließen</translation>
    </message>
    <message>
        <source>fold in the bottom flaps</source>
        <translation>die Bodenklappen einschlagen</translation>
    </message>
    <message>
        <source>fold the bottom panel</source>
        <translation>das Bodenteil einschlagen</translation>
    </message>
    <message>
        <source>fold the sides of the bottom</source>
        <translation>die Seiten des Bodens einschlagen</translation>
    </message>
    <message>
        <source>fold the bottom tabs</source>
        <translation>die Bodenlaschen einschlagen</translation>
    </message>
    <message>
        <source>tuck in the bottom tongue</source>
        <translation>die Bodenzunge einstecken</translation>
    </message>
    <message>
        <source>fold the corner tabs</source>
        <translation>die Ecklaschen falten</translation>
    </message>
    <message>
        <source>fold the ears</source>
        <translation>die Ohren falten</translation>
    </message>
    <message>
        <source>fold and close the faces</source>
        <translation>die Flächen falten und schließen</translation>
    </message>
    <message>
        <source>fold the gap flaps</source>
        <translation>die Füllklappen falten</translation>
    </message>
    <message>
        <source>fold out both halves of the handle</source>
        <translation>beide Hälften des Griffs nach außen falten</translation>
    </message>
    <message>
        <source>double the hang tab</source>
        <translation>den Aufhänger doppelt falten</translation>
    </message>
    <message>
        <source>close the lid</source>
        <translation>den Deckel schließen</translation>
    </message>
    <message>
        <source>raise the long walls</source>
        <translation>die langen Wände aufstellen</translation>
    </message>
    <message>
        <source>close the petals one over the other</source>
        <translation>die Blütenblätter übereinanderlegen</translation>
    </message>
    <message>
        <source>roll the walls over the tabs</source>
        <translation>die Wände über die Laschen rollen</translation>
    </message>
    <message>
        <source>fold in the sides and close the roof</source>
        <translation>die Seiten einfalten und das Dach schließen</translation>
    </message>
    <message>
        <source>raise the short walls</source>
        <translation>die kurzen Wände aufstellen</translation>
    </message>
    <message>
        <source>raise the walls</source>
        <translation>die Wände aufstellen</translation>
    </message>
    <message>
        <source>wrap round and glue the seam</source>
        <translation>herumlegen und die Naht kleben</translation>
    </message>
    <message>
        <source>close the base over the tabs</source>
        <translation>den Boden über die Laschen schließen</translation>
    </message>
    <message>
        <source>fold the tuck flap</source>
        <translation>die Einstecklasche falten</translation>
    </message>
    <message>
        <source>fold the back and the seam</source>
        <translation>die Rückwand und die Naht falten</translation>
    </message>
    <message>
        <source>close the back of the roof</source>
        <translation>die hintere Dachhälfte schließen</translation>
    </message>
    <message>
        <source>raise the back and glue its tabs</source>
        <translation>die Rückwand aufstellen und ihre Laschen ankleben</translation>
    </message>
    <message>
        <source>fold the cover over</source>
        <translation>den Deckel überschlagen</translation>
    </message>
    <message>
        <source>fold the strip of the cover</source>
        <translation>den Streifen des Deckels falten</translation>
    </message>
    <message>
        <source>fold in the feet</source>
        <translation>die Füße einfalten</translation>
    </message>
    <message>
        <source>fold the fins</source>
        <translation>die Stege falten</translation>
    </message>
    <message>
        <source>close the flap</source>
        <translation>die Klappe schließen</translation>
    </message>
    <message>
        <source>glue the front of the roof</source>
        <translation>die vordere Dachhälfte ankleben</translation>
    </message>
    <message>
        <source>fold in the gable flaps</source>
        <translation>die Giebellaschen einfalten</translation>
    </message>
    <message>
        <source>raise the left wall</source>
        <translation>die linke Wand aufstellen</translation>
    </message>
    <message>
        <source>fold down the legs</source>
        <translation>die Beine nach unten falten</translation>
    </message>
    <message>
        <source>fold the flaps of the lid</source>
        <translation>die Laschen des Deckels falten</translation>
    </message>
    <message>
        <source>fold up the pocket and glue its tabs</source>
        <translation>die Tasche hochfalten und ihre Laschen ankleben</translation>
    </message>
    <message>
        <source>fold the sides of the pocket</source>
        <translation>die Seiten der Tasche falten</translation>
    </message>
    <message>
        <source>press in the curved ends</source>
        <translation>die gebogenen Enden eindrücken</translation>
    </message>
    <message>
        <source>fold the tuck at the ridge</source>
        <translation>die Einstecklasche am First falten</translation>
    </message>
    <message>
        <source>raise the right wall and glue it to the tab</source>
        <translation>die rechte Wand aufstellen und an die Lasche kleben</translation>
    </message>
    <message>
        <source>fold in the side flaps</source>
        <translation>die Seitenklappen einfalten</translation>
    </message>
    <message>
        <source>fold up the strip</source>
        <translation>den Streifen hochfalten</translation>
    </message>
    <message>
        <source>fold up the strips</source>
        <translation>die Streifen hochfalten</translation>
    </message>
    <message>
        <source>close the tube and glue the seams</source>
        <translation>den Schlauch schließen und die Nähte kleben</translation>
    </message>
    <message>
        <source>fold the back over and glue it</source>
        <translation>die Rückseite überschlagen und ankleben</translation>
    </message>
    <message>
        <source>fold the walls and the seam</source>
        <translation>die Wände und die Klebenaht falten</translation>
    </message>
    <message>
        <source>bring the last wall round and glue the seam</source>
        <translation>die letzte Wand herumführen und die Naht kleben</translation>
    </message>
    <message>
        <source>fold the strips and inner walls of the long sides</source>
        <translation>Kleberänder und Innenwände der langen Seiten falten</translation>
    </message>
    <message>
        <source>fold the strips and inner walls of the short sides</source>
        <translation>Kleberänder und Innenwände der kurzen Seiten falten</translation>
    </message>
    <message>
        <source>raise the long sides against the tabs</source>
        <translation>die langen Seiten an den Laschen aufstellen</translation>
    </message>
    <message>
        <source>roll the long sides over the tabs</source>
        <translation>die langen Seiten über die Laschen einrollen</translation>
    </message>
    <message>
        <source>roll the short sides in, their mitres on top</source>
        <translation>die kurzen Seiten einrollen, die Gehrungen obenauf</translation>
    </message>
    <message>
        <source>hook the halves of the handle together</source>
        <translation>die Hälften des Griffs ineinanderhaken</translation>
    </message>
    <message>
        <source>fold the bottom flaps up and their tabs back</source>
        <translation>die Bodenlaschen hochfalten und ihre Klebelaschen zurückfalten</translation>
    </message>
    <message>
        <source>glue bottom and seam flat</source>
        <translation>Boden und Klebenaht flach liegend kleben</translation>
    </message>
    <message>
        <source>open the box</source>
        <translation>die Schachtel öffnen</translation>
    </message>
    <message>
        <source>fold flat and glue the seam</source>
        <translation>flach falten und die Klebenaht kleben</translation>
    </message>
    <message>
        <source>open the tube</source>
        <translation>die Hülle öffnen</translation>
    </message>
    <message>
        <source>fold the sides in and the bag flat</source>
        <translation>die Seiten eindrücken und die Tüte flach falten</translation>
    </message>
    <message>
        <source>open the bag</source>
        <translation>die Tüte öffnen</translation>
    </message>
    <message>
        <source>Bring the narrow part round.</source>
        <translation>Den schmalen Teil herumlegen.</translation>
    </message>
    <message>
        <source>Bring the wide part round over it and press the seam.</source>
        <translation>Den breiten Teil darüberlegen und die Klebenaht andrücken.</translation>
    </message>
    <message>
        <source>Fold the bottom flaps up onto the inside, and their glue tabs back again.</source>
        <translation>Die Bodenlaschen nach innen hochfalten, ihre Klebelaschen wieder zurück.</translation>
    </message>
    <message>
        <source>Leave the box flat. Press the bottom tabs and the seam down.</source>
        <translation>Die Schachtel flach liegen lassen. Bodenlaschen und Klebenaht andrücken.</translation>
    </message>
    <message>
        <source>Fold all fins up.</source>
        <translation>Alle Stege hochfalten.</translation>
    </message>
    <message>
        <source>Bring the flap down over the back.</source>
        <translation>Die Klappe über die Rückseite legen.</translation>
    </message>
    <message>
        <source>Fold both sides in.</source>
        <translation>Beide Seiten nach innen falten.</translation>
    </message>
    <message>
        <source>Fold up the narrow strips: they give the envelope its depth.</source>
        <translation>Die schmalen Streifen hochfalten; sie geben dem Umschlag seine Tiefe.</translation>
    </message>
    <message>
        <source>Fold the back over the sides and press.</source>
        <translation>Die Rückseite über die Seiten falten und andrücken.</translation>
    </message>
    <message>
        <source>Roll both long sides inwards: strip, inner wall, frame.</source>
        <translation>Beide langen Seiten nach innen rollen: Streifen, Innenwand, Rahmen.</translation>
    </message>
    <message>
        <source>Stand both long sides up and press.</source>
        <translation>Beide langen Seiten aufstellen und andrücken.</translation>
    </message>
    <message>
        <source>Fold all four corner tabs inwards.</source>
        <translation>Alle vier Ecklaschen nach innen falten.</translation>
    </message>
    <message>
        <source>Raise both long sides against the tabs and press.</source>
        <translation>Beide langen Seiten gegen die Laschen aufstellen und andrücken.</translation>
    </message>
    <message>
        <source>Roll both long sides over the tabs and press.</source>
        <translation>Beide langen Seiten über die Laschen rollen und andrücken.</translation>
    </message>
    <message>
        <source>Roll both short sides in, so that their mitres lie on the long frames, and press.</source>
        <translation>Beide kurzen Seiten einrollen, sodass ihre Gehrungen auf den langen Rahmen liegen, und andrücken.</translation>
    </message>
    <message>
        <source>Fold strip and inner wall of both long sides to a right angle.</source>
        <translation>Streifen und Innenwand beider langen Seiten rechtwinklig falten.</translation>
    </message>
    <message>
        <source>Fold strip and inner wall of both short sides to a right angle.</source>
        <translation>Streifen und Innenwand beider kurzen Seiten rechtwinklig falten.</translation>
    </message>
    <message>
        <source>Roll both short sides inwards: strip, inner wall, frame.</source>
        <translation>Beide kurzen Seiten nach innen rollen: Streifen, Innenwand, Rahmen.</translation>
    </message>
    <message>
        <source>Stand both short sides up.</source>
        <translation>Beide kurzen Seiten aufstellen.</translation>
    </message>
    <message>
        <source>Fold both halves of the handle upright.</source>
        <translation>Beide Hälften des Griffs senkrecht falten.</translation>
    </message>
    <message>
        <source>Fold the hang tab double and press.</source>
        <translation>Den Aufhänger doppelt legen und andrücken.</translation>
    </message>
    <message>
        <source>Fold in the ears at the sides of the lid.</source>
        <translation>Die Ohren an den Seiten des Deckels nach innen falten.</translation>
    </message>
    <message>
        <source>Fold the tuck flap inwards.</source>
        <translation>Die Einstecklasche nach innen falten.</translation>
    </message>
    <message>
        <source>Stand the fins up against one another.</source>
        <translation>Die Stege aneinander aufstellen.</translation>
    </message>
    <message>
        <source>Bring the walls round and press the seam.</source>
        <translation>Die Wände herumlegen und die Klebenaht andrücken.</translation>
    </message>
    <message>
        <source>Fold in the bottom flaps at the sides.</source>
        <translation>Die seitlichen Bodenlaschen nach innen falten.</translation>
    </message>
    <message>
        <source>Stand both long walls up.</source>
        <translation>Beide langen Wände aufstellen.</translation>
    </message>
    <message>
        <source>Stand the walls up.</source>
        <translation>Die Wände aufstellen.</translation>
    </message>
    <message>
        <source>Bring the last panel round and press the seam.</source>
        <translation>Die letzte Fläche herumlegen und die Klebenaht andrücken.</translation>
    </message>
    <message>
        <source>Fold the back over, and the seam.</source>
        <translation>Die Rückseite und die Klebenaht umfalten.</translation>
    </message>
    <message>
        <source>Leave the card flat, bring its ends together and press the seam.</source>
        <translation>Den Karton flach lassen, die Enden zusammenlegen und die Klebenaht andrücken.</translation>
    </message>
    <message>
        <source>Push both sides of the roof inwards while front and back come together.</source>
        <translation>Beide Seiten des Dachs nach innen drücken, während Vorder- und Rückseite zusammenkommen.</translation>
    </message>
    <message>
        <source>Fold the cover over the pocket.</source>
        <translation>Die Klappe über die Tasche falten.</translation>
    </message>
    <message>
        <source>Fold up the strip of the cover.</source>
        <translation>Den Streifen der Klappe hochfalten.</translation>
    </message>
    <message>
        <source>Fold the pocket up and press its tabs.</source>
        <translation>Die Tasche hochfalten und ihre Laschen andrücken.</translation>
    </message>
    <message>
        <source>Fold the sides of the pocket inwards.</source>
        <translation>Die Seiten der Tasche nach innen falten.</translation>
    </message>
    <message>
        <source>Fold up the strip: it gives the pocket its depth.</source>
        <translation>Den Streifen hochfalten; er gibt der Tasche ihre Tiefe.</translation>
    </message>
    <message>
        <source>Fold all bottom tabs inwards.</source>
        <translation>Alle Bodenlaschen nach innen falten.</translation>
    </message>
    <message>
        <source>Bring the base down onto the tabs and press.</source>
        <translation>Den Boden auf die Laschen legen und andrücken.</translation>
    </message>
    <message>
        <source>Fold the walls round, and the seam.</source>
        <translation>Die Wände herumfalten, auch die Klebenaht.</translation>
    </message>
    <message>
        <source>Bring the last wall round and press the seam.</source>
        <translation>Die letzte Wand herumlegen und die Klebenaht andrücken.</translation>
    </message>
    <message>
        <source>Fold both bottom dust flaps in.</source>
        <translation>Beide unteren Staublaschen nach innen falten.</translation>
    </message>
    <message>
        <source>Fold the tuck flap of the bottom inwards.</source>
        <translation>Die Einstecklasche des Bodens nach innen falten.</translation>
    </message>
    <message>
        <source>Fold both top dust flaps in.</source>
        <translation>Beide oberen Staublaschen nach innen falten.</translation>
    </message>
    <message>
        <source>Fold the tuck flap of the lid inwards.</source>
        <translation>Die Einstecklasche des Deckels nach innen falten.</translation>
    </message>
    <message>
        <source>Lay the back of the roof on the gables.</source>
        <translation>Die hintere Dachseite auf die Giebel legen.</translation>
    </message>
    <message>
        <source>Lay the front of the roof down and press.</source>
        <translation>Die vordere Dachseite auflegen und andrücken.</translation>
    </message>
    <message>
        <source>Fold both gable flaps in.</source>
        <translation>Beide Giebellaschen nach innen falten.</translation>
    </message>
    <message>
        <source>Fold the tuck at the ridge inwards.</source>
        <translation>Die Einstecklasche am First nach innen falten.</translation>
    </message>
    <message>
        <source>Fold the feet inwards.</source>
        <translation>Die Füße nach innen falten.</translation>
    </message>
    <message>
        <source>Fold the legs down.</source>
        <translation>Die Beine nach unten falten.</translation>
    </message>
    <message>
        <source>Fold all faces round, one after the other, and press their tabs.</source>
        <translation>Alle Flächen der Reihe nach herumfalten und ihre Laschen andrücken.</translation>
    </message>
    <message>
        <source>Fold the flaps between the walls inwards.</source>
        <translation>Die Laschen zwischen den Wänden nach innen falten.</translation>
    </message>
    <message>
        <source>Roll the walls inwards over the tabs.</source>
        <translation>Die Wände über den Laschen nach innen rollen.</translation>
    </message>
    <message>
        <source>Fold in the panel of the bottom with the slot.</source>
        <translation>Die Bodenfläche mit dem Schlitz nach innen falten.</translation>
    </message>
    <message>
        <source>Fold both sides of the bottom in over it.</source>
        <translation>Beide Bodenseiten darüber nach innen falten.</translation>
    </message>
    <message>
        <source>Fold the last panel over and push its tongue into the slot.</source>
        <translation>Die letzte Fläche darüberfalten und die Zunge in den Schlitz stecken.</translation>
    </message>
    <message>
        <source>Stand the back up and press its tabs.</source>
        <translation>Die Rückwand aufstellen und ihre Laschen andrücken.</translation>
    </message>
    <message>
        <source>Stand the left wall up.</source>
        <translation>Die linke Wand aufstellen.</translation>
    </message>
    <message>
        <source>Fold the flaps of the lid inwards.</source>
        <translation>Die Laschen des Deckels nach innen falten.</translation>
    </message>
    <message>
        <source>Stand the right wall up and press it onto the tab.</source>
        <translation>Die rechte Wand aufstellen und an die Lasche drücken.</translation>
    </message>
    <message>
        <source>Bring the halves of the handle together and hook them.</source>
        <translation>Die Hälften des Griffs zusammenführen und einhaken.</translation>
    </message>
    <message>
        <source>Stand both short walls up.</source>
        <translation>Beide kurzen Wände aufstellen.</translation>
    </message>
    <message>
        <source>fold the lid&apos;s tabs</source>
        <translation>die Laschen des Deckels falten</translation>
    </message>
    <message>
        <source>Fold the tabs of the lid inwards.</source>
        <translation>Die Laschen des Deckels nach innen falten.</translation>
    </message>
    <message>
        <source>fold and glue the lid&apos;s walls</source>
        <translation>die Wände des Deckels falten und kleben</translation>
    </message>
    <message>
        <source>Fold the walls of the lid down and press.</source>
        <translation>Die Wände des Deckels nach unten falten und andrücken.</translation>
    </message>
    <message>
        <source>Close the bottom and tuck its flap in.</source>
        <translation>Den Boden schließen und die Lasche einstecken.</translation>
    </message>
    <message>
        <source>Close the lid and tuck its flap in.</source>
        <translation>Den Deckel schließen und die Lasche einstecken.</translation>
    </message>
    <message>
        <source>fold what was added</source>
        <translation>Hinzugefügtes falten</translation>
    </message>
    <message>
        <source>Fold what was added by hand as the figure shows.</source>
        <translation>Was von Hand hinzugefügt ist, falten, wie das Bild zeigt.</translation>
    </message>
    <message>
        <source>fold what was added last</source>
        <translation>zuletzt Hinzugefügtes falten</translation>
    </message>
    <message>
        <source>Last, fold what was added by hand as the figure shows.</source>
        <translation>Zuletzt falten, was von Hand hinzugefügt ist, wie das Bild zeigt.</translation>
    </message>
    <message>
        <source>wrap and glue</source>
        <translation>herumlegen und kleben</translation>
    </message>
    <message>
        <source>Close the bottom.</source>
        <translation>Den Boden schließen.</translation>
    </message>
    <message>
        <source>Close the lid.</source>
        <translation>Den Deckel schließen.</translation>
    </message>
    <message>
        <source>Fold the tabs.</source>
        <translation>Die Laschen falten.</translation>
    </message>
</context>
<context>
    <name>stock</name>
    <message>
        <source>Own code</source>
        <translation>Eigene Nummer</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Card</source>
        <translation>Karton</translation>
    </message>
    <message>
        <source>g/m²</source>
        <translation>g/m²</translation>
    </message>
    <message>
        <source>Sold as (65 lb cover)</source>
        <translation>Verkauft als (65 lb cover)</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Good faces (1, 2)</source>
        <translation>Schöne Seiten (1, 2)</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
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
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Pieces in a pack</source>
        <translation>Stück je Packung</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Grain (long, short)</source>
        <translation>Laufrichtung (long, short)</translation>
    </message>
    <message>
        <source>Pattern upright (1)</source>
        <translation>Muster aufrecht (1)</translation>
    </message>
    <message>
        <source>At hand</source>
        <translation>Vorhanden</translation>
    </message>
    <message>
        <source>No more (1)</source>
        <translation>Nicht nachzukaufen (1)</translation>
    </message>
    <message>
        <source>65 lb cover</source>
        <translation>Karton 65 lb (cover)</translation>
    </message>
    <message>
        <source>80 lb cover</source>
        <translation>Karton 80 lb (cover)</translation>
    </message>
    <message>
        <source>100 lb cover</source>
        <translation>Karton 100 lb (cover)</translation>
    </message>
    <message>
        <source>110 lb cover</source>
        <translation>Karton 110 lb (cover)</translation>
    </message>
    <message>
        <source>90 lb index</source>
        <translation>Karteikarton 90 lb</translation>
    </message>
    <message>
        <source>110 lb index</source>
        <translation>Karteikarton 110 lb</translation>
    </message>
    <message>
        <source>140 lb index</source>
        <translation>Karteikarton 140 lb</translation>
    </message>
    <message>
        <source>170 lb index</source>
        <translation>Karteikarton 170 lb</translation>
    </message>
    <message>
        <source>150 lb folder stock</source>
        <translation>Mappenkarton 150 lb</translation>
    </message>
    <message>
        <source>10 pt coated cover</source>
        <translation>Gestrichener Karton 10 pt</translation>
    </message>
    <message>
        <source>12 pt coated cover</source>
        <translation>Gestrichener Karton 12 pt</translation>
    </message>
    <message>
        <source>220 g/m² card</source>
        <translation>Karton 220 g/m²</translation>
    </message>
    <message>
        <source>300 g/m² card</source>
        <translation>Karton 300 g/m²</translation>
    </message>
    <message>
        <source>1.5 mm grey board</source>
        <translation>Graupappe 1,5 mm</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>US Letter</translation>
    </message>
    <message>
        <source>Patterned paper, 12 x 12 in</source>
        <translation>Musterpapier, 12 x 12 in</translation>
    </message>
    <message>
        <source>Patterned paper, A4</source>
        <translation>Musterpapier, A4</translation>
    </message>
    <message>
        <source>Double-sided tape 1/8 in</source>
        <translation>Doppelseitiges Klebeband 1/8 in</translation>
    </message>
    <message>
        <source>Double-sided tape 1/4 in</source>
        <translation>Doppelseitiges Klebeband 1/4 in</translation>
    </message>
    <message>
        <source>Double-sided tape 3/8 in</source>
        <translation>Doppelseitiges Klebeband 3/8 in</translation>
    </message>
    <message>
        <source>Double-sided tape 1/2 in</source>
        <translation>Doppelseitiges Klebeband 1/2 in</translation>
    </message>
    <message>
        <source>Double-sided tape 3 mm</source>
        <translation>Doppelseitiges Klebeband 3 mm</translation>
    </message>
    <message>
        <source>Double-sided tape 6 mm</source>
        <translation>Doppelseitiges Klebeband 6 mm</translation>
    </message>
    <message>
        <source>Double-sided tape 9 mm</source>
        <translation>Doppelseitiges Klebeband 9 mm</translation>
    </message>
    <message>
        <source>Double-sided tape 12 mm</source>
        <translation>Doppelseitiges Klebeband 12 mm</translation>
    </message>
    <message>
        <source>Ribbon 15 mm</source>
        <translation>Geschenkband 15 mm</translation>
    </message>
    <message>
        <source>Ribbon 10 mm</source>
        <translation>Geschenkband 10 mm</translation>
    </message>
    <message>
        <source>Adhesive dots</source>
        <translation>Klebepunkte</translation>
    </message>
    <message>
        <source>Clear film</source>
        <translation>Klarsichtfolie</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>size and shape of a punch</comment>
        <translation>%2 %1</translation>
    </message>
    <message>
        <source>Colour (sage/cream)</source>
        <translation>Farbe (sage/cream)</translation>
    </message>
</context>
<context>
    <name>strip</name>
    <message>
        <source>Stage %1 of %2: %3</source>
        <translation>Faltphase %1 von %2: %3</translation>
    </message>
    <message>
        <source>%1, stage %2 of %3: %4</source>
        <translation>%1, Faltphase %2 von %3: %4</translation>
    </message>
    <message>
        <source>Flat</source>
        <translation>Flach</translation>
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
        <translation>Breite des Randes. Mindestens der kleinste Kleberand.</translation>
    </message>
    <message>
        <source>Glue strip</source>
        <translation>Kleberand</translation>
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
        <translation>Faltschachtel, gerade</translation>
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
        <translation>Steckt hinter der Vorderwand, mindestens 3 mm kürzer als die Breite.</translation>
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
        <translation>Griffmulde</translation>
    </message>
    <message>
        <source>A half-round notch in the front for opening the lids.</source>
        <translation>Eine halbrunde Griffmulde vorn zum Öffnen.</translation>
    </message>
    <message>
        <source>Tubes, bottles, lip balm, soap, anything upright.</source>
        <translation>Tuben, Flaschen, Lippenpflege, Seife, alles Stehende.</translation>
    </message>
    <message>
        <source>Reverse tuck box</source>
        <translation>Faltschachtel, gegenläufig</translation>
    </message>
    <message>
        <source>Four walls with a glued seam; the top tucks in at the front, the bottom behind.</source>
        <translation>Vier Wände mit Klebenaht; oben wird vorn, unten hinten eingesteckt.</translation>
    </message>
    <message>
        <source>Light things that stand: tubes, lip balm, tea-lights.</source>
        <translation>Leichtes, das steht: Tuben, Lippenpflege, Teelichter.</translation>
    </message>
    <message>
        <source>Half-round notches for opening the lids, one in the front and one in the back.</source>
        <translation>Halbrunde Griffmulden zum Öffnen, eine vorn und eine hinten.</translation>
    </message>
    <message>
        <source>Hang-tab tuck box</source>
        <translation>Faltschachtel mit Aufhänger</translation>
    </message>
    <message>
        <source>A tuck box whose back runs up into a doubled tab with a hole for a peg.</source>
        <translation>Die Rückwand läuft oben in einen doppelten Aufhänger mit Loch aus.</translation>
    </message>
    <message>
        <source>Light things that hang on a peg: lip balm, soap, pens.</source>
        <translation>Leichtes zum Aufhängen: Lippenpflege, Seife, Stifte.</translation>
    </message>
    <message>
        <source>Hang tab</source>
        <translation>Aufhänger</translation>
    </message>
    <message>
        <source>How far the doubled tab stands above the box.</source>
        <translation>So weit steht der doppelte Aufhänger über die Schachtel.</translation>
    </message>
    <message>
        <source>Hole</source>
        <translation>Loch</translation>
    </message>
    <message>
        <source>Across the hole for a peg; card must stay on all sides.</source>
        <translation>Durchmesser des Lochs; ringsum muss Karton bleiben.</translation>
    </message>
    <message>
        <source>Snap-lock bottom box</source>
        <translation>Schachtel mit Steckboden</translation>
    </message>
    <message>
        <source>A tuck box whose bottom folds together by hand and locks without glue.</source>
        <translation>Der Boden wird von Hand ineinandergesteckt und hält ohne Klebstoff.</translation>
    </message>
    <message>
        <source>Jars, mugs, bottles, candles, heavier things.</source>
        <translation>Gläser, Becher, Flaschen, Kerzen, Schwereres.</translation>
    </message>
    <message>
        <source>Bottom overlap</source>
        <translation>Überlappung am Boden</translation>
    </message>
    <message>
        <source>How far the tongue goes in over the back&apos;s bottom, at most half the width.</source>
        <translation>So weit reicht die Zunge über den hinteren Boden, höchstens die halbe Breite.</translation>
    </message>
    <message>
        <source>Crash-lock bottom box</source>
        <translation>Schachtel mit Automatikboden</translation>
    </message>
    <message>
        <source>A tuck box whose glued bottom folds flat with it and opens by itself.</source>
        <translation>Der geklebte Boden liegt flach mit und stellt sich von selbst auf.</translation>
    </message>
    <message>
        <source>Jars, mugs, sets, boxes kept flat until needed.</source>
        <translation>Gläser, Becher, Sets; flach gelagert bis zum Gebrauch.</translation>
    </message>
    <message>
        <source>The longer side of the opening. The bottom&apos;s glue tabs must fit.</source>
        <translation>Die längere Seite der Öffnung. Die Klebelaschen des Bodens müssen passen.</translation>
    </message>
    <message>
        <source>The shorter side of the opening. Two glue tabs of the bottom must fit.</source>
        <translation>Die kürzere Seite der Öffnung. Zwei Klebelaschen des Bodens müssen passen.</translation>
    </message>
    <message>
        <source>Two-piece box</source>
        <translation>Stülpschachtel</translation>
    </message>
    <message>
        <source>A tray with a lift-off lid as deep as you like.</source>
        <translation>Eine Schale mit abnehmbarem Deckel in beliebiger Tiefe.</translation>
    </message>
    <message>
        <source>Soap, biscuits, jewellery, cards, anything flat.</source>
        <translation>Seife, Kekse, Schmuck, Karten, alles Flache.</translation>
    </message>
    <message>
        <source>Of the tray. Two corner tabs must fit side by side.</source>
        <translation>Der Schale. Zwei Ecklaschen müssen nebeneinander passen.</translation>
    </message>
    <message>
        <source>Of the tray.</source>
        <translation>Der Schale.</translation>
    </message>
    <message>
        <source>Of the tray. At least the smallest tab.</source>
        <translation>Der Schale. Mindestens die kleinste Lasche.</translation>
    </message>
    <message>
        <source>Lid longer by</source>
        <translation>Deckel länger um</translation>
    </message>
    <message>
        <source>Scored length of lid against tray: two cards and the ease between them.</source>
        <translation>So viel länger ist der Deckel von Rilllinie zu Rilllinie: zwei Kartondicken und die Luft.</translation>
    </message>
    <message>
        <source>Lid wider by</source>
        <translation>Deckel breiter um</translation>
    </message>
    <message>
        <source>Scored width of lid against tray: two cards, the lid&apos;s two tabs and the ease.</source>
        <translation>So viel breiter ist der Deckel von Rilllinie zu Rilllinie: zwei Kartondicken, die zwei Laschen des Deckels und die Luft.</translation>
    </message>
    <message>
        <source>Lid depth</source>
        <translation>Deckeltiefe</translation>
    </message>
    <message>
        <source>As deep as you like, at most as deep as the tray.</source>
        <translation>Beliebig tief, höchstens so tief wie die Schale.</translation>
    </message>
    <message>
        <source>Corner tab</source>
        <translation>Ecklasche</translation>
    </message>
    <message>
        <source>Glued inside the long walls; the two on one wall must not meet.</source>
        <translation>Innen an die langen Wände geklebt; zwei an einer Wand dürfen sich nicht treffen.</translation>
    </message>
    <message>
        <source>Thumb notches</source>
        <translation>Griffmulden</translation>
    </message>
    <message>
        <source>Half-round notches in the lid&apos;s long walls.</source>
        <translation>Halbrunde Griffmulden in den langen Deckelwänden.</translation>
    </message>
    <message>
        <source>Hinged-lid box</source>
        <translation>Klappdeckelschachtel</translation>
    </message>
    <message>
        <source>A box whose lid hinges on the back; side ears and a tuck flap keep it shut.</source>
        <translation>Der Deckel hängt an der Rückwand; Seitenohren und Einstecklasche halten ihn zu.</translation>
    </message>
    <message>
        <source>Biscuits, tea bags, soap, sets, keepsakes.</source>
        <translation>Kekse, Teebeutel, Seife, Sets, Andenken.</translation>
    </message>
    <message>
        <source>Along the hinge. Two corner tabs must fit side by side.</source>
        <translation>Entlang des Scharniers. Zwei Ecklaschen müssen nebeneinander passen.</translation>
    </message>
    <message>
        <source>From hinge to front. The ears and the tuck flap must fit.</source>
        <translation>Vom Scharnier nach vorn. Ohren und Einstecklasche müssen passen.</translation>
    </message>
    <message>
        <source>From base to lid. At least the smallest tab.</source>
        <translation>Vom Boden zum Deckel. Mindestens die kleinste Lasche.</translation>
    </message>
    <message>
        <source>Goes in behind the front; no deeper than the box.</source>
        <translation>Greift hinter die Vorderwand; nicht tiefer als die Schachtel.</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>Ohren</translation>
    </message>
    <message>
        <source>Go in beside the side walls; at most three quarters of the width.</source>
        <translation>Greifen neben die Seitenwände; höchstens drei Viertel der Breite.</translation>
    </message>
    <message>
        <source>Glued inside front and back; as deep as the box at most, so that the ears are free.</source>
        <translation>Innen an Vorder- und Rückwand geklebt; höchstens so tief wie die Schachtel, damit die Ohren frei bleiben.</translation>
    </message>
    <message>
        <source>Drawer box</source>
        <translation>Schiebeschachtel</translation>
    </message>
    <message>
        <source>A tray that slides in a sleeve, with a hole for a ribbon to pull it by.</source>
        <translation>Eine Schale gleitet in einer Hülse; durch ein Loch kommt das Zugband.</translation>
    </message>
    <message>
        <source>Truffles, jewellery, matches, tea bags, small sets.</source>
        <translation>Pralinen, Schmuck, Streichhölzer, Teebeutel, kleine Sets.</translation>
    </message>
    <message>
        <source>Of the tray, along the sleeve. Two corner tabs must fit.</source>
        <translation>Der Schale, entlang der Hülse. Zwei Ecklaschen müssen passen.</translation>
    </message>
    <message>
        <source>Of the tray. The sleeve&apos;s seam must fit, with 3 mm to spare.</source>
        <translation>Der Schale. Die Naht der Hülse muss mit 3 mm Luft passen.</translation>
    </message>
    <message>
        <source>Sleeve wider by</source>
        <translation>Hülse breiter um</translation>
    </message>
    <message>
        <source>Scored width of sleeve against tray: two cards and the ease between them.</source>
        <translation>So viel breiter ist die Hülse von Rilllinie zu Rilllinie: zwei Kartondicken und die Luft.</translation>
    </message>
    <message>
        <source>Sleeve deeper by</source>
        <translation>Hülse tiefer um</translation>
    </message>
    <message>
        <source>Scored depth of sleeve against tray: two cards, the seam and a little to slide.</source>
        <translation>So viel tiefer ist die Hülse von Rilllinie zu Rilllinie: zwei Kartondicken, die Naht und etwas Luft zum Schieben.</translation>
    </message>
    <message>
        <source>Glued inside the sleeve&apos;s front, narrower than the tray.</source>
        <translation>Innen an die Vorderseite der Hülse geklebt, schmaler als die Schale.</translation>
    </message>
    <message>
        <source>Ribbon hole</source>
        <translation>Bandloch</translation>
    </message>
    <message>
        <source>A hole in the tray&apos;s end for a ribbon pull.</source>
        <translation>Ein Loch in der Stirnwand für ein Zugband.</translation>
    </message>
    <message>
        <source>Across the ribbon hole, at most half the depth.</source>
        <translation>Durchmesser des Bandlochs, höchstens die halbe Tiefe.</translation>
    </message>
    <message>
        <source>Rolled-wall tray</source>
        <translation>Schale mit Doppelwand</translation>
    </message>
    <message>
        <source>A tray without glue: double walls hold the corners and lock into the base.</source>
        <translation>Eine Schale ohne Klebstoff: Doppelwände halten die Ecken und rasten im Boden ein.</translation>
    </message>
    <message>
        <source>Biscuits, soap, tea-lights, small sets to see and lift out.</source>
        <translation>Kekse, Seife, Teelichter, kleine Sets zum Ansehen und Herausheben.</translation>
    </message>
    <message>
        <source>Between the single walls. Two corner tabs must fit side by side.</source>
        <translation>Zwischen den einfachen Wänden. Zwei Ecklaschen müssen nebeneinander passen.</translation>
    </message>
    <message>
        <source>Between the double walls. Both feet and their tongues must fit.</source>
        <translation>Zwischen den Doppelwänden. Beide Füße mit Zungen müssen passen.</translation>
    </message>
    <message>
        <source>From the base to the rim. At least the smallest tab.</source>
        <translation>Vom Boden zum Rand. Mindestens die kleinste Lasche.</translation>
    </message>
    <message>
        <source>Rim</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>Thickness of the double walls; a tab and two cards go in.</source>
        <translation>Dicke der Doppelwände; eine Lasche und zwei Kartondicken gehen hinein.</translation>
    </message>
    <message>
        <source>Foot</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>Lies on the base; the feet and tongues of both sides must not meet.</source>
        <translation>Liegt auf dem Boden; Füße und Zungen beider Seiten dürfen sich nicht treffen.</translation>
    </message>
    <message>
        <source>Open sleeve</source>
        <translation>Offene Hülse</translation>
    </message>
    <message>
        <source>A flat tube open at both ends, with notches for pushing the content out.</source>
        <translation>Eine flache Hülse, an beiden Enden offen, mit Griffmulden zum Herausschieben.</translation>
    </message>
    <message>
        <source>Chocolate bars, soap, books, trays and finished boxes.</source>
        <translation>Schokoladentafeln, Seife, Bücher, Schalen und fertige Schachteln.</translation>
    </message>
    <message>
        <source>Along the tube.</source>
        <translation>Entlang der Hülse.</translation>
    </message>
    <message>
        <source>Of the front. At least the glue seam and 3 mm.</source>
        <translation>Der Vorderseite. Mindestens die Klebenaht und 3 mm.</translation>
    </message>
    <message>
        <source>Of the sides. Narrower ones cannot be scored by hand.</source>
        <translation>Der Seiten. Schmalere lassen sich von Hand nicht rillen.</translation>
    </message>
    <message>
        <source>Glued inside the front, 3 mm narrower than it or less.</source>
        <translation>Innen an die Vorderseite geklebt, mindestens 3 mm schmaler als sie.</translation>
    </message>
    <message>
        <source>Half-round notches in front and back at one end.</source>
        <translation>Halbrunde Griffmulden vorn und hinten an einem Ende.</translation>
    </message>
    <message>
        <source>Prism box with lid</source>
        <translation>Mehreckschachtel mit Deckel</translation>
    </message>
    <message>
        <source>A box of three to twelve sides with a lift-off lid.</source>
        <translation>Eine Schachtel mit drei bis zwölf Seiten und abnehmbarem Deckel.</translation>
    </message>
    <message>
        <source>Jars, candles, balls, sweets, anything round.</source>
        <translation>Gläser, Kerzen, Kugeln, Süßes, alles Runde.</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>From a triangle to twelve sides.</source>
        <translation>Vom Dreieck bis zum Zwölfeck.</translation>
    </message>
    <message>
        <source>Across the flats</source>
        <translation>Weite von Seite zu Seite</translation>
    </message>
    <message>
        <source>From side to opposite side, or twice the way from the middle to a side. The base&apos;s tabs must fit.</source>
        <translation>Von Seite zu Gegenseite oder der doppelte Weg von der Mitte zu einer Seite. Die Bodenlaschen müssen passen.</translation>
    </message>
    <message>
        <source>From the base to the rim. The smallest glue seam must fit.</source>
        <translation>Vom Boden zum Rand. Die kleinste Klebenaht muss passen.</translation>
    </message>
    <message>
        <source>Glued inside the first wall: narrower than it, and less than half as deep as it is high.</source>
        <translation>Innen an die erste Wand geklebt: schmaler als sie und weniger als halb so tief, wie sie hoch ist.</translation>
    </message>
    <message>
        <source>Across the flats, lid against box: two cards on each side and the ease.</source>
        <translation>So viel weiter ist der Deckel von Seite zu Seite: zwei Kartondicken je Seite und die Luft.</translation>
    </message>
    <message>
        <source>The tabs between its walls must fit.</source>
        <translation>Die Laschen zwischen seinen Wänden müssen passen.</translation>
    </message>
    <message>
        <source>Petal prism box</source>
        <translation>Blütenschachtel</translation>
    </message>
    <message>
        <source>A box of three to twelve sides; its petals overlap in a ring and hold each other.</source>
        <translation>Eine Schachtel mit drei bis zwölf Seiten; die Blütenblätter überlappen im Kreis und halten sich.</translation>
    </message>
    <message>
        <source>Jars, balls, sweets, soap, anything round.</source>
        <translation>Gläser, Kugeln, Süßes, Seife, alles Runde.</translation>
    </message>
    <message>
        <source>From the base to the petals. The smallest glue seam must fit.</source>
        <translation>Vom Boden zu den Blütenblättern. Die kleinste Klebenaht muss passen.</translation>
    </message>
    <message>
        <source>Tapered cup</source>
        <translation>Konischer Becher</translation>
    </message>
    <message>
        <source>A cup of three to twelve sides, wider at the top, open.</source>
        <translation>Ein Becher mit drei bis zwölf Seiten, oben weiter, offen.</translation>
    </message>
    <message>
        <source>Sweets, seeds, small plants, pencils.</source>
        <translation>Süßes, Samen, kleine Pflanzen, Stifte.</translation>
    </message>
    <message>
        <source>Across the base</source>
        <translation>Bodenweite</translation>
    </message>
    <message>
        <source>From side to opposite side of the base, or twice the way from its middle. Its tabs must fit.</source>
        <translation>Von Seite zu Gegenseite des Bodens oder der doppelte Weg von der Mitte zu einer Seite. Seine Laschen müssen passen.</translation>
    </message>
    <message>
        <source>Wider at the top by</source>
        <translation>Oben weiter um</translation>
    </message>
    <message>
        <source>At most two thirds of the height, or the base&apos;s tabs would not fit.</source>
        <translation>Höchstens zwei Drittel der Höhe, sonst passen die Bodenlaschen nicht.</translation>
    </message>
    <message>
        <source>Upright, from the base to the rim. The smallest glue seam must fit.</source>
        <translation>Senkrecht vom Boden zum Rand. Die kleinste Klebenaht muss passen.</translation>
    </message>
    <message>
        <source>Pyramid box</source>
        <translation>Pyramide</translation>
    </message>
    <message>
        <source>Walls lean together over the product and are tied at the tip.</source>
        <translation>Die Wände neigen sich über dem Inhalt zusammen und werden an der Spitze gebunden.</translation>
    </message>
    <message>
        <source>Truffles, favours, small surprises; the ribbon is the lock.</source>
        <translation>Pralinen, Gastgeschenke, kleine Überraschungen; das Schleifenband ist der Verschluss.</translation>
    </message>
    <message>
        <source>From side to opposite side, or twice the way from the middle to a side. Every wall is at least 24 mm wide.</source>
        <translation>Von Seite zu Gegenseite oder der doppelte Weg von der Mitte zu einer Seite. Jede Wand ist mindestens 24 mm breit.</translation>
    </message>
    <message>
        <source>From the base to the tip; at least a quarter of the base, so that the walls stand.</source>
        <translation>Vom Boden zur Spitze; mindestens ein Viertel der Bodenweite, damit die Wände stehen.</translation>
    </message>
    <message>
        <source>Gable box</source>
        <translation>Giebelschachtel</translation>
    </message>
    <message>
        <source>A box to carry: the sides fold in under a roof with a handle.</source>
        <translation>Zum Tragen: Die Seiten falten sich unter ein Dach mit Griff.</translation>
    </message>
    <message>
        <source>Biscuits, sets, picnic boxes, toys.</source>
        <translation>Kekse, Sets, Picknick, Spielzeug.</translation>
    </message>
    <message>
        <source>Of front and back; at least the width, or the corners would meet.</source>
        <translation>Von Vorder- und Rückwand; mindestens die Breite, sonst treffen sich die Ecken.</translation>
    </message>
    <message>
        <source>Of the sides that fold in.</source>
        <translation>Der Seiten, die sich einfalten.</translation>
    </message>
    <message>
        <source>From the bottom to the roof. The bottom&apos;s glue tab must fit.</source>
        <translation>Vom Boden zum Dach. Die Klebelasche des Bodens muss passen.</translation>
    </message>
    <message>
        <source>Roof</source>
        <translation>Dach</translation>
    </message>
    <message>
        <source>From wall to ridge; half the width would lie flat, the whole is steep.</source>
        <translation>Von der Wand zum First; die halbe Breite läge flach, die ganze ist steil.</translation>
    </message>
    <message>
        <source>Joins the left side to the front.</source>
        <translation>Verbindet die linke Seite mit der Vorderwand.</translation>
    </message>
    <message>
        <source>Handle</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>Tetrahedron</source>
        <translation>Tetraeder</translation>
    </message>
    <message>
        <source>Four triangles.</source>
        <translation>Vier Dreiecke.</translation>
    </message>
    <message>
        <source>Small surprises, a ball, or hung up empty.</source>
        <translation>Kleine Überraschungen, eine Kugel oder leer zum Aufhängen.</translation>
    </message>
    <message>
        <source>Edge</source>
        <translation>Kante</translation>
    </message>
    <message>
        <source>Of every face. The tabs must fit.</source>
        <translation>Jeder Fläche. Die Laschen müssen passen.</translation>
    </message>
    <message>
        <source>Tabs</source>
        <translation>Laschen</translation>
    </message>
    <message>
        <source>Glued inside the face beside them; deeper ones would run to a point.</source>
        <translation>Innen an die Nachbarfläche geklebt; tiefere liefen spitz zu.</translation>
    </message>
    <message>
        <source>Cube</source>
        <translation>Würfel</translation>
    </message>
    <message>
        <source>Six squares.</source>
        <translation>Sechs Quadrate.</translation>
    </message>
    <message>
        <source>Octahedron</source>
        <translation>Oktaeder</translation>
    </message>
    <message>
        <source>Eight triangles.</source>
        <translation>Acht Dreiecke.</translation>
    </message>
    <message>
        <source>Dodecahedron</source>
        <translation>Dodekaeder</translation>
    </message>
    <message>
        <source>Twelve pentagons.</source>
        <translation>Zwölf Fünfecke.</translation>
    </message>
    <message>
        <source>Icosahedron</source>
        <translation>Ikosaeder</translation>
    </message>
    <message>
        <source>Twenty triangles.</source>
        <translation>Zwanzig Dreiecke.</translation>
    </message>
    <message>
        <source>A cover that opens like a matchbook and tucks into a pocket.</source>
        <translation>Ein Deckel, der sich wie ein Streichholzheft öffnet und in eine Tasche steckt.</translation>
    </message>
    <message>
        <source>A little house: the back of the roof opens and tucks in at the ridge.</source>
        <translation>Ein Häuschen: Die hintere Dachhälfte öffnet sich und steckt am First.</translation>
    </message>
    <message>
        <source>A shelf on feet with an opening that holds the product upright in its box.</source>
        <translation>Ein Boden auf Füßen, dessen Öffnung den Inhalt aufrecht in der Schachtel hält.</translation>
    </message>
    <message>
        <source>A slice of cake, a cheese, favours for a round table.</source>
        <translation>Ein Stück Kuchen, ein Käse, Gastgeschenke für einen runden Tisch.</translation>
    </message>
    <message>
        <source>A slice with a lid that tucks in: several make a cake.</source>
        <translation>Ein Tortenstück mit Steckdeckel: Mehrere ergeben eine Torte.</translation>
    </message>
    <message>
        <source>A tube closed by two crossed seams: four equal faces.</source>
        <translation>Ein Schlauch, von zwei gekreuzten Nähten geschlossen: vier gleiche Flächen.</translation>
    </message>
    <message>
        <source>Across the pocket, to slide more cards into.</source>
        <translation>Quer über die Tasche, um weitere Karten einzuschieben.</translation>
    </message>
    <message>
        <source>Across. Both glue tabs must fit side by side.</source>
        <translation>Quer. Beide Klebelaschen müssen nebeneinander passen.</translation>
    </message>
    <message>
        <source>Along the tube, inside.</source>
        <translation>Längs des Schlauchs, innen.</translation>
    </message>
    <message>
        <source>At least the width and 30 mm, so that the gussets and the holes find room.</source>
        <translation>Mindestens die Breite und 30 mm, damit Seitenfalten und Löcher Platz haben.</translation>
    </message>
    <message>
        <source>At the ends of the sides, glued inside front and back.</source>
        <translation>An den Enden der Seiten, innen an Vorder- und Rückwand geklebt.</translation>
    </message>
    <message>
        <source>At the ridge, under the front of the roof.</source>
        <translation>Am First, unter der vorderen Dachhälfte.</translation>
    </message>
    <message>
        <source>At the tip and at both ends of the back.</source>
        <translation>An der Spitze und an beiden Enden der Rückwand.</translation>
    </message>
    <message>
        <source>Back height</source>
        <translation>Höhe hinten</translation>
    </message>
    <message>
        <source>Between the double scores. Narrower ones cannot be scored.</source>
        <translation>Zwischen den Doppelrillen. Schmalere lassen sich nicht rillen.</translation>
    </message>
    <message>
        <source>Biscuits, coffee, books, several small things at once.</source>
        <translation>Kekse, Kaffee, Bücher, mehrere kleine Dinge zugleich.</translation>
    </message>
    <message>
        <source>Biscuits, sweets, calendars and villages of favours.</source>
        <translation>Kekse, Süßes, Kalender und ganze Dörfer von Gastgeschenken.</translation>
    </message>
    <message>
        <source>Book wrap</source>
        <translation>Streichholzheft-Hülle</translation>
    </message>
    <message>
        <source>By which each layer is smaller than the one around it, all round.</source>
        <translation>So viel kleiner ist jede Lage ringsum als die nächste außen.</translation>
    </message>
    <message>
        <source>Round the box, its seam near a fold at the back.</source>
        <translation>Um die Schachtel, die Naht hinten, nahe an einem Falz.</translation>
    </message>
    <message>
        <source>Sleeve</source>
        <translation>Hülse</translation>
    </message>
    <message>
        <source>An open tube as long as the box.</source>
        <translation>Eine offene Hülse, so lang wie die Schachtel.</translation>
    </message>
    <message>
        <source>Band width</source>
        <translation>Breite der Banderole</translation>
    </message>
    <message>
        <source>Along the box; 0 takes a third of the box.</source>
        <translation>Entlang der Schachtel; 0 nimmt ein Drittel der Schachtel.</translation>
    </message>
    <message>
        <source>Glued lap at the back.</source>
        <translation>Geklebte Überlappung hinten.</translation>
    </message>
    <message>
        <source>Glued inside the front.</source>
        <translation>Innen an die Vorderseite geklebt.</translation>
    </message>
    <message>
        <source>Mats</source>
        <translation>Zierpapiere</translation>
    </message>
    <message>
        <source>A decorative layer on every face that shows, or on one.</source>
        <translation>Ein Zierpapier auf jeder sichtbaren Fläche oder auf einer.</translation>
    </message>
    <message>
        <source>Inset</source>
        <translation>Abstand zur Kante</translation>
    </message>
    <message>
        <source>Card left to be seen at every edge.</source>
        <translation>Karton, der an jeder Kante sichtbar bleibt.</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Glued onto a face, with a mat layer one size larger.</source>
        <translation>Auf eine Fläche geklebt, mit einem Rahmenpapier, eine Größe größer.</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Of the label.</source>
        <translation>Des Etiketts.</translation>
    </message>
    <message>
        <source>0 chooses a whole step of the punches.</source>
        <translation>0: automatisch, passend zu einem Motivstanzer.</translation>
    </message>
    <message>
        <source>Mat layer</source>
        <translation>Rahmenpapier</translation>
    </message>
    <message>
        <source>A layer under it, one step of the punches larger.</source>
        <translation>Eine Lage darunter, eine Stanzgröße größer.</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>An opening in a face, with clear film behind it.</source>
        <translation>Eine Öffnung in einer Fläche, dahinter Klarsichtfolie.</translation>
    </message>
    <message>
        <source>Corner radius</source>
        <translation>Eckenradius</translation>
    </message>
    <message>
        <source>0 for sharp corners.</source>
        <translation>0 für scharfe Ecken.</translation>
    </message>
    <message>
        <source>Lap of the film</source>
        <translation>Überlappung der Folie</translation>
    </message>
    <message>
        <source>Glued round the opening.</source>
        <translation>Rund um die Öffnung geklebt.</translation>
    </message>
    <message>
        <source>A shelf on feet inside the box that holds the product.</source>
        <translation>Ein Podest in der Schachtel, das den Inhalt hält.</translation>
    </message>
    <message>
        <source>Greeting slip</source>
        <translation>Grußkärtchen</translation>
    </message>
    <message>
        <source>Fits under the product.</source>
        <translation>Passt unter den Inhalt.</translation>
    </message>
    <message>
        <source>Of the legs; 0 takes half the product.</source>
        <translation>Der Beine; 0 nimmt den halben Inhalt.</translation>
    </message>
    <message>
        <source>0 fills the box inside.</source>
        <translation>0 füllt die Schachtel innen.</translation>
    </message>
    <message>
        <source>Ribbon</source>
        <translation>Schleifenband</translation>
    </message>
    <message>
        <source>Crosswise or once round, with a bow.</source>
        <translation>Über Kreuz oder einmal herum, mit Schleife.</translation>
    </message>
    <message>
        <source>Of the ribbon.</source>
        <translation>Des Schleifenbandes.</translation>
    </message>
    <message>
        <source>Bow</source>
        <translation>Schleife</translation>
    </message>
    <message>
        <source>Ribbon for the bow and its ends.</source>
        <translation>Band für die Schleife und ihre Enden.</translation>
    </message>
    <message>
        <source>Crosswise</source>
        <translation>Über Kreuz</translation>
    </message>
    <message>
        <source>Rectangle</source>
        <translation>Rechteck</translation>
    </message>
    <message>
        <source>Circle</source>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>Oval</source>
        <translation>Oval</translation>
    </message>
    <message>
        <source>Scalloped</source>
        <translation>Wellenrand</translation>
    </message>
    <message>
        <source>Card at both ends of the opening. Make it so wide that the insert is 1 mm shorter than the box inside.</source>
        <translation>Karton an beiden Enden der Öffnung. So breit, dass der Einsatz 1 mm kürzer ist als die Schachtel innen.</translation>
    </message>
    <message>
        <source>Side margin</source>
        <translation>Randbreite seitlich</translation>
    </message>
    <message>
        <source>Card in front of the opening and behind it; the feet lie under it.</source>
        <translation>Karton vor und hinter der Öffnung; die Füße liegen darunter.</translation>
    </message>
    <message>
        <source>Round opening</source>
        <translation>Runde Öffnung</translation>
    </message>
    <message>
        <source>For jars, tins and balls.</source>
        <translation>Für Gläser, Dosen und Kugeln.</translation>
    </message>
    <message>
        <source>Card wallet</source>
        <translation>Kartenmäppchen</translation>
    </message>
    <message>
        <source>Above the ridge, at most seven twentieths of the width, or the sides would meet on the way in.</source>
        <translation>Über dem First, höchstens sieben Zwanzigstel der Breite, sonst träfen sich die Seiten auf dem Weg hinein.</translation>
    </message>
    <message>
        <source>Cell length</source>
        <translation>Fachlänge</translation>
    </message>
    <message>
        <source>Cell width</source>
        <translation>Fachbreite</translation>
    </message>
    <message>
        <source>Cells along the length.</source>
        <translation>Fächer der Länge nach.</translation>
    </message>
    <message>
        <source>Cells along the width.</source>
        <translation>Fächer der Breite nach.</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>Crosses one in the other, glued base on base.</source>
        <translation>Kreuze ineinander, Boden auf Boden geklebt.</translation>
    </message>
    <message>
        <source>Deep enough to hold the walls up, at most their height.</source>
        <translation>Tief genug, um die Wände zu halten, höchstens so tief wie diese hoch sind.</translation>
    </message>
    <message>
        <source>Dip</source>
        <translation>Tiefe der Rundung</translation>
    </message>
    <message>
        <source>Double scores give it depth; with straight or with pointed flaps, closed by a seal.</source>
        <translation>Doppelrillen geben ihm Tiefe; mit geraden oder spitzen Klappen, mit einem Siegel verschlossen.</translation>
    </message>
    <message>
        <source>Envelope</source>
        <translation>Umschlag</translation>
    </message>
    <message>
        <source>Exploding box</source>
        <translation>Explosionsbox</translation>
    </message>
    <message>
        <source>Fin</source>
        <translation>Steg</translation>
    </message>
    <message>
        <source>Four flaps that meet in diagonals on the back.</source>
        <translation>Vier Klappen, die sich hinten in Diagonalen treffen.</translation>
    </message>
    <message>
        <source>From seam to seam on the sheet: six tenths of the width or more.</source>
        <translation>Von Naht zu Naht auf dem Bogen: mindestens sechs Zehntel der Breite.</translation>
    </message>
    <message>
        <source>From the back to the tip, at least half the width.</source>
        <translation>Von der Rückwand zur Spitze, mindestens die halbe Breite.</translation>
    </message>
    <message>
        <source>From the middle of one divider to the middle of the next.</source>
        <translation>Von der Mitte einer Trennwand zur Mitte der nächsten.</translation>
    </message>
    <message>
        <source>Front height</source>
        <translation>Höhe vorn</translation>
    </message>
    <message>
        <source>Gable flap</source>
        <translation>Giebellasche</translation>
    </message>
    <message>
        <source>Gift cards, letters, seeds, flat sweets, photographs.</source>
        <translation>Gutscheinkarten, Briefe, Samen, flache Süßigkeiten, Fotos.</translation>
    </message>
    <message>
        <source>Gift cards, vouchers, tickets, banknotes, photographs.</source>
        <translation>Gutscheinkarten, Gutscheine, Eintrittskarten, Geldscheine, Fotos.</translation>
    </message>
    <message>
        <source>Glue tab</source>
        <translation>Klebelasche</translation>
    </message>
    <message>
        <source>Glued to the back; without pointed flaps.</source>
        <translation>An die Rückseite geklebt; ohne spitze Klappen.</translation>
    </message>
    <message>
        <source>Gusseted bag</source>
        <translation>Geschenktüte mit Seitenfalten</translation>
    </message>
    <message>
        <source>Handle holes</source>
        <translation>Grifflöcher</translation>
    </message>
    <message>
        <source>Holds the pocket&apos;s sides on the back.</source>
        <translation>Hält die Seiten der Tasche an der Rückseite.</translation>
    </message>
    <message>
        <source>How far the cover slides into the pocket.</source>
        <translation>Wie weit der Deckel in die Tasche gleitet.</translation>
    </message>
    <message>
        <source>How far the edge of the back stands outside the base.</source>
        <translation>Wie weit der Rand der Rückwand über den Boden hinaussteht.</translation>
    </message>
    <message>
        <source>How far the front&apos;s curved edge dips in the middle.</source>
        <translation>Wie weit sich der geschwungene vordere Rand in der Mitte senkt.</translation>
    </message>
    <message>
        <source>How high the pocket is, at most three quarters of the length.</source>
        <translation>Wie hoch die Tasche ist, höchstens drei Viertel der Länge.</translation>
    </message>
    <message>
        <source>In the middle, between the curved scores: a tenth to four tenths of the width.</source>
        <translation>In der Mitte, zwischen den gebogenen Rilllinien: ein bis vier Zehntel der Breite.</translation>
    </message>
    <message>
        <source>In the pocket&apos;s edge.</source>
        <translation>Im Rand der Tasche.</translation>
    </message>
    <message>
        <source>Jars, bottles, candles and soap in a larger box.</source>
        <translation>Gläser, Flaschen, Kerzen und Seife in einer größeren Schachtel.</translation>
    </message>
    <message>
        <source>Jewellery, ties, gift cards, sweets, soap slices.</source>
        <translation>Schmuck, Krawatten, Gutscheinkarten, Süßes, Seifenscheiben.</translation>
    </message>
    <message>
        <source>Joins back and front at one side.</source>
        <translation>Verbindet Rück- und Vorderseite an einer Seite.</translation>
    </message>
    <message>
        <source>Layered crosses fall open when the lid is lifted.</source>
        <translation>Ineinanderliegende Kreuze fallen auf, sobald der Deckel gehoben wird.</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Lagen</translation>
    </message>
    <message>
        <source>Lean</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Randbreite</translation>
    </message>
    <message>
        <source>Milk-carton top box</source>
        <translation>Milchtüte</translation>
    </message>
    <message>
        <source>Of each face at its seam: half the sheet.</source>
        <translation>Jeder Fläche an ihrer Naht: der halbe Bogen.</translation>
    </message>
    <message>
        <source>Of front and back, along the ridge. Two flaps and the tuck must fit.</source>
        <translation>Von Vorder- und Rückwand, am First entlang. Zwei Laschen und die Einstecklasche müssen passen.</translation>
    </message>
    <message>
        <source>Of front and back, laid flat.</source>
        <translation>Von Vorder- und Rückseite, flach liegend.</translation>
    </message>
    <message>
        <source>Of the back; at least a third of the length, or the tip is too sharp.</source>
        <translation>Der Rückwand; mindestens ein Drittel der Länge, sonst wird die Spitze zu spitz.</translation>
    </message>
    <message>
        <source>Of the base, along the front. Two tabs must fit.</source>
        <translation>Des Bodens, an der Vorderseite entlang. Zwei Laschen müssen passen.</translation>
    </message>
    <message>
        <source>Of the base, from front to back.</source>
        <translation>Des Bodens, von vorn nach hinten.</translation>
    </message>
    <message>
        <source>Of the dividers.</source>
        <translation>Der Trennwände.</translation>
    </message>
    <message>
        <source>Of the front, from the fold of the flap to the bottom.</source>
        <translation>Der Vorderseite, vom Falz der Klappe bis unten.</translation>
    </message>
    <message>
        <source>Of the front, the longer side.</source>
        <translation>Der Vorderseite, die längere Seite.</translation>
    </message>
    <message>
        <source>Of the gable walls.</source>
        <translation>Der Giebelwände.</translation>
    </message>
    <message>
        <source>Of the innermost cross&apos;s base.</source>
        <translation>Vom Boden des innersten Kreuzes.</translation>
    </message>
    <message>
        <source>Of the innermost cross&apos;s base. The lid&apos;s tabs must fit.</source>
        <translation>Vom Boden des innersten Kreuzes. Die Laschen des Deckels müssen passen.</translation>
    </message>
    <message>
        <source>Of the legs: half the product or more.</source>
        <translation>Der Beine: der halbe Inhalt oder mehr.</translation>
    </message>
    <message>
        <source>Of the opening.</source>
        <translation>Der Öffnung.</translation>
    </message>
    <message>
        <source>Of the opening; the product goes through it.</source>
        <translation>Der Öffnung; der Inhalt steht in ihr.</translation>
    </message>
    <message>
        <source>Of the outermost walls; each layer inside is lower by the step.</source>
        <translation>Der äußersten Wände; jede Lage innen ist um die Stufe niedriger.</translation>
    </message>
    <message>
        <source>Of the ridge over the eaves: a fifth to seven tenths of the width.</source>
        <translation>Des Firsts über der Traufe: ein Fünftel bis sieben Zehntel der Breite.</translation>
    </message>
    <message>
        <source>Of the straight sides; the ends curve in from there.</source>
        <translation>Der geraden Seiten; von dort wölben sich die Enden nach innen.</translation>
    </message>
    <message>
        <source>Of the strips between the covers. Narrower ones cannot be scored.</source>
        <translation>Der Streifen zwischen den Deckeln. Schmalere lassen sich nicht rillen.</translation>
    </message>
    <message>
        <source>Of the walls, up to the eaves. The bottom&apos;s glue tab must fit.</source>
        <translation>Der Wände, bis zur Traufe. Die Klebelasche des Bodens muss passen.</translation>
    </message>
    <message>
        <source>Of the walls. The lid&apos;s flaps go down half of it at most.</source>
        <translation>Der Wände. Die Laschen des Deckels reichen höchstens halb hinab.</translation>
    </message>
    <message>
        <source>On both sides of the lid.</source>
        <translation>An beiden Seiten des Deckels.</translation>
    </message>
    <message>
        <source>Open and tapered, with a high back and a curved front edge.</source>
        <translation>Offen und nach unten enger, mit hoher Rückwand und geschwungenem vorderem Rand.</translation>
    </message>
    <message>
        <source>Opens like a book; a pocket with slits holds one card or several.</source>
        <translation>Öffnet sich wie ein Buch; eine Tasche mit Schlitzen hält eine oder mehrere Karten.</translation>
    </message>
    <message>
        <source>Partition insert</source>
        <translation>Fächereinsatz</translation>
    </message>
    <message>
        <source>Photographs, messages, vouchers, a small gift inside.</source>
        <translation>Fotos, Botschaften, Gutscheine, ein kleines Geschenk darin.</translation>
    </message>
    <message>
        <source>Pillow box</source>
        <translation>Kissenschachtel</translation>
    </message>
    <message>
        <source>Pitched-roof box</source>
        <translation>Häuschen</translation>
    </message>
    <message>
        <source>Platform insert</source>
        <translation>Podesteinsatz</translation>
    </message>
    <message>
        <source>Pocket</source>
        <translation>Tasche</translation>
    </message>
    <message>
        <source>Pointed flaps</source>
        <translation>Spitze Klappen</translation>
    </message>
    <message>
        <source>Popcorn, sweets in bags, biscuits, small gifts to reach into.</source>
        <translation>Popcorn, Süßes in Tütchen, Kekse, kleine Gaben zum Hineingreifen.</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Firsthöhe</translation>
    </message>
    <message>
        <source>Rows</source>
        <translation>Reihen</translation>
    </message>
    <message>
        <source>Scored length of lid against the outer cross: two cards and the ease between them.</source>
        <translation>So viel länger als das äußere Kreuz ist der Deckel von Rilllinie zu Rilllinie: zwei Kartondicken und die Luft.</translation>
    </message>
    <message>
        <source>Scored width of lid against the outer cross: two cards, the lid&apos;s two tabs and the ease.</source>
        <translation>So viel breiter als das äußere Kreuz ist der Deckel von Rilllinie zu Rilllinie: zwei Kartondicken, die zwei Laschen des Deckels und die Luft.</translation>
    </message>
    <message>
        <source>Seed packets, tea bags, chocolate squares, face masks, samples.</source>
        <translation>Samentütchen, Teebeutel, Schokoladentäfelchen, Gesichtsmasken, Proben.</translation>
    </message>
    <message>
        <source>Side flaps</source>
        <translation>Seitenklappen</translation>
    </message>
    <message>
        <source>Slits</source>
        <translation>Schlitze</translation>
    </message>
    <message>
        <source>Slotted dividers that part a box into cells, one product in each.</source>
        <translation>Geschlitzte Trennwände, die eine Schachtel in Fächer teilen.</translation>
    </message>
    <message>
        <source>Small jars, bottles, baubles, truffles, cupcakes.</source>
        <translation>Kleine Gläser, Flaschen, Kugeln, Pralinen, Törtchen.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Sweets, biscuits, tea, small toys.</source>
        <translation>Süßes, Kekse, Tee, kleines Spielzeug.</translation>
    </message>
    <message>
        <source>Sweets, nuts, tea, favours, small surprises.</source>
        <translation>Süßes, Nüsse, Tee, Gastgeschenke, kleine Überraschungen.</translation>
    </message>
    <message>
        <source>The seams at the two ends, glued inside to inside.</source>
        <translation>Die Nähte an beiden Enden, innen auf innen geklebt.</translation>
    </message>
    <message>
        <source>The sides fold in under a roof that ends in a glued fin.</source>
        <translation>Die Seiten falten sich unter ein Dach ein, das in einem geklebten Steg endet.</translation>
    </message>
    <message>
        <source>Treat scoop</source>
        <translation>Pommestüte</translation>
    </message>
    <message>
        <source>Tuck</source>
        <translation>Einstecktiefe</translation>
    </message>
    <message>
        <source>Turned in under the long legs; it must not reach the opening.</source>
        <translation>Unter den langen Beinen nach innen gefaltet; darf nicht bis zur Öffnung reichen.</translation>
    </message>
    <message>
        <source>Two curved scores at each end press in and hold the box shut.</source>
        <translation>Zwei gebogene Rilllinien an jedem Ende drücken sich ein und halten die Schachtel zu.</translation>
    </message>
    <message>
        <source>Two in front and back, for a ribbon.</source>
        <translation>Je zwei in Vorder- und Rückwand, für ein Schleifenband.</translation>
    </message>
    <message>
        <source>Under both slopes of the roof.</source>
        <translation>Unter beiden Dachhälften.</translation>
    </message>
    <message>
        <source>Upright, along the longest side of what goes in.</source>
        <translation>Aufrecht, entlang der längsten Seite des Inhalts.</translation>
    </message>
    <message>
        <source>Upright, from the base to the edge of the back.</source>
        <translation>Senkrecht, vom Boden bis zum Rand der Rückwand.</translation>
    </message>
    <message>
        <source>Upright; lower than the back.</source>
        <translation>Senkrecht; niedriger als hinten.</translation>
    </message>
    <message>
        <source>Wedge box</source>
        <translation>Tortenstück</translation>
    </message>
    <message>
        <source>Crossed-seam pouch</source>
        <translation>Beutel mit gekreuzten Nähten</translation>
    </message>
    <message>
        <source>Long sides first</source>
        <translation>Lange Seiten zuerst</translation>
    </message>
    <message>
        <source>Roll and glue the long sides before the tabs go in: each tab is then bent and fed into their open ends.</source>
        <translation>Die langen Seiten einrollen und kleben, bevor die Laschen hineinkommen: jede Lasche wird dann gebogen und in ihr offenes Ende geschoben.</translation>
    </message>
    <message>
        <source>Above the ridge; from 24 mm on a hole for the hand is cut.</source>
        <translation>Über dem First; ab 24 mm wird eine Grifföffnung ausgeschnitten.</translation>
    </message>
    <message>
        <source>Stands on a block bottom, folds flat with it, with holes for a ribbon handle.</source>
        <translation>Steht auf einem Blockboden, lässt sich mit ihm flach falten, mit Löchern für einen Bandgriff.</translation>
    </message>
    <message>
        <source>Of front and back, along the bottom. Seam and holes must fit side by side.</source>
        <translation>Von Vorder- und Rückwand, am Boden entlang. Klebenaht und Löcher müssen nebeneinander Platz finden.</translation>
    </message>
    <message>
        <source>Joins the left side to the front, beside the holes.</source>
        <translation>Verbindet die linke Seite mit der Vorderwand, neben den Löchern.</translation>
    </message>
    <message>
        <source>Of the sides, which fold in along the middle; no wider than the length.</source>
        <translation>Der Seiten, die sich in der Mitte einfalten; nicht breiter als die Länge.</translation>
    </message>
    <message>
        <source>Across a hole, at most a fifth of the length and a third of the height.</source>
        <translation>Quer über ein Loch, höchstens ein Fünftel der Länge und ein Drittel der Höhe.</translation>
    </message>
    <message>
        <source>%1 May give way a little so that the blank lies on the grid.</source>
        <translation>%1 Gibt etwas nach, damit der Zuschnitt auf dem Raster liegt.</translation>
    </message>
    <message>
        <source>0 takes six tenths of the face, or what is free of it.</source>
        <translation>0 nimmt sechs Zehntel der Fläche oder was davon frei ist.</translation>
    </message>
    <message>
        <source>As the net is drawn; bottom and top of an upright edge.</source>
        <translation>Wie das Netz gezeichnet ist; bei einer senkrechten Kante unten und oben.</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>A piece cut out of a cut edge, to take hold of what is behind it.</source>
        <translation>Ein Ausschnitt in einer Schnittkante, um zu fassen, was dahinter liegt.</translation>
    </message>
    <message>
        <source>Of the notch.</source>
        <translation>Der Mulde.</translation>
    </message>
    <message>
        <source>Half-round</source>
        <translation>Halbrund</translation>
    </message>
    <message>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <source>Square</source>
        <translation>Eckig</translation>
    </message>
    <message>
        <source>Along the edge.</source>
        <translation>Entlang der Kante.</translation>
    </message>
    <message>
        <source>Into the card.</source>
        <translation>In den Karton hinein.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Along</source>
        <translation>Längs</translation>
    </message>
    <message>
        <source>From the middle, or from that end.</source>
        <translation>Von der Mitte oder von diesem Ende.</translation>
    </message>
    <message>
        <source>Corners</source>
        <translation>Ecken</translation>
    </message>
    <message>
        <source>The corners at the ends of a cut edge, rounded or cut off.</source>
        <translation>Die Ecken an den Enden einer Schnittkante, gerundet oder abgeschnitten.</translation>
    </message>
    <message>
        <source>Of the corners.</source>
        <translation>Der Ecken.</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Rund</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Abgeschnitten</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Along both edges of the corner.</source>
        <translation>Entlang beider Kanten der Ecke.</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Enden</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Beide</translation>
    </message>
    <message>
        <source>Shaped edge</source>
        <translation>Formkante</translation>
    </message>
    <message>
        <source>A cut edge drawn in straight, as a wave, a scallop, an arch or a zigzag.</source>
        <translation>Eine Schnittkante, gerade zurückgesetzt oder als Welle, Bogenkante, Bogen oder Zickzack.</translation>
    </message>
    <message>
        <source>Of the edge.</source>
        <translation>Der Kante.</translation>
    </message>
    <message>
        <source>Straight</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>Wave</source>
        <translation>Welle</translation>
    </message>
    <message>
        <source>Scallop</source>
        <translation>Bogenkante</translation>
    </message>
    <message>
        <source>Arch</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>Zigzag</source>
        <translation>Zickzack</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Of waves or bows.</source>
        <translation>Der Wellen oder Bögen.</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>As the net is drawn on the sheet.</source>
        <translation>Wie das Netz auf dem Bogen gezeichnet ist.</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Quer</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Öffnung</translation>
    </message>
    <message>
        <source>A hole in a panel, in one of seven shapes.</source>
        <translation>Ein Ausschnitt in einer Fläche, in einer von sieben Formen.</translation>
    </message>
    <message>
        <source>A circle is as wide as its smaller measure.</source>
        <translation>Ein Kreis ist so breit wie sein kleineres Maß.</translation>
    </message>
    <message>
        <source>Heart</source>
        <translation>Herz</translation>
    </message>
    <message>
        <source>Star</source>
        <translation>Stern</translation>
    </message>
    <message>
        <source>Such as panel-width - 2 * 6 mm.</source>
        <translation>Etwa panel-width - 2 * 6 mm.</translation>
    </message>
    <message>
        <source>Such as panel-height / 3.</source>
        <translation>Etwa panel-height / 3.</translation>
    </message>
    <message>
        <source>Of a rectangle; 0 for sharp corners.</source>
        <translation>Eines Rechtecks; 0 für scharfe Ecken.</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>Gedreht</translation>
    </message>
    <message>
        <source>Against the clock, as the net is drawn.</source>
        <translation>Gegen den Uhrzeigersinn, wie das Netz gezeichnet ist.</translation>
    </message>
    <message>
        <source>Not</source>
        <translation>Nicht</translation>
    </message>
    <message>
        <source>Quarter</source>
        <translation>Viertel</translation>
    </message>
    <message>
        <source>Half</source>
        <translation>Halb</translation>
    </message>
    <message>
        <source>Three quarters</source>
        <translation>Drei Viertel</translation>
    </message>
    <message>
        <source>Slit</source>
        <translation>Schlitz</translation>
    </message>
    <message>
        <source>One straight cut in a panel, such as for a tab or a card.</source>
        <translation>Ein gerader Schnitt in einer Fläche, etwa für eine Lasche oder ein Kärtchen.</translation>
    </message>
    <message>
        <source>Of the cut.</source>
        <translation>Des Schnittes.</translation>
    </message>
    <message>
        <source>Pair of slits</source>
        <translation>Schlitzpaar</translation>
    </message>
    <message>
        <source>Two cuts side by side, such as for a ribbon or a strap.</source>
        <translation>Zwei Schnitte nebeneinander, etwa für ein Band oder einen Riemen.</translation>
    </message>
    <message>
        <source>Of each cut.</source>
        <translation>Jedes Schnittes.</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Between the two cuts.</source>
        <translation>Zwischen den beiden Schnitten.</translation>
    </message>
    <message>
        <source>Hanging slot</source>
        <translation>Aufhängeschlitz</translation>
    </message>
    <message>
        <source>A slot with a round hole in its middle, to hang the box on a hook.</source>
        <translation>Ein Langloch mit einem runden Loch in der Mitte, um die Schachtel an einen Haken zu hängen.</translation>
    </message>
    <message>
        <source>Of the slot.</source>
        <translation>Des Langlochs.</translation>
    </message>
    <message>
        <source>Across the round hole.</source>
        <translation>Durchmesser des runden Lochs.</translation>
    </message>
    <message>
        <source>Punched holes</source>
        <translation>Gestanzte Löcher</translation>
    </message>
    <message>
        <source>One round hole, a pair, or a row of them.</source>
        <translation>Ein rundes Loch, zwei oder eine Reihe.</translation>
    </message>
    <message>
        <source>Of each hole.</source>
        <translation>Jedes Lochs.</translation>
    </message>
    <message>
        <source>Of holes.</source>
        <translation>Der Löcher.</translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation>Abstand der Löcher</translation>
    </message>
    <message>
        <source>From middle to middle.</source>
        <translation>Von Mitte zu Mitte.</translation>
    </message>
    <message>
        <source>Across from</source>
        <translation>Quer von</translation>
    </message>
    <message>
        <source>From the middle, or from that side.</source>
        <translation>Von der Mitte oder von dieser Seite.</translation>
    </message>
    <message>
        <source>Up from</source>
        <translation>Hoch von</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Changed fold</source>
        <translation>Geänderter Falz</translation>
    </message>
    <message>
        <source>Another angle of a fold, the other way, or a perforation.</source>
        <translation>Ein Falz mit anderem Winkel, in die andere Richtung oder als Perforation.</translation>
    </message>
    <message>
        <source>Fold</source>
        <translation>Falz</translation>
    </message>
    <message>
        <source>Towards you or away, the net lying as drawn.</source>
        <translation>Zu sich hin oder von sich weg, das Netz liegt wie gezeichnet.</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Wie vorhanden</translation>
    </message>
    <message>
        <source>Valley</source>
        <translation>Talfalte</translation>
    </message>
    <message>
        <source>Mountain</source>
        <translation>Bergfalte</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Drehung</translation>
    </message>
    <message>
        <source>Whether the angle below holds.</source>
        <translation>Ob der Winkel darunter gilt.</translation>
    </message>
    <message>
        <source>By an angle</source>
        <translation>Um einen Winkel</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Degrees; 0 for a fold that is opened again.</source>
        <translation>In Grad; 0 für einen Falz, der wieder geöffnet wird.</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>How the card is made to fold.</source>
        <translation>Wie der Karton zum Falten vorbereitet wird.</translation>
    </message>
    <message>
        <source>Score</source>
        <translation>Rilllinie</translation>
    </message>
    <message>
        <source>Perforation</source>
        <translation>Perforation</translation>
    </message>
    <message>
        <source>Slit lock</source>
        <translation>Schlitzverschluss</translation>
    </message>
    <message>
        <source>Two slits at the ends of a tuck flap&apos;s fold, in which the dust flaps catch.</source>
        <translation>Zwei Schlitze an den Enden des Falzes einer Einstecklasche, in denen die Staublaschen einrasten.</translation>
    </message>
    <message>
        <source>Of each slit.</source>
        <translation>Von jedem Schlitz.</translation>
    </message>
    <message>
        <source>Fold left</source>
        <translation>Falz dazwischen</translation>
    </message>
    <message>
        <source>How much of the fold must stay between the slits.</source>
        <translation>Wie viel vom Falz zwischen den Schlitzen bleiben muss.</translation>
    </message>
    <message>
        <source>Panels made one</source>
        <translation>Verbundene Flächen</translation>
    </message>
    <message>
        <source>The two panels beside a fold become one; the fold goes.</source>
        <translation>Die beiden Flächen an einem Falz werden eine; der Falz fällt weg.</translation>
    </message>
    <message>
        <source>Panel left out</source>
        <translation>Weggelassene Fläche</translation>
    </message>
    <message>
        <source>A panel and all that hangs on it is cut away.</source>
        <translation>Eine Fläche und alles, was an ihr hängt, wird abgeschnitten.</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>Of the letters.</source>
        <translation>Der Buchstaben.</translation>
    </message>
    <message>
        <source>Guide mark</source>
        <translation>Hilfszeichen</translation>
    </message>
    <message>
        <source>A thin mark that shows where something goes; no cut.</source>
        <translation>Ein dünnes Zeichen, das zeigt, wo etwas hinkommt; kein Schnitt.</translation>
    </message>
    <message>
        <source>Of the mark.</source>
        <translation>Des Zeichens.</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>Kreuz</translation>
    </message>
    <message>
        <source>Level line</source>
        <translation>Waagerechte Linie</translation>
    </message>
    <message>
        <source>Upright line</source>
        <translation>Senkrechte Linie</translation>
    </message>
    <message>
        <source>Ring</source>
        <translation>Ring</translation>
    </message>
    <message>
        <source>Flap</source>
        <translation>Klappe</translation>
    </message>
    <message>
        <source>A flap on a cut edge: free, or glued or tucked to the panel that meets it.</source>
        <translation>Eine Klappe an einer Schnittkante: frei, oder an die Fläche geklebt oder gesteckt, die dort anliegt.</translation>
    </message>
    <message>
        <source>Away from the fold.</source>
        <translation>Vom Falz weg.</translation>
    </message>
    <message>
        <source>Taper</source>
        <translation>Abschrägung</translation>
    </message>
    <message>
        <source>How much shorter it becomes at either end.</source>
        <translation>Um wie viel sie an jedem Ende kürzer wird.</translation>
    </message>
    <message>
        <source>Of its outer corners; 0 for sharp corners.</source>
        <translation>Der äußeren Ecken; 0 für spitze Ecken.</translation>
    </message>
    <message>
        <source>Of the edge, left free at either end.</source>
        <translation>Von der Kante, an jedem Ende frei gelassen.</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Gehalten</translation>
    </message>
    <message>
        <source>A flap that is held takes its own angle.</source>
        <translation>Eine gehaltene Klappe nimmt ihren eigenen Winkel.</translation>
    </message>
    <message>
        <source>Free</source>
        <translation>Frei</translation>
    </message>
    <message>
        <source>Glued</source>
        <translation>Geklebt</translation>
    </message>
    <message>
        <source>Tucked</source>
        <translation>Gesteckt</translation>
    </message>
    <message>
        <source>Against</source>
        <translation>Liegt an</translation>
    </message>
    <message>
        <source>The face of the other panel that a held flap lies against.</source>
        <translation>Die Seite der anderen Fläche, an der eine gehaltene Klappe liegt.</translation>
    </message>
    <message>
        <source>Inside</source>
        <translation>Innenseite</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>Außenseite</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Before all other folds, or after them.</source>
        <translation>Vor allen anderen Falzen oder danach.</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Zuerst</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Score across</source>
        <translation>Rilllinie durch eine Fläche</translation>
    </message>
    <message>
        <source>A new fold that makes two panels of one, level, upright or slanting.</source>
        <translation>Ein neuer Falz, der aus einer Fläche zwei macht: waagerecht, senkrecht oder schräg.</translation>
    </message>
    <message>
        <source>Left or bottom</source>
        <translation>Links oder unten</translation>
    </message>
    <message>
        <source>Right or top</source>
        <translation>Rechts oder oben</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>Slant</source>
        <translation>Schräge</translation>
    </message>
    <message>
        <source>How much farther its right or lower end lies.</source>
        <translation>Um wie viel ihr rechtes oder unteres Ende weiter liegt.</translation>
    </message>
    <message>
        <source>Second seam</source>
        <translation>Zweite Klebenaht</translation>
    </message>
    <message>
        <source>The blank is made in two halves, glued together at a fold: for a box that is larger than the sheet.</source>
        <translation>Der Zuschnitt besteht aus zwei Hälften, an einem Falz zusammengeklebt: für eine Schachtel, die größer ist als der Bogen.</translation>
    </message>
    <message>
        <source>Of the glue tab.</source>
        <translation>Der Klebelasche.</translation>
    </message>
    <message>
        <source>The face of the other half that the glue tab lies against; inside it takes its thickness of the room.</source>
        <translation>Die Seite der anderen Hälfte, an der die Klebelasche liegt; innen nimmt sie ihre Dicke vom Platz weg.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>By which other changes find it: one word, such as lid.</source>
        <translation>Unter dem andere Änderungen sie finden: ein Wort, etwa Deckel.</translation>
    </message>
    <message>
        <source>Blank sheet</source>
        <translation>Leerer Bogen</translation>
    </message>
    <message>
        <source>A base to start from: hinge walls and flaps to its edges, and make a style of your own.</source>
        <translation>Ein Boden zum Anfangen: Wände und Laschen an seine Kanten hängen und ein eigenes Modell daraus machen.</translation>
    </message>
    <message>
        <source>Whatever no other style is made for.</source>
        <translation>Alles, wofür kein anderes Modell gemacht ist.</translation>
    </message>
    <message>
        <source>Of the base, along its front edge.</source>
        <translation>Des Bodens, entlang seiner vorderen Kante.</translation>
    </message>
    <message>
        <source>Of the base, from its front edge to its back edge.</source>
        <translation>Des Bodens, von der vorderen zur hinteren Kante.</translation>
    </message>
    <message>
        <source>For walls: write height as the depth of a flap.</source>
        <translation>Für Wände: height als Tiefe einer Lasche schreiben.</translation>
    </message>
    <message>
        <source>Where its cut edges meet others: to be held, or left open as a lid&apos;s.</source>
        <translation>Wo ihre Schnittkanten andere treffen: zu halten oder offen wie bei einem Deckel.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Made for itself and glued on, where ribbons cross or on a face.</source>
        <translation>Für sich gemacht und aufgeklebt, wo Schleifenbänder sich kreuzen oder auf einer Fläche.</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Of the bow.</source>
        <translation>Der Schleife.</translation>
    </message>
    <message>
        <source>Two loops</source>
        <translation>Zwei Schlaufen</translation>
    </message>
    <message>
        <source>Flat</source>
        <translation>Flach</translation>
    </message>
    <message>
        <source>Layered</source>
        <translation>In Lagen</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Spannweite</translation>
    </message>
    <message>
        <source>Tails</source>
        <translation>Enden</translation>
    </message>
    <message>
        <source>Length of each; 0 follows the span.</source>
        <translation>Länge jedes Endes; 0 folgt der Spannweite.</translation>
    </message>
    <message>
        <source>Of a layered bow.</source>
        <translation>Einer Schleife in Lagen.</translation>
    </message>
    <message>
        <source>From its place to the right; less than 0 to the left.</source>
        <translation>Von seinem Platz nach rechts; unter 0 nach links.</translation>
    </message>
    <message>
        <source>From its place upwards; less than 0 downwards.</source>
        <translation>Von seinem Platz nach oben; unter 0 nach unten.</translation>
    </message>
    <message>
        <source>Degrees against the clock.</source>
        <translation>Grad gegen den Uhrzeigersinn.</translation>
    </message>
    <message>
        <source>Rounded</source>
        <translation>Abgerundet</translation>
    </message>
    <message>
        <source>Scalloped circle</source>
        <translation>Kreis mit Wellenrand</translation>
    </message>
    <message>
        <source>Scalloped rectangle</source>
        <translation>Rechteck mit Wellenrand</translation>
    </message>
    <message>
        <source>Banner</source>
        <translation>Banner</translation>
    </message>
    <message>
        <source>Tag shape</source>
        <translation>Anhängerform</translation>
    </message>
    <message>
        <source>Ticket</source>
        <translation>Eintrittskarte</translation>
    </message>
    <message>
        <source>Hexagon</source>
        <translation>Sechseck</translation>
    </message>
    <message>
        <source>Where there is room</source>
        <translation>Wo Platz ist</translation>
    </message>
    <message>
        <source>Top left</source>
        <translation>Oben links</translation>
    </message>
    <message>
        <source>Top right</source>
        <translation>Oben rechts</translation>
    </message>
    <message>
        <source>Bottom left</source>
        <translation>Unten links</translation>
    </message>
    <message>
        <source>Bottom right</source>
        <translation>Unten rechts</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>On its face; it follows when the face grows.</source>
        <translation>Auf seiner Fläche; er geht mit, wenn die Fläche wächst.</translation>
    </message>
    <message>
        <source>May overhang</source>
        <translation>Darf überstehen</translation>
    </message>
    <message>
        <source>It may reach over the edge of what is under it.</source>
        <translation>Es darf über den Rand dessen reichen, was darunter liegt.</translation>
    </message>
    <message>
        <source>Held by</source>
        <translation>Gehalten mit</translation>
    </message>
    <message>
        <source>What holds it to what is under it.</source>
        <translation>Womit es auf dem hält, was darunter liegt.</translation>
    </message>
    <message>
        <source>Glue</source>
        <translation>Klebstoff</translation>
    </message>
    <message>
        <source>Tape</source>
        <translation>Klebeband</translation>
    </message>
    <message>
        <source>Foam</source>
        <translation>Schaumstoff</translation>
    </message>
    <message>
        <source>Thickness of the foam, where foam holds it.</source>
        <translation>Dicke des Schaumstoffs, wo Schaumstoff hält.</translation>
    </message>
    <message>
        <source>Punched</source>
        <translation>Gestanzt</translation>
    </message>
    <message>
        <source>Made by a punch of this size, not cut.</source>
        <translation>Mit einem Motivlocher dieser Größe gemacht, nicht geschnitten.</translation>
    </message>
    <message>
        <source>Of the layer.</source>
        <translation>Der Lage.</translation>
    </message>
    <message>
        <source>0 follows the layer below, less the inset.</source>
        <translation>0 folgt der Lage darunter, abzüglich des Randes.</translation>
    </message>
    <message>
        <source>How much of the layer below is seen all round.</source>
        <translation>Wie viel von der Lage darunter ringsum zu sehen ist.</translation>
    </message>
    <message>
        <source>To the right of the middle; less than 0 to the left.</source>
        <translation>Rechts der Mitte; unter 0 links davon.</translation>
    </message>
    <message>
        <source>Above the middle; less than 0 below it.</source>
        <translation>Über der Mitte; unter 0 darunter.</translation>
    </message>
    <message>
        <source>Blank to stamp</source>
        <translation>Zum Bestempeln</translation>
    </message>
    <message>
        <source>Left empty, its words are stamped on.</source>
        <translation>Bleibt leer; die Worte werden aufgestempelt.</translation>
    </message>
    <message>
        <source>Off: once round the short way, or along the band under it.</source>
        <translation>Aus: einmal herum auf dem kurzen Weg oder entlang der Banderole darunter.</translation>
    </message>
    <message>
        <source>Full band</source>
        <translation>Volle Banderole</translation>
    </message>
    <message>
        <source>As wide as the box is long.</source>
        <translation>So breit, wie die Schachtel lang ist.</translation>
    </message>
    <message>
        <source>Ease for sliding</source>
        <translation>Luft zum Schieben</translation>
    </message>
    <message>
        <source>Each way round the box; 0 takes the design&apos;s.</source>
        <translation>In jeder Richtung um die Schachtel; 0 nimmt die des Entwurfs.</translation>
    </message>
    <message>
        <source>Font</source>
        <translation>Schrift</translation>
    </message>
    <message>
        <source>Of its words. A hand is taken from the computer, where it has one.</source>
        <translation>Der Worte. Eine Handschrift kommt vom Computer, wenn er eine hat.</translation>
    </message>
    <message>
        <source>Alignment</source>
        <translation>Ausrichtung</translation>
    </message>
    <message>
        <source>Of straight lines of words.</source>
        <translation>Gerader Zeilen.</translation>
    </message>
    <message>
        <source>Centred</source>
        <translation>Mittig</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>Words along a circle inside the rim. Round: the first line above, the last one below.</source>
        <translation>Worte auf einem Kreis innen am Rand. Rund: die erste Zeile oben, die letzte unten.</translation>
    </message>
    <message>
        <source>Upper arc</source>
        <translation>Oberer Bogen</translation>
    </message>
    <message>
        <source>Lower arc</source>
        <translation>Unterer Bogen</translation>
    </message>
    <message>
        <source>Type size</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>In points; 0 takes what fits.</source>
        <translation>In Punkt; 0 nimmt, was passt.</translation>
    </message>
    <message>
        <source>Plain</source>
        <translation>Schlicht</translation>
    </message>
    <message>
        <source>Serif</source>
        <translation>Mit Serifen</translation>
    </message>
    <message>
        <source>Typewriter</source>
        <translation>Schreibmaschine</translation>
    </message>
    <message>
        <source>Slanted</source>
        <translation>Schräg</translation>
    </message>
    <message>
        <source>Hand</source>
        <translation>Handschrift</translation>
    </message>
    <message>
        <source>Partition</source>
        <translation>Fächereinsatz</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Of the product, one in each cell.</source>
        <translation>Des Inhalts, eines in jedem Fach.</translation>
    </message>
    <message>
        <source>As the product</source>
        <translation>Wie der Inhalt</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Quader</translation>
    </message>
    <message>
        <source>Cylinders</source>
        <translation>Zylinder</translation>
    </message>
    <message>
        <source>Balls</source>
        <translation>Kugeln</translation>
    </message>
    <message>
        <source>Size of a piece</source>
        <translation>Größe eines Stücks</translation>
    </message>
    <message>
        <source>Across; 0 fills its cell.</source>
        <translation>Durchmesser; 0 füllt das Fach.</translation>
    </message>
    <message>
        <source>Holes</source>
        <translation>Löcher</translation>
    </message>
    <message>
        <source>One or two; 0 takes a hole that is there, or punches two.</source>
        <translation>Eines oder zwei; 0 nimmt ein vorhandenes Loch oder stanzt zwei.</translation>
    </message>
    <message>
        <source>Across each hole; the ribbon is gathered to go through.</source>
        <translation>Durchmesser jedes Lochs; das Band geht gerafft hindurch.</translation>
    </message>
    <message>
        <source>Between two holes, from middle to middle.</source>
        <translation>Zwischen zwei Löchern, von Mitte zu Mitte.</translation>
    </message>
    <message>
        <source>Stands out</source>
        <translation>Steht vor</translation>
    </message>
    <message>
        <source>How far the loop reaches when it is pulled.</source>
        <translation>Wie weit die Schlaufe reicht, wenn daran gezogen wird.</translation>
    </message>
    <message>
        <source>How they are held inside.</source>
        <translation>Wie sie innen gehalten werden.</translation>
    </message>
    <message>
        <source>Knotted</source>
        <translation>Geknotet</translation>
    </message>
    <message>
        <source>Stuck flat with tape</source>
        <translation>Mit Klebeband flach festgeklebt</translation>
    </message>
    <message>
        <source>Length of each end</source>
        <translation>Länge jedes Endes</translation>
    </message>
    <message>
        <source>Inside; 0 takes what a knot or a strip of tape needs.</source>
        <translation>Innen; 0 nimmt, was ein Knoten oder ein Stück Klebeband braucht.</translation>
    </message>
    <message>
        <source>Ribbon pull</source>
        <translation>Zugband</translation>
    </message>
    <message>
        <source>A short loop of ribbon through holes of a face, such as the front of a drawer.</source>
        <translation>Eine kurze Bandschlaufe durch Löcher einer Fläche, etwa der Stirn einer Schublade.</translation>
    </message>
    <message>
        <source>Slotted dividers that part the box, a piece of the product in each cell.</source>
        <translation>Geschlitzte Trennwände, die die Schachtel teilen; in jedem Fach liegt ein Stück des Inhalts.</translation>
    </message>
    <message>
        <source>Of the dividers; 0 takes three quarters of the product.</source>
        <translation>Der Trennwände; 0 nimmt drei Viertel des Inhalts.</translation>
    </message>
    <message>
        <source>Across, share</source>
        <translation>Quer, Anteil</translation>
    </message>
    <message>
        <source>Percent of the width of the face, besides; less than 0 to the left.</source>
        <translation>Dazu so viel Prozent der Breite der Fläche; weniger als 0 nach links.</translation>
    </message>
    <message>
        <source>Up, share</source>
        <translation>Hoch, Anteil</translation>
    </message>
    <message>
        <source>Percent of the height of the face, besides; less than 0 downwards.</source>
        <translation>Dazu so viel Prozent der Höhe der Fläche; weniger als 0 nach unten.</translation>
    </message>
    <message>
        <source>To be written on the face that becomes the outside.</source>
        <translation>Auf die Seite zu schreiben, die außen liegt.</translation>
    </message>
    <message>
        <source>A line of words on a panel, on the face that becomes the outside.</source>
        <translation>Eine Zeile auf einer Fläche, auf der Seite, die außen liegt.</translation>
    </message>
    <message>
        <source>Photo mats</source>
        <translation>Fotopapiere</translation>
    </message>
    <message>
        <source>A layer on the inside of every wall and of the floor, or of one, for photos and messages.</source>
        <translation>Eine Lage innen auf jeder Wand und dem Boden oder auf einer Fläche, für Fotos und Grüße.</translation>
    </message>
    <message>
        <source>From tip to tip of its largest loops; 0 takes what fits.</source>
        <translation>Von Spitze zu Spitze der größten Schlaufen; 0 nimmt, was passt.</translation>
    </message>
    <message>
        <source>Hangs by a punched hole, on a ribbon or a string of its own.</source>
        <translation>Hängt an einem gestanzten Loch, an einem Band oder an einer eigenen Schnur.</translation>
    </message>
</context>
</TS>
