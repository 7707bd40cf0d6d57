"""Pictures and sounds of the questions asked: their addresses.

An address is a signed token of the question's own random one and the number of the medium.
It says nothing of what is shown, and nobody can guess that of a picture not yet shown.
"""

from django.core.signing import BadSignature, Signer
from django.http import Http404

from course.cohorts.access import may_see_practice
from course.cohorts.models import Person
from exercises.drills.asks import Json
from exercises.models import Asked


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
