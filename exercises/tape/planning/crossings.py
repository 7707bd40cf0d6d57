"""Strands that can't each be laid in one recording, since each would spoil the other.

One recording more, of either of the two, may undo all the crossings that it has a share
in: so there are at least as many more as it takes of strands to have one in each.
"""

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from itertools import chain

from exercises.tape.planning.cells import BLACK, Board
from exercises.tape.planning.target import Strand
from exercises.tape.work import spend

Masks = tuple[int, int]  # of the cells of picture and sound
Crossing = tuple[Strand, Strand]


def crossings(
    board: Board, wrong: Mapping[Strand, Masks], needed: Masks, *, gift: bool
) -> list[Crossing]:
    """Those of the strands that are wrong somewhere, over cells that have to be right.

    ``gift`` if black is for nothing.
    """
    spend(len(wrong) * len(board.strands) // 5)
    reaches = {strand: _reach(board, masks) for strand, masks in wrong.items()}
    found = {
        tuple(sorted((strand, other))): (strand, other)
        for strand, reach in reaches.items()
        for other in _under(board, strand, reach, needed)
        if not (other == BLACK and gift)
        and (other not in reaches or _lies_under(board, strand, reaches[other], needed))
    }
    return list(found.values())


def fewest(found: Sequence[Crossing]) -> int:
    """How few strands have a share in all the crossings.

    Either the one that crosses most has, or else all that it crosses have.
    """
    spend(1 + len(found) // 4)
    shares = Counter(chain.from_iterable(found))
    if not shares:
        return 0
    strand, most = shares.most_common(1)[0]
    if most == 1:
        return len(found)
    crossed = {one if other == strand else other for one, other in found if strand in (one, other)}
    with_it = fewest([each for each in found if strand not in each])
    with_them = fewest([each for each in found if not crossed.intersection(each)])
    return min(1 + with_it, len(crossed) + with_them)


def _reach(board: Board, wrong: Masks) -> Masks:
    """What one recording of all that is wrong would cover, on the tracks where it is."""
    both = wrong[0] | wrong[1]
    hull = board.cells((both & -both).bit_length() - 1, both.bit_length() - 1)
    return hull if wrong[0] else 0, hull if wrong[1] else 0


def _under(board: Board, strand: Strand, reach: Masks, needed: Masks) -> Iterator[Strand]:
    for other in board.strands:
        if other != strand and _lies_under(board, other, reach, needed):
            yield other


def _lies_under(board: Board, strand: Strand, reach: Masks, needed: Masks) -> bool:
    """Whether something of a strand lies where a recording would cover it."""
    picture, sound = board.own[strand]
    return bool(picture & needed[0] & reach[0] or sound & needed[1] & reach[1])
