"""What each kind of drill gives away to blind guessing: ``python -m tests.bench.cues [SLUG …]``."""

import sys

from exercises.drills.register import KINDS
from tests.exercises.drills.cues.table import HEAD, lines

SEEDS = 1_000


def main(slugs: list[str]) -> None:
    print(HEAD)
    for slug in slugs or KINDS:
        for line in lines(slug, map(KINDS[slug].make, range(SEEDS))):
            print(line)
        sys.stdout.flush()


if __name__ == "__main__":
    main(sys.argv[1:])
