"""Which edit did it."""

from collections.abc import Iterator

from exercises.tape.track import Laid, Track


def latest(track: Track[Laid], *frames: int) -> int | None:
    """The last edit that recorded or wiped one of these frames."""
    edits = [track.cause(frame) for frame in frames]
    return max((edit for edit in edits if edit is not None), default=None)


def cutter(track: Track[Laid], at: int) -> int | None:
    """The edit that made the cut before this frame: the later of those on its two sides."""
    return latest(track, at - 1, at)


def blamed(track: Track[Laid], start: int, end: int) -> Iterator[tuple[int, int, int | None]]:
    """The parts of ``[start, end)`` with the edit that was there last."""
    at = start
    for cause in track.causes.between(start, end):
        if cause.start > at:
            yield at, cause.start, None
        yield max(at, cause.start), min(cause.end, end), cause.value.edit
        at = min(cause.end, end)
    if at < end:
        yield at, end, None
