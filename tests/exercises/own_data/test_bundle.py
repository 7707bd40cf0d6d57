"""Everything kept about somebody, as one file: complete, theirs alone, and of any size."""

import csv
import gc
import io
import json
import tracemalloc
import zipfile
from collections.abc import Callable
from typing import Any

import pytest
from django.apps import apps
from django.db.models import Field, Model
from django.test import Client
from django.urls import reverse

from course.cohorts.models import Cohort, Person
from exercises.drills.register import KINDS
from exercises.models import Asked, Attempt
from exercises.own_data import parts
from exercises.own_data.parts import EXPLAINED, PARTS
from exercises.own_data.zipped import files_of, zipped
from exercises.practice.attempts import ask, submit
from exercises.practice.uploads import path_of
from tests.answers import right_answer
from tests.own import picture_sent, published

pytestmark = pytest.mark.django_db

ClientOf = Callable[[Person], Client]
DRILL = KINDS["choose-the-mode"]


def bundle(client: Client) -> zipfile.ZipFile:
    response = client.get(reverse("own-data"))
    return zipfile.ZipFile(io.BytesIO(b"".join(response.streaming_content)))  # type: ignore[attr-defined]


def part(found: zipfile.ZipFile, name: str) -> list[dict[str, Any]]:
    rows: list[dict[str, Any]] = json.loads(found.read(f"{name}.json"))
    return rows


def naming(model: type[Model], targets: set[type[Model]]) -> "list[Field[Any, Any]]":
    own = [*model._meta.concrete_fields, *model._meta.local_many_to_many]
    return [field for field in own if field.related_model in targets]


def test_every_column_that_names_a_person_is_bundled_or_explained() -> None:
    bundled = {(each.model, each.of.partition("__")[0]) for each in PARTS}
    missing = [
        f"{model._meta.label}.{field.name}"
        for model in apps.get_models()
        for field in naming(model, {Person})
        if (model, field.name) not in bundled
    ]

    assert sorted(missing) == sorted(EXPLAINED)


def test_every_table_about_what_is_bundled_is_bundled() -> None:
    """What hangs from an answer, a sign-off and the like is about the same person."""
    theirs = {each.model for each in PARTS} - {Cohort, Person}
    beside = {
        model._meta.label
        for model in apps.get_models()
        if naming(model, theirs) and model not in theirs
    }

    assert beside == {"cohorts.Cohort"}  # it names a bench; taught ones are in a part


def test_bundle_has_answers_with_their_questions(mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, DRILL)
    attempt = submit(asked, right_answer(asked))
    asked.refresh_from_db()
    (row,) = part(bundle(client_of(mina)), "answers")

    assert (row["key"], row["answer"], row["question"], row["right"]) == (
        attempt.key,
        attempt.answer,
        asked.question,
        True,
    )


def test_bundle_gives_no_answer_away(mina: Person, client_of: ClientOf) -> None:
    asked = ask(mina, DRILL)
    found = bundle(client_of(mina))
    (row,) = part(found, "questions")

    assert row["shown"] == asked.question["shown"]
    assert {"question", "seed", "key"} & set(row) == set()
    key = json.dumps(asked.question["key"], ensure_ascii=False)
    assert not any(key in found.read(name).decode() for name in found.namelist())


def test_bundle_is_of_the_person_alone(
    mina: Person, tom: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    for person in (mina, tom):
        asked = ask(person, DRILL)
        submit(asked, right_answer(asked))
    found = bundle(client_of(mina))

    assert [row["name"] for row in part(found, "account")] == ["Mina Tarrant"]
    assert [row["cohort"] for row in part(found, "places-in-cohorts")] == ["Harbour group"]
    assert not any("Tom Brandreth" in found.read(name).decode() for name in found.namelist())
    assert "password" not in part(found, "account")[0]


def test_bundle_has_the_pictures_that_were_sent(
    mina: Person, tom: Person, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    drill = published(ines, harbour, form="picture")
    own, _ = picture_sent(mina, drill), picture_sent(tom, drill)
    found = bundle(client_of(mina))
    (row,) = part(found, "pictures-sent")

    assert (row["name"], row["attempt"]) == (own.name, own.attempt.key)
    pictures = [name for name in found.namelist() if name.startswith("pictures/")]
    assert pictures == [f"pictures/{own.name}.jpg"]
    assert found.read(pictures[0]) == path_of(own.name).read_bytes()


def test_each_part_is_there_in_both_forms(mina: Person, client_of: ClientOf) -> None:
    found = bundle(client_of(mina))

    wanted = {f"{each.name}.{form}" for each in PARTS for form in ("csv", "json")}
    assert (set(found.namelist()), found.testzip()) == (wanted | {"about.txt"}, None)


def test_csv_says_what_json_says_and_runs_nothing(mina: Person, client_of: ClientOf) -> None:
    mina.notices.create(text="=1+1")
    found = bundle(client_of(mina))
    lines = io.StringIO(found.read("notices.csv").decode("utf-8-sig"), newline="")
    (row,) = csv.DictReader(lines)

    assert (row["text"], part(found, "notices")[0]["text"]) == ("'=1+1", "=1+1")


def answered(person: Person, number: int) -> None:
    asked = ask(person, DRILL)
    attempt = submit(asked, right_answer(asked))
    question = asked.question | {"more": "x" * 30_000}
    common = {"person": person, "drill": asked.drill, "revision": 1, "seed": 1}
    made = Asked.objects.bulk_create(
        Asked(**common, question=question, latest=False) for _ in range(number)
    )
    Attempt.objects.bulk_create(
        Attempt(
            **common,
            asked=each,
            skill=attempt.skill,
            situation=attempt.situation,
            answer={},
            right=True,
            score=100,
            asked_at=each.asked_at,
            key=each.token,
        )
        for each in made
    )


def peak(person: Person) -> int:
    """Of memory, while it is written; whenever the collector may have run before."""
    gc.collect()
    tracemalloc.start()
    try:
        for _ in zipped(files_of(person, "now")):
            pass
        return tracemalloc.get_traced_memory()[1]
    finally:
        tracemalloc.stop()


def test_bundle_takes_no_more_memory_for_more_answers(
    mina: Person, tom: Person, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(parts, "AT_ONCE", 10)
    answered(mina, 20)
    answered(tom, 160)
    for person in (mina, tom):
        peak(person)  # what is imported and kept once

    assert peak(tom) < 1.5 * peak(mina)
