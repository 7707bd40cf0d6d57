"""Heat, cold and damp. The figures are those of SMPTE RP 103 and ISO 18923."""

from dataclasses import dataclass

from exercises.drills.care.case import Case
from exercises.drills.quay_street import ACTIONS, TAPES
from exercises.drills.rules import CLIMATE
from exercises.drills.scene import Scene

FASTEST = 10  # °C an hour, in use and shipping (SMPTE RP 103-1995, Table 1)


@dataclass(frozen=True, slots=True)
class Air:
    """What a tape bears: °C, and percent of relative humidity."""

    source: str
    warmth: tuple[int, int]
    damp: tuple[int, int]

    def fault(self, warmth: int, damp: int) -> str:
        """The one thing that is wrong with a room; empty where nothing is."""
        if warmth > self.warmth[1]:
            return "warm"
        if warmth < self.warmth[0]:
            return "cold"
        if damp > self.damp[1]:
            return "damp"
        return "dry" if damp < self.damp[0] else ""


OPERATING = Air("SMPTE RP 103-1995, Table 1", (17, 25), (30, 70))
STORING = Air("SMPTE RP 103-1995, Table 1, up to ten years", (15, 23), (40, 55))
# ISO 18923:2000, medium term, gives 23 °C at most and no least: 8 °C is that of its extended term.
KEEPING = Air("ISO 18923:2000, medium term", (8, 23), (20, 50))


def clock(minutes: int) -> str:
    hours, rest = divmod(minutes, 60)
    parts = [f"{hours} h"] if hours else []
    return " ".join([*parts, *([f"{rest} min"] if rest else [])])


def cold_tape(scene: Scene) -> Case:
    """From the cold into the edit room."""
    cold, room = scene.draw.whole(-6, 9), scene.draw.whole(19, 24)
    minutes = 60 * (room - cold) // FASTEST
    tape, shot = scene.draw.pick(TAPES), scene.draw.pick(ACTIONS).picture
    degrees = f"{cold} °C".replace("-", "−")
    return Case(
        story=f"{tape}, with {shot}, lay in a van overnight at {degrees}. The edit room has "
        f"{room} °C.",
        wish="How long should it lie in its case before it is threaded?",
        right=f"{clock(minutes)} at least",
        because=f"It may warm by no more than {FASTEST} °C an hour: {room - cold} °C take "
        f"{clock(minutes)}. A cold tape also gathers damp, and sticks.",
        wrong={
            "no time at all": "A cold tape gathers damp from warm air, and sticks to the drum.",
            f"{clock(minutes // 4)}, no more": "That is four times too fast: it "
            "still gathers damp.",
            f"{clock(minutes // 2)}, lying on a radiator": "That is twice too fast, and "
            "uneven heat bends the tape’s edges.",
        },
        rule=CLIMATE,
        source="SMPTE RP 103-1995, Table 1: up to 10 °C an hour",
    )


def edit_room(scene: Scene) -> Case:
    """Whether the air of a room will do."""
    warmth, damp = scene.draw.pick(
        (
            (scene.draw.whole(18, 24), scene.draw.whole(35, 65)),
            (scene.draw.whole(27, 33), scene.draw.whole(35, 65)),
            (scene.draw.whole(9, 15), scene.draw.whole(35, 65)),
            (scene.draw.whole(18, 24), scene.draw.whole(75, 90)),
        )
    )
    texts = {
        "": "Thread the tape and begin",
        "warm": "Wait: the room is too warm",
        "cold": "Wait: the room is too cold",
        "damp": "Wait: the air is too damp",
    }
    right = texts.pop(OPERATING.fault(warmth, damp))
    shot = scene.draw.pick(ACTIONS).picture
    return Case(
        story=f"In the edit room it is {warmth} °C warm, and the air has {damp} % "
        f"relative humidity. {scene.draw.pick(TAPES)}, with {shot}, has lain there since "
        "yesterday.",
        wish="May it be played?",
        right=right,
        because="Tapes are played at 17 to 25 °C and 30 to 70 % relative humidity.",
        wrong={text: against(name, warmth, damp) for name, text in texts.items()},
        rule=CLIMATE,
        source=OPERATING.source,
    )


DANGERS = {
    "warm": "Warm tape softens, and its layers stick together.",
    "cold": "Cold tape is stiff, and gathers damp in warmer air.",
    "damp": "Damp tape sticks to the drum, and is pulled out of the shell.",
}


def against(name: str, warmth: int, damp: int) -> str:
    """What speaks against an answer: a danger, or that a reading is within the limits."""
    if not name:
        return DANGERS[OPERATING.fault(warmth, damp)]
    if name == "damp":
        return f"{damp} % is not too damp: up to {OPERATING.damp[1]} % will do."
    low, high = OPERATING.warmth
    limit = f"up to {high} °C" if name == "warm" else f"{low} °C or more"
    return f"{warmth} °C is not too {name}: {limit} will do."


def place_to_keep(scene: Scene, air: Air, years: str) -> Case:
    """One of four places has the right air."""
    low, high = air.damp
    damp = scene.draw.whole(low + 1, high - 1)
    shelf = f"{scene.draw.whole(17, air.warmth[1] - 1)} °C and {damp} %"
    places = {
        f"the attic, up to {scene.draw.whole(29, 40)} °C and {damp} %": "It is too warm "
        "there: tape ages faster, and its layers stick.",
        f"the cellar, {scene.draw.whole(14, 17)} °C and {scene.draw.whole(72, 90)} %": "It is too "
        "damp there, and tape grows mould.",
        f"over the heater, {scene.draw.whole(26, 30)} °C and {scene.draw.whole(8, 18)} %": "It is "
        "too warm and too dry there: tape ages faster, and draws dust.",
    }
    limits = f"{air.warmth[0]} to {air.warmth[1]} °C" if air is STORING else "at most 23 °C"
    return Case(
        story=f"When the film is finished, {scene.draw.pick(TAPES)} with "
        f"{scene.draw.pick(ACTIONS).picture} is to be kept, {years}.",
        wish="Where? Each place with its warmth and relative humidity:",
        right=f"the office shelf, {shelf}",
        because=f"For that long: {limits}, {low} to {high} % relative humidity, and steady.",
        wrong=places,
        rule=CLIMATE,
        source=air.source,
    )


def some_years(scene: Scene) -> Case:
    return place_to_keep(scene, STORING, f"for {scene.draw.whole(2, 9)} years")


def ten_years_or_more(scene: Scene) -> Case:
    return place_to_keep(scene, KEEPING, "as the college’s copy, for ten years")
