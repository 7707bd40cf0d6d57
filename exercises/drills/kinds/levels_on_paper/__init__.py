"""Levels on paper: how far to turn, what comes of a sound, and what to do about a picture."""

from exercises.drills.asks import Ask, Choice, Json, Option
from exercises.drills.beliefs.telling_apart import Believed, told_apart, touched
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.levels_on_paper.case import LevelsCase
from exercises.drills.kinds.levels_on_paper.situations import DRAWN
from exercises.drills.kinds.levels_on_paper.verdict import grade, near
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings

LETTERS = "abcde"


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where believers would answer alike."""
    situation = draw.pick(DRAWN)
    scene = Scene(draw, settings)
    return question(situation(scene), scene)


def question(case: LevelsCase, scene: Scene) -> Question | None:
    letters = lettering(case, scene.draw)
    kept = believed(case, letters)
    if kept is None:
        return None
    return Question(
        situation=case.name,
        skill=case.rule.skill,
        asks=asks(case, letters),
        shown={
            "story": f"{opening(scene)} {case.story}",
            "facts": [list(pair) for pair in case.facts],
        },
        right=kept[0][1],
        rule=case.rule.at(scene.bench),
        believed=kept,
        key={
            "band": case.turn.scale.band if case.turn else 0,
            "slips": slips(case),
            "why": case.why(),
        },
    )


def lettering(case: LevelsCase, draw: Draw) -> dict[str, str]:
    """By option of the second question, the letter that it has in this one."""
    if case.choosing is None:
        return {}
    return dict(zip(draw.shuffled(list(case.choosing.texts)), LETTERS, strict=False))


def believed(case: LevelsCase, letters: dict[str, str]) -> Believed | None:
    def answer(beliefs: frozenset[str]) -> Json:
        return lettered(case.answer(beliefs), letters)

    if not touched(case.beliefs(), answer):
        return [[[], answer(frozenset())]]
    return told_apart(case.beliefs(), answer)


def asks(case: LevelsCase, letters: dict[str, str]) -> tuple[Ask, ...]:
    found: list[Ask] = [case.turn.ask()] if case.turn else []
    if case.choosing:
        texts = case.choosing.texts
        options = [Option(value=letter, text=texts[what]) for what, letter in letters.items()]
        ordered = tuple(sorted(options, key=lambda each: each.value))
        found.append(Choice(name=case.choosing.name, legend=case.choosing.legend, options=ordered))
    return tuple(found)


def lettered(answer: Json, letters: dict[str, str]) -> Json:
    """An answer with what was chosen as the letter of its option."""
    return {name: letters.get(value, value) for name, value in answer.items()}


def slips(case: LevelsCase) -> list[list[object]]:
    """Turns that aim at something else, and what to say of each."""
    if case.turn is None:
        return []
    return [[case.turn.to(mark), sentence] for mark, sentence in case.turn.slips.items()]


KIND = Kind(
    slug=slug_of(__name__),
    title="Levels on paper",
    purpose="A meter’s reading: how far do you turn, what comes of it, and what now?",
    skills=("sound-level", "picture-level"),
    lesson="picture-and-sound-levels",
    revision=4,
    template="drills/kinds/levels_on_paper.html",
    candidate=candidate,
    grade=grade,
    near=near,
)
