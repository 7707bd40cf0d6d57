"""A cohort of twelve through four weeks, as its instructor, by keyboard alone.

Between the weeks the learners of the demo answer, by what they believe, through the verbs that
the pages use.
"""

import csv
from datetime import timedelta
from pathlib import Path
from random import Random

from django.utils import timezone
from playwright.sync_api import BrowserContext, expect
from pytest_django.live_server_helper import LiveServer

from course.cohorts.joining import start_cohort
from course.cohorts.models import Bench, Cohort, Person
from exercises.assignments.verbs import begin_sitting
from exercises.demo.assigned import answer_sitting
from exercises.demo.cast import LEARNERS
from exercises.demo.in_order import happen
from exercises.demo.practice import practise_once
from exercises.demo.written import write
from exercises.models import Assignment, Attempt, Extension, OwnDrill, Review, SignOff, Withdrawal
from exercises.practice.attempts import ask, submit
from tests.browser.keyboard import Keys
from tests.browser.site import quiet_page, sign_in
from tests.people import instructor

TWELVE = [learner for learner in LEARNERS if learner.cohort == 0]
STUCK = "Ewan Thrush"  # by the set of the first week
GROUP, OTHER = "Tuesday bench group", "Saturday bench group"
# Later than all, and the same whichever of day and month comes first.
SOME_DAY = f"{timezone.now().year + 2}-03-03"
NOTE = (
    "The black ends at two minutes, the film at four. Go on with the recorder beside the window, "
    "and lay the last shot again before you insert over it."
)


def test_cohort_of_twelve_through_four_weeks_by_keyboard_alone(
    live_server: LiveServer, context: BrowserContext, tmp_path: Path
) -> None:
    orla = instructor("Orla Penhale")
    start_cohort(orla, OTHER)
    with quiet_page(context, live_server.url, refused=1) as page:
        sign_in(page, live_server.url, orla)
        keys = Keys(page)
        first_week(keys, roster_in(tmp_path))
        they_practise(range(27, 13, -1))
        they_do_the_set(Assignment.objects.get())
        they_write(orla)
        second_week(keys)
        they_practise(range(13, 6, -1))
        third_week(keys)
        they_answer(OwnDrill.objects.get())
        they_practise(range(6, 0, -1))
        fourth_week(keys)


# What the learners do.


def person_of(sign_in_name: str) -> Person:
    return Person.objects.get(sign_in_name=sign_in_name)


def they_practise(days_ago: range) -> None:
    for learner in TWELVE:
        for day, ago in enumerate(learner.days):
            if ago in days_ago:
                draw = Random(f"{learner.sign_in_name} {day}").random
                date = timezone.localtime() - timedelta(days=ago)
                happen(practise_once(person_of(learner.sign_in_name), learner, day, date, draw))


def they_do_the_set(assignment: Assignment) -> None:
    """All but two: one who never came, and one who was away."""
    for learner in TWELVE:
        if learner.sign_in_name not in {"piran", "bram"}:
            person = person_of(learner.sign_in_name)
            sitting = begin_sitting(person, assignment, now=timezone.now())
            happen(answer_sitting(person, learner, sitting, Random(learner.sign_in_name)))


def they_write(orla: Person) -> None:
    """Answers in own words that wait for her."""
    for name in ("tamsin", "nell", "sorrel"):
        happen(write(person_of(name), orla, timezone.localtime()))


def they_answer(drill: OwnDrill) -> None:
    for name in ("wren", "lotte"):
        submit(ask(person_of(name), drill.kind, seed=0), {"text": NOTE})


# What the instructor does.


def first_week(keys: Keys, roster: Path) -> None:
    """She makes the cohort, takes in twelve people, equips the bench and sets work."""
    keys.follow("Start a cohort", to="Start a cohort")
    keys.type("Name of the cohort", GROUP)
    keys.send("Start cohort", to="Cohorts")
    keys.follow(GROUP, to=GROUP)

    keys.follow("People from a file", to="People from a file")
    with keys.page.expect_file_chooser() as chosen:
        keys.to("CSV file")
        keys.page.keyboard.press("Enter")
    chosen.value.set_files(roster)
    keys.send("Look through it", to="Look through the list")
    expect(keys.page.get_by_text("New account: 12", exact=True)).to_be_visible()
    assert Person.objects.filter(role=Person.Role.LEARNER).count() == 0
    keys.send("Write 12 lines", to="The list is written")
    expect(keys.page.locator(".slip")).to_have_count(12)
    keys.follow(GROUP, to=GROUP)

    keys.follow("Bench figures", to="Bench figures")
    keys.type("Name of the bench", "Quay Street bench")
    keys.type("Pre-roll, in seconds", "6")
    keys.type("Time to lock, in frames", "130")
    keys.tick("waveform monitor", on=False)
    keys.send("Keep these figures", to="Bench figures")
    expect(keys.page.locator(".notice")).to_contain_text("Quay Street bench")
    keys.follow(GROUP, to=GROUP)

    keys.follow("Assignments", to="Assignments")
    keys.follow("Set an assignment", to="Set an assignment")
    keys.type("Title", "Which mode, before you touch a switch")
    keys.type("Questions in a sitting", "5")
    keys.type("Of them right", "4")
    keys.tick("Choose the mode")
    keys.send("Set it", to="Which mode, before you touch a switch")

    cohort = Cohort.objects.get(name=GROUP)
    assert cohort.learners.count() == len(TWELVE) == 12
    assert (cohort.bench, Bench.objects.get().lock) == (Bench.objects.get(), 130)
    assert Assignment.objects.get().kinds == ["choose-the-mode"]


def second_week(keys: Keys) -> None:
    """She sees who is stuck and on what, and judges what only she can judge."""
    keys.follow("Cohorts", to="Cohorts")
    keys.follow(GROUP, to=GROUP)
    sort_and_filter(keys)
    open_a_cell(keys, STUCK, "stuck")
    answers = keys.page.get_by_role("heading", name="Answers: Replacing inside it")
    expect(answers).to_be_in_viewport()
    overrule(keys)
    keys.follow("Cohorts", to="Cohorts")
    keys.follow("Reviews", to="Reviews")
    judge(keys, "Nell Harrow", "Right: 100 %", "Nothing is missing.")
    keys.follow("What waits for you", to="Reviews")
    judge(keys, "Sorrel Vane", "Send it back: a new question of the same situation", "Say why.")

    said = [(each.what, each.score) for each in Review.objects.order_by("pk")]
    assert said == [("score", 100), ("score", 100), ("sent-back", None)]


def sort_and_filter(keys: Keys) -> None:
    keys.to("Sort, filter or print", "summary")
    keys.page.keyboard.press("Enter")
    keys.pick("Show", "Who is stuck")
    keys.pick("In order of", "Most skills stuck")
    keys.send("Show", to=GROUP)
    people = keys.page.locator(".board tbody th")
    everybody = set(people.all_inner_texts())
    assert STUCK in everybody
    assert "Nell Harrow" not in everybody
    assert keys.page.get_by_label("Show", exact=True).input_value() == "stuck"


def open_a_cell(keys: Keys, name: str, word: str) -> None:
    """Down to the person's row, then across to the word, all by the arrow keys."""
    keys.reach(keys.page.locator(".board a"), "the board")
    arrow_to(keys, "ArrowDown", name)
    arrow_to(keys, "ArrowRight", word)
    keys.enter(name)


def open_a_row(keys: Keys, name: str) -> None:
    keys.reach(keys.page.locator(".board a"), "the board")
    arrow_to(keys, "ArrowDown", name)
    keys.enter(name)


def arrow_to(keys: Keys, arrow: str, text: str) -> None:
    for _ in range(15):
        if keys.page.evaluate("document.activeElement.innerText") == text:
            return
        keys.page.keyboard.press(arrow)
    raise AssertionError(f"{arrow} does not lead to “{text}”.")


def overrule(keys: Keys) -> None:
    """A wrong answer counts as right, for a reason."""
    wrong = keys.page.get_by_role("row").filter(has_text="Not right").get_by_role("link").first
    title = wrong.inner_text()
    keys.reach(wrong, title)
    keys.enter(title)
    expect(keys.page.locator(".verdict")).to_be_focused()
    keys.choose("Right: 100 %", first="Comment; the score stays")
    keys.send("Keep it", to=title)
    reason = "What you tell the learner"
    expect(keys.named(reason, "")).to_be_focused()  # it is refused without one
    keys.page.keyboard.type("The drawing did not show the pulses. We looked at it together.")
    keys.send("Keep it", to=title)
    expect(keys.page.get_by_text("Your score is kept and counts from now on.")).to_be_visible()


def judge(keys: Keys, name: str, action: str, text: str) -> None:
    keys.follow(f"In your own words, {name}", to="In your own words")
    keys.choose(action, first="Comment; the score stays")
    keys.type("What you tell the learner", text)
    keys.send("Keep it", to="In your own words")


def third_week(keys: Keys) -> None:
    """She writes a drill for her own bench, looks at the questions, and gives and moves."""
    keys.follow("Drill desk", to="Drill desk")
    keys.follow("Write one: In your own words", to="In your own words: a new drill")
    keys.type("Title", "A note for tomorrow")
    keys.pick("The skill that it practises", "Planning and time code")
    keys.type("The task", "Write the note that you leave at our bench.")
    keys.type("What you look for", "where the film ends")
    keys.send("Keep it", to="A note for tomorrow")
    keys.tick(GROUP)
    keys.send("Publish revision 1", to="A note for tomorrow")

    keys.follow("Cohorts", to="Cohorts")
    keys.follow(GROUP, to=GROUP)
    keys.follow("Items", to="Items")
    keys.follow("Hardest first", to="Items")
    keys.follow("Choose the mode", to="Choose the mode")
    expect(keys.page.get_by_role("heading", name="Wrong answers")).to_be_visible()
    keys.follow(GROUP, to=GROUP)

    give_more_time(keys, "Bram Ottery")
    keys.follow(GROUP, to=GROUP)
    open_a_row(keys, "Corin Wraxall")
    keys.follow("Move to another cohort", to="Move Corin Wraxall")
    keys.pick("To", OTHER)
    keys.send("Move", to=GROUP)

    assert OwnDrill.objects.get().cohorts.get().name == GROUP
    assert Extension.objects.get().person.name == "Bram Ottery"
    assert [each.name for each in Cohort.objects.get(name=OTHER).learners.all()] == [
        "Corin Wraxall"
    ]
    assert Attempt.objects.filter(person__name="Corin Wraxall").exists()


def give_more_time(keys: Keys, name: str) -> None:
    title = Assignment.objects.get().title
    keys.follow("Assignments", to="Assignments")
    keys.follow(title, to=title)
    keys.follow(f"Give {name} more time", to=f"More time for {name}")
    keys.type_day("New time for this learner", SOME_DAY)
    keys.type("Why (you may leave this out)", "Bench 2 was away for repair.")
    keys.send("Give this time", to=title)


def fourth_week(keys: Keys) -> None:
    """She signs off, prints, checks, withdraws, takes the results away and puts all away."""
    keys.follow("Sign-offs", to="Sign-offs")
    sign(keys, "Nell Harrow", "Ready to work alone")
    keys.follow("Sign-offs", to="Sign-offs")
    sign(keys, "Maeve Sallow", "Ready for the supervised bench")
    keys.follow("Bench card to print", to="Bench card")
    check_the_card(keys)
    withdraw(keys, "Nell Harrow")
    take_results(keys)
    keys.follow("Archive it", to=f"Archive {GROUP}")
    keys.type_day("Remove it on (empty: keep it)", SOME_DAY)
    keys.send("Archive", to="Archived cohorts")

    assert list(SignOff.objects.order_by("pk").values_list("person__name", "state")) == [
        ("Nell Harrow", "alone"),
        ("Maeve Sallow", "supervised"),
    ]
    assert Withdrawal.objects.get().sign_off.person.name == "Nell Harrow"
    assert f"{Cohort.objects.get(name=GROUP).remove_on}" == SOME_DAY


def sign(keys: Keys, name: str, state: str) -> None:
    keys.follow(f"Decide about {name}", to=f"Sign off {name}")
    keys.choose(state, first="Ready for the supervised bench")
    keys.send("Sign", to=name)


def check_the_card(keys: Keys) -> None:
    """As whoever looks after the bench does, by the code that is printed on it."""
    code = keys.page.locator(".card-head .counter").inner_text()
    keys.follow(GROUP, to=GROUP)
    keys.follow("Sign-offs", to="Sign-offs")
    keys.follow("Check a bench card", to="Check a bench card")
    keys.type("Code on the card", code.lower())
    keys.send("Check the card", to=f"Bench card {code}")
    expect(keys.page.locator(".verdict")).to_contain_text("Ready for the supervised bench")


def withdraw(keys: Keys, name: str) -> None:
    keys.follow("Cohorts", to="Cohorts")
    keys.follow(GROUP, to=GROUP)
    keys.follow("Sign-offs", to="Sign-offs")
    keys.follow("Ready to work alone", to=name)
    keys.follow("Withdraw it", to=f"Withdraw the sign-off of {name}")
    keys.type("Why", "Two edits ran over the end of the master.")
    keys.send("Withdraw it", to=name)
    keys.follow(GROUP, to=GROUP)


def take_results(keys: Keys) -> None:
    keys.follow("Results to take away", to="Results to take away")
    keys.to("Sign-offs, with what was withdrawn", "link")
    with keys.page.expect_download() as taken:
        keys.page.keyboard.press("Enter")
    with taken.value.path().open(encoding="utf-8-sig") as file:
        assert {line["name"] for line in csv.DictReader(file)} == {
            "Nell Harrow",
            "Maeve Sallow",
        }
    keys.follow(GROUP, to=GROUP)


def roster_in(folder: Path) -> Path:
    """The CSV file that the office sends."""
    path = folder / "tuesday.csv"
    with path.open("w", newline="", encoding="utf-8") as file:
        lines = [(learner.name, learner.sign_in_name) for learner in TWELVE]
        csv.writer(file).writerows([("name", "sign-in name"), *lines])
    return path
