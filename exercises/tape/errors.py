"""Why the tape model refuses something.

TapeError
├── TimecodeError   a label that does not exist, or a frame that has none
├── EditRefused     an edit that two machines can't make on this tape
├── TooMuchWork     an answer that takes more work than allowed: work.py
└── DocumentError   a session document that can't be read, with the path of the trouble

Every message is one line.
"""


class TapeError(ValueError):
    """Anything the tape model refuses."""


class TimecodeError(TapeError):
    """A label that does not exist, or a frame beyond the day's last label."""


class EditRefused(TapeError):
    """An edit that can't be made; the message is a full sentence."""


class DocumentError(TapeError):
    """A problem in a session document, with the path where it is: ``edits[3].mode``."""

    def __init__(self, path: str, problem: str) -> None:
        self.path = path or "document"
        self.problem = problem
        super().__init__(f"{self.path}: {problem}")
