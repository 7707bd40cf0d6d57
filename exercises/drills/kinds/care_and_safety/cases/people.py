"""Backs, feet, ears and tired heads."""

from exercises.drills.kinds.care_and_safety.case import LICENSED, CareCase, Figures
from exercises.drills.kinds.care_and_safety.rules import LIFTING, MAINS, PAUSES
from exercises.drills.setting.draw import Draw


def weight(draw: Draw) -> Figures:
    return {"kilos": draw.whole(24, 38)}


HEAVY = CareCase(
    name="a recorder on a low shelf",
    story="For {shot}, from {tape}, another recorder of {kilos} kg is wanted on {room}. It stands "
    "on a low shelf. A second learner offers to help.",
    wish="How does it get there?",
    right="It stays, until you know whose work it is to move it",
    because="A machine is not a learner’s to move. There is somebody whose work that is, and who "
    "has what it takes.",
    wrong={
        "You lift it together, with straight backs, on a count": "Two carry less than twice what "
        "one can, and from low down less still.",
        "You slide it onto a trolley, one end after the other": "It tips, and falls on feet.",
        "You take one end each, and walk it along its edges": "One slip, and it falls on feet.",
    },
    rule=LIFTING,
    source="common practice; that two carry less than twice: HSE guidance",
    figures=weight,
)
GLARE = CareCase(
    name="a monitor in the glare",
    story="The sun falls on the monitor of {room}, so that {shot}, from {tape}, can hardly be "
    "judged. {person} wants it at the other end of the table.",
    wish="What is to be done?",
    right="Draw the curtain, and ask whose work it is to move it",
    because="A monitor is heavy at the front, and its glass is under vacuum. Moving it is "
    "somebody else’s work.",
    wrong={
        "Pull its plug, and carry it with its glass to your chest": "If it slips or breaks, it "
        "does so in your arms.",
        "Push it along the table while it is switched on": "Its leads are pulled, and at the edge "
        "it tips.",
        "Ask the person in charge of the bench to hold its other end": "It is still a learner at "
        "this end.",
    },
    rule=LIFTING,
)
FALLING = CareCase(
    name="it slides",
    story="Somebody wheels a recorder through the room while {shot}, from {tape}, is being "
    "played. At the sill it begins to slide off the trolley.",
    wish="You stand beside it. What do you do?",
    right="Step back, and let it fall",
    because="Nobody can hold such a weight once it falls. Machines can be replaced.",
    wrong={
        "Catch it from below with both arms": "It takes your arms with it, and your feet are "
        "under it.",
        "Hold on to it by one of its leads": "The lead tears, or takes you along.",
        "Keep it up with a knee until help comes": "It breaks what is under it.",
    },
    rule=LIFTING,
)
BOX = CareCase(
    name="a box of tapes",
    story="All tapes of the film, {tape} with {shot} among them, are to go to the office. They "
    "fill one large box, which {person} can just raise.",
    wish="How do they get there?",
    right="In small boxes, each light to hold on the stairs",
    because="What can be divided is divided. A load that you can just raise is too heavy.",
    wrong={
        "In the large box, once everybody has left the stairs": "It is as heavy with nobody on "
        "the stairs.",
        "In the large box, with a rest on each landing": "Being raised again and again is what "
        "harms a back.",
        "Stacked on an arm, without their cases": "They fall, and gather dust.",
    },
    rule=LIFTING,
)
TIRED = CareCase(
    name="a line read twice",
    story="After two hours without a pause, {person} has read one line of the checklist twice, "
    "and said yes to it without looking. Next comes {shot}, from {tape}.",
    wish="What comes first?",
    right="A pause on the quay, without a screen",
    because="Tired people read switches wrongly. The shot is still there after the pause.",
    wrong={
        "The shot, and a long pause after it": "It is the next edit that goes wrong, not the one "
        "after.",
        "The shot, with the person in charge looking on": "Whoever looks on does not see what a "
        "tired person misreads.",
        "Another shot, an easier one": "No edit is easy for somebody who does not look.",
    },
    rule=PAUSES,
)
EARS = CareCase(
    name="nothing to be heard",
    story="{person} plays {shot}, from {tape}, and hears nothing. Every knob is turned up by now, "
    "and the headphones are still on.",
    wish="What comes first?",
    right="Headphones off, then every knob down",
    because="When the sound comes, it comes at full strength, and can harm ears for good. Then "
    "walk along the signal path.",
    wrong={
        "Headphones off, and one lead pulled after another": "With the knobs up, a pulled lead "
        "comes as a bang, for ears and loudspeakers.",
        "Headphones pressed on, to hear whether there is hiss": "When the sound comes, it comes "
        "at full strength.",
        "Headphones on, and another tape in, to compare": "That one may sound, at full strength.",
    },
    rule=PAUSES,
)
FULL_STRIP = CareCase(
    name="one socket too few",
    story="All sockets of {room} are taken. It is chilly, and {person} has brought a fan heater "
    "to sit by while {shot} is copied from {tape}.",
    wish="Where is it plugged in?",
    right="Nowhere, until the person in charge has said where",
    because="A heater takes more than many socket strips bear, and they burn. It also warms "
    "machines and tapes on one side.",
    wrong={
        "Here, in place of the monitor": "Then the heater hangs on the strip of the machines.",
        "Here, by a second strip plugged into the first": "Strips in a row get hot, and burn.",
        "Next door, by a long lead under the door": "A lead under a door gets worn through.",
    },
    rule=MAINS,
    caution=LICENSED,
)

CASES = (HEAVY, GLARE, FALLING, BOX, TIRED, EARS, FULL_STRIP)
