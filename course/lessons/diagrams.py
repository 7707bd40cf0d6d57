"""A block `tape-map`: TOML that holds a session document and says how to show it.

    name      what claims and links call the diagram
    title     what it shows
    caption   what to notice
    until     show the tape after so many edits; without it, after all of them
    pair      two such numbers: two maps, before and after
    lines     the line under each map of a pair
    show      a source tape to draw, in the place of the edit master
    window    {start, end} in frames; without it, the whole tape
    marks     named places, in frames: {"edit in" = 300}
    names     what to call a source on the map: {A = "Tape 3"}

Everything else is the session document (rate, bench, master, sources, edits).
"""

from course.lessons.lesson import Diagram
from course.lessons.problems import LessonProblem
from course.lessons.showing import Showing
from course.lessons.toml import load_toml
from exercises.tape import DocumentError, TapeError, read_edit_session

DOCUMENT = ("rate", "bench", "master", "sources", "edits")


def read_diagram(source: str, line: int) -> Diagram:
    """The diagram that the block beginning on `line` describes."""
    given = load_toml(source, line + 1)
    try:
        document = {key: given.pop(key) for key in DOCUMENT if key in given}
        session = read_edit_session(document)
        how = Showing.read(given, session)
        return Diagram(
            name=how.name,
            title=how.title,
            caption=how.caption,
            panels=tuple(how.panels(session)),
            document=document,
            session=session,
        )
    except DocumentError as refused:
        raise LessonProblem(line, f"The session is refused at {refused}.") from refused
    except (TypeError, TapeError) as error:
        raise LessonProblem(line, f"The diagram can't be drawn: {error}") from error
