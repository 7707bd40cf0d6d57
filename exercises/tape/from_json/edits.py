from collections.abc import Mapping
from typing import NamedTuple

from exercises.tape.edit import Assemble, Edit, Insert
from exercises.tape.from_json.document_value import DocumentValue
from exercises.tape.from_json.machines import MAKING, read_machines
from exercises.tape.machines import Machines
from exercises.tape.rate import Rate
from exercises.tape.source import Source
from exercises.tape.work import READ, spend, working_on

# Drift is told second by second; no tape lasts as long as this.
LONGEST_DRIFT = Rate.R29_97.day()
LEAST_SECOND = Rate.R25.nominal  # frames

SHOT = ("mode", "source", "in", "out", "at")


def read_edit(given: DocumentValue, sources: Mapping[str, Source], length: int) -> Edit:
    with working_on(given.path):
        spend(READ)
    fields = given.fields()
    if "mode" not in fields:
        given.known_fields(SHOT, ("picture", "sound", *MAKING))
    if fields["mode"].one_of(("assemble", "insert")) == "insert":
        return _insert(given, sources, length)
    for track in ("picture", "sound"):
        if track in fields:
            fields[track].refuse("is not said by an assemble: it records picture and sound")
    fields = given.known_fields(SHOT, MAKING)
    shot = _shot(fields, sources, length)
    return Assemble(*shot, machines=_machines(fields, shot))


def _insert(given: DocumentValue, sources: Mapping[str, Source], length: int) -> Insert:
    fields = given.known_fields((*SHOT, "picture", "sound"), MAKING)
    picture, sound = fields["picture"].truth(), fields["sound"].truth()
    if not (picture or sound):
        given.refuse("an insert records at least one of picture and sound")
    shot = _shot(fields, sources, length)
    return Insert(*shot, picture, sound, machines=_machines(fields, shot))


def _machines(fields: Mapping[str, DocumentValue], shot: "RecordedShot") -> Machines:
    machines = read_machines(fields)
    if machines.player.drift is not None and shot.out - shot.in_ > LONGEST_DRIFT:
        fields["player"].fields()["drift"].refuse("can't be told of a recording over a day long")
    if machines.player.drift is not None:
        with working_on(fields["player"].fields()["drift"].path):
            spend((shot.out - shot.in_) // LEAST_SECOND)
    return machines


class RecordedShot(NamedTuple):
    source: Source
    in_: int
    out: int
    at: int


def _shot(
    fields: Mapping[str, DocumentValue], sources: Mapping[str, Source], length: int
) -> RecordedShot:
    source = sources.get(fields["source"].text())
    if source is None:
        fields["source"].refuse("is not one of the sources")
    first, out, at = fields["in"].whole(), fields["out"].whole(), fields["at"].whole()
    if first >= out:
        fields["out"].refuse(f"must be after in ({first}), not {out}")
    if at + out - first > length:
        fields["at"].refuse(f"the recording would run past the end of the tape ({length})")
    return RecordedShot(source, first, out, at)
