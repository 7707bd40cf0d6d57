"""The pages of the drill desk, and an own drill among a learner's drills."""

from collections.abc import Callable

import pytest
from django.db import connection
from django.test import Client
from django.test.utils import CaptureQueriesContext
from django.urls import reverse

from course.cohorts.models import Cohort, Person
from exercises.drills.own import FORMS
from exercises.models import Asked, Attempt, OwnDrill
from exercises.practice.attempts import ask, submit
from exercises.reviews.verbs import Said, review
from tests.own import CUTAWAY, NOTE, UNSEEN, published
from tests.pages import texts

ClientOf = Callable[[Person], Client]


@pytest.mark.parametrize("form", FORMS)
def test_every_form_can_be_written(form: str, ines: Person, client_of: ClientOf) -> None:
    client = client_of(ines)
    address = reverse("new-own", args=[form])

    assert f'href="{address}"' in client.get(reverse("desk")).content.decode()
    assert 'name="title"' in client.get(address).content.decode()


def test_drill_is_written_and_shown(ines: Person, client_of: ClientOf) -> None:
    page = client_of(ines).post("/desk/new/mode/", CUTAWAY, follow=True)

    assert page.redirect_chain == [(OwnDrill.objects.get().get_absolute_url(), 302)]
    assert "A gull over the winch" in page.content.decode()


def test_what_is_wrong_is_said_at_its_field_and_nothing_lost(
    ines: Person, client_of: ClientOf
) -> None:
    typed = CUTAWAY | {"at": "00:01:10:25", "row_2_end": "00:00:30:00"}
    page = client_of(ines).post("/desk/new/mode/", typed)

    assert page.status_code == 422
    assert page.context["form"].errors == {
        "at": ["00:01:10:25 does not exist: the last label is 23:59:59:24."],
        "row_2_end": ["It ends before it starts."],
    }
    assert 'value="00:01:10:25"' in page.content.decode()
    assert not OwnDrill.objects.exists()


def test_change_past_the_tape_and_takes_out_of_order_are_refused(
    ines: Person, client_of: ClientOf
) -> None:
    takes = {"take_2_start": "00:05:20:00", "take_2_end": "00:05:50:00", "at": "00:09:58:00"}
    page = client_of(ines).post("/desk/new/mode/", CUTAWAY | takes)

    assert page.context["form"].errors == {
        "take_2_start": ["Takes are in order and don’t overlap."],
        "at": ["The change runs past the end of the edit master."],
    }


def test_half_a_row_and_dropped_labels_are_refused(ines: Person, client_of: ClientOf) -> None:
    half = {"row_3_start": "00:02:00:00", "in_": "00:05:10;00"}
    page = client_of(ines).post("/desk/new/mode/", CUTAWAY | half)

    assert page.context["form"].errors == {
        "row_3_end": ["Say where it ends."],
        "in_": ["Write : before the frames: these drills drop no labels."],
    }


def test_tape_is_drawn_without_keeping_anything(ines: Person, client_of: ClientOf) -> None:
    client = client_of(ines)
    unfinished = CUTAWAY | {"title": "", "wish": ""}
    fragment = client.post("/desk/draw/mode/", unfinished, headers={"HX-Request": "true"})
    page = client.post("/desk/new/mode/", unfinished | {"draw": "1"})

    assert "<strong>Insert picture</strong>" in fragment.content.decode()
    assert "<html" not in fragment.content.decode()
    assert (page.status_code, page.context["drawn"].right) == (200, ["Insert picture"])
    assert not OwnDrill.objects.exists()


def test_tape_without_an_edit_is_not_drawn_yet(ines: Person, client_of: ClientOf) -> None:
    """Whoever types slowly is asked to draw before the first edit, and before the title too."""
    places = {f"edit_{n}_{name}": "" for n in (1, 2) for name in ("at", "end")}
    typed = {name: value for name, value in UNSEEN.items() if not name.startswith("edit_")}
    for missing in ({}, {"title": ""}, places | {"title": ""}):
        fragment = client_of(ines).post("/desk/draw/bad-edit/", typed | missing)

        assert fragment.status_code == 200
        assert "as soon as one edit has its place" in fragment.content.decode()


@pytest.mark.database
def test_rubbish_is_refused_without_falling_over(ines: Person, client_of: ClientOf) -> None:
    client = client_of(ines)
    for value in ("", "\0", "x" * 5000, "99:99:99:99", "²", "-1"):
        sent = dict.fromkeys(CUTAWAY, value)
        assert client.post("/desk/new/mode/", sent).status_code == 422
        assert client.post("/desk/draw/mode/", sent).status_code == 200
        edits = dict.fromkeys(UNSEEN, value)
        assert client.post("/desk/new/bad-edit/", edits).status_code == 422
        assert client.post("/desk/draw/bad-edit/", edits).status_code == 200
        assert client.post("/desk/new/text/", dict.fromkeys(NOTE, value)).status_code == 422


def test_what_is_wrong_with_an_edit_is_said_at_its_field(ines: Person, client_of: ClientOf) -> None:
    typed = UNSEEN | {
        "edit_1_end": "00:00:59:00",
        "edit_2_end": "00:10:00:01",
        "edit_2_meant": "picture",
        "edit_2_mode": "insert-sound",
        "edit_2_beyond": "-99",
        "edit_2_sound": "",
        "edit_3_at": "00:02:00:00",
    }
    client = client_of(ines)
    page = client.post("/desk/new/bad-edit/", typed)
    short = client.post("/desk/new/bad-edit/", UNSEEN | {"edit_2_beyond": "-8"})
    none = client.post(
        "/desk/new/bad-edit/", {k: v for k, v in UNSEEN.items() if not k.startswith("edit")}
    )

    assert page.context["form"].errors == {
        "edit_1_end": ["It ends before it starts."],
        "edit_2_beyond": ["At least -60."],
        "edit_2_end": ["That lies past the end of the tape."],
        "edit_3_end": ["Say where it ends."],
    }
    assert short.context["form"].errors == {
        "edit_2_beyond": ["Then the take ends before the edit begins."]
    }
    assert none.context["form"].errors == {"edit_1_at": ["Write one edit at least."]}
    assert not OwnDrill.objects.exists()


def test_words_without_a_place_and_an_edit_left_out_are_refused_and_nothing_lost(
    ines: Person, client_of: ClientOf
) -> None:
    client = client_of(ines)
    words = {"edit_3_purpose": "The fog comes in.", "row_2_name": "an old exercise"}
    placeless = client.post("/desk/new/bad-edit/", UNSEEN | words)
    nameless = client.post("/desk/new/mode/", CUTAWAY | {"row_3_name": "the tug"})
    moved = {name.replace("edit_2", "edit_4"): typed for name, typed in UNSEEN.items()}
    skipped = client.post("/desk/new/bad-edit/", moved)

    place = ["Say where it starts, or empty this row."]
    assert placeless.context["form"].errors == {"edit_3_at": place, "row_2_start": place}
    assert 'value="The fog comes in."' in placeless.content.decode()
    assert nameless.context["form"].errors == {"row_3_start": place}
    assert skipped.context["form"].errors == {
        "edit_2_at": ["Write this edit before those after it."]
    }
    assert not OwnDrill.objects.exists()


def test_bad_edit_is_written_drawn_tried_and_answered(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    client = client_of(ines)
    fragment = client.post("/desk/draw/bad-edit/", UNSEEN, headers={"HX-Request": "true"})
    drill = published(ines, harbour, form="bad-edit")
    right = {"fault": "no-pulses", "edit": "2", "mend": "assemble"}
    tried = client.post(reverse("try-own", args=[drill.pk]), right)
    asked = ask(mina, drill.kind)
    page = client_of(mina).post(reverse("drill-answer", args=[asked.token]), right, follow=True)

    assert "Edit 2 is an insert: it lays no pulses" in fragment.content.decode()
    assert tried.context["verdict"].right is True
    assert Attempt.objects.get().right is True
    assert "The barge that nobody saw" in page.content.decode()


def test_trying_records_nothing(ines: Person, harbour: Cohort, client_of: ClientOf) -> None:
    drill = published(ines, harbour)
    client = client_of(ines)
    address = reverse("try-own", args=[drill.pk])

    assert client.get(address).status_code == 200
    assert client.post(address, {}).status_code == 422
    assert client.post(address, {"mode": "assemble"}).context["verdict"].right is False
    assert client.post(address, {"mode": "insert-picture"}).context["verdict"].right is True
    assert (Asked.objects.count(), Attempt.objects.count()) == (0, 0)


def test_revising_starts_from_what_was_written(
    ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    for form, typed in (("mode", CUTAWAY), ("bad-edit", UNSEEN), ("text", NOTE)):
        drill = published(ines, harbour, form=form)
        page = client_of(ines).get(reverse("revise-own", args=[drill.pk]))
        initial = {name: str(page.context["form"][name].value()) for name in typed}
        client_of(ines).post(reverse("revise-own", args=[drill.pk]), initial)

        assert drill.revisions.count() == 1  # nothing changed, so nothing was kept
        assert bool(page.context["drawn"]) == (form in {"mode", "bad-edit"})


def test_two_right_answers_can_be_kept_not_published(
    ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    client = client_of(ines)
    client.post("/desk/new/mode/", CUTAWAY | {"tracks": "both", "freed": "after"})
    drill = OwnDrill.objects.get()
    page = client.post(reverse("publish-own", args=[drill.pk]), {"cohorts": [harbour.pk]})

    assert page.status_code == 422
    assert "It has not exactly one right answer. Revise it first." in page.content.decode()


def test_cohort_of_others_is_refused(ines: Person, slipway: Cohort, client_of: ClientOf) -> None:
    client = client_of(ines)
    client.post("/desk/new/text/", NOTE)
    drill = OwnDrill.objects.get()
    for wrong in (slipway.pk, "x", "9" * 30):
        page = client.post(reverse("publish-own", args=[drill.pk]), {"cohorts": [wrong]})
        assert page.status_code == 422
    drill.refresh_from_db()
    assert drill.published is None


def test_learner_answers_it_and_sees_it_as_it_was(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    drill = published(ines, harbour)
    learner = client_of(mina)
    assert "From your instructor" in learner.get("/drills/").content.decode()
    learner.get(reverse("drill", args=[drill.slug]))
    asked = Asked.objects.get()
    page = learner.post(reverse("drill-answer", args=[asked.token]), {"mode": "assemble"})
    client_of(ines).post(reverse("retire-own", args=[drill.pk]))
    attempt = Attempt.objects.get()

    assert page["Location"] == attempt.get_absolute_url()
    assert "A gull over the winch" in learner.get(attempt.get_absolute_url()).content.decode()
    assert learner.get("/record/").status_code == 200
    assert "From your instructor" not in learner.get("/drills/").content.decode()
    seen = reverse("cohort-attempt", args=[harbour.pk, mina.pk, attempt.key])
    assert "A gull over the winch" in client_of(ines).get(seen).content.decode()


def test_retired_question_says_so(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    drill = published(ines, harbour)
    learner = client_of(mina)
    learner.get(reverse("drill", args=[drill.slug]))
    client_of(ines).post(reverse("retire-own", args=[drill.pk]))
    address = reverse("drill-answer", args=[Asked.objects.get().token])
    page = learner.post(address, {"mode": "assemble"})

    assert page.status_code == 409
    assert "is asked no more" in page.content.decode()
    assert not Attempt.objects.exists()


def test_written_answer_stands_in_the_queue(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    drill = published(ines, harbour, form="text")
    learner = client_of(mina)
    learner.get(reverse("drill", args=[drill.slug]))
    address = reverse("drill-answer", args=[Asked.objects.get().token])
    page = learner.post(address, {"text": "The film ends at 00:01:30:00."}, follow=True)

    assert page.status_code == 200
    assert "A note for tomorrow" in client_of(ines).get(reverse("reviews")).content.decode()


def test_record_asks_no_more_for_more_own_answers(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    """An own drill's title comes with the attempt."""
    drill = published(ines, harbour)
    learner = client_of(mina)
    counts = []
    for _ in range(2):
        submit(ask(mina, drill.kind), {"mode": "assemble"})
        with CaptureQueriesContext(connection) as queries:
            learner.get("/record/")
        counts.append(len(queries))

    assert counts[0] == counts[1]


def test_answer_sent_back_waits_for_the_learner_among_the_drills(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    drill = published(ines, harbour, form="text")
    attempt = submit(ask(mina, drill.kind), {"text": "The film ends at 00:01:30:00."})
    review(ines, attempt, Said(what="sent-back", text="On which recorder?", key="k"))

    page = client_of(mina).get(reverse("drills"))

    (told,) = [each for each in texts(page, "p", "quiet") if "sent back" in each.lower()]
    assert told == "Sent back to you."
    assert f"{attempt.get_absolute_url()}#said" in page.content.decode()
