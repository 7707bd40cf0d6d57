import json
import os
import sys
from argparse import ArgumentParser
from collections.abc import Iterable
from typing import Any

from django.core.management.base import BaseCommand

from exercises.tape import DocumentError, answer_text

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

    def handle(self, *args: Any, lines: bool, **options: Any) -> None:
        try:
            status = self.answer_lines(sys.stdin.buffer) if lines else self.answer_one()
        except BrokenPipeError:
            # Whoever read the answers has gone. Python flushes once more when it ends;
            # let it flush into nothing.
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
            return
        if status:
            sys.exit(status)

    def answer_one(self) -> int:
        try:
            answer = answer_text(sys.stdin.buffer.read())
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
                answer = answer_text(document)
            except DocumentError as refusal:
                answer = json.dumps({"error": str(refusal)})
                status = REFUSED
            self.say(answer)
        return status

    def say(self, answer: str) -> None:
        self.stdout.write(answer)
        self.stdout.flush()
