"""The visits that questions are made from. Each returns the rule that it is about."""

from collections.abc import Callable

from exercises.drills.judging.rules import (
    BLACK_COUNTS,
    ENDS,
    MARK_EARLY,
    MOVES,
    NO_GAP,
    NO_PULSES,
    NO_RUN_UP_BY_PRE_ROLL,
    ONE_TRACK,
    RUN_UP,
    TOUCHING_TAKES,
    Rule,
)
from exercises.drills.kinds.what_will_play.masters import (
    action,
    assembled,
    laid_in_black,
    leader,
    stray,
)
from exercises.drills.kinds.what_will_play.visit import Visit
from exercises.drills.setting.change import Mode
from exercises.drills.setting.quay_street import SOUNDS, TALKS
from exercises.drills.setting.scene import Clip

Situation = Callable[[Visit], Rule]

FOLLOWS = "It follows what is laid so far."
FIRST = "The first shot of the film."
INSTEAD = "It takes the place of what is there; the film should go on after it."


def shot_changed(visit: Visit) -> Rule:
    """The next shot, then another shot in place of an earlier one, both by assemble."""
    film = assembled(visit)
    visit.lay(action(visit), film.end, Mode.ASSEMBLE, FOLLOWS)
    assemble_within(visit, film.middle)
    return ENDS


def for_its_picture(visit: Visit) -> Rule:
    scene, film = visit.scene, assembled(visit)
    at = film.middle + scene.seconds(5, 8)
    purpose = "Only its picture is wanted: the old sound should stay."
    visit.lay(scene.clip(scene.seconds(6, 10)), at, Mode.ASSEMBLE, purpose, ("picture",))
    visit.lay(action(visit), film.end, Mode.ASSEMBLE, FOLLOWS)
    return ONE_TRACK


def picture_over_a_voice(visit: Visit) -> Rule:
    scene, film = visit.scene, assembled(visit)
    at = film.middle + scene.seconds(5, 8)
    clip = scene.clip(scene.seconds(5, 8))
    visit.lay(clip, at, Mode.INSERT_PICTURE, "It goes over what is being said.")
    visit.lay(action(visit), film.end, Mode.ASSEMBLE, FOLLOWS)
    return MOVES


def picture_in_the_black(visit: Visit) -> Rule:
    scene, film = visit.scene, laid_in_black(visit)
    at = film.middle + scene.seconds(5, 8)
    clip = scene.clip(scene.seconds(5, 8))
    visit.lay(clip, at, Mode.INSERT_PICTURE, "Somebody is talking there, and talks on.")
    later = film.end + scene.seconds(9, 10.5)
    visit.lay(action(visit), later, Mode.INSERT_BOTH, "Room is left before it.")
    return MOVES


def sound_under_a_picture(visit: Visit) -> Rule:
    scene, film = visit.scene, assembled(visit)
    at = film.middle + scene.seconds(5, 8)
    clip = scene.clip(scene.seconds(6, 9), SOUNDS)
    visit.lay(clip, at, Mode.INSERT_SOUND, "The picture there stays.")
    visit.lay(action(visit), film.end, Mode.ASSEMBLE, FOLLOWS)
    return MOVES


def shot_for_shot(visit: Visit) -> Rule:
    """An insert within the film; then an assemble within it."""
    scene, film = visit.scene, assembled(visit)
    clip = scene.clip(scene.seconds(4, 6))
    visit.lay(clip, film.start, Mode.INSERT_BOTH, "The film should begin with it.")
    assemble_within(visit, film.middle + scene.seconds(8, 11))
    return ENDS


def past_the_end(visit: Visit) -> Rule:
    """The next shot by assemble, and another inserted on tape that is new."""
    scene, film = visit.scene, assembled(visit)
    reached = stray(visit, film.end + scene.seconds(15, 18))
    visit.lay(action(visit), film.end, Mode.ASSEMBLE, FOLLOWS)
    at = reached + scene.seconds(2, 4)
    visit.lay(action(visit), at, Mode.INSERT_BOTH, "It is laid there to be used later.")
    return NO_PULSES


def room_left(visit: Visit) -> Rule:
    """Two shots inserted on new tape, some way from the film."""
    scene, film = visit.scene, assembled(visit)
    at = film.end + scene.seconds(4, 6)
    stray(visit, at + scene.seconds(24, 27))
    purpose = "Room is left before it for a shot that is not ready."
    end = visit.lay(action(visit), at, Mode.INSERT_BOTH, purpose)
    visit.lay(action(visit), end, Mode.INSERT_BOTH, "It follows that shot.")
    return NO_PULSES


def short_take_past_the_end(visit: Visit) -> Rule:
    scene, film = visit.scene, assembled(visit)
    reached = stray(visit, film.end + scene.seconds(15, 18))
    visit.lay(early_action(visit), film.end, Mode.ASSEMBLE, FOLLOWS)
    at = reached + scene.seconds(2, 4)
    visit.lay(action(visit), at, Mode.INSERT_BOTH, "It is laid there to be used later.")
    return NO_PULSES


def after_a_hole(visit: Visit) -> Rule:
    """A short leader; and an assemble that begins a little late."""
    scene = visit.scene
    start = short_leader(visit)
    reached = visit.lay(action(visit), start, Mode.ASSEMBLE, FIRST)
    late = reached + scene.of_gap(0.4, 1.8)
    visit.lay(action(visit), late, Mode.ASSEMBLE, "It is meant to follow that shot.")
    return NO_GAP


def first_shot_too_early(visit: Visit) -> Rule:
    """A first shot too early on the tape; then another in the middle of it."""
    scene = visit.scene
    start = short_leader(visit)
    visit.lay(scene.clip(scene.seconds(26, 34), TALKS), start, Mode.ASSEMBLE, FIRST)
    assemble_within(visit, start + scene.seconds(9, 12))
    return RUN_UP


def both_too_early(visit: Visit) -> Rule:
    """A first shot too early on the tape, the next too early in its take."""
    start = short_leader(visit)
    end = visit.lay(action(visit), start, Mode.ASSEMBLE, FIRST)
    end = visit.lay(early_action(visit), end, Mode.ASSEMBLE, FOLLOWS)
    visit.lay(action(visit), end, Mode.ASSEMBLE, FOLLOWS)
    return RUN_UP


def short_take(visit: Visit) -> Rule:
    """A take that has hardly begun; and a picture over a voice."""
    scene, film = visit.scene, assembled(visit)
    visit.lay(early_action(visit), film.end, Mode.ASSEMBLE, FOLLOWS)
    at = film.middle + scene.seconds(5, 8)
    over = scene.clip(scene.seconds(5, 8))
    visit.lay(over, at, Mode.INSERT_PICTURE, "It goes over what is being said.")
    return RUN_UP


def short_take_changed(visit: Visit) -> Rule:
    """A take that has hardly begun; and an assemble within the film."""
    film = assembled(visit)
    end = visit.lay(early_action(visit), film.end, Mode.ASSEMBLE, FOLLOWS)
    visit.lay(action(visit), end, Mode.ASSEMBLE, FOLLOWS)
    assemble_within(visit, film.middle)
    return RUN_UP


def early_in_the_black(visit: Visit) -> Rule:
    """The tape is prepared, but the film begins too early on it."""
    scene = visit.scene
    leader(visit, scene.length)
    end = visit.lay(action(visit), scene.too_short(1.2, 3.6), Mode.INSERT_BOTH, FIRST)
    visit.lay(action(visit), end, Mode.INSERT_BOTH, FOLLOWS)
    return RUN_UP


def longer_pre_roll(visit: Visit) -> Rule:
    """A leader that is too short, and a pre-roll that was set longer because of it."""
    scene = visit.scene
    scene.set_pre_roll(scene.of_run_up(1, 1.9))
    start = leader(visit, scene.too_short(1.2, 2.6))
    visit.story += " Because that is short, the pre-roll was set longer than usual."
    end = visit.lay(action(visit), start, Mode.ASSEMBLE, FIRST)
    visit.lay(action(visit), end, Mode.ASSEMBLE, FOLLOWS)
    return NO_RUN_UP_BY_PRE_ROLL


def pre_roll_for_a_short_take(visit: Visit) -> Rule:
    """A take that has hardly begun, and a pre-roll that was set longer because of it."""
    scene, film = visit.scene, assembled(visit)
    scene.set_pre_roll(scene.of_run_up(1, 1.9))
    visit.story += " For the sake of a short take, the pre-roll was set longer than usual."
    clip = action(visit, run_up=scene.too_short(0.3, 2.6))
    end = visit.lay(clip, film.end, Mode.ASSEMBLE, FOLLOWS)
    visit.lay(action(visit), end, Mode.ASSEMBLE, FOLLOWS)
    return NO_RUN_UP_BY_PRE_ROLL


def touching_takes(visit: Visit) -> Rule:
    """A take that has hardly begun, right behind another that is short, too."""
    film = assembled(visit)
    end = visit.lay(after_another(visit), film.end, Mode.ASSEMBLE, FOLLOWS)
    visit.lay(action(visit), end, Mode.ASSEMBLE, FOLLOWS)
    return TOUCHING_TAKES


def touching_takes_in_the_black(visit: Visit) -> Rule:
    scene, film = visit.scene, laid_in_black(visit)
    at = film.middle + scene.seconds(5, 8)
    visit.lay(after_another(visit), at, Mode.INSERT_PICTURE, "Somebody talks on under it.")
    return TOUCHING_TAKES


def next_in_the_black(visit: Visit) -> Rule:
    """Shots inserted on a prepared tape, where nothing lies yet but black."""
    scene, film = visit.scene, laid_in_black(visit)
    end = visit.lay(action(visit), film.end, Mode.INSERT_BOTH, FOLLOWS)
    at = end + scene.seconds(3, 6)
    purpose = "Room is left before it for a shot that is not ready."
    visit.lay(action(visit), at, Mode.INSERT_BOTH, purpose)
    return BLACK_COUNTS


def marked_early_and_late(visit: Visit) -> Rule:
    """One assemble begins some frames before the end of the film, the next some after."""
    scene, film = visit.scene, assembled(visit)
    early, late = (scene.draw.whole(5, 12) for _ in range(2))
    end = visit.lay(
        action(visit), film.end - early, Mode.ASSEMBLE, "It is meant to follow the film."
    )
    visit.lay(action(visit), end + late, Mode.ASSEMBLE, "It is meant to follow that shot.")
    return MARK_EARLY


def after_another(visit: Visit) -> Clip:
    """A shot in a take that touches the one before; together they are too short."""
    scene = visit.scene
    clip = scene.clip(
        scene.seconds(7, 11),
        run_up=scene.too_short(0.3, 2),
        touches=scene.of_run_up(1, 2.3),
    )
    visit.story += f" {clip.tape} was stopped and started again right before one of the shots."
    return clip


def early_action(visit: Visit) -> Clip:
    """A shot with less run-up in its take than a machine needs."""
    return action(visit, run_up=visit.scene.too_short(0.3, 3.6))


def short_leader(visit: Visit) -> int:
    return leader(visit, visit.scene.too_short(1.5, 3.6))


def assemble_within(visit: Visit, at: int) -> None:
    clip = visit.scene.clip(visit.scene.seconds(6, 9))
    visit.lay(clip, at, Mode.ASSEMBLE, INSTEAD)


SITUATIONS: tuple[Situation, ...] = (
    shot_changed,
    for_its_picture,
    picture_over_a_voice,
    picture_in_the_black,
    sound_under_a_picture,
    shot_for_shot,
    past_the_end,
    room_left,
    short_take_past_the_end,
    after_a_hole,
    first_shot_too_early,
    both_too_early,
    short_take,
    short_take_changed,
    early_in_the_black,
    longer_pre_roll,
    pre_roll_for_a_short_take,
    touching_takes,
    touching_takes_in_the_black,
    next_in_the_black,
    marked_early_and_late,
)


# After these most of what is asked about plays nothing, so they are drawn less often.
SELDOM = (past_the_end, room_left, short_take_past_the_end)
DRAWN = tuple(each for each in SITUATIONS for _ in range(1 if each in SELDOM else 3))
