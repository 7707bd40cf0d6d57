"""The worktop as a page: what a form does, what comes back, what is refused."""

from collections.abc import Callable

import pytest
from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Person
from exercises.bench.verbs import begin, do
from exercises.models import PracticalRun
from exercises.worktop.guide import guided
from exercises.worktop.practical import MASTER, Way
from exercises.worktop.shelf import practicals
from tests.exercises.bench.hands import by_form, post
from tests.weight import HEAVIEST, weight

ClientOf = Callable[[Person], Client]
HTMX = {"HX-Request": "true"}


@pytest.fixture
def run(mina: Person) -> PracticalRun:
    return begin(mina, practicals()["three-shots"], Way.ALONE)


@pytest.fixture
def client(mina: Person, client_of: ClientOf) -> Client:
    return client_of(mina)


def test_practical_is_begun_from_its_page(mina: Person, client: Client) -> None:
    answer = client.post(reverse("practical", args=["three-shots"]), {"way": "watch"})

    run = PracticalRun.objects.get(person=mina)
    assert (answer.status_code, answer["Location"]) == (302, run.get_absolute_url())
    assert run.way == Way.WATCH


def test_plan_done_by_the_pages_own_forms_makes_the_programme(
    run: PracticalRun, client: Client
) -> None:
    for step, _ in guided(run.worktop.set_up):
        answer = post(client, run, step.name, **by_form(run, step.name, step.arguments))
        assert answer.status_code == 302, (step, answer.content.decode()[:500])

    run.refresh_from_db()
    session = run.worktop.session
    assert session.brief is not None
    assert run.handed_in
    assert session.judged(session.brief).fulfilled


def test_only_the_panels_that_changed_are_sent(run: PracticalRun, client: Client) -> None:
    sent = {"action": "tracking", "now": 0, "to": 4}

    answer = client.post(reverse("bench-do", args=[run.token]), sent, headers=HTMX)

    panels = {"told", "player", "recorder", "edit", "map", "guide", "monitors", "played"}
    there = {name for name in panels if f'id="bench-{name}"' in answer.content.decode()}
    assert there == {"told", "player", "played"}


@pytest.mark.parametrize(
    ("action", "fields", "sentence"),
    [
        ("wind", {"machine": "player", "to": "00:00:99:00"}, "does not exist"),
        ("wind", {"machine": "player", "to": "00:00:10:25"}, "Frames run from 00 to 24."),
        ("wind", {"machine": "player", "to": "٣:٠٠"}, "as the counter shows it"),
        ("wind", {"machine": "player", "to": "1" * 60}, "as the counter shows it"),
        ("wind", {"machine": "player", "to": "23:00:00:00"}, "no cassette in the player"),
        ("wind", {"machine": "lathe", "to": "00:00:01:00"}, "two machines"),
        ("play", {"machine": "player", "seconds": "1e9"}, "whole number"),
        ("play", {"machine": "player", "seconds": "99999999999999999999"}, "1 to 60 seconds"),
        ("tracking", {"to": "٣٠٠٠"}, "does not go so far"),
        ("tracking", {"to": "21"}, "20 places to either side"),
        ("mode", {"made": "overlay"}, "has no such mode"),
        ("sound-level", {"mode": "by hand", "gain": "NaN"}, "level in dB"),
        ("record", {}, "no source tape in the player"),
        ("look-back", {}, "no edit yet"),
        ("stop", {"seconds": "3"}, "nothing to stop"),
        ("load", {"machine": "player", "tape": "Tape 99"}, "no such cassette"),
        ("load", {"machine": "player", "tape": "\0"}, "Null characters"),
        ("erase everything", {}, "no such control"),
    ],
)
def test_what_cannot_be_done_is_told_in_a_sentence_and_not_kept(
    run: PracticalRun, client: Client, action: str, fields: dict[str, str], sentence: str
) -> None:
    answer = post(client, run, action, **fields)

    assert answer.status_code == 422
    assert sentence in answer.content.decode()
    assert run.actions.count() == 0


def test_a_page_that_is_behind_is_told_and_shown_how_it_stands(
    run: PracticalRun, client: Client
) -> None:
    do(run, 0, "load", {"machine": "player", "tape": "Tape 3"})

    sent = {"action": "load", "seen": 0, "machine": "recorder", "tape": MASTER}
    answer = client.post(reverse("bench-do", args=[run.token]), sent)

    assert answer.status_code == 409
    assert "another page of yours" in answer.content.decode()
    assert run.actions.count() == 1


def test_nothing_is_done_after_the_hand_in(run: PracticalRun, client: Client) -> None:
    do(run, 0, "hand-in", {})

    answer = post(client, run, "load", machine="player", tape="Tape 3")

    assert answer.status_code == 422
    assert "handed in" in answer.content.decode()


def test_watching_does_the_step_that_is_told(mina: Person, client: Client) -> None:
    run = begin(mina, practicals()["three-shots"], Way.WATCH)

    client.post(reverse("bench-step", args=[run.token]), {"seen": 0})

    run.refresh_from_db()
    assert run.worktop.recorder.tape == MASTER


def test_many_actions_open_as_few_do(
    run: PracticalRun, client: Client, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    for number in range(3):
        # session, person, run, what was done last, what was done so far
        with django_assert_num_queries(5):
            client.get(run.get_absolute_url())
        do(run, number, "tracking", {"to": number})


def test_an_action_asks_the_database_seldom(
    run: PracticalRun, client: Client, django_assert_num_queries: DjangoAssertNumQueries
) -> None:
    for number in range(2):
        sent = {"action": "tracking", "now": number, "to": number}
        # session, person, run, what was done last; a savepoint; the run held; row, run; its end
        with django_assert_num_queries(9):
            client.post(reverse("bench-do", args=[run.token]), sent, headers=HTMX)


def test_page_of_a_long_run_is_light(run: PracticalRun, client: Client) -> None:
    for number in range(60):
        do(run, number, "tracking", {"to": number % 20})

    assert weight(client.get(run.get_absolute_url()).content) < HEAVIEST


def test_hints_go_deeper_one_by_one_and_are_kept(mina: Person, client: Client) -> None:
    run = begin(mina, practicals()["three-shots"], Way.FINISH)
    for depth in ("what", "why", "how"):
        run.refresh_from_db()
        sent = {"seen": run.done, "depth": depth}
        assert client.post(reverse("bench-hint", args=[run.token]), sent).status_code == 302

    told = run.actions.filter(name="hint").order_by("number").values_list("told", flat=True)
    assert list(told) == [
        "Hint: Take Tape 3 out of the player.",
        "Hint: The next shot is on Tape 5.",
        "Hint: Player: Take out.",
    ]


def test_nobody_is_helped_who_works_alone(run: PracticalRun, client: Client) -> None:
    sent = {"seen": 0, "depth": "what"}

    answer = client.post(reverse("bench-hint", args=[run.token]), sent)

    assert answer.status_code == 422
    assert run.actions.count() == 0


def test_time_may_be_typed_short(run: PracticalRun, client: Client) -> None:
    do(run, 0, "load", {"machine": "player", "tape": "Tape 3"})

    post(client, run, "wind", machine="player", to="19:9")

    run.refresh_from_db()
    assert run.worktop.player.at == 19 * 25 + 9


def test_an_open_run_that_is_unaided_shows_no_tracks(mina: Person, client: Client) -> None:
    run = begin(mina, practicals()["believe-the-tape"], Way.ALONE)
    pages = [run.get_absolute_url(), reverse("bench-replay", args=[run.token, 0])]

    assert [b"tape-drawing" in client.get(page).content for page in pages] == [False, False]

    do(run, 0, "hand-in", {})
    assert b"tape-drawing" in client.get(pages[1]).content


def test_a_page_that_is_behind_gets_every_panel_and_the_sentence(
    run: PracticalRun, client: Client
) -> None:
    do(run, 0, "load", {"machine": "player", "tape": "Tape 3"})

    sent = {"action": "load", "now": 0, "machine": "recorder", "tape": MASTER}
    page = client.post(reverse("bench-do", args=[run.token]), sent, headers=HTMX).content.decode()

    assert "another page of yours" in page
    assert page.count('hx-swap-oob="true"') == 9


def test_a_run_that_has_ended_is_no_bench_any_more(run: PracticalRun, client: Client) -> None:
    page = reverse("bench-run", args=[run.token])
    do(run, 0, "hand-in", {})

    assert client.get(page)["Location"] == reverse("bench-debrief", args=[run.token])


def test_handing_in_by_a_shown_step_leads_to_the_debrief(mina: Person, client: Client) -> None:
    run = begin(mina, practicals()["three-shots"], Way.WATCH)
    for step, _ in guided(run.worktop.set_up):
        if step.name != "hand-in":
            do(run, run.done, step.name, step.arguments)

    sent = {"now": run.done}
    answer = client.post(reverse("bench-step", args=[run.token]), sent, headers=HTMX)

    assert answer["HX-Redirect"] == reverse("bench-debrief", args=[run.token])
