<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
    <context>
        <name>cutwater::editor::FileDesk</name>
        <message numerus="yes">
            <source>%1 has %n error(s): until they are mended, nothing can be computed.</source>
            <translation>
                <numerusform>%1 has %n error: until it is mended, nothing can be computed.</numerusform>
                <numerusform>%1 has %n errors: until they are mended, nothing can be computed.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>And %n more.</source>
            <translation>
                <numerusform>And %n more.</numerusform>
                <numerusform>And %n more.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::GridModel</name>
        <message numerus="yes">
            <source>%1: %n rows</source>
            <translation>
                <numerusform>%1: %n row</numerusform>
                <numerusform>%1: %n rows</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::Incoming</name>
        <message numerus="yes">
            <source>%n top event(s)</source>
            <translation>
                <numerusform>%n top event</numerusform>
                <numerusform>%n top events</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n gate(s)</source>
            <translation>
                <numerusform>%n gate</numerusform>
                <numerusform>%n gates</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n event(s)</source>
            <translation>
                <numerusform>%n event</numerusform>
                <numerusform>%n events</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n component(s)</source>
            <translation>
                <numerusform>%n component</numerusform>
                <numerusform>%n components</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n failure mode(s)</source>
            <translation>
                <numerusform>%n failure mode</numerusform>
                <numerusform>%n failure modes</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n log entry(ies)</source>
            <translation>
                <numerusform>%n log entry</numerusform>
                <numerusform>%n log entries</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n new top event(s)</source>
            <translation>
                <numerusform>%n new top event</numerusform>
                <numerusform>%n new top events</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n new gate(s)</source>
            <translation>
                <numerusform>%n new gate</numerusform>
                <numerusform>%n new gates</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n new event(s)</source>
            <translation>
                <numerusform>%n new event</numerusform>
                <numerusform>%n new events</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n new component(s)</source>
            <translation>
                <numerusform>%n new component</numerusform>
                <numerusform>%n new components</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n new failure mode(s)</source>
            <translation>
                <numerusform>%n new failure mode</numerusform>
                <numerusform>%n new failure modes</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n failure mode(s) changed</source>
            <translation>
                <numerusform>%n failure mode changed</numerusform>
                <numerusform>%n failure modes changed</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ProblemsDock</name>
        <message numerus="yes">
            <source>%n warning(s)</source>
            <translation>
                <numerusform>%n warning</numerusform>
                <numerusform>%n warnings</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n error(s)</source>
            <translation>
                <numerusform>%n error</numerusform>
                <numerusform>%n errors</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SheetExportDialog</name>
        <message numerus="yes">
            <source>&amp;Everything: %n rows, all columns</source>
            <translation>
                <numerusform>&amp;Everything: %n row, all columns</numerusform>
                <numerusform>&amp;Everything: %n rows, all columns</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::TableImportDialog</name>
        <message numerus="yes">
            <source>%n rows can be taken.</source>
            <translation>
                <numerusform>%n row can be taken.</numerusform>
                <numerusform>%n rows can be taken.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n components are made.</source>
            <translation>
                <numerusform>%n component is made.</numerusform>
                <numerusform>%n components are made.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>! %n rows cannot: they stand first, with the reason.</source>
            <translation>
                <numerusform>! %n row cannot: it stands first, with the reason.</numerusform>
                <numerusform>! %n rows cannot: they stand first, with the reason.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::WorksheetPage</name>
        <message numerus="yes">
            <source>%n cells</source>
            <translation>
                <numerusform>%n cell</numerusform>
                <numerusform>%n cells</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n cells changed.</source>
            <translation>
                <numerusform>%n cell changed.</numerusform>
                <numerusform>%n cells changed.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n cells were not taken:</source>
            <translation>
                <numerusform>%n cell was not taken:</numerusform>
                <numerusform>%n cells were not taken:</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n cells copied.</source>
            <translation>
                <numerusform>%n cell copied.</numerusform>
                <numerusform>%n cells copied.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Remove %n rows?</source>
            <translation>
                <numerusform>Remove %n row?</numerusform>
                <numerusform>Remove %n rows?</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n of them are used in the trees %1. Their events stay there, with name and figures, but without a row.</source>
            <translation>
                <numerusform>%n of them is used in the trees %1. Its event stays there, with name and figures, but without a row.</numerusform>
                <numerusform>%n of them are used in the trees %1. Their events stay there, with name and figures, but without a row.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n rows</source>
            <translation>
                <numerusform>%n row</numerusform>
                <numerusform>%n rows</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>! %1 There are %n more cautions.</source>
            <translation>
                <numerusform>! %1 There is %n more caution.</numerusform>
                <numerusform>! %1 There are %n more cautions.</numerusform>
            </translation>
        </message>
    </context>
</TS>
