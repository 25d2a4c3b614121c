<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Alarm</name>
    <message>
        <source>Not recorded: go on, call the shift lead, leave the station on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock was changed: compare it with another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometer is lost: measure by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>whom it is about, and what to do</comment>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sound: watch the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>+%n</source>
        <comment>alarms without room on the screen</comment>
        <translation>
            <numerusform>+%n</numerusform>
            <numerusform>+%n</numerusform>
        </translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixed %1 by %2</source>
        <comment>when and by whom; on a bag&apos;s label</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1</source>
        <comment>heading of its label</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use by</source>
        <comment>before a time, on a bag&apos;s label</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>REHEARSAL: not for birds</source>
        <comment>on a bag&apos;s label</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BagPlaceText</name>
    <message>
        <source>not hung</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swirl now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ON HOLD: %1</source>
        <extracomment>On a bag&apos;s tile; %1 is why (&quot;leak&quot;).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swirl: %1</source>
        <extracomment>On a narrow tile: when the bag has to be swirled next; %1 is &quot;8 min&quot; or &quot;45 s&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>making up</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BagText</name>
    <message>
        <source>On hold: why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much is left in the bag?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume left …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken down: why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>checked and good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held by mistake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lead accepts it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Released: why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which shift lead releases it? Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SWIRLED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>INSPECTED: GOOD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>INSPECTED: NOT GOOD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DILUENT DRAWN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MIXED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moved to …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hung on …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put on hold …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>released …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken down …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: hung on which line?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which bag?</source>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which lot?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>Under the big button: which bag has been hung on which line.
----------
Under the big button: which bag comes next, e.g. &quot;400 mL, line A&quot;.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT GOOD</source>
        <translation type="unfinished"></translation>
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
</context>
<context>
    <name>Fact</name>
    <message>
        <source>%1, %2</source>
        <comment>name of a limit, whom it is about</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deviation: %1, %2, by %3.</source>
        <comment>name of the limit, whom, by how much</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged again: %1, %2, the limit was kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Judged again: %1, %2, passed by %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alarm, %1: %2.</source>
        <comment>level, what about</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alarm sounded on %1, %2 after it was due: %3.</source>
        <comment>loudspeaker, time, what about</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alarm heard: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alarm ended: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1 was corrected: %2 is %3. Reason: %4.</source>
        <comment>number, which part, new value, reason</comment>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tap was refused: %1 (%2).</source>
        <comment>what was tapped, why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scanned: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 Implied by a later step, not timed.</source>
        <comment>added to a whole sentence</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 was started: %2, diluent lot %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 was started: %2, diluent lot %3, at %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 was inspected and is good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 was inspected and is not good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of diluent were drawn from bag %2.</source>
        <comment>volume, bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 was mixed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 was swirled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 was hung on line %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 was put on hold: %2.</source>
        <comment>bag, reason</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 was put on hold: %2, %3.</source>
        <comment>bag, reason, more words</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 was released by %2. Reason: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag %1 was taken down: %2, %3 left.</source>
        <comment>bag, reason, volume</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 came out of the cryogen: %3, lot %4.</source>
        <comment>ampoule, pull, component, lot</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 went into the bath.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 was opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 went into diluent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 was rinsed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 went into bag %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ampoule %1 of pull %2 was lost: %3.</source>
        <comment>ampoule, pull, reason</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cane at %1 was out of the cryogen for %2; what stays on it is in quarantine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next pull is planned for %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shift opened, local time of %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shift closed: ampoules out %1, in bags %2, lost %3; bags %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 came on duty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; is done: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; failed: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; is done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; failed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check &quot;%1&quot; was overridden. Reason: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bath: no reading. %1</source>
        <comment>followed by the sentence that says why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bath: no reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bath: %1, %2.</source>
        <comment>temperature, verdict</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bath water was changed. Reason: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1: %2 birds in all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1: the needle was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1 stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1 is going again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1: the dose was checked and is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1: the dose was checked and is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station started for a rehearsal, version %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station started, version %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wall clock was put back by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wall clock was put forward by %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wall clock is synchronised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wall clock is not synchronised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record failed. %1</source>
        <comment>followed by the sentence that says why</comment>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sound was lost on %1.</source>
        <comment>a loudspeaker</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sound is back on %1.</source>
        <comment>a loudspeaker</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A procedure card was adopted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermometer %1 was described.</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1 is planned: %2 birds at %3 an hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Received: %1 of %2, at %3.</source>
        <comment>how many, what, place</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved: %1 of %2, from %3 to %4.</source>
        <comment>how many, what, places</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted: %1 of %2, at %3.</source>
        <comment>how many, what, place</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken out of the stores: %1 of %2, from %3. Reason: %4.</source>
        <comment>how many, what, place, why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put in quarantine: %1 at %2. Reason: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put in quarantine: %1. Reason: %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 released %2 from quarantine. Reason: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 allowed %2 for this shift. Reason: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next ampoules of %1 are of lot %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The balance of the stores was carried into this shift.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Fault</name>
    <message>
        <source>The disk is full. Free some space; what waits is then written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder of the record is read-only. Choose one that can be written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing the record is not permitted. Ask who looks after this computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program holds the record. Close it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record is damaged. It is kept as it is; tell the shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That file is no record of this program. It was left alone; choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record was written by a later version. Use that version.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A write to the record failed. What happened is kept and written later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the last write is safe is not known. Work goes on in a second file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record lies on a network drive, which is not safe. Move it to this computer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record and the screen disagree. Restart the station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (System error %2.)</source>
        <comment>a whole sentence; a number</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The procedure card cannot be used: expected %1, found %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The procedure card cannot be used: at &quot;%1&quot;, expected %2, found %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometer&apos;s description cannot be used: expected %1, found %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometer&apos;s description cannot be used: at &quot;%1&quot;, expected %2, found %3.</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scan is empty. Scan again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scan is longer than any code. Scan one code alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This code has a part that is not known here. Read the label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part of this code is too short. Scan again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part of this code is too long: does the scanner send separators (FNC1)?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This code has a sign where a digit belongs. Scan again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This code has a sign that GS1 does not allow. Scan again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The code&apos;s check digit is wrong. Scan again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The code&apos;s date is none. Read the label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This code says two things at once. Read the label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The label&apos;s code was misread. Scan again; if it stays so, set the scanner to this keyboard&apos;s layout.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(%1): %2</source>
        <comment>a GS1 identifier and what is wrong with it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is more to print than this paper takes. Choose a larger one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not take it. Is it there, switched on, and does it have this paper?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file could not be written. Choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>IntakeText</name>
    <message>
        <source>line %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2, at %3</source>
        <comment>how many, what, place</comment>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expired</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in quarantine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near expiry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>received before, not taken: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is short, apart, expired or near its expiry.</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in cryogen</source>
        <extracomment>A lane of the pull: this ampoule is still in the cryogen.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by wall time, after a restart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other ends of this ampoule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+ ampoule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given up</source>
        <comment>an ampoule was abandoned</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LineText</name>
    <message>
        <source>%1: birds done so far, in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NEEDLE CHANGED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DOSE RIGHT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DOSE WRONG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>STOPPED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>GOING</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needle in %1</source>
        <extracomment>Birds until (or since) a needle change is due.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needle due, %1 over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 birds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birds …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which line?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotText</name>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another reason …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: how many are there?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted where?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where to?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many are moved?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved from where?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why are they taken out?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken out from where?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many are taken out?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why is %1 set apart?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>certificate missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrived damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cryogen ran low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recalled by its maker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift lead&apos;s initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why may %1 be used?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>certificate seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never got warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set apart by mistake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>certificate read out by telephone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no other lot is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>agreed with the maker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>count …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take out …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>use next</source>
        <comment>the next ampoules are of this lot</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>allow today …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the shift lead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end quarantine …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quarantine …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, in quarantine: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which vessel?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which canister?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which cane?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which shelf or box?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another place …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 doses each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 PFU a dose</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MendText</name>
    <message>
        <source>wrong button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tapped late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>did not happen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>misread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which ampoule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which component</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how many birds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken or not</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how much was left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When was it? Hours, minutes, seconds, as 094107</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which ampoule was it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is the bag called?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which bag was it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which component was it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which lot was it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which line was it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it did not break</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it broke</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Broken or not?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many birds was it, in all?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much was it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How warm was it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corrected: why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back: why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is not right?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MenuText</name>
    <message>
        <source>bath reading …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next pull …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bags …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lines …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new bag …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>correct …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water changed …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cane out too long …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who is on duty …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end of shift …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open questions …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What else?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stores</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NewBagText</name>
    <message>
        <source>Lot of the diluent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the bag, as on its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diluent: what does the thermometer show?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How large is the bag?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which volume?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which lot of diluent?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other volume …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which lot?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot of the diluent …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how warm?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diluent …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name of the bag …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new bag of diluent</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OptionText</name>
    <message>
        <source>The bench-side station for making up frozen poultry vaccine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the real day at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rehearse at once; nothing counts, and it has a trail of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the trail in FILE.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work by the procedure card in FILE.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language of the screen: en or es.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light words on a dark ground.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark words on a light ground.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pixels per millimetre of this panel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a window instead of on the whole screen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play the demo day through the window and end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play the script in FILE through the window and end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While playing, leave pictures in DIR.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After playing, leave the exported record in DIR.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bathside: %1 See bathside --help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>--px-per-mm wants a number from 2 to 16.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” is not an option.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanSheet</name>
    <message>
        <source>bag</source>
        <comment>column of the day&apos;s plan</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull at</source>
        <comment>column of the day&apos;s plan: when ampoules come out</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixed by</source>
        <comment>column of the day&apos;s plan: at the latest</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first bird</source>
        <comment>column of the day&apos;s plan</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last bird</source>
        <comment>column of the day&apos;s plan</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birds</source>
        <comment>column of the day&apos;s plan</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size</source>
        <comment>column of the day&apos;s plan: of the bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lots × ampoules</source>
        <comment>column of the day&apos;s plan</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan for %1</source>
        <comment>a day</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, REHEARSAL: not for birds</source>
        <comment>after the site&apos;s name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1</source>
        <comment>heading in the day&apos;s plan</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoned %1</source>
        <comment>date and time</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PullText</name>
    <message>
        <source>Lot on the ampoule: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another lot …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CHOSEN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ampoules of the next pull: one tap each</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Question</name>
    <message>
        <source>I was interrupted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too many at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard to open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done in time, tapped late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A small ampoule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bath was warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why was %1 late into the bath?</source>
        <comment>%1 is an ampoule</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why was %1 late into the diluent?</source>
        <comment>%1 is an ampoule</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: why was this limit passed? %2</source>
        <comment>limit, subject</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why was %1 so short in the bath?</source>
        <comment>%1 is an ampoule</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which ampoule broke? Recorded is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Was anybody hurt?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has the bath water been changed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ampoule %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReceiptText</name>
    <message>
        <source>How many of %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where does it stand?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Titre by the certificate, PFU a dose; 0: none given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good to which day? Year, month, day, e.g. 20270131</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many doses has an ampoule?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another volume …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How large are the bags?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which consumable?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ampoules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diluent bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other consumables …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What came in?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RecordText</name>
    <message>
        <source>entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last sound entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its hash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record is NOT sound. First at entry %1: %2</source>
        <comment>number, followed by a sentence</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record could not be read to its end. %1</source>
        <comment>followed by a sentence</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The entries are sound; the indexes could not be compared with them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The entries are sound, but the indexes do not agree with them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ampoules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shift and checks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alarms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deviations and corrections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is not written the way the station writes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its time is no time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it was changed after it was written, or the one before it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is not in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is there twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it comes from another station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is not on the list that came with the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is not the one that was noted elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the record ends before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This computer does not know the time zone of the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such day in the time zone of the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1 is missing. Verify the record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The files could not be written. Choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The files could not be written (%1). Choose another place.</source>
        <comment>the system&apos;s own words</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The record is sound: nothing was changed, left out or put in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write this number and hash down and keep them elsewhere: only so is a record that was cut short found out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not exported. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no record of %1; nothing was written.</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not copied. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy was written but is not good. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied, read back and found sound.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>local time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UTC</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>boot clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 µs since the computer&apos;s start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>initials, how sure the record is of it</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: the station itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>receipt: the tap&apos;s own time was not plausible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exact text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1: %2</source>
        <comment>number, sentence</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Refusal</name>
    <message>
        <source>the bag&apos;s volume</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the volume drawn into the syringe</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the volume left</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number of birds</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time out of the cryogen</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place of the cane</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the text</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no procedure card yet. Adopt one at set-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No shift is open. Open the shift first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shift is open already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is neither in a bag nor lost. Say first how it ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is still open. Take it down first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is on duty. Enter your initials first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The procedure card has no check named &quot;%1&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The check &quot;%1&quot; is open. Do it, or override it with a reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reason is needed. Say why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 exists already. Give the new one another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such bag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which bag is not clear. Choose the bag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is down. It takes nothing more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is on hold. A shift lead decides about it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not on hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not inspected yet. Inspect it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has no ampoule in it yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not mixed yet. Mix it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is mixed already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is inspected already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The diluent of %1 is drawn already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 hangs on no line yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: take bag %2 down first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It hangs there already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ampoule can take that step now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such ampoule in this pull.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is out already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is lost. It takes no more steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is in a bag. It takes no more steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has taken that step already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ampoule is out of the cryogen yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which line is not clear. Choose the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is stopped already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is going already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The birds counted so far are %1. The total cannot be less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No such alarm is due now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to take back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is not of this shift, or was taken back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That cannot be corrected in this entry: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That value cannot be used: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is what stands there already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That question is not open any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is none of the choices.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is outside what can be: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The document cannot be used. Look at &quot;%1&quot;.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The station has not started yet. Wait a moment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how many</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place in the stores</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the birds an hour</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line&apos;s start</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the breaks</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the reason</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lot</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it is</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the doses of an ampoule</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the day of expiry</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the titre</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the delivery</source>
        <comment>what is outside what can be</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot %1 has expired. Take another, or ask a shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot %1 is in quarantine. Take another, or ask a shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lot is missing. Say which lot it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stores do not know lot %1. Receive it first, or ask a shift lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot %1 is in the stores with another expiry, titre or number of doses. Look at the label again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stores have none of that: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are only %1. Count them if there are more.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShiftText</name>
    <message>
        <source>Bath: what does the thermometer show?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next pull at: hours and minutes, as 0915</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is on duty? Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who takes over? Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which thermometer?</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When is the next pull?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note for the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cane out too long: canister and cane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long was it out?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an ampoule burst</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dirty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fresh water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bath water changed: why?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SHIFT CLOSED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every bag is down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End of the shift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>later</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShortFact</name>
    <message>
        <source>shift open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shift closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on duty: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check overridden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath %1</source>
        <comment>a temperature</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath: no reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath water changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 inspected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 not good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: diluent drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>bag, line</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 swirled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 released</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ampoule %1: %2</source>
        <comment>number, why it was lost</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cane exposed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next pull planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: birds counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: needle changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 going</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: dose checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alarm heard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>answered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not taken</source>
        <comment>a tap was refused</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scanned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sound heard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>step, numbers of ampoules</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>card adopted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thermometer noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stores: received</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stores: moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stores: counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stores: taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot %1 in quarantine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot %1 released</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot %1 allowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot %1 chosen</source>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a quote that is closed at the end of its cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a first line that names the columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one of kind, item, lot, doses, volume_ml, count, expires, titre_pfu, vessel, canister, cane, delivery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each column once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>that column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no more cells than columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ampoule, diluent or consumable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a value, which this kind needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing, as this kind has no such value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a component of the procedure card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a short text on one line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a whole number, at least 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>millilitres above 0, with at most three decimals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a day as YYYY-MM-DD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the stores have of that lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ampoules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diluent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>consumables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>used</source>
        <comment>why something left the stores</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken</source>
        <comment>why something left the stores</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expired</source>
        <comment>why something left the stores</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thawed</source>
        <comment>why something left the stores</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another reason</source>
        <comment>why something left the stores</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fit for use</source>
        <comment>a lot</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expired</source>
        <comment>a lot</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in quarantine</source>
        <comment>a lot</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown</source>
        <comment>a lot</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diluent %1</source>
        <comment>the volume of a bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, lot %2</source>
        <comment>component or diluent, its lot</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no place named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cane was out of the cryogen too long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 too few for what is planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: expired, and %2 still there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 in quarantine.</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1”</source>
        <comment>found in a cell</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1: expected %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1, column %2: found %3, expected %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not add up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adds up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ampoules out = in bags + lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doses of %1: made up, used and left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume: birds × dose, and what is gone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Subject</name>
    <message>
        <source>ampoule %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull %1</source>
        <comment>a set of ampoules taken out together</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1</source>
        <comment>where birds are vaccinated</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the station</source>
        <comment>this computer</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ampoule %1 of pull %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Time</name>
    <message>
        <source>%1 s</source>
        <comment>seconds</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min</source>
        <comment>minutes</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 over</source>
        <comment>how long past the limit, e.g. 2 min over</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 left</source>
        <comment>how long until the limit, e.g. 41 min left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min %2 s</source>
        <comment>minutes and seconds</comment>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SET UP</source>
        <comment>big button: the bench has been set up</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>BAG STARTED</source>
        <comment>big button</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>INSPECTED</source>
        <comment>big button: the diluent bag, found good</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DILUENT DRAWN</source>
        <comment>big button: into the syringe</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MIXED</source>
        <comment>big button: the bag</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HUNG</source>
        <comment>big button: the bag, on its line</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOTHING TO DO</source>
        <comment>big button: nothing is next</comment>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in bath</source>
        <comment>where the ampoule is</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opened</source>
        <comment>how the ampoule is</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in diluent</source>
        <comment>where the ampoule&apos;s content is</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rinsed</source>
        <comment>how the ampoule is</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in bag</source>
        <comment>where the ampoule&apos;s content is</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost: %1</source>
        <comment>an ampoule, and why</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in bag %1</source>
        <comment>an ampoule&apos;s content</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, lot %2</source>
        <comment>component of the vaccine and its lot</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heads-up</source>
        <comment>first level: a limit is near</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit</source>
        <comment>second level: the limit is passed</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overrun</source>
        <comment>third level: passed and still nobody acted</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>broken</source>
        <comment>an ampoule was lost</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dropped</source>
        <comment>an ampoule was lost</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>abandoned</source>
        <comment>an ampoule was lost on purpose</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handed over</source>
        <comment>an ampoule went to another bench</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leak</source>
        <comment>why a bag is on hold</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colour</source>
        <comment>why a bag is on hold</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wrong lot</source>
        <comment>why a bag is on hold</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>age unknown</source>
        <comment>why a bag is on hold</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>failed inspection</source>
        <comment>why a bag is on hold</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another reason</source>
        <comment>why a bag is on hold</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>empty</source>
        <comment>why a bag was taken down</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past its time</source>
        <comment>why a bag was taken down</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>discarded</source>
        <comment>why a bag was taken down</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>work finished</source>
        <comment>why a bag was taken down</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time out of the cryogen</source>
        <comment>name of a limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time from bath to diluent</source>
        <comment>name of a limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time a bag is in use</source>
        <comment>name of a limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath when ampoules go in</source>
        <comment>name of a limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature of the diluent</source>
        <comment>name of a limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath before the next pull</source>
        <comment>name of a limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>age of the bath reading</source>
        <comment>name of a limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swirling the bag</source>
        <comment>name of a limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>birds with one needle</source>
        <comment>name of a limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dose check</source>
        <comment>name of a limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start of the next pull</source>
        <comment>name of a limit</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until in the bath</source>
        <comment>under the time left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until in diluent</source>
        <comment>under the time left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until it is down</source>
        <comment>under the time left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until the bath is right</source>
        <comment>under the time left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until the diluent is right</source>
        <comment>under the time left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until the bath is measured</source>
        <comment>under the time left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until the next swirl</source>
        <comment>under the time left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until the needle is changed</source>
        <comment>under the time left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until the dose check</source>
        <comment>under the time left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until the next pull</source>
        <comment>under the time left</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too long out of the cryogen</source>
        <comment>under the time that is over</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath not right</source>
        <comment>under the time that is over</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>diluent not right</source>
        <comment>under the time that is over</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath not measured</source>
        <comment>under the time that is over</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swirl is late</source>
        <comment>under the time that is over</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needle change is late</source>
        <comment>under the time that is over</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dose check is late</source>
        <comment>under the time that is over</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull is late</source>
        <comment>under the time that is over</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inside</source>
        <comment>the bath&apos;s temperature against its tolerance</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not sure</source>
        <comment>the bath&apos;s temperature against its tolerance</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>outside</source>
        <comment>the bath&apos;s temperature against its tolerance</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometer&apos;s own check failed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometer has not measured yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No thermometer is connected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometer&apos;s line is shorted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometer gave no answer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometer&apos;s answer cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no temperature of a water bath.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water cannot change that fast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thermometer is gone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond the calibrated range</source>
        <comment>a reading</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibration is overdue</source>
        <comment>a thermometer</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not calibrated</source>
        <comment>a thermometer</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too uncertain to say inside</source>
        <comment>a thermometer</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by name</source>
        <comment>how a person is known: one tap on a name</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>proven</source>
        <comment>how a person is known: by PIN or badge</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minor</source>
        <comment>severity of a deviation</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>major</source>
        <comment>severity of a deviation</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>critical</source>
        <comment>severity of a deviation</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit</source>
        <comment>sort of a rule: passing it is a deviation</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reminder</source>
        <comment>sort of a rule: passing it is only late</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recorded</source>
        <comment>status of the record</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recording …</source>
        <comment>status of the record: something waits</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT CONFIRMED</source>
        <comment>status of the record</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT RECORDED</source>
        <comment>status of the record</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to the diluent</source>
        <comment>under the time that is over</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take it down</source>
        <comment>under the time that is over</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a lot expired, in quarantine or unknown</source>
        <comment>why a bag is on hold</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::app::Session</name>
    <message>
        <source>Bathside is running already with this trail (process %1). Use that one, or end it first: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trail&apos;s folder cannot be written to (%1): %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trail&apos;s folder cannot be made (%1): %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::app::StationApp</name>
    <message>
        <source>The card cannot be read (%1): %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vaccine is being thawed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::BenchPage</name>
    <message>
        <source>Not taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>Under the big clock: whose time it is, and until what.</extracomment>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The big button says what has been DONE. Press it in the moment you have done it: Bathside takes the time, watches the limits and calls you. A slip of the finger? TAKE BACK.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the bench up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go through the list: alarm heard, diluent inspected, bath at temperature, eyes and hands protected. Then start a bag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready for a bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a bag, inspect it, draw the diluent. Then take the ampoules out of the cryogen: from there on every step is one press.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>TAKE BACK</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HEARD</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing sounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CLOSE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MORE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on duty: %1</source>
        <extracomment>%1 is a person&apos;s initials.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <extracomment>After the digits of the big clock: minutes.</extracomment>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::CardGauge</name>
    <message>
        <source>Hold a bank card against the outline. Make it wider or narrower until the card fits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>narrower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::Cautions</name>
    <message>
        <source>Cryogen burns skin and eyes and displaces the oxygen of a closed room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frozen ampoules can burst.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eye or face protection, insulated gloves, tongs, ventilation.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass cuts: open it away from you, thumb clear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needles and glass: sharps container.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Self-injection: medical advice at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label, veterinarian, site rules and law come first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::CheckTile</name>
    <message>
        <source>needed</source>
        <comment>a check without which no bag starts</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <comment>a check not done yet</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ok</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not ok</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waived</source>
        <comment>a check overridden with a reason</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::DayModel</name>
    <message>
        <source>An entry of a kind that this version does not know: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::DayView</name>
    <message>
        <source>CORRECTED: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>TAKEN BACK: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::Frame</name>
    <message>
        <source>REHEARSAL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing here counts. The real day has its own record.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::LetterPad</name>
    <message>
        <source>A B C</source>
        <comment>shows the letter keys</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 2 3</source>
        <comment>shows the digit keys</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space</source>
        <comment>the space between words</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete the last sign</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · no bag</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::LotTile</name>
    <message>
        <source>good to %1</source>
        <comment>expiry</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>near expiry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>allowed today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>count it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next</source>
        <comment>the next ampoules are of this lot</comment>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a number first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is outside what can be. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From %1 to %2 %3.</source>
        <comment>lowest, highest, unit</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::ReckoningView</name>
    <message>
        <source>expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tolerance</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::RecordPage</name>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
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
        <source>Which day?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one person …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one bag …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one lot …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another day …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What shall be shown?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which one?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export %1 to where?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not copied: a pull is open. Copy the record between pulls.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the whole record to where?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(no stick was found)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entry %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which entry?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>person %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry %1, recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was corrected later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It was taken back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It mends what was said before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exact content</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>working …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>show …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>verify</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>export</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copy</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing of this on this day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>linked entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deviations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which sheet of how many</comment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::SetUpPage</name>
    <message>
        <source>ok</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not ok</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>go on without it …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with a reason, on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the shift lead decided it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>checked in another way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not needed today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is being put right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another reason …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why go on without it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no loudspeaker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I HEARD IT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>play it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not heard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another loudspeaker …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The alarm is playing. Was it heard at the bench?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which loudspeaker?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No other loudspeaker was found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>true size …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with a bank card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which one?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not ok …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on duty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screen …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more checks</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alarm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::StartPage</name>
    <message>
        <source>Bathside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of the cryogen, into the bath, into the diluent, into the bag: Bathside takes the times, watches the limits and keeps the record. The label, the veterinarian in charge and the site&apos;s rules come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rehearse the demo day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing counts. Try every button.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the real day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything is recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark screen</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::StatusBar</name>
    <message>
        <source>no bath reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 · %2 ago</source>
        <extracomment>Under the bath&apos;s temperature; %1 is the verdict (&quot;inside&quot;), %2 the reading&apos;s age (&quot;4 min&quot;).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too old: %1 ago</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>proven</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unproven</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bathside::ui::StoresPage</name>
    <message>
        <source>this computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No CSV file was found on a stick or in the documents.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which delivery?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That file cannot be read, or is larger than 1 MiB.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean dose per bird: %1 µL.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mean dose is known once every bag is down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ADDS UP</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT YET</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NO STORES KEPT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Receive what is there, and lots, balances and places are kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>IN ORDER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is short, apart, expired or near its expiry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more …</source>
        <comment>more lots</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>which page of how many</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>receive …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from a file …</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reckoning</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
