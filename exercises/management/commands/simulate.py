import json
import os
import sys
from argparse import ArgumentParser, ArgumentTypeError
from collections.abc import Iterable, Iterator
from typing import IO, Any

from django.conf import settings
from django.core.management.base import BaseCommand

from exercises.tape import DocumentError, answer_text
from exercises.tape.work import BYTES

REFUSED = 2


class Command(BaseCommand):
    help = (
        "Read a session document on standard input and print what is on the master after its "
        "edits and how it plays. exercises/tape/SESSION.md describes the document."
    )
    requires_system_checks = ()

    def add_arguments(self, parser: ArgumentParser) -> None:
        parser.add_argument(
            "--lines", action="store_true", help="read a document a line, print an answer a line"
        )
        parser.add_argument(
            "--steps",
            type=steps,
            default=settings.SIMULATE_STEPS,
            help="of work that an answer may take (%(default)s)",
        )

    def handle(self, *args: Any, lines: bool, steps: int, **options: Any) -> None:
        if not sys.stdin:
            self.stderr.write("document: there is nothing to read; standard input is closed")
            sys.exit(REFUSED)
        self.steps = steps
        most = steps * BYTES + 1  # of what is longer, enough is read to refuse it
        try:
            if lines:
                status = self.answer_lines(documents(sys.stdin.buffer, most))
            else:
                status = self.answer_one(sys.stdin.buffer.read(most))
        except BrokenPipeError:
            # Whoever read the answers has gone. Python flushes once more when it ends;
            # let it flush into nothing.
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
            return
        if status:
            sys.exit(status)

    def answer_one(self, document: bytes) -> int:
        try:
            answer = answer_text(document, steps=self.steps)
        except DocumentError as refusal:
            self.stderr.write(str(refusal))
            return REFUSED
        self.say(answer)
        return 0

    def answer_lines(self, documents: Iterable[bytes]) -> int:
        """Each answer leaves before the next document is read."""
        status = 0
        for document in documents:
            try:
                answer = answer_text(document, steps=self.steps)
            except DocumentError as refusal:
                answer = json.dumps({"error": str(refusal)})
                status = REFUSED
            self.say(answer)
        return status

    def say(self, answer: str) -> None:
        self.stdout.write(answer)
        self.stdout.flush()


def steps(text: str) -> int:
    if not (text.isascii() and text.isdigit() and int(text[:20]) > 0):
        raise ArgumentTypeError("must be a whole number, at least 1")
    return int(text[:20])


def documents(lines: IO[bytes], most: int) -> Iterator[bytes]:
    """Each line, whatever of it is beyond `most` bytes left out."""
    while line := lines.readline(most):
        yield line
        while len(line) == most and not line.endswith(b"\n"):
            line = lines.readline(most)
