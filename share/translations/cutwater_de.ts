<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>AnalysesPlace</name>
        <message>
            <source>Analyses</source>
            <translation>Analysen</translation>
        </message>
        <message>
            <source>&amp;Analyses</source>
            <translation>&amp;Analysen</translation>
        </message>
        <message>
            <source>Plug-ins...</source>
            <translation>Zusatzmodule ...</translation>
        </message>
    </context>
    <context>
        <name>AnswerLines</name>
        <message>
            <source>Errors in this tree: mend them first</source>
            <translation>Fehler in diesem Baum: zuerst beheben</translation>
        </message>
        <message>
            <source>Warnings</source>
            <translation>Warnungen</translation>
        </message>
        <message>
            <source>Single failures: each alone brings it about (%1)</source>
            <translation>Einzelausfälle: jeder allein führt dazu (%1)</translation>
        </message>
        <message>
            <source>not: %1</source>
            <translation>nicht: %1</translation>
        </message>
        <message>
            <source>single failure: %1</source>
            <translation>Einzelausfall: %1</translation>
        </message>
        <message>
            <source>None: no failure alone brings it about.</source>
            <translation>Keiner: kein Ausfall führt allein dazu.</translation>
        </message>
        <message>
            <source>And %1 more: the analysis Single failures lists them all.</source>
            <translation>Und %1 weitere: die Analyse Einzelausfälle nennt sie alle.</translation>
        </message>
        <message>
            <source>Cut sets by order (%1 in all)</source>
            <translation>Schnitte nach Ordnung (%1 insgesamt)</translation>
        </message>
        <message>
            <source>Always there, whatever the events do</source>
            <translation>Immer da, was auch geschieht</translation>
        </message>
        <message>
            <source>Order 1: %1, the single failures</source>
            <translation>Ordnung 1: %1, die Einzelausfälle</translation>
        </message>
        <message>
            <source>Order %1: %2</source>
            <translation>Ordnung %1: %2</translation>
        </message>
        <message>
            <source>events of all cut sets of order %1</source>
            <translation>Ereignisse aller Schnitte der Ordnung %1</translation>
        </message>
        <message>
            <source>events of the first cut sets of order %1</source>
            <translation>Ereignisse der ersten Schnitte der Ordnung %1</translation>
        </message>
        <message>
            <source>None: it cannot happen in this tree.</source>
            <translation>Keine: in diesem Baum kann es nicht geschehen.</translation>
        </message>
        <message>
            <source>Higher orders are not counted one by one.</source>
            <translation>Höhere Ordnungen sind nicht einzeln gezählt.</translation>
        </message>
        <message>
            <source>The most probable combinations</source>
            <translation>Die wahrscheinlichsten Kombinationen</translation>
        </message>
        <message>
            <source>cut set of order %1: %2</source>
            <translation>Schnitt der Ordnung %1: %2</translation>
        </message>
        <message>
            <source>Errors elsewhere in the project</source>
            <translation>Fehler an anderer Stelle im Projekt</translation>
        </message>
        <message>
            <source>What is assumed, and cautions</source>
            <translation>Annahmen und Vorsichtshinweise</translation>
        </message>
        <message>
            <source>Error</source>
            <translation>Fehler</translation>
        </message>
        <message>
            <source>Warning</source>
            <translation>Warnung</translation>
        </message>
        <message>
            <source>Single failure</source>
            <translation>Einzelausfall</translation>
        </message>
        <message>
            <source>Cut sets</source>
            <translation>Schnitte</translation>
        </message>
        <message>
            <source>Combination</source>
            <translation>Kombination</translation>
        </message>
        <message>
            <source>Remark</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>Assumption</source>
            <translation>Annahme</translation>
        </message>
        <message>
            <source>Caution</source>
            <translation>Vorsicht</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 und %2 weitere</translation>
        </message>
        <message>
            <source>Counted: the plant in its normal state, without an assessment.</source>
            <translation>Gerechnet: die Anlage im Normalzustand, ohne Beurteilung.</translation>
        </message>
        <message>
            <source>Counted: the common causes %1; the plant in its normal state, without an assessment.</source>
            <translation>Gerechnet: die gemeinsamen Ursachen %1; die Anlage im Normalzustand, ohne Beurteilung.</translation>
        </message>
        <message>
            <source>Counted: the common causes %1.</source>
            <translation>Gerechnet: die gemeinsamen Ursachen %1.</translation>
        </message>
        <message>
            <source>%1 (%2; %3)</source>
            <translation>%1 (%2; %3)</translation>
        </message>
    </context>
    <context>
        <name>AnswersDock</name>
        <message>
            <source>Answers</source>
            <translation>Antworten</translation>
        </message>
    </context>
    <context>
        <name>DiagramPage</name>
        <message>
            <source>Diagram</source>
            <translation>Diagramm</translation>
        </message>
    </context>
    <context>
        <name>Edits</name>
        <message>
            <source>Import %1</source>
            <translation>%1 einlesen</translation>
        </message>
        <message>
            <source>Add %1</source>
            <translation>%1 hinzufügen</translation>
        </message>
        <message>
            <source>Change the facts of the project</source>
            <translation>Angaben zum Projekt ändern</translation>
        </message>
        <message>
            <source>Change the failure model of %1</source>
            <translation>Ausfallmodell von %1 ändern</translation>
        </message>
        <message>
            <source>Change the remark of %1</source>
            <translation>Bemerkung zu %1 ändern</translation>
        </message>
        <message>
            <source>Change top event %1</source>
            <translation>Hauptereignis %1 ändern</translation>
        </message>
        <message>
            <source>Delete %1</source>
            <translation>%1 löschen</translation>
        </message>
        <message>
            <source>Dissolve %1</source>
            <translation>%1 auflösen</translation>
        </message>
        <message>
            <source>Make %1 a top event</source>
            <translation>%1 zum Hauptereignis machen</translation>
        </message>
        <message>
            <source>Move %1</source>
            <translation>%1 verschieben</translation>
        </message>
        <message>
            <source>Paste %1</source>
            <translation>%1 einfügen</translation>
        </message>
        <message>
            <source>Put a gate above %1</source>
            <translation>Gatter über %1 setzen</translation>
        </message>
        <message>
            <source>Rename to %1</source>
            <translation>In %1 umbenennen</translation>
        </message>
        <message>
            <source>Separate %1</source>
            <translation>%1 trennen</translation>
        </message>
        <message>
            <source>Use %1 once more</source>
            <translation>%1 nochmals benutzen</translation>
        </message>
        <message>
            <source>Use failure mode %1</source>
            <translation>Ausfallart %1 benutzen</translation>
        </message>
        <message>
            <source>Move %1 down</source>
            <translation>%1 nach unten</translation>
        </message>
        <message>
            <source>Move %1 up</source>
            <translation>%1 nach oben</translation>
        </message>
        <message>
            <source>Give %1 a failure mode</source>
            <translation>%1 eine Ausfallart geben</translation>
        </message>
        <message>
            <source>Take the failure mode from %1</source>
            <translation>%1 die Ausfallart nehmen</translation>
        </message>
        <message>
            <source>Set %1 to false</source>
            <translation>%1 auf falsch setzen</translation>
        </message>
        <message>
            <source>Set %1 to true</source>
            <translation>%1 auf wahr setzen</translation>
        </message>
        <message>
            <source>Make %1 a gate of the kind and</source>
            <translation>%1 zum Gatter der Art UND machen</translation>
        </message>
        <message>
            <source>Make %1 a gate of the kind or</source>
            <translation>%1 zum Gatter der Art ODER machen</translation>
        </message>
        <message>
            <source>Make %1 a gate of the kind vote</source>
            <translation>%1 zum Gatter der Art Auswahl machen</translation>
        </message>
        <message>
            <source>Make %1 a gate of the kind inhibit</source>
            <translation>%1 zum Gatter der Art Sperrgatter machen</translation>
        </message>
        <message>
            <source>Make %1 a gate of the kind xor</source>
            <translation>%1 zum Gatter der Art Exklusiv-ODER machen</translation>
        </message>
        <message>
            <source>Make %1 a gate of the kind not</source>
            <translation>%1 zum Gatter der Art NICHT machen</translation>
        </message>
        <message>
            <source>Make %1 a gate of the kind priority-and</source>
            <translation>%1 zum Gatter der Art Prioritäts-UND machen</translation>
        </message>
        <message>
            <source>Make %1 an event of the kind basic</source>
            <translation>%1 zum Basisereignis machen</translation>
        </message>
        <message>
            <source>Make %1 an event of the kind undeveloped</source>
            <translation>%1 zum nicht weiter untersuchten Ereignis machen</translation>
        </message>
        <message>
            <source>Make %1 an event of the kind house</source>
            <translation>%1 zum Schalter machen</translation>
        </message>
        <message>
            <source>Make %1 an event of the kind conditioning</source>
            <translation>%1 zum Bedingungsereignis machen</translation>
        </message>
        <message>
            <source>Let %1 need 1 of its inputs</source>
            <translation>%1 soll 1 seiner Eingänge brauchen</translation>
        </message>
        <message>
            <source>Let %1 need 2 of its inputs</source>
            <translation>%1 soll 2 seiner Eingänge brauchen</translation>
        </message>
        <message>
            <source>Let %1 need 3 of its inputs</source>
            <translation>%1 soll 3 seiner Eingänge brauchen</translation>
        </message>
        <message>
            <source>Let %1 need 4 of its inputs</source>
            <translation>%1 soll 4 seiner Eingänge brauchen</translation>
        </message>
        <message>
            <source>Let %1 need 5 of its inputs</source>
            <translation>%1 soll 5 seiner Eingänge brauchen</translation>
        </message>
        <message>
            <source>Let %1 need 6 of its inputs</source>
            <translation>%1 soll 6 seiner Eingänge brauchen</translation>
        </message>
        <message>
            <source>Let %1 need 7 of its inputs</source>
            <translation>%1 soll 7 seiner Eingänge brauchen</translation>
        </message>
        <message>
            <source>Let %1 need 8 of its inputs</source>
            <translation>%1 soll 8 seiner Eingänge brauchen</translation>
        </message>
        <message>
            <source>Let %1 need 9 of its inputs</source>
            <translation>%1 soll 9 seiner Eingänge brauchen</translation>
        </message>
        <message>
            <source>Type %1</source>
            <translation>%1 eintippen</translation>
        </message>
        <message>
            <source>Clear %1</source>
            <translation>%1 leeren</translation>
        </message>
        <message>
            <source>Cut %1</source>
            <translation>%1 ausschneiden</translation>
        </message>
        <message>
            <source>Paste into %1</source>
            <translation>In %1 einfügen</translation>
        </message>
        <message>
            <source>Fill down %1</source>
            <translation>%1 nach unten füllen</translation>
        </message>
        <message>
            <source>Fill %1</source>
            <translation>%1 füllen</translation>
        </message>
        <message>
            <source>New row %1</source>
            <translation>Neue Zeile %1</translation>
        </message>
        <message>
            <source>Duplicate %1</source>
            <translation>%1 verdoppeln</translation>
        </message>
        <message>
            <source>Remove %1</source>
            <translation>%1 entfernen</translation>
        </message>
        <message>
            <source>Replace in %1</source>
            <translation>In %1 ersetzen</translation>
        </message>
        <message>
            <source>Take %1 from the library</source>
            <translation>%1 aus der Bibliothek nehmen</translation>
        </message>
        <message>
            <source>Accept the library's news for %1</source>
            <translation>Neues der Bibliothek für %1 annehmen</translation>
        </message>
        <message>
            <source>Accept the common cause %1</source>
            <translation>Gemeinsame Ursache %1 annehmen</translation>
        </message>
        <message>
            <source>Accept the proposed tree %1</source>
            <translation>Vorgeschlagenen Baum %1 annehmen</translation>
        </message>
        <message>
            <source>Add component %1</source>
            <translation>Komponente %1 hinzufügen</translation>
        </message>
        <message>
            <source>Add failure mode %1</source>
            <translation>Ausfallart %1 hinzufügen</translation>
        </message>
        <message>
            <source>Add the supply %1</source>
            <translation>Versorgung %1 hinzufügen</translation>
        </message>
        <message>
            <source>Change component %1</source>
            <translation>Komponente %1 ändern</translation>
        </message>
        <message>
            <source>Change the detection scale</source>
            <translation>Entdeckungsskala ändern</translation>
        </message>
        <message>
            <source>Change the id of a component to %1</source>
            <translation>Kennung einer Komponente in %1 ändern</translation>
        </message>
        <message>
            <source>Change the id of a failure mode to %1</source>
            <translation>Kennung einer Ausfallart in %1 ändern</translation>
        </message>
        <message>
            <source>Change the occurrence scale</source>
            <translation>Auftretensskala ändern</translation>
        </message>
        <message>
            <source>Change the risk matrix</source>
            <translation>Risikomatrix ändern</translation>
        </message>
        <message>
            <source>Change the severity scale</source>
            <translation>Schwereskala ändern</translation>
        </message>
        <message>
            <source>Change the supply %1</source>
            <translation>Versorgung %1 ändern</translation>
        </message>
        <message>
            <source>Delete the supply %1</source>
            <translation>Versorgung %1 löschen</translation>
        </message>
        <message>
            <source>Rename component to %1</source>
            <translation>Komponente in %1 umbenennen</translation>
        </message>
        <message>
            <source>Rename failure mode to %1</source>
            <translation>Ausfallart in %1 umbenennen</translation>
        </message>
    </context>
    <context>
        <name>ExchangePlace</name>
        <message>
            <source>&amp;Import</source>
            <translation>&amp;Einlesen</translation>
        </message>
        <message>
            <source>Import</source>
            <translation>Einlesen</translation>
        </message>
        <message>
            <source>&amp;Export</source>
            <translation>&amp;Ausgeben</translation>
        </message>
        <message>
            <source>Export</source>
            <translation>Ausgeben</translation>
        </message>
    </context>
    <context>
        <name>FigureWords</name>
        <message>
            <source>at most %1</source>
            <translation>höchstens %1</translation>
        </message>
        <message>
            <source>%1 to %2</source>
            <translation>%1 bis %2</translation>
        </message>
        <message>
            <source>cannot happen in this tree</source>
            <translation>kann in diesem Baum nicht geschehen</translation>
        </message>
        <message>
            <source>certain</source>
            <translation>sicher</translation>
        </message>
        <message>
            <source>nearly certain</source>
            <translation>fast sicher</translation>
        </message>
        <message>
            <source>less than 1 in 10 to the power of 15</source>
            <translation>weniger als 1 zu 10 hoch 15</translation>
        </message>
        <message>
            <source>about 1 in %1</source>
            <translation>etwa 1 zu %1</translation>
        </message>
        <message>
            <source>at most about 1 in %1</source>
            <translation>höchstens etwa 1 zu %1</translation>
        </message>
        <message>
            <source>as before the last change</source>
            <translation>wie vor der letzten Änderung</translation>
        </message>
        <message>
            <source>before the last change: %1</source>
            <translation>vor der letzten Änderung: %1</translation>
        </message>
        <message>
            <source>by a hair</source>
            <translation>um ein Haar</translation>
        </message>
        <message>
            <source>by %1 %</source>
            <translation>um %1 %</translation>
        </message>
        <message>
            <source>by a factor of %1</source>
            <translation>um den Faktor %1</translation>
        </message>
        <message>
            <source>▲ higher %1 than before the last change (%2)</source>
            <translation>▲ %1 höher als vor der letzten Änderung (%2)</translation>
        </message>
        <message>
            <source>▼ lower %1 than before the last change (%2)</source>
            <translation>▼ %1 niedriger als vor der letzten Änderung (%2)</translation>
        </message>
    </context>
    <context>
        <name>LibraryPlace</name>
        <message>
            <source>Library</source>
            <translation>Bibliothek</translation>
        </message>
    </context>
    <context>
        <name>ModelProblems</name>
        <message>
            <source>This event</source>
            <translation>Dieses Ereignis</translation>
        </message>
    </context>
    <context>
        <name>Models</name>
        <message>
            <source>not quantified</source>
            <translation>ohne Zahl</translation>
        </message>
        <message>
            <source>a constant probability</source>
            <translation>eine feste Wahrscheinlichkeit</translation>
        </message>
        <message>
            <source>fails at a constant rate during the mission and is not repaired</source>
            <translation>fällt während des Einsatzes mit fester Rate aus und wird nicht repariert</translation>
        </message>
        <message>
            <source>fails at a constant rate, is seen at once and repaired</source>
            <translation>fällt mit fester Rate aus, wird sofort bemerkt und repariert</translation>
        </message>
        <message>
            <source>fails unseen at a constant rate and is found only by a periodic test</source>
            <translation>fällt unbemerkt mit fester Rate aus und wird nur durch eine wiederkehrende Prüfung entdeckt</translation>
        </message>
        <message>
            <source>fails with a fixed probability when asked</source>
            <translation>versagt mit fester Wahrscheinlichkeit bei Anforderung</translation>
        </message>
        <message>
            <source>ages during the mission after Weibull and is not repaired</source>
            <translation>altert während des Einsatzes nach Weibull und wird nicht repariert</translation>
        </message>
        <message>
            <source>an initiating event: how often it happens</source>
            <translation>ein auslösendes Ereignis: wie oft es geschieht</translation>
        </message>
    </context>
    <context>
        <name>NodeWords</name>
        <message>
            <source>and</source>
            <translation>UND</translation>
        </message>
        <message>
            <source>or</source>
            <translation>ODER</translation>
        </message>
        <message>
            <source>vote</source>
            <translation>Auswahl (k von n)</translation>
        </message>
        <message>
            <source>inhibit</source>
            <translation>Sperrgatter</translation>
        </message>
        <message>
            <source>exclusive or</source>
            <translation>Exklusiv-ODER</translation>
        </message>
        <message>
            <source>not</source>
            <translation>NICHT</translation>
        </message>
        <message>
            <source>priority and</source>
            <translation>Prioritäts-UND</translation>
        </message>
        <message>
            <source>all inputs must occur</source>
            <translation>alle Eingänge müssen eintreten</translation>
        </message>
        <message>
            <source>one input is enough</source>
            <translation>ein Eingang genügt</translation>
        </message>
        <message>
            <source>at least k of the inputs must occur</source>
            <translation>mindestens k der Eingänge müssen eintreten</translation>
        </message>
        <message>
            <source>the inputs count only while the condition holds</source>
            <translation>die Eingänge zählen nur, solange die Bedingung gilt</translation>
        </message>
        <message>
            <source>exactly one of the inputs must occur</source>
            <translation>genau einer der Eingänge muss eintreten</translation>
        </message>
        <message>
            <source>the input must not occur</source>
            <translation>der Eingang darf nicht eintreten</translation>
        </message>
        <message>
            <source>all inputs must occur, in their order</source>
            <translation>alle Eingänge müssen eintreten, in ihrer Reihenfolge</translation>
        </message>
        <message>
            <source>basic</source>
            <translation>Basisereignis</translation>
        </message>
        <message>
            <source>undeveloped</source>
            <translation>nicht weiter untersucht</translation>
        </message>
        <message>
            <source>house</source>
            <translation>Schalter</translation>
        </message>
        <message>
            <source>condition</source>
            <translation>Bedingung</translation>
        </message>
        <message>
            <source>a failure</source>
            <translation>ein Ausfall</translation>
        </message>
        <message>
            <source>a failure that is looked at no further here</source>
            <translation>ein Ausfall, der hier nicht weiter untersucht wird</translation>
        </message>
        <message>
            <source>a switch of the tree, set to true or false</source>
            <translation>ein Schalter des Baums, wahr oder falsch</translation>
        </message>
        <message>
            <source>a condition of an inhibit gate</source>
            <translation>eine Bedingung eines Sperrgatters</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>house, true</source>
            <translation>Schalter, wahr</translation>
        </message>
        <message>
            <source>house, false</source>
            <translation>Schalter, falsch</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
    </context>
    <context>
        <name>OutlineWords</name>
        <message>
            <source>Gate: %1</source>
            <translation>Gatter: %1</translation>
        </message>
        <message>
            <source>Event: %1</source>
            <translation>Ereignis: %1</translation>
        </message>
        <message>
            <source>Edit</source>
            <translation>Bearbeiten</translation>
        </message>
        <message>
            <source>Copy</source>
            <translation>Kopieren</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Ausschneiden</translation>
        </message>
        <message>
            <source>Paste below</source>
            <translation>Darunter einfügen</translation>
        </message>
        <message>
            <source>puts what was copied, or indented lines of text, below the row</source>
            <translation>fügt das Kopierte oder eingerückte Textzeilen unter der Zeile ein</translation>
        </message>
        <message>
            <source>Delete</source>
            <translation>Löschen</translation>
        </message>
        <message>
            <source>takes the row away; what is used elsewhere stays there</source>
            <translation>nimmt die Zeile weg; was anderswo benutzt wird, bleibt dort</translation>
        </message>
        <message>
            <source>Tree</source>
            <translation>Baum</translation>
        </message>
        <message>
            <source>Add beside</source>
            <translation>Daneben hinzufügen</translation>
        </message>
        <message>
            <source>types a new event below the row, on its level</source>
            <translation>schreibt ein neues Ereignis unter die Zeile, auf ihrer Ebene</translation>
        </message>
        <message>
            <source>Add below</source>
            <translation>Darunter hinzufügen</translation>
        </message>
        <message>
            <source>types a new input; an event becomes an or gate</source>
            <translation>schreibt einen neuen Eingang; ein Ereignis wird zum ODER-Gatter</translation>
        </message>
        <message>
            <source>Change the text</source>
            <translation>Text ändern</translation>
        </message>
        <message>
            <source>Move up</source>
            <translation>Nach oben</translation>
        </message>
        <message>
            <source>Move down</source>
            <translation>Nach unten</translation>
        </message>
        <message>
            <source>Put a gate above</source>
            <translation>Gatter darüber setzen</translation>
        </message>
        <message>
            <source>one new gate above the chosen rows</source>
            <translation>ein neues Gatter über den gewählten Zeilen</translation>
        </message>
        <message>
            <source>Dissolve the gate</source>
            <translation>Gatter auflösen</translation>
        </message>
        <message>
            <source>its inputs take its place</source>
            <translation>seine Eingänge treten an seine Stelle</translation>
        </message>
        <message>
            <source>Separate from the other places</source>
            <translation>Von den anderen Stellen trennen</translation>
        </message>
        <message>
            <source>a shared gate becomes one of its own here; its events stay shared</source>
            <translation>ein gemeinsames Gatter wird hier ein eigenes; seine Ereignisse bleiben gemeinsam</translation>
        </message>
        <message>
            <source>Make it a top event</source>
            <translation>Zum Hauptereignis machen</translation>
        </message>
        <message>
            <source>Unfold all below</source>
            <translation>Alles darunter aufklappen</translation>
        </message>
        <message>
            <source>Fold all</source>
            <translation>Alles zuklappen</translation>
        </message>
        <message>
            <source>Show or hide the failure models</source>
            <translation>Ausfallmodelle zeigen oder verbergen</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>Switch the house event</source>
            <translation>Schalter umlegen</translation>
        </message>
    </context>
    <context>
        <name>PlantPlace</name>
        <message>
            <source>Plant</source>
            <translation>Anlage</translation>
        </message>
    </context>
    <context>
        <name>PlantWords</name>
        <message>
            <source>This deletes components: %1, failure modes: %2.</source>
            <translation>Das löscht Komponenten: %1, Ausfallarten: %2.</translation>
        </message>
        <message>
            <source>With them go connections of the supply: %1, counts of running hours: %2.</source>
            <translation>Mit ihnen gehen Verbindungen der Versorgung: %1, Laufzeitangaben: %2.</translation>
        </message>
        <message>
            <source>Events of the trees that keep text and numbers, but are no row of the worksheet any more: %1.</source>
            <translation>Ereignisse der Bäume, die Text und Zahlen behalten, aber keine Zeile des Arbeitsblatts mehr sind: %1.</translation>
        </message>
        <message>
            <source>Other components that lose a supplier: %1.</source>
            <translation>Andere Komponenten, die einen Versorger verlieren: %1.</translation>
        </message>
        <message>
            <source>Entries of the log that will note in the remark what they were about: %1.</source>
            <translation>Logbucheinträge, die in der Bemerkung festhalten, worum es ging: %1.</translation>
        </message>
    </context>
    <context>
        <name>Plugins</name>
        <message>
            <source>Achievement</source>
            <translation>Erhöhung</translation>
        </message>
        <message>
            <source>Actions</source>
            <translation>Maßnahmen</translation>
        </message>
        <message>
            <source>Against the tree that was drawn by hand</source>
            <translation>Gegen den von Hand gezeichneten Baum</translation>
        </message>
        <message>
            <source>All checks take</source>
            <translation>Alle Prüfungen dauern</translation>
        </message>
        <message>
            <source>At least</source>
            <translation>Mindestens</translation>
        </message>
        <message>
            <source>At least once</source>
            <translation>Mindestens einmal</translation>
        </message>
        <message>
            <source>At least once: at least</source>
            <translation>Mindestens einmal: mindestens</translation>
        </message>
        <message>
            <source>At least once: at most</source>
            <translation>Mindestens einmal: höchstens</translation>
        </message>
        <message>
            <source>At most</source>
            <translation>Höchstens</translation>
        </message>
        <message>
            <source>Birnbaum</source>
            <translation>Birnbaum</translation>
        </message>
        <message>
            <source>Breaks the path</source>
            <translation>Unterbricht den Weg</translation>
        </message>
        <message>
            <source>Called</source>
            <translation>Genannt</translation>
        </message>
        <message>
            <source>Causes</source>
            <translation>Ursachen</translation>
        </message>
        <message>
            <source>Chance of each one, by the chance of one member</source>
            <translation>Chance einer jeden, je Chance eines Mitglieds</translation>
        </message>
        <message>
            <source>Check of a safety function</source>
            <translation>Prüfung einer Sicherheitsfunktion</translation>
        </message>
        <message>
            <source>Clock</source>
            <translation>Zählwerk</translation>
        </message>
        <message>
            <source>Cm</source>
            <translation>Cm</translation>
        </message>
        <message>
            <source>Common causes</source>
            <translation>Gemeinsame Ursachen</translation>
        </message>
        <message>
            <source>Common causes proposed</source>
            <translation>Vorgeschlagene gemeinsame Ursachen</translation>
        </message>
        <message>
            <source>Common causes to think about</source>
            <translation>Gemeinsame Ursachen zum Nachdenken</translation>
        </message>
        <message>
            <source>Compensating provision</source>
            <translation>Ausgleichende Vorkehrung</translation>
        </message>
        <message>
            <source>Completes</source>
            <translation>Vollendet</translation>
        </message>
        <message>
            <source>Component</source>
            <translation>Komponente</translation>
        </message>
        <message>
            <source>Computes the probability of each top event: exact, rare-event sum and min-cut upper bound side by side.</source>
            <translation>Rechnet die Wahrscheinlichkeit jedes Hauptereignisses: genau, Summe seltener Ereignisse und obere Minimalschnitt-Schranke nebeneinander.</translation>
        </message>
        <message>
            <source>Counts what one cause takes together: each top event with and without its common-cause groups side by side, and the single failures that they add.</source>
            <translation>Rechnet, was eine Ursache zusammen nimmt: jedes Hauptereignis mit und ohne seine Gruppen gemeinsamer Ursachen nebeneinander, und die Einzelausfälle, die sie hinzufügen.</translation>
        </message>
        <message>
            <source>Cr</source>
            <translation>Cr</translation>
        </message>
        <message>
            <source>Criticality</source>
            <translation>Kritikalität</translation>
        </message>
        <message>
            <source>D</source>
            <translation>E</translation>
        </message>
        <message>
            <source>Dangerous failures</source>
            <translation>Gefährliche Ausfälle</translation>
        </message>
        <message>
            <source>Detected by</source>
            <translation>Entdeckt durch</translation>
        </message>
        <message>
            <source>Differential</source>
            <translation>Differenziell</translation>
        </message>
        <message>
            <source>Distribution</source>
            <translation>Verteilung</translation>
        </message>
        <message>
            <source>Does not happen</source>
            <translation>Geschieht nicht</translation>
        </message>
        <message>
            <source>Done on</source>
            <translation>Erledigt am</translation>
        </message>
        <message>
            <source>Dormant</source>
            <translation>Schlafend</translation>
        </message>
        <message>
            <source>Dormant failures: nobody sees them until a test or a demand</source>
            <translation>Schlafende Ausfälle: niemand sieht sie vor einer Prüfung oder Anforderung</translation>
        </message>
        <message>
            <source>Drawn</source>
            <translation>Gezeichnet</translation>
        </message>
        <message>
            <source>Draws every uncertain number many times and shows the mean, the median and the 5 % and 95 % points of each top event.</source>
            <translation>Zieht jede unsichere Zahl viele Male und zeigt Mittelwert, Median und die 5-%- und 95-%-Punkte jedes Hauptereignisses.</translation>
        </message>
        <message>
            <source>Due</source>
            <translation>Fällig</translation>
        </message>
        <message>
            <source>Each top event without and with common causes</source>
            <translation>Jedes Hauptereignis ohne und mit gemeinsamen Ursachen</translation>
        </message>
        <message>
            <source>End effect</source>
            <translation>Endwirkung</translation>
        </message>
        <message>
            <source>End effects of the worksheet</source>
            <translation>Endwirkungen des Arbeitsblatts</translation>
        </message>
        <message>
            <source>End effects that a tree can be proposed for</source>
            <translation>Endwirkungen, für die ein Baum vorgeschlagen werden kann</translation>
        </message>
        <message>
            <source>End effects: severity beside computed probability</source>
            <translation>Endwirkungen: Schwere neben gerechneter Wahrscheinlichkeit</translation>
        </message>
        <message>
            <source>Event</source>
            <translation>Ereignis</translation>
        </message>
        <message>
            <source>Events</source>
            <translation>Ereignisse</translation>
        </message>
        <message>
            <source>Events that are in no row of the worksheet</source>
            <translation>Ereignisse, die in keiner Zeile des Arbeitsblatts stehen</translation>
        </message>
        <message>
            <source>Events that must not occur</source>
            <translation>Ereignisse, die nicht eintreten dürfen</translation>
        </message>
        <message>
            <source>Events that use it</source>
            <translation>Ereignisse, die sie benutzen</translation>
        </message>
        <message>
            <source>Expected number</source>
            <translation>Erwartete Anzahl</translation>
        </message>
        <message>
            <source>FI</source>
            <translation>FI</translation>
        </message>
        <message>
            <source>FMEA worksheet</source>
            <translation>FMEA-Arbeitsblatt</translation>
        </message>
        <message>
            <source>FV sum of sets</source>
            <translation>FV, Summe der Schnitte</translation>
        </message>
        <message>
            <source>FV union</source>
            <translation>FV, Vereinigung</translation>
        </message>
        <message>
            <source>Fails on demand (mean)</source>
            <translation>Versagt bei Anforderung (Mittel)</translation>
        </message>
        <message>
            <source>Failure mode</source>
            <translation>Ausfallart</translation>
        </message>
        <message>
            <source>Failure modes</source>
            <translation>Ausfallarten</translation>
        </message>
        <message>
            <source>Failure modes on the way, and how they were taken</source>
            <translation>Ausfallarten auf dem Weg, und wie sie genommen wurden</translation>
        </message>
        <message>
            <source>Failure modes that are in no tree</source>
            <translation>Ausfallarten, die in keinem Baum stehen</translation>
        </message>
        <message>
            <source>Failures that nobody sees until a test or a demand</source>
            <translation>Ausfälle, die niemand vor einer Prüfung oder Anforderung sieht</translation>
        </message>
        <message>
            <source>Failures that show at once</source>
            <translation>Ausfälle, die sich sofort zeigen</translation>
        </message>
        <message>
            <source>Faults tolerated</source>
            <translation>Geduldete Fehler</translation>
        </message>
        <message>
            <source>Figure</source>
            <translation>Zahl</translation>
        </message>
        <message>
            <source>Finds every smallest combination of events that brings a top event about, with its probability.</source>
            <translation>Findet jede kleinste Kombination von Ereignissen, die zu einem Hauptereignis führt, mit ihrer Wahrscheinlichkeit.</translation>
        </message>
        <message>
            <source>Finds every smallest set of things that, as long as they hold, keep a top event from happening.</source>
            <translation>Findet jede kleinste Menge von Dingen, die, solange sie halten, ein Hauptereignis verhindern.</translation>
        </message>
        <message>
            <source>Follows unavailability and frequency through tests and repairs, with the mean, the worst moment, and how often it happens in the period.</source>
            <translation>Verfolgt Nichtverfügbarkeit und Häufigkeit durch Prüfungen und Reparaturen, mit Mittel, schlimmstem Augenblick und wie oft es in der Zeitspanne geschieht.</translation>
        </message>
        <message>
            <source>Found by</source>
            <translation>Gefunden durch</translation>
        </message>
        <message>
            <source>Frequency</source>
            <translation>Häufigkeit</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>Function</source>
            <translation>Funktion</translation>
        </message>
        <message>
            <source>Fussell-Vesely</source>
            <translation>Fussell-Vesely</translation>
        </message>
        <message>
            <source>Gates that count on it</source>
            <translation>Gatter, die darauf zählen</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Gruppe</translation>
        </message>
        <message>
            <source>Group's share of the top</source>
            <translation>Anteil der Gruppe am Hauptereignis</translation>
        </message>
        <message>
            <source>Half width</source>
            <translation>Halbe Breite</translation>
        </message>
        <message>
            <source>High</source>
            <translation>Hoch</translation>
        </message>
        <message>
            <source>High demand</source>
            <translation>Hohe Anforderungsrate</translation>
        </message>
        <message>
            <source>Holds a protection's tree beside the simplified formulas of IEC 61508-6 Annex B: failure on demand, failures per hour, SIL band, fault tolerance.</source>
            <translation>Stellt den Baum einer Schutzeinrichtung neben die vereinfachten Formeln aus IEC 61508-6 Anhang B: Versagen bei Anforderung, Ausfälle je Stunde, SIL-Band, Fehlertoleranz.</translation>
        </message>
        <message>
            <source>How</source>
            <translation>Wie</translation>
        </message>
        <message>
            <source>How far each number swings the top event, all others at their point values</source>
            <translation>Wie weit jede Zahl das Hauptereignis bewegt, alle anderen auf ihren Punktwerten</translation>
        </message>
        <message>
            <source>How it is noticed</source>
            <translation>Wie es bemerkt wird</translation>
        </message>
        <message>
            <source>How it shows</source>
            <translation>Wie es sich zeigt</translation>
        </message>
        <message>
            <source>How it was done</source>
            <translation>Wie gerechnet wurde</translation>
        </message>
        <message>
            <source>How it was found</source>
            <translation>Wie sie gefunden wurde</translation>
        </message>
        <message>
            <source>How it was proved</source>
            <translation>Wie es nachgewiesen wurde</translation>
        </message>
        <message>
            <source>How many sets there are of each order</source>
            <translation>Wie viele Schnitte es je Ordnung gibt</translation>
        </message>
        <message>
            <source>How well each top event is known</source>
            <translation>Wie gut jedes Hauptereignis bekannt ist</translation>
        </message>
        <message>
            <source>How well the top events are known</source>
            <translation>Wie gut die Hauptereignisse bekannt sind</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Kennung</translation>
        </message>
        <message>
            <source>Importance for the frequency of the top</source>
            <translation>Importanz für die Häufigkeit des Hauptereignisses</translation>
        </message>
        <message>
            <source>Importance of common-cause groups</source>
            <translation>Importanz der Gruppen gemeinsamer Ursachen</translation>
        </message>
        <message>
            <source>Importance of components, all their failure modes together</source>
            <translation>Importanz der Komponenten, alle Ausfallarten zusammen</translation>
        </message>
        <message>
            <source>Importance of events</source>
            <translation>Importanz der Ereignisse</translation>
        </message>
        <message>
            <source>Importance of events, components and groups</source>
            <translation>Importanz von Ereignissen, Komponenten und Gruppen</translation>
        </message>
        <message>
            <source>In a group already</source>
            <translation>Schon in einer Gruppe</translation>
        </message>
        <message>
            <source>In words</source>
            <translation>In Worten</translation>
        </message>
        <message>
            <source>Independent</source>
            <translation>Unabhängig</translation>
        </message>
        <message>
            <source>Item criticality by severity</source>
            <translation>Kritikalität der Teile nach Schwere</translation>
        </message>
        <message>
            <source>Its frequency</source>
            <translation>Seine Häufigkeit</translation>
        </message>
        <message>
            <source>Its mean unavailability</source>
            <translation>Seine mittlere Nichtverfügbarkeit</translation>
        </message>
        <message>
            <source>Its unavailability then</source>
            <translation>Seine Nichtverfügbarkeit dann</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>Last test</source>
            <translation>Letzte Prüfung</translation>
        </message>
        <message>
            <source>Legs</source>
            <translation>Zweige</translation>
        </message>
        <message>
            <source>Listed</source>
            <translation>Aufgeführt</translation>
        </message>
        <message>
            <source>Lists each single failure that alone brings a top event about: where it sits, how it shows, what to check.</source>
            <translation>Nennt jeden Einzelausfall, der allein zu einem Hauptereignis führt: wo er sitzt, wie er sich zeigt, was zu prüfen ist.</translation>
        </message>
        <message>
            <source>Load</source>
            <translation>Verbraucher</translation>
        </message>
        <message>
            <source>Local effect</source>
            <translation>Örtliche Wirkung</translation>
        </message>
        <message>
            <source>Location</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>Lost together</source>
            <translation>Zusammen verloren</translation>
        </message>
        <message>
            <source>Low</source>
            <translation>Niedrig</translation>
        </message>
        <message>
            <source>Low demand</source>
            <translation>Niedrige Anforderungsrate</translation>
        </message>
        <message>
            <source>Mean</source>
            <translation>Mittel</translation>
        </message>
        <message>
            <source>Mean frequency</source>
            <translation>Mittlere Häufigkeit</translation>
        </message>
        <message>
            <source>Mean unavailability</source>
            <translation>Mittlere Nichtverfügbarkeit</translation>
        </message>
        <message>
            <source>Meaning</source>
            <translation>Bedeutung</translation>
        </message>
        <message>
            <source>Median</source>
            <translation>Median</translation>
        </message>
        <message>
            <source>Medium</source>
            <translation>Medium</translation>
        </message>
        <message>
            <source>Members</source>
            <translation>Mitglieder</translation>
        </message>
        <message>
            <source>Method</source>
            <translation>Verfahren</translation>
        </message>
        <message>
            <source>Min-cut upper bound</source>
            <translation>Obere Minimalschnitt-Schranke</translation>
        </message>
        <message>
            <source>Minimal cut sets</source>
            <translation>Minimalschnitte</translation>
        </message>
        <message>
            <source>Minimal cut sets of each top event</source>
            <translation>Minimalschnitte jedes Hauptereignisses</translation>
        </message>
        <message>
            <source>Minimal path sets</source>
            <translation>Minimalpfade</translation>
        </message>
        <message>
            <source>Minimal path sets of each top event</source>
            <translation>Minimalpfade jedes Hauptereignisses</translation>
        </message>
        <message>
            <source>Minimal path sets: what keeps the top event away</source>
            <translation>Minimalpfade: was das Hauptereignis fernhält</translation>
        </message>
        <message>
            <source>Missing</source>
            <translation>Fehlt</translation>
        </message>
        <message>
            <source>Model</source>
            <translation>Modell</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Next higher effect</source>
            <translation>Nächsthöhere Wirkung</translation>
        </message>
        <message>
            <source>No.</source>
            <translation>Nr.</translation>
        </message>
        <message>
            <source>Nobody sees</source>
            <translation>Niemand sieht</translation>
        </message>
        <message>
            <source>None of these happens</source>
            <translation>Keines davon geschieht</translation>
        </message>
        <message>
            <source>Number</source>
            <translation>Zahl</translation>
        </message>
        <message>
            <source>Numbers that move it</source>
            <translation>Zahlen, die es bewegen</translation>
        </message>
        <message>
            <source>O</source>
            <translation>A</translation>
        </message>
        <message>
            <source>On demand from</source>
            <translation>Bei Anforderung von</translation>
        </message>
        <message>
            <source>One cause takes</source>
            <translation>Eine Ursache nimmt</translation>
        </message>
        <message>
            <source>Order</source>
            <translation>Ordnung</translation>
        </message>
        <message>
            <source>Overdue</source>
            <translation>Überfällig</translation>
        </message>
        <message>
            <source>Owner</source>
            <translation>Zuständig</translation>
        </message>
        <message>
            <source>Part and failure</source>
            <translation>Teil und Ausfall</translation>
        </message>
        <message>
            <source>Parts</source>
            <translation>Teile</translation>
        </message>
        <message>
            <source>Per hour from</source>
            <translation>Je Stunde von</translation>
        </message>
        <message>
            <source>Per year</source>
            <translation>Im Jahr</translation>
        </message>
        <message>
            <source>Places failure modes and top events in the risk matrix by their computed frequency and their severity.</source>
            <translation>Setzt Ausfallarten und Hauptereignisse nach gerechneter Häufigkeit und Schwere in die Risikomatrix.</translation>
        </message>
        <message>
            <source>Point value</source>
            <translation>Punktwert</translation>
        </message>
        <message>
            <source>Probability</source>
            <translation>Wahrscheinlichkeit</translation>
        </message>
        <message>
            <source>Probability of the top</source>
            <translation>Wahrscheinlichkeit des Hauptereignisses</translation>
        </message>
        <message>
            <source>Probability of the top events</source>
            <translation>Wahrscheinlichkeit der Hauptereignisse</translation>
        </message>
        <message>
            <source>Probability that all hold</source>
            <translation>Wahrscheinlichkeit, dass alle halten</translation>
        </message>
        <message>
            <source>Probability that none occurs</source>
            <translation>Wahrscheinlichkeit, dass keines eintritt</translation>
        </message>
        <message>
            <source>Proposes the gates of a tree for one end effect of the worksheet, to be accepted one by one.</source>
            <translation>Schlägt die Gatter eines Baums für eine Endwirkung des Arbeitsblatts vor, einzeln anzunehmen.</translation>
        </message>
        <message>
            <source>Proved by</source>
            <translation>Nachgewiesen durch</translation>
        </message>
        <message>
            <source>Proved on</source>
            <translation>Nachgewiesen am</translation>
        </message>
        <message>
            <source>RAW</source>
            <translation>RAW</translation>
        </message>
        <message>
            <source>RI</source>
            <translation>RI</translation>
        </message>
        <message>
            <source>RPN</source>
            <translation>RPZ</translation>
        </message>
        <message>
            <source>RPN after</source>
            <translation>RPZ danach</translation>
        </message>
        <message>
            <source>RRW</source>
            <translation>RRW</translation>
        </message>
        <message>
            <source>Rare-event sum</source>
            <translation>Summe seltener Ereignisse</translation>
        </message>
        <message>
            <source>Rating</source>
            <translation>Bewertung</translation>
        </message>
        <message>
            <source>Rating scales</source>
            <translation>Bewertungsskalen</translation>
        </message>
        <message>
            <source>Reads and writes the FMEA worksheet as a table: CSV.</source>
            <translation>Liest und schreibt das FMEA-Arbeitsblatt als Tabelle: CSV.</translation>
        </message>
        <message>
            <source>Reads and writes the FMEA worksheet as a table: TSV.</source>
            <translation>Liest und schreibt das FMEA-Arbeitsblatt als Tabelle: TSV.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>Recommended action</source>
            <translation>Empfohlene Maßnahme</translation>
        </message>
        <message>
            <source>Reduction</source>
            <translation>Minderung</translation>
        </message>
        <message>
            <source>Redundant</source>
            <translation>Redundant</translation>
        </message>
        <message>
            <source>Redundant on paper, or in fact</source>
            <translation>Redundant auf dem Papier oder wirklich</translation>
        </message>
        <message>
            <source>Remark</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>Report on paper</source>
            <translation>Bericht auf Papier</translation>
        </message>
        <message>
            <source>Risk matrix</source>
            <translation>Risikomatrix</translation>
        </message>
        <message>
            <source>Risk matrix: risk index, and what stands there</source>
            <translation>Risikomatrix: Risikoindex, und was dort steht</translation>
        </message>
        <message>
            <source>Row</source>
            <translation>Zeile</translation>
        </message>
        <message>
            <source>S</source>
            <translation>S</translation>
        </message>
        <message>
            <source>SI</source>
            <translation>SI</translation>
        </message>
        <message>
            <source>SIL</source>
            <translation>SIL</translation>
        </message>
        <message>
            <source>Samples</source>
            <translation>Ziehungen</translation>
        </message>
        <message>
            <source>Says which events, components and common-cause groups matter most to a top event, by every usual measure.</source>
            <translation>Sagt, welche Ereignisse, Komponenten und Gruppen gemeinsamer Ursachen für ein Hauptereignis am meisten zählen, nach jedem üblichen Maß.</translation>
        </message>
        <message>
            <source>Scale</source>
            <translation>Skala</translation>
        </message>
        <message>
            <source>Seed</source>
            <translation>Startwert</translation>
        </message>
        <message>
            <source>Sensitivity to single numbers</source>
            <translation>Empfindlichkeit gegen einzelne Zahlen</translation>
        </message>
        <message>
            <source>Set</source>
            <translation>Schnitt</translation>
        </message>
        <message>
            <source>Sets</source>
            <translation>Schnitte</translation>
        </message>
        <message>
            <source>Sets before</source>
            <translation>Schnitte vorher</translation>
        </message>
        <message>
            <source>Sets with them</source>
            <translation>Schnitte mit ihnen</translation>
        </message>
        <message>
            <source>Severity</source>
            <translation>Schwere</translation>
        </message>
        <message>
            <source>Severity of the top event</source>
            <translation>Schwere des Hauptereignisses</translation>
        </message>
        <message>
            <source>Share</source>
            <translation>Anteil</translation>
        </message>
        <message>
            <source>Share of the item</source>
            <translation>Anteil am Teil</translation>
        </message>
        <message>
            <source>Share of the sum</source>
            <translation>Anteil an der Summe</translation>
        </message>
        <message>
            <source>Show at once</source>
            <translation>Zeigen sich sofort</translation>
        </message>
        <message>
            <source>Single failures</source>
            <translation>Einzelausfälle</translation>
        </message>
        <message>
            <source>Single failures added</source>
            <translation>Hinzugekommene Einzelausfälle</translation>
        </message>
        <message>
            <source>Single failures before</source>
            <translation>Einzelausfälle vorher</translation>
        </message>
        <message>
            <source>Single failures of each top event</source>
            <translation>Einzelausfälle jedes Hauptereignisses</translation>
        </message>
        <message>
            <source>Single failures that common causes add</source>
            <translation>Einzelausfälle durch gemeinsame Ursachen</translation>
        </message>
        <message>
            <source>Single failures: each one alone brings the top event about</source>
            <translation>Einzelausfälle: jeder allein führt zum Hauptereignis</translation>
        </message>
        <message>
            <source>Smallest rating of each</source>
            <translation>Kleinste Bewertung je Stufe</translation>
        </message>
        <message>
            <source>Source</source>
            <translation>Quelle</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Zustand</translation>
        </message>
        <message>
            <source>State then</source>
            <translation>Zustand dann</translation>
        </message>
        <message>
            <source>Such causes</source>
            <translation>Solche Ursachen</translation>
        </message>
        <message>
            <source>Sum of all sets</source>
            <translation>Summe aller Schnitte</translation>
        </message>
        <message>
            <source>Sum of the sets left out</source>
            <translation>Summe der ausgelassenen Schnitte</translation>
        </message>
        <message>
            <source>Supplies that were traced</source>
            <translation>Verfolgte Versorgungen</translation>
        </message>
        <message>
            <source>Sweep of one number</source>
            <translation>Durchlauf einer Zahl</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Kennzeichen</translation>
        </message>
        <message>
            <source>Takes both</source>
            <translation>Nimmt beide</translation>
        </message>
        <message>
            <source>Tested every</source>
            <translation>Geprüft alle</translation>
        </message>
        <message>
            <source>The failure modes as an FMEA worksheet: effects, detection, ratings, criticality, risk index, dormant failures and actions.</source>
            <translation>Die Ausfallarten als FMEA-Arbeitsblatt: Wirkungen, Entdeckung, Bewertungen, Kritikalität, Risikoindex, schlafende Ausfälle und Maßnahmen.</translation>
        </message>
        <message>
            <source>The groups and their factors</source>
            <translation>Die Gruppen und ihre Faktoren</translation>
        </message>
        <message>
            <source>The numbers that went in</source>
            <translation>Die eingegangenen Zahlen</translation>
        </message>
        <message>
            <source>The numbers that were drawn</source>
            <translation>Die gezogenen Zahlen</translation>
        </message>
        <message>
            <source>The same</source>
            <translation>Gleich</translation>
        </message>
        <message>
            <source>The same events by other measures</source>
            <translation>Dieselben Ereignisse nach anderen Maßen</translation>
        </message>
        <message>
            <source>The sets: as long as all events of one do not occur, the top event cannot happen</source>
            <translation>Die Pfade: solange alle Ereignisse eines Pfads nicht eintreten, kann das Hauptereignis nicht geschehen</translation>
        </message>
        <message>
            <source>The sets: each one alone brings the top event about</source>
            <translation>Die Schnitte: jeder allein führt zum Hauptereignis</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>Times</source>
            <translation>Mal</translation>
        </message>
        <message>
            <source>Times in the period</source>
            <translation>Male in der Zeitspanne</translation>
        </message>
        <message>
            <source>Title block, top events with figures, results, assumptions, sources, cautions, drawn trees and a place to sign.</source>
            <translation>Titelfeld, Hauptereignisse mit Zahlen, Ergebnisse, Annahmen, Quellen, Vorsichtshinweise, gezeichnete Bäume und Platz für Unterschriften.</translation>
        </message>
        <message>
            <source>Top</source>
            <translation>Hauptereignis</translation>
        </message>
        <message>
            <source>Top at high</source>
            <translation>Hauptereignis bei hoch</translation>
        </message>
        <message>
            <source>Top at low</source>
            <translation>Hauptereignis bei niedrig</translation>
        </message>
        <message>
            <source>Top events</source>
            <translation>Hauptereignisse</translation>
        </message>
        <message>
            <source>Top events over the period</source>
            <translation>Hauptereignisse über die Zeitspanne</translation>
        </message>
        <message>
            <source>Top events over time</source>
            <translation>Hauptereignisse über die Zeit</translation>
        </message>
        <message>
            <source>Top events with every number at its point value</source>
            <translation>Hauptereignisse, jede Zahl auf ihrem Punktwert</translation>
        </message>
        <message>
            <source>Top without this group</source>
            <translation>Hauptereignis ohne diese Gruppe</translation>
        </message>
        <message>
            <source>Traces the supply network up from a load: what alone takes its supply away, what both legs share, and whether the drawn tree says the same.</source>
            <translation>Verfolgt das Versorgungsnetz vom Verbraucher aufwärts: was allein ihm die Versorgung nimmt, was beide Zweige teilen, und ob der gezeichnete Baum dasselbe sagt.</translation>
        </message>
        <message>
            <source>Tree</source>
            <translation>Baum</translation>
        </message>
        <message>
            <source>Tree and formulas side by side</source>
            <translation>Baum und Formeln nebeneinander</translation>
        </message>
        <message>
            <source>Tree proposed from the worksheet</source>
            <translation>Aus dem Arbeitsblatt vorgeschlagener Baum</translation>
        </message>
        <message>
            <source>Turns one number at a time from the low to the high end of what is known about it and ranks how far the top events swing.</source>
            <translation>Dreht eine Zahl nach der anderen vom unteren zum oberen Ende des Bekannten und ordnet, wie weit die Hauptereignisse schwingen.</translation>
        </message>
        <message>
            <source>Unavailability</source>
            <translation>Nichtverfügbarkeit</translation>
        </message>
        <message>
            <source>Uncertain numbers</source>
            <translation>Unsichere Zahlen</translation>
        </message>
        <message>
            <source>Unit</source>
            <translation>Einheit</translation>
        </message>
        <message>
            <source>Up to</source>
            <translation>Bis</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>Varies one number, a test interval for example, and finds its best value and how far it may go under a limit.</source>
            <translation>Verändert eine Zahl, ein Prüfintervall zum Beispiel, und findet ihren besten Wert und wie weit sie unter einer Grenze gehen darf.</translation>
        </message>
        <message>
            <source>Verdict</source>
            <translation>Urteil</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>What alone takes the supply away</source>
            <translation>Was allein die Versorgung nimmt</translation>
        </message>
        <message>
            <source>What cannot be placed</source>
            <translation>Was nicht eingeordnet werden kann</translation>
        </message>
        <message>
            <source>What carries the top at its worst moment</source>
            <translation>Was das Hauptereignis im schlimmsten Augenblick trägt</translation>
        </message>
        <message>
            <source>What each group does to a top event</source>
            <translation>Was jede Gruppe mit einem Hauptereignis macht</translation>
        </message>
        <message>
            <source>What fails</source>
            <translation>Was ausfällt</translation>
        </message>
        <message>
            <source>What is enough to keep the supply (minimal path sets)</source>
            <translation>Was genügt, die Versorgung zu halten (Minimalpfade)</translation>
        </message>
        <message>
            <source>What is shared</source>
            <translation>Was geteilt wird</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Was es ist</translation>
        </message>
        <message>
            <source>What makes up for it</source>
            <translation>Was es ausgleicht</translation>
        </message>
        <message>
            <source>What stands in the matrix, the highest risk index first</source>
            <translation>Was in der Matrix steht, der höchste Risikoindex zuerst</translation>
        </message>
        <message>
            <source>What the legs share</source>
            <translation>Was die Zweige teilen</translation>
        </message>
        <message>
            <source>What to check</source>
            <translation>Was zu prüfen ist</translation>
        </message>
        <message>
            <source>Where it sits</source>
            <translation>Wo es sitzt</translation>
        </message>
        <message>
            <source>Where it stands</source>
            <translation>Wo es steht</translation>
        </message>
        <message>
            <source>Which</source>
            <translation>Welche</translation>
        </message>
        <message>
            <source>Which event completes the failures of the top</source>
            <translation>Welches Ereignis die Ausfälle des Hauptereignisses vollendet</translation>
        </message>
        <message>
            <source>Which failure modes are in no tree, which events in no row, which end effects have no tree, and severity beside computed probability.</source>
            <translation>Welche Ausfallarten in keinem Baum stehen, welche Ereignisse in keiner Zeile, welche Endwirkungen keinen Baum haben, und Schwere neben gerechneter Wahrscheinlichkeit.</translation>
        </message>
        <message>
            <source>Which failure modes, that a gate counts on failing independently, share a supply, place, kind, fuel or maintenance.</source>
            <translation>Welche Ausfallarten, deren Unabhängigkeit ein Gatter voraussetzt, Versorgung, Ort, Bauart, Brennstoff oder Wartung teilen.</translation>
        </message>
        <message>
            <source>Whose</source>
            <translation>Wessen</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Warum</translation>
        </message>
        <message>
            <source>Why together</source>
            <translation>Warum zusammen</translation>
        </message>
        <message>
            <source>With and without common causes</source>
            <translation>Mit und ohne gemeinsame Ursachen</translation>
        </message>
        <message>
            <source>With common causes</source>
            <translation>Mit gemeinsamen Ursachen</translation>
        </message>
        <message>
            <source>With the point values</source>
            <translation>Mit den Punktwerten</translation>
        </message>
        <message>
            <source>Without a number</source>
            <translation>Ohne Zahl</translation>
        </message>
        <message>
            <source>Without supply</source>
            <translation>Ohne Versorgung</translation>
        </message>
        <message>
            <source>Word</source>
            <translation>Wort</translation>
        </message>
        <message>
            <source>Worksheet against trees</source>
            <translation>Arbeitsblatt gegen Bäume</translation>
        </message>
        <message>
            <source>Worksheet as CSV</source>
            <translation>Arbeitsblatt als CSV</translation>
        </message>
        <message>
            <source>Worksheet as TSV</source>
            <translation>Arbeitsblatt als TSV</translation>
        </message>
        <message>
            <source>Worksheet as XLSX</source>
            <translation>Arbeitsblatt als XLSX</translation>
        </message>
        <message>
            <source>Worst</source>
            <translation>Schlimmstes</translation>
        </message>
        <message>
            <source>Worst moment</source>
            <translation>Schlimmster Augenblick</translation>
        </message>
        <message>
            <source>Worst severity</source>
            <translation>Größte Schwere</translation>
        </message>
        <message>
            <source>Writes the FMEA worksheet as a workbook: rows, dormant failures, actions, scales and cautions on a sheet each.</source>
            <translation>Schreibt das FMEA-Arbeitsblatt als Arbeitsmappe: Zeilen, schlafende Ausfälle, Maßnahmen, Skalen und Vorsichtshinweise auf je einem Blatt.</translation>
        </message>
        <message>
            <source>assessment</source>
            <translation>Beurteilung</translation>
        </message>
        <message>
            <source>batteries</source>
            <translation>Batterien</translation>
        </message>
        <message>
            <source>below</source>
            <translation>unter</translation>
        </message>
        <message>
            <source>beta</source>
            <translation>Beta</translation>
        </message>
        <message>
            <source>beta-detected</source>
            <translation>Beta-entdeckt</translation>
        </message>
        <message>
            <source>breaks</source>
            <translation>unterbricht</translation>
        </message>
        <message>
            <source>clock</source>
            <translation>Zählwerk</translation>
        </message>
        <message>
            <source>columns</source>
            <translation>Spalten</translation>
        </message>
        <message>
            <source>common-cause</source>
            <translation>gemeinsame-Ursachen</translation>
        </message>
        <message>
            <source>component</source>
            <translation>Komponente</translation>
        </message>
        <message>
            <source>components that are sources besides those that the drawing shows: ids or tags with commas between them</source>
            <translation>Komponenten, die außer den gezeichneten Quellen sind: Kennungen oder Kennzeichen, durch Kommas getrennt</translation>
        </message>
        <message>
            <source>confidence</source>
            <translation>Vertrauen</translation>
        </message>
        <message>
            <source>count the common-cause groups of the project; without it their events are taken as independent, and the figures are too low</source>
            <translation>die Gruppen gemeinsamer Ursachen des Projekts rechnen; ohne das gelten ihre Ereignisse als unabhängig, und die Zahlen sind zu niedrig</translation>
        </message>
        <message>
            <source>coverage</source>
            <translation>Abdeckung</translation>
        </message>
        <message>
            <source>dangerous-share</source>
            <translation>gefährlicher-Anteil</translation>
        </message>
        <message>
            <source>dormant</source>
            <translation>schlafend</translation>
        </message>
        <message>
            <source>drawn</source>
            <translation>gezeichnet</translation>
        </message>
        <message>
            <source>effect</source>
            <translation>Wirkung</translation>
        </message>
        <message>
            <source>events shown of each top event, the heaviest first</source>
            <translation>gezeigte Ereignisse je Hauptereignis, die schwersten zuerst</translation>
        </message>
        <message>
            <source>factor</source>
            <translation>Faktor</translation>
        </message>
        <message>
            <source>fails on demand</source>
            <translation>versagt bei Anforderung</translation>
        </message>
        <message>
            <source>failure modes that break the path whatever their names say: ids with commas between them</source>
            <translation>Ausfallarten, die den Weg unterbrechen, was auch ihr Name sagt: Kennungen, durch Kommas getrennt</translation>
        </message>
        <message>
            <source>failure modes that leave the path whole: ids with commas between them</source>
            <translation>Ausfallarten, die den Weg ganz lassen: Kennungen, durch Kommas getrennt</translation>
        </message>
        <message>
            <source>from</source>
            <translation>von</translation>
        </message>
        <message>
            <source>how long the top events are followed, from hour 0</source>
            <translation>wie lange die Hauptereignisse verfolgt werden, ab Stunde 0</translation>
        </message>
        <message>
            <source>how many of the channels must act, for the formulas of IEC 61508-6 Annex B</source>
            <translation>wie viele der Kanäle wirken müssen, für die Formeln aus IEC 61508-6 Anhang B</translation>
        </message>
        <message>
            <source>how often all uncertain numbers are drawn</source>
            <translation>wie oft alle unsicheren Zahlen gezogen werden</translation>
        </message>
        <message>
            <source>interval</source>
            <translation>Intervall</translation>
        </message>
        <message>
            <source>leave out sets of more events than this</source>
            <translation>Schnitte mit mehr Ereignissen auslassen</translation>
        </message>
        <message>
            <source>leave out sets that are less probable than this</source>
            <translation>Schnitte auslassen, die weniger wahrscheinlich sind</translation>
        </message>
        <message>
            <source>leave out what a common-cause group of the project holds already</source>
            <translation>auslassen, was schon in einer Gruppe gemeinsamer Ursachen steht</translation>
        </message>
        <message>
            <source>limit</source>
            <translation>Grenze</translation>
        </message>
        <message>
            <source>list at most this many sets of each top event</source>
            <translation>höchstens so viele Schnitte je Hauptereignis nennen</translation>
        </message>
        <message>
            <source>load</source>
            <translation>Verbraucher</translation>
        </message>
        <message>
            <source>max-order</source>
            <translation>höchste-Ordnung</translation>
        </message>
        <message>
            <source>mean repair time of what the proof test finds, for the formulas</source>
            <translation>mittlere Reparaturdauer dessen, was die Wiederholungsprüfung findet, für die Formeln</translation>
        </message>
        <message>
            <source>mean time to restoration of what diagnostics see, for the formulas</source>
            <translation>mittlere Zeit bis zur Wiederherstellung dessen, was die Diagnose sieht, für die Formeln</translation>
        </message>
        <message>
            <source>measure</source>
            <translation>Maß</translation>
        </message>
        <message>
            <source>method</source>
            <translation>Verfahren</translation>
        </message>
        <message>
            <source>min-probability</source>
            <translation>kleinste-Wahrscheinlichkeit</translation>
        </message>
        <message>
            <source>mission</source>
            <translation>Einsatzdauer</translation>
        </message>
        <message>
            <source>mission time for the failure models that have none of their own</source>
            <translation>Einsatzdauer für die Ausfallmodelle, die keine eigene haben</translation>
        </message>
        <message>
            <source>monte-carlo draws every sample by itself; latin-hypercube spreads the draws of each number evenly, in ten batches</source>
            <translation>monte-carlo zieht jede Stichprobe für sich; latin-hypercube verteilt die Ziehungen jeder Zahl gleichmäßig, in zehn Gruppen</translation>
        </message>
        <message>
            <source>new</source>
            <translation>neu</translation>
        </message>
        <message>
            <source>new: everything works at hour 0; steady: parts that are repaired at once begin in their long-run state</source>
            <translation>new: in Stunde 0 ist alles heil; steady: sofort reparierte Teile beginnen in ihrem Dauerzustand</translation>
        </message>
        <message>
            <source>numbers shown of each top event, the widest swing first</source>
            <translation>gezeigte Zahlen je Hauptereignis, die größte Schwingung zuerst</translation>
        </message>
        <message>
            <source>numbers without a distribution are divided and multiplied by this; without it they are left alone</source>
            <translation>Zahlen ohne Verteilung werden hierdurch geteilt und hiermit malgenommen; ohne das bleiben sie</translation>
        </message>
        <message>
            <source>only dormant failures</source>
            <translation>nur schlafende Ausfälle</translation>
        </message>
        <message>
            <source>only rows with an action that is neither proved nor dropped</source>
            <translation>nur Zeilen mit einer Maßnahme, die weder nachgewiesen noch fallengelassen ist</translation>
        </message>
        <message>
            <source>only this component, by id or tag, and what belongs to it</source>
            <translation>nur diese Komponente, nach Kennung oder Kennzeichen, und was zu ihr gehört</translation>
        </message>
        <message>
            <source>only what is shared in this way</source>
            <translation>nur was auf diese Weise geteilt wird</translation>
        </message>
        <message>
            <source>open</source>
            <translation>offen</translation>
        </message>
        <message>
            <source>order: the smallest sets first; probability: the most probable first</source>
            <translation>order: die kleinsten Schnitte zuerst; probability: die wahrscheinlichsten zuerst</translation>
        </message>
        <message>
            <source>own: every hour of the period is an hour of each event's clock; calendar: firing hours and starts are spread over the calendar by the project's exposures</source>
            <translation>own: jede Stunde der Zeitspanne ist eine Stunde des Zählwerks jedes Ereignisses; calendar: Brennerstunden und Starts werden nach den Laufzeiten des Projekts über den Kalender verteilt</translation>
        </message>
        <message>
            <source>passes</source>
            <translation>lässt durch</translation>
        </message>
        <message>
            <source>path sets that are listed for each load</source>
            <translation>genannte Minimalpfade je Verbraucher</translation>
        </message>
        <message>
            <source>period</source>
            <translation>Zeitspanne</translation>
        </message>
        <message>
            <source>period for mean, worst and frequency</source>
            <translation>Zeitspanne für Mittel, Schlimmstes und Häufigkeit</translation>
        </message>
        <message>
            <source>place failure modes, top events, or both</source>
            <translation>Ausfallarten, Hauptereignisse oder beides einordnen</translation>
        </message>
        <message>
            <source>prefer</source>
            <translation>bevorzugt</translation>
        </message>
        <message>
            <source>probability</source>
            <translation>Wahrscheinlichkeit</translation>
        </message>
        <message>
            <source>probability of the top event</source>
            <translation>Wahrscheinlichkeit des Hauptereignisses</translation>
        </message>
        <message>
            <source>rate</source>
            <translation>Rate</translation>
        </message>
        <message>
            <source>repair</source>
            <translation>Reparatur</translation>
        </message>
        <message>
            <source>restoration</source>
            <translation>Wiederherstellung</translation>
        </message>
        <message>
            <source>rows</source>
            <translation>Zeilen</translation>
        </message>
        <message>
            <source>rows shown of each table and top event, the heaviest first</source>
            <translation>gezeigte Zeilen je Tabelle und Hauptereignis, die schwersten zuerst</translation>
        </message>
        <message>
            <source>samples</source>
            <translation>Ziehungen</translation>
        </message>
        <message>
            <source>scale</source>
            <translation>Skala</translation>
        </message>
        <message>
            <source>seed</source>
            <translation>Startwert</translation>
        </message>
        <message>
            <source>share of the dangerous failures that diagnostics see at once</source>
            <translation>Anteil der gefährlichen Ausfälle, den die Diagnose sofort sieht</translation>
        </message>
        <message>
            <source>share of the rate that is dangerous; the tables of the standard take one half</source>
            <translation>gefährlicher Anteil der Rate; die Tabellen der Norm nehmen die Hälfte</translation>
        </message>
        <message>
            <source>share of the unseen dangerous failures of common cause</source>
            <translation>Anteil gemeinsamer Ursache an den ungesehenen gefährlichen Ausfällen</translation>
        </message>
        <message>
            <source>shared</source>
            <translation>gemeinsam</translation>
        </message>
        <message>
            <source>sort</source>
            <translation>Ordnen</translation>
        </message>
        <message>
            <source>sources</source>
            <translation>Quellen</translation>
        </message>
        <message>
            <source>start</source>
            <translation>Beginn</translation>
        </message>
        <message>
            <source>steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>steps of equal length or of equal ratio; auto: by how far the ends are apart</source>
            <translation>Schritte gleicher Länge oder gleichen Verhältnisses; auto: danach, wie weit die Enden auseinanderliegen</translation>
        </message>
        <message>
            <source>the component whose supply is traced, by id or tag; without it all that are drawn with more than one way of supply</source>
            <translation>die Komponente, deren Versorgung verfolgt wird, nach Kennung oder Kennzeichen; ohne das alle, die mit mehr als einem Versorgungsweg gezeichnet sind</translation>
        </message>
        <message>
            <source>the day that due dates are held against, like 2026-02-28; the project's date where it is not given</source>
            <translation>der Tag, an dem Termine gemessen werden, wie 2026-02-28; ohne Angabe das Datum des Projekts</translation>
        </message>
        <message>
            <source>the end effect, as the worksheet has it; without it the end effects are listed</source>
            <translation>die Endwirkung, wie sie im Arbeitsblatt steht; ohne das werden die Endwirkungen genannt</translation>
        </message>
        <message>
            <source>the figure must not be above this</source>
            <translation>die Zahl darf nicht darüber liegen</translation>
        </message>
        <message>
            <source>the gate that says the same by hand; without it the gate whose events are most alike, if any</source>
            <translation>das Gatter, das von Hand dasselbe sagt; ohne das jenes mit den ähnlichsten Ereignissen, falls es eines gibt</translation>
        </message>
        <message>
            <source>the largest value; without it ten times the present one</source>
            <translation>der größte Wert; ohne das das Zehnfache des jetzigen</translation>
        </message>
        <message>
            <source>the measure that events are sorted by, the largest first</source>
            <translation>das Maß, nach dem Ereignisse geordnet werden, das größte zuerst</translation>
        </message>
        <message>
            <source>the number that is varied: the id of a shared parameter, or OWNER@ROLE for a number of a failure mode or event (level-probe.fouled@rate), or with --common-cause GROUP@factor-1; several with commas are set to the same value</source>
            <translation>die Zahl, die verändert wird: die Kennung eines gemeinsamen Parameters, oder OWNER@ROLE für eine Zahl einer Ausfallart oder eines Ereignisses (level-probe.fouled@rate), oder mit --common-cause GROUP@factor-1; mehrere, durch Kommas getrennt, bekommen denselben Wert</translation>
        </message>
        <message>
            <source>the plant as it is under this assessment (its events certain or impossible) instead of its normal state</source>
            <translation>die Anlage, wie sie unter dieser Beurteilung ist (deren Ereignisse sicher oder unmöglich), statt im Normalzustand</translation>
        </message>
        <message>
            <source>the same of those that diagnostics see; without it half of beta</source>
            <translation>dasselbe für jene, die die Diagnose sieht; ohne das die Hälfte von Beta</translation>
        </message>
        <message>
            <source>the smallest value, in hours, per hour, or with a unit ("1 wk"); without it a tenth of the present one</source>
            <translation>der kleinste Wert, in Stunden, je Stunde oder mit Einheit ("1 wk"); ohne das ein Zehntel des jetzigen</translation>
        </message>
        <message>
            <source>the top event that is asked about, or any gate or event; without it all top events of the project</source>
            <translation>das Hauptereignis, nach dem gefragt wird, oder ein Gatter oder Ereignis; ohne das alle Hauptereignisse des Projekts</translation>
        </message>
        <message>
            <source>the tree of the protection's failure: a top event, or the gate that says that the protection does not act</source>
            <translation>der Baum für das Versagen der Schutzeinrichtung: ein Hauptereignis oder das Gatter, das sagt, dass sie nicht wirkt</translation>
        </message>
        <message>
            <source>threads</source>
            <translation>Fäden</translation>
        </message>
        <message>
            <source>threads that work side by side, 0: as many as the computer has; the answer is the same for any number</source>
            <translation>nebeneinander arbeitende Fäden, 0: so viele der Rechner hat; die Antwort ist für jede Zahl dieselbe</translation>
        </message>
        <message>
            <source>time between two proof tests; without it the longest test interval of the tree, or a year</source>
            <translation>Zeit zwischen zwei Wiederholungsprüfungen; ohne das das längste Prüfintervall des Baums oder ein Jahr</translation>
        </message>
        <message>
            <source>time since all tests</source>
            <translation>Zeit seit allen Prüfungen</translation>
        </message>
        <message>
            <source>to</source>
            <translation>bis</translation>
        </message>
        <message>
            <source>today</source>
            <translation>heute</translation>
        </message>
        <message>
            <source>top</source>
            <translation>Hauptereignis</translation>
        </message>
        <message>
            <source>total failure rate of one channel, safe and dangerous</source>
            <translation>gesamte Ausfallrate eines Kanals, sicher und gefährlich</translation>
        </message>
        <message>
            <source>unequal</source>
            <translation>ungleich</translation>
        </message>
        <message>
            <source>usual, all, or ids of columns with commas between them</source>
            <translation>usual, all oder Kennungen von Spalten, durch Kommas getrennt</translation>
        </message>
        <message>
            <source>values that are tried, both ends included</source>
            <translation>Werte, die versucht werden, beide Enden eingeschlossen</translation>
        </message>
        <message>
            <source>vary</source>
            <translation>verändern</translation>
        </message>
        <message>
            <source>voting</source>
            <translation>Auswahl</translation>
        </message>
        <message>
            <source>what</source>
            <translation>was</translation>
        </message>
        <message>
            <source>what is looked at: probability at the mean of each event, mean or worst unavailability over the period, or mean frequency</source>
            <translation>was betrachtet wird: Wahrscheinlichkeit beim Mittel jedes Ereignisses, mittlere oder schlimmste Nichtverfügbarkeit über die Zeitspanne oder mittlere Häufigkeit</translation>
        </message>
        <message>
            <source>what stands first: the worst severity, risk index, criticality or RPN; or the order of the file</source>
            <translation>was zuerst steht: größte Schwere, Risikoindex, Kritikalität oder RPZ; oder die Reihenfolge der Datei</translation>
        </message>
        <message>
            <source>where the random numbers begin: the same seed gives the same answer</source>
            <translation>wo die Zufallszahlen beginnen: derselbe Startwert gibt dieselbe Antwort</translation>
        </message>
        <message>
            <source>whether a source that is charged from its own medium lives on without its charger, or is dead with it</source>
            <translation>ob eine Quelle, die aus ihrem eigenen Medium geladen wird, ohne Ladegerät weiterlebt oder mit ihm tot ist</translation>
        </message>
        <message>
            <source>which of the values within the limit is wanted</source>
            <translation>welcher der Werte innerhalb der Grenze gewünscht ist</translation>
        </message>
        <message>
            <source>whose probability counts where the members of a group are not equally bad: the geometric mean of those taken, or the smallest</source>
            <translation>wessen Wahrscheinlichkeit zählt, wo die Mitglieder einer Gruppe nicht gleich schlecht sind: das geometrische Mittel der betroffenen oder die kleinste</translation>
        </message>
        <message>
            <source>Proposal</source>
            <translation>Vorschlag</translation>
        </message>
    </context>
    <context>
        <name>ProposalsPlace</name>
        <message>
            <source>Proposals</source>
            <translation>Vorschläge</translation>
        </message>
    </context>
    <context>
        <name>ReportPlace</name>
        <message>
            <source>Report</source>
            <translation>Bericht</translation>
        </message>
        <message>
            <source>Report (%1)</source>
            <translation>Bericht (%1)</translation>
        </message>
    </context>
    <context>
        <name>RiskPlace</name>
        <message>
            <source>Risks</source>
            <translation>Risiken</translation>
        </message>
    </context>
    <context>
        <name>RiskTable</name>
        <message>
            <source>its frequency is 0</source>
            <translation>seine Häufigkeit ist 0</translation>
        </message>
        <message>
            <source>it has no severity</source>
            <translation>es hat keine Schwere</translation>
        </message>
        <message>
            <source>the matrix has no severity "%1"</source>
            <translation>die Matrix hat keine Schwere "%1"</translation>
        </message>
        <message>
            <source>Risk matrix</source>
            <translation>Risikomatrix</translation>
        </message>
        <message>
            <source>RI</source>
            <translation>RI</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Frequency</source>
            <translation>Häufigkeit</translation>
        </message>
        <message>
            <source>Severity</source>
            <translation>Schwere</translation>
        </message>
        <message>
            <source>Called</source>
            <translation>Genannt</translation>
        </message>
        <message>
            <source>From, or why it has no place</source>
            <translation>Woher, oder warum es keinen Platz hat</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Kennung</translation>
        </message>
        <message>
            <source>top event</source>
            <translation>Hauptereignis</translation>
        </message>
        <message>
            <source>failure mode</source>
            <translation>Ausfallart</translation>
        </message>
    </context>
    <context>
        <name>Shelf</name>
        <message>
            <source>Another file is the library %1 already; that one counts.</source>
            <translation>Eine andere Datei ist schon die Bibliothek %1; jene zählt.</translation>
        </message>
    </context>
    <context>
        <name>TypeWords</name>
        <message>
            <source>from memory: to be checked against the source</source>
            <translation>aus dem Gedächtnis: an der Quelle zu prüfen</translation>
        </message>
        <message>
            <source>nothing says where it comes from</source>
            <translation>nichts sagt, woher es kommt</translation>
        </message>
        <message>
            <source>, error factor %1</source>
            <translation>, Fehlerfaktor %1</translation>
        </message>
        <message>
            <source>Library %1, type %2, revision %3</source>
            <translation>Bibliothek %1, Typ %2, Revision %3</translation>
        </message>
        <message>
            <source>Function:</source>
            <translation>Funktion:</translation>
        </message>
        <message>
            <source>Remark:</source>
            <translation>Bemerkung:</translation>
        </message>
        <message>
            <source>Cause:</source>
            <translation>Ursache:</translation>
        </message>
        <message>
            <source>Effect:</source>
            <translation>Wirkung:</translation>
        </message>
        <message>
            <source>On the next level:</source>
            <translation>Auf der nächsten Ebene:</translation>
        </message>
        <message>
            <source>Noticed by:</source>
            <translation>Bemerkt durch:</translation>
        </message>
        <message>
            <source>Made up for by:</source>
            <translation>Ausgeglichen durch:</translation>
        </message>
        <message>
            <source>Dormant: nobody sees it until a test or a demand</source>
            <translation>Schlafend: niemand sieht es vor einer Prüfung oder Anforderung</translation>
        </message>
        <message>
            <source>Look at (%1 min):</source>
            <translation>Nachsehen (%1 min):</translation>
        </message>
        <message>
            <source>Look at:</source>
            <translation>Nachsehen:</translation>
        </message>
        <message>
            <source>No rate:</source>
            <translation>Keine Rate:</translation>
        </message>
    </context>
    <context>
        <name>Words</name>
        <message>
            <source>Probability</source>
            <translation>Wahrscheinlichkeit</translation>
        </message>
        <message>
            <source>Failure rate or MTTF</source>
            <translation>Ausfallrate oder MTTF</translation>
        </message>
        <message>
            <source>Mission time</source>
            <translation>Einsatzdauer</translation>
        </message>
        <message>
            <source>Mean time to repair</source>
            <translation>Mittlere Reparaturdauer</translation>
        </message>
        <message>
            <source>Test interval</source>
            <translation>Prüfintervall</translation>
        </message>
        <message>
            <source>First test after</source>
            <translation>Erste Prüfung nach</translation>
        </message>
        <message>
            <source>Test takes</source>
            <translation>Prüfung dauert</translation>
        </message>
        <message>
            <source>Test coverage</source>
            <translation>Prüfabdeckung</translation>
        </message>
        <message>
            <source>Weibull shape</source>
            <translation>Weibull-Form</translation>
        </message>
        <message>
            <source>Characteristic life</source>
            <translation>Charakteristische Lebensdauer</translation>
        </message>
        <message>
            <source>Failure-free time</source>
            <translation>Ausfallfreie Zeit</translation>
        </message>
        <message>
            <source>Frequency</source>
            <translation>Häufigkeit</translation>
        </message>
        <message>
            <source>not quantified</source>
            <translation>ohne Zahl</translation>
        </message>
        <message>
            <source>constant probability</source>
            <translation>feste Wahrscheinlichkeit</translation>
        </message>
        <message>
            <source>rate over a mission, no repair</source>
            <translation>Rate über einen Einsatz, ohne Reparatur</translation>
        </message>
        <message>
            <source>rate, seen at once and repaired</source>
            <translation>Rate, sofort bemerkt und repariert</translation>
        </message>
        <message>
            <source>rate, found only by a test</source>
            <translation>Rate, nur durch Prüfung entdeckt</translation>
        </message>
        <message>
            <source>fails when asked</source>
            <translation>versagt bei Anforderung</translation>
        </message>
        <message>
            <source>ageing (Weibull)</source>
            <translation>Alterung (Weibull)</translation>
        </message>
        <message>
            <source>initiating event, how often</source>
            <translation>auslösendes Ereignis, wie oft</translation>
        </message>
        <message>
            <source>not said</source>
            <translation>nicht angegeben</translation>
        </message>
        <message>
            <source>every hour on the calendar</source>
            <translation>jede Kalenderstunde</translation>
        </message>
        <message>
            <source>every hour of firing</source>
            <translation>jede Brennerstunde</translation>
        </message>
        <message>
            <source>every start</source>
            <translation>jeder Start</translation>
        </message>
        <message>
            <source>every demand</source>
            <translation>jede Anforderung</translation>
        </message>
        <message>
            <source>The printer takes no sheets: look at its state and paper.</source>
            <translation>Der Drucker nimmt keine Blätter an: Zustand und Papier prüfen.</translation>
        </message>
        <message>
            <source>Sheets %1 to %2 went to the printer</source>
            <translation>Die Blätter %1 bis %2 gingen an den Drucker</translation>
        </message>
    </context>
    <context>
        <name>WorksheetPlace</name>
        <message>
            <source>Worksheet</source>
            <translation>Arbeitsblatt</translation>
        </message>
        <message>
            <source>&amp;Worksheet</source>
            <translation>&amp;Arbeitsblatt</translation>
        </message>
        <message>
            <source>&amp;Show the worksheet</source>
            <translation>Arbeitsblatt &amp;zeigen</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::AnalysesPane</name>
        <message>
            <source>Open analyses</source>
            <translation>Offene Analysen</translation>
        </message>
        <message>
            <source>No analysis was found. The dialog Plug-ins says where they were looked for and what was left out.</source>
            <translation>Es wurde keine Analyse gefunden. Der Dialog Zusatzmodule sagt, wo gesucht und was ausgelassen wurde.</translation>
        </message>
        <message>
            <source>Choose an analysis from the menu: its form and its answer open here.</source>
            <translation>Eine Analyse aus dem Menü wählen: ihr Formular und ihre Antwort öffnen sich hier.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::AnalysisPage</name>
        <message>
            <source>&amp;Run</source>
            <translation>&amp;Rechnen</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>&amp;Keep this result</source>
            <translation>Dieses Ergebnis &amp;behalten</translation>
        </message>
        <message>
            <source>– Nothing computed yet</source>
            <translation>– Noch nichts gerechnet</translation>
        </message>
        <message>
            <source>Computes the answer with these values</source>
            <translation>Rechnet die Antwort mit diesen Werten</translation>
        </message>
        <message>
            <source>Keeps this result in sight, beside the next one, to compare the two</source>
            <translation>Behält dieses Ergebnis neben dem nächsten im Blick, zum Vergleich</translation>
        </message>
        <message>
            <source>Progress of the analysis</source>
            <translation>Fortschritt der Analyse</translation>
        </message>
        <message>
            <source>State of the result</source>
            <translation>Stand des Ergebnisses</translation>
        </message>
        <message>
            <source>Why there is no result</source>
            <translation>Warum es kein Ergebnis gibt</translation>
        </message>
        <message>
            <source>Set the values on the left and press Run: the answer appears here.</source>
            <translation>Links die Werte eintragen und Rechnen drücken: hier erscheint die Antwort.</translation>
        </message>
        <message>
            <source>✖ This plug-in cannot be used</source>
            <translation>✖ Dieses Zusatzmodul ist nicht benutzbar</translation>
        </message>
        <message>
            <source>⟳ Stale: the project has changed since. Run it again.</source>
            <translation>⟳ Veraltet: das Projekt hat sich seither geändert. Neu rechnen.</translation>
        </message>
        <message>
            <source>✖ Not run: see the fields on the left</source>
            <translation>✖ Nicht gerechnet: siehe die Felder links</translation>
        </message>
        <message>
            <source>⟳ Stale: being computed anew</source>
            <translation>⟳ Veraltet: wird neu gerechnet</translation>
        </message>
        <message>
            <source>⟳ Being computed</source>
            <translation>⟳ Wird gerechnet</translation>
        </message>
        <message>
            <source>✔ Current</source>
            <translation>✔ Aktuell</translation>
        </message>
        <message>
            <source> What is shown below is an older result.</source>
            <translation> Darunter steht ein älteres Ergebnis.</translation>
        </message>
        <message>
            <source>⚠ Cancelled.</source>
            <translation>⚠ Abgebrochen.</translation>
        </message>
        <message>
            <source>⚠ Stopped: it does not fit into the memory.</source>
            <translation>⚠ Angehalten: es passt nicht in den Speicher.</translation>
        </message>
        <message>
            <source>✖ No answer.</source>
            <translation>✖ Keine Antwort.</translation>
        </message>
        <message>
            <source>And %1 more.</source>
            <translation>Und %1 weitere.</translation>
        </message>
        <message>
            <source>Kept: %1</source>
            <translation>Behalten: %1</translation>
        </message>
        <message>
            <source>Close the kept result</source>
            <translation>Behaltenes Ergebnis schließen</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::AnswerPanel</name>
        <message>
            <source>Probability of the top event</source>
            <translation>Wahrscheinlichkeit des Hauptereignisses</translation>
        </message>
        <message>
            <source>State of the answer</source>
            <translation>Stand der Antwort</translation>
        </message>
        <message>
            <source>Progress of the analysis</source>
            <translation>Fortschritt der Analyse</translation>
        </message>
        <message>
            <source>Single failures, cut sets and warnings of the top event</source>
            <translation>Einzelausfälle, Schnitte und Warnungen des Hauptereignisses</translation>
        </message>
        <message>
            <source>Copy line</source>
            <translation>Zeile kopieren</translation>
        </message>
        <message>
            <source>Copy everything</source>
            <translation>Alles kopieren</translation>
        </message>
        <message>
            <source>Clear the marks in the tree</source>
            <translation>Markierungen im Baum löschen</translation>
        </message>
        <message>
            <source>No top event</source>
            <translation>Kein Hauptereignis</translation>
        </message>
        <message>
            <source>The first answer is on its way</source>
            <translation>Die erste Antwort ist unterwegs</translation>
        </message>
        <message>
            <source>Build a tree and make its first gate a top event: how probable it is and what alone brings it about stands here.</source>
            <translation>Einen Baum bauen und sein erstes Gatter zum Hauptereignis machen: wie wahrscheinlich es ist und was allein dazu führt, steht dann hier.</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>No figure</source>
            <translation>Keine Zahl</translation>
        </message>
        <message>
            <source>The tree has an error; it is said below.</source>
            <translation>Der Baum hat einen Fehler; er steht unten.</translation>
        </message>
        <message>
            <source>The warnings below say why.</source>
            <translation>Die Warnungen unten sagen, warum.</translation>
        </message>
        <message>
            <source>the last one was %1</source>
            <translation>die letzte war %1</translation>
        </message>
        <message>
            <source>%1 (stale)</source>
            <translation>%1 (veraltet)</translation>
        </message>
        <message>
            <source>– Nothing to answer yet</source>
            <translation>– Noch nichts zu beantworten</translation>
        </message>
        <message>
            <source>⟳ Stale: being computed anew</source>
            <translation>⟳ Veraltet: wird neu gerechnet</translation>
        </message>
        <message>
            <source>⟳ Being computed</source>
            <translation>⟳ Wird gerechnet</translation>
        </message>
        <message>
            <source>✖ No answer: the tree has an error</source>
            <translation>✖ Keine Antwort: der Baum hat einen Fehler</translation>
        </message>
        <message>
            <source>✔ Current</source>
            <translation>✔ Aktuell</translation>
        </message>
        <message>
            <source>⚠ Stale: computing was cancelled</source>
            <translation>⚠ Veraltet: das Rechnen wurde abgebrochen</translation>
        </message>
        <message>
            <source>⚠ Cancelled</source>
            <translation>⚠ Abgebrochen</translation>
        </message>
        <message>
            <source>Compute</source>
            <translation>Rechnen</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::Arrange</name>
        <message>
            <source>(no component)</source>
            <translation>(keine Komponente)</translation>
        </message>
        <message>
            <source>(no end effect)</source>
            <translation>(keine Endwirkung)</translation>
        </message>
        <message>
            <source>(no severity)</source>
            <translation>(keine Schwere)</translation>
        </message>
        <message>
            <source>(no location)</source>
            <translation>(kein Ort)</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::CausesPage</name>
        <message>
            <source>same supply</source>
            <translation>gleiche Versorgung</translation>
        </message>
        <message>
            <source>same location</source>
            <translation>gleicher Ort</translation>
        </message>
        <message>
            <source>same type</source>
            <translation>gleiche Bauart</translation>
        </message>
        <message>
            <source>same fuel</source>
            <translation>gleicher Brennstoff</translation>
        </message>
        <message>
            <source>same maintenance</source>
            <translation>gleiche Wartung</translation>
        </message>
        <message>
            <source>Leave out what a common-cause group holds already</source>
            <translation>Auslassen, was schon in einer Gruppe gemeinsamer Ursachen steht</translation>
        </message>
        <message>
            <source>Accept: make a common-cause group</source>
            <translation>Annehmen: Gruppe gemeinsamer Ursache anlegen</translation>
        </message>
        <message>
            <source>Proposed common causes</source>
            <translation>Vorgeschlagene gemeinsame Ursachen</translation>
        </message>
        <message>
            <source>Proposal</source>
            <translation>Vorschlag</translation>
        </message>
        <message>
            <source>What is shared</source>
            <translation>Was geteilt wird</translation>
        </message>
        <message>
            <source>Which</source>
            <translation>Welche</translation>
        </message>
        <message>
            <source>Events</source>
            <translation>Ereignisse</translation>
        </message>
        <message>
            <source>In a group already</source>
            <translation>Schon in einer Gruppe</translation>
        </message>
        <message>
            <source>Beta factor: the share of the failures that is common</source>
            <translation>Beta-Faktor: der gemeinsame Anteil der Ausfälle</translation>
        </message>
        <message>
            <source>for example 0.1</source>
            <translation>zum Beispiel 0,1</translation>
        </message>
        <message>
            <source>Where the beta factor comes from</source>
            <translation>Woher der Beta-Faktor kommt</translation>
        </message>
        <message>
            <source>document and table, or: our log</source>
            <translation>Dokument und Tabelle, oder: unser Logbuch</translation>
        </message>
        <message>
            <source>How far the source can be trusted</source>
            <translation>Wie weit der Quelle zu trauen ist</translation>
        </message>
        <message>
            <source>trust: not said</source>
            <translation>Vertrauen: nicht angegeben</translation>
        </message>
        <message>
            <source>&amp;Beta</source>
            <translation>&amp;Beta</translation>
        </message>
        <message>
            <source>from &amp;where</source>
            <translation>&amp;woher</translation>
        </message>
        <message>
            <source>The proposals are being looked for.</source>
            <translation>Die Vorschläge werden gesucht.</translation>
        </message>
        <message>
            <source>Nothing to propose. Proposals come from what the plant knows: supplies, locations, types, fuel and tests of parts on which one gate counts to fail independently.</source>
            <translation>Nichts vorzuschlagen. Vorschläge kommen aus dem, was die Anlage weiß: Versorgung, Ort, Bauart, Brennstoff und Prüfungen von Teilen, deren unabhängigen Ausfall ein Gatter voraussetzt.</translation>
        </message>
        <message>
            <source>Parts on which a gate counts to fail independently, although they share something. A proposal is a reason to think and no factor: that has to come from a source or from the log.</source>
            <translation>Teile, deren unabhängigen Ausfall ein Gatter voraussetzt, obwohl sie etwas teilen. Ein Vorschlag ist ein Grund zum Nachdenken und kein Faktor: der muss aus einer Quelle oder dem Logbuch kommen.</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 und %2 weitere</translation>
        </message>
        <message>
            <source>%1 Events: %2.</source>
            <translation>%1 Ereignisse: %2.</translation>
        </message>
        <message>
            <source>proposed common cause: %1</source>
            <translation>vorgeschlagene gemeinsame Ursache: %1</translation>
        </message>
        <message>
            <source>The project has changed; the proposals are looked for again.</source>
            <translation>Das Projekt hat sich geändert; die Vorschläge werden neu gesucht.</translation>
        </message>
        <message>
            <source>Type the beta factor first: the share of the failures that is common, above 0 and at most 1.</source>
            <translation>Erst den Beta-Faktor eintippen: den gemeinsamen Anteil der Ausfälle, über 0 und höchstens 1.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::CellBlock</name>
        <message>
            <source>this column is worked out, or belongs to the plant page</source>
            <translation>diese Spalte wird gerechnet oder gehört zur Seite Anlage</translation>
        </message>
        <message>
            <source>row %1 of what was pasted</source>
            <translation>Zeile %1 des Eingefügten</translation>
        </message>
        <message>
            <source>column %1 of what was pasted</source>
            <translation>Spalte %1 des Eingefügten</translation>
        </message>
        <message>
            <source>there is no row left below: make rows first, or import a table</source>
            <translation>darunter ist keine Zeile mehr: erst Zeilen anlegen oder eine Tabelle einlesen</translation>
        </message>
        <message>
            <source>there is no column left on the right</source>
            <translation>rechts ist keine Spalte mehr</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::CellChoices</name>
        <message>
            <source> (up to %1 a year)</source>
            <translation> (bis %1 im Jahr)</translation>
        </message>
        <message>
            <source>open: nobody began yet</source>
            <translation>open: noch niemand hat begonnen</translation>
        </message>
        <message>
            <source>under-way: begun</source>
            <translation>under-way: begonnen</translation>
        </message>
        <message>
            <source>done: but not yet shown to help</source>
            <translation>done: aber noch nicht als wirksam nachgewiesen</translation>
        </message>
        <message>
            <source>proved: shown to help</source>
            <translation>proved: als wirksam nachgewiesen</translation>
        </message>
        <message>
            <source>dropped: with the reason beside it</source>
            <translation>dropped: mit dem Grund daneben</translation>
        </message>
        <message>
            <source>yes: nobody sees it</source>
            <translation>yes: niemand sieht es</translation>
        </message>
        <message>
            <source>no: it shows at once</source>
            <translation>no: es zeigt sich sofort</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::CellDelegate</name>
        <message>
            <source>0 to 1</source>
            <translation>0 bis 1</translation>
        </message>
        <message>
            <source>4 wk</source>
            <comment>a time between tests, with its unit</comment>
            <translation>4 wk</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::CellLineField</name>
        <message>
            <source>Choose a day (Alt+Down)</source>
            <translation>Einen Tag wählen (Alt+Unten)</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ColumnChoice</name>
        <message>
            <source>Overview</source>
            <translation>Übersicht</translation>
        </message>
        <message>
            <source>Causes and effects</source>
            <translation>Ursachen und Wirkungen</translation>
        </message>
        <message>
            <source>Ratings</source>
            <translation>Bewertungen</translation>
        </message>
        <message>
            <source>Criticality and risk</source>
            <translation>Kritikalität und Risiko</translation>
        </message>
        <message>
            <source>End effects and trees</source>
            <translation>Endwirkungen und Bäume</translation>
        </message>
        <message>
            <source>Actions</source>
            <translation>Maßnahmen</translation>
        </message>
        <message>
            <source>Dormant failures</source>
            <translation>Schlafende Ausfälle</translation>
        </message>
        <message>
            <source>What is missing</source>
            <translation>Was fehlt</translation>
        </message>
        <message>
            <source>Everything</source>
            <translation>Alles</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ComponentBox</name>
        <message>
            <source>choose a component</source>
            <translation>eine Komponente wählen</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::Composer</name>
        <message>
            <source>at the top</source>
            <translation>an der Spitze</translation>
        </message>
        <message>
            <source>below %1</source>
            <translation>unter %1</translation>
        </message>
        <message>
            <source>+ 1 event</source>
            <translation>+ 1 Ereignis</translation>
        </message>
        <message>
            <source>+ %1 events</source>
            <translation>+ %1 Ereignisse</translation>
        </message>
        <message>
            <source>transfer: drawn %1</source>
            <translation>Übertragung: gezeichnet %1</translation>
        </message>
        <message>
            <source>%1, at least %2 of %3</source>
            <translation>%1, mindestens %2 von %3</translation>
        </message>
        <message>
            <source>%1, inputs: %2</source>
            <translation>%1, Eingänge: %2</translation>
        </message>
        <message>
            <source>%1, folded: %2</source>
            <translation>%1, zugeklappt: %2</translation>
        </message>
        <message>
            <source>%1, used %2 times</source>
            <translation>%1, %2-mal benutzt</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ConnectionDialog</name>
        <message>
            <source>New supply</source>
            <translation>Neue Versorgung</translation>
        </message>
        <message>
            <source>Supply</source>
            <translation>Versorgung</translation>
        </message>
        <message>
            <source>&amp;What flows</source>
            <translation>&amp;Was fließt</translation>
        </message>
        <message>
            <source>What flows</source>
            <translation>Was fließt</translation>
        </message>
        <message>
            <source>24 V DC, fuel oil, control air, signal</source>
            <translation>24 V DC, Heizöl, Steuerluft, Signal</translation>
        </message>
        <message>
            <source>&amp;From</source>
            <translation>&amp;Von</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>&amp;To</source>
            <translation>&amp;Nach</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Nach</translation>
        </message>
        <message>
            <source>&amp;Direction</source>
            <translation>&amp;Richtung</translation>
        </message>
        <message>
            <source>Direction</source>
            <translation>Richtung</translation>
        </message>
        <message>
            <source>feed: towards what is supplied</source>
            <translation>Zulauf: zum Versorgten</translation>
        </message>
        <message>
            <source>return: back to the source</source>
            <translation>Rücklauf: zurück zur Quelle</translation>
        </message>
        <message>
            <source>T&amp;hrough</source>
            <translation>&amp;Durch</translation>
        </message>
        <message>
            <source>Through which components, in their order</source>
            <translation>Durch welche Komponenten, in ihrer Reihenfolge</translation>
        </message>
        <message>
            <source>fuses, breakers, terminals in their order: F-3, K-2</source>
            <translation>Sicherungen, Schalter, Klemmen in ihrer Reihenfolge: F-3, K-2</translation>
        </message>
        <message>
            <source>&amp;Capacity</source>
            <translation>&amp;Leistung</translation>
        </message>
        <message>
            <source>Capacity</source>
            <translation>Leistung</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>Unit of the capacity</source>
            <translation>Einheit der Leistung</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>There is no component %1; write tags or ids with commas between them.</source>
            <translation>Es gibt keine Komponente %1; Kennzeichen oder Kennungen mit Kommas dazwischen schreiben.</translation>
        </message>
        <message>
            <source>The capacity "%1" is no number of 0 or above.</source>
            <translation>Die Leistung "%1" ist keine Zahl ab 0.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::CoveragePage</name>
        <message>
            <source>Where worksheet and trees meet, and where not</source>
            <translation>Wo Arbeitsblatt und Bäume zusammentreffen, und wo nicht</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>Severity</source>
            <translation>Schwere</translation>
        </message>
        <message>
            <source>Probability</source>
            <translation>Wahrscheinlichkeit</translation>
        </message>
        <message>
            <source>Per year</source>
            <translation>Im Jahr</translation>
        </message>
        <message>
            <source>Remark</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>Worksheet and trees are being compared.</source>
            <translation>Arbeitsblatt und Bäume werden verglichen.</translation>
        </message>
        <message>
            <source>A click goes there: to the plant, to the tree, or to a proposal for a tree. Common causes are counted.</source>
            <translation>Ein Klick führt dorthin: zur Anlage, zum Baum oder zu einem Vorschlag für einen Baum. Gemeinsame Ursachen sind gerechnet.</translation>
        </message>
        <message>
            <source>End effects without a tree</source>
            <translation>Endwirkungen ohne Baum</translation>
        </message>
        <message>
            <source>End effects with a tree</source>
            <translation>Endwirkungen mit Baum</translation>
        </message>
        <message>
            <source>failure modes: %1</source>
            <translation>Ausfallarten: %1</translation>
        </message>
        <message>
            <source>%1; some stand in %2</source>
            <translation>%1; einige stehen in %2</translation>
        </message>
        <message>
            <source>%1; %2</source>
            <translation>%1; %2</translation>
        </message>
        <message>
            <source>Failure modes in no tree</source>
            <translation>Ausfallarten in keinem Baum</translation>
        </message>
        <message>
            <source>Events in no row of the worksheet</source>
            <translation>Ereignisse in keiner Zeile des Arbeitsblatts</translation>
        </message>
        <message>
            <source>End effects that a top event names and no row has</source>
            <translation>Endwirkungen, die ein Hauptereignis nennt und keine Zeile hat</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::DetailsForm</name>
        <message>
            <source>Choose an event or a gate to see all about it.</source>
            <translation>Ein Ereignis oder Gatter wählen, um alles darüber zu sehen.</translation>
        </message>
        <message>
            <source>&amp;Text</source>
            <translation>&amp;Text</translation>
        </message>
        <message>
            <source>Text</source>
            <translation>Text</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Kennung</translation>
        </message>
        <message>
            <source>&amp;Kind</source>
            <translation>&amp;Art</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>%1 gate</source>
            <translation>Gatter: %1</translation>
        </message>
        <message>
            <source>%1 event</source>
            <translation>Ereignis: %1</translation>
        </message>
        <message>
            <source>What the kind means</source>
            <translation>Was die Art bedeutet</translation>
        </message>
        <message>
            <source>&amp;Needs</source>
            <translation>&amp;Braucht</translation>
        </message>
        <message>
            <source>How many inputs it needs</source>
            <translation>Wie viele Eingänge es braucht</translation>
        </message>
        <message>
            <source>it is so (true)</source>
            <translation>es ist so (wahr)</translation>
        </message>
        <message>
            <source>&amp;State</source>
            <translation>&amp;Zustand</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Zustand</translation>
        </message>
        <message>
            <source>Stands below</source>
            <translation>Steht unter</translation>
        </message>
        <message>
            <source>&amp;Failure mode</source>
            <translation>Ausfall&amp;art</translation>
        </message>
        <message>
            <source>Failure mode of the plant</source>
            <translation>Ausfallart der Anlage</translation>
        </message>
        <message>
            <source>From the worksheet</source>
            <translation>Aus dem Arbeitsblatt</translation>
        </message>
        <message>
            <source>Remark</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>&amp;Remark</source>
            <translation>&amp;Bemerkung</translation>
        </message>
        <message>
            <source> of %1</source>
            <translation> von %1</translation>
        </message>
        <message>
            <source>Noticed by:</source>
            <translation>Bemerkt durch:</translation>
        </message>
        <message>
            <source>Effect:</source>
            <translation>Wirkung:</translation>
        </message>
        <message>
            <source>On the plant:</source>
            <translation>Auf die Anlage:</translation>
        </message>
        <message>
            <source>Made up for by:</source>
            <translation>Ausgeglichen durch:</translation>
        </message>
        <message>
            <source>Failure model of the failure mode</source>
            <translation>Ausfallmodell der Ausfallart</translation>
        </message>
        <message>
            <source>Failure model</source>
            <translation>Ausfallmodell</translation>
        </message>
        <message>
            <source>none: it stands alone</source>
            <translation>keine: es steht für sich</translation>
        </message>
        <message>
            <source>top event %1</source>
            <translation>Hauptereignis %1</translation>
        </message>
        <message>
            <source>and %1 more</source>
            <translation>und %1 weitere</translation>
        </message>
        <message>
            <source>nothing: it is in no tree</source>
            <translation>nichts: es ist in keinem Baum</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::DiagramPanel</name>
        <message>
            <source>Drawing...</source>
            <translation>Wird gezeichnet ...</translation>
        </message>
        <message>
            <source>Diagram of the fault tree</source>
            <translation>Diagramm des Fehlerbaums</translation>
        </message>
        <message>
            <source>%1 %</source>
            <translation>%1 %</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Blatt</translation>
        </message>
        <message>
            <source>Under the events</source>
            <translation>Unter den Ereignissen</translation>
        </message>
        <message>
            <source>What stands under the events</source>
            <translation>Was unter den Ereignissen steht</translation>
        </message>
        <message>
            <source>No captions</source>
            <translation>Ohne Angaben</translation>
        </message>
        <message>
            <source>Tags</source>
            <translation>Kennzeichen</translation>
        </message>
        <message>
            <source>Probabilities</source>
            <translation>Wahrscheinlichkeiten</translation>
        </message>
        <message>
            <source>Probabilities, gates too</source>
            <translation>Wahrscheinlichkeiten, auch der Gatter</translation>
        </message>
        <message>
            <source>Whole tree</source>
            <translation>Ganzer Baum</translation>
        </message>
        <message>
            <source>Ctrl+Shift+W</source>
            <translation>Ctrl+Shift+W</translation>
        </message>
        <message>
            <source>Sheets as printed</source>
            <translation>Blätter wie gedruckt</translation>
        </message>
        <message>
            <source>Ctrl+Shift+P</source>
            <translation>Ctrl+Shift+P</translation>
        </message>
        <message>
            <source>Previous sheet</source>
            <translation>Voriges Blatt</translation>
        </message>
        <message>
            <source>Next sheet</source>
            <translation>Nächstes Blatt</translation>
        </message>
        <message>
            <source>Larger</source>
            <translation>Größer</translation>
        </message>
        <message>
            <source>Ctrl++</source>
            <translation>Ctrl++</translation>
        </message>
        <message>
            <source>Ctrl+=</source>
            <translation>Ctrl+=</translation>
        </message>
        <message>
            <source>Smaller</source>
            <translation>Kleiner</translation>
        </message>
        <message>
            <source>Ctrl+-</source>
            <translation>Ctrl+-</translation>
        </message>
        <message>
            <source>Normal size</source>
            <translation>Normale Größe</translation>
        </message>
        <message>
            <source>Ctrl+0</source>
            <translation>Ctrl+0</translation>
        </message>
        <message>
            <source>Show all of it</source>
            <translation>Alles zeigen</translation>
        </message>
        <message>
            <source>Ctrl+9</source>
            <translation>Ctrl+9</translation>
        </message>
        <message>
            <source>Fit to the width</source>
            <translation>An die Breite anpassen</translation>
        </message>
        <message>
            <source>Ctrl+8</source>
            <translation>Ctrl+8</translation>
        </message>
        <message>
            <source>Overview</source>
            <translation>Übersicht</translation>
        </message>
        <message>
            <source>Ctrl+M</source>
            <translation>Ctrl+M</translation>
        </message>
        <message>
            <source>Move boxes smoothly</source>
            <translation>Kästen weich bewegen</translation>
        </message>
        <message>
            <source>Find in the tree</source>
            <translation>Im Baum suchen</translation>
        </message>
        <message>
            <source>Next hit</source>
            <translation>Nächster Treffer</translation>
        </message>
        <message>
            <source>Previous hit</source>
            <translation>Voriger Treffer</translation>
        </message>
        <message>
            <source>Shift+F3</source>
            <translation>Shift+F3</translation>
        </message>
        <message>
            <source>Fold or unfold</source>
            <translation>Zu- oder aufklappen</translation>
        </message>
        <message>
            <source>Fold</source>
            <translation>Zuklappen</translation>
        </message>
        <message>
            <source>Unfold</source>
            <translation>Aufklappen</translation>
        </message>
        <message>
            <source>Unfold all below</source>
            <translation>Alles darunter aufklappen</translation>
        </message>
        <message>
            <source>Fold all below</source>
            <translation>Alles darunter zuklappen</translation>
        </message>
        <message>
            <source>Unfold the whole tree</source>
            <translation>Ganzen Baum aufklappen</translation>
        </message>
        <message>
            <source>Ctrl+*</source>
            <translation>Ctrl+*</translation>
        </message>
        <message>
            <source>Fold all but the first gate</source>
            <translation>Alles bis auf das erste Gatter zuklappen</translation>
        </message>
        <message>
            <source>Ctrl+_</source>
            <translation>Ctrl+_</translation>
        </message>
        <message>
            <source>Go where it is drawn</source>
            <translation>Zur gezeichneten Stelle</translation>
        </message>
        <message>
            <source>Ctrl+Return</source>
            <translation>Ctrl+Return</translation>
        </message>
        <message>
            <source>Export the diagram...</source>
            <translation>Diagramm ausgeben ...</translation>
        </message>
        <message>
            <source>Ctrl+Shift+E</source>
            <translation>Ctrl+Shift+E</translation>
        </message>
        <message>
            <source>Print the diagram...</source>
            <translation>Diagramm drucken ...</translation>
        </message>
        <message>
            <source>Rename</source>
            <translation>Umbenennen</translation>
        </message>
        <message>
            <source>Add an event below</source>
            <translation>Ereignis darunter</translation>
        </message>
        <message>
            <source>Add an event beside</source>
            <translation>Ereignis daneben</translation>
        </message>
        <message>
            <source>Or gate above</source>
            <translation>ODER-Gatter darüber</translation>
        </message>
        <message>
            <source>Ctrl+G</source>
            <translation>Ctrl+G</translation>
        </message>
        <message>
            <source>And gate above</source>
            <translation>UND-Gatter darüber</translation>
        </message>
        <message>
            <source>Vote gate above</source>
            <translation>Auswahlgatter darüber</translation>
        </message>
        <message>
            <source>Dissolve the gate</source>
            <translation>Gatter auflösen</translation>
        </message>
        <message>
            <source>Ctrl+Shift+G</source>
            <translation>Ctrl+Shift+G</translation>
        </message>
        <message>
            <source>Make it a copy of its own</source>
            <translation>Zur eigenen Kopie machen</translation>
        </message>
        <message>
            <source>Ctrl+Shift+D</source>
            <translation>Ctrl+Shift+D</translation>
        </message>
        <message>
            <source>Move to the left</source>
            <translation>Nach links</translation>
        </message>
        <message>
            <source>Alt+Left</source>
            <translation>Alt+Left</translation>
        </message>
        <message>
            <source>Move to the right</source>
            <translation>Nach rechts</translation>
        </message>
        <message>
            <source>Alt+Right</source>
            <translation>Alt+Right</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>And</source>
            <translation>UND</translation>
        </message>
        <message>
            <source>Or</source>
            <translation>ODER</translation>
        </message>
        <message>
            <source>Vote</source>
            <translation>Auswahl (k von n)</translation>
        </message>
        <message>
            <source>Inhibit</source>
            <translation>Sperrgatter</translation>
        </message>
        <message>
            <source>Exclusive or</source>
            <translation>Exklusiv-ODER</translation>
        </message>
        <message>
            <source>Not</source>
            <translation>NICHT</translation>
        </message>
        <message>
            <source>Priority and</source>
            <translation>Prioritäts-UND</translation>
        </message>
        <message>
            <source>Basic event</source>
            <translation>Basisereignis</translation>
        </message>
        <message>
            <source>Undeveloped event</source>
            <translation>Nicht weiter untersuchtes Ereignis</translation>
        </message>
        <message>
            <source>House event</source>
            <translation>Schalter</translation>
        </message>
        <message>
            <source>Condition</source>
            <translation>Bedingung</translation>
        </message>
        <message>
            <source>Copy</source>
            <translation>Kopieren</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Ausschneiden</translation>
        </message>
        <message>
            <source>Paste below</source>
            <translation>Darunter einfügen</translation>
        </message>
        <message>
            <source>%1 would stand below itself</source>
            <translation>%1 stünde unter sich selbst</translation>
        </message>
        <message>
            <source>Paste below %1</source>
            <translation>Unter %1 einfügen</translation>
        </message>
        <message>
            <source>Share with %1</source>
            <translation>Auch unter %1 benutzen</translation>
        </message>
        <message>
            <source>Move to %1</source>
            <translation>Nach %1 verschieben</translation>
        </message>
        <message>
            <source>New event</source>
            <translation>Neues Ereignis</translation>
        </message>
        <message>
            <source>New gate</source>
            <translation>Neues Gatter</translation>
        </message>
        <message>
            <source>The clipboard holds nothing that can be pasted into a tree.</source>
            <translation>Die Zwischenablage enthält nichts, was in einen Baum eingefügt werden kann.</translation>
        </message>
        <message>
            <source>There is no tree to export.</source>
            <translation>Es gibt keinen Baum auszugeben.</translation>
        </message>
        <message>
            <source>Drawing the sheets</source>
            <translation>Die Blätter werden gezeichnet</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Share %1 nodes with %2</source>
            <translation>%1 Knoten auch unter %2 benutzen</translation>
        </message>
        <message>
            <source>Move %1 nodes to %2</source>
            <translation>%1 Knoten nach %2 verschieben</translation>
        </message>
        <message>
            <source>Ctrl: share instead of move</source>
            <translation>Strg: mitbenutzen statt verschieben</translation>
        </message>
        <message>
            <source>Insert gate above</source>
            <translation>Gatter darüber einsetzen</translation>
        </message>
        <message>
            <source>Kind of gate</source>
            <translation>Art des Gatters</translation>
        </message>
        <message>
            <source>Kind of event</source>
            <translation>Art des Ereignisses</translation>
        </message>
        <message>
            <source>This project has no top event yet: add one in the outline.</source>
            <translation>Dieses Projekt hat noch kein Hauptereignis: in der Gliederung eines anlegen.</translation>
        </message>
        <message>
            <source>Lower gates were folded: more than %1 boxes are not shown at once.</source>
            <translation>Untere Gatter wurden zugeklappt: mehr als %1 Kästen werden nicht auf einmal gezeigt.</translation>
        </message>
        <message>
            <source>The picture is the one from before.</source>
            <translation>Das Bild ist das von vorher.</translation>
        </message>
        <message>
            <source>Sheet %1 of %2: %3</source>
            <translation>Blatt %1 von %2: %3</translation>
        </message>
        <message>
            <source>The heavy lines show how it reaches the top. Esc clears them.</source>
            <translation>Die dicken Linien zeigen, wie es zur Spitze gelangt. Esc löscht sie.</translation>
        </message>
        <message>
            <source>Marked with a dot and a heavy frame. Esc clears it.</source>
            <translation>Mit Punkt und dickem Rahmen markiert. Esc löscht es.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::Drop</name>
        <message>
            <source>Drop it on a gate, or beside an event</source>
            <translation>Auf ein Gatter oder neben ein Ereignis fallen lassen</translation>
        </message>
        <message>
            <source>%1 takes no inputs</source>
            <translation>%1 nimmt keine Eingänge</translation>
        </message>
        <message>
            <source>Drop it on another gate</source>
            <translation>Auf ein anderes Gatter fallen lassen</translation>
        </message>
        <message>
            <source>%1 would stand below itself</source>
            <translation>%1 stünde unter sich selbst</translation>
        </message>
        <message>
            <source>%1 is an input of %2 already</source>
            <translation>%1 ist schon Eingang von %2</translation>
        </message>
        <message>
            <source>%1 is the last input of %2 already</source>
            <translation>%1 ist schon der letzte Eingang von %2</translation>
        </message>
        <message>
            <source>Reorder: %1 beside %2</source>
            <translation>Umordnen: %1 neben %2</translation>
        </message>
        <message>
            <source>Share %1 with %2</source>
            <translation>%1 auch unter %2 benutzen</translation>
        </message>
        <message>
            <source>Move %1 to %2</source>
            <translation>%1 nach %2 verschieben</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ExchangeDesk</name>
        <message>
            <source>%1 ...</source>
            <translation>%1 ...</translation>
        </message>
        <message>
            <source>Import</source>
            <translation>Einlesen</translation>
        </message>
        <message>
            <source>plant</source>
            <translation>anlage</translation>
        </message>
        <message>
            <source>Export</source>
            <translation>Ausgeben</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Cancelled; nothing was changed.</source>
            <translation>Abgebrochen; nichts wurde geändert.</translation>
        </message>
        <message>
            <source>Reading %1 ...</source>
            <translation>%1 wird gelesen ...</translation>
        </message>
        <message>
            <source>%1 cannot be imported.</source>
            <translation>%1 kann nicht eingelesen werden.</translation>
        </message>
        <message>
            <source>%1 was imported as a new project.</source>
            <translation>%1 wurde als neues Projekt eingelesen.</translation>
        </message>
        <message>
            <source>%1 was imported.</source>
            <translation>%1 wurde eingelesen.</translation>
        </message>
        <message>
            <source>Writing %1 ...</source>
            <translation>%1 wird geschrieben ...</translation>
        </message>
        <message>
            <source>%1 cannot be written (%2); choose another place.</source>
            <translation>%1 kann nicht geschrieben werden (%2); einen anderen Ort wählen.</translation>
        </message>
        <message>
            <source>Exported to %1.</source>
            <translation>Nach %1 ausgegeben.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::Export</name>
        <message>
            <source>%1 cannot be written: %2. Choose another place.</source>
            <translation>%1 kann nicht geschrieben werden: %2. Einen anderen Ort wählen.</translation>
        </message>
        <message>
            <source>The name must end in .pdf, .svg or .png.</source>
            <translation>Der Name muss auf .pdf, .svg oder .png enden.</translation>
        </message>
        <message>
            <source>The export was cancelled.</source>
            <translation>Die Ausgabe wurde abgebrochen.</translation>
        </message>
        <message>
            <source>One sheet written to %1</source>
            <translation>Ein Blatt nach %1 geschrieben</translation>
        </message>
        <message>
            <source>%1 sheets written to %2</source>
            <translation>%1 Blätter nach %2 geschrieben</translation>
        </message>
        <message>
            <source>%1 and on</source>
            <translation>%1 und folgende</translation>
        </message>
        <message>
            <source>The export failed: %1</source>
            <translation>Die Ausgabe ist gescheitert: %1</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ExportDialog</name>
        <message>
            <source>Export the diagram</source>
            <translation>Diagramm ausgeben</translation>
        </message>
        <message>
            <source>Choose...</source>
            <translation>Wählen ...</translation>
        </message>
        <message>
            <source>name.pdf, name.svg or name.png</source>
            <translation>name.pdf, name.svg oder name.png</translation>
        </message>
        <message>
            <source>&amp;File</source>
            <translation>&amp;Datei</translation>
        </message>
        <message>
            <source>File</source>
            <translation>Datei</translation>
        </message>
        <message>
            <source>&amp;Paper</source>
            <translation>&amp;Papier</translation>
        </message>
        <message>
            <source>the one that needs fewer sheets</source>
            <translation>was weniger Blätter braucht</translation>
        </message>
        <message>
            <source>upright</source>
            <translation>hoch</translation>
        </message>
        <message>
            <source>across</source>
            <translation>quer</translation>
        </message>
        <message>
            <source>&amp;Orientation</source>
            <translation>&amp;Ausrichtung</translation>
        </message>
        <message>
            <source>nothing</source>
            <translation>nichts</translation>
        </message>
        <message>
            <source>tags</source>
            <translation>Kennzeichen</translation>
        </message>
        <message>
            <source>probabilities</source>
            <translation>Wahrscheinlichkeiten</translation>
        </message>
        <message>
            <source>probabilities, gates too</source>
            <translation>Wahrscheinlichkeiten, auch der Gatter</translation>
        </message>
        <message>
            <source>&amp;Under the events</source>
            <translation>&amp;Unter den Ereignissen</translation>
        </message>
        <message>
            <source> dpi</source>
            <translation> dpi</translation>
        </message>
        <message>
            <source>&amp;Resolution of a PNG</source>
            <translation>&amp;Auflösung eines PNG</translation>
        </message>
        <message>
            <source>&amp;Only the sheet that is shown</source>
            <translation>&amp;Nur das gezeigte Blatt</translation>
        </message>
        <message>
            <source>Write</source>
            <translation>Schreiben</translation>
        </message>
        <message>
            <source>Drawings (*.pdf *.svg *.png);;PDF, all sheets in one file (*.pdf);;SVG, a file for each sheet (*.svg);;PNG, a file for each sheet (*.png)</source>
            <translation>Zeichnungen (*.pdf *.svg *.png);;PDF, alle Blätter in einer Datei (*.pdf);;SVG, eine Datei je Blatt (*.svg);;PNG, eine Datei je Blatt (*.png)</translation>
        </message>
        <message>
            <source>The end of the name says what is written.</source>
            <translation>Das Ende des Namens sagt, was geschrieben wird.</translation>
        </message>
        <message>
            <source>The name must end in .pdf, .svg or .png.</source>
            <translation>Der Name muss auf .pdf, .svg oder .png enden.</translation>
        </message>
        <message>
            <source>All sheets go into one file.</source>
            <translation>Alle Blätter kommen in eine Datei.</translation>
        </message>
        <message>
            <source>Several sheets become name-1, name-2 and so on.</source>
            <translation>Mehrere Blätter werden name-1, name-2 und so weiter.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::FactsDialog</name>
        <message>
            <source>Take over</source>
            <translation>Übernehmen</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::FileDesk</name>
        <message>
            <source>Save as ...</source>
            <translation>Speichern unter ...</translation>
        </message>
        <message>
            <source>%1 is open in %2. You can look at it here, and save it under another name.</source>
            <translation>%1 ist in %2 geöffnet. Hier lässt es sich ansehen und unter anderem Namen speichern.</translation>
        </message>
        <message>
            <source>New project</source>
            <translation>Neues Projekt</translation>
        </message>
        <message>
            <source>A burner that must start</source>
            <translation>Ein Brenner, der starten muss</translation>
        </message>
        <message>
            <source>A pair of pumps, one on standby</source>
            <translation>Ein Pumpenpaar, eine in Bereitschaft</translation>
        </message>
        <message numerus="yes">
            <source>%1 has %n error(s): until they are mended, nothing can be computed.</source>
            <translation>
                <numerusform>%1 hat %n Fehler: bis zur Behebung kann nichts gerechnet werden.</numerusform>
                <numerusform>%1 hat %n Fehler: bis zur Behebung kann nichts gerechnet werden.</numerusform>
            </translation>
        </message>
        <message>
            <source>Show them</source>
            <translation>Zeigen</translation>
        </message>
        <message>
            <source>%1, line %2: %3</source>
            <translation>%1, Zeile %2: %3</translation>
        </message>
        <message numerus="yes">
            <source>And %n more.</source>
            <translation>
                <numerusform>Und %n weitere.</numerusform>
                <numerusform>Und %n weitere.</numerusform>
            </translation>
        </message>
        <message>
            <source>Try again</source>
            <translation>Noch einmal versuchen</translation>
        </message>
        <message>
            <source>%1 was changed by somebody else since it was read here. Saving would write over that.</source>
            <translation>%1 wurde von jemand anderem geändert, seit es hier gelesen wurde. Speichern würde das überschreiben.</translation>
        </message>
        <message>
            <source>Save over it</source>
            <translation>Überschreiben</translation>
        </message>
        <message>
            <source>plant</source>
            <translation>anlage</translation>
        </message>
        <message>
            <source>Writing %1 ...</source>
            <translation>%1 wird geschrieben ...</translation>
        </message>
        <message>
            <source>%1 was changed by somebody else.</source>
            <translation>%1 wurde von jemand anderem geändert.</translation>
        </message>
        <message>
            <source>%1 is gone from the disk.</source>
            <translation>%1 ist nicht mehr auf dem Datenträger.</translation>
        </message>
        <message>
            <source>Save it again</source>
            <translation>Wieder speichern</translation>
        </message>
        <message>
            <source>Reading it again drops what you have not saved.</source>
            <translation>Neu lesen verwirft, was nicht gespeichert ist.</translation>
        </message>
        <message>
            <source>Read it again</source>
            <translation>Neu lesen</translation>
        </message>
        <message>
            <source>Keep mine</source>
            <translation>Meines behalten</translation>
        </message>
        <message>
            <source>a new project</source>
            <translation>einem neuen Projekt</translation>
        </message>
        <message>
            <source>The editor did not end in order. There is a copy of %1 of %2 with what was not saved.</source>
            <translation>Der Editor endete nicht ordentlich. Es gibt eine Kopie von %1 vom %2 mit dem, was nicht gespeichert war.</translation>
        </message>
        <message>
            <source>Bring it back</source>
            <translation>Zurückholen</translation>
        </message>
        <message>
            <source>Throw it away</source>
            <translation>Wegwerfen</translation>
        </message>
        <message>
            <source>Cutwater projects (*.cutwater);;All files (*)</source>
            <translation>Cutwater-Projekte (*.cutwater);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Open a project</source>
            <translation>Projekt öffnen</translation>
        </message>
        <message>
            <source>Save the project</source>
            <translation>Projekt speichern</translation>
        </message>
        <message>
            <source>Not saved</source>
            <translation>Nicht gespeichert</translation>
        </message>
        <message>
            <source>%1 has changes that are not saved.</source>
            <translation>%1 hat Änderungen, die nicht gespeichert sind.</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Do not save</source>
            <translation>Nicht speichern</translation>
        </message>
        <message>
            <source>Stay here</source>
            <translation>Hier bleiben</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::FileGuard</name>
        <message>
            <source>another editor</source>
            <translation>einem anderen Editor</translation>
        </message>
        <message>
            <source>another editor (process %1 on %2)</source>
            <translation>einem anderen Editor (Prozess %1 auf %2)</translation>
        </message>
        <message>
            <source>%1 is open in %2; save under another name.</source>
            <translation>%1 ist in %2 geöffnet; unter anderem Namen speichern.</translation>
        </message>
        <message>
            <source>%1 is open in %2; choose another name.</source>
            <translation>%1 ist in %2 geöffnet; einen anderen Namen wählen.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::FindBar</name>
        <message>
            <source>Find: id, name or tag</source>
            <translation>Suche: Kennung, Name, Kennzeichen</translation>
        </message>
        <message>
            <source>Find in the tree</source>
            <translation>Im Baum suchen</translation>
        </message>
        <message>
            <source>%1 of %2</source>
            <translation>%1 von %2</translation>
        </message>
        <message>
            <source>Previous hit (Shift+F3)</source>
            <translation>Voriger Treffer (Umschalt+F3)</translation>
        </message>
        <message>
            <source>Previous hit</source>
            <translation>Voriger Treffer</translation>
        </message>
        <message>
            <source>Next hit (F3)</source>
            <translation>Nächster Treffer (F3)</translation>
        </message>
        <message>
            <source>Next hit</source>
            <translation>Nächster Treffer</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>1 hit</source>
            <translation>1 Treffer</translation>
        </message>
        <message>
            <source>%1 hits</source>
            <translation>%1 Treffer</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::Finder</name>
        <message>
            <source>Find</source>
            <translation>Suchen</translation>
        </message>
        <message>
            <source>a command, an event, a gate, a part of the plant ...</source>
            <translation>ein Befehl, ein Ereignis, ein Gatter, ein Teil der Anlage ...</translation>
        </message>
        <message>
            <source>What to find</source>
            <translation>Was gesucht wird</translation>
        </message>
        <message>
            <source>Found</source>
            <translation>Gefunden</translation>
        </message>
        <message>
            <source>%1 gate</source>
            <translation>Gatter: %1</translation>
        </message>
        <message>
            <source>%1 event</source>
            <translation>Ereignis: %1</translation>
        </message>
        <message>
            <source>failure mode</source>
            <translation>Ausfallart</translation>
        </message>
        <message>
            <source>Nothing is called so.</source>
            <translation>Nichts heißt so.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::GridModel</name>
        <message>
            <source>%1, folded</source>
            <translation>%1, zugeklappt</translation>
        </message>
        <message>
            <source>Right unfolds it</source>
            <translation>Rechts klappt es auf</translation>
        </message>
        <message>
            <source>Left folds it</source>
            <translation>Links klappt es zu</translation>
        </message>
        <message>
            <source>This day has gone by.</source>
            <translation>Dieser Tag ist vorbei.</translation>
        </message>
        <message>
            <source>empty</source>
            <translation>leer</translation>
        </message>
        <message>
            <source>%1, cannot be typed: %2</source>
            <translation>%1, nicht einzutippen: %2</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>%1 (cannot be typed here): %2</source>
            <translation>%1 (hier nicht einzutippen): %2</translation>
        </message>
        <message>
            <source>Rows are filtered by this column.</source>
            <translation>Die Zeilen sind nach dieser Spalte gefiltert.</translation>
        </message>
        <message>
            <source>%1: 1 row</source>
            <translation>%1: 1 Zeile</translation>
        </message>
        <message>
            <source>%1: %2 rows</source>
            <translation>%1: %2 Zeilen</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::GridView</name>
        <message>
            <source>Worksheet</source>
            <translation>Arbeitsblatt</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::HelpWindow</name>
        <message>
            <source>Guide</source>
            <translation>Handbuch</translation>
        </message>
        <message>
            <source>The guide has no page %1.</source>
            <translation>Das Handbuch hat keine Seite %1.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ImportDialog</name>
        <message>
            <source>As a &amp;new project</source>
            <translation>Als &amp;neues Projekt</translation>
        </message>
        <message>
            <source>&amp;Into this project</source>
            <translation>&amp;In dieses Projekt</translation>
        </message>
        <message>
            <source>Import %1</source>
            <translation>%1 einlesen</translation>
        </message>
        <message>
            <source>%1 has: %2.</source>
            <translation>%1 enthält: %2.</translation>
        </message>
        <message>
            <source>%1 cannot be imported. Nothing was changed.</source>
            <translation>%1 kann nicht eingelesen werden. Nichts wurde geändert.</translation>
        </message>
        <message>
            <source>What is wrong in the file</source>
            <translation>Was in der Datei falsch ist</translation>
        </message>
        <message>
            <source>And %1 more.</source>
            <translation>Und %1 weitere.</translation>
        </message>
        <message>
            <source>Line %1: %2</source>
            <translation>Zeile %1: %2</translation>
        </message>
        <message>
            <source>Into this project: %1. It can be undone.</source>
            <translation>In dieses Projekt: %1. Das lässt sich zurücknehmen.</translation>
        </message>
        <message>
            <source>It cannot go into this project: %1</source>
            <translation>In dieses Projekt geht es nicht: %1</translation>
        </message>
        <message>
            <source>Import</source>
            <translation>Einlesen</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::Incoming</name>
        <message numerus="yes">
            <source>%n top event(s)</source>
            <translation>
                <numerusform>%n Hauptereignis</numerusform>
                <numerusform>%n Hauptereignisse</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n gate(s)</source>
            <translation>
                <numerusform>%n Gatter</numerusform>
                <numerusform>%n Gatter</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n event(s)</source>
            <translation>
                <numerusform>%n Ereignis</numerusform>
                <numerusform>%n Ereignisse</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n component(s)</source>
            <translation>
                <numerusform>%n Komponente</numerusform>
                <numerusform>%n Komponenten</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n failure mode(s)</source>
            <translation>
                <numerusform>%n Ausfallart</numerusform>
                <numerusform>%n Ausfallarten</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n log entry(ies)</source>
            <translation>
                <numerusform>%n Logbucheintrag</numerusform>
                <numerusform>%n Logbucheinträge</numerusform>
            </translation>
        </message>
        <message>
            <source>nothing</source>
            <translation>nichts</translation>
        </message>
        <message numerus="yes">
            <source>%n new top event(s)</source>
            <translation>
                <numerusform>%n neues Hauptereignis</numerusform>
                <numerusform>%n neue Hauptereignisse</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n new gate(s)</source>
            <translation>
                <numerusform>%n neues Gatter</numerusform>
                <numerusform>%n neue Gatter</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n new event(s)</source>
            <translation>
                <numerusform>%n neues Ereignis</numerusform>
                <numerusform>%n neue Ereignisse</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n new component(s)</source>
            <translation>
                <numerusform>%n neue Komponente</numerusform>
                <numerusform>%n neue Komponenten</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n new failure mode(s)</source>
            <translation>
                <numerusform>%n neue Ausfallart</numerusform>
                <numerusform>%n neue Ausfallarten</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n failure mode(s) changed</source>
            <translation>
                <numerusform>%n Ausfallart geändert</numerusform>
                <numerusform>%n Ausfallarten geändert</numerusform>
            </translation>
        </message>
        <message>
            <source>nothing changes</source>
            <translation>nichts ändert sich</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::LevelModel</name>
        <message>
            <source>new</source>
            <translation>neu</translation>
        </message>
        <message>
            <source>This is the last step: a list without steps is none.</source>
            <translation>Das ist die letzte Stufe: eine Liste ohne Stufen ist keine.</translation>
        </message>
        <message>
            <source>Rating</source>
            <translation>Bewertung</translation>
        </message>
        <message>
            <source>From risk index</source>
            <translation>Ab Risikoindex</translation>
        </message>
        <message>
            <source>Index</source>
            <translation>Index</translation>
        </message>
        <message>
            <source>Word</source>
            <translation>Wort</translation>
        </message>
        <message>
            <source>Meaning</source>
            <translation>Bedeutung</translation>
        </message>
        <message>
            <source>At most, per year</source>
            <translation>Höchstens, im Jahr</translation>
        </message>
        <message>
            <source>Per ship-year</source>
            <translation>Je Schiffsjahr</translation>
        </message>
        <message>
            <source>Equivalent fatalities</source>
            <translation>Gleichwertige Todesfälle</translation>
        </message>
        <message>
            <source>"%1" is no whole number.</source>
            <translation>"%1" ist keine ganze Zahl.</translation>
        </message>
        <message>
            <source>"%1" is no number; type for example 0.01.</source>
            <translation>"%1" ist keine Zahl; zum Beispiel 0,01 eintippen.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::LibraryPage</name>
        <message>
            <source>Add a library</source>
            <translation>Bibliothek hinzufügen</translation>
        </message>
        <message>
            <source>Libraries (*.cutlib)</source>
            <translation>Bibliotheken (*.cutlib)</translation>
        </message>
        <message>
            <source>Types</source>
            <translation>Typen</translation>
        </message>
        <message>
            <source>Moved on</source>
            <translation>Weiterentwickelt</translation>
        </message>
        <message>
            <source>Files</source>
            <translation>Dateien</translation>
        </message>
        <message>
            <source>Moved on (%1)</source>
            <translation>Weiterentwickelt (%1)</translation>
        </message>
        <message>
            <source>Find a type</source>
            <translation>Einen Typ suchen</translation>
        </message>
        <message>
            <source>find: type, group, function, failure mode</source>
            <translation>suche: Typ, Gruppe, Funktion, Ausfallart</translation>
        </message>
        <message>
            <source>Component types</source>
            <translation>Komponententypen</translation>
        </message>
        <message>
            <source>The type and how it fails</source>
            <translation>Der Typ und wie er ausfällt</translation>
        </message>
        <message>
            <source>The component that it is part of</source>
            <translation>Die Komponente, zu der es gehört</translation>
        </message>
        <message>
            <source>at the top of the plant</source>
            <translation>an der Spitze der Anlage</translation>
        </message>
        <message>
            <source>Tag of the new component</source>
            <translation>Kennzeichen der neuen Komponente</translation>
        </message>
        <message>
            <source>as on the drawing: SV-1</source>
            <translation>wie auf der Zeichnung: SV-1</translation>
        </message>
        <message>
            <source>Name of the new component</source>
            <translation>Name der neuen Komponente</translation>
        </message>
        <message>
            <source>Take into the plant</source>
            <translation>In die Anlage nehmen</translation>
        </message>
        <message>
            <source>&amp;Part of</source>
            <translation>&amp;Teil von</translation>
        </message>
        <message>
            <source>&amp;Tag</source>
            <translation>&amp;Kennzeichen</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>Library files</source>
            <translation>Bibliotheksdateien</translation>
        </message>
        <message>
            <source>Library</source>
            <translation>Bibliothek</translation>
        </message>
        <message>
            <source>File</source>
            <translation>Datei</translation>
        </message>
        <message>
            <source>Files of your own come before those of the program: a library of the same id takes its place.</source>
            <translation>Eigene Dateien kommen vor denen des Programms: eine Bibliothek mit derselben Kennung tritt an deren Stelle.</translation>
        </message>
        <message>
            <source>Add a file ...</source>
            <translation>Datei hinzufügen ...</translation>
        </message>
        <message>
            <source>Remove from the list</source>
            <translation>Aus der Liste nehmen</translation>
        </message>
        <message>
            <source>Read again</source>
            <translation>Neu lesen</translation>
        </message>
        <message>
            <source>The libraries are being read.</source>
            <translation>Die Bibliotheken werden gelesen.</translation>
        </message>
        <message>
            <source>There is no library. Add a file of your own on the page Files, or install the program whole.</source>
            <translation>Es gibt keine Bibliothek. Auf der Seite Dateien eine eigene hinzufügen oder das Programm vollständig installieren.</translation>
        </message>
        <message>
            <source>Nothing fits. Delete words above.</source>
            <translation>Nichts passt. Oben Wörter löschen.</translation>
        </message>
        <message>
            <source>Not used: %1</source>
            <translation>Nicht benutzt: %1</translation>
        </message>
        <message>
            <source>It came with the program.</source>
            <translation>Sie kam mit dem Programm.</translation>
        </message>
        <message>
            <source>Type the tag of the new component first, as on the drawing.</source>
            <translation>Erst das Kennzeichen der neuen Komponente eintippen, wie auf der Zeichnung.</translation>
        </message>
        <message>
            <source>There is no component %1 that it could be part of.</source>
            <translation>Es gibt keine Komponente %1, zu der es gehören könnte.</translation>
        </message>
        <message>
            <source>%1 is in the plant. Give its failure modes their end effect, severity and test interval.</source>
            <translation>%1 ist in der Anlage. Ihren Ausfallarten Endwirkung, Schwere und Prüfintervall geben.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::MainWindow</name>
        <message>
            <source>Outline</source>
            <translation>Gliederung</translation>
        </message>
        <message>
            <source>Details</source>
            <translation>Einzelheiten</translation>
        </message>
        <message>
            <source>This is the demo: the boilers of an invented ship, as a copy. Walk through the outline with the arrows, change anything, and watch the answers. Ctrl+K finds everything, F1 explains.</source>
            <translation>Dies ist das Beispiel: die Kessel eines erfundenen Schiffes, als Kopie. Mit den Pfeilen durch die Gliederung gehen, etwas ändern und die Antworten beobachten. Strg+K findet alles, F1 erklärt.</translation>
        </message>
        <message>
            <source>Start with an empty page</source>
            <translation>Mit leerer Seite beginnen</translation>
        </message>
        <message>
            <source>&amp;Diagram</source>
            <translation>D&amp;iagramm</translation>
        </message>
        <message>
            <source>Diagram</source>
            <translation>Diagramm</translation>
        </message>
        <message>
            <source>Analyses</source>
            <translation>Analysen</translation>
        </message>
        <message>
            <source>&amp;File</source>
            <translation>&amp;Datei</translation>
        </message>
        <message>
            <source>&amp;New</source>
            <translation>&amp;Neu</translation>
        </message>
        <message>
            <source>New from a &amp;template</source>
            <translation>Neu aus &amp;Vorlage</translation>
        </message>
        <message>
            <source>&amp;Open ...</source>
            <translation>Ö&amp;ffnen ...</translation>
        </message>
        <message>
            <source>Opened &amp;lately</source>
            <translation>&amp;Zuletzt geöffnet</translation>
        </message>
        <message>
            <source>None yet</source>
            <translation>Noch keine</translation>
        </message>
        <message>
            <source>&amp;Save</source>
            <translation>&amp;Speichern</translation>
        </message>
        <message>
            <source>Save &amp;as ...</source>
            <translation>Speichern &amp;unter ...</translation>
        </message>
        <message>
            <source>&amp;Report</source>
            <translation>&amp;Bericht</translation>
        </message>
        <message>
            <source>About the &amp;project ...</source>
            <translation>Über das &amp;Projekt ...</translation>
        </message>
        <message>
            <source>Open the &amp;demo</source>
            <translation>Bei&amp;spiel öffnen</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>B&amp;eenden</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <translation>&amp;Bearbeiten</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>Redo</source>
            <translation>Wiederholen</translation>
        </message>
        <message>
            <source>Edit</source>
            <translation>Bearbeiten</translation>
        </message>
        <message>
            <source>About the &amp;top event ...</source>
            <translation>Über das &amp;Hauptereignis ...</translation>
        </message>
        <message>
            <source>&amp;Find commands and items ...</source>
            <translation>Befehle und Teile &amp;suchen ...</translation>
        </message>
        <message>
            <source>&amp;Keys ...</source>
            <translation>&amp;Tasten ...</translation>
        </message>
        <message>
            <source>There is no top event yet.</source>
            <translation>Es gibt noch kein Hauptereignis.</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>An&amp;sicht</translation>
        </message>
        <message>
            <source>&amp;Next view</source>
            <translation>&amp;Nächster Bereich</translation>
        </message>
        <message>
            <source>View</source>
            <translation>Ansicht</translation>
        </message>
        <message>
            <source>As the &amp;desktop</source>
            <translation>Wie der &amp;Schreibtisch</translation>
        </message>
        <message>
            <source>&amp;Light</source>
            <translation>&amp;Hell</translation>
        </message>
        <message>
            <source>D&amp;ark</source>
            <translation>&amp;Dunkel</translation>
        </message>
        <message>
            <source>Lan&amp;guage</source>
            <translation>Sp&amp;rache</translation>
        </message>
        <message>
            <source>As the &amp;system</source>
            <translation>Wie das &amp;System</translation>
        </message>
        <message>
            <source>The language changes when the editor is started again.</source>
            <translation>Die Sprache wechselt beim nächsten Start des Editors.</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>&amp;Hilfe</translation>
        </message>
        <message>
            <source>Help on &amp;this</source>
            <translation>Hilfe &amp;hierzu</translation>
        </message>
        <message>
            <source>&amp;Guide</source>
            <translation>&amp;Handbuch</translation>
        </message>
        <message>
            <source>About the &amp;demo plant</source>
            <translation>Über die &amp;Beispielanlage</translation>
        </message>
        <message>
            <source>&amp;Cautions</source>
            <translation>&amp;Vorsichtshinweise</translation>
        </message>
        <message>
            <source>&amp;About</source>
            <translation>Ü&amp;ber</translation>
        </message>
        <message>
            <source>About Cutwater</source>
            <translation>Über Cutwater</translation>
        </message>
        <message>
            <source>&lt;b&gt;Cutwater %1&lt;/b&gt;&lt;p&gt;Fault trees and FMEA for people who run machinery. It replaces no maker's manual, class or flag rule, permit, or competent person.&lt;p&gt;GPL-3.0-or-later</source>
            <translation>&lt;b&gt;Cutwater %1&lt;/b&gt;&lt;p&gt;Fehlerbäume und FMEA für Leute, die Maschinen betreiben. Es ersetzt kein Handbuch des Herstellers, keine Vorschrift von Klasse oder Flagge, keine Erlaubnis und keine sachkundige Person.&lt;p&gt;GPL-3.0-or-later</translation>
        </message>
        <message>
            <source>Tools</source>
            <translation>Werkzeuge</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Öffnen</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Beside</source>
            <translation>Daneben</translation>
        </message>
        <message>
            <source>Below</source>
            <translation>Darunter</translation>
        </message>
        <message>
            <source>Gate above</source>
            <translation>Gatter darüber</translation>
        </message>
        <message>
            <source>Delete</source>
            <translation>Löschen</translation>
        </message>
        <message>
            <source>Find</source>
            <translation>Suchen</translation>
        </message>
        <message>
            <source>Help</source>
            <translation>Hilfe</translation>
        </message>
        <message>
            <source>%1 is saved.</source>
            <translation>%1 ist gespeichert.</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Anhalten</translation>
        </message>
        <message>
            <source>Reading ...</source>
            <translation>Wird gelesen ...</translation>
        </message>
        <message>
            <source>Writing ...</source>
            <translation>Wird geschrieben ...</translation>
        </message>
        <message>
            <source>Worksheet</source>
            <translation>Arbeitsblatt</translation>
        </message>
        <message>
            <source>P&amp;lant</source>
            <translation>An&amp;lage</translation>
        </message>
        <message>
            <source>Plant</source>
            <translation>Anlage</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::MessageBar</name>
        <message>
            <source>Put away</source>
            <translation>Weglegen</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ModeForm</name>
        <message>
            <source>How it &amp;fails</source>
            <translation>Wie es aus&amp;fällt</translation>
        </message>
        <message>
            <source>How it fails</source>
            <translation>Wie es ausfällt</translation>
        </message>
        <message>
            <source>Component</source>
            <translation>Komponente</translation>
        </message>
        <message>
            <source>Component that fails</source>
            <translation>Komponente, die ausfällt</translation>
        </message>
        <message>
            <source>Stands in</source>
            <translation>Steht in</translation>
        </message>
        <message>
            <source>Where it stands</source>
            <translation>Wo es steht</translation>
        </message>
        <message>
            <source>Worksheet</source>
            <translation>Arbeitsblatt</translation>
        </message>
        <message>
            <source>What the worksheet says</source>
            <translation>Was das Arbeitsblatt sagt</translation>
        </message>
        <message>
            <source>&amp;Id</source>
            <translation>&amp;Kennung</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Kennung</translation>
        </message>
        <message>
            <source>The id stands in the file and in references; all of them follow a change.</source>
            <translation>Die Kennung steht in der Datei und in Verweisen; alle folgen einer Änderung.</translation>
        </message>
        <message>
            <source>Failure model</source>
            <translation>Ausfallmodell</translation>
        </message>
        <message>
            <source>none of the plant</source>
            <translation>keine der Anlage</translation>
        </message>
        <message>
            <source>tree %1</source>
            <translation>Baum %1</translation>
        </message>
        <message>
            <source>no tree: copy it here and paste it into the outline, or drag it there</source>
            <translation>kein Baum: hier kopieren und in die Gliederung einfügen oder dorthin ziehen</translation>
        </message>
        <message>
            <source>no tree: its event is used nowhere</source>
            <translation>kein Baum: sein Ereignis wird nirgends benutzt</translation>
        </message>
        <message>
            <source>row %1 of %2 of the worksheet</source>
            <translation>Zeile %1 von %2 des Arbeitsblatts</translation>
        </message>
        <message>
            <source>Cause:</source>
            <translation>Ursache:</translation>
        </message>
        <message>
            <source>Effect:</source>
            <translation>Wirkung:</translation>
        </message>
        <message>
            <source>On the plant:</source>
            <translation>Auf die Anlage:</translation>
        </message>
        <message>
            <source>Severity:</source>
            <translation>Schwere:</translation>
        </message>
        <message>
            <source>Noticed by:</source>
            <translation>Bemerkt durch:</translation>
        </message>
        <message>
            <source>Made up for by:</source>
            <translation>Ausgeglichen durch:</translation>
        </message>
        <message>
            <source>Proved by:</source>
            <translation>Nachgewiesen durch:</translation>
        </message>
        <message>
            <source>&lt;b&gt;Dormant:&lt;/b&gt; nobody sees it until a test or a demand</source>
            <translation>&lt;b&gt;Schlafend:&lt;/b&gt; niemand sieht es vor einer Prüfung oder Anforderung</translation>
        </message>
        <message>
            <source>Last tested on:</source>
            <translation>Zuletzt geprüft am:</translation>
        </message>
        <message>
            <source>&lt;b&gt;Look at:&lt;/b&gt; %1 (%2 min); it tells: %3</source>
            <translation>&lt;b&gt;Nachsehen:&lt;/b&gt; %1 (%2 min); es sagt: %3</translation>
        </message>
        <message>
            <source>&lt;b&gt;Look at:&lt;/b&gt; %1; it tells: %2</source>
            <translation>&lt;b&gt;Nachsehen:&lt;/b&gt; %1; es sagt: %2</translation>
        </message>
        <message>
            <source>Remark:</source>
            <translation>Bemerkung:</translation>
        </message>
        <message>
            <source>nothing yet: effects and detection are typed in the worksheet</source>
            <translation>noch nichts: Wirkungen und Entdeckung werden im Arbeitsblatt eingetippt</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ModelForm</name>
        <message>
            <source>Failure model</source>
            <translation>Ausfallmodell</translation>
        </message>
        <message>
            <source>It ages with</source>
            <translation>Es altert mit</translation>
        </message>
        <message>
            <source>Failure &amp;model</source>
            <translation>Ausfall&amp;modell</translation>
        </message>
        <message>
            <source>It ages &amp;with</source>
            <translation>Es altert &amp;mit</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::NewsPage</name>
        <message>
            <source>name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>causes</source>
            <translation>Ursachen</translation>
        </message>
        <message>
            <source>local effect</source>
            <translation>örtliche Wirkung</translation>
        </message>
        <message>
            <source>detection</source>
            <translation>Entdeckung</translation>
        </message>
        <message>
            <source>checks</source>
            <translation>Prüfungen</translation>
        </message>
        <message>
            <source>dormant</source>
            <translation>schlafend</translation>
        </message>
        <message>
            <source>failure model</source>
            <translation>Ausfallmodell</translation>
        </message>
        <message>
            <source>Accept what is ticked, for this component</source>
            <translation>Angehaktes für diese Komponente annehmen</translation>
        </message>
        <message>
            <source>Where the library has moved on</source>
            <translation>Wo die Bibliothek weiter ist</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>In the project</source>
            <translation>Im Projekt</translation>
        </message>
        <message>
            <source>In the library</source>
            <translation>In der Bibliothek</translation>
        </message>
        <message>
            <source>The library %1 is not at hand; add its file.</source>
            <translation>Die Bibliothek %1 ist nicht zur Hand; ihre Datei hinzufügen.</translation>
        </message>
        <message>
            <source>The library no longer has the type %1.</source>
            <translation>Die Bibliothek hat den Typ %1 nicht mehr.</translation>
        </message>
        <message>
            <source>Revision</source>
            <translation>Revision</translation>
        </message>
        <message>
            <source>One more failure mode</source>
            <translation>Eine weitere Ausfallart</translation>
        </message>
        <message>
            <source>The library no longer has this failure mode; it stays here</source>
            <translation>Die Bibliothek hat diese Ausfallart nicht mehr; hier bleibt sie</translation>
        </message>
        <message>
            <source>%1: %2</source>
            <translation>%1: %2</translation>
        </message>
        <message>
            <source>The libraries are read when this page is first shown.</source>
            <translation>Die Bibliotheken werden gelesen, wenn diese Seite zum ersten Mal gezeigt wird.</translation>
        </message>
        <message>
            <source>Components that came from a library: %1. None of them has moved on.</source>
            <translation>Komponenten aus einer Bibliothek: %1. Keine hat sich weiterentwickelt.</translation>
        </message>
        <message>
            <source>Components that came from a library: %1; with news: %2. Nothing is changed by itself. What you do not tick stays as it is and counts as changed on purpose.</source>
            <translation>Komponenten aus einer Bibliothek: %1; mit Neuem: %2. Nichts ändert sich von selbst. Was nicht angehakt ist, bleibt und gilt als absichtlich geändert.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::NodeDelegate</name>
        <message>
            <source>the top event: what must not happen?</source>
            <translation>das Hauptereignis: was darf nicht geschehen?</translation>
        </message>
        <message>
            <source>what fails? (Enter: next, Tab: below, Esc: done)</source>
            <translation>was fällt aus? (Enter: nächstes, Tab: darunter, Esc: fertig)</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::NodeEdit</name>
        <message>
            <source>What fails</source>
            <translation>Was ausfällt</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::OutlineModel</name>
        <message>
            <source>%1 (missing)</source>
            <translation>%1 (fehlt)</translation>
        </message>
        <message>
            <source>%1, top event</source>
            <translation>%1, Hauptereignis</translation>
        </message>
        <message>
            <source>%1, in no tree</source>
            <translation>%1, in keinem Baum</translation>
        </message>
        <message>
            <source>%1 of the gate</source>
            <translation>%1 des Gatters</translation>
        </message>
        <message>
            <source>%1 places</source>
            <translation>%1 Stellen</translation>
        </message>
        <message>
            <source>gate</source>
            <translation>Gatter</translation>
        </message>
        <message>
            <source>event</source>
            <translation>Ereignis</translation>
        </message>
        <message>
            <source>shared: stands at %1 places</source>
            <translation>gemeinsam: steht an %1 Stellen</translation>
        </message>
        <message>
            <source>new event, type what fails</source>
            <translation>neues Ereignis, eintippen, was ausfällt</translation>
        </message>
        <message>
            <source>What fails</source>
            <translation>Was ausfällt</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>Shared</source>
            <translation>Gemeinsam</translation>
        </message>
        <message>
            <source>Failure model</source>
            <translation>Ausfallmodell</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::OutlineView</name>
        <message>
            <source>Choose one row to move it up or down.</source>
            <translation>Eine Zeile wählen, um sie zu verschieben.</translation>
        </message>
        <message>
            <source>Choose a house event to switch it.</source>
            <translation>Einen Schalter wählen, um ihn umzulegen.</translation>
        </message>
        <message>
            <source>new gate</source>
            <translation>neues Gatter</translation>
        </message>
        <message>
            <source>Choose one shared gate to separate it.</source>
            <translation>Ein gemeinsames Gatter wählen, um es zu trennen.</translation>
        </message>
        <message>
            <source>The clipboard holds nothing that can be pasted into a tree.</source>
            <translation>Die Zwischenablage enthält nichts, was in einen Baum eingefügt werden kann.</translation>
        </message>
        <message>
            <source>Outline of the trees</source>
            <translation>Gliederung der Bäume</translation>
        </message>
        <message>
            <source>There is no tree yet.
Press Enter and type what must not happen, for example: no steam from either boiler.</source>
            <translation>Es gibt noch keinen Baum.
Enter drücken und eintippen, was nicht geschehen darf, zum Beispiel: kein Dampf von beiden Kesseln.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::Overview</name>
        <message>
            <source>Overview of the tree</source>
            <translation>Übersicht über den Baum</translation>
        </message>
        <message>
            <source>Overview: click to go there</source>
            <translation>Übersicht: Klick führt dorthin</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::Paper</name>
        <message>
            <source>FMEA worksheet</source>
            <translation>FMEA-Arbeitsblatt</translation>
        </message>
        <message>
            <source>Revision %1</source>
            <translation>Revision %1</translation>
        </message>
        <message>
            <source>Date %1</source>
            <translation>Datum %1</translation>
        </message>
        <message>
            <source>Printed %1</source>
            <translation>Gedruckt %1</translation>
        </message>
        <message>
            <source>! The operating mode is not stated.</source>
            <translation>! Der Betriebszustand ist nicht angegeben.</translation>
        </message>
        <message>
            <source>Operating mode: %1</source>
            <translation>Betriebszustand: %1</translation>
        </message>
        <message>
            <source>%1 of %2 rows</source>
            <translation>%1 von %2 Zeilen</translation>
        </message>
        <message>
            <source>%1 of %2 rows. Filter: %3</source>
            <translation>%1 von %2 Zeilen. Filter: %3</translation>
        </message>
        <message>
            <source>... cut</source>
            <translation>... gekürzt</translation>
        </message>
        <message>
            <source>! %1 All cautions stand on the last page.</source>
            <translation>! %1 Alle Vorsichtshinweise stehen auf der letzten Seite.</translation>
        </message>
        <message>
            <source>Page %1 of %2</source>
            <translation>Seite %1 von %2</translation>
        </message>
        <message>
            <source>RPN: %1</source>
            <translation>RPZ: %1</translation>
        </message>
        <message>
            <source>Caution: %1</source>
            <translation>Vorsicht: %1</translation>
        </message>
        <message>
            <source>Caution of this plant: %1</source>
            <translation>Vorsichtshinweis dieser Anlage: %1</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ParameterField</name>
        <message>
            <source>from %1 to %2</source>
            <translation>von %1 bis %2</translation>
        </message>
        <message>
            <source>at least %1</source>
            <translation>mindestens %1</translation>
        </message>
        <message>
            <source>at most %1</source>
            <translation>höchstens %1</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>not given</source>
            <translation>nicht angegeben</translation>
        </message>
        <message>
            <source>(not given)</source>
            <translation>(nicht angegeben)</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ParameterForm</name>
        <message>
            <source>This analysis asks for nothing.</source>
            <translation>Diese Analyse fragt nach nichts.</translation>
        </message>
        <message>
            <source>with the standards</source>
            <translation>mit den Vorgaben</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::PartForm</name>
        <message>
            <source>&amp;Tag</source>
            <translation>&amp;Kennzeichen</translation>
        </message>
        <message>
            <source>Tag</source>
            <translation>Kennzeichen</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>T&amp;ype</source>
            <translation>T&amp;yp</translation>
        </message>
        <message>
            <source>Type</source>
            <translation>Typ</translation>
        </message>
        <message>
            <source>F&amp;unction</source>
            <translation>F&amp;unktion</translation>
        </message>
        <message>
            <source>Function</source>
            <translation>Funktion</translation>
        </message>
        <message>
            <source>&amp;Location</source>
            <translation>&amp;Ort</translation>
        </message>
        <message>
            <source>Location</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>&amp;Id</source>
            <translation>&amp;Kennung</translation>
        </message>
        <message>
            <source>Id</source>
            <translation>Kennung</translation>
        </message>
        <message>
            <source>The id stands in the file and in references; all of them follow a change.</source>
            <translation>Die Kennung steht in der Datei und in Verweisen; alle folgen einer Änderung.</translation>
        </message>
        <message>
            <source>Same type</source>
            <translation>Gleicher Typ</translation>
        </message>
        <message>
            <source>Other components of the type</source>
            <translation>Andere Komponenten des Typs</translation>
        </message>
        <message>
            <source>Fails</source>
            <translation>Fällt aus</translation>
        </message>
        <message>
            <source>Failure modes</source>
            <translation>Ausfallarten</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>Library it was taken from</source>
            <translation>Bibliothek, aus der es kam</translation>
        </message>
        <message>
            <source>Failure rate of the whole, where its modes are shares of it</source>
            <translation>Ausfallrate des Ganzen, wo die Ausfallarten Anteile davon sind</translation>
        </message>
        <message>
            <source>Remark</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>&amp;Remark</source>
            <translation>&amp;Bemerkung</translation>
        </message>
        <message>
            <source>library %1, type %2, revision %3</source>
            <translation>Bibliothek %1, Typ %2, Revision %3</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 und %2 weitere</translation>
        </message>
        <message>
            <source>no failure mode yet: press M in the plant</source>
            <translation>noch keine Ausfallart: in der Anlage M drücken</translation>
        </message>
        <message>
            <source>Their shares of the failure rate add up to %1: more than the whole.</source>
            <translation>Ihre Anteile an der Ausfallrate ergeben %1: mehr als das Ganze.</translation>
        </message>
        <message>
            <source>Their shares of the failure rate add up to %1.</source>
            <translation>Ihre Anteile an der Ausfallrate ergeben %1.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::PlantModel</name>
        <message>
            <source>in no tree</source>
            <translation>in keinem Baum</translation>
        </message>
        <message>
            <source>%1 and %2 more</source>
            <translation>%1 und %2 weitere</translation>
        </message>
        <message>
            <source>failure modes: %1</source>
            <translation>Ausfallarten: %1</translation>
        </message>
        <message>
            <source>failure mode %1</source>
            <translation>Ausfallart %1</translation>
        </message>
        <message>
            <source>component %1</source>
            <translation>Komponente %1</translation>
        </message>
        <message>
            <source>Part, or how it fails</source>
            <translation>Teil, oder wie es ausfällt</translation>
        </message>
        <message>
            <source>Type</source>
            <translation>Typ</translation>
        </message>
        <message>
            <source>Location</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>In trees</source>
            <translation>In Bäumen</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::PlantPage</name>
        <message>
            <source>Find in the plant</source>
            <translation>In der Anlage suchen</translation>
        </message>
        <message>
            <source>find: tag, name, type, location, failure mode</source>
            <translation>suche: Kennzeichen, Name, Typ, Ort, Ausfallart</translation>
        </message>
        <message>
            <source>Choose a part or a failure mode to see all about it.</source>
            <translation>Ein Teil oder eine Ausfallart wählen, um alles darüber zu sehen.</translation>
        </message>
        <message>
            <source>found: %1</source>
            <translation>gefunden: %1</translation>
        </message>
        <message>
            <source>Add beside</source>
            <translation>Daneben hinzufügen</translation>
        </message>
        <message>
            <source>Add a part</source>
            <translation>Teil hinzufügen</translation>
        </message>
        <message>
            <source>Add a failure mode</source>
            <translation>Ausfallart hinzufügen</translation>
        </message>
        <message>
            <source>Change the text</source>
            <translation>Text ändern</translation>
        </message>
        <message>
            <source>Cut</source>
            <translation>Ausschneiden</translation>
        </message>
        <message>
            <source>Copy</source>
            <translation>Kopieren</translation>
        </message>
        <message>
            <source>Paste below</source>
            <translation>Darunter einfügen</translation>
        </message>
        <message>
            <source>Delete</source>
            <translation>Löschen</translation>
        </message>
        <message>
            <source>Move up</source>
            <translation>Nach oben</translation>
        </message>
        <message>
            <source>Move down</source>
            <translation>Nach unten</translation>
        </message>
        <message>
            <source>Make it a part of the one above</source>
            <translation>Zum Teil des oberen machen</translation>
        </message>
        <message>
            <source>Move it one level up</source>
            <translation>Eine Ebene höher</translation>
        </message>
        <message>
            <source>Unfold all</source>
            <translation>Alles aufklappen</translation>
        </message>
        <message>
            <source>Fold all</source>
            <translation>Alles zuklappen</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::PlantView</name>
        <message>
            <source>A failure mode has no parts: choose a component.</source>
            <translation>Eine Ausfallart hat keine Teile: eine Komponente wählen.</translation>
        </message>
        <message>
            <source>Choose the component that fails.</source>
            <translation>Die Komponente wählen, die ausfällt.</translation>
        </message>
        <message>
            <source>Choose one row to move it up or down.</source>
            <translation>Eine Zeile wählen, um sie zu verschieben.</translation>
        </message>
        <message>
            <source>It stands at the end already.</source>
            <translation>Es steht schon am Ende.</translation>
        </message>
        <message>
            <source>There is no component above it to become a part of.</source>
            <translation>Darüber ist keine Komponente, deren Teil es werden könnte.</translation>
        </message>
        <message>
            <source>It stands at the top already.</source>
            <translation>Es steht schon an der Spitze.</translation>
        </message>
        <message>
            <source>The clipboard holds nothing that can be pasted into the plant.</source>
            <translation>Die Zwischenablage enthält nichts, was in die Anlage eingefügt werden kann.</translation>
        </message>
        <message>
            <source>how does it fail? (Enter: next, Esc: done)</source>
            <translation>wie fällt es aus? (Enter: nächste, Esc: fertig)</translation>
        </message>
        <message>
            <source>tag and name: FP-1 fuel pump (Enter: next, Tab: below)</source>
            <translation>Kennzeichen und Name: FP-1 Ölpumpe (Enter: nächste, Tab: darunter)</translation>
        </message>
        <message>
            <source>The plant and how its parts fail</source>
            <translation>Die Anlage und wie ihre Teile ausfallen</translation>
        </message>
        <message>
            <source>Delete</source>
            <translation>Löschen</translation>
        </message>
        <message>
            <source>There is no plant yet.
Press Enter and type a part, tag first, for example: B1 boiler. Tab types what it consists of, M how it fails.</source>
            <translation>Es gibt noch keine Anlage.
Enter drücken und ein Teil eintippen, das Kennzeichen zuerst, zum Beispiel: B1 Kessel. Tab schreibt, woraus es besteht, M, wie es ausfällt.</translation>
        </message>
        <message>
            <source>Nothing fits "%1".</source>
            <translation>Nichts passt zu "%1".</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::PlotPage</name>
        <message>
            <source>Logarithmic across</source>
            <translation>Waagerecht logarithmisch</translation>
        </message>
        <message>
            <source>Logarithmic</source>
            <translation>Logarithmisch</translation>
        </message>
        <message>
            <source>Numbers</source>
            <translation>Zahlen</translation>
        </message>
        <message>
            <source>Logarithmic upwards</source>
            <translation>Senkrecht logarithmisch</translation>
        </message>
        <message>
            <source>Shows the numbers behind the plot as a table</source>
            <translation>Zeigt die Zahlen hinter der Kurve als Tabelle</translation>
        </message>
        <message>
            <source>Copy plot</source>
            <translation>Kurve kopieren</translation>
        </message>
        <message>
            <source>Copies the plot as a picture, as SVG and as text</source>
            <translation>Kopiert die Kurve als Bild, als SVG und als Text</translation>
        </message>
        <message>
            <source>Save SVG...</source>
            <translation>SVG speichern ...</translation>
        </message>
        <message>
            <source>⚠ Points that cannot be drawn: %1. Zero has no place on a logarithmic axis, and what is not a number has none at all.</source>
            <translation>⚠ Punkte, die sich nicht zeichnen lassen: %1. Null hat auf einer logarithmischen Achse keinen Platz, und was keine Zahl ist, nirgends.</translation>
        </message>
        <message>
            <source>%1 cannot be written (%2); choose another place.</source>
            <translation>%1 kann nicht geschrieben werden (%2); einen anderen Ort wählen.</translation>
        </message>
        <message>
            <source>Save plot</source>
            <translation>Kurve speichern</translation>
        </message>
        <message>
            <source>SVG pictures (*.svg)</source>
            <translation>SVG-Bilder (*.svg)</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::PluginsDialog</name>
        <message>
            <source>Analysis</source>
            <translation>Analyse</translation>
        </message>
        <message>
            <source>Exchange</source>
            <translation>Austausch</translation>
        </message>
        <message>
            <source>Layout</source>
            <translation>Anordnung</translation>
        </message>
        <message>
            <source>Report</source>
            <translation>Bericht</translation>
        </message>
        <message>
            <source>Plug-ins</source>
            <translation>Zusatzmodule</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Zustand</translation>
        </message>
        <message>
            <source>Plug-in</source>
            <translation>Zusatzmodul</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>What it says</source>
            <translation>Was es sagt</translation>
        </message>
        <message>
            <source>✖ left out</source>
            <translation>✖ ausgelassen</translation>
        </message>
        <message>
            <source>⚠ has failed</source>
            <translation>⚠ ist gescheitert</translation>
        </message>
        <message>
            <source>✔ in use</source>
            <translation>✔ in Gebrauch</translation>
        </message>
        <message>
            <source>Only plug-ins of this installation and of folders that you named are used. One that fails is left out; the rest goes on.</source>
            <translation>Benutzt werden nur Zusatzmodule dieser Installation und der genannten Ordner. Eines, das scheitert, wird ausgelassen; der Rest läuft weiter.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ProblemsDock</name>
        <message>
            <source>Problems</source>
            <translation>Mängel</translation>
        </message>
        <message>
            <source>Shows or hides the list of problems</source>
            <translation>Zeigt oder verbirgt die Liste der Mängel</translation>
        </message>
        <message>
            <source>No problems</source>
            <translation>Keine Mängel</translation>
        </message>
        <message numerus="yes">
            <source>%n warning(s)</source>
            <translation>
                <numerusform>%n Warnung</numerusform>
                <numerusform>%n Warnungen</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n error(s)</source>
            <translation>
                <numerusform>%n Fehler</numerusform>
                <numerusform>%n Fehler</numerusform>
            </translation>
        </message>
        <message>
            <source>%1, %2</source>
            <translation>%1, %2</translation>
        </message>
        <message>
            <source>Problems: %1</source>
            <translation>Mängel: %1</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ProblemsList</name>
        <message>
            <source>Problems</source>
            <translation>Mängel</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>How to mend it</source>
            <translation>Wie es zu beheben ist</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Zeile</translation>
        </message>
        <message>
            <source>Error: %1</source>
            <translation>Fehler: %1</translation>
        </message>
        <message>
            <source>Warning: %1</source>
            <translation>Warnung: %1</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ProjectFactsDialog</name>
        <message>
            <source>About the project</source>
            <translation>Über das Projekt</translation>
        </message>
        <message>
            <source>&amp;Title</source>
            <translation>&amp;Titel</translation>
        </message>
        <message>
            <source>&amp;Plant</source>
            <translation>&amp;Anlage</translation>
        </message>
        <message>
            <source>the ship or installation</source>
            <translation>das Schiff oder die Anlage</translation>
        </message>
        <message>
            <source>W&amp;hat it is about</source>
            <translation>&amp;Worum es geht</translation>
        </message>
        <message>
            <source>&amp;State of the plant</source>
            <translation>&amp;Zustand der Anlage</translation>
        </message>
        <message>
            <source>Re&amp;vision</source>
            <translation>Re&amp;vision</translation>
        </message>
        <message>
            <source>&amp;Date</source>
            <translation>&amp;Datum</translation>
        </message>
        <message>
            <source>year-month-day: 2026-03-02</source>
            <translation>Jahr-Monat-Tag: 2026-03-02</translation>
        </message>
        <message>
            <source>Prepared &amp;by</source>
            <translation>&amp;Erstellt von</translation>
        </message>
        <message>
            <source>&amp;Checked by</source>
            <translation>Ge&amp;prüft von</translation>
        </message>
        <message>
            <source>&amp;Worked to</source>
            <translation>Gearbeitet &amp;nach</translation>
        </message>
        <message>
            <source>rules and their editions, in your words, one a line</source>
            <translation>Regeln und ihre Ausgaben, in eigenen Worten, je Zeile eine</translation>
        </message>
        <message>
            <source>&amp;Assumptions</source>
            <translation>Anna&amp;hmen</translation>
        </message>
        <message>
            <source>one a line; they stand in every result</source>
            <translation>je Zeile eine; sie stehen in jedem Ergebnis</translation>
        </message>
        <message>
            <source>Cautions of your &amp;own</source>
            <translation>Ei&amp;gene Vorsichtshinweise</translation>
        </message>
        <message>
            <source>one a line; they stand beside the standing ones</source>
            <translation>je Zeile einer; sie stehen neben den festen</translation>
        </message>
        <message>
            <source>The date is no date: type it as 2026-03-02, or leave it empty.</source>
            <translation>Das Datum ist keines: als 2026-03-02 eintippen oder leer lassen.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ProposalsPage</name>
        <message>
            <source>Coverage</source>
            <translation>Abdeckung</translation>
        </message>
        <message>
            <source>Trees</source>
            <translation>Bäume</translation>
        </message>
        <message>
            <source>Common causes</source>
            <translation>Gemeinsame Ursachen</translation>
        </message>
        <message>
            <source>Current.</source>
            <translation>Aktuell.</translation>
        </message>
        <message>
            <source>Stale: being computed again. %1</source>
            <translation>Veraltet: wird neu gerechnet. %1</translation>
        </message>
        <message>
            <source>Stale: the project has changed.</source>
            <translation>Veraltet: das Projekt hat sich geändert.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::QuantityRow</name>
        <message>
            <source>%1 (optional)</source>
            <translation>%1 (wahlweise)</translation>
        </message>
        <message>
            <source>value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>unit</source>
            <translation>Einheit</translation>
        </message>
        <message>
            <source>error factor of a lognormal distribution: 95 % value over median, above 1</source>
            <translation>Fehlerfaktor einer Lognormalverteilung: 95-%-Wert durch Median, über 1</translation>
        </message>
        <message>
            <source>a number that several events share</source>
            <translation>eine Zahl, die mehrere Ereignisse teilen</translation>
        </message>
        <message>
            <source>source: document</source>
            <translation>Quelle: Dokument</translation>
        </message>
        <message>
            <source>source: table, section or page</source>
            <translation>Quelle: Tabelle, Abschnitt oder Seite</translation>
        </message>
        <message>
            <source>how far the source can be trusted</source>
            <translation>wie weit der Quelle zu trauen ist</translation>
        </message>
        <message>
            <source>not given</source>
            <translation>nicht angegeben</translation>
        </message>
        <message>
            <source>error factor</source>
            <translation>Fehlerfaktor</translation>
        </message>
        <message>
            <source>table, page</source>
            <translation>Tabelle, Seite</translation>
        </message>
        <message>
            <source>trust: not said</source>
            <translation>Vertrauen: nicht angegeben</translation>
        </message>
        <message>
            <source>other distribution</source>
            <translation>andere Verteilung</translation>
        </message>
        <message>
            <source>its own number</source>
            <translation>eigene Zahl</translation>
        </message>
        <message>
            <source>"%1" is no number; type for example 1e-6 or 0.5.</source>
            <translation>"%1" ist keine Zahl; zum Beispiel 1e-6 oder 0,5 eintippen.</translation>
        </message>
        <message>
            <source>The error factor is a number above 1, for example 3.</source>
            <translation>Der Fehlerfaktor ist eine Zahl über 1, zum Beispiel 3.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::Recovery</name>
        <message>
            <source>No recovery copy can be written; save often, and look for room on the disk.</source>
            <translation>Es kann keine Sicherungskopie geschrieben werden; oft speichern und Platz auf dem Datenträger schaffen.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::RenameField</name>
        <message>
            <source>Name of the event or gate</source>
            <translation>Name des Ereignisses oder Gatters</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ReportList</name>
        <message>
            <source>%1 (computed when the report is made)</source>
            <translation>%1 (wird beim Erstellen des Berichts gerechnet)</translation>
        </message>
        <message>
            <source>%1 (stale: the project has changed since)</source>
            <translation>%1 (veraltet: das Projekt hat sich seither geändert)</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ReportPage</name>
        <message>
            <source>Save the report</source>
            <translation>Bericht speichern</translation>
        </message>
        <message>
            <source>report.html</source>
            <translation>bericht.html</translation>
        </message>
        <message>
            <source>Working: %1</source>
            <translation>In Arbeit: %1</translation>
        </message>
        <message>
            <source>What goes into the report, from top to bottom. "Send to report" on a result brings it here. The list is kept until the editor is closed; it is not part of the project file.</source>
            <translation>Was in den Bericht kommt, von oben nach unten. "In den Bericht" bei einem Ergebnis bringt es hierher. Die Liste bleibt, bis der Editor geschlossen wird; sie gehört nicht zur Projektdatei.</translation>
        </message>
        <message>
            <source>Contents of the report</source>
            <translation>Inhalt des Berichts</translation>
        </message>
        <message>
            <source>Up</source>
            <translation>Hoch</translation>
        </message>
        <message>
            <source>Moves it up (Alt+Up)</source>
            <translation>Nach oben (Alt+Oben)</translation>
        </message>
        <message>
            <source>Down</source>
            <translation>Runter</translation>
        </message>
        <message>
            <source>Moves it down (Alt+Down)</source>
            <translation>Nach unten (Alt+Unten)</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Takes it out of the list (Delete)</source>
            <translation>Nimmt es aus der Liste (Entf)</translation>
        </message>
        <message>
            <source>Add the usual</source>
            <translation>Das Übliche</translation>
        </message>
        <message>
            <source>Probability of the top events, single failures, cut sets</source>
            <translation>Wahrscheinlichkeit der Hauptereignisse, Einzelausfälle, Schnitte</translation>
        </message>
        <message>
            <source>Its &amp;heading</source>
            <translation>Die &amp;Überschrift</translation>
        </message>
        <message>
            <source>What the reader should see in it. It stands above the result.</source>
            <translation>Was der Leser darin sehen soll. Es steht über dem Ergebnis.</translation>
        </message>
        <message>
            <source>&amp;Comment</source>
            <translation>&amp;Kommentar</translation>
        </message>
        <message>
            <source>With the &amp;drawn trees</source>
            <translation>Mit den ge&amp;zeichneten Bäumen</translation>
        </message>
        <message>
            <source>&amp;Preview</source>
            <translation>&amp;Vorschau</translation>
        </message>
        <message>
            <source>Makes the report as it is now and shows it below</source>
            <translation>Erstellt den Bericht, wie er jetzt ist, und zeigt ihn darunter</translation>
        </message>
        <message>
            <source>&amp;Save as ...</source>
            <translation>&amp;Speichern ...</translation>
        </message>
        <message>
            <source>One page for browsers, PDF, or text for office programs</source>
            <translation>Eine Seite für den Browser, PDF oder Text für Büroprogramme</translation>
        </message>
        <message>
            <source>P&amp;rint ...</source>
            <translation>&amp;Drucken ...</translation>
        </message>
        <message>
            <source>Prints the report</source>
            <translation>Druckt den Bericht</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Stops what is being made</source>
            <translation>Hält die Erstellung an</translation>
        </message>
        <message>
            <source>Progress of the report</source>
            <translation>Fortschritt des Berichts</translation>
        </message>
        <message>
            <source>Preview of the report</source>
            <translation>Vorschau des Berichts</translation>
        </message>
        <message>
            <source>Cancelled.</source>
            <translation>Abgebrochen.</translation>
        </message>
        <message>
            <source>No report plug-in was found: install the program whole.</source>
            <translation>Es wurde kein Berichtsmodul gefunden: das Programm vollständig installieren.</translation>
        </message>
        <message>
            <source>The name must end in one of %1.</source>
            <translation>Der Name muss auf eines von %1 enden.</translation>
        </message>
        <message>
            <source>The report is being made ...</source>
            <translation>Der Bericht wird erstellt ...</translation>
        </message>
        <message>
            <source>There is no report.</source>
            <translation>Es gibt keinen Bericht.</translation>
        </message>
        <message>
            <source>Not in it: %1</source>
            <translation>Nicht darin: %1</translation>
        </message>
        <message>
            <source>The report is in %1.</source>
            <translation>Der Bericht steht in %1.</translation>
        </message>
        <message>
            <source>%1 cannot be written (%2); choose another place.</source>
            <translation>%1 kann nicht geschrieben werden (%2); einen anderen Ort wählen.</translation>
        </message>
        <message>
            <source>The report was sent to the printer.</source>
            <translation>Der Bericht ging an den Drucker.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ResultView</name>
        <message>
            <source>Warnings, cautions and assumptions of the result</source>
            <translation>Warnungen, Vorsichtshinweise und Annahmen des Ergebnisses</translation>
        </message>
        <message>
            <source>Table or plot that is shown</source>
            <translation>Gezeigte Tabelle oder Kurve</translation>
        </message>
        <message>
            <source>Copy text</source>
            <translation>Text kopieren</translation>
        </message>
        <message>
            <source>Copy CSV</source>
            <translation>CSV kopieren</translation>
        </message>
        <message>
            <source>Copies everything: tables, plots as numbers, and notes</source>
            <translation>Kopiert alles: Tabellen, Kurven als Zahlen, Hinweise</translation>
        </message>
        <message>
            <source>Save...</source>
            <translation>Speichern ...</translation>
        </message>
        <message>
            <source>Saves everything as text or as CSV</source>
            <translation>Speichert alles als Text oder CSV</translation>
        </message>
        <message>
            <source>Send to report</source>
            <translation>In den Bericht</translation>
        </message>
        <message>
            <source>Puts this result, with its notes and parameters, into the report</source>
            <translation>Nimmt dieses Ergebnis mit Hinweisen und Parametern in den Bericht auf</translation>
        </message>
        <message>
            <source>⚠ Not everything here is exact; the notes say what, and by how much</source>
            <translation>⚠ Nicht alles hier ist genau; die Hinweise sagen, was und um wie viel</translation>
        </message>
        <message>
            <source>⚠ 1 warning</source>
            <translation>⚠ 1 Warnung</translation>
        </message>
        <message>
            <source>⚠ %1 warnings</source>
            <translation>⚠ %1 Warnungen</translation>
        </message>
        <message>
            <source>→ 1 assumption</source>
            <translation>→ 1 Annahme</translation>
        </message>
        <message>
            <source>→ %1 assumptions</source>
            <translation>→ %1 Annahmen</translation>
        </message>
        <message>
            <source>! 1 caution</source>
            <translation>! 1 Vorsichtshinweis</translation>
        </message>
        <message>
            <source>! %1 cautions</source>
            <translation>! %1 Vorsichtshinweise</translation>
        </message>
        <message>
            <source>Table: %1</source>
            <translation>Tabelle: %1</translation>
        </message>
        <message>
            <source>Plot: %1</source>
            <translation>Kurve: %1</translation>
        </message>
        <message>
            <source>%1 cannot be written (%2); choose another place.</source>
            <translation>%1 kann nicht geschrieben werden (%2); einen anderen Ort wählen.</translation>
        </message>
        <message>
            <source>Save result</source>
            <translation>Ergebnis speichern</translation>
        </message>
        <message>
            <source>Tables (*.csv);;Text (*.txt)</source>
            <translation>Tabellen (*.csv);;Text (*.txt)</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ReuseList</name>
        <message>
            <source>event, used again</source>
            <translation>Ereignis, nochmals benutzt</translation>
        </message>
        <message>
            <source>gate, used again</source>
            <translation>Gatter, nochmals benutzt</translation>
        </message>
        <message>
            <source>failure mode of the plant</source>
            <translation>Ausfallart der Anlage</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::RiskBoard</name>
        <message>
            <source>%1, frequency index %2, severity index %3: %4</source>
            <translation>%1, Häufigkeitsindex %2, Schwereindex %3: %4</translation>
        </message>
        <message>
            <source>Risk matrix</source>
            <translation>Risikomatrix</translation>
        </message>
        <message>
            <source>The risk matrix is being computed.</source>
            <translation>Die Risikomatrix wird gerechnet.</translation>
        </message>
        <message>
            <source>stale</source>
            <translation>veraltet</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::RiskPage</name>
        <message>
            <source>Count common causes</source>
            <translation>Gem. Ursachen</translation>
        </message>
        <message>
            <source>Show all</source>
            <translation>Alle zeigen</translation>
        </message>
        <message>
            <source>Copy picture</source>
            <translation>Bild kopieren</translation>
        </message>
        <message>
            <source>Save picture ...</source>
            <translation>Bild speichern ...</translation>
        </message>
        <message>
            <source>Save table ...</source>
            <translation>Tabelle speichern ...</translation>
        </message>
        <message>
            <source>Computing the risk matrix</source>
            <translation>Die Risikomatrix wird gerechnet</translation>
        </message>
        <message>
            <source>Matrix</source>
            <translation>Matrix</translation>
        </message>
        <message>
            <source>Scales</source>
            <translation>Skalen</translation>
        </message>
        <message>
            <source>Placed: %1, without a place: %2. Events are taken as independent.</source>
            <translation>Eingeordnet: %1, ohne Platz: %2. Ereignisse gelten als unabhängig.</translation>
        </message>
        <message>
            <source>Placed: %1, without a place: %2. Common causes are counted.</source>
            <translation>Eingeordnet: %1, ohne Platz: %2. Gemeinsame Ursachen sind gerechnet.</translation>
        </message>
        <message>
            <source>Computing; what is shown is stale.</source>
            <translation>Wird gerechnet; das Gezeigte ist veraltet.</translation>
        </message>
        <message>
            <source>Computing %1; what is shown is stale.</source>
            <translation>%1 wird gerechnet; das Gezeigte ist veraltet.</translation>
        </message>
        <message>
            <source>Stale: the project has changed.</source>
            <translation>Veraltet: das Projekt hat sich geändert.</translation>
        </message>
        <message>
            <source>All that can stand in the matrix. Choose a cell to see what stands in it.</source>
            <translation>Alles, was in der Matrix stehen kann. Eine Zelle wählen, um zu sehen, was darin steht.</translation>
        </message>
        <message>
            <source>This failure mode is in no tree; it stands in the plant and the worksheet.</source>
            <translation>Diese Ausfallart ist in keinem Baum; sie steht in Anlage und Arbeitsblatt.</translation>
        </message>
        <message>
            <source>The picture is in the clipboard.</source>
            <translation>Das Bild ist in der Zwischenablage.</translation>
        </message>
        <message>
            <source>Save the risk matrix</source>
            <translation>Risikomatrix speichern</translation>
        </message>
        <message>
            <source>Pictures (*.svg *.png *.pdf)</source>
            <translation>Bilder (*.svg *.png *.pdf)</translation>
        </message>
        <message>
            <source>Save the table</source>
            <translation>Tabelle speichern</translation>
        </message>
        <message>
            <source>Tables (*.csv)</source>
            <translation>Tabellen (*.csv)</translation>
        </message>
        <message>
            <source>Written: %1</source>
            <translation>Geschrieben: %1</translation>
        </message>
        <message>
            <source>%1 cannot be written: %2</source>
            <translation>%1 kann nicht geschrieben werden: %2</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ScalesPage</name>
        <message>
            <source>Risk matrix: frequencies</source>
            <translation>Risikomatrix: Häufigkeiten</translation>
        </message>
        <message>
            <source>Risk matrix: severities</source>
            <translation>Risikomatrix: Schweregrade</translation>
        </message>
        <message>
            <source>Risk matrix: what a risk index is called</source>
            <translation>Risikomatrix: wie ein Risikoindex heißt</translation>
        </message>
        <message>
            <source>Rating: severity</source>
            <translation>Bewertung: Schwere</translation>
        </message>
        <message>
            <source>Rating: occurrence</source>
            <translation>Bewertung: Auftreten</translation>
        </message>
        <message>
            <source>Rating: detection</source>
            <translation>Bewertung: Entdeckung</translation>
        </message>
        <message>
            <source>Which scale</source>
            <translation>Welche Skala</translation>
        </message>
        <message>
            <source>Steps of the scale</source>
            <translation>Stufen der Skala</translation>
        </message>
        <message>
            <source>Add a step</source>
            <translation>Stufe hinzufügen</translation>
        </message>
        <message>
            <source>Remove the step</source>
            <translation>Stufe entfernen</translation>
        </message>
        <message>
            <source>Back to the matrix of the IMO</source>
            <translation>Zurück zur Matrix der IMO</translation>
        </message>
        <message>
            <source>Back to the standard scale</source>
            <translation>Zurück zur Standardskala</translation>
        </message>
        <message>
            <source>The matrix of this project. Where a word of a severity is changed, failure modes and top events with it follow.</source>
            <translation>Die Matrix dieses Projekts. Wird das Wort einer Schwere geändert, folgen Ausfallarten und Hauptereignisse damit.</translation>
        </message>
        <message>
            <source>The matrix of the IMO's Formal Safety Assessment, MSC-MEPC.2/Circ.12/Rev.2, appendix 4. Change anything, and the project has a matrix of its own.</source>
            <translation>Die Matrix der Formal Safety Assessment der IMO, MSC-MEPC.2/Circ.12/Rev.2, Anhang 4. Wird etwas geändert, hat das Projekt eine eigene Matrix.</translation>
        </message>
        <message>
            <source>The scale of this project.</source>
            <translation>Die Skala dieses Projekts.</translation>
        </message>
        <message>
            <source>The standard scale, which is ours and no part of a standard. Change anything, and the project has a scale of its own.</source>
            <translation>Die Standardskala ist unsere und kein Teil einer Norm. Wird etwas geändert, hat das Projekt eine eigene Skala.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SheetCautionsDialog</name>
        <message>
            <source>Cautions</source>
            <translation>Vorsichtshinweise</translation>
        </message>
        <message>
            <source>Standing cautions</source>
            <translation>Feste Vorsichtshinweise</translation>
        </message>
        <message>
            <source>These always stand with the worksheet, on screen, on paper and in files:</source>
            <translation>Diese stehen immer beim Arbeitsblatt, auf dem Bildschirm, auf Papier und in Dateien:</translation>
        </message>
        <message>
            <source>Cautions of this &amp;plant, added to them; one a line:</source>
            <translation>Vorsichtshinweise dieser &amp;Anlage, dazu; je Zeile einer:</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SheetColumns</name>
        <message>
            <source>When the actions work. Empty: as before.</source>
            <translation>Wenn die Maßnahmen wirken. Leer: wie bisher.</translation>
        </message>
        <message>
            <source>Row</source>
            <translation>Zeile</translation>
        </message>
        <message>
            <source>The id of the failure mode. It never changes.</source>
            <translation>Die Kennung der Ausfallart. Sie ändert sich nie.</translation>
        </message>
        <message>
            <source>Component</source>
            <translation>Komponente</translation>
        </message>
        <message>
            <source>The tag of the component that fails.</source>
            <translation>Das Kennzeichen der Komponente, die ausfällt.</translation>
        </message>
        <message>
            <source>Where it sits</source>
            <translation>Wo es sitzt</translation>
        </message>
        <message>
            <source>From the plant breakdown; change it on the plant page.</source>
            <translation>Aus der Gliederung der Anlage; auf der Seite Anlage zu ändern.</translation>
        </message>
        <message>
            <source>Function</source>
            <translation>Funktion</translation>
        </message>
        <message>
            <source>Of the component; change it on the plant page.</source>
            <translation>Von der Komponente; auf der Seite Anlage zu ändern.</translation>
        </message>
        <message>
            <source>Location</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>Supplied by</source>
            <translation>Versorgt von</translation>
        </message>
        <message>
            <source>Operating mode</source>
            <translation>Betriebszustand</translation>
        </message>
        <message>
            <source>Of the plant, where it differs from that of the worksheet.</source>
            <translation>Der Anlage, wo er von dem des Arbeitsblatts abweicht.</translation>
        </message>
        <message>
            <source>Failure mode</source>
            <translation>Ausfallart</translation>
        </message>
        <message>
            <source>What fails.</source>
            <translation>Was ausfällt.</translation>
        </message>
        <message>
            <source>Causes</source>
            <translation>Ursachen</translation>
        </message>
        <message>
            <source>One cause a line: Alt+Enter begins the next one.</source>
            <translation>Je Zeile eine Ursache: Alt+Enter beginnt die nächste.</translation>
        </message>
        <message>
            <source>Local effect</source>
            <translation>Örtliche Wirkung</translation>
        </message>
        <message>
            <source>On the component itself.</source>
            <translation>An der Komponente selbst.</translation>
        </message>
        <message>
            <source>Next higher effect</source>
            <translation>Nächsthöhere Wirkung</translation>
        </message>
        <message>
            <source>On what the component belongs to.</source>
            <translation>An dem, wozu die Komponente gehört.</translation>
        </message>
        <message>
            <source>End effect</source>
            <translation>Endwirkung</translation>
        </message>
        <message>
            <source>On the plant. Rows with the same words here have the same effect.</source>
            <translation>An der Anlage. Zeilen mit denselben Worten haben dieselbe Wirkung.</translation>
        </message>
        <message>
            <source>Detected by</source>
            <translation>Entdeckt durch</translation>
        </message>
        <message>
            <source>How it is noticed: which alarm, and where.</source>
            <translation>Wie es bemerkt wird: welcher Alarm, und wo.</translation>
        </message>
        <message>
            <source>Compensating provision</source>
            <translation>Ausgleichende Vorkehrung</translation>
        </message>
        <message>
            <source>What makes up for it.</source>
            <translation>Was es ausgleicht.</translation>
        </message>
        <message>
            <source>Proved by</source>
            <translation>Nachgewiesen durch</translation>
        </message>
        <message>
            <source>The test that proves the compensating provision.</source>
            <translation>Die Prüfung, die die ausgleichende Vorkehrung nachweist.</translation>
        </message>
        <message>
            <source>Proved on</source>
            <translation>Nachgewiesen am</translation>
        </message>
        <message>
            <source>When that test last did; a date like 2026-02-28.</source>
            <translation>Wann diese Prüfung es zuletzt tat; ein Datum wie 2026-02-28.</translation>
        </message>
        <message>
            <source>Dormant</source>
            <translation>Schlafend</translation>
        </message>
        <message>
            <source>Nobody sees it until a test or a demand.</source>
            <translation>Niemand sieht es vor einer Prüfung oder Anforderung.</translation>
        </message>
        <message>
            <source>Tested every</source>
            <translation>Geprüft alle</translation>
        </message>
        <message>
            <source>Time between two tests of a dormant part, like 4 wk. Its failure model has to be of the tested kind.</source>
            <translation>Zeit zwischen zwei Prüfungen eines schlafenden Teils, wie 4 wk. Sein Ausfallmodell muss von der geprüften Art sein.</translation>
        </message>
        <message>
            <source>Last test</source>
            <translation>Letzte Prüfung</translation>
        </message>
        <message>
            <source>A date like 2026-02-28.</source>
            <translation>Ein Datum wie 2026-02-28.</translation>
        </message>
        <message>
            <source>Next test</source>
            <translation>Nächste Prüfung</translation>
        </message>
        <message>
            <source>Worked out: the last test and the interval.</source>
            <translation>Gerechnet: letzte Prüfung und Intervall.</translation>
        </message>
        <message>
            <source>Severity</source>
            <translation>Schwere</translation>
        </message>
        <message>
            <source>A word of the risk matrix.</source>
            <translation>Ein Wort der Risikomatrix.</translation>
        </message>
        <message>
            <source>S</source>
            <translation>S</translation>
        </message>
        <message>
            <source>Severity, from 1 to 10.</source>
            <translation>Schwere, von 1 bis 10.</translation>
        </message>
        <message>
            <source>O</source>
            <translation>A</translation>
        </message>
        <message>
            <source>Occurrence, from 1 to 10.</source>
            <translation>Auftreten, von 1 bis 10.</translation>
        </message>
        <message>
            <source>D</source>
            <translation>E</translation>
        </message>
        <message>
            <source>Detection, from 1 to 10: 10 is not seen at all.</source>
            <translation>Entdeckung, von 1 bis 10: 10 wird gar nicht gesehen.</translation>
        </message>
        <message>
            <source>RPN</source>
            <translation>RPZ</translation>
        </message>
        <message>
            <source>O by frequency</source>
            <translation>A nach Häufigkeit</translation>
        </message>
        <message>
            <source>Worked out: the rating that the computed frequency has on the scale.</source>
            <translation>Gerechnet: die Bewertung der gerechneten Häufigkeit auf der Skala.</translation>
        </message>
        <message>
            <source>Frequency [/y]</source>
            <translation>Häufigkeit [/y]</translation>
        </message>
        <message>
            <source>Worked out from the failure model, per year of the calendar.</source>
            <translation>Gerechnet aus dem Ausfallmodell, je Kalenderjahr.</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>How the frequency was worked out, or why there is none.</source>
            <translation>Wie die Häufigkeit gerechnet wurde, oder warum es keine gibt.</translation>
        </message>
        <message>
            <source>beta</source>
            <translation>Beta</translation>
        </message>
        <message>
            <source>The chance that the end effect follows, from 0 to 1. Empty: 1 is taken, the worst.</source>
            <translation>Die Chance, dass die Endwirkung folgt, von 0 bis 1. Leer: 1 gilt, das Schlimmste.</translation>
        </message>
        <message>
            <source>alpha</source>
            <translation>Alpha</translation>
        </message>
        <message>
            <source>The mode's share of its component's failures, from 0 to 1.</source>
            <translation>Anteil der Ausfallart an den Ausfällen ihrer Komponente, von 0 bis 1.</translation>
        </message>
        <message>
            <source>Cm</source>
            <translation>Cm</translation>
        </message>
        <message>
            <source>Worked out: the criticality number of the mode, beta x alpha x lambda x t. An expected number, not a probability.</source>
            <translation>Gerechnet: die Kritikalitätszahl der Ausfallart, Beta x Alpha x Lambda x t. Eine erwartete Anzahl, keine Wahrscheinlichkeit.</translation>
        </message>
        <message>
            <source>Cr</source>
            <translation>Cr</translation>
        </message>
        <message>
            <source>Worked out: the sum of Cm of the component's modes of the same severity.</source>
            <translation>Gerechnet: die Summe der Cm der Ausfallarten der Komponente mit gleicher Schwere.</translation>
        </message>
        <message>
            <source>Level</source>
            <translation>Stufe</translation>
        </message>
        <message>
            <source>Worked out: A to E by the mode's share of its component.</source>
            <translation>Gerechnet: A bis E nach dem Anteil an der Komponente.</translation>
        </message>
        <message>
            <source>FI</source>
            <translation>FI</translation>
        </message>
        <message>
            <source>Worked out: the frequency index of the risk matrix.</source>
            <translation>Gerechnet: der Häufigkeitsindex der Risikomatrix.</translation>
        </message>
        <message>
            <source>SI</source>
            <translation>SI</translation>
        </message>
        <message>
            <source>Worked out: the severity index of the risk matrix.</source>
            <translation>Gerechnet: der Schwereindex der Risikomatrix.</translation>
        </message>
        <message>
            <source>RI</source>
            <translation>RI</translation>
        </message>
        <message>
            <source>Worked out: FI + SI. Who signs decides what it means.</source>
            <translation>Gerechnet: FI + SI. Wer unterschreibt, entscheidet, was es bedeutet.</translation>
        </message>
        <message>
            <source>In trees</source>
            <translation>In Bäumen</translation>
        </message>
        <message>
            <source>Worked out: the top events in whose tree it is.</source>
            <translation>Gerechnet: die Hauptereignisse, in deren Baum es steht.</translation>
        </message>
        <message>
            <source>Tree of the end effect</source>
            <translation>Baum der Endwirkung</translation>
        </message>
        <message>
            <source>Worked out: the top event that answers for the end effect.</source>
            <translation>Gerechnet: das Hauptereignis, das für die Endwirkung steht.</translation>
        </message>
        <message>
            <source>End effect: probability</source>
            <translation>Endwirkung: Wahrscheinlichkeit</translation>
        </message>
        <message>
            <source>Worked out from the tree of the end effect. Compare it with the severity of the row.</source>
            <translation>Gerechnet aus dem Baum der Endwirkung. Mit der Schwere der Zeile vergleichen.</translation>
        </message>
        <message>
            <source>End effect [/y]</source>
            <translation>Endwirkung [/y]</translation>
        </message>
        <message>
            <source>Worked out from the tree of the end effect, per year of the calendar. Compare it with the severity of the row.</source>
            <translation>Gerechnet aus dem Baum der Endwirkung, je Kalenderjahr. Mit der Schwere der Zeile vergleichen.</translation>
        </message>
        <message>
            <source>Recommended action</source>
            <translation>Empfohlene Maßnahme</translation>
        </message>
        <message>
            <source>One action a line: Alt+Enter begins the next one. Owner, date and state stand in the same order.</source>
            <translation>Je Zeile eine Maßnahme: Alt+Enter beginnt die nächste. Zuständiger, Datum und Stand in derselben Reihenfolge.</translation>
        </message>
        <message>
            <source>Owner</source>
            <translation>Zuständig</translation>
        </message>
        <message>
            <source>Who does it, one a line: a role.</source>
            <translation>Wer es tut, je Zeile einer: eine Rolle.</translation>
        </message>
        <message>
            <source>Due</source>
            <translation>Fällig</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Zustand</translation>
        </message>
        <message>
            <source>Done is not proved: somebody has to show that it helped.</source>
            <translation>Erledigt ist nicht nachgewiesen: jemand muss zeigen, dass es half.</translation>
        </message>
        <message>
            <source>Done on</source>
            <translation>Erledigt am</translation>
        </message>
        <message>
            <source>How it was proved</source>
            <translation>Wie es nachgewiesen wurde</translation>
        </message>
        <message>
            <source>How it was shown that the action helped, or why it was dropped.</source>
            <translation>Wie gezeigt wurde, dass die Maßnahme half, oder warum sie fallengelassen wurde.</translation>
        </message>
        <message>
            <source>S after</source>
            <translation>S danach</translation>
        </message>
        <message>
            <source>O after</source>
            <translation>A danach</translation>
        </message>
        <message>
            <source>D after</source>
            <translation>E danach</translation>
        </message>
        <message>
            <source>RPN after</source>
            <translation>RPZ danach</translation>
        </message>
        <message>
            <source>Remark</source>
            <translation>Bemerkung</translation>
        </message>
        <message>
            <source>Anything else.</source>
            <translation>Sonstiges.</translation>
        </message>
        <message>
            <source>Missing</source>
            <translation>Fehlt</translation>
        </message>
        <message>
            <source>Worked out: what the row still lacks.</source>
            <translation>Gerechnet: was der Zeile noch fehlt.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SheetColumnsDialog</name>
        <message>
            <source>Columns of the worksheet</source>
            <translation>Spalten des Arbeitsblatts</translation>
        </message>
        <message>
            <source>Ticked columns are shown, in this order. Drag a line, or move it with Alt+Up and Alt+Down.</source>
            <translation>Angehakte Spalten werden in dieser Reihenfolge gezeigt. Eine Zeile ziehen oder mit Alt+Oben und Alt+Unten verschieben.</translation>
        </message>
        <message>
            <source>Columns</source>
            <translation>Spalten</translation>
        </message>
        <message>
            <source>&amp;Up</source>
            <translation>&amp;Hoch</translation>
        </message>
        <message>
            <source>&amp;Down</source>
            <translation>&amp;Runter</translation>
        </message>
        <message>
            <source>As &amp;usual</source>
            <translation>Wie &amp;üblich</translation>
        </message>
        <message>
            <source>The columns and widths that the program comes with</source>
            <translation>Die Spalten und Breiten, mit denen das Programm kommt</translation>
        </message>
        <message>
            <source>First columns that &amp;stay in sight:</source>
            <translation>Erste Spalten, die im Blick &amp;bleiben:</translation>
        </message>
        <message>
            <source>&amp;Lines of text in a row:</source>
            <translation>Text&amp;zeilen je Zeile:</translation>
        </message>
        <message>
            <source>%1 (cannot be typed)</source>
            <translation>%1 (nicht einzutippen)</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SheetExportDialog</name>
        <message>
            <source>What is &amp;seen: %1 rows, %2 columns</source>
            <translation>Was zu &amp;sehen ist: %1 Zeilen, %2 Spalten</translation>
        </message>
        <message>
            <source>Export the worksheet</source>
            <translation>Arbeitsblatt ausgeben</translation>
        </message>
        <message>
            <source>Workbook for spreadsheets (xlsx)</source>
            <translation>Arbeitsmappe für Tabellenprogramme (xlsx)</translation>
        </message>
        <message>
            <source>Text with commas (csv)</source>
            <translation>Text mit Kommas (csv)</translation>
        </message>
        <message>
            <source>Text with tabs (tsv)</source>
            <translation>Text mit Tabulatoren (tsv)</translation>
        </message>
        <message>
            <source>Text that a spreadsheet would run as a formula is written so that it does not; the import takes it back as it was.</source>
            <translation>Text, den ein Tabellenprogramm als Formel ausführen würde, wird so geschrieben, dass es das nicht tut; das Einlesen nimmt ihn wieder, wie er war.</translation>
        </message>
        <message>
            <source>&amp;Format:</source>
            <translation>&amp;Format:</translation>
        </message>
        <message>
            <source>&amp;Everything: %1 rows, all columns</source>
            <translation>&amp;Alles: %1 Zeilen, alle Spalten</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SheetFilterDialog</name>
        <message>
            <source>Filter: %1</source>
            <translation>Filter: %1</translation>
        </message>
        <message>
            <source>&amp;Text holds:</source>
            <translation>&amp;Text enthält:</translation>
        </message>
        <message>
            <source>At &amp;least:</source>
            <translation>&amp;Mindestens:</translation>
        </message>
        <message>
            <source>At &amp;most:</source>
            <translation>&amp;Höchstens:</translation>
        </message>
        <message>
            <source>Values that are shown</source>
            <translation>Gezeigte Werte</translation>
        </message>
        <message>
            <source>(empty)</source>
            <translation>(leer)</translation>
        </message>
        <message>
            <source>%1  (%2)</source>
            <translation>%1  (%2)</translation>
        </message>
        <message>
            <source>Tick &amp;all</source>
            <translation>&amp;Alle anhaken</translation>
        </message>
        <message>
            <source>Tick &amp;none</source>
            <translation>&amp;Keine anhaken</translation>
        </message>
        <message>
            <source>&amp;Every row</source>
            <translation>&amp;Jede Zeile</translation>
        </message>
        <message>
            <source>There are too many different values for a list: type a part of the text.</source>
            <translation>Es gibt zu viele verschiedene Werte für eine Liste: einen Teil des Textes eintippen.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SheetFindBar</name>
        <message>
            <source>&amp;Whole cell</source>
            <translation>&amp;Ganze Zelle</translation>
        </message>
        <message>
            <source>C&amp;apitals count</source>
            <translation>Groß und &amp;klein</translation>
        </message>
        <message>
            <source>Replace a&amp;ll</source>
            <translation>A&amp;lle ersetzen</translation>
        </message>
        <message>
            <source>all rows that are seen</source>
            <translation>alle sichtbaren Zeilen</translation>
        </message>
        <message>
            <source>this column</source>
            <translation>diese Spalte</translation>
        </message>
        <message>
            <source>the chosen cells</source>
            <translation>die gewählten Zellen</translation>
        </message>
        <message>
            <source>Where to look</source>
            <translation>Wo gesucht wird</translation>
        </message>
        <message>
            <source>&amp;Find:</source>
            <translation>&amp;Suchen:</translation>
        </message>
        <message>
            <source>&amp;Replace by:</source>
            <translation>&amp;Ersetzen durch:</translation>
        </message>
        <message>
            <source>&amp;in:</source>
            <translation>&amp;in:</translation>
        </message>
        <message>
            <source>&amp;Previous</source>
            <translation>&amp;Voriges</translation>
        </message>
        <message>
            <source>&amp;Next</source>
            <translation>&amp;Nächstes</translation>
        </message>
        <message>
            <source>&amp;Close</source>
            <translation>S&amp;chließen</translation>
        </message>
        <message>
            <source>Type what to look for.</source>
            <translation>Eintippen, was gesucht wird.</translation>
        </message>
        <message>
            <source>Found nowhere.</source>
            <translation>Nirgends gefunden.</translation>
        </message>
        <message>
            <source>Cells found: %1. Places: %2. Cells that a replacement changes: %3.</source>
            <translation>Gefundene Zellen: %1. Stellen: %2. Zellen, die ein Ersetzen ändert: %3.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SheetPaperDialog</name>
        <message>
            <source>The worksheet on paper</source>
            <translation>Das Arbeitsblatt auf Papier</translation>
        </message>
        <message>
            <source>A4, across</source>
            <translation>A4, quer</translation>
        </message>
        <message>
            <source>A3, across</source>
            <translation>A3, quer</translation>
        </message>
        <message>
            <source>Rows and columns as they are seen. Columns that do not fit go on further sheets, with the first columns repeated.</source>
            <translation>Zeilen und Spalten wie zu sehen. Spalten, die nicht passen, kommen auf weitere Blätter, mit den ersten Spalten wiederholt.</translation>
        </message>
        <message>
            <source>&amp;Paper:</source>
            <translation>&amp;Papier:</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SheetReportStrip</name>
        <message>
            <source>Which &amp;cells</source>
            <translation>Welche &amp;Zellen</translation>
        </message>
        <message>
            <source>Cop&amp;y the list</source>
            <translation>&amp;Liste kopieren</translation>
        </message>
        <message>
            <source>Put &amp;away</source>
            <translation>&amp;Weglegen</translation>
        </message>
        <message>
            <source>Cells that were not taken</source>
            <translation>Nicht übernommene Zellen</translation>
        </message>
        <message>
            <source>Row</source>
            <translation>Zeile</translation>
        </message>
        <message>
            <source>Column</source>
            <translation>Spalte</translation>
        </message>
        <message>
            <source>Text</source>
            <translation>Text</translation>
        </message>
        <message>
            <source>Why not</source>
            <translation>Warum nicht</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SheetRowDialog</name>
        <message>
            <source>New row</source>
            <translation>Neue Zeile</translation>
        </message>
        <message>
            <source>such as: leaks</source>
            <translation>zum Beispiel: leckt</translation>
        </message>
        <message>
            <source>&amp;Component:</source>
            <translation>&amp;Komponente:</translation>
        </message>
        <message>
            <source>&amp;Part of:</source>
            <translation>&amp;Teil von:</translation>
        </message>
        <message>
            <source>&amp;Failure mode:</source>
            <translation>&amp;Ausfallart:</translation>
        </message>
        <message>
            <source>Choose the component that fails, or type the tag of a new one.</source>
            <translation>Die Komponente wählen, die ausfällt, oder das Kennzeichen einer neuen eintippen.</translation>
        </message>
        <message>
            <source>! The plant has no component %1 that the new one could be part of.</source>
            <translation>! Die Anlage hat keine Komponente %1, von der die neue ein Teil sein könnte.</translation>
        </message>
        <message>
            <source>+ %1 is not in the plant yet: it is made together with the row.</source>
            <translation>+ %1 ist noch nicht in der Anlage: sie entsteht mit der Zeile.</translation>
        </message>
        <message>
            <source>Type what fails.</source>
            <translation>Eintippen, was ausfällt.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::ShortcutsDialog</name>
        <message>
            <source>Keys</source>
            <translation>Tasten</translation>
        </message>
        <message>
            <source>find a command</source>
            <translation>einen Befehl suchen</translation>
        </message>
        <message>
            <source>Find a command</source>
            <translation>Einen Befehl suchen</translation>
        </message>
        <message>
            <source>Command</source>
            <translation>Befehl</translation>
        </message>
        <message>
            <source>Commands</source>
            <translation>Befehle</translation>
        </message>
        <message>
            <source>Keys of the command</source>
            <translation>Tasten des Befehls</translation>
        </message>
        <message>
            <source>No keys</source>
            <translation>Keine Tasten</translation>
        </message>
        <message>
            <source>New keys:</source>
            <translation>Neue Tasten:</translation>
        </message>
        <message>
            <source>%1 are the keys of "%2"; take them away there first.</source>
            <translation>%1 sind die Tasten von "%2"; zuerst dort wegnehmen.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SkeletonPage</name>
        <message>
            <source>End effect that the tree is for</source>
            <translation>Endwirkung, für die der Baum ist</translation>
        </message>
        <message>
            <source>Proposed gates and what stands below them</source>
            <translation>Vorgeschlagene Gatter und was darunter steht</translation>
        </message>
        <message>
            <source>Proposed</source>
            <translation>Vorgeschlagen</translation>
        </message>
        <message>
            <source>Kind</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>A first tree for the &amp;end effect</source>
            <translation>Ein erster Baum für die &amp;Endwirkung</translation>
        </message>
        <message>
            <source>choose an end effect</source>
            <translation>eine Endwirkung wählen</translation>
        </message>
        <message>
            <source>%1 (no tree yet; failure modes: %2)</source>
            <translation>%1 (noch kein Baum; Ausfallarten: %2)</translation>
        </message>
        <message>
            <source>%1 (has a tree; failure modes: %2)</source>
            <translation>%1 (hat einen Baum; Ausfallarten: %2)</translation>
        </message>
        <message>
            <source>No failure mode has an end effect yet. Type end effects in the worksheet first.</source>
            <translation>Noch keine Ausfallart hat eine Endwirkung. Erst Endwirkungen im Arbeitsblatt eintippen.</translation>
        </message>
        <message>
            <source>The end effects are being looked for.</source>
            <translation>Die Endwirkungen werden gesucht.</translation>
        </message>
        <message>
            <source>Choose an end effect: its failure modes are put under gates, grouped by the plant, "and" where the supply is redundant.</source>
            <translation>Eine Endwirkung wählen: ihre Ausfallarten werden unter Gatter gesetzt, nach der Anlage gruppiert, "UND", wo die Versorgung redundant ist.</translation>
        </message>
        <message>
            <source>It is a start, not a tree: it cannot know which protection has to fail as well. Untick what you do not want; what a gate that is not ticked holds goes to the one above it.</source>
            <translation>Es ist ein Anfang, kein Baum: es kann nicht wissen, welche Schutzeinrichtung auch versagen muss. Haken wegnehmen, wo nicht gewünscht; was ein nicht angehaktes Gatter hält, geht an das darüber.</translation>
        </message>
        <message>
            <source>TO BE LOOKED AT. %1</source>
            <translation>ANZUSEHEN. %1</translation>
        </message>
        <message>
            <source>the same as %1</source>
            <translation>dasselbe wie %1</translation>
        </message>
        <message>
            <source>event</source>
            <translation>Ereignis</translation>
        </message>
        <message>
            <source>new event</source>
            <translation>neues Ereignis</translation>
        </message>
        <message>
            <source>Accept the ticked gates: %1</source>
            <translation>Angehakte Gatter annehmen: %1</translation>
        </message>
        <message>
            <source>The project has changed; the proposals are looked for again.</source>
            <translation>Das Projekt hat sich geändert; die Vorschläge werden neu gesucht.</translation>
        </message>
        <message>
            <source>The gates are in the project, under the top event %1. Look at each of them: a proposal is a start, not a tree.</source>
            <translation>Die Gatter sind im Projekt, unter dem Hauptereignis %1. Jedes ansehen: ein Vorschlag ist ein Anfang, kein Baum.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::SupplyBox</name>
        <message>
            <source>Supply</source>
            <translation>Versorgung</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Öffnen</translation>
        </message>
        <message>
            <source>Who supplies it, and whom it supplies</source>
            <translation>Wer es versorgt und wen es versorgt</translation>
        </message>
        <message>
            <source>A component that it cannot do without</source>
            <translation>Eine Komponente, ohne die es nicht geht</translation>
        </message>
        <message>
            <source>Add supplier</source>
            <translation>Versorger hinzufügen</translation>
        </message>
        <message>
            <source>Without it this component is lost, too.</source>
            <translation>Ohne ihn ist auch diese Komponente verloren.</translation>
        </message>
        <message>
            <source>Add connection ...</source>
            <translation>Verbindung hinzufügen ...</translation>
        </message>
        <message>
            <source>A feed or return with fuses, terminals and what it can carry.</source>
            <translation>Ein Zulauf oder Rücklauf mit Sicherungen, Klemmen und Belastbarkeit.</translation>
        </message>
        <message>
            <source>%1 (missing)</source>
            <translation>%1 (fehlt)</translation>
        </message>
        <message>
            <source>Needs %1</source>
            <translation>Braucht %1</translation>
        </message>
        <message>
            <source>something</source>
            <translation>etwas</translation>
        </message>
        <message>
            <source>Return of %1 from %2</source>
            <translation>Rücklauf %1 von %2</translation>
        </message>
        <message>
            <source>Return of %1 to %2</source>
            <translation>Rücklauf %1 nach %2</translation>
        </message>
        <message>
            <source>Gets %1 from %2</source>
            <translation>Bekommt %1 von %2</translation>
        </message>
        <message>
            <source>Gives %1 to %2</source>
            <translation>Gibt %1 an %2</translation>
        </message>
        <message>
            <source>%1, through %2</source>
            <translation>%1, durch %2</translation>
        </message>
        <message>
            <source>%1; carries %2 %3</source>
            <translation>%1; trägt %2 %3</translation>
        </message>
        <message>
            <source>Is needed by %1</source>
            <translation>Wird gebraucht von %1</translation>
        </message>
        <message>
            <source>Nothing is known about who supplies it.</source>
            <translation>Es ist nicht bekannt, wer es versorgt.</translation>
        </message>
        <message>
            <source>Redundant (%1): any one of %2 is taken as enough.</source>
            <translation>Redundant (%1): jedes von %2 gilt als genug.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::TableImportDialog</name>
        <message>
            <source>&amp;Make components that the plant does not have</source>
            <translation>Fehlende Komponenten &amp;anlegen</translation>
        </message>
        <message>
            <source>Copy the &amp;report</source>
            <translation>&amp;Bericht kopieren</translation>
        </message>
        <message>
            <source>&amp;Save the report ...</source>
            <translation>Bericht &amp;speichern ...</translation>
        </message>
        <message>
            <source>Import a table into the worksheet</source>
            <translation>Tabelle in das Arbeitsblatt einlesen</translation>
        </message>
        <message>
            <source>a CSV or TSV file, saved by a spreadsheet as UTF-8</source>
            <translation>eine CSV- oder TSV-Datei, von einem Tabellenprogramm als UTF-8 gespeichert</translation>
        </message>
        <message>
            <source>&amp;Choose ...</source>
            <translation>&amp;Wählen ...</translation>
        </message>
        <message>
            <source>From the c&amp;lipboard</source>
            <translation>Aus der &amp;Zwischenablage</translation>
        </message>
        <message>
            <source>the clipboard</source>
            <translation>die Zwischenablage</translation>
        </message>
        <message>
            <source>the one that stands most often in the first line</source>
            <translation>jenes, das in der ersten Zeile am häufigsten steht</translation>
        </message>
        <message>
            <source>comma</source>
            <translation>Komma</translation>
        </message>
        <message>
            <source>semicolon</source>
            <translation>Semikolon</translation>
        </message>
        <message>
            <source>tab</source>
            <translation>Tabulator</translation>
        </message>
        <message>
            <source>Table:</source>
            <translation>Tabelle:</translation>
        </message>
        <message>
            <source>Cells are apart by a:</source>
            <translation>Zellen sind getrennt durch:</translation>
        </message>
        <message>
            <source>Which column is which</source>
            <translation>Welche Spalte welche ist</translation>
        </message>
        <message>
            <source>Column of the table</source>
            <translation>Spalte der Tabelle</translation>
        </message>
        <message>
            <source>is our column</source>
            <translation>ist unsere Spalte</translation>
        </message>
        <message>
            <source>What becomes of each row</source>
            <translation>Was aus jeder Zeile wird</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Zeile</translation>
        </message>
        <message>
            <source>Becomes</source>
            <translation>Wird</translation>
        </message>
        <message>
            <source>Row</source>
            <translation>Zeile</translation>
        </message>
        <message>
            <source>Changes, or why not</source>
            <translation>Ändert sich, oder warum nicht</translation>
        </message>
        <message>
            <source>Choose a file. Nothing changes before you say so.</source>
            <translation>Eine Datei wählen. Nichts ändert sich ohne Bestätigung.</translation>
        </message>
        <message>
            <source>&amp;Import</source>
            <translation>&amp;Einlesen</translation>
        </message>
        <message>
            <source>Import a table</source>
            <translation>Tabelle einlesen</translation>
        </message>
        <message>
            <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
            <translation>Tabellen (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
        </message>
        <message>
            <source>! %1 is larger than 64 MB: split it.</source>
            <translation>! %1 ist größer als 64 MB: teilen.</translation>
        </message>
        <message>
            <source>! %1 cannot be read: %2.</source>
            <translation>! %1 kann nicht gelesen werden: %2.</translation>
        </message>
        <message>
            <source>(no heading)</source>
            <translation>(keine Überschrift)</translation>
        </message>
        <message>
            <source>(not taken: it is worked out)</source>
            <translation>(nicht übernommen: wird gerechnet)</translation>
        </message>
        <message>
            <source>(not taken)</source>
            <translation>(nicht übernommen)</translation>
        </message>
        <message>
            <source>Our column for %1</source>
            <translation>Unsere Spalte für %1</translation>
        </message>
        <message>
            <source>! There is no row below the headings.</source>
            <translation>! Unter den Überschriften ist keine Zeile.</translation>
        </message>
        <message>
            <source>changed</source>
            <translation>geändert</translation>
        </message>
        <message>
            <source>! refused</source>
            <translation>! abgelehnt</translation>
        </message>
        <message>
            <source>new</source>
            <translation>neu</translation>
        </message>
        <message>
            <source>as it was</source>
            <translation>wie es war</translation>
        </message>
        <message>
            <source>refused</source>
            <translation>abgelehnt</translation>
        </message>
        <message>
            <source>Not taken: column %1</source>
            <translation>Nicht übernommen: Spalte %1</translation>
        </message>
        <message>
            <source>Save the report</source>
            <translation>Bericht speichern</translation>
        </message>
        <message>
            <source>! %1 cannot be written: %2.</source>
            <translation>! %1 kann nicht geschrieben werden: %2.</translation>
        </message>
        <message>
            <source>%1 (seen in the first line)</source>
            <translation>%1 (in der ersten Zeile gesehen)</translation>
        </message>
        <message>
            <source>Rows that can be taken: %1.</source>
            <translation>Zeilen, die übernommen werden können: %1.</translation>
        </message>
        <message>
            <source>Components that are made: %1.</source>
            <translation>Komponenten, die angelegt werden: %1.</translation>
        </message>
        <message>
            <source>! Rows that cannot: %1; they stand first, with the reason.</source>
            <translation>! Zeilen, die es nicht können: %1; sie stehen zuerst, mit dem Grund.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::TablePage</name>
        <message>
            <source>Show only rows with these words</source>
            <translation>Nur Zeilen mit diesen Wörtern zeigen</translation>
        </message>
        <message>
            <source>Filter of the table</source>
            <translation>Filter der Tabelle</translation>
        </message>
        <message>
            <source>Copy as text</source>
            <translation>Als Text kopieren</translation>
        </message>
        <message>
            <source>Copy as CSV</source>
            <translation>Als CSV kopieren</translation>
        </message>
        <message>
            <source>Order of the analysis</source>
            <translation>Reihenfolge der Analyse</translation>
        </message>
        <message>
            <source>%1 of %2 rows</source>
            <translation>%1 von %2 Zeilen</translation>
        </message>
        <message>
            <source>1 row</source>
            <translation>1 Zeile</translation>
        </message>
        <message>
            <source>%1 rows</source>
            <translation>%1 Zeilen</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::TopFactsDialog</name>
        <message>
            <source>Top event %1</source>
            <translation>Hauptereignis %1</translation>
        </message>
        <message>
            <source>&amp;What must not happen</source>
            <translation>&amp;Was nicht geschehen darf</translation>
        </message>
        <message>
            <source>&amp;State of the plant</source>
            <translation>&amp;Zustand der Anlage</translation>
        </message>
        <message>
            <source>in which it is asked: at sea, at start, in port</source>
            <translation>in dem gefragt wird: auf See, beim Start, im Hafen</translation>
        </message>
        <message>
            <source>How &amp;bad it is</source>
            <translation>Wie &amp;schlimm es ist</translation>
        </message>
        <message>
            <source>How &amp;often asked</source>
            <translation>Wie &amp;oft gefragt</translation>
        </message>
        <message>
            <source>&amp;End effects</source>
            <translation>&amp;Endwirkungen</translation>
        </message>
        <message>
            <source>of the worksheet that this tree answers for, one a line</source>
            <translation>des Arbeitsblatts, für die dieser Baum steht, je Zeile eine</translation>
        </message>
        <message>
            <source>&amp;Remark</source>
            <translation>&amp;Bemerkung</translation>
        </message>
        <message>
            <source>How often it is asked is no number: type 12 or 1e-3, or nothing.</source>
            <translation>Wie oft gefragt wird, ist keine Zahl: 12 oder 1e-3 eintippen oder nichts.</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::TypeModel</name>
        <message>
            <source>Type</source>
            <translation>Typ</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Gruppe</translation>
        </message>
        <message>
            <source>Modes</source>
            <translation>Arten</translation>
        </message>
        <message>
            <source>Rates</source>
            <translation>Raten</translation>
        </message>
        <message>
            <source>Library</source>
            <translation>Bibliothek</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::WelcomePage</name>
        <message>
            <source>What can stop the machine?</source>
            <translation>Was kann die Maschine anhalten?</translation>
        </message>
        <message>
            <source>Look at the demo plant</source>
            <translation>Die Beispielanlage ansehen</translation>
        </message>
        <message>
            <source>Two boilers of an invented ship, as a copy to play with.</source>
            <translation>Zwei Kessel eines erfundenen Schiffes, als Kopie zum Ausprobieren.</translation>
        </message>
        <message>
            <source>Type a tree</source>
            <translation>Einen Baum eintippen</translation>
        </message>
        <message>
            <source>Enter adds beside, Tab adds below, letters choose the kind.</source>
            <translation>Enter fügt daneben hinzu, Tab darunter, Buchstaben wählen die Art.</translation>
        </message>
        <message>
            <source>Open a project</source>
            <translation>Projekt öffnen</translation>
        </message>
        <message>
            <source>A .cutwater file; or drop it here.</source>
            <translation>Eine .cutwater-Datei; oder hier fallen lassen.</translation>
        </message>
        <message>
            <source>A template without numbers.</source>
            <translation>Eine Vorlage ohne Zahlen.</translation>
        </message>
        <message>
            <source>Opened lately:</source>
            <translation>Zuletzt geöffnet:</translation>
        </message>
    </context>
    <context>
        <name>cutwater::editor::WorksheetPage</name>
        <message>
            <source>&amp;New row ...</source>
            <translation>&amp;Neue Zeile ...</translation>
        </message>
        <message>
            <source>&amp;Duplicate rows</source>
            <translation>Zeilen &amp;verdoppeln</translation>
        </message>
        <message>
            <source>&amp;Remove rows ...</source>
            <translation>Zeilen &amp;entfernen ...</translation>
        </message>
        <message>
            <source>&amp;Copy cells</source>
            <translation>Zellen &amp;kopieren</translation>
        </message>
        <message>
            <source>Cu&amp;t cells</source>
            <translation>Zellen &amp;ausschneiden</translation>
        </message>
        <message>
            <source>&amp;Paste cells</source>
            <translation>Zellen e&amp;infügen</translation>
        </message>
        <message>
            <source>Paste text with commas</source>
            <translation>Text mit Kommas einfügen</translation>
        </message>
        <message>
            <source>Fill d&amp;own</source>
            <translation>Nach &amp;unten füllen</translation>
        </message>
        <message>
            <source>Fill the choice with this cell</source>
            <translation>Auswahl mit dieser Zelle füllen</translation>
        </message>
        <message>
            <source>C&amp;lear cells</source>
            <translation>Zellen &amp;leeren</translation>
        </message>
        <message>
            <source>&amp;Find and replace ...</source>
            <translation>&amp;Suchen und ersetzen ...</translation>
        </message>
        <message>
            <source>Find next</source>
            <translation>Nächstes suchen</translation>
        </message>
        <message>
            <source>Find previous</source>
            <translation>Voriges suchen</translation>
        </message>
        <message>
            <source>Show rows that &amp;hold ...</source>
            <translation>Zeilen &amp;zeigen, die enthalten ...</translation>
        </message>
        <message>
            <source>Filter this column ...</source>
            <translation>Diese Spalte filtern ...</translation>
        </message>
        <message>
            <source>Show &amp;every row</source>
            <translation>&amp;Jede Zeile zeigen</translation>
        </message>
        <message>
            <source>&amp;Sort by this column</source>
            <translation>Nach dieser Spalte &amp;ordnen</translation>
        </message>
        <message>
            <source>Sort by this column, the largest first</source>
            <translation>Nach dieser Spalte ordnen, das Größte zuerst</translation>
        </message>
        <message>
            <source>Sort by this column as well</source>
            <translation>Auch nach dieser Spalte ordnen</translation>
        </message>
        <message>
            <source>The order of the project</source>
            <translation>Die Reihenfolge des Projekts</translation>
        </message>
        <message>
            <source>Sort and filter &amp;again</source>
            <translation>Neu o&amp;rdnen und filtern</translation>
        </message>
        <message>
            <source>Fold all groups</source>
            <translation>Alle Gruppen zuklappen</translation>
        </message>
        <message>
            <source>Unfold all groups</source>
            <translation>Alle Gruppen aufklappen</translation>
        </message>
        <message>
            <source>Col&amp;umns ...</source>
            <translation>S&amp;palten ...</translation>
        </message>
        <message>
            <source>Keep the columns up to here in sight</source>
            <translation>Die Spalten bis hier im Blick behalten</translation>
        </message>
        <message>
            <source>Let all columns move</source>
            <translation>Alle Spalten bewegen lassen</translation>
        </message>
        <message>
            <source>&amp;Import a table ...</source>
            <translation>&amp;Tabelle einlesen ...</translation>
        </message>
        <message>
            <source>E&amp;xport ...</source>
            <translation>Aus&amp;geben ...</translation>
        </message>
        <message>
            <source>&amp;Write as PDF ...</source>
            <translation>Als PDF s&amp;chreiben ...</translation>
        </message>
        <message>
            <source>Prin&amp;t ...</source>
            <translation>&amp;Drucken ...</translation>
        </message>
        <message>
            <source>Cautions ...</source>
            <translation>Vorsichtshinweise ...</translation>
        </message>
        <message>
            <source>Sort, the smallest first</source>
            <translation>Ordnen, das Kleinste zuerst</translation>
        </message>
        <message>
            <source>Sort, the largest first</source>
            <translation>Ordnen, das Größte zuerst</translation>
        </message>
        <message>
            <source>Sort by this as well</source>
            <translation>Auch hiernach ordnen</translation>
        </message>
        <message>
            <source>Filter ...</source>
            <translation>Filtern ...</translation>
        </message>
        <message>
            <source>No filter on this column</source>
            <translation>Kein Filter auf dieser Spalte</translation>
        </message>
        <message>
            <source>Hide this column</source>
            <translation>Diese Spalte verbergen</translation>
        </message>
        <message>
            <source>%1 %2.</source>
            <translation>%1 %2.</translation>
        </message>
        <message>
            <source>%1: "%2" %3.</source>
            <translation>%1: "%2" %3.</translation>
        </message>
        <message>
            <source>The clipboard holds no text with commas: copy some first.</source>
            <translation>Die Zwischenablage enthält keinen Text mit Kommas: erst welchen kopieren.</translation>
        </message>
        <message>
            <source>The clipboard holds no cells and no text: copy some first.</source>
            <translation>Die Zwischenablage enthält weder Zellen noch Text: erst etwas kopieren.</translation>
        </message>
        <message>
            <source>Choose the cell where the pasted cells shall begin.</source>
            <translation>Die Zelle wählen, bei der das Eingefügte beginnen soll.</translation>
        </message>
        <message>
            <source>These cells cannot be cleared: they are worked out, or belong to the plant page.</source>
            <translation>Diese Zellen lassen sich nicht leeren: sie werden gerechnet oder gehören zur Seite Anlage.</translation>
        </message>
        <message>
            <source>Remove the row "%1"?</source>
            <translation>Die Zeile "%1" entfernen?</translation>
        </message>
        <message>
            <source>line %1</source>
            <translation>Zeile %1</translation>
        </message>
        <message>
            <source>worksheet</source>
            <translation>arbeitsblatt</translation>
        </message>
        <message>
            <source>The part of the program that writes %1 files is not installed: look at Analyses, Plug-ins.</source>
            <translation>Der Programmteil, der %1-Dateien schreibt, ist nicht installiert: siehe Analysen, Zusatzmodule.</translation>
        </message>
        <message>
            <source>There is nothing to write: no row or column is seen.</source>
            <translation>Es gibt nichts zu schreiben: keine Zeile oder Spalte ist zu sehen.</translation>
        </message>
        <message>
            <source>Writing %1 ...</source>
            <translation>%1 wird geschrieben ...</translation>
        </message>
        <message>
            <source>The worksheet is written to %1.</source>
            <translation>Das Arbeitsblatt ist nach %1 geschrieben.</translation>
        </message>
        <message>
            <source>%1 cannot be written: %2.</source>
            <translation>%1 kann nicht geschrieben werden: %2.</translation>
        </message>
        <message>
            <source>Without the columns that trees make: %1.</source>
            <translation>Ohne die Spalten, die aus Bäumen kommen: %1.</translation>
        </message>
        <message>
            <source>The worksheet could not be written.</source>
            <translation>Das Arbeitsblatt konnte nicht geschrieben werden.</translation>
        </message>
        <message>
            <source>dormant only</source>
            <translation>nur schlafende</translation>
        </message>
        <message>
            <source>rows that hold "%1"</source>
            <translation>Zeilen, die "%1" enthalten</translation>
        </message>
        <message>
            <source>by %1</source>
            <translation>nach %1</translation>
        </message>
        <message>
            <source>PDF (*.pdf)</source>
            <translation>PDF (*.pdf)</translation>
        </message>
        <message>
            <source>The worksheet went to the printer.</source>
            <translation>Das Arbeitsblatt ging an den Drucker.</translation>
        </message>
        <message>
            <source>The printer takes no sheets: look at its state and paper.</source>
            <translation>Der Drucker nimmt keine Blätter an: Zustand und Papier prüfen.</translation>
        </message>
        <message>
            <source>The row of the selected event is put away by the filter, or by a fold.</source>
            <translation>Die Zeile des gewählten Ereignisses ist durch Filter oder Zuklappen verborgen.</translation>
        </message>
        <message>
            <source>(changed since they were sorted: Ctrl+Shift+L)</source>
            <translation>(seit dem Ordnen geändert: Strg+Umschalt+L)</translation>
        </message>
        <message>
            <source>(working out end effects ...)</source>
            <translation>(Endwirkungen werden gerechnet ...)</translation>
        </message>
        <message>
            <source>The worksheet is empty. A row is a way in which a component of the plant fails.
Insert makes one; the menu Worksheet imports a table.</source>
            <translation>Das Arbeitsblatt ist leer. Eine Zeile ist eine Art, wie eine Komponente der Anlage ausfällt.
Einfg legt eine an; das Menü Arbeitsblatt liest eine Tabelle ein.</translation>
        </message>
        <message>
            <source>No row passes the filter.
Ctrl+Shift+E shows every row.</source>
            <translation>Keine Zeile geht durch den Filter.
Strg+Umschalt+E zeigt jede Zeile.</translation>
        </message>
        <message>
            <source>%1 (cannot be typed here)</source>
            <translation>%1 (hier nicht einzutippen)</translation>
        </message>
        <message>
            <source>Type what to look for.</source>
            <translation>Eintippen, was gesucht wird.</translation>
        </message>
        <message>
            <source>"%1" is found nowhere.</source>
            <translation>"%1" ist nirgends zu finden.</translation>
        </message>
        <message>
            <source>There is nothing to replace.</source>
            <translation>Es gibt nichts zu ersetzen.</translation>
        </message>
        <message>
            <source>Worksheet</source>
            <translation>Arbeitsblatt</translation>
        </message>
        <message>
            <source>Write the worksheet</source>
            <translation>Arbeitsblatt schreiben</translation>
        </message>
        <message>
            <source>Col&amp;umns:</source>
            <translation>S&amp;palten:</translation>
        </message>
        <message>
            <source>A choice of one's own</source>
            <translation>Eigene Auswahl</translation>
        </message>
        <message>
            <source>&amp;Group by:</source>
            <translation>&amp;Gruppiert:</translation>
        </message>
        <message>
            <source>nothing</source>
            <translation>nichts</translation>
        </message>
        <message>
            <source>component</source>
            <translation>Komponente</translation>
        </message>
        <message>
            <source>end effect</source>
            <translation>Endwirkung</translation>
        </message>
        <message>
            <source>severity</source>
            <translation>Schwere</translation>
        </message>
        <message>
            <source>location</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>D&amp;ormant only</source>
            <translation>&amp;Schlafende</translation>
        </message>
        <message>
            <source>Only failures that nobody sees until a test or a demand</source>
            <translation>Nur Ausfälle, die niemand vor einer Prüfung oder Anforderung sieht</translation>
        </message>
        <message>
            <source>Show rows that hold ...</source>
            <translation>Zeilen zeigen, die enthalten ...</translation>
        </message>
        <message>
            <source>Show rows that hold these words</source>
            <translation>Zeilen zeigen, die diese Wörter enthalten</translation>
        </message>
        <message>
            <source>Table</source>
            <translation>Tabelle</translation>
        </message>
        <message>
            <source>Import, export, print, find, sort, columns</source>
            <translation>Einlesen, Ausgeben, Drucken, Suchen, Ordnen, Spalten</translation>
        </message>
        <message>
            <source>Operating &amp;mode of the worksheet:</source>
            <translation>Betriebs&amp;zustand des Arbeitsblatts:</translation>
        </message>
        <message>
            <source>not stated: a surveyor will ask</source>
            <translation>nicht angegeben: der Besichtiger wird fragen</translation>
        </message>
        <message>
            <source>! RPN multiplies ranks: it is no measure of risk. Look at the severity first.</source>
            <translation>! Die RPZ multipliziert Ränge: sie ist kein Maß für das Risiko. Zuerst die Schwere ansehen.</translation>
        </message>
        <message>
            <source>The whole text of the cell</source>
            <translation>Der ganze Text der Zelle</translation>
        </message>
        <message>
            <source>All &amp;cautions ...</source>
            <translation>Alle &amp;Vorsichtshinweise ...</translation>
        </message>
        <message>
            <source>1 cell</source>
            <translation>1 Zelle</translation>
        </message>
        <message>
            <source>%1 cells</source>
            <translation>%1 Zellen</translation>
        </message>
        <message>
            <source>Changed: %1.</source>
            <translation>Geändert: %1.</translation>
        </message>
        <message>
            <source>Changed: %1. Not taken: %2.</source>
            <translation>Geändert: %1. Nicht übernommen: %2.</translation>
        </message>
        <message>
            <source>Copied: %1.</source>
            <translation>Kopiert: %1.</translation>
        </message>
        <message>
            <source>Remove %1 rows?</source>
            <translation>%1 Zeilen entfernen?</translation>
        </message>
        <message>
            <source>Used in the trees %1. The events stay there, with name and figures, but without a row.</source>
            <translation>In den Bäumen %1 benutzt. Die Ereignisse bleiben dort, mit Name und Zahlen, aber ohne Zeile.</translation>
        </message>
        <message>
            <source>1 row</source>
            <translation>1 Zeile</translation>
        </message>
        <message>
            <source>%1 rows</source>
            <translation>%1 Zeilen</translation>
        </message>
        <message>
            <source>Imported: %1.</source>
            <translation>Eingelesen: %1.</translation>
        </message>
        <message>
            <source>Imported: %1. Not taken: %2.</source>
            <translation>Eingelesen: %1. Nicht übernommen: %2.</translation>
        </message>
        <message>
            <source>Rows: %1</source>
            <translation>Zeilen: %1</translation>
        </message>
        <message>
            <source>Rows: %1 of %2</source>
            <translation>Zeilen: %1 von %2</translation>
        </message>
        <message>
            <source>! %1 There are %2 more cautions.</source>
            <translation>! %1 Es gibt %2 weitere Vorsichtshinweise.</translation>
        </message>
        <message>
            <source>Choose a cell: its whole text stands here.</source>
            <translation>Eine Zelle wählen: ihr ganzer Text steht hier.</translation>
        </message>
    </context>
    <context>
        <name>main</name>
        <message>
            <source>Draws fault trees and shows what follows from them.</source>
            <translation>Zeichnet Fehlerbäume und zeigt, was aus ihnen folgt.</translation>
        </message>
        <message>
            <source>project file to open</source>
            <translation>zu öffnende Projektdatei</translation>
        </message>
    </context>
</TS>
