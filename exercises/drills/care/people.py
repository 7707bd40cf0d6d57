"""Solvents, mains, lifting, moving parts: where somebody can be hurt."""

from exercises.drills.care.case import LICENSED, LOCAL, Case
from exercises.drills.quay_street import ACTIONS, TAPES
from exercises.drills.rules import CLEAN_SAFELY, LIFTING, MAINS
from exercises.drills.scene import Scene

NIOSH = "NIOSH Pocket Guide 0359, isopropyl alcohol"
OTHER = "Leave it, and finish the tape on the other bench’s recorder"
SHIFT, SHORT = 400, 500  # ppm: over a working day, and over 15 minutes


def cleaning_heads(scene: Scene) -> Case:
    return Case(
        story=f"After {scene.draw.pick(TAPES)}, {scene.draw.pick(ACTIONS).picture} looks "
        "veiled: the heads are dirty. The workshop allows trained people to clean them, with "
        "isopropyl alcohol.",
        wish="You have been trained. How do you begin?",
        right="Switch off and unplug, open the window, and see that no flame is near",
        because="Its vapour catches fire from about 12 °C on, and is not good to breathe.",
        wrong={
            "Machine on and turning, so that the drum is reached all round": "A turning drum "
            "takes fingers and cloth along, and a live machine can spark.",
            "Switch off, and shut door and window so that no dust gets in": "The vapour would "
            "gather, to be breathed and to catch fire.",
            "Unplug, take a good splash of it, and play a tape at once": "Vapour from a splash "
            "can catch fire from a spark, and wet heads tear tape: take little, and let it dry.",
        },
        rule=CLEAN_SAFELY,
        source=f"{NIOSH}: flash point 11.7 °C (53 °F)",
        caution=LOCAL,
    )


def vapour(scene: Scene) -> Case:
    """A measured vapour against the limits."""
    ppm = scene.draw.whole(41, 49) * 10
    return Case(
        story=f"While {scene.draw.pick(ACTIONS).picture} is being cut, a day of cleaning goes on "
        f"next door. The average over the working day was {ppm} ppm of isopropyl alcohol; no "
        "quarter of an hour was higher.",
        wish="What follows from that?",
        right="Too much for a working day: air the room, and report it",
        because=f"The limit is {SHIFT} ppm over a working day; {SHORT} ppm holds for a quarter of "
        "an hour only.",
        wrong={
            f"Nothing: it stayed below {SHORT} ppm all day, and that is the limit": f"{SHORT} ppm "
            f"is for 15 minutes; over a day it is {SHIFT}.",
            "Nothing: as long as nobody feels ill the air is good enough": "Vapour harms before "
            "anybody feels it.",
            "Leave the building for a week: at such a figure life is in danger": "Danger to life "
            "begins at 2,000 ppm; and whoever overstates a danger is not heard the next time.",
        },
        rule=CLEAN_SAFELY,
        source=f"{NIOSH}: 400 ppm (TWA), 500 ppm (STEL), 2,000 ppm (IDLH). Your country’s own "
        "limits may be lower",
    )


def spilt_tea(scene: Scene) -> Case:
    return Case(
        story=f"Tea runs into the recorder while {scene.draw.pick(ACTIONS).picture} is being "
        f"laid. {scene.draw.pick(TAPES)} is on the player.",
        wish="What first?",
        right="Unplug it, if you can reach the plug dry; then tell the person in charge",
        because="Water and mains together kill; the tapes come second.",
        wrong={
            "Stop the tape and take it out, then wipe the recorder from above": "The machine is "
            "still live while you reach into it.",
            "Take the cover off at once, so that the inside can dry out": "Parts inside "
            "stay charged, even unplugged.",
            "Let the edit finish: stopping now would leave a bad joint": "A live, wet machine "
            "can kill or burn; a joint can be made again.",
        },
        rule=MAINS,
        caution=LICENSED,
    )


def dead_machine(scene: Scene) -> Case:
    return Case(
        story="The recorder does nothing at all when it is switched on. The edit master is in "
        f"it, and {scene.draw.pick(TAPES)} with {scene.draw.pick(ACTIONS).picture} waits on the "
        "player.",
        wish="What do you do?",
        right="Unplug it, put a note on it, and tell the person in charge",
        because="A fault in the mains part can be anything; a note keeps the next person from it.",
        wrong={
            "Open it and look whether a fuse has blown": "Parts inside can hold a charge, even "
            "unplugged.",
            "Try a stronger fuse in the plug, and see whether that one holds": "A fuse that is too "
            "strong sets cables on fire.",
            OTHER: "The next person would switch on a machine that can hurt them, and the joint "
            "may show.",
        },
        held={OTHER: "recorders-alike"},
        rule=MAINS,
        caution=LICENSED,
    )


def heavy_recorder(scene: Scene) -> Case:
    kilos = scene.draw.whole(27, 38)
    return Case(
        story=f"For {scene.draw.pick(ACTIONS).picture}, a recorder of {kilos} kg is to go from a "
        f"low shelf to {scene.room}. You are alone.",
        wish="How do you move it?",
        right="Wait for a second person, or fetch a trolley with a lift",
        because="25 kg (men) and 16 kg (women) close to the body are where a guide asks for a "
        "closer look; from a low shelf it is less.",
        wrong={
            "Lift it in one go, with a straight back and bent knees": "No way of bending "
            "makes it lighter: such a load can hurt a back for good.",
            "Pull it off the shelf onto your chest, then turn with it": "Turning under load is "
            "what hurts a back.",
            "Lift one end at a time, and walk it along the edge": "One slip, and it falls on feet.",
        },
        rule=LIFTING,
        source="HSE INDG143 (figures from memory); local rules may ask for less",
    )


def turning_drum(scene: Scene) -> Case:
    return Case(
        story=f"Something glitters beside the drum of the recorder while "
        f"{scene.draw.pick(ACTIONS).picture} is rewinding on {scene.draw.pick(TAPES)}. The lid "
        "is off for cleaning day.",
        wish="What do you do?",
        right="Stop it, switch off, and wait until nothing turns",
        because="A drum turns 25 to 30 times a second, and catches sleeves, hair and fingers.",
        wrong={
            "Pick it out with tweezers, between two turns of the drum": "There is no time between "
            "two turns: the drum throws tweezers, and breaks its heads.",
            "Blow it away with a can of air while the tape goes on winding": "It would go where "
            "the heads are.",
            "Press a finger on the drum’s edge until it has stopped": "The edge holds the heads: "
            "it cuts, and they break.",
        },
        rule=MAINS,
        caution=LICENSED,
    )
