"""The tables that an instructor takes away."""

import csv
import io
from collections.abc import Callable

from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Cohort, Person
from exercises.drills.register import KINDS
from exercises.models import Attempt
from exercises.practice.attempts import ask, submit
from exercises.reviews.verbs import Said, review
from exercises.sign_offs.verbs import Decision, sign_off, withdraw
from tests.answers import right_answer, wrong_answer
from tests.own import published

ClientOf = Callable[[Person], Client]


def answered(person: Person, *, right: bool = True, drill: str = "choose-the-mode") -> Attempt:
    asked = ask(person, KINDS[drill])
    return submit(asked, right_answer(asked) if right else wrong_answer(asked))


def table(client: Client, cohort: Cohort, slug: str) -> list[dict[str, str]]:
    page = client.get(reverse("results-table", args=[cohort.pk, slug]))
    content = b"".join(page.streaming_content).decode("utf-8-sig")  # type: ignore[attr-defined]
    return list(csv.DictReader(io.StringIO(content, newline="")))


def test_answers_tell_what_was_answered(
    ines: Person, mina: Person, lena: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    attempt = answered(mina, right=False)
    answered(lena)  # in another cohort

    (row,) = table(client_of(ines), harbour, "answers")

    assert row["answered at"] == attempt.answered_at.isoformat(timespec="seconds")
    assert (row["name"], row["sign-in name"]) == ("Mina Tarrant", "mina")
    assert (row["drill"], row["skill"]) == ("Choose the mode", attempt.skill_title)
    assert row["score in per cent"] == str(attempt.score)
    assert row["points at"].split() == attempt.misconceptions


def test_answers_tell_for_whom_one_waits(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    first = answered(mina, drill="free-answer")
    answered(mina, drill="free-answer")
    review(ines, first, Said(what="sent-back", text="Which tape?", key="back"))

    rows = table(client_of(ines), harbour, "answers")

    assert [row["result"] for row in rows] == ["sent back", "waits for the instructor"]


def test_name_that_is_a_formula_is_no_formula_in_the_table(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    mina.name = '=HYPERLINK("http://quay.example")'
    mina.save()

    (row,) = table(client_of(ines), harbour, "board")

    assert row["name"] == "'" + mina.name


def test_board_leaves_blank_what_was_not_practised(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    attempt = answered(mina)

    (row,) = table(client_of(ines), harbour, "board")

    assert row[attempt.skill_title] == "100"
    assert sum(value == "" for value in row.values()) == len(row) - 4


def test_sign_offs_tell_what_was_withdrawn(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    decision = Decision(state="alone", bench="Bench 1", note="", key="k")
    withdraw(ines, sign_off(ines, mina, harbour, decision), "Spoilt a master.")

    (row,) = table(client_of(ines), harbour, "sign-offs")

    assert (row["decided"], row["reason"]) == ("Ready to work alone", "Spoilt a master.")
    assert row["withdrawn by"] == "Ines Marlow"


def test_sign_offs_have_the_name_that_was_signed_and_that_of_now(
    ines: Person, mina: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    sign_off(ines, mina, harbour, Decision(state="alone", bench="Bench 1", note="", key="k"))
    mina.name = "Lena Fosse"
    mina.save()

    (row,) = table(client_of(ines), harbour, "sign-offs")

    assert (row["name as signed"], row["name"]) == ("Mina Tarrant", "Lena Fosse")


def test_answers_queries_do_not_grow(
    ines: Person,
    mina: Person,
    tom: Person,
    harbour: Cohort,
    client_of: ClientOf,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    client = client_of(ines)
    own = published(ines, harbour)
    for person in (mina, tom, tom):
        answered(person)
        submit(ask(person, own.kind), {"mode": "insert-picture"})
        with django_assert_num_queries(4):  # session, person, cohort, answers
            table(client, harbour, "answers")


def test_file_is_named_after_cohort_and_day(
    ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    page = client_of(ines).get(reverse("results-table", args=[harbour.pk, "answers"]))

    name = page["Content-Disposition"]
    assert name.startswith('attachment; filename="harbour-group-20')
    assert name.endswith('-answers.csv"')
