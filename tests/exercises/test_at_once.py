"""Many browsers of one person at once, or many people: no page fails, nothing is doubled."""

from collections.abc import Callable
from datetime import timedelta

import pytest
from django.test import Client
from django.urls import reverse
from django.utils import timezone

from course.cohorts.models import Cohort, Person
from course.lessons.models import Reading
from course.lessons.shelf import shelf
from exercises.assignments.verbs import Terms, practical_of, set_assignment
from exercises.drills.register import KINDS
from exercises.models import (
    Asked,
    Assignment,
    Attempt,
    Review,
    ReviewRead,
    SignOff,
    Sitting,
    Withdrawal,
)
from exercises.practice.attempts import ask, submit
from exercises.reviews.verbs import Said, review
from exercises.sign_offs.verbs import Decision, sign_off
from tests.answers import wrong_answer
from tests.people import learner
from tests.threads import at_once

pytestmark = pytest.mark.django_db(transaction=True)

TIMES = 16
KEY = "0123456789abcdef" * 2
MODE = KINDS["choose-the-mode"]


def browsers(person: Person, times: int = TIMES) -> list[Client]:
    """So many, in all of which the person has signed in."""
    first = Client()
    first.force_login(person)
    found = [Client() for _ in range(times)]
    for each in found:
        each.cookies = first.cookies.copy()  # type: ignore[assignment]
    return found


def statuses(calls: list[Callable[[], int]]) -> set[int]:
    return set(at_once(calls))


def getting(person: Person, *urls: str, times: int = TIMES) -> list[Callable[[], int]]:
    """`times` browsers that get the addresses in turn."""
    pairs = [(each, urls[n % len(urls)]) for n, each in enumerate(browsers(person, times))]
    return [lambda browser=browser, url=url: browser.get(url).status_code for browser, url in pairs]  # type: ignore[misc]


def posting(
    person: Person, url: str, fields: dict[str, str] | None = None, times: int = TIMES
) -> list[Callable[[], int]]:
    sent = fields or {}
    return [
        lambda browser=browser: browser.post(url, sent).status_code  # type: ignore[misc]
        for browser in browsers(person, times)
    ]


def asked_for(cohort: Cohort, title: str, **columns: object) -> Assignment:
    opens = timezone.now() - timedelta(days=1)
    given = {"title": title, "opens_at": opens, "due_at": opens + timedelta(days=7), **columns}
    return set_assignment(cohort.instructors.get(), cohort, Terms(columns=given, people=[]))


def practical(cohort: Cohort, title: str = "Black") -> Assignment:
    return asked_for(cohort, title, what="practical", task="Lay ten seconds.")


def sent_back(by: Person, attempt: Attempt) -> Attempt:
    review(by, attempt, Said(what="sent-back", text="Once more.", key=KEY[::-1]))
    return attempt


def test_practicals_page_asks_for_one_report(mina: Person, harbour: Cohort) -> None:
    url = practical(harbour).get_absolute_url()

    assert statuses(getting(mina, url)) == {200}
    assert Asked.objects.get().latest


def test_two_practicals_pages_ask_for_a_report_each(mina: Person, harbour: Cohort) -> None:
    both = [practical(harbour, title) for title in ("Black", "Bars")]

    assert statuses(getting(mina, *(each.get_absolute_url() for each in both))) == {200}
    assert [Asked.objects.filter(assignment=each).count() for each in both] == [1, 1]
    assert Asked.objects.filter(latest=True).count() == 1


def test_report_is_written_again_once(mina: Person, ines: Person, harbour: Cohort) -> None:
    found = practical(harbour)
    first = submit(practical_of(mina, found), {"text": "I laid black. " * 9})
    url = reverse("answer-again", args=[sent_back(ines, first).key])
    calls = posting(mina, url, times=8) + getting(mina, found.get_absolute_url(), times=8)

    assert statuses(calls) == {200, 302}
    assert Asked.objects.get(attempt=None).again == first


def test_answer_again_and_the_drills_page_leave_one_open_question(
    mina: Person, ines: Person, harbour: Cohort
) -> None:
    asked = ask(mina, MODE)
    first = sent_back(ines, submit(asked, wrong_answer(asked)))
    calls = posting(mina, reverse("answer-again", args=[first.key]), times=8)
    calls += getting(mina, reverse("drill", args=[MODE.slug]), times=8)

    assert statuses(calls) == {200, 302}
    assert Asked.objects.filter(again=first).count() == 1
    assert Asked.objects.filter(latest=True).count() == 1


def test_sets_begun_at_once_are_one_set(mina: Person, harbour: Cohort) -> None:
    drills = {"what": "drills", "questions": 5, "right_needed": 4, "tries": 1}
    one, other = (asked_for(harbour, title, **drills) for title in ("One", "Other"))
    calls = posting(mina, one.get_absolute_url(), times=6)
    calls += posting(mina, other.get_absolute_url(), times=5)
    calls += posting(mina, reverse("new-sitting"), {"length": "5"}, times=5)

    assert statuses(calls) == {302}
    assert Sitting.objects.count() == 1


@pytest.mark.parametrize("page", ["drill", "lesson", "sitting"])
def test_page_that_keeps_something_when_it_is_read(page: str, mina: Person) -> None:
    if page == "sitting":
        arg = Sitting.objects.create(person=mina, length=5).token
    else:
        arg = MODE.slug if page == "drill" else shelf().lessons[0].slug

    assert statuses(getting(mina, reverse(page, args=[arg]))) == {200}
    assert Reading.objects.count() <= 1


def test_reviews_opened_at_once_are_read_once(mina: Person, ines: Person, harbour: Cohort) -> None:
    asked = ask(mina, MODE)
    attempt = sent_back(ines, submit(asked, wrong_answer(asked)))

    assert statuses(getting(mina, attempt.get_absolute_url())) == {200}
    assert ReviewRead.objects.count() == 1


def test_reply_sent_at_once_is_kept_once(mina: Person, ines: Person, harbour: Cohort) -> None:
    asked = ask(mina, MODE)
    attempt = sent_back(ines, submit(asked, wrong_answer(asked)))

    sent = posting(mina, reverse("reply", args=[attempt.key]), {"text": "I see."})

    assert statuses(sent) == {302}
    assert Review.objects.filter(what="reply").count() == 1


def test_form_key_of_two_instructors_at_once_keeps_one_and_refuses_one(
    mina: Person, ines: Person, rafe: Person, harbour: Cohort
) -> None:
    harbour.instructors.add(rafe)
    asked = ask(mina, MODE)
    attempt = submit(asked, wrong_answer(asked))
    fields = {"action": "comment", "text": "Name the mode.", "key": KEY}
    url = reverse("review-attempt", args=[harbour.pk, mina.pk, attempt.key])

    sent = at_once(posting(ines, url, fields, 8) + posting(rafe, url, fields, 8))

    kept = Review.objects.get()
    assert sent == ([302] * 8 + [422] * 8 if kept.by == ines else [422] * 8 + [302] * 8)


def test_decisions_and_withdrawals_at_once_are_one(
    mina: Person, ines: Person, harbour: Cohort
) -> None:
    other = sign_off(
        ines,
        learner("Una Quist", harbour),
        harbour,
        Decision(state="alone", bench="B", note="", key=KEY[::-1]),
    )
    decide = reverse("sign-off-person", args=[harbour.pk, mina.pk])
    take_back = reverse("withdraw-sign-off", args=[harbour.pk, other.code])
    fields = {"state": "alone", "bench": "Bench 1", "note": "", "key": KEY, "named": mina.name}
    calls = posting(ines, decide, fields, 8) + posting(ines, take_back, {"reason": "No."}, 8)

    assert statuses(calls) == {302}
    assert (SignOff.objects.count(), Withdrawal.objects.count()) == (2, 1)


def test_account_asked_for_at_once_is_made_once(db: None) -> None:
    fields = {
        "name": "Una Quist",
        "sign_in_name": "una",
        "email": "",
        "new_password": "leader-black-bars",
        "again": "leader-black-bars",
    }
    url = reverse("new-account")

    sent = [lambda: Client().post(url, fields).status_code for _ in range(4)]

    assert statuses(sent) == {302}
    assert Person.objects.count() == 1
