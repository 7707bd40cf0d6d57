"""Where somebody goes on to from the door: a page of this site, whatever the address asks for."""

from collections.abc import Callable
from urllib.parse import urlencode

import pytest
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Person
from tests.people import PASSWORD

ClientOf = Callable[[Person], Client]


@pytest.mark.parametrize(
    ("wanted", "goes_to"),
    [
        ("/lessons/?a=1", "/lessons/?a=1"),
        ("", "/"),
        ("/läufe/?q=ü", "/l%C3%A4ufe/?q=%C3%BC"),
        ("/a/../b//c", "/a/../b//c"),
        ("abc", "/"),
        ("record", "/"),  # a page's name is no address
        ("admin:index", "/"),
        ("./", "/"),
        ("?next=abc", "/"),
        (" /record/", "/"),
        ("http://testserver/record/", "/"),
        ("https://elsewhere.example/", "/"),
        ("//elsewhere.example/", "/"),
        ("///elsewhere.example/", "/"),
        ("/\\elsewhere.example/", "/"),
        ("\\x", "/"),
        ("\\\\x", "/"),
        ("/／elsewhere.example/", "/%EF%BC%8Felsewhere.example/"),
        ("／／elsewhere.example/", "/"),
        ("http://[", "/"),
        ("//[", "/"),
        ("javascript:alert(1)", "/"),
        ("/a\nSet-Cookie: b=c", "/"),
        ("/a\0b", "/"),
        ("\0", "/"),
        ("/\u202e", "/"),
        ("/" + "a" * 100_000, "/"),
        ("a" * 100_000, "/"),
        ("ж" * 20_000, "/"),
    ],
)
def test_sign_in_goes_on_to_a_page_of_this_site(
    wanted: str, goes_to: str, mina: Person, client_of: ClientOf
) -> None:
    door, fields = reverse("sign-in"), {"sign_in_name": "mina", "password": PASSWORD}
    asked = Client().get(door, {"next": wanted})
    ways = [
        Client().post(door, fields | {"next": wanted}),
        Client().post(f"{door}?{urlencode({'next': wanted})}", fields),
        client_of(mina).get(door, {"next": wanted}),
    ]

    assert asked.status_code == 200
    assert [way.headers.get("Location") for way in ways] == [goes_to] * 3


@pytest.mark.parametrize("wanted", ["abc", "record", "//x", "\\x", "/a\0b", "a" * 100_000])
def test_administrators_door_goes_on_to_a_page_of_this_site(
    wanted: str, ada: Person, client_of: ClientOf
) -> None:
    url = reverse("administration-door")
    stranger, known = (each.get(url, {"next": wanted}) for each in (Client(), client_of(ada)))

    assert stranger.headers["Location"] == "/sign-in/?next=/admin/"
    assert known.headers["Location"] == "/admin/"


@pytest.mark.parametrize("asking", ["http://[", "nonsense", "http://testserver/" + "a" * 30_000])
def test_fragment_asked_from_a_page_that_is_none_leads_to_the_door(asking: str, db: None) -> None:
    asked = Client().get("/record/", headers={"HX-Request": "true", "HX-Current-URL": asking})

    assert (asked.status_code, asked.headers["HX-Redirect"]) == (200, "/sign-in/?next=")
