<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
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
</TS>
