"""Levels on paper: a reading, how far to turn, and the sound mode."""

from collections.abc import Iterator

from exercises.drills.asks import Ask, Choice, Json, Option
from exercises.drills.draw import Draw
from exercises.drills.kind import Question
from exercises.drills.paper_levels.case import Case, Mode
from exercises.drills.paper_levels.situations import DRAWN, Situation, name
from exercises.drills.scene import Scene, opening
from exercises.drills.settings import Settings
from exercises.drills.telling_apart import told_apart

TEXTS = {
    Mode.HAND: "Level by hand, limiter off",
    Mode.LIMITER: "Level by hand, limiter on",
    Mode.AUTOMATIC: "Automatic gain, limiter off",
    Mode.BOTH: "Automatic gain, limiter on",
}


def candidates(seed: int, settings: Settings) -> Iterator[Question | None]:
    """What the seed draws, one after the other; None where believers would answer alike."""
    draw = Draw(seed)
    while True:
        yield question(draw.pick(DRAWN), Scene(draw, settings))


def question(situation: Situation, scene: Scene) -> Question | None:
    case = situation(scene)
    letters = dict(zip(scene.draw.shuffled(list(Mode)), "abcd", strict=True))
    kept = told_apart(case.beliefs(), lambda beliefs: lettered(case.answer(beliefs), letters))
    if kept is None:
        return None
    return Question(
        situation=name(situation),
        skill=case.rule.skill,
        asks=asks(case, letters),
        shown={
            "story": f"{opening(scene)} {case.story}",
            "facts": [
                ["Meter", case.scale.name],
                ["As the knob stands", f"{case.heard}: {told(case)}"],
            ],
        },
        right=kept[0][1],
        reveals={},
        key={
            "believed": kept,
            "band": case.scale.band,
            "why": why(case),
            "rule": case.rule.at(scene.bench),
        },
    )


def asks(case: Case, letters: dict[Mode, str]) -> tuple[Ask, ...]:
    if case.mode is None:
        return (case.ask(),)
    options = [Option(value=letter, text=TEXTS[mode]) for mode, letter in letters.items()]
    legend = "Which sound mode do you record in?"
    return case.ask(), Choice(
        name="mode", legend=legend, options=tuple(sorted(options, key=lambda each: each.value))
    )


def lettered(answer: Json, letters: dict[Mode, str]) -> Json:
    """An answer with the mode as the letter of its option."""
    return {
        name: letters[Mode(value)] if name == "mode" else value for name, value in answer.items()
    }


def told(case: Case) -> str:
    """The reading, as the meter is read."""
    if case.scale.unit == "IRE":
        return f"{case.reading} IRE"
    return f"{case.reading:+d} VU".replace("-", "−")


def why(case: Case) -> Json:
    """Why the turn is right, and why the mode is."""
    mark = f"{case.scale.mark} {'IRE' if case.scale.unit == 'IRE' else 'VU'}"
    turn = f"It reads {told(case)} and belongs at {mark}."
    if case.mode is None:
        return {"turn": turn}
    if case.mode is Mode.LIMITER:
        return {
            "turn": turn,
            "mode": "Nobody can turn the level down in time for a peak that comes without "
            "warning. The limiter holds it down, and leaves all that is softer as it is.",
        }
    return {
        "turn": turn,
        "mode": "Automatic gain would lift the room’s noise in every pause. A limiter does "
        "nothing to what is soft; and these words go no higher than where it begins.",
    }
