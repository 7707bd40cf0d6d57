"""What is seen and heard when tape runs: a look back, a rehearsal, some seconds played."""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from exercises.drills.asks import Json
from exercises.drills.media.described import WIDTH, motion
from exercises.drills.media.medium import SMALL, Medium, Motion, Picture, SoundClip, SourceSound
from exercises.drills.setting.phrases import code
from exercises.signal.picture.seeing import Seeing
from exercises.tape import Rate
from exercises.worktop.edit_at_hand import edit_at_hand
from exercises.worktop.practical import MASTER
from exercises.worktop.set_up import SetUp
from exercises.worktop.shelf_tape import ShelfTape
from exercises.worktop.sights import master_picture, source_picture
from exercises.worktop.worktop import Worktop

PICTURES = 24  # in a moving picture: a roll, a flash, a streak is seen to come and go
AROUND = 2  # seconds to either side of an edit point
LINE_AFTER = 1000  # ms from the action to the first line of a take
PAUSE = 1500  # ms between two lines


@dataclass(frozen=True, kw_only=True)
class TimedMotion(Motion):
    """Pictures of a tape that ran, each with what the counter showed."""

    times: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Stretch:
    """`[start, end)` of what runs, and what it is called."""

    title: str
    start: int
    end: int


def played(
    before: Worktop, name: str, arguments: Mapping[str, Any], after: Worktop
) -> list[Medium]:
    """What an action let be seen and heard; nothing for those that run no tape."""
    if name == "look-back":
        return looked_back(after)
    if name == "rehearse":
        return rehearsed(before)
    if name == "play":
        return run(before, arguments["machine"], after)
    return []


def looked_back(top: Worktop) -> list[Medium]:
    """The master around both ends of the last edit."""
    edit, length = top.edits[-1], top.set_up.master_length
    end = edit["at"] + edit["out"] - edit["in"]
    return [
        medium
        for stretch in around(edit["at"], end, length, top.set_up.bench.rate)
        for medium in of_master(top, stretch)
    ]


def rehearsed(top: Worktop) -> list[Medium]:
    """What comes from the player around both ends of the edit."""
    edit, tape = edit_at_hand(top), top.source
    assert tape is not None  # noqa: S101 - edit_at_hand has looked
    return [
        medium
        for stretch in around(edit["in"], edit["out"], tape.length, top.set_up.bench.rate)
        for medium in of_source(top, tape, stretch)
    ]


def run(before: Worktop, machine: str, after: Worktop) -> list[Medium]:
    if machine == "player" and before.source:
        stretch = Stretch("the player", before.player.at, after.player.at)
        return list(of_source(before, before.source, stretch))
    if machine == "recorder" and before.recorder.tape == MASTER:
        return list(
            of_master(before, Stretch("the recorder", before.recorder.at, after.recorder.at))
        )
    return []


def around(start: int, end: int, length: int, rate: Rate) -> Iterator[Stretch]:
    """The seconds around two edit points; one stretch where they lie close together."""
    reach = AROUND * rate.nominal
    first, last = max(0, start - reach), min(length, end + reach)
    if end - start <= 2 * reach:
        yield Stretch("the edit", first, last)
        return
    yield Stretch("the edit in", first, start + reach)
    yield Stretch("the edit out", end - reach, last)


def of_master(top: Worktop, stretch: Stretch) -> Iterator[Medium]:
    seeing = Seeing(top.master, top.set_up.bench)
    yield moving(top, stretch, lambda frame: master_picture(top.set_up, seeing, frame))
    document = {key: value for key, value in top.document.items() if key != "brief"}
    yield heard(top.set_up, stretch, document, stretch.start, stretch.end)


def of_source(top: Worktop, tape: ShelfTape, stretch: Stretch) -> Iterator[Medium]:
    """Pictures from the player; its sound by way of the recorder's level control."""
    yield moving(top, stretch, lambda frame: source_picture(top, frame))
    length = stretch.end - stretch.start
    through: Json = {
        "mode": "assemble",
        "source": tape.name,
        "in": stretch.start,
        "out": stretch.end,
        "at": 0,
        "sound_level": {"mode": top.recorder.sound_mode, "gain": top.recorder.sound_gain},
    }
    before = top.set_up.document
    document = {
        "rate": before["rate"],
        "bench": before["bench"] | {"lock": 0, "relock": 0, "erase_gap": 0},
        "master": {"length": length},
        "sources": {tape.name: before["sources"][tape.name]},
        "edits": [through],
    }
    yield heard(top.set_up, stretch, document, 0, length)


def moving(top: Worktop, stretch: Stretch, picture: Callable[[int], Picture]) -> TimedMotion:
    frames, bench = stretch.end - stretch.start, top.set_up.bench
    count = min(PICTURES, frames)
    at = [stretch.start + number * frames // count for number in range(count)]
    pictures = tuple(map(picture, at))
    seconds = frames / bench.rate.nominal
    return TimedMotion(
        title=f"Picture: {stretch.title}",
        words=motion(pictures, WIDTH),
        pictures=pictures,
        times=tuple(code(frame, bench) for frame in at),
        rate=round(count / seconds, 2),
        size=SMALL,
    )


def heard(set_up: SetUp, stretch: Stretch, document: Json, start: int, end: int) -> SoundClip:
    return SoundClip(
        title=f"Sound: {stretch.title}",
        words=("The sound of the same seconds.",),
        session=document,
        sounds={tape.name: sound_of(tape, set_up.bench.rate) for tape in set_up.tapes},
        start=start,
        end=end,
    )


def sound_of(tape: ShelfTape, rate: Rate) -> SourceSound:
    """What is said on it, where anything is; else the harbour."""
    talk = next((take for take in tape.takes if take.lines), None)
    if talk is None:
        return SourceSound(room="harbour")
    begin = round(1000 * talk.action / rate.fraction) + LINE_AFTER
    return SourceSound(lines=talk.lines, begin=begin, pause=PAUSE)
