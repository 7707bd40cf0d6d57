"""Sums on the clock: lengths, totals, drop-frame code, the counter, room for run-up."""

from exercises.drills.asks import Moment
from exercises.drills.beliefs.telling_apart import told_apart
from exercises.drills.kind import Kind, slug_of
from exercises.drills.kinds.sums_on_the_clock.situations import SITUATIONS, Situation
from exercises.drills.kinds.sums_on_the_clock.verdict import grade
from exercises.drills.question import Question
from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene, opening
from exercises.drills.setting.settings import Settings

IN_PICTURES = (
    "Where labels are left out, add up pictures: 1,800 in a minute that keeps all its labels, "
    "1,798 in one that leaves out two, 17,982 in ten minutes."
)


def candidate(draw: Draw, settings: Settings) -> Question | None:
    """None where it makes no sum, or a blind one."""
    return question(draw.pick(SITUATIONS), Scene(draw, settings))


def question(situation: Situation, scene: Scene) -> Question | None:
    total = situation(scene)
    kept = told_apart(total.beliefs(), total.answer) if total else None
    if total is None or kept is None:
        return None
    drops = scene.bench.drop_frame
    return Question(
        situation=slug_of(situation.__name__),
        skill=total.rule.skill,
        asks=tuple(part.ask for part in total.parts),
        shown={
            "story": f"{opening(scene)} {total.story}",
            "facts": [
                *map(list, total.facts),
                ["Rate", rate(scene)],
            ],
        },
        right=total.answer(),
        rule=total.rule.at(scene.bench),
        believed=kept,
        key={
            "labels": scene.rate.nominal,
            "working": {
                part.ask.name: part.told(in_pictures=drops and isinstance(part.ask, Moment))
                for part in total.parts
            },
            "note": f"{total.note} {IN_PICTURES}".strip() if drops else total.note,
        },
    )


def rate(scene: Scene) -> str:
    told = f"{scene.rate.label} frames a second: the labels run to {scene.rate.nominal - 1}"
    if not scene.bench.drop_frame:
        return told
    return (
        f"{told}; a label with a semicolon is drop-frame, one with colons alone is not; "
        f"lengths count {scene.rate.nominal} frames to a second"
    )


KIND = Kind(
    slug=slug_of(__name__),
    title="Sums on the clock",
    purpose="Where does it end, how long is it, how much tape does it take?",
    skills=(
        "planning-and-time-code",
        "run-up",
        "replacing-inside-it",
        "continuing-a-master",
        "mending",
        "tracks-and-pulses",
    ),
    lesson="planning",
    revision=4,
    template="drills/kinds/sums_on_the_clock.html",
    candidate=candidate,
    grade=grade,
)
