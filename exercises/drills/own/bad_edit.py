"""Spot the bad edit, of an instructor's own edits: the tape model finds what is wrong."""

from dataclasses import dataclass

from exercises.drills.asks import Json
from exercises.drills.judging.rule import Rule
from exercises.drills.judging.rules import AFTERWARDS, ONE_TRACK, PREPARED
from exercises.drills.kinds.spot_the_bad_edit.answers import asks, revealed, right_answers
from exercises.drills.kinds.spot_the_bad_edit.case import EditsCase
from exercises.drills.kinds.spot_the_bad_edit.cause import cause_of
from exercises.drills.kinds.spot_the_bad_edit.consequences import consequences
from exercises.drills.kinds.spot_the_bad_edit.shown import noticed, shown, window
from exercises.drills.kinds.spot_the_bad_edit.verdict import grade
from exercises.drills.own.made import DescribedEdits
from exercises.drills.question import Question
from exercises.drills.setting.change import Mode
from exercises.drills.setting.phrases import begun, listed, span
from exercises.tape import tape_map

__all__ = ["DrawnEdits", "drawn", "grade", "question", "rule"]


@dataclass(frozen=True, slots=True, kw_only=True)
class DrawnEdits:
    """What the form shows while it is filled in: the tape, what playback shows, the answer.

    `right` pairs what is asked with the right answer; empty where there is not exactly one.
    """

    map: Json
    caption: str
    right: list[tuple[str, str]]
    happened: list[str]
    rows: list[list[str]]
    mended: Json | None
    warnings: list[str]

    @property
    def is_clear(self) -> bool:
        return bool(self.right)


def drawn(described: DescribedEdits) -> DrawnEdits:
    """By the very functions that judge the learner's answer."""
    case, jobs = described.case(), described.jobs
    start, end = window(jobs, case)
    right = right_answers(case)
    told = consequences(case, right["mend"], (start, end)) if right else None
    marks = {"film in": case.last.start, "film out": case.last.end}
    after = tape_map(case.last.tape, case.bench, start=start, end=end, marks=marks)
    asked = asks(len(case.steps)) if right else ()
    return DrawnEdits(
        map=after.as_json(),
        caption=f"The edit master after the edits, {span(start, end, case.bench)}",
        right=[(ask.legend, ask.in_words(right[ask.name])) for ask in asked] if right else [],
        happened=told["happened"] if told else [],
        rows=noticed(jobs, case),
        mended=told["mended"] if told else None,
        warnings=warnings(case, right),
    )


def warnings(case: EditsCase, right: dict[str, str] | None) -> list[str]:
    if case.fault is None:
        return ["Nothing is wrong with the film: that is the right answer."]
    if right:
        return []
    if len(case.blamed) > 1:
        edits = listed([f"edit {index + 1}" for index in sorted(case.blamed)])
        return [
            f"{begun(edits)} are to blame, and a drill asks for one. It can’t be published like "
            "this. Put all but one of them right."
        ]
    if cause_of(case) is None:
        (index,) = case.blamed
        return [
            f"Something is wrong where edit {index + 1} left the tape alone, so no edit is to "
            "blame for it. It can’t be published like this. Let the edits follow one another, or "
            "lie on tape with pulses throughout."
        ]
    return [
        "No single recording puts it right, and the drill asks for the one that does. It can’t be "
        "published like this. Let less go wrong, or leave more tape with pulses before it."
    ]


def question(described: DescribedEdits, *, skill: str, situation: str) -> Question | None:
    """The one question of the drill; None where one of its asks has no single answer."""
    case, jobs = described.case(), described.jobs
    right = right_answers(case)
    if right is None:
        return None
    told = shown(jobs, case, story=described.story, bench=described.figures)
    return Question(
        situation=situation,
        skill=skill,
        asks=asks(len(jobs)),
        shown={**told, **before(case, *window(jobs, case))},
        right=right,
        reveals=revealed(case, right),
        rule=rule(case).at(case.bench),
        key={
            "told": consequences(case, right["mend"], window(jobs, case)),
        },
    )


def before(case: EditsCase, start: int, end: int) -> Json:
    """The map of the tape before the first edit, with the run-up that the film had there.

    It shows what the story tells, never what became of it.
    """
    start = max(0, min(start, case.last.start - case.bench.lock - case.bench.relock))
    marks = {"film in": case.last.start, "film out": case.last.end}
    tape = tape_map(case.master, case.bench, start=start, end=end, marks=marks, faults=False)
    return {
        "map": tape.as_json(),
        "map_caption": f"The edit master before the first edit, {span(start, end, case.bench)}",
    }


def rule(case: EditsCase) -> Rule:
    """The rule that the bad edit broke; where none did, the one that the last edit kept."""
    cause = cause_of(case)
    return cause.rule if cause else kept(Mode(case.steps[-1].mode))


def kept(mode: Mode) -> Rule:
    if mode is Mode.ASSEMBLE:
        return AFTERWARDS
    return PREPARED if mode is Mode.INSERT_BOTH else ONE_TRACK
