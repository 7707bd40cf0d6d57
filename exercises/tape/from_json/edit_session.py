from collections.abc import Mapping
from dataclasses import replace

from exercises.tape.edit_session import EditSession
from exercises.tape.from_json.bench import read_bench
from exercises.tape.from_json.brief import read_after, read_brief, read_pace
from exercises.tape.from_json.document_value import DocumentValue
from exercises.tape.from_json.edits import read_edit
from exercises.tape.from_json.tapes import read_master, read_source
from exercises.tape.rate import Rate

PARTS = ("master", "sources", "edits")
ASKED = ("brief", "pace", "plan")


def read_edit_session(document: object) -> EditSession:
    """The session that a document describes.

    Raises DocumentError, naming the path, for anything that SESSION.md does not allow.
    """
    parts = DocumentValue(document).known_fields(PARTS, ("rate", "bench", *ASKED))
    bench = read_bench(parts.get("bench"), _rate(parts.get("rate")))
    master = read_master(parts["master"])
    sources = {name: read_source(name, given) for name, given in parts["sources"].fields().items()}
    edits = tuple(read_edit(given, sources, master.length) for given in parts["edits"].items())
    return _asked(EditSession(bench, master, sources, edits), parts)


def _asked(session: EditSession, parts: Mapping[str, DocumentValue]) -> EditSession:
    """The session with what is asked of it."""
    for key in ("pace", "plan"):
        if key in parts and "brief" not in parts:
            parts[key].refuse("is said only where there is a brief")
    if "brief" not in parts:
        return session
    known = {*session.sources, *(run.value.source for run in session.master.picture.laid)}
    return replace(
        session,
        brief=read_brief(parts["brief"], known, session.master.length),
        after=read_after(parts["brief"], len(session.edits)),
        pace=read_pace(parts["pace"], session.bench.rate) if "pace" in parts else None,
        plans="plan" in parts and parts["plan"].truth(),
    )


def _rate(given: DocumentValue | None) -> Rate:
    return Rate.R29_97 if given is None else Rate(given.one_of([rate.label for rate in Rate]))
