"""A link for a new password: the learner is told, and others who teach them agree first."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from threading import Barrier
from typing import Any

import pytest
from django.core import mail
from django.core.exceptions import PermissionDenied
from django.db import connection
from django.http import Http404
from django.test import Client, RequestFactory
from django.urls import reverse
from django.utils import timezone
from pytest_django import DjangoAssertNumQueries, DjangoCaptureOnCommitCallbacks

from course.cohorts.agreeing import ALL_AGREE, NOBODY_TO_ASK, agree, ask, standing_of
from course.cohorts.models import Cohort, LinkAgreement, LinkRequest, Membership, Person, ResetLink
from course.cohorts.reset import make_first_links, make_reset_link
from course.letters import wait_for_letters
from tests.pages import heading, notices, refusals, texts
from tests.people import CohortFactory, instructor, learner

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]
NEW = "leader-black-bars"


@pytest.fixture
def pia(harbour: Cohort, slipway: Cohort) -> Person:
    """A learner in Ines's cohort, and in Rafe's."""
    return learner("Pia Roscarrock", harbour, slipway)


@pytest.fixture
def sends_mail(settings: Any) -> None:
    settings.SENDS_MAIL = True


def page_of(cohort: Cohort, person: Person) -> str:
    return reverse("reset-link", args=[cohort.pk, person.pk])


def make(client: Client, cohort: Cohort, person: Person) -> tuple[int, int]:
    """The status of making a link, and how many have been made."""
    status = client.post(page_of(cohort, person)).status_code
    return status, ResetLink.objects.count()


def link_for(maker: Person, person: Person) -> str:
    request = RequestFactory().get("/", headers={"host": "testserver"})
    return make_reset_link(maker, person, request).removeprefix("http://testserver")


def send_ask(client: Client, cohort: Cohort, person: Person) -> Any:
    return client.post(reverse("ask-for-link", args=[cohort.pk, person.pk]), follow=True)


def answer(client: Client, said: str) -> Any:
    request = LinkRequest.objects.latest("pk")
    return client.post(reverse("link-request", args=[request.pk]), {"answer": said}, follow=True)


def told(person: Person) -> list[str]:
    return [notice.text for notice in person.notices.all()]


# --- The learner is told ----------------------------------------------------------


@pytest.mark.parametrize("maker", ["ines", "ada"])
def test_learner_is_told_on_today_and_on_the_account_page(
    request: pytest.FixtureRequest, mina: Person, ines: Person, client_of: ClientOf, maker: str
) -> None:
    by: Person = request.getfixturevalue(maker)
    link_for(by, mina)
    client = client_of(mina)
    today = texts(client.get(reverse("today")), "section", "sheet")[0]
    client.post(reverse("notices-read"))
    (made,) = ResetLink.objects.all()

    assert today.startswith(
        f"{by.name} has made a link by which a new password can be chosen for your account. If "
        "you did not ask for it, change your password: no link that was made before works then."
    )
    kept = f"{made.at:%-d %B %Y, %H:%M}, made by {by.name}"
    assert kept in texts(client.get(reverse("account")), "li")


def test_learner_is_told_by_mail_of_the_link_and_of_its_use(
    ines: Person,
    mina: Person,
    sends_mail: None,
    django_capture_on_commit_callbacks: DjangoCaptureOnCommitCallbacks,
) -> None:
    with django_capture_on_commit_callbacks(execute=True):
        link = link_for(ines, mina)
        Client().post(link, {"new_password": NEW, "again": NEW})
    wait_for_letters()

    assert [(letter.to, letter.subject) for letter in mail.outbox] == [
        (["mina@quay-street.example"], "A link for a new password"),
        (["mina@quay-street.example"], "Your new password"),
    ]


def test_what_the_learner_is_told_to_do_ends_the_link(
    ines: Person, mina: Person, client_of: ClientOf
) -> None:
    link, client = link_for(ines, mina), client_of(mina)
    fields = {"current_password": "pulses-in-phase", "new_password": NEW, "again": NEW}
    client.post(reverse("password"), fields)

    assert Client().get(link).status_code == 404


def test_account_without_links_says_nothing_of_them(mina: Person, client_of: ClientOf) -> None:
    assert "Links for a new password" not in texts(client_of(mina).get(reverse("account")), "h2")


# --- Others teach them, too -------------------------------------------------------


def test_one_instructor_alone_makes_no_link_for_others_learners(
    ines: Person, harbour: Cohort, pia: Person, client_of: ClientOf
) -> None:
    client = client_of(ines)
    page = client.get(page_of(harbour, pia))
    refused = client.post(page_of(harbour, pia))

    assert texts(page, "button")[-1] == "Ask Rafe Okell"
    assert "Make a link" not in texts(page, "button")
    assert (refused.status_code, texts(refused, "p", "lede")) == (403, [ALL_AGREE])
    assert (ResetLink.objects.count(), told(pia)) == (0, [])


def test_who_teaches_all_cohorts_with_others_needs_nobody(
    ines: Person, rafe: Person, harbour: Cohort, mina: Person, client_of: ClientOf
) -> None:
    harbour.instructors.add(rafe)

    assert make(client_of(ines), harbour, mina) == (200, 1)


def test_all_others_agree_and_it_holds_for_one_link(
    ines: Person, rafe: Person, harbour: Cohort, slipway: Cohort, pia: Person, client_of: ClientOf
) -> None:
    orla = instructor("Orla Finch")
    slipway.instructors.add(orla)
    client = client_of(ines)
    send_ask(client, harbour, pia)
    answer(client_of(rafe), "agree")
    half = make(client, harbour, pia)
    before = client.get(page_of(harbour, pia))
    answer(client_of(orla), "agree")
    after = client.get(page_of(harbour, pia))
    whole, again = make(client, harbour, pia), make(client, harbour, pia)

    assert (half, whole, again) == ((403, 0), (200, 1), (403, 1))
    assert texts(before, "li")[-2:] == ["Orla Finch: no answer yet", "Rafe Okell: agrees"]
    assert "Make a link" in texts(after, "button")
    assert told(ines) == ["All who teach Pia Roscarrock agree: you can make the link now."]
    assert len(told(pia)) == 1
    assert LinkRequest.objects.get().ending == "made"


def test_others_see_the_request_until_they_have_answered(
    ines: Person, rafe: Person, harbour: Cohort, pia: Person, client_of: ClientOf
) -> None:
    said = notices(send_ask(client_of(ines), harbour, pia))
    client, own = client_of(rafe), client_of(ines)
    waiting = texts(client.get(reverse("cohorts")), "p", "notice")
    page = client.get(reverse("link-request", args=[LinkRequest.objects.get().pk]))
    answered = notices(answer(client, "agree"))
    agreed = client.get(reverse("link-request", args=[LinkRequest.objects.get().pk]))

    sentence = "Ines Marlow asks you to agree to a link for a new password for Pia Roscarrock."
    assert said == ["They are asked. Their Cohorts page shows it."]
    assert waiting == [f"{sentence} Answer about Pia Roscarrock"]
    assert heading(page) == "A link for Pia Roscarrock"
    assert answered == ["You have agreed to a link for Pia Roscarrock."]
    assert texts(client.get(reverse("cohorts")), "p", "notice") == []
    assert texts(agreed, "p", "plain")[0].startswith("You agreed on ")
    assert texts(own.get(reverse("cohorts")), "p", "notice") == []


def test_others_are_written_to(
    ines: Person,
    rafe: Person,
    pia: Person,
    sends_mail: None,
    django_capture_on_commit_callbacks: DjangoCaptureOnCommitCallbacks,
) -> None:
    with django_capture_on_commit_callbacks(execute=True):
        ask(ines, pia)
        ask(ines, pia)
    wait_for_letters()

    assert [letter.to for letter in mail.outbox] == [["rafe@quay-street.example"]]


def test_one_who_does_not_agree_ends_it(
    ines: Person, rafe: Person, harbour: Cohort, pia: Person, client_of: ClientOf
) -> None:
    client = client_of(ines)
    send_ask(client, harbour, pia)
    said = notices(answer(client_of(rafe), "refuse"))
    late = notices(answer(client_of(rafe), "agree"))
    page = client.get(page_of(harbour, pia))

    assert said == ["You have not agreed to a link for Pia Roscarrock."]
    assert late == ["This request is over. Nothing is changed."]
    assert told(ines) == ["Rafe Okell does not agree to a link for Pia Roscarrock."]
    assert texts(page, "p", "notice")[0].startswith("Rafe Okell did not agree, on ")
    assert make(client, harbour, pia) == (403, 0)
    assert texts(page, "button")[-1] == "Ask Rafe Okell"  # once more, after they have talked


def test_agreement_is_for_whoever_asked(
    ines: Person, rafe: Person, slipway: Cohort, pia: Person, client_of: ClientOf
) -> None:
    agree(rafe, ask(ines, pia))

    assert make(client_of(rafe), slipway, pia) == (403, 0)
    with pytest.raises(PermissionDenied):
        link_for(rafe, pia)


@pytest.mark.parametrize("days", [-7, 3650], ids=["a week ago", "by a clock that was ahead"])
def test_request_passes_after_a_week(
    days: int, ines: Person, rafe: Person, harbour: Cohort, pia: Person, client_of: ClientOf
) -> None:
    request = ask(ines, pia)
    agree(rafe, request)
    LinkRequest.objects.update(at=timezone.now() + timedelta(days=days))
    page = client_of(rafe).get(reverse("link-request", args=[request.pk]))

    assert texts(page, "p", "plain") == ["This request is over. There is nothing to answer."]
    assert texts(client_of(rafe).get(reverse("cohorts")), "p", "notice") == []
    assert make(client_of(ines), harbour, pia) == (403, 0)
    assert ask(ines, pia) != request


def test_who_teaches_them_since_then_is_asked_too(
    ines: Person, rafe: Person, harbour: Cohort, pia: Person, client_of: ClientOf
) -> None:
    agree(rafe, ask(ines, pia))
    quay = CohortFactory.create(name="Quay group")
    quay.instructors.add(instructor("Orla Finch"))
    Membership.objects.create(cohort=quay, person=pia)

    assert make(client_of(ines), harbour, pia) == (403, 0)


def test_who_has_left_is_not_waited_for(
    ines: Person, rafe: Person, harbour: Cohort, slipway: Cohort, pia: Person, client_of: ClientOf
) -> None:
    orla = instructor("Orla Finch")
    slipway.instructors.add(orla)
    agree(rafe, ask(ines, pia))
    orla.is_active = False
    orla.save()

    assert make(client_of(ines), harbour, pia) == (200, 1)


def test_where_nobody_can_be_asked_only_an_administrator_makes_it(
    ada: Person, ines: Person, rafe: Person, harbour: Cohort, pia: Person, client_of: ClientOf
) -> None:
    rafe.is_active = False
    rafe.save()
    client = client_of(ines)
    page, asked = client.get(page_of(harbour, pia)), send_ask(client, harbour, pia)
    refused = make(client, harbour, pia)
    admin = client_of(ada).post(reverse("admin:reset-link", args=[pia.pk]))

    assert texts(page, "button") == ["Sign out"]
    assert (asked.status_code, texts(asked, "p", "lede")) == (403, [NOBODY_TO_ASK])
    assert refused == (403, 0)
    assert len(texts(admin, "code")) == 1
    assert told(pia)[0].startswith("Ada Quill has made a link")


def test_only_those_who_teach_the_learner_see_or_answer(
    ada: Person, ines: Person, mina: Person, pia: Person, client_of: ClientOf
) -> None:
    url = reverse("link-request", args=[ask(ines, pia).pk])
    orla = instructor("Orla Finch")
    statuses = {
        person.name: (
            client_of(person).get(url).status_code,
            client_of(person).post(url, {"answer": "agree"}).status_code,
        )
        for person in (ines, orla, ada, mina, pia)
    }

    assert statuses == {
        "Ines Marlow": (404, 404),  # nobody agrees with themselves
        "Orla Finch": (404, 404),
        "Ada Quill": (403, 403),
        "Mina Tarrant": (403, 403),
        "Pia Roscarrock": (403, 403),
    }
    assert LinkAgreement.objects.count() == 0


def test_nobody_asks_about_whom_they_do_not_teach(
    ines: Person, mina: Person, lena: Person, rafe: Person
) -> None:
    for by, about in ((ines, lena), (rafe, mina), (mina, lena), (ines, rafe)):
        with pytest.raises(Http404):
            ask(by, about)


@pytest.mark.parametrize("said", ["", "perhaps"])
def test_answer_that_is_none_is_refused(
    ines: Person, rafe: Person, pia: Person, client_of: ClientOf, said: str
) -> None:
    ask(ines, pia)
    page = answer(client_of(rafe), said)

    assert (page.status_code, refusals(page)[:1]) == (422, ["Say which."])


@pytest.mark.django_db(transaction=True)
def test_one_agreement_sent_for_many_times_at_once_makes_one_link(
    ines: Person, rafe: Person, pia: Person
) -> None:
    agree(rafe, ask(ines, pia))
    start = Barrier(4)

    def one(_: int) -> bool:
        start.wait()
        try:
            link_for(ines, pia)
        except PermissionDenied:
            return False
        else:
            return True
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as pool:
        made = list(pool.map(one, range(4)))

    assert (sum(made), ResetLink.objects.count()) == (1, 1)


@pytest.mark.django_db(transaction=True)
def test_asking_and_agreeing_at_once_is_once(ines: Person, rafe: Person, pia: Person) -> None:
    start = Barrier(4)

    def one(_: int) -> int:
        start.wait()
        try:
            request = ask(ines, pia)
            agree(rafe, request)
            return request.pk
        finally:
            connection.close()

    with ThreadPoolExecutor(4) as pool:
        asked = set(pool.map(one, range(4)))

    assert (len(asked), LinkAgreement.objects.count(), len(told(ines))) == (1, 1, 1)


@pytest.mark.parametrize("number", [1, 3])
def test_standing_asks_the_database_constantly(
    ines: Person,
    harbour: Cohort,
    number: int,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    person = learner("Pia Roscarrock", harbour)
    for each in range(number):
        cohort = CohortFactory.create()
        cohort.instructors.add(instructor(f"Fellow{each} Finch"))
        Membership.objects.create(cohort=cohort, person=person)
    ask(ines, person)

    with django_assert_num_queries(4):  # cohorts, their instructors; the request, its agreements
        assert len(standing_of(ines, person).waiting) == number


def test_first_links_are_for_whom_nobody_else_teaches(
    ines: Person, harbour: Cohort, slipway: Cohort
) -> None:
    new, shared = learner("Peg Astley", harbour), learner("Pia Roscarrock", harbour, slipway)
    gone = learner("Wyn Carrow", slipway)
    for person in (new, shared, gone):
        person.set_unusable_password()
        person.save()
    request = RequestFactory().get("/", headers={"host": "testserver"})
    links = make_first_links(ines, [new, shared, gone], request)

    assert [person for person, _ in links] == [new]
