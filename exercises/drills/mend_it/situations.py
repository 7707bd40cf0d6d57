"""The spoilt films that questions are about. Each returns the rule that it is about."""

from collections.abc import Callable

from exercises.drills.change import Mode
from exercises.drills.mend_it.spoiling import Film
from exercises.drills.quay_street import ACTIONS, SOUNDS
from exercises.drills.rules import ENDS, NO_GAP, NO_PULSES, ONE_TRACK, RUN_UP, Rule
from exercises.drills.scene import Clip

Situation = Callable[[Film], Rule]


def assembled_within(film: Film) -> Rule:
    """A shot assembled into the middle of a long one: all from its end on is to be laid again."""
    return _assembled(film, "A new shot was to go into the middle of the long one.")


def assembled_over_the_hut(film: Film) -> Rule:
    return _assembled(film, "Picture and sound of a few seconds were to be exchanged.")


def early_insert(film: Film) -> Rule:
    return _early(film, Mode.INSERT_BOTH, "A shot was to replace some of the long one.")


def early_picture(film: Film) -> Rule:
    return _early(film, Mode.INSERT_PICTURE, "A picture was to go over what is being said.")


def early_sound(film: Film) -> Rule:
    return _early(film, Mode.INSERT_SOUND, "Another sound was wanted under the long shot.")


def early_last_shot(film: Film) -> Rule:
    """The last shot assembled from a take that had hardly begun."""
    scene = film.scene
    bad = scene.clip(scene.seconds(7, 11), run_up=scene.seconds(0.3, 3.6))
    scene.assemble(bad, film.cut)
    good = _retake(film, bad, longer=scene.seconds(1, 3))
    film.mean(good, 0, film.cut)
    told(film, f"The last shot, {bad.shot.picture}, was assembled", bad, film.cut)
    film.offer(bad, f"{bad.shot.picture}, the same take")
    film.mend(Mode.ASSEMBLE, film.offer(good, f"{bad.shot.picture}, a longer take"), film.cut)
    return RUN_UP


def hole(film: Film) -> Rule:
    """The last shot begins a little late."""
    scene = film.scene
    late = film.cut + scene.seconds(0.4, 1.8)
    scene.assemble(film.last, late)
    film.mean(film.last, 0, film.cut)
    told(film, "The last shot was to follow at once. It was assembled", film.last, late)
    film.places.append(late)
    film.offer(film.talk, "the end of the long shot", skip=film.talk.length - scene.seconds(2, 3))
    film.mend(Mode.ASSEMBLE, film.offer(film.last, film.last.shot.picture), film.cut)
    return NO_GAP


def inserted_past_the_end(film: Film) -> Rule:
    scene = film.scene
    scene.insert(film.last, film.cut)
    film.mean(film.last, 0, film.cut)
    told(film, "The last shot was inserted, picture and sound,", film.last, film.cut)
    film.offer(film.talk, "the end of the long shot", skip=film.talk.length - scene.seconds(2, 3))
    film.mend(Mode.ASSEMBLE, film.offer(film.last, film.last.shot.picture), film.cut)
    return NO_PULSES


def picture_switched_on(film: Film) -> Rule:
    """Only a sound was wanted."""
    return _switched(film, "sound", Mode.INSERT_PICTURE)


def sound_switched_on(film: Film) -> Rule:
    """Only a picture was wanted."""
    return _switched(film, "picture", Mode.INSERT_SOUND)


def told(film: Film, what: str, clip: Clip, at: int) -> None:
    scene = film.scene
    film.happened.append(f"The shot: {clip.shot.picture}, with {clip.shot.sound}.")
    film.happened.append(
        f"{what} {scene.span(at, at + clip.length)}, from {clip.tape}, "
        f"{scene.span(clip.in_, clip.out)}; the take there runs {scene.span(*clip.takes[0])}."
    )


def _retake(film: Film, bad: Clip, *, longer: int = 0) -> Clip:
    """The same shot from a take with enough run-up."""
    good = film.scene.clip(bad.length + longer)
    return Clip(good.tape, good.in_, good.out, good.takes, bad.shot)


def _assembled(film: Film, why: str) -> Rule:
    scene, at = film.scene, film.within()
    film.finish()
    clip = scene.clip(scene.seconds(5, 8))
    end = scene.assemble(clip, at)
    film.mean(clip, 0, at)
    told(film, f"{why} It was assembled", clip, at)
    skip = end - film.middle
    wiped = 3 * scene.rate.nominal
    film.offer(
        film.talk,
        f"{wiped // scene.rate.nominal} seconds of the long shot, after the new",
        skip=skip,
        end=skip + wiped,
    )
    film.offer(clip, f"{clip.shot.picture} again")
    rest = film.offer(film.talk, "all of the long shot that comes after the new one", skip=skip)
    last = film.offer(film.last, "the last shot")
    film.mend(Mode.ASSEMBLE, rest, end)
    film.mend(Mode.ASSEMBLE, last, film.cut)
    film.places.append(at)
    return ENDS


def _early(film: Film, mode: Mode, why: str) -> Rule:
    scene, at = film.scene, film.within()
    film.finish()
    bad = scene.clip(scene.seconds(5, 8), run_up=scene.seconds(0.3, 3.6))
    picture, sound = mode is not Mode.INSERT_SOUND, mode is not Mode.INSERT_PICTURE
    scene.insert(bad, at, picture=picture, sound=sound)
    good = _retake(film, bad)
    film.mean(good, 0, at, tracks=mode.tracks)
    did = {
        Mode.INSERT_PICTURE: "Its picture was inserted",
        Mode.INSERT_SOUND: "It was inserted, sound alone,",
    }.get(mode, "It was inserted, picture and sound,")
    told(film, f"{why} {did}", bad, at)
    name = bad.shot.sound if mode is Mode.INSERT_SOUND else bad.shot.picture
    film.offer(bad, f"{name}, the same take")
    film.offer(film.last, "the last shot")
    film.mend(mode, film.offer(good, f"{name}, another take"), at)
    film.places += [at + bad.length, film.cut]
    return RUN_UP


def _switched(film: Film, wanted: str, mend: Mode) -> Rule:
    scene, at = film.scene, film.within()
    film.finish()
    clip = scene.clip(scene.seconds(5, 8), SOUNDS if wanted == "sound" else ACTIONS)
    scene.insert(clip, at)
    film.mean(clip, 0, at, tracks=("sound",) if wanted == "sound" else ("picture",))
    told(film, f"Only its {wanted} was wanted, but picture and sound were inserted", clip, at)
    skip = at - film.middle
    film.offer(clip, clip.shot.sound if wanted == "sound" else clip.shot.picture)
    film.offer(film.last, "the last shot")
    part = film.offer(
        film.talk, "the long shot, as much of it as was lost", skip=skip, end=skip + clip.length
    )
    film.mend(mend, part, at)
    film.places += [at + clip.length, film.cut]
    return ONE_TRACK


SITUATIONS: tuple[Situation, ...] = (
    assembled_within,
    assembled_over_the_hut,
    early_insert,
    early_picture,
    early_sound,
    early_last_shot,
    hole,
    inserted_past_the_end,
    picture_switched_on,
    sound_switched_on,
)


def name(situation: Situation) -> str:
    return situation.__name__.replace("_", "-")
