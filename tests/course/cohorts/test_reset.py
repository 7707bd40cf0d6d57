"""A new password by a link that is handed over."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from threading import Barrier

import pytest
from django.core.exceptions import PermissionDenied
from django.db import connection
from django.http import Http404
from django.test import Client, RequestFactory
from django.urls import reverse
from django.utils import timezone
from pytest_django import DjangoAssertNumQueries, Settings

from course.cohorts.models import Cohort, Membership, Person, ResetLink
from course.cohorts.reset import LinkSpentError, make_reset_link, use_reset_link
from tests.pages import heading, notices, refusals, texts
from tests.people import PASSWORD

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]
NEW = "leader-black-bars"


def link_for(maker: Person, person: Person) -> str:
    """The path of a link made as the site makes it."""
    request = RequestFactory().get("/", headers={"host": "testserver"})
    return make_reset_link(maker, person, request).removeprefix("http://testserver")


def choose(client: Client, link: str, new: str = NEW, again: str = "") -> tuple[int, list[str]]:
    response = client.post(link, {"new_password": new, "again": again or new})
    return response.status_code, refusals(response)


def parts(link: str) -> tuple[str, str]:
    _, _, uid, token, _ = link.split("/")
    return uid, token


def opens(person: Person, password: str) -> bool:
    return Client().login(username=person.sign_in_name, password=password)


# --- Making one -------------------------------------------------------------------


def test_instructor_makes_a_link_and_the_learner_uses_it(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    page = client_of(ines).post(reverse("reset-link", args=[harbour.pk, mina.pk]))
    (link,) = texts(page, "p", "reset-link")
    hers = Client()
    after = hers.post(link, {"new_password": NEW, "again": NEW}, follow=True)

    assert link.startswith("http://testserver/new-password/")
    assert notices(after) == ["Your new password is set, and you are signed in."]
    assert hers.session["_auth_user_id"] == str(mina.pk)
    assert [opens(mina, password) for password in (NEW, PASSWORD)] == [True, False]


def test_page_with_the_link_says_how_long_it_works(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf, settings: Settings
) -> None:
    settings.PASSWORD_RESET_TIMEOUT = 2 * 24 * 3600
    page = client_of(ines).post(reverse("reset-link", args=[harbour.pk, mina.pk]))

    assert abs(page.context["ends"] - timezone.now() - timedelta(days=2)) < timedelta(minutes=1)
    assert "no-store" in page.headers["Cache-Control"]


def test_who_made_a_link_for_whom_is_kept_and_the_link_is_not(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    page = client_of(ines).post(reverse("reset-link", args=[harbour.pk, mina.pk]))
    _, token = parts(texts(page, "p", "reset-link")[0].removeprefix("http://testserver"))

    (kept,) = ResetLink.objects.values()
    assert (kept["made_by_id"], kept["for_person_id"]) == (ines.pk, mina.pk)
    assert [value for value in kept.values() if token in str(value)] == []


def test_asking_for_a_link_makes_none_and_lists_earlier_ones(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    ResetLink.objects.create(made_by=None, for_person=mina, at="2026-03-01T09:05:00Z")
    ResetLink.objects.create(made_by=ines, for_person=mina, at="2026-03-02T09:05:00Z")
    page = client_of(ines).get(reverse("reset-link", args=[harbour.pk, mina.pk]))

    assert ResetLink.objects.count() == 2
    assert [text for text in texts(page, "li") if "March" in text] == [
        "2 March 2026, 09:05, by Ines Marlow",
        "1 March 2026, 09:05, by somebody whose account is deleted",
    ]


@pytest.mark.parametrize("made", [1, 3])
def test_asking_for_a_link_asks_the_database_constantly(
    ines: Person,
    mina: Person,
    harbour: Cohort,
    client_of: ClientOf,
    made: int,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    for _ in range(made):
        ResetLink.objects.create(made_by=ines, for_person=mina)
    client = client_of(ines)

    # Session, person, the cohort (for access, and to show), the learner, who teaches them where
    # (two), what was asked of those, what they refused, links with makers.
    with django_assert_num_queries(10):
        client.get(reverse("reset-link", args=[harbour.pk, mina.pk]))


def test_no_link_for_a_learner_of_another_cohort(
    ines: Person, harbour: Cohort, slipway: Cohort, lena: Person, client_of: ClientOf
) -> None:
    client = client_of(ines)
    ways = [(harbour.pk, lena.pk), (slipway.pk, lena.pk)]
    statuses = [client.post(reverse("reset-link", args=way)).status_code for way in ways]

    assert (statuses, ResetLink.objects.count()) == ([404, 404], 0)


def test_instructor_makes_no_link_for_whoever_is_not_a_learner_of_theirs(
    ines: Person, rafe: Person, ada: Person, solo: Person, lena: Person
) -> None:
    for person in (ines, rafe, ada, solo, lena):
        with pytest.raises(Http404):
            link_for(ines, person)

    assert ResetLink.objects.count() == 0


def test_instructor_in_a_cohort_by_mistake_gets_no_link_from_its_instructor(
    ines: Person, harbour: Cohort, rafe: Person, ada: Person, client_of: ClientOf
) -> None:
    for person in (rafe, ada):
        Membership.objects.create(cohort=harbour, person=person)
        page = client_of(ines).post(reverse("reset-link", args=[harbour.pk, person.pk]))

        assert page.status_code == 404
        with pytest.raises(Http404):
            link_for(ines, person)


def test_learner_makes_no_link_at_all(mina: Person, tom: Person) -> None:
    for person in (mina, tom):
        with pytest.raises(Http404):
            link_for(mina, person)


def test_administrator_makes_a_link_for_anybody(ada: Person, ines: Person, solo: Person) -> None:
    for person in (ines, solo, ada):
        choose(Client(), link_for(ada, person))

        assert opens(person, NEW)


def test_no_link_for_a_closed_account(ines: Person, mina: Person) -> None:
    mina.is_active = False
    mina.save()

    with pytest.raises(PermissionDenied):
        link_for(ines, mina)


# --- Using it ---------------------------------------------------------------------


def test_link_works_once(ines: Person, mina: Person) -> None:
    link = link_for(ines, mina)
    choose(Client(), link)
    page = Client().post(link, {"new_password": "another-try-of-it", "again": "another-try-of-it"})

    assert (page.status_code, heading(page)) == (404, "This link no longer works")
    assert opens(mina, NEW)


@pytest.mark.django_db(transaction=True)
def test_link_used_at_once_by_many_works_once(ines: Person, mina: Person) -> None:
    uid, token = parts(link_for(ines, mina))
    start = Barrier(6)

    def one(number: int) -> bool:
        start.wait()
        try:
            use_reset_link(uid, token, f"{NEW}-{number}")
        except LinkSpentError:
            return False
        else:
            return True
        finally:
            connection.close()

    with ThreadPoolExecutor(6) as pool:
        used = list(pool.map(one, range(6)))

    assert sum(used) == 1
    assert opens(mina, f"{NEW}-{used.index(True)}")


def test_link_is_spent_when_the_person_remembers_the_password(ines: Person, mina: Person) -> None:
    link = link_for(ines, mina)
    fields = {"sign_in_name": "mina", "password": PASSWORD}
    Client().post(reverse("sign-in"), fields)

    assert Client().get(link).status_code == 404


@pytest.mark.parametrize(("life", "status"), [(60, 200), (-1, 404)])
def test_link_works_until_its_life_is_over(
    ines: Person, mina: Person, settings: Settings, life: int, status: int
) -> None:
    link = link_for(ines, mina)
    settings.PASSWORD_RESET_TIMEOUT = life

    assert Client().get(link).status_code == status


def test_link_of_a_closed_account_does_not_work(ines: Person, mina: Person) -> None:
    link = link_for(ines, mina)
    Person.objects.filter(pk=mina.pk).update(is_active=False)

    assert Client().get(link).status_code == 404


@pytest.mark.parametrize(
    ("uid", "token"),
    [
        ("MQ", "x"),
        ("!!!", "a-b"),
        ("MQ", "c" * 4000),
        ("é", "é-é"),
        ("OTk5OTk5OTk5OTk5OTk5OTk5OTk5OTk5OTk5", "a-b"),  # a number of 27 figures
        ("LTE", "a-b"),  # -1
        ("OQ" * 3000, "a-b"),
    ],
)
def test_link_that_was_never_made_says_so(mina: Person, uid: str, token: str) -> None:
    page = Client().get(f"/new-password/{uid}/{token}/")

    assert (page.status_code, heading(page)) == (404, "This link no longer works")


def test_token_of_one_person_is_none_of_another(ines: Person, mina: Person, tom: Person) -> None:
    (_, token), (uid, _) = parts(link_for(ines, mina)), parts(link_for(ines, tom))

    assert Client().get(f"/new-password/{uid}/{token}/").status_code == 404


def test_page_of_the_link_says_whose_password_it_sets(ines: Person, mina: Person) -> None:
    page = Client().get(link_for(ines, mina))

    assert texts(page, "p", "kicker") == ["Mina Tarrant"]
    assert "no-store" in page.headers["Cache-Control"]


@pytest.mark.parametrize(
    ("new", "again", "refused"),
    [
        ("short", "", "This password is too short. It must contain at least 10 characters."),
        (NEW, "other", "The two passwords are not the same. Type both again."),
        ("mina-tarrant", "", "The password is too similar to the name."),
        ("x" * 10_000, "", "Use at most 256 characters. This has 10000."),
    ],
)
def test_password_that_is_no_good_leaves_the_link_good(
    ines: Person, mina: Person, new: str, again: str, refused: str
) -> None:
    link = link_for(ines, mina)
    status, said = choose(Client(), link, new, again)

    assert (status, said[0]) == (422, refused)
    assert choose(Client(), link) == (302, [])


def test_new_password_ends_all_older_sessions(
    ines: Person, mina: Person, client_of: ClientOf
) -> None:
    older = client_of(mina)
    choose(Client(), link_for(ines, mina))

    assert older.get(reverse("account")).status_code == 302


def test_new_password_opens_an_account_that_was_throttled(ines: Person, mina: Person) -> None:
    door = {"sign_in_name": "mina", "password": "wrong"}
    statuses = [Client().post(reverse("sign-in"), door).status_code for _ in range(6)]
    choose(Client(), link_for(ines, mina))
    then = Client().post(reverse("sign-in"), {"sign_in_name": "mina", "password": NEW})

    assert (statuses[-1], then.status_code) == (429, 302)


def test_link_opened_in_somebody_elses_browser_leaves_them_signed_in(
    ines: Person, mina: Person, client_of: ClientOf
) -> None:
    hers = client_of(ines)
    page = hers.post(link_for(ines, mina), {"new_password": NEW, "again": NEW}, follow=True)

    assert hers.session["_auth_user_id"] == str(ines.pk)
    assert notices(page) == ["The new password of Mina Tarrant is set."]
