"""Magnets, seen and hidden."""

from exercises.drills.kinds.care_and_safety.case import CareCase
from exercises.drills.kinds.care_and_safety.rules import AWAY_FROM_MAGNETS

SOURCE = "IASA-TC 05, 3.7: 15 cm"

HEADPHONES = CareCase(
    name="headphones on the table",
    story="{tape}, with {shot}, lies on {room}. {person} is about to put the headphones down "
    "there too.",
    wish="How far from the tape, at least?",
    right="15 cm, about the length of a hand",
    because="Headphones, microphones, loudspeakers and needle meters hold magnets. At 15 cm their "
    "field is weak enough.",
    wrong={
        "1 cm, so that they don’t touch": "So close, the field can wipe part of what is recorded.",
        "3 m, at the other end of the room": "The field falls off fast: 15 cm will do.",
        "Any distance, once they are unplugged": "Their magnet needs no current.",
    },
    rule=AWAY_FROM_MAGNETS,
    source=SOURCE,
)
ON_TOP = CareCase(
    name="on the loudspeaker",
    story="There is hardly room on {room}. Somebody has stacked {tape}, with {shot}, on the "
    "loudspeaker.",
    wish="Where does it belong?",
    right="Upright in its case, on the shelf beside the door",
    because="A loudspeaker holds a strong magnet, whether it sounds or not.",
    wrong={
        "Where it is, as long as the loudspeaker is silent": "The magnet is there in silence too.",
        "Where it is, with a sheet of card under its case": "Card stops no magnetic field.",
        "Flat on the monitor, where nothing else stands": "A monitor holds magnets and coils, and "
        "its vents must stay free.",
    },
    rule=AWAY_FROM_MAGNETS,
    source=SOURCE,
)
CLASP = CareCase(
    name="a bag with a clasp",
    story="A bag lies on {tape}, which holds {shot}. Its clasp shuts with a magnet.",
    wish="What is to be done?",
    right="Take them apart; report which tape it was",
    because="The clasp can have wiped a place. Whoever knows of it plays the tape through before "
    "anything depends on it.",
    wrong={
        "Leave both: so small a magnet does nothing": "A small magnet right on the tape is "
        "stronger there than a large one far off.",
        "Put the tape into its case, then the bag on it": "Plastic stops no magnetic field.",
        "Wind the tape on, so that it hits another place": "The next place is wiped as well.",
    },
    rule=AWAY_FROM_MAGNETS,
    source=SOURCE,
)
DEMAGNETISER = CareCase(
    name="the heads are demagnetised",
    story="A licensed technician has come to demagnetise the recorder’s heads. {tape}, with "
    "{shot}, lies on {room}.",
    wish="Where do the tapes go meanwhile?",
    right="Out of the room, every last one",
    because="A demagnetiser’s field is far stronger than a loudspeaker’s: it is made to wipe.",
    wrong={
        "Into their cases, with every lid shut": "Plastic stops no magnetic field.",
        "At least 15 cm away from the recorder": "That is for headphones. A demagnetiser reaches "
        "much further.",
        "Into the player, behind its metal cover": "The field reaches in there too.",
    },
    rule=AWAY_FROM_MAGNETS,
)

CASES = (HEADPHONES, ON_TOP, CLASP, DEMAGNETISER)
