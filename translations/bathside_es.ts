<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Alarm</name>
    <message>
        <source>Not recorded: go on, call the shift lead, leave the station on</source>
        <translation>Sin registrar: siga, llame al encargado y no apague la estación</translation>
    </message>
    <message>
        <source>The clock was changed: compare it with another</source>
        <translation>Se cambió el reloj: compárelo con otro</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>whom it is about, and what to do</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n bird(s) over</source>
        <comment>past the limit</comment>
        <translation>
            <numerusform>%n ave de más</numerusform>
            <numerusform>%n aves de más</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bird(s) left</source>
        <comment>until the limit</comment>
        <translation>
            <numerusform>queda %n ave</numerusform>
            <numerusform>quedan %n aves</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>No hay nada pendiente.</translation>
    </message>
    <message>
        <source>No sound: watch the screen</source>
        <translation>Sin sonido: mire la pantalla</translation>
    </message>
    <message numerus="yes">
        <source>+%n</source>
        <comment>alarms without room on the screen</comment>
        <translation>
            <numerusform>+%n</numerusform>
            <numerusform>+%n</numerusform>
        </translation>
    </message>
    <message>
        <source>Vessel %1 loses more than usual: read its level more often</source>
        <translation>El termo %1 pierde más de lo habitual: lea su nivel más a menudo</translation>
    </message>
    <message>
        <source>Vessel %1: its vacuum is failing: move the ampoules</source>
        <translation>Termo %1: falla el vacío: traslade las ampollas</translation>
    </message>
    <message>
        <source>Vessel %1 is below its minimum: fill it now</source>
        <translation>Termo %1 bajo su mínimo: llénelo ya</translation>
    </message>
    <message>
        <source>Vessel %1 should be down to its minimum by now: read its level, fill it</source>
        <translation>El termo %1 ya debe de estar en su mínimo: lea su nivel y llénelo</translation>
    </message>
    <message>
        <source>The thermometer gives no reading: measure by hand</source>
        <translation>El termómetro no da lectura: mida a mano</translation>
    </message>
    <message>
        <source>The thermometer gives no reading (%1): measure by hand</source>
        <comment>why: &quot;its check failed&quot;</comment>
        <translation>El termómetro no da lectura (%1): mida a mano</translation>
    </message>
</context>
<context>
    <name>AskCopiesText</name>
    <message>
        <source>back</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>every hour</source>
        <translation>cada hora</translation>
    </message>
    <message>
        <source>once a day</source>
        <translation>una vez al día</translation>
    </message>
    <message numerus="yes">
        <source>every %n hours</source>
        <translation>
            <numerusform>cada hora</numerusform>
            <numerusform>cada %n horas</numerusform>
        </translation>
    </message>
    <message>
        <source>this computer</source>
        <translation>este equipo</translation>
    </message>
    <message>
        <source>copies …</source>
        <translation>copias …</translation>
    </message>
    <message>
        <source>copy now</source>
        <translation>copiar ahora</translation>
    </message>
    <message>
        <source>where to …</source>
        <translation>adónde …</translation>
    </message>
    <message>
        <source>when …</source>
        <translation>cuándo …</translation>
    </message>
    <message>
        <source>helps only while this computer is whole</source>
        <translation>solo sirve si este equipo está sano</translation>
    </message>
    <message>
        <source>not there now</source>
        <translation>ahora no está</translation>
    </message>
    <message>
        <source>Where shall copies go?</source>
        <translation>¿Adónde van las copias?</translation>
    </message>
    <message>
        <source>Where shall copies go? No stick was found.</source>
        <translation>¿Adónde van las copias? No se encontró memoria.</translation>
    </message>
    <message>
        <source>at the end of a shift</source>
        <translation>al cerrar el turno</translation>
    </message>
    <message>
        <source>only by a tap</source>
        <translation>solo al tocar</translation>
    </message>
    <message>
        <source>When shall the record be copied?</source>
        <translation>¿Cuándo se copia el registro?</translation>
    </message>
    <message>
        <source>%1: not there now</source>
        <translation>%1: ahora no está</translation>
    </message>
    <message>
        <source>%1, and at the end of a shift</source>
        <comment>every 4 hours</comment>
        <translation>%1 y al cerrar el turno</translation>
    </message>
</context>
<context>
    <name>AskPrintText</name>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>No printer is installed: PDFs are saved.</source>
        <translation>No hay impresora instalada: se guardan PDF.</translation>
    </message>
    <message>
        <source>Labels and sheets</source>
        <translation>Etiquetas y hojas</translation>
    </message>
    <message>
        <source>printer for labels …</source>
        <translation>impresora de etiquetas …</translation>
    </message>
    <message>
        <source>paper for labels …</source>
        <translation>papel de etiquetas …</translation>
    </message>
    <message>
        <source>test label</source>
        <translation>etiqueta de prueba</translation>
    </message>
    <message>
        <source>printer for sheets …</source>
        <translation>impresora de hojas …</translation>
    </message>
    <message>
        <source>paper for sheets …</source>
        <translation>papel de hojas …</translation>
    </message>
    <message>
        <source>no printer</source>
        <translation>sin impresora</translation>
    </message>
    <message>
        <source>save PDFs</source>
        <translation>guardar PDF</translation>
    </message>
    <message>
        <source>not there now</source>
        <translation>ahora no está</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more printers</comment>
        <translation>más …</translation>
    </message>
    <message>
        <source>Which printer for labels?</source>
        <translation>¿Qué impresora para las etiquetas?</translation>
    </message>
    <message>
        <source>Which printer for sheets?</source>
        <translation>¿Qué impresora para las hojas?</translation>
    </message>
    <message>
        <source>Which paper for labels?</source>
        <translation>¿Qué papel para las etiquetas?</translation>
    </message>
    <message>
        <source>Which paper for sheets?</source>
        <translation>¿Qué papel para las hojas?</translation>
    </message>
    <message>
        <source>none: PDF</source>
        <translation>ninguna: PDF</translation>
    </message>
    <message>
        <source>%1: not there now</source>
        <extracomment>%1 is a printer.</extracomment>
        <translation>%1: ahora no está</translation>
    </message>
</context>
<context>
    <name>BagLabel</name>
    <message numerus="yes">
        <source>%Ln doses</source>
        <comment>on a bag&apos;s label</comment>
        <translation>
            <numerusform>%Ln dosis</numerusform>
            <numerusform>%Ln dosis</numerusform>
        </translation>
    </message>
    <message>
        <source>lot %1</source>
        <comment>on a bag&apos;s label</comment>
        <translation>lote %1</translation>
    </message>
    <message>
        <source>mixed %1 by %2</source>
        <comment>when and by whom; on a bag&apos;s label</comment>
        <translation>mezclada %1 por %2</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <comment>heading of its label</comment>
        <translation>Bolsa %1</translation>
    </message>
    <message>
        <source>use by</source>
        <comment>before a time, on a bag&apos;s label</comment>
        <translation>usar antes de</translation>
    </message>
    <message>
        <source>REHEARSAL: not for birds</source>
        <comment>on a bag&apos;s label</comment>
        <translation>ENSAYO: no para aves</translation>
    </message>
</context>
<context>
    <name>BagPlaceText</name>
    <message>
        <source>not hung</source>
        <translation>sin colgar</translation>
    </message>
    <message>
        <source>swirl now</source>
        <translation>remover ya</translation>
    </message>
    <message>
        <source>ON HOLD: %1</source>
        <extracomment>On a bag&apos;s tile; %1 is why (&quot;leak&quot;).</extracomment>
        <translation>RETENIDA: %1</translation>
    </message>
    <message>
        <source>swirl: %1</source>
        <extracomment>On a narrow tile: when the bag has to be swirled next; %1 is &quot;8 min&quot; or &quot;45 s&quot;.</extracomment>
        <translation>mover: %1</translation>
    </message>
    <message>
        <source>making up</source>
        <translation>preparando</translation>
    </message>
</context>
<context>
    <name>BagText</name>
    <message>
        <source>On hold: why?</source>
        <translation>Retenida: ¿por qué?</translation>
    </message>
    <message>
        <source>How much is left in the bag?</source>
        <translation>¿Cuánto queda en la bolsa?</translation>
    </message>
    <message>
        <source>volume left …</source>
        <translation>volumen restante …</translation>
    </message>
    <message>
        <source>Taken down: why?</source>
        <translation>Retirada: ¿por qué?</translation>
    </message>
    <message>
        <source>checked and good</source>
        <translation>revisada y buena</translation>
    </message>
    <message>
        <source>held by mistake</source>
        <translation>retenida por error</translation>
    </message>
    <message>
        <source>the lead accepts it</source>
        <translation>el encargado la acepta</translation>
    </message>
    <message>
        <source>Released: why?</source>
        <translation>Liberada: ¿por qué?</translation>
    </message>
    <message>
        <source>Which shift lead releases it? Initials</source>
        <translation>¿Qué encargado la libera? Iniciales</translation>
    </message>
    <message>
        <source>SWIRLED</source>
        <translation>REMOVIDA</translation>
    </message>
    <message>
        <source>INSPECTED: GOOD</source>
        <translation>REVISADA: BIEN</translation>
    </message>
    <message>
        <source>INSPECTED: NOT GOOD</source>
        <translation>REVISADA: MAL</translation>
    </message>
    <message>
        <source>DILUENT DRAWN</source>
        <translation>DILUYENTE TOMADO</translation>
    </message>
    <message>
        <source>MIXED</source>
        <translation>MEZCLADA</translation>
    </message>
    <message>
        <source>moved to …</source>
        <translation>pasada a …</translation>
    </message>
    <message>
        <source>hung on …</source>
        <translation>colgada en …</translation>
    </message>
    <message>
        <source>put on hold …</source>
        <translation>retener …</translation>
    </message>
    <message>
        <source>released …</source>
        <translation>liberar …</translation>
    </message>
    <message>
        <source>taken down …</source>
        <translation>retirar …</translation>
    </message>
    <message>
        <source>%1: hung on which line?</source>
        <translation>%1: ¿en qué línea está colgada?</translation>
    </message>
    <message>
        <source>Which bag?</source>
        <translation>¿Qué bolsa?</translation>
    </message>
    <message>
        <source>print label</source>
        <translation>imprimir etiqueta</translation>
    </message>
</context>
<context>
    <name>BalanceText</name>
    <message>
        <source>three lines alike</source>
        <translation>tres líneas iguales</translation>
    </message>
    <message>
        <source>still: “%1”</source>
        <comment>a text in a balance&apos;s line</comment>
        <translation>quieto: «%1»</translation>
    </message>
    <message>
        <source>moving: “%1”</source>
        <comment>a text in a balance&apos;s line</comment>
        <translation>en movimiento: «%1»</translation>
    </message>
    <message>
        <source>on its key only</source>
        <translation>solo con su tecla</translation>
    </message>
    <message>
        <source>leave it</source>
        <translation>dejarlo</translation>
    </message>
    <message>
        <source>no balance</source>
        <translation>sin balanza</translation>
    </message>
    <message>
        <source>serial port</source>
        <translation>puerto serie</translation>
    </message>
    <message>
        <source>No serial port was found: is the balance plugged in?</source>
        <translation>No se encontró puerto serie: ¿está enchufada la balanza?</translation>
    </message>
    <message>
        <source>Which port is the balance on?</source>
        <translation>¿En qué puerto está la balanza?</translation>
    </message>
    <message>
        <source>How fast does it send? Baud, as in its handbook</source>
        <translation>¿A qué velocidad envía? Baudios, según su manual</translation>
    </message>
    <message>
        <source>Which unit has a number without one?</source>
        <translation>¿Qué unidad tiene un número sin ella?</translation>
    </message>
    <message>
        <source>Text in the line of a weight that is still</source>
        <translation>Texto en la línea de un peso quieto</translation>
    </message>
    <message>
        <source>Text in the line of a weight that is moving</source>
        <translation>Texto en la línea de un peso en movimiento</translation>
    </message>
    <message>
        <source>it sends all the time</source>
        <translation>envía sin parar</translation>
    </message>
    <message>
        <source>a text when still …</source>
        <translation>un texto si está quieto …</translation>
    </message>
    <message>
        <source>a text when moving …</source>
        <translation>un texto si se mueve …</translation>
    </message>
    <message>
        <source>tare before each shot</source>
        <translation>tare antes de cada disparo</translation>
    </message>
    <message>
        <source>How does it tell that a weight is still?</source>
        <translation>¿Cómo dice que un peso está quieto?</translation>
    </message>
    <message>
        <source>The balance that weighs the shots</source>
        <translation>La balanza que pesa los disparos</translation>
    </message>
    <message>
        <source>The balance sent “%1”</source>
        <translation>La balanza envió «%1»</translation>
    </message>
    <message>
        <source>The balance has sent nothing yet</source>
        <translation>La balanza aún no ha enviado nada</translation>
    </message>
    <message>
        <source>Choose a port first.</source>
        <translation>Elija antes un puerto.</translation>
    </message>
    <message>
        <source>port …</source>
        <translation>puerto …</translation>
    </message>
    <message>
        <source>speed …</source>
        <translation>velocidad …</translation>
    </message>
    <message>
        <source>%1 baud</source>
        <translation>%1 baudios</translation>
    </message>
    <message>
        <source>unit …</source>
        <translation>unidad …</translation>
    </message>
    <message>
        <source>the line&apos;s own, else %1</source>
        <translation>la de la línea o %1</translation>
    </message>
    <message>
        <source>still …</source>
        <comment>how a balance tells it</comment>
        <translation>quieto …</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>none</source>
        <comment>a balance</comment>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>The balance sent no weight. Check its speed and unit, or type the weight.</source>
        <translation>La balanza no envió un peso. Revise velocidad y unidad, o escriba el peso.</translation>
    </message>
    <message>
        <source>The balance weighs in another unit. Set it to g or mg.</source>
        <translation>La balanza pesa en otra unidad. Póngala en g o mg.</translation>
    </message>
    <message>
        <source>The balance is overloaded, or its pan is off. Clear it and tare.</source>
        <translation>La balanza está sobrecargada o sin plato. Despéjela y tare.</translation>
    </message>
</context>
<context>
    <name>BigStepText</name>
    <message numerus="yes">
        <source>%1, one every %n second(s)</source>
        <extracomment>Under the big button before a pull; %1 is &quot;3 ampoules&quot;.</extracomment>
        <translation>
            <numerusform>%1, una cada %n segundo</numerusform>
            <numerusform>%1, una cada %n segundos</numerusform>
        </translation>
    </message>
    <message>
        <source>which ampoules?</source>
        <translation>¿qué ampollas?</translation>
    </message>
    <message>
        <source>which lot?</source>
        <translation>¿qué lote?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>Under the big button: which bag has been hung on which line.
----------
Under the big button: which bag comes next, e.g. &quot;400 mL, line A&quot;.</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>NOT GOOD</source>
        <translation>NO ESTÁ BIEN</translation>
    </message>
    <message numerus="yes">
        <source>%1: too early by %n minute(s)</source>
        <extracomment>%1 is &quot;400 mL, line A&quot;: begun now, it would be too old before it is empty.</extracomment>
        <translation>
            <numerusform>%1: demasiado pronto por %n minuto</numerusform>
            <numerusform>%1: demasiado pronto por %n minutos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: late by %n minute(s)</source>
        <translation>
            <numerusform>%1: con retraso de %n minuto</numerusform>
            <numerusform>%1: con retraso de %n minutos</numerusform>
        </translation>
    </message>
    <message>
        <source>PRINT LABEL</source>
        <translation>IMPRIMIR ETIQUETA</translation>
    </message>
</context>
<context>
    <name>BirdsText</name>
    <message>
        <source>on record</source>
        <translation>anotado</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <comment>a line, a time</comment>
        <translation>%1, a las %2</translation>
    </message>
    <message>
        <source>looked at …</source>
        <translation>miradas …</translation>
    </message>
    <message>
        <source>%1 of %2 good</source>
        <translation>%1 de %2 bien</translation>
    </message>
    <message>
        <source>birds</source>
        <translation>aves</translation>
    </message>
    <message>
        <source>target …</source>
        <translation>objetivo …</translation>
    </message>
    <message>
        <source>Look at birds first.</source>
        <translation>Mire antes algunas aves.</translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation>Elija antes una línea.</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation>ANOTAR</translation>
    </message>
    <message>
        <source>How many birds did you look at?</source>
        <translation>¿Cuántas aves miró?</translation>
    </message>
    <message>
        <source>How many of the %1 have it well?</source>
        <translation>¿Cuántas de las %1 la tienen bien?</translation>
    </message>
    <message>
        <source>How many in a hundred are to have it well?</source>
        <translation>¿Cuántas de cada cien deben tenerla bien?</translation>
    </message>
    <message>
        <source>%1: limit of the card</source>
        <translation>%1: límite de la ficha</translation>
    </message>
</context>
<context>
    <name>CalibrationText</name>
    <message>
        <source>There is no such day. Year, month, day, as 20260305.</source>
        <translation>Ese día no existe. Año, mes, día, como 20260305.</translation>
    </message>
    <message>
        <source>Number of the certificate</source>
        <translation>Número del certificado</translation>
    </message>
    <message>
        <source>Point: what the thermometer showed</source>
        <translation>Punto: lo que marcó el termómetro</translation>
    </message>
    <message>
        <source>There is a point with that value already. Remove it first.</source>
        <translation>Ya hay un punto con ese valor. Quítelo primero.</translation>
    </message>
    <message>
        <source>Point: what the reference was</source>
        <translation>Punto: lo que marcó el patrón</translation>
    </message>
    <message>
        <source>Point: its U at k = 2</source>
        <translation>Punto: su U con k = 2</translation>
    </message>
    <message>
        <source>REMOVE THE POINT</source>
        <translation>QUITAR EL PUNTO</translation>
    </message>
    <message>
        <source>leave it</source>
        <translation>dejarlo</translation>
    </message>
    <message>
        <source>The certificate&apos;s number is missing.</source>
        <translation>Falta el número del certificado.</translation>
    </message>
    <message>
        <source>The day of the calibration is missing.</source>
        <translation>Falta el día de la calibración.</translation>
    </message>
    <message>
        <source>The day on which it is due again is missing.</source>
        <translation>Falta el día en que vence.</translation>
    </message>
    <message>
        <source>It cannot be due before it was calibrated.</source>
        <translation>No puede vencer antes de calibrarse.</translation>
    </message>
    <message>
        <source>At least one point is needed.</source>
        <translation>Hace falta al menos un punto.</translation>
    </message>
    <message>
        <source>certificate …</source>
        <translation>certificado …</translation>
    </message>
    <message>
        <source>calibrated on …</source>
        <translation>calibrado el …</translation>
    </message>
    <message>
        <source>due on …</source>
        <translation>vence el …</translation>
    </message>
    <message>
        <source>point %1 …</source>
        <translation>punto %1 …</translation>
    </message>
    <message>
        <source>add a point …</source>
        <translation>añadir un punto …</translation>
    </message>
    <message>
        <source>forget what was typed</source>
        <translation>olvidar lo escrito</translation>
    </message>
    <message>
        <source>CALIBRATION SAVED</source>
        <translation>CALIBRACIÓN GUARDADA</translation>
    </message>
    <message>
        <source>Calibrated on: year, month, day, as 20260305</source>
        <translation>Calibrado el: año, mes, día, como 20260305</translation>
    </message>
    <message>
        <source>Due on: year, month, day, as 20260305</source>
        <translation>Vence el: año, mes, día, como 20260305</translation>
    </message>
    <message>
        <source>%1: its calibration. Nothing counts before it is saved.</source>
        <translation>%1: su calibración. Nada vale hasta que se guarde.</translation>
    </message>
</context>
<context>
    <name>CellsText</name>
    <message>
        <source>Live cells of a dose over the bag&apos;s life, indicative</source>
        <translation>Células vivas por dosis, indicativo</translation>
    </message>
    <message>
        <source>min</source>
        <comment>unit of an axis: minutes of a bag&apos;s life</comment>
        <translation>min</translation>
    </message>
    <message>
        <source>below the minimum</source>
        <translation>bajo el mínimo</translation>
    </message>
    <message>
        <source>at most:</source>
        <translation>como mucho:</translation>
    </message>
    <message>
        <source>at least:</source>
        <translation>al menos:</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>%1, %2: %3 to %4 PFU a dose now, %5 to %6 at the bag&apos;s limit; minimum %7. Indicative: a calculation that releases nothing. The label decides.</source>
        <comment>bag, component, live cells</comment>
        <translation>%1, %2: %3 a %4 UFP por dosis ahora, %5 a %6 al límite de la bolsa; mínimo %7. Indicativo: un cálculo que no libera nada. Decide la etiqueta.</translation>
    </message>
    <message>
        <source>live cells …</source>
        <translation>células vivas …</translation>
    </message>
    <message>
        <source>indicative: %1 to %2</source>
        <comment>live cells in a dose</comment>
        <translation>indicativo: %1 a %2</translation>
    </message>
</context>
<context>
    <name>CheckText</name>
    <message>
        <source>%1 birds</source>
        <translation>%1 aves</translation>
    </message>
    <message>
        <source>line …</source>
        <translation>línea …</translation>
    </message>
    <message>
        <source>another …</source>
        <comment>line</comment>
        <translation>otra …</translation>
    </message>
    <message>
        <source>Which line?</source>
        <translation>¿Qué línea?</translation>
    </message>
    <message>
        <source>%1: birds done so far, in all</source>
        <comment>a line</comment>
        <translation>%1: aves vacunadas hasta ahora, en total</translation>
    </message>
    <message>
        <source>birds</source>
        <translation>aves</translation>
    </message>
    <message>
        <source>count …</source>
        <comment>birds</comment>
        <translation>contar …</translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation>Elija antes una línea.</translation>
    </message>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>The dose is wrong.</source>
        <translation>La dosis es incorrecta.</translation>
    </message>
    <message>
        <source>The dose is wrong, but not by much: measure more shots to be sure.</source>
        <translation>La dosis es incorrecta, aunque por poco: mida más disparos para estar seguro.</translation>
    </message>
    <message>
        <source>The dose is right.</source>
        <translation>La dosis es correcta.</translation>
    </message>
    <message>
        <source>The dose is right, but only just: measure more shots to be sure.</source>
        <translation>La dosis es correcta, pero por poco: mida más disparos para estar seguro.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>from one figure to another</comment>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>water at %1</source>
        <translation>agua a %1</translation>
    </message>
    <message>
        <source>%1 g/mL</source>
        <translation>%1 g/mL</translation>
    </message>
    <message>
        <source>none yet</source>
        <comment>weights</comment>
        <translation>aún ninguno</translation>
    </message>
    <message numerus="yes">
        <source>mean of %n shot(s)</source>
        <translation>
            <numerusform>media de %n disparo</numerusform>
            <numerusform>media de %n disparos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; set: %2</source>
        <comment>the mean dose, and what is set</comment>
        <translation>%1; ajustada: %2</translation>
    </message>
    <message>
        <source>systematic error</source>
        <translation>error sistemático</translation>
    </message>
    <message>
        <source>%1; limit: ± %2</source>
        <translation>%1; límite: ± %2</translation>
    </message>
    <message>
        <source>random error</source>
        <translation>error aleatorio</translation>
    </message>
    <message>
        <source>%1; limit: %2</source>
        <translation>%1; límite: %2</translation>
    </message>
    <message>
        <source>not known: the shots were not measured one by one</source>
        <translation>no se sabe: los disparos no se midieron uno a uno</translation>
    </message>
    <message>
        <source>the mean lies in</source>
        <translation>la media está</translation>
    </message>
    <message>
        <source>when recorded</source>
        <translation>al anotar</translation>
    </message>
    <message>
        <source>limits from</source>
        <translation>límites según</translation>
    </message>
    <message>
        <source>Common practice. The label and the site go first.</source>
        <translation>Práctica habitual. La etiqueta y el centro van primero.</translation>
    </message>
    <message>
        <source>Weigh ten shots, or collect some in a cylinder.</source>
        <translation>Pese diez disparos, o recoja algunos en una probeta.</translation>
    </message>
    <message>
        <source>%1: the dose check at %2 failed. Set the injector right and check again before the line goes on.</source>
        <comment>a line, a time</comment>
        <translation>%1: la comprobación de dosis de las %2 falló. Ajuste el inyector y compruebe otra vez antes de seguir con la línea.</translation>
    </message>
    <message>
        <source>birds touched</source>
        <translation>aves afectadas</translation>
    </message>
    <message>
        <source>on record</source>
        <translation>anotado</translation>
    </message>
    <message>
        <source>A deviation names them; it waits for its review.</source>
        <translation>Una desviación las nombra; espera su revisión.</translation>
    </message>
    <message>
        <source>since then</source>
        <translation>desde entonces</translation>
    </message>
    <message>
        <source>A check at %1 was good.</source>
        <translation>La comprobación de las %1 fue buena.</translation>
    </message>
    <message>
        <source>Shown: at least %1 of the birds have it well.</source>
        <translation>Demostrado: al menos el %1 de las aves la tiene bien.</translation>
    </message>
    <message>
        <source>Not decided: look at more birds to show %1.</source>
        <translation>Sin decidir: mire más aves para demostrar el %1.</translation>
    </message>
    <message>
        <source>Missed: fewer than %1 of the birds have it well.</source>
        <translation>No se alcanza: menos del %1 de las aves la tiene bien.</translation>
    </message>
    <message>
        <source>more than a million birds</source>
        <translation>más de un millón de aves</translation>
    </message>
    <message>
        <source>good</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <comment>birds, of how many, share</comment>
        <translation>%1 de %2: %3</translation>
    </message>
    <message>
        <source>the share lies in</source>
        <translation>la proporción está</translation>
    </message>
    <message>
        <source>%1, with %2 confidence</source>
        <translation>%1, con una confianza del %2</translation>
    </message>
    <message>
        <source>needed to show it</source>
        <translation>para demostrarlo</translation>
    </message>
    <message numerus="yes">
        <source>%1 with %n missed</source>
        <comment>so many birds</comment>
        <translation>
            <numerusform>%1 con %n fallo</numerusform>
            <numerusform>%1 con %n fallos</numerusform>
        </translation>
    </message>
    <message>
        <source>with none missed</source>
        <translation>sin ningún fallo</translation>
    </message>
    <message>
        <source>supposes</source>
        <translation>supone</translation>
    </message>
    <message>
        <source>that the birds were picked at random</source>
        <translation>que las aves se eligieron al azar</translation>
    </message>
    <message>
        <source>Look at birds after their injection, and count those that have it well.</source>
        <translation>Mire aves después de inyectarlas y cuente las que la tienen bien.</translation>
    </message>
    <message>
        <source>needed to show %1</source>
        <translation>para demostrar el %1</translation>
    </message>
    <message>
        <source>%1 with none missed, with %2 confidence</source>
        <translation>%1 sin ningún fallo, con una confianza del %2</translation>
    </message>
    <message>
        <source>target from</source>
        <translation>objetivo según</translation>
    </message>
    <message numerus="yes">
        <source>%Ln bird(s) were done since a good check.</source>
        <translation>
            <numerusform>%Ln ave se vacunó desde una comprobación buena.</numerusform>
            <numerusform>%Ln aves se vacunaron desde una comprobación buena.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A deviation: %Ln bird(s) were done since a good check.</source>
        <translation>
            <numerusform>Una desviación: %Ln ave se vacunó desde una comprobación buena.</numerusform>
            <numerusform>Una desviación: %Ln aves se vacunaron desde una comprobación buena.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln bird(s)</source>
        <comment>to look at</comment>
        <translation>
            <numerusform>%Ln ave</numerusform>
            <numerusform>%Ln aves</numerusform>
        </translation>
    </message>
    <message>
        <source>to do</source>
        <translation>qué hacer</translation>
    </message>
    <message>
        <source>Limit of the card: %1</source>
        <comment>its source</comment>
        <translation>Límite de la ficha: %1</translation>
    </message>
</context>
<context>
    <name>ConnectionText</name>
    <message>
        <source>%1 is on that port.</source>
        <comment>a thermometer</comment>
        <translation>%1 está en ese puerto.</translation>
    </message>
    <message>
        <source>The balance is on that port.</source>
        <translation>La balanza está en ese puerto.</translation>
    </message>
    <message>
        <source>one-wire</source>
        <translation>un hilo</translation>
    </message>
    <message>
        <source>serial port</source>
        <translation>puerto serie</translation>
    </message>
    <message>
        <source>another port …</source>
        <translation>otro puerto …</translation>
    </message>
    <message>
        <source>by its path</source>
        <translation>por su ruta</translation>
    </message>
    <message>
        <source>read by hand</source>
        <translation>leído a mano</translation>
    </message>
    <message>
        <source>glass or digital, typed in</source>
        <translation>de vidrio o digital, escrito a mano</translation>
    </message>
    <message>
        <source>The port&apos;s path, or its name in /dev, as ttyS0</source>
        <translation>La ruta del puerto, o su nombre en /dev, como ttyS0</translation>
    </message>
</context>
<context>
    <name>CopyText</name>
    <message>
        <source>There is no copy of the record yet. Make one now.</source>
        <translation>Todavía no hay copia del registro. Haga una ahora.</translation>
    </message>
    <message>
        <source>There is no copy of the record yet.</source>
        <translation>Todavía no hay copia del registro.</translation>
    </message>
    <message>
        <source>The last copy was made %1: older than is set. Make one now.</source>
        <comment>3 h ago</comment>
        <translation>La última copia se hizo %1: es más antigua de lo fijado. Haga una ahora.</translation>
    </message>
    <message>
        <source>The last copy was made %1 and found sound.</source>
        <comment>3 h ago</comment>
        <translation>La última copia se hizo %1 y está íntegra.</translation>
    </message>
    <message>
        <source>Not copied: the stick for copies is not in. Put it in, or choose another place.</source>
        <translation>No se copió: la memoria para copias no está puesta. Póngala o elija otro lugar.</translation>
    </message>
    <message>
        <source>Not copied. %1</source>
        <comment>followed by a sentence</comment>
        <translation>No se copió. %1</translation>
    </message>
    <message numerus="yes">
        <source>%n min ago</source>
        <translation>
            <numerusform>hace %n min</numerusform>
            <numerusform>hace %n min</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n h ago</source>
        <translation>
            <numerusform>hace %n h</numerusform>
            <numerusform>hace %n h</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>hace %n día</numerusform>
            <numerusform>hace %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>There is no room for it. Take another stick, or move older copies elsewhere.</source>
        <translation>No hay sitio. Use otra memoria o lleve las copias antiguas a otro lugar.</translation>
    </message>
    <message>
        <source>That place is read-only. Unlock the stick, or choose another.</source>
        <translation>Ese lugar es de solo lectura. Desbloquee la memoria o elija otro.</translation>
    </message>
    <message>
        <source>Writing there is not permitted. Choose another place.</source>
        <translation>No está permitido escribir ahí. Elija otro lugar.</translation>
    </message>
    <message>
        <source>Writing failed. Is the stick in and whole? Choose another place.</source>
        <translation>No se pudo escribir. ¿Está puesta y sana la memoria? Elija otro lugar.</translation>
    </message>
    <message>
        <source>The record is damaged. Keep every older copy; tell the shift lead.</source>
        <translation>El registro está dañado. Guarde todas las copias antiguas; avise al encargado.</translation>
    </message>
    <message>
        <source>The copy was written, and the record in it is NOT sound at entry %1. Keep every older copy; tell the shift lead.</source>
        <translation>La copia se escribió y su registro NO está íntegro en la entrada %1. Guarde todas las copias antiguas; avise al encargado.</translation>
    </message>
    <message>
        <source>The copy was written, and the seal at entry %1 is not this station&apos;s. Keep every older copy; tell the shift lead.</source>
        <translation>La copia se escribió y el sello de la entrada %1 no es de esta estación. Guarde todas las copias antiguas; avise al encargado.</translation>
    </message>
    <message>
        <source>The copy was written, but reading it back failed. Take another stick and copy again.</source>
        <translation>La copia se escribió, pero no se pudo releer. Use otra memoria y copie de nuevo.</translation>
    </message>
    <message>
        <source>The record is being copied and read back …</source>
        <translation>Se está copiando y releyendo el registro …</translation>
    </message>
    <message>
        <source>The copy is made as soon as the pull is done.</source>
        <translation>La copia se hace en cuanto termine la tanda.</translation>
    </message>
    <message>
        <source>copying …</source>
        <translation>copiando …</translation>
    </message>
    <message>
        <source>after the pull</source>
        <translation>tras la tanda</translation>
    </message>
    <message>
        <source>the last one failed</source>
        <translation>falló la última</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>ninguna aún</translation>
    </message>
    <message>
        <source>The damaged part before it lies there as %1: another file has its name.</source>
        <comment>a file, or some</comment>
        <translation>La parte dañada anterior está allí como %1: otro archivo tiene su nombre.</translation>
    </message>
</context>
<context>
    <name>Damage</name>
    <message>
        <source>The record in %1 is damaged, and no second file could be begun. %2 Nothing was changed: call whoever looks after this computer, or restore a copy.</source>
        <comment>a file; a sentence</comment>
        <translation>El registro en %1 está dañado y no se pudo empezar un segundo archivo. %2 No se cambió nada: llame a quien cuida este equipo o restaure una copia.</translation>
    </message>
    <message>
        <source>The record in %1 is damaged after entry %2. It is kept as it is, and the record goes on in %3. Tell the shift lead, then start again.</source>
        <comment>a file; a number; a file</comment>
        <translation>El registro en %1 está dañado después de la entrada %2. Se conserva tal cual y el registro sigue en %3. Avise al encargado y vuelva a empezar.</translation>
    </message>
    <message>
        <source>Nothing of the record in %1 can be read. It is kept as it is, and a record begins anew in %2. Tell the shift lead, who may have a copy restored; then start again.</source>
        <comment>a file; a file</comment>
        <translation>Del registro de %1 no se puede leer nada. Se guarda como está, y un registro nuevo empieza en %2. Avise al encargado, que puede hacer restaurar una copia; luego, inicie otra vez.</translation>
    </message>
</context>
<context>
    <name>DayPlan</name>
    <message>
        <source>cannot be done: %1</source>
        <comment>a line</comment>
        <translation>no se puede hacer: %1</translation>
    </message>
    <message>
        <source>the bench</source>
        <translation>la mesa</translation>
    </message>
    <message>
        <source>Not everything can be done</source>
        <translation>No todo se puede hacer</translation>
    </message>
    <message>
        <source>Everything can be done</source>
        <translation>Todo se puede hacer</translation>
    </message>
    <message numerus="yes">
        <source>Everything can be done; %n thing(s) to look at</source>
        <translation>
            <numerusform>Todo se puede hacer; %n cosa que mirar</numerusform>
            <numerusform>Todo se puede hacer; %n cosas que mirar</numerusform>
        </translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>next pull</source>
        <translation>próxima tanda</translation>
    </message>
    <message>
        <source>look</source>
        <translation>mire</translation>
    </message>
</context>
<context>
    <name>DaySheet</name>
    <message>
        <source>! %1 OVER</source>
        <comment>a time that passed its limit</comment>
        <translation>! %1 EXCEDIDO</translation>
    </message>
    <message>
        <source>not tapped</source>
        <comment>a step whose time is not known</comment>
        <translation>sin marcar</translation>
    </message>
    <message>
        <source>uncertain</source>
        <comment>a time across a restart</comment>
        <translation>incierto</translation>
    </message>
    <message>
        <source>ON HOLD %1: %2</source>
        <comment>since when, why</comment>
        <translation>RETENIDA %1: %2</translation>
    </message>
    <message>
        <source>%1 %2, %3 left</source>
        <comment>when, why, how much was left in the bag</comment>
        <translation>%1 %2, quedan %3</translation>
    </message>
    <message>
        <source>not down</source>
        <comment>a bag</comment>
        <translation>sin retirar</translation>
    </message>
    <message>
        <source>lost: %1</source>
        <translation>perdida: %1</translation>
    </message>
    <message>
        <source>in no bag</source>
        <translation>en ninguna bolsa</translation>
    </message>
    <message>
        <source>! no reading that counts</source>
        <translation>! ninguna lectura válida</translation>
    </message>
    <message>
        <source>limit</source>
        <comment>beside a line of a chart</comment>
        <translation>límite</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>bolsa</translation>
    </message>
    <message>
        <source>diluent: volume, lot, temperature</source>
        <translation>diluyente: volumen, lote, temperatura</translation>
    </message>
    <message>
        <source>ampoules</source>
        <translation>ampollas</translation>
    </message>
    <message>
        <source>first in</source>
        <translation>primera dentro</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>mezclada</translation>
    </message>
    <message>
        <source>hung on</source>
        <translation>colgada en</translation>
    </message>
    <message>
        <source>down</source>
        <translation>retirada</translation>
    </message>
    <message>
        <source>birds</source>
        <translation>aves</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>en uso</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>No bag was made up.</source>
        <translation>No se preparó ninguna bolsa.</translation>
    </message>
    <message>
        <source>pull/no.</source>
        <translation>tanda/n.º</translation>
    </message>
    <message>
        <source>component</source>
        <translation>componente</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>lote</translation>
    </message>
    <message>
        <source>out</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>out to bath</source>
        <translation>de fuera al baño</translation>
    </message>
    <message>
        <source>bath to diluent</source>
        <translation>del baño al diluyente</translation>
    </message>
    <message>
        <source>No ampoule came out of the cryogen.</source>
        <translation>No salió ninguna ampolla del criógeno.</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>tanda</translation>
    </message>
    <message>
        <source>in bath</source>
        <translation>en el baño</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>termómetro</translation>
    </message>
    <message>
        <source>indicated</source>
        <translation>indicada</translation>
    </message>
    <message>
        <source>corrected ± U (k = 2)</source>
        <translation>corregida ± U (k = 2)</translation>
    </message>
    <message>
        <source>verdict</source>
        <translation>veredicto</translation>
    </message>
    <message>
        <source>There was no pull.</source>
        <translation>No hubo ninguna tanda.</translation>
    </message>
    <message>
        <source>By pull and ampoule. Filled: out to bath. Open: bath to diluent. The thick line is the limit; ! is over it.</source>
        <translation>Por tanda y ampolla. Lleno: de fuera al baño. Hueco: del baño al diluyente. La línea gruesa es el límite; ! lo excede.</translation>
    </message>
    <message>
        <source>Bags in use: from the first ampoule in diluent until down.</source>
        <translation>Bolsas en uso: desde la primera ampolla en diluyente hasta retirarla.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>no site named</source>
        <translation>sin nombre del lugar</translation>
    </message>
    <message>
        <source>Day sheet: %1</source>
        <comment>a day</comment>
        <translation>Hoja del día: %1</translation>
    </message>
    <message>
        <source>%1 · station %2 · %3</source>
        <comment>site, station, time zone</comment>
        <translation>%1 · estación %2 · %3</translation>
    </message>
    <message>
        <source>REHEARSAL: not for birds</source>
        <translation>ENSAYO: no para aves</translation>
    </message>
    <message>
        <source>Bathside %1 · record %2:%3…</source>
        <comment>version, entries, hash</comment>
        <translation>Bathside %1 · registro %2:%3…</translation>
    </message>
    <message>
        <source>%1, still open</source>
        <comment>when a shift was opened</comment>
        <translation>%1, aún abierto</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>times of a shift</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zona horaria</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Entradas</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Turno</translation>
    </message>
    <message>
        <source>Head of the record</source>
        <translation>Cabeza del registro</translation>
    </message>
    <message>
        <source>Keep this sheet apart from the station. Scanned there on any page, the code tells whether the record is still the one that was printed.</source>
        <translation>Guarde esta hoja lejos de la estación. Escaneado allí en cualquier página, el código dice si el registro sigue siendo el que se imprimió.</translation>
    </message>
    <message>
        <source>The code says</source>
        <translation>El código dice</translation>
    </message>
    <message>
        <source>No shift was opened on this day.</source>
        <translation>Ese día no se abrió ningún turno.</translation>
    </message>
    <message>
        <source>Procedure card</source>
        <translation>Ficha de procedimiento</translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation>%1, versión %2</translation>
    </message>
    <message>
        <source>Card&apos;s hash</source>
        <translation>Huella de la ficha</translation>
    </message>
    <message>
        <source>Approved</source>
        <translation>Aprobada</translation>
    </message>
    <message>
        <source>by a shift lead&apos;s signature</source>
        <translation>con la firma de un encargado</translation>
    </message>
    <message>
        <source>not by a signature on record</source>
        <translation>sin firma en el registro</translation>
    </message>
    <message>
        <source>Water bath at each pull</source>
        <translation>Baño de agua en cada tanda</translation>
    </message>
    <message>
        <source>Target %1, tolerance %2; a reading is inside only where its uncertainty leaves no doubt.</source>
        <translation>Objetivo %1, tolerancia %2; una lectura está dentro solo si su incertidumbre no deja duda.</translation>
    </message>
    <message>
        <source>Ampoules: times against their limits</source>
        <translation>Ampollas: tiempos frente a sus límites</translation>
    </message>
    <message>
        <source>Chart of times, as shares of their limits</source>
        <translation>Gráfico de tiempos, en parte de sus límites</translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation>Desviaciones</translation>
    </message>
    <message>
        <source>Shift opened %1</source>
        <translation>Turno abierto %1</translation>
    </message>
    <message>
        <source>Planned and done</source>
        <translation>Previsto y hecho</translation>
    </message>
    <message>
        <source>Set-up checks</source>
        <translation>Comprobaciones de preparación</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>Bolsas</translation>
    </message>
    <message>
        <source>Stores reckoned up</source>
        <translation>Cuentas de existencias</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Sello</translation>
    </message>
    <message>
        <source>This day is not sealed.</source>
        <translation>Este día no está sellado.</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Sellado</translation>
    </message>
    <message>
        <source>%1, by entry %2</source>
        <translation>%1, por la entrada %2</translation>
    </message>
    <message>
        <source>Sealed head</source>
        <translation>Cabeza sellada</translation>
    </message>
    <message>
        <source>Public key</source>
        <translation>Clave pública</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Firmas</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>! OPEN</source>
        <comment>a set-up check nobody did</comment>
        <translation>! PENDIENTE</translation>
    </message>
    <message>
        <source>open</source>
        <comment>a set-up check nobody did</comment>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>! OVERRIDDEN: %1</source>
        <comment>a set-up check, why</comment>
        <translation>! SE SIGUIÓ SIN ELLA: %1</translation>
    </message>
    <message>
        <source>done</source>
        <comment>a set-up check</comment>
        <translation>hecho</translation>
    </message>
    <message>
        <source>! NOT GOOD</source>
        <comment>a set-up check</comment>
        <translation>! NO CORRECTO</translation>
    </message>
    <message>
        <source>! NOT REVIEWED</source>
        <comment>a deviation</comment>
        <translation>! SIN REVISAR</translation>
    </message>
    <message>
        <source>%1, signed</source>
        <comment>who reviewed a deviation</comment>
        <translation>%1, firmado</translation>
    </message>
    <message>
        <source>%1, bag %2</source>
        <comment>a deviation, the bag it touched</comment>
        <translation>%1, bolsa %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>temperatures</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>planned birds</source>
        <translation>aves previstas</translation>
    </message>
    <message>
        <source>birds done</source>
        <translation>aves hechas</translation>
    </message>
    <message>
        <source>planned rate an hour</source>
        <translation>ritmo previsto por hora</translation>
    </message>
    <message>
        <source>planned start</source>
        <translation>comienzo previsto</translation>
    </message>
    <message>
        <source>first bag hung</source>
        <translation>primera bolsa colgada</translation>
    </message>
    <message>
        <source>last bag down</source>
        <translation>última bolsa retirada</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>bolsas</translation>
    </message>
    <message>
        <source>No line ran and none was planned.</source>
        <translation>No trabajó ninguna línea ni había ninguna prevista.</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>sin previsión</translation>
    </message>
    <message>
        <source>%1, fewer than planned</source>
        <translation>%1, menos de lo previsto</translation>
    </message>
    <message>
        <source>check</source>
        <translation>comprobación</translation>
    </message>
    <message>
        <source>result</source>
        <translation>resultado</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>at</source>
        <comment>a time</comment>
        <translation>hora</translation>
    </message>
    <message>
        <source>The card asks for no checks.</source>
        <translation>La ficha no pide comprobaciones.</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>desviación</translation>
    </message>
    <message>
        <source>entry</source>
        <translation>entrada</translation>
    </message>
    <message>
        <source>over by</source>
        <translation>excedido en</translation>
    </message>
    <message>
        <source>severity</source>
        <translation>gravedad</translation>
    </message>
    <message>
        <source>cause</source>
        <translation>causa</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>qué se hizo</translation>
    </message>
    <message>
        <source>reviewed by</source>
        <translation>revisado por</translation>
    </message>
    <message>
        <source>None.</source>
        <comment>no deviations</comment>
        <translation>Ninguna.</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>esperado</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>contado</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>diferencia</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation>tolerancia</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation>resultado</translation>
    </message>
    <message>
        <source>There is nothing to reckon up.</source>
        <translation>No hay nada que contar.</translation>
    </message>
    <message>
        <source>who</source>
        <translation>quién</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>comment</source>
        <translation>comentario</translation>
    </message>
    <message>
        <source>None.</source>
        <comment>no notes</comment>
        <translation>Ninguna.</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>meaning</source>
        <translation>significado</translation>
    </message>
    <message>
        <source>of what</source>
        <translation>de qué</translation>
    </message>
    <message>
        <source>Nobody has signed.</source>
        <translation>Nadie ha firmado.</translation>
    </message>
    <message>
        <source>%1 %2: not calibrated.</source>
        <comment>a thermometer: id, name</comment>
        <translation>%1 %2: sin calibrar.</translation>
    </message>
    <message>
        <source>%1 %2: certificate %3, calibrated %4, due %5.</source>
        <comment>a thermometer: id, name</comment>
        <translation>%1 %2: certificado %3, calibrado %4, vence %5.</translation>
    </message>
    <message>
        <source>Entry %1: %2, %3: the limit was kept, as a correction has shown.</source>
        <comment>of a deviation: its number, limit, whom</comment>
        <translation>Entrada %1: %2, %3: el límite se respetó, como mostró una corrección.</translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <comment>who reviewed a deviation, a later day</comment>
        <translation>%1, el %2</translation>
    </message>
    <message>
        <source>The procedure card of this shift is not in this file: no limits and no checks are shown. Its hash: %1</source>
        <translation>La ficha de este turno no está en este archivo: no se muestran límites ni comprobaciones. Su huella: %1</translation>
    </message>
    <message>
        <source>Deviations of earlier shifts that were open</source>
        <translation>Desviaciones de turnos anteriores que seguían abiertas</translation>
    </message>
    <message>
        <source>entry %1</source>
        <comment>what was signed, its numbers</comment>
        <translation>entrada %1</translation>
    </message>
    <message>
        <source>card %1</source>
        <comment>what was signed</comment>
        <translation>ficha %1</translation>
    </message>
    <message>
        <source>baseline of chart %1</source>
        <comment>what was signed</comment>
        <translation>base del gráfico %1</translation>
    </message>
    <message>
        <source>the shift</source>
        <comment>what was signed</comment>
        <translation>el turno</translation>
    </message>
    <message>
        <source>The card is not in this file.</source>
        <translation>La ficha no está en este archivo.</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>! NOT DECIDED</source>
        <comment>on a bag on hold</comment>
        <translation>! SIN DECIDIR</translation>
    </message>
    <message>
        <source>on hold since</source>
        <translation>retenida desde</translation>
    </message>
    <message>
        <source>why</source>
        <translation>por qué</translation>
    </message>
    <message>
        <source>decided</source>
        <translation>decidido</translation>
    </message>
    <message>
        <source>by</source>
        <translation>por</translation>
    </message>
    <message>
        <source>decision</source>
        <translation>decisión</translation>
    </message>
    <message>
        <source>open in this shift</source>
        <comment>a deviation</comment>
        <translation>abierta en este turno</translation>
    </message>
    <message>
        <source>%1 (%2, %3)</source>
        <comment>a comment, who, when</comment>
        <translation>%1 (%2, %3)</translation>
    </message>
</context>
<context>
    <name>Fact</name>
    <message>
        <source>%1, %2</source>
        <comment>name of a limit, whom it is about</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Deviation: %1, %2, by %3.</source>
        <comment>name of the limit, whom, by how much</comment>
        <translation>Desviación: %1, %2, por %3.</translation>
    </message>
    <message>
        <source>Judged again: %1, %2, the limit was kept.</source>
        <translation>Juzgado otra vez: %1, %2, el límite se cumplió.</translation>
    </message>
    <message>
        <source>Judged again: %1, %2, passed by %3.</source>
        <translation>Juzgado otra vez: %1, %2, excedido por %3.</translation>
    </message>
    <message>
        <source>Alarm, %1: %2.</source>
        <comment>level, what about</comment>
        <translation>Alarma, %1: %2.</translation>
    </message>
    <message>
        <source>Alarm sounded on %1, %2 after it was due: %3.</source>
        <comment>loudspeaker, time, what about</comment>
        <translation>La alarma sonó en %1, %2 después de su hora: %3.</translation>
    </message>
    <message>
        <source>Alarm heard: %1.</source>
        <translation>Alarma oída: %1.</translation>
    </message>
    <message>
        <source>Alarm ended: %1.</source>
        <translation>Alarma terminada: %1.</translation>
    </message>
    <message>
        <source>Entry %1 was corrected: %2 is %3. Reason: %4.</source>
        <comment>number, which part, new value, reason</comment>
        <translation>Se corrigió la entrada %1: %2 es %3. Motivo: %4.</translation>
    </message>
    <message numerus="yes">
        <source>Taken back: %n entries, %1.</source>
        <comment>number of entries, which</comment>
        <translation>
            <numerusform>Retirada: %n entrada, %1.</numerusform>
            <numerusform>Retiradas: %n entradas, %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Taken back: %n entries, %1. Reason: %2.</source>
        <comment>number of entries, which, reason</comment>
        <translation>
            <numerusform>Retirada: %n entrada, %1. Motivo: %2.</numerusform>
            <numerusform>Retiradas: %n entradas, %1. Motivo: %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Asked &quot;%1&quot;, answered &quot;%2&quot;.</source>
        <comment>question&apos;s id, choice</comment>
        <translation>Pregunta «%1», respuesta «%2».</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Nota: %1</translation>
    </message>
    <message>
        <source>A tap was refused: %1 (%2).</source>
        <comment>what was tapped, why</comment>
        <translation>Se rechazó un toque: %1 (%2).</translation>
    </message>
    <message>
        <source>Scanned: %1</source>
        <translation>Código leído: %1</translation>
    </message>
    <message>
        <source>%1 Implied by a later step, not timed.</source>
        <comment>added to a whole sentence</comment>
        <translation>%1 Deducido de un paso posterior, sin hora propia.</translation>
    </message>
    <message>
        <source>Bag %1 was started: %2, diluent lot %3.</source>
        <translation>Se empezó la bolsa %1: %2, lote de diluyente %3.</translation>
    </message>
    <message>
        <source>Bag %1 was started: %2, diluent lot %3, at %4.</source>
        <translation>Se empezó la bolsa %1: %2, lote de diluyente %3, a %4.</translation>
    </message>
    <message>
        <source>Bag %1 was inspected and is good.</source>
        <translation>Se revisó la bolsa %1 y está bien.</translation>
    </message>
    <message>
        <source>Bag %1 was inspected and is not good.</source>
        <translation>Se revisó la bolsa %1 y no está bien.</translation>
    </message>
    <message>
        <source>%1 of diluent were drawn from bag %2.</source>
        <comment>volume, bag</comment>
        <translation>Se tomaron %1 de diluyente de la bolsa %2.</translation>
    </message>
    <message>
        <source>Bag %1 was mixed.</source>
        <translation>Se mezcló la bolsa %1.</translation>
    </message>
    <message>
        <source>Bag %1 was swirled.</source>
        <translation>Se removió la bolsa %1.</translation>
    </message>
    <message>
        <source>Bag %1 was hung on line %2.</source>
        <translation>Se colgó la bolsa %1 en la línea %2.</translation>
    </message>
    <message>
        <source>Bag %1 was put on hold: %2.</source>
        <comment>bag, reason</comment>
        <translation>Se retuvo la bolsa %1: %2.</translation>
    </message>
    <message>
        <source>Bag %1 was put on hold: %2, %3.</source>
        <comment>bag, reason, more words</comment>
        <translation>Se retuvo la bolsa %1: %2, %3.</translation>
    </message>
    <message>
        <source>Bag %1 was taken down: %2, %3 left.</source>
        <comment>bag, reason, volume</comment>
        <translation>Se retiró la bolsa %1: %2, quedaban %3.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 came out of the cryogen: %3, lot %4.</source>
        <comment>ampoule, pull, component, lot</comment>
        <translation>La ampolla %1, tanda %2 salió del criógeno: %3, lote %4.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 went into the bath.</source>
        <translation>La ampolla %1, tanda %2 entró en el baño.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 was opened.</source>
        <translation>Se abrió la ampolla %1, tanda %2.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 went into diluent.</source>
        <translation>La ampolla %1, tanda %2 pasó al diluyente.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 was rinsed.</source>
        <translation>Se enjuagó la ampolla %1, tanda %2.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 went into bag %3.</source>
        <translation>La ampolla %1, tanda %2 pasó a la bolsa %3.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 was lost: %3.</source>
        <comment>ampoule, pull, reason</comment>
        <translation>Se perdió la ampolla %1, tanda %2: %3.</translation>
    </message>
    <message>
        <source>The cane at %1 was out of the cryogen for %2; what stays on it is in quarantine.</source>
        <translation>La varilla de %1 estuvo fuera del criógeno %2; lo que queda en ella está en cuarentena.</translation>
    </message>
    <message>
        <source>The next pull is planned for %1.</source>
        <translation>La próxima tanda está prevista para %1.</translation>
    </message>
    <message>
        <source>The shift opened, local time of %1.</source>
        <translation>Se abrió el turno, hora local de %1.</translation>
    </message>
    <message>
        <source>The shift closed: ampoules out %1, in bags %2, lost %3; bags %4.</source>
        <translation>Se cerró el turno: ampollas sacadas %1, en bolsas %2, perdidas %3; bolsas %4.</translation>
    </message>
    <message>
        <source>%1 came on duty.</source>
        <translation>%1 entró de servicio.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; is done: %2.</source>
        <translation>Comprobación «%1» hecha: %2.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; failed: %2.</source>
        <translation>Comprobación «%1» fallida: %2.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; is done.</source>
        <translation>Comprobación «%1» hecha.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; failed.</source>
        <translation>Comprobación «%1» fallida.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; was overridden. Reason: %2.</source>
        <translation>Se siguió sin la comprobación «%1». Motivo: %2.</translation>
    </message>
    <message>
        <source>Bath: no reading. %1</source>
        <comment>followed by the sentence that says why</comment>
        <translation>Baño: sin lectura. %1</translation>
    </message>
    <message>
        <source>Bath: no reading.</source>
        <translation>Baño: sin lectura.</translation>
    </message>
    <message>
        <source>Bath: %1, %2.</source>
        <comment>temperature, verdict</comment>
        <translation>Baño: %1, %2.</translation>
    </message>
    <message>
        <source>The bath water was changed. Reason: %1.</source>
        <translation>Se cambió el agua del baño. Motivo: %1.</translation>
    </message>
    <message>
        <source>Line %1: %2 birds in all.</source>
        <translation>Línea %1: %2 aves en total.</translation>
    </message>
    <message>
        <source>Line %1: the needle was changed.</source>
        <translation>Línea %1: se cambió la aguja.</translation>
    </message>
    <message>
        <source>Line %1 stopped.</source>
        <translation>La línea %1 paró.</translation>
    </message>
    <message>
        <source>Line %1 is going again.</source>
        <translation>La línea %1 sigue en marcha.</translation>
    </message>
    <message>
        <source>Line %1: the dose was checked and is right.</source>
        <translation>Línea %1: se comprobó la dosis y es correcta.</translation>
    </message>
    <message>
        <source>Line %1: the dose was checked and is wrong.</source>
        <translation>Línea %1: se comprobó la dosis y no es correcta.</translation>
    </message>
    <message>
        <source>The station started for a rehearsal, version %1.</source>
        <translation>La estación arrancó para un ensayo, versión %1.</translation>
    </message>
    <message>
        <source>The station started, version %1.</source>
        <translation>La estación arrancó, versión %1.</translation>
    </message>
    <message>
        <source>The station stopped.</source>
        <translation>La estación se detuvo.</translation>
    </message>
    <message>
        <source>The wall clock was put back by %1.</source>
        <translation>El reloj se atrasó %1.</translation>
    </message>
    <message>
        <source>The wall clock was put forward by %1.</source>
        <translation>El reloj se adelantó %1.</translation>
    </message>
    <message>
        <source>The wall clock is synchronised.</source>
        <translation>El reloj está sincronizado.</translation>
    </message>
    <message>
        <source>The wall clock is not synchronised.</source>
        <translation>El reloj no está sincronizado.</translation>
    </message>
    <message>
        <source>The record failed. %1</source>
        <comment>followed by the sentence that says why</comment>
        <translation>Falló el registro. %1</translation>
    </message>
    <message numerus="yes">
        <source>The record works again; %n event(s) were brought in.</source>
        <translation>
            <numerusform>El registro vuelve a funcionar; se incorporó %n suceso.</numerusform>
            <numerusform>El registro vuelve a funcionar; se incorporaron %n sucesos.</numerusform>
        </translation>
    </message>
    <message>
        <source>The alarm was heard from %1.</source>
        <comment>a loudspeaker</comment>
        <translation>La alarma se oyó por %1.</translation>
    </message>
    <message>
        <source>The sound was lost on %1.</source>
        <comment>a loudspeaker</comment>
        <translation>Se perdió el sonido en %1.</translation>
    </message>
    <message>
        <source>The sound is back on %1.</source>
        <comment>a loudspeaker</comment>
        <translation>Volvió el sonido en %1.</translation>
    </message>
    <message>
        <source>A procedure card was adopted.</source>
        <translation>Se adoptó una ficha de procedimiento.</translation>
    </message>
    <message>
        <source>Thermometer %1 was described.</source>
        <translation>Se describió el termómetro %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n bird(s)</source>
        <comment>by how many a limit was passed</comment>
        <translation>
            <numerusform>%n ave</numerusform>
            <numerusform>%n aves</numerusform>
        </translation>
    </message>
    <message>
        <source>Line %1 is planned no more.</source>
        <translation>La línea %1 ya no está prevista.</translation>
    </message>
    <message>
        <source>Line %1 is planned: %2 birds at %3 an hour.</source>
        <translation>Línea %1 prevista: %2 aves a %3 por hora.</translation>
    </message>
    <message>
        <source>Received: %1 of %2, at %3.</source>
        <comment>how many, what, place</comment>
        <translation>Recibido: %1 de %2, en %3.</translation>
    </message>
    <message>
        <source>Moved: %1 of %2, from %3 to %4.</source>
        <comment>how many, what, places</comment>
        <translation>Movido: %1 de %2, de %3 a %4.</translation>
    </message>
    <message>
        <source>Counted: %1 of %2, at %3.</source>
        <comment>how many, what, place</comment>
        <translation>Contado: %1 de %2, en %3.</translation>
    </message>
    <message>
        <source>Taken out of the stores: %1 of %2, from %3. Reason: %4.</source>
        <comment>how many, what, place, why</comment>
        <translation>Sacado de las existencias: %1 de %2, de %3. Motivo: %4.</translation>
    </message>
    <message>
        <source>Put in quarantine: %1 at %2. Reason: %3.</source>
        <translation>Puesto en cuarentena: %1 en %2. Motivo: %3.</translation>
    </message>
    <message>
        <source>Put in quarantine: %1. Reason: %2.</source>
        <translation>Puesto en cuarentena: %1. Motivo: %2.</translation>
    </message>
    <message>
        <source>%1 released %2 from quarantine. Reason: %3.</source>
        <translation>%1 sacó de la cuarentena %2. Motivo: %3.</translation>
    </message>
    <message>
        <source>%1 allowed %2 for this shift. Reason: %3.</source>
        <translation>%1 permitió %2 para este turno. Motivo: %3.</translation>
    </message>
    <message>
        <source>The next ampoules of %1 are of lot %2.</source>
        <translation>Las próximas ampollas de %1 son del lote %2.</translation>
    </message>
    <message>
        <source>The balance of the stores was carried into this shift.</source>
        <translation>El saldo de las existencias pasó a este turno.</translation>
    </message>
    <message>
        <source>Vessel %1 is described anew.</source>
        <translation>El recipiente %1 se ha descrito de nuevo.</translation>
    </message>
    <message>
        <source>Vessel %1 was filled; its dipstick shows %2 mm.</source>
        <translation>El recipiente %1 se ha llenado; la varilla marca %2 mm.</translation>
    </message>
    <message>
        <source>Vessel %1: the dipstick shows %2 mm.</source>
        <translation>Recipiente %1: la varilla marca %2 mm.</translation>
    </message>
    <message>
        <source>%1 (%2) works here no more.</source>
        <translation>%1 (%2) ya no trabaja aquí.</translation>
    </message>
    <message>
        <source>%1 (%2) is listed as %3.</source>
        <comment>name, initials, role</comment>
        <translation>%1 (%2) figura en la lista como %3.</translation>
    </message>
    <message>
        <source>%1 has a new PIN.</source>
        <translation>%1 tiene un PIN nuevo.</translation>
    </message>
    <message>
        <source>A PIN was given that is not that of %1.</source>
        <translation>Se ha dado un PIN que no es el de %1.</translation>
    </message>
    <message>
        <source>Signed: %1.</source>
        <comment>meaning</comment>
        <translation>Firmado: %1.</translation>
    </message>
    <message>
        <source>Deviation of event %1 reviewed. Cause: %2. Action: %3.</source>
        <translation>Desviación del suceso %1 revisada. Causa: %2. Acción: %3.</translation>
    </message>
    <message>
        <source>Deviations that nobody has reviewed yet were carried into this shift.</source>
        <translation>Las desviaciones que nadie ha revisado aún han pasado a este turno.</translation>
    </message>
    <message>
        <source>On the note of event %1: %2</source>
        <translation>Sobre la nota del suceso %1: %2</translation>
    </message>
    <message>
        <source>The card %1 is approved; it holds from the next bag.</source>
        <comment>hash</comment>
        <translation>La ficha %1 está aprobada; rige desde la próxima bolsa.</translation>
    </message>
    <message>
        <source>The record was sealed after %1 events; its head is %2.</source>
        <comment>count, hash</comment>
        <translation>El registro se selló tras %1 sucesos; su cabeza es %2.</translation>
    </message>
    <message>
        <source>A printed seal of %1 events was read back: the record agrees.</source>
        <translation>Se leyó un sello impreso de %1 sucesos: el registro coincide.</translation>
    </message>
    <message>
        <source>A printed seal of %1 events was read back: the record does NOT agree.</source>
        <translation>Se leyó un sello impreso de %1 sucesos: el registro NO coincide.</translation>
    </message>
    <message>
        <source>A copy of the record was made and verified: %1.</source>
        <translation>Se hizo y comprobó una copia del registro: %1.</translation>
    </message>
    <message>
        <source>Line %1: of %2 birds looked at, %3 were vaccinated well.</source>
        <translation>Línea %1: de %2 aves miradas, %3 estaban bien vacunadas.</translation>
    </message>
    <message>
        <source>The limits of the chart &quot;%1&quot; come from events %2 to %3.</source>
        <translation>Los límites del gráfico «%1» vienen de los sucesos %2 a %3.</translation>
    </message>
    <message>
        <source>This record goes on where %1 was still sound, after %2 events.</source>
        <translation>Este registro sigue donde %1 aún estaba íntegro, tras %2 sucesos.</translation>
    </message>
    <message>
        <source>The baseline of the chart &quot;%1&quot; was withdrawn.</source>
        <translation>Se retiró la referencia del gráfico &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>Signed: %1, entry %2.</source>
        <comment>meaning, what was signed</comment>
        <translation>Firmado: %1, entrada %2.</translation>
    </message>
    <message>
        <source>The alarm was heard.</source>
        <translation>La alarma se oyó.</translation>
    </message>
    <message>
        <source>The sound was lost.</source>
        <translation>Se perdió el sonido.</translation>
    </message>
    <message>
        <source>The sound is back.</source>
        <translation>Ha vuelto el sonido.</translation>
    </message>
    <message>
        <source>%1 ended the hold of bag %2: %3.</source>
        <comment>who, bag, what was decided</comment>
        <translation>%1 puso fin a la retención de la bolsa %2: %3.</translation>
    </message>
    <message>
        <source>%1 To be shown: %2 %, with %3 % confidence.</source>
        <comment>what was looked at; a share</comment>
        <translation>%1 Por demostrar: %2 %, con %3 % de confianza.</translation>
    </message>
    <message>
        <source>What the pulls so far say of the bath was carried into this shift.</source>
        <translation>Lo que las tandas anteriores dicen del baño pasó a este turno.</translation>
    </message>
</context>
<context>
    <name>Fault</name>
    <message>
        <source>The disk is full. Free some space; what waits is then written.</source>
        <translation>El disco está lleno. Libere espacio; lo que espera se escribirá entonces.</translation>
    </message>
    <message>
        <source>The folder of the record is read-only. Choose one that can be written.</source>
        <translation>La carpeta del registro es de solo lectura. Elija una en la que se pueda escribir.</translation>
    </message>
    <message>
        <source>Writing the record is not permitted. Ask who looks after this computer.</source>
        <translation>No hay permiso para escribir el registro. Pregunte a quien cuida este equipo.</translation>
    </message>
    <message>
        <source>Another program holds the record. Close it first.</source>
        <translation>Otro programa tiene abierto el registro. Ciérrelo primero.</translation>
    </message>
    <message>
        <source>The record is damaged. It is kept as it is; tell the shift lead.</source>
        <translation>El registro está dañado. Se conserva tal como está; avise al encargado.</translation>
    </message>
    <message>
        <source>That file is no record of this program. It was left alone; choose another.</source>
        <translation>Ese archivo no es un registro de este programa. No se ha tocado; elija otro.</translation>
    </message>
    <message>
        <source>The record was written by a later version. Use that version.</source>
        <translation>El registro se escribió con una versión posterior. Use esa versión.</translation>
    </message>
    <message>
        <source>A write to the record failed. What happened is kept and written later.</source>
        <translation>Falló una escritura del registro. Lo ocurrido se guarda y se escribirá después.</translation>
    </message>
    <message>
        <source>Whether the last write is safe is not known. Work goes on in a second file.</source>
        <translation>No se sabe si la última escritura está a salvo. Se sigue en un segundo archivo.</translation>
    </message>
    <message>
        <source>The record lies on a network drive, which is not safe. Move it to this computer.</source>
        <translation>El registro está en una unidad de red, que no es segura. Páselo a este equipo.</translation>
    </message>
    <message>
        <source>The record and the screen disagree. Restart the station.</source>
        <translation>El registro y la pantalla no coinciden. Reinicie la estación.</translation>
    </message>
    <message>
        <source>%1 (System error %2.)</source>
        <comment>a whole sentence; a number</comment>
        <translation>%1 (Error del sistema %2.)</translation>
    </message>
    <message>
        <source>The procedure card cannot be used: expected %1, found %2.</source>
        <translation>La ficha de procedimiento no se puede usar: se esperaba %1 y hay %2.</translation>
    </message>
    <message>
        <source>The procedure card cannot be used: at &quot;%1&quot;, expected %2, found %3.</source>
        <translation>La ficha de procedimiento no se puede usar: en «%1» se esperaba %2 y hay %3.</translation>
    </message>
    <message>
        <source>The thermometer&apos;s description cannot be used: expected %1, found %2.</source>
        <translation>La descripción del termómetro no se puede usar: se esperaba %1 y hay %2.</translation>
    </message>
    <message>
        <source>The thermometer&apos;s description cannot be used: at &quot;%1&quot;, expected %2, found %3.</source>
        <translation>La descripción del termómetro no se puede usar: en «%1» se esperaba %2 y hay %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) wait to be recorded. Go on working.</source>
        <translation>
            <numerusform>%n suceso espera a ser registrado. Siga trabajando.</numerusform>
            <numerusform>%n sucesos esperan a ser registrados. Siga trabajando.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not confirmed in the record, kept in a second file. Go on working; tell the shift lead.</source>
        <translation>Sin confirmar en el registro, guardado en un segundo archivo. Siga trabajando; avise al encargado.</translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) are not recorded. Go on working; leave the station on; call the shift lead.</source>
        <translation>
            <numerusform>%n suceso está sin registrar. Siga trabajando; no apague la estación; llame al encargado.</numerusform>
            <numerusform>%n sucesos están sin registrar. Siga trabajando; no apague la estación; llame al encargado.</numerusform>
        </translation>
    </message>
    <message>
        <source>The record cannot be kept safely on this disk. Move it to another disk of this computer.</source>
        <translation>En este disco el registro no está a salvo. Páselo a otro disco de este equipo.</translation>
    </message>
    <message>
        <source>The scan is empty. Scan again.</source>
        <translation>El escaneo está vacío. Vuelva a escanear.</translation>
    </message>
    <message>
        <source>The scan is longer than any code. Scan one code alone.</source>
        <translation>El escaneo es más largo que cualquier código. Escanee un solo código.</translation>
    </message>
    <message>
        <source>This code has a part that is not known here. Read the label.</source>
        <translation>Este código tiene una parte que aquí no se conoce. Lea la etiqueta.</translation>
    </message>
    <message>
        <source>A part of this code is too short. Scan again.</source>
        <translation>Una parte de este código es demasiado corta. Vuelva a escanear.</translation>
    </message>
    <message>
        <source>A part of this code is too long: does the scanner send separators (FNC1)?</source>
        <translation>Una parte de este código es demasiado larga: ¿envía el escáner los separadores (FNC1)?</translation>
    </message>
    <message>
        <source>This code has a sign where a digit belongs. Scan again.</source>
        <translation>Este código tiene un signo donde va una cifra. Vuelva a escanear.</translation>
    </message>
    <message>
        <source>This code has a sign that GS1 does not allow. Scan again.</source>
        <translation>Este código tiene un signo que GS1 no permite. Vuelva a escanear.</translation>
    </message>
    <message>
        <source>The code&apos;s check digit is wrong. Scan again.</source>
        <translation>El dígito de control del código es incorrecto. Vuelva a escanear.</translation>
    </message>
    <message>
        <source>The code&apos;s date is none. Read the label.</source>
        <translation>La fecha del código no existe. Lea la etiqueta.</translation>
    </message>
    <message>
        <source>This code says two things at once. Read the label.</source>
        <translation>Este código dice dos cosas a la vez. Lea la etiqueta.</translation>
    </message>
    <message>
        <source>The label&apos;s code was misread. Scan again; if it stays so, set the scanner to this keyboard&apos;s layout.</source>
        <translation>El código de la etiqueta se leyó mal. Vuelva a escanear; si sigue igual, ajuste el escáner a la distribución de este teclado.</translation>
    </message>
    <message>
        <source>(%1): %2</source>
        <comment>a GS1 identifier and what is wrong with it</comment>
        <translation>(%1): %2</translation>
    </message>
    <message>
        <source>There is more to print than this paper takes. Choose a larger one.</source>
        <translation>Hay más que imprimir de lo que cabe en este papel. Elija uno mayor.</translation>
    </message>
    <message>
        <source>The printer did not take it. Is it there, switched on, and does it have this paper?</source>
        <translation>La impresora no lo aceptó. ¿Está conectada y encendida, y tiene este papel?</translation>
    </message>
    <message>
        <source>The file could not be written. Choose another folder.</source>
        <translation>No se pudo escribir el archivo. Elija otra carpeta.</translation>
    </message>
</context>
<context>
    <name>InjectorText</name>
    <message>
        <source>weighed, in %1</source>
        <translation>pesado, %1</translation>
    </message>
    <message>
        <source>dose set</source>
        <translation>dosis ajustada</translation>
    </message>
    <message>
        <source>set …</source>
        <comment>liquid, dose</comment>
        <translation>ajustes …</translation>
    </message>
    <message>
        <source>weigh …</source>
        <translation>pesar …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>shots weighed, of how many</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>cylinder …</source>
        <translation>probeta …</translation>
    </message>
    <message>
        <source>quick form</source>
        <translation>rápida</translation>
    </message>
    <message>
        <source>Measure first.</source>
        <translation>Mida antes.</translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation>Elija antes una línea.</translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation>ANOTAR</translation>
    </message>
    <message>
        <source>Shot %1 of %2: what does it weigh?</source>
        <translation>Disparo %1 de %2: ¿cuánto pesa?</translation>
    </message>
    <message>
        <source>How many shots went into the cylinder?</source>
        <translation>¿Cuántos disparos fueron a la probeta?</translation>
    </message>
    <message>
        <source>shots</source>
        <translation>disparos</translation>
    </message>
    <message>
        <source>What does the cylinder show?</source>
        <translation>¿Qué marca la probeta?</translation>
    </message>
    <message>
        <source>How much is it from one mark to the next?</source>
        <translation>¿Cuánto hay de una marca a la siguiente?</translation>
    </message>
    <message>
        <source>water …</source>
        <comment>what is weighed</comment>
        <translation>agua …</translation>
    </message>
    <message>
        <source>other liquid …</source>
        <translation>otro líquido …</translation>
    </message>
    <message>
        <source>by its density</source>
        <translation>por su densidad</translation>
    </message>
    <message>
        <source>dose set …</source>
        <translation>dosis ajustada …</translation>
    </message>
    <message>
        <source>last weight out</source>
        <translation>quitar el último peso</translation>
    </message>
    <message>
        <source>measure anew</source>
        <translation>medir de nuevo</translation>
    </message>
    <message>
        <source>What is weighed, and against what?</source>
        <translation>¿Qué se pesa, y contra qué?</translation>
    </message>
    <message>
        <source>How warm is the water that is weighed?</source>
        <translation>¿A qué temperatura está el agua que se pesa?</translation>
    </message>
    <message>
        <source>What is its density? See its label.</source>
        <translation>¿Cuál es su densidad? Vea la etiqueta.</translation>
    </message>
    <message>
        <source>Which dose is set?</source>
        <translation>¿Qué dosis está ajustada?</translation>
    </message>
    <message>
        <source>liquid, dose</source>
        <translation>ajustes</translation>
    </message>
    <message>
        <source>The balance is gone: check its plug, or type the weights.</source>
        <translation>La balanza no está: revise el enchufe o escriba los pesos.</translation>
    </message>
    <message>
        <source>The balance fills it in: tare, one shot, wait. Or type it.</source>
        <translation>La balanza lo rellena: tare, un disparo, espere. O escríbalo.</translation>
    </message>
    <message>
        <source>balance …</source>
        <translation>balanza …</translation>
    </message>
    <message numerus="yes">
        <source>%n weight(s) from %1 %2. Go on, or measure anew.</source>
        <comment>a day, a time</comment>
        <translation>
            <numerusform>%n peso del %1, %2. Siga o mida de nuevo.</numerusform>
            <numerusform>%n pesos del %1, %2. Siga o mida de nuevo.</numerusform>
        </translation>
    </message>
    <message>
        <source>unfinished</source>
        <translation>sin terminar</translation>
    </message>
    <message>
        <source>Filled in: the diluent&apos;s, by the card.</source>
        <translation>Ya puesta: la del diluyente, según la ficha.</translation>
    </message>
</context>
<context>
    <name>IntakeText</name>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>%1 of %2, at %3</source>
        <comment>how many, what, place</comment>
        <translation>%1 de %2, en %3</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) received</source>
        <translation>
            <numerusform>%n línea recibida</numerusform>
            <numerusform>%n líneas recibidas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) can be taken</source>
        <translation>
            <numerusform>se puede tomar %n línea</numerusform>
            <numerusform>se pueden tomar %n líneas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wrong</source>
        <comment>lines of a file</comment>
        <translation>
            <numerusform>%n errónea</numerusform>
            <numerusform>%n erróneas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n received before</source>
        <comment>lines of a file</comment>
        <translation>
            <numerusform>%n ya recibida</numerusform>
            <numerusform>%n ya recibidas</numerusform>
        </translation>
    </message>
    <message>
        <source>too little</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>expired</source>
        <translation>caducado</translation>
    </message>
    <message>
        <source>in quarantine</source>
        <translation>en cuarentena</translation>
    </message>
    <message>
        <source>near expiry</source>
        <translation>caduca pronto</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation>errónea</translation>
    </message>
    <message>
        <source>received before, not taken: %1</source>
        <translation>ya recibida, no se toma: %1</translation>
    </message>
    <message>
        <source>Nothing is short, apart, expired or near its expiry.</source>
        <translation>No falta nada, y nada está apartado, caducado o a punto de caducar.</translation>
    </message>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <comment>of the stores</comment>
        <translation>
            <numerusform>%n aviso</numerusform>
            <numerusform>%n avisos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LaneText</name>
    <message>
        <source>%1 · which lot?</source>
        <translation>%1 · ¿qué lote?</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>in cryogen</source>
        <extracomment>A lane of the pull: this ampoule is still in the cryogen.</extracomment>
        <translation>en el criógeno</translation>
    </message>
    <message>
        <source>lot …</source>
        <translation>lote …</translation>
    </message>
    <message>
        <source>not this one</source>
        <translation>esta no</translation>
    </message>
    <message>
        <source>by wall time, after a restart</source>
        <translation>por la hora del reloj, tras reiniciar</translation>
    </message>
    <message>
        <source>Other ends of this ampoule</source>
        <translation>Otros finales de esta ampolla</translation>
    </message>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>+ ampoule</source>
        <translation>+ ampolla</translation>
    </message>
    <message>
        <source>given up</source>
        <comment>an ampoule was abandoned</comment>
        <translation>dejada</translation>
    </message>
</context>
<context>
    <name>LevelText</name>
    <message>
        <source>Level by the dipstick</source>
        <translation>Nivel según la varilla</translation>
    </message>
    <message>
        <source>d</source>
        <comment>unit of an axis: days</comment>
        <translation>d</translation>
    </message>
    <message>
        <source>minimum %1</source>
        <translation>mínimo %1</translation>
    </message>
</context>
<context>
    <name>LineText</name>
    <message>
        <source>%1: birds done so far, in all</source>
        <translation>%1: aves hechas hasta ahora, en total</translation>
    </message>
    <message>
        <source>birds</source>
        <translation>aves</translation>
    </message>
    <message>
        <source>NEEDLE CHANGED</source>
        <translation>AGUJA CAMBIADA</translation>
    </message>
    <message>
        <source>DOSE RIGHT</source>
        <translation>DOSIS CORRECTA</translation>
    </message>
    <message>
        <source>DOSE WRONG</source>
        <translation>DOSIS INCORRECTA</translation>
    </message>
    <message>
        <source>STOPPED</source>
        <translation>PARADA</translation>
    </message>
    <message>
        <source>GOING</source>
        <translation>EN MARCHA</translation>
    </message>
    <message>
        <source>needle in %1</source>
        <extracomment>Birds until (or since) a needle change is due.</extracomment>
        <translation>aguja en %1</translation>
    </message>
    <message>
        <source>needle due, %1 over</source>
        <translation>toca aguja, %1 de más</translation>
    </message>
    <message>
        <source>%1 birds</source>
        <translation>%1 aves</translation>
    </message>
    <message>
        <source>birds …</source>
        <translation>aves …</translation>
    </message>
    <message>
        <source>Which line?</source>
        <translation>¿Qué línea?</translation>
    </message>
</context>
<context>
    <name>LiveCellsText</name>
    <message>
        <source>Each mixed bag shows its live cells, indicative: the label decides.</source>
        <translation>Cada bolsa mezclada muestra sus células vivas, indicativo: decide la etiqueta.</translation>
    </message>
    <message>
        <source>Off on this card: no bag shows live cells.</source>
        <translation>Apagado en esta ficha: ninguna bolsa muestra células vivas.</translation>
    </message>
    <message>
        <source>No bag shows live cells: the card has no minimum for a dose.</source>
        <translation>Ninguna bolsa muestra células vivas: la ficha no tiene mínimo por dosis.</translation>
    </message>
    <message>
        <source>No bag shows live cells: the card has no loss in the bath with its source.</source>
        <translation>Ninguna bolsa muestra células vivas: la ficha no tiene pérdida en el baño con su fuente.</translation>
    </message>
    <message>
        <source>No bag shows live cells: the card has no loss in the bag with its source.</source>
        <translation>Ninguna bolsa muestra células vivas: la ficha no tiene pérdida en la bolsa con su fuente.</translation>
    </message>
    <message>
        <source>Bags of a lot without its certificate&apos;s titre show no live cells.</source>
        <translation>Las bolsas de un lote sin título de su certificado no muestran células vivas.</translation>
    </message>
    <message>
        <source>not on the card</source>
        <translation>no está en la ficha</translation>
    </message>
    <message>
        <source>half in %1 to %2 h</source>
        <comment>half-life, from to</comment>
        <translation>la mitad en %1 a %2 h</translation>
    </message>
    <message>
        <source>minimum</source>
        <translation>mínimo</translation>
    </message>
    <message>
        <source>%1 PFU a dose</source>
        <translation>%1 UFP por dosis</translation>
    </message>
    <message>
        <source>loss in the bath</source>
        <translation>pérdida en el baño</translation>
    </message>
    <message>
        <source>loss in the bag</source>
        <translation>pérdida en la bolsa</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lote %1</translation>
    </message>
    <message>
        <source>no titre in the stores</source>
        <translation>sin título en el almacén</translation>
    </message>
    <message>
        <source>back</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>on, indicative</source>
        <comment>live cells</comment>
        <translation>encendido, indicativo</translation>
    </message>
    <message>
        <source>off</source>
        <comment>live cells</comment>
        <translation>apagado</translation>
    </message>
    <message>
        <source>something is missing</source>
        <comment>live cells</comment>
        <translation>falta algo</translation>
    </message>
    <message>
        <source>Source on the card: %1</source>
        <translation>Fuente en la ficha: %1</translation>
    </message>
</context>
<context>
    <name>LotText</name>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>another reason …</source>
        <translation>otro motivo …</translation>
    </message>
    <message>
        <source>%1: how many are there?</source>
        <translation>%1: ¿cuántas hay?</translation>
    </message>
    <message>
        <source>Counted where?</source>
        <translation>¿Contado dónde?</translation>
    </message>
    <message>
        <source>Where to?</source>
        <translation>¿Adónde?</translation>
    </message>
    <message>
        <source>How many are moved?</source>
        <translation>¿Cuántas se mueven?</translation>
    </message>
    <message>
        <source>Moved from where?</source>
        <translation>¿Movido de dónde?</translation>
    </message>
    <message>
        <source>Why are they taken out?</source>
        <translation>¿Por qué se sacan?</translation>
    </message>
    <message>
        <source>Taken out from where?</source>
        <translation>¿Sacado de dónde?</translation>
    </message>
    <message>
        <source>How many are taken out?</source>
        <translation>¿Cuántas se sacan?</translation>
    </message>
    <message>
        <source>Why is %1 set apart?</source>
        <translation>¿Por qué se aparta %1?</translation>
    </message>
    <message>
        <source>certificate missing</source>
        <translation>falta el certificado</translation>
    </message>
    <message>
        <source>arrived damaged</source>
        <translation>llegó dañado</translation>
    </message>
    <message>
        <source>cryogen ran low</source>
        <translation>bajó el criógeno</translation>
    </message>
    <message>
        <source>recalled by its maker</source>
        <translation>retirado por el fabricante</translation>
    </message>
    <message>
        <source>Shift lead&apos;s initials</source>
        <translation>Iniciales del encargado</translation>
    </message>
    <message>
        <source>Why may %1 be used?</source>
        <translation>¿Por qué se puede usar %1?</translation>
    </message>
    <message>
        <source>certificate seen</source>
        <translation>certificado visto</translation>
    </message>
    <message>
        <source>never got warm</source>
        <translation>nunca se calentó</translation>
    </message>
    <message>
        <source>set apart by mistake</source>
        <translation>apartado por error</translation>
    </message>
    <message>
        <source>certificate read out by telephone</source>
        <translation>certificado leído por teléfono</translation>
    </message>
    <message>
        <source>no other lot is there</source>
        <translation>no hay otro lote</translation>
    </message>
    <message>
        <source>agreed with the maker</source>
        <translation>acordado con el fabricante</translation>
    </message>
    <message>
        <source>count …</source>
        <translation>contar …</translation>
    </message>
    <message>
        <source>move …</source>
        <translation>mover …</translation>
    </message>
    <message>
        <source>take out …</source>
        <translation>sacar …</translation>
    </message>
    <message>
        <source>use next</source>
        <comment>the next ampoules are of this lot</comment>
        <translation>usar ahora</translation>
    </message>
    <message>
        <source>allow today …</source>
        <translation>permitir hoy …</translation>
    </message>
    <message>
        <source>by the shift lead</source>
        <translation>por el encargado</translation>
    </message>
    <message>
        <source>end quarantine …</source>
        <translation>fin de cuarentena …</translation>
    </message>
    <message>
        <source>quarantine …</source>
        <translation>cuarentena …</translation>
    </message>
    <message>
        <source>%1, in quarantine: %2</source>
        <translation>%1, en cuarentena: %2</translation>
    </message>
    <message>
        <source>Which vessel?</source>
        <translation>¿Qué recipiente?</translation>
    </message>
    <message>
        <source>Which canister?</source>
        <translation>¿Qué canastillo?</translation>
    </message>
    <message>
        <source>Which cane?</source>
        <translation>¿Qué varilla?</translation>
    </message>
    <message>
        <source>Which shelf or box?</source>
        <translation>¿Qué estante o caja?</translation>
    </message>
    <message>
        <source>another place …</source>
        <translation>otro lugar …</translation>
    </message>
    <message>
        <source>%1 doses each</source>
        <translation>%1 dosis cada una</translation>
    </message>
    <message>
        <source>%1 PFU a dose</source>
        <translation>%1 UFP por dosis</translation>
    </message>
    <message>
        <source>%1 may be used</source>
        <translation>%1 puede usarse</translation>
    </message>
</context>
<context>
    <name>MendText</name>
    <message>
        <source>wrong button</source>
        <translation>botón equivocado</translation>
    </message>
    <message>
        <source>tapped late</source>
        <translation>tocado tarde</translation>
    </message>
    <message>
        <source>did not happen</source>
        <translation>no ocurrió</translation>
    </message>
    <message>
        <source>misread</source>
        <translation>mal leído</translation>
    </message>
    <message>
        <source>other …</source>
        <translation>otro …</translation>
    </message>
    <message>
        <source>its time</source>
        <translation>su hora</translation>
    </message>
    <message>
        <source>which ampoule</source>
        <translation>qué ampolla</translation>
    </message>
    <message>
        <source>which component</source>
        <translation>qué componente</translation>
    </message>
    <message>
        <source>which lot</source>
        <translation>qué lote</translation>
    </message>
    <message>
        <source>which bag</source>
        <translation>qué bolsa</translation>
    </message>
    <message>
        <source>which line</source>
        <translation>qué línea</translation>
    </message>
    <message>
        <source>how many birds</source>
        <translation>cuántas aves</translation>
    </message>
    <message>
        <source>broken or not</source>
        <translation>rota o no</translation>
    </message>
    <message>
        <source>its volume</source>
        <translation>su volumen</translation>
    </message>
    <message>
        <source>how much was left</source>
        <translation>cuánto quedaba</translation>
    </message>
    <message>
        <source>its temperature</source>
        <translation>su temperatura</translation>
    </message>
    <message>
        <source>When was it? Hours, minutes, seconds, as 094107</source>
        <translation>¿Cuándo fue? Horas, minutos, segundos, como 094107</translation>
    </message>
    <message>
        <source>Which ampoule was it?</source>
        <translation>¿Qué ampolla era?</translation>
    </message>
    <message>
        <source>What is the bag called?</source>
        <translation>¿Cómo se llama la bolsa?</translation>
    </message>
    <message>
        <source>Which bag was it?</source>
        <translation>¿Qué bolsa era?</translation>
    </message>
    <message>
        <source>Which component was it?</source>
        <translation>¿Qué componente era?</translation>
    </message>
    <message>
        <source>Which lot was it?</source>
        <translation>¿Qué lote era?</translation>
    </message>
    <message>
        <source>Which line was it?</source>
        <translation>¿Qué línea era?</translation>
    </message>
    <message>
        <source>it did not break</source>
        <translation>no se rompió</translation>
    </message>
    <message>
        <source>it broke</source>
        <translation>se rompió</translation>
    </message>
    <message>
        <source>Broken or not?</source>
        <translation>¿Rota o no?</translation>
    </message>
    <message>
        <source>How many birds was it, in all?</source>
        <translation>¿Cuántas aves eran, en total?</translation>
    </message>
    <message>
        <source>birds</source>
        <translation>aves</translation>
    </message>
    <message>
        <source>How much was it?</source>
        <translation>¿Cuánto era?</translation>
    </message>
    <message>
        <source>How warm was it?</source>
        <translation>¿A qué temperatura estaba?</translation>
    </message>
    <message>
        <source>Corrected: why?</source>
        <translation>Corregido: ¿por qué?</translation>
    </message>
    <message>
        <source>Taken back: why?</source>
        <translation>Retirado: ¿por qué?</translation>
    </message>
    <message>
        <source>What is not right?</source>
        <translation>¿Qué no está bien?</translation>
    </message>
</context>
<context>
    <name>MenuText</name>
    <message>
        <source>bath reading …</source>
        <translation>lectura del baño …</translation>
    </message>
    <message>
        <source>next pull …</source>
        <translation>próxima tanda …</translation>
    </message>
    <message>
        <source>bags …</source>
        <translation>bolsas …</translation>
    </message>
    <message>
        <source>lines …</source>
        <translation>líneas …</translation>
    </message>
    <message>
        <source>new bag …</source>
        <translation>bolsa nueva …</translation>
    </message>
    <message>
        <source>correct …</source>
        <translation>corregir …</translation>
    </message>
    <message>
        <source>water changed …</source>
        <translation>agua nueva …</translation>
    </message>
    <message>
        <source>cane out too long …</source>
        <translation>varilla fuera mucho …</translation>
    </message>
    <message>
        <source>note …</source>
        <translation>nota …</translation>
    </message>
    <message>
        <source>who is on duty …</source>
        <translation>quién está de servicio …</translation>
    </message>
    <message>
        <source>end of shift …</source>
        <translation>fin del turno …</translation>
    </message>
    <message>
        <source>open questions …</source>
        <translation>preguntas abiertas …</translation>
    </message>
    <message>
        <source>set-up</source>
        <translation>puesta a punto</translation>
    </message>
    <message>
        <source>record</source>
        <translation>registro</translation>
    </message>
    <message>
        <source>What else?</source>
        <translation>¿Qué más?</translation>
    </message>
    <message>
        <source>stores</source>
        <translation>existencias</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>checks</source>
        <translation>controles</translation>
    </message>
    <message>
        <source>review</source>
        <translation>revisión</translation>
    </message>
</context>
<context>
    <name>NewBagText</name>
    <message>
        <source>Lot of the diluent</source>
        <translation>Lote del diluyente</translation>
    </message>
    <message>
        <source>Name of the bag, as on its label</source>
        <translation>Nombre de la bolsa, como en su etiqueta</translation>
    </message>
    <message>
        <source>Diluent: what does the thermometer show?</source>
        <translation>Diluyente: ¿qué marca el termómetro?</translation>
    </message>
    <message>
        <source>How large is the bag?</source>
        <translation>¿De qué tamaño es la bolsa?</translation>
    </message>
    <message>
        <source>Which volume?</source>
        <translation>¿Qué volumen?</translation>
    </message>
    <message>
        <source>Which lot of diluent?</source>
        <translation>¿Qué lote de diluyente?</translation>
    </message>
    <message>
        <source>other volume …</source>
        <translation>otro volumen …</translation>
    </message>
    <message>
        <source>which lot?</source>
        <translation>¿qué lote?</translation>
    </message>
    <message>
        <source>lot of the diluent …</source>
        <translation>lote …</translation>
    </message>
    <message>
        <source>how warm?</source>
        <translation>¿grados?</translation>
    </message>
    <message>
        <source>diluent …</source>
        <translation>diluyente …</translation>
    </message>
    <message>
        <source>name of the bag …</source>
        <translation>nombre …</translation>
    </message>
    <message>
        <source>A new bag of diluent</source>
        <translation>Una bolsa nueva de diluyente</translation>
    </message>
</context>
<context>
    <name>OptionText</name>
    <message>
        <source>The bench-side station for making up frozen poultry vaccine.</source>
        <translation>La estación de mesa para preparar vacuna aviar congelada.</translation>
    </message>
    <message>
        <source>Start the real day at once.</source>
        <translation>Empezar de inmediato el día real.</translation>
    </message>
    <message>
        <source>Rehearse at once; nothing counts, and it has a trail of its own.</source>
        <translation>Ensayar de inmediato; nada cuenta y tiene su propio registro.</translation>
    </message>
    <message>
        <source>Keep the trail in FILE.</source>
        <translation>Guardar el registro en FILE.</translation>
    </message>
    <message>
        <source>Work by the procedure card in FILE.</source>
        <translation>Trabajar según la ficha de procedimiento de FILE.</translation>
    </message>
    <message>
        <source>Language of the screen: en or es.</source>
        <translation>Idioma de la pantalla: en o es.</translation>
    </message>
    <message>
        <source>Light words on a dark ground.</source>
        <translation>Letras claras sobre fondo oscuro.</translation>
    </message>
    <message>
        <source>Dark words on a light ground.</source>
        <translation>Letras oscuras sobre fondo claro.</translation>
    </message>
    <message>
        <source>Pixels per millimetre of this panel.</source>
        <translation>Píxeles por milímetro de este panel.</translation>
    </message>
    <message>
        <source>In a window instead of on the whole screen.</source>
        <translation>En una ventana en vez de a pantalla completa.</translation>
    </message>
    <message>
        <source>Play the demo day through the window and end.</source>
        <translation>Reproducir el día de muestra en la ventana y terminar.</translation>
    </message>
    <message>
        <source>Play the script in FILE through the window and end.</source>
        <translation>Reproducir el guion de FILE en la ventana y terminar.</translation>
    </message>
    <message>
        <source>While playing, leave pictures in DIR.</source>
        <translation>Mientras se reproduce, dejar imágenes en DIR.</translation>
    </message>
    <message>
        <source>After playing, leave the exported record in DIR.</source>
        <translation>Tras reproducir, dejar en DIR el registro exportado.</translation>
    </message>
    <message>
        <source>bathside: %1 See bathside --help.</source>
        <translation>bathside: %1 Vea bathside --help.</translation>
    </message>
    <message>
        <source>--px-per-mm wants a number from 2 to 16.</source>
        <translation>--px-per-mm necesita un número de 2 a 16.</translation>
    </message>
    <message>
        <source>“%1” is not an option.</source>
        <translation>«%1» no es una opción.</translation>
    </message>
    <message>
        <source>The station&apos;s name in the record.</source>
        <translation>Nombre del puesto en el registro.</translation>
    </message>
    <message>
        <source>--station wants a name of 1 to 24 signs, without a blank before or after it.</source>
        <translation>--station requiere un nombre de 1 a 24 signos, sin espacio delante ni detrás.</translation>
    </message>
</context>
<context>
    <name>PictureText</name>
    <message>
        <source>%1 ± %2 °C</source>
        <comment>target, tolerance</comment>
        <translation>%1 ± %2 °C</translation>
    </message>
    <message>
        <source>What was typed in, corrected</source>
        <translation>Lo leído a mano, corregido</translation>
    </message>
    <message>
        <source>The last five minutes, corrected</source>
        <translation>Los últimos cinco minutos, corregidos</translation>
    </message>
    <message>
        <source>min</source>
        <comment>unit of an axis: minutes before now</comment>
        <translation>min</translation>
    </message>
    <message>
        <source>Ampoules go in; dashed: heater on</source>
        <translation>Al entrar ampollas; a trazos: calentando</translation>
    </message>
    <message>
        <source>s</source>
        <comment>unit of an axis: seconds</comment>
        <translation>s</translation>
    </message>
    <message>
        <source>heated:</source>
        <comment>a value of a chart: with the heater on</comment>
        <translation>calentando:</translation>
    </message>
    <message>
        <source>Time to slush over the bath&apos;s temperature</source>
        <translation>Hasta hielo a medio fundir, según el baño</translation>
    </message>
    <message>
        <source>common practice: %1 s at %2 °C</source>
        <translation>práctica común: %1 s a %2 °C</translation>
    </message>
    <message>
        <source>%1 ± %2 °C</source>
        <comment>temperature, U</comment>
        <translation>%1 ± %2 °C</translation>
    </message>
    <message>
        <source>At %1 the bath takes no ampoule without leaving what counts as inside.</source>
        <translation>A %1 el baño no admite ninguna ampolla sin salirse de lo que cuenta como dentro.</translation>
    </message>
    <message numerus="yes">
        <source>At %1 the bath takes up to %n ampoule(s) at a time.</source>
        <translation>
            <numerusform>A %1 el baño admite hasta %n ampolla a la vez.</numerusform>
            <numerusform>A %1 el baño admite hasta %n ampollas a la vez.</numerusform>
        </translation>
    </message>
    <message>
        <source>This is a calculation; the thermometer decides.</source>
        <translation>Es un cálculo; decide el termómetro.</translation>
    </message>
    <message numerus="yes">
        <source>From %n pull(s): the bath acts as %1 kg of water; the card&apos;s %2 kg foresaw its dips to %3 °C.</source>
        <translation>
            <numerusform>De %n tanda: el baño actúa como %1 kg de agua; los %2 kg de la ficha previeron sus bajadas a %3 °C.</numerusform>
            <numerusform>De %n tandas: el baño actúa como %1 kg de agua; los %2 kg de la ficha previeron sus bajadas a %3 °C.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From %n pull(s): opened as with %1 W/(m² K) or more; the card&apos;s %2 foresaw it to %3 s.</source>
        <translation>
            <numerusform>De %n tanda: abiertas como con %1 W/(m² K) o más; los %2 de la ficha lo previeron a %3 s.</numerusform>
            <numerusform>De %n tandas: abiertas como con %1 W/(m² K) o más; los %2 de la ficha lo previeron a %3 s.</numerusform>
        </translation>
    </message>
    <message>
        <source>Used: the card&apos;s, as it takes three pulls.</source>
        <translation>Se usa el de la ficha: hacen falta tres tandas.</translation>
    </message>
    <message>
        <source>Used: the card&apos;s, as the pulls do not agree.</source>
        <translation>Se usa el de la ficha: las tandas no coinciden.</translation>
    </message>
    <message>
        <source>Used: the card&apos;s, as water cannot do that.</source>
        <translation>Se usa el de la ficha: el agua no puede hacer eso.</translation>
    </message>
    <message>
        <source>Used: %1 (%2 to %3).</source>
        <comment>a figure and its interval</comment>
        <translation>Se usa: %1 (de %2 a %3).</translation>
    </message>
    <message>
        <source>Used from the next shift on.</source>
        <translation>Se usa desde el próximo turno.</translation>
    </message>
    <message>
        <source>bath: %1 kg, fitted</source>
        <translation>baño: %1 kg, ajustado</translation>
    </message>
    <message>
        <source>and the bath</source>
        <translation>y el baño</translation>
    </message>
    <message>
        <source>%1 °C, which is the card&apos;s and not measured,</source>
        <comment>temperature</comment>
        <translation>%1 °C, que son de la ficha y no medidos,</translation>
    </message>
    <message numerus="yes">
        <source>%n ampoule(s): down %1 °C without the heater, which gives that heat in %2.</source>
        <translation>
            <numerusform>%n ampolla: %1 °C menos sin el calefactor, que da ese calor en %2.</numerusform>
            <numerusform>%n ampollas: %1 °C menos sin el calefactor, que da ese calor en %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PinText</name>
    <message>
        <source>Too many wrong PINs. Try again in %1.</source>
        <translation>Demasiados PIN equivocados. Pruebe de nuevo en %1.</translation>
    </message>
    <message>
        <source>%1 is not on the list of people.</source>
        <translation>%1 no está en la lista de personas.</translation>
    </message>
    <message>
        <source>That is not the PIN of %1. It is on record that it was tried.</source>
        <translation>Ese no es el PIN de %1. Queda registrado el intento.</translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message numerus="yes">
        <source>%Ln bird(s)</source>
        <translation>
            <numerusform>%Ln ave</numerusform>
            <numerusform>%Ln aves</numerusform>
        </translation>
    </message>
    <message>
        <source>There are no ampoules of %1 for %2.</source>
        <comment>component, birds</comment>
        <translation>No hay ampollas de %1 para %2.</translation>
    </message>
    <message numerus="yes">
        <source>Not enough ampoules of %1 for %2: %Ln missing.</source>
        <comment>component, birds</comment>
        <translation>
            <numerusform>No hay bastantes ampollas de %1 para %2: falta %Ln.</numerusform>
            <numerusform>No hay bastantes ampollas de %1 para %2: faltan %Ln.</numerusform>
        </translation>
    </message>
    <message>
        <source>There are no diluent bags.</source>
        <translation>No hay bolsas de diluyente.</translation>
    </message>
    <message numerus="yes">
        <source>Not enough diluent bags: %Ln more of %1 would do.</source>
        <translation>
            <numerusform>No hay bastantes bolsas de diluyente: con %Ln más de %1 bastaría.</numerusform>
            <numerusform>No hay bastantes bolsas de diluyente: con %Ln más de %1 bastaría.</numerusform>
        </translation>
    </message>
    <message>
        <source>What is left in the stores is not enough: more than one thing is short.</source>
        <translation>Lo que queda en el almacén no basta: falta más de una cosa.</translation>
    </message>
    <message>
        <source>Priming takes more than any bag holds: a bag of %1 would do.</source>
        <translation>El cebado se lleva más de lo que cabe en cualquier bolsa: bastaría una de %1.</translation>
    </message>
    <message>
        <source>What stays in a bag leaves no dose in any: a bag of %1 would do.</source>
        <translation>Lo que queda en la bolsa no deja ninguna dosis: bastaría una de %1.</translation>
    </message>
    <message>
        <source>At this rate not one bird is done before a bag&apos;s time is up: %1 more, or as much less of hang time, dilute time and bench slack, would do.</source>
        <translation>A este ritmo no se hace ni un ave antes de que venza la bolsa: bastaría %1 más, o lo mismo menos de colgado, dilución y holgura de la mesa.</translation>
    </message>
    <message>
        <source>No bag lasts through the break that it would hang in.</source>
        <translation>Ninguna bolsa aguanta la pausa en la que estaría colgada.</translation>
    </message>
    <message>
        <source>No bag lasts through the break that it would hang in: it can be done if the line may stand idle for %1.</source>
        <translation>Ninguna bolsa aguanta la pausa en la que estaría colgada: se puede hacer si la línea puede esperar %1.</translation>
    </message>
    <message numerus="yes">
        <source>Too large to be planned exactly: no plan opens fewer than %Ln dose(s).</source>
        <translation>
            <numerusform>Demasiado grande para un plan exacto: ningún plan abre menos de %Ln dosis.</numerusform>
            <numerusform>Demasiado grande para un plan exacto: ningún plan abre menos de %Ln dosis.</numerusform>
        </translation>
    </message>
    <message>
        <source>It cannot be done; what is missing is too large a question to be answered exactly.</source>
        <translation>No se puede hacer; lo que falta es una pregunta demasiado grande para responderla con exactitud.</translation>
    </message>
    <message>
        <source>Bag %1 runs through the break at %2.</source>
        <translation>La bolsa %1 pasa por la pausa de las %2.</translation>
    </message>
    <message>
        <source>Line %1 stands idle for %2 before bag %3, to spare a bag.</source>
        <translation>La línea %1 espera %2 antes de la bolsa %3, para ahorrar una bolsa.</translation>
    </message>
    <message>
        <source>No spare ampoule is left of lot %1 (%2).</source>
        <comment>lot, component</comment>
        <translation>No queda ninguna ampolla de reserva del lote %1 (%2).</translation>
    </message>
    <message>
        <source>Bag %1 has a margin of only %2.</source>
        <translation>La bolsa %1 tiene un margen de solo %2.</translation>
    </message>
    <message>
        <source>Line %1 waits for a bag from %2 until %3.</source>
        <translation>La línea %1 espera una bolsa de %2 a %3.</translation>
    </message>
    <message>
        <source>Line %1 has stood still since %2. The plan takes it to go on now.</source>
        <translation>La línea %1 está parada desde las %2. El plan supone que sigue ahora.</translation>
    </message>
    <message>
        <source>Too late: the pull for line %1 was due %2 ago.</source>
        <translation>Demasiado tarde: la tanda para la línea %1 tocaba hace %2.</translation>
    </message>
    <message numerus="yes">
        <source>The bench makes every bag in time; %n preparer(s) would do.</source>
        <translation>
            <numerusform>La mesa hace todas las bolsas a tiempo; bastaría %n persona.</numerusform>
            <numerusform>La mesa hace todas las bolsas a tiempo; bastarían %n personas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Bag %1 cannot be made in time; %n preparer(s) would do.</source>
        <translation>
            <numerusform>La bolsa %1 no se puede hacer a tiempo; bastaría %n persona.</numerusform>
            <numerusform>La bolsa %1 no se puede hacer a tiempo; bastarían %n personas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Bag %1 cannot be made in time; %n preparer(s), or a bench slack of %2, would do.</source>
        <translation>
            <numerusform>La bolsa %1 no se puede hacer a tiempo; bastaría %n persona, o una holgura de %2.</numerusform>
            <numerusform>La bolsa %1 no se puede hacer a tiempo; bastarían %n personas, o una holgura de %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 for line %2</source>
        <comment>a bag&apos;s volume; which line</comment>
        <translation>%1 para la línea %2</translation>
    </message>
    <message>
        <source>Pull at %1: %2. Too early before %3: it would pass its limit.</source>
        <translation>Tanda a las %1: %2. Demasiado pronto antes de las %3: pasaría su límite.</translation>
    </message>
    <message>
        <source>Pull at %1: %2. It is not too early any more.</source>
        <translation>Tanda a las %1: %2. Ya no es demasiado pronto.</translation>
    </message>
    <message>
        <source>%1 birds an hour, as planned; not measured yet.</source>
        <translation>%1 aves por hora, según el plan; aún sin medir.</translation>
    </message>
    <message>
        <source>%1 birds an hour measured, %2 to %3 with 95 % confidence; planned were %4.</source>
        <translation>%1 aves por hora medidas, de %2 a %3 con una confianza del 95 %; planeadas, %4.</translation>
    </message>
    <message numerus="yes">
        <source>Bag %1 would be empty at %2, past its limit at %3: %Ln dose(s) will be lost.</source>
        <translation>
            <numerusform>La bolsa %1 se vaciaría a las %2, pasado su límite de las %3: se perderá %Ln dosis.</numerusform>
            <numerusform>La bolsa %1 se vaciaría a las %2, pasado su límite de las %3: se perderán %Ln dosis.</numerusform>
        </translation>
    </message>
    <message>
        <source>Bag %1 is empty at %2; its limit is %3.</source>
        <translation>La bolsa %1 se vacía a las %2; su límite es %3.</translation>
    </message>
    <message>
        <source>Bag %1 is empty at %2, between %3 and %4; its limit is %5.</source>
        <translation>La bolsa %1 se vacía a las %2, entre %3 y %4; su límite es %5.</translation>
    </message>
</context>
<context>
    <name>PlanAsk</name>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>%1: how many birds in all?</source>
        <comment>a line</comment>
        <translation>%1: ¿cuántas aves en total?</translation>
    </message>
    <message>
        <source>%1: how many birds an hour?</source>
        <comment>a line</comment>
        <translation>%1: ¿cuántas aves por hora?</translation>
    </message>
    <message>
        <source>%1: start? Hours and minutes, as 0730</source>
        <comment>a line</comment>
        <translation>%1: ¿inicio? Horas y minutos, como 0730</translation>
    </message>
    <message>
        <source>Break from when? Hours and minutes, as 0930</source>
        <translation>¿Pausa desde cuándo? Como 0930</translation>
    </message>
    <message>
        <source>%1: remove which break?</source>
        <comment>a line</comment>
        <translation>%1: ¿qué pausa se quita?</translation>
    </message>
    <message>
        <source>remove it</source>
        <comment>a line from the plan</comment>
        <translation>quitarla</translation>
    </message>
    <message>
        <source>Remove %1 from the plan?</source>
        <comment>a line</comment>
        <translation>¿Quitar %1 del plan?</translation>
    </message>
    <message numerus="yes">
        <source>%n break(s)</source>
        <translation>
            <numerusform>%n pausa</numerusform>
            <numerusform>%n pausas</numerusform>
        </translation>
    </message>
    <message>
        <source>birds …</source>
        <translation>aves …</translation>
    </message>
    <message>
        <source>birds an hour …</source>
        <translation>aves por hora …</translation>
    </message>
    <message>
        <source>start …</source>
        <translation>inicio …</translation>
    </message>
    <message>
        <source>add a break …</source>
        <translation>añadir pausa …</translation>
    </message>
    <message>
        <source>remove a break …</source>
        <translation>quitar pausa …</translation>
    </message>
    <message>
        <source>remove the line …</source>
        <translation>quitar la línea …</translation>
    </message>
    <message>
        <source>%1: change what?</source>
        <comment>a line</comment>
        <translation>%1: ¿qué se cambia?</translation>
    </message>
    <message>
        <source>%1 birds, %2 per h, %3</source>
        <comment>count, rate, start</comment>
        <translation>%1 aves, %2 por h, %3</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>sin plan</translation>
    </message>
    <message>
        <source>Plan which line?</source>
        <translation>¿Qué línea se planea?</translation>
    </message>
    <message>
        <source>Break from %1 until? Like 0950</source>
        <translation>Pausa desde %1, ¿hasta? Como 0950</translation>
    </message>
</context>
<context>
    <name>PlanSheet</name>
    <message>
        <source>bag</source>
        <comment>column of the day&apos;s plan</comment>
        <translation>bolsa</translation>
    </message>
    <message>
        <source>pull at</source>
        <comment>column of the day&apos;s plan: when ampoules come out</comment>
        <translation>tanda</translation>
    </message>
    <message>
        <source>mixed by</source>
        <comment>column of the day&apos;s plan: at the latest</comment>
        <translation>mezclada a las</translation>
    </message>
    <message>
        <source>first bird</source>
        <comment>column of the day&apos;s plan</comment>
        <translation>primera ave</translation>
    </message>
    <message>
        <source>last bird</source>
        <comment>column of the day&apos;s plan</comment>
        <translation>última ave</translation>
    </message>
    <message>
        <source>birds</source>
        <comment>column of the day&apos;s plan</comment>
        <translation>aves</translation>
    </message>
    <message>
        <source>size</source>
        <comment>column of the day&apos;s plan: of the bag</comment>
        <translation>tamaño</translation>
    </message>
    <message>
        <source>lots × ampoules</source>
        <comment>column of the day&apos;s plan</comment>
        <translation>lotes × ampollas</translation>
    </message>
    <message>
        <source>Plan for %1</source>
        <comment>a day</comment>
        <translation>Plan: %1</translation>
    </message>
    <message>
        <source>%1, REHEARSAL: not for birds</source>
        <comment>after the site&apos;s name</comment>
        <translation>%1, ENSAYO: no para aves</translation>
    </message>
    <message>
        <source>Line %1</source>
        <comment>heading in the day&apos;s plan</comment>
        <translation>Línea %1</translation>
    </message>
    <message>
        <source>Reckoned %1</source>
        <comment>date and time</comment>
        <translation>Calculado %1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
</context>
<context>
    <name>PrintText</name>
    <message>
        <source>NOT PRINTED</source>
        <translation>NO IMPRESO</translation>
    </message>
    <message>
        <source>SAVED AS PDF</source>
        <comment>what was to be printed</comment>
        <translation>GUARDADO EN PDF</translation>
    </message>
    <message>
        <source>DOES NOT FIT</source>
        <comment>on its paper</comment>
        <translation>NO CABE</translation>
    </message>
    <message>
        <source>PRINTER REFUSED</source>
        <translation>NO SE IMPRIMIÓ</translation>
    </message>
    <message>
        <source>Saved as PDF: %1</source>
        <extracomment>%1 is a file.</extracomment>
        <translation>PDF guardado: %1</translation>
    </message>
    <message>
        <source>SENT TO PRINTER</source>
        <translation>ENVIADO A LA IMPRESORA</translation>
    </message>
    <message>
        <source>100 × 50 mm</source>
        <comment>size of a label</comment>
        <translation>100 × 50 mm</translation>
    </message>
    <message>
        <source>62 mm roll</source>
        <comment>of labels</comment>
        <translation>rollo de 62 mm</translation>
    </message>
    <message>
        <source>A4</source>
        <comment>paper</comment>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <comment>paper</comment>
        <translation>Carta</translation>
    </message>
</context>
<context>
    <name>ProbeText</name>
    <message>
        <source>read by hand</source>
        <translation>leído a mano</translation>
    </message>
    <message>
        <source>one-wire %1</source>
        <comment>a thermometer&apos;s connection</comment>
        <translation>un hilo %1</translation>
    </message>
    <message>
        <source>%1, %2 baud, pattern %3, %4</source>
        <comment>port, speed, pattern, °C or element</comment>
        <translation>%1, %2 baudios, patrón %3, %4</translation>
    </message>
    <message>
        <source>out of use</source>
        <translation>fuera de uso</translation>
    </message>
    <message>
        <source>no reading yet</source>
        <translation>aún sin lectura</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>sin lectura</translation>
    </message>
    <message>
        <source>%1, %2 ago</source>
        <comment>temperature, age</comment>
        <translation>%1, hace %2</translation>
    </message>
    <message>
        <source>too old</source>
        <comment>a reading</comment>
        <translation>demasiado vieja</translation>
    </message>
    <message>
        <source>not calibrated</source>
        <comment>a thermometer</comment>
        <translation>sin calibrar</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <comment>a calibration; a day</comment>
        <translation>vencido el %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <comment>a calibration; a day</comment>
        <translation>vence %1</translation>
    </message>
    <message>
        <source>Not calibrated: undecided at best.</source>
        <translation>Sin calibrar: indeciso como mucho.</translation>
    </message>
    <message>
        <source>Certificate %1: %2</source>
        <comment>its number; its points</comment>
        <translation>Certificado %1: %2</translation>
    </message>
    <message>
        <source>%1 is %2 ± %3 °C</source>
        <comment>shown, reference, U</comment>
        <translation>%1 son %2 ± %3 °C</translation>
    </message>
    <message>
        <source>Ω of a Pt100</source>
        <translation>Ω de una Pt100</translation>
    </message>
    <message>
        <source>Ω of a Pt1000</source>
        <translation>Ω de una Pt1000</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>A day, as QDate::toString writes it; in some languages with &quot;de&quot;.</extracomment>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>Ω of an NTC</source>
        <translation>Ω de una NTC</translation>
    </message>
    <message>
        <source>to %1 % within tolerance</source>
        <comment>how likely</comment>
        <translation>al %1 % dentro de tolerancia</translation>
    </message>
</context>
<context>
    <name>PullText</name>
    <message>
        <source>Lot on the ampoule: %1</source>
        <translation>Lote de la ampolla: %1</translation>
    </message>
    <message>
        <source>another lot …</source>
        <translation>otro lote …</translation>
    </message>
    <message>
        <source>CHOSEN</source>
        <translation>ELEGIDAS</translation>
    </message>
    <message>
        <source>Ampoules of the next pull: one tap each</source>
        <translation>Próxima tanda: un toque por ampolla</translation>
    </message>
</context>
<context>
    <name>Question</name>
    <message>
        <source>I was interrupted</source>
        <translation>Interrupción</translation>
    </message>
    <message>
        <source>Too many at once</source>
        <translation>Demasiadas a la vez</translation>
    </message>
    <message>
        <source>Hard to open</source>
        <translation>Difícil de abrir</translation>
    </message>
    <message>
        <source>Done in time, tapped late</source>
        <translation>Hecho a tiempo, tocado tarde</translation>
    </message>
    <message>
        <source>A small ampoule</source>
        <translation>Una ampolla pequeña</translation>
    </message>
    <message>
        <source>The bath was warm</source>
        <translation>El baño estaba caliente</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Why was %1 late into the bath?</source>
        <comment>%1 is an ampoule</comment>
        <translation>¿Por qué tarde al baño la %1?</translation>
    </message>
    <message>
        <source>Why was %1 late into the diluent?</source>
        <comment>%1 is an ampoule</comment>
        <translation>¿Por qué tarde al diluyente la %1?</translation>
    </message>
    <message>
        <source>%1: why was this limit passed? %2</source>
        <comment>limit, subject</comment>
        <translation>%1: ¿por qué se excedió este límite? %2</translation>
    </message>
    <message>
        <source>Why was %1 so short in the bath?</source>
        <comment>%1 is an ampoule</comment>
        <translation>¿Por qué estuvo tan poco en el baño la %1?</translation>
    </message>
    <message>
        <source>Which ampoule broke? Recorded is %1.</source>
        <translation>¿Qué ampolla se rompió? Consta la %1.</translation>
    </message>
    <message>
        <source>Was anybody hurt?</source>
        <translation>¿Hubo algún herido?</translation>
    </message>
    <message>
        <source>Has the bath water been changed?</source>
        <translation>¿Se ha cambiado el agua del baño?</translation>
    </message>
    <message>
        <source>ampoule %1</source>
        <translation>ampolla %1</translation>
    </message>
    <message>
        <source>None of these</source>
        <translation>Ninguna de estas</translation>
    </message>
    <message>
        <source>Lot %1 was scanned. Which ampoule was it?</source>
        <translation>Se leyó el lote %1. ¿Qué ampolla era?</translation>
    </message>
</context>
<context>
    <name>ReceiptText</name>
    <message>
        <source>How many of %1?</source>
        <translation>¿Cuántas de %1?</translation>
    </message>
    <message>
        <source>Where does it stand?</source>
        <translation>¿Dónde está?</translation>
    </message>
    <message>
        <source>Titre by the certificate, PFU a dose; 0: none given</source>
        <translation>Título según el certificado, UFP por dosis; 0: sin dato</translation>
    </message>
    <message>
        <source>Good to which day? Year, month, day, e.g. 20270131</source>
        <translation>¿Caduca qué día? Año, mes, día: 20270131</translation>
    </message>
    <message>
        <source>How many doses has an ampoule?</source>
        <translation>¿Cuántas dosis tiene una ampolla?</translation>
    </message>
    <message>
        <source>Lot of %1</source>
        <translation>Lote de %1</translation>
    </message>
    <message>
        <source>another volume …</source>
        <translation>otro volumen …</translation>
    </message>
    <message>
        <source>How large are the bags?</source>
        <translation>¿De qué volumen son las bolsas?</translation>
    </message>
    <message>
        <source>Which consumable?</source>
        <translation>¿Qué consumible?</translation>
    </message>
    <message>
        <source>ampoules</source>
        <translation>ampollas</translation>
    </message>
    <message>
        <source>diluent bags</source>
        <translation>bolsas de diluyente</translation>
    </message>
    <message>
        <source>needles</source>
        <translation>agujas</translation>
    </message>
    <message>
        <source>other consumables …</source>
        <translation>otros consumibles …</translation>
    </message>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>What came in?</source>
        <translation>¿Qué llegó?</translation>
    </message>
    <message>
        <source>Lot %1 is new here. What is it?</source>
        <translation>El lote %1 es nuevo aquí. ¿Qué es?</translation>
    </message>
</context>
<context>
    <name>RecordText</name>
    <message>
        <source>entries</source>
        <translation>entradas</translation>
    </message>
    <message>
        <source>last sound entry</source>
        <translation>última entrada íntegra</translation>
    </message>
    <message>
        <source>its hash</source>
        <translation>su hash</translation>
    </message>
    <message>
        <source>The record is NOT sound. First at entry %1: %2</source>
        <comment>number, followed by a sentence</comment>
        <translation>El registro NO está íntegro. Primero en la entrada %1: %2</translation>
    </message>
    <message>
        <source>The record could not be read to its end. %1</source>
        <comment>followed by a sentence</comment>
        <translation>No se pudo leer el registro hasta el final. %1</translation>
    </message>
    <message>
        <source>The entries are sound; the indexes could not be compared with them.</source>
        <translation>Las entradas están íntegras; no se pudieron comparar los índices con ellas.</translation>
    </message>
    <message>
        <source>The entries are sound, but the indexes do not agree with them.</source>
        <translation>Las entradas están íntegras, pero los índices no coinciden con ellas.</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>ampoules</source>
        <translation>ampollas</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>bolsas</translation>
    </message>
    <message>
        <source>lines</source>
        <translation>líneas</translation>
    </message>
    <message>
        <source>bath</source>
        <translation>baño</translation>
    </message>
    <message>
        <source>shift and checks</source>
        <translation>turno y comprobaciones</translation>
    </message>
    <message>
        <source>alarms</source>
        <translation>alarmas</translation>
    </message>
    <message>
        <source>deviations and corrections</source>
        <translation>desviaciones y correcciones</translation>
    </message>
    <message>
        <source>station</source>
        <translation>estación</translation>
    </message>
    <message>
        <source>it cannot be read.</source>
        <translation>no se puede leer.</translation>
    </message>
    <message>
        <source>it is not written the way the station writes.</source>
        <translation>no está escrita como escribe la estación.</translation>
    </message>
    <message>
        <source>its time is no time.</source>
        <translation>su hora no es una hora.</translation>
    </message>
    <message>
        <source>it was changed after it was written, or the one before it was.</source>
        <translation>se cambió después de escribirla, o se cambió la anterior.</translation>
    </message>
    <message>
        <source>it is missing.</source>
        <translation>falta.</translation>
    </message>
    <message>
        <source>it is not in its place.</source>
        <translation>no está en su sitio.</translation>
    </message>
    <message>
        <source>it is there twice.</source>
        <translation>está dos veces.</translation>
    </message>
    <message>
        <source>it comes from another station.</source>
        <translation>viene de otra estación.</translation>
    </message>
    <message>
        <source>it is not on the list that came with the record.</source>
        <translation>no está en la lista que vino con el registro.</translation>
    </message>
    <message>
        <source>it is not the one that was noted elsewhere.</source>
        <translation>no es la que se anotó en otro lugar.</translation>
    </message>
    <message>
        <source>the record ends before it.</source>
        <translation>el registro termina antes.</translation>
    </message>
    <message>
        <source>This computer does not know the time zone of the record.</source>
        <translation>Este equipo no conoce la zona horaria del registro.</translation>
    </message>
    <message>
        <source>There is no such day in the time zone of the record.</source>
        <translation>No existe ese día en la zona horaria del registro.</translation>
    </message>
    <message>
        <source>Entry %1 is missing. Verify the record.</source>
        <translation>Falta la entrada %1. Verifique el registro.</translation>
    </message>
    <message>
        <source>The files could not be written. Choose another place.</source>
        <translation>No se pudieron escribir los archivos. Elija otro lugar.</translation>
    </message>
    <message>
        <source>The files could not be written (%1). Choose another place.</source>
        <comment>the system&apos;s own words</comment>
        <translation>No se pudieron escribir los archivos (%1). Elija otro lugar.</translation>
    </message>
    <message>
        <source>this computer</source>
        <translation>este equipo</translation>
    </message>
    <message>
        <source>The record is sound: nothing was changed, left out or put in.</source>
        <translation>El registro está íntegro: no se cambió, quitó ni añadió nada.</translation>
    </message>
    <message>
        <source>what to do</source>
        <translation>qué hacer</translation>
    </message>
    <message>
        <source>Write this number and hash down and keep them elsewhere: only so is a record that was cut short found out.</source>
        <translation>Anote este número y este hash y guárdelos en otro lugar: solo así se descubre un registro recortado.</translation>
    </message>
    <message>
        <source>Not exported. %1</source>
        <translation>No exportado. %1</translation>
    </message>
    <message>
        <source>There is no record of %1; nothing was written.</source>
        <translation>No hay registro de %1; no se escribió nada.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n entries exported.</source>
        <comment>a day</comment>
        <translation>
            <numerusform>%1: %n entrada exportada.</numerusform>
            <numerusform>%1: %n entradas exportadas.</numerusform>
        </translation>
    </message>
    <message>
        <source>folder</source>
        <translation>carpeta</translation>
    </message>
    <message>
        <source>files</source>
        <translation>archivos</translation>
    </message>
    <message>
        <source>last entry</source>
        <translation>última entrada</translation>
    </message>
    <message>
        <source>Not copied. %1</source>
        <translation>No copiado. %1</translation>
    </message>
    <message>
        <source>file</source>
        <translation>archivo</translation>
    </message>
    <message>
        <source>The copy was written but is not good. %1</source>
        <translation>La copia se escribió, pero no es buena. %1</translation>
    </message>
    <message>
        <source>Copied, read back and found sound.</source>
        <translation>Copiado, releído e íntegro.</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>local time</source>
        <translation>hora local</translation>
    </message>
    <message>
        <source>UTC</source>
        <translation>UTC</translation>
    </message>
    <message>
        <source>boot clock</source>
        <translation>reloj de arranque</translation>
    </message>
    <message>
        <source>%1 µs since the computer&apos;s start</source>
        <translation>%1 µs desde el arranque del equipo</translation>
    </message>
    <message>
        <source>person</source>
        <translation>persona</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>initials, how sure the record is of it</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>none: the station itself</source>
        <translation>ninguna: la propia estación</translation>
    </message>
    <message>
        <source>hash</source>
        <translation>hash</translation>
    </message>
    <message>
        <source>time of</source>
        <translation>hora de</translation>
    </message>
    <message>
        <source>receipt: the tap&apos;s own time was not plausible</source>
        <translation>recepción: la hora del toque no era creíble</translation>
    </message>
    <message>
        <source>exact text</source>
        <translation>texto exacto</translation>
    </message>
    <message>
        <source>Entry %1: %2</source>
        <comment>number, sentence</comment>
        <translation>Entrada %1: %2</translation>
    </message>
    <message>
        <source>Entry %1 by the station itself.</source>
        <translation>Entrada %1, de la propia estación.</translation>
    </message>
    <message>
        <source>Entry %1 by %2, proven by PIN.</source>
        <comment>number, initials</comment>
        <translation>Entrada %1, de %2, probado con PIN.</translation>
    </message>
    <message>
        <source>Entry %1 by %2, claimed.</source>
        <comment>number, initials</comment>
        <translation>Entrada %1, de %2, declarado.</translation>
    </message>
    <message>
        <source>linked</source>
        <translation>enlazado</translation>
    </message>
    <message>
        <source>what it corrects</source>
        <translation>lo que corrige</translation>
    </message>
    <message>
        <source>its correction</source>
        <translation>su corrección</translation>
    </message>
    <message>
        <source>what it takes back</source>
        <translation>lo que retira</translation>
    </message>
    <message>
        <source>what took it back</source>
        <translation>lo que lo retiró</translation>
    </message>
    <message>
        <source>it follows from this</source>
        <translation>se sigue de esto</translation>
    </message>
    <message>
        <source>a deviation from it</source>
        <translation>una desviación de ello</translation>
    </message>
    <message>
        <source>judged anew by it</source>
        <translation>juzgado de nuevo por ello</translation>
    </message>
    <message>
        <source>the deviation reviewed</source>
        <translation>la desviación revisada</translation>
    </message>
    <message>
        <source>its review</source>
        <translation>su revisión</translation>
    </message>
    <message>
        <source>the note</source>
        <translation>la nota</translation>
    </message>
    <message>
        <source>a comment on it</source>
        <translation>un comentario a ella</translation>
    </message>
    <message>
        <source>what is signed</source>
        <translation>lo firmado</translation>
    </message>
    <message>
        <source>its signature</source>
        <translation>su firma</translation>
    </message>
    <message>
        <source>Local time %1, boot clock %2 s.</source>
        <translation>Hora %1, arranque %2 s.</translation>
    </message>
    <message>
        <source>%1, on another day</source>
        <translation>%1, de otro día</translation>
    </message>
    <message>
        <source>seals</source>
        <translation>sellos</translation>
    </message>
    <message>
        <source>the clock</source>
        <translation>el reloj</translation>
    </message>
    <message>
        <source>set back once, at entry %1; the order of the entries is kept</source>
        <translation>se atrasó una vez, en la entrada %1; el orden de las entradas se conserva</translation>
    </message>
    <message>
        <source>set back %1 times, first at entry %2; the order of the entries is kept</source>
        <translation>se atrasó %1 veces, la primera en la entrada %2; el orden de las entradas se conserva</translation>
    </message>
    <message>
        <source>goes on from</source>
        <translation>sigue a</translation>
    </message>
    <message>
        <source>%1, which was damaged after entry %2</source>
        <comment>a file; a number</comment>
        <translation>%1, dañado después de la entrada %2</translation>
    </message>
    <message>
        <source>The seal at entry %1 is NOT good: %2</source>
        <comment>number, followed by a sentence</comment>
        <translation>El sello de la entrada %1 NO es válido: %2</translation>
    </message>
    <message>
        <source>stores</source>
        <translation>existencias</translation>
    </message>
    <message>
        <source>people and signatures</source>
        <translation>personas y firmas</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>first day, last day</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>person %1</source>
        <translation>persona %1</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>bolsa %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lote %1</translation>
    </message>
    <message>
        <source>only %1</source>
        <comment>what is shown</comment>
        <translation>solo %1</translation>
    </message>
    <message>
        <source>it was changed, or not made with the key that it names.</source>
        <translation>se cambió, o no se hizo con la clave que nombra.</translation>
    </message>
    <message>
        <source>it seals another record than this one.</source>
        <translation>sella un registro distinto de este.</translation>
    </message>
    <message>
        <source>it was made with another key than the seals before it.</source>
        <translation>se hizo con otra clave que los sellos anteriores.</translation>
    </message>
    <message>
        <source>signature</source>
        <translation>firma</translation>
    </message>
    <message>
        <source>none: the station has no key</source>
        <translation>ninguna: la estación no tiene clave</translation>
    </message>
    <message>
        <source>by the key %1</source>
        <translation>con la clave %1</translation>
    </message>
    <message>
        <source>without the day sheet</source>
        <translation>sin la hoja del día</translation>
    </message>
    <message>
        <source>The day sheet was not made. %1</source>
        <translation>La hoja del día no se hizo. %1</translation>
    </message>
    <message>
        <source>There is no record of %1: no day sheet was made.</source>
        <translation>No hay registro de %1: no se hizo ninguna hoja del día.</translation>
    </message>
    <message numerus="yes">
        <source>only exports of %n day(s) at most have it</source>
        <translation>
            <numerusform>solo la tienen las exportaciones de %n día como máximo</numerusform>
            <numerusform>solo la tienen las exportaciones de %n días como máximo</numerusform>
        </translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message numerus="yes">
        <source>%n entries, the first is %1: the sheets are without what they said. Verify the record.</source>
        <translation>
            <numerusform>%n entrada, la %1: las hojas no tienen lo que decía. Verifique el registro.</numerusform>
            <numerusform>%n entradas, la primera es la %1: las hojas no tienen lo que decían. Verifique el registro.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Refusal</name>
    <message>
        <source>the bag&apos;s volume</source>
        <comment>what is outside what can be</comment>
        <translation>el volumen de la bolsa</translation>
    </message>
    <message>
        <source>the volume drawn into the syringe</source>
        <comment>what is outside what can be</comment>
        <translation>el volumen tomado con la jeringa</translation>
    </message>
    <message>
        <source>the volume left</source>
        <comment>what is outside what can be</comment>
        <translation>el volumen restante</translation>
    </message>
    <message>
        <source>the number of birds</source>
        <comment>what is outside what can be</comment>
        <translation>el número de aves</translation>
    </message>
    <message>
        <source>the time out of the cryogen</source>
        <comment>what is outside what can be</comment>
        <translation>el tiempo fuera del criógeno</translation>
    </message>
    <message>
        <source>the place of the cane</source>
        <comment>what is outside what can be</comment>
        <translation>el lugar de la varilla</translation>
    </message>
    <message>
        <source>the text</source>
        <comment>what is outside what can be</comment>
        <translation>el texto</translation>
    </message>
    <message>
        <source>There is no procedure card yet. Adopt one at set-up.</source>
        <translation>Aún no hay ficha de procedimiento. Adopte una en la preparación.</translation>
    </message>
    <message>
        <source>No shift is open. Open the shift first.</source>
        <translation>No hay turno abierto. Abra primero el turno.</translation>
    </message>
    <message>
        <source>The shift is open already.</source>
        <translation>El turno ya está abierto.</translation>
    </message>
    <message>
        <source>%1 is neither in a bag nor lost. Say first how it ended.</source>
        <translation>%1: ni en una bolsa ni perdida. Diga primero cómo acabó.</translation>
    </message>
    <message>
        <source>%1 is still open. Take it down first.</source>
        <translation>%1: sigue abierta. Retírela primero.</translation>
    </message>
    <message>
        <source>Nobody is on duty. Enter your initials first.</source>
        <translation>Nadie está de servicio. Ponga primero sus iniciales.</translation>
    </message>
    <message>
        <source>The procedure card has no check named &quot;%1&quot;.</source>
        <translation>La ficha no tiene ninguna comprobación llamada «%1».</translation>
    </message>
    <message>
        <source>The check &quot;%1&quot; is open. Do it, or override it with a reason.</source>
        <translation>La comprobación «%1» está abierta. Hágala, o siga sin ella con un motivo.</translation>
    </message>
    <message>
        <source>A reason is needed. Say why.</source>
        <translation>Hace falta un motivo. Diga por qué.</translation>
    </message>
    <message>
        <source>%1 exists already. Give the new one another name.</source>
        <translation>%1: ya existe. Dé otro nombre a la nueva.</translation>
    </message>
    <message>
        <source>There is no such bag.</source>
        <translation>No existe esa bolsa.</translation>
    </message>
    <message>
        <source>Which bag is not clear. Choose the bag.</source>
        <translation>No está claro qué bolsa. Elija la bolsa.</translation>
    </message>
    <message>
        <source>%1 is down. It takes nothing more.</source>
        <translation>%1: está retirada. Ya no recibe nada.</translation>
    </message>
    <message>
        <source>%1 is on hold. A shift lead decides about it.</source>
        <translation>%1: está retenida. Decide un encargado.</translation>
    </message>
    <message>
        <source>%1 is not on hold.</source>
        <translation>%1: no está retenida.</translation>
    </message>
    <message>
        <source>%1 is not inspected yet. Inspect it first.</source>
        <translation>%1: aún sin revisar. Revísela primero.</translation>
    </message>
    <message>
        <source>%1 has no ampoule in it yet.</source>
        <translation>%1: aún no tiene ninguna ampolla.</translation>
    </message>
    <message>
        <source>%1 is not mixed yet. Mix it first.</source>
        <translation>%1: aún sin mezclar. Mézclela primero.</translation>
    </message>
    <message>
        <source>%1 is mixed already.</source>
        <translation>%1: ya está mezclada.</translation>
    </message>
    <message>
        <source>%1 is inspected already.</source>
        <translation>%1: ya está revisada.</translation>
    </message>
    <message>
        <source>The diluent of %1 is drawn already.</source>
        <translation>El diluyente de la %1 ya está tomado.</translation>
    </message>
    <message>
        <source>%1 hangs on no line yet.</source>
        <translation>%1: aún no cuelga de ninguna línea.</translation>
    </message>
    <message>
        <source>%1: take bag %2 down first.</source>
        <translation>%1: retire antes la bolsa %2.</translation>
    </message>
    <message>
        <source>It hangs there already.</source>
        <translation>Ya cuelga ahí.</translation>
    </message>
    <message>
        <source>No ampoule can take that step now.</source>
        <translation>Ninguna ampolla puede dar ese paso ahora.</translation>
    </message>
    <message>
        <source>There is no such ampoule in this pull.</source>
        <translation>No hay tal ampolla en esta tanda.</translation>
    </message>
    <message>
        <source>%1 is out already.</source>
        <translation>%1: ya está fuera.</translation>
    </message>
    <message>
        <source>%1 is lost. It takes no more steps.</source>
        <translation>%1: está perdida. Ya no da más pasos.</translation>
    </message>
    <message>
        <source>%1 is in a bag. It takes no more steps.</source>
        <translation>%1: está en una bolsa. Ya no da más pasos.</translation>
    </message>
    <message>
        <source>%1 has taken that step already.</source>
        <translation>%1: ya dio ese paso.</translation>
    </message>
    <message>
        <source>No ampoule is out of the cryogen yet.</source>
        <translation>Aún no hay ninguna ampolla fuera del criógeno.</translation>
    </message>
    <message>
        <source>Which line is not clear. Choose the line.</source>
        <translation>No está claro qué línea. Elija la línea.</translation>
    </message>
    <message>
        <source>%1 is stopped already.</source>
        <translation>%1: ya está parada.</translation>
    </message>
    <message>
        <source>%1 is going already.</source>
        <translation>%1: ya está en marcha.</translation>
    </message>
    <message>
        <source>The birds counted so far are %1. The total cannot be less.</source>
        <translation>Las aves contadas hasta ahora son %1. El total no puede ser menor.</translation>
    </message>
    <message>
        <source>No such alarm is due now.</source>
        <translation>Esa alarma no está pendiente ahora.</translation>
    </message>
    <message>
        <source>There is nothing to take back.</source>
        <translation>No hay nada que retirar.</translation>
    </message>
    <message>
        <source>That is not of this shift, or was taken back.</source>
        <translation>Eso no es de este turno, o se retiró.</translation>
    </message>
    <message>
        <source>That cannot be corrected in this entry: %1.</source>
        <translation>Eso no se puede corregir en esta entrada: %1.</translation>
    </message>
    <message>
        <source>That value cannot be used: %1.</source>
        <translation>Ese valor no se puede usar: %1.</translation>
    </message>
    <message>
        <source>That is what stands there already.</source>
        <translation>Eso es lo que ya consta.</translation>
    </message>
    <message>
        <source>That question is not open any more.</source>
        <translation>Esa pregunta ya no está abierta.</translation>
    </message>
    <message>
        <source>That is none of the choices.</source>
        <translation>Esa no es ninguna de las opciones.</translation>
    </message>
    <message>
        <source>That is outside what can be: %1.</source>
        <translation>Eso está fuera de lo posible: %1.</translation>
    </message>
    <message>
        <source>The document cannot be used. Look at &quot;%1&quot;.</source>
        <translation>El documento no se puede usar. Mire «%1».</translation>
    </message>
    <message>
        <source>The station has not started yet. Wait a moment.</source>
        <translation>La estación aún no ha arrancado. Espere un momento.</translation>
    </message>
    <message>
        <source>how many</source>
        <comment>what is outside what can be</comment>
        <translation>cuántas unidades</translation>
    </message>
    <message>
        <source>the place in the stores</source>
        <comment>what is outside what can be</comment>
        <translation>el lugar en las existencias</translation>
    </message>
    <message>
        <source>the birds an hour</source>
        <comment>what is outside what can be</comment>
        <translation>las aves por hora</translation>
    </message>
    <message>
        <source>the line&apos;s start</source>
        <comment>what is outside what can be</comment>
        <translation>el comienzo de la línea</translation>
    </message>
    <message>
        <source>the breaks</source>
        <comment>what is outside what can be</comment>
        <translation>los descansos</translation>
    </message>
    <message>
        <source>the reason</source>
        <comment>what is outside what can be</comment>
        <translation>el motivo</translation>
    </message>
    <message>
        <source>the lot</source>
        <comment>what is outside what can be</comment>
        <translation>el lote</translation>
    </message>
    <message>
        <source>what it is</source>
        <comment>what is outside what can be</comment>
        <translation>qué es</translation>
    </message>
    <message>
        <source>the doses of an ampoule</source>
        <comment>what is outside what can be</comment>
        <translation>las dosis de una ampolla</translation>
    </message>
    <message>
        <source>the day of expiry</source>
        <comment>what is outside what can be</comment>
        <translation>el día de caducidad</translation>
    </message>
    <message>
        <source>the titre</source>
        <comment>what is outside what can be</comment>
        <translation>el título</translation>
    </message>
    <message>
        <source>the delivery</source>
        <comment>what is outside what can be</comment>
        <translation>la entrega</translation>
    </message>
    <message>
        <source>Lot %1 has expired. Take another, or ask a shift lead.</source>
        <translation>El lote %1 está caducado. Tome otro o pregunte al encargado.</translation>
    </message>
    <message>
        <source>Lot %1 is in quarantine. Take another, or ask a shift lead.</source>
        <translation>El lote %1 está en cuarentena. Tome otro o pregunte al encargado.</translation>
    </message>
    <message>
        <source>The lot is missing. Say which lot it is.</source>
        <translation>Falta el lote. Diga qué lote es.</translation>
    </message>
    <message>
        <source>The stores do not know lot %1. Receive it first, or ask a shift lead.</source>
        <translation>Las existencias no conocen el lote %1. Recíbalo antes o pregunte al encargado.</translation>
    </message>
    <message>
        <source>Lot %1 is in the stores with another expiry, titre or number of doses. Look at the label again.</source>
        <translation>El lote %1 figura con otra caducidad, otro título u otro número de dosis. Mire otra vez la etiqueta.</translation>
    </message>
    <message>
        <source>The stores have none of that: %1.</source>
        <translation>De eso no hay en las existencias: %1.</translation>
    </message>
    <message>
        <source>There are only %1. Count them if there are more.</source>
        <translation>Solo hay %1. Cuéntelas si hay más.</translation>
    </message>
    <message>
        <source>the scanned code</source>
        <comment>what is outside what can be</comment>
        <translation>el código escaneado</translation>
    </message>
    <message>
        <source>%1 is not on the list of people. A shift lead can add them.</source>
        <translation>%1 no está en la lista de personas. Un encargado puede añadirla.</translation>
    </message>
    <message>
        <source>The first person on the list has to be a shift lead.</source>
        <translation>La primera persona de la lista ha de ser un encargado.</translation>
    </message>
    <message>
        <source>This is not for %1. Ask a shift lead.</source>
        <translation>Esto no le corresponde a %1. Pida ayuda a un encargado.</translation>
    </message>
    <message>
        <source>%1 has no PIN yet. Set one in Set-up, under People.</source>
        <translation>%1 aún no tiene PIN. Póngalo en Preparación, en Personas.</translation>
    </message>
    <message>
        <source>There is no such deviation in this shift, or it is reviewed.</source>
        <translation>No hay tal desviación en este turno, o ya está revisada.</translation>
    </message>
    <message>
        <source>There is no such vessel. Describe it first.</source>
        <translation>No hay tal recipiente. Descríbalo primero.</translation>
    </message>
    <message>
        <source>Nothing of that lot belongs into the next bag. Put it back.</source>
        <translation>Nada de ese lote va en la próxima bolsa. Devuélvalo a su sitio.</translation>
    </message>
    <message>
        <source>Put it back and take lot %1, or choose the other one in the stores.</source>
        <translation>Devuélvalo y tome el lote %1, o elija el otro en las existencias.</translation>
    </message>
    <message>
        <source>There is no such note in the record.</source>
        <translation>No hay tal nota en el registro.</translation>
    </message>
    <message>
        <source>Here the code of %1 is read where it is asked who signs. To be on duty, scan it on the bench page.</source>
        <translation>Aquí el código de %1 se lee donde se pregunta quién firma. Para estar de turno, escanéelo en la página del puesto.</translation>
    </message>
    <message>
        <source>the target</source>
        <comment>what is outside what can be</comment>
        <translation>el objetivo</translation>
    </message>
</context>
<context>
    <name>ReviewTalk</name>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>%1: signed by %2 at %3.</source>
        <comment>what, who, time</comment>
        <translation>%1: firmado por %2 a las %3.</translation>
    </message>
    <message>
        <source>%1: what was the cause?</source>
        <translation>%1: ¿cuál fue la causa?</translation>
    </message>
    <message>
        <source>The cause, in your words</source>
        <translation>La causa, con sus palabras</translation>
    </message>
    <message>
        <source>first add words to the cause …</source>
        <translation>antes, añadir palabras a la causa …</translation>
    </message>
    <message>
        <source>What is done so that it does not happen again?</source>
        <translation>¿Qué se hace para que no se repita?</translation>
    </message>
    <message>
        <source>What is done, in your words</source>
        <translation>Qué se hace, con sus palabras</translation>
    </message>
    <message>
        <source>ends the hold</source>
        <translation>termina la retención</translation>
    </message>
    <message>
        <source>volume left …</source>
        <translation>volumen restante …</translation>
    </message>
    <message>
        <source>What becomes of %1?</source>
        <translation>¿Qué se hace con %1?</translation>
    </message>
    <message>
        <source>The note for the bag</source>
        <translation>La nota para la bolsa</translation>
    </message>
    <message>
        <source>How much is left in the bag?</source>
        <translation>¿Cuánto queda en la bolsa?</translation>
    </message>
    <message>
        <source>%1 is down: what was done with it?</source>
        <translation>%1 está retirada: ¿qué se hizo con ella?</translation>
    </message>
</context>
<context>
    <name>ReviewText</name>
    <message>
        <source>hands not ready</source>
        <translation>manos no preparadas</translation>
    </message>
    <message>
        <source>ampoule stuck or frozen in</source>
        <translation>ampolla pegada o congelada</translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>interrupción</translation>
    </message>
    <message>
        <source>tool or bath</source>
        <translation>utensilio o baño</translation>
    </message>
    <message>
        <source>plan too tight</source>
        <translation>plan demasiado justo</translation>
    </message>
    <message>
        <source>done in time, tapped late</source>
        <translation>hecho a tiempo, tocado tarde</translation>
    </message>
    <message>
        <source>another cause …</source>
        <translation>otra causa …</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>no hace falta</translation>
    </message>
    <message>
        <source>shown again</source>
        <translation>explicado de nuevo</translation>
    </message>
    <message>
        <source>tool mended or replaced</source>
        <translation>utensilio reparado o cambiado</translation>
    </message>
    <message>
        <source>plan changed</source>
        <translation>plan cambiado</translation>
    </message>
    <message>
        <source>more hands</source>
        <translation>más manos</translation>
    </message>
    <message>
        <source>something else …</source>
        <translation>otra cosa …</translation>
    </message>
    <message>
        <source>use</source>
        <comment>what becomes of a bag</comment>
        <translation>usar</translation>
    </message>
    <message>
        <source>use with a note</source>
        <comment>what becomes of a bag</comment>
        <translation>usar con nota</translation>
    </message>
    <message>
        <source>discard</source>
        <comment>what becomes of a bag</comment>
        <translation>descartar</translation>
    </message>
    <message>
        <source>started</source>
        <comment>a bag</comment>
        <translation>empezada</translation>
    </message>
    <message>
        <source>first ampoule in</source>
        <translation>primera ampolla</translation>
    </message>
    <message>
        <source>mixed</source>
        <comment>a bag</comment>
        <translation>mezclada</translation>
    </message>
    <message>
        <source>hung</source>
        <comment>a bag</comment>
        <translation>colgada</translation>
    </message>
    <message>
        <source>down</source>
        <comment>a bag</comment>
        <translation>retirada</translation>
    </message>
    <message>
        <source>%1; the bag: %2</source>
        <comment>what was done, what becomes of the bag</comment>
        <translation>%1; la bolsa: %2</translation>
    </message>
    <message>
        <source>I did this.</source>
        <translation>Yo hice esto.</translation>
    </message>
    <message>
        <source>I looked at this and judged it.</source>
        <translation>He examinado y juzgado esto.</translation>
    </message>
    <message>
        <source>This may be used from now on.</source>
        <translation>Esto puede usarse desde ahora.</translation>
    </message>
    <message>
        <source>I saw this.</source>
        <translation>Yo vi esto.</translation>
    </message>
    <message>
        <source>A PIN has 4 to 8 digits.</source>
        <translation>Un PIN tiene de 4 a 8 cifras.</translation>
    </message>
    <message>
        <source>All digits are the same: anybody would try that. Choose another.</source>
        <translation>Todas las cifras son iguales: cualquiera lo probaría. Elija otro.</translation>
    </message>
    <message>
        <source>Those digits follow each other: anybody would try that. Choose another.</source>
        <translation>Esas cifras van seguidas: cualquiera lo probaría. Elija otro.</translation>
    </message>
    <message>
        <source>%1 on hold</source>
        <comment>bag B2</comment>
        <translation>%1 retenida</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>limit, whom</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 birds</source>
        <translation>%1 aves</translation>
    </message>
    <message>
        <source>it was used</source>
        <comment>a bag that is down</comment>
        <translation>se usó</translation>
    </message>
    <message>
        <source>it was used, with a note</source>
        <comment>a bag that is down</comment>
        <translation>se usó, con una nota</translation>
    </message>
    <message>
        <source>what was left was thrown away</source>
        <comment>a bag that is down</comment>
        <translation>se desechó lo que quedaba</translation>
    </message>
    <message>
        <source>entry %1</source>
        <comment>number in the record</comment>
        <translation>entrada %1</translation>
    </message>
</context>
<context>
    <name>ScanText</name>
    <message>
        <source>WRONG LOT</source>
        <translation>LOTE EQUIVOCADO</translation>
    </message>
    <message>
        <source>LOT EXPIRED</source>
        <translation>LOTE CADUCADO</translation>
    </message>
    <message>
        <source>LOT IN QUARANTINE</source>
        <translation>LOTE EN CUARENTENA</translation>
    </message>
    <message>
        <source>UNKNOWN LOT</source>
        <translation>LOTE DESCONOCIDO</translation>
    </message>
    <message>
        <source>LABEL DIFFERS</source>
        <translation>LA ETIQUETA NO COINCIDE</translation>
    </message>
    <message>
        <source>NOT READ</source>
        <translation>MAL LEÍDO</translation>
    </message>
    <message>
        <source>NOT TAKEN</source>
        <translation>NO ACEPTADO</translation>
    </message>
    <message>
        <source>Scanned: person %1</source>
        <translation>Código leído: persona %1</translation>
    </message>
    <message>
        <source>Scanned: %1</source>
        <translation>Código leído: %1</translation>
    </message>
    <message>
        <source>Scanned: lot %1</source>
        <translation>Código leído: lote %1</translation>
    </message>
    <message>
        <source>Scanned: lot %1, good to %2</source>
        <translation>Código leído: lote %1, caduca el %2</translation>
    </message>
    <message>
        <source>%1 lot %2</source>
        <extracomment>%1 is a component of the vaccine, %2 its lot.</extracomment>
        <translation>%1 lote %2</translation>
    </message>
    <message>
        <source>diluent lot %1</source>
        <translation>diluyente %1</translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation>Toca: %1</translation>
    </message>
</context>
<context>
    <name>SerialText</name>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>How fast does it send? Baud, as in its handbook</source>
        <translation>¿A qué velocidad envía? Baudios, según su manual</translation>
    </message>
    <message>
        <source>What does the number in its line mean?</source>
        <translation>¿Qué significa el número de su línea?</translation>
    </message>
    <message>
        <source>leave it</source>
        <translation>dejarlo</translation>
    </message>
    <message>
        <source>It sent “%1”. Which number is it?</source>
        <translation>Envió «%1». ¿Qué número es?</translation>
    </message>
    <message>
        <source>Nothing has come yet. Which of these is like its line?</source>
        <translation>Aún no ha llegado nada. ¿A cuál se parece su línea?</translation>
    </message>
    <message>
        <source>No such sensor can be: its resistance would not fall as it gets warmer. Compare A, B and C, with their signs and powers of ten.</source>
        <translation>No puede haber tal sensor: su resistencia no bajaría al calentarse. Compare A, B y C, con sus signos y potencias de diez.</translation>
    </message>
    <message>
        <source>YES, THAT IS IT</source>
        <translation>SÍ, ES ESE</translation>
    </message>
    <message>
        <source>type them again …</source>
        <translation>escribirlos otra vez …</translation>
    </message>
    <message>
        <source>By these it has %1 Ω at 25 °C and %2 Ω at 0 °C. Is that your sensor?</source>
        <comment>resistances</comment>
        <translation>Con estos tiene %1 Ω a 25 °C y %2 Ω a 0 °C. ¿Es su sensor?</translation>
    </message>
    <message>
        <source>%1 of its sensor (Steinhart–Hart)</source>
        <comment>a letter: A, B or C</comment>
        <translation>%1 de su sensor (Steinhart–Hart)</translation>
    </message>
    <message>
        <source>As its data sheet has it, with this power of ten. Seven decimals are enough.</source>
        <translation>Como está en su hoja de datos, con esta potencia de diez. Bastan siete decimales.</translation>
    </message>
</context>
<context>
    <name>SheetWriter</name>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
</context>
<context>
    <name>ShiftText</name>
    <message>
        <source>Bath: what does the thermometer show?</source>
        <translation>Baño: ¿qué marca el termómetro?</translation>
    </message>
    <message>
        <source>Next pull at: hours and minutes, as 0915</source>
        <translation>Próxima tanda a las: horas y minutos, como 0915</translation>
    </message>
    <message>
        <source>Who is on duty? Initials</source>
        <translation>¿Quién está de servicio? Iniciales</translation>
    </message>
    <message>
        <source>Who takes over? Initials</source>
        <translation>¿Quién releva? Iniciales</translation>
    </message>
    <message>
        <source>Which thermometer?</source>
        <translation>¿Qué termómetro?</translation>
    </message>
    <message numerus="yes">
        <source>in %n minute(s)</source>
        <translation>
            <numerusform>en %n minuto</numerusform>
            <numerusform>en %n minutos</numerusform>
        </translation>
    </message>
    <message>
        <source>at …</source>
        <translation>a las …</translation>
    </message>
    <message>
        <source>When is the next pull?</source>
        <translation>¿Cuándo es la próxima tanda?</translation>
    </message>
    <message>
        <source>Note for the record</source>
        <translation>Nota para el registro</translation>
    </message>
    <message>
        <source>Cane out too long: canister and cane</source>
        <translation>Varilla fuera demasiado: canastillo y varilla</translation>
    </message>
    <message>
        <source>How long was it out?</source>
        <translation>¿Cuánto estuvo fuera?</translation>
    </message>
    <message>
        <source>an ampoule burst</source>
        <translation>reventó una ampolla</translation>
    </message>
    <message>
        <source>dirty</source>
        <translation>sucia</translation>
    </message>
    <message>
        <source>fresh water</source>
        <translation>agua limpia</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>Bath water changed: why?</source>
        <translation>Agua del baño cambiada: ¿por qué?</translation>
    </message>
    <message>
        <source>SHIFT CLOSED</source>
        <translation>TURNO CERRADO</translation>
    </message>
    <message>
        <source>every bag is down</source>
        <translation>todas las bolsas retiradas</translation>
    </message>
    <message>
        <source>End of the shift</source>
        <translation>Fin del turno</translation>
    </message>
    <message>
        <source>later</source>
        <translation>después</translation>
    </message>
    <message>
        <source>Who is on duty?</source>
        <translation>¿Quién está de turno?</translation>
    </message>
    <message>
        <source>Who takes over?</source>
        <translation>¿Quién toma el relevo?</translation>
    </message>
</context>
<context>
    <name>ShortFact</name>
    <message>
        <source>shift open</source>
        <translation>turno abierto</translation>
    </message>
    <message>
        <source>shift closed</source>
        <translation>turno cerrado</translation>
    </message>
    <message>
        <source>on duty: %1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>check done</source>
        <translation>comprobación hecha</translation>
    </message>
    <message>
        <source>check failed</source>
        <translation>comprobación fallida</translation>
    </message>
    <message>
        <source>check overridden</source>
        <translation>comprobación omitida</translation>
    </message>
    <message>
        <source>bath %1</source>
        <comment>a temperature</comment>
        <translation>baño %1</translation>
    </message>
    <message>
        <source>bath: no reading</source>
        <translation>baño: sin lectura</translation>
    </message>
    <message>
        <source>bath water changed</source>
        <translation>agua del baño cambiada</translation>
    </message>
    <message>
        <source>%1 started</source>
        <translation>%1 empezada</translation>
    </message>
    <message>
        <source>%1 inspected</source>
        <translation>%1 revisada</translation>
    </message>
    <message>
        <source>%1 not good</source>
        <translation>%1 no está bien</translation>
    </message>
    <message>
        <source>%1: diluent drawn</source>
        <translation>%1: diluyente tomado</translation>
    </message>
    <message>
        <source>%1 mixed</source>
        <translation>%1 mezclada</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>bag, line</comment>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1 swirled</source>
        <translation>%1 removida</translation>
    </message>
    <message>
        <source>%1 on hold</source>
        <translation>%1 retenida</translation>
    </message>
    <message>
        <source>%1 released</source>
        <translation>%1 liberada</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 retirada</translation>
    </message>
    <message>
        <source>ampoule %1: %2</source>
        <comment>number, why it was lost</comment>
        <translation>ampolla %1: %2</translation>
    </message>
    <message>
        <source>cane exposed</source>
        <translation>varilla expuesta</translation>
    </message>
    <message>
        <source>next pull planned</source>
        <translation>próxima tanda prevista</translation>
    </message>
    <message>
        <source>%1: birds counted</source>
        <translation>%1: aves contadas</translation>
    </message>
    <message>
        <source>%1: needle changed</source>
        <translation>%1: aguja cambiada</translation>
    </message>
    <message>
        <source>%1 stopped</source>
        <translation>%1 parada</translation>
    </message>
    <message>
        <source>%1 going</source>
        <translation>%1 en marcha</translation>
    </message>
    <message>
        <source>%1: dose checked</source>
        <translation>%1: dosis comprobada</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>desviación</translation>
    </message>
    <message>
        <source>judged again</source>
        <translation>juzgado otra vez</translation>
    </message>
    <message>
        <source>alarm heard</source>
        <translation>alarma oída</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corregido</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>retirado</translation>
    </message>
    <message>
        <source>answered</source>
        <translation>respondido</translation>
    </message>
    <message>
        <source>note made</source>
        <translation>nota hecha</translation>
    </message>
    <message>
        <source>not taken</source>
        <comment>a tap was refused</comment>
        <translation>no aceptado</translation>
    </message>
    <message>
        <source>scanned</source>
        <translation>código leído</translation>
    </message>
    <message>
        <source>sound heard</source>
        <translation>sonido oído</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>step, numbers of ampoules</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>card adopted</source>
        <translation>ficha adoptada</translation>
    </message>
    <message>
        <source>thermometer noted</source>
        <translation>termómetro anotado</translation>
    </message>
    <message>
        <source>%1 planned</source>
        <translation>%1 prevista</translation>
    </message>
    <message>
        <source>stores: received</source>
        <translation>existencias: recibido</translation>
    </message>
    <message>
        <source>stores: moved</source>
        <translation>existencias: movido</translation>
    </message>
    <message>
        <source>stores: counted</source>
        <translation>existencias: contado</translation>
    </message>
    <message>
        <source>stores: taken out</source>
        <translation>existencias: sacado</translation>
    </message>
    <message>
        <source>lot %1 in quarantine</source>
        <translation>lote %1 en cuarentena</translation>
    </message>
    <message>
        <source>lot %1 released</source>
        <translation>lote %1 liberado</translation>
    </message>
    <message>
        <source>lot %1 allowed</source>
        <translation>lote %1 permitido</translation>
    </message>
    <message>
        <source>lot %1 chosen</source>
        <translation>lote %1 elegido</translation>
    </message>
    <message>
        <source>%1: birds looked at</source>
        <translation>%1: aves miradas</translation>
    </message>
    <message>
        <source>vessel described</source>
        <translation>recipiente descrito</translation>
    </message>
    <message>
        <source>vessel filled</source>
        <translation>recipiente llenado</translation>
    </message>
    <message>
        <source>vessel level read</source>
        <translation>nivel leído</translation>
    </message>
    <message>
        <source>%1 listed</source>
        <comment>a person</comment>
        <translation>%1 en la lista</translation>
    </message>
    <message>
        <source>PIN set</source>
        <translation>PIN puesto</translation>
    </message>
    <message>
        <source>PIN not right</source>
        <translation>PIN incorrecto</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmado</translation>
    </message>
    <message>
        <source>deviation reviewed</source>
        <translation>desviación revisada</translation>
    </message>
    <message>
        <source>note commented on</source>
        <translation>nota comentada</translation>
    </message>
    <message>
        <source>card approved</source>
        <translation>ficha aprobada</translation>
    </message>
    <message>
        <source>record sealed</source>
        <translation>registro sellado</translation>
    </message>
    <message>
        <source>seal agrees</source>
        <translation>el sello coincide</translation>
    </message>
    <message>
        <source>seal does not agree</source>
        <translation>el sello no coincide</translation>
    </message>
    <message>
        <source>copy made</source>
        <translation>copia hecha</translation>
    </message>
    <message>
        <source>chart limits chosen</source>
        <translation>límites elegidos</translation>
    </message>
    <message>
        <source>record goes on</source>
        <translation>el registro sigue</translation>
    </message>
    <message>
        <source>baseline withdrawn</source>
        <translation>referencia retirada</translation>
    </message>
</context>
<context>
    <name>SignText</name>
    <message>
        <source>Signed %1: %2</source>
        <comment>time, meaning</comment>
        <translation>Firmado %1: %2</translation>
    </message>
    <message>
        <source>PIN of %1</source>
        <translation>PIN de %1</translation>
    </message>
    <message>
        <source>No shift lead with a PIN is listed. List one: set-up, people.</source>
        <translation>No hay ningún encargado con PIN en la lista. Anote uno: preparación, personas.</translation>
    </message>
    <message>
        <source>Who signs?</source>
        <translation>¿Quién firma?</translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message numerus="yes">
        <source>%n ampoule(s)</source>
        <comment>in the stores</comment>
        <translation>
            <numerusform>%n ampolla</numerusform>
            <numerusform>%n ampollas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s)</source>
        <comment>in the stores</comment>
        <translation>
            <numerusform>%n bolsa</numerusform>
            <numerusform>%n bolsas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <comment>in the stores</comment>
        <translation>
            <numerusform>%n unidad</numerusform>
            <numerusform>%n unidades</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dose(s)</source>
        <comment>in the stores</comment>
        <translation>
            <numerusform>%n dosis</numerusform>
            <numerusform>%n dosis</numerusform>
        </translation>
    </message>
    <message>
        <source>a text file in UTF-8</source>
        <translation>un archivo de texto en UTF-8</translation>
    </message>
    <message>
        <source>a quote that is closed at the end of its cell</source>
        <translation>comillas que se cierran al final de su celda</translation>
    </message>
    <message>
        <source>a first line that names the columns</source>
        <translation>una primera línea con los nombres de las columnas</translation>
    </message>
    <message>
        <source>one of kind, item, lot, doses, volume_ml, count, expires, titre_pfu, vessel, canister, cane, delivery</source>
        <translation>una de kind, item, lot, doses, volume_ml, count, expires, titre_pfu, vessel, canister, cane, delivery</translation>
    </message>
    <message>
        <source>each column once</source>
        <translation>cada columna una sola vez</translation>
    </message>
    <message>
        <source>that column</source>
        <translation>esa columna</translation>
    </message>
    <message>
        <source>no more cells than columns</source>
        <translation>no más celdas que columnas</translation>
    </message>
    <message>
        <source>ampoule, diluent or consumable</source>
        <translation>ampoule, diluent o consumable</translation>
    </message>
    <message>
        <source>a value, which this kind needs</source>
        <translation>un valor, que esta clase necesita</translation>
    </message>
    <message>
        <source>nothing, as this kind has no such value</source>
        <translation>nada, porque esta clase no tiene ese valor</translation>
    </message>
    <message>
        <source>a component of the procedure card</source>
        <translation>un componente de la ficha de procedimiento</translation>
    </message>
    <message>
        <source>a short text on one line</source>
        <translation>un texto corto en una línea</translation>
    </message>
    <message>
        <source>a whole number, at least 1</source>
        <translation>un número entero, al menos 1</translation>
    </message>
    <message>
        <source>millilitres above 0, with at most three decimals</source>
        <translation>mililitros por encima de 0, con tres decimales como máximo</translation>
    </message>
    <message>
        <source>a day as YYYY-MM-DD</source>
        <translation>un día como AAAA-MM-DD</translation>
    </message>
    <message>
        <source>what the stores have of that lot</source>
        <translation>lo que figura de ese lote en las existencias</translation>
    </message>
    <message>
        <source>ampoules</source>
        <translation>ampollas</translation>
    </message>
    <message>
        <source>diluent</source>
        <translation>diluyente</translation>
    </message>
    <message>
        <source>consumables</source>
        <translation>consumibles</translation>
    </message>
    <message>
        <source>used</source>
        <comment>why something left the stores</comment>
        <translation>gastado</translation>
    </message>
    <message>
        <source>broken</source>
        <comment>why something left the stores</comment>
        <translation>roto</translation>
    </message>
    <message>
        <source>expired</source>
        <comment>why something left the stores</comment>
        <translation>caducado</translation>
    </message>
    <message>
        <source>thawed</source>
        <comment>why something left the stores</comment>
        <translation>descongelado</translation>
    </message>
    <message>
        <source>another reason</source>
        <comment>why something left the stores</comment>
        <translation>otro motivo</translation>
    </message>
    <message>
        <source>fit for use</source>
        <comment>a lot</comment>
        <translation>apto</translation>
    </message>
    <message>
        <source>expired</source>
        <comment>a lot</comment>
        <translation>caducado</translation>
    </message>
    <message>
        <source>in quarantine</source>
        <comment>a lot</comment>
        <translation>en cuarentena</translation>
    </message>
    <message>
        <source>unknown</source>
        <comment>a lot</comment>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>diluent %1</source>
        <comment>the volume of a bag</comment>
        <translation>diluyente %1</translation>
    </message>
    <message>
        <source>%1, lot %2</source>
        <comment>component or diluent, its lot</comment>
        <translation>%1, lote %2</translation>
    </message>
    <message>
        <source>no place named</source>
        <translation>sin lugar</translation>
    </message>
    <message>
        <source>the cane was out of the cryogen too long</source>
        <translation>la varilla estuvo demasiado tiempo fuera del criógeno</translation>
    </message>
    <message>
        <source>%1: %2 too few for what is planned.</source>
        <translation>%1: faltan %2 para lo previsto.</translation>
    </message>
    <message>
        <source>%1: expired, and %2 still there.</source>
        <translation>%1: caducado; aún en existencias: %2.</translation>
    </message>
    <message>
        <source>%1: %2 in quarantine.</source>
        <translation>%1: %2 en cuarentena.</translation>
    </message>
    <message numerus="yes">
        <source>%1: good for %n more day(s).</source>
        <comment>a lot near its expiry</comment>
        <translation>
            <numerusform>%1: sirve %n día más.</numerusform>
            <numerusform>%1: sirve %n días más.</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing</source>
        <comment>found in a cell</comment>
        <translation>nada</translation>
    </message>
    <message>
        <source>“%1”</source>
        <comment>found in a cell</comment>
        <translation>«%1»</translation>
    </message>
    <message>
        <source>Line %1: expected %2.</source>
        <translation>Línea %1: se esperaba %2.</translation>
    </message>
    <message>
        <source>Line %1, column %2: found %3, expected %4.</source>
        <translation>Línea %1, columna %2: hay %3, se esperaba %4.</translation>
    </message>
    <message>
        <source>does not add up</source>
        <translation>no cuadra</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>sin contar</translation>
    </message>
    <message>
        <source>adds up</source>
        <translation>cuadra</translation>
    </message>
    <message>
        <source>ampoules out = in bags + lost</source>
        <translation>ampollas sacadas = en bolsas + perdidas</translation>
    </message>
    <message>
        <source>doses of %1: made up, used and left</source>
        <translation>dosis de %1: preparadas, gastadas y sobrantes</translation>
    </message>
    <message>
        <source>volume: birds × dose, and what is gone</source>
        <translation>volumen: aves × dosis, y lo que falta</translation>
    </message>
</context>
<context>
    <name>Subject</name>
    <message>
        <source>ampoule %1</source>
        <translation>ampolla %1</translation>
    </message>
    <message>
        <source>pull %1</source>
        <comment>a set of ampoules taken out together</comment>
        <translation>tanda %1</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>bolsa %1</translation>
    </message>
    <message>
        <source>line %1</source>
        <comment>where birds are vaccinated</comment>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>the bath</source>
        <translation>el baño</translation>
    </message>
    <message>
        <source>the bench</source>
        <translation>la mesa</translation>
    </message>
    <message>
        <source>the station</source>
        <comment>this computer</comment>
        <translation>la estación</translation>
    </message>
    <message>
        <source>ampoule %1 of pull %2</source>
        <translation>ampolla %1, tanda %2</translation>
    </message>
</context>
<context>
    <name>ThermometerText</name>
    <message>
        <source>Its name, as on its label</source>
        <translation>Su nombre, como en su etiqueta</translation>
    </message>
    <message>
        <source>The smallest step it shows</source>
        <translation>El menor paso que muestra</translation>
    </message>
    <message>
        <source>name …</source>
        <translation>nombre …</translation>
    </message>
    <message>
        <source>smallest step …</source>
        <translation>menor paso …</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>drift …</source>
        <translation>deriva …</translation>
    </message>
    <message>
        <source>± %1 °C since calibration</source>
        <translation>± %1 °C desde la calibración</translation>
    </message>
    <message>
        <source>speed …</source>
        <translation>velocidad …</translation>
    </message>
    <message>
        <source>%1 baud</source>
        <translation>%1 baudios</translation>
    </message>
    <message>
        <source>pattern …</source>
        <translation>patrón …</translation>
    </message>
    <message>
        <source>it sends …</source>
        <translation>envía …</translation>
    </message>
    <message>
        <source>in use again …</source>
        <translation>otra vez en uso …</translation>
    </message>
    <message>
        <source>connection …</source>
        <translation>conexión …</translation>
    </message>
    <message>
        <source>OUT OF USE</source>
        <translation>FUERA DE USO</translation>
    </message>
    <message>
        <source>Drift since calibration, either way</source>
        <translation>Deriva (±) desde la calibración</translation>
    </message>
    <message>
        <source>How is the same thermometer connected now? Its calibration stays.</source>
        <translation>¿Cómo está conectado ahora el mismo termómetro? Su calibración sigue.</translation>
    </message>
    <message>
        <source>Which thermometer is new?</source>
        <translation>¿Qué termómetro es nuevo?</translation>
    </message>
    <message>
        <source>%1: what is different?</source>
        <translation>%1: ¿qué cambia?</translation>
    </message>
    <message>
        <source>NOT IN THE BATH</source>
        <translation>NO ESTÁ EN EL BAÑO</translation>
    </message>
    <message>
        <source>IN THE BATH</source>
        <translation>EN EL BAÑO</translation>
    </message>
    <message>
        <source>any that is read counts</source>
        <translation>cuenta cualquiera que se lea</translation>
    </message>
    <message>
        <source>it alone, and readings by hand</source>
        <translation>solo él, y las lecturas a mano</translation>
    </message>
</context>
<context>
    <name>Time</name>
    <message>
        <source>%1 s</source>
        <comment>seconds</comment>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 min</source>
        <comment>minutes</comment>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 over</source>
        <comment>how long past the limit, e.g. 2 min over</comment>
        <translation>%1 de más</translation>
    </message>
    <message>
        <source>%1 left</source>
        <comment>how long until the limit, e.g. 41 min left</comment>
        <translation>quedan %1</translation>
    </message>
    <message>
        <source>%1 min %2 s</source>
        <comment>minutes and seconds</comment>
        <translation>%1 min %2 s</translation>
    </message>
</context>
<context>
    <name>TrendText</name>
    <message>
        <source>another person</source>
        <translation>otra persona</translation>
    </message>
    <message>
        <source>person %1</source>
        <comment>in place of a name</comment>
        <translation>persona %1</translation>
    </message>
    <message>
        <source>the card&apos;s limit</source>
        <translation>límite de la ficha</translation>
    </message>
    <message>
        <source>centre</source>
        <translation>centro</translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation>límite superior</translation>
    </message>
    <message>
        <source>lower limit</source>
        <translation>límite inferior</translation>
    </message>
    <message>
        <source>Moving range: how far each is from the one before</source>
        <translation>Rango móvil: cuánto dista cada punto del anterior</translation>
    </message>
    <message>
        <source>mean range</source>
        <translation>rango medio</translation>
    </message>
    <message>
        <source>limit of the range</source>
        <translation>límite del rango</translation>
    </message>
    <message>
        <source>beyond its limit</source>
        <translation>pasa su límite</translation>
    </message>
    <message>
        <source>No point breaks a rule.</source>
        <translation>Ningún punto rompe una regla.</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) break a rule.</source>
        <translation>
            <numerusform>%n punto rompe una regla.</numerusform>
            <numerusform>%n puntos rompen una regla.</numerusform>
        </translation>
    </message>
    <message>
        <source>as it scatters, the limit will be passed</source>
        <translation>con esta dispersión se pasará el límite</translation>
    </message>
    <message>
        <source>the limit is just kept</source>
        <translation>el límite se cumple por poco</translation>
    </message>
    <message>
        <source>the limit is kept with room</source>
        <translation>el límite se cumple con holgura</translation>
    </message>
    <message>
        <source>Up to the card&apos;s %1 the capability is %2: %3.</source>
        <comment>limit, figure, words</comment>
        <translation>Hasta los %1 de la ficha la capacidad es %2: %3.</translation>
    </message>
    <message>
        <source>Down to the card&apos;s %1 the capability is %2: %3.</source>
        <comment>limit, figure, words</comment>
        <translation>Por debajo, hasta los %1 de la ficha, la capacidad es %2: %3.</translation>
    </message>
    <message>
        <source>out of cryogen → in bath</source>
        <translation>fuera del criógeno → al baño</translation>
    </message>
    <message>
        <source>in bath → in diluent</source>
        <translation>en el baño → al diluyente</translation>
    </message>
    <message>
        <source>bath at pulls</source>
        <comment>its temperature</comment>
        <translation>baño en las tandas</translation>
    </message>
    <message>
        <source>dose: error of the mean</source>
        <translation>dosis: error de la media</translation>
    </message>
    <message>
        <source>dose: spread of the shots</source>
        <translation>dosis: dispersión</translation>
    </message>
    <message>
        <source>1 beyond 3 sigma</source>
        <translation>1 más allá de 3 sigmas</translation>
    </message>
    <message>
        <source>2 of 3 beyond 2 sigma</source>
        <translation>2 de 3 más allá de 2 sigmas</translation>
    </message>
    <message>
        <source>4 of 5 beyond 1 sigma</source>
        <translation>4 de 5 más allá de 1 sigma</translation>
    </message>
    <message>
        <source>8 on one side</source>
        <translation>8 de un lado</translation>
    </message>
    <message>
        <source>9 on one side</source>
        <translation>9 de un lado</translation>
    </message>
    <message>
        <source>6 rising or falling</source>
        <translation>6 subiendo o bajando</translation>
    </message>
    <message>
        <source>14 up and down</source>
        <translation>14 arriba y abajo</translation>
    </message>
    <message>
        <source>15 within 1 sigma</source>
        <translation>15 dentro de 1 sigma</translation>
    </message>
    <message>
        <source>8 beyond 1 sigma</source>
        <translation>8 más allá de 1 sigma</translation>
    </message>
    <message>
        <source>s</source>
        <comment>unit: seconds</comment>
        <translation>s</translation>
    </message>
    <message>
        <source>person %1</source>
        <translation>persona %1</translation>
    </message>
    <message>
        <source>bench %1</source>
        <translation>puesto %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lote %1</translation>
    </message>
    <message>
        <source>pull %1 (%2)</source>
        <comment>number, ampoules</comment>
        <translation>tanda %1 (%2)</translation>
    </message>
    <message>
        <source>Breaks a rule: %1.</source>
        <translation>Rompe una regla: %1.</translation>
    </message>
    <message>
        <source>NO POINTS</source>
        <translation>SIN PUNTOS</translation>
    </message>
    <message>
        <source>There is nothing of this in these days.</source>
        <translation>No hay nada de esto en estos días.</translation>
    </message>
    <message>
        <source>TOO FEW POINTS</source>
        <translation>POCOS PUNTOS</translation>
    </message>
    <message>
        <source>The baseline has %1 of at least %2 points: no limits are drawn.</source>
        <translation>La referencia tiene %1 de al menos %2 puntos: no se trazan límites.</translation>
    </message>
    <message>
        <source>%1 of at least %2 points: no limits are drawn yet.</source>
        <translation>%1 de al menos %2 puntos: aún no se trazan límites.</translation>
    </message>
    <message>
        <source>LIMITS FROM THE BASELINE</source>
        <translation>LÍMITES DE LA REFERENCIA</translation>
    </message>
    <message numerus="yes">
        <source>Of %n point(s).</source>
        <comment>limits come from</comment>
        <translation>
            <numerusform>De %n punto.</numerusform>
            <numerusform>De %n puntos.</numerusform>
        </translation>
    </message>
    <message>
        <source>These are few; 20 are usual.</source>
        <translation>Son pocos; lo usual son 20.</translation>
    </message>
    <message>
        <source>No baseline is chosen.</source>
        <translation>Sin referencia elegida.</translation>
    </message>
    <message>
        <source>LIMITS FROM THESE POINTS</source>
        <translation>LÍMITES DE ESTOS PUNTOS</translation>
    </message>
    <message>
        <source>All points of the limits are alike: there is no capability.</source>
        <translation>Todos los puntos de los límites son iguales: no hay capacidad.</translation>
    </message>
    <message numerus="yes">
        <source>%n more without a value: not timed, read or weighed.</source>
        <translation>
            <numerusform>%n más sin valor: sin tiempo, lectura o pesada.</numerusform>
            <numerusform>%n más sin valor: sin tiempo, lectura o pesada.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>VesselAsk</name>
    <message>
        <source>Row %1 of the table: what does the dipstick show?</source>
        <translation>Fila %1 de la tabla: ¿qué marca la varilla?</translation>
    </message>
    <message>
        <source>How much is in it at %1 mm?</source>
        <translation>¿Cuánto contiene con %1 mm?</translation>
    </message>
    <message>
        <source>another row …</source>
        <translation>otra fila …</translation>
    </message>
    <message>
        <source>that is the table</source>
        <translation>esa es la tabla</translation>
    </message>
    <message>
        <source>last row out</source>
        <translation>quitar la última fila</translation>
    </message>
    <message>
        <source>later</source>
        <comment>goes on with it later</comment>
        <translation>más tarde</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s), from %1 to %2</source>
        <comment>of a dipstick&apos;s table</comment>
        <translation>
            <numerusform>%n fila, de %1 a %2</numerusform>
            <numerusform>%n filas, de %1 a %2</numerusform>
        </translation>
    </message>
    <message>
        <source>Which level must it never fall below?</source>
        <translation>¿De qué nivel no debe bajar nunca?</translation>
    </message>
    <message>
        <source>How much does it usually lose? See its papers.</source>
        <translation>¿Cuánto pierde normalmente? Vea su documentación.</translation>
    </message>
    <message>
        <source>L a day</source>
        <translation>L al día</translation>
    </message>
    <message>
        <source>How often an hour is its air changed?</source>
        <translation>¿Cuántas veces por hora se renueva su aire?</translation>
    </message>
    <message>
        <source>an hour</source>
        <translation>por hora</translation>
    </message>
    <message>
        <source>How large is the room it stands in?</source>
        <translation>¿Qué tamaño tiene la sala donde está?</translation>
    </message>
    <message>
        <source>its room …</source>
        <translation>su sala …</translation>
    </message>
    <message>
        <source>without a room</source>
        <translation>sin sala</translation>
    </message>
    <message>
        <source>Its room says how much oxygen is left if it all boils off.</source>
        <translation>La sala dice cuánto oxígeno queda si todo se evapora.</translation>
    </message>
    <message>
        <source>A closed room: 0.</source>
        <translation>Sala cerrada: 0.</translation>
    </message>
</context>
<context>
    <name>VesselText</name>
    <message>
        <source>vessel …</source>
        <translation>termo …</translation>
    </message>
    <message>
        <source>vessel %1</source>
        <translation>termo %1</translation>
    </message>
    <message>
        <source>another …</source>
        <comment>vessel</comment>
        <translation>otra …</translation>
    </message>
    <message>
        <source>level …</source>
        <translation>nivel …</translation>
    </message>
    <message>
        <source>by the dipstick</source>
        <translation>con la varilla</translation>
    </message>
    <message>
        <source>Describe it first.</source>
        <translation>Descríbalo antes.</translation>
    </message>
    <message>
        <source>describe anew …</source>
        <translation>describir otra vez …</translation>
    </message>
    <message>
        <source>describe …</source>
        <translation>describir …</translation>
    </message>
    <message>
        <source>Choose a vessel first.</source>
        <translation>Elija antes un termo.</translation>
    </message>
    <message>
        <source>a new one …</source>
        <comment>vessel</comment>
        <translation>uno nuevo …</translation>
    </message>
    <message>
        <source>Which vessel?</source>
        <translation>¿Qué termo?</translation>
    </message>
    <message>
        <source>What is the vessel called?</source>
        <translation>¿Cómo se llama el termo?</translation>
    </message>
    <message>
        <source>What does the dipstick show?</source>
        <translation>¿Qué marca la varilla?</translation>
    </message>
    <message>
        <source>not filled since</source>
        <translation>no se rellenó</translation>
    </message>
    <message>
        <source>filled since</source>
        <translation>se rellenó</translation>
    </message>
    <message>
        <source>%1 mm. Was it filled since the reading before?</source>
        <translation>%1 mm. ¿Se rellenó desde la lectura anterior?</translation>
    </message>
    <message>
        <source>The vacuum is sound: the vessel loses no more than usual.</source>
        <translation>El vacío está bien: el termo no pierde más de lo habitual.</translation>
    </message>
    <message>
        <source>The vacuum is suspect: the vessel loses more than usual. Read its level more often.</source>
        <translation>Vacío dudoso: el termo pierde más de lo habitual. Lea el nivel más a menudo.</translation>
    </message>
    <message>
        <source>The vacuum is failing: the vessel loses far more than usual. Move the ampoules.</source>
        <translation>Falla el vacío: el termo pierde mucho más de lo habitual. Traslade las ampollas.</translation>
    </message>
    <message>
        <source>The level is below its minimum: fill it now.</source>
        <translation>El nivel está por debajo del mínimo: rellene ya.</translation>
    </message>
    <message>
        <source>Read the level again tomorrow: a loss takes two readings.</source>
        <translation>Lea el nivel otra vez mañana: la pérdida necesita dos lecturas.</translation>
    </message>
    <message>
        <source>not for a thousand years</source>
        <translation>no en mil años</translation>
    </message>
    <message>
        <source>L a day</source>
        <translation>L al día</translation>
    </message>
    <message>
        <source>%1; it lies in %2</source>
        <comment>a loss and its interval</comment>
        <translation>%1; está %2</translation>
    </message>
    <message>
        <source>%1; too few readings to say how surely</source>
        <translation>%1; faltan lecturas para decir con qué seguridad</translation>
    </message>
    <message>
        <source>fill by</source>
        <translation>rellenar antes del</translation>
    </message>
    <message>
        <source>at the soonest</source>
        <translation>como pronto</translation>
    </message>
    <message>
        <source>no lack of oxygen by this estimate</source>
        <translation>no falta oxígeno según esta estimación</translation>
    </message>
    <message>
        <source>too little oxygen: below 19.5 %</source>
        <translation>poco oxígeno: menos del 19,5 %</translation>
    </message>
    <message>
        <source>leave the room: below 18 %</source>
        <translation>salga de la sala: menos del 18 %</translation>
    </message>
    <message>
        <source>danger to life: below 14 % nobody helps himself</source>
        <translation>peligro de muerte: con menos del 14 % nadie puede valerse</translation>
    </message>
    <message>
        <source>oxygen, if all of it boils off at once</source>
        <translation>oxígeno, si todo se evapora de golpe</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>oxygen, and what that means</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>oxygen, with its usual loss</source>
        <translation>oxígeno, con su pérdida habitual</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>atención</translation>
    </message>
    <message>
        <source>An estimate. Cold gas sinks and does not spread evenly: a meter at the bench stays necessary, and local rules go first.</source>
        <translation>Una estimación. El gas frío baja y no se reparte por igual: el medidor junto a la mesa sigue siendo necesario, y las normas locales van primero.</translation>
    </message>
    <message>
        <source>Describe the vessel first: its dipstick&apos;s table, its minimum, its usual loss.</source>
        <translation>Describa antes el termo: la tabla de su varilla, su mínimo, su pérdida habitual.</translation>
    </message>
    <message>
        <source>Dip the vessel and enter its level.</source>
        <translation>Mida el termo con la varilla y anote el nivel.</translation>
    </message>
    <message>
        <source>level</source>
        <translation>nivel</translation>
    </message>
    <message>
        <source>%1 of %2; minimum: %3</source>
        <comment>litres</comment>
        <translation>%1 de %2; mínimo: %3</translation>
    </message>
    <message>
        <source>loss</source>
        <translation>pérdida</translation>
    </message>
    <message>
        <source>too high from</source>
        <translation>demasiado desde</translation>
    </message>
    <message>
        <source>%1 a day; usual: %2</source>
        <translation>%1 al día; lo habitual: %2</translation>
    </message>
    <message>
        <source>save</source>
        <comment>a picture of the chart</comment>
        <translation>guardar</translation>
    </message>
    <message>
        <source>The readings show no loss: read the level again tomorrow.</source>
        <translation>Las lecturas no muestran pérdida: lea el nivel otra vez mañana.</translation>
    </message>
    <message>
        <source>%1; one more reading has to confirm that</source>
        <comment>a loss</comment>
        <translation>%1; falta otra lectura que lo confirme</translation>
    </message>
    <message>
        <source>of late</source>
        <translation>últimamente</translation>
    </message>
    <message>
        <source>unfinished: goes on</source>
        <translation>sin terminar: continúa</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>vessels</comment>
        <translation>más …</translation>
    </message>
    <message>
        <source>a closed room: below 19.5 % after %1, and falling on</source>
        <translation>sala cerrada: menos de 19,5 % tras %1, y sigue bajando</translation>
    </message>
    <message>
        <source>days</source>
        <translation>días</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>OUT OF CRYOGEN</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>FUERA DEL CRIÓGENO</numerusform>
            <numerusform>FUERA DEL CRIÓGENO</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>IN BATH</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>EN EL BAÑO</numerusform>
            <numerusform>EN EL BAÑO</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>OPENED</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>ABIERTA</numerusform>
            <numerusform>ABIERTAS</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>IN DILUENT</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>EN DILUYENTE</numerusform>
            <numerusform>EN DILUYENTE</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>RINSED</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>ENJUAGADA</numerusform>
            <numerusform>ENJUAGADAS</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>IN BAG</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>EN LA BOLSA</numerusform>
            <numerusform>EN LA BOLSA</numerusform>
        </translation>
    </message>
    <message>
        <source>SHIFT OPEN</source>
        <comment>big button: the shift has been opened</comment>
        <translation>TURNO ABIERTO</translation>
    </message>
    <message>
        <source>SET UP</source>
        <comment>big button: the bench has been set up</comment>
        <translation>PREPARADO</translation>
    </message>
    <message>
        <source>BAG STARTED</source>
        <comment>big button</comment>
        <translation>BOLSA EMPEZADA</translation>
    </message>
    <message>
        <source>INSPECTED</source>
        <comment>big button: the diluent bag, found good</comment>
        <translation>REVISADA</translation>
    </message>
    <message>
        <source>DILUENT DRAWN</source>
        <comment>big button: into the syringe</comment>
        <translation>DILUYENTE TOMADO</translation>
    </message>
    <message>
        <source>MIXED</source>
        <comment>big button: the bag</comment>
        <translation>MEZCLADA</translation>
    </message>
    <message>
        <source>HUNG</source>
        <comment>big button: the bag, on its line</comment>
        <translation>COLGADA</translation>
    </message>
    <message>
        <source>NOTHING TO DO</source>
        <comment>big button: nothing is next</comment>
        <translation>NADA QUE HACER</translation>
    </message>
    <message numerus="yes">
        <source>%n ampoule(s)</source>
        <translation>
            <numerusform>%n ampolla</numerusform>
            <numerusform>%n ampollas</numerusform>
        </translation>
    </message>
    <message>
        <source>out</source>
        <comment>where the ampoule is: out of the cryogen</comment>
        <translation>fuera</translation>
    </message>
    <message>
        <source>in bath</source>
        <comment>where the ampoule is</comment>
        <translation>en baño</translation>
    </message>
    <message>
        <source>opened</source>
        <comment>how the ampoule is</comment>
        <translation>abierta</translation>
    </message>
    <message>
        <source>in diluent</source>
        <comment>where the ampoule&apos;s content is</comment>
        <translation>en diluyente</translation>
    </message>
    <message>
        <source>rinsed</source>
        <comment>how the ampoule is</comment>
        <translation>enjuagada</translation>
    </message>
    <message>
        <source>in bag</source>
        <comment>where the ampoule&apos;s content is</comment>
        <translation>en la bolsa</translation>
    </message>
    <message>
        <source>lost: %1</source>
        <comment>an ampoule, and why</comment>
        <translation>perdida: %1</translation>
    </message>
    <message>
        <source>in bag %1</source>
        <comment>an ampoule&apos;s content</comment>
        <translation>en la bolsa %1</translation>
    </message>
    <message>
        <source>%1, lot %2</source>
        <comment>component of the vaccine and its lot</comment>
        <translation>%1, lote %2</translation>
    </message>
    <message>
        <source>heads-up</source>
        <comment>first level: a limit is near</comment>
        <translation>aviso</translation>
    </message>
    <message>
        <source>limit</source>
        <comment>second level: the limit is passed</comment>
        <translation>límite</translation>
    </message>
    <message>
        <source>overrun</source>
        <comment>third level: passed and still nobody acted</comment>
        <translation>excedido</translation>
    </message>
    <message>
        <source>broken</source>
        <comment>an ampoule was lost</comment>
        <translation>rota</translation>
    </message>
    <message>
        <source>dropped</source>
        <comment>an ampoule was lost</comment>
        <translation>caída</translation>
    </message>
    <message>
        <source>abandoned</source>
        <comment>an ampoule was lost on purpose</comment>
        <translation>descartada</translation>
    </message>
    <message>
        <source>handed over</source>
        <comment>an ampoule went to another bench</comment>
        <translation>cedida</translation>
    </message>
    <message>
        <source>leak</source>
        <comment>why a bag is on hold</comment>
        <translation>fuga</translation>
    </message>
    <message>
        <source>colour</source>
        <comment>why a bag is on hold</comment>
        <translation>color</translation>
    </message>
    <message>
        <source>wrong lot</source>
        <comment>why a bag is on hold</comment>
        <translation>lote equivocado</translation>
    </message>
    <message>
        <source>age unknown</source>
        <comment>why a bag is on hold</comment>
        <translation>edad desconocida</translation>
    </message>
    <message>
        <source>failed inspection</source>
        <comment>why a bag is on hold</comment>
        <translation>revisión fallida</translation>
    </message>
    <message>
        <source>another reason</source>
        <comment>why a bag is on hold</comment>
        <translation>otro motivo</translation>
    </message>
    <message>
        <source>empty</source>
        <comment>why a bag was taken down</comment>
        <translation>vacía</translation>
    </message>
    <message>
        <source>past its time</source>
        <comment>why a bag was taken down</comment>
        <translation>fuera de tiempo</translation>
    </message>
    <message>
        <source>discarded</source>
        <comment>why a bag was taken down</comment>
        <translation>desechada</translation>
    </message>
    <message>
        <source>work finished</source>
        <comment>why a bag was taken down</comment>
        <translation>trabajo terminado</translation>
    </message>
    <message>
        <source>time out of the cryogen</source>
        <comment>name of a limit</comment>
        <translation>tiempo fuera del criógeno</translation>
    </message>
    <message>
        <source>time from bath to diluent</source>
        <comment>name of a limit</comment>
        <translation>tiempo del baño al diluyente</translation>
    </message>
    <message>
        <source>time a bag is in use</source>
        <comment>name of a limit</comment>
        <translation>tiempo de uso de la bolsa</translation>
    </message>
    <message>
        <source>bath when ampoules go in</source>
        <comment>name of a limit</comment>
        <translation>baño al entrar las ampollas</translation>
    </message>
    <message>
        <source>temperature of the diluent</source>
        <comment>name of a limit</comment>
        <translation>temperatura del diluyente</translation>
    </message>
    <message>
        <source>bath before the next pull</source>
        <comment>name of a limit</comment>
        <translation>baño antes de la próxima tanda</translation>
    </message>
    <message>
        <source>age of the bath reading</source>
        <comment>name of a limit</comment>
        <translation>antigüedad de la lectura del baño</translation>
    </message>
    <message>
        <source>swirling the bag</source>
        <comment>name of a limit</comment>
        <translation>remover la bolsa</translation>
    </message>
    <message>
        <source>birds with one needle</source>
        <comment>name of a limit</comment>
        <translation>aves con una misma aguja</translation>
    </message>
    <message>
        <source>dose check</source>
        <comment>name of a limit</comment>
        <translation>comprobación de la dosis</translation>
    </message>
    <message>
        <source>start of the next pull</source>
        <comment>name of a limit</comment>
        <translation>comienzo de la próxima tanda</translation>
    </message>
    <message>
        <source>until in the bath</source>
        <comment>under the time left</comment>
        <translation>hasta el baño</translation>
    </message>
    <message>
        <source>until in diluent</source>
        <comment>under the time left</comment>
        <translation>hasta el diluyente</translation>
    </message>
    <message>
        <source>until it is down</source>
        <comment>under the time left</comment>
        <translation>hasta retirarla</translation>
    </message>
    <message>
        <source>until the bath is right</source>
        <comment>under the time left</comment>
        <translation>hasta que el baño esté bien</translation>
    </message>
    <message>
        <source>until the diluent is right</source>
        <comment>under the time left</comment>
        <translation>hasta que el diluyente esté bien</translation>
    </message>
    <message>
        <source>until the bath is measured</source>
        <comment>under the time left</comment>
        <translation>hasta medir el baño</translation>
    </message>
    <message>
        <source>until the next swirl</source>
        <comment>under the time left</comment>
        <translation>hasta remover otra vez</translation>
    </message>
    <message>
        <source>until the needle is changed</source>
        <comment>under the time left</comment>
        <translation>hasta cambiar la aguja</translation>
    </message>
    <message>
        <source>until the dose check</source>
        <comment>under the time left</comment>
        <translation>hasta comprobar la dosis</translation>
    </message>
    <message>
        <source>until the next pull</source>
        <comment>under the time left</comment>
        <translation>hasta la próxima tanda</translation>
    </message>
    <message>
        <source>too long out of the cryogen</source>
        <comment>under the time that is over</comment>
        <translation>demasiado tiempo fuera del criógeno</translation>
    </message>
    <message>
        <source>bath not right</source>
        <comment>under the time that is over</comment>
        <translation>el baño no está bien</translation>
    </message>
    <message>
        <source>diluent not right</source>
        <comment>under the time that is over</comment>
        <translation>el diluyente no está bien</translation>
    </message>
    <message>
        <source>bath not measured</source>
        <comment>under the time that is over</comment>
        <translation>baño sin medir</translation>
    </message>
    <message>
        <source>swirl is late</source>
        <comment>under the time that is over</comment>
        <translation>remover: con retraso</translation>
    </message>
    <message>
        <source>needle change is late</source>
        <comment>under the time that is over</comment>
        <translation>cambio de aguja con retraso</translation>
    </message>
    <message>
        <source>dose check is late</source>
        <comment>under the time that is over</comment>
        <translation>comprobación de dosis con retraso</translation>
    </message>
    <message>
        <source>pull is late</source>
        <comment>under the time that is over</comment>
        <translation>tanda con retraso</translation>
    </message>
    <message>
        <source>inside</source>
        <comment>the bath&apos;s temperature against its tolerance</comment>
        <translation>dentro</translation>
    </message>
    <message>
        <source>not sure</source>
        <comment>the bath&apos;s temperature against its tolerance</comment>
        <translation>dudoso</translation>
    </message>
    <message>
        <source>outside</source>
        <comment>the bath&apos;s temperature against its tolerance</comment>
        <translation>fuera</translation>
    </message>
    <message>
        <source>The thermometer&apos;s own check failed.</source>
        <translation>Falló la comprobación del propio termómetro.</translation>
    </message>
    <message>
        <source>The thermometer has not measured yet.</source>
        <translation>El termómetro aún no ha medido.</translation>
    </message>
    <message>
        <source>No thermometer is connected.</source>
        <translation>No hay termómetro conectado.</translation>
    </message>
    <message>
        <source>The thermometer&apos;s line is shorted.</source>
        <translation>La línea del termómetro está en cortocircuito.</translation>
    </message>
    <message>
        <source>The thermometer gave no answer.</source>
        <translation>El termómetro no respondió.</translation>
    </message>
    <message>
        <source>The thermometer&apos;s answer cannot be read.</source>
        <translation>La respuesta del termómetro no se puede leer.</translation>
    </message>
    <message>
        <source>That is no temperature of a water bath.</source>
        <translation>Esa no es la temperatura de un baño de agua.</translation>
    </message>
    <message>
        <source>Water cannot change that fast.</source>
        <translation>El agua no puede cambiar tan rápido.</translation>
    </message>
    <message>
        <source>The thermometer is gone.</source>
        <translation>El termómetro ya no está.</translation>
    </message>
    <message>
        <source>beyond the calibrated range</source>
        <comment>a reading</comment>
        <translation>fuera del intervalo calibrado</translation>
    </message>
    <message>
        <source>calibration is overdue</source>
        <comment>a thermometer</comment>
        <translation>calibración vencida</translation>
    </message>
    <message>
        <source>not calibrated</source>
        <comment>a thermometer</comment>
        <translation>sin calibrar</translation>
    </message>
    <message>
        <source>too uncertain to say inside</source>
        <comment>a thermometer</comment>
        <translation>demasiado incierto para decir dentro</translation>
    </message>
    <message>
        <source>by name</source>
        <comment>how a person is known: one tap on a name</comment>
        <translation>por su nombre</translation>
    </message>
    <message>
        <source>proven</source>
        <comment>how a person is known: by PIN or badge</comment>
        <translation>probado</translation>
    </message>
    <message>
        <source>minor</source>
        <comment>severity of a deviation</comment>
        <translation>menor</translation>
    </message>
    <message>
        <source>major</source>
        <comment>severity of a deviation</comment>
        <translation>mayor</translation>
    </message>
    <message>
        <source>critical</source>
        <comment>severity of a deviation</comment>
        <translation>crítica</translation>
    </message>
    <message>
        <source>limit</source>
        <comment>sort of a rule: passing it is a deviation</comment>
        <translation>límite</translation>
    </message>
    <message>
        <source>reminder</source>
        <comment>sort of a rule: passing it is only late</comment>
        <translation>recordatorio</translation>
    </message>
    <message>
        <source>recorded</source>
        <comment>status of the record</comment>
        <translation>registrado</translation>
    </message>
    <message>
        <source>recording …</source>
        <comment>status of the record: something waits</comment>
        <translation>registrando …</translation>
    </message>
    <message>
        <source>NOT CONFIRMED</source>
        <comment>status of the record</comment>
        <translation>SIN CONFIRMAR</translation>
    </message>
    <message>
        <source>NOT RECORDED</source>
        <comment>status of the record</comment>
        <translation>SIN REGISTRAR</translation>
    </message>
    <message>
        <source>to the diluent</source>
        <comment>under the time that is over</comment>
        <translation>al diluyente</translation>
    </message>
    <message>
        <source>take it down</source>
        <comment>under the time that is over</comment>
        <translation>retírela</translation>
    </message>
    <message>
        <source>a lot expired, in quarantine or unknown</source>
        <comment>why a bag is on hold</comment>
        <translation>un lote caducado, en cuarentena o desconocido</translation>
    </message>
    <message>
        <source>vaccinator</source>
        <translation>vacunador</translation>
    </message>
    <message>
        <source>shift lead</source>
        <translation>encargado</translation>
    </message>
    <message>
        <source>auditor</source>
        <translation>auditor</translation>
    </message>
    <message>
        <source>done by me</source>
        <comment>meaning of a signature</comment>
        <translation>hecho por mí</translation>
    </message>
    <message>
        <source>reviewed</source>
        <comment>meaning of a signature</comment>
        <translation>revisado</translation>
    </message>
    <message>
        <source>approved</source>
        <comment>meaning of a signature</comment>
        <translation>aprobado</translation>
    </message>
    <message>
        <source>witnessed</source>
        <comment>meaning of a signature</comment>
        <translation>presenciado</translation>
    </message>
    <message>
        <source>no sound</source>
        <comment>name of an alarm</comment>
        <translation>sin sonido</translation>
    </message>
    <message>
        <source>not recorded</source>
        <comment>name of an alarm</comment>
        <translation>sin registrar</translation>
    </message>
    <message>
        <source>clock changed</source>
        <comment>name of an alarm</comment>
        <translation>reloj cambiado</translation>
    </message>
    <message>
        <source>vessel loses too much</source>
        <comment>name of an alarm</comment>
        <translation>el recipiente pierde demasiado</translation>
    </message>
    <message>
        <source>its check failed</source>
        <comment>why a thermometer gives no reading</comment>
        <translation>falló su control</translation>
    </message>
    <message>
        <source>not measured yet</source>
        <comment>why a thermometer gives no reading</comment>
        <translation>aún no ha medido</translation>
    </message>
    <message>
        <source>not connected</source>
        <comment>why a thermometer gives no reading</comment>
        <translation>sin conectar</translation>
    </message>
    <message>
        <source>line shorted</source>
        <comment>why a thermometer gives no reading</comment>
        <translation>línea en corto</translation>
    </message>
    <message>
        <source>no answer</source>
        <comment>why a thermometer gives no reading</comment>
        <translation>no responde</translation>
    </message>
    <message>
        <source>answer unreadable</source>
        <comment>why a thermometer gives no reading</comment>
        <translation>respuesta ilegible</translation>
    </message>
    <message>
        <source>impossible value</source>
        <comment>why a thermometer gives no reading</comment>
        <translation>valor imposible</translation>
    </message>
    <message>
        <source>changed too fast</source>
        <comment>why a thermometer gives no reading</comment>
        <translation>cambio muy rápido</translation>
    </message>
    <message>
        <source>thermometer gone</source>
        <comment>why a thermometer gives no reading</comment>
        <translation>falta el termómetro</translation>
    </message>
    <message>
        <source>vessel low</source>
        <comment>name of an alarm</comment>
        <translation>termo bajo</translation>
    </message>
    <message>
        <source>no thermometer reading</source>
        <comment>name of an alarm</comment>
        <translation>sin lectura del termómetro</translation>
    </message>
</context>
<context>
    <name>bathside::app::Session</name>
    <message>
        <source>Bathside is running already with this trail (process %1). Use that one, or end it first: %2</source>
        <translation>Bathside ya está en marcha con este registro (proceso %1). Use ese, o ciérrelo primero: %2</translation>
    </message>
    <message>
        <source>The trail&apos;s folder cannot be written to (%1): %2</source>
        <translation>No se puede escribir en la carpeta del registro (%1): %2</translation>
    </message>
    <message>
        <source>The trail&apos;s folder cannot be made (%1): %2</source>
        <translation>No se puede crear la carpeta del registro (%1): %2</translation>
    </message>
    <message>
        <source>The key that seals the record cannot be read: %1</source>
        <translation>No se puede leer la clave que sella el registro: %1</translation>
    </message>
    <message>
        <source>This file should hold the key that seals the record, and holds something else: %1</source>
        <translation>Este archivo debería contener la clave que sella el registro y contiene otra cosa: %1</translation>
    </message>
    <message>
        <source>The key that seals the record cannot be made: %1</source>
        <translation>No se puede crear la clave que sella el registro: %1</translation>
    </message>
    <message>
        <source>Others may read the key that seals the record. Take their rights away (mode 0600) and ask whether it was copied: %1</source>
        <translation>Otros pueden leer la clave que sella el registro. Quíteles el permiso (modo 0600) y pregunte si alguien la copió: %1</translation>
    </message>
</context>
<context>
    <name>bathside::app::StationApp</name>
    <message>
        <source>The card cannot be read (%1): %2</source>
        <translation>No se puede leer la ficha (%1): %2</translation>
    </message>
    <message>
        <source>Vaccine is being thawed</source>
        <translation>Se está descongelando vacuna</translation>
    </message>
</context>
<context>
    <name>bathside::ui::BagTable</name>
    <message>
        <source>bag</source>
        <comment>column of the plan</comment>
        <translation>bolsa</translation>
    </message>
    <message>
        <source>pull at</source>
        <comment>column of the plan</comment>
        <translation>tanda</translation>
    </message>
    <message>
        <source>size</source>
        <comment>column of the plan</comment>
        <translation>tamaño</translation>
    </message>
    <message>
        <source>lots × ampoules</source>
        <comment>column of the plan</comment>
        <translation>lotes × ampollas</translation>
    </message>
    <message>
        <source>birds</source>
        <comment>column of the plan</comment>
        <translation>aves</translation>
    </message>
    <message>
        <source>first bird</source>
        <comment>column of the plan</comment>
        <translation>primera ave</translation>
    </message>
    <message>
        <source>last bird</source>
        <comment>column of the plan</comment>
        <translation>última ave</translation>
    </message>
    <message>
        <source>margin</source>
        <comment>column of the plan</comment>
        <translation>margen</translation>
    </message>
    <message>
        <source>mixed</source>
        <comment>a bag</comment>
        <translation>mezclada</translation>
    </message>
    <message>
        <source>hangs</source>
        <comment>a bag</comment>
        <translation>colgada</translation>
    </message>
    <message>
        <source>only %1</source>
        <comment>margin</comment>
        <translation>solo %1</translation>
    </message>
</context>
<context>
    <name>bathside::ui::BenchPage</name>
    <message>
        <source>Not taken.</source>
        <translation>No aceptado.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>Under the big clock: whose time it is, and until what.</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n fit(s) in time together</source>
        <translation>
            <numerusform>Cabe %n a tiempo</numerusform>
            <numerusform>Caben %n juntas a tiempo</numerusform>
        </translation>
    </message>
    <message>
        <source>No shift is open</source>
        <translation>No hay turno abierto</translation>
    </message>
    <message>
        <source>The big button says what has been DONE. Press it in the moment you have done it: Bathside takes the time, watches the limits and calls you. A slip of the finger? TAKE BACK.</source>
        <translation>El botón grande dice lo que se ha HECHO. Púlselo en cuanto lo haya hecho: Bathside toma la hora, vigila los límites y le avisa. ¿Se le fue el dedo? RETIRAR.</translation>
    </message>
    <message>
        <source>Set the bench up</source>
        <translation>Prepare la mesa</translation>
    </message>
    <message>
        <source>Go through the list: alarm heard, diluent inspected, bath at temperature, eyes and hands protected. Then start a bag.</source>
        <translation>Repase la lista: alarma oída, diluyente revisado, baño a temperatura, ojos y manos protegidos. Después empiece una bolsa.</translation>
    </message>
    <message>
        <source>Ready for a bag</source>
        <translation>Listo para una bolsa</translation>
    </message>
    <message>
        <source>Start a bag, inspect it, draw the diluent. Then take the ampoules out of the cryogen: from there on every step is one press.</source>
        <translation>Empiece una bolsa, revísela, tome el diluyente. Después saque las ampollas del criógeno: desde ahí, cada paso es una pulsación.</translation>
    </message>
    <message>
        <source>TAKE BACK</source>
        <translation>RETIRAR</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>nada aún</translation>
    </message>
    <message>
        <source>HEARD</source>
        <translation>OÍDA</translation>
    </message>
    <message>
        <source>nothing sounds</source>
        <translation>no suena nada</translation>
    </message>
    <message>
        <source>CLOSE</source>
        <translation>CERRAR</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation>MÁS</translation>
    </message>
    <message>
        <source>on duty: %1</source>
        <extracomment>%1 is a person&apos;s initials.</extracomment>
        <translation>turno: %1</translation>
    </message>
    <message>
        <source>min</source>
        <extracomment>After the digits of the big clock: minutes.</extracomment>
        <translation>min</translation>
    </message>
    <message numerus="yes">
        <source>Stagger: one every %n second(s)</source>
        <translation>
            <numerusform>Escalonar: una cada segundo</numerusform>
            <numerusform>Escalonar: una cada %n segundos</numerusform>
        </translation>
    </message>
    <message>
        <source>Face shield, insulated gloves, tongs, fresh air. Ampoules can burst: open them away from you, thumb clear. The label comes first.</source>
        <translation>Pantalla facial, guantes aislantes, pinzas, aire fresco. Las ampollas pueden estallar: ábralas lejos de usted, con el pulgar apartado. La etiqueta manda.</translation>
    </message>
</context>
<context>
    <name>bathside::ui::CardGauge</name>
    <message>
        <source>Hold a bank card against the outline. Make it wider or narrower until the card fits.</source>
        <translation>Ponga una tarjeta bancaria sobre el contorno. Ensánchelo o estréchelo hasta que coincida.</translation>
    </message>
    <message>
        <source>narrower</source>
        <translation>más estrecho</translation>
    </message>
    <message>
        <source>wider</source>
        <translation>más ancho</translation>
    </message>
    <message>
        <source>it fits</source>
        <translation>coincide</translation>
    </message>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
</context>
<context>
    <name>bathside::ui::CaseTile</name>
    <message>
        <source>blocked until a shift lead decides</source>
        <translation>espera a un encargado</translation>
    </message>
    <message>
        <source>on hold</source>
        <translation>retenida</translation>
    </message>
    <message>
        <source>reviewed by %1</source>
        <translation>revisado por %1</translation>
    </message>
</context>
<context>
    <name>bathside::ui::Cautions</name>
    <message>
        <source>Cryogen burns skin and eyes and displaces the oxygen of a closed room.</source>
        <translation>El criógeno quema la piel y los ojos y desplaza el oxígeno de un local cerrado.</translation>
    </message>
    <message>
        <source>Frozen ampoules can burst.</source>
        <translation>Las ampollas congeladas pueden reventar.</translation>
    </message>
    <message>
        <source>Eye or face protection, insulated gloves, tongs, ventilation.</source>
        <translation>Gafas o pantalla facial, guantes aislantes, pinzas, ventilación.</translation>
    </message>
    <message>
        <source>Glass cuts: open it away from you, thumb clear.</source>
        <translation>El vidrio corta: ábrala lejos de usted, con el pulgar apartado.</translation>
    </message>
    <message>
        <source>Needles and glass: sharps container.</source>
        <translation>Agujas y vidrio: al contenedor de punzantes.</translation>
    </message>
    <message>
        <source>Self-injection: medical advice at once.</source>
        <translation>Autoinyección: consulte a un médico de inmediato.</translation>
    </message>
    <message>
        <source>Label, veterinarian, site rules and law come first.</source>
        <translation>Mandan la etiqueta, el veterinario, las normas del lugar y la ley.</translation>
    </message>
</context>
<context>
    <name>bathside::ui::CheckTile</name>
    <message>
        <source>needed</source>
        <comment>a check without which no bag starts</comment>
        <translation>necesaria</translation>
    </message>
    <message>
        <source>open</source>
        <comment>a check not done yet</comment>
        <translation>abierta</translation>
    </message>
    <message>
        <source>ok</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>not ok</source>
        <translation>mal</translation>
    </message>
    <message>
        <source>waived</source>
        <comment>a check overridden with a reason</comment>
        <translation>omitida</translation>
    </message>
</context>
<context>
    <name>bathside::ui::ChecksPage</name>
    <message>
        <source>CHECKS</source>
        <translation>COMPROBACIONES</translation>
    </message>
    <message>
        <source>Limits here are common practice: the label and the site go first.</source>
        <translation>Estos límites son práctica habitual: la etiqueta y el centro van primero.</translation>
    </message>
    <message>
        <source>injector</source>
        <translation>inyector</translation>
    </message>
    <message>
        <source>birds</source>
        <comment>the check of birds</comment>
        <translation>aves</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation>termo</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>puesto</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>figures</comment>
        <translation>más …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>Limits here are those of the card; the label goes first.</source>
        <translation>Los límites son los de la ficha; la etiqueta va primero.</translation>
    </message>
</context>
<context>
    <name>bathside::ui::CoursePicture</name>
    <message>
        <source>bath %1 at %2</source>
        <comment>temperature, time since the first step</comment>
        <translation>baño %1 a los %2</translation>
    </message>
</context>
<context>
    <name>bathside::ui::DayModel</name>
    <message>
        <source>An entry of a kind that this version does not know: %1</source>
        <translation>Una entrada de una clase que esta versión no conoce: %1</translation>
    </message>
</context>
<context>
    <name>bathside::ui::DayView</name>
    <message>
        <source>CORRECTED: %1</source>
        <translation>CORREGIDO: %1</translation>
    </message>
    <message>
        <source>TAKEN BACK: %1</source>
        <translation>RETIRADO: %1</translation>
    </message>
</context>
<context>
    <name>bathside::ui::Frame</name>
    <message>
        <source>REHEARSAL</source>
        <translation>ENSAYO</translation>
    </message>
    <message>
        <source>Nothing here counts. The real day has its own record.</source>
        <translation>Aquí nada cuenta. El día real tiene su propio registro.</translation>
    </message>
</context>
<context>
    <name>bathside::ui::LetterPad</name>
    <message>
        <source>A B C</source>
        <comment>shows the letter keys</comment>
        <translation>A B C</translation>
    </message>
    <message>
        <source>1 2 3</source>
        <comment>shows the digit keys</comment>
        <translation>1 2 3</translation>
    </message>
    <message>
        <source>Space</source>
        <comment>the space between words</comment>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Delete the last sign</source>
        <translation>Borrar el último signo</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Fijar</translation>
    </message>
    <message numerus="yes">
        <source>Type at least %n signs.</source>
        <translation>
            <numerusform>Escriba al menos %n signo.</numerusform>
            <numerusform>Escriba al menos %n signos.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bathside::ui::LineTiles</name>
    <message>
        <source>%1 · %2</source>
        <extracomment>A line of injectors and the bag that hangs on it: &quot;line A · bag B4&quot;.</extracomment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 · no bag</source>
        <translation>%1 · sin bolsa</translation>
    </message>
</context>
<context>
    <name>bathside::ui::LotTile</name>
    <message>
        <source>good to %1</source>
        <comment>expiry</comment>
        <translation>caduca %1</translation>
    </message>
    <message>
        <source>near expiry</source>
        <translation>caduca pronto</translation>
    </message>
    <message>
        <source>allowed today</source>
        <translation>permitido hoy</translation>
    </message>
    <message>
        <source>none left</source>
        <translation>no queda</translation>
    </message>
    <message>
        <source>count it</source>
        <translation>cuéntelo</translation>
    </message>
    <message>
        <source>next</source>
        <comment>the next ampoules are of this lot</comment>
        <translation>sigue</translation>
    </message>
    <message numerus="yes">
        <source>at %n place(s)</source>
        <comment>where a lot stands</comment>
        <translation>
            <numerusform>en %n lugar</numerusform>
            <numerusform>en %n lugares</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bathside::ui::NumberPad</name>
    <message>
        <source>Delete the last sign</source>
        <translation>Borrar el último signo</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Fijar</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Type a number first.</source>
        <translation>Escriba primero un número.</translation>
    </message>
    <message>
        <source>That is outside what can be. %1</source>
        <translation>Eso está fuera de lo posible. %1</translation>
    </message>
    <message>
        <source>From %1 to %2 %3.</source>
        <comment>lowest, highest, unit</comment>
        <translation>De %1 a %2 %3.</translation>
    </message>
    <message>
        <source>Change the sign</source>
        <translation>Cambiar el signo</translation>
    </message>
</context>
<context>
    <name>bathside::ui::PeoplePage</name>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>new PIN …</source>
        <translation>PIN nuevo …</translation>
    </message>
    <message>
        <source>set a PIN …</source>
        <translation>poner un PIN …</translation>
    </message>
    <message>
        <source>another role …</source>
        <translation>otra función …</translation>
    </message>
    <message>
        <source>is back …</source>
        <translation>ha vuelto …</translation>
    </message>
    <message>
        <source>works here no more …</source>
        <translation>ya no trabaja aquí …</translation>
    </message>
    <message>
        <source>Initials of the person</source>
        <translation>Iniciales de la persona</translation>
    </message>
    <message>
        <source>Initials of the shift lead</source>
        <translation>Iniciales del encargado</translation>
    </message>
    <message>
        <source>%1 is on the list already.</source>
        <translation>%1 ya está en la lista.</translation>
    </message>
    <message>
        <source>Name of %1</source>
        <translation>Nombre de %1</translation>
    </message>
    <message>
        <source>the first on the list is one</source>
        <translation>el primero de la lista lo es</translation>
    </message>
    <message>
        <source>%1: which role?</source>
        <translation>%1: ¿qué función?</translation>
    </message>
    <message>
        <source>%1 works here no more.</source>
        <translation>%1 ya no trabaja aquí.</translation>
    </message>
    <message>
        <source>%1 is listed as %2.</source>
        <comment>name, role</comment>
        <translation>%1 figura como %2.</translation>
    </message>
    <message>
        <source>I know the old one …</source>
        <translation>sé el anterior …</translation>
    </message>
    <message>
        <source>forgotten …</source>
        <translation>olvidado …</translation>
    </message>
    <message>
        <source>a shift lead signs</source>
        <translation>firma un encargado</translation>
    </message>
    <message>
        <source>A new PIN for %1</source>
        <translation>Un PIN nuevo para %1</translation>
    </message>
    <message>
        <source>The old PIN.</source>
        <translation>El PIN anterior.</translation>
    </message>
    <message>
        <source>%1 sets a new PIN.</source>
        <translation>%1 pone un PIN nuevo.</translation>
    </message>
    <message>
        <source>New PIN of %1</source>
        <translation>PIN nuevo de %1</translation>
    </message>
    <message>
        <source>4 to 8 digits, not all the same and not in a row. Nobody else may see it.</source>
        <translation>De 4 a 8 cifras, ni todas iguales ni seguidas. Que nadie más lo vea.</translation>
    </message>
    <message>
        <source>New PIN of %1, once more</source>
        <translation>PIN nuevo de %1, otra vez</translation>
    </message>
    <message>
        <source>The same digits again, so that no slip of the finger locks you out.</source>
        <translation>Las mismas cifras otra vez, para que un desliz del dedo no le deje fuera.</translation>
    </message>
    <message>
        <source>The two were not the same. Type a new PIN again.</source>
        <translation>No eran iguales. Escriba otra vez un PIN nuevo.</translation>
    </message>
    <message>
        <source>The PIN could not be written beside the record. The one before still holds; see whether the disk is full.</source>
        <translation>No se pudo guardar el PIN junto al registro. Sigue valiendo el anterior; mire si el disco está lleno.</translation>
    </message>
    <message>
        <source>%1 has a new PIN.</source>
        <translation>%1 tiene un PIN nuevo.</translation>
    </message>
    <message>
        <source>works here no more</source>
        <translation>ya no trabaja aquí</translation>
    </message>
    <message>
        <source>%1, no PIN</source>
        <comment>role</comment>
        <translation>%1, sin PIN</translation>
    </message>
    <message>
        <source>%1, has a PIN</source>
        <comment>role</comment>
        <translation>%1, con PIN</translation>
    </message>
    <message>
        <source>%1, PIN lost: set a new one</source>
        <comment>role</comment>
        <translation>%1, PIN perdido: ponga otro</translation>
    </message>
    <message>
        <source>set-up</source>
        <translation>preparación</translation>
    </message>
    <message>
        <source>add a person …</source>
        <translation>añadir persona …</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more people</comment>
        <translation>más …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>NOBODY IS LISTED</source>
        <translation>NO HAY NADIE EN LA LISTA</translation>
    </message>
    <message>
        <source>NOBODY CAN SIGN</source>
        <translation>NADIE PUEDE FIRMAR</translation>
    </message>
    <message>
        <source>A shift lead has to set a PIN: tap the name.</source>
        <translation>Un encargado tiene que poner un PIN: toque el nombre.</translation>
    </message>
    <message>
        <source>IN ORDER</source>
        <translation>EN ORDEN</translation>
    </message>
    <message>
        <source>A name is enough at the bench; a PIN is a signature.</source>
        <translation>En el puesto basta el nombre; el PIN es una firma.</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>mesa</translation>
    </message>
    <message>
        <source>add the shift lead …</source>
        <translation>añadir al encargado …</translation>
    </message>
    <message>
        <source>Begin with the shift lead: without one everybody may do everything and nobody can sign.</source>
        <translation>Empiece por el encargado: sin él, todos pueden todo y nadie puede firmar.</translation>
    </message>
</context>
<context>
    <name>bathside::ui::PicturePane</name>
    <message>
        <source>back</source>
        <translation>atrás</translation>
    </message>
</context>
<context>
    <name>bathside::ui::PlanPage</name>
    <message>
        <source>The plan&apos;s sheet is saved</source>
        <translation>La hoja del plan está guardada</translation>
    </message>
    <message>
        <source>file</source>
        <translation>archivo</translation>
    </message>
    <message>
        <source>The plan&apos;s sheet is not saved</source>
        <translation>La hoja del plan no se ha guardado</translation>
    </message>
    <message>
        <source>why</source>
        <translation>por qué</translation>
    </message>
    <message>
        <source>NO SHIFT</source>
        <translation>SIN TURNO</translation>
    </message>
    <message>
        <source>Open the shift at the bench, then plan its lines.</source>
        <translation>Abra el turno en la mesa y después planee sus líneas.</translation>
    </message>
    <message>
        <source>NOTHING PLANNED</source>
        <translation>NADA PLANEADO</translation>
    </message>
    <message>
        <source>Say birds, birds an hour and start of each line.</source>
        <translation>Diga aves, aves por hora e inicio de cada línea.</translation>
    </message>
    <message>
        <source>IN ORDER</source>
        <translation>EN ORDEN</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation>MIRE</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>mesa</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more of the plan</comment>
        <translation>más …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>lines …</source>
        <translation>líneas …</translation>
    </message>
    <message>
        <source>list</source>
        <translation>lista</translation>
    </message>
    <message>
        <source>words</source>
        <comment>the plan told in words</comment>
        <translation>palabras</translation>
    </message>
    <message>
        <source>print</source>
        <translation>imprimir</translation>
    </message>
    <message>
        <source>The plan&apos;s sheet is on its way</source>
        <translation>La hoja del plan va en camino</translation>
    </message>
    <message>
        <source>The plan&apos;s sheet is printed</source>
        <translation>La hoja del plan está impresa</translation>
    </message>
    <message>
        <source>printer</source>
        <translation>impresora</translation>
    </message>
</context>
<context>
    <name>bathside::ui::ReckoningView</name>
    <message>
        <source>expected</source>
        <translation>esperado</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>contado</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>diferencia</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation>tolerancia</translation>
    </message>
</context>
<context>
    <name>bathside::ui::RecordPage</name>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) earlier</source>
        <translation>
            <numerusform>%n día antes</numerusform>
            <numerusform>%n días antes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) later</source>
        <translation>
            <numerusform>%n día después</numerusform>
            <numerusform>%n días después</numerusform>
        </translation>
    </message>
    <message>
        <source>one person …</source>
        <translation>una persona …</translation>
    </message>
    <message>
        <source>one bag …</source>
        <translation>una bolsa …</translation>
    </message>
    <message>
        <source>one lot …</source>
        <translation>un lote …</translation>
    </message>
    <message>
        <source>What shall be shown?</source>
        <translation>¿Qué se muestra?</translation>
    </message>
    <message>
        <source>more …</source>
        <translation>más …</translation>
    </message>
    <message>
        <source>Which one?</source>
        <translation>¿Cuál?</translation>
    </message>
    <message>
        <source>Export %1 to where?</source>
        <translation>¿Adónde se exporta %1?</translation>
    </message>
    <message>
        <source>Not copied: a pull is open. Copy the record between pulls.</source>
        <translation>No copiado: hay una tanda abierta. Copie el registro entre tandas.</translation>
    </message>
    <message>
        <source>Copy the whole record to where?</source>
        <translation>¿Adónde se copia todo el registro?</translation>
    </message>
    <message>
        <source>(no stick was found)</source>
        <translation>(no se encontró ninguna memoria)</translation>
    </message>
    <message>
        <source>entry %1</source>
        <translation>entrada %1</translation>
    </message>
    <message>
        <source>Which entry?</source>
        <translation>¿Qué entrada?</translation>
    </message>
    <message>
        <source>up</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>a page</source>
        <translation>una página</translation>
    </message>
    <message>
        <source>down</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>one up</source>
        <translation>una arriba</translation>
    </message>
    <message>
        <source>one down</source>
        <translation>una abajo</translation>
    </message>
    <message>
        <source>exact content</source>
        <translation>contenido exacto</translation>
    </message>
    <message>
        <source>close</source>
        <translation>cerrar</translation>
    </message>
    <message>
        <source>working …</source>
        <translation>espere …</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>mesa</translation>
    </message>
    <message>
        <source>day before</source>
        <translation>día anterior</translation>
    </message>
    <message>
        <source>day after</source>
        <translation>día siguiente</translation>
    </message>
    <message>
        <source>show …</source>
        <translation>mostrar …</translation>
    </message>
    <message>
        <source>verify</source>
        <translation>verificar</translation>
    </message>
    <message>
        <source>export</source>
        <translation>exportar</translation>
    </message>
    <message>
        <source>copy</source>
        <translation>copiar</translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%n entrada</numerusform>
            <numerusform>%n entradas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more waiting to be recorded</source>
        <translation>
            <numerusform>%n más espera a ser registrada</numerusform>
            <numerusform>%n más esperan a ser registradas</numerusform>
        </translation>
    </message>
    <message>
        <source>Reading …</source>
        <translation>Leyendo …</translation>
    </message>
    <message>
        <source>There is nothing of this on this day.</source>
        <translation>No hay nada de esto en este día.</translation>
    </message>
    <message>
        <source>linked entries</source>
        <translation>entradas ligadas</translation>
    </message>
    <message>
        <source>shift</source>
        <translation>turno</translation>
    </message>
    <message>
        <source>deviations</source>
        <translation>desvíos</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which sheet of how many</comment>
        <translation>%1 de %2</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) together</source>
        <translation>
            <numerusform>%n día junto</numerusform>
            <numerusform>%n días juntos</numerusform>
        </translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>by date …</source>
        <translation>por fecha …</translation>
    </message>
    <message>
        <source>Which days?</source>
        <translation>¿Qué días?</translation>
    </message>
    <message>
        <source>From which day? Year, month, day, e.g. 20270131</source>
        <translation>¿Desde qué día? Año, mes, día, p. ej. 20270131</translation>
    </message>
    <message>
        <source>There is no such day.</source>
        <translation>Ese día no existe.</translation>
    </message>
    <message>
        <source>From %1 to which day? The same one for that day alone</source>
        <translation>Desde %1, ¿hasta qué día? El mismo para ese día solo</translation>
    </message>
    <message>
        <source>There is no such day, or it is before the first one.</source>
        <translation>Ese día no existe o es anterior al primero.</translation>
    </message>
    <message>
        <source>Comment on the note of entry %1</source>
        <translation>Comentario a la nota de la entrada %1</translation>
    </message>
    <message>
        <source>Comment on entry %1: %2</source>
        <comment>number, words</comment>
        <translation>Comentario a la entrada %1: %2</translation>
    </message>
    <message>
        <source>Comment on entry %1: signed by %2 at %3.</source>
        <comment>number, who, time</comment>
        <translation>Comentario a la entrada %1: firmado por %2 a las %3.</translation>
    </message>
    <message>
        <source>Entry %1 cannot be found. Verify the record.</source>
        <translation>No se encuentra la entrada %1. Verifique el registro.</translation>
    </message>
    <message>
        <source>comment …</source>
        <translation>comentar …</translation>
    </message>
    <message>
        <source>shift lead, by PIN</source>
        <translation>encargado, con PIN</translation>
    </message>
    <message>
        <source>days before</source>
        <translation>días antes</translation>
    </message>
    <message>
        <source>days after</source>
        <translation>días después</translation>
    </message>
    <message>
        <source>show all</source>
        <translation>ver todo</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n entries</source>
        <translation>
            <numerusform>%1 de %n entrada</numerusform>
            <numerusform>%1 de %n entradas</numerusform>
        </translation>
    </message>
    <message>
        <source>There is nothing of this on these days.</source>
        <translation>No hay nada de esto en estos días.</translation>
    </message>
    <message>
        <source>Entry %1: %2.</source>
        <comment>number, what it is to this one</comment>
        <translation>Entrada %1: %2.</translation>
    </message>
    <message>
        <source>other days …</source>
        <translation>otros días …</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>print the day sheet</source>
        <translation>imprimir la hoja del día</translation>
    </message>
    <message>
        <source>without a printer: a PDF in this computer&apos;s documents</source>
        <translation>sin impresora: un PDF en los documentos de este equipo</translation>
    </message>
    <message>
        <source>The day sheet: %1</source>
        <translation>La hoja del día: %1</translation>
    </message>
    <message>
        <source>earlier ones: up</source>
        <translation>anteriores: arriba</translation>
    </message>
    <message>
        <source>entries up to %1 are in an earlier file: show their days by date</source>
        <translation>las entradas hasta la %1 están en un archivo anterior: muestre sus días por fecha</translation>
    </message>
    <message>
        <source>later ones: down</source>
        <translation>posteriores: abajo</translation>
    </message>
    <message>
        <source>by typing …</source>
        <translation>escribiendo …</translation>
    </message>
    <message>
        <source>Which person? The initials</source>
        <translation>¿Qué persona? Las iniciales</translation>
    </message>
    <message>
        <source>Which bag? Its name</source>
        <translation>¿Qué bolsa? Su nombre</translation>
    </message>
    <message>
        <source>Which lot? As on its label</source>
        <translation>¿Qué lote? Como en su etiqueta</translation>
    </message>
</context>
<context>
    <name>bathside::ui::ReviewPage</name>
    <message>
        <source>Card version %1. %2</source>
        <comment>number, meaning</comment>
        <translation>Ficha, versión %1. %2</translation>
    </message>
    <message>
        <source>The new card is approved; it holds from the next bag.</source>
        <translation>La ficha nueva está aprobada; vale desde la próxima bolsa.</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>puesto</translation>
    </message>
    <message>
        <source>all cases</source>
        <translation>todos los casos</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more of the list or sheet</comment>
        <translation>más …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>review …</source>
        <translation>revisar …</translation>
    </message>
    <message>
        <source>review again …</source>
        <translation>revisar otra vez …</translation>
    </message>
    <message>
        <source>decide on the bag …</source>
        <translation>decidir sobre la bolsa …</translation>
    </message>
    <message>
        <source>new card …</source>
        <translation>ficha nueva …</translation>
    </message>
    <message>
        <source>to be approved</source>
        <translation>por aprobar</translation>
    </message>
    <message>
        <source>approve …</source>
        <translation>aprobar …</translation>
    </message>
    <message>
        <source>ALL REVIEWED</source>
        <translation>TODO REVISADO</translation>
    </message>
    <message>
        <source>No limit was passed, and no bag is on hold.</source>
        <translation>No se pasó ningún límite y no hay bolsas retenidas.</translation>
    </message>
    <message>
        <source>Nothing waits for a shift lead.</source>
        <translation>Nada espera a un encargado.</translation>
    </message>
    <message>
        <source>NOBODY CAN SIGN</source>
        <translation>NADIE PUEDE FIRMAR</translation>
    </message>
    <message>
        <source>List a shift lead first: set-up, people.</source>
        <translation>Primero anote a un encargado: preparación, personas.</translation>
    </message>
    <message>
        <source>TO REVIEW</source>
        <translation>POR REVISAR</translation>
    </message>
    <message numerus="yes">
        <source>%n case(s) wait for a shift lead, the worst first.</source>
        <translation>
            <numerusform>%n caso espera a un encargado.</numerusform>
            <numerusform>%n casos esperan a un encargado, el peor primero.</numerusform>
        </translation>
    </message>
    <message>
        <source>Passed by</source>
        <translation>Pasado por</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>On duty</source>
        <translation>De turno</translation>
    </message>
    <message>
        <source>On hold because</source>
        <translation>Retenida por</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>Bag</source>
        <translation>Bolsa</translation>
    </message>
    <message>
        <source>%1, taken down</source>
        <translation>%1, retirada</translation>
    </message>
    <message>
        <source>Birds touched</source>
        <translation>Aves afectadas</translation>
    </message>
    <message>
        <source>none: it never hung on a line</source>
        <translation>ninguna: nunca colgó en una línea</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Causa</translation>
    </message>
    <message>
        <source>Action</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Firmado</translation>
    </message>
    <message>
        <source>%1, %2. %3</source>
        <comment>name, time, meaning</comment>
        <translation>%1, %2. %3</translation>
    </message>
    <message>
        <source>%1 becomes %2</source>
        <comment>value, new value</comment>
        <translation>%1 pasa a %2</translation>
    </message>
    <message>
        <source>Card version %1 would take the place of version %2. What changes:</source>
        <translation>La ficha, versión %1, sustituiría a la versión %2. Qué cambia:</translation>
    </message>
    <message>
        <source>charts over time</source>
        <translation>gráficos en el tiempo</translation>
    </message>
    <message>
        <source>a shift before, %1; its bag and steps are on the record page</source>
        <comment>day, entry</comment>
        <translation>un turno anterior, %1; su bolsa y sus pasos están en la página del registro</translation>
    </message>
    <message>
        <source>a shift before, %1; it is being read …</source>
        <comment>day, entry</comment>
        <translation>un turno anterior, %1; se está leyendo …</translation>
    </message>
    <message>
        <source>a shift before, %1</source>
        <comment>day, entry</comment>
        <translation>un turno anterior, %1</translation>
    </message>
</context>
<context>
    <name>bathside::ui::SealWitness</name>
    <message>
        <source>Scanned: day sheet of %1 entries</source>
        <translation>Escaneado: hoja del día de %1 entradas</translation>
    </message>
    <message>
        <source>NOT CHECKED</source>
        <translation>SIN COMPROBAR</translation>
    </message>
    <message>
        <source>The record could not be read. %1</source>
        <translation>No se pudo leer el registro. %1</translation>
    </message>
    <message>
        <source>RECORD AGREES</source>
        <translation>REGISTRO CONFORME</translation>
    </message>
    <message>
        <source>The first %1 entries are still those that were printed.</source>
        <translation>Las primeras %1 entradas siguen siendo las que se imprimieron.</translation>
    </message>
    <message>
        <source>RECORD DIFFERS</source>
        <translation>REGISTRO DISTINTO</translation>
    </message>
    <message>
        <source>The record was changed after printing, or the sheet is of another station or of a rehearsal. Keep both; call the shift lead.</source>
        <translation>El registro se cambió después de imprimir, o la hoja es de otra estación o de un ensayo. Guarde ambos; avise al encargado.</translation>
    </message>
    <message>
        <source>RECORD IS SHORTER</source>
        <translation>REGISTRO MÁS CORTO</translation>
    </message>
    <message>
        <source>The record has fewer entries: some are gone, or the sheet is of another station or of a rehearsal. Keep both; call the shift lead.</source>
        <translation>El registro tiene menos entradas: faltan algunas, o la hoja es de otra estación o de un ensayo. Guarde ambos; avise al encargado.</translation>
    </message>
    <message>
        <source>The sheet is older than the file in use: check it against the file before this one.</source>
        <translation>La hoja es anterior al archivo en uso: compruébela con el archivo anterior.</translation>
    </message>
    <message>
        <source>LATER</source>
        <translation>MÁS TARDE</translation>
    </message>
    <message>
        <source>Scanned: day sheet</source>
        <translation>Escaneado: hoja del día</translation>
    </message>
    <message>
        <source>Ampoules are open. Scan it again when all are in a bag.</source>
        <translation>Hay ampollas abiertas. Escanéela de nuevo cuando todas estén en una bolsa.</translation>
    </message>
</context>
<context>
    <name>bathside::ui::SetUpPage</name>
    <message>
        <source>ok</source>
        <translation>bien</translation>
    </message>
    <message>
        <source>not ok</source>
        <translation>mal</translation>
    </message>
    <message>
        <source>go on without it …</source>
        <translation>seguir sin ella …</translation>
    </message>
    <message>
        <source>with a reason, on record</source>
        <translation>con un motivo, en el registro</translation>
    </message>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>the shift lead decided it</source>
        <translation>lo decidió el encargado</translation>
    </message>
    <message>
        <source>checked in another way</source>
        <translation>comprobado de otro modo</translation>
    </message>
    <message>
        <source>not needed today</source>
        <translation>hoy no hace falta</translation>
    </message>
    <message>
        <source>is being put right</source>
        <translation>se está arreglando</translation>
    </message>
    <message>
        <source>another reason …</source>
        <translation>otro motivo …</translation>
    </message>
    <message>
        <source>Why go on without it?</source>
        <translation>¿Por qué seguir sin ella?</translation>
    </message>
    <message>
        <source>no loudspeaker</source>
        <translation>sin altavoz</translation>
    </message>
    <message>
        <source>I HEARD IT</source>
        <translation>LA OIGO</translation>
    </message>
    <message>
        <source>play it again</source>
        <translation>que suene otra vez</translation>
    </message>
    <message>
        <source>not heard</source>
        <translation>no se oye</translation>
    </message>
    <message>
        <source>another loudspeaker …</source>
        <translation>otro altavoz …</translation>
    </message>
    <message>
        <source>The alarm is playing. Was it heard at the bench?</source>
        <translation>La alarma está sonando. ¿Se oye en la mesa?</translation>
    </message>
    <message>
        <source>Which loudspeaker?</source>
        <translation>¿Qué altavoz?</translation>
    </message>
    <message>
        <source>No other loudspeaker was found.</source>
        <translation>No se encontró otro altavoz.</translation>
    </message>
    <message>
        <source>light screen</source>
        <translation>pantalla clara</translation>
    </message>
    <message>
        <source>dark screen</source>
        <translation>pantalla oscura</translation>
    </message>
    <message>
        <source>true size …</source>
        <translation>tamaño real …</translation>
    </message>
    <message>
        <source>with a bank card</source>
        <translation>con una tarjeta</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>mesa</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>which one?</source>
        <translation>¿cuál?</translation>
    </message>
    <message>
        <source>not ok …</source>
        <translation>mal …</translation>
    </message>
    <message>
        <source>heard</source>
        <translation>oída</translation>
    </message>
    <message>
        <source>bath reading</source>
        <translation>lectura del baño</translation>
    </message>
    <message>
        <source>on duty</source>
        <translation>de turno</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more checks</comment>
        <translation>más …</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation>alarma</translation>
    </message>
    <message>
        <source>who?</source>
        <translation>¿quién?</translation>
    </message>
    <message>
        <source>labels …</source>
        <translation>etiquetas …</translation>
    </message>
    <message>
        <source>printers and paper</source>
        <translation>impresoras y papel</translation>
    </message>
    <message>
        <source>thermometers …</source>
        <translation>termómetros …</translation>
    </message>
    <message>
        <source>people …</source>
        <translation>personas …</translation>
    </message>
    <message>
        <source>roles and PINs</source>
        <translation>funciones y PIN</translation>
    </message>
    <message>
        <source>The station</source>
        <translation>El puesto</translation>
    </message>
    <message>
        <source>station …</source>
        <translation>puesto …</translation>
    </message>
    <message>
        <source>live cells …</source>
        <translation>células vivas …</translation>
    </message>
    <message>
        <source>copy is old</source>
        <translation>copia vieja</translation>
    </message>
    <message>
        <source>copy failed</source>
        <translation>copia fallida</translation>
    </message>
    <message>
        <source>nobody is listed</source>
        <translation>aún no hay nadie</translation>
    </message>
    <message>
        <source>name …</source>
        <translation>nombre …</translation>
    </message>
    <message>
        <source>What is this station called?</source>
        <translation>¿Cómo se llama este puesto?</translation>
    </message>
    <message>
        <source>not named yet</source>
        <translation>aún sin nombre</translation>
    </message>
</context>
<context>
    <name>bathside::ui::StartPage</name>
    <message>
        <source>Bathside</source>
        <translation>Bathside</translation>
    </message>
    <message>
        <source>Out of the cryogen, into the bath, into the diluent, into the bag: Bathside takes the times, watches the limits and keeps the record. The label, the veterinarian in charge and the site&apos;s rules come first.</source>
        <translation>Fuera del criógeno, al baño, al diluyente, a la bolsa: Bathside toma los tiempos, vigila los límites y lleva el registro. Mandan la etiqueta, el veterinario responsable y las normas del lugar.</translation>
    </message>
    <message>
        <source>Rehearse the demo day</source>
        <translation>Ensayar el día de muestra</translation>
    </message>
    <message>
        <source>Nothing counts. Try every button.</source>
        <translation>Nada cuenta. Pruebe todos los botones.</translation>
    </message>
    <message>
        <source>Start the real day</source>
        <translation>Empezar el día real</translation>
    </message>
    <message>
        <source>Everything is recorded.</source>
        <translation>Todo queda registrado.</translation>
    </message>
    <message>
        <source>light screen</source>
        <translation>pantalla clara</translation>
    </message>
    <message>
        <source>dark screen</source>
        <translation>pantalla oscura</translation>
    </message>
</context>
<context>
    <name>bathside::ui::StatusBar</name>
    <message>
        <source>no bath reading</source>
        <translation>baño sin lectura</translation>
    </message>
    <message>
        <source>bath not measured</source>
        <translation>baño sin medir</translation>
    </message>
    <message>
        <source>%1 · %2 ago</source>
        <extracomment>Under the bath&apos;s temperature; %1 is the verdict (&quot;inside&quot;), %2 the reading&apos;s age (&quot;4 min&quot;).</extracomment>
        <translation>%1 · hace %2</translation>
    </message>
    <message>
        <source>too old: %1 ago</source>
        <translation>vieja: hace %1</translation>
    </message>
    <message numerus="yes">
        <source>%n waiting</source>
        <translation>
            <numerusform>%n en espera</numerusform>
            <numerusform>%n en espera</numerusform>
        </translation>
    </message>
    <message>
        <source>NO SOUND</source>
        <translation>SIN SONIDO</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>sonido</translation>
    </message>
    <message>
        <source>proven</source>
        <translation>probado</translation>
    </message>
    <message>
        <source>unproven</source>
        <translation>sin probar</translation>
    </message>
</context>
<context>
    <name>bathside::ui::StoresPage</name>
    <message>
        <source>this computer</source>
        <translation>este ordenador</translation>
    </message>
    <message>
        <source>No CSV file was found on a stick or in the documents.</source>
        <translation>No se encontró ningún archivo CSV en una memoria ni en los documentos.</translation>
    </message>
    <message>
        <source>Which delivery?</source>
        <translation>¿Qué entrega?</translation>
    </message>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>That file cannot be read, or is larger than 1 MiB.</source>
        <translation>Ese archivo no se puede leer o pasa de 1 MiB.</translation>
    </message>
    <message>
        <source>Mean dose per bird: %1 µL.</source>
        <translation>Dosis media por ave: %1 µL.</translation>
    </message>
    <message>
        <source>The mean dose is known once every bag is down.</source>
        <translation>La dosis media se sabe cuando todas las bolsas están retiradas.</translation>
    </message>
    <message>
        <source>ADDS UP</source>
        <translation>CUADRA</translation>
    </message>
    <message>
        <source>NOT YET</source>
        <translation>TODAVÍA NO</translation>
    </message>
    <message>
        <source>NO STORES KEPT</source>
        <translation>SIN EXISTENCIAS</translation>
    </message>
    <message>
        <source>Receive what is there, and lots, balances and places are kept.</source>
        <translation>Reciba lo que hay y se llevarán lotes, saldos y lugares.</translation>
    </message>
    <message>
        <source>IN ORDER</source>
        <translation>EN ORDEN</translation>
    </message>
    <message>
        <source>Nothing is short, apart, expired or near its expiry.</source>
        <translation>No falta nada, y nada está apartado, caducado o a punto de caducar.</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation>ATENCIÓN</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>mesa</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more lots</comment>
        <translation>más …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>receive …</source>
        <translation>recibir …</translation>
    </message>
    <message>
        <source>from a file …</source>
        <translation>de un archivo …</translation>
    </message>
    <message numerus="yes">
        <source>take %n line(s)</source>
        <translation>
            <numerusform>tomar %n línea</numerusform>
            <numerusform>tomar %n líneas</numerusform>
        </translation>
    </message>
    <message>
        <source>warnings</source>
        <translation>avisos</translation>
    </message>
    <message>
        <source>reckoning</source>
        <translation>cuentas</translation>
    </message>
    <message>
        <source>Which of these?</source>
        <translation>¿Cuál de estos?</translation>
    </message>
</context>
<context>
    <name>bathside::ui::ThermometersPage</name>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>No thermometer is described. Readings by hand are taken, undecided at best.</source>
        <translation>No hay termómetro descrito. Se toman lecturas a mano, indecisas como mucho.</translation>
    </message>
    <message>
        <source>A thermometer is not calibrated, or overdue: do not trust it alone.</source>
        <translation>Un termómetro está sin calibrar o vencido: no se fíe solo de él.</translation>
    </message>
    <message>
        <source>Every thermometer in use has a calibration that holds.</source>
        <translation>Todo termómetro en uso tiene una calibración vigente.</translation>
    </message>
    <message>
        <source>back</source>
        <translation>volver</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more thermometers</comment>
        <translation>más …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>add …</source>
        <translation>añadir …</translation>
    </message>
    <message>
        <source>change …</source>
        <translation>cambiar …</translation>
    </message>
    <message>
        <source>certificate …</source>
        <translation>certificado …</translation>
    </message>
    <message>
        <source>not saved</source>
        <translation>sin guardar</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>previsión</translation>
    </message>
    <message>
        <source>all of it</source>
        <comment>the whole of a chart</comment>
        <translation>todo</translation>
    </message>
    <message>
        <source>save</source>
        <comment>a picture of the chart</comment>
        <translation>guardar</translation>
    </message>
    <message>
        <source>The time to slush is being reckoned …</source>
        <translation>Se calcula el tiempo hasta hielo a medio fundir …</translation>
    </message>
    <message>
        <source>More than one thermometer is read. Say at “change …” which one is in the bath: until then the last one that spoke counts.</source>
        <translation>Se lee más de un termómetro. Diga en «cambiar …» cuál está en el baño: hasta entonces cuenta el último que habló.</translation>
    </message>
    <message>
        <source>Reckoning: the time to slush, and what the pulls say of the bath …</source>
        <translation>Calculando: el tiempo hasta hielo a medio fundir y lo que las tandas dicen del baño …</translation>
    </message>
    <message>
        <source>These figures are the card&apos;s: no pull shows yet how good they are.</source>
        <translation>Estas cifras son de la ficha: ninguna tanda muestra aún lo buenas que son.</translation>
    </message>
    <message>
        <source>in the bath</source>
        <comment>a thermometer</comment>
        <translation>en el baño</translation>
    </message>
</context>
<context>
    <name>bathside::ui::TimelineView</name>
    <message>
        <source>empty %1</source>
        <comment>bag that hangs: time</comment>
        <translation>vacía %1</translation>
    </message>
    <message>
        <source>mixed</source>
        <comment>a bag</comment>
        <translation>mezclada</translation>
    </message>
    <message>
        <source>%1 birds</source>
        <translation>%1 aves</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>mesa</translation>
    </message>
    <message>
        <source>%1 per h</source>
        <comment>birds an hour</comment>
        <translation>%1 por h</translation>
    </message>
    <message>
        <source>cannot be done: see the words</source>
        <translation>no se puede hacer: vea las palabras</translation>
    </message>
    <message>
        <source>Under each bar its bag&apos;s life: solid until the last bird, dotted to its limit. Hatched: break.</source>
        <translation>Debajo, la vida de la bolsa: llena hasta la última ave, punteada hasta el límite. Rayado: pausa.</translation>
    </message>
    <message>
        <source>only %1</source>
        <comment>margin of a bag: minutes</comment>
        <translation>solo %1</translation>
    </message>
</context>
<context>
    <name>bathside::ui::TrendsPage</name>
    <message>
        <source>back</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>What shall be charted?</source>
        <translation>¿Qué se grafica?</translation>
    </message>
    <message>
        <source>none in these days</source>
        <translation>ninguno en estos días</translation>
    </message>
    <message>
        <source>of all</source>
        <translation>de todo</translation>
    </message>
    <message>
        <source>one person …</source>
        <translation>una persona …</translation>
    </message>
    <message>
        <source>one lot …</source>
        <translation>un lote …</translation>
    </message>
    <message>
        <source>one bench …</source>
        <translation>un puesto …</translation>
    </message>
    <message>
        <source>show names</source>
        <translation>mostrar nombres</translation>
    </message>
    <message>
        <source>hide names</source>
        <translation>ocultar nombres</translation>
    </message>
    <message>
        <source>on this page</source>
        <translation>en esta página</translation>
    </message>
    <message>
        <source>Of whom and what?</source>
        <translation>¿De quién y de qué?</translation>
    </message>
    <message>
        <source>Which person?</source>
        <translation>¿Qué persona?</translation>
    </message>
    <message>
        <source>Which lot?</source>
        <translation>¿Qué lote?</translation>
    </message>
    <message>
        <source>Which bench?</source>
        <translation>¿Qué puesto?</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>names</comment>
        <translation>más …</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message numerus="yes">
        <source>the last %n day(s)</source>
        <translation>
            <numerusform>el último día</numerusform>
            <numerusform>los últimos %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>as many days earlier</source>
        <translation>otros tantos días antes</translation>
    </message>
    <message>
        <source>as many days later</source>
        <translation>otros tantos días después</translation>
    </message>
    <message>
        <source>up to today now</source>
        <translation>ya llega a hoy</translation>
    </message>
    <message>
        <source>from … to …</source>
        <comment>days, typed</comment>
        <translation>de … a …</translation>
    </message>
    <message>
        <source>Which days?</source>
        <translation>¿Qué días?</translation>
    </message>
    <message>
        <source>The first day? Year, month, day, e.g. 20270131</source>
        <translation>¿El primer día? Año, mes, día, p. ej. 20270131</translation>
    </message>
    <message>
        <source>The last day? Year, month, day, e.g. 20270131</source>
        <translation>¿El último día? Año, mes, día, p. ej. 20270131</translation>
    </message>
    <message>
        <source>There is no such day. Type it again.</source>
        <translation>Ese día no existe. Escríbalo otra vez.</translation>
    </message>
    <message numerus="yes">
        <source>on: %n point(s)</source>
        <comment>a rule</comment>
        <translation>
            <numerusform>activa: %n punto</numerusform>
            <numerusform>activa: %n puntos</numerusform>
        </translation>
    </message>
    <message>
        <source>off</source>
        <comment>a rule</comment>
        <translation>apagado</translation>
    </message>
    <message>
        <source>Which rules shall be looked for?</source>
        <translation>¿Qué reglas se buscan?</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s)</source>
        <translation>
            <numerusform>%n punto</numerusform>
            <numerusform>%n puntos</numerusform>
        </translation>
    </message>
    <message>
        <source>at least %1 points</source>
        <translation>al menos %1 puntos</translation>
    </message>
    <message>
        <source>all points shown</source>
        <translation>todos los puntos</translation>
    </message>
    <message>
        <source>up to the point picked</source>
        <translation>hasta el punto elegido</translation>
    </message>
    <message>
        <source>from the point picked on</source>
        <translation>desde el punto elegido</translation>
    </message>
    <message>
        <source>Which points shall the limits of this chart come from, from now on? A shift lead signs.</source>
        <translation>¿De qué puntos salen desde ahora los límites? Firma un encargado.</translation>
    </message>
    <message>
        <source>Approved: baseline of &quot;%1&quot;, events %2 to %3.</source>
        <comment>chart, events</comment>
        <translation>Aprobado: referencia de &quot;%1&quot;, eventos %2 a %3.</translation>
    </message>
    <message>
        <source>The baseline is chosen and signed by %1.</source>
        <translation>La referencia está elegida y firmada por %1.</translation>
    </message>
    <message>
        <source>Tap a point of the chart first, or step to one.</source>
        <translation>Toque antes un punto del gráfico o avance hasta uno.</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>review</source>
        <translation>revisión</translation>
    </message>
    <message>
        <source>what …</source>
        <comment>is charted</comment>
        <translation>qué …</translation>
    </message>
    <message>
        <source>whose …</source>
        <comment>points</comment>
        <translation>quién …</translation>
    </message>
    <message>
        <source>days …</source>
        <translation>días …</translation>
    </message>
    <message>
        <source>rules …</source>
        <translation>reglas …</translation>
    </message>
    <message>
        <source>limits …</source>
        <translation>límites …</translation>
    </message>
    <message>
        <source>save</source>
        <comment>a picture of the chart</comment>
        <translation>guardar</translation>
    </message>
    <message>
        <source>its pull …</source>
        <translation>su tanda …</translation>
    </message>
    <message>
        <source>its check …</source>
        <translation>su control …</translation>
    </message>
    <message>
        <source>point before</source>
        <translation>punto anterior</translation>
    </message>
    <message>
        <source>point after</source>
        <translation>punto siguiente</translation>
    </message>
    <message>
        <source>charts</source>
        <translation>gráficos</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>of the sheet</comment>
        <translation>más …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>READING</source>
        <translation>LEYENDO</translation>
    </message>
    <message>
        <source>The record is read …</source>
        <translation>Se lee el registro …</translation>
    </message>
    <message>
        <source>from no baseline any more</source>
        <translation>ya de ninguna referencia</translation>
    </message>
    <message>
        <source>the points shown give the limits</source>
        <translation>los límites salen de lo mostrado</translation>
    </message>
    <message>
        <source>Approved: &quot;%1&quot; has no baseline any more.</source>
        <comment>chart</comment>
        <translation>Aprobado: &quot;%1&quot; ya no tiene referencia.</translation>
    </message>
    <message>
        <source>The baseline is withdrawn, signed by %1.</source>
        <translation>Referencia retirada, con la firma de %1.</translation>
    </message>
</context>
</TS>
