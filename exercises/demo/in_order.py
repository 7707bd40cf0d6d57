"""What the demo's people did happens in the order of its moments, whoever did it.

A story gives the moment of what it does next, and does it when it is asked to go on.
"""

from collections.abc import Iterator
from datetime import datetime

Story = Iterator[datetime]


def happen(*stories: Story) -> None:
    """Let all of them happen; of two at the same moment, the one that is named first."""
    waiting = {story: at for story in stories if (at := next(story, None))}
    while waiting:
        story = min(waiting, key=waiting.__getitem__)
        at = next(story, None)
        if at is None:
            del waiting[story]
        else:
            waiting[story] = at
