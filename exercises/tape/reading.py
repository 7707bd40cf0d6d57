"""The session document, read. SESSION.md describes it, part by part."""

from collections.abc import Mapping

from exercises.tape.bench import Bench
from exercises.tape.edit import Assemble, Edit, Insert
from exercises.tape.node import Node
from exercises.tape.rate import Rate
from exercises.tape.session import Session
from exercises.tape.source import Source, Take
from exercises.tape.tape import Tape

PARTS = ("master", "sources", "edits")
SHOT = ("mode", "source", "in", "out", "at")
BENCH = ("lock", "relock", "erase_gap")


def read_session(document: object) -> Session:
    """The session that a document describes.

    Raises DocumentError, naming the path, for anything that SESSION.md does not allow.
    """
    parts = Node(document).known_fields(PARTS, ("rate", "bench"))
    bench = _bench(parts.get("bench"), _rate(parts.get("rate")))
    master = _master(parts["master"])
    sources = {name: _source(name, node) for name, node in parts["sources"].fields().items()}
    edits = tuple(_edit(node, sources, master.length) for node in parts["edits"].items())
    return Session(bench, master, sources, edits)


def _rate(node: Node | None) -> Rate:
    return Rate.R29_97 if node is None else Rate(node.one_of([rate.label for rate in Rate]))


def _bench(node: Node | None, rate: Rate) -> Bench:
    bench = Bench.default(rate)
    if node is None:
        return bench
    given = {key: field.whole() for key, field in node.known_fields((), BENCH).items()}
    return Bench(
        rate,
        lock=given.get("lock", bench.lock),
        relock=given.get("relock", bench.relock),
        erase_gap=given.get("erase_gap", bench.erase_gap),
    )


def _master(node: Node) -> Tape:
    fields = node.known_fields(("length",), ("recorded",))
    tape = Tape.blank(fields["length"].whole())
    reached = 0
    for item in fields["recorded"].items() if "recorded" in fields else ():
        recorded = item.known_fields(("start", "end", "what"), ("generation",))
        start, end = _range(recorded["start"], recorded["end"], reached)
        if end > tape.length:
            recorded["end"].refuse(f"is past the end of the tape ({tape.length})")
        tape = tape.with_pass(start, end, recorded["what"].text(), _generation(recorded))
        reached = end
    return tape


def _source(name: str, node: Node) -> Source:
    takes: list[Take] = []
    for item in node.known_fields(("takes",))["takes"].items():
        take = item.known_fields(("start", "end"), ("generation",))
        reached = takes[-1].end if takes else 0
        start, end = _range(take["start"], take["end"], reached)
        takes.append(Take(start, end, _generation(take)))
    return Source(name, tuple(takes))


def _range(first: Node, last: Node, reached: int) -> tuple[int, int]:
    """A range that is not empty and does not begin before the end of the one before it."""
    start, end = first.whole(), last.whole()
    if start < reached:
        first.refuse(f"begins before the end of the one before it ({reached})")
    if end <= start:
        last.refuse(f"must be after {_key(first)} ({start}), not {end}")
    return start, end


def _generation(fields: Mapping[str, Node]) -> int:
    return fields["generation"].whole(least=1) if "generation" in fields else 1


def _edit(node: Node, sources: Mapping[str, Source], length: int) -> Edit:
    fields = node.fields()
    if "mode" not in fields:
        node.known_fields(SHOT, ("picture", "sound"))
    if fields["mode"].one_of(("assemble", "insert")) == "insert":
        return _insert(node, sources, length)
    for track in ("picture", "sound"):
        if track in fields:
            fields[track].refuse("is not said by an assemble: it records picture and sound")
    return Assemble(*_shot(node.known_fields(SHOT), sources, length))


def _insert(node: Node, sources: Mapping[str, Source], length: int) -> Insert:
    fields = node.known_fields((*SHOT, "picture", "sound"))
    picture, sound = fields["picture"].truth(), fields["sound"].truth()
    if not (picture or sound):
        node.refuse("an insert records picture, or sound, or both")
    return Insert(*_shot(fields, sources, length), picture, sound)


def _shot(
    fields: Mapping[str, Node], sources: Mapping[str, Source], length: int
) -> tuple[Source, int, int, int]:
    source = sources.get(fields["source"].text())
    if source is None:
        fields["source"].refuse("is not one of the sources")
    first, out, at = fields["in"].whole(), fields["out"].whole(), fields["at"].whole()
    if first >= out:
        fields["out"].refuse(f"must be after in ({first}), not {out}")
    if at + out - first > length:
        fields["at"].refuse(f"the recording would run past the end of the tape ({length})")
    return source, first, out, at


def _key(node: Node) -> str:
    return node.path.rpartition(".")[2]
