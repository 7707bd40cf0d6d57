"""Pictures and sounds, made when they are first asked for and kept by content."""

import hashlib
import json
import logging
from collections.abc import Callable
from threading import Lock

from django.core.cache import caches

from course.memory import give_back
from exercises.drills.asks import Json
from exercises.drills.media.medium import facts
from exercises.drills.media.rendering import REVISION, Rendered, render

logger = logging.getLogger(__name__)

# Making takes the processor, and up to 140 MB for a moment: one at a time in each worker.
MAKING = Lock()


def made_of(medium: Json) -> Rendered:
    """Made now, or kept from before. Two workers at once make it twice, to the same bytes."""
    name = name_of(medium)
    return kept(name) or made_now(name, medium)


def kept(name: str) -> Rendered | None:
    found = try_cache(lambda: caches["made"].get(name))
    return Rendered(*found) if isinstance(found, tuple) else None


def made_now(name: str, medium: Json) -> Rendered:
    """Whoever waited for the same one meanwhile finds it kept."""
    with MAKING:
        if found := kept(name):
            return found
        made = render(medium)
        try_cache(lambda: caches["made"].set(name, tuple(made)))
        give_back()
        return made


def name_of(medium: Json) -> str:
    """By content: alike for all that look or sound alike."""
    content = json.dumps([REVISION, facts(medium)], sort_keys=True)
    return hashlib.sha256(content.encode()).hexdigest()


def try_cache(use: Callable[[], object]) -> object:
    """None where the cache can't be used: a full disk must not keep a picture from anybody."""
    try:
        return use()
    except Exception:  # each kind of cache has errors of its own
        logger.warning("Pictures and sounds can’t be kept.", exc_info=True)
        return None
