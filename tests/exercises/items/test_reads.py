"""Reading the items out of what some people have answered."""

from collections.abc import Callable
from datetime import UTC, datetime, timedelta

from django.test import Client
from django.urls import reverse
from pytest_django import DjangoAssertNumQueries

from course.cohorts.models import Cohort, Person
from exercises.desk.verbs import publish, revise
from exercises.drills.register import KINDS
from exercises.items.reads import fixed_set, given_by, kind_lines, situation_lines
from exercises.items.wrong_answers import OTHER, wrong_answers
from exercises.mastery.items import ENOUGH
from exercises.models import Attempt, OwnDrill
from exercises.practice.attempts import ask, submit
from exercises.reviews.verbs import Said, review
from tests.answers import right_answer, wrong_answer
from tests.own import CUTAWAY, mode_text, published
from tests.people import learner

ClientOf = Callable[[Person], Client]
MODE, ORDER, FREE = KINDS["choose-the-mode"], KINDS["put-in-order"], KINDS["free-answer"]
NOON = datetime(2026, 5, 4, 12, tzinfo=UTC)


def answer(person: Person, *, right: bool, seed: int = 3, seconds: int = 60) -> Attempt:
    asked = ask(person, MODE, seed=seed, now=NOON)
    given = right_answer(asked) if right else wrong_answer(asked)
    return submit(asked, given, now=NOON + timedelta(seconds=seconds))


def test_first_answers_and_all_answers_are_told_apart(mina: Person, tom: Person) -> None:
    answer(mina, right=False, seconds=10)
    answer(mina, right=True, seconds=20)
    answer(tom, right=True, seconds=90)

    (line,) = kind_lines(given_by(Person.objects.all(), KINDS), KINDS)

    item = line.item
    assert (item.slug, item.answers, item.people) == (MODE.slug, 3, 2)
    assert (line.right_percent, line.first_percent, line.time) == (67, 50, "20 s")
    assert (item.discrimination, line.flags) == (None, [])


def test_what_waits_is_left_out_and_an_overruled_score_counts(mina: Person, ines: Person) -> None:
    asked = ask(mina, FREE)
    submit(asked, right_answer(asked))
    said = Said(what="score", text="By luck.", score=0, key="k")
    review(ines, answer(mina, right=True), said)

    (line,) = kind_lines(given_by(Person.objects.all(), KINDS), KINDS)

    assert (line.kind, line.right_percent) == (MODE, 0)


def test_others_people_are_left_out(mina: Person, lena: Person, harbour: Cohort) -> None:
    answer(lena, right=True)

    assert given_by(Person.objects.learning_in(harbour), KINDS) == []


def test_wrong_answers_are_counted_with_what_they_point_at(mina: Person, tom: Person) -> None:
    first, second = answer(mina, right=False), answer(tom, right=False)
    answer(mina, right=True)

    wrong = wrong_answers(MODE, Person.objects.all())

    (found,) = wrong.values()
    (chosen,) = found.chosen
    asked = first.asked.as_question()
    assert first.answer == second.answer
    assert list(wrong) == [first.situation]
    assert (chosen.words, chosen.to) == (
        asked.asks[0].in_words(first.answer["mode"]),
        asked.asks[0].legend,
    )
    assert (chosen.times, found.answers, found.commonest) == (2, 2, 1.0)
    assert [belief.id for belief in chosen.beliefs] == first.misconceptions


def test_answers_that_are_never_alike_go_by_what_they_point_at(mina: Person) -> None:
    asked = ask(mina, ORDER, seed=1)
    attempt = submit(asked, wrong_answer(asked))

    (found,) = wrong_answers(ORDER, Person.objects.all()).values()

    (chosen,) = found.chosen
    assert [belief.id for belief in chosen.beliefs] == sorted(attempt.misconceptions)
    assert (chosen.words, chosen.to) == ("" if attempt.misconceptions else OTHER, "")


def test_situations_stand_by_name_with_their_wrong_answers(mina: Person, tom: Person) -> None:
    attempts = [answer(mina, right=False, seed=seed) for seed in (3, 4, 5, 6)]
    people = Person.objects.all()

    lines = situation_lines(MODE, given_by(people, KINDS), wrong_answers(MODE, people))

    titles = sorted({each.situation_title for each in attempts})
    assert [line.title for line in lines] == titles
    assert all(line.wrong and line.item.commonest for line in lines)


def test_fixed_set_needs_enough_people_who_answered_all_of_it(harbour: Cohort) -> None:
    for number in range(ENOUGH):
        person = learner(f"P{number} Reed", harbour)
        asked = ask(person, KINDS["care-and-safety"], seed=1)
        submit(asked, right_answer(asked) if number % 3 else wrong_answer(asked))
        if number:
            answer(person, right=number % 2 == 0)
    given = given_by(Person.objects.learning_in(harbour), KINDS)

    short = fixed_set(given, [], KINDS)
    answer(Person.objects.get(name="P0 Reed"), right=False)
    given = given_by(Person.objects.learning_in(harbour), KINDS)
    full = fixed_set(given, [MODE.slug, "care-and-safety"], KINDS)

    assert (short.people, short.kr20) == (ENOUGH - 1, None)
    assert (full.people, [kind.slug for kind in full.kinds]) == (
        ENOUGH,
        [MODE.slug, "care-and-safety"],
    )
    assert full.kr20 is not None


def test_pages_can_be_sorted_and_widened(
    mina: Person, lena: Person, ines: Person, harbour: Cohort, slipway: Cohort, client_of: ClientOf
) -> None:
    slipway.instructors.add(ines)
    answer(mina, right=True, seconds=10)
    care = ask(lena, KINDS["care-and-safety"], now=NOON)
    submit(care, wrong_answer(care), now=NOON + timedelta(seconds=50))
    client, url = client_of(ines), reverse("items", args=[harbour.pk])

    def shown(**query: str) -> list[str]:
        return [line.kind.slug for line in client.get(url, query).context["lines"]]

    both = [MODE.slug, "care-and-safety"]
    assert shown() == shown(sort="nonsense", of="everybody", set="x") == [MODE.slug]
    assert shown(of="all") == both
    assert shown(of="all", sort="hardest") == shown(of="all", sort="slowest") == both[::-1]


def test_own_drill_is_an_item_with_a_line_for_each_revision(
    mina: Person, lena: Person, ines: Person, harbour: Cohort, client_of: ClientOf
) -> None:
    drill = published(ines, harbour)
    first = ask(mina, drill.kind)
    submit(first, wrong_answer(first))
    revise(drill, ines, mode_text(wish="The gull for six seconds."))
    publish(drill, ines, [harbour])
    again = ask(mina, OwnDrill.objects.get().kind)
    submit(again, right_answer(again))
    client = client_of(ines)

    (line,) = client.get(reverse("items", args=[harbour.pk])).context["lines"]
    url = reverse("items-of-kind", args=[harbour.pk, drill.slug])
    page = client.get(url)

    assert f'href="{url}"' in client.get(drill.get_absolute_url()).content.decode()
    assert (line.kind.slug, line.title, line.item.answers) == (drill.slug, CUTAWAY["title"], 2)
    assert [each.title for each in page.context["lines"]] == ["Revision 1", "Revision 2"]
    assert page.context["page"] == drill.get_absolute_url()
    assert page.context["lines"][0].wrong.answers == 1


def test_own_drill_of_others_is_no_item(
    ines: Person, rafe: Person, slipway: Cohort, harbour: Cohort, client_of: ClientOf
) -> None:
    drill = published(rafe, slipway)

    url = reverse("items-of-kind", args=[harbour.pk, drill.slug])

    assert client_of(ines).get(url).status_code == 404


def test_kind_of_no_name_is_unknown(ines: Person, harbour: Cohort, client_of: ClientOf) -> None:
    url = reverse("items-of-kind", args=[harbour.pk, "no-such-drill"])

    assert client_of(ines).get(url).status_code == 404


def test_items_queries_do_not_grow(
    ines: Person,
    harbour: Cohort,
    client_of: ClientOf,
    django_assert_num_queries: DjangoAssertNumQueries,
) -> None:
    client = client_of(ines)
    published(ines, harbour)
    for name in ("Una Reed", "Piet Sloan"):
        for seed in (3, 4):
            answer(learner(f"{name[0]}{seed} {name}", harbour), right=False, seed=seed)
        # session, person, cohort, own drills with their cohorts and revisions, answers
        with django_assert_num_queries(7):
            client.get(reverse("items", args=[harbour.pk]))
        # the same; wrong answers, their questions
        with django_assert_num_queries(9):
            client.get(reverse("items-of-kind", args=[harbour.pk, MODE.slug]))
