"""The session document, read. SESSION.md describes it, part by part."""

from exercises.tape.reading.session import read_session

__all__ = ["read_session"]
