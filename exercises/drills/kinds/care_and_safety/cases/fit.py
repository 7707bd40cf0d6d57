"""Nothing is wrong: whoever stops here stops for nothing."""

from exercises.drills.kinds.care_and_safety.case import CareCase, Figures
from exercises.drills.kinds.care_and_safety.limits import NEAREST
from exercises.drills.kinds.care_and_safety.rules import (
    AWAY_FROM_MAGNETS,
    CASSETTE,
    CLOGGED,
    HANDLE,
    MAINS,
    WARM_UP,
)
from exercises.drills.setting.draw import Draw


def since(draw: Draw) -> Figures:
    return {"room_air": f"{draw.whole(19, 23)} °C", "days": draw.whole(2, 6)}


NEXT_DOOR = CareCase(
    name="a tape from next door",
    story="{tape}, with {shot}, has stood upright in the office next door, at {room_air}. The "
    "edit room is as warm, and no lamp warns.",
    wish="When may it be played?",
    right="At once: it is as warm as the room and the machine",
    because="Only what comes from the cold, the damp or the sun has to wait. This tape has been "
    "kept as it should be.",
    wrong={
        "Tomorrow: any tape has to lie in the room overnight": "It is as warm and as dry as the "
        "room already.",
        "In an hour: a tape must rest after it was carried": "Being carried in its case does a "
        "tape no harm.",
        "When the person in charge has seen it": "Nothing about it is in doubt: ask where "
        "something is.",
    },
    rule=WARM_UP,
    figures=since,
)
DUSTY_CASE = CareCase(
    name="dust on the case",
    story="The case of {tape}, with {shot}, has stood in the office for {days} months, and is "
    "dusty outside. The shell in it is clean.",
    wish="What is to be done?",
    right="Wipe the case, wash your hands, and play the tape",
    because="That is what the case is for: the dust is on it and not in it.",
    wrong={
        "Keep it apart, and ask the person in charge before it is played": "The shell is clean, "
        "and the tape was kept as it should be.",
        "Open the flap of the shell, and wipe the tape as well": "Nobody touches the tape: "
        "fingers leave grease.",
        "Leave the case as it is, and play the tape at once": "The dust would get onto your "
        "hands, and from them into the slot.",
    },
    rule=HANDLE,
    figures=since,
)
A_METRE = CareCase(
    name="a metre from the loudspeaker",
    story="The loudspeaker stands a good metre away from {tape}, with {shot}. {person} wonders "
    "about its magnet.",
    wish="What is to be done?",
    right="Leave both where they are",
    because=f"Its field falls off fast: {NEAREST} cm are enough, and this is a metre.",
    wrong={
        "Keep the tape away, in the room next door": f"Beyond {NEAREST} cm the field is weak "
        "enough.",
        "Switch the loudspeaker off meanwhile": "Its magnet needs no current; and a metre is "
        "enough either way.",
        "Turn its back towards the tape": "The field does not mind which way it faces; and a "
        "metre is enough.",
    },
    rule=AWAY_FROM_MAGNETS,
    source="IASA-TC 05, 3.7: 15 cm",
)
THREADING = CareCase(
    name="no picture yet",
    story="The player has just drawn {tape} in. It whirs and clicks, and there is no picture of "
    "{shot} yet.",
    wish="What is to be done?",
    right="Wait a few seconds: it is threading the tape",
    because="It draws the tape out of the shell and round the drum. That takes a few seconds, and "
    "then it plays.",
    wrong={
        "Hands off, and fetch the person in charge: it has got stuck": "It has not: threading "
        "takes a few seconds.",
        "Turn tracking until a picture comes": "Before the tape lies round the drum, no setting "
        "gives a picture.",
        "Switch it off, and put the tape in again": "Without power it can’t give the tape back.",
    },
    rule=CASSETTE,
)
WARM_LID = CareCase(
    name="a warm lid",
    story="After two hours of work on {shot}, from {tape}, the recorder’s lid is warm to the hand "
    "and its fan hums. The vents are free, and all is as it was on other days.",
    wish="What is to be done?",
    right="Go on working, and keep the vents free",
    because="Machines give off heat. What calls for help is a smell, smoke, or something new.",
    wrong={
        "Switch it off at the wall, and fetch the person in charge": "There is no danger: it is "
        "as warm as on any other day.",
        "Raise its cover a little, so that the heat gets out": "Covers stay shut. Its fan does "
        "that work.",
        "Stand a cool pack on it until the lid is cold": "What is cold and wet has no place on a "
        "machine.",
    },
    rule=MAINS,
)
DROPOUT = CareCase(
    name="one white streak",
    story="In {shot}, on {tape}, a short white streak flashes up once. Played again, it comes at "
    "the same frame. The rest of the tape is clear.",
    wish="What does that call for?",
    right="A note: at that frame the tape is bare, or dusty",
    because="What comes at the same frame each time is on the tape: a dropout. One alone is no "
    "reason to stop.",
    wrong={
        "A halt: the heads have to be cleaned": "Dirty heads disturb every frame, and every tape.",
        "A halt, until the person in charge has seen the tape": "One dropout is common, and harms "
        "no machine.",
        "A touch of tracking at that frame": "A bare or dusty spot gives no signal, wherever the "
        "heads run.",
    },
    rule=CLOGGED,
)

CASES = (NEXT_DOOR, DUSTY_CASE, A_METRE, THREADING, WARM_LID, DROPOUT)
