"""What a tape map shows: the runs of each track, and the faults beneath them."""

from collections.abc import Iterable, Iterator, Mapping
from operator import itemgetter

from exercises.tape.bench import Bench
from exercises.tape.faults import Fault, wording
from exercises.tape.faults import faults as found_faults
from exercises.tape.map.parts import FaultMark, Segment
from exercises.tape.map.window import Window
from exercises.tape.playback import Condition, PlaybackState, play
from exercises.tape.tape import Tape
from exercises.tape.track import Laid, Pulses, Track
from exercises.tape.unpulsed import unpulsed

# Where from and to, which fault, whose edit, and its label and sentence.
Told = tuple[int, int, str, int | None, tuple[str, str]]

# What a stretch is called on the map, and what it means for who watches.
FAULTS = {
    Condition.RELOCK: ("rolls", "the pulses have only just begun: the picture rolls"),
    Condition.NO_PICTURE: ("no picture", "no picture on the tape"),
    Condition.UNSETTLED: ("unsettled", "copied while a machine was not locked: unsteady picture"),
    Condition.NO_SOUND: ("no sound", "no sound on the tape"),
    Condition.UNSETTLED_SOUND: (
        "unsettled sound",
        "copied while a machine was not locked: unsteady sound",
    ),
}

# Without pulses there are two kinds of stretch.
BLANK = ("blank", "blank tape: snow, or muted")
UNPULSED = ("no pulses", "recorded without pulses: nothing locks, and it can’t be used")

NEITHER = ("nothing", "neither picture nor sound on the tape")


def copies(track: Track[Laid], window: Window, names: Mapping[str, str]) -> Iterator[Segment]:
    for run in track.laid:
        if window.shows(run.start, run.end):
            laid = run.tail(window.start).value
            yield Segment(
                **window.place(run.start, run.end),
                label=names.get(laid.source, laid.source),
                source=laid.source,
                frame=laid.frame,
                source_at=window.code(laid.frame),
                generation=laid.generation,
                settled=laid.settled,
            )


def pulses(track: Track[Pulses], window: Window) -> Iterator[Segment]:
    reached = None
    for run in track.laid:
        if window.shows(run.start, run.end):
            jump = run.start == reached and run.start >= window.start
            yield Segment(**window.place(run.start, run.end), label="pulses", jump=jump)
        reached = run.end


def faults(tape: Tape, bench: Bench, window: Window) -> Iterator[FaultMark]:
    """What does not play cleanly, and the faults beyond that, in the order they are met."""
    return marked(tape, play(tape, bench), found_faults(tape, bench), window)


def marked(
    tape: Tape, states: Iterable[PlaybackState], beyond: Iterable[Fault], window: Window
) -> Iterator[FaultMark]:
    """These states of a tape, where they are not clean, and these faults, in their order."""
    told = (*_states(tape, states), *_beyond(beyond))
    for start, end, name, edit, (short, sentence) in sorted(told, key=itemgetter(0)):
        if window.shows(start, end):
            yield FaultMark(
                **window.place(start, end),
                state=name,
                edit=edit,
                label=short,
                sentence=sentence if edit is None else f"{sentence} (edit {edit + 1})",
            )


def _states(tape: Tape, states: Iterable[PlaybackState]) -> Iterator[Told]:
    for start, end, state, edit in states:
        if state is Condition.NO_CONTROL:
            for piece in unpulsed(tape, start, end):
                yield (*piece[:2], state.value, edit, UNPULSED if piece.recorded else BLANK)
        elif state is not Condition.CLEAN:
            empty = state is Condition.NO_PICTURE and _is_silent(tape, start, end)
            yield start, end, state.value, edit, NEITHER if empty else FAULTS[state]


def _is_silent(tape: Tape, start: int, end: int) -> bool:
    """Whether no sound lies anywhere in `[start, end)`."""
    return not any(run.start < end and start < run.end for run in tape.sound.laid)


def _beyond(found: Iterable[Fault]) -> Iterator[Told]:
    for fault in found:
        told = wording.label(fault), wording.sentence(fault)
        yield fault.start, fault.end, fault.kind.value, fault.edit, told
