"""The master and the source tapes of a document: passes and takes."""

from collections.abc import Mapping

from exercises.tape.from_json.carried import CARRIED, read_carried
from exercises.tape.from_json.document_value import DocumentValue
from exercises.tape.from_json.machines import read_recorder
from exercises.tape.from_json.ranges import read_range
from exercises.tape.history import PLAINLY, History
from exercises.tape.machines import Machines
from exercises.tape.source import Source, Take
from exercises.tape.tape import Tape
from exercises.tape.work import READ, spend, working_on


def read_master(given: DocumentValue) -> Tape:
    fields = given.known_fields(("length",), ("recorded",))
    tape = Tape.blank(fields["length"].whole())
    reached = 0
    for item in fields["recorded"].items() if "recorded" in fields else ():
        recorded = item.known_fields(("start", "end", "what"), ("generation", "recorder", *CARRIED))
        start, end = read_range(recorded["start"], recorded["end"], reached)
        if end > tape.length:
            recorded["end"].refuse(f"is past the end of the tape ({tape.length})")
        generation = _generation(recorded)
        made = _pass_made(recorded, end - start, generation)
        with working_on(item.path):
            spend(READ)
            tape = tape.with_pass(start, end, recorded["what"].text(), generation, made=made)
        reached = end
    return tape


def _pass_made(fields: Mapping[str, DocumentValue], frames: int, generation: int) -> History:
    """Nothing was copied here: no gain has changed what the pass carries."""
    carried = read_carried(fields, 0, frames, generation)
    picture_gain = 0 if "levels" in fields else None
    recorder = read_recorder(fields.get("recorder"))
    made = History(carried, Machines(recorder=recorder, picture_gain=picture_gain))
    return PLAINLY if made == PLAINLY else made


def read_source(name: str, given: DocumentValue) -> Source:
    takes: list[Take] = []
    for item in given.known_fields(("takes",))["takes"].items():
        fields = item.known_fields(("start", "end"), ("generation", "sync", *CARRIED))
        reached = takes[-1].end if takes else 0
        start, end = read_range(fields["start"], fields["end"], reached)
        generation = _generation(fields)
        carried = read_carried(fields, start, end, generation)
        sync = "sync" in fields and fields["sync"].truth()
        takes.append(Take(start, end, generation, carried, sync))
    return Source(name, tuple(takes))


def _generation(fields: Mapping[str, DocumentValue]) -> int:
    return fields["generation"].whole(least=1) if "generation" in fields else 1
