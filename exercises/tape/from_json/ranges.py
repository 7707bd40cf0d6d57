"""Ranges in a document."""

from exercises.tape.node import Node


def read_range(first: Node, last: Node, reached: int) -> tuple[int, int]:
    """A range that is not empty and does not begin before the end of the one before it."""
    start, end = first.whole(), last.whole()
    if start < reached:
        first.refuse(f"begins before the end of the one before it ({reached})")
    if end <= start:
        last.refuse(f"must be after {_key(first)} ({start}), not {end}")
    return start, end


def _key(node: Node) -> str:
    return node.path.rpartition(".")[2]
