"""Covers, cleaning and what is used for it."""

from exercises.drills.kinds.care_and_safety.case import LICENSED, CareCase
from exercises.drills.kinds.care_and_safety.limits import LOWER, SHIFT
from exercises.drills.kinds.care_and_safety.rules import CLEANING, COVERS

COVER_OFF = CareCase(
    name="a cover is off",
    story="The recorder’s cover is off, and nobody is with it. Something glitters beside the "
    "drum. {tape}, with {shot}, was to be next.",
    wish="What is to be done?",
    right="Touch nothing, keep others away, and fetch the person in charge",
    because="Inside are voltages that can kill, some of them with the plug out, and parts that "
    "turn. Whoever opened it knows what may be touched; you don’t.",
    wrong={
        "Lay the cover back on, and fetch the person in charge": "Whoever lays it on has their "
        "hands over what can kill.",
        "Pull the plug, pick it out, and tell the person in charge": "Some parts hold a charge "
        "with the plug out, and the drum’s heads break at a touch.",
        "Touch nothing, put up a note, and get on with the other machine": "A note does not keep "
        "the next hand out: somebody has to come now.",
    },
    rule=COVERS,
    caution=LICENSED,
)
WHO_CLEANS = CareCase(
    name="who cleans the heads",
    story="{shot}, from {tape}, looks veiled: the recorder’s heads are dirty. {person} has "
    "watched them being cleaned more than once.",
    wish="Who cleans them?",
    right="Only somebody licensed to open that machine",
    because="It is opened for that, and only licensed people open a machine, for cleaning too.",
    wrong={
        "{person}, once its plug has been pulled": "Some parts hold a charge with the plug out; "
        "and heads break easily.",
        "{person}, with somebody reading out the steps": "Reading steps out makes nobody licensed.",
        "Whoever is in charge of the bench that morning": "Being in charge of a bench makes "
        "nobody licensed to open a machine.",
    },
    rule=COVERS,
    caution=LICENSED,
)
SMELL = CareCase(
    name="a smell of alcohol",
    story="The edit room smells strongly of alcohol: heads were cleaned here. {tape}, with "
    "{shot}, was to be played now.",
    wish="What comes first?",
    right="Open the window, touch no switch, and go and ask",
    because="Its vapour catches fire from about 12 °C, and a switch can spark. It is not good to "
    "breathe either.",
    wrong={
        "Open the window, switch the fan on, and wait a while": "Any switch can spark, that of a "
        "fan too.",
        "Leave it all as it is, keep away, and come back in an hour": "Shut in, the vapour "
        "gathers, to be breathed and to catch fire.",
        "Switch the machines on, so that they warm up and dry": "A switch can spark, and wet "
        "heads tear tape.",
    },
    rule=CLEANING,
    source="NIOSH Pocket Guide 0359, isopropyl alcohol: flash point 11.7 °C (53 °F)",
)
LIMITS = CareCase(
    name="two limits for a vapour",
    story=f"A sheet by the door, printed abroad, allows {SHIFT} ppm of alcohol vapour over a "
    f"working day; the bottle says {LOWER}. {{person}} reads both while {{tape}} is rewound from "
    "{shot}.",
    wish="Which of them holds?",
    right="That of the country the bench stands in",
    because="Limits differ by country. The person in charge knows which one holds here.",
    wrong={
        "The higher one: the other is advice": "The higher one may be no limit here at all.",
        "Both: one for mornings, one for evenings": "Each is for a whole working day.",
        "Neither, as long as nobody smells it": "A nose is no measure of what it breathes.",
    },
    rule=CLEANING,
    source="NIOSH Pocket Guide 0359: 400 ppm; 200 ppm in some countries: from memory",
)
CLEANING_TAPE = CareCase(
    name="a cleaning cassette",
    story="{shot}, from {tape}, looks a little veiled. On the shelf lies a cassette that says "
    "that it cleans heads.",
    wish="What is to be done with it?",
    right="Leave it there, and tell the person in charge",
    because="Many cleaning cassettes grind. Whether and when one runs is for licensed people; the "
    "person in charge fetches them.",
    wrong={
        "Run it to its end, and tell the person in charge": "It may grind away more than dirt.",
        "Keep it in the machine, and run it after every tape": "What grinds a little each time "
        "wears the heads out.",
        "Leave it there, and turn the level up": "The level lifts the veil with the picture.",
    },
    rule=CLEANING,
)
TUBE = CareCase(
    name="a monitor without its back",
    story="Behind {room} stands a monitor with its back off. It has been unplugged since "
    "yesterday. {person} needs the cable that lies beside its tube, to see {shot} on {tape}.",
    wish="What is to be done?",
    right="Keep away: its tube may still hold a charge",
    because="A picture tube works at thousands of volts, and can hold its charge long after the "
    "plug is out. Its glass is under vacuum, and flies when it breaks.",
    wrong={
        "Take the cable: it has been unplugged for a day": "A tube can hold its charge for longer "
        "than that.",
        "Ask somebody to hold it, and draw the cable out": "Two pairs of hands are then beside "
        "the tube.",
        "Put its back on before anybody else comes": "Whoever does has their hands beside the "
        "tube.",
    },
    rule=COVERS,
    source="common practice; thousands of volts: from memory",
    caution=LICENSED,
)
CRACK = CareCase(
    name="a crack in the glass",
    story="A tripod has hit the monitor. A crack runs across its glass, and behind it {shot}, "
    "from {tape}, is still to be seen.",
    wish="What is to be done?",
    right="Move back, let nobody near it, and report it",
    because="The tube is under vacuum: when it breaks, glass flies. And behind it are thousands "
    "of volts.",
    wrong={
        "Stick tape over the crack, and fetch the person in charge": "Whoever does stands before "
        "glass that may fly.",
        "Carry it out, with its glass turned away": "Moved, it may break in your arms; and a "
        "monitor is not yours to carry.",
        "Go on for as long as it shows a picture": "A picture does not say that the glass will "
        "hold.",
    },
    rule=COVERS,
    source="common practice; thousands of volts: from memory",
    caution=LICENSED,
)

CASES = (COVER_OFF, WHO_CLEANS, SMELL, LIMITS, CLEANING_TAPE, TUBE, CRACK)
