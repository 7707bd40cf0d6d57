"""Words beside a drawing, moved apart until none lies over another."""

from collections.abc import Sequence


def spread(wanted: Sequence[float], apart: float, least: float, most: float) -> list[float]:
    """Places near those wanted, in the same order, at least so far apart, within two ends.

    >>> spread([10, 12, 50], 10, 0, 100)
    [10, 20, 50]
    >>> spread([95, 99], 10, 0, 100)
    [89, 99]
    """
    placed: list[float] = []
    for place in wanted:
        placed.append(max(place, placed[-1] + apart if placed else least))
    limit = most
    for index in range(len(placed) - 1, -1, -1):
        placed[index] = min(placed[index], limit)
        limit = placed[index] - apart
    return placed
