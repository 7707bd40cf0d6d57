"""E-mail as an extra."""

import logging
from typing import Any

import pytest
from django.core import mail
from django.core.mail.backends.base import BaseEmailBackend
from django.test import override_settings
from pytest_django import DjangoCaptureOnCommitCallbacks

from course.cohorts.models import Cohort, Person
from course.letters import wait_for_letters, write_to
from exercises.models import SignOff
from exercises.sign_offs.verbs import Decision, sign_off

Capture = DjangoCaptureOnCommitCallbacks


class BrokenServer(BaseEmailBackend):
    """A mail server that is not there."""

    def send_messages(self, email_messages: Any) -> int:
        raise OSError("no route to host")


def letters(capture: Capture, person: Person, subject: str = "News") -> list[tuple[Any, ...]]:
    with capture(execute=True):
        write_to(person, subject, "Something is new.")
    wait_for_letters()
    return [(letter.to, letter.subject) for letter in mail.outbox]


@pytest.fixture
def sends_mail(settings: Any) -> None:
    settings.SENDS_MAIL = True


def test_nothing_is_sent_without_a_server(
    mina: Person, django_capture_on_commit_callbacks: Capture
) -> None:
    assert letters(django_capture_on_commit_callbacks, mina) == []


def test_letter_is_sent_where_a_server_is_set(
    mina: Person, sends_mail: None, django_capture_on_commit_callbacks: Capture
) -> None:
    sent = letters(django_capture_on_commit_callbacks, mina)

    assert sent == [(["mina@quay-street.example"], "News")]


@pytest.mark.parametrize(("field", "value"), [("email", ""), ("is_active", False)])
def test_who_has_no_address_or_no_account_gets_none(
    field: str,
    value: object,
    mina: Person,
    sends_mail: None,
    django_capture_on_commit_callbacks: Capture,
) -> None:
    setattr(mina, field, value)

    assert letters(django_capture_on_commit_callbacks, mina) == []


def test_subject_stays_on_one_line(
    mina: Person, sends_mail: None, django_capture_on_commit_callbacks: Capture
) -> None:
    ((_, subject),) = letters(django_capture_on_commit_callbacks, mina, "News\r\nBcc: a@b.example")

    assert subject == "News Bcc: a@b.example"


def test_broken_server_spoils_no_sign_off(
    ines: Person,
    mina: Person,
    harbour: Cohort,
    sends_mail: None,
    caplog: pytest.LogCaptureFixture,
    django_capture_on_commit_callbacks: Capture,
) -> None:
    caplog.set_level(logging.ERROR)
    decision = Decision(state="alone", bench="Bench 1", note="", key="k")
    with override_settings(EMAIL_BACKEND=f"{__name__}.BrokenServer"):
        with django_capture_on_commit_callbacks(execute=True):
            sign_off(ines, mina, harbour, decision)
        wait_for_letters()

    assert SignOff.objects.get().state == "alone"
    assert [record.getMessage() for record in caplog.records] == [
        "A letter to mina@quay-street.example could not be sent."
    ]
