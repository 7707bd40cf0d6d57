"""A roster's pages: send, look through, write, hand over."""

from collections.abc import Callable

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Cohort, Membership, Person, ResetLink, RosterUpload
from tests.pages import heading, notices, refusals, texts

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]


def file(text: str) -> SimpleUploadedFile:
    return SimpleUploadedFile("people.csv", text.encode())


@pytest.fixture
def at(ines: Person, harbour: Cohort, client_of: ClientOf) -> tuple[Client, str]:
    """Ines's browser, and the address of a roster that she has sent."""
    client = client_of(ines)
    text = "name,e-mail\nWyn Carrow,\nBo Lind,wrong\n"
    response = client.post(reverse("cohort-roster", args=[harbour.pk]), {"file": file(text)})
    return client, response.headers["Location"]


def seen_in(client: Client, url: str) -> str:
    return str(client.get(url).context["seen"])


def test_preview_writes_nothing_and_gives_reasons(at: tuple[Client, str]) -> None:
    client, url = at
    page = client.get(url)

    assert heading(page) == "Look through the list"
    assert texts(page, "ul", "plain") == [
        "New account: 1Left out: 1",
        "Line 3, Bo Lind: “wrong” is not an e-mail address.",
    ]
    assert "Write 1 line, leave out 1" in texts(page, "button")
    assert Person.objects.filter(name="Wyn Carrow").count() == 0


def test_link_on_the_result_lets_the_person_choose_a_password(
    at: tuple[Client, str], harbour: Cohort
) -> None:
    client, url = at
    page = client.post(url, {"seen": seen_in(client, url)})
    (link,) = texts(page, "p", "reset-link")
    own = Client()
    own.post(link, {"new_password": "swing-bridge-keeper", "again": "swing-bridge-keeper"})

    wyn = Person.objects.get(name="Wyn Carrow")
    assert wyn.check_password("swing-bridge-keeper")
    assert list(wyn.cohorts.all()) == [harbour]
    assert texts(own.get("/"), "section", "sheet")[0].startswith(
        "Ines Marlow made this account for you, in Harbour group, and a link to choose its "
        "password."
    )
    assert texts(client.get(url), "p", "plain") == ["Everybody new has chosen a password."]


def test_no_link_is_made_here_for_whom_others_teach_by_now(
    at: tuple[Client, str], slipway: Cohort
) -> None:
    client, url = at
    client.post(url, {"seen": seen_in(client, url)})
    Membership.objects.create(cohort=slipway, person=Person.objects.get(name="Wyn Carrow"))
    made = ResetLink.objects.count()
    page = client.post(url)

    assert (texts(page, "p", "reset-link"), ResetLink.objects.count()) == ([], made)
    assert texts(page, "p", "plain") == [
        "Others teach Wyn Carrow, too: where somebody has chosen no password yet, the link is made "
        "on their own page."
    ]


def test_second_confirmation_shows_the_links_again(at: tuple[Client, str]) -> None:
    client, url = at
    seen = seen_in(client, url)
    pages = [client.post(url, {"seen": seen}) for _ in range(2)]

    assert [len(texts(page, "p", "reset-link")) for page in pages] == [1, 1]
    assert Person.objects.filter(name="Wyn Carrow").count() == 1
    assert ResetLink.objects.filter(for_person__name="Wyn Carrow").count() == 2


def test_confirmation_of_something_else_is_refused(at: tuple[Client, str]) -> None:
    client, url = at
    page = client.post(url, {"seen": "something else"}, follow=True)

    assert notices(page) == ["Something has changed meanwhile. Look through it again."]
    assert heading(page) == "Look through the list"
    assert Person.objects.filter(name="Wyn Carrow").count() == 0


def test_links_are_not_made_for_people_who_have_left(at: tuple[Client, str]) -> None:
    client, url = at
    client.post(url, {"seen": seen_in(client, url)})
    Person.objects.get(name="Wyn Carrow").memberships.all().delete()

    assert texts(client.post(url), "p", "reset-link") == []


@pytest.mark.parametrize(
    ("data", "said"),
    [
        ({}, "Choose a file first."),
        ({"file": "no file"}, "Choose a file first."),
        ({"file": file("")}, "This file is empty."),
        (
            {"file": file("who\nWyn\n")},
            "The first line must name the columns, and one of them must be “name”.",
        ),
    ],
    ids=["nothing", "text", "empty", "no name"],
)
def test_file_that_is_no_good_is_refused(
    ines: Person, client_of: ClientOf, data: dict[str, object], said: str
) -> None:
    page = client_of(ines).post(reverse("roster"), data)

    assert (page.status_code, refusals(page)) == (422, [said])
    assert RosterUpload.objects.count() == 0


def test_template_can_be_sent_as_it_is(ines: Person, harbour: Cohort, client_of: ClientOf) -> None:
    client = client_of(ines)
    content = client.get(reverse("roster-template")).content
    sent = SimpleUploadedFile("roster.csv", content)
    page = client.post(reverse("roster"), {"file": sent}, follow=True)

    assert texts(page, "ul", "plain") == ["New account: 1"]


def test_notice_is_shown_until_it_is_read(mina: Person, client_of: ClientOf) -> None:
    mina.notices.create(text="You were moved.")
    client = client_of(mina)

    shown = [len(texts(client.get("/"), "button", "secondary")) for _ in range(2)]
    client.post(reverse("notices-read"))
    shown.append(len(texts(client.get("/"), "button", "secondary")))

    assert shown == [1, 1, 0]
