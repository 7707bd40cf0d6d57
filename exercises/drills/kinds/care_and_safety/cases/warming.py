"""Out of the cold, the damp or the sun."""

from exercises.drills.kinds.care_and_safety.case import ANY_TAPE, CareCase, Figures, held_by
from exercises.drills.kinds.care_and_safety.rules import UNFIT, WARM_UP
from exercises.drills.setting.draw import Draw

AT_ONCE = "Thread it now: whatever fits the machine can be played"
WHILE_WARM = "Play it soon: a warm tape runs all the more smoothly"
NOW = "Play it tonight, as soon as its own recorder is free"
ELSEWHERE = "Leave it till tomorrow, then use whichever is free"
BOTH = "Play it now, on whichever recorder happens to be free"


def degrees(draw: Draw) -> Figures:
    cold, room = draw.whole(-6, 5), draw.whole(19, 23)
    return {"cold": f"{cold} °C".replace("-", "−"), "room_air": f"{room} °C"}


VAN = CareCase(
    name="a van overnight",
    story="{tape}, with {shot}, lay in a van all night, at {cold}. It has just come in, sealed in "
    "its case.",
    wish="What is to be done with it?",
    right="Leave it sealed in its case, best until tomorrow",
    because="A cold tape draws dew out of the room’s air, and a damp tape sticks to the drum. "
    "Sealed in its case it warms slowly and stays dry. That takes hours.",
    wrong={
        AT_ONCE: "It is cold all through. It draws dew, sticks to the drum, and may tear.",
        "Take it out of its case at once, so that it warms sooner": "Out of its case it meets the "
        "room’s damp air while it is cold, and dew settles on it.",
        "Keep it in its case on the warm player, for an hour": "Heat from one side warms it "
        "unevenly, and an hour is not enough. And vents stay free.",
    },
    held={AT_ONCE: ANY_TAPE},
    rule=WARM_UP,
    figures=degrees,
)
MACHINE = CareCase(
    name="a machine from the cold",
    story="The recorder was carried in this morning from a store at {cold}. {tape}, with {shot}, "
    "has lain here since yesterday.",
    wish="When may the first tape go in?",
    right="When the machine too has stood here for hours on end",
    because="Damp settles on a cold drum as it does on a cold tape. Machine and tape both have to "
    "be as warm as the room.",
    wrong={
        "At once: it is the tape that must be warm, and it is": "The cold drum draws dew, and the "
        "tape sticks to it.",
        "As soon as the machine is on and its lamps are lit": "That shows that it has power, not "
        "that it is dry.",
        "When a tape that nobody needs has run through": "That tape would stick to the damp drum, "
        "and may leave its coat on the heads.",
    },
    rule=WARM_UP,
    figures=degrees,
)
DEW_LAMP = CareCase(
    name="the dew lamp",
    story="It has rained for days, and the windows are steamed up. The dew lamp of the recorder "
    "is lit. {tape}, with {shot}, lies ready.",
    wish="What now?",
    right="Leave the machine on, and wait until the lamp goes out by itself",
    because="The lamp says that there is damp inside. Many machines dry themselves while they are "
    "on; how long that takes, only the lamp can tell.",
    wrong={
        "Leave the machine on, and begin after ten minutes, lamp or no lamp": "The lamp is "
        "obeyed. How long it takes depends on the damp, not on a clock.",
        "Switch it off and on until the lamp goes out": "The lamp may go out, but nothing is "
        "drier than before.",
        "Leave it off, and fetch somebody to dry it with its cover off": "Nobody opens a machine "
        "for that: left on, it dries itself.",
    },
    rule=WARM_UP,
)
WORKED_OUT = CareCase(
    name="minutes worked out",
    story="{tape} comes from {cold} into a room of {room_air}. {person} has read that air may "
    "change by 10 °C an hour, and works out in minutes when {shot} can be played.",
    wish="What is that sum worth?",
    right="Nothing: a wound tape warms far more slowly than air",
    because="The limit is for how fast the surroundings change. The inside of a wound tape may "
    "need a whole night.",
    wrong={
        "A lot: after that time the tape is as warm as the room": "The air around it is. The "
        "inside of the wound tape is not.",
        "A lot, if the tape lies out of its case for that time": "Out of its case it draws dew, "
        "and its inside is no warmer.",
        "Something: it is too careful, and half of it will do": "It is not careful enough: a "
        "whole night is safer.",
    },
    rule=WARM_UP,
    source="SMPTE RP 103-1995, Table 1, for the 10 °C. From frost it may take up to about 16 "
    "hours: a navy manual on photography",
    figures=degrees,
)
SUN = CareCase(
    name="behind a windscreen",
    story="{tape}, with {shot}, lay behind a windscreen in the sun. Its case is hot to the touch.",
    wish="What is to be done with it?",
    right="Let it cool in its case, and have it seen before it plays",
    because="Heat softens tape and bends shells. Slow cooling does no further harm; whether it "
    "may be played is for the person in charge.",
    wrong={
        WHILE_WARM: "Hot layers stick to one another, and the shell may be bent: it can jam or "
        "tear.",
        "Keep it in the refrigerator, and play it in an hour": "It would come out cold, and draw "
        "dew.",
        "Wind it to its end and back, so that it cools evenly": "Winding presses soft layers "
        "together, and pulls the tape longer.",
    },
    held={WHILE_WARM: ANY_TAPE},
    rule=UNFIT,
)
COLD_MASTER = CareCase(
    name="a cold edit master",
    story="The edit master, brought through the frost, has been in the room for ten minutes. Its "
    "own recorder is taken until the evening; the other one is free. Next comes {shot}, from "
    "{tape}.",
    wish="What is to be done with the edit master?",
    right="Leave it till tomorrow, then use its own recorder",
    because="It has to warm up for hours, best overnight. And one film is laid on one recorder.",
    wrong={
        NOW: "By the evening it may still be cold inside. A cold tape draws dew, and sticks.",
        ELSEWHERE: "It is warm by then, but the joint between two recorders shows.",
        BOTH: "It is cold and draws dew; and the joint between two recorders shows.",
    },
    held={
        NOW: ANY_TAPE,
        ELSEWHERE: held_by("recorders-alike"),
        BOTH: held_by("any-tape-plays", "recorders-alike"),
    },
    rule=WARM_UP,
)

CASES = (VAN, MACHINE, DEW_LAMP, WORKED_OUT, SUN, COLD_MASTER)
