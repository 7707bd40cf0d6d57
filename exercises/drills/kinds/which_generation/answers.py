"""What is asked of a chain, and the answers of those who believe otherwise."""

from collections.abc import Collection, Sequence

from exercises.drills.asks import Amount, Ask, Choice, Column, Json, Option, Table
from exercises.drills.kinds.which_generation.reels import WHOLE, CopiedShot, CopiedTape

FREE, LAST, ONE = "copy-is-free", "last-copy-counts", "whole-tape-one-generation"
BELIEFS = (FREE, LAST, ONE)
TOLERANCE = 0.15  # dB beside the exact figure that still count as right
LEAST, MOST = 2, 5

GENERATIONS = tuple(
    Option(value=str(number), text=f"Generation {number}") for number in range(LEAST, MOST + 1)
)


def asks(
    segments: Sequence[CopiedShot], asked: CopiedShot, on: str, tapes: Sequence[str]
) -> tuple[Ask, ...]:
    return (
        Table(
            name="generations",
            legend=f"Which generation is each shot on {on}?",
            head="Shot",
            lines=tuple(lines(segments)),
            columns=(Column(title="Generation", options=GENERATIONS),),
        ),
        Amount(
            name="noise",
            legend=f"What is the signal-to-noise of {asked.shot.picture} there, to one decimal?",
            unit="dB",
            least=0,
            most=99,
            decimals=1,
        ),
        Choice(
            name="again",
            legend=f"From which tape that can be had would {asked.shot.picture} come out best?",
            options=tuple(Option(value=tape, text=tape) for tape in sorted(tapes)),
        ),
    )


def lines(segments: Sequence[CopiedShot]) -> list[str]:
    return [f"{number}: {each.shot.picture}" for number, each in enumerate(segments, 1)]


def to_choose(asked: CopiedShot, gone: str = "") -> list[CopiedTape]:
    """The tapes that hold the shot before the edit master does and can be had, by name."""
    before = (reel for reel in asked.reel.line[:-1] if reel.name not in (*WHOLE, gone))
    return sorted(before, key=lambda reel: reel.name)


def answer(
    segments: Sequence[CopiedShot], asked: CopiedShot, gone: str, beliefs: Collection[str]
) -> Json:
    """The true answer, or that of somebody with these beliefs.

    Who believes that only the last copy's machine matters goes by its figure alone; who
    believes that copying loses nothing, by that of the camera, and takes the latest copy, as the
    nearest to hand.
    """
    generations = [each.reel.generation for each in segments]
    if ONE in beliefs:
        generations = [max(generations)] * len(generations)
    chain = asked.reel.chain
    noise = chain[-1] if LAST in beliefs else chain[0] if FREE in beliefs else asked.reel.noise
    return {
        "generations": [[str(number)] for number in generations],
        "noise": round(float(noise), 1),
        "again": _latest(asked, gone).name
        if FREE in beliefs
        else _best(asked, gone, last=LAST in beliefs).name,
    }


def _latest(asked: CopiedShot, gone: str) -> CopiedTape:
    return max(to_choose(asked, gone), key=lambda reel: reel.generation)


def _best(asked: CopiedShot, gone: str, *, last: bool) -> CopiedTape:
    return max(to_choose(asked, gone), key=lambda reel: reel.snr if last else reel.noise)


def clear(asked: CopiedShot, gone: str) -> bool:
    """Whether no figure is so near another that an answer could be either."""
    figures = [asked.reel.chain[0], asked.reel.chain[-1], asked.reel.noise]
    near = [
        abs(one - other) < 4 * TOLERANCE
        for at, one in enumerate(figures)
        for other in figures[at + 1 :]
    ]
    own = sorted(reel.snr for reel in to_choose(asked, gone))
    return not any(near) and (len(own) == 1 or own[-1] > own[-2])
