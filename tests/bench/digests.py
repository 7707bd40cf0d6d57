"""One digest a kind of drill, before and after a rebuild: ``python -m tests.bench.digests``.

Of 500 seeds each: the question with its key, and the verdict and feedback of a spread of answers.
Where the digests of two checkouts are equal, the rebuild between them changed no question and no
judgement. ``--seeds N`` asks for another number, and names after it for some kinds only.
"""

import argparse
import hashlib
import json
from collections.abc import Iterator
from itertools import islice, product
from typing import Any

from exercises.drills.kind import Kind
from exercises.drills.question import Question
from exercises.drills.register import KINDS

SEEDS = 500
ANSWERS = 12  # of each question, spread over all that there are
LOOKED_AT = 400


def main() -> None:
    """Print each kind's digest, and as the last line one JSON object of them all."""
    wanted = argparse.ArgumentParser(description=__doc__)
    wanted.add_argument("--seeds", type=int, default=SEEDS)
    wanted.add_argument("kinds", nargs="*", choices=[*KINDS, []])
    given = wanted.parse_args()
    found = {}
    for slug in given.kinds or KINDS:
        found[slug] = digest(KINDS[slug], given.seeds)
        print(f"{slug:24} {found[slug]}", flush=True)
    print(json.dumps({"seeds": given.seeds, "digests": found}))


def digest(kind: Kind, seeds: int) -> str:
    """Of all that a kind says of so many seeds."""
    running = hashlib.sha256()
    for seed in range(seeds):
        for told in said(kind, kind.make(seed)):
            running.update(json.dumps(told, sort_keys=True, default=str).encode())
    return running.hexdigest()[:16]


def said(kind: Kind, question: Question) -> Iterator[Any]:
    """The question, then each answer with what it is told."""
    yield question.as_json()
    for answer in answers(question):
        verdict = kind.grade(question, answer).as_told()
        yield [
            answer,
            verdict.right,
            verdict.score,
            list(verdict.misconceptions),
            verdict.feedback,
        ]


def answers(question: Question) -> list[dict[str, Any]]:
    """The right one, and a spread of the first few hundred that there are."""
    names = [ask.name for ask in question.asks]
    every = product(*(ask.every() for ask in question.asks))
    possible = [dict(zip(names, values, strict=True)) for values in islice(every, LOOKED_AT)]
    spread = possible[:: max(1, len(possible) // ANSWERS)]
    return [*([dict(question.right)] if question.right else []), *spread]


if __name__ == "__main__":
    main()
