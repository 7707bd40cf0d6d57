"""A document's text, read strictly: JSON as the standard (RFC 8259) has it, and no more."""

import json

from exercises.tape.errors import DocumentError
from exercises.tape.from_json.document_value import RepeatedKeys


def read_document(raw: bytes) -> object:
    """The values in a JSON text of UTF-8.

    A key that stands twice and numbers that are not whole stay visible in the values, so
    that the reader can name their path. Raises DocumentError for anything that is not
    JSON at all.
    """
    try:
        text = raw.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise DocumentError("", f"is not UTF-8 text: byte {error.start} does not fit") from None
    if not text.strip():
        raise DocumentError("", "is empty")
    try:
        return json.loads(text, parse_int=_whole, object_pairs_hook=_object)
    except json.JSONDecodeError as error:
        where = f"line {error.lineno}, column {error.colno}"
        raise DocumentError("", f"is not JSON: {error.msg} ({where})") from None
    except RecursionError:
        raise DocumentError("", "is nested too deeply") from None


def _whole(digits: str) -> int:
    """A number's value; one far beyond every limit keeps only that it is."""
    return int(digits[:30])


def _object(pairs: list[tuple[str, object]]) -> dict[str, object]:
    keys: set[str] = set()
    for key, _ in pairs:
        if key in keys:
            return RepeatedKeys(pairs, key)
        keys.add(key)
    return dict(pairs)
