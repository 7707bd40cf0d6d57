"""Actions a second at the practice bench, 16 learners at once, beside drill answers in one run.

Each learner does a practical by the guide's hands, over and over; rounds of both alternate. What
one action costs in answers is the ratio of their medians, which should be at most 1.5.
"""

import json
import statistics
import tempfile
from collections.abc import Iterator
from urllib.parse import urlencode

from tests.bench.answer import (
    ANSWERS,
    LEARNERS,
    ROUNDS,
    Request,
    free_port,
    one_answer,
    prepare,
    rate,
    start_server,
    wait_for,
)

PRACTICAL = "three-shots"


def main() -> None:
    with tempfile.TemporaryDirectory(prefix="run-up-bench-") as folder:
        prepare(folder)
        answers = [[one_answer(n * ANSWERS + m) for m in range(ANSWERS)] for n in range(ROUNDS)]
        actions = [in_turn(number) for number in range(ROUNDS)]
        port = free_port()
        server = start_server(port)
        try:
            wait_for(port)
            rounds = zip(answers, actions, strict=True)
            report([(rate(port, one), rate(port, other)) for one, other in rounds])
        finally:
            server.terminate()
            server.wait()


def in_turn(round_: int) -> list[Request]:
    """The actions of all learners, so that every sixteenth is the same learner's next."""
    shares = [list(actions_of(round_ * LEARNERS + number)) for number in range(LEARNERS)]
    return [request for requests in zip(*shares, strict=True) for request in requests]


def actions_of(number: int) -> Iterator[Request]:
    """One learner's way from an empty bench to the last look back."""
    from django.urls import reverse

    from exercises.bench.verbs import begin
    from exercises.models import Asked
    from exercises.worktop.guide import guided
    from exercises.worktop.practical import Way
    from exercises.worktop.shelf import practicals
    from tests.exercises.bench.hands import by_form

    request = one_answer(1_000_000 + number)
    learner = Asked.objects.get(token=request.path.strip("/").split("/")[-1]).person
    run = begin(learner, practicals()[PRACTICAL], Way.ALONE)
    for done, (step, _) in enumerate(guided(run.worktop.set_up)):
        if step.name != "hand-in":
            fields = by_form(run, step.name, step.arguments) | {"action": step.name, "now": done}
            path = reverse("bench-do", args=[run.token])
            yield Request(path, urlencode(fields), request.session)


def report(rates: list[tuple[float, float]]) -> None:
    answers, actions = (list(column) for column in zip(*rates, strict=True))
    print(f"{LEARNERS} learners at once\n")
    print("round   answers/s   actions/s   one action in answers")
    for number, (answer, action) in enumerate(rates, start=1):
        print(f"{number:5}   {answer:9.1f}   {action:9.1f}   {answer / action:9.2f}")
    figures = {
        "learners": LEARNERS,
        "answers_per_second": round(statistics.median(answers), 1),
        "actions_per_second": round(statistics.median(actions), 1),
        "one_action_in_answers": round(statistics.median(answers) / statistics.median(actions), 3),
    }
    print(json.dumps(figures))


if __name__ == "__main__":
    main()
