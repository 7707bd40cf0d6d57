"""What counts as run-up: takes that touch, a longer pre-roll, black."""

from exercises.drills.asks import Moment
from exercises.drills.judging.rules import BLACK_COUNTS, NO_RUN_UP_BY_PRE_ROLL, TOUCHING_TAKES
from exercises.drills.kinds.sums_on_the_clock.total import Part, Term, Total
from exercises.drills.setting.quay_street import ACTIONS, TAPES
from exercises.drills.setting.scene import Scene

SOURCE = "no-source-run-up"
MASTER = "no-master-run-up"
TOUCHING = "touching-takes-share-pulses"
LONGER = "pre-roll-makes-run-up"
BLACK = "black-is-blank"


def earliest(scene: Scene, name: str, where: str) -> Moment:
    return Moment(
        name=name,
        legend=f"What is the earliest edit in on {where}?",
        rate=scene.rate.label,
        drop=scene.bench.drop_frame,
    )


def take_after_a_take(scene: Scene) -> Total:
    """A short take right before another: what does it give to the second?"""
    begins, short, lock = scene.seconds(60, 1800), scene.of_run_up(1, 4), scene.bench.lock
    tape, shot = scene.draw.pick(TAPES), scene.draw.pick(ACTIONS).picture
    return Total(
        story=scene.draw.pick(
            (
                f"On {tape} two takes touch: the camera was stopped and started again. "
                f"{scene.person} wants as much of the second as can be had: {shot}.",
                f"{scene.person} wants {shot}. Right before it on {tape}, without a gap, lies a "
                "first try that was stopped early.",
            )
        ),
        facts=(
            ("The first take begins", scene.code(begins)),
            ("The second begins, where the first ends", scene.code(begins + short)),
            ("The player needs a run-up of", scene.lasting(lock)),
        ),
        parts=(
            Part(
                ask=earliest(scene, "source", f"{tape} within the second take"),
                terms=(
                    Term(words="where the second take begins", count=begins + short),
                    Term(words="run-up of the player", count=lock, unless=SOURCE),
                    Term(
                        words="found in the first take",
                        count=short,
                        sign=-1,
                        only=TOUCHING,
                        unless=SOURCE,
                    ),
                ),
            ),
        ),
        rule=TOUCHING_TAKES,
    )


def longer_pre_roll(scene: Scene) -> Total:
    """The pre-roll has been set longer than the machines need."""
    take, leader = scene.seconds(60, 1800), scene.seconds(5, 240)
    lock, more = scene.bench.lock, scene.of_run_up(1, 4)
    tape, shot = scene.draw.pick(TAPES), scene.draw.pick(ACTIONS).picture
    terms = (
        (tape, "source", "where the take begins", take, "run-up of the player", SOURCE),
        (
            "the edit master",
            "master",
            "where the leader begins",
            leader,
            "run-up of the recorder",
            MASTER,
        ),
    )
    return Total(
        story=f"Because takes are short, {scene.person} has set a longer pre-roll than usual. "
        f"The film begins with {shot}, as early in the take and on the edit master as can be.",
        facts=(
            (f"The take on {tape} begins", scene.code(take)),
            ("The leader on the edit master begins", scene.code(leader)),
            ("Pre-roll", scene.lasting(lock + more)),
            ("Either machine needs a run-up of", scene.lasting(lock)),
        ),
        parts=tuple(
            Part(
                ask=earliest(scene, name, where),
                terms=(
                    Term(words=begins, count=start),
                    Term(words=run_up, count=lock, unless=belief),
                    Term(
                        words="made up for by the pre-roll",
                        count=more,
                        sign=-1,
                        only=LONGER,
                        unless=belief,
                    ),
                ),
            )
            for where, name, begins, start, run_up, belief in terms
        ),
        rule=NO_RUN_UP_BY_PRE_ROLL,
    )


def black_and_bars(scene: Scene) -> Total:
    """Black and bars in one go: where does the recorder's run-up begin?"""
    begins, black, lock = scene.seconds(5, 240), scene.seconds(8, 40), scene.bench.lock
    shot = scene.draw.pick(ACTIONS).picture
    return Total(
        story=f"{scene.person} has a tape on which black and then bars were recorded in one go. "
        f"The bars are not needed: {shot} is to be inserted over them, or earlier.",
        facts=(
            ("The black begins", scene.code(begins)),
            ("The bars begin", scene.code(begins + black)),
            ("The recorder needs a run-up of", scene.lasting(lock)),
        ),
        parts=(
            Part(
                ask=earliest(scene, "master", "the edit master"),
                terms=(
                    Term(words="where the black begins", count=begins),
                    Term(words="the black", count=black, only=BLACK),
                    Term(words="run-up of the recorder", count=lock, unless=MASTER),
                ),
            ),
        ),
        rule=BLACK_COUNTS,
    )
