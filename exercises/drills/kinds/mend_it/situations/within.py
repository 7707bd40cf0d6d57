"""Films spoilt within a long shot."""

from exercises.drills.judging.rules import ENDS, ONE_TRACK, RUN_UP, Rule
from exercises.drills.kinds.mend_it.situations.told import LIKED, retake, told
from exercises.drills.kinds.mend_it.spoiling import SpoiltFilm
from exercises.drills.setting.change import Mode
from exercises.drills.setting.quay_street import ACTIONS, SOUNDS

REST = "all of the long shot that comes after the new one"
INSERTED = {
    Mode.INSERT_PICTURE: "Its picture was inserted",
    Mode.INSERT_SOUND: "It was inserted, sound alone,",
    Mode.INSERT_BOTH: "It was inserted, picture and sound,",
}


def assembled_within(film: SpoiltFilm) -> Rule:
    """A shot assembled into the middle of a long one: all from its end on is to be laid again."""
    return _assembled(film, "A new shot was to go into the middle of the long one.")


def assembled_over_the_hut(film: SpoiltFilm) -> Rule:
    return _assembled(film, "Picture and sound of a few seconds were to be exchanged.")


def early_insert(film: SpoiltFilm) -> Rule:
    return _early(film, Mode.INSERT_BOTH, "A shot was to replace some of the long one.")


def early_picture(film: SpoiltFilm) -> Rule:
    return _early(film, Mode.INSERT_PICTURE, "A picture was to go over what is being said.")


def early_sound(film: SpoiltFilm) -> Rule:
    return _early(film, Mode.INSERT_SOUND, "Another sound was wanted under the long shot.")


def picture_switched_on(film: SpoiltFilm) -> Rule:
    """Only a sound was wanted."""
    return _switched(film, "sound")


def sound_switched_on(film: SpoiltFilm) -> Rule:
    """Only a picture was wanted."""
    return _switched(film, "picture")


def _assembled(film: SpoiltFilm, why: str) -> Rule:
    scene, at = film.scene, film.within()
    film.finish()
    clip = scene.clip(scene.seconds(5, 8))
    end = scene.assemble(clip, at)
    film.mean(clip, 0, at)
    told(film, f"{why} The new shot was assembled", clip, at)
    skip = end - film.middle
    wiped = max(3 * scene.rate.nominal, scene.bench.erase_gap + scene.rate.nominal)
    film.offer(
        film.talk,
        f"{scene.lasting(wiped)} of the long shot, after the new",
        skip=skip,
        end=skip + wiped,
    )
    film.offer(clip, f"{clip.shot.picture} again")
    film.offer(film.talk, REST, skip=skip)
    film.offer(film.last, "the last shot")
    film.places += [at, end, film.cut]
    return ENDS


def _early(film: SpoiltFilm, mode: Mode, why: str) -> Rule:
    scene, at = film.scene, film.within()
    film.finish()
    bad = scene.clip(scene.seconds(5, 8), run_up=scene.too_short(0.3, 3.6))
    scene.lay(bad, at, mode)
    good = retake(film, bad)
    film.either(bad, good, at, tracks=mode.tracks)
    told(film, f"{why} {INSERTED[mode]}", bad, at)
    film.happened.append(LIKED)
    name = bad.shot.sound if mode is Mode.INSERT_SOUND else bad.shot.picture
    film.offer(bad, f"{name}, the same take")
    film.offer(good, f"{name}, another take")
    _offer_rest(film, at + bad.length)
    film.places.append(at)
    return RUN_UP


def _switched(film: SpoiltFilm, wanted: str) -> Rule:
    scene, at = film.scene, film.within()
    film.finish()
    clip = scene.clip(scene.seconds(5, 8), SOUNDS if wanted == "sound" else ACTIONS)
    scene.insert(clip, at)
    film.mean(clip, 0, at, tracks=("sound",) if wanted == "sound" else ("picture",))
    told(film, f"Only its {wanted} was wanted, but picture and sound were inserted", clip, at)
    film.offer(clip, clip.shot.sound if wanted == "sound" else clip.shot.picture)
    skip = at - film.middle
    film.offer(
        film.talk, "the long shot, as much of it as was lost", skip=skip, end=skip + clip.length
    )
    _offer_rest(film, at + clip.length)
    film.places.append(at)
    return ONE_TRACK


def _offer_rest(film: SpoiltFilm, end: int) -> None:
    """What follows, for those who think that an insert can't end before it."""
    film.offer(film.talk, REST, skip=end - film.middle)
    film.offer(film.last, "the last shot")
    film.places += [end, film.cut]
