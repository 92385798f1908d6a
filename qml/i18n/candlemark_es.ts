<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>AboutProgram</name>
    <message>
        <source>the screens</source>
        <translation>las pantallas</translation>
    </message>
    <message>
        <source>the plots</source>
        <translation>las gráficas</translation>
    </message>
    <message>
        <source>quantities with units</source>
        <translation>magnitudes con unidades</translation>
    </message>
    <message>
        <source>reading scenario files</source>
        <translation>la lectura de los archivos de planes</translation>
    </message>
    <message>
        <source>writing numbers</source>
        <translation>la escritura de números</translation>
    </message>
    <message>
        <source>errors as values</source>
        <translation>errores como valores</translation>
    </message>
    <message>
        <source>answers as JSON</source>
        <translation>respuestas en JSON</translation>
    </message>
    <message>
        <source>the command&apos;s arguments</source>
        <translation>los argumentos de la orden</translation>
    </message>
</context>
<context>
    <name>AboutSheet</name>
    <message>
        <source>About Candlemark</source>
        <translation>Acerca de Candlemark</translation>
    </message>
    <message>
        <source>Candlemark %1: how long a hand-built power unit lasts through an outage.</source>
        <translation>Candlemark %1: cuánto dura en un corte una unidad de energía construida a mano.</translation>
    </message>
    <message>
        <source>It is arithmetic, not approval: local codes and licensed practice decide. It opens no connection to any network itself. Only when you look for a printer or print may the printing of your system open one. Your files stay where you save them.</source>
        <translation>Es un cálculo, no una autorización: deciden las normas locales y los profesionales acreditados. El programa mismo no abre ninguna conexión de red. Solo cuando usted busca una impresora o imprime puede abrir una el servicio de impresión de su sistema. Sus archivos se quedan donde usted los guarda.</translation>
    </message>
    <message>
        <source>Copyright 2026 The Candlemark authors. This is free software: you may pass it on and change it under the GNU General Public License, version 3 or later. It comes without any warranty.</source>
        <translation>Copyright 2026 Los autores de Candlemark. Este programa es software libre: puede redistribuirlo y modificarlo según la Licencia Pública General de GNU, versión 3 o posterior. Se ofrece sin ninguna garantía.</translation>
    </message>
    <message>
        <source>Made with</source>
        <translation>Hecho con</translation>
    </message>
    <message>
        <source>%1, for %2: %3</source>
        <translation>%1, para %2: %3</translation>
    </message>
    <message>
        <source>Read the whole licence</source>
        <translation>Leer la licencia completa</translation>
    </message>
</context>
<context>
    <name>AnswerBody</name>
    <message>
        <source>Table: %1</source>
        <translation>Tabla: %1</translation>
    </message>
</context>
<context>
    <name>ApplianceSheet</name>
    <message>
        <source>Pick what it is</source>
        <translation>Elija qué es</translation>
    </message>
    <message>
        <source>Part of its name</source>
        <translation>Parte del nombre</translation>
    </message>
    <message>
        <source>Type part of a name</source>
        <translation>Escriba parte de un nombre</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>Nothing in the library is called so.</source>
        <translation>En la lista no hay nada que se llame así.</translation>
    </message>
</context>
<context>
    <name>BrokenLine</name>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>Line %1: %2. Change</source>
        <translation>Línea %1: %2. Cambiar</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Línea %1</translation>
    </message>
    <message>
        <source>Mend here</source>
        <translation>Corregir aquí</translation>
    </message>
    <message>
        <source>Mend here: %1</source>
        <translation>Corregir aquí: %1</translation>
    </message>
</context>
<context>
    <name>BuildsPage</name>
    <message>
        <source>What the build has to do</source>
        <translation>Lo que debe lograr el montaje</translation>
    </message>
</context>
<context>
    <name>BuildsPane</name>
    <message>
        <source>Thousands of outages are being run; the page stays free meanwhile.</source>
        <translation>Se calculan miles de cortes; mientras tanto puede seguir usando la página.</translation>
    </message>
    <message>
        <source>Work out packs and panels</source>
        <translation>Calcular baterías y paneles</translation>
    </message>
    <message>
        <source>Touch a cell to read what is known of that build.</source>
        <translation>Toque una casilla para leer lo que se sabe de ese montaje.</translation>
    </message>
    <message>
        <source>%1 % done</source>
        <translation>%1 % hecho</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Stop working out packs and panels</source>
        <translation>Parar el cálculo de baterías y paneles</translation>
    </message>
    <message>
        <source>A first picture, of few members.</source>
        <translation>Una primera imagen, con pocos casos.</translation>
    </message>
</context>
<context>
    <name>BuildsPlotView</name>
    <message>
        <source>Draw it against: %1</source>
        <translation>Representar según: %1</translation>
    </message>
    <message>
        <source>Touch a point or its button (packs × panels) to read what is known of that build.</source>
        <translation>Toque un punto o su botón (baterías × paneles) para leer lo que se sabe de ese montaje.</translation>
    </message>
    <message>
        <source>the build of the answer</source>
        <translation>el montaje de la respuesta</translation>
    </message>
    <message>
        <source>what the file has</source>
        <translation>lo que hay en el archivo</translation>
    </message>
    <message>
        <source>no other is cheaper and as sure; the upright line is the interval, 19 times in 20</source>
        <translation>ningún otro es más barato e igual de seguro; la línea vertical es el intervalo, 19 de cada 20 veces</translation>
    </message>
    <message>
        <source>no other is lighter and as sure; the upright line is the interval, 19 times in 20</source>
        <translation>ningún otro es más ligero e igual de seguro; la línea vertical es el intervalo, 19 de cada 20 veces</translation>
    </message>
    <message>
        <source>on the buttons: packs × panels</source>
        <translation>en los botones: baterías × paneles</translation>
    </message>
</context>
<context>
    <name>CandleLegend</name>
    <message>
        <source>packs carry</source>
        <translation>de las baterías</translation>
    </message>
    <message>
        <source>sun puts back</source>
        <translation>repone el sol</translation>
    </message>
    <message>
        <source>may be less</source>
        <translation>quizá menos</translation>
    </message>
    <message>
        <source>burnt, missing</source>
        <translation>falta</translation>
    </message>
</context>
<context>
    <name>CandlePanel</name>
    <message>
        <source>Candle</source>
        <translation>Vela</translation>
    </message>
</context>
<context>
    <name>ChanceMap</name>
    <message>
        <source>Chance of lasting, packs down and panels across</source>
        <translation>Probabilidad de durar; baterías hacia abajo y paneles hacia la derecha</translation>
    </message>
    <message>
        <source>Packs down, panels across; each figure is the chance in %</source>
        <translation>Baterías hacia abajo, paneles hacia la derecha; cada cifra es la probabilidad en %</translation>
    </message>
</context>
<context>
    <name>ChangedSheet</name>
    <message>
        <source>The file was changed elsewhere</source>
        <translation>El archivo se cambió en otro sitio</translation>
    </message>
    <message>
        <source>Since it was read here, another program or another window changed %1. Nothing was saved yet. Whichever you choose, the other text stays as a version on the File page.</source>
        <translation>Desde que se leyó aquí, otro programa u otra ventana cambió %1. Aún no se ha guardado nada. Elija lo que elija, el otro texto queda como versión en la página Archivo.</translation>
    </message>
    <message>
        <source>Since it was read here, another program or another window changed %1. Nothing was saved yet, and no versions are kept: save yours under another name to have both.</source>
        <translation>Desde que se leyó aquí, otro programa u otra ventana cambió %1. Aún no se ha guardado nada y no se conservan versiones: guarde la suya con otro nombre para tener las dos.</translation>
    </message>
    <message>
        <source>Save mine under another name</source>
        <translation>Guardar la mía con otro nombre</translation>
    </message>
    <message>
        <source>Save mine in its place</source>
        <translation>Guardar la mía en su lugar</translation>
    </message>
    <message>
        <source>Take up what the file holds now</source>
        <translation>Tomar lo que hay ahora en el archivo</translation>
    </message>
</context>
<context>
    <name>CircuitsEditor</name>
    <message>
        <source>Add a circuit</source>
        <translation>Añadir un circuito</translation>
    </message>
    <message>
        <source>Take this circuit out</source>
        <translation>Quitar este circuito</translation>
    </message>
    <message>
        <source>Its parts, from where it begins outwards</source>
        <translation>Sus piezas, desde donde empieza hacia fuera</translation>
    </message>
    <message>
        <source>Take this part out</source>
        <translation>Quitar esta pieza</translation>
    </message>
    <message>
        <source>+ fuse</source>
        <translation>+ fusible</translation>
    </message>
    <message>
        <source>+ switch</source>
        <translation>+ interruptor</translation>
    </message>
    <message>
        <source>+ wire</source>
        <translation>+ cable</translation>
    </message>
    <message>
        <source>+ connector</source>
        <translation>+ conector</translation>
    </message>
    <message>
        <source>+ outlet</source>
        <translation>+ toma</translation>
    </message>
</context>
<context>
    <name>ClockPanel</name>
    <message>
        <source>The clock is wrong</source>
        <translation>El reloj va mal</translation>
    </message>
    <message>
        <source>The power went out now</source>
        <translation>La luz se ha ido ahora</translation>
    </message>
    <message>
        <source>It is still out</source>
        <translation>Sigue sin luz</translation>
    </message>
    <message>
        <source>What time is it?</source>
        <translation>¿Qué hora es?</translation>
    </message>
    <message>
        <source>By local standard time: in summer an hour less than clocks show.</source>
        <translation>En hora estándar local: en verano, una hora menos que en los relojes.</translation>
    </message>
    <message>
        <source>−1 day</source>
        <translation>−1 día</translation>
    </message>
    <message>
        <source>A day earlier</source>
        <translation>Un día antes</translation>
    </message>
    <message>
        <source>−1 h</source>
        <translation>−1 h</translation>
    </message>
    <message>
        <source>An hour earlier</source>
        <translation>Una hora antes</translation>
    </message>
    <message>
        <source>+1 h</source>
        <translation>+1 h</translation>
    </message>
    <message>
        <source>An hour later</source>
        <translation>Una hora después</translation>
    </message>
    <message>
        <source>+1 day</source>
        <translation>+1 día</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Un día después</translation>
    </message>
    <message>
        <source>−10 min</source>
        <translation>−10 min</translation>
    </message>
    <message>
        <source>Ten minutes earlier</source>
        <translation>Diez minutos antes</translation>
    </message>
    <message>
        <source>−1 min</source>
        <translation>−1 min</translation>
    </message>
    <message>
        <source>A minute earlier</source>
        <translation>Un minuto antes</translation>
    </message>
    <message>
        <source>+1 min</source>
        <translation>+1 min</translation>
    </message>
    <message>
        <source>A minute later</source>
        <translation>Un minuto después</translation>
    </message>
    <message>
        <source>+10 min</source>
        <translation>+10 min</translation>
    </message>
    <message>
        <source>Ten minutes later</source>
        <translation>Diez minutos después</translation>
    </message>
    <message>
        <source>This is the time</source>
        <translation>Esta es la hora</translation>
    </message>
</context>
<context>
    <name>CountStepper</name>
    <message>
        <source>Less: %1</source>
        <translation>Menos: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Más: %1</translation>
    </message>
</context>
<context>
    <name>DaysKey</name>
    <message>
        <source>empty</source>
        <translation>vacía</translation>
    </message>
    <message>
        <source>loads, priority %1</source>
        <translation>aparatos, prioridad %1</translation>
    </message>
    <message>
        <source>loads</source>
        <translation>aparatos</translation>
    </message>
    <message>
        <source>sun</source>
        <translation>sol</translation>
    </message>
    <message>
        <source>night</source>
        <translation>noche</translation>
    </message>
    <message>
        <source>stored: likely, 5 and 8 of 10</source>
        <translation>guardado: probable, 5 y 8 de 10</translation>
    </message>
    <message>
        <source>stored: likely, 8 of 10</source>
        <translation>guardado: probable, 8 de 10</translation>
    </message>
    <message>
        <source>the end: likely, 8 of 10</source>
        <translation>el final: probable, 8 de 10</translation>
    </message>
</context>
<context>
    <name>DaysPlot</name>
    <message>
        <source>Stored energy, loads and sun over the outage</source>
        <translation>Energía guardada, consumo y sol durante el corte</translation>
    </message>
</context>
<context>
    <name>DaysTable</name>
    <message>
        <source>The outage, an hour a row</source>
        <translation>El corte, una hora por fila</translation>
    </message>
</context>
<context>
    <name>FaultPage</name>
    <message>
        <source>A fault of this program</source>
        <translation>Un fallo de este programa</translation>
    </message>
    <message>
        <source>What this scenario asks could not be worked out; the program failed at it. The scenario is not at fault, and no figure is shown for it. Your file is as it was, and what you changed is still here: it can be saved, copied and taken back.</source>
        <translation>Lo que pide este plan no se pudo calcular; el programa falló en ello. La culpa no es del plan, y no se muestra ninguna cifra. Su archivo está como estaba, y lo que cambió sigue aquí: se puede guardar, copiar y deshacer.</translation>
    </message>
    <message>
        <source>What it said: %1</source>
        <translation>Lo que indicó: %1</translation>
    </message>
    <message>
        <source>Back to the last text that could be worked out</source>
        <translation>Volver al último texto que se pudo calcular</translation>
    </message>
    <message>
        <source>Change it on the File page</source>
        <translation>Cambiarlo en la página Archivo</translation>
    </message>
    <message>
        <source>Copy the whole text</source>
        <translation>Copiar todo el texto</translation>
    </message>
    <message>
        <source>Open the example instead</source>
        <translation>Abrir el ejemplo en su lugar</translation>
    </message>
</context>
<context>
    <name>FieldRow</name>
    <message>
        <source>%1: %2. Change</source>
        <translation>%1: %2. Cambiar</translation>
    </message>
</context>
<context>
    <name>FieldsList</name>
    <message>
        <source>Leave it open</source>
        <translation>Dejarlo abierto</translation>
    </message>
</context>
<context>
    <name>FileActions</name>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Open a scenario file</source>
        <translation>Abrir un archivo de plan</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Save the scenario file</source>
        <translation>Guardar el archivo del plan</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Use the light look</source>
        <translation>Usar el aspecto claro</translation>
    </message>
    <message>
        <source>Use the dark look</source>
        <translation>Usar el aspecto oscuro</translation>
    </message>
    <message>
        <source>Aa</source>
        <translation>Aa</translation>
    </message>
    <message>
        <source>Theme, size of the text, units, clock and language</source>
        <translation>Colores, tamaño del texto, unidades, reloj e idioma</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuevo</translation>
    </message>
    <message>
        <source>Begin a new plan</source>
        <translation>Empezar un plan nuevo</translation>
    </message>
    <message>
        <source>Open before</source>
        <translation>Recientes</translation>
    </message>
    <message>
        <source>Files that were open before</source>
        <translation>Archivos abiertos antes</translation>
    </message>
    <message>
        <source>Save as</source>
        <translation>Guardar como</translation>
    </message>
    <message>
        <source>Save under another name</source>
        <translation>Guardar con otro nombre</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Compartir</translation>
    </message>
    <message>
        <source>Share the answer as a page or a picture</source>
        <translation>Compartir la respuesta como página o imagen</translation>
    </message>
    <message>
        <source>Look and language</source>
        <translation>Aspecto e idioma</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Help for this page</source>
        <translation>Ayuda de esta página</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Acerca de</translation>
    </message>
    <message>
        <source>About this program, with its licences</source>
        <translation>Acerca de este programa, con sus licencias</translation>
    </message>
</context>
<context>
    <name>FilePage</name>
    <message>
        <source>Compare with</source>
        <translation>Comparar con</translation>
    </message>
    <message>
        <source>Scenario files (*.toml)</source>
        <translation>Archivos de planes (*.toml)</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Title: %1. Change</source>
        <translation>Título: %1. Cambiar</translation>
    </message>
    <message>
        <source>Copy the whole text</source>
        <translation>Copiar todo el texto</translation>
    </message>
    <message>
        <source>Take up a copied text</source>
        <translation>Tomar un texto copiado</translation>
    </message>
    <message>
        <source>Compare with another file</source>
        <translation>Comparar con otro archivo</translation>
    </message>
    <message>
        <source>Versions that were saved over</source>
        <translation>Versiones sobre las que se guardó</translation>
    </message>
    <message>
        <source>None yet. The last ten are kept each time this file is saved.</source>
        <translation>Aún ninguna. Cada vez que se guarda este archivo se conservan las diez últimas.</translation>
    </message>
    <message>
        <source>take this version up; the way back stays open</source>
        <translation>tomar esta versión; se puede deshacer</translation>
    </message>
    <message>
        <source>From this build to %1</source>
        <translation>De este montaje a %1</translation>
    </message>
    <message>
        <source>What was understood of the file</source>
        <translation>Lo que se entendió del archivo</translation>
    </message>
    <message>
        <source>Part of a key</source>
        <translation>Parte de una clave</translation>
    </message>
    <message>
        <source>Type part of a key</source>
        <translation>Escriba parte de una clave</translation>
    </message>
    <message>
        <source>what the file says</source>
        <translation>lo que dice el archivo</translation>
    </message>
    <message>
        <source>all it could say</source>
        <translation>todo lo que podría decir</translation>
    </message>
    <message>
        <source>Save under another name</source>
        <translation>Guardar con otro nombre</translation>
    </message>
    <message>
        <source>Unsaved work that was kept</source>
        <translation>Trabajo sin guardar que se conservó</translation>
    </message>
    <message>
        <source>Take up the unsaved work on %1, %2</source>
        <translation>Retomar el trabajo sin guardar en %1, %2</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Apartar</translation>
    </message>
    <message>
        <source>Offer the unsaved work on %1 no longer; it stays as a version of its file</source>
        <translation>No ofrecer más el trabajo sin guardar en %1; queda como versión de su archivo</translation>
    </message>
</context>
<context>
    <name>FilePlaces</name>
    <message>
        <source>The folder around this one</source>
        <translation>La carpeta superior</translation>
    </message>
    <message>
        <source>Folder %1</source>
        <translation>Carpeta %1</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Ir a %1</translation>
    </message>
    <message>
        <source>Nothing can be saved in this folder: it belongs to somebody else or is write-protected.</source>
        <translation>En esta carpeta no se puede guardar nada: es de otra persona o está protegida contra escritura.</translation>
    </message>
    <message>
        <source>There is nothing of the kind here.</source>
        <translation>Aquí no hay nada de ese tipo.</translation>
    </message>
</context>
<context>
    <name>FileSheet</name>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Name of the file</source>
        <translation>Nombre del archivo</translation>
    </message>
    <message>
        <source>Folders and files</source>
        <translation>Carpetas y archivos</translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
</context>
<context>
    <name>FindingsList</name>
    <message>
        <source>Findings</source>
        <translation>Hallazgos</translation>
    </message>
    <message>
        <source>Nothing found that stands in the way.</source>
        <translation>No se encontró nada que lo impida.</translation>
    </message>
    <message>
        <source>Take care: %1</source>
        <translation>Atención: %1</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>How it was worked out</source>
        <translation>Cómo se calculó</translation>
    </message>
    <message>
        <source>What was assumed</source>
        <translation>Lo que se supuso</translation>
    </message>
</context>
<context>
    <name>FirstRun</name>
    <message>
        <source>Breathing machine</source>
        <translation>Aparato respiratorio</translation>
    </message>
    <message>
        <source>at night, without its heater</source>
        <translation>de noche, sin su calentador</translation>
    </message>
    <message>
        <source>Oxygen machine</source>
        <translation>Concentrador de oxígeno</translation>
    </message>
    <message>
        <source>day and night</source>
        <translation>día y noche</translation>
    </message>
    <message>
        <source>Refrigerator</source>
        <translation>Refrigerador</translation>
    </message>
    <message>
        <source>Freezer</source>
        <translation>Congelador</translation>
    </message>
    <message>
        <source>Heating blower</source>
        <translation>Ventilador de calefacción</translation>
    </message>
    <message>
        <source>of a furnace that burns gas or oil</source>
        <translation>de una caldera de gas o gasóleo</translation>
    </message>
    <message>
        <source>Sump pump</source>
        <translation>Bomba de sótano</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>one lamp in the evening</source>
        <translation>una lámpara por la noche</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>three hours a day</source>
        <translation>tres horas al día</translation>
    </message>
    <message>
        <source>Internet</source>
        <translation>Internet</translation>
    </message>
    <message>
        <source>Laptop</source>
        <translation>Portátil</translation>
    </message>
    <message>
        <source>eight hours a day</source>
        <translation>ocho horas al día</translation>
    </message>
    <message>
        <source>Television</source>
        <translation>Televisor</translation>
    </message>
    <message>
        <source>in the evening</source>
        <translation>por la noche</translation>
    </message>
    <message>
        <source>Fan</source>
        <translation>Ventilador</translation>
    </message>
    <message>
        <source>at night</source>
        <translation>de noche</translation>
    </message>
    <message>
        <source>Lithium iron phosphate, 12.8 V 100 Ah</source>
        <translation>Litio-ferrofosfato, 12,8 V 100 Ah</translation>
    </message>
    <message>
        <source>light, about 11 kg</source>
        <translation>ligera, unos 11 kg</translation>
    </message>
    <message>
        <source>Lithium iron phosphate, 12.8 V 200 Ah</source>
        <translation>Litio-ferrofosfato, 12,8 V 200 Ah</translation>
    </message>
    <message>
        <source>Sealed lead (AGM), 12 V 100 Ah</source>
        <translation>Plomo sellado (AGM), 12 V 100 Ah</translation>
    </message>
    <message>
        <source>does not spill, about 30 kg</source>
        <translation>no derrama, unos 30 kg</translation>
    </message>
    <message>
        <source>Gel lead, 12 V 100 Ah</source>
        <translation>Plomo de gel, 12 V 100 Ah</translation>
    </message>
    <message>
        <source>Wet lead, 12 V 100 Ah</source>
        <translation>Plomo abierto, 12 V 100 Ah</translation>
    </message>
    <message>
        <source>caps to fill up with water</source>
        <translation>con tapones para rellenar de agua</translation>
    </message>
    <message>
        <source>100 W each</source>
        <translation>100 W cada uno</translation>
    </message>
    <message>
        <source>200 W each</source>
        <translation>200 W cada uno</translation>
    </message>
    <message>
        <source>400 W each</source>
        <translation>400 W cada uno</translation>
    </message>
    <message>
        <source>a panel for a roof</source>
        <translation>un panel de tejado</translation>
    </message>
    <message>
        <source>One night</source>
        <translation>Una noche</translation>
    </message>
    <message>
        <source>One day</source>
        <translation>Un día</translation>
    </message>
    <message>
        <source>Two days</source>
        <translation>Dos días</translation>
    </message>
    <message>
        <source>Four days</source>
        <translation>Cuatro días</translation>
    </message>
    <message>
        <source>A week</source>
        <translation>Una semana</translation>
    </message>
    <message>
        <source>Nobody knows</source>
        <translation>Nadie lo sabe</translation>
    </message>
    <message>
        <source>half of such outages end within two days</source>
        <translation>la mitad de esos cortes acaba antes de dos días</translation>
    </message>
</context>
<context>
    <name>FirstRunPage</name>
    <message>
        <source>Question %1 of %2: %3</source>
        <translation>Pregunta %1 de %2: %3</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántas</translation>
    </message>
    <message>
        <source>Place: %1. Change</source>
        <translation>Lugar: %1. Cambiar</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
    <message>
        <source>Leave the questions; what was answered stays</source>
        <translation>Dejar las preguntas; lo contestado se queda</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Done: make a file of it</source>
        <translation>Listo: hacer con ello un archivo</translation>
    </message>
    <message>
        <source>To the next question</source>
        <translation>A la pregunta siguiente</translation>
    </message>
</context>
<context>
    <name>Fold</name>
    <message>
        <source>Hide: %1</source>
        <translation>Ocultar: %1</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Mostrar: %1</translation>
    </message>
</context>
<context>
    <name>GaugePane</name>
    <message>
        <source>The voltmeter shows</source>
        <translation>El voltímetro marca</translation>
    </message>
    <message>
        <source>touch to type the volts</source>
        <translation>toque para escribir los voltios</translation>
    </message>
    <message>
        <source>%1: %2. Change</source>
        <translation>%1: %2. Cambiar</translation>
    </message>
    <message>
        <source>At rest before that for</source>
        <translation>En reposo antes, durante</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>an hour</source>
        <translation>una hora</translation>
    </message>
    <message>
        <source>a night</source>
        <translation>una noche</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>un día</translation>
    </message>
</context>
<context>
    <name>HeardButton</name>
    <message>
        <source>not available now</source>
        <translation>no disponible ahora</translation>
    </message>
</context>
<context>
    <name>HelpSheet</name>
    <message>
        <source>Each kind of pack you have: how full it is, how old, what may be joined to what. Touch one to change it.</source>
        <translation>Cada tipo de batería que tiene: cuánta carga le queda, qué edad tiene y qué se puede unir con qué. Toque una para cambiarla.</translation>
    </message>
    <message>
        <source>Under “What the voltmeter means”, type what you read: you see how full the pack may be, and how sure that is.</source>
        <translation>En “Lo que significa el voltímetro”, escriba lo que lee: verá cuánta carga puede tener la batería y con qué seguridad.</translation>
    </message>
    <message>
        <source>Before two packs are joined, look at “Plugging one onto the rest”: it says what current would flow.</source>
        <translation>Antes de unir dos baterías, mire “Conectar una con las demás”: dice qué corriente pasaría.</translation>
    </message>
    <message>
        <source>How many packs and panels reach the chance you want. Each cell is one build: packs down, panels across.</source>
        <translation>Cuántas baterías y paneles alcanzan la probabilidad que desea. Cada casilla es un montaje: baterías hacia abajo, paneles hacia la derecha.</translation>
    </message>
    <message>
        <source>The same days of sun and the same doubts are run for every build, so that one is fairly held against the other.</source>
        <translation>Para cada montaje se calculan los mismos días de sol y las mismas dudas, para que la comparación sea justa.</translation>
    </message>
    <message>
        <source>Whether a motor starts on this unit, and what stands in its way: the inverter, the battery, a fuse or the cold.</source>
        <translation>Si un motor arranca con esta unidad y qué se lo impide: el inversor, la batería, un fusible o el frío.</translation>
    </message>
    <message>
        <source>Pick a tool or pump; the bars show how much of each limit it takes.</source>
        <translation>Elija una herramienta o una bomba; las barras muestran cuánto toma de cada límite.</translation>
    </message>
    <message>
        <source>Whether every fuse, wire, switch and connector suits what is drawn through it, from the bus outwards.</source>
        <translation>Si cada fusible, cable, interruptor y conector es adecuado para lo que pasa por él, desde la barra colectora hacia fuera.</translation>
    </message>
    <message>
        <source>A part that fails is named with what would fit. A drawing can be printed.</source>
        <translation>De una pieza que no sirve se dice cuál serviría. El dibujo se puede imprimir.</translation>
    </message>
    <message>
        <source>Until when the loads are carried: nine times in ten, most likely, and the chance to the end.</source>
        <translation>Hasta cuándo aguantan los aparatos: nueve de cada diez veces, lo más probable, y la probabilidad de llegar al final.</translation>
    </message>
    <message>
        <source>Slide along the plot to read an hour. Change packs, panels or days below; the answer follows.</source>
        <translation>Deslice por la gráfica para leer una hora. Cambie abajo baterías, paneles o días; la respuesta se adapta.</translation>
    </message>
    <message>
        <source>The candle burns down through the days; what the sun puts back lets it grow.</source>
        <translation>La vela se consume a lo largo de los días; lo que repone el sol la hace crecer.</translation>
    </message>
    <message>
        <source>What must stay on, and when. A figure read from a plug-in meter counts more than a label, a label more than a guess.</source>
        <translation>Qué debe seguir encendido, y cuándo. Una cifra leída en un medidor de enchufe vale más que una etiqueta, y una etiqueta más que una estimación.</translation>
    </message>
    <message>
        <source>The priority says who goes without first: 1 is life and health, 5 is work.</source>
        <translation>La prioridad dice quién se queda antes sin energía: 1 es vida y salud, 5 es trabajo.</translation>
    </message>
    <message>
        <source>What the panels give back in that place and month, from dull to bright days.</source>
        <translation>Lo que devuelven los paneles en ese lugar y ese mes, en días de grises a claros.</translation>
    </message>
    <message>
        <source>Turn the panel with a finger, or with the buttons, to see what another tilt gives.</source>
        <translation>Gire el panel con el dedo, o con los botones, para ver lo que da otra inclinación.</translation>
    </message>
    <message>
        <source>While the outage runs: until when from now, what to switch off next, what to read next.</source>
        <translation>Durante el corte: hasta cuándo desde ahora, qué apagar después, qué leer después.</translation>
    </message>
    <message>
        <source>What you write down is kept in your file and never changed.</source>
        <translation>Lo que anota se guarda en su archivo y no se cambia nunca.</translation>
    </message>
    <message>
        <source>Whether a pack that stood for months is ready, and when it must be topped up.</source>
        <translation>Si una batería guardada durante meses está lista, y cuándo hay que recargarla.</translation>
    </message>
    <message>
        <source>A card for the lid, a report, the wiring: on paper, to be read without the program.</source>
        <translation>Una tarjeta para la tapa, un informe, el cableado: en papel, para leer sin el programa.</translation>
    </message>
    <message>
        <source>Your file is a plain text. Every key it has or could have can be changed here, with what holds where it is silent.</source>
        <translation>Su archivo es texto sencillo. Aquí se puede cambiar cada clave que tiene o podría tener, y se ve qué vale donde no dice nada.</translation>
    </message>
    <message>
        <source>The last ten versions you saved over can be had again.</source>
        <translation>Se pueden recuperar las diez últimas versiones sobre las que guardó.</translation>
    </message>
    <message>
        <source>1 to 9, 0</source>
        <translation>1 a 9, 0</translation>
    </message>
    <message>
        <source>a page, as numbered beside it</source>
        <translation>una página, según el número a su lado</translation>
    </message>
    <message>
        <source>Ctrl PageUp, Ctrl PageDown</source>
        <translation>Ctrl RePág, Ctrl AvPág</translation>
    </message>
    <message>
        <source>the page before, the page after</source>
        <translation>la página anterior, la siguiente</translation>
    </message>
    <message>
        <source>PageUp, PageDown, Home, End</source>
        <translation>RePág, AvPág, Inicio, Fin</translation>
    </message>
    <message>
        <source>move what is shown</source>
        <translation>mover lo que se muestra</translation>
    </message>
    <message>
        <source>Tab, arrows, Space, Return</source>
        <translation>Tab, flechas, espacio, Intro</translation>
    </message>
    <message>
        <source>go through and press</source>
        <translation>recorrer y pulsar</translation>
    </message>
    <message>
        <source>Ctrl N, O, S, Shift S</source>
        <translation>Ctrl N, O, S, Mayús S</translation>
    </message>
    <message>
        <source>new, open, save, save as</source>
        <translation>nuevo, abrir, guardar, guardar como</translation>
    </message>
    <message>
        <source>Ctrl Z, Ctrl Y</source>
        <translation>Ctrl Z, Ctrl Y</translation>
    </message>
    <message>
        <source>take back, make again</source>
        <translation>deshacer, rehacer</translation>
    </message>
    <message>
        <source>Ctrl Q</source>
        <translation>Ctrl Q</translation>
    </message>
    <message>
        <source>close; unsaved work is kept</source>
        <translation>cerrar; lo no guardado se conserva</translation>
    </message>
    <message>
        <source>F1, Escape</source>
        <translation>F1, Esc</translation>
    </message>
    <message>
        <source>this help, close what lies above</source>
        <translation>esta ayuda, cerrar lo que está encima</translation>
    </message>
    <message>
        <source>Help: %1</source>
        <translation>Ayuda: %1</translation>
    </message>
    <message>
        <source>Every page: the sentence on top is the answer to the file as it stands. Stops and cautions say what would mend them. Figures are arithmetic, not approval.</source>
        <translation>En todas las páginas, la frase de arriba es la respuesta al archivo tal como está. Los altos y las precauciones dicen qué los remediaría. Las cifras son un cálculo, no una autorización.</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
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
        <translation>%1 media hora antes</translation>
    </message>
    <message>
        <source>%1 half an hour later</source>
        <translation>%1 media hora después</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>Take %1 out</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>+ morning</source>
        <translation>+ mañana</translation>
    </message>
    <message>
        <source>+ evening</source>
        <translation>+ tarde</translation>
    </message>
    <message>
        <source>+ night</source>
        <translation>+ noche</translation>
    </message>
</context>
<context>
    <name>LoadsPage</name>
    <message>
        <source>Add a load</source>
        <translation>Añadir un aparato</translation>
    </message>
    <message>
        <source>Nothing is switched on yet.</source>
        <translation>Aún no hay nada encendido.</translation>
    </message>
    <message>
        <source>◀  All loads</source>
        <translation>◀  Todos los aparatos</translation>
    </message>
    <message>
        <source>Back to all loads</source>
        <translation>Volver a todos los aparatos</translation>
    </message>
    <message>
        <source>Take this load out</source>
        <translation>Quitar este aparato</translation>
    </message>
</context>
<context>
    <name>LogList</name>
    <message>
        <source>Written down so far</source>
        <translation>Anotado hasta ahora</translation>
    </message>
    <message>
        <source>Nothing is written down yet.</source>
        <translation>Aún no se ha anotado nada.</translation>
    </message>
    <message>
        <source>Strike</source>
        <translation>Tachar</translation>
    </message>
    <message>
        <source>Strike: %1</source>
        <translation>Tachar: %1</translation>
    </message>
</context>
<context>
    <name>LookSheet</name>
    <message>
        <source>How it is shown</source>
        <translation>Cómo se muestra</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Colores</translation>
    </message>
    <message>
        <source>dark, for the night</source>
        <translation>oscuro, para la noche</translation>
    </message>
    <message>
        <source>light, for daylight</source>
        <translation>claro, para el día</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>como el sistema</translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Movimiento</translation>
    </message>
    <message>
        <source>lists glide on</source>
        <translation>las listas se deslizan</translation>
    </message>
    <message>
        <source>nothing moves by itself</source>
        <translation>nada se mueve solo</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>métricas</translation>
    </message>
    <message>
        <source>with °F, lb and ft beside</source>
        <translation>con °F, lb y ft al lado</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Reloj</translation>
    </message>
    <message>
        <source>24 hours</source>
        <translation>24 horas</translation>
    </message>
    <message>
        <source>12 hours, AM and PM</source>
        <translation>12 horas, a. m. y p. m.</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>strong contrast</source>
        <translation>contraste fuerte</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Open a scenario</source>
        <translation>Abrir un plan</translation>
    </message>
    <message>
        <source>Scenario files (*.toml)</source>
        <translation>Archivos de planes (*.toml)</translation>
    </message>
    <message>
        <source>Save the scenario</source>
        <translation>Guardar el plan</translation>
    </message>
    <message>
        <source>No file is open.</source>
        <translation>No hay ningún archivo abierto.</translation>
    </message>
    <message>
        <source>Let it go to open it</source>
        <translation>Suéltelo para abrirlo</translation>
    </message>
</context>
<context>
    <name>MendPage</name>
    <message>
        <source>One thing in this file cannot be read. Your file is as it was.</source>
        <translation>Una cosa de este archivo no se puede leer. Su archivo está como estaba.</translation>
    </message>
    <message>
        <source>%1 things in this file cannot be read. Your file is as it was.</source>
        <translation>%1 cosas de este archivo no se pueden leer. Su archivo está como estaba.</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>To the next thing that cannot be read</source>
        <translation>A la siguiente cosa que no se puede leer</translation>
    </message>
    <message>
        <source>the whole text</source>
        <translation>todo el texto</translation>
    </message>
    <message>
        <source>Lines of the file</source>
        <translation>Líneas del archivo</translation>
    </message>
</context>
<context>
    <name>MomentBar</name>
    <message>
        <source>An hour earlier</source>
        <translation>Una hora antes</translation>
    </message>
    <message>
        <source>An hour later</source>
        <translation>Una hora después</translation>
    </message>
    <message>
        <source>Plot</source>
        <translation>Gráfica</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Show the plot</source>
        <translation>Mostrar la gráfica</translation>
    </message>
    <message>
        <source>Show as a table</source>
        <translation>Mostrar como tabla</translation>
    </message>
    <message>
        <source>%1, %2. How it was worked out</source>
        <translation>%1, %2. Cómo se calculó</translation>
    </message>
    <message>
        <source>More of the plot</source>
        <translation>Más de la gráfica</translation>
    </message>
    <message>
        <source>Nearer to this hour</source>
        <translation>Más cerca de esta hora</translation>
    </message>
</context>
<context>
    <name>MomentField</name>
    <message>
        <source>%1 earlier</source>
        <translation>%1 antes</translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation>%1 después</translation>
    </message>
    <message>
        <source>month</source>
        <translation>mes</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>hora</translation>
    </message>
</context>
<context>
    <name>NewSheet</name>
    <message>
        <source>Open before</source>
        <translation>Recientes</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>From what I have</source>
        <translation>Con lo que tengo</translation>
    </message>
    <message>
        <source>Begin from what I have: five short questions</source>
        <translation>Empezar con lo que tengo: cinco preguntas breves</translation>
    </message>
    <message>
        <source>Open before, each with the answer it had</source>
        <translation>Recientes, cada uno con la respuesta que tenía</translation>
    </message>
    <message>
        <source>No file was open before.</source>
        <translation>Todavía no se ha abierto ningún archivo.</translation>
    </message>
    <message>
        <source>It is no longer there.</source>
        <translation>Ya no está ahí.</translation>
    </message>
    <message>
        <source>Take %1 from this list; the file stays</source>
        <translation>Quitar %1 de esta lista; el archivo se queda</translation>
    </message>
    <message>
        <source>Worked examples, to change into your own</source>
        <translation>Ejemplos resueltos, para convertirlos en el suyo</translation>
    </message>
</context>
<context>
    <name>NoteButtons</name>
    <message>
        <source>Volts</source>
        <translation>Voltios</translation>
    </message>
    <message>
        <source>Write down the volts or the display of a pack</source>
        <translation>Anotar los voltios o la pantalla de una batería</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Medidor</translation>
    </message>
    <message>
        <source>Write down a plug-in meter</source>
        <translation>Anotar un medidor de enchufe</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Write down what the controller counted today</source>
        <translation>Anotar lo que el controlador contó hoy</translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>Write down a thermometer</source>
        <translation>Anotar un termómetro</translation>
    </message>
    <message>
        <source>Switched</source>
        <translation>Apagado</translation>
    </message>
    <message>
        <source>Write down what was switched on or off</source>
        <translation>Anotar qué se encendió o se apagó</translation>
    </message>
    <message>
        <source>Happened</source>
        <translation>Suceso</translation>
    </message>
    <message>
        <source>Write down what happened</source>
        <translation>Anotar lo que pasó</translation>
    </message>
</context>
<context>
    <name>NoteEnd</name>
    <message>
        <source>Write it down</source>
        <translation>Anotarlo</translation>
    </message>
</context>
<context>
    <name>NotePad</name>
    <message>
        <source>in how long</source>
        <translation>en cuánto tiempo</translation>
    </message>
    <message>
        <source>what is drawn</source>
        <translation>lo que se toma</translation>
    </message>
    <message>
        <source>the display shows</source>
        <translation>la pantalla muestra</translation>
    </message>
    <message>
        <source>the voltmeter shows</source>
        <translation>el voltímetro marca</translation>
    </message>
    <message>
        <source>the meter counted</source>
        <translation>el medidor contó</translation>
    </message>
    <message>
        <source>the controller counted today</source>
        <translation>el controlador contó hoy</translation>
    </message>
    <message>
        <source>the thermometer shows</source>
        <translation>el termómetro marca</translation>
    </message>
    <message>
        <source>below nought</source>
        <translation>bajo cero</translation>
    </message>
    <message>
        <source>Take the last sign away</source>
        <translation>Borrar el último signo</translation>
    </message>
    <message>
        <source>decimal mark</source>
        <translation>separador decimal</translation>
    </message>
</context>
<context>
    <name>NoteSheet</name>
    <message>
        <source>Volts or display</source>
        <translation>Voltios o pantalla</translation>
    </message>
    <message>
        <source>Plug-in meter</source>
        <translation>Medidor de enchufe</translation>
    </message>
    <message>
        <source>Sun today</source>
        <translation>El sol de hoy</translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation>Termómetro</translation>
    </message>
    <message>
        <source>Switched on or off</source>
        <translation>Encendido o apagado</translation>
    </message>
    <message>
        <source>It happened</source>
        <translation>Pasó esto</translation>
    </message>
    <message>
        <source>%1 of %2 packs</source>
        <translation>%1 de %2 baterías</translation>
    </message>
    <message>
        <source>One pack fewer</source>
        <translation>Una batería menos</translation>
    </message>
    <message>
        <source>One pack more</source>
        <translation>Una batería más</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>hacia %1</translation>
    </message>
    <message>
        <source>−6 h</source>
        <translation>−6 h</translation>
    </message>
    <message>
        <source>Expected six hours earlier</source>
        <translation>Se espera seis horas antes</translation>
    </message>
    <message>
        <source>−1 h</source>
        <translation>−1 h</translation>
    </message>
    <message>
        <source>Expected an hour earlier</source>
        <translation>Se espera una hora antes</translation>
    </message>
    <message>
        <source>+1 h</source>
        <translation>+1 h</translation>
    </message>
    <message>
        <source>Expected an hour later</source>
        <translation>Se espera una hora después</translation>
    </message>
    <message>
        <source>+6 h</source>
        <translation>+6 h</translation>
    </message>
    <message>
        <source>Expected six hours later</source>
        <translation>Se espera seis horas después</translation>
    </message>
    <message>
        <source>An hour earlier</source>
        <translation>Una hora antes</translation>
    </message>
    <message>
        <source>−10 min</source>
        <translation>−10 min</translation>
    </message>
    <message>
        <source>Ten minutes earlier</source>
        <translation>Diez minutos antes</translation>
    </message>
    <message>
        <source>+10 min</source>
        <translation>+10 min</translation>
    </message>
    <message>
        <source>Ten minutes later</source>
        <translation>Diez minutos después</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>Back to now</source>
        <translation>Volver a ahora</translation>
    </message>
</context>
<context>
    <name>NothingOpenPage</name>
    <message>
        <source>Nothing is open, so there is nothing to reckon with yet.</source>
        <translation>No hay nada abierto, así que aún no hay con qué calcular.</translation>
    </message>
    <message>
        <source>Begin from what I have</source>
        <translation>Empezar con lo que tengo</translation>
    </message>
    <message>
        <source>Open a file</source>
        <translation>Abrir un archivo</translation>
    </message>
    <message>
        <source>Begin with a worked example</source>
        <translation>Empezar con un ejemplo resuelto</translation>
    </message>
</context>
<context>
    <name>NoticeStrip</name>
    <message>
        <source>Put this notice away</source>
        <translation>Apartar este aviso</translation>
    </message>
</context>
<context>
    <name>NowPage</name>
    <message>
        <source>Written down. %1</source>
        <translation>Anotado. %1</translation>
    </message>
    <message>
        <source>Struck. It stays readable.</source>
        <translation>Tachado. Sigue siendo legible.</translation>
    </message>
    <message>
        <source>What stands behind it</source>
        <translation>Lo que hay detrás</translation>
    </message>
</context>
<context>
    <name>NowSentences</name>
    <message>
        <source>Working it out …</source>
        <translation>Calculando …</translation>
    </message>
</context>
<context>
    <name>NumberPad</name>
    <message>
        <source>reads as %1</source>
        <translation>se lee como %1</translation>
    </message>
    <message>
        <source>for example %1</source>
        <translation>por ejemplo %1</translation>
    </message>
    <message>
        <source>Take the last sign away</source>
        <translation>Borrar el último signo</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Pegar</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>decimal mark</source>
        <translation>separador decimal</translation>
    </message>
    <message>
        <source>divided by</source>
        <translation>dividido por</translation>
    </message>
</context>
<context>
    <name>PacksPage</name>
    <message>
        <source>Add another kind of pack</source>
        <translation>Añadir otro tipo de batería</translation>
    </message>
    <message>
        <source>Plugging one onto the rest</source>
        <translation>Conectar una con las demás</translation>
    </message>
    <message>
        <source>◀  All packs</source>
        <translation>◀  Todas las baterías</translation>
    </message>
    <message>
        <source>Back to all packs</source>
        <translation>Volver a todas las baterías</translation>
    </message>
    <message>
        <source>Take this kind out</source>
        <translation>Quitar este tipo</translation>
    </message>
    <message>
        <source>What the voltmeter means</source>
        <translation>Lo que significa el voltímetro</translation>
    </message>
</context>
<context>
    <name>PageBar</name>
    <message>
        <source>Pages</source>
        <translation>Páginas</translation>
    </message>
    <message>
        <source>%1 ▴</source>
        <translation>%1 ▴</translation>
    </message>
    <message>
        <source>Pages; this is %1</source>
        <translation>Páginas; esta es %1</translation>
    </message>
    <message>
        <source>All pages; this is %1</source>
        <translation>Todas las páginas; esta es %1</translation>
    </message>
</context>
<context>
    <name>PageButton</name>
    <message>
        <source>Key %1</source>
        <translation>Tecla %1</translation>
    </message>
</context>
<context>
    <name>PageList</name>
    <message>
        <source>Build</source>
        <translation>Construir</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planear</translation>
    </message>
    <message>
        <source>Live</source>
        <translation>Durante</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Paper and file</source>
        <translation>Papel y archivo</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Baterías</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántas</translation>
    </message>
    <message>
        <source>Starting</source>
        <translation>Arranque</translation>
    </message>
    <message>
        <source>Wiring</source>
        <translation>Cables</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Aparatos</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>Reserva</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
</context>
<context>
    <name>PageRail</name>
    <message>
        <source>Pages</source>
        <translation>Páginas</translation>
    </message>
</context>
<context>
    <name>PagesSheet</name>
    <message>
        <source>Pages</source>
        <translation>Páginas</translation>
    </message>
</context>
<context>
    <name>PinRow</name>
    <message>
        <source>What was found then</source>
        <translation>Lo que se halló a esa hora</translation>
    </message>
</context>
<context>
    <name>PlaceSheet</name>
    <message>
        <source>Pick the nearest place</source>
        <translation>Elija el lugar más cercano</translation>
    </message>
    <message>
        <source>Part of its name</source>
        <translation>Parte del nombre</translation>
    </message>
    <message>
        <source>Type part of a name</source>
        <translation>Escriba parte de un nombre</translation>
    </message>
    <message>
        <source>A place of your own, in figures</source>
        <translation>Un lugar propio, en cifras</translation>
    </message>
    <message>
        <source>No built-in place is called so. Give your own in figures.</source>
        <translation>Ningún lugar incluido se llama así. Dé el suyo en cifras.</translation>
    </message>
</context>
<context>
    <name>PrintPage</name>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Save the plot</source>
        <translation>Guardar la gráfica</translation>
    </message>
    <message>
        <source>Numbers (*.csv)</source>
        <translation>Números (*.csv)</translation>
    </message>
    <message>
        <source>Drawing (*.svg)</source>
        <translation>Dibujo (*.svg)</translation>
    </message>
    <message>
        <source>To take along on paper</source>
        <translation>Para llevar en papel</translation>
    </message>
    <message>
        <source>Card for the lid</source>
        <translation>Tarjeta para la tapa</translation>
    </message>
    <message>
        <source>one page, to read at night</source>
        <translation>una página, para leer de noche</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Informe</translation>
    </message>
    <message>
        <source>every answer with its working</source>
        <translation>cada respuesta con su cálculo</translation>
    </message>
    <message>
        <source>Wiring sheet</source>
        <translation>Hoja de cableado</translation>
    </message>
    <message>
        <source>the build and its fuses</source>
        <translation>el montaje y sus fusibles</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>8½ × 11 in</source>
        <translation>8½ × 11 in</translation>
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
        <translation>Papel %1</translation>
    </message>
    <message>
        <source>Being made …</source>
        <translation>En preparación …</translation>
    </message>
    <message>
        <source>Save the card as PDF</source>
        <translation>Guardar la tarjeta en PDF</translation>
    </message>
    <message>
        <source>Save the report as PDF</source>
        <translation>Guardar el informe en PDF</translation>
    </message>
    <message>
        <source>Save the wiring sheet as PDF</source>
        <translation>Guardar la hoja de cableado en PDF</translation>
    </message>
    <message>
        <source>Plots, as drawings or as numbers</source>
        <translation>Gráficas, como dibujos o como números</translation>
    </message>
    <message>
        <source>Save as a drawing: %1</source>
        <translation>Guardar como dibujo: %1</translation>
    </message>
    <message>
        <source>Save as numbers: %1</source>
        <translation>Guardar como números: %1</translation>
    </message>
    <message>
        <source>Page before</source>
        <translation>Página anterior</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Página siguiente</translation>
    </message>
    <message>
        <source>Show the whole width</source>
        <translation>Mostrar todo el ancho</translation>
    </message>
    <message>
        <source>Show it larger</source>
        <translation>Mostrar más grande</translation>
    </message>
    <message>
        <source>Print on a printer</source>
        <translation>Imprimir en una impresora</translation>
    </message>
</context>
<context>
    <name>PrinterSheet</name>
    <message>
        <source>Print on</source>
        <translation>Imprimir en</translation>
    </message>
    <message>
        <source>This computer knows no printer. Save the PDF, and print it where there is one.</source>
        <translation>Este equipo no conoce ninguna impresora. Guarde el PDF e imprímalo donde haya una.</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>This cannot be answered yet.</source>
        <translation>Esto aún no se puede responder.</translation>
    </message>
    <message>
        <source>What stands in the way is listed below.</source>
        <translation>Lo que lo impide se indica abajo.</translation>
    </message>
    <message>
        <source>%1 while on (%2 to %3)</source>
        <translation>%1 encendido (de %2 a %3)</translation>
    </message>
    <message>
        <source>%1, on %2 of the time</source>
        <translation>%1, encendido el %2 del tiempo</translation>
    </message>
    <message>
        <source>night</source>
        <translation>noche</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>%1 stored</source>
        <translation>%1 guardados</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>loads go without</source>
        <translation>los aparatos se quedan sin energía</translation>
    </message>
    <message>
        <source>loads %1</source>
        <translation>aparatos %1</translation>
    </message>
    <message>
        <source>sun %1</source>
        <translation>sol %1</translation>
    </message>
    <message>
        <source>out</source>
        <translation>sin luz</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>Burns %1 of the %2 that the outage lasts.</source>
        <translation>Arde %1 de los %2 que dura el corte.</translation>
    </message>
    <message>
        <source>This file cannot be used yet.</source>
        <translation>Este archivo aún no se puede usar.</translation>
    </message>
    <message>
        <source>How its use is known</source>
        <translation>Cómo se conoce su consumo</translation>
    </message>
    <message>
        <source>plug-in meter</source>
        <translation>medidor de enchufe</translation>
    </message>
    <message>
        <source>energy over some time</source>
        <translation>energía en un tiempo</translation>
    </message>
    <message>
        <source>yearly label</source>
        <translation>etiqueta anual</translation>
    </message>
    <message>
        <source>kWh a year</source>
        <translation>kWh al año</translation>
    </message>
    <message>
        <source>nameplate</source>
        <translation>placa</translation>
    </message>
    <message>
        <source>volts and amperes</source>
        <translation>voltios y amperios</translation>
    </message>
    <message>
        <source>power</source>
        <translation>potencia</translation>
    </message>
    <message>
        <source>watts while on</source>
        <translation>vatios mientras funciona</translation>
    </message>
    <message>
        <source>While switched on it runs</source>
        <translation>Encendido, funciona</translation>
    </message>
    <message>
        <source>all the time</source>
        <translation>todo el tiempo</translation>
    </message>
    <message>
        <source>on and off</source>
        <translation>a ratos</translation>
    </message>
    <message>
        <source>full</source>
        <translation>llena</translation>
    </message>
    <message>
        <source>this program</source>
        <translation>este programa</translation>
    </message>
    <message>
        <source>as %1</source>
        <translation>como %1</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1 on average</source>
        <translation>%1 de media</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 of every %2</source>
        <translation>%1 de cada %2</translation>
    </message>
    <message>
        <source>tested: %1</source>
        <translation>medida: %1</translation>
    </message>
    <message>
        <source>%1 full</source>
        <translation>%1 de carga</translation>
    </message>
    <message>
        <source>lead %1</source>
        <translation>cable %1</translation>
    </message>
    <message>
        <source>%1 a day</source>
        <translation>%1 al día</translation>
    </message>
    <message>
        <source>The chance lies between %1 and %2 in 100, as %3 members tell it.</source>
        <translation>La probabilidad está entre %1 y %2 de 100, según %3 casos calculados.</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>%1 cada una</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>fuse %1</source>
        <translation>fusible %1</translation>
    </message>
    <message>
        <source>switch %1</source>
        <translation>interruptor %1</translation>
    </message>
    <message>
        <source>wire %1</source>
        <translation>cable %1</translation>
    </message>
    <message>
        <source>connector %1</source>
        <translation>conector %1</translation>
    </message>
    <message>
        <source>outlet %1</source>
        <translation>toma %1</translation>
    </message>
    <message>
        <source>panels %1</source>
        <translation>paneles %1</translation>
    </message>
    <message>
        <source>pack</source>
        <translation>batería</translation>
    </message>
    <message>
        <source>bus</source>
        <translation>barra colectora</translation>
    </message>
    <message>
        <source>inverter</source>
        <translation>inversor</translation>
    </message>
    <message>
        <source>load</source>
        <translation>aparato</translation>
    </message>
    <message>
        <source>fuse</source>
        <translation>fusible</translation>
    </message>
    <message>
        <source>switch</source>
        <translation>interruptor</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>cable</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>conector</translation>
    </message>
    <message>
        <source>outlet</source>
        <translation>toma</translation>
    </message>
    <message>
        <source>%1 is stored as this hour begins.</source>
        <translation>%1 hay guardados al empezar esta hora.</translation>
    </message>
    <message>
        <source>+ %1 comes from the sun, which offers %2.</source>
        <translation>+ %1 vienen del sol, que ofrece %2.</translation>
    </message>
    <message>
        <source>+ %1 comes from other chargers.</source>
        <translation>+ %1 vienen de otros cargadores.</translation>
    </message>
    <message>
        <source>− %1 goes to the loads.</source>
        <translation>− %1 van a los aparatos.</translation>
    </message>
    <message>
        <source>− %1 is lost in inverter, wiring and packs.</source>
        <translation>− %1 se pierden en inversor, cables y baterías.</translation>
    </message>
    <message>
        <source>= %1 is stored at its end: likely; %2 to %3 four times in five.</source>
        <translation>= %1 quedan guardados a su fin: probable; de %2 a %3 en cuatro de cada cinco casos.</translation>
    </message>
    <message>
        <source>The loads go without %1.</source>
        <translation>A los aparatos les faltan %1.</translation>
    </message>
    <message>
        <source>the outage is over</source>
        <translation>el corte ha terminado</translation>
    </message>
    <message>
        <source>%1 is stored at the end.</source>
        <translation>%1 quedan guardados al final.</translation>
    </message>
    <message>
        <source>Each loss with its formula and source stands under “How it was worked out”.</source>
        <translation>Cada pérdida está con su fórmula y su fuente en “Cómo se calculó”.</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>%1 % (%2 to %3)</source>
        <translation>%1 % (de %2 a %3)</translation>
    </message>
    <message>
        <source>Packs: %1, panels: %2</source>
        <translation>Baterías: %1, paneles: %2</translation>
    </message>
    <message>
        <source>%1 in all</source>
        <translation>%1 en total</translation>
    </message>
    <message>
        <source>chance of lasting %1</source>
        <translation>dura con una probabilidad de %1</translation>
    </message>
    <message>
        <source>This is the build of the answer.</source>
        <translation>Este es el montaje de la respuesta.</translation>
    </message>
    <message>
        <source>This is what the file has.</source>
        <translation>Esto es lo que hay en el archivo.</translation>
    </message>
    <message>
        <source>%1: %2 (worked out from the rest of the file)</source>
        <translation>%1: %2 (calculado con el resto del archivo)</translation>
    </message>
    <message>
        <source>a scenario without a file</source>
        <translation>un plan sin archivo</translation>
    </message>
    <message>
        <source>another program changed it</source>
        <translation>otro programa lo cambió</translation>
    </message>
    <message>
        <source>its folder is not there</source>
        <translation>su carpeta no está</translation>
    </message>
    <message>
        <source>nothing can be written in its folder</source>
        <translation>no se puede escribir en su carpeta</translation>
    </message>
    <message>
        <source>it is write-protected</source>
        <translation>está protegido contra escritura</translation>
    </message>
    <message>
        <source>it is no plain file</source>
        <translation>no es un archivo corriente</translation>
    </message>
    <message>
        <source>another program is writing it</source>
        <translation>otro programa lo está escribiendo</translation>
    </message>
    <message>
        <source>the disk or the quota is full</source>
        <translation>el disco o la cuota están llenos</translation>
    </message>
    <message>
        <source>it is larger than files may be there</source>
        <translation>es mayor de lo que pueden ser allí los archivos</translation>
    </message>
    <message>
        <source>there is not enough memory</source>
        <translation>no hay memoria suficiente</translation>
    </message>
    <message>
        <source>the disk did not say that it stays if the power fails</source>
        <translation>el disco no confirmó que se conserve si falla la luz</translation>
    </message>
    <message>
        <source>the disk refuses it</source>
        <translation>el disco lo rechaza</translation>
    </message>
    <message>
        <source>A fault of this program</source>
        <translation>Un fallo de este programa</translation>
    </message>
    <message>
        <source>A fault of this program (%1)</source>
        <translation>Un fallo de este programa (%1)</translation>
    </message>
    <message>
        <source>Burns %1 of the %2 that are looked at.</source>
        <translation>Arde %1 de los %2 que se miran.</translation>
    </message>
    <message>
        <source>How long it lasts</source>
        <translation>Cuánto dura</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>una duración</translation>
    </message>
    <message>
        <source>days or hours</source>
        <translation>días u horas</translation>
    </message>
    <message>
        <source>nobody knows</source>
        <translation>nadie lo sabe</translation>
    </message>
    <message>
        <source>half of such outages are over by then</source>
        <translation>la mitad de esos cortes ha acabado para entonces</translation>
    </message>
    <message>
        <source>still out %1 times in 100</source>
        <translation>sigue sin luz %1 de cada 100 veces</translation>
    </message>
    <message>
        <source>A pack left</source>
        <translation>Se fue una batería</translation>
    </message>
    <message>
        <source>A pack came back</source>
        <translation>Volvió una batería</translation>
    </message>
    <message>
        <source>Another pack joined</source>
        <translation>Se unió otra batería</translation>
    </message>
    <message>
        <source>A fuse opened</source>
        <translation>Saltó un fusible</translation>
    </message>
    <message>
        <source>Supply expected</source>
        <translation>Se espera la luz</translation>
    </message>
    <message>
        <source>The supply is back</source>
        <translation>Volvió la luz</translation>
    </message>
    <message>
        <source>is off</source>
        <translation>está apagado</translation>
    </message>
    <message>
        <source>is on</source>
        <translation>está encendido</translation>
    </message>
    <message>
        <source>refrigerator</source>
        <translation>refrigerador</translation>
    </message>
    <message>
        <source>freezer</source>
        <translation>congelador</translation>
    </message>
    <message>
        <source>room</source>
        <translation>habitación</translation>
    </message>
    <message>
        <source>all, joined</source>
        <translation>todas, unidas</translation>
    </message>
    <message>
        <source>no more known</source>
        <translation>no se sabe más</translation>
    </message>
    <message>
        <source>rested an hour</source>
        <translation>una hora en reposo</translation>
    </message>
    <message>
        <source>rested a night</source>
        <translation>una noche en reposo</translation>
    </message>
    <message>
        <source>while in use…</source>
        <translation>en uso…</translation>
    </message>
    <message>
        <source>in 1 h</source>
        <translation>en 1 h</translation>
    </message>
    <message>
        <source>in 6 h</source>
        <translation>en 6 h</translation>
    </message>
    <message>
        <source>in 12 h</source>
        <translation>en 12 h</translation>
    </message>
    <message>
        <source>in 24 h</source>
        <translation>en 24 h</translation>
    </message>
    <message>
        <source>in…</source>
        <translation>en…</translation>
    </message>
    <message>
        <source>clear sky</source>
        <translation>cielo despejado</translation>
    </message>
    <message>
        <source>sun through cloud</source>
        <translation>sol entre nubes</translation>
    </message>
    <message>
        <source>grey</source>
        <translation>gris</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>oscuro</translation>
    </message>
    <message>
        <source>all days looked at</source>
        <translation>todos los días mirados</translation>
    </message>
    <message>
        <source>the end</source>
        <translation>el final</translation>
    </message>
    <message>
        <source>longer than the outage</source>
        <translation>más que el corte</translation>
    </message>
    <message>
        <source>chance to the end</source>
        <translation>probabilidad de llegar al final</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 de 100</translation>
    </message>
    <message>
        <source>on likely figures until</source>
        <translation>con cifras probables, hasta</translation>
    </message>
    <message>
        <source>nine times in ten until</source>
        <translation>nueve de cada diez veces, hasta</translation>
    </message>
    <message>
        <source>most likely until</source>
        <translation>lo más probable, hasta</translation>
    </message>
    <message>
        <source>under 1 in 100</source>
        <translation>menos de 1 de 100</translation>
    </message>
    <message>
        <source>over 99 in 100</source>
        <translation>más de 99 de 100</translation>
    </message>
</context>
<context>
    <name>ReadOut</name>
    <message>
        <source>%1, %2. How it was worked out</source>
        <translation>%1, %2. Cómo se calculó</translation>
    </message>
</context>
<context>
    <name>ReplaceSheet</name>
    <message>
        <source>There is already a file of this name</source>
        <translation>Ya hay un archivo con este nombre</translation>
    </message>
    <message>
        <source>%1 is there already; replace it? Its last ten versions stay, to be found on the File page.</source>
        <translation>%1 ya existe; ¿reemplazarlo? Sus diez últimas versiones se quedan, en la página Archivo.</translation>
    </message>
    <message>
        <source>%1 is there already; replace it? What it holds is then gone.</source>
        <translation>%1 ya existe; ¿reemplazarlo? Lo que contiene se perderá.</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Reemplazarlo</translation>
    </message>
    <message>
        <source>Replace %1</source>
        <translation>Reemplazar %1</translation>
    </message>
    <message>
        <source>Choose another name</source>
        <translation>Elegir otro nombre</translation>
    </message>
</context>
<context>
    <name>SavingDialog</name>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>ShareSheet</name>
    <message>
        <source>Share the answer</source>
        <translation>Compartir la respuesta</translation>
    </message>
    <message>
        <source>Save one page</source>
        <translation>Guardar una página</translation>
    </message>
    <message>
        <source>Save one picture</source>
        <translation>Guardar una imagen</translation>
    </message>
    <message>
        <source>Page for a browser (*.html)</source>
        <translation>Página para un navegador (*.html)</translation>
    </message>
    <message>
        <source>Picture (*.png)</source>
        <translation>Imagen (*.png)</translation>
    </message>
    <message>
        <source>As one page for a browser</source>
        <translation>Como una página para un navegador</translation>
    </message>
    <message>
        <source>Save the whole answer as one page for a browser, HTML</source>
        <translation>Guardar toda la respuesta como una página para un navegador, HTML</translation>
    </message>
    <message>
        <source>As one picture of this page</source>
        <translation>Como una imagen de esta página</translation>
    </message>
    <message>
        <source>Save what this page shows as one picture, PNG</source>
        <translation>Guardar lo que muestra esta página como una imagen, PNG</translation>
    </message>
    <message>
        <source>The outage is being worked out.</source>
        <translation>Se está calculando el corte.</translation>
    </message>
    <message>
        <source>The file itself is shared as it is: it is a plain text.</source>
        <translation>El archivo se comparte tal cual: es texto sencillo.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>Check another tool</source>
        <translation>Comprobar otra herramienta</translation>
    </message>
    <message>
        <source>Share of each limit that the start uses; the line is the limit</source>
        <translation>Parte de cada límite que usa el arranque; la línea es el límite</translation>
    </message>
    <message>
        <source>Share of each limit that the start of %1 uses</source>
        <translation>Parte de cada límite que usa el arranque de %1</translation>
    </message>
    <message>
        <source>The inverter</source>
        <translation>El inversor</translation>
    </message>
</context>
<context>
    <name>StepsPane</name>
    <message>
        <source>Begin, sky and warmth</source>
        <translation>Inicio, cielo y temperatura</translation>
    </message>
    <message>
        <source>When the outage begins, its first sky, how warm the packs are</source>
        <translation>Cuándo empieza el corte, su primer cielo, a qué temperatura están las baterías</translation>
    </message>
    <message>
        <source>The outage</source>
        <translation>El corte</translation>
    </message>
</context>
<context>
    <name>StoragePage</name>
    <message>
        <source>Left month by month; the bracket is with the master switch open</source>
        <translation>Lo que queda mes a mes; el corchete es con el interruptor principal apagado</translation>
    </message>
    <message>
        <source>Left month by month</source>
        <translation>Lo que queda mes a mes</translation>
    </message>
</context>
<context>
    <name>SunPage</name>
    <message>
        <source>What each day gives back: likely, and from nine in ten to one in ten</source>
        <translation>Lo que devuelve cada día: probable, y de nueve a una de cada diez veces</translation>
    </message>
    <message>
        <source>What each day gives back</source>
        <translation>Lo que devuelve cada día</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Place: %1. Change</source>
        <translation>Lugar: %1. Cambiar</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Mes</translation>
    </message>
    <message>
        <source>The panels</source>
        <translation>Los paneles</translation>
    </message>
    <message>
        <source>Add other panels</source>
        <translation>Añadir otros paneles</translation>
    </message>
    <message>
        <source>Take these panels out</source>
        <translation>Quitar estos paneles</translation>
    </message>
    <message>
        <source>The charge controller</source>
        <translation>El controlador de carga</translation>
    </message>
    <message>
        <source>Other chargers</source>
        <translation>Otros cargadores</translation>
    </message>
    <message>
        <source>Add a charger</source>
        <translation>Añadir un cargador</translation>
    </message>
    <message>
        <source>Take this charger out</source>
        <translation>Quitar este cargador</translation>
    </message>
    <message>
        <source>The place in figures</source>
        <translation>El lugar en cifras</translation>
    </message>
    <message>
        <source>What so many panels give a day</source>
        <translation>Lo que dan al día tantos paneles</translation>
    </message>
    <message>
        <source>Choose a weather file</source>
        <translation>Elija un archivo meteorológico</translation>
    </message>
    <message>
        <source>Hours of a year (*.epw *.csv)</source>
        <translation>Horas de un año (*.epw *.csv)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Weather file: %1</source>
        <translation>Archivo meteorológico: %1</translation>
    </message>
    <message>
        <source>Weather file: %1. Choose it</source>
        <translation>Archivo meteorológico: %1. Elegirlo</translation>
    </message>
</context>
<context>
    <name>Templates</name>
    <message>
        <source>Ice storm, four nights</source>
        <translation>Tormenta de hielo, cuatro noches</translation>
    </message>
    <message>
        <source>Winter: freezer, furnace blower, light. One lithium pack, three more to plug in, three panels.</source>
        <translation>Invierno: congelador, ventilador de calefacción, luz. Una batería de litio, tres más para conectar, tres paneles.</translation>
    </message>
    <message>
        <source>Summer storm, three hot days</source>
        <translation>Tormenta de verano, tres días de calor</translation>
    </message>
    <message>
        <source>Refrigerator and fans in the heat. Two sealed lead batteries, four panels laid flat.</source>
        <translation>Refrigerador y ventiladores con calor. Dos baterías de plomo selladas, cuatro paneles tumbados.</translation>
    </message>
    <message>
        <source>Two-day precautionary shut-off</source>
        <translation>Corte preventivo de dos días</translation>
    </message>
    <message>
        <source>Refrigerator, desk and phones, announced beforehand. Three gel batteries, two panels.</source>
        <translation>Refrigerador, escritorio y teléfonos, anunciado de antemano. Tres baterías de gel, dos paneles.</translation>
    </message>
    <message>
        <source>Breathing machine, five nights</source>
        <translation>Aparato respiratorio, cinco noches</translation>
    </message>
    <message>
        <source>A machine fed from the 12 V outlet at night. Two lithium packs, one panel.</source>
        <translation>Un aparato que se alimenta de noche por la toma de 12 V. Dos baterías de litio, un panel.</translation>
    </message>
    <message>
        <source>Saw and pump at a remote place</source>
        <translation>Sierra y bomba en un lugar apartado</translation>
    </message>
    <message>
        <source>Work where no line goes. Two wet deep-cycle pairs, three panels.</source>
        <translation>Trabajo donde no llega la línea. Dos pares de plomo abierto de ciclo profundo, tres paneles.</translation>
    </message>
</context>
<context>
    <name>TiltControl</name>
    <message>
        <source>Tilt of the panels</source>
        <translation>Inclinación de los paneles</translation>
    </message>
    <message>
        <source>Tilt from level</source>
        <translation>Inclinación sobre la horizontal</translation>
    </message>
</context>
<context>
    <name>TopBar</name>
    <message>
        <source>EXAMPLE</source>
        <translation>EJEMPLO</translation>
    </message>
    <message>
        <source>This is an example</source>
        <translation>Esto es un ejemplo</translation>
    </message>
    <message>
        <source>not saved</source>
        <translation>sin guardar</translation>
    </message>
    <message>
        <source>Take the last change back</source>
        <translation>Deshacer el último cambio</translation>
    </message>
    <message>
        <source>Make the change again</source>
        <translation>Rehacer el cambio</translation>
    </message>
    <message>
        <source>File, look and help</source>
        <translation>Archivo, aspecto y ayuda</translation>
    </message>
    <message>
        <source>Menu</source>
        <translation>Menú</translation>
    </message>
</context>
<context>
    <name>WiringDrawing</name>
    <message>
        <source>The build</source>
        <translation>El montaje</translation>
    </message>
</context>
<context>
    <name>WiringPage</name>
    <message>
        <source>Touch a part to read what was found about it.</source>
        <translation>Toque una pieza para leer lo que se halló de ella.</translation>
    </message>
    <message>
        <source>Change the circuits</source>
        <translation>Cambiar los circuitos</translation>
    </message>
    <message>
        <source>The case</source>
        <translation>La caja</translation>
    </message>
</context>
<context>
    <name>WordsSheet</name>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Take it out of the file</source>
        <translation>Quitarlo del archivo</translation>
    </message>
    <message>
        <source>Take %1 out of the file</source>
        <translation>Quitar %1 del archivo</translation>
    </message>
    <message>
        <source>Taken out, the file is silent on it; what holds then is told. Comment lines stay, and it can be undone.</source>
        <translation>Si se quita, el archivo no dice nada de ello, y se indica lo que vale entonces. Las líneas de comentario se quedan, y se puede deshacer.</translation>
    </message>
</context>
<context>
    <name>WrittenStrip</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Take the entry out again</source>
        <translation>Quitar de nuevo la anotación</translation>
    </message>
    <message>
        <source>Put this notice away</source>
        <translation>Apartar este aviso</translation>
    </message>
</context>
<context>
    <name>touch::BrokenText</name>
    <message>
        <source>A new line at the end</source>
        <translation>Una línea nueva al final</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Línea %1</translation>
    </message>
</context>
<context>
    <name>touch::BuildsPlot</name>
    <message>
        <source>Give every pack and panel a weight or a price, and the builds that no other beats are drawn here.</source>
        <translation>Dé a cada batería y panel un peso o un precio, y aquí se dibujan los montajes que ningún otro supera.</translation>
    </message>
    <message>
        <source>Give every pack and panel a price to see them against it as well.</source>
        <translation>Dé a cada batería y panel un precio para verlos también según él.</translation>
    </message>
    <message>
        <source>Give every pack and panel a weight to see them against it as well.</source>
        <translation>Dé a cada batería y panel un peso para verlos también según él.</translation>
    </message>
    <message>
        <source>Chance of lasting against what packs and panels cost</source>
        <translation>Probabilidad de durar según lo que cuestan baterías y paneles</translation>
    </message>
    <message>
        <source>Chance of lasting against what packs and panels weigh</source>
        <translation>Probabilidad de durar según lo que pesan baterías y paneles</translation>
    </message>
    <message>
        <source>Goal %1 %</source>
        <translation>Meta %1 %</translation>
    </message>
    <message>
        <source>%1. %2; builds: %3, each a button below the plot.</source>
        <translation>%1. %2; montajes: %3, cada uno un botón debajo de la gráfica.</translation>
    </message>
    <message>
        <source>Builds that are not drawn, since some price is not known: %1. Give every pack and panel a price.</source>
        <translation>Montajes no dibujados, porque falta algún precio: %1. Dé un precio a cada batería y panel.</translation>
    </message>
    <message>
        <source>Builds that are not drawn, since some weight is not known: %1. Give every pack and panel a weight.</source>
        <translation>Montajes no dibujados, porque falta algún peso: %1. Dé un peso a cada batería y panel.</translation>
    </message>
</context>
<context>
    <name>touch::ChanceGrid</name>
    <message>
        <source>Packs: %1, panels: %2. It lasts to the end %3 times in 100.</source>
        <translation>Baterías: %1, paneles: %2. Dura hasta el final %3 de cada 100 veces.</translation>
    </message>
    <message>
        <source>Half of the time it lasts %1 or longer.</source>
        <translation>La mitad de las veces dura %1 o más.</translation>
    </message>
</context>
<context>
    <name>touch::Curve</name>
    <message>
        <source>%1 from %2 to %3, at most %4</source>
        <translation>%1 de %2 a %3, como mucho %4</translation>
    </message>
</context>
<context>
    <name>touch::FirstRun</name>
    <message>
        <source>What must stay on?</source>
        <translation>¿Qué debe seguir encendido?</translation>
    </message>
    <message>
        <source>Which battery have you got?</source>
        <translation>¿Qué batería tiene?</translation>
    </message>
    <message>
        <source>Have you got solar panels?</source>
        <translation>¿Tiene paneles solares?</translation>
    </message>
    <message>
        <source>How long may the outage last?</source>
        <translation>¿Cuánto puede durar el corte?</translation>
    </message>
    <message>
        <source>Where do you live?</source>
        <translation>¿Dónde vive?</translation>
    </message>
    <message>
        <source>Pick all that must. Typical figures are taken; a plug-in meter tells yours.</source>
        <translation>Elija todo lo que deba. Se toman cifras típicas; las suyas las da un medidor de enchufe.</translation>
    </message>
    <message>
        <source>As its label says. All of them are taken to be full.</source>
        <translation>Como dice su etiqueta. Se supone que todas están llenas.</translation>
    </message>
    <message>
        <source>Propped up towards the south, as a beginning.</source>
        <translation>Para empezar, inclinados hacia el sur.</translation>
    </message>
    <message>
        <source>It is taken to begin tomorrow at 18:00.</source>
        <translation>Se supone que empieza mañana a las 18:00.</translation>
    </message>
    <message>
        <source>For the sun and the warmth of the season: the nearest place of the list.</source>
        <translation>Para el sol y la temperatura de la estación: el lugar más cercano de la lista.</translation>
    </message>
    <message>
        <source>Made from five answers; what was not asked is marked.</source>
        <translation>Hecho a partir de cinco respuestas; lo que no se preguntó está marcado.</translation>
    </message>
    <message>
        <source>What I have</source>
        <translation>Lo que tengo</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>no se preguntó</translation>
    </message>
    <message>
        <source>not asked: put what its plate says</source>
        <translation>no se preguntó: ponga lo que dice su placa</translation>
    </message>
</context>
<context>
    <name>touch::FolderModel</name>
    <message>
        <source>folder</source>
        <translation>carpeta</translation>
    </message>
    <message>
        <source>%1, saved %2</source>
        <translation>%1, guardado %2</translation>
    </message>
    <message>
        <source>This folder cannot be looked into.</source>
        <translation>No se puede mirar en esta carpeta.</translation>
    </message>
    <message>
        <source>Only the first %1 of %2 are shown.</source>
        <translation>Solo se muestran los primeros %1 de %2.</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Carpeta personal</translation>
    </message>
    <message>
        <source>Documents</source>
        <translation>Documentos</translation>
    </message>
    <message>
        <source>Desktop</source>
        <translation>Escritorio</translation>
    </message>
    <message>
        <source>Downloads</source>
        <translation>Descargas</translation>
    </message>
    <message>
        <source>Everything</source>
        <translation>Todo</translation>
    </message>
</context>
<context>
    <name>touch::KeptWork</name>
    <message>
        <source>Unsaved work cannot be kept in %1. Save it in a file.</source>
        <translation>El trabajo sin guardar no se puede conservar en %1. Guárdelo en un archivo.</translation>
    </message>
    <message>
        <source>Unsaved work cannot be kept in %1: %2. Save it in a file.</source>
        <translation>El trabajo sin guardar no se puede conservar en %1: %2. Guárdelo en un archivo.</translation>
    </message>
    <message>
        <source>Unsaved work on %1, kept %2, was taken up again. The way back through its changes stays open.</source>
        <translation>Se retomó el trabajo sin guardar en %1, conservado %2. Se pueden seguir deshaciendo sus cambios.</translation>
    </message>
    <message>
        <source>Unsaved work of earlier is kept: it is listed on the File page.</source>
        <translation>Se conserva trabajo anterior sin guardar: está en la página Archivo.</translation>
    </message>
    <message>
        <source>%1 is open in another window as well. Whoever saves second is asked.</source>
        <translation>%1 está abierto también en otra ventana. A quien guarde en segundo lugar se le pregunta.</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <translation>%1, en %2</translation>
    </message>
</context>
<context>
    <name>touch::KeysModel</name>
    <message>
        <source>%1 stays: without it the file cannot be used. %2</source>
        <translation>%1 se queda: sin ello el archivo no se puede usar. %2</translation>
    </message>
    <message>
        <source>%1 was taken out; nothing holds in its place.</source>
        <translation>%1 se quitó; en su lugar no vale nada.</translation>
    </message>
    <message>
        <source>%1 was taken out. Now: %2.</source>
        <translation>%1 se quitó. Ahora: %2.</translation>
    </message>
    <message>
        <source>%1 was taken out. Now %2 holds: %3.</source>
        <translation>%1 se quitó. Ahora vale %2: %3.</translation>
    </message>
    <message>
        <source>Taken out; now %1</source>
        <translation>Quitado; ahora %1</translation>
    </message>
</context>
<context>
    <name>touch::LoadsModel</name>
    <message>
        <source>something else</source>
        <translation>otra cosa</translation>
    </message>
</context>
<context>
    <name>touch::LogModel</name>
    <message>
        <source>Struck: %1</source>
        <translation>Tachado: %1</translation>
    </message>
    <message>
        <source>Cannot be true together with the others: %1</source>
        <translation>No puede ser cierto junto con lo demás: %1</translation>
    </message>
</context>
<context>
    <name>touch::Look</name>
    <message>
        <source>How things are to look cannot be kept for the next start: %1.</source>
        <translation>Los ajustes de aspecto no se pueden conservar para el próximo inicio: %1.</translation>
    </message>
</context>
<context>
    <name>touch::NowClock</name>
    <message>
        <source>This computer does not tell the time.</source>
        <translation>Este equipo no da la hora.</translation>
    </message>
    <message>
        <source>By this computer&apos;s clock it is %1; the outage of this file begins %2.</source>
        <translation>Según el reloj de este equipo es %1; el corte de este archivo empieza %2.</translation>
    </message>
    <message>
        <source>By this computer&apos;s clock it is %1; the outage of this file was over %2.</source>
        <translation>Según el reloj de este equipo es %1; el corte de este archivo terminó %2.</translation>
    </message>
    <message>
        <source>By this computer&apos;s clock it is %1, and an entry of the log is later than that. Entries later than now do not count yet.</source>
        <translation>Según el reloj de este equipo es %1, y una anotación es posterior. Las anotaciones posteriores a ahora aún no cuentan.</translation>
    </message>
    <message>
        <source>This computer&apos;s clock is taken to be %1 ahead.</source>
        <translation>Se supone que el reloj de este equipo va %1 adelantado.</translation>
    </message>
    <message>
        <source>This computer&apos;s clock is taken to be %1 behind.</source>
        <translation>Se supone que el reloj de este equipo va %1 atrasado.</translation>
    </message>
</context>
<context>
    <name>touch::PacksModel</name>
    <message>
        <source>another</source>
        <translation>otra</translation>
    </message>
    <message>
        <source>another %1</source>
        <translation>otra %1</translation>
    </message>
</context>
<context>
    <name>touch::PlacesModel</name>
    <message>
        <source>%1° north, country %2</source>
        <translation>%1° norte, país %2</translation>
    </message>
    <message>
        <source>%1° south, country %2</source>
        <translation>%1° sur, país %2</translation>
    </message>
</context>
<context>
    <name>touch::PrintDesk</name>
    <message>
        <source>There is nothing to save yet.</source>
        <translation>Aún no hay nada que guardar.</translation>
    </message>
    <message>
        <source>There is no such plot any more.</source>
        <translation>Esa gráfica ya no existe.</translation>
    </message>
    <message>
        <source>Not saved: only a folder of this computer will do.</source>
        <translation>No se guardó: solo sirve una carpeta de este equipo.</translation>
    </message>
    <message>
        <source>Not saved: there is no folder %1.</source>
        <translation>No se guardó: no existe la carpeta %1.</translation>
    </message>
    <message>
        <source>Not saved: the folder %1 may not be written to. Choose another.</source>
        <translation>No se guardó: no se puede escribir en la carpeta %1. Elija otra.</translation>
    </message>
    <message>
        <source>Not saved: %1 is there already. Type its name with .%2 to replace it.</source>
        <translation>No se guardó: %1 ya existe. Escriba su nombre con .%2 para reemplazarlo.</translation>
    </message>
    <message>
        <source>Saved as %1</source>
        <translation>Guardado como %1</translation>
    </message>
    <message>
        <source>Not saved: %1 could not be written: %2.</source>
        <translation>No se guardó: no se pudo escribir %1: %2.</translation>
    </message>
    <message>
        <source>There is nothing to print yet.</source>
        <translation>Aún no hay nada que imprimir.</translation>
    </message>
    <message>
        <source>Not printed: %1 takes nothing.</source>
        <translation>No se imprimió: %1 no acepta nada.</translation>
    </message>
    <message>
        <source>Sent to %1.</source>
        <translation>Enviado a %1.</translation>
    </message>
</context>
<context>
    <name>touch::RangeBars</name>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (de %2 a %3)</translation>
    </message>
    <message>
        <source>%1 (to %2)</source>
        <translation>%1 (hasta %2)</translation>
    </message>
</context>
<context>
    <name>touch::ScenarioDocument</name>
    <message>
        <source>The example is missing from this program.</source>
        <translation>Falta el ejemplo en este programa.</translation>
    </message>
    <message>
        <source>What was copied</source>
        <translation>Lo copiado</translation>
    </message>
    <message>
        <source>%1 is not a scenario that can be read: %2</source>
        <translation>%1 no es un plan que se pueda leer: %2</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Baterías</translation>
    </message>
    <message>
        <source>Expansion packs</source>
        <translation>Baterías de ampliación</translation>
    </message>
    <message>
        <source>Panels</source>
        <translation>Paneles</translation>
    </message>
    <message>
        <source>Outage days</source>
        <translation>Días de corte</translation>
    </message>
    <message>
        <source>The example</source>
        <translation>El ejemplo</translation>
    </message>
    <message>
        <source>%1 is not opened, for saving it would change more than you do: line %2 is not UTF-8. Let an editor save it as UTF-8.</source>
        <translation>%1 no se abre, pues al guardarlo cambiaría más de lo que usted cambie: la línea %2 no es UTF-8. Guárdelo como UTF-8 con un editor.</translation>
    </message>
    <message>
        <source>%1 cannot be read as text any more.</source>
        <translation>%1 ya no se puede leer como texto.</translation>
    </message>
    <message>
        <source>What you changed cannot be kept as a version, so it stays on the screen.</source>
        <translation>Lo que cambió no se puede conservar como versión, así que se queda en la pantalla.</translation>
    </message>
    <message>
        <source>it is no plain file</source>
        <translation>no es un archivo corriente</translation>
    </message>
    <message>
        <source>what it holds now cannot be read</source>
        <translation>lo que contiene ahora no se puede leer</translation>
    </message>
    <message>
        <source>what it holds now cannot be kept as a version</source>
        <translation>lo que contiene ahora no se puede conservar como versión</translation>
    </message>
    <message>
        <source>Saved, but what was there before could not be kept as a version.</source>
        <translation>Guardado, pero lo que había antes no se pudo conservar como versión.</translation>
    </message>
    <message>
        <source>%1 was not saved: %2. What you changed is still here.</source>
        <translation>%1 no se guardó: %2. Lo que cambió sigue aquí.</translation>
    </message>
    <message>
        <source>%1 is not opened: what you changed here is not saved and cannot be kept. Save it first.</source>
        <translation>%1 no se abre: lo que cambió aquí no está guardado y no se puede conservar. Guárdelo antes.</translation>
    </message>
    <message>
        <source>no further words</source>
        <translation>sin más palabras</translation>
    </message>
    <message>
        <source>A fault of this program: %1</source>
        <translation>Un fallo de este programa: %1</translation>
    </message>
    <message>
        <source>Not opened: %1</source>
        <translation>No se abrió: %1</translation>
    </message>
    <message>
        <source>A new plan</source>
        <translation>Un plan nuevo</translation>
    </message>
</context>
<context>
    <name>touch::Sharing</name>
    <message>
        <source>No picture could be made.</source>
        <translation>No se pudo hacer ninguna imagen.</translation>
    </message>
    <message>
        <source>%1 was not saved: %2.</source>
        <translation>%1 no se guardó: %2.</translation>
    </message>
    <message>
        <source>Saved as %1. Whoever gets it needs nothing else.</source>
        <translation>Guardado como %1. Quien lo reciba no necesita nada más.</translation>
    </message>
</context>
<context>
    <name>touch::SunControls</name>
    <message>
        <source>a place of your own</source>
        <translation>un lugar propio</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>tumbado</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>the sun does not rise</source>
        <translation>el sol no sale</translation>
    </message>
    <message>
        <source>the noon sun stands %1° high</source>
        <translation>el sol del mediodía está a %1° de altura</translation>
    </message>
</context>
<context>
    <name>touch::TableEntries</name>
    <message>
        <source>another</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>another %1</source>
        <translation>otro %1</translation>
    </message>
</context>
<context>
    <name>units</name>
    <message>
        <source>percent</source>
        <translation>por ciento</translation>
    </message>
    <message>
        <source>volts</source>
        <translation>voltios</translation>
    </message>
    <message>
        <source>amperes</source>
        <translation>amperios</translation>
    </message>
    <message>
        <source>milliamperes</source>
        <translation>miliamperios</translation>
    </message>
    <message>
        <source>kiloamperes</source>
        <translation>kiloamperios</translation>
    </message>
    <message>
        <source>watts</source>
        <translation>vatios</translation>
    </message>
    <message>
        <source>kilowatts</source>
        <translation>kilovatios</translation>
    </message>
    <message>
        <source>horsepower</source>
        <translation>caballos de fuerza</translation>
    </message>
    <message>
        <source>volt-amperes</source>
        <translation>voltamperios</translation>
    </message>
    <message>
        <source>kilovolt-amperes</source>
        <translation>kilovoltamperios</translation>
    </message>
    <message>
        <source>watt-hours</source>
        <translation>vatios hora</translation>
    </message>
    <message>
        <source>kilowatt-hours</source>
        <translation>kilovatios hora</translation>
    </message>
    <message>
        <source>kilowatt-hours a year</source>
        <translation>kilovatios hora al año</translation>
    </message>
    <message>
        <source>kilowatt-hours per square metre</source>
        <translation>kilovatios hora por metro cuadrado</translation>
    </message>
    <message>
        <source>ampere-hours</source>
        <translation>amperios hora</translation>
    </message>
    <message>
        <source>milliohms</source>
        <translation>miliohmios</translation>
    </message>
    <message>
        <source>ohms</source>
        <translation>ohmios</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>grados</translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation>grados Celsius</translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation>grados Fahrenheit</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>kilogramos</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>libras</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>metros</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>centímetros</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pulgadas</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>segundos</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>minutos</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>horas</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
</context>
</TS>
