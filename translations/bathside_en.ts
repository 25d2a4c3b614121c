<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Alarm</name>
    <message>
        <source>Not recorded: go on, call the shift lead, leave the station on</source>
        <translation>Not recorded: go on, call the shift lead, leave the station on</translation>
    </message>
    <message>
        <source>The clock was changed: compare it with another</source>
        <translation>The clock was changed: compare it with another</translation>
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
            <numerusform>%n bird over</numerusform>
            <numerusform>%n birds over</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bird(s) left</source>
        <comment>until the limit</comment>
        <translation>
            <numerusform>%n bird left</numerusform>
            <numerusform>%n birds left</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>Nothing is due.</translation>
    </message>
    <message>
        <source>No sound: watch the screen</source>
        <translation>No sound: watch the screen</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel %1: its vacuum is failing: move the ampoules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel %1 is below its minimum: fill it now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel %1 should be down to its minimum by now: read its level, fill it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometer gives no reading: measure by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometer gives no reading (%1): measure by hand</source>
        <comment>why: &quot;its check failed&quot;</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AskCopiesText</name>
    <message>
        <source>back</source>
        <translation type="unfinished">back</translation>
    </message>
    <message>
        <source>every hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>once a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>every %n hours</source>
        <translation>
            <numerusform>every hour</numerusform>
            <numerusform>every %n hours</numerusform>
        </translation>
    </message>
    <message>
        <source>this computer</source>
        <translation type="unfinished">this computer</translation>
    </message>
    <message>
        <source>copies …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copy now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where to …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>helps only while this computer is whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not there now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where shall copies go?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where shall copies go? No stick was found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the end of a shift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only by a tap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When shall the record be copied?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not there now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and at the end of a shift</source>
        <comment>every 4 hours</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AskPrintText</name>
    <message>
        <source>back</source>
        <translation type="unfinished">back</translation>
    </message>
    <message>
        <source>No printer is installed: PDFs are saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels and sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>printer for labels …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paper for labels …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>test label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>printer for sheets …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paper for sheets …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save PDFs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not there now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more printers</comment>
        <translation type="unfinished">more …</translation>
    </message>
    <message>
        <source>Which printer for labels?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which printer for sheets?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which paper for labels?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which paper for sheets?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: not there now</source>
        <extracomment>%1 is a printer.</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BagLabel</name>
    <message numerus="yes">
        <source>%Ln doses</source>
        <comment>on a bag&apos;s label</comment>
        <translation>
            <numerusform>%Ln dose</numerusform>
            <numerusform>%Ln doses</numerusform>
        </translation>
    </message>
    <message>
        <source>lot %1</source>
        <comment>on a bag&apos;s label</comment>
        <translation>lot %1</translation>
    </message>
    <message>
        <source>mixed %1 by %2</source>
        <comment>when and by whom; on a bag&apos;s label</comment>
        <translation>mixed %1 by %2</translation>
    </message>
    <message>
        <source>Bag %1</source>
        <comment>heading of its label</comment>
        <translation>Bag %1</translation>
    </message>
    <message>
        <source>use by</source>
        <comment>before a time, on a bag&apos;s label</comment>
        <translation>use by</translation>
    </message>
    <message>
        <source>REHEARSAL: not for birds</source>
        <comment>on a bag&apos;s label</comment>
        <translation>REHEARSAL: not for birds</translation>
    </message>
</context>
<context>
    <name>BagPlaceText</name>
    <message>
        <source>not hung</source>
        <translation>not hung</translation>
    </message>
    <message>
        <source>swirl now</source>
        <translation>swirl now</translation>
    </message>
    <message>
        <source>ON HOLD: %1</source>
        <extracomment>On a bag&apos;s tile; %1 is why (&quot;leak&quot;).</extracomment>
        <translation>ON HOLD: %1</translation>
    </message>
    <message>
        <source>swirl: %1</source>
        <extracomment>On a narrow tile: when the bag has to be swirled next; %1 is &quot;8 min&quot; or &quot;45 s&quot;.</extracomment>
        <translation>swirl: %1</translation>
    </message>
    <message>
        <source>making up</source>
        <translation>making up</translation>
    </message>
</context>
<context>
    <name>BagText</name>
    <message>
        <source>On hold: why?</source>
        <translation>On hold: why?</translation>
    </message>
    <message>
        <source>How much is left in the bag?</source>
        <translation>How much is left in the bag?</translation>
    </message>
    <message>
        <source>volume left …</source>
        <translation>volume left …</translation>
    </message>
    <message>
        <source>Taken down: why?</source>
        <translation>Taken down: why?</translation>
    </message>
    <message>
        <source>checked and good</source>
        <translation>checked and good</translation>
    </message>
    <message>
        <source>held by mistake</source>
        <translation>held by mistake</translation>
    </message>
    <message>
        <source>the lead accepts it</source>
        <translation>the lead accepts it</translation>
    </message>
    <message>
        <source>Released: why?</source>
        <translation>Released: why?</translation>
    </message>
    <message>
        <source>Which shift lead releases it? Initials</source>
        <translation>Which shift lead releases it? Initials</translation>
    </message>
    <message>
        <source>SWIRLED</source>
        <translation>SWIRLED</translation>
    </message>
    <message>
        <source>INSPECTED: GOOD</source>
        <translation>INSPECTED: GOOD</translation>
    </message>
    <message>
        <source>INSPECTED: NOT GOOD</source>
        <translation>INSPECTED: NOT GOOD</translation>
    </message>
    <message>
        <source>DILUENT DRAWN</source>
        <translation>DILUENT DRAWN</translation>
    </message>
    <message>
        <source>MIXED</source>
        <translation>MIXED</translation>
    </message>
    <message>
        <source>moved to …</source>
        <translation>moved to …</translation>
    </message>
    <message>
        <source>hung on …</source>
        <translation>hung on …</translation>
    </message>
    <message>
        <source>put on hold …</source>
        <translation>put on hold …</translation>
    </message>
    <message>
        <source>released …</source>
        <translation>released …</translation>
    </message>
    <message>
        <source>taken down …</source>
        <translation>taken down …</translation>
    </message>
    <message>
        <source>%1: hung on which line?</source>
        <translation>%1: hung on which line?</translation>
    </message>
    <message>
        <source>Which bag?</source>
        <translation>Which bag?</translation>
    </message>
    <message>
        <source>print label</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BalanceText</name>
    <message>
        <source>three lines alike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still: “%1”</source>
        <comment>a text in a balance&apos;s line</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moving: “%1”</source>
        <comment>a text in a balance&apos;s line</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on its key only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no balance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>serial port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No serial port was found: is the balance plugged in?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which port is the balance on?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How fast does it send? Baud, as in its handbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which unit has a number without one?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text in the line of a weight that is still</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text in the line of a weight that is moving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it sends all the time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a text when still …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a text when moving …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tare before each shot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How does it tell that a weight is still?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance that weighs the shots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance sent “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance has sent nothing yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a port first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>port …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>speed …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 baud</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line&apos;s own, else %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still …</source>
        <comment>how a balance tells it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <comment>a balance</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance sent no weight. Check its speed and unit, or type the weight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance weighs in another unit. Set it to g or mg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance is overloaded, or its pan is off. Clear it and tare.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BigStepText</name>
    <message numerus="yes">
        <source>%1, one every %n second(s)</source>
        <extracomment>Under the big button before a pull; %1 is &quot;3 ampoules&quot;.</extracomment>
        <translation>
            <numerusform>%1, one every %n second</numerusform>
            <numerusform>%1, one every %n seconds</numerusform>
        </translation>
    </message>
    <message>
        <source>which ampoules?</source>
        <translation>which ampoules?</translation>
    </message>
    <message>
        <source>which lot?</source>
        <translation>which lot?</translation>
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
        <translation>NOT GOOD</translation>
    </message>
    <message numerus="yes">
        <source>%1: too early by %n minute(s)</source>
        <extracomment>%1 is &quot;400 mL, line A&quot;: begun now, it would be too old before it is empty.</extracomment>
        <translation>
            <numerusform>%1: too early by %n minute</numerusform>
            <numerusform>%1: too early by %n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: late by %n minute(s)</source>
        <translation>
            <numerusform>%1: late by %n minute</numerusform>
            <numerusform>%1: late by %n minutes</numerusform>
        </translation>
    </message>
    <message>
        <source>PRINT LABEL</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BirdsText</name>
    <message>
        <source>on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <comment>a line, a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looked at …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birds</source>
        <translation type="unfinished">birds</translation>
    </message>
    <message>
        <source>target …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at birds first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many birds did you look at?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many of the %1 have it well?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many in a hundred are to have it well?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: limit of the card</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CalibrationText</name>
    <message>
        <source>There is no such day. Year, month, day, as 20260305.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number of the certificate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point: what the thermometer showed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a point with that value already. Remove it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point: what the reference was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Point: its U at k = 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>REMOVE THE POINT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The certificate&apos;s number is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day of the calibration is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day on which it is due again is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It cannot be due before it was calibrated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At least one point is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>certificate …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibrated on …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due on …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point %1 …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add a point …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forget what was typed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CALIBRATION SAVED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrated on: year, month, day, as 20260305</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due on: year, month, day, as 20260305</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: its calibration. Nothing counts before it is saved.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CellsText</name>
    <message>
        <source>Live cells of a dose over the bag&apos;s life, indicative</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <comment>unit of an axis: minutes of a bag&apos;s life</comment>
        <translation type="unfinished">min</translation>
    </message>
    <message>
        <source>below the minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished">now</translation>
    </message>
    <message>
        <source>%1, %2: %3 to %4 PFU a dose now, %5 to %6 at the bag&apos;s limit; minimum %7. Indicative: a calculation that releases nothing. The label decides.</source>
        <comment>bag, component, live cells</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>live cells …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>indicative: %1 to %2</source>
        <comment>live cells in a dose</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CheckText</name>
    <message>
        <source>%1 birds</source>
        <translation type="unfinished">%1 birds</translation>
    </message>
    <message>
        <source>line …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another …</source>
        <comment>line</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which line?</source>
        <translation type="unfinished">Which line?</translation>
    </message>
    <message>
        <source>%1: birds done so far, in all</source>
        <comment>a line</comment>
        <translation type="unfinished">%1: birds done so far, in all</translation>
    </message>
    <message>
        <source>birds</source>
        <translation type="unfinished">birds</translation>
    </message>
    <message>
        <source>count …</source>
        <comment>birds</comment>
        <translation type="unfinished">count …</translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">back</translation>
    </message>
    <message>
        <source>The dose is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dose is wrong, but not by much: measure more shots to be sure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dose is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dose is right, but only just: measure more shots to be sure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>from one figure to another</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 g/mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <comment>weights</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>mean of %n shot(s)</source>
        <translation>
            <numerusform>mean of %n shot</numerusform>
            <numerusform>mean of %n shots</numerusform>
        </translation>
    </message>
    <message>
        <source>%1; set: %2</source>
        <comment>the mean dose, and what is set</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>systematic error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; limit: ± %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>random error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; limit: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known: the shots were not measured one by one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the mean lies in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limits from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice. The label and the site go first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh ten shots, or collect some in a cylinder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the dose check at %2 failed. Set the injector right and check again before the line goes on.</source>
        <comment>a line, a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birds touched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A deviation names them; it waits for its review.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A check at %1 was good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown: at least %1 of the birds have it well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not decided: look at more birds to show %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missed: fewer than %1 of the birds have it well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than a million birds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <comment>birds, of how many, share</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the share lies in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, with %2 confidence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed to show it</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 with %n missed</source>
        <comment>so many birds</comment>
        <translation>
            <numerusform>%1 with %n missed</numerusform>
            <numerusform>%1 with %n missed</numerusform>
        </translation>
    </message>
    <message>
        <source>with none missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supposes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>that the birds were picked at random</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at birds after their injection, and count those that have it well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needed to show %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 with none missed, with %2 confidence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>target from</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%Ln bird(s) were done since a good check.</source>
        <translation>
            <numerusform>%Ln bird was done since a good check.</numerusform>
            <numerusform>%Ln birds were done since a good check.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>A deviation: %Ln bird(s) were done since a good check.</source>
        <translation>
            <numerusform>A deviation: %Ln bird was done since a good check.</numerusform>
            <numerusform>A deviation: %Ln birds were done since a good check.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln bird(s)</source>
        <comment>to look at</comment>
        <translation>
            <numerusform>%Ln bird</numerusform>
            <numerusform>%Ln birds</numerusform>
        </translation>
    </message>
    <message>
        <source>to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit of the card: %1</source>
        <comment>its source</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ConnectionText</name>
    <message>
        <source>%1 is on that port.</source>
        <comment>a thermometer</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance is on that port.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one-wire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>serial port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another port …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by its path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glass or digital, typed in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The port&apos;s path, or its name in /dev, as ttyS0</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CopyText</name>
    <message>
        <source>There is no copy of the record yet. Make one now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no copy of the record yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last copy was made %1: older than is set. Make one now.</source>
        <comment>3 h ago</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last copy was made %1 and found sound.</source>
        <comment>3 h ago</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not copied: the stick for copies is not in. Put it in, or choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not copied. %1</source>
        <comment>followed by a sentence</comment>
        <translation type="unfinished">Not copied. %1</translation>
    </message>
    <message numerus="yes">
        <source>%n min ago</source>
        <translation>
            <numerusform>%n min ago</numerusform>
            <numerusform>%n min ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n h ago</source>
        <translation>
            <numerusform>%n h ago</numerusform>
            <numerusform>%n h ago</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>%n day ago</numerusform>
            <numerusform>%n days ago</numerusform>
        </translation>
    </message>
    <message>
        <source>There is no room for it. Take another stick, or move older copies elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That place is read-only. Unlock the stick, or choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing there is not permitted. Choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing failed. Is the stick in and whole? Choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record is damaged. Keep every older copy; tell the shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy was written, and the record in it is NOT sound at entry %1. Keep every older copy; tell the shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy was written, and the seal at entry %1 is not this station&apos;s. Keep every older copy; tell the shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy was written, but reading it back failed. Take another stick and copy again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record is being copied and read back …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy is made as soon as the pull is done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copying …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after the pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the last one failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The damaged part before it lies there as %1: another file has its name.</source>
        <comment>a file, or some</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Damage</name>
    <message>
        <source>The record in %1 is damaged, and no second file could be begun. %2 Nothing was changed: call whoever looks after this computer, or restore a copy.</source>
        <comment>a file; a sentence</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record in %1 is damaged after entry %2. It is kept as it is, and the record goes on in %3. Tell the shift lead, then start again.</source>
        <comment>a file; a number; a file</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing of the record in %1 can be read. It is kept as it is, and a record begins anew in %2. Tell the shift lead, who may have a copy restored; then start again.</source>
        <comment>a file; a file</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayPlan</name>
    <message>
        <source>cannot be done: %1</source>
        <comment>a line</comment>
        <translation>cannot be done: %1</translation>
    </message>
    <message>
        <source>the bench</source>
        <translation>the bench</translation>
    </message>
    <message>
        <source>Not everything can be done</source>
        <translation>Not everything can be done</translation>
    </message>
    <message>
        <source>Everything can be done</source>
        <translation>Everything can be done</translation>
    </message>
    <message numerus="yes">
        <source>Everything can be done; %n thing(s) to look at</source>
        <translation>
            <numerusform>Everything can be done; %n thing to look at</numerusform>
            <numerusform>Everything can be done; %n things to look at</numerusform>
        </translation>
    </message>
    <message>
        <source>now</source>
        <translation>now</translation>
    </message>
    <message>
        <source>next pull</source>
        <translation>next pull</translation>
    </message>
    <message>
        <source>look</source>
        <translation>look</translation>
    </message>
</context>
<context>
    <name>DaySheet</name>
    <message>
        <source>! %1 OVER</source>
        <comment>a time that passed its limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not tapped</source>
        <comment>a step whose time is not known</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uncertain</source>
        <comment>a time across a restart</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ON HOLD %1: %2</source>
        <comment>since when, why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2, %3 left</source>
        <comment>when, why, how much was left in the bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not down</source>
        <comment>a bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost: %1</source>
        <translation type="unfinished">lost: %1</translation>
    </message>
    <message>
        <source>in no bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! no reading that counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit</source>
        <comment>beside a line of a chart</comment>
        <translation type="unfinished">limit</translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished">bag</translation>
    </message>
    <message>
        <source>diluent: volume, lot, temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ampoules</source>
        <translation type="unfinished">ampoules</translation>
    </message>
    <message>
        <source>first in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixed</source>
        <translation type="unfinished">mixed</translation>
    </message>
    <message>
        <source>hung on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down</source>
        <translation type="unfinished">down</translation>
    </message>
    <message>
        <source>birds</source>
        <translation type="unfinished">birds</translation>
    </message>
    <message>
        <source>in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit</source>
        <translation type="unfinished">limit</translation>
    </message>
    <message>
        <source>No bag was made up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull/no.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>component</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out</source>
        <translation type="unfinished">out</translation>
    </message>
    <message>
        <source>out to bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath to diluent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ampoule came out of the cryogen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in bath</source>
        <translation type="unfinished">in bath</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>indicated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected ± U (k = 2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There was no pull.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By pull and ampoule. Filled: out to bath. Open: bath to diluent. The thick line is the limit; ! is over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags in use: from the first ampoule in diluent until down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no site named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day sheet: %1</source>
        <comment>a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · station %2 · %3</source>
        <comment>site, station, time zone</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>REHEARSAL: not for birds</source>
        <translation type="unfinished">REHEARSAL: not for birds</translation>
    </message>
    <message>
        <source>Bathside %1 · record %2:%3…</source>
        <comment>version, entries, hash</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, still open</source>
        <comment>when a shift was opened</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>times of a shift</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Site</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head of the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this sheet apart from the station. Scanned there on any page, the code tells whether the record is still the one that was printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The code says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No shift was opened on this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Procedure card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card&apos;s hash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by a shift lead&apos;s signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not by a signature on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water bath at each pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target %1, tolerance %2; a reading is inside only where its uncertainty leaves no doubt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ampoules: times against their limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart of times, as shares of their limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift opened %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned and done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-up checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stores reckoned up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This day is not sealed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, by entry %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Public key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! OPEN</source>
        <comment>a set-up check nobody did</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <comment>a set-up check nobody did</comment>
        <translation type="unfinished">open</translation>
    </message>
    <message>
        <source>! OVERRIDDEN: %1</source>
        <comment>a set-up check, why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <comment>a set-up check</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! NOT GOOD</source>
        <comment>a set-up check</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! NOT REVIEWED</source>
        <comment>a deviation</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, signed</source>
        <comment>who reviewed a deviation</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, bag %2</source>
        <comment>a deviation, the bag it touched</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>temperatures</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned birds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birds done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned rate an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first bag hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last bag down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished">bags</translation>
    </message>
    <message>
        <source>No line ran and none was planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not planned</source>
        <translation type="unfinished">not planned</translation>
    </message>
    <message>
        <source>%1, fewer than planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>result</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at</source>
        <comment>a time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The card asks for no checks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deviation</source>
        <translation type="unfinished">deviation</translation>
    </message>
    <message>
        <source>entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>severity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reviewed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None.</source>
        <comment>no deviations</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected</source>
        <translation type="unfinished">expected</translation>
    </message>
    <message>
        <source>counted</source>
        <translation type="unfinished">counted</translation>
    </message>
    <message>
        <source>difference</source>
        <translation type="unfinished">difference</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation type="unfinished">tolerance</translation>
    </message>
    <message>
        <source>outcome</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to reckon up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None.</source>
        <comment>no notes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>meaning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has signed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2: not calibrated.</source>
        <comment>a thermometer: id, name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2: certificate %3, calibrated %4, due %5.</source>
        <comment>a thermometer: id, name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1: %2, %3: the limit was kept, as a correction has shown.</source>
        <comment>of a deviation: its number, limit, whom</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, on %2</source>
        <comment>who reviewed a deviation, a later day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The procedure card of this shift is not in this file: no limits and no checks are shown. Its hash: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviations of earlier shifts that were open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entry %1</source>
        <comment>what was signed, its numbers</comment>
        <translation type="unfinished">entry %1</translation>
    </message>
    <message>
        <source>card %1</source>
        <comment>what was signed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>baseline of chart %1</source>
        <comment>what was signed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the shift</source>
        <comment>what was signed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The card is not in this file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! NOT DECIDED</source>
        <comment>on a bag on hold</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on hold since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>why</source>
        <translation type="unfinished">why</translation>
    </message>
    <message>
        <source>decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open in this shift</source>
        <comment>a deviation</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2, %3)</source>
        <comment>a comment, who, when</comment>
        <translation type="unfinished"></translation>
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
        <translation>Deviation: %1, %2, by %3.</translation>
    </message>
    <message>
        <source>Judged again: %1, %2, the limit was kept.</source>
        <translation>Judged again: %1, %2, the limit was kept.</translation>
    </message>
    <message>
        <source>Judged again: %1, %2, passed by %3.</source>
        <translation>Judged again: %1, %2, passed by %3.</translation>
    </message>
    <message>
        <source>Alarm, %1: %2.</source>
        <comment>level, what about</comment>
        <translation>Alarm, %1: %2.</translation>
    </message>
    <message>
        <source>Alarm sounded on %1, %2 after it was due: %3.</source>
        <comment>loudspeaker, time, what about</comment>
        <translation>Alarm sounded on %1, %2 after it was due: %3.</translation>
    </message>
    <message>
        <source>Alarm heard: %1.</source>
        <translation>Alarm heard: %1.</translation>
    </message>
    <message>
        <source>Alarm ended: %1.</source>
        <translation>Alarm ended: %1.</translation>
    </message>
    <message>
        <source>Entry %1 was corrected: %2 is %3. Reason: %4.</source>
        <comment>number, which part, new value, reason</comment>
        <translation>Entry %1 was corrected: %2 is %3. Reason: %4.</translation>
    </message>
    <message numerus="yes">
        <source>Taken back: %n entries, %1.</source>
        <comment>number of entries, which</comment>
        <translation>
            <numerusform>Taken back: %n entry, %1.</numerusform>
            <numerusform>Taken back: %n entries, %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Taken back: %n entries, %1. Reason: %2.</source>
        <comment>number of entries, which, reason</comment>
        <translation>
            <numerusform>Taken back: %n entry, %1. Reason: %2.</numerusform>
            <numerusform>Taken back: %n entries, %1. Reason: %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>Asked &quot;%1&quot;, answered &quot;%2&quot;.</source>
        <comment>question&apos;s id, choice</comment>
        <translation>Asked &quot;%1&quot;, answered &quot;%2&quot;.</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Note: %1</translation>
    </message>
    <message>
        <source>A tap was refused: %1 (%2).</source>
        <comment>what was tapped, why</comment>
        <translation>A tap was refused: %1 (%2).</translation>
    </message>
    <message>
        <source>Scanned: %1</source>
        <translation>Scanned: %1</translation>
    </message>
    <message>
        <source>%1 Implied by a later step, not timed.</source>
        <comment>added to a whole sentence</comment>
        <translation>%1 Implied by a later step, not timed.</translation>
    </message>
    <message>
        <source>Bag %1 was started: %2, diluent lot %3.</source>
        <translation>Bag %1 was started: %2, diluent lot %3.</translation>
    </message>
    <message>
        <source>Bag %1 was started: %2, diluent lot %3, at %4.</source>
        <translation>Bag %1 was started: %2, diluent lot %3, at %4.</translation>
    </message>
    <message>
        <source>Bag %1 was inspected and is good.</source>
        <translation>Bag %1 was inspected and is good.</translation>
    </message>
    <message>
        <source>Bag %1 was inspected and is not good.</source>
        <translation>Bag %1 was inspected and is not good.</translation>
    </message>
    <message>
        <source>%1 of diluent were drawn from bag %2.</source>
        <comment>volume, bag</comment>
        <translation>%1 of diluent were drawn from bag %2.</translation>
    </message>
    <message>
        <source>Bag %1 was mixed.</source>
        <translation>Bag %1 was mixed.</translation>
    </message>
    <message>
        <source>Bag %1 was swirled.</source>
        <translation>Bag %1 was swirled.</translation>
    </message>
    <message>
        <source>Bag %1 was hung on line %2.</source>
        <translation>Bag %1 was hung on line %2.</translation>
    </message>
    <message>
        <source>Bag %1 was put on hold: %2.</source>
        <comment>bag, reason</comment>
        <translation>Bag %1 was put on hold: %2.</translation>
    </message>
    <message>
        <source>Bag %1 was put on hold: %2, %3.</source>
        <comment>bag, reason, more words</comment>
        <translation>Bag %1 was put on hold: %2, %3.</translation>
    </message>
    <message>
        <source>Bag %1 was taken down: %2, %3 left.</source>
        <comment>bag, reason, volume</comment>
        <translation>Bag %1 was taken down: %2, %3 left.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 came out of the cryogen: %3, lot %4.</source>
        <comment>ampoule, pull, component, lot</comment>
        <translation>Ampoule %1 of pull %2 came out of the cryogen: %3, lot %4.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 went into the bath.</source>
        <translation>Ampoule %1 of pull %2 went into the bath.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 was opened.</source>
        <translation>Ampoule %1 of pull %2 was opened.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 went into diluent.</source>
        <translation>Ampoule %1 of pull %2 went into diluent.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 was rinsed.</source>
        <translation>Ampoule %1 of pull %2 was rinsed.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 went into bag %3.</source>
        <translation>Ampoule %1 of pull %2 went into bag %3.</translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 was lost: %3.</source>
        <comment>ampoule, pull, reason</comment>
        <translation>Ampoule %1 of pull %2 was lost: %3.</translation>
    </message>
    <message>
        <source>The cane at %1 was out of the cryogen for %2; what stays on it is in quarantine.</source>
        <translation>The cane at %1 was out of the cryogen for %2; what stays on it is in quarantine.</translation>
    </message>
    <message>
        <source>The next pull is planned for %1.</source>
        <translation>The next pull is planned for %1.</translation>
    </message>
    <message>
        <source>The shift opened, local time of %1.</source>
        <translation>The shift opened, local time of %1.</translation>
    </message>
    <message>
        <source>The shift closed: ampoules out %1, in bags %2, lost %3; bags %4.</source>
        <translation>The shift closed: ampoules out %1, in bags %2, lost %3; bags %4.</translation>
    </message>
    <message>
        <source>%1 came on duty.</source>
        <translation>%1 came on duty.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; is done: %2.</source>
        <translation>Check &quot;%1&quot; is done: %2.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; failed: %2.</source>
        <translation>Check &quot;%1&quot; failed: %2.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; is done.</source>
        <translation>Check &quot;%1&quot; is done.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; failed.</source>
        <translation>Check &quot;%1&quot; failed.</translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; was overridden. Reason: %2.</source>
        <translation>Check &quot;%1&quot; was overridden. Reason: %2.</translation>
    </message>
    <message>
        <source>Bath: no reading. %1</source>
        <comment>followed by the sentence that says why</comment>
        <translation>Bath: no reading. %1</translation>
    </message>
    <message>
        <source>Bath: no reading.</source>
        <translation>Bath: no reading.</translation>
    </message>
    <message>
        <source>Bath: %1, %2.</source>
        <comment>temperature, verdict</comment>
        <translation>Bath: %1, %2.</translation>
    </message>
    <message>
        <source>The bath water was changed. Reason: %1.</source>
        <translation>The bath water was changed. Reason: %1.</translation>
    </message>
    <message>
        <source>Line %1: %2 birds in all.</source>
        <translation>Line %1: %2 birds in all.</translation>
    </message>
    <message>
        <source>Line %1: the needle was changed.</source>
        <translation>Line %1: the needle was changed.</translation>
    </message>
    <message>
        <source>Line %1 stopped.</source>
        <translation>Line %1 stopped.</translation>
    </message>
    <message>
        <source>Line %1 is going again.</source>
        <translation>Line %1 is going again.</translation>
    </message>
    <message>
        <source>Line %1: the dose was checked and is right.</source>
        <translation>Line %1: the dose was checked and is right.</translation>
    </message>
    <message>
        <source>Line %1: the dose was checked and is wrong.</source>
        <translation>Line %1: the dose was checked and is wrong.</translation>
    </message>
    <message>
        <source>The station started for a rehearsal, version %1.</source>
        <translation>The station started for a rehearsal, version %1.</translation>
    </message>
    <message>
        <source>The station started, version %1.</source>
        <translation>The station started, version %1.</translation>
    </message>
    <message>
        <source>The station stopped.</source>
        <translation>The station stopped.</translation>
    </message>
    <message>
        <source>The wall clock was put back by %1.</source>
        <translation>The wall clock was put back by %1.</translation>
    </message>
    <message>
        <source>The wall clock was put forward by %1.</source>
        <translation>The wall clock was put forward by %1.</translation>
    </message>
    <message>
        <source>The wall clock is synchronised.</source>
        <translation>The wall clock is synchronised.</translation>
    </message>
    <message>
        <source>The wall clock is not synchronised.</source>
        <translation>The wall clock is not synchronised.</translation>
    </message>
    <message>
        <source>The record failed. %1</source>
        <comment>followed by the sentence that says why</comment>
        <translation>The record failed. %1</translation>
    </message>
    <message numerus="yes">
        <source>The record works again; %n event(s) were brought in.</source>
        <translation>
            <numerusform>The record works again; %n event was brought in.</numerusform>
            <numerusform>The record works again; %n events were brought in.</numerusform>
        </translation>
    </message>
    <message>
        <source>The alarm was heard from %1.</source>
        <comment>a loudspeaker</comment>
        <translation>The alarm was heard from %1.</translation>
    </message>
    <message>
        <source>The sound was lost on %1.</source>
        <comment>a loudspeaker</comment>
        <translation>The sound was lost on %1.</translation>
    </message>
    <message>
        <source>The sound is back on %1.</source>
        <comment>a loudspeaker</comment>
        <translation>The sound is back on %1.</translation>
    </message>
    <message>
        <source>A procedure card was adopted.</source>
        <translation>A procedure card was adopted.</translation>
    </message>
    <message>
        <source>Thermometer %1 was described.</source>
        <translation>Thermometer %1 was described.</translation>
    </message>
    <message numerus="yes">
        <source>%n bird(s)</source>
        <comment>by how many a limit was passed</comment>
        <translation>
            <numerusform>%n bird</numerusform>
            <numerusform>%n birds</numerusform>
        </translation>
    </message>
    <message>
        <source>Line %1 is planned no more.</source>
        <translation>Line %1 is planned no more.</translation>
    </message>
    <message>
        <source>Line %1 is planned: %2 birds at %3 an hour.</source>
        <translation>Line %1 is planned: %2 birds at %3 an hour.</translation>
    </message>
    <message>
        <source>Received: %1 of %2, at %3.</source>
        <comment>how many, what, place</comment>
        <translation>Received: %1 of %2, at %3.</translation>
    </message>
    <message>
        <source>Moved: %1 of %2, from %3 to %4.</source>
        <comment>how many, what, places</comment>
        <translation>Moved: %1 of %2, from %3 to %4.</translation>
    </message>
    <message>
        <source>Counted: %1 of %2, at %3.</source>
        <comment>how many, what, place</comment>
        <translation>Counted: %1 of %2, at %3.</translation>
    </message>
    <message>
        <source>Taken out of the stores: %1 of %2, from %3. Reason: %4.</source>
        <comment>how many, what, place, why</comment>
        <translation>Taken out of the stores: %1 of %2, from %3. Reason: %4.</translation>
    </message>
    <message>
        <source>Put in quarantine: %1 at %2. Reason: %3.</source>
        <translation>Put in quarantine: %1 at %2. Reason: %3.</translation>
    </message>
    <message>
        <source>Put in quarantine: %1. Reason: %2.</source>
        <translation>Put in quarantine: %1. Reason: %2.</translation>
    </message>
    <message>
        <source>%1 released %2 from quarantine. Reason: %3.</source>
        <translation>%1 released %2 from quarantine. Reason: %3.</translation>
    </message>
    <message>
        <source>%1 allowed %2 for this shift. Reason: %3.</source>
        <translation>%1 allowed %2 for this shift. Reason: %3.</translation>
    </message>
    <message>
        <source>The next ampoules of %1 are of lot %2.</source>
        <translation>The next ampoules of %1 are of lot %2.</translation>
    </message>
    <message>
        <source>The balance of the stores was carried into this shift.</source>
        <translation>The balance of the stores was carried into this shift.</translation>
    </message>
    <message>
        <source>Vessel %1 is described anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel %1 was filled; its dipstick shows %2 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel %1: the dipstick shows %2 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2) works here no more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2) is listed as %3.</source>
        <comment>name, initials, role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a new PIN.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A PIN was given that is not that of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed: %1.</source>
        <comment>meaning</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation of event %1 reviewed. Cause: %2. Action: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviations that nobody has reviewed yet were carried into this shift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the note of event %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The card %1 is approved; it holds from the next bag.</source>
        <comment>hash</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record was sealed after %1 events; its head is %2.</source>
        <comment>count, hash</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A printed seal of %1 events was read back: the record agrees.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A printed seal of %1 events was read back: the record does NOT agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A copy of the record was made and verified: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1: of %2 birds looked at, %3 were vaccinated well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limits of the chart &quot;%1&quot; come from events %2 to %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This record goes on where %1 was still sound, after %2 events.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The baseline of the chart &quot;%1&quot; was withdrawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed: %1, entry %2.</source>
        <comment>meaning, what was signed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The alarm was heard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sound was lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sound is back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ended the hold of bag %2: %3.</source>
        <comment>who, bag, what was decided</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 To be shown: %2 %, with %3 % confidence.</source>
        <comment>what was looked at; a share</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the pulls so far say of the bath was carried into this shift.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Fault</name>
    <message>
        <source>The disk is full. Free some space; what waits is then written.</source>
        <translation>The disk is full. Free some space; what waits is then written.</translation>
    </message>
    <message>
        <source>The folder of the record is read-only. Choose one that can be written.</source>
        <translation>The folder of the record is read-only. Choose one that can be written.</translation>
    </message>
    <message>
        <source>Writing the record is not permitted. Ask who looks after this computer.</source>
        <translation>Writing the record is not permitted. Ask who looks after this computer.</translation>
    </message>
    <message>
        <source>Another program holds the record. Close it first.</source>
        <translation>Another program holds the record. Close it first.</translation>
    </message>
    <message>
        <source>The record is damaged. It is kept as it is; tell the shift lead.</source>
        <translation>The record is damaged. It is kept as it is; tell the shift lead.</translation>
    </message>
    <message>
        <source>That file is no record of this program. It was left alone; choose another.</source>
        <translation>That file is no record of this program. It was left alone; choose another.</translation>
    </message>
    <message>
        <source>The record was written by a later version. Use that version.</source>
        <translation>The record was written by a later version. Use that version.</translation>
    </message>
    <message>
        <source>A write to the record failed. What happened is kept and written later.</source>
        <translation>A write to the record failed. What happened is kept and written later.</translation>
    </message>
    <message>
        <source>Whether the last write is safe is not known. Work goes on in a second file.</source>
        <translation>Whether the last write is safe is not known. Work goes on in a second file.</translation>
    </message>
    <message>
        <source>The record lies on a network drive, which is not safe. Move it to this computer.</source>
        <translation>The record lies on a network drive, which is not safe. Move it to this computer.</translation>
    </message>
    <message>
        <source>The record and the screen disagree. Restart the station.</source>
        <translation>The record and the screen disagree. Restart the station.</translation>
    </message>
    <message>
        <source>%1 (System error %2.)</source>
        <comment>a whole sentence; a number</comment>
        <translation>%1 (System error %2.)</translation>
    </message>
    <message>
        <source>The procedure card cannot be used: expected %1, found %2.</source>
        <translation>The procedure card cannot be used: expected %1, found %2.</translation>
    </message>
    <message>
        <source>The procedure card cannot be used: at &quot;%1&quot;, expected %2, found %3.</source>
        <translation>The procedure card cannot be used: at &quot;%1&quot;, expected %2, found %3.</translation>
    </message>
    <message>
        <source>The thermometer&apos;s description cannot be used: expected %1, found %2.</source>
        <translation>The thermometer&apos;s description cannot be used: expected %1, found %2.</translation>
    </message>
    <message>
        <source>The thermometer&apos;s description cannot be used: at &quot;%1&quot;, expected %2, found %3.</source>
        <translation>The thermometer&apos;s description cannot be used: at &quot;%1&quot;, expected %2, found %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) wait to be recorded. Go on working.</source>
        <translation>
            <numerusform>%n event waits to be recorded. Go on working.</numerusform>
            <numerusform>%n events wait to be recorded. Go on working.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not confirmed in the record, kept in a second file. Go on working; tell the shift lead.</source>
        <translation>Not confirmed in the record, kept in a second file. Go on working; tell the shift lead.</translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) are not recorded. Go on working; leave the station on; call the shift lead.</source>
        <translation>
            <numerusform>%n event is not recorded. Go on working; leave the station on; call the shift lead.</numerusform>
            <numerusform>%n events are not recorded. Go on working; leave the station on; call the shift lead.</numerusform>
        </translation>
    </message>
    <message>
        <source>The record cannot be kept safely on this disk. Move it to another disk of this computer.</source>
        <translation>The record cannot be kept safely on this disk. Move it to another disk of this computer.</translation>
    </message>
    <message>
        <source>The scan is empty. Scan again.</source>
        <translation>The scan is empty. Scan again.</translation>
    </message>
    <message>
        <source>The scan is longer than any code. Scan one code alone.</source>
        <translation>The scan is longer than any code. Scan one code alone.</translation>
    </message>
    <message>
        <source>This code has a part that is not known here. Read the label.</source>
        <translation>This code has a part that is not known here. Read the label.</translation>
    </message>
    <message>
        <source>A part of this code is too short. Scan again.</source>
        <translation>A part of this code is too short. Scan again.</translation>
    </message>
    <message>
        <source>A part of this code is too long: does the scanner send separators (FNC1)?</source>
        <translation>A part of this code is too long: does the scanner send separators (FNC1)?</translation>
    </message>
    <message>
        <source>This code has a sign where a digit belongs. Scan again.</source>
        <translation>This code has a sign where a digit belongs. Scan again.</translation>
    </message>
    <message>
        <source>This code has a sign that GS1 does not allow. Scan again.</source>
        <translation>This code has a sign that GS1 does not allow. Scan again.</translation>
    </message>
    <message>
        <source>The code&apos;s check digit is wrong. Scan again.</source>
        <translation>The code&apos;s check digit is wrong. Scan again.</translation>
    </message>
    <message>
        <source>The code&apos;s date is none. Read the label.</source>
        <translation>The code&apos;s date is none. Read the label.</translation>
    </message>
    <message>
        <source>This code says two things at once. Read the label.</source>
        <translation>This code says two things at once. Read the label.</translation>
    </message>
    <message>
        <source>The label&apos;s code was misread. Scan again; if it stays so, set the scanner to this keyboard&apos;s layout.</source>
        <translation>The label&apos;s code was misread. Scan again; if it stays so, set the scanner to this keyboard&apos;s layout.</translation>
    </message>
    <message>
        <source>(%1): %2</source>
        <comment>a GS1 identifier and what is wrong with it</comment>
        <translation>(%1): %2</translation>
    </message>
    <message>
        <source>There is more to print than this paper takes. Choose a larger one.</source>
        <translation>There is more to print than this paper takes. Choose a larger one.</translation>
    </message>
    <message>
        <source>The printer did not take it. Is it there, switched on, and does it have this paper?</source>
        <translation>The printer did not take it. Is it there, switched on, and does it have this paper?</translation>
    </message>
    <message>
        <source>The file could not be written. Choose another folder.</source>
        <translation>The file could not be written. Choose another folder.</translation>
    </message>
</context>
<context>
    <name>InjectorText</name>
    <message>
        <source>weighed, in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dose set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set …</source>
        <comment>liquid, dose</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weigh …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>shots weighed, of how many</comment>
        <translation type="unfinished">%1 of %2</translation>
    </message>
    <message>
        <source>cylinder …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quick form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a line first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RECORD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shot %1 of %2: what does it weigh?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many shots went into the cylinder?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does the cylinder show?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much is it from one mark to the next?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water …</source>
        <comment>what is weighed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other liquid …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by its density</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dose set …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last weight out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is weighed, and against what?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How warm is the water that is weighed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is its density? See its label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which dose is set?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>liquid, dose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance is gone: check its plug, or type the weights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance fills it in: tare, one shot, wait. Or type it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>balance …</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n weight(s) from %1 %2. Go on, or measure anew.</source>
        <comment>a day, a time</comment>
        <translation>
            <numerusform>%n weight from %1 %2. Go on, or measure anew.</numerusform>
            <numerusform>%n weights from %1 %2. Go on, or measure anew.</numerusform>
        </translation>
    </message>
    <message>
        <source>unfinished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled in: the diluent&apos;s, by the card.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>IntakeText</name>
    <message>
        <source>line %1</source>
        <translation>line %1</translation>
    </message>
    <message>
        <source>%1 of %2, at %3</source>
        <comment>how many, what, place</comment>
        <translation>%1 of %2, at %3</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) received</source>
        <translation>
            <numerusform>%n line received</numerusform>
            <numerusform>%n lines received</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) can be taken</source>
        <translation>
            <numerusform>%n line can be taken</numerusform>
            <numerusform>%n lines can be taken</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n wrong</source>
        <comment>lines of a file</comment>
        <translation>
            <numerusform>%n wrong</numerusform>
            <numerusform>%n wrong</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n received before</source>
        <comment>lines of a file</comment>
        <translation>
            <numerusform>%n received before</numerusform>
            <numerusform>%n received before</numerusform>
        </translation>
    </message>
    <message>
        <source>too little</source>
        <translation>too little</translation>
    </message>
    <message>
        <source>expired</source>
        <translation>expired</translation>
    </message>
    <message>
        <source>in quarantine</source>
        <translation>in quarantine</translation>
    </message>
    <message>
        <source>near expiry</source>
        <translation>near expiry</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation>wrong</translation>
    </message>
    <message>
        <source>received before, not taken: %1</source>
        <translation>received before, not taken: %1</translation>
    </message>
    <message>
        <source>Nothing is short, apart, expired or near its expiry.</source>
        <translation>Nothing is short, apart, expired or near its expiry.</translation>
    </message>
    <message numerus="yes">
        <source>%n warning(s)</source>
        <comment>of the stores</comment>
        <translation>
            <numerusform>%n warning</numerusform>
            <numerusform>%n warnings</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LaneText</name>
    <message>
        <source>%1 · which lot?</source>
        <translation>%1 · which lot?</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>in cryogen</source>
        <extracomment>A lane of the pull: this ampoule is still in the cryogen.</extracomment>
        <translation>in cryogen</translation>
    </message>
    <message>
        <source>lot …</source>
        <translation>lot …</translation>
    </message>
    <message>
        <source>not this one</source>
        <translation>not this one</translation>
    </message>
    <message>
        <source>by wall time, after a restart</source>
        <translation>by wall time, after a restart</translation>
    </message>
    <message>
        <source>Other ends of this ampoule</source>
        <translation>Other ends of this ampoule</translation>
    </message>
    <message>
        <source>back</source>
        <translation>back</translation>
    </message>
    <message>
        <source>+ ampoule</source>
        <translation>+ ampoule</translation>
    </message>
    <message>
        <source>given up</source>
        <comment>an ampoule was abandoned</comment>
        <translation>given up</translation>
    </message>
</context>
<context>
    <name>LevelText</name>
    <message>
        <source>Level by the dipstick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d</source>
        <comment>unit of an axis: days</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minimum %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LineText</name>
    <message>
        <source>%1: birds done so far, in all</source>
        <translation>%1: birds done so far, in all</translation>
    </message>
    <message>
        <source>birds</source>
        <translation>birds</translation>
    </message>
    <message>
        <source>NEEDLE CHANGED</source>
        <translation>NEEDLE CHANGED</translation>
    </message>
    <message>
        <source>DOSE RIGHT</source>
        <translation>DOSE RIGHT</translation>
    </message>
    <message>
        <source>DOSE WRONG</source>
        <translation>DOSE WRONG</translation>
    </message>
    <message>
        <source>STOPPED</source>
        <translation>STOPPED</translation>
    </message>
    <message>
        <source>GOING</source>
        <translation>GOING</translation>
    </message>
    <message>
        <source>needle in %1</source>
        <extracomment>Birds until (or since) a needle change is due.</extracomment>
        <translation>needle in %1</translation>
    </message>
    <message>
        <source>needle due, %1 over</source>
        <translation>needle due, %1 over</translation>
    </message>
    <message>
        <source>%1 birds</source>
        <translation>%1 birds</translation>
    </message>
    <message>
        <source>birds …</source>
        <translation>birds …</translation>
    </message>
    <message>
        <source>Which line?</source>
        <translation>Which line?</translation>
    </message>
</context>
<context>
    <name>LiveCellsText</name>
    <message>
        <source>Each mixed bag shows its live cells, indicative: the label decides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off on this card: no bag shows live cells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bag shows live cells: the card has no minimum for a dose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bag shows live cells: the card has no loss in the bath with its source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bag shows live cells: the card has no loss in the bag with its source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags of a lot without its certificate&apos;s titre show no live cells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not on the card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half in %1 to %2 h</source>
        <comment>half-life, from to</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minimum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 PFU a dose</source>
        <translation type="unfinished">%1 PFU a dose</translation>
    </message>
    <message>
        <source>loss in the bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loss in the bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation type="unfinished">lot %1</translation>
    </message>
    <message>
        <source>no titre in the stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">back</translation>
    </message>
    <message>
        <source>on, indicative</source>
        <comment>live cells</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <comment>live cells</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something is missing</source>
        <comment>live cells</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source on the card: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotText</name>
    <message>
        <source>back</source>
        <translation>back</translation>
    </message>
    <message>
        <source>another reason …</source>
        <translation>another reason …</translation>
    </message>
    <message>
        <source>%1: how many are there?</source>
        <translation>%1: how many are there?</translation>
    </message>
    <message>
        <source>Counted where?</source>
        <translation>Counted where?</translation>
    </message>
    <message>
        <source>Where to?</source>
        <translation>Where to?</translation>
    </message>
    <message>
        <source>How many are moved?</source>
        <translation>How many are moved?</translation>
    </message>
    <message>
        <source>Moved from where?</source>
        <translation>Moved from where?</translation>
    </message>
    <message>
        <source>Why are they taken out?</source>
        <translation>Why are they taken out?</translation>
    </message>
    <message>
        <source>Taken out from where?</source>
        <translation>Taken out from where?</translation>
    </message>
    <message>
        <source>How many are taken out?</source>
        <translation>How many are taken out?</translation>
    </message>
    <message>
        <source>Why is %1 set apart?</source>
        <translation>Why is %1 set apart?</translation>
    </message>
    <message>
        <source>certificate missing</source>
        <translation>certificate missing</translation>
    </message>
    <message>
        <source>arrived damaged</source>
        <translation>arrived damaged</translation>
    </message>
    <message>
        <source>cryogen ran low</source>
        <translation>cryogen ran low</translation>
    </message>
    <message>
        <source>recalled by its maker</source>
        <translation>recalled by its maker</translation>
    </message>
    <message>
        <source>Shift lead&apos;s initials</source>
        <translation>Shift lead&apos;s initials</translation>
    </message>
    <message>
        <source>Why may %1 be used?</source>
        <translation>Why may %1 be used?</translation>
    </message>
    <message>
        <source>certificate seen</source>
        <translation>certificate seen</translation>
    </message>
    <message>
        <source>never got warm</source>
        <translation>never got warm</translation>
    </message>
    <message>
        <source>set apart by mistake</source>
        <translation>set apart by mistake</translation>
    </message>
    <message>
        <source>certificate read out by telephone</source>
        <translation>certificate read out by telephone</translation>
    </message>
    <message>
        <source>no other lot is there</source>
        <translation>no other lot is there</translation>
    </message>
    <message>
        <source>agreed with the maker</source>
        <translation>agreed with the maker</translation>
    </message>
    <message>
        <source>count …</source>
        <translation>count …</translation>
    </message>
    <message>
        <source>move …</source>
        <translation>move …</translation>
    </message>
    <message>
        <source>take out …</source>
        <translation>take out …</translation>
    </message>
    <message>
        <source>use next</source>
        <comment>the next ampoules are of this lot</comment>
        <translation>use next</translation>
    </message>
    <message>
        <source>allow today …</source>
        <translation>allow today …</translation>
    </message>
    <message>
        <source>by the shift lead</source>
        <translation>by the shift lead</translation>
    </message>
    <message>
        <source>end quarantine …</source>
        <translation>end quarantine …</translation>
    </message>
    <message>
        <source>quarantine …</source>
        <translation>quarantine …</translation>
    </message>
    <message>
        <source>%1, in quarantine: %2</source>
        <translation>%1, in quarantine: %2</translation>
    </message>
    <message>
        <source>Which vessel?</source>
        <translation>Which vessel?</translation>
    </message>
    <message>
        <source>Which canister?</source>
        <translation>Which canister?</translation>
    </message>
    <message>
        <source>Which cane?</source>
        <translation>Which cane?</translation>
    </message>
    <message>
        <source>Which shelf or box?</source>
        <translation>Which shelf or box?</translation>
    </message>
    <message>
        <source>another place …</source>
        <translation>another place …</translation>
    </message>
    <message>
        <source>%1 doses each</source>
        <translation>%1 doses each</translation>
    </message>
    <message>
        <source>%1 PFU a dose</source>
        <translation>%1 PFU a dose</translation>
    </message>
    <message>
        <source>%1 may be used</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MendText</name>
    <message>
        <source>wrong button</source>
        <translation>wrong button</translation>
    </message>
    <message>
        <source>tapped late</source>
        <translation>tapped late</translation>
    </message>
    <message>
        <source>did not happen</source>
        <translation>did not happen</translation>
    </message>
    <message>
        <source>misread</source>
        <translation>misread</translation>
    </message>
    <message>
        <source>other …</source>
        <translation>other …</translation>
    </message>
    <message>
        <source>its time</source>
        <translation>its time</translation>
    </message>
    <message>
        <source>which ampoule</source>
        <translation>which ampoule</translation>
    </message>
    <message>
        <source>which component</source>
        <translation>which component</translation>
    </message>
    <message>
        <source>which lot</source>
        <translation>which lot</translation>
    </message>
    <message>
        <source>which bag</source>
        <translation>which bag</translation>
    </message>
    <message>
        <source>which line</source>
        <translation>which line</translation>
    </message>
    <message>
        <source>how many birds</source>
        <translation>how many birds</translation>
    </message>
    <message>
        <source>broken or not</source>
        <translation>broken or not</translation>
    </message>
    <message>
        <source>its volume</source>
        <translation>its volume</translation>
    </message>
    <message>
        <source>how much was left</source>
        <translation>how much was left</translation>
    </message>
    <message>
        <source>its temperature</source>
        <translation>its temperature</translation>
    </message>
    <message>
        <source>When was it? Hours, minutes, seconds, as 094107</source>
        <translation>When was it? Hours, minutes, seconds, as 094107</translation>
    </message>
    <message>
        <source>Which ampoule was it?</source>
        <translation>Which ampoule was it?</translation>
    </message>
    <message>
        <source>What is the bag called?</source>
        <translation>What is the bag called?</translation>
    </message>
    <message>
        <source>Which bag was it?</source>
        <translation>Which bag was it?</translation>
    </message>
    <message>
        <source>Which component was it?</source>
        <translation>Which component was it?</translation>
    </message>
    <message>
        <source>Which lot was it?</source>
        <translation>Which lot was it?</translation>
    </message>
    <message>
        <source>Which line was it?</source>
        <translation>Which line was it?</translation>
    </message>
    <message>
        <source>it did not break</source>
        <translation>it did not break</translation>
    </message>
    <message>
        <source>it broke</source>
        <translation>it broke</translation>
    </message>
    <message>
        <source>Broken or not?</source>
        <translation>Broken or not?</translation>
    </message>
    <message>
        <source>How many birds was it, in all?</source>
        <translation>How many birds was it, in all?</translation>
    </message>
    <message>
        <source>birds</source>
        <translation>birds</translation>
    </message>
    <message>
        <source>How much was it?</source>
        <translation>How much was it?</translation>
    </message>
    <message>
        <source>How warm was it?</source>
        <translation>How warm was it?</translation>
    </message>
    <message>
        <source>Corrected: why?</source>
        <translation>Corrected: why?</translation>
    </message>
    <message>
        <source>Taken back: why?</source>
        <translation>Taken back: why?</translation>
    </message>
    <message>
        <source>What is not right?</source>
        <translation>What is not right?</translation>
    </message>
</context>
<context>
    <name>MenuText</name>
    <message>
        <source>bath reading …</source>
        <translation>bath reading …</translation>
    </message>
    <message>
        <source>next pull …</source>
        <translation>next pull …</translation>
    </message>
    <message>
        <source>bags …</source>
        <translation>bags …</translation>
    </message>
    <message>
        <source>lines …</source>
        <translation>lines …</translation>
    </message>
    <message>
        <source>new bag …</source>
        <translation>new bag …</translation>
    </message>
    <message>
        <source>correct …</source>
        <translation>correct …</translation>
    </message>
    <message>
        <source>water changed …</source>
        <translation>water changed …</translation>
    </message>
    <message>
        <source>cane out too long …</source>
        <translation>cane out too long …</translation>
    </message>
    <message>
        <source>note …</source>
        <translation>note …</translation>
    </message>
    <message>
        <source>who is on duty …</source>
        <translation>who is on duty …</translation>
    </message>
    <message>
        <source>end of shift …</source>
        <translation>end of shift …</translation>
    </message>
    <message>
        <source>open questions …</source>
        <translation>open questions …</translation>
    </message>
    <message>
        <source>set-up</source>
        <translation>set-up</translation>
    </message>
    <message>
        <source>record</source>
        <translation>record</translation>
    </message>
    <message>
        <source>What else?</source>
        <translation>What else?</translation>
    </message>
    <message>
        <source>stores</source>
        <translation>stores</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>review</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NewBagText</name>
    <message>
        <source>Lot of the diluent</source>
        <translation>Lot of the diluent</translation>
    </message>
    <message>
        <source>Name of the bag, as on its label</source>
        <translation>Name of the bag, as on its label</translation>
    </message>
    <message>
        <source>Diluent: what does the thermometer show?</source>
        <translation>Diluent: what does the thermometer show?</translation>
    </message>
    <message>
        <source>How large is the bag?</source>
        <translation>How large is the bag?</translation>
    </message>
    <message>
        <source>Which volume?</source>
        <translation>Which volume?</translation>
    </message>
    <message>
        <source>Which lot of diluent?</source>
        <translation>Which lot of diluent?</translation>
    </message>
    <message>
        <source>other volume …</source>
        <translation>other volume …</translation>
    </message>
    <message>
        <source>which lot?</source>
        <translation>which lot?</translation>
    </message>
    <message>
        <source>lot of the diluent …</source>
        <translation>lot of the diluent …</translation>
    </message>
    <message>
        <source>how warm?</source>
        <translation>how warm?</translation>
    </message>
    <message>
        <source>diluent …</source>
        <translation>diluent …</translation>
    </message>
    <message>
        <source>name of the bag …</source>
        <translation>name of the bag …</translation>
    </message>
    <message>
        <source>A new bag of diluent</source>
        <translation>A new bag of diluent</translation>
    </message>
</context>
<context>
    <name>OptionText</name>
    <message>
        <source>The bench-side station for making up frozen poultry vaccine.</source>
        <translation>The bench-side station for making up frozen poultry vaccine.</translation>
    </message>
    <message>
        <source>Start the real day at once.</source>
        <translation>Start the real day at once.</translation>
    </message>
    <message>
        <source>Rehearse at once; nothing counts, and it has a trail of its own.</source>
        <translation>Rehearse at once; nothing counts, and it has a trail of its own.</translation>
    </message>
    <message>
        <source>Keep the trail in FILE.</source>
        <translation>Keep the trail in FILE.</translation>
    </message>
    <message>
        <source>Work by the procedure card in FILE.</source>
        <translation>Work by the procedure card in FILE.</translation>
    </message>
    <message>
        <source>Language of the screen: en or es.</source>
        <translation>Language of the screen: en or es.</translation>
    </message>
    <message>
        <source>Light words on a dark ground.</source>
        <translation>Light words on a dark ground.</translation>
    </message>
    <message>
        <source>Dark words on a light ground.</source>
        <translation>Dark words on a light ground.</translation>
    </message>
    <message>
        <source>Pixels per millimetre of this panel.</source>
        <translation>Pixels per millimetre of this panel.</translation>
    </message>
    <message>
        <source>In a window instead of on the whole screen.</source>
        <translation>In a window instead of on the whole screen.</translation>
    </message>
    <message>
        <source>Play the demo day through the window and end.</source>
        <translation>Play the demo day through the window and end.</translation>
    </message>
    <message>
        <source>Play the script in FILE through the window and end.</source>
        <translation>Play the script in FILE through the window and end.</translation>
    </message>
    <message>
        <source>While playing, leave pictures in DIR.</source>
        <translation>While playing, leave pictures in DIR.</translation>
    </message>
    <message>
        <source>After playing, leave the exported record in DIR.</source>
        <translation>After playing, leave the exported record in DIR.</translation>
    </message>
    <message>
        <source>bathside: %1 See bathside --help.</source>
        <translation>bathside: %1 See bathside --help.</translation>
    </message>
    <message>
        <source>--px-per-mm wants a number from 2 to 16.</source>
        <translation>--px-per-mm wants a number from 2 to 16.</translation>
    </message>
    <message>
        <source>“%1” is not an option.</source>
        <translation>“%1” is not an option.</translation>
    </message>
    <message>
        <source>The station&apos;s name in the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>--station wants a name of 1 to 24 signs, without a blank before or after it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PictureText</name>
    <message>
        <source>%1 ± %2 °C</source>
        <comment>target, tolerance</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was typed in, corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last five minutes, corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <comment>unit of an axis: minutes before now</comment>
        <translation type="unfinished">min</translation>
    </message>
    <message>
        <source>Ampoules go in; dashed: heater on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>s</source>
        <comment>unit of an axis: seconds</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heated:</source>
        <comment>a value of a chart: with the heater on</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time to slush over the bath&apos;s temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice: %1 s at %2 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 ± %2 °C</source>
        <comment>temperature, U</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At %1 the bath takes no ampoule without leaving what counts as inside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>At %1 the bath takes up to %n ampoule(s) at a time.</source>
        <translation>
            <numerusform>At %1 the bath takes up to %n ampoule at a time.</numerusform>
            <numerusform>At %1 the bath takes up to %n ampoules at a time.</numerusform>
        </translation>
    </message>
    <message>
        <source>This is a calculation; the thermometer decides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>From %n pull(s): the bath acts as %1 kg of water; the card&apos;s %2 kg foresaw its dips to %3 °C.</source>
        <translation>
            <numerusform>From %n pull: the bath acts as %1 kg of water; the card&apos;s %2 kg foresaw its dips to %3 °C.</numerusform>
            <numerusform>From %n pulls: the bath acts as %1 kg of water; the card&apos;s %2 kg foresaw its dips to %3 °C.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>From %n pull(s): opened as with %1 W/(m² K) or more; the card&apos;s %2 foresaw it to %3 s.</source>
        <translation>
            <numerusform>From %n pull: opened as with %1 W/(m² K) or more; the card&apos;s %2 foresaw it to %3 s.</numerusform>
            <numerusform>From %n pulls: opened as with %1 W/(m² K) or more; the card&apos;s %2 foresaw it to %3 s.</numerusform>
        </translation>
    </message>
    <message>
        <source>Used: the card&apos;s, as it takes three pulls.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used: the card&apos;s, as the pulls do not agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used: the card&apos;s, as water cannot do that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used: %1 (%2 to %3).</source>
        <comment>a figure and its interval</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used from the next shift on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath: %1 kg, fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and the bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 °C, which is the card&apos;s and not measured,</source>
        <comment>temperature</comment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n ampoule(s): down %1 °C without the heater, which gives that heat in %2.</source>
        <translation>
            <numerusform>%n ampoule: down %1 °C without the heater, which gives that heat in %2.</numerusform>
            <numerusform>%n ampoules: down %1 °C without the heater, which gives that heat in %2.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PinText</name>
    <message>
        <source>Too many wrong PINs. Try again in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not on the list of people.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is not the PIN of %1. It is on record that it was tried.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message numerus="yes">
        <source>%Ln bird(s)</source>
        <translation>
            <numerusform>%Ln bird</numerusform>
            <numerusform>%Ln birds</numerusform>
        </translation>
    </message>
    <message>
        <source>There are no ampoules of %1 for %2.</source>
        <comment>component, birds</comment>
        <translation>There are no ampoules of %1 for %2.</translation>
    </message>
    <message numerus="yes">
        <source>Not enough ampoules of %1 for %2: %Ln missing.</source>
        <comment>component, birds</comment>
        <translation>
            <numerusform>Not enough ampoules of %1 for %2: %Ln missing.</numerusform>
            <numerusform>Not enough ampoules of %1 for %2: %Ln missing.</numerusform>
        </translation>
    </message>
    <message>
        <source>There are no diluent bags.</source>
        <translation>There are no diluent bags.</translation>
    </message>
    <message numerus="yes">
        <source>Not enough diluent bags: %Ln more of %1 would do.</source>
        <translation>
            <numerusform>Not enough diluent bags: %Ln more of %1 would do.</numerusform>
            <numerusform>Not enough diluent bags: %Ln more of %1 would do.</numerusform>
        </translation>
    </message>
    <message>
        <source>What is left in the stores is not enough: more than one thing is short.</source>
        <translation>What is left in the stores is not enough: more than one thing is short.</translation>
    </message>
    <message>
        <source>Priming takes more than any bag holds: a bag of %1 would do.</source>
        <translation>Priming takes more than any bag holds: a bag of %1 would do.</translation>
    </message>
    <message>
        <source>What stays in a bag leaves no dose in any: a bag of %1 would do.</source>
        <translation>What stays in a bag leaves no dose in any: a bag of %1 would do.</translation>
    </message>
    <message>
        <source>At this rate not one bird is done before a bag&apos;s time is up: %1 more, or as much less of hang time, dilute time and bench slack, would do.</source>
        <translation>At this rate not one bird is done before a bag&apos;s time is up: %1 more, or as much less of hang time, dilute time and bench slack, would do.</translation>
    </message>
    <message>
        <source>No bag lasts through the break that it would hang in.</source>
        <translation>No bag lasts through the break that it would hang in.</translation>
    </message>
    <message>
        <source>No bag lasts through the break that it would hang in: it can be done if the line may stand idle for %1.</source>
        <translation>No bag lasts through the break that it would hang in: it can be done if the line may stand idle for %1.</translation>
    </message>
    <message numerus="yes">
        <source>Too large to be planned exactly: no plan opens fewer than %Ln dose(s).</source>
        <translation>
            <numerusform>Too large to be planned exactly: no plan opens fewer than %Ln dose.</numerusform>
            <numerusform>Too large to be planned exactly: no plan opens fewer than %Ln doses.</numerusform>
        </translation>
    </message>
    <message>
        <source>It cannot be done; what is missing is too large a question to be answered exactly.</source>
        <translation>It cannot be done; what is missing is too large a question to be answered exactly.</translation>
    </message>
    <message>
        <source>Bag %1 runs through the break at %2.</source>
        <translation>Bag %1 runs through the break at %2.</translation>
    </message>
    <message>
        <source>Line %1 stands idle for %2 before bag %3, to spare a bag.</source>
        <translation>Line %1 stands idle for %2 before bag %3, to spare a bag.</translation>
    </message>
    <message>
        <source>No spare ampoule is left of lot %1 (%2).</source>
        <comment>lot, component</comment>
        <translation>No spare ampoule is left of lot %1 (%2).</translation>
    </message>
    <message>
        <source>Bag %1 has a margin of only %2.</source>
        <translation>Bag %1 has a margin of only %2.</translation>
    </message>
    <message>
        <source>Line %1 waits for a bag from %2 until %3.</source>
        <translation>Line %1 waits for a bag from %2 until %3.</translation>
    </message>
    <message>
        <source>Line %1 has stood still since %2. The plan takes it to go on now.</source>
        <translation>Line %1 has stood still since %2. The plan takes it to go on now.</translation>
    </message>
    <message>
        <source>Too late: the pull for line %1 was due %2 ago.</source>
        <translation>Too late: the pull for line %1 was due %2 ago.</translation>
    </message>
    <message numerus="yes">
        <source>The bench makes every bag in time; %n preparer(s) would do.</source>
        <translation>
            <numerusform>The bench makes every bag in time; %n preparer would do.</numerusform>
            <numerusform>The bench makes every bag in time; %n preparers would do.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Bag %1 cannot be made in time; %n preparer(s) would do.</source>
        <translation>
            <numerusform>Bag %1 cannot be made in time; %n preparer would do.</numerusform>
            <numerusform>Bag %1 cannot be made in time; %n preparers would do.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Bag %1 cannot be made in time; %n preparer(s), or a bench slack of %2, would do.</source>
        <translation>
            <numerusform>Bag %1 cannot be made in time; %n preparer, or a bench slack of %2, would do.</numerusform>
            <numerusform>Bag %1 cannot be made in time; %n preparers, or a bench slack of %2, would do.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 for line %2</source>
        <comment>a bag&apos;s volume; which line</comment>
        <translation>%1 for line %2</translation>
    </message>
    <message>
        <source>Pull at %1: %2. Too early before %3: it would pass its limit.</source>
        <translation>Pull at %1: %2. Too early before %3: it would pass its limit.</translation>
    </message>
    <message>
        <source>Pull at %1: %2. It is not too early any more.</source>
        <translation>Pull at %1: %2. It is not too early any more.</translation>
    </message>
    <message>
        <source>%1 birds an hour, as planned; not measured yet.</source>
        <translation>%1 birds an hour, as planned; not measured yet.</translation>
    </message>
    <message>
        <source>%1 birds an hour measured, %2 to %3 with 95 % confidence; planned were %4.</source>
        <translation>%1 birds an hour measured, %2 to %3 with 95 % confidence; planned were %4.</translation>
    </message>
    <message numerus="yes">
        <source>Bag %1 would be empty at %2, past its limit at %3: %Ln dose(s) will be lost.</source>
        <translation>
            <numerusform>Bag %1 would be empty at %2, past its limit at %3: %Ln dose will be lost.</numerusform>
            <numerusform>Bag %1 would be empty at %2, past its limit at %3: %Ln doses will be lost.</numerusform>
        </translation>
    </message>
    <message>
        <source>Bag %1 is empty at %2; its limit is %3.</source>
        <translation>Bag %1 is empty at %2; its limit is %3.</translation>
    </message>
    <message>
        <source>Bag %1 is empty at %2, between %3 and %4; its limit is %5.</source>
        <translation>Bag %1 is empty at %2, between %3 and %4; its limit is %5.</translation>
    </message>
</context>
<context>
    <name>PlanAsk</name>
    <message>
        <source>back</source>
        <translation>back</translation>
    </message>
    <message>
        <source>%1: how many birds in all?</source>
        <comment>a line</comment>
        <translation>%1: how many birds in all?</translation>
    </message>
    <message>
        <source>%1: how many birds an hour?</source>
        <comment>a line</comment>
        <translation>%1: how many birds an hour?</translation>
    </message>
    <message>
        <source>%1: start? Hours and minutes, as 0730</source>
        <comment>a line</comment>
        <translation>%1: start? Hours and minutes, as 0730</translation>
    </message>
    <message>
        <source>Break from when? Hours and minutes, as 0930</source>
        <translation>Break from when? Hours and minutes, as 0930</translation>
    </message>
    <message>
        <source>%1: remove which break?</source>
        <comment>a line</comment>
        <translation>%1: remove which break?</translation>
    </message>
    <message>
        <source>remove it</source>
        <comment>a line from the plan</comment>
        <translation>remove it</translation>
    </message>
    <message>
        <source>Remove %1 from the plan?</source>
        <comment>a line</comment>
        <translation>Remove %1 from the plan?</translation>
    </message>
    <message numerus="yes">
        <source>%n break(s)</source>
        <translation>
            <numerusform>%n break</numerusform>
            <numerusform>%n breaks</numerusform>
        </translation>
    </message>
    <message>
        <source>birds …</source>
        <translation>birds …</translation>
    </message>
    <message>
        <source>birds an hour …</source>
        <translation>birds an hour …</translation>
    </message>
    <message>
        <source>start …</source>
        <translation>start …</translation>
    </message>
    <message>
        <source>add a break …</source>
        <translation>add a break …</translation>
    </message>
    <message>
        <source>remove a break …</source>
        <translation>remove a break …</translation>
    </message>
    <message>
        <source>remove the line …</source>
        <translation>remove the line …</translation>
    </message>
    <message>
        <source>%1: change what?</source>
        <comment>a line</comment>
        <translation>%1: change what?</translation>
    </message>
    <message>
        <source>%1 birds, %2 per h, %3</source>
        <comment>count, rate, start</comment>
        <translation>%1 birds, %2 per h, %3</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>not planned</translation>
    </message>
    <message>
        <source>Plan which line?</source>
        <translation>Plan which line?</translation>
    </message>
    <message>
        <source>Break from %1 until? Like 0950</source>
        <translation>Break from %1 until? Like 0950</translation>
    </message>
</context>
<context>
    <name>PlanSheet</name>
    <message>
        <source>bag</source>
        <comment>column of the day&apos;s plan</comment>
        <translation>bag</translation>
    </message>
    <message>
        <source>pull at</source>
        <comment>column of the day&apos;s plan: when ampoules come out</comment>
        <translation>pull at</translation>
    </message>
    <message>
        <source>mixed by</source>
        <comment>column of the day&apos;s plan: at the latest</comment>
        <translation>mixed by</translation>
    </message>
    <message>
        <source>first bird</source>
        <comment>column of the day&apos;s plan</comment>
        <translation>first bird</translation>
    </message>
    <message>
        <source>last bird</source>
        <comment>column of the day&apos;s plan</comment>
        <translation>last bird</translation>
    </message>
    <message>
        <source>birds</source>
        <comment>column of the day&apos;s plan</comment>
        <translation>birds</translation>
    </message>
    <message>
        <source>size</source>
        <comment>column of the day&apos;s plan: of the bag</comment>
        <translation>size</translation>
    </message>
    <message>
        <source>lots × ampoules</source>
        <comment>column of the day&apos;s plan</comment>
        <translation>lots × ampoules</translation>
    </message>
    <message>
        <source>Plan for %1</source>
        <comment>a day</comment>
        <translation>Plan for %1</translation>
    </message>
    <message>
        <source>%1, REHEARSAL: not for birds</source>
        <comment>after the site&apos;s name</comment>
        <translation>%1, REHEARSAL: not for birds</translation>
    </message>
    <message>
        <source>Line %1</source>
        <comment>heading in the day&apos;s plan</comment>
        <translation>Line %1</translation>
    </message>
    <message>
        <source>Reckoned %1</source>
        <comment>date and time</comment>
        <translation>Reckoned %1</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 of %2</translation>
    </message>
</context>
<context>
    <name>PrintText</name>
    <message>
        <source>NOT PRINTED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SAVED AS PDF</source>
        <comment>what was to be printed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DOES NOT FIT</source>
        <comment>on its paper</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PRINTER REFUSED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as PDF: %1</source>
        <extracomment>%1 is a file.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SENT TO PRINTER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 × 50 mm</source>
        <comment>size of a label</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>62 mm roll</source>
        <comment>of labels</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <comment>paper</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <comment>paper</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProbeText</name>
    <message>
        <source>read by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one-wire %1</source>
        <comment>a thermometer&apos;s connection</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 baud, pattern %3, %4</source>
        <comment>port, speed, pattern, °C or element</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out of use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reading yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 ago</source>
        <comment>temperature, age</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too old</source>
        <comment>a reading</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not calibrated</source>
        <comment>a thermometer</comment>
        <translation type="unfinished">not calibrated</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <comment>a calibration; a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due %1</source>
        <comment>a calibration; a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not calibrated: undecided at best.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Certificate %1: %2</source>
        <comment>its number; its points</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is %2 ± %3 °C</source>
        <comment>shown, reference, U</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ω of a Pt100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ω of a Pt1000</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <extracomment>A day, as QDate::toString writes it; in some languages with &quot;de&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ω of an NTC</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to %1 % within tolerance</source>
        <comment>how likely</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PullText</name>
    <message>
        <source>Lot on the ampoule: %1</source>
        <translation>Lot on the ampoule: %1</translation>
    </message>
    <message>
        <source>another lot …</source>
        <translation>another lot …</translation>
    </message>
    <message>
        <source>CHOSEN</source>
        <translation>CHOSEN</translation>
    </message>
    <message>
        <source>Ampoules of the next pull: one tap each</source>
        <translation>Ampoules of the next pull: one tap each</translation>
    </message>
</context>
<context>
    <name>Question</name>
    <message>
        <source>I was interrupted</source>
        <translation>I was interrupted</translation>
    </message>
    <message>
        <source>Too many at once</source>
        <translation>Too many at once</translation>
    </message>
    <message>
        <source>Hard to open</source>
        <translation>Hard to open</translation>
    </message>
    <message>
        <source>Done in time, tapped late</source>
        <translation>Done in time, tapped late</translation>
    </message>
    <message>
        <source>A small ampoule</source>
        <translation>A small ampoule</translation>
    </message>
    <message>
        <source>The bath was warm</source>
        <translation>The bath was warm</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Something else</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Yes</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Why was %1 late into the bath?</source>
        <comment>%1 is an ampoule</comment>
        <translation>Why was %1 late into the bath?</translation>
    </message>
    <message>
        <source>Why was %1 late into the diluent?</source>
        <comment>%1 is an ampoule</comment>
        <translation>Why was %1 late into the diluent?</translation>
    </message>
    <message>
        <source>%1: why was this limit passed? %2</source>
        <comment>limit, subject</comment>
        <translation>%1: why was this limit passed? %2</translation>
    </message>
    <message>
        <source>Why was %1 so short in the bath?</source>
        <comment>%1 is an ampoule</comment>
        <translation>Why was %1 so short in the bath?</translation>
    </message>
    <message>
        <source>Which ampoule broke? Recorded is %1.</source>
        <translation>Which ampoule broke? Recorded is %1.</translation>
    </message>
    <message>
        <source>Was anybody hurt?</source>
        <translation>Was anybody hurt?</translation>
    </message>
    <message>
        <source>Has the bath water been changed?</source>
        <translation>Has the bath water been changed?</translation>
    </message>
    <message>
        <source>ampoule %1</source>
        <translation>ampoule %1</translation>
    </message>
    <message>
        <source>None of these</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot %1 was scanned. Which ampoule was it?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReceiptText</name>
    <message>
        <source>How many of %1?</source>
        <translation>How many of %1?</translation>
    </message>
    <message>
        <source>Where does it stand?</source>
        <translation>Where does it stand?</translation>
    </message>
    <message>
        <source>Titre by the certificate, PFU a dose; 0: none given</source>
        <translation>Titre by the certificate, PFU a dose; 0: none given</translation>
    </message>
    <message>
        <source>Good to which day? Year, month, day, e.g. 20270131</source>
        <translation>Good to which day? Year, month, day, e.g. 20270131</translation>
    </message>
    <message>
        <source>How many doses has an ampoule?</source>
        <translation>How many doses has an ampoule?</translation>
    </message>
    <message>
        <source>Lot of %1</source>
        <translation>Lot of %1</translation>
    </message>
    <message>
        <source>another volume …</source>
        <translation>another volume …</translation>
    </message>
    <message>
        <source>How large are the bags?</source>
        <translation>How large are the bags?</translation>
    </message>
    <message>
        <source>Which consumable?</source>
        <translation>Which consumable?</translation>
    </message>
    <message>
        <source>ampoules</source>
        <translation>ampoules</translation>
    </message>
    <message>
        <source>diluent bags</source>
        <translation>diluent bags</translation>
    </message>
    <message>
        <source>needles</source>
        <translation>needles</translation>
    </message>
    <message>
        <source>other consumables …</source>
        <translation>other consumables …</translation>
    </message>
    <message>
        <source>back</source>
        <translation>back</translation>
    </message>
    <message>
        <source>What came in?</source>
        <translation>What came in?</translation>
    </message>
    <message>
        <source>Lot %1 is new here. What is it?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RecordText</name>
    <message>
        <source>entries</source>
        <translation>entries</translation>
    </message>
    <message>
        <source>last sound entry</source>
        <translation>last sound entry</translation>
    </message>
    <message>
        <source>its hash</source>
        <translation>its hash</translation>
    </message>
    <message>
        <source>The record is NOT sound. First at entry %1: %2</source>
        <comment>number, followed by a sentence</comment>
        <translation>The record is NOT sound. First at entry %1: %2</translation>
    </message>
    <message>
        <source>The record could not be read to its end. %1</source>
        <comment>followed by a sentence</comment>
        <translation>The record could not be read to its end. %1</translation>
    </message>
    <message>
        <source>The entries are sound; the indexes could not be compared with them.</source>
        <translation>The entries are sound; the indexes could not be compared with them.</translation>
    </message>
    <message>
        <source>The entries are sound, but the indexes do not agree with them.</source>
        <translation>The entries are sound, but the indexes do not agree with them.</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>everything</translation>
    </message>
    <message>
        <source>ampoules</source>
        <translation>ampoules</translation>
    </message>
    <message>
        <source>bags</source>
        <translation>bags</translation>
    </message>
    <message>
        <source>lines</source>
        <translation>lines</translation>
    </message>
    <message>
        <source>bath</source>
        <translation>bath</translation>
    </message>
    <message>
        <source>shift and checks</source>
        <translation>shift and checks</translation>
    </message>
    <message>
        <source>alarms</source>
        <translation>alarms</translation>
    </message>
    <message>
        <source>deviations and corrections</source>
        <translation>deviations and corrections</translation>
    </message>
    <message>
        <source>station</source>
        <translation>station</translation>
    </message>
    <message>
        <source>it cannot be read.</source>
        <translation>it cannot be read.</translation>
    </message>
    <message>
        <source>it is not written the way the station writes.</source>
        <translation>it is not written the way the station writes.</translation>
    </message>
    <message>
        <source>its time is no time.</source>
        <translation>its time is no time.</translation>
    </message>
    <message>
        <source>it was changed after it was written, or the one before it was.</source>
        <translation>it was changed after it was written, or the one before it was.</translation>
    </message>
    <message>
        <source>it is missing.</source>
        <translation>it is missing.</translation>
    </message>
    <message>
        <source>it is not in its place.</source>
        <translation>it is not in its place.</translation>
    </message>
    <message>
        <source>it is there twice.</source>
        <translation>it is there twice.</translation>
    </message>
    <message>
        <source>it comes from another station.</source>
        <translation>it comes from another station.</translation>
    </message>
    <message>
        <source>it is not on the list that came with the record.</source>
        <translation>it is not on the list that came with the record.</translation>
    </message>
    <message>
        <source>it is not the one that was noted elsewhere.</source>
        <translation>it is not the one that was noted elsewhere.</translation>
    </message>
    <message>
        <source>the record ends before it.</source>
        <translation>the record ends before it.</translation>
    </message>
    <message>
        <source>This computer does not know the time zone of the record.</source>
        <translation>This computer does not know the time zone of the record.</translation>
    </message>
    <message>
        <source>There is no such day in the time zone of the record.</source>
        <translation>There is no such day in the time zone of the record.</translation>
    </message>
    <message>
        <source>Entry %1 is missing. Verify the record.</source>
        <translation>Entry %1 is missing. Verify the record.</translation>
    </message>
    <message>
        <source>The files could not be written. Choose another place.</source>
        <translation>The files could not be written. Choose another place.</translation>
    </message>
    <message>
        <source>The files could not be written (%1). Choose another place.</source>
        <comment>the system&apos;s own words</comment>
        <translation>The files could not be written (%1). Choose another place.</translation>
    </message>
    <message>
        <source>this computer</source>
        <translation>this computer</translation>
    </message>
    <message>
        <source>The record is sound: nothing was changed, left out or put in.</source>
        <translation>The record is sound: nothing was changed, left out or put in.</translation>
    </message>
    <message>
        <source>what to do</source>
        <translation>what to do</translation>
    </message>
    <message>
        <source>Write this number and hash down and keep them elsewhere: only so is a record that was cut short found out.</source>
        <translation>Write this number and hash down and keep them elsewhere: only so is a record that was cut short found out.</translation>
    </message>
    <message>
        <source>Not exported. %1</source>
        <translation>Not exported. %1</translation>
    </message>
    <message>
        <source>There is no record of %1; nothing was written.</source>
        <translation>There is no record of %1; nothing was written.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n entries exported.</source>
        <comment>a day</comment>
        <translation>
            <numerusform>%1: %n entry exported.</numerusform>
            <numerusform>%1: %n entries exported.</numerusform>
        </translation>
    </message>
    <message>
        <source>folder</source>
        <translation>folder</translation>
    </message>
    <message>
        <source>files</source>
        <translation>files</translation>
    </message>
    <message>
        <source>last entry</source>
        <translation>last entry</translation>
    </message>
    <message>
        <source>Not copied. %1</source>
        <translation>Not copied. %1</translation>
    </message>
    <message>
        <source>file</source>
        <translation>file</translation>
    </message>
    <message>
        <source>The copy was written but is not good. %1</source>
        <translation>The copy was written but is not good. %1</translation>
    </message>
    <message>
        <source>Copied, read back and found sound.</source>
        <translation>Copied, read back and found sound.</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>kind</translation>
    </message>
    <message>
        <source>local time</source>
        <translation>local time</translation>
    </message>
    <message>
        <source>UTC</source>
        <translation>UTC</translation>
    </message>
    <message>
        <source>boot clock</source>
        <translation>boot clock</translation>
    </message>
    <message>
        <source>%1 µs since the computer&apos;s start</source>
        <translation>%1 µs since the computer&apos;s start</translation>
    </message>
    <message>
        <source>person</source>
        <translation>person</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>initials, how sure the record is of it</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>none: the station itself</source>
        <translation>none: the station itself</translation>
    </message>
    <message>
        <source>hash</source>
        <translation>hash</translation>
    </message>
    <message>
        <source>time of</source>
        <translation>time of</translation>
    </message>
    <message>
        <source>receipt: the tap&apos;s own time was not plausible</source>
        <translation>receipt: the tap&apos;s own time was not plausible</translation>
    </message>
    <message>
        <source>exact text</source>
        <translation>exact text</translation>
    </message>
    <message>
        <source>Entry %1: %2</source>
        <comment>number, sentence</comment>
        <translation>Entry %1: %2</translation>
    </message>
    <message>
        <source>Entry %1 by the station itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1 by %2, proven by PIN.</source>
        <comment>number, initials</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1 by %2, claimed.</source>
        <comment>number, initials</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>linked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it corrects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it takes back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what took it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it follows from this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a deviation from it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged anew by it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the deviation reviewed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its review</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a comment on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Local time %1, boot clock %2 s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, on another day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set back once, at entry %1; the order of the entries is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set back %1 times, first at entry %2; the order of the entries is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goes on from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, which was damaged after entry %2</source>
        <comment>a file; a number</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The seal at entry %1 is NOT good: %2</source>
        <comment>number, followed by a sentence</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stores</source>
        <translation type="unfinished">stores</translation>
    </message>
    <message>
        <source>people and signatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>first day, last day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>person %1</source>
        <translation type="unfinished">person %1</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation type="unfinished">bag %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation type="unfinished">lot %1</translation>
    </message>
    <message>
        <source>only %1</source>
        <comment>what is shown</comment>
        <translation type="unfinished">only %1</translation>
    </message>
    <message>
        <source>it was changed, or not made with the key that it names.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it seals another record than this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it was made with another key than the seals before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: the station has no key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the key %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without the day sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day sheet was not made. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no record of %1: no day sheet was made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>only exports of %n day(s) at most have it</source>
        <translation>
            <numerusform>only exports of %n day at most have it</numerusform>
            <numerusform>only exports of %n days at most have it</numerusform>
        </translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n entries, the first is %1: the sheets are without what they said. Verify the record.</source>
        <translation>
            <numerusform>%n entry, which is %1: the sheets are without what it said. Verify the record.</numerusform>
            <numerusform>%n entries, the first is %1: the sheets are without what they said. Verify the record.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Refusal</name>
    <message>
        <source>the bag&apos;s volume</source>
        <comment>what is outside what can be</comment>
        <translation>the bag&apos;s volume</translation>
    </message>
    <message>
        <source>the volume drawn into the syringe</source>
        <comment>what is outside what can be</comment>
        <translation>the volume drawn into the syringe</translation>
    </message>
    <message>
        <source>the volume left</source>
        <comment>what is outside what can be</comment>
        <translation>the volume left</translation>
    </message>
    <message>
        <source>the number of birds</source>
        <comment>what is outside what can be</comment>
        <translation>the number of birds</translation>
    </message>
    <message>
        <source>the time out of the cryogen</source>
        <comment>what is outside what can be</comment>
        <translation>the time out of the cryogen</translation>
    </message>
    <message>
        <source>the place of the cane</source>
        <comment>what is outside what can be</comment>
        <translation>the place of the cane</translation>
    </message>
    <message>
        <source>the text</source>
        <comment>what is outside what can be</comment>
        <translation>the text</translation>
    </message>
    <message>
        <source>There is no procedure card yet. Adopt one at set-up.</source>
        <translation>There is no procedure card yet. Adopt one at set-up.</translation>
    </message>
    <message>
        <source>No shift is open. Open the shift first.</source>
        <translation>No shift is open. Open the shift first.</translation>
    </message>
    <message>
        <source>The shift is open already.</source>
        <translation>The shift is open already.</translation>
    </message>
    <message>
        <source>%1 is neither in a bag nor lost. Say first how it ended.</source>
        <translation>%1 is neither in a bag nor lost. Say first how it ended.</translation>
    </message>
    <message>
        <source>%1 is still open. Take it down first.</source>
        <translation>%1 is still open. Take it down first.</translation>
    </message>
    <message>
        <source>Nobody is on duty. Enter your initials first.</source>
        <translation>Nobody is on duty. Enter your initials first.</translation>
    </message>
    <message>
        <source>The procedure card has no check named &quot;%1&quot;.</source>
        <translation>The procedure card has no check named &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>The check &quot;%1&quot; is open. Do it, or override it with a reason.</source>
        <translation>The check &quot;%1&quot; is open. Do it, or override it with a reason.</translation>
    </message>
    <message>
        <source>A reason is needed. Say why.</source>
        <translation>A reason is needed. Say why.</translation>
    </message>
    <message>
        <source>%1 exists already. Give the new one another name.</source>
        <translation>%1 exists already. Give the new one another name.</translation>
    </message>
    <message>
        <source>There is no such bag.</source>
        <translation>There is no such bag.</translation>
    </message>
    <message>
        <source>Which bag is not clear. Choose the bag.</source>
        <translation>Which bag is not clear. Choose the bag.</translation>
    </message>
    <message>
        <source>%1 is down. It takes nothing more.</source>
        <translation>%1 is down. It takes nothing more.</translation>
    </message>
    <message>
        <source>%1 is on hold. A shift lead decides about it.</source>
        <translation>%1 is on hold. A shift lead decides about it.</translation>
    </message>
    <message>
        <source>%1 is not on hold.</source>
        <translation>%1 is not on hold.</translation>
    </message>
    <message>
        <source>%1 is not inspected yet. Inspect it first.</source>
        <translation>%1 is not inspected yet. Inspect it first.</translation>
    </message>
    <message>
        <source>%1 has no ampoule in it yet.</source>
        <translation>%1 has no ampoule in it yet.</translation>
    </message>
    <message>
        <source>%1 is not mixed yet. Mix it first.</source>
        <translation>%1 is not mixed yet. Mix it first.</translation>
    </message>
    <message>
        <source>%1 is mixed already.</source>
        <translation>%1 is mixed already.</translation>
    </message>
    <message>
        <source>%1 is inspected already.</source>
        <translation>%1 is inspected already.</translation>
    </message>
    <message>
        <source>The diluent of %1 is drawn already.</source>
        <translation>The diluent of %1 is drawn already.</translation>
    </message>
    <message>
        <source>%1 hangs on no line yet.</source>
        <translation>%1 hangs on no line yet.</translation>
    </message>
    <message>
        <source>%1: take bag %2 down first.</source>
        <translation>%1: take bag %2 down first.</translation>
    </message>
    <message>
        <source>It hangs there already.</source>
        <translation>It hangs there already.</translation>
    </message>
    <message>
        <source>No ampoule can take that step now.</source>
        <translation>No ampoule can take that step now.</translation>
    </message>
    <message>
        <source>There is no such ampoule in this pull.</source>
        <translation>There is no such ampoule in this pull.</translation>
    </message>
    <message>
        <source>%1 is out already.</source>
        <translation>%1 is out already.</translation>
    </message>
    <message>
        <source>%1 is lost. It takes no more steps.</source>
        <translation>%1 is lost. It takes no more steps.</translation>
    </message>
    <message>
        <source>%1 is in a bag. It takes no more steps.</source>
        <translation>%1 is in a bag. It takes no more steps.</translation>
    </message>
    <message>
        <source>%1 has taken that step already.</source>
        <translation>%1 has taken that step already.</translation>
    </message>
    <message>
        <source>No ampoule is out of the cryogen yet.</source>
        <translation>No ampoule is out of the cryogen yet.</translation>
    </message>
    <message>
        <source>Which line is not clear. Choose the line.</source>
        <translation>Which line is not clear. Choose the line.</translation>
    </message>
    <message>
        <source>%1 is stopped already.</source>
        <translation>%1 is stopped already.</translation>
    </message>
    <message>
        <source>%1 is going already.</source>
        <translation>%1 is going already.</translation>
    </message>
    <message>
        <source>The birds counted so far are %1. The total cannot be less.</source>
        <translation>The birds counted so far are %1. The total cannot be less.</translation>
    </message>
    <message>
        <source>No such alarm is due now.</source>
        <translation>No such alarm is due now.</translation>
    </message>
    <message>
        <source>There is nothing to take back.</source>
        <translation>There is nothing to take back.</translation>
    </message>
    <message>
        <source>That is not of this shift, or was taken back.</source>
        <translation>That is not of this shift, or was taken back.</translation>
    </message>
    <message>
        <source>That cannot be corrected in this entry: %1.</source>
        <translation>That cannot be corrected in this entry: %1.</translation>
    </message>
    <message>
        <source>That value cannot be used: %1.</source>
        <translation>That value cannot be used: %1.</translation>
    </message>
    <message>
        <source>That is what stands there already.</source>
        <translation>That is what stands there already.</translation>
    </message>
    <message>
        <source>That question is not open any more.</source>
        <translation>That question is not open any more.</translation>
    </message>
    <message>
        <source>That is none of the choices.</source>
        <translation>That is none of the choices.</translation>
    </message>
    <message>
        <source>That is outside what can be: %1.</source>
        <translation>That is outside what can be: %1.</translation>
    </message>
    <message>
        <source>The document cannot be used. Look at &quot;%1&quot;.</source>
        <translation>The document cannot be used. Look at &quot;%1&quot;.</translation>
    </message>
    <message>
        <source>The station has not started yet. Wait a moment.</source>
        <translation>The station has not started yet. Wait a moment.</translation>
    </message>
    <message>
        <source>how many</source>
        <comment>what is outside what can be</comment>
        <translation>how many</translation>
    </message>
    <message>
        <source>the place in the stores</source>
        <comment>what is outside what can be</comment>
        <translation>the place in the stores</translation>
    </message>
    <message>
        <source>the birds an hour</source>
        <comment>what is outside what can be</comment>
        <translation>the birds an hour</translation>
    </message>
    <message>
        <source>the line&apos;s start</source>
        <comment>what is outside what can be</comment>
        <translation>the line&apos;s start</translation>
    </message>
    <message>
        <source>the breaks</source>
        <comment>what is outside what can be</comment>
        <translation>the breaks</translation>
    </message>
    <message>
        <source>the reason</source>
        <comment>what is outside what can be</comment>
        <translation>the reason</translation>
    </message>
    <message>
        <source>the lot</source>
        <comment>what is outside what can be</comment>
        <translation>the lot</translation>
    </message>
    <message>
        <source>what it is</source>
        <comment>what is outside what can be</comment>
        <translation>what it is</translation>
    </message>
    <message>
        <source>the doses of an ampoule</source>
        <comment>what is outside what can be</comment>
        <translation>the doses of an ampoule</translation>
    </message>
    <message>
        <source>the day of expiry</source>
        <comment>what is outside what can be</comment>
        <translation>the day of expiry</translation>
    </message>
    <message>
        <source>the titre</source>
        <comment>what is outside what can be</comment>
        <translation>the titre</translation>
    </message>
    <message>
        <source>the delivery</source>
        <comment>what is outside what can be</comment>
        <translation>the delivery</translation>
    </message>
    <message>
        <source>Lot %1 has expired. Take another, or ask a shift lead.</source>
        <translation>Lot %1 has expired. Take another, or ask a shift lead.</translation>
    </message>
    <message>
        <source>Lot %1 is in quarantine. Take another, or ask a shift lead.</source>
        <translation>Lot %1 is in quarantine. Take another, or ask a shift lead.</translation>
    </message>
    <message>
        <source>The lot is missing. Say which lot it is.</source>
        <translation>The lot is missing. Say which lot it is.</translation>
    </message>
    <message>
        <source>The stores do not know lot %1. Receive it first, or ask a shift lead.</source>
        <translation>The stores do not know lot %1. Receive it first, or ask a shift lead.</translation>
    </message>
    <message>
        <source>Lot %1 is in the stores with another expiry, titre or number of doses. Look at the label again.</source>
        <translation>Lot %1 is in the stores with another expiry, titre or number of doses. Look at the label again.</translation>
    </message>
    <message>
        <source>The stores have none of that: %1.</source>
        <translation>The stores have none of that: %1.</translation>
    </message>
    <message>
        <source>There are only %1. Count them if there are more.</source>
        <translation>There are only %1. Count them if there are more.</translation>
    </message>
    <message>
        <source>the scanned code</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not on the list of people. A shift lead can add them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first person on the list has to be a shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not for %1. Ask a shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no PIN yet. Set one in Set-up, under People.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such deviation in this shift, or it is reviewed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such vessel. Describe it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing of that lot belongs into the next bag. Put it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it back and take lot %1, or choose the other one in the stores.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such note in the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here the code of %1 is read where it is asked who signs. To be on duty, scan it on the bench page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the target</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReviewTalk</name>
    <message>
        <source>back</source>
        <translation type="unfinished">back</translation>
    </message>
    <message>
        <source>%1: signed by %2 at %3.</source>
        <comment>what, who, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: what was the cause?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cause, in your words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first add words to the cause …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is done so that it does not happen again?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is done, in your words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ends the hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume left …</source>
        <translation type="unfinished">volume left …</translation>
    </message>
    <message>
        <source>What becomes of %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The note for the bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much is left in the bag?</source>
        <translation type="unfinished">How much is left in the bag?</translation>
    </message>
    <message>
        <source>%1 is down: what was done with it?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReviewText</name>
    <message>
        <source>hands not ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ampoule stuck or frozen in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tool or bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan too tight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done in time, tapped late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another cause …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shown again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tool mended or replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something else …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use</source>
        <comment>what becomes of a bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use with a note</source>
        <comment>what becomes of a bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>discard</source>
        <comment>what becomes of a bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>started</source>
        <comment>a bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first ampoule in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixed</source>
        <comment>a bag</comment>
        <translation type="unfinished">mixed</translation>
    </message>
    <message>
        <source>hung</source>
        <comment>a bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down</source>
        <comment>a bag</comment>
        <translation type="unfinished">down</translation>
    </message>
    <message>
        <source>%1; the bag: %2</source>
        <comment>what was done, what becomes of the bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I did this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I looked at this and judged it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This may be used from now on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I saw this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A PIN has 4 to 8 digits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All digits are the same: anybody would try that. Choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Those digits follow each other: anybody would try that. Choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on hold</source>
        <comment>bag B2</comment>
        <translation type="unfinished">%1 on hold</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>limit, whom</comment>
        <translation type="unfinished">%1, %2</translation>
    </message>
    <message>
        <source>%1 birds</source>
        <translation type="unfinished">%1 birds</translation>
    </message>
    <message>
        <source>it was used</source>
        <comment>a bag that is down</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it was used, with a note</source>
        <comment>a bag that is down</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was left was thrown away</source>
        <comment>a bag that is down</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entry %1</source>
        <comment>number in the record</comment>
        <translation type="unfinished">entry %1</translation>
    </message>
</context>
<context>
    <name>ScanText</name>
    <message>
        <source>WRONG LOT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LOT EXPIRED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LOT IN QUARANTINE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UNKNOWN LOT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LABEL DIFFERS</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT READ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT TAKEN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scanned: person %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scanned: %1</source>
        <translation type="unfinished">Scanned: %1</translation>
    </message>
    <message>
        <source>Scanned: lot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scanned: lot %1, good to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lot %2</source>
        <extracomment>%1 is a component of the vaccine, %2 its lot.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diluent lot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SerialText</name>
    <message>
        <source>now</source>
        <translation type="unfinished">now</translation>
    </message>
    <message>
        <source>How fast does it send? Baud, as in its handbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does the number in its line mean?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It sent “%1”. Which number is it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has come yet. Which of these is like its line?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No such sensor can be: its resistance would not fall as it gets warmer. Compare A, B and C, with their signs and powers of ten.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>YES, THAT IS IT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type them again …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By these it has %1 Ω at 25 °C and %2 Ω at 0 °C. Is that your sensor?</source>
        <comment>resistances</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of its sensor (Steinhart–Hart)</source>
        <comment>a letter: A, B or C</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As its data sheet has it, with this power of ten. Seven decimals are enough.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetWriter</name>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished">page %1 of %2</translation>
    </message>
</context>
<context>
    <name>ShiftText</name>
    <message>
        <source>Bath: what does the thermometer show?</source>
        <translation>Bath: what does the thermometer show?</translation>
    </message>
    <message>
        <source>Next pull at: hours and minutes, as 0915</source>
        <translation>Next pull at: hours and minutes, as 0915</translation>
    </message>
    <message>
        <source>Who is on duty? Initials</source>
        <translation>Who is on duty? Initials</translation>
    </message>
    <message>
        <source>Who takes over? Initials</source>
        <translation>Who takes over? Initials</translation>
    </message>
    <message>
        <source>Which thermometer?</source>
        <translation>Which thermometer?</translation>
    </message>
    <message numerus="yes">
        <source>in %n minute(s)</source>
        <translation>
            <numerusform>in %n minute</numerusform>
            <numerusform>in %n minutes</numerusform>
        </translation>
    </message>
    <message>
        <source>at …</source>
        <translation>at …</translation>
    </message>
    <message>
        <source>When is the next pull?</source>
        <translation>When is the next pull?</translation>
    </message>
    <message>
        <source>Note for the record</source>
        <translation>Note for the record</translation>
    </message>
    <message>
        <source>Cane out too long: canister and cane</source>
        <translation>Cane out too long: canister and cane</translation>
    </message>
    <message>
        <source>How long was it out?</source>
        <translation>How long was it out?</translation>
    </message>
    <message>
        <source>an ampoule burst</source>
        <translation>an ampoule burst</translation>
    </message>
    <message>
        <source>dirty</source>
        <translation>dirty</translation>
    </message>
    <message>
        <source>fresh water</source>
        <translation>fresh water</translation>
    </message>
    <message>
        <source>other</source>
        <translation>other</translation>
    </message>
    <message>
        <source>Bath water changed: why?</source>
        <translation>Bath water changed: why?</translation>
    </message>
    <message>
        <source>SHIFT CLOSED</source>
        <translation>SHIFT CLOSED</translation>
    </message>
    <message>
        <source>every bag is down</source>
        <translation>every bag is down</translation>
    </message>
    <message>
        <source>End of the shift</source>
        <translation>End of the shift</translation>
    </message>
    <message>
        <source>later</source>
        <translation>later</translation>
    </message>
    <message>
        <source>Who is on duty?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who takes over?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShortFact</name>
    <message>
        <source>shift open</source>
        <translation>shift open</translation>
    </message>
    <message>
        <source>shift closed</source>
        <translation>shift closed</translation>
    </message>
    <message>
        <source>on duty: %1</source>
        <translation>on duty: %1</translation>
    </message>
    <message>
        <source>check done</source>
        <translation>check done</translation>
    </message>
    <message>
        <source>check failed</source>
        <translation>check failed</translation>
    </message>
    <message>
        <source>check overridden</source>
        <translation>check overridden</translation>
    </message>
    <message>
        <source>bath %1</source>
        <comment>a temperature</comment>
        <translation>bath %1</translation>
    </message>
    <message>
        <source>bath: no reading</source>
        <translation>bath: no reading</translation>
    </message>
    <message>
        <source>bath water changed</source>
        <translation>bath water changed</translation>
    </message>
    <message>
        <source>%1 started</source>
        <translation>%1 started</translation>
    </message>
    <message>
        <source>%1 inspected</source>
        <translation>%1 inspected</translation>
    </message>
    <message>
        <source>%1 not good</source>
        <translation>%1 not good</translation>
    </message>
    <message>
        <source>%1: diluent drawn</source>
        <translation>%1: diluent drawn</translation>
    </message>
    <message>
        <source>%1 mixed</source>
        <translation>%1 mixed</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>bag, line</comment>
        <translation>%1 on %2</translation>
    </message>
    <message>
        <source>%1 swirled</source>
        <translation>%1 swirled</translation>
    </message>
    <message>
        <source>%1 on hold</source>
        <translation>%1 on hold</translation>
    </message>
    <message>
        <source>%1 released</source>
        <translation>%1 released</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 down</translation>
    </message>
    <message>
        <source>ampoule %1: %2</source>
        <comment>number, why it was lost</comment>
        <translation>ampoule %1: %2</translation>
    </message>
    <message>
        <source>cane exposed</source>
        <translation>cane exposed</translation>
    </message>
    <message>
        <source>next pull planned</source>
        <translation>next pull planned</translation>
    </message>
    <message>
        <source>%1: birds counted</source>
        <translation>%1: birds counted</translation>
    </message>
    <message>
        <source>%1: needle changed</source>
        <translation>%1: needle changed</translation>
    </message>
    <message>
        <source>%1 stopped</source>
        <translation>%1 stopped</translation>
    </message>
    <message>
        <source>%1 going</source>
        <translation>%1 going</translation>
    </message>
    <message>
        <source>%1: dose checked</source>
        <translation>%1: dose checked</translation>
    </message>
    <message>
        <source>deviation</source>
        <translation>deviation</translation>
    </message>
    <message>
        <source>judged again</source>
        <translation>judged again</translation>
    </message>
    <message>
        <source>alarm heard</source>
        <translation>alarm heard</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corrected</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>taken back</translation>
    </message>
    <message>
        <source>answered</source>
        <translation>answered</translation>
    </message>
    <message>
        <source>note made</source>
        <translation>note made</translation>
    </message>
    <message>
        <source>not taken</source>
        <comment>a tap was refused</comment>
        <translation>not taken</translation>
    </message>
    <message>
        <source>scanned</source>
        <translation>scanned</translation>
    </message>
    <message>
        <source>sound heard</source>
        <translation>sound heard</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>step, numbers of ampoules</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>card adopted</source>
        <translation>card adopted</translation>
    </message>
    <message>
        <source>thermometer noted</source>
        <translation>thermometer noted</translation>
    </message>
    <message>
        <source>%1 planned</source>
        <translation>%1 planned</translation>
    </message>
    <message>
        <source>stores: received</source>
        <translation>stores: received</translation>
    </message>
    <message>
        <source>stores: moved</source>
        <translation>stores: moved</translation>
    </message>
    <message>
        <source>stores: counted</source>
        <translation>stores: counted</translation>
    </message>
    <message>
        <source>stores: taken out</source>
        <translation>stores: taken out</translation>
    </message>
    <message>
        <source>lot %1 in quarantine</source>
        <translation>lot %1 in quarantine</translation>
    </message>
    <message>
        <source>lot %1 released</source>
        <translation>lot %1 released</translation>
    </message>
    <message>
        <source>lot %1 allowed</source>
        <translation>lot %1 allowed</translation>
    </message>
    <message>
        <source>lot %1 chosen</source>
        <translation>lot %1 chosen</translation>
    </message>
    <message>
        <source>%1: birds looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel described</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel level read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 listed</source>
        <comment>a person</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN not right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deviation reviewed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note commented on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>card approved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seal agrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seal does not agree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copy made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chart limits chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record goes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>baseline withdrawn</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SignText</name>
    <message>
        <source>Signed %1: %2</source>
        <comment>time, meaning</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PIN of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No shift lead with a PIN is listed. List one: set-up, people.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who signs?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message numerus="yes">
        <source>%n ampoule(s)</source>
        <comment>in the stores</comment>
        <translation>
            <numerusform>%n ampoule</numerusform>
            <numerusform>%n ampoules</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bag(s)</source>
        <comment>in the stores</comment>
        <translation>
            <numerusform>%n bag</numerusform>
            <numerusform>%n bags</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <comment>in the stores</comment>
        <translation>
            <numerusform>%n piece</numerusform>
            <numerusform>%n pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dose(s)</source>
        <comment>in the stores</comment>
        <translation>
            <numerusform>%n dose</numerusform>
            <numerusform>%n doses</numerusform>
        </translation>
    </message>
    <message>
        <source>a text file in UTF-8</source>
        <translation>a text file in UTF-8</translation>
    </message>
    <message>
        <source>a quote that is closed at the end of its cell</source>
        <translation>a quote that is closed at the end of its cell</translation>
    </message>
    <message>
        <source>a first line that names the columns</source>
        <translation>a first line that names the columns</translation>
    </message>
    <message>
        <source>one of kind, item, lot, doses, volume_ml, count, expires, titre_pfu, vessel, canister, cane, delivery</source>
        <translation>one of kind, item, lot, doses, volume_ml, count, expires, titre_pfu, vessel, canister, cane, delivery</translation>
    </message>
    <message>
        <source>each column once</source>
        <translation>each column once</translation>
    </message>
    <message>
        <source>that column</source>
        <translation>that column</translation>
    </message>
    <message>
        <source>no more cells than columns</source>
        <translation>no more cells than columns</translation>
    </message>
    <message>
        <source>ampoule, diluent or consumable</source>
        <translation>ampoule, diluent or consumable</translation>
    </message>
    <message>
        <source>a value, which this kind needs</source>
        <translation>a value, which this kind needs</translation>
    </message>
    <message>
        <source>nothing, as this kind has no such value</source>
        <translation>nothing, as this kind has no such value</translation>
    </message>
    <message>
        <source>a component of the procedure card</source>
        <translation>a component of the procedure card</translation>
    </message>
    <message>
        <source>a short text on one line</source>
        <translation>a short text on one line</translation>
    </message>
    <message>
        <source>a whole number, at least 1</source>
        <translation>a whole number, at least 1</translation>
    </message>
    <message>
        <source>millilitres above 0, with at most three decimals</source>
        <translation>millilitres above 0, with at most three decimals</translation>
    </message>
    <message>
        <source>a day as YYYY-MM-DD</source>
        <translation>a day as YYYY-MM-DD</translation>
    </message>
    <message>
        <source>what the stores have of that lot</source>
        <translation>what the stores have of that lot</translation>
    </message>
    <message>
        <source>ampoules</source>
        <translation>ampoules</translation>
    </message>
    <message>
        <source>diluent</source>
        <translation>diluent</translation>
    </message>
    <message>
        <source>consumables</source>
        <translation>consumables</translation>
    </message>
    <message>
        <source>used</source>
        <comment>why something left the stores</comment>
        <translation>used</translation>
    </message>
    <message>
        <source>broken</source>
        <comment>why something left the stores</comment>
        <translation>broken</translation>
    </message>
    <message>
        <source>expired</source>
        <comment>why something left the stores</comment>
        <translation>expired</translation>
    </message>
    <message>
        <source>thawed</source>
        <comment>why something left the stores</comment>
        <translation>thawed</translation>
    </message>
    <message>
        <source>another reason</source>
        <comment>why something left the stores</comment>
        <translation>another reason</translation>
    </message>
    <message>
        <source>fit for use</source>
        <comment>a lot</comment>
        <translation>fit for use</translation>
    </message>
    <message>
        <source>expired</source>
        <comment>a lot</comment>
        <translation>expired</translation>
    </message>
    <message>
        <source>in quarantine</source>
        <comment>a lot</comment>
        <translation>in quarantine</translation>
    </message>
    <message>
        <source>unknown</source>
        <comment>a lot</comment>
        <translation>unknown</translation>
    </message>
    <message>
        <source>diluent %1</source>
        <comment>the volume of a bag</comment>
        <translation>diluent %1</translation>
    </message>
    <message>
        <source>%1, lot %2</source>
        <comment>component or diluent, its lot</comment>
        <translation>%1, lot %2</translation>
    </message>
    <message>
        <source>no place named</source>
        <translation>no place named</translation>
    </message>
    <message>
        <source>the cane was out of the cryogen too long</source>
        <translation>the cane was out of the cryogen too long</translation>
    </message>
    <message>
        <source>%1: %2 too few for what is planned.</source>
        <translation>%1: %2 too few for what is planned.</translation>
    </message>
    <message>
        <source>%1: expired, and %2 still there.</source>
        <translation>%1: expired, and %2 still there.</translation>
    </message>
    <message>
        <source>%1: %2 in quarantine.</source>
        <translation>%1: %2 in quarantine.</translation>
    </message>
    <message numerus="yes">
        <source>%1: good for %n more day(s).</source>
        <comment>a lot near its expiry</comment>
        <translation>
            <numerusform>%1: good for %n more day.</numerusform>
            <numerusform>%1: good for %n more days.</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing</source>
        <comment>found in a cell</comment>
        <translation>nothing</translation>
    </message>
    <message>
        <source>“%1”</source>
        <comment>found in a cell</comment>
        <translation>“%1”</translation>
    </message>
    <message>
        <source>Line %1: expected %2.</source>
        <translation>Line %1: expected %2.</translation>
    </message>
    <message>
        <source>Line %1, column %2: found %3, expected %4.</source>
        <translation>Line %1, column %2: found %3, expected %4.</translation>
    </message>
    <message>
        <source>does not add up</source>
        <translation>does not add up</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>not counted</translation>
    </message>
    <message>
        <source>adds up</source>
        <translation>adds up</translation>
    </message>
    <message>
        <source>ampoules out = in bags + lost</source>
        <translation>ampoules out = in bags + lost</translation>
    </message>
    <message>
        <source>doses of %1: made up, used and left</source>
        <translation>doses of %1: made up, used and left</translation>
    </message>
    <message>
        <source>volume: birds × dose, and what is gone</source>
        <translation>volume: birds × dose, and what is gone</translation>
    </message>
</context>
<context>
    <name>Subject</name>
    <message>
        <source>ampoule %1</source>
        <translation>ampoule %1</translation>
    </message>
    <message>
        <source>pull %1</source>
        <comment>a set of ampoules taken out together</comment>
        <translation>pull %1</translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation>bag %1</translation>
    </message>
    <message>
        <source>line %1</source>
        <comment>where birds are vaccinated</comment>
        <translation>line %1</translation>
    </message>
    <message>
        <source>the bath</source>
        <translation>the bath</translation>
    </message>
    <message>
        <source>the bench</source>
        <translation>the bench</translation>
    </message>
    <message>
        <source>the station</source>
        <comment>this computer</comment>
        <translation>the station</translation>
    </message>
    <message>
        <source>ampoule %1 of pull %2</source>
        <translation>ampoule %1 of pull %2</translation>
    </message>
</context>
<context>
    <name>ThermometerText</name>
    <message>
        <source>Its name, as on its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The smallest step it shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smallest step …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drift …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>± %1 °C since calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>speed …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 baud</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pattern …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it sends …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in use again …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>connection …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>OUT OF USE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drift since calibration, either way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How is the same thermometer connected now? Its calibration stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which thermometer is new?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: what is different?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT IN THE BATH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>IN THE BATH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any that is read counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it alone, and readings by hand</source>
        <translation type="unfinished"></translation>
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
        <translation>%1 over</translation>
    </message>
    <message>
        <source>%1 left</source>
        <comment>how long until the limit, e.g. 41 min left</comment>
        <translation>%1 left</translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>person %1</source>
        <comment>in place of a name</comment>
        <translation type="unfinished">person %1</translation>
    </message>
    <message>
        <source>the card&apos;s limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moving range: how far each is from the one before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit of the range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond its limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No point breaks a rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) break a rule.</source>
        <translation>
            <numerusform>%n point breaks a rule.</numerusform>
            <numerusform>%n points break a rule.</numerusform>
        </translation>
    </message>
    <message>
        <source>as it scatters, the limit will be passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the limit is just kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the limit is kept with room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up to the card&apos;s %1 the capability is %2: %3.</source>
        <comment>limit, figure, words</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down to the card&apos;s %1 the capability is %2: %3.</source>
        <comment>limit, figure, words</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out of cryogen → in bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in bath → in diluent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath at pulls</source>
        <comment>its temperature</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dose: error of the mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dose: spread of the shots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 beyond 3 sigma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 of 3 beyond 2 sigma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 of 5 beyond 1 sigma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>8 on one side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>9 on one side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>6 rising or falling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>14 up and down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>15 within 1 sigma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>8 beyond 1 sigma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>s</source>
        <comment>unit: seconds</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>person %1</source>
        <translation type="unfinished">person %1</translation>
    </message>
    <message>
        <source>bench %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation type="unfinished">lot %1</translation>
    </message>
    <message>
        <source>pull %1 (%2)</source>
        <comment>number, ampoules</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breaks a rule: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NO POINTS</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing of this in these days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>TOO FEW POINTS</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The baseline has %1 of at least %2 points: no limits are drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of at least %2 points: no limits are drawn yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LIMITS FROM THE BASELINE</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Of %n point(s).</source>
        <comment>limits come from</comment>
        <translation>
            <numerusform>Of %n point.</numerusform>
            <numerusform>Of %n points.</numerusform>
        </translation>
    </message>
    <message>
        <source>These are few; 20 are usual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No baseline is chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LIMITS FROM THESE POINTS</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All points of the limits are alike: there is no capability.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n more without a value: not timed, read or weighed.</source>
        <translation>
            <numerusform>%n more without a value: not timed, read or weighed.</numerusform>
            <numerusform>%n more without a value: not timed, read or weighed.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>VesselAsk</name>
    <message>
        <source>Row %1 of the table: what does the dipstick show?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much is in it at %1 mm?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another row …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>that is the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last row out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>later</source>
        <comment>goes on with it later</comment>
        <translation type="unfinished">later</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s), from %1 to %2</source>
        <comment>of a dipstick&apos;s table</comment>
        <translation>
            <numerusform>%n row, from %1 to %2</numerusform>
            <numerusform>%n rows, from %1 to %2</numerusform>
        </translation>
    </message>
    <message>
        <source>Which level must it never fall below?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much does it usually lose? See its papers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How often an hour is its air changed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How large is the room it stands in?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its room …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its room says how much oxygen is left if it all boils off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A closed room: 0.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VesselText</name>
    <message>
        <source>vessel …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another …</source>
        <comment>vessel</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the dipstick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Describe it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>describe anew …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>describe …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a vessel first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new one …</source>
        <comment>vessel</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which vessel?</source>
        <translation type="unfinished">Which vessel?</translation>
    </message>
    <message>
        <source>What is the vessel called?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does the dipstick show?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not filled since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filled since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm. Was it filled since the reading before?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vacuum is sound: the vessel loses no more than usual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vacuum is suspect: the vessel loses more than usual. Read its level more often.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vacuum is failing: the vessel loses far more than usual. Move the ampoules.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The level is below its minimum: fill it now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the level again tomorrow: a loss takes two readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not for a thousand years</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; it lies in %2</source>
        <comment>a loss and its interval</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; too few readings to say how surely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the soonest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no lack of oxygen by this estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too little oxygen: below 19.5 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave the room: below 18 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>danger to life: below 14 % nobody helps himself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oxygen, if all of it boils off at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>oxygen, and what that means</comment>
        <translation type="unfinished">%1: %2</translation>
    </message>
    <message>
        <source>oxygen, with its usual loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An estimate. Cold gas sinks and does not spread evenly: a meter at the bench stays necessary, and local rules go first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Describe the vessel first: its dipstick&apos;s table, its minimum, its usual loss.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dip the vessel and enter its level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2; minimum: %3</source>
        <comment>litres</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too high from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 a day; usual: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save</source>
        <comment>a picture of the chart</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings show no loss: read the level again tomorrow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; one more reading has to confirm that</source>
        <comment>a loss</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unfinished: goes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more …</source>
        <comment>vessels</comment>
        <translation type="unfinished">more …</translation>
    </message>
    <message>
        <source>a closed room: below 19.5 % after %1, and falling on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message numerus="yes">
        <source>OUT OF CRYOGEN</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>OUT OF CRYOGEN</numerusform>
            <numerusform>OUT OF CRYOGEN</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>IN BATH</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>IN BATH</numerusform>
            <numerusform>IN BATH</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>OPENED</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>OPENED</numerusform>
            <numerusform>OPENED</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>IN DILUENT</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>IN DILUENT</numerusform>
            <numerusform>IN DILUENT</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>RINSED</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>RINSED</numerusform>
            <numerusform>RINSED</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>IN BAG</source>
        <comment>big button: done, for %n ampoules</comment>
        <translation>
            <numerusform>IN BAG</numerusform>
            <numerusform>IN BAG</numerusform>
        </translation>
    </message>
    <message>
        <source>SHIFT OPEN</source>
        <comment>big button: the shift has been opened</comment>
        <translation>SHIFT OPEN</translation>
    </message>
    <message>
        <source>SET UP</source>
        <comment>big button: the bench has been set up</comment>
        <translation>SET UP</translation>
    </message>
    <message>
        <source>BAG STARTED</source>
        <comment>big button</comment>
        <translation>BAG STARTED</translation>
    </message>
    <message>
        <source>INSPECTED</source>
        <comment>big button: the diluent bag, found good</comment>
        <translation>INSPECTED</translation>
    </message>
    <message>
        <source>DILUENT DRAWN</source>
        <comment>big button: into the syringe</comment>
        <translation>DILUENT DRAWN</translation>
    </message>
    <message>
        <source>MIXED</source>
        <comment>big button: the bag</comment>
        <translation>MIXED</translation>
    </message>
    <message>
        <source>HUNG</source>
        <comment>big button: the bag, on its line</comment>
        <translation>HUNG</translation>
    </message>
    <message>
        <source>NOTHING TO DO</source>
        <comment>big button: nothing is next</comment>
        <translation>NOTHING TO DO</translation>
    </message>
    <message numerus="yes">
        <source>%n ampoule(s)</source>
        <translation>
            <numerusform>%n ampoule</numerusform>
            <numerusform>%n ampoules</numerusform>
        </translation>
    </message>
    <message>
        <source>out</source>
        <comment>where the ampoule is: out of the cryogen</comment>
        <translation>out</translation>
    </message>
    <message>
        <source>in bath</source>
        <comment>where the ampoule is</comment>
        <translation>in bath</translation>
    </message>
    <message>
        <source>opened</source>
        <comment>how the ampoule is</comment>
        <translation>opened</translation>
    </message>
    <message>
        <source>in diluent</source>
        <comment>where the ampoule&apos;s content is</comment>
        <translation>in diluent</translation>
    </message>
    <message>
        <source>rinsed</source>
        <comment>how the ampoule is</comment>
        <translation>rinsed</translation>
    </message>
    <message>
        <source>in bag</source>
        <comment>where the ampoule&apos;s content is</comment>
        <translation>in bag</translation>
    </message>
    <message>
        <source>lost: %1</source>
        <comment>an ampoule, and why</comment>
        <translation>lost: %1</translation>
    </message>
    <message>
        <source>in bag %1</source>
        <comment>an ampoule&apos;s content</comment>
        <translation>in bag %1</translation>
    </message>
    <message>
        <source>%1, lot %2</source>
        <comment>component of the vaccine and its lot</comment>
        <translation>%1, lot %2</translation>
    </message>
    <message>
        <source>heads-up</source>
        <comment>first level: a limit is near</comment>
        <translation>heads-up</translation>
    </message>
    <message>
        <source>limit</source>
        <comment>second level: the limit is passed</comment>
        <translation>limit</translation>
    </message>
    <message>
        <source>overrun</source>
        <comment>third level: passed and still nobody acted</comment>
        <translation>overrun</translation>
    </message>
    <message>
        <source>broken</source>
        <comment>an ampoule was lost</comment>
        <translation>broken</translation>
    </message>
    <message>
        <source>dropped</source>
        <comment>an ampoule was lost</comment>
        <translation>dropped</translation>
    </message>
    <message>
        <source>abandoned</source>
        <comment>an ampoule was lost on purpose</comment>
        <translation>abandoned</translation>
    </message>
    <message>
        <source>handed over</source>
        <comment>an ampoule went to another bench</comment>
        <translation>handed over</translation>
    </message>
    <message>
        <source>leak</source>
        <comment>why a bag is on hold</comment>
        <translation>leak</translation>
    </message>
    <message>
        <source>colour</source>
        <comment>why a bag is on hold</comment>
        <translation>colour</translation>
    </message>
    <message>
        <source>wrong lot</source>
        <comment>why a bag is on hold</comment>
        <translation>wrong lot</translation>
    </message>
    <message>
        <source>age unknown</source>
        <comment>why a bag is on hold</comment>
        <translation>age unknown</translation>
    </message>
    <message>
        <source>failed inspection</source>
        <comment>why a bag is on hold</comment>
        <translation>failed inspection</translation>
    </message>
    <message>
        <source>another reason</source>
        <comment>why a bag is on hold</comment>
        <translation>another reason</translation>
    </message>
    <message>
        <source>empty</source>
        <comment>why a bag was taken down</comment>
        <translation>empty</translation>
    </message>
    <message>
        <source>past its time</source>
        <comment>why a bag was taken down</comment>
        <translation>past its time</translation>
    </message>
    <message>
        <source>discarded</source>
        <comment>why a bag was taken down</comment>
        <translation>discarded</translation>
    </message>
    <message>
        <source>work finished</source>
        <comment>why a bag was taken down</comment>
        <translation>work finished</translation>
    </message>
    <message>
        <source>time out of the cryogen</source>
        <comment>name of a limit</comment>
        <translation>time out of the cryogen</translation>
    </message>
    <message>
        <source>time from bath to diluent</source>
        <comment>name of a limit</comment>
        <translation>time from bath to diluent</translation>
    </message>
    <message>
        <source>time a bag is in use</source>
        <comment>name of a limit</comment>
        <translation>time a bag is in use</translation>
    </message>
    <message>
        <source>bath when ampoules go in</source>
        <comment>name of a limit</comment>
        <translation>bath when ampoules go in</translation>
    </message>
    <message>
        <source>temperature of the diluent</source>
        <comment>name of a limit</comment>
        <translation>temperature of the diluent</translation>
    </message>
    <message>
        <source>bath before the next pull</source>
        <comment>name of a limit</comment>
        <translation>bath before the next pull</translation>
    </message>
    <message>
        <source>age of the bath reading</source>
        <comment>name of a limit</comment>
        <translation>age of the bath reading</translation>
    </message>
    <message>
        <source>swirling the bag</source>
        <comment>name of a limit</comment>
        <translation>swirling the bag</translation>
    </message>
    <message>
        <source>birds with one needle</source>
        <comment>name of a limit</comment>
        <translation>birds with one needle</translation>
    </message>
    <message>
        <source>dose check</source>
        <comment>name of a limit</comment>
        <translation>dose check</translation>
    </message>
    <message>
        <source>start of the next pull</source>
        <comment>name of a limit</comment>
        <translation>start of the next pull</translation>
    </message>
    <message>
        <source>until in the bath</source>
        <comment>under the time left</comment>
        <translation>until in the bath</translation>
    </message>
    <message>
        <source>until in diluent</source>
        <comment>under the time left</comment>
        <translation>until in diluent</translation>
    </message>
    <message>
        <source>until it is down</source>
        <comment>under the time left</comment>
        <translation>until it is down</translation>
    </message>
    <message>
        <source>until the bath is right</source>
        <comment>under the time left</comment>
        <translation>until the bath is right</translation>
    </message>
    <message>
        <source>until the diluent is right</source>
        <comment>under the time left</comment>
        <translation>until the diluent is right</translation>
    </message>
    <message>
        <source>until the bath is measured</source>
        <comment>under the time left</comment>
        <translation>until the bath is measured</translation>
    </message>
    <message>
        <source>until the next swirl</source>
        <comment>under the time left</comment>
        <translation>until the next swirl</translation>
    </message>
    <message>
        <source>until the needle is changed</source>
        <comment>under the time left</comment>
        <translation>until the needle is changed</translation>
    </message>
    <message>
        <source>until the dose check</source>
        <comment>under the time left</comment>
        <translation>until the dose check</translation>
    </message>
    <message>
        <source>until the next pull</source>
        <comment>under the time left</comment>
        <translation>until the next pull</translation>
    </message>
    <message>
        <source>too long out of the cryogen</source>
        <comment>under the time that is over</comment>
        <translation>too long out of the cryogen</translation>
    </message>
    <message>
        <source>bath not right</source>
        <comment>under the time that is over</comment>
        <translation>bath not right</translation>
    </message>
    <message>
        <source>diluent not right</source>
        <comment>under the time that is over</comment>
        <translation>diluent not right</translation>
    </message>
    <message>
        <source>bath not measured</source>
        <comment>under the time that is over</comment>
        <translation>bath not measured</translation>
    </message>
    <message>
        <source>swirl is late</source>
        <comment>under the time that is over</comment>
        <translation>swirl is late</translation>
    </message>
    <message>
        <source>needle change is late</source>
        <comment>under the time that is over</comment>
        <translation>needle change is late</translation>
    </message>
    <message>
        <source>dose check is late</source>
        <comment>under the time that is over</comment>
        <translation>dose check is late</translation>
    </message>
    <message>
        <source>pull is late</source>
        <comment>under the time that is over</comment>
        <translation>pull is late</translation>
    </message>
    <message>
        <source>inside</source>
        <comment>the bath&apos;s temperature against its tolerance</comment>
        <translation>inside</translation>
    </message>
    <message>
        <source>not sure</source>
        <comment>the bath&apos;s temperature against its tolerance</comment>
        <translation>not sure</translation>
    </message>
    <message>
        <source>outside</source>
        <comment>the bath&apos;s temperature against its tolerance</comment>
        <translation>outside</translation>
    </message>
    <message>
        <source>The thermometer&apos;s own check failed.</source>
        <translation>The thermometer&apos;s own check failed.</translation>
    </message>
    <message>
        <source>The thermometer has not measured yet.</source>
        <translation>The thermometer has not measured yet.</translation>
    </message>
    <message>
        <source>No thermometer is connected.</source>
        <translation>No thermometer is connected.</translation>
    </message>
    <message>
        <source>The thermometer&apos;s line is shorted.</source>
        <translation>The thermometer&apos;s line is shorted.</translation>
    </message>
    <message>
        <source>The thermometer gave no answer.</source>
        <translation>The thermometer gave no answer.</translation>
    </message>
    <message>
        <source>The thermometer&apos;s answer cannot be read.</source>
        <translation>The thermometer&apos;s answer cannot be read.</translation>
    </message>
    <message>
        <source>That is no temperature of a water bath.</source>
        <translation>That is no temperature of a water bath.</translation>
    </message>
    <message>
        <source>Water cannot change that fast.</source>
        <translation>Water cannot change that fast.</translation>
    </message>
    <message>
        <source>The thermometer is gone.</source>
        <translation>The thermometer is gone.</translation>
    </message>
    <message>
        <source>beyond the calibrated range</source>
        <comment>a reading</comment>
        <translation>beyond the calibrated range</translation>
    </message>
    <message>
        <source>calibration is overdue</source>
        <comment>a thermometer</comment>
        <translation>calibration is overdue</translation>
    </message>
    <message>
        <source>not calibrated</source>
        <comment>a thermometer</comment>
        <translation>not calibrated</translation>
    </message>
    <message>
        <source>too uncertain to say inside</source>
        <comment>a thermometer</comment>
        <translation>too uncertain to say inside</translation>
    </message>
    <message>
        <source>by name</source>
        <comment>how a person is known: one tap on a name</comment>
        <translation>by name</translation>
    </message>
    <message>
        <source>proven</source>
        <comment>how a person is known: by PIN or badge</comment>
        <translation>proven</translation>
    </message>
    <message>
        <source>minor</source>
        <comment>severity of a deviation</comment>
        <translation>minor</translation>
    </message>
    <message>
        <source>major</source>
        <comment>severity of a deviation</comment>
        <translation>major</translation>
    </message>
    <message>
        <source>critical</source>
        <comment>severity of a deviation</comment>
        <translation>critical</translation>
    </message>
    <message>
        <source>limit</source>
        <comment>sort of a rule: passing it is a deviation</comment>
        <translation>limit</translation>
    </message>
    <message>
        <source>reminder</source>
        <comment>sort of a rule: passing it is only late</comment>
        <translation>reminder</translation>
    </message>
    <message>
        <source>recorded</source>
        <comment>status of the record</comment>
        <translation>recorded</translation>
    </message>
    <message>
        <source>recording …</source>
        <comment>status of the record: something waits</comment>
        <translation>recording …</translation>
    </message>
    <message>
        <source>NOT CONFIRMED</source>
        <comment>status of the record</comment>
        <translation>NOT CONFIRMED</translation>
    </message>
    <message>
        <source>NOT RECORDED</source>
        <comment>status of the record</comment>
        <translation>NOT RECORDED</translation>
    </message>
    <message>
        <source>to the diluent</source>
        <comment>under the time that is over</comment>
        <translation>to the diluent</translation>
    </message>
    <message>
        <source>take it down</source>
        <comment>under the time that is over</comment>
        <translation>take it down</translation>
    </message>
    <message>
        <source>a lot expired, in quarantine or unknown</source>
        <comment>why a bag is on hold</comment>
        <translation>a lot expired, in quarantine or unknown</translation>
    </message>
    <message>
        <source>vaccinator</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shift lead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>auditor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done by me</source>
        <comment>meaning of a signature</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reviewed</source>
        <comment>meaning of a signature</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>approved</source>
        <comment>meaning of a signature</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>witnessed</source>
        <comment>meaning of a signature</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no sound</source>
        <comment>name of an alarm</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not recorded</source>
        <comment>name of an alarm</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clock changed</source>
        <comment>name of an alarm</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel loses too much</source>
        <comment>name of an alarm</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its check failed</source>
        <comment>why a thermometer gives no reading</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured yet</source>
        <comment>why a thermometer gives no reading</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not connected</source>
        <comment>why a thermometer gives no reading</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line shorted</source>
        <comment>why a thermometer gives no reading</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no answer</source>
        <comment>why a thermometer gives no reading</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>answer unreadable</source>
        <comment>why a thermometer gives no reading</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>impossible value</source>
        <comment>why a thermometer gives no reading</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>changed too fast</source>
        <comment>why a thermometer gives no reading</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermometer gone</source>
        <comment>why a thermometer gives no reading</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel low</source>
        <comment>name of an alarm</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no thermometer reading</source>
        <comment>name of an alarm</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::app::Session</name>
    <message>
        <source>Bathside is running already with this trail (process %1). Use that one, or end it first: %2</source>
        <translation>Bathside is running already with this trail (process %1). Use that one, or end it first: %2</translation>
    </message>
    <message>
        <source>The trail&apos;s folder cannot be written to (%1): %2</source>
        <translation>The trail&apos;s folder cannot be written to (%1): %2</translation>
    </message>
    <message>
        <source>The trail&apos;s folder cannot be made (%1): %2</source>
        <translation>The trail&apos;s folder cannot be made (%1): %2</translation>
    </message>
    <message>
        <source>The key that seals the record cannot be read: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file should hold the key that seals the record, and holds something else: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The key that seals the record cannot be made: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Others may read the key that seals the record. Take their rights away (mode 0600) and ask whether it was copied: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::app::StationApp</name>
    <message>
        <source>The card cannot be read (%1): %2</source>
        <translation>The card cannot be read (%1): %2</translation>
    </message>
    <message>
        <source>Vaccine is being thawed</source>
        <translation>Vaccine is being thawed</translation>
    </message>
</context>
<context>
    <name>bathside::ui::BagTable</name>
    <message>
        <source>bag</source>
        <comment>column of the plan</comment>
        <translation>bag</translation>
    </message>
    <message>
        <source>pull at</source>
        <comment>column of the plan</comment>
        <translation>pull at</translation>
    </message>
    <message>
        <source>size</source>
        <comment>column of the plan</comment>
        <translation>size</translation>
    </message>
    <message>
        <source>lots × ampoules</source>
        <comment>column of the plan</comment>
        <translation>lots × ampoules</translation>
    </message>
    <message>
        <source>birds</source>
        <comment>column of the plan</comment>
        <translation>birds</translation>
    </message>
    <message>
        <source>first bird</source>
        <comment>column of the plan</comment>
        <translation>first bird</translation>
    </message>
    <message>
        <source>last bird</source>
        <comment>column of the plan</comment>
        <translation>last bird</translation>
    </message>
    <message>
        <source>margin</source>
        <comment>column of the plan</comment>
        <translation>margin</translation>
    </message>
    <message>
        <source>mixed</source>
        <comment>a bag</comment>
        <translation>mixed</translation>
    </message>
    <message>
        <source>hangs</source>
        <comment>a bag</comment>
        <translation>hangs</translation>
    </message>
    <message>
        <source>only %1</source>
        <comment>margin</comment>
        <translation>only %1</translation>
    </message>
</context>
<context>
    <name>bathside::ui::BenchPage</name>
    <message>
        <source>Not taken.</source>
        <translation>Not taken.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>Under the big clock: whose time it is, and until what.</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n fit(s) in time together</source>
        <translation>
            <numerusform>%n fits in time</numerusform>
            <numerusform>%n fit in time together</numerusform>
        </translation>
    </message>
    <message>
        <source>No shift is open</source>
        <translation>No shift is open</translation>
    </message>
    <message>
        <source>The big button says what has been DONE. Press it in the moment you have done it: Bathside takes the time, watches the limits and calls you. A slip of the finger? TAKE BACK.</source>
        <translation>The big button says what has been DONE. Press it in the moment you have done it: Bathside takes the time, watches the limits and calls you. A slip of the finger? TAKE BACK.</translation>
    </message>
    <message>
        <source>Set the bench up</source>
        <translation>Set the bench up</translation>
    </message>
    <message>
        <source>Go through the list: alarm heard, diluent inspected, bath at temperature, eyes and hands protected. Then start a bag.</source>
        <translation>Go through the list: alarm heard, diluent inspected, bath at temperature, eyes and hands protected. Then start a bag.</translation>
    </message>
    <message>
        <source>Ready for a bag</source>
        <translation>Ready for a bag</translation>
    </message>
    <message>
        <source>Start a bag, inspect it, draw the diluent. Then take the ampoules out of the cryogen: from there on every step is one press.</source>
        <translation>Start a bag, inspect it, draw the diluent. Then take the ampoules out of the cryogen: from there on every step is one press.</translation>
    </message>
    <message>
        <source>TAKE BACK</source>
        <translation>TAKE BACK</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>nothing yet</translation>
    </message>
    <message>
        <source>HEARD</source>
        <translation>HEARD</translation>
    </message>
    <message>
        <source>nothing sounds</source>
        <translation>nothing sounds</translation>
    </message>
    <message>
        <source>CLOSE</source>
        <translation>CLOSE</translation>
    </message>
    <message>
        <source>MORE</source>
        <translation>MORE</translation>
    </message>
    <message>
        <source>on duty: %1</source>
        <extracomment>%1 is a person&apos;s initials.</extracomment>
        <translation>on duty: %1</translation>
    </message>
    <message>
        <source>min</source>
        <extracomment>After the digits of the big clock: minutes.</extracomment>
        <translation>min</translation>
    </message>
    <message numerus="yes">
        <source>Stagger: one every %n second(s)</source>
        <translation>
            <numerusform>Stagger: one every second</numerusform>
            <numerusform>Stagger: one every %n seconds</numerusform>
        </translation>
    </message>
    <message>
        <source>Face shield, insulated gloves, tongs, fresh air. Ampoules can burst: open them away from you, thumb clear. The label comes first.</source>
        <translation>Face shield, insulated gloves, tongs, fresh air. Ampoules can burst: open them away from you, thumb clear. The label comes first.</translation>
    </message>
</context>
<context>
    <name>bathside::ui::CardGauge</name>
    <message>
        <source>Hold a bank card against the outline. Make it wider or narrower until the card fits.</source>
        <translation>Hold a bank card against the outline. Make it wider or narrower until the card fits.</translation>
    </message>
    <message>
        <source>narrower</source>
        <translation>narrower</translation>
    </message>
    <message>
        <source>wider</source>
        <translation>wider</translation>
    </message>
    <message>
        <source>it fits</source>
        <translation>it fits</translation>
    </message>
    <message>
        <source>back</source>
        <translation>back</translation>
    </message>
</context>
<context>
    <name>bathside::ui::CaseTile</name>
    <message>
        <source>blocked until a shift lead decides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reviewed by %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::Cautions</name>
    <message>
        <source>Cryogen burns skin and eyes and displaces the oxygen of a closed room.</source>
        <translation>Cryogen burns skin and eyes and displaces the oxygen of a closed room.</translation>
    </message>
    <message>
        <source>Frozen ampoules can burst.</source>
        <translation>Frozen ampoules can burst.</translation>
    </message>
    <message>
        <source>Eye or face protection, insulated gloves, tongs, ventilation.</source>
        <translation>Eye or face protection, insulated gloves, tongs, ventilation.</translation>
    </message>
    <message>
        <source>Glass cuts: open it away from you, thumb clear.</source>
        <translation>Glass cuts: open it away from you, thumb clear.</translation>
    </message>
    <message>
        <source>Needles and glass: sharps container.</source>
        <translation>Needles and glass: sharps container.</translation>
    </message>
    <message>
        <source>Self-injection: medical advice at once.</source>
        <translation>Self-injection: medical advice at once.</translation>
    </message>
    <message>
        <source>Label, veterinarian, site rules and law come first.</source>
        <translation>Label, veterinarian, site rules and law come first.</translation>
    </message>
</context>
<context>
    <name>bathside::ui::CheckTile</name>
    <message>
        <source>needed</source>
        <comment>a check without which no bag starts</comment>
        <translation>needed</translation>
    </message>
    <message>
        <source>open</source>
        <comment>a check not done yet</comment>
        <translation>open</translation>
    </message>
    <message>
        <source>ok</source>
        <translation>ok</translation>
    </message>
    <message>
        <source>not ok</source>
        <translation>not ok</translation>
    </message>
    <message>
        <source>waived</source>
        <comment>a check overridden with a reason</comment>
        <translation>waived</translation>
    </message>
</context>
<context>
    <name>bathside::ui::ChecksPage</name>
    <message>
        <source>CHECKS</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits here are common practice: the label and the site go first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>injector</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birds</source>
        <comment>the check of birds</comment>
        <translation type="unfinished">birds</translation>
    </message>
    <message>
        <source>vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bench</source>
        <translation type="unfinished">bench</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>figures</comment>
        <translation type="unfinished">more …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation type="unfinished">%1 of %2</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits here are those of the card; the label goes first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::CoursePicture</name>
    <message>
        <source>bath %1 at %2</source>
        <comment>temperature, time since the first step</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::DayModel</name>
    <message>
        <source>An entry of a kind that this version does not know: %1</source>
        <translation>An entry of a kind that this version does not know: %1</translation>
    </message>
</context>
<context>
    <name>bathside::ui::DayView</name>
    <message>
        <source>CORRECTED: %1</source>
        <translation>CORRECTED: %1</translation>
    </message>
    <message>
        <source>TAKEN BACK: %1</source>
        <translation>TAKEN BACK: %1</translation>
    </message>
</context>
<context>
    <name>bathside::ui::Frame</name>
    <message>
        <source>REHEARSAL</source>
        <translation>REHEARSAL</translation>
    </message>
    <message>
        <source>Nothing here counts. The real day has its own record.</source>
        <translation>Nothing here counts. The real day has its own record.</translation>
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
        <translation>Space</translation>
    </message>
    <message>
        <source>Delete the last sign</source>
        <translation>Delete the last sign</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Leave it</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Set</translation>
    </message>
    <message numerus="yes">
        <source>Type at least %n signs.</source>
        <translation>
            <numerusform>Type at least %n sign.</numerusform>
            <numerusform>Type at least %n signs.</numerusform>
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
        <translation>%1 · no bag</translation>
    </message>
</context>
<context>
    <name>bathside::ui::LotTile</name>
    <message>
        <source>good to %1</source>
        <comment>expiry</comment>
        <translation>good to %1</translation>
    </message>
    <message>
        <source>near expiry</source>
        <translation>near expiry</translation>
    </message>
    <message>
        <source>allowed today</source>
        <translation>allowed today</translation>
    </message>
    <message>
        <source>none left</source>
        <translation>none left</translation>
    </message>
    <message>
        <source>count it</source>
        <translation>count it</translation>
    </message>
    <message>
        <source>next</source>
        <comment>the next ampoules are of this lot</comment>
        <translation>next</translation>
    </message>
    <message numerus="yes">
        <source>at %n place(s)</source>
        <comment>where a lot stands</comment>
        <translation>
            <numerusform>at %n place</numerusform>
            <numerusform>at %n places</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>bathside::ui::NumberPad</name>
    <message>
        <source>Delete the last sign</source>
        <translation>Delete the last sign</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Set</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Leave it</translation>
    </message>
    <message>
        <source>Type a number first.</source>
        <translation>Type a number first.</translation>
    </message>
    <message>
        <source>That is outside what can be. %1</source>
        <translation>That is outside what can be. %1</translation>
    </message>
    <message>
        <source>From %1 to %2 %3.</source>
        <comment>lowest, highest, unit</comment>
        <translation>From %1 to %2 %3.</translation>
    </message>
    <message>
        <source>Change the sign</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::PeoplePage</name>
    <message>
        <source>back</source>
        <translation type="unfinished">back</translation>
    </message>
    <message>
        <source>new PIN …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set a PIN …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another role …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is back …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>works here no more …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials of the person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials of the shift lead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is on the list already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first on the list is one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: which role?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 works here no more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is listed as %2.</source>
        <comment>name, role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I know the old one …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forgotten …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a shift lead signs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new PIN for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The old PIN.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 sets a new PIN.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New PIN of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 to 8 digits, not all the same and not in a row. Nobody else may see it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New PIN of %1, once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same digits again, so that no slip of the finger locks you out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two were not the same. Type a new PIN again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The PIN could not be written beside the record. The one before still holds; see whether the disk is full.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has a new PIN.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>works here no more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, no PIN</source>
        <comment>role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, has a PIN</source>
        <comment>role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, PIN lost: set a new one</source>
        <comment>role</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set-up</source>
        <translation type="unfinished">set-up</translation>
    </message>
    <message>
        <source>add a person …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more people</comment>
        <translation type="unfinished">more …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation type="unfinished">%1 of %2</translation>
    </message>
    <message>
        <source>NOBODY IS LISTED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOBODY CAN SIGN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A shift lead has to set a PIN: tap the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>IN ORDER</source>
        <translation type="unfinished">IN ORDER</translation>
    </message>
    <message>
        <source>A name is enough at the bench; a PIN is a signature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bench</source>
        <translation type="unfinished">bench</translation>
    </message>
    <message>
        <source>add the shift lead …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin with the shift lead: without one everybody may do everything and nobody can sign.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::PicturePane</name>
    <message>
        <source>back</source>
        <translation type="unfinished">back</translation>
    </message>
</context>
<context>
    <name>bathside::ui::PlanPage</name>
    <message>
        <source>The plan&apos;s sheet is saved</source>
        <translation>The plan&apos;s sheet is saved</translation>
    </message>
    <message>
        <source>file</source>
        <translation>file</translation>
    </message>
    <message>
        <source>The plan&apos;s sheet is not saved</source>
        <translation>The plan&apos;s sheet is not saved</translation>
    </message>
    <message>
        <source>why</source>
        <translation>why</translation>
    </message>
    <message>
        <source>NO SHIFT</source>
        <translation>NO SHIFT</translation>
    </message>
    <message>
        <source>Open the shift at the bench, then plan its lines.</source>
        <translation>Open the shift at the bench, then plan its lines.</translation>
    </message>
    <message>
        <source>NOTHING PLANNED</source>
        <translation>NOTHING PLANNED</translation>
    </message>
    <message>
        <source>Say birds, birds an hour and start of each line.</source>
        <translation>Say birds, birds an hour and start of each line.</translation>
    </message>
    <message>
        <source>IN ORDER</source>
        <translation>IN ORDER</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation>LOOK</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>bench</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more of the plan</comment>
        <translation>more …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation>%1 of %2</translation>
    </message>
    <message>
        <source>lines …</source>
        <translation>lines …</translation>
    </message>
    <message>
        <source>list</source>
        <translation>list</translation>
    </message>
    <message>
        <source>words</source>
        <comment>the plan told in words</comment>
        <translation>words</translation>
    </message>
    <message>
        <source>print</source>
        <translation>print</translation>
    </message>
    <message>
        <source>The plan&apos;s sheet is on its way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan&apos;s sheet is printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>printer</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::ReckoningView</name>
    <message>
        <source>expected</source>
        <translation>expected</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>counted</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>difference</translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation>tolerance</translation>
    </message>
</context>
<context>
    <name>bathside::ui::RecordPage</name>
    <message>
        <source>today</source>
        <translation>today</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) earlier</source>
        <translation>
            <numerusform>%n day earlier</numerusform>
            <numerusform>%n days earlier</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) later</source>
        <translation>
            <numerusform>%n day later</numerusform>
            <numerusform>%n days later</numerusform>
        </translation>
    </message>
    <message>
        <source>one person …</source>
        <translation>one person …</translation>
    </message>
    <message>
        <source>one bag …</source>
        <translation>one bag …</translation>
    </message>
    <message>
        <source>one lot …</source>
        <translation>one lot …</translation>
    </message>
    <message>
        <source>What shall be shown?</source>
        <translation>What shall be shown?</translation>
    </message>
    <message>
        <source>more …</source>
        <translation>more …</translation>
    </message>
    <message>
        <source>Which one?</source>
        <translation>Which one?</translation>
    </message>
    <message>
        <source>Export %1 to where?</source>
        <translation>Export %1 to where?</translation>
    </message>
    <message>
        <source>Not copied: a pull is open. Copy the record between pulls.</source>
        <translation>Not copied: a pull is open. Copy the record between pulls.</translation>
    </message>
    <message>
        <source>Copy the whole record to where?</source>
        <translation>Copy the whole record to where?</translation>
    </message>
    <message>
        <source>(no stick was found)</source>
        <translation>(no stick was found)</translation>
    </message>
    <message>
        <source>entry %1</source>
        <translation>entry %1</translation>
    </message>
    <message>
        <source>Which entry?</source>
        <translation>Which entry?</translation>
    </message>
    <message>
        <source>up</source>
        <translation>up</translation>
    </message>
    <message>
        <source>a page</source>
        <translation>a page</translation>
    </message>
    <message>
        <source>down</source>
        <translation>down</translation>
    </message>
    <message>
        <source>one up</source>
        <translation>one up</translation>
    </message>
    <message>
        <source>one down</source>
        <translation>one down</translation>
    </message>
    <message>
        <source>exact content</source>
        <translation>exact content</translation>
    </message>
    <message>
        <source>close</source>
        <translation>close</translation>
    </message>
    <message>
        <source>working …</source>
        <translation>working …</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>bench</translation>
    </message>
    <message>
        <source>day before</source>
        <translation>day before</translation>
    </message>
    <message>
        <source>day after</source>
        <translation>day after</translation>
    </message>
    <message>
        <source>show …</source>
        <translation>show …</translation>
    </message>
    <message>
        <source>verify</source>
        <translation>verify</translation>
    </message>
    <message>
        <source>export</source>
        <translation>export</translation>
    </message>
    <message>
        <source>copy</source>
        <translation>copy</translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%n entry</numerusform>
            <numerusform>%n entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more waiting to be recorded</source>
        <translation>
            <numerusform>%n more waiting to be recorded</numerusform>
            <numerusform>%n more waiting to be recorded</numerusform>
        </translation>
    </message>
    <message>
        <source>Reading …</source>
        <translation>Reading …</translation>
    </message>
    <message>
        <source>There is nothing of this on this day.</source>
        <translation>There is nothing of this on this day.</translation>
    </message>
    <message>
        <source>linked entries</source>
        <translation>linked entries</translation>
    </message>
    <message>
        <source>shift</source>
        <translation>shift</translation>
    </message>
    <message>
        <source>deviations</source>
        <translation>deviations</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which sheet of how many</comment>
        <translation>%1 of %2</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) together</source>
        <translation>
            <numerusform>%n day together</numerusform>
            <numerusform>%n days together</numerusform>
        </translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by date …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which days?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From which day? Year, month, day, e.g. 20270131</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1 to which day? The same one for that day alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such day, or it is before the first one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comment on the note of entry %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comment on entry %1: %2</source>
        <comment>number, words</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comment on entry %1: signed by %2 at %3.</source>
        <comment>number, who, time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1 cannot be found. Verify the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comment …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shift lead, by PIN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>show all</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n entries</source>
        <translation>
            <numerusform>%1 of %n entry</numerusform>
            <numerusform>%1 of %n entries</numerusform>
        </translation>
    </message>
    <message>
        <source>There is nothing of this on these days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1: %2.</source>
        <comment>number, what it is to this one</comment>
        <translation type="unfinished">Entry %1: %2. {1:?}</translation>
    </message>
    <message>
        <source>other days …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print the day sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a printer: a PDF in this computer&apos;s documents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day sheet: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>earlier ones: up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entries up to %1 are in an earlier file: show their days by date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>later ones: down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by typing …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which person? The initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which bag? Its name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which lot? As on its label</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::ReviewPage</name>
    <message>
        <source>Card version %1. %2</source>
        <comment>number, meaning</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new card is approved; it holds from the next bag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bench</source>
        <translation type="unfinished">bench</translation>
    </message>
    <message>
        <source>all cases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more of the list or sheet</comment>
        <translation type="unfinished">more …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation type="unfinished">%1 of %2</translation>
    </message>
    <message>
        <source>review …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>review again …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>decide on the bag …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new card …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to be approved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>approve …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ALL REVIEWED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No limit was passed, and no bag is on hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing waits for a shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOBODY CAN SIGN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>List a shift lead first: set-up, people.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>TO REVIEW</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n case(s) wait for a shift lead, the worst first.</source>
        <translation>
            <numerusform>%n case waits for a shift lead, the worst first.</numerusform>
            <numerusform>%n cases wait for a shift lead, the worst first.</numerusform>
        </translation>
    </message>
    <message>
        <source>Passed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On duty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On hold because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, taken down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Birds touched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: it never hung on a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Action</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2. %3</source>
        <comment>name, time, meaning</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 becomes %2</source>
        <comment>value, new value</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card version %1 would take the place of version %2. What changes:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>charts over time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a shift before, %1; its bag and steps are on the record page</source>
        <comment>day, entry</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a shift before, %1; it is being read …</source>
        <comment>day, entry</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a shift before, %1</source>
        <comment>day, entry</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::SealWitness</name>
    <message>
        <source>Scanned: day sheet of %1 entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT CHECKED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record could not be read. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RECORD AGREES</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first %1 entries are still those that were printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RECORD DIFFERS</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record was changed after printing, or the sheet is of another station or of a rehearsal. Keep both; call the shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RECORD IS SHORTER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record has fewer entries: some are gone, or the sheet is of another station or of a rehearsal. Keep both; call the shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet is older than the file in use: check it against the file before this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LATER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scanned: day sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ampoules are open. Scan it again when all are in a bag.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::SetUpPage</name>
    <message>
        <source>ok</source>
        <translation>ok</translation>
    </message>
    <message>
        <source>not ok</source>
        <translation>not ok</translation>
    </message>
    <message>
        <source>go on without it …</source>
        <translation>go on without it …</translation>
    </message>
    <message>
        <source>with a reason, on record</source>
        <translation>with a reason, on record</translation>
    </message>
    <message>
        <source>back</source>
        <translation>back</translation>
    </message>
    <message>
        <source>the shift lead decided it</source>
        <translation>the shift lead decided it</translation>
    </message>
    <message>
        <source>checked in another way</source>
        <translation>checked in another way</translation>
    </message>
    <message>
        <source>not needed today</source>
        <translation>not needed today</translation>
    </message>
    <message>
        <source>is being put right</source>
        <translation>is being put right</translation>
    </message>
    <message>
        <source>another reason …</source>
        <translation>another reason …</translation>
    </message>
    <message>
        <source>Why go on without it?</source>
        <translation>Why go on without it?</translation>
    </message>
    <message>
        <source>no loudspeaker</source>
        <translation>no loudspeaker</translation>
    </message>
    <message>
        <source>I HEARD IT</source>
        <translation>I HEARD IT</translation>
    </message>
    <message>
        <source>play it again</source>
        <translation>play it again</translation>
    </message>
    <message>
        <source>not heard</source>
        <translation>not heard</translation>
    </message>
    <message>
        <source>another loudspeaker …</source>
        <translation>another loudspeaker …</translation>
    </message>
    <message>
        <source>The alarm is playing. Was it heard at the bench?</source>
        <translation>The alarm is playing. Was it heard at the bench?</translation>
    </message>
    <message>
        <source>Which loudspeaker?</source>
        <translation>Which loudspeaker?</translation>
    </message>
    <message>
        <source>No other loudspeaker was found.</source>
        <translation>No other loudspeaker was found.</translation>
    </message>
    <message>
        <source>light screen</source>
        <translation>light screen</translation>
    </message>
    <message>
        <source>dark screen</source>
        <translation>dark screen</translation>
    </message>
    <message>
        <source>true size …</source>
        <translation>true size …</translation>
    </message>
    <message>
        <source>with a bank card</source>
        <translation>with a bank card</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>bench</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation>%1 of %2</translation>
    </message>
    <message>
        <source>which one?</source>
        <translation>which one?</translation>
    </message>
    <message>
        <source>not ok …</source>
        <translation>not ok …</translation>
    </message>
    <message>
        <source>heard</source>
        <translation>heard</translation>
    </message>
    <message>
        <source>bath reading</source>
        <translation>bath reading</translation>
    </message>
    <message>
        <source>on duty</source>
        <translation>on duty</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more checks</comment>
        <translation>more …</translation>
    </message>
    <message>
        <source>alarm</source>
        <translation>alarm</translation>
    </message>
    <message>
        <source>who?</source>
        <translation>who?</translation>
    </message>
    <message>
        <source>labels …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>printers and paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermometers …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>people …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>roles and PINs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>station …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>live cells …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copy is old</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copy failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody is listed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is this station called?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not named yet</source>
        <translation type="unfinished"></translation>
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
        <translation>Out of the cryogen, into the bath, into the diluent, into the bag: Bathside takes the times, watches the limits and keeps the record. The label, the veterinarian in charge and the site&apos;s rules come first.</translation>
    </message>
    <message>
        <source>Rehearse the demo day</source>
        <translation>Rehearse the demo day</translation>
    </message>
    <message>
        <source>Nothing counts. Try every button.</source>
        <translation>Nothing counts. Try every button.</translation>
    </message>
    <message>
        <source>Start the real day</source>
        <translation>Start the real day</translation>
    </message>
    <message>
        <source>Everything is recorded.</source>
        <translation>Everything is recorded.</translation>
    </message>
    <message>
        <source>light screen</source>
        <translation>light screen</translation>
    </message>
    <message>
        <source>dark screen</source>
        <translation>dark screen</translation>
    </message>
</context>
<context>
    <name>bathside::ui::StatusBar</name>
    <message>
        <source>no bath reading</source>
        <translation>no bath reading</translation>
    </message>
    <message>
        <source>bath not measured</source>
        <translation>bath not measured</translation>
    </message>
    <message>
        <source>%1 · %2 ago</source>
        <extracomment>Under the bath&apos;s temperature; %1 is the verdict (&quot;inside&quot;), %2 the reading&apos;s age (&quot;4 min&quot;).</extracomment>
        <translation>%1 · %2 ago</translation>
    </message>
    <message>
        <source>too old: %1 ago</source>
        <translation>too old: %1 ago</translation>
    </message>
    <message numerus="yes">
        <source>%n waiting</source>
        <translation>
            <numerusform>%n waiting</numerusform>
            <numerusform>%n waiting</numerusform>
        </translation>
    </message>
    <message>
        <source>NO SOUND</source>
        <translation>NO SOUND</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>sound</translation>
    </message>
    <message>
        <source>proven</source>
        <translation>proven</translation>
    </message>
    <message>
        <source>unproven</source>
        <translation>unproven</translation>
    </message>
</context>
<context>
    <name>bathside::ui::StoresPage</name>
    <message>
        <source>this computer</source>
        <translation>this computer</translation>
    </message>
    <message>
        <source>No CSV file was found on a stick or in the documents.</source>
        <translation>No CSV file was found on a stick or in the documents.</translation>
    </message>
    <message>
        <source>Which delivery?</source>
        <translation>Which delivery?</translation>
    </message>
    <message>
        <source>back</source>
        <translation>back</translation>
    </message>
    <message>
        <source>That file cannot be read, or is larger than 1 MiB.</source>
        <translation>That file cannot be read, or is larger than 1 MiB.</translation>
    </message>
    <message>
        <source>Mean dose per bird: %1 µL.</source>
        <translation>Mean dose per bird: %1 µL.</translation>
    </message>
    <message>
        <source>The mean dose is known once every bag is down.</source>
        <translation>The mean dose is known once every bag is down.</translation>
    </message>
    <message>
        <source>ADDS UP</source>
        <translation>ADDS UP</translation>
    </message>
    <message>
        <source>NOT YET</source>
        <translation>NOT YET</translation>
    </message>
    <message>
        <source>NO STORES KEPT</source>
        <translation>NO STORES KEPT</translation>
    </message>
    <message>
        <source>Receive what is there, and lots, balances and places are kept.</source>
        <translation>Receive what is there, and lots, balances and places are kept.</translation>
    </message>
    <message>
        <source>IN ORDER</source>
        <translation>IN ORDER</translation>
    </message>
    <message>
        <source>Nothing is short, apart, expired or near its expiry.</source>
        <translation>Nothing is short, apart, expired or near its expiry.</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation>LOOK</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>bench</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more lots</comment>
        <translation>more …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation>%1 of %2</translation>
    </message>
    <message>
        <source>receive …</source>
        <translation>receive …</translation>
    </message>
    <message>
        <source>from a file …</source>
        <translation>from a file …</translation>
    </message>
    <message numerus="yes">
        <source>take %n line(s)</source>
        <translation>
            <numerusform>take %n line</numerusform>
            <numerusform>take %n lines</numerusform>
        </translation>
    </message>
    <message>
        <source>warnings</source>
        <translation>warnings</translation>
    </message>
    <message>
        <source>reckoning</source>
        <translation>reckoning</translation>
    </message>
    <message>
        <source>Which of these?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::ThermometersPage</name>
    <message>
        <source>Saved: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No thermometer is described. Readings by hand are taken, undecided at best.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thermometer is not calibrated, or overdue: do not trust it alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every thermometer in use has a calibration that holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished">back</translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more thermometers</comment>
        <translation type="unfinished">more …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation type="unfinished">%1 of %2</translation>
    </message>
    <message>
        <source>add …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>certificate …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all of it</source>
        <comment>the whole of a chart</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save</source>
        <comment>a picture of the chart</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time to slush is being reckoned …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than one thermometer is read. Say at “change …” which one is in the bath: until then the last one that spoke counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoning: the time to slush, and what the pulls say of the bath …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These figures are the card&apos;s: no pull shows yet how good they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the bath</source>
        <comment>a thermometer</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::TimelineView</name>
    <message>
        <source>empty %1</source>
        <comment>bag that hangs: time</comment>
        <translation>empty %1</translation>
    </message>
    <message>
        <source>mixed</source>
        <comment>a bag</comment>
        <translation>mixed</translation>
    </message>
    <message>
        <source>%1 birds</source>
        <translation>%1 birds</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>bench</translation>
    </message>
    <message>
        <source>%1 per h</source>
        <comment>birds an hour</comment>
        <translation>%1 per h</translation>
    </message>
    <message>
        <source>cannot be done: see the words</source>
        <translation>cannot be done: see the words</translation>
    </message>
    <message>
        <source>Under each bar its bag&apos;s life: solid until the last bird, dotted to its limit. Hatched: break.</source>
        <translation>Under each bar its bag&apos;s life: solid until the last bird, dotted to its limit. Hatched: break.</translation>
    </message>
    <message>
        <source>only %1</source>
        <comment>margin of a bag: minutes</comment>
        <translation>only %1</translation>
    </message>
</context>
<context>
    <name>bathside::ui::TrendsPage</name>
    <message>
        <source>back</source>
        <translation type="unfinished">back</translation>
    </message>
    <message>
        <source>What shall be charted?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none in these days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one person …</source>
        <translation type="unfinished">one person …</translation>
    </message>
    <message>
        <source>one lot …</source>
        <translation type="unfinished">one lot …</translation>
    </message>
    <message>
        <source>one bench …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>show names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hide names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on this page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of whom and what?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which person?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which lot?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which bench?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more …</source>
        <comment>names</comment>
        <translation type="unfinished">more …</translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished">today</translation>
    </message>
    <message numerus="yes">
        <source>the last %n day(s)</source>
        <translation>
            <numerusform>the last %n day</numerusform>
            <numerusform>the last %n days</numerusform>
        </translation>
    </message>
    <message>
        <source>as many days earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as many days later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to today now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from … to …</source>
        <comment>days, typed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which days?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first day? Year, month, day, e.g. 20270131</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last day? Year, month, day, e.g. 20270131</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such day. Type it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>on: %n point(s)</source>
        <comment>a rule</comment>
        <translation>
            <numerusform>on: %n point</numerusform>
            <numerusform>on: %n points</numerusform>
        </translation>
    </message>
    <message>
        <source>off</source>
        <comment>a rule</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which rules shall be looked for?</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n point(s)</source>
        <translation>
            <numerusform>%n point</numerusform>
            <numerusform>%n points</numerusform>
        </translation>
    </message>
    <message>
        <source>at least %1 points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all points shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to the point picked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the point picked on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which points shall the limits of this chart come from, from now on? A shift lead signs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approved: baseline of &quot;%1&quot;, events %2 to %3.</source>
        <comment>chart, events</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The baseline is chosen and signed by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tap a point of the chart first, or step to one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>days</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>review</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what …</source>
        <comment>is charted</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>whose …</source>
        <comment>points</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rules …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limits …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save</source>
        <comment>a picture of the chart</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its pull …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its check …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>charts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more …</source>
        <comment>of the sheet</comment>
        <translation type="unfinished">more …</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation type="unfinished">%1 of %2</translation>
    </message>
    <message>
        <source>READING</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record is read …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from no baseline any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the points shown give the limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approved: &quot;%1&quot; has no baseline any more.</source>
        <comment>chart</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The baseline is withdrawn, signed by %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
