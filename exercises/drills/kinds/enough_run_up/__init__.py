"""Enough run-up? A shot log, and which of its shots can't be edited as they stand there."""

from collections.abc import Collection

from exercises.drills.asks import Ask, Json, Moment, Option, Several
from exercises.drills.beliefs import telling_apart
from exercises.drills.judging.rules import RUN_UP
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.enough_run_up.shotlog import Entry, Log
from exercises.drills.kinds.enough_run_up.situations import SITUATIONS, Situation
from exercises.drills.kinds.enough_run_up.told import told
from exercises.drills.kinds.enough_run_up.verdict import grade
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings

NONE = "none"


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where two beliefs answer alike."""
    return question(draw.pick(SITUATIONS), Scene(draw, settings))


def question(situation: Situation, scene: Scene) -> Question | None:
    log = situation(scene)
    asked = scene.draw.pick([each for each in log.listed if each.on_source < log.lock])
    believed = telling_apart.told_apart(
        log.concerned(), lambda beliefs: answer(log, asked, beliefs)
    )
    if believed is None:
        return None
    return Question(
        situation=slug_of(situation.__name__),
        skill=RUN_UP.skill,
        asks=asks(log, asked),
        shown=page(log),
        right=believed[0][1],
        rule=RUN_UP.at(log.session.bench),
        believed=believed,
        key={
            "session": scene.document(),
            "asked": log.listed.index(asked),
            "told": told(log, asked),
        },
    )


def answer(log: Log, asked: Entry, beliefs: Collection[str]) -> Json:
    """The true answer, or that of somebody with these beliefs."""
    bad = [
        str(number)
        for number, entry in enumerate(log.listed, 1)
        if entry.hindered(log.needed(beliefs), beliefs)
    ]
    return {"shots": bad or [NONE], "earliest": log.earliest(asked, beliefs)}


def asks(log: Log, asked: Entry) -> tuple[Ask, ...]:
    number = log.listed.index(asked) + 1
    return (
        Several(
            name="shots",
            legend="Which shots can’t be edited as they stand in the log? Tick them all.",
            options=(
                *(
                    Option(value=str(number), text=f"{number}: {each.clip.shot.picture}")
                    for number, each in enumerate(log.listed, 1)
                ),
                Option(value=NONE, text="None: all of them can"),
            ),
            alone=NONE,
        ),
        Moment(
            name="earliest",
            legend=f"What is the earliest edit in on {asked.clip.tape} within the take of "
            f"shot {number}?",
            rate=log.scene.rate.label,
            drop=log.scene.bench.drop_frame,
        ),
    )


def page(log: Log) -> Json:
    scene, bench = log.scene, log.session.bench
    return {
        "story": f"{opening(scene)} {log.story}",
        "rows": log.rows(),
        "bench": f"{scene.room}, {scene.rate.label} frames a second; "
        f"each machine needs {scene.lasting(bench.lock)} of run-up{pre_roll(scene)}",
    }


def pre_roll(scene: Scene) -> str:
    """The pre-roll, where it was set longer than what a machine needs."""
    told = scene.lasting(scene.settings.pre_roll)
    return f"; the pre-roll is set to {told}" if scene.spare else ""


KIND = Kind(
    slug=slug_of(__name__),
    title="Enough run-up?",
    purpose="A shot log before the edit: find the shots that can’t be edited as they are.",
    skills=("run-up",),
    lesson="run-up",
    revision=4,
    template="drills/kinds/enough_run_up.html",
    candidate=candidate,
    grade=grade,
)
