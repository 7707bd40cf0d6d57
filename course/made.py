"""Pictures and sounds, made when they are first asked for and kept by content."""

import hashlib
import json
import logging
from collections.abc import Callable

from django.core.cache import caches

from exercises.drills.asks import Json
from exercises.drills.media import facts
from exercises.drills.rendering import REVISION, Made, render

logger = logging.getLogger(__name__)


def made_of(medium: Json) -> Made:
    """Made now, or kept from before. Two at once make it twice, to the same bytes."""
    name = name_of(medium)
    kept = try_cache(lambda: caches["made"].get(name))
    if isinstance(kept, tuple):
        return Made(*kept)
    made = render(medium)
    try_cache(lambda: caches["made"].set(name, tuple(made)))
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
