<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name>AboutProgram</name>
    <message>
        <source>the screens</source>
        <translation>die Bildschirmseiten</translation>
    </message>
    <message>
        <source>the plots</source>
        <translation>die Diagramme</translation>
    </message>
    <message>
        <source>quantities with units</source>
        <translation>Größen mit Einheiten</translation>
    </message>
    <message>
        <source>reading scenario files</source>
        <translation>das Lesen der Plandateien</translation>
    </message>
    <message>
        <source>writing numbers</source>
        <translation>das Schreiben von Zahlen</translation>
    </message>
    <message>
        <source>errors as values</source>
        <translation>Fehler als Werte</translation>
    </message>
    <message>
        <source>answers as JSON</source>
        <translation>Antworten als JSON</translation>
    </message>
    <message>
        <source>the command&apos;s arguments</source>
        <translation>die Angaben beim Befehl</translation>
    </message>
</context>
<context>
    <name>AboutSheet</name>
    <message>
        <source>About Candlemark</source>
        <translation>Über Candlemark</translation>
    </message>
    <message>
        <source>Candlemark %1: how long a hand-built power unit lasts through an outage.</source>
        <translation>Candlemark %1: wie lange eine selbst gebaute Stromversorgung einen Ausfall durchhält.</translation>
    </message>
    <message>
        <source>It is arithmetic, not approval: local codes and licensed practice decide. It opens no connection to any network itself. Only when you look for a printer or print may the printing of your system open one. Your files stay where you save them.</source>
        <translation>Das ist Rechnen, keine Genehmigung: Es entscheiden die örtlichen Vorschriften und zugelassene Fachleute. Das Programm selbst öffnet keine Verbindung zu einem Netz. Nur wenn Sie einen Drucker suchen oder drucken, kann das Drucken Ihres Systems eine öffnen. Ihre Dateien bleiben, wo Sie sie speichern.</translation>
    </message>
    <message>
        <source>Copyright 2026 The Candlemark authors. This is free software: you may pass it on and change it under the GNU General Public License, version 3 or later. It comes without any warranty.</source>
        <translation>Copyright 2026 die Autoren von Candlemark. Dies ist freie Software: Sie dürfen sie unter der GNU General Public License, Version 3 oder später, weitergeben und verändern. Es gibt keinerlei Gewähr.</translation>
    </message>
    <message>
        <source>Made with</source>
        <translation>Gemacht mit</translation>
    </message>
    <message>
        <source>%1, for %2: %3</source>
        <translation>%1, für %2: %3</translation>
    </message>
    <message>
        <source>Read the whole licence</source>
        <translation>Die ganze Lizenz lesen</translation>
    </message>
</context>
<context>
    <name>AnswerBody</name>
    <message>
        <source>Table: %1</source>
        <translation>Tabelle: %1</translation>
    </message>
</context>
<context>
    <name>ApplianceSheet</name>
    <message>
        <source>Pick what it is</source>
        <translation>Wählen Sie, was es ist</translation>
    </message>
    <message>
        <source>Part of its name</source>
        <translation>Teil des Namens</translation>
    </message>
    <message>
        <source>Type part of a name</source>
        <translation>Einen Teil des Namens eingeben</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Etwas anderes</translation>
    </message>
    <message>
        <source>Nothing in the library is called so.</source>
        <translation>In der Liste heißt nichts so.</translation>
    </message>
</context>
<context>
    <name>BrokenLine</name>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>Line %1: %2. Change</source>
        <translation>Zeile %1: %2. Ändern</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>Mend here</source>
        <translation>Hier berichtigen</translation>
    </message>
    <message>
        <source>Mend here: %1</source>
        <translation>Hier berichtigen: %1</translation>
    </message>
</context>
<context>
    <name>BuildsPage</name>
    <message>
        <source>What the build has to do</source>
        <translation>Was der Aufbau leisten soll</translation>
    </message>
</context>
<context>
    <name>BuildsPane</name>
    <message>
        <source>Thousands of outages are being run; the page stays free meanwhile.</source>
        <translation>Tausende Ausfälle werden durchgerechnet; die Seite bleibt solange bedienbar.</translation>
    </message>
    <message>
        <source>Work out packs and panels</source>
        <translation>Akkus und Module ausrechnen</translation>
    </message>
    <message>
        <source>Touch a cell to read what is known of that build.</source>
        <translation>Tippen Sie auf ein Feld, um mehr über diesen Aufbau zu lesen.</translation>
    </message>
    <message>
        <source>%1 % done</source>
        <translation>%1 % fertig</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stop working out packs and panels</source>
        <translation>Berechnung der Akkus und Module anhalten</translation>
    </message>
    <message>
        <source>A first picture, of few members.</source>
        <translation>Ein erstes Bild, aus wenigen Fällen.</translation>
    </message>
</context>
<context>
    <name>BuildsPlotView</name>
    <message>
        <source>Draw it against: %1</source>
        <translation>Auftragen gegen: %1</translation>
    </message>
    <message>
        <source>Touch a point or its button (packs × panels) to read what is known of that build.</source>
        <translation>Tippen Sie auf einen Punkt oder seine Taste (Akkus × Module), um mehr über diesen Aufbau zu lesen.</translation>
    </message>
    <message>
        <source>the build of the answer</source>
        <translation>der Aufbau der Antwort</translation>
    </message>
    <message>
        <source>what the file has</source>
        <translation>was die Datei enthält</translation>
    </message>
    <message>
        <source>no other is cheaper and as sure; the upright line is the interval, 19 times in 20</source>
        <translation>kein anderer ist billiger und ebenso sicher; der senkrechte Strich ist das Intervall, 19-mal von 20</translation>
    </message>
    <message>
        <source>no other is lighter and as sure; the upright line is the interval, 19 times in 20</source>
        <translation>kein anderer ist leichter und ebenso sicher; der senkrechte Strich ist das Intervall, 19-mal von 20</translation>
    </message>
    <message>
        <source>on the buttons: packs × panels</source>
        <translation>auf den Tasten: Akkus × Module</translation>
    </message>
</context>
<context>
    <name>CandleLegend</name>
    <message>
        <source>packs carry</source>
        <translation>aus den Akkus</translation>
    </message>
    <message>
        <source>sun puts back</source>
        <translation>von der Sonne</translation>
    </message>
    <message>
        <source>may be less</source>
        <translation>vielleicht weniger</translation>
    </message>
    <message>
        <source>burnt, missing</source>
        <translation>fehlt</translation>
    </message>
</context>
<context>
    <name>CandlePanel</name>
    <message>
        <source>Candle</source>
        <translation>Kerze</translation>
    </message>
</context>
<context>
    <name>ChanceMap</name>
    <message>
        <source>Chance of lasting, packs down and panels across</source>
        <translation>Wahrscheinlichkeit, den Ausfall zu überstehen; Akkus nach unten, Module nach rechts</translation>
    </message>
    <message>
        <source>Packs down, panels across; each figure is the chance in %</source>
        <translation>Akkus nach unten, Module nach rechts; jede Zahl ist die Wahrscheinlichkeit in %</translation>
    </message>
</context>
<context>
    <name>ChangedSheet</name>
    <message>
        <source>The file was changed elsewhere</source>
        <translation>Die Datei wurde anderswo geändert</translation>
    </message>
    <message>
        <source>Since it was read here, another program or another window changed %1. Nothing was saved yet. Whichever you choose, the other text stays as a version on the File page.</source>
        <translation>Seit sie hier gelesen wurde, hat ein anderes Programm oder ein anderes Fenster %1 geändert. Gespeichert ist noch nichts. Was Sie auch wählen: Der andere Text bleibt als frühere Fassung auf der Seite Datei.</translation>
    </message>
    <message>
        <source>Since it was read here, another program or another window changed %1. Nothing was saved yet, and no versions are kept: save yours under another name to have both.</source>
        <translation>Seit sie hier gelesen wurde, hat ein anderes Programm oder ein anderes Fenster %1 geändert. Gespeichert ist noch nichts, und frühere Fassungen werden nicht aufbewahrt: Speichern Sie Ihre unter einem anderen Namen, um beide zu haben.</translation>
    </message>
    <message>
        <source>Save mine under another name</source>
        <translation>Meine unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>Save mine in its place</source>
        <translation>Meine an ihrer Stelle speichern</translation>
    </message>
    <message>
        <source>Take up what the file holds now</source>
        <translation>Übernehmen, was jetzt in der Datei steht</translation>
    </message>
</context>
<context>
    <name>CircuitsEditor</name>
    <message>
        <source>Add a circuit</source>
        <translation>Stromkreis hinzufügen</translation>
    </message>
    <message>
        <source>Take this circuit out</source>
        <translation>Diesen Stromkreis entfernen</translation>
    </message>
    <message>
        <source>Its parts, from where it begins outwards</source>
        <translation>Seine Teile, vom Anfang nach außen</translation>
    </message>
    <message>
        <source>Take this part out</source>
        <translation>Dieses Teil entfernen</translation>
    </message>
    <message>
        <source>+ fuse</source>
        <translation>+ Sicherung</translation>
    </message>
    <message>
        <source>+ switch</source>
        <translation>+ Schalter</translation>
    </message>
    <message>
        <source>+ wire</source>
        <translation>+ Leitung</translation>
    </message>
    <message>
        <source>+ connector</source>
        <translation>+ Steckverbinder</translation>
    </message>
    <message>
        <source>+ outlet</source>
        <translation>+ Steckdose</translation>
    </message>
</context>
<context>
    <name>ClockPanel</name>
    <message>
        <source>The clock is wrong</source>
        <translation>Die Uhr geht falsch</translation>
    </message>
    <message>
        <source>The power went out now</source>
        <translation>Der Strom fiel jetzt aus</translation>
    </message>
    <message>
        <source>It is still out</source>
        <translation>Er ist noch aus</translation>
    </message>
    <message>
        <source>What time is it?</source>
        <translation>Wie spät ist es?</translation>
    </message>
    <message>
        <source>By local standard time: in summer an hour less than clocks show.</source>
        <translation>In Normalzeit: im Sommer eine Stunde weniger, als Uhren zeigen.</translation>
    </message>
    <message>
        <source>−1 day</source>
        <translation>−1 Tag</translation>
    </message>
    <message>
        <source>A day earlier</source>
        <translation>Einen Tag früher</translation>
    </message>
    <message>
        <source>−1 h</source>
        <translation>−1 h</translation>
    </message>
    <message>
        <source>An hour earlier</source>
        <translation>Eine Stunde früher</translation>
    </message>
    <message>
        <source>+1 h</source>
        <translation>+1 h</translation>
    </message>
    <message>
        <source>An hour later</source>
        <translation>Eine Stunde später</translation>
    </message>
    <message>
        <source>+1 day</source>
        <translation>+1 Tag</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Einen Tag später</translation>
    </message>
    <message>
        <source>−10 min</source>
        <translation>−10 min</translation>
    </message>
    <message>
        <source>Ten minutes earlier</source>
        <translation>Zehn Minuten früher</translation>
    </message>
    <message>
        <source>−1 min</source>
        <translation>−1 min</translation>
    </message>
    <message>
        <source>A minute earlier</source>
        <translation>Eine Minute früher</translation>
    </message>
    <message>
        <source>+1 min</source>
        <translation>+1 min</translation>
    </message>
    <message>
        <source>A minute later</source>
        <translation>Eine Minute später</translation>
    </message>
    <message>
        <source>+10 min</source>
        <translation>+10 min</translation>
    </message>
    <message>
        <source>Ten minutes later</source>
        <translation>Zehn Minuten später</translation>
    </message>
    <message>
        <source>This is the time</source>
        <translation>So spät ist es</translation>
    </message>
</context>
<context>
    <name>CountStepper</name>
    <message>
        <source>Less: %1</source>
        <translation>Weniger: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Mehr: %1</translation>
    </message>
</context>
<context>
    <name>DaysKey</name>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>loads, priority %1</source>
        <translation>Verbraucher, Vorrang %1</translation>
    </message>
    <message>
        <source>loads</source>
        <translation>Verbraucher</translation>
    </message>
    <message>
        <source>sun</source>
        <translation>Sonne</translation>
    </message>
    <message>
        <source>night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>stored: likely, 5 and 8 of 10</source>
        <translation>gespeichert: wahrscheinlich, 5 und 8 von 10</translation>
    </message>
    <message>
        <source>stored: likely, 8 of 10</source>
        <translation>gespeichert: wahrscheinlich, 8 von 10</translation>
    </message>
    <message>
        <source>the end: likely, 8 of 10</source>
        <translation>das Ende: wahrscheinlich, 8 von 10</translation>
    </message>
</context>
<context>
    <name>DaysPlot</name>
    <message>
        <source>Stored energy, loads and sun over the outage</source>
        <translation>Gespeicherte Energie, Verbrauch und Sonne während des Ausfalls</translation>
    </message>
</context>
<context>
    <name>DaysTable</name>
    <message>
        <source>The outage, an hour a row</source>
        <translation>Der Ausfall, eine Stunde je Zeile</translation>
    </message>
</context>
<context>
    <name>FaultPage</name>
    <message>
        <source>A fault of this program</source>
        <translation>Ein Fehler dieses Programms</translation>
    </message>
    <message>
        <source>What this scenario asks could not be worked out; the program failed at it. The scenario is not at fault, and no figure is shown for it. Your file is as it was, and what you changed is still here: it can be saved, copied and taken back.</source>
        <translation>Was dieses Szenario fragt, ließ sich nicht ausrechnen; das Programm ist daran gescheitert. Das Szenario ist nicht schuld, und keine Zahl wird dafür gezeigt. Ihre Datei ist, wie sie war, und was Sie geändert haben, ist noch da: Es lässt sich speichern, kopieren und zurücknehmen.</translation>
    </message>
    <message>
        <source>What it said: %1</source>
        <translation>Was es dazu sagte: %1</translation>
    </message>
    <message>
        <source>Back to the last text that could be worked out</source>
        <translation>Zurück zum letzten Text, der sich ausrechnen ließ</translation>
    </message>
    <message>
        <source>Change it on the File page</source>
        <translation>Auf der Seite Datei ändern</translation>
    </message>
    <message>
        <source>Copy the whole text</source>
        <translation>Den ganzen Text kopieren</translation>
    </message>
    <message>
        <source>Open the example instead</source>
        <translation>Stattdessen das Beispiel öffnen</translation>
    </message>
</context>
<context>
    <name>FieldRow</name>
    <message>
        <source>%1: %2. Change</source>
        <translation>%1: %2. Ändern</translation>
    </message>
</context>
<context>
    <name>FieldsList</name>
    <message>
        <source>Leave it open</source>
        <translation>Offen lassen</translation>
    </message>
</context>
<context>
    <name>FileActions</name>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open a scenario file</source>
        <translation>Eine Plandatei öffnen</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save the scenario file</source>
        <translation>Die Plandatei speichern</translation>
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
        <source>Use the light look</source>
        <translation>Helle Darstellung verwenden</translation>
    </message>
    <message>
        <source>Use the dark look</source>
        <translation>Dunkle Darstellung verwenden</translation>
    </message>
    <message>
        <source>Aa</source>
        <translation>Aa</translation>
    </message>
    <message>
        <source>Theme, size of the text, units, clock and language</source>
        <translation>Farben, Schriftgröße, Einheiten, Uhr und Sprache</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Begin a new plan</source>
        <translation>Einen neuen Plan beginnen</translation>
    </message>
    <message>
        <source>Open before</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Files that were open before</source>
        <translation>Dateien, die zuletzt geöffnet waren</translation>
    </message>
    <message>
        <source>Save as</source>
        <translation>Speichern unter</translation>
    </message>
    <message>
        <source>Save under another name</source>
        <translation>Unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Weitergeben</translation>
    </message>
    <message>
        <source>Share the answer as a page or a picture</source>
        <translation>Die Antwort als Seite oder Bild weitergeben</translation>
    </message>
    <message>
        <source>Look and language</source>
        <translation>Aussehen und Sprache</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Help for this page</source>
        <translation>Hilfe zu dieser Seite</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Über</translation>
    </message>
    <message>
        <source>About this program, with its licences</source>
        <translation>Über dieses Programm, mit Lizenzen</translation>
    </message>
</context>
<context>
    <name>FilePage</name>
    <message>
        <source>Compare with</source>
        <translation>Vergleichen mit</translation>
    </message>
    <message>
        <source>Scenario files (*.toml)</source>
        <translation>Plandateien (*.toml)</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Title: %1. Change</source>
        <translation>Titel: %1. Ändern</translation>
    </message>
    <message>
        <source>Copy the whole text</source>
        <translation>Den ganzen Text kopieren</translation>
    </message>
    <message>
        <source>Take up a copied text</source>
        <translation>Kopierten Text übernehmen</translation>
    </message>
    <message>
        <source>Compare with another file</source>
        <translation>Mit einer anderen Datei vergleichen</translation>
    </message>
    <message>
        <source>Versions that were saved over</source>
        <translation>Überschriebene Fassungen</translation>
    </message>
    <message>
        <source>None yet. The last ten are kept each time this file is saved.</source>
        <translation>Noch keine. Bei jedem Speichern bleiben die letzten zehn erhalten.</translation>
    </message>
    <message>
        <source>take this version up; the way back stays open</source>
        <translation>diese Fassung übernehmen; Sie können es rückgängig machen</translation>
    </message>
    <message>
        <source>From this build to %1</source>
        <translation>Von diesem Aufbau zu %1</translation>
    </message>
    <message>
        <source>What was understood of the file</source>
        <translation>Was aus der Datei verstanden wurde</translation>
    </message>
    <message>
        <source>Part of a key</source>
        <translation>Teil eines Schlüssels</translation>
    </message>
    <message>
        <source>Type part of a key</source>
        <translation>Teil eines Schlüssels</translation>
    </message>
    <message>
        <source>what the file says</source>
        <translation>was in der Datei steht</translation>
    </message>
    <message>
        <source>all it could say</source>
        <translation>alles, was darin stehen kann</translation>
    </message>
    <message>
        <source>Save under another name</source>
        <translation>Unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>Unsaved work that was kept</source>
        <translation>Nicht gespeicherte Arbeit, die aufbewahrt ist</translation>
    </message>
    <message>
        <source>Take up the unsaved work on %1, %2</source>
        <translation>Die nicht gespeicherte Arbeit an %1 wieder aufnehmen, %2</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Weglegen</translation>
    </message>
    <message>
        <source>Offer the unsaved work on %1 no longer; it stays as a version of its file</source>
        <translation>Die nicht gespeicherte Arbeit an %1 nicht mehr anbieten; sie bleibt als Fassung ihrer Datei</translation>
    </message>
</context>
<context>
    <name>FilePlaces</name>
    <message>
        <source>The folder around this one</source>
        <translation>Der Ordner darüber</translation>
    </message>
    <message>
        <source>Folder %1</source>
        <translation>Ordner %1</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Gehe zu %1</translation>
    </message>
    <message>
        <source>Nothing can be saved in this folder: it belongs to somebody else or is write-protected.</source>
        <translation>In diesem Ordner lässt sich nichts speichern: Er gehört jemand anderem oder ist schreibgeschützt.</translation>
    </message>
    <message>
        <source>There is nothing of the kind here.</source>
        <translation>Hier ist nichts dergleichen.</translation>
    </message>
</context>
<context>
    <name>FileSheet</name>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Name of the file</source>
        <translation>Name der Datei</translation>
    </message>
    <message>
        <source>Folders and files</source>
        <translation>Ordner und Dateien</translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
</context>
<context>
    <name>FindingsList</name>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Nothing found that stands in the way.</source>
        <translation>Es wurde nichts gefunden, was dagegen spricht.</translation>
    </message>
    <message>
        <source>Take care: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>How it was worked out</source>
        <translation>Rechenweg</translation>
    </message>
    <message>
        <source>What was assumed</source>
        <translation>Annahmen</translation>
    </message>
</context>
<context>
    <name>FirstRun</name>
    <message>
        <source>Breathing machine</source>
        <translation>Atemgerät</translation>
    </message>
    <message>
        <source>at night, without its heater</source>
        <translation>nachts, ohne Heizung</translation>
    </message>
    <message>
        <source>Oxygen machine</source>
        <translation>Sauerstoffgerät</translation>
    </message>
    <message>
        <source>day and night</source>
        <translation>Tag und Nacht</translation>
    </message>
    <message>
        <source>Refrigerator</source>
        <translation>Kühlschrank</translation>
    </message>
    <message>
        <source>Freezer</source>
        <translation>Gefriertruhe</translation>
    </message>
    <message>
        <source>Heating blower</source>
        <translation>Heizung</translation>
    </message>
    <message>
        <source>of a furnace that burns gas or oil</source>
        <translation>das Gebläse einer Gas- oder Ölheizung</translation>
    </message>
    <message>
        <source>Sump pump</source>
        <translation>Kellerpumpe</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>one lamp in the evening</source>
        <translation>eine Lampe am Abend</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>three hours a day</source>
        <translation>drei Stunden am Tag</translation>
    </message>
    <message>
        <source>Internet</source>
        <translation>Internet</translation>
    </message>
    <message>
        <source>Laptop</source>
        <translation>Laptop</translation>
    </message>
    <message>
        <source>eight hours a day</source>
        <translation>acht Stunden am Tag</translation>
    </message>
    <message>
        <source>Television</source>
        <translation>Fernseher</translation>
    </message>
    <message>
        <source>in the evening</source>
        <translation>am Abend</translation>
    </message>
    <message>
        <source>Fan</source>
        <translation>Ventilator</translation>
    </message>
    <message>
        <source>at night</source>
        <translation>nachts</translation>
    </message>
    <message>
        <source>Lithium iron phosphate, 12.8 V 100 Ah</source>
        <translation>Lithium-Eisenphosphat, 12,8 V 100 Ah</translation>
    </message>
    <message>
        <source>light, about 11 kg</source>
        <translation>leicht, etwa 11 kg</translation>
    </message>
    <message>
        <source>Lithium iron phosphate, 12.8 V 200 Ah</source>
        <translation>Lithium-Eisenphosphat, 12,8 V 200 Ah</translation>
    </message>
    <message>
        <source>Sealed lead (AGM), 12 V 100 Ah</source>
        <translation>Geschlossenes Blei (AGM), 12 V 100 Ah</translation>
    </message>
    <message>
        <source>does not spill, about 30 kg</source>
        <translation>läuft nicht aus, etwa 30 kg</translation>
    </message>
    <message>
        <source>Gel lead, 12 V 100 Ah</source>
        <translation>Blei-Gel, 12 V 100 Ah</translation>
    </message>
    <message>
        <source>Wet lead, 12 V 100 Ah</source>
        <translation>Offenes Blei, 12 V 100 Ah</translation>
    </message>
    <message>
        <source>caps to fill up with water</source>
        <translation>mit Kappen zum Nachfüllen von Wasser</translation>
    </message>
    <message>
        <source>100 W each</source>
        <translation>je 100 W</translation>
    </message>
    <message>
        <source>200 W each</source>
        <translation>je 200 W</translation>
    </message>
    <message>
        <source>400 W each</source>
        <translation>je 400 W</translation>
    </message>
    <message>
        <source>a panel for a roof</source>
        <translation>ein Modul fürs Dach</translation>
    </message>
    <message>
        <source>One night</source>
        <translation>Eine Nacht</translation>
    </message>
    <message>
        <source>One day</source>
        <translation>Einen Tag</translation>
    </message>
    <message>
        <source>Two days</source>
        <translation>Zwei Tage</translation>
    </message>
    <message>
        <source>Four days</source>
        <translation>Vier Tage</translation>
    </message>
    <message>
        <source>A week</source>
        <translation>Eine Woche</translation>
    </message>
    <message>
        <source>Nobody knows</source>
        <translation>Niemand weiß es</translation>
    </message>
    <message>
        <source>half of such outages end within two days</source>
        <translation>die Hälfte solcher Ausfälle endet binnen zwei Tagen</translation>
    </message>
</context>
<context>
    <name>FirstRunPage</name>
    <message>
        <source>Question %1 of %2: %3</source>
        <translation>Frage %1 von %2: %3</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Place: %1. Change</source>
        <translation>Ort: %1. Ändern</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Verlassen</translation>
    </message>
    <message>
        <source>Leave the questions; what was answered stays</source>
        <translation>Die Fragen verlassen; was beantwortet ist, bleibt</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Done: make a file of it</source>
        <translation>Fertig: eine Datei daraus machen</translation>
    </message>
    <message>
        <source>To the next question</source>
        <translation>Zur nächsten Frage</translation>
    </message>
</context>
<context>
    <name>Fold</name>
    <message>
        <source>Hide: %1</source>
        <translation>Ausblenden: %1</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Einblenden: %1</translation>
    </message>
</context>
<context>
    <name>GaugePane</name>
    <message>
        <source>The voltmeter shows</source>
        <translation>Das Voltmeter zeigt</translation>
    </message>
    <message>
        <source>touch to type the volts</source>
        <translation>tippen, um die Volt einzugeben</translation>
    </message>
    <message>
        <source>%1: %2. Change</source>
        <translation>%1: %2. Ändern</translation>
    </message>
    <message>
        <source>At rest before that for</source>
        <translation>Zuvor in Ruhe seit</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>an hour</source>
        <translation>eine Stunde</translation>
    </message>
    <message>
        <source>a night</source>
        <translation>eine Nacht</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>einen Tag</translation>
    </message>
</context>
<context>
    <name>HeardButton</name>
    <message>
        <source>not available now</source>
        <translation>gerade nicht verfügbar</translation>
    </message>
</context>
<context>
    <name>HelpSheet</name>
    <message>
        <source>Each kind of pack you have: how full it is, how old, what may be joined to what. Touch one to change it.</source>
        <translation>Jede Sorte Akku, die Sie haben: wie voll, wie alt, was womit verbunden werden darf. Tippen Sie einen an, um ihn zu ändern.</translation>
    </message>
    <message>
        <source>Under “What the voltmeter means”, type what you read: you see how full the pack may be, and how sure that is.</source>
        <translation>Unter „Was das Voltmeter bedeutet“ geben Sie ein, was Sie ablesen: Sie sehen, wie voll der Akku sein kann und wie sicher das ist.</translation>
    </message>
    <message>
        <source>Before two packs are joined, look at “Plugging one onto the rest”: it says what current would flow.</source>
        <translation>Bevor zwei Akkus verbunden werden, sehen Sie unter „Einen Akku an die übrigen stecken“ nach: Dort steht, welcher Strom fließen würde.</translation>
    </message>
    <message>
        <source>How many packs and panels reach the chance you want. Each cell is one build: packs down, panels across.</source>
        <translation>Wie viele Akkus und Module die gewünschte Chance erreichen. Jedes Feld ist ein Aufbau: Akkus nach unten, Module zur Seite.</translation>
    </message>
    <message>
        <source>The same days of sun and the same doubts are run for every build, so that one is fairly held against the other.</source>
        <translation>Für jeden Aufbau werden dieselben Sonnentage und dieselben Zweifel durchgerechnet, damit der Vergleich gerecht ist.</translation>
    </message>
    <message>
        <source>Whether a motor starts on this unit, and what stands in its way: the inverter, the battery, a fuse or the cold.</source>
        <translation>Ob ein Motor an dieser Anlage anläuft und was ihm im Weg steht: Wechselrichter, Akku, Sicherung oder Kälte.</translation>
    </message>
    <message>
        <source>Pick a tool or pump; the bars show how much of each limit it takes.</source>
        <translation>Wählen Sie ein Werkzeug oder eine Pumpe; die Balken zeigen, wie viel von jeder Grenze verbraucht wird.</translation>
    </message>
    <message>
        <source>Whether every fuse, wire, switch and connector suits what is drawn through it, from the bus outwards.</source>
        <translation>Ob jede Sicherung, jedes Kabel, jeder Schalter und Stecker zu dem passt, was hindurchfließt, von der Sammelschiene nach außen.</translation>
    </message>
    <message>
        <source>A part that fails is named with what would fit. A drawing can be printed.</source>
        <translation>Ein Teil, das nicht passt, wird genannt, und was passen würde. Die Zeichnung lässt sich drucken.</translation>
    </message>
    <message>
        <source>Until when the loads are carried: nine times in ten, most likely, and the chance to the end.</source>
        <translation>Bis wann die Lasten versorgt sind: in neun von zehn Fällen, am wahrscheinlichsten, und die Chance bis zum Ende.</translation>
    </message>
    <message>
        <source>Slide along the plot to read an hour. Change packs, panels or days below; the answer follows.</source>
        <translation>Fahren Sie über das Diagramm, um eine Stunde abzulesen. Ändern Sie Akkus, Module oder Tage; die Antwort folgt.</translation>
    </message>
    <message>
        <source>The candle burns down through the days; what the sun puts back lets it grow.</source>
        <translation>Die Kerze brennt über die Tage herunter; was die Sonne zurückgibt, lässt sie wachsen.</translation>
    </message>
    <message>
        <source>What must stay on, and when. A figure read from a plug-in meter counts more than a label, a label more than a guess.</source>
        <translation>Was anbleiben muss und wann. Eine Zahl vom Steckdosenmessgerät zählt mehr als ein Typenschild, ein Typenschild mehr als eine Schätzung.</translation>
    </message>
    <message>
        <source>The priority says who goes without first: 1 is life and health, 5 is work.</source>
        <translation>Der Rang sagt, wer zuerst leer ausgeht: 1 ist Leben und Gesundheit, 5 ist Arbeit.</translation>
    </message>
    <message>
        <source>What the panels give back in that place and month, from dull to bright days.</source>
        <translation>Was die Module an diesem Ort in diesem Monat zurückgeben, an trüben bis hellen Tagen.</translation>
    </message>
    <message>
        <source>Turn the panel with a finger, or with the buttons, to see what another tilt gives.</source>
        <translation>Drehen Sie das Modul mit dem Finger oder den Knöpfen, um zu sehen, was eine andere Neigung bringt.</translation>
    </message>
    <message>
        <source>While the outage runs: until when from now, what to switch off next, what to read next.</source>
        <translation>Während des Ausfalls: bis wann es von jetzt an reicht, was als Nächstes auszuschalten und was abzulesen ist.</translation>
    </message>
    <message>
        <source>What you write down is kept in your file and never changed.</source>
        <translation>Was Sie notieren, bleibt in Ihrer Datei und wird nie geändert.</translation>
    </message>
    <message>
        <source>Whether a pack that stood for months is ready, and when it must be topped up.</source>
        <translation>Ob ein Akku, der monatelang stand, bereit ist und wann er nachgeladen werden muss.</translation>
    </message>
    <message>
        <source>A card for the lid, a report, the wiring: on paper, to be read without the program.</source>
        <translation>Eine Karte für den Deckel, ein Bericht, die Verdrahtung: auf Papier, ohne das Programm zu lesen.</translation>
    </message>
    <message>
        <source>Your file is a plain text. Every key it has or could have can be changed here, with what holds where it is silent.</source>
        <translation>Ihre Datei ist einfacher Text. Hier lässt sich jeder Schlüssel ändern, den sie hat oder haben könnte, und man sieht, was gilt, wo sie schweigt.</translation>
    </message>
    <message>
        <source>The last ten versions you saved over can be had again.</source>
        <translation>Die letzten zehn überschriebenen Fassungen können Sie zurückholen.</translation>
    </message>
    <message>
        <source>1 to 9, 0</source>
        <translation>1 bis 9, 0</translation>
    </message>
    <message>
        <source>a page, as numbered beside it</source>
        <translation>eine Seite, wie daneben nummeriert</translation>
    </message>
    <message>
        <source>Ctrl PageUp, Ctrl PageDown</source>
        <translation>Strg Bild auf, Strg Bild ab</translation>
    </message>
    <message>
        <source>the page before, the page after</source>
        <translation>die Seite davor, die Seite danach</translation>
    </message>
    <message>
        <source>PageUp, PageDown, Home, End</source>
        <translation>Bild auf, Bild ab, Pos1, Ende</translation>
    </message>
    <message>
        <source>move what is shown</source>
        <translation>bewegen, was gezeigt wird</translation>
    </message>
    <message>
        <source>Tab, arrows, Space, Return</source>
        <translation>Tabulator, Pfeile, Leertaste, Eingabe</translation>
    </message>
    <message>
        <source>go through and press</source>
        <translation>durchgehen und drücken</translation>
    </message>
    <message>
        <source>Ctrl N, O, S, Shift S</source>
        <translation>Strg N, O, S, Umschalt S</translation>
    </message>
    <message>
        <source>new, open, save, save as</source>
        <translation>neu, öffnen, speichern, speichern unter</translation>
    </message>
    <message>
        <source>Ctrl Z, Ctrl Y</source>
        <translation>Strg Z, Strg Y</translation>
    </message>
    <message>
        <source>take back, make again</source>
        <translation>zurücknehmen, wiederholen</translation>
    </message>
    <message>
        <source>Ctrl Q</source>
        <translation>Strg Q</translation>
    </message>
    <message>
        <source>close; unsaved work is kept</source>
        <translation>schließen; Ungespeichertes bleibt erhalten</translation>
    </message>
    <message>
        <source>F1, Escape</source>
        <translation>F1, Esc</translation>
    </message>
    <message>
        <source>this help, close what lies above</source>
        <translation>diese Hilfe, schließen, was darüber liegt</translation>
    </message>
    <message>
        <source>Help: %1</source>
        <translation>Hilfe: %1</translation>
    </message>
    <message>
        <source>Every page: the sentence on top is the answer to the file as it stands. Stops and cautions say what would mend them. Figures are arithmetic, not approval.</source>
        <translation>Jede Seite: Der Satz oben ist die Antwort auf die Datei, wie sie jetzt ist. Bei jedem Halt und jeder Vorsicht steht, was Abhilfe schafft. Die Zahlen sind gerechnet, nicht genehmigt.</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>HoursField</name>
    <message>
        <source>%1 half an hour earlier</source>
        <translation>%1 eine halbe Stunde früher</translation>
    </message>
    <message>
        <source>%1 half an hour later</source>
        <translation>%1 eine halbe Stunde später</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>Take %1 out</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>+ morning</source>
        <translation>+ Morgen</translation>
    </message>
    <message>
        <source>+ evening</source>
        <translation>+ Abend</translation>
    </message>
    <message>
        <source>+ night</source>
        <translation>+ Nacht</translation>
    </message>
</context>
<context>
    <name>LoadsPage</name>
    <message>
        <source>Add a load</source>
        <translation>Verbraucher hinzufügen</translation>
    </message>
    <message>
        <source>Nothing is switched on yet.</source>
        <translation>Noch ist nichts eingeschaltet.</translation>
    </message>
    <message>
        <source>◀  All loads</source>
        <translation>◀  Alle Verbraucher</translation>
    </message>
    <message>
        <source>Back to all loads</source>
        <translation>Zurück zu allen Verbrauchern</translation>
    </message>
    <message>
        <source>Take this load out</source>
        <translation>Diesen Verbraucher entfernen</translation>
    </message>
</context>
<context>
    <name>LogList</name>
    <message>
        <source>Written down so far</source>
        <translation>Bisher aufgeschrieben</translation>
    </message>
    <message>
        <source>Nothing is written down yet.</source>
        <translation>Noch ist nichts aufgeschrieben.</translation>
    </message>
    <message>
        <source>Strike</source>
        <translation>Streichen</translation>
    </message>
    <message>
        <source>Strike: %1</source>
        <translation>Streichen: %1</translation>
    </message>
</context>
<context>
    <name>LookSheet</name>
    <message>
        <source>How it is shown</source>
        <translation>Darstellung</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>dark, for the night</source>
        <translation>dunkel, für die Nacht</translation>
    </message>
    <message>
        <source>light, for daylight</source>
        <translation>hell, für den Tag</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>wie das System</translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>lists glide on</source>
        <translation>Listen gleiten nach</translation>
    </message>
    <message>
        <source>nothing moves by itself</source>
        <translation>nichts bewegt sich von selbst</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>metrisch</translation>
    </message>
    <message>
        <source>with °F, lb and ft beside</source>
        <translation>dazu °F, lb und ft</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>24 hours</source>
        <translation>24 Stunden</translation>
    </message>
    <message>
        <source>12 hours, AM and PM</source>
        <translation>12 Stunden, AM und PM</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>strong contrast</source>
        <translation>starker Kontrast</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Open a scenario</source>
        <translation>Plan öffnen</translation>
    </message>
    <message>
        <source>Scenario files (*.toml)</source>
        <translation>Plandateien (*.toml)</translation>
    </message>
    <message>
        <source>Save the scenario</source>
        <translation>Plan speichern</translation>
    </message>
    <message>
        <source>No file is open.</source>
        <translation>Keine Datei ist geöffnet.</translation>
    </message>
    <message>
        <source>Let it go to open it</source>
        <translation>Loslassen, um sie zu öffnen</translation>
    </message>
</context>
<context>
    <name>MendPage</name>
    <message>
        <source>One thing in this file cannot be read. Your file is as it was.</source>
        <translation>Eine Stelle dieser Datei ist nicht zu lesen. Ihre Datei ist, wie sie war.</translation>
    </message>
    <message>
        <source>%1 things in this file cannot be read. Your file is as it was.</source>
        <translation>%1 Stellen dieser Datei sind nicht zu lesen. Ihre Datei ist, wie sie war.</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>To the next thing that cannot be read</source>
        <translation>Zur nächsten Stelle, die nicht zu lesen ist</translation>
    </message>
    <message>
        <source>the whole text</source>
        <translation>der ganze Text</translation>
    </message>
    <message>
        <source>Lines of the file</source>
        <translation>Zeilen der Datei</translation>
    </message>
</context>
<context>
    <name>MomentBar</name>
    <message>
        <source>An hour earlier</source>
        <translation>Eine Stunde früher</translation>
    </message>
    <message>
        <source>An hour later</source>
        <translation>Eine Stunde später</translation>
    </message>
    <message>
        <source>Plot</source>
        <translation>Kurve</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Show the plot</source>
        <translation>Die Kurve zeigen</translation>
    </message>
    <message>
        <source>Show as a table</source>
        <translation>Als Tabelle zeigen</translation>
    </message>
    <message>
        <source>%1, %2. How it was worked out</source>
        <translation>%1, %2. Rechenweg</translation>
    </message>
    <message>
        <source>More of the plot</source>
        <translation>Mehr von der Kurve</translation>
    </message>
    <message>
        <source>Nearer to this hour</source>
        <translation>Näher an diese Stunde</translation>
    </message>
</context>
<context>
    <name>MomentField</name>
    <message>
        <source>%1 earlier</source>
        <translation>%1 früher</translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation>%1 später</translation>
    </message>
    <message>
        <source>month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>Stunde</translation>
    </message>
</context>
<context>
    <name>NewSheet</name>
    <message>
        <source>Open before</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>From what I have</source>
        <translation>Mit dem, was ich habe</translation>
    </message>
    <message>
        <source>Begin from what I have: five short questions</source>
        <translation>Mit dem beginnen, was ich habe: fünf kurze Fragen</translation>
    </message>
    <message>
        <source>Open before, each with the answer it had</source>
        <translation>Zuletzt geöffnet, jeweils mit ihrer Antwort</translation>
    </message>
    <message>
        <source>No file was open before.</source>
        <translation>Bisher war keine Datei geöffnet.</translation>
    </message>
    <message>
        <source>It is no longer there.</source>
        <translation>Sie ist nicht mehr da.</translation>
    </message>
    <message>
        <source>Take %1 from this list; the file stays</source>
        <translation>%1 aus dieser Liste nehmen; die Datei bleibt</translation>
    </message>
    <message>
        <source>Worked examples, to change into your own</source>
        <translation>Fertige Beispiele, aus denen Ihr eigener Plan wird</translation>
    </message>
</context>
<context>
    <name>NoteButtons</name>
    <message>
        <source>Volts</source>
        <translation>Volt</translation>
    </message>
    <message>
        <source>Write down the volts or the display of a pack</source>
        <translation>Die Spannung oder die Anzeige eines Akkus aufschreiben</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>Write down a plug-in meter</source>
        <translation>Einen Steckdosenzähler aufschreiben</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sonne</translation>
    </message>
    <message>
        <source>Write down what the controller counted today</source>
        <translation>Aufschreiben, was der Laderegler heute gezählt hat</translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>Write down a thermometer</source>
        <translation>Ein Thermometer aufschreiben</translation>
    </message>
    <message>
        <source>Switched</source>
        <translation>Geschaltet</translation>
    </message>
    <message>
        <source>Write down what was switched on or off</source>
        <translation>Aufschreiben, was ein- oder ausgeschaltet wurde</translation>
    </message>
    <message>
        <source>Happened</source>
        <translation>Ereignis</translation>
    </message>
    <message>
        <source>Write down what happened</source>
        <translation>Aufschreiben, was geschehen ist</translation>
    </message>
</context>
<context>
    <name>NoteEnd</name>
    <message>
        <source>Write it down</source>
        <translation>Aufschreiben</translation>
    </message>
</context>
<context>
    <name>NotePad</name>
    <message>
        <source>in how long</source>
        <translation>in welcher Zeit</translation>
    </message>
    <message>
        <source>what is drawn</source>
        <translation>was entnommen wird</translation>
    </message>
    <message>
        <source>the display shows</source>
        <translation>die Anzeige zeigt</translation>
    </message>
    <message>
        <source>the voltmeter shows</source>
        <translation>das Voltmeter zeigt</translation>
    </message>
    <message>
        <source>the meter counted</source>
        <translation>der Zähler zählte</translation>
    </message>
    <message>
        <source>the controller counted today</source>
        <translation>der Laderegler zählte heute</translation>
    </message>
    <message>
        <source>the thermometer shows</source>
        <translation>das Thermometer zeigt</translation>
    </message>
    <message>
        <source>below nought</source>
        <translation>unter null</translation>
    </message>
    <message>
        <source>Take the last sign away</source>
        <translation>Das letzte Zeichen wegnehmen</translation>
    </message>
    <message>
        <source>decimal mark</source>
        <translation>Dezimalzeichen</translation>
    </message>
</context>
<context>
    <name>NoteSheet</name>
    <message>
        <source>Volts or display</source>
        <translation>Volt oder Anzeige</translation>
    </message>
    <message>
        <source>Plug-in meter</source>
        <translation>Steckdosenzähler</translation>
    </message>
    <message>
        <source>Sun today</source>
        <translation>Sonne heute</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Thermometer</translation>
    </message>
    <message>
        <source>Switched on or off</source>
        <translation>Ein- oder ausgeschaltet</translation>
    </message>
    <message>
        <source>It happened</source>
        <translation>Es ist geschehen</translation>
    </message>
    <message>
        <source>%1 of %2 packs</source>
        <translation>%1 von %2 Akkus</translation>
    </message>
    <message>
        <source>One pack fewer</source>
        <translation>Ein Akku weniger</translation>
    </message>
    <message>
        <source>One pack more</source>
        <translation>Ein Akku mehr</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>−6 h</source>
        <translation>−6 h</translation>
    </message>
    <message>
        <source>Expected six hours earlier</source>
        <translation>Sechs Stunden früher erwartet</translation>
    </message>
    <message>
        <source>−1 h</source>
        <translation>−1 h</translation>
    </message>
    <message>
        <source>Expected an hour earlier</source>
        <translation>Eine Stunde früher erwartet</translation>
    </message>
    <message>
        <source>+1 h</source>
        <translation>+1 h</translation>
    </message>
    <message>
        <source>Expected an hour later</source>
        <translation>Eine Stunde später erwartet</translation>
    </message>
    <message>
        <source>+6 h</source>
        <translation>+6 h</translation>
    </message>
    <message>
        <source>Expected six hours later</source>
        <translation>Sechs Stunden später erwartet</translation>
    </message>
    <message>
        <source>An hour earlier</source>
        <translation>Eine Stunde früher</translation>
    </message>
    <message>
        <source>−10 min</source>
        <translation>−10 min</translation>
    </message>
    <message>
        <source>Ten minutes earlier</source>
        <translation>Zehn Minuten früher</translation>
    </message>
    <message>
        <source>+10 min</source>
        <translation>+10 min</translation>
    </message>
    <message>
        <source>Ten minutes later</source>
        <translation>Zehn Minuten später</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>Back to now</source>
        <translation>Zurück auf jetzt</translation>
    </message>
</context>
<context>
    <name>NothingOpenPage</name>
    <message>
        <source>Nothing is open, so there is nothing to reckon with yet.</source>
        <translation>Es ist nichts geöffnet, also gibt es noch nichts zu rechnen.</translation>
    </message>
    <message>
        <source>Begin from what I have</source>
        <translation>Mit dem beginnen, was ich habe</translation>
    </message>
    <message>
        <source>Open a file</source>
        <translation>Eine Datei öffnen</translation>
    </message>
    <message>
        <source>Begin with a worked example</source>
        <translation>Mit einem fertigen Beispiel beginnen</translation>
    </message>
</context>
<context>
    <name>NoticeStrip</name>
    <message>
        <source>Put this notice away</source>
        <translation>Diesen Hinweis schließen</translation>
    </message>
</context>
<context>
    <name>NowPage</name>
    <message>
        <source>Written down. %1</source>
        <translation>Aufgeschrieben. %1</translation>
    </message>
    <message>
        <source>Struck. It stays readable.</source>
        <translation>Gestrichen. Es bleibt lesbar.</translation>
    </message>
    <message>
        <source>What stands behind it</source>
        <translation>Was dahintersteht</translation>
    </message>
</context>
<context>
    <name>NowSentences</name>
    <message>
        <source>Working it out …</source>
        <translation>Wird ausgerechnet …</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>reads as %1</source>
        <translation>verstanden als %1</translation>
    </message>
    <message>
        <source>for example %1</source>
        <translation>zum Beispiel %1</translation>
    </message>
    <message>
        <source>Take the last sign away</source>
        <translation>Das letzte Zeichen löschen</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>decimal mark</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>divided by</source>
        <translation>geteilt durch</translation>
    </message>
</context>
<context>
    <name>PacksPage</name>
    <message>
        <source>Add another kind of pack</source>
        <translation>Weitere Akkuart hinzufügen</translation>
    </message>
    <message>
        <source>Plugging one onto the rest</source>
        <translation>Einen Akku an die übrigen stecken</translation>
    </message>
    <message>
        <source>◀  All packs</source>
        <translation>◀  Alle Akkus</translation>
    </message>
    <message>
        <source>Back to all packs</source>
        <translation>Zurück zu allen Akkus</translation>
    </message>
    <message>
        <source>Take this kind out</source>
        <translation>Diese Art entfernen</translation>
    </message>
    <message>
        <source>What the voltmeter means</source>
        <translation>Was das Voltmeter bedeutet</translation>
    </message>
</context>
<context>
    <name>PageBar</name>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>%1 ▴</source>
        <translation>%1 ▴</translation>
    </message>
    <message>
        <source>Pages; this is %1</source>
        <translation>Seiten; dies ist %1</translation>
    </message>
    <message>
        <source>All pages; this is %1</source>
        <translation>Alle Seiten; dies ist %1</translation>
    </message>
</context>
<context>
    <name>PageButton</name>
    <message>
        <source>Key %1</source>
        <translation>Taste %1</translation>
    </message>
</context>
<context>
    <name>PageList</name>
    <message>
        <source>Build</source>
        <translation>Bauen</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planen</translation>
    </message>
    <message>
        <source>Live</source>
        <translation>Im Ausfall</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>Paper and file</source>
        <translation>Papier und Datei</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Akkus</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Starting</source>
        <translation>Anlauf</translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Lasten</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sonne</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
</context>
<context>
    <name>PageRail</name>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
</context>
<context>
    <name>PagesSheet</name>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
</context>
<context>
    <name>PinRow</name>
    <message>
        <source>What was found then</source>
        <translation>Was zu dieser Stunde auffällt</translation>
    </message>
</context>
<context>
    <name>PlaceSheet</name>
    <message>
        <source>Pick the nearest place</source>
        <translation>Wählen Sie den nächstgelegenen Ort</translation>
    </message>
    <message>
        <source>Part of its name</source>
        <translation>Teil des Namens</translation>
    </message>
    <message>
        <source>Type part of a name</source>
        <translation>Einen Teil des Namens eingeben</translation>
    </message>
    <message>
        <source>A place of your own, in figures</source>
        <translation>Eigener Ort, in Zahlen</translation>
    </message>
    <message>
        <source>No built-in place is called so. Give your own in figures.</source>
        <translation>Kein hinterlegter Ort heißt so. Geben Sie Ihren eigenen in Zahlen an.</translation>
    </message>
</context>
<context>
    <name>PrintPage</name>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Save the plot</source>
        <translation>Diagramm speichern</translation>
    </message>
    <message>
        <source>Numbers (*.csv)</source>
        <translation>Zahlen (*.csv)</translation>
    </message>
    <message>
        <source>Drawing (*.svg)</source>
        <translation>Zeichnung (*.svg)</translation>
    </message>
    <message>
        <source>To take along on paper</source>
        <translation>Zum Mitnehmen auf Papier</translation>
    </message>
    <message>
        <source>Card for the lid</source>
        <translation>Karte für den Deckel</translation>
    </message>
    <message>
        <source>one page, to read at night</source>
        <translation>eine Seite, auch nachts lesbar</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>every answer with its working</source>
        <translation>jede Antwort mit Rechenweg</translation>
    </message>
    <message>
        <source>Wiring sheet</source>
        <translation>Verdrahtungsblatt</translation>
    </message>
    <message>
        <source>the build and its fuses</source>
        <translation>der Aufbau und seine Sicherungen</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>8½ × 11 in</source>
        <translation>8½ × 11 Zoll</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>210 × 297 mm</source>
        <translation>210 × 297 mm</translation>
    </message>
    <message>
        <source>Paper %1</source>
        <translation>Papier %1</translation>
    </message>
    <message>
        <source>Being made …</source>
        <translation>Wird erstellt …</translation>
    </message>
    <message>
        <source>Save the card as PDF</source>
        <translation>Karte als PDF speichern</translation>
    </message>
    <message>
        <source>Save the report as PDF</source>
        <translation>Bericht als PDF speichern</translation>
    </message>
    <message>
        <source>Save the wiring sheet as PDF</source>
        <translation>Verdrahtungsblatt als PDF speichern</translation>
    </message>
    <message>
        <source>Plots, as drawings or as numbers</source>
        <translation>Diagramme, als Zeichnung oder als Zahlen</translation>
    </message>
    <message>
        <source>Save as a drawing: %1</source>
        <translation>Als Zeichnung speichern: %1</translation>
    </message>
    <message>
        <source>Save as numbers: %1</source>
        <translation>Als Zahlen speichern: %1</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Vorige Seite</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <source>Show the whole width</source>
        <translation>Ganze Breite zeigen</translation>
    </message>
    <message>
        <source>Show it larger</source>
        <translation>Größer zeigen</translation>
    </message>
    <message>
        <source>Print on a printer</source>
        <translation>Auf einem Drucker drucken</translation>
    </message>
</context>
<context>
    <name>PrinterSheet</name>
    <message>
        <source>Print on</source>
        <translation>Drucken auf</translation>
    </message>
    <message>
        <source>This computer knows no printer. Save the PDF, and print it where there is one.</source>
        <translation>Dieser Rechner kennt keinen Drucker. Speichern Sie das PDF und drucken Sie es, wo einer ist.</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>This cannot be answered yet.</source>
        <translation>Das lässt sich noch nicht beantworten.</translation>
    </message>
    <message>
        <source>What stands in the way is listed below.</source>
        <translation>Was dem entgegensteht, steht unten.</translation>
    </message>
    <message>
        <source>%1 while on (%2 to %3)</source>
        <translation>%1 im Betrieb (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1, on %2 of the time</source>
        <translation>%1, eingeschaltet %2 der Zeit</translation>
    </message>
    <message>
        <source>night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>%1 stored</source>
        <translation>%1 gespeichert</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>loads go without</source>
        <translation>Verbraucher ohne Strom</translation>
    </message>
    <message>
        <source>loads %1</source>
        <translation>Verbrauch %1</translation>
    </message>
    <message>
        <source>sun %1</source>
        <translation>Sonne %1</translation>
    </message>
    <message>
        <source>out</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>Burns %1 of the %2 that the outage lasts.</source>
        <translation>Brennt %1 von den %2 des Ausfalls.</translation>
    </message>
    <message>
        <source>This file cannot be used yet.</source>
        <translation>Diese Datei lässt sich noch nicht verwenden.</translation>
    </message>
    <message>
        <source>How its use is known</source>
        <translation>Woher der Verbrauch bekannt ist</translation>
    </message>
    <message>
        <source>plug-in meter</source>
        <translation>Zwischenstecker-Messgerät</translation>
    </message>
    <message>
        <source>energy over some time</source>
        <translation>Energie über eine Zeit</translation>
    </message>
    <message>
        <source>yearly label</source>
        <translation>Energieetikett</translation>
    </message>
    <message>
        <source>kWh a year</source>
        <translation>kWh im Jahr</translation>
    </message>
    <message>
        <source>nameplate</source>
        <translation>Typenschild</translation>
    </message>
    <message>
        <source>volts and amperes</source>
        <translation>Volt und Ampere</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>watts while on</source>
        <translation>Watt im Betrieb</translation>
    </message>
    <message>
        <source>While switched on it runs</source>
        <translation>Eingeschaltet läuft er</translation>
    </message>
    <message>
        <source>all the time</source>
        <translation>durchgehend</translation>
    </message>
    <message>
        <source>on and off</source>
        <translation>im Wechsel</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>this program</source>
        <translation>dieses Programm</translation>
    </message>
    <message>
        <source>as %1</source>
        <translation>wie %1</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>%1 on average</source>
        <translation>%1 im Mittel</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of every %2</source>
        <translation>%1 von je %2</translation>
    </message>
    <message>
        <source>tested: %1</source>
        <translation>gemessen: %1</translation>
    </message>
    <message>
        <source>%1 full</source>
        <translation>%1 geladen</translation>
    </message>
    <message>
        <source>lead %1</source>
        <translation>Leitung %1</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 am Tag</translation>
    </message>
    <message>
        <source>The chance lies between %1 and %2 in 100, as %3 members tell it.</source>
        <translation>Die Chance liegt zwischen %1 und %2 von 100, nach %3 durchgerechneten Fällen.</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>je %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>fuse %1</source>
        <translation>Sicherung %1</translation>
    </message>
    <message>
        <source>switch %1</source>
        <translation>Schalter %1</translation>
    </message>
    <message>
        <source>wire %1</source>
        <translation>Leitung %1</translation>
    </message>
    <message>
        <source>connector %1</source>
        <translation>Steckverbinder %1</translation>
    </message>
    <message>
        <source>outlet %1</source>
        <translation>Steckdose %1</translation>
    </message>
    <message>
        <source>panels %1</source>
        <translation>Module %1</translation>
    </message>
    <message>
        <source>pack</source>
        <translation>Akku</translation>
    </message>
    <message>
        <source>bus</source>
        <translation>Sammelschiene</translation>
    </message>
    <message>
        <source>inverter</source>
        <translation>Wechselrichter</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Verbraucher</translation>
    </message>
    <message>
        <source>fuse</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>switch</source>
        <translation>Schalter</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>Steckverbinder</translation>
    </message>
    <message>
        <source>outlet</source>
        <translation>Steckdose</translation>
    </message>
    <message>
        <source>%1 is stored as this hour begins.</source>
        <translation>%1 sind zu Beginn dieser Stunde gespeichert.</translation>
    </message>
    <message>
        <source>+ %1 comes from the sun, which offers %2.</source>
        <translation>+ %1 kommen von der Sonne, die %2 bietet.</translation>
    </message>
    <message>
        <source>+ %1 comes from other chargers.</source>
        <translation>+ %1 kommen von anderen Ladegeräten.</translation>
    </message>
    <message>
        <source>− %1 goes to the loads.</source>
        <translation>− %1 gehen an die Verbraucher.</translation>
    </message>
    <message>
        <source>− %1 is lost in inverter, wiring and packs.</source>
        <translation>− %1 gehen in Wechselrichter, Leitungen und Akkus verloren.</translation>
    </message>
    <message>
        <source>= %1 is stored at its end: likely; %2 to %3 four times in five.</source>
        <translation>= %1 sind an ihrem Ende gespeichert: erwartet; %2 bis %3 in vier von fünf Fällen.</translation>
    </message>
    <message>
        <source>The loads go without %1.</source>
        <translation>Den Verbrauchern fehlen %1.</translation>
    </message>
    <message>
        <source>the outage is over</source>
        <translation>der Ausfall ist vorüber</translation>
    </message>
    <message>
        <source>%1 is stored at the end.</source>
        <translation>%1 sind am Ende gespeichert.</translation>
    </message>
    <message>
        <source>Each loss with its formula and source stands under “How it was worked out”.</source>
        <translation>Jeder Verlust steht mit Formel und Quelle unter „Rechenweg“.</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>%1 % (%2 to %3)</source>
        <translation>%1 % (%2 bis %3)</translation>
    </message>
    <message>
        <source>Packs: %1, panels: %2</source>
        <translation>Akkus: %1, Module: %2</translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation>%1 insgesamt</translation>
    </message>
    <message>
        <source>chance of lasting %1</source>
        <translation>reicht mit einer Wahrscheinlichkeit von %1</translation>
    </message>
    <message>
        <source>This is the build of the answer.</source>
        <translation>Dies ist der Aufbau der Antwort.</translation>
    </message>
    <message>
        <source>This is what the file has.</source>
        <translation>Dies ist, was die Datei enthält.</translation>
    </message>
    <message>
        <source>%1: %2 (worked out from the rest of the file)</source>
        <translation>%1: %2 (aus dem Rest der Datei berechnet)</translation>
    </message>
    <message>
        <source>a scenario without a file</source>
        <translation>einem Szenario ohne Datei</translation>
    </message>
    <message>
        <source>another program changed it</source>
        <translation>ein anderes Programm hat sie geändert</translation>
    </message>
    <message>
        <source>its folder is not there</source>
        <translation>ihren Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>nothing can be written in its folder</source>
        <translation>in ihrem Ordner kann nichts geschrieben werden</translation>
    </message>
    <message>
        <source>it is write-protected</source>
        <translation>sie ist schreibgeschützt</translation>
    </message>
    <message>
        <source>it is no plain file</source>
        <translation>es ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>another program is writing it</source>
        <translation>ein anderes Programm schreibt sie gerade</translation>
    </message>
    <message>
        <source>the disk or the quota is full</source>
        <translation>der Datenträger oder das Kontingent ist voll</translation>
    </message>
    <message>
        <source>it is larger than files may be there</source>
        <translation>sie ist größer, als Dateien dort sein dürfen</translation>
    </message>
    <message>
        <source>there is not enough memory</source>
        <translation>der Arbeitsspeicher reicht nicht</translation>
    </message>
    <message>
        <source>the disk did not say that it stays if the power fails</source>
        <translation>der Datenträger hat nicht bestätigt, dass sie bei einem Stromausfall bleibt</translation>
    </message>
    <message>
        <source>the disk refuses it</source>
        <translation>der Datenträger verweigert es</translation>
    </message>
    <message>
        <source>A fault of this program</source>
        <translation>Ein Fehler dieses Programms</translation>
    </message>
    <message>
        <source>A fault of this program (%1)</source>
        <translation>Ein Fehler dieses Programms (%1)</translation>
    </message>
    <message>
        <source>Burns %1 of the %2 that are looked at.</source>
        <translation>Brennt %1 von den %2, die betrachtet werden.</translation>
    </message>
    <message>
        <source>How long it lasts</source>
        <translation>Wie lange er dauert</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>eine Dauer</translation>
    </message>
    <message>
        <source>days or hours</source>
        <translation>Tage oder Stunden</translation>
    </message>
    <message>
        <source>nobody knows</source>
        <translation>niemand weiß es</translation>
    </message>
    <message>
        <source>half of such outages are over by then</source>
        <translation>bis dahin ist die Hälfte solcher Ausfälle vorbei</translation>
    </message>
    <message>
        <source>still out %1 times in 100</source>
        <translation>noch ohne Strom %1-mal von 100</translation>
    </message>
    <message>
        <source>A pack left</source>
        <translation>Ein Akku ging weg</translation>
    </message>
    <message>
        <source>A pack came back</source>
        <translation>Ein Akku kam zurück</translation>
    </message>
    <message>
        <source>Another pack joined</source>
        <translation>Ein weiterer Akku kam dazu</translation>
    </message>
    <message>
        <source>A fuse opened</source>
        <translation>Eine Sicherung löste aus</translation>
    </message>
    <message>
        <source>Supply expected</source>
        <translation>Strom wird erwartet</translation>
    </message>
    <message>
        <source>The supply is back</source>
        <translation>Der Strom ist wieder da</translation>
    </message>
    <message>
        <source>is off</source>
        <translation>ist aus</translation>
    </message>
    <message>
        <source>is on</source>
        <translation>ist an</translation>
    </message>
    <message>
        <source>refrigerator</source>
        <translation>Kühlschrank</translation>
    </message>
    <message>
        <source>freezer</source>
        <translation>Gefrierschrank</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Zimmer</translation>
    </message>
    <message>
        <source>all, joined</source>
        <translation>alle, verbunden</translation>
    </message>
    <message>
        <source>no more known</source>
        <translation>mehr ist nicht bekannt</translation>
    </message>
    <message>
        <source>rested an hour</source>
        <translation>ruhte eine Stunde</translation>
    </message>
    <message>
        <source>rested a night</source>
        <translation>ruhte eine Nacht</translation>
    </message>
    <message>
        <source>while in use…</source>
        <translation>unter Last …</translation>
    </message>
    <message>
        <source>in 1 h</source>
        <translation>in 1 h</translation>
    </message>
    <message>
        <source>in 6 h</source>
        <translation>in 6 h</translation>
    </message>
    <message>
        <source>in 12 h</source>
        <translation>in 12 h</translation>
    </message>
    <message>
        <source>in 24 h</source>
        <translation>in 24 h</translation>
    </message>
    <message>
        <source>in…</source>
        <translation>in …</translation>
    </message>
    <message>
        <source>clear sky</source>
        <translation>klarer Himmel</translation>
    </message>
    <message>
        <source>sun through cloud</source>
        <translation>Sonne durch Wolken</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>grau</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>all days looked at</source>
        <translation>alle betrachteten Tage</translation>
    </message>
    <message>
        <source>the end</source>
        <translation>zum Ende</translation>
    </message>
    <message>
        <source>longer than the outage</source>
        <translation>länger als der Ausfall</translation>
    </message>
    <message>
        <source>chance to the end</source>
        <translation>Chance bis zum Ende</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 von 100</translation>
    </message>
    <message>
        <source>on likely figures until</source>
        <translation>mit wahrscheinlichen Werten bis</translation>
    </message>
    <message>
        <source>nine times in ten until</source>
        <translation>neunmal von zehn bis</translation>
    </message>
    <message>
        <source>most likely until</source>
        <translation>am ehesten bis</translation>
    </message>
    <message>
        <source>under 1 in 100</source>
        <translation>unter 1 von 100</translation>
    </message>
    <message>
        <source>over 99 in 100</source>
        <translation>über 99 von 100</translation>
    </message>
</context>
<context>
    <name>ReadOut</name>
    <message>
        <source>%1, %2. How it was worked out</source>
        <translation>%1, %2. Wie es gerechnet wurde</translation>
    </message>
</context>
<context>
    <name>ReplaceSheet</name>
    <message>
        <source>There is already a file of this name</source>
        <translation>Es gibt schon eine Datei dieses Namens</translation>
    </message>
    <message>
        <source>%1 is there already; replace it? Its last ten versions stay, to be found on the File page.</source>
        <translation>%1 ist schon da; ersetzen? Ihre letzten zehn Fassungen bleiben, zu finden auf der Seite Datei.</translation>
    </message>
    <message>
        <source>%1 is there already; replace it? What it holds is then gone.</source>
        <translation>%1 ist schon da; ersetzen? Ihr Inhalt ist dann fort.</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Replace %1</source>
        <translation>%1 ersetzen</translation>
    </message>
    <message>
        <source>Choose another name</source>
        <translation>Anderen Namen wählen</translation>
    </message>
</context>
<context>
    <name>SavingDialog</name>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
</context>
<context>
    <name>ShareSheet</name>
    <message>
        <source>Share the answer</source>
        <translation>Die Antwort weitergeben</translation>
    </message>
    <message>
        <source>Save one page</source>
        <translation>Eine Seite speichern</translation>
    </message>
    <message>
        <source>Save one picture</source>
        <translation>Ein Bild speichern</translation>
    </message>
    <message>
        <source>Page for a browser (*.html)</source>
        <translation>Seite für einen Browser (*.html)</translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <translation>Bild (*.png)</translation>
    </message>
    <message>
        <source>As one page for a browser</source>
        <translation>Als eine Seite für einen Browser</translation>
    </message>
    <message>
        <source>Save the whole answer as one page for a browser, HTML</source>
        <translation>Die ganze Antwort als eine Seite für einen Browser speichern, HTML</translation>
    </message>
    <message>
        <source>As one picture of this page</source>
        <translation>Als ein Bild dieser Seite</translation>
    </message>
    <message>
        <source>Save what this page shows as one picture, PNG</source>
        <translation>Was diese Seite zeigt als ein Bild speichern, PNG</translation>
    </message>
    <message>
        <source>The outage is being worked out.</source>
        <translation>Der Ausfall wird durchgerechnet.</translation>
    </message>
    <message>
        <source>The file itself is shared as it is: it is a plain text.</source>
        <translation>Die Datei selbst geben Sie weiter, wie sie ist: Sie ist einfacher Text.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>Check another tool</source>
        <translation>Ein anderes Gerät prüfen</translation>
    </message>
    <message>
        <source>Share of each limit that the start uses; the line is the limit</source>
        <translation>Anteil jeder Grenze, den der Anlauf braucht; der Strich ist die Grenze</translation>
    </message>
    <message>
        <source>Share of each limit that the start of %1 uses</source>
        <translation>Anteil jeder Grenze, den der Anlauf von %1 braucht</translation>
    </message>
    <message>
        <source>The inverter</source>
        <translation>Der Wechselrichter</translation>
    </message>
</context>
<context>
    <name>StepsPane</name>
    <message>
        <source>Begin, sky and warmth</source>
        <translation>Beginn, Himmel, Temperatur</translation>
    </message>
    <message>
        <source>When the outage begins, its first sky, how warm the packs are</source>
        <translation>Wann der Ausfall beginnt, der Himmel am ersten Tag, wie warm die Akkus sind</translation>
    </message>
    <message>
        <source>The outage</source>
        <translation>Der Ausfall</translation>
    </message>
</context>
<context>
    <name>StoragePage</name>
    <message>
        <source>Left month by month; the bracket is with the master switch open</source>
        <translation>Rest Monat für Monat; die Klammer gilt bei ausgeschaltetem Hauptschalter</translation>
    </message>
    <message>
        <source>Left month by month</source>
        <translation>Rest Monat für Monat</translation>
    </message>
</context>
<context>
    <name>SunPage</name>
    <message>
        <source>What each day gives back: likely, and from nine in ten to one in ten</source>
        <translation>Was jeder Tag zurückgibt: erwartet, und von neun bis zu einem von zehn Fällen</translation>
    </message>
    <message>
        <source>What each day gives back</source>
        <translation>Was jeder Tag zurückgibt</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Place: %1. Change</source>
        <translation>Ort: %1. Ändern</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>The panels</source>
        <translation>Die Module</translation>
    </message>
    <message>
        <source>Add other panels</source>
        <translation>Andere Module hinzufügen</translation>
    </message>
    <message>
        <source>Take these panels out</source>
        <translation>Diese Module entfernen</translation>
    </message>
    <message>
        <source>The charge controller</source>
        <translation>Der Laderegler</translation>
    </message>
    <message>
        <source>Other chargers</source>
        <translation>Andere Ladegeräte</translation>
    </message>
    <message>
        <source>Add a charger</source>
        <translation>Ladegerät hinzufügen</translation>
    </message>
    <message>
        <source>Take this charger out</source>
        <translation>Dieses Ladegerät entfernen</translation>
    </message>
    <message>
        <source>The place in figures</source>
        <translation>Der Ort in Zahlen</translation>
    </message>
    <message>
        <source>What so many panels give a day</source>
        <translation>Was so viele Module am Tag liefern</translation>
    </message>
    <message>
        <source>Choose a weather file</source>
        <translation>Eine Wetterdatei wählen</translation>
    </message>
    <message>
        <source>Hours of a year (*.epw *.csv)</source>
        <translation>Stunden eines Jahres (*.epw *.csv)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Weather file: %1</source>
        <translation>Wetterdatei: %1</translation>
    </message>
    <message>
        <source>Weather file: %1. Choose it</source>
        <translation>Wetterdatei: %1. Auswählen</translation>
    </message>
</context>
<context>
    <name>Templates</name>
    <message>
        <source>Ice storm, four nights</source>
        <translation>Eissturm, vier Nächte</translation>
    </message>
    <message>
        <source>Winter: freezer, furnace blower, light. One lithium pack, three more to plug in, three panels.</source>
        <translation>Winter: Gefriertruhe, Heizungsgebläse, Licht. Ein Lithiumakku, drei weitere zum Anstecken, drei Module.</translation>
    </message>
    <message>
        <source>Summer storm, three hot days</source>
        <translation>Sommergewitter, drei heiße Tage</translation>
    </message>
    <message>
        <source>Refrigerator and fans in the heat. Two sealed lead batteries, four panels laid flat.</source>
        <translation>Kühlschrank und Ventilatoren in der Hitze. Zwei geschlossene Bleiakkus, vier flach liegende Module.</translation>
    </message>
    <message>
        <source>Two-day precautionary shut-off</source>
        <translation>Zwei Tage vorsorglich abgeschaltet</translation>
    </message>
    <message>
        <source>Refrigerator, desk and phones, announced beforehand. Three gel batteries, two panels.</source>
        <translation>Kühlschrank, Schreibtisch und Telefone, vorher angekündigt. Drei Gelakkus, zwei Module.</translation>
    </message>
    <message>
        <source>Breathing machine, five nights</source>
        <translation>Atemgerät, fünf Nächte</translation>
    </message>
    <message>
        <source>A machine fed from the 12 V outlet at night. Two lithium packs, one panel.</source>
        <translation>Ein Gerät, das nachts an der 12-V-Dose hängt. Zwei Lithiumakkus, ein Modul.</translation>
    </message>
    <message>
        <source>Saw and pump at a remote place</source>
        <translation>Säge und Pumpe weit draußen</translation>
    </message>
    <message>
        <source>Work where no line goes. Two wet deep-cycle pairs, three panels.</source>
        <translation>Arbeiten, wo keine Leitung hinführt. Zwei Paare offener Bleiakkus, drei Module.</translation>
    </message>
</context>
<context>
    <name>TiltControl</name>
    <message>
        <source>Tilt of the panels</source>
        <translation>Neigung der Module</translation>
    </message>
    <message>
        <source>Tilt from level</source>
        <translation>Neigung gegen die Waagerechte</translation>
    </message>
</context>
<context>
    <name>TopBar</name>
    <message>
        <source>EXAMPLE</source>
        <translation>BEISPIEL</translation>
    </message>
    <message>
        <source>This is an example</source>
        <translation>Dies ist ein Beispiel</translation>
    </message>
    <message>
        <source>not saved</source>
        <translation>nicht gespeichert</translation>
    </message>
    <message>
        <source>Take the last change back</source>
        <translation>Die letzte Änderung rückgängig machen</translation>
    </message>
    <message>
        <source>Make the change again</source>
        <translation>Die Änderung wiederholen</translation>
    </message>
    <message>
        <source>File, look and help</source>
        <translation>Datei, Aussehen und Hilfe</translation>
    </message>
    <message>
        <source>Menu</source>
        <translation>Menü</translation>
    </message>
</context>
<context>
    <name>WiringDrawing</name>
    <message>
        <source>The build</source>
        <translation>Der Aufbau</translation>
    </message>
</context>
<context>
    <name>WiringPage</name>
    <message>
        <source>Touch a part to read what was found about it.</source>
        <translation>Tippen Sie auf ein Teil, um den Befund zu lesen.</translation>
    </message>
    <message>
        <source>Change the circuits</source>
        <translation>Die Stromkreise ändern</translation>
    </message>
    <message>
        <source>The case</source>
        <translation>Der Koffer</translation>
    </message>
</context>
<context>
    <name>WordsSheet</name>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Take it out of the file</source>
        <translation>Aus der Datei nehmen</translation>
    </message>
    <message>
        <source>Take %1 out of the file</source>
        <translation>%1 aus der Datei nehmen</translation>
    </message>
    <message>
        <source>Taken out, the file is silent on it; what holds then is told. Comment lines stay, and it can be undone.</source>
        <translation>Herausgenommen schweigt die Datei dazu; was dann gilt, wird gesagt. Kommentarzeilen bleiben, und es lässt sich rückgängig machen.</translation>
    </message>
</context>
<context>
    <name>WrittenStrip</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Take the entry out again</source>
        <translation>Den Eintrag wieder herausnehmen</translation>
    </message>
    <message>
        <source>Put this notice away</source>
        <translation>Diese Mitteilung weglegen</translation>
    </message>
</context>
<context>
    <name>touch::BrokenText</name>
    <message>
        <source>A new line at the end</source>
        <translation>Eine neue Zeile am Ende</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Zeile %1</translation>
    </message>
</context>
<context>
    <name>touch::BuildsPlot</name>
    <message>
        <source>Give every pack and panel a weight or a price, and the builds that no other beats are drawn here.</source>
        <translation>Geben Sie jedem Akku und Modul ein Gewicht oder einen Preis, dann werden hier die Aufbauten gezeichnet, die kein anderer übertrifft.</translation>
    </message>
    <message>
        <source>Give every pack and panel a price to see them against it as well.</source>
        <translation>Geben Sie jedem Akku und Modul einen Preis, um sie auch dagegen aufzutragen.</translation>
    </message>
    <message>
        <source>Give every pack and panel a weight to see them against it as well.</source>
        <translation>Geben Sie jedem Akku und Modul ein Gewicht, um sie auch dagegen aufzutragen.</translation>
    </message>
    <message>
        <source>Chance of lasting against what packs and panels cost</source>
        <translation>Wahrscheinlichkeit zu reichen gegen den Preis von Akkus und Modulen</translation>
    </message>
    <message>
        <source>Chance of lasting against what packs and panels weigh</source>
        <translation>Wahrscheinlichkeit zu reichen gegen das Gewicht von Akkus und Modulen</translation>
    </message>
    <message>
        <source>Goal %1 %</source>
        <translation>Ziel %1 %</translation>
    </message>
    <message>
        <source>%1. %2; builds: %3, each a button below the plot.</source>
        <translation>%1. %2; Aufbauten: %3, jeder eine Taste unter dem Bild.</translation>
    </message>
    <message>
        <source>Builds that are not drawn, since some price is not known: %1. Give every pack and panel a price.</source>
        <translation>Nicht gezeichnete Aufbauten, weil ein Preis nicht bekannt ist: %1. Geben Sie jedem Akku und Modul einen Preis.</translation>
    </message>
    <message>
        <source>Builds that are not drawn, since some weight is not known: %1. Give every pack and panel a weight.</source>
        <translation>Nicht gezeichnete Aufbauten, weil ein Gewicht nicht bekannt ist: %1. Geben Sie jedem Akku und Modul ein Gewicht.</translation>
    </message>
</context>
<context>
    <name>touch::ChanceGrid</name>
    <message>
        <source>Packs: %1, panels: %2. It lasts to the end %3 times in 100.</source>
        <translation>Akkus: %1, Module: %2. Bis zum Ende reicht es %3-mal von 100.</translation>
    </message>
    <message>
        <source>Half of the time it lasts %1 or longer.</source>
        <translation>In der Hälfte der Fälle reicht es %1 oder länger.</translation>
    </message>
</context>
<context>
    <name>touch::Curve</name>
    <message>
        <source>%1 from %2 to %3, at most %4</source>
        <translation>%1 von %2 bis %3, höchstens %4</translation>
    </message>
</context>
<context>
    <name>touch::FirstRun</name>
    <message>
        <source>What must stay on?</source>
        <translation>Was muss anbleiben?</translation>
    </message>
    <message>
        <source>Which battery have you got?</source>
        <translation>Welchen Akku haben Sie?</translation>
    </message>
    <message>
        <source>Have you got solar panels?</source>
        <translation>Haben Sie Solarmodule?</translation>
    </message>
    <message>
        <source>How long may the outage last?</source>
        <translation>Wie lange kann der Ausfall dauern?</translation>
    </message>
    <message>
        <source>Where do you live?</source>
        <translation>Wo wohnen Sie?</translation>
    </message>
    <message>
        <source>Pick all that must. Typical figures are taken; a plug-in meter tells yours.</source>
        <translation>Wählen Sie alles, was muss. Genommen werden übliche Werte; Ihre eigenen zeigt ein Steckdosenmessgerät.</translation>
    </message>
    <message>
        <source>As its label says. All of them are taken to be full.</source>
        <translation>Wie es auf dem Typenschild steht. Alle gelten als voll.</translation>
    </message>
    <message>
        <source>Propped up towards the south, as a beginning.</source>
        <translation>Fürs Erste nach Süden aufgestellt.</translation>
    </message>
    <message>
        <source>It is taken to begin tomorrow at 18:00.</source>
        <translation>Angenommen wird, dass er morgen um 18:00 beginnt.</translation>
    </message>
    <message>
        <source>For the sun and the warmth of the season: the nearest place of the list.</source>
        <translation>Für Sonne und Wärme der Jahreszeit: der nächste Ort der Liste.</translation>
    </message>
    <message>
        <source>Made from five answers; what was not asked is marked.</source>
        <translation>Aus fünf Antworten gemacht; was nicht gefragt wurde, ist vermerkt.</translation>
    </message>
    <message>
        <source>What I have</source>
        <translation>Was ich habe</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>nicht gefragt</translation>
    </message>
    <message>
        <source>not asked: put what its plate says</source>
        <translation>nicht gefragt: tragen Sie ein, was auf dem Schild steht</translation>
    </message>
</context>
<context>
    <name>touch::FolderModel</name>
    <message>
        <source>folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>%1, saved %2</source>
        <translation>%1, gespeichert %2</translation>
    </message>
    <message>
        <source>This folder cannot be looked into.</source>
        <translation>In diesen Ordner kann nicht hineingesehen werden.</translation>
    </message>
    <message>
        <source>Only the first %1 of %2 are shown.</source>
        <translation>Nur die ersten %1 von %2 werden gezeigt.</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Persönlicher Ordner</translation>
    </message>
    <message>
        <source>Documents</source>
        <translation>Dokumente</translation>
    </message>
    <message>
        <source>Desktop</source>
        <translation>Schreibtisch</translation>
    </message>
    <message>
        <source>Downloads</source>
        <translation>Downloads</translation>
    </message>
    <message>
        <source>Everything</source>
        <translation>Alles</translation>
    </message>
</context>
<context>
    <name>touch::KeptWork</name>
    <message>
        <source>Unsaved work cannot be kept in %1. Save it in a file.</source>
        <translation>Nicht gespeicherte Arbeit kann in %1 nicht aufbewahrt werden. Speichern Sie sie in einer Datei.</translation>
    </message>
    <message>
        <source>Unsaved work cannot be kept in %1: %2. Save it in a file.</source>
        <translation>Nicht gespeicherte Arbeit kann in %1 nicht aufbewahrt werden: %2. Speichern Sie sie in einer Datei.</translation>
    </message>
    <message>
        <source>Unsaved work on %1, kept %2, was taken up again. The way back through its changes stays open.</source>
        <translation>Nicht gespeicherte Arbeit an %1, aufbewahrt %2, wurde wieder aufgenommen. Der Weg zurück durch ihre Änderungen bleibt offen.</translation>
    </message>
    <message>
        <source>Unsaved work of earlier is kept: it is listed on the File page.</source>
        <translation>Nicht gespeicherte Arbeit von früher ist aufbewahrt: Sie steht auf der Seite Datei.</translation>
    </message>
    <message>
        <source>%1 is open in another window as well. Whoever saves second is asked.</source>
        <translation>%1 ist auch in einem anderen Fenster offen. Wer als Zweiter speichert, wird gefragt.</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, in %2</translation>
    </message>
</context>
<context>
    <name>touch::KeysModel</name>
    <message>
        <source>%1 stays: without it the file cannot be used. %2</source>
        <translation>%1 bleibt: Ohne ihn ist die Datei nicht zu gebrauchen. %2</translation>
    </message>
    <message>
        <source>%1 was taken out; nothing holds in its place.</source>
        <translation>%1 wurde herausgenommen; an seiner Stelle gilt nichts.</translation>
    </message>
    <message>
        <source>%1 was taken out. Now: %2.</source>
        <translation>%1 wurde herausgenommen. Jetzt: %2.</translation>
    </message>
    <message>
        <source>%1 was taken out. Now %2 holds: %3.</source>
        <translation>%1 wurde herausgenommen. Jetzt gilt %2: %3.</translation>
    </message>
    <message>
        <source>Taken out; now %1</source>
        <translation>Herausgenommen; jetzt %1</translation>
    </message>
</context>
<context>
    <name>touch::LoadsModel</name>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
</context>
<context>
    <name>touch::LogModel</name>
    <message>
        <source>Struck: %1</source>
        <translation>Gestrichen: %1</translation>
    </message>
    <message>
        <source>Cannot be true together with the others: %1</source>
        <translation>Kann nicht zusammen mit den anderen wahr sein: %1</translation>
    </message>
</context>
<context>
    <name>touch::Look</name>
    <message>
        <source>How things are to look cannot be kept for the next start: %1.</source>
        <translation>Die Einstellungen der Darstellung können nicht für den nächsten Start aufbewahrt werden: %1.</translation>
    </message>
</context>
<context>
    <name>touch::NowClock</name>
    <message>
        <source>This computer does not tell the time.</source>
        <translation>Dieser Rechner sagt keine Uhrzeit.</translation>
    </message>
    <message>
        <source>By this computer&apos;s clock it is %1; the outage of this file begins %2.</source>
        <translation>Nach der Uhr dieses Rechners ist es %1; der Stromausfall dieser Datei beginnt %2.</translation>
    </message>
    <message>
        <source>By this computer&apos;s clock it is %1; the outage of this file was over %2.</source>
        <translation>Nach der Uhr dieses Rechners ist es %1; der Stromausfall dieser Datei endete %2.</translation>
    </message>
    <message>
        <source>By this computer&apos;s clock it is %1, and an entry of the log is later than that. Entries later than now do not count yet.</source>
        <translation>Nach der Uhr dieses Rechners ist es %1, und ein Eintrag ist später als das. Einträge nach jetzt zählen noch nicht.</translation>
    </message>
    <message>
        <source>This computer&apos;s clock is taken to be %1 ahead.</source>
        <translation>Die Uhr dieses Rechners gilt als %1 voraus.</translation>
    </message>
    <message>
        <source>This computer&apos;s clock is taken to be %1 behind.</source>
        <translation>Die Uhr dieses Rechners gilt als %1 zurück.</translation>
    </message>
</context>
<context>
    <name>touch::PacksModel</name>
    <message>
        <source>another</source>
        <translation>weiterer</translation>
    </message>
    <message>
        <source>another %1</source>
        <translation>weiterer %1</translation>
    </message>
</context>
<context>
    <name>touch::PlacesModel</name>
    <message>
        <source>%1° north, country %2</source>
        <translation>%1° Nord, Land %2</translation>
    </message>
    <message>
        <source>%1° south, country %2</source>
        <translation>%1° Süd, Land %2</translation>
    </message>
</context>
<context>
    <name>touch::PrintDesk</name>
    <message>
        <source>There is nothing to save yet.</source>
        <translation>Es gibt noch nichts zu speichern.</translation>
    </message>
    <message>
        <source>There is no such plot any more.</source>
        <translation>Dieses Diagramm gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>Not saved: only a folder of this computer will do.</source>
        <translation>Nicht gespeichert: Wählen Sie einen Ordner auf diesem Rechner.</translation>
    </message>
    <message>
        <source>Not saved: there is no folder %1.</source>
        <translation>Nicht gespeichert: Den Ordner %1 gibt es nicht.</translation>
    </message>
    <message>
        <source>Not saved: the folder %1 may not be written to. Choose another.</source>
        <translation>Nicht gespeichert: In den Ordner %1 darf nicht geschrieben werden. Wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>Not saved: %1 is there already. Type its name with .%2 to replace it.</source>
        <translation>Nicht gespeichert: %1 gibt es schon. Geben Sie den Namen mit .%2 ein, um die Datei zu ersetzen.</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Gespeichert als %1</translation>
    </message>
    <message>
        <source>Not saved: %1 could not be written: %2.</source>
        <translation>Nicht gespeichert: %1 konnte nicht geschrieben werden: %2.</translation>
    </message>
    <message>
        <source>There is nothing to print yet.</source>
        <translation>Es gibt noch nichts zu drucken.</translation>
    </message>
    <message>
        <source>Not printed: %1 takes nothing.</source>
        <translation>Nicht gedruckt: %1 nimmt nichts an.</translation>
    </message>
    <message>
        <source>Sent to %1.</source>
        <translation>An %1 gesendet.</translation>
    </message>
</context>
<context>
    <name>touch::RangeBars</name>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 (to %2)</source>
        <translation>%1 (bis %2)</translation>
    </message>
</context>
<context>
    <name>touch::ScenarioDocument</name>
    <message>
        <source>The example is missing from this program.</source>
        <translation>Das Beispiel fehlt in diesem Programm.</translation>
    </message>
    <message>
        <source>What was copied</source>
        <translation>Das Kopierte</translation>
    </message>
    <message>
        <source>%1 is not a scenario that can be read: %2</source>
        <translation>%1 ist kein lesbarer Plan: %2</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Akkus</translation>
    </message>
    <message>
        <source>Expansion packs</source>
        <translation>Zusatzakkus</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Module</translation>
    </message>
    <message>
        <source>Outage days</source>
        <translation>Ausfalltage</translation>
    </message>
    <message>
        <source>The example</source>
        <translation>Das Beispiel</translation>
    </message>
    <message>
        <source>%1 is not opened, for saving it would change more than you do: line %2 is not UTF-8. Let an editor save it as UTF-8.</source>
        <translation>%1 wird nicht geöffnet, denn beim Speichern würde sich mehr ändern, als Sie ändern: Zeile %2 ist kein UTF-8. Lassen Sie einen Editor sie als UTF-8 speichern.</translation>
    </message>
    <message>
        <source>%1 cannot be read as text any more.</source>
        <translation>%1 lässt sich nicht mehr als Text lesen.</translation>
    </message>
    <message>
        <source>What you changed cannot be kept as a version, so it stays on the screen.</source>
        <translation>Was Sie geändert haben, kann nicht als Fassung aufbewahrt werden und bleibt deshalb auf dem Bildschirm.</translation>
    </message>
    <message>
        <source>it is no plain file</source>
        <translation>es ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>what it holds now cannot be read</source>
        <translation>was jetzt in ihr steht, lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>what it holds now cannot be kept as a version</source>
        <translation>was jetzt in ihr steht, kann nicht als Fassung aufbewahrt werden</translation>
    </message>
    <message>
        <source>Saved, but what was there before could not be kept as a version.</source>
        <translation>Gespeichert, aber was vorher da war, konnte nicht als Fassung aufbewahrt werden.</translation>
    </message>
    <message>
        <source>%1 was not saved: %2. What you changed is still here.</source>
        <translation>%1 wurde nicht gespeichert: %2. Was Sie geändert haben, ist noch hier.</translation>
    </message>
    <message>
        <source>%1 is not opened: what you changed here is not saved and cannot be kept. Save it first.</source>
        <translation>%1 wird nicht geöffnet: Was Sie hier geändert haben, ist nicht gespeichert und kann nicht aufbewahrt werden. Speichern Sie es zuerst.</translation>
    </message>
    <message>
        <source>no further words</source>
        <translation>ohne weitere Worte</translation>
    </message>
    <message>
        <source>A fault of this program: %1</source>
        <translation>Ein Fehler dieses Programms: %1</translation>
    </message>
    <message>
        <source>Not opened: %1</source>
        <translation>Nicht geöffnet: %1</translation>
    </message>
    <message>
        <source>A new plan</source>
        <translation>Ein neuer Plan</translation>
    </message>
</context>
<context>
    <name>touch::Sharing</name>
    <message>
        <source>No picture could be made.</source>
        <translation>Es ließ sich kein Bild machen.</translation>
    </message>
    <message>
        <source>%1 was not saved: %2.</source>
        <translation>%1 wurde nicht gespeichert: %2.</translation>
    </message>
    <message>
        <source>Saved as %1. Whoever gets it needs nothing else.</source>
        <translation>Als %1 gespeichert. Wer das bekommt, braucht nichts weiter.</translation>
    </message>
</context>
<context>
    <name>touch::SunControls</name>
    <message>
        <source>a place of your own</source>
        <translation>ein eigener Ort</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>flach</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>the sun does not rise</source>
        <translation>die Sonne geht nicht auf</translation>
    </message>
    <message>
        <source>the noon sun stands %1° high</source>
        <translation>die Mittagssonne steht %1° hoch</translation>
    </message>
</context>
<context>
    <name>touch::TableEntries</name>
    <message>
        <source>another</source>
        <translation>weiterer</translation>
    </message>
    <message>
        <source>another %1</source>
        <translation>weiterer %1</translation>
    </message>
</context>
<context>
    <name>units</name>
    <message>
        <source>percent</source>
        <translation>Prozent</translation>
    </message>
    <message>
        <source>volts</source>
        <translation>Volt</translation>
    </message>
    <message>
        <source>amperes</source>
        <translation>Ampere</translation>
    </message>
    <message>
        <source>milliamperes</source>
        <translation>Milliampere</translation>
    </message>
    <message>
        <source>kiloamperes</source>
        <translation>Kiloampere</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>Watt</translation>
    </message>
    <message>
        <source>kilowatts</source>
        <translation>Kilowatt</translation>
    </message>
    <message>
        <source>horsepower</source>
        <translation>Horsepower</translation>
    </message>
    <message>
        <source>volt-amperes</source>
        <translation>Voltampere</translation>
    </message>
    <message>
        <source>kilovolt-amperes</source>
        <translation>Kilovoltampere</translation>
    </message>
    <message>
        <source>watt-hours</source>
        <translation>Wattstunden</translation>
    </message>
    <message>
        <source>kilowatt-hours</source>
        <translation>Kilowattstunden</translation>
    </message>
    <message>
        <source>kilowatt-hours a year</source>
        <translation>Kilowattstunden im Jahr</translation>
    </message>
    <message>
        <source>kilowatt-hours per square metre</source>
        <translation>Kilowattstunden je Quadratmeter</translation>
    </message>
    <message>
        <source>ampere-hours</source>
        <translation>Amperestunden</translation>
    </message>
    <message>
        <source>milliohms</source>
        <translation>Milliohm</translation>
    </message>
    <message>
        <source>ohms</source>
        <translation>Ohm</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation>Grad Celsius</translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation>Grad Fahrenheit</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>Kilogramm</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>Pfund</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
</context>
</TS>
