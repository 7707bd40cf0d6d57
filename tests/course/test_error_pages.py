"""What somebody sees when a page can't be shown: one sentence and the way back."""

import gc
from collections.abc import Callable

import pytest
from django.conf import settings
from django.core.exceptions import PermissionDenied
from django.http import Http404, HttpRequest
from django.template.loader import get_template
from django.test import Client, RequestFactory
from django.views import defaults

from course.cohorts.models import Person
from course.wsgi import application
from tests.pages import heading, texts

ClientOf = Callable[[Person], Client]

# A server keeps from the collector what it has loaded; other tests' packages ask it for theirs.
gc.unfreeze()


def test_page_that_does_not_exist(client: Client, db: None) -> None:
    page = client.get("/no/such/page/")

    assert (page.status_code, heading(page)) == (404, "There is no such page")
    assert texts(page, "a", "button") == ["Go to the first page"]


def test_page_that_does_not_exist_knows_who_is_signed_in(mina: Person, client_of: ClientOf) -> None:
    page = client_of(mina).get("/no/such/page/")

    assert "Mina Tarrant" in texts(page, "a")


def test_page_that_does_not_exist_tells_nothing_of_the_site(client: Client, db: None) -> None:
    page = defaults.page_not_found(request(), Http404("No Cohort matches the given query."))

    assert b"Cohort" not in page.content


@pytest.mark.parametrize("place", ["record", "sittings", "answers", "pictures", "verify", "join"])
def test_nul_in_an_address_is_no_page(place: str, mina: Person, client_of: ClientOf) -> None:
    page = client_of(mina).get(f"/{place}/a%00b/")

    assert (page.status_code, heading(page)) == (404, "There is no such page")


def test_nul_in_a_cookie_can_not_be_read(client: Client, db: None) -> None:
    client.cookies[settings.SESSION_COOKIE_NAME] = "a" * 30 + "\0"
    page = client.get("/")

    assert (page.status_code, heading(page)) == (400, "That can’t be read")


@pytest.mark.parametrize("method", ["GET", "POST"])
@pytest.mark.parametrize("form", ["application/x-www-form-urlencoded", "multipart/form-data"])
@pytest.mark.parametrize(
    "charset",
    [
        *("charset=utf-16", "charset=iso-8859-1", "charset=zlib", "charset=idna", "charset=utf-7"),
        *("charset=no-such", "charset*=no-such''a", "a*=idna''%ff"),
    ],
)
def test_form_in_another_charset_can_not_be_read(
    method: str, form: str, charset: str, db: None
) -> None:
    """As the server hands it on: Django's own test client comes in later."""
    said: list[str] = []
    environ = RequestFactory().generic(method, "/sign-in/?a=%ff", b"a=b").environ
    environ["CONTENT_TYPE"] = f"{form}; boundary=x; {charset}"
    page = b"".join(application(environ, lambda status, headers: said.append(status)))

    assert said == ["400 Bad Request"]
    assert "That can’t be read" in page.decode()


@pytest.mark.parametrize("charset", ["utf-8", "UTF-8"])
def test_form_that_says_its_charset_is_read(charset: str, client: Client, db: None) -> None:
    kind = f"application/x-www-form-urlencoded; charset={charset}"
    page = client.post("/sign-in/", "sign_in_name=", content_type=kind)

    assert heading(page) == "Sign in"


def test_host_that_is_not_the_sites(client: Client, db: None) -> None:
    page = client.get("/", headers={"host": "elsewhere.example"})

    assert (page.status_code, heading(page)) == (400, "That can’t be read")


def test_refusal_gives_its_reason(db: None) -> None:
    page = defaults.permission_denied(request(), PermissionDenied("Only learners join a cohort."))

    assert texts(page, "p", "lede") == ["Only learners join a cohort."]


def test_refusal_without_a_reason_has_a_sentence(db: None) -> None:
    page = defaults.permission_denied(request(), PermissionDenied())

    assert texts(page, "p", "lede") == [
        "Your account has no part in this page. "
        "If it should have, ask whoever looks after the site."
    ]


def test_page_of_a_fault_needs_neither_database_nor_request() -> None:
    page = defaults.server_error(request())  # no database fixture: a query would fail the test

    assert (page.status_code, heading(page)) == (500, "Something went wrong")


@pytest.mark.parametrize("name", ["500.html", "503.html"])
def test_page_without_the_database_links_files_that_exist(name: str) -> None:
    from django.contrib.staticfiles import finders

    source = get_template(name).render({})
    linked = [part.split('"')[0] for part in source.split('href="/static/')[1:]]

    assert [name for name in linked if not finders.find(name)] == []
    assert len(linked) == 4


@pytest.mark.parametrize("name", ["400.html", "403.html", "403_csrf.html", "404.html", "429.html"])
def test_error_page_offers_the_way_back(name: str) -> None:
    html = get_template(name).render({})

    assert html.count('<a class="button" href="/">Go to the first page</a>') == 1


def request() -> HttpRequest:
    return RequestFactory().get("/", headers={"host": "testserver"})
