"""Whose answer a page tells of: the reader's own, or somebody's whose name is said."""

from typing import NamedTuple


class Addressed(NamedTuple):
    """Words for whoever answered: to begin a sentence with, and for the middle of one."""

    You: str
    Your: str
    you: str
    your: str


READER = Addressed("You", "Your", "you", "your")


def by_name(name: str) -> Addressed:
    """Somebody else, told to the reader."""
    return Addressed(name, f"{name}’s", name, f"{name}’s")
