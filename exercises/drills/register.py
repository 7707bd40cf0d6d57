"""The kinds of drill, by slug: one line a kind."""

from exercises.drills.choose_mode import CHOOSE_MODE
from exercises.drills.kind import Kind

KINDS: dict[str, Kind] = {kind.slug: kind for kind in (CHOOSE_MODE,)}


def kind(slug: str) -> Kind:
    """The kind of this slug; KeyError where there is none."""
    return KINDS[slug]
