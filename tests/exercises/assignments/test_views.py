"""The pages of assignments, for those who set them and those who do them."""

from collections.abc import Callable
from datetime import datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from django.test import Client, override_settings
from django.urls import reverse
from django.utils import timezone

from course.cohorts.archiving import archive
from course.cohorts.models import Cohort, Person
from exercises.assignments.verbs import Terms, practical_of, set_assignment, withdraw_assignment
from exercises.models import Assignment, Attempt, Extension, Sitting
from exercises.practice.attempts import submit
from exercises.reviews.verbs import Said, review
from tests.own import published
from tests.pages import heading, notices, texts

ClientOf = Callable[[Person], Client]
GOOD = {
    "what": "drills",
    "title": "Care of tape",
    "kinds": ["care-and-safety"],
    "questions": "5",
    "right_needed": "4",
    "tries": "2",
    "opens_at": "2026-05-04T09:00",
    "due_at": "2026-05-11T18:00",
}


@pytest.fixture
def new(harbour: Cohort) -> str:
    return reverse("new-assignment", args=[harbour.pk])


def made(cohort: Cohort, **columns: Any) -> Assignment:
    opens = timezone.now() - timedelta(days=1)
    given = {"what": "drills", "title": "Care", "questions": 5, "right_needed": 4}
    times = {"opens_at": opens, "due_at": opens + timedelta(days=7)}
    return set_assignment(
        cohort.instructors.get(), cohort, Terms(columns={**given, **times, **columns}, people=[])
    )


def test_instructor_sets_an_assignment_in_the_workshops_time(
    ines: Person, mina: Person, new: str, client_of: ClientOf
) -> None:
    page = client_of(ines).post(new, GOOD | {"people": [str(mina.pk)]}, follow=True)

    found = Assignment.objects.get()
    zone = ZoneInfo("Europe/London")
    assert (found.opens_at, found.due_at) == (
        datetime(2026, 5, 4, 9, tzinfo=zone),
        datetime(2026, 5, 11, 18, tzinfo=zone),
    )
    assert (found.questions, found.right_needed, found.tries) == (5, 4, 2)
    assert list(found.people.all()) == [mina]
    assert notices(page) == ["“Care of tape” is set."]


@pytest.mark.parametrize(
    ("sent", "sentence"),
    [
        ({"what": "party"}, "Choose one."),
        ({"title": ""}, "This is still empty."),
        ({"questions": ""}, "Say how many questions."),
        ({"questions": "0"}, "At least 1."),
        ({"questions": "9" * 30}, "At most 40."),
        ({"questions": "five"}, "Write a whole number."),
        ({"right_needed": "6"}, "A sitting has only 5."),
        ({"kinds": ["juggling"]}, "Choose from the list."),
        ({"skills": ["mending"]}, "None of these drills practises any of these skills."),
        ({"due_at": "2026-05-04T09:00"}, "It is due before it opens. Choose a later time."),
        ({"due_at": "soon"}, "Write a date and a time, such as 2026-05-04T18:00."),
        (
            {"opens_at": "2026-03-29T01:30"},
            "The clocks change there: this time comes twice or not at all. Choose another.",
        ),
        ({"people": ["999999"]}, "Choose from the list."),
        ({"what": "lesson"}, "Choose a lesson."),
        ({"what": "practical"}, "Write what is to be done."),
    ],
)
def test_bad_assignment_is_refused_with_a_sentence(
    sent: dict[str, Any], sentence: str, ines: Person, new: str, client_of: ClientOf
) -> None:
    page = client_of(ines).post(new, GOOD | sent)

    assert page.status_code == 422
    told = [*texts(page, "p", "errorlist"), *texts(page, "ul", "errorlist")]
    assert sentence in told
    assert not Assignment.objects.exists()


def test_own_drills_of_the_cohort_can_be_asked_each_once(
    ines: Person, rafe: Person, harbour: Cohort, slipway: Cohort, new: str, client_of: ClientOf
) -> None:
    own, others = published(ines, harbour), published(rafe, slipway)
    client = client_of(ines)

    theirs = client.post(new, GOOD | {"kinds": [others.slug]})
    too_many = client.post(new, GOOD | {"kinds": [own.slug]})
    client.post(new, GOOD | {"kinds": [own.slug], "questions": "1", "right_needed": "1"})

    assert texts(theirs, "p", "errorlist") == ["Choose from the list."]
    assert texts(too_many, "ul", "errorlist") == [
        "Your own drills have one question each: only one here."
    ]
    assert Assignment.objects.get().kinds == [own.slug]


def test_learner_of_another_cohort_can_be_meant_by_nobody(
    ines: Person, lena: Person, new: str, client_of: ClientOf
) -> None:
    page = client_of(ines).post(new, GOOD | {"people": [str(lena.pk)]})

    assert page.status_code == 422


def test_change_shows_what_stands_and_keeps_it(
    ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    found, client = made(harbour), client_of(ines)
    url = reverse("change-assignment", args=[harbour.pk, found.pk])

    assert 'value="Care"' in client.get(url).content.decode()
    client.post(url, GOOD | {"title": "More care"})

    assert Assignment.objects.get().title == "More care"


def test_learner_finds_it_on_today_and_does_it(
    mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    found, client = made(harbour), client_of(mina)
    assert found.get_absolute_url() in client.get(reverse("today")).content.decode()

    page = client.post(found.get_absolute_url(), follow=True)

    assert texts(page, "p", "kicker") == ["Question 1 of 5"]
    assert Sitting.objects.get().assignment == found


def test_begin_sent_twice_begins_one_set(
    mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    found, client = made(harbour, tries=1), client_of(mina)
    for _ in range(2):
        client.post(found.get_absolute_url())

    assert Sitting.objects.count() == 1


def test_practical_is_reported_and_waits_in_the_queue(
    mina: Person, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    found = made(harbour, what="practical", task="Lay ten seconds of black.")
    client = client_of(mina)
    page = client.get(found.get_absolute_url())
    assert "Lay ten seconds of black." in page.content.decode()
    token = page.context["asked"].token

    refused = client.post(reverse("drill-answer", args=[token]), {"text": "Done."})
    assert refused.status_code == 422
    answered = client.post(reverse("drill-answer", args=[token]), {"text": "I laid it. " * 9})
    assert answered.status_code == 302

    attempt = Attempt.objects.get()
    assert heading(client.get(attempt.get_absolute_url())) == "Bench practical"
    assert texts(client.get(found.get_absolute_url()), "p", "verdict") == [
        "Waits for the instructor"
    ]
    queue = client_of(ines).get(reverse("reviews")).content.decode()
    assert attempt.key in queue


def test_practical_sent_back_says_so_everywhere_and_is_written_again(
    mina: Person, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    found = made(harbour, what="practical", task="Lay ten seconds of black.")
    report = submit(practical_of(mina, found), {"text": "I laid it. " * 9})
    review(ines, report, Said(what="sent-back", text="Too short.", key="k"))
    learner, teacher = client_of(mina), client_of(ines)

    board = reverse("assignment-board", args=[harbour.pk, found.pk])
    assert "sent back, waits for the learner" in texts(teacher.get(board), "a")
    (asked,) = texts(learner.get(reverse("today")), "main")
    assert "Care: sent back, waits for you, due" in asked
    page = learner.get(found.get_absolute_url())
    assert texts(page, "p", "verdict") == ["Sent back, waits for you"]
    assert page.context["asked"].again == report
    own = learner.get(report.get_absolute_url())
    assert "Write a new report" in texts(own, "button")

    page = learner.post(reverse("answer-again", args=[report.key]), follow=True)

    assert page.redirect_chain[-1] == (found.get_absolute_url(), 302)


def test_practical_withdrawn_is_not_written_again(
    mina: Person, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    found = made(harbour, what="practical", task="Lay ten seconds of black.")
    report = submit(practical_of(mina, found), {"text": "I laid it. " * 9})
    review(ines, report, Said(what="sent-back", text="Too short.", key="k"))
    withdraw_assignment(found)

    page = client_of(mina).post(reverse("answer-again", args=[report.key]), follow=True)

    assert notices(page) == ["This is asked of you no more, so there is nothing to answer again."]


def test_instructor_sees_who_is_how_far_and_the_work_behind_it(
    ines: Person, mina: Person, tom: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    found = made(harbour)
    client_of(mina).post(found.get_absolute_url())
    sitting = Sitting.objects.get()
    client = client_of(ines)

    page = client.get(reverse("assignment-board", args=[harbour.pk, found.pk]))

    assert heading(page) == "Care"
    link = reverse("cohort-sitting", args=[harbour.pk, mina.pk, sitting.token])
    assert link in page.content.decode()
    assert heading(client.get(link)) == "A sitting of Mina Tarrant"


def test_more_time_is_given_to_one(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    found = made(harbour)
    url = reverse("extend-assignment", args=[harbour.pk, found.pk, mina.pk])
    early = client_of(ines).post(url, {"due_at": "2020-01-01T09:00"})
    late = timezone.localtime(found.due_at + timedelta(days=3)).strftime("%Y-%m-%dT%H:%M")

    client_of(ines).post(url, {"due_at": late, "reason": "At sea."})

    assert early.status_code == 422
    assert Extension.objects.get().person == mina


@override_settings(TIME_ZONE="Asia/Kolkata")
def test_page_names_the_time_zone(ines: Person, new: str, client_of: ClientOf) -> None:
    page = client_of(ines).get(new)

    assert "Times are those of Asia/Kolkata." in texts(page, "p", "hint")


@pytest.mark.parametrize("page", ["new-assignment", "change-assignment", "sign-off-person"])
def test_nothing_new_is_asked_or_signed_in_an_archived_cohort(
    page: str, ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    more = {"change-assignment": [made(harbour).pk], "sign-off-person": [mina.pk]}.get(page, [])
    url = reverse(page, args=[harbour.pk, *more])
    archive(ines, harbour, None)
    client = client_of(ines)

    for answer in (client.get(url), client.post(url, GOOD)):
        assert answer.status_code == 403
        assert "Harbour group is archived. Open it again first." in answer.content.decode()
    lists = [reverse(each, args=[harbour.pk]) for each in ("assignments", "sign-offs", "cohort")]
    assert [each for each in lists if url in client.get(each).content.decode()] == []
