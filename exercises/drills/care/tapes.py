"""Magnets, dust, fingers and shelves: where a tape can be hurt."""

from exercises.drills.care.case import Case
from exercises.drills.quay_street import ACTIONS, TAPES
from exercises.drills.rules import AWAY_FROM_MAGNETS, HANDLE
from exercises.drills.scene import Scene

COUNTED = "Where it is in the machine, as the counter marks the place"
NEAREST = 15  # cm, to microphones, headphones, loudspeakers (IASA-TC 05)


def headphones(scene: Scene) -> Case:
    return Case(
        story=f"{scene.draw.pick(TAPES)}, with {scene.draw.pick(ACTIONS).picture}, lies on "
        f"{scene.room}, and so do the headphones.",
        wish="How far apart should they be at least?",
        right=f"{NEAREST} cm at least: the magnets’ field is weak enough there",
        because="Headphones, microphones, loudspeakers and needle meters hold magnets.",
        wrong={
            "It does not matter as long as the headphones are unplugged": "Their magnet needs no "
            "current, and can wipe part of what is recorded.",
            "1 cm: just so that they don’t touch each other": "So close, the field is strong "
            "enough to wipe part of what is recorded.",
            "3 m: even in the same room they would wipe it": "The field falls off fast; 15 cm do.",
        },
        rule=AWAY_FROM_MAGNETS,
        source="IASA-TC 05, 3.7: 15 cm",
    )


def on_the_loudspeaker(scene: Scene) -> Case:
    return Case(
        story=f"There is hardly room on {scene.room}. Somebody has stacked "
        f"{scene.draw.pick(TAPES)}, with {scene.draw.pick(ACTIONS).picture}, on the loudspeaker.",
        wish="What do you do?",
        right="Put it upright in its case, on the shelf",
        because="A loudspeaker holds a strong magnet, whether it sounds or not.",
        wrong={
            "Leave it while the loudspeaker is silent": "The magnet is there in silence too, "
            "and can wipe part of what is recorded.",
            "Put a sheet of card between the two": "Card stops no magnetic field: the tape is "
            "still in it.",
            "Lay it flat under the monitor instead, out of the way": "There are strong fields "
            "under a monitor, and a tape is kept upright.",
        },
        rule=AWAY_FROM_MAGNETS,
        source="IASA-TC 05, 3.7; SMPTE RP 103-1995: at most 800 A/m",
    )


def slack_loop(scene: Scene) -> Case:
    return Case(
        story=f"The player stops by itself in the middle of {scene.draw.pick(ACTIONS).picture}; "
        f"when {scene.draw.pick(TAPES)} comes out, a loop of tape hangs from the shell.",
        wish="What do you do?",
        right="Touch nothing, and fetch the person in charge",
        because="A loop can still be wound in by hand by somebody who has learned it, if nobody "
        "pulls or creases it.",
        wrong={
            "Pull the loop straight with clean, dry fingers": "Fingers leave grease, and a pull "
            "stretches the tape for good.",
            "Push it back into the shell, and play on from there": "A crease knocks "
            "against the heads.",
            "Cut the loop off, as it would only jam again": "What is cut off is lost, and "
            "a splice harms heads.",
        },
        rule=HANDLE,
    )


def end_of_the_day(scene: Scene) -> Case:
    return Case(
        story=f"The session on {scene.room} ends in the middle of {scene.draw.pick(TAPES)}, at "
        f"{scene.draw.pick(ACTIONS).picture}.",
        wish="How is the tape left?",
        right="Rewound to its start, in its case and standing upright",
        because="An even wind and an upright case keep its edges straight.",
        wrong={
            COUNTED: "Tape left around a drum takes a dent; and the counter finds no place once it "
            "has been set to zero.",
            "Out of the machine at that place, flat on the pile": "A tape that lies flat slips, "
            "and its edge with it.",
            "Rewound, without its case, so that it gets air": "Dust is what it gets, and dust "
            "scratches tape and heads.",
        },
        held={COUNTED: "counter-is-time-code"},
        rule=HANDLE,
    )


def dusty_floor(scene: Scene) -> Case:
    return Case(
        story=f"{scene.draw.pick(TAPES)}, the only tape with "
        f"{scene.draw.pick(ACTIONS).picture}, has fallen on the floor; one corner of the shell is "
        "cracked.",
        wish="What do you do with it?",
        right="Don’t play it: put a label on it, and ask first",
        because="A cracked shell may tear the tape or jam; it can be given a new shell first.",
        wrong={
            "Play it once, to see whether it still runs": "A broken shell can jam or tear the "
            "tape: that may be the last time.",
            "Copy it as fast as can be, before the crack grows": "Playing is what harms it now.",
            "Glue the corner, and play it later": "Glue runs where the tape goes, and sticks its "
            "layers.",
        },
        rule=HANDLE,
    )
