"""The shot logs that questions are about."""

from collections.abc import Callable

from exercises.drills.kinds.enough_run_up.shotlog import Log
from exercises.drills.setting.quay_street import ACTIONS, CARDS, SOUNDS, TALKS, Shot
from exercises.drills.setting.scene import Scene

Situation = Callable[[Scene], Log]

SHOTS = (5, 6)
FEATURES = ("", "takes", "pre-roll", "ends")


def short_leader(scene: Scene) -> Log:
    log = early(scene)
    log.story = f"""The tape is new but for a leader of black, {length(log)}, and the film is to be
    assembled right after that leader, shot by shot."""
    return filled(log, ACTIONS)


def hurried_leader(scene: Scene) -> Log:
    log = early(scene)
    log.story = f"""In a hurry, only {length(log)} of black were laid on the new tape. The opening
    of the film is logged; all its shots are to be assembled, one after the other."""
    return filled(log, ACTIONS)


def talking_shots(scene: Scene) -> Log:
    log = early(scene)
    log.story = f"""These are the people who speak first in the film. Before them the edit master
    has {length(log)} of black and nothing else; each of them is assembled to the one before."""
    return filled(log, TALKS)


def early_on_a_prepared_tape(scene: Scene) -> Log:
    log = prepared(scene, scene.too_short(1, 4))
    log.story = """The tape was recorded with black from end to end. To waste none of it, the film
    is to begin very near its start: every shot is inserted, picture and sound."""
    return filled(log, ACTIONS)


def on_a_prepared_tape(scene: Scene) -> Log:
    log = prepared(scene, scene.seconds(10, 30))
    log.story = """Black was recorded on all of the tape in one go. The shots of this log are to be
    inserted there one after the other, picture and sound."""
    return filled(log, ACTIONS)


def second_reel(scene: Scene) -> Log:
    log = prepared(scene, scene.too_short(1, 4))
    log.story = """The second tape of the film is prepared with black all along. Its first shots
    are logged, to be inserted near the start so that the tape is sure to hold the rest."""
    return filled(log, (*ACTIONS, *TALKS))


def continuing(scene: Scene) -> Log:
    log = continued(scene)
    log.story = """A first part of the film is on the edit master already, in one piece. The shots
    of this log are to be assembled to its end."""
    return filled(log, ACTIONS)


def new_day(scene: Scene) -> Log:
    log = continued(scene)
    log.story = """Yesterday’s work ended where the first of these shots is to begin; nothing was
    recorded beyond that. They are all to be assembled in turn."""
    return filled(log, TALKS)


def somebody_elses_log(scene: Scene) -> Log:
    log = early(scene)
    log.story = f"""The log was written by somebody who has gone home. By it the film is to be
    assembled on a tape that carries {length(log)} of black, beginning where the black ends."""
    return filled(log, (*ACTIONS, *CARDS))


def titles(scene: Scene) -> Log:
    log = early(scene)
    log.story = f"""The cards and first pictures were taped in the titling room, mostly in takes
    that begin late. The edit master has {length(log)} of black; they are assembled after it."""
    return filled(log, (*CARDS, *SOUNDS))


def last_check(scene: Scene) -> Log:
    log = prepared(scene, scene.too_short(1, 4))
    log.story = """Ten minutes before the bench is free, the log is read once more. The tape is
    black from end to end, and the shots are to be inserted one after the other."""
    return filled(log, ACTIONS)


def early(scene: Scene) -> Log:
    """A new tape with too short a leader."""
    frames = scene.too_short(1, 4)
    scene.record(0, frames, "black")
    return Log(scene, at=frames, assembled=True)


def continued(scene: Scene) -> Log:
    frames = scene.seconds(60, 200)
    scene.record(0, frames, "first part")
    return Log(scene, at=frames, assembled=True)


def prepared(scene: Scene, at: int) -> Log:
    scene.record(0, scene.length, "black")
    return Log(scene, at=at, assembled=False)


def length(log: Log) -> str:
    return log.scene.lasting(log.start)


def filled(log: Log, shots: tuple[Shot, ...]) -> Log:
    """Shots with too little run-up among others, and now and then a take that ends early.

    What some learners count on is there as often as not: takes right behind others, a longer
    pre-roll, a take that ends with the shot.
    """
    scene, draw = log.scene, log.scene.draw
    count = draw.pick(SHOTS)
    order = draw.shuffled(range(1, count))
    short, stopped = set(order[: draw.whole(1, 2)]), set(order[3 : 3 + draw.below(2)])
    feature = draw.pick(FEATURES)
    if feature == "pre-roll":
        scene.set_pre_roll(scene.of_run_up(1, 3))
    for number in range(count):
        frames = scene.seconds(6, 12)
        ends = 0 if feature == "ends" and number == order[-1] else scene.seconds(0.5, 2)
        touching = feature == "takes" and draw.chance(0.7)
        log.add(
            scene.clip(
                frames,
                shots,
                run_up=_run_up(scene, enough=number not in short),
                stops=frames - ends if number in stopped or not ends else None,
                touches=scene.of_run_up(0.6, 4) if touching else None,
            )
        )
    log.story = " ".join(log.story.split())
    return log


def _run_up(scene: Scene, *, enough: bool) -> int:
    """Clearly too little or clearly enough, as often near the limit as far from it."""
    draw, lock, margin = scene.draw, scene.bench.lock, scene.margin
    if not enough:
        least, most = lock - 2 * margin, lock - margin
        return draw.pick((draw.whole(0, least), draw.whole(least, most)))
    near = lock + margin
    return draw.pick((near, near + draw.whole(1, 20), scene.seconds(6, 20)))


SITUATIONS: tuple[Situation, ...] = (
    short_leader,
    hurried_leader,
    talking_shots,
    early_on_a_prepared_tape,
    on_a_prepared_tape,
    second_reel,
    continuing,
    new_day,
    somebody_elses_log,
    titles,
    last_check,
)
