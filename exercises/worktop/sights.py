"""What the two monitors of a practice bench show. Pictures are specs, made when somebody looks."""

from typing import Any

from exercises.drills.media.described import WIDTH, picture_in_words
from exercises.drills.media.medium import SMALL, Picture, Still
from exercises.drills.media.seen import fields_of
from exercises.signal.lines import Lines
from exercises.signal.picture.seeing import Seeing
from exercises.worktop.adjusted import Adjusted
from exercises.worktop.practical import BLACK, MASTER
from exercises.worktop.set_up import SetUp
from exercises.worktop.worktop import Worktop

DISPLAY = "underscan"  # with the edges of the picture in view, where skew shows first


def player_shows(top: Worktop) -> Still:
    return still("The player’s monitor", source_picture(top, top.player.at))


def recorder_shows(top: Worktop) -> Still:
    """Its input is what the player plays."""
    if top.recorder.shows == "input":
        picture = source_picture(top, top.player.at)
        return still("The recorder’s monitor: its input", picture)
    return still("The recorder’s monitor: its tape", recorder_picture(top))


def still(title: str, picture: Picture) -> Still:
    return Still(
        title=title, words=(picture_in_words(picture, WIDTH),), picture=picture, size=SMALL
    )


def source_picture(top: Worktop, frame: int) -> Picture:
    """The player's cassette there, under its tracking and skew as they stand."""
    tape = top.source
    take = tape.take_at(frame) if tape else None
    if tape is None or take is None:
        return snow(top.set_up)
    bench = top.set_up.bench
    stand, run = Adjusted(top.player, tape, bench.rate), frame - take.start
    look: dict[str, Any] = one_recording(top.set_up) | {
        "tracking": float(stand.tracking_at(frame)),
        "skew": stand.skew / 10,
        "source": float(take.white),
    }
    if run < bench.relock:
        look["settling"] = round(run / bench.relock, 3)
    return Picture(scene=take.shows, frame=run, look=look, display=DISPLAY)


def recorder_picture(top: Worktop) -> Picture:
    """The recorder's cassette where it stands. A source tape looks well on it: it has no knobs."""
    name = top.recorder.tape
    if name == MASTER:
        seeing = Seeing(top.master, top.set_up.bench)
        return master_picture(top.set_up, seeing, min(top.recorder.at, seeing.tape.length - 1))
    take = top.set_up.by_name[name].take_at(top.recorder.at) if name else None
    if take is None:
        return snow(top.set_up)
    run = top.recorder.at - take.start
    return Picture(scene=take.shows, frame=run, look=one_recording(top.set_up), display=DISPLAY)


def master_picture(set_up: SetUp, seeing: Seeing, frame: int) -> Picture:
    """A frame of the master, in a player that stands well."""
    seen = seeing.at(frame)
    tape = set_up.by_name.get(seen.source or "")
    take = tape.take_at(seen.frame) if tape else None
    scene, number = (take.shows, seen.frame - take.start) if take else (BLACK, frame)
    look = fields_of(seen.look)
    if not seen.look.blank:
        # A pass over the whole tape is told without its chain: it is one recording, too.
        look = one_recording(set_up) | look
    return Picture(scene=scene, frame=number, look=look, display=DISPLAY)


def snow(set_up: SetUp) -> Picture:
    look = lines_of(set_up) | {"blank": True}
    return Picture(scene=BLACK, frame=0, look=look, display=DISPLAY)


def one_recording(set_up: SetUp) -> dict[str, Any]:
    """What is recorded once: a source take, or black that was laid along a tape."""
    return lines_of(set_up) | {"snr": set_up.bench.snr / 10, "copies": 1}


def lines_of(set_up: SetUp) -> dict[str, Any]:
    return {"lines": Lines.of(set_up.bench.rate).total}
