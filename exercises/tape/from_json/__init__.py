"""The session document, read. SESSION.md describes it, part by part."""

from exercises.tape.from_json.edit_session import read_edit_session

__all__ = ["read_edit_session"]
