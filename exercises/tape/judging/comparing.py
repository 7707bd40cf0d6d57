"""One wanted shot against the track that should hold it."""

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from exercises.tape.judging.brief import Wanted
from exercises.tape.judging.difference import LOST, WRONG, DifferenceKind
from exercises.tape.judging.stretches import Stretch, stretches
from exercises.tape.runs import Run, Runs
from exercises.tape.track import Laid


class Piece(NamedTuple):
    """``[start, end)`` of a shot: there (``kind`` is None), or how it differs.

    ``at`` is where on the tape that is seen, if not at its start.
    """

    start: int
    end: int
    kind: DifferenceKind | None
    by: int | None = None
    at: int | None = None


class ShotPlace(NamedTuple):
    """A wanted shot and the ones that it meets, if it does."""

    shot: Wanted
    before: Wanted | None
    after: Wanted | None


def places(wanted: Sequence[Wanted]) -> Iterator[ShotPlace]:
    for index, shot in enumerate(wanted):
        before = wanted[index - 1] if index else None
        after = wanted[index + 1] if index + 1 < len(wanted) else None
        yield ShotPlace(
            shot,
            before if before and before.end == shot.at else None,
            after if after and after.at == shot.end else None,
        )


def lateness(run: Run[Laid], shot: Wanted) -> int:
    """How many frames later than wanted the run has the shot's frames; below 0, earlier."""
    return run.start - run.value.frame - shot.shift


def right(run: Run[Laid], shot: Wanted) -> bool:
    """Whether the run holds the shot's source where it is wanted, within the tolerance."""
    return run.value.source == shot.source and abs(lateness(run, shot)) <= shot.tolerance


def compare(place: ShotPlace, before: Runs[Laid], after: Runs[Laid]) -> list[Piece]:
    """The pieces that a wanted shot falls into, in order; neighbours differ."""
    shot = place.shot
    pieces: list[Piece] = []
    for stretch in stretches(after, shot.at, shot.end):
        if stretch.run is None:
            pieces += _blank(place, before, stretch)
        elif right(stretch.run, shot) or _is_at_edge(place, stretch):
            pieces.append(Piece(stretch.start, stretch.end, None))
        else:
            pieces += _not_right(place, stretch, stretch.run)
    return _displaced(shot, _joined(pieces)) if len(pieces) > 1 else pieces


def _blank(place: ShotPlace, before: Runs[Laid], blank: Stretch[Laid]) -> Iterator[Piece]:
    for start, end, there in _edges(place, blank):
        if there:
            yield Piece(start, end, None)
            continue
        for stretch in stretches(before, start, end):
            lost = stretch.run is not None and right(stretch.run, place.shot)
            kind = LOST[place.shot.track] if lost else DifferenceKind.MISSING
            yield Piece(stretch.start, stretch.end, kind)


def _not_right(place: ShotPlace, stretch: Stretch[Laid], run: Run[Laid]) -> Iterator[Piece]:
    """What of the stretch is the shot's own, but moved; the rest is wrong, but at an edge."""
    shot, (start, end, _) = place.shot, stretch
    late = lateness(run, shot)
    first, last = end, end
    if run.value.source == shot.source:
        first = min(max(start, shot.at + late), end)
        last = max(min(end, shot.end + late), first)
    yield from _wrong(place, Stretch(start, first, run))
    if first < last:
        moved = DifferenceKind.LATE if late > 0 else DifferenceKind.EARLY
        yield Piece(first, last, moved, abs(late))
    yield from _wrong(place, Stretch(last, end, run))


def _wrong(place: ShotPlace, stretch: Stretch[Laid]) -> Iterator[Piece]:
    for start, end, there in _edges(place, stretch):
        yield Piece(start, end, None if there else WRONG[place.shot.track])


def _is_at_edge(place: ShotPlace, stretch: Stretch[Laid]) -> bool:
    """Whether it is no more than may be off at an edge of the shot."""
    return all(there for _, _, there in _edges(place, stretch))


def _edges(place: ShotPlace, stretch: Stretch[Laid]) -> Iterator[tuple[int, int, bool]]:
    """The stretch, cut where the shot's edges may be off, and whether it may lie there.

    Where the shot meets another, the other may run on over the cut; where it meets none,
    anything may lie at its edge.
    """
    shot = place.shot
    head, tail = shot.at + shot.slack, shot.end - shot.slack
    for start, end, other, edge in (
        (stretch.start, min(stretch.end, head), place.before, True),
        (max(stretch.start, head), min(stretch.end, tail), None, False),
        (max(stretch.start, tail), stretch.end, place.after, True),
    ):
        if start < end:
            run = stretch.run
            yield start, end, edge and (other is None or (run is not None and right(run, other)))


def _joined(pieces: list[Piece]) -> list[Piece]:
    joined = pieces[:1]
    for piece in pieces[1:]:
        if joined[-1].kind is piece.kind and joined[-1].by == piece.by:
            joined[-1] = joined[-1]._replace(end=piece.end)
        else:
            joined.append(piece)
    return joined


def _displaced(shot: Wanted, pieces: list[Piece]) -> list[Piece]:
    """A late shot leaves something else at its head, an early one at its tail: one thing."""
    for piece in pieces:
        by = piece.by or 0
        if piece.kind is DifferenceKind.LATE and piece.start == shot.at + by:
            whole = piece._replace(start=shot.at, at=piece.start)
            return [whole, *(p for p in pieces if p.start >= piece.end)]
        if piece.kind is DifferenceKind.EARLY and piece.end == shot.end - by:
            return [*(p for p in pieces if p.end <= piece.start), piece._replace(end=shot.end)]
    return pieces
