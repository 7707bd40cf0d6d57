"""Pictures that learners send, on the pages: what is taken, what is refused, who sees them."""

from collections.abc import Callable, Iterator
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from django.core.files.uploadedfile import SimpleUploadedFile
from django.test import Client
from django.urls import reverse
from PIL import Image
from pytest_django import DjangoAssertNumQueries, Settings

from course.cohorts.models import Cohort, Person
from exercises.models import Asked, Attempt, OwnDrill, Upload
from exercises.practice.attempts import ask
from exercises.practice.uploads import path_of
from exercises.signal.photographs import LARGEST_FILE
from tests.own import LEADS, published
from tests.pages import texts
from tests.photographs import all_places_taken, file_of, layered, leads, noted, sent

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]
NO_PICTURE = "This is no JPEG, PNG or WebP picture. Send one of these."
NONE = "Choose a picture. Nothing has been recorded yet."


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, settings: Settings) -> Path:
    settings.PICTURES_DIR = tmp_path / "pictures"
    return tmp_path / "pictures"


@pytest.fixture
def drill(ines: Person, harbour: Cohort) -> OwnDrill:
    return published(ines, harbour, form="picture")


def answer_page(person: Person, drill: OwnDrill) -> str:
    return reverse("drill-answer", args=[ask(person, drill.kind).token])


def answered(client: Client, person: Person, drill: OwnDrill) -> Upload:
    client.post(answer_page(person, drill), {"picture": sent(noted(6))})
    return Upload.objects.latest("pk")


def test_picture_is_taken_and_shown(mina: Person, drill: OwnDrill, client_of: ClientOf) -> None:
    client = client_of(mina)
    page = client.post(answer_page(mina, drill), {"picture": sent(noted(6))}, follow=True)
    upload = Upload.objects.get()

    assert page.redirect_chain == [(Attempt.objects.get().get_absolute_url(), 302)]
    assert (upload.width, upload.height) == (40, 60)
    assert f'src="{reverse("sent-picture", args=[upload.name])}"' in page.content.decode()
    assert 'alt="The picture that Mina Tarrant sent"' in page.content.decode()


def test_picture_is_taken_within_a_page(mina: Person, drill: OwnDrill, client_of: ClientOf) -> None:
    client, headers = client_of(mina), {"HX-Request": "true"}
    asked = client.post(reverse("drill-ask", args=[drill.slug]), headers=headers)
    given = client.post(answer_page(mina, drill), {"picture": sent(noted())}, headers=headers)

    assert 'hx-encoding="multipart/form-data"' in asked.content.decode()
    assert "The picture that Mina Tarrant sent" in given.content.decode()
    assert "<html" not in given.content.decode()


def test_question_asks_for_a_file(mina: Person, drill: OwnDrill, client_of: ClientOf) -> None:
    page = client_of(mina).get(reverse("drill", args=[drill.slug])).content.decode()

    assert 'enctype="multipart/form-data"' in page
    assert 'accept="image/jpeg, image/png, image/webp"' in page
    assert "One picture: JPEG, PNG or WebP, up to 8 MB and 25 million pixels." in page


REFUSED: dict[str, tuple[list[Any], str]] = {
    "a PDF": ([sent(b"%PDF-1.7\n")], NO_PICTURE),
    "a drawing": ([sent(b"<svg xmlns='http://www.w3.org/2000/svg'/>", "leads.svg")], NO_PICTURE),
    "a moving picture": ([sent(file_of(leads(), "GIF"), "leads.gif")], NO_PICTURE),
    "broken": ([sent(file_of(leads())[:300])], NO_PICTURE),
    "cut short": (
        [sent(file_of(Image.effect_noise((90, 90), 90))[:-900])],
        "The picture is broken or cut short. Send it again.",
    ),
    "empty": ([sent(b"")], "The file is empty. Choose another one."),
    "none": ([], NONE),
    "a text": (["leads.jpg"], NONE),
    "two": ([sent(noted()), sent(noted())], "Send one picture, not several."),
    "many layers": (
        [sent(layered(40))],
        "The picture is stored in more than 32 layers. "
        "Save it anew as a plain JPEG, and send that.",
    ),
    "too large": (
        [sent(noted() + b"\0" * LARGEST_FILE)],
        "The file is larger than 8 MB. Send a smaller picture.",
    ),
}


@pytest.mark.parametrize("case", REFUSED)
def test_what_can_not_be_taken_is_refused_and_nothing_kept(
    case: str, mina: Person, drill: OwnDrill, client_of: ClientOf, folder: Path
) -> None:
    files, sentence = REFUSED[case]
    for file in files:
        if isinstance(file, SimpleUploadedFile):
            file.seek(0)
    page = client_of(mina).post(answer_page(mina, drill), {"picture": files})

    assert (page.status_code, texts(page, "p", "errorlist")) == (422, [sentence])
    assert (Attempt.objects.exists(), folder.exists()) == (False, False)
    assert Asked.objects.get().waits()


def test_picture_with_a_page_behind_it_is_only_a_picture(
    mina: Person, drill: OwnDrill, client_of: ClientOf
) -> None:
    content = noted() + b"<html><script>alert(1)</script></html>"
    file = sent(content, "page.html", "text/html")
    client = client_of(mina)
    client.post(answer_page(mina, drill), {"picture": file})
    page = client.get(reverse("sent-picture", args=[Upload.objects.get().name]))

    assert page.headers["Content-Type"] == "image/jpeg"
    assert b"script" not in page.content
    assert b"Wyn Carrow" not in page.content


BUSY = "The site is busy with other pictures and has not taken yours. Send it again in a minute."


@pytest.fixture
def busy() -> Iterator[None]:
    with all_places_taken():
        yield


@pytest.mark.usefixtures("busy")
@pytest.mark.parametrize("headers", [{}, {"HX-Request": "true"}])
def test_busy_site_says_so_and_the_question_stays_open(
    headers: dict[str, str], mina: Person, drill: OwnDrill, client_of: ClientOf
) -> None:
    url = answer_page(mina, drill)
    page = client_of(mina).post(url, {"picture": sent(noted())}, headers=headers)

    assert (page.status_code, page.headers["Retry-After"]) == (503, "60")
    assert texts(page, "p", "errorlist") == [BUSY]
    assert (Attempt.objects.exists(), Asked.objects.get().waits()) == (False, True)


@pytest.mark.usefixtures("busy")
def test_busy_site_leaves_the_page_and_the_chosen_file_in_place(
    mina: Person, drill: OwnDrill, client_of: ClientOf
) -> None:
    headers = {"HX-Request": "true"}
    page = client_of(mina).post(
        answer_page(mina, drill), {"picture": sent(noted())}, headers=headers
    )
    wrong = client_of(mina).post(answer_page(mina, drill), {"picture": sent(b"")}, headers=headers)

    assert "HX-Retarget" not in page.headers
    assert ["hx-preserve" in each.content.decode() for each in (page, wrong)] == [True, False]


@pytest.mark.usefixtures("busy")
def test_author_hears_that_the_site_is_busy(
    ines: Person, drill: OwnDrill, client_of: ClientOf
) -> None:
    page = client_of(ines).post(reverse("try-own", args=[drill.pk]), {"picture": sent(noted())})

    assert (page.status_code, texts(page, "p", "errorlist")) == (503, [BUSY])


def test_text_drill_takes_no_file(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    text = published(ines, harbour, form="text")
    page = client_of(mina).post(answer_page(mina, text), {"text": sent(noted())})

    assert (page.status_code, Upload.objects.exists()) == (422, False)


def test_more_files_than_any_form_asks_for_are_turned_away(
    mina: Person, drill: OwnDrill, client_of: ClientOf
) -> None:
    files = [sent(noted()) for _ in range(5)]

    assert client_of(mina).post(answer_page(mina, drill), {"picture": files}).status_code == 400


def test_no_more_of_a_large_file_is_kept_than_tells_it(
    mina: Person, drill: OwnDrill, client_of: ClientOf
) -> None:
    file = sent(noted() + b"\0" * 3 * LARGEST_FILE)
    page = client_of(mina).post(answer_page(mina, drill), {"picture": file})

    (kept,) = page.wsgi_request.FILES.getlist("picture")
    assert LARGEST_FILE < (kept.size or 0) <= LARGEST_FILE + 2**16


HEADERS = {
    "Content-Type": "image/jpeg",
    "X-Content-Type-Options": "nosniff",
    "Content-Disposition": 'inline; filename="picture.jpg"',
    "Content-Security-Policy": "default-src 'none'; sandbox",
    "Cache-Control": "private, no-store",
    "Cross-Origin-Resource-Policy": "same-origin",
    "X-Frame-Options": "DENY",
}


@pytest.mark.parametrize("name", ["sent-picture", "sent-picture-small"])
def test_picture_can_do_nothing(
    name: str, mina: Person, drill: OwnDrill, client_of: ClientOf
) -> None:
    client = client_of(mina)
    page = client.get(reverse(name, args=[answered(client, mina, drill).name]))

    assert {key: page.headers[key] for key in HEADERS} == HEADERS
    assert Image.open(BytesIO(page.content)).format == "JPEG"


def test_picture_is_for_those_who_may_see_the_answer(
    mina: Person,
    tom: Person,
    ines: Person,
    rafe: Person,
    solo: Person,
    ada: Person,
    harbour: Cohort,
    drill: OwnDrill,
    client_of: ClientOf,
) -> None:
    url = reverse("sent-picture", args=[answered(client_of(mina), mina, drill).name])
    people = (mina, ines, tom, rafe, solo, ada)
    before = [client_of(person).get(url).status_code for person in people]
    mina.memberships.all().delete()

    assert before == [200, 200, 404, 404, 404, 404]
    assert Client().get(url).status_code == 404
    assert [client_of(person).get(url).status_code for person in (mina, ines)] == [200, 404]


def test_picture_whose_file_is_lost_is_not_found(
    mina: Person, drill: OwnDrill, client_of: ClientOf
) -> None:
    client = client_of(mina)
    upload = answered(client, mina, drill)
    path_of(upload.name).unlink()

    assert client.get(reverse("sent-picture", args=[upload.name])).status_code == 404
    assert client.get(upload.attempt.get_absolute_url()).status_code == 200
    assert client.get(reverse("own-data")).status_code == 200


@pytest.mark.database
@pytest.mark.parametrize("name", ["..", "%2e%2e%2fsecret-key", "x" * 300, "\0"])
def test_name_that_is_none_finds_no_file(name: str, mina: Person, client_of: ClientOf) -> None:
    assert client_of(mina).get(f"/pictures/{name}/").status_code == 404


def test_instructor_sees_it_in_the_queue_and_the_review(
    ines: Person, mina: Person, harbour: Cohort, drill: OwnDrill, client_of: ClientOf
) -> None:
    upload = answered(client_of(mina), mina, drill)
    client = client_of(ines)
    queue = client.get(reverse("reviews")).content.decode()
    own = [harbour.pk, mina.pk, upload.attempt.key]
    page = client.get(reverse("cohort-attempt", args=own)).content.decode()
    client.post(reverse("review-attempt", args=own), {"action": "right", "key": "e" * 32})

    assert f'src="{reverse("sent-picture-small", args=[upload.name])}"' in queue
    assert f'src="{reverse("sent-picture", args=[upload.name])}"' in page
    assert "What you look for" in page
    assert Attempt.objects.get().result == (True, 100, False)


def test_queue_asks_no_more_for_more_pictures(
    ines: Person,
    mina: Person,
    tom: Person,
    drill: OwnDrill,
    client_of: ClientOf,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    client = client_of(ines)
    for person in (mina, tom):
        answered(client_of(person), person, drill)
        with django_assert_num_queries(5):  # session, person, cohorts, what waits, replies
            client.get(reverse("reviews"))


def test_sent_back_picture_is_sent_again(
    ines: Person, mina: Person, harbour: Cohort, drill: OwnDrill, client_of: ClientOf
) -> None:
    learner = client_of(mina)
    first = answered(learner, mina, drill).attempt
    url = reverse("review-attempt", args=[harbour.pk, mina.pk, first.key])
    said = {"action": "sent-back", "text": "The sound leads can’t be seen.", "key": "e" * 32}
    client_of(ines).post(url, said)
    page = learner.post(reverse("answer-again", args=[first.key]), follow=True)
    asked = Asked.objects.latest("pk")
    learner.post(reverse("drill-answer", args=[asked.token]), {"picture": sent(noted())})

    assert "every lead connected" in page.content.decode()
    assert Upload.objects.latest("pk").attempt.asked.again == first


def test_author_writes_it_revises_it_and_tries_it_without_a_trace(
    ines: Person, client_of: ClientOf, folder: Path
) -> None:
    client = client_of(ines)
    client.post("/desk/new/picture/", LEADS)
    drill = OwnDrill.objects.get()
    typed = client.get(reverse("revise-own", args=[drill.pk])).content.decode()
    url = reverse("try-own", args=[drill.pk])
    asked = client.get(url).content.decode()
    tried = client.post(url, {"picture": sent(noted())})
    wrong = client.post(url, {"picture": sent(b"%PDF-1.7")})

    assert "both sound leads\nthe picture lead</textarea>" in typed
    assert 'enctype="multipart/form-data"' in asked
    assert "It would wait for you" in tried.content.decode()
    assert "Nothing of it is kept here." in tried.content.decode()
    assert (wrong.status_code, texts(wrong, "p", "errorlist")) == (422, [NO_PICTURE])
    assert (Attempt.objects.exists(), folder.exists()) == (False, False)


def test_form_says_what_is_missing(ines: Person, client_of: ClientOf) -> None:
    page = client_of(ines).post("/desk/new/picture/", LEADS | {"task": " ", "rubric": "\n"})

    assert (page.status_code, set(page.context["form"].errors)) == (422, {"task", "rubric"})
    assert not OwnDrill.objects.exists()
