"""What will play? A session of edits: what each stretch of the edit master plays afterwards."""

from itertools import pairwise

from exercises.drills.asks import Json
from exercises.drills.beliefs import BELIEFS, telling_apart
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.what_will_play.consequences import consequences
from exercises.drills.kinds.what_will_play.showing import PlayedStretch, at, showings
from exercises.drills.kinds.what_will_play.situations import DRAWN, Situation
from exercises.drills.kinds.what_will_play.stretches import cuts, options, table
from exercises.drills.kinds.what_will_play.verdict import grade
from exercises.drills.kinds.what_will_play.visit import Visit
from exercises.drills.question import Question
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


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where two beliefs answer alike."""
    return question(draw.pick(DRAWN), Scene(draw, settings))


def question(situation: Situation, scene: Scene) -> Question | None:
    visit = Visit(scene)
    rule = situation(visit)
    shown = telling_apart.told_apart(
        asked(visit), lambda beliefs: {"shown": showings(visit, beliefs)}
    )
    if shown is None:
        return None
    versions: list[list[PlayedStretch]] = [answer["shown"] for _, answer in shown]
    edges = cuts(visit, versions)
    if edges is None:
        return None
    believed = [
        [held, {"plays": [[at(version, start)] for start, _ in pairwise(edges)]}]
        for (held, _), version in zip(shown, versions, strict=True)
    ]
    return Question(
        situation=slug_of(situation.__name__),
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


KIND = Kind(
    slug=slug_of(__name__),
    title="What will play?",
    purpose="Some edits on an edit master: say, stretch by stretch, what it plays afterwards.",
    skills=("continuing-a-master", "replacing-inside-it", "run-up", "tracks-and-pulses"),
    lesson="assemble-and-insert",
    revision=6,
    template="drills/kinds/what_will_play.html",
    candidate=candidate,
    grade=grade,
)
