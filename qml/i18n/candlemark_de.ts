<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
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
    <name>BuildsPane</name>
    <message>
        <source>Thousands of outages are being run; the page stays free meanwhile.</source>
        <translation>Tausende Ausfälle werden durchgerechnet; die Seite bleibt solange bedienbar.</translation>
    </message>
    <message>
        <source>Stop following changes</source>
        <translation>Änderungen nicht weiter verfolgen</translation>
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
    <name>DaysPlot</name>
    <message>
        <source>Stored energy, loads and sun over the outage</source>
        <translation>Gespeicherte Energie, Verbrauch und Sonne während des Ausfalls</translation>
    </message>
    <message>
        <source>stored: 9 in 10, likely, 1 in 10</source>
        <translation>gespeichert: 9 von 10, wohl, 1 von 10</translation>
    </message>
    <message>
        <source>loads</source>
        <translation>Verbrauch</translation>
    </message>
    <message>
        <source>sun</source>
        <translation>Sonne</translation>
    </message>
    <message>
        <source>night</source>
        <translation>Nacht</translation>
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
        <translation>Einen Teil des Schlüssels eingeben</translation>
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
    <message>
        <source>Findings, cautions and working are told in English.</source>
        <translation>Befunde, Warnungen und Rechenweg stehen auf Englisch.</translation>
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
</context>
<context>
    <name>Main</name>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Lasten</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Akkus</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sonne</translation>
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
        <source>Storage</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
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
        <source>Print</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>No file is open.</source>
        <translation>Keine Datei ist geöffnet.</translation>
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
    <name>NoticeStrip</name>
    <message>
        <source>Put this notice away</source>
        <translation>Diesen Hinweis schließen</translation>
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
</context>
<context>
    <name>PacksPage</name>
    <message>
        <source>Add another kind of pack</source>
        <translation>Weitere Akkuart hinzufügen</translation>
    </message>
    <message>
        <source>What the build has to do</source>
        <translation>Was der Aufbau leisten soll</translation>
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
        <source>How many packs and panels to build</source>
        <translation>Wie viele Akkus und Module</translation>
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
</context>
<context>
    <name>PageRail</name>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
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
        <source>Sheets and plots are in English.</source>
        <translation>Blätter und Diagramme sind auf Englisch.</translation>
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
</context>
<context>
    <name>QObject</name>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
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
        <source>metered</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>from a label</source>
        <translation>vom Etikett</translation>
    </message>
    <message>
        <source>a guess</source>
        <translation>geschätzt</translation>
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
        <source>lithium iron phosphate</source>
        <translation>Lithium-Eisenphosphat</translation>
    </message>
    <message>
        <source>lead, sealed (AGM)</source>
        <translation>Blei, geschlossen (AGM)</translation>
    </message>
    <message>
        <source>lead, gel</source>
        <translation>Blei, Gel</translation>
    </message>
    <message>
        <source>lead, wet</source>
        <translation>Blei, nass</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>half its life</source>
        <translation>halbe Lebensdauer</translation>
    </message>
    <message>
        <source>old</source>
        <translation>alt</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation>HALT</translation>
    </message>
    <message>
        <source>CAUTION</source>
        <translation>VORSICHT</translation>
    </message>
    <message>
        <source>NOTE</source>
        <translation>HINWEIS</translation>
    </message>
    <message>
        <source>this program</source>
        <translation>dieses Programm</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
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
        <source>%1 %2 %3</source>
        <comment>weekday, day, month</comment>
        <translation>%1, %2. %3</translation>
    </message>
    <message>
        <source>one</source>
        <translation>ein</translation>
    </message>
    <message>
        <source>two</source>
        <translation>zwei</translation>
    </message>
    <message>
        <source>three</source>
        <translation>drei</translation>
    </message>
    <message>
        <source>four</source>
        <translation>vier</translation>
    </message>
    <message>
        <source>five</source>
        <translation>fünf</translation>
    </message>
    <message>
        <source>six</source>
        <translation>sechs</translation>
    </message>
    <message>
        <source>seven</source>
        <translation>sieben</translation>
    </message>
    <message>
        <source>eight</source>
        <translation>acht</translation>
    </message>
    <message>
        <source>nine</source>
        <translation>neun</translation>
    </message>
    <message>
        <source>ten</source>
        <translation>zehn</translation>
    </message>
    <message>
        <source>eleven</source>
        <translation>elf</translation>
    </message>
    <message>
        <source>twelve</source>
        <translation>zwölf</translation>
    </message>
    <message>
        <source>about the end of %1</source>
        <translation>etwa %1 Mitternacht</translation>
    </message>
    <message>
        <source>the early hours of %1</source>
        <translation>%1 früh</translation>
    </message>
    <message>
        <source>the morning of %1</source>
        <translation>%1 Vormittag</translation>
    </message>
    <message>
        <source>about noon on %1</source>
        <translation>etwa %1 Mittag</translation>
    </message>
    <message>
        <source>the afternoon of %1</source>
        <translation>%1 Nachmittag</translation>
    </message>
    <message>
        <source>the evening of %1</source>
        <translation>%1 Abend</translation>
    </message>
    <message>
        <source>then the packs are empty</source>
        <translation>dann sind die Akkus leer</translation>
    </message>
    <message>
        <source>then the packs are as far down as you allow</source>
        <translation>dann ist der Teil der Ladung verbraucht, den Sie freigeben</translation>
    </message>
    <message>
        <source>Nothing is switched off by that: the packs could carry everything to the end; %1 is left then.</source>
        <translation>Dadurch wird nichts abgeschaltet: Die Akkus könnten alles bis zum Ende versorgen; dann bleiben %1.</translation>
    </message>
    <message>
        <source>Nothing is switched off by that: the packs could carry everything until %1.</source>
        <translation>Dadurch wird nichts abgeschaltet: Die Akkus könnten alles bis %1 versorgen.</translation>
    </message>
    <message>
        <source>then the inverter switches off on low voltage</source>
        <translation>dann schaltet der Wechselrichter wegen Unterspannung ab</translation>
    </message>
    <message>
        <source>then a pack&apos;s own protection opens</source>
        <translation>dann trennt die Schutzschaltung eines Akkus</translation>
    </message>
    <message>
        <source>then a fuse opens</source>
        <translation>dann löst eine Sicherung aus</translation>
    </message>
    <message>
        <source>then the loads ask for more than the inverter gives</source>
        <translation>dann verlangen die Verbraucher mehr, als der Wechselrichter leistet</translation>
    </message>
    <message>
        <source>then something goes without</source>
        <translation>dann bleibt etwas ohne Strom</translation>
    </message>
    <message>
        <source>chance weathers</source>
        <translation>zufälligen Wetterverläufen</translation>
    </message>
    <message>
        <source>%1 to %2 in a hundred</source>
        <translation>%1 bis %2 von hundert</translation>
    </message>
    <message>
        <source>Lasts the whole outage; %1 is left when the power returns on %2.</source>
        <translation>Reicht für den ganzen Ausfall; %1 sind übrig, wenn der Strom %2 wiederkommt.</translation>
    </message>
    <message>
        <source>Does not carry these loads from the start; %1.</source>
        <translation>Trägt diese Verbraucher von Anfang an nicht; %1.</translation>
    </message>
    <message>
        <source>Lasts until %1 (at the earliest %2, at best the whole outage); %3.</source>
        <translation>Reicht bis %1 (im ungünstigen Fall bis %2, bestenfalls für den ganzen Ausfall); %3.</translation>
    </message>
    <message>
        <source>Lasts until %1 (between %2 and %3); %4.</source>
        <translation>Reicht bis %1 (zwischen %2 und %3); %4.</translation>
    </message>
    <message>
        <source>Lasts until %1; %2.</source>
        <translation>Reicht bis %1; %2.</translation>
    </message>
    <message>
        <source>More packs alone do not make it last longer.</source>
        <translation>Mehr Akkus allein verlängern die Zeit nicht.</translation>
    </message>
    <message>
        <source>If every doubtful figure turns out badly it lasts until %1.</source>
        <translation>Fällt jede unsichere Zahl ungünstig aus, reicht es bis %1.</translation>
    </message>
    <message>
        <source>It lasts through all of %1 %2 (%3).</source>
        <translation>Es reicht in allen %1 %2 (%3).</translation>
    </message>
    <message>
        <source>Arithmetic, not approval. Local codes and licensed practice decide.</source>
        <translation>Eine Rechnung, keine Freigabe. Örtliche Vorschriften und Fachbetriebe entscheiden.</translation>
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
        <source>start dates in the weather file</source>
        <translation>Anfangstagen der Wetterdatei</translation>
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
        <source>On likely figures one more pack carries you through to the end, %1.</source>
        <translation>Bei den erwarteten Werten trägt ein weiterer Akku Sie bis zum Ende, %1.</translation>
    </message>
    <message>
        <source>On likely figures %1 more packs carry you through to the end, %2.</source>
        <translation>Bei den erwarteten Werten tragen %1 weitere Akkus Sie bis zum Ende, %2.</translation>
    </message>
    <message>
        <source>On likely figures one more pack carries you to %1, which is still short of %2.</source>
        <translation>Bei den erwarteten Werten trägt ein weiterer Akku Sie bis %1; zum Ende, %2, fehlt dann noch etwas.</translation>
    </message>
    <message>
        <source>On likely figures %1 more packs carry you to %2, which is still short of %3.</source>
        <translation>Bei den erwarteten Werten tragen %1 weitere Akkus Sie bis %2; zum Ende, %3, fehlt dann noch etwas.</translation>
    </message>
    <message>
        <source>; up to %1 more packs do not make it sure enough</source>
        <translation>; auch bis zu %1 weitere Akkus machen es nicht sicher genug</translation>
    </message>
    <message>
        <source>; one more pack lasts through %1 %</source>
        <translation>; mit einem weiteren Akku in %1 %</translation>
    </message>
    <message>
        <source>; %1 more packs last through %2 %</source>
        <translation>; mit %1 weiteren Akkus in %2 %</translation>
    </message>
    <message>
        <source>It lasts through none of %1 %2%3.</source>
        <translation>Es reicht in keinem von %1 %2%3.</translation>
    </message>
    <message>
        <source>Of %1 %2 it lasts through %3 % (%4)%5.</source>
        <translation>Von %1 %2 reicht es in %3 % (%4)%5.</translation>
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
        <source>nothing more</source>
        <translation>nichts weiter</translation>
    </message>
    <message>
        <source>its cut-off</source>
        <translation>seiner Abschaltspannung</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>day, name of the month, year</comment>
        <translation>%1. %2 %3</translation>
    </message>
    <message>
        <source>%1 more of its kind</source>
        <translation>%1 weiteren seiner Art</translation>
    </message>
    <message>
        <source>the other %1</source>
        <translation>dem anderen %1</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two packs</comment>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>their voltages are level, and next to nothing flows</source>
        <translation>die Spannungen sind gleich, und es fließt so gut wie nichts</translation>
    </message>
    <message>
        <source>%1 flow at first, out of %2 into %3</source>
        <translation>anfangs fließen %1, von %2 zu %3</translation>
    </message>
    <message>
        <source>fuse</source>
        <comment>of a pack</comment>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>connector</source>
        <comment>of a pack</comment>
        <translation>Stecker</translation>
    </message>
    <message>
        <source>current limit</source>
        <translation>Stromgrenze</translation>
    </message>
    <message>
        <source>charge limit</source>
        <translation>Ladegrenze</translation>
    </message>
    <message>
        <source>limit you asked for</source>
        <translation>Ihre eigene Grenze</translation>
    </message>
    <message>
        <source>charging this cold</source>
        <translation>Laden bei dieser Kälte</translation>
    </message>
    <message>
        <source>all packs</source>
        <translation>alle Akkus</translation>
    </message>
    <message>
        <source>pack %1</source>
        <translation>Akku %1</translation>
    </message>
    <message>
        <source>%1 under that load</source>
        <translation>%1 unter dieser Last</translation>
    </message>
    <message>
        <source>%1 at rest</source>
        <translation>%1 in Ruhe</translation>
    </message>
    <message>
        <source>to the end of the outage</source>
        <translation>bis zum Ende des Ausfalls</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>voltage of the motor</source>
        <translation>Spannung des Motors</translation>
    </message>
    <message>
        <source>surge of the inverter</source>
        <translation>Spitzenleistung des Wechselrichters</translation>
    </message>
    <message>
        <source>time the surge is held</source>
        <translation>Dauer der Spitzenleistung</translation>
    </message>
    <message>
        <source>torque of the motor</source>
        <translation>Drehmoment des Motors</translation>
    </message>
    <message>
        <source>inverter once it runs</source>
        <translation>Wechselrichter im Lauf</translation>
    </message>
    <message>
        <source>low-voltage cut-off</source>
        <translation>Abschaltung bei Unterspannung</translation>
    </message>
    <message>
        <source>power the packs can give</source>
        <translation>Leistung, die die Akkus hergeben</translation>
    </message>
    <message>
        <source>current limit of the packs</source>
        <translation>Stromgrenze der Akkus</translation>
    </message>
    <message>
        <source>fuse of packs or inverter</source>
        <translation>Sicherung der Akkus oder des Wechselrichters</translation>
    </message>
    <message>
        <source>connector or switch</source>
        <translation>Stecker oder Schalter</translation>
    </message>
    <message>
        <source>%1 % of the limit and more</source>
        <translation>%1 % der Grenze und mehr</translation>
    </message>
    <message>
        <source>%1 % of the limit</source>
        <translation>%1 % der Grenze</translation>
    </message>
    <message>
        <source>%1 to %2 % of the limit</source>
        <translation>%1 bis %2 % der Grenze</translation>
    </message>
    <message>
        <source>it is not made for the voltage of this unit</source>
        <translation>er ist nicht für die Spannung dieser Anlage gebaut</translation>
    </message>
    <message>
        <source>a %1 V motor cannot be run from %2 V, however strong the inverter</source>
        <translation>ein Motor für %1 V läuft nicht an %2 V, wie stark der Wechselrichter auch ist</translation>
    </message>
    <message>
        <source>it asks up to %1 of the inverter, and nobody told how long it holds that</source>
        <translation>dem Wechselrichter werden bis zu %1 abverlangt, und niemand hat gesagt, wie lange er das hält</translation>
    </message>
    <message>
        <source>it asks %1 of the inverter, whose surge is %2 (%3)</source>
        <translation>dem Wechselrichter werden %1 abverlangt, seine Spitzenleistung ist %2 (%3)</translation>
    </message>
    <message>
        <source>the start takes %1, and the inverter may hold %2 for less than that</source>
        <translation>der Anlauf dauert %1, und der Wechselrichter hält %2 womöglich nicht so lange</translation>
    </message>
    <message>
        <source>motors with a capacitor or a compressor suffer from a quasi-square wave</source>
        <translation>Motoren mit Kondensator oder Verdichter leiden unter einer trapezförmigen Spannung</translation>
    </message>
    <message>
        <source>what it turns takes %1 to %2 % of its torque</source>
        <translation>was er dreht, braucht %1 bis %2 % seines Drehmoments</translation>
    </message>
    <message>
        <source>once it runs, more is on than the inverter carries for long (%1)</source>
        <translation>läuft er, so ist mehr eingeschaltet, als der Wechselrichter auf Dauer trägt (%1)</translation>
    </message>
    <message>
        <source>the voltage at the inverter stays at %1 at best, or collapses, and it switches off at %2</source>
        <translation>die Spannung am Wechselrichter bleibt bestenfalls bei %1 oder bricht zusammen, und er schaltet bei %2 ab</translation>
    </message>
    <message>
        <source>the voltage at the inverter falls to %1, and it switches off at %2</source>
        <translation>die Spannung am Wechselrichter fällt auf %1, und er schaltet bei %2 ab</translation>
    </message>
    <message>
        <source>%1 is asked of the packs, which is more than they can give at any voltage</source>
        <translation>den Akkus werden %1 abverlangt, mehr als sie bei irgendeiner Spannung hergeben</translation>
    </message>
    <message>
        <source>%1 is asked of the packs, which is %2 they can give at any voltage</source>
        <translation>den Akkus werden %1 abverlangt: %2 dessen, was sie bei irgendeiner Spannung hergeben</translation>
    </message>
    <message>
        <source>one pack would carry %1, and its protection lets %2 through for %3</source>
        <translation>ein Akku müsste %1 tragen, und seine Schutzschaltung lässt %2 durch, %3 lang</translation>
    </message>
    <message>
        <source>a fuse of the packs or the inverter may melt in %1 (%2)</source>
        <translation>eine Sicherung der Akkus oder des Wechselrichters kann in %1 schmelzen (%2)</translation>
    </message>
    <message>
        <source>a connector or switch of the inverter would carry %1 (%2)</source>
        <translation>ein Stecker oder Schalter des Wechselrichters müsste %1 tragen (%2)</translation>
    </message>
    <message>
        <source>One more pack (%1 in all) makes it start</source>
        <translation>Mit einem weiteren Akku (%1 insgesamt) läuft er an</translation>
    </message>
    <message>
        <source>%1 more packs (%2 in all) make it start</source>
        <translation>Mit %1 weiteren Akkus (%2 insgesamt) läuft er an</translation>
    </message>
    <message>
        <source>No number of packs helps, because of this limit: %1</source>
        <translation>Keine Zahl von Akkus hilft, wegen dieser Grenze: %1</translation>
    </message>
    <message>
        <source>No number of packs makes it sure, because of this limit: %1</source>
        <translation>Keine Zahl von Akkus macht es sicher, wegen dieser Grenze: %1</translation>
    </message>
    <message>
        <source>With one more pack (%1 in all) it may start; no number of packs makes it sure, because of this limit: %2</source>
        <translation>Mit einem weiteren Akku (%1 insgesamt) läuft er vielleicht an; keine Zahl von Akkus macht es sicher, wegen dieser Grenze: %2</translation>
    </message>
    <message>
        <source>With %1 more packs (%2 in all) it may start; no number of packs makes it sure, because of this limit: %3</source>
        <translation>Mit %1 weiteren Akkus (%2 insgesamt) läuft er vielleicht an; keine Zahl von Akkus macht es sicher, wegen dieser Grenze: %3</translation>
    </message>
    <message>
        <source>%1 will not start: %2.</source>
        <translation>%1 läuft nicht an: %2.</translation>
    </message>
    <message>
        <source>%1 may or may not start: %2.</source>
        <translation>%1 läuft vielleicht an, vielleicht nicht: %2.</translation>
    </message>
    <message>
        <source>All at once, as after a switch-on, they start</source>
        <translation>Alle auf einmal, wie nach dem Einschalten, laufen sie an</translation>
    </message>
    <message>
        <source>All at once, as after a switch-on, they will not start</source>
        <translation>Alle auf einmal, wie nach dem Einschalten, laufen sie nicht an</translation>
    </message>
    <message>
        <source>All at once, as after a switch-on, they may or may not start</source>
        <translation>Alle auf einmal, wie nach dem Einschalten, laufen sie vielleicht an, vielleicht nicht</translation>
    </message>
    <message>
        <source>, then </source>
        <translation>, dann </translation>
    </message>
    <message>
        <source>Nothing found against plugging %1 onto %2 now: %3.</source>
        <translation>Nichts spricht dagegen, %1 jetzt mit %2 zusammenzustecken: %3.</translation>
    </message>
    <message>
        <source>Do not plug %1 onto %2 now, level as their voltages are: see below.</source>
        <translation>Stecken Sie %1 jetzt nicht mit %2 zusammen, so gleich die Spannungen auch sind: siehe unten.</translation>
    </message>
    <message>
        <source>Do not plug %1 onto %2 now: %3.</source>
        <translation>Stecken Sie %1 jetzt nicht mit %2 zusammen: %3.</translation>
    </message>
    <message>
        <source>No limit of any part is known, so none could be held against it.</source>
        <translation>Von keinem Teil ist eine Grenze bekannt, also konnte keine geprüft werden.</translation>
    </message>
    <message>
        <source>The voltages at rest are %1 apart; up to %2 keeps every part within its limit (the first to reach it: pack %3, %4, %5).</source>
        <translation>Die Ruhespannungen liegen %1 auseinander; bis %2 bleibt jedes Teil in seiner Grenze (zuerst erreicht sie: Akku %3, %4, %5).</translation>
    </message>
    <message>
        <source>The current falls as the voltages meet, but more than 1 A still flows after two days; %1 move until then.</source>
        <translation>Der Strom sinkt, während sich die Spannungen angleichen, doch nach zwei Tagen fließt noch mehr als 1 A; bis dahin wandern %1.</translation>
    </message>
    <message>
        <source>The current falls as the voltages meet: below 1 A after %1, when %2 have moved.</source>
        <translation>Der Strom sinkt, während sich die Spannungen angleichen: unter 1 A nach %1, wenn %2 gewandert sind.</translation>
    </message>
    <message>
        <source>%1 tells no one charge, on the plateau: %2 between %3 % and %4 % full.</source>
        <translation>%1 zeigt im flachen Teil der Kennlinie keinen genauen Ladestand: %2 zwischen %3 % und %4 % voll.</translation>
    </message>
    <message>
        <source>%1 cannot tell how full the packs are: anywhere between %2 % and %3 % full.</source>
        <translation>%1 zeigt nicht, wie voll die Akkus sind: irgendwo zwischen %2 % und %3 %.</translation>
    </message>
    <message>
        <source>%1 cannot tell how full pack %2 is: anywhere between %3 % and %4 % full.</source>
        <translation>%1 zeigt nicht, wie voll der Akku %2 ist: irgendwo zwischen %3 % und %4 %.</translation>
    </message>
    <message>
        <source>%1 says little: %2 between %3 % and %4 % full.</source>
        <translation>%1 sagt wenig: %2 zwischen %3 % und %4 % voll.</translation>
    </message>
    <message>
        <source>%1 means %2 between %3 % and %4 % full, most likely about %5 %.</source>
        <translation>%1 heißt: %2 zwischen %3 % und %4 % voll, am ehesten etwa %5 %.</translation>
    </message>
    <message>
        <source>%1 either way, at %2 for each hundredth of the charge, is what makes it so wide.</source>
        <translation>Es ist so ungenau, weil die Anzeige um %1 nach oben oder unten abweichen kann und ein Hundertstel der Ladung nur %2 ausmacht.</translation>
    </message>
    <message>
        <source>From %1 on it lasts %2, whichever end is true.</source>
        <translation>Von %1 an reicht es %2, welches Ende auch stimmt.</translation>
    </message>
    <message>
        <source>From %1 on it lasts at least %2 and at most %3: plan with the first.</source>
        <translation>Von %1 an reicht es mindestens %2 und höchstens %3: Planen Sie mit dem ersten.</translation>
    </message>
    <message>
        <source>From %1 on it lasts %2; at worst %3, at best %4.</source>
        <translation>Von %1 an reicht es %2; schlimmstenfalls %3, bestenfalls %4.</translation>
    </message>
    <message>
        <source>Ready on %1: %2 % left, of %3 % when it was put away on %4.</source>
        <translation>Bereit am %1: %2 % übrig, von %3 % beim Einlagern am %4.</translation>
    </message>
    <message>
        <source>Not ready on %1: %2 % left, of %3 % when it was put away on %4.</source>
        <translation>Nicht bereit am %1: %2 % übrig, von %3 % beim Einlagern am %4.</translation>
    </message>
    <message>
        <source>A charger is left on it, and keeps it full.</source>
        <translation>Ein Ladegerät bleibt angeschlossen und hält voll.</translation>
    </message>
    <message>
        <source>It needs no topping up within ten years.</source>
        <translation>Es muss zehn Jahre lang nicht nachgeladen werden.</translation>
    </message>
    <message>
        <source>It should have been topped up by %1.</source>
        <translation>Es hätte bis zum %1 nachgeladen werden sollen.</translation>
    </message>
    <message>
        <source>Top it up by %1.</source>
        <translation>Laden Sie bis zum %1 nach.</translation>
    </message>
    <message>
        <source>With the master switch open it would have %1 % left.</source>
        <translation>Bei offenem Hauptschalter wären noch %1 % übrig.</translation>
    </message>
    <message>
        <source>With the master switch open it would have %1 % left, and want topping up by %2.</source>
        <translation>Bei offenem Hauptschalter wären noch %1 % übrig, und nachzuladen wäre bis zum %2.</translation>
    </message>
    <message>
        <source>No load of this file has a motor, so there is nothing that has to start. Give a load motor = {...}, or like = &quot;sump pump 1/3 hp&quot;.</source>
        <translation>Kein Verbraucher dieser Datei hat einen Motor, es muss also nichts anlaufen. Geben Sie einem Verbraucher motor = {...} oder like = &quot;sump pump 1/3 hp&quot;.</translation>
    </message>
    <message>
        <source>%1 starts (nearest limit: %2, at most %3 % used).</source>
        <translation>%1 läuft an (nächste Grenze: %2, zu höchstens %3 % genutzt).</translation>
    </message>
    <message>
        <source>%1 starts (nearest limit: %2, at most %3 % used), surely down to a charge of %4.</source>
        <translation>%1 läuft an (nächste Grenze: %2, zu höchstens %3 % genutzt), sicher bis hinab zu einem Ladestand von %4.</translation>
    </message>
    <message>
        <source>%1: %2. Switch on one by one, %3 apart: %4; so each starts.</source>
        <translation>%1: %2. Schalten Sie nacheinander ein, im Abstand von %3: %4; so läuft jeder an.</translation>
    </message>
    <message>
        <source>%1: %2. Switch on one by one, %3 apart: %4.</source>
        <translation>%1: %2. Schalten Sie nacheinander ein, im Abstand von %3: %4.</translation>
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
        <source>File and look</source>
        <translation>Datei und Darstellung</translation>
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
    <name>scenario</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Begins at</source>
        <translation>Beginnt an</translation>
    </message>
    <message>
        <source>as usual for what it feeds</source>
        <translation>wie für das Versorgte üblich</translation>
    </message>
    <message>
        <source>the bus</source>
        <translation>der Sammelschiene</translation>
    </message>
    <message>
        <source>the inverter&apos;s outlets</source>
        <translation>den Steckdosen des Wechselrichters</translation>
    </message>
    <message>
        <source>Feeds</source>
        <translation>Versorgt</translation>
    </message>
    <message>
        <source>Voltage it may lose</source>
        <translation>Zulässiger Spannungsfall</translation>
    </message>
    <message>
        <source>by what it feeds</source>
        <translation>je nach dem Versorgten</translation>
    </message>
    <message>
        <source>Neutral</source>
        <translation>Neutralleiter</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>bonded to ground</source>
        <translation>mit Erde verbunden</translation>
    </message>
    <message>
        <source>floating</source>
        <translation>erdfrei</translation>
    </message>
    <message>
        <source>switched</source>
        <translation>geschaltet</translation>
    </message>
    <message>
        <source>split</source>
        <translation>Mittelanzapfung</translation>
    </message>
    <message>
        <source>Power without end</source>
        <translation>Dauerleistung</translation>
    </message>
    <message>
        <source>Apparent power without end</source>
        <translation>Dauer-Scheinleistung</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>Power for a moment</source>
        <translation>Spitzenleistung</translation>
    </message>
    <message>
        <source>as assumed</source>
        <translation>wie angenommen</translation>
    </message>
    <message>
        <source>That moment lasts</source>
        <translation>Spitzenleistung hält an</translation>
    </message>
    <message>
        <source>Draw with nothing plugged in</source>
        <translation>Leerlaufverbrauch</translation>
    </message>
    <message>
        <source>Switches off below</source>
        <translation>Schaltet ab unter</translation>
    </message>
    <message>
        <source>Switches on again above</source>
        <translation>Schaltet wieder ein über</translation>
    </message>
    <message>
        <source>Waits before it switches off</source>
        <translation>Wartet vor dem Abschalten</translation>
    </message>
    <message>
        <source>Voltage of its outlets</source>
        <translation>Ausgangsspannung</translation>
    </message>
    <message>
        <source>Wave</source>
        <translation>Wellenform</translation>
    </message>
    <message>
        <source>sine</source>
        <translation>Sinus</translation>
    </message>
    <message>
        <source>stepped</source>
        <translation>Rechteck, gestuft</translation>
    </message>
    <message>
        <source>Switched off</source>
        <translation>Ausgeschaltet</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>Length, one way</source>
        <translation>Länge, einfach</translation>
    </message>
    <message>
        <source>Rating of the fuse</source>
        <translation>Nennstrom der Sicherung</translation>
    </message>
    <message>
        <source>Kind of fuse</source>
        <translation>Art der Sicherung</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>Flachsicherung</translation>
    </message>
    <message>
        <source>large blade</source>
        <translation>große Flachsicherung</translation>
    </message>
    <message>
        <source>strip, 30 mm</source>
        <translation>Streifensicherung, 30 mm</translation>
    </message>
    <message>
        <source>strip, 51 mm</source>
        <translation>Streifensicherung, 51 mm</translation>
    </message>
    <message>
        <source>bolted limiter (ANL)</source>
        <translation>Schraubsicherung (ANL)</translation>
    </message>
    <message>
        <source>on the terminal</source>
        <translation>auf der Polklemme</translation>
    </message>
    <message>
        <source>class T</source>
        <translation>Klasse T</translation>
    </message>
    <message>
        <source>cartridge</source>
        <translation>Rohrsicherung</translation>
    </message>
    <message>
        <source>circuit breaker</source>
        <translation>Sicherungsautomat</translation>
    </message>
    <message>
        <source>Breaks at most</source>
        <translation>Ausschaltvermögen</translation>
    </message>
    <message>
        <source>Rated for at most</source>
        <translation>Zulässig bis</translation>
    </message>
    <message>
        <source>Rating of the switch</source>
        <translation>Nennstrom des Schalters</translation>
    </message>
    <message>
        <source>Rated for</source>
        <translation>Zugelassen für</translation>
    </message>
    <message>
        <source>direct current</source>
        <translation>Gleichstrom</translation>
    </message>
    <message>
        <source>alternating current</source>
        <translation>Wechselstrom</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beides</translation>
    </message>
    <message>
        <source>Largest wire it takes</source>
        <translation>Größter Leiterquerschnitt</translation>
    </message>
    <message>
        <source>Size of the wire</source>
        <translation>Leitergröße</translation>
    </message>
    <message>
        <source>Length, out and back</source>
        <translation>Länge, hin und zurück</translation>
    </message>
    <message>
        <source>Insulation stands</source>
        <translation>Isolierung verträgt</translation>
    </message>
    <message>
        <source>Wires side by side</source>
        <translation>Leiter nebeneinander</translation>
    </message>
    <message>
        <source>Terminals stand</source>
        <translation>Klemmen vertragen</translation>
    </message>
    <message>
        <source>as the insulation</source>
        <translation>wie die Isolierung</translation>
    </message>
    <message>
        <source>Rating of the connector</source>
        <translation>Nennstrom des Steckverbinders</translation>
    </message>
    <message>
        <source>Its resistance</source>
        <translation>Sein Widerstand</translation>
    </message>
    <message>
        <source>Which connector</source>
        <translation>Welcher Steckverbinder</translation>
    </message>
    <message>
        <source>Rating of the outlet</source>
        <translation>Nennstrom der Steckdose</translation>
    </message>
    <message>
        <source>Trips on a ground fault</source>
        <translation>Mit Fehlerstromschutz</translation>
    </message>
    <message>
        <source>Length of the case</source>
        <translation>Länge des Koffers</translation>
    </message>
    <message>
        <source>Width of the case</source>
        <translation>Breite des Koffers</translation>
    </message>
    <message>
        <source>Height of the case</source>
        <translation>Höhe des Koffers</translation>
    </message>
    <message>
        <source>Made of</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>plastic</source>
        <translation>Kunststoff</translation>
    </message>
    <message>
        <source>steel</source>
        <translation>Stahl</translation>
    </message>
    <message>
        <source>Lid while in use</source>
        <translation>Deckel im Betrieb</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>Air around it</source>
        <translation>Umgebungsluft</translation>
    </message>
    <message>
        <source>Energy metered</source>
        <translation>Gemessene Energie</translation>
    </message>
    <message>
        <source>Metered over</source>
        <translation>Gemessen über</translation>
    </message>
    <message>
        <source>Volts on the plate</source>
        <translation>Volt auf dem Typenschild</translation>
    </message>
    <message>
        <source>Amperes on the plate</source>
        <translation>Ampere auf dem Typenschild</translation>
    </message>
    <message>
        <source>On for</source>
        <translation>Eingeschaltet für</translation>
    </message>
    <message>
        <source>Out of every</source>
        <translation>Von jeweils</translation>
    </message>
    <message>
        <source>Its motor</source>
        <translation>Sein Motor</translation>
    </message>
    <message>
        <source>no motor, or as listed</source>
        <translation>kein Motor, oder wie in der Liste</translation>
    </message>
    <message>
        <source>split phase</source>
        <translation>mit Hilfswicklung</translation>
    </message>
    <message>
        <source>with start capacitor</source>
        <translation>mit Anlaufkondensator</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>Lüfter</translation>
    </message>
    <message>
        <source>air conditioner</source>
        <translation>Klimagerät</translation>
    </message>
    <message>
        <source>small compressor</source>
        <translation>kleiner Verdichter</translation>
    </message>
    <message>
        <source>compressor with start capacitor</source>
        <translation>Verdichter mit Anlaufkondensator</translation>
    </message>
    <message>
        <source>submersible pump</source>
        <translation>Tauchpumpe</translation>
    </message>
    <message>
        <source>shaded pole</source>
        <translation>Spaltpolmotor</translation>
    </message>
    <message>
        <source>with brushes (hand tool)</source>
        <translation>mit Bürsten (Handwerkzeug)</translation>
    </message>
    <message>
        <source>driven electronically</source>
        <translation>elektronisch gesteuert</translation>
    </message>
    <message>
        <source>Starting current on its plate</source>
        <translation>Anlaufstrom laut Typenschild</translation>
    </message>
    <message>
        <source>Its rated power</source>
        <translation>Nennleistung</translation>
    </message>
    <message>
        <source>Running current on its plate</source>
        <translation>Nennstrom laut Typenschild</translation>
    </message>
    <message>
        <source>Plugged into</source>
        <translation>Angeschlossen an</translation>
    </message>
    <message>
        <source>inverter outlet</source>
        <translation>Steckdose des Wechselrichters</translation>
    </message>
    <message>
        <source>12 V</source>
        <translation>12 V</translation>
    </message>
    <message>
        <source>USB</source>
        <translation>USB</translation>
    </message>
    <message>
        <source>generator</source>
        <translation>Generator</translation>
    </message>
    <message>
        <source>Power while on</source>
        <translation>Leistung im Betrieb</translation>
    </message>
    <message>
        <source>On the label</source>
        <translation>Auf dem Etikett</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>at all hours</source>
        <translation>rund um die Uhr</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Kept on before others</source>
        <translation>Vorrang</translation>
    </message>
    <message>
        <source>1 life and health</source>
        <translation>1 Leben und Gesundheit</translation>
    </message>
    <message>
        <source>2 property</source>
        <translation>2 Hab und Gut</translation>
    </message>
    <message>
        <source>3 word and light</source>
        <translation>3 Nachrichten und Licht</translation>
    </message>
    <message>
        <source>4 comfort</source>
        <translation>4 Behaglichkeit</translation>
    </message>
    <message>
        <source>5 work</source>
        <translation>5 Arbeit</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>metered</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>from a label</source>
        <translation>vom Etikett</translation>
    </message>
    <message>
        <source>a guess</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>Somebody&apos;s health depends on it</source>
        <translation>Jemandes Gesundheit hängt davon ab</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>Half are over by</source>
        <translation>Die Hälfte ist vorbei nach</translation>
    </message>
    <message>
        <source>The first sky</source>
        <translation>Himmel am ersten Tag</translation>
    </message>
    <message>
        <source>storm</source>
        <translation>Sturm</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>klar</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>Warmth of the packs</source>
        <translation>Temperatur der Akkus</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Eingelagert</translation>
    </message>
    <message>
        <source>Warmth of the place</source>
        <translation>Temperatur am Ort</translation>
    </message>
    <message>
        <source>Drain that stays on</source>
        <translation>Dauernder Ruhestrom</translation>
    </message>
    <message>
        <source>none told</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>Master switch open</source>
        <translation>Hauptschalter aus</translation>
    </message>
    <message>
        <source>On a maintenance charger</source>
        <translation>Am Erhaltungsladegerät</translation>
    </message>
    <message>
        <source>Chance to last the outage, at least</source>
        <translation>Wahrscheinlichkeit, den Ausfall zu überstehen, mindestens</translation>
    </message>
    <message>
        <source>Carried in one go, at most</source>
        <translation>Höchstgewicht je Gang</translation>
    </message>
    <message>
        <source>Spent at most</source>
        <translation>Höchste Ausgaben</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>from the wall</source>
        <translation>aus der Steckdose</translation>
    </message>
    <message>
        <source>from a generator</source>
        <translation>aus einem Stromerzeuger</translation>
    </message>
    <message>
        <source>from a vehicle</source>
        <translation>aus einem Fahrzeug</translation>
    </message>
    <message>
        <source>Charging current</source>
        <translation>Ladestrom</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>Rating of the generator</source>
        <translation>Leistung des Stromerzeugers</translation>
    </message>
    <message>
        <source>lithium iron phosphate</source>
        <translation>Lithium-Eisenphosphat</translation>
    </message>
    <message>
        <source>lead, sealed (AGM)</source>
        <translation>Blei, geschlossen (AGM)</translation>
    </message>
    <message>
        <source>lead, gel</source>
        <translation>Blei, Gel</translation>
    </message>
    <message>
        <source>lead, wet</source>
        <translation>Blei, nass</translation>
    </message>
    <message>
        <source>Capacity, each</source>
        <translation>Kapazität, je Stück</translation>
    </message>
    <message>
        <source>as the first pack, or as usual for the kind</source>
        <translation>wie der erste Akku oder wie bei der Art üblich</translation>
    </message>
    <message>
        <source>Capacity rated over</source>
        <translation>Kapazität angegeben über</translation>
    </message>
    <message>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <source>How full at the start</source>
        <translation>Ladestand zu Beginn</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>Voltage measured at rest</source>
        <translation>Gemessene Ruhespannung</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>At rest before that for</source>
        <translation>Zuvor in Ruhe seit</translation>
    </message>
    <message>
        <source>Lead and connector, both ways</source>
        <translation>Leitung und Stecker, hin und zurück</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie üblich</translation>
    </message>
    <message>
        <source>Most it may give</source>
        <translation>Höchster Entladestrom</translation>
    </message>
    <message>
        <source>as usual for the kind</source>
        <translation>wie bei der Art üblich</translation>
    </message>
    <message>
        <source>Most it may take</source>
        <translation>Höchster Ladestrom</translation>
    </message>
    <message>
        <source>Its protection switches off at</source>
        <translation>Schutzschaltung trennt bei</translation>
    </message>
    <message>
        <source>Part of it that may be used</source>
        <translation>Nutzbarer Anteil</translation>
    </message>
    <message>
        <source>Age</source>
        <translation>Alter</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>half its life</source>
        <translation>halbe Lebensdauer</translation>
    </message>
    <message>
        <source>old</source>
        <translation>alt</translation>
    </message>
    <message>
        <source>Capacity found by a test</source>
        <translation>Gemessene Kapazität</translation>
    </message>
    <message>
        <source>not tested</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>Its fuse</source>
        <translation>Seine Sicherung</translation>
    </message>
    <message>
        <source>Weight, each</source>
        <translation>Gewicht, je Stück</translation>
    </message>
    <message>
        <source>Price, each</source>
        <translation>Preis, je Stück</translation>
    </message>
    <message>
        <source>Power, each</source>
        <translation>Leistung, je Stück</translation>
    </message>
    <message>
        <source>How they stand</source>
        <translation>Aufstellung</translation>
    </message>
    <message>
        <source>flat on the ground</source>
        <translation>flach am Boden</translation>
    </message>
    <message>
        <source>propped up</source>
        <translation>aufgestellt</translation>
    </message>
    <message>
        <source>turned by hand</source>
        <translation>von Hand nachgeführt</translation>
    </message>
    <message>
        <source>Tilt from level</source>
        <translation>Neigung gegen die Waagerechte</translation>
    </message>
    <message>
        <source>Faces, from north by east</source>
        <translation>Ausrichtung, von Nord über Ost</translation>
    </message>
    <message>
        <source>towards the sun at noon</source>
        <translation>zur Mittagssonne</translation>
    </message>
    <message>
        <source>Hours outside</source>
        <translation>Stunden im Freien</translation>
    </message>
    <message>
        <source>always</source>
        <translation>immer</translation>
    </message>
    <message>
        <source>Open-circuit voltage</source>
        <translation>Leerlaufspannung</translation>
    </message>
    <message>
        <source>Short-circuit current</source>
        <translation>Kurzschlussstrom</translation>
    </message>
    <message>
        <source>Joined one behind the other</source>
        <translation>In Reihe geschaltet</translation>
    </message>
    <message>
        <source>finds the best voltage (MPPT)</source>
        <translation>sucht den besten Arbeitspunkt (MPPT)</translation>
    </message>
    <message>
        <source>switches the panels through (PWM)</source>
        <translation>schaltet die Module durch (PWM)</translation>
    </message>
    <message>
        <source>Takes from the panels at most</source>
        <translation>Höchste Eingangsleistung</translation>
    </message>
    <message>
        <source>Gives to the packs at most</source>
        <translation>Höchster Ladestrom an die Akkus</translation>
    </message>
    <message>
        <source>Stands from the panels at most</source>
        <translation>Höchste Eingangsspannung</translation>
    </message>
    <message>
        <source>Latitude, north positive</source>
        <translation>Breite, Nord positiv</translation>
    </message>
    <message>
        <source>Longitude, east positive</source>
        <translation>Länge, Ost positiv</translation>
    </message>
    <message>
        <source>Height above the sea</source>
        <translation>Höhe über dem Meer</translation>
    </message>
    <message>
        <source>Clock ahead of universal time</source>
        <translation>Uhr vor der Weltzeit</translation>
    </message>
    <message>
        <source>Sun on level ground a day</source>
        <translation>Sonne auf ebener Fläche je Tag</translation>
    </message>
    <message>
        <source>Warmth of the air</source>
        <translation>Lufttemperatur</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Outage</source>
        <translation>Ausfall</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Akkus</translation>
    </message>
    <message>
        <source>Inverter</source>
        <translation>Wechselrichter</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Module</translation>
    </message>
    <message>
        <source>Charge controller</source>
        <translation>Laderegler</translation>
    </message>
    <message>
        <source>Chargers</source>
        <translation>Ladegeräte</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Lasten</translation>
    </message>
    <message>
        <source>Circuits</source>
        <translation>Stromkreise</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Koffer</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Goal</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>While it lasts</source>
        <translation>Während er dauert</translation>
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
    <name>touch::Look</name>
    <message>
        <source>How things are to look cannot be kept for the next start: %1.</source>
        <translation>Die Einstellungen der Darstellung können nicht für den nächsten Start aufbewahrt werden: %1.</translation>
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
</TS>
