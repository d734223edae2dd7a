<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>creasewright::GuideWindow</name>
    <message numerus="yes">
        <location filename="../app/guide/guide_window.cpp" line="99"/>
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
        <location filename="../app/printing/print_dialog.cpp" line="129"/>
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
        <location filename="../app/shelf/shelf_window.cpp" line="112"/>
        <source>%n design(s)</source>
        <translation>
            <numerusform>%n design</numerusform>
            <numerusform>%n designs</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/shelf/shelf_window.cpp" line="115"/>
        <source>%n file(s) that cannot be read</source>
        <translation>
            <numerusform>%n file that cannot be read</numerusform>
            <numerusform>%n files that cannot be read</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>guide</name>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="40"/>
        <source>Cut out %n opening(s) while the sheet is still whole and firm.</source>
        <translation>
            <numerusform>Cut out %n opening while the sheet is still whole and firm.</numerusform>
            <numerusform>Cut out %n openings while the sheet is still whole and firm.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="43"/>
        <source>Cut %n slit(s); nothing falls out.</source>
        <translation>
            <numerusform>Cut %n slit; nothing falls out.</numerusform>
            <numerusform>Cut %n slits; nothing falls out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="45"/>
        <source>Make %n slanting cut(s), each from the end of one score to the next.</source>
        <translation>
            <numerusform>Make %n slanting cut, each from the end of one score to the next.</numerusform>
            <numerusform>Make %n slanting cuts, each from the end of one score to the next.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="48"/>
        <source>Make %n slanting cut(s), so that the flaps go in easily.</source>
        <translation>
            <numerusform>Make %n slanting cut, so that the flaps go in easily.</numerusform>
            <numerusform>Make %n slanting cuts, so that the flaps go in easily.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="50"/>
        <source>Cut off %n small corner(s).</source>
        <translation>
            <numerusform>Cut off %n small corner.</numerusform>
            <numerusform>Cut off %n small corners.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="52"/>
        <source>Make %n curved cut(s); trace them from the template.</source>
        <translation>
            <numerusform>Make %n curved cut; trace it from the template.</numerusform>
            <numerusform>Make %n curved cuts; trace them from the template.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="54"/>
        <source>Make %n straight cut(s).</source>
        <translation>
            <numerusform>Make %n straight cut.</numerusform>
            <numerusform>Make %n straight cuts.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="61"/>
        <source>Cut in from the left edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Cut in from the left edge up to score line %1, %n time.</numerusform>
            <numerusform>Cut in from the left edge up to score line %1, %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="64"/>
        <source>Cut in from the right edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Cut in from the right edge up to score line %1, %n time.</numerusform>
            <numerusform>Cut in from the right edge up to score line %1, %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="67"/>
        <source>Cut in from the bottom edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Cut in from the bottom edge up to score line %1, %n time.</numerusform>
            <numerusform>Cut in from the bottom edge up to score line %1, %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="70"/>
        <source>Cut in from the top edge up to score line %1, %n time(s).</source>
        <translation>
            <numerusform>Cut in from the top edge up to score line %1, %n time.</numerusform>
            <numerusform>Cut in from the top edge up to score line %1, %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="107"/>
        <source>Take away the %n piece(s) %1 to %2.</source>
        <translation>
            <numerusform>Take away the %n piece %1 to %2.</numerusform>
            <numerusform>Take away the %n pieces %1 to %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/guide_words.cpp" line="33"/>
        <source>%n sheet(s) of card, %1</source>
        <translation>
            <numerusform>%n sheet of card, %1</numerusform>
            <numerusform>%n sheets of card, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/guide_words.cpp" line="36"/>
        <source>%n sheet(s) of card, %1, for the piece “%2”</source>
        <translation>
            <numerusform>%n sheet of card, %1, for the piece “%2”</numerusform>
            <numerusform>%n sheets of card, %1, for the piece “%2”</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/guide_words.cpp" line="40"/>
        <source>Double-sided tape %1 wide: %n strip(s), %2 in all</source>
        <translation>
            <numerusform>Double-sided tape %1 wide: %n strip, %2 in all</numerusform>
            <numerusform>Double-sided tape %1 wide: %n strips, %2 in all</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/guide_words.cpp" line="43"/>
        <source>Liquid glue for %n place(s)</source>
        <translation>
            <numerusform>Liquid glue for %n place</numerusform>
            <numerusform>Liquid glue for %n places</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/guide_words.cpp" line="131"/>
        <source>about %n minute(s)</source>
        <translation>
            <numerusform>about %n minute</numerusform>
            <numerusform>about %n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/step_words.cpp" line="36"/>
        <source>Trim %n sheet(s) of card to %1.</source>
        <translation>
            <numerusform>Trim %n sheet of card to %1.</numerusform>
            <numerusform>Trim %n sheets of card to %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/step_words.cpp" line="74"/>
        <source>Fold %n line(s) towards you (dashed) and back again.</source>
        <translation>
            <numerusform>Fold %n line towards you (dashed) and back again.</numerusform>
            <numerusform>Fold %n lines towards you (dashed) and back again.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/step_words.cpp" line="77"/>
        <source>Fold %n line(s) away from you (dashes and dots) and back again.</source>
        <translation>
            <numerusform>Fold %n line away from you (dashes and dots) and back again.</numerusform>
            <numerusform>Fold %n lines away from you (dashes and dots) and back again.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/step_words.cpp" line="101"/>
        <source>Keep liquid glue ready for %n place(s): %1.</source>
        <translation>
            <numerusform>Keep liquid glue ready for %n place: %1.</numerusform>
            <numerusform>Keep liquid glue ready for %n places: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/step_words.cpp" line="102"/>
        <source>Stick %n strip(s) of %1 tape on: %2. Leave the liner on.</source>
        <translation>
            <numerusform>Stick %n strip of %1 tape on: %2. Leave the liner on.</numerusform>
            <numerusform>Stick %n strips of %1 tape on: %2. Leave the liner on.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/step_words.cpp" line="156"/>
        <source>%n piece(s) have come off.</source>
        <translation>
            <numerusform>%n piece has come off.</numerusform>
            <numerusform>%n pieces have come off.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/panel_list.cpp" line="42"/>
        <source>“%1” (all %n)</source>
        <translation>
            <numerusform>“%1” (all %n)</numerusform>
            <numerusform>“%1” (all %n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/fold_words.cpp" line="76"/>
        <source>%n more line(s) fold along by themselves.</source>
        <translation>
            <numerusform>%n more line folds along by itself.</numerusform>
            <numerusform>%n more lines fold along by themselves.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/guide_words.cpp" line="62"/>
        <source>(a roll of 25 yd does for %n)</source>
        <translation>
            <numerusform>(a roll of 25 yd does for %n)</numerusform>
            <numerusform>(a roll of 25 yd does for %n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/step_words.cpp" line="215"/>
        <source>All %n flap(s) lie flat where they belong.</source>
        <translation>
            <numerusform>The %n flap lies flat where it belongs.</numerusform>
            <numerusform>All %n flaps lie flat where they belong.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/fold_words.cpp" line="72"/>
        <source>Fold %n line(s) as the arrows show: %1.</source>
        <translation>
            <numerusform>Fold %n line as the arrow shows: %1.</numerusform>
            <numerusform>Fold %n lines as the arrows show: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/cut_words.cpp" line="98"/>
        <source>The other %n cut(s) run as the figure shows.</source>
        <translation>
            <numerusform>The other %n cut runs as the figure shows.</numerusform>
            <numerusform>The other %n cuts run as the figure shows.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/score_words.cpp" line="50"/>
        <source>Trace %n curved line(s) from the template with a stylus.</source>
        <translation>
            <numerusform>Trace %n curved line from the template with a stylus.</numerusform>
            <numerusform>Trace %n curved lines from the template with a stylus.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/score_words.cpp" line="45"/>
        <source>Trace %n slanting line(s) from the template with a stylus.</source>
        <translation>
            <numerusform>Trace %n slanting line from the template with a stylus.</numerusform>
            <numerusform>Trace %n slanting lines from the template with a stylus.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/guide_words.cpp" line="16"/>
        <source>%n sheet(s) of %1, %2, for the piece “%3”</source>
        <translation>
            <numerusform>%n sheet of %1, %2, for the piece “%3”</numerusform>
            <numerusform>%n sheets of %1, %2, for the piece “%3”</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/step_words.cpp" line="38"/>
        <source>Trim %n sheet(s) of %1 to %2.</source>
        <translation>
            <numerusform>Trim %n sheet of %1 to %2.</numerusform>
            <numerusform>Trim %n sheets of %1 to %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/extra_words.cpp" line="26"/>
        <source>“%1”: %n piece(s), onto %2.</source>
        <translation>
            <numerusform>“%1”: %n piece, onto %2.</numerusform>
            <numerusform>“%1”: %n pieces, onto %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/guide_words.cpp" line="60"/>
        <source>(a roll of 25 m does for %n)</source>
        <translation>
            <numerusform>(a roll of 25 m does for %n)</numerusform>
            <numerusform>(a roll of 25 m does for %n)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/guide/fold_words.cpp" line="71"/>
        <source>Open %n line(s) as the arrows show: %1.</source>
        <translation>
            <numerusform>Open %n line as the arrow shows: %1.</numerusform>
            <numerusform>Open %n lines as the arrows show: %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>kits</name>
    <message numerus="yes">
        <location filename="../app/kits/shopping_words.cpp" line="47"/>
        <source>Liquid glue for %n place(s)</source>
        <translation>
            <numerusform>Liquid glue for %n place</numerusform>
            <numerusform>Liquid glue for %n places</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="95"/>
        <source>For %n people</source>
        <translation>
            <numerusform>For %n person</numerusform>
            <numerusform>For %n people</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="97"/>
        <source>%1, and %n spare set(s)</source>
        <translation>
            <numerusform>%1, and %n spare set</numerusform>
            <numerusform>%1, and %n spare sets</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="114"/>
        <source>%n sheet(s), proven: fewer cannot do.</source>
        <translation>
            <numerusform>%n sheet, proven: fewer cannot do.</numerusform>
            <numerusform>%n sheets, proven: fewer cannot do.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="115"/>
        <source>%n sheet(s); at least %1 are needed.</source>
        <translation>
            <numerusform>%n sheet; at least %1 is needed.</numerusform>
            <numerusform>%n sheets; at least %1 are needed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="132"/>
        <source>One more person would take %n sheet(s) more.</source>
        <translation>
            <numerusform>One more person would take %n sheet more.</numerusform>
            <numerusform>One more person would take %n sheets more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/shopping_words.cpp" line="32"/>
        <source>%n sheet(s) of %1, %2 (%3)</source>
        <translation>
            <numerusform>%n sheet of %1, %2 (%3)</numerusform>
            <numerusform>%n sheets of %1, %2 (%3)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="163"/>
        <source>%n blank(s) %1: %2, %3</source>
        <translation>
            <numerusform>%n blank %1: %2, %3</numerusform>
            <numerusform>%n blanks %1: %2, %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="207"/>
        <source>Layout %1: cut %n sheet(s) of %2 alike</source>
        <translation>
            <numerusform>Layout %1: cut %n sheet of %2</numerusform>
            <numerusform>Layout %1: cut %n sheets of %2 alike</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="143"/>
        <location filename="../app/kits/kit_words.cpp" line="214"/>
        <source>%n of %1: %2</source>
        <translation>
            <numerusform>%n of %1: %2</numerusform>
            <numerusform>%n of %1: %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="109"/>
        <source>%n sheet(s) at the least price, proven: cheaper cannot do.</source>
        <translation>
            <numerusform>%n sheet at the least price, proven: cheaper cannot do.</numerusform>
            <numerusform>%n sheets at the least price, proven: cheaper cannot do.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="111"/>
        <source>%n sheet(s); a cheaper choice is not ruled out.</source>
        <translation>
            <numerusform>%n sheet; a cheaper choice is not ruled out.</numerusform>
            <numerusform>%n sheets; a cheaper choice is not ruled out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/shopping_words.cpp" line="41"/>
        <source>Double-sided tape %1 wide: %2 in %n strip(s)</source>
        <translation>
            <numerusform>Double-sided tape %1 wide: %2 in %n strip</numerusform>
            <numerusform>Double-sided tape %1 wide: %2 in %n strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/shopping_words.cpp" line="44"/>
        <source>Ribbon %1 wide: %2 in %n piece(s)</source>
        <translation>
            <numerusform>Ribbon %1 wide: %2 in %n piece</numerusform>
            <numerusform>Ribbon %1 wide: %2 in %n pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/shopping_words.cpp" line="61"/>
        <source>%n pack(s) of %1</source>
        <translation>
            <numerusform>%n pack of %1</numerusform>
            <numerusform>%n packs of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/shopping_words.cpp" line="68"/>
        <source>%n at hand</source>
        <translation>
            <numerusform>%n at hand</numerusform>
            <numerusform>%n at hand</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/shopping_words.cpp" line="69"/>
        <source>%n to buy</source>
        <translation>
            <numerusform>%n to buy</numerusform>
            <numerusform>%n to buy</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/bag_labels.cpp" line="60"/>
        <source>%n blank(s), see the packing list</source>
        <translation>
            <numerusform>%n blank, see the packing list</numerusform>
            <numerusform>%n blanks, see the packing list</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/teacher_words.cpp" line="33"/>
        <source>The day before: cut the sheets as the layouts show, about %n minute(s).</source>
        <translation>
            <numerusform>The day before: cut the sheets as the layouts show, about %n minute.</numerusform>
            <numerusform>The day before: cut the sheets as the layouts show, about %n minutes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/teacher_words.cpp" line="36"/>
        <source>Pack %n bag(s) by the list above and put a label on each.</source>
        <translation>
            <numerusform>Pack %n bag by the list above and put a label on each.</numerusform>
            <numerusform>Pack %n bags by the list above and put a label on each.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/teacher_words.cpp" line="42"/>
        <source>Print %n copy(ies) of the guide “%1”, one of the template.</source>
        <translation>
            <numerusform>Print %n copy of the guide “%1”, one of the template.</numerusform>
            <numerusform>Print %n copies of the guide “%1”, one of the template.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/teacher_words.cpp" line="53"/>
        <source>%1 “%2”: %n minute(s), step by step from the guide.</source>
        <translation>
            <numerusform>%1 “%2”: %n minute, step by step from the guide.</numerusform>
            <numerusform>%1 “%2”: %n minutes, step by step from the guide.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="56"/>
        <source>Take %n strip(s) from cut %1, turned.</source>
        <translation>
            <numerusform>Take %n strip from cut %1, turned.</numerusform>
            <numerusform>Take %n strips from cut %1, turned.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="65"/>
        <source>Set %1, cut %n times</source>
        <translation>
            <numerusform>Set %1, cut %n times</numerusform>
            <numerusform>Set %1, cut %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="66"/>
        <source>Set %1, cut each %n times</source>
        <translation>
            <numerusform>Set %1, cut each %n times</numerusform>
            <numerusform>Set %1, cut each %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="72"/>
        <source>%n strip(s)</source>
        <translation>
            <numerusform>%n strip</numerusform>
            <numerusform>%n strips</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="222"/>
        <source>%n offcut(s) of %1</source>
        <translation>
            <numerusform>%n offcut of %1</numerusform>
            <numerusform>%n offcuts of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="197"/>
        <source>%1 for “%2”: all %n piece(s) come out of the offcuts of %3</source>
        <translation>
            <numerusform>%1 for “%2”: all %n piece come out of the offcuts of %3</numerusform>
            <numerusform>%1 for “%2”: all %n pieces come out of the offcuts of %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/kit_words.cpp" line="133"/>
        <source>One more person would take at most %n sheet(s) more.</source>
        <translation>
            <numerusform>One more person would take at most %n sheet more.</numerusform>
            <numerusform>One more person would take at most %n sheets more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <location filename="../app/kits/machine_files.cpp" line="21"/>
        <source>%1, carrier %2: cut %n sheet(s)</source>
        <translation>
            <numerusform>%1, carrier %2: cut %n sheet</numerusform>
            <numerusform>%1, carrier %2: cut %n sheets</numerusform>
        </translation>
    </message>
</context>
</TS>
