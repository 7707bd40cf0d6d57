"""What a take or a pass carries: its levels, its chain of copies, its sound marks."""

from collections.abc import Iterator, Mapping

from exercises.tape.from_json.bounds import LEVEL, SNR, WHITE
from exercises.tape.from_json.document_value import DocumentValue
from exercises.tape.from_json.ranges import read_range
from exercises.tape.history import LINED_UP_TAKE, Carried
from exercises.tape.levels import LINED_UP, Levels
from exercises.tape.marks import UNMARKED, Marks, Span

CARRIED = ("levels", "chain", "marks")
LEVELS = {"white": WHITE, "sound": LEVEL, "room": LEVEL}
KINDS = ("words", "breaths", "noises", "room_tone")


def read_carried(
    fields: Mapping[str, DocumentValue], start: int, end: int, generation: int
) -> Carried:
    """Of a recording ``[start, end)``: marks lie inside it."""
    carried = Carried(
        _levels(fields["levels"]) if "levels" in fields else LINED_UP,
        _chain(fields["chain"], generation) if "chain" in fields else (),
        _marks(fields["marks"], start, end) if "marks" in fields else UNMARKED,
    )
    return LINED_UP_TAKE if carried == LINED_UP_TAKE else carried


def _levels(given: DocumentValue) -> Levels | None:
    if isinstance(given.value, str):
        given.one_of(("none",))
        return None
    fields = given.known_fields((), LEVELS)
    return Levels(**{key: LEVELS[key].read(field) for key, field in fields.items()})


def _chain(given: DocumentValue, generation: int) -> tuple[int, ...]:
    chain = tuple(SNR.read(item) for item in given.items())
    if len(chain) > generation:
        given.refuse(f"has more recordings ({len(chain)}) than the generation ({generation})")
    return chain


def _marks(given: DocumentValue, start: int, end: int) -> Marks:
    fields = given.known_fields((), KINDS)
    return Marks(**{kind: tuple(_spans(field, start, end)) for kind, field in fields.items()})


def _spans(given: DocumentValue, start: int, end: int) -> Iterator[Span]:
    reached = 0
    for item in given.items():
        fields = item.known_fields(("start", "end"))
        span = Span(*read_range(fields["start"], fields["end"], reached))
        if span.start < start:
            fields["start"].refuse(f"is before the start of the recording ({start})")
        if span.end > end:
            fields["end"].refuse(f"is past the end of the recording ({end})")
        reached = span.end
        yield span
