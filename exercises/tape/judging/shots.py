"""The shots that are wanted on one track, one by one: there, or how they differ."""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from exercises.tape.judging.brief import Brief, Wanted
from exercises.tape.judging.comparing import Piece, compare, lateness, places
from exercises.tape.judging.difference import WRONG, Difference, DifferenceKind, Match
from exercises.tape.judging.extras import extras
from exercises.tape.judging.stretches import Stretch, stretches
from exercises.tape.tape import Side, Tape
from exercises.tape.track import Laid, Track
from exercises.tape.work import spend

ABSENT = {DifferenceKind.MISSING, *WRONG.values()}


def found(brief: Brief, side: Side, before: Tape, tape: Tape) -> Iterator[Match | Difference]:
    """What is there of each shot, what differs, and what is extra."""
    was, now = before.on(side), tape.on(side)
    unasked = list(extras(brief, side, was, now, tape.length))
    for number, place in enumerate(places(brief.on(side))):
        pieces = compare(place, was.laid, now.laid)
        if unasked and any(piece.kind for piece in pieces):
            pieces, unasked = _with_unasked(place.shot, pieces, unasked)
        for start, end, kind, by, at in pieces:
            if kind is None:
                yield Match(side, start, end, number)
            else:
                edit = now.cause(start if at is None else at)
                yield Difference(kind, side, start, end, number, by, edit)
        if brief.highest_generation is not None:
            yield from _too_many(brief.highest_generation, number, place.shot, now)
    yield from _extra(side, unasked, now)


def laid_of(shot: Wanted, now: Track[Laid]) -> Iterator[tuple[int, int, Laid]]:
    """What of the shot's own source lies where the shot is wanted."""
    for start, end, run in stretches(now.laid, shot.at, shot.end):
        if run and run.value.source == shot.source:
            yield start, end, run.value


def _extra(side: Side, unasked: Sequence[Stretch[Laid]], now: Track[Laid]) -> Iterator[Difference]:
    """What nobody asked for; neighbours of one edit together."""
    held: Difference | None = None
    for start, end, _ in unasked:
        edit = now.cause(start)
        if held and (held.end, held.edit) == (start, edit):
            held = replace(held, end=end)
            continue
        if held:
            yield held
        held = Difference(DifferenceKind.EXTRA, side, start, end, edit=edit)
    if held:
        yield held


def _with_unasked(
    shot: Wanted, pieces: list[Piece], unasked: list[Stretch[Laid]]
) -> tuple[list[Piece], list[Stretch[Laid]]]:
    """The pieces, when what lies where nothing is wanted may be the shot; and what is not it."""
    spend(1 + len(unasked) // 4)
    if all(piece.kind in ABSENT for piece in pieces):
        pieces = _elsewhere(shot, unasked) or pieces
    return pieces, [stretch for stretch in unasked if not _belongs(stretch, shot, pieces)]


def _elsewhere(shot: Wanted, unasked: Sequence[Stretch[Laid]]) -> list[Piece]:
    """The shot as one piece, early or late, if its first frame lies elsewhere."""
    for stretch in unasked:
        if stretch.run and stretch.run.value.source == shot.source:
            late = lateness(stretch.run, shot)
            if stretch.start <= shot.at + late < stretch.end:
                return [Piece(shot.at, shot.end, _moved(late), abs(late), shot.at + late)]
    return []


def _belongs(stretch: Stretch[Laid], shot: Wanted, pieces: Sequence[Piece]) -> bool:
    """Whether it is a part of the shot, which was found early or late."""
    if stretch.run is None or stretch.run.value.source != shot.source:
        return False
    late = lateness(stretch.run, shot)
    inside = shot.at + late <= stretch.start and stretch.end <= shot.end + late
    return inside and (_moved(late), abs(late)) in ((piece.kind, piece.by) for piece in pieces)


def _moved(late: int) -> DifferenceKind:
    return DifferenceKind.LATE if late > 0 else DifferenceKind.EARLY


def _too_many(highest: int, number: int, shot: Wanted, now: Track[Laid]) -> Iterator[Difference]:
    for start, end, laid in laid_of(shot, now):
        if laid.generation > highest:
            kind, by = DifferenceKind.GENERATION, laid.generation - highest
            yield Difference(kind, shot.track, start, end, number, by, now.cause(start))
