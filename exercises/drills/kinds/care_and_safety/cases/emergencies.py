"""Somebody is hurt, or something burns."""

from exercises.drills.kinds.care_and_safety.case import EMERGENCY, LICENSED, CareCase
from exercises.drills.kinds.care_and_safety.rules import FIRE, MAINS, SHOCK

SOURCE = "common first-aid teaching; local rules and emergency services come first"

HELD_FAST = CareCase(
    name="held fast by a current",
    story="{person} has touched a bare mains lead, and can’t let go of it. {tape} is still "
    "running, with {shot}.",
    wish="What comes first?",
    right="Cut the supply, then call for help and go to them",
    because="Whoever touches them gets the shock as well. Once the supply is cut, every second "
    "counts for help.",
    wrong={
        "Pull them away, then cut the supply and call for help": "You would get the shock as "
        "well, and be held too.",
        "Touch nothing, and fetch the person in charge": "Each second of current counts, and the "
        "supply can be cut at once.",
        "Knock the lead out of their hand, then call for help": "You are as near to it as they "
        "are.",
    },
    rule=SHOCK,
    source=SOURCE,
    caution=EMERGENCY,
)
FEELS_WELL = CareCase(
    name="it was only a moment",
    story="{person} got a shock from the metal case of a monitor while looking at {shot}. It was "
    "over at once, and “it was nothing”. {tape} waits.",
    wish="What comes next?",
    right="A doctor sees them today; the monitor is cut at the wall, and stays off",
    because="A shock may disturb the heart later on. And a case that gave one shock gives the "
    "next.",
    wrong={
        "They rest until the person in charge has come by; the monitor stays off": "A heart may be "
        "disturbed later than that, and the case is still live.",
        "They go on working, and the monitor is moved away": "It may harm them later, and others "
        "where it goes.",
        "Somebody touches it again, to see what it was": "That may be the second accident of the "
        "day.",
    },
    rule=SHOCK,
    source=SOURCE,
    caution=EMERGENCY,
)
FLAMES = CareCase(
    name="flames",
    story="Flames come out of the recorder. The edit master is in it; {tape}, with {shot}, lies "
    "beside it.",
    wish="What is to be done?",
    right="Warn everybody, get out, shut the door, call the fire service",
    because="Smoke harms faster than flames. A film can be made again.",
    wrong={
        "Get the tapes out, warn everybody, call the fire service": "The time it takes to reach "
        "for a tape is the time it takes to be caught.",
        "Switch off at the wall, pour water on it, open the window": "Water and mains kill, and "
        "air feeds a fire.",
        "Take the cover off, so that it can be put out from inside": "Air feeds the fire, and you "
        "stand over it.",
    },
    rule=FIRE,
    source=SOURCE,
    caution=EMERGENCY,
)
LEFT_BEHIND = CareCase(
    name="a tape left behind",
    story="The edit room is full of smoke; everybody is out. {tape}, the only tape with {shot}, "
    "is still inside.",
    wish="What becomes of it?",
    right="It stays, and so does everybody else out here",
    because="Nobody goes back into smoke. It harms within a few breaths.",
    wrong={
        "One of you goes in, bent low, and fetches it": "Smoke harms within a few breaths, low "
        "down too.",
        "It is fetched once the smoke has thinned a little": "When it is safe, the fire service "
        "says so.",
        "It is fetched by two, holding on to one another": "Then two are in danger.",
    },
    rule=FIRE,
    source=SOURCE,
    caution=EMERGENCY,
)
TINGLE = CareCase(
    name="a tingle",
    story="With one hand on the player and one on the recorder, {person} feels a faint tingle. "
    "{tape}, with {shot}, is in the player.",
    wish="What is to be done?",
    right="Let go, keep everybody away, have it cut at the wall, and fetch the person in charge",
    because="A tingle says that a case is live where it should not be. Until the supply is cut, "
    "whoever comes by may touch it.",
    wrong={
        "Touch one of them at a time, and keep everybody else away": "One hand is enough, with "
        "your feet on the floor.",
        "Let go, join their cases with a wire, and tell the person in charge": "That is mains "
        "wiring: it is for licensed people.",
        "Turn one of the plugs round, and feel whether it has gone": "Feeling for it is how it "
        "gets somebody.",
    },
    rule=MAINS,
    caution=LICENSED,
)

CASES = (HELD_FAST, FEELS_WELL, FLAMES, LEFT_BEHIND, TINGLE)
