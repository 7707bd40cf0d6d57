"""Spot the bad edit: a session in words, and what is seen and heard when it is played."""

from collections.abc import Iterator

from exercises.drills.asks import Json
from exercises.drills.draw import Draw
from exercises.drills.kind import Question
from exercises.drills.quay_street import Shot
from exercises.drills.scene import Scene, opening
from exercises.drills.settings import Settings
from exercises.drills.spot_described.answers import asks, revealed, right_answers
from exercises.drills.spot_described.case import Case, Step
from exercises.drills.spot_described.consequences import consequences
from exercises.drills.spot_described.playback import rows
from exercises.drills.spot_described.situations import Situation, drawn, name
from exercises.drills.spot_described.work import Work
from exercises.tape import read_session

BEFORE, AFTER = 4, 9  # seconds of tape played before the film and after it


def candidates(seed: int, settings: Settings) -> Iterator[Question | None]:
    """What the seed draws, one after the other; None where an ask has no single answer."""
    draw = Draw(seed)
    while True:
        yield question(drawn(draw), Scene(draw, settings))


def question(situation: Situation, scene: Scene) -> Question | None:
    work = Work(scene)
    rule = situation(work)
    case = case_of(work)
    right = right_answers(case)
    if right is None:
        return None
    return Question(
        situation=name(situation),
        skill=rule.skill,
        asks=asks(len(work.jobs)),
        shown=shown(work, case),
        right=right,
        reveals=revealed(case, right),
        key={
            "session": scene.document(),
            "steps": [{**step.change.as_json(), "mode": step.mode.value} for step in case.steps],
            "window": list(window(work)),
            "told": consequences(case, right["mend"], window(work)),
            "rule": rule.at(scene.bench),
        },
    )


def case_of(work: Work) -> Case:
    session = read_session(work.scene.document())
    steps = [Step(job.change(session), job.mode) for job in work.jobs]
    return Case(session.bench, session.master, steps)


def window(work: Work) -> tuple[int, int]:
    """The part of the master that is played."""
    scene, start = work.scene, min(job.at for job in work.jobs)
    second = scene.rate.nominal
    return max(0, start - BEFORE * second), min(scene.length, work.end + AFTER * second)


def shown(work: Work, case: Case) -> Json:
    scene, bench = work.scene, case.bench
    start, end = window(work)
    noticed = rows(case.last.tape, bench, start, end, clips(work))
    return {
        "story": f"{opening(scene)} {work.story}",
        "edits": work.told(),
        "film": f"The film is to run {scene.span(case.last.start, case.last.end)}. "
        "Any shot can be had again, from a take with enough run-up.",
        "bench": f"{scene.room}, {scene.rate.label} frames a second, {scene.pre_roll}",
        "caption": f"What is noticed when the edit master is played {scene.span(start, end)}",
        "rows": [[scene.code(row.start), row.picture, row.sound, row.lock] for row in noticed],
    }


def clips(work: Work) -> dict[str, list[tuple[int, int, Shot]]]:
    """For each source tape, which of its frames show what."""
    found: dict[str, list[tuple[int, int, Shot]]] = {}
    for job in work.jobs:
        clip = job.clip
        found.setdefault(clip.tape, []).append((clip.in_, clip.out, clip.shot))
    return found
