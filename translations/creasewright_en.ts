<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>SelectTool</name>
    <message numerus="yes">
        <source>%n fold(s) at one setting</source>
        <translation>
            <numerusform>%n fold at one setting</numerusform>
            <numerusform>%n folds at one setting</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cli</name>
    <message numerus="yes">
        <source>kept %n time(s) from %1, with %2 changes by hand</source>
        <translation>
            <numerusform>kept once from %1, with %2 changes by hand</numerusform>
            <numerusform>kept %n times from %1, with %2 changes by hand</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n colour(s)</source>
        <translation>
            <numerusform>%n colour</numerusform>
            <numerusform>%n colours</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creasewright::GalleryView</name>
    <message numerus="yes">
        <source>The design keeps its %n photo(s), which may show the box before: look through them with “Photos…” in the guide.</source>
        <translation>
            <numerusform>The design keeps its %n photo, which may show the box before: see it with “Photos…” in the guide.</numerusform>
            <numerusform>The design keeps its %n photos, which may show the box before: look through them with “Photos…” in the guide.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creasewright::GuideWindow</name>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n page</numerusform>
            <numerusform>%n pages</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creasewright::KitPreview</name>
    <message numerus="yes">
        <source>%n sheet(s); looking for a better plan …</source>
        <translation>
            <numerusform>%n sheet; looking for a better plan …</numerusform>
            <numerusform>%n sheets; looking for a better plan …</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creasewright::PrintDialog</name>
    <message numerus="yes">
        <source>%n page(s) in true size. Print without scaling, then measure the check bars.</source>
        <translation>
            <numerusform>%n page in true size. Print without scaling, then measure the check bars.</numerusform>
            <numerusform>%n pages in true size. Print without scaling, then measure the check bars.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creasewright::ShelfWindow</name>
    <message numerus="yes">
        <source>%n design(s)</source>
        <translation>
            <numerusform>%n design</numerusform>
            <numerusform>%n designs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) that cannot be read</source>
        <translation>
            <numerusform>%n file that cannot be read</numerusform>
            <numerusform>%n files that cannot be read</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>creasewright::StylePanel</name>
    <message numerus="yes">
        <source>Your own, made from %1 with %n change(s) by hand.</source>
        <translation>
            <numerusform>Your own, made from %1 with one change by hand.</numerusform>
            <numerusform>Your own, made from %1 with %n changes by hand.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>guide</name>
    <message numerus="yes">
        <source>Cut out %n opening(s) while the sheet is still whole and firm.</source>
        <translation>
            <numerusform>Cut out %n opening while the sheet is still whole and firm.</numerusform>
            <numerusform>Cut out %n openings while the sheet is still whole and firm.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut %n slit(s); nothing falls out.</source>
        <translation>
            <numerusform>Cut %n slit; nothing falls out.</numerusform>
            <numerusform>Cut %n slits; nothing falls out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Make %n slanting cut(s), each from the end of one score to the next.</source>
        <translation>
            <numerusform>Make %n slanting cut, each from the end of one score to the next.</numerusform>
            <numerusform>Make %n slanting cuts, each from the end of one score to the next.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Make %n slanting cut(s), so that the flaps go in easily.</source>
        <translation>
            <numerusform>Make %n slanting cut, so that the flaps go in easily.</numerusform>
            <numerusform>Make %n slanting cuts, so that the flaps go in easily.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut off %n small corner(s).</source>
        <translation>
            <numerusform>Cut off %n small corner.</numerusform>
            <numerusform>Cut off %n small corners.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Make %n curved cut(s); trace them from the template.</source>
        <translation>
            <numerusform>Make %n curved cut; trace it from the template.</numerusform>
            <numerusform>Make %n curved cuts; trace them from the template.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Make %n straight cut(s).</source>
        <translation>
            <numerusform>Make %n straight cut.</numerusform>
            <numerusform>Make %n straight cuts.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut in from the left edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Cut in from the left edge up to score line %1, %n time.</numerusform>
            <numerusform>Cut in from the left edge up to score line %1, %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut in from the right edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Cut in from the right edge up to score line %1, %n time.</numerusform>
            <numerusform>Cut in from the right edge up to score line %1, %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut in from the bottom edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Cut in from the bottom edge up to score line %1, %n time.</numerusform>
            <numerusform>Cut in from the bottom edge up to score line %1, %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cut in from the top edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Cut in from the top edge up to score line %1, %n time.</numerusform>
            <numerusform>Cut in from the top edge up to score line %1, %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Take away the %n piece(s) %1 to %2.</source>
        <translation>
            <numerusform>Take away the %n piece %1 to %2.</numerusform>
            <numerusform>Take away the %n pieces %1 to %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of card, %1</source>
        <translation>
            <numerusform>%n sheet of card, %1</numerusform>
            <numerusform>%n sheets of card, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of card, %1, for the piece “%2”</source>
        <translation>
            <numerusform>%n sheet of card, %1, for the piece “%2”</numerusform>
            <numerusform>%n sheets of card, %1, for the piece “%2”</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Double-sided tape %1 wide: %n strip(s), %2 in all</source>
        <translation>
            <numerusform>Double-sided tape %1 wide: %n strip, %2 in all</numerusform>
            <numerusform>Double-sided tape %1 wide: %n strips, %2 in all</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Liquid glue for %n place(s)</source>
        <translation>
            <numerusform>Liquid glue for %n place</numerusform>
            <numerusform>Liquid glue for %n places</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>about %n minute(s)</source>
        <translation>
            <numerusform>about %n minute</numerusform>
            <numerusform>about %n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Trim %n sheet(s) of card to %1.</source>
        <translation>
            <numerusform>Trim %n sheet of card to %1.</numerusform>
            <numerusform>Trim %n sheets of card to %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Fold %n line(s) towards you (dashed) and back again.</source>
        <translation>
            <numerusform>Fold %n line towards you (dashed) and back again.</numerusform>
            <numerusform>Fold %n lines towards you (dashed) and back again.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Fold %n line(s) away from you (dashes and dots) and back again.</source>
        <translation>
            <numerusform>Fold %n line away from you (dashes and dots) and back again.</numerusform>
            <numerusform>Fold %n lines away from you (dashes and dots) and back again.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Keep liquid glue ready for %n place(s): %1.</source>
        <translation>
            <numerusform>Keep liquid glue ready for %n place: %1.</numerusform>
            <numerusform>Keep liquid glue ready for %n places: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stick %n strip(s) of %1 tape on: %2. Leave the liner on.</source>
        <translation>
            <numerusform>Stick %n strip of %1 tape on: %2. Leave the liner on.</numerusform>
            <numerusform>Stick %n strips of %1 tape on: %2. Leave the liner on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) have come off.</source>
        <translation>
            <numerusform>%n piece has come off.</numerusform>
            <numerusform>%n pieces have come off.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>“%1” (all %n)</source>
        <translation>
            <numerusform>“%1” (all %n)</numerusform>
            <numerusform>“%1” (all %n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more line(s) fold along by themselves.</source>
        <translation>
            <numerusform>%n more line folds along by itself.</numerusform>
            <numerusform>%n more lines fold along by themselves.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>(a roll of 25 yd does for %n)</source>
        <translation>
            <numerusform>(a roll of 25 yd does for %n)</numerusform>
            <numerusform>(a roll of 25 yd does for %n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Fold %n line(s) as the arrows show: %1.</source>
        <translation>
            <numerusform>Fold %n line as the arrow shows: %1.</numerusform>
            <numerusform>Fold %n lines as the arrows show: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The other %n cut(s) run as the figure shows.</source>
        <translation>
            <numerusform>The other %n cut runs as the figure shows.</numerusform>
            <numerusform>The other %n cuts run as the figure shows.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Trace %n curved line(s) from the template with a stylus.</source>
        <translation>
            <numerusform>Trace %n curved line from the template with a stylus.</numerusform>
            <numerusform>Trace %n curved lines from the template with a stylus.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Trace %n slanting line(s) from the template with a stylus.</source>
        <translation>
            <numerusform>Trace %n slanting line from the template with a stylus.</numerusform>
            <numerusform>Trace %n slanting lines from the template with a stylus.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of %1, %2, for the piece “%3”</source>
        <translation>
            <numerusform>%n sheet of %1, %2, for the piece “%3”</numerusform>
            <numerusform>%n sheets of %1, %2, for the piece “%3”</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Trim %n sheet(s) of %1 to %2.</source>
        <translation>
            <numerusform>Trim %n sheet of %1 to %2.</numerusform>
            <numerusform>Trim %n sheets of %1 to %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>“%1”: %n piece(s), onto %2.</source>
        <translation>
            <numerusform>“%1”: %n piece, onto %2.</numerusform>
            <numerusform>“%1”: %n pieces, onto %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>(a roll of 25 m does for %n)</source>
        <translation>
            <numerusform>(a roll of 25 m does for %n)</numerusform>
            <numerusform>(a roll of 25 m does for %n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Open %n line(s) as the arrows show: %1.</source>
        <translation>
            <numerusform>Open %n line as the arrow shows: %1.</numerusform>
            <numerusform>Open %n lines as the arrows show: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Open %n line(s): %1.</source>
        <translation>
            <numerusform>Open %n line: %1.</numerusform>
            <numerusform>Open %n lines: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Fold %n line(s): %1.</source>
        <translation>
            <numerusform>Fold %n line: %1.</numerusform>
            <numerusform>Fold %n lines: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stick “%1” onto %2 with %n foam dot(s), %3 thick, 3 mm inside its edge.</source>
        <translation>
            <numerusform>Stick “%1” onto %2 with %n foam dot, %3 thick, 3 mm inside its edge.</numerusform>
            <numerusform>Stick “%1” onto %2 with %n foam dots, %3 thick, 3 mm inside its edge.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n foam dot(s), %1 thick</source>
        <translation>
            <numerusform>%n foam dot, %1 thick</numerusform>
            <numerusform>%n foam dots, %1 thick</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n flap(s) lie flat.</source>
        <translation>
            <numerusform>The %n flap lies flat.</numerusform>
            <numerusform>All %n flaps lie flat.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>“%1”: %n piece(s), onto the inside of %2.</source>
        <translation>
            <numerusform>“%1”: %n piece, onto the inside of %2.</numerusform>
            <numerusform>“%1”: %n pieces, onto the inside of %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Make %n slanting cut(s); two meet in each notch.</source>
        <translation>
            <numerusform>Make %n slanting cut; two meet in each notch.</numerusform>
            <numerusform>Make %n slanting cuts; two meet in each notch.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Take away the %n piece(s).</source>
        <translation>
            <numerusform>Take away the %n piece.</numerusform>
            <numerusform>Take away the %n pieces.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>kits</name>
    <message numerus="yes">
        <source>Liquid glue for %n place(s)</source>
        <translation>
            <numerusform>Liquid glue for %n place</numerusform>
            <numerusform>Liquid glue for %n places</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>For %n people</source>
        <translation>
            <numerusform>For %n person</numerusform>
            <numerusform>For %n people</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, and %n spare set(s)</source>
        <translation>
            <numerusform>%1, and %n spare set</numerusform>
            <numerusform>%1, and %n spare sets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s), proven: fewer cannot do.</source>
        <translation>
            <numerusform>%n sheet, proven: fewer cannot do.</numerusform>
            <numerusform>%n sheets, proven: fewer cannot do.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s); at least %1 are needed.</source>
        <translation>
            <numerusform>%n sheet; at least %1 is needed.</numerusform>
            <numerusform>%n sheets; at least %1 are needed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>One more person would take %n sheet(s) more.</source>
        <translation>
            <numerusform>One more person would take %n sheet more.</numerusform>
            <numerusform>One more person would take %n sheets more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of %1, %2 (%3)</source>
        <translation>
            <numerusform>%n sheet of %1, %2 (%3)</numerusform>
            <numerusform>%n sheets of %1, %2 (%3)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n blank(s) %1: %2, %3</source>
        <translation>
            <numerusform>%n blank %1: %2, %3</numerusform>
            <numerusform>%n blanks %1: %2, %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Layout %1: cut %n sheet(s) of %2 alike</source>
        <translation>
            <numerusform>Layout %1: cut %n sheet of %2</numerusform>
            <numerusform>Layout %1: cut %n sheets of %2 alike</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of %1: %2</source>
        <translation>
            <numerusform>%n of %1: %2</numerusform>
            <numerusform>%n of %1: %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) at the least price, proven: cheaper cannot do.</source>
        <translation>
            <numerusform>%n sheet at the least price, proven: cheaper cannot do.</numerusform>
            <numerusform>%n sheets at the least price, proven: cheaper cannot do.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s); a cheaper choice is not ruled out.</source>
        <translation>
            <numerusform>%n sheet; a cheaper choice is not ruled out.</numerusform>
            <numerusform>%n sheets; a cheaper choice is not ruled out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Double-sided tape %1 wide: %2 in %n strip(s)</source>
        <translation>
            <numerusform>Double-sided tape %1 wide: %2 in %n strip</numerusform>
            <numerusform>Double-sided tape %1 wide: %2 in %n strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Ribbon %1 wide: %2 in %n piece(s)</source>
        <translation>
            <numerusform>Ribbon %1 wide: %2 in %n piece</numerusform>
            <numerusform>Ribbon %1 wide: %2 in %n pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pack(s) of %1</source>
        <translation>
            <numerusform>%n pack of %1</numerusform>
            <numerusform>%n packs of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n at hand</source>
        <translation>
            <numerusform>%n at hand</numerusform>
            <numerusform>%n at hand</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to buy</source>
        <translation>
            <numerusform>%n to buy</numerusform>
            <numerusform>%n to buy</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n blank(s), see the packing list</source>
        <translation>
            <numerusform>%n blank, see the packing list</numerusform>
            <numerusform>%n blanks, see the packing list</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The day before: cut the sheets as the layouts show, about %n minute(s).</source>
        <translation>
            <numerusform>The day before: cut the sheets as the layouts show, about %n minute.</numerusform>
            <numerusform>The day before: cut the sheets as the layouts show, about %n minutes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Pack %n bag(s) by the list above and put a label on each.</source>
        <translation>
            <numerusform>Pack %n bag by the list above and put a label on each.</numerusform>
            <numerusform>Pack %n bags by the list above and put a label on each.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Print %n copy(ies) of the guide “%1”, one of the template.</source>
        <translation>
            <numerusform>Print %n copy of the guide “%1”, one of the template.</numerusform>
            <numerusform>Print %n copies of the guide “%1”, one of the template.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 “%2”: %n minute(s), step by step from the guide.</source>
        <translation>
            <numerusform>%1 “%2”: %n minute, step by step from the guide.</numerusform>
            <numerusform>%1 “%2”: %n minutes, step by step from the guide.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Take %n strip(s) from cut %1, turned.</source>
        <translation>
            <numerusform>Take %n strip from cut %1, turned.</numerusform>
            <numerusform>Take %n strips from cut %1, turned.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Set %1, cut %n times</source>
        <translation>
            <numerusform>Set %1, cut %n times</numerusform>
            <numerusform>Set %1, cut %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Set %1, cut each %n times</source>
        <translation>
            <numerusform>Set %1, cut each %n times</numerusform>
            <numerusform>Set %1, cut each %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n strip(s)</source>
        <translation>
            <numerusform>%n strip</numerusform>
            <numerusform>%n strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n offcut(s) of %1</source>
        <translation>
            <numerusform>%n offcut of %1</numerusform>
            <numerusform>%n offcuts of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 for “%2”: all %n piece(s) come out of the offcuts of %3</source>
        <translation>
            <numerusform>%1 for “%2”: all %n piece come out of the offcuts of %3</numerusform>
            <numerusform>%1 for “%2”: all %n pieces come out of the offcuts of %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>One more person would take at most %n sheet(s) more.</source>
        <translation>
            <numerusform>One more person would take at most %n sheet more.</numerusform>
            <numerusform>One more person would take at most %n sheets more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, carrier %2: cut %n sheet(s)</source>
        <translation>
            <numerusform>%1, carrier %2: cut %n sheet</numerusform>
            <numerusform>%1, carrier %2: cut %n sheets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With knife and ruler %1 wide, cut %n times</source>
        <translation>
            <numerusform>With knife and ruler %1 wide, cut %n time</numerusform>
            <numerusform>With knife and ruler %1 wide, cut %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With knife and ruler %1 wide, cut each %n times</source>
        <translation>
            <numerusform>With knife and ruler %1 wide, cut each %n time</numerusform>
            <numerusform>With knife and ruler %1 wide, cut each %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) more than the plan of fewest sheets.</source>
        <translation>
            <numerusform>%n sheet more than the plan of fewest sheets.</numerusform>
            <numerusform>%n sheets more than the plan of fewest sheets.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s)</source>
        <translation>
            <numerusform>%n sheet</numerusform>
            <numerusform>%n sheets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n layout(s)</source>
        <translation>
            <numerusform>%n layout</numerusform>
            <numerusform>%n layouts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n carrier sheet(s); by their area the parts take at least %2.</source>
        <translation>
            <numerusform>%1: %n carrier sheet; by their area the parts take at least %2.</numerusform>
            <numerusform>%1: %n carrier sheets; by their area the parts take at least %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) of work %1</source>
        <translation>
            <numerusform>%n minute of work %1</numerusform>
            <numerusform>%n minutes of work %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>At that price the class pays for itself from %n person(s) on.</source>
        <translation>
            <numerusform>At that price the class pays for itself from %n person on.</numerusform>
            <numerusform>At that price the class pays for itself from %n people on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n scoring board(s) with their tools</source>
        <translation>
            <numerusform>%n scoring board with its tool</numerusform>
            <numerusform>%n scoring boards with their tools</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stylus(es)</source>
        <translation>
            <numerusform>%n stylus</numerusform>
            <numerusform>%n styluses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bone folder(s)</source>
        <translation>
            <numerusform>%n bone folder</numerusform>
            <numerusform>%n bone folders</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) of scissors or craft knives</source>
        <translation>
            <numerusform>%n pair of scissors or craft knife</numerusform>
            <numerusform>%n pairs of scissors or craft knives</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n cutting mat(s)</source>
        <translation>
            <numerusform>%n cutting mat</numerusform>
            <numerusform>%n cutting mats</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n safety ruler(s)</source>
        <translation>
            <numerusform>%n safety ruler</numerusform>
            <numerusform>%n safety rulers</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bottle(s) of glue</source>
        <translation>
            <numerusform>%n bottle of glue</numerusform>
            <numerusform>%n bottles of glue</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>To save paper: one guide for two people, %n copy(ies) of each, printed on both sides.</source>
        <translation>
            <numerusform>To save paper: one guide for two people, %n copy of each, printed on both sides.</numerusform>
            <numerusform>To save paper: one guide for two people, %n copies of each, printed on both sides.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 A break of %n minute(s).</source>
        <translation>
            <numerusform>%1 A break of %n minute.</numerusform>
            <numerusform>%1 A break of %n minutes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With a break of %n minute(s) in its middle.</source>
        <translation>
            <numerusform>With a break of %n minute in its middle.</numerusform>
            <numerusform>With a break of %n minutes in its middle.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n foam dot(s), %1 thick</source>
        <translation>
            <numerusform>%n foam dot, %1 thick</numerusform>
            <numerusform>%n foam dots, %1 thick</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sheet(s) of %1, %2</source>
        <translation>
            <numerusform>%n sheet of %1, %2</numerusform>
            <numerusform>%n sheets of %1, %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Ribbon %1 wide, %3: %2 in %n piece(s)</source>
        <translation>
            <numerusform>Ribbon %1 wide, %3: %2 in %n piece</numerusform>
            <numerusform>Ribbon %1 wide, %3: %2 in %n pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n set(s) of punches (%1)</source>
        <translation>
            <numerusform>%n set of punches (%1)</numerusform>
            <numerusform>%n sets of punches (%1)</numerusform>
        </translation>
    </message>
</context>
</TS>
