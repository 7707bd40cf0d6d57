"""Ranges in a document."""

from exercises.tape.from_json.document_value import DocumentValue


def read_range(first: DocumentValue, last: DocumentValue, reached: int) -> tuple[int, int]:
    """A range that is not empty and does not begin before the end of the one before it."""
    start, end = first.whole(), last.whole()
    if start < reached:
        first.refuse(f"begins before the end of the one before it ({reached})")
    if end <= start:
        last.refuse(f"must be after {_key(first)} ({start}), not {end}")
    return start, end


def _key(given: DocumentValue) -> str:
    return given.path.rpartition(".")[2]
