"""Choose the mode, as an instructor describes it: the answer is computed as for any other."""

from dataclasses import dataclass

from exercises.drills.asks import Json
from exercises.drills.beliefs import Trial, recorded
from exercises.drills.judging.rules import (
    CONTINUE,
    ENDS,
    NO_PULSES,
    ONE_TAKE,
    ONE_TRACK,
    PREPARED,
    RUN_UP,
    Rule,
)
from exercises.drills.kinds.choose_the_mode import MARGIN
from exercises.drills.kinds.choose_the_mode.answers import ASK, CANNOT, revealed, right_answers
from exercises.drills.kinds.choose_the_mode.consequences import consequences, expectations
from exercises.drills.kinds.choose_the_mode.scenario import Task
from exercises.drills.kinds.choose_the_mode.verdict import TEXTS, grade
from exercises.drills.own.described import Described
from exercises.drills.question import Question
from exercises.drills.setting.change import Mode
from exercises.drills.setting.phrases import begun, length, listed, span
from exercises.tape import tape_map
from exercises.tape.judging import Trouble, misses

__all__ = ["Drawn", "drawn", "grade", "question", "rule"]

FREED = {
    "nothing": "Everything that plays now, apart from what the change replaces.",
    "after": "All that comes before the edit in. What lies there and after it may go.",
    "beside": "Everything before and after it. While it lasts, both tracks may be replaced.",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Drawn:
    """What the form shows while it is filled in: the master, what each mode does, doubts."""

    map: Json
    caption: str
    right: list[str]
    modes: list[Json]
    warnings: list[str]

    @property
    def is_clear(self) -> bool:
        return len(self.right) == 1


def drawn(described: Described) -> Drawn:
    """By the very functions that judge the learner's answer."""
    task = described.task()
    right = right_answers(task)
    told = consequences(task, window(described))
    return Drawn(
        map=told["before"],
        caption=f"The edit master before the change, {where(described, *window(described))}",
        right=[TEXTS[answer] for answer in right],
        modes=[
            {
                "name": mode.words,
                "right": mode.value in right,
                "map": told["modes"][mode.value]["map"],
                "caption": f"After {mode.words.lower()}",
                "happened": told["modes"][mode.value]["happened"],
            }
            for mode in Mode
        ],
        warnings=[*answers_warned(right), *described.holes()],
    )


def answers_warned(right: list[str]) -> list[str]:
    if right == [CANNOT]:
        return ["No mode makes this change: “No single recording makes it” is the right answer."]
    if len(right) > 1:
        names = listed([Mode(each).words.lower() for each in right])
        return [
            f"{len(right)} choices are right: {names}. It can’t be published like this. Say more "
            "of what must stay, or change what is on the tape."
        ]
    return []


def question(described: Described, *, skill: str, situation: str) -> Question | None:
    """The one question of the drill; None where more than one answer is right."""
    task = described.task()
    right, *others = right_answers(task)
    if others:
        return None
    reveals = revealed(task, right)
    told = consequences(task, window(described))
    return Question(
        situation=situation,
        skill=skill,
        asks=(ASK,),
        shown=shown(described, task),
        right={"mode": right},
        reveals={"mode": reveals},
        rule=rule(task, right).as_json(),
        key={
            "told": told,
            "before_caption": f"Before, {where(described, *window(described))}",
            "instead": described.instead,
            "expected": expectations(task, right, reveals, window(described)),
        },
    )


def rule(task: Task, right: str) -> Rule:
    """The rule that the right answer follows; where nothing will do, the one that forbids it."""
    if right == Mode.ASSEMBLE:
        return CONTINUE
    if right == Mode.INSERT_BOTH:
        return PREPARED
    if right != CANNOT:
        return ONE_TRACK
    mode = next(mode for mode in Mode if set(mode.tracks) == set(task.change.tracks))
    insert = mode if mode is not Mode.ASSEMBLE else Mode.INSERT_BOTH
    tape = recorded(Trial(task.master, task.change, insert, task.bench))
    troubles = {miss.trouble for miss in misses(task.wants, tape, task.bench)}
    return forbidding(task, troubles)


def forbidding(task: Task, troubles: set[Trouble]) -> Rule:
    change = task.change
    take = change.source.take_at(change.in_)
    if Trouble.NO_PULSES in troubles:
        return NO_PULSES if len(change.tracks) == 1 else ENDS
    if Trouble.BLANK in troubles or (take and take.end < change.out):
        return ONE_TAKE
    return RUN_UP


def shown(described: Described, task: Task) -> Json:
    start, end = window(described)
    marks = {"edit in": described.at, "edit out": described.end}
    around = tape_map(task.master, task.bench, start=start, end=end, marks=marks, faults=False)
    return {
        "story": described.story,
        "wish": described.wish,
        "facts": facts(described),
        "map": around.as_json(),
        "caption": f"The edit master before the change, {where(described, start, end)}.",
    }


def facts(described: Described) -> list[list[str]]:
    """What to look up before an edit: pairs of a term and its value."""
    bench = described.bench
    takes = [where(described, *take) for take in described.takes]
    return [
        [
            "Source",
            f"{described.source}: {described.picture}. Heard with it: {described.sound}.",
        ],
        ["The take runs" if len(takes) == 1 else "The takes run", listed(takes)],
        ["Edit in and out there", where(described, described.in_, described.out)],
        [
            "On the edit master",
            f"{where(described, described.at, described.end)}, "
            f"{length(described.end - described.at, bench.rate)}",
        ],
        ["To be new", begun(listed(described.tracks))],
        ["To stay", FREED[described.freed]],
        ["Bench", described.figures],
    ]


def where(described: Described, start: int, end: int) -> str:
    return span(start, end, described.bench)


def window(described: Described) -> tuple[int, int]:
    """The part of the master that maps show."""
    margin = MARGIN * described.bench.rate.nominal
    return max(0, described.at - margin), min(described.length, described.end + margin)
