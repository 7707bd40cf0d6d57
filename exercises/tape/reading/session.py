from exercises.tape.node import Node
from exercises.tape.rate import Rate
from exercises.tape.reading.bench import read_bench
from exercises.tape.reading.edits import read_edit
from exercises.tape.reading.tapes import read_master, read_source
from exercises.tape.session import Session

PARTS = ("master", "sources", "edits")


def read_session(document: object) -> Session:
    """The session that a document describes.

    Raises DocumentError, naming the path, for anything that SESSION.md does not allow.
    """
    parts = Node(document).known_fields(PARTS, ("rate", "bench"))
    bench = read_bench(parts.get("bench"), _rate(parts.get("rate")))
    master = read_master(parts["master"])
    sources = {name: read_source(name, node) for name, node in parts["sources"].fields().items()}
    edits = tuple(read_edit(node, sources, master.length) for node in parts["edits"].items())
    return Session(bench, master, sources, edits)


def _rate(node: Node | None) -> Rate:
    return Rate.R29_97 if node is None else Rate(node.one_of([rate.label for rate in Rate]))
