"""On which line of a practical's file a path such as `tapes[1].takes[0].shows` stands."""

import re

STEP = re.compile(r"([A-Za-z_]+)(?:\[(\d+)\])?")
HEAD = re.compile(r"^\[\[?([\w.]+)\]\]?\s*$")
KEY = re.compile(r"^(\w+)\s*=")


def line_of(text: str, path: str) -> int:
    """The nearest line there is: of the key, else of the table that it lacks; from 1 on.

    >>> line_of("[[tapes]]\\nname = 1\\n[[tapes]]\\nname = 2\\n", "tapes[1].name")
    4
    >>> line_of("title = 1\\nways = [1, 2]\\n", "ways[1]")
    2
    """
    steps = [(name, int(number or 0)) for name, number in STEP.findall(path)]
    best, found = 1, 0
    at: list[tuple[str, int]] = []
    for number, line in enumerate(text.splitlines(), 1):
        if head := HEAD.match(line):
            at = entered(at, head[1].split("."))
            place = at
        elif key := KEY.match(line):
            place = [*at, (key[1], number_in(steps, at))]
        else:
            continue
        alike = common(place, steps)
        if alike == len(place) and alike > found:
            best, found = number, alike
    return best


def number_in(steps: list[tuple[str, int]], at: list[tuple[str, int]]) -> int:
    """A key's line has all of its value, whichever item of it a path means."""
    return steps[len(at)][1] if len(at) < len(steps) else 0


def entered(at: list[tuple[str, int]], names: list[str]) -> list[tuple[str, int]]:
    """Where a table's head leads from where the one before it led."""
    *outer, last = names
    kept = at[: len(outer)]
    if len(at) >= len(names) and [name for name, _ in at[: len(names)]] == names:
        return [*kept, (last, at[len(outer)][1] + 1)]
    return [*kept, (last, 0)]


def common(one: list[tuple[str, int]], other: list[tuple[str, int]]) -> int:
    """How many steps two places have in common, from the first on."""
    alike = 0
    for here, there in zip(one, other, strict=False):
        if here != there:
            break
        alike += 1
    return alike
