"""Care and safety: a situation, and what to do."""

from collections.abc import Callable, Iterator

from exercises.drills.asks import Choice, Option
from exercises.drills.care import climate, people, tapes
from exercises.drills.care.case import Case
from exercises.drills.draw import Draw
from exercises.drills.kind import Question
from exercises.drills.phrases import begun
from exercises.drills.scene import Scene, opening
from exercises.drills.settings import Settings

SITUATIONS: tuple[Callable[[Scene], Case], ...] = (
    climate.cold_tape,
    climate.edit_room,
    climate.some_years,
    climate.ten_years_or_more,
    people.cleaning_heads,
    people.vapour,
    people.spilt_tea,
    people.dead_machine,
    people.heavy_recorder,
    people.turning_drum,
    tapes.headphones,
    tapes.on_the_loudspeaker,
    tapes.slack_loop,
    tapes.end_of_the_day,
    tapes.dusty_floor,
)


def candidates(seed: int, settings: Settings) -> Iterator[Question | None]:
    """What the seed draws, one after the other; None where two answers are the same."""
    draw = Draw(seed)
    while True:
        yield question(draw.pick(SITUATIONS), Scene(draw, settings))


def question(situation: Callable[[Scene], Case], scene: Scene) -> Question | None:
    case = situation(scene)
    texts = scene.draw.shuffled(case.texts())
    if len(set(texts)) < len(texts):
        return None
    letters = dict(zip(texts, "abcd", strict=True))
    options = tuple(Option(value=letter, text=begun(text)) for text, letter in letters.items())
    return Question(
        situation=situation.__name__.replace("_", "-"),
        skill=case.rule.skill,
        asks=(Choice(name="reply", legend=case.wish, options=options),),
        shown={"story": f"{opening(scene)} {case.story}"},
        right={"reply": letters[case.right]},
        reveals={"reply": {letters[text]: [belief] for text, belief in case.held.items()}},
        key={
            "whys": {letters[text]: why for text, why in case.whys().items()},
            "caution": case.caution,
            "source": case.source,
            "rule": case.rule.at(scene.bench),
        },
    )
