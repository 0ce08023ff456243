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
</TS>
