"""How long edits take: ``python -m tests.bench.tape``.

The same random edits on a 90-minute master, once on the tape model (all three tracks,
causes and states) and once chopped into a single ``intervaltree``, in turns. The best of
several turns counts, on both sides. Then a whole master, played back and judged, by the
edits that made it; plans, by judging what they make; and documents that are refused.
"""

import json
from collections.abc import Iterable
from random import Random

from intervaltree import IntervalTree

from exercises.tape import (
    Assemble,
    Bench,
    Edit,
    Insert,
    PlaybackState,
    Rate,
    Source,
    Take,
    Tape,
    play,
    record,
    simulate,
)
from tests.bench import heavy, ten_shots, whole_master
from tests.bench.stopwatch import milliseconds

MASTER = 90 * 60 * Rate.R29_97.nominal
BENCH = Bench.default(Rate.R29_97)
REELS = tuple(
    Source(name, tuple(Take(start, start + 2900) for start in range(0, MASTER, 3000)))
    for name in ("Tape 1", "Tape 2", "Tape 3")
)
TRACKS = ((True, False), (False, True), (True, True))
TURNS = 7


def random_edits(count: int, *, shortest: int, longest: int, assembles: float) -> list[Edit]:
    random = Random(count)
    edits: list[Edit] = []
    for _ in range(count):
        frames = random.randint(shortest, longest)
        first, at = (random.randrange(MASTER - frames) for _ in range(2))
        shot = random.choice(REELS), first, first + frames, at
        if random.random() < assembles:
            edits.append(Assemble(*shot))
        else:
            picture, sound = random.choice(TRACKS)
            edits.append(Insert(*shot, picture=picture, sound=sound))
    return edits


def on_the_model(edits: Iterable[Edit]) -> tuple[PlaybackState, ...]:
    tape = Tape.blank(MASTER).with_pass(0, MASTER, "black")
    for index, edit in enumerate(edits):
        tape = record(tape, edit, BENCH, index)
    return play(tape, BENCH)


def in_one_tree(edits: Iterable[Edit]) -> IntervalTree:
    tree = IntervalTree()
    tree[0:MASTER] = ("black", 0)
    for edit in edits:
        tree.chop(edit.at, edit.end)
        tree[edit.at : edit.end] = (edit.source.name, edit.in_ - edit.at)
    return tree


def document(edits: Iterable[Edit]) -> dict[str, object]:
    def written(edit: Edit) -> dict[str, object]:
        shot = {"source": edit.source.name, "in": edit.in_, "out": edit.out, "at": edit.at}
        if isinstance(edit, Insert):
            return {"mode": "insert", "picture": edit.picture, "sound": edit.sound, **shot}
        return {"mode": "assemble", **shot}

    return {
        "master": {
            "length": MASTER,
            "recorded": [{"start": 0, "end": MASTER, "what": "black"}],
        },
        "sources": {
            reel.name: {"takes": [{"start": take.start, "end": take.end} for take in reel.takes]}
            for reel in REELS
        },
        "edits": [written(edit) for edit in edits],
    }


def measured(*, shortest: int, longest: int, assembles: float) -> dict[str, float]:
    few, many = (
        random_edits(count, shortest=shortest, longest=longest, assembles=assembles)
        for count in (1_000, 10_000)
    )
    turns = [
        (milliseconds(lambda: on_the_model(few)), milliseconds(lambda: in_one_tree(few)))
        for _ in range(TURNS)
    ]
    model, tree = (min(side) for side in zip(*turns, strict=True))
    model_10000 = min(milliseconds(lambda: on_the_model(many)) for _ in range(3))
    return {
        "model_1000_ms": model,
        "one_tree_1000_ms": tree,
        "model_by_one_tree": model / tree,
        "model_10000_ms": model_10000,
        "10000_by_1000": model_10000 / model,
    }


KINDS = {
    "shots of 1 to 20 s, half of them assembled": (30, 600, 0.5),
    "shots of 1 to 20 s, all inserted": (30, 600, 0.0),
    "shots of 1 to 20 s, all assembled": (30, 600, 1.0),
    "shots of 1 to 60 frames, half assembled": (1, 60, 0.5),
}


def judged_masters() -> dict[str, float]:
    print("A 90-minute master of 600 edits, played back and judged, by the edits themselves.\n")
    print(f"{'':44}{'edits':>9}{'judged':>10}{'ratio':>7}")
    figures: dict[str, float] = {}
    for kind, marked in (("plain shots", False), ("words, drift and AGC in every shot", True)):
        row = whole_master.measured(marked=marked)
        edits, judged, ratio = row.values()
        print(f"{kind:44}{edits:6.1f} ms{judged:7.1f} ms{ratio:7.2f}")
        figures |= {f"marked_{name}": figure for name, figure in row.items()} if marked else row
    print("\nGoal: the ratio at most 5.\n")
    return figures


def main() -> None:
    print("Random edits on a 90-minute master: three tracks and states, by one intervaltree.\n")
    print(f"{'':44}{'1,000':>9}{'one tree':>10}{'ratio':>7}{'10,000':>10}{'ratio':>7}")
    figures: dict[str, float] = {}
    for number, (kind, (shortest, longest, assembles)) in enumerate(KINDS.items()):
        row = measured(shortest=shortest, longest=longest, assembles=assembles)
        model, tree, by_tree, model_10000, by_1000 = row.values()
        print(
            f"{kind:44}{model:6.1f} ms{tree:7.1f} ms{by_tree:7.2f}"
            f"{model_10000:7.1f} ms{by_1000:7.1f}"
        )
        if number == 0:
            figures = row
    edits = random_edits(1_000, shortest=30, longest=600, assembles=0.5)
    asked = document(edits)
    figures["document_1000_ms"] = min(milliseconds(lambda: simulate(asked)) for _ in range(TURNS))
    print(f"\nThe first row as a session document, answered: {figures['document_1000_ms']:.1f} ms")
    print("Goals: the first ratio at most 1 (first row), the second at most 15.\n")
    figures |= judged_masters()
    figures |= ten_shots.compared()
    figures |= heavy.compared()
    print(json.dumps({name: round(figure, 3) for name, figure in figures.items()}))


if __name__ == "__main__":
    main()
