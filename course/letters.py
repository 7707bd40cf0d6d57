"""E-mail, where a mail server is set: an extra. All that matters is on Today as well.

A letter goes out after the transaction that it tells of, in the background, and one that can't
be sent is logged: a mail server that is down neither fails nor slows anybody's page.
"""

import logging
from concurrent.futures import Future, ThreadPoolExecutor

from django.conf import settings
from django.core.mail import EmailMessage
from django.db import transaction

from course.cohorts.models import Person

ENDS = "All of this is on Today as well. Take your address out of My account to get no more."
logger = logging.getLogger(__name__)
_postman = ThreadPoolExecutor(max_workers=1, thread_name_prefix="letters")
_last: list[Future[None]] = []


def write_to(person: Person, subject: str, text: str) -> None:
    """Send a letter once what it tells of is kept; nothing where there is no address or server."""
    if not (settings.SENDS_MAIL and person.email and person.is_active):
        return
    line = " ".join(subject.split())
    letter = EmailMessage(line, f"{text}\n\n{ENDS}\n", to=[person.email])
    transaction.on_commit(lambda: _hand_over(letter))


def _hand_over(letter: EmailMessage) -> None:
    _last[:] = [_postman.submit(_send, letter)]


def _send(letter: EmailMessage) -> None:
    try:
        letter.send()
    except Exception:
        # Whatever a mail server does wrong, the page it was about is done.
        logger.exception("A letter to %s could not be sent.", ", ".join(letter.to))


def wait_for_letters() -> None:
    """Return when all that was handed over has been tried."""
    for sent in _last:
        sent.result()
