"""Where recordings come to lie, against other people's general libraries.

Recording is "the last one wins". OpenTimelineIO flattens a stack of tracks the same way,
and an interval library replaces values over ranges; one stack, or one map, a tape track.
What a tape adds (pulses, the erase gap, settling) is checked elsewhere: here every run-up
is long enough, and the erase gap is a recording of nothing.
"""

from collections.abc import Iterable
from random import Random
from typing import NamedTuple

import opentimelineio as otio
import portion
import pytest
from opentimelineio.opentime import RationalTime, TimeRange

from exercises.tape import Assemble, Bench, Edit, Insert, Rate, Source, Take, Tape, record
from exercises.tape.track import Laid, Track

LENGTH = 4000
GAP = 60
NOTHING = "nothing"
LISTS = 100  # of some twenty edits each

Frames = dict[int, tuple[str, int]]  # tape frame: reel and source frame


class Patch(NamedTuple):
    """One recording on one track; the reel NOTHING wipes."""

    reel: str
    at: int
    first: int
    frames: int


def by_otio(patches: Iterable[Patch]) -> Frames:
    stack = otio.schema.Stack()
    for reel, at, first, frames in patches:
        track = otio.schema.Track(kind=otio.schema.TrackKind.Video)
        if at:
            track.append(otio.schema.Gap(duration=RationalTime(at, 25)))
        shot = TimeRange(RationalTime(first, 25), RationalTime(frames, 25))
        track.append(otio.schema.Clip(reel, source_range=shot))
        stack.append(track)
    flat = otio.algorithms.flatten_stack(stack)  # the name keeps it alive: without, it is empty
    laid: Frames = {}
    for clip in flat:
        if isinstance(clip, otio.schema.Clip) and clip.name != NOTHING:
            at = int(clip.trimmed_range_in_parent().start_time.value)
            shot = clip.trimmed_range()
            first = int(shot.start_time.value)
            for offset in range(int(shot.duration.value)):
                laid[at + offset] = (clip.name, first + offset)
    return laid


def by_portion(patches: Iterable[Patch]) -> Frames:
    tape = portion.IntervalDict()
    for reel, at, first, frames in patches:
        tape[portion.closedopen(at, at + frames)] = (reel, first - at)
    return {
        frame: (reel, frame + shift)
        for intervals, (reel, shift) in tape.items()
        for interval in intervals
        for frame in range(interval.lower, interval.upper)
        if reel != NOTHING
    }


def by_tape(track: Track[Laid]) -> Frames:
    return {
        frame: (run.value.source, run.value.frame + frame - run.start)
        for run in track.runs
        for frame in range(run.start, run.end)
    }


def edit_list(random: Random) -> list[Edit]:
    """Up to 40 edits, of shots with any amount of run-up."""
    reels = [Source(name, (Take(0, 10_000),)) for name in "ABCD"]
    edits: list[Edit] = []
    for _ in range(random.randint(1, 40)):
        frames = random.randint(1, 400)
        first, at = random.randint(500, 5_000), random.randint(0, LENGTH - frames)
        shot = random.choice(reels), first, first + frames, at
        picture, sound = random.choice(((True, False), (False, True), (True, True)))
        edits.append(Assemble(*shot) if random.random() < 0.3 else Insert(*shot, picture, sound))
    return edits


def patches(edits: Iterable[Edit], track: str) -> list[Patch]:
    """What the edits do to one track: recordings, and after an assemble a wipe."""
    made = []
    for edit in edits:
        shot = Patch(edit.source.name, edit.at, edit.in_, edit.out - edit.in_)
        if not isinstance(edit, Insert):
            made += [shot, Patch(NOTHING, edit.end, 0, min(GAP, LENGTH - edit.end))]
        elif getattr(edit, track):
            made.append(shot)
    return [patch for patch in made if patch.frames]


def recorded(edits: Iterable[Edit]) -> Tape:
    bench = Bench(Rate.R25, lock=0, relock=0, erase_gap=GAP)
    tape = Tape.blank(LENGTH)
    for edit in edits:
        tape = record(tape, edit, bench)
    return tape


def test_picture_and_sound_lie_where_the_libraries_say() -> None:
    """OpenTimelineIO's flatten_stack and portion's IntervalDict, on 100 lists of edits."""
    for seed in range(LISTS):
        edits = edit_list(Random(seed))
        tape = recorded(edits)
        for name, track in (("picture", tape.picture), ("sound", tape.sound)):
            expected = by_otio(patches(edits, name))
            assert expected or not patches(edits, name)
            assert by_tape(track) == expected == by_portion(patches(edits, name)), (seed, name)


def test_pulses_lie_where_the_libraries_say() -> None:
    """OpenTimelineIO and portion again: pulses are laid by assembles alone."""
    for seed in range(LISTS):
        edits = edit_list(Random(seed))
        assembles = patches([edit for edit in edits if not isinstance(edit, Insert)], "control")
        pulses = {
            frame for run in recorded(edits).control.runs for frame in range(run.start, run.end)
        }

        assert pulses == set(by_otio(assembles)) == set(by_portion(assembles)), seed


# Transcribed from OpenTimelineIO's tests/test_editAlgorithm.cpp: the recordings as
# (reel, tape frame, source frame, frames), and what is then on the tape as
# (tape frame, reel, source frame, frames).
WORKED = {
    "overwrite_0": (
        [("A", 0, 0, 24), ("B", 48, 0, 24)],
        [(0, "A", 0, 24), (48, "B", 0, 24)],
    ),
    "overwrite_2": (
        [("A", 0, 1, 100), ("B", 42, 1, 1)],
        [(0, "A", 1, 42), (42, "B", 1, 1), (43, "A", 44, 57)],
    ),
    "overwrite_3": (
        [("A", 0, 0, 24), ("B", 24, 0, 24), ("C", 12, 0, 24)],
        [(0, "A", 0, 12), (12, "C", 0, 24), (36, "B", 12, 12)],
    ),
    "overwrite_5": (
        [("A", 0, 0, 704), ("B", 272, 0, 1), ("C", 360, 0, 1), ("D", 360, 0, 1)],
        [
            (0, "A", 0, 272),
            (272, "B", 0, 1),
            (273, "A", 273, 87),
            (360, "D", 0, 1),
            (361, "A", 361, 343),
        ],
    ),
    "overwrite_partial_first_full_last": (
        [("A", 0, 0, 24), ("B", 24, 0, 24), ("C", 48, 0, 24), ("O", 36, 0, 36)],
        [(0, "A", 0, 24), (24, "B", 0, 12), (36, "O", 0, 36)],
    ),
}


@pytest.mark.parametrize("name", WORKED)
def test_worked_overwrite_lies_as_published(name: str) -> None:
    """Worked examples of OpenTimelineIO's tests/test_editAlgorithm.cpp."""
    recordings, expected = WORKED[name]
    bench = Bench(Rate.R25, lock=0, relock=0, erase_gap=0)
    tape = Tape.blank(1000)
    for reel, at, first, frames in recordings:
        source = Source(reel, (Take(0, 2000),))
        insert = Insert(source, first, first + frames, at, picture=True, sound=False)
        tape = record(tape, insert, bench)

    on_tape = [
        (run.start, run.value.source, run.value.frame, run.end - run.start)
        for run in tape.picture.runs
    ]
    assert on_tape == expected
    assert tape.sound.runs == ()
