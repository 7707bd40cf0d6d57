"""Pictures and sounds of the questions asked: their addresses, and making them once.

An address is a signed token of the question's own random one and the number of the medium.
It says nothing of what is shown, and nobody can guess that of a picture not yet shown.
"""

import hashlib
import json
import logging
from collections.abc import Callable

from django.core.cache import caches
from django.core.signing import BadSignature, Signer
from django.http import Http404

from course.cohorts.access import may_see_practice
from course.cohorts.models import Person
from exercises.drills.asks import Json
from exercises.drills.media import facts
from exercises.drills.rendering import REVISION, Made, render
from exercises.models import Asked

logger = logging.getLogger(__name__)


def signer() -> Signer:
    """Made when it is needed: the first start builds the demo before there is a key."""
    return Signer(salt="exercises.shown")


def token_of(asked: Asked, number: int) -> str:
    return signer().sign(f"{asked.token}.{number}")


def medium_for(person: object, token: str) -> Json:
    """What a token stands for, or 404: also where somebody else was asked."""
    try:
        question, _, number = signer().unsign(token).rpartition(".")
    except BadSignature as error:
        raise Http404 from error
    asked = Asked.objects.filter(token=question).select_related("person").first()
    if not (asked and isinstance(person, Person) and may_see_practice(person, asked.person)):
        raise Http404
    return asked.as_question().media[int(number)]


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
