"""Spot the bad edit, from a description: which fault, which edit, what now?"""

from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.spot_the_bad_edit.answers import SELDOM, asks, revealed, right_answers
from exercises.drills.kinds.spot_the_bad_edit.case import EditsCase, MeantEdit
from exercises.drills.kinds.spot_the_bad_edit.consequences import consequences
from exercises.drills.kinds.spot_the_bad_edit.shown import shown, window
from exercises.drills.kinds.spot_the_bad_edit.situations import Situation, drawn
from exercises.drills.kinds.spot_the_bad_edit.verdict import grade
from exercises.drills.kinds.spot_the_bad_edit.work import ON_ANOTHER_MACHINE, EditsWork
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings
from exercises.tape import read_edit_session

ELSEWHERE = 0.25  # of the films are played on another machine, which is no fault of it


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where an ask has no single answer."""
    return question(drawn(draw), Scene(draw, settings))


def question(situation: Situation, scene: Scene) -> Question | None:
    work = EditsWork(scene)
    rule = situation(work)
    if not work.remark and scene.draw.chance(ELSEWHERE):
        work.remark = ON_ANOTHER_MACHINE
    case = case_of(work)
    right = right_answers(case)
    if right is None:
        return None
    played = window(work.jobs, case)
    without = scene.draw.pick([each for each in SELDOM if each != right["mend"]])
    steps = [{**step.change.as_json(), "mode": step.mode.value} for step in case.steps]
    return Question(
        situation=slug_of(situation.__name__),
        skill=rule.skill,
        asks=asks(len(work.jobs), without),
        shown=shown(
            work.jobs,
            case,
            story=f"{opening(scene)} {work.story}",
            bench=f"{scene.room}, {scene.rate.label} frames a second, {scene.pre_roll}",
            remark=work.remark,
        ),
        right=right,
        reveals=offered(revealed(case, right), without),
        rule=rule.at(scene.bench),
        key={
            "session": scene.document(),
            "steps": steps,
            "worn": [each.as_json() for each in case.worn],
            "off": case.off,
            "window": list(played),
            "told": consequences(case, right["mend"], played),
        },
    )


def offered(
    reveals: dict[str, dict[str, list[str]]], without: str
) -> dict[str, dict[str, list[str]]]:
    """What wrong answers reveal, without that of a mend that isn't offered."""
    mends = {mend: beliefs for mend, beliefs in reveals["mend"].items() if mend != without}
    return {**reveals, "mend": mends}


def case_of(work: EditsWork) -> EditsCase:
    session = read_edit_session(work.scene.document())
    steps = [MeantEdit(job.change(session.sources[job.clip.tape]), job.mode) for job in work.jobs]
    return EditsCase(session.bench, session.master, steps, worn=work.worn, off=work.off)


KIND = Kind(
    slug=slug_of(__name__),
    title="Spot the bad edit",
    purpose="What was done, and what is seen and heard: which fault, which edit, what now?",
    skills=("continuing-a-master", "replacing-inside-it", "tracks-and-pulses", "run-up"),
    lesson="knowing-a-bad-edit",
    revision=7,
    template="drills/kinds/spot_the_bad_edit.html",
    candidate=candidate,
    grade=grade,
)
