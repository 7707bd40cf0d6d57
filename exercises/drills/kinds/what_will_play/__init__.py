"""What will play? An edit master, the edits of a visit, and what the tape plays then."""

from collections.abc import Iterator
from itertools import pairwise

from exercises.drills.asks import Json
from exercises.drills.beliefs import BELIEFS, telling_apart
from exercises.drills.kind import Question
from exercises.drills.kinds.what_plays.consequences import consequences
from exercises.drills.kinds.what_plays.showing import Showing, at, showings
from exercises.drills.kinds.what_plays.situations import DRAWN, Situation, name
from exercises.drills.kinds.what_plays.stretches import cuts, options, table
from exercises.drills.kinds.what_plays.visit import Visit
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings
from exercises.tape import tape_map

# Whoever expects all to play without pulses expects it of sound too, so that the two can't be
# told apart here. One frame more at every edit out would be all that anybody is asked about.
LEFT_OUT = ("sound-needs-no-pulses", "out-is-last-frame")


def asked(visit: Visit) -> list[str]:
    """The beliefs that concern one of the edits."""
    modes = {job.mode for job in visit.jobs}
    left_out = set(LEFT_OUT)
    if not visit.scene.spare:
        left_out.add("pre-roll-makes-run-up")
    if all(len(job.clip.takes) == 1 for job in visit.jobs):
        left_out.add("touching-takes-share-pulses")
    return [
        belief.id
        for belief in BELIEFS.values()
        if belief.id not in left_out and modes & set(belief.modes)
    ]


def candidates(seed: int, settings: Settings) -> Iterator[Question | None]:
    """What the seed draws, one after the other; None where two beliefs answer alike."""
    draw = Draw(seed)
    while True:
        yield question(draw.pick(DRAWN), Scene(draw, settings))


def question(situation: Situation, scene: Scene) -> Question | None:
    visit = Visit(scene)
    rule = situation(visit)
    shown = telling_apart.told_apart(
        asked(visit), lambda beliefs: {"shown": showings(visit, beliefs)}
    )
    if shown is None:
        return None
    versions: list[list[Showing]] = [answer["shown"] for _, answer in shown]
    edges = cuts(visit, versions)
    if edges is None:
        return None
    believed = [
        [held, {"plays": [[at(version, start)] for start, _ in pairwise(edges)]}]
        for (held, _), version in zip(shown, versions, strict=True)
    ]
    return Question(
        situation=name(situation),
        skill=rule.skill,
        asks=(table(visit, edges, options(visit, versions)),),
        shown=page(visit),
        right=believed[0][1],
        rule=rule.at(visit.session.bench),
        believed=believed,
        key=key(visit, edges, [held for held, _ in believed]),
    )


def page(visit: Visit) -> Json:
    scene, bench = visit.scene, visit.session.bench
    start, end = visit.window
    marks = {f"edit {number}": job.at for number, job in enumerate(visit.jobs, 1)}
    found = tape_map(visit.before, bench, start=start, end=end, marks=marks, faults=False)
    return {
        "story": f"{opening(scene)} {visit.story}",
        "lies": visit.lies(),
        "edits": visit.told(),
        "bench": f"{scene.room}, {scene.rate.label} frames a second, "
        f"{scene.pre_roll}; {scene.wiping}",
        "map": found.as_json(),
        "caption": f"The edit master before these edits, {scene.span(start, end)}",
    }


def key(visit: Visit, edges: list[int], held: list[list[str]]) -> Json:
    past = len(visit.session.edits) - len(visit.jobs)
    return {
        "session": visit.scene.document(),
        "past": past,
        "meant": [list(job.meant) for job in visit.jobs],
        "edges": edges,
        "told": consequences(visit, edges, held),
    }
