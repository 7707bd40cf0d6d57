"""The air of a room, and places to keep a tape."""

from collections.abc import Mapping

from exercises.drills.kinds.care_and_safety.case import CareCase, Figures
from exercises.drills.kinds.care_and_safety.limits import KEEPING, OPERATING, STORING, Air
from exercises.drills.kinds.care_and_safety.rules import SUITABLE_AIR
from exercises.drills.setting.draw import Draw

# °C and percent, from and to: what is drawn for a room that has this and no other fault.
ROOMS = {
    "": ((18, 24), (35, 65)),
    "warm": ((27, 32), (35, 65)),
    "cold": ((8, 14), (35, 65)),
    "damp": ((18, 24), (76, 90)),
}
ANSWERS = {
    "": "Yes: there is nothing against it",
    "warm": "Not yet: the room is too warm",
    "cold": "Not yet: the room is too cold",
    "damp": "Not yet: the air is too damp",
}
AGAINST = {
    "": "Not in this room: {danger}",
    "warm": "{warmth} °C is not too warm: up to 25 °C will do.",
    "cold": "{warmth} °C is not too cold: from 17 °C on will do.",
    "damp": "{damp} % is not too damp: up to 70 % will do.",
}
DANGERS = {
    "warm": "warm tape softens, and its layers stick together.",
    "cold": "cold tape is stiff, and draws dew where the air is warmer.",
    "damp": "damp tape sticks to the drum.",
}


def room(fault: str) -> CareCase:
    """A room with one fault, or none."""

    def figures(draw: Draw) -> Figures:
        warmth, damp = ROOMS[fault]
        drawn = {"warmth": draw.whole(*warmth), "damp": draw.whole(*damp)}
        return {**drawn, "danger": DANGERS.get(fault, "")}

    return CareCase(
        name=f"a {fault or 'suitable'} room",
        story="In the edit room it is {warmth} °C warm, and the air has {damp} % relative "
        "humidity. {tape}, with {shot}, has lain there since yesterday.",
        wish="May it be played?",
        right=ANSWERS[fault],
        because="Tapes are played at 17 to 25 °C and 30 to 70 % relative humidity.",
        wrong={text: AGAINST[name] for name, text in ANSWERS.items() if name != fault},
        rule=SUITABLE_AIR,
        source=OPERATING.source,
        figures=figures,
    )


NAMES = ("the store room", "the back office", "the upper landing", "the room by the stairs")
PLACE = "{name_%s}: {warmth_%s} °C and {damp_%s} %%"
# °C and percent, from and to: places that suit no tape, and what is wrong with them.
UNSUITABLE: Mapping[str, tuple[tuple[int, int], tuple[int, int], str]] = {
    "hot": ((29, 36), (27, 50), "It is too warm there: tape ages faster, and its layers stick."),
    "moist": ((16, 18), (72, 88), "It is too damp there: tape grows mould."),
    "parched": ((26, 31), (9, 18), "It is too warm and too dry there: tape ages, and draws dust."),
}


def placed(name: str) -> str:
    return PLACE % (name, name, name)


def kept(name: str, air: Air, years: str, because: str) -> CareCase:
    """One of four places has the right air."""

    def figures(draw: Draw) -> Figures:
        airs = {name: (warmth, damp) for name, (warmth, damp, _) in UNSUITABLE.items()}
        airs["good"] = inside(air.warmth), inside(air.damp)
        found: dict[str, object] = {"years": draw.whole(2, 9)}
        for name, called in zip(airs, draw.shuffled(NAMES), strict=True):
            warmth, damp = airs[name]
            found |= {f"name_{name}": called, f"warmth_{name}": draw.whole(*warmth)}
            found[f"damp_{name}"] = draw.whole(*damp)
        return found

    return CareCase(
        name=name,
        story="The film is finished. {tape}, with {shot}, is to be kept " + years + ".",
        wish="Where? Each place with its warmth and relative humidity:",
        right=placed("good"),
        because=because,
        wrong={placed(name): why for name, (_, _, why) in UNSUITABLE.items()},
        rule=SUITABLE_AIR,
        source=air.source,
        figures=figures,
    )


def inside(limits: tuple[int, int]) -> tuple[int, int]:
    """Not at the limits themselves."""
    return limits[0] + 1, limits[1] - 1


CASES = (
    *map(room, ROOMS),
    kept(
        "some years",
        STORING,
        "for {years} years",
        "For up to ten years: 15 to 23 °C and 40 to 55 % relative humidity, and steady.",
    ),
    kept(
        "longer than ten years",
        KEEPING,
        "for longer than ten years",
        "For longer than ten years 17 °C and 30 % are best, within 2 °C and 5 %, and steady.",
    ),
)
