"""Run-up, counted in time code."""

from exercises.drills.asks import Moment
from exercises.drills.judging.rules import ROOM_FOR_RUN_UP
from exercises.drills.kinds.sums_on_the_clock.total import Part, Term, Total
from exercises.drills.setting.phrases import listed
from exercises.drills.setting.quay_street import ACTIONS, TAPES
from exercises.drills.setting.scene import Scene

SOURCE = "no-source-run-up"
MASTER = "no-master-run-up"


def earliest_places(scene: Scene) -> Total:
    """A take and a leader: from where on can each be used?"""
    take, leader = scene.seconds(60, 1800), scene.seconds(5, 240)
    lock = scene.bench.lock
    tape, shot = scene.draw.pick(TAPES), scene.draw.pick(ACTIONS).picture
    return Total(
        story=scene.draw.pick(
            (
                f"{scene.person} wants as much of {shot} as can be had, as early on the edit "
                "master as can be.",
                f"The film is to begin with {shot}, as soon as the edit master allows it, and "
                f"with as little of the take lost as {scene.room} allows.",
            )
        ),
        facts=(
            (f"The take on {tape} begins", scene.code(take)),
            ("The leader on the edit master begins", scene.code(leader)),
            ("Either machine needs a run-up of", scene.lasting(lock)),
        ),
        parts=(
            Part(
                ask=Moment(
                    name="source",
                    legend=f"What is the earliest edit in on {tape}?",
                    rate=scene.rate.label,
                    drop=scene.bench.drop_frame,
                ),
                terms=(
                    Term(words="where the take begins", count=take),
                    Term(words="run-up of the player", count=lock, unless=SOURCE),
                ),
            ),
            Part(
                ask=Moment(
                    name="master",
                    legend="What is the earliest edit in on the edit master?",
                    rate=scene.rate.label,
                    drop=scene.bench.drop_frame,
                ),
                terms=(
                    Term(words="where the leader begins", count=leader),
                    Term(words="run-up of the recorder", count=lock, unless=MASTER),
                ),
            ),
        ),
        rule=ROOM_FOR_RUN_UP,
    )


def tape_for_takes(scene: Scene) -> Total:
    """How much a camera must record, so that all of some shots can be used."""
    shots = [shot.picture for shot in scene.draw.shuffled(ACTIONS)[:3]]
    lengths = [scene.seconds(6, 45) for _ in shots]
    lock = scene.bench.lock
    return Total(
        story=f"Tomorrow {scene.person} takes a camera to the bridge, for {listed(shots)}. "
        "Each is a take of its own, and all of it is to be usable.",
        facts=(
            *((shot, scene.lasting(length)) for shot, length in zip(shots, lengths, strict=True)),
            ("The player needs a run-up of", scene.lasting(lock)),
        ),
        parts=(
            Part(
                ask=Moment(
                    name="tape",
                    legend="How much tape must be recorded at least? Write it like a time code.",
                    rate=scene.rate.label,
                ),
                terms=(
                    *(
                        Term(words=shot, count=length)
                        for shot, length in zip(shots, lengths, strict=True)
                    ),
                    Term(
                        words="a run-up before each take",
                        count=len(shots) * lock,
                        unless=SOURCE,
                    ),
                ),
            ),
        ),
        rule=ROOM_FOR_RUN_UP,
    )
