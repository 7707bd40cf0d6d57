"""Sessions in which no edit did it: a tape is worn, or the machine that plays it is off."""

from exercises.drills.judging.rules import PLAYER_OFF, WORN_MASTER, WORN_SOURCE, Rule
from exercises.drills.kinds.spot_the_bad_edit.situations.laying import film, inside
from exercises.drills.kinds.spot_the_bad_edit.situations.masters import (
    either_tape,
    prepared_tape,
    used_tape,
)
from exercises.drills.kinds.spot_the_bad_edit.wear import MASTER, Wear
from exercises.drills.kinds.spot_the_bad_edit.work import WELL_ON_THE_RECORDER, EditsWork
from exercises.drills.setting.phrases import listed, span
from exercises.tape import SIDES, Side

PICTURE, SOUND = SIDES
SHOWS = {PICTURE: "single white streaks flashed in the picture", SOUND: "the sound dipped"}


def worn_edit_master(work: EditsWork) -> Rule:
    """Played before the first edit, the tape did the same; on black, dips can't be heard."""
    is_black = work.scene.draw.chance(0.5)
    film(work, (prepared_tape if is_black else used_tape)(work))
    start, end = worn_within(work)
    tracks = worn_tracks(work)
    tracks = (PICTURE,) if is_black else tracks
    work.worn.append(Wear(MASTER, start, end, tracks))
    work.story += (
        f" When it was played through before the first edit, {shows(tracks)} "
        f"{span(start, end, work.scene.bench)}."
    )
    return WORN_MASTER


def worn_source_tape(work: EditsWork) -> Rule:
    film(work, either_tape(work))
    start, end = worn_within(work)
    job = next(each for each in work.jobs if each.at <= start < each.end)
    back = job.clip.in_ - job.at
    tracks = worn_tracks(work)
    work.worn.append(Wear(job.clip.tape, start + back, end + back, tracks))
    work.remark = (
        f"{job.clip.tape} was then played by itself: {shows(tracks)} "
        f"{span(start + back, end + back, work.scene.bench)}."
    )
    return WORN_SOURCE


def player_that_is_off(work: EditsWork) -> Rule:
    film(work, either_tape(work))
    work.off = True
    work.remark = WELL_ON_THE_RECORDER
    return PLAYER_OFF


def worn_within(work: EditsWork) -> tuple[int, int]:
    """A stretch inside one of the shots."""
    frames = work.scene.seconds(1, 3)
    start = inside(work, work.scene.draw.pick(work.jobs), frames)
    return start, start + frames


def worn_tracks(work: EditsWork) -> tuple[Side, ...]:
    return work.scene.draw.pick((SIDES, (PICTURE,), (SOUND,)))


def shows(tracks: tuple[Side, ...]) -> str:
    return listed([SHOWS[track] for track in tracks])
